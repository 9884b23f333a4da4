import { type MathNode, parseExpression, type SymbolNode } from './mathematics.ts'

/** Significant digits of values in a shown formula. */
const shownDigits = 5
/** Numbers outside this range are shown as a power of ten, to avoid counting zeros. */
const long = { from: 1e6, below: 1e-4 } as const

const isLong = (value: number): boolean => value !== 0 && (Math.abs(value) >= long.from || Math.abs(value) < long.below)

/** A number with the digits shown, as plain text. */
export function plainNumber(value: number): string {
  const rounded = Number(value.toPrecision(shownDigits))
  return String(isLong(value) ? rounded : Number(rounded.toFixed(shownDigits + 3)))
}

/** The same number in TeX, with powers of ten. */
function texNumber(value: number): string {
  return isLong(value) ? texPower(value.toExponential(shownDigits - 1)) : plainNumber(value)
}

function texPower(text: string): string {
  const [mantissa = '0', exponent = '0'] = text.split('e')
  return `${Number(mantissa)}\\times 10^{${Number(exponent)}}`
}

/** A unit such as "W/(m K)" or "mm²" in TeX, with a leading thin space; empty for a bare number. */
function texUnit(unit: string): string {
  if (unit === '1') return ''
  const powers = unit
    .replaceAll('²', '^2')
    .replaceAll('³', '^3')
    .replace(/\^(-?[\d.]+)/g, '^{$1}')
  const letters = powers.replaceAll(' ', '\\,').replaceAll('Ω', '\\Omega{}').replaceAll('µ', '\\mu{}').replaceAll('°', '^\\circ{}').replaceAll('%', '\\%')
  return `\\,\\mathrm{${letters}}`
}

/** A value with its unit in TeX. */
export function texQuantity(value: number, unit: string): string {
  return texNumber(value) + texUnit(unit)
}

/** An expression in TeX; `setting` gives the TeX of each name. */
export function texOf(expression: string, setting: (name: string) => string | undefined): string {
  const handler = (node: MathNode): string | undefined => (node.type === 'SymbolNode' ? leadingSpace(setting((node as SymbolNode).name)) : undefined)
  return parseExpression(expression)
    .toTex({ parenthesis: 'auto', handler })
    .replace(/(?<=[{(]) /g, '')
    .trim()
}

/** A TeX command ends at a letter, so a following name needs a space. */
function leadingSpace(tex: string | undefined): string | undefined {
  return tex === undefined ? undefined : ` ${tex}`
}

/** A value substituted for a name: in brackets if a sign or a power of ten could be misread. */
export function texValue(value: number): string {
  const tex = texNumber(value)
  return value < 0 || tex.includes('\\times') ? `\\left(${tex}\\right)` : tex
}
