import { describe, expect, it } from "vitest";
import { dataFolder } from "./data-folder.ts";
import { readSettings } from "./settings.ts";

describe("where the server listens", () => {
  it("is 127.0.0.1:4480 unless PORT says otherwise", () => {
    expect(readSettings({})).toStrictEqual({ hostname: "127.0.0.1", port: 4480 });
    expect(readSettings({ PORT: "0", HOST: "" })).toStrictEqual({ hostname: "127.0.0.1", port: 0 });
    expect(readSettings({ PORT: "65535", HOST: "::1" })).toStrictEqual({ hostname: "::1", port: 65_535 });
  });

  it.each(["0.0.0.0", "::", "192.168.1.7", "table.local", "127.0.0.1.example.org"])(
    "is never the network: HOST=%s is refused with the reason",
    (HOST) => {
      expect(() => readSettings({ HOST })).toThrow(`HOST requires 127.0.0.1, localhost or ::1, got ${HOST}`);
    },
  );

  it.each(["65536", "-1", "80a", "4480.5", "0x50"])("refuses PORT=%s", (PORT) => {
    expect(() => readSettings({ PORT })).toThrow(/PORT requires a whole number from 0 to 65535/);
  });
});

describe("the data folder", () => {
  it("is the one asked for, or where the system keeps such things", () => {
    expect(dataFolder({ PARTSPROOF_DATA: "/srv/house" }, "linux", "/h")).toBe("/srv/house");
    expect(dataFolder({}, "linux", "/h")).toBe("/h/.local/share/partsproof");
    expect(dataFolder({ XDG_DATA_HOME: "/x" }, "linux", "/h")).toBe("/x/partsproof");
    expect(dataFolder({ XDG_DATA_HOME: "relative" }, "linux", "/h")).toBe("/h/.local/share/partsproof");
    expect(dataFolder({}, "darwin", "/h")).toBe("/h/Library/Application Support/partsproof");
  });
});
