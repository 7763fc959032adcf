import { columns } from "./columns.ts";

/** As much of a command as its help tells. */
export interface Helped {
  readonly name: string;
  readonly says: string;
  readonly args: Readonly<Record<string, string>>;
  readonly maybe: Readonly<Record<string, string>>;
  readonly flags: Readonly<
    Record<
      string,
      { readonly takes: string; readonly says: string; readonly hint?: string; readonly needed?: boolean }
    >
  >;
  readonly example: string;
}

const PROGRAM = "partsproof";

/** How one command is called, with an example. */
export function printHelp({ name, says, args, maybe, flags, example }: Helped): string {
  const words = [
    ...Object.keys(args).map((arg) => `<${arg}>`),
    ...Object.keys(maybe).map((arg) => `[${arg}]`),
    ...Object.entries(flags).flatMap(([flag, { needed, hint }]) =>
      needed === true ? [`--${flag} ${hint}`] : [],
    ),
  ];
  const lines = [
    ...Object.entries({ ...args, ...maybe }).map(([arg, what]) => [`<${arg}>`, what] as const),
    ...Object.entries(flags).map(([flag, { hint, says: what, takes }]) => {
      const again = takes === "many" ? " …" : "";
      return [`--${flag}${hint === undefined ? "" : ` ${hint}`}${again}`, what] as const;
    }),
  ];
  const table = columns(
    lines,
    [
      { head: "", cell: ([left]) => `  ${left}` },
      { head: "", cell: ([, right]) => right },
    ],
    "",
  );
  return [
    says,
    "",
    `Usage: ${[PROGRAM, name, ...words, "[flags]"].join(" ")}`,
    table.replace(/^\n/, ""),
    "",
    `Example: ${PROGRAM} ${example}`,
  ].join("\n");
}

/** The commands that begin with the same word, or all of them. */
export function printCommands(name: string, commands: readonly Helped[]): string {
  const list = columns(
    commands,
    [
      { head: "", cell: (command) => `  ${command.name}` },
      { head: "", cell: ({ says }) => says },
    ],
    "",
  ).replace(/^\n/, "");
  const usage = [PROGRAM, ...(name === "" ? [] : [name]), "<command> [flags]"].join(" ");
  const example = commands[0]?.example ?? "";
  return [
    `Usage: ${usage}`,
    list,
    "",
    `Example: ${PROGRAM} ${example}`,
    `Each command tells more with --help, and gives its result as JSON with --json.`,
  ].join("\n");
}
