export { type SealedKey, keyOfUndersides, openedKey, pouredGlasses, unsealedKey } from "./flight-key.ts";
export { asksOf, designOf, questionOf, setsOf, taskOf } from "./question.ts";
export {
  aDayAfter,
  changed,
  keepFlight,
  keyRowOf,
  knownFlight,
  knownSheet,
  needState,
  sheetsOf,
} from "./flight-rows.ts";
export { closedOver, closingHandlers, isShut, shutSheets } from "./closing.ts";
export { entriesOfFlight } from "./entries.ts";
export { flightHandlers } from "./flights.ts";
export { closeJoiningsOf, type Doors, guestsOf, roleAt } from "./guests.ts";
export { pouringHandlers } from "./pouring.ts";
export { recordOf, saltOf } from "./promise.ts";
export { seal, unseal } from "./seal.ts";
export { sheetHandlers, showSheet, takeFree } from "./sheets.ts";
export {
  type TasterNames,
  alcoholOf,
  sameName,
  shownFlight,
  seatedNames,
  tasterNames,
  waitingFor,
} from "./shown-flight.ts";
export { needToken, sameHash } from "./tokens.ts";
export { undersidesHandlers } from "./undersides.ts";
