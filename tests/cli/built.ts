// The command line in this process, and as it is shipped: bundled with its own configuration, once per state of the sources,
// into an ignored folder, so that a test never runs an old bundle and never disturbs dist.
import { execFile, spawn } from "node:child_process";
import { createHash } from "node:crypto";
import {
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
} from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { createBuilder } from "vite";
import { runCommand } from "../../src/cli/run-command.ts";
import { visible } from "../../src/visible.ts";

export const root = fileURLToPath(new URL("../../", import.meta.url));

function fingerprint(): string {
  const files = readdirSync(join(root, "src"), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(ts|json)$/.test(name))
    .map((name) => join("src", name));
  const hash = createHash("sha256");
  for (const file of [...files, "package.json"].sort()) {
    const { mtimeMs, size } = statSync(join(root, file));
    hash.update(`${file} ${mtimeMs} ${size}\n`);
  }
  return hash.digest("hex").slice(0, 16);
}

/** Path of the built command line. */
export async function built(): Promise<string> {
  const folder = join(root, ".cache", "cli", fingerprint());
  const entry = join(folder, "splitline.js");
  if (existsSync(entry)) return entry;
  mkdirSync(join(root, ".cache", "cli"), { recursive: true });
  const making = `${folder}.${process.pid}`;
  const builder = await createBuilder({
    configFile: join(root, "src/cli/vite.config.ts"),
    logLevel: "warn",
    environments: { cli: { build: { outDir: making } } },
  });
  const environment = builder.environments["cli"];
  if (!environment) throw new Error("src/cli/vite.config.ts has no environment named cli");
  await builder.build(environment);
  try {
    renameSync(making, folder);
  } catch {
    rmSync(making, { recursive: true }); // another worker was first
  }
  return entry;
}

export interface Ran {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

/** Answers these words as the command line does, in this process, in the root of the repository. */
export const splitline = (...args: readonly string[]): Promise<Ran> => splitlineIn(root, args);

/** The same as a process of its own: for what a process alone can show. */
export const splitlineAlone = (...args: readonly string[]): Promise<Ran> => splitlineAloneIn(root, args);

/** One folder at a time: a process has one. */
let before: Promise<unknown> = Promise.resolve();

/** The same in another folder; a text on standard input takes a process of its own. */
export function splitlineIn(cwd: string, args: readonly string[], input = ""): Promise<Ran> {
  if (input !== "" || args[args.indexOf("--in") + 1] === "-") return splitlineAloneIn(cwd, args, input);
  const ran = before.then(() => answerIn(cwd, args));
  before = ran.catch(() => {});
  return ran;
}

async function answerIn(cwd: string, args: readonly string[]): Promise<Ran> {
  const home = process.cwd();
  process.chdir(cwd);
  try {
    const { exit, out = "", err = "", isData } = await runCommand(args, Number.POSITIVE_INFINITY);
    return { exit, out: isData ? out : visible(out), err: visible(err) };
  } finally {
    process.chdir(home);
  }
}

export async function splitlineAloneIn(cwd: string, args: readonly string[], input = ""): Promise<Ran> {
  const entry = await built();
  return new Promise((resolve) => {
    const ended = (error: Error | null, out: string, err: string) => {
      const exit = error ? ("code" in error && typeof error.code === "number" ? error.code : -1) : 0;
      resolve({ exit, out, err });
    };
    const { stdin } = execFile(process.execPath, [entry, ...args], { cwd, maxBuffer: 1e8 }, ended);
    stdin?.on("error", () => {}); // a command that never reads it may be gone before
    stdin?.end(input);
  });
}

/** The same, fed piece by piece: each is awaited until the command has taken it. */
export async function splitlineReading(cwd: string, args: readonly string[]) {
  const entry = await built();
  const child = spawn(process.execPath, [entry, ...args], { cwd });
  let [out, err] = ["", ""];
  child.stdout.on("data", (part: Buffer) => {
    out += part.toString();
  });
  child.stderr.on("data", (part: Buffer) => {
    err += part.toString();
  });
  const ran = new Promise<Ran>((resolve) =>
    child.on("close", (exit) => resolve({ exit: exit ?? -1, out, err })),
  );
  const input = (text: string, last?: "end"): Promise<void> =>
    new Promise((resolve) => {
      if (last) child.stdin.end(text, resolve);
      else child.stdin.write(text, () => resolve());
    });
  return { input, ran };
}

/** The same with a reader that closes at once: exit code and what went to the error stream. */
export async function splitlineToClosedPipe(...args: readonly string[]): Promise<Omit<Ran, "out">> {
  const child = spawn(process.execPath, [await built(), ...args], {
    cwd: root,
    stdio: ["ignore", "pipe", "pipe"],
  });
  child.stdout.destroy();
  let err = "";
  child.stderr.on("data", (text) => {
    err += String(text);
  });
  return new Promise((resolve) => {
    child.on("close", (exit) => resolve({ exit: exit ?? -1, err }));
  });
}

/** The same with standard output going to this file or device. */
export async function splitlineTo(file: string, ...args: readonly string[]): Promise<Omit<Ran, "out">> {
  const entry = await built();
  const handle = openSync(file, "w");
  const child = spawn(process.execPath, [entry, ...args], { cwd: root, stdio: ["ignore", handle, "pipe"] });
  closeSync(handle);
  let err = "";
  child.stderr?.on("data", (text) => {
    err += String(text);
  });
  return new Promise((resolve) => {
    child.on("close", (exit) => resolve({ exit: exit ?? -1, err }));
  });
}

export async function json(
  ...args: readonly string[]
): Promise<{ readonly exit: number; readonly data: unknown }> {
  const { exit, out } = await splitline(...args, "--json");
  return { exit, data: JSON.parse(out) };
}
