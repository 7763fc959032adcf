import { type Client, createClient } from "@partsproof/house/protocol";

/**
 * The door of a house for sums alone: the same routes, schemas and refusals, and no household, database or folder behind
 * it. What it says is what any house says.
 */
export async function reckoner(): Promise<Client> {
  const { openReckoner } = await import("@partsproof/house/reckoner");
  return createClient(openReckoner(), "http://reckoner.invalid");
}
