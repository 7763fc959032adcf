import jsQR from "jsqr";
import { expect, test } from "vitest";
import { squareCode } from "./table-address.ts";

/** Two modules a character, the upper above the lower, as a terminal shows them: full blocks are light on its dark ground. */
const MODULES: Readonly<Record<string, readonly [boolean, boolean]>> = {
  "█": [true, true],
  "▀": [true, false],
  "▄": [false, true],
  " ": [false, false],
};

// Read back by jsQR, a reader that shares no code with what draws it.
test.each(["http://192.168.1.20:4480", "https://[fd00::1]:4443", "https://house.home.example"])(
  "a camera reads the address off the terminal: %s",
  (address) => {
    const lines = squareCode(address).split("\n");
    const rows = lines.flatMap((line) => {
      const modules = line.split("").map((char) => MODULES[char] ?? [false, false]);
      return [modules.map(([upper]) => upper), modules.map(([, lower]) => lower)];
    });
    const side = 4 * Math.max(rows.length, rows[0]?.length ?? 0) + 16;
    const data = new Uint8ClampedArray(4 * side * side);
    for (let at = 0; at < side * side; at += 1) {
      const light = rows[Math.floor((Math.floor(at / side) - 8) / 4)]?.[Math.floor(((at % side) - 8) / 4)];
      data.set(light === true ? [255, 255, 255, 255] : [0, 0, 0, 255], 4 * at);
    }
    expect(jsQR.default(data, side, side)?.data).toBe(address);
  },
);
