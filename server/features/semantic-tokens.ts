/** What each word of a notebook is, for editors that colour by meaning: only the notebook tells its own words. */
import type { Span } from '../../grammar/index.ts';
import { lineCount, pageReadings } from '../model/locate.ts';
import type { Page } from '../model/page.ts';
import { pageAt, type Snapshot } from '../model/snapshot.ts';
import { type Meaning, meaningsOf } from './semantic/meanings.ts';

export { MEANINGS, type Meaning } from './semantic/meanings.ts';

export interface SemanticToken {
  /** From zero. */
  readonly line: number;
  readonly span: Span;
  readonly meaning: Meaning;
}

/** The tokens from one line to before another, in order; none overlap. */
export function* semanticTokens(
  snapshot: Snapshot,
  from = 0,
  to = lineCount(snapshot),
): Generator<SemanticToken> {
  if (from >= to) return;
  for (let index = pageAt(snapshot, from); index < snapshot.pages.length; index++) {
    const start = snapshot.starts[index] as number;
    if (start >= to) return;
    for (const { line, ...token } of tokensOn(snapshot, index)) {
      if (start + line >= from && start + line < to) yield { ...token, line: start + line };
    }
  }
}

const known = new WeakMap<Page, readonly SemanticToken[]>();

/** Kept with the page, with lines of the page: an editor asks again after every keystroke, and all pages but one are as they were. */
function tokensOn(snapshot: Snapshot, index: number): readonly SemanticToken[] {
  const page = snapshot.pages[index] as Page;
  let tokens = known.get(page);
  if (!tokens) {
    tokens = pageReadings(snapshot, index).flatMap(({ entry }, line) =>
      meaningsOf(entry).map((token) => ({ ...token, line })),
    );
    known.set(page, tokens);
  }
  return tokens;
}
