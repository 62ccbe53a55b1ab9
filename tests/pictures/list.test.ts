// The list of pictures in notebooks/README.md is written from their declarations; a new list is kept beside it.
import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Columns, Field } from "../../src/pictures/fields.ts";
import { pictures } from "../../src/pictures/index.ts";
import type { Declared } from "../../src/pictures/picture.ts";

const readme = new URL("../../notebooks/README.md", import.meta.url);
const begin = "<!-- pictures: written from the declarations -->";
const end = "<!-- end of pictures -->";

const columnsOf = (columns: Columns): readonly string[] =>
  Object.entries(columns).map(([name, kind]) => (kind === "text" ? name : `${name} (${kind})`));

function kindOf(field: Field): string {
  if (field.is === "number") return field.kind;
  if (field.is === "word") return field.choices.length > 0 ? field.choices.join(" or ") : "a word";
  const [must, may] = [columnsOf(field.must), columnsOf(field.may)];
  const columns = [
    ...must,
    ...(may.length > 0 ? [`${must.length > 0 ? "and " : ""}perhaps ${may.join(", ")}`] : []),
  ];
  return `${field.orNumber ? `${field.orNumber} or ` : ""}list of ${columns.join(", ")}`;
}

function inputsOf({ of, anyOf = [], further }: Declared): readonly string[] {
  const needed = (name: string, field: Field) =>
    anyOf.includes(name) ? `one of ${anyOf.join(", ")}` : field.optional ? "no" : "yes";
  return [
    ...Object.entries(of).map(
      ([name, field]) => `| \`${name}\` | ${kindOf(field)} | ${needed(name, field)} |`,
    ),
    ...(further ? [`| any other name | list of ${columnsOf(further.must).join(", ")} | no |`] : []),
  ];
}

function sectionOf(declared: Declared): string {
  const { id, question, needs = {}, by = [] } = declared;
  const pairs = Object.entries(needs).map(([name, other]) => `\`${name}\` only with \`${other}\``);
  const methods = by.map((method) => `\`${method.id}\``);
  return [
    `**${id}**: ${question} ${methods.length > 0 ? `Works out ${methods.join(" and ")}; all else stands on the page.` : "Draws what stands on the page."}${pairs.length > 0 ? ` Give ${pairs.join(", ")}.` : ""}`,
    "",
    "| input | what it takes | needed |",
    "|---|---|---|",
    ...inputsOf(declared),
  ].join("\n");
}

test("every picture stands in notebooks/README.md with its question and its inputs", () => {
  const before = readFileSync(readme, "utf8");
  const [head = "", rest = ""] = before.split(`${begin}\n`);
  const [, tail = ""] = rest.split(end);
  const list = pictures.map((declared) => sectionOf(declared)).join("\n\n");
  const now = `${head}${begin}\n\n${list}\n\n${end}${tail}`;
  const beside = new URL("README.new.md", readme);
  if (now === before) {
    if (existsSync(beside)) rmSync(beside);
  } else writeFileSync(beside, now);
  expect(before).toBe(now);
});

test("each has a question and a name of its own", () => {
  for (const { question } of pictures) expect(question).toMatch(/^[A-Z].*\?$/);
  expect(new Set(pictures.map(({ id }) => id)).size).toBe(pictures.length);
});
