/** Asks the house as any program may, by its documented addresses (docs/openapi of the running house). */
export interface Ask {
  <T>(method: "GET" | "POST" | "PATCH", path: string, body?: unknown, token?: string): Promise<T>;
}

export const asker =
  (address: string): Ask =>
  async <T>(method: string, path: string, body?: unknown, token?: string): Promise<T> => {
    const answer = await fetch(new URL(path, address), {
      method,
      headers: {
        "content-type": "application/json",
        ...(token === undefined ? {} : { authorization: `Bearer ${token}` }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    const text = await answer.text();
    if (!answer.ok)
      throw new Error(`${method} ${path} requires an answer below 400, got ${answer.status}: ${text}`);
    return (text === "" ? undefined : JSON.parse(text)) as T;
  };
