/** The carried window of past readings is small and dies out, so that an old line never ties all pages below it. */
import { describe, expect, test } from 'vitest';
import type { Check } from '../../server/model/snapshot/finding.ts';
import { lineCount, lineStateAt } from '../../server/model/snapshot/locate.ts';
import { edit, open } from '../../server/model/snapshot/snapshot.ts';
import { WINDOW } from '../../server/model/state/reading-window.ts';

const NO_CHECK: Check = () => [];
const SESSIONS = 60;

const text = (first: string, each: string): string =>
  Array.from({ length: SESSIONS }, (_, i) => {
    const date = new Date(Date.UTC(2026, 0, 1 + i)).toISOString().slice(0, 10);
    return `session ${date}\n  ${i === 0 ? first : each}\n`;
  }).join('');

const endOf = (notebook: string) => {
  const snapshot = open(notebook, NO_CHECK);
  return lineStateAt(snapshot, lineCount(snapshot) - 1)?.after;
};

/** How many lines below its own page a digit typed at the end of line 2 makes to be read again. */
function rereadBelow(notebook: string): number {
  let lines = 0;
  const noting: Check = () => {
    lines++;
    return [];
  };
  const snapshot = open(notebook, NO_CHECK);
  const at = { line: 1, character: (notebook.split('\n')[1] ?? '').indexOf(' rpm') };
  edit({ ...snapshot, check: noting }, { range: { start: at, end: at }, text: '1' });
  return lines - 2;
}

describe('the window of past readings', () => {
  test('holds the last few of a kind', () => {
    const lists = endOf(text('idle 820 rpm', 'idle 830 rpm'))?.recentReadings.get('idle||')?.lists;
    expect(lists).toHaveLength(WINDOW);
    expect(new Set(lists?.flat())).toEqual(new Set([830]));
  });

  test('tells conditions, places and cylinders apart', () => {
    const past = endOf(
      'session 2026-05-02\n  idle 820 rpm in drive\n  idle 900 rpm\n  tube 400 410 F\n  tube #2 405 F\n',
    )?.recentReadings;
    expect([...(past ?? [])].map(([key, { lists }]) => [key, lists])).toEqual([
      ['idle||drive', [[820]]],
      ['idle||', [[900]]],
      ['tube||', [[400, 410]]],
      ['tube|#2|', [[405]]],
    ]);
  });

  test('is in the usual unit, whatever was written', () =>
    expect(
      endOf('session 2026-05-02\n  compression 10 bar\n')?.recentReadings.get('compression||')?.lists[0]?.[0],
    ).toBeCloseTo(145.0377, 4));

  test('forgets a kind that is not read any more', () => {
    expect(endOf(text('fast idle 1500 rpm', 'idle 820 rpm'))?.recentReadings.has('fast idle||')).toBe(false);
    expect(endOf(text('fast idle 1500 rpm', 'idle 820 rpm'))?.recentReadings.has('idle||')).toBe(true);
  });

  test('holds no more kinds than it may, however many are read', () => {
    const kinds = Array.from({ length: 500 }, (_, i) => `  timing 9 deg @ ${500 + i} rpm\n`).join('');
    expect(endOf(`session 2026-05-02\n${kinds}`)?.recentReadings.size).toBe(64);
  });

  test('leaves out what answers to no setting, and what is no number', () =>
    expect(
      endOf(
        'session 2026-05-02\n  weather 14 C, 1010 hPa\n  odometer 12000 mi\n  egt > 900 F\n  plug #1 tan\n',
      )?.recentReadings.size,
    ).toBe(0));

  // It dies out after as many readings of its kind, or as many sessions without one.
  test('a change in an old reading is read again a bounded way down', () => {
    const going = rereadBelow(text('fast idle 1500 rpm', 'fast idle 1600 rpm'));
    expect(going).toBeGreaterThan(0);
    expect(going).toBeLessThanOrEqual(2 * (WINDOW + 1));
    const gone = rereadBelow(text('fast idle 1500 rpm', 'plug #1 tan'));
    expect(gone).toBeGreaterThan(0);
    expect(gone).toBeLessThanOrEqual(2 * 26);
  });
});

describe('what was changed since the last reading', () => {
  const turned = (lines: string) =>
    endOf(`session 2026-05-02\n  ${lines.split(' | ').join('\n  ')}\n`)?.changesSinceReading.map(
      ({ name }) => name,
    );
  test.each([
    ['initial 9 deg | mixture 1 turn', []],
    ['initial 9 deg | initial 11 deg | mixture in 1/4 turn', ['initial', 'mixture']],
    ['initial 9 deg | initial 11 deg | idle 820 rpm', []],
    ['initial 9 deg | initial 11 deg | weather 14 C | plug #1 tan', ['initial']],
    ['initial 9 deg | initial 11 deg | initial 12 deg', ['initial']],
    ['fit carb single | fit carb twin', ['carburettor']],
    ['plug gap 1 mm | plug gap 0.1 cm', []],
  ])('%s', (lines, names) => expect(turned(lines)).toEqual(names));
});
