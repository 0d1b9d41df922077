import { coolerOrder } from '../trade/ports.ts';
import { NO_PROBLEMS, rule } from './rule.ts';

export const coolerOrderRule = rule({
  code: 'cooler-order',
  severity: 'warning',
  title: 'An auxiliary cooler before the main one, or in its place',
  why: 'A small auxiliary cooler takes off what the main one has left over. Before the main one it works on the hottest fluid with the least area; in its place it is too small.',
  standing: 'common practice',
  good: 'ports\n  gearbox oil: gearbox -> radiator cooler -> auxiliary cooler -> gearbox\n',
  bad: 'ports\n  gearbox oil: gearbox -> auxiliary cooler -> radiator cooler -> gearbox\n',
  on: ['port'],
  check({ name, path }) {
    if (path.length === 0) return NO_PROBLEMS;
    const texts = path.map(({ text }) => text);
    const order = coolerOrder(texts);
    const [first, last] = [path[0], path.at(-1)];
    if (!order || !first || !last) return NO_PROBLEMS;
    const span = { from: first.span.from, to: last.span.to };
    const message =
      order === 'no main'
        ? `The ${name} passes an auxiliary cooler and no main one: the small one goes after the main one, not in its place.`
        : `The ${name} passes the auxiliary cooler before the main one: the small one goes after it.`;
    return [{ span, message }];
  },
});
