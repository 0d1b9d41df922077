import { factOf, inWords } from '../../analysis/inputs.ts';
import { monotoneEach } from '../../trade/measure/interval.ts';
import { meanPistonSpeed } from '../../trade/sums/compression.ts';
import { valueIn } from '../lib/statement-values.ts';
import { NO_PROBLEMS, problemsIn, rule } from '../rule.ts';

const ABOUT: ReadonlySet<string> = new Set(['red line', 'rev limit', 'engine speed']);

/** m/s, highest usual mean piston speed of road engines (about 4000 ft/min). Common practice, no source. */
const MOST = 20;

export const pistonSpeedHigh = rule({
  code: 'piston-speed-high',
  severity: 'information',
  title: 'Piston speed above the usual for road engines',
  why: 'Stress on rods and pistons rises with the square of piston speed. Past about 20 m/s (4000 ft/min) mean it takes parts made for it.',
  standing: 'common practice',
  good: 'engine\n  stroke 94 mm\n  red line 5500 rpm\n',
  bad: 'engine\n  stroke 94 mm\n  red line 7000 rpm\n',
  on: ['fact', 'setting', 'reading'],
  about: ({ name }) => ABOUT.has(name),
  check({ quantity, statements: said }, { after }) {
    const stroke = factOf(after, 'stroke', 'm');
    if (!stroke) return NO_PROBLEMS;
    return problemsIn(said, (each) => {
      const rpm = valueIn(each, 'rpm', quantity);
      const speed = rpm && monotoneEach([stroke.value, rpm] as const, meanPistonSpeed);
      if (!rpm || !speed || speed.low <= MOST) return [];
      return [
        {
          span: each.span,
          message: `Mean piston speed is ${inWords(speed, 'm/s', 0.1)} at ${inWords(rpm, 'rpm')} with a stroke of ${stroke.input.value}, over the ${MOST} m/s usual for road engines (common practice, no source).`,
          related: [{ origin: stroke.by, message: 'Stroke' }],
        },
      ];
    });
  },
});
