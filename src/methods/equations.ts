// The equations of a method as text, from the same trees that run, each with its own symbols.
import { parse } from "../formula/parse.ts";
import { plain, type Shown, show, symbolOf } from "../formula/show.ts";
import { isProblem } from "../problem.ts";
import { cite } from "../source.ts";
import { symbolIn } from "./field.ts";
import type { AnyMethod } from "./index.ts";
import type { Steps } from "./method.ts";

export interface Equation {
  readonly name: string;
  /** "for each of frusta", "form: exact", or empty. */
  readonly group: string;
  /** "F = T / (K · d)" */
  readonly text: string;
  readonly source: string | null;
}

type Fields = Readonly<Record<string, { readonly symbol?: string; readonly of?: Fields } | object>>;

/** Symbols of every name the method speaks of; columns of lists as "list.column", and bare where no other name is meant. */
function symbolsOf(m: AnyMethod): ReadonlyMap<string, string> {
  const own = new Map<string, string>();
  const columns = new Map<string, string>();
  const put = (fields: Fields, list?: string): void => {
    for (const [name, field] of Object.entries(fields)) {
      const symbol = symbolIn(field);
      if (symbol !== undefined && list === undefined) own.set(name, symbol);
      else if (symbol !== undefined) columns.set(`${list}.${name}`, symbol).set(name, symbol);
      if ("of" in field && field.of !== undefined) put(field.of, name);
    }
  };
  put(m.inputs);
  put(m.procedure?.gives ?? {});
  put(m.between ?? {});
  for (const [list, fields] of Object.entries(m.procedure?.givesRows ?? {})) put(fields, list);
  put(m.outputs);
  return new Map([...columns, ...own]);
}

export function equationsOf(m: AnyMethod): Equation[] {
  const symbols = symbolsOf(m);
  // Inside a row its own columns are meant first.
  const leafIn =
    (prefix: string) =>
    (name: string): Shown =>
      symbolOf(symbols.get(prefix + name) ?? symbols.get(name) ?? name);
  const set = (steps: Steps, group: string, prefix = ""): Equation[] =>
    Object.entries(steps).flatMap(([name, text]) => {
      const leaf = leafIn(prefix);
      const tree = parse(text);
      if (isProblem(tree)) return [];
      const source = m.sources[name] ?? m.sources["*"];
      const symbol = plain(leaf(name));
      return [
        { name, group, text: `${symbol} = ${plain(show(tree, leaf))}`, source: source ? cite(source) : null },
      ];
    });
  return [
    ...Object.entries(m.variants?.sets ?? {}).flatMap(([choice, steps]) =>
      set(steps, `${m.variants?.by}: ${choice}`),
    ),
    ...Object.entries(m.each ?? {}).flatMap(([list, steps]) => set(steps, `for each of ${list}`, `${list}.`)),
    ...set(m.steps ?? {}, ""),
  ];
}

/** "K < 1: no thread has such a nut factor" */
export function limitsOf(
  m: AnyMethod,
): { readonly that: string; readonly otherwise: string; readonly warning: boolean }[] {
  const symbols = symbolsOf(m);
  return m.limits.map((limit) => {
    const tree = parse(limit.that);
    const that = isProblem(tree)
      ? limit.that
      : plain(show(tree, (name) => symbolOf(symbols.get(name) ?? name)));
    return { that, otherwise: limit.else, warning: limit.warn !== undefined };
  });
}

/** Every source the method names, once. */
export function sourcesOf(m: AnyMethod): string[] {
  const all = [
    m.procedure?.source,
    ...Object.values(m.variants?.sources ?? {}),
    ...Object.values(m.sources),
    ...m.limits.map((limit) => limit.source),
  ];
  return [...new Set(all.flatMap((s) => (s ? [cite(s)] : [])))];
}
