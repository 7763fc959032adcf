/**
 * Mean turn (1 is first) of the glasses, each counted by its weight, over all tasters. By chance, and in every whole square,
 * it is (n + 1) / 2. Null when nothing has weight.
 *
 * @example lateness([[0, 1, 2]], [0, 0, 1]) // 3
 */
export function lateness(orders: readonly (readonly number[])[], weights: readonly number[]): number | null {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  if (total === 0 || orders.length === 0) return null;
  const turns = orders.flatMap((order) => order.map((glass, place) => (weights[glass] ?? 0) * (place + 1)));
  return turns.reduce((sum, turn) => sum + turn, 0) / (total * orders.length);
}
