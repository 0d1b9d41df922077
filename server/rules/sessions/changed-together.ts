import { workGroupOf } from '../../trade/practice/work-groups.ts';
import { isResponse } from '../../trade/vocabulary/quantity.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const changedTogether = rule({
  code: 'changed-together',
  severity: 'hint',
  title: 'Several things changed before a reading',
  why: 'With two changes since the last reading, this one cannot be credited to either. Change one, take a reading, then change the other, and each shows its own effect in the table of known effects.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  initial 9 deg\n  mixture 1 1/2 turns\n  idle 820 rpm in neutral\n  initial 11 deg\n  idle 850 rpm in neutral\n',
  bad: 'session 2026-05-02\n  initial 9 deg\n  mixture 1 1/2 turns\n  idle 820 rpm in neutral\n  initial 11 deg\n  mixture in 1/4 turn\n  idle 850 rpm in neutral\n',
  on: ['reading'],
  about: isResponse,
  check(entry, { before }) {
    const { changesSinceReading: turned } = before;
    if (new Set(turned.map(({ name }) => workGroupOf(name))).size < 2) return NO_PROBLEMS;
    const names = turned.map(({ name }) => name);
    return [
      {
        span: entry.name,
        message: `${listText(names)} were changed since the last reading, so this one cannot be credited to any of them alone.`,
        related: turned.map(({ name, by }) => ({ origin: by, message: `${name} changed` })),
      },
    ];
  },
});

const listText = (names: readonly string[]): string =>
  `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;
