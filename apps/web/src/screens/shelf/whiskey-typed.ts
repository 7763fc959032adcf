import { parseStrength, parseVolume } from "@partsproof/core/quantity";
import type { Cask, Issue, Whiskey, WhiskeyDraft } from "@partsproof/house/protocol";
import { moneyAsTyped, readMoney, statedAsTyped } from "../../figures/index.ts";

/** A whiskey's facts as they are typed. */
export interface TypedWhiskey {
  readonly maker: string;
  readonly name: string;
  readonly release: string;
  readonly kind: Whiskey["kind"];
  readonly strength: string;
  readonly age: string;
  readonly grains: readonly { readonly grain: string; readonly percent: string }[];
  readonly casks: readonly Cask[];
  readonly distilledAt: string;
  readonly place: string;
  readonly price: string;
  readonly bottle: string;
  readonly availability: Whiskey["availability"];
  readonly note: string;
}

export const BLANK: TypedWhiskey = {
  maker: "",
  name: "",
  release: "",
  kind: "malt",
  strength: "",
  age: "",
  grains: [],
  casks: [],
  distilledAt: "",
  place: "",
  price: "",
  bottle: "700 mL",
  availability: "sold",
  note: "",
};

export function asTyped(whiskey: Whiskey, currency: string): TypedWhiskey {
  return {
    maker: whiskey.maker,
    name: whiskey.name,
    release: whiskey.release,
    kind: whiskey.kind,
    strength: statedAsTyped(whiskey.strength),
    age: whiskey.ageYears === null ? "" : String(whiskey.ageYears),
    grains: whiskey.grains?.map(({ grain, percent }) => ({ grain, percent: String(percent) })) ?? [],
    casks: whiskey.casks,
    distilledAt: whiskey.distilledAt ?? "",
    place: whiskey.place ?? "",
    price: moneyAsTyped(whiskey.priceMinor, currency),
    bottle: `${whiskey.bottleMl} mL`,
    availability: whiskey.availability,
    note: whiskey.note,
  };
}

/** What a label says. What the whiskey tasted of is told elsewhere, and stays when these change. */
type Facts = Omit<Required<WhiskeyDraft>, "profile">;

/** Reads what was typed. What cannot be read comes back as issues with the paths the house would use. */
export function readWhiskey(
  typed: TypedWhiskey,
  currency: string,
): { readonly ok: true; readonly facts: Facts } | { readonly ok: false; readonly issues: readonly Issue[] } {
  const issues: Issue[] = [];
  const refuse = (path: Issue["path"], code: string, what: string, limit: string, received: string): void => {
    const got = received.trim() === "" ? "nothing" : `"${received.trim()}"`;
    issues.push({ code, path, limit, received, message: `${what} requires ${limit}, got ${got}` });
  };
  const required = (path: "maker" | "name"): void => {
    if (typed[path].trim() === "") refuse([path], "too_small", path, "1 to 120 characters", typed[path]);
  };
  required("maker");
  required("name");

  const strength = parseStrength(typed.strength);
  if (!strength.ok) issues.push({ ...strength.issue, path: ["strength"] });
  const bottle = parseVolume(typed.bottle);
  if (!bottle.ok) issues.push({ ...bottle.issue, path: ["bottleMl"] });
  const price = readMoney(typed.price, currency, ["priceMinor"]);
  if (!price.ok) issues.push(price.issue);
  const age = readNumber(typed.age);
  if (age === undefined)
    refuse(["ageYears"], "age_unreadable", "age", "years such as 12, or nothing", typed.age);
  const grains = typed.grains.map(({ grain, percent }, i) => {
    const share = readNumber(percent);
    if (share === undefined || share === null) {
      refuse(["grains", i, "percent"], "percent_unreadable", "grain share", "a number of per cent", percent);
    }
    if (grain.trim() === "") refuse(["grains", i, "grain"], "too_small", "grain", "a name", grain);
    return { grain: grain.trim(), percent: share ?? 0 };
  });
  if (issues.length > 0 || !strength.ok || !bottle.ok || !price.ok || age === undefined) {
    return { ok: false, issues };
  }
  return {
    ok: true,
    facts: {
      maker: typed.maker.trim(),
      name: typed.name.trim(),
      release: typed.release.trim(),
      kind: typed.kind,
      strength: strength.value,
      ageYears: age,
      grains: grains.length === 0 ? null : grains,
      casks: typed.casks.map(({ species, held }) => ({
        species,
        held: held.trim() === "" ? "not known" : held.trim(),
      })),
      distilledAt: typed.distilledAt.trim() === "" ? null : typed.distilledAt.trim(),
      place: typed.place.trim() === "" ? null : typed.place.trim(),
      priceMinor: price.minor,
      bottleMl: bottle.value,
      availability: typed.availability,
      note: typed.note,
    },
  };
}

/** A plain decimal number; null for nothing typed, undefined for something else. */
function readNumber(text: string): number | null | undefined {
  const typed = text.trim();
  if (typed === "") return null;
  return /^\d{1,6}(?:[.,]\d{1,3})?$/.test(typed) ? Number(typed.replace(",", ".")) : undefined;
}
