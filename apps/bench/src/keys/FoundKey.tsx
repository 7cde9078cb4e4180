import type { JobKey } from '@shearline/jobfile'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { photosOnRecord } from '../photos/on-record.ts'
import { Photo } from '../photos/Photo.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { KeyShape } from './KeyShape.tsx'
import css from './keys.module.css'
import { Tag } from './Tag.tsx'

/** The key a tag named, large, so that it is put back where it belongs. */
export function FoundKey({ jobKey, onClose }: { readonly jobKey: JobKey; readonly onClose: () => void }) {
  const { goTo, facts, state } = useDesk()
  const { id, colour, form, make, origin, taught, note } = jobKey
  const photo = photosOnRecord(facts, state.corrections).findLast(({ body }) => body.key === id)
  const named = t('keys.named', { key: id, colour: say(`colour.${colour}`) })
  return (
    <Dialog title={t('tags.found', { key: named })} onClose={onClose}>
      <div className={css.found}>
        <Tag letter={id} colour={colour} />
        {photo === undefined ? <KeyShape form={form} /> : <Photo photo={photo} />}
      </div>
      <p>
        {say(`form.${form}`)}, {say(`make.${make}`)}
      </p>
      <p>{t('tags.found.is', { origin, taught: String(taught) })}</p>
      {note !== null && <p className={css.note}>{note}</p>}
      <div className={formCss.foot}>
        <button
          type="button"
          className={formCss.submit}
          onClick={() => {
            onClose()
            goTo({
              chapter: origin === 'new' ? 'prepare' : 'arrival',
              need: 'key-card',
              params: { key: id },
            })
          }}
        >
          {t('tags.found.go')}
        </button>
        <button type="button" className={formCss.plain} onClick={onClose}>
          {t('photo.close')}
        </button>
      </div>
    </Dialog>
  )
}
