/** A note with what was heard after it: one space or a comma's pause between, never a word glued to a word. */
export function joinHeard(note: string, heard: string): string {
  const said = heard.trim().replaceAll(/\s+/g, " ");
  if (said === "") return note;
  if (note.trim() === "") return said;
  return /\s$/.test(note) ? note + said : `${note} ${said}`;
}
