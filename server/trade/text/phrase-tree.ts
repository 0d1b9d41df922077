/** Phrases of one or more words, found word by word: every line of a notebook is looked up here, so it must be quick. */

interface PhraseTree<T> {
  /** What the words up to here mean, if they are a phrase. */
  readonly value: T | undefined;
  readonly next: ReadonlyMap<string, PhraseTree<T>>;
}

/** A tree of phrases whose words are separated by one space; of two equal ones the later holds. */
export function phraseTree<T>(phrases: Iterable<readonly [string, T]>): PhraseTree<T> {
  const root = branch<T>();
  for (const [phrase, value] of phrases) {
    let at = root;
    for (const word of phrase.split(' ')) {
      const next = at.next.get(word) ?? branch<T>();
      at.next.set(word, next);
      at = next;
    }
    at.value = value;
  }
  return root;
}

/**
 * The longest phrase that begins at word `from`, each word first put into the tree's spelling by `normal`; a word may
 * hold several joined by hyphens or spaces. `accept` may turn down a phrase that ends before word `end`.
 */
export function longestPhrase<T>(
  tree: PhraseTree<T>,
  words: readonly string[],
  from: number,
  normal: (word: string) => string,
  accept: (end: number) => boolean = () => true,
): { readonly value: T; readonly length: number } | undefined {
  let found: { value: T; length: number } | undefined;
  let at: PhraseTree<T> | undefined = tree;
  for (let i = from; i < words.length; i++) {
    at = step(at, normal(words[i] ?? ''));
    if (!at) break;
    if (at.value !== undefined && accept(i + 1)) found = { value: at.value, length: i + 1 - from };
  }
  return found;
}

interface Branch<T> {
  value: T | undefined;
  readonly next: Map<string, Branch<T>>;
}

function branch<T>(): Branch<T> {
  return { value: undefined, next: new Map() };
}

/** `all in` comes as one word from a line, and so does what hyphens join. */
const SEVERAL = /[-\s]+/;

function step<T>(tree: PhraseTree<T>, word: string): PhraseTree<T> | undefined {
  const next = tree.next.get(word);
  if (next || !SEVERAL.test(word)) return next;
  let at: PhraseTree<T> | undefined = tree;
  for (const part of word.split(SEVERAL)) at = at?.next.get(part);
  return at;
}
