import { writeFileSync } from 'node:fs'
import { fonts, sealedJob, vanJob, bareJob, fullJob } from './src/handover/testing/jobs.ts'
import { makeHandover, verifyHandover, verifyAnswer } from './src/handover/index.ts'
import { testVerifier } from './src/testing/device.ts'
for (const [name, scene] of [['van', vanJob()], ['bare', bareJob()], ['full', fullJob()]] as const) {
  const job = await sealedJob(scene)
  let t = performance.now()
  const bytes = await makeHandover({ ...job, language: 'en', fonts, madeAt: '2026-01-12T09:41:00.000Z' })
  const made = performance.now() - t
  t = performance.now()
  const check = await verifyHandover(bytes, testVerifier())
  console.log(name, job.record.facts.length, 'facts', bytes.length, 'bytes, made', made | 0, 'ms, verified', (performance.now() - t) | 0, 'ms', JSON.stringify(verifyAnswer(check)))
  writeFileSync(`/tmp/ho/${name}.pdf`, bytes)
}
{
  const { fact } = await import('./src/handover/testing/jobs.ts')
  const long = 'A long story about a key that was lost and found again. '.repeat(35).slice(0, 1999)
  const job = await sealedJob([
      fact(0, 'job-opened', { title: long, place: long, zone: 'Europe/Lisbon', work: 'add-a-key', customer: 'private', vehicle: long }),
      fact(1, 'key-labelled', { key: 'A', origin: 'existing', form: 'proximity', colour: 'ink', onBench: true, note: long }),
      fact(2, 'price-agreed', { currency: 'EUR', lines: [{ text: long, amountMinor: 1 }] }),
      fact(3, 'authority-seen', { role: 'identity', document: long, issuer: long, lastCharacters: '1', original: false, matched: false, checkedBy: long }),
    ])
  writeFileSync('/tmp/ho/wordy.pdf', await makeHandover({ ...job, language: 'en', fonts, madeAt: '2026-01-12T09:41:00.000Z' }))
}
