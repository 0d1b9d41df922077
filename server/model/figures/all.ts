/** The one table of what is worked out. Add a row here and it is in the hover and in the terminal. */
import { BY_SPEED, OTHER_STOP, UNDER_BOOST } from './advance.ts';
import { AIR } from './air.ts';
import { AIRFLOW } from './airflow.ts';
import { CYLINDERS, PLUGS } from './cylinders.ts';
import { COMPARED, KNOWN_EFFECTS } from './effects.ts';
import { FEED } from './feed.ts';
import type { Figure, Moment, Working } from './figure.ts';
import { HISTORY } from './history.ts';
import { IDLE_DROP, MIXTURE_SIDES, POWER_VALVE } from './idle.ts';
import { JET_CHANGES, JET_FOR_AIR } from './jets.ts';
import { LOGS } from './log.ts';
import { DAMPER_TAPE, STOP_TRAVEL } from './marks.ts';
import { MIXTURE_READING } from './mixture-reading.ts';
import { DWELL, TIMING_AFTER_POINTS } from './points.ts';
import { PORTS } from './ports.ts';
import { PITCH_SPEED, PROPELLER_SLIP } from './propeller.ts';
import { REMINDERS } from './reminders.ts';
import { GEARS, SLIP } from './road.ts';
import { RUNS } from './runs.ts';
import { NO_EFFECT, TURNS } from './screws.ts';
import { SEALING } from './sealing.ts';
import { SPECS } from './specs.ts';
import { DISPLACEMENT, PISTON_SPEED, RATIO } from './squeeze.ts';
import { TIMING } from './timing.ts';
import { TRIALS } from './trials.ts';

/** In the order in which a hover tells them: what to do and what has changed first, what is background last. */
const WORKINGS: readonly Working[] = [
  TIMING,
  REMINDERS,
  SPECS,
  TIMING_AFTER_POINTS,
  SEALING,
  COMPARED,
  TRIALS,
  BY_SPEED,
  UNDER_BOOST,
  OTHER_STOP,
  DWELL,
  GEARS,
  SLIP,
  PITCH_SPEED,
  PROPELLER_SLIP,
  RUNS,
  LOGS,
  JET_CHANGES,
  JET_FOR_AIR,
  AIR,
  AIRFLOW,
  FEED,
  MIXTURE_READING,
  CYLINDERS,
  PLUGS,
  IDLE_DROP,
  MIXTURE_SIDES,
  NO_EFFECT,
  TURNS,
  POWER_VALVE,
  HISTORY,
  DISPLACEMENT,
  RATIO,
  PISTON_SPEED,
  DAMPER_TAPE,
  STOP_TRAVEL,
  PORTS,
  KNOWN_EFFECTS,
];

/** The figures about a word of the vocabulary, or about `trial`, `session`, `port`, `spec`, `recheck`. */
export const figuresAbout = (word: string, moment: Moment): readonly Figure[] =>
  WORKINGS.filter(({ about }) => about === 'every word' || about.includes(word)).flatMap((working) =>
    working.work(moment, word),
  );

/** Everything that can be worked out at a line, in the order of the table. */
export const allFigures = (moment: Moment): readonly Figure[] =>
  WORKINGS.flatMap((working) => working.work(moment));
