export { openHouse, type OpenHouse } from "./open-house.ts";
