// A key that stands twice in one object of a JSON text. The parser of the language keeps the last without a
// word, so the text itself is read.

/** The key given twice, where there is one; the text is known to parse. */
export function keyTwice(text: string): string | undefined {
  const open: (Set<string> | undefined)[] = []; // keys of each object that is open; undefined for an array
  for (const [part] of text.matchAll(/"(?:[^"\\]|\\.)*"\s*:?|[{}[\]]/g)) {
    if (part === "{") open.push(new Set());
    else if (part === "[") open.push(undefined);
    else if (part === "}" || part === "]") open.pop();
    else if (part.endsWith(":")) {
      const key = part.slice(1, part.lastIndexOf('"'));
      const keys = open.at(-1);
      if (keys?.has(key)) return key;
      keys?.add(key);
    }
  }
  return undefined;
}
