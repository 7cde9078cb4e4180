/**
 * A writer in a process of its own: writes own facts one by one until it is killed or has written enough, and
 * says each on standard output only after the store has answered.
 * Arguments: data directory, job, number of facts.
 */
import { writeSync } from 'node:fs'
import { openStore } from '../index.ts'
import { note } from './devices.ts'

const [data = '', job = '', count = '0'] = process.argv.slice(2)
const store = await openStore(data)
for (let i = 0; i < Number(count); i++) {
  const [fact] = await store.writeOwn([note(job, `${process.pid} ${i}`, i % 600)])
  // Said before it goes on, however slowly it is heard: what waits in a stream here would be lost with the process.
  writeSync(1, `${fact?.id} ${fact?.seq}\n`)
}
await store.close()
