import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/counts", place: null, load: () => import("./counts.tsx") },
];
