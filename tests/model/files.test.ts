/** Which paths of a notebook lie beside it. */
import { expect, test } from 'vitest';
import { partsWithin } from '../../server/model/snapshot/named-files.ts';

test.each<[path: string, parts: readonly string[] | undefined]>([
  ['run.csv', ['run.csv']],
  ['logs/run 1.csv', ['logs', 'run 1.csv']],
  ['./logs//run.csv', ['logs', 'run.csv']],
  ['logs\\run.csv', ['logs', 'run.csv']],
  ['logs/../run.csv', ['run.csv']],
  ['..run.csv', ['..run.csv']],
  ['', undefined],
  ['  ', undefined],
  ['.', undefined],
  ['..', undefined],
  ['../run.csv', undefined],
  ['logs/../../run.csv', undefined],
  ['logs\\..\\..\\run.csv', undefined],
  ['/etc/run.csv', undefined],
  ['\\\\host\\share\\run.csv', undefined],
  ['C:\\run.csv', undefined],
  ['c:run.csv', undefined],
  ['file:///run.csv', undefined],
  ['https://example.org/run.csv', undefined],
  ['~/run.csv', undefined],
  ['run\0.csv', undefined],
])('%j', (path, parts) => expect(partsWithin(path)).toEqual(parts));
