/** What a number measures. Apparent, real and reactive power are three dimensions here: they are never interchanged. */
export type Dimension =
  | 'current'
  | 'voltage'
  | 'apparent-power'
  | 'real-power'
  | 'reactive-power'
  | 'resistance'
  | 'inductance'
  | 'capacitance'
  | 'time'
  | 'temperature'
  | 'temperature-rise'
  | 'ratio'
  | 'energy'
  | 'charge'
  | 'frequency'
  | 'length'
  | 'area'
  | 'mass'
  | 'count'
  | 'cycles'
  | 'angle';

/**
 * One way of writing a dimension. A figure x in this unit is x · scale · 10^tens in the dimension's base unit.
 * Powers of ten are kept apart from the scale so that "4.35 kA" becomes exactly 4350, without binary noise.
 */
export type Unit = {
  symbol: string;
  /** Other spellings; upper and lower case are sorted out by the look-up. */
  aliases: readonly string[];
  tens: number;
  scale: number;
};

const tensOf = { p: -12, n: -9, µ: -6, m: -3, '': 0, k: 3, M: 6 } as const;
type Prefix = keyof typeof tensOf;

/** Builds a unit with its prefixed forms; an alias takes the same prefix ("kohm" beside "kΩ"). */
function prefixed(symbol: string, prefixes: readonly Prefix[], aliases: readonly string[] = []): Unit[] {
  return prefixes.map((prefix) => ({
    symbol: prefix + symbol,
    aliases: aliases.map((alias) => prefix + alias),
    tens: tensOf[prefix],
    scale: 1,
  }));
}

function plain(symbol: string, aliases: readonly string[] = [], scale = 1, tens = 0): Unit {
  return { symbol, aliases, tens, scale };
}

/**
 * Every accepted unit by dimension. The base unit of each dimension (the one values are held in) has tens 0 and
 * scale 1: A, V, VA, W, var, Ω, H, F, s, °C, K, 1, Wh, Ah, Hz, m, mm², kg, 1, cycles, °.
 * Source: iso-80000-1 (prefixes and symbols, from memory); yard-and-pound (1 ft = 0.3048 m, 1 in = 0.0254 m,
 * 1 lb = 0.45359237 kg, and from them 1 hp = 550 ft·lbf/s = 745.699872 W; from memory)
 */
export const units: Readonly<Record<Dimension, readonly Unit[]>> = {
  current: prefixed('A', ['', 'µ', 'm', 'k'], ['amp', 'amps', 'ampere', 'amperes', 'Aac', 'Adc']),
  voltage: prefixed('V', ['', 'µ', 'm', 'k'], ['volt', 'volts', 'Vac', 'Vdc']),
  'apparent-power': prefixed('VA', ['', 'k', 'M'], ['voltampere', 'voltamperes', 'voltamp', 'voltamps']),
  'real-power': [...prefixed('W', ['', 'm', 'k', 'M'], ['watt', 'watts']), plain('hp', [], 745.699872)],
  'reactive-power': prefixed('var', ['', 'k', 'M'], ['vars']),
  resistance: prefixed('Ω', ['', 'µ', 'm', 'k', 'M'], ['ohms']),
  inductance: prefixed('H', ['', 'µ', 'm'], ['henry']),
  capacitance: [
    ...prefixed('F', ['', 'p', 'n', 'm'], ['farad', 'farads']),
    // "MFD" on capacitor cans is microfarad, not a mega-unit.
    plain('µF', ['µfarad', 'µfarads', 'mfd'], 1, -6),
  ],
  time: [
    ...prefixed('s', ['', 'µ', 'm'], ['sec', 'secs', 'second', 'seconds']),
    plain('min', ['m', 'mins', 'minute', 'minutes'], 60),
    plain('h', ['hr', 'hrs', 'hour', 'hours'], 3600),
    plain('d', ['day', 'days'], 86_400),
  ],
  temperature: [plain('°C', ['C', '°', 'celsius', '°celsius'])],
  'temperature-rise': [plain('K', ['kelvin', 'kelvins', '°C', 'C'])],
  ratio: [plain(''), plain('%', ['percent', 'pct'], 1, -2)],
  energy: [
    ...prefixed('Wh', ['', 'k', 'M'], ['watthour', 'watthours']),
    plain('J', ['joule', 'joules'], 1 / 3600),
    plain('kJ', [], 1 / 3600, 3),
    plain('MJ', [], 1 / 3600, 6),
  ],
  charge: prefixed('Ah', ['', 'm', 'k'], ['amphour', 'amphours', 'amperehour', 'amperehours']),
  frequency: prefixed('Hz', ['', 'k', 'M'], ['hertz']),
  length: [
    ...prefixed('m', ['', 'm', 'k'], ['metre', 'metres', 'meter', 'meters']),
    plain('cm', [], 1, -2),
    plain('ft', ['foot', 'feet'], 0.3048),
    plain('in', ['inch', 'inches'], 0.0254),
  ],
  area: [plain('mm²', ['sqmm', 'mmsq']), plain('cm²', ['sqcm', 'cmsq'], 1, 2)],
  mass: [
    plain('kg', ['kgs', 'kilo', 'kilos', 'kilogram', 'kilograms']),
    plain('g', ['gram', 'grams'], 1, -3),
    plain('t', ['tonne', 'tonnes'], 1, 3),
    plain('lb', ['lbs', 'pound', 'pounds'], 0.45359237),
  ],
  count: [plain('')],
  cycles: [plain('cycles', ['cycle']), plain('')],
  angle: [
    plain('°', ['deg', 'degs', 'degree', 'degrees']),
    plain('rad', ['radian', 'radians'], 180 / Math.PI),
  ],
};

/** Every dimension, in the order of the table. */
export const dimensions = Object.keys(units) as readonly Dimension[];
