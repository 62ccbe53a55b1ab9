// A text as it may stand in the file: plain where every YAML reader agrees on it, else in double quotes.
import { parseDocument } from "yaml";
import { isPlainDecimal } from "./plain-value.ts";

// Plain texts that older readers (YAML 1.1) take for a truth value, a date, a number to base 60 or octal.
const readOtherwise =
  /^(?:y|yes|n|no|on|off|true|false|null|~)$|^[-+]?[0-9][0-9_]*(?::[0-5]?[0-9])+(?:\.[0-9_]*)?$|^\d{4}-\d\d?-\d\d?|^[-+]?0[0-7_]+$|^[-+]?0[box]/i;

/** What `key: text` gives back, both on a line of its own and between braces. */
function survives(text: string): boolean {
  return [`v: ${text}\n`, `{ v: ${text}, w: 0 }\n`].every((line) => {
    const document = parseDocument(line, { version: "1.2", schema: "core", prettyErrors: false });
    if (document.errors.length > 0 || document.warnings.length > 0) return false;
    const value: unknown = document.get("v");
    return value === text || (typeof value === "number" && isPlainDecimal(text));
  });
}

export function scalarText(text: string, quote: "plain" | "single" | "double" = "plain"): string {
  const oneLine = /^[^\p{Cc}\u2028\u2029\uFEFF]*$/u.test(text);
  if (quote === "single" && oneLine) return `'${text.replaceAll("'", "''")}'`;
  const plain = quote === "plain" && oneLine && text !== "" && text === text.trim() && text.length < 1000;
  if (plain && !readOtherwise.test(text) && survives(text)) return text;
  return JSON.stringify(text);
}
