// Room for words before there is a page to measure them on.
const broadest = 0.6; // em: figures and small letters of the system sans are narrower

export const breadthOf = (words: string, size = 13): number => words.length * size * broadest;

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
