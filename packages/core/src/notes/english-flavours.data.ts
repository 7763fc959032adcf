/**
 * English words for what a whiskey tastes of, by attribute: singular, lower case, without accents, one space between words. Plurals,
 * possessives and the endings of english-endings.data.ts follow of themselves. A word under two attributes, joined by "+", says both.
 * `word=7` is a strength that the word itself tells (0 to 10). The families and groups and about 300 of the words are the trade's;
 * all of it: common practice, no source.
 */
export const FLAVOURS: Readonly<Record<string, string>> = {
  "grain.cereal": `black bread|bread black|dark bread|bran flake|cereal|grain|oat|oatmeal|oatcake|porridge|bran|
cornflake|corn flake|popcorn|cornbread|corn bread|sweet corn|sweetcorn|corn|corn husk|corn mash|corn chip|
corn on the cob|corn oil|polenta|tortilla|taco shell|malt|malted milk|malted barley|malted|barley|green barley|
rye bread|rye|rye grain|rye crisp|pumpernickel|wheat cracker|wheat|wheat grain|cracked wheat|rice|rice cake|
rice cracker|granola|muesli|grits|hominy|maize|buckwheat|spelt|semolina|couscous|bulgur|mash|mash tun|sour mash|wort|
malt loaf|malt extract|malt biscuit|malty biscuit|flapjack|breakfast cereal|puffed rice|puffed wheat|shredded wheat|
hot cereal|cream of wheat|draff|spent grain|grist|chaff|husk|quinoa|millet|kettle corn|rye cracker|crispbread|
grain silo|grain store|malt floor|maltings|feed store|chicken feed|beer|ale|stout beer|lager|barley wine|brewery|
wheat beer|malt drink|ricecake|barleycorn|cornmeal|tamale|toasted grain|oat biscuit|oat milk|raw grain|damp grain|
warm grain|graininess|grainfield|cornfield|wheatfield|wholegrain|wholemeal|wholemeal bread|wholewheat|basmati|
horse feed|malthouse|malt barn|kiln floor|brewhouse|brew house|pilsner|home brew|homebrew|barley tea|rye flour|
rye toast|amaranth|sorghum|flour mill|cornbread crust|bean flour`,
  "grain.bake": `bread crust|bread|toast|toasted bread|toasted brioche|biscuit|shortbread|short bread|butter cookie|
cookie|cookie dough|sugar cookie|oatmeal cookie|pie crust|piecrust|pastry|puff pastry|shortcrust|short crust|
shortcrust pastry|danish pastry|danish|croissant|brioche|pancake|waffle|waffle cone|wafer|dough|bread dough|yeast|
pretzel|sourdough|white bread|brown bread|white toast|soda bread|fresh bread|baked bread|bread roll|bun|bagel|
baguette|crumpet|scone|muffin|english muffin|doughnut|donut|churro|cake|sponge cake|sponge|sponge finger|
victoria sponge|cake batter|cake mix|batter|pancake batter|pound cake|angel cake|cupcake|graham cracker|
digestive biscuit|digestive|rich tea|rich tea biscuit|tea biscuit|cracker|water biscuit|crust|crusty bread|flour|
baker's yeast|bakery|baker's shop|baker's|bakehouse|cake shop|patisserie|baking bread|baked good|baking|pie|pie dough|
pie shell|tart shell|crumble topping|crumble|cobbler|french toast|bread pudding|bread and butter pudding|monkey bread|
sweet bread|challah|pita|naan|crouton|breadcrumb|bread crumb|loaf|rusk|melba toast|ladyfinger|biscotti|
amaretti biscuit|eclair|profiterole|filo|strudel|turnover|yorkshire pudding|bakewell|funnel cake|tea cake|teacake|
fairy cake|birthday cake|yellow cake|wedding cake|crepe|madeleine|cheesecake base|biscuit base|sweet pastry|
baked pastry|viennoiserie|digestive base|breadiness|buttermilk biscuit|shortcake|choux|currant bun|fresh rolls|
white rolls|ciabatta|focaccia|flatbread|chapati|roti|oat cookie|butter biscuit|petit beurre|financier|genoise|
yeastiness|doughiness|beignet|fritter|dumpling|fresh bake|farl|potato bread|soda farl|potato scone|streusel|saltine|
cream cracker|poppadom|popover|sugar wafer|steamed pudding|suet pudding|bake shop`,
  "fruit.orchard": `pear drop|apple|green apple|red apple|baked apple|applesauce|apple core|apple pip|apple butter|
cider|hard cider|scrumpy|granny smith|braeburn|golden delicious|crab apple|crabapple|cooking apple|cider apple|
windfall apple|bruised apple|apple orchard|orchard|orchard fruit|stewed apple|poached apple|pear|peardrop|
poached pear|ripe pear|conference pear|perry|quince|quince paste|medlar|asian pear|nashi|loquat|pome fruit|calvados|
pear brandy|eau de vie|apple wine|pippin|russet|bramley|pink lady|apple cellar|apple loft|apple sweet|apple schnapps|
sliced apple|windfall|comice|membrillo|sharon fruit|white fruit|green fruit|apple pie filling`,
  "fruit.tropical": `banana|banana bread|banana chip|banana milkshake|banana milk|banana split|foam banana|
fried banana|overripe banana|green banana|plantain|pineapple|pineapple chunk|grilled pineapple|mango|mango lassi|
green mango|papaya|pawpaw|melon|cantaloupe|honeydew|honeydew melon|watermelon|galia|coconut flesh|bubblegum|
bubble gum|passion fruit|passionfruit|guava|lychee|litchi|kiwi|kiwi fruit|kiwifruit|star fruit|starfruit|dragon fruit|
dragonfruit|jackfruit|durian|tropical|tropical fruit|exotic fruit|fruit punch|fruit salad|fruit cocktail|
tinned fruit cocktail|tinned pineapple|pina colada|soursop|rambutan|mangosteen|tamarillo|tutti frutti|banana custard|
banana ester|banana sweet|banana toffee|banana cream|candied pineapple|charentais|passionfruit curd|tropical sweet|
exotic|tinned fruit|fruity gum|custard apple|cashew fruit|banoffee`,
  "fruit.stone": `stone fruity|cherry cola|cherry coke|peach|peaches and cream|white peach|peach melba|peach ring|
peach cobbler filling|tinned peach|canned peach|apricot|plum|damson|greengage|mirabelle|victoria plum|sloe|nectarine|
cherry|black cherry|maraschino cherry|maraschino|cherries|morello|morello cherry|sour cherry|tart cherry|red cherry|
cherry cough drop|cherry cough syrup|glace cherry|candied cherry|cocktail cherry|kirsch|cherry brandy|
cherry tomato skin|bing cherry|stone fruit|stonefruit|stewed plum|stewed peach|brandied cherry|clingstone|
peach schnapps|peach tea|peach iced tea|peach yoghurt|doughnut peach|apricot yoghurt|plum cheese|umeboshi|damson gin|
damson cheese|sloe gin|cherry sweet|cherry bakewell|boozy cherry|cherry pie filling`,
  "fruit.berry": `jelly|strawberry|raspberry|blackberry|blueberry|cranberry|redcurrant|red currant|blackcurrant|
black currant|cassis|gooseberry|elderberry|boysenberry|loganberry|mulberry|bilberry|huckleberry|lingonberry|
cloudberry|tayberry|acai|goji|bramble|grape|white grape|red grape|green grape|black grape|grape must|concord grape|
muscat|muscat grape|jam|jelly baby|jamminess|jam sandwich|berry|red berry|dark berry|black berry|forest fruit|
fruits of the forest|summer fruit|summer pudding|summer berry|wild berry|mixed berry|red fruit|black fruit|
hedgerow fruit|hedgerow|strawberries and cream|strawberry lace|raspberry ripple|raspberry coulis|fruit jam|
fruit leather|currant bush|wine gum|winegum|jelly bean|jellybean|fruit pastille|fruit gum|fruit chew|gummy bear|gummy|
sangria|mulled fruit|pomegranate|grenadine|rosehip|rose hip|cherryade|red liquorice|red licorice|berry pie|
berry smoothie|blackberry pie|blackcurrant sweet|white currant|strawberry sweet|strawberry yoghurt|strawberry pencil|
woodland strawberry|raspberry sweet|raspberryade|blueberry pie|jelly sweet|gum drop|gumdrop|pastilles|fruit drop|
forest berry|grapiness|rowanberry|sea buckthorn|currant jelly|cherry berry|jam doughnut|jam donut`,
  "fruit.citrus": `orange peel|candied orange peel|lemon peel|lemon|lemon curd|lemon drizzle|lemon bar|lemon pie|
lemonade|orange|orange marmalade|orange squash|chocolate orange|orange soda|orange cream|orange creamsicle|creamsicle|
dreamsicle|triple sec|curacao|blood orange|burnt orange|seville orange|bitter orange|mandarin|tangerine|clementine|
satsuma|kumquat|candied orange|candied citrus|candied peel|candied lemon|mixed peel|citrus fruit|marmalade|grapefruit|
pink grapefruit|pomelo|lime|key lime|key lime pie|citrus|citric|yuzu|bergamot|earl grey|earl grey tea|citron|
limoncello|sherbet|sherbet lemon|zest|citronella|limeade|calamansi|orangeade|lemon lime|lemon and lime|lemon sweet|
lemon cream|lemon tea|lemon barley|lemon cheese|lemon butter|lemon shortbread|lemon wax|lemon balsam|pickled lemon|
salted lemon|lime curd|lime pickle|kaffir lime|margarita mix|mojito|daiquiri|orange sweet|bergamot tea|sherbet straw|
citrus cleaner|st clement's|paloma`,
  "fruit.dried": `dry grape|dried grape|raisin|sultana|date|medjool date|sticky date|fig|dried fig|fig roll|prune|
dried apricot|fruit cake|fruitcake|christmas cake|xmas cake|christmas pudding|xmas pudding|plum pudding|mince pie|
mincemeat|dundee cake|stollen|panettone|simnel cake|stewed fruit|stewed prune|dried fruit|currant|dried currant|
dried cherry|dried cranberry|dried mango|dried apple|dried banana|dried pineapple|dried peach|dried plum|dried pear|
dried strawberry|dried berry|dried orange|dried citrus|craisin|vine fruit|rum and raisin|rum raisin|rum soaked raisin|
raisin bread|raisin toast|cinnamon raisin|tea loaf|tea bread|fruit loaf|barmbrack|brack|eccles cake|garibaldi|
welsh cake|spotted dick|clootie dumpling|pedro ximenez|px|px sherry|sherry trifle|muscatel|tokaji|sauternes|trail mix|
tamarind|sun dried fruit|rancio|brandied fruit|boozy fruit|yoghurt raisin|date loaf|date square|pitted date|
currant loaf|fruit bread|fruit slice|fruit pudding|fruit bun|fruit scone|christmas fruit|christmas mincemeat|
suet mincemeat|plum duff|clootie|black bun|sultana bran|apricot leather|panforte|cream sherry|oloroso|marsala|madeira|
port wine|tawny port|old port|mulled raisin|fruit mince|soaked fruit|steeped fruit|macerated fruit|fruit dried|
plum dry|fruit dry|dry fruit`,
  "plant.flower": `rose|rose petal|rose water|rosewater|turkish delight|dried rose|pink rose|violet|parma violet|
violet cream|honeysuckle|lavender|elderflower|elderflower cordial|orange blossom|orange flower|orange flower water|
cherry blossom|apple blossom|peach blossom|almond blossom|blossom|linden blossom|lime blossom|hawthorn|may blossom|
jasmine|perfume|perfumed|cologne|aftershave|eau de cologne|grandma's perfume|flower|flowers|floral|flower shop|
florist|florist shop|fresh flower|cut flower|wild flower|wildflower|dried flower|garden flower|spring flower|
white flower|meadow flower|bouquet of flowers|potpourri|pot pourri|geranium|lilac|lily|freesia|magnolia|gardenia|
hibiscus|chamomile|camomile|camomile tea|chamomile tea|iris|orris|orris root|heather|heather flower|gorse|buttercup|
daisy|dandelion|clover blossom|carnation|peony|hyacinth|sweet pea|wisteria|acacia|mimosa|ylang ylang|marigold|
calendula|petal|primrose|bluebell|neroli|frangipani|osmanthus|nosegay|hand cream|talc|talcum|talcum powder|
face powder|baby powder|flower garden|hedge flower|hedgerow flower|tropical flower|rose garden|rose jam|rose syrup|
rose oil|rose cream|rosebud|tea rose|violet sweet|violet candy|violet leaf|violet soap|violet syrup|lavender oil|
jasmine tea|tuberose|night stock|sweet william|snapdragon|foxglove|lupin|hydrangea|hollyhock|cornflower|narcissus|
petunia|begonia|camellia|azalea|rhododendron|chrysanthemum|dahlia|orchid|lotus|plumeria|heliotrope|verbena flower|
linden|lime flower|lime tree|meadowsweet|cow parsley|clover flower|whin|yellow broom|heathland|pear blossom|
plum blossom|perfumery|bath salts|bath bomb|bubble bath|dusting powder|powder puff|powdery floral|flower stall|
immortelle`,
  "plant.green": `rhubarb|stable hay|farm|farmyard|farm yard|barn|barnyard|silage|hay barn|grass|cut grass|mown grass|
freshly mown grass|freshly cut grass|fresh cut grass|new mown grass|green grass|dried grass|dry grass|lawn|
lawn clippings|grass clipping|hay|haystack|hay loft|hayloft|hay bale|straw|meadow|meadow hay|cut leaves|leaf|
green leaf|bracken|fern|nettle|green bean|runner bean|pea|garden pea|pea pod|pea shoot|snap pea|asparagus|cucumber|
celery|tomato leaf|tomato vine|tomato plant|tomato stalk|green tomato|tea|black tea|green tea|iced tea|ice tea|
sweet tea|tea leaf|tea bag|teabag|cold tea|stewed tea|strong tea|breakfast tea|english breakfast|assam|darjeeling|
oolong|matcha|white tea|milky tea|builder's tea|builders tea|pot of tea|cup of tea|rooibos|green|vegetal|vegetable|
herbaceous|green pepper|bell pepper|green stem|stalk|stem|green stalk|green pea|lettuce|spinach|watercress|kale|
artichoke|olive|green olive|green sap|ivy|hedge|privet|box hedge|boxwood|blackcurrant leaf|currant leaf|aloe|
aloe vera|bamboo|reed|cactus|agave|tequila|alfalfa|clover|hop|hoppy|unripe|underripe|plant|foliage|garden|greenhouse|
dock leaf|vine leaf|fig leaf|potato peel|raw potato|sunflower|green plant|dry grassland|lawnmower|hayfield|haymaking|
rush mat|raffia|wicker|wicker basket|cowshed|cow shed|cow byre|byre|stable straw|cowpat|cow pat|cow dung|dung|
horse dung|slurry|fresh leaves|hedgerow leaves|mushy pea|sugar snap|mange tout|broad bean|french bean|bean pod|
edamame|courgette|zucchini|celeriac|rhubarb crumble|tannic tea|sencha|gunpowder tea|pu erh|puerh|yerba mate|tea caddy|
veg|veggie|green veg|green capsicum|capsicum|pepper stalk|plant sap|chlorophyll|wheatgrass|wheat grass|barley grass|
spirulina|cabbage leaf|dandelion leaf|dandelion stalk|blackcurrant bush|fig tree|leylandii|box bush|sedge|papyrus|
hemp|cannabis|marijuana|tapenade|avocado|herbage|hop flower|hop oil|sap green|glasshouse|polytunnel`,
  "plant.herb": `mint|spearmint|peppermint|fresh mint|mint tea|mint toffee|mint julep|julep|mint chocolate|
mint choc chip|wintergreen|menthol|toothpaste|mouthwash|chewing gum|mentholated|eucalyptus|eucalypt|cough drop|
cough sweet|cough syrup|cough mixture|cough medicine|throat lozenge|lozenge|vapour rub|vapor rub|dill|dill pickle|
pickle|dill weed|thyme|sage|rosemary|basil|fennel|anise|aniseed|aniseed ball|star anise|liquorice|licorice|
black liquorice|black licorice|liquorice allsort|black jack|absinthe|pastis|ouzo|sambuca|caraway|kummel|aquavit|
juniper|juniper berry|gin|gin botanicals|herb|herbal|dried herb|fresh herb|mixed herb|herb garden|herbes de provence|
herbal tea|amaro|vermouth|bitters|angostura|bay|oregano|marjoram|parsley|coriander leaf|cilantro|tarragon|chervil|
lovage|sorrel|chive|lemon balm|lemon verbena|verbena|lemongrass|lemon grass|borage|camphor|camphorous|hyssop|wormwood|
gentian|root beer|sarsaparilla|sassafras|birch beer|dandelion and burdock|botanical|mugwort|angelica|feverfew|pesto|
mint sweet|mint cream|mint choc|garden mint|peppermint cream|peppermint tea|candy cane|chest rub|muscle rub|
throat sweet|throat pastille|cough candy|eucalyptus sweet|gum tree|tea tree|gherkin|cornichon|lemon thyme|sagebrush|
burnt sage|fennel tea|fennel pollen|aniseed sweet|anisette|raki|arak|liquorice sweet|liquorice toffee|liquorice tea|
liquorice wood|licorice rope|licorice tea|salt liquorice|salted liquorice|salty liquorice|salty licorice|salmiak|
pontefract cake|allsorts|caraway bread|caraway rye|tonic water|tonic|quinine|sloe leaf|genever|jenever|herb butter|
bouquet garni|medicinal herb|herbal medicine|herbal sweet|herbalist|monastery liqueur|green liqueur|aperitivo|
orange bitters|tincture|laurel leaf|curry plant|parsley stalk|borage flower|camphorated|burdock|dandelion root|
valerian|myrtle|bog myrtle|sweet gale|yarrow|woodruff|sweet woodruff|ground ivy|catnip|stevia leaf|shiso|perilla|
summer savory|birch sap|birch bark|sassafras tea|ginseng tea`,
  "sweet.sugar": `boiled sweet|caramel|caramelised|caramelized|caramel corn|salted caramel|salt caramel|burnt caramel|
dark caramel|soft caramel|sugar|burnt sugar|burned sugar|brown sugar|dark brown sugar|muscovado|demerara|turbinado|
cane sugar|raw sugar|sugar cane|sugarcane|icing sugar|powdered sugar|white sugar|caster sugar|spun sugar|rock sugar|
palm sugar|caramelised sugar|caramelized sugar|toasted sugar|cooked sugar|simple syrup|syrup|corn syrup|toffee|
english toffee|treacle toffee|bonfire toffee|cinder toffee|sticky toffee|butterscotch|butter scotch|molasses|
black treacle|treacle|maple|maple sugar|pancake syrup|candyfloss|candy floss|cotton candy|creme brulee|creme caramel|
flan|dulce de leche|penuche|marshmallow|toasted marshmallow|burnt marshmallow|smore|s'more|fudge|vanilla fudge|candy|
candy corn|hard candy|candied|barley sugar|sweetie|sweet shop|sweetshop|candy shop|candy store|humbug|rock candy|
confection|confectioner|jaggery|panela|agave syrup|agave nectar|meringue|pavlova|millionaire's shortbread|fruit sugar|
penny sweet|nougatine|parkin|gulab jamun|sweets|tablet|scottish tablet|toffee crisp|toffee brittle|caramelisation|
caramelization|caramelised onion|caramel wafer|caramel custard|sugar crust|piloncillo|gobstopper|candy cigarette|
sweet jar|seaside rock|honeycomb toffee|hokey pokey|sponge candy|praline sugar|sugared|sticky glaze|icing glaze|
lollipop|lolly|ice lolly|popsicle|cola cube|cola bottle|kola kube|love heart|dolly mixture|parma sweet|sticky pudding|
blackstrap|black strap|date molasses|pekmez|fructose|glucose|dextrose|stroopwafel|brandy snap|florentine|nougat bar|
turkish sweet|halwa|jalebi|sweet potato|pecan syrup`,
  "sweet.honey": `honey|honeyed|honeycomb|honey comb|beeswax honey|nectar|golden syrup|heather honey|clover honey|
acacia honey|wildflower honey|manuka honey|manuka|honey roast|honey water|runny honey|mead|honey butter|
honey on toast|burnt honey|dark honey|orange blossom honey|baklava|honeypot|hive|beehive|bee hive|honey nut|pollen|
bee pollen|sweet honey|hot toddy|propolis|royal jelly|honey cereal|honey blossom|honeydrip|beekeeper|apiary|honey bun|
honey bread|honeycombed|forest honey|chestnut honey|lime honey|lavender honey|thyme honey|metheglin|ambrosia|
flapjack syrup|honeysweet`,
  "sweet.vanilla": `butter cream frosting|buttercream icing|buttercream frosting|butter icing|vanilla|vanilla bean|
vanilla cream|vanilla custard|vanilla yoghurt|vanilla milkshake|vanilla sugar|vanilla wafer|vanillin|custard|
custard cream|egg custard|creme anglaise|creme patissiere|pastry cream|ice cream|icecream|cream soda|ice cream cone|
ice cream soda|frosting|icing|cake frosting|blancmange|panna cotta|pannacotta|pudding cup|crema catalana|
french vanilla|semifreddo|gelato|soft serve|milkshake|marshmallow fluff|marshmallow cream|rice pudding|eggnog|egg nog|
vanilla yogurt|custard pie|custard doughnut|vanilla caramel|tapioca|junket|zabaglione|sabayon|creme pat|pudding mix|
instant pudding|knickerbocker glory|malted milkshake|vanilla malt|white cake|sugar icing|cake icing|butter frosting|
cream frosting|cupcake frosting|marshmallow creme|cream horn|cream puff|arctic roll|semolina pudding|milk pudding|
horchata|advocaat`,
  "sweet.dairy": `butter cream|buttercream|buttered|butter|melted butter|brown butter|browned butter|burnt butter|
salted butter|cream|fresh cream|double cream|single cream|heavy cream|clotted cream|whipped cream|whipping cream|
sour cream|creme fraiche|cream cheese|cream cake|yoghurt|yogurt|greek yoghurt|greek yogurt|buttermilk|butter milk|
condensed milk|evaporated milk|milk|warm milk|fresh milk|milk powder|powdered milk|lactic|dairy|ghee|mascarpone|
ricotta|cheesecake|cheese cake|kefir|curd|cream liqueur|half and half|cream filling|milk bottles|butterfat|margarine|
hollandaise|creamed|butterscotchy|beurre noisette|noisette butter|farm butter|salty butter|creme chantilly|chantilly|
coffee creamer|creamer|goat milk|baby formula|lassi|labneh|skyr|fromage frais|cottage cheese|clotted|butter cake|
alfredo|bechamel|white sauce|creamed rice|creamy yoghurt|butter mint`,
  "sweet.cocoa": `chocolate truffle|truffles|chocolate|milk chocolate|dark chocolate|bitter chocolate|
bittersweet chocolate|white chocolate|hot chocolate|drinking chocolate|chocolate brownie|brownie|chocolate fudge|
chocolate ganache|ganache|chocolate bar|chocolate milk|chocolate chip|chocolate digestive|chocolate raisin|
chocolate cherry|chocolate caramel|chocolate nut|chocolate mint|cocoa|cocoa nib|cocoa butter|cacao|cacao nib|
black forest gateau|coffee|coffee bean|coffee ground|ground coffee|black coffee|instant coffee|roasted coffee|
roast coffee|cold coffee|iced coffee|fresh coffee|stale coffee|coffee cream|coffee shop|espresso|ristretto|cappuccino|
latte|latte macchiato|flat white|americano|mocha|tiramisu|chicory coffee|chicory|irish coffee|choc|carob|
chocolate coated|chocolate coin|chocolate egg|easter egg|chocolate cream|chocolate wafer|chocolate malt|
baking chocolate|milk choc|fudge cake|mud pie|mud cake|black forest|sachertorte|rocky road|cocoa shell|cocoa husk|
nibs|coffee sweet|coffee fudge|coffee toffee|cold brew|crema|macchiato|cortado|mokka|affogato|opera cake|mole|
toffee mocha|malted chocolate|chocolatey malt`,
  "spice.warm": `hot cross bun|cinnamon gum|clove|cinnamon|cinnamon stick|cinnamon roll|cinnamon bun|cinnamon toast|
cinnamon sugar|cinnamon candy|cinnamon bark|nutmeg|allspice|all spice|mace|gingerbread|ginger bread|cardamom|cardamon|
baking spice|baker's spice|pumpkin spice|pumpkin pie|pumpkin pie spice|apple pie spice|pie spice|holiday spice|
christmas spice|xmas spice|winter spice|mixed spice|mulling spice|mulled wine|mulled cider|gluhwein|spice cake|
spiced cake|carrot cake|snickerdoodle|speculoos|speculaas|lebkuchen|pfeffernusse|chai|chai tea|masala chai|
garam masala|warm spice|warming spice|sweet spice|soft spice|brown spice|wood spice|oak spice|barrel spice|spice|
spiced|spicy|spiciness|spice rack|spice cupboard|spice drawer|spice market|spice box|spice shop|spice cabinet|
rye spice|christmas|ras el hanout|five spice|saffron|turmeric|cassia|tonka|tonka bean|clove oil|clove studded orange|
ginger cake|sticky ginger cake|pain d'epices|spiced biscuit|spiced bun|mulled|exotic spice|eastern spice|
oriental spice|dry spice|christmas market|spice merchant|spice bread|spice cookie|spice biscuit|spiced cider|
spice tea|christmas cookie|christmas biscuit|yuletide|cinnamon biscuit|cinnamon mint|cinnamon toothpick|
cinnamon cereal|cinnamon cookie|clove cigarette|kretek|cloved ham|clove ham|nutmeg shell|allspice berry|pimento berry|
jerk seasoning|ginger loaf|gingerbread man|parkin cake|pepper biscuit|pumpkin bread|pumpkin latte|cardamom bun|
cardamom coffee|cardamom tea|chai latte|masala tea|tagine|baharat|za'atar|quatre epices|cake spice|biscuit spice|
cookie spice|dutch biscuit|spekulatius|spiced teacake|asafran|incense spice|spicy wood`,
  "spice.sharp": `pepper|pepperiness|black pepper|white pepper|pink pepper|pink peppercorn|green peppercorn|
cracked pepper|cracked black pepper|ground pepper|ground black pepper|fresh ground pepper|peppercorn|szechuan pepper|
sichuan pepper|szechuan peppercorn|sichuan peppercorn|pepper spice|cayenne|cayenne pepper|chilli|chili|chile|
chilly pepper|chilli flake|chili flake|chilli powder|chili powder|red pepper flake|hot pepper|jalapeno|habanero|
chipotle|paprika|smoked paprika|hot sauce|sriracha|harissa|ginger|fresh ginger|ground ginger|ginger root|root ginger|
candied ginger|crystallised ginger|crystallized ginger|stem ginger|ginger ale|ginger beer|ginger snap|gingersnap|
ginger nut|ginger biscuit|ginger cookie|galangal|mustard seed|mustard|english mustard|horseradish|horse radish|wasabi|
radish|cumin|cumin seed|curry leaf|curry|curry powder|curry spice|coriander seed|coriander|hot spice|sharp spice|
wood pepper|peppered steak|rye pepper|nigella|fenugreek|arugula|grains of paradise|peppered|peppery bite|pepper steak|
pepper jelly|pepper jam|peppered salami|pepperoni|chilli jam|chilli oil|chili oil|chilli heat|chili heat|
scotch bonnet|hot wings|buffalo sauce|piri piri|peri peri|chilli crisp|kimchi spice|gochujang|gochugaru|szechuan|
sichuan|mala|melegueta|peppermill|ginger tea|ginger jam|ginger sweet|ginger candy|ginger marmalade|ginger syrup|
ginger parkin|pickled ginger|mustard oil|dijon|mustard greens|watercress bite|nasturtium|rocket salad|madras|vindaloo|
korma|asafetida|cajun spice|taco seasoning|taco spice|wasabi pea|capsaicin`,
  "nut.nut": `nut|nuttiness|almond|almond butter|almond milk|toasted almond|roasted almond|bitter almond|
sugared almond|almond paste|almond croissant|flaked almond|ground almond|salted almond|burnt almond|amaretto|
frangipane|marzipan|macaroon|orgeat|walnut|walnut bread|walnut shell|pickled walnut|pecan|candied pecan|pecan pie|
toasted pecan|butter pecan|hazelnut|hazelnut spread|noisette|filbert|peanut|peanut butter|peanut brittle|peanut shell|
salted peanut|roasted peanut|dry roasted peanut|boiled peanut|circus peanut|roasted nut|roast nut|toasted nut|
mixed nut|candied nut|honey roasted nut|salted nut|nut butter|nut brittle|nut bread|praline|brittle|nougat|turron|
halva|halvah|tahini|sesame|toasted sesame|pistachio|cashew|brazil nut|macadamia|chestnut|roast chestnut|
roasted chestnut|beech nut|beechnut|acorn|nutshell|nut shell|pine nut|coconut|toasted coconut|coconut milk|
coconut cream|coconut water|desiccated coconut|coconut macaroon|coconut ice|coconut shaving|suntan lotion|suntan oil|
sun tan lotion|sunscreen|sun cream|sun lotion|tanning oil|sunflower seed|pumpkin seed|poppy seed|gianduja|
bakewell tart|nut mix|nut loaf|nocino|almond flour|smoked almonds|marcona|battenberg|simnel|amaretti|walnut husk|
walnut loaf|walnut pickle|hazelnut butter|hazelnut cream|hazelnut wafer|hazelnut shell|satay|beer nut|groundnut|
honey nuts|cinnamon nut|cashew cream|cashew butter|pistachio cream|pine kernel|chestnut cream|chestnut flour|
marrons glaces|beech mast|chia|hemp seed|sunflower kernel|seed bar|bird seed|birdseed|coco butter|coconut husk|
coconut shampoo|coconut soap|coconut mushroom|coconut pie|coconut rice|tanning lotion|sun oil|after sun|aftersun|
sun block|sunblock|beach lotion`,
  "wood.fresh": `unoaked=0|sap|sappy|shavings|oak|oaky|oakiness|american oak|french oak|european oak|white oak|
virgin oak|new oak|young oak|fresh oak|raw oak|green oak|wet oak|oak stave|stave|oak plank|plank|oak chip|oak shaving|
oak sap|oak bark|oak extract|sawdust|saw dust|sawmill|saw mill|timber|timber yard|lumber|lumber yard|lumberyard|
woodyard|wood yard|wood shop|woodshop|woodwork|woodwork room|woodworking shop|carpenter's shop|carpenter's workshop|
carpentry|carpenter|joiner's shop|workshop|green wood|freshly cut wood|fresh wood|fresh cut wood|cut wood|raw wood|
wet wood|new wood|wood|woodiness|wood chip|wood shaving|wood pulp|wood bark|woodland bark|wood sap|bark|tree bark|
pencil|pencil shaving|pencil sharpener|pencil lead|pencil case|cedar|cedarwood|cedar wood|cedar chest|cedar closet|
cedar plank|sandalwood|sandal wood|pine|pine needle|pine sap|pine resin|pine cone|pine tree|pine wood|pine forest|
pinewood|christmas tree|fir|fir tree|spruce|spruce tip|conifer|cypress|larch|resin|resinous|plywood|ply wood|
chipboard|mdf|particle board|balsa|balsam|balsa wood|birch|birch wood|beech wood|ash wood|maple wood|cherry wood|
cherrywood|hickory wood|mahogany|teak|walnut wood|rosewood|lolly stick|lollipop stick|popsicle stick|ice lolly stick|
tongue depressor|toothpick|cocktail stick|wooden spoon|twig|forest|splinter|hamster cage|hamster bedding|rabbit hutch|
new furniture|flat pack furniture|fence panel|fence post|garden fence|sauna|sap wood|oaken|oakwood|oak leaf|woodshed|
woodpile|log pile|cut logs|fresh log|green log|split log|joiner's bench|joinery|woodworker|wooden box|wooden crate|
wooden ruler|wooden drawer|wooden floor|wooden bench|wooden chair|wooden stick|match stick|matchstick|pine tea|
pine cleaner|pine soap|needle tree|damp bark|bark chips|garden mulch|decking|new decking|wet decking|fresh decking|
new shed|ply|hardboard|fibreboard|veneer|beech|beechwood|birchwood|juniper wood|eucalyptus wood|oud|agarwood|
bamboo steamer|skewer|wooden skewer|chopstick|kindling|green twig|green branch|woodpulp|pet bedding|gerbil cage`,
  "wood.toasted": `wood of the barrel|wood of barrel|cask wood|barrel|toasted oak|toasted wood|toasted barrel|
toasty oak|toasty wood|toast oak|roasted oak|roasted wood|charred oak|charred wood|charred barrel|charred cask|
charred stave|charry oak|charred|char|barrel char|oak char|heavy char|alligator char|burnt oak|burnt wood|burned wood|
burnt stick|burnt barrel|singed wood|scorched wood|scorched oak|oak barrel|oak cask|bourbon barrel|barrel room|
barrel house|barrel wood|cooperage|cooper's shop|rickhouse|rick house|bonded warehouse|campfire ember|ember|
glowing embers|dying embers|charcoal|barbecue charcoal|char coal|charcoal briquette|carbon|toasted stave|seasoned oak|
seasoned wood|caramelised oak|caramelized oak|sweet oak|warm oak|dark oak|toasty|toasted|black oak|smouldering oak|
charry|char wood|charring|charring room|heavy toast|deep toast|medium toast|oak toast|oak embers|ember wood|cooper|
cooper's fire|coopering|casks|cask|barrel stave|bourbon cask|whisky cask|burnt log|burnt timber|charcoal pencil|
hot coals|glowing coals|live coal|toast wood|pyrography|smoked oak`,
  "wood.old": `sideboard|dusty wood|old wood|old oak|aged oak|aged wood|antique wood|ancient wood|dry old wood|
old timber|old barrel|old cask|old barn wood|barn wood|barnwood|old furniture|antique furniture|dusty furniture|
antique|antique shop|antique store|wardrobe|old wardrobe|old drawer|old cupboard|old chest|old desk|old bureau|
old dresser|old chair|old table|polished wood|polished oak|polished furniture|polished table|polished floor|
waxed floor|waxed wood|furniture polish|wood polish|beeswax polish|furniture wax|wood wax|varnished wood|varnished|
wood varnish|lacquered wood|shellac|cigar box|humidor|church pew|pew|church|old church|old chapel|chapel|cathedral|
incense|frankincense|myrrh|sacristy|vestry|pulpit|mushroomy cellar|cellar|old cellar|wine cellar|dunnage|
dunnage warehouse|old warehouse|attic|loft|old attic|grandfather clock|old piano|piano|old violin|rosin|old house|
old room|panelled room|wood panelling|wood paneling|oak panelling|oak panel|wood stain|cedar box|cedar cigar box|
museum|old boat|old ship|ship's hold|driftwood|mothball|old cabinet|old school desk|school desk|gun stock|
stately home|dry wood|dried wood|tired wood|tired oak|woodworm|rotten wood|rotting wood|old shed|old beam|
old floorboard|old boards|old crate|old trunk|steamer trunk|sea chest|blanket box|blanket chest|old bookcase|bookcase|
old bookshelf|bookshelf|bookshelves|grandfather's desk|writing desk|welsh dresser|linen chest|hope chest|junk shop|
gun cabinet|rifle stock|old cello|violin|violin case|fiddle case|guitar case|old guitar|old organ|church wood|
choir stall|chancel|cloister|joss stick|incense burner|censer|benzoin|benzoin resin|panelling|wood panel|
panelled library|parquet|parquet floor|polished parquet|polished boards|polished bannister|banister|bannister|
floor polish|floor wax|wax polish|old schoolroom|old barn|old boathouse|old hull|ship's timber|ships timbers|
weathered wood|weathered plank|seasoned timber|ancient oak|ancient timber|bog oak|fossil wood|dead tree|hollow tree|
hollow log|rotting log|rotten log|mouldering wood|old stump|tree stump|wood rot|dry rot|warehouse floor|
damp warehouse|old shack|moth ball|naphthalene|teak oil|danish oil|wood oil|old lacquer|old varnish|yacht varnish|
lacquer box|grandfather's study|tool handle|old toolbox|toolshed|tool shed|wood old|wood dusty`,
  "smoke.smoke": `unpeated=0|unsmoked=0|non peated=0|smokeless=0|smoke free=0|peat free=0|log fire|open fire|
wood fire|smoke|smoky|smokey|smokiness|smoked|peat|peaty|peated|peatiness|peat smoke|peat reek|peat fire|peat bog|
reek|wood smoke|woodsmoke|woodfire|log burner|wood burner|fireplace|fire place|fireside|hearth|chimney|chimney sweep|
coal smoke|coal fire|coal|coal tar|coal dust|coal bunker|steam train|steam engine|bonfire|bon fire|camp fire|campfire|
fire pit|firepit|beach fire|beach bonfire|bonfire night|autumn bonfire|guy fawkes night|bacon|smoky bacon|
smoked bacon|bacon fat|bacon crisp|ham|smoked ham|smoked meat|smoked sausage|smoked fish|smoked salmon|kipper|kippers|
smoked haddock|smoked mackerel|smokehouse|smoke house|smoked cheese|smoked almond|smoked tea|lapsang|lapsang souchong|
lapsang souchong tea|hickory|hickory smoke|mesquite|mesquite smoke|applewood smoke|ash|ashen|ashes|ashtray|ash tray|
cigarette|cigarette smoke|cigarette ash|cigarette butt|cigar ash|cigar smoke|cold ash|wood ash|cold fire|
cold fireplace|dead fire|dying fire|put out fire|wet ash|barbecue|barbeque|bbq|bbq smoke|barbecue smoke|bbq sauce|
barbecue sauce|bbq rib|bbq pit|barbecued meat|grill|grilled meat|chargrill|char grilled|chargrilled meat|brisket|
burnt end|pulled pork|jerky|beef jerky|burnt toast|burned toast|burnt|burned|burnt meat|burnt leaf|burning wood|
burnt paper|soot|tar|tarry|tarred rope|hot tar|road tar|roof tar|creosote|mezcal|house fire|bonfire smoke|
candle smoke|blown out candle|snuffed candle|snuffed out candle|smouldering|smoldering|smoulder|singed|engine smoke|
exhaust|exhaust smoke|firework smoke|incense smoke|pipe smoke|tobacco smoke|turf smoke|turf fire|turf|smoke bomb|smog|
oily smoke|sweet smoke|peat ember|forest fire|wildfire|brush fire|garden fire|garden bonfire|leaf bonfire|leaf fire|
burning leaf|driftwood fire|driftwood smoke|beach barbecue|beach campfire|wood stove|woodstove|fire grate|cold grate|
yesterday's fire|doused fire|extinguished fire|extinguished candle|snuffed wick|wick|candle wick|flue|ashpan|
burnt grass|burning grass|stubble burning|burning stubble|burnt stubble|burnt heather|burning heather|muirburn|
burnt herb|burnt rosemary|smoked herb|burnt hay|burning hay|burning straw|burnt straw|burnt hair|singed hair|
burnt popcorn|burnt porridge|burnt steak|burnt sausage|burnt burger|burnt fat|burnt chop|charred meat|charred steak|
chargrilled steak|grilled sausage|grilled fish|flame grilled|frying bacon|bacon grease|maple bacon|pancetta|lardons|
gammon|smoked oyster|smoked mussel|smoking shed|smoky sausage|frankfurter|spare rib|rib rack|pit beef|barbecued|
barbecue sausage|barbecue crisps|bbq crisps|bbq chips|smoked salt|smoked honey|smoked butter|smoked malt|smoked beer|
rauchbier|smoke beer|smoke oil|smoky tea|pine smoke|pinewood smoke|oak smoke|cherrywood smoke|birch smoke|
mesquite wood|hickory chips|ship's pitch|tarred string|tarry rope|tar rope|tarred deck|tarmac|asphalt|fresh tarmac|
hot asphalt|hot tarmac|roof felt|roofing felt|bitumen|pine tar|birch tar|tar barrel|railway sleeper|railroad tie|
steam locomotive|exhaust fumes|forge|blacksmith|blacksmith's forge|hot horseshoe|coal cellar|burning coal|stub end|
fag end|fag butt|smokily|smouldering ember|lapsang tea|souchong|tarry tea|burning oak|burning pine|burning log|
burning rope|log burning|fire burning|burn wood|burn the wood|burning the wood`,
  "smoke.medicinal": `dried fish|fish dried|sea fog|sea mist|fog off the sea|salt fog|haar|iodine|antiseptic|disinfectant|phenol|phenolic|
carbolic|carbolic soap|medicinal|medicine|medicine cabinet|medicine chest|medical|hospital|hospital ward|
hospital corridor|hospital bandage|doctor's surgery|doctor's office|dentist|dentist's chair|dentist's office|
dental surgery|pharmacy|chemist shop|first aid kit|first aid box|first aid|plaster|sticking plaster|bandage|gauze|
surgical tape|ointment|liniment|balm|swimming pool|chlorine|pool water|seaweed|sea weed|kelp|nori|dulse|samphire|
sea vegetable|brine|brininess|brined|brackish|sea salt|sea|sea water|seawater|salt water|saltwater|sea air|sea breeze|
sea spray|seaspray|ocean|ocean air|ocean spray|ocean breeze|salt spray|salt air|salty air|salt marsh|maritime|marine|
coastal|coast|coastline|seaside|sea shore|seashore|sea front|beach|harbour|harbor|fishing port|fishing boat|
fishing net|fishing harbour|fisherman's wharf|fish market|fishy|quay|quayside|dock|dockside|jetty|pier|rock pool|
rockpool|tide pool|low tide|tidal pool|shore|shell|seashell|sea shell|oyster|oyster shell|oyster liquor|mussel|clam|
crab|prawn|shellfish|anchovy|sardine|old rope|wet rope|rope|ship's rope|tarred ship|boatyard|olive brine|pickle brine|
caper|boat shed|sail cloth|salt cod|fishing tackle|band aid|surgical dressing|surgical ward|infirmary|hospital soap|
chemist|apothecary|apothecary jar|drugstore|drug store|antiseptic cream|antiseptic lotion|antiseptic soap|
mercurochrome|merbromin|gentian violet|germ killer|pine disinfectant|toilet cleaner|creosol|cresol|guaiacol|tar soap|
tar shampoo|surgical glove|latex glove|iodised|iodised salt|iodized salt|muscle salve|embrocation|rubbing cream|
crepe bandage|chlorinated|chlorinated pool|seaweed crisp|drying seaweed|bladderwrack|wrack|wakame|kombu|sushi wrapper|
algae|sea grass|seagrass|marsh samphire|sea kale|salt flat|salt pan|salt crust|salt lick|salt crystals|salt flakes|
flaked salt|salt crackers|salt breeze|salt wind|salty wind|salty breeze|salty spray|salty sea|salty seaside|spume|
tideline|tide line|tide wrack|strandline|shoreline|shingle|pebble beach|beach pebble|beach stones|limpet|cockle|
clam broth|moules|crab meat|lobster|lobster pot|lobster creel|creel|prawn cracker|shrimp|shrimp paste|scallop|
langoustine|fresh fish|fish skin|fish box|fish crate|fish stall|fish slab|fishmonger|fish oil|haddock|mackerel|
mackerel skin|herring|pickled herring|fish sauce|squid ink|fish roe|fisherman's jumper|fishing shed|trawler net|
wet net|old nets|drying nets|fishing gear|fishing wharf|wharf|wharves|boat yard|boathouse|boat hull|ship's rigging|
rigging|brine barrel|olive juice|caper berry|ham brine|salted fish|dried fish|dry fish|bonito|dashi|tidal mud|
estuary mud|mudflat|mud flat|salty mud|dr's office|doctors office|doctors surgery|coal tar soap|carbolic soap bar`,
  "earth.earth": `flint|black truffle|white truffle|truffle|farm track|earth|earthiness|damp earth|wet earth|
dry earth|dark earth|black earth|fresh earth|dug earth|turned earth|soil|damp soil|wet soil|potting soil|
potting compost|compost|compost heap|humus|loam|dirt|wet dirt|mud|muddy|peat moss|bog|swamp|marsh|mushroom|
dried mushroom|porcini|shiitake|truffle oil|fungus|fungal|beetroot|beet|turnip|parsnip|carrot|root vegetable|root veg|
root|potato|potato skin|potato sack|wet stone|wet rock|wet slate|wet gravel|wet pavement|wet concrete|stone|stoniness|
pebble|gravel|slate|granite|rock dust|limestone|clay|terracotta|clay pot|flowerpot|flower pot|plant pot|petrichor|
rain on stone|rain on hot pavement|summer rain|after the rain|moss|lichen|forest floor|woodland floor|woodland|
woods after rain|undergrowth|leaf mould|leaf mold|leaf litter|damp leaves|fallen leaves|dead leaves|dry leaves|
dried leaves|fall leaves|rotting leaves|autumn forest|sous bois|mineral|minerally|minerality|mineral water|chalk dust|
iron|rust|rusty nail|metal|metallic|copper|copper coin|penny|coin|steel|tin can|tinny|blood|graphite|stable yard|
manure|horse manure|potting shed|garden shed|garden soil|cave|crypt|graveyard|ginseng|bean sprout|vetiver|patchouli|
sand|dusty|brick|brick dust|concrete|earthen|earthenware|damp ground|wet ground|damp garden|root cellar|neep|swede|
jerusalem artichoke|raw potatoes|cep|chanterelle|morel|truffled|fungi|toadstool|peat soil|potter's wheel|chalk soil|
leaf mulch|wet leaf|black leaves|brown leaves|old leaves|autumn leaf|autumn woods|wet woods|damp woods|damp forest|
wet forest|rainforest|rain forest|first rain|fresh rain|rainwater|water butt|wet chalk|damp sand|damp stone|damp rock|
damp chalk|river bed|riverbed|river water|stream water|spring water|mountain stream|well water|gunflint|ash soil|
damp cave|churchyard|stone cellar|stone church|wet cement|plaster dust|wet plaster|greenhouse soil|mulchy|worm cast|
metal shavings|metallic tang|copper pipe|brassy|aluminium|aluminum|steel wool|old nails|ferrous|old battery|lead pipe|
mineral salts|chalk cliff|dusty road|dusty track|dusty attic|dusty cellar|dusty floor|desert dust|farmyard mud|
horse muck|muck|muck heap|stable muck`,
  "earth.leather-and-leaf": `old horse|horse sweat|leather|leather chair|leather armchair|leather sofa|
leather bound book|leather jacket|leather belt|leather boot|leather shoe|leather glove|leather wallet|leather couch|
leather seat|leather shop|old leather|new leather|worn leather|soft leather|polished leather|suede|saddle|
saddle leather|saddle soap|saddlery|saddle room|tack|tack room|horse tack|horse saddle|stable|horse stable|
horse blanket|bridle|cricket ball|baseball glove|baseball mitt|catcher's mitt|shoe shop|shoe polish|boot polish|
shoe leather|cobbler's shop|cobbler's|car seat leather|old car|old car seat|tobacco|tobacco leaf|tobacco pouch|
tobacco tin|tobacco shop|tobacco barn|tobacconist|pipe tobacco|cherry tobacco|cherry pipe tobacco|vanilla tobacco|
rolling tobacco|chewing tobacco|sweet tobacco|dried tobacco|wet tobacco|dark tobacco|fresh tobacco|cured tobacco|
snuff|pipe|grandfather's pipe|old pipe|cigar|cigar wrapper|cigar leaf|cigar lounge|unlit cigar|unsmoked cigar|
cuban cigar|havana|gentleman's club|gentlemen's club|old book|books|bookshop|old bookshop|second hand bookshop|
used bookstore|bookstore|library|old library|old paper|paper|parchment|manuscript|vellum|newspaper|old newspaper|
study|old study|dry tobacco leaf|whip leather|old suitcase|watch strap|old boot|walking boots|riding boots|boot room|
leather workshop|leather oil|leather trousers|old football|cricket glove|cricket bag|catchers mitt|boxing glove|
horses|horsey|horsy|horse box|horsebox|horse stall|horse barn|sweaty saddle|saddle wax|harness|harness room|rawhide|
cowhide|cow hide|tanned hide|tannery|tanner's|tanning pit|sheepskin|chamois|leatherbound|drying tobacco|rolling baccy|
baccy|baccy pouch|baccy tin|snuffbox|chaw|hookah|shisha|unlit cigarette|fresh cigarette|pipe stem|club armchair|
gents club|antiquarian book|bookbinding|book binding|book spine|book pages|old pages|yellowed pages|yellowing pages|
musty pages|hymn book|hymnal|prayer book|old bible|old atlas|old letter|love letters|newsprint|paper bags|dry paper|
old magazine|old comics|dry leaf|dried leaf|cured leaf|leaf tobacco|sweaty leather|tabac`,
  "savoury.sulphur": `tires|rubbery|book of matches|matches|spent rocket|struck match|spent match|match head|matchhead|
matchbox|lit match|burnt match|blown out match|sulphur|sulfur|sulphurous|sulfurous|sulphuric|sulfuric|rubber|
rubber band|rubber tyre|burnt rubber|burning rubber|bicycle tyre|bike tyre|tyre|inner tube|wellington boot|welly boot|
hot water bottle rubber|cabbage|boiled cabbage|cooked cabbage|brussels sprout|sprout|sauerkraut|broccoli|boiled egg|
egg|egginess|rotten egg|bad egg|hard boiled egg|egg sandwich|egg salad|drain|drains|sewer|sewage|swamp gas|gunpowder|
gun powder|cordite|firecracker|cap gun|gun smoke|gunsmoke|firework|fart|flatulence|stink bomb|meatiness|meat|
meat stock|stock cube|beef|beef stock|beef broth|broth|bouillon|gravy|roast meat|roast beef|roast pork|roast lamb|
roast chicken|steak|grilled steak|sausage|game|pate|savoury|savory|umami|soy sauce|soy|soya|soya sauce|miso|
worcestershire sauce|worcester sauce|hoisin|teriyaki|yeast extract|onion|onion skin|garlic|garlicky|leek|fried onion|
onion soup|asafoetida|mercaptan|match smoke|matchstick head|safety match|sulphuring|sulphite|sulfite|spent cartridge|
shell casing|toy gun|black powder|garden hose|hosepipe|hose pipe|pencil eraser|new tires|car tire|bicycle tire|
bike tire|bike shop|gumboot|gum boots|wetsuit|wet suit|neoprene|plimsoll|latex|kale water|cauliflower|
boiled cauliflower|collard greens|turnip greens|coleslaw|plughole|marsh gas|gas leak|natural gas|gassy|guff|bin juice|
rubbish bin|rotting vegetable|meat pie|beef tea|casserole|lamb stew|gravy granules|chicken stock|chicken soup|
chicken skin|roast turkey|roast duck|venison|hung pheasant|pheasant|offal|black pudding|blood sausage|haggis|raw beef|
butcher's|butcher's shop|bone marrow|marrowbone|consomme|pork belly|hamburger|corned beef|dog food|cat food|shoyu|
tamari|brown sauce|yeast spread|vitamin b|vitamin tablets|vitamins|msg|caramelized onions|shallot|garlic butter|ramps|
truffle fries`,
  "savoury.fat": `lanolin|linseed|soap|soapiness|hand soap|bar of soap|dish soap|washing up liquid|detergent|laundry|
fresh laundry|shampoo|candle wax|candlewax|candle|wax|waxiness|wax crayon|crayon|wax jacket|waxed jacket|waxed paper|
wax paper|beeswax|bees wax|paraffin wax|sealing wax|lip balm|lipstick|wool|wet wool|sheep wool|sheep|wool jumper|
vegetable oil|cooking oil|olive oil|sunflower oil|rapeseed oil|linseed oil|mineral oil|baby oil|sewing machine oil|
machine oil|engine oil|motor oil|gun oil|grease|axle grease|oil can|fried fat|frying fat|fat|fattiness|lard|suet|
tallow|beef fat|dripping|beef dripping|duck fat|goose fat|chip fat|chip pan|chip shop|deep fryer|fryer|fried food|
french fry|fries|chips|crisps|potato chip|potato crisp|pork scratching|pork rind|crackling|cheese rind|parmesan rind|
cheese wax|face cream|cold cream|hand lotion|lotion|putty|petroleum jelly|oil paint|lamp oil|frying oil|chip oil|
bacon dripping|soapsuds|pear soap|hand wash|handwash|washing powder|clean linen|fresh linen|bed linen|church candle|
waxed cloth|waxed cotton|waxed canvas|waxed string|lip gloss|face paint|greasepaint|grease paint|moisturiser|hair oil|
pomade|brilliantine|shaving foam|shaving cream|mutton|fried bread|fried potato|tempura|doughnut fat|butter wrapper|
peanut grease|sunflower margarine|avocado oil|hemp oil|cod oil|bike oil|bicycle oil|chain oil|gear oil|tractor oil|
lubricant|brake fluid`,
  "savoury.sour-and-sweaty": `vinegar|balsamic vinegar|balsamic|malt vinegar|white vinegar|wine vinegar|cider vinegar|
acetic|acetic acid|pickled onion|pickled|pickling vinegar|kombucha|kimchi|sour milk|off milk|spoiled milk|spoilt milk|
curdled milk|sour dairy|baby sick|baby vomit|sick|vomit|puke|bile|butyric|sweat|sweatiness|body odour|body odor|
gym bag|gym sock|gym shoe|gym locker|locker room|changing room|armpit|old trainer|trainers|sock|old sock|sweaty sock|
dirty sock|socks|smelly feet|feet|goat|urine|cat pee|cat urine|cat piss|ammonia|cheese|blue cheese|stilton|parmesan|
cheddar|goat cheese|strong cheese|old cheese|brie|camembert|sour cheese|rancid|rancid butter|rancidity|wet dog|
damp dirty dog|sour beer|stale beer|lambic|rotting fruit|rotten fruit|off fruit|pickle vinegar|pickling liquid|
pickling|sauerkraut juice|sour cabbage|sour pickle|off cream|curdled|curdled cream|rancid milk|rancid cream|
rancid oil|baby spit|spit up|stomach acid|gym kit|sports bag|sports hall|rugby kit|rugby shirt|football boots|
squash court|old sneaker|smelly shoes|wet shoes|worn shoes|shoes worn|stinky feet|stinky cheese|wet fur|damp dog|
damp fur|dog blanket|dog bed|dog basket|mouse cage|mouse droppings|mousy|wet horse|tomcat|cat spray|cat litter|
litter tray|litter box|nappy|diaper|urinal|sour wine|sour cider|sour fruit|wine dregs|stale wine|beer dregs|flat beer|
spilt beer|stale ale|pub carpet|bretty|gorgonzola|washed rind|wet labrador|wet spaniel|wet hound|wet terrier|
wet collie|wet poodle`,
  "savoury.stale": `mouldy carpet|old carpet|cardboard|wet cardboard|damp cardboard|cardboard box|wet paper|
damp paper|musty|mould|mold|mildew|corked|cork|cork taint|damp cloth|wet cloth|wet rag|dish rag|dishcloth|dish cloth|
wet towel|damp towel|old towel|damp cellar|damp basement|basement|damp room|damp house|damp cupboard|damp wool|
wet carpet|damp carpet|stale|stale nut|stale bread|stale biscuit|stale cracker|stale air|stale tobacco|old nuts|
rancid nut|cooked vegetable|boiled vegetable|overcooked vegetable|canned vegetable|tinned vegetable|canned corn|
vegetable soup|oxidised|oxidized|oxidation|dishwater|dish water|washing up water|stagnant water|pond|pond water|
pondwater|damp|dank|fusty|old fridge|old flannel|hessian|burlap|sackcloth|jute sack|old sack|musty cupboard|
musty room|old clothes|charity shop|thrift store|old coat|old blanket|vacuum bag|vacuum cleaner bag|stale water|
egg box|packing box|packing paper|wet newspaper|damp newspaper|wet book|damp book|mouldy books|mouldy bread|damp wall|
damp wallpaper|old wallpaper|wallpaper paste|damp plaster|damp washing|wet washing|wet laundry|damp laundry|
wet flannel|old mop|mop bucket|wet mop|floor cloth|old rag|wet sponge|old sponge|damp jumper|wet jumper|damp coat|
wet coat|old tent|damp tent|wet tent|wet canvas|damp canvas|old mattress|dusty curtains|damp rug|wet rug|closed room|
unaired room|unopened room|stuffy|stuffy room|fug|mould spores|mildewed|tca|old water|vase water|stale crisps|
stale cereal|stale cake|stale popcorn|stale peanut|stale oil|old oil|old fat|old butter|oxidative|oxidised apple|
school canteen|canteen dinner|hospital food|overcooked veg|boiled veg|boiled carrots|boiled greens|tinned veg|
tinned peas|canned peas|tinned carrots|tinned soup|tinned spinach|baby food|potato water|pasta water|rice water|
drain board|damp flannel`,
  "spirit.heads": `felt tip pen|felt tip|varnish|lacquer|nail varnish|nail varnish remover|nail polish|
nail polish remover|acetone|paint thinner|paint|tin of paint|paint stripper|wet paint|fresh paint|gloss paint|
turpentine|turps|white spirit|thinners|glue|superglue|super glue|model glue|model aeroplane glue|airplane glue|
wood glue|solvent|ethyl acetate|ester|petrol|petrol station|gasoline|gas station|kerosene|paraffin|diesel|
lighter fluid|lighter fuel|jet fuel|fuel|white gas|fuel oil|plastic|plasticky|plastic bag|plastic wrap|pvc|new car|
new car smell|shower curtain|inflatable|marker pen|permanent marker|magic marker|ink|hairspray|hair spray|
hair lacquer|bleach|chemical|chemically|chemicals|cleaning fluid|dry cleaner|dry cleaning|polyester|epoxy|naphtha|
benzene|xylene|spray paint|window cleaner|floor cleaner|household cleaner|artificial|nail bar|nail salon|hair salon|
hairdresser|perm solution|peroxide|hair dye|hairdye|spray can|spray adhesive|paintbrush cleaner|brush cleaner|
paint fumes|fresh varnish|model kit|pva|glue stick|contact cement|rubber cement|rubber solution|puncture repair|
sticky tape|sellotape|duct tape|masking tape|electrical tape|highlighter|highlighter pen|whiteboard marker|
whiteboard pen|biro|ballpoint|fresh ink|photocopier|toner|correction fluid|white out|petrol fumes|mechanic's garage|
car garage|gas can|gas pump|paraffin lamp|kerosene lamp|lighter gas|butane|propane|camping gas|primus|jet engine|
diesel fumes|diesel oil|heating oil|cellulose|cellulose thinner|artist's studio|art room|doll's head|new doll|
lunch box|lunchbox|hot plastic|burnt plastic|burning plastic|cling film|clingfilm|vinyl seats|vinyl record|new vinyl|
pool liner|paddling pool|lilo|air bed|airbed|beach inflatable|pvc pipe|new carpet|linoleum|new lino|resin glue|
fibreglass|fiberglass|fibreglass resin|solder flux|electrical fire|burning electrics|burnt wire|hot electrics|
hot circuit|circuit board|new electronics|chemically sweet|chemical sweetness|chemistry lab|chemistry set|laboratory|
school lab|cleaning product|cleaning spray|bathroom cleaner|oven cleaner|glass cleaner|descaler|drain cleaner|
polish remover|metal polish|brass polish|silver polish|shoe spray|ammonia cleaner|synthetic banana|fake fruit|
artificial banana`,
  "spirit.ethanol": `alcohol|alcoholic|booze|booziness|ethanol|rubbing alcohol|surgical spirit|raw spirit|raw alcohol|
neutral spirit|grain spirit|new make|newmake|new make spirit|white dog|moonshine|vodka|hot nose|prickle|prickliness|
nose prickle|nose burn|nose tingle|nose sting|spirituous|spiritous|spirit|alcohol heat|alcohol burn|alcohol bite|
alcohol vapour|alcohol vapor|alcohol fumes|ethanol burn|ethanol heat|ethanol bite|ethanolic|fumes|vapour|vapor|
stings the nose|sting in the nose|hand sanitiser|hand sanitizer|sanitizer|sanitiser|hand gel|meths|methylated spirit|
poitin|schnapps|grappa|alcohol wipe|alcohol swab|alcohol pad|alcoholic burn|alcohol sting|alcohol tingle|alcohol kick|
ethanol sting|spirit bite|spirit heat|raw booze|raw hooch|hooch|bathtub gin|white lightning|high wines|low wines|
feints|foreshots|fresh spirit|still house|stillhouse|still room|stillroom|medical alcohol|antibacterial gel|
antibac gel|sanitising gel|hand rub|sting my nose|stings your nose|burns the nose|burns my nose|burns the nostrils|
burns my nostrils|burns your nostrils|singes the nose|singes the nostrils|singes my nostrils|singes nose hairs|
singes the nose hairs|tickles the nostrils|prickling nose|prickling|tingle in the nose|tingle on the nose|
eye watering|makes my eyes water|waters the eyes|makes your eyes water|sharp on the nose|hot on the nose|nose heat|
heat on the nose|bite on the nose|burn on the nose|overproof|high proof heat|cask strength heat|rocket fuel|firewater|
fire water|nose hot|made my eyes water=8|eyes water=8`,
  "taste.basic": `unsweet=0|unsweetened=0|sweet|sweetness|sweetly|sugariness|semi sweet|bittersweet|bitter sweet|
off dry|sickly sweet=7.5|sickly=7.5|cloying=8|saccharine=7|syrupy sweet|sweetish=3.2|dry|bone dry=8|dryish=3.2|sour|
sourish=3.2|tart|acid|acidic|acidity|tang|tanginess|bitter|bitterish=3.2|salt|salty|saltiness|saline|salinity|salted|
savoury taste|savory taste|sweet and sour|sweet sour|sour sweet|sugary sweet|tooth achingly sweet=8|
toothachingly sweet=8|tooth rotting=8|sickly sweetness=7.5|cloyingly sweet=8|dry as a bone=8|dry as dust=8|
dry as a desert=8|dry as sand=8|bonedry=8|bone dryness=8|bitterly|sourly|mouth puckeringly sour=8|face puckering=8|
lip smackingly sour=7.5|acerbic|acidulous|sharp acidity|saltily|umami taste|sweet as sugar=8|sweet as honey=8|
sweet as anything=8`,
  "feel.weight": `chewy|bigger body|big body=7.5|medium weight=5|nice weight|good weight|some weight|
a lot of weight=7.5|real weight=7|thin=2|lightweight=2|thinnish=2.5|watery=2|insubstantial=2|wispy=2|light=3|
light bodied=3|light body=3|light on the tongue=3|medium=5|medium bodied=5|medium body=5|middling body=5|full=7|
full bodied=7.5|full body=7.5|weighty=7|big bodied=7.5|heavy bodied=7.5|heavy body=7.5|oily|oiliness|oil|oily texture|
slick|slippery|unctuous=7|creamy|silk|silkiness|silken|satin|syrupy=7|viscous=7|viscosity|thick=7|thickness|dense=7|
gloopy=7|chewiness=7|coating|mouth coating|mouthcoating|coats the mouth|coats the tongue|coats my mouth|
coats my tongue|coats your mouth|coats everything|coats the palate|coats the glass|coating the mouth|lush|plush|
mouth filling=7|mouthfilling=7|fills the mouth=7|buttery texture|buttery mouthfeel|creamy texture|sticky|gelatinous|
meagre=2|skinny=2|diluted=2|dilute=2|watered down=2|hefty=7.5|substantial=7|body|lacks body=0|no body=0|
lacking body=0|without body=0|lacks weight=0|med body=5|med bodied=5|med weight=5|weedy=2|feeble body=2|weak body=2|
little body=2|not much body=2|coats like=7|really coats=7|coats well=7`,
  "feel.burn": `nip|strip paint|kick|warm|warmth|warming|warmly|warms|warm glow|glow|glowing|kentucky hug|hug|hot|heat|
burning=7.5|burn|burns=7|burned my mouth=7.5|fiery=8|scorching=8|searing=8|scalding=8|blazing=8|numbing|numb|
anaesthetic|anesthetic|tingle|tingling|tingles|tingliness|fizz|fizziness|fizzes|effervescent|effervescence|sparkling|
sparkly|spritzy|prickle on the tongue|prickles the tongue|peppery burn|stinging|sting|stings|bite|bites|biting=7|
punchy=7|popping candy|space dust|pop rocks|ethanol kick|boozy heat|chest warmth|afterburn|take the paint off=8|
take the varnish off=8|strip varnish=8|take the enamel off=8|paint aff=8|strip wallpaper=8|strips the enamel=8|
take the skin off=8|clear your sinuses=8|clears the sinuses=8|burns like=7.5|scorcher=8|barn burner=8`,
  "feel.pull": `chalk|dryness on the tongue|sucks the moisture|dryness in the mouth|mouth dry|dry mouth|tannic|tannin|
tannins|tanninic|drying|dries|dries out|dries the mouth|dries my mouth|dries your mouth|dries the tongue|mouth drying|
drying mouth|astringent|astringency|grippy|grip|grips|gripping|chalkiness|puckering|pucker|mouth puckering|velvet=2.5|
smooth=2.5|smoothness|smoothly|supple|furry|furry tongue|fuzzy tongue|sandpaper|powdery|powdery texture|gritty|
cotton mouth|cottonmouth|rasping|raspy|tannic grip|parching|parched|leaves the mouth dry|leaves my mouth dry|
makes my mouth dry|mouth feels dry|dry tongue|dusty mouth|stewed tannin|tea tannin|glides|gliding|puckered|
sucks your cheeks in|sucks the cheeks in|sucks the cheeks|cheek sucking|gums dry|furs the tongue|furs the teeth|
fur on the teeth|fur on the tongue|squeaky teeth|teeth squeak|sherbety chalk|rough tongue|grainy texture|
powder on the tongue|dusty tongue|dusty texture|dusty feel|mouth coating dry|leathery tongue|tannic dryness|
oak tannins|wood tannin|walnut skin dryness|silken smooth=2|smooth as silk=2|smooth as butter=2|smooth as glass=2|
smooth as a baby=2|smooth as anything=2|goes down smooth=2|leaves dry the mouth|leaves me dry|leaves you dry`,
  "time.finish": `fading sweet|fading bitter|lingering spice|clean finish|fading sweetness|fading bitterness`,
  "time.finish+feel.burn": `hot finish`,
  "time.finish+wood.fresh": `lingering oak`,
  "whole.balance": `raw|shut down|balanced|balance|well balanced|imbalanced|unbalanced|off balance|out of balance|
harmonious|harmony|integrated|well integrated|disjointed|cohesive|coherent|harsh|mellow|round|rounded|well rounded|
rough|rough edge|sharp|edgy|spiky|soft|delicate|delicacy|refined|bold|assertive|complex|complexity|layered|
many layers|multi layered|depth|deep|simple|simplicity|one dimensional|one note|single note|straightforward|
straight forward|uncomplicated|linear|flat|closed|closed up|open|opens up|opened up|opening up|muddled|clean|pure|
lively|vibrant|bright|tired|lifeless|past its best|young|youth|youthful|immature|mature|maturity|well aged|over oaked|
overoaked|over wooded|under oaked|underoaked|rich|fresh|crisp|heavy|rugged|rustic|robust|polished|hollow|austere|
brash`,
};
