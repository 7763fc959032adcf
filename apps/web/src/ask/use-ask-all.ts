import type { AnswerOf, Call, RouteName } from "@partsproof/house/protocol";
import { api } from "./client.ts";
import { type Asked, useAsked } from "./use-asked.ts";

/** Routes that answer in pages. */
type ListName = {
  [N in RouteName]: AnswerOf<N> extends { items: unknown[]; next: string | null } ? N : never;
}[RouteName];
type ItemOf<N extends ListName> = AnswerOf<N> extends { items: (infer T)[] } ? T : never;

/** Every item of a list, page after page. */
async function askAll<N extends ListName>(name: N, call: Call<N>): Promise<ItemOf<N>[]> {
  const items: ItemOf<N>[] = [];
  let cursor: string | null | undefined;
  do {
    const query = { ...call.query, limit: 200, ...(cursor ? { cursor } : {}) };
    const page = (await api(name, { ...call, query } as Call<N>)) as {
      items: ItemOf<N>[];
      next: string | null;
    };
    items.push(...page.items);
    cursor = page.next;
  } while (cursor !== null);
  return items;
}

/** As `useAsk`, for a list whole. */
export function useAskAll<N extends ListName>(name: N, call: Call<N> | null): Asked<ItemOf<N>[]> {
  const key = call === null ? null : JSON.stringify(["all", name, call.at, call.query]);
  return useAsked(key, (signal) => askAll(name, { ...call, signal }));
}
