// How a unit is written on screen.
import type { Unit } from "./build-unit.ts";
import { atomOf, findAtom } from "./find-atom.ts";

const raisedDigits = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** For the screen: "N·m", "mm²", "µm", "°C"; nothing for a plain ratio. */
export function unitLabel(u: Unit): string {
  if (u.text === "1") return "";
  return u.text.replace(/[a-z]{2}H2O|[A-Za-z_%‰][A-Za-z_%‰ ]*|\d|\./g, (part) => {
    if (part === ".") return "·";
    if (/^\d$/.test(part))
      return u.text.startsWith("1/") && part === "1"
        ? part
        : (raisedDigits[Number.parseInt(part, 10)] ?? part);
    const found = findAtom(part);
    const label = found && found.prefix === "" ? atomOf(found).label : undefined;
    return label ?? (found?.prefix === "u" ? `µ${found.name}` : part);
  });
}
