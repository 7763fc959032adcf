import type { BodyOf, Client, SearchProblem, SearchWhiskey } from "@partsproof/house/protocol";
import { type AtHousehold, findWhiskey } from "../../door/index.ts";
import { readJsonFile } from "../../files/index.ts";
import { type GivenFlags, issueAt, refuse } from "../../flags/index.ts";
import { ofFile, ofHousehold, type Words } from "../../print/search.ts";
import type { fileFlag, shelfFlags } from "./search-flags.ts";

type Given = GivenFlags<typeof shelfFlags & { readonly file: typeof fileFlag }>;
export interface Here {
  readonly client: Client;
  readonly at: () => Promise<AtHousehold>;
}

/** The problem of a file or of a household, how its whiskeys are called, and whom to ask. */
export interface AskedProblem {
  readonly client: Client;
  readonly problem: SearchProblem;
  readonly candidates: readonly SearchWhiskey[];
  readonly words: Words;
}

export async function askedProblem(given: Given, here: Here): Promise<AskedProblem> {
  if (given.file !== undefined) {
    // Not read by us: the house's schema says what is wrong with it, field by field.
    const problem = (await readJsonFile(given.file, ["file"])) as SearchProblem;
    return { client: here.client, problem, candidates: [], words: ofFile };
  }
  needAim(given);
  const at = await here.at();
  const body = await shelfBody(given, at);
  const asked = await at.client("shelfProblem", { at: { household: at.household.id }, body });
  return { client: at.client, ...asked, words: ofHousehold(asked) };
}

/** What a household is asked: the target's file, and the flags over it. */
export async function shelfBody(given: Given, at: AtHousehold): Promise<BodyOf<"searchShelf">> {
  const { target, like, change } = given;
  const file = (target === undefined ? {} : await readJsonFile(target, ["target"])) as Partial<
    BodyOf<"searchShelf">
  >;
  const named = async (flag: "must-use" | "keep"): Promise<string[]> =>
    Promise.all(given[flag].map(async (text, n) => (await findWhiskey(at, text, [flag, n])).id));
  const [mustUse, keep] = [await named("must-use"), await named("keep")];
  const rules = {
    maxBottles: given["max-bottles"],
    maxParts: given["max-parts"],
    abv: given.abv,
    minAgeYears: given["min-age"],
    maxPricePerLitre: given["max-price"],
    batchMl: given.batch,
    mustUse: mustUse.length > 0 ? mustUse : undefined,
    keep: keep.length > 0 ? keep : undefined,
    onlyWoods: given["only-wood"].length > 0 ? [...given["only-wood"]] : undefined,
    notGone: given["not-gone"] ? (true as const) : undefined,
  };
  return {
    ...file,
    ...(like === undefined ? {} : { like: (await findWhiskey(at, like, ["like"])).id }),
    ...(change.length > 0 ? { change: Object.fromEntries(change) } : {}),
    ...(given.mean ? { mixing: "mean" as const } : {}),
    ...(given.learned ? { levels: "learned" as const } : {}),
    ...(given.top === undefined ? {} : { top: given.top }),
    rules: { maxBottles: 3, maxParts: 8, ...file.rules, ...defined(rules) },
  };
}

export function needAim({ file, like, target }: Given): void {
  if (file ?? like ?? target) return;
  refuse(issueAt(["file"], "flag_missing", "--file <file>, --like <whiskey> or --target <file>", null));
}

const defined = <T extends object>(record: T): { [K in keyof T]?: Exclude<T[K], undefined> } =>
  Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };

export const secondsOf = (seconds: number | undefined): { readonly seconds?: number } =>
  seconds === undefined ? {} : { seconds };
