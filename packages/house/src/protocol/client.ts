import type { Issue, Problem } from "./issue.ts";
import { type AnswerOf, type BodyOf, type QueryOf, type RouteName, routes } from "./routes.ts";

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

export interface Call<N extends RouteName> {
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
    const { method, path } = routes[name];
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
    const headers = new Headers({ accept: "application/json" });
    if (call.body !== undefined) headers.set("content-type", "application/json");
    if (call.token !== undefined) headers.set("authorization", `Bearer ${call.token}`);
    const response = await door(
      new Request(url, {
        method,
        headers,
        ...(call.body === undefined ? {} : { body: JSON.stringify(call.body) }),
        ...(call.signal === undefined ? {} : { signal: call.signal }),
      }),
    );
    const text = await response.text();
    if (response.ok) return (text === "" ? undefined : JSON.parse(text)) as never;
    throw new Refusal(response.status, issuesOf(text, response.status));
  };
}

function issuesOf(text: string, status: number): readonly Issue[] {
  try {
    const problem = JSON.parse(text) as Partial<Problem>;
    if (Array.isArray(problem.issues)) return problem.issues;
  } catch {
    // Not the house's own answer (a proxy's page, say): told below.
  }
  const message = `the house requires to be reached, got an answer ${status} that is not its own`;
  return [{ code: "not_the_house", path: [], limit: "an answer of the house", received: status, message }];
}
