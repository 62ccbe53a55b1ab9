// Loads only the families of methods that a page asks for, so that a browser fetches little more than it
// needs, in few requests.
import { families } from "./families.ts";
import { type AnyMethod, addMethods } from "./register.ts";

const lists: Readonly<Record<string, () => Promise<readonly AnyMethod[]>>> = {
  threads: async () => (await import("./threads/index.ts")).threads,
  torque: async () => (await import("./torque/index.ts")).torque,
  stiffness: async () => (await import("./stiffness/index.ts")).stiffness,
  preload: async () => (await import("./preload/index.ts")).preload,
  margins: async () => (await import("./margins/index.ts")).margins,
  shear: async () => (await import("./shear/index.ts")).shear,
  fits: async () => (await import("./fits/index.ts")).fits,
  opening: async () => (await import("./opening/index.ts")).opening,
  plan: async () => (await import("./plan/index.ts")).plan,
};

/** An id that is not known is passed over here: the page says so where it stands. */
export async function loadMethods(ids: Iterable<string>): Promise<void> {
  const wanted = new Set(ids);
  const asked = Object.entries(lists).flatMap(([family, load]) =>
    families[family]?.some((id) => wanted.has(id)) ? [load()] : [],
  );
  addMethods((await Promise.all(asked)).flat());
}
