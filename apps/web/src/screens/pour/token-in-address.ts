/** The token behind the `#` of the pourer's link: 64 hexadecimal digits, or null where there is none. */
export function tokenInAddress(hash: string): string | null {
  return /^#([0-9a-f]{64})$/.exec(hash)?.[1] ?? null;
}
