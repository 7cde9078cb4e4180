/** @module A data folder with many invented jobs at every point of the day, made once. */

import { randomUUID } from 'node:crypto'
import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import { settled, vanAfterSession, vanUntilSession } from '@shearline/jobfile/demo'
import { openStore } from '@shearline/store'

const minuteMilliseconds = 60_000

/** Makes the folder when it is not there; job `n` stands `n` steps further than the first, round and round. */
export async function jobsFolder(folder, count) {
  if (existsSync(folder)) return
  const making = `${folder}.making`
  rmSync(making, { recursive: true, force: true })
  mkdirSync(dirname(folder), { recursive: true })
  const store = await openStore(making)
  const whole = [...vanUntilSession(), ...vanAfterSession(), ...settled(300)]
  const now = Date.now()
  for (let number = 0; number < count; number++) {
    // Ten jobs of today, the others of the days before.
    const start = now - (number < 10 ? number * 40 : number * 300 + 1440) * minuteMilliseconds
    const facts = whole.slice(0, 1 + ((number * 7) % whole.length))
    await store.writeOwn(
      facts.map(({ minute, kind, body }, index) => ({
        id: randomUUID(),
        job: `job-${number}`,
        at: new Date(start + Math.round(minute * minuteMilliseconds)).toISOString(),
        by: 'technician',
        kind,
        body: index === 0 ? { ...body, title: `Van ${number}, keys stored` } : { ...body },
      })),
    )
  }
  await store.close()
  renameSync(making, folder)
}
