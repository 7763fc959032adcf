export type Params = Readonly<Record<string, string>>;

/** The `:name` parts of `pattern` as found in `path`, or null where they differ. A trailing slash does not matter. */
export function matchPath(pattern: string, path: string): Params | null {
  const wanted = pattern.split("/").filter(Boolean);
  const got = path.split("/").filter(Boolean);
  if (wanted.length !== got.length) return null;
  const params: Record<string, string> = {};
  for (const [i, want] of wanted.entries()) {
    const part = got[i] ?? "";
    if (!want.startsWith(":")) {
      if (want !== part) return null;
      continue;
    }
    try {
      params[want.slice(1)] = decodeURIComponent(part);
    } catch {
      return null;
    }
  }
  return params;
}
