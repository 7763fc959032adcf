import type { Client, Household } from "@partsproof/house/protocol";

/** A household of an open house. */
export interface AtHousehold {
  readonly client: Client;
  readonly household: Household;
}

export type Path = readonly (string | number)[];
