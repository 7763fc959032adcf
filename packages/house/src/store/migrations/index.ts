import type { Kysely } from "kysely";
import type { Store } from "../../services/index.ts";
import type { Database } from "../query.ts";
import { beginning } from "./0001-beginning.ts";
import { table } from "./0002-table.ts";
import { profile } from "./0003-profile.ts";
import { question } from "./0004-question.ts";
import { strengths } from "./0005-strengths.ts";
import { words } from "./0006-words.ts";
import { making } from "./0007-making.ts";
import { passingOn } from "./0008-passing-on.ts";
import { rest } from "./0009-rest.ts";
import { place } from "./0010-place.ts";

/** Each step by its name, oldest first. A step that has been released is never changed; a new one is added. */
export type Migrations = Readonly<
  Record<string, (db: Kysely<Database>, database: Store["database"]) => Promise<void>>
>;

export const migrations: Migrations = {
  "0001_beginning": beginning,
  "0002_table": table,
  "0003_profile": profile,
  "0004_question": question,
  "0005_strengths": strengths,
  "0006_words": words,
  "0007_making": making,
  "0008_passing_on": passingOn,
  "0009_rest": rest,
  "0010_place": place,
};
