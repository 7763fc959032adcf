import { createApp } from "./http/index.ts";
import type { Door } from "./protocol/index.ts";
import {
  countsHandlers,
  fillHandlers,
  learningHandlers,
  noteHandlers,
  oakHandlers,
  reckonHandlers,
  searchHandlers,
  sharingHandlers,
  trialHandlers,
} from "./services/index.ts";

/**
 * The same door as a house's, for the sums alone: no household, no store, nothing to open or close. The command line
 * reckons through it, so that a sum says there what it says anywhere.
 */
export function openReckoner(): Door {
  const app = createApp(null, {
    ...reckonHandlers,
    ...fillHandlers,
    ...sharingHandlers,
    ...searchHandlers,
    ...countsHandlers,
    ...noteHandlers,
    ...oakHandlers,
    ...learningHandlers,
    ...trialHandlers,
  });
  return async (request) => app.fetch(request);
}
