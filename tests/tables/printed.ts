// Printed figures that no method answers, from reference-checks/not-covered.csv: a table that holds them is
// compared with these lines.
import { readFileSync } from "node:fs";
import { csvParse } from "d3";

export interface Printed {
  readonly id: string;
  readonly title: string;
  readonly quantity: string;
  readonly printed: number;
}

export function printedLines(idStartsWith: string): readonly Printed[] {
  const file = new URL("../../reference-checks/not-covered.csv", import.meta.url);
  return csvParse(readFileSync(file, "utf8"))
    .filter((line) => line["id"]?.startsWith(idStartsWith))
    .map((line) => ({
      id: line["id"] ?? "",
      title: line["title"] ?? "",
      quantity: (line["id"] ?? "").split("/").slice(1).join("/"),
      printed: Number(line["printed"]),
    }));
}
