export { keep, kept, onKept } from "./kept.ts";
export {
  HouseholdContext,
  keepHousehold,
  lastHousehold,
  useHousehold,
  useLastHousehold,
} from "./household.tsx";
export { useNow } from "./now.ts";
export { keepToken, tokenOf, type TokenKind, useToken } from "./tokens.ts";
