import { Words } from '../form/Words.tsx'
import { t } from '../words/index.ts'
import css from './invoice.module.css'
import type { PartyForm } from './seller.ts'

/** Name, address and numbers of a seller or buyer. */
export function PartyFields({
  title,
  value,
  onChange,
  seller = false,
}: {
  readonly title: string
  readonly value: PartyForm
  readonly onChange: (value: PartyForm) => void
  /** A seller also has a local tax number. */
  readonly seller?: boolean
}) {
  const set = (key: keyof PartyForm) => (text: string) => onChange({ ...value, [key]: text })
  return (
    <fieldset className={css.party}>
      <legend className={css.whose}>{title}</legend>
      <Words label={t('invoice.name')} value={value.name} onChange={set('name')} maxLength={500} />
      <Words label={t('invoice.street')} value={value.street} onChange={set('street')} optional />
      <Words label={t('invoice.post-code')} value={value.postCode} onChange={set('postCode')} optional mono />
      <Words label={t('invoice.city')} value={value.city} onChange={set('city')} optional />
      <Words
        label={t('invoice.country')}
        value={value.country}
        onChange={(text) => set('country')(text.toUpperCase())}
        maxLength={2}
        mono
      />
      <Words
        label={t('invoice.vat')}
        value={value.vatId}
        onChange={(text) => set('vatId')(text.toUpperCase().replaceAll(' ', ''))}
        optional
        mono
      />
      {seller && (
        <Words
          label={t('invoice.tax-number')}
          value={value.taxNumber}
          onChange={set('taxNumber')}
          optional
          mono
        />
      )}
      <Words
        label={t('invoice.register')}
        value={value.registerNumber}
        onChange={set('registerNumber')}
        optional
        mono
      />
    </fieldset>
  )
}
