/** What is said of ports, and the order of coolers. */
import { expect, test } from 'vitest';
import { coolerPositions, isVacuumPort, portState } from '../../server/trade/sums/ports.ts';

test.each<[on: string, thing: string, state: string]>([
  ['brake booster', 'brake booster', ''],
  ['capped', '', 'capped'],
  ['capped off', '', 'capped'],
  ['blanked', '', 'capped'],
  ['open', '', 'open'],
  ['nothing', '', 'open'],
  ['brake booster, capped', 'brake booster', 'capped'],
  ['brake booster and capped', 'brake booster', 'capped'],
  ['open air valve', 'air valve', 'open'],
  ['offset valve', 'offset valve', ''],
  ['plugwash', 'plugwash', ''],
  ['', '', ''],
])('%j', (on, thing, state) => {
  const found = portState(on);
  expect(found.thing).toBe(thing);
  expect([found.capped ? 'capped' : '', found.open ? 'open' : ''].join('')).toBe(state);
});

test.each<[name: string, vacuum: boolean]>([
  ['manifold rear', true],
  ['carb base', true],
  ['vacuum tee', true],
  ['rocker cover', false],
  ['sump', false],
])('%s', (name, vacuum) => expect(isVacuumPort(name)).toBe(vacuum));

test.each<[path: string, order: string | undefined]>([
  ['pump -> block -> radiator', undefined],
  ['gearbox -> radiator -> aux cooler', undefined],
  ['gearbox -> aux cooler -> radiator', 'auxiliary before main'],
  ['gearbox -> small cooler', 'no main'],
  ['gearbox -> cooler', undefined],
  ['gearbox -> oil cooler -> extra cooler -> gearbox', undefined],
  ['tank -> small filter -> pump', undefined],
  ['', undefined],
])('%s', (path, order) => expect(coolerPositions(path.split(' -> '))).toBe(order));
