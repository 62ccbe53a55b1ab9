// A page file opened with every method at hand: command line, library, tests.
import { readPage } from "../document/read.ts";
import "../methods/index.ts";
import type { Problem } from "../problem.ts";
import { type OpenPage, opened } from "./opened.ts";

export function openPage(text: string, file: string): OpenPage | readonly Problem[] {
  const { page, problems } = readPage(text, file);
  return page && problems.length === 0 ? opened(page, text) : problems;
}
