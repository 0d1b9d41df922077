/** Something to be done, a question, a thing that is well: offered as an item or a check, never stored as a value. */
import type { Piece } from '../classify.ts';
import { asked, type SpokenReading } from '../habits.ts';
import { shortName } from './danger.ts';

const LATER =
  /\bnext (?:time|week|year|yr|spring|winter|sunday|saturday|weekend)\b|\bto do\b|\b(?:buy|order|shopping)\s*:/i;
const BEGINS =
  /^(?:need|needs|must|should|try|get|order|buy|find|look at|look for|look up|check the|remember|replace|fix|mend|file|clean|lube|grease|ask|fit new|change the|listen|rebuild|re-?route|sort|adjust the|swap the|regrease|repaint|rewire|reseal|repack|rebush|re-?torque|recheck|reline|recharge|realign|weld|drill out|borrow|paint|polish|solder|patch|sand|scrape|bleed the|flush the|drain the|fill the|tighten the|check|see about|see if|look into|think about|don'?t forget|do not forget|get hold of|work out|find out|remind me|watch|keep an eye on|keep eye on|measure the|make a|make up|fabricate|tape up|tie up|zip tie|swap out|send off|take to|bring|pick up|ring|call|phone|write to|ask)\b/i;
const TO_DO =
  /\b(?:is |are )?to (?:buy|mend|fix|check|do|get|order|fit|replace|clean|find|sort|paint|weld|make|borrow|repair|adjust|grease|change|tighten|patch|renew|rebuild|swap|try|see|measure|look at|be \w+ed)\s*(?:$|[,.;!]|\b(?:before|soon|tomorrow|later|next|when|again|for|first|this)\b)|\b(?:will|i'?ll|gonna|going to|have to|got to|gotta|has to) (?:\w+ )?(?:check|do|try|look|see|order|get|fix|fit|replace|make|swap|buy|clean|find|ask|test|measure|come off|come out|be done)\b|\bto come (?:off|out|apart)\b|\blook (?:for|at|into) it\b|\b(?:some|one) day\b|\bwhen (?:i|there'?s) (?:have |get )?time\b|\bon the list\b|\bbefore (?:the )?(?:winter|spring|summer|autumn|show|rally|trip|next|january|february|march|april|may|june|july|august|september|october|november|december)\b/i;
const INSIDE =
  /\b(?:needs?|wants?|wanted|must|should|ought to|have to|has to|got to) (?:be |to |a |an |new |some |doing|cleaning|changing|turning|looking|replacing|adjusting|setting|longer|shorter|bigger|smaller|more|less|\w+ing\b)|\bneed (?:new|a|an|some|set)\b|\b(?:wanted|needed) for\b|\bfind why\b|\blisten for\b|,\s*(?:lube|grease|replace|change it|clean it|fix it|mend)\s*$|\?$/i;

const DEED =
  'find|fix|mend|patch|snug|nip|tighten|replace|renew|order|get|buy|grease|lube|lubricate|check|recheck|look|ask|rope|weld|solder|glue|tape|adjust|sort|watch|change|bleed|top up|rebuild|repack|repair|regrease|swap|drill|file|make|borrow|shorten|lengthen|wire|cut|clean|fit|put|tie|drain|bend|straighten|shim|trim|ring|call|take|redo|reseal|rebush';
/** `fan belt squalls, snug it up`: a bare deed at the end. */
const ENDS = new RegExp(
  String.raw`[,;–-] ?(?:must |to |please |then |and |so |better )?(?:${DEED})(?: (?!\d)[\p{L}'-]{1,12}){0,5}[.! ]*$`,
  'iu',
);
/** Words that are looks or states too, where nothing follows them. */
const LOOKS_ONLY = /[,;–-] ?(?:clean|fit|put|cut|change|clean enough|fit for \w+|cut out)[.! ]*$/i;
/** A deed at the start, of something and without a number. */
const STARTS =
  /^(?:change|tighten|snug up|nip up|patch|shim|top up|redo|renew|lengthen|shorten|straighten|unblock|unclog|wire in|refit|regap|reset|retime|move|try|use|take)\b(?!.*\d)/i;
const SEASON =
  /\bbefore (?:the |it )?(?:snow\w*|frost\w*|freez\w*|harvest|hay(?:ing)?|planting|season|mot|inspection|launch\w*|breaks)\b/i;

/** True where something is to be done. */
export function openIn(said: string): boolean {
  const text = said.replace(/\bshould be (?=[\d.])/gi, '');
  return (
    LATER.test(text) ||
    TO_DO.test(text) ||
    BEGINS.test(text.trim()) ||
    INSIDE.test(text.trim()) ||
    isDeed(text.trim())
  );
}

const PLANNED =
  /^(?:advance|retard|raise|lower|open|close|richen|lean|weaken|add|go|drop|increase|turn|give|put|fit|set)\b.{0,40}\b(?:for|when|if|next|once|till|until) \p{L}|\bwhen (?:it gets|it comes|winter|summer|spring|the (?:weather|cold|heat|snow|frost|new|good|hot)|i get|i have|we (?:get|go))\b|\bif (?:it|she|the \p{L}+) (?:\p{L}+s|won['’]?t|is)\b|\bnext (?:time|run|race|week|season|year|winter)\b|\bfor (?:the )?(?:winter|summer|next)\b/iu;

/** True for a change that is only thought of: `advance 2 more for the good petrol`. */
export const isPlan = (text: string): boolean => PLANNED.test(text.trim());

const isDeed = (text: string): boolean =>
  (ENDS.test(text) && !LOOKS_ONLY.test(text)) || STARTS.test(text) || SEASON.test(text);

export function todoOffers(text: string, values: readonly string[]): SpokenReading {
  const said = text
    .trim()
    .replace(/[[\];]/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/:/g, ',')
    .replaceAll('?', '');
  const name = shortName(said);
  const read = values.length > 0 ? [values.join(' | ')] : [];
  return asked('Is this something to do?', [
    `todo ${name}: ${said}`,
    `fault ${name}: ${said}`,
    ...read,
    `note ${said}`,
  ]);
}

/** What is found well: the check that says so. */
const CHECKS: readonly (readonly [said: RegExp, check: string])[] = [
  [/\bno (?:fuel |petrol |gas )?leaks?\b|\b(?:fuel|lines?|unions?) (?:all )?(?:dry|tight)\b/i, 'fuel leaks'],
  [
    /\bthrottle (?:\w+ )?(?:ok|okay|good|free|snaps|shuts|returns|closes|fine)\b|\bsnaps (?:shut|back|closed)\b/i,
    'throttle return',
  ],
  [/\bbrakes? (?:\w+ )?(?:ok|okay|good|fine|even)\b/i, 'brakes'],
  [/\bsteering (?:\w+ )?(?:ok|okay|good|free|fine)\b/i, 'steering'],
  [/\blights? (?:\w+ )?(?:ok|okay|work|working|good|fine)\b/i, 'lights'],
  [/\bbolts? (?:\w+ )?(?:ok|okay|tight|good|fine)\b/i, 'bolts'],
];

export const checksIn = (text: string): readonly string[] =>
  CHECKS.filter(([said]) => said.test(text)).map(([, check]) => `check ${check} ok`);

const DONE =
  /^(?:greased|fixed|mended|cleaned|replaced|tightened|oiled|lubed|swapped|changed|renewed|fitted|repaired|rebuilt|soldered|bled|sorted|freed)\b/i;

/** Work that was done: closes what was open. */
export const doneIn = (text: string, pieces: readonly Piece[]): boolean =>
  (DONE.test(text.trim()) ||
    /\b(?:new|another) (?:one )?(?:in|on|fitted)\b|\blaid new\b|\btightened\b/i.test(text)) &&
  pieces.every(({ kind }) => kind !== '?');

export function doneOffers(text: string, checks: readonly string[]): SpokenReading {
  const said = text
    .trim()
    .replace(/[[\];]/g, ' ')
    .replace(/:/g, ',');
  const subject = checks.some((check) => check.includes('throttle'))
    ? 'throttle'
    : shortName(said.replace(DONE, ''));
  const done = `done ${subject}: ${said}`;
  return asked('Does this close something that was open?', [
    [done, ...checks].join(' | '),
    done,
    `note ${said}`,
  ]);
}
