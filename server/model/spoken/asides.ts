/** Words behind a number that say where, when or how it was read, though some of them mean something else by themselves. */
import { longestPhrase, phraseTree } from '../../trade/text/phrase-tree.ts';
import { ASIDES } from './slang.ts';

const PHRASES = phraseTree(ASIDES.map((phrase) => [phrase, true] as const));
const same = (word: string): string => word;

/** How many words from here say where, when or how the number before them was read. */
export const asideAt = (words: readonly string[], at: number): number =>
  longestPhrase(PHRASES, words, at, same)?.length ?? 0;
