/** Conductor and terminal metals of the table of metals. */
export type MetalName =
  | 'annealed-copper'
  | 'hard-drawn-copper'
  | 'tinned-copper'
  | 'copper-clad-aluminium'
  | 'aluminium-1350'
  | 'tin'
  | 'brass-cuzn30'
  | 'brass-cuzn37'
  | 'phosphor-bronze-cusn5'
  | 'low-carbon-steel'
  | 'nickel'
  | 'silver'
/** Soft solders of the table of alloys, named by their composition in percent. */
export type SolderName = 'Sn63Pb37' | 'Sn60Pb40' | 'Sn50Pb50' | 'SAC305' | 'Sn99.3Cu0.7' | 'Sn96.5Ag3.5' | 'Sn95Ag5' | 'Sn42Bi58' | 'In52Sn48'
/** Families of wire insulation. */
export type InsulationName = 'PVC' | 'XLPE' | 'ETFE' | 'PTFE' | 'FEP' | 'silicone' | 'PA' | 'PE' | 'TPE'
/** Families of heat-shrink sleeve. */
export type SleeveMaterialName = 'polyolefin' | 'polyolefin-adhesive-lined' | 'PVC' | 'PVDF' | 'PTFE' | 'FEP' | 'fluoroelastomer' | 'silicone' | 'PET'
