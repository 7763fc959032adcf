import { createClient } from "@partsproof/house/protocol";
import { openHouseFromEnvironment } from "./open-house.ts";
import { readHidden } from "./read-hidden.ts";

/** Reads the owner's passphrase from standard input, without showing it, and keeps it; everyone is signed out. */
export async function setPassphrase(env: NodeJS.ProcessEnv): Promise<string> {
  const passphrase = await readHidden("Owner's passphrase, at least 15 characters (it is not shown): ");
  const house = await openHouseFromEnvironment(env);
  try {
    await createClient(house.fetch, "http://house.invalid")("setPassphrase", { body: { passphrase } });
    return "The owner's passphrase is set; whoever was signed in is signed out.";
  } finally {
    await house.close();
  }
}
