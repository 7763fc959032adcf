import type { RecipeFillAnswer } from "@partsproof/house/protocol";
import { abv } from "./figures.ts";

type Filling = NonNullable<RecipeFillAnswer["best"]>;

const told = (value: number | string): string =>
  typeof value === "number" ? String(Math.round(value * 100) / 100) : value;

function slotLines({
  slot,
  parts,
  rule,
  candidates,
  rejected,
  asked,
}: RecipeFillAnswer["slots"][number]): string[] {
  const head = `Slot ${slot}: ${parts} ${parts === 1 ? "part" : "parts"} of ${rule ?? "the named whiskey"}`;
  return [
    head,
    `  Can stand here  ${candidates.join(", ") || "none on this shelf"}`,
    ...asked.map(
      ({ id, missing }) => `  To be asked     ${id}: ${missing.map((one) => one.fact).join(", ")} not known`,
    ),
    ...rejected.map(
      ({ id, breaks }) =>
        `  Not             ${id}: ${breaks.map(({ rule: own, value }) => `${own} (it is ${told(value)})`).join("; ")}`,
    ),
  ];
}

function fillingLines({ ids, distance, least, abv: strength, waterMl, off }: Filling): string[] {
  const span = least < distance - 1e-12 ? `, ${least.toFixed(3)} at the best` : "";
  return [
    `Fill it with ${ids.map((id, slot) => `${slot + 1} ${id ?? "(empty)"}`).join(", ")}`,
    `Off by ${distance.toFixed(3)} of 10${span}: ${off.map(({ what, most }) => `${what} ${most.toFixed(1)}`).join(", ")}`,
    `Strength ${abv(strength, 2)}${waterMl === null ? "" : `; water ${waterMl.toFixed(1)} mL for a litre of it`}`,
  ];
}

/** Who can stand in each slot and why others cannot, the best filling, and what to look for where a slot stays empty. */
export function printFillRecipe(answer: RecipeFillAnswer): string {
  const { best, proven, empty, wanted, bought } = answer;
  const lines = [
    ...answer.slots.flatMap((slot) => [...slotLines(slot), ""]),
    ...(best === null ? ["Nothing is filled."] : fillingLines(best)),
    ...(best === null
      ? []
      : [
          proven
            ? "Proven: nothing on this shelf fills it closer."
            : "Not proven: it took too long to be sure.",
        ]),
  ];
  if (empty.length > 0) lines.push("", `Empty: slot ${empty.join(", slot ")}. Look for`);
  for (const { slot, rule, profile, abv: strength } of wanted) {
    const about = Object.entries(profile).map(([name, value]) => `${name} ${value.toFixed(1)}`);
    if (strength !== null) about.push(`about ${strength.toFixed(0)} % vol`);
    lines.push(`  ${slot}  ${rule}; best ${about.join(", ")}`);
  }
  const [first] = bought;
  if (first) lines.push("", "With a bottle that could be bought:", ...fillingLines(first));
  return lines.join("\n");
}
