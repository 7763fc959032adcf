import type { NotedAttribute } from "./attributes.data.ts";

/** The most words of a phrase that the reader looks for. */
export const LONGEST_PHRASE = 9;

/** A word that a household taught: what it means by it, or that it means no flavour. */
export interface LearnedWord {
  /** As it is said: any case, accents or none, one to nine words; its plural and its adjective follow. Another form is never found. */
  readonly phrase: string;
  readonly attribute: NotedAttribute | "nothing";
}
