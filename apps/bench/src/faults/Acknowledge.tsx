import { useState } from 'react'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { RecordForm } from '../job/Part.tsx'
import { t } from '../words/index.ts'

/** The customer's acknowledgement of one fault, in words and by name. */
export function Acknowledge({ unit, code }: { readonly unit: string; readonly code: string }) {
  const [words, setWords] = useState('')
  const [signer, setSigner] = useState('')
  return (
    <details className={formCss.more}>
      <summary>{t('faults.acknowledge')}</summary>
      <RecordForm
        submit={t('faults.acknowledge.record')}
        drafts={() => [{ kind: 'fault-acknowledged', body: { unit, code, words, signer } }]}
      >
        <Words label={t('faults.words')} hint={t('faults.words.hint')} value={words} onChange={setWords} />
        <Words label={t('consent.signer')} value={signer} onChange={setSigner} autoCapitalize="words" />
      </RecordForm>
    </details>
  )
}
