/** French of en_room.js. */
import { forms } from "./fr_forms.js";

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const fr_room = {
  "room.title": "Ce téléphone",
  "room.you_are": "Ton rôle ici : {role}",

  "sharing.title": "Partage",
  "sharing.local": "sur ce téléphone",
  "sharing.waiting": forms("{count} à partager", "{count} à partager"),
  "sharing.all": "partagé",
  "sharing.needs_you": forms("{count} à décider", "{count} à décider"),
  "sharing.only_here": "Tout est enregistré sur ce téléphone, et seulement ici.",
  "sharing.how_to_join":
    "Pour partager une salle, ouvre le lien que te donne la personne propriétaire, ou celui que le serveur a imprimé à son premier démarrage.",
  "sharing.waiting_long": forms(
    "{count} entrée est enregistrée sur ce téléphone et attend d’être partagée.",
    "{count} entrées sont enregistrées sur ce téléphone et attendent d’être partagées.",
  ),
  "sharing.sending_long": forms(
    "{count} entrée est enregistrée sur ce téléphone et en route.",
    "{count} entrées sont enregistrées sur ce téléphone et en route.",
  ),
  "sharing.photos_waiting": forms(
    "{count} image est enregistrée sur ce téléphone et attend d’être partagée.",
    "{count} images sont enregistrées sur ce téléphone et attendent d’être partagées.",
  ),
  "sharing.needs_you_long": forms(
    "{count} entrée a été refusée et attend ta décision. Elle est gardée sur ce téléphone.",
    "{count} entrées ont été refusées et attendent ta décision. Elles sont gardées sur ce téléphone.",
  ),
  "sharing.photos_need_you": forms(
    "{count} image a été refusée et attend ta décision. Elle est gardée sur ce téléphone.",
    "{count} images ont été refusées et attendent ta décision. Elles sont gardées sur ce téléphone.",
  ),
  "sharing.not_back": forms(
    "{count} entrée a été perdue quand le serveur a été restauré depuis une sauvegarde, et est encore sur ce téléphone. Un téléphone dont la personne a le droit de l’écrire la rend ; « Garder une copie » la contient aussi.",
    "{count} entrées ont été perdues quand le serveur a été restauré depuis une sauvegarde, et sont encore sur ce téléphone. Un téléphone dont la personne a le droit de les écrire les rend ; « Garder une copie » les contient aussi.",
  ),
  "sharing.photos_so_far": "{count} images sur {total} de ce téléphone sont partagées.",
  "sharing.back_so_far": "Depuis la restauration du serveur, {count} entrées sur {total} sont revues ou rendues.",
  "sharing.all_long": "Tout ce qui est sur ce téléphone est partagé.",
  "sharing.last": "Dernier partage {when}.",
  "sharing.offline": "Pas de réseau. Continue à noter : c’est gardé ici et partagé plus tard.",
  "sharing.now": "Partager maintenant",
  "sharing.trying": "Partage en cours…",
  "sharing.newer": "Chercher une version plus récente",

  "problem.unreachable": "Le serveur est hors d’atteinte. Ce que tu notes est gardé ici et partagé plus tard.",
  "problem.server-failed":
    "Le serveur a un problème de son côté. Ce que tu notes est gardé ici ; l’app réessaie toute seule.",
  "problem.server-full":
    "Le disque du serveur est plein. Ce que tu notes est gardé ici jusqu’à ce que la personne qui le gère fasse de la place.",
  "problem.signed-out":
    "Le serveur ne connaît plus ce téléphone. Tout est gardé ; ouvre un nouveau lien de la personne propriétaire de la salle.",
  "problem.not-allowed": "Dans cette salle, tu peux regarder, mais pas noter.",
  "problem.ended": "Tu n’es plus dans cette salle. Ce qui n’a pas été partagé est encore ici.",
  "problem.upgrade":
    "Le serveur demande une autre version de cette application. Rien n’est perdu : ce que tu notes est gardé ici et partagé après le changement.",
  "problem.too-often": "Le serveur demande un peu de patience. L’app réessaie toute seule.",
  "problem.refused": "Le serveur a refusé. Ce que tu as noté est gardé ici.",

  "refusal.unreachable":
    "Le serveur est hors d’atteinte. Il faut du réseau pour cela ; rien n’a changé, autant que ce téléphone le sache.",
  "refusal.server-failed": "Le serveur a un problème de son côté. Réessaie dans un moment.",
  "refusal.server-full": "Le disque du serveur est plein, rien n’a donc été changé.",
  "refusal.signed-out":
    "Le serveur ne connaît plus ce téléphone. Ouvre un nouveau lien de la personne propriétaire de la salle.",
  "refusal.not-allowed": "Ton rôle dans cette salle ne le permet pas.",
  "refusal.not-here": "Ce n’est plus là.",
  "refusal.conflict": "Quelque chose a changé entre-temps. Regarde à nouveau, puis réessaie.",
  "refusal.last-owner": "Une salle doit avoir un ou une propriétaire : transmets-la d’abord.",
  "refusal.invite-spent": "Ce lien a été utilisé, retiré ou est trop vieux. Demandes-en un nouveau.",
  "refusal.ended": "Tu n’es plus dans cette salle.",
  "refusal.upgrade": "Le serveur demande une autre version de cette application.",
  "refusal.too-often": "Trop d’essais : attends un peu.",

  "needs_you.title": "À décider",
  "needs_you.count": forms("{count} entrée refusée", "{count} entrées refusées"),
  "needs_you.why":
    "Le serveur n’a pas pris ceci. C’est gardé sur ce téléphone jusqu’à ta décision ; rien d’autre n’attend après.",
  "needs_you.none": "Rien à décider.",
  "needs_you.again": "Réessayer",
  "needs_you.all_again": "Tout réessayer",
  "needs_you.export": "Garder en fichier",
  "needs_you.discard": "Jeter",
  "needs_you.discarded": "Jeté : {what}",
  "needs_you.new": "{what} : nouveau",
  "needs_you.change": "{what} : modification",
  "needs_you.remove": "{what} : suppression",
  "needs_you.restore": "{what} : remise en place",
  "needs_you.named": "{kind} « {name} »",
  "needs_you.in_tank": "dans {tank}",
  "needs_you.by": "{who}, {when}",
  "needs_you.follows": forms(
    "{count} modification suivante attend aussi, et part avec.",
    "{count} modifications suivantes attendent aussi, et partent avec.",
  ),
  "needs_you.photos": forms("{count} image n’a pas été prise", "{count} images n’ont pas été prises"),
  "needs_you.photos_why":
    "Elles sont trop grandes ou d’un type que le serveur ne prend pas. « Garder une copie » les contient.",
  "needs_you.wrong": "{label} {message}. Permis : {allowed}.",
  "why_not.role": "Ton rôle ici est « {role} ». Seuls ces rôles le peuvent : {roles}.",
  "why_not.role_then": "Ton rôle ne le permettait pas au moment de l’envoi. Seuls ces rôles le peuvent : {roles}.",
  "why_not.role_now": "Ton rôle ne le permettait pas au moment de l’envoi. Maintenant si : réessaie.",
  "why_not.fields": "Le serveur ne prend pas ce qui y est écrit.",
  "why_not.envelope": "Le serveur ne peut pas le lire. Une version plus récente de cette application peut aider.",
  "why_not.other-kind": "Autre chose est déjà inscrit sous son nom.",
  "why_not.insert-only":
    "C’était déjà noté avec d’autres chiffres, et une entrée ne s’écrase pas : écris-en une nouvelle.",
  "why_not.membership-ended":
    "Tu n’étais plus dans cette salle quand cela devait être partagé. Une fois que tu y es de nouveau, cela part tout seul.",
  "why_not.too-large": "C’est plus grand que ce que le serveur prend.",
  "why_not.invalid": "Le serveur ne le prend pas tel quel.",
  "why_not.other": "Le serveur dit : {reason}.",
  "said.yes": "oui",
  "said.no": "non",

  "people.title": "Personnes et téléphones",
  "people.asking": "Le serveur est interrogé…",
  "people.no_phone": "aucun téléphone",
  "people.you": "toi",
  "people.this_phone": "ce téléphone",
  "people.seen": "vu {when}",
  "people.phones": forms("{count} téléphone, vu {when}", "{count} téléphones, vus {when}"),
  "people.unreachable": "On voit qui est dans la salle quand le serveur est à portée.",
  "people.invite": "Inviter quelqu’un",
  "people.ask_owner": "Seul le rôle propriétaire laisse entrer des personnes.",
  "people.gone": "Cette personne n’est pas dans la salle.",
  "people.role": "Rôle",
  "people.role_changed": "{name} a maintenant le rôle {role}",
  "people.last_owner":
    "La seule personne propriétaire de la salle. Donne ce rôle à quelqu’un d’autre avant de le quitter ou de partir.",
  "people.phones_title": "Téléphones",
  "people.add_phone": "Ajouter un téléphone",
  "people.revoke_why":
    "Un téléphone perdu ou vendu peut être exclu : dès lors il n’ouvre plus rien ici et ne reçoit rien de nouveau. Il montre encore ce qu’il avait, et garde ce qu’il n’avait pas partagé. On ne peut pas revenir en arrière, mais un nouveau lien le laisse entrer à nouveau.",
  "people.revoke": "Exclure {phone}",
  "people.revoked": "{phone} est exclu",
  "people.hand_over": "Transmettre la salle",
  "people.hand_over_why":
    "{name} reçoit le rôle propriétaire, et toi le rôle responsable : tu continues à noter et à modifier les bacs, mais c’est alors {name} qui dit qui est dans la salle. Seule cette personne peut te la rendre.",
  "people.hand_over_do": "Transmettre à {name}",
  "people.handed_over": "{name} a maintenant le rôle propriétaire, et toi le rôle responsable",
  "people.remove": "Retirer de la salle",
  "people.remove_why":
    "Ce que {name} a noté reste dans la salle. Les bacs quittent les téléphones de {name} ; ce qui n’a pas été partagé y reste. On ne peut pas revenir en arrière, mais un nouveau lien laisse {name} entrer à nouveau.",
  "people.remove_do": "Retirer {name}",
  "people.removed": "{name} n’est plus dans la salle",
  "people.leave": "Quitter la salle",
  "people.leave_why":
    "Ce que tu as noté reste chez les autres ; les bacs quittent tes téléphones. Ce qui attend est d’abord partagé, et ce qui ne peut pas l’être reste ici sous « À décider ». Seul un nouveau lien propriétaire te laisse entrer à nouveau.",
  "people.leave_do": "Quitter {room}",
  "people.left": "Tu as quitté {room}",

  "role.owner": "propriétaire",
  "role.keeper": "responsable",
  "role.helper": "aide",
  "role.viewer": "lecture seule",
  "role_may.owner": "tout, les personnes aussi",
  "role_may.keeper": "note et modifie les bacs",
  "role_may.helper": "note, ne modifie pas les bacs",
  "role_may.viewer": "regarde, ne note rien",

  "invite.title": "Laisser entrer quelqu’un",
  "invite.title_phone": "Un téléphone de plus",
  "invite.role": "Rôle",
  "invite.hours": "Le lien reste ouvert",
  "invite.hours.1": "une heure",
  "invite.hours.48": "deux jours",
  "invite.hours.168": "une semaine",
  "invite.hours.720": "30 jours",
  "invite.make": "Créer le lien",
  "invite.phone_why": "Le lien laisse entrer un téléphone de plus de {name}, avec le rôle de {name}.",
  "invite.how":
    "Fais lire ceci par l’appareil photo de l’autre téléphone, ou envoie le lien. Il laisse entrer une personne avec le rôle « {role} », une fois, jusqu’à {until}.",
  "invite.how_phone":
    "Fais lire ceci par l’appareil photo de l’autre téléphone, ou envoie le lien. Il laisse entrer un téléphone de plus de {name}, une fois, jusqu’à {until}.",
  "invite.once": "Il n’est montré que maintenant. Qui l’a peut entrer : ne l’envoie à personne d’autre.",
  "invite.qr": "Code QR du lien pour rejoindre",
  "invite.link": "Le lien",
  "invite.share": "Envoyer le lien",
  "invite.share_title": "Rejoindre {room}",
  "invite.copy": "Copier le lien",
  "invite.copied": "Copié",
  "invite.close": "Terminé",
  "invite.open": "Liens ouverts",
  "invite.open_none": "Aucun lien n’est ouvert.",
  "invite.open_phone": "un téléphone de plus de {name}",
  "invite.until": "jusqu’à {until}, créé par {who}",
  "invite.the_server": "le serveur",
  "invite.withdraw": "Retirer",
  "invite.withdrawn": "Le lien n’ouvre plus rien",

  "rooms.title": "Salles",
  "rooms.none_here": "Ses bacs ont quitté ce téléphone. Ouvre une autre salle, ou continue avec ce téléphone seul.",
  "rooms.here": "ouverte",
  "rooms.local": "Seulement sur ce téléphone",
  "rooms.shared": "partagée",
  "rooms.unshared": forms("{count} entrée attend d’être partagée", "{count} entrées attendent d’être partagées"),
  "rooms.photos": forms("{count} image n’est pas partagée", "{count} images ne sont pas partagées"),
  "rooms.local_holds": forms("{count} entrée, enregistrée ici", "{count} entrées, enregistrées ici"),
  "rooms.ended": "tu n’y es plus",
  "rooms.count": forms("{count} sur ce téléphone", "{count} sur ce téléphone"),
  "rooms.name": "Nom de la salle",
  "rooms.rename": "Nom de cette salle",
  "rooms.renamed": "La salle s’appelle maintenant {name}",
  "rooms.new": "Nouvelle salle",
  "rooms.new_why":
    "Une salle est un ensemble de bacs et les personnes qui s’en occupent. Tu en as le rôle propriétaire ; personne d’autre ne la voit avant que tu laisses entrer.",
  "rooms.make": "Créer la salle",
  "rooms.made": "{name} est créée, tu as le rôle propriétaire",
  "rooms.need_link":
    "Une salle se crée sur le serveur. Ouvre d’abord son lien propriétaire, on pourra ensuite créer des salles ici aussi.",
  "rooms.forget": "Enlever de ce téléphone",
  "rooms.forget_why":
    "Il ne reste rien à partager de cette salle depuis ici. Les images jamais partagées partent aussi : garde d’abord une copie s’il y en a.",
  "rooms.forgotten": "{name} n’est plus sur ce téléphone",

  "archive.title": "Garder une copie",
  "archive.why":
    "Tout ce qui est de cette salle sur ce téléphone, dans des formats ouverts qui n’ont besoin ni de cette application ni du serveur.",
  "archive.short": "La salle en fichier, les relevés en tableau",
  "archive.export": "Garder toute la salle",
  "archive.export_why":
    "Un seul ZIP : chaque entrée une ligne de JSON, les relevés en tableau, les images. Il peut être repris ici ou sur tout serveur.",
  "archive.readings": "Garder les relevés en tableau",
  "archive.readings_why": "CSV, pour un tableur.",
  "archive.import": "Reprendre une copie",
  "archive.import_why":
    "La copie va dans la salle ouverte. Elle est d’abord vérifiée en entier. Si une entrée existe déjà, la plus récente reste. Reprendre deux fois la même copie ne change rien.",
  "archive.making": "La copie se fait : {count} sur {total}.",
  "archive.taking_in": "La copie arrive : {count} sur {total}. Elle est là dès que tout y est.",
  "archive.interrupted":
    "La reprise de {file} a été interrompue. Choisis le fichier encore une fois : rien n’en est repris deux fois.",
  "archive.taken_in": forms("{count} entrée reprise", "{count} entrées reprises"),
  "archive.nothing_new": "Rien de nouveau pour ici",
  "archive.broken": "Ce n’est pas une copie entière d’une salle, et rien n’en a été repris : {lines}",
  "sharing.clock":
    "L’horloge de ce téléphone dit : {here}. Celle du serveur : {there}. Entrées et jours suivent le serveur ; mets à l’heure celle qui se trompe.",
  "looking_only.this":
    "Ton rôle dans cette salle ne permet pas de changer ceci. La personne propriétaire peut en décider autrement.",
  "not_saved.no-space":
    "Il n’y a plus de place sur ce téléphone, donc ceci n’a pas été enregistré. Libère de la place, puis enregistre de nouveau.",
  "not_saved.stuck":
    "La mémoire de ce téléphone ne répond pas. Ferme les autres onglets et fenêtres de l’application, puis ferme l’application et rouvre-la. Ce que tu as saisi reste.",
  "not_saved.storage":
    "La mémoire de ce téléphone n’a pas accepté ceci, donc ce n’est pas enregistré. Essaie encore ; si cela persiste, ferme l’appli et rouvre-la.",
  "archive.kept": "{file} est gardé",

  "meanwhile.by": "Modifié entre-temps, en dernier par {who} :",
  "meanwhile.now": "{field} : maintenant {value}.",
  "meanwhile.empty": "{field} : maintenant vide.",
  "meanwhile.other": "{field} : changé.",
  "meanwhile.more": "Aussi : {fields}.",
  "meanwhile.saving": "Enregistrer garde cela, sauf ce que tu as changé ici toi-même.",
  "authors.made": "Noté par {who}, {when}.",
  "authors.changed": "Dernière modification par {who}, {when}.",
  "authors.brought": "Rendu par {who} après la restauration du serveur, {when}.",
  "authors.this_phone": "ce téléphone",

  "install.title": "Sur l’écran d’accueil",
  "install.why":
    "Mets cette application sur l’écran d’accueil : un navigateur peut effacer ce qu’une page a enregistré si elle n’a pas été ouverte pendant une semaine.",
  "install.show": "Montre-moi comment",
  "install.not_now": "Pas maintenant",
  "sharing.oldest": "Le plus ancien en attente date de {when}.",
  "sharing.oldest_here": forms("{count} entrée, de {when}.", "{count} entrées, la plus ancienne de {when}."),
  "nudge.waiting": "Ici, quelque chose attend encore d’être partagé : {when}.",
  "nudge.only_here":
    "Ce qui est noté ici ({when}) n’existe nulle part ailleurs, et ce navigateur peut l’effacer. Vois comment le garder.",
};
