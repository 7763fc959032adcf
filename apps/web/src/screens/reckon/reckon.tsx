import { lazy, Suspense, useState } from "react";
import { asTools, type Tools } from "../../bench/index.ts";
import { Busy, Page } from "../../parts/index.ts";
import { Link, usePlace } from "../../router/index.ts";
import { keep, kept } from "../../session/index.ts";
import { ToolsPanel } from "./tools-panel.tsx";
import { asTyped, type Typed } from "./typed.ts";
import "./reckon.css";

const KEY = "bench";
const TOOLS_KEY = "bench.tools";
// Each job in a chunk of its own: a phone that mixes does not fetch the hydrometer.
const JOBS = [
  { id: "mix", name: "Mix", Job: lazy(() => import("./mix-job.tsx")) },
  { id: "reduce", name: "Reduce", Job: lazy(() => import("./reduce-job.tsx")) },
  { id: "weigh", name: "Weigh", Job: lazy(() => import("./weigh-job.tsx")) },
  { id: "correct", name: "Correct", Job: lazy(() => import("./correct-job.tsx")) },
  { id: "what-if", name: "What if", Job: lazy(() => import("./what-if-job.tsx")) },
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
      <Suspense fallback={<Busy what="the bench" />}>
        <Job
          typed={typed}
          set={(fields) => change({ ...typed, fields: { ...typed.fields, ...fields } })}
          setRows={(rows) => change({ ...typed, rows })}
          tools={tools}
        />
      </Suspense>
      <p>
        Counts and rankings: <Link to="/counts">numbers from elsewhere</Link>.
      </p>
      <p className="soft small">
        Strength by volume at 20 °C, proof at 60 °F, by the density formula of OIML R 22; glass expands by 25
        millionths a degree (ISO 1768). Sugar and colour are not counted but where solids are asked for.
      </p>
    </Page>
  );
}
