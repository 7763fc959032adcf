import { expect, test } from "vitest";
import { firstLoadFiles, lazyScreens } from "./web-size.ts";

const manifest = {
  "index.html": {
    file: "assets/index-1.js",
    isEntry: true,
    imports: ["_a.js"],
  },
  "_a.js": { file: "assets/a-2.js", imports: ["_b.js"] },
  "_b.js": { file: "assets/b-3.js", imports: ["_a.js"] },
  "_c.js": { file: "assets/c-4.js", imports: ["_d.js"] },
  "_d.js": { file: "assets/d-5.js" },
  "src/late.ts": { file: "assets/late-6.js", isDynamicEntry: true },
  "src/screens/sheet.tsx": { file: "assets/sheet-8.js", isDynamicEntry: true, imports: ["_a.js", "_d.js"] },
  "style.css": { file: "assets/style-7.css" },
};

test("the first load is the entry and what it imports statically, through cycles, and nothing that comes later", () => {
  expect(firstLoadFiles(manifest, "")).toEqual(["assets/a-2.js", "assets/b-3.js", "assets/index-1.js"]);
});

test("what the page itself preloads or runs is first load too, with its imports", () => {
  const html = `<script type="module" crossorigin src="/assets/index-1.js"></script>
    <script src=/register.js></script>
    <link rel="modulepreload" crossorigin href="/assets/c-4.js">
    <link rel="stylesheet" href="/assets/style-7.css"><link rel="icon" href="/icon.js.svg">`;
  expect(firstLoadFiles(manifest, html)).toEqual([
    "assets/a-2.js",
    "assets/b-3.js",
    "assets/c-4.js",
    "assets/d-5.js",
    "assets/index-1.js",
    "register.js",
  ]);
});

test("a page that is opened first brings its own chunk and what that imports", () => {
  expect(lazyScreens(manifest)).toEqual(["src/screens/sheet.tsx"]);
  expect(firstLoadFiles(manifest, "", "src/screens/sheet.tsx")).toEqual([
    "assets/a-2.js",
    "assets/b-3.js",
    "assets/d-5.js",
    "assets/index-1.js",
    "assets/sheet-8.js",
  ]);
});
