import { z } from "zod";
import { MixtureAnswer, PairsAnswer, RankAnswer } from "./counts-answer.ts";
import { MixtureDraft, PairsDraft, RankDraft } from "./counts-asked.ts";

/** JSON Schema of the three files and of what is answered, made from the schemas that read them: docs/counts.schema.json. */
export function countsSchema(): object {
  const of = (schema: z.ZodType, io: "input" | "output"): object => {
    const { $schema: _, ...shape } = z.toJSONSchema(schema, { target: "draft-2020-12", io });
    return shape;
  };
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "Parts & Proof: rankings, comparisons of two, mixtures",
    description:
      "The files that `rank`, `pairs` and `mixture` read with --file, and the bodies of POST /api/counts/rank, pairs and mixture; what they answer is $defs.rankAnswer, pairsAnswer and mixtureAnswer.",
    anyOf: [{ $ref: "#/$defs/rank" }, { $ref: "#/$defs/pairs" }, { $ref: "#/$defs/mixture" }],
    $defs: {
      rank: of(RankDraft, "input"),
      pairs: of(PairsDraft, "input"),
      mixture: of(MixtureDraft, "input"),
      rankAnswer: of(RankAnswer, "output"),
      pairsAnswer: of(PairsAnswer, "output"),
      mixtureAnswer: of(MixtureAnswer, "output"),
    },
  };
}
