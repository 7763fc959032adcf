import { z } from "zod";
import { RestAnswer, RestDraft } from "./rest.ts";

/** JSON Schema of a rest's file and of what is answered, made from the schemas that read them: docs/rest.schema.json. */
export function restSchema(): object {
  const of = (schema: z.ZodType, io: "input" | "output"): object => {
    const { $schema: _, ...shape } = z.toJSONSchema(schema, { target: "draft-2020-12", io });
    return shape;
  };
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "Parts & Proof: a rest on oak",
    description:
      "A rest, as `rest --file` and POST /api/rest read it: docs/guide/rest.md; what they answer is $defs.answer.",
    ...of(RestDraft, "input"),
    $defs: { answer: of(RestAnswer, "output") },
  };
}
