export { bytesOfHex, hex, utf8 } from "./bytes.ts";
export { type Closing, closeFlight, type Head } from "./closing.ts";
export { commitmentTo, drawNonce, LEAST_NONCE_BYTES, NONCE_BYTES } from "./commitment.ts";
export { commitmentWords, WORDS_BITS, WORDS_SHOWN } from "./commitment-words.ts";
export { type Added, addEntry, type Entry, type EntryKind, type Sheet } from "./entry-chain.ts";
export type { Finding, FindingCode } from "./finding.ts";
export {
  type FlightKey,
  KEY_FORM,
  KEY_FORM_SETS,
  type KeyCode,
  type KeyGlass,
  keyBytes,
} from "./flight-key.ts";
export type { Issue } from "./issue.ts";
export { type PublishedRecord, RECORD_FORM, type Witness } from "./published-record.ts";
export { readFlightKey } from "./read-flight-key.ts";
export { readRecord } from "./read-record.ts";
export { requireSha256, type Sha256 } from "./sha256.ts";
export { type Verification, verifyRecord } from "./verify-record.ts";
