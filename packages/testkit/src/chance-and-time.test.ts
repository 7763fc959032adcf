import { WhiskeyDraft } from "@partsproof/house/protocol";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededRandom } from "./seeded-random.ts";
import { settableClock } from "./settable-clock.ts";
import { whiskeyDrafts } from "./whiskey-drafts.ts";

describe("chance that repeats", () => {
  it("gives the same bytes for the same seed, however they are asked for, and others for another", () => {
    const whole = seededRandom(7).bytes(100);
    const pieces = seededRandom(7);
    const joined = [1, 31, 2, 66].flatMap((count) => [...pieces.bytes(count)]);
    expect(joined).toStrictEqual([...whole]);
    expect([...seededRandom(8).bytes(100)]).not.toStrictEqual(joined);
  });

  it("is evenly spread over the 256 values (chi-squared, 255 degrees, below its 0.9999 quantile)", () => {
    const count = 256 * 400;
    const seen = Array.from({ length: 256 }, () => 0);
    for (const byte of seededRandom(3).bytes(count)) seen[byte] = (seen[byte] ?? 0) + 1;
    const chiSquared = seen.reduce((sum, n) => sum + (n - 400) ** 2 / 400, 0);
    // 346.6 by the Wilson and Hilferty approximation, J. Amer. Stat. Assoc. 1931; value from memory, computed here.
    const z = 3.719;
    const quantile = 255 * (1 - 2 / (9 * 255) + z * Math.sqrt(2 / (9 * 255))) ** 3;
    expect(chiSquared).toBeLessThan(quantile);
  });
});

describe("a clock that is told", () => {
  it("stands, is set and advances", () => {
    const clock = settableClock("2026-11-25T18:00:00.000Z");
    expect(clock.now().toISOString()).toBe("2026-11-25T18:00:00.000Z");
    clock.advance({ days: 1, hours: 2, ms: 3 });
    expect(clock.now().toISOString()).toBe("2026-11-26T20:00:00.003Z");
    clock.set("2027-01-01T00:00:00Z");
    expect(clock.now().toISOString()).toBe("2027-01-01T00:00:00.000Z");
    expect(() => clock.set("soon")).toThrow("clock requires an ISO 8601 moment, got soon");
  });
});

describe("whiskeys drawn at random", () => {
  it("are drafts that the schema takes as they are, with shares of the mash that add up to 100", () => {
    fc.assert(
      fc.property(whiskeyDrafts, (draft) => {
        expect(WhiskeyDraft.parse(draft)).toStrictEqual(draft);
        const mash = draft.grains ?? [{ grain: "corn", percent: 100 }];
        expect(mash.reduce((sum, { percent }) => sum + percent, 0)).toBe(100);
      }),
    );
  });
});
