import type { Fraction } from "../statistics/index.ts";
import { CHANCE_RIGHT, type DifferenceTest } from "./difference-tests.data.ts";

export type DiscriminationMethod = "triangle" | "duo_trio" | "paired" | "tetrad";

export interface Discrimination {
  readonly title: string;
  readonly standard: string;
  /** What the taster is asked. */
  readonly task: string;
  /** What it is called among all difference tests. */
  readonly test: DifferenceTest;
  /** Chance of a right answer when nobody can tell. */
  readonly chance: Fraction;
  /** Every order of a set, A and B the two whiskeys; in duo-trio the first glass is the labelled reference. */
  readonly orders: readonly string[];
}

/**
 * The sets and their orders: triangle, ISO 4120:2021; duo-trio with balanced reference, ISO 10399:2017; paired comparison
 * (2-AFC), ISO 5495:2005; scopes read, orders from memory. Tetrad (unspecified): ASTM E3009, from memory; that the task must be
 * "sort into two and two" and not "find the two most alike": Rousseau and Ennis, J. Sensory Studies 28 (2013) 264, abstract read.
 */
export const DISCRIMINATION: Readonly<Record<DiscriminationMethod, Discrimination>> = {
  triangle: {
    title: "Triangle",
    standard: "ISO 4120",
    task: "Two of the three are the same. Which one is different?",
    test: "triangle",
    chance: CHANCE_RIGHT.triangle,
    orders: ["AAB", "ABA", "BAA", "BBA", "BAB", "ABB"],
  },
  duo_trio: {
    title: "Duo-trio",
    standard: "ISO 10399",
    task: "The first is the reference. Which of the other two is the same?",
    test: "duo_trio",
    chance: CHANCE_RIGHT.duo_trio,
    orders: ["AAB", "ABA", "BBA", "BAB"],
  },
  paired: {
    title: "Paired comparison",
    standard: "ISO 5495",
    task: "Which of the two has more of what is asked for?",
    test: "two_afc",
    chance: CHANCE_RIGHT.two_afc,
    orders: ["AB", "BA"],
  },
  tetrad: {
    title: "Tetrad",
    standard: "ASTM E3009",
    task: "Sort the four into two groups of two that are alike.",
    test: "tetrad",
    chance: CHANCE_RIGHT.tetrad,
    orders: ["AABB", "ABAB", "ABBA", "BBAA", "BABA", "BAAB"],
  },
};
