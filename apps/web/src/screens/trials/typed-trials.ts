import { parseVolume } from "@partsproof/core/quantity";
import type { BodyOf, Issue } from "@partsproof/house/protocol";
import type { Stocks } from "../../mixing/index.ts";

type Draft = NonNullable<BodyOf<"addTrialSet">>;
type Preview = NonNullable<BodyOf<"planTrials">>;

/** A set of trials as it is being typed. */
export interface TypedTrials {
  readonly name: string;
  /** Slot keys, and what each share may be in per cent; empty for no bound. */
  readonly parts: readonly { readonly key: string; readonly low: string; readonly high: string }[];
  readonly plan: Draft["plan"];
  readonly model: NonNullable<Draft["model"]>;
  readonly trials: number;
  readonly steps: number;
  readonly volume: string;
  readonly tool: "syringe" | "scale";
  readonly step: string;
}

export const newTrials = (name: string): TypedTrials => ({
  name,
  parts: [
    { key: "", low: "", high: "" },
    { key: "", low: "", high: "" },
  ],
  plan: "centroid",
  model: "quadratic",
  trials: 4,
  steps: 2,
  volume: "30 mL",
  tool: "syringe",
  step: "0.5",
});

/** D and I choose among all mixes; the two others are whole plans and take no bounds. */
export const chooses = ({ plan }: Pick<TypedTrials, "plan">): boolean => plan === "D" || plan === "I";

/** Coefficients of Scheffé's polynomials (Scheffé 1958): what the fewest trials must tell apart. */
export function termsOf(model: TypedTrials["model"], parts: number): number {
  const two = (parts * (parts - 1)) / 2;
  const three = (two * (parts - 2)) / 3;
  return parts + (model === "linear" ? 0 : two) + (model === "special-cubic" ? three : 0);
}

type Settings = Omit<Draft, "name" | "parts" | "note">;
interface Bounds {
  readonly low?: number;
  readonly high?: number;
}

/** What to ask the house, or what cannot be read. */
export function readTrials(
  typed: TypedTrials,
):
  | { readonly ok: true; readonly settings: Settings; readonly bounds: readonly Bounds[] }
  | { readonly ok: false; readonly issues: Issue[] } {
  const issues: Issue[] = [];
  const volume = parseVolume(typed.volume);
  if (!volume.ok) issues.push({ ...volume.issue, path: ["volumeMl"] });
  else if (volume.value < 20 || volume.value > 100)
    issues.push(issueOf(["volumeMl"], "a trial", "20 to 100 mL", `${volume.value} mL`));
  const step = Number(typed.step.replace(",", "."));
  const at = typed.tool === "syringe" ? "syringeMl" : "scaleG";
  if (!(step >= 0.01 && step <= 10))
    issues.push(issueOf([at], "the smallest step", "0.01 to 10", typed.step));
  const bounds = typed.parts.map(({ low, high }, i) => ({
    ...boundOf(low, ["parts", i, "low"], "low", issues),
    ...boundOf(high, ["parts", i, "high"], "high", issues),
  }));
  for (const [i, { key }] of typed.parts.entries())
    if (key === "") issues.push(issueOf(["parts", i, "of"], "a part", "a whiskey or a batch", "none"));
  if (issues.length > 0) return { ok: false, issues };
  const { plan, model, trials, steps } = typed;
  return {
    ok: true,
    bounds: chooses(typed) ? bounds : bounds.map(() => ({})),
    settings: {
      plan,
      model,
      ...(chooses(typed) ? { trials } : {}),
      ...(plan === "lattice" ? { steps } : {}),
      volumeMl: volume.ok ? volume.value : 30,
      [at]: step,
    },
  };
}

/** Issues that what is typed by now still has; what the house said stays until it is asked again. */
export function stillWrong(typed: TypedTrials, issues: readonly Issue[]): Issue[] {
  const now = readTrials(typed);
  const left = new Set(now.ok ? [] : now.issues.map(({ path }) => path.join("/")));
  const own = new Set(["volumeMl", "syringeMl", "scaleG"]);
  return issues.filter(({ code, path }) => {
    const typedHere = code === "not_readable" || own.has(String(path[0]));
    return !typedHere || left.has(path.join("/"));
  });
}

function boundOf(text: string, path: (string | number)[], key: "low" | "high", issues: Issue[]): Bounds {
  const typed = text.trim().replace(",", ".").replace(/\s*%$/, "");
  if (typed === "") return {};
  const percent = Number(typed);
  if (/^\d{1,3}(\.\d+)?$/.test(typed) && percent <= 100) return { [key]: percent / 100 };
  issues.push(issueOf(path, "a share", "a number from 0 to 100, or nothing", text));
  return {};
}

const issueOf = (path: (string | number)[], what: string, limit: string, received: string): Issue => ({
  code: "not_readable",
  path,
  limit,
  received,
  message: `${what} requires ${limit}, got ${received === "" ? "nothing" : received}`,
});

export const draftOf = (
  typed: TypedTrials,
  { settings, bounds }: { readonly settings: Settings; readonly bounds: readonly Bounds[] },
): Draft => ({
  name: typed.name,
  parts: typed.parts.map(({ key }, i) => ({ of: partOfKey(key), ...bounds[i] })),
  ...settings,
});

/** The same for the sum that keeps nothing; null where two parts are one whiskey. */
export function previewOf(
  typed: TypedTrials,
  { settings, bounds }: { readonly settings: Settings; readonly bounds: readonly Bounds[] },
  stocks: Stocks,
): Preview | null {
  const keys = typed.parts.map(({ key }) => key);
  if (new Set(keys).size < keys.length) return null;
  const labels = keys.map((key) => stocks.get(key)?.label ?? key);
  return {
    parts: keys.map((key, i) => ({
      // Two of one name are told apart by their number.
      name: labels.indexOf(labels[i] ?? "") < i ? `${labels[i]} ${i + 1}` : (labels[i] ?? key),
      strength: { basis: "abv20", value: stocks.get(key)?.abv20 ?? 40 },
      ...bounds[i],
    })),
    ...settings,
  };
}

const partOfKey = (key: string): Draft["parts"][number]["of"] => {
  const [kind, id = ""] = key.split(":", 2);
  return kind === "batch" ? { kind: "batch", batchId: id } : { kind: "whiskey", whiskeyId: id };
};
