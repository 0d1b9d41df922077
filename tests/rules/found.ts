/** What the tests of the rules ask: the findings of a notebook, held to marks in its text, and the text once mended. */
import { expect, test } from 'vitest';
import { comparePositions, cutLines, type Range } from '../../grammar/index.ts';
import type { Finding, LocatedFinding } from '../../server/model/snapshot/finding.ts';
import type { Shared } from '../../server/model/snapshot/look-up.ts';
import { stateGiven } from '../../server/model/snapshot/used-notebooks.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { fixture } from '../harness/fixture.ts';

/** A notebook with what is to be found between `«` and `»`, words the message has, and the text after the fixes. */
export type Row = readonly [marked: string, says?: string, mended?: string];

/** One test a row: the rule finds what is marked and nothing else. Lines of one row are told apart by ` | `. */
export function rows(code: string, table: readonly Row[], above = 'session 2026-05-02'): void {
  test.each(table)(`${code}: %s`, (marked, says, after) => {
    const { text, ranges } = fixture([above, ...linesOf(marked as string)].join('\n'));
    const findings = found(text).filter((finding) => finding.code === code);
    expect(findings.map(rangeOf)).toEqual([...ranges].sort((a, b) => comparePositions(a.start, b.start)));
    if (says) expect(findings.map((finding) => finding.message).join('\n')).toContain(says);
    if (after) expect(mended(text, code)).toBe([above, ...linesOf(after)].join('\n'));
    else expect(findings.flatMap((finding) => finding.fixes)).toEqual([]);
  });
}

const linesOf = (marked: string): readonly string[] => marked.split(' | ');

export const found = (text: string): readonly LocatedFinding[] => openNotebook(text, shelf).findings;

/** What lies around the notebooks of these tests: one page of limits, `use-cycle.tappet`, which is the one under test; lost files. */
const shelf: Shared = (path, of) => {
  if (of === 'file') return path.includes('lost') ? { problem: 'missing' } : undefined;
  if (path === 'shop-limits.tappet') return stateGiven(openNotebook('limits\n  total <= 34 deg\n'));
  if (path === 'use-cycle.tappet') return { problem: 'cycle' };
  return { problem: path.startsWith('/') ? 'outside' : 'missing' };
};

/** The text after the first fix of every finding, or of those of one rule. */
export function mended(text: string, code?: string): string {
  const lines = cutLines(text);
  for (const { at, fixes, ...finding } of found(text).toReversed()) {
    if (code === undefined || finding.code === code) lines[at] = edited(lines[at] as string, fixes[0]);
  }
  return lines.join('');
}

function edited(line: string, fix: Finding['fixes'][number] | undefined): string {
  const edits = [...(fix?.edits ?? [])].sort((a, b) => b.span.from - a.span.from);
  return edits.reduce(
    (text, { span, text: put }) => text.slice(0, span.from) + put + text.slice(span.to),
    line,
  );
}

const rangeOf = ({ at, span }: LocatedFinding): Range => ({
  start: { line: at, character: span.from },
  end: { line: at, character: span.to },
});
