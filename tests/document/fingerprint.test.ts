import { describe, expect, test } from "vitest";
import {
  contentFingerprint,
  fileFingerprint,
  fingerprint,
  itemFingerprint,
  shortFingerprint,
} from "../../src/document/fingerprint.ts";
import { writeValue } from "../../src/document/write.ts";
import { writeCanonical } from "../../src/document/write-canonical.ts";
import { isProblem, type Problem } from "../../src/problem.ts";
import { examplePage, pageOf, readGood } from "./pages.ts";

function done(written: string | Problem): string {
  if (isProblem(written)) throw new Error(written.what);
  return written;
}

const of = (text: string) => contentFingerprint(readGood(text));

describe("contentFingerprint", () => {
  test("SHA-256 of no bytes and of abc are the published ones (FIPS 180-4 examples, from memory)", async () => {
    expect(await fileFingerprint("")).toBe(
      "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
    );
    expect(await fileFingerprint("abc")).toBe(
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
    );
  });

  test.each([
    ["a comment", (text: string) => text.replace("# kept as typed", "# another remark")],
    ["the sign-off", (text: string) => text.replace("fitter A", "fitter C")],
    ["line ends and a byte order mark", (text: string) => `\uFEFF${text.replaceAll("\n", "\r\n")}`],
    ["quotes", (text: string) => text.replace("value: 520 lbf.ft", 'value: "520 lbf.ft"')],
    ["a number in quotes", (text: string) => text.replace("value: 0.14050", 'value: "0.14050"')],
    [
      "the order of keys",
      (text: string) =>
        text.replace(
          "    that: shareOfProof\n    atMost: 0.90\n",
          "    atMost: 0.90\n    that: shareOfProof\n",
        ),
    ],
    ["spaces at the end of a row", (text: string) => text.replace("25.011\n", "25.011  \n")],
    ["the fixed form", (text: string) => done(writeCanonical(text))],
  ])("%s leaves it unchanged", async (_, change) => {
    const changed = change(examplePage);
    expect(changed).not.toBe(examplePage);
    expect(await of(changed)).toBe(await of(examplePage));
  });

  test.each([
    ["a digit", (text: string) => text.replace("0.14050", "0.1405")],
    ["a unit", (text: string) => text.replace("520 lbf.ft", "520 N.m")],
    ["a note", (text: string) => text.replace("Second paragraph", "Second  paragraph")],
    ["a reading", (text: string) => text.replace("25.011", "25.012")],
    ["a limit", (text: string) => text.replace("atMost: 0.90", "atMost: 0.95")],
    ["a source", (text: string) => text.replace("source: owner", "source: card")],
    [
      "the order of items",
      (text: string) => text.replace("  - caution: C2\n", "").replace("page:\n", "page:\n  - caution: C2\n"),
    ],
  ])("%s changes it", async (_, change) => {
    const changed = change(examplePage);
    expect(changed).not.toBe(examplePage);
    expect(await of(changed)).not.toBe(await of(examplePage));
  });

  test("undoing a change gives the first fingerprint again", async () => {
    const there = done(writeValue(examplePage, "netTorque", "529 N.m"));
    const back = done(writeValue(there, "netTorque", "520 lbf.ft"));
    expect(await of(there)).not.toBe(await of(examplePage));
    expect(await of(back)).toBe(await of(examplePage));
  });

  test("the two micro signs and the two ways to write a letter are one", async () => {
    expect(await of(pageOf("given: a", "value: 3 \u03BCm", "says: \u00E9"))).toBe(
      await of(pageOf("given: a", "value: 3 \u00B5m", "says: e\u0301")),
    );
  });

  test("only the item that changed has another fingerprint", async () => {
    const before = await Promise.all(readGood(examplePage).items.map((item) => itemFingerprint(item)));
    const after = await Promise.all(
      readGood(examplePage.replace("0.14050", "0.15")).items.map((item) => itemFingerprint(item)),
    );
    expect(before.map((one, i) => one === after[i])).toEqual(before.map((_, i) => i !== 2));
  });

  test("64 hex digits, with a short form of two groups of four; the digest can be handed in", async () => {
    expect(await fingerprint({})).toMatch(/^[0-9a-f]{64}$/);
    expect(shortFingerprint(await fingerprint({}))).toMatch(/^[0-9a-f]{4} [0-9a-f]{4}$/);
    expect(await fingerprint({}, async () => new Uint8Array([1, 255]))).toBe("01ff");
  });
});
