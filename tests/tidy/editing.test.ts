/** What a double click takes, and where Enter indents. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT } from './files.ts';

const { wordPattern, indentationRules } = JSON.parse(
  readFileSync(join(ROOT, 'grammar/language-configuration.json'), 'utf8'),
);
const regExp = ({ pattern, flags }: { pattern: string; flags: string }, more = '') =>
  new RegExp(pattern, flags + more);

test.each([
  ['mixture 1 1/2 turns', ['mixture', '1', '1/2', 'turns']],
  ['plug #4 all-in', ['plug', '#4', 'all-in']],
  ['~205 kPa, 0.035" +2deg', ['205', 'kPa', '0.035', '2', 'deg']],
  ['torque 60 N·m', ['torque', '60', 'N·m']],
  ["driver's tür", ["driver's", 'tür']],
])('the words of %s', (line, words) => {
  expect(line.match(regExp(wordPattern, 'g'))).toEqual(words);
});

test.each([
  ['session 2026-05-02 09:30  Springs', true],
  ['Engine', true],
  ['  trial feed restrictor -> oil pressure', true],
  ['  initial 9 deg', false],
  ['enginehouse', false],
])('%s: Enter indents: %s', (line, indents) => {
  expect(regExp(indentationRules.increaseIndentPattern).test(line)).toBe(indents);
});

test.each([
  ['  session 2026-05-02', true],
  ['session 2026-05-02', false],
  ['  note session 2', false],
])('%s: moves out to the margin: %s', (line, moves) => {
  expect(regExp(indentationRules.decreaseIndentPattern).test(line)).toBe(moves);
});
