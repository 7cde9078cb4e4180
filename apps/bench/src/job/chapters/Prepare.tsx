import { useState } from 'react'
import { Amount } from '../../form/Amount.tsx'
import { Choice } from '../../form/Choice.tsx'
import formCss from '../../form/form.module.css'
import { Words } from '../../form/Words.tsx'
import { KeyCards } from '../../keys/KeyCards.tsx'
import { RemoteCheck } from '../../remote/RemoteCheck.tsx'
import { megahertz } from '../../words/amounts.ts'
import { t } from '../../words/index.ts'
import { useDesk } from '../desk.ts'
import { Part, RecordForm, useFresh } from '../Part.tsx'

/** The new key before it is spent: which blank, and whether it was compared with the car and its key. */
export function PrepareChapter() {
  const { state } = useDesk()
  const blank = state.blanks.at(-1)
  const [fresh, renew] = useFresh()
  return (
    <>
      <Part
        title={t('blank.title')}
        need="blank-not-chosen blank-not-compared blank-does-not-fit"
        settled={blank?.fits === true}
        more={t('blank.again')}
        about={
          blank !== undefined && (
            <p>
              {blank.item}
              {blank.carrierMegahertz !== undefined && `, ${megahertz(blank.carrierMegahertz * 1e6, 0)}`}
              {blank.transponder !== undefined && `, ${blank.transponder}`}
              {blank.profile !== undefined && `, ${blank.profile}`}
              {'. '}
              {t(blank.fits === null ? 'blank.fits.open' : blank.fits ? 'blank.fits.yes' : 'blank.fits.no')}
            </p>
          )
        }
      >
        <BlankForm key={fresh} onDone={renew} />
      </Part>
      <RemoteCheck />
      <KeyCards origin="new" />
    </>
  )
}

function BlankForm({ onDone }: { readonly onDone: () => void }) {
  const { state } = useDesk()
  const last = state.blanks.at(-1)
  const [item, setItem] = useState(last?.item ?? '')
  const [carrier, setCarrier] = useState<number | null>(last?.carrierMegahertz ?? null)
  const [transponder, setTransponder] = useState(last?.transponder ?? '')
  const [profile, setProfile] = useState(last?.profile ?? '')
  const [fits, setFits] = useState<'yes' | 'no' | 'open' | null>(null)
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() =>
        fits === null
          ? null
          : [
              {
                kind: 'blank-chosen',
                body: {
                  item,
                  fits: fits === 'open' ? null : fits === 'yes',
                  ...(carrier === null ? {} : { carrierMegahertz: carrier }),
                  ...(transponder.trim() === '' ? {} : { transponder }),
                  ...(profile.trim() === '' ? {} : { profile }),
                },
              },
            ]
      }
    >
      <Words label={t('blank.item')} hint={t('blank.item.hint')} value={item} onChange={setItem} />
      <div className={formCss.row}>
        <Amount
          label={t('blank.carrier')}
          unit="MHz"
          value={carrier}
          onChange={setCarrier}
          most={6000}
          step={0.01}
          decimals={3}
          optional
        />
        <Words
          label={t('blank.transponder')}
          hint={t('blank.transponder.hint')}
          value={transponder}
          onChange={setTransponder}
          optional
        />
        <Words label={t('blank.profile')} value={profile} onChange={setProfile} optional />
      </div>
      <Choice
        label={t('blank.fits')}
        hint={t('blank.fits.hint')}
        value={fits}
        onChange={setFits}
        options={[
          ['yes', t('blank.fits.yes')],
          ['open', t('blank.fits.open')],
          ['no', t('blank.fits.no')],
        ]}
      />
    </RecordForm>
  )
}
