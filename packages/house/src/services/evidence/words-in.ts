/** Words that say how and not what, or nothing by themselves. Common practice, no source. */
const PLAIN = new Set(
  `about after again all almost also and any are away back because been before better bit both but came can close could did does
  down drop drops each either else end ends enough even everything ever far few first for from full gets gives glass goes going good had has
  have her here him his hold holds into its itself just last later least left less like likes little lot made makes many may maybe
  might mind more most much near never next nice nor not nothing now off old on once one only open opens our ours out over own
  part perhaps possibly quick quite rather really same second see seem seems shade she should shows side since slightly some
  something sort still such than that the their them then there these they thing things think third this those though three time
  times too took toward towards turn turns two under until up very was water way well went were what when where which while who
  whole why will with within without would yes yet you young your`.split(/\s+/),
);

const WORD = /\p{L}[\p{L}’'-]*\p{L}/gu;

/** The words of some notes, each once, in small letters; none that is plain or shorter than three letters. */
export function wordsIn(texts: readonly string[]): string[] {
  const words = texts.flatMap((text) => text.toLowerCase().match(WORD) ?? []);
  return [...new Set(words)].filter((word) => word.length > 2 && !PLAIN.has(word)).toSorted();
}
