export { Link, type LinkProps } from "./link.tsx";
export { matchPath, type Params } from "./match-path.ts";
export { go, hasMoved, holdLeaving, usePlace } from "./place.ts";
