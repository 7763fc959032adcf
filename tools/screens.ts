import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { chromium } from "playwright-core";
import { chromiumFlags, ensureChromium } from "./chromium.ts";
import { leave, onLeaving } from "./leaving.ts";
import { openServer } from "./own-server.ts";
import { root } from "./place.ts";
import { asker } from "./screens/ask.ts";
import { fileOf, looks, openLook, photograph } from "./screens/photograph.ts";
import { setScene } from "./screens/set-scene.ts";
import { firstRun, forDocs, shotsOf } from "./screens/shots.ts";
import { buildWeb, webIsStale } from "./web.ts";

// `npm run screens`: every screen of the app with the invented household, at two sizes and in both themes, into .screens.
// `-- --docs` also takes the few that the README shows, into docs/screens. `-- --only finding` takes those of that name.

const { values } = parseArgs({ options: { docs: { type: "boolean" }, only: { type: "string" } } });
const started = performance.now();
const folder = join(root, ".screens");
const docs = join(root, "docs", "screens");
if (webIsStale() && !(await buildWeb()).ok) process.exit(1);

const opened = openServer("screens");

try {
  const address = await opened;
  const { path } = await ensureChromium();
  const browser = await chromium.launch({ executablePath: path, args: [...chromiumFlags] });
  onLeaving(() => browser.close());
  mkdirSync(folder, { recursive: true });
  let taken = 0;

  const wanted = ({ name }: { readonly name: string }): boolean => name.includes(values.only ?? "");
  const takeAll = async (shots: ReturnType<typeof shotsOf>, tokens: Readonly<Record<string, string>>) => {
    for (const look of looks) {
      const page = await openLook(browser, address, look, tokens);
      // Paper is white whatever the theme, and as wide as the printer says.
      for (const shot of shots.filter((one) => wanted(one) && (!one.paper || look === looks[2]))) {
        await photograph(page, shot, look, fileOf(folder, shot, look), true);
        taken++;
      }
      await page.context().close();
    }
  };
  await takeAll(firstRun, {});
  const scene = await setScene(asker(address));
  const shots = shotsOf(scene);
  await takeAll(shots, scene.tokens);

  if (values.docs) {
    mkdirSync(docs, { recursive: true });
    for (const { name, width, dark = false } of forDocs) {
      const shot = shots.find((one) => one.name === name);
      const look = looks.find((one) => one.width === width && one.theme === (dark ? "dark" : "light"));
      if (!shot || !look) throw new Error(`docs require a shot named ${name}, got none`);
      const page = await openLook(browser, address, look, scene.tokens);
      await photograph(page, shot, look, join(docs, `${name}.png`), false);
      await page.context().close();
      taken++;
    }
  }
  console.log(`${taken} screens in ${((performance.now() - started) / 1000).toFixed(0)} s, in ${folder}`);
} catch (error) {
  console.error(error);
  process.exitCode = 1;
} finally {
  await leave();
}
