import type { AddressInfo } from "node:net";
import { fileURLToPath } from "node:url";
import { existsSync } from "node:fs";
import { createAdaptorServer } from "@hono/node-server";
import { createServerApp } from "./app.ts";
import { openHouseFromEnvironment } from "./open-house.ts";
import { readSettings } from "./settings.ts";

/** How long requests that are still running may take to end after the server was told to stop. */
const PATIENCE_MS = 5000;

export interface RunningServer {
  readonly address: string;
  /** What to print: address, database, data folder. Never a token or a key. */
  readonly says: string;
  /** Lets running requests end, then closes the house. */
  stop(): Promise<void>;
}

/** Opens the house that the environment names and listens. */
export async function startServer(env: NodeJS.ProcessEnv): Promise<RunningServer> {
  const { hostname, port } = readSettings(env);
  const webFolder = fileURLToPath(new URL("../../web/dist", import.meta.url));
  const house = await openHouseFromEnvironment(env);
  const server = createAdaptorServer({ fetch: createServerApp(house.fetch, webFolder).fetch });
  try {
    await new Promise<void>((resolve, reject) => {
      server.once("error", (error) => reject(notListening(hostname, port, error)));
      server.listen(port, hostname, resolve);
    });
  } catch (error) {
    await house.close();
    throw error;
  }
  const bound = (server.address() as AddressInfo).port;
  const address = `http://${hostname.includes(":") ? `[${hostname}]` : hostname}:${bound}`;
  return {
    address,
    says: [
      `Parts & Proof is open at ${address}`,
      `Database: ${house.database}`,
      `Data folder: ${house.dataFolder}`,
      "It listens to this machine only; listening on a network comes in a later version, with an owner's passphrase.",
      ...(existsSync(webFolder)
        ? []
        : ["The web app is not built: only /api answers. `npm start` builds it."]),
    ].join("\n"),
    stop: async () => {
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      if ("closeIdleConnections" in server) server.closeIdleConnections();
      const tooLate = setTimeout(() => {
        if ("closeAllConnections" in server) server.closeAllConnections();
      }, PATIENCE_MS);
      await closed;
      clearTimeout(tooLate);
      await house.close();
    },
  };
}

function notListening(hostname: string, port: number, error: Error): Error {
  const taken = "code" in error && error.code === "EADDRINUSE";
  const why = taken ? "one that another program holds; set PORT to another, or to 0 for any" : error.message;
  return new Error(`server requires the free port ${port} on ${hostname}, got ${why}`, { cause: error });
}
