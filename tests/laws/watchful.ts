/** A check that speaks of every line and leans on all that a check may lean on, so that nothing stale goes unseen. */
import type { Check } from '../../server/model/snapshot/finding.ts';

export const watchful: Check = (entry, { before, after, where, lookUp }) => {
  if (entry.kind === 'blank') return [];
  const settings = [...after.settings.values()];
  const asked =
    entry.kind === 'revert' && entry.date
      ? lookUp({ of: 'day', date: entry.date, asking: before.session?.by.ref })
      : undefined;
  return [
    {
      code: entry.kind,
      severity: 'hint',
      span: { from: 0, to: entry.line.text.length },
      message: JSON.stringify([
        [before.session?.date, after.section, where.date],
        settings.map(({ quantity, place, values, words }) => [quantity.name, place, values, words]),
        [...after.items.keys(), ...after.fitted.keys(), ...after.readings.keys()],
        asked && 'settings' in asked && [...asked.settings.keys()],
      ]),
      related: [...settings, ...after.latest.values(), ...after.items.values()].map(({ by }) => ({
        origin: by,
        message: 'said here',
      })),
      fixes: [],
    },
  ];
};
