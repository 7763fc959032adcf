import { readFileSync } from "node:fs";
import { ENGLISH, openReader } from "@partsproof/core/notes";
import { timed } from "./timed.ts";

const MOST_MS = 2;
const WORDS = 100;
const LONGEST_MS = 50;
const UNITS = 10_000;

/**
 * Reads the labelled notes in pieces of 100 words, and 10 000 units of what is hard to read; 1 where a piece takes more than 2 ms at the
 * median or the hardest more than 50 ms at its median, else 0.
 */
export function benchNotes(): number {
  const notes = fixture("build") as readonly { readonly text: string }[];
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
  const hard = (fixture("hard") as readonly string[]).map((piece) => {
    const text = piece.repeat(Math.ceil(UNITS / piece.length)).slice(0, UNITS);
    let round = 0;
    // Never the text it has just read: what it has read it remembers.
    const run = (): number => read(text + " ".repeat(round++ % 2)).observations.length;
    const once = { name: JSON.stringify(piece), size: 1, run };
    return { name: once.name, ms: (timed([once], 15)[0] ?? Number.NaN) / 1e6 };
  });
  const hardest = hard.toSorted((a, b) => b.ms - a.ms)[0] ?? { name: "", ms: Number.NaN };
  const kept = median <= MOST_MS;
  const heldUp = hardest.ms <= LONGEST_MS;
  console.log("\n| notes | | bound | |\n| --- | ---: | --- | --- |");
  console.log(
    `| 100 words read, median | ${median.toFixed(2)} ms | <= ${MOST_MS} ms | ${kept ? "kept" : "MISSED"} |`,
  );
  console.log(
    `| ${UNITS} units of ${hardest.name}, the hardest of ${hard.length} | ${hardest.ms.toFixed(1)} ms | <= ${LONGEST_MS} ms | ${heldUp ? "kept" : "MISSED"} |`,
  );
  console.log(`| vocabulary built, once | ${built.toFixed(0)} ms | | |`);
  console.log(`| memory it holds, about | ${held.toFixed(1)} MiB | | |`);
  return kept && heldUp ? 0 : 1;
}

function fixture(name: string): unknown {
  const file = new URL(`../packages/core/src/notes/fixtures/notes/${name}.json`, import.meta.url);
  return JSON.parse(readFileSync(file, "utf8"));
}
