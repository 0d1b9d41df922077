/** More of what plain speech calls things of the trade, by what they are. Data only; lower case. Common practice, no source. */

/** What they may be, in the order of likelihood, the value says which; then what they are called. */
const ROWS: readonly (readonly [means: string, called: string])[] = [
  [
    'hours',
    'hr meter, hours meter, hour clock, hr clock, hrs clock, engine hour meter, tach hours, hours on her, hours on it, clock hours',
  ],
  [
    'odometer',
    'odometer reading, on clock, mileage on clock, mls, trip meter, tacho km, km stand, clocked, speedo reads',
  ],
  [
    'governed speed',
    'govnr, govenor, govner, governer, goverened, governor spring, governor set, gov spd, governor spd, governed revs, governor revs, gov rpm, gov revs, top governed',
  ],
  [
    'engine speed',
    'tacho, rev counter, rev meter, revcounter, finger tach, hand tach, dial tach, pulling speed, working revs, working speed, engine revs, motor revs, eng speed, eng rpm',
  ],
  [
    'idle',
    'slow idle, low idle, base idle, idle set, tick over revs, tick over speed, tickover revs, tickover speed, ticking over at, ticks over at, idling speed, standgas, slow speed idle, curb idle speed, low idle speed, idle rev, idles at',
  ],
  ['fast idle', 'fast tickover, cold tickover, choke tickover, fast idle rpm, choke revs, fast idle revs'],
  [
    'wide open speed',
    'wot speed, revs flat out, max rpm, full chat, wide open revs, top rpm, full throttle revs, full bore',
  ],
  ['cranking speed', 'cranking revs, starter speed, cranks at, cranking over at'],
  ['speed', 'gps, road spd, top spd, boat spd, cruise speed, cruising speed, flat out speed'],
  [
    'initial',
    'base lead, ign timing static, static ignition timing, static ign, initial ign, initial lead, idle timing base, base ignition, timing base, base tmg, init timing, initial tmg',
  ],
  ['initial|timing', 'ign, ign timing, ignition timing, ignition advance, ign advance, tmg'],
  [
    'total',
    'total adv, total ign, full adv, timing full, all up timing, all in total, total lead, full lead',
  ],
  ['total', 'tot, ttl, max advance, max adv'],
  ['cruise total', 'cruise adv, part throttle advance, light load advance'],
  ['all in', 'all in at, full in by, all in rpm, all adv in, all the advance in by'],
  ['mechanical limit', 'bob weights, mech limit advance, centrif, centrifugal adv, mech total'],
  ['vacuum limit', 'vac can total, vac max, can limit, vac total, vacuum total'],
  ['dwell', 'dwell mtr, dwell meter, dwell angel, points angle, contact angle'],
  [
    'points gap',
    'trip mag points, trip points, mag contacts, magneto gap, ignitor points, contact points gap, point, cb points, cb gap, c b points, c/b points, breaker point gap, ignition points gap, pts gap, points opening',
  ],
  [
    'plug gap',
    'plug gaps, spark gap, plugs set, electrodes, sparkplug gap, sparkplug, sparkplugs, spark plugs, spark plug, plugs gap',
  ],
  ['condenser', 'cond, condensor, condensers, capacitor'],
  [
    'coil resistance|coil',
    'coil, ign coil, coil primary, primary, coil prim, coil res, coil ohms, coil measures, coil low side',
  ],
  [
    'lead resistance|plug leads',
    'leads, ht lead, ht leads, plug wire, plug wires, plug lead, plug leads, king lead, coil lead',
  ],
  ['ballast', 'ballast resistance, ballast res, ballast wire, resistor wire'],
  ['impulse lag', 'impulse trip, trip lag, impulse clicks at, trips at, mag impulse'],
  ['thermostat', 't stat, tstat, therm, opening stat'],
  ['radiator cap', 'rad pressure cap, filler cap, cooling cap'],
  [
    'valve lash',
    'valve clear, vlv lash, vlv gap, valves set, valves gapped, tappets set, tappet gaps, rocker gap, rocker gaps, rocker clearance, valve adjust, valve lashes, lashes, inlet tappets, cam followers, valve clr',
  ],
  ['lifter preload', 'lifter turn, preloads, lifters preload'],
  ['wastegate', 'waste gate, wg'],
  ['boost', 'blower pressure, manifold boost, blower boost, boost gauge, boost gage'],
  ['boost', 'boost psi, peak boost, max boost'],
  ['blower ratio', 'blower overdrive, blower underdrive'],
  [
    'tyre pressure',
    'tyres pressure, tire psi, tyre psi, tires psi, tyre press, tire press, tyres cold, tires cold, air in tires, air in the tyres, pumped tyres, pneus, reifen',
  ],
  ['propeller pitch', 'prop p, wheel pitch, propellor pitch'],
  [
    'mixture',
    'idle mixtures, mix screw, mix, mixture scrs, idle mix screw, idle mix screws, airscrew, airscrews, air screws, pilot air screw, pilot air screws, air bleed screw, volume screw, volume screws, fuel screw, fuel screws, idle air screw, slow running mixture, slow mix, jet nut, mixture nut, co screw, mixtures, idle fuel screw, lo needle',
  ],
  ['main needle|mixture', 'mixture needle, mix needle, needle valve, mixture valve, needle screw'],
  ['main jet|main needle', 'main, mains, main adjuster'],
  [
    'main needle',
    'main needles, main adjustment, power needle, high mixture, load mixture, high side needle, h needle, hi speed needle, main needle screw, load jet needle',
  ],
  [
    'idle screw',
    'stop screw, speed stop, thr stop, throttle stop scr, tickover stop, idle stop scr, tick over screw, idle adj, idle adjuster, throttle adjuster, slow running stop',
  ],
  ['secondary jet', 'secs, secnds, sec mains, secondary mains, secs jet, rear jets, secs jets, back jets'],
  [
    'main jet',
    'primary mains, front jets, prim mains, mj, main jts, mainjet, mainjets, main jet nr, high speed jet, jets main',
  ],
  ['idle jet', 'pj, slow jets, slows, pilot jets, pilot nr, low speed jet, idle jets size, slow run jet'],
  [
    'air bleed',
    'airbleed, airbleeds, air correctors, air jets, correctors, corrector, hi bleed, hi bleeds, high bleed, high bleeds, air corr, main bleeds',
  ],
  ['idle air bleed', 'idle bleeds, low bleed, low bleeds, idle airs'],
  ['power valve', 'powervalve, power vlv, pwr valve, power valves'],
  [
    'float level',
    'float lvl, float heights, float ht, fuel lvl, fuel level, fuel levels, petrol level, bowl lvl, float bowl level, float bowl levels, float chambers, float chamber, float chamber level, chamber level, float set, floats set, float levels, wet level, dry float, floater, float gap',
  ],
  ['float drop', 'float drops, drop float'],
  ['pump shot', 'acc pump shot, accel shot, pump shots, shots, pump squirts'],
  ['pump nozzle', 'shooter, shooters, pump jets, discharge nozzles, nozzle, squirter size'],
  ['choke cable', 'choke cable free play, choke wire slack'],
  ['choke pull off', 'pulloff, choke pulloff, vac break, choke gap, choke break'],
  [
    'needle clip',
    'needle notch, needle slot, clip notch, clip slot, needle on clip, clip on, needle in notch',
  ],
  ['needle seat', 'float seat, needle n seat, needle/seat, inlet valve seat, seats'],
  ['venturi', 'venturis, venturies, choke tubes, chokes size'],
  ['fuel regulator', 'reg, fuel reg, petrol regulator, reg set, regulator set'],
  [
    'fuel pressure',
    'fuel press, fp, petrol pressure, fuel psi, fuel gauge pressure, pump press, lift pump pressure, fuel pr',
  ],
  ['fuel line', 'feed pipe, fuel feed'],
  [
    'depression',
    'vac reading, vacumn, vaccuum, man vac, manifold vacm, intake vacuum, vacuum reads, vac reads, engine vacuum, vacuum at manifold, vacs, inlet vacuum, inlet depression, vac on the gauge',
  ],
  [
    'depression|carburettor balance',
    'balance, carb sync, sync gauges, vacuum sync, carb synch, synch, synchronized, synced, balanced',
  ],
  ['oil pressure|oil temperature|oil used', 'oil, engine oil, motor oil'],
  [
    'oil pressure',
    'oil psi, op, oil pr, oil gage, oil gauge reading, oil press gauge, oil pressures, oilpress',
  ],
  ['oil temperature', 'oil t, sump temp, sump temperature, oil temps, oil thermometer'],
  [
    'oil used',
    'oil added, oil topped up, added oil, oil put in, topped oil, oil burnt, oil burned, oil consumption',
  ],
  [
    'water',
    'tempature, tempreture, temprature, temp gage, temperature gauge, temperature gage, heat gauge, heat gage, water gage, water temps, eng temp, engine temperature, motor temp, rad temperature, water t, cooling water, water outlet, outlet temp, thermometer, coolant temps, coolant temperature, jacket, hopper, hopper temp, hopper temperature, temp needle, temp guage, engine water, waterjacket, engine temps',
  ],
  [
    'head temperature',
    'cht, head tmp, cyl head temperature, spark plug temp, plug washer temp, cylinder temp, cylinder temps, cht gauge, barrel temp',
  ],
  ['egt', 'exh temp, exh gas temp, exhaust temps, exhaust temperatures, exh temps, egt probe, pyros'],
  [
    'tube',
    'header pipe temp, pipe temps, pipes temp, tube temp, tube temps, exh tubes, header pipes, primary tubes, infrared pipes',
  ],
  [
    'gearbox temperature',
    'trans oil temp, trans oil, tranny, tranny temp, box temp, gearbox oil temp, gbox temp, transmission oil',
  ],
  [
    'intake temperature',
    'iat, inlet air temp, intake air, carb air, carb air temp, inlet air, charge air, manifold temp, carb temp',
  ],
  [
    'compression',
    'cyl pressure, cyl pressures, cylinder pressure, cylinder pressures, comps test, cranking comp, cranking comps, cold comps, compr, kompr, wet comps, dry comps',
  ],
  ['leak down', 'leakdowns, leak test, leakdown, leak dn, leak rate'],
  ['crankcase pressure', 'blowby, blow-by, crankcase press, case pressure'],
  ['back pressure', 'exh back pressure, backpressure, exhaust backpressure, exhaust pressure'],
  ['air fuel ratio', 'a f r, afrs, air/fuel, air fuel, o2 gauge, wide band, mix ratio, wbo2, air to fuel'],
  ['lambda', 'lam, lambdas, lambda probe, lambda reading'],
  [
    'carbon monoxide',
    'co reading, tailpipe co, co level, co at tailpipe, co at idle, co meter, sniffer co, cos',
  ],
  ['hydrocarbons', 'hcs, hydro carbons, unburnt, hc reading, hc ppm'],
  ['coolant', 'antifreeze, anti-freeze, anti freeze'],
  ['oxygen', 'o2 reading, o two'],
  [
    'carburettor balance',
    'flow, carb flow, airflow reading, flow reading, balance meter, carb balance meter, carb meter',
  ],
  [
    'volts',
    'bat, batterie, battery v, bat volts, batt volts, battery reads, voltage at idle, dynamo, generator, alternator, dyno volts, gen, alt, system volts, charge voltage, charging volts, charge rate volts, volt, vdc',
  ],
  [
    'air temperature',
    'ambient temp, amb, oat, out side, shade temp, air temp, outside temp, shop temp, temp outside',
  ],
  ['barometer', 'baro pressure, bar pressure, glass reads, glass reading, station pressure'],
  ['humidity', 'rh, hum, humid, rel humidity'],
  ['altitude', 'alt ft, height above sea, elev'],
  [
    'fuel used',
    'fuel in, fuel burned, gas used, petrol used, fill up, fillup, fuel fill, tanked, refuelled, refueled, fuel put in, gas put in, tank took, fuel taken, topped up tank, brim to brim, took on',
  ],
  [
    'fuel economy',
    'to the gal, to a gallon, per gallon, a gallon, miles per gallon, miles to the gallon, fuel consumption, petrol consumption, mpgs, avg mpg, mls per gallon, to gallon',
  ],
  [
    'power',
    'bhp, horsepower, brake horsepower, wheel hp, wheel horsepower, hp at the wheels, rwhp, horses, ponies, leistung, dyno hp, at the flywheel',
  ],
  ['torque', 'trq, tq, peak torque, best torque, max torque, drehmoment'],
  ['run time', 'run took, pull took, timed pull, stopwatch'],
  ['rev limit', 'redline, red line, limiter, rev cut'],
  [
    'dashpot oil',
    'damper oils, dash pot oil, dash pots, dash pot, damper pots, piston dampers, piston damper',
  ],
  ['smoke', 'smoked, exhaust smoke, smoking, exhaust haze'],
  ['knock', 'pinkin, pinging, pinking, pinks, pinkd, pinked, knocks under load'],
];

export const SLANG: readonly (readonly [name: string, means: readonly string[]])[] = ROWS.flatMap(
  ([means, called]) => called.split(', ').map((name) => [name, means.split('|')] as const),
);
