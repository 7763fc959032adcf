import { expect, test } from "vitest";
import { failureWords, whyNotHeard } from "./recognition.ts";

const ear = EventTarget as unknown as never;

test("a page that is not secure cannot listen, whatever the browser has", () => {
  expect(whyNotHeard({ isSecureContext: false, SpeechRecognition: ear })).toBe("no secure page");
});

test("a browser without recognition says so; either name of it will do", () => {
  expect(whyNotHeard({ isSecureContext: true })).toBe("no recognition");
  expect(whyNotHeard({ isSecureContext: true, SpeechRecognition: ear })).toBeNull();
  expect(whyNotHeard({ isSecureContext: true, webkitSpeechRecognition: ear })).toBeNull();
});

test("every error code of the Web Speech API has words, and our own stop none", () => {
  // SpeechRecognitionErrorCode, Web Speech API draft; bad-grammar was in earlier drafts.
  const codes = [
    "no-speech",
    "audio-capture",
    "network",
    "not-allowed",
    "service-not-allowed",
    "bad-grammar",
    "language-not-supported",
  ];
  for (const code of codes) expect(failureWords(code)).toMatch(/\.$/);
  expect(failureWords("aborted")).toBeNull();
});
