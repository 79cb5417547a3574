/** German: what was found in a tank, and what to do about it. */

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const de_findings = {
  "find.also": "Außerdem",
  "find.more": { one: "Und noch etwas.", other: "Und {count} weitere Dinge." },
  "find.provenance": "{why} ({provenance})",
  "find.any_animal": "fast jedes Tier solcher Becken",

  "find.chlorine": "Im Wasser ist Chlor: Gib jetzt Wasseraufbereiter für das ganze Becken.",
  "find.chlorine_dose": "Im Wasser ist Chlor: Gib jetzt {dose} {label} für das ganze Becken.",
  "find.chlorine.why":
    "Gemessen {since}: {read}. Über Tage schaden schon {limit} den Fischen. Beweg die Oberfläche und teste in zehn Minuten wieder.",
  "find.undosed": "Ist das neue Wasser aufbereitet? Wenn nicht, gib jetzt Wasseraufbereiter für das ganze Becken.",
  "find.undosed_dose": "Ist das neue Wasser aufbereitet? Wenn nicht, gib jetzt {dose} {label} für das ganze Becken.",
  "find.undosed.why":
    "{litres} kamen {since} hinein, und dazu ist keine Dosis eingetragen. Chlor verätzt die Kiemen in Stunden. Wenn du dosiert hast, trag die Dosis ein.",
  "find.gasping": "Beweg jetzt die Oberfläche oder lass Luft sprudeln: Fische stehen an der Oberfläche.",
  "find.gasping.why":
    "Gesehen {since}. Teste dann Ammonium, Nitrit und Temperatur. Findest du keine Ursache, wechsle {litres} aufbereitetes Wasser.",
  "find.oxygen_low": "Beweg die Oberfläche oder lass Luft sprudeln: Es sind nur {read} Sauerstoff.",
  "find.oxygen_low.why":
    "Gemessen {since}. Fische warmer Gewässer brauchen mindestens {limit}. Füttere nichts, bis es wieder so ist.",
  "find.hot": "Kühl das Wasser langsam: Es hat {read}.",
  "find.hot.why":
    "{who} verträgt höchstens {limit}. Heizer aus, Deckel auf, Oberfläche bewegen, nichts füttern. Kühl höchstens um ein bis zwei Grad in der Stunde.",
  "find.cold": "Wärm das Wasser langsam: Es hat {read}.",
  "find.cold.why":
    "{who} braucht mindestens {limit}. Sieh mit trockenen Händen nach Heizer und Stecker, deck das Becken ab. Wärm höchstens um ein bis zwei Grad in der Stunde.",
  "find.deaths": {
    one: "Ein Tier ist gestorben: Teste heute Ammonium, Nitrit, pH und Temperatur.",
    other: "{count} Tiere sind in drei Tagen gestorben: Teste jetzt Ammonium, Nitrit, pH und Temperatur.",
  },
  "find.deaths.why":
    "Nimm jedes tote Tier heraus. Zeigen die Tests keine Ursache, wechsle {litres} aufbereitetes Wasser, so warm wie das Becken. Setz keine Tiere ein. Eine Krankheit erkennt ein Tierarzt, der Fische behandelt.",
  "find.ph_low": "Miss den pH noch einmal: {read} ist zu niedrig für {who}.",
  "find.ph_low.why":
    "{who} verträgt mindestens {limit}. Bleibt es dabei, miss die Karbonathärte und heb den pH um höchstens eine halbe Stufe am Tag: Solange Ammonium im Wasser ist, vergiftet ein schneller Anstieg.",
  "find.ph_high": "Miss den pH noch einmal: {read} ist zu hoch für {who}.",
  "find.ph_high.why":
    "{who} verträgt höchstens {limit}. Bleibt es dabei, senk ihn um höchstens eine halbe Stufe am Tag und teste Ammonium: Bei hohem pH schadet es mehr.",
  "find.ph_jump": "Miss den pH noch einmal: Er ging von {from} auf {read}.",
  "find.ph_jump.why":
    "Gemessen {since}. Schon der Sprung schadet, darum mach ihn nicht auf einmal rückgängig. Such die Ursache: Karbonathärte verbraucht, ein neuer Stein, ein großer Wechsel, zugegebenes Kohlendioxid.",
  "find.temperature_jump": "Sieh nach Heizer und Raum: Das Wasser ging von {from} auf {read}.",
  "find.temperature_jump.why":
    "Gemessen {since}. Ein schneller Sprung schwächt die Tiere, auch zwischen Temperaturen, die sie vertragen. Geh langsam zurück.",
  "find.dawn": "Beweg heute Nacht die Oberfläche: Am Morgen sind es vielleicht nur {low} bis {high} Sauerstoff.",
  "find.dawn.why":
    "Fische warmer Gewässer brauchen {limit}. Das ist gerechnet, nicht gemessen: Sieh nach den Fischen, bevor das Licht angeht. Stehen sie an der Oberfläche, lass sofort Luft sprudeln.",
  "find.kh_gone": "Die Karbonathärte ist fast verbraucht: {read}. Miss täglich den pH.",
  "find.kh_gone.why":
    "Unter etwa 1 °d kann der pH in einem Tag fallen, und die Bakterien hören auf. Wechsle kleine Mengen, mit Wasser, das mehr davon enthält.",
  "find.kh_ends": {
    one: "Miss die Karbonathärte: Sie ist in etwa {count} Tag verbraucht.",
    other: "Miss die Karbonathärte: Sie ist in etwa {count} Tagen verbraucht.",
  },
  "find.kh_ends.why":
    "Das ist eine Vorhersage. Ohne Härte fällt der pH, und die Bakterien stocken. Wechsle kleine Mengen, mit Wasser, das mehr davon enthält.",
  "find.overdosed": "Beweg die Oberfläche: Eingetragen ist das {times}-Fache der Dosis auf dem Etikett.",
  "find.overdosed.why":
    "Eingetragen {since}. Wasseraufbereiter verbrauchen Sauerstoff. Ist der Eintrag falsch, berichtige ihn.",
  "find.large_change": "Beobachte die Tiere: {percent} des Wassers wurden auf einmal gewechselt.",
  "find.large_change.why": "Gewechselt {since}. pH und Temperatur sind vielleicht gesprungen: Miss beide.",
  "find.hiding": "Fische verstecken sich oder fressen nicht: Teste Ammonium, Nitrit, pH und Temperatur.",
  "find.hiding.why":
    "Notiert {since}. Achte auch auf Streit und Zeichen von Krankheit. Ein Tierarzt, der Fische behandelt, kann helfen.",
  "find.soft": "Das Wasser ist weich für {who}: {read}.",
  "find.soft.why": "Zu Hause ab {limit} Gesamthärte. Das eilt nicht; plane anderes Wasser oder andere Tiere.",
  "find.hard": "Das Wasser ist hart für {who}: {read}.",
  "find.hard.why": "Zu Hause bis {limit} Gesamthärte. Das eilt nicht; plane anderes Wasser oder andere Tiere.",

  "instead.bind": "Gib ein Mittel, das Ammonium bindet, nach seinem eigenen Etikett.",
  "instead.salt": "Gegen Nitrit {salt} reines Salz (Natriumchlorid ohne Zusätze) in dieses Becken, vorher aufgelöst.",
  "instead.feed_less": "Füttere heute nichts.",
  "instead.other_water": "Such anderes Wasser.",
};
