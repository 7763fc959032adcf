import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/flights", place: "flights", load: () => import("./flights.tsx") },
];
