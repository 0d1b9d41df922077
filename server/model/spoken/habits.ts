/** What a notebook's habits give a spoken line, and what is handed back. */
import type { SectionKind } from '../entry/entry.ts';

/** All optional: what is not known is not assumed. */
export interface Habits {
  readonly units?: 'us' | 'imperial' | 'metric';
  readonly dayOrder?: 'day first' | 'month first';
  /** Of the last session, ISO 8601. */
  readonly date?: string;
  readonly section?: SectionKind;
  readonly cylinders?: number;
  /** Places the notebook has written of its carburettors: `front carb`, `rear carb`. */
  readonly places?: readonly string[];
  readonly gearbox?: 'automatic' | 'manual';
  /** How the idle mixture is set: jets wound under a bridge, or screws. */
  readonly wound?: 'jets' | 'screws';
  /** By the word of the trade: the unit last written with it. */
  readonly used?: ReadonlyMap<string, string>;
  /** The session's lines so far as they were read, the latest last. */
  readonly lines?: readonly string[];
}

/**
 * - `spoken`: one reading. - `asked`: several, or one that leans on an earlier line. - `note`: a remark, no complaint.
 * - `unread`: nothing was understood.
 */
export interface SpokenReading {
  readonly status: 'spoken' | 'asked' | 'note' | 'unread';
  /** Lines of the notation: what is to be read, or what was understood so far. */
  readonly as: readonly string[];
  /** Whole readings to choose from, the likeliest first; the lines of one are joined by ` | `. */
  readonly offers: readonly string[];
  readonly safety: boolean;
  /** Settings that moved, nobody knows how far. */
  readonly doubts: readonly { readonly name: string; readonly place?: string }[];
  /** What is not known, in plain English. */
  readonly question?: string;
}

export const UNREAD: SpokenReading = { status: 'unread', as: [], offers: [], safety: false, doubts: [] };

export const spokenAs = (as: readonly string[]): SpokenReading => ({ ...UNREAD, status: 'spoken', as });
export const noteOf = (text: string): SpokenReading => ({
  ...UNREAD,
  status: 'note',
  as: [`note ${text.trim()}`],
});
export const asked = (
  question: string,
  offers: readonly string[],
  more: Partial<SpokenReading> = {},
): SpokenReading => ({
  ...UNREAD,
  status: 'asked',
  question,
  offers: [...new Set(offers)].slice(0, 3),
  ...more,
});
