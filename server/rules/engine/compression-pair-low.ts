import { judgeSet } from '../../analysis/engine/compression-test.ts';
import { type CylinderSet, setsOfLine, shownByLine } from '../../analysis/engine/cylinder-readings.ts';
import { cylinderSpan } from '../lib/cylinder-span.ts';
import { rule } from '../rule.ts';

export const compressionPairLow = rule({
  code: 'compression-pair-low',
  severity: 'warning',
  title: 'Two adjacent cylinders low on compression',
  why: 'One low cylinder has many possible causes. Two next to each other point first to the head gasket leaking between them. Which cylinders are adjacent is taken from the banks, or from an inline layout.',
  standing: 'published',
  source: 'factory service manuals of several makers',
  good: 'engine\n  cylinders 4\n  layout inline\nsession 2026-05-02\n  compression 150 148 152 149 psi\n',
  bad: 'engine\n  cylinders 4\n  layout inline\nsession 2026-05-02\n  compression 150 96 98 149 psi\n',
  outranks: ['compression-low'],
  on: ['reading'],
  about: ({ name }) => name === 'compression',
  check(entry, context) {
    return setsOfLine(context, 'compression').flatMap((line) => {
      const lowPairs = (set: CylinderSet) => judgeSet(context.after, set)?.verdicts[0]?.lowPairs ?? [];
      return shownByLine(line, lowPairs, (pair) => pair).flatMap(([one, other]) => {
        const [a, b] = [one, other].map((each) => cylinderSpan(entry, each));
        if (!a || !b) return [];
        const span = { from: Math.min(a.from, b.from), to: Math.max(a.to, b.to) };
        return [
          {
            span,
            message: `Adjacent cylinders ${one} and ${other} are both under 75 % of the highest. Suspect the head gasket between them (published: factory service manuals).`,
          },
        ];
      });
    });
  },
});
