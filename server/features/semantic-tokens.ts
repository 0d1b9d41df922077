/** What each word of a notebook is, for editors that colour by meaning: only the server knows the notebook's own words. */
import type { Span } from '../../grammar/index.ts';
import { lineCount } from '../model/snapshot/locate.ts';
import { keptByPage } from '../model/snapshot/per-page.ts';
import { pageAt, type Snapshot } from '../model/snapshot/snapshot.ts';
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

/** Of one page; lines of the page, from zero. Kept as long as the page is. */
export const tokensOn = keptByPage((readings): readonly SemanticToken[] =>
  readings.flatMap(({ entry }, line) => meaningsOf(entry).map((token) => ({ ...token, line }))),
);
