// Offsets of a page's text as file:line:column, counted from 1; a byte order mark has no column.
import type { Place } from "./item.ts";

export interface Origin {
  readonly file: string;
  readonly text: string;
  place(offset: number): Place;
  where(offset: number): string;
}

export function origin(text: string, file: string): Origin {
  const starts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  const mark = text.startsWith("\uFEFF") ? 1 : 0;

  function place(offset: number): Place {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    const column = offset - (starts[low] ?? 0) + 1;
    return { line: low + 1, column: low === 0 ? Math.max(1, column - mark) : column };
  }

  return {
    file,
    text,
    place,
    where(offset) {
      const { line, column } = place(offset);
      return `${file}:${line}:${column}`;
    },
  };
}
