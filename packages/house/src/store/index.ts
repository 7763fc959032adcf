export { createStore, type StoreOptions } from "./create-store.ts";
