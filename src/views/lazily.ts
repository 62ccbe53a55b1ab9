// A part of the page fetched at its first use.
export function lazily<T>(load: () => Promise<T>): (use: (made: T) => void) => void {
  let ready: Promise<T> | undefined;
  return (use) => {
    ready ??= load();
    void ready.then(use);
  };
}
