import { NO_PROBLEMS, rule } from './rule.ts';

export const portUnsaid = rule({
  code: 'port-unsaid',
  severity: 'information',
  title: 'A port of which nothing is said',
  why: 'Every port is connected or capped. One that is named without either may be a leak that nobody has looked for.',
  standing: 'common practice',
  good: 'ports\n  manifold rear capped\n',
  bad: 'ports\n  manifold rear\n',
  on: ['port'],
  check({ name, nameSpan, on, path }) {
    if (name === '' || path.length > 0 || (on !== undefined && on !== '')) return NO_PROBLEMS;
    return [
      { span: nameSpan, message: `Nothing is said of the port ${name}: what is on it, or is it capped?` },
    ];
  },
});
