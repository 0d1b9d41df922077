import { settingIn } from '../model/amounts.ts';
import { type Carried, type InForce, keyOf } from '../model/carry.ts';
import { airOf, densityOf } from '../model/figures/day-air.ts';
import { inWords } from '../model/figures/known.ts';
import { MAIN_JETS } from '../model/jet-day.ts';
import { jetAreaForAir, relativeDensity } from '../trade/air.ts';
import { areaRatio } from '../trade/carburation.ts';
import { exact, middle, monotoneEach } from '../trade/interval.ts';
import { problemsIn, rule } from './rule.ts';

/** Below this share of density other reasons weigh more than the air: it is about 1500 ft, or 27 degrees F. */
const LEAST_CHANGE_OF_AIR = 0.05;
/** A change this many times what the air asks has another reason. */
const TIMES = 3;

export const jetAgainstAir = rule({
  code: 'jet-against-air',
  severity: 'information',
  title: 'A jet changed otherwise than the air asks',
  why: 'Thin air asks for a smaller jet, dense air for a larger: area with the square root of density. A change the other way, or much larger, moves the mixture by more than the weather does; that may be just what was meant.',
  standing: 'published',
  source: 'orifice equation',
  good: 'session 2026-05-02\n  weather 15 C, 1013 hPa, 50 %RH\n  main jet 122\nsession 2026-07-02\n  weather 32 C, 990 hPa, 50 %RH\n  main jet 120\n',
  bad: 'session 2026-05-02\n  weather 15 C, 1013 hPa, 50 %RH\n  main jet 122\nsession 2026-07-02\n  weather 32 C, 990 hPa, 50 %RH\n  main jet 128\n',
  on: ['setting'],
  about: ({ name }) => MAIN_JETS.includes(name),
  check({ quantity, said }, { before, after }) {
    return problemsIn(said, (each) => {
      const key = keyOf(quantity.name, each.place?.text);
      const [was, now] = [before.settings.get(key), after.settings.get(key)];
      const date = was?.by.date;
      const made = was && now && areaMade(was, now);
      if (!was || made === undefined || Math.abs(made) < 0.01) return [];
      const then = before.jetDay?.date === date ? before.jetDay : undefined;
      const ratio = then ? densityRatio({ ...before, readings: then.air }, before) : undefined;
      if (ratio === undefined) return [];
      const asked = jetAreaForAir(ratio) - 1;
      const astray = made * asked < 0 || Math.abs(made) > TIMES * Math.abs(asked);
      if (Math.abs(ratio - 1) < LEAST_CHANGE_OF_AIR || !astray) return [];
      return [
        {
          span: each.span,
          message: `This makes the area ${percent(made)}, and the air since ${date} asks for ${percent(asked)} (published, orifice equation): right only if the mixture was ${made > asked ? 'lean' : 'rich'} before.`,
          related: [{ origin: was.by, message: 'the jet before' }],
        },
      ];
    });
  },
});

/** By number or by bore the area goes with the square. */
function areaMade(was: InForce, now: InForce): number | undefined {
  for (const unit of ['number', 'mm']) {
    const [from, to] = [settingIn(was, unit), settingIn(now, unit)];
    if (from && to && from.low > 0) return areaRatio(middle(from), middle(to)) - 1;
  }
  return undefined;
}

function densityRatio(then: Carried, now: Carried): number | undefined {
  const [before, after] = [airOf(then), airOf(now)];
  if (!before || !after) return undefined;
  return middle(monotoneEach([densityOf(after), densityOf(before)] as const, relativeDensity));
}

const percent = (share: number): string => `${share > 0 ? '+' : ''}${inWords(exact(100 * share), '%', 0.1)}`;
