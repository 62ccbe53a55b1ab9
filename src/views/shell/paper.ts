// On paper everything is open: what a reviewer needs must not hide in a closed part.
import { fillAll } from "./more.ts";

export function openedDetailsOnPaper(): void {
  let opened: HTMLDetailsElement[] = [];
  window.addEventListener("beforeprint", () => {
    opened = [...document.querySelectorAll<HTMLDetailsElement>("main details:not([open])")];
    fillAll();
    for (const details of opened) details.open = true;
  });
  window.addEventListener("afterprint", () => {
    for (const details of opened) details.open = false;
    opened = [];
  });
}
