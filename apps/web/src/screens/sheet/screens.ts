import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  {
    path: "/h/:household/flights/:flight/sheets/:sheet",
    place: "flights",
    bare: true,
    load: () => import("./sheet.tsx"),
  },
  {
    path: "/h/:household/flights/:flight/sheets/:sheet/paper",
    place: "flights",
    load: () => import("./type-in.tsx"),
  },
];
