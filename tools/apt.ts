import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { run } from "./run.ts";

/** The full path of a program on PATH, or undefined. */
export const onPath = (program: string): string | undefined =>
  (process.env["PATH"] ?? "")
    .split(delimiter)
    .filter((folder) => folder !== "")
    .map((folder) => join(folder, program))
    .find(isProgram);

export const isProgram = (path: string): boolean => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/**
 * Install a Debian package when we are root and apt is here; otherwise throw, saying what to do.
 * RUNLEVEL=1 keeps the package from starting a service of its own.
 */
export const installWithApt = async (debianPackage: string, what: string, advice: string): Promise<void> => {
  if (process.getuid?.() !== 0 || onPath("apt-get") === undefined) {
    throw new Error(`${what} requires a program that was not found here. ${advice}`);
  }
  console.log(`${what}: not found; installing the Debian package ${debianPackage} with apt-get`);
  const env = { DEBIAN_FRONTEND: "noninteractive", RUNLEVEL: "1" };
  for (const args of [
    ["update", "-q"],
    ["install", "-y", "-q", "--no-install-recommends", debianPackage],
  ]) {
    const ran = await run("apt-get", args, { env });
    if (!ran.ok) throw new Error(`${what}: apt-get ${args.join(" ")} ended with ${ran.ending}. ${advice}`);
  }
};
