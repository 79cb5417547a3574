/** French of en_setup.js. */
import { forms } from "./fr_forms.js";

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const fr_setup = {
  "figures.next": "Suivant : {what}",
  "figures.done": "Fermer le clavier",
  "figures.less": "Moins : {what}",
  "figures.more": "Plus : {what}",

  "setup.from_glass": "Monter depuis le bac vide, étape par étape",
  "setup.from_glass_why":
    "Poids, substrat, plantes, premier remplissage et premiers animaux, avec ce qu’il faut acheter. Ou mesure ici un bac en marche.",
  "setup.plans": "En cours de montage",
  "setup.plans_of": "Comment il a été monté",
  "setup.next_is": "Suivant : {step}",
  "setup.is_plan": "En cours de montage. Prends les étapes dans l’ordre que tu veux ; tout est gardé.",
  "setup.is_plan_seen": "En cours de montage, pas encore rempli.",
  "setup.is_filled": "Rempli et en marche. Ce qui avait été prévu pour lui est ici.",
  "setup.state_done": "fait",
  "setup.state_skipped": "passé",
  "setup.state_open": "à faire",
  "setup.next": "Suivant",
  "setup.next_with": "{figure}, suivant",
  "setup.next_portions": forms("{count} portion, suivant", "{count} portions, suivant"),
  "setup.skip": "Passer",
  "setup.saved": "{step} : enregistré sur ce téléphone",
  "setup.skipped": "{step} : passé",
  "setup.name_first": "Bac {count}",

  "setup.step.glass": "Le bac vide",
  "setup.step.place": "Où il se tient",
  "setup.step.substrate": "Substrat",
  "setup.step.hardscape": "Pierres et bois",
  "setup.step.warmth": "Chaleur et lumière",
  "setup.step.plants": "Plantes",
  "setup.step.stock": "Qui doit y vivre",
  "setup.step.fill": "Le remplir",
  "setup.step.first_fish": "Premiers animaux",

  "setup.place_why":
    "Avant d’y mettre quoi que ce soit : ce qu’il pèsera, et sur quoi il reposera. Ce que tu ajoutes aux étapes suivantes est compté aussi.",

  "setup.bed": "Ce qui couvre le fond",
  "setup.bed_capped": "de la nourriture pour les racines sous une couverture",
  "setup.bed_plain": "sable ou gravier simple",
  "setup.bed_bare": "rien, verre nu",
  "setup.layer_nutrient": "Dessous : nourriture pour les racines",
  "setup.layer_cap": "Dessus : la couverture",
  "setup.layer_plain": "Le sol",
  "setup.front": "Épaisseur à l’avant",
  "setup.back": "Épaisseur à l’arrière",
  "setup.pack": "Un sac du magasin contient",
  "setup.layer_found": "{litres} L, environ {kg} kg secs.",
  "setup.layer_packs": forms(
    "{litres} L, environ {kg} kg secs : {count} sac.",
    "{litres} L, environ {kg} kg secs : {count} sacs.",
  ),
  "setup.mesh": "Soutenir l’arrière avec des sacs en filet",
  "setup.mesh_why":
    "Des sacs en filet à demi pleins sous la pente épousent leur place et l’empêchent de glisser (usage courant).",
  "setup.mesh_bags": "Sacs en filet",
  "setup.mesh_size": "Un sac contient, plein",
  "setup.as_rectangle": "Compté comme un rectangle de même surface.",

  "setup.hardscape_why":
    "Un peu suffit. Pèse-le sur une balance de cuisine ou un pèse-personne ; ce qu’il occupe est de la place que l’eau n’a pas.",
  "setup.of_stone": "Pierre",
  "setup.of_lava": "Roche de lave",
  "setup.of_wood": "Bois, gorgé d’eau",
  "setup.density": "compté à {density} kg/L",
  "setup.displaced": "{kg} kg prennent {litres} L.",

  "setup.warmth": "Chaleur",
  "setup.water_warm": "Eau",
  "setup.room_cold": "Pièce au plus froid",
  "setup.room_cold_why": "une nuit d’hiver",
  "setup.cover": "Dessus",
  "setup.cover_lid": "un couvercle",
  "setup.cover_open": "ouvert",
  "setup.light": "Lumière",
  "setup.light_band": "Intensité de la lampe au niveau des plantes",
  "setup.light_low": "faible",
  "setup.light_medium": "moyenne",
  "setup.light_high": "forte",
  "setup.light_measured": "Mesurée, ou d’après la courbe de la lampe",
  "setup.light_counted": "Compté avec {light} µmol/m²/s, le milieu de cette bande.",

  "setup.moves": "Ce qui remue l’eau",
  "setup.moves_why":
    "La nuit, plantes et sol respirent aussi. Des remous ou des bulles apportent l’air qu’il faut aux poissons à l’aube ; une eau immobile en porte bien moins.",

  "setup.plants_why":
    "Plante dense dès le premier jour : les plantes rapides prennent l’ammonium tant que les bactéries sont encore peu nombreuses.",
  "setup.portions": forms("{count} portion pour ce fond", "{count} portions pour ce fond"),
  "setup.portions_how":
    "{percent} % du fond planté, {area} cm² par portion : un pot, un bouquet d’environ cinq tiges ou une poignée.",
  "setup.portions_in": forms("{count} portion", "{count} portions"),
  "setup.plants_chosen": "Choisies, {have} sur {wanted}",
  "setup.plants_fit": "Vont avec cette chaleur et cette lumière",
  "setup.plants_order": "Les plus rapides d’abord. Plantes flottantes : laisse la moitié de la surface libre.",
  "setup.plant_other": "Une autre plante",
  "setup.plant_about": "{growth}, {position}, {low} à {high} °C, lumière {light}",
  "setup.growth_slow": "lente",
  "setup.growth_medium": "régulière",
  "setup.growth_fast": "rapide",
  "setup.position_foreground": "à l’avant",
  "setup.position_midground": "au milieu",
  "setup.position_background": "à l’arrière",
  "setup.position_hardscape": "sur pierre ou bois",
  "setup.position_floating": "flottante",

  "setup.stock_why": "Prévois-les adultes. Rien n’est encore acheté, et une limite n’est pas un but.",
  "setup.animals_fit": "Lui iraient",
  "setup.animals_order":
    "Des poissons paisibles dont il a la chaleur et l’eau, assez long pour eux, avec de la place pour tout un groupe une fois mûr. D’abord ceux qui aiment le mieux cette chaleur.",
  "setup.animal_other": "Un autre animal",
  "setup.animal_about": "grandit jusqu’à {length} cm, au moins {group} ensemble, {low} à {high} °C",
  "setup.unweighed": "Non comptés, car personne n’a indiqué leur longueur adulte : {who}.",
  "setup.bears_plan":
    "Prévu : {planned} une fois adultes. Tout juste rempli, il porte environ {now}, une fois mûr environ {later}.",
  "setup.bears_today":
    "Prévu : {planned} une fois adultes. Aujourd’hui il porte environ {now}, une fois mûr environ {later}.",
  "setup.bears_too_many": "C’est plus qu’il ne porte même alors : prévois-en moins, ou de plus petits.",
  "setup.bears_later": "Pas tous à la fois : quelques-uns d’abord, puis d’autres à mesure qu’il mûrit.",
  "setup.bears_small_lots": "Introduis-les tout de même par petits lots, à quelques semaines d’écart.",
  "setup.bears_grown": "Ce qu’il porte, une fois mûr",
  "setup.finding": "{who} : {what}",
  "setup.finding_figures": "{who} : {what} ({figures})",

  "setup.fill_why":
    "Verse lentement sur une assiette, pour que le sol reste en place. Compte les seaux si tu peux : c’est mieux que toute règle.",
  "setup.plants_in": forms("La plante est en place", "Les {count} sortes de plantes sont en place"),
  "setup.dose_source": "Indique quelle eau on met dedans, et sa dose sera donnée.",
  "setup.dose_label":
    "Choisis ou recopie l’étiquette de ton déchlorant, et la dose pour cette eau exactement sera donnée.",
  "setup.log_fill": "Rempli avec {litres}",
  "setup.log_fill_dose": "Rempli avec {litres} et {dose}",
  "setup.filled": "{tank} : rempli avec {litres}, enregistré sur ce téléphone",

  "setup.water_temperature": "{low} à {high} °C pour tous",
  "setup.water_ph": "pH {low} à {high}",
  "setup.water_gh": "{low} à {high} °dGH",

  "first_fish.title": "Premiers animaux",
  "first_fish.open": "Introduire les premiers animaux",
  "first_fish.first": "Avant qu’un animal arrive : {what}",
  "first_fish.of_days": forms(
    "La nourriture d’un jour.",
    "La nourriture de {count} jours en une dose : celle d’un seul jour est trop peu pour une balance et des tests. Redonne-la quand l’ammonium est tombé à zéro.",
  ),
  "first_fish.not_filled": "Il lui faut d’abord de l’eau et des plantes.",
  "first_fish.working": "Ce qu’il peut porter se calcule…",
  "first_fish.no_plan":
    "Selon l’azote, il porte aujourd’hui environ {low} d’animaux. Indique qui doit y vivre, et cette page dira quand.",
  "first_fish.now": "Il peut porter aujourd’hui les {planned} prévus, 9 fois sur 10. Commence par quelques-uns.",
  "first_fish.perhaps":
    "Il peut sans doute porter les {planned} prévus ; seuls {low} sont sûrs aujourd’hui, 9 fois sur 10. Commence par ces quelques-uns, ou attends.",
  "first_fish.in_7": "Il peut porter les {planned} prévus dans une semaine environ, 9 fois sur 10 ; {low} aujourd’hui.",
  "first_fish.in_14":
    "Il peut porter les {planned} prévus dans deux semaines environ, 9 fois sur 10 ; {low} aujourd’hui.",
  "first_fish.later":
    "Il ne peut pas porter les {planned} prévus d’ici deux semaines. {low} sont sûrs aujourd’hui, 9 fois sur 10.",
  "first_fish.welfare": "Leur bien-être d’abord",
  "first_fish.daily":
    "Teste l’ammonium et les nitrites chaque jour les premières semaines, et change de l’eau le jour même où l’application le dit.",
  "first_fish.few": "D’abord quelques-uns des plus robustes, un petit groupe entier d’une espèce, et nourris peu.",
  "first_fish.water": "Aie un déchlorant et un seau prêts avant leur arrivée.",
  "first_fish.come_today": "Arrivent maintenant",
  "first_fish.of_planned": forms("{count} encore prévu", "{count} encore prévus"),
  "first_fish.length": "Longueur : {who}",
  "first_fish.record": forms("Noter {count} arrivée", "Noter {count} arrivées"),
  "first_fish.record_none": "Aucun encore",
  "first_fish.saved": forms(
    "{count} animal dans {tank}, enregistré sur ce téléphone",
    "{count} animaux dans {tank}, enregistré sur ce téléphone",
  ),
  "first_fish.without": "Ou démarrer sans animaux",
  "first_fish.without_why":
    "Une dose mesurée d’ammonium nourrit les bactéries comme le fera la nourriture des animaux prévus. Jamais avec un animal dans l’eau.",
  "first_fish.log_salt": "{amount} g de chlorure d’ammonium versés",
  "first_fish.log_household": "{amount} ml d’ammoniaque ménagère versés",
  "first_fish.dosed": "{amount} {what} : enregistré sur ce téléphone",
  "filled.no_animals": "aucune nourriture, car aucun animal n’y vit",

  "buy.title": "À acheter",
  "buy.for": "Pour {tank}",
  "buy.send": "Envoyer en texte",
  "buy.print": "Imprimer",
  "buy.know": "Bon à savoir",
  "buy.ticks": "Les coches restent sur ce téléphone.",
  "buy.water": "Il y entre {litres} d’eau.",
  "buy.weight": "Rempli, il pèsera environ {kg}.",
  "buy.floor":
    "Si un plancher porte cela, aucune liste ne peut le dire : demande à un ingénieur en structure, et suis les règles locales et ton bail.",
  "buy.first_test":
    "Premier test le lendemain du remplissage, puis chaque jour les premières semaines avec des animaux (usage courant).",
  "buy.tests": "Teste l’ammonium et les nitrites chaque jour les premières semaines avec des animaux (usage courant).",
  "buy.layer": "{litres} de {material}, environ {kg}",
  "buy.layer_packs": forms(
    "{count} sac de {material} ({pack}) : {litres}, environ {kg}",
    "{count} sacs de {material} ({pack} chacun) : {litres}, environ {kg}",
  ),
  "buy.mesh": forms(
    "{count} sac en filet, contenant {litres} en tout",
    "{count} sacs en filet, contenant {litres} en tout",
  ),
  "buy.hardscape": "{kind}, {kg}",
  "buy.heater": "Chauffage, au moins {watts}",
  "buy.filter": "Un {filter}",
  "buy.lamp": "Lampe avec minuterie : {light} µmol/m²/s au niveau des plantes sur {area_cm2} cm², {hours} h par jour",
  "buy.plant": forms("{species} : {count} portion", "{species} : {count} portions"),
  "buy.plants_more": forms("Plantes au choix : {count} portion", "Plantes au choix : {count} portions"),
  "buy.dechlorinator": "{amount} de {name} pour les premiers {litres}",
  "buy.dechlorinator_source": "Déchlorant pour {litres}, sauf si ton eau ne contient ni chlore ni chloramine",
  "buy.dechlorinator_label": "Déchlorant pour {litres}",
  "buy.thermometer": "Thermomètre",
  "buy.test": "Test : {parameter}",
};
