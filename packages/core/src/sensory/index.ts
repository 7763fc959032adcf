export { type AlcoholServed, alcoholServed, type PouredGlass } from "./alcohol-served.ts";
export { BLIND_CODES, drawCodes } from "./blind-codes.ts";
export { checkGuesses, type Guesses, type GuessRefusal, type Offer } from "./check-guesses.ts";
export { type Identification, identification } from "./identification.ts";
export { type OrderBalance, orderBalance } from "./order-balance.ts";
export { plainChance, plainOdds } from "./plain-chance.ts";
export {
  HARD_TO_PUT_DOWN_TO_LUCK,
  rankingWords,
  VERY_HARD_TO_PUT_DOWN_TO_LUCK,
} from "./ranking-words.ts";
export { type Confusion, type GuessScore, scoreGuesses } from "./score-guesses.ts";
export { type ServingOrders, servingOrders } from "./serving-orders.ts";
export { UK_UNIT_G, US_STANDARD_DRINK_G } from "./standard-drink.data.ts";
export { MAX_GLASSES, williamsSquare } from "./williams-square.ts";
