import { parseTyreSize } from '../trade/road.ts';
import { NO_PROBLEMS, rule } from './rule.ts';

export const tyreUnreadable = rule({
  code: 'tyre-unreadable',
  severity: 'information',
  title: 'A tyre size that tells no diameter',
  why: 'Speeds and slip are worked out from the diameter. A metric size has it in it: width, height in per cent of it, and rim. Of any other the diameter is measured.',
  standing: 'published',
  source: 'UN ECE Regulation 30',
  good: 'vehicle\n  tyre 185/65R15\n',
  bad: 'vehicle\n  tyre "big blocks"\n',
  on: ['fact'],
  about: ({ name }) => name === 'tyre',
  check({ text, said }, { before: { facts } }) {
    if (!text || parseTyreSize(text) || facts.has('tyre diameter|')) return NO_PROBLEMS;
    return [
      {
        span: said[0]?.span ?? { from: 0, to: 0 },
        message: `"${text}" tells no diameter: write it as 185/65R15, or give "tyre diameter" above.`,
      },
    ];
  },
});
