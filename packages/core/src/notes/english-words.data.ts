import type { WordSet } from "./language.ts";

/**
 * English words of a kind that a rule of the reader asks for. How lists are written: language.ts; "was *" is what begins with "was",
 * "* end" what ends with "end". Common practice, no source.
 */
export const WORDS: Readonly<Record<WordSet, string>> = {
  thatIs: `/all that's|that is/was|thats`,
  isIt: `is|was`,
  lengths: `brief|/fairly/quite/really/so/very long|/fairly/quite/really/very short|fleeting|lengthy|longer /than|longish|quick|shorter|\
shortish`,
  muchMore: `* considerably/deal/far/loads/lot/lots/miles/much/significantly/way`,
  // How much, how long, when.
  amounts: `a lot|a_great_deal/a_lot/great_deal/loads/lot/much/plenty of|all that|many|overly|/so/too much|very`,
  hisHer: `her|his|my|our|their|your`,
  determiners: `a|an|her|his|it|its|my|our|the|their|them|us|your`,
  beforeThing: `a|an|cold|her|his|hot|my|old|the|wet`,
  itGoes: `/and is|/and/but/then it`,
  articles: `a|an|any|hell|my|the devil`,
  others: `he|she|they`,
  an: `a|all|an|can|hell|they`,
  anA: `* a/an`,
  noteWords: `aroma|character|flavor|flavour|note|notes|taste|thing|vibe|vibes`,
  goes: `dies/disappears/goes/gone/leaves/left/over/vanishes/went *`,
  ones: `one|ones`,
  selves: `herself|himself|itself|themselves`,
  salted: `salted`,
  liesOn: `across|across/behind/below/beside/near/on/outside/over/past/through/under the/a|behind|below|beside|from|from the/a|near|on|\
outside|over|past|through|under`,
  ofThe: `of /the`,
  it: `it /is|it's|its|length|you`,
  bids: `endure|persist|remain|stay`,
  of: `of /a/the`,
  somewhere: `by|by/in/off/on/over/somewhere/under the/a|in|off|on|over|somewhere|under`,
  standAlone: `instead|nah|nope|oops|pardon|sorry|wait|wrong`,
  likeA: `like/as /a/an/some/the`,
  listWords: `even|lots|maybe|some|then`,
  nothings: `absent|missing|nada|nil|none|nothing|nowhere|nowt|zero|zilch|zip`,
  someThing: `a|an|my|old|some|the`,
  relative: `that|which|who`,
  fruit: `fruit|fruits`,
  likenedTo: `a|an|any|anything|can|hell|you`,
  itIs: `actually|i'd say|it is|it's|more|no|rather|that's`,
  thenNext: `next|now|so|then`,
  exchanged: `actually|but|it's|its|just|maybe|more /like/of|rather`,
  sea: `sea`,
  ofIt: `of her/him/it/that`,
  numbered: `attempt|batch|glass|mix|number|sample|trial|version`,
  somebody: `everybody|everyone|he|he's|i|i'm|im|my mouth/tongue|she|she's|they|they're|we|we're|you're`,
  burners: `he|i|she|they|we|you`,
  storyTellers: `he|he'd|he's|he've|i|i'd|i'm|i've|id|ive|she|she'd|she's|they|they'd|they're|they've|we|we'd|we're|we've`,
  ofGlass: `from|from/in/of/on the|in|of|on`,
  // Who speaks, tells a story or is told of.
  persons: `he|he's|i|i'm|she|she's|they|they're|we|we're|who|you`,
  ofAThing: `* a/an/her/his/in/my/of/our/some/that/the/their/this/your`,
  becoming: `* going/gone/went`,
  stones: `stone|stones`,
  beganAnew: `i find/get|i'm/im getting|there's|theres`,
  leads: `\
across/aff/around/at/by/during/for/from/in/inside/into/off/on/over/round/through/throughout/to/toward/towards/upon *`,
  leadsIn: `at|/at/by/first/for/in/into/its/my/on/second/the/to/your the/my|by|first|for|in|into|its|on|second|to|your`,
  beforeLength: `a|also|bit|considerably|far|is|just|much|not|rather|so|too|very|was|way|were`,
  // Verbs, by what they say of a flavour, a finish or a story.
  plural: `are/have/were *`,
  wasOrIs: `\
are/did/gives/feel/feels/felt/gave/got/had/has/have/is/seem/seemed/seems/smell/smelled/smells/taste/tasted/tastes/was/were *`,
  waiting: `after|another|gave/give/leave/left/let it|wait|waited`,
  arriving: `along|appear|appeared|appears|arrive|arrived|arrives|back|came|come|comes|/comes/creeps/kicks/sneaks in|coming|\
/creeps/pops/showed/shows/sneaks/turned/turns up|emerge|emerges|hides|hiding|just|mainly|mostly|only|/pops out|return|\
returns|right|sits|surfaces|through|wait|waiting|waits`,
  broughtBy: `ate|brought|cooked|dropped|had|handed|ordered|passed|served|shared|spilled|spilt`,
  reporting: `claims|insists|reckons|said|says|swears|told`,
  plainly: `clearly|decent|definitely|good|lovely|nice|proper|solid`,
  storyBetween: `all|also|always|am|are|been|both|busy|ever|had|/had just|has|have|is|never|often|once|only|out|then|used to|was|went and|\
were`,
  likers: `also|did|didn't|do|don't|i|quite|really|we|you`,
  bites: `bites|glows|grips|kicks|nips|stings`,
  leavesWhat: `a|an|as|behind|early|everything|her|his|it|its|just|little|me|much|my|no|nothing|off|one|only|quickly|room|some|soon|splinters|\
such|the|them|traces|us|you|your`,
  // What stands before the name of a part, of a glass, of a thing or of a feel.
  beforePart: `an|/and/has/in/quite/such/then a|big|its|lovely|nice|rather|real|some|that|the|then|this|with`,
  glasses: `bottle|glass|one|ones`,
  kinds: `kind|one|ones|sort|type`,
  closers: `again|here|mind|now|this time|though|today|tonight|too`,
  beforeSip: `initial|second|third|very`,
  sorry: `pardon|sorry`,
  theThat: `that|the`,
  leavers: `finish|he|it|never|sea|she|smoke|taste|that|this|what|which|who`,
  thingsDo: `arrived|boiled|broke|burned|burnt|came|carried|caught|climbed|crossed|dried|fried|gave|grilled|hid|hung|kept|lay|left|lost|\
met|moved|passed|raised|ran|roasted|served|spent|stayed|stewed|toasted|waited|went`,
  smallStay: `a bit/little/little_bit/moment/second/shade/tad/touch|briefly|for a moment|nicely|slightly|somewhat|well`,
  roundAfter: `all|came|come|comes|folded|gathered|go|goes|going|handed|handing|looked|looking|passed|passing|sat|sitting|tied|turn|turned|\
walked|went|wrapped|year`,
  endOf: `* end`,
  dryingBurning: `burning|drying`,
  people: `everybody|everyone|folk|folks|others|people`,
  beforeParticiple: `also|quite|rather|then`,
  participles: `burning|dripping|drying|glowing|melting|warming`,
  surroundings: `bar|bathroom|bathroom's|breath|car|car's|carpet|cat|cat's|cloth|cloth's|clothes|cork|curtains|daughter|day|day's|dishwasher|\
dishwasher's|dog|dog's|door|doors|ear|ear's|ears|evening|evening's|eye|eye's|eyes|face|face's|feet|finger|finger's|fingers|\
foot|foot's|garden|garden's|glasses|hair|hall|hall's|hand|hand's|hands|heating|heating's|house|house's|husband|jumper|\
kitchen|kitchen's|neck|neck's|night|night's|office|office's|pub|pub|pub's|radiator|radiator's|room|room's|rooms|scarf|sea|\
shirt|shop|sleeve|son|sun|sun's|towel|towel's|towels|weather|weather's|wife|window|windows`,
  coats: `coating|coats|pours|sits|slides`,
  comes: `come|comes`,
  ambiguousChange: `down|less|up`,
  burnsDown: `down|itself|low|out|up`,
  asThe: `as|/as/like/the the|like`,
  tasteOf: `a taste of|taste of|the taste of`,
  plainLengths: `brief|lengthy|long|short`,
  smells: `aroma|odour|scent|smell`,
  // Nouns: what whiskeys are called, what holds them, what is round about.
  whiskeyNouns: `affair|aftertaste|aspect|attack|backbone|base|beast|beginning|blend|body|bourbon|centre|character|cheeks|colour|\
continuation|core|dram|drink|drop|edge|element|ending|entry|experience|feel|feeling|flavor|flavors|flavour|flavours|front|\
glow|gums|heart|impression|juice|kick|kind|lad|lips|liquid|little|malt|middle|mouthfeel|note|notes|number|one|opening|\
personality|pour|presence|profile|quality|rest|result|rye|scotch|sensation|side|sinuses|sort|spirit|start|stuff|style|teeth|\
texture|thing|tone|tones|type|undertone|undertones|whiskey|whisky|whole`,
  notAfter: `/are/is not|aren't|isn't|isnt|no`,
  bodies: `body|mouthfeel|texture|weight`,
  drinks: `beer|bourbon|brandy|cognac|madeira|port|rum|sherry|wine`,
  wasHad: `had/was/were *`,
  warm: `hot|warm|warmth`,
  qualities: `acidity|astringency|bite|burn|fizz|grip|heat|kick|sting|tingle|warmth`,
  wooden: `barrel|barrels|candle|cask|casks|oak|tree|wood|woods`,
  worn: `aftershave|candle|cigar|cigarette|cologne|hand cream|lipstick|perfume|pipe`,
  // Yes, no and what is put right; ends of what is likened.
  yes: `aye|yeah|yep|yes`,
  warms: `glows|warms`,
  ofFeel: `feel|finish|note|notes|side|smell|taste`,
  // How a food was made.
  charred: `burned|burnt|charred|toasted`,
  stays: `remain/remains/rest/rests/stay/stays *`,
  everything: `everybody|everyone|everything|he|she|they|we`,
  kindOf: `kind/sort/type of`,
  pronouns: `it|one|that|them`,
  dusty: `dusty|muddy`,
  earlier: `/at first|before|earlier|last time|previously|yesterday`,
  aboutSo: `a|about|around|eight|fifteen|fifty|five|forty|good|half|maybe|nine|roughly|seven|six|sixty|ten|thirty|twelve|twenty`,
  isNot: `is_not/isn't/isnt/was_not/wasn't *`,
  turned: `around|bit|bite|clean|close|closed|dry|flat|open|polish|round|thin`,
  places: `attic|bakery|barn|beach|brewery|byre|cellar|chapel|church|dock|factory|farm|forest|garden|greenhouse|harbor|harbour|hedge|\
hospital|lawn|library|loft|market|meadow|museum|quay|shed|shop|stable|stall|warehouse|wood|woods|workshop`,
};
