import { useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { Names } from '../form/Names.tsx'
import { useDesk } from '../job/desk.ts'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { t } from '../words/index.ts'

/** How long the firm stands for its work, and for what not. */
export function WarrantyPart() {
  const { warranty } = useDesk().state
  const [fresh, renew] = useFresh()
  return (
    <Part
      title={t('warranty.title')}
      settled
      more={warranty === null ? t('warranty.add') : t('warranty.again')}
      about={
        warranty === null ? (
          <p>{t('warranty.none')}</p>
        ) : (
          <p>
            {t('warranty.given', { months: warranty.months, excludes: warranty.excludes.join(', ') || '-' })}
          </p>
        )
      }
    >
      <WarrantyForm key={fresh} onDone={renew} />
    </Part>
  )
}

function WarrantyForm({ onDone }: { readonly onDone: () => void }) {
  const [months, setMonths] = useState<number | null>(12)
  const [excludes, setExcludes] = useState<readonly string[]>(t('warranty.usual').split('|'))
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() =>
        months === null ? null : [{ kind: 'warranty-given', body: { months, excludes: [...excludes] } }]
      }
    >
      <Amount label={t('warranty.months')} value={months} onChange={setMonths} most={120} />
      <Names label={t('warranty.excludes')} value={excludes} onChange={setExcludes} />
    </RecordForm>
  )
}
