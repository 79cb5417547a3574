/** German of en_room.js. */

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const de_room = {
  "room.title": "Dieses Handy",
  "room.you_are": "Deine Rolle hier: {role}",

  "sharing.title": "Teilen",
  "sharing.local": "auf diesem Handy",
  "sharing.waiting": { one: "{count} zu teilen", other: "{count} zu teilen" },
  "sharing.all": "geteilt",
  "sharing.needs_you": { one: "{count} braucht dich", other: "{count} brauchen dich" },
  "sharing.only_here": "Alles ist auf diesem Handy gespeichert, und nur hier.",
  "sharing.how_to_join":
    "Um einen Raum zu teilen, öffne den Link, den du von seiner Leitung bekommst, oder den, den der Server beim ersten Start ausgegeben hat.",
  "sharing.waiting_long": {
    one: "{count} Eintrag ist auf diesem Handy gespeichert und wartet aufs Teilen.",
    other: "{count} Einträge sind auf diesem Handy gespeichert und warten aufs Teilen.",
  },
  "sharing.sending_long": {
    one: "{count} Eintrag ist auf diesem Handy gespeichert und unterwegs.",
    other: "{count} Einträge sind auf diesem Handy gespeichert und unterwegs.",
  },
  "sharing.photos_waiting": {
    one: "{count} Bild ist auf diesem Handy gespeichert und wartet aufs Teilen.",
    other: "{count} Bilder sind auf diesem Handy gespeichert und warten aufs Teilen.",
  },
  "sharing.needs_you_long": {
    one: "{count} Eintrag wurde abgelehnt und braucht dich. Er bleibt auf diesem Handy.",
    other: "{count} Einträge wurden abgelehnt und brauchen dich. Sie bleiben auf diesem Handy.",
  },
  "sharing.photos_need_you": {
    one: "{count} Bild wurde abgelehnt und braucht dich. Es bleibt auf diesem Handy.",
    other: "{count} Bilder wurden abgelehnt und brauchen dich. Sie bleiben auf diesem Handy.",
  },
  "sharing.not_back": {
    one: "Dem wiederhergestellten Server fehlt {count} Eintrag. Er bleibt auf diesem Handy, bis ihn jemand zurückgibt, der ihn schreiben darf.",
    other:
      "Dem wiederhergestellten Server fehlen {count} Einträge. Sie bleiben auf diesem Handy, bis sie jemand zurückgibt, der sie schreiben darf.",
  },
  "sharing.photos_so_far": "{count} von {total} Bildern auf diesem Handy sind geteilt.",
  "sharing.back_so_far":
    "Seit der Server wiederhergestellt wurde, sind {count} von {total} Einträgen durchgesehen oder zurückgegeben.",
  "sharing.all_long": "Alles auf diesem Handy ist geteilt.",
  "sharing.last": "Zuletzt geteilt: {when}.",
  "sharing.offline": "Kein Netz. Zeichne weiter auf: Es bleibt hier und wird später geteilt.",
  "sharing.now": "Jetzt teilen",
  "sharing.trying": "Teile …",
  "sharing.newer": "Nach neuerer Version suchen",

  "problem.unreachable": "Der Server ist nicht erreichbar. Was du aufzeichnest, bleibt hier und wird später geteilt.",
  "problem.server-failed":
    "Der Server hat selbst einen Fehler. Was du aufzeichnest, bleibt hier; die App versucht es von allein wieder.",
  "problem.server-full":
    "Der Speicher des Servers ist voll. Was du aufzeichnest, bleibt hier, bis dort Platz geschaffen ist.",
  "problem.signed-out":
    "Der Server kennt dieses Handy nicht mehr. Alles bleibt erhalten; öffne einen neuen Link der Leitung des Raums.",
  "problem.not-allowed": "In diesem Raum darfst du schauen, aber nichts aufzeichnen.",
  "problem.ended": "Du bist nicht mehr in diesem Raum. Was nicht geteilt war, ist noch hier.",
  "problem.upgrade":
    "Der Server braucht eine andere Version dieser App. Nichts ist verloren: Was du aufzeichnest, bleibt hier und wird nach dem Wechsel geteilt.",
  "problem.too-often": "Der Server bittet um etwas Geduld. Die App versucht es von allein wieder.",
  "problem.refused": "Der Server hat abgelehnt. Was du aufgezeichnet hast, bleibt hier.",

  "refusal.unreachable":
    "Der Server ist nicht erreichbar. Das hier braucht Netz; soweit dieses Handy weiß, wurde nichts geändert.",
  "refusal.server-failed": "Der Server hat selbst einen Fehler. Versuch es nach einer Weile noch einmal.",
  "refusal.server-full": "Der Speicher des Servers ist voll, darum wurde nichts geändert.",
  "refusal.signed-out": "Der Server kennt dieses Handy nicht mehr. Öffne einen neuen Link der Leitung des Raums.",
  "refusal.not-allowed": "Deine Rolle in diesem Raum erlaubt das nicht.",
  "refusal.not-here": "Das gibt es nicht mehr.",
  "refusal.conflict": "Inzwischen hat sich etwas geändert. Sieh noch einmal nach und versuch es dann wieder.",
  "refusal.last-owner": "Ein Raum braucht eine Leitung: Gib sie zuerst weiter.",
  "refusal.invite-spent": "Dieser Link ist benutzt, zurückgezogen oder zu alt. Bitte um einen neuen.",
  "refusal.ended": "Du bist nicht mehr in diesem Raum.",
  "refusal.upgrade": "Der Server braucht eine andere Version dieser App.",
  "refusal.too-often": "Zu viele Versuche: Warte ein wenig.",

  "needs_you.title": "Braucht dich",
  "needs_you.count": { one: "{count} Eintrag wurde abgelehnt", other: "{count} Einträge wurden abgelehnt" },
  "needs_you.why":
    "Der Server hat das nicht angenommen. Es bleibt auf diesem Handy, bis du entscheidest; nichts anderes wartet darauf.",
  "needs_you.none": "Nichts braucht dich.",
  "needs_you.again": "Noch einmal versuchen",
  "needs_you.all_again": "Alle noch einmal versuchen",
  "needs_you.export": "Als Datei behalten",
  "needs_you.discard": "Verwerfen",
  "needs_you.discarded": "{what} verworfen",
  "needs_you.new": "{what}: neu",
  "needs_you.change": "{what}: Änderung",
  "needs_you.remove": "{what}: Entfernen",
  "needs_you.restore": "{what}: Zurückholen",
  "needs_you.named": "{kind} „{name}“",
  "needs_you.in_tank": "in {tank}",
  "needs_you.by": "{who}, {when}",
  "needs_you.follows": {
    one: "{count} spätere Änderung daran wartet mit und geht mit.",
    other: "{count} spätere Änderungen daran warten mit und gehen mit.",
  },
  "needs_you.photos": { one: "{count} Bild wurde nicht angenommen", other: "{count} Bilder wurden nicht angenommen" },
  "needs_you.photos_why":
    "Sie sind zu groß oder von einer Art, die der Server nicht annimmt. „Kopie behalten“ enthält sie.",
  "needs_you.wrong": "{label} {message}. Erlaubt: {allowed}.",
  "why_not.role": "Deine Rolle hier ist {role}. Nur diese Rollen dürfen das: {roles}.",
  "why_not.role_then": "Deine Rolle reichte nicht, als es gesendet wurde. Nur diese Rollen dürfen das: {roles}.",
  "why_not.role_now": "Deine Rolle reichte nicht, als es gesendet wurde. Jetzt reicht sie: Versuch es noch einmal.",
  "why_not.fields": "Der Server nimmt nicht an, was darin steht.",
  "why_not.envelope": "Der Server kann es nicht lesen. Vielleicht hilft eine neuere Version dieser App.",
  "why_not.other-kind": "Unter seinem Namen steht schon etwas anderes.",
  "why_not.insert-only":
    "Es wurde früher mit anderen Zahlen aufgezeichnet, und Aufzeichnungen werden nicht überschrieben: Schreib eine neue.",
  "why_not.membership-ended":
    "Du warst nicht mehr in diesem Raum, als es geteilt werden sollte. Sobald du wieder eingelassen bist, wird es von allein geteilt.",
  "why_not.too-large": "Es ist größer, als der Server annimmt.",
  "why_not.invalid": "Der Server nimmt es so nicht an.",
  "why_not.other": "Der Server sagt: {reason}.",
  "said.yes": "ja",
  "said.no": "nein",

  "people.title": "Leute und Handys",
  "people.asking": "Frage den Server …",
  "people.no_phone": "kein Handy",
  "people.you": "du",
  "people.this_phone": "dieses Handy",
  "people.seen": "zuletzt gesehen {when}",
  "people.phones": { one: "{count} Handy, zuletzt gesehen {when}", other: "{count} Handys, zuletzt gesehen {when}" },
  "people.unreachable": "Wer im Raum ist, sieht man, wenn der Server erreichbar ist.",
  "people.invite": "Jemanden einladen",
  "people.ask_owner": "Nur die Leitung lässt Leute herein.",
  "people.gone": "Diese Person ist nicht im Raum.",
  "people.role": "Rolle",
  "people.role_changed": "{name} hat jetzt die Rolle {role}",
  "people.last_owner":
    "Die einzige Leitung des Raums. Gib die Leitung jemand anderem, bevor du zurücktrittst oder gehst.",
  "people.phones_title": "Handys",
  "people.add_phone": "Ein Handy hinzufügen",
  "people.revoke_why":
    "Ein verlorenes oder verkauftes Handy kann ausgesperrt werden: Von da an öffnet es hier nichts und bekommt nichts Neues. Es zeigt noch, was es schon hatte, und behält, was nicht geteilt war. Das lässt sich nicht rückgängig machen, aber ein neuer Link lässt es wieder herein.",
  "people.revoke": "{phone} aussperren",
  "people.revoked": "{phone} ist ausgesperrt",
  "people.hand_over": "Den Raum übergeben",
  "people.hand_over_why":
    "{name} bekommt die Leitung, und du die Pflege: Du zeichnest weiter auf und änderst Becken, aber wer im Raum ist, bestimmt dann {name}. Nur {name} kann sie zurückgeben.",
  "people.hand_over_do": "An {name} übergeben",
  "people.handed_over": "{name} hat jetzt die Leitung, du die Pflege",
  "people.remove": "Aus dem Raum nehmen",
  "people.remove_why":
    "Was {name} aufgezeichnet hat, bleibt im Raum. Von den Handys von {name} verschwinden die Becken; was nicht geteilt war, bleibt darauf. Das lässt sich nicht rückgängig machen, aber ein neuer Link lässt {name} wieder herein.",
  "people.remove_do": "{name} herausnehmen",
  "people.removed": "{name} ist nicht mehr im Raum",
  "people.leave": "Den Raum verlassen",
  "people.leave_why":
    "Was du aufgezeichnet hast, bleibt bei den anderen; die Becken verschwinden von deinen Handys. Was wartet, wird erst geteilt, und was nicht geteilt werden kann, bleibt hier unter „Braucht dich“. Nur ein neuer Link der Leitung lässt dich wieder herein.",
  "people.leave_do": "{room} verlassen",
  "people.left": "Du hast {room} verlassen",

  "role.owner": "Leitung",
  "role.keeper": "Pflege",
  "role.helper": "Aushilfe",
  "role.viewer": "Gast",
  "role_may.owner": "alles, auch die Leute",
  "role_may.keeper": "zeichnet auf und ändert Becken",
  "role_may.helper": "zeichnet auf, ändert keine Becken",
  "role_may.viewer": "schaut, zeichnet nichts auf",

  "invite.title": "Jemanden hereinlassen",
  "invite.title_phone": "Noch ein Handy",
  "invite.role": "Als",
  "invite.hours": "Der Link öffnet",
  "invite.hours.1": "eine Stunde",
  "invite.hours.48": "zwei Tage",
  "invite.hours.168": "eine Woche",
  "invite.hours.720": "30 Tage",
  "invite.make": "Link machen",
  "invite.phone_why": "Der Link lässt noch ein Handy von {name} herein, mit derselben Rolle.",
  "invite.how":
    "Lass die Kamera des anderen Handys das lesen, oder schick den Link. Er lässt einmal jemanden mit der Rolle {role} herein, bis {until}.",
  "invite.how_phone":
    "Lass die Kamera des anderen Handys das lesen, oder schick den Link. Er lässt einmal noch ein Handy von {name} herein, bis {until}.",
  "invite.once": "Er wird nur jetzt gezeigt. Wer ihn hat, kann herein: Schick ihn sonst niemandem.",
  "invite.qr": "QR-Code des Einladungslinks",
  "invite.link": "Der Link",
  "invite.share": "Link schicken",
  "invite.share_title": "Einladung: {room}",
  "invite.copy": "Link kopieren",
  "invite.copied": "Kopiert",
  "invite.close": "Fertig",
  "invite.open": "Offene Links",
  "invite.open_none": "Kein Link ist offen.",
  "invite.open_phone": "noch ein Handy von {name}",
  "invite.until": "bis {until}, gemacht von {who}",
  "invite.the_server": "dem Server",
  "invite.withdraw": "Zurückziehen",
  "invite.withdrawn": "Der Link öffnet nichts mehr",

  "rooms.title": "Räume",
  "rooms.none_here":
    "Seine Becken sind von diesem Handy verschwunden. Öffne einen anderen Raum, oder mach mit diesem Handy allein weiter.",
  "rooms.here": "jetzt offen",
  "rooms.local": "Nur auf diesem Handy",
  "rooms.shared": "geteilt",
  "rooms.unshared": { one: "{count} Eintrag wartet aufs Teilen", other: "{count} Einträge warten aufs Teilen" },
  "rooms.photos": { one: "{count} Bild ist nicht geteilt", other: "{count} Bilder sind nicht geteilt" },
  "rooms.local_holds": { one: "{count} Eintrag, hier gespeichert", other: "{count} Einträge, hier gespeichert" },
  "rooms.ended": "du bist nicht mehr darin",
  "rooms.count": { one: "{count} auf diesem Handy", other: "{count} auf diesem Handy" },
  "rooms.name": "Name des Raums",
  "rooms.rename": "Name dieses Raums",
  "rooms.renamed": "Der Raum heißt jetzt {name}",
  "rooms.new": "Ein neuer Raum",
  "rooms.new_why":
    "Ein Raum sind Becken und die Leute, die sie pflegen. Du bekommst seine Leitung; niemand sonst sieht ihn, bis du jemanden hereinlässt.",
  "rooms.make": "Raum anlegen",
  "rooms.made": "{name} ist angelegt, und du hast die Leitung",
  "rooms.need_link":
    "Ein Raum wird auf dem Server angelegt. Öffne zuerst den Link seiner Leitung, dann geht das auch hier.",
  "rooms.forget": "Von diesem Handy nehmen",
  "rooms.forget_why":
    "Von hier ist nichts mehr aus diesem Raum zu teilen. Bilder, die nie geteilt wurden, gehen mit: Behalte erst eine Kopie, falls es welche gibt.",
  "rooms.forgotten": "{name} ist von diesem Handy genommen",

  "archive.title": "Kopie behalten",
  "archive.why":
    "Alles aus diesem Raum, was auf diesem Handy ist, in offenen Formaten, die weder diese App noch den Server brauchen.",
  "archive.short": "Der Raum als Datei, die Messwerte als Tabelle",
  "archive.export": "Den ganzen Raum behalten",
  "archive.export_why":
    "Ein ZIP: jede Aufzeichnung eine Zeile JSON, die Messwerte als Tabelle, die Bilder. Es lässt sich hier oder auf jedem Server wieder aufnehmen.",
  "archive.readings": "Die Messwerte als Tabelle behalten",
  "archive.readings_why": "CSV, für eine Tabellenkalkulation.",
  "archive.import": "Eine Kopie aufnehmen",
  "archive.import_why":
    "Die Kopie kommt in den offenen Raum. Zuerst wird sie ganz geprüft. Gibt es einen Eintrag schon, bleibt der neuere. Dieselbe Kopie zweimal aufzunehmen ändert nichts.",
  "archive.making": "Die Kopie entsteht: {count} von {total}.",
  "archive.taking_in": "Die Kopie kommt herein: {count} von {total}. Sie ist da, sobald alles da ist.",
  "archive.interrupted":
    "Die Aufnahme von {file} wurde unterbrochen. Wähle die Datei noch einmal: Nichts davon wird doppelt aufgenommen.",
  "archive.taken_in": { one: "{count} Aufzeichnung aufgenommen", other: "{count} Aufzeichnungen aufgenommen" },
  "archive.nothing_new": "Nichts darin war hier neu",
  "archive.broken": "Das ist keine ganze Kopie eines Raums, und nichts davon wurde aufgenommen: {lines}",
  "sharing.clock":
    "Die Uhr dieses Handys sagt: {here}. Die des Servers: {there}. Einträge und Tage folgen dem Server; stell die falsche richtig.",
  "looking_only.this": "Mit deiner Rolle in diesem Raum änderst du das nicht. Seine Leitung kann das ändern.",
  "not_saved.no-space":
    "Auf diesem Handy ist kein Platz mehr, darum wurde das nicht gespeichert. Schaff etwas Platz, dann speichere es noch einmal.",
  "not_saved.stuck":
    "Der Speicher dieses Handys antwortet nicht. Schließ andere Tabs und Fenster der App, schließ dann die App und öffne sie wieder. Was du eingegeben hast, bleibt.",
  "not_saved.storage":
    "Der Speicher dieses Handys hat das nicht angenommen, darum wurde es nicht gespeichert. Versuch es noch einmal; bleibt es so, schließ die App und öffne sie wieder.",
  "archive.kept": "{file} ist gespeichert",

  "meanwhile.by": "Inzwischen geändert, zuletzt von {who}:",
  "meanwhile.now": "{field}: jetzt {value}.",
  "meanwhile.empty": "{field}: jetzt leer.",
  "meanwhile.other": "{field}: jetzt anders.",
  "meanwhile.more": "Auch: {fields}.",
  "meanwhile.saving": "Beim Speichern bleibt das so, außer du hast hier dasselbe geändert.",
  "authors.made": "Angelegt von {who}, {when}.",
  "authors.changed": "Zuletzt geändert von {who}, {when}.",
  "authors.brought": "Zurückgegeben von {who}, nachdem der Server wiederhergestellt war, {when}.",
  "authors.this_phone": "diesem Handy",

  "install.title": "Auf dem Startbildschirm",
  "install.why":
    "Leg diese App auf den Startbildschirm: Was eine Seite gespeichert hat, darf ein Browser löschen, wenn sie eine Woche nicht geöffnet wurde.",
  "install.show": "Zeig mir, wie",
  "install.not_now": "Jetzt nicht",
  "sharing.oldest": "Das Älteste, was wartet, ist von {when}.",
  "sharing.oldest_here": { one: "{count} Eintrag, von {when}.", other: "{count} Einträge, der älteste von {when}." },
  "nudge.waiting": "Hier wartet noch etwas aufs Teilen: {when}.",
  "nudge.only_here":
    "Was hier eingetragen ist ({when}), steht nirgends sonst, und dieser Browser darf es löschen. Sieh nach, wie es bleibt.",
};
