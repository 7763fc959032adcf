import { Refusal } from "@partsproof/house/protocol";
import { expect, test } from "vitest";
import { inTime } from "./in-time.ts";

/** What a fetch does whose packets get lost: nothing, until it is given up. */
const lost = (signal: AbortSignal): Promise<never> =>
  new Promise((_, reject) => signal.addEventListener("abort", () => reject(signal.reason as Error)));

test("no answer and no error is a house out of reach", async () => {
  const error = await inTime(lost, 20).catch((thrown: unknown) => thrown);
  expect(error).toBeInstanceOf(Refusal);
  expect(error).toMatchObject({ status: 0, issues: [{ code: "house_unreachable", received: null }] });
});

test("an answer, a refusal and a fault pass as they are", async () => {
  expect(await inTime(async () => "kept", 1000)).toBe("kept");
  const refusal = new Refusal(409, []);
  await expect(inTime(() => Promise.reject(refusal), 1000)).rejects.toBe(refusal);
  const fault = new TypeError("a fault of the app");
  await expect(inTime(() => Promise.reject(fault), 1000)).rejects.toBe(fault);
});
