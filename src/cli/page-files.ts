// From words on the command line to page texts: files as they are, folders as the pages in them.
import {
  closeSync,
  constants,
  fstatSync,
  openSync,
  readdirSync,
  readSync,
  type Stats,
  statSync,
} from "node:fs";
import { join } from "node:path";
import { largestPage } from "../document/gate.ts";
import { type Problem, problem } from "../problem.ts";

/** The page files named by a word: itself, or for a folder every .yaml and .yml in it, by name. */
export function filesAt(word: string): readonly string[] | Problem {
  try {
    if (!statSync(word).isDirectory()) return [word];
    const pages = readdirSync(word)
      .filter((name) => /\.ya?ml$/i.test(name))
      .sort();
    return pages.length > 0 ? pages.map((name) => join(word, name)) : noPages(word);
  } catch (error) {
    return unreadable(word, error);
  }
}

/** The text of a page; never more than the largest page is read, whatever the file is. */
export function pageText(file: string, asker = "check"): string | Problem {
  let bytes: Uint8Array;
  try {
    bytes = readAtMost(file, largestPage.bytes + 1);
  } catch (error) {
    return asker === "check" ? unreadable(file, error) : unreadable(file, error, asker, "be a page file");
  }
  if (bytes.length > largestPage.bytes) return tooLarge(file);
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return notText(file);
  }
}

/** What is neither file nor folder may never end, or never begin. */
function unlikeAFile(stats: Stats): string | undefined {
  if (stats.isFile()) return undefined;
  if (stats.isDirectory()) return "EISDIR";
  return stats.isFIFO() ? "a pipe" : stats.isSocket() ? "a socket" : "a device";
}

/** The first bytes of a file, whatever its length. A pipe that nobody writes to is opened without waiting. */
export function readAtMost(file: string, most: number): Uint8Array {
  const handle = openSync(file, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  try {
    const unlike = unlikeAFile(fstatSync(handle));
    if (unlike !== undefined) throw Object.assign(new Error(unlike), { code: unlike });
    const bytes = new Uint8Array(most);
    let length = 0;
    for (;;) {
      const read = readSync(handle, bytes, length, most - length, null);
      if (read === 0 || length + read === most) return bytes.subarray(0, length + read);
      length += read;
    }
  } finally {
    closeSync(handle);
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: "no such file or folder",
  ENOTDIR: "a part of the path is a file, not a folder",
  EISDIR: "a folder",
  EACCES: "no permission to read it",
  EPERM: "no permission to read it",
  ELOOP: "links that lead in a circle",
  ENAMETOOLONG: "a name that is too long",
  ENXIO: "a socket",
};

export function unreadable(
  file: string,
  error: unknown,
  where = "check",
  must = "be a page file or a folder of pages",
): Problem {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  const got = reasons[code] ?? (code || "an error while reading");
  return problem({
    code: code === "ENOENT" ? "no-such-file" : "unreadable-file",
    where,
    what: file,
    got,
    must,
    hint: ["a pipe", "a socket", "a device"].includes(got) ? "save it to a file first" : undefined,
  });
}

const noPages = (folder: string): Problem =>
  problem({
    code: "no-pages",
    where: "check",
    what: folder,
    got: "a folder without pages",
    must: "hold files that end in .yaml or .yml",
  });

const tooLarge = (file: string): Problem =>
  problem({
    code: "page-too-large",
    where: file,
    what: "page file",
    got: `more than ${largestPage.bytes} bytes`,
    must: `be at most ${largestPage.bytes} bytes`,
    hint: "split the job into several pages, or keep long records in their own file",
  });

const notText = (file: string): Problem =>
  problem({
    code: "not-text",
    where: file,
    what: "page file",
    got: "bytes that are no UTF-8 text",
    must: "be plain text in UTF-8",
    hint: "save the page again as UTF-8",
  });
