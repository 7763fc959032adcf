import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/", place: null, load: () => import("./door.tsx") },
  { path: "/h/:household", place: null, load: () => import("./front.tsx") },
];
