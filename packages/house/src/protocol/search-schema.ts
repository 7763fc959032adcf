import { z } from "zod";
import { SearchAnswer } from "./search-answer.ts";
import { SearchProblem } from "./search.ts";

/** JSON Schema of a problem's file and of what a search answers, made from the schemas that read them: docs/search.schema.json. */
export function searchSchema(): object {
  const of = (schema: z.ZodType, io: "input" | "output"): object => {
    const { $schema: _, ...shape } = z.toJSONSchema(schema, { target: "draft-2020-12", io });
    return shape;
  };
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "Parts & Proof: a search for recipes",
    description:
      "A problem, as `search --file` and POST /api/search read it; what they answer is $defs.answer.",
    ...of(SearchProblem, "input"),
    $defs: { answer: of(SearchAnswer, "output") },
  };
}
