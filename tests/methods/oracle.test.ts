// The compiled steps against a second evaluator reading the same texts on the same SI numbers.
// It shares only the text: mathjs parses and evaluates it here, as it never does in the library.
import * as fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { methods } from "../../src/methods/index.ts";
import { isProblem } from "../../src/problem.ts";
import { acceptedBy, deviation, expectClose } from "./helpers.ts";
import { randomIn, randomInputs } from "./oracle-inputs.ts";
import { columnsOf, evaluate, known, plainInputs, type Scope, workedByMathjs } from "./referee.ts";

const tolerance = 1e-12;
let worst = { off: 0, at: "" };
afterAll(() => console.log(`worst deviation from mathjs: ${worst.off} ${worst.at}`));

describe("the working of a solution equals mathjs on the same texts to 1e-12", () => {
  for (const [id, method] of methods)
    test(id, () => {
      const limits = new Set<string>();
      let answered = 0;
      fc.assert(
        fc.property(randomInputs(method), (random) => {
          const inputs = acceptedBy(method, random) ?? random;
          const solution = method.solveNamed(inputs);
          if (isProblem(solution)) {
            limits.add(solution.code);
            return;
          }
          answered += 1;
          const expected = workedByMathjs(method, inputs);
          expect(solution.working.map((step) => step.name).toSorted()).toEqual(
            [...expected.keys()].toSorted(),
          );
          for (const step of solution.working) {
            const other = expected.get(step.name) ?? Number.NaN;
            const off = deviation(step.si, other);
            if (off > worst.off) worst = { off, at: `${id} ${step.name}` };
            expectClose(step.si, other, tolerance);
          }
        }),
        { numRuns: 120 },
      );
      expect(answered, `${answered} answers; refused with ${[...limits].join(", ")}`).toBeGreaterThan(
        randomIn(id) ? 10 : 0,
      );
      // Inside its limits a method never fails in its arithmetic.
      for (const code of limits) expect(code).not.toMatch(/division|overflow|not-finite|root|no-value/);
    });
});

describe("limits hold and break as mathjs says of the same texts", () => {
  for (const [id, method] of methods)
    test(id, () => {
      fc.assert(
        fc.property(randomInputs(method), (random) => {
          const inputs = acceptedBy(method, random) ?? random;
          const solution = method.solveNamed(inputs);
          if (isProblem(solution)) return;
          const scope: Scope = {
            ...plainInputs(inputs),
            ...Object.fromEntries(workedByMathjs(method, inputs)),
          };
          for (const [name, value] of Object.entries(scope))
            if (Array.isArray(value)) scope[name] = columnsOf(value);
          for (const limit of method.limits) {
            if (!known(scope, limit.that)) continue;
            const warned = solution.warnings.some((warning) => warning.why?.startsWith(limit.else));
            expect(evaluate(limit.that, scope), `${limit.that} in ${JSON.stringify(scope)}`).toBe(!warned);
          }
        }),
        { numRuns: 60 },
      );
    });
});
