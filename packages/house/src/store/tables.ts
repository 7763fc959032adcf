import type { HouseRow, HouseTableName, HouseTables, Row, TableName, Tables } from "../services/index.ts";

/** How a field is kept. `id` sorts by bytes on both databases; `json` is JSON as text. */
export type ColumnKind = "id" | "text" | "integer" | "real" | "boolean" | "json";

type KindOf<V> = [V] extends [boolean]
  ? "boolean"
  : [V] extends [number]
    ? "integer" | "real"
    : [V] extends [string]
      ? "id" | "text"
      : "json";

/** The fields of a table besides those that every row has. */
export type Fields<N extends TableName> = {
  readonly [K in Exclude<keyof Tables[N], keyof Row>]-?: KindOf<NonNullable<Tables[N][K]>>;
};

/** The fields of every row of the house itself. */
export const everyHouseRow = {
  id: "id",
  version: "integer",
  createdAt: "text",
  updatedAt: "text",
} as const satisfies { readonly [K in keyof HouseRow]: KindOf<HouseRow[K]> };

/** The fields of every row of a household. */
export const everyRow = {
  householdId: "id",
  id: "id",
  version: "integer",
  createdAt: "text",
  updatedAt: "text",
} as const satisfies { readonly [K in keyof Row]: KindOf<Row[K]> };

/**
 * What is stored, field by field, as of the newest migration; a test compares it with the migrated databases.
 * In the order in which rows can be written, parents first.
 */
export const tables: { readonly [N in TableName]: Fields<N> } = {
  household: { name: "text", currency: "text", demo: "boolean" },
  taster: { name: "text", guest: "boolean" },
  whiskey: {
    maker: "text",
    name: "text",
    release: "text",
    kind: "text",
    strength: "json",
    ageYears: "real",
    grains: "json",
    casks: "json",
    distilledAt: "text",
    place: "text",
    priceMinor: "integer",
    bottleMl: "real",
    availability: "text",
    note: "text",
    profile: "json",
  },
  recipe: { name: "text", targetWhiskeyId: "id", latestNumber: "integer" },
  recipeVersion: { recipeId: "id", number: "integer", body: "json" },
  passedFile: { recipeId: "id", number: "integer", way: "text", sha256: "text", text: "text" },
  vessel: {
    kind: "text",
    label: "text",
    capacityMl: "real",
    whiskeyId: "id",
    batchId: "id",
    priceMinor: "integer",
    openedAt: "text",
  },
  batch: {
    name: "text",
    recipeId: "id",
    recipeNumber: "integer",
    vesselId: "id",
    madeAt: "text",
    restDays: "integer",
    finishedAt: "text",
    note: "text",
    reduction: "json",
  },
  trialSet: { name: "text", asked: "json", plan: "json", made: "json", madeAt: "text", note: "text" },
  rest: {
    batchId: "id",
    kind: "text",
    beganAt: "text",
    pull: "json",
    leadsAt: "real",
    falling: "json",
    celsius: "real",
    abv20: "real",
    flightOn: "text",
    note: "text",
    sampleVesselId: "id",
    endedAt: "text",
    lossMl: "real",
  },
  oakPiece: {
    restId: "id",
    piece: "json",
    count: "integer",
    areaCm2: "real",
    grams: "real",
    species: "text",
    toast: "text",
    use: "integer",
    volumeMl: "real",
    inAt: "text",
    outAt: "text",
  },
  checkTasting: { restId: "id", tasterId: "id", at: "text", notes: "json", strengths: "json" },
  calendarLink: { label: "text", zone: "text", linkHash: "text", revokedAt: "text" },
  flight: {
    name: "text",
    pouring: "text",
    state: "text",
    glassCount: "integer",
    pourMl: "real",
    namesOnOffer: "json",
    targetNameId: "text",
    pourer: "text",
    marks: "json",
    holds: "json",
    alcoholAtMostG: "real",
    hostTokenHash: "text",
    pourerTokenHash: "text",
    pouredAt: "text",
    revealedAt: "text",
    commitment: "text",
    closing: "json",
    question: "text",
    design: "json",
  },
  flightKey: { flightId: "id", sealed: "text", opened: "json" },
  sheet: {
    flightId: "id",
    tasterId: "id",
    state: "text",
    tokenHash: "text",
    order: "json",
    notes: "json",
    guesses: "json",
    ranking: "json",
    undersides: "json",
    lockedAt: "text",
    entries: "integer",
    answers: "json",
    strengths: "json",
    typedBy: "text",
  },
  entry: {
    flightId: "id",
    sheetId: "id",
    number: "integer",
    key: "text",
    kind: "text",
    written: "json",
    hash: "text",
  },
  taughtWord: {
    number: "integer",
    phrase: "text",
    means: "text",
    tasterId: "id",
    flightId: "id",
    sheetId: "id",
    key: "text",
  },
  joining: {
    flightId: "id",
    role: "text",
    linkHash: "text",
    codeHash: "text",
    expiresAt: "text",
    closedAt: "text",
  },
  guest: {
    flightId: "id",
    joiningId: "id",
    role: "text",
    sheetId: "id",
    name: "text",
    tokenHash: "text",
    keyHash: "text",
    ofLegalAgeAt: "text",
    revokedAt: "text",
  },
  liveCount: { seq: "integer" },
  liveEvent: { flightId: "id", seq: "integer", kind: "text", sheetId: "id", number: "integer" },
  transfer: {
    seq: "integer",
    at: "text",
    from: "json",
    to: "json",
    amount: "json",
    liquid: "json",
    batchId: "id",
    flightId: "id",
    note: "text",
    undoneAt: "text",
  },
};

export const tableNames = Object.keys(tables) as readonly TableName[];

type HouseFields<N extends HouseTableName> = {
  readonly [K in Exclude<keyof HouseTables[N], keyof HouseRow>]-?: KindOf<NonNullable<HouseTables[N][K]>>;
};

/** The same for the tables of the house itself. */
export const houseTables: { readonly [N in HouseTableName]: HouseFields<N> } = {
  owner: { passphrase: "text" },
  session: { tokenHash: "text", usedAt: "text", expiresAt: "text", address: "text" },
  trail: { what: "text", address: "text", aboutHousehold: "id", aboutFlight: "id" },
};

export const houseTableNames = Object.keys(houseTables) as readonly HouseTableName[];
