import type { AnswerOf, Call, RouteName } from "@partsproof/house/protocol";
import { api } from "./client.ts";
import { type Asked, useAsked } from "./use-asked.ts";

/** Asks the house by a route's name. A null `call` waits: nothing is asked until there is one. */
export function useAsk<N extends RouteName>(name: N, call: Call<N> | null): Asked<AnswerOf<N>> {
  const key = call === null ? null : JSON.stringify([name, call.at, call.query, call.body, call.token]);
  return useAsked(key, (signal) => api(name, { ...call, signal }));
}
