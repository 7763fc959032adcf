import type { Chance } from "@partsproof/house/protocol";
import type { z } from "zod";
import { sentence } from "../../parts/index.ts";
import { luckVerdict, printP } from "./luck-words.ts";

export interface LuckProps {
  readonly chance: z.infer<typeof Chance>;
  /** What the tail counts: "this many right or more". */
  readonly tail: string;
  readonly sides?: 1 | 2;
}

/** How much of it could be luck: in words, and in numbers one tap away. */
export function Luck({ chance, tail, sides = 1 }: LuckProps) {
  return (
    <div className="luck">
      <p>
        {chance.p === 1 ? (
          // Nothing right is nothing to put down to luck.
          sentence(chance.words)
        ) : (
          <>
            <strong>{luckVerdict(chance.p)}</strong>: {chance.words}.
          </>
        )}
      </p>
      <details>
        <summary>The number and how it was reckoned</summary>
        <p>
          p = {printP(chance.p)}
          {chance.fraction !== null && ` (${chance.fraction.replace("/", " / ")})`}: {tail},{" "}
          {sides === 1 ? "one" : "two"}-sided; {chance.method}.
        </p>
      </details>
    </div>
  );
}
