/** The form of a remark behind what is written. */
import type { Position } from '../../../grammar/index.ts';

export type HintKind = 'total' | 'change' | 'unit' | 'spoken';

export interface Hint {
  /** Right behind the last thing the line says, before its comment. */
  readonly position: Position;
  readonly kind: HintKind;
  readonly text: string;
  /** What it is, in a few words. */
  readonly about: string;
}

/** A hint, wherever it will stand. */
export type Remark = Omit<Hint, 'position'>;
