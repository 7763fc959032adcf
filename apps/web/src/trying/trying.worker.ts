import { answerIf, answerTrying, type Answered, type Asking, type AskingIf } from "./answer-trying.ts";
import { mapMixes } from "./map-mixes.ts";

export type ToTrying = ({ readonly kind: "flight" } & Asking) | ({ readonly kind: "if" } & AskingIf);

export type FromTrying =
  | ({ readonly kind: "flight" } & Answered)
  | { readonly kind: "if"; readonly turn: number; readonly beliefs: ReturnType<typeof answerIf> }
  | { readonly kind: "failed"; readonly message: string };

// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker's takes no origin
const tell = (message: FromTrying): void => postMessage(message);

addEventListener("message", ({ data }: MessageEvent<ToTrying>) => {
  try {
    if (data.kind === "if") tell({ kind: "if", turn: data.turn, beliefs: answerIf(data) });
    else
      tell({
        kind: "flight",
        ...answerTrying(data, data.corners === null ? [] : mapMixes(data.corners).map(({ parts }) => parts)),
      });
  } catch (error) {
    tell({ kind: "failed", message: error instanceof Error ? error.message : String(error) });
  }
});
