/** The comment `; meant: CODE`, by which a line says that it is right as it is. */
import { type Line, type Span, tokenSpan, tokenText } from '../../grammar/index.ts';

export interface Meant {
  readonly code: string;
  readonly span: Span;
}

/** The codes in `; meant: outside-band, ten-times ; a remark`: rules whose findings on this line are silenced. */
export function meantIn(line: Line): readonly Meant[] {
  if (line.comment === undefined) return NOTHING_MEANT;
  const comment = tokenText(line, line.comment);
  const head = /^;\s*meant:/i.exec(comment)?.[0];
  if (head === undefined) return NOTHING_MEANT;
  const from = tokenSpan(line, line.comment).from + head.length;
  const [codes = ''] = comment.slice(head.length).split(';');
  return [...codes.matchAll(/[^\s,]+/g)].map(({ 0: text, index }) => ({
    code: text.toLowerCase(),
    span: { from: from + index, to: from + index + text.length },
  }));
}

const NOTHING_MEANT: readonly Meant[] = [];
