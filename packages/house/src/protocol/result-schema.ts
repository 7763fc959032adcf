import { z } from "zod";
import { RESULT_FILE_TYPE, ResultFile } from "./result-file.ts";

/** JSON Schema of a result file, made from the schema that reads it: docs/result-file.schema.json. */
export function resultFileSchema(): object {
  const { $schema: _, ...shape } = z.toJSONSchema(ResultFile, { target: "draft-2020-12", io: "input" });
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "Parts & Proof: a result file",
    description: `What came of a recipe in another kitchen; media type ${RESULT_FILE_TYPE}.`,
    ...shape,
  };
}
