/** What was seen of a page while a slider moved; milliseconds. */
export interface Watched {
  /** From a move until something that answers it, or a later one, is drawn. */
  readonly first: number[];
  /** From a move until its answer is drawn and proven. */
  readonly proven: number[];
  /** What the worker says a search took. */
  readonly searched: number[];
  /** Tasks over 50 ms: the browser tells of no others. */
  readonly tasks: number[];
}

/** Runs inside the page: notes each move of a slider, and when the page shows what comes of it. */
export function watchPage(): void {
  const watched: Watched = { first: [], proven: [], searched: [], tasks: [] };
  Object.assign(globalThis, { watched });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) watched.tasks.push(duration);
  }).observe({ type: "longtask", buffered: false });
  const best = document.querySelector(".closest-best");
  if (best === null) throw new Error("watching requires a page with results, got none");
  let moved: number | null = null;
  let unproven: number | null = null;
  let wasBusy = false;
  document.addEventListener(
    "input",
    (event) => {
      moved ??= event.timeStamp;
      unproven ??= event.timeStamp;
    },
    true,
  );
  const drawn = (then: (at: number) => void): void => {
    // After the frame that shows it: the next task once it is painted.
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.addEventListener("message", () => then(performance.now()));
      port1.start();
      port2.postMessage(null);
    });
  };
  new MutationObserver(() => {
    const busy = best.getAttribute("aria-busy") === "true";
    const since = moved;
    if (busy) wasBusy = true;
    if (!busy && wasBusy && since !== null) {
      moved = null;
      wasBusy = false;
      drawn((at) => watched.first.push(at - since));
    }
    const began = unproven;
    if (!busy && best.getAttribute("data-state") === "done" && began !== null) {
      unproven = null;
      watched.searched.push(Number(best.querySelector(".closest-took")?.textContent ?? 0));
      drawn((at) => watched.proven.push(at - began));
    }
  }).observe(best, { attributes: true, attributeFilter: ["aria-busy", "data-state"] });
}
