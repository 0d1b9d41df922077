import { formatValue } from '../../trade/measure/format.ts';
import { bandIn, bandText, isBanded, type Outside, valuesOutsideBand } from '../lib/expected-range.ts';
import { rule } from '../rule.ts';

export const outsideBand = rule({
  code: 'outside-band',
  severity: 'warning',
  title: 'A value outside the usual range',
  why: "Each word of the trade has a range its value is usually in. A value outside it is more often a typing error, a wrong unit or a bad gauge than the truth; the message says what the range is based on. The maker's figure overrules it.",
  standing: 'common practice',
  good: 'session 2026-05-02\n  idle 850 rpm\n',
  bad: 'session 2026-05-02\n  idle 2400 rpm\n',
  on: ['setting', 'reading', 'fact'],
  about: isBanded,
  check: (entry, context) =>
    valuesOutsideBand(entry, context)
      .filter(({ slip }) => slip === undefined)
      .map((outside) => ({ span: outside.amount.span, message: messageOf(outside) })),
});

function messageOf({ quantity, amount, value, unit, band }: Outside): string {
  const side = value.low > bandIn(unit, band).high ? 'above' : 'below';
  const name = `${quantity.name} ${formatValue(value, unit)}`;
  const finding = amount.relative ? `This makes ${name}, ${side}` : `${name} is ${side}`;
  return `${finding} the usual ${bandText(band, unit)}.`;
}
