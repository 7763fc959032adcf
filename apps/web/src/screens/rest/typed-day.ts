/** The day of an instant by this device's calendar, as a date field has it: "2026-11-12". */
export function dayTyped(at: number): string {
  const date = new Date(at);
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** What is sent for a typed day: noon of it here; nothing for today and for what is no day, so that the house takes now. */
export function instantOfDay(day: string, now: number): { readonly at?: string } {
  if (day === dayTyped(now) || day === "") return {};
  const at = new Date(`${day}T12:00:00`);
  return Number.isNaN(at.getTime()) ? {} : { at: at.toISOString() };
}
