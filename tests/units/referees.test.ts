// Four open unit libraries as referees. Where one of them deviates, the deviation is written down here as data
// and asserted, so that the day it goes away is noticed. All differences are relative, worked out exactly.
import { UcumLhcUtils } from "@lhncbc/ucum-lhc";
import Qty from "js-quantities";
import { evaluate, unit as mathUnit } from "mathjs";
import unitmath from "unitmath";
import { describe, expect, test, vi } from "vitest";
import { quantity } from "../../src/units/quantity.ts";
import { divide } from "../../src/units/rational.ts";
import { unit } from "../../src/units/unit.ts";
import { answered, relativeError } from "./helpers.ts";

const agreement = 1e-12;

/** Our unit, our SI unit, the other spelling, and the known deviation of theirs (absent: agrees). */
type Row = readonly [ours: string, si: string, theirs: string, deviation?: number];

function compare(
  name: string,
  rows: readonly Row[],
  theirFactor: (theirs: string, si: string) => number,
  count: number,
): void {
  describe(name, () => {
    test(`knows ${count} of our units`, () => expect(rows).toHaveLength(count));
    for (const [ours, si, theirs, deviation] of rows) {
      test(`1 ${ours} in ${si}, as ${theirs}, ${deviation === undefined ? "agrees" : `is off by ${deviation}`}`, () => {
        const exact = divide(answered(unit(ours)).factor, answered(unit(si)).factor);
        const difference = relativeError(theirFactor(theirs, si), exact);
        if (deviation === undefined) expect(difference).toBeLessThan(agreement);
        else expect(difference / deviation).toBeCloseTo(1, 1);
      });
    }
  });
}

compare(
  "unitmath 0.8.8",
  [
    ["lbf", "N", "lbf"],
    ["kip", "N", "kip"],
    ["psi", "Pa", "psi"],
    ["in", "m", "in"],
    ["ft", "m", "ft"],
    ["yd", "m", "yd"],
    ["thou", "m", "mil"],
    ["lb", "kg", "lb"],
    ["oz", "kg", "oz"],
    ["gr", "kg", "grain"],
    ["bar", "Pa", "bar"],
    ["atm", "Pa", "atm"],
    ["torr", "Pa", "torr"],
    ["mmHg", "Pa", "mmHg"],
    ["hp", "W", "hp"],
    ["deg", "rad", "deg"],
    ["lbf.ft", "N.m", "ft lbf"],
    ["lbf.in", "N.m", "lbf in"],
  ],
  (theirs, si) => unitmath(`1 ${theirs}`).to(si.replace(".", " ")).value ?? Number.NaN,
  18,
);

compare(
  "js-quantities 1.8.0",
  [
    ["in", "m", "in"],
    ["ft", "m", "ft"],
    ["lb", "kg", "lb"],
    ["gr", "kg", "grain"],
    ["bar", "Pa", "bar"],
    ["atm", "Pa", "atm"],
    ["rpm", "rad/s", "rpm"],
    ["lbf", "N", "lbf", 8.65e-8],
    ["psi", "Pa", "psi", 3.92e-7],
    ["oz", "kg", "oz", 8.8e-10],
    ["slug", "kg", "slug", 2.55e-9],
    ["torr", "Pa", "torr", 3.16e-9],
    ["mmHg", "Pa", "mmHg", 1.46e-7],
    ["inHg", "Pa", "inHg", 1.46e-7],
    ["hp", "W", "hp", 5.6e-10],
    ["lbf.ft", "N.m", "ft lbf", 8.65e-8],
  ],
  (theirs, si) => Qty(`1 ${theirs}`).to(si.replace(".", "*")).scalar,
  16,
);

compare(
  "mathjs 15.2.0",
  [
    ["lbf", "N", "lbf"],
    ["kgf", "N", "kgf"],
    ["in", "m", "in"],
    ["ft", "m", "ft"],
    ["lb", "kg", "lb"],
    ["oz", "kg", "oz"],
    ["gr", "kg", "grain"],
    ["bar", "Pa", "bar"],
    ["atm", "Pa", "atm"],
    ["deg", "rad", "deg"],
    ["lbf.ft", "N.m", "ft lbf"],
    ["psi", "Pa", "psi", 5.9e-11],
    ["kip", "N", "kip", 3.43e-9],
    ["torr", "Pa", "torr", 2.76e-6],
    ["mmHg", "Pa", "mmHg", 2.91e-6],
    ["hp", "W", "hp", 5.86e-11],
  ],
  (theirs, si) => mathUnit(`1 ${theirs}`).toNumber(si.replace(".", " ")),
  16,
);

const ucum = UcumLhcUtils.getInstance();

const ucumFactor = (code: string, si: string): number => ucum.convertUnitTo(code, 1, si).toVal ?? Number.NaN;

compare(
  "@lhncbc/ucum-lhc 7.1.10",
  [
    ["lbf", "N", "[lbf_av]"],
    ["psi", "Pa", "[psi]"],
    ["in", "m", "[in_i]"],
    ["ft", "m", "[ft_i]"],
    ["yd", "m", "[yd_i]"],
    ["mi", "m", "[mi_i]"],
    ["thou", "m", "[mil_i]"],
    ["circular mil", "m2", "[cml_i]"],
    ["lb", "kg", "[lb_av]"],
    ["oz", "kg", "[oz_av]"],
    ["gr", "kg", "[gr]"],
    ["troy oz", "kg", "[oz_tr]"],
    ["short ton", "kg", "[ston_av]"],
    ["long ton", "kg", "[lton_av]"],
    ["short cwt", "kg", "[scwt_av]"],
    ["long cwt", "kg", "[lcwt_av]"],
    ["kgf", "N", "kgf"],
    ["gf", "N", "gf"],
    ["dyn", "N", "dyn"],
    ["erg", "J", "erg"],
    ["bar", "Pa", "bar"],
    ["atm", "Pa", "atm"],
    ["at", "Pa", "att"],
    ["hp", "W", "[HP]"],
    ["gn", "m/s2", "[g]"],
    ["deg", "rad", "deg"],
    ["arcmin", "rad", "'"],
    ["arcsec", "rad", "''"],
    ["gon", "rad", "gon"],
    ["rev", "rad", "circ"],
    ["lbf.in", "N.m", "[lbf_av].[in_i]"],
    ["lbf.ft", "N.m", "[lbf_av].[ft_i]"],
    ["mmHg", "Pa", "mm[Hg]", 2.91e-6],
    ["inHg", "Pa", "[in_i'Hg]", 2.91e-6],
  ],
  ucumFactor,
  34,
);

describe("what none of them reads or parts", () => {
  test("none reads in-lb as a torque; ours does", () => {
    expect(() => unitmath("1 in-lb")).toThrow();
    expect(() => Qty("1 in-lb")).toThrow();
    expect(() => mathUnit("1 in-lb")).toThrow();
    expect(ucum.getSpecifiedUnit("in-lb", "validate").unit).toBeNull();
    expect(answered(quantity("1 in-lb")).kind).toBe("torque");
  });
  test("mathjs: a difference of two readings becomes a reading, and 1-1/4 in is 0.75 in", () => {
    expect(String(evaluate("(20 degC - 15 degC) to K"))).toBe("278.15 K");
    expect(String(evaluate("round((1-1/4 in) / (1 in), 12)"))).toBe("0.75");
    expect(answered(quantity("1-1/4 in")).value).toBe(1.25);
  });
  test("unitmath: a degree in a product counts from absolute zero, ten times too much", () => {
    const grown = unitmath("11.5e-6 K^-1").mul(unitmath("100 mm")).mul(unitmath("30 degC")).to("mm");
    expect(grown.value).toBeCloseTo(0.3486225, 9);
    const parts = ["11.5e-6 1/K", "100 mm"].map((text) => answered(quantity(text)).si);
    const rise = answered(quantity("30 degC", "temperature difference")).si;
    expect((parts[0] ?? 0) * (parts[1] ?? 0) * rise).toBeCloseTo(34.5e-6, 15);
  });
  test("js-quantities parts readings from differences as we do", () => {
    expect(Qty("20 tempC").to("tempK").scalar).toBeCloseTo(answered(quantity("20 degC")).si, 9);
    expect(Qty("50 tempF").sub(Qty("0 tempF")).to("degK").scalar).toBeCloseTo(
      answered(quantity("50 degF", "temperature difference")).si,
      9,
    );
  });
  test("ucum-lhc lacks the slug, refuses 1/degF, and knows 1 degF only as a reading", () => {
    const quiet = vi.spyOn(console, "log").mockImplementation(() => undefined);
    const quietErrors = vi.spyOn(console, "error").mockImplementation(() => undefined);
    expect(ucum.getSpecifiedUnit("[slug]", "validate").unit).toBeNull();
    expect(ucum.convertUnitTo("1/[degF]", 1, "1/K").status).toBe("failed");
    expect(ucum.convertUnitTo("[degF]", 1, "K").toVal).toBeCloseTo(answered(quantity("1 degF")).si, 9);
    quiet.mockRestore();
    quietErrors.mockRestore();
  });
});
