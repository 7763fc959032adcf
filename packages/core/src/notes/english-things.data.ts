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
  hasnae: "hasn't",
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
  by: `by|when i say|when i write|where i say|with`,
  mean: `i always mean|i mean|i really mean|i usually mean|i'd mean|we always mean|we mean`,
  nothing: `no flavor|no flavour|nothing|nothing at all|nothing in particular`,
};

/** Abbreviations whose full stop ends no sentence. */
export const SHORTENED = `approx|bit|def|dr|eg|esp|etc|ie|incl|lt|med|mr|mrs|ms|no|nr|poss|prob|sl|st|v|vs`;

/** What a flavour's word before it only describes: "an oak table", "a peaty friend", "a plum dress", "the smoke alarm". */
export const THINGS = `
bombshell|
cousin|
hill|
people|
phone|
sweater|
tinted|afternoon|alarm|alarms|allergy|argument|aunt|auntie|avenue|band|bandana|bath|bed|blanket|bloke|blond|blonde|blue|boss|boy|boys|break|breaks|brigade|brown|buddy|camp|cardigan|cat|cats|chap|climate|coat|color|colored|colour|coloured|competition|country|county|creek|crowd|crumble recipe|curtain|curtains|cushion|cushions|cutout|day|days|deal|debate|detector|detectors|diet|dinner|drab|drawing|dress|drive|evening|evenings|eyed|eyes|face|faced|fan|fanatic|fans|fellow|festival|fiend|fiends|film|fingers|folk|folks|freak|freaks|friend|friends|girl|girls|gray|grey|grower|growers|guy|guys|hair|haired|handed|hands|hat|head|heads|heart|hearted|hearts|holiday|hue|humor|humour|jazz|joke|jokes|journey|jumper|kitten|kittens|label|lad|ladies|lads|lady|lamp|lamps|lane|lass|laugh|laughter|lover|lovers|lunch|machine|man|mate|mates|men|merchant|minded|mood|moon|morning|mornings|neighbor|neighbour|night|nights|nut|oven|pal|pals|person|picked|picker|pickers|picking|pink|pony|purple|reception|recipe|recipes|records|red|remark|rings|room|rooms|salesman|scarf|screen|season|seller|shade of|shirt|shoelace|signal|signals|skinned|sky|smile|smoker|smokers|sofa|sort of person|soup|spell|square|stories|story|stove|street|stub|subject|summer|summers|sunrise|sunset|sunshine|supper|tape|tears|temper|tie|tint|tom|tongued|trail|trousers|truth|uncle|valley|voice|vote|voters|walk|wall|walls|weather|week|weeks|welcome|winter|woman|women|yellow`;

/** The same, but for a note that says what the glass is like: "like an old oak table". */
export const SCENERY = `
mill|
tree|bag|bags|bar|basket|beam|beams|bed|bench|bin|board|bottle|bottles|bowl|bowls|box|boxes|chair|chairs|counter|cup|cups|desk|door|doors|farm|farmer|field|fields|floor|floorboards|floors|glass|glasses|grinder|grove|jug|lorry|mug|pan|pans|plantation|plate|plates|queue|rig|shaker|shelf|shelves|spoon|stain|stains|stall|stand|stool|stopper|table|tables|tent|towel|towels|tray|trees|truck|van|window`;

/** Flavours' words that are given names too. */
export const PEOPLE = `
honey|
hunter|amber|barney|basil|bay|biscuit|bramble|brandi|brandy|candy|cherry|cinnamon|clay|clementine|coco|cocoa|daisy|dill|dusty|fern|fudge|ginger|hazel|heather|holly|iris|ivy|jasmine|juniper|lily|mace|mango|moss|nutmeg|olive|peaches|pepper|petal|pete|pickle|pickles|plum|poppy|reed|rose|rosemary|rusty|rye|saffron|sage|sandy|smokey|smoky|toffee|violet|willow|woody`;

/** What people do and flavours do not. */
export const DEEDS = `
noted|
walked|
wants|agreed|agrees|and i|and me|arrived late|asked|asks|baked|barked|bought|brings|brings us|brought|called|came|claimed|claims|comes|cooked|disagreed|disagrees|dropped by|gave|guessed|guesses|hated|hates|insisted|insists|joined|knew|knows|laughed|laughs|left us|liked|likes|loved|loves|mentioned|mentions|opened|phoned|picked up|poured|pours|preferred|prefers|reckoned|reckons|said|sat|says|sent|shouted|sneezed|snored|spilled|spilt|swears|swore|tells|texted|thinks|thought|told|voted|wanted|went home|whispered|won|writes|wrote`;

/** What somebody did in a story: "we sat by the fire". */
export const TOLD = `
boiled|
paddled|
planted|
spilled|arrived|ate|baked|bakes|baking|bought|brewed|broke|brought|brushed|built|burned|burning|burning|burnt|buying|came home|camped|carried|caught|chewed|chewing|chopped|chopping|cleaned|cleaning|climbed|cooked|cooking|cooks|crossed|cut|cutting|danced|drank with|dried|drinks|dropped|drove|dug|eating|eats|fed|feeding|fished|flew|forgot|fried|fries|frying|gave|grew up|grilled|grilling|grows|handed|hates|hid|hired|hosed|hung|keeps|kept|knocked|lay|leaned against|left|licked|lighting|liked|likes|listened|lit|lived|lost|loves|made|mended|met|moved|mowed|mowing|munched|nibbled|ordered|paid|painted|painting|passed|peeled|peeling|picking|planting|played|polished|queue|queued|raised|ran|repaired|rinsed|roasted|roasting|rode|sailed|sang|sat|scoffed|selling|served|shared|shovelled|sitting|slept|sliced|smoked|sold|spent|spilt|stayed|stewed|stole|stood|swam|swept|threw|toasted|toasting|travelled|varnished|visited|waited|walked|washed|watched|watering|went|woke|wore|worked|works`;
