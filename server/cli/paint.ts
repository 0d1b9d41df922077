/** Colours of the terminal. They only underline what the words say already. */
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
 * `--no-color` over `FORCE_COLOR` (`0` and `false` forbid) over `NO_COLOR` (anything but empty forbids) over whether
 * somebody looks: a terminal that is not `dumb`.
 */
export function wantsColours(
  env: Readonly<Record<string, string | undefined>>,
  args: readonly string[],
  isTerminal: boolean,
): boolean {
  if (args.includes('--no-color')) return false;
  if (env.FORCE_COLOR !== undefined) return !['0', 'false'].includes(env.FORCE_COLOR);
  if (env.NO_COLOR) return false;
  return isTerminal && env.TERM !== 'dumb';
}
