/** What the checks found, as an editor lists it: at the severity the reader chose, and never more than a list can hold. */
import type { Range } from '../../grammar/index.ts';
import type { LocatedFinding, Severity } from '../model/findings.ts';
import { lineOf } from '../model/locate.ts';
import type { Snapshot } from '../model/snapshot.ts';
import { ruleOf } from '../rules/index.ts';
import { onLine, wholeLines } from './ranges.ts';

export type Level = Severity | 'off';

export interface Diagnostic {
  /** Undefined for what is said about the list itself. */
  readonly code: string | undefined;
  readonly severity: Severity;
  readonly range: Range;
  readonly message: string;
  readonly related: readonly { readonly range: Range; readonly message: string }[];
  /** What stands in `range` has no effect. */
  readonly isUnnecessary: boolean;
  /** Undefined as `code` is. */
  readonly finding: LocatedFinding | undefined;
}

interface Choice {
  /** By code; a code that is not in it keeps the severity of its rule. */
  readonly levels: ReadonlyMap<string, Level>;
  readonly leaveOut: (finding: LocatedFinding) => boolean;
}

/** More than this many in one notebook are of no use to anybody and slow to show. */
export const MOST_DIAGNOSTICS = 1000;
const SEVEREST_FIRST: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

/** In the order of lines. Beyond `MOST_DIAGNOSTICS` the least severe are left out, and a last one says how many. */
export function diagnosticsOf(snapshot: Snapshot, { levels, leaveOut }: Choice): readonly Diagnostic[] {
  const chosen: LocatedFinding[] = [];
  for (const finding of snapshot.findings) {
    const severity = levels.get(finding.code) ?? finding.severity;
    if (severity === 'off' || leaveOut(finding)) continue;
    chosen.push(severity === finding.severity ? finding : { ...finding, severity });
  }
  const shown = mostSevere(chosen);
  const told = shown.map((finding) => diagnostic(snapshot, finding));
  return shown.length < chosen.length ? [...told, leftOut(chosen.length - shown.length)] : told;
}

function mostSevere(findings: readonly LocatedFinding[]): readonly LocatedFinding[] {
  if (findings.length <= MOST_DIAGNOSTICS) return findings;
  const room = new Map<Severity, number>();
  let left = MOST_DIAGNOSTICS;
  for (const severity of SEVEREST_FIRST) {
    room.set(severity, left);
    left -= findings.filter((finding) => finding.severity === severity).length;
  }
  return findings.filter(({ severity }) => {
    const free = room.get(severity) ?? 0;
    room.set(severity, free - 1);
    return free > 0;
  });
}

function diagnostic(snapshot: Snapshot, finding: LocatedFinding): Diagnostic {
  const { code, severity, message, at, span } = finding;
  const related = finding.related.flatMap(({ origin, message }) => {
    const line = lineOf(snapshot, origin.ref);
    return line === undefined ? [] : [{ range: wholeLines(snapshot, line, line), message }];
  });
  const told = { code, severity, finding };
  const here = { range: onLine(at, span), message };
  const [other, ...others] = related;
  return other && ruleOf(code)?.isAboutRelated
    ? { ...told, ...other, related: [here, ...others], isUnnecessary: true }
    : { ...told, ...here, related, isUnnecessary: false };
}

function leftOut(count: number): Diagnostic {
  return {
    code: undefined,
    severity: 'information',
    range: onLine(0, { from: 0, to: 0 }),
    message: `${count} more findings are left out here, the least severe ones. They show as those above are mended.`,
    related: [],
    isUnnecessary: false,
    finding: undefined,
  };
}
