/** French of en_upkeep.js. */

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const fr_upkeep = {
  "upkeep.check": "Ce que ce téléphone offre à l’application",
  "upkeep.check_short": "Connexion, mémoire, horloge, navigateur",
  "upkeep.title": "Les sauvegardes du serveur",
  "upkeep.last": "Dernière sauvegarde : {when}.",
  "upkeep.none_yet": "Aucune pour l’instant. Le serveur fait la première peu après son démarrage, puis une par jour.",
  "upkeep.off": "Le serveur ne fait pas de sauvegarde de lui-même.",
  "upkeep.tell":
    "Préviens la personne qui gère le serveur : « limnary check » y dit quoi faire. Ton téléphone garde ce qu’il a.",
  "upkeep.data-damaged":
    "Un fichier du serveur est endommagé, donc aucune nouvelle sauvegarde n’est possible. Les précédentes sont gardées.",
  "upkeep.disk-full": "Le disque des sauvegardes est plein, donc aucune nouvelle n’a été faite.",
  "upkeep.folder": "Impossible d’écrire dans le dossier des sauvegardes, donc aucune nouvelle n’a été faite.",
  "upkeep.not-whole": "La nouvelle sauvegarde n’a pas pu être restaurée à l’essai, donc elle n’a pas été gardée.",
  "upkeep.failed": "La dernière sauvegarde a échoué.",
  "upkeep.backup-damaged": "Une sauvegarde a été endommagée après coup. Les autres sont gardées.",
  "upkeep.missing": "Des sauvegardes faites ne sont plus à leur place.",
  "upkeep.too-large": "Il n’y a de place que pour une sauvegarde, donc aucune plus ancienne n’est gardée.",
  "upkeep.late": "La dernière bonne sauvegarde a plus de deux jours.",
};
