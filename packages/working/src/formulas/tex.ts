import { type MathNode, parseExpression, type SymbolNode } from './mathematics.ts'

/** Digits with which values stand in a shown formula. */
const shownDigits = 5
/** From this size on, and below that one, zeros would have to be counted: such a number stands as a power of ten. */
const long = { from: 1e6, below: 1e-4 } as const

const isLong = (value: number): boolean => value !== 0 && (Math.abs(value) >= long.from || Math.abs(value) < long.below)

/** A number with the digits that a page shows, in plain characters. */
export function plainNumber(value: number): string {
  const rounded = Number(value.toPrecision(shownDigits))
  return String(isLong(value) ? rounded : Number(rounded.toFixed(shownDigits + 3)))
}

/** The same number in TeX: a power of ten stands as one. */
function texNumber(value: number): string {
  return isLong(value) ? texPower(value.toExponential(shownDigits - 1)) : plainNumber(value)
}

function texPower(text: string): string {
  const [mantissa = '0', exponent = '0'] = text.split('e')
  return `${Number(mantissa)}\\times 10^{${Number(exponent)}}`
}

/** A unit such as "W/(m K)" or "mm²" in TeX, with the thin space before it; nothing for a bare number. */
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

/** An expression in TeX, each name set as it is asked for. */
export function texOf(expression: string, setting: (name: string) => string | undefined): string {
  const handler = (node: MathNode): string | undefined => (node.type === 'SymbolNode' ? leadingSpace(setting((node as SymbolNode).name)) : undefined)
  return parseExpression(expression)
    .toTex({ parenthesis: 'auto', handler })
    .replace(/(?<=[{(]) /g, '')
    .trim()
}

/** Commands end at a letter: a name that follows one needs a space. */
function leadingSpace(tex: string | undefined): string | undefined {
  return tex === undefined ? undefined : ` ${tex}`
}

/** A value in place of a name: in brackets where a sign or a power of ten would be misread. */
export function texValue(value: number): string {
  const tex = texNumber(value)
  return value < 0 || tex.includes('\\times') ? `\\left(${tex}\\right)` : tex
}
