// Small worlds for the engine's tests: a page in a few lines, opened and settled.
import type { CheckValue, Line } from "../../src/engine/line.ts";
import { openPage } from "../../src/engine/open-page.ts";
import type { OpenPage, Settled } from "../../src/engine/opened.ts";
import "../../src/pictures/index.ts";
import { isProblem, type Problem, root, sentence } from "../../src/problem.ts";

type Fields = Readonly<Record<string, unknown>>;

/** One item as YAML lines; every value is written as JSON, which YAML reads. */
const item = (first: readonly [string, string], fields: Fields): string =>
  [
    `  - ${first[0]}: ${first[1]}`,
    ...Object.entries(fields).map(([key, value]) => `    ${key}: ${JSON.stringify(value)}`),
  ].join("\n");

export const given = (name: string, value: string, more: Fields = {}): string =>
  item(["given", name], { value, ...more });
export const working = (name: string, formula: string, more: Fields = {}): string =>
  item(["working", name], { is: formula, ...more });
export const method = (name: string, by: string, of: Fields): string => item(["working", name], { by, of });
export const check = (name: string, that: string, more: Fields = {}): string =>
  item(["check", name], { that, ...more });
export const reading = (name: string, columns: Fields, rows: readonly string[]): string =>
  `${item(["reading", name], { columns })}\n    rows: |\n${rows.map((row) => `      ${row}`).join("\n")}`;

export const pageText = (...items: readonly string[]): string =>
  `splitline: 1\ntitle: a page\npage:\n${items.join("\n")}\n`;

export function open(text: string): OpenPage {
  const page = openPage(text, "page.yaml");
  if ("settle" in page) return page;
  throw new Error(page.map(sentence).join("\n"));
}

export async function settled(...items: readonly string[]): Promise<OpenPage> {
  const page = open(pageText(...items));
  await page.settle();
  return page;
}

/** Changes givens and settles once. */
export async function change(page: OpenPage, typed: Readonly<Record<string, string>>): Promise<Settled> {
  for (const [name, text] of Object.entries(typed)) page.change(name, text);
  return await page.settle();
}

export function lineAt(page: OpenPage, name: string): Line {
  const line = page.line(name);
  if (!line) throw new Error(`no line ${name}`);
  return line;
}

export function problemAt(page: OpenPage, name: string): Problem {
  const { value } = lineAt(page, name);
  if (!isProblem(value)) throw new Error(`expected no answer at ${name}`);
  return value;
}

/** The first problem of the chain that reaches this line. */
export const rootAt = (page: OpenPage, name: string): Problem => root(problemAt(page, name));

/** SI number of a given, of a formula, or of an output "name.output". */
export function siAt(page: OpenPage, fullName: string): number {
  const [name = "", output] = fullName.split(".");
  const { value } = lineAt(page, name);
  if (isProblem(value)) throw new Error(`no answer at ${name}: ${sentence(value)}`);
  if (value.type === "quantity" || value.type === "formula") return value.si;
  if (value.type === "solution") {
    const found = value.solution.outputs[output ?? Object.keys(value.solution.outputs)[0] ?? ""];
    if (found && "si" in found) return found.si;
  }
  throw new Error(`no number at ${fullName}`);
}

export function checkAt(page: OpenPage, name: string): CheckValue {
  const { value } = lineAt(page, name);
  if (isProblem(value) || value.type !== "check") throw new Error(`no check result at ${name}`);
  return value;
}

export const stateAt = (page: OpenPage, name: string): string => {
  const { value } = lineAt(page, name);
  return isProblem(value) ? "no answer" : checkAt(page, name).state;
};

/** What a person sees of a page, without object identity: for comparing two pages. */
export function shown(page: OpenPage): readonly string[] {
  return page.lines().map(({ name, value }) => {
    if (isProblem(value)) return `${name}: no answer · ${sentence(value)} · ${sentence(root(value))}`;
    switch (value.type) {
      case "quantity":
        return `${name}: ${value.typed.text} = ${value.si} ${value.kind}`;
      case "formula":
        return `${name}: ${value.si} ${value.kind} ${JSON.stringify(value.step.numbers(page.unitOf))}`;
      case "check":
        return `${name}: ${value.state} ${value.si} ${value.why} ${value.uncertainty} ${JSON.stringify(value.limits)} ${JSON.stringify(value.step.numbers(page.unitOf))}`;
      case "solution":
        return `${name}: ${JSON.stringify(value.solution.outputs)} ${value.solution.working.map((step) => `${step.name} ${step.si} ${JSON.stringify(step.numbers(page.unitOf))}`).join("; ")} ${value.solution.warnings.map(sentence).join("; ")}`;
      case "text":
        return `${name}: ${value.text}`;
      default:
        return `${name}: ${JSON.stringify(value, (_, part: unknown) => (typeof part === "bigint" ? String(part) : part))}`;
    }
  });
}
