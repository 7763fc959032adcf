import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/recipes", place: "recipes", load: () => import("./recipes.tsx") },
  { path: "/h/:household/recipes/new", place: "recipes", load: () => import("./new-recipe.tsx") },
  { path: "/h/:household/recipes/tree", place: "recipes", load: () => import("./tree.tsx") },
  { path: "/h/:household/recipes/:recipe/tree", place: "recipes", load: () => import("./tree.tsx") },
  { path: "/h/:household/recipes/:recipe", place: "recipes", load: () => import("./recipe.tsx") },
];
