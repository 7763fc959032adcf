import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/reckon", place: null, load: () => import("./reckon.tsx") },
];
