// Before all suites: which Chromium the browser tests take, said once and handed to every worker.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import type { TestProject } from "vitest/node";
import { type Chromium, packedChromium } from "./packed-chromium.ts";

declare module "vitest" {
  interface ProvidedContext {
    chromium: Chromium | string;
  }
}

const usualPlaces = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

export default async function whichChromium(project: TestProject): Promise<void> {
  const found = await chosen(process.env["CHROMIUM_PATH"] ?? "");
  project.provide("chromium", found);
  const words = typeof found === "string" ? `none: ${found}` : `${found.says}, ${found.path}`;
  process.stdout.write(`browser tests take ${words}\n`);
}

/** `CHROMIUM_PATH` names one, or says `packed` for the one inside the package. */
async function chosen(asked: string): Promise<Chromium | string> {
  if (asked === "packed") return await packedChromium();
  if (asked !== "")
    return existsSync(asked) ? installed(asked) : `CHROMIUM_PATH names ${asked}, which is not there`;
  const here = usualPlaces.find((path) => existsSync(path));
  return here === undefined ? await packedChromium() : installed(here);
}

function installed(path: string): Chromium {
  const { stdout } = spawnSync(path, ["--version"], { encoding: "utf8" });
  return { path, env: {}, says: stdout?.trim() || "an installed Chromium" };
}
