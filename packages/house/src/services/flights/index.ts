export { type SealedKey, keyOfUndersides, openedKey, unsealedKey } from "./flight-key.ts";
export { aDayAfter, changed, keyRowOf, knownFlight, needState, sheetsOf } from "./flight-rows.ts";
export { flightHandlers } from "./flights.ts";
export { keepFlight, pouringHandlers } from "./pouring.ts";
export { seal, unseal } from "./seal.ts";
export { sheetHandlers } from "./sheets.ts";
export { type TasterNames, alcoholOf, shownFlight, tasterNames } from "./shown-flight.ts";
export { needToken } from "./tokens.ts";
export { undersidesHandlers } from "./undersides.ts";
