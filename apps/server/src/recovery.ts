import { createCipheriv, createDecipheriv, randomBytes, scrypt } from "node:crypto";
import { type Archive, Id, type RecoveryFile, RestoreDraft } from "@partsproof/house/protocol";
import { wrappingKey } from "@partsproof/house/services";
import { COST, type ScryptCost } from "./passphrases.ts";

/** Wrapping keys by flight. */
type RecoveredKeys = Record<string, string>;

const SALT_BYTES = 16;
const IV_BYTES = 12;
const TAG_BYTES = 16;
const KEY_BYTES = 32;

/**
 * The wrapping keys of a household's flights under way, under a passphrase: scrypt (RFC 7914) with the cost of the owner's passphrase, then
 * AES-256-GCM (NIST SP 800-38D). Made of the seal key itself, so only where that is; no route gives it.
 */
export async function writeRecovery(
  archive: Archive,
  sealKey: Uint8Array,
  passphrase: string,
  cost: ScryptCost = COST,
): Promise<RecoveryFile> {
  const flights = (archive.tables["sealedKeys"] ?? []).map(({ flightId }) => Id.parse(flightId));
  const keys: RecoveredKeys = {};
  for (const id of flights) keys[id] = Buffer.from(await wrappingKey(sealKey, id)).toString("base64url");
  const household = { id: Id.parse(archive.household.id), name: archive.household.name };
  const salt = randomBytes(SALT_BYTES);
  const iv = randomBytes(IV_BYTES);
  const cipher = createCipheriv("aes-256-gcm", await derived(passphrase, cost, salt), iv);
  cipher.setAAD(Buffer.from(household.id));
  const sealed = Buffer.concat([
    iv,
    cipher.update(JSON.stringify(keys), "utf8"),
    cipher.final(),
    cipher.getAuthTag(),
  ]);
  return {
    format: "partsproof-recovery",
    formatVersion: 1,
    household,
    flights,
    scrypt: { ...cost, salt: salt.toString("base64url") },
    sealed: sealed.toString("base64url"),
  };
}

/** Its keys, or null where the passphrase is another one or the file was changed: the two look alike. */
export async function openRecovery(file: RecoveryFile, passphrase: string): Promise<RecoveredKeys | null> {
  const { salt, ...cost } = file.scrypt;
  const whole = Buffer.from(file.sealed, "base64url");
  if (whole.length < IV_BYTES + TAG_BYTES) return null;
  const key = await derived(passphrase, cost, Buffer.from(salt, "base64url"));
  try {
    const opened = createDecipheriv("aes-256-gcm", key, whole.subarray(0, IV_BYTES));
    opened.setAAD(Buffer.from(file.household.id));
    opened.setAuthTag(whole.subarray(-TAG_BYTES));
    const plain = Buffer.concat([opened.update(whole.subarray(IV_BYTES, -TAG_BYTES)), opened.final()]);
    return RestoreDraft.shape.recovery.unwrap().parse(JSON.parse(plain.toString("utf8")));
  } catch {
    return null;
  }
}

/** Composed and decomposed letters are the same letters (NIST SP 800-63B-4, 3.1.1.2). */
const derived = (passphrase: string, { N, r, p }: ScryptCost, salt: Buffer): Promise<Buffer> =>
  new Promise((resolve, reject) => {
    scrypt(passphrase.normalize("NFKC"), salt, KEY_BYTES, { N, r, p, maxmem: 160 * N * r }, (error, key) =>
      error ? reject(error) : resolve(key),
    );
  });
