export { forgetOldTrail, trail, trailHandlers } from "./trail.ts";
