import { airOf, densityOf } from '../../analysis/air/session-air.ts';
import { inWords } from '../../analysis/inputs.ts';
import { settingIn } from '../../model/state/apply-setting.ts';
import { keyOf, type SettingInForce, type State } from '../../model/state/state.ts';
import { exact, middle, monotoneEach } from '../../trade/measure/interval.ts';
import { jetAreaForAir, relativeDensity } from '../../trade/sums/air.ts';
import { areaRatio } from '../../trade/sums/carburation.ts';
import { problemsIn, rule } from '../rule.ts';

/** Smallest change of density judged; below it other reasons matter more. About 1500 ft, or 27 degrees F. */
const LEAST_CHANGE_OF_AIR = 0.05;
/** Factor between the jet change and the one for the air, above which the change must have another reason. */
const TIMES = 3;

export const jetAgainstAir = rule({
  code: 'jet-against-air',
  severity: 'information',
  title: 'A jet change that does not follow the air',
  why: 'Thin air calls for a smaller jet, dense air for a larger: area follows the square root of density. A change the other way, or a much larger one, moves the mixture more than the weather does; that may be exactly what was meant.',
  standing: 'published',
  source: 'orifice equation',
  good: 'session 2026-05-02\n  weather 15 C, 1013 hPa, 50 %RH\n  main jet 122\nsession 2026-07-02\n  weather 32 C, 990 hPa, 50 %RH\n  main jet 120\n',
  bad: 'session 2026-05-02\n  weather 15 C, 1013 hPa, 50 %RH\n  main jet 122\nsession 2026-07-02\n  weather 32 C, 990 hPa, 50 %RH\n  main jet 128\n',
  on: ['setting'],
  about: ({ traits }) => traits?.mainJet ?? false,
  check({ quantity, statements: said }, { before, after }) {
    return problemsIn(said, (each) => {
      const key = keyOf(quantity.name, each.place?.text);
      const [was, now] = [before.settings.get(key), after.settings.get(key)];
      const date = was?.by.date;
      const made = was && now && areaMade(was, now);
      if (!was || made === undefined || Math.abs(made) < 0.01) return [];
      const then = before.jetAir?.date === date ? before.jetAir : undefined;
      const ratio = then ? densityRatio({ ...before, readings: then.air }, before) : undefined;
      if (ratio === undefined) return [];
      const needed = jetAreaForAir(ratio) - 1;
      const astray = made * needed < 0 || Math.abs(made) > TIMES * Math.abs(needed);
      if (Math.abs(ratio - 1) < LEAST_CHANGE_OF_AIR || !astray) return [];
      return [
        {
          span: each.span,
          message: `This jet is ${bySize(made)} in area; the change in air since ${date} calls for ${bySize(needed)}. Right only if it was running ${made > needed ? 'lean' : 'rich'} (published, orifice equation).`,
          related: [{ origin: was.by, message: 'Jet before' }],
        },
      ];
    });
  },
});

/** Change of jet area as a share: area goes with the square of the jet number or of the bore. */
function areaMade(was: SettingInForce, now: SettingInForce): number | undefined {
  for (const unit of ['number', 'mm']) {
    const [from, to] = [settingIn(was, unit), settingIn(now, unit)];
    if (from && to && from.low > 0) return areaRatio(middle(from), middle(to)) - 1;
  }
  return undefined;
}

function densityRatio(then: State, now: State): number | undefined {
  const [before, after] = [airOf(then), airOf(now)];
  if (!before || !after) return undefined;
  return middle(monotoneEach([densityOf(after), densityOf(before)] as const, relativeDensity));
}

/** `10.1 % larger` */
const bySize = (share: number): string =>
  `${inWords(exact(Math.abs(100 * share)), '%', 0.1)} ${share < 0 ? 'smaller' : 'larger'}`;
