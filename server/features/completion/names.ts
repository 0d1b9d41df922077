/** Suggestions at the start of a line: words of its section, settings in force, work words, and section heads. */
import { isEmpty, runText } from '../../../grammar/index.ts';
import type { SectionKind } from '../../model/entry/entry.ts';
import { specQuantities } from '../../model/entry/spec-names.ts';
import { settingText } from '../../model/state/setting-text.ts';
import type { SettingInForce, State } from '../../model/state/state.ts';
import { unitById } from '../../trade/measure/units.ts';
import { PART_NAMES } from '../../trade/vocabulary/parts.ts';
import type { Quantity } from '../../trade/vocabulary/quantity.ts';
import { PLACE_WORDS, VOCABULARY } from '../../trade/vocabulary/vocabulary.ts';
import { endOf, goesOn, type Phrase, phraseOf } from './phrase.ts';
import { sectionOffers } from './sections.ts';
import { readyLine, valueColumn } from './setting-line.ts';
import type { CompletionQuestion, Offer, SuggestionKind } from './suggestion.ts';
import { type UsageCounts, usedAbove } from './usage-counts.ts';
import { wantOffers, workOffers } from './work-words.ts';

/** Offers for a name of which nothing, or some whole words, are typed. */
export function nameOffers(question: CompletionQuestion): readonly Offer[] {
  const phrase = nameBegun(question);
  if (question.unasked && phrase.begun === '') return [];
  const { state } = question;
  const entries = entryOffers(question, phrase);
  if (phrase.begun !== '') return entries;
  const work = isOfSession(state.section) ? workOffers(question) : [];
  const sections = sectionOffers(question);
  const isIndented = /^\s/.test(question.written.text);
  const wants = wantOffers(question);
  return isIndented
    ? [...wants, ...entries, ...work, ...sections]
    : [...sections, ...wants, ...entries, ...work];
}

/** A place before the name is not part of it: `left mix`. */
function nameBegun(question: CompletionQuestion): Phrase {
  const { written, from } = question;
  const { syntax } = written;
  if (syntax.kind !== 'entry' || isEmpty(syntax.head)) return { from, begun: '' };
  const isPlace = PLACE_WORDS.has(runText(written, syntax.head).toLowerCase());
  return isPlace || question.state.section === 'specs'
    ? { from, begun: '' }
    : phraseOf(question, syntax.head);
}

function entryOffers(question: CompletionQuestion, phrase: Phrase): readonly Offer[] {
  const { section } = question.state;
  if (section === 'notebook' || section === 'words') return [];
  if (section === 'parts') return plainOffers(question, phrase, PART_NAMES, 'part');
  if (section === 'ports') return plainOffers(question, phrase, [...question.state.ports.keys()], 'place');
  const used = usedAbove(question.snapshot, question.line);
  const quantities = ranked(quantitiesOf(question.state), used, question.state);
  const offers = quantities.flatMap((quantity) => quantityOffers(question, phrase, quantity));
  return offers.toSorted((a, b) => Number(a.foundBy !== undefined) - Number(b.foundBy !== undefined));
}

function plainOffers(
  question: CompletionQuestion,
  phrase: Phrase,
  names: readonly string[],
  kind: SuggestionKind,
): readonly Offer[] {
  return names
    .filter((name) => goesOn(phrase, name))
    .map((name) => ({
      label: name,
      kind,
      detail: '',
      text: name,
      from: phrase.from,
      to: endOf(question, phrase, name),
    }));
}

/** The word itself, then the setting in force, ready to be written again. */
function quantityOffers(question: CompletionQuestion, phrase: Phrase, quantity: Quantity): readonly Offer[] {
  const spelling = [quantity.name, ...quantity.aliases].find((each) => isMeant(question, phrase, each));
  const { name, kind, meaning } = quantity;
  if (spelling === undefined || `${name} ` === phrase.begun) return [];
  const word = {
    label: name,
    kind,
    detail: detailOf(question.state, quantity),
    meaning,
    text: name,
    from: phrase.from,
    to: endOf(question, phrase, spelling),
    ...(spelling !== name && { foundBy: spelling, byAlias: true }),
  };
  return [word, ...readyOffers(question, phrase, quantity)];
}

/** The name always, as the editor sifts the list; another spelling where it is what is being typed. */
function isMeant({ typed }: CompletionQuestion, phrase: Phrase, spelling: string): boolean {
  if (phrase.begun === '' && typed === '') return true;
  return spelling.startsWith(phrase.begun + typed.toLowerCase());
}

function detailOf({ settings }: State, { name, kind, unit }: Quantity): string {
  const now = settings.get(`${name}|`);
  const symbol = unit === undefined ? '' : unitById(unit).symbol;
  return [kind, symbol, now && `now ${settingText(now)}`].filter(Boolean).join(', ');
}

function readyOffers(question: CompletionQuestion, phrase: Phrase, quantity: Quantity): readonly Offer[] {
  const { state, rest, snapshot, line } = question;
  if (!isOfSession(state.section) || !/^\s*(?:;|$)/.test(rest)) return [];
  const column = valueColumn(snapshot, line) - phrase.from;
  return inForce(state, quantity.name).flatMap((setting): Offer[] => {
    const ready = readyLine(state, setting);
    if (!ready) return [];
    return [
      {
        label: `${ready.name} ${ready.value}`,
        kind: 'value',
        detail: ['in force', setting.by.date && `from ${setting.by.date}`].filter(Boolean).join(' '),
        text: `${`${ready.name} `.padEnd(column)}${ready.value}`,
        from: phrase.from,
      },
    ];
  });
}

const inForce = ({ settings }: State, name: string): readonly SettingInForce[] =>
  [...settings.values()].filter((each) => each.quantity.name === name);

const isOfSession = (section: SectionKind | undefined): boolean =>
  section === 'session' || section === undefined;

function quantitiesOf(state: State): readonly Quantity[] {
  const { section, words, specs } = state;
  const own = [...words.values()];
  if (section === 'engine' || section === 'vehicle') return FACTS[section];
  if (section === 'limits' || section === 'targets') return [...own, ...NUMBERS];
  if (section === 'specs') return [...own, ...SPECIFIED];
  return [...own, ...specQuantities(specs), ...IN_SESSIONS];
}

const IN_SESSIONS = VOCABULARY.filter(({ kind }) => kind !== 'fact');
const NUMBERS = IN_SESSIONS.filter(({ form }) => form === 'number');
const SPECIFIED = VOCABULARY.filter(({ form }) => form === 'number');
const FACTS = {
  engine: VOCABULARY.filter(({ section }) => section === 'engine'),
  vehicle: VOCABULARY.filter(({ section }) => section === 'vehicle'),
};

/** What is used most comes first, then what belongs to the parts fitted or to no part, then the rest; else as in the table. */
function ranked(quantities: readonly Quantity[], used: UsageCounts, { fitted }: State): readonly Quantity[] {
  const uses = ({ name }: Quantity) => used.get(name) ?? 0;
  const isStrange = ({ owner }: Quantity) =>
    Number(owner !== undefined && fitted.size > 0 && !fitted.has(owner));
  return quantities.toSorted((a, b) => uses(b) - uses(a) || isStrange(a) - isStrange(b));
}
