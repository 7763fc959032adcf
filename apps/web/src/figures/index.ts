export { countDays, daysBetween, fromNow, printDay, printMoment } from "./day.ts";
export { moneyAsTyped, printMoney, readMoney } from "./money.ts";
export { abvDigits, printAbv, printStated, proofDigits, statedAsTyped } from "./strength.ts";
export { mlDigits, printG, printMl } from "./volume.ts";
export { listed, printAge, printCask, printParts, printShare } from "./words.ts";
