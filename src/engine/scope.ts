// What a name in a formula stands for: a given, a working, an output, a column of readings.
import type { OutputValue } from "../methods/field.ts";
import { methods } from "../methods/register.ts";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { dimensionless } from "../units/dimension.ts";
import { type Kind, kinds } from "../units/kind.ts";
import type { CellValue, Named, TableValue } from "./cell.ts";

/** Results of the cells an item uses, and the names of the whole page for suggestions. */
export interface Results {
  readonly get: (name: string) => CellValue | Problem | undefined;
  readonly keys: () => Iterable<string>;
}

/** A no-answer handed on: it keeps the first problem as its cause and shows no stale number. */
export function upstream(name: string, cause: Problem): Problem {
  return problem({
    code: "no-answer-upstream",
    what: name,
    why: "has no answer",
    cause: cause.cause ?? cause,
  });
}

export const truth = (yes: boolean): Named => ({
  typed: { dimension: dimensionless, truth: true },
  value: yes,
  leaf: undefined,
});

/** `stated`: the kind is binding, as where a field or an output states it; a product only has a dimension. */
export const number = (kind: Kind, si: number, symbol: string, stated: Kind | undefined = kind): Named => ({
  typed: { dimension: kinds[kind].dimension, kind: stated },
  value: si,
  leaf: { symbol, kind, si },
});

function fromOutput(name: string, output: OutputValue, symbol: string): Named | Problem {
  if (output.kind === "yes/no") return truth(output.yes);
  if (output.kind === "text" || output.kind === "list")
    return problem({
      code: "not-a-number",
      what: name,
      got: `a ${output.kind}`,
      must: "be a number in a formula",
    });
  return number(output.kind, output.si, symbol);
}

/** The value of "name" or "name.output" among the cells worked out so far. */
export function resolve(results: Results, fullName: string): Named | Problem {
  const dot = fullName.indexOf(".");
  const name = dot < 0 ? fullName : fullName.slice(0, dot);
  const part = dot < 0 ? undefined : fullName.slice(dot + 1);
  const found = results.get(name);
  if (found === undefined) return unknownName(name, [...results.keys()]);
  if (isProblem(found)) return upstream(name, found);
  switch (found.type) {
    case "quantity":
    case "formula":
      return part === undefined ? found.named : noPart(fullName, name, []);
    case "solution": {
      const outputs = Object.keys(found.solution.outputs);
      const wanted = part ?? (outputs.length === 1 ? outputs[0] : undefined);
      if (wanted === undefined) return severalOutputs(name, outputs);
      const output = found.solution.outputs[wanted];
      if (!output) return noPart(fullName, name, outputs);
      return fromOutput(fullName, output, symbolOfOutput(found.solution.method, wanted));
    }
    case "table":
      return column(found, fullName, name, part);
    case "text":
    case "check":
    case "picture":
    case "prose":
      return problem({
        code: "not-a-number",
        what: fullName,
        got: `a ${found.type}`,
        must: "be a number in a formula",
      });
  }
}

/** The symbol that the method's declaration gives an output. */
function symbolOfOutput(method: string, output: string): string {
  const field = methods.get(method)?.outputs[output];
  return field && "symbol" in field && field.symbol ? field.symbol : output;
}

function column(
  table: TableValue,
  fullName: string,
  name: string,
  part: string | undefined,
): Named | Problem {
  const found = table.columns.find((c) => c.name === part);
  if (!found)
    return noPart(
      fullName,
      name,
      table.columns.map((c) => c.name),
    );
  if (found.kind === "tag" || found.kind === "text")
    return problem({ code: "not-a-number", what: fullName, got: "texts", must: "be a column of numbers" });
  const values = found.values.filter((v): v is number => typeof v === "number"); // a blank is missing, never zero
  return {
    typed: { dimension: kinds[found.kind].dimension, kind: found.kind, column: true },
    value: values,
    leaf: { symbol: fullName, kind: found.kind, si: values },
  };
}

export function unknownName(name: string, known: readonly string[]): Problem {
  const near = nearest(
    name,
    known.filter((k) => !k.startsWith("#")),
  );
  return problem({
    code: "unknown-name",
    what: name,
    got: "a name that no item of the page has",
    must: "be the name of a given, a working or a reading",
    hint: near.length > 0 ? `did you mean ${near.join(" or ")}?` : undefined,
    suggestions: near,
  });
}

const severalOutputs = (name: string, outputs: readonly string[]): Problem =>
  problem({
    code: "several-outputs",
    what: name,
    got: "a working with several outputs",
    must: `be read as ${outputs
      .slice(0, 4)
      .map((o) => `${name}.${o}`)
      .join(", ")}`,
  });

function noPart(fullName: string, name: string, parts: readonly string[]): Problem {
  const part = fullName.slice(name.length + 1);
  const near = nearest(part, parts);
  return problem({
    code: "no-such-output",
    what: fullName,
    got: `no ${part} in ${name}`,
    must: parts.length > 0 ? `be one of ${parts.join(", ")}` : `be read as ${name}`,
    suggestions: near.map((p) => `${name}.${p}`),
  });
}
