import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import { unitById } from '../../trade/measure/units.ts';
import { drillNamed } from '../../trade/sums/drills.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { QUANTITY_KINDS } from '../lib/kinds.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, replaceWith, rule } from '../rule.ts';

export const noValue = rule({
  code: 'no-value',
  severity: 'warning',
  title: 'A word without its value',
  why: 'A setting, reading, fact, limit or target needs a value: a number, one of the words it knows, or text in quotes, depending on the word.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg\n',
  bad: 'session 2026-05-02\n  initial\n',
  outranks: ['missing-unit'],
  on: QUANTITY_KINDS,
  check(entry) {
    const { quantity } = entry;
    if (saysEnough(entry)) return NO_PROBLEMS;
    const wanted = quantity.words
      ? `${inWords(quantity)}, or one of: ${quantity.words.join(', ')}`
      : inWords(quantity);
    const remark = entry.statements.some((said) => said.words.length > 0) ? ' Write a remark as a note.' : '';
    const drill = quantity.dimension === 'length' ? drillIn(entry) : undefined;
    const said = drill ? ` The ${drill.text} is ${drill.size}.` : remark;
    const message = `No value for ${quantity.name}: it takes ${wanted}.${said}`;
    const fixes = drill ? [replaceWith(drill.span, drill.size)] : [];
    return [{ span: lineSpan(entry.line), message, fixes }];
  },
});

/** The drill in `feed restrictor  #48 drill`, with its diameter. */
function drillIn({ line, name }: QuantityEntry) {
  const after = line.text.slice(name.to);
  const [, before = '', text = '', size = ''] =
    /^([\s:=]*)(((?:letter |no\.? ?)?#?\w+) drill)/i.exec(after) ?? [];
  const drill = size === '' ? undefined : drillNamed(size);
  const from = name.to + before.length;
  return drill && { text, size: `${drill.inches} in`, span: { from, to: from + text.length } };
}

function saysEnough(entry: QuantityEntry): boolean {
  if (entry.quantity.form === 'text') return entry.text !== '';
  return entry.statements.every((said) => said.points.length > 0 || saysValue(entry.quantity, said));
}

function saysValue(quantity: Quantity, said: Statement): boolean {
  if (quantity.form === 'order') return said.values.length > 0;
  if (said.values.some((value) => value.form === 'amount')) return true;
  return said.words.some((word) => quantity.words?.includes(word.text.toLowerCase()));
}

function inWords({ form, unit, against }: Quantity): string {
  if (form === 'text') return 'text';
  if (form === 'order') return 'the cylinders, joined by hyphens';
  if (form === 'several') return 'numbers with their units';
  const symbol = unit ? unitById(unit).symbol : '';
  const number = symbol === '' || symbol.startsWith(':') ? 'a number' : `a number (${symbol})`;
  return against ? `${number}, or points such as 8 ${symbol} @ 1500 ${against.unit}` : number;
}
