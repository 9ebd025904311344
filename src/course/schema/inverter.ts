import { z } from 'zod';
import { type InverterDatasheet, type StatedPower, solveHeatNetwork } from '../../engine/inverter/index.ts';
import { type Dimension, parseQuantity } from '../../engine/quantities/index.ts';

const fault = (expected: string, found: string, hint: string): string =>
  `expected ${expected}, found ${found}; hint: ${hint}`;

/** A figure with its unit, as an author writes it. */
const quantity = (dimension: Dimension, example: string) =>
  z.union([z.string(), z.number()]).transform((written, context): number => {
    const parsed = parseQuantity(String(written), dimension);
    if (parsed.kind === 'ok') return parsed.value;
    context.addIssue({
      code: 'custom',
      message: fault(
        `${dimension.replaceAll('-', ' ')} such as ${example}`,
        `"${written}" (${parsed.reason})`,
        'write figure and unit',
      ),
    });
    return z.NEVER;
  });

/** Share from 0 to 1, written as "90 %" or 0.9. */
const share = (example: string) =>
  quantity('ratio', example).refine((ratio) => ratio >= 0 && ratio <= 1, {
    error: (issue) => fault('a share from 0 % to 100 %', String(issue.input), 'write a percentage'),
  });

const oneOf = <const Value extends number>(dimension: Dimension, unit: string, values: readonly Value[]) =>
  quantity(dimension, `${values[0]} ${unit}`).transform((value, context): Value => {
    const known = values.find((candidate) => candidate === value);
    if (known !== undefined) return known;
    context.addIssue({
      code: 'custom',
      message: fault(
        values.map((candidate) => `${candidate} ${unit}`).join(' or '),
        `${value} ${unit}`,
        'choose one of them',
      ),
    });
    return z.NEVER;
  });

/** Fields every stated rating has. */
const rating = { power: z.string(), 'power-factor': z.number().optional() };

/** Volt-amperes, or watts with a power factor. */
const statedPower = (
  stated: { power: string; 'power-factor'?: number | undefined },
  context: z.RefinementCtx,
): StatedPower => {
  const factor = stated['power-factor'];
  const refuse = (field: string, message: string): StatedPower => {
    context.addIssue({ code: 'custom', path: [field], message });
    return z.NEVER;
  };
  const apparent = parseQuantity(stated.power, 'apparent-power');
  if (apparent.kind === 'ok') {
    return factor === undefined
      ? { value: apparent.value, unit: 'VA', powerFactor: 1 }
      : refuse('power-factor', fault('none beside VA', String(factor), 'state it only beside W'));
  }
  const real = parseQuantity(stated.power, 'real-power');
  if (real.kind !== 'ok') {
    return refuse(
      'power',
      fault('a power such as 3 kVA or 2400 W', `"${stated.power}"`, 'write figure and unit'),
    );
  }
  if (factor !== undefined && !(factor > 0 && factor <= 1)) {
    return refuse(
      'power-factor',
      fault('above 0 up to 1', String(factor), 'correct it or leave it out for 1'),
    );
  }
  return { value: real.value, unit: 'W', powerFactor: factor ?? 1 };
};

const hotRating = z
  .strictObject({ ...rating, ambient: quantity('temperature', '40 °C') })
  .transform((stated, context) => ({ power: statedPower(stated, context), ambientC: stated.ambient }));
const timedRating = z
  .strictObject({ ...rating, for: quantity('time', '30 min') })
  .transform((stated, context) => ({ power: statedPower(stated, context), durationS: stated.for }));
const plainRating = z
  .strictObject(rating)
  .transform((stated, context) => ({ power: statedPower(stated, context) }));

/** The engine's field names and the author's, for messages. */
const authorNames: Readonly<Record<string, string>> = {
  longDuration: 'long-duration',
  currentLimit: 'current-limit',
  durationS: 'for',
  heatSinkTimeConstantS: 'heat-sink-time-constant',
  idleLossW: 'idle-loss',
  efficiencyHalfRatio: 'efficiency.at-half',
  efficiencyFullRatio: 'efficiency.at-full',
  ambientC: 'ambient',
  acNominalV: 'ac-nominal',
  frequencyHz: 'frequency',
  warnAtHeatRatio: 'warning-at',
  voltageHeldRatio: 'voltage-held-from',
  voltageLostCycles: 'voltage-lost-after',
  waitS: 'wait',
  reclaimS: 'reclaim',
  stopsToLockout: 'stops-to-lockout',
  lossPer100mRatio: 'loss-per-100-m',
  fromM: 'full-rating-up-to',
  maxM: 'usable-up-to',
};

const inAuthorNames = (message: string): string =>
  message.replace(/[A-Za-z0-9]+/g, (word) =>
    Object.hasOwn(authorNames, word) ? (authorNames[word] ?? word) : word,
  );

/** Refuses a datasheet that no heat network satisfies, at the field that is to blame. */
const checkSolvable = (datasheet: InverterDatasheet, context: z.RefinementCtx): void => {
  try {
    solveHeatNetwork(datasheet);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const message = inAuthorNames(error.message);
    const colon = message.indexOf(': ');
    context.addIssue({
      code: 'custom',
      path: message.slice(0, colon).split('.'),
      message: message.slice(colon + 2),
    });
  }
};

/**
 * An invented inverter's datasheet as authors write it, every figure with its unit, read into the engine's
 * `InverterDatasheet`. Accepted only if the heat model can satisfy all its points.
 */
export const inverterSchema = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, {
      error: (issue) => fault('a kebab-case id', `"${issue.input}"`, 'use a–z, 0–9 and single hyphens'),
    }),
    name: z.string().min(1),
    range: z.string().min(1).optional(),
    note: z.string().min(1).optional(),
    'dc-nominal': oneOf('voltage', 'V', [12, 24, 48]),
    'ac-nominal': quantity('voltage', '230 V'),
    frequency: oneOf('frequency', 'Hz', [50, 60]),
    'reference-ambient': quantity('temperature', '25 °C'),
    continuous: plainRating,
    hot: hotRating,
    'long-duration': timedRating,
    surge: timedRating,
    'current-limit': plainRating,
    'heat-sink-time-constant': quantity('time', '45 min'),
    'idle-loss': quantity('real-power', '15 W'),
    efficiency: z.strictObject({ 'at-half': share('94 %'), 'at-full': share('91 %') }),
    'warning-at': share('90 %'),
    'voltage-held-from': share('88 %'),
    'voltage-lost-after': quantity('cycles', '25 cycles'),
    wait: quantity('time', '30 s'),
    reclaim: quantity('time', '2 min'),
    'stops-to-lockout': z.int().min(1),
    altitude: z.strictObject({
      'full-rating-up-to': quantity('length', '1000 m'),
      'loss-per-100-m': share('1 %'),
      'usable-up-to': quantity('length', '4000 m'),
    }),
    mass: quantity('mass', '12 kg'),
    'cost-index': z.number().positive(),
  })
  .transform((sheet, context): InverterDatasheet => {
    const datasheet: InverterDatasheet = {
      id: sheet.id,
      name: sheet.name,
      ...(sheet.range === undefined ? {} : { range: sheet.range }),
      ...(sheet.note === undefined ? {} : { note: sheet.note }),
      dcNominalV: sheet['dc-nominal'],
      acNominalV: sheet['ac-nominal'],
      frequencyHz: sheet.frequency,
      referenceAmbientC: sheet['reference-ambient'],
      continuous: sheet.continuous,
      hot: sheet.hot,
      longDuration: sheet['long-duration'],
      surge: sheet.surge,
      currentLimit: sheet['current-limit'],
      heatSinkTimeConstantS: sheet['heat-sink-time-constant'],
      idleLossW: sheet['idle-loss'],
      efficiencyHalfRatio: sheet.efficiency['at-half'],
      efficiencyFullRatio: sheet.efficiency['at-full'],
      warnAtHeatRatio: sheet['warning-at'],
      voltageHeldRatio: sheet['voltage-held-from'],
      voltageLostCycles: sheet['voltage-lost-after'],
      waitS: sheet.wait,
      reclaimS: sheet.reclaim,
      stopsToLockout: sheet['stops-to-lockout'],
      altitude: {
        fromM: sheet.altitude['full-rating-up-to'],
        lossPer100mRatio: sheet.altitude['loss-per-100-m'],
        maxM: sheet.altitude['usable-up-to'],
      },
      massKg: sheet.mass,
      costIndex: sheet['cost-index'],
    };
    checkSolvable(datasheet, context);
    return datasheet;
  });
