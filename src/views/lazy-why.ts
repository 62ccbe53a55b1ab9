// The panel behind "why?", fetched at the first question.
import type { SheetContext } from "./sheet-context.ts";

export interface Why {
  readonly show: (context: SheetContext, name: string, output?: string) => void;
}

export function lazyWhy(): Why {
  const panel = async () => {
    const { whyPanel } = await import("./why-panel.ts");
    const made = whyPanel();
    document.body.append(made.element);
    return made;
  };
  let ready: ReturnType<typeof panel> | undefined;
  return {
    show: (context, name, output) => {
      ready ??= panel();
      void ready.then((made) => made.show(context, name, output));
    },
  };
}
