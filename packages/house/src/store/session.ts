/** One transaction's use of its connection. */
export interface Session {
  run<T>(query: () => Promise<T>): Promise<T>;
  /** Ends the use. Throws the first failure of a query, even one that `work` caught. */
  close(): Promise<void>;
}

/**
 * Queries of one transaction, one after the other. A transaction in which a statement failed is never committed:
 * PostgreSQL would not keep it, SQLite would keep the rest. After its end it cannot be used, so that a forgotten
 * `await` cannot write outside of any transaction.
 */
export function openSession(): Session {
  let line: Promise<unknown> = Promise.resolve();
  let closed = false;
  let failed: { readonly error: unknown } | null = null;
  return {
    run: async <T>(query: () => Promise<T>): Promise<T> => {
      if (closed) throw new Error("records require a transaction that is still open, got one that has ended");
      const turn = line.then(async () => {
        if (failed) throw failed.error;
        try {
          return await query();
        } catch (error) {
          failed ??= { error };
          throw error;
        }
      });
      line = turn.catch(() => undefined);
      return await turn;
    },
    close: async () => {
      closed = true;
      await line;
      if (failed) throw failed.error;
    },
  };
}
