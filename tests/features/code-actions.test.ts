import { describe, expect, test } from 'vitest';
import type { ActionAround } from '../../server/features/code-actions.ts';
import { unitById } from '../../server/trade/measure/units.ts';
import { acted, actionsAt } from '../harness/checks.ts';
import { dedent } from '../harness/fixture.ts';

type Row = readonly [title: string, before: string, after: string, around?: Partial<ActionAround>];

/** Lines of one row are told apart by ` | `; all stand in a session. */
const inSession = (lines: string) => ['session 2026-05-02', ...lines.split(' | ')].join('\n');

function rows(table: readonly Row[]): void {
  test.each(table.map((row) => [row[0], row[1], row] as const))(
    '%s: %s',
    (_title, _before, [title, before, after, around]) =>
      expect(acted(inSession(before), title, around)).toBe(inSession(after)),
  );
}

const titles = (lines: string, around?: Partial<ActionAround>) =>
  actionsAt(inSession(lines), around).map(({ title }) => title);

describe('fixes', () => {
  rows([
    ['Write "idle"', 'targets | ‸idlle 850 rpm', 'targets | idle 850 rpm'],
    [
      'Fix all 2 of',
      'targets | ‸idlle 850 rpm | idle 9 rmp | idlle 900 rpm',
      'targets | idle 850 rpm | idle 9 rmp | idle 900 rpm',
    ],
    [
      'Fix all obvious slips (3)',
      'targets | ‸idlle 850 rpm | idle 900 rmp | idlle 900 rpm',
      'targets | idle 850 rpm | idle 900 rpm | idle 900 rpm',
    ],
  ]);

  test('the only fix of a finding is the one to take, and it names its finding', () => {
    const [fix] = actionsAt(inSession('targets | ‸idlle 850 rpm'));
    expect(fix).toMatchObject({ kind: 'quickfix', isSure: true, found: [{ code: 'unknown-word' }] });
  });

  test('each rule has its page', () =>
    expect(actionsAt(inSession('targets | idlle‸ 850 rpm')).at(1)).toMatchObject({
      title: 'About this rule: A word that is not known',
      edits: [],
      explains: 'unknown-word',
    }));

  test('where nothing is sure, what is told comes before what silences, and a wrong unit is not turned', () =>
    expect(titles('initial 9‸ F')).toEqual([
      'About this rule: A unit of the wrong kind',
      'Silence "wrong-unit" on this line: it is meant',
    ]));

  test('only what is asked for', () => {
    expect(titles('targets | ‸idlle 850 rpm', { only: ['source'] })).toEqual(['Fix all obvious slips (1)']);
    expect(titles('targets | ‸idlle 850 rpm', { only: ['source.fixAll.tappet'] })).toEqual([
      'Fix all obvious slips (1)',
    ]);
    expect(titles('targets | ‸idlle 850 rpm', { only: ['refactor'] })).toEqual([]);
    expect(titles('targets | ‸idlle 850 rpm', { only: ['quickfix'] })).not.toContain(
      'Fix all obvious slips (1)',
    );
  });

  test('nothing of a rule that is off', () =>
    expect(titles('targets | ‸idlle 850 rpm', { levels: new Map([['unknown-word', 'off']]) })).toEqual([]));
});

describe('this is meant', () => {
  rows([
    ['Silence ', '‸idle 2600 rpm', 'idle 2600 rpm  ; meant: outside-band'],
    ['Silence ', '‸idle 2600 rpm ; cold', 'idle 2600 rpm ; meant: outside-band ; cold'],
    ['Silence ', '‸idle 2600 rpm ; meant: ten-times', 'idle 2600 rpm ; meant: ten-times, outside-band'],
    [
      'Silence "overridden" on line 3: it is meant',
      '‸initial 9 deg | initial 11 deg',
      'initial 9 deg | initial 11 deg  ; meant: overridden',
    ],
  ]);

  test.each(['‸initial 9 deg "open', '‸idle 900 rpm ; meant: outside-bnad'])(
    'not where it would not help: %s',
    (line) => expect(titles(line).filter((title) => title.startsWith('Silence '))).toEqual([]),
  );
});

describe('another unit', () => {
  rows([
    ['Write as 66 C', '  water ‸150 F ; hot', '  water 66 C ; hot'],
    ['Write as 198 205 C', '  tube ‸388 401 F probe', '  tube 198 205 C probe'],
    ['Write as <= 0.6895 bar', '  fuel pressure <= ‸10 psi', '  fuel pressure <= 0.6895 bar'],
    ['Write as ~1.034 bar', '  fuel pressure ~‸15 psi', '  fuel pressure ~1.034 bar'],
    ['Write as 0.4064 mm', '  points gap 0.016‸"', '  points gap 0.4064 mm'],
    ['Write as 12.7..25.4 mm', '  float level 1/2..‸1 in', '  float level 12.7..25.4 mm'],
    ['Write as 5 F', '  air temperature ‸-15 C', '  air temperature 5 F'],
    [
      'Write as 13.55 kPa 40.64 kPa',
      '  vacuum advance 0 deg @ 4 inHg, 12 deg @ ‸12 inHg',
      '  vacuum advance 0 deg @ 13.55 kPa, 12 deg @ 40.64 kPa',
    ],
    [
      'Write as 450 K',
      '  water ‸177 C',
      '  water 450 K',
      { units: new Map([['temperature', unitById('K')]]) },
    ],
  ]);

  test.each([
    '  idle ‸850 rpm',
    '  plug ‸"black"',
    '  water ‸F',
    '  tube 388 ‸401 C 3 F',
    '  tube 0-0‸.035 F',
  ])('none: %s', (line) => expect(titles(line).filter((title) => title.startsWith('Write as'))).toEqual([]));
});

describe('what a change comes to', () => {
  rows([
    ['Write the result: 11 deg', '  initial 9 deg |   initial ‸+2 deg', '  initial 9 deg |   initial 11 deg'],
    [
      'Write the result: at -2 deg',
      '  initial 9 deg |   initial ‸-11 deg',
      '  initial 9 deg |   initial at -2 deg',
    ],
    [
      'Write the result',
      '  mixture 1 1/2 turns |   mixture ‸in 1/4 turn ; lean',
      '  mixture 1 1/2 turns |   mixture 1 1/4 turns ; lean',
    ],
    [
      'Write the result',
      '  mixture left 1 turn, right 2 turns |   mixture ‸right out 1/8 turn',
      '  mixture left 1 turn, right 2 turns |   mixture right 2 1/8 turns',
    ],
  ]);

  test.each([
    '  initial ‸+2 deg',
    '  initial ‸9 deg',
    '  mixture left 1 turn, right 2 turns |   mixture ‸in 1/4 turn',
  ])('not known, or no change: %s', (line) =>
    expect(titles(line).filter((title) => title.startsWith('Write the result'))).toEqual([]),
  );
});

test('settings in force, but those that the session gives itself', () =>
  expect(
    acted(
      `
      session 2026-05-02
        initial 9 deg
        main jet 105
        mixture left 1 turn, right 1 1/4 turns
        idle screw out 1/4 turn
      ‸session 2026-05-03
        main jet 110
      `,
      'Write out the 3 settings in force',
    ),
  ).toBe(
    dedent(`
      session 2026-05-02
        initial 9 deg
        main jet 105
        mixture left 1 turn, right 1 1/4 turns
        idle screw out 1/4 turn
      session 2026-05-03
        initial          9 deg
        mixture left     1 turn
        mixture right    1 1/4 turns
        main jet 110
      `),
  ));

test('a value for all places is not written where it would wipe out one that cannot be written', () =>
  expect(
    actionsAt('idle screw 1 turn\nidle screw left 0.123456 turns\n‸session 2026-05-02\n').map(
      ({ title }) => title,
    ),
  ).not.toContainEqual(expect.stringMatching(/^Write out/)));

describe('done', () => {
  const OPEN = 'session 2026-05-02\n  todo ‸strainer: clean it out\n';
  const plain = OPEN.replace('‸', '');

  test('not what has no name yet', () =>
    expect(titles('todo‸').filter((title) => title.startsWith('Mark'))).toEqual([]));

  test('in a session of today, begun for it', () =>
    expect(acted(OPEN, 'Mark strainer done today')).toBe(`${plain}\nsession 2026-05-20\n  done strainer\n`));

  test('in the session of today that is there', () =>
    expect(acted(`${OPEN}session 2026-05-20\n  keep\n\nwords\n`, 'Mark strainer done on 2026-05-20')).toBe(
      `${plain}session 2026-05-20\n  keep\n  done strainer\n\nwords\n`,
    ));

  test('with the line breaks of the notebook', () =>
    expect(acted(OPEN.replaceAll('\n', '\r\n'), 'Mark strainer')).toBe(
      `${plain}\nsession 2026-05-20\n  done strainer\n`.replaceAll('\n', '\r\n'),
    ));

  test.each([
    ['done already', `${OPEN}  done strainer: cleaned\n`],
    ['said again below', `${OPEN}  todo strainer: again\n`],
    ['done itself', 'session 2026-05-02\n  done ‸strainer\n'],
  ])('not where it is %s', (_what, marked) =>
    expect(actionsAt(marked).filter(({ title }) => title.startsWith('Mark'))).toEqual([]),
  );
});

describe('a notebook that is used and lies somewhere else', () => {
  const elsewhere = (path: string) =>
    path === 'lost.tappet' ? ['../shop/lost.tappet', 'old; parts/lost.tappet', 'a"b/lost.tappet'] : [];
  const used = (text: string, around: Partial<ActionAround> = { elsewhere }) =>
    actionsAt(text, around, () => ({ problem: 'missing' })).filter(({ title }) => title.startsWith('Use "'));

  test.each([
    ['use ‸lost.tappet', ['../shop/lost.tappet', '"old; parts/lost.tappet"']],
    ['use "lost‸.tappet" ; ours', ['../shop/lost.tappet', 'old; parts/lost.tappet']],
    ['use gone‸.tappet', []],
    ['photo lost‸.tappet', []],
  ])('%s', (text, written) => {
    const actions = used(text);
    expect(actions.flatMap(({ edits }) => edits.map((edit) => edit.text))).toEqual(written);
    expect(actions.every(({ isSure, found }) => !isSure && found.length === 1)).toBe(true);
  });

  test('the only place is the one to take', () =>
    expect(used('use ‸lost.tappet', { elsewhere: () => ['a/lost.tappet'] })).toMatchObject([
      { isSure: true, edits: [{ text: 'a/lost.tappet', range: { start: { character: 4 } } }] },
    ]));

  test('nothing where the file is there and cannot be read', () =>
    expect(actionsAt('use ‸lost.tappet', { elsewhere }, () => ({ problem: 'outside' }))).not.toContainEqual(
      expect.objectContaining({ title: expect.stringContaining('Use "') }),
    ));
});
