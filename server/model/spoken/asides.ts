/** Words behind a number that say where, when or how it was read. Common practice, no source. */
import { longestPhrase, phraseTree } from '../../trade/text/phrase-tree.ts';

/** Where, when or how something was read, said after its number, though some of the words mean something else by themselves. */
const ASIDES: readonly string[] = `
  on the pull, on a pull, on the long pull, pulling hard, pulling, under load, on load, off load, no load, full load, half load, part load, light load, loaded, at the wheels, at wheels, at the wheel, at the flywheel, at the belt,
  top end, mid range, midrange, mid, bottom end, low end, off its seat, off the seat, off seat, off her seat, off seats, out from the seat, from seat, from the seat, off bottom, off the bottom, from bottom, start up, startup, on start up, on starting, at start up, from cold,
  on the flat, on the level, on the hill, up the hill, down the hill, on the bench, on the stand, on the trailer, on the hose, on the rollers, on the dial, on the tach, on the road, on the run, on the lake, on the water, on the highway, on the motorway,
  foot down, hood up, hood down, bonnet up, bonnet down, engine off, motor off, key on, key off, ignition on, ign on, ign off, ignition off, switched off, switched on, lights on, lights off, with lights on, lamps on, heater on, fan on, fan off, fan running, all off, everything off, everything on, running, not running, stopped, off,
  choke out, choke in, choke off, choke open, half choke, full choke, choke home, choke full out, half throttle, part throttle, quarter throttle, full throttle, throttle open, throttle wide, throttle wide open, throttle shut, throttle closed,
  below the rim, below rim, under the lid, under lid, bar under the lid, bar under lid, below the flange, below the top, below the lip, under the rim, below the edge, below the joint, below the gasket, above the joint, to the gasket,
  air cleaner off, air cleaner on, cleaner off, filter off, filter on, cap off, cap on, plugs out, plugs in, hose off, hose on, pipe off, pipe on, vac off, vac on, vac pipe off, vac hose off, vacuum off, vacuum on, vacuum hose off, line off, hose plugged, line plugged, pipe plugged, vac plugged, vacuum plugged,
  both ends, all round, all around, right through, straight through, all six, all four, all eight, each side, both sides, both banks, every one, the lot, in traffic, in the shed, in the barn, in the yard, idling back, coming home, going home, on the way home, on way home, driving, cruising, trolling, towing, climbing, pulling away, pulling up,
  first thing, last thing, after rest, after standing, overnight, next morning, after the run, after a run, when warm, when hot, when cold, once warm, once hot, stone cold, dead cold, red hot, warmed up, well warm, fully warm, hot soak
`
  .split(',')
  .map((phrase) => phrase.trim());

const PHRASES = phraseTree(ASIDES.map((phrase) => [phrase, true] as const));
const same = (word: string): string => word;

/** How many words from here say where, when or how the number before them was read. */
export const asideAt = (words: readonly string[], at: number): number =>
  longestPhrase(PHRASES, words, at, same)?.length ?? 0;
