/** No plain object is asked for a text that somebody wrote: a Map is, or `Object.hasOwn` first. */
import { expect, test } from 'vitest';
import { projectFiles, sources } from './files.ts';
import { textsLookedUp } from './looked-up.ts';

const programs = new Map(
  [...sources(projectFiles())].filter(([path]) => /^(?:grammar|server|client)\//.test(path)),
);

test('no object is asked for a text as a table', () => expect(textsLookedUp(programs)).toEqual([]));

const TABLE = 'const A: Readonly<Record<string, number>> = { a: 1 };\n';

test.each<[text: string, ...found: string[]]>([
  [`${TABLE}A[name]`, 'A[name]'],
  [`${TABLE}if (A[word.text] ?? 0) {}`, 'A[word.text]'],
  [`${TABLE}A["a"] + A['a']`],
  [`${TABLE}// A[name]\n/* A[name] */ const told = 'A[name]';`],
  [`${TABLE}const a = Object.hasOwn(A, name) ? A[name] : undefined;`],
  [`${TABLE}const a = Object.hasOwn(A, other) ? A[name] : undefined;`, 'A[name]'],
  ['const f = (rows: Record<string, number>, at: string) => rows[at];', 'rows[at]'],
  ['const f = (rows: { readonly [name: string]: number }, at: string) => rows[at];', 'rows[at]'],
  [
    'interface I { rows?: Readonly<Record<string, number>> }\nconst f = (i: I, at: string) => i.rows?.[at];',
    'i.rows?.[at]',
  ],
  ['const made = Object.fromEntries(pairs);\nmade[at]', 'made[at]'],
  ['const one = (value as Record<string, unknown>)[key];', 'as Record<string, unknown>)['],
  ['const is = name in TABLE;', 'name in TABLE'],
  ['const is = quantity.name in TABLE ? 1 : 2;', 'quantity.name in TABLE'],
  ["const is = 'name' in value;"],
  ['for (const key in value) f(key);'],
  ['const B: Readonly<Record<Kind, number>> = x;\nB[kind]'],
  ['const C: ReadonlyMap<string, number> = x;\nC.get(name)'],
])('%s', (text, ...found) =>
  expect(textsLookedUp(new Map([['server/x.ts', text]]))).toEqual(
    found.map((each) => `server/x.ts: ${each}`),
  ),
);
