/** Cautions in a hover: what could hurt somebody doing the work of the line or session. */
import type { Caution } from '../../trade/practice/cautions.ts';
import { plain, stacked } from '../markdown.ts';

/** Markdown; empty where none applies. */
export const cautionsText = (cautions: readonly Caution[]): string =>
  stacked(cautions.map(({ work, text }) => plain(`Caution, ${work}: ${text}`)));
