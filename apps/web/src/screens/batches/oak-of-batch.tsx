import type { Batch } from "@partsproof/house/protocol";
import { useAsk } from "../../api.ts";
import { oakInAndOut } from "../../print/oak-words.ts";
import { useHousehold } from "../../session/index.ts";
import { OakNote } from "../recipes/recipe-fields.tsx";

/** What oak is in a batch and what was, as it was really put in; until any was, what the recipe asks for. */
export function OakOfBatch({ batch, asked }: { readonly batch: Batch; readonly asked: string }) {
  const household = useHousehold();
  const rests = useAsk("listRests", { at: { household: household.id, batch: batch.id } });
  if (rests.state !== "here") return null;
  const oak = oakInAndOut(rests.answer.items);
  const lines = [
    ["Oak in it", oak.in],
    ["Oak that was in it", oak.out],
    ["Oak, by its recipe", oak.in === "" && oak.out === "" ? asked : ""],
  ].filter(([, words]) => words !== "");
  if (lines.length === 0) return null;
  return (
    <>
      {lines.map(([label, words]) => (
        <p key={label}>
          <strong>{label}:</strong> {words}
        </p>
      ))}
      <OakNote />
    </>
  );
}
