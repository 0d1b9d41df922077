/** The inputs of something worked out, each with the line it came from. */
import type { Input } from '../../model/figures/figure.ts';
import { plain } from '../markdown.ts';
import { whereabouts } from '../whereabouts.ts';
import type { HoverQuestion } from './question.ts';

/** Markdown, a text for each; empty where all there is to say is that it is this line. */
export function inputTexts({ snapshot, line }: HoverQuestion, inputs: readonly Input[]): readonly string[] {
  const texts = inputs.map(({ name, by }) => {
    const where = by && whereabouts(snapshot, by, line);
    return where ? `${name}: ${where}` : name;
  });
  return texts.every((text) => text.endsWith(': this line')) ? [] : [...new Set(texts)].map(plain);
}
