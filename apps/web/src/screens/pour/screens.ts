import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  {
    path: "/h/:household/flights/:flight/pour",
    place: "flights",
    bare: true,
    load: () => import("./pour.tsx"),
  },
  {
    path: "/h/:household/flights/:flight/alone",
    place: "flights",
    bare: true,
    load: () => import("./alone.tsx"),
  },
];
