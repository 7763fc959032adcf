import type { Said } from "./language.ts";

/**
 * English phrases that say how strong, whether, where and of which glass. Lower case, without accents or hyphens; how lists
 * are written: language.ts. Plurals follow of themselves. Strengths are on the scale of 0 to 10 where a word without a degree is 5. All of it: common practice, no source.
 */
export const PHRASES: readonly Said[] = [
  // How strong. "of" phrases hold for a list, words before a flavour for one.
  {
    says: "degree",
    strength: 1.5,
    of: true,
    words: `breath/crumb/echo/faint_hint/fleeting_hint/flicker/ghost/glimmer/memory/merest_hint/rumour/shadow/slightest_hint/speck/suspicion/thimble/thimbleful/tiniest_bit/tiny_bit/trace/wee_bit/whisper/wisp of|far off`,
  },
  {
    says: "degree",
    strength: 2.2,
    of: true,
    words: `minimal|background/background_note/bit/biteen/blush/breeze/brush/crumb/curl/curling/dab/dash/dot/drap/dribble/drizzle/drop/dusting/faint_notes/faint_trace/filament/filigree/film/fine_thread/flick/flutter/gauze/ghost_note/glimpse/grating/hint/hum/kiss/light_notes/lightest/little/murmur/nip/nod/not_a_lot/not_much/nuance/pinch/plume/point/prickle/puff/scrap/scrape/shade/slither/sliver/small_amount/small_drop/small_sup/smatter/smear/smidge/smidgen/smidgeon/smirr/soft_edge/soft_notes/splodge/spot/sprinkle/sprinkling/squirt/stain/subtle_notes/suggestion/tad/tait/teaspoon/tickle/tinge/tingle/tiny_amount/tiny_touch/touch/traces/trickle/twinge/undercurrent/undertone/veil/wee_drop/wee_tait/whiff/wink of|bit of a|bit_of/hint_of/touch_of the|dusting|hint|hinting/hints at|lick o/of_soft|lightest|nod to|only some|trace`,
  },
  {
    says: "degree",
    strength: 2.2,
    words: `a bit/breath/dash/flash_of/flicker/ghost/hair/lick/little/nip/pinch/shade/shadow/smidge/smidgen/suggestion/suspicion/touch/trifle/wisp|almost/nearly/next_to no|an echo|/an occasional|at a push|background|barely /detectable/perceptible/there|bit|bit_of_a_hint/minute_amount/smattering/soupcon of|deep/way down|delicately|dim|dimly|discreet|discreetly|distant|distantly|/ever_so slightly/slight|/ever_so/somewhat/sort_of faint|faded|faintest|faintly|feeble|feebly|fleeting|fleetingly|from afar|gentlest|gently|hardly /a/a_hint_of/a_trace_of/any/there|hinted|if you_look/you_look_for_it|in small_amount/the_distance|just about/enough/perceptible/the_one|lightly|little bit/tiny|low /level|lower|mild|mildest|mildly|minor|modest|mostly absent|muted|not a_great_deal/a_huge_amount_of/a_lot/a_lot_of/a_ton_of/a_whole_lot_of/heaps_of/loads_of/masses_of/much/tons_of/too_much|only just|pale|poco|polite|politely|/precious/tiny/too/very little|quiet|quietly|reserved|restrained|scant|scarcely|shy|sl|slightest|slt|smallest|softly|/some small|subtle|subtly|tad|tame|the ghost_of_a/merest/odd/tiniest|thinly|timid|timidly|tiny|touch|trace|un peu|underneath it all|understated|vague|vaguely|way back|weak|weakly|wee|whisper`,
  },
  {
    says: "degree",
    strength: 1.4,
    back: true,
    words: `barely there at all|extremely/really/so/terribly/very faint|very low/slight/subtle/weak`,
  },
  {
    says: "degree",
    strength: 2.2,
    back: true,
    words: `a bit/hint/little/long_way_back/long_way_off/touch|/almost hidden|almost/nearly nothing|and hardly|around_the/at_the/on_the/round_the edges|at a_pinch/a_stretch/the_margins/trace_level|barely/just perceptible|behind it all|but only just|but/ever_so/only/there_but faint|/but/just barely|by a whisker|come_and/seems_to_come_and go|comes and goes|deep down|deep/down/far/right/way/way_down at_the_bottom/in_there|drifts by/past|ever so slight|faint_but/just_about/small_but/tiny_but there|faintly|far behind|far/miles/tucked away|faraway|flickers|flits past|for a_moment/a_second/an_instant|had_to/have_to dig|hardly noticeable|hiding|if i_concentrate/i_dig/i_look_hard/i_try/you_concentrate/you_give_it_time/you_go_looking/you_look_hard/you_squint/you_wait|in background/passing/the_background/the_corner/the_distance/the_shadows/the_wings/traces|isn't overpowering|isn't/it's_not/it_is_not/it_isn't/none_too/not/not_too/not_very strong|isn't/it's_not/it_isn't loud|just a touch|less than you'd think|lurking|murmurs|no more_than_a_hint/more_than_that|not a_lot/a_ton/dominant/heaps/loads/loud/masses/overpowering/overwhelming/tons|nothing more|on the horizon|only a_little/just/slightly|peeking/peeks through|scarcely|slightly|somewhere in the distance|then gone/it_hides|trace only|way in_the_back/off|when i look for it|whispers`,
  },
  {
    says: "degree",
    strength: 5,
    of: true,
    words: `bite/core/current/decent_bit/decent_whack/dollop/dose/element/fair_bit/fair_whack/flavour/good_bit/goodly_amount/handful/heart/helping/hug/kick/knob/lash/layer/line/lovely_bit/measure/nice_amount/nice_bit/note/piece/portion/right_amount/scattering/seam/serving/side/slice/splash/spoon/spoonful/squeeze/strand/streak/stripe/teaspoonful/thread/twist/vein/wedge of|certain|good dollop|just enough|shade/touch more|some`,
  },
  {
    says: "degree",
    strength: 5,
    words: `average|decent|fair|fairly|middling|moderate|moderately|nicely|noticeable|noticeably|pretty|quite /a|rather|reasonable|reasonably|respectable|somewhat|sufficiently`,
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
    words: `burst/chunk/generous_helping/good_helping/good_measure/good_slug/good_whack/gust/healthy_dose/hit/hunk/layers/mouthful/mouthfuls/ripple/rush/shot/slab/slug/solid_hit/stream/surge/waft/whoosh of`,
  },
  {
    says: "degree",
    strength: 7.8,
    of: true,
    words: `a lot|a_bunch/a_good_deal/a_ton/a_whole_lot/absolutely_full/abundance/alot/an_abundance/an_awful_lot/any_amount/armful/avalanche/awful_lot/bags/bang/barrel_load/barrow/barrowload/basket/basketful/bellyful/big_dollop/big_hit/big_old_hit/big_spoon/big_spoonful/big_whack/blast/boatload/bomb/bucket/bucketful/bunch/cartload/cascade/choc_full/chock_full/everything_smells/everything_tastes/explosion/fat_dollop/fat_slab/fistful/flood/full/glut/gobs/good_deal/good_lashing/great_deal/great_dollop/great_gobs/great_slabs/hammer/hatful/heap/heaps_and_heaps/hell_of_a_lot/hurricane/infused_with_a_lot/lashings/layer_upon_layer/load/lorryload/lot/lots_and_lots/mass/mess/mountain/no_end/no_lack/no_shortage/ocean/oodles/overdose/overload/pile/pile_up/plethora/punch/quite_a_bit/quite_a_lot/reeks/riot/river/sack/sackful/screams/sea/shed_load/shedload/skipful/slabs/slap/so_full/stacks/stinks/storm/thump/tide/ton/tonne/torrent/truckload/tsunami/wall/wallop/wave/whack/whole_load/whole_lot/whole_mess of|abundant|alive/all_over/awash/brimming/bursting/choked/clogged/covered/crammed/crowded/dense/dripping/filled/heaving/heavy/laden/lit/loaded/overflowing/overrun/packed/piled/rammed/rife/ripe/saturated/stuffed/swamped/teeming/thick with|all about/i'm_getting_is/i_can_find_is/i_can_smell_is/i_can_taste_is/i_get_is/of_the/that|alot|awash/caked/coated/covered/drenched/drowning/overflowing/plastered/rich/saturated/smothered/soaked/steeped/swimming in|becomes/is/it's/it's_just/it_is/it_was/its/was all|buckets|dominated/driven/led/overpowered/overrun/overwhelmed/ruled/swamped by|everything is/was|/far_too/so/too/very much|full/heavy/high/long/strong on|great big|heaps|loads|lotta|more and more|nothing but/else_but/more_than|nowt but/else_but|only thing i get is|oozes|oozing|plenty|so/too many|tons|very much the|wall to wall`,
  },
  {
    says: "degree",
    strength: 7.8,
    words: `/a very|/a_bit/a_little/a_touch/much/slightly too|a_bit_too/a_little_too much|absolutely|abundant|all /kinds_of/the|amazingly|ample|awfu|awfully|bags|big old|biggest|blazing|bloody|bold bold|brutal|brutally|chock full of|colossal|concentrated|crazily|crazy|deep|deeply|densely|dominant|dominating|dripping|eleven|enormous|enough to|especially|exceedingly|exceptionally|excessive|excessively|explosive|extreme|extremely|fair reeking|ferocious|fierce|fiercely|frighteningly|full /blown/fat/on/throttle|gey|giant|gigantic|great|/great/proper big|heady|heavily|hefty|hella|high|huge|hugely|immensely|in your face|incredibly|insane|insanely|insistent|intense|intensely|intensive|lashings|loud|loudly|lush with|mad|madly|major|majorly|masses|massive|massively|mega|mighty|molto|monstrous|monumental|more than_a_bit/than_a_little|mucho|muito|muy|nothing if not|noticeably more|obscenely|oodles|outrageously|over the top|overly|overpowering|overpoweringly|overwhelming|overwhelmingly|particularly|piercing|plenty|potent|powerful|powerfully|prominent|pronounced|properly|pulsing|pungent|pure dead|raging|rampant|really|relentless|relentlessly|remarkably|richly|ridiculously|roaring|robustly|screaming|sehr|serious|seriously|shockingly|so|solidly|staggering|staggeringly|stonking|striking|strikingly|strong|strongest|strongly|stupid|stupidly|super /duper|terribly|thick|thickly|thumping|thundering|too much of the|totally|tremendously|tres|turbo|ultra|unapologetic|unapologetically|unashamedly|unbelievably|unmistakable|unmistakably|unmistakeable|unmistakeably|unrelenting|utterly|v|vast|veramente|violent|vivid|vividly|whacking|what a|whopping|wildly`,
  },
  {
    says: "degree",
    strength: 7.8,
    back: true,
    words: `++|a lot|a_lot_of/all_over/all_through/and_loads_of/and_lots_of/and_plenty_of/can't_miss/heaps_of/loads_of/lots_of/masses_of/plenty_of/quite_a_lot_of/right_through/tons_of/you_can't_get_away_from it|above/buries/covers/eats/in_front_of/on_top_of everything|all day/day_long/night_long/the_way/the_way_through/through|all/has_taken/knocks_me/knocks_you/takes/took over|and then some|as butter/silk|at full volume|before anything else|bellows|big/the_whole time|booms|brings/that_makes tears|bullies|by the_bucket/the_bucketful/the_bucketload/the_shovel/the_shovelful/the_spadeful|can't be missed|centric|comes_at/coming_at/jumps_at/kicks/punches/screaming_at/slaps/smacks/wallops you|coming out_of_its_ears/out_of_my_ears|does_not/doesn't quit|dominant|dominate|drenches|driven|drowning|drowns|everywhere /you_look|explodes|explosion|fills the_glass/the_mouth/the_room|first last and always|flooding|floods|for days|for_sure/really strong|forward|from start_to_finish/top_to_bottom|front and_center/and_centre|galore|/goes_off_like_a bomb|hard_to/impossible_to/you_can't miss|heaps|hits hard/like_a_train/like_a_truck/me_hard/you_hard|hums loudly|in abundance/bucketloads/charge/spades|in charge|is big/dominant/dominating/huge/intense/king/massive/no_joke/overpowering/overwhelming/powerful/strong/the_star|jumps/leaps/pours out|laden|led|like crazy/dust/mad/paper|loads|loads_of/lots_of/tons_of them|lots|loud and clear|makes my_eyes_water/your_eyes_water|never stops|on full/steroids|out of the glass|out_the/up_the wazoo|overload|overpowering|overpowers|overwhelms|plenty|punches|roars|rules|runs riot/the_show|runs things|screams|shouts|smothers|so much|steals the_show/the_scene|swamps|takes centre_stage/center_stage/charge/the_floor/the_lead/the_reins/the_wheel|takes no_prisoners/up_the_whole|the whole way|thick and heavy|through and through|to the_hilt/the_max/the_rafters|tons|too dominant/loud/much/present/strong|turned up/up_to_eleven|unmissable|very intense/loud/much/powerful/present/strong|won't let go|you could cut with a knife`,
  },
  // "very smoky" and "very faint": pushes away what it stands before.
  {
    says: "amplify",
    words: `awfully|extremely|incredibly|just|only|quite|real|really|so|such /a|super|terribly|very`,
  },

  // Not there.
  {
    says: "not",
    words: `<cannot> smell /any|<cannot> taste /any|<nope> smell of|<nope> taste of|absence/absent/bereft/clean/clear/cleared/devoid/empty/for_want/free/in_place/instead/never_a_hint/never_a_trace/never_a_whiff/no_hint/no_sign/no_suggestion/no_trace/no_whiff/none/not_a_bit/not_a_breath/not_a_dot/not_a_drop/not_a_hint/not_a_puff/not_a_scrap/not_a_speck/not_a_spot/not_a_touch/not_a_trace/not_a_whiff/not_so_much_as_a_hint/not_so_much_as_a_whiff/robbed/shorn/stripped/void of|ain't|all_that's_missing/only_thing_missing/what's_missing/what_is_missing is|anything but|aren't|bugger/lost/sod all|bye bye|doesn't/didn't/does_not/did_not taste_like/smell_like|what_happened_to/where_did the|can't /say_i_get/say_i_got/say_there's|can't_find/don't_find/don't_get/has_not/have_not/i_can't_find/i_don't_find/i_don't_get/i_don't_have/i_don't_see/missing/nary/not/not_especially/there_is_not any|can't say i taste|can't_say_i/fail_to/failed_to/i_can't/i_do_not/i_don't find|cannae|could not|couldn't|cross_out/delete/forget/gone/gone_are/gone_is/gone_is_all/i_was_wrong_about/ignore/lost/miss/missing/scratch/so_is/so_was/so_were/strike/take_back/was_wrong_about/where's/where_are/where_has/where_is/withdraw/wrong_about the|didn't|didnae|dinnae|doesn't|don't|far/free from|forget_what_i_said/ignore_what_i_said/take_back_what_i_said about|/gone without|hadn't|hardly what_i_would_call/what_you'd_call|hasn't|haven't|i do_not_feel/do_not_get/don't_feel/don't_get/don't_have/smell_no/taste_no|isn't|isnae|lack|lacking|looked_in_vain/searched_in_vain for|lost that|minus|nae|nary a|neither|never|nil|no /longer/longer_stand_by/more|none|nor|not /a_bit/at_all/one_bit/so_much_as_a/the_least_bit/the_slightest/the_slightest_bit|nothing|nowhere near|rather than|sans|wasn't|weren't|won't|wouldn't|zero`,
  },
  {
    says: "gone",
    words: `<who> <noted> <isnt>|absent|/all/are/has/have/is/was gone|aren't/wasn't there|below threshold|blew/blown/burned/burnt off|buggered/cleared/slipped/wandered off|can't be_found/find_any_here/find_it/i_find|can't_find/don't_find/don't_get/i_can't_find/i_don't_find/i_don't_get/i_don't_see/there_aren't/there_isn't/there_wasn't any|cleared|clears|couldn't find it|/crept/died/dies/drifted/ebbed/goes/gone/melted/melts/ran/slipped/wandered/went away|disappear|disappeared|disappears|does not exist|doesn't exist/show|don't think so|escapes me|evaporated|fails to appear|/find/get/got none|fled|gone completely/now|got lost|has/have/packed_up_and left|i can't_find/do_not_feel/do_not_find/do_not_get/do_not_smell/do_not_taste/do_not_think_so/don't_feel/don't_find/don't_get/don't_have/don't_smell/don't_taste/found_none|is lost/missing/not_felt/not_noticeable|isn't felt/here/noticeable/there|it is not felt|left the building|lost now|missing|naewhere|never appeared/appears/arrives/came/comes/materialises/showed_up/shows_up/turned_up/turns_up|nil /detected|no i_don't/it_isn't/longer/longer_there/more/sign/sign_of_it/there_isn't/trace/trace_of_it|none at_all/of_it|nope|not a_bit/a_bit_of_it/a_hint_of_it/a_sign_of_it/a_trace/a_trace_of_it/a_whiff_of_it/a_wisp/any/any_more/anymore/at_all/detectable/detected/felt/found/here/noticeable/one_bit/perceived/perceptible/present/there|nowhere|undetectable|undetected|vanish|vanished|vanishes|zero|is/are dead|i'd/i_had lost it|can't see it|did_a/done_a bunk/runner|died|didn't find it|faded away_completely/away_entirely/completely/to_nothing|fell/fallen away|found none|is a_no_show/lacking|never showed|wore/worn off|does_not/doesn't/didn't have_it|hasn't_got/not_having it`,
  },
  {
    says: "gone",
    retracts: true,
    words: `i imagined/made_up|i_found_was/i_had_was/i_mentioned_was/i_noted_down_was/i_noted_is/i_noted_was/i_put_down_was/i_put_was/i_said_was/i_thought_i_had_was/i_wrote_down_was/i_wrote_is/i_wrote_was/is/noted_before_was/noted_earlier_was/noted_was/was/were wrong|i_take_it/i_take_that back|never was/was_there|scrap that one|was wishful thinking|must_have_been/was the glass|i_retract/i_withdraw it/that|/and/i take it back|was a_mistake/an_error/false/imaginary/my_imagination/my_mistake/never_there/nonsense/not_real/rubbish`,
  },
  {
    says: "less",
    words: `/a_bit/a_little/a_lot/far/less_and/much/slightly/way less|aren't/nowhere_near as|calms/softens/tames the|could_do_with/could_use/i'd_like/need/want/wish_it_had/wish_there_was/would_like more|dampens|doesn't have_as_much/have_the_same|dulls|fainter|fewer|gentler|hides|isn't as/half_as/quite_as/so/that/too/very|lesser|light/lighter/low/short/shy on|loses its/some/the|losing|lost its/some|low in|masks|milder|minder|mutes|never too/very|no more than|no so|not all_that/as/as_much/enough/especially/exactly/half_as/hugely/more/nearly_as/overly/particularly/quite/quite_as/so/so_much/terribly/that/the_same/too/very|quieter|reduced|short of|softer|subdues|tamed|toned/tones down|too little|under|wasn't as/that/too/very`,
  },
  {
    says: "lessened",
    words: `all_but/almost/half/mostly/nearly gone|backed/backs/dropped/drops/tailed/tails off|/calmed/calms/died/dies/dying/is/settled/settles/toned down|calmer|diminished|diminishes|dimmed|dims|down a notch|drops/faded/fades/falls away|drops/pulled/pulls/stepped/steps back|eased|eases|ebbing|ebbs|faded a bit|fades /a_bit|fading|fainter|gentler|gentler/lighter/not_as_strong/quieter/softer/weaker now|/has/have faded|less /now/obvious/pronounced/so/strong/than_before|lessened|mellowed|not as_much/as_much_as/as_strong/so_strong|quieter|receded|recedes|receding|reduced|retreated|retreats|shrinks|shrunk|softened|softens|softer|subdued|subsided|subsides|waned|wanes|waning|weaker`,
  },
  {
    says: "more",
    words: `/a_bit/a_little/a_lot/even/far/grows/lots/much/slightly/way more|added|adds|amplifies|bigger|boosts|deeper|double/turns_up/twice the|extra|greater|growing|heightens|increased|increasingly|louder|more intense/pronounced|stronger/heavier /on|twice as much`,
  },
  {
    says: "increased",
    words: `bigger/louder/stronger now|blooms|building|builds|built|came/come/picks/ramps/wakes up|came/comes/stepped/steps forward|deepened|deepens|/gets bigger|/gets/got/is stronger|grew|growing|grows|has grown|increased|increases|increasing|intensified|intensifies|louder|more intense/now/obvious/prominent/pronounced/than_before|rises|rising|swells|up a notch`,
  },
  { says: "as-much", words: `as /much|equally|just as|similarly|/the same` },
  {
    says: "unsure",
    words: `<would> bet /my_life/on/the_house_on|<would> put_money_on/swear_it's/swear_that_it's/swear_to/vouch_for|almost|am i getting|appears|approaching|arguably|at a guess|bordering/verging on|borderline|can't decide/rule_out/tell/tell_if/tell_whether|can_it/may/would_that be|conceivably|could|couldn't_rule/would_not_rule/wouldn't_rule out|dare_i/hard_to/i'd/i_want_to/i_would/id/want_to/wanting_to say|debatable|do not know|don't hold_me_to_it/know/know_if/know_if_it's/know_whether|doubtful|either|fancy i|hard to_be_sure/to_tell|have my doubts|i am_not_sure/believe/fancy/guess/imagine/reckon/suppose/thought/wonder|i'm not sure|if i_had_to_bet/i_had_to_guess/pushed|ish|kind/sort of|kinda|may have|maybe|might|nearly|not certain/certain_if/convinced/entirely_convinced/entirely_sure/persuaded/so_sure/sold_on/sure/sure_if/sure_if_it's/sure_if_that's/sure_whether|or similar/so|or_the/seems/something/somewhat like|perhaps|possibly|potentially|presumably|probably|question mark|questionable|seem to|seems|something|sometimes|sorta|suspect|swear|think|unconvinced|unsure /if|who knows|wonder if/whether|wondering if`,
  },
  // "don't think there's any smoke": a hedge under "not" says no.
  {
    says: "not",
    over: true,
    words: `<nope> <think>|<nope> <think> that|<who> not <say>|<would> <say>|not that_it's/that_it_is`,
  },
  {
    says: "not",
    words: `are_not/is_not/there_aren't/there_isn't/there_wasn't/there_weren't any|do not_smell/not_taste|don't get_any/smell/taste|not smelling`,
  },
  // Looks like a "not" and is none.
  {
    says: "there",
    words: `can't deny/escape/get_away_from/get_over/get_past/help_tasting/hide/ignore/miss/see_past/shake/stop_smelling/stop_talking_about/stop_tasting|could_not/couldn't miss|didn't_get/didn't_notice/i_did_not_get/i_didn't_get/i_didn't_notice/i_missed/not_there/wasn't_there before|does not_go_away/not_hide|doesn't fade/go_away/hide/let_up|hadn't noticed|hard_to/impossible_to ignore|has_not/haven't gone|hasn't faded/gone/left|i hadn't seen|i_had/that_i/which_i missed|isn't shy with|isn't_shy/will_not_shut_up/won't_shut_up about|never lets go|no avoiding/denying/doubt/escape_from/escaping/getting_away_from/getting_past/hiding/mistake/mistaking/question|not going_away/gone/gone_away/hiding/shy_about/shy_with|refuses to leave|still/that_wasn't there|that i hadn't|unable to get past|without a_doubt/doubt/question|won't go away`,
    strength: 7,
  },
  {
    says: "there",
    words: `<would> argue with|<would> be surprised by|<would> be surprised if it's|<would> beat|<would> beat a|<would> complain about|<would> fault|<would> fault the|<would> get enough of|<would> go wrong with|<would> knock|<would> resist|<would> say no to|can't complain|do not miss|do_not/don't/i_don't/never mind|does not_cover/not_lack/not_mask|doesn't cover/lack/mask|don't be_put_off_by/miss|don't_tell_me_that/if_it/if_that/if_this/no_way_that/tell_me_that isn't|get_in_the_way/gets_in_the_way/isn't_short of|if/if_it's/if_that's/if_this_is/no_way_that's/tell_me_that's not|never without|no arguing_with/change/complaints_about/i_mean/kidding/less/seriously/wonder|not a_bad/devoid_of/dissimilar_to/even_the/far_from/far_off/forgetting/free_of/just/lacking/merely/only/quite_hiding/short_of/simply/solely/supposed_to_say/surprisingly/to_mention/to_say/too_shabby/unexpected/unpleasant/unpleasantly/without/without_its/without_some/wrong|nothing beats/wrong_with|unsurprisingly|without a_doubt/the_water/water`,
  },

  // Said, and taken back.
  {
    says: "correct",
    words: `actually not/that's|actually/ah/er/erm/hmm/oh/sorry/uh/um/wait/well no|better said/to_say|changed my mind|correct/delete/forget/make/not/scrap/scratch/strike that|correction|excuse me|hang/hold on|i called/had/noted/noted_down/put/put_down/wrote/wrote_down is/was actually/in_fact/more_of_a/really/really_a/really_more_of_a|i change_my_mind/correct/lie/mean/meant/should_say/stand_corrected/take_that_back/tell_a_lie/would_rather_say|instead|let me_correct/me_rephrase|my mistake|nah|no /actually/definitely/hang_on/i'd_say/i_lie/i_tell_a_lie/i_think/it's/it's_more/it_is/it_is_more/its/its_more/make_that/maybe/more_like/more_of_a/no/not/perhaps/rather/sorry/tell_a_lie/that's/that's_wrong/that_is/wait/what's_it_called/what's_the_word/what_do_you_call_it/what_is_it|nope|not/that's_not right|on reflection/second_thought|oops|or rather|pardon|rather more like|second thoughts|should i say|sorry|take that back|tell a lie|/that's/that_is wrong|thinking about it|wait|what's the word|whoops`,
  },
  {
    says: "said-before",
    words: `almost/earlier_i/first_i/first_time_i/last_time_i/nearly/where_i said|almost/earlier_i/first_time_i/i_first/nearly/where_i wrote|at_first_i/first_i/i_first thought|before_i/earlier_i/last_time_i/where_i had|changed/change my_mind_about/my_mind_on|cross_that/crossed/strike out|delete|dropping the|had_down/had_it_down/marked_down/put_down/remember_it/remembered_it/wrote_down as|i mistook/thought_it_was/thought_was/want_to_take_back/wanted_to_write|mistook|previously|scrap|scratch|thought it was|took it for|was going to say|what i_called/i_took_for|where i noted`,
  },
  {
    says: "said-maybe",
    words: `i'd/i_would have said|i wanted to say|i called_it/first_said/had_down/had_noted/had_written/noted/put/put_down/said/wrote/wrote_down|i'd noted/put/written|i've put/written`,
  },

  // Of another glass, or of no glass.
  {
    says: "than",
    words: `against|as in|as/from/like the|as_opposed/compared/in_comparison/next/opposed/relative to|beside|compared/in_comparison with|than|unlike|versus|vs`,
  },
  {
    says: "other",
    words: `all_the/most_of_the others|hers|theirs|yours|reference|target|his/her/their/your glass|last night's/week's/year's|/last_year's/my/our/the earlier/first/last/old/previous attempt/batch/blend/mix/trial/version|earlier/last/previous/that/that_last one|every_other/first/last/next/other/previous/that glass|its brother/neighbour/sister|my last <dram>|the <dram> before <it?>|the <dram> before that|the <dram> next to <it>|the <dram> on the left|the <dram> on the right|the <dram> we had|the <dram> we had before|the benchmark/bought_bottle/bought_one/original/real_one/real_thing/target/beer_before/beer_we_had/bottle_at_home/bourbon_one/control/earlier/earlier_glass/earlier_one/far_one/fifth/first/first_glass/first_one/fourth/fourth_glass/fourth_one/last/left_hand_one/left_one/middle_one/next/next_one/one_beside_it/one_earlier/one_from_yesterday/one_i_had_before/one_in_the_middle/one_yesterday/other/other_two/others_here/peated_one/previous/reference/right_hand_one/right_one/second/second_glass/second_one/sister_glass/sixth/standard/standard_one/third/third_glass/third_one/two_before/two_others/usual/wine_at_dinner/wine_we_had/wine_with_dinner|the last <dram>|the other <dram>|the previous <dram>|yesterday's`,
  },
  {
    says: "this",
    words: `here /it's/it_is|in/now here|mine|ours|trial|my/our/the blend/mix/trial|this /dram/glass/has/is/one/one_has/one_is/sample/time/was/whiskey/whisky|whereas this`,
  },
  {
    says: "aside",
    words: `<somebody> <doing>|<who> expect|<who> expected|<who> thought it was going to be|<who> thought it would be|<who> thought it'd be|<who> was thinking of|a jar_of_her/jar_of_his/scented_candle|a_mash/a_painting/air_was_full/by_the_name/cask/clothes_smell/fans/fingers_smell/fond/had_a_plate/hair_smells/hands_smell/hands_smelled/house_was_full/i'm_full/kitchen_was_full/love_a_bit/on_a_diet/photo/picture/place_smelled/place_smells/place_was_full/ran_out/room_full/room_smelled/room_smells/room_stinks/room_was_full/run_out/running_out/sick/still_full/the_room_smelled/the_room_smells/warned/with_a_bowl/with_a_piece/with_a_plate/with_a_slice/with_a_square of|according/allergic/partial/pay_no_mind/reputed/rumoured to|advertised/described/known/sold as|after the curry|aged/finished/married/matured/packed/used_to_work/worked in|air_was_thick/brushed_my_teeth/cleaned/confuse/confused/drink/drink_it/drink_this/eat/fed_up/go/goes/goes_nicely/goes_well/good/great/have/had_it/had_this/have_it/have_this/ideal/lovely/nice/no_good/pair/pair_it/pairs_well/perfect/serve/serve_it/serve_this/served/washed_down/would_go_nicely/would_go_well/would_pair_well with|allegedly|anyone who <like>|apparently there's|are/been/is/was/were smoking|arguing/banging_on/couldn't_tell_you/don't_ask_me/goes_on/going_on/keeps_going_on/kept_on/poem/raved/raving/song/rant/rave/raves/talk/talked/talking/warned/warned_me/warned_us/went_on about|asked/asking/begs/braced/bracing/crying_out/famous/geared_up/go_out/hoped/hoping/hunting/i'd_kill/in_the_mood/known/longing/looked/looking/mistake/mistake_it/mistaken/nipped_out/pass/popped_out/prepared/reaches/reaching/recipe/searched/searching/shopping/steeled/waiting/went_out/wish/wished/would_kill for|assumed|bake/baked/baking/came_from/cooked/could_murder/good_in/i've_had/just_had/keeps/lighting/lights/lit/made/ordered/smoked/smoking/would_love a|baked/cooked/fried/made/ordered/picked/put_out/set_out/would_love some|before_that_we/before_this_i/before_this_we/had_just/i'd/i'd_just/i've_just/we'd/we'd_just/we've_just/we_had/wish_it had|bottle/everybody/somebody/someone says|bottled/distilled/made from|bought|breakfast/dinner/lunch/supper was|bring_out/can't_speak_for/can_keep/dropped/fed/feeding/lit/mended/mowing/painted/painting/picking/polishing/repairing/sanded/sanding/spilled/spilt/that'll_be/that_was/varnished/varnishing/watering/waxed/waxing/weeding the|brought a/along/her/his/over/some/up_on|brush my teeth|burning a scented|buys|called|can keep your|can't abide/bear/stand|can't/don't/like_to/never/why_i_don't drink|cleanse <the> palate|cleansed <the> palate with|coat smells of dog|craving|dad/had/he/she/somebody/someone/they/we lit|distilled in|dropped my|drove past|eating|eaten a/an/some|pass the|everybody_is/kept saying|everyone else|expected|expecting|fans|from a cask|frying|gave me/up/us|giving up|grain/mash bill|grew up|grew_up/not_keen/pour_it/raised/snacking on|growing up we|had too much|handed/handing/passed round|handed/passed around|having a barbecue|having/he'd/she'd/we'd eaten|he/she/somebody/someone brought|i ate/baked/blame/brought/can't_eat/chewed/cooked/don't_eat/grow/had_eaten/had_read/have_a_cold_and/hoped/like_my/lit/never_eat/picked/prefer/read/spilled/spilt/tend_to/was_told/wish_i_could/worked_at/would_love|i'd eaten/have_liked/love/mown/prefer/rather_have/sooner_have|i'll have the|i'm told|i've never smelled|if <who> <like>|if only|if_i/people/reviews/they say|ignore any/anything|in my other hand|is/was cooking/baking|just ate|keeps_it_from/saves_it_from/stops_it/stops_it_from being|keeps_it_from/stops_it getting|laid out|love a good|lovers|mention/talk of|my first job|named|next door is having|next_door's/somebody's/someone's/the_neighbours/the_neighbours'/the_neighbour's barbecue/bbq/bonfire/cooking/dinner/fire/perfume/toast|nibbled|nibbling|nicknamed|normally|not everyone|offered/telling/tells me/us|others found/get/got/say|ought to have|people who <like>|people/they get|planted|planting|pour it over|poured by|reviews mention|says on the label|she/he baked/cooked/grows/spilled|should be/have|smell from_next_door/of_dinner|smells from the kitchen|smoke alarm/break|smoking her/his/outside|somebody/someone said|spent its life|supposed/meant to_be/to_have/to_smell/to_taste|supposedly|the <source> <says>|the blurb/label/leaflet/others_get/others_got/others_said/others_say|they use|thinking it would be|those who <like>|thought i'd_get/i_would_get/there'd_be/there_would_be|told it_has/me/there_was/to_expect/us|try it/this with|used to_hate/to_love/to_smoke/to_work_at|usually|wanting|we ate/baked/cooked/grow/picked/were_told|wearing|which the others are finding|who <like>|why i don't like|will tell you|wish there_was/there_were|would be_nice/have_liked/tell_you`,
  },
  {
    says: "reports",
    words: `are/is/keeps/kept/was/were saying|argues|bets|called/calls it|claimed|claims|finds|found|gets|got|insisted|insists|mentioned|mentions|muttered|mutters|noted|reckoned|reckons|said|says|shouted|shouts|smelled|suggested|suggests|swears|swore|tasted|thinks|thought|whispered|whispers|writes|wrote`,
  },
  {
    says: "aside",
    back: true,
    words: `according to|all evening|at dinner/lunch/the_bar|before dinner/i_came/we_began/we_started|beforehand|coming/drifted in|crossed_it/rubbed_it/scratched_it out|down the_road/the_street|earlier today|floating about/in_the_air|for all i know|for breakfast/dinner/lunch/pudding/supper|from outside/the_kitchen|gets_in_the/got_in_the way|in colour/color|in my_hand/my_pocket/the_air/the_ashtray/the_bar/the_corner_of_the_room/the_garden/the_grate/the_hall/the_kitchen/the_next_room/the_oven/the_room|is next_door/too_strong_a_word|is/was/were cooking|next door is|on her_fingers/his_fingers/my_fingers/my_hands/my_shirt/the_air/the_hob/the_radio/the_rug/the_sofa/the_stove/the_table/the_telly/the_wall|on the_box/the_label|over the road|talking|this morning|through the window|was better than this|was/were lit|would be_going_too_far/be_overstating_it/be_putting_it/be_too_strong/be_welcome/not_go_amiss|wouldn't go amiss`,
  },
  {
    says: "aside",
    words: `amber/black/brown/dark/golden/pale/red/yellow as|appearance|colour /of|coloured|coloured/glows/shines like|in_the_glass_it/shade is|legs|looks|the look_of/shade_of|tinted|to look_at/the_eye`,
    look: true,
  },

  // Where in the mouth. "on the nose" may stand after; "nose" heads what follows.
  // A part named only to compare with it.
  {
    says: "idiom",
    words: `a mouthful/nose_like_a|a_plum_in_the/big/foul/mouth_to/open_your/opened_my/plum_in_her/plum_in_his/word_of mouth|acquired/bad/for_my/good/to_my taste|after a_bit/a_drop_of_water/a_few_minutes/all/five_minutes/he/his/i/it_had/it_has/my/she/so/some_time/tea/ten_minutes/the_coffee/the_rye/the_tea/we|and nothing_else/nothing_more/nothing_much_else|same cask|keep it clean|on oak|pale straw|peated to|sweet on her/him/you|lean/leans/leaning back/in/into/on/over/to/toward/towards|warm water|as <who> expected|as a_rule/expected/it_goes/it_smells/medium|as_on_the/bad/blocked/echoes_the/follow_my/followed_my/followed_your/follows_the/hold_your/mirrors_the/powder_my/runny/same_as/stuffy/than_on_the/turn_up_my/turned_up_my/under_my/under_your nose|at_the_end_of/finished my|awful/decent/keen/poor/rotten/rubbish/terrible/weak nose|background/makes_a noise|banana_skin/goodbye to|be all over it|becomes_more/last_swallow of|before_it/it/they closed|bit_of/dash_of/deep/drop_of/no/open/sip_of/touch_of/without water|bread bin/knife|bright idea/morning/orange/side/spark|bright/evening/first/last/low/morning/sun light|burned/burnt down|burned/burnt/never_one_for/not_one_for/swallows_on/to_finish the|burns off/the_house|can't say no|wagging its tail|cleanse_my/to_my palate|cleared_my/lump_in_my throat|close by/call/enough/run/the/to/up|closed book|coffee date/morning|cool as a cucumber|cork was|cup of tea later|dangle a carrot|deep breath/end/pockets/sleep|did_not/didn't/i/i_never/to_a finish|don't be/love|door shut|down as medium|dry ground/land/mouth_in_the_morning/stone|eases/mellows/softens into|end of_the_garden/of_the_oak_table|ends of /each/the_earth|feel_like_a/felt_like_a lemon|final glass/one/sample/whisky|finish first/last/line/my/my_glass/off/the_bottle/the_glass/up|finishes second/third|flat land|for something so|for_all_the/high/sunday tea|fresh coffee_pot/snow|from nowhere|glass after glass|good_nose/if_only/never_been_one/no_nose/not_usually_one/stay for|gooseberry between|hard to swallow|have a good nose|he/i/she/we smoked|head scratcher|heads or tails|heart of stone|heavy book/boots/metal|honey bee|hot bath/drink/food/meal/oven/shower/toddy_made/whiskey/whisky|hung out to dry|i don't love|i/we toasted|in flower/the_barrel/the_cask/the_shell|it ends up|jacket potato|knows best/her/his/how/that/what/where/why|left in the barrel|light entertainment/fades/falls/jacket/rain/reading/sleeper|like <who> expected|like a_hug/the_nose_promised|like_a/need_a/want_a cigarette|lively chat/evening|looks/soon after|loose/odds_and ends|make ends meet|mature adults|mother/tip_of_my/tip_of_the tongue|mouth full/full_of/watering|mouthwatering|my mouth_was_not/mouth_wasn't/nose_is/nose_is_blocked/palate_is|never finished|nice as pie|no ice/more_so|noise outside|nose around/bleed/for_trouble/is_blocked/is_running/out_of_joint|nosebleed|nosey|not that you'd know|nutcase|of all things|olive branch|open book/flame/sea|opens|or so they say|out of_nowhere/of_the_cask/to_dry/to_grass|p s|palate cleanser|pepper mill/pot|play/playing gooseberry|polished shoes/up|rose garden_path/tinted|rough cut/hands/sleep|said/say/saying/waved/waving goodbye|salt cellar|sharp bend/corner|sign off on|simple food/soul|sip after sip|smell a_thing/anything/nothing/properly/the_room|so/too/very close|soft hands/landing/lighting/pillow/rain|stay the same|stayed for/in/late/the_same/up|stays in_the_glass/late|stone dead/deaf|sugar mouse|swallow my_pride/the_pill|sweet shop owner|tail between/of_a/of_the_queue/wagging|taste a_thing/anything/for/in_men/in_music/of_home/of_my_own/panel/test|tea light/room|tearoom|than it_smelled/it_smells/it_smelt/it_tastes/on_the_palate/the_nose_promised/the_nose_suggested/the_nose_suggests|the cork_was/end_of_my/light_goes/light_is/light_was/peaty_stuff/tail_of_a|then not_a_lot/not_much/nothing_else/nothing_more|this_is_the_end of it/that|time to open|tired feet/legs/old/palate|to finish_this/open_but|toffee nosed|tongue in_cheek/tied|tough cookie|up in smoke|warm bath/heart/words|weekend|what is that spice|what's that_fruit/that_herb/that_spice|which <who> expected|which <who> was expecting|young wine`,
  },

  // A flavour's word that is none here.
  {
    says: "idiom",
    words: `a bit thick|a flat no|a/against_the/go_against_the/single/this grain|a/another/blended/every/my/single/that/this malt|a/another/is_a/my/straight/that/this rye|a/drink_a/raise_a toast|a_bit/bit rusty|after a curry|after/before church|after/cup_of/had/have/her/his/morning/my/over/too_much/wake_up_and_smell_the coffee|after/for/her/his/made/make/mug_of/my/my_cup_of/not_my_cup_of/our/spill_the tea|all at_sea/day_long/night_long|all/all_year/another/come/first/gather/goes/my/next/round_and/second/second_time/this/time/turned/walk/way round|am/bowl_of/drive_me/everyone/go/goes/i'm/is/went nuts|amber/gold coloured|an/been/door/eyes/kept/left/wide/window open|any younger|anybody|apple/bottle/emerald/forest/going/lime/mint/moss/olive/pea/sage/village green|apple of my eye|arms/glass/half/hands/i'm/i_am/too full|at bay/church/the_beach/the_dentist/the_harbour/the_seaside|at/before/every/for/merry/over/this christmas|at/by/on/under her/his/my feet|at_the/to/to_the/works_at_the hospital|back in the saddle|bad apple|/bag_of crisps|balance my|balanced against/on/the|ball/board/card/football game|banged/blown/nailed/pulled/slammed/snapped/stitched it shut|barking/butter_me/kicks/rose/spice_things/stay/tucked/warming up|barn dance/door|barrel aged/number/of_laughs/pick/proof/strength|bay window|be bold|beach ball/holiday/house/towel|been/eyes/shop_was closed|beer garden|beers|before beer/i_had_none|beginner's/board/fair/guessing/play_the game|big/had/say cheese|big/plenty_more fish|bit of a pickle|bit/feel/feeling/got/i'm/was tired|bite my_tongue/the_bullet/the_dust/to_eat|bitter about/cold/disappointment/experience/pill/sweet_memories/truth/wind/winter|bitterly cold/disappointed|bottling/due/its_a/out_of/release/save_the/to/up_to/what date|bloody|go_up_in/holy/i/we/where_there's smoke|bold choice/claim/enough/move/statement|booked|bottle_is/high_and/ran/run dry|bottled|bottom_of_the/out_of_the/over_a/scrape_the/single/straight_from_the barrel|bowl of olives|bread and_butter_issue/on_the_table|breadwinner|bright and_early/as_a_button|bring_to/candle/cold/gold/golden/green/honey/in_the/in_this/lemon/lime/orange/red/traffic light|bug/first bite|burn out/the_candle|burned/burnt my/out|burns a hole|by the sea|call_in/feel/off sick|candlelight|candlelit|cask strength|ex/non smoker|cheese board/plate|cheeseboard|cheesy/mellow music|cherry on top|cherry_on_the/frosting_on_the/icing_on_the/piece_of/takes_the cake|chew the fat|christmas day/eve/morning/party/present|church bells/hall|cider house|cigar bar/lounge_bar|clean cloth/cut/slate/up/water|clear_as/name_is mud|closed distillery/door/down|east/west coast|coffee cup/table/this_morning/went_cold|cold medicine i|come/glass_is/glass_was/squeaky clean|come/right_as rain|corn/grain/malt/rye/wheat whiskey|cost_the/down_to/heaven_and/how_on/on/salt_of_the/what_on earth|cotton wool|couch potato|cream rises|peaches and cream complexion|cup of tea earlier|cuppa|curry house/tonight|curry_last/date/game/stay_the night|keen as mustard|cutting edge|daily grind|daily/garlic/put_the bread|date back|date/fade_out/get_a_kick_out/how_sweet/sick/tired of|dating|daylight|dead/feel_the/turn_up_the heat|dead/hard_as/knock_on/touch wood|deep end/thought|delicate flower_of_a/hands|dentist tomorrow|didn't/does_not/doesn't/no match|doctor says|don't sweat|draw straws|dry comment/day/sense/sense_of_humour/spell/summer/throat/weather/wit|drying dishes/her/his/my/the/up|easy as_pie/peasy_lemon_squeezy|egg on my face|eight/look sharp|evening/morning/on/piece_of paper|everybody|fat cat/chance|feather|feeling mellow/warm|fingers_still/hands_still smell|fired|first/second/third time|fishy about|flat as_a_pancake/out|flatmate|flip_a/other_side_of_the/toss_a/toss_of_a coin|fresh air/as_a_daisy/batch/from/look/off/out_of/palate/pour/sample/start/water|from the pharmacy|fruit_cake_of/lemon_of/peach_of a|full attention/belly/bloom/circle/confidence/credit/day/disclosure/english/flight/fridge/house/length/marks/measure/pour/proof/size/speed/steam/stomach/stop/strength/swing/tilt/time/time_job/view/week/works/year|game/tack/waxed_jacket on|gentle giant|get to grips|get/if_i_was/if_i_were/that's rich|get_a/lose_my grip|glass was full|go to church|go/going/went bananas|good egg|got burnt|grain bill/whisky|grain_of/pinch_of/take_this_with_a_pinch_of/this_with_a_pinch_of/with_a_pinch_of/worth_his/worth_its salt|grape vine|grapevine|grassy bank/hill/slope|green fingers/label/thumb/with|grip_the/raise_your/warming_the glass|had a_beer/a_curry/curry/none_before/steak|hair_on_my/hair_on_your chest|hang in the balance|hay fever|haywire|he/she smokes|heat of_the_day/of_the_moment/outside/was_on/wave|heatwave|heavy cold/day/going/hand/heart/pour/rain/sleeper/weather|hi/my/thanks honey|high horse|hit_the/make hay|hold a_candle/your_horses|holy/kindred/team spirit|home sweet home|honey bunch|honeymoon|hospital visit|hot afternoon/air/date/day/dog_stand/evening/in_here/mess/night/off_the/or_cold/outside/potato/room/summer/summer's_day/tub/water/weather|i had_none/rose|in a_cold_sweat/a_nutshell/a_pickle/church/full/hospital/my_blood/the_grip/the_heat/the_spirit/the_study/the_thick_of|is a lemon|it rains|just peachy|keep it simple|keep_off_the/snake_in_the grass|kick back/in/it_out/off/out_of/start|kicks up its heels|knock_your_socks/knocked_my_socks/rounded/rounds_it/socks off|last but_not_least/sip/straw|leaf through|leafy lane/street/suburb|leather bound/sofa_in|set in stone|left_a_bad/left_a_sour taste|light a/bulb/candles/dinner/entertainment/headed/in_here/lunch/meal/of_day/of_my_life/pour/relief/show/snack/supper/the_fire/touch/up/weight/work|light on_her/on_his/on_its feet|lightheaded|lights|like two peas|limelight|lit candles|long gone/legs/nose/since_gone/sip|malt/rye whisky|malts|mash bill|matched|mature enough|me bananas|meat of it|medium pour|mellow/tired evening|metal spoon|moonlight|my flat/sweet|nails it shut|out of the woods|new leaf/paint|new leaf|night is young|no longer_than/smoke_without/smoke_without_fire/sweat|nobody|notebook|nuts/smells_fishy about|nutty as|oak bar/hollow/room/table/tree|oh fudge/honey/sugar|oil painting|oily fingers/hands/smile|old school|olive branch/skin|on balance/my_soap/the_beach/the_pier|open about/air/fire_in/for/house/kitchen/mind/since/up|opened a/it/the/the_bottle|orange glow|/out_of_the woodwork|over tea|overseas|paper bag/thin|peachy keen/skin|peas in a pod|penny dropped/drops|pepper us with|peppering|percent alcohol|pie in the sky|piece of toast this|pizza|ports|pot still|spend a penny|quick look/note/one/sip/sniff/taste|quickly poured|rain against/outside|raining|remains a/my/of/to_be_seen|rich and_famous/coming_from/tea_time|rises|rocks /my|rough day/diamond/edges_of/guess/guide/idea/night/patch/ride/sea/time/weather/week|roughly|round here/his/my/of/of_applause/of_drinks/off/one/three/two/up|royal oak|runs in the blood|rusty at_this/nail_in|ryes|salt and_pepper_beard/and_pepper_hair|salty old/tongue|scraping the barrel|sea change|sealed|sharp elbow/end/intake/knife/tongue/words|short of breath|sick day|silky voice|simple as_that/enough/life/pleasure/question/task/tastes|small beer|smart cookie|smell a_rat/of_money/of_success|smelled a rat|smoke filled/gets_in/in_my_eyes/like_a/rose/without_fire|smokes like|smoky eye/jazz/voice|smooth move/ride/running/sailing/things|so_hot/tired/too_hot today|sock it|soft drink/music/spoken/spot/touch|somebody|something fishy|sour taste left|spice of life|spirits|spring flower show|stay home/tuned|still smell of them|stone cold|stone's throw|stony face/silence|straight up guess|sugar and_spice/rush|sugarcoat|sun burn|sweat it|sweet dog/dreams/little/memory/nothing/of_her/of_him/of_them/of_you/old/smell_of/spot/talk/tooth|sweetheart|tacky|take a_leaf/root/this_with_a_pinch|takes_the/took_the biscuit|taking medicine|tang of regret|taste of_freedom/of_victory|tea and_biscuits/earlier/lady/time/towel/went_cold|teatime|that's cheesy|the barrel_was/beach_with/coast_is_clear/curry/earth_moved/flat/heat_today/papers/spirit_of/woods|the bitter end|the wood for|thick and_fast/and_thin/cut/fog/headed/of_it/skin/socks|thin air/disguise/ice/lipped/on_the_ground/on_top|to the_beach/the_dentist/the_seaside|toast the/to|toasted the|tough nut|tree tops|under fire|velvet chair/voice|wafer thin|wane|warm all_over/day/evening/hand/in_here/it/it_up/kitchen/memories/my_hands/night/outside/room/spell/the_glass/tonight/up/weather/welcome/words|warm company|watered down version|wax lyrical|way the cookie crumbles|wheated|when i was young|whole ball of wax|wry|young at_heart/daughter/ones/son`,
  },
  {
    says: "idiom",
    words: `a bit_later/little_while|a_lot/far/so/way better/nicer/worse|/a_lot/far/so/way much better/nicer/worse|a_lot/loads/lots/much/plenty going_on /here/in_here|a_proper/a_real/a_right/a_wee/an_absolute cracker|above/at/best_of/first_of/most_of/that's/that_is all|absent friends/minded|added a_drop/water|after all that|all at_once/clear/day/i_can_think/of_it/of_them/of_this/of_us/right/that_jazz/the_best/the_same/the_time|almost done/empty/finished/there|alright|and_so/holds on|any more for|apples and oranges|as old leather|barely/hardly/scarcely anything|big day/fan/glass/pour/sip|bit by_bit/of_fun/of_luck|calm/come/put/sat/sit/turn_it/up_and/upside/write/wrote down|can't believe/describe/explain/help/name/place/put_my_finger/remember/think/wait|could be_better/be_worse/drink/well|could_be/do_not_get_me/gone/i_could_be/i_was/may_be/might_be wrong|couldn't help/put_my_finger|deep breath|do not hate|do_not/i_don't/i_never/i_think_i/more like|doesn't it/matter/need|don't ask/care/get_me_wrong/hate/hate_it/let/like/need/remember/understand/worry/you_think|down/people here|either way|excuse/lost my|extra point|gone by/off_to/to_bed|good stuff|great stuff/value|great/kind_of/sort_of whiskey|hang_on/hold_on to|here's|heres|high hopes/proof/strength|i can't_stand/think_it's_great/think_that's_it/think_this/won't_lie|i_think/ok/okay/right so|in a bit|instead of sugar|isn't bad/it|kind of you|less than impressed|less_is/once/one more|little brother/one/sister/while|low proof|makes me think|might as_well/buy|missing out/something|more often/or_less/please/time|never been/had/know/liked/seen/tasted/thought/would_have|nevertheless|no bad_thing/big_deal/clue/comment/complaints/good/hurry/idea/matter/more_for_me/one/problem/rush/thank_you/thanks/worries|no stone unturned|none the less|nonetheless|nope nope|not a_fan/a_lot_going_on/alone/always/bad/bad_at_all/cheap/everybody/everyone/expensive/going_to_lie/gonna_lie/great/half_bad/here_for/in_a_bad_way/in_a_good_way/mine/much_else/much_going_on/much_more/much_to_say/my_cup/my_favorite/my_favourite/my_style/my_thing/now/often/that_i_care/that_i_mind/that_it_matters/that_there's_anything_wrong/today/what_i_expected/withstanding|nothing bad/else/like/much/new/special/to_add/wrong|nothing behind/beneath/underneath /it|notwithstanding|one more sip|or so they|pardon the|pretty much|really enjoy/enjoyed/like/liked/love/nice/well|small glass/pour/sip|so anyway/bear/far/here/lovely/my/nice/on/so/that/then/what|some kind_of/more/reason/sort_of/time|someone|something about/else/going_on/i_can't/is_missing/missing/nice/off/to/wrong|sorry about/for/i'm/if/that/to|sort of day|strong start|that_kind/the_kind of|think about/back/of|this morning|too bad/good|vanish without|very best/drinkable/interesting/last/lovely/nice/pleasant/top/well|wait a/and/for/until|wasn't it|why not|will_not/won't lie|wouldn't change/go_so_far/mind/say_no|wrong glass/with`,
  },
  {
    says: "liking",
    words: `adore|beautiful|beautifully|brilliant|cracking|delicious|delightful|divine|enjoyable|excellent|fabulous|fantastic|gorgeous|grand|heavenly|i_like/i_love/like/love this|love/loved it|lovely|magnificent|moreish|/my favourite/favorite|nice|outstanding|perfect|pleasant|pleasing|smashing|spot on|stellar|stunning|superb|tasty|top notch|wonderful|wow|yum|yummy`,
    liking: 1,
  },
  {
    says: "liking",
    words: `a mess|awful|bland|boring|dire|disappointed|disappointing|disgusting|do_not_like/don't_like/hate it|dull|forgettable|ghastly|grim|gross|hate this|horrible|lackluster|lacklustre|mediocre|meh|nasty|not for me|off putting|poor|rubbish|terrible|ugh|underwhelming|uninspiring|uninteresting|unpleasant|unremarkable|vile|yuck`,
    liking: -1,
  },
  {
    says: "memory",
    words: `back/i_was_back in|brings back/me_back_to/to_mind|comes/springs to mind|conjures /up|evokes|just like|like an_old/at_my/being_in/in_my/my/sitting_in/standing_in/walking_into/walking_through/when|made_me_think/makes_me_think/memories/remind_me of|memory of my|reminds me|takes me_back/me_back_to|that's exactly_it/exactly_what/it_exactly/what|took_me_back/transports_me to`,
  },

  // How long the finish is: read where a finish is spoken of.
  {
    says: "length",
    strength: 8,
    words: `a long one|a_good/a_good_long/a_long while|a_long/a_very_long/time_after time|/a_mile/big/hours/minutes/really/super/very long|all evening/night|as long_as_a/long_as_the|carries/keeps/marches/rolls/runs/trails on|continued|continues|continuing|does not_end/not_go_away/not_leave/not_stop|doesn't go_away/stop|drawn out|endless|endlessly|enduring|eternal|eternally|everlasting|extended|extends|extensive|for a_long_time/a_long_while/ages/days/ever/hours/minutes/minutes_on_end|forever|infinite|interminable|keeps coming|lang|lasting /ages|length for days|lengthy|linger|lingering|long lasting|longlasting|minutes later|never ending/stops|neverending|persistent|prolonged|refuses to leave|runs and runs|stretched|stretches /out|tenacious|till/until tomorrow|to the horizon|unending|won't end/go_away`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `<would> be gone in a hurry|goes_on/going_on/went_on a_good_long_while/a_good_long_time/a_long_time/a_long_while|overstays /its_welcome|a minute at least|comes back in waves|it echoes|kept coming back|no end in sight|rolls on and on|an eternity|aftertaste/taste lasts|clinging finish|dies/fades/fades_very/tails_off/trails_off slowly|glows/rumbles/smoulders on|has length|i'm_still/still tasting_it|it clings/endures|it_just_kept/it_kept going|length is_excellent/is_good/is_great/is_impressive|more_than_a/over_a/a_full minute|slow to_die/to_fade/to_go|slowly fades|sticks with_me/with_you|takes its_time_to_die/its_time_to_fade/its_time_to_go|all the way home|and/it/really lasts|and_goes/clings/go_on_and/hangs/just_goes/lingered/lingers/on_and/runs_on_and on|as long as my|can_still_feel/i_can_still_feel/i_can_still_taste it|clings to|doesn't leave_me/quit|end_takes_its/finish_takes_its/remains_a_long time|goes and_goes/on/on_and/on_and_on/on_for/on_for_ages/on_for_ever/on_forever|hang/hung/sticks around|hanging about|hangs about/on_for|into next week|is continuing/still_with_me|it remains|it's there long after|it's_still/it_is_still there|keeps going/on_coming/on_going/you_company|last forever|last/remains/stay long|lasted /ages|lasts a_long_time/ages/and/and_lasts/through/till/to/until/very_long|linger|lingered|lingers|long as_a/as_the|long_in_the/long_time_in_the/stay_in/sticks_to_my/sticks_to_the/sticks_to_your mouth|marathon|not gone in a hurry|on for ages|outlasted|outlived|outlives|persists|quite a while|refuses to leave|stays /a_long_time/in_the_mouth/on_my_lips/on_the_lips/on_the_tongue/with_me/with_me_till/with_you/with_you_till|sticks to your teeth|still get_the_taste/going/have_the_taste/here/in_my_mouth/on_my_tongue/tasting_it/there/there_after/there_long_after/with_me|till morning|won't leave me`,
  },
  {
    says: "length",
    strength: 6.2,
    alone: true,
    words: `considerable/decent/good/great/impressive/lots_of/lovely/nice/plenty_of/real length`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `and it's finished|blink and_it's_over/and_you'd_miss_it/and_you_will_miss_it/and_you_would_miss_it|done/finished/off/out before|it leaves_all_at_once/leaves_like/leaves_you_quickly|lacking/little_in_the_way_of/no_great/not_a_lot_of/not_much/short_on length|leaves all_at_once/like_a/like_rain/you_fast/you_quickly|no sooner swallowed than gone|up and vanishes|up_and/ups_and leaves|wish it_lasted/it_stayed/it_stuck_around/it_would_stay`,
  },
  {
    says: "length",
    strength: 0,
    stance: "absent",
    alone: true,
    words: `<nope> have a finish|<nope> have any finish|<nope> really have a finish|finish is_absent/is_missing/is_not_there/is_nowhere/isn't_there/none|hardly_a/has_no/no/no_real/not_a/not_any/there's_no/there_is_no/what/where's_the/without/zero finish|no after_taste/aftertaste/finish_at_all/finish_to_speak_of/finish_whatsoever/length/length_at_all|nothing at the end`,
  },
  {
    says: "length",
    strength: 6,
    alone: true,
    words: `correct/medium/moderate/ok/okay length|goes_on_a/goes_on_a_fair/goes_on_for_a/lasts_a/lasts_a_good while|half/mid/middle long|length is correct|med`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `already/and_it's/and_it_is/then_it's/then_it_is gone|it just disappears|it's done|nothing after`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `and/with no end|be_tasting/can_still_taste/no_end_to it|bides /wi_me/with_you|does not leave me|doesn't_let_you/won't_let go|drags/rings on|during/lasts/there_for minutes|goes_on_an/lasts_an age|in no hurry|keeps coming back|long after_i_swallow/after_it's_gone/after_the_glass/after_you_swallow|longer than_a/than_my|outlasts|outstays|remains|still be_tasting/be_tasting_it/taste_it/tasting/there_now|takes a_long_time/a_while/ages/all_day/all_evening/all_night/an_age/an_hour/forever/hours/minutes/the_whole_evening/the_whole_night to die/disappear/fade/go/leave/say|takes its_time_leaving/its_time_to_leave|without end`,
  },
  { says: "length", strength: 6.2, stance: "more", words: `lengthier|longer /than|longest|more long` },
  {
    says: "length",
    strength: 6.2,
    words: `a/a_fair/for_a/lasts_a while|fairly/medium/medium_to/moderately/quite/reasonably long|lasts nicely/well|longish`,
  },
  {
    says: "length",
    strength: 5,
    words: `/about_the same length|adequate|average|average/medium/mid/middle/middling/moderate/of_medium/standard length|avg|medium /sized|mid|middling|moderate|modest|neither_long_nor/not_long_not short|normal|ordinary|reasonable`,
  },
  {
    says: "length",
    strength: 4.2,
    stance: "less",
    words: `has shortened/shrunk|could_be/could_go_on/could_stand_to_be/should_be longer|half_as/less/not_as/not_so long|half_the/more length|not the_longest/the_longest_finish|quicker|shorter|shortest`,
  },
  {
    says: "length",
    strength: 3.4,
    words: `fairly/medium/medium_to short|on the short side|short to medium|shortish`,
  },
  {
    says: "length",
    strength: 2,
    words: `<ends> <fast>|a short one|a/in_a blink|abrupt|/as/cut/stops/too short|brief /as_a|brisk|clipped|collapses|cropped|cursory|curt|cut/tails off|dies /at_once/away/off|disappearing|disappears/vanishes /at_once|drifts/ebbs/melts/trickles away|drops away/dead/off/off_a_cliff|ephemeral|evaporates|faded|fades /out_quickly|falls away/off/off_a_cliff|fizzles /out|fleeting|gives up|inexistent|/is gone|is_not/is_not_very/isn't/isn't_very/none_too/not/not_a/not_too/not_very long|lacks/little/no length|little_to_speak/none_to_speak/nothing_to_speak of|momentary|non existent/existing|nonexistent|not existing/lasting/much_of_a/there|over before_it_began/before_it_starts|perfunctory|peters/runs out|poof|short as_a/lived|shortlived|snappy|stops /dead|transient|truncated|vanishing`,
  },
  {
    says: "length",
    strength: 2,
    alone: true,
    words: `and/it_just/just/simply stops|off it_goes/it_went|and then gone|leaves nothing behind|not long at all|over and done|runs out of steam|and_it's/and_then_it's/then_it's over|cuts out|seconds tops|slips away|tapers off|and/says goodbye|and/then nothing|blink and_you'll_miss_it/and_you_miss_it|/blink_and_it's/here_and/it's_just/just/there_and/there_and_then gone|bye bye|dies in_the_throat/on_the_tongue|disappears/it's_gone/over/vanishes before|drops_off_a/falls_off_a cliff|gone before_you've_swallowed/before_you've_swallowed_it/before_you_swallow/in/in_a_flash|isn't_long/not_long either|it's/it_is away|leaves at_once/fast/quickly|no lasting/staying_power|nothing after_that/afterwards/follows/left|runs away fast|short and_sweet/but_sweet|stops like_a/there|there and then it isn't`,
  },
  {
    says: "length",
    strength: 8,
    stance: "more",
    words: `double_the/three_times_the/twice_the length|twice as long`,
  },
  { says: "seconds", words: `s|sec|second|seconds`, unit: 1 },
  { says: "seconds", words: `min|minute|minutes`, unit: 60 },

  // Between flavours.
  { says: "join", join: "and", words: `&|also|and /also/some|as well as|et|n|plus|und` },
  {
    says: "join",
    join: "with",
    words: `alongside|behind|beneath|followed by|next to|on top of|under|underneath|with`,
  },
  {
    says: "join",
    join: "or",
    words: `neither|nor|or /could_it_be/is_it/maybe/perhaps/possibly/rather_like/was_it`,
  },
  {
    says: "break",
    words: `although|because|but|except|however|if|instead i get|only that|so now|than anything/expected/i'd_like/i_expected/i_like/i_remember/i_remembered/i_thought/i_would_like/it_looks/most/usual/you'd_think/you_would_think|though|unless|until|when|where|whereas|which|while|who|yet`,
  },
  {
    says: "start",
    words: `eventually|finally|first|he|i|i'd|i'm|i've|i_am_picking/i_picked/i'm_picking/we_picked up|it|it's|its|later|next|now|second|she|that is|that's|there|there's|they|we|you`,
  },
  {
    says: "glue",
    words: `a|about|about/behind/for/in/in_the_middle_of/of/on/to/under/underneath/with it|actually|again|ah|an|/and all|another|any|as /it_were|at /first/the_beginning/the_start|basically|being|big|bit|bits|black|bright|brown|by|couple|dark|dried|dry|dusty|er|erm|even|few|for /me|fresh /baked/cut/made/picked/squeezed|freshly /baked/made|from|gold|golden|good|green|her|here_and/in there|his|hm|hmm|home made|home/just baked|homemade|honestly|hot|how_do_you/how_we/let's/one_could say|in|/in_here somewhere|its|juicy|just|kind|/kind/sort of|light|like|literally|lovely|more|my|new|nice|note|o|oh|ok|okay|old|on|other|our|overly|own|particularly|piece|pure|quite|raw|real|really|red|ribbon|ripe|same|single|slice|/slow cooked|so|soft|some|sort|sticky|such|sweet|that|the /lot|their|these|thick|thin|this|those|to /begin_with|type|uh|um|up front and|very|warm|well|wet|white|whole|wild|yeah|yellow|yes|you know|your`,
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
    words: `<barely> <last> <toolong?>|<hardly> <closing>|doesn't_have_the/hasn't_the legs|in and out|lasts no time|not_a_lot/not_much/nothing_much happening`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `<nono> <leave>|<staying> <inmouth> <dur>|<stilltaste> <ago>|dallies|dawdles|dillydallies|endless|idles|keeps/keeps_on giving|loiters|lollygags|long lasting|outlives|takes its_own_time/its_sweet_time/its_time_going/its_time_to_go|tarries`,
  },
  {
    says: "idiom",
    words: `<cask> finish|<rinse> <the> mouth|<rinse> <the> palate|<stays> away|<stays> hidden|<stays> in check|<stays> in the background|<stays> polite|<stays> put|<stays> quiet|<stays> shy|<stays> under control|<stays> well back|<stays> with it|acquired taste|after it has <been>|after it's <been>|bottle won't last|burned_my/burnt_my tongue|eat_it/eat_this/have_it/put_it/put_that/put_this/spread_it/spread_this on toast|i'd_put it_on_toast/that_on_toast/this_on_toast|long in_barrel/in_cask/in_oak/in_the_barrel/in_the_bottle/in_the_cask/in_the_wood/in_wood|over/behind/through the hedge|before the oak|oak cube/spiral/stave/stick|part/parts corn/grain/malt/of_the_grain/of_the_malt/of_the_rye/of_the_wheat/rye/wheat|left it ten minutes|copper rim|the cask was|toasted the stave|short and to the point|deep drink|shut_my/shut_your eyes|fresh/hot/straight/warm from_the_oven|would dry|may/might/will_only/won't sting|clinging_to_the/clings_to_the/coats_the/sticks_to_the glass|cork broke/crumbled/fell|dry from|end product|everything smells/tastes|for the garden|goes down <well>|going down <well>|hard to swallow|hot take|keep_going/kept_going back|last me|leaves me_cold/me_thinking/me_wanting/the_last/the_others|long/oily/slow/thick legs|no fireworks|nothing to write home about|once it's <been>|palate is_shot/is_tired|palate's shot|pulled the cork|rich for my blood|rich_for_the/swallow_the price|sealed with wax|sore throat|swallowed my pride|sweet as a nut|taste/too_rich for|tasted blind/it_blind|the end result|throat is sore|throat is still sore|throat's /still sore|wax seal/top|we tasted it/this|went down <well>|when it's <been>|with a_grain_of_salt/the_cork`,
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
    words: `away_it/it/off_it goes|bows/checks/fizzles/peters out|/clears/slips off|disappeared|disappears|done|/drops/falls/slips away|ended|ends|exits|finished|gone|leaves|left|off it pops|over|vanished|vanishes`,
    behind: `abruptly|almost at_once/immediately/instantly|already|as soon as|at once|before i/i've/it/you/you've|by the time|/double quick|early|/fairly/pretty/quite/rather/so/too/very quickly|immediately|in a_blink/a_couple_of_seconds/a_flash/a_heartbeat/a_hurry/a_jiffy/a_moment/a_second/a_snap/a_trice/a_wink/an_instant/no_time/seconds|instantly|just like that|like a_lamp/a_light/a_shot/a_thief/that|/pretty/so/too/very fast|right away|sharpish|so/too soon|sooner than|straight away/off|suddenly|the minute/moment/second|without a_goodbye/a_trace/a_word/ceremony/goodbye/saying_goodbye`,
  },
  {
    says: "length",
    strength: 8,
    alone: true,
    words: `carries/clings/goes/hangs/hums/keeps/rings/went on|echoed|echoes|goes|hangs about|hangs/hung/sticks around|keeps going|lasted|lasts|lingered|lingers|persists|remains|runs|stayed|stays|still be_there/going/here/tasting_it/there|taste/tasting it|with me/you`,
    behind: `a_minute/an_hour/five_minutes/half_an_hour/hours/minutes/ten_minutes later|ages/long/minutes after|all day/evening/night/the_way_home/through|and lasts/lingers/on/on_and_on/stays|as long as|even now|for a_good_long_while/a_long_time/a_long_while/a_week/ages/an_age/days/donkey's_years/ever/hours/minutes/the_longest_time/weeks/yonks|for long time|forever|half the_evening/the_night|like a_bad/a_bell/a_church_bell/a_good/a_guest/a_sermon/a_song/a_vicar's/an_echo/an_in_law/mad/nobody's_business|longer than|the whole_evening/whole_length_of/whole_night/whole_of/whole_way_home|till morning/the_cows_come_home/tomorrow|until christmas/morning/the_cows_come_home/the_morning/tomorrow|yet`,
  },
  {
    says: "length",
    strength: 5,
    alone: true,
    words: `carries/goes on|hangs about/around/on|/it lingers/lasts|keeps going|lasted|lingered|persists|remains|stayed|stays|sticks around`,
    behind: `a bit/fair_bit/little/spell/touch|a/a_fair/a_little/for_a/for_a_little while|decently|/fairly/pretty/quite/rather well|for a_bit/a_spell|nicely|reasonably|well enough`,
  },
  {
    says: "length",
    strength: 2.5,
    alone: true,
    words: `hangs about|hangs/sticks around|lasted|lasts|lingered|lingers|persists|remains|stays`,
    behind: `a heartbeat|a/for_a second|a/for_a/only_a moment|a_few/for_a_few/only seconds|an/for_an instant|barely|/but/only briefly|but_not/but_not_for/not/not_for long`,
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
    words: `amazing|bags/loads of|enormous|extraordinary|huge|incredible|massive|remarkable|superb|tremendous`,
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
  chewy: null,
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
  fat: null,
};

/** Words that take the flavour before them into themselves: "plum jam" is plum. */
export const TAILS = `biscuit|bonbon|cake|cakes|candies|candy|cheesecake|chew|chews|chutney|cider|cobbler|compote|conserve|cookie|cordial|crumble|danish|drop|drops|essence|extract|flesh|fool|frosting|glaze|gum|gummies|gummy|humbug|ice cream|/ice lolly|icecream|icing|infusion|jam|jelly|juice|kernel|leaf|leaves|liqueur|lollipop|lozenge|meringue|mousse|muffin|nectar|oil|pancake|pancakes|pastille|pastry|peel|pie|pit|pith|pits|pod|pods|powder|preserve|preserves|pudding|pulp|punch|puree|relish|rind|root|salad|sauce|scone|scones|seed|seeds|shavings|sherbet|skin|slice|slices|sorbet|sponge|stone|stones|strudel|sweets|syrup|tart|trifle|turnover|waffle|waffles|zest`;
/** Tails that say something of their own as well. */
export const OWN_TAILS = `pie|strudel`;

/** Words of the vocabulary that are too common to be taken for a flavour unless something beside them says so. */
export const SHY = `aftershave|altar|antique|archive|armchair|artificial|attic|bakery|baking|balance|balloon|banger|bar of soap|bark|battery|bay|beach|beef|beer|bible|bite|bites|blood|bookcase|books|bookshelf|bookshop|booze|brewery|brick|bright|burned|burnt|cafeteria|cake|candle|canteen|caravan|cathedral|cave|chalk|chapel|chimney|chips|christmas|church|cigarette|clay|closed|coal|coast|coastal|coastline|coin|comic|concrete|cork|crab|crisp|crisps|crypt|damp|date|deep|dentist|dock|doctor's office|drain|drains|farm|fat|feet|fence|fern|fireplace|fireside|flat|forest|fridge|fudge|fuel|game|garage|garden|gas/petrol station|glasshouse|glides|glow|glue|goat|gravy|greenhouse|grip|handbag|harbor|harbour|harmony|hay bale|hearth|heat|hedge|hive|horses|hospital /ward|hug|ink|iron|ivy|kick|kidney|lacquer|laundry|lawn|lawnmower|layered|leaf|leek|library|linear|liver|lobster|loft|lush|mace|mash|match|matchbox|matches|medicine|metal|mineral/pool water|mop|mud|museum|nectar|newspaper|newsprint|nip|numbs|ocean|open|paint|paper|peel|pencil|pennies|penny|perm|pew|pharmacy|piano|pie|pier|pipe|plant|plastic|polish|polished|polytunnel|pond|porter|prawn|quarry|quay|quayside|raw|reed|rigging|riverbank|root|roots|rope|rough|round|rugged|rye|sage|sand|satin|sausage|sea|seaside|shampoo|sharp|shavings|sheep|shell|shore|shut /down|sick|simple|smokehouse|sock|socks|spirit|sprout|steam train|steel|stem|stew|sting|stings|stone|stout|straight forward|straightforward|study|stuffing|suitcase|swimming pool|tack|tent|tequila|timber|tin can|tired|tomb|twig|varnish|velvet|violin|vodka|wallet|wardrobe|wooden|woolly|workshop|yoghurt|young`;

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
