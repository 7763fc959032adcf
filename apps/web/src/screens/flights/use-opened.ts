import { useRef, useState } from "react";
import { api } from "../../api.ts";
import { useFlightToken, useToken } from "../../session/index.ts";
import { foldOpened, type Opened } from "./opened-fold.ts";
import { useLive } from "./use-live.ts";

interface OpenedHere {
  /** How many glasses are open on this page. */
  readonly open: number;
  readonly openTo: (count: number) => void;
  /** Whether the table's stream stands, and whether this page opens for all of it. */
  readonly together: boolean;
  readonly forAll: boolean;
}

/** Who set the flight opens the glasses for everybody; all others may look ahead on their own phone. */
export function useOpened(at: { readonly household: string; readonly flight: string }): OpenedHere {
  const host = useToken("host", at.flight);
  const [{ open }, setHere] = useState<Opened>({ open: 0, awaited: null });
  const sent = useRef<Promise<unknown>>(Promise.resolve());
  const live = useLive(at, useFlightToken(at.flight), (message) =>
    setHere((here) => foldOpened(here, message)),
  );
  const openTo = (count: number): void => {
    if (host === undefined) {
      setHere({ open: count, awaited: null });
      return;
    }
    setHere({ open: count, awaited: count });
    // One after the other, as it was pressed. Where it does not get through, the others open by themselves.
    sent.current = sent.current
      .then(() => api("openGlass", { at, token: host, body: { count } }))
      .catch(() => setHere((here) => (here.awaited === count ? { open: here.open, awaited: null } : here)));
  };
  return { open, openTo, together: live.on, forAll: host !== undefined && live.on };
}
