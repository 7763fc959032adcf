import { describe, expect, it } from "vitest";
import { dataFolder } from "./data-folder.ts";
import { readFlags, readSettings } from "./settings.ts";

const own = { network: false, origin: null, tls: null };

describe("where the server listens", () => {
  it("is 127.0.0.1:4480 unless PORT and HOST say otherwise", () => {
    expect(readSettings({})).toStrictEqual({ hostname: "127.0.0.1", port: 4480, ...own });
    expect(readSettings({ PORT: "0", HOST: "" })).toStrictEqual({ hostname: "127.0.0.1", port: 0, ...own });
    expect(readSettings({ PORT: "65535", HOST: "::1" })).toStrictEqual({
      hostname: "::1",
      port: 65_535,
      ...own,
    });
  });

  it.each(["0.0.0.0", "::", "192.168.1.7", "table.local", "127.0.0.1.example.org"])(
    "HOST=%s is a network",
    (HOST) => expect(readSettings({ HOST })).toMatchObject({ hostname: HOST, network: true }),
  );

  it("is a network too where a proxy makes it known", () => {
    expect(readSettings({ PARTSPROOF_ORIGIN: "https://table.home.arpa/" })).toMatchObject({
      hostname: "127.0.0.1",
      network: true,
      origin: "https://table.home.arpa",
    });
  });

  it.each(["table.home.arpa", "ftp://table", "https://table/house", "https://table/?a=1"])(
    "refuses PARTSPROOF_ORIGIN=%s",
    (origin) => {
      expect(() => readSettings({ PARTSPROOF_ORIGIN: origin })).toThrow(
        /PARTSPROOF_ORIGIN requires an address/,
      );
    },
  );

  it("needs a certificate and its key together", () => {
    expect(() => readSettings({ PARTSPROOF_TLS_CERT: "/a" })).toThrow(/got no PARTSPROOF_TLS_KEY/);
    expect(() => readSettings({ PARTSPROOF_TLS_KEY: "/a" })).toThrow(/got no PARTSPROOF_TLS_CERT/);
    expect(readSettings({ PARTSPROOF_TLS_CERT: "/a", PARTSPROOF_TLS_KEY: "/b" }).tls).toStrictEqual({
      cert: "/a",
      key: "/b",
    });
  });

  it("takes --listen and --port before HOST and PORT", () => {
    const { env, setPassphrase } = readFlags(["--listen", "0.0.0.0", "--port", "81"], { HOST: "::1" });
    expect(readSettings(env)).toMatchObject({ hostname: "0.0.0.0", port: 81 });
    expect(setPassphrase).toBe(false);
    expect(readFlags(["--set-passphrase"], {}).setPassphrase).toBe(true);
    expect(() => readFlags(["--lisen", "0.0.0.0"], {})).toThrow(/lisen/);
  });

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
