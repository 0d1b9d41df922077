/** Headings of loggers, and files that are whole, odd or broken. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { faultText, readLog } from '../../server/trade/sums/log-table.ts';
import { columnsOf } from '../../server/trade/sums/logger.ts';

const told = (headings: readonly string[], units?: readonly string[]): readonly string[] => {
  const { columns, unread } = columnsOf(headings, units);
  return [
    ...columns.map(({ name, unit }) => `${name} ${unit.id}`),
    ...unread.map(({ heading, why }) => `${heading}: ${why}`),
  ];
};

describe('headings', () => {
  test.each<[heading: string, column: string]>([
    ['RPM', 'engine speed rpm'],
    ['Engine Speed (rpm)', 'engine speed rpm'],
    ['EngineSpeed', 'engine speed rpm'],
    ['engine_speed_rpm', 'engine speed rpm'],
    ['Speed [mph]', 'speed mph'],
    ['GPS Speed (km/h)', 'speed km/h'],
    ['EGT 1 (F)', 'egt #1 F'],
    ['EGT2 [°C]', 'egt #2 C'],
    ['egt#3 (deg C)', 'egt #3 C'],
    ['Water Temp (degF)', 'water F'],
    ['CLT (C)', 'water C'],
    ['AFR', 'air fuel ratio ratio'],
    ['Lambda', 'lambda number'],
    ['MAP (kPa)', 'manifold absolute pressure kPa'],
    ['Boost {psi}', 'boost psi'],
    ['Time (s)', 'time s'],
    ['Time', 'time s'],
    ['TPS', 'throttle %'],
    ['Ignition Timing', 'timing deg'],
    ['Battery Voltage', 'volts V'],
    ['Oil.Pressure (bar)', 'oil pressure bar'],
    ['Speed', 'Speed: no unit'],
    ['EGT', 'EGT: no unit'],
    ['Speed (psi)', 'Speed (psi): wrong kind of unit'],
    ['Gizmo', 'Gizmo: not a known word'],
    ['bore (mm)', 'bore (mm): not a known word'],
    ['constructor', 'constructor: not a known word'],
  ])('%s', (heading, column) => expect(told([heading])).toEqual([column]));

  test('a line of units below', () => {
    expect(told(['RPM', 'Speed', 'EGT'], ['rpm', 'mph', 'C'])).toEqual([
      'engine speed rpm',
      'speed mph',
      'egt C',
    ]);
  });

  test('the first of two alike', () =>
    expect(told(['RPM', 'Engine Speed'])).toEqual([
      'engine speed rpm',
      'Engine Speed: a second column of the same',
    ]));
});

const read = (text: string): string => {
  const log = readLog(text);
  if ('problem' in log) return log.problem;
  return `${log.values.map((list) => list.join(' ')).join(' | ')}${faultText(log)}`;
};

describe('files', () => {
  test.each<[what: string, text: string, says: string]>([
    ['plain', 'RPM,AFR\n900,13.1\n1900,12.4\n', '900 1900 | 13.1 12.4'],
    ['a mark of its bytes and other line breaks', '\uFEFFRPM,AFR\r\n900,13.1\r\n', '900 | 13.1'],
    ['lines about itself first', 'Logger,v1\n\nTime (s),RPM\n0,900\n', '0 | 900'],
    ['semicolons and decimal commas', 'RPM;AFR\n900;13,1\n', '900 | 13.1'],
    ['tabs', 'RPM\tAFR\n900\t13.1\n', '900 | 13.1'],
    ['cells in quotes', '"RPM","AFR"\n"900","13.1"\n', '900 | 13.1'],
    ['a line of units', 'RPM,Speed\nrpm,mph\n900,10\n', '900 | 10'],
    ['an empty cell', 'RPM,AFR\n900,\n,13\n', '900 NaN | NaN 13'],
    [
      'a cell that is not a number',
      'RPM,AFR\n900,rich\n',
      '900 | NaN; 1 line with a cell that is not a number, first at line 2',
    ],
    [
      'lines cut short',
      'RPM,AFR\n900,13\n900\n901\n',
      '900 | 13; 2 lines with more or fewer cells than headings, first at line 3',
    ],
    [
      'numbers of a programmer',
      'RPM,AFR\n0x10,13\n',
      'NaN | 13; 1 line with a cell that is not a number, first at line 2',
    ],
    ['nothing', '', 'it is empty'],
    ['blanks', ' \n\n', 'it is empty'],
    ['no text', 'RPM\0,AFR', 'it is not text'],
    ['headings alone', 'RPM,AFR\n', 'none of the lines below its headings can be used'],
    [
      'headings and rubbish',
      'RPM,AFR\nx,y\n',
      'none of the lines below its headings can be used; 1 line with nothing in any known column, first at line 2',
    ],
    ['a time alone', 'Time,Gizmo\n0,1\n', 'no heading in its first 60 lines is a known column'],
    ['a letter', 'Dear driver,\nplease find', 'it begins "Dear driver,"'],
  ])('%s', (_, text, says) => expect(read(text)).toContain(says));

  test('any text has an answer', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        const log = readLog(`RPM,AFR\n${text}`);
        if ('problem' in log) expect(log.problem).not.toBe('');
        else for (const list of log.values) expect(list.length).toBe(log.rows);
      }),
    );
  });

  test('every row that is read was written', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(fc.integer({ min: 0, max: 9000 }), fc.double({ noNaN: true, noDefaultInfinity: true })),
          { minLength: 1 },
        ),
        (rows) => {
          const log = readLog(`RPM,AFR\n${rows.map((row) => row.join(',')).join('\n')}`);
          expect('problem' in log ? log : log.values).toEqual([
            rows.map(([rpm]) => rpm),
            rows.map(([, afr]) => (afr === 0 ? 0 : afr)),
          ]);
        },
      ),
    );
  });

  test.each(['(', ')', ' (', 'rpm ', 'a ', '\t', '(]', 'egt # '])(
    'a heading that goes on and on: %j',
    (sign) => {
      const log = readLog(`RPM;${sign.repeat(200_000)}\n900;1\n`);
      expect('problem' in log ? log.problem : log.columns.map(({ name }) => name)).toEqual(['engine speed']);
    },
  );

  test('more lines than a call takes arguments', () => {
    const log = readLog(`RPM\n${'900\n'.repeat(200_000)}`);
    expect('problem' in log ? log.problem : log.rows).toBe(200_000);
  });
});
