/** French of en_files.js. */
import { forms } from "./fr_forms.js";

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const fr_files = {
  "install.short": "Pour que rien ne soit effacé",
  "install.do": "L’y mettre",
  "install.ios_1": "Touche le bouton Partager du navigateur.",
  "install.ios_2": "Choisis « Sur l’écran d’accueil », puis « Ajouter ».",
  "install.ios_3": "Ouvre désormais l’application depuis l’écran d’accueil.",
  "install.android_1": "Ouvre le menu du navigateur (trois points).",
  "install.android_2": "Choisis « Installer » ou « Ajouter à l’écran d’accueil ».",
  "install.other_1": "Là où le navigateur le peut, son menu ou sa barre d’adresse propose d’installer l’application.",
  "install.same": "L’application s’y ouvre avec tout ce qui est ici.",
  "install.along": "Ce qui suit",
  "install.apart": "L’application de l’écran d’accueil a son propre stockage et commence vide.",
  "install.as_phone":
    "Fais-la entrer comme un téléphone de plus à toi : là-bas, sous « Rejoindre une salle », tape ce code.",
  "install.unshared": forms(
    "{count} entrée n’est pas encore partagée. Partage-la d’abord, ou garde-la ici en fichier et reprends le fichier là-bas, sous « Garder une copie ».",
    "{count} entrées ne sont pas encore partagées. Partage-les d’abord, ou garde-les ici en fichier et reprends le fichier là-bas, sous « Garder une copie ».",
  ),
  "install.only_here": forms(
    "{count} entrée n’est qu’ici. Garde-la en fichier, et reprends le fichier là-bas, sous « Garder une copie ».",
    "{count} entrées ne sont qu’ici. Garde-les en fichier, et reprends le fichier là-bas, sous « Garder une copie ».",
  ),
  "install.keep": "Garder en fichier",
  "install.here": "Voici l’application de l’écran d’accueil.",
  "install.bring":
    "Ce que contient la page du navigateur vient ici par un code et un fichier de là-bas : sa page « Sur l’écran d’accueil » fait les deux.",
  "invite.code": "Un code court à taper",
  "invite.code_until": "valable jusqu’à {until}",
  "storage.kept": "Le navigateur a accepté de garder ce qui est stocké ici.",
  "storage.may_go":
    "Le navigateur n’a pas accepté de garder ce qui est stocké ici : il peut l’effacer si la place manque, ou si cette page n’est pas ouverte pendant une semaine.",
  "join.why": "Ses bacs et ses relevés arrivent sur ce téléphone, et les tiens vont chez les autres.",
  "join.keeper": "Ton nom, tel que les autres le voient",
  "join.phone": "Un nom pour ce téléphone",
  "join.do": "Rejoindre",
  "join.asking": "En train de rejoindre…",
  "join.done": "Tu es dans {room}.",
  "join.how": "Colle le lien, tape son code court, ou laisse l’appareil photo le lire sur l’autre écran.",
  "join.way": "Lien ou code",
  "join.on": "Continuer",
  "join.paste": "Coller",
  "join.scan": "Lire avec l’appareil photo",
  "join.photo": "Depuis une photo",
  "join.camera": "Ce que voit l’appareil photo",
  "join.short": "Par un lien, un code ou l’appareil photo",
  "join.not_way": "Ce n’est ni un lien entier ni un code de huit lettres et chiffres.",
  "join.code_unknown": "Le serveur ne connaît pas ce code. Un code vaut dix minutes : demandes-en un nouveau.",
  "join.no_camera": "L’appareil photo ne peut pas servir ici. Choisis une photo du code, ou tape le code court.",
  "join.no_code": "Aucun code trouvé sur cette photo. Approche-toi, jusqu’à ce qu’il remplisse la moitié de l’image.",
  "join.unreachable": "Le serveur est hors d’atteinte. Il faut du réseau une fois pour rejoindre ; après, plus jamais.",
  "print.kept": "Ce navigateur n’imprime pas. {file} est gardé : imprime-le sur un autre appareil.",
  "shared.title": "Photos partagées",
  "shared.which": "À quel bac appartiennent-elles ?",
  "shared.none": "Aucune photo n’attend ici.",
  "archive.tables": "Garder tout en tableaux",
  "archive.tables_why":
    "Un fichier CSV par sorte, pour un tableur : relevés, changements, doses, repas, animaux et tout le reste. Les heures sont en UTC. columns.csv dit ce que contient chaque colonne, et son unité.",
};
