import { z } from "zod";
import { NextFlightAnswer, NextFlightDraft } from "./next-flight.ts";

/** JSON Schema of a history's file and of what is answered, made from the schemas that read them: docs/next.schema.json. */
export function nextFlightSchema(): object {
  const of = (schema: z.ZodType, io: "input" | "output"): object => {
    const { $schema: _, ...shape } = z.toJSONSchema(schema, { target: "draft-2020-12", io });
    return shape;
  };
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "Parts & Proof: what to pour next",
    description:
      "A history, as `next --file` and POST /api/next read it: docs/next.md; what they answer is $defs.answer.",
    ...of(NextFlightDraft, "input"),
    $defs: { answer: of(NextFlightAnswer, "output") },
  };
}
