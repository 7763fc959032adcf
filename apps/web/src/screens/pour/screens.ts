import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [];
