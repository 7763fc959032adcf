/** Whiskeys by likeness: `of` each its group, `order` all of them group by group. */
export type Groups = { readonly count: number; readonly of: Int32Array; readonly order: Int32Array };

/**
 * Groups whiskeys that point the same way in M: heads as unlike one another as can be (Gonzalez, Theor. Comput. Sci. 38 (1985)
 * 293), every other whiskey with the head it is most like. Only speed depends on how good they are.
 *
 * @param cosine of two whiskeys in M
 */
export function groupsOf(n: number, count: number, cosine: (k: number, l: number) => number): Groups {
  const of = new Int32Array(n);
  const likeness = new Float64Array(n).fill(-Infinity);
  let head = 0;
  let heads = 0;
  for (; heads < Math.min(count, n); heads += 1) {
    let next = 0;
    for (let k = 0; k < n; k += 1) {
      const like = k === head ? Infinity : cosine(k, head);
      if (!(like <= likeness[k]!)) {
        likeness[k] = like;
        of[k] = heads;
      }
      if (likeness[k]! < likeness[next]!) next = k;
    }
    head = next;
  }
  const order = Int32Array.from({ length: n }, (_, k) => k).toSorted((a, b) => of[a]! - of[b]! || a - b);
  return { count: heads, of, order };
}
