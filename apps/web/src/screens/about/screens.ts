import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/about", place: null, load: () => import("./about.tsx") },
];
