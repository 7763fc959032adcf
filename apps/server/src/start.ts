import { existsSync, readFileSync } from "node:fs";
import { createServer as createSecureServer } from "node:https";
import type { AddressInfo } from "node:net";
import { fileURLToPath } from "node:url";
import { createAdaptorServer } from "@hono/node-server";
import { createServerApp } from "./app.ts";
import { readBackups } from "./back-up.ts";
import { keepBackups } from "./keep-backups.ts";
import { type OpenedHouse, openHouseFromEnvironment } from "./open-house.ts";
import { readSettings, type Settings } from "./settings.ts";
import { hereAddress, squareCode, tableAddresses } from "./table-address.ts";

/** How long requests that are still running may take to end after the server was told to stop. */
const PATIENCE_MS = 5000;

const KEPT_ALIVE_MS = 65_000;

export interface RunningServer {
  readonly address: string;
  /** What to print: addresses, database, data folder. Never a token or a key. */
  readonly says: string;
  /** Lets running requests end, then closes the house. */
  stop(): Promise<void>;
}

/** Opens the house that the environment names and listens. */
export async function startServer(env: NodeJS.ProcessEnv): Promise<RunningServer> {
  const settings = readSettings(env);
  const secure = secureOptions(settings);
  // Before anything is opened: what cannot be meant is told at once.
  readBackups(env);
  const webFolder = fileURLToPath(new URL("../../web/dist", import.meta.url));
  const house = await openHouseFromEnvironment(env);
  try {
    await needOwner(settings, house);
    const { hostname, port, origin, network } = settings;
    const app = createServerApp({ house: house.fetch, webFolder, network, origin, tls: secure !== null });
    const server = createAdaptorServer({ fetch: app.fetch, ...secure });
    await new Promise<void>((resolve, reject) => {
      server.once("error", (error) => reject(notListening(hostname, port, error)));
      server.listen(port, hostname, resolve);
    });
    // Longer than a phone rests between two notes: a connection closed just as it writes is a write sent twice.
    if ("keepAliveTimeout" in server) server.keepAliveTimeout = KEPT_ALIVE_MS;
    const bound = (server.address() as AddressInfo).port;
    const backups = keepBackups(house, env);
    return {
      address: hereAddress(settings, bound),
      says: saysOf(settings, bound, house, existsSync(webFolder), backups.says),
      stop: async () => {
        const closed = new Promise<void>((resolve) => server.close(() => resolve()));
        house.hush();
        if ("closeIdleConnections" in server) server.closeIdleConnections();
        const tooLate = setTimeout(() => {
          if ("closeAllConnections" in server) server.closeAllConnections();
        }, PATIENCE_MS);
        await closed;
        clearTimeout(tooLate);
        await backups.stop();
        await house.close();
      },
    };
  } catch (error) {
    await house.close();
    throw error;
  }
}

/** D1: nobody reaches the house from a network before it has an owner. */
async function needOwner({ network, hostname, origin }: Settings, house: OpenedHouse): Promise<void> {
  if (!network || (await house.hasOwner())) return;
  throw new Error(
    `listening for ${origin ?? hostname} requires an owner's passphrase, got none set: ` +
      "set one with `npm start -- --set-passphrase`, or in the app on this machine",
  );
}

function secureOptions({ tls }: Settings) {
  if (tls === null) return null;
  const read = (name: string, file: string): Buffer => {
    try {
      return readFileSync(file);
    } catch (error) {
      throw new Error(`${name} requires a file it can read, got ${file}`, { cause: error });
    }
  };
  const cert = read("PARTSPROOF_TLS_CERT", tls.cert);
  const key = read("PARTSPROOF_TLS_KEY", tls.key);
  return { createServer: createSecureServer, serverOptions: { cert, key, minVersion: "TLSv1.2" as const } };
}

function saysOf(
  settings: Settings,
  port: number,
  house: OpenedHouse,
  hasWeb: boolean,
  backups: string | null,
): string {
  const [first, ...others] = tableAddresses(settings, port);
  const atTheTable =
    first === undefined
      ? [
          "It listens to this machine only. For a table of phones: `npm start -- --set-passphrase`, " +
            "then `npm start -- --listen 0.0.0.0` (docs/guide/at-the-table.md).",
        ]
      : [
          `At the table: ${first}${others.length === 0 ? "" : `  (or ${others.join(", ")})`}`,
          squareCode(first),
          "From the network the owner signs in; guests come in by a flight's link or code and see that flight only.",
        ];
  return [
    `Parts & Proof is open at ${hereAddress(settings, port)}`,
    `Database: ${house.database}`,
    `Data folder: ${house.dataFolder}`,
    ...(backups === null ? [] : [backups]),
    ...atTheTable,
    ...(hasWeb ? [] : ["The web app is not built: only /api answers. `npm start` builds it."]),
  ].join("\n");
}

function notListening(hostname: string, port: number, error: Error): Error {
  const taken = "code" in error && error.code === "EADDRINUSE";
  const why = taken ? "one that another program holds; set PORT to another, or to 0 for any" : error.message;
  return new Error(`server requires the free port ${port} on ${hostname}, got ${why}`, { cause: error });
}
