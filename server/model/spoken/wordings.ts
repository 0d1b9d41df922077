/** Other wordings of a change: a line said in a roundabout way, to the one that the forms read. Each keeps every number that is in force. */
import type { Habits } from './habits.ts';
import { sizeOf } from './numbers.ts';

const NUM = String.raw`(?:\d{1,4}(?:[.,]\d{1,3})?(?: \d\/\d{1,2})?[½¼¾⅛⅜⅝⅞]?|\d\/\d{1,2})`;
const NAME = String.raw`\p{L}[\p{L} ]{2,17}?`;
const AT = '(?: now| today| again)?[.!]?$';
const pattern = (source: string): RegExp => new RegExp(source, 'iu');

const WORDINGS: readonly (readonly [said: RegExp, meant: string])[] = [
  [/\b(to|from) (?:an?|the) (?=\d)/gi, '$1 '],
  [/,? ?\b(?:sorry|pardon|i mean|make that|correction|oops|scratch that|nope)[,:]? (?=\d)/i, ' no '],
  // `went from 55 to 57 main`
  [
    pattern(
      `^(?:(?:went|changed|moved|swapped|came|jumped|stepped|put it|took it)[ ])?(?:up |down |back )?from (${NUM})s? to (${NUM})s? (?:on (?:the )?)?(${NAME})${AT}`,
    ),
    '$3 from $1 to $2',
  ],
  // `jets 62 all round to 64s`
  [
    pattern(`^(${NAME}) (${NUM})s? (?:all round|both|all|each) (?:to|->|→) (${NUM})s?${AT}`),
    '$1 from $2 to $3',
  ],
  // `mains 2 steps up 135 -> 137.5`
  [
    pattern(
      String.raw`^(${NAME})(?: also| again| both)? (?:\d|one|two|three) (?:steps?|sizes?) (?:up|down|bigger|smaller|richer|leaner),? (${NUM}) ?(?:to|->|→) ?(${NUM})${AT}`,
    ),
    '$1 from $2 to $3',
  ],
  // `dwell 28, want 30, got 30`
  [
    pattern(
      `^(${NAME}) ${NUM}[,;] ?(?:wants?|wanted|needs?|needed|should be|aim(?:ed)? for|target|after) (?:it )?(?:at )?${NUM}[,;] ?(?:got|set|set to|made it|is|has|have|reads|at) (${NUM})${AT}`,
    ),
    '$1 $2',
  ],
  // `advanced it 3, that makes 11`
  [
    pattern(
      String.raw`,? (?:and |so )?(?:that|which|this)(?:['’]s| is| makes| made) (?:it )?(?=${NUM}(?: deg\w*)?${AT})`,
    ),
    ', makes ',
  ],
  // `tappets were tight on 3, all 12 now`
  [
    pattern(
      `^(${NAME}) (?:was|were) [^,;]{3,40}[,;] ?(?:all|both|the lot) (?:set (?:to )?|at |to )?(${NUM})${AT}`,
    ),
    '$1 $2',
  ],
  // `right up one notch on the needle`
  [
    pattern(
      `^(right|left|front|rear|r|l) (up|down) (one|two|1|2) (notch(?:es)?|clips?|grooves?) (?:on|of) (?:the )?needles?(?: then)?${AT}`,
    ),
    'needle $2 $3 notch $1',
  ],
];

const sideOf = (letter: string): string => (letter === 'R' ? 'right' : 'left');
const SCREW = /\b(?:screws?|mixture|pilots?|air ?screws?)\b/i;
const PARTS: readonly (readonly [said: RegExp, meant: string])[] = [
  [/\b(?:one |a )?half(?: a)?(?: turns?)?(?= (?:in|out)\b)/gi, '1/2'],
  [/\b(?:one |a )?quarter(?: of a)?(?: turns?)?(?= (?:in|out)\b)/gi, '1/4'],
  [/\b(?:an |one )?eighth(?: of a)?(?: turns?)?(?= (?:in|out)\b)/gi, '1/8'],
  [/\bthree quarters?(?: of a)?(?: turns?)?(?= (?:in|out)\b)/gi, '3/4'],
];

/** `stop screw R one half out`: the side, the way and the turns of a screw, in the order that the forms read. */
function screwed(line: string): string {
  if (!SCREW.test(line)) return line.replace(/^[RL](?= (?:up|down)\b)/, sideOf);
  const sided = line.replace(/(?<=^|\s)[RL](?=\s)/g, sideOf);
  const counted = PARTS.reduce((text, [said, meant]) => text.replace(said, meant), sided);
  return counted
    .replace(
      /\b(left|right|front|rear|port|starboard|both) (\d\/\d{1,2}) (in|out)\b,?(?! of)/gi,
      '$1 $3 $2 turn,',
    )
    .replace(/\b(left|right|front|rear|port|starboard) (in|out) (\d\/\d{1,2})(?! turn)/gi, '$1 $2 $3 turn')
    .replace(/,$/, '');
}

/** The line in other words; undefined where none fit. */
export function reworded(line: string, habits: Habits): string | undefined {
  const wound =
    habits.wound === 'jets'
      ? line
          .replace(/^(up|down) (?:both |all )?(?=(?:\d|one|two|three) flats?\b)/i, 'mixture $1 ')
          .replace(/ ?(?:->|→) ?(?=\p{L})/u, ', ')
      : line;
  const said = WORDINGS.reduce((text, [each, meant]) => text.replace(each, meant), screwed(wound));
  return said === line ? undefined : said;
}

/** `needles AB to AC`: the profile that is in now. */
export function profileIn(line: string): readonly string[] | undefined {
  const now =
    /^(?:[Mm]ain |[Jj]et )?[Nn]eedles? (?:from |changed from )?[A-Z]{1,3}\d? (?:to|->|→) ([A-Z]{1,3}\d?)[,.]?(?! .{0,40}\b(?:back|no|not|out|later|maybe|if|when|again)\b)(?: .{1,40})?$/.exec(
      line,
    )?.[1];
  return now ? [`needle ${now}`] : undefined;
}

/** True where a change is taken back with no word of what it came to: `from 8 to 10 and back`. */
export const isReverted = (line: string): boolean =>
  /(?:\band|\bthen|\bwent|\bput it|,) (?:\p{L}+ )?back[.!]?$/iu.test(line);

/** `knocked it back from 7 to 5`: what may have been moved, by the size of it. */
export function movedIn(line: string): readonly string[] {
  const found =
    /^(?:knocked|took|brought|put|pulled|backed|moved|set|wound|turned|dropped|raised|lifted|eased) (?:it |her |him |them )?(?:back |up |on |down |forward |out |in )?from (\d{1,4}(?:\.\d)?) to (\d{1,4}(?:\.\d)?)[.!]?$/i.exec(
      line,
    );
  if (!found) return [];
  const [from, to] = [sizeOf(found[1] as string), sizeOf(found[2] as string)];
  const [least, most] = [Math.min(from, to), Math.max(from, to)];
  if (most <= 40) return [`initial ${to} deg`];
  if (least >= 300 && most <= 2500) return [`idle ${to} rpm`];
  return least >= 40 && most < 300 ? [`main jet ${to}`] : [];
}
