/** Section heads as templates, with the usual lines of each. */
import type { CompletionQuestion, Offer } from './suggestion.ts';

interface Form {
  readonly word: string;
  readonly detail: string;
  /** Lines with the stops of the cursor as `$1`, `$2`; `$0` is the last. */
  readonly lines: readonly string[];
}

const SECTIONS: readonly Form[] = [
  { word: 'notebook', detail: 'what the notebook is about', lines: ['notebook  $0'] },
  {
    word: 'engine',
    detail: 'facts about the engine',
    lines: [
      'engine',
      '  cylinders        $1',
      '  firing order     $2',
      '  bore             $3',
      '  stroke           $4',
      '  compression      $5',
      '  fuel             $0',
    ],
  },
  { word: 'vehicle', detail: 'facts about the vehicle or boat', lines: ['vehicle', '  $0'] },
  { word: 'parts', detail: 'parts that can be fitted', lines: ['parts', '  $1  "$2"', '  $0'] },
  {
    word: 'limits',
    detail: 'values not to exceed',
    lines: ['limits', '  total            <= $1 deg', '  $0'],
  },
  {
    word: 'targets',
    detail: 'values to aim for',
    lines: ['targets', '  idle             $1 rpm in neutral', '  $0'],
  },
  {
    word: 'specs',
    detail: 'figures from a manual, with their source',
    lines: ['specs', '  $1  torque $2  source "$3"', '  $0'],
  },
  { word: 'ports', detail: 'what is connected to each port', lines: ['ports', '  $1  $2', '  $0'] },
  {
    word: 'words',
    detail: 'your own words',
    lines: ['words', '  $1: $2, $3, "$4"', '  $0'],
  },
];

const TRIAL: Form = {
  word: 'trial',
  detail: 'one knob tried at several settings',
  lines: ['trial $1 -> $2', '  $3', '  want $0'],
};

/** The lines of every template that has some to be filled in; that of a session is whole from the start. */
export const TEMPLATES: readonly (readonly string[])[] = [...SECTIONS, TRIAL]
  .map(({ lines }) => lines)
  .filter((lines) => lines.length > 1);

/** Heads go at the left edge, wherever the cursor was; a trial only in a session. */
export function sectionOffers(question: CompletionQuestion): readonly Offer[] {
  const { state, from, today, written } = question;
  if (written.text.trim() !== '') return []; // a time comes before it
  const session: Form = {
    word: 'session',
    detail: "a day's work on the engine",
    lines: [`session ${today}  $1`, '  $0'],
  };
  // The first head of a notebook is its title; later ones are sessions.
  const heads = state.section ? [session, ...SECTIONS] : [...SECTIONS, session];
  const sections = heads.map((form) => ({ ...offerOf(form, ''), from: 0 }));
  return state.section === 'session'
    ? [...sections, { ...offerOf(TRIAL, indentOf(question)), from }]
    : sections;
}

const indentOf = ({ written }: CompletionQuestion): string => /^\s*/.exec(written.text)?.[0] ?? '';

function offerOf({ word, detail, lines }: Form, indent: string): Omit<Offer, 'from'> {
  const plain = lines.map(withoutStops);
  return {
    label: word,
    kind: 'section',
    detail,
    text: plain.join(`\n${indent}`),
    snippet: lines.join('\n'),
  };
}

const withoutStops = (line: string): string => line.replaceAll(/\$\d/g, '');
