// A part of the page fetched at its first use, or soon after the page stands, so that it is there without a signal.
export interface Lazy<T> {
  readonly use: (act: (made: T) => void) => void;
}

const soon = 2500;

export function lazily<T>(load: () => Promise<T>, when: "asked" | "soon" = "asked"): Lazy<T> {
  let ready: Promise<T> | undefined;
  const get = (): Promise<T> => {
    ready ??= load().catch((error: unknown) => {
      ready = undefined; // no signal just now: the next use tries again
      throw error;
    });
    return ready;
  };
  if (when === "soon") setTimeout(() => void get().catch(() => undefined), soon);
  return { use: (act) => void get().then(act) };
}
