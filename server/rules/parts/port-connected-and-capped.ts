import type { PortEntry } from '../../model/entry/entry.ts';
import { sameSection } from '../../model/state/ports.ts';
import type { Port } from '../../model/state/state.ts';
import { portState } from '../../trade/sums/ports.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const portConnectedAndCapped = rule({
  code: 'port-connected-and-capped',
  severity: 'warning',
  title: 'A port both connected and capped',
  why: 'A port has either a hose or a cap on it, never both: one of the two is wrong. In a later section "ports" the newer line holds.',
  standing: 'common practice',
  good: 'ports\n  manifold rear brake booster\n  manifold front capped\n',
  bad: 'ports\n  manifold rear brake booster, capped\n',
  outranks: ['port-doubled'],
  on: ['port'],
  check(entry, { before: { ports, portsHead } }) {
    const { name, on, onSpan, path } = entry;
    if (path.length > 0 || on === undefined) return NO_PROBLEMS;
    const now = portState(on);
    if (now.capped && now.thing !== '')
      return [
        {
          span: onSpan,
          message: `Port "${name}" is both capped and connected to "${now.thing}". Which is it?`,
        },
      ];
    const above = ports.get(name);
    if (!above || !sameSection(above.within, portsHead) || !contradicts(above, entry)) return NO_PROBLEMS;
    return [
      {
        span: onSpan,
        message: `Port "${name}" is "${above.on}" above and "${on}" here. Which is it?`,
        related: [{ origin: above.by, message: `Port "${name}" above` }],
      },
    ];
  },
});

function contradicts(above: Port, { on }: PortEntry): boolean {
  const [then, now] = [portState(above.on), portState(on ?? '')];
  if (then.thing === '' && !then.capped && !then.open) return false;
  return then.thing !== now.thing || then.capped !== now.capped || then.open !== now.open;
}
