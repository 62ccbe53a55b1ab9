// A checked item of the file → the item the other layers use. Texts pass through as typed.
import type {
  CautionItem,
  CheckItem,
  FormulaItem,
  GivenItem,
  Item,
  MethodItem,
  NoteItem,
  PictureItem,
  Place,
  ReadingItem,
  SignOffItem,
  SignOffRecord,
  SignOffRole,
  SpreadText,
} from "./item.ts";
import type { ItemKind } from "./schema.ts";

/** Fields of an item that held against its schema, numbers replaced by their source text. */
export type Fields = Readonly<Record<string, unknown>>;

interface Standing {
  readonly place: Place;
  readonly index: number;
}

const makers: { readonly [K in ItemKind]: (fields: Fields, standing: Standing) => Item } = {
  note: ({ note, ...rest }, standing) => ({ kind: "note", text: note, ...rest, ...standing }) as NoteItem,
  given: ({ given, spread, ...rest }, standing) =>
    ({
      kind: "given",
      name: given,
      ...rest,
      ...(spread ? { spread: toSpread(spread as Fields) } : {}),
      ...standing,
    }) as GivenItem,
  working: ({ working, is, ...rest }, standing) =>
    (is === undefined
      ? { kind: "working", name: working, ...rest, ...standing }
      : { kind: "working", name: working, formula: is, ...rest, ...standing }) as MethodItem | FormulaItem,
  check: ({ check, ...rest }, standing) =>
    ({ kind: "check", name: check, ...rest, ...standing }) as CheckItem,
  reading: ({ reading, uncertainty, ...rest }, standing) =>
    ({
      kind: "reading",
      name: reading,
      ...rest,
      ...(uncertainty ? { uncertainty: toUncertainty(uncertainty as Fields) } : {}),
      ...standing,
    }) as ReadingItem,
  picture: (fields, standing) => ({ kind: "picture", ...fields, ...standing }) as unknown as PictureItem,
  caution: ({ caution, ...rest }, standing) =>
    ({ kind: "caution", code: caution, ...rest, ...standing }) as CautionItem,
  "sign-off": ({ "sign-off": people, ...rest }, standing) =>
    ({ kind: "sign-off", ...toPeople(people as Fields), ...rest, ...standing }) as SignOffItem,
};

export const toItem = (kind: ItemKind, fields: Fields, standing: Standing): Item =>
  makers[kind](fields, standing);

export function toSpread(fields: Fields): SpreadText {
  const form = "plusMinus" in fields ? "plusMinus" : "resolution" in fields ? "resolution" : "limits";
  const meaning = form === "plusMinus" ? { meaning: fields["meaning"] ?? "limits" } : {};
  return { form, ...fields, ...meaning } as unknown as SpreadText;
}

function toUncertainty({ k, ...of }: Fields): ReadingItem["uncertainty"] {
  return { k: String(k), of: of as Readonly<Record<string, string>> };
}

function toPeople(people: Fields): Pick<SignOffItem, "prepared" | "checked" | "signed" | "records"> {
  const names: Partial<Record<SignOffRole, string>> = {};
  const records: Partial<Record<SignOffRole, SignOffRecord>> = {};
  for (const [role, entry] of Object.entries(people) as [SignOffRole, string | SignOffRecord][]) {
    const record = typeof entry === "string" ? { who: entry } : entry;
    names[role] = record.who;
    records[role] = record;
  }
  return { ...names, records };
}
