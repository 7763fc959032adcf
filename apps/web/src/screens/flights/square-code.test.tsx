import jsQR from "jsqr";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import SquareCode from "./square-code.tsx";

/** The drawing as pixels, four a module: what a camera straight above it would see. */
function pixels(text: string): { readonly data: Uint8ClampedArray; readonly side: number } {
  const drawn = renderToStaticMarkup(<SquareCode text={text} label="" />);
  const size = Number(/viewBox="0 0 (\d+)/.exec(drawn)?.[1]);
  const side = 4 * size;
  const data = new Uint8ClampedArray(4 * side * side).fill(255);
  for (const [, x = "", y = ""] of drawn.matchAll(/M(\d+) (\d+)h1v1h-1z/g)) {
    for (let pixel = 0; pixel < 16; pixel += 1) {
      const at = (4 * Number(y) + (pixel >> 2)) * side + 4 * Number(x) + (pixel & 3);
      data.fill(0, 4 * at, 4 * at + 3);
    }
  }
  return { data, side };
}

// Read back by jsQR, a reader that shares no code with what draws it.
test.each([
  `http://192.168.1.20:4480/join#${"0f".repeat(32)}`,
  `https://house.home.example:4443/join#${"a9".repeat(32)}`,
  `http://[fd00::1234:5678:9abc:def0]:4480/h/${"0".repeat(26)}/flights/${"z".repeat(26)}/pour#${"7c".repeat(32)}`,
])("a camera reads the link and nothing but the link: %s", (link) => {
  const { data, side } = pixels(link);
  expect(jsQR.default(data, side, side)?.data).toBe(link);
});
