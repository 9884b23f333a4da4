import type { QuantityKind } from '@strandwise/working/quantity'
import type { AskedChoice, AskedQuantity } from './question.ts'

type More = Partial<Omit<AskedQuantity, 'kind' | 'id' | 'title' | 'quantity' | 'typed'>>

/** Default unit and range of values by kind. */
const usual: Readonly<Partial<Record<QuantityKind, { readonly unit: string; readonly high: number; readonly low?: number }>>> = {
  areaMm2: { unit: 'mm²', high: 120 },
  lengthMm: { unit: 'mm', high: 500 },
  lengthM: { unit: 'm', high: 500 },
  temperatureC: { unit: '°C', high: 200, low: -60 },
  currentA: { unit: 'A', high: 500 },
  voltageV: { unit: 'V', high: 60 },
  resistanceOhm: { unit: 'Ω', high: 1e6 },
  ratio: { unit: '', high: 1000 },
}

/** A field for a quantity with its default value. */
export function quantity(id: string, title: string, kind: QuantityKind, typed: string, more: More = {}): AskedQuantity {
  const { unit, high, low = 0 } = usual[kind] ?? { unit: '', high: 1e6 }
  const shown = typed === '' ? '1' : typed
  return { kind: 'quantity', id, title, quantity: kind, unit, low, high, example: `${shown} ${more.unit ?? unit}`.trim(), typed, ...more }
}

export function choice(id: string, title: string, typed: string, choices: Readonly<Record<string, string>>, note?: string): AskedChoice {
  return {
    kind: 'choice',
    id,
    title,
    typed,
    choices: Object.entries(choices).map(([value, label]) => ({ value, label })),
    ...(note === undefined ? {} : { note }),
  }
}

/** Size of the conductor, as area, gauge or strands. */
export const sizeField = (typed: string, id = 'size', title = 'Size of the conductor'): AskedQuantity =>
  quantity(id, title, 'areaMm2', typed, { low: 0.05, note: 'As area, gauge or strands: 1 mm², 18 AWG, 32/0.2 mm.' })
