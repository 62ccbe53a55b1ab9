// Reads the families of the methods off the folders; runs when a bundle is made, never in one.
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";

export function methodFamilies(): Record<string, string> {
  const home = fileURLToPath(new URL("../methods/", import.meta.url));
  const folders = readdirSync(home, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  return Object.fromEntries(
    folders.flatMap(({ name }) => readdirSync(home + name).map((file) => [file.replace(/\.ts$/, ""), name])),
  );
}
