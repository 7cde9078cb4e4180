import { useEffect, useState } from 'react'
import { useSending } from '../app/SendingSign.tsx'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import css from '../job/job.module.css'
import type { KeptDocument } from '../sync/database.ts'
import { keptDocument } from '../sync/read.ts'
import { documentAddress } from '../sync/remote.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { proveHere } from './sealing.ts'
import type { Proof } from './sealing.worker.ts'

interface Here {
  readonly document: KeptDocument
  readonly blob: Blob
  readonly address: string
}

/** The latest sealed document: from this device when it was sealed here, else from the server. */
export function SealedDocument() {
  const { job, facts } = useDesk()
  const { blobs } = useSending()
  const seal = facts.findLast((fact) => fact.kind === 'document-sealed')
  const [here, setHere] = useState<Here | null | undefined>(undefined)
  const [proof, setProof] = useState<Proof | null>(null)
  const [problem, setProblem] = useState('')
  const id = seal?.id

  // Read again when something was sent: whether this document is among it stands beside it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: `blobs` is the sign that something was sent
  useEffect(() => {
    if (id === undefined) return
    let address = ''
    let live = true
    void keptDocument(id).then((kept) => {
      if (!live) return
      address = kept === null ? '' : URL.createObjectURL(kept.blob)
      setHere(kept === null ? null : { ...kept, address })
    })
    return () => {
      live = false
      URL.revokeObjectURL(address)
    }
  }, [id, blobs])

  if (seal === undefined || here === undefined) return null
  if (here === null) {
    return (
      <a className={css.open} href={documentAddress(job)} target="_blank" rel="noopener">
        {t('handover.open')}
      </a>
    )
  }
  const check = () => {
    proveHere(here.blob).then(setProof, (error: unknown) => setProblem(problemWords(error)))
  }
  return (
    <div className={formCss.field}>
      <p>{here.document.sent ? t('document.sent') : t('document.here')}</p>
      <div className={formCss.foot}>
        <a className={css.open} href={here.address} download={`${job}.pdf`}>
          {t('document.save')}
        </a>
        <button type="button" className={formCss.plain} onClick={check}>
          {t('document.check')}
        </button>
      </div>
      <p role="status">
        {proof?.proven === true &&
          t('document.proven', { facts: proof.facts, signatures: proof.signatures, hashes: proof.hashes })}
        {proof?.proven === false && t('document.not-proven', { what: proof.wrong ?? '' })}
      </p>
      <p>
        {t('verify-page.about')}{' '}
        <a className={css.open} href="/verify.html" download="verify.html">
          {t('verify-page.save')}
        </a>
      </p>
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
    </div>
  )
}
