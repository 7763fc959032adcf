export { type SealedKey, keyOfUndersides, openedKey, unsealedKey } from "./flight-key.ts";
export {
  aDayAfter,
  changed,
  keyRowOf,
  knownFlight,
  knownSheet,
  needState,
  sheetsOf,
} from "./flight-rows.ts";
export { entriesOf } from "./entries.ts";
export { flightHandlers } from "./flights.ts";
export { type AtFlight, closeJoiningsOf, guestsOf, revokeGuestsOf, roleAt } from "./guests.ts";
export { keepFlight, pouringHandlers } from "./pouring.ts";
export { seal, unseal } from "./seal.ts";
export { sheetHandlers, showSheet, takeFree } from "./sheets.ts";
export { type TasterNames, alcoholOf, shownFlight, tasterNames } from "./shown-flight.ts";
export { needToken, sameHash } from "./tokens.ts";
export { undersidesHandlers } from "./undersides.ts";
