import { loadavg } from "node:os";
import { chromium } from "playwright-core";
import { chromiumFlags, ensureChromium } from "./chromium.ts";
import { quantile } from "./house-style.ts";
import { leave, onLeaving } from "./leaving.ts";
import { openServer } from "./own-server.ts";
import { asker } from "./screens/ask.ts";
import { processorTime } from "./slider/processor-time.ts";
import { buildWeb } from "./web.ts";

// `node -r ./tools/node-24.cjs tools/typing.ts`: a note of some 100 words typed on in Chromium slowed four times. Prints what reading it
// takes at every key, and fails when the median is over 16 ms.

const SLOWED = 4;
const LONGEST_READ_MS = 16;
const PIECE = "a hint of smoke, then brown butter and orange peel, no iodine, maybe plum, quite drying oak; ";

// Always anew: what a test built is not what people get.
if (!(await buildWeb()).ok) process.exit(1);
const opened = openServer("typing");

/** A household with one flight of two glasses, poured, and where its one sheet is. */
async function oneSheet(address: string): Promise<string> {
  const ask = asker(address);
  const household = await ask<{ id: string }>("POST", "/api/households", { name: "Typed", currency: "USD" });
  const at = `/api/households/${household.id}`;
  const glasses: { vesselId: string }[] = [];
  for (const name of ["Tarn", "Skerry"]) {
    const strength = { basis: "abv20", value: 43 };
    const whiskey = await ask<{ id: string }>("POST", `${at}/whiskeys`, {
      maker: "Measured",
      name,
      strength,
    });
    const bottle = await ask<{ id: string }>("POST", `${at}/bottles`, { whiskeyId: whiskey.id });
    glasses.push({ vesselId: bottle.id });
  }
  const taster = await ask<{ id: string }>("POST", `${at}/tasters`, { name: "Ana" });
  const { flight, pourerToken } = await ask<{
    flight: { id: string; sheets: readonly { sheetId: string }[] };
    pourerToken: string;
  }>("POST", `${at}/flights`, {
    name: "Typed",
    pouring: "someone else",
    pourer: "Wren",
    pourMl: 5,
    glasses,
    tasterIds: [taster.id],
  });
  await ask("POST", `${at}/flights/${flight.id}/poured`, {}, pourerToken);
  return `/h/${household.id}/flights/${flight.id}/sheets/${flight.sheets[0]?.sheetId}`;
}

try {
  const address = await opened;
  const sheet = await oneSheet(address);
  const { path, version } = await ensureChromium();
  const browser = await chromium.launch({ executablePath: path, args: [...chromiumFlags] });
  onLeaving(() => browser.close());
  const page = await browser.newPage({ viewport: { width: 390, height: 844 }, baseURL: address });
  await page.goto(sheet);
  await page.getByRole("checkbox", { name: "I am of legal drinking age" }).check();
  await page.getByRole("button", { name: /: take the sheet$/ }).click();
  const palate = page.getByLabel("Palate", { exact: true });
  const text = PIECE.repeat(6);
  await palate.fill(text);
  await page
    .getByRole("button", { name: /: “plum”$/ })
    .first()
    .waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
  await page.waitForTimeout(1500);
  await page.evaluate(() => performance.clearMeasures());
  const longest = await processorTime(session, async () => {
    await palate.press("End");
    await palate.pressSequentially(" ginger, honey and a little leather", { delay: 150 });
    await page
      .getByRole("button", { name: /: “leather”$/ })
      .first()
      .waitFor();
  });
  const took = await page.evaluate(() =>
    performance.getEntriesByName("notes read").map(({ duration }) => duration),
  );
  const median = quantile(took, 0.5);
  const kept = median <= LONGEST_READ_MS;
  console.log(`${version}, slowed ${SLOWED} times, ${text.trim().split(/\s+/).length} words, typed on`);
  console.log(
    "| reads | median, ms | longest, ms | longest task of the page, processor time, ms | |\n| ---: | ---: | ---: | ---: | --- |",
  );
  console.log(
    `| ${took.length} | ${median.toFixed(1)} | ${quantile(took, 1).toFixed(1)} | ${longest.toFixed(0)} | ${kept ? "kept" : "MISSED"} |`,
  );
  console.log(
    `Load of the machine: ${loadavg()[0]?.toFixed(1)}; a busy one stretches every figure but processor time.`,
  );
  if (!kept) process.exitCode = 1;
} catch (error) {
  console.error(error);
  process.exitCode = 1;
} finally {
  await leave();
}
