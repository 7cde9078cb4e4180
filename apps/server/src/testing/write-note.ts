/** Writes one note in a process of its own. Arguments: data directory, job. */
import { randomUUID } from 'node:crypto'
import { openStore } from '@shearline/store'

const [data = '', job = ''] = process.argv.slice(2)
const store = await openStore(data)
await store.writeOwn([
  {
    id: randomUUID(),
    job,
    at: '2026-11-25T09:00:00.000Z',
    by: 'Robin',
    kind: 'note-written',
    body: { text: 'from another process' },
  },
])
await store.close()
