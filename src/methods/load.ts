// Loads only the families that a page asks for, so that a browser fetches no more than it needs.
import { catalogue, type Family } from "./catalogue.ts";
import { type AnyMethod, addMethods } from "./register.ts";

const families: Readonly<Record<Family, () => Promise<readonly AnyMethod[]>>> = {
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

const isFamily = (name: string): name is Family => Object.hasOwn(families, name);

/** An id that no family holds is passed over here: the page says so where it stands. */
export async function loadMethods(ids: Iterable<string>): Promise<void> {
  const wanted = new Set(ids);
  const names = Object.entries(catalogue)
    .filter(([, members]) => members.some((id) => wanted.has(id)))
    .map(([name]) => name)
    .filter(isFamily);
  const lists = await Promise.all(names.map((name) => families[name]()));
  for (const list of lists) addMethods(list);
}
