/** Logs of a notebook: summarised by bands, beside what was set, or told why they cannot be. */
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../server/analysis/figure.ts';
import { allFigures, figuresAbout } from '../../server/analysis/figures.ts';
import { logsWanted } from '../../server/analysis/road/log.ts';
import { lineStateAt } from '../../server/model/snapshot/locate.ts';
import type { FileText } from '../../server/model/snapshot/named-files.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { fixture } from '../harness/fixture.ts';

const BOOK = `
  session 2026-05-02
    initial 9 deg
    mechanical 0 deg @ 900 rpm, 22 deg @ 3100 rpm
    main jet 105
    valve lash 0.012 in
    log first.csv
    main jet 110
    log second.csv
  session 2026-05-03
    idle 800 rpm`;

const LOG = 'Time (s),RPM,AFR\n0,1010,13\n1,1240,14\n2,1250,12\n3,2100,12.5\n';

/** The figures of logs at the cursor (asked about `log`), or at the end. */
function logFigures(book: string, files: Readonly<Record<string, FileText>>): readonly Figure[] {
  const { text, cursor } = fixture(book);
  const snapshot = openNotebook(text);
  const line = cursor?.line ?? text.split('\n').length - 1;
  const state = lineStateAt(snapshot, line)?.after;
  if (!state) throw new Error(`the notebook has no line ${line}`);
  const word = cursor ? 'log' : undefined;
  const wanted = logsWanted({ state, snapshot, line }, word);
  const read = new Map<string, FileText>(wanted.map((path) => [path, files[path] ?? { problem: 'missing' }]));
  const moment = { state, snapshot, line, files: read };
  const found = word ? figuresAbout(word, moment) : allFigures(moment);
  return found.filter(({ name }) => name.startsWith('log '));
}

const FILES = { 'first.csv': { text: LOG }, 'second.csv': { text: LOG } };
const cells = (figure: Figure | undefined): readonly string[] =>
  (figure?.rows ?? []).map((row) => row.join(' | '));

describe('a log', () => {
  test('by bands of engine speed, with the total that the curve gives there', () => {
    const [figure] = logFigures(BOOK, FILES);
    expect(cells(figure)).toEqual([
      'engine speed rpm | lines | air fuel ratio | total as set, mid-band',
      '1000..1250 | 2 | 13.5 (13..14) | 11.3 deg',
      '1250..1500 | 1 | 12 | 13.8 deg',
      '2000..2250 | 1 | 12.5 | 21.3 deg',
    ]);
    expect(figure?.text).toBe('4 lines, time 0..3 s, engine speed 1010..2100 rpm, air fuel ratio 12..14:1');
  });

  test('joined to the settings in force at its own line', () => {
    const jets = logFigures(BOOK, FILES).map(({ name, inputs }) => [
      name,
      inputs.find((input) => input.name === 'main jet')?.value,
      inputs.some((input) => input.name === 'valve lash'),
    ]);
    expect(jets).toEqual([
      ['log first.csv', '105', false],
      ['log second.csv', '110', false],
    ]);
  });

  test('asked at its line it is the only one', () => {
    const names = logFigures(BOOK.replace('second.csv', 'sec‸ond.csv'), FILES).map(({ name }) => name);
    expect(names).toEqual(['log second.csv']);
  });

  test('lines below are not yet written', () => {
    const { text } = fixture(BOOK);
    const snapshot = openNotebook(text);
    const state = lineStateAt(snapshot, 5)?.after;
    expect(state && logsWanted({ state, snapshot, line: 5 })).toEqual(['first.csv']);
  });

  test('where nobody read the files nothing is told', () => {
    const { text } = fixture(BOOK);
    const snapshot = openNotebook(text);
    const line = 9;
    const state = lineStateAt(snapshot, line)?.after;
    const names = state && allFigures({ state, snapshot, line }).map(({ name }) => name);
    expect(names?.filter((name) => name.startsWith('log '))).toEqual([]);
  });

  test('in miles an hour where there is no engine speed', () => {
    const text = 'Speed (mph),Water (F)\n31,180\n34,182\n62,190\n';
    const [figure] = logFigures(BOOK, { ...FILES, 'first.csv': { text } });
    expect(cells(figure)).toEqual([
      'speed mph | lines | water F',
      '30..35 | 2 | 181 (180..182)',
      '60..65 | 1 | 190',
    ]);
  });

  test('a column without a speed has no bands', () => {
    const [figure] = logFigures(BOOK, { ...FILES, 'first.csv': { text: 'AFR\n13\n14\n' } });
    expect(figure?.text).toBe('2 lines, air fuel ratio 13..14:1');
    expect(cells(figure)).toEqual([]);
  });

  test('however wide the speeds are spread, few bands', () => {
    const text = `RPM\n${Array.from({ length: 900 }, (_, i) => i * 10).join('\n')}\n`;
    const [figure] = logFigures(BOOK, { ...FILES, 'first.csv': { text } });
    expect(figure?.rows.length).toBeGreaterThan(5);
    expect(figure?.rows.length).toBeLessThanOrEqual(15);
  });

  test('it tells what it could not use', () => {
    const text = 'RPM,Speed,Gizmo\n900,10,1\n901\n902,x,1\n';
    const [figure] = logFigures(BOOK, { ...FILES, 'first.csv': { text } });
    expect(figure?.text).toBe(
      '2 lines, engine speed 900..902 rpm; 1 line with more or fewer cells than headings, first at line 3; not used: "Speed" (no unit), "Gizmo" (not a known word)',
    );
  });
});

test.each<[FileText, string]>([
  [{ problem: 'missing' }, 'file not found'],
  [{ problem: 'too large' }, 'it is larger than 20 MB; cut it down to the runs that matter'],
  [{ problem: 'outside' }, "it is outside the notebook's folder; put it beside the notebook"],
  [{ problem: 'not text' }, 'it is not UTF-8 text'],
  [{ problem: 'not readable' }, 'it could not be read'],
  [{ text: '' }, 'it is empty'],
  [{ text: 'RPM\n' }, 'none of the lines below its headings can be used'],
])('%j is told as: %s', (file, says) => {
  const [figure] = logFigures(BOOK, { ...FILES, 'first.csv': file });
  expect(figure?.text).toBe(`Can't be summarised: ${says}`);
});
