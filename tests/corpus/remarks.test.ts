/** Lines of our own invention that are no readings: what is dangerous is marked, what is to be done is offered, the rest is a note. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readSpoken } from '../../server/model/spoken/read.ts';

const AROUND = { section: 'session', words: new Map(), specs: new Map(), inConflict: false } as const;
const ROWS = readFileSync(join(import.meta.dirname, 'lines/remarks.tsv'), 'utf8')
  .split('\n')
  .filter((line) => line !== '')
  .map((line) => line.split('\t') as [string, string]);

test.each(ROWS)('%s: %s', (kind, text) => {
  const { status, safety, offers } = readSpoken(text, AROUND, { units: 'us', cylinders: 8 });
  if (kind === 'prose') expect(status).toBe('note');
  else expect(status).toBe('asked');
  if (kind === 'danger')
    expect([safety, offers[0]]).toEqual([true, expect.stringMatching(/^fault .*\[safety\]$/)]);
  if (kind === 'open') expect(offers[0]).toMatch(/^(?:todo|fault) /);
});
