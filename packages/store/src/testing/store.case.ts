import { afterEach, beforeEach, describe } from 'vitest'
import { bytesCase } from './bytes.case.ts'
import { OtherDevice } from './devices.ts'
import { erasingCase } from './erasing.case.ts'
import { keepingCase } from './keeping.case.ts'
import { registerCase } from './register.case.ts'
import { takingCase } from './taking.case.ts'
import { type Place, UnderTest } from './under-test.ts'

/** The suite every implementer of Store runs. Titles begin with the rule of SPEC.md they show. */
export function storeCase(name: string, make: () => Promise<Place>): void {
  describe(`a store on ${name}`, () => {
    const on = new UnderTest()
    beforeEach(async () => {
      on.place = await make()
      on.store = await on.place.open()
      on.tablet = await OtherDevice.make()
      await on.store.enrol(on.tablet.device)
    })
    afterEach(async () => {
      await on.store.close()
      await on.place.clear()
    })
    takingCase(on)
    keepingCase(on)
    bytesCase(on)
    erasingCase(on)
    registerCase(on)
  })
}
