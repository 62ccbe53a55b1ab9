// Room for words before there is a page to measure them on, and lists of names in a sentence.
const broadest = 0.6; // em: figures and small letters of the system sans are narrower

export const breadthOf = (words: string, size = 13): number => words.length * size * broadest;

/** "1, 5, 6 and 10" */
export function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join("");
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

/** Words broken into lines of at most this breadth, px. */
export function broken(words: string, breadth: number, size = 13): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && breadthOf(`${last} ${word}`, size) <= breadth)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** "wrongClass" as a person writes it. */
export const spaced = (name: string): string =>
  name
    .replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)
    .replaceAll("_", " ");
