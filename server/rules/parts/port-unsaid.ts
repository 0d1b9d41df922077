import { NO_PROBLEMS, rule } from '../rule.ts';

export const portUnsaid = rule({
  code: 'port-unsaid',
  severity: 'information',
  title: 'A port that is neither connected nor capped',
  why: 'Every port is connected or capped. One listed with neither may be a leak that nobody has looked for.',
  standing: 'common practice',
  good: 'ports\n  manifold rear capped\n',
  bad: 'ports\n  manifold rear\n',
  on: ['port'],
  check({ name, nameSpan, on, path }) {
    if (name === '' || path.length > 0 || (on !== undefined && on !== '')) return NO_PROBLEMS;
    return [{ span: nameSpan, message: `Port "${name}": what is connected to it, or is it capped?` }];
  },
});
