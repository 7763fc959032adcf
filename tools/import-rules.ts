import { posix } from "node:path";
import { importsOf } from "./imports.ts";

/** What a package, or one room of it, may import besides itself. */
interface Allowance {
  /** Packages of ours, by specifier: exact, or a prefix that ends in `/`. */
  readonly ours?: readonly string[];
  /** Packages of others, by name: exact, or a prefix that ends in `/`. Undefined: whatever its package.json lists. */
  readonly others?: readonly string[];
  readonly builtins?: boolean;
}

interface PackageRule extends Allowance {
  /** Rooms, and the rooms of the same package each may import. Undefined: no rooms are told apart. */
  readonly rooms?: Readonly<Record<string, Allowance & { readonly from: readonly string[] }>>;
}

const base = ["quantity", "numeric"];
const subject = [...base, "statistics", "alcoholometry"];
const core = "@partsproof/core/";
const face = ["@partsproof/house", "@partsproof/house/protocol", core];

/** Which way imports point. The whole rule is this table; a room that is not named here is a violation. */
const rules: Readonly<Record<string, PackageRule>> = {
  "packages/core": {
    others: ["@stdlib/"],
    rooms: {
      quantity: { from: [] },
      numeric: { from: [] },
      statistics: { from: base },
      alcoholometry: { from: base },
      uncertainty: { from: subject },
      ledger: { from: [...base, "alcoholometry"] },
      blending: { from: subject },
      sensory: { from: subject },
      sealing: { from: [...base, "statistics"] },
      oak: { from: subject },
      rest: { from: subject },
      trials: { from: subject },
      palate: { from: subject },
      learning: { from: subject },
      mixing: { from: [...subject, "blending"] },
      calendar: { from: base },
      "kept-up": { from: [...base, "alcoholometry", "ledger"] },
      notes: { from: subject },
      slots: { from: [...subject, "blending", "sensory"] },
    },
  },
  "packages/house": {
    ours: [core],
    others: ["hono", "kysely", "papaparse", "uqr", "zod"],
    rooms: {
      protocol: { from: [], ours: [core], others: ["zod"] },
      services: { from: ["protocol"], ours: [core], others: ["papaparse", "uqr", "zod"] },
      store: { from: ["services", "protocol"], ours: [core], others: ["kysely", "zod"] },
      http: { from: ["services", "protocol"], ours: [], others: ["hono", "zod"] },
    },
  },
  "packages/testkit": {
    ours: [core, "@partsproof/house", "@partsproof/house/", "@partsproof/server"],
    builtins: true,
  },
  "apps/server": { ours: [core, "@partsproof/house", "@partsproof/house/"], builtins: true },
  "apps/cli": {
    ours: [...face, "@partsproof/house/reckoner", "@partsproof/server", "@partsproof/server/"],
    builtins: true,
  },
  "apps/web": { ours: face },
};

export interface Package {
  /** Folder from the root, such as "packages/core". */
  readonly folder: string;
  readonly name: string;
  /** The package.json `exports`: subpath to file, both starting with ".". */
  readonly exports: Readonly<Record<string, string>>;
  /** Names of what package.json lists as dependencies. */
  readonly dependencies: readonly string[];
}

export interface Violation {
  readonly file: string;
  readonly line: number;
  readonly specifier: string;
  readonly why: string;
}

const isTest = (file: string): boolean => /\.test\.tsx?$|\.setup\.ts$|\/(fixtures|e2e)\//.test(file);

const matches = (list: readonly string[], name: string): boolean =>
  list.some((entry) => (entry.endsWith("/") ? name.startsWith(entry) : name === entry));

const packageName = (specifier: string): string =>
  specifier.split("/", specifier.startsWith("@") ? 2 : 1).join("/");

/** The first folder under src, or "" for a file directly in src. */
const roomOf = (insidePackage: string): string => {
  const [src, room, file] = insidePackage.split("/");
  return src === "src" && file !== undefined ? (room ?? "") : "";
};

/** Judge one import. Returns why it is not allowed, or undefined. */
const judge = (
  specifier: string,
  file: string,
  own: Package,
  rule: PackageRule,
  packages: readonly Package[],
): string | undefined => {
  const test = isTest(file);
  const room = roomOf(file.slice(own.folder.length + 1));
  const roomRule = rule.rooms && room !== "" ? rule.rooms[room] : undefined;
  const allowed: Allowance = { ...rule, ...roomRule };

  const enterRoom = (target: string): string | undefined => {
    if (!rule.rooms) return undefined;
    const other = roomOf(target.slice(own.folder.length + 1));
    if (other === room) return undefined;
    // A package's own index.ts gathers its rooms; nothing inside may import it back.
    if (other === "") return test ? undefined : "a room may not import a file outside the rooms";
    if (target !== `${own.folder}/src/${other}/index.ts`)
      return `${other} is entered through its index.ts only`;
    if (test || room === "" || roomRule?.from.includes(other)) return undefined;
    return `${room} may import ${roomRule?.from.join(", ") || "no other room"}`;
  };

  if (specifier.startsWith(".") || specifier.startsWith("/")) {
    const target = posix.join(posix.dirname(file), specifier.replace(/\?.*$/, ""));
    if (specifier.startsWith("/") || !target.startsWith(`${own.folder}/`)) {
      return "a relative import may not leave its package";
    }
    return enterRoom(target);
  }

  if (specifier.startsWith("node:")) {
    return allowed.builtins || test ? undefined : "Node built-ins are not allowed here";
  }

  const name = packageName(specifier);
  const ours = packages.find((candidate) => candidate.name === name);
  if (ours) {
    const entry = ours.exports[`.${specifier.slice(name.length)}`];
    if (entry === undefined) return `${name} does not export this`;
    if (ours === own) return enterRoom(posix.join(own.folder, entry));
    if (matches(allowed.ours ?? [], specifier)) return undefined;
    if (test && name === "@partsproof/testkit") return undefined;
    return `may import of ours: ${allowed.ours?.join(", ") || "nothing"}`;
  }
  if (name.startsWith("@partsproof/")) return "there is no such package";
  if (test) return undefined;
  if (allowed.others) {
    const listed = matches(allowed.others, name) || matches(allowed.others, specifier);
    return listed ? undefined : `may import of others: ${allowed.others.join(", ") || "nothing"}`;
  }
  const declared =
    own.dependencies.includes(name) || specifier.startsWith("virtual:") || specifier === "vite/client";
  return declared ? undefined : `${own.folder}/package.json does not list ${name}`;
};

/**
 * Every import that the rules forbid.
 * @param files path from the root to source text
 */
export const violations = (
  files: ReadonlyMap<string, string>,
  packages: readonly Package[],
): readonly Violation[] => {
  const found: Violation[] = [];
  const add = (file: string, line: number, specifier: string, why: string): void =>
    void found.push({ file, line, specifier, why });
  for (const own of packages) {
    const rule = rules[own.folder];
    if (!rule) {
      add(`${own.folder}/package.json`, 1, own.name, "import-rules.ts has no rule for this package");
      continue;
    }
    for (const [file, source] of files) {
      if (!file.startsWith(`${own.folder}/`)) continue;
      const room = roomOf(file.slice(own.folder.length + 1));
      if (rule.rooms && room !== "" && !rule.rooms[room]) {
        add(file, 1, room, "import-rules.ts has no rule for this room");
        continue;
      }
      try {
        for (const { specifier, line } of importsOf(file, source)) {
          const why =
            specifier === undefined
              ? isTest(file)
                ? undefined
                : "the name of an import must be written out, so that it can be checked"
              : judge(specifier, file, own, rule, packages);
          if (why !== undefined) add(file, line, specifier ?? "(computed)", why);
        }
      } catch (error) {
        add(file, 1, "(unreadable)", error instanceof Error ? error.message : String(error));
      }
    }
  }
  return found;
};

/** What core's package.json lists and may not: core runs anywhere, so it leans on nothing but @stdlib. */
export const foreignToCore = (dependencies: readonly string[]): readonly string[] =>
  dependencies.filter((name) => !matches(rules["packages/core"]?.others ?? [], name));
