export { Archive, RecoveryFile, RestoreDraft } from "./archive.ts";
export {
  Batch,
  BatchDraft,
  BatchEdit,
  BatchMake,
  BatchPlan,
  BatchPlanDraft,
  BatchReduction,
  Pour,
} from "./batch.ts";
export { CalendarLink } from "./calendar.ts";
export { OWN_HEADER, Refusal, createClient, type Call, type Client, type Door } from "./client.ts";
export {
  DoorShown,
  PASSPHRASE_LEAST,
  Passphrase,
  PassphraseDraft,
  SignInDraft,
  TrailLine,
} from "./door.ts";
export { Entries, Entry, EntryDraft, EntryKept, LockDraft } from "./entry.ts";
export { follow, type Follow } from "./follow.ts";
export {
  Id,
  Instant,
  LongText,
  Money,
  OptionalText,
  PageQuery,
  ShortText,
  StatedStrength,
  Version,
  VolumeMl,
  page,
} from "./fields.ts";
export { Chance } from "./chance.ts";
export {
  CouldShowAnswer,
  DifferAnswer,
  type CountsBeliefs,
  CountsReason,
  InTurnAnswer,
  MatchAnswer,
  MixtureAnswer,
  PairsAnswer,
  RankAnswer,
} from "./counts-answer.ts";
export {
  CouldShowDraft,
  DifferDraft,
  COUNTS_LIMITS,
  CountsEffect,
  CountsTest,
  InTurnDraft,
  MatchDraft,
  MixtureDraft,
  MixtureModelName,
  PairsDraft,
  RankDraft,
  waysToKnow,
} from "./counts-asked.ts";
export { countsSchema } from "./counts-schema.ts";
export { Finding, FindingLine, NextThing, RevealedGlass } from "./finding.ts";
export { AgreementFound, ClosenessFound, SetsFound } from "./found.ts";
export {
  Alcohol,
  Flight,
  FlightDraft,
  FlightMade,
  GlassNotes,
  Guess,
  NameOnOffer,
  PourList,
  RevealDraft,
  Sheet,
  SheetEdit,
  SheetTake,
  SheetTaken,
  Undersides,
} from "./flight.ts";
export {
  Currency,
  Household,
  HouseholdDraft,
  HouseholdEdit,
  Taster,
  TasterDraft,
  TasterEdit,
} from "./household.ts";
export { GlassCode, MOST_GLASSES_EACH, NameId, Ranking } from "./glass.ts";
export { Issue, Problem } from "./issue.ts";
export {
  DeviceKey,
  Guest,
  JoinAsk,
  JoinDraft,
  JoinShown,
  Joined,
  JoiningDraft,
  JoiningMade,
  JoiningRole,
  Joinings,
  Ticket,
  Watched,
} from "./joining.ts";
export { AtGlass, GlassOpened, LiveEvent, LiveKind, LiveMessage, LiveState } from "./live.ts";
export {
  DiscriminationMethod,
  FlightDesign,
  MOST_SETS,
  QuestionId,
  REFERENCE_LABEL,
  SetAnswer,
  SheetAsks,
  SheetSet,
} from "./question.ts";
export { NOTE_LONGEST, NoteObservation, NoteWhere, ReadDraft, ReadResult } from "./note.ts";
export { RestAnswer, RestDraft } from "./rest.ts";
export { Check, CheckStrength, PullRule, Rest, RestAdvice } from "./resting.ts";
export { restSchema } from "./rest-schema.ts";
export { LearnedLevel, LearnedProfile, PalateBoard, TaughtByNote } from "./palate.ts";
export { LearnedMixing, MixingBoard, MixingUsed } from "./mixing.ts";
export { NEXT_LIMITS, NextFlightAnswer, NextFlightDraft } from "./next-flight.ts";
export { lackOf, meantGlasses } from "./meant-flight.ts";
export { flightAsked, historyAsked } from "./next-asked.ts";
export { lackInWords, restsOn, tooLittleLeft } from "./next-in-words.ts";
export { TriedHistory } from "./tried-history.ts";
export { POUR_ML, poursFor } from "./flight-pours.ts";
export { nextFlightSchema } from "./next-flight-schema.ts";
export { KeptUp, NextAddition } from "./kept-up.ts";
export {
  Lineage,
  type LineageBatch,
  type LineageChange,
  type LineageVersion,
  PlayedFlight,
} from "./lineage.ts";
export { plannedTrials } from "./planned-trials.ts";
export { TrialPlan, TrialPlanDraft, TrialSet, TrialsAsked } from "./trial.ts";
export { OakDraft, OakPiece, OakResult } from "./oak.ts";
export { FlightRecord } from "./record.ts";
export {
  Recipe,
  RecipeBody,
  RecipeDraft,
  RecipeEdit,
  RecipePreview,
  RecipePreviewDraft,
  RecipeVersion,
  RecipeVersionDraft,
  Slot,
  SlotOf,
} from "./recipe.ts";
export {
  ConvertDraft,
  ConvertResult,
  DensityDraft,
  DensityResult,
  MassG,
  MixDraft,
  MixResult,
  ReduceDraft,
  ReduceResult,
} from "./reckon.ts";
export {
  EvaporatedDraft,
  EvaporatedResult,
  FillDraft,
  FillResult,
  LiftDraft,
  LiftResult,
  WeighOutDraft,
  WeighOutResult,
} from "./reckon-pouring.ts";
export {
  GaugeDraft,
  GaugeResult,
  SampleDraft,
  SampleResult,
  TemperatureDraft,
  TemperatureResult,
  WeighDraft,
  WeighResult,
} from "./reckon-reading.ts";
export { BenchCelsius, Hydrometer, Instruments, UncertainFigure } from "./instruments.ts";
export {
  routes,
  type AnswerOf,
  type BodyOf,
  type BodyRead,
  type GuestRole,
  type QueryOf,
  type QueryRead,
  type Route,
  type RouteName,
  type Routes,
  type StreamName,
} from "./routes.ts";
export { GlassStrength, SECTIONS, SheetStrength, StrengthsEdit } from "./strength.ts";
export { Profile } from "./profile.ts";
export { ShelfProblem, ShelfSearchAnswer, ShelfSearchDraft } from "./shelf-search.ts";
export {
  PurchasesAnswer,
  RulePricesAnswer,
  SearchAnswer,
  SearchRecipe,
  TradeOffAnswer,
  Traded,
} from "./search-answer.ts";
export { PurchasesDraft, TradeOffQuery } from "./search-asked.ts";
export { FILL_LIMITS, FillShelf, RecipeFillAnswer, RecipeFillDraft } from "./fill.ts";
export { fillSchema, recipeFileSchema } from "./fill-schema.ts";
export {
  FillWhiskey,
  RECIPE_FILE_TYPE,
  RECIPE_FILE_FORMAT,
  RecipeCheck,
  NamedWhiskey,
  RecipeExport,
  RecipeFile,
  Sha256,
} from "./recipe-file.ts";
export { RECIPE_LINK_LIMITS, RECIPE_LINK_PATH, readRecipeLink, writeRecipeLink } from "./recipe-link.ts";
export { type DecodedText, decodeText } from "./decode-text.ts";
export {
  type ListedRow,
  SHELF_FILE_LIMITS,
  ShelfColumn,
  ShelfListAccepted,
  ShelfListDraft,
  ShelfListPreview,
} from "./shelf-file.ts";
export { Opened, OpenDraft, OWN_ADDRESS, ShareDraft, Shared, SharedAs } from "./share.ts";
export { LoosenAnswer, LoosenAsked, LoosenDraft, ShelfLoosenAnswer } from "./loosen.ts";
export {
  type PlacesFound,
  RecipeResults,
  RecipeTakeInPreview,
  ResultMade,
  ResultPreview,
  ShelfFillAnswer,
} from "./passing.ts";
export { RESULT_FILE_FORMAT, RESULT_FILE_TYPE, ResultFile } from "./result-file.ts";
export { resultFileSchema } from "./result-schema.ts";
export { searchSchema } from "./search-schema.ts";
export {
  SEARCH_LIMITS,
  SearchIntensity,
  SearchProblem,
  SearchQuery,
  SearchRules,
  SearchTarget,
  SearchWhiskey,
} from "./search.ts";
export {
  Account,
  BottleDraft,
  Contents,
  Transfer,
  TransferAmount,
  TransferDraft,
  Vessel,
  VesselDraft,
  VesselEdit,
  VesselKind,
} from "./vessel.ts";
export { Cask, GrainShare, Whiskey, WhiskeyDraft, WhiskeyEdit, WhiskeyKind, WoodSpecies } from "./whiskey.ts";
export {
  ApartFound,
  KnownFound,
  ConfidenceFound,
  League,
  MapFound,
  MixUpsFound,
  RecipeFinding,
  ScoresFound,
  TasterFinding,
  WeighedFlight,
  WhiskeyFinding,
  WordGapsFound,
  WordsFound,
  WorthsFound,
} from "./weighed.ts";
export {
  LearnedWord,
  Meaning,
  MOST_SHEET_WORDS,
  MOST_WORDS,
  Phrase,
  PHRASE_LONGEST,
  SheetWordDraft,
  SheetWords,
  Word,
  WordDraft,
  WordForget,
  Words,
} from "./word.ts";
export { Against, ProfileBoard, ProfileLine } from "./profile-board.ts";
