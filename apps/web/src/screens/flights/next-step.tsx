import type { Flight } from "@partsproof/house/protocol";
import { LinkButton } from "../../parts/index.ts";
import { waitsFor } from "./flight-state.ts";
import { HandToPourer } from "./hand-to-pourer.tsx";
import { OpenKey } from "./open-key.tsx";
import { alonePath, findingPath, newFlightPath, revealPath } from "./paths.ts";
import { Step } from "./step.tsx";

interface NextStepProps {
  readonly flight: Flight;
  readonly household: string;
}

/** The one thing to do next with a flight. */
export function NextStep({ flight, household }: NextStepProps) {
  switch (waitsFor(flight)) {
    case "the pourer":
      return <HandToPourer flight={flight} household={household} />;
    case "marking and pouring":
      return (
        <Step title="Mark, pour, mix up">
          <p>Step by step, on a page that the glasses can stand beside.</p>
          <LinkButton kind="main" to={alonePath(household, flight.id)}>
            Begin
          </LinkButton>
        </Step>
      );
    case "undersides":
      return (
        <Step title="Look under the glasses">
          <p>The sheet is locked, so nothing on it can follow what you read there.</p>
          <LinkButton kind="main" to={alonePath(household, flight.id)}>
            Enter the marks
          </LinkButton>
        </Step>
      );
    case "sheets":
    case "reveal":
      return <OpenKey flight={flight} household={household} />;
    case "nothing":
      return flight.state === "revealed" ? (
        <Step title="The key is open">
          <div className="form-actions">
            <LinkButton kind="main" to={findingPath(household, flight.id)}>
              Read the finding
            </LinkButton>
            <LinkButton to={revealPath(household, flight.id)}>See the glasses opened</LinkButton>
          </div>
        </Step>
      ) : (
        <Step title="Nothing came of it">
          <p>What was kept for this flight is free to pour again.</p>
          <LinkButton kind="main" to={newFlightPath(household)}>
            Set another flight
          </LinkButton>
        </Step>
      );
  }
}
