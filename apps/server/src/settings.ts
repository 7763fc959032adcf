import { parseArgs } from "node:util";
import { isLoopback } from "./loopback.ts";

export interface Settings {
  readonly hostname: string;
  /** 0 for any free one. */
  readonly port: number;
  /** Whether anybody but this machine can reach it: by where it listens, or through a proxy. */
  readonly network: boolean;
  /** The address at which a proxy makes the house known, such as https://table.home.arpa. */
  readonly origin: string | null;
  /** Files of a certificate and its key, to speak HTTPS by itself. */
  readonly tls: { readonly cert: string; readonly key: string } | null;
}

const DEFAULT_PORT = 4480;

export interface Asked {
  readonly env: NodeJS.ProcessEnv;
  /** Read the owner's passphrase from standard input, keep it and end. */
  readonly setPassphrase: boolean;
}

/** The command line beside the environment: `--listen 0.0.0.0 --port 4480 --set-passphrase`. */
export function readFlags(args: readonly string[], env: NodeJS.ProcessEnv): Asked {
  const { values } = parseArgs({
    args: [...args],
    options: {
      listen: { type: "string" },
      port: { type: "string" },
      "set-passphrase": { type: "boolean", default: false },
    },
  });
  return {
    env: {
      ...env,
      ...(values.listen === undefined ? {} : { HOST: values.listen }),
      ...(values.port === undefined ? {} : { PORT: values.port }),
    },
    setPassphrase: values["set-passphrase"],
  };
}

/** Where to listen: HOST and PORT; how it is reached: PARTSPROOF_ORIGIN, PARTSPROOF_TLS_CERT, PARTSPROOF_TLS_KEY. */
export function readSettings(env: NodeJS.ProcessEnv): Settings {
  const hostname = env["HOST"] || "127.0.0.1";
  const port = env["PORT"] || String(DEFAULT_PORT);
  if (!/^\d{1,5}$/.test(port) || Number(port) > 65_535) {
    throw new Error(`PORT requires a whole number from 0 to 65535 (0 for any free port), got ${port}`);
  }
  const origin = readOrigin(env["PARTSPROOF_ORIGIN"] || null);
  const network = !isLoopback(hostname) || origin !== null;
  return { hostname, port: Number(port), network, origin, tls: readTls(env) };
}

function readOrigin(given: string | null): string | null {
  if (given === null) return null;
  const url = URL.canParse(given) ? new URL(given) : null;
  if (url && /^https?:$/.test(url.protocol) && url.pathname === "/" && url.search === "") return url.origin;
  throw new Error(`PARTSPROOF_ORIGIN requires an address such as https://table.home.arpa, got ${given}`);
}

function readTls(env: NodeJS.ProcessEnv): Settings["tls"] {
  const [cert, key] = [env["PARTSPROOF_TLS_CERT"] || null, env["PARTSPROOF_TLS_KEY"] || null];
  if (cert !== null && key !== null) return { cert, key };
  if (cert === null && key === null) return null;
  const missing = cert === null ? "PARTSPROOF_TLS_CERT" : "PARTSPROOF_TLS_KEY";
  throw new Error(`HTTPS requires both PARTSPROOF_TLS_CERT and PARTSPROOF_TLS_KEY, got no ${missing}`);
}
