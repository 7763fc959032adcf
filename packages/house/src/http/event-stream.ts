import type { LiveMessage } from "../protocol/index.ts";
import type { LiveFeed } from "../services/index.ts";

/** L6: a reader that is further behind than this is cut off; it comes back and goes on where it was. */
const MOST_WAITING_BYTES = 64 * 1024;

const encoder = new TextEncoder();
const BEAT = encoder.encode(":\n\n");
/** How long a browser's own reader waits before it comes back. */
const RETRY = encoder.encode("retry: 2000\n\n");

/** One event goes to many streams; its bytes are made once. */
const bytesOf = new WeakMap<LiveMessage, Uint8Array>();

function encoded(message: LiveMessage): Uint8Array {
  const bytes =
    bytesOf.get(message) ??
    encoder.encode(`id: ${message.seq}\nevent: ${message.kind}\ndata: ${JSON.stringify(message)}\n\n`);
  bytesOf.set(message, bytes);
  return bytes;
}

/** A feed as server-sent events (WHATWG HTML, 9.2). */
export function eventStream(feed: LiveFeed): Response {
  let stop = (): void => undefined;
  const body = new ReadableStream<Uint8Array>(
    {
      start: (controller) => {
        let open = true;
        const put = (bytes: Uint8Array): boolean => {
          if (!open || (controller.desiredSize ?? 0) <= 0) return false;
          controller.enqueue(bytes);
          return true;
        };
        put(RETRY);
        stop = feed.open({
          send: (message) => put(encoded(message)),
          beat: () => put(BEAT),
          end: () => {
            if (open) controller.close();
            open = false;
          },
        });
      },
      cancel: () => stop(),
    },
    new ByteLengthQueuingStrategy({ highWaterMark: MOST_WAITING_BYTES }),
  );
  return new Response(body, {
    headers: {
      "content-type": "text/event-stream",
      "cache-control": "no-store",
      // Proxies that gather an answer before they pass it on (nginx) are asked not to.
      "x-accel-buffering": "no",
    },
  });
}
