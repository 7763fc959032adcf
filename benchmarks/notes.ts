import { readFileSync } from "node:fs";
import { ENGLISH, openReader } from "@partsproof/core/notes";
import { timed } from "./timed.ts";

const MOST_MS = 2;
const WORDS = 100;

/** Reads the labelled notes in pieces of 100 words; 1 where a piece takes more than 2 ms at the median, else 0. */
export function benchNotes(): number {
  const file = new URL("../packages/core/src/notes/fixtures/notes/build.json", import.meta.url);
  const notes = JSON.parse(readFileSync(file, "utf8")) as readonly { readonly text: string }[];
  const words = notes.flatMap(({ text }) => text.split(/\s+/));
  const pieces = Array.from({ length: Math.floor(words.length / WORDS) }, (_, n) =>
    words.slice(n * WORDS, (n + 1) * WORDS).join(" "),
  );
  const before = process.memoryUsage().heapUsed;
  const started = performance.now();
  const read = openReader(ENGLISH);
  read("honey");
  const built = performance.now() - started;
  const held = (process.memoryUsage().heapUsed - before) / 2 ** 20;
  const run = (): number => pieces.reduce((sum, piece) => sum + read(piece).observations.length, 0);
  const median = (timed([{ name: "100 words", size: pieces.length, run }], 51)[0] ?? Number.NaN) / 1e6;
  const kept = median <= MOST_MS;
  console.log("\n| notes | | bound | |\n| --- | ---: | --- | --- |");
  console.log(
    `| 100 words read, median | ${median.toFixed(2)} ms | <= ${MOST_MS} ms | ${kept ? "kept" : "MISSED"} |`,
  );
  console.log(`| vocabulary built, once | ${built.toFixed(0)} ms | | |`);
  console.log(`| memory it holds, about | ${held.toFixed(1)} MiB | | |`);
  return kept ? 0 : 1;
}
