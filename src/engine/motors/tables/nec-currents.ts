/** Currents by size and voltage, as printed: one list a voltage, one figure a size. */
export type CurrentTable = {
  phases: 1 | 3;
  horsepower: readonly number[];
  columns: readonly {
    /** As printed at the head of the column [V]. */
    voltageV: number;
    /** System voltages it may be used for [V]. */
    usedFromV: number;
    usedToV: number;
    currentsA: readonly number[];
  }[];
};

/** Voltage ranges of the columns, from memory; 200 V and 208 V stand for themselves. */
const usedFor: Readonly<Record<number, readonly [number, number]>> = {
  115: [110, 120],
  200: [200, 200],
  208: [208, 208],
  230: [220, 240],
  460: [440, 480],
  575: [550, 600],
};

function tableOf(
  phases: 1 | 3,
  horsepower: readonly number[],
  columns: Readonly<Record<number, readonly number[]>>,
): CurrentTable {
  return {
    phases,
    horsepower,
    columns: Object.entries(columns).map(([head, currentsA]) => {
      const voltageV = Number(head);
      const [usedFromV, usedToV] = usedFor[voltageV] ?? [voltageV, voltageV];
      return { voltageV, usedFromV, usedToV, currentsA };
    }),
  };
}

const singlePhaseSizes = [1 / 2, 3 / 4, 1, 1.5, 2, 3, 5, 7.5, 10];
const threePhaseSizes = [1 / 2, 3 / 4, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100];

/** Full-load currents, single-phase (NEC table 430.248). */
export const fullLoadSinglePhase = tableOf(1, [1 / 6, 1 / 4, 1 / 3, ...singlePhaseSizes], {
  115: [4.4, 5.8, 7.2, 9.8, 13.8, 16, 20, 24, 34, 56, 80, 100],
  200: [2.5, 3.3, 4.1, 5.6, 7.9, 9.2, 11.5, 13.8, 19.6, 32.2, 46, 57.5],
  208: [2.4, 3.2, 4.0, 5.4, 7.6, 8.8, 11, 13.2, 18.7, 30.8, 44, 55],
  230: [2.2, 2.9, 3.6, 4.9, 6.9, 8.0, 10, 12, 17, 28, 40, 50],
});

/** Full-load currents, three-phase, induction type (NEC table 430.250). */
export const fullLoadThreePhase = tableOf(3, threePhaseSizes, {
  200: [2.5, 3.7, 4.8, 6.9, 7.8, 11, 17.5, 25.3, 32.2, 48.3, 62.1, 78.2, 92, 120, 150, 177, 221, 285],
  208: [2.4, 3.5, 4.6, 6.6, 7.5, 10.6, 16.7, 24.2, 30.8, 46.2, 59.4, 74.8, 88, 114, 143, 169, 211, 273],
  230: [2.2, 3.2, 4.2, 6.0, 6.8, 9.6, 15.2, 22, 28, 42, 54, 68, 80, 104, 130, 154, 192, 248],
  460: [1.1, 1.6, 2.1, 3.0, 3.4, 4.8, 7.6, 11, 14, 21, 27, 34, 40, 52, 65, 77, 96, 124],
  575: [0.9, 1.3, 1.7, 2.4, 2.7, 3.9, 6.1, 9, 11, 17, 22, 27, 32, 41, 52, 62, 77, 99],
});

/** Locked-rotor currents, single-phase (NEC table 430.251(A)). */
export const lockedRotorSinglePhase = tableOf(1, singlePhaseSizes, {
  115: [58.8, 82.8, 96, 120, 144, 204, 336, 480, 600],
  208: [32.5, 45.8, 53, 66, 80, 113, 186, 265, 332],
  230: [29.4, 41.4, 48, 60, 72, 102, 168, 240, 300],
});

/** Largest locked-rotor currents, three-phase, designs B, C and D (NEC table 430.251(B)); design A has no such ceiling. */
export const lockedRotorThreePhase = tableOf(3, threePhaseSizes, {
  200: [23, 28.8, 34.5, 46, 57.5, 73.6, 105.8, 146, 186.3, 267, 334, 420, 500, 667, 834, 1001, 1248, 1668],
  208: [22.1, 27.6, 33, 44, 55, 71, 102, 140, 179, 257, 321, 404, 481, 641, 802, 962, 1200, 1603],
  230: [20, 25, 30, 40, 50, 64, 92, 127, 162, 232, 290, 365, 435, 580, 725, 870, 1085, 1450],
  460: [10, 12.5, 15, 20, 25, 32, 46, 63.5, 81, 116, 145, 183, 218, 290, 363, 435, 543, 725],
});
