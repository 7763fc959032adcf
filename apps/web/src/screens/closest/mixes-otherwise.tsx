import type { Problem } from "@partsproof/core/blending";
import { memo } from "react";
import { type Rules, type Shelf, lawsUsed } from "../../closest/index.ts";

export interface MixesOtherwiseProps {
  readonly shelf: Shelf;
  readonly problem: Problem | null;
  readonly rules: Rules;
}

/** What counts here and was found not to be the mean of the parts, and whether that is gone by. */
export const MixesOtherwise = memo(function MixesOtherwise({ shelf, problem, rules }: MixesOtherwiseProps) {
  if (problem === null) return null;
  const learned = lawsUsed(shelf.laws, problem.target, { wary: false, byMean: false });
  const used = lawsUsed(shelf.laws, problem.target, rules);
  if (learned.length === 0) return null;
  return (
    <div className="mixes-otherwise">
      <p className="small">
        {used.length > 0
          ? "Your blends have shown how these mix, and it is gone by:"
          : rules.byMean
            ? "Your blends have shown how these mix; you take them as the mean of the parts:"
            : "Your blends have shown how these mix; with what nobody has said counted, only the mean can be reckoned with:"}
      </p>
      <ul className="small">
        {learned.map(({ attribute, sentence }) => (
          <li key={attribute}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
});
