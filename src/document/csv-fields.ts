// CSV text → rows of fields for one delimiter, after RFC 4180: doubled quotes, spaces belong to the field.
// A quote inside a field that did not start with one stays as it is: 5'-6 1/2" is a length, not a mistake.
import { type Problem, problem } from "../problem.ts";

export interface CsvRow {
  /** Line of the text on which the row starts, from 1. */
  readonly line: number;
  readonly fields: readonly string[];
  /** Whether the field stood in quotes, so that a comma in it parts nothing. */
  readonly quoted: readonly boolean[];
}

export interface CsvFields {
  readonly rows: readonly CsvRow[];
  readonly problems: readonly Problem[];
}

export function csvFields(text: string, delimiter: string): CsvFields {
  const rows: CsvRow[] = [];
  const problems: Problem[] = [];
  let at = text.startsWith("\uFEFF") ? 1 : 0;
  let line = 1;
  while (at < text.length) {
    const start = line;
    const fields: string[] = [];
    const quoted: boolean[] = [];
    let more = true;
    while (more) {
      const field = text[at] === '"' ? quotedField(text, at, delimiter) : bareField(text, at, delimiter);
      fields.push(field.text);
      quoted.push(field.quoted);
      if (field.wrong) problems.push(quoteProblem(line, field.wrong));
      line += field.lines;
      at = field.end;
      more = text[at] === delimiter;
      if (more) at += 1;
    }
    if (text[at] === "\r") at += 1;
    if (text[at] === "\n") at += 1;
    line += 1;
    rows.push({ line: start, fields, quoted });
  }
  return { rows, problems };
}

interface Field {
  readonly text: string;
  readonly end: number;
  readonly quoted: boolean;
  readonly lines: number;
  readonly wrong?: "open" | "after";
}

const endsField = (text: string, at: number, delimiter: string): boolean =>
  at >= text.length ||
  text[at] === delimiter ||
  text[at] === "\n" ||
  (text[at] === "\r" && (text[at + 1] === "\n" || at + 1 === text.length));

function bareField(text: string, begin: number, delimiter: string): Field {
  let end = begin;
  while (!endsField(text, end, delimiter)) end += 1;
  return { text: text.slice(begin, end), end, quoted: false, lines: 0 };
}

function quotedField(text: string, begin: number, delimiter: string): Field {
  let at = begin + 1;
  for (;;) {
    const quote = text.indexOf('"', at);
    if (quote < 0)
      return { text: text.slice(begin + 1), end: text.length, quoted: true, lines: 0, wrong: "open" };
    if (text[quote + 1] !== '"') {
      const inside = text.slice(begin + 1, quote).replaceAll('""', '"');
      const lines = inside.split("\n").length - 1;
      if (endsField(text, quote + 1, delimiter)) return { text: inside, end: quote + 1, quoted: true, lines };
      const rest = bareField(text, quote + 1, delimiter);
      return { text: inside + rest.text, end: rest.end, quoted: true, lines, wrong: "after" };
    }
    at = quote + 2;
  }
}

function quoteProblem(line: number, wrong: "open" | "after"): Problem {
  const got = wrong === "open" ? "a quote that is never closed" : "text after a closing quote";
  return problem({
    code: "csv-quotes",
    what: `line ${line}`,
    got,
    must: "close each quoted field once",
    hint: 'a quote inside a quoted field is written twice: "3/8"" bolt"',
  });
}
