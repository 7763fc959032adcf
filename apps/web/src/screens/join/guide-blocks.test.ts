import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { sectionOf } from "./guide-blocks.ts";

const guide = readFileSync(new URL("../../../../../docs/guide/at-the-table.md", import.meta.url), "utf8");

test("the guide has both sections that the page shows, with what is to be typed", () => {
  expect(sectionOf(guide, "Without HTTPS").length).toBeGreaterThan(0);
  const codes = sectionOf(guide, "With HTTPS").flatMap((block) =>
    block.kind === "code" ? [block.text] : [],
  );
  expect(codes[0]).toContain("PARTSPROOF_TLS_CERT");
  expect(codes.join("\n")).not.toContain("```");
});

test("a section ends where the next begins; bold and code are apart", () => {
  const text = "# A\n\n## One\nA **b** `c`.\n\n```sh\nx\n\ny\n```\n\nd\ne\n\n## Two\nno\n";
  expect(sectionOf(text, "One")).toEqual([
    {
      kind: "text",
      words: [
        { as: "plain", text: "A " },
        { as: "strong", text: "b" },
        { as: "plain", text: " " },
        { as: "code", text: "c" },
        { as: "plain", text: "." },
      ],
    },
    { kind: "code", text: "x\n\ny" },
    { kind: "text", words: [{ as: "plain", text: "d e" }] },
  ]);
  expect(sectionOf(text, "Three")).toEqual([]);
});
