import { bornOfHouse } from "../birth.ts";
import type { Caller } from "../handler.ts";
import { hashToken, newToken } from "../ids.ts";
import type { House, Reads, Records } from "../ports.ts";
import type { SessionRow } from "../rows.ts";

const HOUR_MS = 3_600_000;
/** D4. */
const IDLE_MS = 12 * HOUR_MS;
const LONGEST_MS = 7 * 24 * HOUR_MS;
/** How often the moment of last use is written: not with every request. */
const TOUCH_MS = 5 * 60_000;

export const SESSION_MAX_AGE_S = LONGEST_MS / 1000;

const stands = ({ usedAt, expiresAt }: SessionRow, now: Date): boolean =>
  Date.parse(expiresAt) > now.getTime() && now.getTime() - Date.parse(usedAt) < IDLE_MS;

/** A new session; its token is told this once. */
export async function beginSession(
  records: Records,
  house: Pick<House, "clock" | "random">,
  { address }: Caller,
): Promise<string> {
  const token = newToken(house);
  const head = bornOfHouse(house);
  const now = house.clock.now();
  for (const row of await records.ofHouse.list("session")) {
    if (!stands(row, now)) await records.ofHouse.remove("session", row.id);
  }
  await records.ofHouse.insert("session", {
    ...head,
    tokenHash: await hashToken(token),
    usedAt: head.createdAt,
    expiresAt: new Date(now.getTime() + LONGEST_MS).toISOString(),
    address: address ?? "",
  });
  return token;
}

/** The session of a token, if it stands. */
export async function sessionOf(records: Reads, token: string, now: Date): Promise<SessionRow | null> {
  const [row] = await records.ofHouse.list("session", { where: { tokenHash: await hashToken(token) } });
  return row && stands(row, now) ? row : null;
}

/** Notes that it is used, if that was not noted of late. */
export async function sessionUsed(house: Pick<House, "store">, row: SessionRow, now: Date): Promise<void> {
  if (now.getTime() - Date.parse(row.usedAt) < TOUCH_MS) return;
  const at = now.toISOString();
  const used = { ...row, version: row.version + 1, updatedAt: at, usedAt: at };
  // Another request may have noted it just before: that is as good.
  await house.store.transaction((records) => records.ofHouse.replace("session", used));
}

export async function sessionStands(records: Reads, id: string, now: Date): Promise<boolean> {
  const [row] = await records.ofHouse.list("session", { where: { id } });
  return row !== undefined && stands(row, now);
}

export async function endSession(records: Records, token: string): Promise<boolean> {
  const [row] = await records.ofHouse.list("session", { where: { tokenHash: await hashToken(token) } });
  return row !== undefined && records.ofHouse.remove("session", row.id);
}

export async function endEverySession(records: Records): Promise<void> {
  for (const { id } of await records.ofHouse.list("session")) await records.ofHouse.remove("session", id);
}
