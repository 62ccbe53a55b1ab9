// The pictures a page can ask for and what each takes under `of`, as data: the engine refuses by it, and the
// drawing code takes kinds and columns from it. Columns of a list are those it must have in every row and
// those it may have; a column not named is left alone.
import type { Kind } from "../units/kind.ts";

/** "text" for a column that only names something; any plain value serves. */
export type PictureColumns = Readonly<Record<string, Kind | "text">>;

export interface ListColumns {
  readonly must: PictureColumns;
  readonly may: PictureColumns;
}

export interface NumberInput {
  readonly is: "number";
  readonly kind: Kind;
  readonly optional: boolean;
}

/** A single word, such as a step or a pass. */
export interface WordInput {
  readonly is: "word";
  readonly optional: boolean;
  readonly choices: readonly string[];
}

export interface ListInput extends ListColumns {
  readonly is: "list";
  readonly optional: boolean;
  /** One number of this kind may stand for all rows. */
  readonly orNumber: Kind | undefined;
}

export type PictureField = NumberInput | WordInput | ListInput;

export interface PictureDeclaration {
  readonly of: Readonly<Record<string, PictureField>>;
  /** At least one of these has to be there. */
  readonly anyOf?: readonly string[];
  /** An input that says nothing without another. */
  readonly needs?: Readonly<Record<string, string>>;
  /** Any further list has these columns and is called by the name of its input. */
  readonly further?: ListColumns;
}

const number = <K extends Kind>(kind: K) => ({ is: "number", kind, optional: false }) as const;
const maybe = <K extends Kind>(kind: K) => ({ is: "number", kind, optional: true }) as const;
const word = (...choices: readonly string[]) => ({ is: "word", optional: true, choices }) as const;
const list = (must: PictureColumns, may: PictureColumns = {}) =>
  ({ is: "list", optional: false, orNumber: undefined, must, may }) as const;
const maybeList = (must: PictureColumns, may: PictureColumns = {}) =>
  ({ is: "list", optional: true, orNumber: undefined, must, may }) as const;

const positions = list({ position: "text", x: "length", y: "length" }, { kind: "text" });
const yRuns = word("down", "up");

const tightened = {
  of: {
    record: list({ position: "text" }, { torque: "torque", angle: "angle", stretch: "length", pass: "text" }),
    band: number("angle"),
    target: maybe("torque"),
    torqueBand: maybe("ratio"),
    pass: word(),
  },
  needs: { target: "torqueBand", torqueBand: "target" },
} as const;

export const pictureInputs = {
  "joint-diagram": {
    of: {
      preload: number("force"),
      externalLoad: number("force"),
      loadFactor: maybe("ratio"),
      boltStiffness: maybe("stiffness"),
      clampedStiffness: maybe("stiffness"),
      minimum: maybe("force"),
      maximum: maybe("force"),
      proofLoad: maybe("force"),
    },
    anyOf: ["boltStiffness", "loadFactor"],
    needs: { boltStiffness: "clampedStiffness", clampedStiffness: "boltStiffness" },
  },
  "preload-window": {
    of: {
      separationLoad: number("force"),
      scatter: number("ratio"),
      proofLoad: number("force"),
      nutFactor: number("ratio"),
      diameter: number("length"),
      separationFactor: maybe("ratio"),
      tripLoad: maybe("force"),
      tripFactor: maybe("ratio"),
      tripThermalChange: maybe("force"),
      relaxation: maybe("ratio"),
      assemblyShare: maybe("ratio"),
      warmUpChange: maybe("force"),
      torque: maybe("torque"),
    },
  },
  wrench: {
    of: {
      wrenchLength: number("length"),
      adapterLength: number("length"),
      adapterAngle: maybe("angle"),
      setting: maybe("torque"),
      targetTorque: maybe("torque"),
    },
    anyOf: ["setting", "targetTorque"],
  },
  "fit-bar": {
    of: {
      size: number("length"),
      holeMax: number("length"),
      holeMin: number("length"),
      shaftMax: number("length"),
      shaftMin: number("length"),
      hole: maybe("length"),
      shaft: maybe("length"),
    },
  },
  "fit-map": {
    of: {
      positions,
      pairs: list(
        { position: "text" },
        {
          tightest: "length",
          loosest: "length",
          state: "text",
          tightestState: "text",
          loosestState: "text",
        },
      ),
      forms: maybeList(
        { position: "text" },
        { ovality: "length", ovalDirection: "text", taper: "length", mean: "length" },
      ),
      readings: maybeList(
        { position: "text", depth: "text", direction: "text" },
        { diameter: "length", value: "length" },
      ),
      tightestAllowed: number("length"),
      loosestAllowed: number("length"),
      exaggeration: maybe("ratio"),
      yRuns,
    },
    needs: { readings: "forms" },
    further: { must: { position: "text", state: "text" }, may: {} },
  },
  "gap-map": {
    of: {
      stations: list({ step: "text", x: "length", y: "length" }, { station: "text", gap: "length" }),
      planes: list(
        { step: "text" },
        { mean: "length", tiltX: "ratio", tiltY: "ratio", tilt: "ratio", twist: "length" },
      ),
      tiltLimit: {
        ...maybeList({ step: "text" }, { tiltLimit: "ratio", value: "ratio" }),
        orNumber: "ratio",
      },
      twistLimit: maybe("length"),
      engagedLength: maybe("length"),
      step: word(),
      yRuns,
    },
  },
  "dowel-limit": {
    of: {
      clearance: number("length"),
      engagedLength: number("length"),
      planes: list({ step: "text" }, { mean: "length", tilt: "ratio" }),
    },
  },
  "tightening-map": {
    of: {
      positions,
      order: list({ position: "text" }),
      passes: list({ position: "text", pass: "text" }, { net: "torque", set: "torque" }),
      done: list({ position: "text", pass: "text" }),
      adapters: maybeList({ position: "text" }),
      pass: word(),
      yRuns,
    },
  },
  "angle-by-nut": tightened,
  "torque-against-angle": tightened,
  "trial-spread": {
    of: {
      trial: list({}, { position: "text", preload: "force", value: "force" }),
      mean: number("force"),
      spread: number("ratio"),
      scatter: maybe("ratio"),
    },
  },
  "fits-against-limits": {
    of: {
      pairs: list(
        { position: "text" },
        { tightest: "length", loosest: "length", uncertainty: "length", state: "text" },
      ),
      tightestAllowed: number("length"),
      loosestAllowed: number("length"),
    },
  },
  "hole-section": {
    of: {
      readings: list(
        { depth: "text", direction: "text" },
        { diameter: "length", value: "length", position: "text", readingState: "text" },
      ),
      nominal: number("length"),
      exaggeration: maybe("ratio"),
      position: word(),
      splitAfter: word(),
    },
  },
  assignment: {
    of: {
      pairs: list(
        { position: "text", bolt: "text" },
        { state: "text", moved: "text", tightest: "length", loosest: "length" },
      ),
      bolts: maybeList({}, { tag: "text", bolt: "text" }),
    },
  },
  "run-on-bars": {
    of: {
      nuts: list({ position: "text" }, { runOn: "torque" }),
      least: number("torque"),
      most: number("torque"),
    },
  },
} as const satisfies Readonly<Record<string, PictureDeclaration>>;

export type PictureName = keyof typeof pictureInputs;
export const pictureNames: readonly string[] = Object.keys(pictureInputs);

/** Names that pictures had before. */
export const formerNames: Readonly<Record<string, PictureName>> = { "torque-angle": "angle-by-nut" };

export function pictureDeclared(name: string): PictureDeclaration | undefined {
  return Object.entries<PictureDeclaration>(pictureInputs).find(([known]) => known === name)?.[1];
}
