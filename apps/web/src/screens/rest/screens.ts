import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/batches/:batch/rest", place: "batches", load: () => import("./rest.tsx") },
  { path: "/h/:household/calendar", place: null, load: () => import("./calendar.tsx") },
];
