/**
 * 256 plain English words, one for each value of a byte, in alphabetical order. Compiled for this project from common nouns; no
 * two begin with the same four letters, and any two differ in at least two letters, so that a slip of the ear or eye shows.
 */
export const WORDS: readonly string[] = (
  "acorn album amber angle anvil apron arrow aspen atlas attic badge baker banjo bench berry broom " +
  "cabin camel cedar cello chalk cliff clock comet coral crane crown crumb curry dairy deer dome " +
  "drum duck dune eagle earth easel echo elbow farm fence fern flag flour flute fork frost " +
  "gate ghost glove goat gold goose grape grass gull harp hawk hazel hedge heron hill hippo " +
  "honey hood horse hotel hound igloo iris iron ivory jelly jewel kayak kelp kitten kiwi knot " +
  "ladder lagoon lake lamp lark leaf lemon lilac lily lime linen lion lizard llama locket lotus " +
  "lunch magnet magpie mango maple marble market mast mayor meadow medal melon mint mirror mosaic moss " +
  "moth muffin mule museum napkin nectar needle nest nickel noodle nurse nutmeg oasis oboe ocean olive " +
  "onion onyx opal orange organ otter oven oyster paddle paint palace panda paper parcel parrot peach " +
  "peanut pear pebble pencil pepper piano picnic pigeon pillow pilot pine planet plate plough plum poem " +
  "pond poppy port potato prism puppet puzzle quail quarry quilt rabbit radish raft raven reef ribbon " +
  "rice ripple river road robin rope sage sail salmon sand scarf school seal shadow sheep shell " +
  "shore shovel shrimp skate sled snow soap sofa spider sponge spoon spruce stable star statue steam " +
  "stone storm sugar summer sunset swan tailor teapot temple thread ticket tiger tile timber toast tomato " +
  "tower trout truck tulip tunnel turkey turnip turtle twig valley vase velvet violin waffle wagon wallet " +
  "walnut wasp water whale wheel window winter wolf wool wren yacht yarn yellow yogurt zebra zipper"
).split(" ");
