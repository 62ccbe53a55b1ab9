// Starts Chromium and serves dist/views: what every browser test needs.
import { existsSync } from "node:fs";
import { mkdir, readFile, rmdir } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import { dirname, extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { inject } from "vitest";

/** No call home: in a closed network each would be refused and logged. */
const flags = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--disable-dev-shm-usage",
];

export async function launch(): Promise<Browser> {
  const found = inject("chromium");
  if (typeof found === "string") throw new Error(found);
  return await chromium.launch({
    executablePath: found.path,
    args: flags,
    env: { ...process.env, ...found.env },
  });
}

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
/** `VIEWS_BUILT` names another folder to take the built views from. */
const built = process.env["VIEWS_BUILT"] ?? here("../../dist/views");
export const samplePath = here("sample.yaml");

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
};

export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

const lock = join(built, "../.building-views");

/** Two test files may find it missing at once: the first builds, the other waits for it. */
async function buildIfMissing(): Promise<void> {
  const isThere = () => existsSync(join(built, "index.html"));
  if (isThere() && !existsSync(lock)) return;
  try {
    await mkdir(dirname(lock), { recursive: true });
    await mkdir(lock);
  } catch {
    while (existsSync(lock)) await new Promise((resolve) => setTimeout(resolve, 100));
    return;
  }
  try {
    const { build } = await import("vite");
    if (!isThere()) await build({ configFile: here("../../src/views/vite.config.ts"), logLevel: "error" });
  } finally {
    await rmdir(lock);
  }
}

/** The built views as any web server would give them. `npm run build` makes them; here only when missing. */
export async function serve(): Promise<Served> {
  await buildIfMissing();
  const server: Server = createServer((request, response) => {
    const path = normalize(new URL(request.url ?? "/", "http://localhost").pathname);
    const file = join(built, path === "/" ? "index.html" : path);
    readFile(file).then(
      (bytes) => response.writeHead(200, { "content-type": types[extname(file)] ?? "text/plain" }).end(bytes),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const at = server.address();
  const port = typeof at === "object" && at ? at.port : 0;
  return {
    url: `http://127.0.0.1:${port}`,
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}

export interface Tab {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Console errors, exceptions and policy violations seen so far. */
  readonly complaints: readonly string[];
}

export async function newPage(
  browser: Browser,
  options: Parameters<Browser["newContext"]>[0] = {},
): Promise<Tab> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  return { page, context, complaints };
}

/** The sample page, opened as a person opens a file. */
export async function openSample(page: Page, url: string): Promise<void> {
  await page.goto(`${url}/index.html`);
  await page.waitForSelector("article h1");
  await page.setInputFiles("input[type=file]", samplePath);
  await page.getByRole("heading", { level: 1, name: "Every kind of line" }).waitFor();
}

/** The line of the page with this name. */
export const line = (page: Page, name: string) => page.locator(`#line-${name}`);
export const entry = (page: Page, name: string) => page.locator(`#line-${name}-entry`);
