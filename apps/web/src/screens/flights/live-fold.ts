import type { LiveEvent, LiveMessage, LiveState } from "@partsproof/house/protocol";

/** How the table stands after a message of its stream. An event before the first state tells too little to be shown. */
export function foldLive(state: LiveState | null, message: LiveMessage): LiveState | null {
  if (message.kind === "state") return message;
  if (state === null || message.seq <= state.seq) return state;
  return { ...withEvent(state, message), seq: message.seq };
}

function withEvent(state: LiveState, { what, sheetId, number }: LiveEvent): LiveState {
  const seat = (change: Partial<LiveState["seats"][number]>): LiveState => ({
    ...state,
    seats: state.seats.map((one) => (one.sheetId === sheetId ? { ...one, ...change } : one)),
  });
  switch (what) {
    case "seat taken":
      return seat({ state: "open" });
    case "seat freed":
      return seat({ state: "free", position: null });
    case "at a glass":
      return seat({ position: number });
    case "locked":
      return seat({ state: "locked", position: null });
    case "closed":
      return sheetId === null
        ? {
            ...state,
            seats: state.seats.map((one) =>
              one.state === "locked" ? one : { ...one, state: "closed", position: null },
            ),
          }
        : seat({ state: "closed", position: null });
    case "poured":
      return { ...state, state: "tasting" };
    case "revealed":
      return { ...state, state: "revealed" };
    case "called off":
      return { ...state, state: "called off" };
    case "glass opened":
      return { ...state, opened: number ?? 0 };
  }
}
