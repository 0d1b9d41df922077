/** Names of the trade as plain speech writes them: run together, in the plural, with a side before the carburettor. */
import { longestPhrase, phraseTree } from '../../trade/text/phrase-tree.ts';
import { VOCABULARY } from '../../trade/vocabulary/vocabulary.ts';
import * as lexicon from './lexicon.ts';
import { nearWords } from './near-names.ts';
import { SLANG } from './slang.ts';

const same = (word: string): string => word;

/** The later row of a name holds. */
const SPOKEN = [
  ...new Map([
    ...[...lexicon.SPOKEN_NAMES].map(([name, means]) => [name, means.split('|')] as const),
    ...SLANG,
  ]),
];
const TRADE = VOCABULARY.filter(({ kind }) => kind !== 'fact').flatMap(({ name, aliases }) =>
  [name, ...aliases].map((word) => [word, [name]] as const),
);

const NAMES = phraseTree(SPOKEN);

const SHORT = [
  [' pressure', 'pres'],
  [' pressure', 'pr'],
  [' temperature', 'temp'],
  [' temperature', 'tmp'],
] as const;

/** `oiltemp`, `mainjet`, `tickover`: two words of the trade without what parts them. */
const JOINED = new Map(
  [...TRADE, ...SPOKEN]
    .filter(([name]) => /^\w{3,} \w{3,}$/.test(name))
    .flatMap(([name, means]) =>
      [
        name,
        ...SHORT.filter(([full]) => name.endsWith(full)).map(([full, cut]) => name.replace(full, cut)),
      ].map((each) => [each.replace(' ', ''), means] as const),
    ),
);

/** `mixtures`, `air cleaner`, where the table has the other number. */
const OTHER_NUMBER = phraseTree(
  TRADE.filter(([name]) => name.length > 4).map(([name, means]) => [otherNumber(name), means] as const),
);

function otherNumber(name: string): string {
  return name.endsWith('s') ? name.slice(0, -1) : `${name}s`;
}

interface Found {
  readonly value: readonly string[];
  readonly length: number;
}

const NEAR = nearWords([...TRADE, ...SPOKEN].map(([name]) => name));
const PLAIN = phraseTree([...TRADE, ...SPOKEN]);

/** A name with a letter wrong in its first word. */
export function nearNameAt(words: readonly string[], at: number): Found | undefined {
  const near = NEAR(words[at] ?? '');
  return near === undefined ? undefined : longestPhrase(PLAIN, words.with(at, near), at, same);
}

/** What only plain speech calls so. */
export const spokenNameAt = (words: readonly string[], at: number): Found | undefined =>
  longestPhrase(NAMES, words, at, same);

/** A name of the trade that is written in none of the ways its table has. */
export function derivedNameAt(words: readonly string[], at: number): Found | undefined {
  const joined = JOINED.get((words[at] ?? '').replace(/[-.]/g, ''));
  return joined ? { value: joined, length: 1 } : longestPhrase(OTHER_NUMBER, words, at, same);
}
