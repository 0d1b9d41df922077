import { keyOf } from '../model/carry.ts';
import { formatValue } from '../trade/format.ts';
import { standingFor } from './in-force.ts';
import { limitIn, pastLimit } from './limits.ts';
import { rule } from './rule.ts';

export const limitPassedAlready = rule({
  code: 'limit-passed-already',
  severity: 'warning',
  title: 'A limit that is passed already as it is written',
  why: 'A limit holds from its line on, for what is set and read later. What is in force already is held to it once, here, or it would stay past the limit unseen until somebody sets it again.',
  standing: 'notation',
  good: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm\n  initial 10 deg\nlimits\n  total <= 34 deg\n',
  bad: 'session 2026-05-02\n  mechanical 0 deg @ 900 rpm, 22 deg @ 3200 rpm\n  initial 14 deg\nlimits\n  total <= 34 deg\n',
  on: ['limit'],
  check: (entry, { before, after }) =>
    entry.said.flatMap((said) => {
      const limit = after.limits.get(keyOf(entry.quantity.name, said.place?.text));
      const passed = standingFor(entry, said, before).flatMap((standing) => {
        const allowed = limit && limitIn(limit, standing.unit);
        const past = allowed && pastLimit(standing.value, allowed);
        return past ? [{ ...standing, past }] : [];
      });
      return passed.slice(0, 1).map(({ name, value, unit, past, working, related }) => ({
        span: said.span,
        message: `${name} is ${formatValue(value, unit)} already, ${past} this limit${working}.`,
        related,
      }));
    }),
});
