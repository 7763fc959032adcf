export {
  beginSession,
  endEverySession,
  endSession,
  SESSION_MAX_AGE_S,
  sessionOf,
  sessionStands,
  sessionUsed,
} from "./sessions.ts";
