import { coolerPositions } from '../../trade/sums/ports.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const coolerOrder = rule({
  code: 'cooler-order',
  severity: 'warning',
  title: 'A small cooler ahead of the large one, or on its own',
  why: 'The large cooler has the area to take out most of the heat; a small one trims the few degrees that are left. Ahead of the large one it soaks with heat and cools little; on its own it cannot keep up under load.',
  standing: 'common practice',
  good: 'ports\n  engine oil: filter -> main cooler -> small cooler -> gallery\n',
  bad: 'ports\n  engine oil: filter -> small cooler -> main cooler -> gallery\n',
  on: ['port'],
  check({ name, path }) {
    if (path.length === 0) return NO_PROBLEMS;
    const texts = path.map(({ text }) => text);
    const order = coolerPositions(texts);
    const [first, last] = [path[0], path.at(-1)];
    if (!order || !first || !last) return NO_PROBLEMS;
    const span = { from: first.span.from, to: last.span.to };
    const message =
      order === 'no main'
        ? `The ${name} has only a small cooler, which cannot keep up under load: it is meant to trim what a large one leaves (common practice, no source).`
        : `The ${name} goes through the small cooler first. Route it through the large one first (common practice, no source).`;
    return [{ span, message }];
  },
});
