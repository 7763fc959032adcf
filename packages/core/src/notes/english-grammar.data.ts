import type { Said } from "./language.ts";

/**
 * English phrases that say how strong, whether, where and of which glass. Lower case, without accents or hyphens, "|" between; plurals follow
 * of themselves. Strengths are on the scale of 0 to 10 where a word without a degree is 5. All of it: common practice, no source.
 */
export const PHRASES: readonly Said[] = [
  // How strong. "of" phrases hold for a list, words before a flavour for one.
  {
    says: "degree",
    strength: 1.5,
    of: true,
    words: `breath of|crumb of|echo of|faint hint of|far off|fleeting hint of|flicker of|ghost of|glimmer of|memory of|merest hint of|rumor of|rumour of|shadow of|slightest hint of|speck of|suspicion of|thimble of|tiniest bit of|tiny bit of|trace of|wee bit of|whisper of|wisp of`,
  },
  {
    says: "degree",
    strength: 2.2,
    of: true,
    words: `background note of|background of|bit of|bit of the|blush of|breeze of|brush of|crumb of|curl of|curling of|dab of|dash of|dot of|drap of|dribble of|drizzle of|drop of|dusting|dusting of|faint notes of|faint trace of|filament of|filigree of|film of|fine thread of|flick of|flutter of|gauze of|ghost note of|glimpse of|grating of|hint|hint of|hint of the|hinting at|hints at|hum of|kiss of|lick o|lick of soft|light notes of|lightest|lightest of|little of|murmur of|nip of|nod of|nod to|not a lot of|not much of|nuance of|only some|pinch of|plume of|prickle of|puff of|scrap of|scrape of|shade of|slither of|sliver of|small amount of|small drop of|smatter of|smear of|smidge of|smidgen of|smidgeon of|smirr of|soft edge of|soft notes of|splodge of|spot of|sprinkle of|sprinkling of|squirt of|stain of|subtle notes of|suggestion of|tad of|tait of|teaspoon of|tickle of|tinge of|tingle of|tiny amount of|tiny touch of|touch of|touch of the|trickle of|twinge of|undercurrent of|undertone of|veil of|wee drop of|wee tait of|whiff of|wink of`,
  },
  {
    says: "degree",
    strength: 2.2,
    words: `a bit|a breath|a dash|a flash of|a flicker|a ghost|a hair|a lick|a little|a little bit|a nip|a pinch|a shade|a shadow|a small|a smattering of|a smidge|a smidgen|a soupcon of|a spot of|a suggestion|a suspicion|a tad|a tiny bit|a touch|a trace|a trifle|a wee|a wee bit|a whisper|a wisp|almost no|an echo|an occasional|at a push|background|barely|barely a hint of|barely a trace of|barely a whisper of|barely any|barely detectable|barely perceptible|barely there|bit|bit of a hint of|deep down|delicately|dilute|dim|dimly|discreet|discreetly|distant|distantly|ever so faint|ever so slight|ever so slightly|faded|faint|faintest|faintly|feeble|feebly|fleeting|fleetingly|from afar|gentlest|gently|hardly|hardly a|hardly a hint of|hardly a trace of|hardly any|hardly there|hinted|if you look|if you look for it|in small amount|in the distance|just a hint of|just a little|just a suggestion of|just a touch of|just a whisper of|just about|just enough|just perceptible|just the ghost of|just the one|lightly|little|little bit|little tiny|low|low level|lower|mild|mildest|mildly|minor|minute amount of|modest|mostly absent|muted|nearly no|next to no|not a great deal|not a lot|not a lot of|not much|not too much|occasional|only a hint of|only a touch of|only just|pale|poco|polite|politely|precious little|quiet|quietly|reserved|restrained|scant|scarcely|scarcely any|shy|slight|slightest|slightly|small|smallest|smattering of|softest|softly|some small|somewhat faint|sort of faint|soupcon of|subtle|subtly|tad|tame|the faintest|the ghost of a|the merest|the odd|the slightest|the tiniest|thinly|timid|timidly|tiny|tiny little|too little|touch|trace|un peu|underneath it all|understated|vague|vaguely|very little|way back|way down|weak|weakly|wee|whisper`,
  },
  {
    says: "degree",
    strength: 1.4,
    back: true,
    words: `barely there at all|extremely faint|really faint|so faint|terribly faint|very faint|very low|very slight|very subtle|very weak`,
  },
  {
    says: "degree",
    strength: 2.2,
    back: true,
    words: `a bit|a hint|a little|a long way back|a long way off|a touch|almost hidden|and hardly|around the edges|at a pinch|at a stretch|at the edges|at the margins|barely|barely perceptible|behind it all|but barely|but faint|but only just|by a whisker|come and go|comes and goes|drifts by|drifts past|ever so faint|ever so slight|faint but there|faintly|far away|far behind|faraway|flickers|flits past|for a moment|for a second|for an instant|had to dig|hardly noticeable|have to dig|hidden|hiding|if i concentrate|if i dig|if i look hard|if i try|if you concentrate|if you give it time|if you go looking|if you look hard|if you squint|if you wait|in background|in passing|in the background|in the corner|in the distance|in the shadows|in the wings|isn't loud|isn't overpowering|isn't strong|it is not strong|it isn't loud|it isn't strong|it's not loud|it's not strong|just a touch|just about there|just barely|just perceptible|less than you'd think|lurking|miles away|murmurs|no more than a hint|no more than that|none too strong|not a lot|not a ton|not dominant|not heaps|not loads|not loud|not masses|not overpowering|not overwhelming|not strong|not tons|not too strong|not very strong|nothing more|on the edges|on the horizon|only a little|only faint|only just|only slightly|peeking through|peeks through|round the edges|scarcely|seems to come and go|slightly|small but there|somewhere in the distance|then gone|then it hides|there but faint|tiny but there|tucked away|way in the back|way off|when i look for it|whispers`,
  },
  {
    says: "degree",
    strength: 5,
    of: true,
    words: `bit of a|bite of|certain|current of|decent bit of|decent whack of|dollop of|dose of|element of|fair bit of|fair whack of|flavor of|flavour of|good bit of|good dollop|goodly amount of|handful of|helping of|hug of|just enough|kick of|knob of|lash of|layer of|line of|lovely bit of|measure of|nice amount of|nice bit of|note of|piece of|portion of|right amount of|scattering of|seam of|serving of|shade more|side of|slice of|some|splash of|spoon of|spoonful of|squeeze of|strand of|streak of|stripe of|teaspoonful of|thread of|touch more|twist of|vein of|wedge of`,
  },
  {
    says: "degree",
    strength: 5,
    words: `average|decent|fair|fairly|middling|moderate|moderately|nicely|noticeable|noticeably|pretty|quite|quite a|rather|reasonable|reasonably|respectable|somewhat|sufficiently`,
  },
  {
    says: "degree",
    strength: 5.6,
    words: `certainly|clear|clearly|decidedly|definite|definitely|distinct|distinctly|evident|evidently|good|mainly|mostly|obvious|obviously|predominantly|primarily|proper|solid|unmissable`,
  },
  {
    says: "degree",
    strength: 6.4,
    of: true,
    words: `burst of|chunk of|generous helping of|good helping of|good measure of|good slug of|good whack of|gust of|healthy dose of|hit of|hunk of|layers of|mouthful of|mouthfuls of|ripple of|rush of|shot of|slab of|slug of|solid hit of|stream of|surge of|waft of|whoosh of`,
  },
  {
    says: "degree",
    strength: 7.8,
    of: true,
    words: `a bunch of|a good deal of|a lot|a ton of|a whole lot of|absolutely full of|abundance of|abundant|alive with|all about|all i can find is|all i can smell is|all i can taste is|all i get is|all i'm getting is|all im getting is|all of the|all over with|all that|alot|alot of|an abundance of|an awful lot of|any amount of|armful of|avalanche of|awash in|awash with|awful lot of|bags of|bang of|barrel load of|barrow of|barrowload of|basket of|basketful of|becomes all|bellyful of|big dollop of|big hit of|big old hit of|big spoon of|big spoonful of|big whack of|blast of|boatload of|bomb of|brimming with|bucket of|bucketful of|buckets|bunch of|bursting with|caked in|cartload of|cascade of|choc full of|chock full of|choked with|clogged with|coated in|covered in|covered with|crammed with|crowded with|dense with|dominated by|drenched in|dripping with|driven by|drowning in|everything is|everything smells of|everything tastes of|everything was|explosion of|far too much|fat dollop of|fat slab of|filled with|fistful of|flood of|full of|glut of|gobs of|good deal of|good lashing of|great big|great deal of|great dollop of|great gobs of|great slabs of|hammer of|hatful of|heap of|heaps|heaps and heaps of|heaving with|heavy on|heavy with|hell of a lot of|high on|hurricane of|infused with a lot of|is all|it is all|it was all|it's all|it's just all|its all|laden with|lashings of|layer upon layer of|led by|lit with|load of|loaded with|loads|long on|lorryload of|lot of|lots and lots of|lotta|mass of|more and more|mountain of|much|no end of|no lack of|no shortage of|nothing but|nothing else but|nothing more than|nowt but|nowt else but|ocean of|only thing i get is|oodles of|oozes|oozing|overdose of|overflowing in|overflowing with|overload of|overpowered by|overrun by|overrun with|overwhelmed by|packed with|pile of|pile up of|piled with|plastered in|plenty|plethora of|punch of|quite a bit of|quite a lot of|rammed with|reeks of|rich in|rife with|riot of|ripe with|river of|ruled by|sack of|sackful of|saturated in|saturated with|screams of|sea of|shed load of|shedload of|skipful of|slabs of|slap of|smothered in|so full of|so many|so much|soaked in|stacks of|steeped in|stinks of|storm of|strong on|stuffed with|swamped by|swamped with|swimming in|teeming with|thick with|thump of|tide of|ton of|tonne of|tons|too many|too much|torrent of|truckload of|tsunami of|very much|very much the|wall of|wall to wall|wallop of|was all|wave of|whack of|whole load of|whole lot of`,
  },
  {
    says: "degree",
    strength: 7.8,
    words: `a bit too|a bit too much|a little too|a little too much|a touch too|a very|absolutely|abundant|all|all kinds of|all the|amazingly|ample|awfu|awfully|bags|big|big old|biggest|blazing|bloody|bold bold|brutal|brutally|chock full of|colossal|concentrated|crazily|crazy|deep|deeply|densely|dominant|dominating|dripping|eleven|enormous|enough to|especially|exceedingly|exceptionally|excessive|excessively|explosive|extreme|extremely|fair reeking|ferocious|fierce|fiercely|frighteningly|full|full blown|full fat|full on|full throttle|gey|giant|gigantic|great|great big|heady|heavily|hefty|hella|high|huge|hugely|in your face|incredibly|insane|insanely|insistent|intense|intensely|intensive|lashings|loud|loudly|lush with|mad|madly|major|majorly|masses|massive|massively|mega|mighty|molto|monstrous|monumental|more than a bit|more than a little|much too|mucho|muito|muy|nothing if not|noticeably more|obscenely|oodles|outrageously|over the top|overly|overpowering|overpoweringly|overwhelming|overwhelmingly|particularly|piercing|plenty|potent|powerful|powerfully|prominent|pronounced|proper big|properly|pulsing|pungent|pure dead|raging|rampant|really|relentless|relentlessly|remarkably|richly|ridiculously|roaring|robustly|screaming|sehr|serious|seriously|shockingly|slightly too|so|solidly|staggering|staggeringly|stonking|straight up|striking|strikingly|strong|strongest|strongly|stupid|stupidly|super|super duper|terribly|thick|thickly|thumping|thundering|too|too much of the|totally|tres|turbo|ultra|unapologetic|unapologetically|unashamedly|unbelievably|unmistakable|unmistakably|unmistakeable|unmistakeably|unrelenting|utterly|v|vast|veramente|very|violent|vivid|vividly|whacking|whopping|wildly`,
  },
  {
    says: "degree",
    strength: 7.8,
    back: true,
    words: `++|a lot|a lot of it|above everything|all day|all day long|all night long|all over|all over it|all the way|all the way through|all through|all through it|and loads of it|and lots of it|and plenty of it|and then some|at full volume|before anything else|bellows|big time|bomb|booms|brings tears|bullies|buries everything|by the bucket|by the bucketful|by the bucketload|by the shovel|by the shovelful|by the spadeful|can't be missed|can't miss it|cannot miss it|cant miss it|centric|comes at you|coming at you|coming out of its ears|coming out of my ears|covers everything|does not quit|doesn't quit|dominant|dominate|drenches|driven|drowning|drowns|eats everything|everywhere|everywhere you look|explodes|explosion|fills the glass|fills the mouth|fills the room|first last and always|flooding|floods|for days|for sure strong|forward|from start to finish|from top to bottom|front and center|front and centre|galore|goes off like a bomb|hard to miss|has taken over|heaps|heaps of it|hits hard|hits like a train|hits like a truck|hits me hard|hits you hard|hums loudly|impossible to miss|in abundance|in bucketloads|in charge|in front of everything|in spades|is big|is dominant|is dominating|is huge|is intense|is king|is massive|is overpowering|is overwhelming|is powerful|is strong|is the star|jumps at you|jumps out|kicks you|knocks me over|knocks you over|laden|leaps out|led|like crazy|like mad|loads|loads of it|loads of them|lots|lots of it|lots of them|loud and clear|makes my eyes water|makes your eyes water|masses of it|never stops|on full|on steroids|on top of everything|out of the glass|out the wazoo|overload|overpowering|overpowers|overwhelms|plenty|plenty of it|pours out|punches|punches you|quite a lot of it|really strong|right through it|roars|rules|runs riot|runs the show|screaming at you|screams|shouts|slaps you|smacks you|smothers|so much|swamps|takes no prisoners|takes over|takes up the whole|that makes tears|the whole time|the whole way|thick and heavy|through and through|to the hilt|to the max|to the rafters|tons|tons of it|tons of them|too dominant|too loud|too much|too present|too strong|took over|turned up|turned up to eleven|unmissable|up the wazoo|very intense|very loud|very much|very powerful|very present|very strong|wallops you|won't let go|wont let go|you can't get away from it|you cannot miss|you could cut with a knife`,
  },
  // "very smoky" and "very faint": pushes away what it stands before.
  {
    says: "amplify",
    words: `awfully|extremely|incredibly|just|only|quite|real|really|so|such|such a|super|terribly|very`,
  },

  // Not there.
  {
    says: "not",
    words: `<nope> smell of|<nope> taste of|absence of|absent of|ain't|aint|all that's missing is|anything but|aren't|arent|bereft of|bugger all|can not smell|can not taste|can't|can't find any|can't say i find|can't say i get|can't say i got|can't say i taste|can't say there's|can't smell|can't smell any|can't taste|can't taste any|cannae|cannot|cannot find any|cannot smell|cannot smell any|cannot taste|cannot taste any|cant|cant find any|cant smell|cant taste|clean of|clear of|cleared of|could not|could not detect|could not find|could not find any|could not get|could not smell|could not taste|couldn't|couldn't smell|couldn't taste|couldnt|couldnt smell|couldnt taste|cross out the|delete the|devoid of|did not smell|did not taste|didn't|didn't smell|didn't taste|didnae|didnt|dinnae|doesn't|doesnt|don't|don't find any|don't get any|dont|empty of|fail to find|failed to find|far from|for want of|forget the|forget what i said about|free from|free of|gone are the|gone is all the|gone is the|gone the|gone without|hadn't|hadnt|hardly what i would call|hardly what you'd call|has not any|hasn't|hasnt|have not any|haven't|havent|i can't find|i can't find any|i can't smell any|i can't taste any|i cannot find|i cannot find any|i cant find|i cant find any|i do not feel|i do not find|i do not get|i do not smell|i do not taste|i don't feel|i don't find|i don't find any|i don't get|i don't get any|i don't have|i don't have any|i don't see any|i don't smell|i don't taste|i dont feel|i dont find|i dont get|i smell no|i take back the|i taste no|i was wrong about the|ignore the|ignore what i said about|in place of|instead of|isn't|isnae|isnt|lack|lacking|looked in vain for|lost all|lost its|lost the|minus|miss the|missing any|missing the|nae|nary a|nary any|neither|never|never a hint of|never a trace of|never a whiff of|nil|no|no hint of|no longer|no longer stand by|no more|no sign of|no suggestion of|no trace of|no whiff of|none|none of|none of that|none of the|nor|not|not a bit|not a bit of|not a breath of|not a dot of|not a drop of|not a hint of|not a puff of|not a scrap of|not a speck of|not a spot of|not a touch of|not a trace of|not a whiff of|not any|not at all|not especially any|not one bit|not so much as a|not so much as a hint of|not so much as a whiff of|not the least bit|not the slightest|not the slightest bit|nothing|nowhere near|only thing missing is|rather than|robbed of|sans|scratch the|searched in vain for|shorn of|so is the|so was the|so were the|sod all|strike the|stripped of|take back the|take back what i said about|the only thing missing is|there is not any|void of|was wrong about the|wasn't|wasnt|weren't|werent|what is missing is|what's missing is|where are the|where has the|where is the|where's the|wheres the|withdraw the|without|won't|wont|wouldn't|wouldnt|wrong about the|zero`,
  },
  {
    says: "gone",
    words: `<who> <noted> <isnt>|absent|all gone|are gone|aren't there|away|blew off|blown off|burned off|burnt off|can't be found|can't find any|can't find any here|can't find it|cannot be found|cannot find any|cannot find it|cannot i find|cant find any|cant find it|cleared|clears|couldn't find it|died away|dies away|disappear|disappeared|disappears|does not exist|doesn't exist|doesn't show|don't find any|don't get any|don't think so|ebbed away|escapes me|evaporated|fails to appear|find none|fled|get none|goes away|gone|gone away|gone completely|gone now|got lost|got none|has cleared|has disappeared|has gone|has left|has vanished|have disappeared|have gone|have left|i can find none|i can't find|i can't find any|i cannot find|i cannot find any|i cant find|i cant find any|i do not feel|i do not find|i do not get|i do not smell|i do not taste|i do not think so|i don't feel|i don't find|i don't find any|i don't get|i don't get any|i don't have|i don't see any|i don't smell|i don't taste|i don't think so|i dont feel|i dont find|i dont get|i find none|i found none|is absent|is gone|is lost|is missing|is naewhere|is not there|is nowhere|isn't here|isn't there|isnt there|left the building|lost now|melted away|melts away|missing|naewhere|never appeared|never appears|never arrives|never came|never comes|never materialises|never showed up|never shows up|never turned up|never turns up|nil|no i don't|no it isn't|no longer|no longer there|no more|no sign|no sign of it|no there isn't|no trace|no trace of it|none|none at all|none of it|nope|not a bit|not a bit of it|not a hint of it|not a sign of it|not a trace|not a trace of it|not a whiff of it|not a wisp|not any|not any more|not anymore|not at all|not found|not here|not one bit|not present|not there|nowhere|packed up and left|ran away|slipped away|there's none at all|vanish|vanished|vanishes|was gone|was not there|wasn't there|wasnt there|went away|zero`,
  },
  {
    says: "gone",
    retracts: true,
    words: `i found was wrong|i had was wrong|i imagined|i mentioned was wrong|i noted down was wrong|i noted is wrong|i noted was wrong|i put down was wrong|i put was wrong|i said was wrong|i take it back|i take that back|i thought i had was wrong|i wrote down was wrong|i wrote is wrong|i wrote was wrong|is wrong|never was|never was there|noted before was wrong|noted earlier was wrong|noted was wrong|scrap that one|was a mistake|was an error|was false|was imaginary|was my imagination|was my mistake|was never there|was nonsense|was not real|was rubbish|was wrong|were wrong`,
  },
  {
    says: "less",
    words: `a bit less|a little less|a lot less|aren't as|calms the|could do with more|could use more|dampens|doesn't have as much|doesn't have the same|dulls|fainter|far less|fewer|gentler|hides|i'd like more|isn't as|isn't half as|isn't quite as|isn't so|isn't that|isn't too|isn't very|isnt as|isnt so|isnt that|isnt too|isnt very|less|less and less|lesser|light on|lighter on|loses its|loses some|loses the|losing|lost some|low in|low on|masks|milder|minder|much less|mutes|need more|never too|never very|no more than|not all that|not as|not as much|not enough|not especially|not exactly|not half as|not hugely|not more|not nearly as|not overly|not particularly|not quite|not quite as|not so|not so much|not terribly|not that|not the same|not too|not very|nowhere near as|quieter|reduced|short of|short on|shy on|slightly less|softens the|softer|subdues|tamed|tames the|toned down|tones down|too little|under|want more|wasn't as|wasn't that|wasn't too|wasn't very|wasnt as|way less|wish it had more|wish there was more|would like more`,
  },
  {
    says: "lessened",
    words: `all but gone|almost gone|backed off|backs off|calmed down|calmer|calms down|died down|dies down|diminished|diminishes|dimmed|dims|down|down a notch|dropped off|drops away|drops back|drops off|dying down|eased|eases|ebbing|ebbs|faded|faded a bit|faded away|fades|fades a bit|fades away|fading|fainter|falls away|gentler|gentler now|half gone|has faded|have faded|is down|less|less now|less obvious|less pronounced|less so|less strong|less than before|lessened|lighter now|mellowed|mostly gone|nearly gone|not as much|not as much as|not as strong|not as strong now|not so strong|pulled back|pulls back|quieter|quieter now|receded|recedes|receding|reduced|retreated|retreats|settled down|settles down|shrinks|shrunk|softened|softens|softer|softer now|stepped back|steps back|subdued|subsided|subsides|tailed off|tails off|toned down|waned|wanes|waning|weaker|weaker now`,
  },
  {
    says: "more",
    words: `a bit more|a little more|a lot more|added|adds|amplifies|bigger|boosts|deeper|double the|even more|extra|far more|greater|growing|grows more|heavier|heavier on|heightens|increased|increasingly|lots more|louder|more|more intense|more pronounced|much more|slightly more|stronger|stronger on|turns up the|twice as much|twice the|way more`,
  },
  {
    says: "increased",
    words: `bigger|bigger now|blooms|building|builds|built|came forward|came up|come up|comes forward|deepened|deepens|gets bigger|gets stronger|got stronger|grew|growing|grows|has grown|increased|increases|increasing|intensified|intensifies|is stronger|louder|louder now|more intense|more now|more obvious|more prominent|more pronounced|more than before|picks up|ramps up|rises|rising|stepped forward|steps forward|stronger|stronger now|swells|up a notch|wakes up`,
  },
  { says: "as-much", words: `as|as much|equally|just as|same|similarly|the same` },
  {
    says: "unsure",
    words: `almost|am i getting|appears|approaching|arguably|at a guess|bordering on|borderline|can it be|can't decide|can't rule out|can't tell|can't tell if|cannot rule out|cant decide|cant tell if|conceivably|could|couldn't rule out|dare i say|debatable|do not know|don't hold me to it|don't know|don't know if|dont hold me to it|dont know|dont know if|doubtful|either|fancy i|hard to be sure|hard to say|hard to tell|have my doubts|i am not sure|i believe|i fancy|i guess|i imagine|i reckon|i suppose|i thought|i want to say|i wonder|i would say|i'd say|i'm not sure|id say|if i had to bet|if i had to guess|if pushed|im not sure|ish|kind of|kinda|may be|may have|maybe|might|nearly|not certain|not convinced|not entirely convinced|not entirely sure|not persuaded|not so sure|not sold on|not sure|or similar|or so|or the like|perhaps|possibly|potentially|presumably|probably|question mark|questionable|seem to|seems|seems like|something|something like|sometimes|somewhat like|sort of|sorta|suspect|swear|think|unconvinced|unsure|verging on|want to say|who knows|wonder if|wondering if|would not rule out|would that be|wouldn't rule out`,
  },
  // "don't think there's any smoke": a hedge under "not" says no.
  {
    says: "not",
    over: true,
    words: `<nope> <think>|<nope> <think> that|<who> not <say>|<would> <say>`,
  },
  {
    says: "not",
    words: `are not any|do not smell|do not taste|don't get any|don't smell|don't taste|is not any|not smelling`,
  },
  // Looks like a "not" and is none.
  {
    says: "there",
    words: `can't deny|can't escape|can't get away from|can't get over|can't get past|can't help tasting|can't hide|can't ignore|can't miss|can't see past|can't shake|can't stop smelling|can't stop talking about|can't stop tasting|cannot deny|cannot escape|cannot get away from|cannot get past|cannot hide|cannot ignore|cannot miss|cannot see past|cannot shake|cant deny|cant get over|cant get past|cant hide|cant miss|could not miss|couldn't miss|didn't get before|didn't notice before|does not go away|does not hide|doesn't fade|doesn't go away|doesn't hide|doesn't let up|hadn't noticed|hard to ignore|has not gone|hasn't faded|hasn't gone|hasn't left|hasnt gone|haven't gone|i did not get before|i didn't get before|i didn't notice before|i had missed|i hadn't seen|i missed before|impossible to ignore|isn't shy about|isn't shy with|never lets go|no avoiding|no denying|no doubt|no escape from|no escaping|no getting away from|no getting past|no hiding|no mistake|no mistaking|no question|not going away|not gone|not gone away|not hiding|not shy about|not shy with|not there before|refuses to leave|still there|that i hadn't|that i missed|that wasn't there|unable to get past|wasn't there before|which i missed|will not shut up about|without a doubt|without doubt|without question|won't go away|won't shut up about|wont go away|wont shut up about`,
    strength: 7,
  },
  {
    says: "there",
    words: `can't complain|do not mind|do not miss|does not cover|does not lack|does not mask|doesn't cover|doesn't lack|doesn't mask|don't mind|don't miss|dont mind|dont miss|i don't mind|if not|isn't short of|never mind|never without|no less|no wonder|not a bad|not devoid of|not dissimilar to|not far from|not far off|not forgetting|not free of|not just|not lacking|not merely|not only|not quite hiding|not short of|not simply|not solely|not surprisingly|not to mention|not too shabby|not unexpected|not unpleasant|not unpleasantly|not without|not without its|not without some|not wrong|unsurprisingly`,
  },

  // Said, and taken back.
  {
    says: "correct",
    words: `actually no|actually not|actually that's|actually thats|ah no|better said|better to say|changed my mind|correct that|correction|delete that|er no|erm no|excuse me|forget that|hang on|hmm no|hold on|i change my mind|i correct|i lie|i mean|i meant|i should say|i stand corrected|i take that back|i tell a lie|i would rather say|instead|let me correct|let me rephrase|make that|my mistake|nah|no|no actually|no definitely|no hang on|no i lie|no i tell a lie|no i think|no i'd say|no it is|no it is more|no it's|no it's more|no its|no its more|no make that|no maybe|no more like|no more of a|no no|no not|no perhaps|no rather|no sorry|no tell a lie|no that is|no that's|no that's wrong|no thats|no wait|nope|not right|not that|oh no|on reflection|on second thought|oops|or rather|pardon|rather more like|scrap that|scratch that|second thoughts|should i say|sorry|sorry no|strike that|take that back|tell a lie|that is wrong|that's not right|that's wrong|thats not right|thats wrong|thinking about it|uh no|um no|wait|wait no|well no|whoops|wrong`,
  },
  {
    says: "said-before",
    words: `almost said|almost wrote|at first i thought|before i had|change my mind about|change my mind on|changed my mind about|changed my mind on|cross that out|crossed out|delete|earlier i had|earlier i said|earlier i wrote|first i said|first time i said|first time i wrote|i first thought|i first wrote|i mistook|i thought it was|i thought was|i want to take back|i wanted to write|last time i had|last time i said|mistook|nearly said|nearly wrote|previously|scrap|scratch|strike out|thought it was|took it for|was going to say|what i called|what i took for|where i had|where i noted|where i said|where i wrote`,
  },
  {
    says: "said-maybe",
    words: `i called it|i first said|i had down|i had noted|i had written|i noted|i put|i put down|i said|i wrote|i'd noted|i'd put|i'd written|i've put|i've written`,
  },

  // Of another glass, or of no glass.
  {
    says: "than",
    words: `against|as in|as opposed to|as the|beside|compared to|compared with|from the|in comparison to|in comparison with|like the|next to|opposed to|relative to|than|unlike|versus|vs`,
  },
  {
    says: "other",
    words: `all the others|earlier one|every other glass|first glass|its brother|its neighbor|its neighbour|its sister|last glass|last one|most of the others|my last <dram>|next glass|other glass|previous glass|previous one|that glass|that last one|that one|the <dram> before <it?>|the <dram> before that|the <dram> next to <it>|the <dram> on the left|the <dram> on the right|the <dram> we had|the <dram> we had before|the bottle at home|the bourbon one|the control|the earlier|the earlier glass|the earlier one|the far one|the fifth|the first|the first glass|the first one|the fourth|the fourth glass|the fourth one|the last|the last <dram>|the left hand one|the left one|the middle one|the next|the next one|the one beside it|the one earlier|the one from yesterday|the one i had before|the one in the middle|the one yesterday|the other|the other <dram>|the other two|the others here|the peated one|the previous|the previous <dram>|the reference|the right hand one|the right one|the second|the second glass|the second one|the sister glass|the sixth|the standard|the standard one|the third|the third glass|the third one|the two before|the two others|the usual|yesterday's`,
  },
  {
    says: "this",
    words: `here|here it is|here it's|in here|mine|now here|this|this dram|this glass|this has|this is|this one|this one has|this one is|this sample|this time|this was|this whiskey|this whisky|whereas this`,
  },
  {
    says: "aside",
    words: `<somebody> <doing>|<who> expect|<who> expected|<who> thought it was going to be|<who> thought it would be|<who> thought it'd be|<who> was thinking of|a jar of her|a jar of his|a mash of|a painting of|a scented candle|according to|advertised as|after the curry|aged in|air was full of|air was thick with|allegedly|allergic to|anyone who <like>|apparently there's|are smoking|arguing about|asked for|asking for|assumed|bake a|baked a|baked some|baking a|banging on about|been smoking|before that we had|before this i had|before this we had|begs for|bottle says|bottled from|bought|braced for|bracing for|bring out the|brought a|brought along|brought her|brought his|brought over|brought round|brought some|brought up on|brush my teeth|brushed my teeth with|burning a scented|buys|by the name of|called|came from a|can keep the|can keep your|can't abide|can't bear|can't drink|can't speak for the|cask of|cleaned with|cleanse <the> palate|cleansed <the> palate with|clothes smell of|coat smells of dog|confuse with|confused with|cooked a|cooked some|could murder a|couldn't tell you about|craving|crying out for|dad lit|described as|distilled from|don't ask me about|don't drink|drink it with|drink this with|drink with|dropped my|dropped the|drove past|eat with|eating|everybody is saying|everybody says|everyone else|expected|expecting|famous for|fans|fans of|fed the|fed up with|feeding the|fingers smell of|finished in|fond of|fried some|from a cask|frying|gave me|gave up|gave us|geared up for|giving up|go out for|go with|goes nicely with|goes on about|goes well with|goes with|going on about|good in a|good with|great with|grew up on|growing up we|had a plate of|had just had|had lit|had too much|hair smells of|handed around|handed round|handing round|hands smell of|hands smelled of|have it with|have this with|have with|having a barbecue|having eaten|he baked|he brought|he cooked|he grows|he lit|he spilled|he'd eaten|hoped for|hoping for|house was full of|hunting for|i ate|i baked|i blame|i brought|i can't eat|i chewed|i cooked|i don't eat|i grow|i had eaten|i had read|i have a cold and|i hoped|i like my|i lit|i never eat|i picked|i prefer|i read|i spilled|i spilt|i tend to|i was told|i wish i could|i worked at|i would love|i'd eaten|i'd had|i'd have liked|i'd just had|i'd kill for|i'd love|i'd mown|i'd prefer|i'm full of|i'm told|i've had a|i've just had|ideal with|if <who> <like>|if i say|if only|ignore any|ignore anything|in my other hand|in the mood for|is baking|is cooking|is smoking|just ate|just had a|keeps a|keeps going on about|kept on about|kept saying|kitchen was full of|known as|known for|laid out|lighting a|lights a|like to drink|lit a|lit the|longing for|looked for|looking for|love a bit of|love a good|lovely with|lovers|made a|made from|made some|married in|matured in|meant to be|meant to have|meant to smell|meant to taste|mended the|mistake for|mistake it for|mistaken for|mowing the|my first job|named|never drink|next door is having|nibbled|nibbling|nice with|nicknamed|nipped out for|no good with|normally|not everyone|not keen on|offered me|offered us|on a diet of|ordered a|ordered some|others found|others get|others got|others say|ought to have|painted the|painting the|pair it with|pair with|pairs well with|partial to|pass for|passed around|passed round|pay no mind to|peeled|peeling|people get|people say|people who <like>|perfect with|photo of|picked some|picking the|picture of|place smelled of|place smells of|place was full of|planted|planting|poem about|polishing the|popped out for|pour it on|pour it over|poured by|prepared for|promised|promises|put out some|raised on|raved about|raving about|reaches for|reaching for|recipe for|repairing the|reputed to|reviews mention|reviews say|rinsed|roasting|room full of|room smelled of|room smells of|room stinks of|room was full of|rumored to|rumoured to|sanded the|sanding the|says on the label|searched for|searching for|serve it with|serve this with|serve with|served with|set out some|she baked|she brought|she cooked|she grows|she lit|she spilled|she'd eaten|shopping for|should be|should have|sick of|smell from next door|smell of dinner|smells from the kitchen|smoke alarm|smoke break|smoked a|smoking a|smoking her|smoking his|smoking outside|snacking on|sold as|somebody brought|somebody lit|somebody said|somebody says|someone brought|someone lit|someone said|someone says|song about|spilled the|spilt the|steeled for|still full of|supposed to be|supposed to have|supposed to smell|supposed to taste|supposedly|talk about|talked about|talking about|telling me|telling us|tells me|tells us|that was the|that'll be the|the <source> <says>|the blurb|the label|the leaflet|the others get|the others got|the others said|the others say|the room smelled of|the room smells of|they get|they lit|they say|thinking it would be|those who <like>|thought i would get|thought i'd get|thought there would be|thought there'd be|told it has|told me|told there was|told to expect|told us|used to hate|used to love|used to smoke|used to work at|used to work in|usually|varnished the|varnishing the|waiting for|warned about|warned me about|warned of|warned us about|was baking|was cooking|was smoking|washed down with|watering the|waxed the|waxing the|we ate|we baked|we cooked|we grow|we had had|we lit|we picked|we were told|we'd eaten|we'd had|we'd just had|we've just had|wearing|weeding the|went on about|went out for|were smoking|which the others are finding|who <like>|wish for|wish it had|wish there was|wish there were|wished for|with a bowl of|with a piece of|with a plate of|with a slice of|with a square of|worked in|would be nice|would go nicely with|would go well with|would have liked|would kill for|would love a|would love some|would pair well with`,
  },
  {
    says: "reports",
    words: `are saying|argues|bets|called it|calls it|claimed|claims|finds|found|gets|got|insisted|insists|is saying|keeps saying|kept saying|mentioned|mentions|muttered|mutters|noted|reckoned|reckons|said|says|shouted|shouts|smelled|suggested|suggests|swears|swore|tasted|thinks|thought|was saying|were saying|whispered|whispers|writes|wrote`,
  },
  {
    says: "aside",
    back: true,
    words: `according to|all evening|at dinner|at lunch|at the bar|before dinner|before i came|before we began|before we started|coming in|crossed it out|down the road|down the street|drifted in|earlier today|floating|for breakfast|for dinner|for lunch|for pudding|for supper|from outside|from the kitchen|gets in the way|got in the way|in my hand|in my pocket|in the air|in the ashtray|in the bar|in the corner of the room|in the garden|in the grate|in the hall|in the kitchen|in the next room|in the oven|in the room|is cooking|is next door|next door is|on her fingers|on his fingers|on my fingers|on my hands|on my shirt|on the air|on the hob|on the radio|on the rug|on the sofa|on the stove|on the table|on the telly|on the wall|over the road|rubbed it out|scratched it out|talking|this morning|through the window|was better than this|was cooking|were cooking|would be welcome|would not go amiss|wouldn't go amiss`,
  },
  {
    says: "aside",
    words: `amber as|appearance|black as|brown as|color|color of|colored|colored like|colour|colour of|coloured|coloured like|dark as|glows like|golden as|in the glass it is|legs|looks|pale as|red as|shade is|shines like|the look of|the shade of|tinted|to look at|to the eye|yellow as`,
    look: true,
  },

  // Where in the mouth. "on the nose" may stand after; "nose" heads what follows.
  // A part named only to compare with it.
  {
    says: "idiom",
    words: `a plum in the mouth|a swallow flew|acquired taste|after a bit|after a drop of water|after a few minutes|after all|after five minutes|after he|after his|after i|after it had|after it has|after my|after she|after so|after some time|after tea|after ten minutes|after the rye|after we|aftertaste of victory|alcohol free|all ends|and nothing else|and nothing more|as a rule|as it goes|as it smells|as on the nose|at the end of my|background noise|bad nose|bad taste|baker's dozen|banana skin to|be all over it|becomes more of|big mouth|bit of water|blocked nose|bread bin|bread knife|bright idea|bright light|bright morning|bright orange|bright side|bright spark|brown nose|burned down|burned the|burns off|burns the house|burnt down|burnt the|can't say no|carrot and stick|cat's tail|cleanse my palate|cleared my throat|close by|close call|close enough|close run|close the|close to|close up|closed book|coffee date|coffee morning|cool as a cucumber|cup of tea later|dangle a carrot|dash of water|deep breath|deep end|deep pockets|deep sleep|deep water|delicate china|departure lounge|did not finish|didn't finish|don't love|dont love|door shut|drop of water|dry ground|dry land|dry mouth in the morning|dry stone|eases into|echoes the nose|end of the garden|end of the oak table|ends of the earth|evening light|exit poll|exit sign|feel like a lemon|felt like a lemon|finish first|finish last|finish line|finish my|finish my glass|finish off|finish the bottle|finish the glass|finish up|finished my|finishes second|finishes third|fire exit|first light|flat land|follow my nose|followed my nose|followed your nose|follows the nose|for all the tea|for something so|foul mouth|fresh coffee pot|fresh snow|glass after glass|good nose for|good taste|goodbye to|gooseberry between|grapes of wrath|hard to swallow|he smoked|heads or tails|heart of stone|heavy book|heavy boots|heavy metal|high tea|hold your nose|honey bee|hot bath|hot drink|hot food|hot meal|hot oven|hot shower|hot toddy made|hot whiskey|hot whisky|hung out to dry|i don't love|i finish|i never finish|i smoked|i toasted|in flower|in the barrel|in the cask|it ends up|jacket potato|knows best|knows her|knows his|knows how|knows that|knows what|knows where|knows why|last light|last swallow of|left in the barrel|light entertainment|light fades|light falls|light jacket|light rain|light reading|light sleeper|like a cigarette|like the nose promised|lively chat|lively evening|looks after|loose ends|low light|lump in my throat|make ends meet|makes a noise|mature adults|mellows into|mirrors the nose|morning light|mother tongue|mouth to feed|mouth to mouth|mouth watering|mouthwatering|my mouth was not|my mouth wasn't|my nose is|my nose is blocked|my palate is|need a cigarette|never been one for|never finished|never one for the|nice as pie|no ice|no more so|no nose for|no water|noise outside|nose around|nose bleed|nose for trouble|nose is blocked|nose is running|nose job|nose out of joint|nose to the grindstone|nosebleed|nosey|not one for the|not usually one for|nut job|nutcase|oak like an overcoat x|odds and ends|of all things|olive branch|open book|open flame|open mic|open sea|open water|opens|or so they say|out of the cask|out to dry|out to grass|palate cleanser|pepper mill|pepper pot|play gooseberry|playing gooseberry|plum in her mouth|plum in his mouth|polished shoes|polished up|powder my nose|rich tapestry|rose garden path|rose tinted|rough cut|rough hands|rough sleep|runny nose|said goodbye|salt cellar|same as nose|say goodbye|saying goodbye|second banana|sharp bend|sharp corner|she smoked|sign off on|simple food|simple soul|sip after sip|sip of water|smell a thing|smell anything|smell nothing|smell properly|smell the room|so close|soft hands|soft landing|soft lighting|soft pillow|soft rain|softens into|soon after|stay for|stay the same|stayed for|stayed in|stayed late|stayed the same|stayed up|stays in the glass|stays late|stone dead|stone deaf|stuffy nose|sugar mouse|sun light|sunday tea|swallow my pride|swallow the pill|swallows on the|sweet shop owner|tail between|tail of a|tail of the queue|tail wagging|taste a thing|taste anything|taste for|taste in men|taste in music|taste of home|taste of my own|taste panel|taste test|tea room|tearoom|than it smelled|than it smells|than it smelt|than it tastes|than on the nose|than on the palate|than the nose suggested|than the nose suggests|the end of my|the light goes|the light is|the light was|the peaty stuff|the tail of a|tip of my tongue|tip of the tongue|tired feet|tired legs|tired old|tired palate|to a finish|to finish the|to finish this|to my palate|to my taste|toffee nosed|tongue in cheek|tongue tied|tongue twister|too close|top banana|touch of water|tough cookie|turn up my nose|turned up my nose|turnip of a|under my nose|under your nose|up in smoke|very close|wagging its tail|want a cigarette|warm bath|warm heart|warm words|waved goodbye|waving goodbye|we smoked|we toasted|weekend|without water|word of mouth|young couple|young wine`,
  },

  // A flavour's word that is none here.
  {
    says: "idiom",
    words: `a bit rusty|a bit thick|a flat tyre|a grain|a malt|a rye|a toast|after a curry|after coffee|after tea|against the grain|all at sea|all day long|all night long|all round|all year round|am nuts|amber coloured|an open|another malt|another round|another rye|anybody|apple green|apple of my eye|arms full|at bay|at christmas|at church|at the beach|at the dentist|at the harbour|at the hospital|at the seaside|back in the saddle|bad apple|bag of crisps|balance my|balance of power|balance sheet|balanced against|balanced on|balanced the|barking up|barn dance|barn door|barrel aged|barrel number|barrel of laughs|barrel pick|barrel proof|barrel strength|bay window|be bold|beach ball|beach holiday|beach house|beach towel|been closed|been open|beer first|beer garden|beers|before beer|before christmas|before i had none|beginner's game|big cheese|big fish|bit of a pickle|bit rusty|bit tired|bite my tongue|bite the bullet|bite the dust|bite to eat|bitter about|bitter cold|bitter disappointment|bitter end|bitter experience|bitter pill|bitter rival|bitter row|bitter sweet memories|bitter truth|bitter wind|bitter winter|blended malt|blind date|blood pressure|blood sugar|bloody|blow smoke|blowing smoke|board game|bold as brass|bold choice|bold claim|bold enough|bold move|bold print|bold statement|bold type|booked|bottle green|bottle is dry|bottled|bottling date|bottom of the barrel|bowl of nuts|bowl of olives|bowling green|bread and butter issue|bread maker|bread on the table|bread winner|breadwinner|bright and early|bright as a button|bright young|bring home the bacon|bring to light|bug bite|burn calories|burn out|burn the candle|burned my|burned out|burning question|burning the midnight oil|burns a hole|burnt my|burnt out|bury my head in the sand|butter fingers|butter me up|butter wouldn't melt|buy a lemon|by the sea|call in sick|candle light|candlelight|candlelit|case study|cask strength|chain smoker|cheese board|cheese plate|cheeseboard|cheesy music|cherry on the cake|cherry on top|cherry pick|chew the fat|christmas day|christmas eve|christmas morning|christmas party|christmas present|church bells|church hall|cider house|cigar bar|cigar lounge bar|clean bill|clean cloth|clean conscience|clean cut|clean getaway|clean living|clean sheet|clean slate|clean sweep|clean up|clean water|clear as mud|closed distillery|closed door|closed down|coast to coast|coffee cup|coffee table|coffee this morning|coffee went cold|coin a phrase|cold blood|cold feet|cold light|cold medicine i|come clean|come rain|come round|complex question|cookie cutter|corn whiskey|cost the earth|cotton wool|couch potato|cream carpet|cream of the crop|cream rises|creamy complexion|crisps|cup of coffee|cup of tea earlier|cuppa|curry house|curry last night|curry tonight|cut the mustard|cutting edge|daily bread|daily grind|date back|date night|date of|date stamp|dating|daylight|dead heat|dead wood|deep conversation|deep end|deep freeze|deep fried|deep thought|delicate flower of a|delicate hands|delicate matter|delicate question|dentist tomorrow|didn't match|doctor says|does not match|doesn't match|don't sweat|door open|down to earth|draw straws|drink a toast|drive me nuts|dry clean|dry cleaner's|dry cleaners|dry comment|dry day|dry eye|dry ice|dry january|dry martini|dry patch|dry run|dry sense|dry sense of humor|dry sense of humour|dry spell|dry summer|dry throat|dry weather|dry wit|drying dishes|drying her|drying his|drying my|drying the|drying up|due date|earth shattering|earthy humour|earthy laugh|east coast|easy as pie|easy peasy lemon squeezy|egg on my face|eight sharp|emerald green|evening paper|every christmas|every malt|everybody|ex smoker|eyes closed|eyes open|fade out of|fair game|fat cat|fat chance|feather|feel sick|feel the heat|feel tired|feeling mellow|feeling tired|feeling warm|fingers still smell|fired|first bite|first round|first time|fishy about|fishy business|fishy story|flat as a pancake|flat battery|flat broke|flat cap|flat earth|flat out|flat pack|flat rate|flat share|flat tire|flat white shop|flatmate|flip a coin|floral curtains|floral dress|floral shirt|floral wallpaper|for christmas|for tea|forest green|fresh air|fresh as a daisy|fresh batch|fresh from|fresh legs|fresh look|fresh mind|fresh news|fresh off|fresh out of|fresh palate|fresh pour|fresh sample|fresh sheet|fresh start|fresh water|from the pharmacy|frosting on the cake|fruit cake of a|full attention|full belly|full bloom|full circle|full confidence|full credit|full day|full disclosure|full english|full flight|full fridge|full house|full length|full marks|full measure|full pour|full proof|full size|full speed|full steam|full stomach|full stop|full strength|full swing|full tilt|full time|full time job|full view|full week|full works|full year|game changer|game night|game on|garlic bread|gather round|gentle giant|get a grip|get a kick out of|get rich|get to grips|glass full|glass is clean|glass was clean|go against the grain|go bananas|go nuts|go to church|go up in smoke|goes nuts|goes round|going bananas|going green|gold coloured|gold light|golden light|good egg|got burnt|got tired|grain bill|grain of salt|grain of sand|grain of truth|grain whiskey|grain whisky|grape vine|grapevine|grass is greener|grass roots|grassy bank|grassy hill|grassy slope|gravy train|green fingers|green label|green light|green party|green thumb|green with|green with envy|grip the glass|guessing game|had a beer|had a curry|had cheese|had coffee|had curry|had none before|had steak|hair on my chest|hair on your chest|half full|hands full|hands still smell|hang in the balance|happy medium|hard as wood|hard cheese|hard nut to crack|have coffee|hay fever|haywire|he smokes|heat of the day|heat of the moment|heat outside|heat was on|heat wave|heatwave|heaven and earth|heavy breathing|heavy cold|heavy day|heavy drinker|heavy going|heavy hand|heavy heart|heavy lifting|heavy machinery|heavy pour|heavy rain|heavy sleeper|heavy smoker|heavy traffic|heavy weather|hell for leather|her coffee|her tea|hi honey|high and dry|high horse|his coffee|his tea|hit the hay|hold a candle|hold your horses|holy smoke|holy spirit|home sweet home|honey bunch|honey light|honey trap|honeymoon|honeypot trap|horses for courses|hospital visit|hot afternoon|hot air|hot and bothered|hot date|hot day|hot dog stand|hot evening|hot in here|hot mess|hot night|hot off the|hot or cold|hot outside|hot potato|hot pursuit|hot room|hot seat|hot shot|hot stuff|hot summer|hot summer's day|hot ticket|hot tip|hot topic|hot tub|hot under the collar|hot water|hot weather|how on earth|how sweet of|i am full|i had none|i rose|i smoke|i'm full|i'm nuts|i'm tired|icing on the cake|if i was rich|if i were rich|im full|im tired|in a cold sweat|in a nut shell|in a nutshell|in a pickle|in bold|in church|in full|in hospital|in light of|in my blood|in the grip|in the heat|in the light|in the spirit|in the study|in the thick of|in this light|ink blot|ink pen|iron fist|is a rye|is nuts|it rains|its a date|just peachy|keen as mustard|keep it simple|keep off the grass|kept open|kick back|kick in|kick it out|kick off|kick out of|kick start|kicks up|kicks up its heels|kindred spirit|knock on wood|knock your socks off|knocked my socks off|last but not least|last sip|last straw|leaf through|leafy lane|leafy street|leafy suburb|leather bound|leather sofa in|leave no stone|left a bad taste|left a sour taste|left open|lemon light|lemon of a|library card|light a|light bulb|light candles|light dinner|light entertainment|light fitting|light headed|light in here|light lunch|light meal|light of day|light of my life|light pour|light relief|light show|light snack|light supper|light switch|light the fire|light touch|light up|light weight|light work|light years|lightheaded|lights|like two peas|lime green|lime light|limelight|line in the sand|lit candles|long gone|long legs|long nose|long since gone|long sip|look sharp|lose my grip|made tea|make hay|make tea|malt whiskey|malt whisky|malts|mash bill|matched|mature student|meat and potatoes|meat of it|medium pour|medium rare|mellow evening|mellow music|merry christmas|metal heads|metal spoon|mint condition|mint green|moonlight|morning coffee|morning paper|moss green|move the earth|mud in your eye|mug of tea|my coffee|my cup of tea|my flat|my honey|my malt|my round|my rye|my sweet|my tea|name is mud|neck of the woods|needle in a haystack|nerves of steel|new car keys|new leaf|new paint|next round|no longer than|no match|no smoke without|no smoke without fire|no sweat|nobody|non smoker|not my cup of tea|notebook|nuts about|nuts and bolts|nutty as|nutty idea|oak bar|oak hollow|oak room|oak table|oak tree|off sick|oil painting|oil the wheels|oily fingers|oily hands|oily rag|oily smile|olive branch|olive green|olive skin|on balance|on earth|on my soap|on paper|on the beach|on the pier|open about|open air|open fire in|open for|open house|open kitchen|open mind|open question|open secret|open since|open up|opened a|opened it|opened the|opened the bottle|orange glow|orange juice carton|orange light|orange squash stain|other side of the coin|our tea|out of date|out of the barrel|out of the woods|out of the woodwork|over a barrel|over christmas|over coffee|overseas|paint a picture|paper bag|paper cup|paper plate|paper thin|pea brain|pea green|peach of a|peaches and cream complexion|peaches and herb|peachy keen|peachy skin|penny dropped|penny drops|penny for your|pepper us with|peppered with jokes|peppered with questions|peppering|percent alcohol|pickle myself|pie in the sky|piece of cake|piece of paper|piece of toast this|pinch of salt|pizza|plastic cup|play the game|plenty more fish|plum job|plum position|plum role|ports|pot still|pretty penny|pull the wool|put the bread|quick look|quick note|quick one|quick sip|quick sniff|quick taste|quickly poured|rain against|rain check|rain outside|raining|raise a toast|raise your glass|ran dry|red light|release date|remains a|remains my|remains of|remains to be seen|rich and famous|rich coming from|rich history|rich kid|rich list|rich pickings|rich tapestry|rich tea time|right as rain|rises|rocks|rocks my|rolling stone|rose gold|rose up|rotten apple|rough day|rough diamond|rough edges of|rough guess|rough guide|rough idea|rough night|rough patch|rough ride|rough sea|rough time|rough weather|rough week|roughly|round and round|round here|round his|round my|round of|round of applause|round of drinks|round of golf|round off|round one|round robin|round three|round trip|round two|round up|rounded off|rounds it off|royal oak|rubber stamp|run dry|runs in the blood|rusty at this|rusty nail in|rye whiskey|rye whisky|ryes|saddle up|sage advice|sage green|sage words|salt and pepper beard|salt and pepper hair|salt in the wound|salt of the earth|salty joke|salty language|salty old|salty tongue|sausage fest|save my bacon|save the date|say cheese|school desk job|scrape the barrel|sea change|sea legs|sealed|second round|second time|second time round|set in stone|sharp as a tack|sharp contrast|sharp dresser|sharp elbow|sharp end|sharp intake|sharp knife|sharp left|sharp mind|sharp right|sharp shooter|sharp suit|sharp tongue|sharp wit|sharp witted|sharp words|she smokes|shop was closed|short of breath|short straw|sick day|sick of|silky voice|simple as that|simple enough|simple life|simple pleasure|simple question|simple task|simple tastes|single barrel|single grain|single malt|small beer|smart cookie|smell a rat|smell of money|smell of success|smelled a rat|smells fishy about|smoke and mirrors|smoke filled|smoke gets in|smoke in my eyes|smoke like a|smoke rose|smoke without fire|smokes like|smoky eye|smoky jazz|smoky voice|smooth criminal|smooth move|smooth operator|smooth ride|smooth running|smooth sailing|smooth talker|smooth talking|smooth things|snake in the grass|so hot today|soap box|soap opera|soapbox|sock it|socks off|soft drink|soft launch|soft music|soft option|soft play|soft spoken|soft spot|soft touch|soft toy|somebody|something fishy|sour grapes|sour note|sour puss|sour taste left|spend a penny|spice of life|spice things up|spicy language|spicy story|spill the tea|spirit animal|spirit level|spirits|spring flower show|square root|squeaky clean|stay home|stay the night|stay tuned|stay up|steel yourself|still smell of them|sting in the tail|stone cold|stone faced|stone's throw|stony broke|stony face|stony silence|straight from the barrel|straight rye|straight up guess|straw poll|sugar and spice|sugar daddy|sugar rush|sugarcoat|sun burn|sunday paper|sweat it|sweat the small|sweet dog|sweet dreams|sweet little|sweet memory|sweet nothing|sweet of her|sweet of him|sweet of them|sweet of you|sweet old|sweet revenge|sweet sixteen|sweet smell of|sweet spot|sweet talk|sweet tooth|sweetheart|tack on|tacky|take a leaf|take root|take this with a pinch|take this with a pinch of salt|takes the biscuit|takes the cake|taking medicine|tan leather|tang of regret|tar with the same brush|tart up|taste of freedom|taste of victory|tea and biscuits|tea earlier|tea lady|tea time|tea towel|tea went cold|team spirit|teatime|tennis match|thanks honey|that malt|that rye|that's rich|the barrel was|the beach with|the coast is clear|the curry|the earth moved|the flat|the heat today|the papers|the spirit of|the woods|thick accent|thick and fast|thick and thin|thick as thieves|thick fog|thick headed|thick of it|thick skin|thick socks|thin air|thin disguise|thin end of the wedge|thin ice|thin lipped|thin on the|thin on the ground|thin on top|third time|this christmas|this grain|this malt|this round|this rye|this with a pinch of salt|time round|tired evening|tired of|tired today|to date|to hospital|to the beach|to the dentist|to the hospital|to the seaside|toast the|toast to|toasted the|too full|too hot today|too much coffee|took the biscuit|toss a coin|toss of a coin|touch wood|tough nut|traffic light|tree tops|tucked up|turn up the heat|turned round|under fire|up to date|velvet chair|velvet rope|velvet voice|village green|wafer thin|wake up and smell the coffee|walk round|wane|warm all over|warm and fuzzy|warm body|warm day|warm evening|warm front|warm fuzzy|warm hand|warm in here|warm it|warm it up|warm kitchen|warm memories|warm my hands|warm night|warm outside|warm room|warm spell|warm the glass|warm tonight|warm up|warm weather|warm welcome|warm words|warming the glass|warming up|was tired|wax lyrical|waxed jacket on|way round|way the cookie crumbles|we smoke|went bananas|went nuts|west coast|what date|what on earth|wheat whiskey|wheated|when i was young|where there's smoke|whole ball of wax|wide open|window open|with a pinch of salt|woodwork|works at the hospital|worth his salt|worth its salt|wry|young at heart|young couple|young daughter|young ones|young son`,
  },
  {
    says: "idiom",
    words: `a bit later|a little while|above all|absent friends|absent minded|added a drop|added water|adds up|after all that|all at once|all clear|all day|all i can think|all of it|all of them|all of this|all of us|all right|all that jazz|all the best|all the same|all the time|almost done|almost empty|almost finished|almost there|alright|and so on|any more for|at all|best of all|big day|big fan|big glass|big pour|big sip|bit by bit|bit of fun|bit of luck|calm down|can't believe|can't describe|can't explain|can't help|can't name|can't place|can't put my finger|can't remember|can't stand|can't think|can't wait|cannot believe|cannot name|cant believe|cant help|cant place|cant put my finger|cant wait|come down|could be better|could be worse|could be wrong|could drink|could well|couldn't help|couldn't put my finger|crazy about|deep breath|do not get me wrong|do not hate|do not like|doesn't it|doesn't matter|doesn't need|doesn't taste like|doesnt it|doesnt matter|don't ask|don't care|don't get me wrong|don't hate|don't hate it|don't let|don't like|don't need|don't remember|don't understand|don't worry|don't you think|dont get me wrong|dont hate|dont like|dont remember|down here|either way|excuse my|extra point|first of all|going going gone|gone by|gone off to|gone to bed|gone wrong|good stuff|great stuff|great value|great whiskey|hang on to|here's|heres|high hopes|high proof|high strength|hold on to|holds on|i can't stand|i could be wrong|i don't like|i dont like|i never like|i think i like|i think it's great|i think so|i think that's it|i think this|i was wrong|i won't lie|in a bit|instead of sugar|is that so|isn't bad|isn't it|isnt bad|isnt it|kind of whiskey|kind of you|less is more|less than impressed|little brother|little one|little sister|little while|lost my|low proof|makes me think|may be wrong|me either|might as well|might be wrong|might buy|missing out|missing something|more like|more often|more or less|more please|more time|most of all|never been|never had|never know|never liked|never seen|never tasted|never thought|never would have|nevertheless|no bad thing|no big deal|no clue|no comment|no complaints|no fault|no good|no hurry|no idea|no matter|no more for me|no one|no problem|no rush|no thank you|no thanks|no worries|none the less|nonetheless|nope nope|not a fan|not a lot going on|not alone|not always|not bad|not bad at all|not cheap|not everybody|not everyone|not expensive|not going to lie|not gonna lie|not great|not half bad|not here for|not in a bad way|not in a good way|not mine|not much else|not much going on|not much more|not much to say|not my cup|not my favorite|not my favourite|not my style|not my thing|not now|not often|not that i care|not that i mind|not that it matters|not that there's anything wrong|not today|not what i expected|not withstanding|nothing bad|nothing else|nothing like|nothing much|nothing new|nothing special|nothing to add|nothing wrong|notwithstanding|ok so|okay so|once more|one more|one more sip|or so they|pardon the|people here|pretty much|put down|really enjoy|really enjoyed|really like|really liked|really love|really nice|really well|right so|sat down|sit down|small glass|small pour|small sip|so anyway|so bear|so far|so here|so lovely|so my|so nice|so on|so so|so that|so then|so what|some kind of|some more|some reason|some sort of|some time|someone|something about|something else|something going on|something i can't|something i cant|something is missing|something missing|something nice|something off|something to|something wrong|sorry about|sorry for|sorry i'm|sorry if|sorry that|sorry to|sort of day|sort of whiskey|strong candidate|strong contender|strong start|that is all|that is so|that kind of|that's all|thats all|the kind of|think about|think back|think of|this morning|too bad|too good|turn it down|up and down|upside down|vanish without|very best|very drinkable|very interesting|very last|very lovely|very nice|very pleasant|very top|very well|wait a|wait and|wait for|wait until|wasn't it|why not|will not lie|won't lie|wont lie|wouldn't change|wouldn't go so far|wouldn't mind|wouldn't say no|wouldnt mind|write down|wrong glass|wrong with|wrote down`,
  },
  {
    says: "liking",
    words: `adore|beautiful|beautifully|brilliant|cracking|delicious|delightful|divine|enjoyable|excellent|fabulous|fantastic|favorite|favourite|gorgeous|grand|heavenly|i like this|i love this|like this|love it|love this|loved it|lovely|magnificent|moreish|my favorite|my favourite|nice|outstanding|perfect|pleasant|pleasing|smashing|spot on|stellar|stunning|superb|tasty|top notch|wonderful|wow|yum|yummy`,
    liking: 1,
  },
  {
    says: "liking",
    words: `a mess|awful|bland|boring|dire|disappointed|disappointing|disgusting|do not like it|don't like it|dont like it|dull|forgettable|ghastly|grim|gross|hate it|hate this|horrible|lackluster|lacklustre|mediocre|meh|nasty|not for me|off putting|poor|rubbish|terrible|ugh|underwhelming|uninspiring|uninteresting|unpleasant|unremarkable|vile|yuck`,
    liking: -1,
  },
  {
    says: "memory",
    words: `back in|brings back|brings me back to|brings to mind|conjures|conjures up|evokes|i was back in|just like|like an old|like at my|like being in|like in my|like my|like sitting in|like standing in|like walking into|like walking through|like when|made me think of|makes me think of|memories of|memory of my|remind me of|reminds me|takes me back|takes me back to|took me back to|transports me to`,
  },

  // How long the finish is: read where a finish is spoken of.
  {
    says: "length",
    strength: 8,
    words: `a good long while|a good while|a long one|a long time|a long while|a mile long|a very long time|all evening|all night|big long|carries on|does not end|does not go away|does not leave|does not stop|doesn't go away|doesn't stop|drawn out|endless|endlessly|enduring|eternal|eternally|everlasting|extended|extends|extensive|for a long time|for a long while|for ages|for days|for ever|for hours|for minutes|for minutes on end|forever|hours long|infinite|interminable|keeps coming|keeps on|lang|lasting|lasting ages|length for days|lengthy|linger|lingering|long|long lasting|longlasting|marches on|minutes later|minutes long|never ending|never stops|neverending|persistent|prolonged|really long|refuses to leave|rolls on|runs and runs|runs on|stretched|stretches|stretches out|super long|tenacious|till tomorrow|time after time|to the horizon|trails on|unending|until tomorrow|very long|won't end|won't go away`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `all the way home|and goes on|and lasts|can still feel it|clings on|clings to|doesn't leave me|doesn't quit|go on and on|goes and goes|goes on|goes on and|goes on and on|goes on for|goes on for ages|goes on for ever|goes on forever|hang around|hanging about|hangs about|hangs on|hangs on for|hung around|i can still feel it|i can still taste it|into next week|is still with me|it is still there|it lasts|it remains|it's still there|just goes on|keeps going|keeps on going|keeps you company|last forever|last long|lasted|lasted ages|lasts a long time|lasts ages|lasts and|lasts and lasts|lasts through|lasts till|lasts to|lasts until|lasts very long|linger|lingered|lingered on|lingers|lingers on|long in the mouth|long time in the mouth|marathon|on and on|on for ages|outlasted|outlived|outlives|persists|quite a while|really lasts|refuses to leave|remains a long time|remains long|runs on and on|stay in mouth|stay long|stays|stays a long time|stays in the mouth|stays on the tongue|stays with me|stays with me till|stays with you|stays with you till|sticks around|still going|still here|still in my mouth|still on my tongue|still tasting it|still there|still there after|still with me|till morning|won't leave me`,
  },
  {
    says: "length",
    strength: 6.2,
    alone: true,
    words: `considerable length|decent length|good length|great length|impressive length|lots of length|lovely length|nice length|plenty of length|real length`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `lacking length|little in the way of length|no great length|not a lot of length|not much length|short on length`,
  },
  {
    says: "length",
    strength: 0,
    stance: "absent",
    alone: true,
    words: `finish is absent|finish is missing|finish is not there|finish is nowhere|finish isn't there|finish none|hardly a finish|no after taste|no aftertaste|no finish|no finish at all|no finish to speak of|no finish whatsoever|no length|no length at all|no real finish|not a finish|not any finish|nothing at the end|there is no finish|there's no finish|what finish|where's the finish|without finish|zero finish`,
  },
  {
    says: "length",
    strength: 6,
    alone: true,
    words: `goes on a fair while|goes on a while|goes on for a while|half long|lasts a good while|lasts a while|med|medium length|mid long|middle long|moderate length|ok length|okay length`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `already gone|and it is gone|and it's gone|it just disappears|it's done|nothing after|then it is gone|then it's gone`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `be tasting it|bides|bides wi me|bides with you|can still taste it|does not leave me|doesn't let you go|during minutes|goes on an age|in no hurry|keeps coming back|lasts an age|lasts minutes|long after i swallow|long after it's gone|long after the glass|long after you swallow|longer than a|longer than my|no end to it|outlasts|outstays|remains|rings on|still be tasting|still be tasting it|still taste it|still tasting|still there now|takes its time leaving|takes its time to leave|there for minutes|with no end|won't let go`,
  },
  { says: "length", strength: 6.2, stance: "more", words: `lengthier|longer|longer than|longest|more long` },
  {
    says: "length",
    strength: 6.2,
    words: `a fair while|a while|fairly long|for a while|lasts a while|lasts nicely|lasts well|longish|medium long|medium to long|moderately long|quite long|reasonably long`,
  },
  {
    says: "length",
    strength: 5,
    words: `average|average length|medium|medium length|medium sized|mid|mid length|middle length|middling|middling length|moderate|moderate length|neither long nor short|normal|not long not short|of medium length|ordinary|reasonable|standard length`,
  },
  {
    says: "length",
    strength: 4.2,
    stance: "less",
    words: `could be longer|less long|more length|not as long|not so long|not the longest|not the longest finish|quicker|shorter|shortest|should be longer`,
  },
  {
    says: "length",
    strength: 3.4,
    words: `fairly short|medium short|medium to short|on the short side|shortish`,
  },
  {
    says: "length",
    strength: 2,
    words: `a blink|a short one|abrupt|brief|brisk|clipped|collapses|cropped|cursory|curt|cut off|cut short|died quickly|dies|dies at once|dies away|dies fast|dies off|dies quickly|disappearing|disappears|disappears at once|disappears fast|disappears quickly|drops away|drops dead|drops off|drops off a cliff|ends abruptly|ends fast|ends quickly|ends suddenly|ends too soon|ephemeral|evaporates|faded|fades|fades away quickly|fades fast|fades out quickly|fades quickly|fades soon|falls away|falls off|falls off a cliff|fizzles|fizzles out|fleeting|gives up|goes fast|goes quickly|gone|in a blink|inexistent|is gone|is not long|is not very long|isn't long|isn't very long|isnt long|lacks length|leaves fast|leaves quickly|little length|little to speak of|momentary|no length|non existent|non existing|none to speak of|none too long|nonexistent|not a long|not existing|not lasting|not long|not much of a|not there|not too long|not very long|nothing to speak of|over before it began|over before it starts|perfunctory|peters out|poof|runs out|short|short lived|shortlived|snappy|stops|stops dead|stops short|tails off|too short|transient|truncated|vanishes|vanishes at once|vanishes fast|vanishes quickly|vanishing`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `and goodbye|and nothing|and stops|blink and it's gone|blink and you miss it|blink and you'll miss it|bye bye|dies in the throat|dies on the tongue|disappears before|drops off a cliff|falls off a cliff|gone|gone before you swallow|gone before you've swallowed|gone before you've swallowed it|gone in|gone in a flash|here and gone|isn't long either|it is away|it just stops|it's away|it's gone before|it's just gone|just gone|just stops|leaves at once|leaves fast|leaves quickly|no lasting|no staying power|not long either|nothing after that|nothing afterwards|nothing follows|nothing left|over before|runs away fast|says goodbye|short and sweet|short but sweet|simply stops|stops like a|stops there|then nothing|there and gone|there and then gone|there and then it isn't|vanishes before`,
  },
  { says: "seconds", words: `s|sec|second|seconds`, unit: 1 },
  { says: "seconds", words: `min|minute|minutes`, unit: 60 },

  // Between flavours.
  { says: "join", join: "and", words: `&|also|and|and also|and some|as well as|et|plus|und` },
  {
    says: "join",
    join: "with",
    words: `alongside|behind|beneath|followed by|next to|on top of|under|underneath|with`,
  },
  {
    says: "join",
    join: "or",
    words: `neither|nor|or|or could it be|or is it|or maybe|or perhaps|or possibly|or rather like|or was it`,
  },
  {
    says: "break",
    words: `although|because|but|except|however|if|instead i get|only that|so now|than anything|than expected|than i expected|than i like|than i remember|than i remembered|than i thought|than i would like|than i'd like|than it looks|than most|than usual|than you would think|than you'd think|though|unless|until|when|where|whereas|which|while|who|yet`,
  },
  {
    says: "start",
    words: `eventually|finally|first|he|i|i'd|i'm|i've|im|it|it's|its|ive|later|next|now|second|she|that is|that's|thats|there|there's|theres|they|we|you`,
  },
  {
    says: "glue",
    words: `a|about|about it|actually|again|ah|all|an|and all|another|any|as|as it were|at|at first|basically|behind it|being|big|bit|bits|black|bright|brown|by|cooked|couple|dark|dried|dry|dusty|er|erm|even|few|for|for it|for me|fresh|fresh baked|fresh cut|fresh made|fresh picked|fresh squeezed|freshly|freshly baked|freshly made|from|gold|golden|good|green|her|here and there|his|hm|hmm|home baked|home made|homemade|honestly|hot|how do you say|how we say|in|in here somewhere|in it|in the middle of it|in there|its|juicy|just|just baked|kind|kind of|let's say|light|like|literally|lovely|more|my|new|nice|note|o|of|of it|oh|ok|okay|old|on|on it|one could say|other|our|overly|own|particularly|piece|pure|quite|raw|real|really|red|ribbon|ripe|same|single|slice|slow cooked|so|soft|some|somewhere|sort|sort of|sticky|such|sweet|that|the|the lot|their|these|thick|thin|this|those|to|to begin with|to it|type|uh|um|under it|underneath it|up front and|very|warm|well|wet|white|whole|wild|with it|yeah|yellow|yes|you know|your`,
  },
  {
    says: "link",
    words: `a|again|all|almost|already|also|appears|are|at|be|became|become|been|being|bit|came|come|completely|entirely|feel|feeling|felt|first|get|goes|got|had|has|have|here|is|it|just|looks|makes|me|much|now|of|out|pretty|quite|rather|really|seem|seemed|seems|smells|still|tastes|that|the|there|though|through|to|totally|turned|turns|was|were|you`,
  },
  // How long, by a verb and what stands after it.
  { says: "length", strength: 2, words: `<ends> <fast> <with>` },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `<barely> <last> <toolong?>|<hardly> <closing>|doesn't have the legs|hasn't the legs|in and out|lasts no time|not a lot happening|not much happening|nothing much happening`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `<nono> <leave>|<staying> <inmouth> <dur>|<stilltaste> <ago>|endless|keeps giving|keeps on giving|long lasting`,
  },
  {
    says: "idiom",
    words: `<cask> finish|<rinse> <the> mouth|<rinse> <the> palate|<stays> away|<stays> hidden|<stays> in check|<stays> in the background|<stays> polite|<stays> put|<stays> quiet|<stays> shy|<stays> under control|<stays> well back|<stays> with it|acquired taste|after it has <been>|after it's <been>|bananas how|bottle won't last|burned my tongue|burnt my tongue|clinging to the glass|clings to the glass|coats the glass|cork broke|cork crumbled|cork fell|dry from|end product|for the garden|goes down <well>|going down <well>|hard to swallow|hot take|keep going back|kept going back|last me|leaves me cold|leaves me thinking|leaves me wanting|leaves the last|leaves the others|long legs|no fireworks|nothing to write home about|oily legs|once it's <been>|palate is shot|palate is tired|palate's shot|pulled the cork|rich for my blood|rich for the price|sealed with wax|slow legs|sore throat|sticks to the glass|swallow the price|swallowed my pride|sweet as a nut|taste for|tasted blind|tasted it blind|the end result|thick legs|throat is sore|too rich for|wax seal|wax top|went down <well>|when it's <been>|with a grain of salt|with the cork`,
  },
  {
    says: "length",
    strength: 8,
    words: `<ends> <slowly> <with>|what lingers <be>|what remains <be>|what stays <be>`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `away|away it goes|bows out|checks out|clears off|disappeared|disappears|done|drops away|ended|ends|exits|falls away|finished|fizzles out|gone|it goes|leaves|left|off|off it goes|off it pops|over|peters out|slips away|slips off|vanished|vanishes`,
    behind: `abruptly|almost at once|almost immediately|almost instantly|already|as soon as|at once|before i|before it|before you|by the time|double quick|early|fairly quickly|fast|immediately|in a blink|in a couple of seconds|in a flash|in a heartbeat|in a hurry|in a jiffy|in a moment|in a second|in a snap|in a trice|in a wink|in an instant|in no time|in seconds|instantly|just like that|like a lamp|like a light|like a shot|like a thief|like that|pretty fast|pretty quickly|quick|quickly|quite quickly|rather quickly|right away|sharpish|so fast|so quickly|so soon|straight away|straight off|suddenly|the minute|the moment|the second|too fast|too quickly|too soon|very fast|very quickly|without a goodbye|without a trace|without a word|without ceremony|without goodbye|without saying goodbye`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `carries on|clings on|echoed|echoes|goes|goes on|hangs about|hangs around|hangs on|hums on|hung around|keeps going|keeps on|lasted|lasts|lingered|lingers|persists|remains|rings on|runs|stayed|stays|sticks around|still be there|still going|still here|still tasting it|still there|taste it|tasting it|went on|with me|with you`,
    behind: `a minute later|ages after|all day|all evening|all night|all the way home|all through|an hour later|and lasts|and lingers|and on|and on and on|and stays|as long as|even now|five minutes later|for a good long while|for a long time|for a long while|for a week|for ages|for an age|for days|for donkey's years|for ever|for hours|for minutes|for the longest time|for weeks|for yonks|forever|half an hour later|half the evening|half the night|hours later|like a bad|like a bell|like a church bell|like a good|like a guest|like a sermon|like a song|like a vicar's|like an echo|like an in law|like mad|like nobody's business|long after|longer than|minutes after|minutes later|ten minutes later|the whole evening|the whole length of|the whole night|the whole of|the whole way home|till morning|till the cows come home|till tomorrow|until christmas|until morning|until the cows come home|until the morning|until tomorrow|yet`,
  },
  {
    says: "length",
    strength: 5,
    alone: true,
    words: `carries on|goes on|hangs about|hangs around|hangs on|keeps going|lasted|lasts|lingered|lingers|persists|remains|stayed|stays|sticks around`,
    behind: `a bit|a fair bit|a fair while|a little|a little while|a spell|a touch|a while|decently|for a bit|for a little while|for a spell|for a while|nicely|reasonably|well|well enough`,
  },
  {
    says: "length",
    strength: 2.5,
    alone: true,
    words: `hangs about|hangs around|lasted|lasts|lingered|lingers|persists|remains|stays|sticks around`,
    behind: `a few seconds|a heartbeat|a moment|a second|an instant|barely|briefly|but briefly|but not for long|but not long|for a few seconds|for a moment|for a second|for an instant|not for long|not long|only a moment|only briefly|only seconds`,
  },
  {
    says: "length",
    strength: 8,
    form: "beside",
    words: `ages|epic|hours|miles|minutes|slow|slowly|unhurried`,
  },
  {
    says: "length",
    strength: 2,
    form: "beside",
    words: `a flash|early|fast|hurried|in a hurry|quick|quickly|rapid|rushed|soon|sudden|swift`,
  },
  {
    says: "length",
    strength: 6.2,
    alone: true,
    words: `enough|fair|fine|pleasing|proper|respectable|satisfying|solid|some|surprising|useful`,
    behind: `length`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `amazing|bags of|enormous|extraordinary|huge|incredible|loads of|massive|remarkable|superb|tremendous`,
    behind: `length`,
  },
];

/** Words that say how a flavour is when they stand before one, and are an observation of their own elsewhere; with the degree they lend, or none. */
export const LEANING: Readonly<Record<string, number | null>> = {
  light: 2.8,
  thin: 2.5,
  soft: 2.8,
  delicate: 2.5,
  gentle: 2.5,
  heavy: 7.8,
  bold: 7.8,
  rich: null,
  full: 7.5,
  thick: 7.5,
  dense: 7.5,
  sharp: null,
  fresh: null,
  clean: null,
  bright: null,
  young: null,
  mature: null,
  round: null,
  rounded: null,
  lively: null,
  vibrant: null,
  simple: null,
  flat: null,
  tired: null,
  mellow: null,
  crisp: null,
  raw: null,
  polished: null,
  pure: 7.5,
  complex: null,
  balanced: null,
  elegant: null,
  warm: null,
  warming: null,
  hot: null,
  sticky: null,
  fiery: 7.5,
  deep: null,
  medium: 5,
  green: null,
  weak: 2.2,
  punchy: 7.5,
  robust: 7.5,
  open: null,
  rustic: null,
  subtle: 2.2,
  refined: null,
  layered: null,
  lush: null,
  luscious: null,
  burning: null,
  glowing: null,
  sweet: null,
  creamy: null,
  dusty: null,
  stale: null,
  smooth: null,
  silky: null,
  velvety: null,
  thinning: null,
  dry: null,
  sour: null,
  tart: null,
  bitter: null,
  damp: null,
  tangy: null,
  oily: null,
  decadent: null,
  juicy: null,
  toasty: null,
  toasted: null,
  burnt: null,
  wet: null,
  dried: null,
};

/** Words that take the flavour before them into themselves: "plum jam" is plum. */
export const TAILS = `pancake|pancakes|waffle|waffles|scones|ice lolly|lollipop|lolly|cakes|jam|jelly|peel|zest|skin|juice|syrup|flesh|cordial|compote|preserve|preserves|conserve|sherbet|sorbet|drop|drops|candy|candies|sweets|liqueur|pastille|gummy|gummies|chew|chews|gum|lozenge|puree|pulp|pith|rind|oil|sauce|essence|extract|leaf|leaves|seed|seeds|pod|pods|powder|biscuit|cookie|cake|tart|crumble|cobbler|pie|pastry|danish|turnover|strudel|muffin|pudding|fool|mousse|ice cream|icecream|cider|stone|stones|pit|pits|kernel|root|chutney|relish|glaze|frosting|icing|sponge|scone|slices|slice|salad|punch|infusion|nectar|shavings|bonbon|humbug|cheesecake|trifle|meringue`;
/** Tails that say something of their own as well. */
export const OWN_TAILS = `pie|strudel`;

/** Words of the vocabulary that are too common to be taken for a flavour unless something beside them says so. */
export const SHY = `nip|date|matches|books|paper|coin|blood|root|roots|sand|metal|pipe|study|loft|church|game|spirit|kick|layered|open|young|deep|sage|bay|mace|pier|shell|stone|tack|iron|steel|cave|farm|fudge|leek|grip|bite|bites|hug|sting|stings|penny|pennies|sheep|goat|sick|sock|socks|feet|candle|ink|fuel|glue|laundry|garden|plant|stem|hedge|reed|forest|twig|bark|timber|pencil|workshop|attic|museum|piano|violin|antique|library|coal|hearth|fireplace|beach|shore|harbour|harbor|dock|sea|ocean|coast|damp|cake|pie|polished|rough|sharp|simple|flat|closed|crisp|crisps|chips|bright|raw|linear|booze|beer|hospital|dentist|medicine|pharmacy|doctor's office|christmas|plastic|rope|glow|numbs|heat|burned|burnt|round|straightforward|straight forward|rugged|hive|nectar|bakery|brewery|petrol station|gas station|paint|pond|steam train|pool water|artificial|vodka|tequila|sausage|beef|chalk|glides|bar of soap|yoghurt|mineral water|baking|mash|drain|drains|balance|harmony|satin|velvet|gravy|lush|tired|shut down|shavings|varnish|lacquer|leaf|rye|chimney|fireside|smokehouse|chapel|cathedral|pew|wardrobe|crypt|mud|brick|concrete|clay|quay|quayside|seaside|coastline|coastal|crab|lobster|prawn|aftershave|shampoo|hospital ward|swimming pool|newspaper|horses|bookshop|bookshelf|bookcase|sprout|ivy|fern|hay bale|lawn|lawnmower|greenhouse|polytunnel|glasshouse|matchbox|cigarette|newsprint|rigging|tin can`;

/** What a word before a flavour makes of it: "dried" makes any fruit a dried one. Family of what it was, to what it is. */
export const TURNS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  dried: { fruit: "fruit.dried" },
  old: { wood: "wood.old" },
  dusty: { wood: "wood.old" },
  polished: { wood: "wood.old" },
  musty: { wood: "wood.old" },
  antique: { wood: "wood.old" },
  charred: { wood: "wood.toasted" },
  burnt: { wood: "wood.toasted" },
  toasted: { wood: "wood.toasted" },
  toasty: { wood: "wood.toasted" },
  roasted: { wood: "wood.toasted" },
};
