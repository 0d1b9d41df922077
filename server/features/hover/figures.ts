/** What else is worked out about a word, each figure with its working; few enough to be read in a hover. */
import { figuresAbout } from '../../model/figures/all.ts';
import type { Figure } from '../../model/figures/figure.ts';
import { blocks, plain, stacked, strong, table } from '../markdown.ts';
import { inputTexts } from './inputs.ts';
import type { HoverQuestion } from './question.ts';
import { TOTALS } from './totals.ts';

const MOST_FIGURES = 4;
const MOST_ROWS = 12;

/** Markdown; empty where nothing can be worked out. */
export function figuresText(question: HoverQuestion, word: string): string {
  const { snapshot, line, reading, files } = question;
  const figures = figuresAbout(word, { carried: reading.after, snapshot, line, ...(files && { files }) });
  const others = figures.filter(({ name }) => !TOTALS.has(name));
  const names = others.slice(MOST_FIGURES).map(({ name }) => name);
  return blocks([
    ...others.slice(0, MOST_FIGURES).map((figure) => figureText(question, figure)),
    names.length > 0 ? plain(`Also worked out: ${names.join(', ')}`) : '',
  ]);
}

function figureText(question: HoverQuestion, figure: Figure): string {
  const { name, text, formula, working, inputs, standing, source, caution, rows } = figure;
  const lines = [`${formula} (${standing}: ${source})`, working, caution ?? ''].map(plain);
  const from = inputTexts(question, inputs).join('; ');
  return blocks([
    stacked([`${strong(name)} ${plain(text)}`, ...lines, from].filter((line) => line !== '')),
    table(rows, MOST_ROWS),
  ]);
}
