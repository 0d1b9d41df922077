/** Notebooks to hold the laws to: lines as people write them, lines gone wrong, and any text at all. */
import fc from 'fast-check';
import { cutLines, type Position, type Range } from '../../grammar/index.ts';
import { UNITS } from '../../server/trade/measure/units.ts';
import { PLACE_WORDS, VOCABULARY } from '../../server/trade/vocabulary/vocabulary.ts';

const one = <T>(...choices: readonly T[]) => fc.constantFrom(...choices);
const said = (...pieces: readonly (string | fc.Arbitrary<string>)[]): fc.Arbitrary<string> =>
  fc
    .tuple(...pieces.map((piece) => (typeof piece === 'string' ? fc.constant(piece) : piece)))
    .map((words) => words.filter((word) => word !== '').join(' '));

/** Few, so that a revert often finds its day and two sessions often share one. */
const date = one('2026-05-02', '2026-05-03', '2026-05-04', '2026-06-31', '2026-5-2');
const part = one('carb single', 'carb twin', 'distributor old', 'blower', 'shelf');
const item = one('strainer', 'steering', 'hose rear');

const number = fc.oneof(
  one('9', '850', '0.035', '1 1/2', '3/8', '1,5', '.5', '1/0', '0', '4000', '1-1/2'),
  fc.nat({ max: 9999 }).map(String),
);
const amount = fc.oneof(
  number,
  said(one('~', '<', '>=', '+', '-', 'in', 'out', '±', ''), number),
  fc.tuple(number, one('..', ' .. ', '±', '-'), number).map((pieces) => pieces.join('')),
);
const unit = one('deg', '°', 'rpm', 'inHg', 'in Hg', 'F', 'turns', 'psi', '"', '%', 'dist deg', 'lb-ft', '');
const place = one('', '', '', '#3', 'left', 'primary rear', 'port bow', 'secondary');
const condition = one('', '', '@ 2500 rpm', 'at idle', 'in drive', 'in neutral hot', '@ 12 inHg', '@');
const word = one(
  ...['initial', 'mechanical limit', 'mixture', 'Mixture', 'main jet', 'main-jet', 'idle', 'depression'],
  ...[
    'total',
    'dwell',
    'power valve',
    'plug',
    'plug type',
    'weather',
    'head bolts torque',
    'float',
    'sparkle',
  ],
  ...['cylinders', 'firing order', 'bore', 'tube', 'idle screw', 'water', 'pull off gap', 'speed'],
);
const quantity = said(word, place, amount, unit, condition);
const list = said(word, amount, amount, amount, unit);
const perPlace = said(word, 'left', amount, unit, ', right', amount, unit);

const point = said(number, one('deg', ''), '@', number, one('rpm', 'inHg', ''));
const curve = said(
  one('mechanical', 'vacuum advance'),
  fc.array(point, { minLength: 1, maxLength: 4 }).map((points) => points.join(', ')),
  one('', ', manifold', ', ported', 'distributor'),
);
const work = fc.oneof(
  said(one('fit', 'remove'), part),
  said('revert', one('to', ''), date),
  said(one('keep', 'KEEP', 'keep ran well')),
  said(one('todo', 'fault', 'done'), item, one(': clean it out', ': binds [safety]', '')),
  said('check', one('throttle return', 'fuel-leaks'), one('ok', 'bad', '')),
  said('note', one('hunts; a little', '', 'session 2026-05-02')),
  said(one('photo', 'log', 'use'), one('bench.jpg', '"run 3.csv"', '')),
  said('recheck', word, 'after', number, one('h', 'mi', 'heat cycles')),
  said('recheck head bolts after', one('1 heat cycle', '200 mi', '10 h', '1 day')),
  said(one('odometer', 'hours'), fc.nat({ max: 999 }).map(String), one('mi', 'h', 'km', '')),
  one('water 180 F', 'done head bolts', 'check head bolts ok', 'head bolts 60 lb-ft'),
  said('trial', word, '->', word),
  said('want', number, unit),
  said(number, one('in', ''), number, one('deg', '')),
  said('#7 drill', number, 'deg'),
  one('vacuum advance plugged', 'vacuum advance manifold', 'vacuum source ported'),
);
const declared = fc.oneof(
  said(part, '"a pair"'),
  said('pull off gap: setting, 2..5 mm'),
  said('sparkle: reading, 1..9, "how it looks"'),
  said(one('manifold rear', 'manifold front'), one('capped', 'brake booster', 'open', '')),
  said('head bolts torque', number, one('lb-ft', '"3/8-16 grade 5"')),
  said('coolant: pump -> block -> radiator'),
  said('layout vee'),
);
const entry = fc.oneof(
  { weight: 6, arbitrary: quantity },
  { weight: 2, arbitrary: curve },
  { weight: 4, arbitrary: work },
  { weight: 1, arbitrary: declared },
  { weight: 1, arbitrary: list },
  { weight: 1, arbitrary: perPlace },
);
const timed = said(one('', '', '', '09:30', '+20 min'), entry);
const head = fc.oneof(
  {
    weight: 6,
    arbitrary: said(one('session', 'Session', 'session', '09:30 session'), date, one('', 'New springs')),
  },
  { weight: 1, arbitrary: said(one('session', 'session-', 'session:', 'notebook', 'engine', '+2 h engine')) },
  { weight: 1, arbitrary: one('engine', 'vehicle', 'parts', 'limits', 'targets', 'specs', 'ports', 'words') },
);

/** Any text without a line break, told apart by nothing. */
export const anyLine = fc
  .string({ unit: 'binary', maxLength: 40 })
  .map((text) => text.replace(/[\r\n]/g, ' '));

/** A line made of the notation's own pieces in no order. */
const pieces = [...VOCABULARY.map(({ name }) => name), ...UNITS.map(({ symbol }) => symbol)];
const signs = [
  ...'~<>=+-±.@,:;"#[]()/\t\u0000\u00a0\ufeff\u2028é✓',
  '->',
  '..',
  '🔧',
  '🇳🇱',
  'שלום',
  '…',
  '″',
];
const shuffled = fc
  .array(fc.oneof(one(...pieces), one(...signs), one(...PLACE_WORDS.keys()), number, entry), { maxLength: 6 })
  .chain((words) => one(' ', '').map((between) => words.join(between)));

export const line = fc.oneof(
  { weight: 12, arbitrary: timed },
  { weight: 4, arbitrary: head },
  { weight: 1, arbitrary: one('', '  ', '; only a comment', 'initial 9 deg ; meant: band') },
  { weight: 2, arbitrary: shuffled },
  { weight: 1, arbitrary: anyLine },
);

const lineBreak = fc.oneof(
  { weight: 8, arbitrary: one('\n') },
  { weight: 2, arbitrary: one('\r\n', '\r', '\n\n') },
);

const joined = (lines: fc.Arbitrary<readonly string[]>): fc.Arbitrary<string> =>
  lines.chain((all) =>
    fc
      .array(lineBreak, { minLength: all.length, maxLength: all.length })
      .map((breaks) => all.map((each, i) => each + (i < all.length - 1 ? breaks[i] : '')).join('')),
  );

export const notebook = joined(fc.array(line, { maxLength: 25 }));

const marker = one('<<<<<<< bench', '||||||| base', '=======', '>>>>>>> yard', '>>>>>>>', '<<<<<<<');

/** A merge that was not finished: markers anywhere, mostly in their order. */
export const conflicted = fc.oneof(
  fc
    .array(notebook, { minLength: 4, maxLength: 4 })
    .map(([above, bench, yard, below]) =>
      [above, '<<<<<<< bench', bench, '=======', yard, '>>>>>>> yard', below].join('\n'),
    ),
  joined(fc.array(fc.oneof({ weight: 4, arbitrary: line }, marker), { maxLength: 25 })),
);

/** A session longer than a page, with a head or two after it. */
export const longNotebook = fc
  .tuple(joined(fc.array(timed, { minLength: 90, maxLength: 260 })), notebook)
  .map(([long, rest]) => `session 2026-05-01\n${long}\n${rest}`);

export interface AnyChange {
  readonly range: Range;
  readonly text: string;
}

/** A change somewhere in a text: a key, a deletion, a paste; often at the ends of lines. */
export const changeIn = (text: string): fc.Arbitrary<AnyChange> => {
  const lines = cutLines(text);
  const column = fc.oneof(fc.nat({ max: 60 }), one(0, 0, 1, 1e6));
  const position: fc.Arbitrary<Position> = fc.record({
    line: fc.nat({ max: lines.length }),
    character: column,
  });
  const few = fc.tuple(position, fc.nat({ max: 3 }), column).map(([start, down, character]) => ({
    start,
    end: { line: start.line + down, character: down === 0 ? start.character + (character % 5) : character },
  }));
  const wide = fc
    .tuple(position, position)
    .map(([a, b]) =>
      a.line < b.line || (a.line === b.line && a.character <= b.character)
        ? { start: a, end: b }
        : { start: b, end: a },
    );
  const key = position.map((start) => ({ start, end: start }));
  return fc.record({
    range: fc.oneof(
      { weight: 3, arbitrary: key },
      { weight: 3, arbitrary: few },
      { weight: 1, arbitrary: wide },
    ),
    text: fc.oneof(
      one(
        '',
        '\n',
        '\r',
        '\r\n',
        'x',
        '9',
        ' ',
        ';',
        '"',
        'session 2026-05-03\n',
        '\nrevert to 2026-05-02\n',
        '>>>>>>> yard\n',
      ),
      line,
      notebook,
    ),
  });
};
