/** Functions of the rules and the trade are called by what they do or give, not by a participle that could be anything. */
import { expect, test } from 'vitest';
import { projectFiles, sources } from './files.ts';

const VAGUE =
  'told|said|turned|kept|taken|spoken|cold|marks|standing|named|beside|together|among|between|written|wanted|judged|selected|joined|listed';
const DECLARED = RegExp(
  `(?:\\bfunction (?:${VAGUE})\\b|\\bconst (?:${VAGUE})(?: = |: [^=\\n]+ = )(?:<[^>]*>)?\\([^()]*\\)(?:: [^=\\n]+)? =>).*`,
  'g',
);

const vagueNames = (text: string): readonly string[] => [...text.matchAll(DECLARED)].map(([found]) => found);

test('no function of the rules or the trade has a vague name', () => {
  const rooms = [...sources(projectFiles())].filter(([path]) => /^server\/(?:rules|trade)\//.test(path));
  expect(rooms.flatMap(([path, text]) => vagueNames(text).map((found) => `${path}: ${found}`))).toEqual([]);
});

test.each<[text: string, found: boolean]>([
  ['function told(name: string): Row {', true],
  ['export function between<T>(a: T) {', true],
  ['const standing = ({ by }: Rule): string => by;', true],
  ['const told = (n: number) => n;', true],
  ['const said = entry.statements;', false],
  ['const cold = values.filter((value) => value < 60);', false],
  ['function standingText(rule: Rule): string {', false],
])('%s', (text, found) => expect(vagueNames(text).length > 0).toBe(found));
