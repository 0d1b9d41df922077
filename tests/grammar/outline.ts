/** A line's tree in one line of text: `entry mixture left (1 turn) , right (1 1/4 turns)`. */
import {
  type ConditionSyntax,
  type GroupSyntax,
  isEmpty,
  type Line,
  type LineSyntax,
  parseLine,
  type Run,
  runWords,
  tokenText,
  type ValueSyntax,
} from '../../grammar/index.ts';

/**
 * `[time]`, the kind of line, its pieces, `!!` before what is stray and `;` where there is a comment. A value stands in
 * brackets, `<...>` where it is more than a number; a condition after `@`; a token that may be missing shows as `_`.
 */
export function outline(text: string): string {
  const line = parseLine(text);
  if (line.tooLong) return 'too long';
  const { kind, time, stray } = line.syntax;
  return spaced(
    isEmpty(time) ? '' : `[${words(line, time)}]`,
    kind,
    pieces(line, line.syntax),
    isEmpty(stray) ? '' : `!! ${words(line, stray)}`,
    line.comment === undefined ? '' : ';',
  );
}

function pieces(line: Line, syntax: LineSyntax): string {
  const token = (number: number | undefined) => (number === undefined ? '_' : `{${tokenText(line, number)}}`);
  switch (syntax.kind) {
    case 'blank':
      return '';
    case 'conflict':
      return token(syntax.mark);
    case 'notebook':
      return token(syntax.title);
    case 'section':
      return token(syntax.word);
    case 'session':
      return spaced(token(syntax.date), token(syntax.clock), token(syntax.title));
    case 'entry':
      return spaced(words(line, syntax.head), groups(line, syntax.groups));
    case 'row':
    case 'want':
      return groups(line, syntax.groups);
    case 'note':
    case 'keep':
      return token(syntax.text);
    case 'item':
      return spaced(
        token(syntax.word),
        words(line, syntax.id),
        token(syntax.text),
        ...syntax.flags.map(token),
      );
    case 'fit':
      return spaced(token(syntax.word), words(line, syntax.part), token(syntax.text));
    case 'check':
      return spaced(words(line, syntax.words), token(syntax.text));
    case 'file':
      return spaced(token(syntax.word), token(syntax.path));
    case 'revert':
      return token(syntax.date);
    case 'trial':
      return spaced(words(line, syntax.knob), token(syntax.arrow), words(line, syntax.response));
    case 'recheck':
      return spaced(words(line, syntax.name), token(syntax.after), groups(line, syntax.groups));
  }
}

const groups = (line: Line, all: readonly GroupSyntax[]): string =>
  all
    .map((each) =>
      spaced(
        words(line, each.words),
        ...each.values.map((value) => valueOutline(line, value)),
        ...each.conditions.map((condition) => conditionOutline(line, condition)),
      ),
    )
    .join(' , ');

const valueOutline = (line: Line, value: ValueSyntax): string =>
  value.form === 'amount' ? `(${words(line, value.run)})` : `<${value.form} ${words(line, value.run)}>`;

const conditionOutline = (line: Line, { value, words: run }: ConditionSyntax): string =>
  value ? `@${valueOutline(line, value)}` : `@${words(line, run) || '_'}`;

const words = (line: Line, run: Run): string => runWords(line, run).join(' ');

const spaced = (...texts: readonly string[]): string => texts.filter((text) => text !== '').join(' ');
