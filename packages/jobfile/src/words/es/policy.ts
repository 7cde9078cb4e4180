import type { SameCodes } from '../catalogues.ts'
import type { policyWords as english } from '../en/policy.ts'

/** What a policy pack asks for by code: situations, documents, questions. Laws are named in the pack, not here. */
export const policyWords: SameCodes<typeof english> = {
  'situation.owner': 'La persona propietaria está aquí',
  'situation.leaseholder': 'Titular de un coche en arrendamiento, financiado o de empresa',
  'situation.trader': 'Profesional del comercio, para un cliente o de sus existencias',
  'situation.fleet': 'Una empresa de flota o de alquiler',
  'situation.no-papers': 'Nadie puede mostrar papeles',

  'policy-document.identity-card': 'Documento de identidad',
  'policy-document.passport': 'Pasaporte',
  'policy-document.driving-licence': 'Permiso de conducir',
  'policy-document.residence-permit': 'Permiso de residencia',
  'policy-document.registration-certificate': 'Permiso de circulación',
  'policy-document.ownership-certificate': 'Segunda parte del permiso de circulación',
  'policy-document.title': 'Título de propiedad del vehículo',
  'policy-document.keeper-record':
    'Inscripción del titular registral (muestra el titular, no la persona propietaria)',
  'policy-document.purchase-contract': 'Contrato o factura de compraventa',
  'policy-document.insurance-policy': 'Póliza de seguro de este coche',
  'policy-document.lease-contract': 'Contrato de arrendamiento o financiación',
  'policy-document.owner-letter': 'Carta de la persona propietaria',
  'policy-document.work-order': 'Orden de trabajo firmada',
  'policy-document.trade-registration': 'Inscripción de la actividad comercial',
  'policy-document.fleet-letter': 'Carta de la flota',
  'policy-document.rental-contract': 'Contrato de alquiler',
  'policy-document.court-order': 'Orden judicial',
  'policy-document.police-confirmation': 'Confirmación de la policía',
  'policy-document.registry-confirmation': 'Confirmación del registro de vehículos',

  'policy-asks.authority.situation': '¿Quién quiere la llave?',
  'policy-asks.authority.document-valid':
    '¿Es válido el documento de identidad y no está anulado (sin perforaciones ni esquina cortada)?',
  'policy-asks.authority.person-is-holder': '¿Es la persona presente titular del documento de identidad?',
  'policy-asks.authority.vin-on-paper': '¿Coincide el VIN del papel con el coche?',
  'policy-asks.authority.owner-asked':
    '¿Ha dado su conformidad la parte propietaria (arrendador, banco, empresa empleadora)?',
  'policy-asks.authority.order-names-car': '¿Nombra el encargo este VIN, el lugar y quién lo autoriza?',
  'policy-asks.authority.order-called-back':
    '¿Se confirmó el encargo llamando a un número que no venía con él?',
  'policy-asks.authority.trade-known': '¿Se conoce al profesional o se comprobó su inscripción?',
  'policy-asks.authority.police-present': '¿Está aquí la policía, o lo ha confirmado?',
  'policy-asks.authority.asked-second-person':
    '¿Ha dado su conformidad al trabajo una segunda persona de la empresa?',
  'policy-asks.authority.no-copy-kept':
    '¿Se anotó solo lo visto, sin guardar copia del documento de identidad?',
  'policy-asks.authority.register-entry':
    '¿Está anotado el trabajo en el registro que exige el sistema de acreditación?',
  'policy-asks.authority.form-signed': '¿Ha firmado el cliente el formulario sobre identidad y autorización?',
  'policy-asks.contract.informed-before':
    '¿Recibió el cliente precio, trabajo y condiciones antes de dar su conformidad?',
  'policy-asks.contract.cancelling-explained': '¿Se explicó el derecho de desistimiento y cuándo termina?',
  'policy-asks.contract.asked-to-start-now':
    '¿Pidió el cliente empezar ya, dentro del plazo de desistimiento?',
  'policy-asks.contract.urgent-visit-asked-for': '¿Pidió el cliente esta visita como reparación urgente?',
  'policy-asks.contract.made-to-order':
    '¿Se dijo al cliente que una llave hecha para este coche no se puede devolver?',
  'policy-asks.contract.paper-copy-given': '¿Tiene el cliente la información en papel o como archivo?',
  'policy-asks.site.drive': '¿Qué impulsa el coche?',
  'policy-asks.site.place': '¿Dónde está el coche?',
  'policy-asks.site.alone': '¿Hay alguien de compañía?',
  'policy-asks.site.inside': '¿Hay niños o animales dentro del coche o cerca de él?',

  'site.drive.combustion': 'Solo gasolina, diésel o gas',
  'site.drive.hybrid': 'Híbrido',
  'site.drive.electric': 'Eléctrico',
  'site.drive.unknown': 'No se sabe',
  'site.place.open-air': 'Al aire libre, fuera de la carretera',
  'site.place.roadside': 'Junto a la carretera',
  'site.place.indoors': 'En interior o bajo techo',
  'site.alone.alone': 'Trabajo a solas',
  'site.alone.not-alone': 'Hay alguien conmigo',
  'site.inside.nobody': 'Nadie',
  'site.inside.child-or-animal-near': 'Sí, dentro o cerca',

  'policy-basis.source': 'fuente leída',
  'policy-basis.memory': 'de memoria, comprobar',
  'policy-basis.common-practice': 'práctica común, sin fuente',
  'policy-basis.firm': 'propio de la empresa',
}
