import { REFERENCE_LABEL } from "../../protocol/index.ts";
import { setOfMark } from "./alone-marks.ts";
import { ethanolPerMl } from "./offer.ts";
import { designOf, inSets, questionOf } from "./question.ts";
import type { House } from "../ports.ts";
import { refuse } from "../refuse.ts";
import type { FlightKey, FlightKeyRow, FlightRow, SheetRow } from "../rows.ts";
import { seal, unseal } from "./seal.ts";
import { nameOf, type Shelf } from "../shelf/index.ts";

/** What is under seal: ids and codes, all of fixed length. Labels are not in it; they stand on offer. */
export interface SealedKey {
  readonly glasses: readonly { readonly vesselId: string; readonly nameId: string }[];
  readonly codes: FlightKey["codes"];
  readonly expected?: number;
  readonly said?: readonly string[];
  /** What the commitment was made with, as hex; not in keys sealed before there was one. */
  readonly nonce?: string;
}

export const sealKey = (house: House, flightId: string, key: SealedKey): Promise<string> =>
  seal(house, JSON.stringify(key), flightId);

/** The key of a flight poured by someone else. Only the pour list and the reveal may ask for it. */
export async function unsealedKey(
  house: House,
  flight: FlightRow,
  row: FlightKeyRow | null,
): Promise<SealedKey> {
  const plain = row?.sealed ? await unseal(house, row.sealed, flight.id) : null;
  if (plain !== null) return JSON.parse(plain) as SealedKey;
  refuse(409, {
    code: "key_unreadable",
    path: ["flight"],
    limit: "a key sealed by this house",
    received: null,
    message: "the key of this flight requires the seal key it was sealed under, got another one",
  });
}

/** Alone there is no drawn key: the undersides say which mark stood at which place (F4). */
export function keyOfUndersides(flight: FlightRow, sheet: SheetRow): SealedKey | null {
  if (sheet.undersides === null) return null;
  if (inSets(questionOf(flight))) return keyOfSets(flight, sheet, sheet.undersides);
  return {
    glasses: flight.marks.map(({ vesselId, nameId }) => ({ vesselId, nameId })),
    codes: [
      ...(designOf(flight).reference
        ? [
            {
              sheetId: sheet.id,
              code: REFERENCE_LABEL,
              glass: flight.marks.findIndex(({ nameId }) => nameId === flight.targetNameId),
            },
          ]
        : []),
      ...sheet.undersides.map(({ place, mark }) => ({
        sheetId: sheet.id,
        code: String(place),
        glass: flight.marks.findIndex((other) => other.mark === mark),
      })),
    ],
  };
}

/** Q18: the two vessels; a set's glasses by their places, R before them where there is one. */
function keyOfSets(
  flight: FlightRow,
  sheet: SheetRow,
  found: NonNullable<SheetRow["undersides"]>,
): SealedKey {
  const vesselIds = [...new Set(flight.marks.map(({ vesselId }) => vesselId))].toSorted();
  const size = flight.marks.length / designOf(flight).setsEach;
  const indexAt = (place: number): number =>
    flight.marks.findIndex(({ mark }) => mark === found.find((one) => one.place === place)?.mark);
  const glassOf = (index: number): number => vesselIds.indexOf(flight.marks[index]?.vesselId ?? "");
  return {
    glasses: vesselIds.map((vesselId) => ({
      vesselId,
      nameId: flight.marks.find((one) => one.vesselId === vesselId)?.nameId ?? "",
    })),
    codes: Array.from({ length: designOf(flight).setsEach }, (_, i) => i + 1).flatMap((set) => {
      const places = Array.from({ length: size }, (_, i) => (set - 1) * size + i + 1);
      const poured = setOfMark(flight, indexAt(places[0] ?? 0)).set;
      const like = flight.marks.findIndex((_, i) => {
        const of = setOfMark(flight, i);
        return of.set === poured && of.likeR;
      });
      const known =
        like === -1 ? [] : [{ sheetId: sheet.id, code: REFERENCE_LABEL, glass: glassOf(like), set }];
      return [
        ...known,
        ...places.map((place) => ({
          sheetId: sheet.id,
          code: String(place),
          glass: glassOf(indexAt(place)),
          set,
        })),
      ];
    }),
  };
}

/** The key as the reveal opens it: with labels, and the alcohol of one glass of each. */
export function openedKey(
  flight: FlightRow,
  shelf: Shelf,
  { glasses, codes, nonce, expected, said }: SealedKey,
  salts: NonNullable<FlightKey["salts"]>,
): FlightKey {
  const sets = inSets(questionOf(flight));
  return {
    ...(nonce === undefined ? {} : { nonce, salts }),
    ...(expected === undefined ? {} : { expected }),
    ...(said === undefined ? {} : { said }),
    glasses: glasses.map(({ vesselId, nameId }) => ({
      vesselId,
      nameId,
      label: sets
        ? labelApart(shelf, glasses, vesselId)
        : (flight.namesOnOffer.find((name) => name.nameId === nameId)?.label ?? ""),
      ethanolG: ethanolPerMl(shelf, vesselId) * flight.pourMl,
    })),
    codes,
  };
}

/** Two vessels to tell apart may hold what has one name, such as two bottles of one whiskey: then the vessels are named. */
function labelApart(shelf: Shelf, glasses: SealedKey["glasses"], vesselId: string): string {
  const labels = glasses.map((glass) => nameOf(shelf, glass.vesselId).label);
  const { label } = nameOf(shelf, vesselId);
  if (new Set(labels).size === labels.length) return label;
  const own = shelf.vessels.get(vesselId)?.label ?? "";
  return own === label ? `${label} (${vesselId.slice(-4)})` : `${label} (${own})`;
}

/** Q10: how many glasses of each vessel the key has, over all sheets, in the order of the glasses. */
export function pouredGlasses({ glasses, codes }: Pick<SealedKey, "glasses" | "codes">): Map<string, number> {
  const poured = new Map(glasses.map(({ vesselId }) => [vesselId, 0]));
  for (const { glass } of codes) {
    const vesselId = glasses[glass]?.vesselId ?? "";
    poured.set(vesselId, (poured.get(vesselId) ?? 0) + 1);
  }
  return poured;
}
