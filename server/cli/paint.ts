/** Colours of the terminal. They add nothing that the words do not say. */
import { styleText } from 'node:util';

const STYLES = {
  title: 'bold',
  faint: 'dim',
  strong: 'bold',
  error: 'red',
  warning: 'yellow',
  information: 'cyan',
  hint: 'dim',
  fix: 'green',
} as const;

type Style = keyof typeof STYLES;
export type Paint = (style: Style, text: string) => string;

/** Paints, or leaves the text as it is. */
export const painter =
  (colours: boolean): Paint =>
  (style, text) =>
    colours ? styleText(STYLES[style], text, { validateStream: false }) : text;

/**
 * Whether to colour, the strongest first: `--no-color`, `FORCE_COLOR` (off for `0` and `false`), `NO_COLOR` (off for anything
 * but empty), then whether the output is a terminal that is not `dumb`.
 */
export function useColours(
  env: Readonly<Record<string, string | undefined>>,
  args: readonly string[],
  isTerminal: boolean,
): boolean {
  if (args.includes('--no-color')) return false;
  if (env.FORCE_COLOR !== undefined) return !['0', 'false'].includes(env.FORCE_COLOR);
  if (env.NO_COLOR) return false;
  return isTerminal && env.TERM !== 'dumb';
}
