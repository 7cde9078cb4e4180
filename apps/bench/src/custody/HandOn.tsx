import { makeRecord, registerJob, writeBundle } from '@shearline/jobfile'
import { memo, useState } from 'react'
import { renderSVG } from 'uqr'
import { ownDevice, signer } from '../device/self.ts'
import formCss from '../form/form.module.css'
import { useDesk, useUnsentFacts } from '../job/desk.ts'
import { Part } from '../job/Part.tsx'
import { saveAsFile } from '../policy/save-file.ts'
import { database } from '../sync/database.ts'
import { keptFacts } from '../sync/read.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import css from './custody.module.css'
import { onlyHere } from './only-here.ts'

/** Hands the job to a colleague: its address as a QR code for a bench on the same server, and all of it as a file. */
export function HandOn() {
  const { job, state } = useDesk()
  const unsent = useUnsentFacts()
  const [busy, setBusy] = useState(false)
  const [problem, setProblem] = useState('')
  const address = location.href
  const alone = onlyHere(location.hostname)
  const save = async () => {
    setBusy(true)
    try {
      saveAsFile(`${job}.zip`, await bundleHere(job))
      setProblem('')
    } catch (error) {
      setProblem(problemWords(error))
    } finally {
      setBusy(false)
    }
  }
  return (
    <Part title={t('hand.title')}>
      {alone ? (
        <p>{t('hand.here-only', { address: location.host })}</p>
      ) : (
        <>
          <p>{t('hand.how')}</p>
          <AddressPicture address={address} />
          <p className={css.address}>
            <code>{address}</code>
          </p>
        </>
      )}
      <p>{unsent.size > 0 ? t('hand.unsent', { count: unsent.size }) : t('hand.all-sent')}</p>
      <p>{t('hand.bundle.how')}</p>
      {state.seal === null && <p>{t('hand.bundle.unsealed')}</p>}
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <div className={formCss.foot}>
        <button type="button" className={formCss.plain} disabled={busy} onClick={() => void save()}>
          {t('hand.bundle')}
        </button>
      </div>
    </Part>
  )
}

/** Drawing the code takes longer than a render should. */
const AddressPicture = memo(function AddressPicture({ address }: { readonly address: string }) {
  const picture = `data:image/svg+xml,${encodeURIComponent(renderSVG(address, { border: 2 }))}`
  return <img className={css.qr} src={picture} alt={t('hand.qr')} width="240" height="240" />
})

/** The job as this device knows it, packed and signed; what the facts name and is not here is named as missing in it. */
async function bundleHere(job: string): Promise<Blob> {
  const self = await ownDevice()
  const { facts, devices } = await keptFacts(job)
  // With it the file itself says which devices the firm trusts, and which no more.
  const register = await keptFacts(registerJob)
  const db = await database()
  const bytesOf = ({ sha256, blob }: { readonly sha256: string; readonly blob: Blob }) => ({
    sha256,
    bytes: blob.size,
    read: () => blob.stream() as unknown as AsyncIterable<Uint8Array>,
  })
  const named = new Set(JSON.stringify(facts).match(/[0-9a-f]{64}/g))
  const kept = (await db.getAll('blobs')).filter(({ sha256 }) => named.has(sha256))
  const sealed = await db.getAllFromIndex('documents', 'job', job)
  const documents = await Promise.all(sealed.map(({ sha256 }) => db.get('blobs', sha256)))
  const pieces: BlobPart[] = []
  const bundle = writeBundle({
    record: makeRecord(job, facts, devices, register.facts),
    blobs: kept.map(bytesOf),
    documents: documents.flatMap((one) => (one === undefined ? [] : [bytesOf(one)])),
    packer: { device: self.device, name: self.name, publicKey: self.publicKey },
    sign: signer(self),
  })
  for await (const piece of bundle) pieces.push(new Uint8Array(piece))
  return new Blob(pieces, { type: 'application/zip' })
}
