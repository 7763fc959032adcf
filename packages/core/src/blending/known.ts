/** True for a fact that is known: neither null nor left out. */
export const known = <T>(fact: T | null | undefined): fact is T => fact !== null && fact !== undefined;
