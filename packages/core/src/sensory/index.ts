export { type AlcoholServed, alcoholServed, type PouredGlass } from "./alcohol-served.ts";
export { attributeName } from "./attribute-name.ts";
export { type Attribute, type AttributeId, ATTRIBUTES } from "./attributes.data.ts";
export { BLIND_CODES, drawCodes } from "./blind-codes.ts";
export { checkGuesses, type Guesses, type GuessRefusal, type Offer } from "./check-guesses.ts";
export { type Identification, identification } from "./identification.ts";
export { type OrderBalance, orderBalance } from "./order-balance.ts";
export { plainChance, plainOdds } from "./plain-chance.ts";
export {
  HARD_TO_PUT_DOWN_TO_LUCK,
  luckLevel,
  luckVerdict,
  rankingWords,
  shownP,
} from "./ranking-words.ts";
export { type Confusion, type GuessScore, scoreGuesses } from "./score-guesses.ts";
export { type ServingOrders, servingOrders } from "./serving-orders.ts";
export { ETHANOL_G_PER_ML, POUR_LESS_G, UK_UNIT_G, US_STANDARD_DRINK_G } from "./standard-drink.data.ts";
export { MAX_GLASSES, williamsSquare } from "./williams-square.ts";
export { balancedBlocks } from "./balanced-blocks.ts";
export { type BlockBalance, blockBalance } from "./block-balance.ts";
export { type BlockPlan, blockPlan } from "./block-plan.ts";
export {
  DISCRIMINATION,
  type Discrimination,
  type DiscriminationMethod,
} from "./discrimination-methods.data.ts";
export { type DiscriminationFound, discriminationFound } from "./discrimination-found.ts";
export { type DiscriminationSets, discriminationSets } from "./discrimination-sets.ts";
export { evenTurns } from "./even-turns.ts";
export { flightCodes } from "./flight-codes.ts";
export { lateness } from "./lateness.ts";
export { type Burden, lateWeights } from "./late-weights.ts";
export { nearBalancedBlocks } from "./near-balanced-blocks.ts";
export { type FlightGlass, flightGlasses } from "./repeats-and-control.ts";
export { type ServingPlan, servingPlan } from "./serving-plan.ts";
export { type AlcoholPerTaster, alcoholPerTaster } from "./alcohol-per-taster.ts";
export { type Answerable, type AtHand, canAnswer, type Shortage } from "./can-answer.ts";
export { type EvenedFlight, type EvenedGlass, evenStrength, type NotEvened } from "./even-strength.ts";
export { glassesPoured } from "./glasses-poured.ts";
export { type PourSize, pourSize, SMALLEST_POUR_ML, type Stock } from "./pour-size.ts";
export { type Needs, type QuestionAsk, questionNeeds, type Risks } from "./question-needs.ts";
export { type Question, type QuestionId, QUESTIONS } from "./questions.data.ts";
export { type PourToLast, pourToLast, type Reserve, reserve, type Scarce } from "./reserve.ts";
export { sheetsNeeded } from "./sheets-needed.ts";
export { type ShuffleSeen, shuffleWords } from "./shuffle-words.ts";
export { CHANCE_RIGHT, type DifferenceTest } from "./difference-tests.data.ts";
export {
  chanceWith,
  differenceFraction,
  differenceNeeds,
  differenceP,
  differencePower,
  type Effect,
  type LikenessAsk,
  likenessCritical,
  likenessNeeds,
  likenessP,
  likenessPower,
} from "./difference-test.ts";
export { type DPrimeEstimate, estimateDPrime } from "./estimate-d-prime.ts";
export { chanceRight, dPrimeAt, MOST_D_PRIME, probabilityRight } from "./probability-right.ts";
export { type GuessSheet, type TakenFor, takenFor } from "./taken-for.ts";
export {
  type Belief,
  BELIEF_WORDS,
  type BeliefSense,
  bestWords,
  betterWords,
  shownProbability,
} from "./belief-words.ts";
export { type AgainstSum, type Became, mixAgainstSum, type MixPair } from "./mix-against-sum.ts";
export {
  type KnownIntensity,
  type KnownProfile,
  type MixedProfile,
  mixedProfile,
  type ProfilePart,
} from "./mixed-profile.ts";
export { type SaidSheet, type WordGap, type WordGaps, wordGaps } from "./word-gaps.ts";
export { type ConfidenceFound, confidenceFound, type SureGuess } from "./confidence-found.ts";
export { placesTogether, type SheetPlace } from "./places-together.ts";
