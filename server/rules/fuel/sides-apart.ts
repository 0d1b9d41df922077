import { farApart, mixtureSides, SIDES_APART } from '../../analysis/fuel/idle-readings.ts';
import { settingText } from '../../model/state/setting-text.ts';
import { formatValue } from '../../trade/measure/format.ts';
import { exact } from '../../trade/measure/interval.ts';
import { unitById } from '../../trade/measure/units.ts';
import { rule } from '../rule.ts';

export const sidesApart = rule({
  code: 'sides-apart',
  severity: 'information',
  title: 'Mixture screws far apart side to side',
  why: 'Two sides fed alike need about the same turns. A screw that ends up far from its partner is making up for something else: an air leak, a blocked passage, a float, throttle plates that do not close alike.',
  standing: 'common practice',
  good: 'session 2026-05-02\n  mixture left 1 1/4 turns, right 1 1/2 turns\n',
  bad: 'session 2026-05-02\n  mixture left 1 turn, right 1 3/4 turns\n',
  on: ['setting'],
  about: ({ name }) => name === 'mixture',
  check(entry, { after, where }) {
    return mixtureSides(after.settings)
      .filter((pair) => farApart(pair) && (pair.left.by === where || pair.right.by === where))
      .map(({ left, right }) => {
        const other = left.by === where ? right : left;
        const own = other === right ? left : right;
        const span = entry.statements.find(({ place }) => place?.text === own.place)?.span ?? entry.name;
        return {
          span,
          message: `Mixture ${left.place} is at ${settingText(left)}, ${right.place} at ${settingText(right)}. They usually end up within about ${formatValue(exact(SIDES_APART), unitById('turn'))} of each other: look for another cause on one side (common practice, no source).`,
          related: other.by === where ? [] : [{ origin: other.by, message: `Mixture ${other.place}` }],
        };
      });
  },
});
