export { admitted, type Knock } from "./admit.ts";
export { doorHandlers, hasOwner } from "./door.ts";
