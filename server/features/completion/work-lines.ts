/** Suggestions after a work word: ids, names and dates of the notebook. */
import { isEmpty, type LineSyntax, type Run, tokenText } from '../../../grammar/index.ts';
import { axesOf } from '../../analysis/trials/trial.ts';
import { lineOf, lineStateAt } from '../../model/snapshot/locate.ts';
import { sessionsOf } from '../../model/snapshot/section-ranges.ts';
import { isKept } from '../../model/snapshot/session-state.ts';
import type { Dimension } from '../../trade/measure/units.ts';
import { ROAD_CHECKS } from '../../trade/practice/road-checks.ts';
import { isResponse, type Quantity } from '../../trade/vocabulary/quantity.ts';
import { VOCABULARY } from '../../trade/vocabulary/vocabulary.ts';
import { endOf, goesOn, type Phrase, phraseOf } from './phrase.ts';
import type { CompletionQuestion, Offer, SuggestionKind } from './suggestion.ts';
import { countedUnits, endsInNumber, unitsOf } from './units.ts';
import { unitKey, usedAbove } from './usage-counts.ts';

type Syntax<Kind extends LineSyntax['kind']> = LineSyntax & { readonly kind: Kind };

interface Named {
  readonly name: string;
  /** As the notebook spells it, where that differs. */
  readonly written?: string;
  readonly detail: string;
}

export function itemOffers(question: CompletionQuestion, syntax: Syntax<'item'>): readonly Offer[] {
  const { written, state, from } = question;
  const word = tokenText(written, syntax.word).toLowerCase();
  if (word === 'fault' && written.text.endsWith('['))
    return [
      {
        label: '[safety]',
        kind: 'item',
        detail: 'blocks a road run until done',
        text: 'safety]',
        foundBy: 'safety',
        from,
      },
    ];
  if (word !== 'done' || syntax.text !== undefined || written.text.trimEnd().endsWith(':')) return [];
  const items = [...state.items].map(([name, { word, text }]) => ({ name, detail: `${word}: ${text}` }));
  const rechecks = [...state.rechecks.keys()].map((name) => ({ name, detail: 'recheck' }));
  return namedOffers(question, syntax.id, [...items, ...rechecks], 'item');
}

/** Put on what is off the engine, take off what is on it. */
export function fitOffers(question: CompletionQuestion, syntax: Syntax<'fit'>): readonly Offer[] {
  const { written, state } = question;
  const fitted = new Map([...state.fitted].map(([kind, { name }]) => [name, kind]));
  if (tokenText(written, syntax.word).toLowerCase() === 'remove') {
    const on = [...fitted].map(([name, kind]) => ({
      name,
      detail: kind,
      written: partWritten(question, name),
    }));
    return namedOffers(question, syntax.part, on, 'part');
  }
  const known = new Set([...state.parts.keys(), ...state.parked.keys()]);
  const off = [...known].filter((name) => !fitted.has(name) && !name.startsWith('('));
  const named = off.map((name) => {
    const detail = state.parts.get(name)?.text ?? '';
    return { name, detail, written: partWritten(question, name) };
  });
  return namedOffers(question, syntax.part, named, 'part');
}

/** With the hyphens and capitals of the line that describes it. */
function partWritten({ state, snapshot }: CompletionQuestion, name: string): string {
  const part = state.parts.get(name);
  const line = part && lineOf(snapshot, part.by.ref);
  const entry = line === undefined ? undefined : lineStateAt(snapshot, line)?.entry;
  return entry?.kind === 'part' ? entry.line.text.slice(entry.nameSpan.from, entry.nameSpan.to) : name;
}

/** Those that are due first. */
export function checkOffers(question: CompletionQuestion, { words }: Syntax<'check'>): readonly Offer[] {
  const { state, from } = question;
  const due = [...state.checksDue.keys()].map((name) => ({ name, detail: 'due since the last work on it' }));
  const usual = ROAD_CHECKS.map(({ name, why }) => ({ name, detail: why }));
  const made = [...state.checks.keys()].map((name) => ({ name, detail: '' }));
  const names = namedOffers(question, words, [...due, ...usual, ...made], 'item');
  if (isEmpty(words)) return names;
  const found = ['ok', 'bad'].map((text): Offer => ({ label: text, kind: 'value', detail: '', text, from }));
  return [...names, ...found];
}

/** Days of sessions, the latest first, those marked to keep before the others. */
export function revertOffers(question: CompletionQuestion, syntax: Syntax<'revert'>): readonly Offer[] {
  if (syntax.date !== undefined) return [];
  const { snapshot, line, from, written } = question;
  const above = sessionsOf(snapshot).filter(({ to, date }) => to <= line && date !== undefined);
  const days = above.reverse().map((session) => ({ session, kept: isKept(snapshot, session) }));
  const to = /\bto\s*$/i.test(written.text) ? '' : 'to ';
  return days
    .toSorted((a, b) => Number(b.kept) - Number(a.kept))
    .slice(0, MOST_DAYS)
    .map(({ session: { date = '', title }, kept }) => ({
      label: date,
      kind: 'date',
      detail: [kept && 'kept', title].filter(Boolean).join(': '),
      text: `${to}${date}`,
      foundBy: `${to}${date}`,
      from,
    }));
}

const MOST_DAYS = 50;

export function sessionOffers(question: CompletionQuestion, syntax: Syntax<'session'>): readonly Offer[] {
  if (syntax.date !== undefined || syntax.title !== undefined) return [];
  const { today, written } = question;
  // From the edge: a head that was typed under an indented line is not left there.
  const text = `${written.text.trim()} ${today}`;
  return [{ label: today, kind: 'date', detail: 'today', text, foundBy: text, from: 0 }];
}

export function recheckOffers(question: CompletionQuestion, syntax: Syntax<'recheck'>): readonly Offer[] {
  const { from } = question;
  if (endsInNumber(question.written)) return countedUnits(question);
  if (syntax.after !== undefined)
    return question.written.tokens.kinds.length - 1 === syntax.after ? usualIntervals(question) : [];
  const names = quantityNames(question, 'setting');
  const after: Offer = { label: 'after', kind: 'work', detail: 'how much later', text: 'after', from };
  const offers = namedOffers(question, syntax.name, names, 'setting');
  return isEmpty(syntax.name) ? offers : [after, ...offers];
}

/** Usual intervals (common practice, no source). */
function usualIntervals(question: CompletionQuestion): readonly Offer[] {
  const used = usedAbove(question.snapshot, question.line);
  const distance = (used.get(unitKey('odometer', 'km')) ?? 0) > 0 ? '200 km' : '100 mi';
  return ['1 heat cycle', distance, '10 h', '30 days'].map((text) => ({
    label: text,
    kind: 'value',
    detail: '',
    text,
    from: question.from,
  }));
}

/** The knob, then the response. */
export function trialOffers(question: CompletionQuestion, syntax: Syntax<'trial'>): readonly Offer[] {
  if (syntax.arrow !== undefined) {
    const all = [...quantityNames(question, 'reading', isResponse), ...quantityNames(question, 'setting')];
    return namedOffers(question, syntax.response, all, 'reading');
  }
  const knobs = namedOffers(question, syntax.knob, quantityNames(question, 'setting'), 'setting');
  const arrow: Offer = {
    label: '->',
    kind: 'work',
    detail: 'the reading that responds',
    text: '-> ',
    from: question.from,
  };
  return isEmpty(syntax.knob) ? knobs : [arrow, ...knobs];
}

/** Units of the knob, then of the response; after `want` the other way round. */
export function rowOffers(question: CompletionQuestion, syntax: Syntax<'row' | 'want'>): readonly Offer[] {
  const { state, written } = question;
  if (!state.trial || !endsInNumber(written)) return [];
  const { knob, response } = axesOf(state.trial, state.words);
  const isFirst = syntax.groups.flatMap(({ values }) => values).length <= 1;
  const axis = isFirst === (syntax.kind === 'row') ? knob : response;
  const dimensions = [axis.unit.dimension, axis.quantity?.dimension];
  return unitsOf(
    question,
    dimensions.filter((each): each is Dimension => each !== undefined && each !== 'number'),
    axis.unit,
  );
}

function quantityNames(
  { state, snapshot, line }: CompletionQuestion,
  kind: 'setting' | 'reading',
  isWanted: (quantity: Quantity) => boolean = () => true,
): readonly Named[] {
  const used = usedAbove(snapshot, line);
  return [...state.words.values(), ...VOCABULARY]
    .filter((quantity) => quantity.kind === kind && isWanted(quantity))
    .toSorted((a, b) => (used.get(b.name) ?? 0) - (used.get(a.name) ?? 0))
    .map(({ name, meaning }) => ({ name, detail: meaning }));
}

function namedOffers(
  question: CompletionQuestion,
  run: Run,
  names: readonly Named[],
  kind: SuggestionKind,
): readonly Offer[] {
  const phrase = phraseOf(question, run);
  const once = new Map(names.toReversed().map((each) => [each.name, each]));
  return [...once.values()]
    .reverse()
    .filter(({ name }) => goesOn(phrase, name))
    .map(({ name, detail, written = name }) => ({
      label: written,
      kind,
      detail,
      text: written,
      ...(isBegun(question, phrase, written) ? {} : { foundBy: name }),
      from: phrase.from,
      to: endOf(question, phrase, name),
    }));
}

/** Whether what is typed begins it as it is spelled: a hyphen may have been typed as a space. */
const isBegun = ({ written, typed }: CompletionQuestion, { from }: Phrase, spelling: string): boolean =>
  spelling.toLowerCase().startsWith((written.text.slice(from) + typed).toLowerCase());
