// A page file opened with only the families of methods that it asks for, and the pictures where it has one: the browser.
import { isMethodItem } from "../document/item.ts";
import { readPage } from "../document/read.ts";
import { loadMethods } from "../methods/load.ts";
import type { Problem } from "../problem.ts";
import { type OpenPage, opened } from "./opened.ts";

export async function fetchPage(
  text: string,
  file: string,
  loadPictures: () => Promise<unknown>,
): Promise<OpenPage | readonly Problem[]> {
  const { page, problems } = readPage(text, file);
  if (!page || problems.length > 0) return problems;
  await Promise.all([
    loadMethods(page.items.filter(isMethodItem).map((item) => item.by)),
    page.items.some(({ kind }) => kind === "picture") && loadPictures(),
  ]);
  return opened(page, text);
}
