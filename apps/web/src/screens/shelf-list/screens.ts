import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/shelf/list", place: "shelf", load: () => import("./shelf-list.tsx") },
  { path: "/h/:household/shelf/paper", place: "shelf", load: () => import("./shelf-paper.tsx") },
];
