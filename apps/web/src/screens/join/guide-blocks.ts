/** A piece of the guide: a paragraph, with its words in backticks and bold apart, or lines to be typed. */
export type Block =
  | { readonly kind: "code"; readonly text: string }
  | { readonly kind: "text"; readonly words: readonly Word[] };
export interface Word {
  readonly as: "plain" | "strong" | "code";
  readonly text: string;
}

/** One section of a guide, by its heading, up to the next of the same rank. Reads as much of Markdown as the guide uses. */
export function sectionOf(guide: string, heading: string): readonly Block[] {
  const from = guide.indexOf(`\n## ${heading}\n`);
  if (from === -1) return [];
  const body = guide.slice(from).replace(/^\n## .*\n/, "");
  const end = body.indexOf("\n## ");
  return (end === -1 ? body : body.slice(0, end))
    .split(/^(```[^\n]*\n[\s\S]*?^```)$/m)
    .flatMap((part): readonly Block[] =>
      part.startsWith("```")
        ? [{ kind: "code", text: part.replace(/^```[^\n]*\n/, "").replace(/\n?```$/, "") }]
        : part
            .split(/\n{2,}/)
            .map((text) => text.trim().replaceAll("\n", " "))
            .filter((text) => text !== "")
            .map((text) => ({ kind: "text", words: wordsOf(text) })),
    );
}

function wordsOf(text: string): readonly Word[] {
  return text.split(/(\*\*[^*]+\*\*|`[^`]+`)/).flatMap((part): readonly Word[] => {
    if (part === "") return [];
    if (part.startsWith("**")) return [{ as: "strong", text: part.slice(2, -2) }];
    return [part.startsWith("`") ? { as: "code", text: part.slice(1, -1) } : { as: "plain", text: part }];
  });
}
