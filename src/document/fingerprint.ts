// Fingerprints: SHA-256 over canonical JSON, as 64 hex digits. WebCrypto gives the digest in Node and in browsers.
import { canonicalJson, itemContent, type Json, pageContent } from "./canonical.ts";
import type { Item, Page } from "./item.ts";

export type Digest = (bytes: Uint8Array<ArrayBuffer>) => Promise<ArrayBuffer | Uint8Array>;

const sha256: Digest = (bytes) => crypto.subtle.digest("SHA-256", bytes);

/** Of any checked data, e.g. of all that a page shows. */
export const fingerprint = (value: Json, digest: Digest = sha256): Promise<string> =>
  fileFingerprint(canonicalJson(value), digest);

/** Of a page without its sign-off: comments, key order, quotes and line ends change nothing. */
export const contentFingerprint = (page: Page, digest: Digest = sha256): Promise<string> =>
  fingerprint(pageContent(page), digest);

/** Of one item, for the list of what changed. */
export const itemFingerprint = (item: Item, digest: Digest = sha256): Promise<string> =>
  fingerprint(itemContent(item), digest);

/** Of the very bytes of a file, to notice that it changed on disk; no use for review. */
export async function fileFingerprint(text: string, digest: Digest = sha256): Promise<string> {
  const hash = new Uint8Array(await digest(new TextEncoder().encode(text)));
  return [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** First eight digits in two groups, to be read aloud: "9f86 d081". */
export const shortFingerprint = (hex: string): string => `${hex.slice(0, 4)} ${hex.slice(4, 8)}`;
