// The strict loader's first half: text → yaml's document, or every complaint about the YAML itself.
import {
  type Document,
  isMap,
  isScalar,
  isSeq,
  type ParsedNode,
  parseDocument,
  type YAMLError,
  type YAMLMap,
} from "yaml";
import { type Problem, problem } from "../problem.ts";
import { gate } from "./gate.ts";
import { type Origin, origin } from "./origin.ts";

export interface YamlPage {
  readonly from: Origin;
  readonly document: Document.Parsed;
  readonly root: YAMLMap.Parsed;
}

export function parseYaml(text: string, file: string): YamlPage | readonly Problem[] {
  const from = origin(text, file);
  const refused = gate(from);
  if (refused.length > 0) return refused;
  const document = parseDocument(text, {
    version: "1.2",
    schema: "core",
    strict: true,
    uniqueKeys: false, // looked for below: there each key would be held against all before it
    stringKeys: true,
    merge: false,
    resolveKnownTags: false,
    prettyErrors: false,
  });
  const complaints = [...document.errors, ...keysTwice(document.contents), ...document.warnings].sort(
    (a, b) => a.pos[0] - b.pos[0],
  );
  if (complaints.length > 0)
    return complaints.slice(0, mostComplaints).map((error) => inOurWords(error, from));
  const root: ParsedNode | null = document.contents;
  if (isMap(root) && root.items.length > 0) return { from, document, root };
  return [notAPage(from, root)];
}

type Complaint = Pick<YAMLError, "code" | "pos">;

/** Keys that their mapping has already; the gate has bounded how deep it goes. */
function keysTwice(node: unknown): readonly Complaint[] {
  if (isSeq(node)) return node.items.flatMap(keysTwice);
  if (!isMap(node)) return [];
  const keys = new Set<string>();
  return node.items.flatMap(({ key, value }) => {
    const below = keysTwice(value);
    if (!isScalar(key)) return below;
    const name = String(key.value);
    const [begin = 0, end = 0] = key.range ?? [];
    if (keys.has(name)) return [{ code: "DUPLICATE_KEY", pos: [begin, end] } as const, ...below];
    keys.add(name);
    return below;
  });
}

/** Errors after these are nearly always echoes of the first ones. */
const mostComplaints = 20;

const start = "for example: splitline: 1, then title: and page:";

function notAPage(from: Origin, root: ParsedNode | null): Problem {
  const where = from.where(root?.range?.[0] ?? 0);
  if (root === null) {
    return problem({
      code: "empty-page",
      where,
      what: "page file",
      got: "nothing",
      must: "hold a page",
      hint: start,
    });
  }
  const got = isMap(root) ? "an empty mapping" : "items" in root ? "a list" : "a text";
  return problem({
    code: "not-a-page",
    where,
    what: "page file",
    got,
    must: "be a mapping of keys to values",
    hint: start,
  });
}

interface Words {
  readonly what: string;
  readonly must?: string;
  readonly hint: string;
}

const quoteIt = 'put the whole text in quotes: says: "torque: 30 N.m"';

const wordsOf: Readonly<Record<string, Words>> = {
  TAB_AS_INDENT: {
    what: "indentation",
    must: "be made of spaces, never tabs",
    hint: "replace the tab by spaces",
  },
  BLOCK_AS_IMPLICIT_KEY: { what: "second colon on one line", must: "stand in quotes", hint: quoteIt },
  MULTILINE_IMPLICIT_KEY: {
    what: "key over two lines",
    must: "stand on one line with its colon",
    hint: quoteIt,
  },
  BAD_SCALAR_START: {
    what: "first character of a text",
    must: "not be @ or a backtick",
    hint: 'put the text in quotes: says: "@ 20 degC"',
  },
  DUPLICATE_KEY: {
    what: "key given twice",
    must: "be given once",
    hint: "remove one of the two; each item starts with its own dash",
  },
  NON_STRING_KEY: { what: "key", must: "be a plain word", hint: "for example value: 20 degC" },
  MULTIPLE_DOCS: {
    what: "second document in the file",
    must: "be a file of its own",
    hint: "remove the line of three dashes",
  },
  MISSING_CHAR: {
    what: "something left open",
    must: "be closed, and every key have its colon",
    hint: "look for a missing quote, bracket or colon on this line or the one before",
  },
  BAD_INDENT: {
    what: "indentation",
    must: "line up with the keys above it",
    hint: "give all fields of one item the same number of spaces; close every bracket",
  },
  BAD_DQ_ESCAPE: {
    what: "backslash in a text in double quotes",
    must: "be a known escape",
    hint: "use single quotes: 'a\\b'",
  },
  BAD_DIRECTIVE: { what: "YAML directive", must: "not be used on a page", hint: "remove the line" },
  TAG_RESOLVE_FAILED: {
    what: "tag",
    must: "not be used on a page",
    hint: "remove it, or put the text in quotes",
  },
  KEY_OVER_1024_CHARS: { what: "key", must: "be short", hint: "for example says: Net torque at the nut" },
  BAD_COLLECTION_TYPE: { what: "tag", must: "not be used on a page", hint: "remove it" },
};

const unread: Words = {
  what: "text that cannot be read as YAML",
  hint: "look at the indentation and the quotes here; each field is key: value on its own line",
};

/** Where the text from there to the end of the line says what is meant. */
const showsText: ReadonlySet<string> = new Set([
  "BLOCK_AS_IMPLICIT_KEY",
  "BAD_SCALAR_START",
  "DUPLICATE_KEY",
  "UNEXPECTED_TOKEN",
  "NON_STRING_KEY",
]);

function inOurWords(error: Complaint, from: Origin): Problem {
  const words = wordsOf[error.code] ?? unread;
  const [begin] = error.pos;
  const rest = from.text
    .slice(begin, begin + 40)
    .split(/\r?\n/)[0]
    ?.trim();
  const got = showsText.has(error.code) && rest ? rest : undefined;
  return problem({
    code: error.code === "DUPLICATE_KEY" ? "duplicate-key" : "yaml",
    where: from.where(begin),
    got,
    ...words,
  });
}
