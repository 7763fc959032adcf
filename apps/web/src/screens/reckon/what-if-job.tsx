import { Choice } from "../../parts/index.ts";
import type { JobProps } from "./job.ts";
import { Evaporated } from "./evaporated.tsx";
import { FourParts } from "./four-parts.tsx";
import { Lift } from "./lift.tsx";
import { Sample } from "./sample.tsx";

const QUESTIONS = {
  parts: "a part more or less",
  lift: "lift a bottle",
  sample: "an unlabelled sample",
  gone: "what evaporated",
} as const;
type Question = keyof typeof QUESTIONS;
const JOBS = { parts: FourParts, lift: Lift, sample: Sample, gone: Evaporated } as const;

/** Questions asked the other way round. */
export default function WhatIfJob(props: JobProps) {
  const { fields } = props.typed;
  const question = Object.hasOwn(QUESTIONS, fields.whatIf) ? (fields.whatIf as Question) : "parts";
  const Job = JOBS[question];
  return (
    <>
      <Choice
        label="What if"
        value={question}
        onChange={(whatIf) => props.set({ whatIf })}
        options={(Object.keys(QUESTIONS) as Question[]).map((one) => ({ value: one, label: QUESTIONS[one] }))}
      />
      <Job {...props} />
    </>
  );
}
