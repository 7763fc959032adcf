import type { Refusal } from "@partsproof/house/protocol";
import { Button, LinkButton } from "./button.tsx";
import { sentence } from "./sentence.ts";
import "./states.css";

export interface BrokenProps {
  /** A `broken` answer of useAsk. */
  readonly asked: { readonly refusal: Refusal | null; readonly again: () => void };
  /** What did not work, as a sentence. */
  readonly title: string;
  /** Offers the front page besides trying again. */
  readonly home?: boolean;
}

/** Says what happened, in the house's words, and the one thing to do next. */
export function Broken({ asked, title, home = false }: BrokenProps) {
  const shutOut = asked.refusal?.issues.some(({ code }) => code === "sign_in_needed") ?? false;
  const gone = asked.refusal?.status === 404;
  return (
    <section className="state state-broken" role="alert">
      <h2>{title}</h2>
      {asked.refusal?.issues.map((issue) => (
        <p key={`${issue.code} ${issue.path.join(".")}`}>{sentence(issue.message)}</p>
      ))}
      <div className="state-actions">
        {shutOut && (
          <LinkButton kind="main" to={`/door?to=${encodeURIComponent(location.pathname + location.search)}`}>
            Sign in as the owner
          </LinkButton>
        )}
        {shutOut && <LinkButton to="/join">I am a guest: join a flight</LinkButton>}
        {!gone && (
          <Button kind={shutOut ? "plain" : "main"} onClick={asked.again}>
            Try again
          </Button>
        )}
        {(home || gone) && <LinkButton to="/">Go to the front page</LinkButton>}
      </div>
    </section>
  );
}
