import { propagate, type ScaleClass, scaleMass } from "@partsproof/core/uncertainty";

const DECIMALS: Readonly<Record<ScaleClass, number>> = { pocket: 2, fine: 1, kitchen: 0 };

/** What a scale of this class cannot tell from the target, either way, g: at least one step of its display. */
interface Band {
  readonly by: number;
  readonly low: number;
  readonly high: number;
}

/** Grams as a scale of this class shows them: "437", "437.2", "437.21". */
export function scaleDigits(g: number, scale: ScaleClass): string {
  const text = g.toFixed(DECIMALS[scale]);
  return Number(text) === 0 ? text.replace("-", "") : text;
}

/**
 * The band around `g` within which the scale's own error hides the difference: half of the 95 % interval of one weighing,
 * rounded up to a step. Around `shown`, what the display says then.
 */
export function band(g: number, scale: ScaleClass, shown = g): Band {
  const step = 10 ** -DECIMALS[scale];
  const key = `${scale} ${Math.max(0, g).toFixed(DECIMALS[scale])}`;
  const by = known.get(key) ?? Math.ceil(Math.max(step, halfOf(g, scale)) / step - 1e-9) * step;
  if (known.size > 1000) known.clear();
  known.set(key, by);
  return { by, low: Math.max(0, shown - by), high: shown + by };
}

/** An interval takes a millisecond, and a pouring asks for the same few again and again. */
const known = new Map<string, number>();

function halfOf(g: number, scale: ScaleClass): number {
  const input = scaleMass({ id: "g", g: Math.max(0, g), class: scale });
  const { interval95 } = propagate((valueOf) => valueOf("g"), [input]);
  return interval95[1] - input.value;
}
