// Writes a page into both stores and knows whether it is kept. Only one tab at a time keeps a page,
// so that two tabs never write over each other's readings.
import { forgetOnDisk, keepOnDisk, readFromDisk } from "./disk-store.ts";
import { asItCame, forgetAtOnce, type Kept, keepAtOnce, readAtOnce } from "./kept.ts";

export type Keeping = "kept" | "not kept" | "another tab";

export interface Keeper {
  /** What both stores held, the newer of them. */
  readonly found: Kept | undefined;
  readonly keep: (kept: Kept) => void;
  readonly forget: () => void;
  readonly state: () => Keeping;
  readonly dispose: () => void;
}

export async function keeperOf(id: string, onState: () => void): Promise<Keeper> {
  const [lock, onDisk] = await Promise.all([lockOf(id), readFromDisk(id)]);
  const atOnce = readAtOnce(id);
  const found = (onDisk?.count ?? -1) > (atOnce?.count ?? -1) ? onDisk : atOnce;
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
      const heldAtOnce = keepAtOnce(id, kept);
      if (!heldAtOnce) keepAtOnce(id, onlyOnDisk); // too large for it: what stood there is older
      void toDisk(kept, heldAtOnce);
    },
    forget: () => {
      if (!lock) return;
      next = undefined;
      forgetAtOnce(id);
      void forgetOnDisk(id);
    },
    state: () => state,
    dispose: () => lock?.(),
  };
}

/** Marks a page as kept, so that it is listed, where the page itself is too large for the first store. */
const onlyOnDisk: Kept = { ...asItCame(""), count: -1 };

/** A file opened by hand takes the place of what was kept under its name. */
export async function beginAnew(id: string, base: string): Promise<void> {
  const before = Math.max((await readFromDisk(id))?.count ?? 0, readAtOnce(id)?.count ?? 0);
  const kept = { ...asItCame(base), count: before + 1 };
  if (!keepAtOnce(id, kept)) keepAtOnce(id, onlyOnDisk);
  await keepOnDisk(id, kept);
}

/** Held until let go. After a reload the tab before may hold it for a moment still. */
async function lockOf(id: string): Promise<(() => void) | undefined> {
  if (!("locks" in navigator)) return () => undefined; // no secure context, as from a plain http address
  for (let tries = 0; tries < 5; tries += 1) {
    const held = await new Promise<(() => void) | undefined>((answer) => {
      void navigator.locks.request(`splitline:${id}`, { ifAvailable: true }, (lock) => {
        if (!lock) return answer(undefined);
        return new Promise<void>((letGo) => answer(letGo));
      });
    });
    if (held) return held;
    await new Promise((resolve) => setTimeout(resolve, 80));
  }
  return undefined;
}
