/**
 * Which of a sheet's two to take, as they are of the same glasses and together would count them twice: its marks, which say how far apart
 * as well, where every glass of the order has one and they tell apart half as many as the order or more; else the order.
 *
 * Among glasses that have one mark the order says little more: what was felt of them lay within one step.
 *
 * @param order places, best first
 * @example marksOrOrder([["a"], ["b"]], [{ id: "a", mark: 80 }, { id: "b", mark: 70 }]) // "marks"
 */
export function marksOrOrder(
  order: readonly (readonly string[])[],
  marks: readonly { readonly id: string; readonly mark: number }[],
): "marks" | "order" {
  const marked = new Set(marks.map(({ id }) => id));
  const levels = new Set(marks.map(({ mark }) => mark)).size;
  return marks.length > 1 && order.flat().every((id) => marked.has(id)) && 2 * levels >= order.length
    ? "marks"
    : "order";
}
