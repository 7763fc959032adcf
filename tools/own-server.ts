import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onLeaving } from "./leaving.ts";
import { programs } from "./programs.ts";
import { run } from "./run.ts";

/** The real server on an empty data folder of its own, on any free port, until we leave; gives its address. */
export async function openServer(name: string): Promise<string> {
  const main = join(await programs(), "server.mjs");
  const data = mkdtempSync(join(tmpdir(), `partsproof-${name}-`));
  onLeaving(() => rmSync(data, { recursive: true, force: true }));
  const open = Promise.withResolvers<string>();
  const server = run(process.execPath, [main], {
    env: { PORT: "0", PARTSPROOF_DATA: data },
    onLine: (line) => {
      const address = /open at (http:\S+)/.exec(line)?.[1];
      if (address !== undefined) open.resolve(address);
    },
  });
  void server.then(({ ending }) =>
    open.reject(new Error(`the server ended with ${ending} before it listened`)),
  );
  return open.promise;
}
