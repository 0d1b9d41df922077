import type { Span } from '../../../grammar/index.ts';
import { limitIn, pastLimit } from '../../analysis/limits/limits.ts';
import { valuesInForceFor } from '../../analysis/limits/values-in-force.ts';
import type { FileEntry, QuantityEntry } from '../../model/entry/entry.ts';
import type { Context } from '../../model/snapshot/finding.ts';
import { type Declared, keyOf } from '../../model/state/state.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { boundText } from '../lib/limit-text.ts';
import { type Problem, problemsIn, rule } from '../rule.ts';

export const limitPassedAlready = rule({
  code: 'limit-passed-already',
  severity: 'warning',
  title: 'A limit already passed when it is written',
  why: 'A limit holds from its line on, for what is set and read later. What is already in force is checked once, here; otherwise it would stay past the limit unnoticed until somebody sets it again.',
  standing: 'notation',
  good: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm\n  initial 10 deg\nlimits\n  total <= 34 deg\n',
  bad: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm\n  initial 14 deg\nlimits\n  total <= 34 deg\n',
  on: ['limit', 'file'],
  check: (entry, context) =>
    problemsIn(statedBy(entry, context), ({ limit, span }) => problemsOf(limit, span, context)),
});

interface Written {
  readonly limit: Declared;
  readonly span: Span;
}

/** The limits a line states, or takes from another notebook. */
function statedBy(entry: QuantityEntry | FileEntry, { before, after }: Context): readonly Written[] {
  if (entry.kind === 'file') {
    if (before.limits === after.limits) return NOTHING;
    const brought = [...after.limits].filter(([key, limit]) => before.limits.get(key) !== limit);
    return brought.map(([, limit]) => ({ limit, span: entry.pathSpan }));
  }
  return entry.statements.flatMap(({ place, span }) => {
    const limit = after.limits.get(keyOf(entry.quantity.name, place?.text));
    return limit ? [{ limit, span }] : [];
  });
}

const NOTHING: readonly Written[] = [];

function problemsOf(limit: Declared, span: Span, { before }: Context): readonly Problem[] {
  const passed = valuesInForceFor(limit, before).flatMap((standing) => {
    const allowed = limitIn(limit, standing.unit);
    const past = allowed && pastLimit(standing.value, allowed);
    return past ? [{ ...standing, past, allowed }] : [];
  });
  return passed.slice(0, 1).map(({ name, value, unit, past, allowed, working, related }) => ({
    span,
    message: `${name} is already ${formatValue(value, unit)}, ${past} this limit of ${boundText(allowed, unit)}${working}.`,
    related,
  }));
}
