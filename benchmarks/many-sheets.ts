import type { Store, Tables } from "@partsproof/house/services";
import { drawnRanking, repeatableRng, shuffled } from "@partsproof/core/statistics";

const FLIGHTS = 400;
const SHEETS_EACH = 5;
const GLASSES = 5;
const TASTERS = 12;
const WHISKEYS = 40;
const BATCHES = 40;
const RECIPES = 8;
const WORDS =
  "apple pear honey raisin mint clove pepper smoke salt orange leather bread cream toffee wax nut".split(" ");

const at = "2026-01-01T20:00:00.000Z";
const id = (kind: string, n: number): string => `0${kind.padEnd(9, "0")}${String(n).padStart(16, "0")}`;

export const made = {
  household: id("hh", 1),
  flight: id("fg", 7),
  recipe: id("rc", 1),
  whiskey: id("wk", 1),
  taster: id("ts", 1),
  sheets: FLIGHTS * SHEETS_EACH,
} as const;

const row = (own: string) => ({
  id: own,
  householdId: made.household,
  version: 1,
  createdAt: at,
  updatedAt: at,
});

/**
 * Fills a store with an invented household: 400 revealed flights of 5 sheets, 5 glasses a sheet out of 40 whiskeys and 40 batches
 * of 8 recipes. Most are asked which is which, a tenth what is liked best, a tenth a triangle.
 */
export async function manySheets(store: Store): Promise<void> {
  const rng = repeatableRng(20_260);
  const names = [
    ...Array.from({ length: WHISKEYS }, (_, i) => ({
      nameId: `whiskey:${id("wk", i)}`,
      label: `Saltreach Tide ${i}`,
    })),
    ...Array.from({ length: BATCHES }, (_, i) => ({ nameId: `batch:${id("bt", i)}`, label: `Blend ${i}` })),
  ];
  const worth = new Map(names.map(({ nameId }) => [nameId, rng.below(3000) / 1000]));
  await store.transaction(async (records) => {
    await records.insert("household", { ...row(made.household), name: "Many", currency: "EUR", demo: true });
    for (let i = 0; i < TASTERS; i += 1)
      await records.insert("taster", { ...row(id("ts", i)), name: `Taster ${i}`, guest: false });
    for (let i = 0; i < WHISKEYS; i += 1) await records.insert("whiskey", whiskey(i));
    for (let i = 0; i < RECIPES; i += 1)
      await records.insert("recipe", {
        ...row(id("rc", i)),
        name: `Recipe ${i}`,
        targetWhiskeyId: null,
        latestNumber: 1,
      });
    for (let i = 0; i < BATCHES; i += 1) {
      await records.insert("vessel", {
        ...row(id("vs", i)),
        kind: "jug",
        label: `Jug ${i}`,
        capacityMl: 700,
        whiskeyId: null,
        batchId: null,
        priceMinor: null,
        openedAt: null,
      });
      await records.insert("batch", {
        ...row(id("bt", i)),
        name: `Blend ${i}`,
        recipeId: id("rc", i % RECIPES),
        recipeNumber: 1,
        vesselId: id("vs", i),
        madeAt: at,
        restDays: null,
        finishedAt: null,
        note: "",
        reduction: null,
      });
    }
    for (let f = 0; f < FLIGHTS; f += 1) {
      const kind = f % 10 === 9 ? "tell_apart" : f % 10 === 8 ? "like_best" : "which_is_which";
      const poured = shuffled(names, rng).slice(0, kind === "tell_apart" ? 2 : GLASSES);
      await flight(records, f, kind, poured, rng, worth);
    }
  });
}

type Records = Parameters<Parameters<Store["transaction"]>[0]>[0];
type Name = { readonly nameId: string; readonly label: string };

const whiskey = (i: number): Tables["whiskey"] => ({
  ...row(id("wk", i)),
  maker: "Saltreach",
  name: `Tide ${i}`,
  release: "",
  kind: "malt",
  strength: { basis: "abv20", value: 46 },
  ageYears: null,
  grains: null,
  casks: [],
  distilledAt: null,
  place: null,
  priceMinor: null,
  bottleMl: 700,
  availability: "on sale",
  note: "",
  profile: null,
});

async function flight(
  records: Records,
  f: number,
  question: string,
  poured: readonly Name[],
  rng: ReturnType<typeof repeatableRng>,
  worth: ReadonlyMap<string, number>,
): Promise<void> {
  const flightId = id("fg", f);
  const revealedAt = new Date(Date.UTC(2024, 0, 1 + f, 21)).toISOString();
  const triangle = question === "tell_apart";
  const places = triangle ? 3 : GLASSES;
  const keyCodes: { sheetId: string; code: string; glass: number; set?: number }[] = [];
  const sheets: Tables["sheet"][] = [];
  for (let s = 0; s < SHEETS_EACH; s += 1) {
    const sheetId = id("sh", f * SHEETS_EACH + s);
    const order = Array.from({ length: places }, (_, i) => String(101 + s * 100 + i * 7));
    const odd = rng.below(3);
    const glasses = triangle ? [0, 1, 2].map((i) => (i === odd ? 1 : 0)) : shuffled([...poured.keys()], rng);
    order.forEach((code, i) =>
      keyCodes.push({ sheetId, code, glass: glasses[i] ?? 0, ...(triangle ? { set: 1 } : {}) }),
    );
    const ranks = drawnRanking(
      glasses.map((glass) => worth.get(poured[glass]?.nameId ?? "") ?? 0),
      rng,
    );
    const guess = shuffled(poured, rng);
    sheets.push({
      ...row(sheetId),
      flightId,
      tasterId: id("ts", (f + s) % TASTERS),
      state: "locked",
      tokenHash: null,
      order,
      notes: order.map((code) => ({
        code,
        first: {
          nose: `${WORDS[rng.below(16)]}, ${WORDS[rng.below(16)]}`,
          palate: `${WORDS[rng.below(16)]} and ${WORDS[rng.below(16)]}`,
          finish: WORDS[rng.below(16)] ?? "",
        },
        second: { nose: WORDS[rng.below(16)] ?? "", palate: "", finish: "" },
        score: 60 + rng.below(40),
      })),
      guesses:
        question === "which_is_which"
          ? order.map((code, i) => ({
              code,
              nameId: guess[i]?.nameId ?? null,
            }))
          : [],
      ranking: triangle
        ? null
        : order
            .map((code, i) => ({ code, rank: ranks[i] ?? 0 }))
            .toSorted((a, b) => a.rank - b.rank)
            .map(({ code }) => [code]),
      undersides: null,
      lockedAt: revealedAt,
      entries: 0,
      answers: triangle ? [{ set: 1, picked: [order[rng.below(3)] ?? ""], ranking: null }] : [],
      strengths: [],
      typedBy: null,
    });
  }
  await records.insert("flight", {
    ...row(flightId),
    name: `Evening ${f}`,
    pouring: "someone else",
    state: "revealed",
    glassCount: places,
    pourMl: 15,
    namesOnOffer: poured.map((name) => ({ ...name, count: 1 })),
    targetNameId: null,
    pourer: "Pat",
    marks: [],
    holds: [],
    alcoholAtMostG: 30,
    hostTokenHash: "a".repeat(64),
    pourerTokenHash: null,
    pouredAt: at,
    revealedAt,
    commitment: null,
    closing: null,
    question,
    design: triangle
      ? {
          method: "triangle",
          asked: null,
          sides: 1,
          setsEach: 1,
          glassesEach: 3,
          reference: false,
          repeats: 0,
          controlNameId: null,
          late: false,
          said: [],
        }
      : null,
  });
  await records.insert("flightKey", {
    ...row(id("fk", f)),
    flightId,
    sealed: null,
    opened: {
      glasses: poured.map((name) => ({ vesselId: id("vs", 0), ...name, ethanolG: 5 })),
      codes: keyCodes,
    },
  });
  for (const sheet of sheets) await records.insert("sheet", sheet);
}
