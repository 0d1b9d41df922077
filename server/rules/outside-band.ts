import { formatValue } from '../trade/format.ts';
import { bandIn, bandText, isBanded, type Outside, outsideBand } from './band.ts';
import { rule } from './rule.ts';

export const outsideBandRule = rule({
  code: 'outside-band',
  severity: 'warning',
  title: 'A value outside what is usual',
  why: "Each word of the trade has a band its value is usually found in. A value outside it is more often a slip of the pen, a wrong unit or a wrong gauge than the truth; the message says what the band rests on. The maker's figure overrules it.",
  standing: 'common practice',
  good: 'session 2026-05-02\n  idle 850 rpm\n',
  bad: 'session 2026-05-02\n  idle 2400 rpm\n',
  on: ['setting', 'reading', 'fact'],
  about: isBanded,
  check: (entry, context) =>
    outsideBand(entry, context)
      .filter(({ slip }) => slip === undefined)
      .map((outside) => ({ span: outside.amount.span, message: messageOf(outside) })),
});

function messageOf({ quantity, amount, value, unit, band }: Outside): string {
  const side = value.low > bandIn(unit, band).high ? 'above' : 'below';
  const odd = `${quantity.name} ${formatValue(value, unit)}`;
  const told = amount.relative ? `This makes ${odd}, ${side}` : `${odd} is ${side}`;
  return `${told} the usual ${bandText(band, unit)}.`;
}
