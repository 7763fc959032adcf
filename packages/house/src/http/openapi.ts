import { z } from "zod";
import { Problem, type RouteName, routes, type StreamName } from "../protocol/index.ts";

const schemaOf = (schema: z.ZodType, io: "input" | "output") =>
  z.toJSONSchema(schema, { target: "draft-2020-12", io, unrepresentable: "any" });

const TOKEN_WORDS: Readonly<Record<string, string>> = {
  host: "Bearer: the host's token where a sheet would be closed or a key destroyed.",
  pourer: "Bearer: the pourer's token.",
  taster: "Bearer: the token of this sheet.",
  guest: "Bearer: any token of this flight; none on the house's own machine.",
  "taster or revealed": "Bearer: the token of this sheet; none after the reveal.",
};

/** OpenAPI 3.1 of the whole table of routes, made from the schemas themselves. */
export function openApi(): object {
  const paths: Record<string, Record<string, object>> = {};
  for (const name of Object.keys(routes) as (RouteName | StreamName)[]) {
    const route = routes[name];
    const path = route.path.replace(/:([a-z]+)/g, "{$1}");
    paths[path] ??= {};
    paths[path][route.method.toLowerCase()] = operation(name);
  }
  return {
    openapi: "3.1.0",
    info: {
      title: "Parts & Proof",
      version: "1",
      summary: "A home whiskey blender's household: shelf, recipes, batches, flights, findings.",
      license: { name: "MIT", identifier: "MIT" },
    },
    paths,
    components: {
      securitySchemes: { token: { type: "http", scheme: "bearer" } },
      schemas: { Problem: schemaOf(Problem, "output") },
    },
  };
}

function operation(name: RouteName | StreamName): object {
  const route = routes[name];
  const inPath = [...route.path.matchAll(/:([a-z]+)/g)].map((m) => ({
    name: m[1],
    in: "path",
    required: true,
    schema: { type: "string" },
  }));
  const query = route.query
    ? (schemaOf(route.query, "input") as { properties?: object; required?: string[] })
    : null;
  const inQuery = Object.entries(query?.properties ?? {}).map(([key, schema]) => ({
    name: key,
    in: "query",
    required: query?.required?.includes(key) ?? false,
    schema,
  }));
  return {
    operationId: name,
    summary: route.says,
    "x-opens": route.opens,
    ...(TOKEN_WORDS[route.token]
      ? { description: TOKEN_WORDS[route.token], security: [{ token: [] }, {}] }
      : {}),
    parameters: [...inPath, ...inQuery],
    ...(route.body
      ? {
          requestBody: {
            required: true,
            content: { "application/json": { schema: schemaOf(route.body, "input") } },
          },
        }
      : {}),
    responses: {
      [route.status]: {
        description: route.says,
        ...(route.answer
          ? {
              content: {
                [route.stream ? "text/event-stream" : route.media]: {
                  schema: schemaOf(route.answer, "output"),
                },
              },
            }
          : {}),
      },
      default: {
        description: "A list of issues.",
        content: { "application/problem+json": { schema: { $ref: "#/components/schemas/Problem" } } },
      },
    },
  };
}
