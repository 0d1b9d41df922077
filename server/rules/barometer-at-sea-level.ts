import { airOf } from '../model/figures/day-air.ts';
import { inWords, readingOf } from '../model/figures/known.ts';
import { standardAtmosphere } from '../trade/air.ts';
import { monotone, scale } from '../trade/interval.ts';
import { NO_PROBLEMS, rule } from './rule.ts';
import { lineSpan } from './syntax.ts';

const AIR: ReadonlySet<string> = new Set(['weather', 'barometer', 'altitude']);

/** Weather moves the barometer by less than this about the standard. */
const WEATHER_PASCALS = 4000;

export const barometerAtSeaLevel = rule({
  code: 'barometer-at-sea-level',
  severity: 'warning',
  title: 'A pressure that belongs to sea level, at an altitude',
  why: 'Forecasts and many gauges give the pressure reduced to sea level. Density, corrections and jets follow the pressure at the place, which falls by about 1 inHg each 1000 ft.',
  standing: 'published',
  source: 'ICAO Doc 7488, Manual of the ICAO Standard Atmosphere',
  good: 'session 2026-05-02\n  altitude 5000 ft\n  weather 15 C, 845 hPa, 40 %RH\n',
  bad: 'session 2026-05-02\n  altitude 5000 ft\n  weather 15 C, 1016 hPa, 40 %RH\n',
  on: ['reading'],
  about: ({ name }) => AIR.has(name),
  check({ line }, { after }) {
    const altitude = readingOf(after, 'altitude', 'm');
    const air = altitude && airOf(after);
    if (!altitude || !air) return NO_PROBLEMS;
    const standard = monotone(altitude.value, (metres) => standardAtmosphere(metres).pascals);
    if (air.pascals.low <= standard.high + WEATHER_PASCALS) return NO_PROBLEMS;
    const hPa = (pascals: typeof standard) => inWords(scale(pascals, 0.01), 'hPa', 1);
    return [
      {
        span: lineSpan(line),
        message: `At ${altitude.input.value} the standard atmosphere has ${hPa(standard)} (published, ICAO Doc 7488), and ${hPa(air.pascals)} is written: is that reduced to sea level? The sums want the pressure at the place.`,
        related: [{ origin: altitude.by, message: 'the altitude' }],
      },
    ];
  },
});
