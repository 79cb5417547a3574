/** German of en_upkeep.js. */

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const de_upkeep = {
  "upkeep.check": "Was dieses Handy der App gibt",
  "upkeep.check_short": "Verbindung, Speicher, Uhr, Browser",
  "upkeep.title": "Sicherungen des Servers",
  "upkeep.last": "Letzte Sicherung: {when}.",
  "upkeep.none_yet": "Noch keine. Der Server macht die erste bald nach dem Start, dann täglich eine.",
  "upkeep.off": "Der Server macht von sich aus keine Sicherungen.",
  "upkeep.tell":
    "Sag es der Person, die den Server betreibt: Dort sagt „limnary check“, was zu tun ist. Dein Handy behält, was es hat.",
  "upkeep.data-damaged":
    "Eine Datei des Servers ist beschädigt, darum kann keine neue Sicherung entstehen. Die früheren bleiben.",
  "upkeep.disk-full": "Der Datenträger für die Sicherungen ist voll, darum entstand keine neue.",
  "upkeep.folder": "Der Ordner für die Sicherungen lässt sich nicht beschreiben, darum entstand keine neue.",
  "upkeep.not-whole": "Die neue Sicherung ließ sich zur Probe nicht zurückholen und wurde darum nicht behalten.",
  "upkeep.failed": "Die letzte Sicherung ist misslungen.",
  "upkeep.backup-damaged": "Eine Sicherung wurde nachträglich beschädigt. Die anderen bleiben.",
  "upkeep.missing": "Sicherungen, die es gab, liegen nicht mehr an ihrem Ort.",
  "upkeep.too-large": "Der Platz reicht nur für eine Sicherung, darum bleibt keine frühere.",
  "upkeep.late": "Die letzte gute Sicherung ist älter als zwei Tage.",
};
