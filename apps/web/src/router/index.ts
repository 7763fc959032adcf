export { Link, type LinkProps } from "./link.tsx";
export { matchPath, type Params } from "./match-path.ts";
export { go, hasMoved, usePlace } from "./place.ts";
export { useUnsaved } from "./use-unsaved.ts";
