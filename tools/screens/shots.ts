import type { Page } from "playwright-core";
import type { Scene } from "./set-scene.ts";

export interface Shot {
  readonly name: string;
  readonly path: string;
  /** What is done on the page before it is photographed. */
  readonly act?: (page: Page) => Promise<void>;
  /** As it comes out of a printer. */
  readonly paper?: boolean;
}

const press =
  (...names: readonly (string | RegExp)[]) =>
  async (page: Page): Promise<void> => {
    for (const name of names) {
      await page
        .getByRole("button", { name, exact: typeof name === "string" })
        .first()
        .click();
    }
  };

const pressFor =
  (role: "dialog" | "alertdialog", name: string) =>
  async (page: Page): Promise<void> => {
    await press(name)(page);
    await page.getByRole(role).waitFor();
  };

const choose =
  (label: string) =>
  async (page: Page): Promise<void> =>
    page.getByRole("radio", { name: label }).check();

/** Begins to pour by weight, and types this share of what the scale shall show. */
const pourAt =
  (share: number, how: "in" | "not in yet") =>
  async (page: Page): Promise<void> => {
    // An earlier look may have left a pouring behind.
    const drop = page.getByRole("button", { name: "Drop it and begin again" });
    if ((await drop.count()) > 0) {
      await drop.click();
      await press("Forget this pouring")(page);
    }
    await press("Start pouring")(page);
    const digits = page.locator(".weigh-digits");
    await digits.waitFor();
    const shown = (Number(await digits.innerText()) * share).toFixed(1);
    await page.getByRole("textbox", { name: "The scale shows" }).fill(shown);
    if (how === "in") await press("It is in")(page);
  };

/** Waits until the search has nothing left to look into. */
const proven = async (page: Page): Promise<void> =>
  page.locator('.closest-best[aria-busy="false"][data-state="done"]').waitFor();

/** Before there is any household. */
export const firstRun: readonly Shot[] = [{ name: "front-door-first-run", path: "/" }];

/** Every screen, and the states of those that have several. */
export function shotsOf(scene: Scene): readonly Shot[] {
  const { home, tasting, locked } = scene;
  const flight = (id: string): string => `${home}/flights/${id}`;
  const sheet = ({ flight: id, sheet: one }: { readonly flight: string; readonly sheet: string }): string =>
    `${flight(id)}/sheets/${one}`;
  const [first = "", , , last = ""] = tasting.codes;
  const at = (step: string, code = first): string => `${sheet(tasting)}?at=${step}&glass=${code}`;
  return [
    { name: "front-door", path: "/?choose" },
    { name: "front", path: home },
    { name: "shelf", path: `${home}/shelf` },
    { name: "add-a-bottle", path: `${home}/shelf/add` },
    {
      name: "add-a-bottle-refused",
      path: `${home}/shelf/add`,
      act: async (page) => {
        await page.getByLabel("Strength").fill("104%");
        await press("Put it on the shelf")(page);
        await page.locator(".issues").waitFor();
      },
    },
    { name: "add-a-vessel", path: `${home}/shelf`, act: pressFor("dialog", "Add a vessel") },
    { name: "bottle", path: `${home}/shelf/vessels/${scene.bottle}` },
    {
      name: "bottle-pour-out",
      path: `${home}/shelf/vessels/${scene.bottle}`,
      act: pressFor("dialog", "Pour out"),
    },
    { name: "blending-bottle", path: `${home}/shelf/vessels/${scene.blend}` },
    { name: "whiskey", path: `${home}/shelf/whiskeys/${scene.whiskey}` },
    {
      name: "whiskey-changed",
      path: `${home}/shelf/whiskeys/${scene.whiskey}`,
      act: press("Change the facts"),
    },
    { name: "recipes", path: `${home}/recipes` },
    { name: "recipe", path: `${home}/recipes/${scene.recipe}` },
    { name: "recipe-changed", path: `${home}/recipes/${scene.recipe}`, act: press("Change it") },
    { name: "new-recipe", path: `${home}/recipes/new` },
    { name: "what-comes-closest", path: `${home}/recipes/closest?like=${scene.whiskey}`, act: proven },
    {
      name: "what-comes-closest-impossible",
      path: `${home}/recipes/closest?like=${scene.whiskey}`,
      act: async (page) => {
        await page.getByRole("checkbox", { name: /^At least 10 years/ }).check();
        await page.getByLabel("Youngest", { exact: true }).fill("60");
        await page.getByText(/^The nearest that breaks least/).waitFor();
      },
    },
    {
      name: "what-to-try-next",
      path: `${home}/recipes/${scene.recipe}/next`,
      act: async (page) => {
        await page.getByText("Anything on the shelf").click();
        await page
          .getByText(/^To find out whether/)
          .first()
          .waitFor();
      },
    },
    { name: "pass-it-on", path: `${home}/recipes/${scene.recipe}/share` },
    { name: "filled-from-the-shelf", path: `${home}/recipes/${scene.recipe}/filling` },
    { name: "rules-of-its-lines", path: `${home}/recipes/${scene.recipe}/rules` },
    { name: "family-tree", path: `${home}/recipes/${scene.recipe}/tree` },
    { name: "recipe-card", path: `${home}/recipes/${scene.recipe}/card` },
    { name: "trials", path: `${home}/trials/new` },
    { name: "what-to-taste-next", path: `${home}/shelf/next-note` },
    { name: "shelf-from-a-list", path: `${home}/shelf/list` },
    { name: "batches", path: `${home}/batches` },
    {
      name: "make-a-batch",
      path: `${home}/batches/new?recipe=${scene.recipe}`,
      act: async (page) => {
        await page.getByLabel("Volume at the end").fill("400 mL");
        await page.getByText("Planned: ").filter({ hasText: "400" }).waitFor();
      },
    },
    { name: "batch", path: `${home}/batches/${scene.batch}` },
    { name: "a-rest", path: `${home}/batches/${scene.batch}/rest` },
    { name: "how-much-to-make", path: `${home}/batches/make` },
    { name: "calendar", path: `${home}/calendar` },
    { name: "label", path: `${home}/batches/${scene.batch}/label` },
    { name: "card", path: `${home}/batches/${scene.batch}/label`, act: choose("The card") },
    { name: "label-on-paper", path: `${home}/batches/${scene.batch}/label`, paper: true },
    {
      name: "card-on-paper",
      path: `${home}/batches/${scene.batch}/label`,
      act: choose("The card"),
      paper: true,
    },
    { name: "flights", path: `${home}/flights` },
    { name: "set-a-flight", path: `${home}/flights/new` },
    {
      name: "set-a-flight-filled",
      path: `${home}/flights/new`,
      act: async (page) => {
        for (const name of ["Keeper's Round", "Lamplighter's Rest", "Straight Furrow", "Wick and Rye"]) {
          await page.getByRole("searchbox").fill(name);
          await press(new RegExp(`^Pour a glass of .*${name}`))(page);
        }
        await press(/^More: Glasses of Keeper/)(page);
        for (const name of await page.getByRole("checkbox").all()) await name.check();
      },
    },
    { name: "flight-to-pour", path: flight(scene.toPour.flight) },
    { name: "flight-tasting", path: flight(tasting.flight) },
    { name: "flight-to-reveal", path: flight(locked.flight) },
    { name: "flight-alone", path: flight(scene.alonePouring) },
    { name: "pourer-covered", path: `${flight(scene.toPour.flight)}/pour#${scene.toPour.pourerToken}` },
    {
      name: "pourer",
      path: `${flight(scene.toPour.flight)}/pour#${scene.toPour.pourerToken}`,
      act: press(/taste nothing: show it$/),
    },
    {
      name: "pourer-on-paper",
      path: `${flight(scene.toPour.flight)}/pour#${scene.toPour.pourerToken}`,
      act: press(/taste nothing: show it$/),
      paper: true,
    },
    { name: "sheet-take", path: sheet(scene.toPour) },
    { name: "sheet-before-pouring", path: sheet(scene.waiting) },
    { name: "sheet-first-pass", path: at("first") },
    { name: "sheet-second-pass", path: at("second") },
    { name: "sheet-names", path: at("names") },
    { name: "sheet-names-used-up", path: at("names", last), act: press(/used for/) },
    { name: "sheet-ranking", path: at("rank") },
    { name: "sheet-lock", path: at("lock") },
    { name: "sheet-lock-sure", path: at("lock"), act: pressFor("alertdialog", "Lock the sheet") },
    { name: "sheet-locked", path: sheet(locked) },
    { name: "alone-take", path: `${flight(scene.aloneFree)}/alone` },
    { name: "alone-marks", path: `${flight(scene.alonePouring)}/alone` },
    { name: "alone-undersides", path: `${flight(scene.aloneLocked)}/alone` },
    { name: "reveal-shut", path: `${flight(scene.revealed)}/reveal` },
    {
      name: "reveal-half",
      path: `${flight(scene.revealed)}/reveal`,
      act: press("Open the first glass", "Open the next glass"),
    },
    { name: "reveal-open", path: `${flight(scene.revealed)}/reveal`, act: press("Open all") },
    { name: "table", path: `${flight(tasting.flight)}/table` },
    { name: "check", path: `${flight(scene.revealed)}/check` },
    { name: "findings", path: `${home}/findings` },
    { name: "finding", path: `${home}/findings/${scene.revealed}` },
    { name: "findings-of-a-recipe", path: `${home}/findings/recipes/${scene.recipe}` },
    { name: "findings-of-a-whiskey", path: `${home}/findings/whiskeys/${scene.whiskey}` },
    { name: "league", path: `${home}/findings/league` },
    { name: "numbers-from-elsewhere", path: "/counts" },
    { name: "finding-alone", path: `${home}/findings/${scene.revealedAlone}` },
    { name: "finding-on-paper", path: `${home}/findings/${scene.revealed}`, paper: true },
    { name: "reckoner-mixing", path: "/reckon" },
    { name: "reckoner-reducing", path: "/reckon?do=reduce" },
    { name: "reckoner-weighing", path: "/reckon?do=weigh" },
    { name: "reckoner-correcting", path: "/reckon?do=correct" },
    { name: "reckoner-what-if", path: "/reckon?do=what-if" },
    { name: "weigh-set-up", path: "/weigh?parts=2@62.4,1@46&ml=300" },
    { name: "weigh-pouring", path: "/weigh?parts=2@62.4,1@46&ml=300", act: pourAt(1, "not in yet") },
    { name: "weigh-too-much", path: "/weigh?parts=2@62.4,1@46&ml=300", act: pourAt(1.1, "in") },
    { name: "household", path: `${home}/household` },
    { name: "door", path: "/door" },
    { name: "join-by-code", path: "/join" },
    { name: "stay-well", path: "/about" },
    { name: "no-such-page", path: "/nowhere" },
    { name: "unknown-household", path: `/h/${"0".repeat(26)}` },
  ];
}

/** The few that the README shows: name of the shot, and how wide. */
export const forDocs: readonly {
  readonly name: string;
  readonly width: 390 | 1280;
  readonly dark?: boolean;
}[] = [
  { name: "shelf", width: 1280 },
  { name: "recipe", width: 390 },
  { name: "what-comes-closest", width: 1280 },
  { name: "what-to-try-next", width: 390 },
  { name: "pass-it-on", width: 390 },
  { name: "a-rest", width: 390, dark: true },
  { name: "make-a-batch", width: 1280 },
  { name: "sheet-names", width: 390, dark: true },
  { name: "sheet-ranking", width: 390 },
  { name: "reveal-half", width: 390, dark: true },
  { name: "finding", width: 1280 },
  { name: "reckoner-mixing", width: 390 },
];
