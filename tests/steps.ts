// How often lists are looked at while something runs: calls of what is given to some, find, filter and every,
// and the places that includes and indexOf may pass. Counted, so that it is the same on any machine.
import { vi } from "vitest";

type Act = (...all: unknown[]) => unknown;

const asking = ["some", "find", "findIndex", "findLast", "filter", "every"] as const;
const passing = ["includes", "indexOf"] as const;

export function steps(act: () => unknown): number {
  let looks = 0;
  const lists: Record<string, Act> = Array.prototype as unknown as Record<string, Act>;
  const spies = [...asking, ...passing].map((name) => {
    const plain = lists[name];
    return vi.spyOn(lists, name).mockImplementation(function (this: unknown[], ...all: unknown[]) {
      const [each, ...more] = all;
      if (typeof each !== "function" || passing.some((one) => one === name)) {
        looks += this.length;
        return plain?.apply(this, all);
      }
      const counted: Act = (...found) => {
        looks += 1;
        return Reflect.apply(each, more[0], found) as unknown;
      };
      return plain?.call(this, counted);
    });
  });
  try {
    act();
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
  return looks;
}
