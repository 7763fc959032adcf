const ISO = /^\d{4}-\d{2}-\d{2}(T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2}))?$/;

/**
 * Milliseconds since 1970 UTC of an ISO 8601 date (midnight UTC) or time; NaN when it cannot be read.
 * A time without `Z` or an offset cannot: it would mean another moment on another machine.
 */
export function instantOf(iso: string): number {
  return ISO.test(iso) ? Date.parse(iso) : Number.NaN;
}
