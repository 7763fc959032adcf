import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { chromium } from "playwright-core";
import { chromiumFlags, ensureChromium } from "./chromium.ts";
import { leave, onLeaving } from "./leaving.ts";
import { root } from "./place.ts";
import { run } from "./run.ts";
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

const data = mkdtempSync(join(tmpdir(), "partsproof-screens-"));
onLeaving(() => rmSync(data, { recursive: true, force: true }));
const open = Promise.withResolvers<string>();
const server = run(process.execPath, [join(root, "apps", "server", "src", "main.ts")], {
  env: { PORT: "0", PARTSPROOF_DATA: data },
  onLine: (line) => {
    const address = /open at (http:\S+)/.exec(line)?.[1];
    if (address !== undefined) open.resolve(address);
  },
});
void server.then(({ ending }) =>
  open.reject(new Error(`the server ended with ${ending} before it listened`)),
);

try {
  const address = await open.promise;
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
