import type { Flight, Taster, Vessel } from "@partsproof/house/protocol";
import type { AtHousehold, Path } from "./at-household.ts";
import { everyItem } from "./every-item.ts";
import { namedWhiskey } from "./find-on-shelf.ts";
import { matching, type Named, pick } from "./pick.ts";
import { issueAt, refuse } from "../flags/index.ts";

export async function findFlight(here: AtHousehold, text: string, path: Path): Promise<Flight> {
  const flights = await everyItem(here.client, "listFlights", { household: here.household.id });
  const named = flights.map((flight) => ({ id: flight.id, names: [flight.name] as [string], flight }));
  return pick("flight", text, named, path).flight;
}

export async function findTaster(here: AtHousehold, text: string, path: Path): Promise<Taster> {
  const tasters = await everyItem(here.client, "listTasters", { household: here.household.id });
  const named = tasters.map((taster) => ({ id: taster.id, names: [taster.name] as [string], taster }));
  return pick("taster", text, named, path).taster;
}

/** One sheet of a flight, by its taster; the only one where there is one. */
export function findSheet(flight: Flight, text: string | undefined, path: Path): Flight["sheets"][number] {
  const [only] = flight.sheets;
  if (text === undefined && only !== undefined && flight.sheets.length === 1) return only;
  if (text === undefined) {
    const tasters = flight.sheets.map(({ taster }) => taster).join(", ");
    refuse(issueAt(path, "taster_not_named", `the taster whose sheet it is: ${tasters}`, null));
  }
  const named = flight.sheets.flatMap((sheet) => [
    { id: sheet.tasterId, names: [sheet.taster] as [string], sheet },
    { id: sheet.sheetId, names: [`sheet of ${sheet.taster}`] as [string], sheet },
  ]);
  return pick("taster", text, named, path).sheet;
}

/** A name on offer in a flight, by label or by its own id such as "whiskey:…". */
export function findNameOnOffer(offer: Flight["namesOnOffer"], text: string, path: Path): string {
  return pick(
    "name on offer",
    text,
    offer.map(({ nameId, label }) => ({ id: nameId, names: [label] as [string] })),
    path,
  ).id;
}

/** The name a whiskey, a batch or a blend on the shelf goes by in a flight (services/SPEC.md F1). */
export async function findName(here: AtHousehold, text: string, path: Path): Promise<string> {
  const at = { household: here.household.id };
  const whiskeys = (await everyItem(here.client, "listWhiskeys", at)).map((whiskey) => {
    const { id, names } = namedWhiskey(whiskey);
    return { id: `whiskey:${id}`, names };
  });
  const batches = (await everyItem(here.client, "listBatches", at)).map(({ id, name }) => ({
    id: `batch:${id}`,
    names: [name] as [string],
  }));
  const vessels = (await everyItem(here.client, "listVessels", at)).map((vessel) => ({
    id: nameIdOf(vessel),
    names: [vessel.label] as [string],
  }));
  const rooms: readonly (readonly Named[])[] = [whiskeys, batches, vessels];
  const room = rooms.find((names) => matching(text, names).length > 0);
  // Two bottles of one whiskey are one name.
  const once = new Map((room ?? rooms.flat()).map((name) => [name.id, name]));
  return pick("name", text, [...once.values()], path).id;
}

function nameIdOf({ id, kind, whiskeyId, batchId, contents }: Vessel): string {
  const [only] = contents.composition;
  const pure = contents.composition.length === 1 && only !== undefined && only.liquidId === whiskeyId;
  if (kind === "bottle" && pure && whiskeyId !== null) return `whiskey:${whiskeyId}`;
  return batchId === null ? `vessel:${id}` : `batch:${batchId}`;
}
