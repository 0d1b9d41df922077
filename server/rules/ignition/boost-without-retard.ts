import { timingOf } from '../../analysis/ignition/timing-settings.ts';
import { ofName } from '../../model/state/immutable.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const boostWithoutRetard = rule({
  code: 'boost-without-retard',
  severity: 'information',
  title: 'Boost with no timing taken out',
  why: 'A blown engine burns faster and knocks sooner. Usually about 1 deg comes out of the total for each psi, more to begin with. Knock under boost breaks pistons; the maker’s figure overrules.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  initial 9 deg\n  mechanical 0 deg @ 900 rpm, 20 deg @ 3200 rpm\n  boost retard 1 deg/psi\n  boost 6 psi\n',
  bad: 'session 2026-05-02\n  initial 9 deg\n  mechanical 0 deg @ 900 rpm, 20 deg @ 3200 rpm\n  boost 6 psi\n',
  on: ['reading'],
  about: ({ name }) => name === 'boost',
  check({ line }, { before }) {
    if (before.settings.has('boost retard|')) return NO_PROBLEMS;
    const { initial, mechanical } = timingOf(before);
    const reported =
      ofName(before.readings, 'boost', 1).length > 0 ||
      [...before.recentReadings.keys()].some((key) => key.startsWith('boost|'));
    if (!initial || !mechanical || reported) return NO_PROBLEMS;
    return [
      {
        span: lineSpan(line),
        message:
          'Boost without a "boost retard": usual is about 1 deg of retard for each psi, more to begin with. Write one, and the total under boost is worked out (common practice, no source).',
      },
    ];
  },
});
