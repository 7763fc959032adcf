import type { Caller } from "../handler.ts";
import type { House } from "../ports.ts";
import { tooMany } from "../refuse.ts";
import { createBackOff, createBuckets } from "./bucket.ts";

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const ALL = "everybody";

/** D7. Of each address: for everything asked without a session or a token that fits. */
const STRANGERS = { atOnce: 60, perSecond: 1 };
/** D5. Of each address; and of all addresses together, which only slows down. */
const SIGN_IN = { free: 4, firstWaitMs: 1000, longestWaitMs: 15 * MINUTE_MS, forgetMs: HOUR_MS };
const SIGN_IN_OF_ALL = { free: 40, firstWaitMs: 1000, longestWaitMs: 30_000, forgetMs: 10 * MINUTE_MS };
/** J4. */
const CODES = { free: 5, firstWaitMs: 2000, longestWaitMs: 15 * MINUTE_MS, forgetMs: HOUR_MS };
const CODES_OF_ALL = { free: 100, firstWaitMs: HOUR_MS, longestWaitMs: HOUR_MS, forgetMs: HOUR_MS };
/** Links have 256 bits: a wrong one is an old one. */
const LINKS = { atOnce: 20, perSecond: 0.5 };
const GLASSES = { atOnce: 10, perSecond: 2 };

/** An IPv6 host may use any address of its /64, so that is what is counted. */
function addressKey(address: string | null): string {
  if (address === null) return "none";
  if (!address.includes(":")) return address;
  const [head = "", tail] = address.split("::");
  const groups = head === "" ? [] : head.split(":");
  const ends = tail === undefined || tail === "" ? [] : tail.split(":");
  const zeros = tail === undefined ? 0 : Math.max(0, 8 - groups.length - ends.length);
  return [...groups, ...Array.from({ length: zeros }, () => "0"), ...ends]
    .slice(0, 4)
    .map((group) => group.replace(/^0+(?=.)/, ""))
    .join(":");
}

function createLimits() {
  const strangers = createBuckets(STRANGERS);
  const links = createBuckets(LINKS);
  const glasses = createBuckets(GLASSES);
  const [signIns, signInsOfAll] = [createBackOff(SIGN_IN), createBackOff(SIGN_IN_OF_ALL)];
  const [codes, codesOfAll] = [createBackOff(CODES), createBackOff(CODES_OF_ALL)];
  const need = (what: string, wait: number): void => {
    if (wait > 0) tooMany(what, wait);
  };
  const keyOf = ({ address }: Caller): string => addressKey(address);

  return {
    /** On the house's own machine nobody waits. */
    needStrangersTurn: (caller: Caller, now: number): void => {
      if (caller.from === "network")
        need("a request without a session or token", strangers(keyOf(caller), now));
    },
    needSignInTry: (caller: Caller, now: number): void => {
      if (caller.from === "here") return;
      need("signing in", Math.max(signIns.wait(keyOf(caller), now), signInsOfAll.wait(ALL, now)));
    },
    /** Whether from this one on the address, or everybody, has to wait. */
    wrongSignIn: (caller: Caller, now: number): boolean => {
      if (caller.from === "here") return false;
      const held = [signIns.wrong(keyOf(caller), now), signInsOfAll.wrong(ALL, now)];
      return held.includes(true);
    },
    signedIn: (caller: Caller): void => signIns.right(keyOf(caller)),
    needJoinTry: (caller: Caller, now: number, kind: "link" | "code"): void => {
      if (caller.from === "here") return;
      const key = keyOf(caller);
      if (kind === "link") return need("a join link", links(key, now));
      need("a join code", Math.max(codes.wait(key, now), codesOfAll.wait(ALL, now)));
    },
    /** Whether this one shut the codes for everybody. */
    wrongJoinTry: (caller: Caller, now: number, kind: "link" | "code"): boolean => {
      if (caller.from === "here" || kind === "link") return false;
      codes.wrong(keyOf(caller), now);
      return codesOfAll.wrong(ALL, now);
    },
    glassTurned: (sheetId: string, now: number): number => glasses(sheetId, now),
  };
}

export type Limits = ReturnType<typeof createLimits>;

const known = new WeakMap<object, Limits>();

/** What this process remembers of tries; a restart forgets it, which is no matter (docs/decisions/0008). */
export function limitsOf(house: House): Limits {
  const limits = known.get(house) ?? createLimits();
  known.set(house, limits);
  return limits;
}
