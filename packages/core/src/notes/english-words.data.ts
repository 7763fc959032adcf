import type { WordSet } from "./language.ts";

/**
 * English words of a kind that a rule of the reader asks for. How lists are written: language.ts; "was *" is what begins with "was",
 * "* end" what ends with "end". Common practice, no source.
 */
export const WORDS: Readonly<Record<WordSet, string>> = {
  // What stands before the name of a part, of a glass, of a thing or of a feel.
  beforePart: `a|an|the|with|this|that|its|then|then a|and a|has a|nice|lovely|such a|quite a|rather|some|big|real|in a`,
  beforeSip: `initial|second|third|very`,
  beforeThing: `the|a|an|my|her|his|old|cold|wet|hot`,
  beforeLength: `also|is|was|were|very|too|not|a|bit|rather|just|far|much|way|considerably|so`,
  beforeParticiple: `then|quite|also|rather`,
  ofAThing: `* a|* an|* the|* my|* his|* her|* our|* their|* your|* this|* that|* some|* of|* in`,
  anA: `* an|* a`,
  an: `an|a`,
  articles: `a|an|any|my|hell|the devil`,
  determiners: `the|its|his|her|my|your|our|their|a|an|it|them|us`,
  someThing: `an|a|the|my|some|old`,
  theThat: `the|that`,
  of: `of|of the|of a`,
  ofThe: `of the|of`,
  ofIt: `of it|of that|of him|of her`,
  ofGlass: `in the|in|of the|of|from the|from|on the|on`,
  ofFeel: `notes|note|smell|taste|side|feel|finish`,
  asThe: `the the|the|as the|as|like the|like`,
  likeA: `like an|like a|like the|like some|like|as an|as a|as the|as some|as`,
  kindOf: `sort of|kind of|type of`,
  kinds: `sort|kind|type|ones|one`,
  ones: `ones|one`,
  leads: `on *|in *|at *|to *|into *|upon *|by *|towards *|toward *|for *|from *|off *|aff *|across *|over *|inside *|\
around *|round *|through *|throughout *|during *`,
  leadsIn: `on the|on my|on|in the|in my|in|at the|at my|at|to the|to my|to|into the|into my|into|for the|for my|for|by the|\
by my|by|the the|the my|the|my the|my my|my|your the|your my|your|its the|its my|its|first the|first my|first|\
second the|second my|second`,
  liesOn: `on the|on a|on|under the|under a|under|beside the|beside a|beside|behind the|behind a|behind|near the|near a|\
near|across the|across a|across|over the|over a|over|past the|past a|past|through the|through a|through|\
below the|below a|below|outside the|outside a|outside`,
  somewhere: `on the|on a|on|in the|in a|in|by the|by a|by|under the|under a|under|over the|over a|over|off the|off a|off|\
somewhere the|somewhere a|somewhere`,
  // Who speaks, tells a story or is told of.
  persons: `he|she|they|we|i|you|who`,
  others: `he|she|they`,
  storyTellers: `i'd|i've|i'm|i're|i's|id|ive|i|we'd|we've|we'm|we're|we's|wed|weve|we|he'd|he've|he'm|he're|he's|hed|heve|he|\
she'd|she've|she'm|she're|she's|shed|sheve|she|they'd|they've|they'm|they're|they's|theyd|theyve|they`,
  somebody: `i'm|im|i|we|we're|he|she|they|everyone|everybody|my tongue|my mouth`,
  everything: `everything|everyone|everybody|we|he|she|they`,
  people: `folk|folks|people|others|everyone|everybody`,
  burners: `you|i|we|they|he|she`,
  pronouns: `it|them|that|one`,
  it: `it|it's|its|it is|you`,
  relative: `which|that|who`,
  selves: `itself|himself|herself|themselves`,
  likers: `i|we|you|really|quite|also|do|don't|did|didn't`,
  reporting: `said|says|reckons|swears|insists|told|claims`,
  // Verbs, by what they say of a flavour, a finish or a story.
  plural: `have *|are *|were *`,
  wasHad: `was *|had *|were *`,
  wasOrIs: `was *|had *|were *|is *|are *|has *|have *|tastes *|smells *|taste *|smell *|tasted *|smelled *|got *|gave *|\
seem *|seems *|seemed *|did *|felt *|feels *|feel *`,
  isNot: `isn't *|isnt *|wasn't *|is not *|was not *`,
  thatIs: `that's|thats|that is|all that's|that was`,
  becoming: `* gone|* went`,
  itGoes: `it|and it|then it|but it`,
  goes: `goes *|went *|leaves *|left *|dies *|disappears *|vanishes *|gone *|over *`,
  stays: `stays *|stay *|remains *|remain *|rests *|rest *`,
  bids: `persist|stay|remain|endure`,
  comes: `comes|come`,
  arriving: `comes|come|came|coming|comes in|arrives|arrive|arrived|appears|appear|appeared|shows up|showed up|turns up|\
turned up|pops up|pops out|kicks in|creeps in|creeps up|sneaks in|sneaks up|emerges|emerge|waits|wait|waiting|\
hides|hiding|sits|surfaces|returns|return|only|mostly|mainly|right|just|through|up|in|out|back|along`,
  coats: `coats|coating|slides|sits|pours`,
  warms: `warms|glows`,
  bites: `bites|kicks|grips|glows|nips|stings`,
  turned: `round|around|open|clean|polish|flat|dry|thin|close|closed|bite|bit`,
  leavesWhat: `off|you|me|us|behind|little|nothing|no|a|an|the|your|my|his|her|its|some|such|quickly|early|soon|much|it|them|\
everything|room|splinters|traces|only|just|one`,
  leavers: `it|that|which|who|she|he|this|what|finish|taste|smoke|sea|never`,
  roundAfter: `going|go|goes|went|come|comes|came|passed|passing|handed|handing|turned|turn|sat|sitting|gathered|looked|\
looking|walked|all|year|folded|wrapped|tied`,
  burnsDown: `down|out|low|up|itself`,
  participles: `drying|burning|warming|glowing|melting`,
  dryingBurning: `drying|burning`,
  thingsDo: `left|went|came|gave|kept|lost|carried|moved|served|arrived|raised|crossed|climbed|ran|burned|burnt|lay|hung|hid|\
caught|waited|stayed|spent|passed|broke|met|roasted|toasted|dried|stewed|grilled|fried|boiled`,
  broughtBy: `brought|cooked|ate|passed|spilled|spilt|dropped|served|ordered|shared|handed`,
  storyBetween: `had|have|has|just|all|both|always|often|once|never|used to|then|went and|had just|were|was|been|also|only|ever|\
out|busy|is|are|am`,
  beganAnew: `there's|theres|i get|i find|i'm getting|im getting`,
  // Nouns: what whiskeys are called, what holds them, what is round about.
  whiskeyNouns: `whiskey|whisky|dram|drop|thing|stuff|note|notes|start|one|pour|drink|side|character|feel|feeling|texture|body|\
spirit|flavour|flavor|flavours|flavors|kick|edge|quality|sort|type|kind|element|aspect|sensation|attack|opening|\
entry|liquid|malt|bourbon|rye|scotch|number|little|beast|lad|mouthfeel|aftertaste|ending|glow|profile|\
personality|core|backbone|style|tone|tones|undertone|undertones|presence|experience|affair|blend`,
  noteWords: `note|notes|aroma|flavour|flavor|taste|character|thing|vibe|vibes`,
  bodies: `body|texture|weight|mouthfeel`,
  glasses: `one|ones|glass|bottle`,
  numbered: `glass|number|sample`,
  drinks: `wine|rum|sherry|bourbon|port|madeira|cognac|brandy|beer`,
  wooden: `wood|woods|barrels|barrel|casks|cask|oak|candle|tree`,
  places: `forest|wood|woods|barn|farm|garden|workshop|library|church|chapel|harbour|harbor|dock|quay|beach|hospital|\
cellar|attic|loft|hedge|meadow|lawn|greenhouse|stable|byre|museum|warehouse|bakery|brewery|shop|factory|shed|\
market|stall`,
  surroundings: `room|room's|kitchen|kitchen's|house|house's|pub|pub's|office|office's|car|car's|garden|garden's|hall|hall's|\
bathroom|bathroom's|weather|weather's|day|day's|night|night's|evening|evening's|heating|heating's|radiator|\
radiator's|sun|sun's|dishwasher|dishwasher's|towel|towel's|cloth|cloth's|hand|hand's|finger|finger's|eye|eye's|\
ear|ear's|foot|foot's|neck|neck's|face|face's|rooms|towels|hands|fingers|eyes|ears|feet|glasses`,
  fruit: `fruits|fruit`,
  qualities: `warmth|heat|burn|tingle|sting|bite|kick|grip|acidity|fizz|astringency`,
  stones: `stone|stones`,
  sea: `sea`,
  // How much, how long, when.
  amounts: `much|much of|so much|too much|a lot|a lot of|lot of|a great deal of|great deal of|many|very|overly|all that|\
plenty of|loads of`,
  muchMore: `* much|* far|* way|* lots|* loads|* miles|* lot|* deal|* considerably|* significantly`,
  smallStay: `a touch|a little|a bit|a little bit|briefly|slightly|a moment|a second|for a moment|a tad|somewhat|nicely|well|\
a shade`,
  lengths: `short|shorter|long|longer|brief|lengthy|quick|fleeting`,
  plainLengths: `short|long|brief|lengthy`,
  plainly: `good|nice|proper|solid|lovely|decent|clearly|definitely`,
  aboutSo: `about|around|a|good`,
  waiting: `after|another|wait|waited|leave it|give it`,
  earlier: `before|earlier|first|previously|yesterday|last time|at first`,
  endOf: `* end`,
  closers: `now|though|too|today|tonight|this time|here|again|mind`,
  thenNext: `then|next|now|so`,
  listWords: `then|maybe|some|lots|even`,
  // Yes, no and what is put right; ends of what is likened.
  yes: `yes|yep|yeah|aye`,
  notAfter: `no|not|is not|isn't|isnt|are not|aren't`,
  nothings: `none|nil|absent|nothing|zero|nowhere|missing|nowt|zilch|nada|zip`,
  exchanged: `more|more like|more of|it's|its|rather|actually|but|just|maybe`,
  standAlone: `wait|sorry|instead|wrong|pardon|oops|nah|nope`,
  sorry: `sorry|pardon`,
  ambiguousChange: `down|less|up`,
  likenedTo: `a|an|any|anything|can|hell|you`,
  // How a food was made.
  charred: `toasted|burned|burnt|charred`,
  dusty: `dusty|muddy`,
  salted: `salted`,
  warm: `warm|warmth|hot`,
};
