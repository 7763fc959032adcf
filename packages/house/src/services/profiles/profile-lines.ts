import type { Profile } from "@partsproof/core/notes";
import { ATTRIBUTES, type KnownProfile } from "@partsproof/core/sensory";
import { normalQuantile } from "@partsproof/core/statistics";
import type { ProfileLine } from "../../protocol/index.ts";
import type { Observed } from "./observed.ts";
import type { Prediction } from "./predicted.ts";

export const LEVEL = 0.95;
const REACH = normalQuantile((1 + LEVEL) / 2);
const PLACES = new Map<string, number>(ATTRIBUTES.map(({ id }, i) => [id, i]));

type Drawn = ProfileLine["attributes"][number];

export function drawn(attribute: string, { mean, sd }: Profile[string]): Drawn {
  return {
    attribute,
    mean,
    sd,
    low: Math.max(0, mean - REACH * sd),
    high: Math.min(10, mean + REACH * sd),
  };
}

/** In the order of core's attributes. */
const drawnAll = (profile: Profile): Drawn[] =>
  Object.entries(profile)
    .map(([attribute, said]) => drawn(attribute, said))
    .toSorted((a, b) => (PLACES.get(a.attribute) ?? 0) - (PLACES.get(b.attribute) ?? 0));

const plural = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

export function keptLine(key: string, label: string, profile: KnownProfile): ProfileLine {
  return {
    key: `kept ${key}`,
    label,
    kind: "kept",
    attributes: drawnAll(profile),
    sections: {},
    unknown: [],
    counted: null,
    said: "as the shelf has it; a bare number is taken to be off by about 1",
  };
}

export function predictedLine(key: string, label: string, mixed: Prediction): ProfileLine {
  return {
    key: `predicted ${key}`,
    label,
    kind: "predicted",
    attributes: drawnAll(mixed.profile),
    sections: {},
    unknown: Object.entries(mixed.unknown)
      .map(([attribute, parts]) => ({ attribute, parts: [...parts] }))
      .toSorted((a, b) => (PLACES.get(a.attribute) ?? 0) - (PLACES.get(b.attribute) ?? 0)),
    counted: null,
    said: `the mean of its whiskeys by ${mixed.shares}, each as the shelf has it, else as it was observed; that mixing is linear is an assumption`,
  };
}

export function observedLine(
  key: string,
  label: string,
  { whole, sections, counted }: Observed,
): ProfileLine {
  return {
    key: `observed ${key}`,
    label,
    kind: "observed",
    attributes: drawnAll(whole),
    sections: Object.fromEntries(Object.entries(sections).map(([where, own]) => [where, drawnAll(own)])),
    unknown: [],
    counted: { ...counted },
    said: `${plural(counted.glasses, "glass", "glasses")} by ${plural(counted.tasters, "taster")} in ${plural(counted.flights, "revealed flight")}`,
  };
}
