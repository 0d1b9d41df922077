/**
 * The rules below the line: groups between commas, values, conditions, runs of words. A token's number travels as
 * its offset, and a rule answers with token numbers only.
 */
import { EmbeddedActionsParser, EOF, type IToken, type TokenType } from 'chevrotain';
import type { AmountSyntax, ConditionSyntax, GroupSyntax, Run, ValueSyntax } from './syntax.ts';
import { Anything, TOKEN as T, TOKEN_OF_KIND } from './tokens.ts';

export type Pieces = Pick<GroupSyntax, 'values' | 'conditions'>;

const NUMBERS: readonly TokenType[] = [T.Number, T.Fraction, T.Mixed, T.CommaNumber];
const PREFIXES: readonly TokenType[] = [T.About, T.Bound, T.Plus, T.Minus, T.In, T.Out];
const PLAIN = [
  ['text', T.Text],
  ['date', T.Date],
  ['clock', T.Clock],
  ['ratio', T.Ratio],
  ['order', T.Order],
] as const;
/** What may have a minus of its own behind it. */
const NOT_SIGNS: readonly TokenType[] = [T.About, T.Bound];
const SIGNS: readonly TokenType[] = [T.Minus, T.Plus];

type Prefix = Pick<AmountSyntax, 'prefix' | 'lowSign'>;
type Second = Pick<AmountSyntax, 'highSign' | 'high'>;

const NO_PREFIX: Prefix = { prefix: undefined, lowSign: undefined };
const NO_SECOND: Second = { highSign: undefined, high: undefined };
const NO_NUMBER = { low: undefined, link: undefined, ...NO_SECOND, inch: undefined };

export class ValueParser extends EmbeddedActionsParser {
  private count = 0;

  constructor() {
    super([Anything, ...Object.values(T)], {
      maxLookahead: 1,
      recoveryEnabled: false,
      // Chevrotain proves the rules free of ambiguity with a function that Node 20 and its editors lack. What is
      // proved once, where the tests run, holds there too.
      skipValidations: !('groupBy' in Object),
    });
  }

  protected start(kinds: string): void {
    this.count = kinds.length;
    this.input = [...kinds].map(tokenOf);
  }

  protected readonly groups = this.RULE('groups', (): GroupSyntax[] => {
    const first = this.SUBRULE(this.group);
    const more = this.SUBRULE(this.moreGroups);
    return this.ACTION(() => [first, ...more]);
  });

  protected readonly moreGroups = this.RULE('moreGroups', (): GroupSyntax[] => {
    const groups: GroupSyntax[] = [];
    this.MANY(() => {
      this.OR([{ ALT: () => this.CONSUME(T.Comma) }, { ALT: () => this.CONSUME(T.Arrow) }]);
      groups.push(this.SUBRULE(this.group));
    });
    return groups;
  });

  private readonly group = this.RULE('group', (): GroupSyntax => {
    const from = this.next();
    const words = this.SUBRULE(this.words);
    const pieces = this.SUBRULE(this.pieces);
    return { words, ...pieces, run: [from, this.next()] };
  });

  protected readonly pieces = this.RULE('pieces', (): Pieces => {
    const values: ValueSyntax[] = [];
    const conditions: ConditionSyntax[] = [];
    this.MANY(() =>
      this.OR([
        { ALT: () => conditions.push(this.SUBRULE(this.condition)) },
        { ALT: () => values.push(this.SUBRULE(this.value)) },
      ]),
    );
    return { values, conditions };
  });

  protected readonly condition = this.RULE('condition', (): ConditionSyntax => {
    const mark = this.at(this.CONSUME(T.At));
    const words = this.SUBRULE(this.words);
    const value = this.OPTION({
      GATE: () => words[0] === words[1] && this.beginsValue(),
      DEF: () => this.SUBRULE(this.value),
    });
    return { mark, value, words, run: [mark, this.next()] };
  });

  protected readonly value = this.RULE('value', (): ValueSyntax => {
    const from = this.next();
    const value = this.OR([
      { ALT: () => this.SUBRULE(this.plain) },
      { ALT: () => this.SUBRULE(this.amount) },
    ]);
    const tail = this.SUBRULE(this.words);
    return { ...value, tail, run: [from, this.next()] } as ValueSyntax;
  });

  private readonly plain = this.RULE('plain', () =>
    this.OR(
      PLAIN.map(([form, token], i) => ({ ALT: () => ({ form, token: this.at(this.consume(i, token)) }) })),
    ),
  );

  private readonly amount = this.RULE('amount', () =>
    this.OR([
      {
        ALT: () => {
          const prefix = this.SUBRULE(this.prefix);
          const size = this.OPTION(() => this.SUBRULE(this.extent));
          return { form: 'amount' as const, ...prefix, ...(size ?? NO_NUMBER) };
        },
      },
      { ALT: () => ({ form: 'amount' as const, ...NO_PREFIX, ...this.SUBRULE1(this.extent) }) },
    ]),
  );

  private readonly prefix = this.RULE('prefix', (): Prefix => {
    const prefix = this.at(this.OR(PREFIXES.map((type, i) => ({ ALT: () => this.consume(i, type) }))));
    const lowSign = this.OPTION({
      GATE: () => NOT_SIGNS.includes(this.LA(0).tokenType),
      DEF: () => this.at(this.CONSUME(T.Minus)),
    });
    return { prefix, lowSign };
  });

  private readonly extent = this.RULE('extent', () => {
    const low = this.SUBRULE(this.number);
    let link: number | undefined;
    let second: Second | undefined;
    this.OPTION(() => {
      link = this.at(
        this.OR([{ ALT: () => this.CONSUME(T.Dots) }, { ALT: () => this.CONSUME(T.PlusMinus) }]),
      );
      second = this.OPTION1({
        GATE: () => !SIGNS.includes(this.LA(1).tokenType) || NUMBERS.includes(this.LA(2).tokenType),
        DEF: () => this.SUBRULE(this.second),
      });
    });
    const inch = this.OPTION2(() =>
      this.at(this.OR1([{ ALT: () => this.CONSUME(T.InchMark) }, { ALT: () => this.CONSUME(T.In) }])),
    );
    return { low, link, ...(second ?? NO_SECOND), inch };
  });

  private readonly second = this.RULE('second', (): Second => {
    const highSign = this.OPTION(() =>
      this.at(this.OR([{ ALT: () => this.CONSUME(T.Minus) }, { ALT: () => this.CONSUME(T.Plus) }])),
    );
    return { highSign, high: this.SUBRULE(this.number) };
  });

  protected readonly number = this.RULE('number', (): number =>
    this.at(this.OR(NUMBERS.map((type, i) => ({ ALT: () => this.consume(i, type) })))),
  );

  /** Words and places. `in` and `out` are words here unless a number follows. */
  protected readonly words = this.RULE(
    'words',
    (): Run =>
      this.run(() =>
        this.MANY({
          GATE: () => !this.beginsValue(),
          DEF: () =>
            this.OR([
              { ALT: () => this.CONSUME(T.Word) },
              { ALT: () => this.CONSUME(T.Cylinder) },
              { ALT: () => this.CONSUME(T.In) },
              { ALT: () => this.CONSUME(T.Out) },
            ]),
        }),
      ),
  );

  protected readonly stray = this.RULE(
    'stray',
    (): Run => this.run(() => this.MANY(() => this.CONSUME(Anything))),
  );

  private beginsValue(): boolean {
    const type = this.LA(1).tokenType;
    if (type === T.In || type === T.Out) return NUMBERS.includes(this.LA(2).tokenType);
    return NUMBERS.includes(type) || PREFIXES.includes(type) || PLAIN.some(([, token]) => token === type);
  }

  protected run(consume: () => unknown): Run {
    const from = this.next();
    consume();
    return [from, this.next()];
  }

  /** The number of the token that comes next; a token's number travels as its offset. */
  protected next(): number {
    const token = this.LA(1);
    return token.tokenType === EOF ? this.count : token.startOffset;
  }

  protected at(token: IToken): number {
    return token.startOffset;
  }
}

function tokenOf(kind: string, number: number): IToken {
  const tokenType = TOKEN_OF_KIND.get(kind) as TokenType;
  return { image: kind, startOffset: number, tokenType, tokenTypeIdx: tokenType.tokenTypeIdx as number };
}
