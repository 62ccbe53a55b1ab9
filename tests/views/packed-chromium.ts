// The Chromium that comes inside a package, unpacked once: what a machine with Node alone runs browser tests with.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdir, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** How to start one Chromium. */
export interface Chromium {
  readonly path: string;
  /** Set for it alone: libraries and fonts where the machine has none of its own. */
  readonly env: Readonly<Record<string, string>>;
  readonly says: string;
}

const kept = fileURLToPath(new URL("../../node_modules/.cache/packed-chromium", import.meta.url));

/** The packed fonts where they are kept; the package looks for them where its usual machine has them. */
const fontsConf = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${join(kept, "fonts", "fonts")}</dir><cachedir>${join(kept, "fonts", "cache")}</cachedir></fontconfig>
`;

/** The packed browser, or a sentence that says what this machine lacks. */
export async function packedChromium(): Promise<Chromium | string> {
  if (process.platform !== "linux" || process.arch !== "x64")
    return `the packed Chromium runs on Linux on x64 only: install Chromium here and set CHROMIUM_PATH to it`;
  if (!existsSync(kept)) await unpack();
  const path = join(kept, "chromium");
  const fonts = existsSync("/etc/fonts/fonts.conf") ? {} : { FONTCONFIG_PATH: join(kept, "fonts") };
  const itsOwn = { ...fonts, LD_LIBRARY_PATH: join(kept, "al2023", "lib") };
  for (const env of [fonts, itsOwn]) {
    const { says, lacks } = ask(path, env);
    if (says !== undefined) return { path, env, says: `${says}, the packed one` };
    if (env === itsOwn)
      return `the packed Chromium does not start (${lacks}): install Chromium (Debian: apt-get install chromium) or set CHROMIUM_PATH`;
  }
  return "no packed Chromium";
}

function ask(path: string, env: Readonly<Record<string, string>>): { says?: string; lacks?: string } {
  const answer = spawnSync(path, ["--version"], { encoding: "utf8", env: { ...process.env, ...env } });
  if (answer.status === 0) return { says: answer.stdout.trim() };
  return { lacks: answer.error?.message ?? answer.stderr.trim().split("\n")[0] ?? "no word of why" };
}

/**
 * Unpacks beside, then moves: a run that was stopped half way leaves nothing behind. The package unpacks into
 * the folder for temporary files, and its system libraries only where it takes the machine for its usual one.
 */
async function unpack(): Promise<void> {
  const beside = `${kept}-${process.pid}`;
  await mkdir(beside, { recursive: true });
  const before = { ...process.env };
  process.env["TMPDIR"] = beside;
  process.env["AWS_EXECUTION_ENV"] = "AWS_Lambda_nodejs20.x";
  try {
    const { default: packed } = await import("@sparticuz/chromium");
    await packed.executablePath();
    await writeFile(join(beside, "fonts", "fonts.conf"), fontsConf); // without a font it dies at its first page
  } finally {
    for (const name of ["TMPDIR", "AWS_EXECUTION_ENV", "LD_LIBRARY_PATH", "FONTCONFIG_PATH", "HOME"])
      if (before[name] === undefined) delete process.env[name];
      else process.env[name] = before[name];
  }
  await rename(beside, kept).catch(() => rm(beside, { recursive: true, force: true })); // another run was first
}
