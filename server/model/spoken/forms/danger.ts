/** Trouble in a line: never a value and never a guess, but a fault to be written, marked where it is a matter of safety. */
import type { Piece } from '../classify.ts';
import { asked, type SpokenReading } from '../habits.ts';
import { COMPLAINTS, DANGERS, EXPOSED, FUELS, TROUBLES } from '../lexicon.ts';
import { isFaulty } from './faults.ts';
import { HAZARDS, UNWELL } from './hazards.ts';
import { isMended } from './mended.ts';
import { systemIn } from './systems.ts';

interface Trouble {
  readonly safety: boolean;
  /** What it is about. */
  readonly name: string;
}

const wordsOf = (text: string): readonly string[] =>
  (text.toLowerCase().match(/[\p{L}][\p{L}'’-]*/gu) ?? []).map(withG);

/** `leakin`, `stickin'`: the g that is not said. */
function withG(word: string): string {
  const full = /in'?$/.test(word) ? `${word.replace("'", '')}g` : '';
  return TROUBLES.has(full) || DANGERS.has(full) ? full : word;
}

/** Phrases that are a danger by themselves, with the name of the fault. */
const PHRASES: readonly (readonly [phrase: RegExp, name: string])[] = [
  [/\b(?:spat|spit|spits|spitting) back\b(?=.*\b(?:carb|crank|arrest|flame))/i, 'backfire'],
  [/\bkick(?:ed|s)? back\b/i, 'kickback'],
  ...HAZARDS,
  [
    /\b(?:brakes?|lights?|lamps?|steering|kill switch|horn|throttle|clutch|bilge pump|extinguisher)\b.{0,20}\b(?:do|does|did|will|would|is|are)(?: not|n'?t)\b/i,
    '',
  ],
  [/\bhand ?brake\b.{0,20}(?:\bnot\b|n'?t\b|slips|creeps|weak)/i, 'handbrake'],
  [/\bno (?:brakes?|brake lights?|lights|headlights?|tail ?lights?|steering|horn|extinguisher)\b/i, ''],
  [/\b(?:petrol|gas|gasoline|fuel) in the (?:oil|sump|cabin|boat|bilge|boot|trunk)\b/i, 'fuel'],
  [/\bmelt(?:s|ed|ing)?\b|\bglow(?:s|ed|ing)?\b/i, 'heat'],
  [/\bcaught in (?:the |a )?(?:fan|belts?|prop|pto|chain|shaft)\b/i, 'fan'],
  [/\bjack (?:slipped|let go|fell|sinks)\b|\boff the (?:jack|stands?)\b/i, 'jack'],
  [/\b(?:guard|shield|belt cover) (?:is |was )?(?:off|missing|broken|gone|lost)\b/i, 'guard'],
  [/\b(?:wheel|axle|hub) ?bearings? (?:\w+ )?hot\b/i, 'wheel bearing'],
  [/\b(?:belts?|chain) (?:is |a bit |bit |was |feels )?(?:slack|loose|slipping)\b/i, 'belt'],
  [/\bgave me a (?:belt|shock|jolt|kick)\b|\bgot a (?:belt|shock|jolt)\b|\bbit me\b/i, 'shock'],
  [/\bwater in (?:the )?bilge\b/i, 'bilge'],
  [/\bfan (?:did|does|is|was)(?: not|n'?t) (?:run|turn|running|turning|start|come)/i, 'fan'],
  [
    /\b(?:pinking|pinging|knocking|detonat\w+) (?:hard|badly|heavily|like)\b|\bhard (?:pinking|pinging|knock)/i,
    'knock',
  ],
  [/\b(?:she|it) creeps\b|\bcreeps in\b/i, 'clutch'],
  [
    /\b(?:still|slight|faint|light|little)\b.{0,40}\b(?:tinkl|ping|pink|knock|rattl)|\btinkl(?:es|ing)\b/i,
    'knock',
  ],
];

/** Knock, by what it is called; it may also be denied. */
const KNOCKS = new Set(
  'ping pings pinged pinging pink pinks pinked pinking knock knocks knocked knocking detonation detonates detonating tinkle tinkles tinkling rattling'.split(
    ' ',
  ),
);
const DENIED =
  /\b(?:no|not|never|none|without|gone|cured|stopped|quit|free|isn'?t|doesn'?t|didn'?t|won'?t|pink (?:cam|#))\b/i;

const KNOCKED_BACK = /\bknock(?:ed|s)?\b(?=(?: \S+){0,4} (?:back|down|up|off|out)\b)/i;

/** Undefined where nothing is said to be wrong. What is mended is no trouble; what a line says besides may be. */
export function troubleIn(said: string): Trouble | undefined {
  if (!isMended(said)) return troubleOf(said);
  const besides = said.split(/[,;]|\bbut\b/i).filter((each) => !isMended(each));
  return besides.map(troubleOf).find((trouble) => trouble?.safety);
}

function troubleOf(said: string): Trouble | undefined {
  // `knocked it back 2` is a change of the timing, and no noise.
  const text = said
    .replace(KNOCKED_BACK, ' ')
    .replace(/\bdead (?:on|level|slow|steady|right|easy|nuts)\b/i, ' ');
  for (const [phrase, name] of PHRASES)
    if (phrase.test(text))
      return {
        safety: true,
        name: name || nameOf(text, wordsOf(text).find((word) => STRICT.has(word)) ?? ''),
      };
  const words = wordsOf(text);
  if (words.some((word) => KNOCKS.has(word)) && !DENIED.test(text)) return { safety: true, name: 'knock' };
  const smells =
    /\b(?:petrol|fuel|gas|gasoline|hot|burn\w*|electric\w*|rubber|oil|smoke|fumes|exhaust)\b/i.test(text);
  const bad = words.find(
    (word) =>
      DANGERS.has(word) &&
      TROUBLES.has(word) &&
      (smells || !/^smel/.test(word)) &&
      // An engine pulls a load, and brakes pull to a side.
      !(/^pull/.test(word) && !words.some((each) => STRICT.has(each))),
  );
  const others = words.filter((word) => EXPOSED.has(word) && word !== bad);
  const exposed = others.find((word) => isWrong(words, word)) ?? others[0];
  const isFuel = words.some((word) => FUELS.has(word));
  if (exposed && (bad || isWrong(words, exposed))) return { safety: true, name: nameOf(text, exposed) };
  if (isFuel && bad) return { safety: true, name: 'fuel' };
  const system = systemIn(text);
  if (system) return { safety: true, name: system };
  if (UNWELL.test(text)) {
    const strict = words.find((word) => STRICT.has(word));
    return strict ? { safety: true, name: nameOf(text, strict) } : { safety: false, name: '' };
  }
  const wrong = bad ?? words.find((word) => TROUBLES.has(word));
  const isFault = (wrong && (bad || words.some((word) => FIXTURES.has(word)))) || isFaulty(said);
  return isFault ? { safety: false, name: '' } : undefined;
}

/** What holds other things. */
const FIXTURES = new Set(
  'bolt bolts nut nuts bracket mount mounts stud studs gasket seal hinge clip clamp bush bearing rail latch screw spindle shaft key bellows gland mounting hold-down collar pin chain'.split(
    ' ',
  ),
);

/** Things that are wrong only of the parts that must not fail. */
const WRONG = new Set(
  'flicker flickers flickering pull pulls pulling pulled wander smoking smokes smoke slow out soft fade fades faded wander wanders sinks grabs grab snatches low missing hot red disconnected spongy wont'.split(
    ' ',
  ),
);
const STRICT = new Set(
  'brake brakes steering throttle pedal lights lites lamps clutch bilge trailer headlights taillights headlight accelerator horn hitch'.split(
    ' ',
  ),
);

const isWrong = (words: readonly string[], exposed: string): boolean =>
  STRICT.has(exposed) && words.some((word) => WRONG.has(word));

/** The thing and the words that belong to its name. */
function nameOf(text: string, exposed: string): string {
  const words = wordsOf(text);
  const at = words.indexOf(exposed);
  const from = at > 0 && OF_A_NAME.has(words[at - 1] as string) ? at - 1 : at;
  let to = at + 1;
  while (to < words.length && OF_A_NAME.has(words[to] as string) && to - from < 3) to++;
  return words.slice(from, to).join(' ');
}

const OF_A_NAME = new Set(
  'fuel petrol gas brake throttle bilge tank line hose pipe cable pump tap linkage pedal float chamber bowl carb front rear left right trailer lights lites blower belt fan wheel return spring ht plug lead wire wiring exhaust downpipe manifold union seat master cylinder drum disc'.split(
    ' ',
  ),
);

/** The fault offered; a reading that the line also gives is offered with it. */
export function faultOffers(text: string, { safety, name }: Trouble, read: readonly string[]): SpokenReading {
  const said = text
    .trim()
    .replace(/[[\];]/g, ' ')
    .replace(/:/g, ',');
  const fault = `fault ${name || shortName(said)}: ${said}`;
  const marked = safety ? `${fault} [safety]` : fault;
  const withReading = read.length > 0 ? [[...read, marked].join(' | ')] : [];
  const other = safety ? fault : `${fault} [safety]`;
  return asked(
    'Is this a fault to put right?',
    [marked, ...withReading, `todo ${name || shortName(said)}: ${said}`, other],
    { safety },
  );
}

/** The first words that are no small ones. */
export function shortName(text: string): string {
  const words = wordsOf(text).filter((word) => !SMALL.has(word));
  return words.slice(0, 2).join(' ') || 'engine';
}

const SMALL = new Set(
  'the a an is it on in at of to and or when with by my its for from that this need needs new find why look bit some about i we was were are'.split(
    ' ',
  ),
);

/** A thing of the trade that is not as it ought to be, in a line without a number. */
export const complainsOf = (pieces: readonly Piece[], text: string): boolean =>
  !isMended(text) &&
  !/\bflame (?:arrest|trap)|\b(?:phone|camera)\b|\b(?:first|second|third) kick\b/i.test(text) &&
  wordsOf(text).some((word) => COMPLAINTS.has(word) || TROUBLES.has(word)) &&
  pieces.some(({ kind, text: word }) => kind === 'n' || kind === 'p' || EXPOSED.has(word));
