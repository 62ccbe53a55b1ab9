// Saving and opening page files by download and file field: the way every browser has.
import { el } from "../dom.ts";

export function saveFile(name: string, text: string, type = "application/yaml"): void {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = el("a", { href: url, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** A file field that takes the same file twice in a row too. */
export function fileField(open: (name: string, text: string) => void): HTMLInputElement {
  const field = el("input", {
    type: "file",
    accept: ".yaml,.yml",
    class: "unseen",
    "aria-label": "page file to open",
    tabindex: "-1",
  });
  field.addEventListener("change", () => {
    const [file] = field.files ?? [];
    field.value = "";
    if (file) void file.text().then((text) => open(file.name, text));
  });
  return field;
}
