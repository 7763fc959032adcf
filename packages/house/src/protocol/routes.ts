import { z } from "zod";
import { Archive, RestoreDraft } from "./archive.ts";
import {
  Batch,
  BatchDraft,
  BatchEdit,
  BatchMake,
  BatchMakeDraft,
  BatchPlan,
  BatchPlanDraft,
} from "./batch.ts";
import {
  CalendarLink,
  CalendarLinkDraft,
  CalendarLinkMade,
  CalendarLinks,
  CalendarQuery,
  FeedQuery,
  HouseholdCalendar,
} from "./calendar.ts";
import { Id, PageQuery, page } from "./fields.ts";
import { DoorShown, PassphraseDraft, SignInDraft, TrailLine } from "./door.ts";
import { Entries, EntryDraft, EntryKept, LockDraft } from "./entry.ts";
import {
  CouldShowAnswer,
  DifferAnswer,
  InTurnAnswer,
  MatchAnswer,
  MixtureAnswer,
  PairsAnswer,
  RankAnswer,
} from "./counts-answer.ts";
import {
  CouldShowDraft,
  DifferDraft,
  InTurnDraft,
  MatchDraft,
  MixtureDraft,
  PairsDraft,
  RankDraft,
} from "./counts-asked.ts";
import { Finding, FindingLine, NextThing } from "./finding.ts";
import {
  Flight,
  FlightDraft,
  FlightMade,
  PourList,
  RevealDraft,
  Sheet,
  SheetEdit,
  SheetTake,
  SheetTaken,
  Undersides,
} from "./flight.ts";
import { Household, HouseholdDraft, HouseholdEdit, Taster, TasterDraft, TasterEdit } from "./household.ts";
import {
  JoinAsk,
  JoinDraft,
  Joined,
  JoiningDraft,
  JoiningMade,
  Joinings,
  JoinShown,
  Watched,
} from "./joining.ts";
import { AtGlass, GlassOpened, LiveMessage } from "./live.ts";
import {
  ShelfExported,
  ShelfExportQuery,
  ShelfListAccept,
  ShelfListAccepted,
  ShelfListDraft,
  ShelfListPreview,
} from "./shelf-file.ts";
import { OpenDraft, Opened, ShareDraft, Shared } from "./share.ts";
import { TriedHistory, TriedQuery } from "./tried-history.ts";
import { RestAnswer, RestDraft } from "./rest.ts";
import {
  CheckDraft,
  OakOut,
  OakPut,
  PullDraft,
  Rest,
  RestAdvice,
  RestBegin,
  RestEdit,
  Rests,
} from "./resting.ts";
import { KeptUp, KeptUpQuery, NextAddition, NextAdditionDraft } from "./kept-up.ts";
import { Lineage, LineageQuery } from "./lineage.ts";
import { TrialPlan, TrialPlanDraft, TrialSet, TrialSetDraft, TrialsPoured } from "./trial.ts";
import { ReadDraft, ReadResult } from "./note.ts";
import { MixingBoard } from "./mixing.ts";
import { LearnedProfile, PalateBoard } from "./palate.ts";
import { NextFlightAnswer, NextFlightDraft } from "./next-flight.ts";
import { OakDraft, OakResult } from "./oak.ts";
import { ProfileBoard } from "./profile-board.ts";
import { FlightRecord } from "./record.ts";
import {
  Recipe,
  RecipeDraft,
  RecipeEdit,
  RecipePreview,
  RecipePreviewDraft,
  RecipeVersion,
  RecipeVersionDraft,
} from "./recipe.ts";
import {
  ConvertDraft,
  ConvertResult,
  DensityDraft,
  DensityResult,
  MixDraft,
  MixResult,
  ReduceDraft,
  ReduceResult,
} from "./reckon.ts";
import { PurchasesAnswer, RulePricesAnswer, SearchAnswer, TradeOffAnswer } from "./search-answer.ts";
import { PurchasesDraft, TradeOffQuery } from "./search-asked.ts";
import { RecipeFillAnswer, RecipeFillDraft } from "./fill.ts";
import { RecipeCheck, RecipeExport, RecipeFile } from "./recipe-file.ts";
import { LoosenAnswer, LoosenAsked, LoosenDraft, ShelfLoosenAnswer } from "./loosen.ts";
import {
  RecipeResults,
  RecipeTakeInDraft,
  RecipeTakeInPreview,
  RecipeTakeInPreviewDraft,
  ResultDraft,
  ResultMade,
  ResultPreview,
  ResultPreviewDraft,
  ResultTakeInDraft,
  ShelfFillAnswer,
  ShelfFillDraft,
} from "./passing.ts";
import { SearchProblem, SearchQuery } from "./search.ts";
import {
  EvaporatedDraft,
  EvaporatedResult,
  FillDraft,
  FillResult,
  LiftDraft,
  LiftResult,
  WeighOutDraft,
  WeighOutResult,
} from "./reckon-pouring.ts";
import {
  GaugeDraft,
  GaugeResult,
  SampleDraft,
  SampleResult,
  TemperatureDraft,
  TemperatureResult,
  WeighDraft,
  WeighResult,
} from "./reckon-reading.ts";
import { ShelfProblem, ShelfSearchAnswer, ShelfSearchDraft } from "./shelf-search.ts";
import { BottleDraft, Transfer, TransferDraft, Vessel, VesselDraft, VesselEdit } from "./vessel.ts";
import { Version } from "./fields.ts";
import { League, RecipeFinding, TasterFinding, WeighedFlight, WhiskeyFinding } from "./weighed.ts";
import { Whiskey, WhiskeyDraft, WhiskeyEdit } from "./whiskey.ts";
import { SheetWordDraft, SheetWords, Word, WordDraft, WordForget, Words } from "./word.ts";

export type Method = "GET" | "POST" | "PATCH" | "DELETE";
type Shape = z.ZodType | null;

/** One line of the house's table of routes. Server, client, OpenAPI and tests all read this table. */
export interface Route<
  Q extends Shape = Shape,
  B extends Shape = Shape,
  R extends Shape = Shape,
  S extends boolean = boolean,
> {
  readonly method: Method;
  /** `:name` parts are path parameters; all but the words of `open` rooms are ids. */
  readonly path: string;
  readonly says: string;
  readonly query: Q;
  readonly body: B;
  readonly answer: R;
  readonly status: 200 | 201 | 204;
  /** Which bearer token the route reads: see SPEC.md of services. */
  readonly token: "none" | "host" | "pourer" | "taster" | "taster or revealed" | "guest";
  /** Who of the network may come in by it: the signed-in owner, anyone, or guests of that flight in these roles. */
  readonly opens: "owner" | "anyone" | readonly GuestRole[];
  /** The answer is a stream of server-sent events, each of them one `answer`. */
  readonly stream: S;
  /** What the answer is sent as: JSON, or a text that other programs read. */
  readonly media: "application/json" | "text/calendar";
}
export type GuestRole = "host" | "pourer" | "taster" | "watcher";

interface More<Q extends Shape, B extends Shape, R extends Shape, S extends boolean> {
  readonly query?: Q;
  readonly body?: B;
  readonly answer?: R;
  readonly status?: 200 | 201 | 204;
  readonly token?: Route["token"];
  readonly opens?: Route["opens"];
  readonly stream?: S;
  readonly media?: Route["media"];
}

const route = <
  Q extends Shape = null,
  B extends Shape = null,
  R extends Shape = null,
  S extends boolean = false,
>(
  method: Method,
  path: string,
  says: string,
  more: More<Q, B, R, S> = {},
): Route<Q, B, R, S> => ({
  method,
  path,
  says,
  query: (more.query ?? null) as Q,
  body: (more.body ?? null) as B,
  answer: (more.answer ?? null) as R,
  status: more.status ?? (more.answer ? 200 : 204),
  token: more.token ?? "none",
  opens: more.opens ?? "owner",
  stream: (more.stream ?? false) as S,
  media: more.media ?? "application/json",
});

const H = "/api/households/:household";
const F = `${H}/flights/:flight` as const;
const EVERY_ROLE = ["host", "pourer", "taster", "watcher"] as const;
const AT_THE_TABLE = ["host", "pourer", "taster"] as const;
const VersionQuery = z.object({ version: z.coerce.number().pipe(Version) });
const VesselQuery = PageQuery.extend({ kind: z.string().optional(), whiskeyId: Id.optional() });
const WhiskeyQuery = PageQuery.extend({ q: z.string().max(120).optional() });
const TransferQuery = PageQuery.extend({ vesselId: Id.optional(), batchId: Id.optional() });
const ConfirmQuery = z.object({ confirm: z.string() });

export const routes = {
  health: route("GET", "/api/health", "Whether the house is open and which database it keeps.", {
    answer: z.object({ ok: z.literal(true), database: z.enum(["sqlite", "postgresql"]) }),
    opens: "anyone",
  }),

  getDoor: route("GET", "/api/door", "Who the house takes you for.", { answer: DoorShown, opens: "anyone" }),
  setPassphrase: route("POST", "/api/door/passphrase", "Set the owner's passphrase; signs everyone out.", {
    body: PassphraseDraft,
  }),
  signIn: route("POST", "/api/door/sign-in", "Sign in as the owner; sets the session's cookie.", {
    body: SignInDraft,
    opens: "anyone",
  }),
  signOut: route("POST", "/api/door/sign-out", "End this session.", { opens: "anyone" }),
  signOutEverywhere: route("POST", "/api/door/sign-out-everywhere", "End every session of the owner."),
  listTrail: route("GET", "/api/door/trail", "What happened at the door and to flights, newest first.", {
    query: PageQuery,
    answer: page(TrailLine),
  }),

  askJoining: route("POST", "/api/join/ask", "What a join link or code opens.", {
    body: JoinAsk,
    answer: JoinShown,
    opens: "anyone",
  }),
  join: route("POST", "/api/join", "Join a flight by its link or code; gives a token.", {
    body: JoinDraft,
    answer: Joined,
    status: 201,
    opens: "anyone",
  }),

  reckonMix: route("POST", "/api/reckon/mix", "Parts and strengths in, strength and proof out.", {
    body: MixDraft,
    answer: MixResult,
  }),
  reckonReduce: route("POST", "/api/reckon/reduce", "What to add to reach a strength.", {
    body: ReduceDraft,
    answer: ReduceResult,
  }),
  reckonDensity: route("POST", "/api/reckon/density", "Density of an ethanol and water mixture.", {
    body: DensityDraft,
    answer: DensityResult,
  }),
  reckonConvert: route(
    "POST",
    "/api/reckon/convert",
    "Strength by volume, proof and mass; of a volume, its gallons, litres of alcohol, units and drinks.",
    { body: ConvertDraft, answer: ConvertResult },
  ),
  reckonGauge: route(
    "POST",
    "/api/reckon/gauge",
    "True strength from what a hydrometer reads at a temperature.",
    { body: GaugeDraft, answer: GaugeResult },
  ),
  reckonWeigh: route("POST", "/api/reckon/weigh", "What a volume weighs, and how much a weight is.", {
    body: WeighDraft,
    answer: WeighResult,
  }),
  reckonWeighOut: route(
    "POST",
    "/api/reckon/weigh-out",
    "What to pour by weight, and what is left to pour after what really was.",
    { body: WeighOutDraft, answer: WeighOutResult },
  ),
  reckonFill: route("POST", "/api/reckon/fill", "How much fills a vessel exactly.", {
    body: FillDraft,
    answer: FillResult,
  }),
  reckonLift: route(
    "POST",
    "/api/reckon/lift",
    "Which second bottle, and how much, takes one to a strength.",
    {
      body: LiftDraft,
      answer: LiftResult,
    },
  ),
  reckonSample: route("POST", "/api/reckon/sample", "Strength of an unlabelled sample, by mass and volume.", {
    body: SampleDraft,
    answer: SampleResult,
  }),
  reckonEvaporated: route("POST", "/api/reckon/evaporated", "What has gone, by level and strength.", {
    body: EvaporatedDraft,
    answer: EvaporatedResult,
  }),
  reckonTemperature: route(
    "POST",
    "/api/reckon/temperature",
    "At which temperatures a mixture has a density: one, or two near its densest point.",
    { body: TemperatureDraft, answer: TemperatureResult },
  ),

  fillRecipe: route(
    "POST",
    "/api/fill",
    "A recipe file filled from a shelf: who can stand where, and the closest filling.",
    {
      body: RecipeFillDraft,
      answer: RecipeFillAnswer,
    },
  ),
  checkRecipe: route(
    "POST",
    "/api/recipes/check",
    "A recipe file read: its hash, its rules, its canonical form.",
    {
      body: RecipeFile,
      answer: RecipeCheck,
    },
  ),
  shareRecipe: route("POST", "/api/recipes/share", "A recipe file as a link, a page, text or a picture.", {
    body: ShareDraft,
    answer: Shared,
  }),
  openRecipe: route("POST", "/api/recipes/open", "A link, a page or a file read as the recipe in it.", {
    body: OpenDraft,
    answer: Opened,
  }),
  loosenRules: route(
    "POST",
    "/api/loosen",
    "For each slot of a recipe file the loosest rule that keeps the result near, tried on a shelf.",
    { body: LoosenDraft, answer: LoosenAnswer },
  ),
  search: route("POST", "/api/search", "The closest recipes for a problem, proven or with the proven gap.", {
    body: SearchProblem,
    query: SearchQuery,
    answer: SearchAnswer,
  }),
  searchTradeOff: route(
    "POST",
    "/api/search/trade-off",
    "Every recipe that nothing beats in closeness and in price, bottles, parts or age as well.",
    { body: SearchProblem, query: TradeOffQuery, answer: TradeOffAnswer },
  ),
  searchRules: route("POST", "/api/search/rules", "How much closer the best would be without each rule.", {
    body: SearchProblem,
    query: SearchQuery,
    answer: RulePricesAnswer,
  }),
  searchPurchases: route(
    "POST",
    "/api/search/purchases",
    "Which one more bottle helps most, for one target or several; which is never needed.",
    { body: PurchasesDraft, query: SearchQuery, answer: PurchasesAnswer },
  ),
  searchShelf: route("POST", `${H}/search`, "The closest recipes from what is on the shelf.", {
    body: ShelfSearchDraft,
    query: SearchQuery,
    answer: ShelfSearchAnswer,
  }),
  shelfProblem: route("POST", `${H}/search/problem`, "The same as a problem that any search takes.", {
    body: ShelfSearchDraft,
    answer: ShelfProblem,
  }),

  countsDiffer: route(
    "POST",
    "/api/counts/differ",
    "What right answers of a difference test show: exact p, d′, and likeness where asked.",
    { body: DifferDraft, answer: DifferAnswer },
  ),
  countsInTurn: route(
    "POST",
    "/api/counts/in-turn",
    "The same for answers looked at one at a time: valid at any moment, and whether to stop.",
    { body: InTurnDraft, answer: InTurnAnswer },
  ),
  countsMatch: route(
    "POST",
    "/api/counts/match",
    "How well guessing would do at naming glasses, and how many were truly known.",
    { body: MatchDraft, answer: MatchAnswer },
  ),
  countsRank: route(
    "POST",
    "/api/counts/rank",
    "What rankings show: agreement, the most likely worths, and what to believe.",
    { body: RankDraft, answer: RankAnswer },
  ),
  countsPairs: route(
    "POST",
    "/api/counts/pairs",
    "What comparisons of two show: worths, ties, the effect of coming first.",
    { body: PairsDraft, answer: PairsAnswer },
  ),
  countsMixture: route(
    "POST",
    "/api/counts/mixture",
    "What a mixture is expected to give, by its shares: Scheffé's polynomial.",
    { body: MixtureDraft, answer: MixtureAnswer },
  ),
  countsCouldShow: route(
    "POST",
    "/api/counts/could-show",
    "Before a flight: what the chosen numbers could show.",
    { body: CouldShowDraft, answer: CouldShowAnswer },
  ),

  oakDose: route(
    "POST",
    "/api/oak",
    "How much wood there is to a litre, against a 200 L cask, and what it soaks up.",
    {
      body: OakDraft,
      answer: OakResult,
    },
  ),

  rest: route("POST", "/api/rest", "How long the oak may stay: what to believe after the tastings so far.", {
    body: RestDraft,
    answer: RestAnswer,
  }),

  nextFlight: route("POST", "/api/next", "What to pour next, and why, after what was tried and ranked.", {
    body: NextFlightDraft,
    answer: NextFlightAnswer,
  }),

  planTrials: route("POST", "/api/trials/plan", "Which small mixes to make so that a handful say most.", {
    body: TrialPlanDraft,
    answer: TrialPlan,
  }),

  readNote: route("POST", "/api/read", "What a tasting note says, and its profile; nothing is kept.", {
    body: ReadDraft,
    answer: ReadResult,
  }),

  readNoteHere: route("POST", `${H}/read`, "The same, by the household's own words.", {
    body: ReadDraft,
    answer: ReadResult,
  }),
  listWords: route(
    "GET",
    `${H}/words`,
    "The household's own words: what is meant by them, and who taught them.",
    {
      answer: Words,
    },
  ),
  teachWord: route("POST", `${H}/words`, "Say what is meant by a phrase, or that it is no flavour.", {
    body: WordDraft,
    answer: Word,
    status: 201,
  }),
  forgetWord: route("POST", `${H}/words/forget`, "Forget a phrase: it is read as anybody would.", {
    body: WordForget,
    answer: Word,
  }),

  listHouseholds: route("GET", "/api/households", "The households of this house.", {
    query: PageQuery,
    answer: page(Household),
  }),
  addHousehold: route("POST", "/api/households", "Begin a household.", {
    body: HouseholdDraft,
    answer: Household,
    status: 201,
  }),
  getHousehold: route("GET", H, "One household.", { answer: Household }),
  editHousehold: route("PATCH", H, "Rename a household or change its currency.", {
    body: HouseholdEdit,
    answer: Household,
  }),
  removeHousehold: route("DELETE", H, "Remove a household and all it holds; `confirm` is its name.", {
    query: ConfirmQuery,
  }),
  loadDemo: route("POST", "/api/demo", "Load the invented demo household.", {
    answer: Household,
    status: 201,
  }),
  exportHousehold: route("GET", `${H}/export`, "Everything, in one documented file.", { answer: Archive }),
  restoreHousehold: route("POST", "/api/restore", "A new household from such a file.", {
    body: RestoreDraft,
    answer: Household,
    status: 201,
  }),
  next: route("GET", `${H}/next`, "What is next.", { answer: z.object({ items: z.array(NextThing) }) }),

  getCalendar: route(
    "GET",
    `${H}/calendar`,
    "What is due on which day, by the household's own names, as iCalendar (RFC 5545).",
    {
      query: CalendarQuery,
      answer: HouseholdCalendar,
    },
  ),
  listCalendarLinks: route("GET", `${H}/calendar/links`, "Secret addresses of the calendar.", {
    answer: CalendarLinks,
  }),
  addCalendarLink: route("POST", `${H}/calendar/links`, "A secret address of the calendar, told this once.", {
    body: CalendarLinkDraft,
    answer: CalendarLinkMade,
    status: 201,
  }),
  revokeCalendarLink: route(
    "POST",
    `${H}/calendar/links/:link/revoke`,
    "Revoke one: it opens nothing more.",
    {
      answer: CalendarLink,
    },
  ),
  getFeed: route("GET", "/api/feed", "The calendar behind a secret link: dates and neutral words alone.", {
    query: FeedQuery,
    answer: z.string(),
    opens: "anyone",
    media: "text/calendar",
  }),

  listTasters: route("GET", `${H}/tasters`, "Who tastes here.", { query: PageQuery, answer: page(Taster) }),
  addTaster: route("POST", `${H}/tasters`, "Add a taster.", {
    body: TasterDraft,
    answer: Taster,
    status: 201,
  }),
  editTaster: route("PATCH", `${H}/tasters/:taster`, "Rename a taster.", {
    body: TasterEdit,
    answer: Taster,
  }),

  listWhiskeys: route("GET", `${H}/whiskeys`, "Known whiskeys; `q` searches maker, name and release.", {
    query: WhiskeyQuery,
    answer: page(Whiskey),
  }),
  addWhiskey: route("POST", `${H}/whiskeys`, "Add a whiskey.", {
    body: WhiskeyDraft,
    answer: Whiskey,
    status: 201,
  }),
  getWhiskey: route("GET", `${H}/whiskeys/:whiskey`, "One whiskey.", { answer: Whiskey }),
  editWhiskey: route("PATCH", `${H}/whiskeys/:whiskey`, "Change its facts.", {
    body: WhiskeyEdit,
    answer: Whiskey,
  }),
  removeWhiskey: route("DELETE", `${H}/whiskeys/:whiskey`, "Remove one that nothing uses.", {
    query: VersionQuery,
  }),

  previewShelfList: route(
    "POST",
    `${H}/shelf/list/preview`,
    "A list of bottles from elsewhere, row by row as it would be taken in. Nothing is written.",
    { body: ShelfListDraft, answer: ShelfListPreview },
  ),
  acceptShelfList: route("POST", `${H}/shelf/list`, "Take in a list that was looked at, all or nothing.", {
    body: ShelfListAccept,
    answer: ShelfListAccepted,
    status: 201,
  }),
  exportShelf: route("GET", `${H}/shelf/list`, "The shelf as a list: CSV or JSON.", {
    query: ShelfExportQuery,
    answer: ShelfExported,
  }),
  addBottle: route("POST", `${H}/bottles`, "Put a bottle of a whiskey on the shelf.", {
    body: BottleDraft,
    answer: Vessel,
    status: 201,
  }),
  listVessels: route("GET", `${H}/vessels`, "Bottles and other vessels with what they hold.", {
    query: VesselQuery,
    answer: page(Vessel),
  }),
  addVessel: route("POST", `${H}/vessels`, "Add an empty vessel.", {
    body: VesselDraft,
    answer: Vessel,
    status: 201,
  }),
  getVessel: route("GET", `${H}/vessels/:vessel`, "One vessel.", { answer: Vessel }),
  editVessel: route("PATCH", `${H}/vessels/:vessel`, "Relabel or open it.", {
    body: VesselEdit,
    answer: Vessel,
  }),
  removeVessel: route("DELETE", `${H}/vessels/:vessel`, "Remove one that no transfer touched.", {
    query: VersionQuery,
  }),
  getKeptUp: route("GET", `${H}/vessels/:vessel/kept-up`, "What a topped-up bottle was over time.", {
    query: KeptUpQuery,
    answer: KeptUp,
  }),
  nextAddition: route(
    "POST",
    `${H}/vessels/:vessel/kept-up/next`,
    "What to add next from the shelf, so that the bottle comes closest to a target.",
    { body: NextAdditionDraft, query: SearchQuery, answer: NextAddition },
  ),
  listTransfers: route("GET", `${H}/transfers`, "The ledger, newest first.", {
    query: TransferQuery,
    answer: page(Transfer),
  }),
  addTransfer: route("POST", `${H}/transfers`, "Move liquid.", {
    body: TransferDraft,
    answer: Transfer,
    status: 201,
  }),
  undoTransfer: route("POST", `${H}/transfers/:transfer/undo`, "Undo one, if what followed still stands.", {
    answer: Transfer,
  }),

  listRecipes: route("GET", `${H}/recipes`, "Recipes with their latest version.", {
    query: PageQuery,
    answer: page(Recipe),
  }),
  addRecipe: route("POST", `${H}/recipes`, "Write a recipe.", {
    body: RecipeDraft,
    answer: Recipe,
    status: 201,
  }),
  getRecipe: route("GET", `${H}/recipes/:recipe`, "One recipe.", { answer: Recipe }),
  editRecipe: route("PATCH", `${H}/recipes/:recipe`, "Rename it or change its target.", {
    body: RecipeEdit,
    answer: Recipe,
  }),
  exportRecipe: route(
    "POST",
    `${H}/recipes/:recipe/file`,
    "A recipe as a file that others can fill from their own shelf.",
    {
      body: RecipeExport,
      answer: RecipeFile,
    },
  ),
  previewTakeIn: route(
    "POST",
    `${H}/recipe-files/preview`,
    "What a recipe file would add to the household; nothing is kept.",
    { body: RecipeTakeInPreviewDraft, answer: RecipeTakeInPreview },
  ),
  takeInRecipe: route("POST", `${H}/recipe-files`, "Take in a recipe file that was looked at.", {
    body: RecipeTakeInDraft,
    answer: Recipe,
    status: 201,
  }),
  fillFromShelf: route(
    "POST",
    `${H}/recipes/:recipe/filling`,
    "A recipe filled from the household's shelf: who can stand where and why others cannot, and the closest filling.",
    { body: ShelfFillDraft, answer: ShelfFillAnswer },
  ),
  loosenFromShelf: route(
    "POST",
    `${H}/recipes/:recipe/rules`,
    "For each slot the loosest rule that keeps the result near, as far as the household's whiskeys tell.",
    { body: LoosenAsked, answer: ShelfLoosenAnswer },
  ),
  makeResult: route(
    "POST",
    `${H}/recipes/:recipe/result`,
    "What came of a recipe that was passed on, as a document to send back.",
    { body: ResultDraft, answer: ResultMade },
  ),
  getRecipeResults: route(
    "GET",
    `${H}/recipes/:recipe/results`,
    "What kitchens found of a recipe, this one and those that sent a result, each and together.",
    { answer: RecipeResults },
  ),
  previewResult: route(
    "POST",
    `${H}/results/preview`,
    "A result that was sent back, looked at; nothing is kept.",
    {
      body: ResultPreviewDraft,
      answer: ResultPreview,
    },
  ),
  takeInResult: route("POST", `${H}/results`, "Take in a result that was looked at.", {
    body: ResultTakeInDraft,
    answer: RecipeResults,
    status: 201,
  }),
  removeResult: route("DELETE", `${H}/recipes/:recipe/results/:result`, "Take a result out again.", {
    answer: RecipeResults,
  }),
  addRecipeVersion: route("POST", `${H}/recipes/:recipe/versions`, "A new version of its parts.", {
    body: RecipeVersionDraft,
    answer: Recipe,
    status: 201,
  }),
  listRecipeVersions: route("GET", `${H}/recipes/:recipe/versions`, "Its history, newest first.", {
    query: PageQuery,
    answer: page(RecipeVersion),
  }),
  previewRecipe: route("POST", `${H}/recipes/preview`, "What these parts would give.", {
    body: RecipePreviewDraft,
    answer: RecipePreview,
  }),

  getLineage: route("GET", `${H}/lineage`, "Which recipe and batch came from which, and how each did.", {
    query: LineageQuery,
    answer: Lineage,
  }),

  listTrialSets: route("GET", `${H}/trials`, "Sets of bench trials, newest first.", {
    query: PageQuery,
    answer: page(TrialSet),
  }),
  addTrialSet: route("POST", `${H}/trials`, "Plan a set of bench trials of the shelf, and keep it.", {
    body: TrialSetDraft,
    answer: TrialSet,
    status: 201,
  }),
  getTrialSet: route("GET", `${H}/trials/:trials`, "One set of bench trials.", { answer: TrialSet }),
  removeTrialSet: route("DELETE", `${H}/trials/:trials`, "Remove one that nothing was poured of.", {
    query: VersionQuery,
  }),
  pourTrials: route("POST", `${H}/trials/:trials/pour`, "Pour trials into vials; takes it off the shelf.", {
    body: TrialsPoured,
    answer: TrialSet,
  }),
  undoTrials: route("POST", `${H}/trials/:trials/undo`, "Undo the pouring, if what followed still stands.", {
    answer: TrialSet,
  }),

  planBatch: route("POST", `${H}/batches/plan`, "What to pour for a batch; nothing is moved.", {
    body: BatchPlanDraft,
    answer: BatchPlan,
  }),
  makeBatch: route("POST", `${H}/batches/make`, "The largest batch that fits; nothing is moved.", {
    body: BatchMakeDraft,
    answer: BatchMake,
  }),
  listBatches: route("GET", `${H}/batches`, "Batches, newest first.", {
    query: PageQuery,
    answer: page(Batch),
  }),
  addBatch: route("POST", `${H}/batches`, "Record a batch as poured; takes the stock off the shelf.", {
    body: BatchDraft,
    answer: Batch,
    status: 201,
  }),
  getBatch: route("GET", `${H}/batches/:batch`, "One batch.", { answer: Batch }),
  editBatch: route("PATCH", `${H}/batches/:batch`, "Its name, rest, note, or that it is finished.", {
    body: BatchEdit,
    answer: Batch,
  }),

  listRests: route("GET", `${H}/batches/:batch/rests`, "A batch's rests, newest first.", { answer: Rests }),
  beginRest: route("POST", `${H}/batches/:batch/rests`, "Begin a rest on glass or on oak.", {
    body: RestBegin,
    answer: Rest,
    status: 201,
  }),
  editRest: route("PATCH", `${H}/rests/:rest`, "Its rule, temperature, planned flight or note.", {
    body: RestEdit,
    answer: Rest,
  }),
  removeRest: route("DELETE", `${H}/rests/:rest`, "Remove one that was begun by mistake.", {
    query: VersionQuery,
  }),
  putOakIn: route("POST", `${H}/rests/:rest/oak`, "Put wood into the vessel.", {
    body: OakPut,
    answer: Rest,
    status: 201,
  }),
  takeOakOut: route("POST", `${H}/rests/:rest/oak/:piece/out`, "Take one piece out, the others stay in.", {
    body: OakOut,
    answer: Rest,
  }),
  addCheck: route("POST", `${H}/rests/:rest/checks`, "What was tasted during the rest.", {
    body: CheckDraft,
    answer: Rest,
    status: 201,
  }),
  removeCheck: route("DELETE", `${H}/rests/:rest/checks/:check`, "Take a check tasting away.", {
    query: VersionQuery,
    answer: Rest,
  }),
  adviseRest: route(
    "GET",
    `${H}/rests/:rest/advice`,
    "When to taste, when it is likely ready, when the oak leads.",
    {
      answer: RestAdvice,
    },
  ),
  pullRest: route("POST", `${H}/rests/:rest/pull`, "Take all wood out that is in and end the rest.", {
    body: PullDraft,
    answer: Rest,
  }),

  listFlights: route("GET", `${H}/flights`, "Flights, newest first.", {
    query: PageQuery,
    answer: page(Flight),
  }),
  addFlight: route("POST", `${H}/flights`, "Set a flight: draws codes and orders, seals the key.", {
    body: FlightDraft,
    answer: FlightMade,
    status: 201,
  }),
  getFlight: route("GET", `${H}/flights/:flight`, "A flight, nothing given away.", {
    answer: Flight,
    opens: AT_THE_TABLE,
  }),
  getPourList: route("GET", `${H}/flights/:flight/pour`, "The pourer's page.", {
    answer: PourList,
    token: "pourer",
    opens: ["pourer"],
  }),
  markPoured: route(
    "POST",
    `${H}/flights/:flight/poured`,
    "The glasses stand ready. Pourer's token, or the taster's when alone.",
    { answer: Flight, token: "pourer", opens: ["pourer", "taster"] },
  ),
  callOffFlight: route("POST", `${H}/flights/:flight/call-off`, "Nothing was poured: destroy the key.", {
    answer: Flight,
    token: "host",
    opens: ["host"],
  }),
  takeSheet: route(
    "POST",
    `${H}/flights/:flight/sheets/:sheet/take`,
    "Take a free sheet; gives its token once.",
    { body: SheetTake, answer: SheetTaken, status: 201 },
  ),
  freeSheet: route(
    "POST",
    `${H}/flights/:flight/sheets/:sheet/free`,
    "Revoke its token so that it can be taken on another phone.",
    { answer: Flight, token: "host", opens: ["host"] },
  ),
  getSheet: route("GET", `${H}/flights/:flight/sheets/:sheet`, "One sheet.", {
    answer: Sheet,
    token: "taster or revealed",
    opens: AT_THE_TABLE,
  }),
  editSheet: route("PATCH", `${H}/flights/:flight/sheets/:sheet`, "Notes, guesses, ranking.", {
    body: SheetEdit,
    answer: Sheet,
    token: "taster",
    opens: ["taster"],
  }),
  lockSheet: route(
    "POST",
    `${H}/flights/:flight/sheets/:sheet/lock`,
    "Lock it; nothing on it changes any more.",
    { body: LockDraft, answer: Sheet, token: "taster", opens: ["taster"] },
  ),
  addEntry: route(
    "POST",
    `${F}/sheets/:sheet/entries`,
    "Write on a sheet: kept as an entry, once however often it is sent.",
    { body: EntryDraft, answer: EntryKept, status: 201, token: "taster", opens: ["taster"] },
  ),
  listEntries: route("GET", `${F}/sheets/:sheet/entries`, "What was written on a sheet, in order.", {
    answer: Entries,
    token: "taster or revealed",
    opens: AT_THE_TABLE,
  }),
  getSheetWords: route("GET", `${F}/sheets/:sheet/words`, "The words a sheet is read by.", {
    answer: SheetWords,
    token: "taster or revealed",
    opens: AT_THE_TABLE,
  }),
  teachAtSheet: route(
    "POST",
    `${F}/sheets/:sheet/words`,
    "Say on a sheet what is meant by a phrase; it is the sheet's own until the reveal.",
    { body: SheetWordDraft, answer: SheetWords, status: 201, token: "taster", opens: ["taster"] },
  ),
  atGlass: route("POST", `${F}/sheets/:sheet/at`, "Which glass is in hand, by its position.", {
    body: AtGlass,
    token: "taster",
    opens: ["taster"],
  }),
  openJoining: route("POST", `${F}/joinings`, "Open a way into the flight for one role.", {
    body: JoiningDraft,
    answer: JoiningMade,
    status: 201,
    token: "host",
    opens: ["host"],
  }),
  listJoinings: route("GET", `${F}/joinings`, "Ways in that are open, and who came in.", {
    answer: Joinings,
    token: "host",
    opens: ["host"],
  }),
  closeJoining: route("POST", `${F}/joinings/:joining/close`, "Close a way in.", {
    answer: Joinings,
    token: "host",
    opens: ["host"],
  }),
  revokeGuest: route(
    "POST",
    `${F}/guests/:guest/revoke`,
    "Revoke a guest's token; an open seat is free again.",
    {
      answer: Joinings,
      token: "host",
      opens: ["host"],
    },
  ),
  closeFlight: route("POST", `${F}/close`, "Close the sheets that are open; the key stays sealed.", {
    answer: Flight,
    token: "host",
    opens: ["host"],
  }),
  getRecord: route("GET", `${F}/record`, "The promise of the key, and after the reveal what checks it.", {
    answer: FlightRecord,
    token: "guest",
    opens: EVERY_ROLE,
  }),
  watchFlight: route("GET", `${F}/watch`, "Who has locked, nothing else.", {
    answer: Watched,
    token: "guest",
    opens: EVERY_ROLE,
  }),
  followFlight: route("GET", `${F}/live`, "What happens at the table, as it happens.", {
    answer: LiveMessage,
    token: "guest",
    opens: EVERY_ROLE,
    stream: true,
  }),
  openGlass: route("POST", `${F}/opened`, "After the reveal: how many glasses are open on all phones.", {
    body: GlassOpened,
    token: "host",
    opens: ["host"],
  }),
  enterUndersides: route(
    "POST",
    `${H}/flights/:flight/undersides`,
    "Alone, after the lock: which mark stood where.",
    { body: Undersides, answer: Flight, token: "taster", opens: ["taster"] },
  ),
  revealFlight: route(
    "POST",
    `${H}/flights/:flight/reveal`,
    "The one reveal. Early with the host's token only.",
    { body: RevealDraft, answer: Finding, token: "host", opens: AT_THE_TABLE },
  ),
  getFinding: route("GET", `${H}/flights/:flight/finding`, "What the glasses said, after the reveal.", {
    answer: Finding,
    opens: EVERY_ROLE,
  }),
  listFindings: route("GET", `${H}/findings`, "Findings, newest first.", {
    query: PageQuery,
    answer: page(FindingLine),
  }),
  getWeighedFlight: route(
    "GET",
    `${F}/finding/weighed`,
    "What the sheets of a revealed flight can carry: worths, mix-ups, what was known.",
    { answer: WeighedFlight, opens: EVERY_ROLE },
  ),
  getRecipeFinding: route("GET", `${H}/recipes/:recipe/finding`, "A recipe over all its revealed flights.", {
    answer: RecipeFinding,
  }),
  getWhiskeyFinding: route(
    "GET",
    `${H}/whiskeys/:whiskey/finding`,
    "A whiskey as it was poured in revealed flights.",
    { answer: WhiskeyFinding },
  ),
  getWhiskeyProfile: route(
    "GET",
    `${H}/whiskeys/:whiskey/profile`,
    "What a whiskey tastes of: as the shelf has it, and as it was observed.",
    { answer: ProfileBoard },
  ),
  getMixing: route(
    "GET",
    `${H}/mixing`,
    "What mixing does, attribute by attribute, by mixes that were noted.",
    {
      answer: MixingBoard,
    },
  ),
  getPalate: route(
    "GET",
    `${H}/palate`,
    "What was learned of how the table tastes, and what to taste next to learn most.",
    { answer: PalateBoard },
  ),
  getLearnedProfile: route(
    "GET",
    `${H}/whiskeys/:whiskey/learned`,
    "What a whiskey tastes of to the household: learned from its label, notes of it and notes of mixes.",
    { answer: LearnedProfile },
  ),
  getTried: route(
    "GET",
    `${H}/recipes/:recipe/tried`,
    "What was tried around a recipe and how it was ranked in revealed flights, as POST /api/next takes it.",
    { query: TriedQuery, answer: TriedHistory },
  ),
  getRecipeProfile: route(
    "GET",
    `${H}/recipes/:recipe/profile`,
    "What a recipe's parts predict, and what its batches were observed to be.",
    { answer: ProfileBoard },
  ),
  getFlightProfiles: route(
    "GET",
    `${F}/finding/profiles`,
    "What each name in a revealed flight's glasses was observed to be, against what was predicted.",
    { answer: ProfileBoard, opens: EVERY_ROLE },
  ),
  getTasterFinding: route(
    "GET",
    `${H}/tasters/:taster/finding`,
    "One taster over all their revealed flights.",
    { answer: TasterFinding },
  ),
  getLeague: route("GET", `${H}/league`, "Own blends beside each other, by all revealed flights.", {
    answer: League,
  }),
} as const;

export type Routes = typeof routes;
/** Routes that answer with a stream of events. */
export type StreamName = {
  [N in keyof Routes]: Routes[N]["stream"] extends true ? N : never;
}[keyof Routes];
/** Routes that answer once. */
export type RouteName = Exclude<keyof Routes, StreamName>;
type Given<S> = S extends z.ZodType ? z.input<S> : undefined;
type Read<S> = S extends z.ZodType ? z.output<S> : undefined;
/** What a caller may send. */
export type QueryOf<N extends RouteName | StreamName> = Given<Routes[N]["query"]>;
export type BodyOf<N extends RouteName | StreamName> = Given<Routes[N]["body"]>;
/** What a service gets after the schemas read it. */
export type QueryRead<N extends RouteName | StreamName> = Read<Routes[N]["query"]>;
export type BodyRead<N extends RouteName | StreamName> = Read<Routes[N]["body"]>;
export type AnswerOf<N extends RouteName | StreamName> = Read<Routes[N]["answer"]>;
