import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { canonicalJson, type Json, pageContent } from "../../src/document/canonical.ts";
import { held } from "../../src/document/held.ts";
import { examplePage, readGood } from "./pages.ts";

describe("canonicalJson", () => {
  // RFC 8785, section 3.2.2 and 3.2.4: recalled, not copied from the document.
  test("the example of RFC 8785 comes out as printed (from memory)", () => {
    const value = {
      numbers: [333333333.3333333, 1e30, 4.5, 2e-3, 1e-27],
      string: "\u20ac$\u000f\u000aA'\u0042\u0022\u005c\\\"/",
      literals: [null, true, false],
    };
    expect(canonicalJson(value)).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
  });

  // RFC 8785, section 3.2.3: recalled; the same order was read in the test data that goes with the RFC.
  test("keys stand in UTF-16 order, as in RFC 8785 (from memory)", () => {
    const value = {
      "\u20ac": "Euro Sign",
      "\r": "Carriage Return",
      "\ufb33": "Hebrew Letter Dalet With Dagesh",
      "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face",
      "\u0080": "Control",
      "\u00f6": "Latin Small Letter O With Diaeresis",
    };
    expect(JSON.parse(canonicalJson(value))).toEqual(value);
    expect(canonicalJson(value)).toBe(
      '{"\\r":"Carriage Return","1":"One","\u0080":"Control","ö":"Latin Small Letter O With Diaeresis","€":"Euro Sign","😀":"Emoji: Grinning Face","\ufb33":"Hebrew Letter Dalet With Dagesh"}',
    );
  });

  // RFC 8785, appendix B: the first seven were read in the RFC's test data, the others are from memory.
  test.each([
    ["4340000000000001", "9007199254740994"],
    ["4340000000000002", "9007199254740996"],
    ["444b1ae4d6e2ef50", "1e+21"],
    ["3eb0c6f7a0b5ed8d", "0.000001"],
    ["3eb0c6f7a0b5ed8c", "9.999999999999997e-7"],
    ["8000000000000000", "0"],
    ["0000000000000000", "0"],
    ["0000000000000001", "5e-324"],
    ["7fefffffffffffff", "1.7976931348623157e+308"],
    ["44b52d02c7e14af6", "1e+23"],
    ["41b3de4355555555", "333333333.3333333"],
  ])("the double %s is %s", (bits, text) => {
    const view = new DataView(new ArrayBuffer(8));
    view.setBigUint64(0, BigInt(`0x${bits}`));
    expect(canonicalJson(view.getFloat64(0))).toBe(text);
  });

  test("any JSON reads back as itself, and the order of keys changes nothing", () => {
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        const text = canonicalJson(held<Json>(value));
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
        expect(canonicalJson(held<Json>(JSON.parse(text)))).toBe(text);
      }),
    );
  });

  test("what JSON cannot hold is the caller's mistake", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, "\ud800", { "\udc00": 1 }])
      expect(() => canonicalJson(value)).toThrow(TypeError);
  });
});

describe("pageContent", () => {
  test("holds what was typed, and neither sign-off nor places", () => {
    const text = canonicalJson(pageContent(readGood(examplePage)));
    expect(text).toContain('"value":"520 lbf.ft"');
    expect(text).toContain('"value":"0.14050"');
    expect(text).not.toMatch(/fitter|"place"|"index"|rowsLine|page\.yaml|kept as typed/);
  });
});
