// Values as text and as JSON, in the units asked for. Numbers in JSON are not rounded; texts are, once.
import type { OutputValue } from "../methods/field.ts";
import { formatValue, type UnitChoice } from "../methods/solution.ts";
import { halfWidth } from "../standing.ts";
import { formatIn } from "../units/format.ts";
import { differenceUnit, inUnit } from "../units/in-unit.ts";
import type { Unit } from "../units/unit.ts";

export interface ValueRecord {
  readonly value: number | string | boolean | null | readonly Readonly<Record<string, ValueRecord>>[];
  readonly unit: string;
  readonly si: number | null;
  readonly text: string;
  /** Half-width that the stated doubt of the inputs comes to, in the same unit. */
  readonly halfWidth?: number;
}

/** "N.m"; a ratio and a text have none. */
export const unitText = (text: string): string => (text === "1" ? "" : text);

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
      const record = numberRecord(output.si, shown, formatValue(output.si, output.kind, shown));
      if (output.doubt === undefined) return record;
      const half = halfWidth(output.doubt);
      const width = differenceUnit(shown);
      const text = `${record.text} ± ${formatIn(half, width, { significant: 2 })}`;
      return { ...record, text, halfWidth: inUnit(half, width) };
    }
  }
}
