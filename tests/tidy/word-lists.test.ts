/** What a word of the trade is, its row of the vocabulary says (`traits`): no other file keeps a list of such words. */
import { expect, test } from 'vitest';
import { UNITS } from '../../server/trade/measure/unit-table.ts';
import { ROAD_CHECKS } from '../../server/trade/practice/road-checks.ts';
import { namesWith, VOCABULARY } from '../../server/trade/vocabulary/vocabulary.ts';
import { projectFiles, sources } from './files.ts';
import { wordLists } from './word-lists.ts';

/** Words that are a dimension too (`torque`, `power`) stand in tables of dimensions. */
const dimensions = new Set<string>(UNITS.map(({ dimension }) => dimension));
const names = VOCABULARY.map(({ name }) => name);
const words = new Set(names.filter((name) => !dimensions.has(name)));

/** The table of the totals themselves, some of which are called as the reading of them. */
const TOTALS = 'server/analysis/ignition/timing-totals.ts';

const programs = new Map(
  [...sources(projectFiles())].filter(
    ([path]) => /^(?:server|client)\//.test(path) && !path.startsWith('server/trade/') && path !== TOTALS,
  ),
);

test('no list of words of the trade is kept outside the vocabulary', () =>
  expect(wordLists(programs, words)).toEqual([]));

test.each<[text: string, found?: string]>([
  ["new Set(['idle', 'total', 'bore'])", 'idle, total, bore'],
  ["new Set([\n  // why\n  'idle',\n  'total',\n  'bore',\n])", 'idle, total, bore'],
  ["new Map([['idle', f(1, 2)], ['total', [3]], ['bore', 'idle']])", 'idle, total, bore'],
  ["Object.entries({ idle: ['a', 'b'], 'cruise total': {}, bore: 1 })", 'idle, cruise total, bore'],
  ['const A: Readonly<Record<string, number>> = { idle: 1, total: 2, bore: 3 }', 'idle, total, bore'],
  ["['idle', 'total']"],
  ["['idle', 'total', 'idle', 'mile']"],
  ["['power', 'torque', 'idle']"],
  ['const found = { idle: 1, total: 2, bore: 3 };'],
  ["about: ['idle', 'total', 'bore']"],
  ["about: ({ name }) => ['idle', 'total', 'bore'].includes(name)"],
  ["const ABOUT: ReadonlySet<string> = new Set(['idle', 'total', 'bore']);"],
  ["const ABOVE: ReadonlySet<string> = new Set(['idle', 'total', 'bore']);", 'idle, total, bore'],
])('%s', (text, found) =>
  expect(wordLists(new Map([['server/x.ts', text]]), words)).toEqual(found ? [`server/x.ts: ${found}`] : []),
);

test('a word that a trait names is a word, or a kind of part', () => {
  const known = new Set<string>([...names, ...VOCABULARY.flatMap(({ owner }) => owner ?? [])]);
  const named = VOCABULARY.flatMap(({ traits }) =>
    [traits?.adjustedBy, traits?.goesWith].flatMap((each) => each ?? []),
  );
  expect(named.filter((name) => !known.has(name))).toEqual([]);
});

test('a check that a trait names is in the table of checks', () => {
  const checks = VOCABULARY.flatMap(({ traits }) => traits?.roadCheck ?? []);
  expect(new Set(checks)).toEqual(new Set(ROAD_CHECKS.map(({ name }) => name)));
});

/** Each reads a session's or a later session's last reading; the more words have it, the more pages hang on earlier ones. */
test('few readings outlast their session', () =>
  expect([...namesWith('outlastsSession'), ...namesWith('meter')]).toEqual([
    'idle',
    'depression',
    'odometer',
    'hours',
  ]));
