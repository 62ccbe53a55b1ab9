// A unit text, trade notations included, becomes a Unit: exact factor, dimension, and the kinds it can stand for.
// The kind a field expects decides where a trade writes a mass for a force, or "min" for a minute of arc.
import { isProblem, type Problem, problem } from "../problem.ts";
import { asForce } from "./as-force.ts";
import { buildUnit, has, type Unit } from "./build-unit.ts";
import { clean } from "./clean.ts";
import { inBaseWords } from "./dimension.ts";
import { findAtom } from "./find-atom.ts";
import { type Kind, kinds, kindsAgree, withArticle } from "./kind.ts";
import { type TorqueMeant, torqueMeant } from "./torque-meant.ts";
import { type Factor, type Parsed, parseUnitText } from "./unit-text.ts";

export type { Unit } from "./build-unit.ts";
export { unitLabel } from "./unit-label.ts";

/** How far a reading is from what was typed: as listed, shown, or asked about. */
export type Level = "accept" | "note" | "warn";

export interface UnitReading {
  readonly unit: Unit;
  readonly level: Level;
  /** The question for a reading that has to be confirmed. */
  readonly ask?: string;
  /** Unit in which the reading is shown, when the typed one is shop talk: tenths in inches. */
  readonly shownIn?: string;
  /** psig, psia, mm AF: the letters are a label and no part of the unit. */
  readonly label?: "gauge" | "absolute" | "across flats";
}

/** Parses unit text. What would only be read after a question (kg.m as a torque) is refused with the plain form. */
export function unit(text: string, expected?: Kind): Unit | Problem {
  const reading = readUnit(text, expected);
  if (isProblem(reading)) return reading;
  if (reading.level !== "warn" || reading.unit.text === clean(text)) return reading.unit;
  return problem({
    code: "unit-needs-confirming",
    what: "unit",
    got: `"${text}"`,
    must: `be written ${reading.unit.text}`,
    why: reading.ask,
    suggestions: [reading.unit.text],
  });
}

const known = new Map<string, UnitReading | Problem>();

/** The reading behind `unit`, with its level; remembered, because a page repeats few units many times. */
export function readUnit(text: string, expected?: Kind): UnitReading | Problem {
  const key = `${expected ?? ""}|${text}`;
  const before = known.get(key);
  if (before) return before;
  const reading = text.length > 120 ? tooLong() : readCleanUnit(clean(text), expected);
  if (known.size > 2000) known.clear();
  known.set(key, reading);
  return reading;
}

const tooLong = (): Problem =>
  problem({ code: "unit-too-long", what: "unit", must: "be shorter than 120 characters" });

function readCleanUnit(text: string, expected: Kind | undefined): UnitReading | Problem {
  const wrong = refusedOutright(text, expected);
  if (wrong) return wrong;
  const gauge = /^(psi|bar|kPa|MPa|kgf\/cm2)[ _]?\(?([ga])\)?$/i.exec(text);
  if (gauge?.[1] && gauge[2] && !findAtom(text)) return labelled(gauge[1], gauge[2].toLowerCase(), expected);
  const acrossFlats = /^(.+?)[ .]+(?:A\/?F|across[ -]flats)\.?$/i.exec(text)?.[1];
  if (acrossFlats !== undefined) return labelledFlats(acrossFlats, expected);
  const parsed = text === "1" ? onlyOne : parseUnitText(text);
  if (isProblem(parsed)) return parsed;
  const inContext = { ...parsed, factors: parsed.factors.map((factor) => meant(factor, expected)) };
  const chosen = choose(text, inContext, expected);
  if (isProblem(chosen) || !parsed.habits.has("number sign")) return chosen;
  return { ...chosen, level: "warn", ask: `# is read as pounds; is ${chosen.unit.text} meant?` };
}

const atom1 = findAtom("1");
const onlyOne: Parsed = { factors: atom1 ? [{ found: atom1, exponent: 1 }] : [], habits: new Set() };

function refusedOutright(text: string, expected: Kind | undefined): Problem | undefined {
  const refuse = (why: string, ...suggestions: readonly string[]): Problem =>
    problem({
      code: "unit-ambiguous",
      what: expected ?? "unit",
      got: `"${text}"`,
      must: "be one unit only",
      why,
      suggestions,
    });
  if (text === "nm" && expected !== "length")
    return refuse(
      "n is nano, so nm is a nanometre; a newton metre is N.m",
      "N.m",
      ...(expected ? [] : ["nanometre"]),
    );
  if (text === "NM" || text === "nM") return refuse("it can be a nautical mile or a newton metre", "N.m");
  if (/^tons?$/i.test(text))
    return expected === "force"
      ? refuse("there are three tons", "tf", "tonf")
      : refuse("there are three tons", "t", "short ton", "long ton");
  if (/^1 ?\/ ?(?:min|s|h)$|^\/(?:min|s|h)$/.test(text) && expected === "rotation speed")
    return refuse("it does not say revolutions or radians", "rpm", "rad/s");
  return undefined;
}

function labelled(text: string, letter: string, expected: Kind | undefined): UnitReading | Problem {
  const inner = readCleanUnit(text, expected);
  if (isProblem(inner)) return inner;
  const label = letter === "g" ? "gauge" : "absolute";
  const ask = `${label} is kept as a label: a unit carries no such information; is ${label} pressure meant?`;
  return { ...inner, level: "warn", ask, label };
}

/** The size of a hexagon: a length, whose label is shown and not kept. */
function labelledFlats(text: string, expected: Kind | undefined): UnitReading | Problem {
  const inner = readCleanUnit(text, expected ?? "length");
  return isProblem(inner) || inner.level === "warn"
    ? inner
    : { ...inner, level: "note", label: "across flats" };
}

/** Angle fields read min, ' and " as parts of a degree and mil as 1/6400 of a turn. */
const inAngles: Readonly<Record<string, string>> = { min: "arcmin", s: "arcsec", thou: "angular mil" };

function meant(factor: Factor, expected: Kind | undefined): Factor {
  if (expected !== "angle") return factor;
  const other = inAngles[factor.found.text];
  const found = other === undefined ? undefined : findAtom(other);
  return found ? { ...factor, found } : factor;
}

function choose(typed: string, parsed: Parsed, expected: Kind | undefined): UnitReading | Problem {
  const plain = buildUnit(parsed.factors, expected);
  const forcedFactors = asForce(parsed.factors);
  const forced = forcedFactors && buildUnit(forcedFactors, expected);
  const inchPound = has(parsed.factors, "lb", "oz");
  if (expected === undefined) {
    if (forced?.kinds[0] === "compliance" && inchPound) return slashed(typed, parsed.factors, forced);
    if (forced && forcedFactors && !fits(plain)) return readAsForce(typed, forced, inchPound, expected);
    return shown(typed, parsed, plain, expected);
  }
  if (plain.kinds.some((kind) => kindsAgree(kind, expected))) return shown(typed, parsed, plain, expected);
  if (forced?.kinds.some((kind) => kindsAgree(kind, expected)))
    return readAsForce(typed, narrowed(forced, expected), inchPound, expected);
  return wrongKind(typed, plain, expected, expected === "torque" ? torqueMeant(parsed.factors) : undefined);
}

/** Nobody asks for a compliance in ft/lbs: it is how a torque is mistyped. */
function slashed(typed: string, factors: readonly Factor[], forced: Unit): Problem {
  const meant = torqueMeant(factors);
  return problem({
    code: "unit-ambiguous",
    what: "unit",
    got: `"${typed}"`,
    must: "be one unit only",
    why: meant?.why,
    suggestions: [...(meant?.units ?? []), forced.text],
  });
}

/** Without a field to ask, lb.in and kg.m have no kind, and a mass per cm2, mm2 or in2 is hardly meant. */
function fits(plain: Unit): boolean {
  if (plain.kinds.length === 0) return false;
  return plain.kinds[0] !== "surface mass" || plain.text === "kg/m2" || plain.text === "g/m2";
}

function readAsForce(
  typed: string,
  forced: Unit,
  inchPound: boolean,
  expected: Kind | undefined,
): UnitReading | Problem {
  const kind = expected ?? forced.kinds[0];
  const ask = `a mass unit stands where a force belongs; is ${forced.text} meant?`;
  if (inchPound) {
    const pressureGuess = expected === undefined && kind !== "torque";
    return pressureGuess ? { unit: forced, level: "warn", ask } : { unit: forced, level: "note" };
  }
  const oldGauge = kind === "torque" || kind === "stress" || kind === "pressure";
  if (expected !== undefined && oldGauge && !/\btf\b/.test(forced.text))
    return { unit: forced, level: "warn", ask };
  return problem({
    code: "mass-for-force",
    what: expected ?? "unit",
    got: `"${typed}"`,
    must: "be written with a force unit where a force is meant",
    why: `${typed} is a mass unit or built on one`,
    suggestions: [forced.text],
  });
}

function shown(typed: string, parsed: Parsed, plain: Unit, expected: Kind | undefined): UnitReading {
  const result = narrowed(plain, expected);
  const ask = "kilopond metre in the old order; is a torque meant?";
  if (parsed.habits.has("kilopond first") && expected !== undefined)
    return { unit: result, level: "warn", ask };
  if (plain.text === "tenth")
    return {
      unit: result,
      level: "warn",
      ask: "a tenth is read as 0.0001 in, as in a shop; is that meant?",
      shownIn: "in",
    };
  if (/\bmils?\b/i.test(typed) && (plain.text === "thou" || plain.text === "angular mil"))
    return { unit: result, level: "note", ...(plain.text === "thou" ? { shownIn: "in" } : {}) };
  if (plain.text === "flat")
    return {
      unit: result,
      level: "warn",
      ask: "a flat is read as a sixth of a turn, as of a hexagon; is that meant?",
      shownIn: "deg",
    };
  const habit = (["capitals", "flat exponent", "joining hyphen"] as const).some((name) =>
    parsed.habits.has(name),
  );
  const tonne = plain.text === "t" || /^(?:C|F)$/.test(typed);
  return { unit: result, level: habit || tonne ? "note" : "accept" };
}

/** With a kind stated, a unit stands for that kind only; a difference loses the offset of a reading. */
function narrowed(u: Unit, expected: Kind | undefined): Unit {
  if (expected === undefined) return u;
  const { offset, ...rest } = u;
  const kept = { ...rest, kinds: [expected] };
  return offset && expected === "temperature" ? { ...kept, offset } : kept;
}

function wrongKind(typed: string, plain: Unit, expected: Kind, meant: TorqueMeant | undefined): Problem {
  const own = plain.kinds[0] ?? inBaseWords(plain.dimension);
  const energyForTorque = expected === "torque" && own === "energy";
  return problem({
    code: "wrong-kind",
    what: expected,
    got: `${typed}, ${withArticle(own)}`,
    must: `be ${withArticle(expected)}`,
    why: energyForTorque ? "a torque has the dimension of energy but is not given in joules" : meant?.why,
    hint: `units: ${kinds[expected].usual.join(", ")}`,
    suggestions: energyForTorque ? ["N.m"] : (meant?.units ?? []),
  });
}
