// splitline solve: one method worked out from "name=value" words.
import { type AnyMethod, methodNamed } from "../../methods/index.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { readArguments } from "../arguments.ts";
import { lines } from "../columns.ts";
import { asJson, exitFine, type Outcome, refused, wantsJson } from "../outcome.ts";
import { outputUnits } from "../output-units.ts";
import { solveRecord } from "../solve-record.ts";
import { solveText } from "../solve-text.ts";

export function solveCommand(args: readonly string[], width: number): Outcome {
  const json = wantsJson(args);
  const read = readArguments("solve", args, { show: "texts" });
  if (isProblem(read)) return refused(read, json);
  const [id, ...words] = read.words;
  if (id === undefined) return refused(noMethod, json);
  const found = methodNamed(id);
  if (isProblem(found)) return refused(found, json);
  const inputs = namedValues(id, words);
  if (isProblem(inputs)) return refused(inputs, json);
  const odd = oddRow(found, inputs);
  if (odd) return refused(odd, json);
  const units = outputUnits(found, read.flags.get("show") ?? []);
  if (isProblem(units)) return refused(units, json);
  const solution = found.solveNamed(inputs);
  if (isProblem(solution)) return refused(solution, json);
  const out = json ? asJson(solveRecord(solution, units)) : lines(solveText(found, solution, units), width);
  return { exit: exitFine, out };
}

const noMethod = problem({
  code: "missing",
  where: "solve",
  what: "method",
  got: "nothing",
  must: "be named",
  hint: "splitline methods lists them",
});

/** "torque=520 lbf.ft nutFactor=0.14": a word without = belongs to the value before it. */
function namedValues(id: string, words: readonly string[]): Record<string, string> | Problem {
  const values: Record<string, string> = {};
  let last: string | undefined;
  for (const word of words) {
    const [, name, text] = /^([A-Za-z][\w.]*)=([\s\S]*)$/.exec(word) ?? [];
    if (name !== undefined && text !== undefined) {
      if (Object.hasOwn(values, name)) return givenTwice(id, name, [values[name] ?? "", text]);
      values[name] = text;
      last = name;
    } else if (last !== undefined) values[last] = `${values[last]} ${word}`;
    else return notNamed(id, word);
  }
  return values;
}

/** Typed lists hold texts and numbers only; what a list must hold otherwise is the method's to say. */
function oddRow(m: AnyMethod, values: Readonly<Record<string, string>>): Problem | undefined {
  for (const [name, text] of Object.entries(values)) {
    if (m.inputs[name]?.kind !== "list" || !text.trimStart().startsWith("[")) continue;
    const odd = /"(\w+)"\s*:\s*([[{])/.exec(text); // a value that is itself a list or a record
    if (odd)
      return problem({
        code: "not-a-quantity",
        where: `${m.id} · ${name}`,
        what: odd[1] ?? name,
        got: odd[2] === "[" ? "a list" : "a record",
        must: 'be a text such as "20 mm"',
      });
  }
  return undefined;
}

const notNamed = (id: string, word: string): Problem =>
  problem({
    code: "not-named",
    where: id,
    what: word,
    got: "a word without a name",
    must: "be written name=value",
    hint: `splitline methods ${id} lists the names`,
  });

const givenTwice = (id: string, name: string, values: readonly string[]): Problem =>
  problem({ code: "given-twice", where: id, what: name, got: values.join(" and "), must: "be given once" });
