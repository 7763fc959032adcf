import { spawnSync } from "node:child_process";
import { installWithApt, isProgram, onPath } from "./apt.ts";

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"] as const;
const advice =
  "Install Chromium (Debian: apt-get install chromium) or set CHROMIUM_PATH to the program, then run again.";

/** As root in a container, with nothing that calls home. */
export const chromiumFlags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
] as const;

export interface Chromium {
  readonly path: string;
  readonly version: string;
}

/** A file of the right name may be a stub that only tells you to install something, so we ask its version. */
const ask = (path: string): Chromium | undefined => {
  if (!isProgram(path)) return undefined;
  const answer = spawnSync(path, ["--version"], { encoding: "utf8", timeout: 30_000 });
  return answer.status === 0 ? { path, version: answer.stdout.trim() } : undefined;
};

const findChromium = (): Chromium | undefined => {
  const chosen = process.env["CHROMIUM_PATH"];
  if (chosen !== undefined && chosen !== "") {
    const found = ask(chosen);
    if (!found) throw new Error(`CHROMIUM_PATH requires a program that answers --version, got ${chosen}`);
    return found;
  }
  for (const name of names) {
    for (const path of [`/usr/bin/${name}`, onPath(name)]) {
      const found = path === undefined ? undefined : ask(path);
      if (found) return found;
    }
  }
  return undefined;
};

/** Find Chromium, install it as root on Debian, or throw saying what to do. */
export const ensureChromium = async (): Promise<Chromium> => {
  const present = findChromium();
  if (present) return present;
  await installWithApt("chromium", "The browser tests", advice);
  const installed = findChromium();
  if (!installed) throw new Error(`Chromium was installed but does not answer --version. ${advice}`);
  return installed;
};
