import type { AnswerOf, Refusal, RouteName, SharedAs } from "@partsproof/house/protocol";
import { useEffect, useState } from "react";
import { api, asRefusal } from "../../api.ts";

export type Shared = AnswerOf<"shareRecipe">;

export interface Asked {
  readonly household: string;
  readonly recipe: string;
  readonly withNote: boolean;
  readonly credits: readonly string[];
  readonly bottleMl: number;
}

export interface Passing {
  readonly file: AnswerOf<"exportRecipe">;
  readonly card: Shared;
  /** Null where the link is too long for one. */
  readonly square: Shared | null;
  /** The same recipe in another form. */
  readonly as: (as: SharedAs) => Promise<Shared>;
}

export type State =
  | { readonly state: "busy" }
  | { readonly state: "here"; readonly passing: Passing }
  | { readonly state: "broken"; readonly refusal: Refusal };

/** What goes out as it is asked for, made anew with every change; the one shown stays until the next is there. */
export function useShared({ household, recipe, withNote, credits, bottleMl }: Asked): State {
  const [state, setState] = useState<State>({ state: "busy" });
  const named = credits.join("\n");
  useEffect(() => {
    let wanted = true;
    const show = (next: State): void => {
      if (wanted) setState(next);
    };
    void passing().then(
      (made) => show({ state: "here", passing: made }),
      (error: unknown) => show({ state: "broken", refusal: asRefusal(error) }),
    );
    return () => {
      wanted = false;
    };

    async function passing(): Promise<Passing> {
      const people = named === "" ? {} : { credits: named.split("\n") };
      const file = await ask("exportRecipe", { at: { household, recipe }, body: { withNote, ...people } });
      const as = (kind: SharedAs): Promise<Shared> =>
        ask("shareRecipe", { body: { recipe: file, as: kind, address: location.origin, bottleMl } });
      const card = await as("card");
      return { file, card, square: card.square.fits ? await as("square") : null, as };
    }
  }, [household, recipe, withNote, named, bottleMl]);
  return state;
}

const ask = <N extends RouteName>(name: N, call: Parameters<typeof api<N>>[1]): Promise<AnswerOf<N>> =>
  api(name, call);
