// The pages that come with the project, fetched one at a time.
const files = import.meta.glob<string>("../../../notebooks/*.yaml", { query: "?raw", import: "default" });

const idOf = (path: string): string => path.replace(/^.*\//, "").replace(/\.yaml$/, "");

const demo = "pump-2-old-card";

export const notebookIds: readonly string[] = Object.keys(files).map(idOf).sort();
export const firstNotebook: string | undefined = notebookIds.includes(demo) ? demo : notebookIds[0];

export async function notebookText(id: string): Promise<string | undefined> {
  const path = Object.keys(files).find((found) => idOf(found) === id);
  return path === undefined ? undefined : await files[path]?.();
}

/** "pump-2-old-card" → "Pump 2 old card" */
export const notebookName = (id: string): string => {
  const words = id.replace(/^file:/, "").replaceAll("-", " ");
  return words.slice(0, 1).toUpperCase() + words.slice(1);
};
