import { attributeName } from "@partsproof/core/sensory";
import type { RecipeFile } from "../../protocol/index.ts";
import { printed } from "../filling/index.ts";

/** A recipe in words that every way of passing it on uses. Texts are plain: each way escapes them itself. */
export interface RecipeWords {
  readonly name: string;
  /** "3 : 2 : 1" */
  readonly ratio: string;
  readonly slots: readonly SlotWords[];
  /** "46 % vol after water", "Rest 28 days", "Oak: none": what is done after mixing. */
  readonly after: readonly string[];
  readonly original: string | null;
  readonly findings: string | null;
  readonly lineage: string | null;
  readonly credits: string | null;
  readonly note: string;
}

export interface SlotWords {
  readonly parts: number;
  readonly title: string;
  /** "58.9 % vol, 9 years" */
  readonly facts: string;
  /** The rule as it prints, or null where the whiskey stands for itself. */
  readonly rule: string | null;
  readonly reason: string;
}

/** For the foot of everything that goes out. */
export const CARE =
  "Blended at home, not for sale. Strong spirit: away from flames and children; of legal age only, never before driving, not in pregnancy.";
export const CARE_OAK = "Oak: untreated and food-grade only. No lead crystal for resting.";
export const AT_20 = "mL and % vol at 20 °C; contraction is counted.";

/** Attributes that stand out most, at most so many. */
const MOST_ATTRIBUTES = 6;

export function wordsOf({
  name,
  slots,
  waterTo,
  restDays,
  oak,
  note,
  original,
  findings,
  lineage,
  credits,
}: RecipeFile): RecipeWords {
  const strongest = Object.entries(original?.profile ?? {})
    .toSorted(([, a], [, b]) => b - a)
    .slice(0, MOST_ATTRIBUTES)
    .map(([id, value]) => `${attributeName(id)} ${one(value)}`);
  const came = [
    ...(original?.abv === undefined ? [] : [`${one(original.abv)} % vol before water`]),
    ...(original?.ageYears === undefined ? [] : [`youngest ${years(original.ageYears)}`]),
    ...(strongest.length === 0 ? [] : [`of 10: ${strongest.join(", ")}`]),
  ];
  return {
    name,
    ratio: slots.map(({ parts }) => parts).join(" : "),
    slots: slots.map(({ parts, whiskey, rule, reason }) => ({
      parts,
      title:
        whiskey === undefined
          ? "Any whiskey that keeps the rule"
          : [whiskey.maker, whiskey.name, whiskey.release].filter((text) => (text ?? "") !== "").join(" "),
      facts: [
        ...(whiskey?.abv === undefined ? [] : [`${one(whiskey.abv)} % vol`]),
        ...(whiskey?.ageYears === undefined ? [] : [years(whiskey.ageYears)]),
      ].join(", "),
      rule: rule === undefined ? null : printed(rule),
      reason: reason ?? "",
    })),
    after: [
      waterTo === undefined ? "No water after mixing" : `Water to ${one(waterTo)} % vol`,
      restDays === undefined || restDays === 0 ? "No rest asked for" : `Rest ${restDays} days`,
      ...(oak === undefined || oak === "" ? [] : [`Oak: ${oak}`]),
    ],
    original: came.length === 0 ? null : `As its maker had it: ${came.join("; ")}.`,
    findings:
      findings === undefined
        ? null
        : `Blind tastings: ${findings.flights} flights, ${findings.sheets} sheets. ${findings.summary ?? ""}`.trim(),
    lineage:
      lineage === undefined || lineage.length === 0
        ? null
        : `From: ${lineage.map((of) => of.name).join(", ")}.`,
    credits: credits === undefined || credits.length === 0 ? null : `By ${credits.join(", ")}.`,
    note: note ?? "",
  };
}

/** At most one decimal, none where there is none. */
const one = (value: number): string => String(Number(value.toFixed(1)));
const years = (value: number): string => (value === 1 ? "1 year" : `${one(value)} years`);

/** Whole millilitres from 20 up, a tenth below: what a measuring glass and a syringe can tell. */
export const mlOf = (value: number): string => `${value < 20 ? value.toFixed(1) : value.toFixed(0)} mL`;
export const gOf = (value: number): string => `${value < 20 ? value.toFixed(1) : value.toFixed(0)} g`;
