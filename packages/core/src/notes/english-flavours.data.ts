/**
 * English words for what a whiskey tastes of, by attribute: singular, lower case, without accents, one space between words. Plurals,
 * possessives and the endings of english-endings.data.ts follow of themselves. A word under two attributes, joined by "+", says both.
 * `word=7` is a strength that the word itself tells (0 to 10). The families and groups and about 300 of the words are the trade's;
 * all of it: common practice, no source.
 */
export const FLAVOURS: Readonly<Record<string, string>> = {
  "grain.cereal": `ale|barley /tea/water|barleycorn|basmati|bean flour|black/dark/wholemeal bread|bran|bran muffin|bread black|\
/breakfast/hot cereal|brewery|brewhouse|buckwheat|bulgur|chaff|chicken/horse feed|corn /bread/chip/husk/mash/oil|\
cornbread /crust|cornfield|cornflake|cornmeal|couscous|/cracked/cream_of/puffed/shredded wheat|crispbread|draff|\
feed bag/sack|feed store|flapjack|flour mill|grainfield|graininess|granary|granola|grist|grits|homebrew|hominy|husk|\
kettle/sweet corn|kiln floor|lager|maize|malt /barn/biscuit/drink/floor/loaf|malted /barley/milk|malthouse|maltings|\
malty biscuit|mash /tun|millet|muesli|nacho|oat /biscuit/milk|oatcake|oatmeal|pilsner|polenta|popcorn|porridge|porter|\
puffed rice|pumpernickel|quinoa|rice /cake/cracker|ricecake|rye /bread/cracker/crisp/flour/grain/toast|semolina|sorghum|\
sour mash|spelt|/spent grain|stout|/stout beer|sweetcorn|taco shell|tamale|tortilla|tortilla chip|wheat beer/cracker/grain|\
wheatfield|wholegrain|wholemeal|wholewheat|wort`,
  "grain.bake": `/amaretti/butter/buttermilk/digestive/tea/water biscuit|/angel/birthday/fairy/funnel/pound/sponge/tea/wedding/yellow cake|\
babka|bagel|baguette|bake shop|baked good|/baked/baking/brown/crusty/monkey/potato/short/soda/sweet/white bread|\
/baked/danish/puff/shortcrust/sweet pastry|bakehouse|baker's /yeast|bakery|bakewell|baking|bannock|beignet|biscotti|\
biscuit/cheesecake base|bread crumb/crust/dough/roll|bread oven|bread/bread_and_butter/steamed/suet/yorkshire pudding|\
breadcrumb|breadiness|breadstick|brioche|/butter/oat/oatmeal/sugar cookie|cake mix/shop|/cake/pancake batter|challah|churro|\
ciabatta|cobbler|/cookie dough|/cornish pasty|/cream/graham cracker|crepe|croissant|crouton|crumble /topping|crumpet|crust|\
cupcake|/currant bun|danish|digestive|donut|doughiness|doughnut|dumpling|eclair|/english muffin|filo|flatbread|flour|\
focaccia|/french/melba/white toast|fresh bake/rolls|fritter|ladyfinger|loaf|madeleine|naan|pancake|patisserie|\
pie /crust/dough/shell|piecrust|pita|popover|poppadom|/potato scone|pretzel|profiterole|quiche|rich tea|rusk|saltine|\
shortbread|shortcake|shortcrust|/soda farl|sourdough|sponge /finger|streusel|strudel|/sugar wafer|tart shell|tartlet|\
teacake|turnover|victoria sponge|waffle /cone|white rolls|yeast|yeastiness`,
  "fruit.orchard": `apple /butter/cellar/core/loft/orchard/pie_filling/pip/schnapps/sweet/wine|applesauce|/asian/conference/poached/ripe pear|\
baked/bruised/cider/cooking/crab/poached/red/sliced/stewed/windfall apple|braeburn|bramley|calvados|crabapple|eau de vie|\
golden delicious|granny smith|green/pome/sharon/white fruit|/hard cider|membrillo|orchard|pear brandy/drop|peardrop|perry|\
pink lady|pippin|poire /williams|quince /paste|russet|scrumpy|tarte tatin|windfall`,
  "fruit.tropical": `jackfruit|banana /bread/chip/cream/custard/ester/milk/milkshake/split/sweet/toffee|banoffee|bubblegum|\
/candied/grilled/tinned pineapple|cantaloupe|coconut flesh|custard apple|dragonfruit|exotic|foam/fried/overripe banana|\
fruit cocktail/punch/salad|fruity gum|galia|guava|honeydew /melon|kiwi|kiwifruit|litchi|lychee|mango /lassi|mangosteen|\
melon|papaya|passionfruit /curd|pawpaw|pina colada|pineapple chunk|plantain|rum punch|tinned fruit/fruit_cocktail|\
tropical /sweet|tutti frutti|watermelon`,
  "fruit.stone": `amarena|apricot /yoghurt|/bing/black/boozy/brandied/candied/cocktail/glace/maraschino/morello/red/sour cherry|\
canned/doughnut/stewed/tinned/white peach|cherries|\
cherry bakewell/brandy/coke/cola/cough_drop/cough_syrup/pie_filling/sweet/tomato_skin|damson /cheese/gin|greengage|kirsch|\
maraschino|mirabelle|morello|nectarine|peach /cobbler_filling/iced_tea/melba/ring/schnapps/tea/yoghurt|plum cheese|\
sloe /gin|/stewed/victoria plum|stone fruit/fruity|stonefruit`,
  "fruit.berry": `berry pie/smoothie|bilberry|/black/concord/muscat/red/white grape|black/forest/hedgerow/mulled/red/summer fruit|\
blackberry/blueberry /pie|blackcurrant /sweet|bramble|cassis|/cherry/dark/forest/mixed/red/summer/wild berry|cherryade|\
cloudberry|cranberry|currant bush/jelly|elderberry|eton mess|fruit chew/drop/gum/leather/pastille|fruits of the forest|\
gooseberry|grape must|grapiness|grenadine|gumdrop|gummy /bear|hedgerow|huckleberry|jam /donut/doughnut/sandwich|jamminess|\
jelly /baby/bean/sweet|jellybean|lingonberry|loganberry|mulberry|muscat|pastilles|pomegranate|\
raspberry /coulis/ripple/sweet|raspberryade|red licorice/liquorice|redcurrant|rosehip|rowanberry|sangria|\
strawberry /lace/pencil/sweet/yoghurt|summer pudding|white currant|winegum|woodland strawberry`,
  "fruit.citrus": `bergamot /tea|blood/chocolate/seville orange|candied citrus/lemon/orange/orange_peel/peel|citric|citron|\
citrus /cleaner/fruit|clementine|creamsicle|dreamsicle|earl grey/grey_tea|kaffir/key lime|key lime pie|kumquat|\
lemon /and_lime/balsam/bar/barley/barley_water/butter/cheese/cream/curd/drizzle/lime/pie/shortbread/sweet/tea/wax|lemonade|\
lime /curd/pickle|limoncello|mandarin|margarita mix|marmalade|mixed peel|mojito|\
orange /cream/creamsicle/marmalade/soda/squash/sweet|orangeade|peel|pickled/salted lemon|/pink grapefruit|pith|pomelo|\
satsuma|sherbet /lemon/straw|st clement's|tangerine|yuzu|zest`,
  "fruit.dried": `apricot leather|bara brith|barmbrack|black bun|\
boozy/brandied/christmas/dry/macerated/soaked/steeped/stewed/sun_dried/vine fruit|brack|\
christmas/dundee/eccles/simnel/welsh/xmas cake|christmas/plum/xmas pudding|/christmas/suet mincemeat|\
/cinnamon/mulled/rum/rum_and/rum_soaked/yoghurt raisin|clootie /dumpling|craisin|cream/px sherry|currant|\
currant/date/tea loaf|date square|\
dried apple/apricot/banana/berry/cherry/citrus/cranberry/currant/fig/fruit/grape/mango/orange/peach/pear/pineapple/plum/strawberry|\
dry grape|fig /roll|fruit bread/bun/dried/dry/loaf/mince/pudding/scone/slice|fruitcake|madeira|marsala|\
/medjool/pitted/sticky date|mince pie|muscatel|old/tawny port|oloroso|panettone|plum dry/duff|port wine|px|\
raisin bread/toast|rancio|sauternes|sherry trifle|spotted dick|/stewed prune|stollen|sultana /bran|tamarind|tea bread|\
trail mix`,
  "plant.flower": `acacia|freesia|aftershave|/almond/apple/cherry/clover/lime/linden/may/orange/peach/pear/plum blossom|baby/dusting/face powder|\
bath bomb/salts|bluebell|/bouquet_of flowers|bubble bath|buddleia|buttercup|carnation|chamomile/camomile/jasmine /tea|\
chrysanthemum|/clover/cut/dried/garden/heather/hedge/hedgerow/lime/meadow/orange/spring/tropical/verbena/white flower|\
cornflower|cow parsley|daffodil|daisy|dandelion|dried/pink/tea rose|eau de toilette|/eau_de cologne|elderflower|florist|\
flower garden/stall|foxglove|frangipani|funeral parlour|gardenia|geranium|gorse|/grandma's perfume|hand cream|hawthorn|\
heather|heathland|hibiscus|honeysuckle|hyacinth|immortelle|iris|lavender /oil|lilac|lily|lime tree|linden|lotus|magnolia|\
marigold|meadowsweet|neroli|night stock|nosegay|orange flower water|orris /root|parma violet|peony|perfumed|perfumery|petal|\
potpourri|powder puff|/powdery floral|primrose|rose /cream/garden/jam/oil/petal/syrup/water|rosebud|rosewater|\
sweet pea/william|talc|talcum|tuberose|tulip|turkish delight|violet /candy/cream/leaf/soap/sweet/syrup|whin|wildflower|\
yellow broom|ylang ylang`,
  "plant.green": `haymow|allotment|aloe|asparagus|assam|avocado|bamboo|/barley/cut/dried/freshly_cut/freshly_mown/mown/new_mown/wheat grass|barn|\
barnyard|bean pod|bell pepper|\
/black/breakfast/builder's/builders/cold/cup_of/gunpowder/ice/iced/milky/pot_of/stewed/strong/sweet/tannic/white tea|\
blackcurrant/box bush|/blackcurrant/cabbage/currant/dandelion/dock/fig/green/tea/tomato/vine leaf|/box hedge|boxwood|\
bracken|broad/french/runner bean|cactus|cannabis|capsicum|celery|clover|courgette|/cow byre|cow pat|/cow/horse dung|cowpat|\
cowshed|cress|cucumber|cut/fresh/hedgerow leaves|/dandelion/pepper/tomato stalk|darjeeling|dry grassland|english breakfast|\
farm /yard|farmyard|fern|fig tree|foliage|garden|/garden/mushy/snap pea|glasshouse|grass clipping|\
green /bean/pepper/plant/sap/stem/tomato|greenhouse|hay /bale/barn/loft|hayfield|hayloft|haymaking|haystack|hemp|herbaceous|\
herbage|hop /flower/oil|hoppy|ivy|lawn /clippings|lawnmower|lettuce|mange tout|marijuana|matcha|meadow /hay|nettle|olive|\
pasture|pea pod/shoot|plant /sap|potato peel|privet|puerh|raw potato|reed|rhubarb /crumble|rooibos|rush mat|sap green|sedge|\
silage|slurry|spinach|stable hay/straw|stem|straw|sugar snap|sunflower|teabag|tequila|tomato|tomato plant/vine|unripe|veg|\
vegetable|vegetal|veggie|watercress|wheatgrass|wicker /basket|yerba mate`,
  "plant.herb": `absinthe|laurel|allsorts|angelica|angostura|aniseed /ball/sweet|anisette|aquavit|basil|bay|birch bark/beer/sap|black jack|\
black/salt/salted/salty liquorice|black/salty licorice|/bog myrtle|borage /flower|botanical|bouquet garni|burdock|\
/burnt sage|camphor|camphorated|camphorous|candy cane|caraway /bread/rye|chest/muscle/vapor/vapour rub|chewing gum|chive|\
cilantro|coriander/laurel/sloe/stevia leaf|cornichon|cough candy/drop/medicine/mixture/sweet/syrup|curry plant|\
dandelion and_burdock/root|dill /pickle/weed|/dried/medicinal/mixed herb|eucalypt|eucalyptus /sweet|fennel /pollen/tea|\
garden mint|genever|gentian|gherkin|gin /botanicals|ginseng tea|green/monastery liqueur|ground ivy|gum/tea tree|\
herb butter/garden|herbal /medicine/sweet/tea|herbalist|herbes de provence|hyssop|jenever|julep|juniper /berry|\
lemon balm/grass/thyme/verbena|lemongrass|licorice /rope/tea|liquorice /allsort/sweet/tea/toffee/wood|lozenge|marjoram|\
menthol|mentholated|mint /choc/choc_chip/chocolate/cream/julep/sweet/tea/toffee|mouthwash|/orange bitters|oregano|ouzo|\
parsley /stalk|pastis|peppermint /cream/tea|perilla|pesto|pickle|pontefract cake|quinine|root beer|rosemary|sambuca|\
sarsaparilla|sassafras /tea|sorrel|spearmint|/star anise|stuffing|summer savory|sweet gale|/sweet woodruff|tarragon|\
throat lozenge/pastille/sweet|thyme|tincture|tonic /water|toothpaste|verbena|vermouth|wintergreen|wormwood`,
  "sweet.sugar": `piloncillo|clotted cream fudge|agave nectar|/agave/corn/pancake/pecan syrup|\
/barley/brown/burned/cane/caramelised/caramelized/caster/cooked/dark_brown/icing/maple/palm/powdered/praline/rock/spun/white sugar|\
/black treacle|blackstrap|boiled/parma/penny/turkish sweet|/bonfire/cinder/english/honeycomb/treacle toffee|brandy snap|\
butterscotch|candied|candy /cigarette/corn/floss/shop/store|candyfloss|cane juice|caramel corn/custard/wafer|caramelisation|\
caramelised /onion|caramelization|caramelized|cola bottle/cube|confection|confectioner|cotton/hard/rock/sponge candy|\
creme brulee|/creme/dark/salt/salted/soft caramel|/date molasses|demerara|dextrose|dolly mixture|dulce de leche|flan|\
florentine|fructose|glucose|gobstopper|gulab jamun|halwa|hokey pokey|humbug|/ice lolly|icing glaze|jaggery|kola kube|\
lollipop|love heart|maple|marshmallow|meringue|millionaire's shortbread|muscovado|nougat bar|nougatine|pavlova|popsicle|\
rum_and_raisin/rum_raisin fudge|s'more|/scottish tablet|seaside rock|smore|sticky glaze/pudding|sticky toffee|stroopwafel|\
sugar cane/crust|sugarcane|sugared|sweet jar/potato/shop|sweetie|sweets|sweetshop|toffee brittle/crisp|/vanilla fudge`,
  "sweet.honey": `\
/acacia/beeswax/burnt/chestnut/clover/dark/forest/heather/lavender/lime/manuka/orange_blossom/runny/sweet/thyme/wildflower honey|\
ambrosia|apiary|baklava|/bee pollen|beehive|beekeeper|flapjack/golden syrup|hive|\
honey blossom/bread/bun/butter/cereal/comb/nut/roast/water|honeycomb|honeycombed|honeydrip|honeyed|honeypot|honeysweet|\
hot toddy|manuka|mead|nectar|royal jelly`,
  "sweet.vanilla": `advocaat|arctic roll|blancmange|/butter/butter_cream/buttercream/cake/cream/cupcake frosting|\
/butter/buttercream/cake/sugar icing|cream horn/puff/soda|crema catalana|creme anglaise/pat/patissiere|\
custard /cream/doughnut/pie|egg custard/nog|eggnog|french vanilla|gelato|horchata|ice cream_cone/cream_soda|icecream|\
instant/milk/rice/semolina pudding|junket|knickerbocker glory|/malted milkshake|marshmallow cream/creme/fluff|pannacotta|\
pastry cream|pudding cup/mix|sabayon|semifreddo|soft serve|tapioca|\
vanilla /bean/caramel/cream/custard/malt/milkshake/sugar/wafer/yoghurt/yogurt|vanillin|white cake|zabaglione`,
  "sweet.dairy": `alfredo|baby formula|bechamel|beurre noisette|/brown/browned/farm/melted/noisette/salted/salty butter|butter mint|\
butter/cheese/cream cake|/butter/clotted/double/heavy/single/sour/whipped/whipping cream|\
/butter/condensed/evaporated/goat/powdered milk|buttercream|buttered|butterfat|buttermilk|butterscotchy|cheesecake|clotted|\
/coffee creamer|cottage/cream cheese|creamed /rice|/creamy/greek yoghurt|/creme chantilly|creme fraiche|curd|dairy|\
fromage frais|ghee|/greek yogurt|half and half|hollandaise|kefir|labneh|lactic|lassi|margarine|mascarpone|milk bottles|\
mozzarella|ricotta|skyr|whey|white sauce`,
  "sweet.cocoa": `affogato|americano|baking/bittersweet/dark/drinking/hot/malted/milk/white chocolate|black forest/forest_gateau|\
/black/chicory/cold/ground/iced/instant/irish/roast/roasted coffee|brownie|cacao /nib|cappuccino|carob|chicory|\
chocolate /bar/brownie/caramel/cherry/chip/coated/coin/cream/digestive/egg/fudge/ganache/malt/milk/mint/nut/raisin/truffle/wafer|\
chocolatey malt|cocoa /butter/husk/nib/shell|coffee bean/cream/fudge/ground/shop/sweet/toffee|cold brew|cortado|crema|\
easter egg|espresso|flat white|fudge/mud/opera cake|ganache|latte|/latte macchiato|/milk choc|mokka|mole|mud pie|nibs|\
ristretto|rocky road|sachertorte|tiramisu|/toffee mocha|truffles`,
  "spice.warm": `red hots|\
/all/apple_pie/baker's/baking/barrel/biscuit/brown/cake/christmas/cookie/eastern/exotic/five/holiday/incense/mixed/mulling/oak/oriental/pie/pumpkin/pumpkin_pie/rye/soft/sweet/winter/wood/xmas spice|\
allspice /berry|asafran|baharat|cardamom /bun/coffee/tea|cardamon|carrot cake|cassia|chai /latte/tea|\
christmas /biscuit/cookie/market|cinnamon /bark/biscuit/bun/candy/cereal/cookie/mint/sugar/toast/toothpick|\
clove /cigarette/ham/oil/studded_orange|cloved ham|dutch/pepper biscuit|garam masala|ginger bread/cake/loaf|\
gingerbread /man|gluhwein|hot cross bun|jerk seasoning|kretek|lebkuchen|mace|masala chai/tea|mulled /cider|nutmeg /shell|\
pain d'epices|parkin /cake|pfeffernusse|pimento berry|pomander|pumpkin bread/latte/pie|quatre epices|ras el hanout|saffron|\
snickerdoodle|souk|speculaas|speculoos|spekulatius|spice biscuit/box/bread/cake/cookie/merchant/tea|\
spiced /biscuit/bun/cake/cider/teacake|spiciness|spicy /wood|tagine|tonka|turmeric|yuletide|za'atar`,
  "spice.sharp": `arugula|asafetida|\
/black/cayenne/chilly/cracked/cracked_black/ground/ground_black/hot/pink/rye/sichuan/szechuan/white/wood pepper|\
buffalo/hot sauce|cajun|cajun/curry/hot/kimchi/pepper/sharp/taco spice|\
candied/crystallised/crystallized/ground/pickled/root/stem ginger|capsaicin|cayenne|chile|chili /heat/oil|\
chilli /crisp/heat/jam/oil|chillies|chipotle|coriander|cumin|curry /leaf/powder|curry house|dijon|english mustard|fenugreek|\
galangal|ginger /ale/beer/biscuit/candy/cookie/jam/marmalade/nut/parkin/root/sweet/syrup/tea|gingersnap|gochugaru|gochujang|\
grains of paradise|habanero|harissa|horseradish|hot wings|jalapeno|jerk chicken|korma|madras|mala|melegueta|\
mustard /greens/oil|nasturtium|nigella|pepper jam/jelly/steak|peppered /steak|pepperiness|peppermill|pepperoni|\
peppery/watercress bite|peri peri|/pink/sichuan/szechuan peppercorn|piri piri|radish|red pepper flake|rocket salad|\
scotch bonnet|sichuan|/smoked paprika|sriracha|szechuan|taco seasoning|vindaloo|wasabi /pea`,
  "nut.nut": `acorn|aftersun|almond /butter/croissant/flour/milk/paste|amaretti|amaretto|bakewell tart|battenberg|\
beach/sun/sun_tan/suntan/tanning lotion|beech mast|\
/beech/beer/brazil/candied/cinnamon/honey_roasted/mixed/pine/roast/roasted/salted nut|beechnut|birdseed|\
/boiled/circus/roasted/salted peanut|/butter/candied pecan|cashew|cashew/coco/nut/peanut butter|cashew/pistachio/sun cream|\
chestnut /cream/flour|chia|coconut /cream/husk/ice/macaroon/milk/mushroom/pie/rice/shampoo/shaving/soap/water|\
desiccated coconut|filbert|flaked/ground/roasted/salted/sugared almond|frangipane|gianduja|groundnut|halva|halvah|\
hazelnut /butter/cream/shell/spread/wafer|hemp/poppy/pumpkin/sunflower seed|honey nuts|macadamia|macaroon|marcona|\
marrons glaces|marzipan|nocino|noisette|nougat|nut bread/brittle/loaf/mix/shell|nutshell|nuttiness|orgeat|/peanut brittle|\
peanut shell|pecan pie|pickled walnut|pine/sunflower kernel|pistachio|praline|roast/roasted chestnut|satay|seed bar|sesame|\
simnel|smoked almonds|sun/suntan/tanning oil|sunblock|sunscreen|tahini|turron|walnut /bread/husk/loaf/pickle/shell`,
  "wood.fresh": `agarwood|alder|/american/european/french/fresh/green/new/raw/virgin/wet/white/young oak|\
/ash/balsa/beech/birch/cedar/cherry/cut/eucalyptus/freshly_cut/hickory/juniper/maple/new/pine/ply/sandal/sap/walnut/wet wood|\
balsa|balsam|bamboo steamer|bark chips|beech|beechwood|birch|birchwood|carpenter|carpenter's shop/workshop|carpentry|\
cedar /chest/closet/plank|cedarwood|cherrywood|chipboard|chopping/cutting board|chopstick|christmas/fir/needle tree|\
cocktail/ice_lolly/lollipop/lolly/match/popsicle stick|conifer|cut logs|cypress|/damp/tree/woodland bark|elm|fence|\
fence panel/post|fibreboard|fir|firewood|flat_pack/new furniture|forest|fresh/split log|garden fence/mulch|gerbil cage|\
green branch/log/twig|hamster bedding/cage|hardboard|joiner|joiner's bench/shop|joinery|kindling|larch|log pile|\
lumber/timber /yard|lumberyard|mahogany|matchstick|mdf|new shed|/new/wet decking|\
oak bark/chip/extract/leaf/plank/sap/shaving/stave|oaken|oakiness|oakwood|oaky|oud|particle board|\
pencil /case/lead/sharpener/sharpening/shaving|pet bedding|pet shop|\
pine /cleaner/cone/forest/needle/resin/sap/soap/tea/tree|pinewood|plank|ply|plywood|rabbit hutch|resin|resinous|rosewood|\
sandalwood|sap|sappy|sauna|sawdust|sawmill|shavings|skewer|splinter|spruce /tip|stave|teak|telegraph pole|tongue depressor|\
toothpick|twig|unoaked=0|veneer|willow|wood bark/chip/pulp/sap/shaving/shop/yard|wooden|\
wooden bench/box/chair/crate/drawer/floor/ruler/skewer/spoon/stick|woodiness|woodpile|woodpulp|woodshed|woodshop|\
woodwork /room|woodworker|woodworking|woodworking shop|woodyard|workshop`,
  "wood.toasted": `/alligator/heavy/oak char|barbecue charcoal|barrel char/house/room/stave|\
barrel/burned/cask/char/charred/ember/roasted/scorched/seasoned/singed/toast/toasty wood|\
black/caramelised/caramelized/charred/charry/dark/roasted/scorched/seasoned/smoked/smouldering/sweet/toast/toasty/warm oak|\
bonded warehouse|/bourbon/charred/oak/whisky cask|/bourbon/charred/oak/wood_of/wood_of_the barrel|briquette|\
burnt log/stick/timber|/campfire ember|carbon|casks|char/live coal|charcoal /briquette/pencil|charred /stave|charring /room|\
charry|cooper|cooper's fire/shop|cooperage|coopering|deep/heavy/medium/oak toast|dying/glowing/oak embers|glowing/hot coals|\
pyrography|rickhouse|toasted|toasty`,
  "wood.old": `aged/ancient/antique/barn/church/dried/dry/fossil/lacquered/mouldering/rotten/rotting/tired/varnished/waxed/weathered wood|\
aged/ancient/bog/tired oak|altar|ancient/seasoned/ship's timber|antique /furniture/shop/store|armoire|attic|banister|\
bannister|barnwood|/beeswax/floor/wax polish|benzoin /resin|blanket/cedar/cedar_cigar/cigar/lacquer box|\
blanket/hope/linen/sea chest|bookcase|bookshelf|bookshelves|cathedral|censer|chancel|chapel|chest of drawers|choir stall|\
church /pew|cloister|confessional|damp/dunnage warehouse|danish/teak oil|dead/hollow tree|driftwood|dry rot|dunnage|\
dusty attic/cupboard/furniture/loft|dusty/whisky/whiskey warehouse|fiddle/guitar/violin case|floor wax|frankincense|\
furniture polish/shop/store/warehouse/wax|grandfather clock|grandfather's desk/study|gun cabinet|gun/rifle stock|\
hollow/rotten/rotting log|humidor|incense /burner|joss stick|junk shop|loft|manor house|mothball|museum|\
/mushroomy/wine cellar|myrrh|naphthalene|oak panel|/oak panelling|\
old attic/barn/barn_wood/barrel/beam/boards/boat/boathouse/bookcase/bookshelf/bureau/cabinet/cask/cello/chair/chapel/chest/church/crate/cupboard/desk/drawer/dresser/floorboard/furniture/guitar/house/hull/lacquer/oak/organ/piano/room/schoolroom/shack/shed/ship/stump/table/timber/toolbox/trunk/varnish/violin/wardrobe/warehouse/wood|\
old bar/clock/pub/school/theatre|panelled library/room|parquet|parquet/warehouse/waxed floor|pew|piano|\
polished boards/floor/furniture/table|pulpit|rosin|sacristy|school/writing desk|shellac|ship's hold|ships timbers|sideboard|\
stately home|steamer trunk|tool handle/shed|toolshed|tree stump|varnished|vestry|violin|wardrobe|weathered plank|\
welsh dresser|wood dusty/oil/old/panel/paneling/panelling/polish/rot/stain/varnish/wax|woodworm|yacht varnish`,
  "smoke.smoke": `firewood smoke|\
/applewood/barbecue/bbq/birch/bonfire/candle/cherrywood/cigar/cigarette/coal/driftwood/engine/exhaust/firework/hickory/incense/mesquite/oak/oily/peat/pine/pinewood/pipe/sweet/tobacco/turf/wood smoke|\
ash tray|ashen|ashes|ashpan|ashtray|asphalt|/autumn/beach/garden/leaf bonfire|bacon /crisp/fat/grease|\
barbecue /crisps/sausage|barbecued /meat|barbeque|bbq /chips/crisps|beach barbecue|/beach campfire|\
beach/brush/coal/cold/dead/doused/driftwood/dying/extinguished/forest/garden/house/leaf/log/open/put_out/wood/yesterday's fire|\
/beef jerky|biltong|/birch/coal/hot/pine/road/roof tar|bitumen|blacksmith|/blacksmith's forge|\
blown_out/extinguished/snuffed/snuffed_out candle|bonfire/guy_fawkes night|brisket|burn/burn_the/mesquite wood|\
burned /toast|burning coal/grass/hay/heather/leaf/log/oak/pine/rope/straw/stubble/the_wood/wood|\
burnt /bread/burger/chop/end/fat/grass/hair/hay/heather/herb/leaf/meat/paper/popcorn/porridge/rosemary/sausage/steak/straw/stubble/toast|\
/candle/snuffed wick|char/flame grilled|chargrill|chargrilled|chargrilled/charred meat/steak|chimney /sweep|\
/cigar/cold/wet/wood ash|cigarette /ash/butt|coal /bunker/cellar/dust|/cold fireplace|cold/fire grate|creosote|\
exhaust /fumes|fag butt/end|fire place|fire/log/stubble burning|firepit|fireside|flue|frankfurter|frying/maple bacon|gammon|\
grill|grilled fish/meat/sausage|ham|hearth|hickory /chips|hot asphalt/horseshoe/tarmac|kipper|kippers|\
lapsang /souchong/souchong_tea/tea|lardons|log/wood burner|lox|mesquite|mezcal|muirburn|non peated=0|pancetta|\
peat /bog/ember/reek|peat free=0|peated|peatiness|peaty|pit beef|prosciutto|pulled pork|railroad tie|railway sleeper|\
rauchbier|reek|rib rack|roof/roofing felt|ship's pitch|singed /hair|smithy|smog|smoke beer/bomb/oil|smoke free=0|\
smoked /almond/bacon/beer/butter/cheese/haddock/ham/herb/honey/mackerel/malt/meat/mussel/oyster/salt/sausage/tea|smokehouse|\
smokeless=0|smokey|smokily|smokiness|smoking shed|smoky /bacon/sausage/tea|smoldering|smoulder|smouldering /ember|soot|\
souchong|spare rib|steam engine/locomotive/train|stub end|tar barrel/rope|tarmac|tarred|tarred deck/rope/string|\
tarry /rope/tea|turf|unpeated=0|unsmoked=0|wildfire|wood stove|woodfire|woodsmoke|woodstove`,
  "smoke.medicinal": `algae|anchovy|antiseptic /cream/lotion/soap|apothecary|balm|band aid|beach /pebble/stones|bladderwrack|boat hull/shed|\
boathouse|boatyard|bonito|brackish|brine barrel|brined|brininess|caper /berry|carbolic /soap/soap_bar|caviar|chemist|\
chlorinated|chlorine|clam /broth|coal_tar/tar soap|coast|coastal|coastline|cockle|cotton wool|crab /meat|creel|creosol|\
/crepe bandage|cresol|dashi|dental/doctor's/doctors surgery|dentist's chair|dentist's/doctor's/doctors/dr's office|dock|\
dockside|dried/dry/fresh/salted fish|drugstore|drying nets/seaweed|dulse|embrocation|estuary/tidal mud|first aid/aid_box|\
fish box/crate/dried/market/oil/roe/sauce/skin/slab/stall|fish scales|fisherman's jumper/wharf|\
fishing boat/gear/harbour/net/port/shed/tackle/wharf|fishmonger|fishy|flaked/iodised/iodized salt|fog off the sea|gauze|\
gentian violet|germ killer|guaiacol|haar|haddock|/ham/olive/pickle brine|harbor|harbour|\
hospital /bandage/corridor/soap/ward|infirmary|iodine|iodised|jetty|kelp|kombu|langoustine|latex glove|laver|limpet|\
liniment|lobster /creel/pot|low tide|mackerel|marina|marine|maritime|/marsh samphire|medical|medicinal|\
medicine /cabinet/chest|merbromin|mercurochrome|moules|mudflat|muscle salve|mussel|nautical|nori|ocean /air/breeze/spray|\
ointment|old nets|/old/ship's/wet rope|olive juice|oyster /shell|pebble beach|pharmacy|phenol|phenolic|/pickled herring|\
pier|/pine disinfectant|pool water|prawn /cracker|quay|quayside|rockpool|rubbing cream|sail cloth|\
salt air/breeze/cod/crackers/crust/crystals/flakes/flat/fog/lick/marsh/pan/spray/water/wind|saltwater|\
salty air/breeze/mud/sea/seaside/spray/wind|sardine|scallop|\
sea /air/breeze/fog/front/grass/kale/mist/salt/shell/shore/spray/vegetable/water/weed|seagrass|seashell|seashore|seaside|\
seaspray|seawater|seaweed /crisp|shell|shellfish|shingle|/ship's rigging|shore|shoreline|shrimp|spume|squid ink|\
/sticking plaster|strandline|surgical dressing/glove/tape/ward|sushi wrapper|swimming/tidal/tide pool|tar shampoo|\
tarred ship|/tide wrack|tideline|toilet cleaner|trawler/wet net|vet's /surgery|veterinary|waiting room|wakame|wharf|wharves|\
whelk`,
  "earth.earth": `after_the/first/fresh/summer/woods_after rain|aluminium|aluminum|/ash/chalk/garden/greenhouse/peat/potting soil|\
autumn forest/leaf/woods|battery|bean sprout|beet|beetroot|black/brown/damp/dead/dried/dry/fall/fallen/old/rotting leaves|\
/black/dark/dug/turned earth|/black/white truffle|blood|bog|brass|brassy|brick|brick/desert/plaster/rock dust|carrot|\
catacomb|cave|cement|cep|chalk cliff|chanterelle|churchyard|clay|clay/flower/plant pot|coin|compost /heap|concrete|\
copper /coin/pipe|crypt|damp cave/chalk/forest/garden/ground/rock/sand/stone/woods|dirt|/dried mushroom|\
dusty /cellar/floor/road/track|earthen|earthenware|earthiness|farm track|/farmyard mud|ferrous|flint|flowerpot|forest floor|\
fungal|fungi|fungus|garden shed|ginseng|granite|graphite|gravel|graveyard|gunflint|/horse manure|/horse/stable muck|\
hot pavement|humus|iron|jerusalem artichoke|lead pipe|leaf litter/mold/mould/mulch|lichen|limestone|loam|marsh|\
metal /shavings|metallic /tang|mineral /salts|mineral/river/spring/stream/well water|minerality|minerally|morel|mortar|\
mountain stream|muck heap|muddy|mulch|mulchy|mushroom soup|neep|old battery/nails|parsnip|patchouli|/peat moss|pebble|penny|\
petrichor|porcini|potato /sack/skin|potter's wheel|potting compost/shed|quarry|rain on_hot_pavement/on_stone|rainforest|\
rainwater|raw potatoes|riverbank|riverbed|root /cellar/veg/vegetable|rust|rusty nail|sand|shiitake|slate|sous bois|sphagnum|\
stable yard|steel /wool|stone /cellar/church|stoniness|swamp|swede|terracotta|tin can|tinny|toadstool|tomb|truffle oil|\
truffled|turnip|undergrowth|vetiver|water butt|\
wet cement/chalk/concrete/dirt/earth/forest/gravel/ground/leaf/pavement/plaster/rock/slate/soil/stone/woods|woodland /floor|\
worm cast`,
  "earth.leather-and-leaf": `satchel|hymnbook|antiquarian/hymn/prayer book|archive|armchair|banknote|baseball/boxing glove|baseball/catcher's/catchers mitt|bible|\
book spine|book/musty/yellowed/yellowing pages|bookbinding|books|boot/harness/tack room|boot/shoe polish|boxing gym|bridle|\
/car_seat/new/saddle/shoe/soft/sweaty/whip/worn leather|chamois|chaw|\
/cherry/cherry_pipe/chewing/cured/dark/dried/drying/leaf/pipe/rolling/sweet/vanilla/wet tobacco|\
cigar/cured/dried/dry/tobacco leaf|cigarillo|club armchair|cobbler's|comic|cowhide|cricket bag/ball/glove|\
/cuban/unlit/unsmoked cigar|dry paper|dubbin|fresh/unlit cigarette|gentleman's/gentlemen's/gents club|grandfather's pipe|\
handbag|harness|havana|hookah|horse barn/blanket/saddle/stable/stall/sweat/tack|horsebox|horsehair|horses|horsey|horsy|\
hymnal|leather bound_book/chair/oil/sofa/trousers/workshop|leatherbound|library|love letters|manuscript|new shoes|newspaper|\
newsprint|\
old atlas/bible/book/bookshop/boot/car/comics/football/horse/letter/library/magazine/newspaper/pages/paper/pipe/study/suitcase|\
paper /bags|parchment|pipe /stem|rawhide|riding school|riding/walking boots|/rolling baccy|saddle /room/soap/wax|\
saddler/saddler's|saddlery|/second_hand bookshop|sheepskin|shisha|shoe repair|shoe shop|smoking room|snuff|snuffbox|stable|\
study|suede|suitcase|sweaty saddle|tabac|tack|tack shop|tanned hide|tanner's|tannery|tanning pit|tobacco barn|tobacconist|\
/used bookstore|vellum|wallet|watch strap`,
  "savoury.sulphur": `asafoetida|/bad/boiled/hard_boiled/rotten egg|balloon|banger|beef /broth/stock/tea|bicycle shop|bicycle/bike/car tire|\
/bicycle/bike/rubber tyre|bike shop|bin juice|black powder/pudding|/blood sausage|\
/blown_out/burnt/lit/safety/spent/strike_a/struck match|/boiled cauliflower|/boiled/cooked cabbage|bone marrow|\
/book_of matches|bouillon|broccoli|broth|brown/worcester/worcestershire sauce|/brussels sprout|butcher's|cabbage water|\
cap/toy gun|caramelized onions|casserole|cat/dog food|chicken skin/soup/stock|coleslaw|collard/turnip greens|consomme|\
cordite|corned/raw beef|drain|drains|egginess|eraser|fart|firecracker|firework|flatulence|fried onion|game|garden hose|\
garlic /butter|garlicky|gas leak|gassy|gravy /granules|/grilled steak|guff|gum boots|gumboot|gunpowder|gunsmoke|haggis|\
hamburger|hoisin|hosepipe|hot spring/water_bottle|hot water bottle rubber|/hung pheasant|inner tube|kale water|kidney|\
lamb stew|latex|leek|liver|marrowbone|marsh/natural/swamp gas|match smoke/struck|matchbox|matchhead|matchstick head|\
meat /pie/stock|meatiness|mercaptan|miso|msg|neoprene|/new tires|offal|onion /soup|pate|pencil eraser|pet food|plimsoll|\
plughole|pork belly|ramps|roast beef/chicken/duck/lamb/meat/pork/turkey|roast dinner|rotting vegetable|rubber /band|rubbery|\
rubbish bin|salami|sauerkraut|savory|savoury|septic tank|sewage|sewer|shallot|shell casing|shoyu|soy|soya|sparkler|\
spent cartridge/rocket|stew|stink bomb|stock cube|sulfite|sulfur|sulfuric|sulfurous|sulphite|sulphur|sulphuric|sulphuring|\
sulphurous|sunday roast|tamari|tennis ball/shoe|teriyaki|truffle fries|umami|venison|vitamin b/tablets|vitamins|volcanic|\
volcano|wellies|wellington|wellington/welly boot|wetsuit|yeast extract/spread`,
  "savoury.fat": `animal/beef/chip/cooking/doughnut/duck/fried/frying/goose/hot/pan/pork fat|\
/avocado/baby/bicycle/bike/chain/chip/cod/cooking/engine/frying/gear/gun/hair/hemp/lamp/linseed/machine/mineral/motor/olive/rapeseed/sewing_machine/sunflower/tractor/vegetable oil|\
/axle/peanut grease|/bacon/beef dripping|/bar_of/dish/hand/pear soap|bed/clean/fresh linen|beeswax|brake fluid|brilliantine|\
butter wrapper|candle end/stub|/candle/cheese/paraffin/sealing wax|candlewax|cheese/parmesan/pork rind|chicken/lamb fat|\
chip pan/shop|chips|/church candle|clean sheets|cold/face/shaving cream|crackling|crisps|/deep fryer|detergent|\
fabric softener|face/grease/oil paint|fattiness|fatty|french fry|/fresh laundry|fried bread/food/potato|fries|greasepaint|\
/hand lotion|handwash|lanolin|lard|linseed|lip balm/gloss|lipstick|lubricant|makeup|moisturiser|mutton|oil can|\
petroleum jelly|pomade|pork scratching|potato chip/crisp|putty|shampoo|shaving foam|sheep|/sheep/wet wool|soapiness|\
soapsuds|suet|sunflower margarine|tallow|tempura|washing powder/up_liquid|/wax crayon|wax paper|\
waxed canvas/cloth/cotton/jacket/paper/string|waxiness|wool blanket|wool jumper|woolly`,
  "savoury.sour-and-sweaty": `acetic /acid|ammonia|armpit|baby sick/spit/vomit|bad/dog breath|balsamic|\
/balsamic/cider/malt/pickle/pickling/white/wine vinegar|beer/wine dregs|bile|/blue/goat/stinky/strong cheese|\
body odor/odour|bretty|brie|butyric|camembert|cat litter/pee/piss/spray/urine|changing/locker room|cheddar|\
cheese and_onion/and_onion_crisp|curdled /cream/milk|damp dirty_dog/dog/fur/labrador/spaniel|diaper|\
/dirty/gym/old/sweaty sock|dog basket/bed/blanket|feety|feta|flat/spilt beer|football boots|goat|gorgonzola|gruyere|\
gym bag/kit/locker/shoe|kennel|kimchi|kombucha|lambic|litter box/tray|mouse cage/droppings|mousy|nappy|off cream|\
off/rotten/rotting fruit|off/spoiled/spoilt milk|old sneaker/trainer|parmesan|pickle/sauerkraut juice|pickled /onion|\
pickling|pigsty|pub carpet|puke|rancid /butter/cream/milk/oil|rancidity|rugby kit/shirt|running shoes|shoes worn|sick|\
/smelly/stinky feet|smelly/worn shoes|socks|sour beer/cabbage/cheese/cider/dairy/fruit/milk/pickle/wine|spit up|\
sports bag/hall|squash court|stale ale/beer/wine|stilton|stomach acid|sweat|sweatiness|tomcat|trainers|urinal|urine|vomit|\
washed rind|wet collie/dog/fur/horse/hound/labrador/poodle/shoes/spaniel/terrier`,
  "savoury.stale": `baby/hospital food|basement|boiled carrots/greens/veg|boiled/canned/cooked/overcooked/tinned vegetable|burlap|cafeteria|\
canned corn/peas|canteen|canteen dinner|caravan|cardboard /box|charity shop|closed/musty/stuffy/unaired/unopened room|cork|\
corked|\
damp /book/canvas/cardigan/carpet/cellar/cloth/coat/cupboard/flannel/house/jumper/laundry/newspaper/paper/plaster/room/rug/tent/towel/wall/wallpaper/washing/wool|\
damp clothes|dank|dishcloth|dishrag|dishwater|ditch/flower water|drain board|dust sheet|dusty curtains|egg box|empty house|\
flannel|floor cloth|fridge|fug|fusty|hessian|hoover bag|jute sack|mildew|mildewed|mold|mop|mop bucket|mould|\
mouldy books/bread/carpet|musty|\
old blanket/butter/carpet/clothes/coat/fat/flannel/fridge/mattress/mop/nuts/oil/rag/sack/sponge/tent/towel/wallpaper/water|\
overcooked veg|oxidation|oxidative|oxidised /apple|oxidized|packing box/paper|paper bag|\
pasta/pond/potato/rice/stagnant/vase/washing_up water|pond|pondwater|raincoat|rancid nut|sackcloth|school canteen|shoe box|\
spare room|stale /air/biscuit/bread/cake/cereal/cracker/crisps/nut/oil/peanut/popcorn/tobacco/water|stuffy|tca|tea towel|\
tent|thrift shop|thrift store|tinned carrots/peas/soup/spinach/veg|vacuum bag/cleaner_bag|vegetable soup|vegetable water|\
wallpaper paste|\
wet book/canvas/cardboard/cardigan/carpet/cloth/coat/flannel/jumper/laundry/mop/newspaper/paper/rag/rug/sponge/tent/towel/washing|\
wet clothes`,
  "spirit.heads": `acetone|/airplane/model/model_aeroplane/resin/wood glue|\
ammonia/bathroom/brush/drain/dry/floor/glass/household/oven/paintbrush/window cleaner|antifreeze|art class|art room|\
artificial /banana|ballpoint|beach ball|/beach inflatable|benzene|biro|bleach|\
brass/metal/nail/silver polish|bug/fly spray|burning wires|/burning/burnt/hot plastic|burning/hot electrics|burnt wire|\
butane|car/mechanic's garage|cellulose /thinner|chemical /sweetness|chemically /sweet|chemicals|\
chemistry lab/set|cleaning fluid/product/spray|contact/rubber cement|\
diesel /fumes/oil|dry cleaning|duct/electrical/masking/sticky tape|electrical fire|emulsion|epoxy|\
ester|ether|ethyl acetate|fake fruit|felt tip|fiberglass|fibreglass /resin|/fresh ink|/fresh/gloss/spray/tin_of/wet paint|\
/fresh/nail varnish|fuel /oil|garage /floor|/garage forecourt|gas can/pump/station|gasoline|glue stick|/hair lacquer|\
hair salon|hairdresser|hairspray|hardware store|heating oil|hot circuit|\
jet engine/fuel|kerosene/paraffin /lamp|laboratory|lighter fluid/fuel/gas|lino|linoleum|\
magic/permanent/whiteboard marker|marker/whiteboard pen|model kit|nail bar/polish_remover/salon|naphtha|plasticine|\
new car/car_smell/carpet/doll/electronics/lino/vinyl|new paint|paddling pool|paint fumes/stripper/thinner|perm|\
perm/rubber solution|peroxide|petrol /fumes/station|photocopier|plastic bag/wrap|plasticky|polish remover|polyester|\
pool liner|primus|propane|puncture repair|pva|pvc /pipe|school lab|sellotape|shoe spray|shower curtain|solder|solder flux|\
solvent|spray adhesive/can|superglue|synthetic banana|thinners|toner|turpentine|turps|vinyl /record/seats|weedkiller|\
white gas/out/spirit|xylene`,
  "spirit.ethanol": `alcohol /bite/burn/fumes/heat/kick/sting/tingle/vapor/vapour|alcoholic /burn|antibac/antibacterial/sanitising gel|\
bathtub gin|\
bite_on_the/burn_on_the/burns_my/burns_the/heat_on_the/hot/hot_on_the/prickling/sharp_on_the/singes_the/sting_in_the/sting_my/stings_the/stings_your/tingle_in_the/tingle_on_the nose|\
booziness|burns_my/burns_the/burns_your/singes_my/singes_the/tickles_the nostrils|cask_strength/high_proof/spirit heat|\
ethanol /bite/burn/heat/sting|ethanolic|eye watering|eyes water=8|feints|firewater|foreshots|\
/fresh/grain/methylated/neutral/new_make/raw/surgical spirit|fumes|grappa|hand gel/rub/sanitiser/sanitizer|high/low wines|\
hooch|made my eyes water=8|makes my_eyes_water/your_eyes_water|medical/rubbing alcohol|meths|moonshine|newmake|\
nose burn/heat/hot/prickle/sting/tingle|overproof|poitin|prickle|prickliness|prickling|/raw booze|rocket fuel|sanitiser|\
sanitizer|schnapps|singes nose hairs|smells hot|spirit bite|spiritous|spirituous|stillhouse|stillroom|vapor|vapour|vodka|\
waters the eyes|white dog/lightning`,
  "taste.basic": `acerbic|acid|acidic|acidulous|bitter /as_aspirin/as_medicine/like_aspirin/like_medicine/sweet|bitterish=3.2|bitterly|\
bittersweet|bone dryness=8|bonedry=8|cloying=8|cloyingly sweet=8|dry as a bone=8|dry as a desert=8|dry as dust=8|\
dry as sand=8|dryish=3.2|face puckering=8|lip smackingly sour=7.5|mouth puckeringly sour=8|/off dry|saccharine=7|saline|\
salinity|salt|salted|saltily|saltiness|salty|savory/savoury/umami taste|/semi/sour/sugary/syrupy sweet|/sharp acidity|\
sickly sweet=7.5|sickly sweetness=7.5|sickly=7.5|sourish=3.2|sourly|sugariness|sweet as anything=8|sweet as honey=8|\
sweet as sugar=8|/sweet/sweet_and sour|sweetish=3.2|sweetly|sweetness|tang|tanginess|tart|tooth achingly sweet=8|\
tooth rotting=8|toothachingly sweet=8|unsweet=0|unsweetened=0`,
  "feel.weight": `coated everything=7|less/more weight|fills my/your mouth=7|flimsy=2|luscious=7|weak as water=2|not_much/nothing to_it_in_the_mouth/to_it_on_the_palate=2|lean=2.5|a lot of weight=7.5|almost/could chew it|ample=7|big bodied=7.5|big body=7.5|/bigger body|buttery mouthfeel|\
buttery/creamy/oily texture|chewiness=7|chewy|coating /the_mouth|\
coats everything/my_mouth/my_tongue/the_glass/the_mouth/the_whole_mouth/the_palate/the_tongue/your_mouth|coats like=7|\
coats well=7|creamy|dense=7|dilute=2|diluted=2|fat|feeble body=2|feels/mouth/mouth_is coated|fills the mouth=7|\
film on the_teeth/your_teeth|full bodied=7.5|full body=7.5|full=7|gelatinous|gloopy=7|good/nice/some weight|\
heavy bodied=7.5|heavy body=7.5|hefty=7.5|insubstantial=2|lacking body=0|lacks body=0|lacks weight=0|light bodied=3|\
light body=3|light on the tongue=3|light=3|lightweight=2|little body=2|lush|meagre=2|med bodied=5|med body=5|med weight=5|\
medium bodied=5|medium body=5|medium weight=5|medium=5|middling body=5|mouth coating|mouth filling=7|mouthcoating|\
mouthfilling=7|no body=0|not much body=2|oiliness|oily|plush|real weight=7|really coats=7|satin|silk|silken|silkiness|\
skinny=2|slick|slippery|spoon up in it=7|sticky|substantial=7|syrupy=7|thick=7|thickness|thin=2|thinnish=2.5|unctuous=7|\
viscosity|viscous=7|watered down=2|watery=2|weak body=2|weedy=2|weight to it|weighty=7|wispy=2|without body=0`,
  "feel.burn": `chest/gullet/mouth/throat/tongue on fire=8|/my chest/gullet/mouth/throat/tongue is on fire=8|a fire in it=7|feel it in my/the/your chest|scalds=8|lights you up=7|rips_my/rips_the/catches_in_the/catches_in_my/catches_my/catches_the throat=7|sets_my/sets_your chest_on_fire/mouth_on_fire/throat_on_fire=8|a bit fierce=3|a little fierce=3|afterburn|anaesthetic|anesthetic|barn burner=8|bit fierce=3|bite|bites|biting=7|blazing=8|\
/boozy heat|burned my mouth=7.5|burning=7.5|burns like=7.5|burns=7|/chest warmth|clear your sinuses=8|clears the sinuses=8|\
effervescence|effervescent|/ethanol kick|fiery=8|fire in_the_mouth/on_the_palate|\
fire_in_the/fire_on_the/prickle_on_the/prickles_the tongue|fizz|fizzes|fizziness|glow|glowing|hot|/kentucky hug|nip|numb|\
numbing|paint aff=8|/peppery burn|pop rocks|popping candy|punchy=7|quite/rather fierce|scalding=8|scorcher=8|scorching=8|\
scratch|scratches|scratchy|searing=8|space dust|sparkling|sparkly|spritzy|sting|stinging|stings|strip paint|strip varnish=8|\
strip wallpaper=8|strips the enamel=8|take the enamel off=8|take the paint off=8|take the skin off=8|take the varnish off=8|\
takes the_roof_of/the_roof_off|tingle|tingles|tingliness|tingling|too fierce=8|warm /glow|warming|warmly|warms`,
  "feel.pull": `astringency|astringent|chalk /dust|chalkiness|cheek sucking|\
cotton/dries_my/dries_the/dries_your/dry/drying/dryness_in_the/dusty/leaves_dry_the mouth|cottonmouth|dries|\
dries/dry/drying everything_out/me_out/my_mouth_out/the_mouth_out/you_out/your_mouth_out|\
dries_the/dry/dryness_on_the/dusty/fur_on_the/furry/furs_the/fuzzy/leathery/powder_on_the/rough tongue|dusty feel|\
dusty/grainy/powdery texture|fur_on_the/furs_the/squeaky teeth|furry|glides|gliding|goes down smooth=2|\
grape pip/seed/stalk/stem|grip|gripping|grippy|grips|grips hard=8|gritty|\
gums/leaves_me/leaves_my_mouth/leaves_the_mouth/leaves_you/makes_my_mouth/mouth/mouth_coating/mouth_feels dry|\
leaves_me/leaves_my_mouth/leaves_the_mouth/leaves_you really/so/very dry=8|/mouth puckering/drying|\
mouth/mouth_gets/mouth_goes/mouth's_gone all_dry/dry_now|/oak tannins|parched|parching|powdery|pucker|puckered|rasping|\
raspy|sandpaper|sherbety chalk|silken smooth=2|smooth as a baby=2|smooth as anything=2|smooth as butter=2|smooth as glass=2|\
smooth as silk=2|smooth=2.5|smoothly|smoothness|/stewed/tea/wood tannin|sucks the_cheeks/the_moisture/your_cheeks_in|supple|\
tannic /dryness/grip|tanninic|teeth squeak|velvet=2.5|walnut skin dryness`,
  "time.finish": `clean finish|fading bitter/bitterness/sweet/sweetness|lingering spice`,
  "time.finish+feel.burn": `hot finish`,
  "time.finish+wood.fresh": `lingering oak`,
  "whole.balance": `assertive|austere|balanced|bold|brash|bright|clean|closed|closed/opened/opening/opens up|coherent|cohesive|complex|\
complexity|crisp|deep|delicacy|delicate|depth|disjointed|edgy|flat|fresh|harmonious|harmony|harsh|\
heavy /in_the_mouth/on_the_palate/on_the_tongue|hollow|imbalanced|immature|it opens|lifeless|linear|lively|many layers|\
mature|maturity|mellow|muddled|/multi layered|/off/out_of balance|one dimensional|one/single note|open|over wooded|\
overoaked|past its best|polished|pure|raw|refined|rich|robust|rough /edge|round|rounded|rugged|rustic|sharp|\
shut /down/tight|simple|simplicity|soft|spiky|straightforward|tired|unbalanced|uncomplicated|underoaked|vibrant|\
well aged/balanced/integrated/rounded|young|youth|youthful`,
};
