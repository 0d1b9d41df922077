import { valueText } from '../../model/entry/as-written.ts';
import type { Entry } from '../../model/entry/entry.ts';
import { rechecksFallenDue } from '../../model/state/rechecks.ts';
import type { Recheck } from '../../model/state/state.ts';
import { ofDay } from '../lib/limit-text.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { type Problem, rule } from '../rule.ts';

export const recheckDue = rule({
  code: 'recheck-due',
  severity: 'information',
  title: 'A reminder that is due',
  why: 'By the odometer, hours, dates and heat cycles in this notebook. Reported where it falls due, and above each session from there until "check NAME ok" or "done NAME", or until the thing to be rechecked is set or read again. A heat cycle is a session in which the engine got warm.',
  standing: 'notation',
  good: 'session 2026-05-02\n  odometer 100 mi\n  recheck head bolts after 200 mi\nsession 2026-05-09\n  odometer 250 mi\n',
  bad: 'session 2026-05-02\n  odometer 100 mi\n  recheck head bolts after 200 mi\nsession 2026-05-09\n  odometer 320 mi\n',
  on: ['session', 'section', 'reading'],
  check(entry, { before, after }) {
    return rechecksFallenDue(before, after).map(([name, recheck]) => due(entry, name, recheck));
  },
});

const due = ({ line }: Entry, name: string, { after, by }: Recheck): Problem => ({
  span: lineSpan(line),
  message: `Recheck of ${name} is due: ${valueText(after, undefined)} since the reminder${ofDay(by)}. Once done, write "check ${name} ok".`,
  related: [{ origin: by, message: 'Reminder' }],
});
