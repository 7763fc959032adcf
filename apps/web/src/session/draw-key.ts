/** 128 random bits as 22 characters, for one act of this device. `crypto.randomUUID` is withheld on plain HTTP, this is not. */
export function drawKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}
