/** Width of a text in columns of a fixed-width font. */

const GRAPHEMES = new Intl.Segmenter(undefined, { granularity: 'grapheme' });
const WIDE =
  /^(?:\p{Emoji_Presentation}|.*\u{FE0F}|[\u1100-\u115F\u2E80-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6])/u;
const ONLY_ASCII = /^[ -~]*$/;

/** Columns the text takes up: two for an emoji or an ideograph, one for any other visible character. */
export function widthOf(text: string): number {
  if (ONLY_ASCII.test(text)) return text.length;
  let width = 0;
  for (const { segment } of GRAPHEMES.segment(text)) width += WIDE.test(segment) ? 2 : 1;
  return width;
}
