/** Phrases that are a danger or a fault by themselves, whatever else the line says. Data only; common practice, no source. */

/** With the name of the fault; empty where the line names it. Each looks a bounded way ahead. */
export const HAZARDS: readonly (readonly [phrase: RegExp, name: string])[] = [
  [
    /\b(?:petrol|gas|gasoline|fuel|jerry) ?(?:can|tin|jug|drum)s?\b.{0,40}\b(?:exhaust|hot|sun|stove|heater|manifold|battery|sparks?|smoking|left|open)\b/i,
    'fuel can',
  ],
  [
    /\b(?:rags?|gloves?|sleeve|hair|scarf|leads?|hose|cable|wires?|strap|rope)\b.{0,25}\b(?:caught|wrapped|in the fan|on the exhaust|on the manifold|against the|touching)\b/i,
    '',
  ],
  [
    /\b(?:exhaust|fumes|smoke|petrol|gas)\b.{0,30}\b(?:in the |inside the |into the )?(?:cabin|cab|inside|boot|cockpit|heater)\b|\b(?:cabin|cab|heater|cockpit)\b.{0,30}\b(?:exhaust|fumes|smoke|petrol)\b/i,
    'exhaust fumes',
  ],
  [
    /\b(?:headache|dizzy|drowsy)\b.{0,30}\b(?:drive|driving|cab|cabin|fumes|run|road)\b|\bCO alarm\b/i,
    'fumes',
  ],
  [
    /\bpedal (?:is |was |gone |went |goes |now )?(?:long|soft|to the floor|low|spongy|sinks?|sank|hard|down)\b|\bno pedal\b/i,
    'brakes',
  ],
  [/\bbrake fluid\b.{0,25}\b(?:boil\w*|cook\w*|low|gone|everywhere|black|on the|down)\b/i, 'brakes'],
  [
    /\b(?:horn|nav(?:igation)? lights?|(?:side|head|tail|stop|brake|anchor|stern|bow) ?(?:lights?|lamps?|lites?)|indicators?|blinkers?|wipers?)\b.{0,20}\b(?:dead|out|gone|broken?|burnt|blown|not working|dim|failed|missing|quit|dark)\b/i,
    '',
  ],
  [
    /\b(?:lug|wheel|hub|axle|steering|track rod|drag link|king ?pins?|hitch|tow ?bar|coupling|shackle|tie rod|ball joint)\b.{0,25}\b(?:loose|missing|sheared|bent|cracked|gone|stripped|play|slop|slack|worn)\b/i,
    '',
  ],
  [
    /\b(?:tyres?|tires?)\b.{0,25}\b(?:bald|cords?|split|bulge|bulging|cracked|flat|perished|egg|worn through)\b/i,
    'tyre',
  ],
  [
    /(?:\b(?:oil|water|temp|head|cht|egt|pressure)\b.{0,20}\d|\d.{0,20}\b(?:oil|water|temp|head|cht|egt|pressure)\b).{0,25}\b(?:stopped|shut (?:it |her )?(?:off|down)|come in|came in|pulled over|killed it|limped|switched off)\b/i,
    'engine',
  ],
  [
    /\boil (?:pressure )?(?:dropped to |fell to |at |gone to |down to )?(?:0(?![.,]\d)|zero|nothing|nil)\b|\bno oil pressure\b|\blost oil pressure\b/i,
    'oil pressure',
  ],
  [
    /\b(?:burn\w*|scald\w*|cut|bruised|trapped|smashed|broke|skinned) (?:my |his |her |the |a |me )?(?:\w+ )?(?:hand|fingers?|arm|thumb|knuckles?|face|wrist|leg|shin|eye)\b/i,
    'injury',
  ],
  [/\b(?:hand|fingers?|sleeve|thumb)\b.{0,20}\b(?:nearly|caught|trapped|burn\w*|scald\w*)\b/i, 'injury'],
  [/\b(?:flames?|sparks?)\b.{0,20}\b(?:out of|from|at|near|under|by)\b/i, 'fire'],
  [
    /\b(?:roll(?:s|ed|ing)?) (?:back|away|off|down)\b|\b(?:jump(?:s|ed)?|slip(?:s|ped)?|pop(?:s|ped)?) out of (?:gear|park|\d|first|second|third|top)\b/i,
    'gearbox',
  ],
  [/\bwon'?t stay in (?:gear|park)\b|\bstart(?:s|ed) in gear\b/i, 'gearbox'],
  [/\btaking (?:on|in) water\b|\bwater (?:is |was )?(?:coming|getting|leaking|pouring) in\b/i, 'bilge'],
  [/\bbilge pump\b.{0,20}\b(?:quit|dead|not|won'?t|stuck|seized|failed|off|out)\b/i, 'bilge pump'],
  [/\bsmoke (?:coming )?(?:from|out of) (?:under|behind|the )/i, 'smoke'],
  [/\bhot (?:cables?|wires?|leads?|terminals?|fuses?)\b/i, 'wiring'],
  [/\bran away\b|\brunaway\b|\bover-?revved\b|\brevs? away\b|\braced (?:away|off)\b/i, 'throttle'],
  [/\bbattery\b.{0,25}\b(?:boiling|gassing|hot|bulging|swollen|acid|hissing|loose|smell\w*)\b/i, 'battery'],
  [
    /\b(?:petrol|fuel|gas|gasoline)\b.{0,25}\b(?:on the (?:exhaust|manifold|floor|block)|everywhere|all over|spil\w+|puddle|pool\w*)\b/i,
    'fuel',
  ],
  [
    /\b(?:fuel|petrol|brake)\b.{0,15}\b(?:hoses?|lines?|pipes?)\b.{0,25}\b(?:hard|brittle|soft|cracked|perished|old|rotten|sweating|damp|wet|touching|rubbing|close to|near|by the exhaust)\b/i,
    'fuel hose',
  ],
];

/** How an engine runs, or a thing behaves, that does not do so as it ought to. */
export const UNWELL =
  /^(?:she |it |just |still )?(?:dies|stalls|cuts out|runs on|hunts|surges|misses|misfires|floods|backfires|overheats|won'?t (?:start|idle|rev|run))\b|\bfeels? (?:\w+ )?(?:lean|rich|flat|weak|rough|soft|spongy)\b|\bhard to start\b|\bsounds? like (?:a|an|it|the)\b|\bmak(?:es|ing) (?:a|an) (?:\w+ )?(?:noise|racket|squeal|whine|clunk|knock|tick)\b|\bvapou?r[- ]?lock\w*|\bpunctur\w*|\bflat (?:tyre|tire)\b|\bof its own accord\b|\bnot charging\b|\bno (?:charge|spark|start)\b|\b(?:its|it's|must be|probably|reckon its) (?:the )?(?:rings|valves?|head gasket|bearings?|condenser|coil|diaphragm)\b|\b(?:fell|dropped|falls) (?:off|apart)\b|\bcame (?:apart|adrift|loose)\b|\bquits?\b.{0,20}\b(?:when|on|working|charging|hot|cold)\b|\blost (?:a|the|its|one) (?:bolt|nut|screw|prime|clip|cap|cover|pin|washer|spring|silencer|muffler)\b|\bpacked up\b|\bgave up\b|\bconked out\b|\bknackered\b|\bbust(?:ed)?\b|\b(?:is|are|was|looks) shot\b|\b(?:has|have) had it\b|\bwon'?t (?:start|idle|rev|run|shut|open|close|hold|stay|turn|work|come|go)\b|\b(?:doesn'?t|don'?t|didn'?t) (?:work|charge|close|shut|open|return|start|hold|run)\b|\bmissed every\b|\bmisfir\w*/i;
