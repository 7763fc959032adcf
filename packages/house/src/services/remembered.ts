/** So many keys are remembered; beyond that the one longest unused is forgotten. */
const MOST_KEYS = 10_000;

/** A map that forgets what was longest unused, so that strangers cannot fill the memory. */
export class Remembered<T> {
  readonly #kept = new Map<string, T>();

  get(key: string): T | undefined {
    const value = this.#kept.get(key);
    if (value !== undefined) this.set(key, value);
    return value;
  }

  set(key: string, value: T): void {
    this.#kept.delete(key);
    this.#kept.set(key, value);
    if (this.#kept.size <= MOST_KEYS) return;
    const [oldest] = this.#kept.keys();
    if (oldest !== undefined) this.#kept.delete(oldest);
  }

  delete(key: string): void {
    this.#kept.delete(key);
  }
}
