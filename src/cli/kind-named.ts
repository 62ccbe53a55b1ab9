// A kind of quantity by its name, as --as and --show take it.
import { nearest } from "../nearest.ts";
import { type Problem, problem } from "../problem.ts";
import { type Kind, kinds } from "../units/kind.ts";

export const isKind = (text: string): text is Kind => Object.hasOwn(kinds, text);

export function kindNamed(text: string): Kind | Problem {
  const typed = text.trim().toLowerCase();
  if (isKind(typed)) return typed;
  const names = Object.keys(kinds);
  const near = nearest(typed, names);
  return problem({
    code: "unknown-kind",
    where: "convert",
    what: "--as",
    got: text,
    must: "be a kind of quantity",
    hint: near[0] ? `did you mean ${near.join(" or ")}?` : `one of ${names.join(", ")}`,
    suggestions: near,
  });
}
