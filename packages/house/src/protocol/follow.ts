import { type Call, type Door, issuesOf, Refusal, requestOf } from "./client.ts";
import { LiveMessage } from "./live.ts";
import type { StreamName } from "./routes.ts";

export interface Follow extends Omit<Call<StreamName>, "query" | "body"> {
  /** The `seq` of the last message seen: the stream goes on after it. */
  readonly after?: number;
  /** After so long without a word the network has lost the stream; the house says every 15 s that it stands. */
  readonly silenceMs?: number;
}

const SILENCE_MS = 40_000;

/**
 * What happens at the table, message by message, until the connection ends. It ends without an error when the network
 * does: call again with the last `seq`. A refusal (a token revoked meanwhile) is thrown.
 */
export async function* follow(
  door: Door,
  base: string,
  { after, silenceMs = SILENCE_MS, ...call }: Follow,
): AsyncGenerator<LiveMessage, void, undefined> {
  const request = requestOf("followFlight", call, base);
  request.headers.set("accept", "text/event-stream");
  if (after !== undefined) request.headers.set("last-event-id", String(after));
  const response = await door(request);
  if (!response.ok || !response.body) {
    throw new Refusal(response.status, issuesOf(await response.text(), response.status));
  }
  const text = response.body.pipeThrough(new TextDecoderStream());
  let rest = "";
  for await (const piece of chunksOf(text, silenceMs)) {
    const blocks = (rest + piece).split("\n\n");
    rest = blocks.pop() ?? "";
    for (const block of blocks) {
      const data = block.split("\n").find((line) => line.startsWith("data: "));
      if (data !== undefined) yield LiveMessage.parse(JSON.parse(data.slice("data: ".length)));
    }
  }
}

/** A stream's pieces; one that breaks off or falls silent has ended. Not every browser iterates a stream by itself. */
async function* chunksOf(
  stream: ReadableStream<string>,
  silenceMs: number,
): AsyncGenerator<string, void, undefined> {
  const reader = stream.getReader();
  const ended = { done: true, value: undefined } as const;
  try {
    for (;;) {
      let timer: ReturnType<typeof setTimeout> | undefined;
      const silence = new Promise<typeof ended>((resolve) => {
        timer = setTimeout(() => resolve(ended), silenceMs);
      });
      const { done, value } = await Promise.race([reader.read().catch(() => ended), silence]);
      clearTimeout(timer);
      if (done) return;
      yield value ?? "";
    }
  } finally {
    await reader.cancel().catch(() => undefined);
  }
}
