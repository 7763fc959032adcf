import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  {
    path: "/h/:household/shelf/vessels/:vessel/kept-up",
    place: "shelf",
    load: () => import("./kept-up.tsx"),
  },
];
