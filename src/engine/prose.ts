// Notes with values of the page in them: each {formula} is worked out over the lines and shown as the
// page would show it. A number in a note is bound or it is not there, so it never contradicts the sums.
import { boundIn } from "../document/bound-formulas.ts";
import { type Block, parseMarkdown } from "../document/markdown.ts";
import { names, type Tree } from "../formula/tree.ts";
import { formatShort, formatValue, type UnitChoice, usualUnit } from "../methods/solution.ts";
import { isProblem, type Problem } from "../problem.ts";
import { sameDimension } from "../units/dimension.ts";
import { formatIn } from "../units/format.ts";
import { toNumber } from "../units/rational.ts";
import type { Unit } from "../units/unit.ts";
import { askedUnit } from "./check-words.ts";
import { formulaTree, workOut } from "./formula.ts";
import type { BoundText, FormulaValue, LineValue, ProseValue, QuantityValue } from "./line.ts";
import { type Results, upstream } from "./scope.ts";

export const emptyProse: ProseValue = { type: "prose", blocks: [], bound: {} };

/** Formulas between the braces of a text, each once. */
export function boundFormulas(text: string | undefined): readonly string[] {
  if (!text?.includes("{")) return [];
  return [...new Set(boundIn(parseMarkdown(text)).map(({ formula }) => formula))];
}

export function proseValue(text: string, results: Results, unitOf: UnitChoice = usualUnit): ProseValue {
  const blocks = parseMarkdown(text);
  const formulas = new Set(boundIn(blocks).map(({ formula }) => formula));
  const bound = [...formulas].map((formula) => [formula, boundText(formula, results, unitOf)] as const);
  return { type: "prose", blocks, bound: Object.fromEntries(bound) };
}

function boundText(formula: string, results: Results, unitOf: UnitChoice): BoundText {
  const words = wordsOf(formula, results) ?? numberText(formula, results, unitOf);
  return isProblem(words) ? { text: "no answer", problem: words } : { text: words, problem: undefined };
}

/** What has words and no number: a text, the state of a check, a yes or no. */
function wordsOf(formula: string, results: Results): string | Problem | undefined {
  const tree = formulaTree(formula);
  if (isProblem(tree) || tree.type !== "name") return undefined;
  const line = results.get(tree.name);
  if (line === undefined) return undefined;
  if (isProblem(line)) return upstream(tree.name, line);
  if (line.type === "solution") return outputText(line, tree.output);
  if (tree.output !== undefined) return undefined;
  if (line.type === "text") return line.text;
  if (line.type === "checks") return line.why;
  return line.type === "check" ? line.state : undefined;
}

function outputText({ solution }: Extract<LineValue, { type: "solution" }>, output = ""): string | undefined {
  const found = solution.outputs[output];
  return found?.kind === "text" ? found.text : undefined;
}

function numberText(formula: string, results: Results, unitOf: UnitChoice): string | Problem {
  const worked = workOut(formula, undefined, formula, results);
  if (isProblem(worked)) return worked;
  if (worked.kind === "yes/no") return worked.si === 1 ? "yes" : "no";
  const { tree } = worked.step;
  const line = tree.type === "name" ? results.get(tree.name) : undefined;
  if (line && !isProblem(line) && line.type === "quantity") return typedText(line, unitOf);
  const shown =
    sharedUnit(names(tree), worked, results, unitOf) ?? worked.unit ?? unitOf(worked.kind ?? "ratio");
  return isReading(tree, results)
    ? formatShort(worked.si, shown, true)
    : formatValue(worked.si, worked.kind, shown, true);
}

/** The smallest and the largest of a column were read, not worked out. */
function isReading(tree: Tree, results: Results): boolean {
  if (tree.type !== "call" || (tree.name !== "smallest" && tree.name !== "largest")) return false;
  const [of] = tree.args;
  const line = of?.type === "name" ? results.get(of.name) : undefined;
  return line !== undefined && !isProblem(line) && line.type === "table";
}

/** The unit that all names of the answer's own dimension are shown in, where it is one: um less um is um. */
function sharedUnit(
  used: readonly string[],
  { dimension }: FormulaValue,
  results: Results,
  unitOf: UnitChoice,
): Unit | undefined {
  const units = used.flatMap((name) => {
    const [base = "", part] = name.split(".");
    const line = results.get(base);
    if (line === undefined || isProblem(line)) return [];
    const shown = line.type === "quantity" ? givenUnit(line, unitOf) : askedUnit(line, part);
    return shown && sameDimension(shown.dimension, dimension) ? [shown] : [];
  });
  const [first] = units;
  return units.every((one) => one.text === first?.text) ? first : undefined;
}

/** What was typed keeps its digits, and the spread that was stated with it; "520 lbf·ft (705.0 N·m)". */
function typedText(value: QuantityValue, unitOf: UnitChoice): string {
  const { unit } = value.typed;
  const shown = givenUnit(value, unitOf);
  const number = formatShort(value.si, unit, true);
  const doubt =
    value.halfWidth === undefined || unit.offset
      ? ""
      : ` ± ${formatIn(value.halfWidth, unit, { significant: 2, label: true })}`;
  const other = shown.text === unit.text ? "" : ` (${formatShort(value.si, shown, true)})`;
  return number + doubt + other;
}

/**
 * The unit it was typed in, where that is the page's own or a metric multiple of it, 15 um beside mm; else
 * the page's unit, so that it can be compared with the numbers around it.
 */
function givenUnit({ kind, typed }: QuantityValue, unitOf: UnitChoice): Unit {
  const page = kind && unitOf(kind);
  if (!page || page.text === typed.unit.text || page.offset || typed.unit.offset) return page ?? typed.unit;
  const decades = Math.log10(toNumber(typed.unit.factor) / toNumber(page.factor));
  return Math.abs(decades - Math.round(decades)) < 1e-9 ? typed.unit : page;
}

/** The text as it reads, one block a line. */
export const plainText = ({ blocks, bound }: ProseValue): string =>
  blocks.flatMap((block) => blockTexts(block, bound)).join("\n");

const blockTexts = (block: Block, bound: ProseValue["bound"]): readonly string[] =>
  block.type === "list"
    ? block.items.map((item) => `- ${inlineText(item, bound)}`)
    : [inlineText(block.inlines, bound)];

type Inlines = Extract<Block, { type: "paragraph" }>["inlines"];

const inlineText = (inlines: Inlines, bound: ProseValue["bound"]): string =>
  inlines
    .map((part) => {
      if ("inlines" in part) return inlineText(part.inlines, bound);
      return part.type === "bound" ? (bound[part.formula]?.text ?? "no answer") : part.text;
    })
    .join("");
