/** Icon sizes of home screens: 180 without a manifest, 192 and 512 with one. */
export const iconSizes = [180, 192, 512] as const
