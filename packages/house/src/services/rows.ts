import type {
  Account,
  BatchReduction,
  Cask,
  CheckStrength,
  FlightDesign,
  GrainShare,
  GlassNotes,
  OakPiece,
  Profile,
  PullRule,
  RecipeVersion,
  SetAnswer,
  SheetStrength,
  StatedStrength,
  StrengthsEdit,
  TransferAmount,
  TrialPlan,
  TrialsAsked,
} from "../protocol/index.ts";

/** Every stored row: whose it is, which one, which version of it. */
export interface Row {
  readonly id: string;
  readonly householdId: string;
  readonly version: number;
  readonly createdAt: string;
  readonly updatedAt: string;
}

export interface HouseholdRow extends Row {
  /** Equal to `id`: a household belongs to itself. */
  readonly name: string;
  readonly currency: string;
  readonly demo: boolean;
}

export interface TasterRow extends Row {
  readonly name: string;
  /** Made for a seat of one flight; not listed among those who taste here. */
  readonly guest: boolean;
}

export interface WhiskeyRow extends Row {
  readonly maker: string;
  readonly name: string;
  readonly release: string;
  readonly kind: string;
  readonly strength: StatedStrength;
  readonly ageYears: number | null;
  readonly grains: readonly GrainShare[] | null;
  readonly casks: readonly Cask[];
  readonly distilledAt: string | null;
  readonly place: string | null;
  readonly priceMinor: number | null;
  readonly bottleMl: number;
  readonly availability: string;
  readonly note: string;
  readonly profile: Profile | null;
}

export interface VesselRow extends Row {
  readonly kind: string;
  readonly label: string;
  readonly capacityMl: number;
  readonly whiskeyId: string | null;
  readonly batchId: string | null;
  readonly priceMinor: number | null;
  readonly openedAt: string | null;
}

/** The ledger's entry. `liquid` holds the masses of what came in from outside; null when it came out of a vessel. */
export interface TransferRow extends Row {
  readonly seq: number;
  readonly at: string;
  readonly from: Account;
  readonly to: Account;
  readonly amount: TransferAmount;
  readonly liquid: {
    readonly liquidId: string;
    readonly ethanolG: number;
    readonly waterG: number;
    readonly cost: number | null;
  } | null;
  readonly batchId: string | null;
  readonly flightId: string | null;
  readonly note: string;
  readonly undoneAt: string | null;
}

export interface RecipeRow extends Row {
  readonly name: string;
  readonly targetWhiskeyId: string | null;
  readonly latestNumber: number;
}

export interface RecipeVersionRow extends Row {
  readonly recipeId: string;
  readonly number: number;
  readonly body: Omit<RecipeVersion, "number" | "createdAt">;
}

/** A recipe file that came in or went out, or a result that was sent back: what was passed on of a recipe, and which way. */
export interface PassedFileRow extends Row {
  readonly recipeId: string;
  /** The recipe's version that it came in as, or went out of; of a result, the latest when it came. */
  readonly number: number;
  readonly way: "in" | "out" | "back";
  /** Of the canonical form, in hexadecimal. */
  readonly sha256: string;
  /** The canonical form; null of what went out, which can be written again. As text, so that ids of other houses stay what they are. */
  readonly text: string | null;
}

export interface BatchRow extends Row {
  readonly name: string;
  readonly recipeId: string;
  readonly recipeNumber: number;
  readonly vesselId: string;
  readonly madeAt: string;
  readonly restDays: number | null;
  readonly finishedAt: string | null;
  readonly note: string;
  /** Water in steps over days, begun when it was asked for; null where there is none. */
  readonly reduction: BatchReduction | null;
}

/** Small mixes that were planned, and the vials they were poured into. */
export interface TrialSetRow extends Row {
  readonly name: string;
  readonly asked: TrialsAsked;
  readonly plan: TrialPlan;
  /** Trials are counted from 1. */
  readonly made: readonly { readonly trial: number; readonly vesselId: string }[];
  readonly madeAt: string | null;
  readonly note: string;
}

/** A batch's time on glass or on oak. */
export interface RestRow extends Row {
  readonly batchId: string;
  readonly kind: string;
  readonly beganAt: string;
  readonly pull: PullRule | null;
  readonly leadsAt: number | null;
  readonly falling: readonly PullRule["attribute"][];
  readonly celsius: number | null;
  /** Of the batch when the rest began. */
  readonly abv20: number | null;
  /** A day of the calendar. */
  readonly flightOn: string | null;
  readonly note: string;
  /** The vial that was filled from the batch before. */
  readonly sampleVesselId: string | null;
  readonly endedAt: string | null;
  /** Lost in filtering; the ledger has it too. */
  readonly lossMl: number | null;
}

/** Wood in the vessel of a batch's rest. */
export interface OakPieceRow extends Row {
  readonly restId: string;
  readonly piece: OakPiece | null;
  readonly count: number;
  /** Of all of them. */
  readonly areaCm2: number;
  /** As weighed, all of them. */
  readonly grams: number | null;
  readonly species: string;
  readonly toast: string;
  readonly use: number;
  /** What the vessel held when it went in, mL at 20 °C. */
  readonly volumeMl: number;
  readonly inAt: string;
  readonly outAt: string | null;
}

/** What somebody tasted of a batch during its rest, as it was written. */
export interface CheckTastingRow extends Row {
  readonly restId: string;
  readonly tasterId: string | null;
  readonly at: string;
  readonly notes: { readonly nose: string; readonly palate: string; readonly finish: string };
  readonly strengths: readonly CheckStrength[];
}

/** A secret address of the household's calendar. The link itself is kept as a keyed hash. */
export interface CalendarLinkRow extends Row {
  readonly label: string;
  /** IANA name of the clock whose days are told. */
  readonly zone: string;
  readonly linkHash: string;
  readonly revokedAt: string | null;
}

/** Never holds what is in which glass: that is `FlightKeyRow`. */
export interface FlightRow extends Row {
  readonly name: string;
  readonly pouring: string;
  readonly state: string;
  readonly glassCount: number;
  readonly pourMl: number;
  readonly namesOnOffer: readonly {
    readonly nameId: string;
    readonly label: string;
    readonly count: number;
  }[];
  readonly targetNameId: string | null;
  readonly pourer: string | null;
  readonly marks: readonly {
    readonly mark: string;
    readonly nameId: string;
    readonly label: string;
    readonly vesselId: string;
  }[];
  /** Kept back on each vessel that a name on offer could come from, the same for names that are in no glass. */
  readonly holds: readonly { readonly vesselId: string; readonly ml: number }[];
  readonly alcoholAtMostG: number;
  readonly hostTokenHash: string;
  readonly pourerTokenHash: string | null;
  readonly pouredAt: string | null;
  readonly revealedAt: string | null;
  /** SHA-256 over the key and a nonce, public from the setting on; null for flights set before there was one. */
  readonly commitment: string | null;
  /** One digest over all sheets, made when the last of them was shut; null before. */
  readonly closing: {
    readonly closedAt: number;
    readonly heads: readonly { readonly sheet: string; readonly entries: number; readonly hash: string }[];
    readonly hash: string;
  } | null;
  readonly question: string;
  /** How the glasses are laid out; null for flights from before there was more than one way. */
  readonly design: FlightDesign | null;
}

/** The key under seal. `sealed` is ciphertext until the reveal, `opened` its plain text after. */
export interface FlightKeyRow extends Row {
  readonly flightId: string;
  readonly sealed: string | null;
  readonly opened: FlightKey | null;
}

export interface FlightKey {
  /** The glasses of the flight; the index is the glass number. `ethanolG` is in one taster's glass. */
  readonly glasses: readonly {
    readonly vesselId: string;
    readonly nameId: string;
    readonly label: string;
    readonly ethanolG: number;
  }[];
  /** For each sheet, the glass number behind each code in the order to taste; the set where there are sets. */
  readonly codes: readonly {
    readonly sheetId: string;
    readonly code: string;
    readonly glass: number;
    readonly set?: number;
  }[];
  /** Paired comparison: the glass that the host took to have more, said before. */
  readonly expected?: number;
  /** What the design left unbalanced, as far as it tells something of the glasses. */
  readonly said?: readonly string[];
  /** What the commitment was made with, and what each sheet's chain stands on; not for flights without a commitment. */
  readonly nonce?: string;
  readonly salts?: readonly { readonly sheetId: string; readonly salt: string }[];
}

/** What a glass was taken for, and how sure, in per cent, where that was said. */
export interface SheetGuess {
  readonly code: string;
  readonly nameId: string | null;
  readonly sure?: number | undefined;
}

export interface SheetRow extends Row {
  readonly flightId: string;
  readonly tasterId: string;
  readonly state: string;
  readonly tokenHash: string | null;
  /** Codes in the order to taste. */
  readonly order: readonly string[];
  readonly notes: readonly GlassNotes[];
  readonly guesses: readonly SheetGuess[];
  readonly ranking: readonly (readonly string[])[] | null;
  /** Alone: the mark under each place, after the lock. */
  readonly undersides: readonly { readonly place: number; readonly mark: string }[] | null;
  readonly lockedAt: string | null;
  /** The number of the last entry written on it. */
  readonly entries: number;
  /** Set by set, in their order; only those answered. */
  readonly answers: readonly SetAnswer[];
  readonly strengths: readonly SheetStrength[];
  /** Who typed in the last of it that came from paper. */
  readonly typedBy: string | null;
}

/** What was written on a sheet at one moment. Never changed afterwards: the sheet is what its entries come to. */
export interface EntryRow extends Row {
  readonly flightId: string;
  readonly sheetId: string;
  /** 1, 2, … on each sheet. */
  readonly number: number;
  /** Drawn by the device that wrote it: a write sent again has the same. */
  readonly key: string;
  readonly kind: string;
  readonly written: {
    readonly notes?: readonly GlassNotes[];
    readonly guesses?: readonly SheetGuess[];
    readonly ranking?: readonly (readonly string[])[] | null;
    readonly answers?: readonly SetAnswer[];
    readonly strengths?: StrengthsEdit;
    readonly typedBy?: string;
  };
  /** Of this entry and the one before it. */
  readonly hash: string | null;
}

/** What somebody said that they mean by a phrase. Never changed: the vocabulary is what these come to, the latest last. */
export interface TaughtWordRow extends Row {
  /** 1, 2, … in each household, in the order taught. */
  readonly number: number;
  /** Folded (core `phraseOf`). */
  readonly phrase: string;
  /** An attribute, or "nothing"; null where the phrase was forgotten again. */
  readonly means: string | null;
  /** Who taught it; null for the household itself. */
  readonly tasterId: string | null;
  /** The sheet it was taught on; null where it was taught in the household's own place. */
  readonly flightId: string | null;
  readonly sheetId: string | null;
  /** Drawn by the device that taught it, on a sheet: sent again it is the same. */
  readonly key: string | null;
}

/** A way into a flight that its host has opened for one role. The link and the code are kept as keyed hashes. */
export interface JoiningRow extends Row {
  readonly flightId: string;
  readonly role: string;
  readonly linkHash: string;
  readonly codeHash: string | null;
  readonly expiresAt: string;
  readonly closedAt: string | null;
}

/** Somebody at the table who came in by a joining: their role, seat and token. */
export interface GuestRow extends Row {
  readonly flightId: string;
  readonly joiningId: string;
  readonly role: string;
  readonly sheetId: string | null;
  readonly name: string;
  readonly tokenHash: string;
  /** Of the key the phone drew, so that a request sent again is the same guest. */
  readonly keyHash: string;
  readonly ofLegalAgeAt: string;
  readonly revokedAt: string | null;
}

/** The number of a flight's last live event. Its id is the flight's. */
export interface LiveCountRow extends Row {
  readonly seq: number;
}

/** Something that happened at the table, nothing about content. */
export interface LiveEventRow extends Row {
  readonly flightId: string;
  readonly seq: number;
  readonly kind: string;
  readonly sheetId: string | null;
  readonly number: number | null;
}

/** Table name to row. The store keeps one real table for each. */
export interface Tables {
  readonly household: HouseholdRow;
  readonly taster: TasterRow;
  readonly whiskey: WhiskeyRow;
  readonly vessel: VesselRow;
  readonly transfer: TransferRow;
  readonly recipe: RecipeRow;
  readonly recipeVersion: RecipeVersionRow;
  readonly passedFile: PassedFileRow;
  readonly batch: BatchRow;
  readonly trialSet: TrialSetRow;
  readonly rest: RestRow;
  readonly oakPiece: OakPieceRow;
  readonly checkTasting: CheckTastingRow;
  readonly calendarLink: CalendarLinkRow;
  readonly flight: FlightRow;
  readonly flightKey: FlightKeyRow;
  readonly sheet: SheetRow;
  readonly entry: EntryRow;
  readonly taughtWord: TaughtWordRow;
  readonly joining: JoiningRow;
  readonly guest: GuestRow;
  readonly liveCount: LiveCountRow;
  readonly liveEvent: LiveEventRow;
}
export type TableName = keyof Tables;

/** A row of the house itself, of no household. */
export type HouseRow = Omit<Row, "householdId">;

/** The owner of the house. There is one at most. */
export interface OwnerRow extends HouseRow {
  /** The passphrase under a memory-hard hash, with its parameters and salt. */
  readonly passphrase: string;
}

export interface SessionRow extends HouseRow {
  readonly tokenHash: string;
  readonly usedAt: string;
  readonly expiresAt: string;
  readonly address: string;
}

/** What the owner may want to know afterwards. Never a secret, never what somebody typed. */
export interface TrailRow extends HouseRow {
  readonly what: string;
  readonly address: string | null;
  readonly aboutHousehold: string | null;
  readonly aboutFlight: string | null;
}

/** Tables of the house itself. No export holds them. */
export interface HouseTables {
  readonly owner: OwnerRow;
  readonly session: SessionRow;
  readonly trail: TrailRow;
}
export type HouseTableName = keyof HouseTables;
