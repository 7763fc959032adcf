import { type GuestRole, Id, OWN_HEADER, type Route } from "../../protocol/index.ts";
import { needToken, roleAt } from "../flights/index.ts";
import type { Caller, Who } from "../handler.ts";
import { limitsOf } from "../limits/index.ts";
import type { House, Reads } from "../ports.ts";
import { refuse } from "../refuse.ts";
import type { SessionRow } from "../rows.ts";
import { sessionOf, sessionUsed } from "../sessions/index.ts";

/** What the door looks at before anything of a request is read. */
export interface Knock {
  readonly route: Pick<Route, "opens" | "method">;
  readonly at: Readonly<Record<string, string>>;
  readonly caller: Caller;
  /** The bearer token, if one came. */
  readonly token: string | null;
  /** The token of the session's cookie, if one came. */
  readonly session: string | null;
  /** Whether the request bears the house's own header, which no page of another site can send. */
  readonly own: boolean;
}

type Let = Exclude<Who, { readonly kind: "here" }>;
interface Seen {
  readonly who: Let;
  readonly row: SessionRow | null;
}

/** D1, D2: who comes in, and as what; refuses everybody else before the route is looked at. */
export async function admitted(house: House, knock: Knock): Promise<Who> {
  const { caller, route, session, own } = knock;
  if (caller.from === "here") return { kind: "here" };
  const now = house.clock.now();
  const { who, row } = await house.store.read(async (records): Promise<Seen> => {
    const found = session === null ? null : await sessionOf(records, session, now);
    if (found) return { who: { kind: "owner", sessionId: found.id }, row: found };
    const stranger = typeof route.opens === "string";
    return { who: stranger ? { kind: "stranger" } : await guestAt(records, knock), row: null };
  });
  if (row) await sessionUsed(house, row, now);
  if (who.kind === "owner") {
    if (route.method !== "GET" && !own) needOwn();
    return who;
  }
  if (who.kind === "stranger") {
    limitsOf(house).needStrangersTurn(caller, now.getTime());
    if (route.opens !== "anyone") await refuseStranger(knock);
  } else if (!rolesOf(route).includes(who.role)) {
    refuse(403, {
      code: "role_wrong",
      path: ["authorization"],
      limit: `a token of the flight's ${rolesOf(route).join(", ")}`,
      received: who.role,
      message: `this route requires a token of the flight's ${rolesOf(route).join(", ")}, got that of a ${who.role}`,
    });
  }
  return who;
}

const rolesOf = ({ opens }: Knock["route"]): readonly GuestRole[] => (typeof opens === "string" ? [] : opens);

/** D3: a token opens its own flight; of any other it is the token of a stranger. */
async function guestAt(records: Reads, { at, token }: Knock): Promise<Let> {
  const named = Id.safeParse(at["household"]).success && Id.safeParse(at["flight"]).success;
  const flight = named ? await records.find("flight", at["household"] ?? "", at["flight"] ?? "") : null;
  const role = flight && token !== null ? await roleAt(records, flight, token) : null;
  return flight && role ? { kind: "guest", flightId: flight.id, ...role } : { kind: "stranger" };
}

/** The answer does not tell whether there is such a household, flight or token. */
async function refuseStranger({ route, token }: Knock): Promise<void> {
  if (route.opens !== "owner") return needToken(token, null);
  refuse(401, {
    code: "sign_in_needed",
    path: [],
    limit: "the owner's session",
    received: null,
    message: "from the network this route requires the owner's session, got none",
  });
}

/** D6. */
function needOwn(): never {
  refuse(403, {
    code: "own_header_missing",
    path: [OWN_HEADER],
    limit: `the header ${OWN_HEADER}`,
    received: null,
    message: `a request of the owner's session that changes something requires the header ${OWN_HEADER}, got none`,
  });
}
