import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { chromiumFlags, ensureChromium } from "./chromium.ts";
import { root } from "./place.ts";

// `node tools/icons.ts`: the app's icons from its mark, into apps/web/public/icons. Run after the mark has changed; the
// pictures are committed, since a build must not need a browser.

const web = join(root, "apps", "web", "public");
const mark = readFileSync(join(web, "mark.svg"), "utf8");
/** A maskable icon may be cut to a circle of 80 % of its width: the mark stays within it, its ground fills the rest. */
const SAFE = 0.64;
const icons = [
  { name: "icon-180", px: 180, share: 1 },
  { name: "icon-192", px: 192, share: 1 },
  { name: "icon-512", px: 512, share: 1 },
  { name: "icon-maskable-512", px: 512, share: SAFE },
];

const { path } = await ensureChromium();
const browser = await chromium.launch({ executablePath: path, args: [...chromiumFlags] });
mkdirSync(join(web, "icons"), { recursive: true });
for (const { name, px, share } of icons) {
  const page = await browser.newPage({ viewport: { width: px, height: px } });
  const side = Math.round(px * share);
  const ground = share < 1 ? "#231a12" : "transparent";
  await page.setContent(
    `<body style="margin:0;height:${px}px;display:grid;place-items:center;background:${ground}">` +
      `<div style="width:${side}px;height:${side}px">${mark}</div></body>`,
  );
  await page.screenshot({ path: join(web, "icons", `${name}.png`), omitBackground: share === 1 });
  await page.close();
}
await browser.close();
