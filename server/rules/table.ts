/** All families of rules, most of one rule, in the order in which the pages list them. */

import { coldCylinder } from './engine/cold-cylinder.ts';
import { compressionLow } from './engine/compression-low.ts';
import { compressionPairLow } from './engine/compression-pair-low.ts';
import { displacementUnlikeBore } from './engine/displacement-unlike-bore.ts';
import { effectiveRatioHigh } from './engine/effective-ratio-high.ts';
import { leakDownSpread } from './engine/leak-down-spread.ts';
import { pistonSpeedHigh } from './engine/piston-speed-high.ts';
import { ratioUnlikeVolumes } from './engine/ratio-unlike-volumes.ts';
import { revsAboveRedLine } from './engine/revs-above-red-line.ts';
import { fileMissing } from './files/file-missing.ts';
import { logOutside } from './files/log-outside.ts';
import { unreadNotebooks } from './files/unread-notebooks.ts';
import { barometerAtSeaLevel } from './fuel/barometer-at-sea-level.ts';
import { depressionAboveBarometer } from './fuel/depression-above-barometer.ts';
import { fuelPressureForNeedle } from './fuel/fuel-pressure-for-needle.ts';
import { idleDropLarge } from './fuel/idle-drop-large.ts';
import { idleInGearLow } from './fuel/idle-in-gear-low.ts';
import { idleSwapped } from './fuel/idle-swapped.ts';
import { jetAgainstAir } from './fuel/jet-against-air.ts';
import { mixtureReadingsDiffer } from './fuel/mixture-readings-differ.ts';
import { mixtureUnlikeFuel } from './fuel/mixture-unlike-fuel.ts';
import { powerValveHigh } from './fuel/power-valve-high.ts';
import { ratingWithoutDepression } from './fuel/rating-without-depression.ts';
import { screwsWithoutEffect } from './fuel/screws-without-effect.ts';
import { sidesApart } from './fuel/sides-apart.ts';
import { boostWithoutRetard } from './ignition/boost-without-retard.ts';
import { curveNotRising } from './ignition/curve-not-rising.ts';
import { dwellTooLong } from './ignition/dwell-too-long.ts';
import { firingOrder } from './ignition/firing-order.ts';
import { keptWithoutTiming } from './ignition/kept-without-timing.ts';
import { measuredDiffers } from './ignition/measured-differs.ts';
import { timingAfterDwell } from './ignition/timing-after-dwell.ts';
import { limitPassedAlready } from './limits/limit-passed-already.ts';
import { missesTarget } from './limits/misses-target.ts';
import { overLimit } from './limits/over-limit.ts';
import { specDiffers } from './limits/spec-differs.ts';
import { targetNotMetYet } from './limits/target-not-met-yet.ts';
import { totalsOverLimit } from './limits/totals-over-limit.ts';
import { valuesOutsideSpec } from './limits/values-outside-spec.ts';
import { commaNumber } from './notation/comma-number.ts';
import { dividedByNought } from './notation/divided-by-nought.ts';
import { elapsedWithoutUnit } from './notation/elapsed-without-unit.ts';
import { hyphenRange } from './notation/hyphen-range.ts';
import { lineTooLong } from './notation/line-too-long.ts';
import { meantUnknownAmong } from './notation/meant-unknown.ts';
import { mergeConflict } from './notation/merge-conflict.ts';
import { missingNumber } from './notation/missing-number.ts';
import { notADay } from './notation/not-a-day.ts';
import { notATime } from './notation/not-a-time.ts';
import { nothingSaid } from './notation/nothing-said.ts';
import { pairBySlash } from './notation/pair-by-slash.ts';
import { reversedRange } from './notation/reversed-range.ts';
import { unclosedQuote } from './notation/unclosed-quote.ts';
import { unknownFlag } from './notation/unknown-flag.ts';
import { unknownSign } from './notation/unknown-sign.ts';
import { unreadable } from './notation/unreadable.ts';
import { coolerOrder } from './parts/cooler-order.ts';
import { notFitted } from './parts/not-fitted.ts';
import { portConnectedAndCapped } from './parts/port-connected-and-capped.ts';
import { portDoubled } from './parts/port-doubled.ts';
import { portOpen } from './parts/port-open.ts';
import { portUnsaid } from './parts/port-unsaid.ts';
import { unknownPart } from './parts/unknown-part.ts';
import { checkMisspelt } from './road/check-misspelt.ts';
import { checkWithoutAnswer } from './road/check-without-answer.ts';
import { roadRunCheckDue } from './road/road-run-check-due.ts';
import { roadRunOpenFault } from './road/road-run-open-fault.ts';
import { speedNotPossible } from './road/speed-not-possible.ts';
import { tyreUnreadable } from './road/tyre-unreadable.ts';
import type { RuleFamily } from './rule.ts';
import { changeWithoutStart } from './sessions/change-without-start.ts';
import { changedTogether } from './sessions/changed-together.ts';
import { dateBackwards } from './sessions/date-backwards.ts';
import { doneNothingOpen } from './sessions/done-nothing-open.ts';
import { metersBackwards } from './sessions/meters-backwards.ts';
import { noDate } from './sessions/no-date.ts';
import { overridden } from './sessions/overridden.ts';
import { recheckDue } from './sessions/recheck-due.ts';
import { recheckWithoutEnd } from './sessions/recheck-without-end.ts';
import { revertNowhere } from './sessions/revert-nowhere.ts';
import { sameNameTwice } from './sessions/same-name-twice.ts';
import { unlikeItsPast } from './sessions/unlike-its-past.ts';
import { rowIncomplete } from './trials/row-incomplete.ts';
import { rowOutsideTrial } from './trials/row-outside-trial.ts';
import { trialUnitsDiffer } from './trials/trial-units-differ.ts';
import { wantOutsideTrial } from './trials/want-outside-trial.ts';
import { wantWithoutResponse } from './trials/want-without-response.ts';
import { wantWithoutRows } from './trials/want-without-rows.ts';
import { expectedRange } from './units/expected-range.ts';
import { missingUnit } from './units/missing-unit.ts';
import { unknownUnit } from './units/unknown-unit.ts';
import { wrongUnit } from './units/wrong-unit.ts';
import { changeOfReading } from './words/change-of-reading.ts';
import { directionInWords } from './words/direction-in-words.ts';
import { listLength } from './words/list-length.ts';
import { misspeltWord } from './words/misspelt-word.ts';
import { noSuchCylinder } from './words/no-such-cylinder.ts';
import { noValue } from './words/no-value.ts';
import { ownWordIncomplete } from './words/own-word-incomplete.ts';
import { partWithValue } from './words/part-with-value.ts';
import { placeAfterValue } from './words/place-after-value.ts';
import { tooManyValues } from './words/too-many-values.ts';
import { unknownPlace } from './words/unknown-place.ts';
import { unknownWord } from './words/unknown-word.ts';
import { wrongPlace } from './words/wrong-place.ts';

const FOUND_IN_LINES: readonly RuleFamily[] = [
  mergeConflict,
  unreadable,
  unknownSign,
  unclosedQuote,
  lineTooLong,
  commaNumber,
  missingNumber,
  dividedByNought,
  hyphenRange,
  pairBySlash,
  reversedRange,
  notATime,
  elapsedWithoutUnit,
  notADay,
  noDate,
  dateBackwards,
  unknownWord,
  unknownPlace,
  placeAfterValue,
  directionInWords,
  misspeltWord,
  unknownFlag,
  nothingSaid,
  noValue,
  ownWordIncomplete,
  unknownUnit,
  missingUnit,
  wrongUnit,
  tooManyValues,
  listLength,
  noSuchCylinder,
  wrongPlace,
  firingOrder,
  curveNotRising,
  expectedRange,
  overLimit,
  totalsOverLimit,
  limitPassedAlready,
  missesTarget,
  targetNotMetYet,
  measuredDiffers,
  idleSwapped,
  depressionAboveBarometer,
  dwellTooLong,
  timingAfterDwell,
  roadRunOpenFault,
  roadRunCheckDue,
  checkWithoutAnswer,
  checkMisspelt,
  doneNothingOpen,
  sameNameTwice,
  revertNowhere,
  unknownPart,
  partWithValue,
  notFitted,
  changeOfReading,
  changeWithoutStart,
  recheckWithoutEnd,
  rowOutsideTrial,
  rowIncomplete,
  wantWithoutRows,
  coldCylinder,
  compressionLow,
  compressionPairLow,
  leakDownSpread,
  sidesApart,
  changedTogether,
  overridden,
  unlikeItsPast,
  idleDropLarge,
  idleInGearLow,
  screwsWithoutEffect,
  powerValveHigh,
  valuesOutsideSpec,
  specDiffers,
  portDoubled,
  portConnectedAndCapped,
  portOpen,
  portUnsaid,
  coolerOrder,
  recheckDue,
  speedNotPossible,
  tyreUnreadable,
  revsAboveRedLine,
  metersBackwards,
  logOutside,
  fileMissing,
  unreadNotebooks,
  wantOutsideTrial,
  wantWithoutResponse,
  trialUnitsDiffer,
  keptWithoutTiming,
  effectiveRatioHigh,
  fuelPressureForNeedle,
  pistonSpeedHigh,
  mixtureUnlikeFuel,
  mixtureReadingsDiffer,
  ratioUnlikeVolumes,
  displacementUnlikeBore,
  jetAgainstAir,
  barometerAtSeaLevel,
  boostWithoutRetard,
  ratingWithoutDepression,
];

export const FAMILIES: readonly RuleFamily[] = [
  ...FOUND_IN_LINES,
  meantUnknownAmong(FOUND_IN_LINES.flatMap(({ rules }) => rules.map(({ code }) => code))),
];
