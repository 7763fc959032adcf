/** Width and height scaled down so that neither is more than `most`, in whole pixels; never scaled up. */
export function fitWithin(
  width: number,
  height: number,
  most: number,
): { readonly width: number; readonly height: number } {
  const share = Math.min(1, most / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * share)), height: Math.max(1, Math.round(height * share)) };
}
