import { type Client, type Issue, Refusal } from "@partsproof/house/protocol";
import { type AtHousehold, chooseHousehold, type OpenedDoor, reckoner } from "../door/index.ts";
import {
  BadInput,
  type Flags,
  type GivenFlags,
  one,
  type Parsed,
  readAddress,
  readText,
  type YesFlag,
  yes,
} from "../flags/index.ts";

/** What a command gives: one result in two forms, and words beside it that are not the result. */
export interface Answer {
  /** As the house's API has it. */
  readonly json: unknown;
  readonly text: () => string;
  /** For standard error. */
  readonly notes?: readonly string[];
}

type Places = Readonly<Record<string, string>>;
type Words<A extends string> = Readonly<Record<A, string>>;

interface Definition<A extends string, M extends string, F extends Flags> {
  /** How it is called: "shelf add". */
  readonly name: string;
  readonly says: string;
  /** Arguments that must be there, with what they are; then those that may. */
  readonly args?: Words<A>;
  readonly maybe?: Words<M>;
  readonly flags: F;
  /** What to type, without the program's name. */
  readonly example: string;
  /** Which flag a field of the house's own is, so that an issue names what was typed: slots is slot. */
  readonly places?: Places;
}

interface Given<A extends string, M extends string, F extends Flags> {
  readonly args: Words<A> & Partial<Words<M>>;
  readonly flags: GivenFlags<F>;
}

/** A command as the table has it: nothing of its own types is left. */
export interface Command {
  readonly name: string;
  readonly says: string;
  readonly args: Words<string>;
  readonly maybe: Words<string>;
  readonly flags: Flags;
  readonly example: string;
  run(given: Parsed, open: OpenHouse): Promise<Answer>;
}

/** Opens the house the flags name. It is closed by whoever made this function. */
export type OpenHouse = (which: {
  readonly house?: string | undefined;
  readonly data?: string | undefined;
}) => Promise<OpenedDoor>;

const everyCommandsFlags: { readonly json: YesFlag; readonly help: YesFlag } = {
  json: yes("the result as JSON, every number in full"),
  help: yes("this text"),
};
const houseFlags = {
  data: one(
    readText("data"),
    "<folder>",
    "data folder of the house; else PARTSPROOF_DATA, else the server's own",
  ),
  house: one(readAddress, "<address>", "a house that is running, such as http://127.0.0.1:4480"),
};
const householdFlags = {
  ...houseFlags,
  household: one(readText("household"), "<household>", "id or name; not needed where there is only one"),
};

/** A sum that needs no house: asked through the reckoner's door, so that it is the same sum everywhere. */
export function reckoning<F extends Flags, M extends string = never>(
  definition: Definition<never, M, F> & {
    readonly run: (flags: GivenFlags<F>, client: Client, args: Partial<Words<M>>) => Promise<Answer>;
  },
): Command {
  const { run, ...face } = definition;
  return {
    ...plain(face, {}),
    run: async (given) => {
      const client = await reckoner();
      const args = given.args as Partial<Words<M>>;
      return run(given.flags as GivenFlags<F>, client, args).catch((error: unknown) =>
        renamed(error, face.places),
      );
    },
  };
}

/** A command that needs a house and no household. */
export function houseCommand<A extends string, M extends string, F extends Flags>(
  definition: Definition<A, M, F> & {
    readonly run: (
      given: Given<A, M, F>,
      house: { readonly client: Client; readonly says: string },
    ) => Promise<Answer>;
  },
): Command {
  const { run, ...face } = definition;
  return {
    ...plain(face, houseFlags),
    run: async (given, open) => {
      const typed = given as Given<A, M, F & typeof houseFlags>;
      const house = await open(typed.flags as Which);
      return run(typed as Given<A, M, F>, house).catch((error: unknown) => renamed(error, face.places));
    },
  };
}

type WhichHousehold = Which & { readonly household?: string };

async function atHousehold(open: OpenHouse, which: WhichHousehold): Promise<AtHousehold> {
  const { client } = await open(which);
  return { client, household: await chooseHousehold(client, which.household) };
}

/** A command in one household. */
export function householdCommand<A extends string, M extends string, F extends Flags>(
  definition: Definition<A, M, F> & {
    readonly run: (given: Given<A, M, F>, here: AtHousehold) => Promise<Answer>;
  },
): Command {
  const { run, ...face } = definition;
  return {
    ...plain(face, householdFlags),
    run: async (given, open) => {
      const here = await atHousehold(open, given.flags);
      return run(given as unknown as Given<A, M, F>, here).catch((error: unknown) =>
        renamed(error, face.places),
      );
    },
  };
}

/**
 * A command that may ask a house or none: on a file it is a sum, and with `--house` that house's own. `at` opens a
 * household, for what is asked of one.
 */
export function fileCommand<F extends Flags>(
  definition: Definition<never, never, F> & {
    readonly run: (
      flags: GivenFlags<F>,
      here: { readonly client: Client; readonly at: () => Promise<AtHousehold> },
    ) => Promise<Answer>;
  },
): Command {
  const { run, ...face } = definition;
  return {
    ...plain(face, householdFlags),
    run: async (given, open) => {
      const which = given.flags as WhichHousehold;
      const at = (): Promise<AtHousehold> => atHousehold(open, which);
      const client = which.house === undefined ? await reckoner() : (await open(which)).client;
      return run(given.flags as GivenFlags<F>, { client, at }).catch((error: unknown) =>
        renamed(error, face.places),
      );
    },
  };
}

/** Whether a house, a folder or a household was named. */
export const asksHouse = ({ house, data, household }: WhichHousehold): boolean =>
  house !== undefined || data !== undefined || household !== undefined;

/** A sum that needs no house, and a household's own where one is named. */
export function maybeAtHousehold<F extends Flags, M extends string = never>(
  definition: Definition<never, M, F> & {
    readonly run: (
      given: Given<never, M, F>,
      which: WhichHousehold,
      doors: { readonly plain: () => Promise<Client>; readonly open: OpenHouse },
    ) => Promise<Answer>;
  },
): Command {
  const { run, ...face } = definition;
  return {
    ...plain(face, householdFlags),
    run: async (given, open) =>
      run(given as unknown as Given<never, M, F>, given.flags as WhichHousehold, {
        plain: reckoner,
        open,
      }).catch((error: unknown) => renamed(error, face.places)),
  };
}

/** Inside a field of the house's own these are no flags: a strength is typed whole. */
const INSIDE = new Set(["value", "strength"]);

/** Throws on, with issues at the flags they came from. A place may be two words of the path: "before.celsius". */
function renamed(error: unknown, places: Places = {}): never {
  const at = (issue: Issue): Issue => {
    for (const words of [2, 1]) {
      const place = issue.path.slice(0, words).join(".");
      const flag = issue.path.length >= words && Object.hasOwn(places, place) ? places[place] : undefined;
      if (flag === undefined) continue;
      const rest = issue.path.slice(words).filter((word) => typeof word === "number" || !INSIDE.has(word));
      return { ...issue, path: [flag, ...rest] };
    }
    return issue;
  };
  if (error instanceof BadInput) throw new BadInput(error.issues.map(at));
  if (error instanceof Refusal) throw new Refusal(error.status, error.issues.map(at));
  throw error;
}

type Which = Parameters<OpenHouse>[0];

function plain<A extends string, M extends string, F extends Flags>(
  { name, says, args, maybe, flags, example }: Definition<A, M, F>,
  more: Flags,
): Omit<Command, "run"> {
  return {
    name,
    says,
    args: args ?? {},
    maybe: maybe ?? {},
    flags: { ...flags, ...more, ...everyCommandsFlags },
    example,
  };
}
