// The text of a CSV file or of standard input. Never more is read than a page can hold.
import { isProblem, type Problem } from "../../problem.ts";
import { mostCharacters, textOfBytes } from "../../readings/file-text.ts";
import { readAtMost, unreadable } from "../page-files.ts";

export const standardInput = "standard input";

export async function inputText(file: string): Promise<string | Problem> {
  const bytes = file === "-" ? await standardBytes() : fileBytes(file);
  return isProblem(bytes) ? bytes : textOfBytes(bytes);
}

function fileBytes(file: string): Uint8Array | Problem {
  try {
    return readAtMost(file, mostCharacters + 1);
  } catch (error) {
    return unreadable(file, error, "readings", "be a CSV file");
  }
}

async function standardBytes(): Promise<Uint8Array> {
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of process.stdin) {
    const bytes = Buffer.from(part);
    parts.push(bytes);
    length += bytes.length;
    if (length > mostCharacters) break;
  }
  return Buffer.concat(parts);
}
