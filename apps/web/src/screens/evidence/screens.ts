import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/findings/league", place: "findings", load: () => import("./league.tsx") },
  {
    path: "/h/:household/findings/recipes/:recipe",
    place: "findings",
    load: () => import("./recipe-finding.tsx"),
  },
  {
    path: "/h/:household/findings/whiskeys/:whiskey",
    place: "findings",
    load: () => import("./whiskey-finding.tsx"),
  },
  {
    path: "/h/:household/findings/tasters/:taster",
    place: "findings",
    load: () => import("./taster-finding.tsx"),
  },
  {
    path: "/h/:household/findings/:flight/write-up",
    place: "findings",
    guests: true,
    load: () => import("./write-up.tsx"),
  },
];
