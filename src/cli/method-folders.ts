// The ids of all methods by family, read off the list of each family (src/methods/<family>/index.ts);
// runs when a bundle is made, never in one.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

export function methodFamilies(): Record<string, string[]> {
  const home = fileURLToPath(new URL("../methods/", import.meta.url));
  const lists = readdirSync(home).map((name) => ({ name, path: `${home}${name}/index.ts` }));
  return Object.fromEntries(
    lists
      .filter(({ path }) => existsSync(path))
      .map(({ name, path }) => {
        const imported = readFileSync(path, "utf8").matchAll(/^import \{ \w+ \} from "\.\/(.+)\.ts";$/gm);
        return [name, [...imported].map(([, id = ""]) => id)];
      }),
  );
}
