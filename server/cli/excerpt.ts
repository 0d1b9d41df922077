/** An excerpt of a line around a spot, as wide as there is room for. */
import { type Span, widthOf } from '../../grammar/index.ts';
import { visible } from './layout.ts';

interface Excerpt {
  readonly text: string;
  /** Columns before the spot, and its width; at least one, so that something missing can be pointed at. */
  readonly before: number;
  readonly width: number;
}

const UNLIMITED = 160;
const NARROWEST = 20;
const MARGIN = 4;
const MORE = '…';

/** `columns`: those of the terminal, undefined where it is none. A long line is cut around the spot, with an ellipsis on each side. */
export function excerpt(line: string, span: Span, columns: number | undefined): Excerpt {
  const room = Math.max(NARROWEST, (columns ?? UNLIMITED) - 2 * MARGIN);
  const { from, to } = windowAround(line, span, room);
  const [head, tail] = [from > 0 ? MORE : '', to < line.length ? MORE : ''];
  const shown = (a: number, b: number) => visible(line.slice(Math.max(a, from), Math.min(b, to)));
  const before = widthOf(head + shown(from, span.from));
  return {
    text: head + shown(from, to) + tail,
    before,
    width: Math.max(1, Math.min(widthOf(shown(span.from, span.to)), room - before)),
  };
}

/** All of a short line; of a long one the stretch that begins a little before the spot. */
function windowAround(line: string, span: Span, room: number): Span {
  if (line.length <= room) return { from: 0, to: line.length };
  const lead = Math.floor(room / 4);
  const from = Math.max(0, Math.min(span.from - lead, line.length - room));
  return { from, to: Math.min(line.length, from + room) };
}
