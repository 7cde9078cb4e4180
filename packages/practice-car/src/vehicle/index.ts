/** @module The practice car itself. */

export { type Answer, type CarChoices, PracticeCar, type StartResult } from './practice-car.ts'
