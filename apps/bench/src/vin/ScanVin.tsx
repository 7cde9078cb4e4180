import { useState } from 'react'
import { CodeFinder } from '../capture/CodeFinder.tsx'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { type PicturedVin, vinInCode } from './found-vin.ts'
import { ReadLetters } from './ReadLetters.tsx'
import { VinStanding } from './VinStanding.tsx'
import css from './vin.module.css'

type Format = 'code39' | 'matrix' | 'qr'

/** Reads the VIN with the camera or from a photo: codes first, letters when asked. Nothing is taken unseen. */
export default function ScanVin({
  onTake,
  onClose,
}: {
  readonly onTake: (found: PicturedVin) => void
  readonly onClose: () => void
}) {
  const [found, setFound] = useState<{ readonly vin: string; readonly format: Format } | null>(null)
  const [other, setOther] = useState('')
  const [picture, setPicture] = useState<Blob | null>(null)
  const again = () => {
    setFound(null)
    setPicture(null)
    setOther('')
  }
  return (
    <Dialog title={t('vin.scan.title')} onClose={onClose}>
      {found !== null ? (
        <Look
          vin={found.vin}
          format={found.format}
          onChange={(vin) => setFound({ ...found, vin })}
          onTake={() => onTake({ vin: found.vin, picture: 'code' })}
        />
      ) : picture !== null ? (
        <ReadLetters picture={picture} onTake={(vin) => onTake({ vin, picture: 'letters' })} />
      ) : (
        <>
          <p>{t('vin.scan.how')}</p>
          <CodeFinder
            onFound={(codes) => {
              for (const { text, format } of codes) {
                const vin = vinInCode(text)
                if (vin !== null) return setFound({ vin, format })
              }
              setOther(t('vin.scan.other', { text: (codes[0]?.text ?? '').slice(0, 60) }))
            }}
            onPicture={setPicture}
            pictureWords={t('vin.letters.camera')}
          />
          {other !== '' && <p role="status">{other}</p>}
        </>
      )}
      <div className={formCss.foot}>
        {(found !== null || picture !== null) && (
          <button type="button" className={formCss.plain} onClick={again}>
            {t('vin.scan.again')}
          </button>
        )}
        <button type="button" className={formCss.plain} onClick={onClose}>
          {t('cancel')}
        </button>
      </div>
    </Dialog>
  )
}

function Look({
  vin,
  format,
  onChange,
  onTake,
}: {
  readonly vin: string
  readonly format: Format
  readonly onChange: (vin: string) => void
  readonly onTake: () => void
}) {
  return (
    <>
      <p>{t('vin.scan.found', { format })}</p>
      <p className={css.big}>
        <code>{vin}</code>
      </p>
      <VinStanding text={vin} onRepair={onChange} />
      <div className={formCss.foot}>
        <button type="button" className={formCss.submit} onClick={onTake}>
          {t('vin.take')}
        </button>
      </div>
    </>
  )
}
