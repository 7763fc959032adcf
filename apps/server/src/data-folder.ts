import { homedir } from "node:os";
import { join, resolve } from "node:path";

/** Where the household's file and the seal key live: PARTSPROOF_DATA, or the place this system keeps such things. */
export function dataFolder(
  env: NodeJS.ProcessEnv,
  platform: NodeJS.Platform = process.platform,
  home: string = homedir(),
): string {
  if (env["PARTSPROOF_DATA"]) return resolve(env["PARTSPROOF_DATA"]);
  if (platform === "darwin") return join(home, "Library", "Application Support", "partsproof");
  if (platform === "win32") return join(env["LOCALAPPDATA"] || join(home, "AppData", "Local"), "partsproof");
  // XDG Base Directory Specification 0.8: a relative path is to be ignored.
  const data = env["XDG_DATA_HOME"];
  return join(data?.startsWith("/") ? data : join(home, ".local", "share"), "partsproof");
}
