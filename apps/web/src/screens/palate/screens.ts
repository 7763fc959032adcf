import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/shelf/next-note", place: "shelf", load: () => import("./next-note.tsx") },
];
