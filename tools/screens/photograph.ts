import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import type { Shot } from "./shots.ts";

export interface Look {
  readonly width: number;
  readonly height: number;
  readonly theme: "light" | "dark";
}

export const looks: readonly Look[] = [
  { width: 390, height: 844, theme: "light" },
  { width: 390, height: 844, theme: "dark" },
  { width: 1280, height: 800, theme: "light" },
  { width: 1280, height: 800, theme: "dark" },
];

const PATIENCE_MS = 30_000;

/** A page in a browser context of its own for one size and theme, holding these tokens. */
export async function openLook(
  browser: Browser,
  address: string,
  { width, height, theme }: Look,
  tokens: Readonly<Record<string, string>>,
  scale = 1,
): Promise<Page> {
  const context = await browser.newContext({
    baseURL: address,
    viewport: { width, height },
    colorScheme: theme,
    reducedMotion: "reduce",
    locale: "en-GB",
    deviceScaleFactor: scale,
  });
  context.setDefaultTimeout(PATIENCE_MS);
  await context.addInitScript((held) => {
    for (const [key, token] of Object.entries(held)) localStorage.setItem(`partsproof.${key}`, token);
  }, tokens);
  return context.newPage();
}

/** Takes one shot into `folder`; the whole page unless only what the screen holds is wanted. */
export async function photograph(
  page: Page,
  { name, path, act, paper = false }: Shot,
  size: Pick<Look, "width" | "height">,
  file: string,
  whole: boolean,
): Promise<void> {
  try {
    await page.emulateMedia({ media: "screen" });
    await page.setViewportSize(size);
    // Two shots may differ by what stands behind the # alone, which would not load the page anew.
    await page.goto("about:blank");
    await page.goto(path);
    await page.getByRole("heading", { level: 1 }).waitFor();
    await atRest(page);
    await act?.(page);
    await atRest(page);
    await page.evaluate(() => document.fonts.ready);
    if (paper) await page.emulateMedia({ media: "print" });
    if (whole) await makeRoom(page);
    await page.screenshot({ path: file, animations: "disabled" });
  } catch (error) {
    throw new Error(`the shot ${name} could not be taken`, { cause: error });
  }
}

/** Nothing is being fetched any more; several things may be at once. */
const atRest = async (page: Page): Promise<unknown> =>
  page.waitForFunction(() => document.querySelector(".busy") === null);

export const fileOf = (folder: string, { name }: Shot, { width, theme }: Look): string =>
  join(folder, `${name}.${width}.${theme}.png`);

/** As high a window as the page needs, so that what stays at its lower edge does not stand in the middle of the picture. */
async function makeRoom(page: Page): Promise<void> {
  const { width, height } = await page.evaluate(() => ({
    width: innerWidth,
    height: Math.max(innerHeight, document.documentElement.scrollHeight),
  }));
  await page.setViewportSize({ width, height });
}
