/** Readings of the air outside, of how far and long the engine was used, and of what it gave. */
import { air, measured, usual } from './vocabulary-row.ts';

export const AIR = [
  air('weather', 'Air of the day: temperature, pressure on the spot, humidity.', 'air, conditions', {
    weather: true,
  }),
  measured('air temperature', 'F', 'Temperature of the air outside.', {
    also: 'ambient, ambient temperature, outside temperature, outside air',
    band: usual(-40, 130, 'where people drive'),
    traits: { weather: true },
  }),
  measured('barometer', 'hPa', 'Pressure of the air outside, not reduced to sea level.', {
    also: 'barometric pressure, air pressure, baro',
    band: usual(500, 1090, 'from high passes to a deep winter high'),
    traits: { unitsLeftOut: ['inHg', 'hPa'], weather: true },
  }),
  measured('humidity', '%RH', 'Relative humidity of the air outside.', {
    also: 'relative humidity',
    bare: true,
    orIn: ['percent'],
    band: usual(0, 100, 'by definition'),
    traits: { weather: true },
  }),
  measured('altitude', 'ft', 'Height above sea level.', {
    also: 'elevation',
    band: usual(-1500, 18000, 'the lowest and highest roads'),
    traits: { weather: true },
  }),
];

export const USE = [
  measured('odometer', 'mi', 'Distance the vehicle has covered.', {
    also: 'odo, distance, miles',
    band: usual(0, 1_000_000, 'by the digits of the counter'),
    traits: { meter: 'km' },
  }),
  measured('hours', 'h', 'Hours the engine has run.', {
    also: 'engine hours, hour meter, hourmeter, hours run, hrs, meter hours, engine hrs',
    bare: true,
    band: usual(0, 50_000, 'by the digits of the counter'),
    traits: { unitsLeftOut: ['h'], meter: 'h' },
  }),
  measured('fuel used', 'gal', 'Fuel burnt since the last fill.', {
    also: 'fuel burnt, fuel burned, fuel consumed, fuel filled, fuel burn',
    traits: { notAResponse: true },
  }),
  measured('fuel economy', 'mpg', 'Distance per amount of fuel.', {
    also: 'economy, mileage, fuel mileage',
    band: usual(2, 100, 'from heavy trucks to light motorcycles'),
  }),
  measured('oil used', 'qt', 'Oil added since the last time.', {
    also: 'oil added',
    traits: { notAResponse: true },
  }),
  measured('torque', 'lb-ft', 'Tightening torque of a fastener, or engine torque on a dynamometer.', {
    also: 'bolt torque, tightened to, torqued, tightened',
    places: ['cylinder', 'bank', 'side'],
    band: usual(1, 2000, 'from small screws to big engines'),
  }),
  measured('power', 'hp', 'Power measured on a dynamometer.', {
    also: 'brake power, wheel power, hp, bhp, belt power, belt hp, pto power, pto hp, drawbar power, drawbar hp',
    band: usual(1, 3000, 'from small engines to racing engines'),
    traits: { unitsLeftOut: ['hp'], needsWarmEngine: true },
  }),
];
