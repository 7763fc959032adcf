import { type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { Problem } from "../protocol/index.ts";

const send = async (
  house: TemporaryHouse,
  method: string,
  path: string,
  body?: string | Uint8Array<ArrayBuffer>,
) => {
  const request = new Request(`http://house.test${path}`, {
    method,
    headers: { "content-type": "application/json" },
    ...(body === undefined ? {} : { body }),
  });
  const answer = await house.fetch(request);
  expect(answer.headers.get("content-type")).toBe("application/problem+json");
  const problem = Problem.parse(await answer.json());
  expect(problem.status).toBe(answer.status);
  return { status: problem.status, issue: problem.issues[0] };
};

// What the edge refuses before any service runs; so one database is enough.
describe("bad input", () => {
  test.each([
    ["{not json", "{not json"],
    ["", ""],
    [Uint8Array.of(0x22, 0xff, 0x22), '"\ufffd"'],
  ])("JSON that is no JSON is told as such: %j", async (body, received) => {
    await using house = await temporaryHouse("sqlite");
    expect(await send(house, "POST", "/api/households", body)).toMatchObject({
      status: 400,
      issue: { code: "json_unreadable", path: [], limit: "JSON (RFC 8259)", received },
    });
  });

  test.each([
    ["/api/reckon/convert", { abv20: 100.5 }, "strength_too_large", ["abv20"], "at most 100 % vol", 100.5],
    ["/api/reckon/convert", { proof60F: -1 }, "strength_too_small", ["proof60F"], "at least 0", -1],
    [
      "/api/reckon/convert",
      {},
      "no_form_fits",
      [],
      "abv20 (number), or proof60F (number), or massPercent (number)",
      {},
    ],
    [
      "/api/reckon/mix",
      { parts: [{ parts: 1, strength: { basis: "abv", value: 40 } }] },
      "unknown_word",
      ["parts", 0, "strength", "basis"],
      "one of abv20, proof60F",
      "abv",
    ],
    [
      "/api/reckon/mix",
      { parts: [{ parts: 1, strength: { basis: "proof60F", value: 240 } }] },
      "strength_too_large",
      ["parts", 0, "strength", "value"],
      "at most 200 proof",
      240,
    ],
    [
      "/api/reckon/mix",
      { parts: [{ parts: 1, strength: { basis: "abv20", value: "forty" } }] },
      "wrong_type",
      ["parts", 0, "strength", "value"],
      "number",
      "forty",
    ],
    [
      "/api/reckon/density",
      { massFraction: 0.4, celsius: 41 },
      "value_too_large",
      ["celsius"],
      "at most 40",
      41,
    ],
    ["/api/households", { name: "   " }, "value_too_small", ["name"], "at least 1 characters", ""],
    ["/api/households", { name: 5 }, "wrong_type", ["name"], "string", 5],
    ["/api/households", [], "wrong_type", [], "object", []],
    [
      "/api/households",
      { name: "a\0b" },
      "text_unkeepable",
      ["name"],
      "well-formed Unicode without U+0000",
      '"a\\u0000b"',
    ],
    [
      "/api/households",
      { name: "a\ud800b" },
      "text_unkeepable",
      ["name"],
      "well-formed Unicode without U+0000",
      '"a\\ud800b"',
    ],
  ])("%s %j is refused: %s", async (path, body, code, at, limit, received) => {
    await using house = await temporaryHouse("sqlite");
    expect(await send(house, "POST", path, JSON.stringify(body))).toMatchObject({
      status: 422,
      issue: { code, path: at, limit, received },
    });
    expect((await house.client("listHouseholds")).items).toEqual([]);
  });

  test("a query that is none is told", async () => {
    await using house = await temporaryHouse("sqlite");
    expect(await send(house, "GET", "/api/households?limit=many")).toMatchObject({
      status: 422,
      issue: { code: "wrong_type", path: ["limit"], limit: "number" },
    });
    expect(await send(house, "GET", "/api/households?limit=201")).toMatchObject({
      issue: { code: "value_too_large", limit: "at most 200", received: 201 },
    });
    expect(await send(house, "GET", "/api/households?cursor=%00")).toMatchObject({
      issue: { code: "text_unkeepable", path: ["cursor"] },
    });
  });

  test("an address that is none is told", async () => {
    await using house = await temporaryHouse("sqlite");
    expect(await send(house, "GET", "/api/cellar")).toMatchObject({
      status: 404,
      issue: { code: "unknown_route", received: "GET /api/cellar" },
    });
  });

  test("a body beyond 32 MiB is refused", async () => {
    await using house = await temporaryHouse("sqlite");
    const bytes = 32 * 1024 * 1024 + 1;
    expect(await send(house, "POST", "/api/households", " ".repeat(bytes))).toMatchObject({
      status: 413,
      issue: { code: "body_too_large", received: bytes },
    });
  });
});
