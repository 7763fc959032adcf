import { resolve } from "node:path";
import { type Client, createClient } from "@partsproof/house/protocol";
import { issueAt, refuse } from "../flags/index.ts";
import { NotReached } from "./not-reached.ts";
import { overNetwork } from "./over-network.ts";
import { sessionsIn } from "./sessions.ts";

export interface OpenedDoor {
  readonly client: Client;
  /** Which house this is: an address, or which database and where. */
  readonly says: string;
  close(): Promise<void>;
  /** What seals flights, where the house was opened in this process. */
  readonly sealKey?: Uint8Array;
}

interface WhichHouse {
  /** Address of a house that is running somewhere. */
  readonly house?: string | undefined;
  /** Data folder of the house to open in this process. */
  readonly data?: string | undefined;
}

/**
 * The one door: over HTTP where an address is given, else in this process, on the same database and with the same
 * seal key as a server started with the same folder and environment.
 *
 * @throws BadInput when both are given; NotReached when the house cannot be opened.
 */
export async function openDoor({ house, data }: WhichHouse, env: NodeJS.ProcessEnv): Promise<OpenedDoor> {
  if (house !== undefined && data !== undefined) {
    refuse(issueAt(["data"], "flags_exclude", "no --house beside it", data));
  }
  if (house !== undefined) {
    return {
      client: createClient(overNetwork(house, sessionsIn(env)), house),
      says: house,
      close: async () => {},
    };
  }
  // Read only where it is needed: a sum, or a house elsewhere, does not wait for the database's drivers.
  const { openHouseFromEnvironment } = await import("@partsproof/server");
  const opened = await openHouseFromEnvironment(
    data === undefined ? env : { ...env, PARTSPROOF_DATA: resolve(data) },
  ).catch((error: unknown) => {
    throw new NotReached("house_not_opened", [], "a database it can open", null, messageOf(error));
  });
  const base = "http://house.invalid";
  return {
    client: createClient(opened.fetch, base),
    says: opened.database,
    close: () => opened.close(),
    sealKey: opened.sealKey,
  };
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
