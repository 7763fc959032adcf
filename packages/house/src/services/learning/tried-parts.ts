import { type Contents as Held, volumeOf, WATER } from "@partsproof/core/ledger";

/** Most whole parts in which what was poured is told, and how far a share may be off for it. */
const MOST = 30;
const OFF = 0.006;

/** What a vessel holds as whole parts by whiskey, water left out: the fewest that keep every share within 0.6 of 100, else of 100. */
export function triedParts(held: Held): Readonly<Record<string, number>> | null {
  const volumes = [...held]
    .filter(([id]) => id !== WATER)
    .map(([id, holding]) => ({ id, ml: volumeOf(new Map([[id, holding]])) }));
  const all = volumes.reduce((sum, { ml }) => sum + ml, 0);
  if (!(all > 0)) return null;
  const shares = volumes.map(({ id, ml }) => ({ id, share: ml / all }));
  for (let parts = 1; parts <= MOST; parts += 1) {
    const whole = shares.map(({ id, share }) => ({ id, share, part: Math.round(share * parts) }));
    const sum = whole.reduce((total, { part }) => total + part, 0);
    if (sum === parts && whole.every(({ share, part }) => Math.abs(share - part / parts) <= OFF))
      return byId(whole);
  }
  return byId(shares.map(({ id, share }) => ({ id, part: Math.round(100 * share) })));
}

const byId = (whole: readonly { readonly id: string; readonly part: number }[]) =>
  Object.fromEntries(whole.filter(({ part }) => part > 0).map(({ id, part }) => [id, part]));
