import { lazy, Suspense } from "react";
import { Busy, Page } from "../../parts/index.ts";
import { Link, usePlace } from "../../router/index.ts";
import "../reckon/reckon.css";
import "./counts.css";

// Each in a chunk of its own, as at the bench.
const JOBS = [
  { id: "rank", name: "Rank", Job: lazy(() => import("./rank-job.tsx")) },
  { id: "pairs", name: "Pairs", Job: lazy(() => import("./pairs-job.tsx")) },
  { id: "mixture", name: "Mixture", Job: lazy(() => import("./mixture-job.tsx")) },
  { id: "differ", name: "Differ", Job: lazy(() => import("./differ-job.tsx")) },
  { id: "match", name: "Match", Job: lazy(() => import("./match-job.tsx")) },
  { id: "could-show", name: "Could show", Job: lazy(() => import("./could-show-job.tsx")) },
] as const;

/** What numbers show that come from elsewhere, and what chosen ones could show beforehand. */
export default function Counts() {
  const { query } = usePlace();
  const asked = query.get("of");
  const { id, Job } = JOBS.find((job) => job.id === asked) ?? JOBS[0];
  return (
    <Page
      title="Numbers from elsewhere"
      wide
      lead="Rankings, comparisons, mixtures, right answers: what they show, and what chosen numbers could show before a flight. Nothing of it is kept."
    >
      <nav className="reckon-tabs counts-tabs" aria-label="What the numbers are">
        {JOBS.map((job) => (
          <Link
            key={job.id}
            to={job.id === "rank" ? "/counts" : `/counts?of=${job.id}`}
            aria-current={job.id === id ? "page" : undefined}
          >
            {job.name}
          </Link>
        ))}
      </nav>
      <div className="counts">
        <Suspense fallback={<Busy what="the numbers" />}>
          <Job />
        </Suspense>
      </div>
    </Page>
  );
}
