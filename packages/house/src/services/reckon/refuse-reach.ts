import { refuse } from "../refuse.ts";

type Path = readonly (string | number)[];

/** A "no" of core's, told with the nearest that can be had. */
export function refuseReach(
  no: {
    readonly code: string;
    readonly limit: number;
    readonly received: number;
    readonly message: string;
  },
  path: Path,
  unit: string,
  nearest?: string,
): never {
  const { code, limit, received } = no;
  const message = nearest === undefined ? no.message : `${no.message}; nearest: ${nearest}`;
  refuse(422, { code, path: [...path], limit: `${limit} ${unit}`, received, message });
}

/** A question that says too little or too much. `received` is null where something is missing. */
export function refuseAsked(code: string, path: Path, limit: string, received: unknown = null): never {
  const what = path.length === 0 ? "request" : path.join(".");
  const got = received === null ? "nothing" : JSON.stringify(received);
  refuse(422, { code, path: [...path], limit, received, message: `${what} requires ${limit}, got ${got}` });
}

/**
 * Which one of several fields was given.
 *
 * @param asked the fields by name, undefined where not given
 * @returns the name of the only one
 */
export function onlyOne<K extends string>(asked: Readonly<Record<K, unknown>>): K {
  const names = Object.keys(asked) as K[];
  const given = names.filter((name) => asked[name] !== undefined);
  const limit = `one of ${names.join(", ")}`;
  const [only, second] = given;
  if (only === undefined) refuseAsked("amount_missing", [names[0] ?? ""], limit);
  if (second !== undefined) {
    refuseAsked("amounts_exclude", [second], `${limit}, and ${only} is given`, asked[second]);
  }
  return only;
}
