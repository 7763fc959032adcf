/**
 * What a profile says the intensity of: words that tasters use of whiskey, gathered by family and group; an id is "family.group".
 * Groups and words are the trade's, from no one list: common practice, no source. Left out: the basic tastes and words for the
 * whole, whose groups hold opposites (sweet and sour, balanced and harsh), so that one intensity says nothing of them.
 */
export const ATTRIBUTES = [
  { id: "grain.cereal", name: "cereal", words: ["cereal", "grain", "oats", "porridge"] },
  { id: "grain.bake", name: "bread and biscuit", words: ["bread crust", "toast", "biscuit", "shortbread"] },
  {
    id: "fruit.orchard",
    name: "orchard fruit",
    words: ["green apple", "red apple", "baked apple", "apple sauce"],
  },
  { id: "fruit.tropical", name: "tropical fruit", words: ["banana", "banana bread", "pineapple", "mango"] },
  { id: "fruit.stone", name: "stone fruit", words: ["peach", "apricot", "plum", "nectarine"] },
  { id: "fruit.berry", name: "berries", words: ["strawberry", "raspberry", "blackberry", "blueberry"] },
  { id: "fruit.citrus", name: "citrus", words: ["lemon", "lemon peel", "orange", "orange peel"] },
  { id: "fruit.dried", name: "dried fruit", words: ["raisin", "sultana", "date", "fig"] },
  { id: "plant.flower", name: "flowers", words: ["rose", "violet", "honeysuckle", "lavender"] },
  { id: "plant.green", name: "green plants", words: ["grass", "hay", "cut leaves", "green bean"] },
  { id: "plant.herb", name: "herbs", words: ["mint", "spearmint", "eucalyptus", "dill"] },
  {
    id: "sweet.sugar",
    name: "sugar and caramel",
    words: ["caramel", "burnt sugar", "brown sugar", "toffee"],
  },
  { id: "sweet.honey", name: "honey", words: ["honey", "beeswax honey", "nectar", "golden syrup"] },
  { id: "sweet.vanilla", name: "vanilla", words: ["vanilla", "vanilla bean", "custard", "ice cream"] },
  { id: "sweet.dairy", name: "butter and cream", words: ["butter", "cream", "yoghurt", "buttermilk"] },
  { id: "sweet.cocoa", name: "cocoa", words: ["milk chocolate", "dark chocolate", "cocoa powder", "coffee"] },
  { id: "spice.warm", name: "warm spice", words: ["clove", "cinnamon", "nutmeg", "allspice"] },
  { id: "spice.sharp", name: "sharp spice", words: ["black pepper", "white pepper", "chilli", "ginger"] },
  { id: "nut.nut", name: "nuts", words: ["almond", "marzipan", "walnut", "pecan"] },
  { id: "wood.fresh", name: "fresh wood", words: ["oak", "sawdust", "green wood", "pencil shavings"] },
  {
    id: "wood.toasted",
    name: "toasted wood",
    words: ["toasted oak", "charred oak", "barrel", "campfire ember"],
  },
  { id: "wood.old", name: "old wood", words: ["dusty wood", "old furniture", "varnished wood", "cigar box"] },
  { id: "smoke.smoke", name: "smoke", words: ["smoke", "bonfire", "bacon", "ash"] },
  { id: "smoke.medicinal", name: "medicinal", words: ["iodine", "antiseptic", "plaster", "seaweed"] },
  { id: "earth.earth", name: "earth", words: ["earth", "damp soil", "mushroom", "beetroot"] },
  {
    id: "earth.leather-and-leaf",
    name: "leather and leaf",
    words: ["leather", "saddle", "tobacco", "pipe tobacco"],
  },
  { id: "savoury.sulphur", name: "sulphur", words: ["struck match", "rubber", "cabbage", "boiled egg"] },
  { id: "savoury.fat", name: "fat and wax", words: ["soap", "candle wax", "lanolin", "vegetable oil"] },
  {
    id: "savoury.sour-and-sweaty",
    name: "sour and sweaty",
    words: ["vinegar", "sour milk", "sweat", "old socks"],
  },
  { id: "savoury.stale", name: "stale", words: ["cardboard", "musty", "damp cloth", "stale nuts"] },
  { id: "spirit.heads", name: "solvent", words: ["nail varnish", "paint thinner", "glue", "solvent"] },
  {
    id: "spirit.ethanol",
    name: "raw spirit",
    words: ["alcohol", "rubbing alcohol", "raw spirit", "hot nose"],
  },
  { id: "feel.weight", name: "weight", words: ["thin", "watery", "light", "medium"] },
  { id: "feel.burn", name: "burn", words: ["warm", "hot", "burning", "numbing"] },
  { id: "feel.pull", name: "dryness", words: ["tannic", "drying", "astringent", "grippy"] },
  {
    id: "time.finish",
    name: "length of finish",
    words: ["short finish", "medium finish", "long finish", "fading sweet"],
  },
] as const satisfies readonly Attribute[];

export type Attribute = {
  readonly id: string;
  readonly name: string;
  /** Some of the words of the group. */
  readonly words: readonly string[];
};
export type AttributeId = (typeof ATTRIBUTES)[number]["id"];
