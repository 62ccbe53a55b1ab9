// Charts with one row for each position: they read the same on a phone and on paper. Numbers are in the unit shown.
import { axisX, type Markish, rect, ruleX, ruleY, text as words } from "@observablehq/plot";
import { breadthOf } from "./breadth.ts";
import { chart, type Limit, limitLine, limitText } from "./chart.ts";
import { picture, text } from "./marks.ts";

const rowHeight = 20;
const firstLine = 30; // px: labels of limits under the title, in one line or two
const lineApart = 16;

export interface RowChart {
  readonly title: string;
  readonly names: readonly string[];
  readonly left: number;
  readonly right: number;
  readonly from: number;
  readonly to: number;
  readonly limits: readonly Limit[];
  /** What lies between two limits is allowed. */
  readonly allowed?: readonly [low: number, high: number] | undefined;
  readonly number: (value: number) => string;
  readonly marks: readonly Markish[];
  /** The names stand at the left chart only. */
  readonly named?: boolean;
}

const rowsTop = (lines: number): number => firstLine + (lines - 1) * lineApart + 9;
const rowsHeight = (rows: number, lines: number): number => rowsTop(lines) + rows * rowHeight + 28;

interface Label extends Limit {
  readonly middle: number;
  readonly line: number;
}

/** Each label over its limit; one that would cover another goes a line lower, a middle without room is left out. */
function labelsOf({ limits, left, right, from, to }: RowChart): readonly Label[] {
  const placed: Label[] = [];
  const free = (line: number, middle: number, words: string) =>
    placed.every(
      (other) =>
        other.line !== line ||
        Math.abs(other.middle - middle) > (breadthOf(other.words) + breadthOf(words)) / 2 + 4,
    );
  for (const limit of limits.toSorted((a, b) => Number(a.is === "middle") - Number(b.is === "middle"))) {
    const half = breadthOf(limit.words) / 2;
    const x = left + ((limit.at - from) / (to - from)) * (right - left);
    const middle = Math.max(left - 10 + half, Math.min(right + 10 - half, x));
    let line = 0;
    while (!free(line, middle, limit.words)) line += 1;
    if (line === 0 || limit.is !== "middle") placed.push({ ...limit, middle, line });
  }
  return placed;
}

const linesOf = (asked: RowChart): number => Math.max(1, ...labelsOf(asked).map(({ line }) => line + 1));

/** One chart, or several side by side that share their rows. */
export function rowCharts(width: number, ...charts: readonly RowChart[]): SVGSVGElement {
  const lines = Math.max(...charts.map(linesOf));
  const rows = Math.max(...charts.map(({ names }) => names.length));
  const root = picture(width, rowsHeight(rows, lines));
  root.classList.add("rows");
  root.append(...charts.flatMap((asked) => rowChart(asked, lines)));
  return root;
}

function rowChart(asked: RowChart, lines: number): readonly SVGElement[] {
  const { title, names, left, right, from, to, limits, allowed, number, marks, named = true } = asked;
  const rows = names.map((name, row) => ({ name, row }));
  const [first, last] = [-0.5, names.length - 0.5];
  const lineOf = (is: string) => limits.filter((limit) => limitLine(limit) === is);
  return [
    text(title, left, 12, "start", "strong-text"),
    ...labelsOf(asked).map((label) =>
      text(label.words, label.middle, firstLine + label.line * lineApart, "middle", limitText(label)),
    ),
    chart({
      width: right,
      height: rowsHeight(names.length, lines),
      marginTop: rowsTop(lines),
      marginBottom: 28,
      marginLeft: left,
      marginRight: 0,
      x: { domain: [from, to] },
      y: { domain: [last, first] },
      marks: [
        allowed && rect([allowed], { x1: "0", x2: "1", y1: first, y2: last, className: "allowed" }),
        ruleY(rows, { y: "row", x1: from, x2: to, className: "grid" }),
        ...["limit", "thin"].map((is) => ruleX(lineOf(is), { x: "at", className: is })),
        ruleX([from], { className: "axis" }),
        named
          ? words(rows, {
              x: from,
              y: "row",
              text: "name",
              dx: -8,
              textAnchor: "end",
              className: "strong-text",
            })
          : null,
        axisX({
          anchor: "bottom",
          tickSize: 4,
          ticks: Math.max(3, Math.floor((right - left) / 90)),
          tickFormat: number,
          label: null,
          className: "quiet-text",
        }),
        ...marks,
      ],
    }),
  ];
}
