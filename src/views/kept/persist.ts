// A browser short of room throws out what it was not asked to keep: it is asked once on a device, with the first
// entry, when it is plain what for.
const key = "splitline:persist";

export function askToPersist(): void {
  try {
    if (localStorage.getItem(key) !== null) return;
    localStorage.setItem(key, "asked");
    void navigator.storage?.persist?.().catch(() => undefined); // absent from a plain http address
  } catch {
    // a store that is shut off keeps nothing to be thrown out
  }
}
