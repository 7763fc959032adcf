import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/flights", place: "flights", load: () => import("./flights.tsx") },
  { path: "/h/:household/flights/new", place: "flights", load: () => import("./new-flight.tsx") },
  { path: "/h/:household/flights/:flight", place: "flights", load: () => import("./flight.tsx") },
  {
    path: "/h/:household/flights/:flight/reveal",
    place: "flights",
    bare: true,
    load: () => import("./reveal.tsx"),
  },
  {
    path: "/h/:household/flights/:flight/table",
    place: "flights",
    bare: true,
    load: () => import("./table.tsx"),
  },
  {
    path: "/h/:household/flights/:flight/check",
    place: "flights",
    bare: true,
    load: () => import("./check.tsx"),
  },
];
