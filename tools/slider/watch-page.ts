/** What was seen of a page while a slider moved; milliseconds. */
export interface Watched {
  /** From each move that changed something until an answer to it, or to a later one, is drawn. */
  readonly first: number[];
  /** From each until such an answer is drawn and proven. */
  readonly proven: number[];
  /** What the worker says a search took. */
  readonly searched: number[];
  /** Tasks over 50 ms: the browser tells of no others. */
  readonly tasks: number[];
  /** Moves that nothing drawn answers yet. */
  readonly open: () => number;
}

/**
 * Runs inside the page. A move is a key or pointer event that sets the slider to another value; the first search that is sent to the
 * worker after it has that value in it, and so has every later one. The page says with what it draws which search that answers.
 */
export function watchPage(): void {
  interface Move {
    readonly at: number;
    turn: number | null;
    seen: boolean;
  }
  let moves: Move[] = [];
  const watched: Watched = { first: [], proven: [], searched: [], tasks: [], open: () => moves.length };
  Object.assign(globalThis, { watched });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) watched.tasks.push(duration);
  }).observe({ type: "longtask", buffered: false });
  const best = document.querySelector(".closest-best");
  if (best === null) throw new Error("watching requires a page with results, got none");

  let happened = 0;
  for (const type of ["keydown", "input", "pointerdown", "pointermove"])
    addEventListener(
      type,
      ({ timeStamp }) => {
        happened = timeStamp;
      },
      true,
    );
  const stood = new Map<Node, string>();
  const heed = (records: readonly MutationRecord[]): void => {
    for (const { target } of records) {
      const stands = (target as HTMLElement).style.getPropertyValue("--at");
      if (stood.get(target) !== stands) moves.push({ at: happened, turn: null, seen: false });
      stood.set(target, stands);
    }
  };
  const dots = new MutationObserver(heed);
  for (const rail of document.querySelectorAll<HTMLElement>(".strip-slide")) {
    stood.set(rail, rail.style.getPropertyValue("--at"));
    dots.observe(rail, { attributes: true, attributeFilter: ["style"] });
  }
  // Taken by its name: it is given its worker below.
  const send = Reflect.get(Worker.prototype, "postMessage") as (...all: readonly unknown[]) => void;
  const heard = new WeakSet<Worker>();
  const hear = ({
    data,
  }: MessageEvent<{ readonly told?: { readonly done: boolean; readonly tookMs: number } }>) => {
    if (data.told?.done === true) watched.searched.push(data.told.tookMs);
  };
  Worker.prototype.postMessage = function postMessage(
    this: Worker,
    message: { readonly turn?: number },
    ...others: readonly unknown[]
  ) {
    heed(dots.takeRecords());
    if (!heard.has(this)) this.addEventListener("message", hear);
    heard.add(this);
    if (message.turn !== undefined) for (const move of moves) move.turn ??= message.turn;
    Reflect.apply(send, this, [message, ...others]);
  };

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
    const turn = Number(best.getAttribute("data-turn"));
    const done = best.getAttribute("data-state") === "done";
    const answered = moves.filter((move) => move.turn !== null && move.turn <= turn);
    const fresh = answered.filter(({ seen }) => !seen);
    for (const move of fresh) move.seen = true;
    if (done) {
      moves = moves.filter((move) => !answered.includes(move));
    }
    drawn((at) => {
      for (const move of fresh) watched.first.push(at - move.at);
      if (done) for (const move of answered) watched.proven.push(at - move.at);
    });
  }).observe(best, { attributes: true, attributeFilter: ["data-turn", "data-state"] });
}
