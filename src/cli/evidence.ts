// Reference rows that lie beside the package: how many a method is held against, by how each is known.
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { csvFields } from "../document/csv-fields.ts";

export interface Evidence {
  readonly rows: number;
  /** "read", "second-hand", "derived", … → rows; empty where the file does not say. */
  readonly known: Readonly<Record<string, number>>;
}

/** The folder that holds package.json, from where this code runs: src, or the bundle in dist. */
function packageFolder(): string | undefined {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, "package.json"))) {
    const above = dirname(folder);
    if (above === folder) return undefined;
    folder = above;
  }
  return folder;
}

export function evidenceFor(id: string): Evidence | undefined {
  const home = packageFolder();
  const file = home && join(home, "reference-checks", id, "cases.csv");
  return file && existsSync(file) ? countRows(readFileSync(file, "utf8")) : undefined;
}

export function countRows(csv: string): Evidence {
  const comments = /^#.*$/; // a note between the rows is no row
  const rows = csvFields(csv, ",").rows.filter(({ fields }) => {
    const [first = ""] = fields;
    return !(fields.length === 1 && first.trim() === "") && !comments.test(first);
  });
  const column = rows[0]?.fields.findIndex((name) => name.trim() === "known") ?? -1;
  const known: Record<string, number> = {};
  for (const { fields } of rows.slice(1)) {
    const word = fields[column]?.trim();
    if (word) known[word] = (known[word] ?? 0) + 1;
  }
  return { rows: Math.max(0, rows.length - 1), known };
}
