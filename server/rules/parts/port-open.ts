import { isVacuumPort, portState } from '../../trade/sums/ports.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const portOpen = rule({
  code: 'port-open',
  severity: 'warning',
  title: 'An open port behind the throttle',
  why: 'Air drawn in through an open manifold port bypasses the carburettor: the mixture goes lean and the idle rises or hunts. Connect the port or cap it.',
  standing: 'common practice',
  good: 'ports\n  manifold rear capped\n',
  bad: 'ports\n  manifold rear open\n',
  on: ['port'],
  check({ name, on, onSpan, path }) {
    const { open, thing } = portState(on ?? '');
    if (!open || thing !== '' || path.length > 0 || !isVacuumPort(name)) return NO_PROBLEMS;
    return [
      {
        span: onSpan,
        message: `Port "${name}" is open, which is a vacuum leak. Connect it or cap it (common practice, no source).`,
      },
    ];
  },
});
