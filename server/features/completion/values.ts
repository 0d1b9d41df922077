/** Suggestions after the name of a quantity: places, the value in force, its words, units, and conditions. */
import { type GroupSyntax, KIND, type Line, tokenText } from '../../../grammar/index.ts';
import { factOf } from '../../analysis/inputs.ts';
import { middle } from '../../trade/measure/interval.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { PLACE_WORDS } from '../../trade/vocabulary/vocabulary.ts';
import { readyLine } from './setting-line.ts';
import type { CompletionQuestion, Offer, SuggestionKind } from './suggestion.ts';
import { conditionUnitOffers, endsInNumber, unitOffers } from './units.ts';
import { placeKey, usedAbove, wordsBeside } from './usage-counts.ts';

/** `place` and `groups`: of the line as written up to the word being typed. */
export function valueOffers(
  question: CompletionQuestion,
  quantity: Quantity,
  place: string | undefined,
  groups: readonly GroupSyntax[],
): readonly Offer[] {
  const { written, unasked } = question;
  const group = groups.at(-1);
  if (isAfterMark(written)) return unasked ? [] : markOffers(question, quantity);
  if (endsInNumber(written)) {
    const isCondition = group?.conditions.at(-1)?.value?.run[1] === written.tokens.kinds.length;
    if (isCondition) return conditionUnitOffers(question, quantity);
    // Degrees are left out as often as not, but whoever waits after the number is asking.
    const units =
      unasked && quantity.bare && quantity.dimension !== 'angle' ? [] : unitOffers(question, quantity);
    const isUnit = units.some(({ label }) => label === question.typed);
    return unasked || isUnit ? units : [...units, ...besideOffers(question, quantity)];
  }
  const isSaid = group !== undefined && (group.values.length > 0 || group.conditions.length > 0);
  if (isSaid) return unasked ? [] : besideOffers(question, quantity);
  return [
    ...(groups.length <= 1 ? carriedOffers(question, quantity, place) : []),
    ...textOffers(question, quantity.words ?? [], 'value', ''),
    ...(groups.length <= 1 && place !== undefined ? [] : placeOffers(question, quantity)),
  ];
}

/** `@`, `at`, `in` before a gear; a bare `in` at the end is taken for one, as the gear may be what is being typed. */
const isAfterMark = ({ tokens: { kinds } }: Line): boolean =>
  kinds.endsWith(KIND.At) || (kinds.endsWith(KIND.In) && /[nfm]/.test(kinds));

/** Common practice, no source. */
const GEARS = ['neutral', 'drive', 'gear', 'park'];
const MOMENTS = ['idle', 'cruise', 'wide open'];
const CONDITIONS = ['in neutral', 'in drive', 'in gear', 'at idle', 'hot', 'cold'];

function markOffers(question: CompletionQuestion, quantity: Quantity): readonly Offer[] {
  const { written } = question;
  const mark = tokenText(written, written.tokens.kinds.length - 1).toLowerCase();
  const begin = `${mark} `;
  const used = wordsBeside(usedAbove(question.snapshot, question.line), quantity.name)
    .filter((words) => words.startsWith(begin))
    .map((words) => words.slice(begin.length));
  const usual = mark === 'in' ? GEARS : MOMENTS;
  return textOffers(question, [...new Set([...used, ...usual])], 'condition', 'condition');
}

/** A specification is of no moment: after its value comes where it is from. */
const SOURCE = {
  label: 'source',
  kind: 'work',
  detail: 'where the figure comes from',
  text: 'source ""',
} as const;

function besideOffers(question: CompletionQuestion, quantity: Quantity): readonly Offer[] {
  if (question.state.section === 'specs') return [{ ...SOURCE, from: question.from, snippet: 'source "$1"' }];
  const used = wordsBeside(usedAbove(question.snapshot, question.line), quantity.name);
  const usual = quantity.kind === 'reading' ? CONDITIONS : [];
  const all = [...new Set([...used, ...(quantity.words ?? []), ...usual])];
  return textOffers(question, all, 'condition', 'beside the value');
}

function textOffers(
  { from }: CompletionQuestion,
  texts: readonly string[],
  kind: SuggestionKind,
  detail: string,
): readonly Offer[] {
  return texts.map((text) => ({ label: text, kind, detail, text, from }));
}

/** The setting in force; of one place where that is named already. */
function carriedOffers(
  { state, from, rest }: CompletionQuestion,
  { name, kind }: Quantity,
  place: string | undefined,
): readonly Offer[] {
  if (kind !== 'setting' || !/^\s*(?:;|$)/.test(rest)) return [];
  return [...state.settings.values()].flatMap((setting): Offer[] => {
    const isMeant = setting.quantity.name === name && (place === undefined || place === setting.place);
    const ready = isMeant ? readyLine(state, setting) : undefined;
    if (!ready) return [];
    const text = place === undefined ? [setting.place, ready.value].filter(Boolean).join(' ') : ready.value;
    const detail = ['in force', setting.by.date && `from ${setting.by.date}`].filter(Boolean).join(', ');
    return [{ label: text, kind: 'value', detail, text, from }];
  });
}

/** The places such a thing may have, as this notebook gives it first; of cylinders those of this engine, last for a setting. */
function placeOffers(question: CompletionQuestion, quantity: Quantity): readonly Offer[] {
  const used = usedAbove(question.snapshot, question.line);
  const uses = ({ label }: Offer) => used.get(placeKey(quantity.name, label)) ?? 0;
  const [cylinders, words] = [cylinderOffers(question, quantity), placeWordOffers(question, quantity)];
  const all = quantity.kind === 'setting' ? [...words, ...cylinders] : [...cylinders, ...words];
  const said = question.written.text.toLowerCase().split(/[\s,]+/);
  return all.filter(({ label }) => !said.includes(label)).toSorted((a, b) => uses(b) - uses(a));
}

function placeWordOffers(question: CompletionQuestion, { places: kinds = [] }: Quantity): readonly Offer[] {
  const words = [...PLACE_WORDS].filter(([, kind]) => kinds.includes(kind)).map(([word]) => word);
  return textOffers(question, words, 'place', 'place');
}

function cylinderOffers(question: CompletionQuestion, { places: kinds = [] }: Quantity): readonly Offer[] {
  const count = kinds.includes('cylinder') ? factOf(question.state, 'cylinders', 'number') : undefined;
  const last = count ? Math.min(MOST_CYLINDERS, Math.floor(middle(count.value))) : 0;
  const cylinders = Array.from({ length: Math.max(0, last) }, (_, i) => `#${i + 1}`);
  return textOffers(question, cylinders, 'place', 'cylinder');
}

const MOST_CYLINDERS = 16;
