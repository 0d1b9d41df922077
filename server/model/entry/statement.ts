/**
 * Groups of an entry to its statements, one per place. `left 1 turn, right 1 1/4 turns` says two things;
 * `0 deg @ 900 rpm, 8 deg @ 1500 rpm` is one curve.
 */
import type { ConditionSyntax, GroupSyntax, Line, Span } from '../../../grammar/index.ts';
import { runSpan } from '../../../grammar/index.ts';
import type { Quantity, ValueForm } from '../../trade/vocabulary/quantity.ts';
import { PLACE_NAMES, PLACE_WORDS } from '../../trade/vocabulary/vocabulary.ts';
import type { Condition, Place, Point, Statement } from './entry.ts';
import { withSigns } from './signed-value.ts';
import { type Amount, asRange, lowerValue, type Value, type Word, wordsOf } from './value.ts';

/** Splits words into the place they name and the rest. */
export function placeIn(words: readonly Word[]): {
  readonly place: Place | undefined;
  readonly rest: readonly Word[];
} {
  const naming: Word[] = [];
  const rest: Word[] = [];
  for (let i = 0; i < words.length; ) {
    const length = placeLength(words, i);
    (length > 0 ? naming : rest).push(...words.slice(i, i + Math.max(length, 1)));
    i += Math.max(length, 1);
  }
  return { place: placeOf(naming), rest };
}

/** How many words from `at` on name a place: `left`, `#3`, `bank a`. */
export function placeLength(words: readonly Word[], at: number): number {
  const text = (word: Word | undefined) => word?.text.toLowerCase() ?? '';
  if (PLACE_WORDS.has(`${text(words[at])} ${text(words[at + 1])}`)) return 2;
  return text(words[at]).startsWith('#') || PLACE_WORDS.has(text(words[at])) ? 1 : 0;
}

function placeOf(naming: readonly Word[]): Place | undefined {
  const first = naming[0];
  const last = naming.at(-1);
  if (!first || !last) return undefined;
  const numbered = naming.find((word) => word.text.startsWith('#'));
  return {
    text: naming.map(placeName).join(' '),
    cylinder: numbered ? Number(numbered.text.slice(1)) : undefined,
    span: { from: first.span.from, to: last.span.to },
  };
}

const placeName = ({ text }: Word): string => PLACE_NAMES.get(text.toLowerCase()) ?? text.toLowerCase();

/** Statements of groups, where the entry's head already gave `place` and `words`. */
export function statementsOf(
  line: Line,
  groups: readonly GroupSyntax[],
  place: Place | undefined,
  words: readonly Word[],
  quantity: Quantity,
): readonly Statement[] {
  return statementsInGroups(line, groups, place, words, quantity.form).map((said) =>
    withSigns(said, quantity),
  );
}

function statementsInGroups(
  line: Line,
  groups: readonly GroupSyntax[],
  place: Place | undefined,
  words: readonly Word[],
  form: ValueForm,
): readonly Statement[] {
  const said: Statement[] = [];
  let current: Open = open(place, words);
  let heard = place !== undefined && words.length > 0;
  for (const group of groups) {
    const named = placeIn(wordsOf(line, group.words));
    // `0.03 in, #3` is one thing with its place behind it.
    if (named.place && heard && (current.place || group.values.length > 0)) {
      said.push(close(current, form));
      current = open(named.place, named.rest);
    } else {
      current.place ??= named.place;
      current.words.push(...named.rest);
    }
    addGroup(line, current, group, form);
    heard ||= group.values.length > 0 || named.rest.length > 0;
  }
  said.push(close(current, form));
  return said;
}

interface Open {
  place: Place | undefined;
  readonly words: Word[];
  readonly values: Value[];
  readonly points: Point[];
  readonly conditions: Condition[];
}

const open = (place: Place | undefined, words: readonly Word[]): Open => ({
  place,
  words: [...words],
  values: [],
  points: [],
  conditions: [],
});

function addGroup(line: Line, open: Open, group: GroupSyntax, form: ValueForm): void {
  const ordered = form === 'order' || form === 'text';
  const lowered = group.values.map((value) =>
    ordered ? lowerValue(line, value) : asRange(line, value, lowerValue(line, value)),
  );
  const values = lowered.map(({ value }) => value);
  const conditions = group.conditions.map((condition) => conditionOf(line, condition, open.words));
  for (const { after } of lowered) open.words.push(...after);
  const points = form === 'curve' ? pointsOf(values, conditions) : [];
  open.points.push(...points);
  open.values.push(...values.filter((each) => !points.some(({ value }) => value === each)));
  open.conditions.push(...conditions.filter((each) => !points.some(({ at }) => at === each.value)));
}

/** Each `@` takes the value right before it. The comma between two points may be forgotten. */
function pointsOf(values: readonly Value[], conditions: readonly Condition[]): readonly Point[] {
  let from = 0;
  return conditions.flatMap(({ value: at, span }): readonly Point[] => {
    const value = values.findLast((each) => each.span.from >= from && each.span.to <= span.from);
    from = span.to;
    if (value?.form !== 'amount' || !at) return [];
    return [{ value, at, span: { from: value.span.from, to: at.span.to } }];
  });
}

function conditionOf(line: Line, syntax: ConditionSyntax, beside: Word[]): Condition {
  const span = runSpan(line, syntax.run);
  if (!syntax.value) return { value: undefined, words: wordsOf(line, syntax.words), span };
  const { value, after } = lowerValue(line, syntax.value);
  beside.push(...after);
  return { value: value.form === 'amount' ? value : undefined, words: [], span };
}

/** In a line of different quantities (weather) a unit applies to its own value only. */
function close(open: Open, form: ValueForm): Statement {
  return {
    place: open.place,
    values: form === 'several' ? open.values : withSharedUnit(open.values),
    points: pointsWithSharedUnits(open.points),
    words: open.words,
    conditions: open.conditions,
    qualifiers: qualifiersOf(open),
    span: spanOf([...open.values, ...open.points, ...open.conditions, ...open.words], open.place),
  };
}

/** Every word beside the values and in the conditions, lower case. */
export function qualifiersOf({
  words,
  conditions,
}: Pick<Statement, 'words' | 'conditions'>): readonly string[] {
  const heard = words.map(({ text }) => text.toLowerCase());
  for (const condition of conditions) for (const { text } of condition.words) heard.push(text.toLowerCase());
  return heard;
}

/** In `388 401 384 F` one unit applies to all. */
export function withSharedUnit(values: readonly Value[]): readonly Value[] {
  const unit = values.findLast((value) => value.form === 'amount' && value.unit) as Amount | undefined;
  if (!unit || values.length < 2) return values;
  return values.map((value) =>
    value.form === 'amount' && !value.unit ? { ...value, unit: unit.unit } : value,
  );
}

function pointsWithSharedUnits(points: readonly Point[]): readonly Point[] {
  const unit = points.find((point) => point.value.unit)?.value.unit;
  const atUnit = points.find((point) => point.at.unit)?.at.unit;
  if (points.every((point) => point.value.unit && point.at.unit)) return points;
  return points.map(({ value, at, span }) => ({
    value: { ...value, unit: value.unit ?? unit },
    at: { ...at, unit: at.unit ?? atUnit },
    span,
  }));
}

function spanOf(pieces: readonly { readonly span: Span }[], place: Place | undefined): Span {
  const spans = place ? [...pieces, place] : pieces;
  if (spans.length === 0) return { from: 0, to: 0 };
  return {
    from: Math.min(...spans.map(({ span }) => span.from)),
    to: Math.max(...spans.map(({ span }) => span.to)),
  };
}
