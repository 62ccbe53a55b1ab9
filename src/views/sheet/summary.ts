// Exceptions first, then how much is proven, then what the page rests on.
import type { Line } from "../../engine/line.ts";
import { caveatOrder, caveats, caveatWords } from "../../report/caveats.ts";
import { exceptions } from "../../report/exceptions.ts";
import type { RowException } from "../../report/row-exceptions.ts";
import { judgements } from "../../report/states.ts";
import { capital, counted } from "../../words.ts";
import { type Child, el, replace } from "../dom.ts";
import { lineLink } from "../shell/more.ts";
import type { PageContext } from "../shell/page-context.ts";
import { stateMark, stateWord } from "./state-mark.ts";

const mostRows = 8;

/** "hole 18 11.7 µm ± 3.6 µm against at most 15 µm", each a link to its row. */
function rowParts(
  rows: readonly RowException[] | undefined,
  name: string,
  context: PageContext,
): readonly Child[] {
  if (!rows) return [];
  const rest = rows.length - mostRows;
  return [
    ...rows
      .slice(0, mostRows)
      .flatMap(({ key, says, words }) => [
        " ",
        el(
          "span",
          { class: words === "" && key !== "" ? "finding-row short" : "finding-row" },
          key === "" ? says : el("a", { href: context.address(name, key) }, says),
          words === "" ? "" : ` ${words}`,
        ),
      ]),
    rest > 0 && el("span", { class: "finding-row" }, `and ${rest} more`),
  ];
}

function linked(words: string, names: readonly string[], context: PageContext): HTMLElement | false {
  if (names.length === 0) return false;
  const numbers = names.map((name) =>
    el("a", { href: context.address(name) }, `${context.lineNumber(name) ?? ""}`),
  );
  return el(
    "p",
    { class: "caveat" },
    `${capital(words)}: line `,
    ...numbers.flatMap((number, i) => [i > 0 && ", ", number]),
    ".",
  );
}

export interface Summary {
  readonly element: HTMLElement;
  readonly update: (lines: readonly Line[]) => void;
}

export function summary(context: PageContext): Summary {
  const counts = el("p", { class: "counts" });
  const list = el("ul", { class: "exceptions" });
  const rests = el("div", { class: "caveats" });
  const element = el(
    "section",
    { class: "summary", "aria-label": "exceptions first" },
    el("div", { class: "reference" }, el("span", { class: "tiny" }, "exceptions first")),
    el("div", { class: "findings" }, list, counts, rests),
  );
  const update = (lines: readonly Line[]): void => {
    const found = exceptions(lines);
    const judged = lines.flatMap(judgements);
    const proven = judged.filter((state) => state === "proven").length;
    replace(
      list,
      ...found.map(({ mark, name, words, rows }) =>
        el(
          "li",
          {},
          stateWord(mark),
          el(
            "span",
            { class: "finding" },
            lineLink(name, context),
            " ",
            el("span", {}, words),
            ...rowParts(rows, name, context),
          ),
        ),
      ),
    );
    const rest = caveats(lines);
    replace(rests, ...caveatOrder.map((of) => linked(caveatWords[of], rest[of], context)));
    const nothing = found.length + rest.unsourced.length === 0 ? "; nothing else to look at first" : "";
    replace(
      counts,
      stateMark("proven"),
      ` ${proven} of ${counted(judged.length, "check")} proven${nothing}.`,
    );
  };
  return { element, update };
}
