// The unit panel's code comes when the page has nothing else to do, or at once when asked for.
import type { UnitPanel } from "./unit-panel.ts";

export function lazyUnits(): { readonly open: () => void } {
  let panel: Promise<UnitPanel> | undefined;
  const ready = (): Promise<UnitPanel> => {
    panel ??= import("./unit-panel.ts").then(({ unitPanel }) => {
      const made = unitPanel();
      document.body.append(made.element);
      return made;
    });
    return panel;
  };
  setTimeout(() => void ready(), 1500);
  return { open: () => void ready().then((made) => made.open()) };
}
