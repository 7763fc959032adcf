import type { Finding } from "@partsproof/house/protocol";

/**
 * Alone: where the glass that was poured first, second, … ended, from 0. The marks are poured in a row, A first, and the
 * undersides say which stood at which place. Null where that is not known, and for sets, each of which is mixed up by itself.
 */
export function whereEnded({ flight, sheets }: Finding): readonly number[] | null {
  const [sheet] = sheets;
  if (flight.pouring !== "alone" || flight.design.setsEach > 0 || sheet === undefined) return null;
  const ended = flight.marks.map((_, mark) => {
    const found = sheet.glasses.find(({ glass }) => glass === mark);
    return found === undefined ? -1 : Number(found.code) - 1;
  });
  return ended.length >= 2 && !ended.includes(-1) ? ended : null;
}
