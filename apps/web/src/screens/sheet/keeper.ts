import { type BodyOf, Refusal, type Sheet } from "@partsproof/house/protocol";
import { joinFields } from "./join-fields.ts";
import { editOf, type Fields, fieldsOf, type FieldValue, guessKey, sameValue } from "./sheet-fields.ts";

export type KeptState = "kept" | "waiting" | "keeping" | "stuck";

export interface Keeping {
  readonly sheet: Sheet;
  /** The sheet as it stands on this phone, kept or not. */
  readonly fields: Fields;
  readonly state: KeptState;
  /** Why it is stuck. */
  readonly refusal: Refusal | null;
  /** What the taster must be told, newest last. */
  readonly notices: readonly string[];
}

export interface KeeperOptions {
  readonly sheet: Sheet;
  readonly send: (edit: BodyOf<"editSheet">) => Promise<Sheet>;
  readonly reread: () => Promise<Sheet>;
  /** Told of all that is not yet kept, so that it outlives the page; null once it is. */
  readonly store: (unsaved: Unsaved | null) => void;
  /** Unsaved changes of an earlier visit to the page. */
  readonly unsaved?: Unsaved | null;
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

const MOST_REREADS = 5;

/**
 * Keeps a sheet: takes changes field by field, saves them after a pause, joins what another device wrote, tries again when
 * the house cannot be reached. Nothing typed is dropped, save a guess that another guess has made impossible, which is told.
 */
export class Keeper {
  readonly #options: KeeperOptions;
  readonly #listeners = new Set<() => void>();
  #base: Sheet;
  #baseFields: Fields;
  #mine: ReadonlyMap<string, FieldValue> = new Map();
  #refusal: Refusal | null = null;
  #notices: readonly string[] = [];
  #timer: ReturnType<typeof setTimeout> | undefined;
  #since = 0;
  #stopped = false;
  #failures = 0;
  #saving: Promise<void> | null = null;
  #seen: Keeping;

  constructor(options: KeeperOptions) {
    this.#options = options;
    this.#base = options.sheet;
    this.#baseFields = fieldsOf(options.sheet);
    const unsaved = options.unsaved ?? [];
    if (unsaved.length > 0) {
      const was = new Map(unsaved.map((one) => [one.key, one.was]));
      this.#join(was, new Map(unsaved.map((one) => [one.key, one.is])), this.#baseFields);
      this.#notices = this.#mine.size > 0 ? ["What was not saved last time is back, and being saved."] : [];
    }
    this.#seen = this.#look();
  }

  /** Begins to save what an earlier visit left unsaved. */
  start(): void {
    this.#stopped = false;
    if (this.#mine.size > 0) this.#later(0);
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
  readonly see = (): Keeping => this.#seen;

  set(key: string, value: FieldValue): void {
    const mine = new Map(this.#mine);
    if (sameValue(this.#baseFields.get(key), value) && this.#saving === null) mine.delete(key);
    else mine.set(key, value);
    if (this.#mine.size === 0) this.#since = Date.now();
    this.#mine = mine;
    this.#store();
    const { restMs = 700, longestMs = 4000 } = this.#options;
    this.#later(Math.max(0, Math.min(restMs, this.#since + longestMs - Date.now())));
    this.#tell();
  }

  /** What the house says now, asked by somebody else: a newer sheet is joined, an older one ignored. */
  offer(sheet: Sheet): void {
    if (sheet.version <= this.#base.version || this.#saving !== null) return;
    this.#rebase(sheet);
    this.#tell();
  }

  dismiss(): void {
    this.#notices = [];
    this.#tell();
  }

  /** Saves now. Whether everything is kept afterwards. */
  async flush(): Promise<boolean> {
    clearTimeout(this.#timer);
    // A save under way holds older values; what was typed since goes with the next.
    for (let turn = 0; turn < 3 && (this.#saving !== null || this.#mine.size > 0); turn += 1) {
      // oxlint-disable-next-line no-await-in-loop -- one save after the other
      await (this.#saving ?? this.#save());
      if (this.#refusal !== null) return false;
    }
    return this.#mine.size === 0;
  }

  /** No more saving: the page is left. */
  stop(): void {
    this.#stopped = true;
    clearTimeout(this.#timer);
  }

  #later(ms: number): void {
    clearTimeout(this.#timer);
    if (this.#stopped) return;
    this.#timer = setTimeout(() => void this.#save(), ms);
  }

  #save(): Promise<void> {
    clearTimeout(this.#timer);
    if (this.#saving !== null) return this.#saving;
    if (this.#mine.size === 0) return Promise.resolve();
    this.#saving = this.#trySave().finally(() => {
      this.#saving = null;
      this.#store();
      this.#tell();
      if (this.#mine.size > 0 && this.#refusal === null) this.#later(this.#options.restMs ?? 700);
    });
    this.#tell();
    return this.#saving;
  }

  async #trySave(): Promise<void> {
    for (let turn = 0; turn < MOST_REREADS && this.#mine.size > 0; turn += 1) {
      const sent = this.#mine;
      const edit = editOf(this.#all(), sent.keys(), this.#codes(), this.#base.version);
      try {
        // oxlint-disable-next-line no-await-in-loop -- each try follows from the last
        this.#kept(await this.#options.send(edit), sent);
        return;
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        if (error.issues.some(({ code }) => code === "stale_edit")) {
          // oxlint-disable-next-line no-await-in-loop -- each try follows from the last
          if (!(await this.#reread())) return;
        } else if (!this.#dropGuesses(error, edit)) {
          this.#stick(error);
          return;
        }
      }
    }
  }

  #kept(sheet: Sheet, sent: ReadonlyMap<string, FieldValue>): void {
    this.#base = sheet;
    this.#baseFields = fieldsOf(sheet);
    this.#mine = new Map([...this.#mine].filter(([key, value]) => !sameValue(sent.get(key), value)));
    this.#since = Date.now();
    this.#refusal = null;
    this.#failures = 0;
  }

  async #reread(): Promise<boolean> {
    try {
      this.#rebase(await this.#options.reread());
      return true;
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      this.#stick(error);
      return false;
    }
  }

  #rebase(sheet: Sheet): void {
    const theirs = fieldsOf(sheet);
    const had = this.#mine.size;
    const clashes = this.#join(this.#baseFields, this.#mine, theirs);
    this.#base = sheet;
    this.#baseFields = theirs;
    if (clashes.length > 0) {
      this.#note(
        "Another phone wrote in the same place. Both texts are kept; where only one can stand, yours does.",
      );
    } else if (had > 0) {
      this.#note("This sheet was also written on another phone. Both are joined.");
    }
  }

  #join(base: Fields, mine: ReadonlyMap<string, FieldValue>, theirs: Fields): readonly string[] {
    const joined = joinFields(base, mine, theirs);
    this.#mine = joined.mine;
    return joined.clashes;
  }

  /** A guess that the house refuses is taken back and told, so that it holds up nothing else. */
  #dropGuesses(error: Refusal, edit: BodyOf<"editSheet">): boolean {
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
    // The house could not be reached, or stumbled: the same change may go through later.
    if (error.status === 0 || error.status >= 500) {
      const waits = this.#options.retryMs ?? [2000, 4000, 8000, 15_000, 30_000];
      this.#later(waits[Math.min(this.#failures, waits.length - 1)] ?? 30_000);
      this.#failures += 1;
    }
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
    this.#options.store(unsaved.length === 0 ? null : unsaved);
  }

  #all(): Fields {
    return new Map([...this.#baseFields, ...this.#mine]);
  }

  #codes(): readonly string[] {
    return this.#base.glasses.map(({ code }) => code);
  }

  #look(): Keeping {
    const state: KeptState =
      this.#saving !== null
        ? "keeping"
        : this.#mine.size === 0
          ? "kept"
          : this.#refusal === null
            ? "waiting"
            : "stuck";
    return {
      sheet: this.#base,
      fields: this.#all(),
      state,
      refusal: this.#refusal,
      notices: this.#notices,
    };
  }

  #tell(): void {
    this.#seen = this.#look();
    for (const listener of this.#listeners) listener();
  }
}
