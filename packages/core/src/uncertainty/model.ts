/** A result as a function of its inputs' values, read by input `id`. */
export type Model = (valueOf: (id: string) => number) => number;
