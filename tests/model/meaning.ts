/** What one line means, in one line of text: `setting mixture left: 1 turn | right: 1.25 turn`. */

import type { Entry, Statement } from '../../server/model/entry/entry.ts';
import type { Amount, Value } from '../../server/model/entry/value.ts';
import { linesBetween } from '../../server/model/snapshot/locate.ts';
import { open } from '../../server/model/snapshot/snapshot.ts';

/** The last line of the text; a text of one line stands in a session. */
export function meaning(text: string): string {
  const whole = text.includes('\n') ? text : `session 2026-05-02\n${text}`;
  const readings = [...linesBetween(open(whole, () => []))];
  const { entry } = readings.at(-1) as (typeof readings)[number];
  return `${entry.isVoid ? 'not in force: ' : ''}${told(entry)}`;
}

function told(entry: Entry): string {
  switch (entry.kind) {
    case 'setting':
    case 'reading':
    case 'fact':
    case 'limit':
    case 'target':
      return `${entry.kind} ${entry.quantity.name}${entry.text === undefined ? '' : ` "${entry.text}"`} ${entry.statements.map(saidText).join(' | ')}`.trim();
    case 'spec':
      return `spec ${entry.name} / ${entry.quantity.name}: ${entry.values.map(valueText).join(' ')} by ${entry.source}`;
    case 'part':
      return `part ${entry.name} (${entry.part}) ${entry.text}`;
    case 'port':
      return `port ${entry.name}: ${entry.on} [${entry.path.map(({ text }) => text).join(' > ')}]`;
    case 'word': {
      const { quantity: own } = entry;
      const band = own?.band && `${own.band.low}..${own.band.high} ${own.band.unit}`;
      return `word ${entry.name}: ${own ? `${own.kind} ${own.form} ${own.unit} ${band} "${own.meaning}"` : undefined}`;
    }
    case 'item':
      return `${entry.word} ${entry.id}: ${entry.text}${entry.safety ? ' (safety)' : ''}`;
    case 'check':
      return `check ${entry.name}: ${entry.ok}`;
    case 'fit':
      return `${entry.word} ${entry.name}`;
    case 'recheck':
      return `recheck ${entry.name} after ${entry.after && valueText(entry.after)}`;
    case 'trial':
      return `trial ${entry.knob} -> ${entry.response}`;
    case 'row':
    case 'want':
      return `${entry.kind} ${[...entry.size, ...entry.words].map(({ text }) => text).join(' ')}: ${entry.values.map(valueText).join(' ')}`;
    case 'file':
      return `${entry.word} ${entry.path}`;
    case 'revert':
      return `revert ${entry.date}`;
    case 'session':
      return `session ${entry.date} ${entry.clock} ${entry.title}`;
    case 'spoken':
      return `spoken ${entry.entries.map(told).join(', ')}`;
    case 'asked':
      return `asked ${entry.offers.map((lines) => lines.join(' + ')).join(' / ')}`;
    case 'note':
      return `note ${entry.text}`;
    case 'unknown':
      return `unknown ${entry.words.map(({ text }) => text).join(' ')}`;
    default:
      return entry.kind;
  }
}

function saidText({ place, values, points, words, conditions }: Statement): string {
  const pieces = [
    ...values.map(valueText),
    ...points.map((point) => `${valueText(point.value)} @ ${valueText(point.at)}`),
    ...words.map(({ text }) => `'${text}'`),
    ...conditions.map(
      ({ value, words }) => `@(${value ? valueText(value) : words.map(({ text }) => text).join(' ')})`,
    ),
  ];
  return `${place ? `${place.text}: ` : ''}${pieces.join(', ')}`;
}

const valueText = (value: Value): string =>
  value.form === 'amount' ? amountText(value) : `${value.form} ${value.text}`;

function amountText({ interval, unit, relative, problem }: Amount): string {
  const { low, high, about } = interval ?? { low: Number.NaN, high: Number.NaN, about: false };
  const number = problem ? `(${problem})` : low === high ? round(low) : `${round(low)}..${round(high)}`;
  return [relative, about ? `~${number}` : number, unit?.id].filter(Boolean).join(' ');
}

const round = (n: number): string => String(Number(n.toPrecision(10)));
