/**
 * A writer in a process of its own: writes own facts one by one until it is killed or has written enough, and
 * says each on standard output only after the store has answered.
 * Arguments: data directory, job, number of facts.
 */
import { openStore } from '../index.ts'
import { note } from './devices.ts'

const [data = '', job = '', count = '0'] = process.argv.slice(2)
const store = await openStore(data)
for (let i = 0; i < Number(count); i++) {
  const [fact] = await store.writeOwn([note(job, `${process.pid} ${i}`, i % 600)])
  process.stdout.write(`${fact?.id} ${fact?.seq}\n`)
}
await store.close()
