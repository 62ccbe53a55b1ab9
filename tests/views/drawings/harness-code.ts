// The harness as one script and one style sheet, made in memory.
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { methodFamilies } from "../../../src/cli/method-folders.ts";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

export async function harnessCode(): Promise<string> {
  const built = await build({
    configFile: false,
    root: here("."),
    logLevel: "error",
    define: { methodFamilies: JSON.stringify(methodFamilies()) },
    build: {
      write: false,
      target: "es2022",
      minify: false,
      lib: { entry: here("harness.ts"), formats: ["iife"], name: "harness" },
    },
  });
  const outputs = [built].flat().flatMap((each) => ("output" in each ? each.output : []));
  const code = outputs.find((each) => each.type === "chunk");
  if (code?.type !== "chunk") throw new Error("the harness did not build");
  return code.code;
}

export async function styles(): Promise<string> {
  const names = ["shell/paper", "shell/controls", "shell/page", "drawings/pictures", "shell/print"];
  const texts = await Promise.all(
    names.map((name) => readFile(here(`../../../src/views/${name}.css`), "utf8")),
  );
  return texts.join("\n");
}
