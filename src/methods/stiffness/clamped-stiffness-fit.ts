// How stiff are clamped parts of one material, by the exponential fit?
import { isProblem, type Problem, problem } from "../../problem.ts";
import { stiffnessFit, stiffnessFitMaterials } from "../../tables/stiffness-fit.ts";
import { numberOf, textOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { exponentialFit } from "../sources.ts";

function run(inputs: Insides): Insides | Problem {
  const [fitA, fitB] = [numberOf(inputs, "fitA"), numberOf(inputs, "fitB")];
  const material = textOf(inputs, "material");
  if (material !== undefined && (fitA !== undefined || fitB !== undefined))
    return problem({
      code: "not-used",
      what: "parameters of the fit",
      got: `material, ${material}, beside ${fitA === undefined ? "fitB" : "fitA"}`,
      must: "be given as fitA and fitB together, or by material",
      why: "one of the two would be ignored",
    });
  if (fitA !== undefined && fitB !== undefined) return { fitA, fitB };
  if (material === undefined || fitA !== undefined || fitB !== undefined)
    return problem({
      code: "missing-input",
      what: "parameters of the fit",
      got: fitA === undefined && fitB === undefined ? "nothing" : "only one of them",
      must: "be given as fitA and fitB together, or by material",
      hint: 'for example material="steel"',
    });
  const row = stiffnessFit(material);
  return isProblem(row) ? row : { fitA: row.fitA, fitB: row.fitB };
}

function remarks(inputs: Insides): readonly string[] {
  const material = textOf(inputs, "material");
  return numberOf(inputs, "fitA") === undefined && material !== undefined ? [`fit row: ${material}`] : [];
}

export const clampedStiffnessFit = method({
  id: "clamped-stiffness-fit",
  question: "How stiff are the clamped parts, by the exponential fit for one material?",
  inputs: {
    diameter: { kind: "length", as: "bolt diameter", symbol: "d", says: "bolt diameter" },
    grip: { kind: "length", symbol: "l", says: "grip, the whole clamped length" },
    modulus: { kind: "stress", as: "modulus", symbol: "E", says: "modulus of the clamped parts" },
    fitA: { kind: "ratio", symbol: "A", says: "first parameter of the fit", optional: true },
    fitB: { kind: "ratio", symbol: "B", says: "second parameter of the fit", optional: true },
    material: {
      kind: "text",
      says: "material whose parameters are taken",
      optional: true,
      choices: stiffnessFitMaterials,
    },
  },
  procedure: {
    says: "parameters of the fit, as given or of the material",
    source: exponentialFit,
    run,
    remarks,
  },
  steps: {
    slenderness: "diameter / grip",
    relativeStiffness: "fitA * exp(fitB * slenderness)",
    stiffness: "modulus * diameter * relativeStiffness",
    halfStiffness: "2 * stiffness",
  },
  between: { slenderness: { kind: "ratio", symbol: "d/l", says: "diameter over grip" } },
  outputs: {
    stiffness: { kind: "stiffness", symbol: "k_m", says: "stiffness of the clamped parts" },
    halfStiffness: {
      kind: "stiffness",
      symbol: "k_h",
      says: "stiffness of half the grip, for two equal halves of unlike material in series",
    },
    relativeStiffness: { kind: "ratio", symbol: "k_m/Ed", says: "stiffness over modulus and diameter" },
    fitA: { kind: "ratio", symbol: "A", says: "first parameter of the fit" },
    fitB: { kind: "ratio", symbol: "B", says: "second parameter of the fit" },
  },
  limits: [
    { that: "grip > 0", else: "no grip is described" },
    { that: "fitA > 0", else: "no stiffness follows" },
    { that: "fitB >= 0", else: "a shorter grip is not softer" },
    { that: "slenderness >= 0.1", else: "a longer grip than the fit was drawn for", warn: "spoils" },
    { that: "slenderness <= 2", else: "a shorter grip than the fit was drawn for", warn: "spoils" },
  ],
  sources: { "*": exponentialFit },
  notes: [
    "one material through the whole grip and a bearing face of 1.5 times the diameter; washers of another material are outside the fit",
    "two equal halves of unlike material: take the half stiffness of each and put them in series",
  ],
});
