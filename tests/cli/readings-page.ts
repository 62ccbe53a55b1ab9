// A small invented page with readings of every state, in a folder of its own, and the command run on it.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Ran, splitlineIn } from "./built.ts";

export const pageText = `splitline: 1
title: Bores, invented
page:
  # kept: this remark is no part of any reading
  - reading: holes
    says: Bores as read
    columns: { position: tag, direction: tag, diameter: length, state: tag, reason: text }
    key: [position, direction]
    expect: { position: [1, 3, 5, 7], direction: [along, across] }
    odd: { diameter: 10 um }
    rows: |
      position,direction,diameter/mm,state,reason
      1,along,25.010,,
      1,across,25.011,,
      3,along,25.034,,
      3,across,,,
      5,along,25.019,,
      5,across,25.045,,
      5,across,25.020,,"gauge was warm, read again"
      5,along,26.019,set aside,slip of the pen

  - given: limit      # stays
    value: 25.0400 mm
  - reading: trial
    says: Stretch, read twice without a key
    columns: { position: tag, stretch: length }
    rows: |
      position,stretch/mm
      5,0.230
      5,0.230
  - reading: german
    says: Decimal commas
    columns: { position: tag, depth: length, remark: text }
    key: [position]
    decimal: comma
    delimiter: semicolon
    rows: |
      position;depth/mm;remark
      1;-1,25;-rough, with a comma
      2;0,50;=1+1
`;

/** The first line of a file for the holes. */
export const heads = "position,direction,diameter/mm,state,reason\n";

export interface Folder {
  readonly path: string;
  readonly page: string;
  text: () => string;
  write: (name: string, text: string | Uint8Array) => string;
  readings: (args: readonly string[], input?: string) => Promise<Ran>;
  data: (args: readonly string[], input?: string) => Promise<{ exit: number; data: unknown }>;
  remove: () => void;
}

export function pageFolder(text = pageText): Folder {
  const path = mkdtempSync(join(tmpdir(), "splitline-readings-"));
  const page = join(path, "page.yaml");
  writeFileSync(page, text);
  const readings = (args: readonly string[], input?: string) =>
    splitlineIn(path, ["readings", "page.yaml", ...args], input);
  return {
    path,
    page,
    text: () => readFileSync(page, "utf8"),
    write: (name, content) => {
      writeFileSync(join(path, name), content);
      return name;
    },
    readings,
    data: async (args, input) => {
      const { exit, out } = await readings([...args, "--json"], input);
      return { exit, data: JSON.parse(out) };
    },
    remove: () => rmSync(path, { recursive: true }),
  };
}
