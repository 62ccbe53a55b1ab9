// The last five questions and the wrench step, kept in this browser only.
const key = "splitline:units:recent";
const stepKey = "splitline:units:step";
const most = 5;

export function recent(): readonly string[] {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(key) ?? "[]");
    return Array.isArray(found) ? found.filter((text) => typeof text === "string").slice(0, most) : [];
  } catch {
    return [];
  }
}

export function remember(text: string): void {
  const typed = text.trim();
  if (typed === "") return;
  const list = [typed, ...recent().filter((other) => other !== typed)].slice(0, most);
  store(key, JSON.stringify(list));
}

export function keptStep(): string {
  try {
    return localStorage.getItem(stepKey) ?? "1 N.m";
  } catch {
    return "1 N.m";
  }
}

export const keepStep = (text: string): void => store(stepKey, text);

function store(name: string, text: string): void {
  try {
    localStorage.setItem(name, text);
  } catch {
    // a shut store only means that nothing is remembered
  }
}
