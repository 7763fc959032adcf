import { nextFlight } from "@partsproof/core/learning";
import { repeatableRng } from "@partsproof/core/statistics";
import { middle } from "./middle.ts";

// A flight proposed for a large household: 60 whiskeys of 12 attributes, 200 glasses tried in 40 flights of five.

const BOUND_MS = 500;
const [WHISKEYS, ATTRIBUTES, FLIGHTS, GLASSES] = [60, 12, 40, 5];

function largeHistory() {
  const rng = repeatableRng(11);
  const ids = Array.from({ length: WHISKEYS }, (_, n) => `w${String(n).padStart(2, "0")}`);
  const whiskeys = ids.map((id) => ({
    id,
    profile: Object.fromEntries(
      Array.from({ length: ATTRIBUTES }, (_, a) => [`a${a}`, { value: rng.below(101) / 10, sd: 1 }]),
    ),
  }));
  const tried = Array.from({ length: FLIGHTS * GLASSES }, (_, n) => ({
    id: `t${n}`,
    parts: Object.fromEntries(
      Array.from({ length: 1 + rng.below(3) }, () => [ids[rng.below(WHISKEYS)] ?? "w00", 1 + rng.below(4)]),
    ),
  }));
  const rankings = Array.from({ length: FLIGHTS }, (_, f) => {
    const left = Array.from({ length: GLASSES }, (__, g) => `t${f * GLASSES + g}`);
    return Array.from({ length: GLASSES }, () => left.splice(rng.below(left.length), 1));
  });
  return { whiskeys, tried, rankings };
}

/** How many bounds were missed: the first proposal, and the median of those after it. */
export function benchNextFlight(): number {
  const history = largeHistory();
  const times = Array.from({ length: 8 }, () => {
    const start = performance.now();
    const before = process.cpuUsage();
    nextFlight(history, { glasses: 5, maxParts: 8, start: 1 });
    const { user, system } = process.cpuUsage(before);
    return { ms: performance.now() - start, cpu: (user + system) / 1000 };
  });
  const [first] = times;
  const median = middle(times.map(({ ms }) => ms));
  const cpu = middle(times.map((one) => one.cpu));
  console.log(
    `next flight, ${WHISKEYS} whiskeys, ${FLIGHTS * GLASSES} glasses: first ${(first?.ms ?? Number.NaN).toFixed(0)} ms, median ${median.toFixed(0)} ms (bound ${BOUND_MS}); processor ${(first?.cpu ?? Number.NaN).toFixed(0)} and ${cpu.toFixed(0)} ms`,
  );
  return Math.max(first?.ms ?? Infinity, median) <= BOUND_MS ? 0 : 1;
}
