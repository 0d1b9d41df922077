import { compressionOf } from '../../analysis/engine/engine-facts.ts';
import { fuelOf } from '../../analysis/fuel/lambda.ts';
import { inWords } from '../../analysis/inputs.ts';
import { monotoneEach } from '../../trade/measure/interval.ts';
import { EFFECTIVE_RATIO_LIMIT, effectiveRatio } from '../../trade/sums/compression.ts';
import { valueIn } from '../lib/statement-values.ts';
import { NO_PROBLEMS, problemsIn, rule } from '../rule.ts';

/** The fuels that the planning figure is for. */
const PUMP_FUELS: ReadonlySet<string> = new Set(['gasoline', 'e10']);

export const effectiveRatioHigh = rule({
  code: 'effective-ratio-high',
  severity: 'warning',
  title: 'Effective compression under boost too high for pump fuel',
  why: 'Boost packs in more than the static ratio suggests. Past about 12:1 effective, pump fuel is likely to knock under load, and knock under boost breaks pistons. It is a planning figure: chamber, timing, cooling and the maker decide.',
  standing: 'published',
  source: EFFECTIVE_RATIO_LIMIT.source,
  good: 'engine\n  compression 8:1\nsession 2026-05-02\n  boost 6 psi\n',
  bad: 'engine\n  compression 9:1\nsession 2026-05-02\n  boost 10 psi\n',
  on: ['reading', 'setting'],
  about: ({ name }) => name === 'boost' || name === 'wastegate',
  check({ quantity, statements: said }, { after }) {
    const fuel = fuelOf(after);
    const ratio = compressionOf(after);
    if (!ratio || !fuel || !PUMP_FUELS.has(fuel.fuel.name)) return NO_PROBLEMS;
    return problemsIn(said, (each) => {
      const psi = valueIn(each, 'psi', quantity);
      if (!psi) return [];
      const value = monotoneEach([ratio.value, psi] as const, effectiveRatio);
      if (value.low <= EFFECTIVE_RATIO_LIMIT.value) return [];
      const related = ratio.inputs.flatMap(({ name, by }) => (by ? [{ origin: by, message: name }] : []));
      return [
        {
          span: each.span,
          message: `${inWords(ratio.value, 'ratio', 0.01)} with ${inWords(psi, 'psi')} comes to ${inWords(value, 'ratio', 0.1)}, over the ${EFFECTIVE_RATIO_LIMIT.value}:1 usually planned for pump fuel (${fuel.fuel.name}). The maker's figure overrules (published, ${EFFECTIVE_RATIO_LIMIT.source}).`,
          related: related.slice(0, 1),
        },
      ];
    });
  },
});
