import type { WeighedFlight } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import { apartFound } from "./apart-found.ts";
import type { FlightEvidence } from "./flight-evidence.ts";
import { mapFound, wordTestsFound } from "./glass-words.ts";
import { knownFound } from "./known-found.ts";
import { mixUpsFound, namedSheets } from "./mix-ups-found.ts";
import { rankingsOf } from "./rankings-of.ts";
import { claimOf, worthsFound } from "./worths-found.ts";

const ORDINALS = "first second third fourth fifth sixth seventh eighth".split(" ");

/** What each glass is called: two pours of one name are told apart. */
function labelsOf({ glasses }: FlightEvidence): string[] {
  return glasses.map(({ nameId, label }, i) => {
    if (glasses.filter((other) => other.nameId === nameId).length === 1) return label;
    const before = glasses.slice(0, i).filter((other) => other.nameId === nameId).length;
    return `${label} (${ORDINALS[before] ?? before + 1} pour)`;
  });
}

const closeToOf = ({ question, labels, targetNameId }: FlightEvidence): string | null =>
  question === "how_close" ? (labels.get(targetNameId ?? "") ?? null) : null;

/** Whiskeys poured more than once, each taken as the one it is, beside the front runner. */
function poursTogetherFound(
  house: House,
  flight: FlightEvidence,
  worths: WeighedFlight["worths"],
): WeighedFlight["poursTogether"] {
  const pours = Map.groupBy(flight.glasses, ({ nameId }) => nameId);
  const repeated = [...pours].filter(([, glasses]) => glasses.length > 1);
  const [leader] = worths?.items ?? [];
  if (leader === undefined || repeated.length === 0) return [];
  const about = flight.glasses[Number(leader.key.split(":")[1])]?.nameId ?? "";
  const together = worthsFound(house, {
    rankings: rankingsOf([flight]),
    labels: flight.labels,
    about,
    closeTo: closeToOf(flight),
    target: flight.targetNameId,
  });
  return repeated.flatMap(([nameId, { length }]) => {
    const claim =
      nameId === about
        ? together?.best.sentence
        : together?.pairs.find(({ other }) => other === nameId)?.sentence;
    const name = flight.labels.get(nameId) ?? "";
    const all = length === 2 ? "Both pours" : `All ${length} pours`;
    return claim === undefined ? [] : [{ name, sentence: `${all} of ${name} taken as one: ${claim}` }];
  });
}

/** One revealed flight weighed. Repeats stand apart in the worths: whether they come out alike is worth seeing. */
export function weighedFlight(house: House, flight: FlightEvidence): WeighedFlight {
  const labels = labelsOf(flight);
  const glassKey = (glass: number): string => `glass:${glass}`;
  const target = flight.glasses.findIndex(({ nameId }) => nameId === flight.targetNameId);
  const worths = worthsFound(house, {
    rankings: rankingsOf([flight], (_, glass) => glassKey(glass)),
    labels: new Map(labels.map((label, glass) => [glassKey(glass), label])),
    closeTo: closeToOf(flight),
    target: target < 0 ? null : glassKey(target),
  });
  const poursTogether = poursTogetherFound(house, flight, worths);
  const sheets = namedSheets([flight]);
  const mixUps = mixUpsFound(house, sheets, flight.labels);
  const known = knownFound(house, sheets);
  const [apart = null] = apartFound([flight], flight.labels);
  const first = apart?.sentence ?? (worths && claimOf(worths.best.sentence)) ?? known?.sentence;
  return {
    flightId: flight.flightId,
    name: flight.name,
    revealedAt: flight.revealedAt,
    headline: first ?? "The sheets of this flight carry nothing to weigh.",
    worths,
    poursTogether,
    mixUps,
    known,
    apart,
    map: mapFound(house, flight, labels),
    wordTests: wordTestsFound(house, flight, labels),
  };
}
