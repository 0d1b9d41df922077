/** The map of ports and the ways of fluids. */
import { describe } from 'vitest';
import { testFigures } from '../harness/figures.ts';

const ports = (...sections: readonly string[]): string =>
  sections
    .map(
      (section) =>
        `ports\n${section
          .split(' | ')
          .map((line) => `  ${line}\n`)
          .join('')}`,
    )
    .join('');

describe('ports', () => {
  testFigures([
    {
      say: 'each with what is on it',
      book: ports('manifold rear brake booster | manifold front capped | carb base canister'),
      figure: 'ports',
      text: ['2 connected, 1 capped'],
      rows: ['manifold rear | brake booster | connected', 'manifold front | - | capped'],
    },
    {
      say: 'an open one behind the throttle leaks, another does not',
      book: ports('manifold rear open | rocker cover: open'),
      figure: 'ports',
      text: ['2 open; manifold rear is open: a vacuum leak'],
    },
    {
      say: 'one thing on two ports',
      book: ports('manifold rear brake booster | manifold front brake booster'),
      figure: 'ports',
      text: ['2 connected; brake booster is on two ports'],
    },
    {
      say: 'connected and capped',
      book: ports('manifold rear brake booster, capped'),
      figure: 'ports',
      text: ['1 connected and capped'],
    },
    {
      say: 'nothing said',
      book: ports('manifold rear'),
      figure: 'ports',
      rows: ['manifold rear | - | not given'],
    },
    {
      say: 'a later section moves a hose, and the port it was on is not accounted for',
      book: ports('manifold rear brake booster | manifold front capped', 'manifold front brake booster'),
      figure: 'ports',
      text: ['1 connected, 1 not given'],
      rows: [
        'manifold rear | moved to manifold front | not given',
        'manifold front | brake booster | connected',
      ],
    },
    {
      say: 'until it is',
      book: ports('manifold rear brake booster', 'manifold front brake booster | manifold rear capped'),
      figure: 'ports',
      text: ['1 connected, 1 capped'],
    },
    { say: 'no ports', book: 'session 2026-05-02\n  idle 800 rpm\n', figure: 'ports', text: [] },
  ]);
});

describe('ways', () => {
  testFigures([
    {
      say: 'in order, and no port of the map',
      book: ports('coolant: pump -> block -> radiator | manifold rear capped'),
      figure: 'path of the coolant',
      text: ['pump -> block -> radiator'],
    },
    {
      say: 'an auxiliary cooler before the main one',
      book: ports('gearbox oil: gearbox -> aux cooler -> radiator'),
      figure: 'path of the gearbox oil',
      text: [
        'gearbox -> aux cooler -> radiator; the small cooler gets the hottest fluid: run it through the large one first',
      ],
    },
    {
      say: 'and instead of it',
      book: ports('gearbox oil: gearbox -> small cooler -> gearbox'),
      figure: 'path of the gearbox oil',
      text: [
        'gearbox -> small cooler -> gearbox; a small cooler on its own is meant to trim what a large one leaves',
      ],
    },
    {
      say: 'after it nothing is odd',
      book: ports('gearbox oil: gearbox -> radiator -> auxiliary cooler -> gearbox'),
      figure: 'path of the gearbox oil',
      text: ['gearbox -> radiator -> auxiliary cooler -> gearbox'],
    },
    {
      say: 'fuel with its caution',
      book: ports('fuel: tank -> filter -> pump -> carburettor'),
      figure: 'path of the fuel',
      caution: 'no flame',
    },
    {
      say: 'a port has no way',
      book: ports('manifold rear capped'),
      figure: 'path of the manifold rear',
      text: [],
    },
  ]);
});
