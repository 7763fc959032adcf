export { NOTED, type NotedAttribute } from "./attributes.data.ts";
export { type Combined, combineProfiles, type TasterProfile, type UseOfScale } from "./combine-profiles.ts";
export { ENGLISH } from "./english.data.ts";
export type { Language, Stance, Where } from "./language.ts";
export type { LearnedWord } from "./learned.ts";
export { type NoteReader, openReader } from "./open-reader.ts";
export { type Intensity, type Profile, profileOf } from "./profile-of.ts";
export type { NoteRead, Observation, Remark } from "./read-note.ts";
