import { ATTRIBUTES } from "@partsproof/core/sensory";
import { parseStrength } from "@partsproof/core/quantity";
import type { Issue, Whiskey } from "@partsproof/house/protocol";
import { statedAsTyped } from "../../figures/index.ts";

type Profile = NonNullable<Whiskey["profile"]>;
type Said = Profile["intensities"][string];

/** What a whiskey tastes of as it is typed; an attribute that is left out nobody has said. */
export interface TypedTaste {
  readonly tastedAt: string;
  readonly intensities: Readonly<Record<string, Said>>;
}

export const tasteAsTyped = (profile: Whiskey["profile"]): TypedTaste => ({
  tastedAt: profile === null || profile.tastedAt === null ? "" : statedAsTyped(profile.tastedAt),
  intensities: profile?.intensities ?? {},
});

/** The number alone; null where nobody has said or could. */
export const valueOf = (said: Said | undefined): number | null =>
  typeof said === "number" ? said : (said?.value ?? null);

/** One attribute set, with its old spread if it had one, or taken back to not said. */
export function withValue(typed: TypedTaste, attribute: string, value: number | null): TypedTaste {
  const { [attribute]: before, ...others } = typed.intensities;
  if (value === null) return { ...typed, intensities: others };
  const said: Said = typeof before === "object" && before !== null ? { ...before, value } : value;
  return { ...typed, intensities: { ...typed.intensities, [attribute]: said } };
}

/** Nothing said at all is no profile. */
export function readTaste(
  typed: TypedTaste,
):
  | { readonly ok: true; readonly profile: Whiskey["profile"] }
  | { readonly ok: false; readonly issues: readonly Issue[] } {
  const strength = typed.tastedAt.trim() === "" ? null : parseStrength(typed.tastedAt);
  if (strength?.ok === false)
    return { ok: false, issues: [{ ...strength.issue, path: ["profile", "tastedAt"] }] };
  if (Object.keys(typed.intensities).length === 0) return { ok: true, profile: null };
  return {
    ok: true,
    profile: { tastedAt: strength === null ? null : strength.value, intensities: { ...typed.intensities } },
  };
}

export interface Family {
  readonly name: string;
  readonly attributes: readonly (typeof ATTRIBUTES)[number][];
}

/** Core's attributes by family, in its order. */
export const families: readonly Family[] = [
  ...Map.groupBy(ATTRIBUTES, ({ id }) => id.split(".")[0] ?? ""),
].map(([name, attributes]) => ({ name, attributes }));
