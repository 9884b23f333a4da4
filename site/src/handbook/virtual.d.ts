declare module 'virtual:handbook' {
  export const handbook: import('./facts.ts').Handbook
}

declare module 'virtual:handbook-rooms' {
  /** By package and room: "core/heat". */
  export const rooms: Readonly<Record<string, () => Promise<Readonly<Record<string, unknown>>>>>
}
