/** A number that carries what it measures in its type. At run time it is a plain number. */
export type Branded<Name extends string> = number & { readonly __quantity: Name };
