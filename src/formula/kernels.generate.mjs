// Writes kernels.ts: node src/formula/kernels.generate.mjs > src/formula/kernels.ts
// One plain loop per operation and operand shape, four elements a turn, and one per pair of an
// operation used once with the operation that uses it. A test compares the file with a fresh run.
//
// a, b: columns of the (inner) operation; c: column of the outer one; k, m: their constants;
// t: the inner result. A value out of domain must not vanish again, as 1 / Infinity or
// Math.exp(-Infinity) would let it: such operations add x - x, which is 0, or NaN for an infinity.

const unrolled = 4;

/** Locals are operands used more than once in an element, and so read once into a name of their own. */
const simple = (expression) => ({ expression, locals: [] });
const guarded = (expression, ...locals) => ({ expression, locals });

const inner = {
  "a + b": simple("a + b"),
  "a + k": simple("a + k"),
  "a - b": simple("a - b"),
  "k - a": simple("k - a"),
  "a * b": simple("a * b"),
  "a * k": simple("a * k"),
  "a / b": guarded("a / b + (b - b)", "b"),
  "a / k": simple("a / k"),
  "k / a": guarded("k / a + (a - a)", "a"),
  "sqrt a": simple("Math.sqrt(a)"),
  "square a": guarded("a * a", "a"),
  "-a": simple("-a"),
  "abs a": simple("Math.abs(a)"),
};

const outer = {
  "t + c": simple("t + c"),
  "t + m": simple("t + m"),
  "t - c": simple("t - c"),
  "c - t": simple("c - t"),
  "m - t": simple("m - t"),
  "t * c": simple("t * c"),
  "t * m": simple("t * m"),
  "t / c": guarded("t / c + (c - c)", "c"),
  "c / t": guarded("c / t + (t - t)", "t"),
  "t / m": simple("t / m"),
  "m / t": guarded("m / t + (t - t)", "t"),
  "sqrt t": simple("Math.sqrt(t)"),
  "square t": guarded("t * t", "t"),
  "-t": simple("-t"),
  "abs t": simple("Math.abs(t)"),
};

const pair = (op, name) => ({
  [`a ${name} b`]: guarded(op("a", "b"), "a", "b"),
  [`a ${name} k`]: guarded(op("a", "k"), "a"),
  [`k ${name} a`]: guarded(op("k", "a"), "a"),
});
const rest = (...names) => names.map((name) => (name === "k" ? "" : ` + (${name} - ${name})`)).join("");

/** Never fused: too slow for the pass over memory to matter, or too rare. */
const alone = {
  ...Object.fromEntries(
    ["sin", "cos", "tan", "asin", "acos", "log10"].map((name) => [`${name} a`, simple(`Math.${name}(a)`)]),
  ),
  "ln a": simple("Math.log(a)"),
  "exp a": guarded("Math.exp(a) + (a - a)", "a"),
  "atan a": guarded("Math.atan(a) + (a - a)", "a"),
  "round a": simple("roundHalfEven(a)"),
  ...pair((x, y) => `${x} ** ${y}${rest(x, y)}`, "^"),
  ...pair((x, y) => `Math.min(${x}, ${y})${rest(x, y)}`, "min"),
  ...pair((x, y) => `Math.max(${x}, ${y})${rest(x, y)}`, "max"),
  ...pair((x, y) => `(${x} < ${y} ? 1 : 0)${rest(x, y)}`, "<"),
  ...pair((x, y) => `(${x} <= ${y} ? 1 : 0)${rest(x, y)}`, "<="),
  ...pair((x, y) => `(${x} === ${y} ? 1 : 0)${rest(x, y)}`, "=="),
  ...pair((x, y) => `(${x} !== ${y} ? 1 : 0)${rest(x, y)}`, "!="),
  // a is the outcome of a comparison, 1 or 0; b and c, or the constants, are the two values
  "a ? b : c": guarded("(a === 0 ? c : b) + (a - a)", "a"),
  "a ? b : k": guarded("(a === 0 ? k : b) + (a - a)", "a"),
  "a ? k : b": guarded("(a === 0 ? b : k) + (a - a)", "a"),
  "a ? k : m": guarded("(a === 0 ? m : k) + (a - a)", "a"),
};

const columns = ["a", "b", "c"];
const place = (u) => (u === 0 ? "i" : `i + ${u}`);

/** The expression with its operands put in: columns are read at the element, locals by their name. */
function spell(expression, locals, u) {
  return expression.replace(/\b[abct]\b/g, (name) => {
    if (name === "t" || locals.includes(name)) return `${name}${u}`;
    return `${name}[${place(u)}]!`;
  });
}

function element(stages, u) {
  const lines = [];
  stages.forEach(({ expression, locals }, index) => {
    for (const name of locals) if (name !== "t") lines.push(`const ${name}${u} = ${name}[${place(u)}]!;`);
    const last = index === stages.length - 1;
    lines.push(`${last ? `out[${place(u)}]` : `const t${u}`} = ${spell(expression, locals, u)};`);
  });
  return lines;
}

function parameters(stages) {
  const text = stages.map(({ expression }) => expression).join(" ");
  const all = [...columns, "k", "m"].map((name) =>
    new RegExp(`\\b${name}\\b`).test(text) ? name : `_${name}`,
  );
  while (all.at(-1)?.startsWith("_")) all.pop();
  return ["n", "out", ...all].join(", ");
}

function kernel(key, stages) {
  const body = Array.from({ length: unrolled }, (_, u) => element(stages, u)).flat();
  return [
    `  "${key}": (${parameters(stages)}) => {`,
    `    for (let i = 0; i < n; i += ${unrolled}) {`,
    ...body.map((line) => `      ${line}`),
    "    }",
    "  },",
  ];
}

const single = { ...inner, ...alone };
const lines = [
  "// Written by kernels.generate.mjs; change that and run it again.",
  "/* oxlint-disable typescript/no-non-null-assertion */",
  "// biome-ignore-all lint/style/noNonNullAssertion: every index is below the length of its column",
  'import { roundHalfEven } from "./arithmetic.ts";',
  "",
  "/** n is a multiple of 4 and at most the length of every column; `out` may be one of the operands. */",
  "export type Kernel = (",
  "  n: number,",
  "  out: Float64Array,",
  "  a: Float64Array,",
  "  b: Float64Array,",
  "  c: Float64Array,",
  "  k: number,",
  "  m: number,",
  ") => void;",
  "",
  "export const kernels: Readonly<Record<string, Kernel>> = {",
  ...Object.entries(single).flatMap(([key, stage]) => kernel(key, [stage])),
  "};",
  "",
  "/** An operation and the one that uses its result, in one pass. */",
  "export const fusedKernels: Readonly<Record<string, Kernel>> = {",
  ...Object.entries(inner).flatMap(([first, stage]) =>
    Object.entries(outer).flatMap(([second, after]) => kernel(`${first}; ${second}`, [stage, after])),
  ),
  "};",
];
process.stdout.write(`${lines.join("\n")}\n`);
