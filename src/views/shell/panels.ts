// What opens over the page, each fetched when it is first asked for: the chain behind a number, the entry of
// readings, the way in for a table.
import { lazily } from "./lazily.ts";
import type { PageContext } from "./page-context.ts";

export interface Panels {
  readonly why: (context: PageContext, name: string, output?: string, row?: string) => void;
  readonly enterReadings: (context: PageContext, name: string, place?: string) => void;
  readonly importTable: (context: PageContext, name: string) => void;
}

export function panels(): Panels {
  const why = lazily(async () => {
    const { whyPanel } = await import("../sheet/why-panel.ts");
    const made = whyPanel();
    document.body.append(made.element);
    return made;
  }, "soon");
  const bench = lazily(async () => (await import("../entry/bench-entry.ts")).bench(), "soon");
  const table = lazily(async () => (await import("../import/import-panel.ts")).importPanel(), "soon");
  return {
    why: (context, name, output, row) => why.use((made) => made.show(context, name, output, row)),
    enterReadings: (context, name, place) => bench.use((made) => made.show(context, name, place)),
    importTable: (context, name) => table.use((made) => made.show(context, name)),
  };
}
