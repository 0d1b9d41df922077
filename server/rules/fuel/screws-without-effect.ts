import { readTrial } from '../../analysis/trials/trial.ts';
import type { State } from '../../model/state/state.ts';
import { PLATES_TOO_FAR_OPEN } from '../../trade/practice/idle-screws.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

/** Number of rows from which, and up to which, a trial without response is reported. */
const ROWS = { fewest: 3, most: 12 };

export const screwsWithoutEffect = rule({
  code: 'screws-without-effect',
  severity: 'information',
  title: 'Mixture screws without effect',
  why: 'Where turning a mixture screw in makes no difference, the engine is not getting its idle fuel through that screw. Most often the throttle plates are so far open that the transfer slot feeds it.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  trial mixture -> idle\n    1 turn 780 rpm\n    1 1/4 turns 820 rpm\n    1 1/2 turns 850 rpm\n',
  bad: 'session 2026-05-02\n  trial mixture -> idle\n    1 turn 820 rpm\n    1 1/4 turns 820 rpm\n    1 1/2 turns 820 rpm\n',
  on: ['row'],
  check({ values, line }, { before, after }) {
    const rows = after.trial?.rows.size ?? 0;
    if (!after.trial || rows < ROWS.fewest || rows > ROWS.most) return NO_PROBLEMS;
    const { knob, response, fit } = readTrial(after.trial, after.words);
    if (knob.quantity?.name !== 'mixture' || !fit?.flat || isReportedAbove(before)) return NO_PROBLEMS;
    const [first, last] = [values[0], values.at(-1)];
    const span = { from: first?.span.from ?? 0, to: last?.span.to ?? line.text.length };
    return [{ span, message: messageOf(response.name) }];
  },
});

const isReportedAbove = ({ trial, words }: State): boolean =>
  trial !== undefined && trial.rows.size >= ROWS.fewest && readTrial(trial, words).fit?.flat !== undefined;

const messageOf = (response: string): string =>
  `The mixture screws don't change the ${response}: ${PLATES_TOO_FAR_OPEN} (common practice, no source).`;
