import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/weigh", place: null, load: () => import("./weigh-bench.tsx") },
  { path: "/h/:household/batches/weigh", place: "batches", load: () => import("./weigh-batch.tsx") },
];
