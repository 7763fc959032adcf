/**
 * English words for what a whiskey tastes of, by attribute: singular, lower case, without accents, one space between words. Plurals,
 * possessives and the endings of english-endings.data.ts follow of themselves. A word under two attributes, joined by "+", says both.
 * `word=7` is a strength that the word itself tells (0 to 10). The families and groups and about 300 of the words are the trade's;
 * all of it: common practice, no source.
 */
export const FLAVOURS: Readonly<Record<string, string>> = {
  "grain.cereal": `black bread|bread black|dark bread|bran flake|bran flakes|cereal|grain|oats|oat|oatmeal|oatcake|porridge|bran|cornflake|cornflakes|corn flake|popcorn|cornbread|corn bread|sweet corn|
sweetcorn|corn|corn husk|corn mash|corn chip|corn on the cob|corn oil|polenta|tortilla|taco shell|malt|malted milk|
malted barley|malted|barley|green barley|rye bread|rye|rye grain|rye crisp|pumpernickel|wheat cracker|wheat|
wheat grain|cracked wheat|rice|rice cake|rice cracker|granola|muesli|grits|hominy|maize|buckwheat|spelt|semolina|
couscous|bulgur|mash|mash tun|sour mash|wort|malt loaf|malt extract|malt biscuit|malty biscuit|flapjack|
breakfast cereal|puffed rice|puffed wheat|shredded wheat|hot cereal|cream of wheat|draff|spent grain|grist|chaff|husk|
quinoa|millet|kettle corn|rye cracker|crispbread|grain silo|grain store|malt floor|maltings|feed store|chicken feed|
beer|ale|stout beer|lager|barley wine|brewery|wheat beer|malt drink|ricecake`,
  "grain.bake": `bread crust|bread|toast|toasted bread|toasted brioche|biscuit|shortbread|short bread|
butter cookie|cookie|cookie dough|sugar cookie|oatmeal cookie|pie crust|piecrust|pastry|puff pastry|shortcrust|
short crust|shortcrust pastry|danish pastry|danish|croissant|brioche|pancake|waffle|waffle cone|wafer|dough|
bread dough|yeast|pretzel|sourdough|white bread|brown bread|white toast|soda bread|fresh bread|baked bread|bread roll|
bun|bagel|baguette|crumpet|scone|muffin|english muffin|doughnut|donut|churro|cake|sponge cake|sponge|
sponge finger|victoria sponge|cake batter|cake mix|batter|pancake batter|pound cake|angel cake|cupcake|graham cracker|
digestive biscuit|digestive|digestives|rich tea|rich tea biscuit|tea biscuit|cracker|water biscuit|crust|crusty bread|
flour|baker's yeast|bakery|baker's shop|baker's|bakehouse|cake shop|patisserie|baking bread|baked goods|baked good|
baking|pastries|pie|pie dough|pie shell|tart shell|crumble topping|crumble|cobbler|french toast|bread pudding|
bread and butter pudding|monkey bread|sweet bread|challah|pita|naan|crouton|breadcrumb|bread crumb|loaf|rusk|
melba toast|ladyfinger|biscotti|amaretti biscuit|eclair|profiterole|filo|strudel|turnover|yorkshire pudding|bakewell|
funnel cake|tea cake|teacake|fairy cake|birthday cake|yellow cake|wedding cake|crepe|madeleine|cheesecake base|
biscuit base|sweet pastry|baked pastry|viennoiserie|digestive base`,
  "fruit.orchard": `apple|green apple|red apple|baked apple|apple sauce|applesauce|apple juice|apple skin|apple peel|apple core|apple pip|
apple butter|apple jelly|apple cider|cider|hard cider|scrumpy|granny smith|braeburn|golden delicious|crab apple|
crabapple|cooking apple|cider apple|windfall apple|bruised apple|apple orchard|orchard|orchard fruit|stewed apple|
poached apple|pear|pear drop|peardrop|pear juice|pear skin|poached pear|ripe pear|conference pear|perry|quince|
quince jelly|quince paste|medlar|asian pear|nashi|loquat|pome fruit|calvados|
pear brandy|eau de vie|apple wine|apple puree|apple compote|`,
  "fruit.tropical": `banana|banana bread|banana chip|banana skin|banana peel|banana milkshake|banana milk|banana candy|banana split|
foam banana|fried banana|overripe banana|green banana|plantain|pineapple|pineapple juice|pineapple chunk|
grilled pineapple|mango|mango juice|mango lassi|green mango|papaya|pawpaw|melon|cantaloupe|honeydew|honeydew melon|
watermelon|galia|coconut flesh|bubblegum|bubble gum|passion fruit|passionfruit|guava|lychee|litchi|kiwi|kiwi fruit|
kiwifruit|star fruit|starfruit|dragon fruit|dragonfruit|jackfruit|durian|tropical|tropical fruit|exotic fruit|
tropical juice|tropical punch|fruit punch|fruit salad|fruit cocktail|tinned fruit cocktail|tinned pineapple|
pina colada|soursop|rambutan|mangosteen|tamarillo|tutti frutti`,
  "fruit.stone": `cherry cola|cherry coke|peach|peaches and cream|white peach|peach melba|peach ring|peach skin|peach stone|peach cobbler filling|tinned peach|
canned peach|apricot|apricot jam|apricot stone|plum|plum jam|plum skin|plum sauce|damson|greengage|mirabelle|
victoria plum|sloe|nectarine|cherry|black cherry|maraschino cherry|maraschino|cherries|morello|morello cherry|
sour cherry|tart cherry|red cherry|cherry cough drop|cherry cough syrup|cherry syrup|cherry stone|
cherry pit|glace cherry|candied cherry|cocktail cherry|cherry liqueur|kirsch|cherry brandy|cherry tomato skin|
bing cherry|cherry lozenge|cherry drop|cherry cordial|cherry juice|stone fruit|stonefruit|stewed plum|stewed peach|
brandied cherry|clingstone|peach schnapps|peach tea|peach iced tea`,
  "fruit.berry": `jelly|strawberry|raspberry|blackberry|blueberry|cranberry|redcurrant|red currant|blackcurrant|black currant|cassis|
gooseberry|elderberry|boysenberry|loganberry|mulberry|bilberry|huckleberry|lingonberry|cloudberry|tayberry|acai|goji|
bramble|bramble jam|grape|white grape|red grape|green grape|black grape|grape skin|grape juice|grape jelly|grape must|
concord grape|muscat|muscat grape|jam|jelly baby|jammy|jamminess|jam tart|jam sandwich|berry|berries|red berry|
dark berry|black berry|forest fruit|fruits of the forest|summer fruit|summer pudding|summer berry|wild berry|
mixed berry|red fruit|black fruit|hedgerow fruit|hedgerow|strawberries and cream|strawberry lace|
strawberry jam|raspberry jam|raspberry ripple|raspberry coulis|raspberry sherbet|fruit jam|fruit leather|currant bush|
wine gum|winegum|jelly bean|jellybean|fruit pastille|fruit gum|fruit chew|gummy bear|gummy|gummies|
sangria|mulled fruit|pomegranate|grenadine|
rosehip|rose hip|rosehip syrup|cherryade|cranberry sauce|cranberry juice|red liquorice|red licorice`,
  "fruit.citrus": `lemon|lemon peel|lemon zest|lemon curd|lemon juice|lemon sherbet|lemon drop|lemon meringue|lemon cake|lemon drizzle|
lemon rind|lemon oil|lemon pith|lemon candy|lemon cheesecake|lemon bar|lemon tart|lemon pie|lemonade|lemony|orange|
orange peel|orange zest|orange rind|orange pith|orange oil|orange juice|orange marmalade|orange squash|
chocolate orange|orange soda|orange cream|orange creamsicle|creamsicle|dreamsicle|orange liqueur|
triple sec|curacao|blood orange|burnt orange|seville orange|bitter orange|mandarin|tangerine|clementine|satsuma|
kumquat|candied orange|candied citrus|candied peel|candied lemon|candied orange peel|orange slice|mixed peel|
citrus peel|citrus zest|citrus fruit|citrus oil|citrus rind|citrus pith|marmalade|grapefruit|grapefruit pith|
grapefruit peel|pink grapefruit|pomelo|lime|lime zest|lime juice|lime peel|lime cordial|key lime|key lime pie|
lime sorbet|citrus|citrusy|citric|yuzu|bergamot|earl grey|earl grey tea|citron|limoncello|sherbet|sherbet lemon|zest|
zesty|citronella|limeade|calamansi|orangeade|lemon lime|lemon and lime`,
  "fruit.dried": `dry grape|dry grapes|dried grape|raisin|sultana|date|medjool date|sticky date|fig|dried fig|fig roll|fig jam|prune|prune juice|dried apricot|fruit cake|
fruitcake|christmas cake|xmas cake|christmas pudding|xmas pudding|plum pudding|figgy pudding|mince pie|mincemeat|
mince pies|dundee cake|stollen|panettone|simnel cake|stewed fruit|stewed prune|dried fruit|dried fruits|currant|
dried currant|dried cherry|dried cranberry|dried mango|dried apple|dried banana|dried pineapple|dried peach|dried plum|
dried pear|dried strawberry|dried berry|dried orange|dried citrus|craisin|vine fruit|rum and raisin|rum raisin|
rum soaked raisin|raisin bread|raisin toast|cinnamon raisin|tea loaf|tea bread|fruit loaf|barmbrack|brack|eccles cake|
garibaldi|welsh cake|spotted dick|clootie dumpling|pedro ximenez|px|px sherry|sherry trifle|
muscatel|tokaji|sauternes|trail mix|tamarind|sun dried fruit|rancio|
date syrup|brandied fruit|boozy fruit`,
  "plant.flower": `rose|rose petal|rose water|rosewater|turkish delight|dried rose|pink rose|violet|parma violet|violet cream|honeysuckle|
lavender|elderflower|elderflower cordial|orange blossom|orange flower|orange flower water|cherry blossom|apple blossom|
peach blossom|almond blossom|blossom|linden blossom|lime blossom|hawthorn|may blossom|jasmine|perfume|perfumed|perfumy|
cologne|aftershave|eau de cologne|grandma's perfume|flower|flowers|floral|flowery|flower shop|florist|florist's|
florist shop|fresh flower|cut flower|wild flower|wildflower|dried flower|garden flower|spring flower|white flower|
meadow flower|bouquet of flowers|potpourri|pot pourri|geranium|lilac|lily|lilies|freesia|magnolia|gardenia|hibiscus|
chamomile|camomile|camomile tea|chamomile tea|iris|orris|orris root|heather|heather flower|gorse|buttercup|daisy|
dandelion|clover blossom|carnation|peony|hyacinth|sweet pea|wisteria|acacia|mimosa|ylang ylang|marigold|calendula|
petal|primrose|bluebell|neroli|frangipani|osmanthus|nosegay|hand cream|talc|talcum|talcum powder|face powder|
baby powder`,
  "plant.green": `stable hay|farm|farmyard|farm yard|barn|barnyard|silage|hay barn|grass|grassy|cut grass|mown grass|freshly mown grass|freshly cut grass|fresh cut grass|new mown grass|green grass|
dried grass|dry grass|lawn|lawn clippings|grass clipping|hay|haystack|hay loft|hayloft|hay bale|straw|
meadow|meadow hay|cut leaves|leaf|green leaf|leafy|bracken|fern|nettle|green bean|runner bean|pea|garden pea|pea pod|
pea shoot|snap pea|asparagus|cucumber|celery|tomato leaf|tomato vine|tomato plant|tomato stalk|green tomato|tea|
black tea|green tea|iced tea|ice tea|sweet tea|tea leaf|tea bag|teabag|cold tea|stewed tea|strong tea|breakfast tea|
english breakfast|assam|darjeeling|oolong|matcha|white tea|milky tea|builder's tea|builders tea|pot of tea|cup of tea|
rooibos|green|greenness|vegetal|vegetable|herbaceous|green pepper|bell pepper|green stem|stalk|stem|green stalk|
green pea|lettuce|spinach|watercress|kale|artichoke|olive|green olive|green sap|ivy|hedge|privet|
box hedge|boxwood|blackcurrant leaf|currant leaf|aloe|aloe vera|bamboo|reed|cactus|agave|tequila|alfalfa|clover|hop|
hops|hoppy|unripe|underripe|plant|foliage|garden|greenhouse|dock leaf|vine leaf|fig leaf|potato peel|raw potato|
sunflower|green plant`,
  "plant.herb": `mint|spearmint|peppermint|fresh mint|mint leaf|mint tea|mint candy|mint sauce|mint toffee|mint julep|julep|
mint chocolate|mint choc chip|wintergreen|menthol|toothpaste|mouthwash|chewing gum|mentholated|eucalyptus|eucalypt|
cough drop|cough sweet|cough syrup|cough mixture|cough medicine|throat lozenge|lozenge|vapour rub|vapor rub|dill|
dill pickle|pickle|dill weed|thyme|sage|rosemary|basil|fennel|fennel seed|anise|aniseed|aniseed ball|star anise|
liquorice|licorice|black liquorice|black licorice|liquorice root|licorice root|liquorice allsort|black jack|absinthe|
pastis|ouzo|sambuca|caraway|caraway seed|kummel|aquavit|juniper|juniper berry|gin|gin botanicals|herb|herbal|herbs|
dried herb|fresh herb|mixed herb|herb garden|herbes de provence|herbal tea|herbal liqueur|amaro|vermouth|bitters|
angostura|bay leaf|bay|bay leaves|oregano|marjoram|parsley|coriander leaf|cilantro|tarragon|chervil|lovage|sorrel|
chive|lemon balm|lemon verbena|verbena|lemongrass|lemon grass|borage|camphor|camphorous|hyssop|wormwood|gentian|
root beer|sarsaparilla|sassafras|birch beer|dandelion and burdock|herb liqueur|botanical|mugwort|angelica|feverfew|
pesto`,
  "sweet.sugar": `boiled sweet|boiled sweets|caramel|caramelised|caramelized|caramel sauce|caramel corn|caramel chew|salted caramel|burnt caramel|
dark caramel|soft caramel|sugar|sugary|burnt sugar|burned sugar|brown sugar|dark brown sugar|muscovado|demerara|
turbinado|cane sugar|raw sugar|sugar cane|sugarcane|icing sugar|powdered sugar|white sugar|caster sugar|spun sugar|
rock sugar|palm sugar|caramelised sugar|caramelized sugar|toasted sugar|cooked sugar|sugar syrup|simple syrup|syrup|
corn syrup|toffee|english toffee|treacle toffee|bonfire toffee|cinder toffee|sticky toffee|sticky toffee pudding|
toffee sauce|butterscotch|butter scotch|molasses|black treacle|treacle|treacle tart|maple syrup|maple|maple sugar|
pancake syrup|candyfloss|candy floss|cotton candy|creme brulee|creme caramel|flan|dulce de leche|penuche|marshmallow|
toasted marshmallow|burnt marshmallow|smore|s'more|fudge|vanilla fudge|candy|candy corn|hard candy|candied|
barley sugar|sweetie|sweeties|sweet shop|sweetshop|candy shop|candy store|candy apple|
humbug|rock candy|sugar candy|confectionery|confection|confectioner|jaggery|panela|
agave syrup|agave nectar|meringue|pavlova|millionaire's shortbread|fruit sugar|penny sweet|penny sweets|nougatine|
parkin|gulab jamun`,
  "sweet.honey": `honey|honeyed|honeycomb|honey comb|beeswax honey|nectar|golden syrup|heather honey|clover honey|acacia honey|
wildflower honey|manuka honey|manuka|honey cake|honey roast|honey water|runny honey|mead|honey butter|honey on toast|
burnt honey|dark honey|orange blossom honey|baklava|honeypot|hive|beehive|bee hive|honey nut|pollen|bee pollen|
honey glaze|sweet honey|hot toddy|honey drop|propolis|royal jelly|honey cereal|honey sauce`,
  "sweet.vanilla": `butter cream frosting|buttercream icing|buttercream frosting|butter icing|vanilla|vanilla bean|vanilla pod|vanilla extract|vanilla essence|vanilla cream|vanilla ice cream|vanilla custard|
vanilla pudding|vanilla yoghurt|vanilla frosting|vanilla milkshake|vanilla slice|vanilla sugar|vanilla wafer|
vanilla sponge|vanilla cake|vanillin|custard|custard cream|custard tart|egg custard|creme anglaise|creme patissiere|
pastry cream|ice cream|icecream|cream soda|ice cream cone|ice cream soda|frosting|icing|
cake frosting|blancmange|panna cotta|pannacotta|tapioca pudding|pudding cup|crema catalana|french vanilla|semifreddo|
gelato|soft serve|milkshake|marshmallow fluff|marshmallow cream|rice pudding|eggnog|egg nog`,
  "sweet.dairy": `butter cream|buttercream|buttered|butter|buttery|melted butter|brown butter|browned butter|burnt butter|salted butter|
cream|fresh cream|double cream|single cream|heavy cream|clotted cream|whipped cream|
whipping cream|sour cream|creme fraiche|cream cheese|cream cake|yoghurt|yogurt|greek yoghurt|greek yogurt|yoghurty|
buttermilk|butter milk|condensed milk|evaporated milk|milk|milky|warm milk|fresh milk|milk powder|powdered milk|lactic|
dairy|ghee|mascarpone|ricotta|cheesecake|cheese cake|kefir|curd|cream liqueur|half and half|cream filling|milk bottles|
butterfat|margarine|hollandaise`,
  "sweet.cocoa": `chocolate truffle|truffles|chocolate|chocolatey|chocolaty|milk chocolate|dark chocolate|bitter chocolate|bittersweet chocolate|white chocolate|
hot chocolate|drinking chocolate|chocolate cake|chocolate brownie|brownie|chocolate mousse|chocolate sauce|
chocolate fudge|chocolate ganache|ganache|chocolate bar|chocolate milk|chocolate ice cream|
chocolate chip|chocolate digestive|chocolate pudding|chocolate raisin|chocolate cherry|chocolate caramel|chocolate nut|
chocolate mint|cocoa|cocoa powder|cocoa nib|cocoa butter|cacao|cacao nib|black forest gateau|black forest cake|coffee|
coffee bean|coffee ground|ground coffee|black coffee|instant coffee|roasted coffee|roast coffee|cold coffee|
iced coffee|fresh coffee|stale coffee|coffee cake|coffee liqueur|coffee cream|coffee shop|espresso|ristretto|
cappuccino|latte|latte macchiato|flat white|americano|mocha|tiramisu|chicory coffee|chicory|irish coffee|choc|carob|
mole sauce|chocolate coated`,
  "spice.warm": `hot cross bun|cinnamon gum|clove|cloves|cinnamon|cinnamon stick|cinnamon roll|cinnamon bun|cinnamon toast|cinnamon sugar|cinnamon candy|
cinnamon bark|nutmeg|allspice|all spice|mace|gingerbread|ginger bread|cardamom|cardamon|baking spice|baker's spice|
baking spices|pumpkin spice|pumpkin pie|pumpkin pie spice|apple pie spice|pie spice|holiday spice|christmas spice|
xmas spice|winter spice|mixed spice|mulling spice|mulled wine|mulled cider|gluhwein|spice cake|spiced cake|carrot cake|
snickerdoodle|speculoos|speculaas|lebkuchen|pfeffernusse|chai|chai tea|masala chai|garam masala|warm spice|
warming spice|sweet spice|soft spice|brown spice|wood spice|oak spice|barrel spice|spice|spiced|spicy|spiciness|
spice rack|spice cupboard|spice drawer|spice market|spice box|spice shop|spice cabinet|rye spice|christmas|
ras el hanout|five spice|saffron|turmeric|cassia|tonka|tonka bean|clove oil|clove studded orange|ginger cake|
sticky ginger cake|pain d'epices|spiced biscuit|spiced bun|mulled|exotic spice|eastern spice|oriental spice|dry spice|
christmas market`,
  "spice.sharp": `pepper|peppery|pepperiness|black pepper|white pepper|pink pepper|pink peppercorn|green peppercorn|green peppercorns|
cracked pepper|cracked black pepper|ground pepper|ground black pepper|fresh ground pepper|peppercorn|szechuan pepper|
sichuan pepper|szechuan peppercorn|sichuan peppercorn|pepper spice|cayenne|cayenne pepper|chilli|chili|chile|
chilly pepper|chilli flake|chili flake|chilli powder|chili powder|red pepper flake|hot pepper|jalapeno|habanero|
chipotle|paprika|smoked paprika|hot sauce|sriracha|harissa|ginger|fresh ginger|ground ginger|ginger root|root ginger|
candied ginger|crystallised ginger|crystallized ginger|stem ginger|ginger ale|ginger beer|ginger snap|gingersnap|
ginger nut|ginger biscuit|ginger cookie|gingery|galangal|mustard seed|mustard|english mustard|horseradish|horse radish|
wasabi|radish|cumin|cumin seed|curry leaf|curry|curry powder|curry spice|coriander seed|coriander|hot spice|
sharp spice|wood pepper|peppered steak|rye pepper|nigella|fenugreek|arugula|grains of paradise`,
  "nut.nut": `nut|nutty|nuttiness|almond|almond butter|almond milk|toasted almond|roasted almond|bitter almond|sugared almond|
almond paste|almond croissant|almond extract|almond skin|flaked almond|ground almond|salted almond|burnt almond|
amaretto|frangipane|marzipan|macaroon|orgeat|walnut|walnut skin|walnut oil|walnut bread|walnut shell|walnut cake|
pickled walnut|pecan|candied pecan|pecan pie|toasted pecan|butter pecan|hazelnut|hazelnut spread|noisette|filbert|
peanut|peanut butter|peanut brittle|peanut shell|peanut skin|salted peanut|roasted peanut|dry roasted peanut|
boiled peanut|circus peanut|roasted nuts|roasted nut|roast nut|toasted nut|mixed nut|candied nut|honey roasted nut|
salted nut|nut oil|nut butter|nut brittle|nut bread|praline|brittle|nougat|turron|halva|halvah|tahini|sesame|
sesame seed|sesame oil|toasted sesame|pistachio|cashew|brazil nut|macadamia|chestnut|roast chestnut|roasted chestnut|
beech nut|beechnut|acorn|nut skin|nutshell|nut shell|pine nut|coconut|toasted coconut|coconut milk|coconut cream|
coconut oil|coconut water|desiccated coconut|coconut macaroon|coconut ice|coconut shaving|suntan lotion|suntan oil|
sun tan lotion|sunscreen|sun cream|sun lotion|tanning oil|coconutty|sunflower seed|pumpkin seed|linseed|flaxseed|
poppy seed|gianduja|bakewell tart|nut mix|almond biscuit`,
  "wood.fresh": `unoaked=0|sap|sappy|shavings|oak|oaky|oakiness|american oak|french oak|european oak|white oak|virgin oak|new oak|young oak|fresh oak|raw oak|
green oak|wet oak|oak stave|stave|oak plank|plank|oak chip|oak shaving|oak sap|oak bark|oak extract|sawdust|saw dust|
sawmill|saw mill|timber|timber yard|lumber|lumber yard|lumberyard|woodyard|wood yard|wood shop|woodshop|woodwork|
woodwork room|woodworking shop|carpenter's shop|carpenter's workshop|carpentry|carpenter|joiner's shop|workshop|
green wood|freshly cut wood|fresh wood|fresh cut wood|cut wood|raw wood|wet wood|new wood|wood|woody|woodiness|
wood chip|wood shaving|wood pulp|wood bark|woodland bark|wood sap|bark|tree bark|pencil|pencil shavings|pencil shaving|
pencil sharpener|pencil lead|pencil case|cedar|cedarwood|cedar wood|cedar chest|cedar closet|cedar plank|sandalwood|
sandal wood|pine|piney|pine needle|pine sap|pine resin|pine cone|pine tree|pine wood|pine forest|pinewood|
christmas tree|fir|fir tree|spruce|spruce tip|conifer|cypress|larch|resin|resinous|resiny|plywood|ply wood|chipboard|
mdf|particle board|balsa|balsam|balsa wood|birch|birch wood|beech wood|ash wood|maple wood|cherry wood|cherrywood|
hickory wood|mahogany|teak|walnut wood|rosewood|lolly stick|lollipop stick|popsicle stick|ice lolly stick|
tongue depressor|toothpick|cocktail stick|wooden spoon|twig|forest|splinter|hamster cage|hamster bedding|
rabbit hutch|new furniture|flat pack furniture|fence panel|fence post|garden fence|sauna|sap wood`,
  "wood.toasted": `wood of the barrel|wood of barrel|cask wood|barrel|toasted oak|toasted wood|toasted barrel|toasty oak|toasty wood|toast oak|roasted oak|roasted wood|charred oak|
charred wood|charred barrel|charred cask|charred stave|charry oak|charred|char|barrel char|oak char|heavy char|
alligator char|burnt oak|burnt wood|burned wood|burnt stick|burnt barrel|singed wood|scorched wood|scorched oak|
oak barrel|oak cask|bourbon barrel|barrel room|barrel house|barrel wood|cooperage|cooper's shop|rickhouse|rick house|
bonded warehouse|campfire ember|ember|glowing embers|dying embers|charcoal|barbecue charcoal|char coal|
charcoal briquette|carbon|toasted stave|seasoned oak|seasoned wood|caramelised oak|caramelized oak|sweet oak|warm oak|
dark oak|toasty|toastiness|toasted|black oak|smouldering oak`,
  "wood.old": `sideboard|dusty wood|old wood|old oak|aged oak|aged wood|antique wood|ancient wood|dry old wood|old timber|old barrel|old cask|
old barn wood|barn wood|barnwood|old furniture|antique furniture|dusty furniture|antique|antique shop|antique store|
antiques shop|wardrobe|old wardrobe|old drawer|old cupboard|old chest|old desk|old bureau|old dresser|old chair|
old table|polished wood|polished oak|polished furniture|polished table|polished floor|waxed floor|waxed wood|
furniture polish|wood polish|beeswax polish|furniture wax|wood wax|varnished wood|varnished|wood varnish|
lacquered wood|shellac|cigar box|humidor|church pew|pew|church|old church|old chapel|chapel|cathedral|incense|
frankincense|myrrh|sacristy|vestry|pulpit|mushroomy cellar|cellar|old cellar|wine cellar|dunnage|dunnage warehouse|
old warehouse|attic|loft|old attic|grandfather clock|old piano|piano|old violin|rosin|old house|old room|
panelled room|wood panelling|wood paneling|oak panelling|oak panel|wood stain|cedar box|cedar cigar box|museum|
old boat|old ship|ship's hold|driftwood|mothball|old cabinet|old school desk|school desk|gun stock|stately home|
dry wood|dried wood|tired wood|tired oak|woodworm|rotten wood|rotting wood|old shed`,
  "smoke.smoke": `unpeated=0|unsmoked=0|non peated=0|smokeless=0|smoke free=0|peat free=0|log fire|open fire|wood fire|smoke|smoky|smokey|smokiness|smoked|peat|peaty|peated|peatiness|peat smoke|peat reek|peat fire|peat bog|reek|
wood smoke|woodsmoke|woodfire|log burner|wood burner|fireplace|fire place|fireside|hearth|
chimney|chimney sweep|coal smoke|coal fire|coal|coal tar|coal dust|coal bunker|steam train|steam engine|bonfire|
bon fire|camp fire|campfire|fire pit|firepit|beach fire|beach bonfire|bonfire night|autumn bonfire|guy fawkes night|
bacon|smoky bacon|smoked bacon|bacon fat|bacon crisp|ham|smoked ham|smoked meat|smoked sausage|smoked fish|
smoked salmon|kipper|kippers|smoked haddock|smoked mackerel|smokehouse|smoke house|smoked cheese|smoked almond|
smoked tea|lapsang|lapsang souchong|lapsang souchong tea|hickory|hickory smoke|mesquite|mesquite smoke|applewood smoke|
ash|ashy|ashen|ashes|ashtray|ash tray|cigarette|cigarette smoke|cigarette ash|cigarette butt|cigar ash|cigar smoke|
cold ash|wood ash|cold fire|cold fireplace|dead fire|dying fire|put out fire|wet ash|barbecue|barbeque|bbq|bbq smoke|
barbecue smoke|bbq sauce|barbecue sauce|bbq rib|bbq pit|barbecued meat|grill|grilled meat|chargrill|char grilled|
chargrilled meat|brisket|burnt end|pulled pork|jerky|beef jerky|burnt toast|burned toast|burnt|burned|burnt meat|
burnt leaf|burning leaves|burnt leaves|burning wood|burnt paper|soot|sooty|tar|tarry|tarred rope|hot tar|road tar|
roof tar|creosote|mezcal|house fire|bonfire smoke|candle smoke|blown out candle|snuffed candle|snuffed out candle|
smouldering|smoldering|smoulder|singed|engine smoke|exhaust|exhaust smoke|firework smoke|incense smoke|pipe smoke|
tobacco smoke|turf smoke|turf fire|turf|smoke bomb|smog|oily smoke|sweet smoke`,
  "smoke.medicinal": `sea fog|sea mist|fog off the sea|salt fog|haar|iodine|antiseptic|disinfectant|phenol|phenolic|phenols|carbolic|carbolic soap|medicinal|medicine|medicine cabinet|
medicine chest|medical|hospital|hospital ward|hospital corridor|hospital bandage|doctor's surgery|doctor's office|
dentist|dentist's|dentist's chair|dentist's office|dental surgery|pharmacy|chemist's|chemist shop|first aid kit|
first aid box|first aid|plaster|sticking plaster|bandage|gauze|surgical tape|ointment|liniment|balm|swimming pool|
chlorine|pool water|seaweed|sea weed|kelp|nori|dulse|samphire|sea vegetable|brine|briny|brininess|brined|brackish|
sea salt|sea|sea water|seawater|salt water|saltwater|sea air|sea breeze|sea spray|seaspray|ocean|ocean air|ocean spray|
ocean breeze|salt spray|salt air|salty air|salt marsh|maritime|marine|coastal|coast|coastline|seaside|sea shore|
seashore|sea front|beach|harbour|harbor|fishing port|fishing boat|fishing net|fishing harbour|fisherman's wharf|
fish market|fishy|quay|quayside|dock|dockside|jetty|pier|rock pool|rockpool|tide pool|low tide|tidal pool|shore|shell|
seashell|sea shell|oyster|oyster shell|oyster liquor|mussel|clam|crab|prawn|shellfish|anchovy|sardine|old rope|
wet rope|rope|ship's rope|tarred ship|boatyard|olive brine|pickle brine|caper|boat shed|sail cloth|salt cod|
fishing tackle`,
  "earth.earth": `flint|black truffle|white truffle|truffle|farm track|earth|earthy|earthiness|damp earth|wet earth|dry earth|dark earth|black earth|fresh earth|dug earth|turned earth|soil|
damp soil|wet soil|potting soil|potting compost|compost|compost heap|humus|loam|dirt|wet dirt|mud|muddy|peat moss|bog|
swamp|marsh|mushroom|mushroomy|dried mushroom|porcini|shiitake|truffle oil|fungus|fungal|
beetroot|beet|beets|turnip|parsnip|carrot|root vegetable|root veg|roots|root|potato|potato skin|potato sack|wet stone|
wet rock|wet slate|wet gravel|wet pavement|wet concrete|stone|stony|stoniness|pebble|gravel|slate|granite|flinty|
rock dust|limestone|clay|terracotta|clay pot|flowerpot|flower pot|plant pot|petrichor|rain on stone|
rain on hot pavement|summer rain|after the rain|rain|moss|mossy|lichen|forest floor|woodland floor|woodland|
woods after rain|undergrowth|leaf mould|leaf mold|leaf litter|wet leaves|damp leaves|fallen leaves|dead leaves|
dry leaves|dried leaves|autumn leaves|fall leaves|rotting leaves|autumn forest|sous bois|mineral|minerals|minerally|
minerality|mineral water|chalk dust|iron|rust|rusty nail|metal|metallic|copper|copper coin|penny|pennies|coin|steel|
tin can|tinny|blood|graphite|stable yard|manure|horse manure|potting shed|garden shed|
garden soil|cave|crypt|graveyard|ginseng|bean sprout|vetiver|patchouli|sand|dusty|dustiness|brick|brick dust|
concrete`,
  "earth.leather-and-leaf": `old horse|horse sweat|leather|leathery|leather chair|leather armchair|leather sofa|leather bound book|leather bound books|leather jacket|
leather belt|leather boot|leather shoe|leather glove|leather wallet|leather couch|leather seat|leather shop|
old leather|new leather|worn leather|soft leather|polished leather|suede|saddle|saddle leather|saddle soap|saddlery|
saddle room|tack|tack room|horse tack|horse saddle|stable|horse stable|horse blanket|bridle|cricket ball|
baseball glove|baseball mitt|catcher's mitt|shoe shop|shoe polish|boot polish|shoe leather|cobbler's shop|cobbler's|
car seat leather|old car|old car seat|tobacco|tobacco leaf|tobacco leaves|tobacco pouch|tobacco tin|tobacco shop|
tobacco barn|tobacconist|tobacconist's|pipe tobacco|cherry tobacco|cherry pipe tobacco|vanilla tobacco|rolling tobacco|
chewing tobacco|sweet tobacco|dried tobacco|wet tobacco|dark tobacco|fresh tobacco|cured tobacco|snuff|pipe|
grandfather's pipe|old pipe|cigar|cigar wrapper|cigar leaf|cigar lounge|unlit cigar|unsmoked cigar|cuban cigar|havana|
gentleman's club|gentlemen's club|old book|old books|books|bookshop|old bookshop|second hand bookshop|
used bookstore|bookstore|library|old library|old paper|paper|papery|parchment|manuscript|vellum|newspaper|
old newspaper|study|old study|dry tobacco leaf|whip leather`,
  "savoury.sulphur": `book of matches|matches|spent rocket|struck match|spent match|match head|matchhead|matchbox|lit match|burnt match|blown out match|sulphur|
sulfur|sulphury|sulphurous|sulfury|sulfurous|sulphuric|sulfuric|rubber|rubbery|rubber band|rubber tyre|burnt rubber|
burning rubber|bicycle tyre|bike tyre|tyre|inner tube|wellington boot|welly boot|hot water bottle rubber|
cabbage|cabbagey|boiled cabbage|cooked cabbage|brussels sprout|sprout|sauerkraut|broccoli|boiled egg|egg|eggy|egginess|
rotten egg|bad egg|boiled eggs|hard boiled egg|egg sandwich|egg salad|drain|drains|drainy|sewer|sewage|swamp gas|
gunpowder|gun powder|cordite|firecracker|cap gun|gun smoke|gunsmoke|firework|fireworks|fart|farty|flatulence|
stink bomb|meaty|meatiness|meat|meat stock|stock cube|beef|beefy|beef stock|beef broth|broth|bouillon|gravy|roast meat|
roast beef|roast pork|roast lamb|roast chicken|steak|grilled steak|sausage|game|gamey|gamy|pate|savoury|savory|
umami|soy sauce|soy|soya|soya sauce|miso|worcestershire sauce|worcester sauce|hoisin|teriyaki|yeast extract|onion|
onions|onion skin|garlic|garlicky|leek|fried onion|onion soup|asafoetida|mercaptan`,
  "savoury.fat": `lanolin|soap|soapy|soapiness|hand soap|bar of soap|dish soap|washing up liquid|detergent|laundry|fresh laundry|shampoo|
candle wax|candlewax|candle|wax|waxy|waxiness|wax crayon|crayon|wax jacket|waxed jacket|waxed paper|wax paper|beeswax|
bees wax|paraffin wax|sealing wax|lip balm|lipstick|wool|wet wool|sheep wool|sheep|wool jumper|vegetable oil|
cooking oil|olive oil|sunflower oil|rapeseed oil|linseed oil|mineral oil|baby oil|sewing machine oil|machine oil|
engine oil|motor oil|gun oil|grease|greasy|axle grease|oil can|fried fat|frying fat|fat|fatty|fattiness|lard|suet|
tallow|beef fat|dripping|beef dripping|duck fat|goose fat|chip fat|chip pan|chip shop|deep fryer|fryer|fried food|
french fry|french fries|fries|chips|crisps|potato chip|potato crisp|pork scratching|pork rind|crackling|cheese rind|
parmesan rind|cheese wax|face cream|cold cream|hand lotion|lotion|putty|petroleum jelly|oil paint`,
  "savoury.sour-and-sweaty": `vinegar|vinegary|balsamic vinegar|balsamic|malt vinegar|white vinegar|wine vinegar|cider vinegar|acetic|acetic acid|
pickled onion|pickled|pickling vinegar|kombucha|kimchi|sour milk|off milk|spoiled milk|spoilt milk|curdled milk|
sour dairy|baby sick|baby vomit|sick|vomit|puke|bile|butyric|sweat|sweaty|sweatiness|body odour|body odor|gym bag|
gym sock|gym shoe|gym locker|locker room|changing room|armpit|old trainer|old trainers|trainers|sock|old sock|
old socks|sweaty sock|dirty sock|socks|smelly feet|feet|goat|goaty|urine|cat pee|cat urine|cat piss|
ammonia|cheese|cheesy|blue cheese|stilton|parmesan|cheddar|goat cheese|goat's cheese|strong cheese|old cheese|brie|
camembert|sour cheese|rancid|rancid butter|rancidity|wet dog|damp dirty dog|sour beer|stale beer|lambic|
rotting fruit|rotten fruit|off fruit`,
  "savoury.stale": `mouldy carpet|old carpet|cardboard|cardboardy|wet cardboard|damp cardboard|cardboard box|wet paper|damp paper|musty|mustiness|mouldy|moldy|
mould|mold|mildew|mildewy|corked|cork|corky|cork taint|damp cloth|wet cloth|wet rag|dish rag|dishcloth|dish cloth|
wet towel|damp towel|old towel|damp cellar|damp basement|basement|damp room|damp house|damp cupboard|damp wool|
wet carpet|damp carpet|stale|staleness|stale nuts|stale nut|stale bread|stale biscuit|stale cracker|stale air|
stale tobacco|old nuts|rancid nut|cooked vegetables|cooked vegetable|boiled vegetable|overcooked vegetable|
canned vegetable|tinned vegetable|canned corn|vegetable soup|oxidised|oxidized|oxidation|dishwater|dish water|
washing up water|stagnant water|pond|pond water|pondwater|damp|dampness|dank|fusty|old fridge|old flannel|hessian|
burlap|sackcloth|jute sack|old sack|musty cupboard|musty room|old clothes|charity shop|thrift store|old coat|
old blanket|vacuum bag|vacuum cleaner bag|stale water`,
  "spirit.heads": `felt tip pen|felt tip|varnish|lacquer|nail varnish|nail varnish remover|nail polish|nail polish remover|acetone|paint thinner|paint|paint stripper|wet paint|
fresh paint|gloss paint|turpentine|turps|white spirit|thinners|glue|gluey|superglue|super glue|model glue|
model aeroplane glue|airplane glue|wood glue|solvent|solventy|solvents|ethyl acetate|ester|estery|petrol|
petrol station|gasoline|gas station|kerosene|paraffin|diesel|lighter fluid|lighter fuel|jet fuel|fuel|white gas|
fuel oil|plastic|plasticky|plastic bag|plastic wrap|pvc|new car|new car smell|shower curtain|inflatable|marker pen|
permanent marker|magic marker|ink|hairspray|hair spray|hair lacquer|bleach|chemical|chemically|
chemicals|cleaning fluid|dry cleaner|dry cleaning|polyester|epoxy|naphtha|benzene|xylene|spray paint|
window cleaner|floor cleaner|household cleaner|artificial`,
  "spirit.ethanol": `alcohol|alcoholic|booze|boozy|booziness|ethanol|rubbing alcohol|surgical spirit|raw spirit|raw alcohol|neutral spirit|
grain spirit|new make|newmake|new make spirit|white dog|moonshine|vodka|hot nose|prickle|prickly|prickliness|
nose prickle|nose burn|nose tingle|nose sting|spirity|spirituous|spiritous|spirit|alcohol heat|alcohol burn|
alcohol bite|alcohol vapour|alcohol vapor|alcohol fumes|ethanol burn|ethanol heat|ethanol bite|ethanolic|fumes|vapour|
vapor|vapours|stings the nose|sting in the nose|hand sanitiser|hand sanitizer|sanitizer|sanitiser|hand gel|meths|
methylated spirit|poitin|schnapps|grappa|alcohol wipe|alcohol swab|alcohol pad|alcoholic burn`,
  "taste.basic": `unsweet=0|unsweetened=0|sweet|sweetness|sweetly|sugariness|semi sweet|bittersweet|bitter sweet|off dry|sickly sweet=7.5|sickly=7.5|cloying=8|
saccharine=7|syrupy sweet|sweetish=3.2|dry|bone dry=8|dryish=3.2|sour|sourness|sourish=3.2|tart|tartness|acid|acidic|
acidity|tangy|tang|tanginess|bitter|bitterness|bitterish=3.2|salt|salty|saltiness|saline|salinity|salted|savoury taste|
savory taste|sweet and sour|sweet sour|sour sweet`,
  "feel.weight": `chewy|bigger body|big body=7.5|medium weight=5|nice weight|good weight|some weight|a lot of weight=7.5|real weight=7|thin=2|thinness=2|thinnish=2.5|watery=2|wateriness=2|insubstantial=2|wispy=2|light=3|light bodied=3|
light body=3|light on the tongue=3|lightness=3|medium=5|medium bodied=5|medium body=5|middling body=5|
full=7|full bodied=7.5|full body=7.5|weighty=7|big bodied=7.5|heavy bodied=7.5|heavy body=7.5|oily|
oiliness|oil|oily texture|slick|slippery|unctuous=7|creamy|creaminess|silky|silk|silkiness|silken|satin|satiny|
syrupy=7|viscous=7|viscosity|thick=7|thickness|dense=7|gloopy=7|chewiness=7|coating|mouth coating|
mouthcoating|coats the mouth|coats the tongue|coats my mouth|coats my tongue|coats your mouth|coats everything|
coats the palate|coats the glass|coating the mouth|lush|plush|mouth filling=7|mouthfilling=7|
fills the mouth=7|buttery texture|buttery mouthfeel|creamy texture|sticky|stickiness|gelatinous|meagre=2|skinny=2|
diluted=2|dilute=2|watered down=2|hefty=7.5|substantial=7`,
  "feel.burn": `strips paint|strip paint|kick|warm|warmth|warming|warmly|warms|warm glow|glow|glowing|kentucky hug|hot|heat|burning=7.5|burn|burns=7|
burned my mouth=7.5|burny|fiery=8|scorching=8|searing=8|scalding=8|blazing=8|numbing|numb|numbness|
numbs|anaesthetic|anesthetic|tingly|tingle|tingling|tingles|tingliness|fizzy|fizz|fizziness|effervescent|effervescence|
sparkling|sparkly|spritzy|prickle on the tongue|prickles the tongue|peppery burn|stinging|sting|stings|bite|bites|
biting=7|punchy=7|popping candy|space dust|pop rocks|ethanol kick|boozy heat|chest warmth|afterburn|
aggressive=7.5`,
  "feel.pull": `chalk|dryness on the tongue|sucks the moisture|dryness in the mouth|mouth dry|dry mouth|tannic|tannin|tannins|tanninic|drying|dries|dries out|dries the mouth|dries my mouth|dries your mouth|dries the tongue|
mouth drying|drying mouth|astringent|astringency|grippy|grip|grips|gripping|chalky|chalkiness|puckering|pucker|
puckery|puckers|mouth puckering|velvety=2.5|velvet=2.5|smooth=2.5|smoothness|smoothly|supple|furry|furry tongue|fuzzy tongue|
sandpaper|sandpapery|powdery|powdery texture|gritty|cotton mouth|cottonmouth|rasping|raspy|tannic grip|parching|
parched|leaves the mouth dry|leaves my mouth dry|makes my mouth dry|mouth feels dry|dry tongue|dusty mouth|
stewed tannin|tea tannin|glides|gliding`,
  "time.finish": `fading sweet|fading bitter|
lingering spice|clean finish|fading sweetness|fading bitterness|`,
  "time.finish+feel.burn": `hot finish`,
  "time.finish+wood.fresh": `lingering oak`,
  "whole.balance": `raw|shut down|balanced|balance|well balanced|imbalanced|unbalanced|off balance|out of balance|harmonious|harmony|integrated|
well integrated|disjointed|cohesive|coherent|harsh|harshness|mellow|mellowness|round|rounded|roundness|well rounded|
rough|roughness|rough edges|rough edge|sharp|sharpness|edgy|spiky|soft|softness|delicate|delicacy|
refined|bold|boldness|assertive|complex|complexity|layered|many layers|multi layered|depth|deep|
simple|simplicity|one dimensional|one note|single note|straightforward|straight forward|uncomplicated|linear|flat|
flatness|closed|closed up|open|opens up|opened up|opening up|muddled|clean|
cleanness|pure|lively|liveliness|vibrant|bright|brightness|tired|tiredness|lifeless|past its best|young|youth|youthful|
youthfulness|immature|mature|maturity|well aged|over oaked|overoaked|over wooded|under oaked|underoaked|
rich|richness|fresh|freshness|crisp|crispness|heavy|heaviness|rugged|rustic|robust|polished|hollow|
austere|brash|`,
};
