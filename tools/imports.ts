import { parseSync, Visitor } from "oxc-parser";

export interface Import {
  /** The module named, or undefined where the code computes the name. */
  readonly specifier: string | undefined;
  readonly line: number;
}

interface Literal {
  readonly type: string;
  readonly value?: unknown;
  readonly expressions?: readonly unknown[];
  readonly quasis?: readonly { readonly value: { readonly cooked: string | null } }[];
}

/** The text of a string literal or of a template without holes. */
const literal = (node: Literal | undefined): string | undefined => {
  if (node?.type === "Literal" && typeof node.value === "string") return node.value;
  if (node?.type === "TemplateLiteral" && node.expressions?.length === 0)
    return node.quasis?.[0]?.value.cooked ?? undefined;
  return undefined;
};

/**
 * Every module that a file names: static and type imports, `export … from`, `import()`, `import("x").T` in a type,
 * `import x = require("x")`, `require("x")`, workers, and `/// <reference>`.
 * @throws Error when the file cannot be parsed
 */
export const importsOf = (file: string, source: string): readonly Import[] => {
  const { program, comments, errors } = parseSync(file, source);
  const [error] = errors;
  if (error) throw new Error(`${file}: ${error.message}`);
  const found: Import[] = [];
  const add = (specifier: string | undefined, start: number): void => {
    found.push({ specifier, line: source.slice(0, start).split("\n").length });
  };
  new Visitor({
    ImportDeclaration: (node) => add(node.source.value, node.start),
    ExportAllDeclaration: (node) => add(node.source.value, node.start),
    ExportNamedDeclaration: (node) => {
      if (node.source) add(node.source.value, node.start);
    },
    ImportExpression: (node) => add(literal(node.source), node.start),
    TSImportType: (node) => add(literal(node.source), node.start),
    TSExternalModuleReference: (node) => add(literal(node.expression), node.start),
    CallExpression: (node) => {
      if (node.callee.type !== "Identifier" || node.callee.name !== "require") return;
      add(literal(node.arguments[0]), node.start);
    },
    NewExpression: (node) => {
      // new Worker(new URL("./x.ts", import.meta.url)): how a bundler is told of another entry.
      const isWorker = node.callee.type === "Identifier" && /^(Shared)?Worker$/.test(node.callee.name);
      const [address] = node.arguments;
      if (!isWorker || address?.type !== "NewExpression") return;
      add(literal(address.arguments[0]), node.start);
    },
  }).visit(program);
  for (const comment of comments) {
    const reference = /^\/\s*<reference\s+(?:path|types)=["']([^"']+)["']/.exec(comment.value)?.[1];
    if (comment.type === "Line" && reference !== undefined) add(reference, comment.start);
  }
  return found;
};
