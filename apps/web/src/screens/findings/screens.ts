import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/findings", place: "findings", load: () => import("./findings.tsx") },
  {
    path: "/h/:household/findings/:flight",
    place: "findings",
    guests: true,
    load: () => import("./finding.tsx"),
  },
];
