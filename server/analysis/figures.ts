/** Table of all figures. Add a row here and it shows in the hover and in the terminal. */

import { AIR } from './air/air.ts';
import { DISPLACEMENT, PISTON_SPEED, RATIO } from './engine/compression-ratio.ts';
import { SEALING } from './engine/compression-test-figures.ts';
import { CYLINDERS, PLUGS } from './engine/cylinders.ts';
import { COMPARED, KNOWN_EFFECTS } from './evidence/known-effects.ts';
import { HISTORY } from './evidence/outlier-figures.ts';
import type { Figure, FigureContext, Working } from './figure.ts';
import { AIRFLOW } from './fuel/carburettor-airflow.ts';
import { FEED } from './fuel/fuel-supply.ts';
import { IDLE_DROP, MIXTURE_SIDES, POWER_VALVE } from './fuel/idle.ts';
import { JET_CHANGES, JET_FOR_AIR } from './fuel/jets.ts';
import { MIXTURE_READING } from './fuel/lambda.ts';
import { NO_EFFECT, TURNS } from './fuel/mixture-screws.ts';
import { BY_SPEED, OTHER_STOP, UNDER_BOOST } from './ignition/advance-curve.ts';
import { DWELL, TIMING_AFTER_POINTS } from './ignition/points-and-dwell.ts';
import { DAMPER_TAPE, STOP_TRAVEL } from './ignition/timing-marks.ts';
import { LOGS } from './road/log.ts';
import { PITCH_SPEED, PROPELLER_SLIP } from './road/propeller.ts';
import { GEARS, SLIP } from './road/road.ts';
import { RUNS } from './road/runs.ts';
import { TRIALS } from './trials/trial-figures.ts';
import { PORTS } from './upkeep/ports.ts';
import { REMINDERS } from './upkeep/reminders.ts';
import { SPECS } from './upkeep/specs.ts';

/** In the order a hover shows them: what to do and what has changed first, background last. */
export const WORKINGS: readonly Working[] = [
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
export const figuresAbout = (word: string, moment: FigureContext): readonly Figure[] =>
  WORKINGS.filter(({ about }) => about === 'every word' || about.includes(word)).flatMap((working) =>
    working.work(moment, word),
  );

/** Everything that can be worked out at a line, in the order of the table. */
export const allFigures = (moment: FigureContext): readonly Figure[] =>
  WORKINGS.flatMap((working) => working.work(moment));
