import { lastKeys } from '../../model/state/immutable.ts';
import type { OpenItem } from '../../model/state/state.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { isRoadRun } from '../lib/road-run.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const roadRunOpenFault = rule({
  code: 'road-run-open-fault',
  severity: 'warning',
  title: 'A road run with a safety fault open',
  why: 'A fault marked [safety] should be fixed before the next run. The tool only knows what the notebook says: the vehicle, local law and a licensed mechanic overrule it.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  fault steering: binds hard over [safety]\n  done steering: cable greased\n  speed 30 mph\n',
  bad: 'session 2026-05-02\n  fault steering: binds hard over [safety]\n  speed 30 mph\n',
  on: ['reading'],
  check(entry, { before }) {
    const { safetyItems } = before;
    if (safetyItems.size === 0 || !isRoadRun(entry)) return NO_PROBLEMS;
    const open = lastKeys(safetyItems, MOST_NAMED).map(
      (id) => [id, safetyItems.get(id) as OpenItem] as const,
    );
    const named = open.map(([id, { by }]) => (by.date ? `${id} (${by.date})` : id)).join(', ');
    const more = safetyItems.size > open.length ? ` and ${safetyItems.size - open.length} more` : '';
    return [
      {
        span: lineSpan(entry.line),
        message: `Open safety fault: ${named}${more}. Fix it and write "done ${open[0]?.[0]}" before driving.`,
        related: open.map(([id, { text, by }]) => ({ origin: by, message: `${id}: ${text}` })),
      },
    ];
  },
});

/** The last of them; the rest are counted. */
const MOST_NAMED = 20;
