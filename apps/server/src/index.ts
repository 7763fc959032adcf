export { NODE_FLAGS } from "./node-flags.ts";
export { dataFolder } from "./data-folder.ts";
export { openDatabase, type OpenedDatabase } from "./database.ts";
export { openDialect, type OpenedDialect } from "./dialect.ts";
export { openEmbeddedHouse, openHouseFromEnvironment, type OpenedHouse, sha256 } from "./open-house.ts";
export { createPassphrases } from "./passphrases.ts";
