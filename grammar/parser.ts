/**
 * The shape of a line to its tree: one rule for each kind of line. Every piece is optional and leftovers are stray,
 * so that no shape can fail.
 */
import { EmbeddedActionsParser, EOF, type IToken, type TokenType } from 'chevrotain';
import type { ConditionSyntax, GroupSyntax, LineSyntax, Run, ValueSyntax } from './syntax.ts';
import { Anything, TOKEN, TOKEN_OF_KIND } from './tokens.ts';

const T = TOKEN;
const NUMBERS: readonly TokenType[] = [T.Number, T.Fraction, T.Mixed, T.CommaNumber];
const PREFIXES: readonly TokenType[] = [T.About, T.Bound, T.Plus, T.Minus, T.In, T.Out];
const PLAIN = [
  ['text', T.Text],
  ['date', T.Date],
  ['clock', T.Clock],
  ['ratio', T.Ratio],
  ['order', T.Order],
] as const;

class LineParser extends EmbeddedActionsParser {
  constructor() {
    super([Anything, ...Object.values(T)], { maxLookahead: 1, recoveryEnabled: false });
    this.performSelfAnalysis();
  }

  /** The tree of a shape. */
  read(kinds: string): LineSyntax {
    this.count = kinds.length;
    this.input = [...kinds].map(tokenOf);
    return this.line();
  }

  private count = 0;

  private readonly line = this.RULE('line', (): LineSyntax => {
    const time = this.SUBRULE(this.time);
    const line = this.OPTION(() => this.SUBRULE(this.body));
    const stray = this.SUBRULE(this.stray);
    return this.ACTION(() => ({ ...(line ?? nothing(time)), time, stray }) as LineSyntax);
  });

  private readonly body = this.RULE('body', () =>
    this.OR([
      { GATE: () => this.LA(2).tokenType === EOF, ALT: () => this.SUBRULE(this.section) },
      { ALT: () => this.SUBRULE(this.notebook) },
      { ALT: () => this.SUBRULE(this.session) },
      { ALT: () => this.SUBRULE(this.note) },
      { ALT: () => this.SUBRULE(this.item) },
      { ALT: () => this.SUBRULE(this.fit) },
      { ALT: () => this.SUBRULE(this.check) },
      { ALT: () => this.SUBRULE(this.file) },
      { ALT: () => this.SUBRULE(this.keep) },
      { ALT: () => this.SUBRULE(this.revert) },
      { ALT: () => this.SUBRULE(this.trial) },
      { ALT: () => this.SUBRULE(this.want) },
      { ALT: () => this.SUBRULE(this.recheck) },
      { ALT: () => this.SUBRULE(this.entry) },
      { ALT: () => this.SUBRULE(this.row) },
    ]),
  );

  private readonly time = this.RULE(
    'time',
    (): Run =>
      this.run(() =>
        this.OPTION(() =>
          this.OR([
            { ALT: () => this.CONSUME(T.Clock) },
            {
              ALT: () => {
                this.CONSUME(T.Plus);
                this.OPTION1(() => this.SUBRULE(this.number));
                this.OPTION2(() => this.CONSUME(T.Word));
              },
            },
          ]),
        ),
      ),
  );

  private readonly notebook = this.RULE('notebook', () => {
    this.CONSUME(T.Notebook);
    return { kind: 'notebook' as const, title: this.OPTION(() => this.at(this.CONSUME(T.Prose))) };
  });

  private readonly section = this.RULE('section', () => ({
    kind: 'section' as const,
    word: this.at(this.CONSUME(T.Section)),
  }));

  private readonly session = this.RULE('session', () => {
    this.CONSUME(T.Session);
    const date = this.OPTION(() =>
      this.at(this.OR([{ ALT: () => this.CONSUME(T.Date) }, { ALT: () => this.CONSUME(T.Order) }])),
    );
    const clock = this.OPTION1(() => this.at(this.CONSUME(T.Clock)));
    return {
      kind: 'session' as const,
      date,
      clock,
      title: this.OPTION2(() => this.at(this.CONSUME(T.Prose))),
    };
  });

  private readonly note = this.RULE('note', () => {
    this.CONSUME(T.Note);
    return { kind: 'note' as const, text: this.OPTION(() => this.at(this.CONSUME(T.Prose))) };
  });

  private readonly item = this.RULE('item', () => {
    const word = this.at(this.CONSUME(T.Item));
    const id = this.SUBRULE(this.words);
    const flags: number[] = [];
    this.OPTION(() => this.CONSUME(T.Colon));
    const text = this.OPTION1(() => this.at(this.CONSUME(T.Prose)));
    this.MANY(() => flags.push(this.at(this.CONSUME(T.Flag))));
    return { kind: 'item' as const, word, id, text, flags };
  });

  private readonly fit = this.RULE('fit', () => ({
    kind: 'fit' as const,
    word: this.at(this.CONSUME(T.Fit)),
    part: this.SUBRULE(this.words),
    text: this.OPTION(() => this.at(this.CONSUME(T.Text))),
  }));

  private readonly check = this.RULE('check', () => {
    this.CONSUME(T.Check);
    const words = this.SUBRULE(this.words);
    return { kind: 'check' as const, words, text: this.OPTION(() => this.at(this.CONSUME(T.Text))) };
  });

  private readonly file = this.RULE('file', () => ({
    kind: 'file' as const,
    word: this.at(this.CONSUME(T.File)),
    path: this.OPTION(() =>
      this.at(this.OR([{ ALT: () => this.CONSUME(T.Text) }, { ALT: () => this.CONSUME(T.Prose) }])),
    ),
  }));

  private readonly keep = this.RULE('keep', () => {
    this.CONSUME(T.Keep);
    return { kind: 'keep' as const, text: this.OPTION(() => this.at(this.CONSUME(T.Prose))) };
  });

  private readonly revert = this.RULE('revert', () => {
    this.CONSUME(T.Revert);
    this.OPTION(() => this.CONSUME(T.To));
    return { kind: 'revert' as const, date: this.OPTION1(() => this.at(this.CONSUME(T.Date))) };
  });

  private readonly trial = this.RULE('trial', () => {
    this.CONSUME(T.Trial);
    const knob = this.SUBRULE(this.words);
    const arrow = this.OPTION(() => this.at(this.CONSUME(T.Arrow)));
    return { kind: 'trial' as const, knob, arrow, response: this.SUBRULE1(this.words) };
  });

  private readonly want = this.RULE('want', () => {
    this.CONSUME(T.Want);
    return { kind: 'want' as const, groups: this.SUBRULE(this.groups) };
  });

  private readonly recheck = this.RULE('recheck', () => {
    this.CONSUME(T.Recheck);
    const name = this.SUBRULE(this.words);
    const after = this.OPTION(() => this.at(this.CONSUME(T.After)));
    return { kind: 'recheck' as const, name, after, groups: this.SUBRULE(this.groups) };
  });

  private readonly entry = this.RULE('entry', () => {
    const head = this.run(() => {
      this.OR([{ ALT: () => this.CONSUME(T.Word) }, { ALT: () => this.CONSUME(T.Section) }]);
      this.SUBRULE(this.words);
    });
    this.OPTION(() => this.CONSUME(T.Colon));
    return { kind: 'entry' as const, head, groups: this.SUBRULE(this.groups) };
  });

  /** A line that begins with a value, or with the name of a size: `#7 drill  9.5 deg`. */
  private readonly row = this.RULE('row', () => {
    const from = this.next();
    const first = this.OR([{ ALT: () => this.SUBRULE(this.size) }, { ALT: () => this.SUBRULE(this.value) }]);
    const pieces = this.SUBRULE(this.pieces);
    const run: Run = [from, this.next()];
    const more = this.SUBRULE(this.moreGroups);
    return { kind: 'row' as const, groups: this.ACTION(() => [rowGroup(first, pieces, run), ...more]) };
  });

  private readonly size = this.RULE(
    'size',
    (): Run =>
      this.run(() => {
        this.CONSUME(T.Cylinder);
        this.SUBRULE(this.words);
      }),
  );

  private readonly groups = this.RULE('groups', (): GroupSyntax[] => {
    const first = this.SUBRULE(this.group);
    const more = this.SUBRULE(this.moreGroups);
    return this.ACTION(() => [first, ...more]);
  });

  private readonly moreGroups = this.RULE('moreGroups', (): GroupSyntax[] => {
    const groups: GroupSyntax[] = [];
    this.MANY(() => {
      this.CONSUME(T.Comma);
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

  private readonly pieces = this.RULE('pieces', (): Pieces => {
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

  private readonly condition = this.RULE('condition', (): ConditionSyntax => {
    const mark = this.at(this.CONSUME(T.At));
    const words = this.SUBRULE(this.words);
    const value = this.OPTION({
      GATE: () => words[0] === words[1] && this.beginsValue(),
      DEF: () => this.SUBRULE(this.value),
    });
    return { mark, value, words, run: [mark, this.next()] };
  });

  private readonly value = this.RULE('value', (): ValueSyntax => {
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
          return { form: 'amount' as const, prefix, ...(size ?? NO_NUMBER) };
        },
      },
      { ALT: () => ({ form: 'amount' as const, prefix: undefined, ...this.SUBRULE1(this.extent) }) },
    ]),
  );

  private readonly prefix = this.RULE('prefix', (): number =>
    this.at(this.OR(PREFIXES.map((type, i) => ({ ALT: () => this.consume(i, type) })))),
  );

  private readonly extent = this.RULE('extent', () => {
    const low = this.SUBRULE(this.number);
    let link: number | undefined;
    let high: number | undefined;
    this.OPTION(() => {
      link = this.at(
        this.OR([{ ALT: () => this.CONSUME(T.Dots) }, { ALT: () => this.CONSUME(T.PlusMinus) }]),
      );
      high = this.OPTION1(() => this.SUBRULE1(this.number));
    });
    const inch = this.OPTION2(() =>
      this.at(this.OR1([{ ALT: () => this.CONSUME(T.InchMark) }, { ALT: () => this.CONSUME(T.In) }])),
    );
    return { low, link, high, inch };
  });

  private readonly number = this.RULE('number', (): number =>
    this.at(this.OR(NUMBERS.map((type, i) => ({ ALT: () => this.consume(i, type) })))),
  );

  /** Words and places. `in` and `out` are words here unless a number follows. */
  private readonly words = this.RULE(
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

  private readonly stray = this.RULE(
    'stray',
    (): Run => this.run(() => this.MANY(() => this.CONSUME(Anything))),
  );

  private beginsValue(): boolean {
    const type = this.LA(1).tokenType;
    if (type === T.In || type === T.Out) return NUMBERS.includes(this.LA(2).tokenType);
    return NUMBERS.includes(type) || PREFIXES.includes(type) || PLAIN.some(([, token]) => token === type);
  }

  private run(consume: () => unknown): Run {
    const from = this.next();
    consume();
    return [from, this.next()];
  }

  /** The number of the token that comes next; a token's number travels as its offset. */
  private next(): number {
    const token = this.LA(1);
    return token.tokenType === EOF ? this.count : token.startOffset;
  }

  private at(token: IToken): number {
    return token.startOffset;
  }
}

type Pieces = Pick<GroupSyntax, 'values' | 'conditions'>;

const NO_NUMBER = { low: undefined, link: undefined, high: undefined, inch: undefined };

function rowGroup(first: Run | ValueSyntax, { values, conditions }: Pieces, run: Run): GroupSyntax {
  return 'form' in first
    ? { words: [run[0], run[0]], values: [first, ...values], conditions, run }
    : { words: first, values, conditions, run };
}

/** A line without a body: blank, or a time that nothing follows. */
const nothing = (time: Run) =>
  time[0] === time[1] ? { kind: 'blank' } : { kind: 'entry', head: [time[1], time[1]], groups: [] };

const parser = new LineParser();

/** The tree of a shape (the kinds of a line's tokens, comment left out). Any string of kinds has one. */
export function parseShape(kinds: string): LineSyntax {
  return parser.read(kinds);
}

function tokenOf(kind: string, number: number): IToken {
  const tokenType = TOKEN_OF_KIND.get(kind) as TokenType;
  return { image: kind, startOffset: number, tokenType, tokenTypeIdx: tokenType.tokenTypeIdx as number };
}
