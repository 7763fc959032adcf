/** As much of the Web Speech API as is used here; TypeScript's DOM types leave recognition out. */
export interface Recognition extends EventTarget {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  start(): void;
  stop(): void;
  abort(): void;
}

export interface HeardEvent extends Event {
  readonly resultIndex: number;
  readonly results: ArrayLike<ArrayLike<{ readonly transcript: string }> & { readonly isFinal: boolean }>;
}

export interface HearingFailed extends Event {
  readonly error: string;
}

interface Browser {
  readonly isSecureContext: boolean;
  readonly SpeechRecognition?: new () => Recognition;
  readonly webkitSpeechRecognition?: new () => Recognition;
}

export type CannotHear = "no secure page" | "no recognition";

/** Why this page cannot listen, or null when it can. */
export function whyNotHeard(browser: Browser = globalThis): CannotHear | null {
  // Some browsers show the interface on plain HTTP and then refuse the microphone.
  if (!browser.isSecureContext) return "no secure page";
  return recognitionOf(browser) === undefined ? "no recognition" : null;
}

export const recognitionOf = (browser: Browser = globalThis): (new () => Recognition) | undefined =>
  browser.SpeechRecognition ?? browser.webkitSpeechRecognition;

/** The errors of the Web Speech API in words; what has no words here is told by its own name. */
export function failureWords(error: string): string | null {
  switch (error) {
    // We stopped it.
    case "aborted":
      return null;
    case "no-speech":
      return "Nothing was heard.";
    case "audio-capture":
      return "No microphone was found.";
    case "not-allowed":
      return "The browser does not let this page use the microphone. Its settings for this page can allow it.";
    case "service-not-allowed":
      return "This browser does not offer its speech recognition here.";
    case "network":
      return "The browser’s speech recognition needs the internet and could not reach it.";
    case "language-not-supported":
      return "The browser does not recognise speech in its own language.";
    default:
      return `The browser could not listen (${error}).`;
  }
}
