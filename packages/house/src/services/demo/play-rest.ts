import type { EntryThat } from "./entry.ts";
import { idOf, type Play } from "./play.ts";

export async function playOak(play: Play, { batch, wood, pull }: EntryThat<"lay">): Promise<void> {
  const { household } = play.known;
  const at = { household, batch: idOf(play, "batches", batch) };
  const { id } = await play.ask("beginRest", { at, body: { kind: "oak", pull } });
  await play.ask("putOakIn", { at: { household, rest: id }, body: wood });
  play.known.rests.set(batch, id);
}

export async function playCheck(play: Play, entry: EntryThat<"check">): Promise<void> {
  const { batch, palate, strengths } = entry;
  await play.ask("addCheck", {
    at: { household: play.known.household, rest: idOf(play, "rests", batch) },
    body: {
      notes: { palate },
      strengths: strengths.map(([attribute, strength]) => ({ section: "whole", attribute, strength })),
    },
  });
}
