import type { CircuitKind, MethodContext, Sleeve } from './context.ts'
import type { InsulationName, Interval, MetalName, MethodName, SolderName } from './names.ts'

// The public contract: A repair job.

export type Place =
  | 'source+'
  | 'fuse-in'
  | 'fuse-out'
  | 'joint-in'
  | 'joint-out'
  | 'terminal-wire'
  | 'terminal-mate'
  | 'load+'
  | 'load-'
  | 'return-joint'
  | 'source-'

export type ReadingKind = 'resistance' | 'drop' | 'four-wire' | 'voltage' | 'insulation' | 'current' | 'temperature'

export type JobTool =
  | {
      readonly name: string
      readonly kind: 'iron'
      readonly powerW: number
      readonly setC?: number
      readonly tipWidthMm?: number
      readonly contact?: 'wetted' | 'dry'
      readonly tipResistanceKPerW?: number
      readonly contactResistanceKPerW?: number
      readonly clipMm?: number
      readonly stubMm?: number
    }
  | {
      readonly name: string
      readonly kind: 'hot-air'
      readonly airC: number
      readonly airSpeedMPerS?: number
      readonly nozzleMm?: number
      readonly stubMm?: number
    }

export interface RepairJob {
  readonly version: 1
  readonly title?: string
  readonly units?: 'metric' | 'inch' | 'both'
  readonly circuit: {
    readonly kind: CircuitKind
    readonly supplyV: number
    readonly waveform?: 'dc' | 'ac'
    readonly allowedDropV?: number
    readonly sourceResistanceOhm?: number
    readonly prospectiveCurrentA?: number
    readonly fuseA?: number
    readonly fuseSeries?: 'ISO 8820-3'
    readonly fuseKind?: 'blade' | 'bolt-down' | 'cartridge' | 'breaker'
    readonly fuseDistanceM?: number
    readonly rules?: MethodContext['rules']
  }
  readonly load: {
    readonly currentA?: number
    readonly powerW?: number
    readonly resistanceOhm?: number
    readonly inrushA?: number
    readonly inrushS?: number
    readonly stallA?: number
    readonly onS?: number
    readonly offS?: number
  }
  readonly wire: {
    readonly areaMm2?: number
    readonly size?: string
    readonly standard?: 'AWG' | 'SAE J1128' | 'ISO 6722-1' | 'IEC 60228'
    readonly material?: MetalName
    readonly strandCount?: number
    readonly strandDiameterMm?: number
    readonly insulation: InsulationName
    readonly insulationThicknessMm?: number
    readonly outsideDiameterMm?: number
    readonly outLengthM: number
    readonly returnLengthM?: number
    readonly loadedInBundle?: number
    readonly bundleOutsideMm?: number
    readonly insulationGradeC?: number
  }
  readonly wireBeyond?: {
    readonly areaMm2?: number
    readonly size?: string
    readonly material?: MetalName
    readonly insulation?: InsulationName
    readonly outsideDiameterMm?: number
  }
  readonly terminal?: {
    readonly kind?: 'contact-in-housing' | 'push-on' | 'ring' | 'fork' | 'screw-clamp' | 'spring-clamp' | 'cable-lug'
    readonly studMm?: number
    readonly ratedCurrentA?: number
    readonly ratedAmbientC?: number
    readonly limitC?: number
    readonly metal?: MetalName
    readonly matingMetal?: MetalName
    readonly acceptsMm2?: Interval
    readonly housingHoleMm?: number
    readonly sealInsideMm?: Interval
  }
  readonly damage: {
    readonly kind: 'broken' | 'partly-broken' | 'chafed' | 'corroded' | 'overheated' | 'unknown'
    readonly where?: 'feed' | 'return'
    readonly fromTerminationMm: number
    readonly discolouredMm?: number
    readonly slackMm?: number
    readonly brokenStrands?: number
  }
  readonly surroundings?: {
    readonly ambientC?: number
    readonly hottestC?: number
    readonly coldestC?: number
    readonly location?: MethodContext['location']
    readonly vibration?: MethodContext['vibration']
    readonly flexes?: boolean
    readonly bendRadiusMm?: number
    readonly bendCycles?: number
    readonly flammableVapour?: boolean
  }
  readonly readings?: readonly {
    readonly kind: ReadingKind
    readonly from: Place
    readonly to: Place
    readonly load: 'on' | 'off' | 'unplugged'
    readonly value: number
    readonly percentOfReading?: number
    readonly counts?: number
    readonly resolution?: number
    readonly leadOhm?: number
    readonly leadUncertaintyOhm?: number
    readonly currentA?: number
    readonly atC?: number
    readonly when?: 'still' | 'moved'
  }[]
  readonly intendedMethod?: MethodName
  readonly repair?: 'permanent' | 'temporary'
  readonly solderSleeve?: { readonly ringAlloy: SolderName; readonly tube: Sleeve }
  readonly tools?: readonly JobTool[]
  readonly hasCrimpTool?: boolean
  readonly hasTerminalDie?: boolean
  readonly solders?: readonly SolderName[]
  readonly sleeves?: readonly Sleeve[]
  readonly methods?: readonly MethodName[]
}
