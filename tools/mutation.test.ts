import { expect, test } from "vitest";
import { countMutants } from "./mutation.ts";

const report = (...statuses: readonly string[]) => ({
  files: {
    a: { mutants: statuses.slice(0, 2).map((status) => ({ status })) },
    b: { mutants: statuses.slice(2).map((status) => ({ status })) },
  },
});

test("killed and timed-out mutants count as killed, survivors and untested ones do not", () => {
  expect(countMutants(report("Killed", "Timeout", "Survived", "NoCoverage"))).toEqual({
    mutants: 4,
    killed: 50,
  });
});

test("a mutant that could not be run is left out", () => {
  expect(countMutants(report("Killed", "CompileError", "RuntimeError", "Ignored"))).toEqual({
    mutants: 1,
    killed: 100,
  });
});

test("no mutants at all is nothing killed", () => {
  expect(countMutants({ files: {} })).toEqual({ mutants: 0, killed: 0 });
});
