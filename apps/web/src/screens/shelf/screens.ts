import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/shelf", place: "shelf", load: () => import("./shelf.tsx") },
  { path: "/h/:household/shelf/add", place: "shelf", load: () => import("./add-bottle.tsx") },
  { path: "/h/:household/shelf/whiskeys/:whiskey", place: "shelf", load: () => import("./edit-whiskey.tsx") },
  { path: "/h/:household/shelf/vessels/:vessel", place: "shelf", load: () => import("./vessel.tsx") },
];
