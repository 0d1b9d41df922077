/** Public interface of the notation: what the rest of the project may import. */
export { everyToken, lex, type Token, type Tokens } from './lexer.ts';
export {
  isEmpty,
  type Line,
  LONGEST_LINE,
  parseLine,
  runSpan,
  runText,
  runWords,
  tokenSpan,
  tokenText,
} from './parse.ts';
export {
  comparePositions,
  cutLines,
  endsInBreak,
  type Position,
  type Range,
  replaceIn,
  type Span,
  withoutBreak,
} from './source.ts';
export type {
  AmountSyntax,
  ConditionSyntax,
  GroupSyntax,
  LineKind,
  LineSyntax,
  PlainSyntax,
  Run,
  ValueSyntax,
} from './syntax.ts';
export { FIRST_WORDS, KIND, type Kind, type KindName } from './tokens.ts';
export { widthOf } from './width.ts';
