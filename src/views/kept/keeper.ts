// Writes a page into both stores and knows whether it is kept. Only one tab at a time keeps a page,
// so that two tabs never write over each other's readings.
import { forgetOnDisk, keepOnDisk, readFromDisk } from "./disk-store.ts";
import { asItCame, forgetAtOnce, type Kept, keepAtOnce, readAtOnce } from "./kept.ts";
import { askToPersist } from "./persist.ts";

export type Keeping = "kept" | "not kept" | "another tab";

export interface Keeper {
  /** What both stores held, the newer of them. */
  readonly found: Kept | undefined;
  readonly keep: (kept: Kept) => void;
  readonly forget: () => void;
  readonly state: () => Keeping;
  readonly dispose: () => void;
}

/** Where both stores are shut, what this tab has entered lives as long as the tab. */
const inThisTab = new Map<string, Kept>();

/** The newest of what is kept of a page. */
export async function keptOf(id: string): Promise<Kept | undefined> {
  const all = [await readFromDisk(id), readAtOnce(id), inThisTab.get(id)];
  return all.reduce((best, one) => ((one?.count ?? -1) > (best?.count ?? -1) ? one : best), undefined);
}

export async function keeperOf(id: string, onState: () => void): Promise<Keeper> {
  const lock = await lockOf(id);
  const found = await keptOf(id);
  let state: Keeping = lock ? "kept" : "another tab";
  let writing = false;
  let next: Kept | undefined;
  const become = (now: Keeping): void => {
    if (now === state) return;
    state = now;
    onState();
  };

  /** One writing at a time; what came meanwhile is written after it, the newest only. */
  const toDisk = async (kept: Kept, heldAtOnce: boolean): Promise<void> => {
    if (writing) {
      next = kept;
      return;
    }
    writing = true;
    const isOnDisk = await keepOnDisk(id, kept);
    if (isOnDisk && inThisTab.get(id) === kept) inThisTab.delete(id);
    writing = false;
    if (next) {
      const newer = next;
      next = undefined;
      await toDisk(newer, heldAtOnce);
    } else become(isOnDisk || heldAtOnce ? "kept" : "not kept");
  };
  return {
    found,
    keep: (kept) => {
      if (!lock) return;
      const heldAtOnce = atOnce(id, kept);
      void toDisk(kept, heldAtOnce);
      if (Object.keys(kept.typed).length > 0) askToPersist();
    },
    forget: () => {
      if (lock) forgetAll(id);
      next = undefined;
    },
    state: () => state,
    dispose: () => lock?.(),
  };
}

/** Marks a page as kept, so that it is listed, where the page itself is too large for the first store. */
const onlyOnDisk: Kept = { ...asItCame(""), count: -1 };

function atOnce(id: string, kept: Kept): boolean {
  const held = keepAtOnce(id, kept);
  if (held) inThisTab.delete(id);
  else {
    inThisTab.set(id, kept);
    keepAtOnce(id, onlyOnDisk); // too large for it: what stood there is older
  }
  return held;
}

/** What the page is to begin with when it is next opened. Only by the tab that holds the page. */
export async function beginWith(id: string, kept: Kept): Promise<void> {
  atOnce(id, kept);
  await keepOnDisk(id, kept);
}

export function forgetAll(id: string): void {
  inThisTab.delete(id);
  forgetAtOnce(id);
  void forgetOnDisk(id);
}

/** Held until let go. After a reload the tab before may hold it for a moment still. */
export async function lockOf(id: string): Promise<(() => void) | undefined> {
  if (!("locks" in navigator)) return () => undefined; // no secure context, as from a plain http address
  for (let tries = 0; tries < 5; tries += 1) {
    const held = await new Promise<(() => void) | undefined>((answer) => {
      navigator.locks
        .request(`splitline:${id}`, { ifAvailable: true }, (lock) => {
          if (!lock) return answer(undefined);
          return new Promise<void>((letGo) => answer(letGo));
        })
        .catch(() => answer(() => undefined)); // shut off together with the stores: there is nothing to guard
    });
    if (held) return held;
    await new Promise((resolve) => setTimeout(resolve, 80));
  }
  return undefined;
}
