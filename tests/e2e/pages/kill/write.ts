/** A page that records through the bench's own writer, as fast as it can, and shows each thing once it is saved. */
import { renameDevice } from '../../../../apps/bench/src/device/self.ts'
import { type Draft, keepFacts } from '../../../../apps/bench/src/sync/write.ts'

const asked = new URLSearchParams(location.search)
const seed = Number(asked.get('seed'))
const writes = Number(asked.get('writes'))

/** Mulberry32: a small generator, so that a round can be played again by its seed. */
function generator(start: number): () => number {
  let state = start
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

const chance = generator(seed)
const upTo = (most: number) => Math.floor(chance() * most)

function draw(): Draft {
  const kind = upTo(3)
  if (kind === 0) return { kind: 'note-written', body: { text: 'n'.repeat(1 + upTo(1900)) } }
  if (kind === 1) return { kind: 'caution-read', body: { caution: 'airbag' } }
  const lines = Array.from({ length: 1 + upTo(20) }, (_, index) => ({
    text: `Line ${index}`,
    amountMinor: upTo(100_000),
  }))
  return { kind: 'price-agreed', body: { currency: 'EUR', lines } }
}

async function blobOf(bytes: number) {
  const content = new Uint8Array(bytes).fill(upTo(256))
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', content))
  const sha256 = [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('')
  return { sha256, blob: new Blob([content]), name: 'photo', sent: false }
}

if (writes > 0) await renameDevice({ by: 'technician' })
const list = document.getElementById('saved')
for (let write = 0; write < writes; write++) {
  const drafts = Array.from({ length: 1 + upTo(3) }, draw)
  const blobs = upTo(10) === 0 ? [await blobOf(1 + upTo(60_000))] : []
  const facts = await keepFacts(`job-${seed % 3}`, drafts, blobs)
  const shown = document.createElement('li')
  shown.textContent = facts.map(({ id }) => id).join(' ')
  list?.append(shown)
  // Heard outside after it stands on the page: what the test counts as shown was shown.
  console.log(
    `saved ${JSON.stringify({ facts: facts.map(({ id }) => id), blobs: blobs.map(({ sha256 }) => sha256) })}`,
  )
}
console.log('done')
