import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { type RouteName, routes, type StreamName } from "../protocol/index.ts";
import { eveningShelf, setFlight, takeSheets } from "./fixtures/evening.ts";

/** Routes of a household, with what would be a good request if the ids were its own. */
interface Attempt {
  readonly body?: (ids: Ids) => unknown;
  readonly query?: (ids: Ids) => string;
}
type Ids = Readonly<Record<string, string>>;

const attempts: Partial<Record<RouteName | StreamName, Attempt>> = {
  getHousehold: {},
  editHousehold: { body: () => ({ version: 1, name: "Taken" }) },
  removeHousehold: { query: () => "confirm=Test%20house" },
  exportHousehold: {},
  next: {},
  listTasters: {},
  addTaster: { body: () => ({ name: "Stranger" }) },
  editTaster: { body: () => ({ version: 1, name: "Taken" }) },
  readNoteHere: { body: () => ({ text: "an attic" }) },
  listWords: {},
  teachWord: { body: () => ({ phrase: "attic", means: "wood.old" }) },
  forgetWord: { body: () => ({ phrase: "attic" }) },
  getSheetWords: {},
  teachAtSheet: { body: () => ({ key: "0123456789abcdefghijkl", phrase: "attic", means: "wood.old" }) },
  searchShelf: { body: (ids) => ({ like: ids["whiskey"], rules: { maxBottles: 2, maxParts: 4 } }) },
  shelfProblem: { body: (ids) => ({ like: ids["whiskey"], rules: { maxBottles: 2, maxParts: 4 } }) },
  listWhiskeys: {},
  addWhiskey: { body: () => ({ maker: "S", name: "S", strength: { basis: "abv20", value: 40 } }) },
  getWhiskey: {},
  editWhiskey: { body: () => ({ version: 1, name: "Taken" }) },
  removeWhiskey: { query: () => "version=1" },
  previewShelfList: { body: () => ({ text: "name,abv\nS,40" }) },
  acceptShelfList: { body: () => ({ text: "name,abv\nS,40", sha256: "0".repeat(64) }) },
  exportShelf: {},
  addBottle: { body: (ids) => ({ whiskeyId: ids["whiskey"] }) },
  listVessels: {},
  addVessel: { body: () => ({ kind: "jug", label: "Jug", capacityMl: 100 }) },
  getVessel: {},
  editVessel: { body: () => ({ version: 1, label: "Taken" }) },
  removeVessel: { query: () => "version=1" },
  listTransfers: {},
  addTransfer: {
    body: (ids) => ({
      from: { kind: "vessel", vesselId: ids["vessel"] },
      to: { kind: "outside", name: "drain" },
      amount: { kind: "volume", ml: 5 },
    }),
  },
  undoTransfer: {},
  listRecipes: {},
  addRecipe: { body: (ids) => ({ name: "R", slots: [slot(ids)] }) },
  getRecipe: {},
  exportRecipe: { body: () => ({}) },
  previewTakeIn: { body: () => ({ recipe: passedOn }) },
  takeInRecipe: { body: () => ({ recipe: passedOn, sha256: "0".repeat(64) }) },
  fillFromShelf: { body: () => ({}) },
  loosenFromShelf: { body: () => ({ within: 1 }) },
  makeResult: { body: () => ({}) },
  getRecipeResults: {},
  previewResult: { body: () => ({ result: sentBack }) },
  takeInResult: {
    body: (ids) => ({ result: sentBack, sha256: SENT_BACK, recipeId: ids["recipe"] }),
  },
  removeResult: {},
  editRecipe: { body: () => ({ version: 1, name: "Taken" }) },
  addRecipeVersion: { body: (ids) => ({ version: 1, slots: [slot(ids)] }) },
  listRecipeVersions: {},
  previewRecipe: { body: (ids) => ({ slots: [slot(ids)] }) },
  planBatch: { body: (ids) => ({ recipeId: ids["recipe"], finalMl: 50 }) },
  makeBatch: { body: (ids) => ({ recipeId: ids["recipe"], vesselMl: 100 }) },
  getCalendar: {},
  getKeptUp: {},
  nextAddition: { body: (ids) => ({ like: ids["whiskey"] }) },
  getLineage: {},
  listTrialSets: {},
  addTrialSet: {
    body: (ids) => ({
      name: "T",
      plan: "centroid",
      parts: [slot(ids), batchSlot(ids)].map(({ of }) => ({ of })),
    }),
  },
  getTrialSet: {},
  removeTrialSet: { query: () => "version=1" },
  pourTrials: { body: () => ({ version: 1 }) },
  undoTrials: {},
  listCalendarLinks: {},
  addCalendarLink: { body: () => ({ label: "phone" }) },
  revokeCalendarLink: {},
  listBatches: {},
  addBatch: {
    body: (ids) => ({
      name: "B",
      recipeId: ids["recipe"],
      vessel: { kind: "new", label: "F", capacityMl: 100 },
      pours: [{ from: { kind: "vessel", vesselId: ids["vessel"] }, amount: { kind: "volume", ml: 5 } }],
    }),
  },
  getBatch: {},
  editBatch: { body: () => ({ version: 1, name: "Taken" }) },
  listRests: {},
  beginRest: { body: () => ({ kind: "glass" }) },
  editRest: { body: () => ({ version: 1, note: "Taken" }) },
  removeRest: { query: () => "version=1" },
  putOakIn: { body: () => ({ areaCm2: 50 }) },
  takeOakOut: { body: () => ({ version: 1 }) },
  addCheck: { body: () => ({ notes: { nose: "oak" } }) },
  removeCheck: { query: () => "version=1" },
  adviseRest: {},
  pullRest: { body: () => ({ version: 1 }) },
  listFlights: {},
  addFlight: {
    body: (ids) => ({
      name: "F",
      pouring: "alone",
      pourMl: 5,
      glasses: [{ vesselId: ids["vessel"] }, { vesselId: ids["vessel"] }],
      tasterIds: [ids["taster"]],
    }),
  },
  getFlight: {},
  getPourList: {},
  markPoured: {},
  callOffFlight: {},
  takeSheet: { body: () => ({ ofLegalAge: true }) },
  freeSheet: {},
  getSheet: {},
  editSheet: { body: () => ({ version: 1, ranking: null }) },
  lockSheet: { body: () => ({ version: 1 }) },
  addEntry: { body: () => ({ key: "0123456789abcdefghijkl", after: 0, ranking: null }) },
  listEntries: {},
  atGlass: { body: () => ({ position: 1 }) },
  openJoining: { body: () => ({ role: "taster" }) },
  listJoinings: {},
  closeJoining: {},
  revokeGuest: {},
  closeFlight: {},
  getRecord: {},
  watchFlight: {},
  followFlight: {},
  openGlass: { body: () => ({ count: 1 }) },
  enterUndersides: { body: () => ({ marks: [] }) },
  revealFlight: { body: () => ({}) },
  getFinding: {},
  listFindings: {},
  getWeighedFlight: {},
  getWhiskeyProfile: {},
  getMixing: {},
  getPalate: {},
  getLearnedProfile: {},
  getTried: {},
  getRecipeProfile: {},
  getFlightProfiles: {},
  getRecipeFinding: {},
  getWhiskeyFinding: {},
  getTasterFinding: {},
  getLeague: {},
};

/** A recipe file and a result as another house sends them. */
const passedOn = {
  format: "parts-and-proof/recipe",
  version: 1,
  name: "Passed on",
  slots: [{ parts: 1, rule: "anything" }],
};
const sentBack = {
  format: "parts-and-proof/result",
  version: 1,
  recipe: { name: "Passed on", sha256: "0".repeat(64) },
  slots: [],
  flights: [],
};
/** Of its canonical form (RFC 8785). */
const SENT_BACK = "a252d3e463e8294f04516070c9ac424eea9fa8e3afcc1fdfd98d959f11e86a29";

const slot = (ids: Ids) => ({ parts: 1, of: { kind: "whiskey", whiskeyId: ids["whiskey"] } });

const batchSlot = (ids: Ids) => ({ parts: 1, of: { kind: "batch", batchId: ids["batch"] } });

/** A household with one of everything, and the ids of all of it. */
async function oneOfEverything(house: TemporaryHouse): Promise<{ ids: Ids; token: string }> {
  const evening = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
  const at = { household: evening.household };
  const [whiskey = "", vessel = "", taster = ""] = [
    evening.whiskeyIds[0],
    evening.vesselIds[0],
    evening.tasterIds[0],
  ];
  const recipe = await house.client("addRecipe", {
    at,
    body: { name: "Lamplighter", slots: [{ parts: 1, of: { kind: "whiskey", whiskeyId: whiskey } }] },
  });
  const batch = await house.client("addBatch", {
    at,
    body: {
      name: "November",
      recipeId: recipe.id,
      vessel: { kind: "new", label: "Flask", capacityMl: 200 },
      pours: [{ from: { kind: "vessel", vesselId: vessel }, amount: { kind: "volume", ml: 100 } }],
    },
  });
  const rest = await house.client("beginRest", {
    at: { ...at, batch: batch.id },
    body: { kind: "oak", pull: { attribute: "wood.toasted", level: 6 } },
  });
  const wooded = await house.client("putOakIn", { at: { ...at, rest: rest.id }, body: { areaCm2: 10 } });
  const tasted = await house.client("addCheck", {
    at: { ...at, rest: rest.id },
    body: { notes: { nose: "oak" } },
  });
  const link = await house.client("addCalendarLink", { at, body: { label: "phone" } });
  const { flight, hostToken } = await setFlight(evening, [0, 1]);
  const [taken] = await takeSheets(evening, flight.id);
  const joining = await house.client("openJoining", {
    at: { ...at, flight: flight.id },
    token: hostToken,
    body: { role: "watcher" },
  });
  const guest = await house.client("join", {
    body: {
      ticket: { kind: "link", link: joining.link },
      key: "0123456789abcdefghijkl",
      name: "Wren",
      ofLegalAge: true,
    },
  });
  const trials = await house.client("addTrialSet", {
    at,
    body: {
      name: "Bench",
      plan: "centroid",
      parts: [{ of: { kind: "whiskey", whiskeyId: whiskey } }, { of: { kind: "batch", batchId: batch.id } }],
    },
  });
  const { items } = await house.client("listTransfers", { at });
  return {
    ids: {
      household: evening.household,
      whiskey,
      vessel,
      taster,
      recipe: recipe.id,
      result: recipe.id,
      batch: batch.id,
      trials: trials.id,
      rest: rest.id,
      piece: wooded.oak[0]?.id ?? "",
      check: tasted.checks[0]?.id ?? "",
      link: link.id,
      flight: flight.id,
      sheet: taken?.sheet.id ?? "",
      joining: joining.id,
      guest: guest.guestId,
      transfer: items.at(-1)?.id ?? "",
    },
    token: hostToken,
  };
}

const everything = async (house: TemporaryHouse, household: string) => {
  const { exportedAt: _, tables, ...rest } = await house.client("exportHousehold", { at: { household } });
  // What is sealed is sealed anew with each export; that there is one is compared.
  return { ...rest, tables: { ...tables, sealedSheets: tables["sealedSheets"]?.length } };
};

eachDatabase((database) => {
  describe(`households apart (${database})`, () => {
    test("S1 the list of attempts is the list of a household's routes", () => {
      const ofHousehold = Object.entries(routes).filter(([, { path }]) => path.includes(":household"));
      expect(Object.keys(attempts).toSorted()).toEqual(ofHousehold.map(([name]) => name).toSorted());
    });

    test("S1 ids of another household answer 404 on every route, and change nothing", async () => {
      await using house = await temporaryHouse(database);
      const { ids, token } = await oneOfEverything(house);
      const stranger = await house.client("addHousehold", { body: { name: "Stranger" } });
      const before = await everything(house, ids["household"] ?? "");
      const strangerBefore = await everything(house, stranger.id);
      let tried = 0;
      for (const [name, { body, query }] of Object.entries(attempts)) {
        const { method, path } = routes[name as RouteName | StreamName];
        const named = [...path.matchAll(/:([a-z]+)/g)].map(([, key]) => key ?? "").slice(1);
        // A list, or a thing added that names nothing of the other household, is the stranger's own affair.
        const own = named.length === 0 && !/Id"|"id"/.test(JSON.stringify(body?.(ids) ?? {}));
        if (own) continue;
        tried += 1;
        const filled = path.replace(/:([a-z]+)/g, (_, key: string) =>
          key === "household" ? stranger.id : (ids[key] ?? ""),
        );
        const answer = await house.fetch(
          new Request(`http://house.test${filled}${query ? `?${query(ids)}` : ""}`, {
            method,
            headers: { "content-type": "application/json", authorization: `Bearer ${token}` },
            ...(body ? { body: JSON.stringify(body(ids)) } : {}),
          }),
        );
        const text = await answer.text();
        expect([name, answer.status, text.slice(0, 200)]).toEqual([name, 404, expect.any(String)]);
        expect(text, name).toMatch(/"code":"unknown_/);
      }
      expect(tried).toBeGreaterThan(25);
      expect(await everything(house, ids["household"] ?? "")).toEqual(before);
      expect(await everything(house, stranger.id)).toEqual(strangerBefore);
    });

    test("S1 an unknown household answers 404 on every route", async () => {
      await using house = await temporaryHouse(database);
      const { ids } = await oneOfEverything(house);
      const unknown = "0".repeat(26);
      for (const [name, { body, query }] of Object.entries(attempts)) {
        const { method, path } = routes[name as RouteName | StreamName];
        const filled = path.replace(/:([a-z]+)/g, (_, key: string) =>
          key === "household" ? unknown : (ids[key] ?? ""),
        );
        const answer = await house.fetch(
          new Request(`http://house.test${filled}${query ? `?${query(ids)}` : ""}`, {
            method,
            headers: { "content-type": "application/json" },
            ...(body ? { body: JSON.stringify(body(ids)) } : {}),
          }),
        );
        expect([name, answer.status]).toEqual([name, 404]);
      }
    });

    test("S1 an id that cannot be one answers 404 too", async () => {
      await using house = await temporaryHouse(database);
      const answer = await house.fetch(new Request("http://house.test/api/households/../etc"));
      expect(answer.status).toBe(404);
      const odd = await house.fetch(new Request("http://house.test/api/households/NOT-AN-ID"));
      expect(await odd.json()).toMatchObject({ status: 404, issues: [{ code: "unknown_household" }] });
    });
  });
});
