export { type HeldLevel, heldLevel } from "./held-level.ts";
export type { LabelFacts } from "./label.ts";
export { labelLevel } from "./label-level.ts";
export { type AttributeLevels, type LearnedLevels, learnLevels, type TasterScale } from "./learn-levels.ts";
export { mixLevels } from "./mix-levels.ts";
export { type Pourable, type Taught, teachesMost, type TeachesMost } from "./teaches-most.ts";
export type { LabelledWhiskey, SaidLevel, TableNote } from "./told.ts";
export { type Particular, type ToldOf, whyItTeaches } from "./why-it-teaches.ts";
