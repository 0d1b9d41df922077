/** Specs recalled by name, values held to them, and estimates where there is no spec. */
import { describe, expect, test } from 'vitest';
import { figuresAbout } from '../../server/analysis/figures.ts';
import { lineStateAt } from '../../server/model/snapshot/locate.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { testFigures } from '../harness/figures.ts';

const book = (specs: string, session = 'idle 800 rpm'): string =>
  `specs\n${lines(specs)}session 2026-05-02\n${lines(session)}`;
const lines = (text: string): string =>
  text
    .split(' | ')
    .map((line) => `  ${line}\n`)
    .join('');

const HEAD = 'head bolts torque 58..62 lb-ft source "manual, table 4"';

describe('specs', () => {
  testFigures([
    {
      say: 'recalled with their source',
      book: book(HEAD),
      figure: 'head bolts torque',
      text: ['58..62 lb-ft'],
      source: 'published: manual, table 4',
      value: { low: 58, high: 62, off: 0 },
      caution: "maker's own figure",
    },
    {
      say: 'without a source they are from memory',
      book: book('head bolts torque 58..62 lb-ft'),
      figure: 'head bolts torque',
      source: 'from memory',
    },
    {
      say: 'what was read of them last, whenever that was',
      book: `${book(HEAD, 'head bolts torque 60 lb-ft')}session 2026-06-02\n  idle 800 rpm\n`,
      figure: 'head bolts torque',
      text: ['58..62 lb-ft; last 60 lb-ft on 2026-05-02: within spec'],
    },
    {
      say: 'by the name of the fastener alone, in another unit: 85 N.m are 62.7 lb-ft',
      book: book(HEAD, 'head bolts 85 N.m'),
      figure: 'head bolts torque',
      text: ['58..62 lb-ft; last 85 N·m on 2026-05-02: above spec'],
    },
    {
      say: 'with the name after the value',
      book: book(HEAD, 'torque 50 lb-ft head bolts'),
      figure: 'head bolts torque',
      text: ['58..62 lb-ft; last 50 lb-ft head bolts on 2026-05-02: below spec'],
    },
    {
      say: 'a rough reading may be outside',
      book: book(HEAD, 'head bolts 55..60 lb-ft'),
      figure: 'head bolts torque',
      text: ['58..62 lb-ft; last 55..60 lb-ft on 2026-05-02: may be out of spec'],
    },
    {
      say: 'a setting in force, its inches in millimetres',
      book: book('plug gap 0.6..0.7 mm', 'plug gap 0.025 in'),
      figure: 'plug gap',
      text: ['0.6..0.7 mm; last 0.025 in: within spec'],
    },
    {
      say: 'of its place',
      book: book(
        'intake valve lash 0.012 in | exhaust valve lash 0.014 in',
        'valve lash intake 0.012 in, exhaust 0.016 in',
      ),
      figure: 'exhaust valve lash',
      text: ['0.014 in; last 0.016 in: above spec'],
    },
  ]);

  test('a quantity that needs no spec of a name keeps its place', () => {
    const text = book('intake valve lash 0.012 in', 'intake valve lash 0.012 in');
    const snapshot = openNotebook(text);
    expect(lineStateAt(snapshot, 3)?.entry).toMatchObject({ quantity: { name: 'valve lash' } });
  });

  test('asked about a word only its own', () => {
    const text = book(`${HEAD} | plug gap 0.025 in`, 'plug gap 0.025 in');
    const snapshot = openNotebook(text);
    const line = text.split('\n').length - 2;
    const state = lineStateAt(snapshot, line)?.after;
    expect(state).toBeDefined();
    if (!state) return;
    const names = figuresAbout('plug gap', { state, snapshot, line }).map(({ name }) => name);
    expect(names).toEqual(['plug gap']);
  });
});

describe('estimates', () => {
  testFigures([
    {
      say: '3/8-16 grade 5 dry is about 31 lbf.ft (tables published from SAE J429)',
      book: book('rocker bolts torque "3/8-16 grade 5"'),
      figure: 'rocker bolts torque, estimate',
      text: ['about 31 lb-ft, an estimate (~20.5..41 lb-ft), dry'],
      working: '0.2 x 0.375 in x 4940 lbf / 12 = 31 lb-ft',
      caution: "maker's figure overrules",
      source: 'SAE J429',
    },
    {
      say: 'oiled is about 23',
      book: book('rocker bolts torque "3/8-16 grade 5, oiled"'),
      figure: 'rocker bolts torque, estimate',
      text: ['about 23 lb-ft, an estimate (~15.5..31 lb-ft), oiled'],
    },
    {
      say: 'M10 of class 8.8 has 58.0 mm2 (ISO 898-1): 0.2 x 10 x 0.75 x 580 x 58 / 1000 = 50.5 N.m',
      book: book('sump bolts torque "M10 8.8"'),
      figure: 'sump bolts torque, estimate',
      text: ['about 50.5 N·m, an estimate (~33.5..67.5 N·m), dry'],
    },
    {
      say: 'never where a spec exists',
      book: book('rocker bolts torque 25 lb-ft source "3/8-16 grade 5"'),
      figure: 'rocker bolts torque, estimate',
      text: [],
    },
    {
      say: 'not without a grade',
      book: book('rocker bolts torque "3/8-16"'),
      figure: 'rocker bolts torque, estimate',
      text: [],
    },
    {
      say: 'not for what is no torque',
      book: book('plug gap "3/8-16 grade 5"'),
      figure: 'plug gap, estimate',
      text: [],
    },
  ]);
});
