/** What `show` writes: what holds at a line, with the line and the day each is from. */
import { describe, expect, it } from 'vitest';
import { dedent } from '../harness/fixture.ts';
import { ran } from './terminal.ts';

const BOOK = dedent(`
  notebook Bench
  parts
    carb single "one-barrel downdraught"
    carb twin "pair of side-draughts"
  limits
    total <= 34 deg
  targets
    idle 800..850 rpm in neutral
  session 2026-05-02 As found
    fit carb single
    initial 9 deg
    mechanical 0 deg @ 900 rpm, 8 deg @ 1500 rpm, 22 deg @ 3200 rpm
    mixture left 1 turn, right 1 1/4 turns
    todo strainer: brush the basket out
    fault steering: binds [safety]
    keep
  session 2026-05-03
    initial +2 deg
    idle screw in 1/2 turn
    done strainer
    check throttle return bad
    recheck points gap after 25 h
  session 2026-05-03 17:00 The same evening
    initial 10 deg
    fit carb twin
    fuel line 5/16 in
`);
const LAST_LINE = BOOK.split('\n').length;

const shown = (at?: string, window = {}) =>
  ran(`show x.tappet${at ? ` --at ${at}` : ''}`, { 'x.tappet': BOOK }, window).out;
const report = (at?: string) =>
  JSON.parse(ran(`show x.tappet --format json${at ? ` --at ${at}` : ''}`, { 'x.tappet': BOOK }).out);

describe('the moment that is shown', () => {
  it.each<[string | undefined, number, string | undefined]>([
    [undefined, LAST_LINE - 1, '10 deg'],
    ['11', 10, '9 deg'],
    ['10', 9, undefined],
    ['1', 0, undefined],
    ['2026-05-02', 15, '9 deg'],
    ['2026-05-03', LAST_LINE - 1, '10 deg'],
    ['18', 17, '11 deg'],
    [String(LAST_LINE), LAST_LINE - 1, '10 deg'],
  ])('--at %s is after line %i from zero, initial %s', (at, line, initial) => {
    const { settings, ...rest } = report(at);
    expect(rest.line).toBe(line);
    const found = settings.find(({ name }: { name: string }) => name === 'initial');
    expect(found?.value).toBe(initial);
  });
});

it('as JSON, the line that leaves a setting in doubt', () => {
  const book = 'session 2026-05-02\ninitial 12 deg\nadvanced it a touch';
  const doubtAt = (line: number) =>
    JSON.parse(ran(`show x.tappet --format json --at ${line}`, { 'x.tappet': book }).out).settings[0].doubt;
  expect([doubtAt(2), doubtAt(3)]).toEqual([undefined, { line: 2, date: '2026-05-02' }]);
});

describe('as text', () => {
  it.each<[string, string | undefined, RegExp]>([
    ['a title', undefined, /^Bench\nIn force after line \d+, session 2026-05-03 The same evening$/m],
    ['a setting with its line and day', undefined, /^ {2}line 24 {2}2026-05-03 {2}initial +10 deg$/m],
    ['a change from the line that changed it', '18', /^ {2}line 18 {2}2026-05-03 {2}initial +11 deg$/m],
    ['a change from nowhere as a change', '19', /idle screw +\+1\/2 turn from an unknown start$/m],
    ['a setting of each place', '13', /mixture left +1 turn\n.*mixture right +1 1\/4 turns$/m],
    ['the part that is fitted', '13', /^ {2}line 10 .* fitted +carb single, "one-barrel downdraught"$/m],
    ['the part that was fitted instead', undefined, /fitted +carb twin, "pair of side-draughts"$/m],
    ['an open item', '16', /todo strainer +brush the basket out$/m],
    ['a fault that matters', '16', /fault steering +binds \[safety\]$/m],
    ['a check that is due', '13', /check throttle return +due after the work there: a throttle/m],
    ['a check that went badly', '21', /check throttle return +found bad: a throttle/m],
    ['a recheck', '22', /^To be rechecked\n {2}line 22 .*points gap +after 25 h$/m],
    ['a limit', undefined, /^Limits\n {2}line 6 {2}total +<= 34 deg$/m],
    ['a target', undefined, /^Targets\n {2}line 8 {2}idle +800\.\.850 rpm in neutral$/m],
    ['the session to keep', undefined, /^Last marked to keep: line 16, 2026-05-02$/m],
    ['a total with its numbers', '18', /^ {2}total {2}33 deg\n.*\n {4}= 11 deg \+ 22 deg = 33 deg$/m],
    ['whose figures come first', undefined, /The maker's figures, local law .* overrule it\.\n$/],
  ])('tells %s', (_what, at, text) => expect(shown(at)).toMatch(text));

  it.each<[string, string | undefined, RegExp]>([
    ['settings of a part that is off', undefined, /mixture left/],
    ['an item that is done', undefined, /todo strainer/],
    ['what comes below the line', '11', /mechanical +0 deg/],
  ])('leaves out %s', (_what, at, text) => expect(shown(at)).not.toMatch(text));

  it('says so when nothing is set', () => expect(shown('1')).toContain('No settings written'));

  it('says what a total lacks', () => expect(shown('11')).toMatch(/^ {2}total: needs mechanical$/m));

  it('is the same in colours, but for the colours', () => {
    const coloured = shown(undefined, { colours: true });
    expect(coloured).toContain('\u001B[1mBench\u001B[22m');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the colours are to go
    expect(coloured.replace(/\u001B\[\d+m/g, '')).toBe(shown());
  });

  it('reads any text', () => {
    const { code, out } = ran('show x.tappet', { 'x.tappet': '\u0000\uD83D "\r\r\n initial 9\u001B[2J deg' });
    expect(code).toBe(0);
    expect(out).not.toContain('\u001B');
  });
});

describe('as JSON', () => {
  it('gives a total in words, in numbers, and with the lines of its inputs', () => {
    const total = report('12').totals.given.find(({ name }: { name: string }) => name === 'total');
    expect(total).toMatchObject({
      value: '31 deg',
      low: 31,
      high: 31,
      unit: 'deg',
      working: '9 deg + 22 deg = 31 deg',
      inputs: [
        { name: 'initial', value: '9 deg', where: { line: 10, date: '2026-05-02' } },
        { value: '22 deg', where: { line: 11, date: '2026-05-02' } },
      ],
    });
  });

  it('gives the rest as rows', () => {
    const { notebook, session, parts, items, checks, limits, kept } = report('16');
    expect({ notebook, session, parts, items, checks, limits, kept }).toEqual({
      notebook: 'Bench',
      session: { date: '2026-05-02', title: 'As found' },
      parts: [
        {
          kind: 'carburettor',
          name: 'carb single',
          text: 'one-barrel downdraught',
          where: { line: 9, date: '2026-05-02' },
        },
      ],
      items: [
        {
          word: 'todo',
          id: 'strainer',
          text: 'brush the basket out',
          safety: false,
          where: { line: 13, date: '2026-05-02' },
        },
        {
          word: 'fault',
          id: 'steering',
          text: 'binds',
          safety: true,
          where: { line: 14, date: '2026-05-02' },
        },
      ],
      checks: [
        {
          name: 'throttle return',
          state: 'due',
          why: expect.any(String),
          where: { line: 12, date: '2026-05-02' },
        },
      ],
      limits: [{ name: 'total', value: '<= 34 deg', where: { line: 5 } }],
      kept: { line: 15, date: '2026-05-02' },
    });
  });
});
