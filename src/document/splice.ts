// What changed between two texts, as one place: small enough to keep every change of a long table.
export interface Splice {
  readonly at: number;
  readonly cut: string;
  readonly put: string;
}

export function spliceOf(before: string, after: string): Splice {
  const most = Math.min(before.length, after.length);
  let at = 0;
  while (at < most && before[at] === after[at]) at += 1;
  let same = 0;
  while (same < most - at && before.at(-1 - same) === after.at(-1 - same)) same += 1;
  return { at, cut: before.slice(at, before.length - same), put: after.slice(at, after.length - same) };
}

export const spliced = (text: string, { at, cut, put }: Splice): string =>
  text.slice(0, at) + put + text.slice(at + cut.length);

export const backwards = ({ at, cut, put }: Splice): Splice => ({ at, cut: put, put: cut });
