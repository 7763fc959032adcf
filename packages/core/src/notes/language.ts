/** Part of a tasting that an observation is of. */
export type Where = "nose" | "palate" | "finish" | "whole";

/** Whether it is there: "absent" where not, and all others say that it is. */
export type Stance = "present" | "absent" | "less" | "more" | "unsure";

/** What a phrase of a language does in a note; what a kind needs besides is optional here and read where the kind is. */
export interface Said {
  readonly says:
    | "degree"
    | "amplify"
    | "not"
    | "gone"
    | "less"
    | "lessened"
    | "more"
    | "increased"
    | "as-much"
    | "unsure"
    | "there"
    | "correct"
    | "said-before"
    | "said-maybe"
    | "than"
    | "other"
    | "this"
    | "aside"
    | "reports"
    | "where"
    | "idiom"
    | "liking"
    | "memory"
    | "length"
    | "seconds"
    | "join"
    | "break"
    | "start"
    | "glue"
    | "link"
    | "number";
  /** Phrases, "|" between. */
  readonly words: string;
  /** Each of the words with each of these behind it, "|" between. */
  readonly behind?: string;
  /** 0 to 10. */
  readonly strength?: number;
  /** Holds for both of "A and B". */
  readonly of?: true;
  /** Stands after what it is of. */
  readonly back?: true;
  readonly where?: Where;
  readonly form?: "head" | "heading" | "after" | "verb" | "stays" | "bare" | "heard" | "beside";
  readonly join?: "and" | "or" | "with";
  readonly unit?: number;
  readonly liking?: 1 | -1;
  /** An aside on how it looks. */
  readonly look?: true;
  /** Reaches over "it is", "there's": "don't think it's smoky". */
  readonly over?: true;
  /** Takes back what was said of it before. */
  readonly retracts?: true;
  readonly stance?: "less" | "more" | "absent";
  /** A length of the finish that needs no finish beside it. */
  readonly alone?: true;
}

/** A kind of words that a rule asks for: listed in WORDS of the language. */
export type WordSet =
  | "beforePart"
  | "beforeSip"
  | "beforeThing"
  | "beforeLength"
  | "beforeParticiple"
  | "ofAThing"
  | "anA"
  | "an"
  | "articles"
  | "determiners"
  | "hisHer"
  | "someThing"
  | "theThat"
  | "of"
  | "ofThe"
  | "ofIt"
  | "ofGlass"
  | "ofFeel"
  | "asThe"
  | "likeA"
  | "kindOf"
  | "kinds"
  | "ones"
  | "leads"
  | "leadsIn"
  | "liesOn"
  | "somewhere"
  | "persons"
  | "others"
  | "storyTellers"
  | "somebody"
  | "everything"
  | "people"
  | "burners"
  | "pronouns"
  | "it"
  | "relative"
  | "selves"
  | "likers"
  | "reporting"
  | "plural"
  | "wasHad"
  | "wasOrIs"
  | "isNot"
  | "thatIs"
  | "becoming"
  | "itGoes"
  | "goes"
  | "stays"
  | "bids"
  | "comes"
  | "arriving"
  | "coats"
  | "warms"
  | "bites"
  | "turned"
  | "leavesWhat"
  | "leavers"
  | "roundAfter"
  | "burnsDown"
  | "participles"
  | "dryingBurning"
  | "thingsDo"
  | "broughtBy"
  | "storyBetween"
  | "beganAnew"
  | "whiskeyNouns"
  | "noteWords"
  | "bodies"
  | "glasses"
  | "numbered"
  | "drinks"
  | "wooden"
  | "places"
  | "surroundings"
  | "fruit"
  | "worn"
  | "qualities"
  | "smells"
  | "tasteOf"
  | "stones"
  | "sea"
  | "amounts"
  | "muchMore"
  | "smallStay"
  | "lengths"
  | "plainLengths"
  | "plainly"
  | "aboutSo"
  | "waiting"
  | "earlier"
  | "endOf"
  | "closers"
  | "thenNext"
  | "listWords"
  | "yes"
  | "isIt"
  | "itIs"
  | "notAfter"
  | "nothings"
  | "exchanged"
  | "standAlone"
  | "sorry"
  | "ambiguousChange"
  | "likenedTo"
  | "charred"
  | "dusty"
  | "salted"
  | "warm";

/** Endings that make one word of another. */
export interface Ending {
  readonly ends: string;
  readonly instead: string;
  readonly gives?: "more" | "quality";
}

/** What speaks for and against a word's being a flavour of the glass, in tenths of a logit; the names are those of evidence.ts. */
export interface Weighing {
  /** Where nothing speaks for or against it. */
  readonly start: number;
  /** What is under it is left out. */
  readonly least: number;
  /** Of the words in `slips`. */
  readonly known: number;
  /** Kinds of small words. */
  readonly near: Readonly<Record<string, string>>;
  /** Names, "|" between, by their weight. */
  readonly weights: Readonly<Record<string, string>>;
}

/**
 * All that the reader knows of a language: another language is another file of this form. Lists have "|" between entries; "/" between
 * what may stand in one place of an entry, "_" for a space inside that: "apple /core/pie_filling" is "apple", "apple core" and
 * "apple pie filling".
 */
export interface Language {
  /** Attribute id, or ids with "+" between, to words with "|" between, each perhaps with "=strength". */
  readonly flavours: Readonly<Record<string, string>>;
  readonly phrases: readonly Said[];
  /** Kinds of small words that a phrase names in angle brackets: "<when> <who> swallow", "<the?>" where it may be left out. */
  readonly kinds: Readonly<Record<string, string>>;
  readonly words: Readonly<Record<WordSet, string>>;
  readonly leaning: Readonly<Record<string, number | null>>;
  readonly tails: string;
  readonly ownTails: string;
  readonly shy: string;
  /** Other ways to write the small words: as written, to as the phrases have it. */
  readonly spellings: Readonly<Record<string, string>>;
  /** Words whose full stop ends no sentence. */
  readonly shortened: string;
  /** What a flavour's word before it only describes: "an oak table", "a peaty friend"; the second kind may be what the glass is like. */
  readonly things: string;
  readonly scenery: string;
  /** Flavours' words that are given names too, and what people do. */
  readonly people: string;
  readonly deeds: string;
  /** What somebody did in a story, past tense, and no taster does to a glass. */
  readonly told: string;
  /** What a word before a flavour makes of its family. */
  readonly turns: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly plurals: readonly Ending[];
  readonly endings: readonly Ending[];
  readonly numbers: Readonly<Record<string, number>>;
  /** "By X I mean Y": what stands before a phrase that is taught, and between it and its meaning; what says that it has none. */
  readonly teaching: { readonly by: string; readonly mean: string; readonly nothing: string };
  /** What dictation hears for a flavour: heard to meant, taken only where a flavour is spoken of. */
  readonly heard: Readonly<Record<string, string>>;
  /** Flavours' words that are often misspelt or misheard, and long enough to be known by most of their letters. */
  readonly slips: string;
  /** Everyday words that stand near a flavour's spelling and are not it. */
  readonly everyday: string;
  /** Left out where it has not been fitted: then nothing is weighed. */
  readonly weighing?: Weighing;
  /** The same sound, written once: each pattern of letters with what is left of it. */
  readonly sounds: readonly (readonly [letters: string, sound: string])[];
}
