// Display tree → MathML Core. No TeX and no markup text: every node is made, and the line of plain
// text beside it says the same to those who listen.
import { plain, type Shown } from "../../formula/show.ts";
import { forReading } from "../../report/figure-text.ts";
import { mathElement } from "../dom.ts";

const invisibleApply = "\u2061";

/** One line of a working; what is spoken may say more than what is drawn here. */
export function mathLine(parts: readonly Shown[], spoken: readonly Shown[] = parts): Element {
  return mathElement(
    "math",
    { display: "block", "aria-label": spoken.map(plain).join(" ") },
    mathElement("mrow", {}, ...parts.map(node)),
  );
}

function node(shown: Shown): Element {
  switch (shown.type) {
    case "row":
      return mathElement("mrow", {}, ...shown.parts.map(node));
    case "fraction":
      return mathElement("mfrac", {}, node(shown.top), node(shown.bottom));
    case "power":
      return mathElement("msup", {}, node(shown.base), node(shown.exponent));
    case "root":
      return mathElement("msqrt", {}, node(shown.of));
    case "symbol":
      return symbol(shown.text, shown.sub);
    case "number":
      return number(shown.text, shown.unit);
    case "operator":
      return mathElement("mo", {}, shown.text);
    case "fence":
      return mathElement("mrow", {}, bracket("("), node(shown.of), bracket(")"));
    case "function":
      return mathElement(
        "mrow",
        {},
        mathElement("mi", { mathvariant: "normal" }, shown.name),
        mathElement("mo", {}, invisibleApply),
        mathElement("mrow", {}, bracket("("), ...separated(shown.args), bracket(")")),
      );
    case "cases":
      return mathElement(
        "mrow",
        {},
        bracket("{"),
        mathElement(
          "mtable",
          { class: "cases" },
          ...shown.rows.map(({ value, when }) => caseRow(value, when)),
        ),
      );
  }
}

const bracket = (text: string): Element => mathElement("mo", { stretchy: "true" }, text);

function symbol(text: string, sub: string | undefined): Element {
  const base = mathElement("mi", {}, text);
  return sub === undefined
    ? base
    : mathElement("msub", {}, base, mathElement("mi", { mathvariant: "normal" }, sub));
}

function number(text: string, unit: string | undefined): Element {
  const figure = mathElement("mn", {}, forReading(text));
  if (unit === undefined) return figure;
  const gap = mathElement("mspace", { width: "0.2em" });
  return mathElement("mrow", {}, figure, gap, mathElement("mtext", {}, unit));
}

const separated = (args: readonly Shown[]): readonly Element[] =>
  args.flatMap((arg, i) => (i === 0 ? [node(arg)] : [mathElement("mo", {}, ","), node(arg)]));

function caseRow(value: Shown, when: Shown): Element {
  const otherwise = when.type === "symbol" && when.text === "otherwise";
  return mathElement(
    "mtr",
    {},
    mathElement("mtd", {}, node(value)),
    mathElement(
      "mtd",
      {},
      mathElement("mtext", {}, otherwise ? "otherwise" : "if "),
      !otherwise && node(when),
    ),
  );
}

/** About how many figures wide the line will be: long ones are written as wrapping text where space is short. */
export function breadth(shown: Shown): number {
  switch (shown.type) {
    case "row":
      return shown.parts.reduce((sum, part) => sum + breadth(part), 0);
    case "fraction":
      return Math.max(breadth(shown.top), breadth(shown.bottom)) + 1;
    case "power":
      return breadth(shown.base) + 0.7 * breadth(shown.exponent);
    case "root":
    case "fence":
      return breadth(shown.of) + 2;
    case "symbol":
      return shown.text.length + 0.7 * (shown.sub?.length ?? 0);
    case "number":
      return shown.text.length + (shown.unit === undefined ? 0 : shown.unit.length + 0.5);
    case "operator":
      return 3;
    case "function":
      return shown.name.length + 2 + shown.args.reduce((sum, arg) => sum + breadth(arg) + 1, 0);
    case "cases":
      return 4 + Math.max(...shown.rows.map(({ value, when }) => breadth(value) + breadth(when)));
  }
}
