import { readFileSync, readdirSync } from "node:fs";
import { expect, test } from "vitest";

/** The exported functions of a room, with the doc comment right above each. */
function documented(room: string): readonly { readonly name: string; readonly comment: string }[] {
  const folder = new URL(`../${room}/`, import.meta.url);
  const index = readFileSync(new URL("index.ts", folder), "utf8");
  const exported = new Set(
    [...index.matchAll(/export \{([^}]*)\}/g)].flatMap(([, names]) => (names ?? "").split(/[,\s]+/)),
  );
  return readdirSync(folder)
    .filter((file) => file.endsWith(".ts") && !file.endsWith(".test.ts"))
    .flatMap((file) => {
      const source = readFileSync(new URL(file, folder), "utf8");
      const functions = [...source.matchAll(/(?:\/\*\*((?:(?!\*\/)[^])*)\*\/\n)?export function (\w+)/g)];
      return functions.map(([, comment = "", name = ""]) => ({
        name: `${room}: ${name}`,
        comment,
        own: name,
      }));
    })
    .filter(({ own }) => exported.has(own));
}

test.each([...documented("alcoholometry"), ...documented("uncertainty")])(
  "$name says its domain, accuracy, source and cost, and shows an example",
  ({ comment }) => {
    for (const word of [/domain/i, /accura|exact/i, /source/i, /cost/i, /@example/])
      expect(comment).toMatch(word);
  },
);
