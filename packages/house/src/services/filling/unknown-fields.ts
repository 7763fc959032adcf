import type { z } from "zod";

interface Node {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.ZodType>>;
  readonly element?: z.ZodType;
  readonly innerType?: z.ZodType;
}

/** Paths of fields that a schema does not know, at every depth: "slots.2.cask". Names of a record are nobody's to know. */
export function unknownFields(schema: z.ZodType, value: unknown, path: readonly string[] = []): string[] {
  const { type, shape, element, innerType } = schema.def as unknown as Node;
  if (innerType !== undefined) return unknownFields(innerType, value, path);
  if (type === "array" && element !== undefined && Array.isArray(value))
    return value.flatMap((item, n) => unknownFields(element, item, [...path, String(n + 1)]));
  if (shape === undefined || typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, own]) => {
    const known = Object.hasOwn(shape, name) ? shape[name] : undefined;
    return known === undefined ? [[...path, name].join(".")] : unknownFields(known, own, [...path, name]);
  });
}
