export { limitsOf } from "./limits.ts";
