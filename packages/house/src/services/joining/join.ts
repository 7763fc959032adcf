import type { Joined, JoinShown } from "../../protocol/index.ts";
import { born } from "../birth.ts";
import {
  alcoholOf,
  changed,
  guestsOf,
  knownSheet,
  needState,
  roleAt,
  sameName,
  sheetsOf,
  showSheet,
  takeFree,
  seatedNames,
} from "../flights/index.ts";
import type { Asked, Handlers } from "../handler.ts";
import { hashToken } from "../ids.ts";
import { keyedHash } from "../keyed-hash.ts";
import { limitsOf } from "../limits/index.ts";
import { happened } from "../live/index.ts";
import type { House, Records } from "../ports.ts";
import { refuse } from "../refuse.ts";
import type { FlightRow, GuestRow, JoiningRow, SheetRow, TasterRow } from "../rows.ts";
import { trail } from "../trail/index.ts";
import { joiningOf, ticketHash } from "./tickets.ts";

interface Opened {
  readonly joining: JoiningRow;
  readonly flight: FlightRow;
}

/** F3: a pourer's way in serves one. */
const isUsed = async (records: Records, { joining }: Opened): Promise<boolean> =>
  joining.role === "pourer" &&
  (await records.list("guest", joining.householdId, { where: { joiningId: joining.id } })).length > 0;

/** J4: every ticket that opens nothing is answered alike, and counts against its sender and against the house. */
async function opened(
  { house, body, caller }: Asked<"join"> | Asked<"askJoining">,
  work: (records: Records, found: Opened) => Promise<Joined | JoinShown | null>,
): Promise<Joined | JoinShown> {
  const { ticket } = body;
  const limits = limitsOf(house);
  const now = house.clock.now().getTime();
  limits.needJoinTry(caller, now, ticket.kind);
  const hash = await ticketHash(house, ticket);
  const answer = await house.store.transaction(async (records) => {
    const joining = await joiningOf(records, house, ticket.kind, hash);
    const flight = joining && (await records.find("flight", joining.householdId, joining.flightId));
    return joining && flight ? work(records, { joining, flight }) : null;
  });
  if (answer !== null) return answer;
  if (limits.wrongJoinTry(caller, now, ticket.kind)) {
    await house.store.transaction((records) => trail(records, house, "join codes held back", { caller }));
  }
  refuse(404, {
    code: "joining_unknown",
    path: ["ticket"],
    limit: "a join link or code that is open",
    received: "another one",
    message: "joining requires a join link or code that is open, got another one",
  });
}

interface Seat {
  readonly sheet: SheetRow;
  readonly taster: TasterRow;
}

async function freeSeats(records: Records, flight: FlightRow): Promise<readonly Seat[]> {
  const sheets = await sheetsOf(records, flight);
  const ids = sheets.map(({ tasterId }) => tasterId);
  const rows = await records.list("taster", flight.householdId, { ids });
  const tasters = new Map(rows.map((row) => [row.id, row]));
  return sheets.flatMap((sheet) => {
    const taster = tasters.get(sheet.tasterId);
    return sheet.state === "free" && taster ? [{ sheet, taster }] : [];
  });
}

/** J5: who is at this flight already, but for one seat. */
async function namesAt(records: Records, flight: FlightRow, but: string | null): Promise<readonly string[]> {
  const seated = (await sheetsOf(records, flight)).filter(({ id }) => id !== but);
  const names = await seatedNames(records, seated);
  const others = (await guestsOf(records, flight)).filter(({ sheetId }) => sheetId === null);
  return [
    ...seated.map(({ tasterId }) => names.get(tasterId) ?? ""),
    ...others.map(({ name }) => name),
    ...(flight.pourer === null ? [] : [flight.pourer]),
  ];
}

function needOwnName(name: string, others: readonly string[]): void {
  if (!others.some((other) => sameName(other, name))) return;
  refuse(409, {
    code: "name_taken",
    path: ["name"],
    limit: "a name that nobody at this flight has",
    received: name,
    message: `joining requires a name that nobody at this flight has, got ${name}`,
  });
}

/** A seat named for a taster of the household keeps that name; another is given the guest's. */
async function takeSeat(
  records: Records,
  house: House,
  { flight }: Opened,
  body: Asked<"join">["body"],
  tokenHash: string,
): Promise<{ readonly sheet: SheetRow; readonly name: string }> {
  const seats = await freeSeats(records, flight);
  const asked = body.sheetId;
  const seat =
    asked === null ? seats.find(({ taster }) => taster.guest) : seats.find(({ sheet }) => sheet.id === asked);
  const now = house.clock.now();
  if (!seat) {
    if (asked !== null)
      await takeFree(records, now, flight, await knownSheet(records, flight, { sheet: asked }), "");
    refuse(409, {
      code: "no_seat_free",
      path: ["sheetId"],
      limit: "a free seat",
      received: null,
      message: "joining as a taster requires a free seat, got none: ask the host",
    });
  }
  const name = seat.taster.guest ? body.name : seat.taster.name;
  needOwnName(name, await namesAt(records, flight, seat.sheet.id));
  const sheet = await takeFree(records, now, flight, seat.sheet, tokenHash);
  if (seat.taster.guest && seat.taster.name !== name) {
    await records.replace("taster", changed(seat.taster, now, { name }));
  }
  return { sheet, name };
}

/** F3: who pours tastes nothing of this flight, on whichever phone. */
async function needNoOther(
  records: Records,
  { flight, joining }: Opened,
  { body, token }: Asked<"join">,
): Promise<void> {
  const held = token === null ? null : await roleAt(records, flight, token);
  const mixes = held !== null && (held.role === "pourer") !== (joining.role === "pourer");
  const pours = joining.role === "taster" && flight.pourer !== null && sameName(flight.pourer, body.name);
  if (!pours && !(mixes && held.role !== "host" && joining.role !== "watcher")) return;
  refuse(409, {
    code: "pourer_tastes",
    path: ["ticket"],
    limit: "a pourer who is none of its tasters",
    received: body.name,
    message: `a flight requires a pourer who is none of its tasters, got ${body.name} for both`,
  });
}

function needLegalAge(ofLegalAge: boolean): void {
  if (ofLegalAge) return;
  refuse(422, {
    code: "legal_age_needed",
    path: ["ofLegalAge"],
    limit: "the guest's word that they are of legal drinking age",
    received: false,
    message: "joining requires the guest's word that they are of legal drinking age, got none",
  });
}

function needNotRevoked(guest: GuestRow): void {
  if (guest.revokedAt === null) return;
  refuse(403, {
    code: "guest_revoked",
    path: ["key"],
    limit: "a guest whom the host has not sent away",
    received: "one revoked",
    message: "joining requires a guest whom the host has not sent away, got one revoked",
  });
}

async function joined(records: Records, asked: Asked<"join">, found: Opened): Promise<Joined | null> {
  const { house, body, caller } = asked;
  const { joining, flight } = found;
  // Drawn by the phone and kept by it alone, so the token can be given again to the phone and to nobody else.
  const token = await keyedHash(house, "guest token", `${joining.id} ${body.key}`);
  const tokenHash = await hashToken(token);
  const keyHash = await hashToken(body.key);
  const where = { joiningId: joining.id, keyHash };
  const [before] = await records.list("guest", flight.householdId, { where });
  if (before) {
    needNotRevoked(before);
    const sheet = before.sheetId && (await records.find("sheet", flight.householdId, before.sheetId));
    return shown(token, before, sheet ? await showSheet(records, sheet, flight) : null);
  }
  if (await isUsed(records, found)) return null;
  needLegalAge(body.ofLegalAge);
  if (flight.state !== "pouring") needState(flight, "joining", "tasting");
  await needNoOther(records, found, asked);
  const seat = joining.role === "taster" ? await takeSeat(records, house, found, body, tokenHash) : null;
  if (!seat) {
    const names = await namesAt(records, flight, null);
    needOwnName(
      body.name,
      joining.role === "pourer" ? names.filter((name) => name !== flight.pourer) : names,
    );
  }
  const head = born(house, flight.householdId);
  const guest: GuestRow = {
    ...head,
    flightId: flight.id,
    joiningId: joining.id,
    role: joining.role,
    sheetId: seat?.sheet.id ?? null,
    name: seat?.name ?? body.name,
    tokenHash,
    keyHash,
    ofLegalAgeAt: head.createdAt,
    revokedAt: null,
  };
  await records.insert("guest", guest);
  if (seat) await happened(records, house, flight, "seat taken", { sheetId: seat.sheet.id });
  await trail(records, house, "guest joined", { caller, household: flight.householdId, flight: flight.id });
  return shown(token, guest, seat ? await showSheet(records, seat.sheet, flight) : null);
}

const shown = (token: string, guest: GuestRow, sheet: Joined["sheet"]): Joined => ({
  householdId: guest.householdId,
  flightId: guest.flightId,
  guestId: guest.id,
  role: guest.role as Joined["role"],
  name: guest.name,
  token,
  sheet,
});

async function asked(records: Records, found: Opened): Promise<JoinShown | null> {
  if (await isUsed(records, found)) return null;
  const { joining, flight } = found;
  const seats = joining.role === "taster" ? await freeSeats(records, flight) : [];
  return {
    householdId: flight.householdId,
    flightId: flight.id,
    flightName: flight.name,
    role: joining.role as JoinShown["role"],
    state: flight.state as JoinShown["state"],
    glassCount: flight.glassCount,
    pourMl: flight.pourMl,
    alcoholAtMost: alcoholOf(flight.alcoholAtMostG),
    pourer: flight.pourer,
    seats: seats.map(({ sheet, taster }) => ({
      sheetId: sheet.id,
      taster: taster.name,
      named: !taster.guest,
    })),
    expiresAt: joining.expiresAt,
  };
}

export const joinHandlers: Handlers<"askJoining" | "join"> = {
  askJoining: (request) => opened(request, (records, found) => asked(records, found)) as Promise<JoinShown>,
  join: (request) => opened(request, (records, found) => joined(records, request, found)) as Promise<Joined>,
};
