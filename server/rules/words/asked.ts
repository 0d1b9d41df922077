import type { AskedEntry } from '../../model/entry/entry.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { isNote, offerOf } from '../lib/written-as.ts';
import { type Problem, rule } from '../rule.ts';

export const asked = rule({
  code: 'asked',
  severity: 'information',
  title: 'A line that may mean several things',
  why: 'A line in plain speech counts where it can mean one thing only. This one can mean several, or depends on something that is not written on it. Until one is chosen, nothing of the line is in force.',
  standing: 'notation',
  good: 'session 2026-05-02\n  idle 850 rpm in neutral\n',
  bad: 'session 2026-05-02\n  idle 850 rpm in neutral\n  back to 800\n',
  on: ['asked'],
  check: (entry) => (entry.safety ? [] : [problemOf(entry)]),
});

function problemOf({ line, question, offers, doubts, head }: AskedEntry): Problem {
  const [likeliest = []] = offers;
  const isRemark = likeliest.every((each) => /^(?:note|todo)\b/.test(each));
  const understood =
    !isRemark && head !== 'elsewhere'
      ? `Perhaps ${likeliest.map((each) => `"${each}"`).join(' and ')}. `
      : '';
  const moved = [...new Set(doubts.map(({ name }) => name))].join(' and ');
  const so = head
    ? head === 'undated'
      ? ' A day begins here all the same.'
      : ''
    : ` Nothing of this line is in force${moved && `, and ${moved} is in doubt from here on`}.`;
  const fixes = offers.map((offer) => offerOf(line, offer));
  // A choice, even where there is one reading: what is offered is never taken as sure.
  const note = offers.some(isNote) ? [] : [offerOf(line, [`note ${line.text.trim()}`])];
  return { span: lineSpan(line), message: `${understood}${question}${so}`, fixes: [...fixes, ...note] };
}
