export type Fact = readonly [label: string, value: string | null];

/** Lines of "label  value", the values under each other; a null value leaves its line out. */
export function facts(lines: readonly Fact[]): string {
  const kept = lines.flatMap(([label, value]) => (value === null ? [] : [[label, value] as const]));
  const width = Math.max(0, ...kept.map(([label]) => label.length));
  const indent = " ".repeat(width + 2);
  return kept
    .map(([label, value]) => `${label.padEnd(width)}  ${value.replaceAll("\n", `\n${indent}`)}`.trimEnd())
    .join("\n");
}
