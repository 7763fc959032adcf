import { luckVerdict } from "@partsproof/core/sensory";
import type { WhiskeyFinding } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import type { WhiskeyRow } from "../rows.ts";
import { whiskeyLabel } from "../shelf/index.ts";
import { apartFound } from "./apart-found.ts";
import { labelsOf, linesOf, ofLiking, pours } from "./evidence-lines.ts";
import type { FlightEvidence } from "./flight-evidence.ts";
import { knownFound } from "./known-found.ts";
import { mixUpsFound, namedSheets } from "./mix-ups-found.ts";
import { rankingsOf } from "./rankings-of.ts";
import { headlineOf } from "./recipe-finding.ts";
import { scoresFound } from "./scores-found.ts";
import { wordsFound } from "./words-found.ts";
import { worthsFound } from "./worths-found.ts";

/** A whiskey as it was poured: what it was taken for, where it was ranked, what was said of it. */
export function whiskeyFinding(
  house: House,
  whiskey: WhiskeyRow,
  all: readonly FlightEvidence[],
): WhiskeyFinding {
  const key = `whiskey:${whiskey.id}`;
  const name = whiskeyLabel(whiskey);
  const isIt = (nameId: string): boolean => nameId === key;
  const flights = all.filter((flight) => pours(flight, isIt));
  const labels = labelsOf(flights).set(key, name);
  const sheets = namedSheets(flights);
  const guessed = new Set(namedSheets(all).flatMap(({ truth }) => truth));
  const named = knownFound(house, sheets, key, { count: Math.max(1, guessed.size), what: "names" });
  const mixUps = mixUpsFound(house, sheets, labels, key);
  const worths = worthsFound(house, { rankings: rankingsOf(ofLiking(flights)), labels, about: key });
  const apart = apartFound(flights, labels, { about: key });
  const headline =
    named === null
      ? headlineOf(name, key, worths, apart[0]?.sentence, flights.length)
      : `${name} was named right in ${named.right} of ${named.guessed} glasses${named.right === 0 ? "" : `, which ${luckVerdict(named.pTogether)}`}`;
  return {
    whiskeyId: whiskey.id,
    name,
    headline,
    flights: linesOf(flights),
    named,
    mixUps,
    worths,
    apart,
    scores: scoresFound(flights, isIt),
    words: wordsFound(flights, isIt),
  };
}
