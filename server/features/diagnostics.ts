/** Diagnostics: the findings as an editor lists them, at the severities the user chose, up to a limit. */
import type { Range } from '../../grammar/index.ts';
import type { LocatedFinding, Severity } from '../model/snapshot/finding.ts';
import { lineOf } from '../model/snapshot/locate.ts';
import { sessionsOf } from '../model/snapshot/section-ranges.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { ruleOf } from '../rules/check.ts';
import { onLine, wholeLines } from './ranges.ts';

export type Level = Severity | 'off';

export interface Diagnostic {
  /** Undefined for a message about the list itself. */
  readonly code: string | undefined;
  readonly severity: Severity;
  readonly range: Range;
  readonly message: string;
  readonly related: readonly { readonly range: Range; readonly message: string }[];
  /** The text in `range` has no effect. */
  readonly isUnnecessary: boolean;
  /** Undefined as `code` is. */
  readonly finding: LocatedFinding | undefined;
}

interface Choice {
  /** By code; a code that is not in it keeps the severity of its rule. */
  readonly levels: ReadonlyMap<string, Level>;
  readonly leaveOut: (finding: LocatedFinding) => boolean;
  /** The line that was changed last, from zero; undefined where that is not known. */
  readonly edited?: number | undefined;
}

/** More than this many in one notebook are of no use to anybody and slow to show. */
export const MOST_DIAGNOSTICS = 1000;
/** Lines above and below a changed one: about what a window shows. */
const NEAR = 50;
const SEVEREST_FIRST: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

/**
 * In the order of lines. Beyond `MOST_DIAGNOSTICS` those of the last session and around the line that was changed last come
 * first, then the most severe, of equal ones the newest; a last one says how many are left out.
 */
export function diagnosticsOf(
  snapshot: Snapshot,
  { levels, leaveOut, edited }: Choice,
): readonly Diagnostic[] {
  const chosen: LocatedFinding[] = [];
  for (const finding of snapshot.findings) {
    const severity = levels.get(finding.code) ?? finding.severity;
    if (severity === 'off' || leaveOut(finding)) continue;
    chosen.push(severity === finding.severity ? finding : { ...finding, severity });
  }
  const shown = chosen.length > MOST_DIAGNOSTICS ? foremost(snapshot, chosen, edited) : chosen;
  const listed = shown.map((finding) => diagnostic(snapshot, finding));
  return shown.length < chosen.length ? [...listed, leftOut(chosen.length - shown.length)] : listed;
}

/** As many as are shown, in the order of lines: by rank, and in one rank from the end of the notebook up. */
function foremost(
  snapshot: Snapshot,
  findings: readonly LocatedFinding[],
  edited: number | undefined,
): readonly LocatedFinding[] {
  const isAtHand = atHand(snapshot, edited);
  const ranks = findings.map(
    ({ at, severity }) => SEVEREST_FIRST.indexOf(severity) + (isAtHand(at) ? 0 : SEVEREST_FIRST.length),
  );
  const room = new Map<number, number>();
  let left = MOST_DIAGNOSTICS;
  for (let rank = 0; rank < 2 * SEVEREST_FIRST.length; rank++) {
    room.set(rank, left);
    left -= ranks.filter((each) => each === rank).length;
  }
  const shown: LocatedFinding[] = [];
  for (let i = findings.length - 1; i >= 0; i--) {
    const free = room.get(ranks[i] as number) ?? 0;
    room.set(ranks[i] as number, free - 1);
    if (free > 0) shown.push(findings[i] as LocatedFinding);
  }
  return shown.reverse();
}

/** Whether a line is one of the last session, or near the line that was changed last. */
function atHand(snapshot: Snapshot, edited: number | undefined): (line: number) => boolean {
  const last = sessionsOf(snapshot).at(-1);
  return (line) =>
    (last !== undefined && line >= last.from && line < last.to) ||
    (edited !== undefined && Math.abs(line - edited) <= NEAR);
}

function diagnostic(snapshot: Snapshot, finding: LocatedFinding): Diagnostic {
  const { code, severity, message, at, span } = finding;
  const related = finding.related.flatMap(({ origin, message }) => {
    const line = lineOf(snapshot, origin.ref);
    return line === undefined ? [] : [{ range: wholeLines(snapshot, line, line), message }];
  });
  const common = { code, severity, finding };
  const here = { range: onLine(at, span), message };
  const [other, ...others] = related;
  return other && ruleOf(code)?.isAboutRelated
    ? { ...common, ...other, related: [here, ...others], isUnnecessary: true }
    : { ...common, ...here, related, isUnnecessary: false };
}

function leftOut(count: number): Diagnostic {
  return {
    code: undefined,
    severity: 'information',
    range: onLine(0, { from: 0, to: 0 }),
    message: `${count} more findings are not shown: older sessions and less severe ones first. They appear as the ones above are fixed, and where you edit.`,
    related: [],
    isUnnecessary: false,
    finding: undefined,
  };
}
