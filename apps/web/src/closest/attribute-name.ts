/** An attribute's id as words: "fruit.stone" is "stone fruit", "smoke" is "smoke". */
export function attributeName(id: string): string {
  return id.split(".").toReversed().join(" ").replaceAll("_", " ");
}
