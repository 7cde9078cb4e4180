/**
 * A battery and its work to start from (`shearline power --example`): invented, a tired battery on a cold morning.
 * What is not known is left out or `null`: it widens the answer.
 */
export const examplePower = {
  battery: {
    kind: 'flooded',
    capacityAmpereHours: 60,
    coldCrankingAmperes: 540,
    ageYears: 6,
    restVolts: 12.3,
    hoursAtRest: 9,
    temperatureCelsius: 2,
  },
  steps: [
    { name: 'scan of all units', minutes: 10, amperes: { low: 8, high: 14 } },
    { name: 'teaching', minutes: 25, amperes: { low: 10, high: 18 } },
    { name: 'scan afterwards', minutes: 10, amperes: { low: 8, high: 14 } },
  ],
  supply: null,
  floorVolts: 12,
  starter: { engine: 'diesel', amperes: null },
}
