/** Figures about a word, each with its working; few enough to read in a hover. */

import type { Figure } from '../../analysis/figure.ts';
import { figuresAbout } from '../../analysis/figures.ts';
import { blocks, plain, stacked, strong, table } from '../markdown.ts';
import { inputTexts } from './inputs.ts';
import type { HoverQuestion } from './question.ts';
import { asTheSectionEnds } from './section-end.ts';

const MOST_FIGURES = 4;
const MOST_ROWS = 16;

/** Markdown; empty where nothing can be worked out. */
export function figuresText(question: HoverQuestion, word: string): string {
  const others = figuresOf(question, word);
  const names = others.slice(MOST_FIGURES).map(({ name }) => name);
  return blocks([
    ...others.slice(0, MOST_FIGURES).map((figure) => figureText(question, figure)),
    names.length > 0 ? plain(`Also worked out: ${names.join(', ')}`) : '',
  ]);
}

/** The most useful first. */
function figuresOf(question: HoverQuestion, word: string): readonly Figure[] {
  const { snapshot, line, files } = question;
  const state = asTheSectionEnds(question);
  return figuresAbout(word, { state, snapshot, line, ...(files && { files }) });
}

function figureText(question: HoverQuestion, figure: Figure): string {
  const { topic, name, text, formula, working, inputs, standing, source, caution, rows } = figure;
  // The rows of a trial are in the table and right below its head.
  const from = topic === 'trials' ? '' : inputTexts(question, inputs).join('; ');
  const how = [working, `${formula} (${standing}: ${source})`].map(plain);
  return blocks([
    stacked([`${strong(name)} ${plain(text)}`, plain(caution ?? '')].filter((line) => line !== '')),
    table(rows, MOST_ROWS),
    stacked([...how, from].filter((line) => line !== '')),
  ]);
}
