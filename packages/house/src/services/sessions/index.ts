export {
  beginSession,
  endEverySession,
  endSession,
  SESSION_MAX_AGE_S,
  sessionOf,
  sessionStands,
} from "./sessions.ts";
