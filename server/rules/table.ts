/** All rules, in the order in which the pages list them. */

import { barometerAtSeaLevel } from './barometer-at-sea-level.ts';
import { boostWithoutRetard } from './boost-without-retard.ts';
import { changeOfReading } from './change-of-reading.ts';
import { changeWithoutStart } from './change-without-start.ts';
import { changedTogether } from './changed-together.ts';
import { checkMisspelt } from './check-misspelt.ts';
import { checkWithoutAnswer } from './check-without-answer.ts';
import { coldCylinder } from './cold-cylinder.ts';
import { commaNumber } from './comma-number.ts';
import { compressionLow } from './compression-low.ts';
import { compressionPairLow } from './compression-pair-low.ts';
import { coolerOrderRule } from './cooler-order.ts';
import { curveNotRising } from './curve-not-rising.ts';
import { dateBackwards } from './date-backwards.ts';
import { degreesMixedUp } from './degrees-mixed-up.ts';
import { depressionAboveBarometer } from './depression-above-barometer.ts';
import { directionInWords } from './direction-in-words.ts';
import { displacementUnlikeBore } from './displacement-unlike-bore.ts';
import { dividedByNought } from './divided-by-nought.ts';
import { doneNothingOpen } from './done-nothing-open.ts';
import { dwellTooLong } from './dwell-too-long.ts';
import { effectiveRatioHigh } from './effective-ratio-high.ts';
import { elapsedWithoutUnit } from './elapsed-without-unit.ts';
import { fileMissing } from './file-missing.ts';
import { firingOrder } from './firing-order.ts';
import { fuelPressureForNeedle } from './fuel-pressure-for-needle.ts';
import { hoursBackwards } from './hours-backwards.ts';
import { hyphenRange } from './hyphen-range.ts';
import { idleDropLarge } from './idle-drop-large.ts';
import { idleInGearLow } from './idle-in-gear-low.ts';
import { idleSwapped } from './idle-swapped.ts';
import { jetAgainstAir } from './jet-against-air.ts';
import { keptWithoutTiming } from './kept-without-timing.ts';
import { leakDownSpread } from './leak-down-spread.ts';
import { limitPassedAlready } from './limit-passed-already.ts';
import { lineTooLong } from './line-too-long.ts';
import { listLength } from './list-length.ts';
import { logOutside } from './log-outside.ts';
import { meantUnknownAmong } from './meant-unknown.ts';
import { measuredDiffers } from './measured-differs.ts';
import { mergeConflict } from './merge-conflict.ts';
import { missesTarget } from './misses-target.ts';
import { missingNumber } from './missing-number.ts';
import { missingUnit } from './missing-unit.ts';
import { misspeltWord } from './misspelt-word.ts';
import { mixtureReadingsDiffer } from './mixture-readings-differ.ts';
import { mixtureUnlikeFuel } from './mixture-unlike-fuel.ts';
import { noDate } from './no-date.ts';
import { noSuchCylinder } from './no-such-cylinder.ts';
import { noValue } from './no-value.ts';
import { notADay } from './not-a-day.ts';
import { notATime } from './not-a-time.ts';
import { notFitted } from './not-fitted.ts';
import { nothingSaid } from './nothing-said.ts';
import { odometerBackwards } from './odometer-backwards.ts';
import { outsideBandRule } from './outside-band.ts';
import { outsideSpec } from './outside-spec.ts';
import { overLimit } from './over-limit.ts';
import { overridden } from './overridden.ts';
import { ownWordIncomplete } from './own-word-incomplete.ts';
import { pairBySlash } from './pair-by-slash.ts';
import { partWithValue } from './part-with-value.ts';
import { pistonSpeedHigh } from './piston-speed-high.ts';
import { placeAfterValue } from './place-after-value.ts';
import { portConnectedAndCapped } from './port-connected-and-capped.ts';
import { portDoubled } from './port-doubled.ts';
import { portOpen } from './port-open.ts';
import { portUnsaid } from './port-unsaid.ts';
import { powerValveHigh } from './power-valve-high.ts';
import { ratingWithoutDepression } from './rating-without-depression.ts';
import { ratioUnlikeVolumes } from './ratio-unlike-volumes.ts';
import { recheckDue } from './recheck-due.ts';
import { recheckWithoutEnd } from './recheck-without-end.ts';
import { reversedRange } from './reversed-range.ts';
import { revertNowhere } from './revert-nowhere.ts';
import { revsAboveRedLine } from './revs-above-red-line.ts';
import { roadRunCheckDue } from './road-run-check-due.ts';
import { roadRunOpenFault } from './road-run-open-fault.ts';
import { rowIncomplete } from './row-incomplete.ts';
import { rowOutsideTrial } from './row-outside-trial.ts';
import type { Rule } from './rule.ts';
import { sameNameTwice } from './same-name-twice.ts';
import { screwsWithoutEffect } from './screws-without-effect.ts';
import { sidesApart } from './sides-apart.ts';
import { specDiffers } from './spec-differs.ts';
import { speedNotPossible } from './speed-not-possible.ts';
import { targetNotMetYet } from './target-not-met-yet.ts';
import { tenTimes } from './ten-times.ts';
import { timingAfterDwell } from './timing-after-dwell.ts';
import { tooManyValues } from './too-many-values.ts';
import { torqueOutsideSpec } from './torque-outside-spec.ts';
import { totalOverLimit } from './total-over-limit.ts';
import { totalOverUsual } from './total-over-usual.ts';
import { trialUnitsDiffer } from './trial-units-differ.ts';
import { tyreUnreadable } from './tyre-unreadable.ts';
import { unclosedQuote } from './unclosed-quote.ts';
import { unitsMixedUp } from './units-mixed-up.ts';
import { unknownFlag } from './unknown-flag.ts';
import { unknownPart } from './unknown-part.ts';
import { unknownPlace } from './unknown-place.ts';
import { unknownSign } from './unknown-sign.ts';
import { unknownUnit } from './unknown-unit.ts';
import { unknownWord } from './unknown-word.ts';
import { unlikeItsPast } from './unlike-its-past.ts';
import { unreadable } from './unreadable.ts';
import { useCycle } from './use-cycle.ts';
import { useMissing } from './use-missing.ts';
import { useOutside } from './use-outside.ts';
import { wantOutsideTrial } from './want-outside-trial.ts';
import { wantWithoutResponse } from './want-without-response.ts';
import { wantWithoutRows } from './want-without-rows.ts';
import { wrongPlace } from './wrong-place.ts';
import { wrongUnit } from './wrong-unit.ts';

const ROWS: readonly Rule[] = [
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
  degreesMixedUp,
  unitsMixedUp,
  tenTimes,
  outsideBandRule,
  overLimit,
  totalOverLimit,
  totalOverUsual,
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
  outsideSpec,
  torqueOutsideSpec,
  specDiffers,
  portDoubled,
  portConnectedAndCapped,
  portOpen,
  portUnsaid,
  coolerOrderRule,
  recheckDue,
  speedNotPossible,
  tyreUnreadable,
  revsAboveRedLine,
  odometerBackwards,
  hoursBackwards,
  logOutside,
  fileMissing,
  useOutside,
  useCycle,
  useMissing,
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

export const RULES: readonly Rule[] = [...ROWS, meantUnknownAmong(ROWS.map((rule) => rule.code))];
