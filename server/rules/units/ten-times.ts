import { formatValue } from '../../trade/measure/format.ts';
import { bandText, isBanded, valuesOutsideBand } from '../lib/expected-range.ts';
import { replaceWith, rule } from '../rule.ts';

export const tenTimes = rule({
  code: 'ten-times',
  severity: 'warning',
  title: 'Ten times too much or too little',
  why: 'A zero too many or a misplaced decimal point makes a value ten times too large or small. The value is outside its usual range, and a tenth of it or ten times it is inside.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  idle 750 rpm\n',
  bad: 'session 2026-05-02\n  idle 75 rpm\n',
  on: ['setting', 'reading', 'fact'],
  about: isBanded,
  check: (entry, context) =>
    valuesOutsideBand(entry, context).flatMap(({ quantity, amount, value, unit, band, slip }) => {
      if (slip?.kind !== 'ten times') return [];
      const plain = /^[\d.]+$/.test(entry.line.text.slice(amount.numberSpan.from, amount.numberSpan.to));
      return [
        {
          span: amount.span,
          message: `${quantity.name} ${formatValue(value, unit)} is outside the usual ${bandText(band, unit)}. Did you mean ${slip.value}?`,
          fixes: plain ? [replaceWith(amount.numberSpan, String(slip.value))] : [],
        },
      ];
    }),
});
