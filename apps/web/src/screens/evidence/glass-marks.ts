/**
 * The numbers of the glasses on the map: those that their names have in the table of mix-ups, so that one number is one whiskey on the
 * whole page; pours of one whiskey have letters. Names that the table has not come after.
 */
export function glassMarks(
  glasses: readonly { readonly name: string }[],
  names: readonly { readonly key: string }[] = [],
): string[] {
  const order = [...new Set([...names.map(({ key }) => key), ...glasses.map(({ name }) => name)])];
  return glasses.map(({ name }, i) => {
    const number = String(order.indexOf(name) + 1);
    const pours = glasses.filter((other) => other.name === name).length;
    const before = glasses.slice(0, i).filter((other) => other.name === name).length;
    return pours === 1 ? number : number + String.fromCodePoint(97 + before);
  });
}
