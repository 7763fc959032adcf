import type { Weighing } from "./language.ts";

/**
 * What speaks for and against a word's being a flavour of the glass, in tenths of a logit. Fitted by the project: ridge logistic regression
 * (strength 6, then the 90 strongest again with 5) on 8562 mentions in the 1809 labelled notes fresh, unlike, voices, strangers, later and
 * guests, each read by the reader as it was before that file was written, so that its mistakes are those at first sight. The names are those
 * of evidence.ts. How it was measured: docs/decisions/0018-doubtful-flavours-are-weighed.md.
 */
export const WEIGHING: Weighing = {
  start: 24,
  // Kept from an even chance.
  least: 0,
  // Words that are known by most of their letters (SLIPS) are flavours more often than not.
  known: 9,
  near: {
    the: "the",
    whose: "my|your|her|its",
    is: "is|it's|was|are|were|be|that's|there's|isn't|wasn't",
    past: "was|were|had|went|got|said|told|thought|left|put|did|would|wrote",
    which: "when|if|because|so|while|that|which|where|after|before|though|as|but",
    may: "would|could|can|can't|might|may|wouldn't|don't|doesn't|never|not|no",
    get: "get|got|getting",
    find: "find|feel",
    with: "with",
    taste: "taste|tastes|tasted|tasting|palate|mouth",
  },
  weights: {
    "-16": "slip",
    "-10": "again 0|denied|gone|shy",
    "-8": "b past|gap 2",
    "-7": "savoury|smoke.medicinal",
    "-6": "a may|earth|plural|pp which|wood.old",
    "-5": "adjective|b whose|p bare|sweet.sugar|wood",
    "-4": "b may|b the|b which|b with|sentence +",
    "-3": "a flavour|a plain|a s|a taste|b link|b s|inherent|p glue|smoke",
    "-2": "a is|a which|b flavour|clause 7|sentence 23",
    "-1": "b plain|nth 1|with 1",
    "1": "plain 0|pp link",
    "2": "a start|a the|again 1|feel|nn flavour|no part|nth 6|pp comma",
    "3": "b join|nn plain|nth 3|p degree",
    "4": "a join|form|gap 10|gap 5|nn the|p stop|phrase|pp join|pp stop|sentence 3|smoke.smoke|sweet",
    "5": "a length|b taste|fruit|graded|n join|n where|p is|pp start|sweet.honey|wood.fresh",
    "6": "b get|b where|nn length|p join|with 0",
    "7": "again 2|again near|b find|more",
    "8": "clause 2",
    "11": "no marks",
  },
};
