import type { PracticeRule, RuleCondition } from '@strandwise/core/rules'

const situations: Readonly<Record<string, string>> = {
  'gas-tool': 'where the tool burns gas',
  'solvent-used': 'where you clean with a solvent',
  'glass-brush': 'where you brush with glass fibre',
  'mains-fed-supply': 'where the supply is fed from the mains',
  'mains-powered-tool': 'where the tool runs from the mains',
  'electronics-on-wire': 'where electronics hang on the wire',
  'battery-disconnect': 'where you disconnect a battery',
  'negative-ground': 'where the negative post is tied to the frame',
  'lead-acid-battery': 'near a lead-acid battery',
  'lithium-battery': 'near a lithium battery',
  'battery-near': 'near a battery',
  'battery-lead': 'on a battery lead',
  'petrol-engine': 'near a petrol engine',
  'restraint-system-near': 'near airbags or belt tensioners',
  'hybrid-vehicle': 'on a hybrid vehicle',
  'capacitor-bank': 'where capacitors store charge',
  'raised-vehicle': 'under a raised vehicle or machine',
  'moving-machine': 'near a machine that can move',
  'charging-circuit': 'on a charging circuit',
  'welding-nearby': 'where there is welding nearby',
  'shore-power': 'where shore power comes aboard',
  'people-in-water': 'where people are in the water',
}

const rules: Readonly<Record<string, string>> = { 'small-craft': 'a boat', aircraft: 'an aircraft', 'road-vehicle': 'a road vehicle', space: 'spacecraft work' }

const plain = (value: string | number | boolean): string => String(value).replaceAll('-', ' ')

/** A fact as words before a rule; a field without entry is printed as it is. */
const phrases: Readonly<Record<string, (values: string) => string>> = {
  circuit: (values) => `on a ${values} circuit`,
  rules: (values) => `on ${values}`,
  location: (values) => `in a place that is ${values}`,
  method: (values) => `for a ${values}`,
  tool: (values) => `with ${values}`,
  solder: (values) => `with ${values}`,
  insulation: (values) => `on ${values}`,
  step: (values) => `while ${values}`,
  reading: (values) => `for a reading of ${values}`,
  fuse: () => 'where there is a fuse',
  supplyV: (values) => `with a supply ${values} V`,
}

const comparisons = { '=': '', '!=': 'not ', '<': 'below ', '<=': 'at most ', '>': 'above ', '>=': 'at least ' } as const

function phrase({ field, op, values }: RuleCondition): string {
  const words = values.map((value) =>
    field === 'situation' ? (situations[String(value)] ?? `where: ${plain(value)}`) : field === 'rules' ? (rules[String(value)] ?? plain(value)) : plain(value),
  )
  const listed = comparisons[op] + words.join(' or ')
  return field === 'situation' ? listed : (phrases[field]?.(listed) ?? `${field} ${listed}`)
}

/** Conditions of a rule as the head of its line: "On a boat, near a petrol engine"; empty for an unconditional rule. */
export function conditionWords(conditions: PracticeRule['conditions']): string {
  const words = conditions.map(phrase).join(', ')
  return words.charAt(0).toUpperCase() + words.slice(1)
}
