// A page file opened with every method at hand: command line, library, tests.
import { readPage } from "../document/read.ts";
import "../methods/index.ts";
import type { Problem } from "../problem.ts";
import { type LivePage, livePage } from "./live-page.ts";

export function openPage(text: string, file: string): LivePage | readonly Problem[] {
  const { page, problems } = readPage(text, file);
  return page && problems.length === 0 ? livePage(page, text) : problems;
}
