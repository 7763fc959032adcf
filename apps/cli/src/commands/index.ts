import { batchAdd } from "./batch/add.ts";
import { batchEdit } from "./batch/edit.ts";
import { batchList, batchShow } from "./batch/list.ts";
import { batchMake } from "./batch/make.ts";
import { batchPlan } from "./batch/plan.ts";
import type { Command } from "./command.ts";
import { couldShowDiffer, couldShowInTurn, couldShowMatch, couldShowRank } from "./counts/could-show.ts";
import { differ, differInTurn } from "./counts/differ.ts";
import { match } from "./counts/match.ts";
import { mixture, pairs, rank } from "./counts/tables.ts";
import { doorSignIn } from "./door/sign-in.ts";
import { doorSignOut } from "./door/sign-out.ts";
import {
  findingsFlight,
  findingsLeague,
  findingsRecipe,
  findingsTaster,
  findingsWhiskey,
} from "./findings/findings.ts";
import { flightAdd } from "./flight/add.ts";
import { flightList, flightShow } from "./flight/list.ts";
import { flightCallOff, flightPoured, flightPourList } from "./flight/pouring.ts";
import { findingsList, flightFinding, flightReveal, flightUndersides } from "./flight/reveal.ts";
import { flightLock, flightSheetEdit, flightSheetShow } from "./flight/sheet.ts";
import { flightFree, flightTake } from "./flight/take.ts";
import { calendar, calendarLink, calendarLinks, calendarRevoke } from "./household/calendar.ts";
import { householdAdd } from "./household/add.ts";
import { demoLoad, demoRemove } from "./household/demo.ts";
import { householdEdit } from "./household/edit.ts";
import { householdExport } from "./household/export.ts";
import { householdList } from "./household/list.ts";
import { next } from "./household/next.ts";
import { householdRecovery } from "./household/recovery.ts";
import { householdRemove } from "./household/remove.ts";
import { householdRestore } from "./household/restore.ts";
import { householdShow } from "./household/show.ts";
import { tasterAdd, tasterList, tasterRename } from "./household/tasters.ts";
import { read } from "./note/read.ts";
import { oak } from "./oak/oak.ts";
import { rest } from "./oak/rest.ts";
import { restBegin } from "./rest/begin.ts";
import { restOak } from "./rest/oak.ts";
import { restOut } from "./rest/out.ts";
import { restPull, restRemove } from "./rest/pull.ts";
import { restSet } from "./rest/set.ts";
import { restShow } from "./rest/show.ts";
import { restTaste } from "./rest/taste.ts";
import {
  profileFlight,
  profileLearned,
  profileMixing,
  profileNext,
  profileRecipe,
  profileWhiskey,
} from "./profile/profiles.ts";
import { recipeAdd, recipeRevise } from "./recipe/add.ts";
import { recipeCheck } from "./recipe/check.ts";
import { recipeEdit } from "./recipe/edit.ts";
import { recipeExport } from "./recipe/export.ts";
import { recipeFill } from "./recipe/fill.ts";
import { recipeList } from "./recipe/list.ts";
import { loosen, recipeLoosen } from "./recipe/loosen.ts";
import { recipeOpen } from "./recipe/open.ts";
import { recipePreview } from "./recipe/preview.ts";
import { recipeTree } from "./recipe/tree.ts";
import { recipeResult, recipeResults, recipeTakeInResult } from "./recipe/results.ts";
import { recipeRule } from "./recipe/rule.ts";
import { recipeTakeIn } from "./recipe/take-in.ts";
import { recipeShare } from "./recipe/share.ts";
import { recipeHistory, recipeShow } from "./recipe/show.ts";
import { convert } from "./reckon/convert.ts";
import { density } from "./reckon/density.ts";
import { evaporated } from "./reckon/evaporated.ts";
import { fill } from "./reckon/fill.ts";
import { gauge } from "./reckon/gauge.ts";
import { lift } from "./reckon/lift.ts";
import { mix } from "./reckon/mix.ts";
import { reduce } from "./reckon/reduce.ts";
import { sample } from "./reckon/sample.ts";
import { temperature } from "./reckon/temperature.ts";
import { weigh } from "./reckon/weigh.ts";
import { weighOut } from "./reckon/weigh-out.ts";
import { searchBuy, searchRules, searchTradeOff } from "./search/around.ts";
import { search } from "./search/search.ts";
import { shelfAdd } from "./shelf/add.ts";
import { shelfAddVessel } from "./shelf/add-vessel.ts";
import { shelfEdit, shelfRemove } from "./shelf/edit.ts";
import { whiskeyEdit, whiskeyRemove } from "./shelf/edit-whiskey.ts";
import { shelfKeptUp, shelfNext } from "./shelf/kept-up.ts";
import { shelfExport } from "./shelf/export.ts";
import { shelfImport } from "./shelf/import.ts";
import { shelfList } from "./shelf/list.ts";
import { shelfPour } from "./shelf/pour.ts";
import { shelfShow } from "./shelf/show.ts";
import { shelfTransfers, shelfUndo } from "./shelf/transfers.ts";
import { trialPlan } from "./trial/plan.ts";
import { trialAdd, trialList, trialPour, trialRemove, trialShow, trialUndo } from "./trial/sets.ts";
import { whiskeyList, whiskeyShow } from "./shelf/whiskeys.ts";
import { wordForget, wordList, wordTeach } from "./word/words.ts";

export type { Answer, Command, OpenHouse } from "./command.ts";

/** Every command, in the order of the work. */
export const commands: readonly Command[] = [
  mix,
  reduce,
  fill,
  loosen,
  lift,
  weigh,
  weighOut,
  gauge,
  sample,
  evaporated,
  density,
  temperature,
  convert,
  oak,
  rest,
  trialPlan,
  read,
  demoLoad,
  demoRemove,
  householdList,
  householdAdd,
  householdShow,
  householdEdit,
  householdExport,
  householdRecovery,
  householdRestore,
  householdRemove,
  tasterList,
  tasterAdd,
  tasterRename,
  wordList,
  wordTeach,
  wordForget,
  next,
  calendar,
  calendarLink,
  calendarLinks,
  calendarRevoke,
  shelfList,
  shelfShow,
  shelfAdd,
  shelfAddVessel,
  shelfEdit,
  shelfRemove,
  shelfPour,
  shelfUndo,
  shelfTransfers,
  shelfKeptUp,
  shelfNext,
  shelfImport,
  shelfExport,
  whiskeyList,
  whiskeyShow,
  whiskeyEdit,
  whiskeyRemove,
  search,
  searchTradeOff,
  searchRules,
  searchBuy,
  recipeList,
  recipeShow,
  recipeHistory,
  recipeTree,
  recipePreview,
  recipeCheck,
  recipeTakeIn,
  recipeRule,
  recipeFill,
  recipeLoosen,
  recipeResult,
  recipeTakeInResult,
  recipeResults,
  recipeExport,
  recipeShare,
  recipeOpen,
  recipeAdd,
  recipeRevise,
  recipeEdit,
  trialAdd,
  trialList,
  trialShow,
  trialPour,
  trialUndo,
  trialRemove,
  batchList,
  batchShow,
  batchPlan,
  batchMake,
  batchAdd,
  batchEdit,
  restBegin,
  restOak,
  restTaste,
  restShow,
  restSet,
  restOut,
  restPull,
  restRemove,
  flightList,
  flightShow,
  flightAdd,
  flightPourList,
  flightPoured,
  flightCallOff,
  flightTake,
  flightFree,
  flightSheetShow,
  flightSheetEdit,
  flightLock,
  flightUndersides,
  flightReveal,
  flightFinding,
  findingsList,
  findingsFlight,
  findingsRecipe,
  findingsWhiskey,
  findingsTaster,
  findingsLeague,
  profileRecipe,
  profileWhiskey,
  profileFlight,
  profileMixing,
  profileLearned,
  profileNext,
  couldShowDiffer,
  couldShowInTurn,
  couldShowMatch,
  couldShowRank,
  differ,
  differInTurn,
  match,
  rank,
  pairs,
  mixture,
  doorSignIn,
  doorSignOut,
];
