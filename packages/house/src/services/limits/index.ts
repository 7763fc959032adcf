export { type Limits, limitsOf } from "./limits.ts";
