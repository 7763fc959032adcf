import type { AnswerOf, Client, RouteName } from "@partsproof/house/protocol";

interface Page {
  readonly items: readonly unknown[];
  readonly next: string | null;
}

/** Routes that answer with pages. */
type ListRoute = {
  [N in RouteName]: AnswerOf<N> extends Page ? N : never;
}[RouteName];
type ItemOf<N extends ListRoute> = AnswerOf<N>["items"][number];

/** Every item of a list, page after page. */
export async function everyItem<N extends ListRoute>(
  client: Client,
  name: N,
  at: Readonly<Record<string, string>> = {},
  query: Readonly<Record<string, string>> = {},
): Promise<readonly ItemOf<N>[]> {
  const items: ItemOf<N>[] = [];
  let cursor: string | undefined;
  do {
    const asked = { limit: 200, ...query, ...(cursor === undefined ? {} : { cursor }) };
    const page = (await client(name, { at, query: asked } as never)) as Page;
    items.push(...(page.items as ItemOf<N>[]));
    cursor = page.next ?? undefined;
  } while (cursor !== undefined);
  return items;
}
