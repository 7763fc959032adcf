/**
 * English words for what a whiskey tastes of, by attribute: singular, lower case, without accents, one space between words. Plurals,
 * possessives and the endings of english-endings.data.ts follow of themselves. A word under two attributes, joined by "+", says both.
 * `word=7` is a strength that the word itself tells (0 to 10). The families and groups and about 300 of the words are the trade's;
 * all of it: common practice, no source.
 */
export const FLAVOURS: Readonly<Record<string, string>> = {
  "grain.cereal": `ale|amaranth|barley|barley tea|barley wine|barleycorn|basmati|bean flour|beer|black bread|bran|\
bran flake|bread black|breakfast cereal|brew house|brewery|brewhouse|buckwheat|bulgur|cereal|chaff|chicken feed|corn|\
corn bread|corn chip|corn flake|corn husk|corn mash|corn oil|corn on the cob|cornbread|cornbread crust|cornfield|\
cornflake|cornmeal|couscous|cracked wheat|cream of wheat|crispbread|damp grain|dark bread|draff|feed store|flapjack|\
flour mill|grain|grain silo|grain store|grainfield|graininess|granola|green barley|grist|grits|home brew|homebrew|\
hominy|horse feed|hot cereal|husk|kettle corn|kiln floor|lager|maize|malt|malt barn|malt biscuit|malt drink|\
malt extract|malt floor|malt loaf|malted|malted barley|malted milk|malthouse|maltings|malty biscuit|mash|mash tun|\
millet|muesli|oat|oat biscuit|oat milk|oatcake|oatmeal|pilsner|polenta|popcorn|porridge|puffed rice|puffed wheat|\
pumpernickel|quinoa|raw grain|rice|rice cake|rice cracker|ricecake|rye|rye bread|rye cracker|rye crisp|rye flour|\
rye grain|rye toast|semolina|shredded wheat|sorghum|sour mash|spelt|spent grain|stout beer|sweet corn|sweetcorn|\
taco shell|tamale|toasted grain|tortilla|warm grain|wheat|wheat beer|wheat cracker|wheat grain|wheatfield|wholegrain|\
wholemeal|wholemeal bread|wholewheat|wort`,
  "grain.bake": `amaretti biscuit|angel cake|bagel|baguette|bake shop|baked bread|baked good|baked pastry|bakehouse|\
baker's|baker's shop|baker's yeast|bakery|bakewell|baking|baking bread|batter|beignet|birthday cake|biscotti|biscuit|\
biscuit base|bread|bread and butter pudding|bread crumb|bread crust|bread dough|bread pudding|bread roll|breadcrumb|\
breadiness|brioche|brown bread|bun|butter biscuit|butter cookie|buttermilk biscuit|cake|cake batter|cake mix|\
cake shop|challah|chapati|cheesecake base|choux|churro|ciabatta|cobbler|cookie|cookie dough|cracker|cream cracker|\
crepe|croissant|crouton|crumble|crumble topping|crumpet|crust|crusty bread|cupcake|currant bun|danish|danish pastry|\
digestive|digestive base|digestive biscuit|donut|dough|doughiness|doughnut|dumpling|eclair|english muffin|fairy cake|\
farl|filo|financier|flatbread|flour|focaccia|french toast|fresh bake|fresh bread|fresh rolls|fritter|funnel cake|\
genoise|graham cracker|ladyfinger|loaf|madeleine|melba toast|monkey bread|muffin|naan|oat cookie|oatmeal cookie|\
pancake|pancake batter|pastry|patisserie|petit beurre|pie|pie crust|pie dough|pie shell|piecrust|pita|popover|\
poppadom|potato bread|potato scone|pound cake|pretzel|profiterole|puff pastry|rich tea|rich tea biscuit|roti|rusk|\
saltine|scone|short bread|short crust|shortbread|shortcake|shortcrust|shortcrust pastry|soda bread|soda farl|\
sourdough|sponge|sponge cake|sponge finger|steamed pudding|streusel|strudel|suet pudding|sugar cookie|sugar wafer|\
sweet bread|sweet pastry|tart shell|tea biscuit|tea cake|teacake|toast|toasted bread|toasted brioche|turnover|\
victoria sponge|viennoiserie|wafer|waffle|waffle cone|water biscuit|wedding cake|white bread|white rolls|white toast|\
yeast|yeastiness|yellow cake|yorkshire pudding`,
  "fruit.orchard": `apple|apple butter|apple cellar|apple core|apple loft|apple orchard|apple pie filling|apple pip|\
apple schnapps|apple sweet|apple wine|applesauce|asian pear|baked apple|braeburn|bramley|bruised apple|calvados|cider|\
cider apple|comice|conference pear|cooking apple|crab apple|crabapple|eau de vie|golden delicious|granny smith|\
green apple|green fruit|hard cider|loquat|medlar|membrillo|nashi|orchard|orchard fruit|pear|pear brandy|pear drop|\
peardrop|perry|pink lady|pippin|poached apple|poached pear|pome fruit|quince|quince paste|red apple|ripe pear|russet|\
scrumpy|sharon fruit|sliced apple|stewed apple|white fruit|windfall|windfall apple`,
  "fruit.tropical": `banana|banana bread|banana chip|banana cream|banana custard|banana ester|banana milk|\
banana milkshake|banana split|banana sweet|banana toffee|banoffee|bubble gum|bubblegum|candied pineapple|cantaloupe|\
cashew fruit|charentais|coconut flesh|custard apple|dragon fruit|dragonfruit|durian|exotic|exotic fruit|foam banana|\
fried banana|fruit cocktail|fruit punch|fruit salad|fruity gum|galia|green banana|green mango|grilled pineapple|guava|\
honeydew|honeydew melon|jackfruit|kiwi|kiwi fruit|kiwifruit|litchi|lychee|mango|mango lassi|mangosteen|melon|\
overripe banana|papaya|passion fruit|passionfruit|passionfruit curd|pawpaw|pina colada|pineapple|pineapple chunk|\
plantain|rambutan|soursop|star fruit|starfruit|tamarillo|tinned fruit|tinned fruit cocktail|tinned pineapple|tropical|\
tropical fruit|tropical sweet|tutti frutti|watermelon`,
  "fruit.stone": `apricot|apricot yoghurt|bing cherry|black cherry|boozy cherry|brandied cherry|candied cherry|\
canned peach|cherries|cherry|cherry bakewell|cherry brandy|cherry coke|cherry cola|cherry cough drop|\
cherry cough syrup|cherry pie filling|cherry sweet|cherry tomato skin|clingstone|cocktail cherry|damson|damson cheese|\
damson gin|doughnut peach|glace cherry|greengage|kirsch|maraschino|maraschino cherry|mirabelle|morello|morello cherry|\
nectarine|peach|peach cobbler filling|peach iced tea|peach melba|peach ring|peach schnapps|peach tea|peach yoghurt|\
peaches and cream|plum|plum cheese|red cherry|sloe|sloe gin|sour cherry|stewed peach|stewed plum|stone fruit|\
stone fruity|stonefruit|tart cherry|tinned peach|umeboshi|victoria plum|white peach`,
  "fruit.berry": `acai|berry|berry pie|berry smoothie|bilberry|black berry|black currant|black fruit|black grape|\
blackberry|blackberry pie|blackcurrant|blackcurrant sweet|blueberry|blueberry pie|boysenberry|bramble|cassis|\
cherry berry|cherryade|cloudberry|concord grape|cranberry|currant bush|currant jelly|dark berry|elderberry|\
forest berry|forest fruit|fruit chew|fruit drop|fruit gum|fruit jam|fruit leather|fruit pastille|fruits of the forest|\
goji|gooseberry|grape|grape must|grapiness|green grape|grenadine|gum drop|gumdrop|gummy|gummy bear|hedgerow|\
hedgerow fruit|huckleberry|jam|jam donut|jam doughnut|jam sandwich|jamminess|jelly|jelly baby|jelly bean|jelly sweet|\
jellybean|lingonberry|loganberry|mixed berry|mulberry|mulled fruit|muscat|muscat grape|pastilles|pomegranate|\
raspberry|raspberry coulis|raspberry ripple|raspberry sweet|raspberryade|red berry|red currant|red fruit|red grape|\
red licorice|red liquorice|redcurrant|rose hip|rosehip|rowanberry|sangria|sea buckthorn|strawberries and cream|\
strawberry|strawberry lace|strawberry pencil|strawberry sweet|strawberry yoghurt|summer berry|summer fruit|\
summer pudding|tayberry|white currant|white grape|wild berry|wine gum|winegum|woodland strawberry`,
  "fruit.citrus": `bergamot|bergamot tea|bitter orange|blood orange|burnt orange|calamansi|candied citrus|\
candied lemon|candied orange|candied orange peel|candied peel|chocolate orange|citric|citron|citronella|citrus|\
citrus cleaner|citrus fruit|clementine|creamsicle|curacao|daiquiri|dreamsicle|earl grey|earl grey tea|grapefruit|\
kaffir lime|key lime|key lime pie|kumquat|lemon|lemon and lime|lemon balsam|lemon bar|lemon barley|lemon butter|\
lemon cheese|lemon cream|lemon curd|lemon drizzle|lemon lime|lemon peel|lemon pie|lemon shortbread|lemon sweet|\
lemon tea|lemon wax|lemonade|lime|lime curd|lime pickle|limeade|limoncello|mandarin|margarita mix|marmalade|\
mixed peel|mojito|orange|orange cream|orange creamsicle|orange marmalade|orange peel|orange soda|orange squash|\
orange sweet|orangeade|paloma|pickled lemon|pink grapefruit|pomelo|salted lemon|satsuma|seville orange|sherbet|\
sherbet lemon|sherbet straw|st clement's|tangerine|triple sec|yuzu|zest`,
  "fruit.dried": `apricot leather|barmbrack|black bun|boozy fruit|brack|brandied fruit|christmas cake|christmas fruit|\
christmas mincemeat|christmas pudding|cinnamon raisin|clootie|clootie dumpling|craisin|cream sherry|currant|\
currant loaf|date|date loaf|date square|dried apple|dried apricot|dried banana|dried berry|dried cherry|dried citrus|\
dried cranberry|dried currant|dried fig|dried fruit|dried grape|dried mango|dried orange|dried peach|dried pear|\
dried pineapple|dried plum|dried strawberry|dry fruit|dry grape|dundee cake|eccles cake|fig|fig roll|fruit bread|\
fruit bun|fruit cake|fruit dried|fruit dry|fruit loaf|fruit mince|fruit pudding|fruit scone|fruit slice|fruitcake|\
garibaldi|macerated fruit|madeira|marsala|medjool date|mince pie|mincemeat|mulled raisin|muscatel|old port|oloroso|\
panettone|panforte|pedro ximenez|pitted date|plum dry|plum duff|plum pudding|port wine|prune|px|px sherry|raisin|\
raisin bread|raisin toast|rancio|rum and raisin|rum raisin|rum soaked raisin|sauternes|sherry trifle|simnel cake|\
soaked fruit|spotted dick|steeped fruit|stewed fruit|stewed prune|sticky date|stollen|suet mincemeat|sultana|\
sultana bran|sun dried fruit|tamarind|tawny port|tea bread|tea loaf|tokaji|trail mix|vine fruit|welsh cake|xmas cake|\
xmas pudding|yoghurt raisin`,
  "plant.flower": `acacia|aftershave|almond blossom|apple blossom|azalea|baby powder|bath bomb|bath salts|begonia|\
blossom|bluebell|bouquet of flowers|bubble bath|buttercup|calendula|camellia|camomile|camomile tea|carnation|\
chamomile|chamomile tea|cherry blossom|chrysanthemum|clover blossom|clover flower|cologne|cornflower|cow parsley|\
cut flower|dahlia|daisy|dandelion|dried flower|dried rose|dusting powder|eau de cologne|elderflower|\
elderflower cordial|face powder|floral|florist|florist shop|flower|flower garden|flower shop|flower stall|flowers|\
foxglove|frangipani|freesia|fresh flower|garden flower|gardenia|geranium|gorse|grandma's perfume|hand cream|hawthorn|\
heather|heather flower|heathland|hedge flower|hedgerow flower|heliotrope|hibiscus|hollyhock|honeysuckle|hyacinth|\
hydrangea|immortelle|iris|jasmine|jasmine tea|lavender|lavender oil|lilac|lily|lime blossom|lime flower|lime tree|\
linden|linden blossom|lotus|lupin|magnolia|marigold|may blossom|meadow flower|meadowsweet|mimosa|narcissus|neroli|\
night stock|nosegay|orange blossom|orange flower|orange flower water|orchid|orris|orris root|osmanthus|parma violet|\
peach blossom|pear blossom|peony|perfume|perfumed|perfumery|petal|petunia|pink rose|plum blossom|plumeria|pot pourri|\
potpourri|powder puff|powdery floral|primrose|rhododendron|rose|rose cream|rose garden|rose jam|rose oil|rose petal|\
rose syrup|rose water|rosebud|rosewater|snapdragon|spring flower|sweet pea|sweet william|talc|talcum|talcum powder|\
tea rose|tropical flower|tuberose|turkish delight|verbena flower|violet|violet candy|violet cream|violet leaf|\
violet soap|violet sweet|violet syrup|whin|white flower|wild flower|wildflower|wisteria|yellow broom|ylang ylang`,
  "plant.green": `agave|alfalfa|aloe|aloe vera|artichoke|asparagus|assam|avocado|bamboo|barley grass|barn|barnyard|\
bean pod|bell pepper|black tea|blackcurrant bush|blackcurrant leaf|box bush|box hedge|boxwood|bracken|breakfast tea|\
broad bean|builder's tea|builders tea|byre|cabbage leaf|cactus|cannabis|capsicum|celeriac|celery|chlorophyll|clover|\
cold tea|courgette|cow byre|cow dung|cow pat|cow shed|cowpat|cowshed|cucumber|cup of tea|currant leaf|cut grass|\
cut leaves|dandelion leaf|dandelion stalk|darjeeling|dock leaf|dried grass|dry grass|dry grassland|dung|edamame|\
english breakfast|farm|farm yard|farmyard|fern|fig leaf|fig tree|foliage|french bean|fresh cut grass|fresh leaves|\
freshly cut grass|freshly mown grass|garden|garden pea|glasshouse|grass|grass clipping|green|green bean|\
green capsicum|green grass|green leaf|green olive|green pea|green pepper|green plant|green sap|green stalk|green stem|\
green tea|green tomato|green veg|greenhouse|gunpowder tea|hay|hay bale|hay barn|hay loft|hayfield|hayloft|haymaking|\
haystack|hedge|hedgerow leaves|hemp|herbaceous|herbage|hop|hop flower|hop oil|hoppy|horse dung|ice tea|iced tea|ivy|\
kale|lawn|lawn clippings|lawnmower|leaf|lettuce|leylandii|mange tout|marijuana|matcha|meadow|meadow hay|milky tea|\
mown grass|mushy pea|nettle|new mown grass|olive|oolong|papyrus|pea|pea pod|pea shoot|pepper stalk|plant|plant sap|\
polytunnel|pot of tea|potato peel|privet|pu erh|puerh|raffia|raw potato|reed|rhubarb|rhubarb crumble|rooibos|\
runner bean|rush mat|sap green|sedge|sencha|silage|slurry|snap pea|spinach|spirulina|stable hay|stable straw|stalk|\
stem|stewed tea|straw|strong tea|sugar snap|sunflower|sweet tea|tannic tea|tapenade|tea|tea bag|tea caddy|tea leaf|\
teabag|tequila|tomato leaf|tomato plant|tomato stalk|tomato vine|underripe|unripe|veg|vegetable|vegetal|veggie|\
vine leaf|watercress|wheat grass|wheatgrass|white tea|wicker|wicker basket|yerba mate|zucchini`,
  "plant.herb": `absinthe|allsorts|amaro|angelica|angostura|anise|aniseed|aniseed ball|aniseed sweet|anisette|\
aperitivo|aquavit|arak|basil|bay|birch bark|birch beer|birch sap|bitters|black jack|black licorice|black liquorice|\
bog myrtle|borage|borage flower|botanical|bouquet garni|burdock|burnt sage|camphor|camphorated|camphorous|candy cane|\
caraway|caraway bread|caraway rye|catnip|chervil|chest rub|chewing gum|chive|cilantro|coriander leaf|cornichon|\
cough candy|cough drop|cough medicine|cough mixture|cough sweet|cough syrup|curry plant|dandelion and burdock|\
dandelion root|dill|dill pickle|dill weed|dried herb|eucalypt|eucalyptus|eucalyptus sweet|fennel|fennel pollen|\
fennel tea|feverfew|fresh herb|fresh mint|garden mint|genever|gentian|gherkin|gin|gin botanicals|ginseng tea|\
green liqueur|ground ivy|gum tree|herb|herb butter|herb garden|herbal|herbal medicine|herbal sweet|herbal tea|\
herbalist|herbes de provence|hyssop|jenever|julep|juniper|juniper berry|kummel|laurel leaf|lemon balm|lemon grass|\
lemon thyme|lemon verbena|lemongrass|licorice|licorice rope|licorice tea|liquorice|liquorice allsort|liquorice sweet|\
liquorice tea|liquorice toffee|liquorice wood|lovage|lozenge|marjoram|medicinal herb|menthol|mentholated|mint|\
mint choc|mint choc chip|mint chocolate|mint cream|mint julep|mint sweet|mint tea|mint toffee|mixed herb|\
monastery liqueur|mouthwash|mugwort|muscle rub|myrtle|orange bitters|oregano|ouzo|parsley|parsley stalk|pastis|\
peppermint|peppermint cream|peppermint tea|perilla|pesto|pickle|pontefract cake|quinine|raki|root beer|rosemary|sage|\
sagebrush|salmiak|salt liquorice|salted liquorice|salty licorice|salty liquorice|sambuca|sarsaparilla|sassafras|\
sassafras tea|shiso|sloe leaf|sorrel|spearmint|star anise|stevia leaf|summer savory|sweet gale|sweet woodruff|\
tarragon|tea tree|throat lozenge|throat pastille|throat sweet|thyme|tincture|tonic|tonic water|toothpaste|valerian|\
vapor rub|vapour rub|verbena|vermouth|wintergreen|woodruff|wormwood|yarrow`,
  "sweet.sugar": `agave nectar|agave syrup|barley sugar|black strap|black treacle|blackstrap|boiled sweet|\
bonfire toffee|brandy snap|brown sugar|burned sugar|burnt caramel|burnt marshmallow|burnt sugar|butter scotch|\
butterscotch|candied|candy|candy cigarette|candy corn|candy floss|candy shop|candy store|candyfloss|cane sugar|\
caramel|caramel corn|caramel custard|caramel wafer|caramelisation|caramelised|caramelised onion|caramelised sugar|\
caramelization|caramelized|caramelized sugar|caster sugar|cinder toffee|cola bottle|cola cube|confection|confectioner|\
cooked sugar|corn syrup|cotton candy|creme brulee|creme caramel|dark brown sugar|dark caramel|date molasses|demerara|\
dextrose|dolly mixture|dulce de leche|english toffee|flan|florentine|fructose|fruit sugar|fudge|glucose|gobstopper|\
gulab jamun|halwa|hard candy|hokey pokey|honeycomb toffee|humbug|ice lolly|icing glaze|icing sugar|jaggery|jalebi|\
kola kube|lollipop|lolly|love heart|maple|maple sugar|marshmallow|meringue|millionaire's shortbread|molasses|\
muscovado|nougat bar|nougatine|palm sugar|pancake syrup|panela|parkin|parma sweet|pavlova|pecan syrup|pekmez|\
penny sweet|penuche|piloncillo|popsicle|powdered sugar|praline sugar|raw sugar|rock candy|rock sugar|s'more|\
salt caramel|salted caramel|scottish tablet|seaside rock|simple syrup|smore|soft caramel|sponge candy|spun sugar|\
sticky glaze|sticky pudding|sticky toffee|stroopwafel|sugar|sugar cane|sugar crust|sugarcane|sugared|sweet jar|\
sweet potato|sweet shop|sweetie|sweets|sweetshop|syrup|tablet|toasted marshmallow|toasted sugar|toffee|toffee brittle|\
toffee crisp|treacle|treacle toffee|turbinado|turkish sweet|vanilla fudge|white sugar`,
  "sweet.honey": `acacia honey|ambrosia|apiary|baklava|bee hive|bee pollen|beehive|beekeeper|beeswax honey|\
burnt honey|chestnut honey|clover honey|dark honey|flapjack syrup|forest honey|golden syrup|heather honey|hive|honey|\
honey blossom|honey bread|honey bun|honey butter|honey cereal|honey comb|honey nut|honey on toast|honey roast|\
honey water|honeycomb|honeycombed|honeydrip|honeyed|honeypot|honeysweet|hot toddy|lavender honey|lime honey|manuka|\
manuka honey|mead|metheglin|nectar|orange blossom honey|pollen|propolis|royal jelly|runny honey|sweet honey|\
thyme honey|wildflower honey`,
  "sweet.vanilla": `advocaat|arctic roll|blancmange|butter cream frosting|butter frosting|butter icing|\
buttercream frosting|buttercream icing|cake frosting|cake icing|cream frosting|cream horn|cream puff|cream soda|\
crema catalana|creme anglaise|creme pat|creme patissiere|cupcake frosting|custard|custard cream|custard doughnut|\
custard pie|egg custard|egg nog|eggnog|french vanilla|frosting|gelato|horchata|ice cream|ice cream cone|\
ice cream soda|icecream|icing|instant pudding|junket|knickerbocker glory|malted milkshake|marshmallow cream|\
marshmallow creme|marshmallow fluff|milk pudding|milkshake|panna cotta|pannacotta|pastry cream|pudding cup|\
pudding mix|rice pudding|sabayon|semifreddo|semolina pudding|soft serve|sugar icing|tapioca|vanilla|vanilla bean|\
vanilla caramel|vanilla cream|vanilla custard|vanilla malt|vanilla milkshake|vanilla sugar|vanilla wafer|\
vanilla yoghurt|vanilla yogurt|vanillin|white cake|zabaglione`,
  "sweet.dairy": `alfredo|baby formula|bechamel|beurre noisette|brown butter|browned butter|burnt butter|butter|\
butter cake|butter cream|butter milk|butter mint|buttercream|buttered|butterfat|buttermilk|butterscotchy|chantilly|\
cheese cake|cheesecake|clotted|clotted cream|coffee creamer|condensed milk|cottage cheese|cream|cream cake|\
cream cheese|cream filling|cream liqueur|creamed|creamed rice|creamer|creamy yoghurt|creme chantilly|creme fraiche|\
curd|dairy|double cream|evaporated milk|farm butter|fresh cream|fresh milk|fromage frais|ghee|goat milk|greek yoghurt|\
greek yogurt|half and half|heavy cream|hollandaise|kefir|labneh|lactic|lassi|margarine|mascarpone|melted butter|milk|\
milk bottles|milk powder|noisette butter|powdered milk|ricotta|salted butter|salty butter|single cream|skyr|\
sour cream|warm milk|whipped cream|whipping cream|white sauce|yoghurt|yogurt`,
  "sweet.cocoa": `affogato|americano|baking chocolate|bitter chocolate|bittersweet chocolate|black coffee|\
black forest|black forest gateau|brownie|cacao|cacao nib|cappuccino|carob|chicory|chicory coffee|choc|chocolate|\
chocolate bar|chocolate brownie|chocolate caramel|chocolate cherry|chocolate chip|chocolate coated|chocolate coin|\
chocolate cream|chocolate digestive|chocolate egg|chocolate fudge|chocolate ganache|chocolate malt|chocolate milk|\
chocolate mint|chocolate nut|chocolate raisin|chocolate truffle|chocolate wafer|chocolatey malt|cocoa|cocoa butter|\
cocoa husk|cocoa nib|cocoa shell|coffee|coffee bean|coffee cream|coffee fudge|coffee ground|coffee shop|coffee sweet|\
coffee toffee|cold brew|cold coffee|cortado|crema|dark chocolate|drinking chocolate|easter egg|espresso|flat white|\
fresh coffee|fudge cake|ganache|ground coffee|hot chocolate|iced coffee|instant coffee|irish coffee|latte|\
latte macchiato|macchiato|malted chocolate|milk choc|milk chocolate|mocha|mokka|mole|mud cake|mud pie|nibs|opera cake|\
ristretto|roast coffee|roasted coffee|rocky road|sachertorte|stale coffee|tiramisu|toffee mocha|truffles|\
white chocolate`,
  "spice.warm": `all spice|allspice|allspice berry|apple pie spice|asafran|baharat|baker's spice|baking spice|\
barrel spice|biscuit spice|brown spice|cake spice|cardamom|cardamom bun|cardamom coffee|cardamom tea|cardamon|\
carrot cake|cassia|chai|chai latte|chai tea|christmas|christmas biscuit|christmas cookie|christmas market|\
christmas spice|cinnamon|cinnamon bark|cinnamon biscuit|cinnamon bun|cinnamon candy|cinnamon cereal|cinnamon cookie|\
cinnamon gum|cinnamon mint|cinnamon roll|cinnamon stick|cinnamon sugar|cinnamon toast|cinnamon toothpick|clove|\
clove cigarette|clove ham|clove oil|clove studded orange|cloved ham|cookie spice|dry spice|dutch biscuit|\
eastern spice|exotic spice|five spice|garam masala|ginger bread|ginger cake|ginger loaf|gingerbread|gingerbread man|\
gluhwein|holiday spice|hot cross bun|incense spice|jerk seasoning|kretek|lebkuchen|mace|masala chai|masala tea|\
mixed spice|mulled|mulled cider|mulled wine|mulling spice|nutmeg|nutmeg shell|oak spice|oriental spice|pain d'epices|\
parkin cake|pepper biscuit|pfeffernusse|pie spice|pimento berry|pumpkin bread|pumpkin latte|pumpkin pie|\
pumpkin pie spice|pumpkin spice|quatre epices|ras el hanout|rye spice|saffron|snickerdoodle|soft spice|speculaas|\
speculoos|spekulatius|spice|spice biscuit|spice box|spice bread|spice cabinet|spice cake|spice cookie|spice cupboard|\
spice drawer|spice market|spice merchant|spice rack|spice shop|spice tea|spiced|spiced biscuit|spiced bun|spiced cake|\
spiced cider|spiced teacake|spiciness|spicy|spicy wood|sticky ginger cake|sweet spice|tagine|tonka|tonka bean|\
turmeric|warm spice|warming spice|winter spice|wood spice|xmas spice|yuletide|za'atar`,
  "spice.sharp": `arugula|asafetida|black pepper|buffalo sauce|cajun spice|candied ginger|capsaicin|cayenne|\
cayenne pepper|chile|chili|chili flake|chili heat|chili oil|chili powder|chilli|chilli crisp|chilli flake|chilli heat|\
chilli jam|chilli oil|chilli powder|chilly pepper|chipotle|coriander|coriander seed|cracked black pepper|\
cracked pepper|crystallised ginger|crystallized ginger|cumin|cumin seed|curry|curry leaf|curry powder|curry spice|\
dijon|english mustard|fenugreek|fresh ginger|fresh ground pepper|galangal|ginger|ginger ale|ginger beer|\
ginger biscuit|ginger candy|ginger cookie|ginger jam|ginger marmalade|ginger nut|ginger parkin|ginger root|\
ginger snap|ginger sweet|ginger syrup|ginger tea|gingersnap|gochugaru|gochujang|grains of paradise|green peppercorn|\
ground black pepper|ground ginger|ground pepper|habanero|harissa|horse radish|horseradish|hot pepper|hot sauce|\
hot spice|hot wings|jalapeno|kimchi spice|korma|madras|mala|melegueta|mustard|mustard greens|mustard oil|mustard seed|\
nasturtium|nigella|paprika|pepper|pepper jam|pepper jelly|pepper spice|pepper steak|peppercorn|peppered|\
peppered salami|peppered steak|pepperiness|peppermill|pepperoni|peppery bite|peri peri|pickled ginger|pink pepper|\
pink peppercorn|piri piri|radish|red pepper flake|rocket salad|root ginger|rye pepper|scotch bonnet|sharp spice|\
sichuan|sichuan pepper|sichuan peppercorn|smoked paprika|sriracha|stem ginger|szechuan|szechuan pepper|\
szechuan peppercorn|taco seasoning|taco spice|vindaloo|wasabi|wasabi pea|watercress bite|white pepper|wood pepper`,
  "nut.nut": `acorn|after sun|aftersun|almond|almond butter|almond croissant|almond flour|almond milk|almond paste|\
amaretti|amaretto|bakewell tart|battenberg|beach lotion|beech mast|beech nut|beechnut|beer nut|bird seed|birdseed|\
bitter almond|boiled peanut|brazil nut|brittle|burnt almond|butter pecan|candied nut|candied pecan|cashew|\
cashew butter|cashew cream|chestnut|chestnut cream|chestnut flour|chia|cinnamon nut|circus peanut|coco butter|coconut|\
coconut cream|coconut husk|coconut ice|coconut macaroon|coconut milk|coconut mushroom|coconut pie|coconut rice|\
coconut shampoo|coconut shaving|coconut soap|coconut water|desiccated coconut|dry roasted peanut|filbert|\
flaked almond|frangipane|gianduja|ground almond|groundnut|halva|halvah|hazelnut|hazelnut butter|hazelnut cream|\
hazelnut shell|hazelnut spread|hazelnut wafer|hemp seed|honey nuts|honey roasted nut|macadamia|macaroon|marcona|\
marrons glaces|marzipan|mixed nut|nocino|noisette|nougat|nut|nut bread|nut brittle|nut butter|nut loaf|nut mix|\
nut shell|nutshell|nuttiness|orgeat|peanut|peanut brittle|peanut butter|peanut shell|pecan|pecan pie|pickled walnut|\
pine kernel|pine nut|pistachio|pistachio cream|poppy seed|praline|pumpkin seed|roast chestnut|roast nut|\
roasted almond|roasted chestnut|roasted nut|roasted peanut|salted almond|salted nut|salted peanut|satay|seed bar|\
sesame|simnel|smoked almonds|sugared almond|sun block|sun cream|sun lotion|sun oil|sun tan lotion|sunblock|\
sunflower kernel|sunflower seed|sunscreen|suntan lotion|suntan oil|tahini|tanning lotion|tanning oil|toasted almond|\
toasted coconut|toasted nut|toasted pecan|toasted sesame|turron|walnut|walnut bread|walnut husk|walnut loaf|\
walnut pickle|walnut shell`,
  "wood.fresh": `agarwood|american oak|ash wood|balsa|balsa wood|balsam|bamboo steamer|bark|bark chips|beech|\
beech wood|beechwood|birch|birch wood|birchwood|carpenter|carpenter's shop|carpenter's workshop|carpentry|cedar|\
cedar chest|cedar closet|cedar plank|cedar wood|cedarwood|cherry wood|cherrywood|chipboard|chopstick|christmas tree|\
cocktail stick|conifer|cut logs|cut wood|cypress|damp bark|decking|eucalyptus wood|european oak|fence panel|\
fence post|fibreboard|fir|fir tree|flat pack furniture|forest|french oak|fresh cut wood|fresh decking|fresh log|\
fresh oak|fresh wood|freshly cut wood|garden fence|garden mulch|gerbil cage|green branch|green log|green oak|\
green twig|green wood|hamster bedding|hamster cage|hardboard|hickory wood|ice lolly stick|joiner's bench|\
joiner's shop|joinery|juniper wood|kindling|larch|log pile|lollipop stick|lolly stick|lumber|lumber yard|lumberyard|\
mahogany|maple wood|match stick|matchstick|mdf|needle tree|new decking|new furniture|new oak|new shed|new wood|oak|\
oak bark|oak chip|oak extract|oak leaf|oak plank|oak sap|oak shaving|oak stave|oaken|oakiness|oakwood|oaky|oud|\
particle board|pencil|pencil case|pencil lead|pencil sharpener|pencil shaving|pet bedding|pine|pine cleaner|pine cone|\
pine forest|pine needle|pine resin|pine sap|pine soap|pine tea|pine tree|pine wood|pinewood|plank|ply|ply wood|\
plywood|popsicle stick|rabbit hutch|raw oak|raw wood|resin|resinous|rosewood|sandal wood|sandalwood|sap|sap wood|\
sappy|sauna|saw dust|saw mill|sawdust|sawmill|shavings|skewer|splinter|split log|spruce|spruce tip|stave|teak|timber|\
timber yard|tongue depressor|toothpick|tree bark|twig|unoaked=0|veneer|virgin oak|walnut wood|wet decking|wet oak|\
wet wood|white oak|wood|wood bark|wood chip|wood pulp|wood sap|wood shaving|wood shop|wood yard|wooden bench|\
wooden box|wooden chair|wooden crate|wooden drawer|wooden floor|wooden ruler|wooden skewer|wooden spoon|wooden stick|\
woodiness|woodland bark|woodpile|woodpulp|woodshed|woodshop|woodwork|woodwork room|woodworker|woodworking shop|\
woodyard|workshop|young oak`,
  "wood.toasted": `alligator char|barbecue charcoal|barrel|barrel char|barrel house|barrel room|barrel stave|\
barrel wood|black oak|bonded warehouse|bourbon barrel|bourbon cask|burned wood|burnt barrel|burnt log|burnt oak|\
burnt stick|burnt timber|burnt wood|campfire ember|caramelised oak|caramelized oak|carbon|cask|cask wood|casks|char|\
char coal|char wood|charcoal|charcoal briquette|charcoal pencil|charred|charred barrel|charred cask|charred oak|\
charred stave|charred wood|charring|charring room|charry|charry oak|cooper|cooper's fire|cooper's shop|cooperage|\
coopering|dark oak|deep toast|dying embers|ember|ember wood|glowing coals|glowing embers|heavy char|heavy toast|\
hot coals|live coal|medium toast|oak barrel|oak cask|oak char|oak embers|oak toast|pyrography|rick house|rickhouse|\
roasted oak|roasted wood|scorched oak|scorched wood|seasoned oak|seasoned wood|singed wood|smoked oak|smouldering oak|\
sweet oak|toast oak|toast wood|toasted|toasted barrel|toasted oak|toasted stave|toasted wood|toasty|toasty oak|\
toasty wood|warm oak|whisky cask|wood of barrel|wood of the barrel`,
  "wood.old": `aged oak|aged wood|ancient oak|ancient timber|ancient wood|antique|antique furniture|antique shop|\
antique store|antique wood|attic|banister|bannister|barn wood|barnwood|beeswax polish|benzoin|benzoin resin|\
blanket box|blanket chest|bog oak|bookcase|bookshelf|bookshelves|cathedral|cedar box|cedar cigar box|cellar|censer|\
chancel|chapel|choir stall|church|church pew|church wood|cigar box|cloister|damp warehouse|danish oil|dead tree|\
dried wood|driftwood|dry old wood|dry rot|dry wood|dunnage|dunnage warehouse|dusty furniture|dusty wood|fiddle case|\
floor polish|floor wax|fossil wood|frankincense|furniture polish|furniture wax|grandfather clock|grandfather's desk|\
grandfather's study|guitar case|gun cabinet|gun stock|hollow log|hollow tree|hope chest|humidor|incense|\
incense burner|joss stick|junk shop|lacquer box|lacquered wood|linen chest|loft|moth ball|mothball|mouldering wood|\
museum|mushroomy cellar|myrrh|naphthalene|oak panel|oak panelling|old attic|old barn|old barn wood|old barrel|\
old beam|old boards|old boat|old boathouse|old bookcase|old bookshelf|old bureau|old cabinet|old cask|old cellar|\
old cello|old chair|old chapel|old chest|old church|old crate|old cupboard|old desk|old drawer|old dresser|\
old floorboard|old furniture|old guitar|old house|old hull|old lacquer|old oak|old organ|old piano|old room|\
old school desk|old schoolroom|old shack|old shed|old ship|old stump|old table|old timber|old toolbox|old trunk|\
old varnish|old violin|old wardrobe|old warehouse|old wood|panelled library|panelled room|panelling|parquet|\
parquet floor|pew|piano|polished bannister|polished boards|polished floor|polished furniture|polished oak|\
polished parquet|polished table|polished wood|pulpit|rifle stock|rosin|rotten log|rotten wood|rotting log|\
rotting wood|sacristy|school desk|sea chest|seasoned timber|shellac|ship's hold|ship's timber|ships timbers|sideboard|\
stately home|steamer trunk|teak oil|tired oak|tired wood|tool handle|tool shed|toolshed|tree stump|varnished|\
varnished wood|vestry|violin|violin case|wardrobe|warehouse floor|wax polish|waxed floor|waxed wood|weathered plank|\
weathered wood|welsh dresser|wine cellar|wood dusty|wood oil|wood old|wood panel|wood paneling|wood panelling|\
wood polish|wood rot|wood stain|wood varnish|wood wax|woodworm|writing desk|yacht varnish`,
  "smoke.smoke": `applewood smoke|ash|ash tray|ashen|ashes|ashpan|ashtray|asphalt|autumn bonfire|bacon|bacon crisp|\
bacon fat|bacon grease|barbecue|barbecue crisps|barbecue sauce|barbecue sausage|barbecue smoke|barbecued|\
barbecued meat|barbeque|bbq|bbq chips|bbq crisps|bbq pit|bbq rib|bbq sauce|bbq smoke|beach barbecue|beach bonfire|\
beach campfire|beach fire|beef jerky|birch smoke|birch tar|bitumen|blacksmith|blacksmith's forge|blown out candle|\
bon fire|bonfire|bonfire night|bonfire smoke|brisket|brush fire|burn the wood|burn wood|burned|burned toast|\
burning coal|burning grass|burning hay|burning heather|burning leaf|burning log|burning oak|burning pine|burning rope|\
burning straw|burning stubble|burning the wood|burning wood|burnt|burnt burger|burnt chop|burnt end|burnt fat|\
burnt grass|burnt hair|burnt hay|burnt heather|burnt herb|burnt leaf|burnt meat|burnt paper|burnt popcorn|\
burnt porridge|burnt rosemary|burnt sausage|burnt steak|burnt straw|burnt stubble|burnt toast|camp fire|campfire|\
candle smoke|candle wick|char grilled|chargrill|chargrilled meat|chargrilled steak|charred meat|charred steak|\
cherrywood smoke|chimney|chimney sweep|cigar ash|cigar smoke|cigarette|cigarette ash|cigarette butt|cigarette smoke|\
coal|coal bunker|coal cellar|coal dust|coal fire|coal smoke|coal tar|cold ash|cold fire|cold fireplace|cold grate|\
creosote|dead fire|doused fire|driftwood fire|driftwood smoke|dying fire|engine smoke|exhaust|exhaust fumes|\
exhaust smoke|extinguished candle|extinguished fire|fag butt|fag end|fire burning|fire grate|fire pit|fire place|\
firepit|fireplace|fireside|firework smoke|flame grilled|flue|forest fire|forge|frankfurter|fresh tarmac|frying bacon|\
gammon|garden bonfire|garden fire|grill|grilled fish|grilled meat|grilled sausage|guy fawkes night|ham|hearth|hickory|\
hickory chips|hickory smoke|hot asphalt|hot horseshoe|hot tar|hot tarmac|house fire|incense smoke|jerky|kipper|\
kippers|lapsang|lapsang souchong|lapsang souchong tea|lapsang tea|lardons|leaf bonfire|leaf fire|log burner|\
log burning|log fire|maple bacon|mesquite|mesquite smoke|mesquite wood|mezcal|muirburn|non peated=0|oak smoke|\
oily smoke|open fire|pancetta|peat|peat bog|peat ember|peat fire|peat free=0|peat reek|peat smoke|peated|peatiness|\
peaty|pine smoke|pine tar|pinewood smoke|pipe smoke|pit beef|pulled pork|put out fire|railroad tie|railway sleeper|\
rauchbier|reek|rib rack|road tar|roof felt|roof tar|roofing felt|ship's pitch|singed|singed hair|smog|smoke|\
smoke beer|smoke bomb|smoke free=0|smoke house|smoke oil|smoked|smoked almond|smoked bacon|smoked beer|smoked butter|\
smoked cheese|smoked fish|smoked haddock|smoked ham|smoked herb|smoked honey|smoked mackerel|smoked malt|smoked meat|\
smoked mussel|smoked oyster|smoked salmon|smoked salt|smoked sausage|smoked tea|smokehouse|smokeless=0|smokey|smokily|\
smokiness|smoking shed|smoky|smoky bacon|smoky sausage|smoky tea|smoldering|smoulder|smouldering|smouldering ember|\
snuffed candle|snuffed out candle|snuffed wick|soot|souchong|spare rib|steam engine|steam locomotive|steam train|\
stub end|stubble burning|sweet smoke|tar|tar barrel|tar rope|tarmac|tarred deck|tarred rope|tarred string|tarry|\
tarry rope|tarry tea|tobacco smoke|turf|turf fire|turf smoke|unpeated=0|unsmoked=0|wet ash|wick|wildfire|wood ash|\
wood burner|wood fire|wood smoke|wood stove|woodfire|woodsmoke|woodstove|yesterday's fire`,
  "smoke.medicinal": `algae|anchovy|antiseptic|antiseptic cream|antiseptic lotion|antiseptic soap|apothecary|\
apothecary jar|balm|band aid|bandage|beach|beach pebble|beach stones|bladderwrack|boat hull|boat shed|boat yard|\
boathouse|boatyard|bonito|brackish|brine|brine barrel|brined|brininess|caper|caper berry|carbolic|carbolic soap|\
carbolic soap bar|chemist|chemist shop|chlorinated|chlorinated pool|chlorine|clam|clam broth|coal tar soap|coast|\
coastal|coastline|cockle|crab|crab meat|creel|creosol|crepe bandage|cresol|dashi|dental surgery|dentist|\
dentist's chair|dentist's office|disinfectant|dock|dockside|doctor's office|doctor's surgery|doctors office|\
doctors surgery|dr's office|dried fish|drug store|drugstore|dry fish|drying nets|drying seaweed|dulse|embrocation|\
estuary mud|first aid|first aid box|first aid kit|fish box|fish crate|fish dried|fish market|fish oil|fish roe|\
fish sauce|fish skin|fish slab|fish stall|fisherman's jumper|fisherman's wharf|fishing boat|fishing gear|\
fishing harbour|fishing net|fishing port|fishing shed|fishing tackle|fishing wharf|fishmonger|fishy|flaked salt|\
fog off the sea|fresh fish|gauze|gentian violet|germ killer|guaiacol|haar|haddock|ham brine|harbor|harbour|herring|\
hospital|hospital bandage|hospital corridor|hospital soap|hospital ward|infirmary|iodine|iodised|iodised salt|\
iodized salt|jetty|kelp|kombu|langoustine|latex glove|limpet|liniment|lobster|lobster creel|lobster pot|low tide|\
mackerel|mackerel skin|marine|maritime|marsh samphire|medical|medicinal|medicine|medicine cabinet|medicine chest|\
merbromin|mercurochrome|moules|mud flat|mudflat|muscle salve|mussel|nori|ocean|ocean air|ocean breeze|ocean spray|\
ointment|old nets|old rope|olive brine|olive juice|oyster|oyster liquor|oyster shell|pebble beach|pharmacy|phenol|\
phenolic|pickle brine|pickled herring|pier|pine disinfectant|plaster|pool water|prawn|prawn cracker|quay|quayside|\
rigging|rock pool|rockpool|rope|rubbing cream|sail cloth|salt air|salt breeze|salt cod|salt crackers|salt crust|\
salt crystals|salt flakes|salt flat|salt fog|salt lick|salt marsh|salt pan|salt spray|salt water|salt wind|\
salted fish|saltwater|salty air|salty breeze|salty mud|salty sea|salty seaside|salty spray|salty wind|samphire|\
sardine|scallop|sea|sea air|sea breeze|sea fog|sea front|sea grass|sea kale|sea mist|sea salt|sea shell|sea shore|\
sea spray|sea vegetable|sea water|sea weed|seagrass|seashell|seashore|seaside|seaspray|seawater|seaweed|seaweed crisp|\
shell|shellfish|shingle|ship's rigging|ship's rope|shore|shoreline|shrimp|shrimp paste|spume|squid ink|\
sticking plaster|strandline|surgical dressing|surgical glove|surgical tape|surgical ward|sushi wrapper|swimming pool|\
tar shampoo|tar soap|tarred ship|tidal mud|tidal pool|tide line|tide pool|tide wrack|tideline|toilet cleaner|\
trawler net|wakame|wet net|wet rope|wharf|wharves|wrack`,
  "earth.earth": `after the rain|aluminium|aluminum|ash soil|autumn forest|autumn leaf|autumn woods|bean sprout|beet|\
beetroot|black earth|black leaves|black truffle|blood|bog|brassy|brick|brick dust|brown leaves|carrot|cave|cep|\
chalk cliff|chalk dust|chalk soil|chanterelle|churchyard|clay|clay pot|coin|compost|compost heap|concrete|copper|\
copper coin|copper pipe|crypt|damp cave|damp chalk|damp earth|damp forest|damp garden|damp ground|damp leaves|\
damp rock|damp sand|damp soil|damp stone|damp woods|dark earth|dead leaves|desert dust|dirt|dried leaves|\
dried mushroom|dry earth|dry leaves|dug earth|dusty|dusty attic|dusty cellar|dusty floor|dusty road|dusty track|earth|\
earthen|earthenware|earthiness|fall leaves|fallen leaves|farm track|farmyard mud|ferrous|first rain|flint|flower pot|\
flowerpot|forest floor|fresh earth|fresh rain|fungal|fungi|fungus|garden shed|garden soil|ginseng|granite|graphite|\
gravel|graveyard|greenhouse soil|gunflint|horse manure|horse muck|humus|iron|jerusalem artichoke|lead pipe|\
leaf litter|leaf mold|leaf mould|leaf mulch|lichen|limestone|loam|manure|marsh|metal|metal shavings|metallic|\
metallic tang|mineral|mineral salts|mineral water|minerality|minerally|morel|moss|mountain stream|muck|muck heap|mud|\
muddy|mulchy|mushroom|neep|old battery|old leaves|old nails|parsnip|patchouli|peat moss|peat soil|pebble|penny|\
petrichor|plant pot|plaster dust|porcini|potato|potato sack|potato skin|potter's wheel|potting compost|potting shed|\
potting soil|rain forest|rain on hot pavement|rain on stone|rainforest|rainwater|raw potatoes|river bed|river water|\
riverbed|rock dust|root|root cellar|root veg|root vegetable|rotting leaves|rust|rusty nail|sand|shiitake|slate|soil|\
sous bois|spring water|stable muck|stable yard|steel|steel wool|stone|stone cellar|stone church|stoniness|\
stream water|summer rain|swamp|swede|terracotta|tin can|tinny|toadstool|truffle|truffle oil|truffled|turned earth|\
turnip|undergrowth|vetiver|water butt|well water|wet cement|wet chalk|wet concrete|wet dirt|wet earth|wet forest|\
wet gravel|wet ground|wet leaf|wet pavement|wet plaster|wet rock|wet slate|wet soil|wet stone|wet woods|white truffle|\
woodland|woodland floor|woods after rain|worm cast`,
  "earth.leather-and-leaf": `antiquarian book|baccy|baccy pouch|baccy tin|baseball glove|baseball mitt|book binding|\
book pages|book spine|bookbinding|books|bookshop|bookstore|boot polish|boot room|boxing glove|bridle|car seat leather|\
catcher's mitt|catchers mitt|chamois|chaw|cherry pipe tobacco|cherry tobacco|chewing tobacco|cigar|cigar leaf|\
cigar lounge|cigar wrapper|club armchair|cobbler's|cobbler's shop|cow hide|cowhide|cricket bag|cricket ball|\
cricket glove|cuban cigar|cured leaf|cured tobacco|dark tobacco|dried leaf|dried tobacco|dry leaf|dry paper|\
dry tobacco leaf|drying tobacco|fresh cigarette|fresh tobacco|gentleman's club|gentlemen's club|gents club|\
grandfather's pipe|harness|harness room|havana|hookah|horse barn|horse blanket|horse box|horse saddle|horse stable|\
horse stall|horse sweat|horse tack|horsebox|horses|horsey|horsy|hymn book|hymnal|leaf tobacco|leather|\
leather armchair|leather belt|leather boot|leather bound book|leather chair|leather couch|leather glove|\
leather jacket|leather oil|leather seat|leather shoe|leather shop|leather sofa|leather trousers|leather wallet|\
leather workshop|leatherbound|library|love letters|manuscript|musty pages|new leather|newspaper|newsprint|old atlas|\
old bible|old book|old bookshop|old boot|old car|old car seat|old comics|old football|old horse|old leather|\
old letter|old library|old magazine|old newspaper|old pages|old paper|old pipe|old study|old suitcase|paper|\
paper bags|parchment|pipe|pipe stem|pipe tobacco|polished leather|prayer book|rawhide|riding boots|rolling baccy|\
rolling tobacco|saddle|saddle leather|saddle room|saddle soap|saddle wax|saddlery|second hand bookshop|sheepskin|\
shisha|shoe leather|shoe polish|shoe shop|snuff|snuffbox|soft leather|stable|study|suede|sweaty leather|sweaty saddle|\
sweet tobacco|tabac|tack|tack room|tanned hide|tanner's|tannery|tanning pit|tobacco|tobacco barn|tobacco leaf|\
tobacco pouch|tobacco shop|tobacco tin|tobacconist|unlit cigar|unlit cigarette|unsmoked cigar|used bookstore|\
vanilla tobacco|vellum|walking boots|watch strap|wet tobacco|whip leather|worn leather|yellowed pages|yellowing pages`,
  "savoury.sulphur": `asafoetida|bad egg|beef|beef broth|beef stock|beef tea|bicycle tire|bicycle tyre|bike shop|\
bike tire|bike tyre|bin juice|black powder|black pudding|blood sausage|blown out match|boiled cabbage|\
boiled cauliflower|boiled egg|bone marrow|book of matches|bouillon|broccoli|broth|brown sauce|brussels sprout|\
burning rubber|burnt match|burnt rubber|butcher's|butcher's shop|cabbage|cap gun|car tire|caramelized onions|\
casserole|cat food|cauliflower|chicken skin|chicken soup|chicken stock|coleslaw|collard greens|consomme|\
cooked cabbage|cordite|corned beef|dog food|drain|drains|egg|egg salad|egg sandwich|egginess|fart|firecracker|\
firework|flatulence|fried onion|game|garden hose|garlic|garlic butter|garlicky|gas leak|gassy|gravy|gravy granules|\
grilled steak|guff|gum boots|gumboot|gun powder|gun smoke|gunpowder|gunsmoke|haggis|hamburger|hard boiled egg|hoisin|\
hose pipe|hosepipe|hot water bottle rubber|hung pheasant|inner tube|kale water|lamb stew|latex|leek|lit match|\
marrowbone|marsh gas|match head|match smoke|matchbox|matches|matchhead|matchstick head|meat|meat pie|meat stock|\
meatiness|mercaptan|miso|msg|natural gas|neoprene|new tires|offal|onion|onion skin|onion soup|pate|pencil eraser|\
pheasant|plimsoll|plughole|pork belly|ramps|raw beef|roast beef|roast chicken|roast duck|roast lamb|roast meat|\
roast pork|roast turkey|rotten egg|rotting vegetable|rubber|rubber band|rubber tyre|rubbery|rubbish bin|safety match|\
sauerkraut|sausage|savory|savoury|sewage|sewer|shallot|shell casing|shoyu|soy|soy sauce|soya|soya sauce|\
spent cartridge|spent match|spent rocket|sprout|steak|stink bomb|stock cube|struck match|sulfite|sulfur|sulfuric|\
sulfurous|sulphite|sulphur|sulphuric|sulphuring|sulphurous|swamp gas|tamari|teriyaki|tires|toy gun|truffle fries|\
turnip greens|tyre|umami|venison|vitamin b|vitamin tablets|vitamins|wellington boot|welly boot|wet suit|wetsuit|\
worcester sauce|worcestershire sauce|yeast extract|yeast spread`,
  "savoury.fat": `avocado oil|axle grease|baby oil|bacon dripping|bar of soap|bed linen|beef dripping|beef fat|\
bees wax|beeswax|bicycle oil|bike oil|brake fluid|brilliantine|butter wrapper|candle|candle wax|candlewax|chain oil|\
cheese rind|cheese wax|chip fat|chip oil|chip pan|chip shop|chips|church candle|clean linen|cod oil|cold cream|\
cooking oil|crackling|crayon|crisps|deep fryer|detergent|dish soap|doughnut fat|dripping|duck fat|engine oil|\
face cream|face paint|fat|fattiness|french fry|fresh laundry|fresh linen|fried bread|fried fat|fried food|\
fried potato|fries|fryer|frying fat|frying oil|gear oil|goose fat|grease|grease paint|greasepaint|gun oil|hair oil|\
hand lotion|hand soap|hand wash|handwash|hemp oil|lamp oil|lanolin|lard|laundry|linseed|linseed oil|lip balm|\
lip gloss|lipstick|lotion|lubricant|machine oil|mineral oil|moisturiser|motor oil|mutton|oil can|oil paint|olive oil|\
paraffin wax|parmesan rind|peanut grease|pear soap|petroleum jelly|pomade|pork rind|pork scratching|potato chip|\
potato crisp|putty|rapeseed oil|sealing wax|sewing machine oil|shampoo|shaving cream|shaving foam|sheep|sheep wool|\
soap|soapiness|soapsuds|suet|sunflower margarine|sunflower oil|tallow|tempura|tractor oil|vegetable oil|\
washing powder|washing up liquid|wax|wax crayon|wax jacket|wax paper|waxed canvas|waxed cloth|waxed cotton|\
waxed jacket|waxed paper|waxed string|waxiness|wet wool|wool|wool jumper`,
  "savoury.sour-and-sweaty": `acetic|acetic acid|ammonia|armpit|baby sick|baby spit|baby vomit|balsamic|\
balsamic vinegar|beer dregs|bile|blue cheese|body odor|body odour|bretty|brie|butyric|camembert|cat litter|cat pee|\
cat piss|cat spray|cat urine|changing room|cheddar|cheese|cider vinegar|curdled|curdled cream|curdled milk|\
damp dirty dog|damp dog|damp fur|diaper|dirty sock|dog basket|dog bed|dog blanket|feet|flat beer|football boots|goat|\
goat cheese|gorgonzola|gym bag|gym kit|gym locker|gym shoe|gym sock|kimchi|kombucha|lambic|litter box|litter tray|\
locker room|malt vinegar|mouse cage|mouse droppings|mousy|nappy|off cream|off fruit|off milk|old cheese|old sneaker|\
old sock|old trainer|parmesan|pickle vinegar|pickled|pickled onion|pickling|pickling liquid|pickling vinegar|\
pub carpet|puke|rancid|rancid butter|rancid cream|rancid milk|rancid oil|rancidity|rotten fruit|rotting fruit|\
rugby kit|rugby shirt|sauerkraut juice|shoes worn|sick|smelly feet|smelly shoes|sock|socks|sour beer|sour cabbage|\
sour cheese|sour cider|sour dairy|sour fruit|sour milk|sour pickle|sour wine|spilt beer|spit up|spoiled milk|\
spoilt milk|sports bag|sports hall|squash court|stale ale|stale beer|stale wine|stilton|stinky cheese|stinky feet|\
stomach acid|strong cheese|sweat|sweatiness|sweaty sock|tomcat|trainers|urinal|urine|vinegar|vomit|washed rind|\
wet collie|wet dog|wet fur|wet horse|wet hound|wet labrador|wet poodle|wet shoes|wet spaniel|wet terrier|\
white vinegar|wine dregs|wine vinegar|worn shoes`,
  "savoury.stale": `baby food|basement|boiled carrots|boiled greens|boiled veg|boiled vegetable|burlap|canned corn|\
canned peas|canned vegetable|canteen dinner|cardboard|cardboard box|charity shop|closed room|cooked vegetable|cork|\
cork taint|corked|damp|damp basement|damp book|damp canvas|damp cardboard|damp carpet|damp cellar|damp cloth|\
damp coat|damp cupboard|damp flannel|damp house|damp jumper|damp laundry|damp newspaper|damp paper|damp plaster|\
damp room|damp rug|damp tent|damp towel|damp wall|damp wallpaper|damp washing|damp wool|dank|dish cloth|dish rag|\
dish water|dishcloth|dishwater|drain board|dusty curtains|egg box|floor cloth|fug|fusty|hessian|hospital food|\
jute sack|mildew|mildewed|mold|mop bucket|mould|mould spores|mouldy books|mouldy bread|mouldy carpet|musty|\
musty cupboard|musty room|old blanket|old butter|old carpet|old clothes|old coat|old fat|old flannel|old fridge|\
old mattress|old mop|old nuts|old oil|old rag|old sack|old sponge|old tent|old towel|old wallpaper|old water|\
overcooked veg|overcooked vegetable|oxidation|oxidative|oxidised|oxidised apple|oxidized|packing box|packing paper|\
pasta water|pond|pond water|pondwater|potato water|rancid nut|rice water|sackcloth|school canteen|stagnant water|\
stale|stale air|stale biscuit|stale bread|stale cake|stale cereal|stale cracker|stale crisps|stale nut|stale oil|\
stale peanut|stale popcorn|stale tobacco|stale water|stuffy|stuffy room|tca|thrift store|tinned carrots|tinned peas|\
tinned soup|tinned spinach|tinned veg|tinned vegetable|unaired room|unopened room|vacuum bag|vacuum cleaner bag|\
vase water|vegetable soup|wallpaper paste|washing up water|wet book|wet canvas|wet cardboard|wet carpet|wet cloth|\
wet coat|wet flannel|wet jumper|wet laundry|wet mop|wet newspaper|wet paper|wet rag|wet rug|wet sponge|wet tent|\
wet towel|wet washing`,
  "spirit.heads": `acetone|air bed|airbed|airplane glue|ammonia cleaner|art room|artificial|artificial banana|\
artist's studio|ballpoint|bathroom cleaner|beach inflatable|benzene|biro|bleach|brass polish|brush cleaner|\
burning electrics|burning plastic|burnt plastic|burnt wire|butane|camping gas|car garage|cellulose|cellulose thinner|\
chemical|chemical sweetness|chemically|chemically sweet|chemicals|chemistry lab|chemistry set|circuit board|\
cleaning fluid|cleaning product|cleaning spray|cling film|clingfilm|contact cement|correction fluid|descaler|diesel|\
diesel fumes|diesel oil|doll's head|drain cleaner|dry cleaner|dry cleaning|duct tape|electrical fire|electrical tape|\
epoxy|ester|ethyl acetate|fake fruit|felt tip|felt tip pen|fiberglass|fibreglass|fibreglass resin|floor cleaner|\
fresh ink|fresh paint|fresh varnish|fuel|fuel oil|gas can|gas pump|gas station|gasoline|glass cleaner|gloss paint|\
glue|glue stick|hair dye|hair lacquer|hair salon|hair spray|hairdresser|hairdye|hairspray|heating oil|highlighter|\
highlighter pen|hot circuit|hot electrics|hot plastic|household cleaner|inflatable|ink|jet engine|jet fuel|kerosene|\
kerosene lamp|laboratory|lacquer|lighter fluid|lighter fuel|lighter gas|lilo|linoleum|lunch box|lunchbox|magic marker|\
marker pen|masking tape|mechanic's garage|metal polish|model aeroplane glue|model glue|model kit|nail bar|nail polish|\
nail polish remover|nail salon|nail varnish|nail varnish remover|naphtha|new car|new car smell|new carpet|new doll|\
new electronics|new lino|new vinyl|oven cleaner|paddling pool|paint|paint fumes|paint stripper|paint thinner|\
paintbrush cleaner|paraffin|paraffin lamp|perm solution|permanent marker|peroxide|petrol|petrol fumes|petrol station|\
photocopier|plastic|plastic bag|plastic wrap|plasticky|polish remover|polyester|pool liner|primus|propane|\
puncture repair|pva|pvc|pvc pipe|resin glue|rubber cement|rubber solution|school lab|sellotape|shoe spray|\
shower curtain|silver polish|solder flux|solvent|spray adhesive|spray can|spray paint|sticky tape|super glue|\
superglue|synthetic banana|thinners|tin of paint|toner|turpentine|turps|varnish|vinyl record|vinyl seats|wet paint|\
white gas|white out|white spirit|whiteboard marker|whiteboard pen|window cleaner|wood glue|xylene`,
  "spirit.ethanol": `alcohol|alcohol bite|alcohol burn|alcohol fumes|alcohol heat|alcohol kick|alcohol pad|\
alcohol sting|alcohol swab|alcohol tingle|alcohol vapor|alcohol vapour|alcohol wipe|alcoholic|alcoholic burn|\
antibac gel|antibacterial gel|bathtub gin|bite on the nose|booze|booziness|burn on the nose|burns my nose|\
burns my nostrils|burns the nose|burns the nostrils|burns your nostrils|cask strength heat|ethanol|ethanol bite|\
ethanol burn|ethanol heat|ethanol sting|ethanolic|eye watering|eyes water=8|feints|fire water|firewater|foreshots|\
fresh spirit|fumes|grain spirit|grappa|hand gel|hand rub|hand sanitiser|hand sanitizer|heat on the nose|\
high proof heat|high wines|hooch|hot nose|hot on the nose|low wines|made my eyes water=8|makes my eyes water|\
makes your eyes water|medical alcohol|meths|methylated spirit|moonshine|neutral spirit|new make|new make spirit|\
newmake|nose burn|nose heat|nose hot|nose prickle|nose sting|nose tingle|overproof|poitin|prickle|prickliness|\
prickling|prickling nose|raw alcohol|raw booze|raw hooch|raw spirit|rocket fuel|rubbing alcohol|sanitiser|\
sanitising gel|sanitizer|schnapps|sharp on the nose|singes my nostrils|singes nose hairs|singes the nose|\
singes the nose hairs|singes the nostrils|spirit|spirit bite|spirit heat|spiritous|spirituous|still house|still room|\
stillhouse|stillroom|sting in the nose|sting my nose|stings the nose|stings your nose|surgical spirit|\
tickles the nostrils|tingle in the nose|tingle on the nose|vapor|vapour|vodka|waters the eyes|white dog|\
white lightning`,
  "taste.basic": `acerbic|acid|acidic|acidity|acidulous|bitter|bitter sweet|bitterish=3.2|bitterly|bittersweet|\
bone dry=8|bone dryness=8|bonedry=8|cloying=8|cloyingly sweet=8|dry|dry as a bone=8|dry as a desert=8|dry as dust=8|\
dry as sand=8|dryish=3.2|face puckering=8|lip smackingly sour=7.5|mouth puckeringly sour=8|off dry|saccharine=7|\
saline|salinity|salt|salted|saltily|saltiness|salty|savory taste|savoury taste|semi sweet|sharp acidity|\
sickly sweet=7.5|sickly sweetness=7.5|sickly=7.5|sour|sour sweet|sourish=3.2|sourly|sugariness|sugary sweet|sweet|\
sweet and sour|sweet as anything=8|sweet as honey=8|sweet as sugar=8|sweet sour|sweetish=3.2|sweetly|sweetness|\
syrupy sweet|tang|tanginess|tart|tooth achingly sweet=8|tooth rotting=8|toothachingly sweet=8|umami taste|unsweet=0|\
unsweetened=0`,
  "feel.weight": `a lot of weight=7.5|big bodied=7.5|big body=7.5|bigger body|body|buttery mouthfeel|buttery texture|\
chewiness=7|chewy|coating|coating the mouth|coats everything|coats like=7|coats my mouth|coats my tongue|\
coats the glass|coats the mouth|coats the palate|coats the tongue|coats well=7|coats your mouth|creamy|creamy texture|\
dense=7|dilute=2|diluted=2|feeble body=2|fills the mouth=7|full bodied=7.5|full body=7.5|full=7|gelatinous|gloopy=7|\
good weight|heavy bodied=7.5|heavy body=7.5|hefty=7.5|insubstantial=2|lacking body=0|lacks body=0|lacks weight=0|\
light bodied=3|light body=3|light on the tongue=3|light=3|lightweight=2|little body=2|lush|meagre=2|med bodied=5|\
med body=5|med weight=5|medium bodied=5|medium body=5|medium weight=5|medium=5|middling body=5|mouth coating|\
mouth filling=7|mouthcoating|mouthfilling=7|nice weight|no body=0|not much body=2|oil|oiliness|oily|oily texture|\
plush|real weight=7|really coats=7|satin|silk|silken|silkiness|skinny=2|slick|slippery|some weight|sticky|\
substantial=7|syrupy=7|thick=7|thickness|thin=2|thinnish=2.5|unctuous=7|viscosity|viscous=7|watered down=2|watery=2|\
weak body=2|weedy=2|weighty=7|wispy=2|without body=0`,
  "feel.burn": `afterburn|anaesthetic|anesthetic|barn burner=8|bite|bites|biting=7|blazing=8|boozy heat|burn|\
burned my mouth=7.5|burning=7.5|burns like=7.5|burns=7|chest warmth|clear your sinuses=8|clears the sinuses=8|\
effervescence|effervescent|ethanol kick|fiery=8|fizz|fizzes|fizziness|glow|glowing|heat|hot|hug|kentucky hug|kick|nip|\
numb|numbing|paint aff=8|peppery burn|pop rocks|popping candy|prickle on the tongue|prickles the tongue|punchy=7|\
scalding=8|scorcher=8|scorching=8|searing=8|space dust|sparkling|sparkly|spritzy|sting|stinging|stings|strip paint|\
strip varnish=8|strip wallpaper=8|strips the enamel=8|take the enamel off=8|take the paint off=8|take the skin off=8|\
take the varnish off=8|tingle|tingles|tingliness|tingling|warm|warm glow|warming|warmly|warms|warmth`,
  "feel.pull": `astringency|astringent|chalk|chalkiness|cheek sucking|cotton mouth|cottonmouth|dries|dries my mouth|\
dries out|dries the mouth|dries the tongue|dries your mouth|dry mouth|dry tongue|drying|drying mouth|\
dryness in the mouth|dryness on the tongue|dusty feel|dusty mouth|dusty texture|dusty tongue|fur on the teeth|\
fur on the tongue|furry|furry tongue|furs the teeth|furs the tongue|fuzzy tongue|glides|gliding|goes down smooth=2|\
grainy texture|grip|gripping|grippy|grips|gritty|gums dry|leathery tongue|leaves dry the mouth|leaves me dry|\
leaves my mouth dry|leaves the mouth dry|leaves you dry|makes my mouth dry|mouth coating dry|mouth dry|mouth drying|\
mouth feels dry|mouth puckering|oak tannins|parched|parching|powder on the tongue|powdery|powdery texture|pucker|\
puckered|puckering|rasping|raspy|rough tongue|sandpaper|sherbety chalk|silken smooth=2|smooth as a baby=2|\
smooth as anything=2|smooth as butter=2|smooth as glass=2|smooth as silk=2|smooth=2.5|smoothly|smoothness|\
squeaky teeth|stewed tannin|sucks the cheeks|sucks the cheeks in|sucks the moisture|sucks your cheeks in|supple|\
tannic|tannic dryness|tannic grip|tannin|tanninic|tannins|tea tannin|teeth squeak|velvet=2.5|walnut skin dryness|\
wood tannin`,
  "time.finish": `clean finish|fading bitter|fading bitterness|fading sweet|fading sweetness|lingering spice`,
  "time.finish+feel.burn": `hot finish`,
  "time.finish+wood.fresh": `lingering oak`,
  "whole.balance": `assertive|austere|balance|balanced|bold|brash|bright|clean|closed|closed up|coherent|cohesive|\
complex|complexity|crisp|deep|delicacy|delicate|depth|disjointed|edgy|flat|fresh|harmonious|harmony|harsh|heavy|\
hollow|imbalanced|immature|integrated|layered|lifeless|linear|lively|many layers|mature|maturity|mellow|muddled|\
multi layered|off balance|one dimensional|one note|open|opened up|opening up|opens up|out of balance|over oaked|\
over wooded|overoaked|past its best|polished|pure|raw|refined|rich|robust|rough|rough edge|round|rounded|rugged|\
rustic|sharp|shut down|simple|simplicity|single note|soft|spiky|straight forward|straightforward|tired|unbalanced|\
uncomplicated|under oaked|underoaked|vibrant|well aged|well balanced|well integrated|well rounded|young|youth|\
youthful`,
};
