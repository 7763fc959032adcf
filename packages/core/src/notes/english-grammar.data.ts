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
    words: `trace of|ghost of|whisper of|suspicion of|breath of|speck of|flicker of|glimmer of|wisp of|merest hint of|faint hint of|slightest hint of|tiny bit of|wee bit of|tiniest bit of|memory of|shadow of|echo of|fleeting hint of|rumour of|rumor of|far off|crumb of|thimble of`,
  },
  {
    says: "degree",
    strength: 2.2,
    of: true,
    words: `drop of|small drop of|wee drop of|ghost note of|background note of|touch of the|bit of the|hint of the|puff of|hint of|touch of|suggestion of|bit of|dash of|pinch of|dab of|dusting of|kiss of|flick of|tinge of|shade of|sliver of|smidge of|smidgen of|smidgeon of|whiff of|little of|undertone of|undercurrent of|nuance of|sprinkle of|sprinkling of|scrape of|grating of|spot of|background of|tad of|glimpse of|lick of soft|hint|faint trace of|nod to|nod of|small amount of|not much of|not a lot of|only some|scrap of|slither of|dot of|dribble of|drizzle of|lightest|teaspoon of|flutter of|hints at|hinting at|tiny amount of|twinge of|smear of|lick o|brush of|veil of|film of|subtle notes of|soft notes of|light notes of|faint notes of|nip of|tait of|wee tait of|drap of|smirr of|smatter of|tiny touch of|fine thread of|filament of|filigree of|crumb of|lightest of|breeze of|soft edge of|tickle of|hum of|murmur of|gauze of|stain of|blush of|trickle of|splodge of|wink of|dusting|squirt of|prickle of|tingle of|curl of|plume of|curling of`,
  },
  {
    says: "degree",
    strength: 2.2,
    words: `a suggestion|a suspicion|a whisper|a trace|a dash|a pinch|an echo|a shadow|a breath|a ghost|a wisp|a flicker|the ghost of a|somewhat faint|sort of faint|slightest|faintest|smallest|nearly no|hardly a trace of|hardly a hint of|barely a hint of|barely a trace of|barely a whisper of|only a hint of|only a touch of|just a touch of|just a whisper of|just a hint of|just a suggestion of|just the ghost of|a soupcon of|soupcon of|a smattering of|smattering of|tiny little|little tiny|timidly|discreet|discreetly|feeble|feebly|thinly|in small amount|a small|some small|bit of a hint of|dilute|weak|reserved|polite|politely|low level|gentlest|softest|mildest|a spot of|a flash of|the odd|an occasional|occasional|fleetingly|slight|slightly|faint|faintly|subtle|subtly|mild|mildly|lightly|tiny|minor|vague|vaguely|restrained|muted|dim|dimly|distant|distantly|little|wee|a little|a wee|a bit|a tad|a touch|a little bit|a tiny bit|a wee bit|tad|bit|barely|hardly|scarcely|barely any|hardly any|scarcely any|barely there|hardly there|hardly a|not much|not a lot|not a great deal|not a lot of|only just|shy|fleeting|weakly|quiet|quietly|delicately|softly|gently|trace|touch|whisper|small|low|lower|faded|pale|just about|just perceptible|barely perceptible|barely detectable|background|understated|underneath it all|ever so slightly|ever so slight|ever so faint|hinted|scant|tame|modest|timid|un peu|little bit|the tiniest|the faintest|the slightest|the merest|a hair|a smidge|a smidgen|a trifle|a shade|mostly absent|next to no|almost no|very little|precious little|too little|poco|at a push|if you look for it|if you look|way down|way back|deep down|in the distance|from afar|just the one|just a little|not too much|just enough|a pinch|minute amount of|a nip|a lick`,
  },
  {
    says: "degree",
    strength: 1.4,
    back: true,
    words: `very faint|very slight|very subtle|very weak|very low|barely there at all|extremely faint|so faint|really faint|terribly faint`,
  },
  {
    says: "degree",
    strength: 2.2,
    back: true,
    words: `it's not strong|it is not strong|not strong|isn't strong|isn't loud|not loud|not very strong|not too strong|isn't overpowering|not overpowering|not overwhelming|not dominant|it isn't loud|it's not loud|it isn't strong|tiny but there|faint but there|there but faint|small but there|but barely|but only just|if you squint|if you go looking|if you look hard|if i look hard|if you wait|somewhere in the distance|a long way off|a long way back|miles away|in passing|for a moment|then it hides|nothing more|no more than that|no more than a hint|less than you'd think|none too strong|only slightly|scarcely|just barely|at a pinch|in the background|in background|behind it all|in the distance|far away|lurking|peeking through|peeks through|comes and goes|barely|only just|only a little|a little|a bit|a touch|slightly|faintly|just a touch|but faint|way in the back|if i dig|had to dig|have to dig|a hint|only faint|tucked away|on the edges|round the edges|around the edges|at the edges|in the corner|whispers|way off|faraway|hardly noticeable|almost hidden|hidden|hiding|flits past|drifts past|drifts by|flickers|and hardly|far behind|for a second|for an instant|then gone|if you concentrate|if i concentrate|if i try|when i look for it|if you give it time|at a stretch|by a whisker|barely perceptible|just perceptible|just about there|ever so faint|ever so slight|in the wings|on the horizon|in the shadows|at the margins|murmurs|not a ton|not loads|not heaps|not tons|not masses|not a lot|come and go|seems to come and go`,
  },
  {
    says: "degree",
    strength: 5,
    of: true,
    words: `hug of|squeeze of|spoon of|spoonful of|teaspoonful of|good bit of|fair bit of|nice bit of|decent bit of|lovely bit of|dose of|side of|slice of|piece of|splash of|twist of|thread of|some|note of|flavour of|flavor of|bit of a|certain|element of|layer of|touch more|fair whack of|dollop of|good dollop|knob of|wedge of|bite of|streak of|vein of|seam of|line of|strand of|current of|stripe of|scattering of|helping of|serving of|portion of|measure of|handful of|shade more|nice amount of|goodly amount of|right amount of|just enough|decent whack of|kick of|lash of`,
  },
  {
    says: "degree",
    strength: 5,
    words: `moderate|moderately|fairly|reasonably|quite|noticeable|noticeably|decent|middling|average|nicely|fair|reasonable|rather|pretty|sufficiently|somewhat|quite a|respectable`,
  },
  {
    says: "degree",
    strength: 5.6,
    words: `mostly|mainly|predominantly|primarily|clear|clearly|definite|definitely|distinct|distinctly|certainly|obvious|obviously|evident|evidently|good|solid|decidedly|proper|unmissable`,
  },
  {
    says: "degree",
    strength: 6.4,
    of: true,
    words: `hit of|burst of|rush of|mouthful of|shot of|slug of|waft of|slab of|a mouthful of|mouthfuls of|solid hit of|healthy dose of|generous helping of|good helping of|good slug of|good whack of|good measure of|surge of|stream of|ripple of|layers of|chunk of|hunk of|whoosh of|gust of`,
  },
  {
    says: "degree",
    strength: 7.8,
    of: true,
    words: `a bunch of|bunch of|quite a lot of|an awful lot of|awful lot of|a whole lot of|whole load of|big hit of|big old hit of|big dollop of|great big|absolutely full of|so full of|choc full of|chock full of|rammed with|heaving with|nowt but|nothing else but|only thing i get is|quite a bit of|all i get is|all i'm getting is|all im getting is|all i can taste is|all i can smell is|all i can find is|it's just all|overrun with|covered with|wall to wall|heaps and heaps of|load of|lot of|ton of|tonne of|heap of|plenty|bags of|oodles of|mass of|mountain of|bucket of|bucketful of|pile of|full of|packed with|crammed with|stuffed with|loaded with|bursting with|dripping with|drenched in|soaked in|steeped in|swimming in|covered in|coated in|filled with|brimming with|overflowing with|wave of|wall of|blast of|explosion of|bomb of|punch of|slap of|whack of|wallop of|fistful of|barrel load of|so much|so many|too much|too many|far too much|much|dominated by|awash with|awash in|reeks of|stinks of|screams of|nothing but|all about|heavy on|strong on|high on|long on|rich in|thick with|heavy with|laden with|an abundance of|abundance of|abundant|oozing|oozes|riot of|great deal of|whole lot of|lotta|lots and lots of|any amount of|no shortage of|no lack of|no end of|shed load of|shedload of|ocean of|sea of|flood of|torrent of|avalanche of|lashings of|glut of|overload of|overdose of|plethora of|all of the|a ton of|tons|loads|heaps|basket of|basketful of|boatload of|gobs of|truckload of|armful of|buckets|a lot|alot of|alot|bang of|more and more|all that|stacks of|hell of a lot of|very much the|very much|thump of|hammer of|fat slab of|it is all|it's all|its all|it was all|is all|was all|becomes all|everything is|everything was|big whack of|fat dollop of|great dollop of|big spoon of|big spoonful of|lorryload of|hatful of|bellyful of|pile up of|cascade of|river of|tide of|storm of|hurricane of|tsunami of|slabs of|great slabs of|great gobs of|sackful of|sack of|barrow of|barrowload of|cartload of|skipful of|good lashing of|layer upon layer of|nowt else but|everything tastes of|everything smells of|drowning in|smothered in|plastered in|caked in|dense with|alive with|rife with|ripe with|teeming with|crowded with|lit with|all over with|piled with|overflowing in|swamped by|swamped with|overrun by|overpowered by|overwhelmed by|driven by|led by|ruled by|saturated with|saturated in|infused with a lot of|choked with|clogged with|nothing more than|good deal of|a good deal of`,
  },
  {
    says: "degree",
    strength: 7.8,
    words: `a bit too much|a little too much|too much of the|seriously|hugely|all kinds of|thumping|screaming|thundering|big old|great big|hefty|monumental|colossal|rampant|abundant|ample|bags|lashings|richly|densely|thickly|insanely|unbelievably|remarkably|amazingly|particularly|especially|noticeably more|over the top|stupid|crazily|a bit too|a little too|slightly too|much too|a touch too|overly|nothing if not|strong|strongly|intense|intensely|heavily|powerful|powerfully|big|huge|massive|massively|enormous|great|loud|loudly|dominant|dominating|prominent|pronounced|bold bold|overwhelming|overwhelmingly|overpowering|overpoweringly|in your face|insistent|extreme|extremely|incredibly|insanely|hugely|seriously|super|mega|ultra|deeply|deep|really|very|absolutely|totally|utterly|properly|exceedingly|exceptionally|excessively|excessive|terribly|awfully|wildly|ridiculously|madly|hella|powerfully|so|thick|concentrated|unmistakable|unmistakably|ferocious|fierce|fiercely|brutal|brutally|violent|explosive|potent|high|too|all|wildly|vast|monstrous|giant|gigantic|bloody|stupidly|majorly|major|all the|plenty|full|full on|heady|pungent|striking|strikingly|vivid|vividly|piercing|pulsing|stonking|whopping|whacking|dripping|roaring|raging|blazing|molto|muy|intensive|super duper|lush with|chock full of|insane|serious|a very|hefty|robustly|unashamedly|unapologetically|proper big|more than a little|more than a bit|enough to|gey|fair reeking|pure dead|awfu|mighty|solidly|unrelenting|relentless|relentlessly|unapologetic|unmistakeable|unmistakeably|masses|oodles|eleven|staggering|staggeringly|shockingly|outrageously|frighteningly|obscenely|full throttle|full blown|full fat|turbo|straight up|crazy|sehr|tres|mucho|muito|veramente|strongest|biggest|v|mad`,
  },
  {
    says: "degree",
    strength: 7.8,
    back: true,
    words: `too present|very present|too strong|too loud|really strong|too dominant|very loud|a lot of it|quite a lot of it|turned up to eleven|everywhere you look|knocks you over|knocks me over|slaps you|smacks you|punches you|wallops you|kicks you|smothers|swamps|buries everything|eats everything|takes no prisoners|plenty|lots|loads|tons|heaps|by the bucket|everywhere|all over|all over it|in spades|for days|through and through|front and centre|front and center|jumps out|leaps out|jumps at you|hits hard|punches|dominates|dominate|takes over|took over|overwhelms|overpowers|overpowering|drowns|drowning|shouts|screams|is huge|is massive|is strong|is big|in abundance|galore|the whole way|all the way|all the way through|the whole time|from start to finish|takes up the whole|covers everything|fills the room|fills the glass|fills the mouth|on top of everything|by the bucket|by the bucketload|loads of it|lots of it|tons of it|plenty of it|heaps of it|a lot of it|masses of it|bomb|overload|explosion|very strong|very much|so much|a lot|too much|big time|for sure strong|won't let go|wont let go|does not quit|doesn't quit|impossible to miss|hard to miss|can't miss it|cant miss it|cannot miss it|can't be missed|is the star|runs the show|on steroids|turned up|to the max|is king|in charge|flooding|floods|pours out|out of the glass|never stops|like mad|like crazy|drenches|unmissable|loud and clear|to the hilt|bullies|all day long|all day|all night long|++|screaming at you|from top to bottom|to the rafters|coming out of its ears|you could cut with a knife|you can't get away from it|you cannot miss|hits like a truck|hits like a train|comes at you|thick and heavy|coming at you|in bucketloads|by the bucketful|by the shovel|by the shovelful|by the spadeful|and then some|and plenty of it|and lots of it|and loads of it|at full volume|on full|is dominant|is dominating|dominant|is overpowering|is overwhelming|is intense|very intense|is powerful|very powerful|that makes tears|brings tears|makes my eyes water|makes your eyes water|has taken over|runs riot|goes off like a bomb|rules|in front of everything|above everything|before anything else|first last and always|roars|bellows|booms|explodes|hums loudly|hits you hard|hits me hard|out the wazoo|up the wazoo|coming out of my ears|forward|driven|led|laden|centric|loads of them|lots of them|tons of them|all through it|all through|right through it`,
  },
  // "very smoky" and "very faint": pushes away what it stands before.
  {
    says: "amplify",
    words: `very|really|so|extremely|incredibly|terribly|awfully|just|super|only|real|such a|such|quite`,
  },

  // Not there.
  {
    says: "not",
    words: `could not smell|could not taste|could not detect|can not smell|can not taste|did not smell|did not taste|didn't smell|didn't taste|what's missing is|what is missing is|all that's missing is|the only thing missing is|only thing missing is|nary a|nary any|bugger all|sod all|in place of|gone without|for want of|not so much as a hint of|not so much as a|not so much as a whiff of|never a hint of|never a whiff of|never a trace of|not a drop of|not a puff of|not a dot of|not a breath of|not a spot of|can't find any|i can't find any|i cannot find any|cannot find any|cant find any|i cant find any|don't get any|don't find any|i don't find any|i don't get any|i don't see any|could not find any|can't taste any|can't smell any|i can't taste any|i can't smell any|cannot taste any|cannot smell any|i don't have any|i taste no|i smell no|none of that|can't say i get|can't say i find|can't say i taste|can't say i got|can't say there's|where's the|where is the|wheres the|where has the|where are the|gone is all the|hardly what you'd call|not especially any|stripped of|robbed of|clean of|clear of|cleared of|i don't find|i dont find|i don't get|i dont get|i don't feel|i dont feel|i do not find|i do not feel|i do not get|i don't taste|i do not taste|i don't smell|i do not smell|i cannot find|i can't find|i cant find|i don't have|there is not any|have not any|has not any|so was the|so were the|so is the|no|not|without|zero|nil|never|nothing|neither|nor|lacks|lack|lacking|devoid of|free of|free from|absence of|not any|isn't|isnt|wasn't|wasnt|aren't|arent|weren't|werent|ain't|aint|don't|dont|doesn't|doesnt|didn't|didnt|haven't|havent|hasn't|hasnt|hadn't|hadnt|could not find|can't taste|cant taste|cannot taste|can't smell|cant smell|cannot smell|couldn't taste|couldnt taste|couldn't smell|couldnt smell|could not get|can't|cant|cannot|couldn't|couldnt|could not|won't|wont|wouldn't|wouldnt|no sign of|no trace of|no hint of|no whiff of|no suggestion of|not a trace of|not a hint of|not a whiff of|not a bit of|not a scrap of|not a drop of|not a bit|not one bit|not a touch of|not a speck of|not the slightest|not the slightest bit|not the least bit|not at all|none of|none of the|none|nowhere near|miss the|missing the|missing any|absent of|sans|anything but|far from|failed to find|fail to find|searched in vain for|looked in vain for|gone is the|gone are the|gone the|no longer|no more|lost the|lost its|lost all|rather than|instead of|minus|take back the|don't stand by|no longer stand by|withdraw the|i take back the|take back what i said about|forget the|forget what i said about|ignore the|ignore what i said about|i was wrong about the|was wrong about the|wrong about the|scratch the|strike the|cross out the|delete the|dinnae|didnae|cannae|isnae|nae|void of|empty of|bereft of|shorn of|hardly what i would call`,
  },
  {
    says: "gone",
    words: `<who> <noted> <isnt>|don't think so|i don't think so|i do not think so|no i don't|no there isn't|no it isn't|i can't find any|i cannot find any|i cant find any|i don't find any|i don't get any|i don't see any|i can find none|naewhere|is naewhere|can't find any|cant find any|cannot find any|can't find any here|don't get any|don't find any|find none|there's none at all|none at all|not a wisp|not a trace of it|not a trace|not a hint of it|not a whiff of it|not a sign of it|none of it|i found none|i find none|got none|get none|gone|has gone|have gone|is gone|are gone|was gone|all gone|went away|goes away|gone away|gone now|gone completely|disappeared|disappears|disappear|has disappeared|have disappeared|vanished|vanishes|vanish|has vanished|died away|dies away|burned off|burnt off|blown off|blew off|evaporated|absent|is absent|missing|is missing|nowhere|is nowhere|not there|isn't there|isnt there|is not there|wasn't there|wasnt there|was not there|aren't there|not present|not anymore|not any more|isn't here|not here|no longer there|no longer|no more|none|none at all|not at all|not a bit|not one bit|not any|zero|nil|nope|not a bit of it|never turns up|never turned up|never shows up|never showed up|never appears|never appeared|never arrives|never comes|never came|never materialises|fails to appear|doesn't show|not found|cannot be found|can't be found|i don't find|i dont find|i don't get|i dont get|i don't feel|i dont feel|i do not find|i do not feel|i do not get|i don't taste|i do not taste|i don't smell|i do not smell|i cannot find|i can't find|i cant find|i don't have|doesn't exist|does not exist|has left|have left|left the building|packed up and left|slipped away|fled|melted away|melts away|ebbed away|ran away|cannot i find|escapes me|is lost|got lost|no trace|no sign|no sign of it|no trace of it|can't find it|cant find it|cannot find it|couldn't find it|lost now|clears|cleared|has cleared|away`,
  },
  {
    says: "gone",
    retracts: true,
    words: `i wrote was wrong|i wrote down was wrong|i noted was wrong|i noted down was wrong|noted was wrong|noted before was wrong|noted earlier was wrong|i mentioned was wrong|i said was wrong|i had was wrong|i put was wrong|i put down was wrong|i found was wrong|i thought i had was wrong|i noted is wrong|i wrote is wrong|was wrong|is wrong|was a mistake|were wrong|was my mistake|was an error|was my imagination|was imaginary|was never there|never was|never was there|was not real|i imagined|was false|was nonsense|was rubbish|i take it back|i take that back|scrap that one`,
  },
  {
    says: "less",
    words: `not as|not so|not that|not quite as|not nearly as|nowhere near as|not very|not too|not overly|not terribly|not particularly|not especially|not hugely|not exactly|not quite|not all that|isn't as|isnt as|isn't that|isnt that|isn't very|isn't too|isnt very|isnt too|isn't so|isnt so|wasn't as|wasnt as|wasn't very|wasn't too|wasn't that|not half as|doesn't have as much|doesn't have the same|not as much|not so much|not enough|never too|never very|too little|less|lesser|fewer|much less|far less|a lot less|way less|not the same|could do with more|could use more|need more|want more|would like more|i'd like more|wish there was more|wish it had more|short on|short of|light on|shy on|low on|low in|a little less|a bit less|slightly less|toned down|tones down|tamed|losing|loses some|loses its|loses the|lost some|softens the|calms the|tames the|less and less|minder|not more|no more than|under|softer|fainter|quieter|reduced|milder|gentler|lighter on|isn't quite as|subdues|mutes|dulls|dampens|hides|masks|isn't half as|aren't as`,
  },
  {
    says: "lessened",
    words: `faded|fades|fading|has faded|have faded|fades away|faded away|fades a bit|faded a bit|died down|dies down|dying down|settled down|settles down|calmed down|calms down|calmer|softened|softens|weaker|weaker now|fainter|quieter|quieter now|toned down|less|less now|less so|less pronounced|less obvious|lessened|reduced|subdued|recedes|receded|receding|retreats|retreated|steps back|stepped back|drops back|dropped off|drops off|tails off|tailed off|dims|dimmed|mellowed|down a notch|down|is down|shrinks|shrunk|wanes|waning|waned|subsides|subsided|ebbs|ebbing|backs off|backed off|drops away|falls away|almost gone|nearly gone|mostly gone|half gone|all but gone|pulled back|pulls back|eases|eased|diminished|diminishes|lighter now|softer now|softer|gentler|gentler now|not as strong|not so strong|not as strong now|less strong|less than before|not as much|not as much as`,
  },
  {
    says: "more",
    words: `more|much more|far more|a lot more|way more|lots more|even more|a bit more|a little more|slightly more|extra|bigger|stronger|heavier on|stronger on|louder|greater|increased|growing|grows more|added|increasingly|adds|more intense|more pronounced|heavier|double the|twice the|twice as much|turns up the|amplifies|heightens|boosts|deeper`,
  },
  {
    says: "increased",
    words: `is stronger|stronger|stronger now|has grown|grew|grows|growing|increased|increases|increasing|more now|louder now|louder|bigger|bigger now|builds|building|built|came up|come up|rises|rising|up a notch|more pronounced|more obvious|more intense|more prominent|comes forward|came forward|steps forward|stepped forward|intensifies|intensified|deepens|deepened|gets stronger|got stronger|gets bigger|swells|blooms|ramps up|more than before|picks up|wakes up`,
  },
  { says: "as-much", words: `as much|as|just as|equally|same|the same|similarly` },
  {
    says: "unsure",
    words: `maybe|perhaps|possibly|might|may be|can it be|could|i thought|think|i guess|i suppose|i'd say|id say|i would say|i reckon|i believe|probably|presumably|seems|seems like|seem to|appears|sort of|kind of|kinda|sorta|something like|not sure|not so sure|i'm not sure|im not sure|i am not sure|not certain|unsure|don't know if|dont know if|don't know|dont know|do not know|can't decide|cant decide|can't tell if|cant tell if|can't tell|am i getting|either|i want to say|want to say|if i had to guess|if i had to bet|if pushed|at a guess|arguably|conceivably|potentially|i imagine|hard to say|hard to tell|hard to be sure|who knows|wonder if|i wonder|wondering if|something|somewhat like|ish|almost|nearly|borderline|verging on|approaching|bordering on|suspect|swear|don't hold me to it|dont hold me to it|question mark|may have|would that be|dare i say|or so|or similar|or the like|sometimes|not entirely sure|i fancy|fancy i|not convinced|unconvinced|not persuaded|not sold on|have my doubts|doubtful|debatable|questionable|not entirely convinced|wouldn't rule out|can't rule out|cannot rule out|couldn't rule out|would not rule out`,
  },
  // "don't think there's any smoke": a hedge under "not" says no.
  {
    says: "not",
    over: true,
    words: `<who> not <say>|<would> <say>|<nope> <think>|<nope> <think> that`,
  },
  {
    says: "not",
    words: `don't get any|don't taste|don't smell|do not taste|do not smell|not smelling|is not any|are not any|doesn't taste of|does not taste of|doesn't smell of|does not smell of`,
  },
  // Looks like a "not" and is none.
  {
    says: "there",
    words: `wasn't there before|not there before|i hadn't seen|hadn't noticed|i missed before|that i missed|which i missed|that i hadn't|i had missed|that wasn't there|i didn't get before|i did not get before|didn't get before|i didn't notice before|didn't notice before|hasn't gone|has not gone|haven't gone|hasnt gone|not gone|not gone away|hasn't left|hasn't faded|doesn't fade|still there|no doubt|without doubt|without a doubt|no question|without question|no mistaking|no mistake|no denying|can't deny|cant deny|cannot deny|no hiding|no escaping|no escape from|no getting away from|no getting past|no avoiding|can't get past|cant get past|cannot get past|can't get over|cant get over|can't get away from|cannot get away from|can't escape|cannot escape|can't ignore|cannot ignore|can't shake|cannot shake|can't hide|cant hide|cannot hide|can't miss|cant miss|cannot miss|couldn't miss|could not miss|impossible to ignore|hard to ignore|doesn't hide|does not hide|not shy with|not shy about|isn't shy with|isn't shy about|not hiding|can't stop tasting|can't stop smelling|can't help tasting|won't go away|wont go away|doesn't go away|does not go away|not going away|refuses to leave|never lets go|doesn't let up|unable to get past|can't see past|cannot see past|won't shut up about|will not shut up about|wont shut up about|can't stop talking about`,
    strength: 7,
  },
  {
    says: "there",
    words: `not only|not just|not merely|not simply|not solely|not to mention|not forgetting|not without|never without|not without its|not without some|not dissimilar to|not far from|not far off|not lacking|doesn't lack|does not lack|not short of|isn't short of|not devoid of|not free of|if not|no less|no wonder|not surprisingly|unsurprisingly|not unpleasant|not unpleasantly|not a bad|not unexpected|can't complain|don't miss|dont miss|do not miss|never mind|doesn't mask|does not mask|doesn't cover|does not cover|don't mind|dont mind|do not mind|i don't mind|not quite hiding|not too shabby|not wrong`,
  },

  // Said, and taken back.
  {
    says: "correct",
    words: `no|i mean|i meant|no wait|wait no|oh wait|no actually|no no|no hang on|hang on|hold on|no sorry|sorry|sorry no|scratch that|strike that|scrap that|correction|i correct|correct that|make that|or rather|rather more like|no rather|no it's|no its|no it is|no that's|no thats|no that is|no more like|no more of a|no make that|actually no|actually not|no not|no i think|no i'd say|no maybe|no perhaps|no definitely|no its more|no it's more|no that's wrong|that's wrong|thats wrong|that is wrong|that's not right|thats not right|not right|no tell a lie|tell a lie|i tell a lie|let me rephrase|let me correct|my mistake|i take that back|take that back|i change my mind|changed my mind|on second thought|second thoughts|on reflection|thinking about it|i stand corrected|oops|whoops|excuse me|pardon|not that|erm no|um no|uh no|hmm no|er no|oh no|ah no|well no|nah|nope|wrong|forget that|delete that|no i lie|i lie|no i tell a lie|instead|better said|better to say|i should say|should i say|i would rather say|no it is more|wait|actually that's|actually thats`,
  },
  {
    says: "said-before",
    words: `delete|scrap|scratch|strike out|changed my mind about|change my mind about|changed my mind on|change my mind on|crossed out|cross that out|first i said|i first wrote|i wanted to write|i want to take back|i thought was|what i called|thought it was|i thought it was|at first i thought|i first thought|was going to say|nearly said|almost said|nearly wrote|almost wrote|i mistook|mistook|what i took for|took it for|where i had|where i wrote|where i noted|where i said|before i had|earlier i had|earlier i said|earlier i wrote|last time i had|last time i said|first time i said|first time i wrote|previously`,
  },
  {
    says: "said-maybe",
    words: `i called it|i first said|i had down|i had noted|i had written|i noted|i put|i put down|i said|i wrote|i'd noted|i'd put|i'd written|i've put|i've written`,
  },

  // Of another glass, or of no glass.
  {
    says: "than",
    words: `than|compared to|compared with|in comparison to|in comparison with|next to|versus|vs|beside|unlike|against|like the|as the|as in|relative to|opposed to|as opposed to|from the`,
  },
  {
    says: "other",
    words: `the <dram> before <it?>|the <dram> before that|the <dram> we had|the <dram> we had before|the other <dram>|the previous <dram>|the last <dram>|my last <dram>|the <dram> next to <it>|the <dram> on the left|the <dram> on the right|the first|the second|the third|the fourth|the fifth|the sixth|the next|the other's|the last one's|the others'|the other glass's|its neighbour|the previous glass's|that glass|that last one|the one we had|the one we had before|the one earlier|the earlier|earlier one|the far one|the one in the middle|the middle one|the two others|the other two|all the others|every other glass|most of the others|the bourbon one|the peated one|the last one|last one|the one before|the other one|the other|the others|the other glass|other glass|the previous|the previous one|previous one|previous glass|the previous glass|the first one|the first glass|first glass|the second glass|the third glass|the fourth glass|the second one|the third one|the fourth one|that one|the next one|next glass|its neighbour|its neighbor|the one on the left|the one on the right|the left one|the right one|the left hand one|the right hand one|the last glass|last glass|the last|the others here|the control|the bottle at home|the standard|the standard one|the usual|the sister glass|the earlier one|the earlier glass|its sister|its brother|the one beside it|the glass before|the glass next to it|the two before|the one i had before|the one before it|yesterday's|the one yesterday|the one from yesterday|the reference`,
  },
  {
    says: "this",
    words: `this is|this was|this has|this one is|this one has|this one's|here it is|here it's|this one|this glass|here|this|mine|this time|this sample|this whiskey|this whisky|this dram|in here|now here|whereas this`,
  },
  {
    says: "aside",
    words: `<somebody> <doing>|that was the|that'll be the|<who> expect|<who> expected|<who> thought it would be|<who> thought it'd be|<who> thought it was going to be|<who> was thinking of|thinking it would be|the <source> <says>|if <who> <like>|people who <like>|those who <like>|anyone who <like>|who <like>|made from|a mash of|cleansed <the> palate with|cleanse <the> palate|ignore any|ignore anything|i blame|pour it on|pour it over|if i say|couldn't tell you about|can't speak for the|don't ask me about|pay no mind to|i've had a|i wish i could|everyone else|not everyone|recipe for|kept on about|goes on about|no good with|good in a|talk about|i'm told|serve this with|lovely with|perfect with|good with|nice with|with a square of|ideal with|crying out for|begs for|can't drink|don't drink|never drink|i can't eat|i don't eat|i never eat|mistake for|mistaken for|mistake it for|pass for|confused with|confuse with|used to work in|used to work at|worked in|i worked at|my first job|gave up|giving up|before this we had|before that we had|before this i had|just had a|i'd just had|i've just had|we've just had|we'd just had|on a diet of|brush my teeth|brushed my teeth with|shopping for|planted|i grow|we grow|he grows|she grows|bake a|baking a|keeps a|nicknamed|the label|on the label|photo of|picture of|a painting of|song about|poem about|made a|made some|baked a|baked some|cooked a|cooked some|frying|fried some|roasting|was baking|is baking|eating|nibbled|snacking on|i chewed|after the curry|washed down with|had a plate of|we'd had|we had had|i'd had|i'd just had|had just had|smells from the kitchen|smell of dinner|according to|everybody says|everybody is saying|someone says|somebody says|the others say|the others said|the others got|the others get|the notes say|people get|which the others are finding|i was told|we were told|told there was|told it has|i had read|i read|someone lit|somebody lit|next door is having|having a barbecue|expected|expecting|hoped for|hoping for|i hoped|wished for|wish for|looking for|looked for|waiting for|would go well with|goes with|goes well with|go with|goes nicely with|would go nicely with|great with|pair with|pairs well with|would pair well with|pair it with|serve with|serve it with|served with|drink it with|drink this with|drink with|have it with|have this with|have with|eat with|with a plate of|with a slice of|with a piece of|with a bowl of|we ate|i ate|i had eaten|just ate|passed round|passed around|reaching for|reaches for|nibbling|bring out the|someone brought|somebody brought|is cooking|was cooking|next door is cooking|wearing|promises|promised|says on the label|supposed to have|supposed to be|meant to be|meant to have|they say|people say|someone said|somebody said|they get|others say|others get|others got|others found|keeps going on about|talking about|talked about|arguing about|i'd love|i would love|i'd have liked|would have liked|would be nice|if only|wish it had|wish there was|wish there were|ought to have|should have|should be|usually|normally|allergic to|i like my|who likes|lovers|fans|fans of|rinsed|cleaned with|used to smoke|smoke alarm|smoking outside|smoke break|smoked a|aged in|matured in|finished in|married in|came from a|from a cask|cask of|bottled from|distilled from|called|named|by the name of|known as|drove past|bought|buys|poured by|she brought|he brought|i brought|like to drink|smoking a|smoking his|smoking her|was smoking|is smoking|were smoking|are smoking|lit a|lights a|lit the|peeled|peeling|the room smelled of|the room smells of|room smelled of|room smells of|room stinks of|place smells of|place smelled of|hands smell of|fingers smell of|hands smelled of|hair smells of|clothes smell of|coat smells of dog|smell from next door|still full of|i'm full of|had too much|i'd eaten|we'd eaten|he'd eaten|she'd eaten|having eaten|someone's cooking|somebody's cooking|brought along|brought some|brought a|brought her|brought his|brought over|brought round|handed round|handed around|handing round|offered me|offered us|laid out|put out some|set out some|in my other hand|i have a cold and|burning a scented|a scented candle|lighting a|we lit|i lit|he lit|she lit|dad lit|they lit|had lit|been smoking|we cooked|i cooked|he cooked|she cooked|i baked|we baked|she baked|he baked|i spilled|i spilt|he spilled|she spilled|spilled the|spilt the|fed the|feeding the|dropped my|dropped the|picked some|picking the|i picked|we picked|growing up we|planting|weeding the|mowing the|i'd mown|watering the|painted the|painting the|varnishing the|varnished the|polishing the|waxed the|waxing the|sanding the|sanded the|repairing the|mended the|gave us|gave me|a jar of her|a jar of his|told us|told me|tells us|tells me|telling us|telling me|going on about|went on about|banging on about|raving about|raved about|kept saying|braced for|bracing for|steeled for|prepared for|geared up for|hunting for|searching for|searched for|thought there'd be|thought there would be|thought i'd get|thought i would get|assumed|longing for|craving|in the mood for|could murder a|i'd kill for|would kill for|would love some|would love a|i prefer|i'd prefer|i tend to|fond of|partial to|love a good|love a bit of|can't abide|can't bear|not keen on|sick of|fed up with|used to hate|used to love|grew up on|raised on|brought up on|apparently there's|supposedly|allegedly|rumoured to|rumored to|reputed to|famous for|known for|advertised as|described as|sold as|the blurb|reviews say|reviews mention|the website says|the bottle says|bottle says|the leaflet|meant to taste|meant to smell|supposed to taste|supposed to smell|told to expect|warned of|warned me about|warned us about|warned about|asked for|asking for|ordered a|ordered some|went out for|go out for|popped out for|nipped out for|room was full of|room full of|air was thick with|house was full of|air was full of|place was full of|kitchen was full of`,
  },
  {
    says: "reports",
    words: `says|said|gets|got|found|finds|reckons|reckoned|thinks|thought|swears|swore|insists|insisted|claims|claimed|whispered|whispers|mentions|mentioned|calls it|called it|shouted|shouts|muttered|mutters|is saying|was saying|are saying|were saying|keeps saying|kept saying|wrote|writes|suggested|suggests|smelled|tasted|argues|bets|noted`,
  },
  {
    says: "aside",
    back: true,
    words: `according to|crossed it out|scratched it out|rubbed it out|talking|floating|drifted in|all evening|got in the way|gets in the way|coming in|through the window|on the table|on the stove|in the oven|on the hob|this morning|for lunch|for breakfast|for dinner|for supper|for pudding|before i came|earlier today|before dinner|at lunch|at dinner|was better than this|in the next room|is next door|next door is|from the kitchen|in the kitchen|from outside|was cooking|is cooking|were cooking|before we started|before we began|in the ashtray|at the bar|in the bar|on the sofa|on the rug|in the grate|on the wall|in the corner of the room|in the room|down the road|down the street|over the road|in the garden|in the hall|on the radio|on the telly|in my hand|in my pocket|on my shirt|on my hands|on my fingers|on her fingers|on his fingers|on the air|in the air`,
  },
  {
    says: "aside",
    words: `dark as|pale as|black as|brown as|yellow as|red as|amber as|the look of|colored like|coloured like|to look at|legs|tinted|the shade of|golden as|shines like|glows like|colour|color|colour of|color of|coloured|colored|looks|in the glass it is|appearance|to the eye|shade is`,
    look: true,
  },

  // Where in the mouth. "on the nose" may stand after; "nose" heads what follows.
  // A part named only to compare with it.
  {
    says: "idiom",
    words: `it ends up|up in smoke|nice as pie|baker's dozen|rose tinted|and nothing else|and nothing more|as it goes|stay the same|stayed the same|stays late|stayed late|stayed up|stayed in|stayed for|stay for|finishes second|finishes third|finish first|finish last|the tail of a|tail of a|stays in the glass|in the barrel|in the cask|out of the cask|burns off|left in the barrel|in flower|he smoked|i smoked|we smoked|she smoked|i toasted|we toasted|burnt the|burned the|burned down|burnt down|burns the house|the light goes|the light is|the light was|evening light|morning light|last light|first light|light falls|light fades|sun light|low light|rose garden path|want a cigarette|like a cigarette|need a cigarette|stone dead|stone deaf|heart of stone|out to grass|out to dry|hung out to dry|high tea|for all the tea|tea room|tearoom|coffee morning|coffee date|bread bin|bread knife|honey bee|toffee nosed|toffee-nosed|sugar mouse|salt cellar|pepper pot|pepper mill|olive branch|nutcase|nut job|tough cookie|top banana|second banana|banana skin to|plum in the mouth|plum in his mouth|plum in her mouth|gooseberry between|playing gooseberry|play gooseberry|felt like a lemon|feel like a lemon|sweet shop owner|grapes of wrath|cool as a cucumber|carrot and stick|dangle a carrot|turnip of a|hot meal|hot bath|hot shower|hot drink|hot food|hot oven|warm bath|warm words|warm heart|dry land|dry ground|dry mouth in the morning|dry stone|rough cut|rough hands|rough sleep|soft landing|soft hands|soft pillow|soft rain|soft lighting|sharp corner|sharp bend|heavy book|heavy boots|heavy metal|light sleeper|light rain|light jacket|light reading|light entertainment|rich tapestry|deep sleep|deep breath|deep end|deep water|deep pockets|bright side|bright spark|bright idea|bright morning|bright light|bright orange|young couple|mature adults|simple soul|simple food|fresh coffee pot|fresh snow|flat land|closed book|open book|open sea|open water|open flame|open mic|polished shoes|polished up|delicate china|tired feet|tired legs|tired old|lively chat|lively evening|never one for the|not one for the|not usually one for|never been one for|the peaty stuff|after the rye|or so they say|for something so|of all things|like the nose promised|eases into|softens into|mellows into|becomes more of|can't say no|as a rule|odds and ends|loose ends|ends of the earth|all ends|make ends meet|noise outside|background noise|makes a noise|knows what|knows how|knows best|knows that|knows his|knows her|knows where|knows why|after tea|after it has|after it had|after i|after we|after he|after she|after my|after his|after so|finish line|to a finish|i never finish|did not finish|didn't finish|never finished|cleared my throat|lump in my throat|opens|door shut|after the rye|young wine|sunday tea|cup of tea later|don't love|i don't love|dont love|no more so|my nose is blocked|bad nose|no nose for|nose around|nosey|be all over it|hot whiskey|hot whisky|jacket potato|hot toddy made|oak like an overcoat x|alcohol free|than on the nose|than on the palate|than the nose suggested|than the nose suggests|as on the nose|than it smells|than it smelled|than it tastes|than it smelt|as it smells|same as nose|echoes the nose|follows the nose|mirrors the nose|my nose is|nose is blocked|blocked nose|stuffy nose|runny nose|nose is running|turn up my nose|turned up my nose|under my nose|under your nose|hold your nose|to my taste|good taste|bad taste|acquired taste|to my palate|cleanse my palate|palate cleanser|reset my palate|reset the palate|my palate is|tired palate|finish the glass|finish my glass|finish my|finish the bottle|finish off|finish up|finished my|to finish the|to finish this|i finish|word of mouth|mouth to feed|tip of my tongue|weekend|after all|after some time|after a few minutes|after ten minutes|after five minutes|after a bit|after a drop of water|looks after|soon after|sip of water|drop of water|bit of water|touch of water|dash of water|no water|without water|no ice|smell a thing|smell anything|taste a thing|taste anything|smell nothing|smell properly|smell the room|my mouth wasn't|my mouth was not|mouth watering|mouthwatering|foul mouth|big mouth|mouth to mouth|tongue in cheek|tongue twister|tongue tied|tip of the tongue|mother tongue|taste for|taste in music|taste in men|good nose for|nose for trouble|nose to the grindstone|nose out of joint|follow my nose|followed my nose|followed your nose|nose job|brown nose|powder my nose|nose bleed|nosebleed|taste of home|taste test|taste panel|taste of my own|aftertaste of victory|at the end of my|the end of my|end of the oak table|end of the garden|last swallow of|swallow my pride|swallow the pill|hard to swallow|swallows on the|a swallow flew|departure lounge|fire exit|exit sign|exit poll|sign off on|goodbye to|said goodbye|say goodbye|saying goodbye|waved goodbye|waving goodbye|close to|close by|close enough|so close|too close|very close|close call|close up|close the|close run|glass after glass|sip after sip|cat's tail|tail wagging|tail between|wagging its tail|tail of the queue|heads or tails`,
  },

  // A flavour's word that is none here.
  {
    says: "idiom",
    words: `cherry on the cake|cherry on top|icing on the cake|frosting on the cake|piece of cake|takes the cake|takes the biscuit|took the biscuit|bitter about|percent alcohol|apple of my eye|bad apple|rotten apple|go bananas|went bananas|going bananas|sweet of you|sweet of him|sweet of her|sweet of them|sweet spot|sweet tooth|sweet dreams|home sweet home|sweet talk|sweetheart|my sweet|how sweet of|hot day|hot night|hot summer|hot evening|hot weather|hot room|hot in here|hot outside|hot summer's day|hot afternoon|hot off the|hot topic|hot stuff|hot under the collar|hot potato|hot water|hot tub|too hot today|so hot today|warm day|warm night|warm evening|warm room|warm weather|warm my hands|warm the glass|warm it up|warm it|warming the glass|warming up|warm up|warm welcome|warm hand|warm outside|warm in here|warm kitchen|warm tonight|light of day|in this light|in the light|light the fire|light a|bring to light|light up|light in here|candle light|candlelight|daylight|moonlight|light bulb|lights|light switch|light touch|light work|light pour|light lunch|light dinner|light supper|in light of|green light|heavy hand|heavy cold|heavy pour|heavy going|heavy rain|heavy heart|heavy day|heavy traffic|full pour|full marks|full stop|full day|full time|full disclosure|full house|full measure|full attention|full circle|full credit|full size|full strength|full proof|full year|full week|full confidence|in full|full flight|glass full|half full|full belly|full stomach|i'm full|im full|i am full|too full|medium pour|happy medium|medium rare|dry sense of humour|dry sense of humor|dry wit|dry january|dry run|dry spell|dry comment|dry day|dry weather|dry summer|high and dry|dry clean|dry eye|run dry|ran dry|bottle is dry|rich history|rich list|get rich|if i were rich|if i was rich|rich coming from|that's rich|fresh pour|fresh start|fresh air|fresh water|fresh out of|fresh from|fresh mind|fresh look|fresh palate|fresh sample|fresh sheet|clean water|clean cloth|clean slate|clean sheet|clean up|clean bill|come clean|glass was clean|glass is clean|round of|round two|round one|round three|second round|first round|next round|another round|my round|this round|all round|round here|round my|round his|round and round|gather round|time round|second time round|way round|come round|goes round|round up|round off|rounds it off|rounded off|turned round|walk round|round trip|sharp contrast|sharp knife|sharp intake|eight sharp|look sharp|sharp tongue|sharp mind|sharp as a tack|sharp suit|soft spot|soft drink|soft spoken|soft music|soft touch|rough day|rough night|rough week|rough idea|rough guess|roughly|rough guide|rough patch|rough time|young ones|when i was young|young at heart|young son|young daughter|young couple|opened the bottle|opened it|opened the|opened a|window open|door open|open mind|open for|open question|open about|open since|been open|open air|kept open|eyes open|left open|an open|wide open|open house|open kitchen|flat out|flat share|my flat|the flat|in the flat|a flat tyre|flat tire|flat cap|flat battery|flat pack|simple as that|simple enough|simple question|simple task|keep it simple|simple life|tired today|i'm tired|im tired|bit tired|was tired|feel tired|feeling tired|tired evening|sick of|tired of|got tired|off sick|call in sick|feel sick|sick day|mature student|bold move|bold claim|bold choice|bold statement|bold enough|be bold|in bold|eyes closed|closed door|closed distillery|shop was closed|been closed|closed down|mellow evening|mellow music|feeling mellow|its a date|blind date|out of date|up to date|to date|what date|date night|date back|dating|date of|release date|due date|bottling date|save the date|date stamp|a toast|raise a toast|toast the|toasted the|mint condition|nuts about|go nuts|goes nuts|went nuts|drive me nuts|am nuts|i'm nuts|is nuts|nuts and bolts|in a nutshell|in a nut shell|hard nut to crack|tough nut|salt of the earth|pinch of salt|grain of salt|worth its salt|worth his salt|salt in the wound|on earth|what on earth|how on earth|down to earth|cost the earth|move the earth|the earth moved|heaven and earth|rose up|rises|smoke rose|i rose|sage advice|sage words|cut the mustard|keen as mustard|spice of life|spice things up|sugarcoat|sugar rush|sugar daddy|cream of the crop|cream rises|butter me up|butter wouldn't melt|butter fingers|bread and butter issue|bread winner|breadwinner|bread maker|daily bread|big cheese|say cheese|cheesy music|hard cheese|smoke and mirrors|where there's smoke|no smoke without fire|holy smoke|go up in smoke|egg on my face|good egg|bring home the bacon|save my bacon|small beer|gravy train|easy peasy lemon squeezy|buy a lemon|lemon of a|grape vine|grapevine|plum job|plum role|plum position|peach of a|peachy keen|just peachy|hi honey|my honey|honey bunch|thanks honey|honeymoon|honey trap|honeypot trap|sugar and spice|hay fever|make hay|hit the hay|haywire|needle in a haystack|last straw|short straw|straw poll|draw straws|barn door|barn dance|grass roots|grass is greener|keep off the grass|snake in the grass|new leaf|leaf through|take a leaf|green with envy|green fingers|green thumb|village green|green party|green with|bowling green|going green|green label|my cup of tea|not my cup of tea|cuppa|tea time|teatime|tea and biscuits|after tea|make tea|made tea|spill the tea|tea towel|coffee table|coffee cup|coffee this morning|morning coffee|after coffee|over coffee|wake up and smell the coffee|have coffee|had coffee|too much coffee|leather bound|hell for leather|leather sofa in|saddle up|back in the saddle|high horse|horses for courses|hold your horses|booked|notebook|on paper|piece of paper|paper cup|paper plate|paper bag|no match|doesn't match|does not match|didn't match|tennis match|matched|fired|under fire|rubber stamp|burn the candle|burnt out|burned out|burning question|burn out|sun burn|burn calories|burns a hole|burnt my|burned my|got burnt|heat wave|heatwave|the heat today|heat outside|heat of the day|heat of the moment|in the heat|heat was on|dead heat|turn up the heat|feel the heat|first bite|bite to eat|bite my tongue|bite the bullet|bug bite|get a kick out of|kick out of|kick off|kick start|kick back|kick in|sting in the tail|warm and fuzzy|cold feet|sock it|knock your socks off|knocked my socks off|socks off|smooth sailing|smooth talker|smooth operator|smooth things|get a grip|get to grips|lose my grip|in the grip|grip the glass|thin ice|thin air|thick and thin|thin end of the wedge|thick skin|thick as thieves|thick fog|a bit thick|in the thick of|nobody|somebody|everybody|anybody|holy spirit|team spirit|spirits|spirit level|in the spirit|the spirit of|spirit animal|kindred spirit|penny drops|penny dropped|pretty penny|penny for your|spend a penny|coin a phrase|other side of the coin|toss a coin|toss of a coin|flip a coin|stone cold|set in stone|leave no stone|stone's throw|rolling stone|rain check|raining|it rains|right as rain|come rain|rain outside|rain against|earth shattering|on balance|hang in the balance|balance sheet|new car keys|bottled|sealed|barrel proof|barrel strength|single barrel|barrel of laughs|barrel aged|bottom of the barrel|scrape the barrel|over a barrel|barrel number|barrel pick|cask strength|out of the barrel|the barrel was|straight from the barrel|metal spoon|game changer|fair game|beginner's game|game on|game night|board game|guessing game|play the game|meat and potatoes|meat of it|fishy business|plenty more fish|big fish|all at sea|sea change|overseas|sea legs|the beach with|on the beach|at the beach|to the beach|by the sea|at the seaside|to the seaside|the coast is clear|west coast|east coast|coast to coast|church bells|go to church|in church|at church|in the study|case study|open fire in|plastic cup|new paint|paint a picture|oak tree|oak table|oak hollow|royal oak|oak room|oak bar|orange juice carton|lime light|limelight|lime green|cherry pick|rose gold|rocks|rocks my|tack on|tacky|iron fist|steel yourself|nerves of steel|bury my head in the sand|line in the sand|bite the dust|mud in your eye|name is mud|clear as mud|square root|take root|couch potato|smart cookie|way the cookie crumbles|cookie cutter|pie in the sky|easy as pie|fruit cake of a|nutty as|pea brain|like two peas|sausage fest|cotton wool|pull the wool|wax lyrical|wane|whole ball of wax|soap opera|soap box|soapbox|on my soap|hold a candle|light candles|lit candles|oil the wheels|burning the midnight oil|oil painting|fat chance|chew the fat|fat cat|sweat it|no sweat|don't sweat|sweat the small|in a cold sweat|blood pressure|blood sugar|in my blood|runs in the blood|cold blood|bloody|ink pen|ink blot|simple pleasure|rich tapestry|hot and bothered|hot or cold|sour puss|bitter cold|bitter experience|bitter wind|bitter row|bitter sweet memories|bitter truth|bitter winter|warm memories|complex question|simple tastes|delicate matter|delicate question|delicate hands|delicate flower of a|gentle giant|hot date|tart up|tang of regret|cutting edge|straight up guess|open secret|wry|velvet rope|velvet chair|oily rag|oily fingers|oily hands|tar with the same brush|feather|peaches and herb|malt whisky|malt whiskey|single malt|blended malt|malts|grain whisky|grain whiskey|single grain|rye whiskey|rye whisky|wheated|wheat whiskey|corn whiskey|is a rye|straight rye|ryes|grain bill|mash bill|pot still|against the grain|go against the grain|grain of truth|grain of sand|smoke filled|cigar bar|cigar lounge bar|on the pier|at the harbour|woodwork|out of the woodwork|knock on wood|touch wood|dead wood|out of the woods|neck of the woods|barking up|hard as wood|spring flower show|tree tops|christmas morning|christmas eve|christmas day|at christmas|for christmas|every christmas|christmas present|christmas party|before christmas|over christmas|merry christmas|this christmas|hospital visit|in hospital|to the hospital|to hospital|at the hospital|works at the hospital|doctor says|at the dentist|to the dentist|dentist tomorrow|from the pharmacy|church hall|cold medicine i|taking medicine|library card|school desk job|beer garden|beers|beer first|before beer|cider house|had a beer|pickle myself|in a pickle|bit of a pickle|bay window|at bay|ports|pepper us with|peppered with questions|garlic bread|curry last night|curry tonight|curry house|the curry|had curry|had a curry|after a curry|pizza|had cheese|cheese board|cheeseboard|cheese plate|had steak|bag of crisps|crisps|bowl of nuts|bowl of olives|cup of coffee|cup of tea earlier|mug of tea|tea earlier|short of breath|long nose|long legs|no longer than|long since gone|all day long|all night long|long gone|long sip|last sip|last but not least|stay up|stay with it|stay tuned|stay put|stay home|stay away|stay the night|remains to be seen|remains a|remains my|remains of|fade out of|thin on the ground|quick sip|quick note|quick sniff|quick one|quick taste|quick look|quickly poured|with a pinch of salt|take this with a pinch|beach holiday|beach ball|beach towel|beach house|arms full|hands full|olive branch|olive skin|olive green|mint green|apple green|pea green|sage green|bottle green|forest green|moss green|emerald green|cream carpet|tan leather|gold coloured|amber coloured|orange light|orange glow|orange squash stain|golden light|gold light|candlelit|honey light|lemon light|smoke in my eyes|smoke gets in|blow smoke|blowing smoke|smoke without fire|no smoke without|chain smoker|i smoke|we smoke|he smokes|she smokes|smokes like|smoke like a|heavy smoker|non smoker|ex smoker|hot air|hot dog stand|hot seat|hot ticket|hot mess|hot tip|hot shot|hot pursuit|warm front|warm spell|warm words|warm fuzzy|warm body|cold light|bitter end|bitter pill|bitter disappointment|bitter rival|sour note|sour grapes|sweet revenge|sweet memory|sweet sixteen|sweet nothing|sweet little|sweet old|sweet dog|salt and pepper hair|salt and pepper beard|peppered with jokes|peppering|dry sense|dry martini|dry cleaners|dry cleaner's|dry patch|dry ice|dry throat|drying up|drying the|drying dishes|drying his|drying her|drying my|sharp dresser|sharp shooter|sharp left|sharp right|sharp elbow|sharp words|sharp wit|sharp witted|sharp end|rough edges of|rough diamond|rough ride|rough sea|rough weather|smooth ride|smooth move|smooth running|smooth criminal|smooth talking|soft toy|soft play|soft option|soft launch|flat as a pancake|flat broke|flat rate|flat white shop|flat earth|flatmate|round of applause|round of drinks|round of golf|round robin|all year round|clean living|clean cut|clean getaway|clean sweep|squeaky clean|clean conscience|fresh as a daisy|fresh legs|fresh off|fresh news|fresh batch|heavy machinery|heavy weather|heavy sleeper|heavy drinker|heavy breathing|heavy lifting|light weight|light years|light show|light headed|lightheaded|light of my life|light entertainment|light relief|light snack|light meal|light fitting|traffic light|red light|deep thought|deep conversation|deep freeze|deep end|deep fried|rich and famous|rich kid|rich pickings|rich tea time|bold print|bold type|bold as brass|bright as a button|bright and early|bright young|balanced on|balanced against|balance of power|balance my|balanced the|thin on top|thin on the|thin disguise|wafer thin|paper thin|thin lipped|thick of it|thick and fast|thick headed|thick accent|thick socks|full speed|full tilt|full steam|full works|full english|full swing|full bloom|full view|full length|full time job|full fridge|feeling warm|warm all over|first time|second time|third time|kick it out|this with a pinch of salt|take this with a pinch of salt|open up|the woods|had none before|before i had none|i had none|a rye|this rye|that rye|another rye|my rye|a malt|this malt|that malt|another malt|my malt|every malt|a grain|this grain|raise your glass|toast to|drink a toast|piece of toast this|for tea|my tea|his tea|her tea|our tea|tea went cold|tea lady|coffee went cold|my coffee|his coffee|her coffee|in the papers|evening paper|morning paper|sunday paper|the papers|bread on the table|put the bread|daily grind|nutty idea|spicy story|spicy language|salty language|salty old|salty tongue|salty joke|smoky eye|smoky voice|smoky jazz|earthy humour|earthy laugh|floral dress|floral curtains|floral shirt|floral wallpaper|grassy bank|grassy slope|grassy hill|leafy street|leafy lane|leafy suburb|stony silence|stony face|stony broke|stone faced|rusty nail in|rusty at this|a bit rusty|bit rusty|metal heads|oily smile|silky voice|velvet voice|creamy complexion|peachy skin|peaches and cream complexion|waxed jacket on|fishy story|something fishy|fishy about|smells fishy about|smell a rat|smelled a rat|smell of success|smell of money|taste of victory|taste of freedom|sweet smell of|sour taste left|left a sour taste|left a bad taste|kicks up its heels|kicks up|tucked up|fingers still smell|hands still smell|still smell of them|hair on your chest|hair on my chest`,
  },
  {
    says: "idiom",
    words: `don't like|dont like|do not like|i never like|never liked|i don't like|i dont like|i can't stand|can't stand|not bad|not half bad|not great|not my favourite|not my favorite|not my thing|not my style|not mine|no idea|no clue|no matter|no problem|no worries|no thanks|no thank you|no rush|no comment|no complaints|no fault|no bad thing|no big deal|no one|no good|no hurry|nothing wrong|nothing special|nothing else|nothing to add|nothing bad|nothing new|nothing much|don't hate|dont hate|do not hate|don't hate it|don't care|don't worry|don't get me wrong|dont get me wrong|do not get me wrong|don't ask|don't let|can't wait|cant wait|can't believe|cant believe|cannot believe|can't put my finger|cant put my finger|can't place|cant place|can't name|cannot name|can't help|cant help|can't remember|can't think|can't explain|can't describe|couldn't help|couldn't put my finger|won't lie|wont lie|not gonna lie|not going to lie|i won't lie|will not lie|wouldn't mind|wouldnt mind|wouldn't say no|wouldn't go so far|wouldn't change|don't remember|dont remember|don't understand|don't need|doesn't matter|doesnt matter|doesn't need|doesn't taste like|not much else|not much more|not much to say|not much going on|not a fan|not bad at all|not now|not today|not here for|not that i mind|not that it matters|not that i care|not often|not always|not everyone|not everybody|not alone|not expensive|not cheap|not a lot going on|not in a bad way|not in a good way|not that there's anything wrong|not my cup|not what i expected|isn't bad|isnt bad|isn't it|isnt it|doesn't it|doesnt it|don't you think|wasn't it|never had|never tasted|never been|never would have|never thought|never know|never seen|why not|more or less|more like|once more|any more for|no more for me|one more sip|one more|more please|more often|more time|less than impressed|less is more|none the less|nonetheless|nevertheless|not withstanding|notwithstanding|nothing like|so so|and so on|so far|so that|so here|so then|so on|so what|so anyway|so my|so bear|ok so|okay so|right so|alright|all right|all day|all of us|all of it|all of this|all of them|all that jazz|all the best|all the same|all the time|all i can think|that's all|thats all|that is all|after all that|at all|all at once|first of all|above all|best of all|most of all|very best|very last|very top|very nice|very pleasant|very well|very drinkable|very interesting|very lovely|really nice|really like|really liked|really love|really enjoy|really enjoyed|really well|pretty much|so nice|so lovely|too bad|too good|good stuff|great stuff|great whiskey|great value|big fan|big sip|big glass|big pour|big day|small glass|small sip|small pour|strong start|strong candidate|strong contender|deep breath|high hopes|high proof|high strength|low proof|little one|little sister|little brother|a little while|little while|bit of fun|bit of luck|a bit later|bit by bit|in a bit|all clear|crazy about|extra point|added water|added a drop|adds up|some time|some reason|some kind of|some sort of|some more|someone|something else|something nice|something about|something wrong|something off|something i can't|something i cant|something going on|is that so|that is so|i think so|i think this|i think i like|i think it's great|i think that's it|think about|think of|makes me think|think back|almost there|almost done|almost finished|almost empty|might as well|could well|could drink|could be worse|could be better|might buy|kind of whiskey|kind of you|sort of whiskey|sort of day|the kind of|that kind of|something to|or so they|either way|me either|come down|calm down|write down|wrote down|put down|sit down|sat down|upside down|up and down|turn it down|gone off to|gone to bed|gone wrong|gone by|going going gone|missing out|missing something|something is missing|something missing|lost my|absent minded|absent friends|vanish without|wrong with|wrong glass|i could be wrong|could be wrong|might be wrong|may be wrong|i was wrong|sorry about|sorry to|sorry for|sorry i'm|sorry that|sorry if|wait for|wait until|wait a|wait and|instead of sugar|hold on to|holds on|hang on to|nope nope|pardon the|excuse my|down here|here's|heres|people here|this morning`,
  },
  {
    says: "liking",
    words: `lovely|gorgeous|delicious|beautiful|beautifully|wonderful|fantastic|superb|excellent|delightful|pleasant|pleasing|nice|enjoyable|yummy|tasty|moreish|brilliant|fabulous|stunning|divine|heavenly|love it|loved it|i love this|love this|like this|i like this|my favourite|my favorite|favourite|favorite|cracking|smashing|grand|stellar|outstanding|magnificent|perfect|spot on|top notch|yum|wow|adore`,
    liking: 1,
  },
  {
    says: "liking",
    words: `dull|boring|bland|awful|horrible|nasty|unpleasant|disappointing|disappointed|disgusting|terrible|poor|forgettable|meh|uninteresting|uninspiring|unremarkable|hate it|hate this|don't like it|dont like it|do not like it|not for me|ugh|yuck|grim|dire|vile|off putting|underwhelming|lacklustre|lackluster|rubbish|ghastly|gross|a mess|mediocre`,
    liking: -1,
  },
  {
    says: "memory",
    words: `reminds me of|reminds me|remind me of|takes me back to|takes me back|took me back to|brings me back to|brings back|brings to mind|makes me think of|made me think of|like being in|like walking into|like walking through|like standing in|like sitting in|just like|like my|like in my|like at my|like an old|like when|i was back in|back in|memory of my|memories of|evokes|conjures|conjures up|transports me to`,
  },

  // How long the finish is: read where a finish is spoken of.
  {
    says: "length",
    strength: 8,
    words: `eternally|lasting ages|a long one|a mile long|really long|very long|super long|hours long|minutes long|big long|length for days|to the horizon|drawn out|stretched|stretches|stretches out|runs and runs|runs on|rolls on|marches on|carries on|keeps on|trails on|extends|extensive|interminable|unending|infinite|tenacious|lang|long|long lasting|longlasting|lengthy|endless|endlessly|never ending|neverending|everlasting|eternal|forever|for ever|for days|for ages|for hours|for minutes|persistent|enduring|lasting|prolonged|extended|keeps coming|doesn't stop|does not stop|does not end|won't end|never stops|does not leave|a good while|a long time|for a long time|for a long while|a long while|a good long while|a very long time|minutes later|for minutes on end|all evening|all night|until tomorrow|till tomorrow|lingering|linger|time after time|won't go away|doesn't go away|does not go away|refuses to leave`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `goes and goes|just goes on|goes on for|goes on and|and goes on|runs on and on|on for ages|stays with you till|stays with me till|all the way home|till morning|keeps you company|outlives|outlived|outlasted|i can still taste it|i can still feel it|can still feel it|is still with me|still with me|still on my tongue|still in my mouth|won't leave me|doesn't leave me|still here|it is still there|it's still there|stays on the tongue|stays in the mouth|remains long|remains a long time|it remains|stay long|stay in mouth|stays in mouth|long time in the mouth|long in the mouth|hangs about|hanging about|clings on|clings to|hangs on for|hung around|lingered on|it lasts|and lasts|really lasts|lasts and|lasts to|lasts until|lasts till|lasts through|lasted ages|goes on and on|go on and on|on and on|goes on|goes on for ages|goes on for ever|goes on forever|keeps going|keeps on going|doesn't end|doesn't quit|won't quit|never ends|never quits|does not want to leave|doesn't want to leave|doesn't leave|stays a long time|quite a while|still there after|still there|still tasting it|still going|refuses to leave|stays with you|stays with me|lingers on|hangs around|hangs on|sticks around|into next week|marathon|last forever|lasts and lasts|lasts ages|lasts a long time|lasts long|lasts very long|lingers|stays|linger|lingered|last long|lasted|persists|hang around`,
  },
  {
    says: "length",
    strength: 6.2,
    alone: true,
    words: `good length|great length|decent length|real length|lots of length|plenty of length|nice length|lovely length|impressive length|considerable length`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `not much length|not a lot of length|no great length|lacking length|little in the way of length|short on length`,
  },
  {
    says: "length",
    strength: 0,
    stance: "absent",
    alone: true,
    words: `nothing at the end|finish is nowhere|finish is absent|where's the finish|what finish|finish none|no length|no length at all|finish is missing|finish is not there|finish isn't there|there is no finish|there's no finish|not a finish|no after taste|no finish|no finish at all|nae finish|no real finish|without finish|no aftertaste|no finish to speak of|hardly a finish|not any finish|no finish whatsoever|zero finish`,
  },
  {
    says: "length",
    strength: 6,
    alone: true,
    words: `goes on a fair while|goes on a while|goes on for a while|lasts a while|lasts a good while|moderate length|ok length|okay length|medium length|middle long|mid long|half long|med`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `it's done|don't stick around|don't last|then it's gone|then it is gone|and it's gone|and it is gone|it just disappears|nothing after|doesn't hang about|already gone|doesn't stick around|does not stick around`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `won't leave|wont leave|does not leave me|no end to it|with no end|takes its time leaving|takes its time to leave|in no hurry|still tasting|still taste it|can still taste it|still there now|there for minutes|lasts minutes|during minutes|long after the glass|long after i swallow|long after you swallow|lasts an age|goes on an age|outlasts|outstays|keeps coming back|won't let go|never leaves|long after it's gone|bides with you|bides wi me|still be tasting|still be tasting it|be tasting it|bides|does not let go|doesn't let go|doesn't let you go|longer than a|longer than my|rings on|remains`,
  },
  { says: "length", strength: 6.2, stance: "more", words: `longer|lengthier|longest|longer than|more long` },
  {
    says: "length",
    strength: 6.2,
    words: `medium long|medium to long|moderately long|fairly long|longish|quite long|reasonably long|a while|for a while|lasts a while|a fair while|lasts well|lasts nicely`,
  },
  {
    says: "length",
    strength: 5,
    words: `moderate|average|reasonable|middle length|middling length|ordinary|neither long nor short|not long not short|normal|standard length|medium|medium length|medium sized|moderate length|average length|middling|of medium length|mid length|mid`,
  },
  {
    says: "length",
    strength: 4.2,
    stance: "less",
    words: `shorter|shortest|more length|could be longer|should be longer|not as long|not so long|less long|quicker|not the longest|not the longest finish`,
  },
  {
    says: "length",
    strength: 3.4,
    words: `medium short|shortish|fairly short|medium to short|on the short side`,
  },
  {
    says: "length",
    strength: 2,
    words: `none to speak of|none too long|not too long|brisk|a short one|none too long|not too long|brisk|clipped|truncated|cropped|nonexistent|non existent|not there|gone|is gone|disappears|vanishing|disappearing|dies off|dies away|drops away|falls away|fades|faded|runs out|snappy|in a blink|a blink|momentary|ephemeral|transient|peters out|fizzles out|fizzles|tails off|evaporates|collapses|gives up|nothing to speak of|not much of a|little to speak of|short|brief|abrupt|curt|short lived|shortlived|fleeting|over before it starts|over before it began|dies quickly|dies fast|dies at once|died quickly|dies|drops off|drops dead|falls off|falls off a cliff|drops off a cliff|cut off|cut short|stops dead|stops short|stops|ends quickly|ends fast|ends abruptly|ends suddenly|ends too soon|fades fast|fades quickly|fades soon|fades away quickly|fades out quickly|disappears quickly|disappears fast|disappears at once|vanishes quickly|vanishes|vanishes at once|vanishes fast|not lasting|not long|not very long|not a long|isn't long|isnt long|isn't very long|is not long|is not very long|leaves quickly|leaves fast|goes quickly|goes fast|poof|no length|little length|lacks length|too short|not existing|inexistent|non existing|perfunctory|cursory`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `gone|gone in|it's gone before|over before|it's away|it is away|disappears before|vanishes before|does not stay long|doesn't stay very long|does not last very long|no lasting|doesn't go on|does not go on|drops off a cliff|falls off a cliff|dies on the tongue|dies in the throat|stops like a|leaves quickly|leaves fast|leaves at once|bye bye|and goodbye|says goodbye|runs away fast|gone in a flash|gone before you've swallowed|gone before you've swallowed it|gone before you swallow|there and then gone|there and gone|here and gone|not long either|isn't long either|doesn't last|doesnt last|does not last|doesn't last long|does not last long|doesnt last long|doesn't linger|does not linger|doesnt linger|doesn't stay|does not stay|doesnt stay|doesn't stay long|does not stay long|doesn't hang around|does not hang around|never lingers|blink and you miss it|blink and you'll miss it|blink and it's gone|no staying power|there and then it isn't|nothing afterwards|nothing after that|nothing follows|nothing left|it just stops|just stops|simply stops|stops there|and stops|it's just gone|just gone|then nothing|and nothing|short but sweet|short and sweet`,
  },
  { says: "seconds", words: `seconds|second|secs|sec|s|`, unit: 1 },
  { says: "seconds", words: `minute|minutes|min|mins`, unit: 60 },

  // Between flavours.
  { says: "join", join: "and", words: `and|&|plus|also|as well as|and also|and some|und|et` },
  {
    says: "join",
    join: "with",
    words: `with|alongside|followed by|next to|on top of|under|beneath|underneath|behind`,
  },
  {
    says: "join",
    join: "or",
    words: `or|nor|or maybe|or perhaps|or possibly|neither|or is it|or was it|or could it be|or rather like`,
  },
  {
    says: "break",
    words: `than i expected|than expected|than i thought|than i remember|than i remembered|than it looks|than you'd think|than you would think|than i'd like|than i would like|than most|than usual|than i like|than anything|but|yet|though|although|however|whereas|while|because|which|except|only that|instead i get|until|unless|if|when|where|who|so now|than expected`,
  },
  {
    says: "start",
    words: `i|it|it's|its|there|there's|theres|he|she|they|we|you|that's|thats|now|first|second|later|next|finally|eventually|i'm|im|i've|ive|i'd|that is`,
  },
  {
    says: "glue",
    words: `in it|to it|about it|in there|of it|with it|for it|on it|in here somewhere|underneath it|under it|behind it|somewhere|in the middle of it|at first|here and there|to begin with|up front and|um|uh|er|erm|hmm|hm|ah|oh|yeah|yes|you know|well|so|ok|okay|honestly|literally|basically|actually|let's say|as it were|one could say|how we say|how do you say|for me|again|a|an|the|of|some|any|this|that|those|these|its|their|my|your|his|her|our|very|such|kind|type|sort|note|notes|like|more|bit|o|on|in|to|from|sweet|ripe|fresh|dark|light|old|new|big|juicy|freshly|real|good|nice|warm|soft|dried|cooked|sticky|thick|thin|lovely|single|whole|own|same|few|couple|slice|slices|ribbon|piece|kind of|sort of|all|really|quite|just|even|as|being|bits|other|another|wild|wet|dusty|dry|hot|red|green|black|white|yellow|brown|gold|golden|bright|pure|raw|well|overly|particularly|about|at|by|for|and all|the lot|fresh baked|freshly baked|fresh cut|fresh made|freshly made|fresh picked|fresh squeezed|homemade|home made|home baked|slow cooked|just baked`,
  },
  {
    says: "link",
    words: `is|was|are|were|be|been|being|has|have|had|seems|seem|seemed|feels|feel|felt|get|got|becomes|become|became|comes|came|come|goes|turns|turned|tastes|smells|appears|looks|'s|feeling|makes|just|quite|rather|really|now|also|still|already|almost|completely|totally|entirely|all|a|the|it|that|there|through|out|of|here|again|though|at|first|pretty|much|bit|to|me|you`,
  },
  // How long, by a verb and what stands after it.
  { says: "length", strength: 2, words: `<ends> <fast> <with>` },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `<barely> <last> <toolong?>|in and out|lasts no time|<hardly> <closing>|not much happening|nothing much happening|not a lot happening`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `<nono> <leave>|<stilltaste> <ago>|<staying> <inmouth> <dur>|keeps on giving|keeps giving|endless|long lasting`,
  },
  {
    says: "idiom",
    words: `<stays> in the background|<stays> under control|<stays> in check|<stays> hidden|<stays> quiet|<stays> put|<stays> shy|<stays> polite|<stays> away|<stays> well back|<stays> with it|stuck with it|<cask> finish|after it's <been>|after it has <been>|when it's <been>|once it's <been>|goes down <well>|went down <well>|going down <well>|leaves me thinking|leaves me cold|leaves me wanting|leaves the others|leaves the last|the end result|end product|keeps going back|keep going back|kept going back|clings to the glass|sticks to the glass|coats the glass|clinging to the glass|bottle won't last|last me|sore throat|throat is sore|taste for|acquired taste|tasted it blind|tasted blind|swallow the price|nothing to write home about|<rinse> <the> palate|<rinse> <the> mouth|palate is shot|palate's shot|palate is tired|no fireworks|sweet as a nut|hot take|oily legs|thick legs|slow legs|long legs|with a grain of salt|rich for my blood|too rich for|rich for the price|bananas how|wax seal|sealed with wax|wax top|cork broke|cork crumbled|cork fell|with the cork|pulled the cork|dry from|burnt my tongue|burned my tongue|for the garden|swallowed my pride|hard to swallow`,
  },
  {
    says: "length",
    strength: 8,
    words: `<ends> <slowly> <with>|what lingers <be>|what stays <be>|what remains <be>`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `gone|over|off|away|away it goes|off it goes|off it pops|vanishes|vanished|disappears|disappeared|leaves|left|ends|ended|slips away|slips off|exits|bows out|clears off|it goes|checks out|done|finished|drops away|falls away|peters out|fizzles out`,
    behind: `in a trice|in a wink|in a blink|in a heartbeat|in a flash|in a snap|in an instant|in a jiffy|in a moment|in no time|in seconds|in a second|in a couple of seconds|before i|before you|before it|by the time|as soon as|the moment|the second|the minute|almost at once|at once|almost immediately|immediately|instantly|almost instantly|straight away|right away|straight off|too soon|too quickly|too fast|so soon|so fast|so quickly|very quickly|very fast|pretty quickly|pretty fast|quite quickly|fairly quickly|rather quickly|fast|quickly|quick|in a hurry|double quick|sharpish|like that|just like that|like a shot|like a thief|like a light|like a lamp|early|abruptly|suddenly|without a word|without saying goodbye|without goodbye|without a goodbye|without ceremony|without a trace|already`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `goes|runs|stays|stayed|lingers|lingered|lasts|lasted|hangs around|hangs about|hangs on|hung around|sticks around|goes on|went on|carries on|keeps going|keeps on|remains|persists|clings on|echoes|echoed|hums on|rings on|still there|still be there|still going|still here|tasting it|taste it|still tasting it|with me|with you`,
    behind: `for ages|for an age|for ever|forever|for days|for hours|for minutes|for weeks|for a week|for yonks|for donkey's years|for a long time|for a long while|for the longest time|for a good long while|all evening|all night|all day|all the way home|all through|until morning|till morning|until tomorrow|till tomorrow|until the morning|until the cows come home|till the cows come home|until christmas|half the night|half the evening|and stays|and lingers|and lasts|and on|and on and on|long after|ages after|minutes after|minutes later|hours later|an hour later|ten minutes later|five minutes later|a minute later|half an hour later|yet|even now|the whole way home|the whole evening|the whole night|the whole of|the whole length of|as long as|longer than|like a guest|like an in law|like a bad|like a good|like a song|like a bell|like an echo|like a church bell|like a sermon|like a vicar's|like nobody's business|like mad`,
  },
  {
    says: "length",
    strength: 5,
    alone: true,
    words: `stays|stayed|lingers|lingered|lasts|lasted|hangs around|hangs about|hangs on|sticks around|goes on|carries on|keeps going|remains|persists`,
    behind: `a while|for a while|a bit|for a bit|a little while|for a little while|a fair while|a touch|a little|for a spell|a spell|nicely|well|well enough|decently|reasonably|a fair bit`,
  },
  {
    says: "length",
    strength: 2.5,
    alone: true,
    words: `stays|lingers|lingered|lasts|lasted|hangs around|hangs about|sticks around|remains|persists`,
    behind: `a moment|for a moment|briefly|a second|for a second|an instant|for an instant|a heartbeat|but briefly|only briefly|not long|but not long|not for long|but not for long|barely|only a moment|only seconds|a few seconds|for a few seconds`,
  },
  {
    says: "length",
    strength: 8,
    form: "beside",
    words: `miles|slow|slowly|unhurried|epic|ages|hours|minutes`,
  },
  {
    says: "length",
    strength: 2,
    form: "beside",
    words: `early|quickly|soon|in a hurry|hurried|rushed|rapid|swift|a flash|quick|fast|sudden`,
  },
  {
    says: "length",
    strength: 6.2,
    alone: true,
    words: `solid|proper|fine|fair|enough|some|respectable|useful|surprising|pleasing|satisfying`,
    behind: `length`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `huge|massive|tremendous|incredible|amazing|bags of|loads of|enormous|superb|extraordinary|remarkable`,
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
