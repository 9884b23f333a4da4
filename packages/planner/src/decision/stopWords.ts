import type { SectionWords } from '../facts/inner.ts'

/** Text of refused circuits, and who to ask. */
export const stopWords = {
  airbag: {
    says: 'airbag wiring: off limits',
    text: 'Airbag and belt-tensioner wiring: leave it alone. Have the maker’s workshop fit a new harness part.',
  },
  'high-voltage': {
    says: 'high voltage: off limits',
    text: 'High-voltage circuit: off limits. It may stay live for minutes after shut-off; hand it to people trained for that vehicle.',
  },
  mains: { says: 'mains: licensed people only', text: 'Mains, shore power and inverter outputs: licensed people only. Ask an electrician.' },
  safety: {
    says: 'a safety circuit: the maker’s procedure only',
    text: 'Braking, steering, throttle and other safety circuits: the maker’s own procedure only, or a new part. Ask the maker’s workshop.',
  },
  'fuel-or-explosive': {
    says: 'fuel or explosive atmosphere: no repair',
    text: 'Wiring in a fuel tank, gas locker or explosive atmosphere: no repair by this plan. Replace the part, or have it done.',
  },
  voltage: {
    says: '{supply} is above {most} {waveform}',
    text: '{supply} is above the {most} {waveform} up to which this plan goes: the shock itself is the danger. Licensed people only.',
  },
} as const satisfies SectionWords
