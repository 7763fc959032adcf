import {
  FEWEST_MIXES,
  learnMixing,
  MEAN_BEFOREHAND,
  mixingInWords,
  type MixingLaw,
  ODDS_NEEDED,
} from "@partsproof/core/mixing";
import { attributeName } from "@partsproof/core/sensory";
import type { LearnedMixing, MixingBoard } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import { Remembered } from "../remembered.ts";
import type { GatheredMixes, MixesOfAttribute } from "./noted-mixes.ts";

/** The law of an attribute takes long: kept by a digest of all that it rests on. */
const kept = new WeakMap<House, Remembered<MixingLaw>>();
/** Odds beyond any meaning are told as this. */
const MOST_ODDS = 1e12;

const METHOD = `each law's evidence is the density of all that was noted of the mixes, averaged over what the parts may be, over the exponent (0.5 to 5) and over what no law says; the mean is held ${MEAN_BEFOREHAND} times likelier beforehand, and left only at ${ODDS_NEEDED} to 1 after that ("strong" by Jeffreys, and Kass and Raftery 1995), from ${FEWEST_MIXES} blends on`;

/** MI3: which law each attribute follows. Others have their turn between two attributes. */
export async function mixingBoard(house: House, { attributes, silent }: GatheredMixes): Promise<MixingBoard> {
  const learned: LearnedMixing[] = [];
  for (const one of attributes) learned.push(told(one, await lawOf(house, one)));
  const order = (one: LearnedMixing): number => (one.law === "mean" ? 1 : 0);
  const sorted = learned.toSorted((a, b) => order(a) - order(b) || b.blends.length - a.blends.length);
  return {
    headline: headlineOf(sorted),
    attributes: sorted,
    silent: [...silent],
    needed: { odds: ODDS_NEEDED, meanBeforehand: MEAN_BEFOREHAND, mixes: FEWEST_MIXES },
    method: METHOD,
  };
}

async function lawOf(house: House, { parts, mixes }: MixesOfAttribute): Promise<MixingLaw> {
  const digest = house.sha256(new TextEncoder().encode(JSON.stringify([parts, mixes]))).join();
  const all = kept.get(house) ?? new Remembered<MixingLaw>();
  kept.set(house, all);
  const before = all.get(digest);
  if (before !== undefined) return before;
  await new Promise((resolve) => setTimeout(resolve));
  const law = learnMixing({ parts, mixes });
  all.set(digest, law);
  return law;
}

function told({ attribute, names, mixes }: MixesOfAttribute, law: MixingLaw): LearnedMixing {
  return {
    attribute,
    law: law.law,
    exponent: law.exponent === Infinity ? "strongest" : law.exponent,
    sentence: mixingInWords(attributeName(attribute), law),
    odds: {
      power: Math.min(MOST_ODDS, law.odds.power),
      strongest: Math.min(MOST_ODDS, law.odds.strongest),
    },
    power: { ...law.power },
    blends: names.map(({ key, label }, i) => ({
      key,
      label,
      noted: { ...(mixes[i]?.noted ?? { mean: 0, sd: 0 }) },
      foretold: {
        mean: law.foretold.mean[i] ?? 0,
        power: law.foretold.power[i] ?? 0,
        strongest: law.foretold.strongest[i] ?? 0,
      },
    })),
  };
}

function headlineOf(learned: readonly LearnedMixing[]): string {
  const bent = learned.filter(({ law }) => law !== "mean");
  if (learned.length === 0) return "No mix was noted in a revealed flight of which all parts are known too.";
  if (bent.length === 0) return "Nothing says that these mixes are anything but the mean of their parts.";
  return `${bent.map(({ sentence }) => sentence).join("; ")}.`;
}
