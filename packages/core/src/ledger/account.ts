/** Where liquid comes in from. Nothing is ever poured back into a source. */
export const SOURCES = ["shop", "tap"] as const;
/** Where liquid goes for good. Nothing is ever poured back out of a sink. */
export const SINKS = ["glass", "drain", "air"] as const;

export type Source = (typeof SOURCES)[number];
export type Sink = (typeof SINKS)[number];

/**
 * One side of a transfer. Outside accounts make the entry double: a source runs into debt by what it gave,
 * a sink gathers what it took, so that all accounts together always hold nothing.
 * A glass that is weighed, rested or topped up is a vessel; the outside `glass` is liquid that was drunk.
 */
export type Account =
  | { readonly kind: "vessel"; readonly vesselId: string }
  | { readonly kind: "outside"; readonly name: Source | Sink };

export function accountKey(account: Account): string {
  return account.kind === "vessel" ? `vessel:${account.vesselId}` : `outside:${account.name}`;
}

export const isSource = (account: Account): boolean =>
  account.kind === "outside" && SOURCES.some((name) => name === account.name);
export const isSink = (account: Account): boolean =>
  account.kind === "outside" && SINKS.some((name) => name === account.name);
