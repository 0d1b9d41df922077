import { unaccounted } from '../../model/entry/every-word-counts.ts';
import { EVERY_KIND } from '../lib/kinds.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { offerOf } from '../lib/written-as.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const wordLeftOver = rule({
  code: 'word-left-over',
  severity: 'warning',
  title: 'A word with no part in what the line means',
  why: 'A line counts only if every word and number on it has a part in its meaning. With one left over it says something else than was read, so nothing of it is in force. A remark goes in quotes or behind a semicolon.',
  standing: 'notation',
  good: 'session 2026-05-02\n  initial 9 deg "by the book"\n',
  bad: 'engine\n  compression 8.4:1 roughly\n',
  on: EVERY_KIND,
  isLastResort: true,
  check(entry, { before }) {
    if (!entry.isVoid) return NO_PROBLEMS;
    const { line, offers = [] } = entry;
    const [first] = unaccounted(entry, before.section);
    const message = first
      ? `"${first.text}" has no part in what the line means, so nothing of it is in force. Put a remark in quotes or behind ";", or keep the line as a note.`
      : 'What this line means is not clear, so nothing of it is in force.';
    return [
      {
        span: first?.span ?? lineSpan(line),
        message,
        fixes: (offers.length > 0 ? offers : [[`note ${line.text.trim()}`]]).map((offer) =>
          offerOf(line, offer),
        ),
      },
    ];
  },
});
