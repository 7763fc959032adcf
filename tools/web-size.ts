import { readFileSync } from "node:fs";
import { join } from "node:path";
import { constants, gzipSync } from "node:zlib";
import { webDist } from "./web.ts";

/** Compressed JavaScript that the first load may take, in bytes (issue 2: 170 KB, read as 170 000 bytes). */
const firstLoadLimit = 170_000;

interface Chunk {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly isDynamicEntry?: boolean;
  readonly imports?: readonly string[];
}

const isScript = (file: string): boolean => /\.m?js$/.test(file);

type Manifest = Readonly<Record<string, Chunk>>;

/** A chunk and everything it imports statically. */
const withImports = (manifest: Manifest, keys: readonly string[]): ReadonlySet<string> => {
  const seen = new Set<string>();
  const waiting = [...keys];
  for (let key = waiting.pop(); key !== undefined; key = waiting.pop()) {
    if (seen.has(key)) continue;
    seen.add(key);
    waiting.push(...(manifest[key]?.imports ?? []));
  }
  return seen;
};

/** The scripts that the page itself names: script elements and module preloads. */
const scriptsOfPage = (html: string): readonly string[] =>
  [...html.matchAll(/<(script|link)\b[^>]*>/gi)].flatMap(([tag, name]) => {
    const preload = /\brel=["']?(modulepreload|preload)\b/i.test(tag);
    if (name?.toLowerCase() === "link" && !preload) return [];
    const address = /\b(?:src|href)=["']?([^"'\s>]+)/i.exec(tag)?.[1];
    return address !== undefined && isScript(address) ? [address.replace(/^\.?\//, "")] : [];
  });

/**
 * Scripts that a visitor fetches who opens the app at a given page, as files of the dist folder: what index.html
 * names, the screen if it has a chunk of its own, and all that these import statically.
 */
export const firstLoadFiles = (manifest: Manifest, html: string, screen?: string): readonly string[] => {
  const named = scriptsOfPage(html);
  const keys = Object.entries(manifest)
    .filter(([, chunk]) => chunk.isEntry === true || named.includes(chunk.file))
    .map(([key]) => key);
  if (screen !== undefined) keys.push(screen);
  const files = [...withImports(manifest, keys)].flatMap((key) => manifest[key]?.file ?? []);
  return [...new Set([...files, ...named])].filter(isScript).toSorted();
};

/** Screens that have a chunk of their own, as keys of the manifest. */
export const lazyScreens = (manifest: Manifest): readonly string[] =>
  Object.entries(manifest)
    .filter(([key, chunk]) => chunk.isDynamicEntry === true && key.startsWith("src/screens/"))
    .map(([key]) => key)
    .toSorted();

const gzipped = (file: string): number =>
  gzipSync(readFileSync(join(webDist, file)), { level: constants.Z_BEST_COMPRESSION }).length;

const line = (bytes: number, what: string): string =>
  `  ${bytes.toLocaleString("en-GB").padStart(9)} B  ${what}`;

/**
 * Print what the first load takes and return whether it keeps the limit. Every file is gzip -9, on its own.
 * People arrive by links, so the limit holds for whichever page is opened first, not for the front page only.
 */
export const reportWebSize = (): boolean => {
  const manifest = JSON.parse(readFileSync(join(webDist, ".vite", "manifest.json"), "utf8")) as Manifest;
  const html = readFileSync(join(webDist, "index.html"), "utf8");
  const sizes = new Map<string, number>();
  const size = (files: readonly string[]): number => {
    for (const file of files) if (!sizes.has(file)) sizes.set(file, gzipped(file));
    return files.reduce((sum, file) => sum + (sizes.get(file) ?? 0), 0);
  };
  const always = firstLoadFiles(manifest, html);
  if (always.length === 0)
    throw new Error("The first load requires at least 1 script, got 0 in apps/web/dist");
  console.log("First load, compressed JavaScript. Every page:");
  for (const file of always) console.log(line(size([file]), file));
  const pages = lazyScreens(manifest).map((screen) => ({
    screen,
    bytes: size(firstLoadFiles(manifest, html, screen)),
  }));
  if (pages.length > 0) console.log("In all, by the page that is opened first:");
  for (const { screen, bytes } of pages.toSorted((a, b) => b.bytes - a.bytes))
    console.log(line(bytes, screen));
  const largest = Math.max(size(always), ...pages.map(({ bytes }) => bytes));
  console.log(line(largest, `at most; limit ${firstLoadLimit.toLocaleString("en-GB")} B`));
  return largest <= firstLoadLimit;
};
