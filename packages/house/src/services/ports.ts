import type { Searching } from "./searching.ts";
import type { HouseTableName, HouseTables, TableName, Tables } from "./rows.ts";

/**
 * `serializable`: as if one after the other. `snapshot`: all is read as of one moment, and of two that write the same
 * row the second fails; enough where what was read and matters is also written, and then neighbours do not meet.
 */
export type Isolation = "serializable" | "snapshot";

/** What the house needs from a database. Implemented by `store`, in SQLite and PostgreSQL alike. */
export interface Store {
  readonly database: "sqlite" | "postgresql";
  /**
   * Runs `work` in one serializable transaction: all of it is kept, or none.
   * `work` may run again if the database asks for a retry, so it must touch nothing outside `records`.
   */
  transaction<T>(work: (records: Records) => Promise<T>, isolation?: Isolation): Promise<T>;
  /** Reads outside of any transaction: what one question finds may have changed by the next. Waits for nobody. */
  read<T>(work: (records: Reads) => Promise<T>): Promise<T>;
  close(): Promise<void>;
}

/** Fields a list may be filtered by: strict equality, all of them together. */
export type Where<R> = { readonly [K in keyof R]?: R[K] & (string | number | boolean | null) };

export interface ListQuery<R> {
  readonly where?: Where<R>;
  /** Only the rows with these ids; of none, none. */
  readonly ids?: readonly string[];
  /** Rows strictly after this id in the order asked. */
  readonly after?: string;
  readonly limit?: number;
  readonly newestFirst?: boolean;
}

/** Rows are only reached with the household they belong to. Order is by id, that is by birth. */
export interface Records {
  find<N extends TableName>(table: N, householdId: string, id: string): Promise<Tables[N] | null>;
  list<N extends TableName>(
    table: N,
    householdId: string,
    query?: ListQuery<Tables[N]>,
  ): Promise<readonly Tables[N][]>;
  insert<N extends TableName>(table: N, row: Tables[N]): Promise<void>;
  /** Replaces the row if its stored version is `row.version - 1`; false when it is not (a stale edit) or is gone. */
  replace<N extends TableName>(table: N, row: Tables[N]): Promise<boolean>;
  remove(table: TableName, householdId: string, id: string): Promise<boolean>;
  /** All rows of the household in every table, children first. */
  removeHousehold(householdId: string): Promise<void>;
  /** The households of this house; the one list that crosses households. */
  households(query?: ListQuery<Tables["household"]>): Promise<readonly Tables["household"][]>;
  /** Next number of the household's ledger; never given twice. */
  nextSeq(householdId: string): Promise<number>;
  readonly ofHouse: HouseRecords;
}

/** The reading half of `Records`. */
export type Reads = Pick<Records, "find" | "list" | "households"> & {
  readonly ofHouse: Pick<HouseRecords, "list">;
};

/** Rows of the house itself: who may come in, and who did. */
export interface HouseRecords {
  list<N extends HouseTableName>(
    table: N,
    query?: ListQuery<HouseTables[N]>,
  ): Promise<readonly HouseTables[N][]>;
  insert<N extends HouseTableName>(table: N, row: HouseTables[N]): Promise<void>;
  replace<N extends HouseTableName>(table: N, row: HouseTables[N]): Promise<boolean>;
  remove(table: HouseTableName, id: string): Promise<boolean>;
}

/** The owner's passphrase under a memory-hard hash, which only the platform can compute. */
export interface Passphrases {
  readonly hash: (passphrase: string) => Promise<string>;
  /** Takes as long where nothing is stored. */
  readonly fits: (passphrase: string, stored: string | null) => Promise<boolean>;
}

export interface Clock {
  /** UTC now. */
  now(): Date;
}

export interface Random {
  /** Cryptographically strong bytes. */
  bytes(count: number): Uint8Array;
}

/** Everything a service may use. */
export interface House {
  readonly store: Store;
  readonly clock: Clock;
  readonly random: Random;
  /** 32 bytes kept outside the database; flight keys are encrypted under it until the reveal. */
  readonly sealKey: Uint8Array;
  /** SHA-256 (FIPS 180-4) of whole bytes, at once: what is promised is chained in the middle of a transaction. */
  readonly sha256: (bytes: Uint8Array) => Uint8Array;
  /** None where nobody can sign in, as in a house opened in this process. */
  readonly passphrases?: Passphrases;
  /** Threads that searches run in; none where a search may keep this one busy. */
  readonly searching?: Searching;
}
