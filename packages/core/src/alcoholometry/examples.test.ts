import { readFileSync, readdirSync } from "node:fs";
import { expect, test } from "vitest";
import * as numeric from "../numeric/index.ts";
import * as quantity from "../quantity/index.ts";
import * as uncertainty from "../uncertainty/index.ts";
import * as alcoholometry from "./index.ts";

/**
 * Runs the examples in the doc comments of quantity, numeric, alcoholometry and uncertainty: lines before the last set up, and
 * `expression; // value` is compared, where … stands for further digits.
 */
const scope: Readonly<Record<string, unknown>> = {
  ...numeric,
  ...quantity,
  ...alcoholometry,
  ...uncertainty,
};

function shown(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value);
  if (typeof value !== "object" || value === null) return String(value);
  if (Array.isArray(value)) return `[${value.map(shown).join(", ")}]`;
  const fields = Object.entries(value).map(([name, field]) => `${name}: ${shown(field)}`);
  return `{ ${fields.join(", ")} }`;
}

function pattern(expected: string): RegExp {
  const escaped = expected.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  return new RegExp(`^${escaped.replaceAll("…", "\\d*")}$`);
}

/** The checked expressions of one source file, each with the set-up lines above it. */
function examplesOf(source: string): { readonly code: string; readonly expected: string }[] {
  const found: { code: string; expected: string }[] = [];
  for (const block of source.matchAll(/@example\n((?: \* .*\n)+)/g)) {
    // A value too long for its line stands on a comment line of its own.
    const text = (block[1] ?? "").replace(/^ \* /gm, "").replace(/;\n\/\/ /g, "; // ");
    let setUp = "";
    for (const line of text.trimEnd().split("\n")) {
      const parts = /^(.*); \/\/ (.*)$/.exec(line);
      if (parts === null) {
        if (!line.startsWith("//")) setUp += `${line}\n`;
      } else found.push({ code: `${setUp}return ${parts[1]};`, expected: parts[2] ?? "" });
    }
  }
  return found;
}

const rooms = ["quantity", "numeric", "alcoholometry", "uncertainty"].map(
  (room) => new URL(`../${room}/`, import.meta.url),
);
const examples = rooms.flatMap((room) =>
  readdirSync(room)
    .filter((file) => file.endsWith(".ts") && !file.endsWith(".test.ts"))
    .flatMap((file) =>
      examplesOf(readFileSync(new URL(file, room), "utf8")).map((one) => ({ file, ...one })),
    ),
);

test("there are examples to run", () => {
  expect(examples.length).toBeGreaterThanOrEqual(30);
});

test.each(examples)("$file: $code", ({ code, expected }) => {
  // The code is our own doc comments, and running it is the point of this test; ends when the examples go.
  // oxlint-disable-next-line typescript/no-implied-eval
  const value: unknown = new Function(...Object.keys(scope), code)(...Object.values(scope));
  expect(shown(value)).toMatch(pattern(expected));
});
