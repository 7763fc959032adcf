/**
 * Balanced incomplete block designs as starter blocks: each is moved on by 0, 1, … modulo `modulus`; the number equal to
 * `modulus` stays where it is. A block that comes back to itself early is taken once (`short`).
 *
 * The method of differences: Bose, Annals of Eugenics 9 (1939) 353. Parameters (v, k, b, r, λ) as in the index of Cochran and
 * Cox, Experimental Designs, 2nd ed. 1957, ch. 11, and Fisher and Yates, Statistical Tables, XVII to XIX; both from memory. The
 * starters of 7.3, 11.5 and 13.4 and the lists 6.3 and 9.3 are those of the published designs named in blocks.published.json;
 * 8.4 is the affine space of 3 dimensions over 2, 16.4 the affine plane over 4, 15.7 the projective space over 2 (textbook, from
 * memory); the others were found by search. None is taken on trust: the tests count every pair.
 */
export interface Starters {
  readonly v: number;
  readonly k: number;
  readonly modulus: number;
  readonly starters: readonly (readonly number[])[];
}

export const STARTERS: readonly Starters[] = [
  { v: 7, k: 3, modulus: 7, starters: [[0, 1, 3]] },
  {
    v: 8,
    k: 4,
    modulus: 7,
    starters: [
      [7, 0, 1, 3],
      [2, 4, 5, 6],
    ],
  },
  {
    v: 9,
    k: 4,
    modulus: 9,
    starters: [
      [0, 2, 4, 8],
      [0, 1, 3, 4],
    ],
  },
  {
    v: 10,
    k: 3,
    modulus: 9,
    starters: [
      [0, 4, 9],
      [0, 4, 6],
      [0, 1, 2],
      [0, 3, 6],
    ],
  },
  {
    v: 10,
    k: 5,
    modulus: 9,
    starters: [
      [0, 5, 6, 8, 9],
      [0, 1, 4, 6, 8],
    ],
  },
  { v: 11, k: 5, modulus: 11, starters: [[1, 3, 4, 5, 9]] },
  {
    v: 12,
    k: 3,
    modulus: 11,
    starters: [
      [0, 6, 11],
      [0, 2, 3],
      [0, 7, 10],
      [0, 2, 6],
    ],
  },
  {
    v: 12,
    k: 4,
    modulus: 11,
    starters: [
      [0, 3, 4, 11],
      [0, 6, 9, 10],
      [0, 4, 6, 9],
    ],
  },
  {
    v: 12,
    k: 6,
    modulus: 11,
    starters: [
      [0, 1, 3, 5, 6, 11],
      [0, 2, 3, 4, 6, 10],
    ],
  },
  {
    v: 13,
    k: 3,
    modulus: 13,
    starters: [
      [0, 3, 4],
      [0, 2, 7],
    ],
  },
  { v: 13, k: 4, modulus: 13, starters: [[0, 1, 3, 9]] },
  {
    v: 13,
    k: 6,
    modulus: 13,
    starters: [
      [0, 1, 2, 4, 5, 8],
      [0, 5, 6, 8, 10, 12],
    ],
  },
  {
    v: 15,
    k: 3,
    modulus: 15,
    starters: [
      [0, 2, 8],
      [0, 1, 4],
      [0, 5, 10],
    ],
  },
  { v: 15, k: 7, modulus: 15, starters: [[0, 1, 2, 7, 9, 12, 13]] },
  {
    v: 16,
    k: 4,
    modulus: 15,
    starters: [
      [0, 5, 10, 15],
      [1, 2, 4, 8],
    ],
  },
];

/**
 * Designs written out, one hexadecimal digit a whiskey. 16.6: the cells of a square of 4 by 4, each with the others of its row and
 * column (textbook, from memory).
 */
export const LISTS: readonly {
  readonly v: number;
  readonly k: number;
  readonly blocks: readonly string[];
}[] = [
  { v: 6, k: 3, blocks: ["012", "013", "024", "035", "045", "125", "134", "145", "234", "235"] },
  {
    v: 9,
    k: 3,
    blocks: ["012", "345", "678", "036", "147", "258", "048", "156", "237", "057", "138", "246"],
  },
  {
    v: 10,
    k: 4,
    blocks: "0124 0136 0257 0359 0489 0678 1238 1479 1569 1578 2379 2456 2689 3458 3467".split(" "),
  },
  {
    v: 16,
    k: 6,
    blocks:
      "12348c 02359d 0136ae 0127bf 05678c 14679d 2457ae 3456bf 049abc 158abd 2689be 3789af 048def 159cef 26acdf 37bcde".split(
        " ",
      ),
  },
];
