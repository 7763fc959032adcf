import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [{ path: "/door", place: null, load: () => import("./door.tsx") }];
