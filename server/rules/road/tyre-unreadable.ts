import { parseTyreSize } from '../../trade/sums/road.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const tyreUnreadable = rule({
  code: 'tyre-unreadable',
  severity: 'information',
  title: 'A tyre size that gives no diameter',
  why: 'Speeds and slip are worked out from the diameter. A metric size includes it: width, height as a percentage of width, and rim. For any other size, measure the diameter.',
  standing: 'published',
  source: 'UN ECE Regulation 30',
  good: 'vehicle\n  tyre 185/65R15\n',
  bad: 'vehicle\n  tyre "big blocks"\n',
  on: ['fact'],
  about: ({ name }) => name === 'tyre',
  check({ text, statements: said }, { before: { facts } }) {
    if (!text || parseTyreSize(text) || facts.has('tyre diameter|')) return NO_PROBLEMS;
    return [
      {
        span: said[0]?.span ?? { from: 0, to: 0 },
        message: `"${text}" gives no diameter. Write the size as 185/65R15, or measure it and write "tyre diameter" above.`,
      },
    ];
  },
});
