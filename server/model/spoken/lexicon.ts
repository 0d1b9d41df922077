/** What words of plain speech do in a line. Data only; lower case. Common practice, no source. */

const set = (words: string): ReadonlySet<string> => new Set(words.trim().split(/\s+/));
const pairs = (words: string): ReadonlyMap<string, string> =>
  new Map(
    words
      .trim()
      .split(',')
      .map((pair) => pair.trim().split(': ') as [string, string]),
  );

/** How or when a value was read; they stand beside it. */
export const REMARKS = set(`
  carbs carburettors corners cylinders   hot cold warm infrared ir gas probe crank crankshaft engine distributor dist manifold ported plugged capped vacuum connected
  cruise throttle wide open closed full half light heavy load road water cranking boost off on new old set wot dry wet static
  strobe torqued tightened steady fluctuating hunting wobbling drifting flicking swinging running lumpy smooth rough
  no without choke fan gps shade sun uphill downhill loaded empty both all of the bottom top sight hole plug glass as found
  corrected uncorrected other way only four two six eight round flat level approx average clockwise anticlockwise each ea with oil squirt lights
`);

/** Gears and states of running that a condition may name. */
export const STATES = set(`
  idle neutral drive park reverse ahead astern gear first second third fourth fifth top low high overdrive 1st 2nd 3rd 4th 5th
  6th cruise cruising wot load full throttle wide open no part speed d n p r
`);

/** Something is wrong. */
export const TROUBLES = set(`
  bulged bulges sparking   overflow overflows overflowing overflowed seep seeps seeping spray sprays spraying spurts pours pouring drip drips dripping dripped weep weeps weeping wept leak leaks leaking leaked leaky crack cracks cracked fray frays frayed
  fraying stick sticks sticking stuck sticky jam jams jammed jamming hang hangs hanging hung loose smell smells smelled smelling
  smelt smoking fumes pull pulling kick kicked kicks kickback bare chafed chafing chafes rub rubs rubbing rubbed burnt
  burning burned fire flame flames spit spits spat spitting backfire backfires backfired backfiring popping dead broke broken
  breaks  split torn ripped perished rotten rusty rusted corroded seized seizing stiff  wobbly wobble wobbles
  shakes rattles rattle rattling squeals squeal squealing grinds grinding slips slipping drags dragging creeps creep creeping
  failed fails missing stripped blown bulging swollen  spongy  sparks arcing arcs shorting shorted  hesitates
  dies died stalls stalled stalling floods flooding flooded overheats overheated overheating boils boiled boiling blowing
  puffing vibrates vibration shudder shudders snags snagged catches binds binding bind       
  chewed  kinked pinched 
`);

/** Faults that stand in the way of a run wherever they touch one of `EXPOSED`. */
export const DANGERS = set(`
  bulged bulges sparking   perished brittle cooked boiled boils boiling burnt blown blew exploded snapped sheared shear bent twisted wobble wobbles wobbly bald flat puncture punctured spilled spilt spill spills pouring pours puddle damp fuming dim dark faded kinked
  chewed pinched split splitting swelled leaker slack play slop sloppy wobbling shaking rubs scraping grinding grinds grabbing locked jumping jumps jumped slips slipping slipped melted scorched charred singed haze stiff disconnected
  overflow overflows overflowing overflowed flood floods flooding flooded seep seeps seeping spray sprays spraying spurts pours pouring drip drips dripping dripped weep weeps weeping wept leak leaks leaking leaked leaky crack cracks cracked fray frays frayed
  fraying stick sticks sticking stuck sticky jam jams jammed jamming hang hangs hanging hung loose smell smells smelled smelling
  smelt smoke smokes smoking fumes pull pulls pulling kick kicked kicks kickback bare chafed chafing chafes rub rubs rubbing burnt
  burning burned fire flame flames spit spits spat backfire backfires backfired backfiring dead broke broken bent
  split torn ripped perished rotten seized seizing creeps creep creeping failed fails fade fades faded fading grabs grab snatches
  shock sparks arcing arcs shorting shorted bulging swollen soft spongy slow locks locked out wanders wander hot
  binds binding bind drags stiff snags worn missing gone sinks low disconnected adrift glowing glows red melted melting melts
  bilge off
`);

/** What must not fail: fuel, throttle, brakes, steering, lights, fire, hot or turning parts. */
export const EXPOSED = set(`
  flexi flexis hub hubs lug lugs horn light nav headlamp headlamps sidelight sidelights stoplight indicator indicators blinker blinkers wiper wipers seatbelt axle kingpin kingpins tie ball wheelnuts wheelnut spoke spokes rim rims shackle coupling
  towbar drawbar chain guard jack hoist rope sling seacock lanyard heater cabin cockpit latch firewall earth caliper calipers pads shoes drum drums disc discs handbrake petrolpipe fuelpipe jerrycan gasket silencer tailpipe header headers flange pipe pipes hinge bonnet hood
  fuel petrol gas gasoline throttle pedal accelerator brake brakes braking steering clutch lights lites lamps headlight headlights
  taillight bilge tank bowl float carb carbs carburettor carburetor tap pump cable linkage fan belt belts wheel wheels tyre tyres
  tire tires exhaust downpipe manifold muffler silencer wiring wire wires lead battery harness loom regulator hose line lines
  bellows blower spring springs track joint rod propshaft flywheel mower pto drawbar winch hitch trailer fire extinguisher
  seat union banjo gland jet fumes helm rudder tiller kill stop
`);

/** Things that burn: whatever gets out of where they are kept is a danger. */
export const FUELS = set('fuel petrol gas gasoline');

/** Something was altered, by how much is another word's business. */
export const CHANGES = set(`
  change changes do more less up down upped lowered raised added took bumped gave give opened closed advanced retarded advance retard richer leaner
  weaker richened leaned weakened in out back turned wound unwound backed screwed increased decreased clicked tightened loosened
  reset changed swapped moved adjusted bigger smaller larger higher lower another extra knocked
`);

/** Measured against something else; no value of the day. */
export const COMPARISONS = set(`
  nach après apres atdc   unless limit limited allowed too box spare spares order ordered shelf bought borrowed stock standard factory manual handbook
  maker makers claimed now l/100 l/100km hi high low was were before last same usual usually than again still book spec should supposed yesterday originally previously
  always normally like as since from over under ditto used wants tomorrow maybe perhaps if would could may might not never
`);

/** Not as it ought to be: a fault where a thing of the trade is named and no value given. */
export const COMPLAINTS = set(`
 weak lean leaner rich richer gone bad worse rough short worn bent soft slow hunts hunting noisy noise clicks whine whines
 misses missing miss colder brown low treacle rattle knocking ringing bogs dies stripped 
`);

/** Adds nothing. */
export const FILLERS = set(`
  turns spins   filled refilled them lot fitted wound cleaned filed dressed regapped vor ot pmh pms avant tdc bdc reckons sees seen saying looks look seems says only took taken taking gauge's whole job now's round done stands stood stand plain nearest today's this morning's
  tonight tonight's tested test testing check checked checking reset measured measures measure meas gets gotten getting ended end finished finishes started starts going she's he's runs works working turned shown pulled plugged-in
  the a an is are it its it's reads read reading says showing shows show shown at to now set sets got have has i we my this that's
  on by came comes went goes go crept dropped dropping drops settled settles sits sat holds held holding makes make made gives
   today then and also today's dead-on exactly just put fitted uses using good great nice ok fine happy spot of
  for one's ones one motor car she he her they be been did looked rechecked km measured checked counted counting found me you so
  hit saw pegged jumped climbed rose fell ran runs stays stayed stay  reckon    will   thats with 
`);

/** Something to be done. */
export const WANTS = set(`
  need needs needed want wants wanted try should must buy order get fetch find look listen replace todo remember fix change
  mend renew adjust see ask sort clean lube grease swap file rebuild repair
`);

/** Number words. */
export const NUMBERS = pairs(
  `one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, eleven: 11, twelve: 12,
   fifteen: 15, twenty: 20, thirty: 30`,
);

/** An amount that nobody counted. */
export const VAGUE = set('touch hair bit tad smidge little smidgen whisker fraction some pinch few couple');

/** Spellings of the pencil, put right before anything is looked up. */
export const SPELLINGS = pairs(
  `guage: gauge, govnr: governor, guvnor: governor, govner: governor, gague: gauge, compresion: compression, compresssion: compression, vaccum: vacuum, vacum: vacuum,
   vacuumm: vacuum, idel: idle, carburator: carburettor, carburetter: carburettor, tickin: ticking, dwel: dwell, timeing: timing,
   temprature: temperature, temperture: temperature, presure: pressure, preasure: pressure, throtle: throttle, mixure: mixture,
   inital: initial, intial: initial, needel: needle, thru: through, lites: lights, yr: year, nr: no, tyer: tyre, gskts: gaskets,
   idlle: idle, advace: advance, distibutor: distributor, distributer: distributor, antifreze: antifreeze, adv: advance, fr: front, frt: front, rr: rear, shd: should, w/: with, w/o: without, antifreese: antifreeze, tickng: ticking, exaust: exhaust, pertol: petrol, pts: points, contacts: points, temperatur: temperature, strobo: strobe, stroboscope: strobe, sez: says, em: them, lite: light, neut: neutral, prk: park,
   fwrd: ahead, mt: empty, pres: pressure, carburetter's: carburettor, exh: exhaust, xhaust: exhaust, gasolene: gasoline, idlin: idling, runnin: running, cruisin: cruise, warmin: warm, chargin: charging, cruising: cruise, benzin: petrol, essence: petrol, grad: deg, init: initial, comprssion: compression,
   compress: compression, pluggs: plugs, tyers: tyres, jetts: jets, steerin: steering, starbord: starboard, starbrd: starboard, mixtur: mixture, mixt: mixture,
   guages: gauges, thermostate: thermostat, ohmes: ohms, ohm's: ohms, vaccume: vacuum, vacume: vacuum, distrib: distributor, dizzy: distributor, inlets: inlet, exhausts: exhaust`,
);

/** Gears and states as they are said, and as a condition names them. */
export const GEARS = pairs(
  `p: in park, n: in neutral, d: in drive, r: in reverse, f: in ahead, park: in park, neutral: in neutral, drive: in drive,
   reverse: in reverse, fwd: in ahead, ahead: in ahead, astern: in astern, rev: in reverse, top: in top,
   gear: in gear, first: in first, second: in second, third: in 3rd, fourth: in fourth, fifth: in fifth, 1st: in first, 2nd: in second, 3rd: in 3rd,
   4th: in fourth, 5th: in fifth, 6th: in 6th, idle: at idle, idling: at idle, tickover: at idle, ticking over: at idle,
   tick over: at idle, wot: "at wide open", full throttle: "full throttle", flat out: "flat out", full gas: "full throttle"`,
);

/** Names that only plain speech gives: what they may be, in the order of likelihood; the value says which. */
export const SPOKEN_NAMES = pairs(
  `temp: water, temps: water, temperature: water, temp gauge: water, gauge: water|oil pressure,
   coolant: water, water temp gauge: water, glass: barometer, barometer: barometer, on the glass: barometer,
   clock: odometer, the clock: odometer, mileometer: odometer, milometer: odometer, stat: thermostat, thermo: thermostat,
   batt: volts, battery: volts, trans: gearbox temperature, transmission: gearbox temperature, gearbox: gearbox temperature,
   trans fluid: gearbox temperature, oil: oil pressure|oil temperature, engine oil: oil pressure|oil temperature,
   oil gauge: oil pressure, oil press: oil pressure, all in: all in|total, mech: mechanical limit, mechanical: mechanical limit,
   centrifugal: mechanical limit, weights: mechanical limit, mech advance: mechanical limit, strobe: timing, timing light: timing,
   light: total|timing, pilot: idle jet|mixture, pilots: idle jet|mixture, screw: mixture|idle screw, pilot screw: mixture, stop screw: idle screw, stop screws: idle screw, pilot screws: mixture,
   idle screws: mixture, air screw: mixture, air screws: mixture, mix screws: mixture, mixture screws: mixture, screws: mixture,
   tyres: tyre pressure, tires: tyre pressure, tyre: tyre pressure, tire: tyre pressure, consumption: fuel economy,
   head: head temperature, heads: head temperature, cyl head: head temperature, plugs: plug gap, plug: plug gap, points: points gap|dwell, gaps: plug gap,
   secondaries: secondary jet, primaries: main jet, jets: main jet|mixture, jet: main jet|mixture, mains: main jet,
   fuel: fuel pressure|fuel used, clip: needle clip, clips: needle clip, needle clip: needle clip, needles: needle clip, needle: main needle|needle clip, exhaust: egt,
   tappets: valve lash, pitch: propeller pitch, prop: propeller pitch, p prop: propeller pitch,
   mag: initial|points gap, mag timing: initial, spark: timing, flow meter: carburettor balance,
   pressure: oil pressure, revs: engine speed, vac: depression, advance: initial|total, fan: fan,
   speed: speed, mph: speed, humidity: humidity, air: air temperature, outside: air temperature,
   run: run time, laps: run time, training: run time, hourmeter: hours, meter: carburettor balance|hours, mileage: fuel economy|odometer, advance all in: all in, timing all in: all in, curve all in: all in, zzp: initial, header temps: tube, headers: tube, header tubes: tube, valve play: valve lash, spark plugs gapped: plug gap,
   floats: float level, bowl: float level, bowls: float level, seat: needle seat, squirters: pump nozzle, dwell: dwell, gov: governed speed,
   hole: hesitation, holes: hesitation, flat spots: hesitation, planes: run time, planed: run time, tr: run time, heat: run time, timed: initial, mag timed: initial, gapped: plug gap, plugs gap: plug gap, plugs gapped: plug gap, points gapped: points gap, mag gapped: points gap, regapped: plug gap, plugs regapped: plug gap, points regapped: points gap, mag regapped: points gap,
   dashpot: dashpot oil, dashpots: dashpot oil, damper: dashpot oil, dampers: dashpot oil, sump: oil grade, synchro: depression|carburettor balance, sync: depression|carburettor balance,
   to the gallon: fuel economy, hill run: run time, lap: run time, practice: run time, water: water, thermostat: thermostat, jet needle: needle clip,
   cap: radiator cap, rad cap: radiator cap, radiator cap: radiator cap, pressure cap: radiator cap, spd: engine speed, idle spd: idle, idle revs: idle, idle rpm: idle, ticks over: idle, ticking over: idle, tick-over: idle, tickover: idle,
   ralenti: idle, leerlauf: idle, slow end: idle, slow run: idle, slow running: idle, slow running speed: idle, strobed: timing, ignition: initial|timing, timing static: initial, static timing: initial, total timing: total, timing total: total, total advance: total,
   spark advance: initial|timing, zündung: initial|timing, zündzeitpunkt: initial|timing, base: initial, mixture nut: mixture, mixture nuts: mixture, jet nut: mixture, jet nuts: mixture, idle needle: mixture, low speed needle: mixture, slow needle: mixture,
   low needle: mixture, high needle: main needle, high speed needle: main needle, load needle: main needle, hi needle: main needle, closing angle: dwell, close angle: dwell, cam angle: dwell, schließwinkel: dwell, charging: volts, charges: volts, charge: volts,
   charge volts: volts, voltmeter: volts, spannung: volts, km: odometer, kms: odometer, odo: odometer, speedo: odometer|speed, miles: odometer, kilometers: odometer, contact gap: points gap, breaker points: points gap, breakers: points gap, contact breaker: points gap,
   balancer: carburettor balance, airflow meter: carburettor balance, air flow meter: carburettor balance, synchrometer: carburettor balance, synchroniser: carburettor balance, lag: impulse lag, trip: impulse lag, impulse: impulse lag, impulse trips: impulse lag,
   hauptdüse: main jet, hauptdüsen: main jet, leerlaufdüse: idle jet, gicleur: main jet, gicleurs: main jet, kerzen: plug gap, kerze: plug gap, bougies: plug gap, öldruck: oil pressure, öltemperatur: oil temperature, öltemp: oil temperature, unterdruck: depression,
   kompression: compression, benzindruck: fuel pressure, wassertemperatur: water, wassertemp: water, wasser: water, kontakte: points gap, ventile: valve lash, ventilspiel: valve lash, luftdruck: barometer, schwimmer: float level, drehzahl: engine speed,
   valve: valve lash, valve gap: valve lash, valve gaps: valve lash, tappet: valve lash, clearances: valve lash, clearance: valve lash, inlet valve: valve lash, rockers: valve lash, lifters: valve lash, valves: valve lash, rad temp: water, water gauge: water,
   rad: water, radiator: water, engine temp: water, coolant temp: water, head temps: head temperature, cyl temp: head temperature, cyl head temp: head temperature, pump pressure: fuel pressure, pump: fuel pressure, fuel pump: fuel pressure, carb pressure: fuel pressure, inlet pressure: fuel pressure,
   pump stroke: pump shot, pump squirt: pump shot, pump gives: pump shot, pump delivers: pump shot, pump output: pump shot, injection: pump shot, float bowl: float level, fuel height: float level, bowl level: float level, wheel: propeller pitch, screw pitch: propeller pitch,
   max revs: wide open speed, top end: wide open speed, revved out: wide open speed, tops out: wide open speed, topped out: wide open speed, maxed out: wide open speed, peak revs: wide open speed, pyro: egt, egts: egt, cyl temps: head temperature, mag gap: points gap,
   exhaust gas: egt, oil consumption: oil used, mixture strength: air fuel ratio, wideband: air fuel ratio, a/f: air fuel ratio, a/f ratio: air fuel ratio, sniffer: carbon monoxide, exhaust co: carbon monoxide, vac gage: depression, vac gauge: depression, intake vac: depression, governor: governed speed, governs: governed speed, governed at: governed speed,
   tick over speed: idle, idlespeed: idle, high idle: fast idle, choke idle: fast idle, brake hp: power, tank pressure: fuel pressure, jetting: main jet, mech advance: mechanical limit`,
);

/** Words that make a line a reading of the sky. */
export const SKY = set(
  'bitter windless blowy squally snow snowing sleet drizzly showery showers thundery thunder sultry sticky close fresh freezing icy dull fine fair nice lovely hazy misty mist wet very quite rather pretty real nippy parky baking scorching roasting sunny sun cloudy overcast clear muggy humid breezy windy wind calm still dry damp wet cold warm hot rain raining drizzle fog foggy mild chilly frost frosty light heavy half no shade cool breeze and little gusty bit bright gray grey haze hazy',
);

/** What a thing looks like at a plug's end. */
export const LOOKS = set(
  'fawn buff beige rust rusty ashy ash honey straw milky golden mocha cocoa sandy oiled shiny matt matte dull toast toasted normal nice whitish brownish greyish grayish blackish blueish yellowish carboned sooted caramel tobacco cardboard tea tan brown white grey gray black sooty soot oily wet dry fouled dark pale clean chalky blistered glazed burnt coffee biscuit light fluffy good ok even cream chocolate perfect bit and very slightly colour color',
);
