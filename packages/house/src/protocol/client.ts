import { addresses } from "./addresses.ts";
import type { Issue, Problem } from "./issue.ts";
import type { AnswerOf, BodyOf, QueryOf, RouteName, StreamName } from "./routes.ts";

/** Anything shaped like `fetch`: the network, the house in this process, or a service worker's. */
export type Door = (request: Request) => Promise<Response>;

/** An answer of 400 or more, with the house's own list of issues. */
export class Refusal extends Error {
  readonly status: number;
  readonly issues: readonly Issue[];
  constructor(status: number, issues: readonly Issue[]) {
    super(issues.map((i) => i.message).join("; ") || `the house answered ${status}`);
    this.name = "Refusal";
    this.status = status;
    this.issues = issues;
  }
}

export interface Call<N extends RouteName | StreamName> {
  /** Path parameters: household, whiskey, flight, … */
  readonly at?: Readonly<Record<string, string>>;
  readonly query?: Partial<NonNullable<QueryOf<N>>>;
  readonly body?: BodyOf<N>;
  readonly token?: string;
  readonly signal?: AbortSignal;
}

export type Client = <N extends RouteName>(name: N, call?: Call<N>) => Promise<AnswerOf<N>>;

/** The one typed client. `base` is the house's address, such as http://127.0.0.1:4480. */
export function createClient(door: Door, base: string): Client {
  return async (name, call = {}) => {
    const response = await door(requestOf(name, call, base));
    const text = await response.text();
    // A text that other programs read comes as it is.
    const plain = response.headers.get("content-type")?.startsWith("text/") === true;
    if (response.ok) return (text === "" ? undefined : plain ? text : JSON.parse(text)) as never;
    throw new Refusal(response.status, issuesOf(text, response.status));
  };
}

/** A route of the table as a request. */
export function requestOf<N extends RouteName | StreamName>(name: N, call: Call<N>, base: string): Request {
  const [method, path] = addresses[name];
  const filled = path.replace(/:([a-z]+)/g, (_, key: string) => {
    const value = call.at?.[key];
    if (value === undefined) throw new Error(`route ${name} requires the path parameter ${key}, got none`);
    return encodeURIComponent(value);
  });
  const url = new URL(filled, base);
  // The schemas of the table allow only words and numbers in a query.
  const query = (call.query ?? {}) as Readonly<Record<string, string | number | undefined>>;
  for (const [key, value] of Object.entries(query)) {
    if (value !== undefined) url.searchParams.set(key, String(value));
  }
  // The last header is one that no form and no plain request of another site can send.
  const headers = new Headers({ accept: "application/json", [OWN_HEADER]: "1" });
  if (call.body !== undefined) headers.set("content-type", "application/json");
  if (call.token !== undefined) headers.set("authorization", `Bearer ${call.token}`);
  return new Request(url, {
    method,
    headers,
    ...(call.body === undefined ? {} : { body: JSON.stringify(call.body) }),
    ...(call.signal === undefined ? {} : { signal: call.signal }),
  });
}

/** A request that changes something in an owner's session bears it (rule D6). */
export const OWN_HEADER = "x-partsproof";

export function issuesOf(text: string, status: number): readonly Issue[] {
  try {
    const problem = JSON.parse(text) as Partial<Problem>;
    if (Array.isArray(problem.issues)) return problem.issues;
  } catch {
    // Not the house's own answer (a proxy's page, say): told below.
  }
  const message = `the house requires to be reached, got an answer ${status} that is not its own`;
  return [{ code: "not_the_house", path: [], limit: "an answer of the house", received: status, message }];
}
