// Does a bolt carry tension and shear together?
import { type Problem, problem } from "../../problem.ts";
import { numberOf, textOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { interactionEurocode, interactionNasa, interactionNsts } from "../sources.ts";

/** Bending needs both its stress and its allowable, and a standard whose form has a place for it. */
function bendingFault(inputs: Insides): Problem | undefined {
  const names = ["bendingStress", "bendingAllowable"];
  const given = names.filter((name) => numberOf(inputs, name) !== undefined);
  const standard = textOf(inputs, "standard") ?? "";
  if (given.length > 0 && standard === "EN 1993-1-8")
    return problem({
      code: "unused-input",
      what: given.join(" and "),
      got: `a value with ${standard}`,
      must: "be left out",
      why: "that form has no place for bending, so it would be dropped",
      hint: "choose NASA-STD-5020 or NSTS 08307 for a bolt in bending",
    });
  const lacking = names.find((name) => !given.includes(name));
  if (given.length !== 1 || lacking === undefined) return undefined;
  return problem({
    code: "missing-input",
    what: lacking === "bendingStress" ? "factored bending stress" : "allowable bending stress",
    got: "nothing",
    must: `be given as ${lacking}, beside ${given.join()}`,
  });
}

function run(inputs: Insides): Insides | Problem {
  const fault = bendingFault(inputs);
  if (fault) return fault;
  const standard = textOf(inputs, "standard") ?? "";
  const plane = standard === "NASA-STD-5020" ? ` ${textOf(inputs, "shearPlane") ?? ""}` : "";
  const bent = numberOf(inputs, "bendingStress") === undefined ? "" : ", bending";
  return { formUsed: `${standard}${plane}${bent}` };
}

const always = ["standard", "bendingStress", "bendingAllowable"];
/** The shear plane counts in NASA-STD-5020 alone. */
const readBy = (form: string): readonly string[] =>
  form.startsWith("NASA-STD-5020") ? [...always, "shearPlane"] : always;

const [shearShare, pull] = ["shear / shearAllowable", "tension / tensionAllowable"];
const bentPull = `${pull} + bendingStress / bendingAllowable`;

/** Powers of the shear and of the tension with its bending. */
const powers = [
  ["NASA-STD-5020 body", 2.5, 1.5, interactionNasa],
  ["NASA-STD-5020 threads", 1.2, 2, interactionNasa],
  ["NSTS 08307", 3, 2, interactionNsts],
] as const;

const forms = powers.flatMap(([form, onShear, onTension, from]) =>
  (
    [
      [form, `(${pull})`],
      [`${form}, bending`, `(${bentPull})`],
    ] as const
  ).map(([name, tension]) => ({ name, from, ratio: `(${shearShare})^${onShear} + ${tension}^${onTension}` })),
);

export const tensionShearInteraction = method({
  id: "tension-shear-interaction",
  question: "Does a bolt carry its tension and its shear together?",
  inputs: {
    tension: { kind: "force", symbol: "P_t", says: "factored tension" },
    tensionAllowable: { kind: "force", symbol: "P_ta", says: "allowable tension" },
    shear: { kind: "force", symbol: "P_s", says: "factored shear" },
    shearAllowable: { kind: "force", symbol: "P_sa", says: "allowable shear" },
    shearPlane: {
      kind: "text",
      says: "what stands in the shear plane",
      choices: ["body", "threads"],
      default: "threads",
      matters: "a body in the shear plane has other exponents, and neither form asks for more throughout",
    },
    bendingStress: { kind: "stress", symbol: "f_b", says: "factored bending stress", optional: true },
    bendingAllowable: { kind: "stress", symbol: "F_b", says: "allowable bending stress", optional: true },
    standard: {
      kind: "text",
      says: "form of the interaction",
      choices: ["NASA-STD-5020", "NSTS 08307", "EN 1993-1-8"],
      default: "NASA-STD-5020",
      matters: "the forms differ, and the exponents of this one are from memory",
    },
  },
  procedure: {
    says: "NASA-STD-5020 has one pair of exponents for a body and one for threads in the shear plane",
    source: interactionNasa,
    reads: Object.fromEntries(
      [...forms.map(({ name }) => name), "EN 1993-1-8"].map((name) => [name, readBy(name)]),
    ),
    gives: { formUsed: { kind: "text", says: "form that ran" } },
    run,
  },
  variants: {
    by: "formUsed",
    sources: {
      ...Object.fromEntries(forms.map(({ name, from }) => [name, from])),
      "EN 1993-1-8": interactionEurocode,
    },
    sets: {
      ...Object.fromEntries(forms.map(({ name, ratio }) => [name, { ratio }])),
      "EN 1993-1-8": { ratio: `${shearShare} + tension / (1.4 * tensionAllowable)` },
    },
  },
  steps: { margin: "1 - ratio" },
  outputs: {
    ratio: { kind: "ratio", symbol: "R", says: "sum of the load ratios, at most 1" },
    margin: { kind: "ratio", symbol: "M", says: "what is left of 1" },
  },
  limits: [
    { that: "tension >= 0", else: "give the tension as a pull" },
    { that: "shear >= 0", else: "give the shear without direction" },
    { that: "bendingStress >= 0", else: "give the bending stress without direction" },
    { that: "tensionAllowable > 0", else: "no ratio is defined" },
    { that: "shearAllowable > 0", else: "no ratio is defined" },
    { that: "bendingAllowable > 0", else: "no ratio is defined" },
    {
      that: "tension <= tensionAllowable",
      else: "the tension alone is too high, which the sum of EN 1993-1-8 does not show",
      warn: "spoils",
    },
    { that: "shear <= shearAllowable", else: "the shear alone is too high", warn: "advice" },
    { that: "ratio <= 1", else: "tension and shear together are too high", warn: "advice" },
  ],
  sources: { "*": interactionNasa },
  notes: [
    "the exponents of NASA-STD-5020 are from memory and unconfirmed: confirm them in the standard before relying on them",
    "the margin is what is left of 1; the load may not be raised by that share, since the powers differ",
    "in EN 1993-1-8 the tension alone must stay below its allowable too",
  ],
  cautions: ["C8"],
});
