/** Input and result of the hover builders. */
import type { Span } from '../../../grammar/index.ts';
import type { Files } from '../../model/snapshot/named-files.ts';
import type { LineState } from '../../model/snapshot/page.ts';
import type { Snapshot } from '../../model/snapshot/snapshot.ts';
import type { UnitChoice } from '../units.ts';

export interface HoverQuestion {
  readonly snapshot: Snapshot;
  /** From zero. */
  readonly line: number;
  readonly column: number;
  /** The line as read. */
  readonly reading: LineState;
  readonly units: UnitChoice;
  /** Files the line names, where somebody read them. */
  readonly files?: Files;
}

export interface HoverAnswer {
  /** The columns it is about. */
  readonly span: Span;
  /** Markdown that reads in a narrow window: short lines, and tables only for figures. */
  readonly text: string;
}
