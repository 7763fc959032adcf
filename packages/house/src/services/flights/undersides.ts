import type { Issue } from "../../protocol/index.ts";
import { setOfMark } from "./alone-marks.ts";
import { changed, knownFlight, needState, sheetsOf } from "./flight-rows.ts";
import type { Handlers } from "../handler.ts";
import { HouseRefusal, refuse, staleEdit } from "../refuse.ts";
import { designOf } from "./question.ts";
import type { FlightRow, SheetRow } from "../rows.ts";
import { showFlight } from "./shown-flight.ts";
import { needToken } from "./tokens.ts";

type Found = readonly { readonly place: number; readonly mark: string }[];

/** F4, Q18: every place once, every mark once; what was poured for one set stands in one set. */
function issuesOf(flight: FlightRow, found: Found): Issue[] {
  const wrong = (path: Issue["path"], limit: string, received: unknown): Issue => ({
    code: "undersides_wrong",
    path,
    limit,
    received,
    message: `the undersides require ${limit}, got ${String(received)}`,
  });
  const marks = flight.marks.map(({ mark }) => mark);
  const issues = found.flatMap(({ place, mark }, i) => {
    const before = found.slice(0, i);
    return [
      ...(place > marks.length || before.some((other) => other.place === place)
        ? [wrong(["marks", i, "place"], `each place from 1 to ${marks.length} once`, place)]
        : []),
      ...(!marks.includes(mark) || before.some((other) => other.mark === mark)
        ? [wrong(["marks", i, "mark"], `each of the marks ${marks.join(", ")} once`, mark)]
        : []),
    ];
  });
  if (issues.length > 0) return issues;
  if (found.length === marks.length) return apart(flight, found, wrong);
  return [wrong(["marks"], `the mark at each of the ${marks.length} places`, found.length)];
}

/** Q18: marks of one set that stand in two. */
function apart(
  flight: FlightRow,
  found: Found,
  wrong: (path: Issue["path"], limit: string, received: unknown) => Issue,
): Issue[] {
  const { setsEach } = designOf(flight);
  const size = setsEach === 0 ? flight.marks.length : flight.marks.length / setsEach;
  const pouredFor = (mark: string | undefined) =>
    setOfMark(
      flight,
      flight.marks.findIndex((one) => one.mark === mark),
    ).set;
  return found.flatMap(({ place, mark }, i) => {
    const first = Math.floor((place - 1) / size) * size + 1;
    const set = pouredFor(found.find((one) => one.place === first)?.mark);
    if (pouredFor(mark) === set) return [];
    const own = flight.marks.filter((one) => pouredFor(one.mark) === set).map((one) => one.mark);
    const limit = `at places ${first} to ${first + size - 1} the marks of one set, such as ${own.join(", ")}`;
    return [wrong(["marks", i, "mark"], limit, mark)];
  });
}

function needLocked(sheet: SheetRow): void {
  if (sheet.state !== "locked") {
    refuse(409, {
      code: "sheet_not_locked",
      path: ["sheet"],
      limit: "a sheet that is locked",
      received: sheet.state,
      message: `looking at the undersides requires a sheet that is locked, got one that is ${sheet.state}`,
    });
  }
  if (sheet.undersides !== null) {
    refuse(409, {
      code: "undersides_entered",
      path: ["flight"],
      limit: "undersides not yet entered",
      received: "entered before",
      message: "the undersides require not to be entered yet, got them a second time",
    });
  }
}

export const undersidesHandlers: Handlers<"enterUndersides"> = {
  enterUndersides: ({ house, at, body, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const [sheet] = flight.pouring === "alone" ? await sheetsOf(records, flight) : [];
      await needToken(token, sheet?.tokenHash ?? null);
      if (!sheet) throw new Error("a token that fits requires a sheet, got none");
      if (flight.state !== "revealed") needState(flight, "entering the undersides", "tasting");
      needLocked(sheet);
      const issues = issuesOf(flight, body.marks);
      if (issues.length > 0) throw new HouseRefusal(422, issues);
      const undersides = body.marks.toSorted((a, b) => a.place - b.place);
      const entered = changed(sheet, house.clock.now(), { undersides });
      if (!(await records.replace("sheet", entered))) staleEdit("sheet", sheet.version, entered.version);
      return showFlight(records, flight);
    }),
};
