/** French: what was found in a tank, and what to do about it. */
import { forms } from "./fr_forms.js";

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const fr_findings = {
  "find.also": "Aussi",
  "find.more": forms("Et encore une chose.", "Et encore {count} choses."),
  "find.provenance": "{why} ({provenance})",
  "find.any_animal": "presque tout animal de tels bacs",

  "find.chlorine": "Il y a du chlore dans l’eau : dose maintenant ton déchlorant pour tout le bac.",
  "find.chlorine_dose": "Il y a du chlore dans l’eau : dose maintenant {dose} de {label} pour tout le bac.",
  "find.chlorine.why":
    "Relevé {since} : {read}. Sur plusieurs jours, {limit} nuisent déjà aux poissons. Agite la surface et reteste dans dix minutes.",
  "find.undosed": "L’eau neuve a-t-elle été traitée ? Sinon, dose maintenant ton déchlorant pour tout le bac.",
  "find.undosed_dose": "L’eau neuve a-t-elle été traitée ? Sinon, dose maintenant {dose} de {label} pour tout le bac.",
  "find.undosed.why":
    "{litres} sont entrés {since}, sans dose notée avec. Le chlore brûle les branchies en quelques heures. Si tu as dosé, note la dose.",
  "find.gasping": "Agite la surface ou fais buller de l’air maintenant : des poissons sont à la surface.",
  "find.gasping.why":
    "Vu {since}. Teste ensuite l’ammonium, les nitrites et la température. Si tu ne trouves pas la cause, change {litres} d’eau traitée.",
  "find.oxygen_low": "Agite la surface ou fais buller de l’air : il n’y a que {read} d’oxygène.",
  "find.oxygen_low.why":
    "Relevé {since}. Les poissons d’eau chaude ont besoin d’au moins {limit}. Ne nourris pas d’ici là.",
  "find.hot": "Refroidis l’eau lentement : elle est à {read}.",
  "find.hot.why":
    "{who} supporte au plus {limit}. Éteins le chauffage, ouvre le couvercle, agite la surface, ne nourris pas. Pas plus d’un ou deux degrés par heure.",
  "find.cold": "Réchauffe l’eau lentement : elle est à {read}.",
  "find.cold.why":
    "{who} a besoin d’au moins {limit}. Vérifie le chauffage et sa prise, mains sèches, et couvre le bac. Pas plus d’un ou deux degrés par heure.",
  "find.deaths": forms(
    "Un animal est mort : teste aujourd’hui ammonium, nitrites, pH et température.",
    "{count} animaux sont morts en trois jours : teste maintenant ammonium, nitrites, pH et température.",
  ),
  "find.deaths.why":
    "Retire chaque animal mort. Si les tests ne montrent pas de cause, change {litres} d’eau traitée, aussi chaude que le bac. N’ajoute aucun animal. Un vétérinaire qui soigne les poissons peut trouver une maladie.",
  "find.ph_low": "Refais le test du pH : {read}, c’est trop bas pour {who}.",
  "find.ph_low.why":
    "{who} supporte au moins {limit}. Si le résultat est le même, teste la dureté carbonatée et remonte le pH d’une demi-unité par jour au plus : tant qu’il y a de l’ammonium, une montée rapide empoisonne.",
  "find.ph_high": "Refais le test du pH : {read}, c’est trop haut pour {who}.",
  "find.ph_high.why":
    "{who} supporte au plus {limit}. Si le résultat est le même, baisse-le d’une demi-unité par jour au plus et teste l’ammonium : il nuit plus à un pH haut.",
  "find.ph_jump": "Refais le test du pH : il est passé de {from} à {read}.",
  "find.ph_jump.why":
    "Relevé {since}. Le saut nuit par lui-même : ne reviens pas en arrière d’un coup. Cherche la cause : dureté carbonatée épuisée, pierre neuve, grand changement, dioxyde de carbone ajouté.",
  "find.temperature_jump": "Vérifie le chauffage et la pièce : l’eau est passée de {from} à {read}.",
  "find.temperature_jump.why":
    "Relevé {since}. Un saut rapide affaiblit les animaux, même entre des températures qu’ils supportent. Reviens lentement.",
  "find.dawn": "Agite la surface cette nuit : à l’aube l’oxygène sera peut-être entre {low} et {high}.",
  "find.dawn.why":
    "Les poissons d’eau chaude ont besoin de {limit}. C’est un calcul, pas une mesure : regarde les poissons avant que la lumière s’allume. S’ils sont à la surface, fais buller de l’air aussitôt.",
  "find.kh_gone": "La dureté carbonatée est presque épuisée : {read}. Teste le pH chaque jour.",
  "find.kh_gone.why":
    "Sous environ 1 °d, le pH peut chuter en un jour et les bactéries s’arrêtent. Change de petites quantités, avec une eau qui en contient plus.",
  "find.kh_ends": forms(
    "Teste la dureté carbonatée : elle sera épuisée dans environ {count} jour.",
    "Teste la dureté carbonatée : elle sera épuisée dans environ {count} jours.",
  ),
  "find.kh_ends.why":
    "C’est une prévision. Sans dureté, le pH baisse et les bactéries s’arrêtent. Change de petites quantités, avec une eau qui en contient plus.",
  "find.overdosed": "Agite la surface : {times} fois la dose de l’étiquette est notée.",
  "find.overdosed.why": "Noté {since}. Les déchlorants prennent de l’oxygène. Si la note est fausse, corrige-la.",
  "find.large_change": "Observe les animaux : {percent} de l’eau a été changé en une fois.",
  "find.large_change.why": "Changé {since}. Le pH et la température ont pu sauter : teste les deux.",
  "find.hiding": "Des poissons se cachent ou ne mangent pas : teste ammonium, nitrites, pH et température.",
  "find.hiding.why":
    "Noté {since}. Cherche aussi des bagarres et des signes de maladie. Un vétérinaire qui soigne les poissons peut aider.",
  "find.soft": "L’eau est douce pour {who} : {read}.",
  "find.soft.why":
    "Chez lui à partir de {limit} de dureté totale. Rien ne presse ; prévois une autre eau ou d’autres animaux.",
  "find.hard": "L’eau est dure pour {who} : {read}.",
  "find.hard.why":
    "Chez lui jusqu’à {limit} de dureté totale. Rien ne presse ; prévois une autre eau ou d’autres animaux.",

  "instead.bind": "Dose un produit qui fixe l’ammonium, selon sa propre étiquette.",
  "instead.salt":
    "Contre les nitrites, {salt} de sel pur (chlorure de sodium sans additifs) dans ce bac, dissous d’abord.",
  "instead.feed_less": "Ne nourris pas aujourd’hui.",
  "instead.other_water": "Cherche une autre eau.",
};
