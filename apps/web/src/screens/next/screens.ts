import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/recipes/:recipe/next", place: "recipes", load: () => import("./next.tsx") },
];
