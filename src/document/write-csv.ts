// A table as CSV text, the same bytes each time: comma, a newline after every line, quotes only where they are needed.
// A field that a grid program would run as a formula gets a leading quote mark (OWASP ASVS 1.2.10);
// so does one that starts with a control character; a plain number stays a number, whatever its sign.

const plainNumber = /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][-+]?\d+)?$/;
const wouldRun = /^(?:[=+\-@]|\p{Cc})/u;

export const guarded = (field: string): string =>
  wouldRun.test(field) && !plainNumber.test(field) ? `'${field}` : field;

export function writeCsv(
  headings: readonly string[],
  rows: readonly (readonly string[])[],
  newline = "\n",
): string {
  return [headings, ...rows].map((row) => csvLine(row) + newline).join("");
}

function csvLine(fields: readonly string[]): string {
  // A row of one empty field would be a blank line, which says nothing.
  if (fields.length === 1 && fields[0] === "") return '""';
  return fields.map((field) => quotedWhereNeeded(guarded(field))).join(",");
}

const quotedWhereNeeded = (field: string): string =>
  /[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field;
