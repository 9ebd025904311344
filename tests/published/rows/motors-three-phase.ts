import { rowsOf } from './published-row.ts';

/** Books' figures were read in the open companion set of the FOSSEE project, which keeps each book's example and page. */
const published = 'published';
const roundsInside = 'The book rounds to three figures on the way.';

const fitzgeraldMotor = {
  lineVoltageV: 220,
  frequencyHz: 60,
  polePairs: 3,
  statorResistanceOhm: 0.294,
  statorReactanceOhm: 0.503,
  rotorResistanceOhm: 0.144,
  rotorReactanceOhm: 0.209,
  magnetisingReactanceOhm: 13.25,
};
const mcphersonMotor = {
  lineVoltageV: 220,
  frequencyHz: 60,
  polePairs: 2,
  statorResistanceOhm: 0.39,
  statorReactanceOhm: 0.35,
  rotorResistanceOhm: 0.14,
  rotorReactanceOhm: 0.35,
  magnetisingReactanceOhm: 16,
};
const chapmanMotor = {
  lineVoltageV: 460,
  frequencyHz: 60,
  polePairs: 2,
  statorResistanceOhm: 0.641,
  statorReactanceOhm: 1.106,
  rotorResistanceOhm: 0.332,
  rotorReactanceOhm: 0.464,
  magnetisingReactanceOhm: 26.3,
};
const srivastavaMotor = {
  lineVoltageV: 440,
  frequencyHz: 50,
  polePairs: 2,
  statorResistanceOhm: 0.2,
  statorReactanceOhm: 1,
  rotorResistanceOhm: 0.4,
  rotorReactanceOhm: 1.5,
  magnetisingReactanceOhm: 30,
  coreLossResistanceOhm: 150,
  slipRatio: 1,
};
const memoryOfChapman = 'Printed answers from memory; the book works with rounded Thévenin values.';

/** Circuits E-1 to E-15: currents, powers and torques from the equivalent circuit. */
const circuitRows = [
  ...rowsOf(
    {
      id: 'E-1',
      source: 'fitzgerald',
      place: 'ex. 6.2, p. 320',
      basis: published,
      given: { ...fitzgeraldMotor, slipRatio: 0.02, rotationalLossW: 403 },
    },
    {
      speedRpm: ['1176', '1/min'],
      lineCurrentA: ['18.8', 'A'],
      powerFactor: ['0.846', ''],
      shaftPowerW: ['5222', 'W'],
      shaftTorqueNm: ['42.4', 'N·m'],
      efficiencyPercent: ['86', '%'],
    },
  ),
  ...rowsOf(
    {
      id: 'E-2',
      source: 'fitzgerald',
      place: 'ex. 6.3, p. 325',
      basis: published,
      given: { ...fitzgeraldMotor, slipRatio: 0.03 },
    },
    {
      rotorCurrentA: ['23.9', 'A'],
      electromagneticTorqueNm: ['65.4', 'N·m'],
      mechanicalPowerW: ['7979', 'W', { exact: '7973', note: roundsInside }],
      breakdownTorqueNm: ['175', 'N·m'],
      breakdownRpm: ['970', '1/min'],
      startTorqueNm: ['77.6', 'N·m'],
      startRotorA: ['150', 'A'],
    },
  ),
  ...rowsOf(
    {
      id: 'E-4',
      source: 'mcpherson',
      place: 'ex. 4.3 and 4.4, p. 72',
      basis: published,
      given: { ...mcphersonMotor, slipRatio: 0.03 },
    },
    {
      lineCurrentA: ['25.95', 'A'],
      powerFactor: ['0.924', ''],
      inputPowerW: ['9137', 'W'],
      airGapPowerW: ['8349', 'W'],
      mechanicalPowerW: ['8098', 'W'],
      startA: ['146.1', 'A'],
      startTorqueLbFt: ['33.6', 'lb-ft'],
      breakdownSlipRatio: [
        '0.1756',
        '',
        {
          exact: '0.1762',
          note: 'The book takes R1·Xm/(X1 + Xm) and X1 as the Thévenin impedance.',
        },
      ],
      breakdownTorqueNm: [
        '104.3',
        'N·m',
        {
          exact: '105.22',
          note: 'Approximate Thévenin impedance again; a second way in the same place gives 105.3.',
        },
      ],
    },
  ),
  ...rowsOf(
    {
      id: 'E-5',
      source: 'hubert',
      place: 'ex. 5.2, p. 180',
      basis: published,
      given: {
        lineVoltageV: 460,
        frequencyHz: 60,
        polePairs: 3,
        statorResistanceOhm: 0.2,
        statorReactanceOhm: 1.2,
        rotorResistanceOhm: 0.25,
        rotorReactanceOhm: 1.29,
        magnetisingReactanceOhm: 42,
        coreLossResistanceOhm: 317,
        slipRatio: 0.0125,
        rotationalLossW: 166,
      },
    },
    {
      lineCurrentA: ['15.09', 'A', { exact: '15.11', note: roundsInside }],
      currentAngleDeg: ['-30.2', '°'],
      powerFactor: ['0.864', ''],
      apparentPowerVa: ['12023', 'VA', { exact: '12041', note: roundsInside }],
      inputPowerW: ['10391', 'W', { exact: '10404', note: roundsInside }],
      reactivePowerVar: ['6048', 'var', { exact: '6062', note: roundsInside }],
      statorLossW: ['136.6', 'W', { exact: '137.0', note: roundsInside }],
      rotorLossW: ['120.2', 'W', { exact: '120.7', note: roundsInside }],
      coreLossW: ['606.5', 'W', { exact: '611.7', note: roundsInside }],
      airGapPowerW: ['9613', 'W', { exact: '9655', note: roundsInside }],
      mechanicalPowerW: ['9493', 'W', { exact: '9534', note: roundsInside }],
      shaftHp: ['12.55', 'hp', { exact: '12.56', note: roundsInside }],
      efficiencyRatio: ['0.901', '', { exact: '0.900', note: roundsInside }],
    },
  ),
  ...rowsOf(
    {
      id: 'E-7',
      source: 'chapman',
      place: 'ex. 7-3 and 7-5',
      basis: 'memory',
      given: { ...chapmanMotor, slipRatio: 0.022, rotationalLossW: 1100 },
    },
    {
      speedRpm: ['1760', '1/min'],
      lineCurrentA: ['18.88', 'A', { exact: '18.89', note: memoryOfChapman }],
      currentAngleDeg: ['-33.6', '°', { exact: '-33.68', note: memoryOfChapman }],
      powerFactor: ['0.833', '', { exact: '0.832', note: memoryOfChapman }],
      shaftPowerW: ['10485', 'W', { exact: '10478', note: memoryOfChapman }],
      electromagneticTorqueNm: ['62.8', 'N·m'],
      shaftTorqueNm: ['56.9', 'N·m', { exact: '56.84', note: memoryOfChapman }],
      efficiencyPercent: ['83.7', '%'],
      breakdownTorqueNm: ['229', 'N·m', { exact: '230.80', note: memoryOfChapman }],
      breakdownSlipRatio: ['0.198', '', { exact: '0.2014', note: memoryOfChapman }],
      startTorqueNm: ['104', 'N·m', { exact: '106.56', note: memoryOfChapman }],
    },
  ),
  ...rowsOf(
    {
      id: 'E-7b',
      source: 'chapman',
      place: 'ex. 7-5, rotor resistance doubled',
      basis: 'memory',
      given: { ...chapmanMotor, rotorResistanceOhm: 0.664, slipRatio: 1 },
    },
    {
      breakdownSlipRatio: ['0.396', '', { exact: '0.4028', note: memoryOfChapman }],
      startTorqueNm: ['170', 'N·m', { exact: '174.06', note: memoryOfChapman }],
    },
  ),
  ...rowsOf(
    {
      id: 'E-8',
      source: 'guru-hiziroglu',
      place: 'ex. 9.4 and 9.5',
      basis: published,
      given: {
        phaseVoltageV: 120,
        frequencyHz: 60,
        polePairs: 3,
        statorResistanceOhm: 0.1,
        statorReactanceOhm: 0.15,
        rotorResistanceOhm: 0.2,
        rotorReactanceOhm: 0.25,
      },
    },
    {
      mostPowerSlipRatio: ['0.286', ''],
      mostPowerW: ['27000', 'W'],
      mostPowerTorqueNm: ['300.8', 'N·m'],
      breakdownSlipRatio: ['0.485', ''],
      breakdownTorqueNm: ['335.5', 'N·m'],
      breakdownPowerW: ['21.71', 'kW'],
    },
  ),
  ...rowsOf(
    {
      id: 'E-9',
      source: 'kosow',
      place: 'ex. 12.16 and 12.18',
      basis: published,
      given: {
        lineVoltageV: 220,
        frequencyHz: 60,
        polePairs: 3,
        statorResistanceOhm: 0.3,
        statorReactanceOhm: 0.5,
        rotorResistanceOhm: 0.144,
        rotorReactanceOhm: 0.2,
        magnetisingReactanceOhm: 13.5,
        slipRatio: 0.02,
        rotationalLossW: 300,
      },
    },
    {
      lineCurrentA: ['18.69', 'A'],
      currentAngleDeg: ['-31.75', '°'],
      powerFactor: ['0.850', ''],
      phaseInputW: ['2018', 'W', { exact: '2019', note: roundsInside }],
      shaftPowerW: ['5327', 'W'],
      efficiencyPercent: ['87.96', '%'],
      startA: ['153.9', 'A'],
      startAngleDeg: ['-57.8', '°'],
      startPowerFactor: ['0.533', ''],
    },
  ),
  ...rowsOf(
    {
      id: 'E-12a',
      source: 'srivastava',
      place: 'ex. 5.24, direct on line',
      basis: published,
      given: srivastavaMotor,
    },
    { lineCurrentA: ['101.9', 'A'], currentAngleDeg: ['-76.7', '°'] },
  ),
  ...rowsOf(
    {
      id: 'E-12b',
      source: 'srivastava',
      place: 'ex. 5.24, 0.5 Ω before the stator',
      basis: published,
      given: { ...srivastavaMotor, statorResistanceOhm: 0.7 },
    },
    { lineCurrentA: ['95.7', 'A'], currentAngleDeg: ['-66.1', '°'] },
  ),
  ...rowsOf(
    {
      id: 'E-12c',
      source: 'srivastava',
      place: 'ex. 5.24, 0.5 Ω in the rotor',
      basis: published,
      given: { ...srivastavaMotor, rotorResistanceOhm: 0.9 },
    },
    { lineCurrentA: ['96.1', 'A'], currentAngleDeg: ['-67.2', '°'] },
  ),
  ...rowsOf(
    {
      id: 'E-12d',
      source: 'srivastava',
      place: 'ex. 5.24, half the voltage',
      basis: published,
      given: { ...srivastavaMotor, lineVoltageV: 220 },
    },
    { lineCurrentA: ['50.9', 'A'] },
  ),
  ...rowsOf(
    {
      id: 'E-14',
      source: 'fitzgerald',
      place: 'ex. 6.5, p. 335',
      basis: published,
      given: {
        frequencyHz: 60,
        polePairs: 2,
        statorResistanceOhm: 0.262,
        statorToRotorRatio: 0.429,
        freeV: 219,
        freeA: 5.7,
        freeW: 380,
        heldV: 26.5,
        heldA: 18.57,
        heldW: 675,
        heldHz: 15,
        startA: 83.3,
        startW: 20100,
      },
    },
    {
      rotationalLossW: ['354', 'W'],
      rotorResistanceOhm: ['0.447', 'Ω'],
      statorReactanceOhm: [
        '0.635',
        'Ω',
        {
          exact: '0.633',
          note: 'The book takes 0.429 of the rounded 1.48 Ω.',
        },
      ],
      rotorReactanceOhm: ['1.48', 'Ω'],
      magnetisingReactanceOhm: ['21.2', 'Ω'],
      startTorqueNm: ['77.7', 'N·m'],
    },
  ),
  ...rowsOf(
    {
      id: 'E-15',
      source: 'hubert',
      place: 'ex. 4.6',
      basis: published,
      given: {
        shaftPowerW: 74600,
        horsepower: 100,
        efficiencyRatio: 0.91,
        coreLossW: 1697,
        statorLossW: 2803,
        rotorLossW: 1549,
        voltageV: 230,
        currentA: 248,
        synchronousRpm: 1200,
      },
    },
    {
      inputPowerW: ['81978', 'W'],
      airGapPowerW: ['77478', 'W'],
      speedRpm: ['1176.0', '1/min'],
      powerFactor: ['0.830', ''],
      shaftTorqueLbFt: ['446.6', 'lb-ft'],
    },
  ),
];

/** Kloss: K-1, K-3, K-5. */
const klossRows = [
  ...rowsOf(
    {
      id: 'K-1',
      source: 'kosow',
      place: 'ex. 9.14, p. 306',
      basis: published,
      given: { breakdownTorque: 17.75, breakdownSlipRatio: 0.3, runningSlipRatio: 0.0333 },
    },
    { runningTorqueLbFt: ['3.9', 'lb-ft'], startTorqueLbFt: ['9.77', 'lb-ft'] },
  ),
  ...rowsOf(
    {
      id: 'K-3',
      source: 'nagrath-kothari',
      place: 'ex. 9.10, p. 163',
      basis: published,
      given: { startingCurrentRatio: 5, ratedSlipRatio: 0.04 },
    },
    {
      breakdownSlipRatio: ['0.2', ''],
      breakdownTorqueRatio: ['2.6', ''],
      startingTorqueRatio: ['1.0', ''],
    },
  ),
  ...rowsOf(
    {
      id: 'K-5',
      source: 'nagrath-kothari',
      place: 'ex. 9.3',
      basis: published,
      given: { breakdownByStartRatio: 2, breakdownByRatedRatio: 2 },
    },
    {
      breakdownSlipRatio: ['0.268', ''],
      ratedSlipRatio: ['0.072', ''],
      startingCurrentRatio: [
        '3.6',
        '',
        {
          exact: '3.73',
          note: 'Here start and rated torque are equal, so (I_s/I_r)² is 1/s_r exactly: 3.73. Why the book has less is not known.',
        },
      ],
    },
  ),
];

/** Another voltage or frequency at the plain machine: V-1, V-9, V-11, V-13, V-14, V-16, V-18. */
const supplyRows = [
  ...rowsOf(
    {
      id: 'V-1',
      source: 'kosow',
      place: 'ex. 9.4, p. 286',
      basis: published,
      given: { torque: 225, currentA: 700, fromV: 208, toV: 120 },
    },
    {
      torqueLbFt: ['75', 'lb-ft'],
      currentA: ['403', 'A', { exact: '404', note: 'The book cuts 403.8 off instead of rounding.' }],
    },
  ),
  ...rowsOf(
    {
      id: 'V-9',
      source: 'salam',
      place: 'ex. 7.3, p. 250',
      basis: published,
      given: { torque: 230, currentA: 560, fromV: 230, toV: 150 },
    },
    { torqueNm: ['97.8', 'N·m'], currentA: ['365.2', 'A'] },
  ),
  ...rowsOf(
    {
      id: 'V-11',
      source: 'hubert',
      place: 'ex. 5.4',
      basis: published,
      given: { horsepower: 50, speedRpm: 1760, startTorqueRatio: 1.4, fromV: 100, toV: 90 },
    },
    { fallLbFt: ['28.35', 'lb-ft'], startTorqueLbFt: ['169.2', 'lb-ft'] },
  ),
  ...rowsOf(
    {
      id: 'V-13',
      source: 'hubert',
      place: 'ex. 5.8',
      basis: published,
      given: { torque: 270.1, fromV: 240, toV: 230, fromHz: 60, toHz: 58 },
    },
    { torqueLbFt: ['265.5', 'lb-ft'] },
  ),
  ...rowsOf(
    {
      id: 'V-14',
      source: 'nagrath-kothari',
      place: 'ex. 9.17',
      basis: published,
      given: { breakdownSlipRatio: 0.2, fromHz: 50, toHz: 60 },
    },
    { startCurrentRatio: ['0.838', ''], breakdownTorqueRatio: ['0.694', ''] },
  ),
  ...rowsOf(
    {
      id: 'V-16',
      source: 'srivastava',
      place: 'ex. 5.23',
      basis: published,
      // The book gives 0.6 Ω for both resistances; its star torque at four poles makes 0.2 Ω of it the rotor's.
      given: {
        lineVoltageV: 440,
        frequencyHz: 50,
        polePairs: 2,
        statorResistanceOhm: 0.4,
        rotorResistanceOhm: 0.2,
        reactanceOhm: 2.5,
        lowV: 44,
        lowHz: 5,
      },
    },
    {
      starA: ['98.8', 'A'],
      starTorqueNm: ['37.3', 'N·m'],
      deltaA: [
        '254',
        'A',
        { exact: '296.4', note: 'Three times the star current; the printed figure is an error of the book.' },
      ],
      deltaTorqueNm: ['111.9', 'N·m'],
      lowA: ['39.1', 'A'],
      lowTorqueNm: ['58.3', 'N·m'],
    },
  ),
  ...rowsOf(
    {
      id: 'V-18',
      source: 'mcpherson',
      place: 'ex. 4.6',
      basis: published,
      given: { slipRatio: 0.03, voltageRatio: 0.9, frequencyHz: 60, polePairs: 2 },
    },
    {
      slipFactor: ['1.235', ''],
      rotorCurrentFactor: ['1.11', ''],
      rotorLossFactor: ['1.235', ''],
      speedRpm: ['1733', '1/min'],
    },
  ),
];

export const motorsThreePhaseRows = [...circuitRows, ...klossRows, ...supplyRows];

/**
 * A machine that was built and measured (modelica-library): 18.5 kW, 400 V, 50 Hz, four poles, delta. Resistances at 20 °C; copper
 * and aluminium at the 90 °C of the measurement. No circuit meets a measurement to its last digit.
 */
export const measuredMachine = {
  circuit: {
    statorResistance20Ohm: 0.56,
    rotorResistance20Ohm: 0.42,
    statorReactanceOhm: 1.52,
    rotorReactanceOhm: 2.31,
    magnetisingReactanceOhm: 66.4,
    coreLossW: 410,
    rotationalLossW: 180 + 102.2,
  },
  windingC: 90,
  copperPerK: 0.00392,
  aluminiumPerK: 0.004,
  measured: {
    lineCurrentA: 32.85,
    powerFactor: 0.898,
    speedRpm: 1462.5,
    inputPowerW: 20444,
    statorLossW: 770.1,
    rotorLossW: 481.6,
    shaftPowerW: 18500,
    efficiencyRatio: 0.9049,
    shaftTorqueNm: 120.79,
  },
};
