import { randomBytes } from "node:crypto";
import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { dataFolder } from "@partsproof/server/data-folder";
import { issueAt, refuse } from "../flags/index.ts";

interface Session {
  readonly cookie: string;
  readonly until: string;
}

/** The house's own names for its cookie; none of another program on that machine is kept. */
const OWN = /^(?:__Host-)?partsproof$/;

/** Where the owner is signed in: one session a house, by its origin, readable by this user alone. */
export interface Sessions {
  /** What to send to this house as Cookie; null where nobody is signed in, or not any more. */
  of(origin: string): string | null;
  /** Takes up what the house answered as Set-Cookie. */
  heard(origin: string, setCookie: readonly string[]): void;
}

/** The sessions in the data folder of this machine's own house. */
export function sessionsIn(env: NodeJS.ProcessEnv, now: () => Date = () => new Date()): Sessions {
  const folder = dataFolder(env);
  const file = join(folder, "sessions.json");
  const stands = ({ until }: Session): boolean => Date.parse(until) > now().getTime();
  return {
    of: (origin) => {
      const session = read(file)[origin];
      return session !== undefined && stands(session) ? session.cookie : null;
    },
    heard: (origin, setCookie) => {
      for (const line of setCookie) {
        const [pair = "", ...attributes] = line.split(";").map((part) => part.trim());
        const [name = "", value = ""] = pair.split("=", 2);
        if (!OWN.test(name)) continue;
        const maxAgeS = Number(
          attributes.find((one) => /^max-age=/i.test(one))?.slice("max-age=".length) ?? 0,
        );
        const { [origin]: _ended, ...others } = read(file);
        const kept = Object.fromEntries(Object.entries(others).filter(([, session]) => stands(session)));
        if (value !== "" && maxAgeS > 0) {
          const until = new Date(now().getTime() + maxAgeS * 1000).toISOString();
          kept[origin] = { cookie: pair, until };
        }
        write(folder, file, kept);
      }
    },
  };
}

function read(file: string): Readonly<Record<string, Session>> {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch {
    return {};
  }
  try {
    const kept = JSON.parse(text) as unknown;
    if (typeof kept === "object" && kept !== null && !Array.isArray(kept))
      return kept as Readonly<Record<string, Session>>;
  } catch {
    // Told below.
  }
  return refuse(
    issueAt(["sessions"], "sessions_unreadable", "a file that this program wrote, or none", file),
  );
}

/** Beside it first and then in its place: it is there whole or as it was, and never readable by others. */
function write(folder: string, file: string, sessions: Readonly<Record<string, Session>>): void {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const beside = `${file}.${randomBytes(6).toString("hex")}`;
  writeFileSync(beside, `${JSON.stringify(sessions, null, 2)}\n`, { mode: 0o600, flag: "wx" });
  renameSync(beside, file);
}
