import { useState } from "react";
import { Page } from "../../parts/index.ts";
import { Link, usePlace } from "../../router/index.ts";
import { keep, kept } from "../../session/index.ts";
import { Mixing } from "./mixing.tsx";
import { Reducing } from "./reducing.tsx";
import { asWritten, FIRST, type Sum } from "./sum.ts";
import "./reckon.css";

const KEY = "reckoner";

/** The sum people do in their heads, done right. Open to anyone, with no household. */
export default function Reckon() {
  const { query } = usePlace();
  const water = query.get("do") === "water";
  const [sum, setSum] = useState<Sum>(() => asWritten(kept(KEY)) ?? FIRST);
  const change = (next: Sum): void => {
    setSum(next);
    keep(KEY, JSON.stringify(next));
  };
  return (
    <Page
      title="Quick reckoner"
      wide
      lead="Alcohol and water shrink when they mix, so an average of strengths is wrong. This sum is not."
    >
      <nav className="reckon-tabs" aria-label="What to reckon">
        <Link to="/reckon" aria-current={water ? undefined : "page"}>
          Mix parts
        </Link>
        <Link to="/reckon?do=water" aria-current={water ? "page" : undefined}>
          Add water
        </Link>
      </nav>
      {water ? <Reducing sum={sum} onChange={change} /> : <Mixing sum={sum} onChange={change} />}
      <p className="soft small">
        Strength by volume at 20 °C, proof at 60 °F, by the density formula of OIML R 22. Sugar and colour are
        not counted.
      </p>
    </Page>
  );
}
