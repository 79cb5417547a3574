/** German of en_files.js. */

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const de_files = {
  "install.short": "Damit nichts gelöscht wird",
  "install.do": "Dorthin legen",
  "install.ios_1": "Tippe auf den Teilen-Knopf des Browsers.",
  "install.ios_2": "Wähle „Zum Home-Bildschirm“, dann „Hinzufügen“.",
  "install.ios_3": "Öffne die App von nun an vom Startbildschirm.",
  "install.android_1": "Öffne das Menü des Browsers (drei Punkte).",
  "install.android_2": "Wähle „Installieren“ oder „Zum Startbildschirm hinzufügen“.",
  "install.other_1": "Wo der Browser es kann, bietet sein Menü oder seine Adressleiste an, die App zu installieren.",
  "install.same": "Dort öffnet sich die App mit allem, was hier ist.",
  "install.along": "Was mitkommt",
  "install.apart": "Die App auf dem Startbildschirm hat einen eigenen Speicher und fängt leer an.",
  "install.as_phone":
    "Lass sie als ein weiteres Handy von dir herein: Tippe dort unter „Einem Raum beitreten“ diesen Code ein.",
  "install.unshared": {
    one: "{count} Eintrag ist noch nicht geteilt. Teile ihn zuerst, oder behalte ihn hier als Datei und nimm die Datei dort unter „Kopie behalten“ auf.",
    other:
      "{count} Einträge sind noch nicht geteilt. Teile sie zuerst, oder behalte sie hier als Datei und nimm die Datei dort unter „Kopie behalten“ auf.",
  },
  "install.only_here": {
    one: "{count} Eintrag ist nur hier. Behalte ihn als Datei, und nimm die Datei dort unter „Kopie behalten“ auf.",
    other: "{count} Einträge sind nur hier. Behalte sie als Datei, und nimm die Datei dort unter „Kopie behalten“ auf.",
  },
  "install.keep": "Als Datei behalten",
  "install.here": "Das ist die App auf dem Startbildschirm.",
  "install.bring":
    "Was die Seite im Browser hat, kommt mit einem Code und einer Datei von dort hierher: Ihre Seite „Auf dem Startbildschirm“ macht beides.",
  "invite.code": "Ein Kurzcode zum Tippen",
  "invite.code_until": "gilt bis {until}",
  "storage.kept": "Der Browser hat zugesagt, zu behalten, was hier gespeichert ist.",
  "storage.may_go":
    "Der Browser hat nicht zugesagt, zu behalten, was hier gespeichert ist: Er darf es löschen, wenn der Platz knapp wird oder diese Seite eine Woche nicht geöffnet wird.",
  "join.why": "Seine Becken und Einträge kommen auf dieses Handy, und deine gehen zu den anderen.",
  "join.keeper": "Dein Name, wie ihn die anderen sehen",
  "join.phone": "Ein Name für dieses Handy",
  "join.do": "Beitreten",
  "join.asking": "Trete bei …",
  "join.done": "Du bist in {room}.",
  "join.how": "Füge den Link ein, tippe seinen Kurzcode ab, oder lass die Kamera ihn vom anderen Bildschirm lesen.",
  "join.way": "Link oder Code",
  "join.on": "Weiter",
  "join.paste": "Einfügen",
  "join.scan": "Mit der Kamera lesen",
  "join.photo": "Aus einem Foto",
  "join.camera": "Was die Kamera sieht",
  "join.short": "Mit Link, Code oder Kamera",
  "join.not_way": "Das ist weder ein vollständiger Link noch ein Code aus acht Buchstaben und Ziffern.",
  "join.code_unknown": "Diesen Code kennt der Server nicht. Ein Code gilt zehn Minuten: Bitte um einen neuen.",
  "join.no_camera": "Die Kamera lässt sich hier nicht nutzen. Nimm ein Foto des Codes, oder tippe den Kurzcode ein.",
  "join.no_code": "Auf diesem Foto ist kein Code zu finden. Geh näher heran, bis er das halbe Bild füllt.",
  "join.unreachable": "Der Server ist nicht erreichbar. Zum Beitreten braucht es einmal Netz; danach für nichts mehr.",
  "print.kept": "Dieser Browser druckt nicht. {file} ist behalten: Druck es auf einem anderen Gerät.",
  "shared.title": "Geteilte Fotos",
  "shared.which": "Zu welchem Becken gehören sie?",
  "shared.none": "Hier wartet kein Foto.",
  "archive.tables": "Alles als Tabellen behalten",
  "archive.tables_why":
    "Eine CSV-Datei je Art, für eine Tabellenkalkulation: Messwerte, Wechsel, Gaben, Fütterungen, Tiere und alles Übrige. Zeiten stehen in UTC. columns.csv sagt, was jede Spalte enthält, und in welcher Einheit.",
};
