import type { MixtureAnswer } from "@partsproof/house/protocol";
import { useState } from "react";
import { SelectField } from "../../parts/index.ts";
import { drawIntervals, Figure } from "../../plots/index.ts";
import { FileJob } from "./file-job.tsx";
import { Told } from "./told.tsx";
import { ends, few, fixed, percent } from "./told-numbers.ts";

const MODELS = ["linear", "quadratic", "special-cubic"] as const satisfies readonly MixtureAnswer["model"][];

/** Mixtures that were measured, of a file. */
export default function MixtureJob() {
  const [model, setModel] = useState<string>("");
  return (
    <FileJob
      route="countsMixture"
      over={model === "" ? {} : { model }}
      holds={<>Components and runs as JSON: the shares of each mixture, x, and what was measured of it, y.</>}
      fields={
        <SelectField
          label="Scheffé's polynomial"
          value={model}
          onChange={setModel}
          path={["model"]}
          options={
            <>
              <option value="">as the file says, else quadratic</option>
              {MODELS.map((one) => (
                <option key={one}>{one}</option>
              ))}
            </>
          }
        />
      }
    >
      {(answer) => <Mixed answer={answer} />}
    </FileJob>
  );
}

type Ends = readonly [number | null, number | null];

/** What stands out: terms of more than one component are what a mixture gives over the shares of its parts. */
function titleOf({ intervals, level }: MixtureAnswer): string {
  const blended = Object.entries(intervals ?? {}).filter(([term]) => term.includes(":"));
  if (blended.length === 0) return "What each component is expected to give by itself";
  const clear = (sign: 1 | -1) =>
    blended.flatMap(([term, [low, high]]) => ((sign === 1 ? (low ?? 0) : -(high ?? 0)) > 0 ? [term] : []));
  const [more, less] = [clear(1), clear(-1)];
  const how = `(${percent(level)} of each term by itself, ${blended.length} looked at)`;
  if (more.length + less.length === 0)
    return `No mixture is shown to give more or less than its parts ${how}`;
  return `${[
    more.length > 0
      ? `${more.join(" and ")} ${more.length === 1 ? "gives" : "give"} more than the parts`
      : "",
    less.length > 0
      ? `${less.join(" and ")} ${less.length === 1 ? "gives" : "give"} less than the parts`
      : "",
  ]
    .filter((part) => part !== "")
    .join("; ")} ${how}`;
}

function Mixed({ answer }: { readonly answer: MixtureAnswer }) {
  const { model, runs, coefficients, standardErrors, intervals, sigma, df, rSquared, level, reason, notes } =
    answer;
  const terms = Object.entries(coefficients ?? {});
  const ofTerm = (term: string): Ends => intervals?.[term] ?? [null, null];
  return (
    <Told
      name="mixture"
      answer={answer}
      sentences={reason === null ? [] : [`There is no full answer: ${reason.message}.`]}
      facts={[
        ["Runs", String(runs)],
        ["Sigma", sigma === null ? null : `${few(sigma, 4)}, ${df} degrees of freedom`],
        ["R²", rSquared === null ? null : `${fixed(rSquared, 4)}, about the mean`],
        ["Note", notes.length === 0 ? null : notes.join("; ")],
        ["Method", `Scheffé's ${model} polynomial by least squares, no intercept`],
      ]}
    >
      {terms.length > 0 && (
        <Figure
          title={intervals === null ? "What was fitted, with no say of how far off it is" : titleOf(answer)}
          name="mixture-terms"
          note={`Coefficients: of one component what it gives alone; of more, what they give together over their shares.${intervals === null ? "" : ` Dot: fitted; line: ${percent(level)}.`}`}
          draw={(width) =>
            drawIntervals(
              terms.map(([term, value]) => ({
                label: term,
                value,
                low: ofTerm(term)[0] ?? value,
                high: ofTerm(term)[1] ?? value,
                said: few(value, 4),
              })),
              width,
            )
          }
          table={{
            heads: ["Term", "Coefficient", "Error", percent(level)],
            rows: terms.map(([term, value]) => [
              term,
              few(value, 5),
              standardErrors === null ? "none" : few(standardErrors[term] ?? 0),
              intervals === null ? "none" : ends(ofTerm(term)),
            ]),
          }}
        />
      )}
    </Told>
  );
}
