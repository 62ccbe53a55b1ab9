// Exceptions first: what fails, what has no answer, what is unproven or waived, then how much is proven.

import { whyAlone } from "../engine/check-parts.ts";
import type { CheckValue, Line } from "../engine/line.ts";
import { setAsideSentences, setAsidesOf } from "../engine/set-asides.ts";
import { isProblem, type Problem, root } from "../problem.ts";
import { type State, states } from "../verdict.ts";
import { capital, counted, ended } from "../words.ts";
import { type Child, el, replace } from "./dom.ts";
import { lineLink } from "./more.ts";
import { onScreen } from "./on-screen.ts";
import type { PageContext } from "./page-context.ts";
import { inPlace } from "./problem-note.ts";
import { type RowException, rowExceptions, shortReservations, statesOf } from "./row-exceptions.ts";
import { type Mark, stateMark, stateWord } from "./state-mark.ts";

export interface Exception {
  readonly mark: Mark;
  readonly name: string;
  readonly words: string;
  /** Single rows of the line, each with its own words. */
  readonly rows?: readonly RowException[];
}

export function stateOf(line: Line): State | undefined {
  if (isProblem(line.value)) return "no answer";
  return line.value.type === "check" || line.value.type === "checks" ? line.value.state : undefined;
}

const held = (value: CheckValue): readonly string[] =>
  shortReservations(value).map((words) => `May not hold: ${ended(words)}`);

/** One entry for each thing to look at; lines that only wait for another are counted with it. */
export function exceptions(
  lines: readonly Line[],
  itemOf: PageContext["itemOf"] = () => undefined,
  isMeant: (name: string) => boolean = () => false,
): readonly Exception[] {
  const waiting = new Map<string, number>();
  for (const { name, guilty } of lines)
    if (guilty !== undefined && guilty !== name) waiting.set(guilty, (waiting.get(guilty) ?? 0) + 1);
  const found = lines.flatMap((line): readonly Exception[] => {
    const { name, item, value } = line;
    if (isProblem(value)) {
      if (line.guilty !== undefined && line.guilty !== name) return [];
      const wait = waiting.get(name) ?? 0;
      const others =
        wait === 0 ? "" : ` ${capital(counted(wait, "line"))} ${wait === 1 ? "waits" : "wait"} for it.`;
      return [{ mark: "no answer", name, words: inPlace(root(value)) + others }];
    }
    if (value.type === "check" && value.state !== "proven")
      return [
        {
          mark: value.state,
          name,
          words: value.waived
            ? `by ${value.waived.by}: ${value.waived.why}`
            : [onScreen(`${capital(whyAlone(value))}.`), ...held(value)].join(" "),
        },
      ];
    if (item.kind === "reading" && value.type === "table") {
      const aside = asideException(line);
      return [...(aside ? [aside] : []), ...rowExceptions(line, itemOf)];
    }
    if (value.type === "solution")
      return value.solution.warnings.map((warning) => ({ mark: "warning", name, words: shortly(warning) }));
    if (value.type === "quantity" && value.confirm && !isMeant(name))
      return [{ mark: "warning", name, words: askedWords(value.confirm) }];
    return rowExceptions(line, itemOf);
  });
  const order: readonly Mark[] = [
    "set aside",
    ...states.filter((state) => state !== "waived"),
    "waived",
    "missing",
    "odd",
    "warning",
  ];
  return [...found].sort((a, b) => order.indexOf(a.mark) - order.indexOf(b.mark));
}

/** "24,5 mm": the comma is read as a decimal mark, 24.5; is that meant? */
const askedWords = ({ got, why, hint }: Problem): string =>
  onScreen(`${got ?? ""}: ${why ?? hint ?? ""}`).replace(/[^?.]$/, "$&.");

const mostAside = 8;

/** Every reading that is kept and not used, with who and why: it leads, since all that follows rests on the others. */
function asideException(line: Line): Exception | undefined {
  const all = setAsidesOf(line);
  if (all.length === 0) return undefined;
  const said = setAsideSentences(all);
  const rest = said.length - mostAside;
  const rows = said
    .slice(0, mostAside)
    .map((text) => ({ key: "", says: onScreen(`${capital(text)}.`), words: "" }));
  const more = rest > 0 ? [{ key: "", says: `and ${rest} more`, words: "" }] : [];
  return {
    mark: "set aside",
    name: line.name,
    words: `${counted(all.length, "reading")} kept and not used:`,
    rows: [...rows, ...more],
  };
}

/** What follows and what to do; the figures stand at the line itself. */
function shortly(warning: Problem): string {
  const words = [warning.why, warning.hint].filter(Boolean).join("; ");
  return words === "" ? inPlace(warning) : `${capital(words)}.`;
}

const mostRows = 8;

/** "hole 18: 11.7 µm ± 3.6 µm against at most 15 µm", each a link to its row. */
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

const fromMemory = /\bfrom memory\b/i;
const notCovered = /\bnot cover/i;

/** Lines that rest on a source nobody saw, and those that say what the page leaves out. */
export function caveats(lines: readonly Line[]): {
  readonly memory: readonly string[];
  readonly unsourced: readonly string[];
  readonly left: readonly string[];
} {
  const recalled = ({ item, value }: Line): boolean =>
    fromMemory.test(item.source ?? "") ||
    (!isProblem(value) &&
      value.type === "solution" &&
      value.solution.sources.some(({ known }) => known === "memory"));
  return {
    memory: lines.filter(recalled).map(({ name }) => name),
    unsourced: lines.flatMap(({ name, value }) =>
      !isProblem(value) && value.type === "quantity" && value.sourceState !== "stated" ? [name] : [],
    ),
    left: lines.flatMap(({ item, name }) =>
      item.kind === "note" && notCovered.test(item.text) ? [name] : [],
    ),
  };
}

const linked = (words: string, names: readonly string[], context: PageContext): HTMLElement | false => {
  if (names.length === 0) return false;
  const numbers = names.map((name) =>
    el("a", { href: context.address(name) }, `${context.lineNumber(name) ?? ""}`),
  );
  return el(
    "p",
    { class: "caveat" },
    `${words} `,
    ...numbers.flatMap((number, i) => [i > 0 && ", ", number]),
    ".",
  );
};

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
    const found = exceptions(lines, context.itemOf, (name) => context.isConfirmed(name, context.typed(name)));
    const judged = lines.flatMap(statesOf);
    const proven = judged.filter((state) => state === "proven").length;
    const checks = judged.length;
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
    const { memory, unsourced, left } = caveats(lines);
    replace(
      rests,
      linked("What this page does not cover: line", left, context),
      linked("Values whose source is not stated: line", unsourced, context),
      linked("Sources from memory, to be confirmed before use: line", memory, context),
    );
    replace(
      counts,
      stateMark("proven"),
      ` ${proven} of ${counted(checks, "check")} proven${found.length + unsourced.length === 0 ? "; nothing else to look at first" : ""}.`,
    );
  };
  return { element, update };
}
