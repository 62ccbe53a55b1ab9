// npm run bench [-- name …] [--json] [--against <commit>]
// Bundles tests/bench/*.bench.ts into .cache/bench and runs each in a process of its own. A bar is a ratio
// to a reference timed in the same process in alternating rounds: the machine's mood cancels out.
import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, symlinkSync } from "node:fs";
import { cpus } from "node:os";
import { basename, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { measure } from "./measure.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const root = join(here, "../..");
const cache = join(root, ".cache", "bench");

const args = process.argv.slice(2);
const wordAfter = (flag) => (args.includes(flag) ? args[args.indexOf(flag) + 1] : undefined);
const json = args.includes("--json");
const against = wordAfter("--against");

if (args[0] === "--one") await runOne(args[1]);
else await runAll(args.filter((word) => !word.startsWith("--") && word !== against));

/** In the process of one bench: rows as JSON on the output stream. */
async function runOne(bundle) {
  const { default: bench } = await import(pathToFileURL(bundle).href);
  process.stdout.write(JSON.stringify(await measure(bench)));
}

async function runAll(wanted) {
  const names = readdirSync(here)
    .filter((name) => name.endsWith(".bench.ts"))
    .map((name) => basename(name, ".bench.ts"))
    .sort();
  const unknown = wanted.find((name) => !names.includes(name));
  if (unknown !== undefined) {
    process.stderr.write(`no bench named ${unknown}; there are ${names.join(", ")}\n`);
    process.exit(2);
  }
  const chosen = wanted.length > 0 ? wanted : names;
  await buildCommandLine();
  const before = against === undefined ? undefined : rowsOf(against, chosen);
  const reports = [];
  for (const name of chosen) {
    const ran = spawnSync(
      process.execPath,
      ["--expose-gc", join(here, "run.mjs"), "--one", await bundle(name)],
      {
        encoding: "utf8",
        maxBuffer: 1e8,
        stdio: ["ignore", "pipe", "inherit"],
      },
    );
    if (ran.status !== 0) {
      process.stderr.write(`bench ${name} did not finish\n`);
      process.exitCode = 1;
      continue;
    }
    const report = { name, ...JSON.parse(ran.stdout) };
    reports.push(report);
    if (!json) print(report, before);
  }
  if (json)
    process.stdout.write(
      `${JSON.stringify({ node: process.version, cpu: cpu(), commit: commit(), reports }, null, 2)}\n`,
    );
}

/** start-up.bench.ts times it; built here so that it is never an old one. */
async function buildCommandLine() {
  const { createBuilder } = await import("vite");
  const builder = await createBuilder({
    configFile: join(root, "src/cli/vite.config.ts"),
    logLevel: "warn",
    environments: { cli: { build: { outDir: join(cache, "cli") } } },
  });
  await builder.build(builder.environments.cli);
}

async function bundle(name) {
  const { build, loadConfigFromFile } = await import("vite");
  const found = await loadConfigFromFile(
    { command: "build", mode: "production" },
    join(root, "src/cli/vite.config.ts"),
  );
  await build({
    configFile: false,
    root,
    logLevel: "warn",
    publicDir: false,
    define: found?.config.define,
    resolve: { noExternal: true },
    ssr: { noExternal: true },
    build: {
      ssr: join(here, `${name}.bench.ts`),
      outDir: join(cache, name),
      emptyOutDir: true,
      target: "node20",
      minify: false,
      rolldownOptions: { output: { entryFileNames: "bench.mjs" } },
    },
  });
  return join(cache, name, "bench.mjs");
}

/** Rows that the benches of another commit give today on this machine, by bench and case. */
function rowsOf(commitName, chosen) {
  const git = (...words) => execFileSync("git", words, { cwd: root, maxBuffer: 1e9 });
  const hash = git("rev-parse", "--verify", `${commitName}^{commit}`).toString().trim();
  const folder = join(root, ".cache", "against", hash);
  if (!existsSync(folder)) {
    const files = git("archive", hash);
    mkdirSync(folder, { recursive: true });
    execFileSync("tar", ["-x", "-C", folder], { input: files });
    symlinkSync(join(root, "node_modules"), join(folder, "node_modules"));
  }
  const text = execFileSync(process.execPath, ["--expose-gc", "tests/bench/run.mjs", ...chosen, "--json"], {
    cwd: folder,
    encoding: "utf8",
    maxBuffer: 1e8,
  });
  const found = new Map();
  for (const report of JSON.parse(text).reports)
    for (const row of report.rows) found.set(`${report.name} ${row.case}`, row.minRatio);
  return found;
}

function cpu() {
  return cpus()[0]?.model.trim() ?? "unknown processor";
}

function commit() {
  try {
    return execFileSync("git", ["rev-parse", "--short", "HEAD"], { cwd: root, encoding: "utf8" }).trim();
  } catch {
    return "unknown";
  }
}

function print(report, before) {
  const ratio = (x) => (x === undefined ? "" : x.toFixed(2));
  const ms = (x) => (x >= 100 ? x.toFixed(0) : x >= 1 ? x.toFixed(2) : x.toFixed(4));
  const heads = ["case", "reference", "min/min", "median", "bar", "state", "min ms", "median ms"];
  const rows = report.rows.map((row) => [
    row.case,
    row.reference,
    ratio(row.minRatio),
    ratio(row.medianRatio),
    row.bar === null ? "" : ratio(row.bar),
    row.state,
    ms(row.minMs),
    ms(row.medianMs),
  ]);
  if (before) {
    heads.push(`min/min at ${against}`);
    for (const [i, row] of report.rows.entries())
      rows[i].push(ratio(before.get(`${report.name} ${row.case}`)));
  }
  const widths = heads.map((head, i) => Math.max(head.length, ...rows.map((row) => row[i].length)));
  const line = (cells) =>
    cells
      .map((cell, i) => (i < 2 || i === 5 ? cell.padEnd(widths[i]) : cell.padStart(widths[i])))
      .join("  ")
      .trimEnd();
  const title = `${report.title} · node ${process.version} · ${cpu()} · splitline ${commit()}`;
  process.stdout.write(`${[title, line(heads), ...rows.map(line)].join("\n")}\n\n`);
}
