import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

interface PageFile {
  readonly type: string;
  readonly bytes: Uint8Array;
}

const inPage = (name: string) => () => readFileSync(new URL(`page/${name}`, import.meta.url));
const font = (name: string) => () =>
  readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}`));

/** Every file the page is made of; the letters are those of the pictures. */
const files: ReadonlyMap<string, readonly [type: string, read: () => Uint8Array]> = new Map([
  ["/", ["text/html; charset=utf-8", inPage("index.html")]],
  ["/style.css", ["text/css; charset=utf-8", inPage("style.css")]],
  ["/icon.svg", ["image/svg+xml", inPage("icon.svg")]],
  ["/page.js", ["text/javascript; charset=utf-8", inPage("page.js")]],
  ["/regular.ttf", ["font/ttf", font("DejaVuSansCondensed.ttf")]],
  ["/bold.ttf", ["font/ttf", font("DejaVuSansCondensed-Bold.ttf")]],
]);

/** One file of the page, read from disk at each look; undefined for a path that is none. */
export function pageFile(path: string): PageFile | undefined {
  const found = files.get(path);
  if (found === undefined) return undefined;
  const [type, read] = found;
  return { type, bytes: read() };
}
