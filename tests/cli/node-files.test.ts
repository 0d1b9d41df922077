/** What may be read beside a notebook on a real disk, and what may not. */
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readBeside } from '../../server/cli/node-files.ts';
import { LARGEST_FILE } from '../../server/model/snapshot/named-files.ts';

let root: string;
const at = (...parts: string[]): string => join(root, ...parts);

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'notebooks-'));
  mkdirSync(at('boat/logs'), { recursive: true });
  mkdirSync(at('boat-of-others'));
  writeFileSync(at('secret.csv'), 'RPM\n1\n');
  writeFileSync(at('boat-of-others/run.csv'), 'RPM\n1\n');
  writeFileSync(at('boat/logs/run.csv'), 'RPM\n900\n');
  writeFileSync(at('boat/latin.csv'), Buffer.from([0x52, 0xe9, 0x0a]));
  writeFileSync(at('boat/huge.csv'), '');
  truncateSync(at('boat/huge.csv'), LARGEST_FILE + 1);
  symlinkSync(at('secret.csv'), at('boat/link.csv'));
  symlinkSync(root, at('boat/up'));
  symlinkSync(at('boat/logs/run.csv'), at('boat/inner.csv'));
});

afterAll(() => rmSync(root, { recursive: true }));

test.each<[what: string, parts: string[], answer: object]>([
  ['a file below', ['logs', 'run.csv'], { text: 'RPM\n900\n' }],
  ['a link that stays inside', ['inner.csv'], { text: 'RPM\n900\n' }],
  ['nothing there', ['none.csv'], { problem: 'missing' }],
  ['a file as a folder', ['logs', 'run.csv', 'x'], { problem: 'missing' }],
  ['a folder', ['logs'], { problem: 'not readable' }],
  ['a link to a file outside', ['link.csv'], { problem: 'outside' }],
  ['a link to a folder outside', ['up', 'secret.csv'], { problem: 'outside' }],
  ['a way up', ['..', 'secret.csv'], { problem: 'outside' }],
  ['a folder whose name begins alike', ['..', 'boat-of-others', 'run.csv'], { problem: 'outside' }],
  ['more than twenty megabytes', ['huge.csv'], { problem: 'too large' }],
  ['no text', ['latin.csv'], { problem: 'not text' }],
  ['a name that no disk takes', ['a\0b'], { problem: 'not readable' }],
])('%s', (_, parts, answer) => expect(readBeside(at('boat/x.tappet'), parts)).toEqual(answer));
