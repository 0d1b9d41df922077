import { alsoOn, thingOn } from '../../model/state/ports.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const portDoubled = rule({
  code: 'port-doubled',
  severity: 'warning',
  title: 'The same thing on two ports',
  why: 'One thing cannot be on two ports, so one of the two lines is wrong. If there are two of a kind, give them two names. In a later section "ports" it is taken as moved.',
  standing: 'common practice',
  good: 'ports\n  manifold rear brake booster\n  manifold front boost gauge\n',
  bad: 'ports\n  manifold rear brake booster\n  manifold front brake booster\n',
  on: ['port'],
  check({ name, on, onSpan, path }, { before }) {
    const thing = thingOn(on ?? '');
    if (thing === '' || path.length > 0) return NO_PROBLEMS;
    const [otherName] = alsoOn(before, thing, name);
    const by = otherName === undefined ? undefined : before.ports.get(otherName)?.by;
    if (!by) return NO_PROBLEMS;
    return [
      {
        span: onSpan,
        message: `"${thing}" is already on port "${otherName}". It cannot be on two ports.`,
        related: [{ origin: by, message: `Port "${otherName}"` }],
      },
    ];
  },
});
