import { type DoorShown, PASSPHRASE_LEAST } from "../../protocol/index.ts";
import { bornOfHouse } from "../birth.ts";
import type { Caller, Handlers, Who } from "../handler.ts";
import { limitsOf } from "../limits/index.ts";
import { hubOf } from "../live/index.ts";
import type { House, Passphrases, Reads } from "../ports.ts";
import { refuse, tooMany } from "../refuse.ts";
import type { OwnerRow } from "../rows.ts";
import { beginSession, endEverySession, endSession, SESSION_MAX_AGE_S } from "../sessions/index.ts";
import { forgetOldTrail, trail } from "../trail/index.ts";

/** A passphrase takes 128 MiB while it is hashed: so many at once, whoever asks. */
const HASHES_AT_ONCE = 3;
const hashing = new WeakMap<object, { count: number }>();

/** D5: composed and decomposed letters are the same letters (NIST SP 800-63B-4, 3.1.1.2). */
const normal = (passphrase: string): string => passphrase.normalize("NFKC");

function passphrasesOf(house: House): Passphrases {
  if (house.passphrases) return house.passphrases;
  refuse(409, {
    code: "no_passphrases",
    path: [],
    limit: "a house that hashes passphrases",
    received: "one that does not",
    message: "a passphrase requires a house that hashes passphrases, got one that does not",
  });
}

async function withHash<T>(house: House, work: (passphrases: Passphrases) => Promise<T>): Promise<T> {
  const passphrases = passphrasesOf(house);
  const now = hashing.get(house) ?? { count: 0 };
  hashing.set(house, now);
  if (now.count >= HASHES_AT_ONCE) tooMany("a passphrase", 1000);
  now.count += 1;
  try {
    return await work(passphrases);
  } finally {
    now.count -= 1;
  }
}

const ownerOf = async (records: Reads): Promise<OwnerRow | null> =>
  (await records.ofHouse.list("owner", { limit: 1 }))[0] ?? null;

/** Whether this house has an owner who can sign in. */
export async function hasOwner(house: Pick<House, "store">): Promise<boolean> {
  return (await house.store.read(ownerOf)) !== null;
}

/** D5, D9: counted, and in the trail whichever way it was tried. */
async function refuseWrong(house: House, caller: Caller, path: string): Promise<never> {
  const held = limitsOf(house).wrongSignIn(caller, house.clock.now().getTime());
  await house.store.transaction(async (records) => {
    await trail(records, house, "sign-in refused", { caller });
    if (held) await trail(records, house, "sign-ins held back", { caller });
  });
  refuse(403, {
    code: "passphrase_wrong",
    path: [path],
    limit: "the owner's passphrase",
    received: "another one",
    message: "signing in requires the owner's passphrase, got another one",
  });
}

const youOf = (who: Who): DoorShown["you"] => (who.kind === "guest" ? "stranger" : who.kind);

export const doorHandlers: Handlers<
  "getDoor" | "setPassphrase" | "signIn" | "signOut" | "signOutEverywhere"
> = {
  getDoor: async ({ house, who }) => ({
    you: youOf(who),
    passphraseSet: await hasOwner(house),
    passphraseAtLeast: PASSPHRASE_LEAST,
  }),

  /** D4: whoever was signed in under the old one is no more. */
  setPassphrase: async ({ house, body, caller, who, setCookie }) => {
    const limits = limitsOf(house);
    const now = house.clock.now().getTime();
    const known = await house.store.read(ownerOf);
    if (who.kind !== "here") {
      limits.needSignInTry(caller, now);
      const fits = await withHash(house, (p) =>
        p.fits(normal(body.present ?? ""), known?.passphrase ?? null),
      );
      if (!fits) await refuseWrong(house, caller, "present");
    }
    const passphrase = await withHash(house, (p) => p.hash(normal(body.passphrase)));
    await house.store.transaction(async (records) => {
      for (const old of await records.ofHouse.list("owner")) await records.ofHouse.remove("owner", old.id);
      await records.ofHouse.insert("owner", { ...bornOfHouse(house), passphrase });
      await endEverySession(records);
      await trail(records, house, "passphrase set", { caller });
    });
    hubOf(house).recheck();
    if (who.kind === "owner") setCookie({ token: null, maxAgeS: 0 });
    return undefined;
  },

  /** D5: as long where the passphrase is wrong as where none is set. */
  signIn: async ({ house, body, caller, setCookie }) => {
    const limits = limitsOf(house);
    const now = house.clock.now().getTime();
    limits.needSignInTry(caller, now);
    const known = await house.store.read(ownerOf);
    const fits = await withHash(house, (p) => p.fits(normal(body.passphrase), known?.passphrase ?? null));
    if (!fits) await refuseWrong(house, caller, "passphrase");
    const token = await house.store.transaction(async (records) => {
      await trail(records, house, "signed in", { caller });
      await forgetOldTrail(records, house);
      return beginSession(records, house, caller);
    });
    limits.signedIn(caller);
    setCookie({ token, maxAgeS: SESSION_MAX_AGE_S });
    return undefined;
  },

  signOut: async ({ house, caller, session, setCookie }) => {
    if (session !== null) {
      await house.store.transaction(async (records) => {
        if (await endSession(records, session)) await trail(records, house, "signed out", { caller });
      });
      hubOf(house).recheck();
    }
    setCookie({ token: null, maxAgeS: 0 });
    return undefined;
  },

  signOutEverywhere: async ({ house, caller, setCookie }) => {
    await house.store.transaction(async (records) => {
      await endEverySession(records);
      await trail(records, house, "signed out everywhere", { caller });
    });
    hubOf(house).recheck();
    setCookie({ token: null, maxAgeS: 0 });
    return undefined;
  },
};
