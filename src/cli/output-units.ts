// Which unit each output is shown in: the usual one of its kind, or what --show asks for.
import type { AnyMethod } from "../methods/index.ts";
import { type UnitChoice, usualUnit } from "../methods/solution.ts";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { type Kind, kinds } from "../units/kind.ts";
import { type Unit, unit } from "../units/unit.ts";
import { isKind } from "./kind-named.ts";

export interface OutputUnits {
  /** By kind, for the working and for rows of a list. */
  readonly ofKind: UnitChoice;
  /** By output name first. */
  readonly ofOutput: (name: string) => UnitChoice;
}

/** "torque=lbf.ft" names a kind or an output; several may be given, or parted by commas. */
export function outputUnits(m: AnyMethod, asked: readonly string[]): OutputUnits | Problem {
  const byKind = new Map<Kind, Unit>();
  const byName = new Map<string, Unit>();
  for (const text of asked.flatMap((list) => list.split(","))) {
    const sign = text.indexOf("=");
    const name = text.slice(0, Math.max(0, sign)).trim();
    const wanted = text.slice(sign + 1).trim();
    if (name === "" || wanted === "") return notAPair(m.id, text);
    const kind = kindOf(m, name);
    if (isProblem(kind)) return kind;
    const found = unit(wanted, kind);
    if (isProblem(found)) return found.at(`${m.id} · --show ${name}`);
    if (Object.hasOwn(m.outputs, name)) byName.set(name, found);
    else byKind.set(kind, found);
  }
  const ofKind: UnitChoice = (kind) => byKind.get(kind) ?? usualUnit(kind);
  // A line of working also holds values of other kinds: those keep their own unit.
  const own = (name: string, kind: Kind) => (m.outputs[name]?.kind === kind ? byName.get(name) : undefined);
  return { ofKind, ofOutput: (name) => (kind) => own(name, kind) ?? ofKind(kind) };
}

function kindOf(m: AnyMethod, name: string): Kind | Problem {
  const output = m.outputs[name];
  if (output && isKind(output.kind)) return output.kind;
  if (isKind(name)) return name;
  const names = [...Object.keys(m.outputs), ...Object.keys(kinds)];
  const near = nearest(name, names);
  return problem({
    code: "unknown-output",
    where: m.id,
    what: "--show",
    got: name,
    must: `be a kind, or one of the outputs ${Object.keys(m.outputs).join(", ")}`,
    suggestions: near,
  });
}

const notAPair = (id: string, text: string): Problem =>
  problem({
    code: "not-a-pair",
    where: id,
    what: "--show",
    got: text,
    must: "be written name=unit",
    hint: "for example --show torque=lbf.ft",
  });
