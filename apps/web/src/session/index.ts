export { drawKey } from "./draw-key.ts";
export { keep, kept } from "./kept.ts";
export {
  HouseholdContext,
  keepHousehold,
  lastHousehold,
  useHousehold,
  useLastHousehold,
} from "./household.tsx";
export { type Stored, storePromise, storeReceipt, useStored } from "./witness.ts";
export { useNow } from "./now.ts";
export { keepToken, tokenOf, useFlightToken, useToken } from "./tokens.ts";
