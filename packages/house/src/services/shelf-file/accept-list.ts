import type { BodyRead, ListedRow, ShelfListAccepted } from "../../protocol/index.ts";
import { born } from "../birth.ts";
import { knownHousehold } from "../known.ts";
import type { House, Records } from "../ports.ts";
import { HouseRefusal, refuse } from "../refuse.ts";
import type { VesselRow, WhiskeyRow } from "../rows.ts";
import { type Entry, liquidIn, post, whiskeyLabel } from "../shelf/index.ts";
import { previewList } from "./preview-list.ts";

const LABEL_CHARACTERS = 120;

/** I2: what was seen is taken in, all of it in one transaction, or nothing. */
export async function acceptList(
  house: House,
  household: string,
  { sha256, lines, ...draft }: BodyRead<"acceptShelfList">,
): Promise<ShelfListAccepted> {
  return house.store.transaction(async (records) => {
    const { currency } = await knownHousehold(records, household);
    const preview = await previewList(draft, await records.list("whiskey", household), currency);
    if (preview.sha256 !== sha256)
      refuse(409, {
        code: "preview_changed",
        path: ["sha256"],
        limit: preview.sha256,
        received: sha256,
        message: `taking a list in requires the one that was looked at, got another: look at it again`,
      });
    if (preview.issues.length > 0) throw new HouseRefusal(422, preview.issues);
    const asked = lines === undefined ? null : new Set(lines);
    const taken = preview.rows.filter(({ line, whiskey }) =>
      asked === null ? whiskey !== null : asked.has(line),
    );
    const wrong = taken.flatMap(({ issues }) => issues);
    if (wrong.length > 0) throw new HouseRefusal(422, wrong);
    const made = await whiskeysOf(records, house, household, taken);
    const bottles = await bottlesOf(records, house, household, taken, made.of);
    const left = preview.rows.filter((row) => !taken.includes(row)).map(({ line }) => line);
    return { whiskeys: made.count, bottles, left };
  });
}

interface Made {
  readonly count: number;
  readonly of: (row: ListedRow) => WhiskeyRow;
}

async function whiskeysOf(
  records: Records,
  house: House,
  household: string,
  rows: readonly ListedRow[],
): Promise<Made> {
  const here = new Map((await records.list("whiskey", household)).map((row) => [row.id, row]));
  const byLine = new Map<number, WhiskeyRow>();
  let count = 0;
  for (const { line, whiskey, same } of rows) {
    const known = same?.whiskeyId === null || same === null ? undefined : here.get(same.whiskeyId);
    const before = same?.line === null || same === null ? undefined : byLine.get(same.line);
    if (whiskey === null) continue;
    let row = known ?? before;
    if (row === undefined) {
      row = { ...born(house, household), ...whiskey };
      await records.insert("whiskey", row);
      count += 1;
    }
    byLine.set(line, row);
    // The earlier line that it is the same as may not have been taken in.
    if (same !== null && same.line !== null && before === undefined) byLine.set(same.line, row);
  }
  return { count, of: ({ line }) => byLine.get(line)! };
}

async function bottlesOf(
  records: Records,
  house: House,
  household: string,
  rows: readonly ListedRow[],
  whiskeyOf: Made["of"],
): Promise<number> {
  const entries: Entry[] = [];
  let count = 0;
  for (const listed of rows) {
    const whiskey = whiskeyOf(listed);
    const capacityMl = listed.capacityMl ?? whiskey.bottleMl;
    const ml = listed.levelMl ?? capacityMl;
    for (let n = 0; n < listed.bottles; n += 1) {
      const head = born(house, household);
      // Of several, the first is the open one.
      const open = n === 0 && listed.openedOn !== null;
      const held = n === 0 ? ml : capacityMl;
      const day = listed.openedOn === "not known" ? head.createdAt : `${listed.openedOn}T00:00:00.000Z`;
      const priceMinor = listed.whiskey?.priceMinor ?? null;
      const row: VesselRow = {
        ...head,
        kind: "bottle",
        label: whiskeyLabel(whiskey).slice(0, LABEL_CHARACTERS),
        capacityMl,
        whiskeyId: whiskey.id,
        batchId: null,
        priceMinor,
        openedAt: open ? day : null,
      };
      await records.insert("vessel", row);
      count += 1;
      if (held === 0) continue;
      const amount = { kind: "volume" as const, ml: held };
      const cost = priceMinor === null ? null : (priceMinor * held) / capacityMl;
      entries.push({
        from: { kind: "outside", name: "shop" },
        to: { kind: "vessel", vesselId: row.id },
        amount,
        liquid: liquidIn(whiskey, amount, cost),
        path: ["line", listed.line],
      });
    }
  }
  if (entries.length > 0) await post(records, house, household, entries);
  return count;
}
