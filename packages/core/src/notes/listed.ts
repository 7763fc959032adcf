/** The phrases of a list: "|" stands between entries, "/" between what may stand in one place of an entry, "_" for a space inside that. */
export const listed = (words: string): string[] =>
  words
    .replaceAll("\n", "")
    .split("|")
    .filter((entry) => entry !== "")
    .flatMap((entry) => (entry.includes("/") ? everyWay(entry) : [entry]));

/** "apple /core/pie_filling" is "apple", "apple core" and "apple pie filling". */
const everyWay = (entry: string): string[] =>
  entry
    .split(" ")
    .map((place) => place.split("/"))
    .reduce((ways, place) => ways.flatMap((way) => place.map((word) => `${way} ${word}`)), [""])
    .map((way) => way.replaceAll("_", " ").replace(/ {2,}/g, " ").trim());
