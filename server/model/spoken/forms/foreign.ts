/** Numbers that measure nothing of the machine's state: prices, ages, roads, people, days; and measures that the notation has no word for. */
import type { Piece } from '../classify.ts';

const MONEY_BEFORE = /(?:[£$€¥]|\b(?:gbp|usd|eur|chf|sek|kr)) ?$/i;
const BEFORE =
  /\b(?:page|route|rte|hwy|highway|exit|junction|(?:in|at) (?:room|lot|stall|bay|lane)|chapter|bus|aged?|(?:class|field|out) of|(?:house |stand |race |entry |start )?number|born(?: in)?|since|from|in|of|early|late|summer|winter|spring|model) $/i;
const ROAD = /\b[AMBEN]-?$/;
const AFTER =
  /^ ?(?:[£€]|(?:quid|bucks?|euros?|eur|kr|kroner|kronor|francs?|marks?|dollars?|pence|cents?|each way|beers?|pints? (?:at|in|with)|coffees?|cakes?|sausages?|sandwich\w*|people|persons?|folks?|men|women|kids|children|grandkids|lads|mates|friends|guests|boats|cars|bikes|tractors|trucks|entries|entrants|cows|sheep|horses|dogs|fish|perch|pike|bass|walleyes?|years?|yrs?|jahre|weeks?|months?|days?|nights?|o['’]?clock|pm|times|others|acres?|bales?|loads?|rows?|furrows?|rounds|points? (?:from|behind|ahead)|of (?:us|them))\b)/i;
const YEAR = /^(?:19|20)\d\d$/;
/** `petrol is 1.52`. */
const PRICED = /\b(?:petrol|gas|gasoline|diesel|beer|bread|entry|entrance|ticket) (?:is|was|costs?|now) $/i;
/** `home by 9`: a time of the day. */
const CLOCK =
  /\b(?:home|back|left|ferry|lunch|dinner|tea|supper|bed|started|train|away|woke|arrived|finished|begins?|doors?)(?: \w+)? (?:by|at|before|after|till|until|around|about) $/i;
/** `uncle is 82`: an age. */
const PERSON =
  /\b(?:uncle|aunt|dad|father|mother|mum|mam|grandpa|granddad|grandad|gran|neighbou?r|wife|husband|son|daughter|boy|girl|he|who) (?:is|was|turned|turns) $/i;

/** What stands around a number says that it counts something else. */
function isForeign({ from, to, amount }: Piece, text: string): boolean {
  const [before, after] = [text.slice(Math.max(0, from - 28), from), text.slice(to, to + 16)];
  if (MONEY_BEFORE.test(before) || ROAD.test(before) || PRICED.test(before)) return true;
  const written = text.slice(from, to);
  if (/^[£$€]/.test(written) || /(?:[£€]|\b(?:years?|weeks?|days?|months?))$/i.test(written)) return true;
  if (AFTER.test(after)) return true;
  if (
    (PERSON.test(before) || (CLOCK.test(before) && /^\d{1,2}(?:[.:]\d\d)?$/.test(written))) &&
    amount?.unit === undefined
  )
    return true;
  if (!BEFORE.test(before)) return false;
  const isOfYears = /\b(?:since|from|in|of|early|late|summer|winter|spring|born(?: in)?|model) $/i.test(
    before,
  );
  return !isOfYears || YEAR.test(amount?.low[0] ?? '');
}

/** Things with measures that no word of the notation takes. */
const THINGS =
  /\b(?:chain|drive ?belt|v-?belt|(?:fan)? ?belt|cables?|(?:fork|gearbox|transmission|diff|axle|final drive|rear end|chaincase|steering box) ?(?:oil|fluid)?|forks?|door|panel|window|bonnet|hood|seat|clutch (?:pedal|lever|play)|clutch|pedal|lever|brake (?:fluid|pads?|discs?|shoes?|drums?)|toe(?:-in)?|camber|ride height|wheelbase|fence|wood|timber|plank|rope|tow ?rope|paint|wind|rain|snow|tide|wave|swell|draught|draft|field|garage|shed|lamp|mirror)\b/i;
const MEASURES: ReadonlySet<string> = new Set(['length', 'volume', 'time', 'distance', 'mass', 'torque']);
const OF_A_TRANSMISSION = /^(?:gearbox temperature|oil pressure|oil temperature|oil grade)$/;

/** `chain 25-30 mm free`, `1.2 l in the gearbox`: measured, and no word of the trade says what. */
function isOutside(pieces: readonly Piece[], text: string): boolean {
  if (!THINGS.test(text)) return false;
  const numbers = pieces.filter(({ kind }) => kind === 'v');
  const isOwn = pieces.some(
    ({ kind, names }) => kind === 'n' && !names.every((name) => OF_A_TRANSMISSION.test(name)),
  );
  return (
    !isOwn &&
    numbers.every(({ amount, to }) => {
      if (amount?.unit) return MEASURES.has(amount.unit.dimension);
      return /^ ?(?:\d*w-?\d+|ml|cc)\b/i.test(text.slice(to, to + 6));
    })
  );
}

/** `no wobble above 130`: where a trouble does not come. */
const isBoundary = (text: string): boolean =>
  /^(?:\w+ )?no (?:more )?(?:wobble|shake|shimmy|vibration|vibrations|judder|flutter|whine|rattle|drone|whistle)s? (?:any ?more )?(?:above|over|past|under|below|at|up to|till|until) \d{1,5}(?: \p{L}{1,5}(?:\/\p{L})?)?$/iu.test(
    text,
  );

/** True where numbers are given and none is of the trade; what was moved by so much is never outside. */
export function isOfElsewhere(pieces: readonly Piece[], text: string): boolean {
  const numbers = pieces.filter(({ kind }) => kind === 'v');
  if (numbers.length === 0 || text.includes('?')) return false;
  if (isBoundary(text)) return true;
  return numbers.every((piece) => isForeign(piece, text)) || isOutside(pieces, text);
}
