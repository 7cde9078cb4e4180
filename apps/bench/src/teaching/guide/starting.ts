import { applicableFunctions, type GridKey, type KeyFunction } from '@shearline/keywork'

/** Ways of starting the car, the everyday ones before the emergency one. */
export const starting: readonly KeyFunction[] = ['start', 'passive-start', 'emergency-start']

/** The function that shows whether a key starts the car, by how it is built. */
export function startsBy(key: GridKey): KeyFunction {
  const can = applicableFunctions(key)
  return starting.find((name) => can.includes(name)) ?? 'start'
}
