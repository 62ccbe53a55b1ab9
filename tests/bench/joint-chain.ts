// The load of the spread bench: a bolted joint in 12 formulas of 15 inputs, and the same by hand.
// biome-ignore-all lint/style/noNonNullAssertion: the loop by hand should lose nothing to a check
/* oxlint-disable typescript/no-non-null-assertion */

export type Columns = readonly Float64Array[];
export const size = 1024;
export const column = (length = size): Float64Array => new Float64Array(length);

/** Middle value of each input; each is drawn normal, with a hundredth of it for deviation. */
export const inputs: Readonly<Record<string, number>> = {
  torque: 700,
  diameter: 0.024,
  pitch: 0.003,
  pitchDiameter: 0.022,
  threadFriction: 0.12,
  bearingFriction: 0.13,
  bearingDiameter: 0.03,
  boltLength: 0.1,
  boltArea: 4.5e-4,
  boltModulus: 206e9,
  clampedLength: 0.1,
  clampedModulus: 170e9,
  faceDiameter: 0.036,
  relaxation: 0.05,
  externalLoad: 4e4,
};

export const texts: Readonly<Record<string, string>> = {
  stressDiameter: "diameter - 0.9382 * pitch",
  stressArea: "pi * stressDiameter^2 / 4",
  boltStiffness: "1 / (boltLength / (boltArea * boltModulus) + 0.4 * diameter / (stressArea * boltModulus))",
  clampedStiffness:
    "0.5774 * pi * clampedModulus * diameter / ln((1.155 * clampedLength + faceDiameter - diameter) * (faceDiameter + diameter) / ((1.155 * clampedLength + faceDiameter + diameter) * (faceDiameter - diameter)))",
  loadFactor: "boltStiffness / (boltStiffness + clampedStiffness)",
  threadPart: "pitch / (2 * pi) + 1.155 * threadFriction * pitchDiameter / 2",
  preload: "torque / (threadPart + bearingFriction * bearingDiameter / 2) * (1 - relaxation)",
  axialStress: "preload / stressArea",
  shearStress: "16 * preload * threadPart / (pi * stressDiameter^3)",
  equivalentStress: "sqrt(axialStress^2 + 3 * shearStress^2)",
  boltLoad: "preload + loadFactor * externalLoad",
  clampLoad: "preload - (1 - loadFactor) * externalLoad",
};
export const keep = ["equivalentStress", "boltLoad", "clampLoad"];
export const names = Object.keys(inputs);
export const at = (columns: Columns, name: string): Float64Array => columns[names.indexOf(name)] ?? column();

/** The same arithmetic, written out; columns in, three columns out. */
export function byHand(columns: Columns, out: Columns): () => void {
  const [T, d, p, d2] = [
    at(columns, "torque"),
    at(columns, "diameter"),
    at(columns, "pitch"),
    at(columns, "pitchDiameter"),
  ];
  const [muT, muB, db] = [
    at(columns, "threadFriction"),
    at(columns, "bearingFriction"),
    at(columns, "bearingDiameter"),
  ];
  const [lB, aB, eB] = [at(columns, "boltLength"), at(columns, "boltArea"), at(columns, "boltModulus")];
  const [lC, eC, dF] = [
    at(columns, "clampedLength"),
    at(columns, "clampedModulus"),
    at(columns, "faceDiameter"),
  ];
  const [z, F] = [at(columns, "relaxation"), at(columns, "externalLoad")];
  const [out0 = column(), out1 = column(), out2 = column()] = out;
  return () => {
    for (let i = 0; i < size; i++) {
      const dI = d[i]!;
      const dS = dI - 0.9382 * p[i]!;
      const aS = (Math.PI * (dS * dS)) / 4;
      const kB = 1 / (lB[i]! / (aB[i]! * eB[i]!) + (0.4 * dI) / (aS * eB[i]!));
      const dFI = dF[i]!;
      const wide = 1.155 * lC[i]! + dFI;
      const kC =
        (0.5774 * Math.PI * eC[i]! * dI) / Math.log(((wide - dI) * (dFI + dI)) / ((wide + dI) * (dFI - dI)));
      const n = kB / (kB + kC);
      const thread = p[i]! / (2 * Math.PI) + (1.155 * muT[i]! * d2[i]!) / 2;
      const preload = (T[i]! / (thread + (muB[i]! * db[i]!) / 2)) * (1 - z[i]!);
      const axial = preload / aS;
      const shear = (16 * preload * thread) / (Math.PI * (dS * dS * dS));
      out0[i] = Math.sqrt(axial * axial + 3 * (shear * shear));
      out1[i] = preload + n * F[i]!;
      out2[i] = preload - (1 - n) * F[i]!;
    }
  };
}
