import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { names, parse } from "../../src/formula/parse.ts";
import { children, type Tree } from "../../src/formula/tree.ts";
import { isProblem } from "../../src/problem.ts";
import { formulaText } from "./random-formula.ts";

function tree(text: string): Tree {
  const read = parse(text);
  if (isProblem(read)) throw new Error(`${text}: ${read.what} ${read.got}`);
  return read;
}

/** Grouping made visible: every operation in brackets. */
function grouped(node: Tree): string {
  switch (node.type) {
    case "number":
      return node.text;
    case "quantity":
      return `"${node.quantity.text}"`;
    case "name":
      return node.output === undefined ? node.name : `${node.name}.${node.output}`;
    case "constant":
      return node.name;
    case "negate":
      return `(-${grouped(node.of)})`;
    case "call":
      return `${node.name}(${node.args.map(grouped).join(",")})`;
    case "choose":
      return `(${grouped(node.test)}?${grouped(node.yes)}:${grouped(node.no)})`;
    default:
      return `(${grouped(node.left)}${node.op}${grouped(node.right)})`;
  }
}

describe("parse(text) groups as written in mathematics", () => {
  test.each([
    ["a - b - c", "((a-b)-c)"],
    ["a / b / c", "((a/b)/c)"],
    ["a / b * c", "((a/b)*c)"],
    ["a + b * c^2", "(a+(b*(c^2)))"],
    ["-x^2", "(-(x^2))"],
    ["(-x)^2", "((-x)^2)"],
    ["2^-x", "(2^(-x))"],
    ["a^b^c", "(a^(b^c))"],
    ["(a^b)^c", "((a^b)^c)"],
    ["-a * b", "((-a)*b)"],
    ["a * -b", "(a*(-b))"],
    ["a - - b", "(a-(-b))"],
    ["a + b < c * d", "((a+b)<(c*d))"],
    ["a > b ? c : d > e ? f : g", "((a>b)?c:((d>e)?f:g))"],
    ["(a > b ? c : d) + 1", "(((a>b)?c:d)+1)"],
    ["max(a, b - 1, 3) / sin (c)", "(max(a,(b-1),3)/sin(c))"],
    ['"5 kN" + force', '("5 kN"+force)'],
    ["sum(segments.length / (segments.area * modulus))", "sum((segments.length/(segments.area*modulus)))"],
    ["count * mean", "(count*mean)"],
    ["3", "3"],
  ])("%s is %s", (text, want) => {
    expect(grouped(tree(text))).toBe(want);
  });

  test("its own grouping, written out, is read as the same tree", () => {
    fc.assert(
      fc.property(formulaText({ stepped: true }), (text) => {
        const once = grouped(tree(text));
        expect(grouped(tree(once))).toBe(once);
      }),
    );
  });
});

describe("parse(text) knows the column of every node", () => {
  test("operators, names, numbers, calls and choices stand where they were typed", () => {
    const text = 'max(pi * a.b, -2.5e3) <= ("5 kN" + cde) ? 1 : 0';
    const root = tree(text);
    const columns: [string, number][] = [];
    const visit = (node: Tree): void => {
      columns.push([node.type, node.at]);
      children(node).forEach(visit);
    };
    visit(root);
    expect(columns).toEqual([
      ["choose", 41],
      ["compare", 23],
      ["call", 1],
      ["binary", 8],
      ["constant", 5],
      ["name", 10],
      ["negate", 15],
      ["number", 16],
      ["binary", 34],
      ["quantity", 27],
      ["name", 36],
      ["number", 43],
      ["number", 47],
    ]);
  });

  test("on random texts every node points at its own mark", () => {
    fc.assert(
      fc.property(formulaText({ stepped: true }), (text) => {
        const visit = (node: Tree): void => {
          const there = text.slice(node.at - 1);
          if (node.type === "number") expect(there.startsWith(node.text)).toBe(true);
          else if (node.type === "binary" || node.type === "compare")
            expect(there.startsWith(node.op)).toBe(true);
          else if (node.type === "name" || node.type === "call" || node.type === "constant") {
            expect(there.startsWith(node.name)).toBe(true);
          } else expect(there.startsWith(node.type === "negate" ? "-" : "?")).toBe(true);
          children(node).forEach(visit);
        };
        visit(tree(text));
      }),
    );
  });
});

describe("names(tree)", () => {
  test("lists full names once, in order of first use", () => {
    expect(names(tree("b * tension.preload + a - b / max(a, c)"))).toEqual([
      "b",
      "tension.preload",
      "a",
      "c",
    ]);
  });

  test("leaves out pi, functions and quantities", () => {
    expect(names(tree('pi * sin("30 deg")'))).toEqual([]);
  });
});

test("white space around a formula does not matter, a line break at its end included", () => {
  expect(grouped(tree("  a\t+ b \n"))).toBe("(a+b)");
});
