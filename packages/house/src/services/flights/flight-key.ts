import { drawCodes, servingOrders } from "@partsproof/core/sensory";
import { chanceOf } from "./chance.ts";
import { ethanolPerMl } from "./offer.ts";
import type { House } from "../ports.ts";
import { refuse } from "../refuse.ts";
import type { FlightKey, FlightKeyRow, FlightRow, SheetRow } from "../rows.ts";
import { seal, unseal } from "./seal.ts";
import type { Shelf } from "../shelf/index.ts";

/** What is under seal: ids and codes, all of fixed length. Labels are not in it; they stand on offer. */
export interface SealedKey {
  readonly glasses: readonly { readonly vesselId: string; readonly nameId: string }[];
  readonly codes: FlightKey["codes"];
  /** What the commitment was made with, as hex; not in keys sealed before there was one. */
  readonly nonce?: string;
}

/** One serving order and one set of fresh codes for each sheet (F2). */
export function drawKey(
  house: Pick<House, "random">,
  glasses: SealedKey["glasses"],
  sheetIds: readonly string[],
): { readonly key: SealedKey; readonly orders: readonly (readonly string[])[] } {
  const chance = chanceOf(house);
  const drawn = servingOrders(glasses.length, sheetIds.length, chance).orders;
  const codes = drawCodes(glasses.length * sheetIds.length, chance);
  const behind = drawn.flatMap((order, row) =>
    order.map((glass, place) => ({
      sheetId: sheetIds[row] ?? "",
      code: codes[row * glasses.length + place] ?? "",
      glass,
    })),
  );
  const orders = sheetIds.map((id) => behind.filter(({ sheetId }) => sheetId === id).map(({ code }) => code));
  return { key: { glasses, codes: behind }, orders };
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
  return {
    glasses: flight.marks.map(({ vesselId, nameId }) => ({ vesselId, nameId })),
    codes: sheet.undersides.map(({ place, mark }) => ({
      sheetId: sheet.id,
      code: String(place),
      glass: flight.marks.findIndex((other) => other.mark === mark),
    })),
  };
}

/** The key as the reveal opens it: with labels, and the alcohol of one glass of each. */
export function openedKey(
  flight: FlightRow,
  shelf: Shelf,
  { glasses, codes, nonce }: SealedKey,
  salts: NonNullable<FlightKey["salts"]>,
): FlightKey {
  return {
    ...(nonce === undefined ? {} : { nonce, salts }),
    glasses: glasses.map(({ vesselId, nameId }) => ({
      vesselId,
      nameId,
      label: flight.namesOnOffer.find((name) => name.nameId === nameId)?.label ?? "",
      ethanolG: ethanolPerMl(shelf, vesselId) * flight.pourMl,
    })),
    codes,
  };
}
