// How often lists are looked at while something runs: calls of what is given to some, find, filter and every,
// and the places that includes and indexOf may pass. Counted, so that it is the same on any machine.
type Act = (...all: unknown[]) => unknown;

const isAct = (value: unknown): value is Act => typeof value === "function";

const asking: ReadonlySet<string> = new Set(["some", "find", "findIndex", "findLast", "filter", "every"]);
const passing: ReadonlySet<string> = new Set(["includes", "indexOf"]);

export function steps(act: () => unknown): number {
  let looks = 0;
  const lists: object = Array.prototype;
  const before = new Map<string, Act>();
  const put = (name: string, value: Act) =>
    Object.defineProperty(lists, name, { value, configurable: true, writable: true });
  const counting = (plain: Act): Act =>
    function (this: unknown[], each: unknown, self?: unknown): unknown {
      if (typeof each !== "function") {
        looks += this.length;
        return Reflect.apply(plain, this, self === undefined ? [each] : [each, self]);
      }
      const counted: Act = (...found) => {
        looks += 1;
        return Reflect.apply(each, self, found);
      };
      return Reflect.apply(plain, this, [counted]);
    };
  for (const name of [...asking, ...passing]) {
    const plain: unknown = Reflect.get(lists, name);
    if (!isAct(plain)) continue;
    before.set(name, plain);
    put(name, counting(plain));
  }
  try {
    act();
  } finally {
    for (const [name, plain] of before) put(name, plain);
  }
  return looks;
}
