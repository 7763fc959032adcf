export type { AtHousehold } from "./at-household.ts";
export { chooseHousehold } from "./choose-household.ts";
export { everyItem } from "./every-item.ts";
export { findFlight, findName, findNameOnOffer, findSheet, findTaster } from "./find-at-flight.ts";
export { findBatch, findRecipe, findSlot } from "./find-blend.ts";
export { findTransfer, findVessel, findWhiskey, whiskeyLabel } from "./find-on-shelf.ts";
export { NotReached } from "./not-reached.ts";
export { openDoor, type OpenedDoor } from "./open-door.ts";
export { reckoner } from "./reckoner.ts";
