/** What is used of Papa Parse 5.7: its own types bring those of Node with them, which this package does without. */
declare module "papaparse" {
  interface Parsed {
    readonly data: string[][];
    readonly errors: readonly { readonly type: string; readonly code: string; readonly row?: number }[];
    readonly meta: { readonly delimiter: string };
  }
  interface Asked {
    readonly delimiter: string;
    readonly delimitersToGuess?: readonly string[];
    readonly skipEmptyLines: false;
  }
  const papa: {
    parse(text: string, asked: Asked): Parsed;
    unparse(
      rows: readonly (readonly string[])[],
      asked: { readonly newline: string; readonly escapeFormulae: RegExp },
    ): string;
  };
  export default papa;
}
