import type { Flight } from "@partsproof/house/protocol";
import { announce, Button, LinkButton } from "../../parts/index.ts";
import { keepToken, tokenOf, useToken } from "../../session/index.ts";
import { pourPath } from "./paths.ts";
import { ShareLink } from "./share-link.tsx";
import { Step } from "./step.tsx";

interface FlightStepProps {
  readonly flight: Flight;
  readonly household: string;
}

/** The pourer's link, for as long as this phone holds it; then the wait for the glasses. */
export function HandToPourer({ flight, household }: FlightStepProps) {
  const token = useToken("pourer", flight.id);
  const pourer = flight.pourer ?? "the pourer";
  if (token === undefined) {
    return (
      <Step title={`Wait for ${pourer}`}>
        <p>
          {pourer} says on their own page when the glasses stand ready. The sheets can be taken meanwhile.
        </p>
      </Step>
    );
  }
  const tastes = flight.sheets.some((sheet) => tokenOf("sheet", sheet.sheetId) !== undefined);
  return (
    <Step title={`Hand the key to ${pourer}`}>
      <p className="step-warn">
        <strong>Whoever opens this link sees what is in every glass.</strong> Give it to {pourer} and to
        nobody who tastes, and do not open it here if you taste yourself.
      </p>
      <ShareLink label={`${pourer}’s page`} path={pourPath(household, flight.id, token)} />
      <div className="form-actions">
        <Button
          onClick={() => {
            keepToken("pourer", flight.id, null);
            announce("The link is forgotten on this phone");
          }}
        >
          {pourer} has it: forget it here
        </Button>
        {!tastes && <LinkButton to={pourPath(household, flight.id)}>I am {pourer}: open it here</LinkButton>}
      </div>
      <p className="field-hint">
        Forgotten here it cannot be shown again. If {pourer} loses it too, call the flight off and set it
        anew.
      </p>
    </Step>
  );
}
