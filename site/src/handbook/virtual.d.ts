declare module 'virtual:handbook' {
  export const handbook: import('./facts.ts').Handbook
}

declare module 'virtual:handbook-code' {
  /** Modules that export one function each, by its name. */
  export const codeByName: Readonly<Record<string, string>>
}

declare module 'virtual:handbook-rooms' {
  /** By package and room: "planner/report". */
  export const rooms: Readonly<Record<string, () => Promise<Readonly<Record<string, unknown>>>>>
}
