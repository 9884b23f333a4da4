import { iec60228 } from '@strandwise/core/tables'

/** Areas of the metric series, up to the thickest wire that bends by hand. */
export const metricMm2: readonly number[] = [...new Set(iec60228.rows.map((row) => row.areaMm2))].filter((areaMm2) => areaMm2 <= 120).sort((a, b) => a - b)
