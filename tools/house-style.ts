import { parseSync } from "oxc-parser";

/** Lines of a text; the end of the last line does not begin another. */
export const lineCount = (text: string): number =>
  text === "" ? 0 : text.replace(/\n$/, "").split("\n").length;

/** The nearest-rank quantile (no interpolation) of at least one number, 0 < q <= 1. */
export const quantile = (numbers: readonly number[], q: number): number =>
  numbers.toSorted((a, b) => a - b)[Math.ceil(q * numbers.length) - 1] ?? Number.NaN;

/** Whether a module has an `export *`, with or without a name. */
export const exportsAll = (source: string): boolean =>
  parseSync("index.ts", source).program.body.some(({ type }) => type === "ExportAllDeclaration");

const useful = new Set(["util", "utils", "helper", "helpers", "common", "misc", "shared"]);

/** Folders whose name says only that somebody needed the code. */
export const forbiddenFolders = (paths: readonly string[]): readonly string[] => {
  const found = new Set<string>();
  for (const path of paths) {
    const folders = path.split("/").slice(0, -1);
    for (const [depth, folder] of folders.entries()) {
      if (useful.has(folder.toLowerCase())) found.add(folders.slice(0, depth + 1).join("/"));
    }
  }
  return [...found];
};

const traces: readonly RegExp[] = [
  // An absolute path at the start of a word; after a letter, dot or slash it is part of an address.
  /(?<![\w.:/\\-])\/(?:work|root|home\/\w+|Users\/\w+)\/\S*/g,
  /file:\/\/\/\S*/g,
  /\b[A-Z]:\\+Users\\+\S*/g,
  // Registries: by name, and any package archive fetched over http.
  /https?:\/\/[^\s"'/]*(?:registry|artifactory|nexus|verdaccio)[^\s"']*/gi,
  /https?:\/\/[^\s"']+\.tgz\b/g,
];

/** Places on somebody's machine and addresses of package registries in a text. */
export const machineTraces = (text: string): readonly string[] => [
  ...new Set(traces.flatMap((pattern) => text.match(pattern) ?? [])),
];
