/** Loggers' files of every sort: an answer for each, in finite numbers, in time that goes with the length. */
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { hoverAt } from '../../server/features/hover.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { readLog } from '../../server/trade/sums/log-table.ts';
import type { Fuzzer } from './fuzzer.ts';
import { trap } from './texts.ts';

/** Once took 12 s in one regular expression. */
const LONGEST_HEADING = 32_000;

const one = <T>(...choices: readonly T[]) => fc.constantFrom(...choices);

const word = one(
  ...[
    'RPM',
    'Engine Speed (rpm)',
    'Speed (mph)',
    'speed_kmh',
    'AFR',
    'Lambda',
    'EGT 1 [C]',
    'egt#2 (F)',
    'Time',
  ],
  ...[
    'Time (s)',
    'TPS',
    'MAP {kPa}',
    'Boost psi',
    'VBAT',
    'constructor',
    '__proto__',
    'toString',
    'Gizmo',
    '',
  ],
);
const bracket = one('(', ')', '[', ']', '{', '}', ' ', '_', '.', ':', '-', '#', '"', "'", '()', '[]]', '((');
const piece = fc.oneof(word, bracket, trap, fc.string({ maxLength: 4 }));
const heading = fc.oneof(
  { weight: 6, arbitrary: word },
  { weight: 2, arbitrary: fc.array(piece, { maxLength: 8 }).map((pieces) => pieces.join('')) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(piece, fc.nat({ max: 200 }))
      .map(([each, times]) => `RPM${each.repeat(times)}`.slice(0, LONGEST_HEADING)),
  },
);

const digits = fc.tuple(one('1', '9', '0'), one(1, 3, 20, 308, 309, 400)).map(([each, n]) => each.repeat(n));
const cell = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: -100, max: 9000 }).map(String) },
  { weight: 3, arbitrary: fc.double().map(String) },
  {
    weight: 2,
    arbitrary: one(
      ...[
        '',
        ' ',
        'NaN',
        'Infinity',
        '-Infinity',
        '1e308',
        '-1e308',
        '1e309',
        '5e-324',
        '-0',
        '0x10',
        '1_000',
        'nan',
      ],
      ...[
        '12:30',
        '12:30:05.25',
        '2026-05-02T10:00:00Z',
        '1,5',
        '1.234,5',
        '1 000',
        '+5',
        '--',
        'rpm',
        '(C)',
        '#REF!',
      ],
    ),
  },
  { weight: 1, arbitrary: digits },
  { weight: 1, arbitrary: fc.tuple(digits, one(',', '.'), digits).map((pieces) => pieces.join('')) },
  { weight: 1, arbitrary: piece },
);

const row = (cells: fc.Arbitrary<string>) => fc.array(cells, { maxLength: 8 });
const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;

/** A table as some logger writes it. */
const table = fc
  .record({
    mark: one('', '', '\ufeff'),
    about: fc.array(fc.oneof(piece, one('Logger v1', '', 'sep=;')), { maxLength: 4 }),
    headings: fc.array(heading, { minLength: 1, maxLength: 8 }),
    units: fc.option(row(one('rpm', 'C', '(mph)', '', 'deg', 'kPa', '%')), { nil: undefined }),
    rows: fc.array(row(cell), { maxLength: 12 }),
    regular: fc.boolean(),
    delimiter: one(',', ';', '\t', '|', ' ', '::'),
    lineBreak: one('\n', '\r\n', '\r', '\n\n'),
    quotes: one('never', 'headings', 'all'),
    tail: one('', '"', '\n"', ',', '\0', '\r'),
  })
  .map(({ mark, about, headings, units, rows, regular, delimiter, lineBreak, quotes, tail }) => {
    const asWide = (cells: readonly string[]) =>
      regular ? headings.map((_, i) => cells[i] ?? cells[0] ?? '') : cells;
    const written = (cells: readonly string[], isQuoted: boolean) =>
      (isQuoted ? cells.map(quoted) : cells).join(delimiter);
    const lines = [
      ...about,
      written(headings, quotes !== 'never'),
      ...(units ? [written(asWide(units), quotes === 'all')] : []),
      ...rows.map((cells) => written(asWide(cells), quotes === 'all')),
    ];
    return mark + lines.join(lineBreak) + tail;
  });

const NOTEBOOK = openNotebook('session 2026-05-02\n  initial 9 deg\n  log run.csv\n');
const AT_THE_LOG = { line: 2, character: 8 };

function isRead(text: string): void {
  const log = readLog(text);
  if ('problem' in log) assert.notEqual(log.problem, '');
  else {
    assert.equal(log.values.length, log.columns.length);
    for (const list of log.values) {
      assert.equal(list.length, log.rows);
      for (const n of list) assert.ok(Number.isFinite(n) || Number.isNaN(n), `${n} in a column`);
    }
  }
  const hover = hoverAt(NOTEBOOK, AT_THE_LOG, new Map(), new Map([['run.csv', { text }]]));
  assert.ok(hover, 'no hover on the line of the log');
  if ('problem' in log) return;
  const told = withoutHeadings(hover.text, log);
  assert.doesNotMatch(told, /NaN|Infinity|undefined/, told);
}

/** What the file itself writes may be called anything. */
function withoutHeadings(
  told: string,
  { columns, unread }: Exclude<ReturnType<typeof readLog>, { readonly problem: string }>,
): string {
  return told
    .split('\n')
    .filter((line) => !isAboutHeadings(line, [...columns, ...unread]))
    .join('\n');
}

const isAboutHeadings = (line: string, named: readonly { readonly heading: string }[]): boolean =>
  named.some(
    ({ heading }) => /NaN|Infinity|undefined/.test(heading) && line.includes(heading.trim().slice(0, 5)),
  );

const TIMES = 8;
/** A machine that is busy with other things takes a few times as long; what grows with the square takes eight times as long. */
const LENIENCE = 5;
const ALWAYS_ALLOWED_MS = 60;

/** Eight times the text may take no more than that many times as long, generously. */
function isLinear(text: string): void {
  const [short, long] = [1, TIMES].map((times) => quickest(`RPM,AFR\n900,13\n${text.repeat(times)}`));
  const most = ALWAYS_ALLOWED_MS + TIMES * LENIENCE * (short as number);
  assert.ok((long as number) <= most, `${long} ms for ${TIMES} times what takes ${short} ms`);
}

function quickest(text: string): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 3; i++) {
    const start = performance.now();
    readLog(text);
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

/** Line after line: what stands in quotes or on one line would be one long heading. */
const long = fc
  .tuple(fc.oneof(table, piece, cell), fc.nat({ max: 400 }))
  .map(([each, times]) => `${each.replaceAll('"', '').slice(0, LONGEST_HEADING)}\n`.repeat(times));

export const csv: Fuzzer = {
  name: 'csv',
  stepsPerRun: 1,
  property: () =>
    fc.property(
      fc.oneof(
        { weight: 20, arbitrary: fc.tuple(fc.constant('read' as const), table) },
        { weight: 1, arbitrary: fc.tuple(fc.constant('timed' as const), long) },
      ),
      ([how, text]) => (how === 'read' ? isRead(text) : isLinear(text)),
    ),
};
