import { sessionAir } from '../../analysis/air/session-air.ts';
import { inWords, readingOf } from '../../analysis/inputs.ts';
import { monotone, scale } from '../../trade/measure/interval.ts';
import { standardAtmosphere } from '../../trade/sums/air.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

const ABOUT: ReadonlySet<string> = new Set(['weather', 'barometer', 'altitude']);

/** The most that weather moves the barometer from the standard pressure. */
const WEATHER_PASCALS = 4000;

export const barometerAtSeaLevel = rule({
  code: 'barometer-at-sea-level',
  severity: 'warning',
  title: 'Sea-level pressure written at an altitude',
  why: 'Forecasts and many gauges give the pressure corrected to sea level. Air density, power correction and jetting need the pressure at the place itself, which drops about 1 inHg per 1000 ft.',
  standing: 'published',
  source: 'ICAO Doc 7488, Manual of the ICAO Standard Atmosphere',
  good: 'session 2026-05-02\n  altitude 5000 ft\n  weather 15 C, 845 hPa, 40 %RH\n',
  bad: 'session 2026-05-02\n  altitude 5000 ft\n  weather 15 C, 1016 hPa, 40 %RH\n',
  on: ['reading'],
  about: ({ name }) => ABOUT.has(name),
  check({ line }, { after }) {
    const altitude = readingOf(after, 'altitude', 'm');
    const read = altitude && sessionAir(after).pascals?.value;
    if (!altitude || !read) return NO_PROBLEMS;
    const standard = monotone(altitude.value, (metres) => standardAtmosphere(metres).pascals);
    if (read.low <= standard.high + WEATHER_PASCALS) return NO_PROBLEMS;
    const hPa = (pascals: typeof standard) => inWords(scale(pascals, 0.01), 'hPa', 1);
    return [
      {
        span: lineSpan(line),
        message: `${hPa(read)} is too high for ${altitude.input.value}, where the standard atmosphere is ${hPa(standard)}. Is it corrected to sea level? Write the pressure at the place itself (published, ICAO Doc 7488).`,
        related: [{ origin: altitude.by, message: 'Altitude' }],
      },
    ];
  },
});
