// Words of sentences and tables: names as a person writes them, numbers already in their unit.
import { forReading } from "../report/figure-text.ts";
import { roundDecimal } from "../units/format.ts";

/** "wrongClass" as a person writes it. */
export const spaced = (name: string): string =>
  name
    .replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)
    .replaceAll("_", " ");

/** Without zeros behind the point. */
export const shortened = (number: string): string => number.replace(/(\.\d*?)0+$/, "$1").replace(/\.$/, "");

/** A number already in the unit shown, without zeros behind the point. */
export const rounded =
  (decimals: number) =>
  (value: number): string =>
    forReading(shortened(roundDecimal(value, { decimals })));

export const percent = (share: number): string => `${rounded(1)(share * 100)} %`;
