export { whyNotHeard } from "./recognition.ts";
export { joinHeard } from "./join-heard.ts";
export { useDictation } from "./use-dictation.ts";
