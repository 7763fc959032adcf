import { POUR_LESS_G, UK_UNIT_G, US_STANDARD_DRINK_G } from "@partsproof/core/sensory";
import { NumberHero, SafetyNote } from "../../parts/index.ts";
import { drinksDigits, gramsDigits, pourToKeep } from "./print-alcohol.ts";
import "./alcohol-note.css";

export interface AlcoholNoteProps {
  /** Grams for one taster. */
  readonly grams: number;
  readonly pourMl: number;
  readonly glasses: number;
  /** Whether it can still be poured otherwise. */
  readonly planning?: boolean;
}

/** How much alcohol a flight holds for one taster, and how to stay well with it. */
export function AlcoholNote({ grams, pourMl, glasses, planning = false }: AlcoholNoteProps) {
  const much = grams > POUR_LESS_G;
  return (
    <div className="alcohol">
      <p className="alcohol-of">
        For each taster, at most: {glasses} × {pourMl} mL, if every glass is drunk.
      </p>
      <div className="alcohol-numbers" aria-live="polite" aria-atomic="true">
        <NumberHero label="Pure alcohol" value={gramsDigits(grams)} unit="g" />
        <NumberHero
          label={`US standard drinks (${US_STANDARD_DRINK_G} g)`}
          value={drinksDigits(grams / US_STANDARD_DRINK_G)}
          unit=""
        />
        <NumberHero label={`UK units (${UK_UNIT_G} g)`} value={drinksDigits(grams / UK_UNIT_G)} unit="" />
      </div>
      {much && <PourLess grams={grams} pourMl={pourMl} planning={planning} />}
      <SafetyNote title="Before anybody tastes">
        <ul>
          <li>Something to spit into and a glass of water for each taster.</li>
          <li>Nobody who tastes drives afterwards, however little it was.</li>
          <li>Only people of legal drinking age. Not in pregnancy.</li>
        </ul>
      </SafetyNote>
    </div>
  );
}

function PourLess({ grams, pourMl, planning }: Pick<AlcoholNoteProps, "grams" | "pourMl" | "planning">) {
  const less = pourToKeep(POUR_LESS_G, grams, pourMl);
  return (
    <div className="alcohol-much">
      <p>
        <strong>{planning && less > 0 ? "Pour less, or spit." : "Spit, and leave some in the glass."}</strong>{" "}
        More than {POUR_LESS_G} g is more than two US standard drinks, and two is the most in a day that the
        Dietary Guidelines for Americans 2020–2025 named for men; for women it was one. Less is better than
        more.
        {planning && less > 0 && (
          <>
            {" "}
            With {less} mL in a glass it is {gramsDigits((grams * less) / pourMl)} g.
          </>
        )}
      </p>
    </div>
  );
}
