// splitline convert: one quantity in other units, with how it was read, the exact value and the rule.
// Reaches src/units only, so that it starts quickly.
import { isProblem, type Problem, problem } from "../../problem.ts";
import { conversionRequest } from "../../units/conversion-request.ts";
import { type Converted, convert, convertTo } from "../../units/convert.ts";
import { exactText, shortText } from "../../units/exact-text.ts";
import { rule, usualAnswers, wouldMean } from "../../units/explain.ts";
import { type Kind, withArticle } from "../../units/kind.ts";
import type { Quantity } from "../../units/quantity.ts";
import { quantity } from "../../units/quantity.ts";
import { terminates, toDecimal } from "../../units/rational.ts";
import type { Scan } from "../../units/scan.ts";
import { scanFor } from "../../units/scan-for.ts";
import { unit } from "../../units/unit.ts";
import { readArguments } from "../arguments.ts";
import { alignFigures, columns, lines } from "../columns.ts";
import { kindNamed } from "../kind-named.ts";
import { asJson, exitFine, exitUnread, type Outcome, refused, wantsJson } from "../outcome.ts";

export function convertCommand(args: readonly string[], width: number): Outcome {
  const json = wantsJson(args);
  const read = readArguments("convert", args, { to: "text", as: "text" });
  if (isProblem(read)) return refused(read, json);
  const { text, to } = wordsAndTarget(read.words.join(" ").trim(), read.flags.get("to")?.[0]);
  const asked = read.flags.get("as")?.[0];
  const as = asked === undefined ? undefined : kindNamed(asked);
  if (isProblem(as)) return refused(as, json);
  if (text === "") return refused(nothing, json);
  const found = scanFor(text, to, as);
  if (!found.quantity) return notRead(found, as, to, json, width);
  const answer = answerFor(found.quantity, to);
  if (isProblem(answer)) return refused(answer, json);
  if (json) return { exit: exitFine, out: asJson(record(found, found.quantity, answer)) };
  return { exit: exitFine, out: lines(told(found, found.quantity, answer, to !== undefined), width) };
}

const nothing = problem({
  code: "missing",
  where: "convert",
  what: "quantity",
  got: "nothing",
  must: "be a number and a unit",
  hint: 'for example splitline convert "220 lbf.in" --to N.m',
});

/** "220 lbf.in to N.m" asks the same as --to N.m. */
const wordsAndTarget = (text: string, to: string | undefined): { text: string; to: string | undefined } =>
  (to === undefined ? conversionRequest(text) : undefined) ?? { text, to };

/** A bare number is answered with what it would mean; anything else with the scanner's own sentence. */
function notRead(
  found: Scan,
  as: Kind | undefined,
  to: string | undefined,
  json: boolean,
  width: number,
): Outcome {
  const target = to === undefined ? undefined : unit(to);
  const asked = as ? [as] : target && !isProblem(target) && target.kinds[0] ? [target.kinds[0]] : undefined;
  const meanings = wouldMean(found.text, asked);
  const refusal = found.problem ?? quantity(found.text, as, { confirmed: true });
  if (!isProblem(refusal)) return refused(nothing, json);
  if (json || meanings.length === 0) return refused(refusal, json);
  const rows = meanings.map((m, i) => [
    meanings[i - 1]?.kind === m.kind ? "" : m.kind,
    ...m.text.split(" = ").map((part, side) => (side === 0 ? part : `= ${part}`)),
  ]);
  const head = `${found.text}: got no unit, must have one; it would mean`;
  return { exit: exitUnread, err: lines([head, ...columns(rows)], width) };
}

interface Found {
  readonly main: Converted;
  readonly also: readonly Converted[];
}

/** The unit asked for, or the first usual unit that is not the typed one; the other usual units beside it. */
function answerFor(q: Quantity, to: string | undefined): Found | Problem {
  const usual = usualAnswers(q).map((answer) => convertTo(q, answer.unit));
  const main = to === undefined ? (usual[0] ?? convertTo(q, q.unit)) : convert(q, to);
  if (isProblem(main)) return main;
  return { main, also: usual.filter((other) => other.unit.text !== main.unit.text) };
}

const record = (found: Scan, q: Quantity, { main, also }: Found) => ({
  input: found.text,
  kind: q.kind ?? null,
  readAs: found.readAs ?? null,
  value: main.value,
  unit: main.unit.text,
  exact: exactText(main.exact),
  ...(main.spread === undefined ? {} : { spread: main.spread }),
  also: also.map(({ value, unit: u, text, spread }) => ({
    value,
    unit: u.text,
    text,
    ...(spread === undefined ? {} : { spread }),
  })),
});

const withUnitText = (number: string, u: Converted["unit"]): string =>
  u.text === "1" ? number : `${number} ${u.text}`;

function told(found: Scan, q: Quantity, { main, also }: Found, asked: boolean): string[] {
  const same = main.unit.text === q.unit.text; // a combination without usual units
  const said = [
    same ? found.text : `${found.text} = ${withUnitText(shortText(main.exact, found.text), main.unit)}`,
  ];
  said.push(`read as ${found.readAs ?? found.text}${q.kind === "temperature" ? ", a reading" : ""}`);
  if (found.problem) said.push(`confirm: ${found.problem.why ?? found.problem.hint ?? ""}`);
  if (main.spread !== undefined) said.push(`spread   ${main.spread}`);
  const about = terminates(main.exact) ? "" : `, about ${withUnitText(toDecimal(main.exact, 16), main.unit)}`;
  said.push(`exact    ${withUnitText(exactText(main.exact), main.unit)}${about}`);
  const asks = same ? [q.unit] : [q.unit, main.unit];
  said.push(...asks.filter((u) => !isCoherent(u)).map((u) => `rule     ${rule(u)}`));
  if (!asked && also.length > 0) {
    said.push("", `also as ${withArticle(q.kind ?? "quantity")}`);
    said.push(
      ...alignFigures(
        also.map(({ text, spread }) => (spread === undefined ? text : `${text}, ${spread}`)),
      ).map((text) => `  ${text}`),
    );
  }
  if (q.kind === "temperature") said.push("", asDifference(found.text));
  return said;
}

const isCoherent = (u: Converted["unit"]): boolean => u.factor.n === 1n && u.factor.d === 1n && !u.offset;

/** A reading of 50 degF is 283.15 K; a change of 50 degF is 27.78 K. The other one is always said. */
function asDifference(text: string): string {
  const difference = quantity(text, "temperature difference", { confirmed: true });
  const kelvin = isProblem(difference) ? difference : convert(difference, "K");
  if (isProblem(kelvin)) return 'for a difference add --as "temperature difference"';
  return `as a difference it would be ${kelvin.text} (--as "temperature difference")`;
}
