/** Units held to NIST SP 811 and to the packages mathjs and @lhncbc/ucum-lhc. */
import ucumPackage from '@lhncbc/ucum-lhc';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { convert, UNITS, unitById } from '../../server/trade/measure/units.ts';

/** Our id, the unit of ours it is compared in, then the two as mathjs and as UCUM write them. */
interface Reference {
  readonly id: string;
  readonly into: string;
  readonly mathjs?: readonly [string, string];
  readonly ucum?: readonly [string, string];
  /** Relative; the factors the packages keep rounded are given room for just that. */
  readonly within?: number;
}

const REFERENCES: readonly Reference[] = [
  { id: 'hPa', into: 'Pa', mathjs: ['hPa', 'Pa'], ucum: ['hPa', 'Pa'] },
  { id: 'kPa', into: 'Pa', mathjs: ['kPa', 'Pa'], ucum: ['kPa', 'Pa'] },
  { id: 'MPa', into: 'Pa', mathjs: ['MPa', 'Pa'], ucum: ['MPa', 'Pa'] },
  { id: 'mbar', into: 'Pa', mathjs: ['mbar', 'Pa'], ucum: ['mbar', 'Pa'] },
  { id: 'bar', into: 'Pa', mathjs: ['bar', 'Pa'], ucum: ['bar', 'Pa'] },
  { id: 'atm', into: 'Pa', mathjs: ['atm', 'Pa'], ucum: ['atm', 'Pa'] },
  { id: 'psi', into: 'Pa', mathjs: ['psi', 'Pa'], ucum: ['[psi]', 'Pa'], within: 1e-9 },
  { id: 'kgf/cm2', into: 'Pa', mathjs: ['kgf/cm^2', 'Pa'], ucum: ['kgf/cm2', 'Pa'] },
  { id: 'inHg', into: 'Pa', ucum: ["[in_i'Hg]", 'Pa'], within: 4e-6 },
  { id: 'mmHg', into: 'Pa', mathjs: ['mmHg', 'Pa'], ucum: ['mm[Hg]', 'Pa'], within: 4e-6 },
  { id: 'cmHg', into: 'Pa', ucum: ['cm[Hg]', 'Pa'], within: 4e-6 },
  { id: 'inH2O', into: 'Pa', ucum: ["[in_i'H2O]", 'Pa'] },
  { id: 'mmH2O', into: 'Pa', mathjs: ['mmH2O', 'Pa'], ucum: ['mm[H2O]', 'Pa'] },
  { id: 'F', into: 'C', mathjs: ['degF', 'degC'], ucum: ['[degF]', 'Cel'] },
  { id: 'K', into: 'C', mathjs: ['K', 'degC'], ucum: ['K', 'Cel'] },
  { id: 'cm', into: 'mm', mathjs: ['cm', 'mm'], ucum: ['cm', 'mm'] },
  { id: 'm', into: 'mm', mathjs: ['m', 'mm'], ucum: ['m', 'mm'] },
  { id: 'um', into: 'mm', mathjs: ['um', 'mm'], ucum: ['um', 'mm'] },
  { id: 'in', into: 'mm', mathjs: ['inch', 'mm'], ucum: ['[in_i]', 'mm'] },
  { id: 'thou', into: 'mm', mathjs: ['mil', 'mm'], ucum: ['[mil_i]', 'mm'] },
  { id: 'ft', into: 'mm', mathjs: ['ft', 'mm'], ucum: ['[ft_i]', 'mm'] },
  { id: 'mi', into: 'km', mathjs: ['mi', 'km'], ucum: ['[mi_i]', 'km'] },
  { id: 'nmi', into: 'km', ucum: ['[nmi_i]', 'km'] },
  { id: 'cm2', into: 'mm2', mathjs: ['cm^2', 'mm^2'], ucum: ['cm2', 'mm2'] },
  { id: 'in2', into: 'mm2', mathjs: ['sqin', 'mm^2'], ucum: ['[sin_i]', 'mm2'] },
  { id: 'L', into: 'cc', mathjs: ['L', 'cc'], ucum: ['L', 'cm3'] },
  { id: 'cu-in', into: 'cc', mathjs: ['cuin', 'cc'], ucum: ['[cin_i]', 'cm3'] },
  { id: 'cu-ft', into: 'cc', mathjs: ['cuft', 'cc'], ucum: ['[cft_i]', 'cm3'] },
  { id: 'gal', into: 'cc', mathjs: ['gallon', 'cc'], ucum: ['[gal_us]', 'cm3'] },
  { id: 'imp-gal', into: 'cc', ucum: ['[gal_br]', 'cm3'] },
  { id: 'qt', into: 'cc', mathjs: ['quart', 'cc'], ucum: ['[qt_us]', 'cm3'] },
  { id: 'pt', into: 'cc', mathjs: ['pint', 'cc'], ucum: ['[pt_us]', 'cm3'] },
  { id: 'imp-pt', into: 'cc', ucum: ['[pt_br]', 'cm3'] },
  { id: 'fl-oz', into: 'cc', mathjs: ['floz', 'cc'], ucum: ['[foz_us]', 'cm3'] },
  { id: 'kg', into: 'g', mathjs: ['kg', 'g'], ucum: ['kg', 'g'] },
  { id: 'tonne', into: 'g', mathjs: ['tonne', 'g'], ucum: ['t', 'g'] },
  { id: 'lb', into: 'g', mathjs: ['lbm', 'g'], ucum: ['[lb_av]', 'g'] },
  { id: 'oz', into: 'g', mathjs: ['oz', 'g'], ucum: ['[oz_av]', 'g'] },
  { id: 'lbf', into: 'N', mathjs: ['lbf', 'N'], ucum: ['[lbf_av]', 'N'] },
  { id: 'kgf', into: 'N', mathjs: ['kgf', 'N'], ucum: ['kgf', 'N'] },
  { id: 'lb/in', into: 'N/mm', mathjs: ['lbf/in', 'N/mm'], ucum: ['[lbf_av]/[in_i]', 'N/mm'] },
  { id: 'lb-ft', into: 'Nm', mathjs: ['lbf ft', 'N m'], ucum: ['[lbf_av].[ft_i]', 'N.m'] },
  { id: 'lb-in', into: 'Nm', mathjs: ['lbf in', 'N m'], ucum: ['[lbf_av].[in_i]', 'N.m'] },
  { id: 'kgf-m', into: 'Nm', mathjs: ['kgf m', 'N m'], ucum: ['kgf.m', 'N.m'] },
  { id: 'hp', into: 'kW', mathjs: ['hp', 'kW'], ucum: ['[HP]', 'kW'], within: 1e-9 },
  { id: 'mph', into: 'km/h', mathjs: ['mi/h', 'km/h'], ucum: ['[mi_i]/h', 'km/h'] },
  { id: 'kn', into: 'km/h', ucum: ['[kn_i]', 'km/h'] },
  { id: 'm/s', into: 'km/h', mathjs: ['m/s', 'km/h'], ucum: ['m/s', 'km/h'] },
  { id: 'ms', into: 's', mathjs: ['ms', 's'], ucum: ['ms', 's'] },
  { id: 'min', into: 's', mathjs: ['minute', 's'], ucum: ['min', 's'] },
  { id: 'h', into: 's', mathjs: ['hour', 's'], ucum: ['h', 's'] },
  { id: 'day', into: 's', mathjs: ['day', 's'], ucum: ['d', 's'] },
  { id: 'week', into: 's', mathjs: ['week', 's'], ucum: ['wk', 's'] },
  { id: 'cfm', into: 'L/min', mathjs: ['cuft/minute', 'L/minute'], ucum: ['[cft_i]/min', 'L/min'] },
  { id: 'm3/h', into: 'L/min', mathjs: ['m^3/h', 'L/minute'], ucum: ['m3/h', 'L/min'] },
  { id: 'L/h', into: 'cc/min', mathjs: ['L/h', 'cc/minute'], ucum: ['L/h', 'cm3/min'] },
  { id: 'gph', into: 'cc/min', mathjs: ['gallon/h', 'cc/minute'], ucum: ['[gal_us]/h', 'cm3/min'] },
  { id: 'mpg', into: 'km/L', mathjs: ['mi/gallon', 'km/L'], ucum: ['[mi_i]/[gal_us]', 'km/L'] },
  { id: 'imp-mpg', into: 'km/L', ucum: ['[mi_i]/[gal_br]', 'km/L'] },
  {
    id: 'deg/bar',
    into: 'deg/psi',
    mathjs: ['deg/bar', 'deg/psi'],
    ucum: ['deg/bar', 'deg/[psi]'],
    within: 1e-9,
  },
  { id: 'mV', into: 'V', mathjs: ['mV', 'V'], ucum: ['mV', 'V'] },
  { id: 'kV', into: 'V', mathjs: ['kV', 'V'], ucum: ['kV', 'V'] },
  { id: 'mA', into: 'A', mathjs: ['mA', 'A'], ucum: ['mA', 'A'] },
  { id: 'kohm', into: 'ohm', mathjs: ['kohm', 'ohm'], ucum: ['kOhm', 'Ohm'] },
];

/** Neither package knows these; each says what holds it instead. */
const HELD_OTHERWISE: Readonly<Record<string, string>> = {
  PS: 'NIST table below',
  flat: 'a hexagon',
  'deg-atdc': 'the sign alone',
  'dist-deg': 'two turns of the crank',
  'dist-rpm': 'two turns of the crank',
};

/** NIST SP 811 (2008) app. B.8, as printed: to seven figures. */
const NIST: readonly (readonly [string, string, number])[] = [
  ['inHg', 'Pa', 3386.389],
  ['inH2O', 'Pa', 249.0889],
  ['mmHg', 'Pa', 133.3224],
  ['cmHg', 'Pa', 1333.224],
  ['psi', 'Pa', 6894.757],
  ['atm', 'Pa', 101325],
  ['lb-ft', 'Nm', 1.355818],
  ['lb-in', 'Nm', 0.1129848],
  ['in', 'mm', 25.4],
  ['gal', 'L', 3.785412],
  ['imp-gal', 'L', 4.54609],
  ['cu-in', 'cc', 16.38706],
  ['hp', 'kW', 0.7456999],
  ['PS', 'kW', 0.7354988],
  ['lb', 'kg', 0.4535924],
  ['lbf', 'N', 4.448222],
  ['mi', 'km', 1.609344],
  ['cfm', 'L/min', 28.31685],
];

const at = [-40, 0, 1, 98.6, 750];

describe('outside references', () => {
  const mathjs = REFERENCES.filter((row) => row.mathjs);
  it.each(mathjs)('mathjs: $id', ({ id, into, mathjs: names, within = 1e-12 }) => {
    for (const value of at) {
      const theirs = mathUnit(value, names?.[0] ?? '').toNumber(names?.[1] ?? '');
      near(convert(value, unitById(id), unitById(into)), theirs, within, id);
    }
  });

  const ucum = REFERENCES.filter((row) => row.ucum);
  it.each(ucum)('UCUM: $id', ({ id, into, ucum: names, within = 1e-12 }) => {
    for (const value of at) {
      const answer = ucumPackage.UcumLhcUtils.getInstance().convertUnitTo(
        names?.[0] ?? '',
        value,
        names?.[1] ?? '',
      );
      near(convert(value, unitById(id), unitById(into)), answer.toVal ?? Number.NaN, within, id);
    }
  });

  it.each(NIST)('NIST SP 811: %s in %s', (from, into, printed) => {
    const lastFigure = 10 ** (Math.floor(Math.log10(printed)) - 6);
    const difference = Math.abs(convert(1, unitById(from), unitById(into)) - printed);
    expect(difference).toBeLessThanOrEqual(0.500001 * lastFigure);
  });

  it('leave no unit out', () => {
    const held = new Set([...REFERENCES.map((row) => row.id), ...Object.keys(HELD_OTHERWISE)]);
    const free = UNITS.filter((unit) => (unit.factor !== 1 || unit.offset) && !held.has(unit.id));
    expect(free.map((unit) => unit.id)).toEqual([]);
  });
});

/** Relative to the value; for a temperature, whose nought is elsewhere, relative to the way between the noughts. */
function near(ours: number, theirs: number, within: number, id: string): void {
  const floor = unitById(id).dimension === 'temperature' ? 500 : 0;
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(within * Math.max(Math.abs(theirs), floor));
}
