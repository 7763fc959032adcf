export type QuestionId =
  | "like_best"
  | "which_is_which"
  | "how_close"
  | "tell_apart"
  | "changed"
  | "agree_with_myself";

export interface Question {
  readonly title: string;
  /** What the flight does, in one sentence, before it is chosen. */
  readonly sentence: string;
  /** What it can say, in one sentence. */
  readonly can: string;
  /** What no number of glasses or tasters makes it answer. */
  readonly cannot: readonly string[];
}

/** The questions a flight can be set for. The wording is this project's; the methods are those of the standards named in the code. */
export const QUESTIONS: Readonly<Record<QuestionId, Question>> = {
  like_best: {
    title: "Which do I like best?",
    sentence: "You put the glasses in order, from the one you like best to the one you like least.",
    can: "It says which glass this panel put first, and whether their orders agree more than luck would.",
    cannot: ["It does not say by how much one is better.", "It does not say what other people like."],
  },
  which_is_which: {
    title: "Which glass is which?",
    sentence: "You are told the names and say which glass each belongs to.",
    can: "It says whether the names were given better than luck would give them.",
    cannot: [
      "It does not say what gave a glass away: colour, strength or taste.",
      "Guesses no better than luck do not show that the glasses taste the same.",
    ],
  },
  how_close: {
    title: "How close to the target?",
    sentence:
      "You put the glasses in order of how much they are like the target, which also stands hidden among them.",
    can: "It says in which order this panel put the glasses by likeness, and how often the hidden target came first.",
    cannot: [
      "It does not say how far off a glass is, only which is closer.",
      "It does not show that a blend is the same as the target; ask whether anyone can tell them apart.",
    ],
  },
  tell_apart: {
    title: "Can anyone tell these two apart?",
    sentence:
      "Each set holds two glasses of one whiskey and one or two of the other, and you say which is which.",
    can: "It says whether this panel told the two apart more often than luck would.",
    cannot: [
      "It does not say which is better, nor how they differ.",
      "That nobody was found to tell them apart does not show that nobody can.",
    ],
  },
  changed: {
    title: "Has it changed?",
    sentence:
      "A sample kept from before the rest or the oak is set against what is there now, as two whiskeys to tell apart.",
    can: "It says whether this panel told before and now apart more often than luck would.",
    cannot: [
      "It needs a sample kept from before: a memory or old notes are no glass.",
      "It does not say whether it changed for the better, nor what changed it.",
      "A sample kept in a part-filled vial changes too.",
    ],
  },
  agree_with_myself: {
    title: "Do I agree with myself?",
    sentence: "You put the same glasses in order twice, under new codes, and the two orders are compared.",
    can: "It says how many pairs of glasses were put the same way round again, beside what luck would do.",
    cannot: [
      "It does not say that the order is right, only that you keep to it.",
      "It says nothing about anybody else.",
    ],
  },
};
