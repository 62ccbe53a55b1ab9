// The shape of a page file. The order of the keys here is the order in which a page is written.
// Reasons for its forms: strict objects and no open records, so that a misspelt or odd key is never lost;
// a cap on every text and list; no code made at run time (jitless), which a page's policy would report.
import * as z from "zod/mini";
import { type Kind, kinds } from "../units/kind.ts";
import { held } from "./held.ts";

z.config({ jitless: true });

const kindNames = held<readonly [Kind, ...Kind[]]>(Object.keys(kinds));

const text = (most: number) => z.string().check(z.minLength(1), z.maxLength(most));
const label = text(300);
const name = text(100);
/** Quantity texts; a plain number is a ratio or a count. Kept as typed. */
const quantity = z.union([z.string().check(z.maxLength(200)), z.number()]);
const limit = z.union([text(2000), z.number()]);
const plainNumber = z.union([text(30), z.number()]);
/** Keys are names the person chose: the reader checks each one. */
const open = <T extends z.core.SomeType>(value: T) => z.catchall(z.object({}), value);

const before = { says: z.optional(label), stage: z.optional(text(60)) };
const after = { source: z.optional(text(500)), note: z.optional(text(20_000)) };

const spreadExtras = {
  applies: z.optional(name),
  distribution: z.optional(z.enum(["rectangular", "triangular", "trapezoid", "normal", "arcsine", "t"])),
  degreesOfFreedom: z.optional(plainNumber),
};

const spreadSchema = z.union([
  z.strictObject({ plusMinus: quantity, meaning: z.literal("expanded"), k: plainNumber, ...spreadExtras }),
  z.strictObject({
    plusMinus: quantity,
    meaning: z.optional(z.enum(["limits", "standard"])),
    ...spreadExtras,
  }),
  z.strictObject({ lower: quantity, upper: quantity, ...spreadExtras }),
  z.strictObject({ resolution: quantity, ...spreadExtras }),
]);

const input = z.union([text(2000), z.number()]);
const row = open(input);
const inputs = open(
  z.union([
    text(2000),
    z.number(),
    z.array(input).check(z.maxLength(2000)),
    z.array(row).check(z.maxLength(2000)),
    row,
  ]),
);

const columnKind = z.enum(["tag", "text", ...kindNames]);

const signOffRecord = z.strictObject({
  who: label,
  role: z.optional(label),
  date: z.optional(text(40)),
  content: z.optional(text(64)),
  result: z.optional(text(64)),
  versions: z.optional(label),
  scope: z.optional(text(2000)),
  remarks: z.optional(text(20_000)),
  key: z.optional(text(200)),
  signature: z.optional(text(200)),
});
const signOffEntry = z.optional(z.union([label, signOffRecord]));

/** One answer for each key of a table. */
const overRows = { each: z.optional(text(200)), key: z.optional(name) };

const methodSchema = z.strictObject({
  working: name,
  ...before,
  ...overRows,
  by: text(100),
  of: inputs,
  ...after,
});
const formulaSchema = z.strictObject({
  working: name,
  ...before,
  ...overRows,
  is: limit,
  unit: z.optional(text(60)),
  ...after,
});

/** One schema for each kind of item, found by the item's kind key. */
export const itemSchemas = {
  note: z.strictObject({
    note: text(20_000),
    says: z.optional(label),
    stage: z.optional(text(60)),
    source: z.optional(text(500)),
  }),
  given: z.strictObject({
    given: name,
    ...before,
    value: quantity,
    as: z.optional(z.enum(["text", ...kindNames])),
    choices: z.optional(z.array(text(200)).check(z.minLength(1), z.maxLength(200))),
    spread: z.optional(spreadSchema),
    ...after,
  }),
  working: z.union([methodSchema, formulaSchema]),
  check: z.strictObject({
    check: name,
    ...before,
    ...overRows,
    that: z.optional(text(2000)),
    none: z.optional(text(200)),
    reads: z.optional(text(200)),
    allowed: z.optional(z.array(input).check(z.minLength(1), z.maxLength(100))),
    atLeast: z.optional(limit),
    atMost: z.optional(limit),
    between: z.optional(z.tuple([limit, limit])),
    uncertainty: z.optional(limit),
    waived: z.optional(z.strictObject({ by: label, why: text(2000) })),
    ...after,
  }),
  reading: z.strictObject({
    reading: name,
    ...before,
    instrument: z.optional(label),
    date: z.optional(text(40)),
    person: z.optional(label),
    temperature: z.optional(quantity),
    ...after,
    columns: open(columnKind),
    key: z.optional(z.array(name).check(z.minLength(1), z.maxLength(6))),
    expect: z.optional(open(z.array(input).check(z.minLength(1), z.maxLength(2000)))),
    odd: z.optional(open(quantity)),
    may: z.optional(z.array(name).check(z.maxLength(100))),
    uncertainty: z.optional(z.catchall(z.object({ k: plainNumber }), quantity)),
    delimiter: z.optional(z.enum(["comma", "semicolon", "tab"])),
    decimal: z.optional(z.enum(["point", "comma"])),
    rows: z.string().check(z.maxLength(2_000_000)),
  }),
  picture: z.strictObject({ picture: text(60), ...before, of: open(input), ...after }),
  caution: z.strictObject({
    caution: z.enum(["C1", "C2", "C3", "C4", "C5", "C6", "C7", "C8"]),
    ...before,
    ...after,
  }),
  "sign-off": z.strictObject({
    "sign-off": z.strictObject({ prepared: signOffEntry, checked: signOffEntry, signed: signOffEntry }),
    ...before,
    ...after,
  }),
} as const;

export type ItemKind = keyof typeof itemSchemas;
/** Kind keys, `note` last: the other kinds may carry a note as well. */
export const kindKeys: readonly ItemKind[] = [
  "given",
  "working",
  "check",
  "reading",
  "picture",
  "caution",
  "sign-off",
  "note",
];

const showShape = held<Record<Kind, z.ZodMiniOptional<typeof label>>>(
  Object.fromEntries(kindNames.map((kind) => [kind, z.optional(text(60))])),
);

const header = {
  splitline: z.literal(1),
  title: text(300),
  machine: z.optional(label),
  subject: z.optional(label),
  revision: z.optional(text(60)),
  preparedFor: z.optional(label),
  seed: z.optional(z.int().check(z.minimum(0), z.maximum(4_294_967_295))),
  show: z.optional(z.strictObject(showShape)),
};

const mostItems = 2000;

/** The page with its items unread: each is then held against the schema of its kind. */
export const headerSchema = z.strictObject({
  ...header,
  page: z.array(z.unknown()).check(z.maxLength(mostItems)),
});

const { note, given, working, check, reading, picture, caution } = itemSchemas;
export const pageSchema = z.strictObject({
  ...header,
  page: z
    .array(z.union([given, working, check, reading, picture, caution, itemSchemas["sign-off"], note]))
    .check(z.maxLength(mostItems)),
});

export const keyOrder = {
  page: Object.keys(headerSchema.shape),
  note: Object.keys(note.shape),
  given: Object.keys(given.shape),
  working: [
    ...new Set([...Object.keys(methodSchema.shape).slice(0, -2), ...Object.keys(formulaSchema.shape)]),
  ],
  check: Object.keys(check.shape),
  reading: Object.keys(reading.shape),
  picture: Object.keys(picture.shape),
  caution: Object.keys(caution.shape),
  "sign-off": Object.keys(itemSchemas["sign-off"].shape),
  spread: ["plusMinus", "meaning", "k", "lower", "upper", "resolution", ...Object.keys(spreadExtras)],
  waived: ["by", "why"],
  people: ["prepared", "checked", "signed"],
  record: Object.keys(signOffRecord.shape),
} as const;

export { z };
