import { expect, test } from "vitest";
import { addresses } from "./addresses.ts";
import { routes } from "./routes.ts";

test("every route has the address that the table says, and there is no address besides", () => {
  const told = Object.entries(routes).map(([name, { method, path }]) => [name, [method, path]]);
  expect(addresses).toEqual(Object.fromEntries(told));
});
