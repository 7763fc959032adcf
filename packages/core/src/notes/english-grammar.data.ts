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
    words: `drop of|small drop of|wee drop of|ghost note of|background note of|touch of the|bit of the|hint of the|puff of|hint of|touch of|suggestion of|bit of|dash of|pinch of|dab of|dusting of|kiss of|flick of|tinge of|shade of|sliver of|smidge of|smidgen of|smidgeon of|whiff of|little of|undertone of|undercurrent of|nuance of|sprinkle of|sprinkling of|scrape of|grating of|spot of|background of|tad of|glimpse of|lick of soft|hint|faint trace of|bit o|touch o|hint o|nod to|nod of|small amount of|not much of|not a lot of|only some|scrap of|slither of|dot of|dribble of|drizzle of|lightest|teaspoon of|flutter of|hints at|hinting at|tiny amount of|twinge of|smear of|lick o|brush of|veil of|film of|subtle notes of|soft notes of|light notes of|faint notes of`,
  },
  {
    says: "degree",
    strength: 2.2,
    words: `a suggestion|a suspicion|a whisper|a trace|a dash|a pinch|an echo|a shadow|a breath|a ghost|a wisp|a flicker|the ghost of a|somewhat faint|sort of faint|slightest|faintest|smallest|nearly no|hardly a trace of|hardly a hint of|barely a hint of|barely a trace of|barely a whisper of|only a hint of|only a touch of|just a touch of|just a whisper of|just a hint of|just a suggestion of|just the ghost of|a soupcon of|soupcon of|a smattering of|smattering of|tiny little|little tiny|minute|timidly|discreet|discreetly|feeble|feebly|thinly|in small amount|a small|some small|bit of a hint of|dilute|weak|reserved|polite|politely|low level|gentlest|softest|mildest|a spot of|a flash of|the odd|an occasional|occasional|fleetingly|slight|slightly|faint|faintly|subtle|subtly|mild|mildly|lightly|tiny|minor|vague|vaguely|restrained|muted|dim|dimly|distant|distantly|little|wee|a little|a wee|a bit|a tad|a touch|a little bit|a tiny bit|a wee bit|tad|bit|barely|hardly|scarcely|barely any|hardly any|scarcely any|barely there|hardly there|hardly a|not much|not a lot|not a great deal|not a lot of|only just|shy|fleeting|weakly|quiet|quietly|delicately|softly|gently|trace|touch|whisper|small|low|lower|faded|pale|just about|just perceptible|barely perceptible|barely noticeable|barely detectable|background|understated|underneath it all|ever so slightly|ever so slight|ever so faint|hinted|scant|tame|modest|timid|un peu|little bit|the tiniest|the faintest|the slightest|the merest|a hair|a smidge|a smidgen|a trifle|a shade|mostly absent|next to no|almost no|very little|precious little|too little|poco|at a push|if you look for it|if you look|way down|way back|deep down|in the distance|from afar|just the one|just a little|just a bit|not too much|just enough|a pinch`,
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
    words: `it's not strong|it is not strong|not strong|isn't strong|isn't loud|not loud|not very strong|not too strong|isn't overpowering|not overpowering|not overwhelming|not dominant|it isn't loud|it's not loud|it isn't strong|tiny but there|faint but there|there but faint|small but there|but barely|but only just|if you squint|if you go looking|if you look hard|if i look hard|if you wait|somewhere in the distance|a long way off|a long way back|miles away|in passing|for a moment|then it hides|nothing more|no more than that|no more than a hint|less than you'd think|none too strong|only slightly|scarcely|just barely|at a pinch|in the background|in background|behind it all|in the distance|far away|lurking|peeking through|peeks through|just there|comes and goes|barely|only just|only a little|a little|a bit|a touch|slightly|faintly|just a touch|just a hint|just a bit|but faint|way in the back|if i dig|had to dig|have to dig|only a hint|a hint|only faint|tucked away|on the edges|round the edges|around the edges|at the edges|in the corner|whispers`,
  },
  {
    says: "degree",
    strength: 5,
    of: true,
    words: `squeeze of|spoon of|spoonful of|teaspoonful of|good bit of|fair bit of|nice bit of|decent bit of|lovely bit of|good dose of|dose of|side of|slice of|piece of|splash of|twist of|thread of|some|some of|note of|notes of|flavour of|flavor of|a fair bit of|fair amount of|decent amount of|bit of a|certain|element of|layer of|touch more`,
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
    words: `hit of|burst of|rush of|dollop of|handful of|mouthful of|shot of|good deal of|slug of|waft of|wafts of|slab of|a mouthful of|mouthfuls of|solid hit of|healthy dose of|generous helping of|good helping of|good slug of|good whack of|decent whack of|good measure of|surge of|stream of|ripple of|layers of|chunk of|hunk of|fair whack of`,
  },
  {
    says: "degree",
    strength: 7.8,
    of: true,
    words: `a bunch of|bunch of|quite a lot of|an awful lot of|awful lot of|a whole lot of|whole load of|big hit of|big old hit of|big dollop of|great big|absolutely full of|so full of|choc full of|chock full of|rammed with|heaving with|nowt but|nothing else but|only thing i get is|quite a bit of|all i get is|all i'm getting is|all im getting is|all i can taste is|all i can smell is|all i can find is|it's just all|overrun with|covered with|wall to wall|heaps and heaps of|lots of|loads of|load of|lot of|tons of|ton of|tonnes of|tonne of|heaps of|heap of|plenty of|plenty|bags of|oodles of|masses of|mass of|mountains of|mountain of|buckets of|bucket of|bucketful of|piles of|pile of|full of|packed with|crammed with|stuffed with|loaded with|bursting with|dripping with|drenched in|soaked in|steeped in|swimming in|covered in|coated in|filled with|brimming with|overflowing with|wave of|waves of|wall of|blast of|explosion of|bomb of|punch of|slap of|whack of|wallop of|great dollops of|fistful of|barrel load of|so much|so many|too much|too many|far too much|way too much|much|dominated by|awash with|awash in|reeks of|stinks of|screams of|nothing but|all about|heavy on|strong on|high on|long on|rich in|thick with|heavy with|laden with|an abundance of|abundance of|abundant|oozing|oozes|riot of|great deal of|whole lot of|lotta|lots and lots of|any amount of|no shortage of|no lack of|no end of|shed load of|shedload of|ocean of|sea of|flood of|torrent of|avalanche of|lashings of|glut of|overload of|overdose of|plethora of|all of the|a ton of|tons|loads|heaps|basket of|basketful of|boatload of|gobs of|truckload of|armful of|buckets|a lot|alot of|alot|bang of|more and more|all that|stacks of|hell of a lot of|very much the|very much|thump of|hammer of|fat slab of|it is all|it's all|its all|it was all|is all|was all|becomes all|everything is|everything was`,
  },
  {
    says: "degree",
    strength: 7.8,
    words: `a bit too much|a little too much|too much of the|seriously|hugely|all kinds of|thumping|screaming|thundering|big old|great big|hefty|monumental|colossal|rampant|abundant|ample|bags|lashings|richly|densely|thickly|insanely|unbelievably|remarkably|amazingly|particularly|especially|noticeably more|over the top|stupid|crazily|rather too|a bit too|a little too|slightly too|just too|much too|a touch too|overly|nothing if not|strong|strongly|intense|intensely|heavily|powerful|powerfully|big|huge|massive|massively|enormous|great|loud|loudly|dominant|dominating|prominent|pronounced|bold bold|overwhelming|overwhelmingly|overpowering|overpoweringly|in your face|insistent|extreme|extremely|incredibly|insanely|hugely|seriously|super|mega|ultra|deeply|deep|really|very|absolutely|totally|utterly|properly|exceedingly|exceptionally|excessively|excessive|terribly|awfully|wildly|ridiculously|madly|hella|powerfully|so|thick|concentrated|unmistakable|unmistakably|ferocious|fierce|fiercely|brutal|brutally|violent|explosive|potent|high|too|far too|way too|way|all|wildly|vast|monstrous|giant|gigantic|bloody|stupidly|majorly|major|all the|plenty|full|full on|heady|pungent|striking|strikingly|vivid|vividly|piercing|pulsing|stonking|whopping|whacking|dripping|roaring|raging|blazing|molto|muy|intensive|super duper|lush with|chock full of|insane|serious|a very|hefty|robustly|unashamedly|unapologetically|proper big|more than a little|more than a bit|enough to`,
  },
  {
    says: "degree",
    strength: 7.8,
    back: true,
    words: `too present|very present|too strong|too loud|really strong|too dominant|very loud|a lot of it|quite a lot of it|turned up to eleven|everywhere you look|knocks you over|knocks me over|slaps you|smacks you|punches you|wallops you|kicks you|smothers|smothers everything|swamps|swamps everything|buries everything|eats everything|takes no prisoners|plenty|lots|loads|tons|heaps|by the bucket|everywhere|all over|all over the place|all over it|all over the glass|in spades|for days|through and through|front and centre|front and center|jumps out|leaps out|jumps at you|hits you|hits hard|hits me|punches|dominates|dominate|takes over|took over|overwhelms|overpowers|overpowering|drowns|drowning|shouts|screams|is huge|is massive|is strong|is big|in abundance|galore|the whole way|all the way|all the way through|the whole time|from start to finish|takes up the whole|covers everything|fills the room|fills the glass|fills the mouth|on top of everything|by the bucket|by the bucketload|loads of it|lots of it|tons of it|plenty of it|heaps of it|a lot of it|masses of it|bomb|overload|explosion|very strong|very much|so much|a lot|too much|way too much|big time|for sure strong|won't let go|wont let go|does not quit|doesn't quit|impossible to miss|hard to miss|can't miss it|cant miss it|cannot miss it|can't be missed|is the star|runs the show|on steroids|turned up|to the max|is king|in charge|flooding|floods|pours out|out of the glass|never stops|like mad|like crazy|drenches|unmissable|loud and clear|to the hilt|bullies`,
  },
  // "very smoky" and "very faint": pushes away what it stands before.
  {
    says: "amplify",
    words: `very|really|so|extremely|incredibly|terribly|awfully|just|ever so|super|only|real|such a|such|quite`,
  },

  // Not there.
  {
    says: "not",
    words: `could not smell|could not taste|could not detect|can not smell|can not taste|cannot detect|did not smell|did not taste|didn't smell|didn't taste|what's missing is|what is missing is|all that's missing is|the only thing missing is|only thing missing is|couldn't detect|couldn't pick out|can't pick out|cannot pick out|can't make out|nothing of the|not one|nary a|nary any|precious no|bugger all|sod all|not a single|not any of the|nothing in the way of|never mind the lack of|in place of|in place of the|gone without|for lack of|for want of|not so much as a hint of|not so much as a|not so much as a whiff of|never a hint of|never a whiff of|never a trace of|no note of|no notes of|no sense of|no suggestion of any|no evidence of any|not an ounce of|not a jot of|not a drop of|not a lick of|not a puff of|not a shred of|not a dot of|not a breath of|not a spot of|didn't get the|couldn't find the|can't get the|can't find the|don't get the|don't find the|didn't find the|can't find any|i can't find any|i cannot find any|cannot find any|cant find any|i cant find any|don't get any|dont get any|don't find any|dont find any|i don't find any|i don't get any|i don't see any|couldn't find any|could not find any|i couldn't find any|didn't find any|did not find any|i didn't find any|i didn't get any|can't get any|can't taste any|can't smell any|can't detect any|i can't get any|i can't taste any|i can't smell any|cannot get any|cannot taste any|cannot smell any|not finding any|not smelling any|not tasting any|i don't have any|i get no|i find no|i taste no|i smell no|find no|get no|hasn't any|hasn't got any|hasn't got|doesn't offer|with none of the|none of that|has none of the|can't say i get|can't say i find|can't say i taste|can't say i got|can't say there is|can't say there's|wouldn't say|i wouldn't say|wouldn't call it|would not call it|would not say|where's the|where is the|wheres the|where has the|where are the|gone is all the|never any|hardly what you'd call|nothing remotely|not especially any|stripped of|robbed of|clean of|clear of|cleared of|i don't find|i dont find|i don't get|i dont get|i don't feel|i dont feel|i do not find|i do not feel|i do not get|i don't taste|i do not taste|i don't smell|i do not smell|i cannot find|i can't find|i cant find|i don't have|not getting any|there is not|there is not any|have not any|has not any|it has not|it have not|i don't see|don't see|so was the|so were the|so is the|and so was the|no|not|without|without any|zero|nil|never|nothing|neither|nor|lacks|lack|lacking|lacks any|lacking any|lacking in|devoid of|free of|free from|absence of|not a|not any|not even|no real|not really|isn't|isnt|is not|wasn't|wasnt|was not|aren't|arent|weren't|werent|ain't|aint|don't|dont|do not|doesn't|doesnt|does not|didn't|didnt|did not|haven't|havent|hasn't|hasnt|hadn't|hadnt|cannot find|can't find|cant find|can not find|couldn't find|couldnt find|could not find|can't get|cant get|cannot get|can't detect|cannot detect|can't pick up|cannot pick up|can't taste|cant taste|cannot taste|can't smell|cant smell|cannot smell|couldn't taste|couldnt taste|couldn't smell|couldnt smell|couldn't get|couldnt get|could not get|can't|cant|cannot|couldn't|couldnt|could not|won't|wont|wouldn't|wouldnt|no sign of|no trace of|no hint of|no whiff of|no suggestion of|no evidence of|not a trace of|not a hint of|not a whiff of|not a bit of|not a scrap of|not a sign of|not a drop of|not a bit|not one bit|not a touch of|not a speck of|not in the least|not the slightest|not the slightest bit|not the least bit|not remotely|not at all|none of|none of the|none|nowhere near|miss the|missing the|missing any|misses the|absent of|sans|anything but|far from|fails to find|failed to find|fail to find|searched in vain for|looked in vain for|gone is the|gone are the|gone the|no longer|no more|lost the|lost its|lost all|lost all the|has lost the|has lost its|has lost all|rather than|instead of|minus|take back the|i take back the|take back what i said about the|take back what i said about|forget the|forget what i said about|forget what i said about the|ignore the|ignore what i said about|i was wrong about the|was wrong about the|wrong about the|scratch the|strike the|cross out the|delete the|there is no|there's no|theres no|there isn't|there isnt|there are no|there aren't|dinnae|didnae|cannae|isnae|nae|void of|empty of|bereft of|shorn of|hardly what i would call`,
  },
  {
    says: "gone",
    words: `i can't find any|i cannot find any|i cant find any|i don't find any|i don't get any|i don't see any|i can find none|naewhere|is naewhere|can't find any|cant find any|cannot find any|can't find any here|don't get any|don't find any|find none|not a trace of it|not a trace|not a hint of it|not a whiff of it|not a sign of it|none of it|i found none|i find none|got none|get none|nowhere now|gone|has gone|have gone|is gone|are gone|was gone|all gone|went away|goes away|gone away|gone now|gone completely|disappeared|disappears|disappear|has disappeared|have disappeared|vanished|vanishes|vanish|has vanished|died away|dies away|burned off|burnt off|blown off|blew off|evaporated|absent|is absent|missing|is missing|nowhere|nowhere to be found|is nowhere|not there|isn't there|isnt there|is not there|wasn't there|wasnt there|was not there|aren't there|not present|not anymore|not any more|isn't here|not here|no longer there|no longer|no more|none|none at all|not at all|not a bit|not one bit|not any|zero|nil|nope|not found|cannot be found|can't be found|i don't find|i dont find|i don't get|i dont get|i don't feel|i dont feel|i do not find|i do not feel|i do not get|i don't taste|i do not taste|i don't smell|i do not smell|i cannot find|i can't find|i cant find|i don't have|doesn't exist|does not exist|has left|have left|has left the building|left the building|packed up and left|slipped away|fled|melted away|melts away|ebbed away|ran away|cannot i find|escapes me|is lost|got lost|no trace|no sign|no sign of it|no trace of it|can't find it|cant find it|cannot find it|couldn't find it|lost now|clears|cleared|has cleared`,
  },
  {
    says: "gone",
    retracts: true,
    words: `i wrote was wrong|i wrote down was wrong|i noted was wrong|i noted down was wrong|noted was wrong|noted before was wrong|noted earlier was wrong|i mentioned was wrong|i said was wrong|i had was wrong|i put was wrong|i put down was wrong|i found was wrong|i thought i had was wrong|i noted is wrong|i wrote is wrong|was wrong|is wrong|was a mistake|were wrong|was my mistake|was an error|was my imagination|was imaginary|was never there|never was|never was there|was not real|i imagined|was false|was nonsense|was rubbish|i take it back|i take that back|scrap that one`,
  },
  {
    says: "less",
    words: `not as|not so|not that|not quite as|not nearly as|nowhere near as|not very|not too|not overly|not terribly|not particularly|not especially|not hugely|not exactly|not quite|not all that|isn't as|isnt as|isn't that|isnt that|isn't very|isn't too|isnt very|isnt too|isn't so|isnt so|wasn't as|wasnt as|wasn't very|wasn't too|wasn't that|not half as|doesn't have as much|doesn't have the same|not as much|not so much|not enough|never too|never very|too little|less|less of the|less of|lesser|fewer|much less|far less|a lot less|way less|not the same|could do with more|could use more|needs more|need more|wants more|want more|would like more|i'd like more|wish there was more|wish it had more|short on|short of|light on|shy on|low on|low in|a little less|a bit less|slightly less|toned down|tones down|tamed|losing|loses some|loses its|loses the|losing its|lost some|lost some of its|has lost some|softens the|calms the|tames the|less and less|minder|not more|no more than|under|softer|weaker|fainter|quieter|reduced|milder|gentler|lighter on|isn't quite as|subdues|mutes|dulls|dampens|hides|masks|isn't half as|aren't as`,
  },
  {
    says: "lessened",
    words: `faded|fades|fading|has faded|have faded|is fading|fades away|fading away|faded away|fades a bit|faded a bit|died down|dies down|dying down|has died down|settled down|settles down|calmed down|calms down|calmer|softened|softens|has softened|have softened|weaker|weaker now|fainter|quieter|quieter now|toned down|less|less now|less so|less pronounced|less obvious|lessened|reduced|subdued|recedes|receded|receding|retreats|retreated|steps back|stepped back|drops back|dropped off|drops off|tails off|tailed off|dims|dimmed|mellowed|down a notch|down|is down|shrinks|shrunk|wanes|waning|waned|subsides|subsided|ebbs|ebbing|backs off|backed off|drops away|falls away|almost gone|nearly gone|mostly gone|half gone|all but gone|pulled back|pulls back|eases|eased|has eased|diminished|diminishes|lighter now|softer now|softer|gentler|gentler now`,
  },
  {
    says: "more",
    words: `more|much more|far more|a lot more|way more|lots more|even more|a bit more|a little more|slightly more|rather more|more of the|more of|extra|bigger|stronger|heavier on|stronger on|louder|greater|increased|growing|grows more|added|increasingly|adds|added more|more intense|more pronounced|heavier|double the|twice the|twice as much|turns up the|amplifies|heightens|boosts|deeper|`,
  },
  {
    says: "increased",
    words: `is stronger|stronger|stronger now|has grown|grew|grows|growing|increased|increases|increasing|more now|louder now|louder|bigger|bigger now|builds|building|built|comes up|came up|come up|rises|rising|up a notch|more pronounced|more obvious|more intense|more prominent|comes forward|came forward|steps forward|stepped forward|intensifies|intensified|deepens|deepened|gets stronger|got stronger|gets bigger|has come up|swells|blooms|ramps up|more than before|picks up|wakes up`,
  },
  { says: "as-much", words: `as much|as|just as|equally|same|the same|similarly` },
  {
    says: "unsure",
    words: `maybe|perhaps|possibly|might be|might|may be|could be|could it be|can it be|could|i think|i thought|think|i guess|i suppose|i'd say|id say|i would say|i reckon|i believe|probably|presumably|seems|seems like|seem to|seems to|appears|sort of|kind of|kinda|sorta|something like|something of|a sort of|not sure|not so sure|i'm not sure|im not sure|i am not sure|not certain|unsure|don't know if|dont know if|don't know whether|don't know|dont know|do not know|can't decide|cant decide|can't tell if|cant tell if|can't tell|am i getting|either|i want to say|want to say|if i had to guess|if i had to bet|if pushed|at a guess|arguably|conceivably|potentially|i imagine|hard to say|hard to tell|hard to be sure|who knows|wonder if|i wonder|wondering if|something|somewhat like|ish|almost|nearly|borderline|verging on|approaching|bordering on|suspect|i suspect|swear|could swear|would swear|don't hold me to it|dont hold me to it|question mark|may have|might have|could have|would that be|dare i say|or so|or something|or something like that|or similar|or the like|sometimes|not entirely sure|think there is|think there's|think theres|i fancy|fancy i`,
  },
  // "don't think there's any smoke": a hedge under "not" says no.
  {
    says: "not",
    words: `don't think|dont think|do not think|don't think it is|don't think there is|don't think there's|dont think theres|don't find|dont find|do not find|didn't find|did not find|don't get|dont get|do not get|don't get any|dont get any|didn't get|did not get|don't taste|don't smell|do not taste|do not smell|don't detect|do not detect|don't feel|do not feel|don't notice|do not notice|didn't notice|not finding|not getting|not smelling|not tasting|not picking up|not seeing|never found|never find|never got|never get|not find|not get|isn't any|isnt any|aren't any|wasn't any|is not any|are not any|has no|have no|had no|with no|shows no|got no|contains no|gives no|does not have|doesn't have|doesnt have|doesn't have any|doesnt have any|does not have any|doesn't show|doesn't taste of|does not taste of|doesn't smell of|does not smell of|without being|without ever being|without the|without becoming|without getting|without turning`,
  },
  // Looks like a "not" and is none.
  {
    says: "there",
    words: `that wasn't there before|wasn't there before|not there before|i hadn't seen|hadn't noticed|i missed before|that i missed|which i missed|that i hadn't|i had missed|that wasn't there|i didn't get before|i did not get before|didn't get before|i didn't notice before|didn't notice before|hasn't gone|has not gone|haven't gone|hasnt gone|not gone|not gone away|hasn't left|hasn't faded|doesn't fade|still there|no doubt|without doubt|without a doubt|no doubt about it|no question|without question|no mistaking|no mistake|no denying|can't deny|cant deny|cannot deny|no hiding|no escaping|no escape from|no getting away from|no getting past|no avoiding|no avoiding the|can't get past|cant get past|cannot get past|can't get over|cant get over|can't get away from|cannot get away from|can't escape|cannot escape|can't ignore|cannot ignore|can't shake|cannot shake|can't hide|cant hide|cannot hide|can't miss|cant miss|cannot miss|couldn't miss|could not miss|impossible to ignore|impossible to miss|hard to miss|hard to ignore|doesn't hide|does not hide|not shy with|not shy about|isn't shy with|isn't shy about|not hiding|can't stop tasting|can't stop smelling|can't help tasting|won't go away|wont go away|doesn't go away|does not go away|not going away|refuses to leave|never lets go|doesn't let up|unable to get past|can't see past|cannot see past`,
    strength: 7,
  },
  {
    says: "there",
    words: `not only|not just|not merely|not simply|not solely|not to mention|not forgetting|not without|never without|not without its|not without some|not unlike|not dissimilar to|not far from|not far off|not a million miles from|not lacking|not lacking in|doesn't lack|does not lack|not short of|isn't short of|not devoid of|not free of|if not|no less|no wonder|not surprisingly|unsurprisingly|not unpleasant|not unpleasantly|not a bad|not unexpected|needless to say|can't complain|don't miss|dont miss|do not miss|never mind|doesn't mask|does not mask|doesn't cover|does not cover|don't mind|dont mind|do not mind|i don't mind|not quite hiding|not too shabby|not wrong`,
  },

  // Said, and taken back.
  {
    says: "correct",
    words: `no|i mean|i meant|no wait|wait no|oh wait|no actually|no no|no hang on|hang on|hold on|no sorry|sorry|sorry no|scratch that|strike that|scrap that|correction|i correct|correct that|make that|or rather|rather more like|no rather|no it's|no its|no it is|no that's|no thats|no that is|no more like|no more of a|no make that|actually no|actually not|no not|no not that|no i think|no i'd say|no maybe|no perhaps|no definitely|no its more|no it's more|no it's more like|no its more like|no that's wrong|that's wrong|thats wrong|that is wrong|that's not right|thats not right|not right|no tell a lie|tell a lie|i tell a lie|let me rephrase|let me correct|my mistake|i take that back|take that back|i change my mind|changed my mind|on second thoughts|on second thought|second thoughts|on reflection|thinking about it|i stand corrected|oops|whoops|excuse me|pardon|not that|erm no|um no|uh no|hmm no|er no|oh no|ah no|well no|nah|nope|wrong|forget that|delete that|no i lie|i lie|no i tell a lie|instead|better said|better to say|i should say|should i say|i would rather say|no it is more|wait|actually that's|actually thats`,
  },
  {
    says: "said-before",
    words: `changed my mind about|change my mind about|changed my mind on|change my mind on|crossed out|i crossed out|cross that out|first i said|i first wrote|i wanted to write|i want to take back|i thought was|what i thought was|what i called|thought it was|i thought it was|at first i thought|at first i thought it was|i first thought|i was going to say|was going to say|going to say|nearly said|almost said|nearly wrote|almost wrote|i mistook|mistook|what i took for|took it for|where i had|where i wrote|where i noted|where i said|where before i had|before i had|earlier i had|earlier i said|earlier i wrote|last time i had|last time i said|first time i said|first time i wrote|previously|previously i had`,
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
    words: `the first|the second|the third|the fourth|the fifth|the sixth|the next|the other's|the last one's|the others'|the other glass's|its neighbour|the previous glass's|that glass|that last one|the one we had|the one we had before|the one earlier|the earlier|earlier one|the far one|the one in the middle|the middle one|the two others|the other two|all the others|every other glass|most of the others|the bourbon one|the peated one|the last one|last one|the one before|the other one|the other|the others|the other glass|other glass|the previous|the previous one|previous one|previous glass|the previous glass|the first one|the first glass|first glass|the second glass|the third glass|the fourth glass|the second one|the third one|the fourth one|that one|the next one|next glass|its neighbour|its neighbor|the one on the left|the one on the right|the left one|the right one|the left hand one|the right hand one|the last glass|last glass|the last|the others here|the control|the bottle at home|the standard|the standard one|the usual|the sister glass|the earlier one|the earlier glass|its sister|its brother|the one beside it|the glass before|the glass next to it|the two before|the one i had before|the one before it|yesterday's|the one yesterday|the one from yesterday|the reference`,
  },
  {
    says: "this",
    words: `this is|this was|this has|this one is|this one has|this one's|here it is|here it's|this one|this glass|here|this|mine|this time|this sample|this whiskey|this whisky|this dram|in here|now here|whereas this`,
  },
  {
    says: "aside",
    words: `ignore any|ignore me if i say|if i say|couldn't tell you about|can't speak for the|don't ask me about|pay no mind to|i'd serve this with|serve this with|i'd have this with|would be lovely with|lovely with|perfect with|good with|nice with|with a square of|ideal with|crying out for|begs for|can't drink|don't drink|never drink|i can't eat|i don't eat|i never eat|mistake for|mistaken for|mistake it for|pass for|passes for|confused with|confuse with|used to work in|used to work at|worked in|i worked at|my first job|gave up|i gave up|giving up|i was peeling|he was eating|she was eating|they were eating|we had a|before this we had|before that we had|before this i had|just had a|i'd just had|i had just had|i've just had|we've just had|we'd just had|on a diet of|brush my teeth|brushed my teeth with|shopping for|planted|i grow|we grow|he grows|she grows|bake a|baking a|keeps a|nicknamed|a bottle called|it is called|it's called|the label|on the label|photo of|picture of|a painting of|song about|poem about|made a|made some|baked a|baked some|cooked a|cooked some|frying|fried some|roasting|was baking|is baking|eating|nibbled|snacking on|i chewed|after the curry|washed down with|goes with the|had a plate of|we'd had|we had had|i'd had|i'd just had|had just had|had been eating|smells from the kitchen|smell of dinner|according to|everyone says|everybody says|everyone is saying|everybody is saying|everyone got|everyone gets|someone says|somebody says|the others say|the others said|the others got|the others get|the book says|the card says|the notes say|the back label says|the leaflet says|the host says|people get|the internet says|which the others are finding|everyone else gets|everyone else got|everyone else found|everyone else finds|everyone else says|i was told|we were told|told me there was|told there was|told it has|i had read|i read|promised me|my dad used to smoke|someone lit|somebody lit|next door is having|having a barbecue|expected|i expected|i was expecting|was expecting|expecting|i'd expected|i had expected|hoped for|hoping for|i was hoping for|i hoped for|was hoping for|i hoped|wished for|wish for|looking for|i was looking for|looked for|waiting for|would go with|would go well with|goes with|goes well with|go with|goes nicely with|would go nicely with|would be great with|would be good with|would be nice with|great with|pair with|pairs with|pairs well with|would pair with|would pair well with|pair it with|serve with|serve it with|served with|drink it with|drink this with|drink with|have it with|have this with|have with|eat with|with a plate of|with a slice of|with a piece of|with a bowl of|we ate|i ate|i had eaten|after eating|i just ate|just ate|we were eating|is eating|are eating|was eating|passed round|passed around|reaching for|reaches for|nibbling|bring out the|someone brought|somebody brought|is cooking|was cooking|next door is cooking|is wearing|was wearing|wearing|label says|the label says|box says|the box says|the label promises|the label claims|promises|promised|says on the label|supposed to have|supposed to be|meant to be|meant to have|they say|people say|everyone says|someone said|somebody said|he says|she says|he said|she said|they said|he finds|she finds|he found|she found|he gets|she gets|they get|my wife says|my wife gets|my wife said|my husband says|my husband gets|my husband said|my friend says|my friend gets|my friend said|dad says|dad gets|mum says|mum gets|mom says|mom gets|the host said|the host says|others say|others get|others got|others found|kept going on about|keeps going on about|talking about|talked about|arguing about|i'd love|i would love|i'd have liked|i would have liked|would have liked|would be nice|if only|wish it had|wish there was|wish there were|ought to have|should have|should be|usually|normally|i usually like|allergic to|i like my|who likes|lovers|fans|fans of|rinsed|cleaned with|used to smoke|gave up smoking|smoke alarm|smoking outside|smoke break|smoked a|aged in|matured in|finished in|married in|came from a|from a cask|cask of|bottled from|casks of|distilled from|called|named|by the name of|known as|drove past|bought|buys|poured by|she brought|he brought|i brought|like to drink|smoking a|smoking his|smoking her|was smoking|is smoking|were smoking|are smoking|i was smoking|lit a|lights a|lit the|peeled|peeling|someone peeled|`,
  },
  {
    says: "reports",
    words: `says|said|gets|got|found|finds|reckons|reckoned|thinks|thought|swears|swore|insists|insisted|claims|claimed|whispered|whispers|mentions|mentioned|calls it|called it|shouted|shouts|muttered|mutters|is saying|was saying|are saying|were saying|keeps saying|kept saying|wrote|writes|suggested|suggests|smelled|tasted|argues|bets|noted`,
  },
  {
    says: "aside",
    back: true,
    words: `coming in|is coming in|coming through the window|through the window|was on the table|is on the table|on the table|are on the table|were on the table|on the stove|in the oven|on the hob|this morning|for lunch|for breakfast|for dinner|for supper|for pudding|before i came|earlier today|before dinner|at lunch|at dinner|was better than this|in the next room|is next door|next door is|from the kitchen|in the kitchen|from outside|was cooking|is cooking|were cooking|before we started|before we began|in the ashtray|at the bar|in the bar|on the sofa|on the rug|in the grate|on the wall|in the corner of the room|in the room|down the road|down the street|over the road|in the garden|in the hall|on the radio|on the telly|in my hand|in my pocket|on my shirt|on my hands|on my fingers|on her fingers|on his fingers`,
  },
  {
    says: "aside",
    words: `dark as|as dark as|pale as|as pale as|black as|as black as|brown as|yellow as|red as|as red as|amber as|the look of|in colour|in color|colored like|coloured like|to look at|legs|the legs|legs like|tinted|the shade of|golden as|shines like|glows like|colour|color|the colour|the color|colour of|color of|coloured|colored|looks like|looks|it looks|in the glass it is|appearance|to the eye|shade is`,
    look: true,
  },

  // Where in the mouth. "on the nose" may stand after; "nose" heads what follows.
  {
    says: "where",
    where: "nose",
    form: "head",
    words: `neb|nostrils|first breath|fragrances|odours|smell of it|first impression on the nose|nosed first|nose|the knows|knows is|knows has|noses|nosed|aroma|aromas|bouquet|scent|scents|smell|odour|odor|nosing|whiff|sniff|sniffs|fragrance|nez|waft|first nose|first smell|first sniff|one sniff|first whiff`,
  },
  {
    says: "where",
    where: "nose",
    form: "after",
    words: `in nose|up nose|on nosing it|by nose|at nose|under the nose|on smelling|on the nose|on the knows|in the knows|in the nose|on nose|to the nose|at the nose|by the nose|up the nose|nose wise|nosewise|on nosing|on the smell|in the smell|in the aroma|on the sniff|on first sniff|at first sniff|on first nosing|first on the nose|on the first sniff|on the first nosing|in the nostrils|up my nose|to smell|to nose|when i smell|when i nose|when you smell|when nosing|when i sniff|for the nose|on its nose`,
  },
  {
    says: "where",
    where: "nose",
    form: "verb",
    words: `my nose in|my nose into|your nose in|your nose into|our noses in|nose into|nose in it|nose first|on the second nosing|second nosing|the second nosing|re nosing|renosing|nosed again|nosed it|nosed it again|smelled it again|smelling again|smell again|sniffing again|another sniff|one more sniff|had a sniff|give it a sniff|gave it a sniff|have a sniff|took a sniff|take a sniff|a good sniff|a quick sniff|a deep sniff|had a smell|have a smell|took a whiff|the nose now|nose now|now the nose|nose second time|at the nose again|i'm smelling|im smelling|what i smell|what i'm smelling|smell wise|aroma wise|you can really smell|really smell|could smell|i could smell|still smell|smelling of|to smell it|by the smell of it|from across the room|hits the nose|hits my nose|hit my nose|reaches the nose|comes up the nose|fills my nose|in my nose|tickles the nose|breathe it in|sniffed|first thing out of the glass|out of the glass comes|jumps out of the glass|leaps out of the glass|rises from the glass|drifts out of the glass|drifts up|the first thing i smell is|first i smell|all i can smell is|all i smell is|all i smell|only smell|from the nose|from the nose i get|the nose suggests|the nose promises|the nose promised|the nose suggested|the nose says|the nose offers|the nose brings|the nose gives|the nose is all|i get a whiff of|a whiff of|get a whiff of|whiffs of|whiff of|in smell|by smell|on smelling|when smelling|by nose|it smell|it smells|i am smelling|can be smelled|smells strongly of|smell like|smell of|smell is|smells faintly of|scented with|scented like|smells mostly of|perfumed with|breath of it|first breath is|breathing it|get my nose in|nosing|lifting the glass|the smell of it is|sniffs of|with my nose in|i stick my nose|my nose says|my nose finds|my nose gets|to my nose|putting my nose in|put my nose in|nose in the glass|i put my nose in|stick my nose in|sticking my nose in|nose in|over the glass|hold it to my nose|hovering over the glass|to the nose first|from the glass comes|out of the glass comes|coming off the glass|off the glass|smells|smells of|smells like|smelling of|smelling|smelled|smelled of|smelt|smelt of|i smell|i can smell|can smell|you smell|you can smell|i nose|i sniff|smelled like|nose it|nosing it|sniffing|sniff it|breathe in|inhale|inhaling|breathing in|smell it|smell this|stinks o|nose again|nosing again|back to the nose|back on the nose|return to the nose|stinks|stink|reeks`,
  },
  {
    says: "where",
    where: "palate",
    form: "head",
    words: `mooth|swig|slurp|second mouthful|first mouthful|first swig|first gulp|mid tongue|the drinking|moutfeel|mouthfeels|palate|palates|taste|tastes|mouth|tongue|sip|sips|mouthful|mouthfeel|mouth feel|texture|mid palate|midpalate|arrival|entry|attack on the palate|development|pallet|palette|palat|sipping|cheeks|flavour on the tongue|first taste|first sip|second sip|one sip`,
  },
  {
    says: "where",
    where: "palate",
    form: "after",
    words: `on the front|in the mid palate|mid mouth|on tongue|on mouth|at mouth|in the gob|on sip|on sipping|in taste|at taste|on mouthfeel|in the drinking|when you first put it in your mouth|when you put it in your mouth|when i put it in my mouth|when it hits the tongue|when it hits your tongue|when it hits my tongue|on the sides|at the sides|on the gums|on the lips|on my gums|across the tongue|over the tongue|on the middle of the tongue|on the back of the tongue|at the front of the tongue|on the front of the tongue|at the tip|inside the cheeks|on the palate|in the palate|on palate|to the palate|on the tongue|on my tongue|in the mouth|in my mouth|in your mouth|on your tongue|in mouth|to taste|on tasting|on the taste|in the taste|for the taste|for taste|taste wise|tastewise|on the sip|on first sip|at first sip|on the first sip|in the first sip|on the second sip|on entry|on arrival|on the arrival|on the entry|when i taste|when i sip|when i drink|when tasting|when sipping|when you taste|mid palate|on the mid palate|on the tip of the tongue|on the tip of my tongue|on the sides of the tongue|at the tip of the tongue|on the gums|in the cheeks|on the roof of the mouth|for the mouth|for the palate|to drink|with a sip|tongue tip|on my palate|on the pallet|on the palette|round the mouth|around the mouth|through the mouth`,
  },
  {
    says: "where",
    where: "palate",
    form: "verb",
    words: `the palate now|palate now|now the palate|second sip|the second sip|third sip|another sip|one more sip of it|a good sip|a big sip|a wee sip|have a sip|tasted again|tasted it again|what i taste|what i'm tasting|i'm tasting|im tasting|really taste|could taste|i could taste|you can really taste|in the mouth again|the mouth now|into the mouth|into my mouth|once it's in the mouth|once it is in the mouth|hits the palate|hits my palate|fills my mouth with|fills the mouth with|drink it and|the first thing i taste is|first i taste|bite into it|the sip is|a sip brings|a sip gives|drinking brings|on drinking it|once you drink it|once you sip it|when you drink it|to drink it is|flavour wise|flavor wise|the flavour is|the flavor is|flavours of|flavors of|all i can taste is|all i taste is|all i taste|i swig|swigging|slurping|supping|have a sup|take a mouthful|took a mouthful|a mouthful of it|once in the mouth|in mouth it|it taste|taste like|taste of|taste is|tastes mostly of|my tongue says|my tongue finds|my tongue gets|to my tongue|on my lips|rolled round the tongue|first taste is|on the first taste|on the second taste|when it hits the tongue|hits the tongue|hits my tongue|as i drink|while drinking|after tasting|having tasted|now in the mouth|let it sit on the tongue|when sipped|sipped neat|sip and|first sip is|get it in your mouth|get it in my mouth|when drinking|on drinking|when i drink it|now drinking|drinking it now|now i sip|now i taste|i take a sip|i took a sip|i put it in my mouth|when i put it in the mouth|when i put in the mouth|in it goes|put it in the mouth|i try it|now for a sip|now for the taste|now to taste|tasting now|to taste it|then drinking|swill it|rolling it|roll it|roll it round|chew it|hold it in the mouth|holding it in the mouth|tastes of|tastes like|tasting of|tasted|tasted of|tasted like|i taste|i can taste|can taste|you taste|you can taste|tasting it|tasting this|taste it|sip it|sipping it|sip again|drinking it|drinks|i sip|i sipped|i drink|i drank|drank|sipped|a sip and|took a sip|take a sip|taking a sip|had a sip|i'd had a sip|had a taste|then a sip|after a sip|after the first sip|taste again|tasting again|back to the palate|second taste|my tongue's telling me|my tongue is telling me|now tasting|now the taste|then tasting|and tasting|now taste|then taste|palate again|the taste is|the taste of|coats the mouth with|coats the tongue with|mouth again`,
  },
  {
    says: "where",
    where: "finish",
    form: "head",
    words: `the throat|the tail|finisher|fini|postscript|the end is|end is|the finale|final|the final|finish|finishes|aftertaste|after taste|afterglow|tail|ending|finale|fade|fade out|farewell|the end|finsh|denouement|after finish|swallow|aftertastes`,
  },
  {
    says: "where",
    where: "finish",
    form: "after",
    words: `on swallow|on swallowing|at swallow|on the exit|on exit|on departure|on the fade|going out|on leaving|past the throat|after swallow|after a swallow|in the throat|to the throat|down my throat|the throat feels|at the very back|right at the back of the throat|with the swallow|after each sip|a while after|for the farewell|at the last moment|in the last moments|in the final moments|by the finish|to finish off with|in finale|at final|in the final|on the back end|at the back end|back end|end to it|end to this|on the tail end|right at the tail|at the tail|at the tail end|on the close|at the close|late on|in the tail end|once it is down|once it's down|as it goes down|as it fades|as it leaves|when it goes|after it goes|after it has gone|when it has gone|after you have swallowed|after you've swallowed|after i've swallowed|when it's gone down|in the aftermath|on the finish|in the finish|on finish|to the finish|at the finish|in finish|on the end|at the end|at the very end|right at the end|towards the end|toward the end|near the end|by the end|after swallowing|after the swallow|after i swallow|after you swallow|on the swallow|once swallowed|when swallowed|as i swallow|when i swallow|going down|on the way down|all the way down|on the way out|in the throat|down the throat|in my throat|in your throat|at the back of the throat|the back of the throat|back of the throat|back of my throat|in the chest|in my chest|in the belly|in the stomach|in my belly|long after|after the sip|in the aftertaste|to finish|to end|to close|at last|at the last|in the tail|on the tail|later on the breath|on the breath|after a while in the mouth|last of all|in the fade|for the end|for the finish|at the death|to see you out|to see it out`,
  },
  { says: "where", where: "finish", form: "bare", words: `after|afters|at last|and after` },
  { says: "where", where: "nose", form: "heard", words: `knows|noes|noze|noise` },
  { says: "where", where: "finish", form: "heard", words: `finnish|phinish` },
  {
    says: "where",
    where: "finish",
    form: "verb",
    words: `the finish now|finish now|now the finish|then the swallow|it finishes with|it finishes on|what you're left with|what you are left with|what's left behind|you're left with|youre left with|you are left with|all that's left is|all that is left is|what hangs around is|what stays with you is|what it leaves is|it signs off|as it fades there|then it fades to|when you swallow it|when i swallowed|after it's gone there's|leaves a taste of|leaves the taste of|leaves a taste|left a taste of|leaving a taste of|leaves my mouth tasting of|leaves the mouth with|leaves a|leaves an|leaves some|leaves the|leaves my|leaves your|goes down|go down|went down|it goes down|goes down with|and leaves|it leaves|which leaves|finishes|finishing|comes back as|returns as|trails away|dies away with|dying with|then dies|it ends|it finishes|after that comes|the swallow brings|swallow and|as the finish|then the finish|later there's|finishes with|finishes on|finishing with|finishing on|finishes in|finished with|finished on|ends with|ends on|ends in|ending with|ending on|ends up|ended with|ended on|ends|leaves behind|leaves you with|leaves me with|leaves a|leaving a|leaving behind|left with|i am left with|i'm left with|im left with|what is left is|what's left is|whats left is|what stays is|what remains is|what lingers is|fades into|fades to|fading to|fading into|fades out on|fades out with|tails off into|tails off with|dies into|trails off into|trails off with|closes with|closes on|swallow it|swallowed|i swallow|swallowing|once it's gone|once it is gone|finish again|back to the finish|goes out on|goes out with|signs off with|lets go with`,
  },
  {
    says: "where",
    where: "finish",
    form: "stays",
    words: `lingers|linger|lingered|stay|stayed|stays with you|stays with me|stays on|remain|remained|hangs around|hang around|hangs on|hanging around|sticks around|stick around|persists|persist|persisting|persistent|clings|clinging|lasts|lasted|carries on|keeps going|goes on and on|goes on for ages|goes on forever|goes on for ever|endures|hangs about|hangs in there|lives on`,
  },
  { says: "where", where: "nose", form: "heading", words: `n|nz|ns|nos|nez|aro` },
  {
    says: "where",
    where: "palate",
    form: "heading",
    words: `middle|mid|attack|flavour|flavor|p|pal|plt|pl|t|m|tst`,
  },
  {
    says: "where",
    where: "finish",
    form: "heading",
    words: `end|after|close|exit|departure|f|fin|fn|fsh|aft`,
  },
  {
    says: "where",
    where: "whole",
    form: "verb",
    words: `overall|over all|all in all|altogether|all together now|on the whole|as a whole|in sum|in summary|to sum up|in total|taken together|nose to tail|from nose to finish|nose to finish|start to finish|from start to finish|verdict|summing up|conclusion|all told|everything together|as a package|as a drink|the whole thing`,
  },
  // A part named only to compare with it.
  {
    says: "idiom",
    words: `it ends up|ends up|stays the same|stay the same|stayed the same|stays late|stayed late|stayed up|stayed in|stayed for|stay for|finishes second|finishes first|finishes last|finishes third|finish first|finish last|the tail of a|tail of a|lips sealed|stays in the glass|stays put|in the barrel|in the cask|out of the cask|too long in|blows off|burns off|blow off|blows away|with the smoke alarm|left in the barrel|in flower|i burnt|i burned|we burnt|we burned|she burnt|he burnt|they burned|he smoked|i smoked|we smoked|she smoked|i toasted|we toasted|burnt the|burned the|burned down|burnt down|burns the house|the light goes|the light is|the light was|evening light|morning light|last light|first light|light falls|light fades|sun light|low light|in bloom|on the vine|rose garden path|give up smoking|want a cigarette|like a cigarette|need a cigarette|stone dead|stone deaf|heart of stone|out to grass|out to dry|hung out to dry|high tea|for all the tea|the tea lady|tea lady|tea room|tearoom|coffee morning|coffee date|bread bin|bread knife|honey bee|toffee nosed|toffee-nosed|sugar mouse|salt cellar|pepper pot|pepper mill|fig leaf|olive branch|nutcase|nut job|tough cookie|top banana|second banana|banana skin to|plum in the mouth|plum in his mouth|plum in her mouth|gooseberry between|playing gooseberry|play gooseberry|felt like a lemon|feel like a lemon|candy man|sweet shop owner|grapes of wrath|cool as a cucumber|carrot and stick|dangle a carrot|turnip of a|spill the|hot meal|hot bath|hot shower|hot drink|hot food|hot oven|cold tea break|warm bath|warm bed|warm coat|warm words|warm heart|warm smile|dry land|dry ground|dry towel|dry mouth in the morning|dry stone|rough cut|rough hands|rough sleep|soft landing|soft hands|soft pillow|soft rain|soft lighting|sharp corner|sharp bend|sharp eyes|round face|round glass|round window|heavy door|heavy curtains|heavy book|heavy boots|heavy metal|light sleeper|light rain|light jacket|light reading|light entertainment|rich tapestry|rich voice|deep voice|deep sleep|deep breath|deep end|deep water|deep pockets|bright side|bright spark|bright idea|bright morning|bright light|bright lights|bright eyes|bright red|bright yellow|bright orange|young couple|mature adults|complex man|simple soul|simple food|clean shirt|clean break|fresh sheets|fresh coffee pot|fresh snow|flat land|closed book|open book|open road|open sea|open water|open flame|open mic|polished shoes|polished up|balanced diet|delicate china|bold colours|mellow yellow|tired feet|tired legs|tired old|lively chat|lively table|lively debate|lively evening|never one for the|not one for the|not usually one for|never been one for|the peaty stuff|after the rye|or so they say|for something so|of all things|like the nose said|like the nose promised|eases into|softens into|settles into|melts into|mellows into|gives way to|giving way to|turns into|turns to|turning to|turned into|changes to|changes into|becomes more of|can't say no|before anyone is up|and up|wound up|as a rule|on about|going on about|puts on|put on|odds and ends|loose ends|at the end of the|the end of the|by the end of the|ends of the earth|all ends|make ends meet|noise outside|background noise|makes a noise|who knows|god knows|she knows|he knows|nobody knows|everyone knows|everybody knows|one knows|heaven knows|lord knows|goodness knows|no one knows|mother knows|knows what|knows how|knows best|knows that|knows his|knows her|knows where|knows why|after ten|after twenty|after a few|after a couple|after five|after half|after an|after the first|after the second|after the break|after midnight|after tea|after supper|after it has|after it had|after adding|after opening|after sitting|after resting|after i|after we|after he|after she|after my|after our|after his|after her|after so|after such|after being|after having|finish line|to a finish|i never finish|did not finish|didn't finish|never finished|throat clearing|sore throat|clear my throat|cleared my throat|lump in my throat|it opens|opens slowly|opens like|opens with|opens on|opens|shut up|shut the|clicking shut|door shut|after the others|after the other|after that one|after the rye|right after the|young wine|young red wine|sunday tea|cup of tea later|cups of tea later|tail end of|don't love|i don't love|dont love|no more so|no more than|my nose is blocked|under the nose|bad nose|no nose for|nose around|nosey|end of things|be all over it|hot whiskey|hot whisky|jacket potato|hot toddy made|oak like an overcoat x|alcohol free|by the end of the night|than the nose|than on the nose|than the palate|than on the palate|than the finish|than the nose suggested|than the nose suggests|unlike the nose|as on the nose|as the nose|as the palate|than it smells|than it smelled|than it tastes|than it smelt|as it smells|same as the nose|same as nose|echoes the nose|follows the nose|matches the nose|mirrors the nose|my nose is|nose is blocked|blocked nose|stuffy nose|runny nose|nose is running|turn up my nose|turned up my nose|under my nose|under your nose|hold your nose|to my taste|in good taste|in bad taste|good taste|bad taste|acquired taste|to my palate|cleanse my palate|palate cleanser|reset my palate|reset the palate|my palate is|tired palate|tasting notes|tasting note|blind tasting|tasting room|tasting flight|the tasting|at the tasting|this tasting|first tasting|finish the glass|finish my glass|finish my|finish the bottle|finish off|finish up|finished the|finished my|finished it|to finish the|to finish this|to finish my|i finish|i finished|we finished|word of mouth|mouth to feed|tip of my tongue|at the end of the day|at the end of the evening|at the end of the night|the end of the evening|end of the day|end of the night|end of an evening|end of the evening|end of the bottle|end up|dead end|weekend|in the end i|no end|on end|for minutes on end|after dinner|after lunch|after work|after all|after a while|after some time|after a few minutes|after ten minutes|after five minutes|after a bit|after a minute in the glass|after water|after adding water|after a drop of water|after the water|after the last one|after glass|after a moment|after breakfast|after that glass|after this|the day after|time after time|after which|look after|looks after|after each other|one after another|one after the other|soon after|shortly after|sip of water|a sip of water|drop of water|splash of water|drops of water|add water|adding water|with water|water brings|water helps|bit of water|touch of water|dash of water|no water|without water|no ice`,
  },

  // A flavour's word that is none here.
  {
    says: "idiom",
    words: `cherry on the cake|cherry on top|icing on the cake|frosting on the cake|piece of cake|takes the cake|takes the biscuit|apple of my eye|bad apple|rotten apple|go bananas|went bananas|going bananas|low hanging fruit|bear fruit|fruits of my labour|fruits of his labour|sweet of you|sweet of him|sweet of her|sweet of them|sweet spot|sweet tooth|sweet dreams|sweet nothings|home sweet home|short and sweet|sweet talk|sweet man|sweetheart|my sweet|how sweet of|hot day|hot night|hot summer|hot evening|hot weather|hot room|hot in here|hot outside|hot summer's day|hot afternoon|hot off the|hot topic|hot stuff|hot under the collar|hot potato|hot water|hot tub|hot plate|too hot today|so hot today|warm day|warm night|warm evening|warm room|warm weather|warm hands|warm my hands|warm the glass|warm it up|warmed it|warm it|warming the glass|warming up|warmed up|warm up|warm welcome|warm hand|warm outside|warm in here|warm kitchen|warm tonight|light of day|in this light|in the light|light the fire|light a|bring to light|light up|lit up|light in here|candle light|candlelight|by candlelight|daylight|moonlight|light bulb|lights|light switch|light touch|light hearted|light work|light pour|light lunch|light dinner|light supper|in light of|green light|heavy handed|heavy hand|heavy cold|heavy pour|heavy glass|heavy going|heavy rain|heavy heart|heavy day|heavy traffic|heavy bottle|full glass|full pour|full marks|full bottle|full stop|full day|full moon|full time|full story|full disclosure|full house|full measure|full attention|full circle|full credit|full size|full strength|full proof|full year|full week|full confidence|in full|full flight|glass full|half full|full belly|full stomach|i'm full|im full|i am full|too full|medium pour|medium sized|happy medium|medium rare|dry humour|dry humor|dry sense of humour|dry sense of humor|dry wit|dry january|dry run|dry glass|dry spell|dry comment|dry joke|dry day|dry weather|dry summer|dry remark|dry county|high and dry|dry clean|dry eyes|dry eye|run dry|ran dry|bottle is dry|rich history|rich people|rich man|rich uncle|rich guy|rich friend|rich list|get rich|if i were rich|if i was rich|rich coming from|that's rich|rich neighbour|fresh glass|fresh pour|fresh bottle|fresh start|fresh air|fresh water|fresh out of|fresh from|fresh eyes|fresh mind|fresh look|fresh palate|fresh sample|freshly poured|fresh sheet|clean glass|clean glasses|clean water|clean cloth|clean slate|clean sheet|clean break|clean up|clean bill|clean plate|come clean|clean the|cleaned the|glass was clean|glass is clean|round of|round two|round one|round three|second round|first round|next round|third round|last round|another round|my round|this round|all round|year round|round the|round here|round my|round his|round her|round table|round and round|gather round|passed round|time round|second time round|way round|other way round|come round|comes round|go round|goes round|round up|round off|rounds off|rounds it off|rounded off|turned round|walk round|round trip|sharp contrast|sharp knife|sharp intake|eight sharp|look sharp|sharp eyed|sharp tongue|sharp mind|sharp as a tack|sharp suit|soft spot|soft drink|soft drinks|soft spoken|soft music|soft chair|soft sofa|soft touch|soft voice|rough day|rough night|rough week|rough idea|rough guess|roughly|rough guide|rough patch|rough time|young man|young woman|young lad|young lady|young people|young ones|when i was young|young at heart|young son|young daughter|young couple|open the bottle|opened the bottle|open bottle|open it|opened it|open the|opened the|opened a|open a|freshly opened|just opened|open window|windows open|window open|door open|open door|open minded|open mind|open up the|open for|open question|open about|open since|been open|open bar|open air|kept open|eyes open|left open|an open|wide open|open house|open kitchen|flat out|flat share|my flat|the flat|in the flat|a flat tyre|flat tire|flat screen|flat cap|flat battery|flat pack|simple as that|simple enough|simple question|simple task|simple man|keep it simple|simple life|tired today|i'm tired|im tired|i am tired|tired eyes|bit tired|was tired|feel tired|feeling tired|tired evening|sick of|tired of|got tired|off sick|call in sick|feel sick|sick day|mature student|bold move|bold claim|bold choice|bold statement|bold enough|be bold|in bold|closed eyes|eyes closed|closed door|closed my eyes|closed distillery|shop was closed|been closed|closed down|mellow mood|mellow evening|mellow music|feeling mellow|old man|old friend|old friends|old bottle|old times|years old|year old|old school|old fashioned|old age|old money|old habits|good old|same old|ripe old|days of old|old fella|old chap|old boy|old girl|it's a date|its a date|blind date|first date|out of date|up to date|to date|what date|date night|date back|dates back|dating|date of|release date|due date|bottling date|save the date|date stamp|best before date|a toast|raise a toast|toast the|toasted the|mint condition|freshly minted|royal mint|nuts about|go nuts|goes nuts|went nuts|drives me nuts|drive me nuts|am nuts|i'm nuts|is nuts|nuts and bolts|in a nutshell|in a nut shell|hard nut to crack|tough nut|salt of the earth|pinch of salt|grain of salt|worth its salt|worth his salt|salt in the wound|on earth|what on earth|how on earth|down to earth|cost the earth|move the earth|the earth moved|heaven and earth|rose up|rises|smoke rose|rose coloured|rose tinted|i rose|pining for|pines for|sage advice|sage words|cut the mustard|keen as mustard|spice up|spice of life|spices things up|spice things up|sugar coat|sugarcoat|sugar rush|sugar daddy|cream of the crop|cream rises|butter me up|butter wouldn't melt|butter fingers|bread and butter issue|bread winner|breadwinner|bread maker|daily bread|big cheese|cheesy joke|say cheese|cheesy music|hard cheese|smoke and mirrors|where there's smoke|no smoke without fire|holy smoke|go up in smoke|smoke signals|smoke detector|full of beans|spill the beans|bean counter|egg on my face|walk on eggshells|good egg|bring home the bacon|save my bacon|small beer|cold turkey|gravy train|easy peasy lemon squeezy|buy a lemon|lemon of a|grape vine|grapevine|heard it through the grapevine|plum job|plum role|plum position|peach of a|peachy keen|just peachy|hi honey|my honey|honey bunch|thanks honey|honeymoon|honey trap|honeypot trap|sugar and spice|hay fever|make hay|hit the hay|haywire|needle in a haystack|last straw|short straw|straw poll|draw straws|barn door|barn dance|grass roots|grass is greener|keep off the grass|snake in the grass|turn over a new leaf|new leaf|leaf through|take a leaf|green with envy|green fingers|green thumb|village green|green party|green with|bowling green|going green|green bottle|green label|green glass|cup of tea|my cup of tea|not my cup of tea|cuppa|tea time|teatime|tea and biscuits|after tea|make tea|made tea|tea break|spill the tea|tea towel|coffee break|coffee table|coffee cup|coffee this morning|morning coffee|after coffee|over coffee|wake up and smell the coffee|have coffee|had coffee|too much coffee|leather bound|hell for leather|leather sofa in|saddle up|back in the saddle|on my high horse|high horse|dark horse|straight from the horse|horse race|horses for courses|hold your horses|gift horse|book club|by the book|book it|booked|in my book|read a book|good book|note book|notebook|on paper|piece of paper|paper cup|paper plate|write it on paper|paper bag|match made|no match|doesn't match|does not match|didn't match|perfect match|good match|match the|match for|football match|rugby match|tennis match|cricket match|watching the match|it matches|matched|set fire|on fire|fire away|fired|by the fire|near the fire|round the fire|around the fire|in front of the fire|next to the fire|fire was on|fire alarm|ready fire|under fire|fire up|fire drill|rubber stamp|burn the candle|burnt out|burned out|burning question|burn out|sun burn|burn calories|burns a hole|burnt my|burned my|got burnt|heat wave|heatwave|in this heat|the heat today|heat outside|heat of the day|heat of the moment|in the heat|heating on|heat was on|dead heat|turn up the heat|feel the heat|first bite|bite to eat|a bite of|bite my tongue|bite the bullet|bug bite|get a kick out of|kick out of|kick off|kicked off|kick start|kick back|kick in|kicks in|alive and kicking|sting in the tail|warm and fuzzy|cold feet|sock it|knock your socks off|knocked my socks off|socks off|smooth sailing|smooth talker|smooth operator|smooth jazz|smooth things|get a grip|get to grips|lose my grip|in the grip|grip the glass|thin ice|thin air|thick and thin|thin walls|thin end of the wedge|thick skin|thick as thieves|thick fog|thick glass|a bit thick|in the thick of|body of|nobody|somebody|everybody|anybody|over my dead body|body and soul|good spirits|in good spirits|high spirits|holy spirit|team spirit|spirits|spirit level|in the spirit|that's the spirit|the spirit of|spirit animal|kindred spirit|penny drops|penny dropped|pretty penny|worth every penny|penny for your|spend a penny|coin a phrase|other side of the coin|toss a coin|toss of a coin|flip a coin|stone cold|set in stone|leave no stone|stone's throw|rolling stone|rain check|raining|it rains|right as rain|come rain|rain outside|in the rain|rain against|earth shattering|ground breaking|raise the roof|on balance|hang in the balance|balance sheet|work life balance|lost my balance|new car keys|glued to|bottled|sealed|barrel proof|barrel strength|single barrel|barrel of laughs|barrel aged|bottom of the barrel|scrape the barrel|over a barrel|barrel number|barrel pick|cask strength|out of the barrel|the barrel was|straight from the barrel|rotten luck|metal spoon|game changer|fair game|beginner's game|game on|game night|board game|guessing game|play the game|meat and potatoes|meat of it|fishy business|plenty more fish|fish out of water|fishing for|drink like a fish|big fish|fish and|all at sea|sea change|overseas|sea legs|the beach with|on the beach|at the beach|to the beach|by the sea|at the seaside|to the seaside|the coast is clear|west coast|east coast|coast to coast|church bells|go to church|in church|at church|in the study|case study|house party|in the house|the house|house of|my house|our house|around the house|on the house|the pub|open fire in|plastic cup|plastic glass|new paint|paint a picture|paints a picture|oak tree|oak table|oak hollow|royal oak|oak street|oak road|oak room|oak door|oak bar|oak lane|apple store|apple watch|apple phone|orange jumper|orange juice carton|lime light|limelight|lime green|cherry pick|cherry picked|cherry picking|cherry red|rose gold|on the rocks|between a rock|rock solid|rock bottom|rock music|rocks|solid as a rock|rock on|rocks my|tack on|tacky|iron fist|iron man|steel yourself|nerves of steel|bury my head in the sand|line in the sand|dust off|dusted off|dusty shelf|dusty bottle|gather dust|gathering dust|dust settles|bite the dust|mud in your eye|name is mud|clear as mud|rooting for|square root|take root|couch potato|crack the|a tough cookie|smart cookie|way the cookie crumbles|cookie cutter|pie in the sky|eat humble pie|easy as pie|finger in every pie|fruit cake of a|nutty as|pea brain|like two peas|sausage fest|wet blanket|cotton wool|pull the wool|wax lyrical|waxing lyrical|wane|whole ball of wax|soap opera|soap box|soapbox|on my soap|hold a candle|light candles|lit candles|oil the wheels|burning the midnight oil|oil painting|fat chance|chew the fat|fat lady|fat cat|sweat it|no sweat|don't sweat|sweat the small|in a cold sweat|blood pressure|blood sugar|in my blood|runs in the blood|cold blood|bloody|balloon glass|glue stick|ink pen|ink blot|simple pleasure|rich tapestry|hot and bothered|hot or cold|sour mood|sour puss|sour face|to the bitter end|bitter cold|bitter rivals|bitter experience|bitter wind|bitter row|bitter sweet memories|bitter truth|bitter winter|warm memories|complex question|simple tastes|delicate matter|delicate question|delicate hands|delicate flower of a|gentle giant|gentle reminder|gentle man|hot date|tart up|tarted up|tang of regret|edge of my seat|on edge|cutting edge|edge of the|straight up guess|open secret|rye smile|wry|silk shirt|silk road|velvet rope|velvet curtain|velvet chair|oily rag|oily fingers|oily hands|tar with the same brush|feather|peaches and herb|malt whisky|malt whiskey|single malt|blended malt|malts|grain whisky|grain whiskey|single grain|rye whiskey|rye whisky|wheated|wheat whiskey|corn whiskey|is a rye|straight rye|ryes|grain bill|mash bill|pot still|against the grain|go against the grain|grain of truth|grain of sand|smoke free|smoke filled|smoke machine|cigar bar|cigar lounge bar|on the pier|at the harbour|woodwork|out of the woodwork|knock on wood|touch wood|dead wood|out of the woods|neck of the woods|barking up|hard as wood|spring flower show|tree tops|family tree|christmas morning|christmas eve|christmas day|at christmas|last christmas|for christmas|every christmas|christmas present|christmas party|before christmas|over christmas|merry christmas|this christmas|next christmas|hospital visit|in hospital|to the hospital|to hospital|at the hospital|works at the hospital|doctor says|at the dentist|to the dentist|dentist tomorrow|from the pharmacy|church hall|cold medicine i|taking medicine|library card|school desk job|beer garden|beers|beer first|before beer|cider house|had a beer|pub lunch|pickle myself|in a pickle|bit of a pickle|bay window|at bay|ports|pepper us with|peppered with questions|garlic bread|onion rings|curry last night|curry tonight|curry house|the curry|had curry|had a curry|after a curry|pizza|had cheese|cheese board|cheeseboard|cheese plate|had steak|had fish|fish and chips|bag of crisps|crisps|bowl of nuts|bowl of olives|cup of coffee|cup of tea earlier|mug of tea|tea earlier|breath of fresh air|short time|short while|short walk|short drive|in short order|a short one|short notice|for short|short story|short of breath|short pour|short measure|long time|long day|long story|long story short|long week|long night|long while|long ago|long way|long drive|long walk|long shift|long line|long journey|long nose|long legs|long drink|long list|as long as|so long as|before long|no longer than|long since|how long|long since gone|all day long|all night long|all evening long|long suffering|long haul|long shot|long gone|too long ago|long pause|long island|long breath|long look|long sip|long weekend|long lost|long overdue|last night|last week|last year|last time|last month|at long last|last of the|last drop|last sip|last glass of|to last|last orders|last but not least|last thing|last summer|the last of|last pour|last word|last bottle|stay up|stays up|stay with it|stay tuned|stay put|stay home|stay away|stay the night|remains to be seen|remains a|remains my|remains of|stick with|stick to|sticks to|sticks out|stick it|stuck to|fade out of|comfort zone|sea of faces|thin on the ground|quick sip|quick note|quick sniff|quick one|quick taste|quick look|quickly poured`,
  },
  {
    says: "idiom",
    words: `like it|i like|i love|i hate|don't like|dont like|do not like|i never like|never liked|i don't like|i dont like|i can't stand|can't stand|i'd like|would like|id like|like this one|like that|i like it|feel like|more like it|not bad|not half bad|not great|not my favourite|not my favorite|not for me|not my thing|not my style|not mine|no idea|no clue|no matter|no problem|no worries|no thanks|no thank you|no rush|no comment|no complaints|no fault|no faults|no bad thing|no big deal|no one|no good|no hurry|nothing wrong|nothing wrong with|nothing special|nothing else|nothing more|nothing to add|nothing bad|nothing new|nothing much|don't hate|dont hate|do not hate|don't hate it|don't care|don't worry|don't get me wrong|dont get me wrong|do not get me wrong|don't ask|don't let|can't wait|cant wait|can't believe|cant believe|cannot believe|can't put my finger|cant put my finger|can't place|cant place|can't name|cannot name|can't help|cant help|can't help but|can't remember|can't think|can't complain about|can't explain|can't describe|couldn't help|couldn't put my finger|won't lie|wont lie|not gonna lie|not going to lie|i won't lie|will not lie|wouldn't mind|wouldnt mind|wouldn't say no|wouldn't go so far|wouldn't change|don't remember|dont remember|don't understand|don't need|doesn't matter|doesnt matter|doesn't need|doesn't taste like|not long ago|not long|not much else|not much more|not much to say|not much going on|not a fan|not bad at all|not yet|not now|not today|not here for|not that i mind|not that it matters|not that i care|not often|not always|not everyone|not everybody|not alone|not expensive|not cheap|not unlike me|not a lot going on|not in a bad way|not in a good way|not that there's anything wrong|not my cup|not what i expected|isn't bad|isnt bad|isn't it|isnt it|doesn't it|doesnt it|don't you think|wasn't it|never had|never tasted|never been|never would have|never thought|never know|never seen|why not|more or less|more like|once more|any more for|no more for me|one more time|one more sip|one more|more than once|more than i|more to come|more please|another one|more often|more time|less than impressed|less is more|none the less|nonetheless|nevertheless|not withstanding|notwithstanding|nothing like|so so|and so on|so far|so there|so yes|so no|so that|so here|so now|so then|so first|so on|so what|so anyway|so we|so you|so my|so bear|ok so|okay so|right so|right now|right away|right then|right at|alright|all right|all evening|all day|all night|all of us|all of it|all of this|all of them|all that jazz|all the best|all the same|all the time|all i can say|all i get|all i got|all i can think|that's all|thats all|that is all|after all that|at all|all at once|first of all|above all|best of all|most of all|at most|most people|most of us|for the most part|most definitely|very best|very first|very last|very end|very top|very good|very nice|very pleasant|very well|very drinkable|very interesting|very lovely|really good|really nice|really like|really liked|really love|really enjoy|really enjoyed|really well|pretty good|pretty nice|pretty much|pretty decent|pretty sure|quite nice|quite good|quite like|quite sure|so good|so nice|so lovely|too bad|too good|good stuff|good whiskey|good one|good lord|good grief|good while|good for|a good while|great stuff|great whiskey|great value|big fan|big sip|big glass|big pour|big day|small glass|small sip|small pour|strong start|strong candidate|strong contender|deep breath|high hopes|high proof|high strength|low proof|little one|little ones|little sister|little brother|a little while|little while|bit of fun|bit of luck|a bit later|bit by bit|in a bit|clear winner|clear favourite|clear glass|all clear|crystal clear|clear now|to be clear|proper whiskey|proper dram|right up my street|right up my alley|mad for|crazy about|dead set|dead certain|dead sure|only one|only thing|extra point|extra points|added water|added a drop|adds up|adding to|better than|better with|gets better|getting better|the better|better now|that's better|even better|getting it|gets it|getting there|gets going|some time|some point|some people|some of us|some reason|some kind of|some sort of|some more|some day|some way|someone|something else|something nice|something about|something wrong|something off|something i can't|something i cant|something going on|is that so|that is so|is it me|is it just me|i think so|i think this|i think i like|i think it's great|i think that's it|think about|think of|makes me think|makes me think of|think back|almost there|almost done|almost finished|almost empty|might as well|could well|could drink|could be worse|could be better|might buy|would buy|kind of whiskey|kind of you|sort of whiskey|sort of day|the kind of|sort it out|that kind of|something to|or so they|either way|me either|same again|the same way|same time|at the same time|same house|same family|same again please|down to|come down|calm down|write down|wrote down|put down|sit down|sat down|upside down|up and down|turn it down|dies hard|gone off to|has gone to|have gone to|gone to bed|gone home|gone wrong|gone through|gone by|going going gone|missing out|missing something|something is missing|something missing|something's missing|lost for words|lost count|at a loss|lost my|lost on me|absent minded|absent friends|vanish without|wrong with|right or wrong|wrong glass|i could be wrong|could be wrong|might be wrong|may be wrong|i'm wrong|im wrong|i was wrong|if i'm wrong|not wrong there|sorry about|sorry to|sorry for|i am sorry|i'm sorry|sorry i'm|sorry that|sorry if|i'm afraid|wait for|wait until|wait a|wait and|worth the wait|instead of sugar|hold on to|holds on|hang on to|nope nope|correction fluid|pardon the|excuse the|excuse my|here and there|over here|down here|here we go|here goes|here is|here's|heres|come here|up here|someone here|everyone here|people here|this evening|this morning|this afternoon|this week|this year|like this|this and that|this or that|is this|in this|for this|`,
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
    words: `eternally|lasting ages|a long one|a mile long|miles|really long|very long|super long|hours long|minutes long|slow|slowly|big long|length for days|to the horizon|drawn out|stretched|stretches|stretches out|runs and runs|runs on|rolls on|marches on|carries on|keeps on|trails on|extends|extensive|interminable|unending|unhurried|infinite|generous|epic|tenacious|lang|long|long lasting|longlasting|lengthy|endless|endlessly|never ending|neverending|everlasting|eternal|forever|for ever|for days|for ages|ages|for hours|for minutes|hours|minutes|persistent|enduring|lasting|prolonged|extended|keeps coming|doesn't stop|does not stop|does not end|won't end|never stops|does not leave|a good while|a long time|for a long time|for a long while|a long while|a good long while|a very long time|minutes later|for minutes on end|all evening|all night|until tomorrow|till tomorrow|lingering|linger|time after time`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `goes and goes|just goes on|goes on for|goes on and|and goes on|runs on and on|on for ages|stays with you till|stays with me till|all the way home|till morning|keeps you company|outlives|outlived|outlasted|keeps on and on|i can still taste it|i can still feel it|can still feel it|is still with me|still with me|still on my tongue|still in my mouth|won't leave me|doesn't leave me|still here|it is still there|it's still there|stays forever|stays for ever|stays for hours|stays on the tongue|stays in the mouth|stays long after|remains for a long time|remains long|remains for minutes|remains a long time|it remains|stay long|stay in mouth|stays in mouth|long time in the mouth|long in the mouth|hangs about|hanging about|clings on|clings to|hangs on for|hung around|lingered on|it lasts|and lasts|really lasts|lasts and|lasts to|lasts until|lasts till|lasts through|lasted ages|lasted forever|goes on and on|go on and on|on and on|went on and on|goes on|goes on for ages|goes on for ever|goes on forever|keeps going|keeps on going|doesn't end|doesn't quit|won't quit|never ends|never quits|does not want to leave|doesn't want to leave|doesn't leave|stays a long time|stays long|stays for a long time|quite a while|still there after|still there|still tasting it|still going|refuses to leave|stays with you|stays with me|stays and stays|lingers and lingers|lingers on|hangs around|hangs on|sticks around|into next week|marathon|last forever|lasts forever|lasts and lasts|lasts ages|lasts for ages|lasts a long time|lasts long|lasts very long|lingers|stays|linger|lingered|last long|lasted|persists|hang around`,
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
    words: `not much length|not a lot of length|no great length|lacking length|little in the way of length|short on length|`,
  },
  {
    says: "length",
    strength: 0,
    stance: "absent",
    alone: true,
    words: `finish is nowhere|finish is absent|where's the finish|what finish|finish none|no length|no length at all|finish is missing|finish is not there|finish isn't there|there is no finish|there's no finish|not a finish|no after taste|no finish|no finish at all|nae finish|no real finish|without finish|no aftertaste|no finish to speak of|hardly a finish|not any finish|no finish whatsoever|zero finish`,
  },
  {
    says: "length",
    strength: 6,
    alone: true,
    words: `goes on a fair while|goes on a while|goes on for a while|lasts a while|lasts a good while|stays a while|stays for a while|lingers a while|lingers for a while|hangs around a while|moderate length|medium length`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `leaves early|then it's gone|then it is gone|and it's gone|and it is gone|it just disappears|nothing after|over before you know it|doesn't hang about|gone already|already gone|gone the moment|vanishes the moment|gone as soon as|doesn't stick around|does not stick around`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `won't leave|wont leave|does not leave me|no end to it|with no end|takes its time leaving|takes its time to leave|in no hurry|still tasting|still taste it|can still taste it|still there now|there for minutes|lasts minutes|lasts for minutes|long after the glass|long after i swallow|long after you swallow|goes on for minutes|stays for minutes|lasts an age|goes on an age|outlasts|outstays|keeps coming back|won't let go|never leaves|long after it's gone`,
  },
  { says: "length", strength: 6.2, stance: "more", words: `longer|lengthier|longer than` },
  {
    says: "length",
    strength: 6.2,
    words: `medium long|medium to long|moderately long|fairly long|longish|quite long|reasonably long|a while|for a while|lasts a while|a fair while|lasts well|lasts nicely`,
  },
  {
    says: "length",
    strength: 5,
    words: `moderate|average|reasonable|middle length|middling length|ordinary|neither long nor short|not long not short|normal|standard length|medium|medium length|medium sized|moderate length|average length|middling|of medium length|mid length`,
  },
  {
    says: "length",
    strength: 4.2,
    stance: "less",
    words: `shorter|not as long|not so long|less long|quicker`,
  },
  {
    says: "length",
    strength: 3.4,
    words: `medium short|shortish|fairly short|medium to short|on the short side|`,
  },
  {
    says: "length",
    strength: 2,
    words: `early|quickly|soon|in a hurry|hurried|rushed|none to speak of|a short one|clipped|truncated|cropped|nonexistent|non existent|not there|gone|is gone|disappears|vanishing|disappearing|dies off|dies away|drops away|falls away|fades|faded|runs out|rapid|snappy|swift|in a blink|a blink|a flash|momentary|ephemeral|transient|peters out|fizzles out|fizzles|tails off|evaporates|collapses|gives up|nothing to speak of|not much of a|little to speak of|short|brief|quick|abrupt|fast|curt|short lived|shortlived|fleeting|over before it starts|over before it began|dies quickly|dies fast|dies at once|died quickly|dies|drops off|drops dead|falls off|falls off a cliff|drops off a cliff|cuts off|cut off|cuts short|cut short|stops dead|stops short|stops|ends quickly|ends fast|ends abruptly|ends suddenly|ends too soon|fades fast|fades quickly|fades soon|fades away quickly|fades out quickly|disappears quickly|disappears fast|disappears at once|vanishes quickly|vanishes|vanishes at once|vanishes fast|not lasting|not long|not very long|not a long|isn't long|isnt long|isn't very long|is not long|is not very long|leaves quickly|leaves fast|goes quickly|goes fast|poof|no length|little length|lacks length|too short|sudden`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `gone|gone in|gone so fast|gone so quickly|gone before i|gone before you|it's gone before|gone by the time|gone like that|disappears before|over before i|over before you|vanishes before|gone straight away|gone right away|gone immediately|gone in an instant|gone instantly|over in seconds|over in a second|does not stay long|doesn't stay very long|does not last very long|no lasting|doesn't go on|does not go on|drops off a cliff|falls off a cliff|dies on the tongue|dies in the throat|stops like a|leaves too soon|left too soon|leaves quickly|leaves fast|leaves in a hurry|leaves at once|bye bye|and goodbye|says goodbye|runs away fast|gone in seconds|gone in a second|gone in a flash|gone in no time|gone quickly|gone at once|gone before you know it|gone before you've swallowed|gone before you've swallowed it|gone before you swallow|gone too soon|over quickly|over too quickly|over too soon|over in a flash|doesn't last|doesnt last|does not last|doesn't last long|does not last long|doesnt last long|doesn't linger|does not linger|doesnt linger|doesn't stay|does not stay|doesnt stay|doesn't stay long|does not stay long|doesn't hang around|does not hang around|never lingers|blink and you miss it|blink and you'll miss it|blink and it's gone|no staying power`,
  },
  { says: "seconds", words: `seconds|second|secs|sec|`, unit: 1 },
  { says: "seconds", words: `minute|minutes|min|mins`, unit: 60 },

  // Between flavours.
  { says: "join", join: "and", words: `and|&|plus|also|as well as|and also|and some|und|et` },
  {
    says: "join",
    join: "with",
    words: `with|along with|alongside|together with|followed by|next to|on top of|under|beneath|underneath|behind`,
  },
  {
    says: "join",
    join: "or",
    words: `or|nor|or maybe|or perhaps|or even|or possibly|neither|or is it|or was it|or could it be|or rather like`,
  },
  {
    says: "break",
    words: `than i expected|than expected|than i thought|than i remember|than i remembered|than it looks|than i thought it would be|than you'd think|than you would think|than i'd like|than i would like|than most|than usual|than i like|than anything|but|yet|though|although|however|whereas|while|because|which|except|only that|instead i get|until|unless|if|when|where|who|even though|so now|than expected`,
  },
  {
    says: "start",
    words: `i|it|it's|its|there|there's|theres|he|she|they|we|you|that's|thats|now|first|second|later|next|finally|eventually|i'm|im|i've|ive|i'd|i get|i find|i have|it has|it is|that is`,
  },
  {
    says: "glue",
    words: `in it|to it|about it|in there|of it|with it|for it|on it|in him|in her|to her|in here somewhere|somewhere in it|underneath it|under it|behind it|going on|somewhere|in the mix|in the middle of it|at the start|at first|in places|here and there|to begin|to begin with|at the front|up front and|um|uh|er|erm|hmm|hm|ah|oh|yeah|yes|you know|well|so|ok|okay|honestly|literally|basically|actually|let's say|as it were|one could say|how we say|how do you say|in my opinion|for me|again|a|an|the|of|some|any|this|that|those|these|its|their|my|your|his|her|our|very|such|kind|type|sort|note|notes|like|more|bit|o|on|in|to|from|sweet|ripe|fresh|dark|light|old|new|big|juicy|freshly|real|good|nice|warm|soft|dried|cooked|sticky|thick|thin|lovely|single|whole|own|same|few|couple|slice|slices|ribbon|piece|kind of|sort of|type of|of the|in the|on the|all|really|quite|just|even|as|being|bits|other|another|wild|wet|dusty|dry|hot|red|green|black|white|yellow|brown|gold|golden|bright|pure|raw|well|overly|particularly|about|at|by|for`,
  },
  {
    says: "link",
    words: `is|was|are|were|be|been|being|has|have|had|seems|seem|seemed|feels|feel|felt|get|got|becomes|become|became|comes|came|come|goes|turns|turned|tastes|smells|appears|looks|'s|feeling|makes|just|quite|rather|really|now|also|still|already|almost|completely|totally|entirely|all|a|the|it|that|there|through|out|of|here|again|though|at|first|pretty|much|bit|to|me|you`,
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
  pure: null,
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
export const SHY = `date|match|matches|book|books|paper|horse|coin|blood|rain|root|roots|sand|metal|pipe|study|loft|church|game|spirit|fire|kick|layered|open|young|deep|tight|sage|bay|mace|pier|shell|house|stone|tack|rock|iron|steel|cave|farm|rocket|fudge|leek|grip|bite|bites|nip|hug|sting|stings|penny|pennies|sheep|goat|sick|sock|socks|feet|balloon|candle|candles|carpet|ink|fuel|glue|laundry|garden|plant|stem|hedge|reed|forest|tree|twig|bark|timber|pencil|workshop|attic|museum|piano|violin|antique|library|coal|hearth|fireplace|beach|shore|harbour|harbor|dock|sea|ocean|coast|fish|damp|cake|pie|polished|rough|sharp|basic|simple|flat|closed|crisp|crisps|chips|bright|confused|messy|raw|linear|booze|beer|pub|hospital|dentist|medicine|pharmacy|doctor's office|christmas|cloth|plastic|rope|electric|glow|numbs|heat|burned|burnt|complicated|round|straightforward|straight forward|rugged|hive|nectar|bakery|brewery|petrol station|gas station|paint|pond|steam train|pool water|artificial|vodka|tequila|sausage|beef|chalk|glides|bar of soap|yoghurt|grain|malt|mineral water|baking|mash|dust|polish|drain|drains|balance|harmony|satin|velvet|gravy|lean|lush|tired|liquorice allsorts|shut|shut down|shavings|varnish|lacquer|leaf|leaves|rye|green leaf x`;

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
