// splitline convert, run as it is shipped.
import { describe, expect, it } from "vitest";
import { json, splitline } from "./built.ts";

const first = (text: string): string => text.split("\n")[0] ?? "";

describe("convert", () => {
  it('"220 lbf.in" --to N.m answers with five figures, the reading, the exact value and the rule', async () => {
    const { exit, out, err } = await splitline("convert", "220 lbf.in", "--to", "N.m");
    expect(out.split("\n")).toEqual([
      "220 lbf.in = 24.857 N.m",
      "read as torque, 220 lbf.in",
      "exact    24.856662386075674 N.m",
      "rule     1 lbf.in = 0.112 984 829 027 616 7 N.m (exact)",
      "",
    ]);
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
  });

  it("words without quotes are joined, and may say the unit with to", async () => {
    const quoted = await splitline("convert", "220 lbf.in", "--to", "lbf.ft");
    expect(await splitline("convert", "220", "lbf.in", "--to=lbf.ft")).toEqual(quoted);
    expect(await splitline("convert", "220", "lbf.in", "to", "lbf.ft")).toEqual(quoted);
  });

  it("without --to the usual units of the kind follow, figures aligned", async () => {
    const { exit, out } = await splitline("convert", "220 lbf.in");
    expect(exit).toBe(0);
    expect(first(out)).toBe("220 lbf.in = 24.857 N.m");
    expect(out).toContain("also as a torque\n  18.33  lbf.ft\n   2.535 kgf.m\n");
  });

  it.each([
    ["1 in", "mm", "1 in = 25.4 mm"],
    ["10 ft", "m", "10 ft = 3.048 m"],
    ["1000000 lbf", "N", "1000000 lbf = 4448222 N"],
    ["0.1405678 in", "mm", "0.1405678 in = 3.570422 mm"],
    ["90 deg", "rad", "90 deg = 1.5708 rad"],
  ])("%s --to %s shows few digits and no false zeros", async (text, to, shown) => {
    expect(first((await splitline("convert", text, "--to", to)).out)).toBe(shown);
  });

  it("a number that does not end is given as a fraction and about", async () => {
    const { out } = await splitline("convert", "220 lbf.in", "--to", "lbf.ft");
    expect(out).toContain("exact    55/3 lbf.ft, about 18.33333333333333 lbf.ft");
  });

  it("a temperature is a reading, and what it would be as a difference is said", async () => {
    const { out } = await splitline("convert", "50 degF", "--to", "K");
    expect(first(out)).toBe("50 degF = 283.15 K");
    expect(out).toContain("a reading");
    expect(out).toContain("as a difference it would be 27.78 K");
  });

  it("a temperature difference is asked for by --as or by the word", async () => {
    const byFlag = await splitline("convert", "50 degF", "--to", "K", "--as", "temperature difference");
    const byWord = await splitline("convert", "50 degF difference", "--to", "K");
    expect(first(byFlag.out)).toBe("50 degF = 27.778 K");
    expect(first(byWord.out)).toBe("50 degF difference = 27.778 K");
  });

  it("a negative number is a number, not a flag", async () => {
    expect(first((await splitline("convert", "-40 degC", "--to", "degF")).out)).toBe("-40 degC = -40 degF");
    expect(first((await splitline("convert", "-40", "degC", "--to", "degF")).out)).toBe(
      "-40 degC = -40 degF",
    );
    expect(first((await splitline("convert", "-.5", "mm", "--to", "um")).out)).toBe("-.5 mm = -500 um");
    expect(first((await splitline("convert", "--to", "um", "--", "-.5", "mm")).out)).toBe("-.5 mm = -500 um");
  });

  it("a bare number is answered with what it would mean per unit, and exit code 2", async () => {
    const { exit, out, err } = await splitline("convert", "220");
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(first(err)).toBe("220: got no unit, must have one; it would mean");
    expect(err).toMatch(/220 lbf\.in +=\s24\.86 N\.m/);
    expect(err).toMatch(/220 N\.m +=\s162\.3 lbf\.ft/);
  });

  it("a bare number with --to means that kind only", async () => {
    const { exit, err } = await splitline("convert", "220", "--to", "N.m");
    expect(exit).toBe(2);
    expect(err).toContain("220 lbf.ft");
    expect(err).not.toContain("mm");
  });

  it("a bare number is a ratio when asked for as one", async () => {
    expect(first((await splitline("convert", "0.14", "--as", "ratio", "--to", "%")).out)).toBe("0.14 = 14 %");
  });

  it.each([
    ["1 lb/ft2 to kg/m2", "1 lb/ft2 = 4.8824 kg/m2"],
    ["520 lbf.ft -> N.m", "520 lbf.ft = 705.03 N.m"],
    ["25.012 mm to in", "25.012 mm = 0.98472 in"],
    ["5 Н·м to lbf.in", "5 Н·м = 44.254 lbf.in"],
  ])("%s is read as a request", async (text, shown) => {
    expect(first((await splitline("convert", text)).out)).toBe(shown);
  });

  it("both ends of a range are converted", async () => {
    const { out } = await splitline("convert", "210-260 kPa", "--to", "psi");
    expect(out).toContain("spread   30.46 psi to 37.70 psi\n");
    const usual = await splitline("convert", "210-260 kPa", "--as", "pressure");
    expect(usual.out).toMatch(/34\.08 +psi, 30\.46 psi to 37\.70 psi/);
    const { data } = await json("convert", "210-260 kPa", "--to", "psi");
    expect(data).toMatchObject({ spread: "30.46 psi to 37.70 psi" });
  });

  it.each([
    [["30 nm", "--as", "torque"], "30 N.m"],
    [["1,234 lbf"], "1.234 lbf"],
    [["6 kg-m"], "6 kgf.m"],
    [["5 N", "--to", "mm"], "force"],
    [["5 N", "--as", "forcee"], "did you mean force?"],
    [["M12x1.75"], "designation"],
    [["220 lbf.in", "--to"], "--to"],
    [["220 lbf.in", "--tp", "N.m"], "did you mean --to?"],
    [["220 lbf.in", "--to", "N.m", "--to", "lbf.ft"], "be given once"],
    [[], 'splitline convert "220 lbf.in"'],
    [[""], 'splitline convert "220 lbf.in"'],
    [["9".repeat(5000)], "characters"],
  ])("%j is refused in one sentence that says %s", async (words, says) => {
    const { exit, out, err } = await splitline("convert", ...words);
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(err).toContain(says);
    expect(err.trim().split("\n")).toHaveLength(1);
  });

  it("--json has input, kind, reading, value, unit, exact and the other units", async () => {
    const { exit, data } = await json("convert", "220 lbf.in", "--to", "N.m");
    expect(exit).toBe(0);
    expect(data).toEqual({
      input: "220 lbf.in",
      kind: "torque",
      readAs: "torque, 220 lbf.in",
      value: 24.856662386075673,
      unit: "N.m",
      exact: "24.856662386075674",
      also: [
        { value: 18.333333333333332, unit: "lbf.ft", text: "18.33 lbf.ft" },
        { value: expect.closeTo(2.534674, 5), unit: "kgf.m", text: "2.535 kgf.m" },
      ],
    });
  });

  it("--json=yes is refused as data, since data was asked for", async () => {
    const { exit, out, err } = await splitline("convert", "220 lbf.in", "--json=yes");
    expect({ exit, err }).toEqual({ exit: 2, err: "" });
    expect(JSON.parse(out)).toMatchObject({ problem: { text: expect.stringContaining("stand alone") } });
  });

  it("--json gives a refusal as data on the output stream", async () => {
    const { exit, data } = await json("convert", "30 nm", "--as", "torque");
    expect(exit).toBe(2);
    expect(data).toEqual({
      problem: {
        code: expect.any(String),
        line: null,
        column: null,
        what: expect.any(String),
        got: expect.stringContaining("nm"),
        must: expect.any(String),
        why: expect.toSatisfy((v: unknown) => v === null || typeof v === "string"),
        hint: expect.toSatisfy((v: unknown) => v === null || typeof v === "string"),
        suggestions: expect.arrayContaining(["30 N.m"]),
        text: expect.stringContaining("30 N.m"),
      },
    });
  });
});
