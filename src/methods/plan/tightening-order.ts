// In which order are the bolts tightened?
import { isProblem, type Problem, problem } from "../../problem.ts";
import { cellNumber, cellText, numberOf, type Row, rowsOf, textOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { crossOrder } from "../sources.ts";
import { type LinePosition, splitLineSequence } from "./split-line-sequence.ts";

/**
 * Positions 0 to n - 1 round a circle. For an even count the order of one half is followed by the
 * position opposite, so each second one is opposite the one before: 1 5 3 7 2 6 4 8. An odd count
 * has no opposite; a star steps as nearly across as it can.
 */
export function circleSequence(count: number): readonly number[] {
  if (count <= 1) return count === 1 ? [0] : [];
  const half = Math.floor(count / 2);
  if (count % 2 === 1) return Array.from({ length: count }, (_, step) => (step * half) % count);
  return circleSequence(half).flatMap((start) => [start, start + half]);
}

interface Position {
  readonly name: string;
  readonly kind: string | undefined;
}

const isFitted = (position: Position): boolean => /^fitted\b/i.test(position.kind ?? "");

/** Fitted bolts locate the halves, so they may go first; within each lot the order is kept. */
const fittedFirst = (order: readonly Position[]): readonly Position[] => [
  ...order.filter(isFitted),
  ...order.filter((position) => !isFitted(position)),
];

function wholeCount(inputs: Insides): number | Problem {
  const count = numberOf(inputs, "count");
  const positions = rowsOf(inputs, "positions");
  if (positions.length > 0)
    return count === undefined || count === positions.length
      ? positions.length
      : problem({
          code: "given-twice",
          what: "number of bolts",
          got: `${count} and ${positions.length} positions`,
          must: "be the same",
        });
  if (count !== undefined) return count;
  return problem({
    code: "missing-input",
    what: "bolts",
    got: "nothing",
    must: "be given as count or positions",
  });
}

/** Numbered along the first side and back along the other, evenly spaced: 1 to n/2, then n/2 + 1 to n. */
function evenLine(count: number): readonly LinePosition[] | Problem {
  if (count % 2 === 1)
    return problem({
      code: "odd-count",
      what: "number of bolts",
      got: String(count),
      must: "be even on a split line",
      hint: "give the positions with side and x",
    });
  const half = count / 2;
  return Array.from({ length: count }, (_, index) => ({
    index,
    side: index < half ? "first" : "second",
    x: index < half ? index : count - 1 - index,
  }));
}

/** Side from its own column, else from the sign of y about the middle. */
function linePositions(rows: readonly Row[]): readonly LinePosition[] | Problem {
  const ys = rows.map((row) => cellNumber(row, "y") ?? Number.NaN);
  const middle = (Math.min(...ys) + Math.max(...ys)) / 2;
  const found: LinePosition[] = [];
  for (const [index, row] of rows.entries()) {
    const x = cellNumber(row, "x");
    const y = ys[index] ?? Number.NaN;
    const side =
      cellText(row, "side") ?? (Number.isNaN(middle) ? undefined : y < middle ? "low y" : "high y");
    if (x === undefined || side === undefined)
      return problem({
        code: "missing-input",
        what: `positions ${index + 1}`,
        got: x === undefined ? "no x" : "no side",
        must: `be given ${x === undefined ? "x" : "side or y"} on a split line`,
      });
    found.push({ index, side, x });
  }
  return found;
}

function sequence(inputs: Insides, count: number): readonly number[] | Problem {
  if (textOf(inputs, "arrangement") === "circle") return circleSequence(count);
  const rows = rowsOf(inputs, "positions");
  const line = rows.length > 0 ? linePositions(rows) : evenLine(count);
  return isProblem(line) ? line : splitLineSequence(line);
}

const mostBolts = 10_000;

function run(inputs: Insides): Insides | Problem {
  const count = wholeCount(inputs);
  if (isProblem(count)) return count;
  if (!Number.isInteger(count) || count < 1 || count > mostBolts)
    return problem({
      code: "limit",
      what: "number of bolts",
      got: String(count),
      must: `be 1 to ${mostBolts}`,
    });
  const rows = rowsOf(inputs, "positions");
  const positions: readonly Position[] = Array.from({ length: count }, (_, index) => ({
    name: cellText(rows[index] ?? {}, "position") ?? String(index + 1),
    kind: cellText(rows[index] ?? {}, "kind"),
  }));
  const found = sequence(inputs, count);
  if (isProblem(found)) return found;
  const order = found.flatMap((index) => positions[index] ?? []);
  const first = textOf(inputs, "fittedFirst") === "yes";
  if (first && positions.every((position) => position.kind === undefined))
    return problem({
      code: "missing-input",
      what: "positions",
      got: "no kinds",
      must: "say fitted or plain in kind",
      why: "the fitted ones are to go first",
    });
  const chosen = first ? fittedFirst(order) : order;
  return {
    order: chosen.map(({ name }, index): Row => {
      const turn = index + 1;
      return /^\d+$/.test(name) ? { turn, position: name, number: Number(name) } : { turn, position: name };
    }),
    sequence: chosen.map((position) => position.name).join(" "),
    bolts: count,
  };
}

export const tighteningOrder = method({
  id: "tightening-order",
  question: "In which order are the bolts tightened?",
  inputs: {
    arrangement: { kind: "text", says: "how the bolts stand", choices: ["circle", "split line"] },
    count: { kind: "count", symbol: "n", says: "number of bolts", optional: true },
    positions: {
      kind: "list",
      says: "positions, round the circle or in any order along the line",
      optional: true,
      unique: ["position"],
      of: {
        position: { kind: "text", says: "number or name of the position" },
        side: { kind: "text", says: "side of the split line", optional: true },
        x: { kind: "length", symbol: "x", says: "place along the line", optional: true },
        y: { kind: "length", symbol: "y", says: "place across it, where no side is named", optional: true },
        kind: { kind: "text", says: "fitted or plain", optional: true },
      },
    },
    fittedFirst: {
      kind: "text",
      says: "fitted bolts before plain ones",
      choices: ["no", "yes"],
      default: "no",
    },
  },
  procedure: {
    says: "circle: opposite pairs, halving the arc; split line: from the middle out, crossing sides",
    source: crossOrder,
    run,
    remarks: (inputs) =>
      textOf(inputs, "arrangement") === "circle"
        ? []
        : ["from the middle out, crossing sides: common practice, no source"],
  },
  outputs: {
    order: {
      kind: "list",
      says: "positions in order",
      of: {
        turn: { kind: "count", says: "turn" },
        position: { kind: "text", says: "position" },
        number: { kind: "count", says: "position as a number, where it is one" },
      },
    },
    sequence: { kind: "text", says: "the order in one line" },
    bolts: { kind: "count", symbol: "n", says: "number of bolts" },
  },
  limits: [{ that: "count >= 1", else: "nothing is to be tightened" }],
  sources: { "*": crossOrder },
  notes: [
    "two workers share one order",
    "go through it in passes (pass-torques), then repeat the last pass until no nut moves",
  ],
});
