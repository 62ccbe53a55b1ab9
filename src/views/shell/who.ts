// Who works at this device: asked where a reading is corrected or set aside, remembered until it is another.
const key = "splitline:who";

export function rememberedWho(): string {
  try {
    return localStorage.getItem(key) ?? "";
  } catch {
    return ""; // a store that is shut off: asked again each time
  }
}

export function rememberWho(name: string): void {
  try {
    localStorage.setItem(key, name);
  } catch {
    // asked again next time
  }
}
