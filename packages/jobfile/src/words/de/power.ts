import type { SameCodes } from '../catalogues.ts'
import type { powerWords as english } from '../en/power.ts'

/** German: Whether the car's supply holds: verdict, why, warnings, the watch, and what is left after the work. */
export const powerWords: SameCodes<typeof english> = {
  'power-verdict.go': 'Los: Die Batterie hält den Plan durch.',
  'power-verdict.connect-supply': 'Zuerst ein Stützgerät mit mindestens {amperes} A anschließen.',
  'power-verdict.stop': 'Stopp: nicht beginnen.',

  'power-reason.holds':
    'Wahrscheinlichkeit, unter {floorVolts} zu fallen: {chancePercent} %. Der tiefste zu erwartende Wert ist etwa {lowestVolts}.',
  'power-reason.holds-with-supply':
    'Mit dem Stützgerät ist die Wahrscheinlichkeit, unter {floorVolts} zu fallen, {chancePercent} %. Der tiefste zu erwartende Wert ist etwa {lowestVolts}.',
  'power-reason.crosses-floor':
    'Wie beschrieben ist die Wahrscheinlichkeit, unter {floorVolts} zu fallen, {chancePercent} %; {acceptedPercent} % sind zugelassen.',
  'power-reason.supply-too-small': 'Das Stützgerät, wie beschrieben, reicht nicht.',
  'power-reason.supply-volts-too-low': 'Das Stützgerät ist unter die Untergrenze eingestellt.',
  'power-reason.no-supply-enough':
    'Kein Stützgerät bis 200 A hält die Untergrenze. Untergrenze prüfen oder zuerst die Batterie wechseln oder laden.',
  'power-reason.known-bad':
    'Die Batterie ist als schlecht bekannt. Mit einer Spenderbatterie arbeiten oder eine neue einbauen lassen.',
  'power-reason.dead-cell':
    '{restVolts} bleiben übrig, wenn eine Zelle tot ist. Batterie unter Last prüfen, allein laden oder eine Spenderbatterie verwenden.',
  'power-reason.not-twelve-volts':
    '{restVolts} sind keine 12-V-Batterie in Ruhe. Motor und Ladegeräte aus, dann erneut messen.',
  'power-reason.frozen':
    'Bei {celsius} °C und dieser Ladung ist die Säure gefroren. Nicht laden, überbrücken oder belasten: zuerst auftauen lassen.',

  'power-warning.rest-volts-missing':
    'Ohne die Ruhespannung kann die Ladung jeden Wert haben. An den Polen messen, bevor etwas eingeschaltet wird.',
  'power-warning.rested-too-short':
    'Sie hat nicht lange geruht: Der Wert kann zu hoch stehen. Dem unteren Ende des Bandes trauen.',
  'power-warning.hours-at-rest-missing':
    'Wie lange sie geruht hat, ist nicht bekannt: Der Wert kann zu hoch stehen. Fragen, wann das Fahrzeug zuletzt fuhr.',
  'power-warning.above-full':
    '{restVolts} sind mehr, als diese Batterie in Ruhe zeigt. Sicherstellen, dass nichts sie lädt, und das Etikett lesen.',
  'power-warning.deeply-discharged':
    '{restVolts} liegen unter jeder Tabelle: leer und vielleicht beschädigt. Prüfen, bevor man ihr traut.',
  'power-warning.kind-missing':
    'Die Bauart der Batterie ist nicht bekannt: Jede Bauart ist im Band. Etikett lesen.',
  'power-warning.capacity-missing': 'Die Kapazität ist nicht bekannt und weit angenommen. Etikett lesen.',
  'power-warning.age-missing': 'Das Alter ist nicht bekannt: neu bis neun Jahre sind im Band.',
  'power-warning.temperature-missing': 'Die Temperatur ist nicht bekannt: -10 bis 30 °C sind im Band.',
  'power-warning.second-rate-unusable':
    'Die zwei Angaben auf dem Etikett widersprechen sich; eine bleibt unberücksichtigt.',
  'power-warning.step-load-missing':
    'Die Last von „{step}“ ist nicht bekannt: 5 bis 40 A sind angenommen. Angeben, was eingeschaltet ist.',
  'power-warning.may-be-frozen':
    'Am unteren Ende des Bandes kann die Säure gefroren sein. Gehäuse ansehen; an eine gefrorene Batterie nichts anschließen.',
  'power-warning.lithium-below-zero':
    'Unter 0 °C nimmt eine Lithiumbatterie vielleicht keine Ladung an oder schaltet sich ab. Anwärmen oder das Stützgerät alles tragen lassen.',
  'power-warning.charger-not-supply':
    'Ein Ladegerät ist kein Stützgerät: Es schaltet auf Erhaltung zurück und lässt die Spannung absacken. Mit seinem Strom wird nicht gerechnet.',
  'power-warning.supply-amperes-missing':
    'Der Strom des Stützgeräts ist nicht bekannt: 5 bis 30 A sind angenommen. Etikett lesen.',
  'power-warning.support-writes':
    'Es hält auch ohne; übliche Praxis ist dennoch, vor dem ersten Schreiben ein Stützgerät anzuschließen.',
  'power-warning.clamp-to-chassis':
    'Bei Batterieüberwachung kommt die Minusklemme an Karosserie- oder Motormasse, nicht an den Pol.',
  'power-warning.setting-overruled': 'Die Anweisung des Fahrzeugherstellers geht der Einstellung vor.',
  'power-warning.floor-above-target':
    'Der Sollwert liegt unter der Untergrenze: Die Untergrenze gilt als Sollwert.',
  'power-warning.start-doubtful':
    'Nach der Arbeit startet das Fahrzeug nur in {chancePercent} % des Möglichen. Vor der Abfahrt laden oder ein Startgerät bereithalten.',

  'power-level.steady': 'Stabil',
  'power-level.falling': 'Fällt: hält nicht bis zum Ende des Plans',
  'power-level.amber': 'Unter der Untergrenze',
  'power-level.stop': 'Jetzt anhalten',

  'power-watch.no-readings': 'Noch kein Messwert: Das ist die Vorhersage.',
  'power-watch.readings-left-out':
    'Manche Messwerte sind keine brauchbaren Spannungen oder Zeiten und sind ausgelassen. Messgerät prüfen.',
  'power-watch.does-not-fit':
    'Keine Batterie wie beschrieben erklärt diese Messwerte. Etwas anderes zieht Strom: nachsehen, bevor es weitergeht.',
  'power-watch.plan-overrun':
    'Die Arbeit ist über das Ende des Plans hinaus; seine letzte Last gilt als fortdauernd.',

  'power-start.starts': 'Es wird starten',
  'power-start.doubtful': 'Es startet vielleicht nicht: laden oder ein Startgerät bereithalten',
  'power-start.does-not-start': 'So wird es nicht starten',
  'power-start.unknown': 'Nicht bekannt: Spannung bei abgenommenem Stützgerät messen',

  'power-drain.asleep': 'Im Ruhezustand',
  'power-drain.waiting': 'Noch nicht im Ruhezustand. Bis 60 Minuten nach dem Verriegeln erneut messen',
  'power-drain.awake':
    'Wird wach gehalten. Diagnosebuchse freimachen, Schlüssel wegbringen, alles schließen, erneut messen',
  'power-drain.not-measured': 'Nicht gemessen',

  'power-cell.good': 'Gut',
  'power-cell.replace-soon': 'Bald ersetzen',
  'power-cell.replace': 'Ersetzen',
  'power-cell.test-loaded': 'Nicht nachgewiesen: messen, während der Funkschlüssel sendet',
  'power-cell.read-again': 'Kann nicht sein: Messbereich, Polung und Zahl der Knopfzellen prüfen',

  'power-meter.empty': 'eine leere Zeile',
  'power-meter.no-number': 'eine Zeile ohne Zahl',
  'power-meter.several-numbers': 'eine Zeile mit mehreren Zahlen',
  'power-meter.overload': 'außerhalb seines Bereichs',
  'power-meter.alternating': 'Wechselspannung: auf Gleichspannung schalten',
  'power-meter.other-unit': 'eine andere Größe als Volt',
}
