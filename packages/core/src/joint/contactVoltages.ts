import { UnknownEntryError } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'
import type { MetalName, Provenance } from '../materials/index.ts'

/** Voltages over a clean contact at which its spot softens and melts; for plated metal the plating counts, so tinned copper is tin. */
export interface ContactVoltages {
  readonly softeningV: number
  readonly meltingV: number
  readonly provenance: Provenance
}

const provenance = { status: 'from memory', source: 'Holm, Electric Contacts, 1967: table of softening and melting voltages' } as const

/**
 * Softening and melting voltages of contact metals, near room temperature. No value is known for metals left out.
 *
 * @source Holm, Electric Contacts, 1967: table of softening and melting voltages (from memory)
 */
export const contactVoltages = /* @__PURE__ */ frozen({
  'annealed-copper': { softeningV: 0.12, meltingV: 0.43, provenance },
  'hard-drawn-copper': { softeningV: 0.12, meltingV: 0.43, provenance },
  'tinned-copper': { softeningV: 0.07, meltingV: 0.13, provenance },
  tin: { softeningV: 0.07, meltingV: 0.13, provenance },
  silver: { softeningV: 0.09, meltingV: 0.37, provenance },
  'aluminium-1350': { softeningV: 0.1, meltingV: 0.3, provenance },
} as const satisfies { readonly [name in MetalName]?: ContactVoltages })

/**
 * Softening and melting voltage of a contact metal.
 *
 * @equation row of contactVoltages
 * @symbol V_s - result - V - softening voltage, beside the melting voltage and their provenance
 * @throws UnknownEntryError with the known metals
 * @example
 * contactVoltagesOf('tin') // { softeningV: 0.07, meltingV: 0.13 }
 * @source Holm, Electric Contacts, 1967: table of softening and melting voltages (from memory)
 */
export function contactVoltagesOf(metal: MetalName): ContactVoltages {
  const table: Readonly<Record<string, ContactVoltages>> = contactVoltages
  const row = Object.hasOwn(table, metal) ? table[metal] : undefined
  if (row === undefined) throw new UnknownEntryError('metal', metal, Object.keys(table))
  return row
}
