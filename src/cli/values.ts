// Values as text and as JSON, in the units asked for. Numbers in JSON are not rounded; texts are, once.
import type { OutputValue } from "../methods/field.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { formatIn } from "../units/format.ts";
import { inUnit } from "../units/in-unit.ts";
import type { Kind } from "../units/kind.ts";
import type { Unit } from "../units/unit.ts";

export interface ValueRecord {
  readonly value: number | string | boolean | null | readonly Readonly<Record<string, ValueRecord>>[];
  readonly unit: string;
  readonly si: number | null;
  readonly text: string;
}

/** "N.m"; a ratio and a text have none. */
const unitText = (text: string): string => (text === "1" ? "" : text);

/** Four significant digits; a length keeps six, as far as they say something, for fits are read from them. */
export function resultText(si: number, kind: Kind, shown: Unit): string {
  if (kind !== "length") return formatIn(si, shown);
  const [number = "", unit = ""] = formatIn(si, shown, { significant: 6 }).split(" ");
  const extra = /^(-?[\d.]*\.\d*?)(0{1,2})(e.*)?$/.exec(number); // six digits: two may go, four stay
  return `${extra ? `${extra[1]}${extra[3] ?? ""}` : number} ${unit}`;
}

export const numberRecord = (si: number, shown: Unit, text: string): ValueRecord => ({
  value: inUnit(si, shown),
  unit: unitText(shown.text),
  si,
  text,
});

export function valueRecord(output: OutputValue, unitOf: UnitChoice): ValueRecord {
  switch (output.kind) {
    case "text":
      return { value: output.text, unit: "", si: null, text: output.text };
    case "yes/no":
      return { value: output.yes, unit: "", si: null, text: output.yes ? "yes" : "no" };
    case "list": {
      const value = output.rows.map((row) =>
        Object.fromEntries(Object.entries(row).map(([name, part]) => [name, valueRecord(part, unitOf)])),
      );
      return { value, unit: "", si: null, text: `${value.length} rows` };
    }
    default: {
      const shown = unitOf(output.kind);
      return numberRecord(output.si, shown, resultText(output.si, output.kind, shown));
    }
  }
}
