export { wrappingKey } from "./archive/index.ts";
export { admitted, hasOwner, type Knock } from "./door/index.ts";
export type {
  Asked,
  Caller,
  Handler,
  Handlers,
  LiveFeed,
  SessionCookie,
  StreamHandlers,
  Who,
} from "./handler.ts";
export { HERE } from "./handler.ts";
export { countsHandlers } from "./counts/index.ts";
export { allHandlers, allStreams } from "./handlers.ts";
export { hubOf } from "./live/index.ts";
export { noteHandlers } from "./notes/index.ts";
export { oakHandlers } from "./oak/index.ts";
export { newId } from "./ids.ts";
export type {
  Clock,
  House,
  HouseRecords,
  Isolation,
  ListQuery,
  Passphrases,
  Random,
  Reads,
  Records,
  Store,
  Where,
} from "./ports.ts";
export { learningHandlers } from "./learning/index.ts";
export { trialHandlers } from "./trials/index.ts";
export { reckonHandlers } from "./reckon/index.ts";
export { HouseRefusal } from "./refuse.ts";
export type { HouseRow, HouseTableName, HouseTables, Row, TableName, Tables } from "./rows.ts";
export { fillHandlers } from "./filling/index.ts";
export { sharingHandlers } from "./sharing/index.ts";
export { answerHere, searchHandlers } from "./search/index.ts";
export type { Question, QuestionKind, Questions, Searching, Watch } from "./searching.ts";
