/** The settings as the manifest offers them, and as they may come from anywhere. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { DEFAULT_SETTINGS, settingsFrom } from '../../server/lsp/settings.ts';

const manifest = JSON.parse(readFileSync(join(import.meta.dirname, '../../package.json'), 'utf8'));
const offered = manifest.contributes.configuration.properties;
const units: Readonly<Record<string, { readonly enum: readonly string[] }>> =
  offered['tappet.units'].properties;
const levels: Readonly<Record<string, { readonly enum: readonly string[] }>> =
  offered['tappet.severity'].properties;

test.each(Object.entries(units))('every unit offered for %s is understood', (topic, row) => {
  const understood = row.enum.map(
    (unit) => [...settingsFrom({ units: { [topic]: unit } }).units.values()][0]?.symbol,
  );
  expect(understood).toEqual(row.enum.map((unit) => (unit === 'as written' ? undefined : unit)));
});

test('every rule and level offered is understood', () => {
  for (const [code, row] of Object.entries(levels))
    for (const level of row.enum)
      expect(settingsFrom({ severity: { [code]: level } }).levels.get(code)).toBe(level);
});

test('a folder has its own settings of all that is about what is written in it', () => {
  const own = Object.keys(offered).filter((name) => offered[name].scope === 'resource');
  expect(Object.keys(offered).filter((name) => !own.includes(name))).toEqual([
    'tappet.holdBack',
    'tappet.trace.server',
  ]);
});

test('the defaults are the same on both sides', () => {
  expect(DEFAULT_SETTINGS.holdBack).toBe(offered['tappet.holdBack'].default);
  expect(settingsFrom({ holdBack: offered['tappet.holdBack'].maximum + 1 }).holdBack).toBe(
    offered['tappet.holdBack'].maximum,
  );
});

test('hints: each kind by its switch, all of them by one', () => {
  const chosen = (hints: object) => [...settingsFrom({ hints }).hints];
  const defaults = ['totals', 'changes', 'units'].filter((name) => offered[`tappet.hints.${name}`].default);
  expect(defaults).toEqual(['totals', 'changes']);
  expect(chosen({})).toEqual(['total', 'change']);
  expect(chosen({ totals: false, units: true })).toEqual(['change', 'unit']);
  expect(chosen({ enabled: false, units: true })).toEqual([]);
  expect(chosen({ enabled: 'no', changes: 3 })).toEqual(['total', 'change']);
});

test.each([
  [undefined],
  [null],
  ['loud'],
  [[]],
  [{ severity: 'off', units: 3, holdBack: 'long' }],
  [
    {
      severity: { 'no-such-rule': 'off' },
      units: { temperature: 'furlong', time: 's' },
      holdBack: Number.NaN,
    },
  ],
])('%j counts as nothing set', (section) => expect(settingsFrom(section)).toEqual(DEFAULT_SETTINGS));
