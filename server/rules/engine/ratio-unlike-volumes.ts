import { ratioFromVolumes } from '../../analysis/engine/engine-facts.ts';
import { factOf, inWords } from '../../analysis/inputs.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

const ABOUT: ReadonlySet<string> = new Set([
  'compression',
  'bore',
  'stroke',
  'chamber volume',
  'piston volume',
  'deck clearance',
  'gasket thickness',
  'gasket bore',
]);

/** Largest accepted difference between the written ratio and that of the volumes, which are measured to a cc or two. */
const APART = 0.3;

export const ratioUnlikeVolumes = rule({
  code: 'ratio-unlike-volumes',
  severity: 'information',
  title: 'Compression ratio does not match the volumes',
  why: 'The ratio follows from bore, stroke and the volume left above the piston. Where the written one differs, one of the sizes is wrong, or the ratio is the maker’s for other parts.',
  standing: 'published',
  source: 'follows from the volumes',
  good: 'engine\n  bore 86 mm\n  stroke 94 mm\n  chamber volume 58 cc\n  piston volume 4 cc\n  deck clearance 0.5 mm\n  gasket thickness 1.2 mm\n  compression 8.6:1\n',
  bad: 'engine\n  bore 86 mm\n  stroke 94 mm\n  chamber volume 58 cc\n  piston volume 4 cc\n  deck clearance 0.5 mm\n  gasket thickness 1.2 mm\n  compression 9.8:1\n',
  on: ['fact'],
  about: ({ name }) => ABOUT.has(name),
  check({ line }, { after }) {
    const written = factOf(after, 'compression', 'ratio');
    const worked = written && ratioFromVolumes(after);
    if (!written || !worked) return NO_PROBLEMS;
    const apart = Math.max(worked.value.low - written.value.high, written.value.low - worked.value.high);
    if (apart <= APART) return NO_PROBLEMS;
    return [
      {
        span: lineSpan(line),
        message: `The volumes give ${inWords(worked.value, 'ratio', 0.01)}, but ${written.input.value} is written, more than ${APART} apart. Which of the sizes is wrong?`,
        related: [{ origin: written.by, message: 'Ratio as written' }],
      },
    ];
  },
});
