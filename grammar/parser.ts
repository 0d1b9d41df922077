/**
 * Parser: the shape of a line to its tree, one rule for each kind of line. Every piece is optional and leftovers are
 * stray, so that no shape can fail.
 */
import { EOF } from 'chevrotain';
import type { GroupSyntax, LineSyntax, Run, ValueSyntax } from './syntax.ts';
import { Anything, TOKEN as T } from './tokens.ts';
import { type Pieces, ValueParser } from './value-parser.ts';

class LineParser extends ValueParser {
  constructor() {
    super();
    this.performSelfAnalysis();
  }

  /** The tree of a shape. */
  read(kinds: string): LineSyntax {
    this.start(kinds);
    return this.line();
  }

  private readonly line = this.RULE('line', (): LineSyntax => {
    const time = this.SUBRULE(this.time);
    const line = this.OPTION(() => this.SUBRULE(this.body));
    const stray = this.SUBRULE(this.stray);
    return this.ACTION(() => ({ ...(line ?? nothing(time)), time, stray }) as LineSyntax);
  });

  private readonly body = this.RULE('body', () =>
    this.OR([
      { GATE: () => this.LA(2).tokenType === EOF, ALT: () => this.SUBRULE(this.section) },
      { ALT: () => this.SUBRULE(this.conflict) },
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

  private readonly conflict = this.RULE('conflict', () => ({
    kind: 'conflict' as const,
    mark: this.at(this.CONSUME(T.Conflict)),
  }));

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
    const id = this.run(() => {
      this.SUBRULE(this.words);
      this.MANY1({ GATE: () => !this.endsName(), DEF: () => this.CONSUME(Anything) });
    });
    const flags: number[] = [];
    this.OPTION(() => this.CONSUME(T.Colon));
    const text = this.OPTION1(() => this.at(this.CONSUME(T.Prose)));
    this.MANY(() => flags.push(this.at(this.CONSUME(T.Flag))));
    return { kind: 'item' as const, word, id, text, flags };
  });

  /** The response of a trial may have any name, up to its conditions: `plough 1 mile`. */
  private isInName(): boolean {
    return this.LA(1).tokenType !== T.At;
  }

  /** An item's name may contain any character, up to its colon or its flag. */
  private endsName(): boolean {
    const type = this.LA(1).tokenType;
    return type === T.Colon || type === T.Prose || type === T.Flag;
  }

  private readonly fit = this.RULE('fit', () => ({
    kind: 'fit' as const,
    word: this.at(this.CONSUME(T.Fit)),
    part: this.SUBRULE(this.words),
    text: this.OPTION(() => this.at(this.CONSUME(T.Text))),
  }));

  private readonly check = this.RULE('check', () => {
    this.CONSUME(T.Check);
    const words = this.run(() => {
      this.SUBRULE(this.words);
      this.OPTION1(() => {
        this.CONSUME(T.Colon);
        this.SUBRULE1(this.words);
      });
    });
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
    const response = this.run(() =>
      this.MANY1({ GATE: () => this.isInName(), DEF: () => this.CONSUME(Anything) }),
    );
    const under = this.run(() => this.MANY(() => this.SUBRULE(this.condition)));
    return { kind: 'trial' as const, knob, arrow, response, under };
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
}

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
