/** Taking facts in: camera, codes, letters of a picture, speech, and taking back what was just recorded. */
export const captureWords = {
  'camera.picture': "The camera's picture",
  'camera.lamp': 'Lamp',
  'camera.starting': 'Waiting for the camera …',
  'camera.refused':
    'The camera may not be used. Allow it for this page in the settings of the browser, or choose a photo.',
  'camera.none': 'This device has no camera. Choose a photo instead.',
  'camera.busy':
    'The camera does not answer: another program may be using it. Close that one, or choose a photo.',
  'camera.insecure':
    'The browser gives no camera to a page without a secure connection. Choose a photo instead.',

  'scan.photo': 'Choose a photo',
  'scan.photo.looking': 'Looking through the photo …',
  'scan.photo.none':
    'No code was found in this photo. Hold the code flat, close and well lit, and try again.',
  'scan.no-reader': 'The code reader could not be started. Load this page again, or type what you see.',

  'vin.scan': 'Read it with the camera',
  'vin.scan.title': 'Read the VIN with the camera',
  'vin.scan.how': 'Hold the code of the plate, the door frame or the document in the frame.',
  'vin.scan.found':
    'Read from {format, select, qr {a QR code} matrix {a Data Matrix code} other {a Code 39 label}}. Hold it against the car before you take it.',
  'vin.scan.other': 'The code in the picture says "{text}". That is no VIN; still looking.',
  'vin.scan.again': 'Look again',
  'vin.take': 'Take this VIN',
  'vin.letters.camera': 'No code: use the letters',
  'vin.letters.picture': 'The picture of the plate',
  'vin.letters.offer':
    'There is no code in this picture. Its letters can be read instead, on this device. Letters read from a picture are often wrong.',
  'vin.letters.read': 'Read the letters',
  'vin.letters.reading': 'Reading the letters …',
  'vin.letters.stop': 'Stop reading',
  'vin.letters.none':
    'No row of 17 letters and digits was found. Take the picture straight on, close and without glare, or type it.',
  'vin.letters.failed': 'The letters could not be read: {why}',
  'vin.letters.mark': 'Read from a picture: check each sign.',
  'vin.letters.doubtful':
    '{count, plural, =0 {The reader says it is sure of all 17; it can still be wrong.} one {The reader is not sure of # sign; it has a dashed frame.} other {The reader is not sure of # signs; they have a dashed frame.}}',
  'vin.letters.signs': 'The 17 signs: {vin}',
  'vin.letters.next': 'Show another reading',
  'vin.letters.compared': 'I held each of the 17 signs against the plate',

  'speech.start': 'Speak it',
  'speech.start-named': 'Speak it: {label}',
  'speech.stop': 'Stop listening',
  'speech.stop-named': 'Stop listening: {label}',
  'speech.hearing': 'Listening …',
  'speech.agree.title': 'Your words would leave this device',
  'speech.agree':
    'This browser cannot turn speech into words on the device. It would send what you say to its maker, who may keep it. Say no names, addresses or numbers of customers.',
  'speech.agree.no': 'I will type it',
  'speech.agree.yes': 'Send my speech this time',
  'speech.failed': 'Nothing was understood. Speak again, or type it.',
  'speech.refused':
    'The microphone may not be used. Allow it for this page in the settings of the browser, or type it.',

  'undo.done': 'Recorded: {what}',
  'undo.do': 'Take it back',
  'undo.close': 'Close this notice',
  'undo.reason': 'Taken back right after it was recorded.',
} as const
