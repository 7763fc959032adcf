import { describe, expect, test } from "vitest";
import { ENGLISH } from "./english.data.ts";
import { openReader } from "./open-reader.ts";
import { profileOf } from "./profile-of.ts";

const read = openReader(ENGLISH);
type Where = Parameters<typeof read>[1];
/** "smoke.smoke@nose absent", in the order of the note; whole and present are left out. */
const said = (text: string, where?: Where): readonly string[] =>
  read(text, where).observations.map((one) =>
    [
      `${one.attribute}${one.where === "whole" ? "" : `@${one.where}`}`,
      one.stance === "present" ? "" : one.stance,
    ]
      .join(" ")
      .trim(),
  );
const strength = (text: string): number => read(text).observations[0]?.strength ?? Number.NaN;

test("N1 quotes count UTF-16 units", () => {
  const text = "😀 Crème brûlée, 😀 honey";
  const quotes = read(text).observations.map(({ quote }) => text.slice(...quote));
  expect(quotes).toEqual(["Crème brûlée", "honey"]);
});

describe("N2 the longest phrase wins", () => {
  test.each([
    ["brown butter", ["sweet.dairy"]],
    ["orange peel", ["fruit.citrus"]],
    ["a cedar box", ["wood.old"]],
    ["a spice cake", ["spice.warm"]],
    ["apple pie", ["fruit.orchard", "grain.bake"]],
    ["plum jam", ["fruit.stone"]],
    ["dried mango", ["fruit.dried"]],
    ["rich toffee", ["sweet.sugar"]],
    ["the cherry on the cake", []],
    ["sweet of you", []],
    ["such a hot day", []],
    ["no doubt about it, cherry", ["fruit.stone"]],
    ["I was glad of Old Oakley's company", []],
  ])("%s", (text, attributes) => {
    expect(said(text)).toEqual(attributes);
  });
});

describe("N3 where", () => {
  test.each([
    ["On the nose honey, to taste pepper, long after", ["sweet.honey@nose", "spice.sharp@palate"]],
    [
      "vanilla and caramel on the nose, oak on the palate",
      ["sweet.vanilla@nose", "sweet.sugar@nose", "wood.fresh@palate"],
    ],
    [
      "Nose: lemon. Palate: oily. Finish: short",
      ["fruit.citrus@nose", "feel.weight@palate", "time.finish@finish"],
    ],
    ["drier than the nose", ["taste.basic more"]],
    ["honey", ["sweet.honey"]],
  ])("%s", (text, expected) => {
    expect(said(text).slice(0, expected.length)).toEqual(expected);
  });
  test("the sheet's part holds until a cue", () => {
    expect(said("oak. On the finish, tea", "palate")).toEqual(["wood.fresh@palate", "plant.green@finish"]);
  });
});

describe("N4 what is not there", () => {
  test.each([
    ["no smoke", ["smoke.smoke absent"]],
    ["no smoke or peat", ["smoke.smoke absent", "smoke.smoke absent"]],
    ["no smoke and lots of honey", ["smoke.smoke absent", "sweet.honey"]],
    ["the smoke has gone", ["smoke.smoke absent"]],
    ["I can't find the cherry", ["fruit.stone absent"]],
    ["the plum I noted was wrong", ["fruit.stone absent"]],
    ["lacks honey", ["sweet.honey absent"]],
    ["unpeated", ["smoke.smoke absent"]],
    ["nothing but honey", ["sweet.honey"]],
    ["not only plum but cherry", ["fruit.stone", "fruit.stone"]],
    ["can't get past the smoke", ["smoke.smoke"]],
    ["not without smoke", ["smoke.smoke"]],
    ["no shortage of oak", ["wood.fresh"]],
    ["not as sweet", ["taste.basic less"]],
    ["could do with more honey", ["sweet.honey less"]],
    ["hardly any smoke", ["smoke.smoke"]],
    ["the smoke has faded", ["smoke.smoke less"]],
  ])("%s", (text, expected) => {
    expect(said(text)).toEqual(expected);
  });
});

describe("N5 hedges and comparisons", () => {
  test.each([
    ["maybe cherry", ["fruit.stone unsure"]],
    ["might be plum", ["fruit.stone unsure"]],
    ["something nutty?", ["nut.nut unsure"]],
    ["more oak than the last one", ["wood.fresh more"]],
    ["drier than glass 2", ["taste.basic more"]],
  ])("%s", (text, expected) => {
    expect(said(text)).toEqual(expected);
  });
});

test.each([
  ["hotter than a stove", ["feel.burn"]],
  ["hotter than glass 2", ["feel.burn more"]],
  ["a spark of pepper that flicks and is gone", ["spice.sharp"]],
  ["I don't get the banana folks talk about", ["fruit.tropical absent"]],
  [
    "honey on toast, not smoky at all which I was expecting",
    ["sweet.honey", "grain.bake", "smoke.smoke absent"],
  ],
])("N4, N5 what measures, what was there for a moment, what others speak of: %s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test.each([
  ["malty 4, smoky 0, sweet 8", [4, 0, 8]],
  ["honey 7, oak 2.5", [7, 2.5]],
  ["glass 3, honey 2 o'clock", [5]],
])("N8 a panel's numbers are strengths where two of them stand: %s", (text, strengths) => {
  expect(read(text).observations.map((one) => one.strength)).toEqual(strengths);
});

test.each([
  ["a gentle warmth, a delicate sweetness", ["feel.burn", "taste.basic"]],
  ["a eucalyptus forest", ["plant.herb"]],
  ["peaches n cream", ["fruit.stone", "sweet.dairy"]],
  ["it is flat, sorry. A little honey", ["whole.balance", "sweet.honey"]],
  ["polish shoe polish", read("shoe polish").observations.map((one) => one.attribute)],
])("N2, N6 one thing is one thing: %s", (text, attributes) => {
  expect(said(text)).toEqual(attributes);
});

test.each([
  ["hay palate lemon", "whole palate"],
  ["there's chocolate at the end and a bit of smoke", "finish finish"],
  ["On the palate it's altogether sweeter, with plum", "palate palate"],
  ["Nose: oak. The finish tastes of coffee", "nose finish"],
])("N3 whose part it is: %s", (text, where) => {
  expect(
    read(text)
      .observations.map((one) => one.where)
      .join(" "),
  ).toBe(where);
});

test.each([
  ["smoke. It fades rather quickly.", 2],
  ["oak, 30s", 5],
  ["It's thick and it's long and I want more", 8],
  ["the pear is still there", null],
  ["straw. short & clean.", 2],
])("N9 how long, by what goes and stays: %s", (text, length) => {
  const found = read(text).observations.find(({ attribute }) => attribute === "time.finish");
  expect(found?.strength ?? null).toBe(length);
});

test.each([
  ["wet leaves no not leaves more like mushroom", "mushroom"],
  ["cherries not cherries plums", "plum"],
  ["pear is it no apple", "apple"],
  ["orange no tangerine more than orange", "tangerine"],
  ["leather no what's the word tobacco", "tobacco"],
  ["I want to say peach but it's apricot", "apricot"],
  ["a crumble blackberry crumble", "blackberry crumble"],
])("N6 what dictation puts right without a comma: %s", (text, words) => {
  expect(
    read(text)
      .observations.map(({ word }) => word)
      .join(" "),
  ).toBe(words);
});

test.each([
  "can't get enough of the plum",
  "if that's not plum I'll eat my hat",
  "you can't beat a bit of plum",
  "there's no way that isn't plum",
  "nothing beats that plum",
  "without water it's all plum",
])("N4 no 'no' at all: %s", (text) => {
  expect(said(text)).toEqual(["fruit.stone"]);
});

test("N3 each clause has the part behind it", () => {
  const text = "you get plum on the nose you get honey on the palate you get oak on the finish";
  expect(read(text).observations.map(({ where }) => where)).toEqual(["nose", "palate", "finish"]);
});

describe("N6 what is put right", () => {
  test.each([
    ["plum, no, actually cherry", "cherry"],
    ["plum, no, cherry", "cherry"],
    ["pear, scratch that, quince", "quince"],
    ["plum no cherry", "cherry"],
  ])("%s", (text, word) => {
    expect(read(text).observations.map((one) => one.word)).toEqual([word]);
  });
});

test.each([
  ["the room is really warm, I get plum", ["fruit.stone"]],
  ["we were all a bit tired. plum", ["fruit.stone"]],
  ["the glasses come out smelling of lemon. plum", ["fruit.stone"]],
  ["we had lemon cake. plum", ["fruit.stone"]],
  ["they had a lovely plum", ["fruit.stone"]],
  ["her perfume was strong. plum", ["fruit.stone"]],
  ["my mother made jam. plum", ["fruit.stone"]],
  ["we ran out of pepper. plum", ["fruit.stone"]],
  ["it was finished in rum casks. plum", ["fruit.stone"]],
])("N7 rooms, tasters and stories leave nothing: %s", (text, attributes) => {
  expect(said(text)).toEqual(attributes);
});

test.each([
  ["toasted bread, a bit burned", ["grain.bake"]],
  ["peaches, with the stone in", ["fruit.stone"]],
  ["the jam of plums", ["fruit.stone"]],
  ["oily like engine oil", ["feel.weight"]],
  ["hot hot cinnamon", ["feel.burn", "spice.warm"]],
  ["a clean, crisp apple", ["fruit.orchard"]],
])("N2 what only says how a food is, or what part of it, is no flavour besides: %s", (text, attributes) => {
  expect([...new Set(said(text))]).toEqual(attributes);
});

test("N7 another glass, hopes, dinner and looks leave nothing, or the other way round", () => {
  expect(said("the last one had more smoke")).toEqual(["smoke.smoke less"]);
  expect(said("the last one was all plums")).toEqual([]);
  expect(said("I expected smoke but it is honey")).toEqual(["sweet.honey"]);
  expect(said("it would go well with dark chocolate")).toEqual([]);
  expect(said("the colour of honey")).toEqual([]);
});

describe("N8 strength", () => {
  test("hint < plain < loads", () => {
    expect(strength("a hint of smoke")).toBeLessThan(3.5);
    expect(strength("smoke")).toBe(5);
    expect(strength("loads of smoke")).toBeGreaterThan(6.5);
    expect(strength("slightly smoky")).toBeLessThan(3.5);
    expect(strength("smoke all over")).toBeGreaterThan(6.5);
    expect(strength("the smoke is very faint")).toBeLessThan(strength("the smoke is faint"));
    expect(strength("smoke, smoke, smoke")).toBeGreaterThan(6.5);
  });
  test("no smoke is 0", () => {
    expect(strength("no smoke")).toBe(0);
  });
});

test.each([
  ["the finish is short", 2],
  ["finish of eight seconds", 2],
  ["finish, twenty seconds", 5],
  ["finish: 45 seconds", 8],
  ["a finish of a minute", 8],
  ["the finish goes on and on", 8],
])("N9 %s", (text, long) => {
  const length = read(text).observations.find(({ attribute }) => attribute === "time.finish");
  expect(length).toMatchObject({ strength: long, where: "finish" });
});

test("N10 slips are mended where a flavour is spoken of, and nowhere else", () => {
  expect(said("a hint of pair and vannila")).toEqual(["fruit.orchard", "sweet.vanilla"]);
  expect(said("notes of sinnamon")).toEqual(["spice.warm"]);
  expect(said("the two of them were a pair")).toEqual([]);
});

test("N11 liking and memories are remarks", () => {
  expect(read("lovely, reminds me of my grandfather's shed").remarks).toMatchObject([
    { kind: "liking", liking: 1 },
    { kind: "memory" },
  ]);
});

test("N12 a profile has what was spoken of and nothing else", () => {
  const { observations } = read("On the nose a hint of smoke. On the palate smoke and no honey.");
  const profile = profileOf(observations);
  expect(Object.keys(profile).toSorted()).toEqual(["smoke.smoke", "sweet.honey"]);
  expect(profile["sweet.honey"]?.mean).toBe(0);
  expect(profileOf(observations, "nose")["smoke.smoke"]?.mean).toBeLessThan(
    profile["smoke.smoke"]?.mean ?? 0,
  );
  expect(profileOf([])).toEqual({});
});

test.each([
  ["hay (nose), honey (palate), pepper (finish)", "nose palate finish"],
  ["Hay, nose. Honey, palate.", "nose palate"],
  ["It doesn't smell of hay, and before I even tasted it there was smoke", "nose nose"],
  ["Having tasted it: plum. Once you've swallowed: oak", "palate finish"],
  ["The taste is plummy. A sweet one, all in all.", "palate whole"],
  ["Oily mouthfeel, then plum", "palate palate"],
  ["It has a sherry finish. Plum. This goes down a treat: honey", "whole whole"],
  ["Fades slowly into oak", "finish finish"],
])("N3 kinds of words, brackets, verdicts: %s", (text, where) => {
  expect(
    read(text)
      .observations.map((one) => one.where)
      .join(" "),
  ).toBe(where);
});

test.each([
  ["Treacle rather than honey", "sweet.sugar present"],
  ["It's hazelnut, not almond", "nut.nut present"],
  ["I don't think it's smoky", "smoke.smoke absent"],
  ["I wouldn't call it sweet", "taste.basic absent"],
  ["Oak, yes. Smoke, no. Honey, maybe.", "wood.fresh present, smoke.smoke absent, sweet.honey unsure"],
  ["Bitter? No. Plum? Yes.", "taste.basic absent, fruit.stone unsure"],
  ["The last one was oaky, this one isn't", "wood.fresh absent"],
  ["honey well not honey exactly it's butter", "sweet.dairy present"],
  ["The other one had a much longer finish", "time.finish less"],
])("N4 to N7 what is denied, put right or another's: %s", (text, said) => {
  expect(
    read(text)
      .observations.map(({ attribute, stance }) => `${attribute} ${stance}`)
      .join(", "),
  ).toBe(said);
});

test.each([
  ["choclate and tobacko", "sweet.cocoa earth.leather-and-leaf"],
  ["a bit of butter scotch and marzi pan", "sweet.sugar nut.nut"],
])("N10 two slips in a list, words cut in two: %s", (text, attributes) => {
  expect(
    read(text)
      .observations.map(({ attribute }) => attribute)
      .join(" "),
  ).toBe(attributes);
});

test.each([
  [
    "A stable and a hayfield. That's the nose. Then plum.",
    ["earth.leather-and-leaf@nose", "plant.green@nose", "fruit.stone@nose"],
  ],
  ["Salt on the lips after.", ["taste.basic@finish"]],
  ["oily, sweet after", ["feel.weight", "taste.basic@finish"]],
  ["ginger on the palate, and it lingers", ["spice.sharp@palate", "time.finish@finish"]],
  ["I can't smell any smoke", ["smoke.smoke@nose absent"]],
  ["No nose. Caramel.", ["sweet.sugar"]],
  ["Ends with a whiff of tar", ["smoke.smoke@finish"]],
  ["honey on the tongue a wee bit of smoke at the end", ["sweet.honey@palate", "smoke.smoke@finish"]],
  ["I've gone back and it's plum", ["fruit.stone"]],
] as const)("N3 parts told after the sentence, denied, gone back to: %s", (text, wanted) => {
  expect(said(text)).toEqual(wanted);
});

test.each([
  ["not fresh cherry, more like plum", ["fruit.stone", "fruit.stone"]],
  ["not smoky enough", ["smoke.smoke"]],
  ["plums or prunes, no, definitely prunes", ["fruit.dried"]],
  ["The plum is really a prune", ["fruit.dried"]],
  ["Palate of treacle. Not treacle, that's too dark, golden syrup.", ["sweet.honey@palate"]],
  ["it's gone all buttery", ["sweet.dairy"]],
  ["it's light, it's gone", ["feel.weight"]],
  ["I wouldn't swear to the smoke", ["smoke.smoke unsure"]],
  ["Glass 3 had all the vanilla; this has hardly any.", ["sweet.vanilla"]],
  ["It hasn't the smoke of its sister", ["smoke.smoke absent"]],
] as const)("N4 to N7 what a no is of: %s", (text, wanted) => {
  expect(said(text)).toEqual(wanted);
});

test.each([
  ["The room was quite smoky.", []],
  ["The welcome was warm.", []],
  ["My knees are rusty.", []],
  ["I had a coffee an hour ago.", []],
  ["Ginger, our new neighbour, came round.", []],
  ["Gran kept a tin of barley sugar, and that's what comes to mind.", ["sweet.sugar"]],
  ["A boy eating toast.", ["grain.bake"]],
  ["1. toffee 2. smoke 3. salt", ["sweet.sugar", "smoke.smoke", "taste.basic"]],
] as const)("N7 what is not of the glass, and what is likened to it after all: %s", (text, wanted) => {
  expect(said(text)).toEqual(wanted);
});

test("N8 a degree that is a sentence is of what stands before it", () => {
  expect(strength("Bacon. Lots.")).toBeGreaterThan(6.5);
  expect(strength("Bacon. Lots of honey.")).toBe(5);
});

test.each([
  ["straw berries, a dough nut, stale pea nuts", ["fruit.berry", "grain.bake", "savoury.stale"]],
  ["a spoon of marma laid on burnt toast", ["fruit.citrus", "smoke.smoke"]],
  ["pine and apple", ["wood.fresh", "fruit.orchard"]],
  [
    "leaf of tobacco, cookies of butter, bread of rye",
    ["earth.leather-and-leaf", "grain.bake", "grain.cereal"],
  ],
  ["a lick of salt", ["taste.basic"]],
  ["only the apple green", ["fruit.orchard"]],
  ["the rubber of new shoes", ["savoury.sulphur"]],
  ["the bitterness of tea", ["taste.basic", "plant.green"]],
])("N2 words that are cut in two, or stand the other way round: %s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test.each([
  ["is this thing on no okay vanilla and oak", ["sweet.vanilla", "wood.fresh"]],
  ["um no smoke that I can find", ["smoke.smoke absent"]],
  ["disappears the smoke and comes the honey", ["smoke.smoke absent", "sweet.honey"]],
  ["I never get tobacco, but it's plum here", ["fruit.stone"]],
  ["never got the smoke", ["smoke.smoke absent"]],
  ["the orange has slipped off somewhere", ["fruit.citrus absent"]],
  ["can't smell a thing to be honest bit of vanilla", ["sweet.vanilla@nose"]],
  ["I get pine and I get hang on there's orange peel", ["wood.fresh", "fruit.citrus"]],
  ["plum hang on cherry", ["fruit.stone"]],
])("N4, N6 a no that answers, a habit, a clause that is broken off: %s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test.each([
  ["Late light on the wall, and honey in the jar.", ["sweet.honey"]],
  ["Light and floral.", ["feel.weight", "plant.flower"]],
  ["It has a very nice perfume, of peach.", ["fruit.stone"]],
  ["A hint of perfume.", ["plant.flower"]],
  ["Somebody is frying onions. Under the onions there is walnut.", ["nut.nut"]],
  ["There's a biscuit in it, and the biscuit is buttery.", ["grain.bake", "grain.bake", "sweet.dairy"]],
  ["I expected smoke. The smoke never came.", ["smoke.smoke absent"]],
  ["my wife reckons this is all coconut I get plum", ["fruit.stone"]],
  ["Cinnamon came in first and sat by the window.", ["spice.warm"]],
  ["Ginger came round to see the new kitchen. Plum.", ["fruit.stone"]],
  ["With the water it opens.", ["whole.balance"]],
  ["It opens like a drawer of cedar.", ["wood.fresh"]],
  ["the wood of the sauna when it is hot", ["wood.fresh"]],
  ["it is hot when you swallow", ["feel.burn@finish"]],
  [
    "It is drier and the smoke has faded a bit. Oak's where I left it.",
    ["taste.basic more", "smoke.smoke less", "wood.fresh"],
  ],
])("N2, N7 what is seen, liked, cooked, heard of or only called a person: %s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test('N3 what leans in is no nose, and "then you drink" is the palate', () => {
  const parts = (text: string) => read(text).observations.map(({ where }) => where);
  expect(parts("It leans in the doorway, all tar and oranges.")).toEqual(["whole", "whole"]);
  expect(parts("I lean in and there is hay.")).toEqual(["nose"]);
  expect(parts("But then you drink, and there is apricot.")).toEqual(["palate"]);
  expect(parts("The end of it goes woody.")).toEqual(["finish"]);
});

test.each([
  ["like a room where somebody's just peeled an orange", ["fruit.citrus"]],
  ["she peeled a lemon", []],
  ["a peeled apple, rinsed strawberries", ["fruit.orchard", "fruit.berry"]],
  ["roasting chestnuts", ["nut.nut"]],
  ["At the very back a boy eating a pear.", ["fruit.orchard@finish"]],
  ["a loaf still warm from the oven", ["grain.bake"]],
  ["I shut my eyes and it's honey", ["sweet.honey"]],
  ["honey. I'd put it on toast", ["sweet.honey"]],
  ["smoke from over the hedge", ["smoke.smoke"]],
  ["it was too long in the barrel", []],
  ["toffee and off it goes", ["sweet.sugar", "time.finish@finish"]],
  ["It overstays a little.", ["time.finish@finish"]],
  ["The bakery at five in the morning.", ["grain.bake"]],
  ["A garage in winter.", ["spirit.heads"]],
  ["The dentist on Monday.", []],
  ["It tastes like the colour brown, like walnuts.", ["nut.nut@palate"]],
  ["The colour of toffee, like straw.", []],
])("N7, N9 scenes, food and casks: %s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test.each([
  "The batch was two parts malt and one part rye.",
  "One more part of the grain would help.",
  "I bet this is the one with the oak stick in it.",
  "The cask was a first fill sherry butt.",
  "Left it ten minutes and came back.",
  "Amber with a copper rim.",
  "Short and to the point.",
  "It's not a deep drink but it's honest.",
])("N7 talk of the mix, the wood and the glass is no flavour: %s", (text) => {
  expect(said(text)).toEqual([]);
});

test.each([
  ["finish about twenty seconds dry", ["time.finish@finish", "taste.basic@finish"]],
  [
    "finish maybe thirty seconds oak and ash",
    ["time.finish@finish unsure", "wood.fresh@finish unsure", "smoke.smoke@finish unsure"],
  ],
  ["finish no change white pepper", ["spice.sharp@finish"]],
  ["bread no seriously almonds", ["grain.bake", "nut.nut"]],
  ["no kidding real creamy", ["feel.weight"]],
])("N4, N9 spoken without a comma: %s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test.each([
  ["compared with the bought bottle it has less vanilla", ["sweet.vanilla less"]],
  ["the original has more leather", ["earth.leather-and-leaf less"]],
  ["the target is all honey, this is plum", ["fruit.stone"]],
  ["smokier than the target", ["smoke.smoke more"]],
  ["it lacks the smoke of the original", ["smoke.smoke absent"]],
  ["before the oak went in it was all apple", ["fruit.orchard"]],
])("N5, N7 the bottle that all is to come close to is another glass: %s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test.each([
  ["reference more yeasty, trial more grassy", ["grain.bake less", "plant.green more"]],
  ["Reference peppery, trial not.", ["spice.sharp absent"]],
  ["The reference has no pepper at all, the trial has a little.", ["spice.sharp"]],
  ["The last one wasn't smoky, this one is.", ["smoke.smoke"]],
  ["The last one was oaky, this one isn't at all", ["wood.fresh absent"]],
  ["The last one wasn't sweet but this is sour", ["taste.basic"]],
  ["Hers has more oak", ["wood.fresh less"]],
  ["His glass: all toffee. Mine: oranges", ["fruit.citrus"]],
  ["It is close to the target: oak, vanilla", ["wood.fresh", "sweet.vanilla"]],
])("N7 what another has and this has not, said without a verb or with little: %s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test.each([
  ["the burnt sugar went", ["sweet.sugar absent"]],
  ["the cardamom goes and I get pepper", ["spice.warm absent", "spice.sharp"]],
  ["the honey goes well with it", ["sweet.honey"]],
  ["as far as smoke goes it is mild", ["smoke.smoke"]],
  ["everything is ash, the honey is dead", ["smoke.smoke", "sweet.honey absent"]],
  ["I said plum before and take it back", ["fruit.stone absent"]],
  ["I wrote cherry. I withdraw it; it is oak", ["fruit.stone absent", "wood.fresh"]],
  ["I take the first sip. Cherry", ["fruit.stone@palate"]],
])("N4, N6 what went, and what is taken back: %s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test.each([
  ["plum the dried one with clove", ["fruit.dried", "spice.warm"]],
  ["apricots drying on a flat roof", ["fruit.dried"]],
  ["seaweed drying on the rocks", ["smoke.medicinal"]],
  ["cherry, dried apricot", ["fruit.stone", "fruit.dried"]],
  ["orange blossom water", ["plant.flower"]],
  ["like the cardboard tube", ["savoury.stale"]],
])("N2 how a fruit was made, said behind it; what a flavour is kept in: %s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test.each([
  ["not a very long finish", 2],
  ["the finish is not that long", 2],
  ["vanilla and some oak not very long", 2],
  ["vanilla and some oak half a minute", 5],
  ["vanilla and some oak really long", 8],
  ["vanilla and some oak too short", 2],
])("N9 a length that ends a note without a mark, or is denied: %s", (text, strength) => {
  const last = read(text).observations.at(-1);
  expect(last).toMatchObject({ attribute: "time.finish", where: "finish" });
  expect(Math.abs((last?.strength ?? Number.NaN) - strength)).toBeLessThan(2);
});

test.each([
  ["plum, actually cherry", ["fruit.stone"]],
  ["plum, or more like cherry", ["fruit.stone"]],
  ["Plum? No. Cherry.", ["fruit.stone"]],
  ["Smoke? No. Honey.", ["smoke.smoke absent", "sweet.honey"]],
  ["Smoke? No. Honey? Yes.", ["smoke.smoke absent", "sweet.honey unsure"]],
  ["the smoke has turned into leather", ["earth.leather-and-leaf"]],
  ["the oak has become softer", ["wood.fresh less"]],
  ["the vanilla turns out to be toffee", ["sweet.sugar"]],
  ["I wanted to say plum but it's cherry", ["fruit.stone"]],
  ["I wanted to say plum", ["fruit.stone"]],
])("N6 what is said to be another after all: %s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});
