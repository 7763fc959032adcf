import { readFileSync } from "node:fs";
import { join } from "node:path";
import { constants, gzipSync } from "node:zlib";
import { webDist } from "./web.ts";

/** Compressed JavaScript that the first load may take, in bytes (issue 2: 170 KB, read as 170 000 bytes). */
const firstLoadLimit = 170_000;

interface Chunk {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
}

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
    return address !== undefined && /\.m?js$/.test(address) ? [address.replace(/^\.?\//, "")] : [];
  });

/** Scripts of the first load, as files of the dist folder: the page's own, and all that they import statically. */
export const firstLoadFiles = (manifest: Manifest, html: string): readonly string[] => {
  const named = scriptsOfPage(html);
  const keys = Object.entries(manifest)
    .filter(([, chunk]) => chunk.isEntry === true || named.includes(chunk.file))
    .map(([key]) => key);
  const files = [...withImports(manifest, keys)].flatMap((key) => manifest[key]?.file ?? []);
  return [...new Set([...files, ...named])].filter((file) => /\.m?js$/.test(file)).toSorted();
};

const gzipped = (file: string): number =>
  gzipSync(readFileSync(join(webDist, file)), { level: constants.Z_BEST_COMPRESSION }).length;

const line = (bytes: number, what: string): string =>
  `  ${bytes.toLocaleString("en-GB").padStart(9)} B  ${what}`;

/** Print the first load, file by file, and return whether it keeps the limit. Every file is gzip -9, on its own. */
export const reportWebSize = (): boolean => {
  const manifest = JSON.parse(readFileSync(join(webDist, ".vite", "manifest.json"), "utf8")) as Manifest;
  const html = readFileSync(join(webDist, "index.html"), "utf8");
  const files = firstLoadFiles(manifest, html);
  if (files.length === 0)
    throw new Error("The first load requires at least 1 script, got 0 in apps/web/dist");
  const sizes = files.map((file) => ({ file, bytes: gzipped(file) }));
  const total = sizes.reduce((sum, { bytes }) => sum + bytes, 0);
  console.log("First load, compressed JavaScript:");
  for (const { file, bytes } of sizes) console.log(line(bytes, file));
  console.log(line(total, `in all; limit ${firstLoadLimit.toLocaleString("en-GB")} B`));
  const later = Object.values(manifest)
    .map(({ file }) => file)
    .filter((file) => /\.m?js$/.test(file) && !files.includes(file));
  if (later.length > 0) {
    console.log("Loaded later, only where it is needed:");
    for (const file of new Set(later)) console.log(line(gzipped(file), file));
  }
  return total <= firstLoadLimit;
};
