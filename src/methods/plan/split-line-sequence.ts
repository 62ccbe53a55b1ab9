// Order along a split line: from the middle out, each second bolt diagonally across from the one
// before. Common practice, no source.

export interface LinePosition {
  /** Place in the caller's list. */
  readonly index: number;
  readonly side: string;
  readonly x: number;
}

const rounding = 1e-9; // share of the length: a bolt this near to the middle stands in the middle

/** Bolts of one side by their distance from the middle: at it, below it and above it. */
function fromMiddle(line: readonly LinePosition[], middle: number, length: number) {
  const near = line.toSorted((a, b) => Math.abs(a.x - middle) - Math.abs(b.x - middle) || a.index - b.index);
  const at = (p: LinePosition) => Math.abs(p.x - middle) <= length * rounding;
  return {
    middle: near.filter(at),
    below: near.filter((p) => !at(p) && p.x < middle),
    above: near.filter((p) => !at(p) && p.x > middle),
  };
}

/** Indices in order; the side named first starts. A third side is taken with the second. */
export function splitLineSequence(line: readonly LinePosition[]): readonly number[] {
  const xs = line.map((p) => p.x);
  const [least, most] = [Math.min(...xs), Math.max(...xs)];
  const middle = (least + most) / 2;
  const own = line[0]?.side;
  const one = fromMiddle(
    line.filter((p) => p.side === own),
    middle,
    most - least,
  );
  const other = fromMiddle(
    line.filter((p) => p.side !== own),
    middle,
    most - least,
  );
  const lanes = [one.below, other.above, one.above, other.below];
  const rings = Math.max(...lanes.map((lane) => lane.length));
  const order = [...one.middle, ...other.middle];
  for (let ring = 0; ring < rings; ring++) order.push(...lanes.flatMap((lane) => lane[ring] ?? []));
  return order.map((p) => p.index);
}
