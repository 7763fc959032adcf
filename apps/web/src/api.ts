export { forgetAnswers, written } from "./ask/answers.ts";
export { api, asRefusal } from "./ask/client.ts";
export { inTime } from "./ask/in-time.ts";
export { useAsk } from "./ask/use-ask.ts";
export { useAskKept } from "./ask/use-ask-kept.ts";
export { useAskAll } from "./ask/use-ask-all.ts";
export type { Asked } from "./ask/use-asked.ts";
export { useSay } from "./ask/use-say.ts";
