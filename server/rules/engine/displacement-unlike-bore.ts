import { sweptByAll } from '../../analysis/engine/engine-facts.ts';
import { factOf, inWords } from '../../analysis/inputs.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

const ABOUT: ReadonlySet<string> = new Set(['displacement', 'bore', 'stroke', 'cylinders']);

/** The largest share by which makers round a printed displacement. No source. */
const SHARE = 0.03;

export const displacementUnlikeBore = rule({
  code: 'displacement-unlike-bore',
  severity: 'information',
  title: 'Displacement does not match bore and stroke',
  why: 'Displacement is the volume all pistons sweep. Where it differs from bore, stroke and cylinders by more than rounding, one of them is wrong: an overbore not written down, or a typing error.',
  standing: 'published',
  source: 'geometry of the cylinder',
  good: 'engine\n  cylinders 4\n  bore 86 mm\n  stroke 94 mm\n  displacement 2.2 L\n',
  bad: 'engine\n  cylinders 4\n  bore 86 mm\n  stroke 94 mm\n  displacement 2.4 L\n',
  on: ['fact'],
  about: ({ name }) => ABOUT.has(name),
  check({ line }, { after }) {
    const written = factOf(after, 'displacement', 'cc');
    const worked = written && sweptByAll(after);
    if (!written || !worked) return NO_PROBLEMS;
    const apart = Math.max(worked.value.low - written.value.high, written.value.low - worked.value.high);
    if (!(apart > SHARE * worked.value.low)) return NO_PROBLEMS;
    return [
      {
        span: lineSpan(line),
        message: `Bore, stroke and cylinders give ${inWords(worked.value, 'cc', 1)}, but ${written.input.value} is written, more than ${100 * SHARE} % apart. Which of them is wrong?`,
        related: [{ origin: written.by, message: 'Displacement as written' }],
      },
    ];
  },
});
