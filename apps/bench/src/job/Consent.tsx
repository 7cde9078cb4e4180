import type { Body } from '@shearline/jobfile'
import { useState } from 'react'
import { Names } from '../form/Names.tsx'
import { Words } from '../form/Words.tsx'
import { ConsentSigned } from '../signing/ConsentSigned.tsx'
import { listMark, say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { useDesk } from './desk.ts'
import { Part, RecordForm, useFresh } from './Part.tsx'

type About = Body<'consent-given'>['about']

/** A consent with its own name under it; absent keys are named, not counted. */
export function Consent({ about, need = '' }: { readonly about: About; readonly need?: string }) {
  const { state } = useDesk()
  const given = state.authority.consents.findLast((consent) => consent.about === about)
  const wanted = state.tumblers.some((tumbler) =>
    tumbler.needs.some((one) => need.split(' ').includes(one.code)),
  )
  const [fresh, renew] = useFresh()
  return (
    <Part
      title={t(`consent-title.${about}`)}
      need={need}
      settled={given !== undefined && !wanted}
      more={t('consent.again')}
      about={
        <>
          <p>
            {say(`consent.${about}`)}.
            {given !== undefined &&
              ` ${t('consent.given', { signer: given.signer, keys: given.absentKeys.join(listMark()) || '-' })}`}
          </p>
          <ConsentSigned about={about} />
        </>
      }
    >
      <ConsentForm key={fresh} about={about} onDone={renew} />
    </Part>
  )
}

function ConsentForm({ about, onDone }: { readonly about: About; readonly onDone: () => void }) {
  const { state } = useDesk()
  const [signer, setSigner] = useState('')
  const [absent, setAbsent] = useState<readonly string[]>(state.absentKeys)
  return (
    <RecordForm
      submit={t('consent.record')}
      onDone={onDone}
      drafts={() => [
        {
          kind: 'consent-given',
          body: { about, signer, absentKeys: about === 'absent-keys-stop' ? [...absent] : [] },
        },
      ]}
    >
      {about === 'absent-keys-stop' && (
        <Names
          label={t('consent.absent')}
          hint={t('consent.absent.hint')}
          value={absent}
          onChange={setAbsent}
        />
      )}
      <Words
        label={t('consent.signer')}
        hint={t('consent.signer.hint')}
        value={signer}
        onChange={setSigner}
        autoCapitalize="words"
      />
    </RecordForm>
  )
}
