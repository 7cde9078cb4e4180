import type { SameCodes } from '@shearline/jobfile'
import type { signingWords as english } from '../en/signing.ts'

/** Signing by hand or by name: what is signed, by whom, and what became of it. */
export const signingWords: SameCodes<typeof english> = {
  'sign.consent': 'Hacer firmar esto al cliente',
  'sign.handover': 'Hacer firmar la entrega al cliente',
  'sign.again': 'Tomar la firma otra vez',
  'sign.again.reason': 'Firmado otra vez.',
  'sign.title.consent': 'Consentimiento',
  'sign.title.handover': 'Entrega',
  'sign.received': 'Recibido por el cliente',
  'sign.received.why': 'Firmar antes de sellar el documento: entonces la firma queda bajo el sello.',
  'sign.shown': 'Qué se firma',
  'sign.signer': 'Quién firma',
  'sign.signer.hint': 'Nombre completo de la persona que firma ahora.',
  'sign.how': 'Cómo',
  'sign.how.drawn': 'A mano',
  'sign.how.typed': 'Tecleando el nombre',
  'sign.pad.empty': 'Espacio para firmar. Aún no hay nada dibujado. En su lugar se puede teclear el nombre.',
  'sign.pad.drawn': 'Espacio para firmar. Hay una firma dibujada.',
  'sign.clear': 'Limpiarlo',
  'sign.not-drawn': 'Aún no hay nada firmado: dibujar arriba la firma, o elegir teclear el nombre.',
  'sign.do': 'He leído esto y lo firmo',
  'sign.do.typed': 'He leído esto y lo firmo con mi nombre',
  'sign.file': 'firma',
  'sign.by':
    '{how, select, typed {{signer} firmó tecleando el nombre, {when}.} other {{signer} firmó a mano, {when}.}}',
  'sign.picture': 'Firma de {signer}',
  'sign.words': 'Las palabras que se firmaron',
  'sign.words.same': 'Las palabras que se firmaron son las del registro ahora.',
  'sign.words.older': 'El registro ha cambiado desde entonces: estas no son las palabras que se firmaron.',
  'sign.words.broken':
    'Las palabras guardadas no concuerdan con el hash del registro: no fiarse de esta firma.',
  'sign.deleted': 'El dibujo se borró {when} al cumplirse su plazo.',
  'sign.reading': 'Abriendo la firma …',
  'sign.no-connection': 'El dibujo no está en este dispositivo, y ahora no se puede llegar al servidor.',
  'sign.not-there':
    'El dibujo aún no está en el servidor. Llegará cuando lo envíe el dispositivo que lo tomó.',
  'sign.damaged': 'Los bytes guardados no concuerdan con el registro, así que no se muestran.',
}
