/** The table of units: names; factor to the kind's own unit as times/over (two numbers, so that 25 mm is 25/1000 and not 25 x 0.001); prefixes allowed on the first name; offset added before multiplying (temperatures only). The first name is the symbol; names are written in normalised form. Every factor is exact by definition. */
export type UnitRow = readonly [names: string, times: number, over: number, prefixes?: string, offset?: number]

/** SI prefixes as powers of ten, with their words. */
export const prefixes: Readonly<Record<string, readonly [word: string, power: number]>> = {
  n: ['nano', -9],
  u: ['micro', -6],
  m: ['milli', -3],
  c: ['centi', -2],
  d: ['deci', -1],
  h: ['hecto', 2],
  k: ['kilo', 3],
  M: ['mega', 6],
  G: ['giga', 9],
}

/** International pound in kg, standard gravity in m/s2, and the pound-force in N that they make. */
const poundKg = 0.45359237
const gravity = 9.80665
const poundForceN = poundKg * gravity
/** International inch in m: 25.4 mm. */
const inchM = 0.0254

/** In metres. */
export const lengthRows: readonly UnitRow[] = [
  ['m metre meter metres meters', 1, 1, 'numcdk'],
  ['MM', 1, 1000],
  ['micron microns', 1, 1e6],
  ['in inch inches "', 127, 5000],
  ["ft foot feet '", 381, 1250],
  ['kft', 304800, 1000],
  ['yd yard yards', 1143, 1250],
  ['mi mile miles', 201168, 125],
  ['mil mils thou', 127, 5e6],
]

/** In mm2; squares of lengths are added. */
export const areaRows: readonly UnitRow[] = [
  ['cmil cmils CM circmil circmils circularmil circularmils', Math.PI * 16129, 1e8],
  ['kcmil kcmils MCM kCM', Math.PI * 16129, 1e5],
]

/** In mm3; cubes of lengths are added. */
export const volumeRows: readonly UnitRow[] = [
  ['l litre liter litres liters', 1e6, 1, 'umcd'],
  ['L', 1e6, 1, 'umcd'],
  ['cc ccm', 1000, 1],
  ['USfloz', 29573.5295625, 1],
  ['UKfloz', 28413.0625, 1],
  ['USgal', 3785411.784, 1],
  ['UKgal', 4546090, 1],
]

/** Temperatures in degC and differences in K, which have no offset. */
export const temperatureRows: readonly UnitRow[] = [
  ['°C C degC degreeC degreesC Celsius degreesCelsius degreeCelsius centigrade C°', 1, 1],
  ['K kelvin kelvins degK °K', 1, 1, 'um', -273.15],
  ['°F F degF degreeF degreesF Fahrenheit degreesFahrenheit degreeFahrenheit F°', 5, 9, '', -32],
  ['°R degR Rankine', 5, 9, '', -491.67],
]

export const resistanceRows: readonly UnitRow[] = [
  ['ohm', 1, 1, 'numkMG'],
  ['ohms', 1, 1, 'numkMG'],
  ['R', 1, 1],
  ['kilohm kilohms', 1000, 1],
  ['megohm megohms', 1e6, 1],
  ['microhm microhms', 1, 1e6],
]

export const currentRows: readonly UnitRow[] = [
  ['A amp amps ampere amperes', 1, 1, 'numk'],
  ['ADC AAC', 1, 1],
]

export const voltageRows: readonly UnitRow[] = [
  ['V volt volts', 1, 1, 'numk'],
  ['VDC VAC', 1, 1],
]

export const powerRows: readonly UnitRow[] = [
  ['W watt watts', 1, 1, 'numkM'],
  ['mechanicalhp', 550 * 12 * inchM * poundForceN, 1],
  ['metrichp PS', 75 * gravity, 1],
]

export const forceRows: readonly UnitRow[] = [
  ['N newton newtons', 1, 1, 'umkM'],
  ['lbf lb lbs pound pounds poundforce poundsforce', poundForceN, 1],
  ['ozf ounceforce', poundForceN, 16],
  ['kgf kp kilogramforce', gravity, 1],
  ['gf', gravity, 1000],
]

export const massRows: readonly UnitRow[] = [
  ['g gram grams gramme grammes', 1, 1000, 'umkM'],
  ['t tonne tonnes metricton metrictons', 1000, 1],
  ['lb lbs lbm pound pounds', poundKg, 1],
  ['oz ounce ounces', poundKg, 16],
  ['shortton shorttons', 2000 * poundKg, 1],
  ['longton longtons', 2240 * poundKg, 1],
]

export const timeRows: readonly UnitRow[] = [
  ['s sec secs second seconds', 1, 1, 'num'],
  ['min mins minute minutes', 60, 1],
  ['h hr hrs hour hours', 3600, 1],
  ['d day days', 86400, 1],
  ['week weeks', 604800, 1],
]

export const ratioRows: readonly UnitRow[] = [
  ['% percent pct', 1, 100],
  ['‰ permille', 1, 1000],
  ['ppm', 1, 1e6],
]

export const angleRows: readonly UnitRow[] = [
  ['rad radian radians', 1, 1, 'um'],
  ['° deg degree degrees', Math.PI, 180],
  ["' arcmin arcminute arcminutes", Math.PI, 10800],
  ['" arcsec arcsecond arcseconds', Math.PI, 648000],
  ['gon grad gradian gradians', Math.PI, 200],
  ['turn turns rev revs revolution revolutions', 2 * Math.PI, 1],
]

/** In pascals. */
export const pressureRows: readonly UnitRow[] = [
  ['Pa pascal pascals', 1, 1, 'hkMG'],
  ['bar bars', 1e5, 1, 'm'],
  ['psi', poundForceN, inchM ** 2],
  ['ksi', 1000 * poundForceN, inchM ** 2],
  ['atm atmosphere atmospheres', 101325, 1],
  ['torr', 101325, 760],
  ['mmHg', 133.322387415, 1],
  ['inHg', 25.4 * 133.322387415, 1],
]

/** In m/s; lengths over times are added. */
export const speedRows: readonly UnitRow[] = [
  ['mph', 1397, 3125],
  ['kph kmh kmph', 5, 18],
  ['kn kt knot knots', 463, 900],
  ['fpm', 127, 25000],
  ['fps', 381, 1250],
  ['mps', 1, 1],
]

export const frequencyRows: readonly UnitRow[] = [
  ['Hz hertz cps 1/s /s s-1', 1, 1, 'kMG'],
  ['rpm rev/min r/min 1/min /min min-1', 1, 60],
]

/** Names that different trades use for different units: refused, with both readings shown. */
export const doubtful: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['areaMm2 cm', ['cm²', 'cmil']],
  ['powerW hp', ['mechanical hp', 'metric hp']],
  ['powerW horsepower', ['mechanical hp', 'metric hp']],
  ['massKg ton', ['short ton', 'long ton']],
  ['massKg tons', ['short ton', 'long ton']],
  ['timeS m', ['min', 'ms']],
  ['temperatureC °', ['°C', '°F']],
  ['temperatureC deg', ['°C', '°F']],
  ['temperatureC degrees', ['°C', '°F']],
  ['temperatureDifferenceK °', ['K', '°F']],
  ['temperatureDifferenceK deg', ['K', '°F']],
  ['temperatureDifferenceK degrees', ['K', '°F']],
  ['volumeMm3 floz', ['US fl oz', 'UK fl oz']],
  ['volumeMm3 gal', ['US gal', 'UK gal']],
  ['volumeMm3 gallons', ['US gal', 'UK gal']],
])
