import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/batches", place: "batches", load: () => import("./batches.tsx") },
  { path: "/h/:household/batches/make", place: "batches", load: () => import("./make.tsx") },
  { path: "/h/:household/batches/new", place: "batches", load: () => import("./new-batch.tsx") },
  { path: "/h/:household/batches/:batch", place: "batches", load: () => import("./batch.tsx") },
  { path: "/h/:household/batches/:batch/label", place: "batches", load: () => import("./label.tsx") },
];
