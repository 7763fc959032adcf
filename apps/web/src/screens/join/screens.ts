import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/join", place: null, bare: true, load: () => import("./join.tsx") },
  { path: "/https", place: null, bare: true, load: () => import("./https.tsx") },
];
