/** Text on a terminal: width, wrapping, and no control characters, so that a notebook cannot steer the terminal. */
import { widthOf } from '../../grammar/index.ts';

/** Below this, columns stop making sense and text is left to the terminal. */
const NARROWEST = 24;
/** Control characters, and those that reverse the direction of writing. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not reach the terminal
const CONTROLS = /[\u0000-\u001F\u007F-\u009F\u200E\u200F\u2028-\u202E\u2066-\u2069\uFEFF]/g;

/** Each control character as a visible one, each tab as a space: the text keeps its length. */
export const visible = (text: string): string =>
  text.replace(CONTROLS, (char) =>
    char === '\t' ? ' ' : char < ' ' ? String.fromCharCode(0x2400 + char.charCodeAt(0)) : '\uFFFD',
  );

/** `width` in columns of a terminal, which are not characters. Longer text stays as it is. */
export const padded = (text: string, width: number): string =>
  text + ' '.repeat(Math.max(0, width - widthOf(text)));

/**
 * Lines of at most `columns`, those after the first indented by `indent`. Cut between words, but not between a number
 * and its unit, nor inside `1 1/2`.
 */
export function wrap(text: string, columns: number | undefined, indent = 0): readonly string[] {
  if (columns === undefined || columns < NARROWEST) return [text];
  const lines: string[] = [];
  const [first = '', ...words] = text.split(BETWEEN_WORDS);
  let line = first;
  for (const word of words) {
    const next = `${line} ${word}`;
    const room = columns - (lines.length > 0 ? indent : 0);
    if (word !== '' && line.trim() !== '' && widthOf(next) > room) {
      lines.push(line.trimEnd());
      line = word;
    } else line = next;
  }
  lines.push(line);
  return lines.map((each, i) => (i > 0 ? ' '.repeat(indent) + each : each));
}

const BETWEEN_WORDS = / (?![a-zµ°%]|\d+\/)|(?<!\d) /i;
