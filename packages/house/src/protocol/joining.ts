import { z } from "zod";
import { Id, Instant, ShortText } from "./fields.ts";
import { Alcohol, Flight, Sheet } from "./flight.ts";
import { FlightDesign } from "./question.ts";

/** What somebody may come to a flight as. The host set it and so needs no way in. */
export const JoiningRole = z.enum(["taster", "watcher", "pourer"]);
export type JoiningRole = z.infer<typeof JoiningRole>;

export const JoiningDraft = z.object({
  role: JoiningRole,
  /** How long the way in stays open. */
  minutes: z.int().min(5).max(720).default(180),
});

/** A bearer token's form: 32 random bytes as hex. */
const Token = z.string().regex(/^[0-9a-f]{64}$/, "64 hexadecimal digits");

/** Link and code are shown this once; the house keeps keyed hashes of them. */
export const JoiningMade = z.object({
  id: Id,
  role: JoiningRole,
  expiresAt: Instant,
  /** 256 random bits, for a square code. */
  link: Token,
  /** 8 characters of 32, 40 random bits, to be typed; none for a pourer, whose way in opens the key. */
  code: z.string().nullable(),
});
export type JoiningMade = z.infer<typeof JoiningMade>;

export const Guest = z.object({
  id: Id,
  role: JoiningRole,
  name: z.string(),
  sheetId: Id.nullable(),
  joinedAt: Instant,
  revokedAt: Instant.nullable(),
});
export const Joinings = z.object({
  open: z.array(z.object({ id: Id, role: JoiningRole, expiresAt: Instant })),
  guests: z.array(Guest),
});
export type Joinings = z.infer<typeof Joinings>;

export const Ticket = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("link"), link: Token }),
  /** As typed: capitals, spaces and hyphens do not matter; O is read as 0, I and L as 1. */
  z.object({ kind: z.literal("code"), code: z.string().max(40) }),
]);
export type Ticket = z.infer<typeof Ticket>;

export const JoinAsk = z.object({ ticket: Ticket });

/** What a ticket opens, before a name is given. */
export const JoinShown = z.object({
  householdId: Id,
  flightId: Id,
  flightName: z.string(),
  role: JoiningRole,
  state: Flight.shape.state,
  glassCount: z.int(),
  pourMl: z.number(),
  /** For a taster: at most, in all glasses. */
  alcoholAtMost: Alcohol,
  pourer: z.string().nullable(),
  /** Seats that are free; one that is `named` waits for that taster of the household. */
  seats: z.array(z.object({ sheetId: Id, taster: z.string(), named: z.boolean() })),
  expiresAt: Instant,
});
export type JoinShown = z.infer<typeof JoinShown>;

/** A key that a device draws for one act, so that the act sent again is the same act: at least 128 random bits. */
export const DeviceKey = z.string().regex(/^[0-9A-Za-z_-]{22,64}$/, "22 to 64 characters of 0-9 A-Z a-z _ -");

export const JoinDraft = z.object({
  ticket: Ticket,
  key: DeviceKey,
  name: ShortText.max(40),
  /** The guest's own word; without it nobody joins. */
  ofLegalAge: z.boolean(),
  /** The seat to take; null for the first that nobody is named for. */
  sheetId: Id.nullable().default(null),
});

/** The token opens this flight in this role and nothing else. */
export const Joined = z.object({
  householdId: Id,
  flightId: Id,
  guestId: Id,
  role: JoiningRole,
  name: z.string(),
  token: Token,
  sheet: Sheet.nullable(),
});
export type Joined = z.infer<typeof Joined>;

/** All that a watcher sees before the reveal: who has locked. */
export const Watched = z.object({
  flightId: Id,
  flightName: z.string(),
  state: Flight.shape.state,
  /** How many sets or rounds the glasses of each seat stand in. */
  layout: FlightDesign.pick({ method: true, setsEach: true, glassesEach: true }),
  seats: z.array(
    z.object({
      taster: z.string(),
      state: Flight.shape.sheets.element.shape.state,
      lockedAt: Instant.nullable(),
    }),
  ),
});
export type Watched = z.infer<typeof Watched>;
