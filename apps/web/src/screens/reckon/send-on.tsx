import { lazy, Suspense, useState } from "react";
import { type Carried, carriedText } from "../../bench/index.ts";
import { Button, Busy, LinkButton } from "../../parts/index.ts";

const SendTo = lazy(() => import("./send-to.tsx"));

export interface SendOnProps {
  readonly carried: Carried;
  /** What is written into a batch's note. */
  readonly text: string;
}

/** From a result to the scale, to a recipe or to a batch. */
export function SendOn({ carried, text }: SendOnProps) {
  const [open, setOpen] = useState(false);
  // One liquid alone is no mix to pour.
  const pours = carried.parts.filter((one) => one.parts > 0).length + (carried.waterTo === null ? 0 : 1) > 1;
  return (
    <div className="send">
      <div className="form-actions">
        {pours && <LinkButton to={`/weigh?${carriedText(carried)}`}>Pour it by weight</LinkButton>}
        <Button aria-expanded={open} onClick={() => setOpen(!open)}>
          Send it to a recipe or batch
        </Button>
      </div>
      {open && (
        <Suspense fallback={<Busy what="the recipes" />}>
          <SendTo carried={carried} text={text} />
        </Suspense>
      )}
    </div>
  );
}
