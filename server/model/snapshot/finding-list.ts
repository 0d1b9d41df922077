/** Finding list of a notebook with line numbers; an edit reuses the entries of pages it leaves in place. */
import type { LocatedFinding } from './finding.ts';
import type { LineFinding, Page } from './page.ts';

export interface FindingList {
  readonly pages: readonly Page[];
  /** First line of each page, from zero; one more at the end for the number of lines. */
  readonly starts: readonly number[];
  /** In the order of lines. */
  readonly findings: readonly LocatedFinding[];
}

export const EMPTY_LIST: FindingList = { pages: [], starts: [0], findings: [] };

/** Finding list after an edit: only entries of new pages, and of pages that moved, are made again. */
export function findingListAfter(
  before: FindingList,
  { pages, starts }: Omit<FindingList, 'findings'>,
): readonly LocatedFinding[] {
  const above = sameAbove(before.pages, pages);
  const below = sameBelow(before.pages, pages, above);
  const end = pages.length - below;
  const endBefore = before.pages.length - below;
  if (above === end && above === endBefore) return before.findings;
  const moved = (starts[end] as number) - (before.starts[endBefore] as number);
  const kept = before.findings.slice(firstFrom(before.findings, before.starts[endBefore] as number));
  return before.findings
    .slice(0, firstFrom(before.findings, before.starts[above] as number))
    .concat(
      locatedIn(pages, starts, above, end),
      moved === 0 ? kept : kept.map((each) => findingAt(each, each.at + moved)),
    );
}

/** The first of findings that is at a line or below it. */
export function firstFrom(findings: readonly LocatedFinding[], line: number): number {
  let low = 0;
  let high = findings.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((findings[middle] as LocatedFinding).at < line) low = middle + 1;
    else high = middle;
  }
  return low;
}

function sameAbove(before: readonly Page[], after: readonly Page[]): number {
  const most = Math.min(before.length, after.length);
  let same = 0;
  while (same < most && before[same] === after[same]) same++;
  return same;
}

function sameBelow(before: readonly Page[], after: readonly Page[], above: number): number {
  const most = Math.min(before.length, after.length) - above;
  let same = 0;
  while (same < most && before[before.length - 1 - same] === after[after.length - 1 - same]) same++;
  return same;
}

function locatedIn(
  pages: readonly Page[],
  starts: readonly number[],
  from: number,
  to: number,
): LocatedFinding[] {
  const all: LocatedFinding[] = [];
  for (let i = from; i < to; i++)
    for (const finding of locatedOn(pages[i] as Page, starts[i] as number)) all.push(finding);
  return all;
}

/** The findings of a page that begins at the line `start`, from zero. */
export const locatedOn = ({ findings }: Page, start: number): readonly LocatedFinding[] =>
  findings.map((finding) => findingAt(finding, start + finding.line));

/** Copy field by field: a spread costs ten times as much, and there may be thousands. */
function findingAt(
  { code, severity, span, message, related, fixes }: Omit<LineFinding, 'line'>,
  at: number,
): LocatedFinding {
  return { code, severity, span, message, related, fixes, at };
}
