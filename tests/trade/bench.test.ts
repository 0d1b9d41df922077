import { describe, expect, test } from 'vitest';
import {
  correctionJ607,
  correctionJ1349,
  jetAreaForAir,
  jetDiameterForAir,
} from '../../server/trade/sums/air.ts';
import {
  areaChangePercent,
  judgeNeedlePressure,
  passagesInSeries,
  powerValve,
} from '../../server/trade/sums/carburation.ts';
import { judgeCompression, leakDown, staticRatio } from '../../server/trade/sums/compression.ts';
import {
  coldCylinders,
  inFiringOrder,
  neighbours,
  numbered,
  summarize,
} from '../../server/trade/sums/cylinders.ts';
import {
  DRILLS,
  drillNamed,
  drillsNear,
  nearestDrill,
  nearestListed,
  nearestStep,
} from '../../server/trade/sums/drills.ts';
import { ESTIMATE_CAUTION, estimateTorqueInch, proofStrength } from '../../server/trade/sums/fasteners.ts';
import { correctRunSpeed, correctRunTime, parseTyreSize, slip } from '../../server/trade/sums/road.ts';

const AIR = { pascals: 99000, celsius: 25, humidity: 0 };

function fahrenheit(...readings: number[]) {
  return numbered(readings.map((each) => (each - 32) / 1.8));
}

describe('air', () => {
  test.each([correctionJ1349, correctionJ607])(
    'a correction refuses a boosted engine and says why',
    (correct) => {
      expect(correct(AIR, true)).toMatchObject({
        kind: 'refused',
        reason: expect.stringContaining('boosted'),
      });
    },
  );

  test('every corrected figure carries the name of its correction', () => {
    expect(correctionJ1349(AIR).name).toContain('J1349');
    expect(correctionJ607(AIR).name).toContain('J607');
  });

  test('air of 0.81 the density wants 0.9 the jet area, and a diameter whose square is that', () => {
    expect(jetAreaForAir(0.81)).toBeCloseTo(0.9, 12);
    expect(jetDiameterForAir(0.81) ** 2).toBeCloseTo(0.9, 12);
  });
});

describe('carburation', () => {
  test('a jet from 0.070 to 0.072 in passes 5.8 per cent more', () => {
    expect(areaChangePercent(0.07, 0.072)).toBeCloseTo(5.796, 3);
  });

  test('passages in series are judged by the smallest', () => {
    expect(passagesInSeries([2, 1, 4])).toEqual({ smallest: 1, diameter: 1, areaRatios: [4, 1, 16] });
    expect(passagesInSeries([])).toBeUndefined();
    expect(passagesInSeries([1, 0])).toBeUndefined();
  });

  test.each([
    [3, 'needle and seat', 'low'],
    [5.5, 'needle and seat', 'in band'],
    [7.5, 'needle and seat', 'high'],
    [8.5, 'needle and seat', 'likely to flood'],
    [5.5, 'side-draught', 'high'],
    [3, 'side-draught', 'in band'],
  ] as const)('%s psi at a %s is %s', (psi, kind, expected) => {
    expect(judgeNeedlePressure(psi, kind)).toBe(expected);
  });

  test.each([
    [17, 8.5, 15],
    [9, 4.5, 7],
    [3, 1, 1],
  ])('an idle of %s inHg in gear asks for a power valve of %s, never over %s', (idle, suggested, ceiling) => {
    expect(powerValve(idle)).toMatchObject({ suggested, ceiling });
  });

  test('no power valve suits an idle of 2 inHg', () => {
    expect(powerValve(2)).toBeUndefined();
  });
});

describe('compression', () => {
  test('two low neighbours are told as a pair, under the rule that calls them low', () => {
    const result = judgeCompression(
      [160, 115, 114, 158],
      [
        [1, 2],
        [2, 3],
        [3, 4],
      ],
    );
    expect(result?.verdicts.map((each) => [each.low, each.lowPairs])).toEqual([
      [[2, 3], [[2, 3]]],
      [[], []],
    ]);
    expect(result?.ratio).toBeCloseTo(114 / 160, 12);
  });

  test.each([[[]], [[150]], [[0, 0]]])('%j is not judged', (psi) => {
    expect(judgeCompression(psi)).toBeUndefined();
  });

  test('leak-down tells the spread and the worst cylinder', () => {
    expect(leakDown([5, 8, 22, 6])).toEqual({ best: 5, worst: 22, spread: 17, worstCylinder: 3 });
    expect(leakDown([])).toBeUndefined();
  });

  test('sizes that leave no volume have no ratio', () => {
    expect(
      staticRatio({ bore: 100, stroke: 80, chamber: 5, gasketThickness: 0, deck: 0, dish: -9 }),
    ).toBeUndefined();
  });
});

describe('drills', () => {
  test.each([
    ['#21', '#21'],
    ['21', '#21'],
    ['No. 7', '#7'],
    ['f', 'F'],
    ['letter Q', 'Q'],
    ['9/32', '9/32 in'],
    ['1/2"', '1/2 in'],
    ['5.5 mm', '5.5 mm'],
    ['6mm', '6.0 mm'],
  ])('%s is the drill %s', (name, expected) => {
    expect(drillNamed(name)?.name).toBe(expected);
  });

  test.each(['81', '0', '33/64', '5.55 mm', 'AA', ''])('%j is no drill', (name) => {
    expect(drillNamed(name)).toBeUndefined();
  });

  test('80 number, 26 letter and 32 fraction sizes, each set rising', () => {
    const sizes = (kind: string) => DRILLS.filter((each) => each.kind === kind).map((each) => each.inches);
    for (const [kind, count] of [
      ['number', 80],
      ['letter', 26],
      ['64ths', 32],
      ['metric', 128],
    ] as const) {
      expect(sizes(kind)).toHaveLength(count);
      expect(sizes(kind).toSorted((one, other) => one - other)).toEqual(sizes(kind));
    }
  });

  test('a hole of 0.1375 in: the nearest drill, and by how much it is over', () => {
    const nearest = nearestDrill(0.1375);
    expect(nearest?.drill.name).toBe('3.5 mm');
    expect(nearest?.over).toBeCloseTo(3.5 / 25.4 - 0.1375, 9);
    expect(nearestDrill(0.1375, ['number', 'letter'])?.drill.name).toBe('#29');
    expect(drillsNear(0.1375, 2, ['64ths']).map((each) => each.drill.name)).toEqual(['9/64 in', '1/8 in']);
  });
});

describe('jets really sold', () => {
  test('the nearest of a list, and of a step', () => {
    expect(nearestListed([66, 68, 72], 69.8)).toBe(68);
    expect(nearestListed([66, 68, 72], 70.2)).toBe(72);
    expect(nearestListed([], 70)).toBeUndefined();
    expect(nearestStep(131.8, 2.5)).toBeCloseTo(132.5, 12);
    expect(nearestStep(70, 3, 65)).toBe(71);
  });
});

describe('fasteners', () => {
  test('an estimate says it is one and defers to the maker', () => {
    expect(estimateTorqueInch(0.375, 16, '5')).toMatchObject({ kind: 'estimate', caution: ESTIMATE_CAUTION });
    expect(ESTIMATE_CAUTION).toContain("maker's figure overrules");
  });

  test('proof strength falls with diameter where the standard says so, and is not made up past it', () => {
    expect(proofStrength('inch', '2', 0.75)).toBe(55000);
    expect(proofStrength('inch', '2', 0.875)).toBe(33000);
    expect(proofStrength('inch', '5', 1.125)).toBe(74000);
    expect(proofStrength('inch', '5', 1.75)).toBeUndefined();
    expect(proofStrength('inch', '6', 0.5)).toBeUndefined();
    expect(estimateTorqueInch(0.375, 16, 'none')).toBeUndefined();
  });
});

describe('cylinders', () => {
  const readings = numbered([400, undefined, 380, 420]);

  test('a summary leaves out a cylinder without a reading', () => {
    expect(summarize(readings)).toEqual({
      mean: 400,
      median: 400,
      spread: 40,
      highest: { cylinder: 4, value: 420 },
      lowest: { cylinder: 3, value: 380 },
    });
    expect(summarize([])).toBeUndefined();
  });

  test('in firing order, and side by side', () => {
    expect(inFiringOrder(readings, [1, 3, 4, 2]).map((each) => each.cylinder)).toEqual([1, 3, 4]);
    expect(
      neighbours([
        [1, 3, 5],
        [2, 4],
      ]),
    ).toEqual([
      [1, 3],
      [3, 5],
      [2, 4],
    ]);
  });

  test.each([
    ['the one not firing', [388, 401, 384, 226], [4]],
    ['spread alone at idle', [300, 300, 530, 450, 360, 470, 350, 390], []],
    ['close together', [388, 401, 384, 380], []],
    ['dead cold among uneven ones', [300, 300, 530, 450, 360, 470, 350, 120], [8]],
    ['low, but no further out than the others scatter', [300, 500, 350, 560, 420, 250], []],
    ['two dead', [400, 410, 95, 405, 398, 90], [3, 6]],
    ['a cold engine', [68, 68, 69, 68], []],
    ['too few', [400, 90], []],
  ])('cold tubes: %s', (_, tubes, expected) => {
    expect(coldCylinders(fahrenheit(...tubes)).map((each) => each.cylinder)).toEqual(expected);
  });
});

describe('road', () => {
  test.each([
    ['185/65R15', { width: 185, aspect: 65, rim: 15 }],
    ['P205/55 ZR 16', { width: 205, aspect: 55, rim: 16 }],
    ['185R14', { width: 185, aspect: 80, rim: 14 }],
    ['225/50 VR16', { width: 225, aspect: 50, rim: 16 }],
  ])('reads the tyre size %s', (text, size) => {
    expect(parseTyreSize(text)).toEqual(size);
  });

  test.each(['6.50-16', 'tyre', '', '185/65'])('%j is no metric tyre size', (text) => {
    expect(parseTyreSize(text)).toBeUndefined();
  });

  test('slip is how far the measured speed falls short', () => {
    expect(slip(100, 96)).toBeCloseTo(0.04, 12);
  });

  test('a run in thin air corrects to a shorter time and a higher speed, by name', () => {
    expect(correctRunTime(14, 1.1, 'SAE J607')).toMatchObject({ name: 'SAE J607, cube root of power' });
    expect(correctRunTime(14, 1.331, '').value).toBeCloseTo(14 / 1.1, 9);
    expect(correctRunSpeed(100, 1.331, '').value).toBeCloseTo(110, 9);
  });
});
