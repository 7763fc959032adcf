import { expect, test } from "vitest";
import { onlyThisDevice } from "./only-this-device.ts";

test("loopback names and addresses reach this device only; others may reach further", () => {
  const loopback = ["localhost", "127.0.0.1", "127.0.1.1", "[::1]", "house.localhost"];
  const others = ["192.168.1.20", "house.local", "localhost.example.org", "10.127.0.0.1", "[fe80::1]"];
  expect(loopback.map(onlyThisDevice)).toEqual(loopback.map(() => true));
  expect(others.map(onlyThisDevice)).toEqual(others.map(() => false));
});
