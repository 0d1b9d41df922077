/** Plain speech in a notebook: what its lines leave in force, what they begin, and what they are kept from. */
import { describe, expect, test } from 'vitest';
import { linesBetween } from '../../server/model/snapshot/locate.ts';
import { sessionsOf } from '../../server/model/snapshot/section-ranges.ts';
import { open } from '../../server/model/snapshot/snapshot.ts';
import { settingText } from '../../server/model/state/setting-text.ts';
import { meaning } from './meaning.ts';

const book = (...lines: readonly string[]) => open(lines.join('\n'), () => []);
const endOf = (...lines: readonly string[]) => [...linesBetween(book(...lines))].at(-1)?.after;
const inForce = (...lines: readonly string[]): readonly string[] =>
  [...(endOf(...lines)?.settings.values() ?? [])].map(
    (setting) =>
      `${[setting.quantity.name, setting.place].filter(Boolean).join(' ')} ${settingText(setting)}`,
  );

describe('one line means', () => {
  test.each([
    ['12 initial, 22 mech', 'spoken setting initial 12 deg, setting mechanical limit 22 deg'],
    ['idle 7 to 800 in neutral', 'spoken reading idle 700..800 rpm, @(neutral)'],
    ['tappets 0.32/0.37 mm hot', "spoken setting valve lash inlet: 0.32 mm, 'hot' | exhaust: 0.37 mm, 'hot'"],
    ['10:40 idle 850-ish', 'spoken reading idle ~850 rpm'],
    ['the rain stopped', 'spoken note the rain stopped'],
    ['back to 850', 'asked idle 850 rpm / note back to 850 / todo back: back to 850'],
    ['water 195 farenheit', "not in force: reading water 195, 'farenheit'"],
    ['timing - 2°', 'not in force: reading timing less 2 deg'],
    ['initial nine', "not in force: setting initial 'nine'"],
  ])('%s', (text, means) => expect(meaning(`session 2026-05-02\n  idle 800 rpm\n  ${text}`)).toBe(means));
});

describe('in force', () => {
  test('a line that is understood sets what it means', () =>
    expect(inForce('session 2026-05-02', '12 initial, 22 mech')).toEqual([
      'initial 12 deg',
      'mechanical limit 22 deg',
    ]));

  test.each([
    'fuel line weeping at the pump',
    'initial 9 F',
    'plug gap 0.7 furlongs',
    'back to 850',
    'choke cable stiff',
    'main jet 110 next time',
  ])('%s sets nothing', (line) => expect(inForce('session 2026-05-02', line)).toEqual([]));

  test('what is set stays as it was below a line that is asked', () =>
    expect(inForce('session 2026-05-02', 'initial 9 deg', 'initial 12 F')).toEqual(['initial 9 deg']));

  test('a setting that moved nobody knows how far is in doubt, until it is given whole', () => {
    const moved = ['session 2026-05-02', 'initial 9 deg', 'advanced it a touch'];
    expect(inForce(...moved)).toEqual(['initial 9 deg (in doubt: moved since, nobody knows how far)']);
    expect(inForce(...moved, 'initial 12 deg')).toEqual(['initial 12 deg']);
  });

  test('a change of what is in doubt stays in doubt', () =>
    expect(
      inForce('session 2026-05-02', 'initial 9 deg', 'advanced it a touch', 'initial +2 deg')[0],
    ).toContain('11 deg (in doubt'));

  test('a fact on a line of a session leaves the session open', () => {
    const state = endOf('session 2026-05-02', 'fires 18436572', 'idle 800 rpm');
    expect(state?.section).toBe('session');
    expect(state?.facts.get('firing order|')).toBeDefined();
    expect(state?.readings.size).toBe(1);
  });
});

describe('a head as people date it', () => {
  const days = (...lines: readonly string[]) =>
    sessionsOf(book(...lines)).map(({ date, from, to }) => [date, from, to]);

  test('begins a session', () =>
    expect(days('Sat 3/14/26 - truck out of the shed', 'idle 800 rpm', '3/15 truck', 'idle 820 rpm')).toEqual(
      [
        ['2026-03-14', 0, 2],
        ['2026-03-15', 2, 4],
      ],
    ));

  test('the day before the month, where a head has shown it', () =>
    expect(days('Sat 14/3/26', '11/4 Saturday')).toEqual([
      ['2026-03-14', 0, 1],
      ['2026-04-11', 1, 2],
    ]));

  test('of a day that may be two begins one without a date', () => {
    const state = endOf('session 2026-05-02', 'idle 800 rpm', '5/6/26 truck', 'idle 820 rpm');
    expect(state?.session?.date).toBeUndefined();
    expect(state?.readings.size).toBe(1);
  });

  test("of another machine holds nothing against this one's engine, up to the next head", () => {
    const lines = ['3/14/26 truck', '12 initial', '3/15/26 boat', '20 initial', 'initial 21 deg'];
    expect(inForce(...lines)).toEqual(['initial 12 deg']);
    expect(inForce(...lines, '3/16/26 truck', '14 initial')).toEqual(['initial 14 deg']);
  });

  test('pages begin there, wherever they would end otherwise', () => {
    const snapshot = book(...Array.from({ length: 30 }, (_, i) => `${(i % 28) + 1} March 2026`));
    expect(snapshot.pages.length).toBe(30);
  });
});

describe('what the notebook is written in', () => {
  test.each([
    ['water 80 C', 'water 95', 'spoken reading water 95 C'],
    ['water 180 F', 'water 195', 'spoken reading water 195 F'],
  ])('%s before %s', (before, line, means) =>
    expect(meaning(`session 2026-05-02\n${before}\n${line}`)).toBe(means),
  );

  test('the same value as long as nothing is new', () => {
    const [first, second] = [
      ...linesBetween(book('session 2026-05-02', 'water 80 C', 'water 81 C', 'idle 800 rpm')),
    ]
      .slice(1, 3)
      .map(({ after }) => after.habits);
    expect(second).toBe(first);
  });
});
