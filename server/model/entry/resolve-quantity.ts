/** Resolves an ambiguous word from what follows: `oil 48 psi` is oil pressure, `plugs tan` is how they look. */
import { KIND, type Line } from '../../../grammar/index.ts';
import { unitById } from '../../trade/measure/units.ts';
import { quantityBySize, quantityByUnit, quantityByWords } from '../../trade/vocabulary/homonyms.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { firstAmount } from './amount.ts';
import type { Statement } from './entry.ts';
import { plugConditions } from './plug-condition.ts';
import { expandShorthand } from './shorthand.ts';
import { qualifiersOf } from './statement.ts';
import type { Amount, Value, Word } from './value.ts';

interface Resolved {
  readonly quantity: Quantity;
  readonly said: readonly Statement[];
}

/** Quantity and statements, from the word that was written and the statements read after it. */
export function resolveQuantity(line: Line, word: Quantity, statements: readonly Statement[]): Resolved {
  const { quantity, said } = resolve(line, word, statements);
  return {
    quantity,
    said: said.map((each) =>
      statements.includes(each) ? each : { ...each, qualifiers: qualifiersOf(each) },
    ),
  };
}

function resolve(line: Line, word: Quantity, statements: readonly Statement[]): Resolved {
  const quantity = meant(line, word, statements);
  if (quantity.name === 'plug') return { quantity, said: statements.flatMap(plugConditions) };
  const isStep = line.tokens.kinds.includes(KIND.Arrow) || TO.test(line.text);
  const stands = isStep ? statements.map((said) => onlyLast(said, line)) : statements;
  const sized = quantity.name === 'main needle' && word.name !== quantity.name ? stands.map(inTurns) : stands;
  const said = sized.map((each) => expandShorthand(ofDistributor(each, line, quantity), quantity));
  return { quantity, said: quantity.ofDistributor ? said.map(inOwnDegrees) : said };
}

/** `oil 48 psi` is the oil's pressure; `plugs tan` is how they look. */
function meant(line: Line, word: Quantity, said: readonly Statement[]): Quantity {
  const first = firstAmount(said.flatMap(({ values }) => values));
  const dimension = first?.unit?.dimension;
  const byUnit = dimension && quantityByUnit(word, dimension);
  const meaning = byUnit ?? quantityByWords(word, textsIn(said));
  if (meaning || dimension || !first) return meaning ?? word;
  return bySize(word, said, first, line);
}

/** `main jet 1 5/8`, `main jet in 1/8`: turns of a needle; `plugs .025`: their gap. */
function bySize(word: Quantity, said: readonly Statement[], first: Amount, line: Line): Quantity {
  const isOne = said.every(
    ({ values, words }) => values.length < 2 && (word.form !== 'text' || words.length === 0),
  );
  if (!first.interval || !isOne || isPair(line.text.slice(first.numberSpan.from, first.numberSpan.to)))
    return word;
  if (first.relative === 'more' || first.relative === 'less') return word;
  return quantityBySize(word, first.relative ? 'turned' : first.interval) ?? word;
}

/** `70/75` are two sizes, not a fraction. */
const isPair = (number: string): boolean => /^[2-9]\d+\/\d+$/.test(number);

const inTurns = (said: Statement): Statement => ({
  ...said,
  values: said.values.map((value) =>
    value.form === 'amount' && !value.unit ? { ...value, unit: unitById('turn'), taken: true } : value,
  ),
});

const textsIn = (said: readonly Statement[]): readonly string[] =>
  said.flatMap(({ words }) => words.map(({ text }) => text.toLowerCase()));

/** `distributor curve`: the word counts for the line, though it is part of the name. */
function ofDistributor(said: Statement, line: Line, { form }: Quantity): Statement {
  const at = form === 'curve' ? line.text.search(/\bdistributor curve\b/i) : -1;
  if (at < 0 || said.words.some(({ text }) => /^dist/i.test(text))) return said;
  const span = { from: at, to: at + 'distributor'.length };
  return { ...said, words: [{ text: 'distributor', span }, ...said.words] };
}

const TO = /\bto\b/i;

/** `68 -> 67`, `3/8 in to 1/2 in`: the old value and the new. */
function onlyLast(said: Statement, line: Line): Statement {
  const [was, is, ...more] = said.values;
  if (was?.form !== 'amount' || is?.form !== 'amount' || more.length > 0) return said;
  const between = line.text.slice(was.span.to, is.span.from);
  if (!/^\s*(?:->|→|to)\s*$/i.test(between)) return said;
  const unit = is.unit ?? was.unit;
  const value: Value = unit ? { ...is, unit } : is;
  return { ...said, values: [value], words: said.words.filter((word) => !isTo(word, was, is)) };
}

const isTo = ({ span }: Word, was: Amount, is: Amount): boolean =>
  span.from >= was.span.to && span.to <= is.span.from;

/** `dwell 50 dist deg` is what a dwell meter reads anyway: no degrees of the crank. */
const inOwnDegrees = (said: Statement): Statement => ({
  ...said,
  values: said.values.map((value) =>
    value.form === 'amount' && value.unit?.id === 'dist-deg' ? { ...value, unit: unitById('deg') } : value,
  ),
});
