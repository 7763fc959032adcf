import { batchHandlers, makeHandlers, planHandlers } from "./batches/index.ts";
import { bottleHandlers, transferHandlers, vesselHandlers, whiskeyHandlers } from "./shelf/index.ts";
import { doorHandlers } from "./door/index.ts";
import { demoHandlers } from "./demo/load-demo.ts";
import { evidenceHandlers } from "./evidence/index.ts";
import { exportHandlers, restoreHandlers } from "./archive/index.ts";
import { countsHandlers } from "./counts/index.ts";
import { fillHandlers } from "./filling/index.ts";
import { findingHandlers, recordHandlers, revealHandlers } from "./findings/index.ts";
import {
  closingHandlers,
  flightHandlers,
  pouringHandlers,
  sheetHandlers,
  undersidesHandlers,
} from "./flights/index.ts";
import { calendarHandlers, feedHandlers, linkHandlers } from "./calendar/index.ts";
import type { Handlers, StreamHandlers } from "./handler.ts";
import { healthHandlers } from "./health.ts";
import { householdHandlers, nextHandlers, tasterHandlers } from "./household/index.ts";
import { followHandlers, joinHandlers, openJoiningHandlers, watchHandlers } from "./joining/index.ts";
import { keptUpHandlers } from "./kept-up/index.ts";
import { learningHandlers, triedHandlers } from "./learning/index.ts";
import { mixingHandlers } from "./mixing/index.ts";
import { palateHandlers } from "./palate/index.ts";
import { lineageHandlers } from "./lineage/index.ts";
import { noteHandlers, noteHereHandlers } from "./notes/index.ts";
import { oakHandlers } from "./oak/index.ts";
import {
  exportRecipeHandlers,
  fillShelfHandlers,
  resultHandlers,
  resultMadeHandlers,
  takeInHandlers,
} from "./passing/index.ts";
import { profileHandlers } from "./profiles/index.ts";
import { sheetWordHandlers, wordHandlers } from "./words/index.ts";
import { previewHandlers, recipeHandlers } from "./recipes/index.ts";
import { reckonHandlers } from "./reckon/index.ts";
import {
  beginHandlers,
  checkHandlers,
  oakInHandlers,
  oakOutHandlers,
  restHandlers,
} from "./resting/index.ts";
import { searchHandlers, shelfSearchHandlers } from "./search/index.ts";
import { trialHandlers, trialSetHandlers } from "./trials/index.ts";
import { shelfFileHandlers } from "./shelf-file/index.ts";
import { sharingHandlers } from "./sharing/index.ts";
import { trailHandlers } from "./trail/index.ts";

/** Every line of the table of routes has its handler; the type says so. */
export const allHandlers: Handlers = {
  ...tasterHandlers,
  ...healthHandlers,
  ...reckonHandlers,
  ...noteHandlers,
  ...noteHereHandlers,
  ...wordHandlers,
  ...sheetWordHandlers,
  ...fillHandlers,
  ...exportRecipeHandlers,
  ...takeInHandlers,
  ...fillShelfHandlers,
  ...resultMadeHandlers,
  ...resultHandlers,
  ...sharingHandlers,
  ...searchHandlers,
  ...countsHandlers,
  ...oakHandlers,
  ...learningHandlers,
  ...triedHandlers,
  ...mixingHandlers,
  ...palateHandlers,
  ...trialHandlers,
  ...trialSetHandlers,
  ...lineageHandlers,
  ...keptUpHandlers,
  ...shelfSearchHandlers,
  ...householdHandlers,
  ...demoHandlers,
  ...exportHandlers,
  ...restoreHandlers,
  ...nextHandlers,
  ...calendarHandlers,
  ...feedHandlers,
  ...linkHandlers,
  ...whiskeyHandlers,
  ...bottleHandlers,
  ...shelfFileHandlers,
  ...vesselHandlers,
  ...transferHandlers,
  ...recipeHandlers,
  ...previewHandlers,
  ...planHandlers,
  ...makeHandlers,
  ...batchHandlers,
  ...restHandlers,
  ...beginHandlers,
  ...oakInHandlers,
  ...oakOutHandlers,
  ...checkHandlers,
  ...flightHandlers,
  ...pouringHandlers,
  ...sheetHandlers,
  ...undersidesHandlers,
  ...revealHandlers,
  ...findingHandlers,
  ...evidenceHandlers,
  ...profileHandlers,
  ...recordHandlers,
  ...closingHandlers,
  ...openJoiningHandlers,
  ...joinHandlers,
  ...watchHandlers,
  ...doorHandlers,
  ...trailHandlers,
};

/** The same for those that answer with a stream. */
export const allStreams: StreamHandlers = followHandlers;
