export { type Cellar, useCellar } from "./use-cellar.ts";
