import { answerWhy } from "./answer-why.ts";
import type { Why } from "./messages.ts";

addEventListener("message", ({ data }: MessageEvent<Why>) => postMessage(answerWhy(data)));
