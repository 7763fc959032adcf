export { borrowDatabase } from "./borrowed-database.ts";
export { databases, eachDatabase, type DatabaseName } from "./databases.ts";
export { type Fixture, readCsvFixture, readJsonFixture } from "./fixture.ts";
// How the server opens a database: tests of the store may not import the server itself.
export { openDatabase, openDialect, sha256 } from "@partsproof/server";
export { manyOf } from "./many-of.ts";
export { programOf } from "./program.ts";
export { seededRandom } from "./seeded-random.ts";
export { type SettableClock, settableClock } from "./settable-clock.ts";
export { type SpawnedServer, spawnServer } from "./spawned-server.ts";
export { type TemporaryDatabase, temporaryDatabase } from "./temporary-database.ts";
export { type TemporaryHouse, type TemporaryHouseOptions, temporaryHouse } from "./temporary-house.ts";
export { whiskeyDrafts } from "./whiskey-drafts.ts";
