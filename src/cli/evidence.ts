// The evidence that lies beside the package, in reference-checks/<method id>.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import {
  countRows,
  type EvidenceCounts,
  type EvidenceRow,
  evidenceRows,
  hasPublishedCheck,
} from "../report/evidence-rows.ts";

export interface Evidence {
  readonly counts: EvidenceCounts;
  /** Why no published check stands here, from the README; only where there is none. */
  readonly reason: string | undefined;
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

/** The folder reference-checks, where this copy has one. */
export function evidenceFolder(): string | undefined {
  const home = packageFolder();
  const folder = home && join(home, "reference-checks");
  return folder && existsSync(folder) ? folder : undefined;
}

/** Ids of the methods that have a folder of evidence. */
export const evidenceIds = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();

const textAt = (...path: readonly string[]): string => {
  const file = join(...path);
  return existsSync(file) ? readFileSync(file, "utf8") : "";
};

export const evidenceRowsAt = (folder: string, id: string): readonly EvidenceRow[] =>
  evidenceRows(textAt(folder, id, "cases.csv"));

/** Undefined where the copy came without its evidence. */
export function evidenceFor(id: string): Evidence | undefined {
  const folder = evidenceFolder();
  if (folder === undefined) return undefined;
  const counts = countRows(evidenceRowsAt(folder, id));
  const reason = hasPublishedCheck(counts) ? undefined : reasonIn(textAt(folder, id, "README.md"));
  return { counts, reason };
}

/** First sentence under "Sources", in house wording: lower case, no full stop. */
function reasonIn(readme: string): string | undefined {
  const sources = /^## Sources\n+([\s\S]*?)(?:\n\n|$)/m.exec(readme)?.[1]?.replaceAll("\n", " ");
  const said = sources && /^(.*?)\.(?: |$)/.exec(sources)?.[1];
  return said ? said.charAt(0).toLowerCase() + said.slice(1) : undefined;
}

/** "no published check: no published example was found; 3 rows recomputed by hand", where that is so. */
export function noPublishedCheck(evidence: Evidence | undefined): string | undefined {
  if (!evidence || hasPublishedCheck(evidence.counts)) return undefined;
  const { recomputed } = evidence.counts;
  const instead = recomputed === 0 ? "no rows at all" : `${recomputed} rows recomputed by hand`;
  return ["no published check", [evidence.reason, instead].filter(Boolean).join("; ")].join(": ");
}
