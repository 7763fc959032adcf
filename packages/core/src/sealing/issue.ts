/** One thing wrong with something from outside. */
export interface Issue {
  readonly code: string;
  readonly path: readonly (string | number)[];
  readonly limit: string | number | null;
  readonly received: string | number | null;
  readonly message: string;
}
