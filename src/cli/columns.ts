// Plain text layout: columns by width, figures by their point, long lines broken only where a terminal says how wide it is.

import { onOneLine } from "../visible.ts";

/** Characters a text takes on a terminal; combining marks and modifiers take none. */
export const widthOf = (text: string): number => Array.from(text.replace(/\p{Mark}/gu, "")).length;

export const padEnd = (text: string, width: number): string =>
  text + " ".repeat(Math.max(0, width - widthOf(text)));

export const padStart = (text: string, width: number): string =>
  " ".repeat(Math.max(0, width - widthOf(text))) + text;

/** Rows of cells as left-aligned columns, two spaces apart. */
export function columns(rows: readonly (readonly string[])[], indent = "  "): string[] {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((cell, i) => {
      widths[i] = Math.max(widths[i] ?? 0, widthOf(cell));
    });
  return rows.map((row) =>
    `${indent}${row.map((cell, i) => padEnd(cell, widths[i] ?? 0)).join("  ")}`.trimEnd(),
  );
}

const figure = /^([-−]?[\d\s\u2009]*\d)((?:\.\d+)?(?:e[-+]?\d+)?)(.*)$/su;

/** Texts that start with a figure, padded so that their points and their units stand below each other. */
export function alignFigures(texts: readonly string[]): string[] {
  const parts = texts.map((text) => figure.exec(text));
  const whole = Math.max(0, ...parts.map((p) => widthOf(p?.[1] ?? "")));
  const broken = Math.max(0, ...parts.map((p) => widthOf(p?.[2] ?? "")));
  return texts.map((text, i) => {
    const p = parts[i];
    if (!p) return text;
    return `${" ".repeat(whole - widthOf(p[1] ?? ""))}${p[1]}${padEnd(p[2] ?? "", broken)}${p[3]}`.trimEnd();
  });
}

/** Breaks at spaces so that no line is wider than `width`; following lines are indented. */
function wrap(text: string, width: number, hang = "  "): string {
  if (widthOf(text) <= width) return text;
  const lead = /^ */.exec(text)?.[0] ?? "";
  const lines: string[] = [];
  let line = lead;
  for (const word of text.trim().split(/ /)) {
    const next = line.trim() === "" ? line + word : `${line} ${word}`;
    if (widthOf(next) > width && line.trim() !== "") {
      lines.push(line.trimEnd());
      line = lead + hang + word;
    } else line = next;
  }
  return [...lines, line.trimEnd()].join("\n");
}

/** Lines of an answer, wrapped for a terminal; a pipe gets every line whole. */
export const lines = (all: readonly string[], width: number): string =>
  `${all.map((line) => wrap(onOneLine(line), width, "    ")).join("\n")}\n`;
