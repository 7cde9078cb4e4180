import { amountsOf } from '@shearline/jobfile'
import { useDesk } from '../job/desk.ts'
import { Facts } from '../job/Facts.tsx'
import { Part, useFresh } from '../job/Part.tsx'
import { money } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import { InvoiceForm } from './InvoiceForm.tsx'

/** An electronic invoice for the document, if the person wants one: its form stays folded until asked for. */
export function InvoicePart() {
  const { price, invoice } = useDesk().state
  const [fresh, renew] = useFresh()
  const amounts = invoice === null ? null : amountsOf(invoice)
  return (
    <Part
      title={t('invoice.title')}
      settled={price !== null}
      more={invoice === null ? t('invoice.add') : t('invoice.again')}
      about={
        invoice === null || amounts === null ? (
          <p>{t(price === null ? 'invoice.needs-price' : 'invoice.none')}</p>
        ) : (
          <>
            <p>
              {t('invoice.is', {
                number: invoice.number,
                issued: invoice.issued,
                buyer: invoice.buyer.name,
              })}
            </p>
            <Facts
              rows={[
                [t('invoice.net'), money(amounts.basisMinor, invoice.currency)],
                [t('invoice.tax'), money(amounts.taxMinor, invoice.currency)],
                [t('invoice.due'), <strong key="due">{money(amounts.dueMinor, invoice.currency)}</strong>],
              ]}
            />
          </>
        )
      }
    >
      {price !== null && <InvoiceForm key={fresh} price={price} onDone={renew} />}
    </Part>
  )
}
