import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Verifier, verifyFacts } from '@shearline/jobfile'
import type { Page } from 'playwright-core'
import { build } from 'vite'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { switchOn, type Tablet } from '../../apps/bench/src/testing/chromium.ts'
import { benchFolder, cannotRun, type Kept, keptIn, Office } from '../support/tablets.ts'

/** Rounds of writing and killing; more on demand. Each profile lives through a few. */
const rounds = Number(process.env.SHEARLINE_KILL_ROUNDS ?? 2)
const roundsOfProfile = 5
const writes = 200

/** What the page showed as saved, as heard outside. */
interface Shown {
  readonly facts: string[]
  readonly blobs: string[]
}

const folder = mkdtempSync(join(tmpdir(), 'shearline-kill-'))
const pages = join(folder, 'pages')
/** Loaded by the page beside it. */
const writer = fileURLToPath(new URL('./pages/kill/write.ts', import.meta.url))
const office = new Office(pages)
const verifier = new Verifier(crypto.subtle)

/** Listens to a page that writes, and kills its browser when `count` things are shown as saved. */
async function killAfter(tablet: Tablet, url: string, count: number, shown: Shown): Promise<void> {
  let heard = 0
  const enough = new Promise<void>((resolve, reject) => {
    tablet.page.on('pageerror', reject)
    tablet.page.on('console', (message) => {
      const text = message.text()
      if (!text.startsWith('saved ')) return
      const { facts, blobs } = JSON.parse(text.slice('saved '.length)) as Shown
      shown.facts.push(...facts)
      shown.blobs.push(...blobs)
      if (++heard === count) resolve()
    })
  })
  await tablet.page.goto(url)
  await enough
  await tablet.kill()
}

/** Everything shown is there exactly once, the chain has no hole and every signature and link holds. */
async function check(page: Page, shown: Shown): Promise<Kept> {
  const kept = await keptIn(page)
  const ids = kept.facts.map((fact) => fact.id)
  expect(new Set(ids).size).toBe(ids.length)
  const there = new Set(ids)
  expect(shown.facts.filter((id) => !there.has(id))).toEqual([])
  const blobs = new Set(kept.blobs.map((blob) => blob.sha256))
  expect(shown.blobs.filter((sha256) => !blobs.has(sha256))).toEqual([])
  expect(kept.facts.map((fact) => fact.seq)).toEqual(ids.map((_, index) => index + 1))
  expect(kept.outbox).toEqual(kept.facts.map((fact) => fact.seq))
  for (const job of new Set(kept.facts.map((fact) => fact.job))) {
    const own = kept.facts.filter((fact) => fact.job === job)
    const proof = await verifyFacts(own, kept.devices, verifier)
    expect(proof.findings).toEqual([])
    expect(proof.signaturesRight).toBe(own.length)
  }
  return kept
}

describe.skipIf(cannotRun !== null)(
  `a browser killed while it writes${cannotRun === null ? '' : ` (skipped: ${cannotRun})`}`,
  () => {
    beforeAll(async () => {
      await build({
        root: dirname(writer),
        configFile: false,
        logLevel: 'error',
        resolve: { conditions: ['@shearline/source', 'module', 'browser', 'development|production'] },
        build: {
          outDir: pages,
          emptyOutDir: true,
          modulePreload: false,
        },
      })
      await office.start()
    })
    afterAll(async () => {
      await office.close()
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
    })

    it(`${rounds} rounds of ${writes} random writes: what was shown as saved is there exactly once, the chain whole, and all of it reaches the server`, {
      timeout: 180_000 + rounds * 60_000,
    }, async () => {
      let total = 0
      for (let first = 0; first < rounds; first += roundsOfProfile) {
        const profile = join(folder, `profile-${first}`)
        const shown: Shown = { facts: [], blobs: [] }
        for (let round = first; round < Math.min(rounds, first + roundsOfProfile); round++) {
          const seed = 7919 * (round + 1)
          // The look at what is kept must not write: no number of writes is asked for.
          const tablet = await switchOn(profile, `${office.url}?writes=0&seed=1`)
          if (round > first) await check(tablet.page, shown)
          const count = 1 + ((seed * 31) % (writes - 10))
          await killAfter(tablet, `${office.url}?writes=${writes}&seed=${seed}`, count, shown)
        }
        const last = await switchOn(profile, `${office.url}?writes=0&seed=1`)
        const kept = await check(last.page, shown)
        total += shown.facts.length
        // The same origin now serves the bench itself: it finds everything and sends it.
        await office.kill()
        office.bench = benchFolder
        await office.start()
        await last.page.goto(office.url)
        await last.page.getByText('Saved, all sent').waitFor({ timeout: 120_000 })
        for (const job of new Set(kept.facts.map((fact) => fact.job))) {
          const { facts } = await office.ask<{ facts: { id: string; device: string }[] }>(
            `api/jobs/${job}/facts`,
          )
          const own = facts.filter((fact) => fact.device === kept.devices[0]?.device).map((fact) => fact.id)
          const expected = kept.facts.filter((fact) => fact.job === job).map((fact) => fact.id)
          expect(own.sort()).toEqual(expected.sort())
        }
        for (const { sha256 } of kept.blobs) {
          const head = await fetch(`${office.url}api/blobs/${sha256}`, { method: 'HEAD' })
          expect(head.status).toBe(200)
        }
        await last.kill()
        await office.kill()
        office.bench = pages
        await office.start()
      }
      expect(total).toBeGreaterThan(rounds)
      if (process.env.SHEARLINE_KILL_ROUNDS !== undefined)
        console.log(`${rounds} kills, ${total} facts shown as saved, none lost`)
    })
  },
)
