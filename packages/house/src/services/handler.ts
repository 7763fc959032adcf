import type { AnswerOf, BodyRead, QueryRead, RouteName } from "../protocol/index.ts";
import type { House } from "./ports.ts";

/** What a service is given: path parameters, query and body as read by the schemas, and the bearer token if one came. */
export interface Asked<N extends RouteName> {
  readonly house: House;
  readonly at: Readonly<Record<string, string>> & { readonly household: string };
  readonly query: QueryRead<N>;
  readonly body: BodyRead<N>;
  readonly token: string | null;
}

export type Handler<N extends RouteName> = (asked: Asked<N>) => Promise<AnswerOf<N>>;
export type Handlers<N extends RouteName = RouteName> = { readonly [K in N]: Handler<K> };
