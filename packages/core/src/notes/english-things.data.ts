/** Words that are flavours nowhere and stand beside words that are. Singular, "|" between. Common practice, no source. */

/** Scots, American and hurried ways to write the small words. */
export const SPELLINGS: Readonly<Record<string, string>> = {
  o: "of",
  "o'": "of",
  wi: "with",
  w: "with",
  tae: "to",
  sae: "so",
  frae: "from",
  fae: "from",
  oot: "out",
  aff: "off",
  doon: "down",
  mooth: "mouth",
  noo: "now",
  disnae: "doesn't",
  wisnae: "wasn't",
  hings: "hangs",
  aboot: "about",
  efter: "after",
  afore: "before",
  ken: "know",
  richt: "right",
  ye: "you",
  yer: "your",
  wis: "was",
  mair: "more",
  guid: "good",
  thru: "through",
  tho: "though",
  alot: "a lot",
  nae: "no",
  aw: "all",
  its: "it's",
  cant: "can't",
  cannot: "can't",
  dont: "don't",
  doesnt: "doesn't",
  didnt: "didn't",
  isnt: "isn't",
  wasnt: "wasn't",
  werent: "weren't",
  arent: "aren't",
  hasnt: "hasn't",
  havent: "haven't",
  hadnt: "hadn't",
  wouldnt: "wouldn't",
  couldnt: "couldn't",
  wont: "won't",
  im: "i'm",
  ive: "i've",
  thats: "that's",
  theres: "there's",
  whats: "what's",
  wheres: "where's",
  aint: "ain't",
  flavor: "flavour",
  color: "colour",
  odor: "odour",
  neighbor: "neighbour",
  colored: "coloured",
  rumor: "rumour",
  rumored: "rumoured",
  humor: "humour",
};

/** "By attic I mean musty", "when I say the jetty I mean seaweed". */
export const TEACHING = {
  by: `by|when i say|where i say|when i write|with`,
  mean: `i mean|i always mean|i really mean|i usually mean|i'd mean|we mean|we always mean`,
  nothing: `nothing|nothing at all|no flavour|no flavor|nothing in particular`,
};

/** Abbreviations whose full stop ends no sentence. */
export const SHORTENED = `v|med|lt|sl|approx|esp|incl|vs|no|nr|poss|prob|def|mr|mrs|ms|dr|st|etc|eg|ie|bit`;

/** What a flavour's word before it only describes: "an oak table", "a peaty friend", "a plum dress", "the smoke alarm". */
export const THINGS = `label|smoker|smokers|stub|tube|cutout|drawing|cat|cats|kitten|kittens|pony|tom|friend|friends|mate|mates|pal|pals|buddy|man|men|woman|women|guy|guys|girl|girls|boy|boys|lad|lads|lass|uncle|aunt|auntie|
cousin|neighbour|neighbor|boss|bloke|chap|fellow|lady|ladies|lover|lovers|fan|fans|fiend|fiends|freak|freaks|head|heads|fanatic|nut|crowd|
people|person|folk|folks|brigade|camp|voice|laugh|laughter|smile|face|eyes|humour|humor|joke|jokes|mood|remark|shirt|dress|jumper|
sweater|cardigan|coat|hat|tie|scarf|curtain|curtains|cushion|cushions|hair|trousers|shoelace|colour|color|coloured|colored|hue|tint|
tinted|sky|sunset|sunrise|moon|alarm|alarms|detector|detectors|signal|signals|screen|machine|break|breaks|street|road|lane|avenue|square|
hill|creek|valley|county|picking|picked|picker|pickers|season|grower|growers|eyed|faced|hearted|haired|minded|handed|tongued|skinned|
phone|records|jazz|band|film|story|stories|crumble recipe|recipe|recipes|diet|allergy|competition|festival|merchant|salesman|seller|
bombshell|sort of person|vote|voters|bandana|tape|deal|argument|debate|subject|red|brown|grey|gray|pink|yellow|purple|blue|blonde|blond|drab|lamp|lamps|walls|wall|sofa|shade of|trail|rings|day|days|evening|evenings|night|nights|afternoon|morning|mornings|summer|summers|winter|weather|room|rooms|bath|bed|oven|stove|sun|sunshine|climate|country|meal|lunch|dinner|supper|breakfast|soup|blanket|welcome|heart|hearts|hands|fingers|temper|tears|truth|week|weeks|holiday|journey|walk|drive|spell|reception|water`;

/** The same, but for a note that says what the glass is like: "like an old oak table". */
export const SCENERY = `table|tables|chair|chairs|bench|desk|door|doors|floor|floors|floorboards|bar|counter|shelf|shelves|stool|beam|beams|bed|
tree|trees|mug|cup|cups|pot|pots|pan|pans|board|bowl|box|boxes|stopper|rig|bowls|jug|tray|plate|plates|spoon|towel|towels|bag|bags|bottle|bottles|glass|glasses|
mill|grinder|shaker|van|truck|lorry|stall|stand|queue|farm|farmer|field|fields|grove|plantation|tent|window|bin|basket|stain|stains`;

/** Flavours' words that are given names too. */
export const PEOPLE = `rose|rosemary|ginger|olive|basil|hazel|violet|lily|iris|daisy|heather|jasmine|ivy|sage|clementine|cherry|pepper|
honey|candy|brandy|peaches|plum|moss|clay|woody|dill|juniper|fern|petal|saffron|nutmeg|cinnamon|toffee|fudge|biscuit|bramble|
hunter|smokey|smoky|sandy|rusty|dusty|poppy|holly|amber|willow|bay|mace|cocoa|coco|pickle|pickles|mango|pete|barney|brandi|rye|reed`;

/** What people do and flavours do not. */
export const DEEDS = `gave|came|comes|brings|reckons|reckoned|says|said|thinks|thought|swears|swore|brought|brings us|told|tells|asked|asks|poured|pours|opened|laughed|laughs|
wants|wanted|loves|loved|hates|hated|knows|knew|insists|insisted|agrees|agreed|disagrees|claims|claimed|called|sent|bought|barked|sat|
walked|arrived late|wrote|writes|likes|liked|prefers|preferred|guessed|guesses|voted|spilled|spilt|dropped by|phoned|texted|disagreed|
noted|mentioned|mentions|whispered|shouted|cooked|baked|snored|sneezed|went home|won|joined|left us|picked up|and i|and me`;

/** What somebody did in a story: "we sat by the fire". */
export const TOLD = `sat|made|cut|paid|knocked|works|rinsed|brushed|sitting|liked|licked|chewing|drank with|stood|walked|drove|lived|worked|met|grew up|ran|played|wore|cooked|ate|sold|bought|kept|lit|smoked|burned|burnt|dropped|
spilled|spilt|forgot|lost|hung|carried|brought|gave|handed|passed|cleaned|washed|painted|varnished|polished|mowed|chopped|peeled|sliced|dug|
planted|fed|rode|fished|sailed|camped|stayed|visited|spent|watched|listened|sang|danced|slept|woke|baked|fried|roasted|grilled|toasted|
boiled|stewed|brewed|built|mended|repaired|dried|hired|hid|stole|broke|threw|caught|raised|chewed|lay|leaned against|crossed|climbed|swam|
paddled|moved|travelled|flew|served|shared|ordered|nibbled|munched|scoffed|shovelled|swept|hosed|queued|waited|arrived|left|went|came home|likes|loves|hates|drinks|eats|grows|keeps|queue|fries|bakes|cooks|picking|cutting|chopping|peeling|cooking|baking|frying|grilling|lighting|burning|painting|cleaning|planting|mowing|eating|watering|feeding|selling|buying|burning|roasting|toasting`;
