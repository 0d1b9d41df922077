/** Inlay hint. */
import type { Position } from '../../../grammar/index.ts';

export type HintKind = 'total' | 'change' | 'unit' | 'spoken';

export interface Hint {
  /** Right after the last token of the line, before its comment. */
  readonly position: Position;
  readonly kind: HintKind;
  readonly text: string;
  /** What it is, in a few words. */
  readonly about: string;
}

/** A hint without its position. */
export type Remark = Omit<Hint, 'position'>;
