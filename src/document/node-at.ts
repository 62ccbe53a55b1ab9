// From a path in the data to the YAML node it came from, for the line and column of a problem.
import { isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap } from "yaml";
import { held } from "./held.ts";

export interface Found {
  /** Where to point: the value, or the key of a value that is empty, or the deepest node there is. */
  readonly offset: number;
  /** The node at the full path; undefined when something on the way is missing. */
  readonly node: Node | undefined;
}

/** Pairs by their key, made at the first question; a parsed mapping is never changed. */
const pairs = new WeakMap<YAMLMap, ReadonlyMap<string, Pair<Node, Node | null>>>();

export function pairOf(map: YAMLMap, key: string): Pair<Node, Node | null> | undefined {
  let known = pairs.get(map);
  if (!known) {
    const entries = map.items.flatMap((pair) =>
      isScalar(pair.key) ? [[String(pair.key.value), held<Pair<Node, Node | null>>(pair)] as const] : [],
    );
    known = new Map(entries.toReversed()); // of two alike the first one counts
    pairs.set(map, known);
  }
  return known.get(key);
}

const startOf = (node: Node | null | undefined): number | undefined => node?.range?.[0];

export function nodeAt(root: Node, path: readonly PropertyKey[]): Found {
  let node: Node = root;
  let offset = startOf(root) ?? 0;
  for (const step of path) {
    if (isMap(node)) {
      const pair = pairOf(node, String(step));
      if (!pair) return { offset, node: undefined };
      const empty = isScalar(pair.value) && pair.value.value === null && pair.value.source === "";
      offset = (empty ? startOf(pair.key) : (startOf(pair.value) ?? startOf(pair.key))) ?? offset;
      if (!pair.value) return { offset, node: undefined };
      node = pair.value;
    } else if (isSeq(node) && typeof step === "number") {
      const item = held<Node | undefined>(node.items[step]);
      if (!item) return { offset, node: undefined };
      node = item;
      offset = startOf(node) ?? offset;
    } else {
      return { offset, node: undefined };
    }
  }
  return { offset, node };
}

/** Offset of a key inside the mapping at the path. */
export function keyAt(root: Node, path: readonly PropertyKey[], key: string): number {
  const found = nodeAt(root, path);
  const pair = isMap(found.node) ? pairOf(found.node, key) : undefined;
  return startOf(pair?.key) ?? found.offset;
}
