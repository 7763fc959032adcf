import { eachDatabase, seededRandom, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { FlightDraft } from "../../protocol/index.ts";
import type { z } from "zod";
import { answerOf, everyGet } from "../fixtures/every-get.ts";
import { type EveningShelf, eveningShelf, lock, takeSheets } from "../fixtures/evening.ts";

const LONG = process.env["PARTSPROOF_LONG"] === "1";

/** A bottle on the shelf of both worlds: which whiskey, how full. */
interface Bottle {
  readonly whiskey: number;
  readonly ml: number;
}
/** What only the pourer knows: the bottle of each glass, and the names offered besides. */
interface Truth {
  readonly glasses: readonly number[];
  readonly distractors: readonly number[];
  /** Of a paired comparison: the bottle that the host takes to have more. */
  readonly expected?: number;
  /** The same glasses under the same codes, but what stands where is drawn another time: other sets, rounds, repeats. */
  readonly drawnAgain?: true;
}
/** What everybody knows: what the flight is set for and how it is laid out. */
type Question = Pick<
  z.input<typeof FlightDraft>,
  "question" | "method" | "sets" | "asked" | "reference" | "repeats" | "glassesEach" | "late"
> & {
  readonly target?: number;
  readonly control?: number;
};

interface World {
  readonly house: TemporaryHouse;
  readonly shelf: EveningShelf;
  readonly bottleIds: readonly string[];
  readonly flight: string;
  readonly pourer: string;
  readonly host: string;
  /** Words of chance that the setting of the flight took. */
  readonly draws: number;
}

/** Words that a draw of codes takes, the last of a setting: one for every code there is. */
const CODES = 867;
/** Words that the nonce takes, which comes after the shuffle of the glasses and before the layout. */
const NONCE = 32;

/**
 * Counts words of chance; of those with a number in `again` it gives others, and takes the same number of them, so that codes, ids
 * and whatever else is drawn stay what they were.
 */
function countDraws({ random }: TemporaryHouse, again: { readonly from: number; readonly to: number }) {
  const bytes = random.bytes.bind(random);
  const others = seededRandom(97);
  let draws = 0;
  Object.assign(random, {
    bytes: (count: number) => {
      const own = bytes(count);
      if (count !== 4) return own;
      draws += 1;
      return draws > again.from && draws <= again.to ? others.bytes(4) : own;
    },
  });
  return () => {
    Object.assign(random, { bytes });
    return draws;
  };
}

/** Two worlds built from the same chance: whatever differs between their answers tells the truth apart. */
async function world(
  house: TemporaryHouse,
  bottles: readonly Bottle[],
  truth: Truth,
  tasters: number,
  { target, control, ...question }: Question = {},
  drawsOfTheOther = 0,
): Promise<World> {
  const whiskeys = 1 + Math.max(...bottles.map(({ whiskey }) => whiskey));
  const shelf = await eveningShelf(house.client, { whiskeys, tasters });
  const at = { household: shelf.household };
  // The fixture's full bottles are emptied: only the bottles of the case are on the shelf.
  for (const vesselId of shelf.vesselIds) {
    const from = { kind: "vessel" as const, vesselId };
    const to = { kind: "outside" as const, name: "drain" as const };
    await house.client("addTransfer", { at, body: { from, to, amount: { kind: "all" } } });
  }
  const bottleIds: string[] = [];
  for (const { whiskey, ml } of bottles) {
    const body = { whiskeyId: shelf.whiskeyIds[whiskey] ?? "", levelMl: ml, capacityMl: 1000 };
    bottleIds.push((await house.client("addBottle", { at, body })).id);
  }
  const body: z.input<typeof FlightDraft> = {
    name: "Tuesday",
    pouring: "someone else",
    pourer: "Pat",
    pourMl: 20,
    tasterIds: [...shelf.tasterIds],
    glasses: truth.glasses.map((i) => ({ vesselId: bottleIds[i] ?? "" })),
    distractors: truth.distractors.map((i) => shelf.nameIds[i] ?? ""),
    ...question,
    ...(target === undefined ? {} : { targetNameId: shelf.nameIds[target] ?? "" }),
    ...(control === undefined ? {} : { controlVesselId: bottleIds[control] ?? "" }),
    ...(truth.expected === undefined ? {} : { expectedVesselId: bottleIds[truth.expected] ?? "" }),
  };
  const again = truth.drawnAgain
    ? { from: truth.glasses.length + NONCE, to: drawsOfTheOther - CODES }
    : { from: 0, to: 0 };
  const counted = countDraws(house, again);
  const made = await house.client("addFlight", { at, body });
  const draws = counted();
  return {
    draws,
    house,
    shelf,
    bottleIds,
    flight: made.flight.id,
    pourer: made.pourerToken ?? "",
    host: made.hostToken,
  };
}

/**
 * A long run of base64url is ciphertext; of that only the length may be compared. So may a commitment, a closing and
 * the digest of an entry: SHA-256 over 256 random bits that nobody has before the reveal (core/sealing S2, S6). The
 * checksums of a household's file are worked out from what stands in the same file, ciphertext and all: whoever has it has
 * them too, and a restore does work them out again (H4).
 */
const withoutCiphertext = (answer: string): string =>
  answer
    .replaceAll(/[A-Za-z0-9_-]{200,}/g, (run) => `ciphertext of ${run.length}`)
    .replaceAll(/(\\?"(?:commitment|closing|hash)\\?":\\?")[0-9a-f]{64}/g, "$1digest")
    .replaceAll(/(\\?"checksums\\?":)\{[^{}]*\}/g, "$1sums");

/** Everything that anyone but the pourer can read, with no token and with each token but the pourer's. */
async function everyAnswer(it: World, tokens: readonly (string | null)[]): Promise<Map<string, string>> {
  const { house, shelf } = it;
  const { items } = await house.client("listTransfers", { at: { household: shelf.household } });
  const { sheets } = await house.client("getFlight", {
    at: { household: shelf.household, flight: it.flight },
  });
  const asked = everyGet({
    household: [shelf.household],
    whiskey: shelf.whiskeyIds,
    taster: shelf.tasterIds,
    vessel: [...shelf.vesselIds, ...it.bottleIds],
    transfer: items.map(({ id }) => id),
    flight: [it.flight],
    sheet: sheets.map(({ sheetId }) => sheetId),
    recipe: [it.flight],
    batch: [it.flight],
  });
  const answers = new Map<string, string>();
  for (const { path } of asked) {
    for (const [who, token] of tokens.entries()) {
      answers.set(`${who} ${path}`, withoutCiphertext(await answerOf(house.fetch, path, token)));
    }
  }
  return answers;
}

/** Questions a taster could put to the ledger to find what is missing; all of them are refused or undo nothing. */
async function everyProbe({ house, shelf, bottleIds, flight }: World): Promise<string[]> {
  const household = `/api/households/${shelf.household}`;
  const post = async (path: string, body: unknown): Promise<string> => {
    const init = {
      method: "POST",
      body: JSON.stringify(body),
      headers: { "content-type": "application/json" },
    };
    const response = await house.fetch(new Request(`http://house.test${household}${path}`, init));
    return `${path} ${response.status} ${await response.text()}`;
  };
  const to = { kind: "outside", name: "drain" };
  const tap = { kind: "outside", name: "tap" };
  const answers: string[] = [];
  for (const vesselId of bottleIds) {
    const from = { kind: "vessel", vesselId };
    answers.push(await post("/transfers", { from, to, amount: { kind: "all" } }));
    answers.push(await post("/transfers", { from, to, amount: { kind: "volume", ml: 999 } }));
    answers.push(await post("/transfers", { from: tap, to: from, amount: { kind: "volume", ml: 0.5 } }));
    const glasses = [{ vesselId }, { vesselId }];
    const draft = {
      name: "probe",
      pouring: "someone else",
      pourer: "P",
      tasterIds: shelf.tasterIds,
      glasses,
    };
    answers.push(await post("/flights", { ...draft, pourMl: 60 }));
    answers.push(await post("/flights", { ...draft, pourMl: 60, distractors: shelf.nameIds }));
  }
  const { items } = await house.client("listTransfers", { at: { household: shelf.household } });
  for (const { id, from } of items) {
    if (from.kind === "outside") answers.push(await post(`/transfers/${id}/undo`, {}));
  }
  answers.push(await post(`/flights/${flight}/reveal`, {}));
  answers.push(await post(`/flights/${flight}/reveal`, { closeOpenSheets: true }));
  return answers.map(withoutTokens);
}

/** A flight set by a probe gives its own tokens; those are chance, the same in both worlds, and no matter here. */
const withoutTokens = (answer: string): string => answer.replaceAll(/[0-9a-f]{64}/g, "token");

/** What differs between the two worlds, stage by stage of an evening: nothing, if the key is sealed. */
async function differences(
  a: TemporaryHouse,
  b: TemporaryHouse,
  bottles: readonly Bottle[],
  truths: readonly [Truth, Truth],
  tasters: number,
  question: Question = {},
): Promise<string[]> {
  const one = await world(a, bottles, truths[0], tasters, question);
  const two = await world(b, bottles, truths[1], tasters, question, one.draws);
  const told: string[] = [];
  const compare = async (stage: string, ones: Tokens, twos: Tokens) => {
    const second = await everyAnswer(two, twos);
    for (const [path, answer] of await everyAnswer(one, ones)) {
      if (second.get(path) !== answer) told.push(`${stage}: ${path}: ${answer} against ${second.get(path)}`);
    }
  };
  await compare("set", [null, one.host], [null, two.host]);
  const [ones, twos] = [await takeSheets(one.shelf, one.flight), await takeSheets(two.shelf, two.flight)];
  const tokens = [
    [null, one.host, ...ones.map(({ token }) => token)],
    [null, two.host, ...twos.map(({ token }) => token)],
  ] as const;
  await compare("taken", ...tokens);
  for (const { house, shelf, flight, pourer } of [one, two]) {
    await house.client("markPoured", { at: { household: shelf.household, flight }, token: pourer });
  }
  await compare("poured", ...tokens);
  if (ones[0] && twos[0]) await Promise.all([lock(one.shelf, ones[0]), lock(two.shelf, twos[0])]);
  await compare("one sheet locked", ...tokens);
  // With one taster all is locked, and the probes would end in the one true reveal.
  if (tasters === 1) return told;
  const probed = await everyProbe(two);
  for (const [i, answer] of (await everyProbe(one)).entries()) {
    if (probed[i] !== answer) told.push(`probe: ${answer} against ${probed[i]}`);
  }
  return told;
}

type Tokens = readonly (string | null)[];

eachDatabase((database) => {
  describe(`F1, F2, F5, F12 before the reveal nothing tells two keys apart (${database})`, () => {
    const bottles: readonly Bottle[] = [
      { whiskey: 0, ml: 900 },
      { whiskey: 1, ml: 700 },
      { whiskey: 2, ml: 650 },
      { whiskey: 0, ml: 300 },
      { whiskey: 3, ml: 123.4 },
    ];
    const cases: readonly (readonly [string, Truth, Truth])[] = [
      [
        "a glass and a distractor swapped",
        { glasses: [0, 1], distractors: [2] },
        { glasses: [0, 2], distractors: [1] },
      ],
      [
        "the order of the glasses",
        { glasses: [0, 1, 2], distractors: [] },
        { glasses: [2, 0, 1], distractors: [] },
      ],
      [
        "which of two is poured twice",
        { glasses: [1, 1, 2], distractors: [2] },
        { glasses: [1, 2, 2], distractors: [1] },
      ],
      [
        "which of two bottles of one name",
        { glasses: [0, 1], distractors: [2] },
        { glasses: [3, 1], distractors: [2] },
      ],
      [
        "a name of two bottles poured or not",
        { glasses: [3, 1], distractors: [2] },
        { glasses: [1, 2], distractors: [0] },
      ],
      [
        "an almost empty bottle poured or not",
        { glasses: [4, 1], distractors: [2] },
        { glasses: [1, 2], distractors: [3] },
      ],
    ];

    // What tells two keys apart is the same work on both databases; only the order of rows could differ.
    test.each(database === "sqlite" ? cases : cases.slice(0, 2))("%s", async (_, one, two) => {
      await using a = await temporaryHouse(database);
      await using b = await temporaryHouse(database);
      expect(await differences(a, b, bottles, [one, two], 2)).toEqual([]);
    });

    /** Both whiskeys of a set, or all glasses, listed another way round: every set is sealed the other way round. */
    const [there, back]: readonly [Truth, Truth] = [
      { glasses: [0, 1], distractors: [] },
      { glasses: [1, 0], distractors: [] },
    ];
    const row = { glasses: [0, 1, 2, 4], distractors: [] };
    const turned = { glasses: [2, 4, 0, 1], distractors: [] };
    const questions: readonly (readonly [string, Question, Truth, Truth])[] = [
      ["Q2 triangles", { question: "tell_apart", method: "triangle", sets: 3 }, there, back],
      ["Q2 duo-trios", { question: "changed", method: "duo_trio", sets: 2 }, there, back],
      [
        "Q2 pairs, and which of the two is expected to have more",
        { question: "tell_apart", method: "paired", asked: "smokier", sets: 2 },
        { ...there, expected: 0 },
        { ...there, expected: 1 },
      ],
      ["Q2 tetrads", { question: "tell_apart", method: "tetrad" }, there, back],
      [
        "Q2 two bottles of one whiskey",
        { question: "changed", method: "triangle" },
        { glasses: [0, 3], distractors: [] },
        { glasses: [3, 0], distractors: [] },
      ],
      ["Q3 a hidden target", { question: "how_close", target: 0, reference: true, late: true }, row, turned],
      ["Q4 two rounds", { question: "agree_with_myself", late: true }, row, turned],
      ["Q5 some of the glasses", { question: "like_best", glassesEach: 2 }, row, turned],
      [
        "Q6 a drawn repeat, a control, the strong ones late",
        { question: "like_best", repeats: 1, control: 3, late: true },
        { glasses: [1, 2, 4], distractors: [] },
        { glasses: [4, 1, 2], distractors: [] },
      ],
      [
        "Q6 a repeat and a distractor swapped",
        { question: "which_is_which", repeats: 1, late: false },
        { glasses: [0, 1], distractors: [] },
        { glasses: [1, 0], distractors: [] },
      ],
    ];

    test.each(database === "sqlite" ? questions : questions.slice(0, 3))(
      "%s",
      async (_, question, one, two) => {
        await using a = await temporaryHouse(database);
        await using b = await temporaryHouse(database);
        expect(await differences(a, b, bottles, [one, two], 2, question)).toEqual([]);
      },
    );

    const again = (truth: Truth): Truth => ({ ...truth, drawnAgain: true });
    const layouts: readonly (readonly [string, Question, Truth])[] = [
      ["Q2 triangles", { question: "tell_apart", method: "triangle", sets: 3 }, there],
      ["Q2 duo-trios", { question: "tell_apart", method: "duo_trio", sets: 3 }, there],
      ["Q2 pairs", { question: "changed", method: "paired", asked: "drier", sets: 3 }, there],
      ["Q2 tetrads", { question: "changed", method: "tetrad", sets: 2 }, there],
      ["Q3 a hidden target", { question: "how_close", target: 0, reference: true, late: true }, row],
      ["Q4 two rounds", { question: "agree_with_myself" }, row],
      ["Q5 some of the glasses", { question: "like_best", glassesEach: 2 }, row],
      [
        "Q6 a drawn repeat and a control",
        { question: "like_best", repeats: 1, control: 3 },
        { ...row, glasses: [1, 2, 4] },
      ],
    ];

    test.each(database === "sqlite" ? layouts : layouts.slice(0, 1))(
      "%s drawn another time under the same codes",
      async (_, question, truth) => {
        await using a = await temporaryHouse(database);
        await using b = await temporaryHouse(database);
        expect(await differences(a, b, bottles, [truth, again(truth)], 2, question)).toEqual([]);
      },
    );

    test.each(layouts)(
      "%s drawn another time do stand otherwise under their codes",
      async (_, question, truth) => {
        await using a = await temporaryHouse("sqlite");
        await using b = await temporaryHouse("sqlite");
        const one = await world(a, bottles, truth, 2, question);
        const two = await world(b, bottles, again(truth), 2, question, one.draws);
        const lists = [];
        for (const { house, shelf, flight, pourer } of [one, two]) {
          const { tasters } = await house.client("getPourList", {
            at: { household: shelf.household, flight },
            token: pourer,
          });
          lists.push(tasters.flatMap(({ glasses }) => glasses));
        }
        const [first = [], second = []] = lists;
        expect(first.map(({ code, set }) => [code, set])).toEqual(second.map(({ code, set }) => [code, set]));
        const otherwise = first.filter(({ vesselId }, i) => vesselId !== second[i]?.vesselId).length;
        expect(otherwise, "some stand otherwise").toBeGreaterThan(0);
        // Everything the other way round would be the same sets with the two whiskeys swapped.
        expect(otherwise === first.length && question.glassesEach === undefined).toBe(false);
      },
    );

    test("Q2 the pourer's list and the finding do differ where only the sets do", async () => {
      await using a = await temporaryHouse(database);
      await using b = await temporaryHouse(database);
      const question: Question = { question: "tell_apart", method: "triangle", sets: 2 };
      const worlds = [
        await world(a, bottles, there, 1, question),
        await world(b, bottles, back, 1, question),
      ];
      const lists = [];
      for (const { house, shelf, flight, pourer } of worlds) {
        const at = { household: shelf.household, flight };
        const { tasters } = await house.client("getPourList", { at, token: pourer });
        lists.push(tasters.flatMap(({ glasses }) => glasses));
      }
      const [one = [], two = []] = lists;
      expect(one.map(({ code, set, position }) => [code, set, position])).toEqual(
        two.map(({ code, set, position }) => [code, set, position]),
      );
      expect(
        one.every(({ vesselId }, i) => vesselId !== two[i]?.vesselId),
        "each glass the other one",
      ).toBe(true);
    });

    test("the comparison itself sees a difference: with the pourer's token, and after the reveal", async () => {
      await using a = await temporaryHouse(database);
      await using b = await temporaryHouse(database);
      const [, one, two] = cases[0] ?? [];
      if (!one || !two) throw new Error("a case is needed");
      const worlds = [await world(a, bottles, one, 1), await world(b, bottles, two, 1)] as const;
      const answers = async (tokenOf: (it: World) => string | null) => {
        const [x, y] = worlds;
        const [first, second] = [await everyAnswer(x, [tokenOf(x)]), await everyAnswer(y, [tokenOf(y)])];
        return [...first].filter(([path, answer]) => second.get(path) !== answer).map(([path]) => path);
      };
      expect(await answers(() => null)).toEqual([]);
      const asPourer = await answers(({ pourer }) => pourer);
      expect(asPourer).toEqual([expect.stringMatching(/\/pour$/)]);
      for (const { house, shelf, flight, pourer, host } of worlds) {
        const at = { household: shelf.household, flight };
        await house.client("markPoured", { at, token: pourer });
        await house.client("revealFlight", { at, token: host, body: { closeOpenSheets: true } });
      }
      const revealed = (await answers(() => null)).map((path) => path.replaceAll(/[0-9a-z]{26}/g, "…"));
      expect(revealed).toContain("0 /api/households/…/flights/…/finding");
      expect(revealed).toContain("0 /api/households/…/vessels/…");
      expect(revealed).toContain("0 /api/households/…/transfers");
      expect(revealed).toContain("0 /api/households/…/export");
    });

    test(
      "any two truths with the same names on offer (property)",
      async () => {
        const runs = LONG ? { sqlite: 50, postgresql: 10 } : { sqlite: 4, postgresql: 1 };
        await fc.assert(
          fc.asyncProperty(twoTruths, async ({ bottles: shelfOf, truths, tasters }) => {
            await using a = await temporaryHouse(database);
            await using b = await temporaryHouse(database);
            expect(await differences(a, b, shelfOf, truths, tasters)).toEqual([]);
          }),
          { numRuns: runs[database] },
        );
      },
      LONG ? 3_600_000 : 240_000,
    );
  });
});

/** Names on offer with repeats, each with one or two bottles; two ways to say which of them are in the glasses. */
const twoTruths = fc
  .record({
    names: fc.integer({ min: 2, max: 4 }),
    second: fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }),
    offer: fc.array(fc.nat({ max: 3 }), { minLength: 2, maxLength: 9 }),
    glasses: fc.integer({ min: 2, max: 8 }),
    tasters: fc.integer({ min: 1, max: 3 }),
    chance: fc.infiniteStream(fc.nat({ max: 1_000_000 })),
  })
  .map(({ names, second, offer, glasses, tasters, chance }) => {
    const bottles = Array.from({ length: names }, (_, whiskey) => whiskey).flatMap((whiskey) => [
      { whiskey, ml: 800 },
      ...(second[whiskey] ? [{ whiskey, ml: 700 }] : []),
    ]);
    const offered = offer.map((name) => name % names);
    // At most six distractors are allowed.
    const inGlasses = Math.min(8, offered.length, Math.max(glasses, offered.length - 6, 2));
    const truth = (): Truth => {
      const left = [...offered];
      const draw = () => left.splice((chance.next().value ?? 0) % left.length, 1)[0] ?? 0;
      const poured = Array.from({ length: inGlasses }, draw);
      return {
        glasses: poured.map((whiskey) => {
          const theirs = bottles.flatMap((bottle, i) => (bottle.whiskey === whiskey ? [i] : []));
          return theirs[(chance.next().value ?? 0) % theirs.length] ?? 0;
        }),
        distractors: left,
      };
    };
    return { bottles, truths: [truth(), truth()] as const, tasters };
  });
