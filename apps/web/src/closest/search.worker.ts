import type { FromSearch, ToSearch } from "./messages.ts";
import { Searching } from "./searching.ts";

/** Long enough to come to something, short enough that a new wish is heard before anyone notices. */
const FIRST_SLICE_MS = 15;
const SLICE_MS = 40;
/** Progress is told this often at most. */
const TELL_MS = 120;
/** The whole list follows when nothing new was asked for so long. */
const LIST_MS = 120;

let current: Searching | null = null;
let shelf: Extract<ToSearch, { kind: "search" }>["whiskeys"] = null;
let asked = 0;
let told = 0;
let onItsWay = false;
let resting: ReturnType<typeof setTimeout> | undefined;
// A message to itself lets messages from the page in between; a timer would wait longer than that.
const next = new MessageChannel();
next.port1.addEventListener("message", () => {
  onItsWay = false;
  goOn(SLICE_MS);
});
next.port1.start();

function goOn(ms: number, first = false): void {
  if (current === null) return;
  current.slice(ms);
  const now = performance.now();
  if (first || current.done || now - told > TELL_MS) {
    told = now;
    tell({ kind: "told", told: current.told() });
    if (current.done) resting = setTimeout(list, Math.max(0, LIST_MS - (now - asked)));
    else if (now - asked > LIST_MS) list();
  }
  if (current.done || onItsWay) return;
  onItsWay = true;
  next.port2.postMessage(null);
}

const list = (): void => {
  if (current !== null) tell({ kind: "found", found: current.found() });
};

// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker's takes no origin
const tell = (message: FromSearch): void => postMessage(message);

addEventListener("message", ({ data }: MessageEvent<ToSearch>) => {
  clearTimeout(resting);
  if (data.kind === "stop") {
    list();
    current = null;
    return;
  }
  const whiskeys = data.whiskeys ?? shelf ?? [];
  shelf = whiskeys;
  asked = performance.now();
  current = new Searching(data.turn, { ...data.problem, whiskeys }, data.top, () => performance.now());
  goOn(FIRST_SLICE_MS, true);
});
