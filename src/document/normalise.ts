// A checked item of the file → the item the other layers use. Texts pass through as typed.
import { type Fields, held, mapping } from "./held.ts";
import type {
  Item,
  Place,
  ReadingItem,
  SignOffItem,
  SignOffRecord,
  SignOffRole,
  SpreadText,
} from "./item.ts";
import type { ItemKind } from "./schema.ts";

interface Standing {
  readonly place: Place;
  readonly index: number;
}

const own: { readonly [K in ItemKind]: (fields: Fields) => Fields } = {
  note: ({ note, ...rest }) => ({ text: note, ...rest }),
  given: ({ given, spread, ...rest }) => ({
    name: given,
    ...rest,
    ...(spread === undefined ? {} : { spread: toSpread(mapping(spread)) }),
  }),
  working: ({ working, is, ...rest }) => ({
    name: working,
    ...rest,
    ...(is === undefined ? {} : { formula: is }),
  }),
  check: ({ check, that, ...rest }) => ({ name: check, that: that ?? "", ...rest }),
  reading: ({ reading, uncertainty, ...rest }) => ({
    name: reading,
    ...rest,
    ...(uncertainty === undefined ? {} : { uncertainty: toUncertainty(mapping(uncertainty)) }),
  }),
  picture: (fields) => fields,
  caution: ({ caution, ...rest }) => ({ code: caution, ...rest }),
  "sign-off": ({ "sign-off": people, ...rest }) => ({ ...toPeople(mapping(people)), ...rest }),
};

/** Fields must have held against the schema of their kind, numbers replaced by their source text. */
export const toItem = (kind: ItemKind, fields: Fields, standing: Standing): Item =>
  held<Item>({ kind, ...own[kind](fields), ...standing });

function toSpread(fields: Fields): SpreadText {
  const form = "plusMinus" in fields ? "plusMinus" : "resolution" in fields ? "resolution" : "limits";
  const meaning = form === "plusMinus" ? { meaning: fields["meaning"] ?? "limits" } : {};
  return held<SpreadText>({ form, ...fields, ...meaning });
}

const toUncertainty = ({ k, ...of }: Fields): ReadingItem["uncertainty"] => held({ k, of });

function toPeople(people: Fields): Pick<SignOffItem, SignOffRole | "records"> {
  const entries = held<[SignOffRole, string | SignOffRecord][]>(Object.entries(people));
  const records = entries.map(
    ([role, entry]) => [role, typeof entry === "string" ? { who: entry } : entry] as const,
  );
  const names = records.map(([role, record]) => [role, record.who] as const);
  return { ...Object.fromEntries(names), records: Object.fromEntries(records) };
}
