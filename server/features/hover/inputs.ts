/** Inputs of a figure in a hover, each with the line it came from. */
import type { Input } from '../../analysis/figure.ts';
import { plain } from '../markdown.ts';
import type { HoverQuestion } from './question.ts';
import { whereabouts } from './whereabouts.ts';

/** Beyond these a hover only says how many more there are: a table beside it names them, or the terminal does. */
const MOST_PLACES = 5;

/** Markdown, a text for each; empty where all inputs are on this line. */
export function inputTexts(question: HoverQuestion, inputs: readonly Input[]): readonly string[] {
  const placed = inputs.map(({ name, value, by }) => ({
    name,
    where: by ? whereabouts(question, by) : value,
  }));
  if (placed.every(({ where }) => where === 'this line')) return [];
  const texts = byName(byPlace(placed));
  const left = texts.length - MOST_PLACES;
  return [
    ...texts.slice(0, left > 1 ? MOST_PLACES : texts.length),
    ...(left > 1 ? [`${left} more`] : []),
  ].map(plain);
}

interface Placed {
  readonly name: string;
  readonly where: string;
}

/** Inputs from one line are grouped: `temperature, pressure, humidity: line 12`. */
function byPlace(inputs: readonly Placed[]): readonly Placed[] {
  return grouped(inputs, ({ where }) => where).map(([first, ...others]) => ({
    where: first.where,
    name: [...new Set([first, ...others].map(({ name }) => name))].join(', '),
  }));
}

/** One input from several lines is grouped too: `run time: line 12, 2026-05-02; line 20, 2026-05-09 and 4 more`. */
function byName(inputs: readonly Placed[]): readonly string[] {
  return grouped(inputs, ({ name }) => name).map((from) => {
    const left = from.length - MOST_SOURCES;
    const shown = from.slice(0, left > 1 ? MOST_SOURCES : from.length).map(({ where }) => where);
    return `${from[0].name}: ${shown.join('; ')}${left > 1 ? ` and ${left} more` : ''}`;
  });
}

const MOST_SOURCES = 2;

/** In the order of the first of each group. */
function grouped(
  inputs: readonly Placed[],
  keyOf: (input: Placed) => string,
): readonly (readonly [Placed, ...Placed[]])[] {
  const groups = new Map<string, [Placed, ...Placed[]]>();
  for (const input of inputs) {
    const group = groups.get(keyOf(input));
    if (group) group.push(input);
    else groups.set(keyOf(input), [input]);
  }
  return [...groups.values()];
}
