// A file replaced in one step: a temporary file in the same folder, flushed, put in its place by renaming.
// The temporary name is one for each file and is taken only once at a time, so that of two writers one is
// refused and neither loses what the other wrote.
import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  fchownSync,
  fsyncSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  type Stats,
  statSync,
  unlinkSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { type Problem, problem } from "../problem.ts";

/** `seen` is the text the change was worked out from; a file that has changed since stays as it is. */
export function safeWrite(file: string, text: string, asker: string, seen?: string): Problem | undefined {
  try {
    const before = statOf(file);
    if (before?.isDirectory()) return unwritable(file, asker, "EISDIR");
    if (before && !before.isFile()) {
      const reader = openSync(file, constants.O_WRONLY | (constants.O_NONBLOCK ?? 0)); // a pipe without a reader is not waited for
      try {
        writeFileSync(file, text); // a device or a pipe is written to, never replaced
      } finally {
        closeSync(reader);
      }
      return undefined;
    }
    if (!before && seen !== undefined) return changedMeanwhile(file, asker);
    if (before) accessSync(file, constants.W_OK); // a file that is kept from writing is not replaced either
    const real = before ? realpathSync(file) : file;
    const temporary = join(dirname(real), `.${basename(real)}.writing`);
    const handle = openSync(temporary, "wx", 0o666);
    try {
      fill(handle, text, before);
      if (seen !== undefined && !readFileSync(real).equals(Buffer.from(seen))) {
        unlinkSync(temporary);
        return changedMeanwhile(file, asker);
      }
      renameSync(temporary, real);
    } catch (error) {
      unlinkSync(temporary);
      throw error;
    }
    flushFolder(dirname(real));
    return undefined;
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    return code === "EEXIST" ? underWay(file, asker) : unwritable(file, asker, code);
  }
}

function statOf(file: string): Stats | undefined {
  return statSync(file, { throwIfNoEntry: false });
}

function fill(handle: number, text: string, before: Stats | undefined): void {
  try {
    if (before) {
      fchmodSync(handle, before.mode & 0o7777);
      keepOwner(handle, before);
    }
    writeFileSync(handle, text);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Only the administrator may give a file away; for anybody else it is theirs already. */
function keepOwner(handle: number, { uid, gid, mode }: Stats): void {
  try {
    fchownSync(handle, uid, gid);
    fchmodSync(handle, mode & 0o7777); // giving away drops some bits
  } catch {
    // it stays with the person who writes
  }
}

/** So that the new name outlasts a loss of power; not every system can. */
function flushFolder(folder: string): void {
  try {
    const handle = openSync(folder, "r");
    try {
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  } catch {
    // the file itself is flushed
  }
}

const reasons: Readonly<Record<string, string>> = {
  EISDIR: "a folder",
  ENOENT: "no such folder",
  ENOTDIR: "a part of the path that is a file, not a folder",
  EACCES: "no permission to write there",
  EPERM: "no permission to write there",
  EROFS: "a disk that cannot be written to",
  ENOSPC: "a full disk",
  ENXIO: "a pipe that nobody reads",
};

const unwritable = (file: string, where: string, code: string): Problem =>
  problem({
    code: "unwritable-file",
    where,
    what: file,
    got: reasons[code] ?? (code || "an error while writing"),
    must: "be a file that can be written",
  });

const changedMeanwhile = (file: string, where: string): Problem =>
  problem({
    code: "page-changed",
    where,
    what: file,
    got: "another text than the one that was read",
    must: "stay as it is while it is worked on",
    why: "nothing is written",
    hint: "run the same command again",
  });

const underWay = (file: string, where: string): Problem =>
  problem({
    code: "write-under-way",
    where,
    what: file,
    got: "another program that is writing it",
    must: "be written by one at a time",
    why: "nothing is written",
    hint: `run the same command again; if nothing else runs, remove .${basename(file)}.writing beside it`,
  });
