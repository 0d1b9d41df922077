/** Names that every object of the language has: as good as any other where a notebook gives them. */
import { expect, test } from 'vitest';
import { cutLines } from '../../grammar/index.ts';
import { hoverAt } from '../../server/features/hover.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { ran } from '../cli/terminal.ts';
import { diagnosticsIn, meanings, outline } from '../harness/checks.ts';
import { goneTo } from '../harness/navigation.ts';
import { hinted, lensed } from '../harness/remarks.ts';
import { listed, TODAY } from '../harness/suggestions.ts';

/** Each beside a name as long that no object has, which the answers must be the same for. */
const NAMES: readonly (readonly [name: string, plain: string])[] = [
  ['constructor', 'qzwvkxzjqkq'],
  ['toString', 'qzwvkxzj'],
  ['valueOf', 'qzwvkxz'],
  ['hasOwnProperty', 'qzwvkxzjqkqwvz'],
  ['__proto__', '__qzwvx__'],
];

/** The word is a setting, or a reading and has a setting beside it. */
const book = (name: string, kinds: readonly [string, string]) => `specs
  ${name} bolts torque 60 lb-ft
parts
  ${name} "which one"
ports
  ${name}  capped
words
  ${name}: ${kinds[0]}, "as it is named"
  ${name} speed: ${kinds[1]}
session 2026-05-02
  initial 9 deg
  ${name} 1/4 in
  ${name} speed 900 rpm
  ${name} 880 rpm at idle
  ${name} 870 rpm at idle
  initial 11 deg
  ${name} 60 s
  ${name} speed 900 ${name}
  fit carb ${name}
  todo ${name}: look at it
  check ${name} ok
  recheck ${name} after 3 days
  trial ${name} -> ${name} speed
    1/4 in  800 rpm
    1/2 in  900 rpm
    want 850 rpm
  keep
session 2026-05-20
  ${name} +1/8 in
  ${name} speed 950 rpm in drive
  ${name} of nothing 3
  photo ${name}
  note ${name}
`;

const KINDS = [
  ['setting, in', 'reading, rpm'],
  ['reading, rpm', 'setting, in'],
] as const;

type Ask = (text: string) => unknown;
const everywhere = (text: string, ask: (line: number, character: number) => unknown) =>
  cutLines(text).flatMap((line, i) =>
    [line.search(/\S/), line.length - 1].filter((column) => column >= 0).map((column) => ask(i, column)),
  );
const marked = (text: string, line: number, column: number): string =>
  cutLines(text)
    .map((each, i) => (i === line ? `${each.slice(0, column)}‸${each.slice(column)}` : each))
    .join('');

const ANSWERS: Readonly<Record<string, Ask>> = {
  'what is found': (text) => diagnosticsIn(text),
  'show in the terminal': (text) => ran('show x.tappet', { 'x.tappet': text }).out,
  'the outline': outline,
  colours: (text) => cutLines(text).map((_, i) => meanings(text, i)),
  hints: (text) => hinted(text),
  lenses: lensed,
  hover: (text) =>
    everywhere(text, (line, character) => hoverAt(openNotebook(text), { line, character }, new Map())),
  completion: (text) => everywhere(text, (...at) => listed(marked(text, ...at), { today: TODAY })),
  definition: (text) => everywhere(text, (...at) => goneTo(marked(text, ...at))),
};

/** On a machine that is busy with other things. */
const LONGEST = 60_000;

const ROWS = NAMES.flatMap((names) =>
  Object.entries(ANSWERS).map(([what, ask]) => [what, ...names, ask] as const),
);

test.each(ROWS)(
  '%s: %s',
  (_, name, plain, ask) => {
    // A sentence begins with a capital, and Markdown writes a `\\` before a `_`.
    const bare = (text: string) => text.toLowerCase().replaceAll(/[\\_]/g, '');
    const told = (answer: unknown) => bare(JSON.stringify(answer));
    const asPlain = (text: string) => text.replaceAll(bare(name), bare(plain));
    for (const kinds of KINDS)
      expect(asPlain(told(ask(book(name, kinds))))).toBe(told(ask(book(plain, kinds))));
  },
  LONGEST,
);
