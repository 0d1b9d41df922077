/**
 * What must not fail, by systems: a thing of a list and a trouble of a list in one line, in either order. Each pattern is looked for by
 * itself, so that the work grows with the line and no more. Data only; common practice, no source.
 */

import { withoutSlips } from './slips.ts';

interface System {
  /** All of them must be in the line; the first that is found in it names the fault. */
  readonly all: readonly RegExp[];
  /** Lines that only look like it. */
  readonly none?: RegExp;
}

const LEAKS =
  /\b(?:(?:ran|runs?|running|comes?|came|coming|spills?|boils?) (?:over|out)\b(?! of)|over ?flow\w*|floods?\b|flooded|flooding|drip\w*|leak\w*|weep\w*|wept|puddle\w*|pool\w*|spil[lt]\w*|seep\w*|dribbl\w*|piss\w*|pour\w*|squirt\w*|spray\w*|spurt\w*|gush\w*|sweat\w*|damp\w*|loses|losing|porous|r[au]n(?:s|ning)? (?:down|along|onto|off)|trickl\w*|ooz\w*)/i;
const LACKS =
  /\b(?:(?:do|does|did|wo|would|ca|could|is|are|was)(?:n['’]?t| not)\b|can ?not\b|never\b|no longer\b|fail\w*|refus\w*|dead\b|stuck\b|sticks?\b|sticking\b|jam\w*|broke\w*|bypass\w*|bridged|missing\b|loose\b|lost\b|not work\w*|works? not|nothing\b|sometimes\b|intermittent)/i;

const SYSTEMS: readonly System[] = [
  // Fuel that gets out, and its smell.
  {
    all: [
      /\b(?:petrol|gasoline|gas|fuel|benzin\w*|essence|diesel)\b/i,
      new RegExp(
        `${LEAKS.source}|\\b(?:smell\\w*|smelt|stink\\w*|stank|reek\\w*|whiff\\w*|pong\\w*|vapou?rs?|fumes|wet|mist|film|stains?)\\b|\\b(?:on|over|under|in) the (?:floor|ground|exhaust|manifold|engine|block|starter|dynamo|garage|shed|bilge|hatch|boot|trunk|cab|cabin)\\b|\\beverywhere\\b`,
        'i',
      ),
    ],
    none: /\bplugs?\b.{0,20}\bwet\b|\bwet\b.{0,20}\bplugs?\b|\bexhaust gas\b|\bfull gas\b/i,
  },
  {
    all: [
      /\b(?:carb(?:s|\d|uret\w*)?|float (?:bowl|chamber)s?|bowls?|petcock|(?:fuel|petrol|gas|tank) ?(?:tap|cock|valve|filter|pump|hose|line|pipe|union)|banjo|sediment bowl|jerry ?can|primer|filler(?: neck| cap)?|needle valve|tank(?: seam)?)\b/i,
      new RegExp(`${LEAKS.source}|\\bwet\\b`, 'i'),
    ],
    none: /\bdrain\w*\b|\bpump squirt/i,
  },
  // A throttle that may not close.
  {
    all: [
      /\b(?:throttles?|accelerator|gas (?:pedal|cable|handle|grip|lever|hand)|butterfl(?:y|ies)|carb (?:linkage|slide)|linkage|twist ?grip|slides?|bowden(?: cable)?|throttle (?:cable|rod|spring|linkage)|governor (?:rod|linkage|spring))\b/i,
      /\b(?:stick\w*|stuck|hang\w*|hung|jam\w*|fray\w*|strands?|stiff\w*|catch(?:es|ing)?|caught|snag\w*|bind\w*|broke\w*|snapped|(?:stays?|stayed|left) (?:open|up|on|hanging)|lazy|(?:came|fell|popped|jumped|slipped) off|slow\w*|no return|(?:not|n['’]?t|never|no longer) (?:\w+ )?(?:return|close|shut|come|go|snap)\w*|(?:spring|clip|pin) (?:\w+ )?(?:off|gone|missing|lost|weak|tired|broken))\b/i,
    ],
    none: /\bslow (?:running|run|jet|speed|idle)\b/i,
  },
  { all: [/\bgas\b/i, /\b(?:hangs?|hanging|hung|sticks?|stuck|stays (?:open|on|hanging))\b/i] },
  {
    all: [
      /\brevs?\b|\bengine\b|\bmotor\b|\bidle\b/i,
      /\b(?:stays?|stayed|stuck|hangs?|hung|keeps?) (?:up|high|on|open|racing|screaming)\b|\b(?:won['’]?t|doesn['’]?t|didn['’]?t|wouldn['’]?t|does not|will not|did not) (?:come|go|drop|fall) (?:down|back|off)\b|\b(?:raced|screamed|took off|ran away|runs away|by itself|on its own)\b/i,
    ],
  },
  {
    all: [
      /\b(?:ran|went|goes|runs|stayed|took off|on) (?:on |to |at )?(?:full|wide open)\b.{0,12}\b(?:after|by (?:itself|herself)|on (?:its|her) own|when i (?:let|lift))/i,
    ],
  },
  // Brakes.
  {
    all: [
      /\b(?:brakes?|braking|foot ?brake|hand ?brake|park(?:ing)? brake|brake (?:lever|pedal|fluid|pads?|shoes?|hose|pipe|line|cable|rod)|calipers?|brake drums?|wheel cylinders?|master cylinder|brake discs?|pads|brake shoes)\b/i,
      /\b(?:pull\w*|soft|spong\w*|fad(?:e|es|ed|ing)|long|grab\w*|snatch\w*|lock\w*|bind\w*|drag\w*|leak\w*|weep\w*|drip\w*|wet|oily|greasy|low|lost|loses|losing|no fluid|worn|thin|metal|grind\w*|scored|crack\w*|weak|poor|bad|useless|hopeless|gone|fail\w*|nothing|lever (?:comes|touches|goes)|to the (?:bars?|handle|handlebars?|grip|floor|stop|boards?)|half ?way|twice|pump\w*|hot|smok\w*|smell\w*|stink\w*|one (?:side|wheel)|only (?:on )?(?:one|the|left|right|front|rear)|judder\w*|shudder\w*|puls\w*|barely|hardly|late|air in|stick\w*|stuck|seiz\w*|uneven|(?:won|don|doesn|didn|wouldn|isn|aren)['’]?t|not|never|no|to (?:the )?(?:left|right))\b/i,
    ],
    none: /\bbrake (?:cleaner|hp|horse ?power|mean)|\bbrake[sd]? (?:bled|adjusted)\b/i,
  },
  {
    all: [
      /\bpedal\b/i,
      /\b(?:half ?way|floor|sinks?|sank|sinking|soft|long|spong\w*|twice|pump\w*|grabs?|nothing|hard|bottoms?|low|goes down|went down)\b/i,
    ],
  },
  // Steering and what holds the wheels.
  {
    all: [
      /\b(?:steering(?: \w+)?|steers|track ?rods?|tie ?rods?|drag ?link|king ?pins?|ball ?joints?|helm|rudder|tiller|head(?:stock)? bearings?|forks?|swing ?arm|front end|wheel bearings?|handlebars?|column|wishbone|hub|axle)\b/i,
      /\b(?:play|slack|slop\w*|loose|wander\w*|pull\w*|wobbl\w*|shimm\w*|shak\w*|stiff|heavy|bind\w*|notchy|crack\w*|bent|worn|jam\w*|lock\w*|stuck|sticks?|vague|clunk\w*|leak\w*|moves?|moved|rubs?|hits?|touch\w*|dry|grumbl\w*|growl\w*|rumbl\w*|broke\w*|missing|has air|tight on)\b/i,
    ],
    none: /\b(?:fork|axle) (?:oil|seal)\b|\block ?nut/i,
  },
  {
    all: [
      /(?<!steering )\b(?:wheels?|rims?|hubs?|spokes?|wheel ?(?:nuts?|studs?|bolts?)|lug ?(?:nuts?|bolts?)|lugs?|axle nut|split ?pins?)\b/i,
      /\b(?:loose|missing|crack\w*|wobbl\w*|play|rocks?|rocking|hot|grumbl\w*|growl\w*|rumbl\w*|broke\w*|bent|moved|(?:came|fell|come|coming) (?:off|loose|undone)|lost|sheared|snapped|rubs?|rubbing|touch\w*|from the (?:swing ?arm|fork|frame|arch)|slack|stripped|not tight|undone|backed off)\b/i,
    ],
    none: /\bwater ?wheel/i,
  },
  {
    all: [
      /\b(?:t[iy]res?|side ?walls?|tread|(?:front|rear|back) rubber)\b/i,
      /\b(?:bulg\w*|cords?|canvas|split\w*|crack\w*|bald|flat|punctur\w*|perish\w*|egg|lump\w*|bump|blister\w*|cuts?|slash\w*|nail|worn|thin|blow ?outs?|blew|burst|wires? show\w*|steel|(?:loses|losing|lost) (?:air|pressure)|leaks?|soft|(?:goes|going|went) down|rubs?|rubbing|old|no tread|loose on)\b/i,
    ],
    none: /\bsoft compound\b/i,
  },
  {
    all: [
      /\b(?:speed |wheel |front |rear |back |bad |nasty )?(?:wobbl\w+|shimm(?:y|ies)|tank ?slapper)\b/i,
      /\b(?:speed|above|over|at|from|past|when|front|rear|back|wheel|bars?)\b/i,
    ],
  },
  // Turning parts, belts and what covers them.
  {
    all: [
      /\b(?:guards?|shields?|safety cover|belt cover|cage|chain ?case|shroud)\b/i,
      /\b(?:no|without|missing|off|gone|lost|broke\w*|loose|bent|cracked|left|not (?:on|fitted)|fell|adrift)\b/i,
    ],
    none: /\bmud ?guards?\b|\bheat shield\b.{0,20}\b(?:fitted|new)\b/i,
  },
  {
    all: [
      /\b(?:fan|fan ?blades?|fan ?belt|belts?|v-?belt|pulley|pto|pto shaft|prop ?shaft|drive ?shaft|flywheel|chain)\b/i,
      /\b(?:fray\w*|crack\w*|shred\w*|split\w*|thrown|threw|(?:came|fell|comes) off|flew|flies|jump(?:s|ed|ing)?|snap(?:ped|s)?\b(?! (?:shut|back))|broke\w*|caught|grabb?ed|wobbl\w*|loose|bent|(?:near|close to|touch\w*|hits?|hitting|rubs?|rubbing)|vibrat\w*|whip\w*|blade (?:off|gone|missing)|(?:too )?(?:slack|loose))\b/i,
    ],
    none: /\btiming chain\b/i,
  },
  // Fire and heat.
  {
    all: [
      /\b(?:caught fire|on fire|small fire|a fire|flames?(?! (?:arrest|trap|front))|blaze|burst into|smell of burning|burning (?:smell|rubber|plastic|wire|oil)|smells? (?:of )?burn\w*|smould\w*|scorch\w*|singe\w*|back-?fir\w+|(?:spits?|spat|spitting|pop(?:s|ped)?|pops) (?:back|flame|fire) ?(?:through|thru|into|out of|at|in)|red ?hot|cherry red|glow(?:s|ed|ing)|used the extinguisher|grabbed the extinguisher|melt(?:s|ed|ing)?)\b/i,
    ],
  },
  {
    all: [
      /\b(?:hoses?|lines?|wires?|wiring|loom|cables?|pipes?|harness|leads?|insulation|lagging|tank|rag)\b/i,
      /\b(?:exhaust|manifold|headers?|muffler|silencer|down ?pipe|fan|pulley|belt|shaft|hot)\b/i,
      /\b(?:touch\w*|rub\w*|chaf\w*|l(?:ies|ying|ays|aying) on|rest\w* on|against|close|near|next to|sits? on|hang\w*|melt\w*|soft|brown|too)\b/i,
    ],
  },
  // Exhaust where people breathe.
  {
    all: [
      /\b(?:exhaust|fumes|smoke|CO|monoxide|silencer|muffler|manifold)\b/i,
      /\b(?:cab|cabin|cockpit|inside|in the (?:car|truck|boat|van|shed|garage|tent|house|wheelhouse)|heater|foot ?well|window open|windows open|head ?ache|drowsy|nause\w*|light-?headed|sleepy|sick|ill|faint|eyes|alarm|doors? (?:shut|closed)|blow(?:s|ing)? (?:in|into|at|onto|on))\b/i,
    ],
    none: /\b(?:CO|monoxide) ?(?:at )?\d|\bvacuum inside\b/,
  },
  {
    all: [
      /\b(?:head ?ache|drowsy|nause\w*|light-?headed|sleepy|felt (?:sick|ill|faint|funny|queasy)|feel (?:sick|ill|faint)|eyes (?:were |are )?(?:burn\w*|sting\w*|stung|water\w*|sore))\b/i,
      /\b(?:driv\w*|cab|cabin|car|truck|boat|tractor|heater|road|shed|garage|run\w*|fumes|smell\w*|inside|behind|motor|engine|ride|riding|trip|miles|hour)\b/i,
    ],
  },
  {
    all: [
      /\b(?:CO|smoke|gas|fume) ?(?:meter|alarm|detector)\b/i,
      /\b(?:beep\w*|went|goes|going|rang|sounded|chirp\w*|red|screamed|off)\b/i,
    ],
  },
  // Electrics.
  {
    all: [
      /\b(?:wires?|wiring|cables?|earth|ground|earth strap|ground strap|straps?|terminals?|fuses?|fuse ?box|loom|dynamo|generator|alternator|starter|solenoid|switch|connector|plug top|harness|ammeter|leads?|relay|insulation|regulator|coil|shore power)\b/i,
      /\b(?:hot\b(?! start)|burn(?:t|ed|s|ing)?\b|smok\w*|melt\w*|spark(?:s|ed|ing)\b|arc(?:s|ed|ing)\b|short(?:s|ed|ing)\b|bare\b|chafed\b|blister\w*|smell\w*|scorch\w*|fizz\w*|crackl\w*|glow\w*|brown\b|insulation (?:off|gone|cracked|split))/i,
    ],
    none: /\bhot (?:idle|start|run|restart)|\b(?:when|until|till|if|once) (?:\w+ )?hot\b(?=.{0,3}$)/i,
  },
  {
    all: [
      /\b(?:(?:a|an|electric|nasty|good|proper|got|gave me|bad) (?:shock|jolt|belt|zap|tingle)|zapped|shocked me|electrocut\w+|bit me|threw me|tingl(?:e|es|ed|ing) (?:in|when|from|off))\b/i,
    ],
    none: /\bshock absorb|\b(?:fan|drive|new|v) belt\b/i,
  },
  // What stops the engine.
  {
    all: [
      /\b(?:kill|stop|ignition|cut-?out|side ?stand|prop ?stand|dead ?man|safety|neutral|seat|emergency|isolator|pto|off|key|main|lanyard)[- ]?(?:switch|button|lever|lanyard|cable|cord|key|cut-?off|knob|control)?\b/i,
      /\b(?:switch|button|lanyard|lever|cable|cord|key|knob|control|cut-?off)\b/i,
      LACKS,
    ],
  },
  {
    all: [
      /\b(?:won['’]?t|wouldn['’]?t|doesn['’]?t|didn['’]?t|does not|did not|will not|would not|can['’]?t|could ?n['’]?t|cannot|can not|no way to) (?:\w+ ){0,2}?(?:shut (?:down|off|up)|stop|switch off|turn off|cut (?:out|off|the)|kill)\b(?! (?:for|to|at|smiling|laughing|talking|until|till))|\b(?:stops|stop) not\b|\b(?:kept|keeps|goes on) (?:on )?running\b.{0,25}\b(?:off|key|switch)\b|\bhad to (?:stall|choke) (?:it|her)\b/i,
    ],
  },
  // Lifting.
  {
    all: [
      /\b(?:jack(?:s|ed)?|axle stands?|(?<!side )(?<!center )(?<!centre )stands|on (?:the )?blocks|hoist|ramps?|chocks?|trolley jack|engine crane|sling|winch|chain block|strop)\b/i,
      /\b(?:slip\w*|sinks?|sank|sinking|fell|dropp?(?:ed|s)|collaps\w*|tilt\w*|wobbl\w*|roll\w*|creeps?|crept|leak\w*|moved|gave|let go|bent|cracked|shift\w*|no|without|frayed|kinked|tipped)\b/i,
    ],
  },
  // Batteries, and what is under pressure.
  {
    all: [
      /\b(?:battery|batteries|batt|accumulator|cells?)\b/i,
      /\b(?:acid|boil\w*|hot|bulg\w*|swollen|swell\w*|gass(?:es|ing|ed)|hiss\w*|smell\w*|stink\w*|rotten eggs?|loose|leak\w*|spark\w*|crack\w*|fizz\w*|burst|explod\w*|not strapped|no strap|warm to)\b/i,
    ],
    none: /\bhot water bottle\b/i,
  },
  {
    all: [
      /\b(?:rad(?:iator)?(?: cap| hose)?|(?:top|bottom|water|coolant|heater) hoses?|hoses?|coolant|cooling|header tank|expansion tank|pressure cap|water|steam|antifreeze)\b/i,
      /\b(?:bulg\w*|burst\w*|blew\b|blows? off|blown off|balloon\w*|swell\w*|swollen|swelled|scald\w*|steam(?:ing|ed)?|geyser|boil(?:ed|s|ing)?(?: over)?|spurt\w*|sprayed|spray)\b/i,
    ],
    none: /\bsteam clean/i,
  },
  // Starting handles.
  {
    all: [
      /\b(?:crank(?:ing)?|handle|starting handle|swing(?:ing)?|kick ?start\w*|kick(?:er)?|rope)\b/i,
      /\b(?:kick(?:s|ed|ing)?(?: me| him)? back|kicks?\b|kicked\b|kick-?back|bit\b|flew (?:out|off|back)|threw\b|whack\w*|snatch\w*|bruis\w*|broke my|nearly broke|tore)\b/i,
    ],
    none: /\bkick(?:s|ed|ing)? (?:over|up|in)\b|\b(?:first|second|third|one|two|three|few|\d+) kicks?\b|\bkicked (?:first|once|twice)\b/i,
  },
  {
    all: [
      /\b(?:(?:head|tail|brake|stop|side|nav|rear|back|front|bow|stern) ?(?:lights?|lamps?)|indicators?|blinkers?|turn signals?|winkers?|wipers?|horn)\b/i,
      /\b(?:(?:do|does|did|wo|is|are)(?:n['’]?t| not)|goes not|go not|dead|out|no longer|failed|fails|flicker\w*|quit|dim|only one)\b/i,
    ],
    none: /\bn['’]?t loud|\bnot loud|\bhead ?lights? (?:cleaned|polished)/i,
  },
  {
    all: [
      /\b(?:stand|stood|both feet) on (?:it|them|the (?:brakes?|pedal))\b/i,
      /\b(?:stop|brakes?|pedal|slow)\b/i,
    ],
  },
  {
    all: [/\bbilge\b/i, /\b(?:full|water|petrol|fuel|gas|smell\w*|silent|quit|wet|rising|oily|fumes)\b/i],
    none: /\bbilge (?:dry|clean)/i,
  },
  {
    all: [
      /\b(?:rattl\w*|marbles|clatter\w*|crackl\w*|hammer\w*)\b/i,
      /\b(?:under load|up the (?:bank|hill)|on the pull|pulling hard|full throttle|marbles|wide open|lugging|labou?ring)\b/i,
    ],
  },
  // What must not fail at all: anything odd about it.
  {
    all: [
      /\b(?:brakes?|foot ?brake|hand ?brake|brake (?:pipe|hose|line|lever|pedal)|steering|t[iy]res?|wheel ?nuts?|lug ?nuts?|accelerator|twist ?grip|return springs?|throttle (?:spring|cable|return|rod)|(?:belt|chain|fan|pto|flywheel) ?(?:guard|belt)|(?:kill|stop) (?:switch|button)|lanyard|seat ?belts?|brake lights?)\b/i,
      /\b(?:\w+n['’]t|nothing|never|only|hardly|barely|down to|late|kink\w*|corrod\w*|rust\w*|squash\w*|finger tight|still not|not|carcass|threads?|like it did|used to|worse|odd|funny|strange|rough|nois\w*|creak\w*|groan\w*|pitted|nearly|almost|tired|weak|gone|lost|blew|broke\w*|snapped|cracked|ripped|torn|through|scary|frightening|dangerous|iffy|dodgy|suspect|doubtful|dicey|one of|by (?:itself|themselves)|on (?:its|their) own|lazy|sleepy)\b/i,
    ],
    none: /\b(?:brake (?:hp|horse|cleaner)|not (?:touched|bad|yet driven)|fan ?belt only|good|fine|ok|okay)\b/i,
  },
  // What holds people, and what is open on the road.
  {
    all: [
      /\b(?:seat ?belts?|lap belt|safety harness)\b/i,
      /\b(?:fray\w*|cut|stuck|broke\w*|jam\w*|loose|won['’]?t|not|missing|torn)\b/i,
    ],
  },
  {
    all: [
      /\b(?:bonnet|hood|door|tailgate|boot lid|seat)\b/i,
      /\b(?:(?:flew|flies|pops?|popped|burst|came) (?:open|up|off|loose)|(?:won['’]?t|doesn['’]?t|does not|will not) (?:stay|latch|close|shut|lock)|(?:catch|latch|hinge|lock) (?:\w+ )?(?:gone|broke\w*|bent|missing|worn))\b/i,
    ],
  },
  {
    all: [
      /\b(?:frame|chassis|sub ?frame|leaf spring|road spring|engine mounts?|transom|hull|tow ?bar|hitch|coupling)\b/i,
      /\b(?:crack\w*|broke\w*|snapped|bent|loose|rotten|rusted through|split|sheared|jumped off|came off)\b/i,
    ],
  },
  {
    all: [
      /\b(?:oil|grease|fluid)\b/i,
      /\bon(?:to)? the (?:\w+ )?(?:exhaust|manifold|brakes?|t[iy]re|disc|road|pads?|shoes?|downpipe|header)\b/i,
    ],
  },
  {
    all: [
      /\b(?:kids?|child(?:ren)?|bairns?|grandkids?|nippers?|lads?|dog)\b/i,
      /\b(?:near|about|around|close|away from|not to|keep|too)\b/i,
      /\b(?:fan|belts?|pto|flywheel|shaft|chain|prop|blades?|petrol|gas|fuel|hot|acid)\b/i,
    ],
  },
];

/** What a line says is wrong that must not be: the thing as it is called; undefined for none. */
export function systemIn(said: string): string | undefined {
  if (/\bneighbou?r['’]?s\b/i.test(said)) return undefined;
  const text = withoutSlips(said);
  for (const { all, none } of SYSTEMS) {
    if (none?.test(text)) continue;
    const first = all[0]?.exec(text)?.[0];
    if (first !== undefined && all.every((each) => each.test(text))) return first.toLowerCase().trim();
  }
  return undefined;
}
