/** A published calculation: what was given, and every result as printed. */
export interface ThermalRow {
  readonly id: string;
  /** Id of an entry in content/sources.yaml. */
  readonly source: string;
  readonly place: string;
  /** published: printed in the source. derived: calculated by hand from what the source prints. */
  readonly basis: 'published' | 'derived';
  readonly given: Readonly<Record<string, number>>;
  readonly printed: Readonly<Record<string, string>>;
  /** figures that are also in circulation and are wrong, with the reason */
  readonly traps?: readonly { readonly result: string; readonly printed: string; readonly why: string }[];
  readonly note?: string;
}

export const thermalRows = [
  {
    id: 'TH-01',
    source: 'gupta-singhal',
    place: 'ex. 4.1, p. 49',
    basis: 'published',
    given: { firstK: 30, secondK: 45, intervalMin: 40 },
    printed: { timeConstantMin: '57.71', finalK: '60' },
  },
  {
    id: 'TH-03',
    source: 'gupta-singhal',
    place: 'ex. 4.3, p. 51',
    basis: 'published',
    given: { ambientC: 30, firstC: 54, secondC: 67, intervalH: 1, cooledToC: 40, coolingH: 2.7 },
    printed: { finalC: '82.36', timeConstantH: '1.63', coolingTimeConstantH: '1.63' },
    note: 'Cooling starts from the final temperature.',
  },
  {
    id: 'TH-04',
    source: 'gupta-singhal',
    place: 'ex. 4.4',
    basis: 'published',
    given: { heatingMin: 110, coolingMin: 150, onMin: 30, offMin: 45, finalK: 50 },
    printed: { peakK: '27.37' },
  },
  {
    id: 'TH-05',
    source: 'gupta-singhal',
    place: 'ex. 4.5',
    basis: 'published',
    given: { finalK: 52, timeConstantMin: 400, firstK: 20, secondK: 28 },
    printed: { firstSlopeKPerMin: '0.08', secondSlopeKPerMin: '0.06' },
    note: 'Taken backwards: the book gives the slopes and asks for final rise and time constant.',
  },
  {
    id: 'TH-07',
    source: 'gupta-singhal',
    place: 'ex. 4.9, p. 62',
    basis: 'published',
    given: {
      ratedKw: 50,
      heatingMin: 80,
      coolingMin: 110,
      shortMin: 15,
      onMin: 15,
      offMin: 20,
      constantLossRatio: 0,
    },
    printed: { shortTimeKw: '120.9', intermittentKw: '67.2' },
  },
  {
    id: 'TH-09',
    source: 'gupta-singhal',
    place: 'ex. 4.8, p. 62',
    basis: 'derived',
    given: { ratedKw: 100, heatingMin: 100, shortMin: 20, constantLossRatio: 0.9 },
    printed: { shortTimeKw: '309.5' },
    traps: [
      {
        result: 'shortTimeKw',
        printed: '323.8',
        why: 'leaves out the constant losses (the "−α" under the root), which heat as well; the re-computation of the book says so too',
      },
    ],
  },
  {
    id: 'TH-11',
    source: 'dubey',
    place: 'ex. 4.4, p. 55',
    basis: 'published',
    given: {
      ratedKw: 20,
      heatingMin: 60,
      coolingMin: 90,
      shortMin: 10,
      onMin: 10,
      offMin: 10,
      constantLossRatio: 0,
    },
    printed: { shortTimeKw: '51', intermittentKw: '25.14' },
  },
  {
    id: 'TH-12',
    source: 'dubey',
    place: 'ex. 4.1, p. 47',
    basis: 'published',
    given: { timeConstantS: 60, loadedS: 10, unloadedS: 20, unloadedK: 15, lowestK: 40 },
    printed: { highestK: '49.9', alwaysLoadedK: '104.4' },
  },
  {
    id: 'TH-13',
    source: 'theraja',
    place: 'ex. 45.9, p. 1807',
    basis: 'published',
    given: { ratedKw: 40, heatingMin: 90, shortMin: 30, constantLossRatio: 0 },
    printed: { shortTimeKw: '75.13' },
  },
  {
    id: 'TH-15',
    source: 'theraja',
    place: 'ex. 45.11',
    basis: 'published',
    given: { heatingMin: 60, coolingMin: 120, finalK: 100, onMin: 30, offMin: 12 },
    printed: { afterOneCycleK: '35.6' },
  },
  {
    id: 'TH-15 settled',
    source: 'theraja',
    place: 'ex. 45.11, cycle repeated for ever',
    basis: 'derived',
    given: { heatingMin: 60, coolingMin: 120, finalK: 100, onMin: 30, offMin: 12 },
    printed: { peakK: '87.2', troughK: '78.9' },
  },
  {
    id: 'TH-16',
    source: 'theraja',
    place: 'ex. 45.12',
    basis: 'published',
    given: { ratedKw: 20, firstK: 30, secondK: 40, intervalH: 1, limitK: 50, shortH: 1 },
    printed: { timeConstantH: '0.910', finalK: '45', shortTimeKw: '25.82' },
  },
  {
    id: 'TH-18',
    source: 'theraja',
    place: 'ex. 45.14',
    basis: 'published',
    given: { startK: 20, finalK: 85, timeConstantH: 2.4, timeH: 1.2, ambientC: 25 },
    printed: { temperatureC: '70.58' },
    traps: [
      {
        result: 'temperatureC',
        printed: '55.41',
        why: 'takes the 20 at the start as a temperature, as the book words it; it is a rise over the ambient',
      },
    ],
  },
  {
    id: 'TH-20',
    source: 'bird',
    place: 'ex. 17.1',
    basis: 'published',
    given: { resistanceOhm: 47e3, capacitanceF: 15e-6, supplyV: 120 },
    printed: { timeConstantS: '0.705', afterOneTimeConstantV: '75.85', halfS: '0.4887' },
  },
  {
    id: 'TH-21',
    source: 'kuphaldt',
    place: 'DC ch. 16',
    basis: 'published',
    given: { supplyV: 15, timeConstantS: 1 },
    printed: { after2sV: '12.970', after7250msV: '14.989' },
  },
  {
    id: 'TH-36',
    source: 'foster-notebook',
    place: 'seven R and C pairs',
    basis: 'derived',
    given: {},
    printed: {
      '1e-4': '0.14211',
      '1e-3': '0.47884',
      '1e-2': '1.21049',
      '1e-1': '1.58092',
      Infinity: '1.58094',
    },
    note: 'R and C were read, the impedances calculated from them.',
  },
  {
    id: 'TH-37',
    source: 'jacob',
    place: 'ex. 4.6',
    basis: 'published',
    given: { junctionC: 125, ambientC: 40, lossW: 2.92, innerKPerW: 4.5 },
    printed: { heatSinkKPerW: '24.61' },
  },
  {
    id: 'TH-39',
    source: 'drive-manual',
    place: '−1 % per 100 m above 1000 m; −1 % per K above 40 °C',
    basis: 'derived',
    given: { heightM: 2000, ambientRatio: 0.95, lowerHeightM: 1500 },
    printed: { lowerHeightRatio: '0.95', heightRatio: '0.90', bothRatio: '0.855' },
    traps: [
      {
        result: 'bothRatio',
        printed: '0.850',
        why: 'adds the two losses; this course multiplies what is left, since the second effect acts on what the first has left',
      },
    ],
  },
] as const satisfies readonly ThermalRow[];

/** TH-33 and TH-34: cold times [s] at multiples of the setting k·IB, and TH-35: hot times after 0.9 k·IB. */
export const overloadRelayTable = {
  cold: {
    source: 'iec-60255-149',
    place: 'cold curve, in a relay’s device manual, p. 470',
    basis: 'published',
    multiples: [1.2, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5],
    printedByTimeConstantS: {
      60: ['71.14', '35.27', '17.26', '10.46', '7.07', '5.11', '3.87', '3.04', '2.45', '2.02'],
      600: ['711.37', '352.67', '172.61', '104.61', '70.67', '51.09', '38.72', '30.39', '24.49', '20.17'],
    },
  },
  hot: {
    source: 'iec-60255-149',
    place: 'hot curve, as a relay’s data sheet quotes it; previous load 0.9 k·IB, time constant 10 min',
    basis: 'derived',
    previousRatio: 0.9,
    timeConstantS: 600,
    multiples: [1.2, 1.5, 2, 3, 5],
    printed: ['215.37', '84.90', '36.85', '14.08', '4.73'],
  },
} as const;

/** TH-36: R [K/W] and C [J/K]. */
export const fosterPairs = [
  [2.748817e-3, 2.916343e-5],
  [5.715661e-3, 1.725521e-4],
  [4.153561e-2, 2.092143e-4],
  [5.616478e-2, 1.786133e-3],
  [0.3286516, 2.129755e-3],
  [1.016057, 8.451135e-3],
  [0.130071, 8.63404e-2],
] as const;
