import { useState } from "react";
import { asTools, type Tools } from "../../bench/index.ts";
import { Page } from "../../parts/index.ts";
import { Link, usePlace } from "../../router/index.ts";
import { keep, kept } from "../../session/index.ts";
import { CorrectJob } from "./correct-job.tsx";
import { MixJob } from "./mix-job.tsx";
import { ReduceJob } from "./reduce-job.tsx";
import { ToolsPanel } from "./tools-panel.tsx";
import { asTyped, type Typed } from "./typed.ts";
import { WeighJob } from "./weigh-job.tsx";
import { WhatIfJob } from "./what-if-job.tsx";
import "./reckon.css";

const KEY = "bench";
const TOOLS_KEY = "bench.tools";
const JOBS = [
  { id: "mix", name: "Mix", Job: MixJob },
  { id: "reduce", name: "Reduce", Job: ReduceJob },
  { id: "weigh", name: "Weigh", Job: WeighJob },
  { id: "correct", name: "Correct", Job: CorrectJob },
  { id: "what-if", name: "What if", Job: WhatIfJob },
] as const;

/** The bench: sums people do in their heads, done right, each with how far off it may be. Open to anyone, with no household. */
export default function Reckon() {
  const { query } = usePlace();
  const asked = query.get("do");
  const { id, Job } = JOBS.find((job) => job.id === (asked === "water" ? "reduce" : asked)) ?? JOBS[0];
  const [typed, setTyped] = useState<Typed>(() => asTyped(kept(KEY)));
  const [tools, setTools] = useState<Tools>(() => asTools(kept(TOOLS_KEY)));
  const change = (next: Typed): void => {
    setTyped(next);
    keep(KEY, JSON.stringify(next));
  };
  return (
    <Page
      title="Quick reckoner"
      wide
      lead="Alcohol and water shrink when they mix, so an average of strengths is wrong. These sums are not, and each says how far off it may be."
    >
      <nav className="reckon-tabs" aria-label="What to reckon">
        {JOBS.map((job) => (
          <Link
            key={job.id}
            to={job.id === "mix" ? "/reckon" : `/reckon?do=${job.id}`}
            aria-current={job.id === id ? "page" : undefined}
          >
            {job.name}
          </Link>
        ))}
      </nav>
      <ToolsPanel
        tools={tools}
        onChange={(next) => {
          setTools(next);
          keep(TOOLS_KEY, JSON.stringify(next));
        }}
      />
      <Job
        typed={typed}
        set={(fields) => change({ ...typed, fields: { ...typed.fields, ...fields } })}
        setRows={(rows) => change({ ...typed, rows })}
        tools={tools}
      />
      <p className="soft small">
        Strength by volume at 20 °C, proof at 60 °F, by the density formula of OIML R 22; glass expands by 25
        millionths a degree (ISO 1768). Sugar and colour are not counted but where solids are asked for.
      </p>
    </Page>
  );
}
