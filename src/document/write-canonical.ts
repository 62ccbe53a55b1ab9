// The page in its fixed form: keys in the order of the schema, one field of an item on each line, LF, a last
// newline. Comments, blank lines and every typed value stay; writing twice gives the same text as writing once.
import { isMap, isScalar, isSeq, type Node, type Pair, type Tags, type YAMLMap } from "yaml";
import { type Problem, problem } from "../problem.ts";
import { held } from "./held.ts";
import { pairOf } from "./node-at.ts";
import { parseYaml } from "./parse-yaml.ts";
import { readYaml } from "./read.ts";
import { keyOrder, kindKeys } from "./schema.ts";

type AnyPair = Pair<Node, Node | null>;

export function writeCanonical(text: string, file = "page"): string | Problem {
  const first = arrange(text, file);
  // Comments settle when they are read back from their new place, so the arranged text is arranged again.
  return typeof first === "string" ? arrange(first, file) : first;
}

function arrange(text: string, file: string): string | Problem {
  const yaml = parseYaml(text, file);
  const problems = "root" in yaml ? readYaml(yaml).problems : yaml;
  if (!("root" in yaml) || problems.length > 0)
    return problems[0] ?? problem({ code: "not-a-page", what: "page file", where: file });
  const { root, document } = yaml;
  root.flow = false;
  sortKeys(root, keyOrder.page);
  const list = pairOf(root, "page")?.value;
  if (isSeq(list) && list.items.length > 0) list.flow = false;
  for (const item of isSeq(list) ? list.items : []) if (isMap(item)) arrangeItem(item);
  document.setSchema("1.2", { schema: "core", compat: "yaml-1.1", customTags: (tags) => tags.map(asTyped) });
  return document.toString({ lineWidth: 0, flowCollectionPadding: true, indentSeq: true });
}

/** Numbers are written back as they were typed: 12.0000 stays 12.0000. */
function asTyped(tag: Tags[number]): Tags[number] {
  if (typeof tag === "string" || tag.collection || tag.tag === "tag:yaml.org,2002:str") return tag;
  return { ...tag, stringify: (item) => (item as { source?: string }).source ?? String(item.value) };
}

function arrangeItem(item: YAMLMap): void {
  const kind = kindKeys.find((key) => pairOf(item, key)) ?? "note";
  item.flow = false;
  sortKeys(item, keyOrder[kind]);
  sortInside(item, "spread", keyOrder.spread);
  sortInside(item, "waived", keyOrder.waived);
  sortInside(item, "sign-off", keyOrder.people);
  const people = pairOf(item, "sign-off")?.value;
  for (const role of keyOrder.people) if (isMap(people)) sortInside(people, role, keyOrder.record);
}

function sortInside(item: YAMLMap, key: string, order: readonly string[]): void {
  const value = pairOf(item, key)?.value;
  if (isMap(value)) sortKeys(value, order);
}

function sortKeys(map: YAMLMap, order: readonly string[]): void {
  const rank = (pair: AnyPair) => {
    const at = isScalar(pair.key) ? order.indexOf(String(pair.key.value)) : -1;
    return at < 0 ? order.length : at;
  };
  const sorted = [...held<readonly AnyPair[]>(map.items)].sort((a, b) => rank(a) - rank(b));
  const first = sorted[0]?.key;
  // What stood above a field that is now the first stands above the whole item.
  if (first && !map.flow) {
    const comments = [map.commentBefore, first.commentBefore].filter((text) => typeof text === "string");
    if (comments.length > 0) map.commentBefore = comments.join("\n");
    first.commentBefore = null;
    first.spaceBefore = false;
  }
  map.items = sorted;
}
