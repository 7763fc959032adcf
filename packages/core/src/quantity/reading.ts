/** Why a text could not be taken as a quantity. The caller adds the path of the field it came from. */
export type Unreadable = {
  readonly code: string;
  readonly limit: string;
  readonly received: string;
  readonly message: string;
};

/** What reading a text gives: the value, or why not. Reading never throws. */
export type Reading<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly issue: Unreadable };

/** Makes the "no" of a reading; the received text is cut so that a pasted page does not come back whole. */
export function unreadable(what: string, code: string, limit: string, text: string): Reading<never> {
  const received = text.length > 60 ? `${text.slice(0, 60)}…` : text;
  const message = `${what} requires ${limit}, got ${received.trim() === "" ? "nothing" : `"${received}"`}`;
  return { ok: false, issue: { code, limit, received, message } };
}
