// Every command of the README runs, and those with one answer give the stored one.
import { mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { root, splitline, splitlineIn } from "./built.ts";

interface Command {
  readonly line: string;
  readonly words: readonly string[];
  readonly remark: string;
}

/** "npx splitline …  # remark" in the code blocks of the README; words as a shell parts them. */
function commands(): Command[] {
  const blocks = readFileSync(join(root, "README.md"), "utf8").matchAll(/```(?:sh|bash)\n([\s\S]*?)```/g);
  const all = [...blocks].flatMap(([, block = ""]) => block.split("\n"));
  return all.flatMap((line) => {
    const [, typed, remark = ""] = /^npx splitline (.*?)(?:\s+#\s*(.*))?$/.exec(line) ?? [];
    if (typed === undefined) return [];
    const words = [...typed.matchAll(/(?:[^\s"]|"[^"]*")+/g)].map(([word]) => word.replaceAll('"', ""));
    return [{ line: typed, words, remark }];
  });
}

const found = commands();

// What a command writes lands beside the pages, and not in the repository.
const folder = mkdtempSync(join(tmpdir(), "splitline-readme-"));
symlinkSync(join(root, "notebooks"), join(folder, "notebooks"));
afterAll(() => rmSync(folder, { recursive: true }));

describe("commands of the README", () => {
  it("are there", () => expect(found.length).toBeGreaterThan(3));

  it.each(found)("splitline $line", async ({ words, remark }) => {
    const { exit, out, err } = await splitlineIn(folder, words);
    const promised = /exit code (\d)/.exec(remark)?.[1];
    if (promised === undefined) expect([0, 1, 3]).toContain(exit);
    else expect(exit).toBe(Number(promised));
    const shown = /^(\S+ \S+)$/.exec(remark)?.[1]; // a remark that is one quantity is the answer
    if (shown) expect(out).toContain(shown);
    expect(out + err).not.toContain("a fault of the program");
  });

  it.each(found.filter(({ words }) => words[0] === "convert" || words[0] === "solve"))(
    "splitline $line answers as stored",
    async ({ words }) => {
      const { out, err } = await splitline(...words);
      const name = words.join(" ").replace(/[^\w.=]+/g, "-");
      await expect(out + err).toMatchFileSnapshot(join(root, "tests/cli/readme-output", `${name}.txt`));
    },
  );
});
