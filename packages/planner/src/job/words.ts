/** Allowed words of a job, used by schema, form and messages. */
export const circuitKinds = [
  'power',
  'motor',
  'lighting',
  'signal',
  'data-pair',
  'thermocouple',
  'safety',
  'airbag',
  'high-voltage',
  'mains',
  'fuel-or-explosive',
] as const
export const ruleBodies = ['small-craft', 'aircraft', 'road-vehicle', 'space', 'none'] as const
export const metalNames = [
  'annealed-copper',
  'hard-drawn-copper',
  'tinned-copper',
  'copper-clad-aluminium',
  'aluminium-1350',
  'tin',
  'brass-cuzn30',
  'brass-cuzn37',
  'phosphor-bronze-cusn5',
  'low-carbon-steel',
  'nickel',
  'silver',
] as const
export const solderNames = ['Sn63Pb37', 'Sn60Pb40', 'Sn50Pb50', 'SAC305', 'Sn99.3Cu0.7', 'Sn96.5Ag3.5', 'Sn95Ag5', 'Sn42Bi58', 'In52Sn48'] as const
export const insulationNames = ['PVC', 'XLPE', 'ETFE', 'PTFE', 'FEP', 'silicone', 'PA', 'PE', 'TPE'] as const
export const sleeveMaterialNames = ['polyolefin', 'polyolefin-adhesive-lined', 'PVC', 'PVDF', 'PTFE', 'FEP', 'fluoroelastomer', 'silicone', 'PET'] as const
export const methodNames = [
  'soldered-lap',
  'soldered-lineman-splice',
  'crimped-butt-splice',
  'crimped-and-sealed-butt-splice',
  'solder-sleeve',
  'new-crimped-terminal',
  'replace-the-run',
] as const
/** Along the circuit, in the order of the current. */
export const places = [
  'source+',
  'fuse-in',
  'fuse-out',
  'joint-in',
  'joint-out',
  'terminal-wire',
  'terminal-mate',
  'load+',
  'load-',
  'return-joint',
  'source-',
] as const
export const readingKinds = ['resistance', 'drop', 'four-wire', 'voltage', 'insulation', 'current', 'temperature'] as const
export const loadStates = ['on', 'off', 'unplugged'] as const
export const damageKinds = ['broken', 'partly-broken', 'chafed', 'corroded', 'overheated', 'unknown'] as const
export const fuseKinds = ['blade', 'bolt-down', 'cartridge', 'breaker'] as const
export const terminalKinds = ['contact-in-housing', 'push-on', 'ring', 'fork', 'screw-clamp', 'spring-clamp', 'cable-lug'] as const
export const wireStandards = ['AWG', 'SAE J1128', 'ISO 6722-1', 'IEC 60228'] as const
