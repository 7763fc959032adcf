import type { Finding } from "@partsproof/house/protocol";
import { useEffect, useRef, useState } from "react";
import { useAsk } from "../../api.ts";
import { announce, Broken, Busy, Button, LinkButton, Page, SelectField } from "../../parts/index.ts";
import { tokenOf, useFlightToken } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { checkPath, findingPath, flightPath } from "./paths.ts";
import { EVERYONE, type OpenedGlass, openedGlasses } from "./opened-glasses.ts";
import { ShuffleSeen } from "./shuffle-seen.tsx";
import { useOpened } from "./use-opened.ts";
import { Verdict } from "./verdict.tsx";
import { TargetMark } from "./target-mark.tsx";
import "./question.css";
import "./reveal.css";

/** The reveal: the key is open, and the glasses are opened one at a time, on whichever phone. */
export default function Reveal({ params }: ScreenProps) {
  const household = params["household"] ?? "";
  const flight = params["flight"] ?? "";
  const token = useFlightToken(flight);
  const asked = useAsk("getFinding", {
    at: { household, flight },
    ...(token === undefined ? {} : { token }),
  });
  if (asked.state === "here") return <Stage finding={asked.answer} household={household} />;
  return (
    <Page title="Reveal" back={{ to: flightPath(household, flight), label: "The flight" }}>
      {asked.state === "busy" ? (
        <Busy what="the glasses" />
      ) : (
        <Broken asked={asked} title="The glasses cannot be opened" />
      )}
    </Page>
  );
}

function Stage({ finding, household }: { readonly finding: Finding; readonly household: string }) {
  const { flight, sheets } = finding;
  const [whose, setWhose] = useState(() => {
    const mine = sheets.find((sheet) => tokenOf("sheet", sheet.sheetId) !== undefined);
    return mine?.sheetId ?? (sheets.length === 1 ? (sheets[0]?.sheetId ?? EVERYONE) : EVERYONE);
  });
  const glasses = openedGlasses(finding, whose);
  const one = finding.sets === null ? "glass" : "set";
  const { open, openTo, together, forAll } = useOpened({ household, flight: flight.id });
  const openNext = (): void => {
    const glass = glasses[open];
    if (glass !== undefined)
      announce(
        `${glass.title}${one === "set" ? ":" : " was"} ${glass.label}. ${glass.guesses.map(spoken).join(" ")}`,
      );
    openTo(open + 1);
  };
  return (
    <Page
      title={`Reveal of ${flight.name}`}
      heading={flight.name}
      back={{ to: flightPath(household, flight.id), label: "The flight" }}
      lead={
        open < glasses.length
          ? `The key is open; the ${one === "set" ? "sets" : "glasses"} are not, yet.`
          : `Every ${one} is open.`
      }
    >
      {sheets.length > 1 && (
        <SelectField
          label="Whose glasses"
          value={whose}
          onChange={(next) => {
            setWhose(next);
            openTo(0);
          }}
          options={
            <>
              <option value={EVERYONE}>Everybody’s at once</option>
              {sheets.map((sheet) => (
                <option key={sheet.sheetId} value={sheet.sheetId}>
                  {sheet.taster}’s
                </option>
              ))}
            </>
          }
        />
      )}
      <ol className="opened">
        {glasses.map((glass, i) => (
          <Glass key={`${whose} ${glass.key}`} glass={glass} open={i < open} next={i === open} />
        ))}
      </ol>
      {open >= glasses.length && <ShuffleSeen finding={finding} />}
      {flight.pouring !== "alone" && open < glasses.length && together && (
        <p className="opened-together">
          {forAll
            ? "You open them on all phones."
            : "They open here when the host opens them, or when you do."}
        </p>
      )}
      <div className="opened-do">
        {open < glasses.length ? (
          <>
            <Button kind="main" onClick={openNext}>
              Open the {open === 0 ? "first" : open === glasses.length - 1 ? "last" : "next"} {one}
            </Button>
            <Button kind="quiet" onClick={() => openTo(glasses.length)}>
              Open all
            </Button>
          </>
        ) : (
          <>
            <LinkButton kind="main" to={findingPath(household, flight.id)}>
              Read the finding
            </LinkButton>
            <LinkButton to={checkPath(household, flight.id)}>Was anything changed?</LinkButton>
          </>
        )}
      </div>
    </Page>
  );
}

type GuessSaid = OpenedGlass["guesses"][number];

const spoken = ({ taster, said }: GuessSaid): string => `${taster}: ${said}.`;

interface GlassProps {
  readonly glass: OpenedGlass;
  readonly open: boolean;
  readonly next: boolean;
}

function Glass({ glass, open, next }: GlassProps) {
  const box = useRef<HTMLLIElement>(null);
  useEffect(() => {
    // The glass that opens next is always in sight above the button.
    if (next) box.current?.scrollIntoView({ block: "nearest" });
  }, [next]);
  return (
    <li ref={box} className={`opened-one ${open ? "opened-open" : ""} ${next ? "opened-next" : ""}`}>
      <span className="opened-glass" aria-hidden="true">
        {glass.code}
      </span>
      <div className="opened-words">
        <p className="opened-title">{glass.title}</p>
        {open ? (
          <div className="opened-truth">
            {glass.stood === undefined ? (
              <p className="opened-name">
                {glass.label}
                {glass.pour !== "" && <span className="opened-pour"> {glass.pour}</span>}
                {glass.target && <TargetMark />}
              </p>
            ) : (
              <ul className="opened-stood">
                {glass.stood.map(({ code, label }, i) => (
                  // oxlint-disable-next-line react/no-array-index-key -- as they stood; R has no number of its own
                  <li key={i}>
                    <b>{code}</b> <span className="name">{label}</span>
                  </li>
                ))}
              </ul>
            )}
            <ul className="opened-guesses">
              {glass.guesses.map((guess) => (
                <li key={`${guess.taster} ${guess.said}`}>
                  {guess.right !== null && <Verdict right={guess.right} />}
                  <span>
                    {glass.guesses.length > 1 && <>{guess.taster}: </>}
                    {guess.said}
                  </span>
                </li>
              ))}
            </ul>
          </div>
        ) : (
          <p className="opened-shut">{next ? "Next" : "Still shut"}</p>
        )}
      </div>
    </li>
  );
}
