/** Used notebooks: what a `use` line gets, wherever the texts are stored. */
import { cutLines, parseLine, tokenText, withoutBreak } from '../../../grammar/index.ts';
import { once } from '../../memo.ts';
import type { Origin } from '../entry/entry.ts';
import { isOpenAfter, markOf } from '../entry/merge-conflict.ts';
import type { Absent, LookUpResult } from '../state/lookup.ts';
import { EMPTY_STATE, type State } from '../state/state.ts';
import type { Shared } from './look-up.ts';
import type { Page } from './page.ts';
import type { Snapshot } from './snapshot.ts';

/** What is known of the notebooks, by a name that each has once. */
export interface NotebookTexts {
  /** The name of the notebook that another one writes as `path`; undefined outside the folders that may be read. */
  readonly resolve: (notebook: string, path: string) => string | undefined;
  /** Whether a notebook that one uses is that one, or leads back to it. */
  readonly isCircle: (notebook: string, used: string) => boolean;
  /** Undefined where nobody has looked yet. */
  readonly stateOf: (notebook: string) => LookUpResult;
  /** That a file is not there; undefined where it is, or nobody has looked yet. */
  readonly missing: (file: string) => Absent | undefined;
}

/** Nothing that people share is this long, bytes. */
export const LARGEST_USED = 2 * 1024 * 1024;

const OUTSIDE: Absent = { problem: 'outside' };
const CYCLE: Absent = { problem: 'cycle' };

/**
 * What a notebook's `use` lines get, and what is known of the files it names: of those outside the folders nothing.
 * Every `use` along a cycle is reported as one, so that none waits for another.
 */
export const sharedFor =
  (notebook: string, known: NotebookTexts): Shared =>
  (path, of) => {
    const used = known.resolve(notebook, path);
    if (of === 'file') return used === undefined ? undefined : known.missing(used);
    if (used === undefined) return OUTSIDE;
    return known.isCircle(notebook, used) ? CYCLE : known.stateOf(used);
  };

const NOWHERE: Origin = { ref: { page: 0, line: 0 }, date: undefined };

/** What a notebook gives to those that use it; the same for two texts that differ in nothing they take. */
export const stateGiven = once(({ pages }: Snapshot): State => givenOf(pages.at(-1)?.after ?? EMPTY_STATE));

/** What a notebook gives to others, taken from the state at its end. */
export const givenOf = ({ specs, limits, words }: State): State => ({
  ...EMPTY_STATE,
  specs: saidNowhere(specs),
  limits: saidNowhere(limits),
  words,
});

const saidNowhere = <T extends { readonly by: Origin }>(
  map: ReadonlyMap<string, T>,
): ReadonlyMap<string, T> => new Map([...map].map(([key, value]) => [key, { ...value, by: NOWHERE }]));

/** The paths of the photos and logs that the checks of a notebook asked for, each once. Asked at every keystroke. */
export function filesAskedBy({ pages, asking }: Snapshot): readonly string[] {
  if (asking === 0) return NO_PATHS;
  const paths = pages.flatMap(({ asked }) =>
    asked.flatMap(({ question }) => (question.of === 'file' ? [question.path] : NO_PATHS)),
  );
  return [...new Set(paths)];
}

const NO_PATHS: readonly string[] = [];

/** The paths of a notebook's `use` lines, each once, as written. Asked at every keystroke, of every open notebook. */
export const usesOf = once(({ pages }: Snapshot): readonly string[] => [
  ...new Set(pages.flatMap((page) => usesOnPage(page))),
]);

const usesOnPage = once(({ text, before }: Page): readonly string[] => usesIn(text, before.inConflict));

/** As `usesOf`, of a text that is not open. `isOpen`: a merge is, where it begins. */
export function usesIn(text: string, isOpen = false): readonly string[] {
  if (!/\buse\b/i.test(text)) return [];
  let inConflict = isOpen;
  return cutLines(text).flatMap((raw) => {
    const line = parseLine(withoutBreak(raw));
    const { syntax } = line;
    inConflict = isOpenAfter(inConflict, markOf(line));
    if (inConflict || syntax.kind !== 'file' || syntax.path === undefined) return [];
    if (tokenText(line, syntax.word).toLowerCase() !== 'use') return [];
    return [tokenText(line, syntax.path).replace(/^"(.*)"$/, '$1')];
  });
}
