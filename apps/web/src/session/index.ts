export { keep, kept } from "./kept.ts";
export {
  HouseholdContext,
  keepHousehold,
  lastHousehold,
  useHousehold,
  useLastHousehold,
} from "./household.tsx";
export { useNow } from "./now.ts";
export { keepToken, tokenOf, useToken } from "./tokens.ts";
