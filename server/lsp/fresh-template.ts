/** The template inserted last, until something is typed elsewhere: its empty stops are not faults yet. */
import { cutLines } from '../../grammar/index.ts';
import { isUnfilled, templateOf } from '../features/templates.ts';
import { lineText } from '../model/snapshot/locate.ts';
import type { Change, Snapshot } from '../model/snapshot/snapshot.ts';

export interface FreshTemplate {
  /** Its first line, from zero. */
  readonly from: number;
  /** The form of each of its lines; empty for one that was added since. */
  readonly forms: readonly string[];
}

/** The fresh template after `change`, which led to `snapshot`. */
export function freshAfter(
  snapshot: Snapshot,
  fresh: FreshTemplate | undefined,
  { range: { start, end }, text }: Change,
): FreshTemplate | undefined {
  const added = cutLines(text).length - 1;
  const forms = templateOf(added + 1, (line) => lineText(snapshot, start.line + line));
  if (forms) return { from: start.line, forms };
  return fresh && within(fresh, start.line, end.line, added);
}

/** Undefined where the change reaches past the template: the writer has gone on. */
function within(
  { from, forms }: FreshTemplate,
  first: number,
  last: number,
  added: number,
): FreshTemplate | undefined {
  const [start, end] = [first - from, last - from];
  if (start < 0 || end >= forms.length) return undefined;
  const more = end === forms.length - 1 ? 0 : added;
  const between = Array.from({ length: more }, () => '');
  return { from, forms: [...forms.slice(0, start + 1), ...between, ...forms.slice(end + 1)] };
}

/** True of a line of the template that still has a stop to be filled in. */
export function isFresh(
  { snapshot, fresh }: { readonly snapshot: Snapshot; readonly fresh?: FreshTemplate | undefined },
  line: number,
): boolean {
  const form = fresh?.forms[line - fresh.from];
  return form !== undefined && isUnfilled(form, lineText(snapshot, line));
}

/** True of a line of the template before its last stop: there Tab moves from stop to stop. */
export function isBetweenStops(fresh: FreshTemplate | undefined, line: number): boolean {
  const form = fresh?.forms[line - fresh.from];
  return form !== undefined && !form.includes('$0');
}
