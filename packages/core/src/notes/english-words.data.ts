import type { WordSet } from "./language.ts";

/**
 * English words of a kind that a rule of the reader asks for. How lists are written: language.ts; "was *" is what begins with "was",
 * "* end" what ends with "end". Common practice, no source.
 */
export const WORDS: Readonly<Record<WordSet, string>> = {
  // What stands before the name of a part, of a glass, of a thing or of a feel.
  beforePart: `an|/and/has/in/quite/such/then a|big|its|lovely|nice|rather|real|some|that|the|then|this|with`,
  beforeSip: `initial|second|third|very`,
  beforeThing: `a|an|cold|her|his|hot|my|old|the|wet`,
  beforeLength: `a|also|bit|considerably|far|is|just|much|not|rather|so|too|very|was|way|were`,
  beforeParticiple: `also|quite|rather|then`,
  ofAThing: `* a/an/her/his/in/my/of/our/some/that/the/their/this/your`,
  anA: `* a/an`,
  an: `a|all|an|can|hell|they`,
  articles: `a|an|any|hell|my|the devil`,
  determiners: `a|an|her|his|it|its|my|our|the|their|them|us|your`,
  hisHer: `his|her|our|their|your|my`,
  someThing: `a|an|my|old|some|the`,
  theThat: `that|the`,
  of: `of /a/the`,
  ofThe: `of /the`,
  ofIt: `of her/him/it/that`,
  ofGlass: `from|from/in/of/on the|in|of|on`,
  ofFeel: `feel|finish|note|notes|side|smell|taste`,
  asThe: `as|/as/like/the the|like`,
  likeA: `like/as /a/an/some/the`,
  kindOf: `kind/sort/type of`,
  kinds: `kind|one|ones|sort|type`,
  ones: `one|ones`,
  leads: `\
across/aff/around/at/by/during/for/from/in/inside/into/off/on/over/round/through/throughout/to/toward/towards/upon *`,
  leadsIn: `at|/at/by/first/for/in/into/its/my/on/second/the/to/your the/my|by|first|for|in|into|its|on|second|to|your`,
  liesOn: `from|from the/a|across|across/behind/below/beside/near/on/outside/over/past/through/under the/a|behind|below|beside|near|on|\
outside|over|past|through|under`,
  somewhere: `by|by/in/off/on/over/somewhere/under the/a|in|off|on|over|somewhere|under`,
  // Who speaks, tells a story or is told of.
  persons: `he|i|she|they|we|who|you|i'm|we're|he's|she's|they're`,
  others: `he|she|they`,
  storyTellers: `he|he'd|he's|he've|i|i'd|i'm|i've|id|ive|she|she'd|she's|they|they'd|they're|they've|we|we'd|we're|we've`,
  somebody: `everybody|everyone|he|i|i'm|im|my mouth/tongue|she|they|we|we're|he's|she's|they're|you're`,
  everything: `everybody|everyone|everything|he|she|they|we`,
  people: `everybody|everyone|folk|folks|others|people`,
  burners: `he|i|she|they|we|you`,
  pronouns: `it|one|that|them`,
  it: `it /is|it's|its|length|you`,
  relative: `that|which|who`,
  selves: `herself|himself|itself|themselves`,
  likers: `also|did|didn't|do|don't|i|quite|really|we|you`,
  reporting: `claims|insists|reckons|said|says|swears|told`,
  // Verbs, by what they say of a flavour, a finish or a story.
  plural: `are/have/were *`,
  wasHad: `had/was/were *`,
  wasOrIs: `\
are/did/feel/feels/felt/gave/got/had/has/have/is/seem/seemed/seems/smell/smelled/smells/taste/tasted/tastes/was/were *`,
  isNot: `is_not/isn't/isnt/was_not/wasn't *`,
  thatIs: `/all that's|that is/was|thats`,
  becoming: `* going/gone/went`,
  itGoes: `/and is|/and/but/then it`,
  goes: `dies/disappears/goes/gone/leaves/left/over/vanishes/went *`,
  stays: `remain/remains/rest/rests/stay/stays *`,
  bids: `endure|persist|remain|stay`,
  comes: `come|comes`,
  arriving: `along|appear|appeared|appears|arrive|arrived|arrives|back|came|come|comes|/comes/creeps/kicks/sneaks in|coming|\
/creeps/pops/showed/shows/sneaks/turned/turns up|emerge|emerges|hides|hiding|just|mainly|mostly|only|/pops out|\
return|returns|right|sits|surfaces|through|wait|waiting|waits`,
  coats: `coating|coats|pours|sits|slides`,
  warms: `glows|warms`,
  bites: `bites|glows|grips|kicks|nips|stings`,
  turned: `around|bit|bite|clean|close|closed|dry|flat|open|polish|round|thin`,
  leavesWhat: `a|an|behind|early|everything|her|his|it|its|just|little|me|much|my|no|nothing|off|one|only|quickly|room|some|\
soon|splinters|such|the|them|traces|us|you|your`,
  leavers: `finish|he|it|never|sea|she|smoke|taste|that|this|what|which|who`,
  roundAfter: `all|came|come|comes|folded|gathered|go|goes|going|handed|handing|looked|looking|passed|passing|sat|sitting|tied|\
turn|turned|walked|went|wrapped|year`,
  burnsDown: `down|itself|low|out|up`,
  participles: `burning|dripping|drying|glowing|melting|warming`,
  dryingBurning: `burning|drying`,
  thingsDo: `arrived|boiled|broke|burned|burnt|came|carried|caught|climbed|crossed|dried|fried|gave|grilled|hid|hung|kept|\
lay|left|lost|met|moved|passed|raised|ran|roasted|served|spent|stayed|stewed|toasted|waited|went`,
  broughtBy: `ate|had|brought|cooked|dropped|handed|ordered|passed|served|shared|spilled|spilt`,
  storyBetween: `all|also|always|am|are|been|both|busy|ever|had|/had just|has|have|is|never|often|once|only|out|then|used to|was|\
went and|were`,
  beganAnew: `i find/get|i'm/im getting|there's|theres`,
  // Nouns: what whiskeys are called, what holds them, what is round about.
  whiskeyNouns: `base|beginning|centre|cheeks|colour|continuation|front|gums|heart|impression|juice|lips|middle|rest|result|sinuses|teeth|whole|affair|aftertaste|aspect|attack|backbone|beast|blend|body|bourbon|character|core|dram|drink|drop|edge|element|\
ending|entry|experience|feel|feeling|flavor|flavors|flavour|flavours|glow|kick|kind|lad|liquid|little|malt|\
mouthfeel|note|notes|number|one|opening|personality|pour|presence|profile|quality|rye|scotch|sensation|side|\
sort|spirit|start|stuff|style|texture|thing|tone|tones|type|undertone|undertones|whiskey|whisky`,
  noteWords: `aroma|character|flavor|flavour|note|notes|taste|thing|vibe|vibes`,
  bodies: `body|mouthfeel|texture|weight`,
  glasses: `bottle|glass|one|ones`,
  numbered: `glass|number|sample`,
  drinks: `beer|bourbon|brandy|cognac|madeira|port|rum|sherry|wine`,
  wooden: `barrel|barrels|candle|cask|casks|oak|tree|wood|woods`,
  places: `attic|bakery|barn|beach|brewery|byre|cellar|chapel|church|dock|factory|farm|forest|garden|greenhouse|harbor|\
harbour|hedge|hospital|lawn|library|loft|market|meadow|museum|quay|shed|shop|stable|stall|warehouse|wood|woods|\
workshop`,
  surroundings: `bar|bathroom|bathroom's|carpet|clothes|curtains|door|doors|jumper|pub|scarf|sea|shirt|shop|sleeve|window|windows|breath|cork|car|car's|cat|cat's|daughter|dog|dog's|hair|husband|son|wife|cloth|cloth's|day|day's|dishwasher|dishwasher's|ear|ear's|ears|evening|evening's|\
eye|eye's|eyes|face|face's|feet|finger|finger's|fingers|foot|foot's|garden|garden's|glasses|hall|hall's|hand|\
hand's|hands|heating|heating's|house|house's|kitchen|kitchen's|neck|neck's|night|night's|office|office's|pub|\
pub's|radiator|radiator's|room|room's|rooms|sun|sun's|towel|towel's|towels|weather|weather's`,
  fruit: `fruit|fruits`,
  worn: `perfume|cologne|aftershave|lipstick|hand cream|pipe|cigar|cigarette|candle`,
  qualities: `acidity|astringency|bite|burn|fizz|grip|heat|kick|sting|tingle|warmth`,
  smells: `smell|aroma|scent|odour`,
  tasteOf: `taste of|a taste of|the taste of`,
  stones: `stone|stones`,
  sea: `sea`,
  // How much, how long, when.
  amounts: `a lot|a_great_deal/a_lot/great_deal/loads/lot/much/plenty of|all that|many|overly|/so/too much|very`,
  muchMore: `* considerably/deal/far/loads/lot/lots/miles/much/significantly/way`,
  smallStay: `a bit/little/little_bit/moment/second/shade/tad/touch|briefly|for a moment|nicely|slightly|somewhat|well`,
  lengths: `brief|/fairly/quite/really/so/very long|/fairly/quite/really/very short|fleeting|lengthy|longer /than|longish|quick|\
shorter|shortish`,
  plainLengths: `brief|lengthy|long|short`,
  plainly: `clearly|decent|definitely|good|lovely|nice|proper|solid`,
  aboutSo: `about|around|a|good|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|fifty|sixty|half|maybe|\
roughly`,
  waiting: `after|another|gave/give/leave/left/let it|wait|waited`,
  earlier: `/at first|before|earlier|last time|previously|yesterday`,
  endOf: `* end`,
  closers: `again|here|mind|now|this time|though|today|tonight|too`,
  thenNext: `next|now|so|then`,
  listWords: `even|lots|maybe|some|then`,
  // Yes, no and what is put right; ends of what is likened.
  yes: `aye|yeah|yep|yes`,
  isIt: `is|was`,
  itIs: `it's|it is|actually|more|no|rather|i'd say|that's`,
  notAfter: `/are/is not|aren't|isn't|isnt|no`,
  nothings: `absent|missing|nada|nil|none|nothing|nowhere|nowt|zero|zilch|zip`,
  exchanged: `actually|but|it's|its|just|maybe|more /like/of|rather`,
  standAlone: `instead|nah|nope|oops|pardon|sorry|wait|wrong`,
  sorry: `pardon|sorry`,
  ambiguousChange: `down|less|up`,
  likenedTo: `a|an|any|anything|can|hell|you`,
  // How a food was made.
  charred: `burned|burnt|charred|toasted`,
  dusty: `dusty|muddy`,
  salted: `salted`,
  warm: `hot|warm|warmth`,
};
