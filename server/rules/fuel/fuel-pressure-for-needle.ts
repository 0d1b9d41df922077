import { carburettorKind } from '../../analysis/fuel/fuel-supply.ts';
import { inWords, settingOf } from '../../analysis/inputs.ts';
import { exact, monotoneEach } from '../../trade/measure/interval.ts';
import { NEEDLE_BANDS, pressureAtNeedle } from '../../trade/sums/carburation.ts';
import { valueIn } from '../lib/statement-values.ts';
import { problemsIn, rule } from '../rule.ts';

export const fuelPressureForNeedle = rule({
  code: 'fuel-pressure-for-needle',
  severity: 'warning',
  title: 'Fuel pressure wrong for the float needle',
  why: 'Too much pressure pushes the needle off its seat: the bowl floods and fuel runs where it should not. Too little lets the bowl run low at full throttle.',
  standing: 'common practice',
  good: 'parts\n  carb twin "pair of side-draughts"\nsession 2026-05-02\n  fit carb twin\n  fuel pressure 3 psi\n',
  bad: 'parts\n  carb twin "pair of side-draughts"\nsession 2026-05-02\n  fit carb twin\n  fuel pressure 6 psi\n',
  outranks: ['outside-band'],
  on: ['reading', 'setting'],
  about: ({ name }) => name === 'fuel pressure' || name === 'fuel regulator',
  check({ quantity, statements: said }, { after }) {
    const kind = carburettorKind(after);
    const band = NEEDLE_BANDS[kind];
    const rise = settingOf(after, 'needle height', 'in')?.value ?? exact(0);
    const known = after.fitted.has('carburettor');
    return problemsIn(said, (each) => {
      const psi = valueIn(each, 'psi', quantity);
      if (!psi) return [];
      const value = monotoneEach([psi, rise] as const, (pump, inches) => pressureAtNeedle(pump, inches));
      const high = value.low > band.high;
      if (!high && !(known && value.high < band.low)) return [];
      return [
        {
          span: each.span,
          message: `${inWords(value, 'psi', 0.1)} at the needle is ${high ? 'over' : 'under'} the ${band.low}..${band.high} psi usual for a ${kind} carburettor; ${high ? 'it may flood' : 'the bowl may run low at full throttle'}. The maker's figure overrules (${band.standing}, ${band.source}).`,
        },
      ];
    });
  },
});
