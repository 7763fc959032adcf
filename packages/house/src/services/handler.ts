import type {
  AnswerOf,
  BodyRead,
  GuestRole,
  LiveMessage,
  QueryRead,
  RouteName,
  StreamName,
} from "../protocol/index.ts";
import type { House } from "./ports.ts";

/** Where a request comes from. Who opens the house in their own process is here. */
export interface Caller {
  readonly from: "here" | "network";
  /** Network address, or null where there is none. */
  readonly address: string | null;
  /** Whether it came over HTTPS, so that a cookie may be kept to it. */
  readonly secure: boolean;
}

/** Who opens the house in their own process asks for nothing over a network. */
export const HERE: Caller = { from: "here", address: null, secure: false };

/** Whom the door let in, and as what. */
export type Who =
  | { readonly kind: "here" }
  | { readonly kind: "owner"; readonly sessionId: string }
  | {
      readonly kind: "guest";
      readonly role: GuestRole;
      readonly flightId: string;
      readonly sheetId: string | null;
    }
  | { readonly kind: "stranger" };

/** A session's cookie to be set with the answer, or taken away. */
export interface SessionCookie {
  readonly token: string | null;
  readonly maxAgeS: number;
}

/** What a service is given: path parameters, query and body as read by the schemas, and the bearer token if one came. */
export interface Asked<N extends RouteName | StreamName> {
  readonly house: House;
  readonly at: Readonly<Record<string, string>> & { readonly household: string };
  readonly query: QueryRead<N>;
  readonly body: BodyRead<N>;
  /** Aborted when the caller has gone: what takes long stops. */
  readonly signal: AbortSignal;
  readonly token: string | null;
  readonly caller: Caller;
  readonly who: Who;
  /** The token of the session's cookie, if one came. */
  readonly session: string | null;
  /** The last event that a stream's caller has seen. */
  readonly lastEventId: number | null;
  readonly setCookie: (cookie: SessionCookie) => void;
}

export type Handler<N extends RouteName> = (asked: Asked<N>) => Promise<AnswerOf<N>>;
export type Handlers<N extends RouteName = RouteName> = { readonly [K in N]: Handler<K> };

/** Where the messages of a stream go. */
export interface LiveSink {
  /** False where the reader is too far behind to be sent more. */
  send(message: LiveMessage): boolean;
  /** Says that the stream still stands. */
  beat(): boolean;
  end(): void;
}

/** A stream that has been let in: `open` begins it and gives what ends it. */
export interface LiveFeed {
  open(sink: LiveSink): () => void;
}
export type StreamHandlers = { readonly [K in StreamName]: (asked: Asked<K>) => Promise<LiveFeed> };
