import type { Found, ToSearch } from "./messages.ts";
import { Searching } from "./searching.ts";

/** Long enough to come to something, short enough that a new wish is heard before anyone notices. */
const FIRST_SLICE_MS = 15;
const SLICE_MS = 40;
/** Progress is told this often at most. */
const TELL_MS = 120;

let current: Searching | null = null;
let shelf: Extract<ToSearch, { kind: "search" }>["whiskeys"] = null;
let told = 0;
let onItsWay = false;
// A message to itself lets messages from the page in between; a timer would wait longer than that.
const next = new MessageChannel();
next.port1.addEventListener("message", () => {
  onItsWay = false;
  goOn(SLICE_MS, false);
});
next.port1.start();

function goOn(ms: number, first: boolean): void {
  if (current === null) return;
  const found = current.slice(ms);
  if (found.done) current = null;
  else if (!onItsWay) {
    onItsWay = true;
    next.port2.postMessage(null);
  }
  if (first || found.done || performance.now() - told > TELL_MS) tell(found);
}

const tell = (found: Found): void => {
  told = performance.now();
  postMessage(found);
};

addEventListener("message", ({ data }: MessageEvent<ToSearch>) => {
  current = null;
  if (data.kind === "stop") return;
  const whiskeys = data.whiskeys ?? shelf ?? [];
  shelf = whiskeys;
  current = new Searching(data.turn, { ...data.problem, whiskeys }, data.top, () => performance.now());
  goOn(FIRST_SLICE_MS, true);
});
