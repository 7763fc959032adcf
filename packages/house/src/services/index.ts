export type { Asked, Handler, Handlers } from "./handler.ts";
export { allHandlers } from "./handlers.ts";
export { newId } from "./ids.ts";
export type {
  Clock,
  House,
  HouseRecords,
  ListQuery,
  Passphrases,
  Random,
  Records,
  Store,
  Where,
} from "./ports.ts";
export { reckonHandlers } from "./reckon/index.ts";
export { HouseRefusal } from "./refuse.ts";
export type { HouseRow, HouseTableName, HouseTables, Row, TableName, Tables } from "./rows.ts";
