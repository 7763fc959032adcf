import { type BodyOf, type Entry, Refusal, type Sheet } from "@partsproof/house/protocol";
import type { z } from "zod";
import { type Clash, clashOf, type Choice, chosen } from "./clash.ts";
import { editOf, type Fields, fieldsOf, type FieldValue, guessKey, sameValue } from "./sheet-fields.ts";

export type KeptState = "kept" | "waiting" | "keeping" | "stuck" | "clash";
type EntryBody = BodyOf<"addEntry">;

export interface Keeping {
  readonly sheet: Sheet;
  /** The sheet as it stands on this phone, kept or not. */
  readonly fields: Fields;
  readonly state: KeptState;
  /** Why it is stuck. */
  readonly refusal: Refusal | null;
  /** What the taster must be told, newest last. */
  readonly notices: readonly string[];
  /** What another device wrote meanwhile; nothing is sent until the taster has chosen. */
  readonly clash: Clash | null;
}

export interface KeeperOptions {
  readonly sheet: Sheet;
  readonly send: (
    entry: EntryBody,
  ) => Promise<{ readonly sheet: Sheet; readonly entry: z.infer<typeof Entry> }>;
  readonly reread: () => Promise<Sheet>;
  /** Told of all that the house has not confirmed, so that it outlives the page; null once it has. */
  readonly store: (outbox: Outbox | null) => void;
  /** What an earlier visit to the page left. */
  readonly load?: () => Promise<Outbox | null>;
  /** Who types this in from paper; left out where the taster writes. */
  readonly typedBy?: string;
  /** A key that no other entry has. */
  readonly drawKey: () => string;
  /** Told of each entry that the house accepted. */
  readonly accepted?: (entry: z.infer<typeof Entry>) => void;
  /** Milliseconds without a change before it saves. */
  readonly restMs?: number;
  /** Milliseconds that typing without a pause can put a save off. */
  readonly longestMs?: number;
  readonly retryMs?: readonly number[];
}

/** Changed fields, each with the value it had when it was read. */
export type Unsaved = readonly {
  readonly key: string;
  readonly was: FieldValue;
  readonly is: FieldValue;
}[];

/** An entry on its way: sent again under the same key until the house answers, so that it is written once. */
interface Sent {
  readonly body: EntryBody;
  readonly fields: readonly (readonly [key: string, value: FieldValue])[];
}

export interface Outbox {
  readonly unsaved: Unsaved;
  readonly sent: Sent | null;
}

const MOST_TURNS = 5;

/**
 * Keeps a sheet: takes changes field by field, stores them on the phone, sends them as entries after a pause, and sends again
 * under the same key when the house cannot be reached. What another device wrote meanwhile is shown and never merged. Nothing
 * typed is dropped, save a guess that another guess has made impossible, which is told.
 */
export class Keeper {
  readonly #options: KeeperOptions;
  readonly #listeners = new Set<() => void>();
  #base: Sheet;
  #baseFields: Fields;
  #mine: ReadonlyMap<string, FieldValue> = new Map();
  #sent: Sent | null = null;
  #clash: Clash | null = null;
  #refusal: Refusal | null = null;
  #notices: readonly string[] = [];
  #timer: ReturnType<typeof setTimeout> | undefined;
  #since = 0;
  #stopped = false;
  #failures = 0;
  #loaded: Promise<void> | null = null;
  #saving: Promise<void> | null = null;
  #seen: Keeping;

  constructor(options: KeeperOptions) {
    this.#options = options;
    this.#base = options.sheet;
    this.#baseFields = fieldsOf(options.sheet);
    this.#seen = this.#look();
  }

  /** Takes up what an earlier visit left, and begins to send it. */
  start(): void {
    this.#stopped = false;
    void this.#load().then(() => {
      if (this.#open()) this.#later(0);
    });
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
  readonly see = (): Keeping => this.#seen;

  set(key: string, value: FieldValue): void {
    const mine = new Map(this.#mine);
    if (sameValue(this.#baseFields.get(key), value) && this.#sent === null) mine.delete(key);
    else mine.set(key, value);
    if (this.#mine.size === 0) this.#since = Date.now();
    this.#mine = mine;
    this.#store();
    const { restMs = 700, longestMs = 4000 } = this.#options;
    this.#later(Math.max(0, Math.min(restMs, this.#since + longestMs - Date.now())));
    this.#tell();
  }

  /** What the house says now, asked by somebody else. Newer entries that are not of this device are a clash with what is. */
  offer(sheet: Sheet): void {
    // An entry on its way may be the newer one: its answer tells.
    if (sheet.version <= this.#base.version || this.#saving !== null || this.#sent !== null) return;
    this.#meet(sheet, sheet.entries > this.#base.entries);
    this.#tell();
  }

  dismiss(): void {
    this.#notices = [];
    this.#tell();
  }

  /** The taster's choice, once two devices wrote on one sheet. */
  choose(choice: Choice): void {
    if (this.#clash === null) return;
    this.#mine = chosen(this.#clash, choice, this.#mine);
    this.#clash = null;
    this.#refusal = null;
    this.#store();
    this.#later(0);
    this.#tell();
  }

  /** Sends now. Whether the house has everything afterwards. */
  async flush(): Promise<boolean> {
    clearTimeout(this.#timer);
    await this.#load();
    // An entry under way holds older values; what was typed since goes with the next.
    for (let turn = 0; turn < MOST_TURNS && (this.#saving !== null || this.#open()); turn += 1) {
      // oxlint-disable-next-line no-await-in-loop -- one entry after the other
      await (this.#saving ?? this.#save());
      if (this.#refusal !== null || this.#clash !== null) return false;
    }
    return this.#mine.size === 0 && this.#sent === null && this.#clash === null;
  }

  /** No more sending: the page is left. */
  stop(): void {
    this.#stopped = true;
    clearTimeout(this.#timer);
  }

  #open(): boolean {
    return this.#clash === null && (this.#mine.size > 0 || this.#sent !== null);
  }

  #load(): Promise<void> {
    this.#loaded ??= (async () => {
      const outbox = await this.#options.load?.();
      if (!outbox) return;
      this.#sent = outbox.sent;
      const typed = this.#mine;
      const was = new Map([...this.#baseFields, ...outbox.unsaved.map((one) => [one.key, one.was] as const)]);
      this.#mine = new Map([...outbox.unsaved.map((one) => [one.key, one.is] as const), ...typed]);
      if (this.#mine.size > 0 || this.#sent !== null) {
        this.#note("What was written without the house is back, and being sent.");
      }
      // With an entry on its way the house may have what this phone takes for unsent.
      if (this.#sent === null) this.#clash = clashOf(was, this.#mine, this.#base, "same field");
      this.#tell();
    })();
    return this.#loaded;
  }

  #later(ms: number): void {
    clearTimeout(this.#timer);
    if (this.#stopped || this.#clash !== null) return;
    this.#timer = setTimeout(() => void this.#save(), ms);
  }

  #save(): Promise<void> {
    clearTimeout(this.#timer);
    if (this.#saving !== null) return this.#saving;
    if (!this.#open()) return Promise.resolve();
    this.#saving = this.#load()
      .then(() => this.#trySave())
      .finally(() => {
        this.#saving = null;
        this.#store();
        this.#tell();
        if (this.#open() && this.#refusal === null) this.#later(this.#options.restMs ?? 700);
      });
    this.#tell();
    return this.#saving;
  }

  #next(): Sent {
    const fields = [...this.#mine];
    const written = editOf(
      this.#all(),
      fields.map(([key]) => key),
      this.#base.glasses.map(({ code }) => code),
    );
    const { drawKey, typedBy } = this.#options;
    return {
      fields,
      body: {
        key: drawKey(),
        after: this.#base.entries,
        ...written,
        ...(typedBy === undefined ? {} : { typedBy }),
      },
    };
  }

  async #trySave(): Promise<void> {
    for (let turn = 0; turn < MOST_TURNS && this.#open(); turn += 1) {
      const sent = this.#sent ?? this.#next();
      this.#sent = sent;
      // Stored before it is sent: an answer that is lost with the page finds the key again.
      this.#store();
      try {
        // oxlint-disable-next-line no-await-in-loop -- each try follows from the last
        const { sheet, entry } = await this.#options.send(sent.body);
        this.#kept(sheet, sent);
        this.#options.accepted?.(entry);
        return;
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        if (isPassing(error)) {
          this.#stick(error);
          return;
        }
        this.#sent = null;
        if (error.issues.some(({ code }) => code === "entry_conflict")) {
          // oxlint-disable-next-line no-await-in-loop -- each try follows from the last
          if (!(await this.#reread())) return;
        } else if (!this.#dropGuesses(error, sent.body)) {
          this.#stick(error);
          return;
        }
      }
    }
  }

  #kept(sheet: Sheet, { fields, body }: Sent): void {
    const sent = new Map(fields);
    const others = sheet.entries > body.after + 1;
    this.#sent = null;
    this.#mine = new Map([...this.#mine].filter(([key, value]) => !sameValue(sent.get(key), value)));
    this.#since = Date.now();
    this.#refusal = null;
    this.#failures = 0;
    const seen = new Map([...this.#baseFields, ...sent]);
    this.#base = sheet;
    this.#baseFields = fieldsOf(sheet);
    // The answer to an entry sent again may tell of entries that came since from elsewhere.
    if (others) this.#clash = clashOf(seen, this.#mine, sheet, "any field");
  }

  async #reread(): Promise<boolean> {
    try {
      this.#meet(await this.#options.reread(), true);
      return true;
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      this.#stick(error);
      return false;
    }
  }

  #meet(sheet: Sheet, written: boolean): void {
    if (written) this.#clash = clashOf(this.#baseFields, this.#mine, sheet, "any field");
    this.#base = sheet;
    this.#baseFields = fieldsOf(sheet);
  }

  /** A guess that the house refuses is taken back and told, so that it holds up nothing else. */
  #dropGuesses(error: Refusal, edit: EntryBody): boolean {
    const wrong = error.issues.filter(({ path }) => path[0] === "guesses" && typeof path[1] === "number");
    if (error.status !== 422 || wrong.length === 0 || wrong.length < error.issues.length) return false;
    const mine = new Map(this.#mine);
    for (const { path, message } of wrong) {
      const code = edit.guesses?.[Number(path[1])]?.code;
      if (code === undefined) return false;
      mine.delete(guessKey(code));
      this.#note(`The guess for glass ${code} is taken back: ${message}.`);
    }
    this.#mine = mine;
    return true;
  }

  #stick(error: Refusal): void {
    this.#refusal = error;
    if (!isPassing(error)) return;
    const waits = this.#options.retryMs ?? [2000, 4000, 8000, 15_000, 30_000];
    this.#later(waits[Math.min(this.#failures, waits.length - 1)] ?? 30_000);
    this.#failures += 1;
  }

  #note(notice: string): void {
    if (!this.#notices.includes(notice)) this.#notices = [...this.#notices, notice];
  }

  #store(): void {
    const unsaved = [...this.#mine].map(([key, is]) => ({
      key,
      was: this.#baseFields.get(key) ?? null,
      is,
    }));
    this.#options.store(unsaved.length === 0 && this.#sent === null ? null : { unsaved, sent: this.#sent });
  }

  #all(): Fields {
    return new Map([...this.#baseFields, ...this.#mine]);
  }

  #look(): Keeping {
    return {
      sheet: this.#base,
      fields: this.#all(),
      state: this.#state(),
      refusal: this.#refusal,
      notices: this.#notices,
      clash: this.#clash,
    };
  }

  #state(): KeptState {
    if (this.#clash !== null) return "clash";
    if (this.#refusal !== null && (this.#mine.size > 0 || this.#sent !== null)) return "stuck";
    if (this.#saving !== null) return "keeping";
    return this.#open() ? "waiting" : "kept";
  }

  #tell(): void {
    this.#seen = this.#look();
    for (const listener of this.#listeners) listener();
  }
}

/** The house could not be reached, stumbled, or asked for patience: the same entry may go through later. */
const isPassing = ({ status }: Refusal): boolean => status === 0 || status === 429 || status >= 500;
