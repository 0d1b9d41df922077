/** Action that silences a finding on its line with a comment: `; meant: CODE`. */
import { parseLine, tokenSpan } from '../../../grammar/index.ts';
import type { LocatedFinding } from '../../model/snapshot/finding.ts';
import { parsedLine } from '../../model/snapshot/locate.ts';
import type { Snapshot } from '../../model/snapshot/snapshot.ts';
import { meantIn } from '../../rules/silencing.ts';
import type { Diagnostic } from '../diagnostics.ts';
import { onLine } from '../ranges.ts';
import type { CodeAction } from './action.ts';

/** Undefined where the line can hold no comment, as a note, or where none would help. */
export function silenced(
  snapshot: Snapshot,
  { code, at }: LocatedFinding,
  found: readonly Diagnostic[],
): CodeAction | undefined {
  const { text } = parsedLine(snapshot, at);
  const { from, to, put } = withCode(text, code);
  const after = parseLine(text.slice(0, from) + put + text.slice(to));
  const codes = meantIn(after).map((each) => each.code);
  const isHere = found.every(({ range }) => range.start.line === at);
  if (code === OWN_CODE || !codes.includes(code)) return undefined;
  return {
    title: `Silence "${code}" on ${isHere ? 'this line' : `line ${at + 1}`}: it is meant`,
    kind: 'quickfix',
    edits: [{ range: onLine(at, { from, to }), text: put }],
    found,
    isSure: false,
  };
}

/** The rule on these comments; a comment does not silence it. */
const OWN_CODE = 'meant-unknown';

/** Behind the codes that are there, before another comment, or at the end of the line. */
function withCode(
  text: string,
  code: string,
): { readonly from: number; readonly to: number; readonly put: string } {
  const line = parseLine(text);
  const last = meantIn(line).at(-1);
  if (last) return { from: last.span.to, to: last.span.to, put: `, ${code}` };
  if (line.comment !== undefined) {
    const { from } = tokenSpan(line, line.comment);
    return { from, to: from, put: `; meant: ${code} ` };
  }
  const from = text.trimEnd().length;
  return { from, to: text.length, put: `  ; meant: ${code}` };
}
