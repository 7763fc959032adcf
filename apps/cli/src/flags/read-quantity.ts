import { parseAmount, parseStrength, parseVolume, type Reading } from "@partsproof/core/quantity";
import { MassG, type StatedStrength, type TransferAmount, VolumeMl } from "@partsproof/house/protocol";
import { bounded } from "./bounded.ts";
import type { Read } from "./flag.ts";
import { readNumber, unread } from "./read-number.ts";

/** "62.4", "62.4%" or "124.8 proof". */
export const readStrength: Read<StatedStrength> = parseStrength;

/** A strength that can only be % vol, or only proof: the flag already says which. */
export const readStrengthOn =
  (basis: StatedStrength["basis"]): Read<number> =>
  (text) => {
    const bare = /^[\s\d.,+-]*$/.test(text) && basis === "proof60F" ? `${text} proof` : text;
    const read = parseStrength(bare);
    if (!read.ok) return { ok: false, issue: { ...read.issue, received: text } };
    if (read.value.basis === basis) return { ok: true, value: read.value.value };
    const limit = basis === "abv20" ? "% vol at 20 °C" : "US proof at 60 °F";
    return unread("strength", "strength_unreadable", limit, text);
  };

/** More than 0 mL: "750ml", "70 cl", "2 oz", "0.5 l"; a bare number is mL. */
export const readVolume: Read<number> = (text) => {
  const read = parseVolume(text);
  if (read.ok) return bounded(VolumeMl, "volume", "mL", text, read.value);
  if (read.issue.code !== "volume_out_of_range") return read;
  // What core reads at most is more than the house takes; the limit that is told is the house's.
  const far = /^[-\u2212]/.test(text.trim()) ? -1 : Number.MAX_VALUE;
  return bounded(VolumeMl, "volume", "mL", text, far);
};

/** As `readVolume`, and 0 besides: how much is left in a bottle. */
export const readLevel: Read<number> = (text) => {
  const read = parseVolume(text);
  return read.ok && read.value > 0 ? readVolume(text) : read;
};

/** A volume, a mass ("12 g") or "all". */
export const readAmount: Read<TransferAmount> = (text) => {
  if (text.trim().toLowerCase() === "all") return { ok: true, value: { kind: "all" } };
  return readMeasured(text);
};

/** A volume or a mass, more than 0. */
export const readMeasured: Read<Exclude<TransferAmount, { readonly kind: "all" }>> = (text) => {
  const read = parseAmount(text);
  if (!read.ok) return read;
  const amount = read.value;
  const size = amount.kind === "mass" ? amount.massG : amount.volumeMl;
  if (size === 0) return unread("amount", "value_too_small", "more than 0", text);
  return amount.kind === "mass"
    ? { ok: true, value: { kind: "mass", g: amount.massG } }
    : { ok: true, value: { kind: "volume", ml: amount.volumeMl } };
};

export interface PartTyped {
  readonly parts: number;
  readonly strength: StatedStrength;
}

/** "2@62.4": so many parts at a strength. Several parts together have the limits of a mix (0 to 10 000). */
export const readPart: Read<PartTyped> = (text) => {
  const at = text.indexOf("@");
  if (at < 0) return unread("part", "part_unreadable", "<parts>@<strength>, such as 2@62.4", text);
  const parts = readNumber("parts", 0, 10_000)(text.slice(0, at));
  if (!parts.ok) return parts;
  const strength: Reading<StatedStrength> = readStrength(text.slice(at + 1));
  return strength.ok ? { ok: true, value: { parts: parts.value, strength: strength.value } } : strength;
};

/** More than 0 g: "94.8", "94.8 g", "0.4 kg"; a bare number is g. */
export const readMass: Read<number> = (text) => {
  const bare = /^[\s\d.,]*$/.test(text) ? `${text} g` : text;
  const read = parseAmount(bare);
  if (!read.ok || read.value.kind !== "mass") {
    return unread("mass", "mass_unreadable", "a number with g or kg", text);
  }
  return bounded(MassG, "mass", "g", text, read.value.massG);
};

export interface LevelTyped {
  readonly volumeMl: number;
  readonly strength: StatedStrength;
}

/** "650ml@61": so much at a strength; 0 ml for an empty vessel. */
export const readLevelAt: Read<LevelTyped> = (text) => {
  const at = text.indexOf("@");
  if (at < 0) return unread("level", "level_unreadable", "<volume>@<strength>, such as 650ml@61", text);
  const volume = readLevel(text.slice(0, at));
  if (!volume.ok) return volume;
  const strength = readStrength(text.slice(at + 1));
  return strength.ok ? { ok: true, value: { volumeMl: volume.value, strength: strength.value } } : strength;
};
