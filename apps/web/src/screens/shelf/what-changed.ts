import type { Whiskey } from "@partsproof/house/protocol";
import { attributeName } from "../../closest/index.ts";
import { printAge, printCask, printMoney, printStated } from "../../figures/index.ts";

export interface Change {
  readonly what: string;
  readonly before: string;
  readonly after: string;
}

/** What differs between the whiskey as it was read and as it stands now, in words. */
export function whatChanged(before: Whiskey, after: Whiskey, currency: string): readonly Change[] {
  const said = (whiskey: Whiskey): Readonly<Record<string, string>> => ({
    maker: whiskey.maker,
    name: whiskey.name,
    release: whiskey.release || "none",
    kind: whiskey.kind,
    strength: printStated(whiskey.strength),
    age: printAge(whiskey.ageYears),
    grains: whiskey.grains?.map(({ grain, percent }) => `${percent} % ${grain}`).join(", ") ?? "not known",
    casks: whiskey.casks.map(printCask).join("; ") || "not known",
    "distilled at": whiskey.distilledAt ?? "not known",
    place: whiskey.place ?? "not known",
    price: whiskey.priceMinor === null ? "not known" : printMoney(whiskey.priceMinor, currency),
    "bottle size": `${whiskey.bottleMl} mL`,
    availability: whiskey.availability,
    note: whiskey.note || "none",
    "what it tastes of": tasteWords(whiskey.profile),
  });
  const [old, now] = [said(before), said(after)];
  return Object.entries(now).flatMap(([what, after]) => {
    const before = old[what] ?? "";
    return before === after ? [] : [{ what, before, after }];
  });
}

function tasteWords(profile: Whiskey["profile"]): string {
  const said = Object.entries(profile?.intensities ?? {}).flatMap(([attribute, intensity]) => {
    const value = typeof intensity === "number" ? intensity : intensity?.value;
    return value === undefined ? [] : [`${attributeName(attribute)} ${value}`];
  });
  return said.join(", ") || "not said";
}
