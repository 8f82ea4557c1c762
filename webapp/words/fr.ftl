### The words of Cellarslate in French (fr). No native of the trade has read them yet.
### Terms believed to be the law’s, from memory (a native of the trade has to read them):
### atelier public de distillation, matières à distiller, eau-de-vie de fruit, eau-de-vie de vin,
### eau-de-vie de marc de raisin, eau-de-vie de marc de fruits, brandy, Geist, boisson spiritueuse de céréales,
### whisky, alcool éthylique d’origine agricole, dioxyde de carbone, acide cyanhydrique, carbamate d’éthyle,
### poire Williams, quetsche, mirabelle, abricot, framboise, mûre, cassis, groseille rouge, baie de sureau, sorbe,
### alise, cynorrhodon, baie de genièvre, seigle, malt d’orge, miel, instrument de mesure, aréomètre,
### réfractomètre, pycnomètre, tube à niveau, erreur maximale tolérée, incertitude, classe de précision,
### masse volumique, densité relative, température de référence, en suspension de droits,
### campagne de distillation, agent des douanes, atmosphère explosive, espace confiné.
### Terms of trade usage, from memory: cuve, cuve de fermentation, chaudière, colonne, plateau, déphlegmateur,
### condenseur, éprouvette de coulage, fût, barrique, fût en bois, bonbonne, dame-jeanne, bidon, carton, palette,
### caisse, cuve d’embouteillage, chai, cave, salle des alambics, cour, emplacement, rack, bonde, douelle, cercle,
### vanne, tuyau, pompe, filtre, réception, lavage, broyage, dénoyautage, empâtage, ensemencement,
### première chauffe, coupe, prise en charge, mise en fût, rejaugeage, ouillage, soutirage, assemblage,
### mise en cuve, réduction, réfrigération, filtration, embouteillage, expédition, nettoyage,
### prélèvement d’échantillon, dégustation, chauffe en marche, première goutte, moût de fruits, noyau, levure,
### enzyme, acide, premières gouttes, têtes, cœur, queues, secondes, brouillis, vinasse, huile de fusel,
### eau-de-vie blanche, prune de Damas, griotte, châtaignier, acacia, frêne, mûrier, cerisier, chauffe (du fût),
### bousinage, neuf, premier remplissage, fût de réemploi, densimètre électronique, éprouvette graduée,
### débitmètre, pipette (tâte-vin m), pH-mètre, titre réel, titre apparent, poids brut, tare,
### hauteur de remplissage, creux, évaporation, perte en cours de stockage, extrait sec, écriture,
### lot de fabrication, propriétaire, client, bulletin d’analyse, rectification, vide, plein, en service,
### hors service, qui fuit, arrêtée (fermentation), scellé, peser, rejauger, remplir, vider, réduire,
### embouteiller, déguster, prélever un échantillon, déplacer, ouiller, charger, couper, assembler, détruire,
### compter, rectifier, maître de chai, CO2 : danger d’asphyxie, chaud, sous pression, corrosif : brûlures,
### travail isolé.
### Own wording, from memory: coffre à alcool, obscuration, remarque, en attente sur ce téléphone, sur l’ardoise,
### envoi en cours, au registre, question posée, refusé, déjà présent, rectifié, contesté, saisi en retard,
### pas de réseau, hors ligne, sécurité non établie, horloge décalée, noter, remettre, scanner, saisir, annuler,
### annuler la saisie, imprimer, réessayer, se connecter, reprendre, maintenant, relevé à, saisi à, reçu à,
### aujourd’hui, hier, il y a {n} min, à échéance, en retard, jour, semaine, mois, an, rôle,
### pas de téléphone au-delà de cette ligne, à deux pour lever, poison : ne jamais boire les têtes,
### suivre les règles du site, n’indique pas la composition, ardoise (slate), registre (book),
### bureau (desk, office), atelier (floor), repère (mark), contenant (vessel), cuvée (batch), jauge (dip),
### relevé (reading), écriture (entry), note, question, arrêt (note, ask, stop),
### maintenir, rayer (let stand, strike), garder tel que lu (keep as read), annuler (take back),
### rectifier (put right, amend), admettre, exclure (let a phone in, shut it out), tournée (round),
### matières (wash, short), imparfaits (feints, short), forfait (flat rate), imbibition (soakage),
### échantillothèque (library), jalons (heads of the proof), suivi (fold), droits constatés (duty determined),
### production, stockage, traitement (US accounts), bousiné (charred), chapeau (cap),
### cruche et montre (jug and watch), coffre (safe), jet (stream), bouge (bilge), à l’aveugle (blind),
### clé d’accès (passkey).

range-between = { $low } à { $high }
range-or_more = { $low } ou plus
range-up_to = jusqu’à { $high }
span-s = { $many } s
span-min = { $many } min
span-h = { $many } h
span-days =
    { PLURAL($many) ->
        [one] { $many } jour
       *[other] { $many } jours
    }
span-months = { $many } mois
span-years =
    { PLURAL($many) ->
        [one] { $many } an
       *[other] { $many } ans
    }
time-same_day = { $clock }
time-day_before = { $clock } la veille
time-day = { $day } { $clock }
pct =
    { UNITS() ->
        [us] proof
       *[metric] %
    }
points =
    { UNITS() ->
        [us] points proof
       *[metric] points
    }
as_said = { $words }
no_such_message = Ce programme n’a pas de mots pour « { $id } ». Le mettre à jour, ou demander au bureau.
missing = { $label } manque. { asks }
missing-question = { $label } { asks }
asks =
    { $sort ->
        [choice] En choisir un.
        [yes_no] En choisir un.
        [mark] Choisir, scanner ou saisir.
        [date] Choisir le jour.
       *[other] Le saisir.
    }
no_such_choice = { $label } : prendre un des choix.
no_such_choice-yes_no = { $label } : oui ou non.
no_date = { $label } : { $typed } n’est pas une date. Choisir le jour.
too_long = { $label } dépasse { $most } caractères. Raccourcir ; le reste peut aller dans une note.
no_such_unit = { $label } se lit en { $units }. Choisir.
no_number = { $label } : { $reason }
number-empty = Rien n’est saisi ici. Saisir le chiffre comme l’instrument le montre.
number-too_long = C’est trop long pour un chiffre. Saisir 15 caractères au plus.
number-two_signs = Saisir un seul point ou une seule virgule, avant les décimales : 1234.5 ou 1234,5.
number-not_plain = Ce n’est pas un nombre simple. Saisir des chiffres avec un point ou une virgule : 14.6 ou 14,6.
outside_tables = { $label } : { $reason }
impossible = { $label } { UNIT(TYPED($figure)) } ne se peut pas : possible { UNIT(LIKE($possible, $figure)) }. Regarder encore, ou garder tel que lu.
impossible-outside = { $label } : { $reason }
unusual = { $label } { UNIT(TYPED($figure)) } est inhabituel : d’habitude ici { UNIT(LIKE($usual, $figure)) }. Regarder encore.
danger = { $label } { UNIT(TYPED($figure)) }. { $act }
slip-swapped = deux chiffres inversés
slip-point = la virgule a glissé
slip-unit = { $meant }, et non { $typed }
slip-meant = { TYPED($meant) }
slip-key = la touche d’à côté
slip-twice = un chiffre saisi deux fois
slip-misread = un chiffre pris pour un autre
slip-lost = un chiffre oublié
slip-sign = l’autre signe
slip-box = dans la case « { $label } »
slip-exchanged = échangé avec « { $label } »
slip-net = c’était le net, sans le contenant
slip-gross = c’était le brut, avec le contenant
slip-ullage = c’était le creux, depuis le haut
slip-cases = c’étaient des cartons
ferment_fast = La densité a baissé de { $fell } depuis { $since }, soit { $a_day } par jour ; { $much } est beaucoup pour du fruit. Regarder encore, et refroidir le moût.
ferment_fast-soon = La densité a baissé de { $fell } depuis { $since } : le fruit ne fermente pas si vite. Regarder encore.
strength_fell = Le titre réel { BARE($now) } { pct } est { APART($off) } { points } sous les { BARE($last) } { pct } d’il y a { $apart } : une chauffe baisse moins vite. Regarder encore.
held_strength =
    Le titre réel { BARE($now) } { pct } est { APART($off) } { points } { $side ->
        [above] au-dessus
       *[below] au-dessous
    } des { BARE($held) } { pct } que le registre a dans ce contenant. Regarder encore, et chercher un transfert ou de l’eau non notés.
reason-outside = { $what } { UNIT($figure) } est hors de { UNIT($possible) }. { $advice }
reason-outside_in_words = { $what } { $figure } { $unit } est hors de { $possible } { $unit }. { $advice }
reason-off_glass = À { $temp }, un alcool à { $strength } sort de l’échelle de l’aréomètre. L’approcher de { glass-temp }, ou prendre un densimètre électronique.
glass-temp =
    { UNITS() ->
        [us] 60 °F
       *[metric] 20 °C
    }
reason-glass_too_weak = Une lecture de { $reading } à { $temp } voudrait dire sans alcool. À cette température un aréomètre montre { $low } à { $high } : relire aréomètre et thermomètre.
reason-glass_too_strong = Une lecture de { $reading } à { $temp } voudrait dire plus que de l’alcool pur. À cette température un aréomètre montre { $low } à { $high } : relire aréomètre et thermomètre.
reason-part_ice = À { $temp }, c’est peut-être en partie de la glace. Réchauffer au-dessus de { $above } et relire.
reason-no_such_density = La masse volumique { $density } est hors de { BARE($ethanol) } (éthanol) à { $water } (eau) à cette température. Vérifier masse volumique et température ; du sucre ou des matières dans l’échantillon font aussi cela.
reason-table1_blank = La table 1 n’a pas de chiffre pour { $reading } à { $temp }. Rapprocher l’alcool de 60 °F et relire.
reason-gravity_above_start = La densité dépasse celle du départ. Vérifier les deux, la cuve, et si du sucre a été ajouté.
reason-no_dip_table = Le registre n’a pas de table pour ce contenant. Saisir ses litres ; le bureau peut lui donner une table, sous le contenant, Jauges.
reason-tare_too_heavy = La tare doit être entre rien et le poids brut. Repeser.
reason-target_too_strong = L’eau ne peut qu’affaiblir. Vérifier la cible et le titre.
reason-empty_bottle_heavy = Une bouteille vide est plus légère qu’une pleine. Repeser les deux.
reason-few_checks = Il en faut { $least } au moins. Vérifier plus de bouteilles.
reason-no_gauges = Jauger d’abord le fût.
reason-uneven_readings = Donner une densité pour chaque heure.
measured-alcohol_by_both = Alcool par les deux
measured-bottle_size = Taille de bouteille
measured-brix = Brix
measured-charge = Charge
measured-check = Contrôle
measured-density = Masse volumique
measured-fruit = Fruit
measured-full_bottle = Bouteille pleine
measured-glass_expansion = Dilatation du verre
measured-glass_reading = Lecture aréomètre
measured-gravity = Densité
measured-dip = Jauge
measured-bung_diameter = Diamètre à la bonde
measured-head_diameter = Diamètre du fond
measured-length = Longueur
measured-extract = Extrait sec
measured-height = Hauteur
measured-hydrometer_correction = Correction d’aréomètre
measured-juice_share = Part de jus
measured-loss = Perte
measured-mass_fraction = Fraction massique
measured-mole_fraction = Fraction molaire
measured-net_weight = Poids net
measured-number = Nombre
measured-original_gravity = Densité initiale
measured-plato = Plato
measured-proof = Proof
measured-proof_gallons = Proof gallons
measured-proof_reading = Lecture proof
measured-pure_alcohol = Alcool pur
measured-pure_alcohol_charged = Alcool pur chargé
measured-refractometer = Réfractomètre
measured-result = Résultat
measured-size = Taille
measured-solids = Matières
measured-strength = Titre
measured-sugar = Sucre
measured-temperature = Température
measured-thermometer_correction = Correction de thermomètre
measured-time = Temps
measured-time_ahead = Temps à venir
measured-unfermentable_part = Part non fermentescible
measured-usual_drift = Dérive habituelle
measured-volume = Volume
measured-water = Eau
measured-water_temperature = Température de l’eau
measure-kg_kg = kg/kg
measure-mol_mol = mol/mol
measure-kg_L = kg/L
measure-m = m
measure-per_degC = par °C
measure-of_one = de un
measure-days = jours
measure-years = ans
measure-pct_year = % par an
measure-pct_vol_year = % vol par an
advice-cannot_rise = La densité ne peut pas avoir monté. Vérifier les deux.
advice-check_charge = Vérifier ce qui a été chargé.
advice-check_charge_strength = Vérifier le titre de la charge.
advice-check_dip = Vérifier la jauge et son unité.
advice-check_figure = Vérifier le chiffre et son unité.
advice-check_gauges = Vérifier les jaugeages.
advice-check_glass = Vérifier l’aréomètre.
advice-check_glass_figure = Vérifier le chiffre ; un aréomètre proof a sa propre unité.
advice-check_instrument = Vérifier le chiffre et l’instrument.
advice-dip_in_table = La table du contenant s’arrête là : rejauger, ou saisir les litres.
advice-dip_in_cask = Le fût n’est pas plus haut : rejauger, ou revoir ses dimensions.
advice-measure_cask = Remesurer le fût.
advice-check_scale = Vérifier le chiffre et l’échelle de l’instrument.
advice-check_strengths = Vérifier les titres.
advice-check_thermometer = Vérifier le thermomètre et son unité, ou ramener l’échantillon dans la plage.
advice-check_weights = Vérifier brut et tare.
advice-count_again = Recompter.
advice-distil_sample = Distiller l’échantillon et prendre le proof du distillat.
advice-empty_cask = Un fût vide ne perd rien.
advice-fraction_not_percent = Donner une fraction de un, pas un pourcentage.
advice-gauge_again = Rejauger la cuve.
advice-gauge_first = Jauger d’abord la cuve.
advice-give_cask_size = Mettre la taille du fût au registre.
advice-give_height = Donner l’altitude de l’alambic en mètres.
advice-look_again = Regarder encore le chiffre.
advice-look_at_label = Regarder l’étiquette.
advice-no_baume = Sous l’eau il n’y a pas de Baumé. Prendre le titre d’après la baisse de densité.
advice-no_check = Pas de contrôle hors de cette plage.
advice-not_so_far = Personne ne connaît un fût si loin d’avance.
advice-order_gauges = Mettre les jaugeages dans l’ordre du temps.
advice-order_readings = Mettre les relevés dans l’ordre du temps.
advice-read_both_again = Les deux ne vont pas ensemble. Relire les deux.
advice-read_spirit_again = Relire le thermomètre de l’alcool.
advice-read_water_again = Relire le thermomètre de l’eau.
advice-see_certificate = Le prendre sur le certificat de l’instrument.
advice-soda_lime = Le verre sodocalcique fait 0,000025.
advice-table1_reading = La table 1 s’arrête là : relire l’aréomètre.
advice-table1_temp = La table 1 s’arrête là : rapprocher l’alcool de 60 °F.
advice-table_ends = La table publiée s’arrête là.
advice-two_gauges = Deux jaugeages à la même heure ne font pas un rythme.
advice-usual_juice_share = Un moût de fruits entiers fait 0,75 à 0,9.
advice-usual_unfermentable = 3 à 5 est l’habitude.
advice-weigh_again = Repeser.
floor-go_on = Continuer
floor-not_said = non dit
floor-remark = remarque
floor-mistyped = mal saisi
floor-misread = mal lu
floor-save_the_slate_to = Enregistrer l’ardoise dans un fichier
floor-as_last_time = comme la dernière fois
floor-pin_of = PIN de { $code }
floor-log_it = Noter
floor-remark_2 = Remarque
floor-leave_it = Laisser
floor-more = Plus
floor-today = Aujourd’hui
floor-blind_tasting = À l’aveugle
floor-more_2 = { $rest } de plus
floor-next = suivant
floor-empty = vide
floor-helps = Aides
floor-ended = finie { $ended_at }
floor-gauge_the_fractions = Jauger les fractions
floor-run = chauffe
floor-hearts = cœur
floor-tails = queues
floor-true_strength_over_time = Titre réel dans le temps
floor-time = heure
floor-run_before = chauffe d’avant
floor-nose_first = Le nez d’abord.
floor-reading = Relevé
floor-nose_first_2 = le nez d’abord
floor-cut_plan = Plan de coupe
floor-cut_to_hearts = Couper au cœur
floor-empty_by_the_book = vide, selon le registre
floor-this_phone = Ce téléphone
floor-not_let_in = non admis
floor-since = depuis { $started_at } · { $started_at_2 }
floor-run_sheet = Feuille de chauffe
floor-let_this_phone_in = Admettre ce téléphone
floor-put_it_right = Rectifier
floor-take_it_back = Annuler
floor-taken_back_it_stays = Annulé. Cela reste lisible, barré.
floor-start-this_phone_now_works = Ce téléphone marche maintenant sans réseau.
floor-start-this_page_did_not = Cette page ne s’est pas ouverte comme il faut. { $message } L’ardoise est en sûreté.
floor-start-try_again = Réessayer
floor-begun-begun_before = Commencé avant
floor-begun-begun_by = Commencé { $ago } par { $code }{ $shown }
floor-begun-go_on_or_start = Continuer, ou repartir à neuf ?
floor-begun-start_clean = Repartir à neuf
floor-entryform-log = Noter { $figure } { $unit }
floor-entryform-as_read = { " " }tel que lu
floor-extras-instrument_for = { $instrument } pour { $label }
floor-extras-corrected = { " " }· corrigé
floor-extras-read_at = Relevé à { $typed }
floor-extras-read_now = Lu maintenant
floor-extras-read_earlier = Relevé plus tôt ?
floor-extras-with_a_remark = avec une remarque
floor-fix-something_else = autre chose
floor-fix-of = { " " }du { $day }
floor-fix-of_2 = { " " }du { $day }, { $at }
floor-fix-this_replaces_the_entry = Ceci remplace l’écriture{ $when }, qui reste lisible. { $rest }
floor-fix-type_all_of_it = Tout saisir, pas seulement ce qui était faux.
floor-fix-what_was_wrong = Ce qui était faux
floor-full-the_phone_could_not = Le téléphone n’a pas pu garder ceci. Les chiffres restent ici ; noter encore.
floor-full-not_on_the_slate = Pas sur l’ardoise.
floor-full-the_figures_stay_in = { $words } Les chiffres restent dans ce formulaire.
floor-ghosts-last = dernier { $words }, { $when }
floor-ghosts-last_2 = dernier { $figure }, { $when }
floor-jumps-can_only_fall_it = { $label } ne peut que baisser : c’était { $last } { $when }.
floor-jumps-before = avant
floor-look-look_again = Regarder encore
floor-look-danger = Danger.
floor-look-look_again_2 = Regarder encore ?
floor-look-keep_as_read = Garder tel que lu
floor-marks-pick_scan_or_type = choisir, scanner ou saisir
floor-marks-scan_or_type = scanner ou saisir
floor-quickfields-unit_of = Unité : { $label }
floor-quickfields-minute = Minute
floor-sums-by_the_class_of = selon la classe des instruments, ou celle de la loi
floor-panels-not_read_yet = pas encore relevé
floor-panels-switch_first_mark_of = Changer d’abord. Repère du récipient ouvert
floor-panels-switch_first_open_now = Changer d’abord. Ouvert :
floor-panels-another_minute_more_figures = autre minute, plus de chiffres
floor-paper-no_strength_yet = Pas encore de titre.
floor-paper-glass = aréomètre { $glass }{ $temp }
floor-paper-at = { " " }à { $temp }
floor-paper-flow = Débit
floor-paper-not_read = non relevé
floor-paper-not_since = , pas depuis
floor-paper-the_sum_needs_it = le calcul en a besoin
floor-paper-receivers = Récipients
floor-paper-true = { $true_strength } réel
floor-paper-dip = jauge { $dip }
floor-paper-logged = noté { $typed_at }
floor-paper-logged_in_this_run = Noté dans cette chauffe
floor-paper-twice = deux fois
floor-paper-logged_twice =
    Noté deux fois en une minute. Si c’était { $what ->
        [change] un seul changement
       *[cut] une seule coupe
    }, en annuler une fois.
floor-paper-this_phone = ce téléphone
floor-state-cut_to_tails = Couper aux queues
floor-state-end_the_run = Finir la chauffe
floor-state-last_time = { LOWER($step) } la dernière fois
floor-state-heads_cut = têtes coupées
floor-state-hearts_cut = cœur coupé
floor-state-logged = , noté { $typed_at }
floor-state-logged_twice = , noté deux fois
floor-enrol-the_code_is_missing = Le code manque. Le scanner au bureau, ou le saisir.
floor-enrol-letting_it_in_and = Admission, et arrivée des fiches des contenants.
floor-enrol-is_let_in = { $name } est admis.
floor-enrol-the_book_did_not = Le registre n’a pas pris ce code. En demander un nouveau au bureau.
floor-job-there_is_no_such = Cette page n’existe pas. Revenir à Aujourd’hui.
floor-job-this_page_is_not = Cette page n’est pas encore sur le téléphone. Elle vient d’elle-même quand le téléphone atteint le registre ; d’ici là, noter depuis la fiche du contenant.
floor-job-not_here_yet = Pas encore ici
floor-log-not_on_this_phones = pas sur la liste de ce téléphone
floor-more-note = Note
floor-more-to_the_next_shift = à l’équipe suivante
floor-more-instrument = Instrument
floor-more-check_it = le vérifier
floor-more-bottles = Bouteilles
floor-more-count_them = les compter
floor-more-cases = Cartons
floor-more-out_or_back = sortie ou retour
floor-more-in_from_another_site = venu d’un autre site
floor-more-stock = Stock
floor-more-count_it_in_a = le compter en tournée
floor-more-your_glasses = vos verres
floor-more-laboratory = Laboratoire
floor-more-of_bottled_spirit = de l’alcool embouteillé
floor-more-the_curves = les courbes
floor-more-the_jobs = les tâches
floor-more-the_reader_of_labels = le lecteur d’étiquettes
floor-more-log_without_a_vessel = Noter sans contenant
floor-more-nobody_chosen = Personne choisi
floor-more-who_logs = qui note
floor-more-no_name_yet = Pas encore de nom
floor-more-let_in = admis
floor-more-gloves_buzz_voice = gants, vibreur, voix
floor-more-desk = Bureau
floor-more-needs_signal = demande du réseau
floor-more-put_the_phone_down = Poser le téléphone
floor-more-not_on_this_phone = Pas encore sur ce téléphone : { $awaited }. Garder l’application ouverte avec du réseau une minute.
floor-more-as_you_like_it = À votre goût
floor-more-units = Unités
floor-more-metric = métriques
floor-more-us = US
floor-more-decimal_mark = Signe décimal
floor-more-as_the_house = comme la maison
floor-more-keys = Touches
floor-more-large_keys = grandes touches
floor-more-phone_keyboard = clavier du téléphone
floor-more-light = Lumière
floor-more-as_the_phone = comme le téléphone
floor-more-dark = sombre
floor-more-light_2 = claire
floor-more-put_cellarslate_on_the = Mettre Cellarslate sur l’écran d’accueil
floor-more-put_cellarslate_on_the_2 = Mettre Cellarslate sur l’écran d’accueil (Partager, puis Sur l’écran d’accueil) : le téléphone garde alors l’ardoise plus longtemps.
floor-run-the_run_in_full = La chauffe entière n’a pu s’afficher ; la feuille tient sans elle.
floor-run-no_run_is_known = Aucune chauffe connue sur ce téléphone pour { $mark }. Charger d’abord l’alambic ; ou relever maintenant, et le registre le joint à sa chauffe.
floor-run-charge = Charge
floor-run-heat_on = Mise en chauffe
floor-run-first_drop = Première goutte
floor-run-other_event = Autre événement
floor-run-still_opened = Alambic ouvert
floor-run-balance_and_yield = Bilan et rendement
floor-run-charge_again = Recharger
floor-run-switch_the_receiver_first = changer d’abord de récipient
floor-run-event = Événement
floor-run-log_the_cut = Noter la coupe
floor-scan-the_reader_of_labels = Le lecteur d’étiquettes n’est pas encore sur ce téléphone : il vient avec le prochain réseau. Saisir le repère.
floor-slate-not_let_in_yet = pas encore admis
floor-slate-handed_in = remis { $handed_in_at }
floor-slate-nothing_handed_in_yet = rien de remis encore
floor-slate-handing_in = remise en cours
floor-slate-book_busy = registre occupé
floor-slate-wants_a_look = À revoir
floor-slate-waiting = En attente
floor-slate-put_aside_not_in = Mis de côté, pas au registre
floor-slate-in_the_book = Au registre
floor-slate-handing_in_2 = Remise en cours
floor-slate-hand_in_now = Remettre
floor-slate-entries_wait =
    { PLURAL($count) ->
        [one] { $count } écriture attend
       *[other] { $count } écritures attendent
    } sur ce téléphone.
floor-slate-nothing_waits = Rien n’attend.
floor-slate-all_in_the_book = Tout est au registre.
floor-slate-handing_in_3 = Remise en cours{ $in }.
floor-slate-of_are_in = : { $done } sur { $asked } au registre
floor-slate-the_book_does_not = Le registre ne connaît pas encore ce téléphone. L’admettre ; la remise se fait ensuite d’elle-même.
floor-slate-they_are_safe_here = Elles sont ici en sûreté et se remettent d’elles-mêmes quand le registre répond.
floor-slate-lines_want_a_look =
    { PLURAL($count) ->
        [one] { $count } ligne est
       *[other] { $count } lignes sont
    } à revoir.
floor-slate-entries_put_aside =
    { PLURAL($count) ->
        [one] { $count } écriture mise
       *[other] { $count } écritures mises
    } de côté.
floor-slate-entries_handed_in =
    { PLURAL($count) ->
        [one] { $count } écriture remise
       *[other] { $count } écritures remises
    } à l’instant.
floor-slate-keeping_it_safe = Garder en sûreté
floor-slate-storage_is_kept = le stockage est gardé
floor-slate-storage_may_be_cleared = le stockage peut être effacé
floor-slate-load_a_saved_slate = Charger une ardoise enregistrée
floor-slate-a_saved_slate_can = Une ardoise enregistrée se charge sur tout téléphone, à tout moment. Le registre prend chaque écriture une fois.
floor-slate-entries_on_this_slate =
    { PLURAL($count) ->
        [one] { $count } écriture est
       *[other] { $count } écritures sont
    } maintenant sur cette ardoise.{ $known }
floor-slate-were_here_already = { " " }{ $known } y étaient déjà.
floor-today-the_book_has_no = Le registre n’a pas encore de contenants. Le bureau les y met ; ils viennent ensuite ici d’eux-mêmes.
floor-today-the_book_does_not = Le registre ne connaît pas encore ce téléphone.
floor-today-no_cards_on_this = Pas encore de fiches sur ce téléphone. Elles viennent avec la première remise.
floor-today-you_can_scan_and = On peut déjà scanner et noter ; tout attend ici.
floor-today-run = { $what } · chauffe { $name }
floor-today-read = { " " }· relevé { $last }
floor-today-true = { $sign } réel
floor-today-the_book_asks = Le registre demande
floor-today-last_remarks = Dernières remarques
floor-today-all_vessels = Tous les contenants
floor-today-find_by_mark_name = Chercher par repère, nom ou contenu
floor-today-no_vessel_here_is = Aucun contenant ici ne s’appelle ainsi.
floor-today-elsewhere = Ailleurs
floor-vessel-no_mark = sans repère
floor-vessel-not_known_here = inconnu ici
floor-vessel-this_phone_knows_no = Ce téléphone ne connaît aucun contenant de ce repère. Remettre une fois avec du réseau ; le registre le connaît peut-être.
floor-vessel-at = À { $mark } :{ " " }
floor-vessel-note_it = Le noter
floor-vessel-scan_again = Scanner encore
floor-vessel-open_queries = Questions ouvertes
floor-vessel-filled = Rempli { $since }.
floor-vessel-nothing_logged_here_yet = Rien de noté ici encore.
floor-vessel-the_book_is_still = Le registre calcule encore ce que des écritures tardives changent ici.
floor-vessel-as_the_book_had = Comme le registre l’avait { $fresh }.
floor-vessel-the_book_has_not = Le registre n’a pas encore été interrogé.
floor-vessel-readings_without_a_charge = Relevés sans charge
floor-vessel-how_much_water = Combien d’eau
floor-vessel-bottling_line = Ligne d’embouteillage
floor-vessel-more_to_log = Autre à noter
floor-vessel-what_to_log = Que noter
floor-who-logs_now = { $name } note maintenant.
floor-who-logs = { $name } note
floor-who-no_names_on_this = Pas encore de noms sur ce téléphone.
floor-who-they_come_with_the = Ils viennent avec la première remise. D’ici là les écritures se notent sans nom.
floor-who-as = Comme
floor-who-no_signal_so_this = Pas de réseau : ce PIN n’a pas été contrôlé. Ce qui est noté fera l’objet d’une question.
floor-cautions-carbon_dioxide_lies_low = Le dioxyde de carbone reste au sol et n’a pas d’odeur. À 5000 ppm sortir, ventiler, prévenir le responsable.
floor-cautions-stay_outside_the_line = Rester hors de la ligne, sauf si ce téléphone est certifié et que le site le permet. Relevé plus tard ? Lui donner sa propre minute.
floor-cautions-a_hydrometer_cannot_see = Un aréomètre ne voit pas le méthanol. Le nez d’abord ; un laboratoire le sait.
floor-cautions-hot_and_under_pressure = Chaud, et sous pression si un passage se bouche. Ne jamais quitter un alambic en marche.
floor-cautions-never_lift_a_full = Ne jamais lever un fût plein à la main.
floor-cautions-no_one_enters_a = Personne n’entre dans un contenant sans permis et quelqu’un dehors.
floor-frame-no_signal = pas de réseau
floor-frame-not_the_book = pas le registre
floor-frame-to_look_at = { $attention } à revoir
floor-frame-on_slate = { $waiting } à l’ardoise
floor-inunits-true_at_20_c = réel à 20 °C
floor-inunits-true_at_60_f = réel à 60 °F
floor-linesheet-wrong_vessel = mauvais contenant
floor-linesheet-logged_twice = noté deux fois
floor-linesheet-open_put_it_right = Ouvrir { $kind }, { $line } : rectifier ou annuler
floor-linesheet-why_it_stays_legible = Pourquoi ? Cela reste lisible, barré, et ne compte plus.
floor-linesheet-that_could_not_be = Cela n’a pu être gardé. Réessayer.
floor-scanfor-what_the_camera_sees = Ce que voit la caméra
floor-scanfor-back_to_the_form = Retour au formulaire
floor-slatelines-taken_back = annulé
floor-slatelines-refused = refusé
floor-slatelines-clash = conflit
floor-slatelines-the_book_has_another = Le registre a une autre écriture sous le nom de celle-ci. Les deux sont gardées ; le distillateur décide.
floor-slatelines-the_book_cannot_read = Le registre ne peut pas la lire.
floor-slatelines-book_no = N° de registre { $book_no }
floor-slatelines-hand_in_again = Remettre encore
floor-slatelines-i_have_read_it = J’ai lu
floor-takebackbar-taken_back_at_once = annulé aussitôt
floor-takebackbar-that_could_not_be = Cela n’a pu être gardé. L’annuler sur sa propre ligne.
floor-typemark-letters_digits_and_the = Lettres, chiffres et le dernier caractère après le tiret.
floor-typemark-the_last_character_is = Le dernier caractère manque. Le saisir aussi, ou toucher le repère qui est sur l’étiquette.
floor-typemark-a_right_mark_but = Un repère juste, mais pas d’un contenant que ce téléphone connaît.
floor-words-on_the_slate_wait = Sur l’ardoise. { $waiting } attendent sur ce téléphone.
floor-words-on_the_slate_it = Sur l’ardoise. Cela attend sur ce téléphone.
floor-words-batch = cuvée { $name }
floor-words-at = à { $strength_pct }
floor-words-just_now = à l’instant
floor-words-min_ago = il y a { $minutes } min
floor-words-h_ago = il y a { $minutes } h
floor-words-days_ago = il y a { $minutes } jours
floor-ask-the_book_did_not = Le registre n’a pas répondu à temps.
floor-ask-the_book_cannot_be = Le registre est hors d’atteinte d’ici.
floor-ask-something_else_answered_not = Autre chose a répondu, pas le registre : ce réseau veut peut-être d’abord une connexion.
floor-db-this_phones_storage_is = Le stockage de ce téléphone est plein, rien n’a été gardé. Libérer de la place, ou enregistrer l’ardoise dans un fichier et la remettre.
floor-db-a_newer_cellarslate_has = Un Cellarslate plus récent a l’ardoise ouverte. Fermer les autres onglets, puis rouvrir cette page.
floor-db-an_older_cellarslate_is = Un Cellarslate plus ancien est ouvert dans un autre onglet. Le fermer ; l’ardoise s’ouvre alors.
floor-db-this_browser_does_not = Ce navigateur ne laisse rien garder à l’ardoise ({ $name }). Quitter la navigation privée, ou prendre un autre navigateur.
floor-device-clock_off =
    L’horloge de ce téléphone { $side ->
        [ahead] avance
       *[behind] retarde
    } de { $span } sur celle du registre. La régler ; ce qui est noté garde ses heures.
floor-device-the_browser_has_promised = Le navigateur a promis de garder l’ardoise.
floor-device-the_browser_may_clear = Le navigateur peut effacer l’ardoise si la place manque ou si l’application ne sert pas. Installer l’application, et remettre souvent.
floor-handin-this_entry_is_too = Cette écriture est trop grande pour le registre. Raccourcir sa remarque et noter encore ; celle-ci reste ici.
floor-handin-the_answer_was_not = La réponse n’était pas un reçu du registre.
floor-handin-the_slate_keeps_everything = L’ardoise garde tout et réessaie.
floor-handin-something_failed = Quelque chose a échoué.
floor-handin-this_phone_must_be = Ce téléphone doit être admis de nouveau. Rien n’est perdu ; l’ardoise garde tout.
floor-who-nobody_here_has_the = Personne ici n’a le code { $code }. Choisir son nom dans la liste.
floor-who-type_your_pin = Saisir son PIN.
floor-who-that_is_not_this = Ce n’est pas le PIN de cette personne. Réessayer.
floor-charts-the_curve_could_not = La courbe n’a pu être tracée ; ses chiffres sont affichés.
floor-charttable-one_row_in = { " " }Une ligne sur { $step }.
floor-charttable-expected = prévu
floor-charttable-at = { $y } à { $x }{ $unit }
floor-charttable-to = , à{ " " }
floor-charttable-to_2 = { $label } : { $from } à { $to }{ $unit }.
floor-charttable-at_2 = { $label } à { $x }{ $unit }.
floor-charttable-at_3 = { $label } à { $y }.
floor-format-day = jour { $start }
floor-format-yesterday = hier
floor-format-days_ago = il y a { $days } jours
floor-keypad-erase = Effacer
floor-keypad-plus_or_minus = Plus ou moins
floor-keypad-unit = unité
floor-keypad-decimal_comma = Virgule décimale
floor-keypad-decimal_point = Point décimal
floor-keypad-units = unités
floor-keypad-swap = échanger { $text }
floor-notice-later = Plus tard
floor-notice-a_newer_cellarslate_is = Un Cellarslate plus récent est prêt. Rien sur l’ardoise n’est touché.
floor-notice-use_it_now = L’utiliser
floor-badge =
    { $weight ->
        [stop] arrêt
        [ask] question
        [entered] inscrit
        [waiting] en attente
       *[note] note
    }
floor-may_stay_empty = (peut rester vide)
floor-litres = litres
floor-gallons = gallons
floor-part =
    { $part ->
        [hearts] cœur
        [tails] queues
        [low_wines] brouillis
       *[heads] têtes
    }
floor-state-receiver =
    { $state ->
        [open] ouvert
        [closed] fermé
       *[waiting] en attente
    }
floor-bad_mark =
    { $why ->
        [empty] Saisir le repère de l’étiquette, comme F3-8.
        [foreign] Ce code n’est pas l’un des nôtres. Scanner l’étiquette du contenant, ou saisir son repère.
        [characters] Un repère n’a que des lettres A à Z et des chiffres 0 à 9. Relire l’étiquette.
        [too_short] Un repère a un code et un caractère de contrôle, comme F3-8. Tout saisir.
        [too_long] C’est trop long pour un repère. Saisir les grands caractères de l’étiquette.
       *[check] { $mark } n’est pas un repère : un caractère est faux, ou le dernier manque. Relire l’étiquette.
    }
floor-within_sentence = { LOWER($words) }
floor-scanfor-scan = Scanner : { $label }
floor-takebackbar-just_logged = Juste noté
floor-keypad-name = Pavé de touches
floor-keypad-no_other_unit = Pas d’autre unité
floor-more-language = Langue
floor-more-language_not_here = Cette langue n’est pas encore sur ce téléphone. La choisir encore avec du réseau.
title-fruit_intake = Réception de fruits
short-fruit_intake = Réception
about-fruit_intake = Un apport de fruits ou de céréales, pesé et versé dans une cuve de fermentation.
label-fruit_intake-gross = Poids brut
label-fruit_intake-tare = Tare
help-fruit_intake-tare = Caisses et palette, vides.
label-fruit_intake-material = Matière
choice-fruit_intake-material-plum = prune
choice-fruit_intake-material-pear = poire
choice-fruit_intake-material-quince = coing
choice-fruit_intake-material-cherry = cerise
choice-fruit_intake-material-apricot = abricot
choice-fruit_intake-material-mirabelle = mirabelle
choice-fruit_intake-material-apple = pomme
choice-fruit_intake-material-grape = raisin
choice-fruit_intake-material-raspberry = framboise
choice-fruit_intake-material-marc = marc
choice-fruit_intake-material-rye = seigle
choice-fruit_intake-material-other = autre
label-fruit_intake-variety = Variété
label-fruit_intake-grower_lot = Producteur et lot
help-fruit_intake-grower_lot = Comme sur le bon de pesée.
label-fruit_intake-batch = Cuvée
help-fruit_intake-batch = La fermentation où va cet apport, comme la maison la nomme.
label-fruit_intake-picked_on = Cueilli le
label-fruit_intake-sugar = Sucre au réfractomètre
help-fruit_intake-sugar = Jus pressé. Laisser vide pour les céréales.
label-fruit_intake-ph = pH
label-fruit_intake-temp = Température
label-fruit_intake-rot = Pourriture
rule-fruit_intake-tare_below_gross = La tare { $tare } n’est pas sous le brut { $gross }. Regarder encore la balance.
figure-fruit_intake-net = fruit net
figure-fruit_intake-potential = alcool pur qu’il peut donner
title-addition = Ajout
about-addition = Enzyme, acide, levure, nutriment ou autre apport, avec son lot. Le sucre est demandé à chaque fois.
label-addition-what = Quoi
choice-addition-what-enzyme = enzyme
choice-addition-what-acid = acide
choice-addition-what-yeast = levure
choice-addition-what-yeast_food = nutriment de levure
choice-addition-what-sulphite = sulfite
choice-addition-what-antifoam = antimousse
choice-addition-what-water = eau
choice-addition-what-malt = malt
choice-addition-what-sugar = sucre
choice-addition-what-wood = copeaux de bois
choice-addition-what-caramel = caramel
choice-addition-what-other = autre
label-addition-lot_no = Produit et numéro de lot
help-addition-lot_no = Comme sur le paquet.
label-addition-amount = Quantité en poids
label-addition-amount_volume = ou en volume
label-addition-is_sugar = Est-ce du sucre ?
help-addition-is_sugar = L’eau-de-vie de fruit vient du sucre du fruit lui-même. Un oui reste avec la cuvée.
rule-addition-some_amount = Saisir combien, en poids ou en volume.
title-ferment_reading = Relevé de fermentation
short-ferment_reading = Relevé
about-ferment_reading = Température, densité du jus filtré, pH et chapeau d’une cuve de fermentation.
summary-ferment_reading = { $gravity } à { $temp }
label-ferment_reading-temp = Température du moût
help-ferment_reading-temp = Sonde au milieu, pas à la paroi.
label-ferment_reading-gravity = Densité, jus filtré
help-ferment_reading-gravity = À l’aréomètre. Un réfractomètre lit faux dès qu’il y a de l’alcool.
label-ferment_reading-refractometer = Réfractomètre, même jus
help-ferment_reading-refractometer = Faux à lui seul dès qu’il y a de l’alcool ; un indice à côté.
label-ferment_reading-ph = pH
label-ferment_reading-cap = Chapeau
choice-ferment_reading-cap-none = aucun
choice-ferment_reading-cap-thin = mince
choice-ferment_reading-cap-thick = épais
choice-ferment_reading-cap-fallen = tombé
label-ferment_reading-volatile_acid = Acidité volatile
label-ferment_reading-room_co2 = CO₂ du local vérifié
help-ferment_reading-room_co2 = À l’appareil. À 5000 ppm sortir, ventiler, prévenir le responsable.
danger-ferment_reading-room_co2-0 = Sortir, ventiler, prévenir le responsable. Ne pas y retourner pour un relevé.
danger-ferment_reading-room_co2-1 = Tout le monde dehors. Prévenir le responsable. Ne pas y retourner pour un relevé.
figure-ferment_reading-alcohol_so_far = alcool jusqu’ici, par la densité
figure-ferment_reading-alcohol_by_both = alcool par les deux instruments, un indice
title-ferment_closed = Fermentation close
short-ferment_closed = Clore
about-ferment_closed = Densité finale, volume et titre des matières à distiller. À partir d’ici leur alcool pur est au registre.
summary-ferment_closed = { $volume } à { $wash_strength }
label-ferment_closed-final_gravity = Densité finale
label-ferment_closed-volume = Volume à la jauge
label-ferment_closed-wash_strength = Titre des matières
help-ferment_closed-wash_strength = Par distillation au labo, sinon par atténuation.
label-ferment_closed-method = Titre par
choice-ferment_closed-method-lab = distillation au labo
choice-ferment_closed-method-attenuation = atténuation
figure-ferment_closed-wash_lpa = alcool pur des matières
figure-ferment_closed-by_gravity = titre d’après la baisse de densité
title-charge = Charge
short-charge = Charger et commencer
about-charge = Ce qui entre dans l’alambic. Une chauffe commence.
summary-charge = { $wash } à { $wash_strength }
label-charge-run_name = Chauffe
help-charge-run_name = Comme la maison la nomme. Vide : le jour la nomme.
label-charge-from_vessel = Du contenant
label-charge-wash = Volume de matières
label-charge-wash_strength = Titre des matières
help-charge-wash_strength = Distillation au labo, ou atténuation. Un aréomètre ne va pas dans les matières à distiller.
label-charge-feints = Imparfaits ou brouillis
label-charge-feints_strength = Titre des imparfaits
label-charge-feints_temp = Température des imparfaits
label-charge-feints_from = Imparfaits de
label-charge-heads_to = Têtes vers
label-charge-hearts_to = Cœur vers
label-charge-tails_to = Queues vers
rule-charge-feints_need_strength = Des alcools imparfaits sont entrés : saisir aussi leur titre.
figure-charge-wash_lpa = alcool pur des matières
figure-charge-feints_lpa = alcool pur des imparfaits
figure-charge-charge_lpa = alcool pur chargé
title-run_reading = Relevé de chauffe
short-run_reading = Relevé
about-run_reading = Aréomètre et température de l’alcool au coffre, avec température des vapeurs, débit, et jauge du récipient ouvert.
summary-run_reading = { $true_strength } réel
label-run_reading-glass = Lecture aréomètre
help-run_reading-glass = Comme l’aréomètre le montre, sans correction.
label-run_reading-density = ou masse volumique, à l’appareil
help-run_reading-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-run_reading-temp = Température de l’alcool
help-run_reading-temp = La lire au même moment que l’aréomètre.
label-run_reading-vapour_temp = Température des vapeurs
label-run_reading-flow = Débit
help-run_reading-flow = Cruche et montre.
label-run_reading-dip = Jauge du récipient ouvert
help-run_reading-dip = Ce qui s’y trouve, avec ce qui y était avant.
label-run_reading-plates = Plateaux
label-run_reading-cooling_temp = Eau du déphlegmateur
label-run_reading-strength = Titre, déjà corrigé
help-run_reading-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
rule-run_reading-some_reading = Saisir la lecture de l’aréomètre et sa température, un titre déjà corrigé, ou une jauge.
rule-run_reading-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-run_reading-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-run_reading-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-run_reading-true_strength = réel à 20 °C
figure-run_reading-glass_true = aréomètre, corrigé
title-cut = Coupe ou événement
short-cut = Couper
about-cut = Une coupe avec le récipient ouvert, mise en chauffe, première goutte, changement de chauffage, d’eau ou de plateaux. L’heure est celle du toucher.
label-cut-event = Événement
choice-cut-event-heat_on = mise en chauffe
choice-cut-event-first_drop = première goutte
choice-cut-event-heads_cut = têtes coupées, cœur commence
choice-cut-event-hearts_cut = cœur coupé, queues commencent
choice-cut-event-heat_changed = chauffage changé
choice-cut-event-water_changed = eau changée
choice-cut-event-plate_in = plateau mis
choice-cut-event-plate_out = plateau ôté
choice-cut-event-still_opened = alambic ouvert
choice-cut-event-other = autre
label-cut-receiver = Récipient ouvert
label-cut-reason = Pourquoi
choice-cut-reason-nose = nez
choice-cut-reason-taste = goût
choice-cut-reason-strength = titre
choice-cut-reason-vapour = température des vapeurs
choice-cut-reason-time = heure
label-cut-glass = Lecture aréomètre
help-cut-glass = Comme l’aréomètre le montre, sans correction.
label-cut-density = ou masse volumique, à l’appareil
help-cut-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-cut-temp = Température de l’alcool
help-cut-temp = La lire au même moment que l’aréomètre.
label-cut-vapour_temp = Température des vapeurs
label-cut-flow = Débit
label-cut-nose = Nez et goût
help-cut-nose = Vos propres mots.
label-cut-strength = Titre, déjà corrigé
help-cut-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
rule-cut-cut_needs_receiver = Une coupe demande le récipient maintenant ouvert. Le scanner ou le choisir.
rule-cut-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-cut-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-cut-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-cut-true_strength = réel à 20 °C
figure-cut-glass_true = aréomètre, corrigé
title-run_end = Fin de chauffe
short-run_end = Finir la chauffe
about-run_end = La fin d’une chauffe : pourquoi elle a fini et à quoi elle coulait.
summary-run_end = finie, { $reason }
label-run_end-reason = Pourquoi
choice-run_end-reason-strength = titre
choice-run_end-reason-vapour = température des vapeurs
choice-run_end-reason-time = heure
choice-run_end-reason-nose = nez
choice-run_end-reason-trouble = incident
label-run_end-glass = Lecture aréomètre
help-run_end-glass = Comme l’aréomètre le montre, sans correction.
label-run_end-density = ou masse volumique, à l’appareil
help-run_end-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-run_end-temp = Température de l’alcool
help-run_end-temp = La lire au même moment que l’aréomètre.
label-run_end-vapour_temp = Température des vapeurs
label-run_end-flow = Débit
label-run_end-strength = Titre, déjà corrigé
help-run_end-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
rule-run_end-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-run_end-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-run_end-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-run_end-true_strength = réel à 20 °C
figure-run_end-glass_true = aréomètre, corrigé
title-fraction_gauge = Jaugeage de fraction
short-fraction_gauge = Jauger une fraction
about-fraction_gauge = Volume ou poids, titre et température des têtes, du cœur, des queues, du brouillis ou de la vinasse d’une chauffe.
summary-fraction_gauge = { $fraction } : { $volume_20 } à { $true_strength }
label-fraction_gauge-still = Chauffe sur l’alambic
label-fraction_gauge-fraction = Fraction
choice-fraction_gauge-fraction-heads = têtes
choice-fraction_gauge-fraction-hearts = cœur
choice-fraction_gauge-fraction-tails = queues
choice-fraction_gauge-fraction-low_wines = brouillis
choice-fraction_gauge-fraction-stillage = vinasse
label-fraction_gauge-remnant = Reste d’avant
help-fraction_gauge-remnant = Ce qui était dans le récipient avant la collecte. 0 s’il était vide.
label-fraction_gauge-remnant_strength = Titre du reste
label-fraction_gauge-volume = Volume maintenant
label-fraction_gauge-net_weight = ou poids net maintenant
label-fraction_gauge-temp = Température de l’alcool
help-fraction_gauge-temp = La lire au même moment que l’aréomètre.
label-fraction_gauge-glass = Lecture aréomètre
help-fraction_gauge-glass = Comme l’aréomètre le montre, sans correction.
label-fraction_gauge-density = ou masse volumique, à l’appareil
help-fraction_gauge-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-fraction_gauge-strength = Titre, déjà corrigé
help-fraction_gauge-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-fraction_gauge-goes_to = Va vers
choice-fraction_gauge-goes_to-stays = reste ici
choice-fraction_gauge-goes_to-next_run = chauffe suivante
choice-fraction_gauge-goes_to-destroyed = détruit
choice-fraction_gauge-goes_to-drain = à l’égout
rule-fraction_gauge-some_quantity = Saisir le volume ou le poids net.
rule-fraction_gauge-remnant_needs_strength = Il y avait un reste : saisir aussi son titre, ou 0 litre.
rule-fraction_gauge-some_strength = Saisir la lecture de l’aréomètre et sa température, ou un titre déjà corrigé.
rule-fraction_gauge-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-fraction_gauge-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-fraction_gauge-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-fraction_gauge-true_strength = réel à 20 °C
figure-fraction_gauge-glass_true = aréomètre, corrigé
figure-fraction_gauge-volume_20 = volume à 20 °C
figure-fraction_gauge-lpa = alcool pur
figure-fraction_gauge-remnant_lpa = dont reste
title-cut_plan = Plan de coupe
short-cut_plan = Plan de coupe
about-cut_plan = Le plan du distillateur pour un fruit : têtes en volume, cœur et queues jusqu’à un titre. Noté sur un alambic il vaut pour lui, sans contenant pour tous. Le dernier compte ; le nez décide.
summary-cut_plan = { $what } : cœur jusqu’à { $hearts_to }
label-cut_plan-what = Fruit
help-cut_plan-what = Comme la chauffe le nomme : petite prune bleue.
label-cut_plan-heads = Têtes en volume
label-cut_plan-hearts_to = Cœur jusqu’à
label-cut_plan-tails_to = Queues jusqu’à
label-cut_plan-why = Pourquoi
label-cut_plan-tasting = Dégustation à l’appui
help-cut_plan-tasting = Son nom : T-26-03
rule-cut_plan-some_plan = Saisir au moins un chiffre du plan : têtes, cœur ou queues.
rule-cut_plan-tails_below_hearts = Les queues jusqu’à { $tails_to } ne sont pas sous { $hearts_to } du cœur. Regarder encore.
title-best_run = Meilleure chauffe
short-best_run = Meilleure chauffe
about-best_run = Le distillateur nomme une chauffe la meilleure de son fruit sur son alambic : les suivantes lui sont comparées. La dernière nommée compte.
label-best_run-run = Chauffe
help-best_run-run = Son nom, ou son identifiant au registre.
label-best_run-why = Pourquoi
help-best_run-why = Ce qui l’a rendue bonne, avec vos mots.
title-gauge = Jaugeage
about-gauge = Volume ou poids net, titre et température de ce que tient un contenant.
summary-gauge = { $volume_20 } à { $true_strength }
label-gauge-what = Contenu
help-gauge-what = Alcool et lot, comme la maison les nomme.
label-gauge-volume = Volume
label-gauge-dip = ou jauge
help-gauge-dip = Hauteur ou creux, comme dans la table du contenant ; ses litres suivent.
label-gauge-net_weight = ou poids net
label-gauge-glass = Lecture aréomètre
help-gauge-glass = Comme l’aréomètre le montre, sans correction.
label-gauge-density = ou masse volumique, à l’appareil
help-gauge-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-gauge-temp = Température de l’alcool
help-gauge-temp = La lire au même moment que l’aréomètre.
label-gauge-strength = Titre, déjà corrigé
help-gauge-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-gauge-purpose = Pourquoi
choice-gauge-purpose-stock = stock
choice-gauge-purpose-move = avant un transfert
choice-gauge-purpose-opening = stock d’ouverture
choice-gauge-purpose-other = autre
rule-gauge-some_quantity = Saisir le volume, la jauge ou le poids net.
rule-gauge-volume_needs_temp = Un volume demande la température de l’alcool. La saisir aussi.
rule-gauge-some_strength = Saisir la lecture de l’aréomètre et sa température, ou un titre déjà corrigé.
rule-gauge-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-gauge-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-gauge-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-gauge-true_strength = réel à 20 °C
figure-gauge-glass_true = aréomètre, corrigé
figure-gauge-dipped = par sa table
figure-gauge-estimated = par ses dimensions, une estimation
figure-gauge-volume_20 = volume à 20 °C
figure-gauge-lpa = alcool pur
figure-gauge-proof_gallons = proof gallons
title-distilled_gauge = Jaugeage par distillation
short-distilled_gauge = Jaugeage distillé
about-distilled_gauge = Volume ou poids net d’un alcool dont le sucre ou le bois cache le titre, et titre de son distillat.
summary-distilled_gauge = { $volume_20 } à { $true_strength }, distillé
label-distilled_gauge-what = Contenu
help-distilled_gauge-what = Alcool et lot, comme la maison les nomme.
label-distilled_gauge-volume = Volume
label-distilled_gauge-dip = ou jauge
help-distilled_gauge-dip = Hauteur ou creux, comme dans la table du contenant ; ses litres suivent.
label-distilled_gauge-net_weight = ou poids net
label-distilled_gauge-glass = Aréomètre, non distillé
help-distilled_gauge-glass = Comme l’aréomètre le montre, sans correction. Vide si le sucre le sort de son échelle.
label-distilled_gauge-density = ou masse volumique, non distillé
help-distilled_gauge-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-distilled_gauge-temp = Température de l’alcool
help-distilled_gauge-temp = La lire au même moment que l’aréomètre.
label-distilled_gauge-sample_volume = Échantillon distillé
help-distilled_gauge-sample_volume = Ce qui a été mesuré pour la fiole, avant toute eau.
label-distilled_gauge-sample_temp = Température de l’échantillon
help-distilled_gauge-sample_temp = La même pour les deux, au mieux 20 °C.
label-distilled_gauge-distillate_volume = Distillat, complété à
help-distilled_gauge-distillate_volume = À l’eau, jusqu’au trait de la même fiole.
label-distilled_gauge-distillate_temp = Température du distillat
help-distilled_gauge-distillate_temp = La même pour les deux, au mieux 20 °C.
label-distilled_gauge-distillate_glass = Aréomètre dans le distillat
help-distilled_gauge-distillate_glass = Comme l’aréomètre le montre, sans correction.
label-distilled_gauge-distillate_density = ou sa masse volumique, à l’appareil
help-distilled_gauge-distillate_density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-distilled_gauge-dry_extract = Extrait sec total
help-distilled_gauge-dry_extract = Résidu de 25 mL séché à 105 °C, fois 40.
label-distilled_gauge-purpose = Pourquoi
choice-distilled_gauge-purpose-stock = stock
choice-distilled_gauge-purpose-move = avant un transfert
choice-distilled_gauge-purpose-opening = stock d’ouverture
choice-distilled_gauge-purpose-other = autre
rule-distilled_gauge-some_quantity = Saisir le volume, la jauge ou le poids net.
rule-distilled_gauge-volume_needs_temp = Un volume demande la température de l’alcool. La saisir aussi.
rule-distilled_gauge-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-distilled_gauge-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-distilled_gauge-distillate_is_read = Saisir ce que l’aréomètre ou le densimètre montre dans le distillat.
rule-distilled_gauge-weight_needs_density = Le sucre alourdit l’alcool. À côté d’un poids net, saisir la masse volumique ou la lecture d’aréomètre de l’alcool non distillé.
rule-distilled_gauge-extract_hides_more = Cet extrait cache { $obscuration_least } au moins, et les chiffres cachent { $obscuration }. Revoir l’aréomètre de l’alcool non distillé ; tout le distillat était-il dans la fiole, complétée au trait ?
rule-distilled_gauge-extract_hides_less = Cet extrait cache { $obscuration_most } au plus, et les chiffres cachent { $obscuration }. Revoir l’extrait et l’aréomètre de l’alcool non distillé.
figure-distilled_gauge-distillate_strength = distillat à 20 °C
figure-distilled_gauge-true_strength = réel à 20 °C
figure-distilled_gauge-seen_strength = selon l’aréomètre ou l’appareil
figure-distilled_gauge-obscuration = caché
figure-distilled_gauge-obscuration_least = l’extrait cache au moins
figure-distilled_gauge-obscuration_most = l’extrait cache au plus
figure-distilled_gauge-dipped = par sa table
figure-distilled_gauge-estimated = par ses dimensions, une estimation
figure-distilled_gauge-volume_20 = volume à 20 °C
figure-distilled_gauge-lpa = alcool pur
figure-distilled_gauge-proof_gallons = proof gallons
title-opening = Stock d’ouverture
short-opening = Stock d’ouverture
about-opening = Ce qui était dans un contenant avant le début du registre : son jaugeage, sa provenance, son remplissage et les papiers qui le disent. Sur un contenant ouvert par un simple jaugeage, cela ajoute le passé ; le stock reste.
summary-opening = { $volume_20 } à { $true_strength } avant ce registre, { $spirit }
label-opening-spirit = Sorte d’alcool
label-opening-lot = Lot
label-opening-gross = Poids brut
help-opening-gross = Fût et alcool ensemble.
label-opening-tare = Poids à vide
help-opening-tare = D’après les papiers. Vide : comme le contenant est inscrit.
label-opening-net_weight = ou poids net
label-opening-volume = ou volume
help-opening-volume = À la jauge. Sans température, compté en litres à 20 °C.
label-opening-glass = Lecture aréomètre
help-opening-glass = Comme l’aréomètre le montre, sans correction.
label-opening-density = ou masse volumique, à l’appareil
help-opening-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-opening-temp = Température de l’alcool
help-opening-temp = La lire au même moment que l’aréomètre.
label-opening-strength = Titre, déjà corrigé
help-opening-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-opening-filled_on = Rempli le
help-opening-filled_on = Le jour où il est entré dans ce contenant.
label-opening-filled_volume = Volume au remplissage
label-opening-filled_strength = Titre au remplissage
label-opening-filled_lpa = ou alcool pur au remplissage
label-opening-aged_since = Part la plus jeune sous bois depuis
help-opening-aged_since = Vide : le jour du remplissage du fût.
label-opening-papers = Papiers pour l’âge
help-opening-papers = Quel registre ou certificat, et sa page.
label-opening-origin = D’où
help-opening-origin = Alambic de la maison, ou de qui cela vient.
label-opening-material = Fait de
help-opening-material = Fruit ou céréale.
label-opening-harvest = Récolte de
help-opening-harvest = L’année.
label-opening-distilling_strength = Distillé à
help-opening-distilling_strength = Titre à la sortie de l’alambic.
label-opening-use = Bois avant
choice-opening-use-new = neuf
choice-opening-use-used_once = servi une fois
choice-opening-use-used = servi plus d’une fois
label-opening-wood = Bois
help-opening-wood = Chêne, châtaignier, mûrier.
label-opening-to_account = Compte
help-opening-to_account = Celui où il est. Vide : stockage pour les fûts, traitement pour les cuves.
choice-opening-to_account-production = production
choice-opening-to_account-storage = stockage
choice-opening-to_account-processing = traitement
label-opening-place = Place
help-opening-place = Travée, rang, position.
rule-opening-quantity_needs_strength = Saisir la lecture de l’aréomètre et sa température, ou un titre déjà corrigé.
rule-opening-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-opening-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-opening-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
rule-opening-tare_below_gross = Le poids à vide { $tare } n’est pas sous le brut { $gross }. Revoir les deux.
rule-opening-fill_volume_needs_strength = Le volume au remplissage dit peu sans son titre. Le saisir, si les papiers l’ont.
figure-opening-true_strength = réel à 20 °C
figure-opening-glass_true = aréomètre, corrigé
figure-opening-net = poids net
figure-opening-volume_20 = volume à 20 °C
figure-opening-lpa = alcool pur
figure-opening-proof_gallons = proof gallons
figure-opening-fill_lpa = alcool pur au remplissage
title-account_move = Prise en charge ou transfert
short-account_move = Jauger, transférer
about-account_move = Une quantité jaugée va dans un autre contenant, un autre compte, ou hors des lieux.
summary-account_move = { $serial } : { $volume_20 } à { $true_strength }, de { $from_account } à { $to_account }
label-account_move-serial = Numéro de série
help-account_move-serial = À partir de 1 chaque année, ou jamais deux fois.
label-account_move-from_account = Du compte
choice-account_move-from_account-production = production
choice-account_move-from_account-storage = stockage
choice-account_move-from_account-processing = traitement
label-account_move-to_account = Au compte
choice-account_move-to_account-production = production
choice-account_move-to_account-storage = stockage
choice-account_move-to_account-processing = traitement
choice-account_move-to_account-removed = quitte les lieux
label-account_move-to_vessel = Vers contenant
help-account_move-to_vessel = Vide si cela reste où c’est.
label-account_move-purpose = Pourquoi
choice-account_move-purpose-deposit = prise en charge, dépôt
choice-account_move-purpose-move = transfert
choice-account_move-purpose-redistil = à redistiller
choice-account_move-purpose-tax_paid = droits payés
choice-account_move-purpose-export = exportation
choice-account_move-purpose-in_bond = sous douane vers autre usine
choice-account_move-purpose-research = recherche
choice-account_move-purpose-other = autre
label-account_move-spirit = Sorte d’alcool
label-account_move-lot = Lot
label-account_move-distilling_strength = Distillé à
help-account_move-distilling_strength = Titre à la sortie de l’alambic.
label-account_move-volume = Volume
label-account_move-net_weight = ou poids net
label-account_move-glass = Lecture aréomètre
help-account_move-glass = Comme l’aréomètre le montre, sans correction.
label-account_move-density = ou masse volumique, à l’appareil
help-account_move-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-account_move-temp = Température de l’alcool
help-account_move-temp = La lire au même moment que l’aréomètre.
label-account_move-strength = Titre, déjà corrigé
help-account_move-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-account_move-age = Âge jusqu’ici
help-account_move-age = Années-mois-jours.
label-account_move-to_whom = À qui
help-account_move-to_whom = Nom et adresse, si cela part.
rule-account_move-some_quantity = Saisir le volume ou le poids net.
rule-account_move-volume_needs_temp = Un volume demande la température de l’alcool. La saisir aussi.
rule-account_move-some_strength = Saisir la lecture de l’aréomètre et sa température, ou un titre déjà corrigé.
rule-account_move-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-account_move-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-account_move-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-account_move-true_strength = réel à 20 °C
figure-account_move-glass_true = aréomètre, corrigé
figure-account_move-volume_20 = volume à 20 °C
figure-account_move-lpa = alcool pur
figure-account_move-proof_gallons = proof gallons
title-receipt = Réception en vrac
short-receipt = Recevoir
about-receipt = De l’alcool arrive en vrac d’un autre site : la quantité des papiers, le jaugeage ici, et la perte en route.
summary-receipt = { $document } : { $volume_20 } à { $true_strength } ({ $consignor })
label-receipt-consignor = De qui
help-receipt-consignor = Nom et adresse, numéro d’usine ou d’entrepôt.
label-receipt-document = Numéro du document
label-receipt-purpose = Comment il vient
choice-receipt-purpose-in_bond = en suspension
choice-receipt-purpose-customs = de la douane
choice-receipt-purpose-returned = retour en suspension
choice-receipt-purpose-tax_paid = droits payés
choice-receipt-purpose-other = autre
label-receipt-spirit = Sorte d’alcool
label-receipt-lot = Lot
label-receipt-to_account = Dans le compte
choice-receipt-to_account-production = production
choice-receipt-to_account-storage = stockage
choice-receipt-to_account-processing = traitement
label-receipt-declared_volume = Volume déclaré
help-receipt-declared_volume = Comme disent les papiers.
label-receipt-declared_weight = ou poids net déclaré
label-receipt-declared_strength = Titre déclaré
label-receipt-declared_temp = Déclaré à
help-receipt-declared_temp = 20 °C si vide ; les papiers US le disent à 60 °F.
label-receipt-distilling_strength = Distillé à
help-receipt-distilling_strength = Titre à la sortie de l’alambic, si les papiers le disent.
label-receipt-volume = Volume reçu
label-receipt-net_weight = ou poids net reçu
label-receipt-glass = Lecture aréomètre
help-receipt-glass = Comme l’aréomètre le montre, sans correction.
label-receipt-density = ou masse volumique, à l’appareil
help-receipt-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-receipt-temp = Température de l’alcool
help-receipt-temp = La lire au même moment que l’aréomètre.
label-receipt-strength = Titre, déjà corrigé
help-receipt-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-receipt-seals = Scellés intacts ?
label-receipt-vehicle = Véhicule et numéros des scellés
label-receipt-age = Âge déclaré
help-receipt-age = Années-mois-jours.
rule-receipt-some_declared = Saisir le volume ou le poids net que déclarent les papiers.
rule-receipt-some_quantity = Saisir le volume ou le poids net.
rule-receipt-volume_needs_temp = Un volume demande la température de l’alcool. La saisir aussi.
rule-receipt-some_strength = Saisir la lecture de l’aréomètre et sa température, ou un titre déjà corrigé.
rule-receipt-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-receipt-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-receipt-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-receipt-declared_20 = déclaré, à 20 °C
figure-receipt-declared_lpa = alcool pur déclaré
figure-receipt-true_strength = réel à 20 °C
figure-receipt-glass_true = aréomètre, corrigé
figure-receipt-volume_20 = volume à 20 °C
figure-receipt-lpa = alcool pur
figure-receipt-proof_gallons = proof gallons
title-cask_fill = Mise en fût
short-cask_fill = Remplir un fût
about-cask_fill = Un fût vide est pesé, rempli d’une cuve et repesé. Un nouveau contenu commence.
summary-cask_fill = { $net } à { $true_strength }, { $lot }
label-cask_fill-from_vessel = Du contenant
label-cask_fill-lot = Lot
label-cask_fill-what = Sorte d’alcool
label-cask_fill-tare = Poids à vide
help-cask_fill-tare = À la balance aujourd’hui, pas de la liste du tonnelier.
label-cask_fill-gross = Poids brut
label-cask_fill-glass = Lecture aréomètre
help-cask_fill-glass = Comme l’aréomètre le montre, sans correction.
label-cask_fill-density = ou masse volumique, à l’appareil
help-cask_fill-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-cask_fill-temp = Température de l’alcool
help-cask_fill-temp = La lire au même moment que l’aréomètre.
label-cask_fill-strength = Titre, déjà corrigé
help-cask_fill-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-cask_fill-use = Bois
choice-cask_fill-use-new = neuf
choice-cask_fill-use-used_once = servi une fois
choice-cask_fill-use-used = servi plus d’une fois
label-cask_fill-cooperage = Tonnellerie
choice-cask_fill-cooperage-C = bousiné
choice-cask_fill-cooperage-REC = rebousiné
choice-cask_fill-cooperage-P = simple
choice-cask_fill-cooperage-PAR = paraffiné
choice-cask_fill-cooperage-G = collé
choice-cask_fill-cooperage-R = réemployé
choice-cask_fill-cooperage-PS = acier
label-cask_fill-soaked = D’abord trempé ou étuvé
label-cask_fill-place = Place
help-cask_fill-place = Travée, rang, position.
label-cask_fill-tight = Étanche après une heure
rule-cask_fill-tare_below_gross = Le poids à vide { $tare } n’est pas sous le brut { $gross }. Regarder encore la balance.
rule-cask_fill-some_strength = Saisir la lecture de l’aréomètre et sa température, ou un titre déjà corrigé.
rule-cask_fill-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-cask_fill-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-cask_fill-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-cask_fill-true_strength = réel à 20 °C
figure-cask_fill-glass_true = aréomètre, corrigé
figure-cask_fill-net = poids net
figure-cask_fill-volume_20 = volume à 20 °C
figure-cask_fill-lpa = alcool pur
title-cask_move = Déplacement de fût
short-cask_move = Déplacer un fût
about-cask_move = D’une place à une autre, plein ou vide. Son stock reste ce qu’il était.
summary-cask_move = { $from_place } à { $to_place }
label-cask_move-from_place = De la place
help-cask_move-from_place = Où il était. Scanner l’étiquette de la place si elle en a une.
label-cask_move-to_place = À la place
help-cask_move-to_place = Travée, rang, position.
title-cask_regauge = Rejaugeage de fût
short-cask_regauge = Rejauger
about-cask_regauge = Poids brut, titre et état d’un fût ; sa perte suit.
summary-cask_regauge = { $gross }, { $true_strength } réel
label-cask_regauge-gross = Poids brut
help-cask_regauge-gross = Fût et alcool ensemble.
label-cask_regauge-glass = Lecture aréomètre
help-cask_regauge-glass = Comme l’aréomètre le montre, sans correction.
label-cask_regauge-density = ou masse volumique, à l’appareil
help-cask_regauge-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-cask_regauge-temp = Température de l’alcool
help-cask_regauge-temp = La lire au même moment que l’aréomètre.
label-cask_regauge-strength = Titre, déjà corrigé
help-cask_regauge-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-cask_regauge-condition = État
choice-cask_regauge-condition-tight = étanche
choice-cask_regauge-condition-weeping = suintant
choice-cask_regauge-condition-leaking = fuyant
choice-cask_regauge-condition-dry_hoops = cercles secs
rule-cask_regauge-some_strength = Saisir la lecture de l’aréomètre et sa température, ou un titre déjà corrigé.
rule-cask_regauge-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-cask_regauge-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-cask_regauge-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-cask_regauge-true_strength = réel à 20 °C
figure-cask_regauge-glass_true = aréomètre, corrigé
figure-cask_regauge-net = poids net
figure-cask_regauge-volume_20 = volume à 20 °C
figure-cask_regauge-lpa = alcool pur
title-top_up = Ouillage ou changement de fût
short-top_up = Ouiller
about-top_up = De l’alcool d’un contenant dans ce fût. Le mélange a l’âge de sa part la plus jeune.
summary-top_up = { $work } de { $from_vessel }
label-top_up-work = Ce qui a été fait
choice-top_up-work-top_up = ouillé
choice-top_up-work-recask = changé de fût
label-top_up-from_vessel = Du contenant
label-top_up-volume = Quantité en volume
label-top_up-net_weight = ou en poids net
label-top_up-glass = Lecture aréomètre
help-top_up-glass = Comme l’aréomètre le montre, sans correction.
label-top_up-density = ou masse volumique, à l’appareil
help-top_up-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-top_up-temp = Température de l’alcool
help-top_up-temp = La lire au même moment que l’aréomètre.
label-top_up-strength = Titre, déjà corrigé
help-top_up-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
rule-top_up-some_quantity = Saisir le volume ou le poids net.
rule-top_up-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-top_up-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-top_up-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-top_up-true_strength = réel à 20 °C
figure-top_up-glass_true = aréomètre, corrigé
figure-top_up-volume_20 = volume à 20 °C
figure-top_up-lpa = alcool pur
title-sample = Échantillon
about-sample = Combien a été prélevé, pour quoi, et ce qu’il est devenu.
label-sample-size = Taille
label-sample-number = Combien
label-sample-purpose = Pour quoi
choice-sample-purpose-analysis = analyse
choice-sample-purpose-tasting = dégustation
choice-sample-purpose-gauge = jaugeage
choice-sample-purpose-library = échantillothèque
choice-sample-purpose-customer = client
choice-sample-purpose-other = autre
label-sample-went = Où il est allé
choice-sample-went-destroyed = détruit
choice-sample-went-returned = reversé
choice-sample-went-library = échantillothèque
choice-sample-went-outside_lab = laboratoire externe
label-sample-lab = Laboratoire
help-sample-lab = Nom et adresse.
label-sample-account = Compte
help-sample-account = Laisser vide : le registre le sait par le contenant.
choice-sample-account-production = production
choice-sample-account-storage = stockage
choice-sample-account-processing = traitement
rule-sample-lab_is_named = Saisir nom et adresse du laboratoire.
figure-sample-taken = prélevé
figure-sample-lpa = alcool pur
title-lab_certificate = Bulletin d’analyse
short-lab_certificate = Laboratoire
about-lab_certificate = Ce qu’un laboratoire a trouvé dans un échantillon : chaque résultat avec unité, ± et le seuil où la méthode le trouve.
summary-lab_certificate = { $laboratory }, { $document } : méthanol { $methanol }
label-lab_certificate-laboratory = Laboratoire
label-lab_certificate-document = Numéro du bulletin
label-lab_certificate-taken_on = Échantillon prélevé le
label-lab_certificate-batch = Cuvée ou lot
help-lab_certificate-batch = Pour l’alcool déjà en bouteilles.
label-lab_certificate-spirit = Vendu comme
help-lab_certificate-spirit = Comme eau-de-vie de poire Williams : les limites en dépendent. Vide : ce que tient le contenant.
label-lab_certificate-strength = Titre réel, distillé
help-lab_certificate-strength = Nécessaire si un résultat est par litre de boisson.
label-lab_certificate-methanol = Méthanol
label-lab_certificate-volatile_substances = Substances volatiles
label-lab_certificate-hydrocyanic_acid = Acide cyanhydrique
label-lab_certificate-ethyl_carbamate = Carbamate d’éthyle
label-lab_certificate-acetaldehyde = Acétaldéhyde, total
label-lab_certificate-ethyl_acetate = Acétate d’éthyle
label-lab_certificate-higher_alcohols = Alcools supérieurs, somme
label-lab_certificate-volatile_acidity = Acidité volatile, en acide acétique
label-lab_certificate-copper = Cuivre
label-lab_certificate-lead = Plomb
label-lab_certificate-sulphur_dioxide = Dioxyde de soufre
label-lab_certificate-dry_extract = Extrait sec
label-lab_certificate-sugar = Sucre, en sucre inverti
label-lab_certificate-sample_no = Numéro de l’échantillon
label-lab_certificate-accreditation = Accréditation du laboratoire
help-lab_certificate-accreditation = Son numéro.
label-lab_certificate-method = Méthode
help-lab_certificate-method = Comme imprimé, par exemple règlement (CE) 2870/2000, III.2.
label-lab_certificate-reported_on = Date du bulletin
label-lab_certificate-coverage = Ce que veut dire ±
choice-lab_certificate-coverage-two = deux fois l’incertitude type, k = 2
choice-lab_certificate-coverage-one = l’incertitude type
choice-lab_certificate-coverage-unsaid = il ne le dit pas
label-lab_certificate-strength_plus_minus = ± du titre
label-lab_certificate-methanol_plus_minus = ± du méthanol
label-lab_certificate-methanol_below = Méthanol : non trouvé, sous
label-lab_certificate-volatile_substances_plus_minus = ± des substances volatiles
label-lab_certificate-volatile_substances_below = Substances volatiles : non trouvées, sous
label-lab_certificate-hydrocyanic_acid_plus_minus = ± de l’acide cyanhydrique
label-lab_certificate-hydrocyanic_acid_below = Acide cyanhydrique : non trouvé, sous
label-lab_certificate-ethyl_carbamate_plus_minus = ± du carbamate d’éthyle
label-lab_certificate-ethyl_carbamate_below = Carbamate d’éthyle : non trouvé, sous
label-lab_certificate-acetaldehyde_plus_minus = ± de l’acétaldéhyde
label-lab_certificate-acetaldehyde_below = Acétaldéhyde : non trouvé, sous
label-lab_certificate-ethyl_acetate_plus_minus = ± de l’acétate d’éthyle
label-lab_certificate-ethyl_acetate_below = Acétate d’éthyle : non trouvé, sous
label-lab_certificate-higher_alcohols_plus_minus = ± des alcools supérieurs
label-lab_certificate-higher_alcohols_below = Alcools supérieurs : non trouvés, sous
label-lab_certificate-volatile_acidity_plus_minus = ± de l’acidité volatile
label-lab_certificate-volatile_acidity_below = Acidité volatile : non trouvée, sous
label-lab_certificate-copper_plus_minus = ± du cuivre
label-lab_certificate-copper_below = Cuivre : non trouvé, sous
label-lab_certificate-lead_plus_minus = ± du plomb
label-lab_certificate-lead_below = Plomb : non trouvé, sous
label-lab_certificate-sulphur_dioxide_plus_minus = ± du dioxyde de soufre
label-lab_certificate-sulphur_dioxide_below = Dioxyde de soufre : non trouvé, sous
label-lab_certificate-dry_extract_plus_minus = ± de l’extrait sec
label-lab_certificate-dry_extract_below = Extrait sec : non trouvé, sous
label-lab_certificate-sugar_plus_minus = ± du sucre
label-lab_certificate-sugar_below = Sucre : non trouvé, sous
rule-lab_certificate-some_result = Saisir au moins un résultat, ou le seuil où la méthode l’aurait trouvé.
rule-lab_certificate-reported_before_taken = Le bulletin est plus ancien que son échantillon. Revoir les deux jours.
title-tasting_note = Note de dégustation
short-tasting_note = Déguster
about-tasting_note = Nez, bouche, bois et défaut d’un fût ou d’un lot, et ce qui est décidé.
summary-tasting_note = { $decision } : nez { $nose_score }, bouche { $mouth_score }
label-tasting_note-nose_score = Nez
help-tasting_note-nose_score = 0 à 10.
label-tasting_note-mouth_score = Bouche
help-tasting_note-mouth_score = 0 à 10.
label-tasting_note-wood_score = Bois
help-tasting_note-wood_score = 0 à 10.
label-tasting_note-fault_score = Défaut
help-tasting_note-fault_score = 0 à 10.
label-tasting_note-words = En mots
label-tasting_note-house_scores = Notes de la maison
help-tasting_note-house_scores = Celles de la maison, 0 à 10 : fruit 7 ; profondeur 5.
label-tasting_note-reduced_to = Réduit à
label-tasting_note-decision = Décision
choice-tasting_note-decision-hold = garder
choice-tasting_note-decision-move = transfert
choice-tasting_note-decision-vat = assembler
choice-tasting_note-decision-treat = traiter
choice-tasting_note-decision-reject = rejeter
title-tasting_session = À l’aveugle
short-tasting_session = À l’aveugle
about-tasting_session = Ce qui est demandé sur quels échantillons, par quelle méthode, et les codes des verres de chacun. Quel code tient quel échantillon reste scellé jusqu’à l’ouverture. Les têtes ne se dégustent jamais.
label-tasting_session-name = Nom de la dégustation
label-tasting_session-question = Question
label-tasting_session-method = Méthode
choice-tasting_session-method-triangle = triangle
choice-tasting_session-method-duo_trio = duo-trio
choice-tasting_session-method-pair = paire, unilatérale
choice-tasting_session-method-pair_two_sided = paire, bilatérale
choice-tasting_session-method-ranking = classement
label-tasting_session-alpha = Risque d’une différence qui n’en est pas
label-tasting_session-samples = Échantillons
help-tasting_session-samples = Une lettre et un repère, ou « run » ou « batch » et son nom : A C001-Z ; B run PL-31, 64 to 60 % vol
label-tasting_session-reduced_to = Servi à
help-tasting_session-reduced_to = Tous les verres de même, avec la même eau.
label-tasting_session-poured_by = Versé par
help-tasting_session-poured_by = Qui verse ne déguste pas.
label-tasting_session-glasses = Verres
help-tasting_session-glasses = Un dégustateur et les codes de gauche à droite : NS 418 902 637 ; JK 271 550 803
label-tasting_session-seal = Sceau de la clé
title-tasting_answer = Réponse à l’aveugle
short-tasting_answer = Réponse
about-tasting_answer = Le verre que nomme un dégustateur, ou tous les verres dans l’ordre. Deviner est aussi une réponse : il n’y a pas d’autre choix.
summary-tasting_answer = { $session }, série { $set_no } : { $picked }
label-tasting_answer-session = Dégustation
help-tasting_answer-session = Son nom, comme sur la feuille de service.
label-tasting_answer-set_no = Série
help-tasting_answer-set_no = Laquelle de vos séries, comptée à partir de 1.
label-tasting_answer-picked = Le code que vous nommez
label-tasting_answer-order = ou tous les codes dans l’ordre
help-tasting_answer-order = Le premier d’abord : 418 902 637
label-tasting_answer-sure = Certitude
choice-tasting_answer-sure-guessing = deviné
choice-tasting_answer-sure-fairly = assez
choice-tasting_answer-sure-quite = très
label-tasting_answer-gave_away = Ce qui l’a trahi
rule-tasting_answer-some_answer = Nommer un verre. Deviner est aussi une réponse.
title-tasting_result = Dégustation à l’aveugle ouverte
short-tasting_result = Ouvrir
about-tasting_result = La clé d’une dégustation à l’aveugle, et ce qui en suit. Un plan de coupe ou d’assemblage peut nommer la dégustation.
summary-tasting_result = { $session } ouverte : { $decision }
label-tasting_result-session = Dégustation
label-tasting_result-key = Clé
help-tasting_result-key = Pour chaque série de verres les lettres des échantillons, puis le mot qui a servi au sceau.
label-tasting_result-decision = Ce qui suit
title-loss = Fuite, casse, manquant
short-loss = Perte
about-loss = Ce qui a été perdu, pourquoi, qui a été prévenu, ce qui a été fait. Vol et fûts manquants se signalent aussitôt.
label-loss-cause = Cause
choice-loss-cause-leak = fuite
choice-loss-cause-spill = épanchement
choice-loss-cause-broken = cassé
choice-loss-cause-theft = vol soupçonné
choice-loss-cause-missing = manquant
choice-loss-cause-unknown = inconnue
label-loss-whole = Tout est perdu
label-loss-volume = Combien
help-loss-volume = Mesuré ou estimé.
label-loss-net_weight = ou en poids
label-loss-glass = Lecture aréomètre
help-loss-glass = Comme l’aréomètre le montre, sans correction.
label-loss-density = ou masse volumique, à l’appareil
help-loss-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-loss-temp = Température de l’alcool
help-loss-temp = La lire au même moment que l’aréomètre.
label-loss-strength = Titre, déjà corrigé
help-loss-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-loss-reckoned = Mesuré ou estimé
choice-loss-reckoned-measured = mesuré
choice-loss-reckoned-reckoned = estimé
label-loss-found = Trouvé par, qui est prévenu
label-loss-done = Fait
choice-loss-done-recoopered = remis en état
choice-loss-done-recasked = changé de fût
choice-loss-done-pumped = transvasé
choice-loss-done-cleaned = nettoyé
choice-loss-done-reported = signalé
choice-loss-done-nothing = rien encore
rule-loss-some_loss = Saisir combien a été perdu, en volume ou en poids, ou dire que tout est perdu.
rule-loss-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-loss-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-loss-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-loss-true_strength = réel à 20 °C
figure-loss-glass_true = aréomètre, corrigé
figure-loss-volume_20 = volume à 20 °C
figure-loss-lpa = alcool pur
title-vat_plan = Plan d’assemblage
short-vat_plan = Plan d’assemblage
about-vat_plan = Ce qui doit aller dans une cuve et ce que cela doit donner ; gardé avec qui l’a prévu et quand.
summary-vat_plan = { $name } : { $volume } à { $target }, { $water } d’eau
label-vat_plan-name = Nom de l’assemblage
label-vat_plan-draws = Prélèvements
help-vat_plan-draws = Repère et kilogrammes, l’un après l’autre : C001-Z 153.7 ; C009-K 176.2
label-vat_plan-water = Eau en poids
label-vat_plan-target = Titre visé
label-vat_plan-volume = Volume visé
help-vat_plan-volume = À 20 °C.
label-vat_plan-wishes = Ce qui était demandé
label-vat_plan-tasting = Dégustation à l’appui
help-vat_plan-tasting = Son nom : T-26-03
title-dump = Vidage ou assemblage
short-dump = Vider
about-dump = Un fût pesé plein et vide ; ce qui en est sorti est allé dans la cuve, ce que garde le bois est l’imbibition.
summary-dump = { $net } à { $true_strength } vers { $to_vessel }
label-dump-gross = Brut avant
label-dump-empty = Poids à vide maintenant
help-dump-empty = Le bois garde 3 à 8 kg dans un fût de 200 L.
label-dump-glass = Lecture aréomètre
help-dump-glass = Comme l’aréomètre le montre, sans correction.
label-dump-density = ou masse volumique, à l’appareil
help-dump-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-dump-temp = Température de l’alcool
help-dump-temp = La lire au même moment que l’aréomètre.
label-dump-strength = Titre, déjà corrigé
help-dump-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-dump-to_vessel = Vers cuve
label-dump-tank_dip = Jauge de cuve après
rule-dump-empty_below_gross = Le poids à vide { $empty } n’est pas sous le brut { $gross }. Regarder encore la balance.
rule-dump-some_strength = Saisir la lecture de l’aréomètre et sa température, ou un titre déjà corrigé.
rule-dump-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-dump-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-dump-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-dump-true_strength = réel à 20 °C
figure-dump-glass_true = aréomètre, corrigé
figure-dump-net = vidé
figure-dump-volume_20 = volume à 20 °C
figure-dump-lpa = alcool pur
figure-dump-soakage = gardé par le bois
title-reduce = Réduire
short-reduce = Ajouter de l’eau
about-reduce = L’eau en poids, le titre qu’elle doit donner, et le titre après repos.
summary-reduce = { $water_mass } d’eau, cible { $target }
label-reduce-target = Titre cible
label-reduce-water = Eau en poids
help-reduce-water = Compter l’eau en poids : les volumes ne s’additionnent pas.
label-reduce-water_volume = ou en volume
label-reduce-rest_until = Repos jusqu’à
label-reduce-glass = Lecture aréomètre
help-reduce-glass = Comme l’aréomètre le montre, sans correction.
label-reduce-density = ou masse volumique, à l’appareil
help-reduce-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-reduce-temp = Température de l’alcool
help-reduce-temp = La lire au même moment que l’aréomètre.
label-reduce-strength = Titre, déjà corrigé
help-reduce-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-reduce-volume = Jauge après repos
rule-reduce-some_water = Saisir combien d’eau est entrée, en poids ou en volume. 0 si elle n’est mesurée qu’après le repos.
rule-reduce-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-reduce-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-reduce-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-reduce-needed = eau pour la cible
figure-reduce-water_mass = eau
figure-reduce-planned_strength = titre selon le calcul
figure-reduce-planned_volume = volume selon le calcul
figure-reduce-true_strength = réel à 20 °C
figure-reduce-glass_true = aréomètre, corrigé
figure-reduce-volume_20 = jauge à 20 °C
title-chill_filter = Réfrigération ou filtration
short-chill_filter = Filtrer
about-chill_filter = Température, plaques, et volume et titre avant et après.
summary-chill_filter = { $sheets } à { $temp } : { $lost } gardé
label-chill_filter-temp = Refroidi à
label-chill_filter-sheets = Plaques ou cartouche
help-chill_filter-sheets = Grade et lot.
label-chill_filter-volume_before = Volume avant
label-chill_filter-strength_before = Titre avant
label-chill_filter-temp_before = Température à la jauge avant
help-chill_filter-temp_before = Laissé vide : à 20 °C.
label-chill_filter-volume_after = Volume après
label-chill_filter-strength_after = Titre après
label-chill_filter-temp_after = Température à la jauge après
help-chill_filter-temp_after = Laissé vide : à 20 °C.
label-chill_filter-to_vessel = Dans la cuve
help-chill_filter-to_vessel = Vide si c’est revenu.
figure-chill_filter-volume_before_20 = volume avant à 20 °C
figure-chill_filter-volume_after_20 = volume après à 20 °C
figure-chill_filter-lpa_before = alcool pur avant
figure-chill_filter-lpa_after = alcool pur après
figure-chill_filter-lost = gardé par le filtre
title-bottling_gauge = Jaugeage de cuve d’embouteillage
short-bottling_gauge = Jaugeage final
about-bottling_gauge = Après tout traitement et avant la première bouteille : combien, à quel titre, et ce que dira l’étiquette.
summary-bottling_gauge = { $batch } : { $volume_20 } à { $true_strength }
label-bottling_gauge-batch = Cuvée
label-bottling_gauge-volume = Volume
label-bottling_gauge-dip = ou jauge
help-bottling_gauge-dip = Hauteur ou creux, comme dans la table du contenant ; ses litres suivent.
label-bottling_gauge-net_weight = ou poids net
label-bottling_gauge-glass = Lecture aréomètre
help-bottling_gauge-glass = Comme l’aréomètre le montre, sans correction.
label-bottling_gauge-density = ou masse volumique, à l’appareil
help-bottling_gauge-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-bottling_gauge-temp = Température de l’alcool
help-bottling_gauge-temp = La lire au même moment que l’aréomètre.
label-bottling_gauge-strength = Titre, déjà corrigé
help-bottling_gauge-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-bottling_gauge-obscuration = Matières
help-bottling_gauge-obscuration = Résidu après évaporation. Au-delà de 0,6 g/100 mL, ou hors de 80 à 100 proof : distiller un échantillon, saisir son titre, et pas de matières.
label-bottling_gauge-label_strength = Titre étiqueté
rule-bottling_gauge-some_quantity = Saisir le volume, la jauge ou le poids net.
rule-bottling_gauge-volume_needs_temp = Un volume demande la température de l’alcool. La saisir aussi.
rule-bottling_gauge-some_strength = Saisir la lecture de l’aréomètre et sa température, ou un titre déjà corrigé.
rule-bottling_gauge-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-bottling_gauge-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-bottling_gauge-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-bottling_gauge-seen_strength = selon l’appareil
figure-bottling_gauge-true_strength = réel à 20 °C
figure-bottling_gauge-glass_true = aréomètre, corrigé
figure-bottling_gauge-dipped = par sa table
figure-bottling_gauge-estimated = par ses dimensions, une estimation
figure-bottling_gauge-volume_20 = volume à 20 °C
figure-bottling_gauge-lpa = alcool pur
figure-bottling_gauge-proof_gallons = proof gallons
title-bottle_check = Contrôle de bouteilles
short-bottle_check = Contrôler
about-bottle_check = Toutes les demi-heures environ : remplissage, titre, étiquette et bouchage de quelques bouteilles.
summary-bottle_check = { $tested } bouteilles : { $fill_found }, { $strength_found }
label-bottle_check-line = Ligne
label-bottle_check-filled_so_far = Bouteilles remplies jusqu’ici
help-bottle_check-filled_so_far = Comme la ligne les compte, depuis le début de la cuve ou sa dernière clôture.
label-bottle_check-tested = Bouteilles testées
label-bottle_check-bottle_size = Taille de bouteille
label-bottle_check-fill_found = Remplissage trouvé, en moyenne
help-bottle_check-fill_found = En pour cent de ce que dit l’étiquette.
label-bottle_check-fill_least = La moins remplie
label-bottle_check-fill_most = La plus remplie
label-bottle_check-strength_found = Titre trouvé
label-bottle_check-label_strength = Titre étiqueté
label-bottle_check-labels_right = Étiquettes et bouchage justes
label-bottle_check-done = Fait si faux
title-bottling_close = Clôture d’embouteillage
short-bottling_close = Clore
about-bottling_close = Comptes, numéros de cartons et reste de la cuve. L’alcool embouteillé quitte ici la cuve.
summary-bottling_close = { $filled } bouteilles, cartons { $case_from } à { $case_to }
label-bottling_close-filled = Bouteilles remplies
label-bottling_close-broken = Cassées
label-bottling_close-reworked = Reversées
label-bottling_close-library = Des bonnes, pour l’échantillothèque
label-bottling_close-bottle_size = Taille de bouteille
label-bottling_close-per_case = Bouteilles par carton
label-bottling_close-case_from = Premier carton
label-bottling_close-case_to = Dernier carton
label-bottling_close-odd_case = Carton incomplet
help-bottling_close-odd_case = Son numéro avec un R.
label-bottling_close-lot_mark = Numéro de lot des bouteilles
label-bottling_close-loss = Fond, ligne et filtre
label-bottling_close-tank_empty = La cuve est-elle vide ?
rule-bottling_close-broken_of_filled = { $broken } cassées sur { $filled } remplies ne se peut pas. Recompter.
figure-bottling_close-in_bottles = rempli
figure-bottling_close-lpa = alcool pur rempli
title-dispatch = Bouteilles sorties ou revenues
short-dispatch = Cartons sortis
about-dispatch = Cartons ou bouteilles d’un embouteillage qui partent, droits constatés ou en suspension, cassent, servent d’échantillons ou reviennent.
summary-dispatch = { $batch } : { $cases } cartons, { $why }
label-dispatch-batch = Cuvée ou numéro de lot
help-dispatch-batch = Comme sur les bouteilles ou le carton.
label-dispatch-why = Ce qui leur arrive
choice-dispatch-why-tax_paid = partent, droits constatés
choice-dispatch-why-in_bond = partent en suspension
choice-dispatch-why-export = partent à l’exportation
choice-dispatch-why-sample = échantillons et dégustations
choice-dispatch-why-broken = cassé
choice-dispatch-why-destroyed = détruit
choice-dispatch-why-missing = manquant
choice-dispatch-why-dumped_back = reversées dans une cuve
choice-dispatch-why-returned = reviennent
label-dispatch-cases = Cartons entiers
label-dispatch-bottles = Bouteilles à part
label-dispatch-case_from = Premier carton
label-dispatch-case_to = Dernier carton
label-dispatch-document = Numéro du document
label-dispatch-to_whom = À ou de qui
help-dispatch-to_whom = Nom et adresse. Détruites : qui l’a fait ou vu.
label-dispatch-to_vessel = Dans la cuve
rule-dispatch-some_bottles = Saisir combien de cartons, ou de bouteilles à part.
rule-dispatch-out_has_document = Des marchandises qui partent ont un document. Saisir son numéro.
rule-dispatch-out_names_whom = Saisir à qui elles vont : lors d’un rappel personne d’autre ne le sait.
rule-dispatch-destroyed_is_watched = Saisir qui les a détruites ou l’a vu, avec sa fonction.
rule-dispatch-poured_into_a_tank = Choisir la cuve.
rule-dispatch-last_needs_first = Saisir aussi le premier carton.
title-goods_receipt = Bouteilles reçues
short-goods_receipt = Cartons entrés
about-goods_receipt = Des cartons ou bouteilles arrivent en suspension d’un autre site : ce que déclarent les papiers, et ce qui manquait ou était cassé.
summary-goods_receipt = { $document } : { $cases } cartons { $batch } ({ $consignor })
label-goods_receipt-consignor = De qui
help-goods_receipt-consignor = Nom et adresse, numéro d’usine ou d’entrepôt.
label-goods_receipt-document = Numéro du document
label-goods_receipt-batch = Cuvée ou numéro de lot
help-goods_receipt-batch = Comme sur les bouteilles ou le carton.
label-goods_receipt-spirit = Sorte d’alcool
label-goods_receipt-strength = Titre sur l’étiquette
label-goods_receipt-bottle_size = Taille de bouteille
label-goods_receipt-per_case = Bouteilles par carton
label-goods_receipt-cases = Cartons entiers
label-goods_receipt-bottles = Bouteilles à part
label-goods_receipt-short = Bouteilles manquantes ou cassées
label-goods_receipt-case_from = Premier carton
label-goods_receipt-case_to = Dernier carton
label-goods_receipt-seals = Scellés intacts ?
rule-goods_receipt-some_bottles = Saisir combien de cartons, ou de bouteilles à part, déclarent les papiers.
rule-goods_receipt-cases_hold_some = Saisir combien de bouteilles tient un carton.
rule-goods_receipt-last_needs_first = Saisir aussi le premier carton.
title-opening_goods = Stock d’ouverture en bouteilles
short-opening_goods = Bouteilles d’ouverture
about-opening_goods = Cartons et bouteilles d’un embouteillage qui étaient au magasin avant le début du registre, et ce qu’en disent les papiers.
summary-opening_goods = { $batch } : { $cases } cartons ({ $spirit }) avant ce registre
label-opening_goods-batch = Cuvée ou numéro de lot
help-opening_goods-batch = Comme sur les bouteilles ou le carton.
label-opening_goods-lot_mark = Numéro de lot
help-opening_goods-lot_mark = Si les bouteilles en portent un autre que la cuvée.
label-opening_goods-spirit = Sorte d’alcool
label-opening_goods-strength = Titre sur l’étiquette
label-opening_goods-bottle_size = Taille de bouteille
label-opening_goods-per_case = Bouteilles par carton
label-opening_goods-cases = Cartons entiers
label-opening_goods-bottles = Bouteilles à part
label-opening_goods-case_from = Premier carton
label-opening_goods-case_to = Dernier carton
label-opening_goods-bottled_on = Embouteillé le
label-opening_goods-origin = D’où
help-opening_goods-origin = Embouteillage de la maison, ou de qui il vient.
label-opening_goods-papers = Ses papiers
help-opening_goods-papers = Quel registre ou facture, et sa page.
rule-opening_goods-some_bottles = Saisir combien de cartons, ou de bouteilles à part.
rule-opening_goods-cases_hold_some = Saisir combien de bouteilles tient un carton.
rule-opening_goods-last_needs_first = Saisir aussi le premier carton.
title-bottled_count = Compte des bouteilles
short-bottled_count = Compter
about-bottled_count = Cartons et bouteilles d’un embouteillage présents au magasin. La différence est un manquant ou un excédent.
summary-bottled_count = { $batch } : { $cases } cartons présents
label-bottled_count-batch = Cuvée ou numéro de lot
help-bottled_count-batch = Comme sur les bouteilles ou le carton.
label-bottled_count-cases = Cartons entiers
label-bottled_count-bottles = Bouteilles à part
label-bottled_count-case_from = Un de ces cartons
help-bottled_count-case_from = Seulement si deux embouteillages partagent la cuvée.
label-bottled_count-signed = Signé par le compteur
help-bottled_count-signed = Nom et fonction.
rule-bottled_count-some_bottles = Saisir combien de cartons ou de bouteilles, ou 0.
title-stock_count = Inventaire
short-stock_count = Compter
about-stock_count = Quel contenant est à quelle place, et combien tient une cuve. Un échange est un échange, pas un manquant.
label-stock_count-place = Place
help-stock_count-place = Comme dit son étiquette. Vide pour une cuve.
label-stock_count-found = Trouvé
choice-stock_count-found-here = ce contenant
choice-stock_count-found-nothing = rien là où il devrait être
choice-stock_count-found-unknown = un qui n’est pas au registre
label-stock_count-label = Ce qui est écrit dessus
label-stock_count-volume = Volume, si c’est une cuve
label-stock_count-net_weight = ou poids net
label-stock_count-glass = Lecture aréomètre
help-stock_count-glass = Comme l’aréomètre le montre, sans correction.
label-stock_count-density = ou masse volumique, à l’appareil
help-stock_count-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-stock_count-temp = Température de l’alcool
help-stock_count-temp = La lire au même moment que l’aréomètre.
label-stock_count-strength = Titre, déjà corrigé
help-stock_count-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-stock_count-signed = Signé par le compteur
help-stock_count-signed = Nom et fonction.
rule-stock_count-unknown_is_described = Saisir ce qui est écrit dessus.
rule-stock_count-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-stock_count-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-stock_count-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-stock_count-true_strength = réel à 20 °C
figure-stock_count-glass_true = aréomètre, corrigé
figure-stock_count-volume_20 = volume à 20 °C
figure-stock_count-lpa = alcool pur
title-cleaning = Nettoyage
about-cleaning = Produit, dose, durée et température, et contrôle du rinçage. Personne n’entre sans permis.
summary-cleaning = { $agent }, rinçage { $rinse_ph }
label-cleaning-agent = Produit, dose, durée
label-cleaning-temp = Température
label-cleaning-rinse_ph = Contrôle du rinçage, pH
label-cleaning-entered = Quelqu’un est-il entré ?
label-cleaning-permit_no = Numéro du permis
rule-cleaning-entry_needs_permit = Personne n’entre dans un contenant sans permis. Saisir son numéro.
title-instrument_check = Contrôle d’instrument
short-instrument_check = Vérifier un instrument
about-instrument_check = Trouvé contre connu. Un échelon d’écart est trop : hors service jusqu’à remise en ordre.
summary-instrument_check = { $instrument } : { $found } pour { $expected }, { $result }
label-instrument_check-instrument = Instrument
help-instrument_check-instrument = Son identifiant, comme TH-2.
label-instrument_check-against = Contre
choice-instrument_check-against-ice = glace
choice-instrument_check-against-boiling = eau bouillante
choice-instrument_check-against-liquid = liquide de référence
choice-instrument_check-against-weight = poids
choice-instrument_check-against-second = second instrument
label-instrument_check-expected = Devrait montrer
help-instrument_check-expected = Dans l’unité de l’instrument.
label-instrument_check-found = Montre
label-instrument_check-correction = Correction désormais
help-instrument_check-correction = À ajouter à ce qu’il montre. 0 si aucune.
label-instrument_check-result = Bon ?
choice-instrument_check-result-good = bon
choice-instrument_check-result-failed = pas bon
label-instrument_check-in_use = En service ?
choice-instrument_check-in_use-yes = oui
choice-instrument_check-in_use-no = non
choice-instrument_check-in_use-until = jusqu’à un jour
label-instrument_check-until = Jusqu’au
title-destruction = Destruction
short-destruction = Détruire
about-destruction = Ce qui a été détruit, combien, où, comment, et qui l’a vu.
summary-destruction = { $what } : { $volume_20 } à { $true_strength }
label-destruction-what = Quoi et lot
label-destruction-volume = Volume
label-destruction-net_weight = ou poids net
label-destruction-glass = Lecture aréomètre
help-destruction-glass = Comme l’aréomètre le montre, sans correction.
label-destruction-density = ou masse volumique, à l’appareil
help-destruction-density = Comme l’appareil la montre à cette température, sans la ramener à une autre.
label-destruction-temp = Température de l’alcool
help-destruction-temp = La lire au même moment que l’aréomètre.
label-destruction-strength = Titre, déjà corrigé
help-destruction-strength = Seulement si un densimètre électronique ou les tables l’ont donné. Vide pour un aréomètre.
label-destruction-place = Place
label-destruction-manner = Comment
label-destruction-withdrawn = Déjà sorti de suspension ?
label-destruction-watched_by = Fait ou vu par, avec fonction
rule-destruction-some_quantity = Saisir le volume ou le poids net.
rule-destruction-some_strength = Saisir la lecture de l’aréomètre et sa température, ou un titre déjà corrigé.
rule-destruction-glass_needs_temp = Une lecture d’aréomètre demande la température de l’alcool. La saisir aussi.
rule-destruction-density_needs_temp = Une masse volumique demande la température de sa mesure. La saisir aussi.
rule-destruction-raw_equals_corrected = { $glass } est dans les deux cases à { $temp }. C’est ce que montre l’aréomètre ; le réel serait { $glass_true }.
figure-destruction-true_strength = réel à 20 °C
figure-destruction-glass_true = aréomètre, corrigé
figure-destruction-volume_20 = volume à 20 °C
figure-destruction-lpa = alcool pur
figure-destruction-proof_gallons = proof gallons
title-shift_note = Note à l’équipe suivante
short-shift_note = Note
about-shift_note = Quelques mots pour qui vient ensuite, sur un contenant ou sur rien de précis.
label-shift_note-text = Note
title-note_heard = Note entendue
about-note_heard = Qui a lu ou entendu quelle note ; avant cela elle reste sur son contenant.
summary-note_heard = entendue
label-note_heard-note = La note
title-enclosure = Image ou papier ajouté
short-enclosure = Image
about-enclosure = Nomme l’écriture à laquelle elle appartient ; son `enclosed` nomme les fichiers, par leur SHA-256.
label-enclosure-entry = Sur l’écriture
label-enclosure-what = Ce que cela montre
title-answer = Réponse
about-answer = Maintenue, ou rayée, avec la raison. L’écriture dont on parle reste lisible.
label-answer-entry = Sur l’écriture
label-answer-query = Question
help-answer-query = Son code ; vide pour l’écriture entière.
label-answer-verdict = Réponse
choice-answer-verdict-stands = maintenue
choice-answer-verdict-struck = rayée
label-answer-reason = Raison

### A phone fetches what follows after its first install.

pure =
    { UNITS() ->
        [us] proof gallons
       *[metric] L d’alcool pur
    }
of-pure =
    { UNITS() ->
        [us] proof gallons
       *[metric] L d’alcool pur
    }
pure-sign =
    { UNITS() ->
        [us] proof gal
       *[metric] L
    }
no_entry = Ce n’est pas une écriture. Mettre l’application du téléphone à jour et renvoyer.
unkeepable = Elle contient un chiffre ou un caractère qui ne peut être gardé. La noter de nouveau.
too_long-entry = L’écriture est trop longue. Raccourcir ses textes et la noter de nouveau.
malformed = { $path } : { $words }
malformed-whole = { $words }
fault-missing = Donnée manquante d’un champ obligatoire.
fault-null = Le champ ne peut être nul.
fault-no_text = Texte non valable.
fault-no_number = Entier non valable.
fault-no_members = Ensemble de champs non valable.
fault-no_list = Liste non valable.
fault-no_object = Type d’entrée non valable.
fault-no_id = L’identifiant n’est pas un UUID en minuscules.
fault-no_time = Une heure demande date, heure et décalage, comme 2025-09-24T08:05:00+02:00.
fault-no_digest = Le nom d’une image est son SHA-256 en minuscules.
fault-unkeepable = Ce texte contient des caractères qui ne peuvent être gardés.
fault-unknown = Champ inconnu.
fault-longer = Dépasse la longueur maximale { $most }.
fault-one_of = Doit être l’un de : { $choices }.
fault-between = Doit être entre { $least } et { $most }, bornes comprises.
no_such_kind = Le registre ne connaît pas d’écriture nommée { $kind }. Mettre le registre à jour.
newer_kind = Le téléphone est plus récent que le registre. Mettre le registre à jour, puis renvoyer.
bad_mark = { $mark } n’est pas un repère. Relire l’étiquette et noter de nouveau.
bad_mark-field = { $label } : { $mark } n’est pas un repère. Relire l’étiquette.
missing-mark = Le repère du contenant manque. Scanner l’étiquette, ou le saisir.
amends_itself = Elle dit qu’elle se rectifie elle-même. La noter de nouveau.
clash-in_book = Cet identifiant est au registre avec un autre contenu, sous le numéro { $number }. Une personne décide.
clash-in_batch = Cet identifiant vient deux fois dans un envoi avec deux contenus. Le premier est au registre. Une personne décide.
bad_signature = Elle ne porte pas la signature du téléphone qu’elle nomme : elle a été changée après coup. La noter de nouveau.
not_the_desk = Elle dit avoir été notée au bureau. La noter de nouveau, au bureau ou sur le téléphone.
may_not_answer = Les réponses se donnent au bureau, par un distillateur ou le bureau. S’y connecter, puis répondre.
not_worked_out = Le registre n’a pu traiter cette écriture. Elle est gardée telle quelle ; le signaler à qui entretient le programme.
clash = Un autre contenu est venu sous l’identifiant de cette écriture et a été mis de côté. Comparer les deux ; rectifier celle-ci ou la maintenir.
amended_after_strike = Elle rectifie une écriture rayée avant. Elle ne compte pas, sauf si vous la maintenez.
unknown_person = Le registre ne connaît personne au code { $code }. L’ajouter, ou rectifier.
unknown_vessel = Aucun contenant { $mark } n’est au registre. L’ajouter, ou rectifier l’écriture.
wrong_sort = { $vessel } est : { $sort } ; { LOWER($kind) } ne s’y note pas. Bon contenant ?
wrong_sort-field = { $label } : { $vessel } est : { $sort }. Bon contenant ?
sort-fermenter = cuve de fermentation
sort-still = alambic
sort-receiver = récipient
sort-tank = cuve
sort-cask = fût
sort-can = bidon
sort-place = place
stock_short = { BARE($taken) } { of-pure } pris dans { $vessel }, qui en a { BARE($booked) } { pure-sign } selon le registre. Revoir les deux chiffres.
from_nothing = { BARE($came) } { of-pure } viennent d’où le registre n’a rien. Est-ce le bon contenant et la bonne heure ? Si oui, noter ce qui y était avant.
clock = L’horloge de ce téléphone { clock-way } de { $off } lors de cette remise.
clock-way =
    { $way ->
        [slow] retardait
       *[fast] avançait
    }
clock-ask = L’horloge de ce téléphone { clock-way } de { $off } lors de cette remise. Selon elle, le relevé est du { ISO_DAY($told) } à { CLOCK($told) } ; le registre le range au { ISO_DAY($ordered) } { CLOCK($ordered) } ; les deux sont gardés. Régler l’horloge, et dire si le jour est juste.
hand_unsigned = Ce téléphone signe ce qui y est noté, et ceci est venu sans sa signature. Demander à { $person } si l’écriture est de sa main.
hand_not_shown = { $person } a un PIN et ne l’avait pas saisi sur ce téléphone. Lui demander si l’écriture est de sa main.
hand_second = La maison veut le PIN saisi pour ceci au moment de noter, et il ne l’a pas été. Demander à { $person } si l’écriture est de sa main.
hand_witness = { $person } est nommé comme témoin, et n’a jamais saisi son PIN sur ce téléphone. Lui demander.
received = Remis { $after } après la saisie.
late = Saisi { $after } après le relevé.
time_order = Relevé { $after } après la saisie : cela ne se peut pas. Rectifier l’heure du relevé.
twice =
    Les mêmes chiffres existent déjà : { $at } ({ $before ->
        [none] au même moment
       *[other] { $before } avant
    }{ $by ->
        [none] { "" }
       *[other] , par { $by }
    }). Est-ce un seul relevé, inscrit deux fois ?
moved_twice = Les mêmes chiffres existent déjà ({ $at }). Est-ce une seule et même chose, notée deux fois ?
named_twice = { $label } { $name } existe déjà ({ $at }). Donner le suivant.
two_people = { $other } a aussi jaugé ce contenant, { $at } : { TYPED($theirs) }. { $me } a { TYPED($mine) }. Les deux sont gardés ; lequel compte ?
too_neat = { $label } { TYPED($figure) }, { $times } fois de suite. Est-ce relevé chaque fois ?
neat_round = { $label } { TYPED($figure) } sur { $vessels } contenants de suite. Est-ce relevé sur chacun ?
instrument-failed = { $instrument } a manqué son contrôle ({ $on }). Relever de nouveau avec un autre.
instrument-would = { $instrument } a échoué à son contrôle le { $on } : d'après lui, { TYPED($figure) } serait { TYPED($would) }. Relire avec un autre.
instrument-out_of_use = { $instrument } est hors service depuis { $since }. Quel instrument était-ce ?
instrument-due = { $instrument } était à vérifier le { ISO_DAY($on) }. Le vérifier.
unknown_instrument = Le registre ne connaît pas l’instrument { $instrument }. L’ajouter, ou rectifier l’écriture.
check_left = { $instrument } est dit bon : il montre { $found }, avec { $correction } ajouté { $then }, et devrait montrer { $expected }. Revoir les trois chiffres ; un instrument qui s’écarte a échoué.
instrument_failed =
    { $instrument } { $side ->
        [high] montre { $off } de trop{ instrument-where }
        [low] montre { $off } trop peu{ instrument-where }
       *[none] a échoué
    }. Chaque relevé fait avec lui depuis { $since ->
        [new] qu’il est neuf
       *[other] son dernier bon contrôle ({ $since })
    } est en doute : parcourir la liste sur sa page.
instrument-where =
    { $against ->
        [ice] { " " }dans la glace
        [boiling] { " " }dans l’eau bouillante
       *[other] { "" }
    }
glass_scale =
    { $instrument } montre { BARE(TYPED($low)) }{ $high ->
        [none] { "" }
       *[other] { " " }à { BARE(TYPED($high)) }
    } ; { TYPED($figure) } ne peut s’y lire. Quel instrument était-ce ?
ferment_gravity_rose = La densité { $gravity } est au-dessus de { $last } ({ $at }) ; elle ne peut que baisser.
ferment_jump = Moût { TYPED($temp) }, { TYPED($last) } au dernier relevé : un moût bouge moins vite. Regarder encore.
sugar_gravity = Première densité { TYPED($gravity) } : le sucre du fruit dit environ { TYPED($usual) }. Revoir les deux.
close_gravity = Densité finale { TYPED($gravity) }, { TYPED($last) } au dernier relevé. Regarder encore.
close_volume = { TYPED($volume) } de matières à distiller pour { $fruit } de fruits : d’habitude environ { $usual }. Revoir la jauge, et chercher un apport non noté.
ferment_stuck =
    La densité { $gravity } { $moved ->
        [none] n’a pas bougé
       *[other] a bougé de { $moved }
    } en { $apart } et reste { $above } au-dessus de { $end } où { $what ->
        [none] un tel fruit
       *[other] { $what }
    } finit d’habitude : ni mouvement ni fin.{ $mash ->
        [none] { "" }
       *[other] { " " }Moût { TYPED($mash) }.
    } Voir température, acide et nutriment de levure.
ferment_ended = Trois densités égales à { $gravity } en { $within } : la fermentation est finie. Réserver l’alambic.
ferment_heat =
    Le moût { TYPED($temp) } dépasse { TYPED($most) } : trop chaud pour { $what ->
        [grain] des céréales
       *[fruit] du fruit
    }. Le refroidir maintenant.
ferment_temp_sense = Un moût à { TYPED($temp) } tuerait la levure. Lu en Fahrenheit, c’est { TYPED($meant) } ({ $other }){ temp-fits }. Est-ce cela ?
ferment_temp_sense-cold = Un moût à { TYPED($temp) } est au gel ou en dessous ({ TYPED($cold) }). Lu en Celsius, c’est { TYPED($meant) }{ temp-fits }. Est-ce cela ?
temp-fits =
    { $near ->
        [none] { "" }
       *[other] , ce qui va avec { TYPED($near) } ({ $at })
    }
ferment_yield =
    { BARE($made) } { pure } dans les matières à distiller, { $load } : environ { BARE($wanted) } { pure-sign } pouvaient s’attendre{ $what ->
        [none] { "" }
       *[other] { " " }d’après vos { $years } derniers pour { $what }
    }. C’est { $side ->
        [much] beaucoup
       *[little] peu
    } : { $share }, où { BARE($low) } à { $high } est l’habitude. Voir titre, jauge et poids.
ferment_yield-most = { BARE($made) } { pure } dans les matières à distiller, { $load } : tout leur sucre ne pourrait donner plus de { BARE($most) } { pure-sign }. Voir le titre, la jauge et les poids ; du sucre a-t-il été ajouté ?
load-grain = de { $weight } de céréales
load-fruit = de { $weight } de fruits à { $sugar }
wash_strength =
    { TYPED($strength) } de { $vessel } est beaucoup pour une fermentation : { UNITS() ->
        [us] 6
       *[metric] 3
    } à { BARE($most) } { pct } est l’habitude. Regarder encore.
wash_strength-impossible = { TYPED($strength) } de { $vessel } ne se peut pas : aucune fermentation ne donne cela. Regarder encore.
over_capacity = { $contents } ne tient pas dans { $vessel }, qui tient { $holds }. Regarder encore.
over_working_level = { $contents } dépasse le niveau de travail de { $vessel }, { $level }. Regarder encore.
contents-fruit =
    { $fruit } de fruits ({ $before ->
        [none] { "" }
       *[other] avec { $before } déjà dedans,{ " " }
    }environ { $mash } de moût)
contents-charge =
    Une charge de { $charge }{ $feints ->
        [none] { "" }
       *[other] { " " }({ BARE($wash) } de matières et { BARE($feints) } d’alcools imparfaits)
    }
vessel_empty = Le registre n’a rien dans { $vessel } à cette heure. Est-ce le bon contenant et la bonne heure ? Si oui, noter son remplissage.
source_empty = Le registre n’a rien dans { $vessel } à charger. Est-ce le bon contenant ? Si oui, noter son remplissage.
vessel_not_empty =
    { $vessel } n’est pas vide selon le registre : { $held ->
        [none] { "" }
       *[other] { BARE($held) } { of-pure },{ " " }
    }{ $what }. Bon fût ? A-t-il été vidé ?
target_capacity = { $then } est alors dans { $vessel } ({ target-holds }). Bon contenant et bons chiffres ?
target_working_level = { $then } est alors dans { $vessel } ({ target-holds }). Bon contenant et bons chiffres ?
target-holds =
    tient { $holds }, niveau de travail { $level }{ $has ->
        [none] { "" }
       *[other] , { $has } dedans
    }
emptied_vessel =
    { $vessel } a été { $how ->
        [dump] vidé
        [destruction] détruit
        [loss] passé en perte
        [account_move] transféré
        [bottling_close] embouteillé
        [charge] chargé dans un alambic
        [cask_fill] mis en fût
        [top_up] versé dans un fût
        [chill_filter] filtré vers une autre cuve
        [gauge] trouvé vide
        [stock_count] trouvé vide
        [fraction_gauge] mis à l’égout
       *[other] vidé
    } ({ $at }, par { $by }) et est vide selon le registre. Ce relevé est-il d’avant ? Alors rectifier son heure. Ou était-ce un autre contenant ?
move_gain = Dans { $vessel } { BARE($had) } selon le registre, { BARE($moved) } transférés : { BARE($more) } { pure } ({ $share }) de plus qu’il n’y avait. Un transfert ne gagne rien : jusqu’à { $most } est affaire de lecture. Voir jauge, température et titre des deux.
account_other = Selon le registre { $vessel } tient { BARE($held) } { of-pure } en { $account }. Transféré comme { $other }, tout est maintenant en { $other }, pas seulement les { BARE($moved) } transférés. Était-ce déclaré ?
account_joined = { BARE($held) } { of-pure } dans { $vessel } sont en { $account } selon le registre. Avec { BARE($moved) } en { $other } qui s’y joignent, tout est maintenant en { $other }. Était-ce déclaré ?
fruit_mixed = { $fruit } ({ $net }) va avec { $other } ({ $lies }) : { $share } du moût. Son eau-de-vie porte alors les deux noms, avec leurs parts, et aucun seul. Bon fruit, bonne cuve ?
opening_nothing = Le registre n’a rien dans { $vessel }, et rien n’est pesé ni jaugé ici. Saisir son poids brut, son poids net ou son volume.
opening_seen = { $vessel } tient ce que ce registre a vu commencer ({ $at }) : ce n’est pas un stock d’ouverture. Bon contenant ?
opening_again = Selon le registre { BARE($booked) } { of-pure } sont déjà dans { $vessel } ; ici c’est { BARE($said) }. Son passé est ajouté, son stock reste. Le jauger, s’il tient maintenant une autre quantité.
opening_before_fruit = Sous bois depuis { $day }, de la récolte { $harvest } : rien n’est sous bois avant son fruit. Revoir les deux.
opening_drift = { $now } maintenant, { $then } au remplissage ({ $at }) : c’est beaucoup pour les années entre les deux. Revoir les deux.
opening_grew = { $now } maintenant, { $then } au remplissage : le bois ne donne pas d’alcool. Revoir les deux.
opening_overfilled = { TYPED($filled) } au remplissage ne tient pas dans { $vessel }, qui tient { TYPED($holds) }. Revoir les papiers.
opening_no_tare = { TYPED($gross) } avec le fût, et personne n’a dit ce qu’il pèse vide. Saisir son poids à vide, ou l’inscrire avec le fût.
opening_to_come = { $day } est après { $read }, jour du relevé. Voir l’année.
opening_long_ago =
    { $day } est { PLURAL($years) ->
        [one] { $years } an
       *[other] { $years } ans
    } avant le relevé. Bonne année ?
sheet-empty = Il n’y a rien dans ce fichier. Prendre la feuille avec les lignes.
sheet-too_large = Ce fichier dépasse { $most } Mo. Enregistrer la feuille seule, en CSV, et prendre celle-ci.
sheet-pdf = C’est un PDF, quoi que dise son nom. Enregistrer la feuille en XLSX, ODS ou CSV et prendre celle-ci.
sheet-old = C’est un classeur d’un ancien format. L’enregistrer en XLSX, ODS ou CSV et prendre celui-ci.
sheet-unreadable = Ce n’est pas un tableur lisible. Enregistrer la feuille en XLSX, ODS ou CSV et prendre celle-ci.
sheet-swollen = Ce classeur se déplie à plus de { $most } Mo. Enregistrer la seule feuille en CSV et prendre celle-ci.
sheet-rows = { $rows } lignes sont trop à la fois : { $most } au plus. Les prendre par parties.
sheet-columns = { $columns } colonnes sont trop : { $most } au plus. Ôter celles dont personne n’a besoin ici.
sheet-no_heads = Aucune ligne de ce tableau ne ressemble à des titres. Mettre un titre sur chaque colonne, comme dans le modèle.
sheet-no_rows = Il y a des titres, et aucune ligne dessous.
sheet-merged = Des titres de la ligne { $row } sont fusionnés. Les séparer, un titre sur chaque colonne.
sheet-two_columns = Deux colonnes veulent dire la même chose, { $label } : « { $one } » et « { $other } ». Dire laquelle c’est, et ce qu’est l’autre.
sheet-no_column =
    { PLURAL($many) ->
        [one] Une colonne manque : { $labels }.
       *[other] Des colonnes manquent : { $labels }.
    } Dire laquelle c’est, ou l’ajouter à la feuille.
sheet-order = Des jours comme { $example } : le jour d’abord ou le mois ? Le dire.
sheet-missing = { $label } manque.
sheet-formula_cell = { $typed } est une formule sans valeur. Y mettre la valeur.
sheet-no_number = { $typed } n’est pas un chiffre.
sheet-bad_number = { $typed } : { $reason }
sheet-no_unit = { $typed } : cette colonne est en { $units }.
sheet-no_choice = { $typed } n’est aucun de ceux-ci : { $choices }.
sheet-no_date = { $typed } n’est pas un jour. L’écrire 2022-11-21 ou 21 nov. 2022.
sheet-no_such_day = { $month } a { $last } jours.
sheet-which_order = { $typed } : lequel est le jour, lequel le mois ?
sheet-to_come = { $day } est encore à venir.
sheet-twice = { $name } est déjà à la ligne { $row }.
sheet-no_vessel = Aucun contenant ne s’appelle { $name }. L’inscrire avec une feuille de contenants, ou donner ici sa capacité.
sheet-opened = Le stock d’ouverture de { $name } est déjà au registre, et dit autre chose. Le rectifier sur sa page.
sheet-other = { $name } est déjà au registre : { $there } là, { $here } ici. Le changer sur sa propre page, ou laisser cette ligne.
opening_goods_again = Le registre a déjà { $there } bouteilles de { $batch }, depuis { $at } ; ces { $bottles } se mettent à côté. En sont-ce d’autres ?
move_balance = Dans { $vessel } { BARE($had) } selon le registre, vers { $to } { BARE($moved) } : { BARE($left) } { pure } ({ $share }) restés. Jusqu’à { $most } est l’habitude. Est-ce dans le tuyau ou encore dans le contenant ? Le jauger.
move_balance-off = Dans { $vessel } { BARE($had) } selon le registre, hors des lieux { BARE($moved) } : { BARE($left) } { pure } ({ $share }) restés. Jusqu’à { $most } est l’habitude. Est-ce dans le tuyau ou encore dans le contenant ? Le jauger.
dip_sum =
    { $dipped } dans { $vessel }, { $booked } selon le registre : { $off } { $side ->
        [above] au-dessus
       *[below] au-dessous
    } du calcul ({ $share }). Revoir la jauge, puis chercher un transfert non noté.
dip_sum-dump = { $dipped } jaugés dans { $vessel }, { $sum } selon le calcul de ce qui y est allé : { $off } d’écart. Revoir la jauge et les deux poids.
source_strength = Titre réel { BARE($now) } { pct }, { BARE($held) } { pct } dans { $vessel } selon le registre : { APART($off) } { points } d’écart. Est-ce ce contenant ? Regarder encore, et chercher de l’eau ou un transfert non notés.
water_off = { TYPED($water) } d’eau l’amènent à { BARE($strength) } { pct }, pas à { BARE($target) } { pct } : il en faut { $needed }. Voir le poids.
blend_sum =
    Entrés { BARE($went_in) }, mesurés { BARE($measured) } : { BARE($off) } { pure } ({ $share }) { $side ->
        [more] de plus
       *[less] de moins
    } que ce qui est entré dans l’assemblage. { $usual } est l’habitude. Est-ce mélangé ? Relever de nouveau.
row_gap = { $label } est dans chacune des { $lines } dernières lignes et pas dans celle-ci. Le saisir, ou dire que ce n’est pas relevé.
plates_moved = Plateaux { $plates }, et { BARE($last) } ({ $at }) ; aucun n’est noté mis ou ôté depuis. Regarder encore, ou noter le changement.
strength_row = Titre réel { BARE($now) } { pct } ; d’après les relevés d’avant ce serait { BARE($low) } à { BARE($high) } { pct }, et des vapeurs à { TYPED($vapour) } vont avec cela. Revoir l’aréomètre et la température.
ferment_row = Densité { TYPED($gravity) } : elle baissait de { BARE($before) } par jour, et à peine maintenant. Est-ce ce relevé, ou celui de la ligne d’avant ?
ferment_row-again = Densité { TYPED($gravity) } : elle baissait de { BARE($before) } par jour et avait ralenti, et maintenant { BARE($fell) } par jour. Regarder encore.
ferment_jump-row = Moût à { TYPED($temp) }, et { TYPED($usual) } au milieu des { $readings } derniers relevés. Regarder encore.
charge_low = { $charge } dans { $still }, qui tient { $holds } : si peu brûle à sec. Revoir la jauge.
charge_unlike = Matières à { TYPED($wash) }, et { TYPED($usual) } au milieu des charges d’avant sur cet alambic. Regarder encore.
feints_unread = Les alcools imparfaits de { $vessel } sont nommés, sans quantité. Saisir le volume et le titre.
feints_part = { TYPED($feints) } d’alcools imparfaits, et { TYPED($there) } sont dans { $vessel } selon le registre. Tout est-il entré ?
move_part = { BARE($moved) } sur { BARE($had) } { of-pure } dans { $vessel } partent, et { BARE($left) } { pure } restent. Tout est-il parti ? Voir le chiffre et son unité.
account_same =
    Un dépôt qui reste au compte de { $account ->
        [production] production
        [storage] stockage
       *[processing] traitement
    } n’en est pas un. À quel compte va-t-il ?
account_habit = Au compte de { $account } ; ce qui partait d’ici allait jusqu’ici à celui de { $usual }. Lequel est-ce ?
moved_elsewhere = Vers { $vessel } ; ce qui partait d’ici allait jusqu’ici vers { $usual }, qui a de la place. Quelle cuve est-ce ?
opening_weak = { BARE($now) } { pct } dans un fût : sous { BARE($least) } { pct } rien ne s’embouteille. Revoir l’aréomètre et son unité.
receiver_other = { $vessel } est ouvert pour la part { $part } ; la charge a prévu { $planned }. Lequel est ouvert maintenant ?
receiver_no_cut = { $vessel } est nommé comme ouvert, et { $event } n’est pas une coupe. Était-ce une coupe ?
receiver_twice = { $vessel } pour { $part } et { $other } d’une même chauffe. Quel récipient est-ce ?
receiver_role = { $vessel } pour { $part } ; il avait { $other } de la chauffe d’avant. Quel récipient est-ce ?
target_moved = Cible { TYPED($target) } ; l’eau ({ $at }) visait { TYPED($last) }. Laquelle est-ce ?
target_planned =
    Cible { TYPED($target) }, sous les { TYPED($planned) } prévus pour { $plan ->
        [none] l’assemblage
       *[other] { $plan }
    }. Regarder encore.
label_planned =
    Embouteillé à { TYPED($label) }, et { $plan ->
        [none] l’assemblage
       *[other] { $plan }
    } est prévu pour { TYPED($planned) }. Revoir les deux.
dump_planned =
    { $vessel } n’est pas dans le plan{ $plan ->
        [none] { "" }
       *[other] { " " }{ $plan }
    } de { $tank }. Est-ce ce fût, et cette cuve ?
dump_planned-amount =
    { $net } vidés, et { $wanted } prévus{ $plan ->
        [none] { "" }
       *[other] { " " }pour { $plan }
    }. Revoir les deux poids.
vat_joins = { $vessel } tient { BARE($held) } { of-pure } que le plan ne nomme pas. Est-ce cette cuve ?
vat_sum = Les prélèvements et { TYPED($water) } d’eau donnent { BARE($strength) } { pct }, pas { TYPED($target) }. Revoir les deux.
vat_full = Les prélèvements et l’eau font { $then }, et { $vessel } tient { $holds }. Est-ce cette cuve ?
cut_planned = Cœur coupé à { BARE($now) } { pct }, prévu à { BARE($planned) } { pct }. Le nez décide : dire pourquoi, ou revoir l’aréomètre.
wash_open = La fermentation de { $vessel } n’est pas close : ses matières ne sont pas mesurées. La clore d’abord, à l’heure de son dernier relevé.
water_unread = De l’eau est entrée dans { $vessel } ({ $at }), et personne n’a mesuré le résultat. Noter l’aréomètre et la jauge après le repos.
bottling_ungauged = { $vessel } n’est pas jaugé pour l’embouteillage : personne n’a dit sa cuvée et son étiquette. Le jauger d’abord. Ou est-ce une autre cuve ?
fraction_left =
    Jaugé : { $fraction } ; pas encore, pour { $run ->
        [none] cette chauffe
       *[other] { $run }
    } : { $missing }. Le jauger aussi, avec son heure.
fraction_left-moved =
    { $vessel } est vidé, et pour { $run ->
        [none] la chauffe
       *[other] { $run }
    } il n’y a pas de jaugeage : { $missing }. Le faire aussi.
run_not_ended =
    { $run ->
        [none] La chauffe
       *[other] { $run }
    } est jaugée jusqu’à la fin, et sa fin n’est pas notée. La noter avec son heure.
cleaned_full = { $vessel } est nettoyé, et le registre y a { $litres }. Est-ce ce contenant, ou une étape n’est-elle pas notée ?
added_again = Autant ({ $what }, même lot) est déjà entré dans { $vessel } ({ $at }). Est-ce ce contenant, ou noté deux fois ?
recask_rest = Vidé dans un autre fût, et { BARE($left) } { of-pure } de { $vessel } n’y sont pas ; le bois garde { BARE($kept) }. Est-ce un ouillage, ou le reste vient-il encore ?
lab_far = { $substance } { $found } : les laboratoires trouvent { BARE($low) } à { $high } dans l’alcool. Voir la virgule et la ligne.
stillage_strong = Vinasse à { BARE($now) } { pct }, au-dessus de { BARE($most) } { pct } : a-t-elle fini de couler ? Voir le chiffre, et de quelle part il s’agit.
receiver_full = { $vessel } tient { $held } et a de la place pour { $room } ; un cœur de { $usual } y venait avant. Un transfert n’est-il pas noté ?
counted_again = { $counted } sont déjà comptés ({ $at }). Est-ce un seul compte, noté deux fois ?
removed_otherwise = Vers { $to_whom } : { $why }. Les dernières marchandises pour eux : { $usual }. Lequel est-ce ?
document_again = Le document { $document } figure sur des marchandises déjà parties. Voir son numéro.
run_still_open =
    { $still } a déjà { $run ->
        [none] une chauffe
       *[other] { $run }
    } en cours depuis { $since }. Finir d’abord celle-là, ou rayer cette charge.
run_not_open = Aucune chauffe n’est en cours sur { $still } à cette heure. Noter la charge avec son heure, et ceci s’y range.
run_receiver_same = { $receiver } était déjà ouvert avant cette coupe. Quel récipient est ouvert maintenant ? Rectifier celle-ci, ou celle d’avant.
run_order-no_hearts_cut = La chauffe finit mais aucune coupe du cœur n’est notée ; le cœur a commencé { $began }. Noter la coupe avec son heure.
run_order-opened = L’alambic est ouvert mais sa chauffe n’est pas finie. Finir la chauffe avec son heure.
run_order-again = { CAPITAL($event) } est déjà noté ({ $at }). Lequel compte ?
run_order-late = { CAPITAL($event) } vient après { $other } ({ $at }). Voir les heures.
run_order-no_heads_cut = Le cœur est coupé mais la coupe des têtes n’est pas notée. La noter avec son heure et son récipient.
strength_slope = Le titre réel { BARE($now) } { pct } est au-dessus de { BARE($last) } { pct } ({ $at }) ; après la coupe des têtes il ne peut que baisser, sauf si plateaux ou refroidissement ont changé.
strength_impossible = Un titre réel { BARE($now) } { pct } ne se peut pas : aucun ne dépasse { $most }. Regarder encore.
strength_class =
    Titre réel { BARE($now) } { pct } ({ $what ->
        [none] fruit
       *[other] { $what }
    }) : { $limit ->
        [brandy_us_pct]
            au-dessus de { UNITS() ->
                [us] { APART($most) } proof
               *[metric] { BARE($most) } % (190 proof)
            } ce n’est pas un brandy aux États-Unis (27 CFR 5.145)
        [grain_us_pct]
            au-dessus de { UNITS() ->
                [us] { APART($most) } proof
               *[metric] { BARE($most) } % (160 proof)
            } ce n’est pas un rye whisky aux États-Unis (27 CFR 5.143)
       *[fruit_class_pct] à { BARE($most) } { pct } ou plus ce n’est pas une eau-de-vie de fruit dans l’UE (règlement 2019/787)
    }. Regarder encore.
distillate_warm = L’alcool coule à { TYPED($temp) }, au-dessus de { TYPED($warm) }. Plus d’eau au condenseur maintenant, et moins de chauffage jusqu’à ce qu’il coule frais : un alcool tiède dégage des vapeurs qui brûlent.
vapour_strength = Des vapeurs à { TYPED($vapour) } et un alcool à { BARE($strength) } { pct } ne vont pas ensemble : environ { TYPED($usual) } est l’habitude à ce titre. Revoir les deux.
fraction_receiver = { $vessel } pour { $fraction } : selon les coupes de cette chauffe c’était { $opened }. Lequel est-ce ?
fraction_uncut =
    Du brouillis d’une chauffe avec coupes{ $run ->
        [none] { "" }
       *[other] , { $run }
    }. Têtes, cœur ou queues ?
fraction_strength = La fraction { $fraction } a { BARE($now) } { pct }, { BARE($ran) } { pct } en moyenne au coffre. Revoir l’aréomètre, la température et le reste.
glass_habit = { $strength } à { $temp } est saisi comme corrigé, et { $vessel } était lu à l’aréomètre jusqu’ici. Si c’est ce que montre l’aréomètre, le réel est { $true }. Lequel est-ce ?
not_whole = { $label } { $typed } : cela se compte en entiers. Regarder encore.
unit_odd = { $label } est saisi en { $typed }, à côté de { $other } dans la même écriture. Quelle unité a été lue ?
late-same_hour = Saisi { $after } après le relevé, à la même heure. Voir le jour.
flow_jump = Débit { $flow }, { $usual } au milieu des { $readings } derniers relevés. Regarder encore, ou noter ce qui a changé.
run_order-no_first_drop = Les têtes sont coupées mais la première goutte n’est pas notée, comme elle l’était à la chauffe d’avant. La noter avec son heure.
gauged_empty = Le registre n’a rien dans { $vessel }, et { BARE($pure) } { of-pure } y sont jaugés. Est-ce le bon contenant ? Si oui, noter son remplissage.
distilled_off = Distillé à { $said }, et { BARE($now) } { pct } dans le récipient : il y est aussi fort qu’à la sortie de l’alambic. Revoir les deux.
lab_off = Le laboratoire a trouvé { $found }, le registre a { BARE($held) } { pct } dans { $vessel }. Voir le chiffre, et de quel contenant est l’échantillon.
dose_off = { $amount } ({ $what }) pour { $mash } de moût ; { BARE($low) } à { $high } est l’habitude pour autant. Voir le chiffre et son unité.
tare_share = La tare fait { $share } du poids brut, et { $usual } à l’apport d’avant. Revoir les deux.
tare_share-first = La tare fait { $share } du poids brut, plus de { $most }. Revoir les deux.
sugar_unlike = Sucre { $sugar }, et { $last } à l’apport d’avant du même fruit. Regarder encore.
place_from = { $vessel } est déplacé depuis { $place } ; selon le registre il est à { $booked }. Est-ce ce contenant ?
receiver_held = { $vessel } tient { BARE($held) } { of-pure } selon le registre ; jusqu’ici il était vidé avant chaque chauffe. Noter où c’est allé.
remnant_off = { $remnant } avant la collecte, { $booked } dans { $vessel } selon le registre. Regarder encore, et chercher un transfert non noté.
remnant_off-strength = Un reste à { BARE($now) } { pct }, { BARE($held) } { pct } dans { $vessel } selon le registre. Regarder encore.
run_ungauged =
    De la chauffe d’avant{ $run ->
        [none] { "" }
       *[other] , { $run },
    } il n’y a pas de jaugeage ({ $fraction }) : { BARE($left) } { of-pure } compteraient comme perte. Jauger d’abord.
run_balance = { run-sums } non justifiés.{ run-stillage } D’habitude ici : { BARE($low) } à { $high }.
run_balance-gain = { run-sums } de plus qu’il n’en est entré.{ run-stillage } Voir le titre des matières, les jauges et les restes.
strip_balance = { run-sums } non justifiés.{ run-stillage } Le brouillis porte { $carried } des matières ; { BARE($low) } à { $high } est l’habitude.
strip_balance-gain = { run-sums } de plus qu’il n’en est entré.{ run-stillage } Voir le titre des matières, les jauges et les restes.
run-sums = Sortis { BARE($out) }, entrés { BARE($in) } : { BARE($off) } { pure } ({ $share })
run-stillage =
    { $stillage ->
        [read] { "" }
       *[other] { " " }Vinasse comptée à { BARE($stillage) } { pct }.
    }
run_drift = { $now } de la charge non justifiés, et { $middle } au milieu des { $runs } chauffes d’avant : au-dessus de { $high } chauffe après chauffe. Voir le condenseur, les joints et le titre des matières.
fraction_again =
    La fraction { $fraction } de { $run ->
        [none] cette chauffe
       *[other] { $run }
    } est déjà jaugée dans ce contenant ({ $at }) : { BARE($pure) } { pure }. Est-ce le même jaugeage, ou une autre chauffe ?
fraction_twice =
    Les alcools imparfaits de { $vessel } sont déjà allés dans { $run ->
        [none] la chauffe ({ $at })
       *[other] { $run }
    }. Quelle chauffe les a eus ?
fraction_twice-short = { BARE($feints) } { pure } d’alcools imparfaits de { $vessel }, { BARE($booked) } { pure-sign } dedans selon le registre. Une autre chauffe les a-t-elle eus, ou son jaugeage reste-t-il à noter ?
flow_sum = Débit fois minutes donne { $flowed } pour { $fraction }, le récipient { $got } : { $off } { more-or-less }, où { $most } est permis. Une coupe notée tard, ou un récipient changé tard ?
dip_flow = Débit fois minutes donne { $flowed } depuis l’ouverture de ce récipient, la jauge { $dipped } : { $off } { more-or-less } dedans, où { $most } est permis. Un autre récipient est-il ouvert, ou la coupe notée à une autre minute ?
more-or-less =
    { $side ->
        [more] de plus
       *[less] de moins
    }
hearts_share =
    Le cœur fait { $now } de la charge ; { BARE($low) } à { $high } dans les { $runs } dernières chauffes ({ $what ->
        [none] cet alambic
       *[other] { $what }
    }). Les coupes valent un regard.
cask_grew = L’alcool pur { BARE($now) } { pure-sign } ({ BARE($strength) } { pct }) dépasse { BARE($last) } { pure-sign } ({ BARE($last_strength) } { pct }, { $at }){ moved-since } ; un fût ne peut pas gagner.
cask_grew-gross = Le brut { TYPED($gross) } dépasse { TYPED($last) } ({ $at }) ; il ne peut que baisser, sauf si le fût a été ouillé.
cask_grew-emptied = { BARE($now) } { pure } dans le fût avant qu’il soit vidé, { BARE($booked) } { pure-sign } selon le registre depuis { $since } ; un fût ne peut pas gagner. Voir poids et titre.
moved-since =
    { $way ->
        [added] { " " }avec { BARE($moved) } { pure-sign } ajoutés depuis
        [drawn] { " " }avec { BARE($moved) } { pure-sign } prélevés depuis
       *[none] { "" }
    }
cask_strength_slip =
    Le titre { BARE($now) } { pct } est { APART($off) } { points } { $side ->
        [below] au-dessous
       *[above] au-dessus
    } de { BARE($last) } { pct } ({ $at }) ; moins { UNITS() ->
        [us] de 2 points proof
       *[metric] d’un point
    } par an est l’habitude.{ $hint ->
        [none] { "" }
       *[other] { " " }{ $hint }
    }
slip-glass = Comme lecture d’aréomètre à { TYPED($temp) } c’est { BARE($true) } { pct } réel.
cask_loss =
    { $rate } perdus par an depuis { $since }{ $whole ->
        [none] { "" }
       *[other] { " " }({ $whole } par an depuis son remplissage)
    } : { BARE($then) } { of-pure } alors{ moved-since }, { BARE($now) } { pure-sign } maintenant. { $others } { $end }
lost-leak = Son titre est habituel ({ APART($drift) } { points } par an) : une fuite ? Voir cercles, fonds, bonde et le sol.
lost-odd_too = Son titre aussi est étrange : est-ce le bon fût ? Le peser et le relever de nouveau.
lost-by_size =
    Les fûts de cette taille perdent { $size ->
        [small] 5 à 8
       *[large] 2 à 4
    } %.
lost-by_others = Des { $casks } fûts les plus semblables, la plupart ont perdu { BARE($low) } à { $high }.
lost-by_all = Des { $casks } fûts les plus semblables, la plupart ont perdu environ { $lost }.
cask_life = Selon le registre { BARE($booked) } depuis { $since }, dans le fût { BARE($now) } : { BARE($gone) } { pure } ({ $share }) disparus. Une fuite ? Voir le sol et les douelles ; le noter en perte.
cask_drift =
    Le titre est passé de { BARE($last) } à { BARE($now) } { pct } ({ APART($drift) } { points } par an) ; dans un lieu { $place ->
        [damp] humide (humidité { $humidity }) l’alcool faiblit
       *[dry] sec (humidité { $humidity }) l’alcool se renforce
    }. Bon fût, bonne place ?
fill_level =
    { $litres } dans { $cask }, { $share } de ce qu’il tient. { $casks ->
        [none] Un fût se remplit à { $usual } au moins.
       *[other] Les { $casks } fûts les plus semblables étaient remplis à environ { $usual }.
    } Voir la balance et l’unité, et si c’est ce fût.
cask_earlier = { BARE($odd) } { pct } et { BARE($odd_pure) } { of-pure } ({ $at }) sont seuls : { BARE($before) } et { BARE($before_pure) } avant, { BARE($now) } et { BARE($now_pure) } maintenant. Revoir cette écriture-là ; celle-ci va avec toutes les autres.
gauge_earlier = { BARE($odd) } { pct } ({ $at }) restent seuls : { BARE($before) } avant et { BARE($now) } maintenant. Revoir cette écriture-là ; celle-ci va avec toutes les autres.
cask_unlike =
    Le titre est { APART($off) } { points } { $side ->
        [below] au-dessous
       *[above] au-dessus
    } de { BARE($last) } { pct } ({ $at }) ; des { $casks } fûts les plus semblables, la plupart ont bougé de { APART($usual) } par an. Relever de nouveau.
tare_off = { $cask } pèse { TYPED($tare) } vide ; { TYPED($listed) } est inscrit. Voir la balance, et si c’est ce fût.
soakage = Vide { TYPED($empty) }, ancienne tare { TYPED($tare) } : { $kept } gardés, où un fût de cette taille garde { BARE($low) } à { $high }. Est-il égoutté ? Voir la tare.
soakage-light = Vide { TYPED($empty) } est sous l’ancienne tare { TYPED($tare) } ; du bois qui a tenu de l’alcool pèse { BARE($low) } à { $high } de plus. Balance ou tare est fausse.
places_swapped = { $vessel } était à { $place } et { $other } à { $booked } : ils ont changé de place, rien ne manque. Si c’est ainsi, le maintenir, et le registre les met ainsi.
place_differs =
    { $vessel } était à { $place } ; { $booked ->
        [none] le registre n’a pas de place pour lui
       *[other] le registre l’a à { $booked }
    }. S’il est là, le maintenir. Compter aussi ce qui est là-bas.
cask_missing =
    { $vessel } n’a pas été trouvé{ $booked ->
        [none] { "" }
       *[other] , { BARE($booked) } { of-pure } selon le registre
    }. Le chercher maintenant. S’il a disparu, noter la perte et la signaler.
not_in_book =
    Pas au registre : « { $label } »{ $place ->
        [none] { "" }
       *[other] { " " }à { $place }
    }. Le peser, trouver ses papiers, et l’ajouter ; en chercher un que le registre a et que personne n’a trouvé.
reduce_target =
    { BARE($now) } { pct } mesurés, { BARE($target) } { pct } voulus : { APART($off) } { points } { $side ->
        [strong] trop fort.{ reduce-water }
       *[weak] trop faible. Il faut de l’alcool ; l’eau ne ressort pas.
    }{ $balance ->
        [none] { "" }
       *[other] { " " }{ $balance }
    }
reduce-water =
    { $water ->
        [none] { "" }
       *[other] { " " }En poids, { $water } d’eau de plus.
    }
reduced-dip = { reduced-has } : revoir la jauge.
reduced-no_loss = { reduced-has } : pas de perte.
reduced-shrinks = { $before } et { $water } d’eau font { $dip }, pas { BARE($sum) } : le mélange se contracte. { reduced-has } : pas de perte.
reduced-has = Alcool pur { BARE($pure) } { pure-sign }, { BARE($booked) } { pure-sign } selon le registre
contraction_forgotten = { $water } d’eau est ce que demanderaient les seuls volumes. Les volumes ne s’additionnent pas : il y aura { $volume }, pas { BARE($sum) }, à { BARE($strength) } { pct }. Pour { BARE($target) } { pct } il en faut { $needed } : { $more } de plus. L’alcool pur reste ce qu’il était.
filter_loss = { filter-sums } gardés par filtre et tuyau. D’habitude : 0,3 à 1 %. Voir les plaques, le fond et les deux jauges.
filter_gain = { filter-sums } de plus qu’il n’en est entré. Un filtre ne fait pas d’alcool : revoir les deux jauges et les titres.
filter-sums = Avant { BARE($before) }, après { BARE($after) } : { BARE($off) } { pure } ({ $share })
filter_before = { BARE($before) } { pure } dans { $vessel } avant le filtre, { BARE($booked) } { pure-sign } selon le registre. Revoir la jauge d’avant, puis chercher un transfert non noté.
bottling_balance = { bottling-sums } non justifiés. D’habitude : 0,3 à 1 %. Recompter bouteilles et cartons.
bottling_gain = { bottling-sums } de plus que la cuve ne tenait. Voir le compte, la taille des bouteilles et le jaugeage de la cuve.
bottling-sums = Cuve { BARE($tank) }, bouteilles { BARE($bottles) }, fond et ligne { BARE($line) } : { BARE($off) } { pure } ({ $share })
label_strength =
    La cuve est à { BARE($tank) } { pct }, l’étiquette dit { BARE($label) } { pct } : { APART($off) } { points } { $side ->
        [above] au-dessus
       *[below] au-dessous
    }. Au titre étiqueté les bouteilles tiendraient { BARE($by_label) } { pure }, par le jaugeage de la cuve { BARE($by_tank) } { pure-sign }.
label_strength-before = { BARE($tank) } { pct } dans la cuve, { BARE($label) } { pct } sur l’étiquette : { APART($off) } { points } d’écart, où { APART($most) } est permis. Rectifier le titre ou l’étiquette avant d’embouteiller.
label_strength-bottles = { BARE($found) } { pct } dans les bouteilles, { BARE($label) } { pct } sur l’étiquette. Arrêter la ligne, mélanger la cuve et relever de nouveau.
fill_off-least = { $found } dans la moins remplie ; à cette taille { $least } est le moins ({ fill-law }). { fill-set }
fill_off-most = { $found } dans la plus remplie ; à cette taille { $most } est le plus ({ fill-law }). { fill-set }
fill_mean = { $mean } en moyenne : une cuvée ne peut être sous son étiquette en moyenne (directive 76/211/CEE, de mémoire). { fill-set }
fill-law =
    { $place ->
        [US] 27 CFR 19.356
       *[EU] directive 76/211/CEE, de mémoire
    }
fill-set = Régler la remplisseuse, et revoir les bouteilles depuis le dernier contrôle.
case_count =
    { $cases } cartons de { $per_case } font { $in_cases }, avec { $library } pour l’échantillothèque { $together } ; { $good } bonnes bouteilles ont été comptées : { $off } { $side ->
        [many] de trop
       *[few] de moins
    }. Recompter cartons et bouteilles.
bottled_low = { BARE($label) } { pct } sur l’étiquette. { $law } { law-caution }
barrelled_high = { BARE($strength) } { pct } à la mise en fût. { $law } { law-caution }
law-caution = Une note, pas un avis juridique : lire le texte en vigueur, et demander à qui le connaît.
law-bottled-at_least = { law-subject } : embouteillage à { law-strength } ou plus{ law-source }
law-distilled-below = { law-subject } : distillation à moins de { law-strength }{ law-source }
law-distilled-at_most = { law-subject } : distillation à { law-strength } ou moins{ law-source }
law-distilled-at_least = { law-subject } : distillation à { law-strength } ou plus{ law-source }
law-barrelled-at_most = { law-subject } : mise en fût à { law-strength } ou moins{ law-source }
law-aged = { law-subject } : sous bois { $value } ou plus{ law-source }
law-strength =
    { UNITS() ->
        [us] { APART($value) } proof
       *[metric] { $value }
    }
law-subject = { CAPITAL($called) } ({ $place })
law-source =
    { $note ->
        [none] { "" }
       *[other] , { $note }
    } ({ $source }{ $known ->
        [read] { "" }
       *[memory] , de mémoire
    }).
law-spirit-geist = Geist
law-spirit-beer_spirit = eau-de-vie de bière
law-spirit-brandy = brandy
law-spirit-cider_or_perry_spirit = eau-de-vie de cidre ou de poiré
law-spirit-fruit_marc_spirit = eau-de-vie de marc de fruits
law-spirit-fruit_spirit = eau-de-vie de fruit
law-spirit-grape_brandy = brandy de raisin
law-spirit-grape_marc_spirit = eau-de-vie de marc de raisin
law-spirit-honey_spirit = eau-de-vie de miel
law-spirit-lees_spirit = eau-de-vie de lies
law-spirit-neutral_spirits = alcools neutres
law-spirit-raisin_spirit = eau-de-vie de raisin sec
law-spirit-rye_whisky = rye whisky
law-spirit-spirit_drink = boisson spiritueuse
law-spirit-spirit_of_macerated_fruit = eau-de-vie de fruits macérés
law-spirit-straight_whisky = straight whisky
law-spirit-whisky = whisky
law-spirit-wine_spirit = eau-de-vie de vin
law-note-charred_oak =
    { UNITS() ->
        [us] 62,5 % vol
       *[metric] 125 proof
    } ; en chêne neuf bousiné
law-note-160_proof =
    { UNITS() ->
        [us] 80 % vol
       *[metric] 160 proof
    }
law-note-190_proof =
    { UNITS() ->
        [us] 95 % vol
       *[metric] 190 proof
    }
law-note-80_proof =
    { UNITS() ->
        [us] 40 % vol
       *[metric] 80 proof
    }
law-note-before_caramel = avant que le caramel puisse ajuster sa couleur
law-note-casks_700 = en fûts de 700 L au plus
law-note-small_oak = en fûts de chêne de moins de 1000 L
law-note-large_oak = en récipients de chêne de 1000 L ou plus
law-note-immature_brandy = sous chêne ; plus jeune, c’est un immature brandy. Les autres brandys de fruit n’y ont pas de minimum
law-note-straight = pour porter le nom de straight
lab_over =
    { lab-result } est { $sense ->
        [at_least] au-dessous de la
       *[at_most] au-dessus de la
    } { lab-law }. { $sort ->
        [target] Une cible n’est pas une limite : demander à qui connaît la loi ce qu’elle vous demande.
       *[other] Ne pas embouteiller ni vendre là-dessus : demander au laboratoire, et à qui connaît la loi.
    } { lab-caution }
lab_not_safely =
    { lab-result } n’est pas sûrement { $sense ->
        [at_least] au-dessus de la { lab-law } : un autre laboratoire peut ne trouver que { BARE($at_worst) }
       *[at_most] au-dessous de la { lab-law } : un autre laboratoire peut trouver jusqu’à { BARE($at_worst) }
    }. Le faire analyser de nouveau avant de s’y fier. { lab-caution }
lab_under =
    { lab-result } est { $sense ->
        [at_least] au-dessus de la { lab-law } ; un autre laboratoire peut ne trouver que { BARE($at_worst) }
       *[at_most] au-dessous de la { lab-law } ; un autre laboratoire peut trouver jusqu’à { BARE($at_worst) }
    }. Cela ne parle que de l’échantillon.
lab_strength = { $substance } est imprimé par litre ou kilogramme de boisson ; la limite est en alcool pur. Saisir le titre réel du bulletin.
lab-result =
    { $below ->
        [yes] { $substance }, non trouvé par une méthode qui commence à { $found },
       *[no] { $substance } { $found }
    }
lab-law =
    { $sort ->
        [target] cible
        [action] valeur d’action
       *[limit] limite
    } de { BARE($limit) } pour { $called } ({ $place }, { $source })
lab-caution = Le bulletin d’un laboratoire accrédité et votre loi locale décident, pas ce registre.
unknown_bottling =
    Aucun embouteillage du registre ne s’appelle { $batch }{ $case ->
        [none] { "" }
       *[other] { " " }ni ne contient le carton { $case }
    }. Voir le numéro de lot, ou remettre d’abord la clôture d’embouteillage.
unknown_bottling-several = { $bottlings } embouteillages répondent à { $batch }. Saisir aussi le premier carton, comme il est sur le carton.
bottling-named =
    { $bottling ->
        [none] L’embouteillage
       *[other] { $bottling }
    }
more_than_bottled = { bottling-named } : { $good } embouteillées, { $gone } parties, { $on_hand } présentes selon le registre ; { $now } maintenant font { $more } de plus qu’il n’y en a. Les compter, et chercher une sortie notée deux fois.
more_than_bottled-back = { bottling-named } : { $good } embouteillées, { $on_hand } présentes selon le registre ; { $back } ne peuvent toutes revenir. Est-ce cette cuvée ?
other_case = Le carton { $case } n’est pas de cet embouteillage : il a { $first } à { $last }. Regarder encore le carton.
case_numbers = Les cartons { $first } à { $last } font { $cases } ; { $typed } sont saisis. Lequel est juste ?
case_gone = Le carton { $case } est déjà parti selon le registre. Cette sortie a-t-elle été notée deux fois ? Sinon voir les numéros.
case_gone-several = Les cartons { $first } à { $last } sont déjà partis selon le registre. Cette sortie a-t-elle été notée deux fois ? Sinon voir les numéros.
bottles_short = { $on_hand } bouteilles présentes selon le registre, { $counted } comptées : il en manque { $off }. Recompter, puis chercher une sortie non notée. Un manquant inexpliqué d’alcool embouteillé est taxé aux États-Unis (27 CFR 19.465).
bottles_over = { $on_hand } bouteilles présentes selon le registre, { $counted } comptées : { $off } de plus. Recompter, puis chercher une sortie non notée.
transit_loss = { transit-sums } perdus en route. Au-dessus de { $most } c’est à déclarer (27 CFR 19.462). Voir les scellés et rejauger, puis le déclarer.
transit_gain = { transit-sums } de plus que ne disent les papiers. Voir titre, température et ce qui était avant dans le contenant.
transit-sums = Envoyés { BARE($sent) }, reçus { BARE($received) } : { BARE($off) } { pure } ({ $share })
goods_short = { $short } bouteilles sur { $bottles } manquaient ou étaient cassées. Les recompter, le noter sur les papiers, et prévenir l’expéditeur : des droits peuvent être dus sur ce qui manque.
seals_broken = Les scellés n’étaient pas intacts. Mettre le chargement à part, le jauger, et prévenir maintenant l’expéditeur et l’autorité.
vat_draws = « { $part } » ne nomme pas de contenant avec un poids. Écrire repère et kilogrammes, comme C001-Z 153.7.
vat_vessel = Aucun contenant { $mark } n’est au registre. Regarder encore le repère.
vat_short = { $planned } prévus de { $vessel }, { $booked } selon le registre. Refaire le plan.
tasting_named = Une dégustation { $name } est déjà au registre. Donner à celle-ci un autre nom.
tasting_part = « { $part } » ne peut être lu. L’écrire comme le montre l’aide à côté de la case.
tasting_vessel = Aucun contenant { $mark } n’est au registre, et c’est un échantillon de cette dégustation. Regarder encore le repère.
tasting_heads = { $vessel } tient des têtes. Les têtes ne se dégustent jamais : le retirer, et jeter ce qui a été versé.
tasting_glasses = { $person } a une série qui n’est pas de { $wanted } verres. Tirer les codes de nouveau.
tasting_unknown = Le registre n’a pas de dégustation { $name }. Voir son nom sur la feuille de service.
tasting_after = La dégustation { $name } était ouverte avant cette réponse, qui ne compte donc pas. L’horloge du téléphone était-elle juste ?
tasting_taster = { $person } n’est pas dégustateur de { $name }, ceci ne compte donc pas. Qui a dégusté ?
tasting_set = { $person } n’a pas de série { $set }, ceci ne compte donc pas. Voir la feuille de service.
tasting_twice = { $person } a déjà répondu à la série { $set }. La première réponse compte.
tasting_code = Aucun verre { $code } n’était dans cette série, la réponse ne compte donc pas. Voir les verres.
tasting_order = Un ordre nomme chacun des { $glasses } verres une fois. Celui-ci ne le fait pas, il ne compte donc pas.
tasting_again = La dégustation { $name } a déjà été ouverte. La première ouverture compte.
tasting_seal = Ce n’est pas la clé qui a scellé { $name }. L’ouvrir depuis sa page au bureau.
tasting_early = Ouverte avec { $came } réponses sur { $sets }. Les autres ne compteront pas.
tasting_cited = Aucune dégustation ouverte { $name } n’est au registre. Voir son nom, ou l’ouvrir d’abord.
floor-back = Retour
floor-check_bottles = Contrôler
floor-now = maintenant
floor-one_less = Un de moins
floor-glass = Aréomètre
floor-spirit = Alcool
floor-ferments = Fermentations
floor-readings_round = Tournée de relevés
floor-regauge_round = Tournée de rejaugeage
floor-tap_it_in_the = le toucher dans la liste
floor-all_places = Toutes les places
floor-scan_the_next = Scanner le suivant
floor-skip = Passer
floor-the_slate = L’ardoise
floor-as_casks_like_it = comme les fûts semblables
floor-stock_count = Inventaire
floor-gravity = Densité
floor-cases_to = cartons { $case_from } à { $case_to }
floor-another = un autre
floor-bottles = { $bottles } bouteilles
floor-not_in_the_book = Pas au registre
floor-volume = Volume
floor-scan = Scanner
floor-off = non
floor-on = oui
floor-true_strength = Titre réel
floor-best = meilleure
floor-waits_on_this_phone = , attend sur ce téléphone
floor-read = relevé
floor-heads = têtes { $heads_l }
floor-pinfirst-it_goes_into_the = Cela va dans les comptes
floor-checks-about_as_many_over = à peu près autant au-dessus qu’au-dessous (27 CFR 19.356)
floor-checks-100_on_average_76 = 100 en moyenne (76/211/CEE, de mémoire)
floor-line-bottling = Embouteillage
floor-line-the_line = la ligne
floor-line-fill_of_the_label = Remplissage, % de l’étiquette
floor-line-label = étiquette
floor-line-least = moins
floor-line-most = plus
floor-line-strength = Titre, { $unit }
floor-line-close_the_bottling = Clore l’embouteillage
floor-line-outside_what_may_be = Hors de ce qui est permis : régler la remplisseuse, et revoir les bouteilles depuis le dernier contrôle.
floor-view-the_line = La ligne
floor-view-fill_average = Remplissage moyen
floor-view-of_the_label_last = % de l’étiquette, dernier { $last }
floor-view-last_strength = Dernier titre
floor-view-average = moyenne { $mean } { $sign }
floor-view-tank_fills = Cuve pour
floor-view-of_at_most = de { $size_l }, au plus
floor-view-checks_over_under =
    { PLURAL($count) ->
        [one] { $count } contrôle
       *[other] { $count } contrôles
    }{ $spread } ; { $over } au-dessus, { $under } au-dessous de l’étiquette.
floor-view-spread = , étendue { $spread }
floor-view-next_check = Contrôle suivant
floor-view-the_first_take_bottles = Le premier. Prendre { $count } bouteilles de la ligne, les peser, lire leur titre.
floor-view-at_bottle = à la bouteille { $at_bottle }
floor-view-as_the_house_wants = comme le veut la maison
floor-view-bottles_filled = bouteilles remplies
floor-view-late = en retard
floor-view-next_check_in = Contrôle dans
floor-view-the_next_check_was = Le contrôle suivant était dû { $due_at }
floor-view-next_check_2 = Contrôle suivant { $due_at }
floor-view-about = environ
floor-view-or = ou
floor-view-every_min = , toutes les { $every_min } min
floor-view-line = Ligne
floor-view-type_the_bottles_filled = Saisir les bouteilles remplies à deux contrôles, et sa vitesse est ici.
floor-view-filled_the_next_count = { $filled } remplies. Le prochain compte donne la vitesse.
floor-view-an_hour = par heure
floor-view-ends_about = Finit vers
floor-view-to = , { $soonest } à { $latest }
floor-view-the_tank_is_through = La cuve est passée, d’après le compte.
floor-view-of_counted = { $filled } sur { $bottles } comptées{ $by }
floor-view-about_by_now = , environ { $expected } à présent
floor-view-cases_packed = Cartons faits
floor-view-one_more_than = Un de plus que
floor-view-bottles = { $per_case } bouteilles
floor-view-bottles_in_a_case = Bouteilles par carton, pour compter les cartons au toucher
floor-view-each_bottle_full = Chaque bouteille remplie à { $low } %{ $high }, { $words }.{ " " }
floor-view-or_more = { " " }ou plus
floor-view-to_2 = { " " }à { $high }
floor-view-strength_to_for_a = Titre { $low } à { $high } pour une étiquette à { $label_pct }.
floor-view-by_the_cases = { $so_far } d’après les cartons
floor-view-empty_bottle_with_closure = Bouteille vide avec bouchage, g
floor-view-bottle_full_g = Bouteille { $n }, pleine, g
floor-view-one_more_bottle = Une bouteille de plus
floor-view-labels_and_closures_right = Étiquettes et bouchage justes
floor-view-yes = oui
floor-view-no = non
floor-view-fill_by_hand_bottle = remplissage à la main, taille de bouteille, ce qui a été fait
floor-view-bottle_size = Taille de bouteille
floor-view-l = L
floor-view-done_if_wrong = Fait si faux
floor-view-g = g
floor-view-full = remplie à { $mean } %
floor-view-on_average_of = en moyenne de { $fills } : { $fill }. { $words }
floor-view-which_tank_runs_to = Quelle cuve alimente la ligne ?
floor-view-no_tank_has_spirit = Aucune cuve ne contient d’alcool, que ce téléphone sache. Jauger d’abord la cuve d’embouteillage.
floor-casks-casks = Fûts
floor-casks-cask_is = Le fût est
floor-casks-now = maintenant.
floor-card-tasted_of_10 = Dégusté { $tasted_at } : { $score } sur 10.
floor-card-gauges_of_this_fill = Jaugeages de ce contenu
floor-card-casks_like_it = { $count } fûts semblables
floor-card-such_a_size = une telle taille
floor-card-a_year = % par an
floor-card-lost_of_its_pure = { $name } a perdu { $share } % de son alcool pur par an ; { $like } perdent { $low } à { $high }.
floor-dial-of = { $words } sur { $high }
floor-due-closed_the_still_is = Close : l’alambic est attendu.
floor-due-ended_close_it_and = Finie : la clore, et réserver l’alambic.
floor-due-not_read_since_it = Pas relevé depuis son remplissage.
floor-due-casks_to_regauge = Fûts à rejauger
floor-due-never_gauged_in_this = Jamais jaugé dans ce contenu.
floor-due-casks_to_sample = Fûts à échantillonner
floor-due-never_sampled = Jamais échantillonné.
floor-due-casks_to_taste = Fûts à déguster
floor-due-never_tasted = Jamais dégusté.
floor-due-last = Dernier { $last }.
floor-due-every_months = { $title }, tous les { $months } mois
floor-due-check_due =
    { $title } : contrôle { $late ->
        [yes] était dû
       *[no] dû
    } { $date }.
floor-due-instruments = Instruments
floor-due-by_law = Par la loi
floor-due-the_three_reports_for = Les trois déclarations ({ $month }) sont dues pour le 15.
floor-due-the_quarter_ends_count = Le trimestre finit : compter les cuves de stockage.
floor-due-count_of_bottled_stock = Compte du stock embouteillé ; l’administration est avisée cinq jours ouvrables avant.
floor-round-of = { $done } sur { $cards }
floor-round-of_done = { $done } sur { $cards } faits
floor-round-another_of_round =
    { $noun ->
        [tank] Autre cuve
       *[cask] Autre fût
    }
floor-round-place = Place
floor-round-begin_a_new_round = Commencer une nouvelle tournée
floor-round-logged_another_reading_stands = Noté { $last }. Un autre relevé est à côté.
floor-round-log_it_next = Noter, suivant
floor-round-next_of_round =
    { $noun ->
        [tank] Cuve suivante
       *[cask] Fût suivant
    }
floor-round-is_not_on_this = { $mark } n’est pas de cette tournée : { $sort }.
floor-round-it_is_a = c’est : { $sort }
floor-round-it_holds_nothing_as = il ne contient rien, que le registre sache
floor-round-this_phone_knows_no = Ce téléphone ne connaît pas { $mark }. Le saisir sur sa propre page quand le téléphone aura eu du réseau.
floor-round-all_done =
    { $noun ->
        [tank] Les { $count } cuves sont toutes faites.
       *[cask] Les { $count } fûts sont tous faits.
    }
floor-round-none_to_go_to =
    { $noun ->
        [tank] Aucune cuve à visiter : aucune
       *[cask] Aucun fût à visiter : aucun
    } ne contient rien, que ce téléphone sache.
floor-says-ended_three_equal_gravities = Finie : trois densités égales depuis { $day }. Réserver l’alambic.
floor-says-not_moving_and_not = Ni mouvement ni fin. Voir température, acide et nutriment de levure.
floor-says-it_has_hardly_begun = Elle a à peine commencé à baisser : pas encore de jour.
floor-says-no_day_yet_it = Pas encore de jour : il faut quatre relevés.
floor-says-to = { " " }({ $low } à { $high })
floor-says-ends_about_near_three = Finit vers { $day }{ $span }, près de { $end_gravity }. Trois densités égales décident.
floor-says-much_at_a_usual = Beaucoup, à un titre habituel : une fuite ? Voir cercles, fonds, bonde et sol.
floor-says-the_weight_is_usual = Le poids est habituel, le titre étrange. Relire l’aréomètre.
floor-says-weight_and_strength_are = Poids et titre sont tous deux étranges. Est-ce le bon fût ?
floor-says-a_cask_cannot_gain = Un fût ne peut pas gagner. Repeser et relire.
floor-says-to_2 = { $low } à { $high }
floor-says-casks_like_it_compared = fûts semblables { $span } ({ $count } comparés)
floor-says-such_a_size = une telle taille { $span }
floor-says-first_gauge_of_this = Premier jaugeage de ce contenu, ou trop tôt pour un rythme ; { $like } % par an.
floor-says-a_year = par an ; { $like }.
floor-says-a_year_2 = par an ; { $like }. { $words }
floor-tasting-fruit = fruit
floor-tasting-stone = noyau
floor-tasting-almond = amande
floor-tasting-blossom = fleur
floor-tasting-spice = épice
floor-tasting-green = vert
floor-tasting-sharp = vif
floor-tasting-glue = colle
floor-tasting-smoke = fumée
floor-tasting-dust = poussière
floor-tasting-words_of_the_house = Mots de la maison
floor-tasting-words_to_tap = Mots à toucher
floor-tasting-take_off = ôter { $name }
floor-tasting-take_off_2 = ôter
floor-tasting-may_stay_empty = peut rester vide
floor-tasting-log = Noter : { $words }
floor-duelist-rounds = Tournées
floor-duelist-taste = Déguster
floor-ferments-mash = Moût
floor-ferments-last_read = Dernier relevé { $last }.
floor-ferments-not_read_yet = Pas encore relevé.
floor-counter-one_more = Un de plus
floor-counter-10_ten_more = +10, dix de plus
floor-counter-count = compter
floor-counter-keys = touches
floor-dress-or_type_it = ou le saisir
floor-dress-of_to = de { $case_from } à { $case_to }
floor-dress-from = { $cases } de { $dressed }
floor-dress-to = { $from } à { $to }
floor-dress-to_stand = { $to } restent
floor-dress-follows_the_last = suit le dernier
floor-dress-as_before = comme avant
floor-dress-of = { $cases } de { $per_case }
floor-dress-by_the_cases_of = selon les cartons de la ligne
floor-dress-vessels = { $count } contenants
floor-dress-as_the_book_has = comme le registre l’a
floor-dress-more_than_there_are = ; { $left } de plus qu’il n’y en a
floor-dress-left = ; reste { $per_case }
floor-round-bottled_goods = bouteilles
floor-round-elsewhere = ailleurs
floor-round-of_done_2 = { $done } sur { $items } faits
floor-round-none = Aucun
floor-round-empty = Vide
floor-round-what_says_it_on = Qu’est-il écrit dessus ?
floor-round-type_what_it_says = Saisir ce qui est écrit dessus.
floor-round-next_vessel = Contenant suivant
floor-round-this_round_has_no = Cette tournée n’a pas de { $mark }. S’il n’est pas du tout au registre, le dire sous « Un autre ».
floor-round-left = reste { $open }
floor-round-all_done_2 = tout est fait
floor-round-type_who_counted_name = Saisir qui a compté, nom et fonction.
floor-round-counts_on_slate =
    { PLURAL($count) ->
        [one] { $count } compte
       *[other] { $count } comptes
    } sur l’ardoise.
floor-roundview-where = Où
floor-roundview-one_place_after_another = Une place après l’autre. On ne dit pas ce que le registre attend ; les écarts sont à la fin, et vous signez ce que vous avez compté.
floor-roundview-nothing_to_count_as = Rien à compter, que ce téléphone sache : ni cuve, ni fût, ni bouteille sur ses fiches.
floor-roundview-of_counted = { $done } sur { $items } comptés
floor-roundview-left = reste { $done }
floor-roundview-another_or_the_end = Un autre, ou la fin
floor-roundview-in_this_round = Dans cette tournée
floor-roundview-to_the_differences = Voir les écarts
floor-roundview-cask = Fût
floor-roundview-it_should_stand_at = Il devrait être à
floor-roundview-the_book_has = Le registre n’a
floor-roundview-no_place = pas de place
floor-roundview-for_it = pour lui
floor-roundview-it_stands_elsewhere = Il est ailleurs
floor-roundview-type_the_place = saisir la place
floor-roundview-place_as_its_label = Place, comme dit son étiquette
floor-roundview-not_here = Pas ici
floor-roundview-it_is_here = Il est ici
floor-roundview-count = Compter
floor-roundview-by_weight_or_corrected = Au poids, ou corrigé
floor-roundview-and_a_remark = et une remarque
floor-roundview-counted_next = Compté, suivant
floor-roundview-what_it_says_on = Ce qui est écrit dessus
floor-roundview-where_it_stands = Où il est
floor-roundview-differences = Écarts
floor-roundview-differences_from_the_book = Écarts avec le registre
floor-roundview-as_the_book_has = Comme le registre l’a
floor-roundview-not_counted = Non compté
floor-roundview-sign = Signer
floor-roundview-counted_by_name_and = Compté par, nom et fonction
floor-roundview-each_count_goes_into = { $lead }Chaque compte va au registre comme il a été relevé, à sa propre minute. Un écart y reste une question jusqu’à ce que quelqu’un réponde.
floor-roundview-signed_under_penalties_of = Signé sous peine de parjure : vrai, exact et complet à ma connaissance (27 CFR 19.45, 19.623 ; lire le texte actuel).{ " " }
floor-roundview-nothing_is_counted_yet = Rien n’est encore compté.
floor-roundview-another_place = Une autre place
floor-roundview-go_on_counting = Continuer à compter
floor-roundview-sign_and_log =
    Signer et noter { PLURAL($count) ->
        [one] le compte
       *[other] { $count } comptes
    }
floor-roundview-count_again = Recompter
floor-roundview-nothing_where_it_should = Rien là où il devrait être. Le chercher aussitôt ; prévenir qui doit l’être.
floor-roundview-not_in_the_book = pas au registre
floor-roundview-at = { $litres } à { $strength_pct }
floor-roundview-at_2 = à { $place }
floor-roundview-here = ici
floor-roundview-book = registre { $bottles }
floor-roundview-book_2 = registre { $place }{ $lpa_l }
floor-roundview-book_3 = registre { $litres }{ $strength_pct }
floor-roundview-at_3 = { $litres } à{ " " }
floor-roundview-book_empty = vide au registre
floor-stock-loose = { $loose } à part
floor-stock-none_left = plus aucune
floor-aloud-degrees = degrés
floor-aloud-degrees_fahrenheit = degrés Fahrenheit
floor-aloud-percent = pour cent
floor-aloud-litres = litres
floor-aloud-kilos = kilos
floor-aloud-grams = grammes
floor-aloud-brix = brix
floor-aloud-gallons = gallons
floor-aloud-pounds = livres
floor-aloud-minus = moins{ " " }
floor-gloves-more_fields =
    { PLURAL($count) ->
        [one] { $count } champ de plus
       *[other] { $count } champs de plus
    }
floor-listening-the_microphone_is_not = Le micro n’est pas permis ici. Le permettre dans les réglages du navigateur pour ce site, ou saisir.
floor-listening-no_figure_was_heard = Aucun chiffre entendu. Le redire, ou le saisir.
floor-listening-heard_no_figure_say = Entendu « { $heard } » : pas un chiffre. Le redire, ou le saisir.
floor-listening-heard_but_this_box = Entendu « { $heard } », mais cette case prend { $symbol }.
floor-listening-or = { " " }ou{ " " }
floor-settings-of_this_phone_alone = de ce téléphone seul
floor-settings-voice_and_ear_are = Voix et oreille sont celles du téléphone : rien de ce qui est dit n’en sort.
floor-settings-its_icon_shows_how = Son icône montre combien d’écritures attendent, une fois sur l’écran d’accueil.
floor-settings-what_waits_is_handed = Ce qui attend se remet aussi après fermeture de l’application, dès qu’il y a du réseau.
floor-settings-gloves = Gants
floor-settings-larger_keys_fewer_boxes = grandes touches, moins de cases
floor-settings-buzz = Vibreur
floor-settings-when_it_is_logged = quand c’est noté, et pour une question
floor-settings-read_aloud = Lire à voix haute
floor-settings-figures_just_typed_and = chiffres juste saisis, et questions
floor-settings-gravity_1_031 = Densité : 1,031
floor-settings-speak_figures = Dicter les chiffres
floor-settings-into_the_box_your = dans la case ; votre toucher les note
floor-settings-fetch_the_language_for = Chercher la langue pour cela
floor-settings-it_is_on_this = Elle est maintenant sur ce téléphone.
floor-settings-it_could_not_be = Elle n’a pu être cherchée. Réessayer avec du réseau.
floor-note-cap_pushed_down = Chapeau enfoncé.
floor-note-cooling_is_on = Refroidissement en marche.
floor-note-smells_odd = Odeur étrange.
floor-note-read_it_first = Le relever d’abord.
floor-note-charged_not_heated = Chargé, pas chauffé.
floor-note-rinse_it_first = Le rincer d’abord.
floor-note-still_warm = Encore chaud.
floor-note-receivers_are_empty = Les récipients sont vides.
floor-note-weeps_a_little = Suinte un peu.
floor-note-bung_is_loose = La bonde a du jeu.
floor-note-do_not_move_it = Ne pas le déplacer.
floor-note-weigh_it_again = Repeser.
floor-note-it_rests_do_not = Il repose. Ne pas remuer.
floor-note-it_is_cloudy = C’est trouble.
floor-note-valve_is_shut = Vanne fermée.
floor-note-lid_is_off = Couvercle ôté.
floor-note-look_at_it_first = Le regarder d’abord.
floor-note-not_finished = Pas fini.
floor-note-cleaned = Nettoyé.
floor-note-out_of_order = En panne.
floor-note-all_as_usual = Tout comme d’habitude.
floor-note-ready_words = Mots tout prêts
floor-note-pin_it_to = Épingler à { $mark }
floor-note-leave_it_for_the = Laisser à l’équipe suivante
floor-note-from = Par { $name }.
floor-note-pinned_to = Épinglé à
floor-note-for_the_next_shift = Pour l’équipe suivante
floor-note-it_stands_under_today = C’est sous Aujourd’hui. { $from }
floor-note-pinned_to_2 = Épinglé à { $mark }
floor-note-whoever_opens_it_reads = Qui l’ouvre le lit. { $from }
floor-note-there_already = Déjà là
floor-note-pin_it_to_a = Épingler à un contenant
floor-note-heard_by = entendue par { $person }
floor-note-read_by = lu par { $person }
floor-note-look = Regarder
floor-note-listen = Écouter
floor-note-heard = Entendue
floor-note-read = Lue
floor-note-voice_note = Note vocale
floor-note-voice_note_seconds = Note vocale, { $seconds } s
floor-note-notes_to_read = Notes à lire
floor-note-read_them = Les lire
floor-note-notes = Notes
floor-note-not_read_yet = Pas encore lue
floor-note-all_read = Toutes les notes ont été lues.
floor-note-have_been_read = Déjà lues
floor-note-leave_a_note = Laisser une note
floor-note-no_microphone = Le micro n’est pas permis. Le permettre dans les réglages du navigateur, ou saisir la note.
floor-note-speak_it = La dicter
floor-note-stop = Arrêter, { $seconds } s
floor-note-recording = Enregistrement
floor-aim-target_as_its_label = Cible : comme dit son étiquette.
floor-aim-target_as_aimed_at = Cible : comme visé ici, { $date }.
floor-aim-target_as_last_in = Cible : comme la dernière fois dans { $name }, { $other }. Voir si c’est cette étiquette.
floor-picture-in_the_tank_and = { $litres } dans la cuve et { $kg } d’eau font { $dip20_l } à { $strength_pct } : { $shrinks_l } de moins que la somme.
floor-picture-at = { $dip20_l } à { $strength_pct }
floor-picture-less_than_the_sum = { $shrinks_l } de moins que la somme. Pas de perte.
floor-picture-of_water = { $kg } d’eau
floor-picture-by_the_can_at = { $can_l } au bidon à { $water_temp_c }
floor-picture-in_the_tank = { $litres } dans la cuve
floor-picture-it_takes = Elle prend { $most }.
floor-picture-would_be_too_much = { $over } seraient de trop : en transférer d’abord.
floor-picture-about_mixed = environ { $figure } mélangé
floor-picture-water = eau
floor-picture-spirit = alcool
floor-picture-water_at_spirit_at = Eau à { $water_temp_c }, alcool à { $temp_c }, mélangé environ { $figure } { $unit }, { $off } à { $off_2 } ; sans chaleur de mélange { $calm }.
floor-picture-target = cible { $target_pct }
floor-picture-sum = calcul { $sum_pct }
floor-picture-read = relevé { $read_pct }
floor-picture-target_by_the_sum = Cible { $target_pct }, selon le calcul { $sum_pct }, relevé { $read_pct } { $unit }.
floor-reduce-target = Cible
floor-reduce-spirit_is_at = L’alcool est à
floor-reduce-water_is_at = L’eau est à
floor-reduce-with_what_waits_here = , avec ce qui attend ici
floor-reduce-reduce = Réduire
floor-reduce-how_much_water = combien d’eau
floor-reduce-measured = Mesuré
floor-reduce-are_in = { $plan } sont dedans
floor-reduce-water_in = Eau versée
floor-view-what_it_should_be = Ce que cela doit être
floor-view-a_tenth_less = Un dixième de moins
floor-view-a_tenth_more = Un dixième de plus
floor-view-in_goes = En étapes
floor-view-or_the_plain_form = ou le formulaire simple
floor-view-in_how_many_goes = En combien d’étapes
floor-view-the_plain_form = Le formulaire simple
floor-view-type_the_strength_it = Saisir le titre voulu.
floor-view-at = à { $temp_c }
floor-view-of_water = { $unit } d’eau
floor-view-for = ± { $doubt_kg } pour ± { $at }
floor-view-what_the_tank_should = Ce que la cuve devrait montrer alors
floor-view-dip = Jauge, { $unit }
floor-view-as_wanted_no_water = Comme voulu : il ne faut pas d’eau.
floor-view-pour = Verser { $plan }{ $rest }
floor-view-first = { " " }d’abord.
floor-view-stir_let_it_stand = Remuer, laisser reposer jusqu’à ce que cela ne chauffe plus, relever{ $rest }. Un { $unit } fait { $per } { $one }.
floor-view-once_more = { " " }encore une fois
floor-view-then_the_rest = , puis le reste
floor-view-planned_by = Prévu par { $person }, { $planned } : { $name }, { $target_pct }{ $water }.
floor-view-with_of_water = { " " }avec { $water_kg } d’eau
floor-view-step_by_step = Pas à pas
floor-view-then_rest = { $water_kg }, puis repos
floor-view-mixing_warms_it_by = Le mélange chauffe d’environ { $warms_c } { $unit }. Laisser refroidir et reposer, un jour au moins, avant aréomètre et jauge.
floor-view-it_may_cloud_at = Il peut se troubler à ce titre, d’autant plus qu’il est froid. Aller doucement, laisser reposer, et filtrer à froid s’il le fait.
floor-view-a_long_way_down = C’est beaucoup d’un coup. Deux ou trois étapes avec un repos troublent moins.
floor-view-water_went_in = Eau entrée
floor-view-measured_after_the_rest = Mesuré après le repos
floor-view-another_minute_a_remark = autre minute, une remarque
floor-view-points = { $off_pct } points
floor-view-as_wanted = Comme voulu.
floor-view-too_weak_spirit_has = { $off } trop faible. Il faut de l’alcool ; l’eau ne ressort pas.
floor-view-too_strong_of_water = { $off } trop fort : { $trim_kg } d’eau de plus.
floor-view-the_dip_agrees_with = La jauge va avec le calcul.
floor-view-dip_off_sum =
    La jauge est { $litres } { $side ->
        [under] au-dessous
       *[over] au-dessus
    } du calcul : la revoir.
floor-view-true = { $measured_pct } réel.
floor-view-which_tank = Quelle cuve ?
floor-view-no_tank_has_spirit_2 = Aucune cuve ne contient d’alcool, que ce téléphone sache. Jauger d’abord la cuve.
floor-after-after_the_run = Après la chauffe
floor-after-this_phone_knows_no = Ce téléphone ne connaît aucune chauffe finie de cet alambic.
floor-after-the_balance_comes_when = Le bilan vient quand le cœur ou le brouillis est jaugé.
floor-after-balance = Bilan
floor-after-from_100 = { $amount } de 100 { $unit }
floor-after-less_than_60_of = Moins de 60 % du forfait : voir fruit, fermentation et bilan.
floor-after-more_than_one_and = Plus d’une fois et demie le forfait : voir les poids et les jaugeages.
floor-after-yield = Rendement
floor-after-of_wash_of_fruit = , { $per_100_l } de matières ; { $kg } de fruits pour sa part de la fermentation.
floor-after-official_flat_rate_for = Forfait officiel pour { $name }, de 100 L de moût : { $de_l } L en Allemagne{ $austria }. Les forfaits sont des moyennes prudentes, pas des buts.
floor-after-in_austria = , { $at_l } en Autriche
floor-after-charged = Chargé, { $sign }
floor-after-hearts = Cœur, { $sign }
floor-after-hearts_share = Part du cœur
floor-after-hearts_cut_at = Cœur coupé à, { $unit }
floor-after-took = Durée
floor-after-from_100_2 = De 100 { $unit }, { $sign }
floor-after-beside_the_runs_before = À côté des chauffes d’avant
floor-after-runs_side_by_side = Chauffes côte à côte
floor-after-best_run = Meilleure chauffe
floor-after-marked_as_the_best = Désignée meilleure chauffe ({ $what })
floor-after-by = par { $person }, { $best }{ $waiting }{ $why }.
floor-after-best_run_2 = Meilleure chauffe ?
floor-after-best_of_so_far = Meilleure ({ $what }) jusqu’ici : { $name }{ $why }.
floor-after-no_run_of_is = Aucune chauffe ({ $what }) n’est encore désignée.
floor-after-later_runs_are_drawn = Les chauffes suivantes se tracent sur la meilleure.
floor-after-why = Pourquoi
floor-after-mark_this_run_as = Désigner la meilleure
floor-balance-heads = têtes
floor-balance-stillage = vinasse
floor-balance-not_accounted_for = { $open } ({ $share }) non justifiés
floor-balance-more_than_went_in = { $open } ({ $share }) de plus qu’entrés
floor-balance-in_out_usual_is = Entrés { $charged }, sortis { $open } : { $rest }.{ $stillage_pct } D’habitude 0,5 à 2 %.
floor-balance-stillage_was_not_read = { " " }Vinasse non relevée : comptée à { $stillage_pct }.
floor-balance-in = entrés { $charged }
floor-balance-out = sortis { $open }
floor-balance-pure_alcohol_of_the = Alcool pur de la chauffe
floor-changes-that_could_not_be = Cela n’a pu être gardé. Le noter comme autre événement.
floor-curve-true_strength_over_pure = Titre réel selon l’alcool pur recueilli
floor-curve-l_pure_alcohol = L d’alcool pur
floor-curve-vapour_temperature_against_strength = Température des vapeurs selon le titre{ $name }
floor-curve-vapour_c = vapeurs °C
floor-curve-usual_for_this_still = habituel pour cet alambic
floor-curve-usual = habituel
floor-cutparts-i_switched_earlier = J’ai changé plus tôt
floor-cutparts-why_it_is_logged = Pourquoi c’est noté maintenant
floor-cutparts-hands_full = mains prises
floor-cutparts-both_times_and_the = Les deux heures et la raison restent lisibles.
floor-cutparts-switched_logged = changé { $at }, noté { $at_2 }
floor-cutparts-receiver_now_open = Récipient ouvert
floor-cutparts-another_receiver = Autre récipient
floor-cutparts-by_its_mark = par son repère
floor-cutparts-mark = Repère
floor-cutparts-a_label_at_the = Une étiquette au coffre se lit hors de la ligne, ou son repère se saisit.
floor-due-part_to =
    { $part ->
        [hearts] cœur
        [tails] queues
        [low_wines] brouillis
       *[heads] têtes
    } à { $strength }
floor-due-part_to_last_time =
    { $part ->
        [hearts] cœur
        [tails] queues
        [low_wines] brouillis
       *[heads] têtes
    } à { $strength } la dernière fois
floor-due-the_sums_for_it = Les calculs pour cela viennent sur ce téléphone dès qu’il atteint le registre.
floor-due-read_the_flow_with = Lire le débit à la cruche et à la montre, et cela dit quand.
floor-due-by_flow_times_minutes = { $litres } selon débit fois minutes.
floor-due-by_the_plan = { $words }, selon le plan
floor-due-next_cut = Prochaine coupe
floor-due-is_reached = { $words } : { $by } est atteint.
floor-due-nose_first = { $words } Le nez d’abord.
floor-due-about = { $words } { $near }environ { $minutes }
floor-due-is_near = est proche :{ " " }
floor-due-to = , { $low } à { $high }
floor-due-off_in_all_to = { $litres } coulés en tout, { $low } à { $high }
floor-due-without_earlier_runs = , sans chauffes d’avant
floor-due-then_together = ; { $part } alors { $strength_average_pct } ensemble
floor-due-strength_alone_the_nose = Le titre seul ; le nez décide.
floor-due-on_earlier_runs_of = Sur les chauffes d’avant de cet alambic { $kept } prévisions sur { $tried } tenaient la coupe.
floor-due-was_expected_about = { $words } était prévu vers { $at }.
floor-due-last_read = Dernier relevé { $at }.
floor-due-read_now_nose_first = Relever maintenant ; le nez d’abord.
floor-due-no_flow_and_no = Ni débit ni jauge encore : avec l’un ou l’autre, la feuille additionne ce qui a coulé.
floor-due-so_far = { $part } jusqu’ici { $litres }
floor-due-at_together = à { $strength } ensemble
floor-due-to_by_off_in = à { $until }, selon { $by } ; { $litres } coulés en tout
floor-due-flow_times_minutes = débit fois minutes
floor-due-dips = jauges
floor-due-dip_of_flow_times = Jauge de { $at } : { $got } ; débit fois minutes { $flowed }
floor-due-they_agree = { $both }. Elles concordent.
floor-due-less_or_more_in_receiver =
    { $both } : { $off } % { $side ->
        [less] de moins
       *[more] de plus
    } dans le récipient, où { $most } % est permis. Un autre récipient est-il ouvert, ou une coupe notée tard ?
floor-far-large = Grand
floor-far-for_two_metres = à deux mètres
floor-far-the_run_at_arms = La chauffe à bout de bras
floor-far-close = Fermer
floor-far-true = { $sign } réel
floor-far-no_strength_yet = pas encore de titre
floor-far-ago = , il y a { $last }
floor-far-next_reading = prochain relevé { $at }, { $at_2 }
floor-far-any_minute = imminent
floor-far-reached = atteint
floor-far-expected_before_now = prévu avant maintenant
floor-far-turn_to = passer : { $to }
floor-far-the_end = la fin
floor-far-in = { $what } dans
floor-far-any = toute
floor-far-minute = minute
floor-far-no_plan_and_no = Ni plan ni chauffe d’avant : le nez dit quand.
floor-far-is_reached = { $words } est atteint
floor-far-was_expected = était prévu { $at }
floor-far-between_and = entre { $low } et { $high }
floor-far-open_to = ouvert, { $low } à { $high }
floor-far-of_about = { $litres } sur environ { $all }
floor-far-without_earlier_runs = sans chauffes d’avant
floor-jug-in_s = { $jug } en { $took } s
floor-jug-the_jug_holds = La cruche tient
floor-jug-full = Pleine { $seconds }
floor-jug-start_the_watch = Lancer la montre
floor-jug-jug_and_watch = cruche et montre
floor-second-spirit_runs_at_above = L’alcool coule à { $temp }, au-dessus de { $warm_c }. Plus d’eau au condenseur maintenant, et moins de chauffage jusqu’à ce qu’il coule frais : un alcool tiède dégage des vapeurs qui brûlent.
floor-second-true_is_above_of = Le réel { $at } est au-dessus de { $true_strength } de { $last }. Après la coupe des têtes il ne fait que baisser, sauf si plateaux ou eau ont changé.
floor-second-vapour_and_spirit_of = Des vapeurs à { $vapour } et un alcool à { $at } ne vont pas ensemble : environ { $wanted } est l’habitude à ce titre sur cet alambic. Revoir les deux.
floor-sheet-by_alcohol = Par alcool
floor-sheet-by_time = Par temps
floor-sheet-vapour = Vapeurs
floor-sheet-the_curve_is_drawn = La courbe est tracée
floor-sheet-on_after_a_tap = oui, après un toucher
floor-sheet-plan = Plan :
floor-sheet-no_cut_plan_for = Pas encore de plan de coupe pour { $what } sur cet alambic.
floor-sheet-this_fruit = ce fruit
floor-sheet-change_the_plan = Changer le plan
floor-sheet-make_a_plan = Faire un plan
floor-sheet-sound_near_a_cut = Sonner avant une coupe
floor-sheet-hearts_to = cœur jusqu’à { $hearts_to_pct }
floor-sheet-tails_to = queues jusqu’à { $tails_to_pct }
floor-sheet-for_on_this_still = Pour { $what }, sur cet alambic. Le nez décide ; le plan rappelle.
floor-sheet-the_fruit_named_below = le fruit nommé ci-dessous
floor-hands-who_logs = Qui note
floor-hands-other = Autre
floor-hands-take_it = Prendre
floor-pane-vessels = Contenants
floor-places-stands_here = est ici
floor-places-and_more = et { $others } de plus
floor-places-free = libre
floor-tasting-set_of = série { $set_no } sur { $mine }
floor-tasting-your_answer_is_on = Votre réponse est sur l’ardoise.
floor-tasting-set = { $name }, série { $set_no }
floor-view-which_is_the_odd = Lequel est différent ?
floor-view-two_of_the_three = Deux des trois sont les mêmes.
floor-view-the_odd_one = le différent
floor-view-which_is_the_same = Lequel est le même que R ?
floor-view-r_stands_open_beside = R est connu, à côté des deux.
floor-view-the_same_as_r = le même que R
floor-view-which_has_more_of = Lequel en a plus ?
floor-view-this_one = celui-ci
floor-view-tap_them_in_order = Les toucher dans l’ordre, le premier d’abord.
floor-view-tap_again_to_take = Toucher encore pour en ôter un.
floor-view-guessing = deviné
floor-view-fairly = assez
floor-view-quite = très
floor-view-nose = nez
floor-view-mouth = bouche
floor-view-finish = finale
floor-view-hotter = plus chaud
floor-view-wood = bois
floor-view-softer = plus doux
floor-view-nose_first_a_small = Le nez d’abord, une petite gorgée, et cracher. De l’eau entre deux. Quatre séries au plus, puis repos ; personne ne conduit ni ne travaille à un alambic après.
floor-view-place = place { $code }
floor-view-taste_left_to_right = { $how } Goûter de gauche à droite, de l’eau entre deux. On peut revenir. Deviner est aussi une réponse.
floor-view-glasses_left_to_right = Verres, de gauche à droite
floor-view-how_sure = Quelle certitude ?
floor-view-what_gave_it_away = Qu’est-ce qui l’a trahi ? (au choix)
floor-view-the_codes_are_drawn = Les codes sont tirés à neuf pour chacun. Ce téléphone ne sait pas ce qu’ils tiennent.
floor-view-of_in_order = { $order } sur { $codes } dans l’ordre
floor-view-name_a_glass = Nommer un verre
floor-view-log = Noter : { $order }
floor-view-is = { $picked } est { $named }
floor-view-which_tasting_stands_before = Quelle dégustation est devant vous ?
floor-view-all_your_sets_are = Toutes vos séries ont leur réponse. N’en rien dire avant l’ouverture au bureau.
floor-view-no_glasses_wait_for = Aucun verre ne vous attend. Une dégustation se prépare au bureau ; ses codes viennent avec les prochaines fiches.
floor-ring-set_for = { $at } : réglé à { $at_2 }.
floor-ring-set_for_2 = Réglé à { $at }.
floor-ring-set_for_3 = réglé à { $at }{ $more }
floor-ring-more = { " " }· { $due } de plus
floor-ring-read = Relevé
floor-ring-min_more = { $minutes } min de plus
floor-ring-drop_the_reminder = Supprimer le rappel
floor-ring-drop = Supprimer
floor-show-next = Suivant
floor-show-reading = relevé
floor-show-remind_me = Me rappeler
floor-show-next_reading = prochain relevé
floor-show-reminders = Rappels
floor-show-due = dû
floor-show-when_is_to_be = Quand relever { $name } ?
floor-show-set_for = Réglé à
floor-show-min_after_each_reading = ; { $minutes } min après chaque relevé
floor-show-at = À
floor-show-set_it = Régler
floor-show-minutes_begin_anew_with = Les minutes repartent à chaque relevé.{ " " }
floor-show-no_reminder = Pas de rappel
floor-show-rings_while_cellarslate_is = Sonne tant que Cellarslate est ouvert sur ce téléphone.
floor-show-rings_while_cellarslate_is_2 = Sonne tant que Cellarslate est ouvert ; derrière d’autres applications le téléphone montre un avis.
floor-show-rings_while_cellarslate_is_3 = Sonne tant que Cellarslate est ouvert. Le téléphone demandera s’il peut aussi montrer un avis.
floor-times-in_h = Dans { $hour } h
floor-times-this_evening = Ce soir
floor-times-late_this_evening = Tard ce soir
floor-times-tomorrow_morning = Demain matin
floor-times-in = dans { $span }
floor-times-due_now = dû maintenant
floor-times-over = { $left } de retard
floor-times-yesterday = hier{ " " }
floor-times-tomorrow = demain{ " " }
floor-times-next_reading = Prochain relevé{ $name }
floor-times-of = { " " }de { $name }
floor-stand-as_it_stands = En l’état
floor-stand-pure_alcohol = Alcool pur
floor-stand-as_of = au { $date }
floor-stand-with_what_waits_here = avec ce qui attend ici
floor-stand-how_full_is_not = remplissage non connu
floor-stand-of_full = { " " }sur { $capacity_l }, plein à { $capacity_l_2 } %
floor-stand-between_and = , entre { $low } et { $high }
floor-stand-about = environ{ " " }
floor-stand-empty_by_the_book = Vide, selon le registre.
floor-stand-takes = Prend { $capacity_l }.
floor-stand-of = { $about }{ $litres } sur { $capacity_l }{ $since }
floor-stand-to = { $about }{ $low } à { $high }, { $about_2 }
floor-stand-now = maintenant{ " " }
floor-stand-by_its_weight = d’après son poids
floor-stand-fill_to_at_most = remplir à { $working_l } au plus
floor-stand-so_far_from_gravity = { $so_far } jusqu’ici, par la densité
floor-stand-goes_down_to = descend à { $target }
floor-stand-filled = rempli { $since }{ $use }
floor-stand-gravity = densité
floor-stand-end = fin
floor-stand-save_its_label = Enregistrer l’étiquette
floor-stand-pure_alcohol_gauge_by = Alcool pur, jaugeage par jaugeage
floor-camera-the_camera_works_only = La caméra ne marche qu’en https. Ouvrir le registre par son adresse https, ou saisir le repère.
floor-camera-this_browser_offers_no = Ce navigateur n’offre pas de caméra. Saisir le repère.
floor-camera-no_camera_was_found = Aucune caméra trouvée. Saisir le repère.
floor-camera-the_camera_is_not = La caméra n’est pas permise ici. La permettre dans les réglages du navigateur pour ce site, ou saisir le repère.
floor-camera-another_app_is_using = Une autre application utilise la caméra. La fermer et réessayer, ou saisir le repère.
floor-camera-the_camera_stopped_because = La caméra s’est arrêtée car la page était cachée. Toucher Scanner pour recommencer.
floor-camera-the_camera_stopped_tap = La caméra s’est arrêtée. Toucher Scanner pour recommencer, ou saisir le repère.
floor-camera-the_camera_did_not = La caméra n’a pas démarré. Réessayer, ou saisir le repère.
floor-decoder-the_label_reader_is = Le lecteur d’étiquettes n’est pas encore sur ce téléphone. Saisir le repère, ou scanner une fois là où il y a du réseau.
floor-decoder-this_browser_cannot_look = Ce navigateur ne peut pas regarder d’images. Saisir le repère.
floor-scanner-this_code_is_not = Ce code n’est pas l’un des nôtres. Scanner l’étiquette du contenant, ou saisir son repère.
floor-scanner-several_marks_are_in = Plusieurs repères sont en vue. S’approcher, pour n’en voir qu’un.
floor-scanner-hold_the_label_in = Tenir l’étiquette en vue.
floor-scanner-nothing_found_yet_go = Rien trouvé encore. S’approcher, incliner le téléphone contre le reflet, ou saisir le repère.
floor-phonekey-this_browser_keeps_no = Ce navigateur ne garde pas de clé, les écritures ne sont donc pas signées.
floor-unitlist-unit = Unité
floor-view-case_word =
    { PLURAL($count) ->
        [one] carton
       *[other] cartons
    }
floor-bottles_of =
    { PLURAL($count) ->
        [one] { $count } bouteille
       *[other] { $count } bouteilles
    }
floor-cases_of =
    { PLURAL($count) ->
        [one] { $count } carton
       *[other] { $count } cartons
    }
floor-roundview-bottles_off =
    { PLURAL($count) ->
        [one] { $off } bouteille
       *[other] { $off } bouteilles
    }
floor-roundview-missing = manquant
floor-roundview-elsewhere = ailleurs
floor-round-counts =
    { PLURAL($count) ->
        [one] { $count } compte
       *[other] { $count } comptes
    }
floor-sets =
    { PLURAL($count) ->
        [one] { $count } série
       *[other] { $count } séries
    }
floor-balance-wash = matières
floor-balance-feints = imparfaits
floor-balance-side_in = entrés
floor-balance-side_out = sortis
floor-forecast-no_charge = Trop peu pour dire : la charge de cette chauffe n’est pas notée. Noter litres et titre de la charge.
floor-forecast-few_readings =
    Trop peu pour dire : noter { $which ->
        [another] un autre relevé
       *[first] les premiers relevés
    } du jet.
floor-forecast-no_flow = Trop peu pour dire : noter le débit, ou jauger le récipient.
floor-forecast-odd_readings = Trop peu pour dire : les relevés montent et baissent. Relever de nouveau le jet.
floor-forecast-far = Trop peu pour dire : la coupe est encore loin. Un autre relevé aidera.
floor-forecast-wide = Trop peu pour dire : ce peut être à tout moment en { $width } minutes. Un autre relevé aidera.
floor-forecast-out_of_range = Pas de prévision à { $target } % vol : elle va de { $low } à { $high } % vol.
floor-forecast-past = Le jet a passé { $target } % vol.
floor-counter-count_of = Compter : { $label }
floor-listening-speak = Dicter le chiffre
floor-lasttime-receivers = Récipients comme la dernière fois
floor-pane-people = Personnes et contenants
floor-ring-reminder = Rappel
floor-file-save_it_again_on = L’enregistrer de nouveau sur le téléphone d’où il vient, ou le reprendre.
floor-file-this_file_is_too = Ce fichier est trop grand pour une ardoise. Choisir le fichier que Cellarslate a enregistré.
floor-file-this_file_is_damaged = Ce fichier est abîmé : sa somme de contrôle ne va pas. { $again }
floor-file-this_file_is_damaged_2 = Ce fichier est abîmé : il s’interrompt ou n’est pas une ardoise. { $again }
floor-file-this_file_is_no = Ce fichier n’est pas une ardoise. En choisir un nommé cellarslate-slate-….json.
floor-file-this_slate_was_saved = Cette ardoise vient d’un Cellarslate plus récent. Mettre d’abord ce téléphone à jour.
floor-file-this_file_is_damaged_3 = Ce fichier est abîmé : il manque des parties d’écritures. { $again }
floor-low_wines = brouillis
floor-enclosed-too_many = Une écriture prend { $most } images au plus. La noter, puis ajouter les autres à une autre.
floor-enclosed-with_this_entry = Images de cette écriture
floor-enclosed-picture_number = Image { $number }
floor-enclosed-take_off = Ôter : { $name }
floor-enclosed-keeping_it = Garde en cours
floor-enclosed-picture = Image
floor-enclosed-pictures = Images
floor-enclosed-on_the_slate = L’image est sur l’ardoise.
floor-enclosed-open_the_paper = Ouvrir le papier
floor-enclosed-on_this_phone = { "." } Sur ce téléphone ; elle se remet d’elle-même après son écriture.
floor-enclosed-not_in_the_book = { "." } Pas au registre : { $words }
floor-enclosed-too_large = Cette image dépasse { $most } Mo. La reprendre à la taille ordinaire de l’appareil.
floor-enclosed-no_picture = Ce téléphone ne peut lire cela comme image. La reprendre, avec l’appareil photo.
floor-enclosed-waiting =
    { PLURAL($count) ->
        [one] { $count } image ou note vocale attend
       *[other] { $count } images et notes vocales attendent
    } ici. Elles partent après les écritures, morceau par morceau.
floor-enclosed-refused =
    { PLURAL($count) ->
        [one] { $count } image
       *[other] { $count } images
    } que le registre ne peut garder ; ouvrir la ligne pour voir pourquoi.
floor-enclosed-not_reached = Le registre est hors d’atteinte d’ici.
floor-enclosed-no_room = Ce téléphone est presque plein, et la place restante est gardée pour les écritures. Noter sans l’image, ou remettre et libérer d’abord de la place.

### Only the desk reads what follows.

floor-manifest-description = Le carnet d’atelier de la distillerie, avec ou sans réseau.
floor-manifest-shot_today = Ce qui est dû aujourd’hui
floor-manifest-shot_run = Une chauffe, et quand couper
floor-manifest-shot_wide = La feuille de chauffe sur une tablette
floor-manifest-scan = Scanner une étiquette
floor-manifest-due = Ce qui est dû
floor-manifest-round = Tournée de relevés
floor-manifest-slate = L’ardoise
desk-languages-label = Langue
desk-you-language = Langue
desk-you-language-any = Celle du navigateur ou de la maison
desk-you-language-keep = Garder
desk-frame-floor = Atelier
desk-frame-sign_out = Quitter
desk-frame-to_its_doors = À ses portes
desk-frame-this_is_the_demo_nothing = C’est la démo : rien ici n’est réel. { $link }
desk-frame-name_a_folder_on_another = Nommer un dossier sur un autre disque
desk-frame-this_book_has_no_backups = Ce registre n’a pas encore de sauvegardes. { $link } ; elles viennent ensuite chaque jour d’elles-mêmes.
desk-frame-the_book_goes_on_with = { $unjudged } Le registre continue de lui-même ; les remises n’ont pas à attendre.
desk-frame-other_rules_have_judged_the =
    D’autres règles ont jugé le registre, et { $entries } { $entries ->
        [one] écriture en sort autrement
       *[other] écritures en sortent autrement
    } qu’avant. { $link }.
desk-common-look_at_it = La regarder
desk-common-look_at_them = Les regarder
desk-common-reason = Raison
desk-common-amend = Rectifier
desk-common-at = à { $strength_pct }
desk-common-bottled = Embouteillé
desk-common-blind_tastings = À l’aveugle
desk-common-plan_a_vat = Prévoir un assemblage
desk-common-vat = Assemblage
desk-common-by = Par
desk-common-vessels = Contenants
desk-common-batch = Cuvée
desk-common-last = Dernier
desk-common-state = État
desk-common-closed = clos
desk-common-under_way = en cours
desk-common-the_entry = L’écriture
desk-common-out_of = Hors de
desk-common-not_yet = pas encore
desk-common-water = Eau
desk-common-spirit = Alcool
desk-common-any = toute
desk-common-pure_alcohol = alcool pur
desk-common-at2 = { $what } à { $what2 }
desk-common-years = Ans
desk-common-none = aucun
desk-common-may = Peut
desk-common-vessel = Contenant
desk-common-lot = Lot
desk-common-place = Place
desk-common-pure_alcohol_l = Alcool pur, L
desk-common-proof_gal = Proof gal
desk-common-open = ouvert
desk-common-ended = fini
desk-common-trace = Traçabilité
desk-common-on_the_floor = À l’atelier
desk-common-holds = tient { $holding }
desk-common-answer = Réponse
desk-common-since = Depuis
desk-common-to = { $percent } à { $percent2 }
desk-common-on = Le
desk-common-show = Montrer
desk-common-what = Quoi
desk-common-from = De
desk-common-to2 = À
desk-common-when = Quand
desk-common-score = Note
desk-common-who = Qui
desk-common-casks = Fûts
desk-common-all = tous
desk-common-due = Dû
desk-common-cask = Fût
desk-common-holds2 = Tient
desk-common-loss_a_year = Perte, % par an
desk-common-not_known = non connu
desk-common-readings = Relevés
desk-common-print = Imprimer
desk-common-at3 = à { $bold }
desk-common-read_at = Relevé à
desk-common-gravity = Densité
desk-common-ferment = Fermentation
desk-common-set = Série
desk-common-read = Relevé
desk-common-ended2 = Fini
desk-common-none_yet = Aucun encore.
desk-common-keep = Garder
desk-common-which_vessels = Quels contenants
desk-common-sort = Sorte
desk-common-and_more = et { $count } de plus
desk-common-none2 = Aucun.
desk-common-remark = Remarque
desk-common-leave_it = Laisser
desk-common-entries = Écritures
desk-common-kind = Type
desk-common-book_no = N° registre
desk-common-phone = Téléphone
desk-common-asked = Demandé
desk-common-or = ou
desk-common-right = juste
desk-common-digest = Empreinte
desk-common-proof_gal2 = proof gal
desk-common-l_pure_alcohol = L d’alcool pur
desk-common-litres_of_pure_alcohol = Litres d’alcool pur
desk-common-proof_gallons = Proof gallons
desk-common-what_happened = Ce qui s’est passé
desk-common-cases = Cartons
desk-common-bottles = Bouteilles
desk-common-document = Document
desk-common-to3 = à { $case_to }
desk-common-bottling = Embouteillage
desk-common-odd = incomplet { $odd_case }
desk-common-of_l = de { $what } L
desk-common-bottled_goods = Bouteilles
desk-common-where_it_went = Où il est allé
desk-common-minute = Minute
desk-common-line = Ligne
desk-common-closed2 = Clos
desk-common-filled = Rempli
desk-common-all2 = Tous
desk-common-ranges = Plages
desk-common-access = Accès
desk-common-more = Plus
desk-common-how_phones_reach_this_book = Comment les téléphones atteignent ce registre
desk-common-change = Changer
desk-common-add = Ajouter
desk-common-entry = Écriture
desk-common-new_instrument = Nouvel instrument
desk-common-instruments = Instruments
desk-common-number = Nombre
desk-common-description = Description
desk-common-limits_of_the_checks = Limites des contrôles
desk-common-every_limit_is_the_checks = Chaque limite est celle du contrôle.
desk-common-customers_and_growers = Clients et producteurs
desk-common-from_a_spreadsheet = D’un tableur
desk-common-name = Nom
desk-common-people = Personnes
desk-common-new_person = Nouvelle personne
desk-common-phones = Téléphones
desk-common-last_heard = Dernier contact
desk-common-proof = Proof
desk-common-rules = Règles
desk-common-laboratory = Laboratoire
desk-common-log_a_certificate = Noter un bulletin
desk-common-litres_of_pure_alcohol_at = litres d’alcool pur à 20 °C
desk-common-account = Compte
desk-common-of_what_stood_at_its = ± de ce qui restait à sa fin
desk-common-the_period = La période
desk-common-of_its_lines = ± de ses lignes
desk-common-period = Période
desk-common-as_now_known = À ce jour
desk-common-as_now_known2 = à ce jour
desk-common-open_figures_may_still_change = Ouverte : les chiffres peuvent encore changer.
desk-common-periods = Périodes
desk-common-seasons = Campagnes
desk-common-records_the_law_asks_for = Registres que la loi demande
desk-common-proof_gallons2 = proof gallons
desk-common-germany = Allemagne
desk-common-proof_gal_from_100_lb = proof gal de 100 lb
desk-common-not_accounted_for = Non justifié
desk-common-runs = Chauffes
desk-common-yields = Rendements
desk-common-feints = Imparfaits
desk-common-fruit = Fruit
desk-common-standing_now = Présents maintenant
desk-common-still = Alambic
desk-common-why = Pourquoi
desk-common-n100_gal = 100 gal
desk-common-tasted_blind = Dégusté à l’aveugle :
desk-common-in = Dans
desk-common-run = Chauffe
desk-common-rows = Lignes
desk-common-mark = Repère
desk-common-look_it_over = La parcourir
desk-common-sheet = Feuille
desk-common-taken_back = annulé
desk-common-samples = Échantillons
desk-common-answers = Réponses
desk-common-what_was_found = Ce qui a été trouvé
desk-common-open_it = L’ouvrir
desk-common-bottled2 = embouteillé
desk-common-find_a_trace = Chercher une trace
desk-common-came_from = venait de
desk-common-case_or_lot_mark_batch = Carton ou numéro de lot, cuvée, contenant, chauffe ou livraison
desk-common-from2 = depuis { $name } : { $share }
desk-common-load_of_fruit = apport de fruits
desk-common-list_as_csv = Liste en CSV
desk-common-all_as_json = Tout en JSON
desk-common-stands_there_now = y est maintenant
desk-common-made_from_it = fait avec
desk-common-passed_through = passé par
desk-common-there_is_more_than_one = Il y a plus qu’une trace n’en peut suivre. Ce qui est montré tient, mais n’est pas tout : tracer à part une étape plus tardive.
desk-common-in_these_bottles = Dans ces bouteilles
desk-common-share_of_the_bottle = Part de la bouteille
desk-common-where_the_cases_went = Où sont allés les cartons
desk-common-share_of_it = Sa part
desk-common-not_fermented_out = non fermenté jusqu’au bout
desk-common-the_same_in_words = La même en mots
desk-common-new_vessel = Nouveau contenant
desk-common-mark_place_or_name = Repère, place ou nom
desk-common-no_vessels_here = Aucun contenant ici.
desk-common-to_the_floor = À l’atelier
desk-common-labels_to_hold_a_phone = Étiquettes pour le téléphone
desk-common-print_them_a4 = Les imprimer, A4
desk-common-to_the_doors = Aux portes
desk-common-no_site_has_handed_in = Aucun site n’a encore remis.
desk-common-unnamed = sans nom
desk-common-something = quelque chose
desk-common-a_run = chauffe
desk-common-a_bottling = embouteillage
desk-parts-it_was = C’était { $raw } { $unit }
desk-parts-it_stands = Maintenir
desk-parts-strike = Rayer
desk-parts-nothing_in_the_book = rien au registre
desk-blending-vats_planned = Assemblages prévus
desk-blending-none_yet_plan_one_pick = Aucun encore. En prévoir un : choisir des fûts, dire ce que ce doit être.
desk-blending-tank = Cuve
desk-blending-planned = Prévu
desk-blending-water = Eau, { $what }
desk-blending-volume = Volume, { $what }
desk-blending-no_batch_yet_a_bottling = Pas encore de cuvée. Un jaugeage de cuve d’embouteillage en commence une.
desk-blending-tank_fills = Cuve pour
desk-blending-blending = Assemblage
desk-blending-by_papers = , selon papiers
desk-blending-kept_the_tanks_card_shows = Gardé. La fiche de la cuve le montre sur chaque téléphone.
desk-blending-these_draws_cannot_be_read = Ces prélèvements ne se lisent plus. Revenir et recalculer l’assemblage.
desk-blending-give_the_vat_a_name = Donner un nom à l’assemblage et choisir sa cuve ; puis le garder.
desk-blending-the_book_has_no_such = Le registre n’a pas ce plan. Le chercher dans la liste des assemblages.
desk-blending-nothing_is_left_to_choose = Il ne reste rien à choisir. Cocher ce qui peut entrer, ou demander moins d’ans sous bois.
desk-plan-planned_and_done = Prévu et fait
desk-plan-the_tank = La cuve
desk-plan-planned_by_on_into_at = Prévu par { $person } le { $when } dans { $get } : { $plan } à { $plan2 }.
desk-plan-asked_for = Demandé : { $plan }.
desk-plan-it_rests_on_blind_tasting = S’appuie sur la dégustation à l’aveugle { $link }.
desk-plan-planned = Prévu, { $what }
desk-plan-done = Fait, { $what }
desk-plan-off = Écart, { $what }
desk-plan-in_the_tank_now_at = Dans la cuve maintenant : { $volume_l } à { $strength_pct } selon le registre.
desk-vat-the_vat = L’assemblage
desk-vat-draws = Prélèvements
desk-vat-keep_this_vat = Garder cet assemblage
desk-vat-what_may_go_in = Ce qui peut entrer
desk-vat-may_go_in = { $name } peut entrer
desk-vat-must_go_in = { $name } doit entrer
desk-vat-years_of_by_the_papers = Ans de { $name } selon les papiers
desk-vat-work_it_out = Calculer
desk-vat-begin_again = Recommencer
desk-vat-at_from_vessel =
    { $bold } à { $bold2 }, { $lpa_l }{ $pure }, de { $count } { $count ->
        [one] contenant
       *[other] contenants
    }
desk-vat-of_water = { $water_kg } d’eau
desk-vat-and = et { $bold }
desk-vat-youngest_years_in_wood = Le plus jeune { $what } ans sous bois
desk-vat-by_papers_only_of = selon les seuls papiers : { $by_papers }
desk-vat-a_part_of_it_is = Une part est d’âge inconnu.
desk-vat-that_is_less_than_asked =
    C’est { $off } { $is_more ->
        [yes] de plus
       *[no] de moins
    } que demandé.
desk-vat-share = Part, %
desk-vat-before_the_water_at_the = Avant l’eau { $before_l } à { $before_pct }. Le mélange se contracte de { $shrinks_l } : pas de perte, son alcool pur reste.
desk-vat-name_of_the_vat = Nom de l’assemblage
desk-vat-into_tank = Dans la cuve
desk-vat-rests_on_tasting = Dégustation à l’appui
desk-vat-keep_this_plan = Garder ce plan
desk-vat-no_cask_or_tank_has = Aucun fût ni cuve ne contient d’alcool selon le registre.
desk-vat-casks_go_whole_less_what = Les fûts vont entiers, moins ce que garde le bois. Les ans sont ceux de la part la plus jeune ; où le registre ne peut les savoir, saisir ce que disent les papiers. Un contenant avec une question ouverte n’est coché que par vous : ses chiffres peuvent ne pas tenir.
desk-vat-must = Doit
desk-vat-there = Présent, { $what }
desk-vat-to_give = À donner, { $what }
desk-vat-by_the_papers = Selon papiers
desk-vat-left_out_too_young = écarté : trop jeune
desk-cellar_parts-cellar = Chai
desk-cellar_parts-to = ({ $low } à { $high })
desk-cellar_parts-about = environ { $bold } { $part }
desk-cellar_parts-three_equal_gravities_since = trois densités égales depuis { $at }
desk-cellar_parts-not_moving_and_not_finished = ni mouvement ni fin
desk-cellar_parts-has_hardly_begun = à peine commencée
desk-cellar_parts-stuck = arrêtée
desk-cellar_parts-too_few_readings = trop peu de relevés
desk-cask-loss_a_year = Perte par an
desk-cask-forecast_for_a_day = Prévision pour un jour
desk-cask-forecast = Prévision
desk-cask-tasted = Dégusté
desk-cask-gauges = Jaugeages
desk-cask-years_in_wood = { $percent } ans sous bois
desk-cask-from_before_this_book = D’avant ce registre
desk-cask-its_age_is_not_known = Son âge n’est pas connu.
desk-cask-its_age_is_by_papers = Son âge ne vient que des papiers : { $papers }.
desk-cask-its_age_is_by_what = Son âge vient de ce qui a été dit à l’ouverture ; aucun papier n’est nommé.
desk-cask-pure_alcohol = Alcool pur, %
desk-cask-volume = Volume, %
desk-cask-proof_points = points proof
desk-cask-strength = Titre, { $what }
desk-cask-over_years = Sur, ans
desk-cask-one_gauge_or_too_near = Un seul jaugeage, ou trop proches : pas encore de rythme.
desk-cask-casks_like_it = fûts semblables
desk-cask-the_law_allows = la loi admet
desk-cask-here_as_the_share_that = { $words } Ici comme la part qui s’en va en un an. Un seuil de prudence, pas la preuve qu’une perte est habituelle, ni un avis juridique : comparer d’abord aux fûts de la maison.
desk-cask-of_pure_alcohol = d’alcool pur
desk-cask-between_its_last_two_gauges = Entre ses deux derniers jaugeages, { $when } et { $when2 }, { $value } { $part }{ $pure } sont partis ; ± est deux fois l’incertitude type, selon la classe de la balance, de l’aréomètre et du thermomètre.
desk-cask-compared_with = Comparé à
desk-cask-no_other_cask_to_compare = Aucun autre fût à comparer : de simples chiffres pour sa taille.
desk-cask-what_it_will_hold = Ce qu’il tiendra
desk-cask-no_forecast_for_a_day = Pas de prévision pour un jour avant son dernier jaugeage, ni à plus de cinquante ans.
desk-cask-expected = Prévu
desk-cask-by_a_year_its_own = De { $percent } % par an, sa propre perte pesée avec celle des fûts semblables ; de et à doivent tenir quatre fois sur cinq. Ni fuite ni échantillon n’est prévu.
desk-cask-its_last_gauge_is_in = Son dernier jaugeage est en doute, et cette prévision aussi : voir d’abord le fût.
desk-cask-not_gauged_in_this_fill = Pas jaugé dans ce contenu.
desk-cask-not_tasted_in_this_fill = Pas dégusté dans ce contenu.
desk-cask-fault = Défaut
desk-cask-house_scores = Notes de la maison
desk-cask-in_words = En mots
desk-cask-decision = Décision
desk-cask-score_is_the_mean_of = La note est la moyenne du nez, de la bouche et du bois.
desk-cask-gauges_of_this_fill = Jaugeages de ce contenu
desk-cask-drawn_since_the_one_before = Prélevé depuis le précédent, { $what }
desk-cask-the_last_gauge = le dernier jaugeage
desk-cask-its_fill = son remplissage
desk-cask-and_more = et plus
desk-cask-pure_alcohol2 = Alcool pur
desk-cask-strength2 = Titre
desk-cask-volume_at = Volume à { $temp }
desk-casks-sort_casks = Trier les fûts
desk-casks-regauge_round = Tournée de rejaugeage
desk-casks-area = Zone
desk-casks-no_such_cask = Pas de tel fût.
desk-casks-no_cask_holds_anything_as = Aucun fût ne contient rien, que le registre sache.
desk-casks-since_fill = Depuis remplissage
desk-casks-casks_like_it = Fûts semblables
desk-casks-looks_like = Ressemble à
desk-casks-loss_is_of_pure_alcohol = La perte est d’alcool pur depuis le dernier jaugeage d’au moins deux mois ; les échantillons ne sont pas une perte. « Fûts semblables » : quatre sur cinq sont dans cette plage, par taille, puis zone, puis bois et usage ; un petit groupe emprunte au plus large jusqu’à avoir quelques fûts à lui.
desk-casks-l_pure = L purs
desk-casks-by_papers = selon papiers
desk-ferment-counts_of_its_alcohol = Comptes de son alcool
desk-ferment-set = rempli { $when }
desk-ferment-emptied = vidé { $when }
desk-ferment-ends = Fin : { $forecast }.
desk-ferment-it_usually_ends_near = Finit d’habitude près de { $what }.
desk-ferment-it_takes_two_gravities_or = Il faut deux densités, ou une fermentation close.
desk-ferment-count = Compter
desk-ferment-of_wash = { $what } de matières à distiller
desk-ferment-of_measured_wash = % des matières mesurées
desk-ferment-runs_of_charged_scaled_to =
    { $runs } { $runs ->
        [one] chauffe
       *[other] chauffes
    } pour { $charged_lpa } chargés, ramenés à toutes les matières
desk-ferment-gravity_low_wines_and_spirits = Densité, brouillis et eaux-de-vie comptent une chose de trois façons qui s’ignorent ; la loi ancienne prenait la plus grande. Loin l’une de l’autre : voir jauges, titres et matières.
desk-ferment-not_read_yet = Pas encore relevé.
desk-ferment-greatest = la plus grande
desk-ferment-title = { $what } dans { $mark }
desk-ferments-ferments_under_way = Fermentations en cours
desk-ferments-ferments_that_have_ended = Fermentations finies
desk-ferments-readings_round = Tournée de relevés
desk-ferments-no_ferment_is_under_way = Aucune fermentation n’est en cours.
desk-ferments-ends = Fin
desk-ferments-the_day_is_forecast_from = Le jour est prévu d’après la courbe de baisse de ses propres relevés ; les jours entre parenthèses doivent tenir quatre fois sur cinq. Trois densités égales décident.
desk-ferments-emptied = Vidé
desk-ferments-first_gravity = Première densité
desk-ferments-ferments = Fermentations
desk-house_rules-n0_for_never = 0 pour jamais
desk-house_rules-what_is_due_stands_on = Ce qui est dû est sous Aujourd’hui sur chaque téléphone. Les mots se touchent à la dégustation ; les notes vont de 0 à 10.
desk-house_rules-house_rules = Règles de la maison
desk-house_rules-too_young = trop jeune
desk-house_rules-too_weak = trop faible
desk-house_rules-too_strong = trop fort
desk-house_rules-score_too_low = note trop basse
desk-house_rules-not_tasted = non dégusté
desk-house_rules-loses_much_look_at_it = perd beaucoup : à voir
desk-house_rules-not_gauged = non jaugé
desk-house_rules-spirit_as_the_book_names = Alcool, comme le registre le nomme ; vide pour tous
desk-house_rules-in_wood_at_least_years = Sous bois au moins [ans]
desk-house_rules-strength_from_vol = Titre à partir de [% vol]
desk-house_rules-strength_to_vol = Titre jusqu’à [% vol]
desk-house_rules-score_at_least_of_10 = Note au moins [sur 10]
desk-house_rules-loss_at_most_a_year = Perte au plus [% par an]
desk-house_rules-words_for_nose_and_mouth = Mots pour nez et bouche, un par ligne
desk-house_rules-beside_the_loss_of_casks = À côté de la perte des fûts : ce qu’admet la loi de
desk-house_rules-scores_beside_nose_mouth_wood = Notes en plus de nez, bouche, bois et défaut, une par ligne
desk-house_rules-kept = Gardé.
desk-house_rules-type_a_figure_from_0 = Saisir un chiffre à partir de 0, ou laisser vide.
desk-house_rules-kept_phones_have_it_with = Gardé. Les téléphones l’ont avec leurs prochaines fiches.
desk-house_rules-read_a_ferment_every = Relever une fermentation toutes les
desk-house_rules-regauge_a_cask_every = Rejauger un fût tous les
desk-house_rules-sample_a_cask_every = Échantillonner un fût tous les
desk-house_rules-taste_a_cask_every = Déguster un fût tous les
desk-house_rules-tell_of_an_instruments_check = Annoncer le contrôle d’un instrument avant
desk-house_rules-check_bottles_on_the_line = Contrôler des bouteilles sur la ligne toutes les
desk-house_rules-or_after_so_many_of = ou après tant de bouteilles
desk-map-rooms = Salles
desk-map-map_of = Plan : { $name }
desk-map-without_a_position = { $name }, sans position
desk-map-as_a_table = { $name } en tableau
desk-map-elsewhere = ◆ ailleurs ?
desk-map-empty = vide
desk-map-free = libre
desk-map-count_sheet = Feuille de compte
desk-map-the_last_count_found_otherwise = Le dernier compte a trouvé autre chose
desk-map-nothing_has_a_place_yet = Rien n’a encore de place. Une écriture qui remplit ou déplace un fût en dit une ; la page du contenant aussi.
desk-map-vessels =
    { $count } { $count ->
        [one] contenant
       *[other] contenants
    }
desk-map-places_free =
    { $free } { $free ->
        [one] place libre
       *[other] places libres
    }
desk-map-no_position = { $name }, sans position
desk-map-without_a_place = Sans place { $part }
desk-map-the_first_vessels_are_drawn = Les { $most } premiers contenants sont dessinés. Choisir une sorte pour voir les autres.
desk-map-a_place_is_where_an = Une place est là où une écriture a mis le contenant en dernier, sinon ce que dit sa propre page. Une place creuse est nommée par des écritures ou la liste, et rien n’y est maintenant. Les flèches vont de place en place.
desk-map-places = Places
desk-map-other_places = Autres places
desk-ready-years_in_wood = Ans sous bois
desk-ready-lacks = Manque
desk-ready-no_rule_yet = Pas encore de règle.
desk-ready-set_one_below_age_strength = En fixer une ci-dessous : âge, titre, note, perte.
desk-ready-the_distiller_sets_one = Le distillateur en fixe une.
desk-ready-ready = Prêts { $part }
desk-ready-no_cask_meets_the_rule = Aucun fût ne répond à la règle aujourd’hui.
desk-ready-lacks_one_thing = Une chose manque { $part }
desk-ready-the_rule = La règle
desk-ready-last_set_by = Fixée en dernier par { $changed }, { $when }.
desk-ready-all_boxes_empty_takes_the = Toutes les cases vides ôtent la règle de cet alcool. Ce qui est vide n’est pas demandé. La règle est celle de la maison : l’âge selon la loi et l’étiquette est une autre affaire.
desk-ready-ready2 = Prêt
desk-ready-lacks_one_thing2 = Une chose manque
desk-ready-all_spirits = tous les alcools
desk-amend-what_you_send_is_a = { $mark } · { $summary } · { $person }, { $read_local }. Ce que vous envoyez est une nouvelle écriture ; l’originale reste lisible.
desk-amend-why_it_is_amended = Pourquoi rectifier
desk-amend-amend = Rectifier : { $title }
desk-entries-filter_entries = Filtrer les écritures
desk-entries-pick_a_kind_for_csv = Choisir un type pour le CSV
desk-entries-no_entries_here_yet = Pas encore d’écritures ici.
desk-entries-older = Plus anciennes
desk-entry-as_computed = Tel que calculé
desk-entry-movements = Mouvements
desk-entry-now_at = maintenant à { $stands }
desk-entry-read_by = relevé { $read_local } par { $person }
desk-entry-an_earlier_entry = une écriture antérieure
desk-entry-amends = Rectifie { $link } : { $reason }
desk-entry-as_read = Tel que lu
desk-entry-by = par { $instrument }
desk-entry-corrected = corrigé { $corrected }
desk-entry-is_twice_the_standard_uncertainty = ± est deux fois l’incertitude type, selon la classe des instruments ; un instrument non nommé, ou sans classe au registre, compte dans la classe que la loi prescrit.
desk-entry-figure = chiffre
desk-entry-typed = saisi
desk-entry-with = avec { $words }
desk-entry-nothing_is_computed_from_this = Rien n’est calculé de cela.
desk-entry-how_it_came = Comment elle est venue
desk-entry-typed_at = Saisi à
desk-entry-received = Reçu
desk-entry-phones_clock = Horloge du téléphone
desk-entry-fast =
    { $what } { $is_slow ->
        [yes] de retard
       *[no] d’avance
    }
desk-entry-phone_its_count = Téléphone, son compte
desk-entry-handed_in_by = Remis par
desk-entry-signature = Signature
desk-entry-what_it_does_to_the = Ce que cela fait aux comptes
desk-entry-from = de
desk-entry-to = à
desk-entry-account = compte
desk-entry-why = pourquoi
desk-entry-as_typed = tel que saisi
desk-entry-it_moves_no_spirit_either = Cela ne déplace pas d’alcool, ni ainsi ni autrement.
desk-entry-held_holds_then = tenait { $shown }, tient ensuite
desk-entry-with_the_book_would_still = Avec { $words } le registre demanderait encore avant de rien déplacer.
desk-entry-held_holds_then2 = tenait { $litres }, tient ensuite
desk-entry-its_story = Son histoire
desk-entry-this_entry = cette écriture
desk-entry-strike_this_entry = Rayer cette écriture
desk-entry-strike_it_stays_legible = Rayer ; elle reste lisible
desk-entry-from_the_desk = du bureau
desk-entry-answered = répondu
desk-entry-nothing_moves_until_the_question = Rien ne bouge avant la réponse à la question.
desk-entry-it_is_struck_it_moves = Elle est rayée : elle ne déplace rien.
desk-entry-it_moves_no_spirit = Elle ne déplace pas d’alcool.
desk-entry-another_entry_stands_in_its = Une autre écriture est à sa place.
desk-entry-none_the_phone_or_its = aucune : le téléphone ou son navigateur n’en a pas donné
desk-entry-the_book_has_no_such = Le registre n’a pas cette écriture. Elle attend peut-être encore sur un téléphone.
desk-entry-none_it_was_entered_at = aucune : elle a été inscrite au bureau
desk-entry-of_and_it_holds = de { $phones }, et elle tient
desk-entry-with_a_key_that_the = avec une clé que le registre n’a pas
desk-entry-there_is_no_such_entry = Il n’y a pas de telle écriture à rectifier.
desk-entry-pick_one_kind_first_each = Choisir d’abord un type : chacun a ses propres colonnes.
desk-entry-amended_the_original_stays_legible = Rectifié. L’originale reste lisible.
desk-entry-is_no_day_pick_one = { $day } n’est pas un jour. En choisir un, comme 2025-09-24.
desk-entry-say_why_it_is_amended = Dire pourquoi rectifier, en quelques mots.
desk-enclosed-title = Images et papiers
desk-enclosed-show = Montrer images et papiers
desk-enclosed-back = Retour à ce dont ils relèvent
desk-enclosed-none = Aucun encore. En prendre un à l’atelier avec une écriture, ou en ajouter un sur la page d’une écriture.
desk-enclosed-picture = Image
desk-enclosed-paper = Papier
desk-enclosed-voice_note = Note vocale
desk-enclosed-not_come = Pas encore ici : attend sur le téléphone
desk-enclosed-added_later = ajouté plus tard
desk-enclosed-its_entry = son écriture
desk-enclosed-add = Ajouter images ou papiers
desk-enclosed-files = Fichiers
desk-enclosed-help = JPEG, PNG ou WebP jusqu’à 12 Mo, PDF jusqu’à 20 Mo, notes vocales jusqu’à 6 Mo. Les images perdent leur lieu et les données de l’appareil.
desk-enclosed-what = Ce que cela montre
desk-enclosed-add_it = Ajouter à cette écriture
desk-enclosed-added =
    { $count ->
        [one] Ajouté. C’est une écriture à part, qui nomme celle-ci.
       *[other] { $count } ajoutés. C’est une écriture à part, qui nomme celle-ci.
    }
desk-enclosed-pick_one = Choisir d’abord une image ou un papier.
desk-enclosed-too_many = { $most } au plus à la fois. Les ajouter par parties.
desk-enclosed-no_such_entry = Il n’y a pas de telle écriture où ajouter. La chercher parmi les écritures.
desk-enclosed-the_paper = le papier
desk-enclosed-add_its_paper = ajouter son papier
desk-queries-which_questions = Quelles questions
desk-queries-to_answer = À répondre
desk-queries-none_of_this_weight = Aucune de ce poids.
desk-queries-nothing_is_asked_what_comes = Rien n’est demandé. Ce qui arrive hors plage sera ici.
desk-queries-questions = { $count } questions
desk-queries-ask_on_only_above = Ne demander sur { $mark } qu’au-dessus de { $value } { $limits }
desk-queries-times_it_stood_here = { $times } fois elle a été maintenue ici. { $link }
desk-queries-the_first_are_shown_answer = Les { $most } premières sont montrées. Répondre à quelques-unes, et les autres suivent.
desk-queries-questions2 = Questions
desk-queries-not_answered = Sans réponse : { $why }
desk-queries-it_stands = Maintenue.
desk-queries-struck_the_entry_stays_legible = Rayée. L’écriture reste lisible.
desk-removals-to_or_from = À ou de
desk-removals-loose = à part
desk-removals-of = de { $case_from }
desk-bottled-bottles_on_hand = Bouteilles présentes
desk-bottled-removals_as_csv = Sorties en CSV
desk-bottled-all_removals_logged = Toutes les sorties notées
desk-bottled-what_each_bottling_has_on = Ce que chaque embouteillage a de présent, et où sont allés ses cartons. À noter à l’atelier, sous Plus : Cartons sortis ou entrés, Bouteilles. { $link }.
desk-bottled-nothing_is_bottled_yet_a = Rien n’est encore embouteillé. Une clôture d’embouteillage, ou des cartons d’un autre site, commencent le stock.
desk-bottled-good_bottles = Bonnes bouteilles
desk-bottled-on_hand = Présent
desk-bottled-last_count = Dernier compte
desk-bottled-lot = lot { $lot_mark }
desk-bottled-for_the_library = { $library } pour l’échantillothèque
desk-bottled-from = expéditeur { $consignor }, { $document }
desk-bottled-from_before_this_book = d’avant ce registre
desk-bottled-cases = { $cases } cartons
desk-bottled-and = et { $loose }
desk-bottled-out_and_back = Sorties et retours
desk-bottled-no_case_has_left_yet = Aucun carton n’est encore parti.
desk-bottled-older_ones_are_in_the = { $count } plus anciennes sont dans le fichier.
desk-bottling-checks_of_the_line = Contrôles de la ligne
desk-bottling-tank_gauge_and_label = Jaugeage de cuve et étiquette
desk-bottling-no_bottling_tank_gauge_yet = Pas encore de jaugeage de cuve d’embouteillage. Jauger la cuve après tout traitement, avant la première bouteille.
desk-bottling-at = { $volume } à { $strength }
desk-bottling-a_label_may_say_to = { $when }, { $tank } : { $bold } ({ $what }). Une étiquette peut dire { $low } à { $high }{ $span } et en être à { $most } près
desk-bottling-it_says = elle dit { $said }
desk-bottling-leave_room_for_what_glass = Laisser de la marge pour ce que feignent aréomètre et thermomètre.
desk-bottling-it_fills_bottles_of_l = Elle remplit { $what } bouteilles de { $what2 } L, sans rien laisser.
desk-bottling-none_yet_check_five_bottles = Aucun encore. Contrôler cinq bouteilles chaque demi-heure.
desk-bottling-fill_of_the_label_on = Remplissage { $what } % de l’étiquette en moyenne de { $count } contrôles
desk-bottling-spread = étendue { $what }
desk-bottling-strength_on_average = Titre { $mean } en moyenne
desk-bottling-spread2 = étendue { $spread }
desk-bottling-at_this_size_each_bottle = À cette taille chaque bouteille peut être à { $what } % au-dessus ou au-dessous (27 CFR 19.356), à peu près autant au-dessus qu’au-dessous.
desk-bottling-at_this_size_a_bottle = À cette taille une bouteille peut être à { $what } % au-dessous, la moyenne pas du tout (directive 76/211/CEE, de mémoire).
desk-bottling-fill = Rempli, %
desk-bottling-least = Le moins
desk-bottling-most = Le plus
desk-bottling-labels_right = Étiquettes justes
desk-bottling-done = Fait
desk-bottling-not_closed_yet = Pas encore clos.
desk-bottling-odd_case = Carton incomplet
desk-bottling-labels_of_cases = Étiquettes des cartons
desk-bottling-a_case_label_leads_to = Le symbole mène à la traçabilité du lot. Ce n’est pas l’étiquette que la loi demande.
desk-bottling-these_are_no_cases = Nommer des cartons de cette cuvée tels que sa clôture les a, { $most } au plus à la fois.
desk-bottling-broken = Cassées
desk-bottling-library = Échantilloth.
desk-bottling-good = Bonnes
desk-bottling-to = { $case_from } à { $case_to }
desk-bottling-nothing_has_left_the_tank = Rien n’a encore quitté la cuve.
desk-bottling-gauged_bottled_not_in_a = Jaugés { $gauged }, embouteillés { $bottled } : { $off }{ $pure } ({ $what2 } %) pas en bouteille.
desk-bottling-batch = Cuvée { $name }
desk-bottling-span = { $low } à { $high } % vol
desk-bottling-the_book_has_no_batch = Le registre n’a pas de cuvée de ce nom dans une cuve. La chercher dans la liste des embouteillages.
desk-bottling-fill_on_average = Remplissage, en moyenne
desk-bottling-of_the_label = % de l’étiquette
desk-bottling-strength_in_the_bottles = Titre dans les bouteilles
desk-limits-to = { $what }{ $what2 } à { $what3 } { $symbol }{ $what4 }
desk-limits-as_the_kind = comme le type
desk-limits-every_range_is_the_kinds = Chaque plage est celle du type.
desk-limits-for = Pour
desk-limits-field = Champ
desk-limits-usual = Habituel
desk-limits-possible = Possible
desk-limits-find_limits = Chercher des limites
desk-limits-limits = Limites
desk-limits-all_ranges = Toutes les plages
desk-limits-limits_set_so_far = Limites fixées jusqu’ici
desk-limits-all_limits = Toutes les limites
desk-limits-possible2 = possible : { $what }
desk-limits-words_field_vessel_or_product = Mots, champ, contenant ou produit
desk-limits-a_range_for_one_vessel = Une plage d’un contenant passe avant celle de sa sorte, avant celle de la matière, avant celle du site, avant celle du type. Des cases vides rendent celle du type.
desk-limits-set_so_far = Fixé jusqu’ici
desk-limits-no_range_here_holds_these = Aucune plage ici ne contient ces mots.
desk-limits-a_limit_for_one_vessel = Une limite d’un contenant passe avant celle du produit, avant celle de la sorte de contenant, avant celle du site, avant celle du contrôle. Un chiffre vide rend celle du contrôle.
desk-limits-no_limit_here_holds_these = Aucune limite ici ne contient ces mots.
desk-limits-limit = Limite
desk-limits-set_to = Fixé à
desk-limits-the_checks_own = Celle du contrôle
desk-limits-the_kinds_own = celle du type
desk-limits-the_checks_own2 = celle du contrôle
desk-limits-the_book_knows_no_vessel = Le registre ne connaît pas de contenant { $key }.
desk-limits-say_which_the_sort_of = Dire lequel : la sorte de contenant, ou la matière.
desk-limits-from_to_is_no_range = De { $low } à { $high } n’est pas une plage. Échanger les deux.
desk-limits-kept_the_vessels_concerned_are = Gardé. Les contenants concernés sont jugés de nouveau.
desk-limits-kept_the_entries_concerned_are = Gardé. Les écritures concernées sont questionnées de nouveau.
desk-access-code = code
desk-access-all_as_json_lines = Tout en lignes JSON
desk-access-everything = tout
desk-access-nothing_of_this_sort_yet = Rien de cette sorte encore.
desk-access-the_newest_all_of_them = Les { $most } plus récentes. Toutes sortent en lignes JSON.
desk-access-each_line_is_bound_to = Chaque ligne est liée à la précédente ; { $code } en trouve une changée ou ôtée. Les lignes de plus de { $days } jours partent.
desk-address-now = Maintenant
desk-address-this_book_is_open_on = Ce registre n’est ouvert que sur cet ordinateur. Lancer { $code } sans { $code2 } ni { $code3 }, et les téléphones du même réseau l’atteignent.
desk-address-phones_open = Les téléphones ouvrent { $bold }.
desk-address-another_web_server_on_this = Un autre serveur web de cet ordinateur parle pour lui, et le certificat est l’affaire de celui-là.
desk-address-every_phone_trusts_it_as = Chaque téléphone s’y fie tel quel, par un certificat à votre propre nom.
desk-address-this_houses_own_certificate = le certificat de cette maison
desk-address-each_phone_trusts_it_once = Chaque téléphone s’y fie une fois qu’il a pris { $link }.
desk-address-the_servers_certificate_lasts_unti = Le certificat du serveur dure jusqu’au { $ends }
desk-address-and_is_renewed_before_that = et se renouvelle avant de lui-même
desk-address-the_address_is_who_the = L’adresse est, pour un téléphone, l’identité du registre.
desk-address-what_a_phone_holds_belongs = { $bold } Ce que tient un téléphone appartient à l’adresse où il l’a ouvert : à une autre il commence vide, et ce qui attendait reste à l’ancienne. Choisir la durable avant le premier téléphone. Pour changer plus tard : laisser chaque téléphone remettre, puis changer, puis admettre chacun de nouveau.
desk-address-the_ways = Les voies
desk-address-the_houses_own_certificate = Le certificat de la maison
desk-address-nothing_to_buy_works_without = Rien à acheter, marche sans internet dix ans. Sur chaque téléphone six à huit touchers une fois, dont un réglage qui s’oublie facilement.
desk-address-an_internet_name_of_your = Un nom internet à vous
desk-address-phones_trust_it_with_no = Les téléphones s’y fient sans aucun geste. Cela coûte un domaine par an, internet de temps en temps, et quelqu’un qui le met en place une fois : un enregistrement qui mène à l’adresse de cet ordinateur dans la maison, et un client ACME (RFC 8555) qui prouve le nom par DNS et met ici les deux fichiers. Ils sont regardés tous les quarts d’heure, et repris quand ils sont nouveaux. Le nom figure dans des journaux publics : un nom terne est le mieux.
desk-address-another_web_server_in_front = Un autre serveur web devant
desk-address-where_the_house_has_one = Où la maison en a déjà un, avec son propre certificat : il parle TLS, et transmet à celui-ci.
desk-address-when_a_phone_does_not = Quand un téléphone n’arrive pas ici
desk-address-on_this_computer_looks_at = { $code } sur cet ordinateur regarde nom, adresse, port, horloge, certificat, routeur, disque et sauvegarde, et dit pour chacun l’étape suivante. Donner à cet ordinateur une adresse fixe dans le routeur : une nouvelle serait un autre registre pour les téléphones.
desk-instrument-checks = Contrôles
desk-instrument-readings_in_doubt = Relevés en doute
desk-instrument-due_on = dû le { $due_on }
desk-instrument-last_good_check = dernier bon contrôle { $when }
desk-instrument-add_to_what_it_shows = ajouter { $what } { $unit } à ce qu’il montre
desk-instrument-certificate_add = certificat, ajouter { $table_words }
desk-instrument-entries_read_with_it =
    { $readings } { $readings ->
        [one] écriture relevée
       *[other] écritures relevées
    } avec lui
desk-instrument-none_in_the_book_log = Aucun au registre. En noter un à l’atelier : Vérifier un instrument.
desk-instrument-against = Contre
desk-instrument-should_show = Devrait montrer
desk-instrument-shows = Montre
desk-instrument-off_by = Écart de
desk-instrument-result = Résultat
desk-instrument-good = bon
desk-instrument-readings_in_doubt2 =
    { $doubtful } { $doubtful ->
        [one] relevé
       *[other] relevés
    } en doute
desk-instrument-out_of_use = hors service
desk-instrument-in_use_until = en service jusqu’au { $until }
desk-instrument-in_doubt_read_before_the = En doute : relevés avant le contrôle ({ $at }), depuis le dernier bon
desk-instrument-nothing_was_read_with_it = Rien n’a été relevé avec lui dans ce temps.
desk-instrument-entries =
    { $many } { $many ->
        [one] écriture
       *[other] écritures
    }
desk-instrument-the_last_are_listed = les { $count } dernières sont listées
desk-instrument-look_at_each_let_it = Regarder chacune : la maintenir, ou la rectifier avec la raison.
desk-instrument-by_this_check = Par ce contrôle
desk-instrument-n27_cfr_19_188_asks = 27 CFR 19.188 demande des contrôles fréquents ; un instrument en doute ne sert pas avant d’être certifié.
desk-instrument-not_good = pas bon
desk-instrument-no_check_in_the_book = aucun contrôle au registre
desk-instrument-there_is_no_such_instrument = Il n’y a pas de tel instrument. Le chercher dans la liste.
desk-instruments-none_yet_add_the_first = Aucun encore. Ajouter le premier.
desk-instruments-standing = État
desk-instruments-last_good_check = Dernier bon contrôle
desk-invited-shown_this_once = Montré cette seule fois
desk-invited-scans_this_or_opens_the = { $name } scanne ceci, ou ouvre le lien, d’ici { $days } jours, et choisit un mot de passe que personne d’autre ne connaît. Il sert une fois ; un nouveau l’annule.
desk-invited-hand_it_over_yourself_whoever = Le remettre soi-même : qui l’ouvre le premier se connecte comme { $code }.
desk-invited-until_then_the_old_password = Jusque-là l’ancien mot de passe ouvre comme avant.
desk-invited-this_link_is_plain_http = Ce lien est en simple http : il marche sur cet ordinateur, et un autre enverrait le mot de passe sans protection.
desk-invited-it_is_handed_over = C’est remis
desk-invited-invitation_for = Invitation pour { $name }
desk-invited-on_this_computer_alone = sur cet ordinateur seul
desk-judging-all_as_a_file_csv = Tout en fichier (CSV)
desk-judging-rules_digest_the_book_is = Règles { $number }, empreinte { $code }. Le registre est jugé par elles depuis { $when }
desk-judging-all_was_judged_at = tout était jugé à { $when }
desk-judging-other_than_before = Autrement qu’avant : { $parts }.
desk-judging-not_all_is_judged_yet = Tout n’est pas encore jugé. Ce qui en sort autrement est listé au fur et à mesure.
desk-judging-so_far = jusqu’ici
desk-judging-nothing_came_out_otherwise = Rien n’en est sorti autrement{ $what }.
desk-judging-sums_that_came_out_otherwise = Calculs sortis autrement
desk-judging-none_stock_and_accounts_are = Aucun. Stock et comptes sont ce qu’ils étaient.
desk-judging-entries_move_other_amounts_than =
    { $sums_many } { $sums_many ->
        [one] écriture déplace
       *[other] écritures déplacent
    } d’autres quantités qu’avant
desk-judging-the_first_are_listed_the = les { $most } premières sont listées, le fichier les a toutes
desk-judging-a_closed_month_keeps_its = Un mois clos garde ses chiffres : ce qui y a changé est un ajustement du premier mois ouvert.
desk-judging-before = Avant : { $moves }
desk-judging-now = Maintenant : { $moves }
desk-judging-questions_that_came_or_went = Questions venues ou parties
desk-judging-read_by = Lu par { $read_by }, { $when }.
desk-judging-i_have_read_it = J’ai lu
desk-judging-rules_of_version = Règles de la version { $version }
desk-judging-came_to = Venue à
desk-judging-went_from = Partie de
desk-judging-weighs_otherwise_for = Pèse autrement pour
desk-parties-new = Nouveau
desk-parties-none_yet_add_them_one = Aucun encore. Les ajouter un à un, ou prendre une feuille.
desk-parties-sells_or_buys = Vend ou achète
desk-parties-address = Adresse
desk-parties-note = Note
desk-parties-is_there_already_as_a = { $name } est déjà là comme { $role }. Changer celui-là.
desk-parties-there_is_nobody_of_this = Il n’y a personne de ce nom. Revoir la liste.
desk-parties-kept = Gardé.
desk-party_edit-a_papers_and_entries_call = Rôle : { $role }. Papiers et écritures l’appellent par ce nom, qui reste donc ; sous un autre nom c’est quelqu’un de nouveau.
desk-party_edit-new_customer_or_grower = Nouveau client ou producteur
desk-party_edit-supplier = fournisseur
desk-party_edit-customer = client
desk-passkey_new-give_it_a_name_by = Lui donner un nom qui se reconnaît plus tard, comme l’ordinateur ou la clé où elle est. Le navigateur demande ensuite votre doigt, visage ou PIN.
desk-passkey_new-this_browser_makes_no_passkeys = Ce navigateur ne fait pas de clé d’accès ici. En prendre un qui le fait, en https, ou garder le mot de passe.
desk-passkey_new-make_it = La faire
desk-passkey_new-made_at_it_is_good = Faite à { $rp_id }, elle n’est bonne que là. Qui perd l’appareil met fin à sa clé d’accès sur la page d’avant.
desk-passkey_new-a_new_passkey = Nouvelle clé d’accès
desk-people-code = Code
desk-people-roles = Rôles
desk-people-at_the_desk = Au bureau
desk-people-invited = invité
desk-people-password = mot de passe
desk-people-ended = Sessions finies : { $count }.
desk-people-there_is_a_already_pick = Il y a déjà un { $code }. Choisir un autre code.
desk-people-somebody_must_keep_the_office = Quelqu’un doit garder le rôle du bureau. Le donner d’abord à une autre personne.
desk-people-there_is_no_such_person = Il n’y a pas de telle personne.
desk-people-kept = Gardé.
desk-person_edit-the_floor_code_names_who = Le code d’atelier nomme qui note sur un téléphone partagé, aussi hors ligne. Ce n’est pas une serrure.
desk-person_edit-signing_in_at_the_desk = Connexion au bureau
desk-person_edit-invited_until = Invité jusqu’au { $when }.
desk-person_edit-has_a_password_which_nobody = A un mot de passe, que personne d’autre ne connaît.
desk-person_edit-has_no_password_yet = N’a pas encore de mot de passe.
desk-person_edit-sessions_open =
    { $n_open } { $n_open ->
        [one] session ouverte
       *[other] sessions ouvertes
    }.
desk-person_edit-end_the_sessions = Finir les sessions
desk-person_edit-who_is_to_sign_in = Qui doit se connecter au bureau est invité ensuite, sur sa page.
desk-person_edit-invite_to_a_new_password = Inviter à un nouveau mot de passe
desk-person_edit-invite_to_the_desk = Inviter au bureau
desk-readers-title = Autres outils
desk-readers-about = Un tableur, un tableau de bord ou un calendrier lit ce que permet sa clé, jusqu'à son terme, et ne change rien. Comment : { $link }.
desk-readers-name = Nom de l'outil
desk-readers-name_it = Nommez l'outil, par exemple « tableur du chai ».
desk-readers-good_for = Valable
desk-readers-days =
    { PLURAL($days) ->
        [one] { $days } jour
       *[other] { $days } jours
    }
desk-readers-may_read = Peut lire
desk-readers-tick_what = Cochez ce qu'il peut lire.
desk-readers-scope_entries = écritures
desk-readers-scope_stock = ce qui se trouve où
desk-readers-scope_periods = périodes
desk-readers-scope_trace = traçabilité
desk-readers-scope_cards = fiches des contenants
desk-readers-scope_calendar = le calendrier des échéances
desk-readers-make = Créer une clé
desk-readers-key_for = Clé pour { $name }
desk-readers-shown_once = Montrée cette seule fois. Qui la possède lit la même chose ; gardez-la avec les mots de passe.
desk-readers-calendar_at = Les calendriers prennent cette adresse :
desk-readers-it_is_kept = Elle est gardée
desk-readers-none = Aucun outil n'a de clé.
desk-readers-tool = Outil
desk-readers-reads = Lit
desk-readers-until = Jusqu'au
desk-readers-used = Dernier usage
desk-readers-never = jamais
desk-readers-over = terminée
desk-readers-end = Terminer
desk-readers-ended = La clé de { $name } n'ouvre plus rien.
desk-readers-no_such = Cette clé n'existe pas. Peut-être a-t-elle déjà été terminée.
desk-readers-calendar_name = { $house } : ce qui est à faire
desk-readers-ferment_ends = { $name } : la fermentation finit à peu près maintenant
desk-phones-let_in = Admettre { $data }
desk-phones-scan_this_with_the_phones = Scanner ceci avec l’appareil photo du téléphone, une fois, dans la journée. En lien : { $link }
desk-phones-the_camera_does_not_scan = L’appareil photo ne scanne pas ?
desk-phones-open_on_the_phone_and = Ouvrir { $bold } sur le téléphone et saisir, d’ici { $minutes } minutes :
desk-phones-no_code_has_0_o = Aucun code n’a 0, O, 1, I, L ou U, et son dernier caractère contrôle les autres. Scanné ou saisi, il est bon pour un téléphone.
desk-phones-a_phone_that_does_not = Un téléphone qui ne se fie pas encore à ce serveur
desk-phones-it_opens = Il ouvre d’abord { $place }. Là il doit montrer ces groupes : { $groups }
desk-phones-the_trust_page = la page de confiance
desk-phones-make_a_code_for_a = Faire un code pour un nouveau téléphone
desk-phones-no_phone_is_let_in = Aucun téléphone n’est encore admis.
desk-phones-entries_seen = Écritures vues
desk-phones-not_handed_in = Non remises
desk-phones-clock = Horloge
desk-phones-leave = Accès
desk-phones-never = jamais
desk-phones-none_known = aucun connu
desk-phones-shut_out = exclu { $when }
desk-phones-shut_out2 = Exclure
desk-phones-a_missing_count_means_the = Un numéro manquant veut dire que le téléphone a noté une écriture qui n’est pas arrivée. Il la remet de lui-même quand il retrouve le serveur.
desk-phones-counts_twice = Compte double :
desk-phones-more_than_one_entry_has = { $bold } plus d’une écriture a le même numéro de ce téléphone. Il y en a deux copies, ou il a été rétabli d’une copie plus ancienne. Toutes les écritures sont au registre. Chercher l’autre téléphone ; sans certitude, l’exclure et l’admettre de nouveau.
desk-phones-counts_twice2 = compte double
desk-phones-missing = manquant
desk-phones-clock_off =
    { $minutes } min { $is_slow ->
        [yes] de retard
       *[no] d’avance
    }
desk-phones-shut_out_entries_it_still = Exclu. Les écritures qu’il tient encore y sont en sûreté, et entrent une fois qu’il est admis de nouveau.
desk-phones-there_is_no_such_phone = Il n’y a pas de tel téléphone.
desk-proof-lost_heads = Jalons perdus
desk-proof-witnesses = Témoins
desk-proof-each_backup_each_phone_and = Chaque sauvegarde, chaque téléphone et le groupe gardent des jalons : de courtes preuves, signées ici avec la clé { $code }, de tout ce que le registre tenait à un moment. Un registre réécrit depuis a d’autres jalons. Jusqu’au dernier jalon que quelqu’un garde ailleurs, aucune ligne ne peut être changée ou ôtée sans être vue ; les suivantes le peuvent.
desk-proof-the_registry_is_proved_column = La liste est prouvée colonne par colonne depuis { $when }.
desk-proof-the_registry_is_proved_column2 = La liste est prouvée colonne par colonne depuis le début.
desk-proof-compares_all_of_it = { $code } compare tout.
desk-proof-shown_once_and_no_longer = Montrés une fois, et plus au registre
desk-proof-came_back = Revenu
desk-proof-shown = Montré
desk-proof-what_differs = Ce qui diffère
desk-proof-explained = expliqué
desk-proof-if_nobody_restored_an_older = Si personne n’a rétabli une sauvegarde plus ancienne, quelqu’un a changé le fichier du registre. Garder ce dossier tel quel, et comparer avec une sauvegarde : { $code }.
desk-proof-why_the_book_lacks_them = Pourquoi le registre ne les a pas
desk-proof-note_it = Le noter
desk-proof-who_keeps_heads = Qui garde des jalons
desk-proof-nobody_yet_phones_begin_with = Personne encore. Les téléphones commencent à leur prochaine remise, les sauvegardes à la prochaine.
desk-proof-gave_it_back = L’a rendu
desk-proof-beside_the_backups = À côté des sauvegardes
desk-proof-that_the_first_backup_makes = que fait la première sauvegarde
desk-proof-not_explained = non expliqué
desk-proof-noted_the_heads_stay_on = Noté. Les jalons restent dans la liste.
desk-rules-rules_the_book_was_judged = Règles qui ont jugé le registre
desk-rules-the_book_is_judged_by = Le registre est jugé par les règles du programme qui le tient. Si une version en apporte d’autres, chaque écriture est jugée de nouveau pendant que les remises continuent. Ce qui en est sorti autrement reste ici jusqu’à ce que quelqu’un l’ait lu.
desk-rules-version = Version
desk-rules-all_judged = Tout jugé
desk-rules-read_by = Lu par
desk-rules-entries =
    { $unread } { $unread ->
        [one] écriture
       *[other] écritures
    }
desk-rules-to_read = à lire
desk-rules-kinds_of_entry = types d’écriture
desk-rules-sums_and_tables = calculs et tables
desk-rules-the_fold = le suivi du registre
desk-rules-kept_you_have_read_it = Gardé : vous l’avez lu.
desk-rules-l_pure_alcohol = { $flow } L d’alcool pur
desk-rules-the_book_was_never_judged = Le registre n’a jamais été jugé par celles-ci. Voir la liste.
desk-rules-the_run = la chauffe
desk-settings-settings = Réglages
desk-settings-changes = Changements
desk-settings-the_house = La maison
desk-settings-the_office_changes_the_house = { $name }. Le bureau change la maison et les personnes, et exclut les téléphones.
desk-settings-set_a_range = Fixer une plage
desk-settings-set_a_limit = Fixer une limite
desk-settings-set = Limites fixées : { $count }.
desk-settings-check_due = Contrôle dû
desk-settings-by_which_the_book_is = Par lesquelles le registre est jugé, et ce qui est sorti autrement sous d’autres.
desk-settings-backups = Sauvegardes
desk-settings-not_encrypted_whoever_finds_one = Non chiffrées : qui en trouve une la lit. { $code } sur le serveur fait la clé.
desk-settings-each_is_encrypted_to_the = Chacune est chiffrée à la clé de la maison.
desk-settings-who_changed_what = Qui a changé quoi
desk-settings-nothing_was_changed_yet = Rien n’a encore été changé.
desk-settings-kept = Gardé.
desk-settings-there_is_no_such_instrument = Il n’y a pas de tel instrument.
desk-you-sessions = Sessions
desk-you-passkeys = Clés d’accès
desk-you-end_the_passkey = Mettre fin à la clé d’accès { $name }
desk-you-keep_the_house = tenir la maison
desk-you-do_everything = tout faire
desk-you-signed_in_as_who_may = Connecté comme { $bold }, qui peut { $what }.
desk-you-where_you_are_signed_in = Où vous êtes connecté
desk-you-the_list_begins_with_the = La liste commence à la prochaine connexion.
desk-you-browser = Navigateur
desk-you-end = Fin
desk-you-last_used = Dernier usage
desk-you-end_it = La finir
desk-you-end_all_others = Finir toutes les autres
desk-you-a_session_ends_hours_after = Une session finit { $idle_h } heures après son dernier usage, et { $most_h } heures après son début quel que soit l’usage.
desk-you-your_passkeys = Vos clés d’accès
desk-you-a_passkey_opens_the_desk = Une clé d’accès ouvre le bureau par le doigt, le visage ou le PIN de cet ordinateur, d’un téléphone ou d’une clé de sécurité, sans mot de passe à saisir. La maison n’en garde que la moitié publique.
desk-you-passkey = Clé d’accès
desk-you-good_at = Bonne à
desk-you-made = Faite
desk-you-you_have_none_yet = Vous n’en avez pas encore.
desk-you-add_a_passkey = Ajouter une clé d’accès
desk-you-passkeys_are_bound_to_a = Les clés d’accès sont liées à un nom. Ouvrir le bureau par le nom de la maison, pas par une adresse en chiffres, pour en ajouter une.
desk-you-your_password = Votre mot de passe
desk-you-change_it = Le changer
desk-you-forgotten_the_office_makes_you = Oublié ? Le bureau vous fait une invitation ; personne ne peut lire l’ancien.
desk-you-here = ici
desk-you-look = regarder
desk-you-ended = Fini.
desk-you-ended_you_are_signed_in = { $ended } finies. Vous n’êtes connecté qu’ici.
desk-you-ended_it_opens_nothing_any = Fini : elle n’ouvre plus rien. Les sessions qu’elle a ouvertes peuvent se finir ci-dessous.
desk-you-that_is_not_your_password = Ce n’est pas votre mot de passe. Le saisir de nouveau.
desk-you-there_is_no_such_session = Cette session n’existe plus.
desk-you-no_passkey_can_be_made = Aucune clé d’accès ne peut se faire à cette adresse. Ouvrir le bureau par le nom de la maison.
desk-you-there_is_no_such_passkey = Cette clé d’accès n’existe plus.
desk-you-your_password_is_changed_you = Votre mot de passe est changé. Vous n’êtes connecté qu’ici.
desk-you-this_took_too_long_or = Cela a pris trop de temps, ou n’est pas ce qui était demandé. Appuyer encore une fois.
desk-you-kept_you_can_sign_in = Gardé. Vous pouvez désormais vous connecter avec elle.
desk-laboratory_parts-results_of = Résultats de { $document }
desk-laboratory_parts-no_limit_here = pas de limite ici
desk-laboratory_parts-substance = Substance
desk-laboratory_parts-found_and_how_it_stands = Trouvé, et ce qu’il en est
desk-laboratory_parts-sample_of = { $link } · échantillon du { $taken_on }
desk-laboratory_parts-from = de { $link }
desk-laboratory_parts-not_tested_a_hydrometer_sees = Non analysé : { $untested }. Un aréomètre n’en voit rien.
desk-certificates-a_limit_and_a_result = { $caution } Une limite et un résultat sont ici avec leur source et avec l’écart entre laboratoires. Aucun aréomètre, densimètre ou réfractomètre ne distingue le méthanol de l’éthanol.
desk-certificates-the_newest_of_all_are = Les { $count } plus récents sur { $count2 } ; tous sont parmi les écritures.
desk-certificates-over_or_not_safely_under = Au-dessus ou pas sûrement au-dessous
desk-certificates-no_result_is_over_a = Aucun résultat n’est au-dessus d’une limite ni pas sûrement au-dessous.
desk-certificates-no_certificate_yet_log_one = Pas encore de bulletin. En noter un depuis son contenant, ou ici pour l’alcool en bouteilles.
desk-casks_by_year-at_the_end_of_a = À la fin d’un mois
desk-casks_by_year-casks_by_kind_and_year = Fûts par sorte et année
desk-casks_by_year-at_the_end_of = À la fin de
desk-casks_by_year-filled_casks = Fûts remplis { $when }, par contenu et année de remplissage ; { $what } au dernier jaugeage.
desk-casks_by_year-at_the_end_of2 = fin { $month }
desk-casks_by_year-now = maintenant
desk-casks_by_year-no_cask_is_full = Aucun fût n’est encore plein.
desk-casks_by_year-wood = Bois
desk-casks_by_year-with = Avec ±
desk-casks_by_year-by_papers_only = selon les seuls papiers
desk-casks_by_year-some_by_papers = { $casks } selon les seuls papiers
desk-casks_by_year-no_cask_was_full = Aucun fût n’est plein alors.
desk-close-what_is_closed = Ce qui est clos
desk-close-the_entry_of_that_is = L’écriture de { $mark } en question
desk-close-in = Entrées, { $what }
desk-close-out = Sorties, { $what }
desk-close-end = Fin, { $what }
desk-close-every_line_with_its = Chaque ligne, avec son ±
desk-close-what_is_made_of = De quoi ± est fait
desk-close-in_the_name_of_this = Au nom de { $name }, ceci clôt { $months } pour de bon : les chiffres restent tels quels. Une écriture venue plus tard sur ce temps est ajustée au premier mois ouvert, où chacun la voit.
desk-close-months_to = { $count } mois, { $first } à { $last },
desk-close-each_of_them = chacun d’eux
desk-close-look_at_first = Voir d’abord { $link }.
desk-close-answer_them =
    { $count ->
        [one] y répondre
       *[other] y répondre
    }
desk-close-questions_are_open_read_each =
    { $count } { $count ->
        [one] question est ouverte
       *[other] questions sont ouvertes
    }. Lire chacune, et le dire ; ou { $link }. La clôture porte pour de bon ce qui était ouvert.
desk-close-i_have_looked_at_these = J’ai regardé ces chiffres
desk-close-close = Clore { $name }
desk-close-leave_it_open = Laisser ouvert
desk-close-back_to = Retour à { $name }
desk-held-by_account = Par compte
desk-held-the_least_known_first = Le moins connu d’abord
desk-held-no_vessel_held_anything_measured = Aucun contenant ne tenait rien de mesuré fin { $name }, ou trop pour les suivre tous.
desk-held-at_the_end = À la fin, { $what }
desk-held-of_it_measured = Dont mesuré
desk-held-known_to = Connu à
desk-held-measured_anew_these_make_the = Mesurés de nouveau, ceux-ci font mieux connaître la fin.
desk-held-last_measured = Dernière mesure
desk-held-only_what_came_in = seulement ce qui est entré
desk-held-more_are_better_known = { $more } de plus sont mieux connus.
desk-held-of_what_stood_there = : ± de ce qui y était
desk-period-came_after_the_last_close = Venu après la dernière clôture
desk-period-close_it = La clore
desk-period-was_closed_by_on_digest = { $month } a été clos par { $person } le { $when }, empreinte { $code }.
desk-period-the_rest_is_open = Le reste est ouvert.
desk-period-was_closed_with_questions_open =
    { $month } a été clos avec { $count } { $count ->
        [one] question ouverte, lue
       *[other] questions ouvertes, chacune lue
    } par { $person }
desk-period-what_came_to_light_after = Ce qui est apparu après la clôture. Les chiffres ci-dessus restent tels que signés ; l’écart est ajusté au premier mois ouvert.
desk-period-without_adjustments_each_figure_in = Sans ajustements : chaque chiffre dans le mois auquel il appartient.
desk-period-came = Venu
desk-period-period = Période { $name }
desk-periods-casks_by_year = Fûts par année
desk-periods-what_was_on_hand_at = Ce qui était présent à la fin de chaque trimestre et mois, en { $what }.
desk-periods-part_closed = clos en partie
desk-periods-changed_since = changé depuis
desk-periods-tick_that_you_have_looked = Cocher que vous avez regardé les chiffres, puis clore.
desk-periods-is_closed_what_comes_to = { $name } est clos. Ce qui apparaît maintenant est ajusté au premier mois ouvert.
desk-records-records = Registres, { $where }
desk-records-rules_change_check_todays_text = { $caution } Les règles changent : lire le texte actuel.
desk-records-record = Registre
desk-records-what_it_asks_for = Ce qu’il demande
desk-records-where_the_book_holds_it = Où le registre le tient
desk-records-not_held = Non tenu
desk-records-when_keep = Quand : { $when }. Garder : { $keep }.
desk-records-signed_by = Signé par : { $sign }.
desk-records-source = Source : { $source }.
desk-records-eu = UE
desk-records-uk = Royaume-Uni
desk-seasons-litres_of_pure_alcohol_at = Litres d’alcool pur à 20 °C
desk-seasons-from_fruit_to_spirit_in = Du fruit à l’alcool en un seul calcul : ce qui a chargé les alambics, et où c’est. { $what }.
desk-seasons-no_fruit_has_come_and = Aucun fruit n’est encore venu et aucun alambic n’a encore coulé.
desk-seasons-season = Campagne { $name }
desk-seasons-of_the_wash = des matières
desk-seasons-l_of_pure_alcohol_from = L d’alcool pur de 100 kg
desk-seasons-of_fruit_what_a_ferment = { $l_per_100kg } { $what } de fruits. Ce qu’une fermentation a donné et qu’aucun alambic n’a eu est encore dans les cuves, ou parti avec les lies.
desk-seasons-litres_gauged_not_litres_taxed = Litres jaugés, non litres taxés
desk-seasons-gauged_not_taxed = Jaugé, non taxé
desk-seasons-a_season_runs_twelve_months = { $what }. Une campagne va sur douze mois à partir de juillet ; une maison au sud de l’équateur fixe son mois dans les réglages.
desk-seasons-made_by_fermentation = Fait par fermentation
desk-seasons-hearts = Cœur
desk-seasons-heads = Têtes
desk-seasons-feints_on_hand = Imparfaits présents
desk-seasons-stillage = Vinasse
desk-seasons-between_two_dips_of_low = Entre deux jauges du brouillis
desk-seasons-found_by_gauges_after_collection = Trouvé par jaugeages après collecte
desk-seasons-lost_out_of_the_stills = Perdu hors des alambics, par écriture
desk-seasons-on_a_still_now = Sur un alambic maintenant
desk-seasons-made_of_fruit = Fait par fermentation de { $fruit } de fruits
desk-seasons-wash_charged = Matières chargées en { $runs } chauffes
desk-runs_parts-in_out = Entrés { $charged }, sortis { $came } :
desk-runs_parts-not_accounted_for = { $open }{ $pure } ({ $share } %) non justifiés.
desk-runs_parts-more_than_went_in = { $open }{ $pure } ({ $share } %) de plus qu’entrés.
desk-runs_parts-stillage_was_not_read_taken = Vinasse non relevée : comptée à { $stillage_pct } { $what }.
desk-runs_parts-plans = Plans
desk-runs_parts-low_look_at_fruit_ferment = bas : voir fruit, fermentation, bilan
desk-runs_parts-high_look_at_weights_and = haut : voir poids et jaugeages
desk-runs_parts-in = entrés
desk-runs_parts-out = sortis
desk-beside-runs_beside_each_other = Chauffes côte à côte
desk-beside-list_of_runs = liste des chauffes
desk-beside-tick_two_to_runs_in = Cocher deux à { $most } chauffes dans la { $link }.
desk-beside-still_began = Alambic, début
desk-beside-charged = Chargé, { $what }
desk-beside-feints_in = Imparfaits entrés, { $what }
desk-beside-hearts_at = Cœur, { $what } à { $what2 }
desk-beside-hearts_share_of_the_charge = Cœur, part de la charge
desk-beside-hearts_begin_at = Le cœur commence à
desk-beside-tails_begin_at = Les queues commencent à
desk-beside-from_100_kg_l_pure = De 100 kg, L d’alcool pur
desk-beside-from_100_lb_proof_gal = De 100 lb, proof gal
desk-beside-over_alcohol = Titre réel selon l’alcool pur recueilli
desk-feints-feints_by_fruit = Imparfaits par fruit
desk-feints-no_feints_yet_they_come = Pas encore d’alcools imparfaits. Ils viennent avec le jaugeage des têtes et des queues.
desk-feints-heads_and_tails_by_fruit = Têtes et queues par fruit : ce qui a été mis de côté, ce qu’ont eu des chauffes suivantes, ce qui a été détruit, ce qui reste. Une chauffe suivante peut être d’un autre fruit : ce qu’elle a eu compte pour le fruit qui coulait.
desk-feints-heads_set_aside = Têtes mises de côté
desk-feints-tails_set_aside = Queues mises de côté
desk-feints-used_in_its_runs = Servi dans ses chauffes
desk-feints-destroyed = Détruit
desk-feints-standing_is_by_what_was = Le reste suit ce qui a été nommé en dernier sur le contenant. Un aréomètre ne voit pas le méthanol : les alcools imparfaits se gardent selon le laboratoire et la loi, pas selon leur titre.
desk-plans-cut_plans_and_best_runs = Plans de coupe et meilleures chauffes
desk-plans-plan_for_any_still = Plan pour tout alambic
desk-plans-for_one_still_log_it = { $link } Pour un seul alambic, le noter sur sa feuille de chauffe. Le dernier plan compte ; le nez décide.
desk-plans-no_plan_yet_and_no = Pas encore de plan, et aucune chauffe n’est désignée meilleure.
desk-plans-heads = Têtes, { $what }
desk-plans-hearts_to = Cœur jusqu’à, { $what }
desk-plans-tails_to = Queues jusqu’à, { $what }
desk-plans-who_when = Qui, quand
desk-plans-blind_tasting = Dégustation { $tasting }
desk-plans-best_runs = Meilleures chauffes
desk-run-balance = Bilan
desk-run-on_from = { $what } { $batch } sur { $link }, du { $when }
desk-run-to = au { $when }
desk-run-charge = Charge { $volume_l }
desk-run-with = avec { $lpa_l }{ $pure }
desk-run-it_is_known_to_by = Connu à { $uncertain } { $what }, selon la classe de ce qui a été relevé.
desk-run-usual_is_0_5_to = D’habitude 0,5 à 2 %.
desk-run-from_of_wash_of_fruit = { $bold }, { $per_100_l } de { $what } de matières ; { $kg } de fruits pour sa part de la fermentation.
desk-run-l_from_100_kg = L de 100 kg
desk-run-flat_rate_for_in_germany = Forfait pour { $name } : { $de_l }{ $what } en Allemagne
desk-run-in_austria = { $at_l } en Autriche
desk-run-this_is_of_the_first = cela fait { $of_flat_rate } du premier.
desk-run-plan = Plan :
desk-run-heads = têtes { $heads_l } ;
desk-run-hearts_to = cœur jusqu’à { $hearts_to_pct } { $what } ;
desk-run-tails_to = queues jusqu’à { $tails_to_pct } { $what } ;
desk-run-blind_tasting = dégustation { $tasting }
desk-run-resting_on = s’appuyant sur { $link }
desk-run-best_run_of = Meilleure chauffe : { $what }
desk-run-why_it_is_the_best = Pourquoi c’est la meilleure
desk-run-mark_as_the_best_run = Désigner meilleure chauffe : { $what }
desk-run-cuts_and_events = Coupes et événements
desk-run-event = Événement
desk-run-receiver = Récipient
desk-run-true = { $what } réel
desk-run-logged = noté { $typed_at }
desk-run-fractions = Fractions
desk-run-none_gauged_yet = Aucune encore jaugée.
desk-run-fraction = Fraction
desk-run-glass = Aréomètre
desk-run-spirit = Alcool { $what }
desk-run-vapour = Vapeurs { $what }
desk-run-dip = Jauge, { $what }
desk-run-a_hydrometer_cannot_see_methanol = Un aréomètre ne voit pas le méthanol. Non analysé ici : méthanol, carbamate d’éthyle.
desk-run-l_pure_alcohol_from_100 = L d’alcool pur de 100 kg
desk-run-the_book_has_no_such = Le registre n’a pas cette chauffe. La chercher dans la liste des chauffes.
desk-run-marked_as_the_best_run = Désignée meilleure chauffe : { $what }.
desk-run-not_marked = Non désignée :
desk-run-not_accounted_for = non justifié
desk-run-this_still = cet alambic
desk-run-true_strength_through = Titre réel au fil de la chauffe
desk-run-true_strength = titre réel
desk-run-cut_logged = { $at }, noté { $typed_at }
desk-runs-no_runs_yet_a_charge = Pas encore de chauffes. Une charge sur un alambic en commence une.
desk-runs-beside_each_other = Côte à côte
desk-runs-tick_two_to = Cocher deux à { $most }.
desk-runs-tick = Cocher
desk-runs-began = Début
desk-runs-charge = Charge, { $what }
desk-runs-cuts = Coupes
desk-runs-beside_others = { $name } à côté d’autres
desk-runs-best = meilleure
desk-runs-tails =
    { $is_heads_cut ->
        [yes] cœur
       *[no] queues
    } { $at }
desk-runs-logged = (noté { $typed_at })
desk-runs-at = à { $true_strength } { $what }
desk-runs-pure_alcohol_in_l = Alcool pur entré, L
desk-runs-proof_gal_in = Proof gal entrés
desk-yields-yield_of_each_ferment = Rendement de chaque fermentation
desk-yields-yield_by_fruit_and_year = Rendement par fruit et année
desk-yields-no_yield_yet_it_needs = Pas encore de rendement. Il faut du fruit pesé, une charge de sa cuve de fermentation, et du cœur ou du brouillis jaugé.
desk-yields-what_each_ferment_gave_all = Ce que chaque fermentation a donné : tout ce qui a coulé, moins les alcools imparfaits entrés. Les forfaits sont des moyennes prudentes qui servent au calcul des droits, pas des buts ; moins de 60 % ou plus de 150 % vaut un regard (usage courant). Les années de la maison en disent plus.
desk-yields-first_run = Première chauffe
desk-yields-fruit_run = Fruit passé, { $what }
desk-yields-wash_run = Matières, { $what }
desk-yields-made = Fait, { $what }
desk-yields-n100_kg = 100 kg
desk-yields-n100_lb = 100 lb
desk-yields-from = de { $what }
desk-yields-flat_rate_de = Forfait DE
desk-yields-flat_rate_at = Forfait AT
desk-yields-of_the_rate = Du forfait
desk-yields-a_100_kg = par 100 kg
desk-yields-the_houses_own_years_from = Les années de la maison, de { $what }
desk-yields-ferment =
    { $yield } { $what }, { $ferments } { $ferments ->
        [one] fermentation
       *[other] fermentations
    }
desk-yields-where_the_flat_rates_come = D’où viennent les forfaits
desk-yields-check_them_against_the_order = Les comparer au règlement en vigueur avant d’en rien calculer.
desk-yields-proof_gallons_the_flat_rates = Proof gallons ; les forfaits tels que publiés, en litres d’alcool pur
desk-yields-austria = Autriche
desk-yields-spread_in_handbooks = Étendue des manuels
desk-yields-a_ferment = fermentation
desk-lines-the_whole_book = Tout le registre
desk-lines-find = Chercher
desk-lines-mark_lot_person_paper_no = repère, lot, personne, n° de papier
desk-lines-what_answers = Ce qui répond
desk-lines-find_in_the_book = Chercher dans le registre
desk-lines-shown = { $many } montrés. La flèche vers le bas y mène.
desk-lines-nothing_answers = Rien ne répond.
desk-hits-all_that_answers_to = Tout ce qui répond à « { $text } »
desk-hits-nothing_answers_to = Rien ne répond à « { $text } ».
desk-search-the_index_of_older_entries = L’index des écritures plus anciennes se fait encore. Ce qui est entré récemment se trouve ; le reste suit de lui-même.
desk-search-everything_that_answers = Tout ce qui répond
desk-search-the_first_type_more_of = Les { $most } premiers : en saisir plus.
desk-search-more_of_these = D’autres
desk-search-did_you_mean = Vouliez-vous dire
desk-search-list_of_entries = liste des écritures
desk-search-try_a_shorter_beginning_or = Essayer un début plus court, ou un mot de moins. Les écritures sans mot se trouvent par leur contenant, ou dans la { $link }. Ce qui attend sur un téléphone n’est pas encore au registre.
desk-search-type_the_beginning_of_a = Saisir le début d’un repère, d’une cuvée ou d’un lot, d’une chauffe, d’un producteur, du numéro d’un papier, d’une personne, d’un instrument, ou d’un mot de remarque. C6, c-006 et C 006 trouvent le même fût ; les accents ne comptent pas. Le numéro d’une écriture au registre la trouve aussi.
desk-search-found_for = Trouvé pour « { $text } »
desk-search-search = Recherche
desk-search-a_trace_goes_both_ways = Une trace va dans les deux sens : d’une bouteille, d’un fût ou d’une chauffe jusqu’au fruit, et d’un apport de fruits jusqu’à chaque bouteille.
desk-search-the_book_has_nothing_by = Le registre n’a rien de ce nom. Essayer un repère, une cuvée, le numéro d’un carton, ou une partie du nom d’un producteur.
desk-search-that_answer_to =
    { $are_more ->
        [yes] Les { $count } premiers
       *[no] { $count }
    } qui répondent à « { $text } »
desk-search-nothing_among = Rien dans { $group } ne répond à « { $text } ».
desk-search-a_vessel = contenant
desk-search-batches_and_lots = Cuvées et lots
desk-search-bottlings = Embouteillages
desk-search-fruit_taken_in = Fruits reçus
desk-search-papers = Papiers
desk-search-entries_and_remarks = Écritures et remarques
desk-search-put_right_since = rectifié depuis
desk-search-waits_for_an_answer = attend une réponse
desk-search-out_of_use = hors service
desk-search-since = depuis { $since }
desk-search-no = { $day }, { $person }, n° { $number }
desk-search-to = { $since } à { $until }
desk-search-to2 = jusqu’à { $last }
desk-look-row = Ligne { $number }, { $head_of }
desk-look-row2 = ligne
desk-look-computed = calculé
desk-look-pure_alcohol_l = Alcool pur, L{ $part }
desk-look-rows = { $name } · { $count } lignes · { $code }
desk-look-look_again = Regarder encore
desk-look-nothing_is_in_the_book = Rien n’est encore au registre.
desk-look-cell_is_a_formula_what =
    { $formulas ->
        [one] { $formulas } cellule est une formule : on prend ce qu’elle a montré en dernier.
       *[other] { $formulas } cellules sont des formules : on prend ce qu’elles ont montré en dernier.
    }
desk-look-read_them_so = Les lire ainsi
desk-look-which_column_is_which = Quelle colonne est quoi
desk-look-of_taken = { $count } sur { $count2 } prises
desk-look-these_rows_are = Ces lignes sont
desk-look-not_said = non dit
desk-look-in = en { $unit }
desk-look-none_of_these = aucune de celles-ci
desk-look-more_rows_fit = { $count } lignes de plus vont
desk-look-rows_to = lignes { $others } à { $others2 }
desk-look-what_does_not_fit_in = Ce qui ne va pas, en mots
desk-look-row3 = ligne { $number }
desk-look-leave_row_out = Laisser la ligne { $number }
desk-look-more_put_these_right_first = { $more } de plus. Rectifier d’abord celles-ci, ou dans la feuille.
desk-look-rows_fit_they_bring = { $count } lignes vont. Elles apportent
desk-look-l_of_pure_alcohol = { $bold } L d’alcool pur
desk-look-row_fit =
    { $count ->
        [one] { $count } ligne va.
       *[other] { $count } lignes vont.
    }
desk-look-put_in_the_book = Mettre { $put } au registre
desk-look-the_book_has_all_of = Le registre a déjà tout ceci. Rien n’est à faire.
desk-look-nothing_fits_yet = Rien ne va encore.
desk-look-known_already = déjà connu
desk-look-does_not_fit = ne va pas
desk-look-left_out = laissé
desk-look-days_in_digits = Jours en chiffres
desk-look-days_were_read_as = Jours lus comme
desk-look-day_month_year = jour, mois, année
desk-look-month_day_year = mois, jour, année
desk-look-more_of = Autres : { $title }
desk-start-moving_in = Emménagement
desk-start-copy_the_rows_with_their = Copier les lignes avec leurs titres dans le tableur, et les coller ici.
desk-start-template_of_csv = Modèle : { $title }, CSV
desk-start-sheets = Feuilles
desk-start-a_file = Un fichier
desk-start-csv_xlsx_or_ods_with = CSV, XLSX ou ODS, un titre sur chaque colonne, dans n’importe quel ordre. Un classeur peut contenir plusieurs tableaux.
desk-start-or_pasted = Ou collé
desk-start-nothing_is_written_before_you = Rien n’est écrit avant que vous le disiez.
desk-start-templates = Modèles
desk-start-all_in_one_workbook = Tous en un classeur
desk-start-needed_more_may_be_there = requises ; { $count } de plus possibles
desk-start-put_in_so_far = Entré jusqu’ici
desk-start-no_sheet_yet = Pas encore de feuille.
desk-start-no = N°
desk-taken-why_it_is_taken_back = Pourquoi l’annuler
desk-taken-the_file = Le fichier
desk-taken-another_sheet = Une autre feuille
desk-taken-put_in_by_kept_as = Entré par { $person }, { $when }. Gardé tel quel, empreinte { $code }.
desk-taken-by = { $when } par { $back_by } : { $reason }
desk-taken-take_the_whole_sheet_back = Annuler toute la feuille
desk-taken-table = Table
desk-taken-row = Ligne
desk-taken-which = Lequel
desk-taken-opening_stock = stock d’ouverture
desk-taken-sheet = Feuille { $no }
desk-cautions-n20_to_30_vol = 20 à 30 % vol
desk-cautions-n40_to_60_proof = 40 à 60 proof
desk-cautions-n20_to_30_ml = 20 à 30 mL
desk-cautions-about_1_fl_oz = environ 1 fl oz
desk-cautions-reduce_to_a_glass_and = Réduire à { $what }, { $what2 } par verre, et cracher. Trois ou quatre séries au plus par séance, de l’eau et du pain entre deux, deux minutes de repos. Personne ne conduit ni ne travaille à un alambic ou à une machine après avoir dégusté. Les têtes ne se dégustent jamais : le nez au plus. Une dégustation n’innocente jamais ce qui est dans l’alcool : méthanol, acide cyanhydrique et carbamate d’éthyle n’ont pas de goût qui le dise. Les règles de la maison, la loi locale et un laboratoire agréé passent d’abord.
desk-new-what_a_number_of_answers = Ce qu’un nombre de réponses trouve
desk-new-triangle_three_glasses_one_is = Triangle : trois verres, l’un est différent. Duo-trio : un est connu, lequel des deux est le même ? Paire : lequel a plus de ce que vous demandez ? Unilatérale si vous nommez A comme réponse à l’avance. Classement : trois à cinq échantillons dans l’ordre.
desk-new-of_sample_in_words = De l’échantillon { $letter }, en mots
desk-new-tasters = Dégustateurs
desk-new-draw_the_codes_and_seal = Tirer les codes et les sceller
desk-new-a_triangle_at_a_risk = Un triangle à un risque de 5 %. Peu de réponses ne trouvent que de grandes différences.
desk-new-right_at_least = Justes, au moins
desk-new-found_if_half_perceive_it = Trouvé si la moitié la perçoit
desk-new-found_four_times_in_five = Trouvé quatre fois sur cinq à partir de
desk-new-who_perceive_it = { $what } % qui la perçoivent
desk-new-set_out_a_blind_tasting = Préparer une dégustation à l’aveugle
desk-new-n64_to_60_vol = 64 à 60 % vol
desk-new-n128_to_120_proof = 128 à 120 proof
desk-tasting-how_often_guessing_alone_gives = Combien souvent deviner donne chaque nombre de réponses justes ; cette dégustation en a donné { $right } sur { $answers }.
desk-tasting-who_has_answered = Qui a répondu
desk-tasting-serving_sheet = Feuille de service
desk-tasting-risk = { $bold } { $method }, risque { $alpha_pct } %
desk-tasting-served_at = servi à { $served }
desk-tasting-set_out_by_on = Préparée par { $person } le { $when }.
desk-tasting-what_follows_by = Ce qui suit, par { $person } : { $bold }
desk-tasting-answers_came_in_after_the =
    { $count } { $count ->
        [one] réponse est venue
       *[other] réponses sont venues
    } après l’ouverture, notées avant elle selon l’horloge du téléphone : { $late }.
desk-tasting-bars_how_often_guessing_alone = Barres : combien souvent deviner en donne autant. Le trait : cette dégustation.
desk-tasting-plan_a_cut_that_rests = Prévoir une coupe qui s’y appuie
desk-tasting-plan_a_vat_that_rests = Prévoir un assemblage qui s’y appuie
desk-tasting-it_was_opened_on_and = Elle a été ouverte le { $when }, et aucune réponse ne compte.
desk-tasting-letter = Lettre
desk-tasting-sample = Échantillon
desk-tasting-of_it = Précision
desk-tasting-rank_sum = Somme des rangs
desk-tasting-batch = cuvée { $name }
desk-tasting-run = chauffe { $name }
desk-tasting-taster = Dégustateur
desk-tasting-glasses = Verres
desk-tasting-named = Nommé
desk-tasting-how_sure = Certitude
desk-tasting-what_gave_it_away = Ce qui l’a trahi
desk-tasting-not =
    { $picked }, { $is_right ->
        [yes] juste
       *[no] non
    }
desk-tasting-entry = écriture
desk-tasting-sealed_of_answers_are_in = Scellé : { $count } réponses sur { $count2 } sont là
desk-tasting-which_code_holds_which_sample = Quel code tient quel échantillon n’est qu’entre les mains de qui verse. L’écriture garde le sceau de la clé, pour que personne ne puisse la changer après.
desk-tasting-glasses_left_to_right = Verres, de gauche à droite
desk-tasting-tasters_answer_on_the_phone = Les dégustateurs répondent sur le téléphone, sous « À l’aveugle ». Cela marche sans réseau.
desk-tasting-answers_that_are_not_in =
    { $are_in ->
        [yes] Toutes les réponses sont là.
       *[no] Les réponses pas encore là ne compteront pas.
    } Une fois ouverte elle reste ouverte.
desk-tasting-what_follows_if_you_know = Ce qui suit, si vous le savez déjà
desk-tasting-you_taste_in_this_one = Vous dégustez dans celle-ci. Vous pouvez l’ouvrir quand la dernière réponse est là.
desk-tasting-blind_tasting = À l’aveugle : { $name }
desk-tasting-difference_found = différence trouvée
desk-tasting-no_difference_shown = pas de différence montrée
desk-tasting-in = entrés
desk-tasting-run2 = chauffe { $run }, { $what }
desk-tasting-the_book_has_no_tasting = Le registre n’a pas de dégustation de ce nom. La chercher dans la liste des dégustations.
desk-tasting-you_taste_in_this_one2 = Vous dégustez dans celle-ci. Vous pourrez l’ouvrir quand la dernière réponse sera là.
desk-tasting-its_key_is_not_in = Sa clé n’est pas dans ce registre : elle a été tirée après la sauvegarde d’où vient ce registre. La verser de nouveau.
desk-tasting-this_sheet_says_which_sample = Cette feuille dit quel échantillon est dans quel verre : elle est pour qui verse, et aucun dégustateur ne la voit.
desk-tasting-not_said = non dit
desk-tasting-the_book_has_a_tasting = Le registre a une dégustation de ce nom. En donner un autre à celle-ci.
desk-tasting-the_codes_are_drawn_and = Les codes sont tirés et scellés. Le téléphone de chaque dégustateur les a avec les prochaines fiches.
desk-tasting-it_is_open_answers_from = Elle est ouverte. Les réponses ne comptent plus désormais.
desk-tasting-by_guessing_alone_so_many = En devinant, autant ou plus viennent { $times_in } ({ $p_words }).
desk-tasting-by_chance_alone_the_rank = Par le seul hasard, les sommes de rangs s’écartent autant { $times_in } ({ $p_words }, { $how } ; chiffre de Friedman { $friedman }).
desk-tasting-of_rank_sums_must_be = { $answers } de { $people } : les sommes de rangs doivent s’écarter de { $lsd } pour compter.
desk-tasting-n1_time_in = 1 fois sur { $min }
desk-tasting-named2 = nommé { $named }
desk-tasting-no_difference_shown_that_is = Pas de différence montrée. Ce n’est pas une preuve d’identité.
desk-tasting-were_needed = il en fallait { $needed }
desk-tasting-so_few_answers_cannot_show = si peu de réponses ne peuvent montrer une différence à ce risque
desk-tasting-can_find_nothing_at_a = { $answers } ne peuvent rien trouver à un risque de { $tasting } %.
desk-tasting-of_find_a_difference_four = { $answers } de { $people } trouvent une différence quatre fois sur cinq si au moins { $share } des réponses la perçoivent ; une plus petite échappe facilement.
desk-tasting-the_order_is_more_than = L’ordre est plus que du hasard. Sont distincts : { $pairs }.
desk-tasting-counted_out_over_all_orders = compté sur tous les ordres
desk-tasting-by_chi_square_which_is = par le khi-deux, proche pour autant
desk-tasting-it_speaks_of_these_people = Cela parle de ces personnes, pas des buveurs en général.
desk-tasting-answers =
    { $many ->
        [one] { $many } réponse
       *[other] { $many } réponses
    }
desk-tasting-people =
    { $many ->
        [one] { $many } personne
       *[other] { $many } personnes
    }
desk-tasting-times_in_10 = { $min } fois sur 10
desk-tasting-p_below_0_0001 = p sous 0,0001
desk-tasting-they_can_be_told_apart = On peut les distinguer.
desk-tasting-is_named_more_often = { $named } est nommé plus souvent.
desk-tasting-the_order_is_more_than2 = L’ordre est plus que du hasard, mais aucun ne s’écarte assez d’un autre pour dire lequel.
desk-tasting-no_order_shown_that_is = Pas d’ordre montré. Ce n’est pas une preuve d’identité.
desk-tasting-of = { $right } sur { $many } { $what } ; { $needed }. { $says }
desk-tastings-set_out_a_tasting = Préparer une dégustation
desk-tastings-ask_one_question_before_pouring = Poser une seule question avant de verser. Aucun dégustateur ne sait quel verre tient quoi ; le registre compte ce que valent les réponses. Les têtes ne se dégustent jamais.
desk-tastings-none_yet_set_one_out = Aucune encore. En préparer une : deux échantillons, une question, et qui déguste.
desk-tastings-tasting = Dégustation
desk-tastings-question = Question
desk-tastings-method = Méthode
desk-tastings-set_out = Préparée
desk-tastings-of = { $count } sur { $count2 }
desk-tastings-nobody_answered = personne n’a répondu
desk-tastings-sealed = scellé
desk-asked-look_at_it = Voir : { $title }
desk-asked-more_about_it = { $count } de plus à ce sujet
desk-asked-all_questions_with_their_answers = Les { $owed } questions, avec leurs réponses
desk-asked-answer_them = Y répondre
desk-asked-no_figure_waits_for_an = Aucun chiffre n’attend de réponse.
desk-asked-you = vous
desk-asked-it_stands = maintenue
desk-asked-the_last_answer_was_by = La dernière réponse était { $near }, par { $who } : { $verdict }
desk-asked-what_comes_in_out_of = Ce qui arrive hors plage sera ici.
desk-asked-all_answers = Toutes les réponses
desk-asked-look_at_it_on = Voir : { $title } sur { $mark }
desk-asked-struck = rayée
desk-house-pure_alcohol_year_by_year = Alcool pur, année par année
desk-house-the_house_holds = La maison tient
desk-house-litres_of_pure_alcohol = litres d’alcool pur
desk-house-by_the_book_at = { $what }, selon le registre à { $minute }
desk-house-less_than_on =
    { $more } de { $is_more ->
        [yes] plus
       *[no] moins
    } qu’au { $since }
desk-house-pure_alcohol_by_spirit = Alcool pur par alcool
desk-house-oldest = plus ancien
desk-house-others = { $many } autres
desk-house-wash_and_runs_under_way = matières et chauffes en cours
desk-house-at_the_ends_of_months = Aux fins de mois, à ce jour : le tout, et ce qui est en stockage.
desk-house-year_by_year = Année par année
desk-house-in_storage = en stockage
desk-house-in_processing = en traitement
desk-house-in_production = en production
desk-house-season = Campagne { $season }
desk-house-fruit_in = fruit entré
desk-house-made = fait
desk-house-left = parti
desk-house-lost = perdu
desk-house-pure_alcohol_in_the_house = Alcool pur dans la maison
desk-house-all = tous
desk-line-as_typed_likely_expected = { $part } tel que saisi { $part2 } probable { $part3 } prévu
desk-line-the_day_on_a_line = Le jour sur une ligne
desk-line-cleaned = nettoyé
desk-line-off = arrêtée { $at }
desk-line-reached = atteint : le nez d’abord
desk-line-too_little = encore trop peu de relevés
desk-line-working = calcul en cours
desk-line-cut_to = couper : { $part }
desk-line-end = fin
desk-line-end_of_run = fin de la chauffe
desk-line-span = { $low } à { $high }
desk-line-cleaned_at = nettoyé { $at }, { $person }
desk-line-off_since = { $run } est arrêtée depuis { $at }
desk-line-since = { $run } : { $part } depuis { $at }
desk-line-nothing = rien aujourd’hui
desk-line-by_plan = selon le plan
desk-line-as_last = comme la dernière fois
desk-line-was_expected = prévu vers { $at } : { $what }, { $by } ; relever maintenant, le nez d’abord
desk-line-expected = { $what } vers { $at }, entre { $low } et { $high }, { $by }
desk-line-is_reached = atteint : { $what }, { $by } ; le nez d’abord
desk-line-is_working = calcul en cours : { $what } ; rouvrir la page
desk-line-is_unknown = trop peu de relevés pour dire quand vient : { $what }
desk-lists-phones_backup_and_book = Téléphones, sauvegarde et registre
desk-lists-near_their_end = Près de leur fin
desk-lists-all_ferments = Toutes les fermentations
desk-lists-no_ferment_says_yet_when = Aucune fermentation ne dit encore quand elle finit. { $link }
desk-lists-the_days_are_meant_to = Les jours doivent tenir quatre fois sur cinq ; trois densités égales décident. { $link }
desk-lists-nothing_is_due = Rien n’est dû.
desk-lists-since_you_were_last_here = Depuis votre dernier passage, { $near }
desk-lists-nothing_has_come_in = Rien n’est venu.
desk-lists-entries_of =
    { $entries ->
        [one] écriture
       *[other] écritures
    } sur { $count }
desk-lists-read_them = Les lire
desk-lists-never_heard_yet = encore aucun contact
desk-lists-since_what_it_holds_is = depuis { $near }. Ce qu’il tient n’est pas ici.
desk-lists-more_phones =
    { $more_phones } { $more_phones ->
        [one] téléphone
       *[other] téléphones
    } de plus
desk-lists-book = Registre
desk-lists-entries =
    { $bold } { $what } { $entries ->
        [one] écriture
       *[other] écritures
    }
desk-lists-misses = il en manque { $count }
desk-lists-silent = muet
desk-lists-heard = entendue
desk-lists-being_judged_anew = jugé de nouveau
desk-lists-judged = jugé
desk-lists-every_entry_by_the_rules = chaque écriture selon les règles et limites actuelles
desk-today-today = Aujourd’hui – { $name }
desk-today-owed_an_answer = Réponse due
desk-trace_parts-and_more_all_are_in = et { $more } de plus : tous sont dans le fichier
desk-trace_parts-and_more_all_are_in2 = et { $count } de plus : tous sont dans le fichier
desk-trace-print_the_passport = Imprimer le passeport
desk-trace-load_of_fruit = Apport de fruits
desk-trace-words = { $bold }{ $pure } { $what2 }
desk-trace-its_entry = Son écriture
desk-trace-the_run = La chauffe
desk-trace-the_vessel = Le contenant
desk-trace-lot_mark = Numéro de lot
desk-trace-none_of_it_is_in = Rien n’en est en bouteilles selon le registre.
desk-trace-no_case_of_it_has = Aucun carton n’en est parti selon le registre.
desk-trace-not_accounted_for_yet = pas encore justifié
desk-trace-by_mass = en masse
desk-trace-tasted_blind = Dégusté à l’aveugle
desk-trace-nothing_has_moved_into_it = Rien n’y est encore entré ni n’en est sorti.
desk-trace-every_vessel_and_run_is = Chaque contenant et chaque chauffe compte comme bien mélangé : ce qui en sort tient tout ce qui y est entré, chacun à sa part d’alcool pur. L’alcool d’une fermentation se partage entre ses apports selon leur masse. Un jaugeage change combien il y a, pas ce que c’est.
desk-trace-made_of = Fait de
desk-trace-picture = { $head } : { $name }. La liste sous l’image dit la même chose en mots.
desk-trace-from_before_this_book = D’avant ce registre
desk-trace-received_from_elsewhere = Reçu d’ailleurs
desk-trace-not_on_record = Non inscrit
desk-trace-no_fruit_on_record = Aucun fruit inscrit
desk-trace-not_followed = Non suivi
desk-trace-ferments = Fermentations
desk-trace-receivers = Récipients
desk-trace-cans = Bidons
desk-trace-stills = Alambics
desk-trace-tanks = Cuves
desk-trace-vats = Assemblages
desk-trace-between_sites = Entre sites
desk-trace-bottlings = Embouteillages
desk-trace-bottles_between_sites = Bouteilles entre sites
desk-trace-received_in_bottles = Reçu en bouteilles
desk-trace-gone = Parti
desk-trace-trace_of = Trace : { $name }
desk-trace-the_book_has_nothing_to = Le registre n’a rien à tracer de ce nom. Le chercher sur la page de traçabilité.
desk-trace-under_0_1 = moins de 0,1 %
desk-trace-origin = Origine
desk-trace-bottles_losses = Bouteilles, pertes
desk-trace-others = { $count } autres
desk-dips-strapping_table = Table de jaugeage
desk-dips-paste_the_two_columns_of = Coller les deux colonnes de la table : la lecture, puis le volume, avec entre elles un point-virgule, une tabulation ou un espace. D’une ligne à l’autre le volume suit une droite.
desk-dips-dimensions_of_a_cask = Dimensions d’un fût
desk-dips-inside_without_the_wood_by = Dedans, sans le bois. Par elles le volume est une estimation, à quelque 3 % du fût plein ; un fût pesé est connu dix fois mieux.
desk-dips-dips_of = Jauges de { $mark }
desk-dips-has_its_litres_estimated_from = a ses litres estimés par : { $by }, d’après ses dimensions : { $sizes } cm, { $how }.
desk-dips-how_its_litres_follow_from = Comment les litres suivent d’une jauge
desk-dips-what_is_measured = Ce qui est mesuré
desk-dips-table_a_line_of_dip = Table : par ligne une jauge et un volume
desk-dips-lengths_in = Longueurs en
desk-dips-volumes_in = Volumes en
desk-dips-shell = Paroi
desk-dips-the_table_holds_at = La table vaut à
desk-dips-temperature_in = Température en
desk-dips-tilt_add_to_each_reading = Inclinaison : ajouter à chaque lecture [mm]
desk-dips-diameter_at_the_bung_inside = Diamètre à la bonde, dedans
desk-dips-diameter_of_a_head_inside = Diamètre d’un fond, dedans
desk-dips-length_from_head_to_head = Longueur de fond à fond, dedans
desk-dips-the_cask = Le fût
desk-dips-is_not_dipped_by_the = n’est pas jaugé par le registre : les litres se saisissent.
desk-dips-has_its_litres_from_its = a ses litres par : { $by }, d’après une table de { $count } lignes : { $brief } à { $brief2 } cm, { $brief3 } à { $brief4 } L.
desk-dips-by_a_strapping_table = par une table de jaugeage
desk-dips-by_the_dimensions_of_a = par les dimensions d’un fût, une estimation
desk-dips-not_at_all_litres_are = pas du tout : les litres se saisissent
desk-dips-dip_from_the_bottom_up = hauteur : du fond vers le haut
desk-dips-ullage_from_the_top_down = creux : du haut vers le bas
desk-dips-stainless_steel_48_10_6 = acier inoxydable, 48·10⁻⁶ par °C
desk-dips-mild_steel_36_10_6 = acier doux, 36·10⁻⁶ par °C
desk-dips-other_no_correction = autre : pas de correction
desk-edit-an_entry_of_put_it = Une écriture du { $when } l’a mis à { $bold } : il y est, quoi que dise cette page. Pour le déplacer, noter qu’il a été déplacé.
desk-edit-change = Changer { $mark }
desk-labels-labels = Étiquettes
desk-labels-without_a_place = sans place
desk-labels-every_vessel_here_has_its = Chaque contenant ici a son étiquette.
desk-labels-every_label_that_was_printed = Chaque étiquette imprimée ici dit encore ce que dit le registre.
desk-labels-print_those_ticked = Imprimer les cochées
desk-labels-print_all_of_this_list = Imprimer les { $what } de cette liste
desk-labels-print_at_full_size_not = Imprimer en taille réelle, sans ajuster à la page ; la règle sur la feuille doit mesurer 50 mm.
desk-labels-the_first_of_are_shown = Les { $count } premiers sur { $count2 } sont montrés.
desk-labels-label = Étiquette
desk-labels-own_size = Taille propre
desk-labels-printed = imprimée { $when }
desk-labels-printed_is_what_was_sent = Imprimé veut dire envoyé à l’impression de cette page. Sont sans étiquette les contenants dont l’étiquette n’a été ni imprimée ici ni jamais scannée.
desk-labels-says_something_else_by_now = dit autre chose à présent
desk-labels-tick_at_least_one_vessel = Cocher au moins un contenant, et choisir sur quoi les étiquettes s’impriment.
desk-vessel-twice_the_standard_uncertainty_by = Deux fois l’incertitude type, selon la classe des instruments de son dernier jaugeage et de ce qui a été transféré depuis.
desk-vessel-dips = Jauges
desk-vessel-since = depuis { $when }
desk-vessel-tare = tare { $tare_kg }
desk-vessel-inside_a_fire_zone = en zone à risque d’incendie
desk-vessel-dipped_by_a_table =
    { $is_dips ->
        [yes] estimé par ses dimensions
       *[no] jaugé par une table
    }
desk-vessel-holds = Tient { $holding }
desk-vessel-a_run_is_under_way = Une chauffe est en cours
desk-vessel-since2 = { $link } depuis { $when }.
desk-vessel-no_entries_yet_scan_its = Pas encore d’écritures. Scanner son étiquette à l’atelier, et noter la première.
desk-vessel-all_its_entries = Toutes ses écritures
desk-vessel-the_book_knows_no_vessel = Le registre ne connaît pas de contenant { $mark }. Le chercher dans la liste des contenants.
desk-vessel-there_is_a_vessel_already = Il y a déjà un contenant { $mark }. Choisir un autre code, ou changer celui-là.
desk-vessel-is_in_the_book = { $made } est au registre.
desk-vessels-find_vessels = Chercher des contenants
desk-vessels-add_the_first_then_print = Ajouter le premier ; puis imprimer son étiquette.
desk-vessels-capacity = Capacité, { $what }
access-again-your_password_again_cellarslate = Votre mot de passe encore – Cellarslate
access-again-is_it_still_you = Est-ce toujours vous ?
access-again-this_cannot_be_taken_back = { $name }, ceci ne peut s’annuler, ou sort des données de la maison. Montrer encore une fois que c’est vous ; cela vaut ensuite { $minutes } minutes.
access-again-go_on = Continuer
access-again-use_a_passkey = Avec une clé d’accès
access-again-that_is_not_your_password = Ce n’est pas votre mot de passe. Le saisir de nouveau.
access-error-not_done_cellarslate = Pas fait – Cellarslate
access-error-not_done = Pas fait
access-error-to_the_sites = Aux sites
access-error-to_the_desk = Au bureau
access-error-this_could_not_be_read = Ceci n’a pu être lu. Revenir, revoir ce qui a été saisi, et renvoyer.
access-error-you_may_not_do_this = Vous ne pouvez pas faire cela ici. Demander à quelqu’un du bureau.
access-error-there_is_nothing_at_this = Il n’y a rien à cette adresse. Revenir et choisir dans la liste.
access-error-this_address_does_not_take = Cette adresse ne prend pas cela. Revenir et utiliser le bouton de la page.
access-error-this_is_too_large_send = C’est trop grand. Envoyer moins à la fois.
access-error-send_json_with_content_type = Envoyer du JSON, avec Content-Type: application/json.
access-error-too_many_tries_wait_a = Trop d’essais. Attendre une minute, puis réessayer.
access-error-the_book_stumbled_nothing_handed = Le registre a trébuché. Rien de remis n’est perdu ; réessayer, et prévenir qui tient le serveur.
access-error-the_book_is_busy_try = Le registre est occupé. Réessayer dans un moment.
access-error-this_page_was_open_too = Cette page était ouverte trop longtemps, ou d’avant votre connexion. Revenir, la recharger, la renvoyer.
access-error-this_was_not_sent_from = Ceci n’a pas été envoyé d’une de nos pages. Rouvrir la page et l’envoyer de là.
access-error-this_needs_the_role_ask = Ceci demande le rôle { $access }. Demander à quelqu’un du bureau.
access-error-this_phone_is_not_let = Ce téléphone n’est pas admis. Y ouvrir le code unique du bureau ; rien n’est perdu.
access-invitation-your_password_cellarslate = Votre mot de passe – Cellarslate
access-invitation-choose_your_password = { $name }, choisir votre mot de passe
access-invitation-lets_you_in = { $site } vous admet.
access-invitation-you_are_let_in = Vous êtes admis.
access-invitation-your_short_code_is_nobody = { $who } Votre code court est { $bold }. Vous seul connaissez le mot de passe : le bureau ne peut le lire, seulement vous inviter de nouveau.
access-invitation-ten_characters_at_least_four = Dix caractères au moins. Quatre mots que personne n’assemblerait sont bons ; un nom, une date et « mot de passe » ne le sont pas.
access-invitation-set_it_and_sign_in = Le fixer et se connecter
access-invitation-this_invitation_was_used_has = Cette invitation a servi, a pris fin, ou a été remplacée. En demander une nouvelle au bureau.
access-set_up-set_up_cellarslate = Mise en place – Cellarslate
access-set_up-the_house_first_then_you =
    { $is_group ->
        [yes] Le nom du groupe
       *[no] La maison
    } d’abord, puis vous. Vous pourrez ensuite en admettre d’autres.
access-set_up-a_new_group = Un nouveau groupe
access-set_up-a_new_book = Un nouveau registre
access-set_up-open_the_book = Ouvrir le registre
access-sign_in-sign_in_cellarslate = Connexion – Cellarslate
access-sign_in-sign_in_to_the_desk =
    Se connecter au { $is_group ->
        [yes] groupe
       *[no] bureau
    }
access-sign_in-sign_in = Se connecter
access-sign_in-sign_in_with_a_passkey = Avec une clé d’accès
access-sign_in-on_the_floor_no_sign = À l’atelier aucune connexion n’est nécessaire : le bureau admet un téléphone une fois, par un code à scanner.
access-sign_in-no_such_code = code inconnu
access-sign_in-too_many_tries_wait_s = Trop d’essais. Attendre { $wait_s } s.
access-sign_in-this_server_has_no_authority = Ce serveur n’a pas d’autorité à lui : il marche sans TLS, ou avec un certificat que vous lui avez donné.
access-sign_in-code_or_password_is_wrong = Code ou mot de passe faux. Les saisir de nouveau.
access-sign_in-that_is_not_the_code = Ce n’est pas le code que le serveur a imprimé au démarrage. Le saisir de nouveau.
access-trust-let_this_phone_trust_the = Que ce téléphone se fie à la maison – Cellarslate
access-trust-let_this_phone_trust_the2 = Que ce téléphone se fie à la maison
access-trust-this_server_needs_no_certificate = Ce serveur ne demande pas de certificat sur le téléphone : il ne marche que sur cet ordinateur, ou a un certificat à vous.
access-trust-once_on_each_phone_after = Une fois sur chaque téléphone. Après cela le carnet d’atelier s’ouvre sans avertissement et marche sans réseau.
access-trust-iphone_or_ipad = iPhone ou iPad
access-trust-most_often_it_is_installed = Le plus souvent il est installé, mais l’interrupteur n’est pas mis : Réglages, Général, Informations, Réglages des certificats. S’il n’y a pas d’interrupteur, le profil n’est pas installé : revenir d’une étape.
access-trust-android_phone = Téléphone Android
access-trust-most_often_it_was_filed = Le plus souvent il a été rangé comme certificat Wi-Fi, ou pour VPN et applications, où aucun navigateur ne regarde. Chercher certificat CA dans les Paramètres et y installer le même fichier.
access-trust-windows = Windows
access-trust-it_may_have_been_placed = Il est peut-être rangé ailleurs : choisir soi-même le magasin, Autorités de certification racines de confiance.
access-trust-mac = Mac
access-trust-taken_but_not_set_to = Pris, mais pas réglé sur Toujours approuver : c’est le plus souvent ce qui manque.
access-trust-linux_another = Linux, autre
access-trust-it_may_have_been_imported = Il a peut-être été importé sans la coche qui s’y fie pour les sites web.
access-trust-in_safari_fetch_the_profile = Dans Safari, prendre le profil et toucher Autoriser. Les autres navigateurs de ce téléphone ne peuvent le prendre.
access-trust-soon_after_open_settings_near = Peu après, ouvrir Réglages. Vers le haut se trouve Profil téléchargé (sinon : Général, VPN et gestion de l’appareil). L’ouvrir, toucher Installer, et l’installer.
access-trust-settings_general_about_at_the = Réglages, Général, Informations, tout en bas Réglages des certificats : activer Cellarslate local authority. L’installation seule ne suffit pas.
access-trust-fetch_the_certificate_the_phone = Prendre le certificat. Le téléphone le garde parmi ses téléchargements.
access-trust-open_settings_and_search_for = Ouvrir Paramètres et chercher : certificat CA. (Sécurité, Chiffrement et identifiants, Installer un certificat, Certificat CA.) Toucher Installer quand même. Un téléphone sans verrouillage d’écran en demande d’abord un.
access-trust-choose_the_file_cellarslate_crt = Choisir le fichier cellarslate.crt parmi les téléchargements. Un avis que le réseau peut être surveillé reste ; il parle de ce certificat.
access-trust-fetch_the_certificate_and_open = Prendre le certificat et ouvrir le fichier.
access-trust-install_certificate_current_user_p = Installer un certificat, Utilisateur actuel, tout placer dans : Autorités de certification racines de confiance.
access-trust-close_all_windows_of_the = Fermer toutes les fenêtres du navigateur et rouvrir cette page.
access-trust-fetch_the_certificate_and_open2 = Prendre le certificat et ouvrir le fichier ; Trousseaux d’accès le prend.
access-trust-in_keychain_access_open_cellarslat = Dans Trousseaux d’accès ouvrir Cellarslate local authority, Se fier, et le régler sur Toujours approuver.
access-trust-fetch_the_certificate = Prendre le certificat.
access-trust-in_the_browser_settings_search = Dans le navigateur : Paramètres, chercher : certificats. L’importer sous Autorités ; s’y fier pour les sites web.
access-trust-go_on_this_phone_is = Continuer : ce téléphone est admis
access-trust-open_the_floor_log = Ouvrir le carnet d’atelier
door-frame-this_is_the_demo_is = C’est la démo. { $name } est inventée, comme tout ce qui est dans son registre.{ $break_ }Cassez ce que vous voulez : { $code } la refait à neuf.
door-front-doors = Portes
door-front-the_slate_by_the_still = L’ardoise près de l’alambic, et le registre où elle aboutit.
door-front-three_doors_into_the_same = Trois portes de la même maison, le { $now }.
door-front-a_run_of_is_on = Une chauffe est en cours : { $what }.
door-front-for_an_answer =
    { $asked ->
        [one] { $asked } chiffre attend
       *[other] { $asked } chiffres attendent
    } une réponse.
door-front-the_demo_was_laid_on = La démo a été faite un autre jour, sa chauffe et ses fermentations sont donc de ce jour-là. L’arrêter et la relancer avec { $code } pour l’avoir d’aujourd’hui.
door-front-the_desk = Le bureau
door-front-you_are_see_what_the = Vous êtes { $name }, { $role }. Voir ce que demande le registre, rectifier une erreur, tracer une bouteille, clore un mois.
door-front-lines_of_a_year_and = { $what } lignes d’un an et demi
door-front-sit_down_at_the_desk = S’asseoir au bureau
door-front-a_phone_in_this_browser = Un téléphone, dans ce navigateur
door-front-you_are_the_same_keys = Vous êtes { $name }, { $role }. Les mêmes touches et les mêmes mots qu’à l’atelier ; coupez le réseau si vous voulez.
door-front-the_run_of_is_in = La chauffe de { $still } est entre vos mains
door-front-what_you_log_waits_on = Ce que vous notez attend sur son ardoise
door-front-it_can_scan_the_labels = Il peut scanner les étiquettes ci-dessous
door-front-the_signal_is_cut_for = Le réseau est coupé pour le téléphone de ce navigateur jusqu’à { $clock }.
door-front-open_a_phone_here = Ouvrir ici un téléphone
door-front-your_own_phone = Votre propre téléphone
door-front-hold_its_camera_to_this = Tenir son appareil photo devant ce carré, sur le même réseau sans fil. Il apprend à se fier à cet ordinateur, puis s’ouvre comme { $name }, { $role }. Ni boutique, ni compte.
door-front-or_type = ou saisir{ $break_ }{ $bold }
door-front-afterwards_take_the_certificate_of = Ôter ensuite le certificat du téléphone ; c’est celui de la démo.
door-front-phones_work_without_signal_only = Les téléphones ne marchent sans réseau que là où ils se fient au serveur, cette porte s’ouvre donc en TLS. Arrêter la démo et la relancer :
door-front-then_a_square_stands_here = Il y a alors ici un carré devant lequel tenir un téléphone, et il s’ouvre comme { $name }, { $role }.
door-front-more_of_them_large = D’autres, en grand
door-front-scan_them_with_the_phones = Les scanner avec la page du téléphone, sous Scanner. Pas de caméra ? Y saisir le repère : son dernier caractère contrôle les autres, un faux est donc repéré.
door-front-five_things_to_try = Cinq choses à essayer
door-front-min = { $minutes } min
door-front-everything_here_is_kept_on = Tout ici est gardé sur cet ordinateur, et qui atteint cette page peut entrer. Ce n’est pas un lieu pour les chiffres d’une vraie maison : commencer votre propre registre avec { $code }.
door-front-the_demo_cellarslate = La démo · Cellarslate
door-front-stops_wait =
    { $stops ->
        [one] { $stops } arrêt attend
       *[other] { $stops } arrêts attendent
    }
door-front-more_are_asked =
    { $asked ->
        [one] { $asked } autre question posée
       *[other] { $asked } autres questions posées
    }
door-front-put_the_signal_back = Remettre le réseau
door-front-cut_its_signal = Couper son réseau
door-join-this_phone_joins = Ce téléphone rejoint { $name }
door-join-you_are_the_phone_is = Vous êtes { $name }, { $role }. Le téléphone est admis, prend ce qui est dans chaque contenant, et marche ensuite sans réseau.
door-join-near_an_open_spirit_safe = Près d’un coffre à alcool ouvert un téléphone est une source d’inflammation, sauf s’il est certifié pour ce lieu. La démo s’essaie partout ailleurs.
door-join-this_phone_joins_the_demo = Ce téléphone rejoint la démo · Cellarslate
door-labels-on_the_phone_open_scan = Sur le téléphone ouvrir Scanner et le tenir à une largeur de main de l’une d’elles. Son contenant s’ouvre, avec ou sans réseau.
door-labels-labels_of_the_demo_cellarslate = Étiquettes de la démo · Cellarslate
door-phone-takes_the_phone = { $name } prend le téléphone
door-phone-it_is_let_in_and = Il est admis, et prend ce qui est dans chaque contenant.
door-phone-the_slate_is_kept_by = L’ardoise est tenue par script, et ce navigateur n’en exécute pas. Le bureau marche sans.
door-phone-a_phone_is_let_in = Un téléphone est admis · Cellarslate
door-phone-keeps_pages = Il garde ses pages, et n’a donc pas besoin de réseau.
door-phone-not_let_in = Il n’a pas été admis. { $why }
group-people-who_may_sign_in_here = Qui peut se connecter ici. Les personnes des sites ne sont pas copiées : elles se connectent au leur.
group-people-an_invitation_shown_this_once = Une invitation, montrée cette seule fois
group-people-good_once_within_days_whoever = Bonne une fois, d’ici { $days } jours. Qui l’ouvre choisit le mot de passe ; la remettre soi-même.
group-people-no_longer_here = plus ici
group-people-no_password_yet = pas encore de mot de passe
group-people-add_or_change_somebody = Ajouter ou changer quelqu’un
group-people-look = regarder
group-people-let_sites_in_and_decide = admettre des sites et décider
group-people-no_longer_here2 = Plus ici
group-people-make_an_invitation_to_set = Faire une invitation à choisir un mot de passe
group-people-save = Enregistrer
group-people-lets_sites_in_decides = admet des sites, décide
group-people-short_code = Code court
group-people-looks = regarde
group-period-of_sites_have_closed_it = { $closed } sites sur { $count } l’ont close. La somme est de ce qui est connu maintenant ; ce qui va de site à site n’est ni gain ni perte du groupe.
group-period-sum = Somme
group-period-between_sites = Entre sites
group-period-sent_l = Envoyé, L
group-period-declared_there_l = Déclaré là, L
group-period-difference = Différence
group-period-pure_alcohol_at_20_c = Alcool pur à 20 °C. Ce qui manquait au site qui reçoit est dans son propre compte, comme perdu en route.
group-period-more_has_come_to_light = il en est apparu plus depuis, et c’est dans les chiffres ci-dessous
group-period-part_closed = Close en partie.
group-period-this_site_has_nothing_in = Ce site n’y a rien.
group-period-all_sites = , tous les sites
group-period-in_bulk = en vrac
group-period-bottles = bouteilles, { $goods }
group-period-sent_to_sites_of_the = envoyé à des sites du groupe
group-period-received_from_sites_of_the = reçu de sites du groupe
group-period-left_a_site = parti d’un site
group-period-received_at_a_site = reçu à un site
group-period-declared_above_what_was_sent = déclaré au-dessus de l’envoi
group-period-declared_below_what_was_sent = déclaré au-dessous de l’envoi
group-period-on_the_way_between_sites = En route entre sites
group-periods-what_all_sites_had_on = Ce que tous les sites avaient à la fin de chaque trimestre et mois, à ce jour, en litres d’alcool pur à 20 °C. Les mois de chaque site suivent sa propre horloge.
group-periods-closed_at = Clos à
group-periods-all_sites = Tous les sites
group-periods-on_the_way = En route
group-periods-of = { $closed } sur { $count }
group-sites-let_a_site_in = Admettre un site
group-sites-on_the_sites_computer_once = Sur l’ordinateur du site, une fois, dans la journée :
group-sites-name_of_the_site = Nom du site
group-sites-make_a_code_for_a = Faire un code pour un nouveau site
group-sites-entries_here = Écritures ici
group-sites-of = sur { $head_no }
group-sites-last_7_days = 7 derniers jours
group-sites-stock_and_trace = Stock et trace
group-sites-stopped = arrêté
group-sites-up_to_date = à jour
group-sites-to_number = jusqu’au numéro { $folded_no }
group-sites-chain = Chaîne
group-sites-broken = cassé
group-sites-whole_to = entière jusqu’à { $checked_no }, { $when }
group-sites-not_walked_yet = pas encore parcourue
group-sites-its_computer_is_lost_or = Son ordinateur est perdu, ou nouveau
group-sites-shut_it_out_then_make = L’exclure, puis faire un nouveau code. Ce qu’il a remis reste.
group-sites-shut_out = Exclure { $name }
group-sites-which_book_counts = { $name } : quel registre compte ?
group-sites-from_number_on_the_sites = À partir du numéro { $fork_no }, le registre du site n’est plus celui remis avant : il vient d’une sauvegarde plus ancienne, ou d’une copie. Les deux sont gardés. Ce qui compte ici est le premier, jusqu’au numéro { $cursor } ; l’autre va jusqu’à { $cursor2 }.
group-sites-of_the_first_are_not = du premier ne sont pas dans l’autre.
group-sites-every_entry_of_the_first = Chaque écriture du premier est aussi dans l’autre.
group-sites-ask_the_site_before_you = Demander au site avant de choisir.
group-sites-the_sites_present_book_counts = Le registre actuel du site compte
group-sites-kept_aside = { $aside } gardés à part.
group-sites-papers_that_look_alike = Papiers qui se ressemblent
group-sites-a_receipt_has_the_number = Une réception a le numéro d’une sortie d’un autre site, mais ni l’une ni l’autre ne nomme l’autre site, ou les bouteilles sont d’une autre cuvée. Elles ne sont pas jointes. Si c’est la même chose, rectifier l’écriture pour qu’elle nomme le site, ou la cuvée.
group-sites-received_at = Reçu à
group-sites-from_batch_as_typed = De, cuvée, tel que saisi
group-sites-same_number_sent_by = Même numéro envoyé par
group-sites-sites = Sites
group-sites-chain_broken = chaîne rompue
group-sites-fold_stopped = suivi arrêté
group-sites-two_books = deux registres
group-sites-to_come = à venir
group-sites-entries = écritures
group-trace-in_bottles = en bouteilles
group-trace-pure_alcohol = { $bold } d’alcool pur { $what }
group-trace-site_cases_lot_mark = Site, cartons, numéro de lot
group-trace-bottles_received_from_another_site = Les bouteilles reçues d’un autre site y figurent encore : elles sont parmi celles du site qui les a remplies.
group-trace-to_whom = À qui
group-trace-site_what = Site, quoi
group-trace-and_more = et { $more } de plus
group-trace-sites_are_joined_by_the = Les sites sont joints par le numéro du papier d’une sortie, si la réception le nomme et qu’un côté nomme l’autre ; les bouteilles aussi par leur cuvée ou numéro de lot. Ce qui est en route est entre eux.
group-trace-trace_of = Trace : { $name }
group-trace-from_to = de { $sender } à { $receiver }
group-trace-declared = déclaré { $differs }
group-trace-document = document { $document }
group-trace_search-a_trace_goes_both_ways = Une trace va dans les deux sens et par-delà les sites : d’une bouteille jusqu’au fruit à n’importe quel site, et d’un apport de fruits jusqu’à chaque bouteille.
group-trace_search-no_site_has_anything_by = Aucun site n’a rien de ce nom. Essayer un repère, une cuvée, le numéro d’un carton, ou une partie du nom d’un producteur.
desk-weight-stop = arrêt
desk-weight-ask = question
desk-weight-note = note
desk-weight-entered = inscrit
desk-weight-waiting = en attente
desk-sort-fermenter = cuve de fermentation
desk-sort-still = alambic
desk-sort-receiver = récipient
desk-sort-tank = cuve
desk-sort-cask = fût
desk-sort-can = bidon
desk-sort-place = place
desk-forms-it_stands = Maintenir
desk-forms-strike = Rayer
desk-forms-the_site = le site
desk-forms-a_sort_of_vessel = une sorte de contenant
desk-forms-a_material = une matière
desk-forms-one_vessel = un contenant
desk-forms-a_product = un produit
desk-forms-production_storage_processing_us = production, stockage, traitement (US)
desk-forms-one_excise_warehouse = un seul entrepôt fiscal
desk-forms-floor_log_and_look = atelier : noter et regarder
desk-forms-distiller_also_answer_and_amend = distillateur : aussi répondre et rectifier
desk-forms-office_all = bureau : tout
desk-forms-code = Code
desk-forms-what_it_is = Ce que c’est
desk-forms-capacity_l = Capacité [L]
desk-forms-working_level_l = Niveau de travail [L]
desk-forms-tare_kg = Tare [kg]
desk-forms-wood = Bois
desk-forms-toast_or_char = Chauffe ou bousinage
desk-forms-stands_inside_a_fire_zone = Se trouve en zone à risque d’incendie
desk-forms-label_goes_on_a_curve = Étiquette sur une courbe (repère seul)
desk-forms-note = Note
desk-forms-out_of_use = Hors service
desk-forms-for = Pour
desk-forms-which = Lequel
desk-forms-kind_and_field = Type et champ
desk-forms-usual_from = Habituel de
desk-forms-usual_to = Habituel à
desk-forms-possible_from = Possible de
desk-forms-possible_to = Possible à
desk-forms-limit = Limite
desk-forms-figure = Chiffre
desk-forms-short_code = Code court
desk-forms-trade_roles_the_usual_one = Rôles du métier, l’habituel d’abord
desk-forms-floor_code_4_to_8 = Code d’atelier (4 à 8 chiffres ; vide garde l’ancien)
desk-forms-has_left_the_house = A quitté la maison
desk-forms-the_password_until_now = Le mot de passe jusqu’ici
desk-forms-a_new_one = Un nouveau
desk-forms-the_same_again = Le même encore
desk-forms-its_name = Son nom
desk-forms-folder_on_the_server_on = Dossier sur le serveur, sur un autre disque
desk-forms-hours_between_two = Heures entre deux
desk-forms-how_many_are_kept = Combien sont gardées
desk-forms-backups_of_this_computer_are = Les sauvegardes de cet ordinateur se font autrement, chaque jour
desk-forms-they_are_a = Leur rôle
desk-forms-address = Adresse
desk-forms-number_by_which_papers_call = Numéro sous lequel les papiers les nomment
desk-forms-name_of_the_phone = Nom du téléphone
desk-forms-the_house = La maison
desk-forms-units = Unités
desk-forms-decimal_mark = Signe décimal
desk-forms-accounts = Comptes
desk-forms-height_above_the_sea_m = Altitude [m]
desk-forms-language_where_nobody_has_chosen = Langue si personne n’en a choisi
desk-forms-time_zone = Fuseau horaire
desk-forms-what_goes_into_or_out = Ce qui entre aux comptes ou en sort veut le PIN au moment de noter
desk-forms-a_season_begins_in = Une campagne commence en
desk-forms-scale_from = Échelle de
desk-forms-scale_to = Échelle à
desk-forms-unit = Unité
desk-forms-class = Classe
desk-forms-interval_of_the_scale = Échelon de l’échelle
desk-forms-corrections_of_its_certificate_wha = Corrections de son certificat, ce qu’il montre : ce qu’il faut ajouter, comme 0: -0.1; 20: 0; 40: +0.2
desk-forms-check_due_on = Contrôle dû le
desk-forms-first_free_label_on_the = Première étiquette libre de la feuille
desk-forms-own_width_mm = Largeur propre [mm]
desk-forms-own_height_mm = Hauteur propre [mm]
desk-forms-own_clear_mm = Libre à chaque bord [mm]
desk-forms-label_file = En
desk-forms-case_from = Premier carton
desk-forms-case_to = Dernier carton
desk-forms-flat_labels_carry_the_address = Les étiquettes plates portent l’adresse, pour que l’appareil photo d’un téléphone ouvre le contenant
desk-forms-also_a_stand_off_label = Aussi une étiquette à distance pour les contenants en zone à risque d’incendie
desk-forms-there_is_no_such_time = Ce fuseau n’existe pas. En saisir un comme Europe/Vienna.
desk-forms-pick_it_stands_or_strike = Choisir : maintenir, ou rayer.
desk-forms-say_why_in_a_few = Dire pourquoi, en quelques mots.
desk-forms-type_its_code_such_as = Saisir son code, comme F3 ou C031.
desk-forms-type_a_short_code = Saisir un code court.
desk-forms-type_the_name = Saisir le nom.
desk-forms-to_whole = { $low } à { $high }, entier.
desk-forms-type_your_password = Saisir votre mot de passe.
desk-forms-type_a_password = Saisir un mot de passe.
desk-forms-at_least_characters_a_few = Au moins { $what } caractères ; quelques mots suffisent.
desk-forms-the_two_passwords_differ_type = Les deux mots de passe diffèrent. Les saisir de nouveau.
desk-forms-type_a_name = Saisir un nom.
desk-forms-type_hours = Saisir des heures.
desk-forms-type_a_number = Saisir un nombre.
desk-forms-name_it_such_as_ph = Le nommer, comme PH-3.
desk-forms-type_the_name_of_the = Saisir le nom de la maison.
desk-forms-type_its_number_such_as = Saisir son numéro, comme TH-2.
desk-forms-type_what_it_is_such = Saisir ce que c’est, comme thermomètre.
desk-forms-grower_or_supplier = producteur ou fournisseur
desk-forms-point_14_6 = point : 14.6
desk-forms-comma_14_6 = virgule : 14,6
desk-forms-as_the_law_prescribes = comme la loi le prescrit
desk-forms-in_use = en service
desk-forms-out_of_use2 = hors service
desk-forms-n1_to_7_letters_or = 1 à 7 lettres ou chiffres.
desk-forms-n1_to_8_letters_or = 1 à 8 lettres ou chiffres.
desk-forms-n4_to_8_digits = 4 à 8 chiffres.
desk-forms-letters_digits_hyphen = Lettres, chiffres, trait d’union.
desk-forms-pick_the_day = Choisir le jour.
access-forms-your_short_code = Votre code court
access-forms-password = Mot de passe
access-forms-your_password = Votre mot de passe
access-forms-a_password_of_your_own = Un mot de passe à vous
access-forms-the_same_again = Le même encore
access-forms-set_up_code = Code de mise en place
access-forms-the_house = La maison
access-forms-units = Unités
access-forms-your_name = Votre nom
access-forms-type_your_short_code = Saisir votre code court.
access-forms-type_your_password = Saisir votre mot de passe.
access-forms-type_a_password = Saisir un mot de passe.
access-forms-at_least_characters_a_few = Au moins { $what } caractères ; quelques mots suffisent.
access-forms-the_two_passwords_differ_type = Les deux mots de passe diffèrent. Les saisir de nouveau.
access-forms-type_the_set_up_code = Saisir le code de mise en place que le serveur a imprimé.
access-forms-type_the_name_of_the = Saisir le nom de la maison.
access-forms-type_a_short_code_such = Saisir un code court, comme vos initiales.
access-forms-type_your_name = Saisir votre nom.
access-forms-n1_to_8_letters_or = 1 à 8 lettres ou chiffres.
desk-vat_form-as_few_vessels_as_can = le moins de contenants possible
desk-vat_form-the_oldest_stays = le plus ancien reste
desk-vat_form-the_oldest_goes_first = le plus ancien d’abord
desk-vat_form-strength_empty_as_it_comes = Titre (vide : comme il vient)
desk-vat_form-unit_of_strength = Unité du titre
desk-vat_form-volume_l_empty_all_they = Volume [L] (vide : tout ce qu’ils donnent)
desk-vat_form-volume_may_be_off_by = Le volume peut s’écarter de [%]
desk-vat_form-most_of_any_one_vessel = Au plus d’un seul contenant [%]
desk-vat_form-most_of_any_one_lot = Au plus d’un seul lot [%]
desk-vat_form-youngest_in_wood_years = Le plus jeune sous bois [ans]
desk-vat_form-the_wood_of_a_200 = Le bois d’un fût de 200 L garde [kg]
desk-vat_form-aim = But
desk-vat_form-casks_may_be_drawn_in = Les fûts peuvent se prélever en partie
desk-vat_form-name_of_the_vat = Nom de l’assemblage
desk-vat_form-wood_keeps_of = le bois garde { $kept } de { $what }
desk-vat_form-strength_as_it_comes = titre comme il vient
desk-vat_form-within = { $volume } à { $figure } % près
desk-vat_form-all_they_give = tout ce qu’ils donnent
desk-vat_form-of_one_vessel = d’un seul contenant
desk-vat_form-of_one_lot = d’un seul lot
desk-vat_form-youngest_years_in_wood = le plus jeune { $figure } ans sous bois
desk-vat_form-between_and_please = Entre { $low } et { $high }, s’il vous plaît.
desk-vat_form-at_most = au plus { $figure } % { $words }
desk-vat_form-vol = % vol
desk-cellar-by_the_fall_of_gravity = par la baisse de densité
desk-cellar-as_the_law_of_1880 = comme la loi de 1880 le présumait
desk-cellar-by_the_wash_as_measured = par les matières mesurées
desk-cellar-by_low_wines = par le brouillis
desk-cellar-by_spirits_and_feints = par eaux-de-vie et alcools imparfaits
desk-cellar-a_leak = une fuite ?
desk-cellar-a_slip_of_the_glass = une erreur d’aréomètre ?
desk-cellar-another_cask = un autre fût ?
desk-cellar-to_regauge = à rejauger
desk-cellar-to_sample = à échantillonner
desk-cellar-to_taste = à déguster
desk-cellar-loss_a_year = perte par an
desk-cellar-ferments = Fermentations
desk-cellar-places = Places
desk-cellar-ready = Prêt
desk-cellar-house_rules = Règles de la maison
desk-cellar-mash_temperature = Température du moût
desk-cellar-pure_alcohol = Alcool pur
desk-cellar-strength = Titre
desk-cellar-the_book_has_no_such = Le registre n’a pas cette fermentation. La chercher dans la liste des fermentations.
desk-cellar-the_book_knows_no_cask = Le registre ne connaît pas de fût { $mark }. Le chercher dans la liste des fûts.
desk-cellar-scores = Notes
desk-cellar-of_10 = sur 10
desk-cellar-that_is_no_day_pick = Ce n’est pas un jour. En choisir un, comme 2027-05-01.
desk-cellar-gained = gagné
desk-cellar-by_place = place
desk-cellar-by_age = âge
desk-cellar-strength_in_words = titre
desk-cellar-gravity = densité
desk-cellar-expected = prévu
desk-cellar-score = note
desk-trust-the_certificate_ends_in_days = Le certificat prend fin dans { $left_days } jours et n’a pas été renouvelé. Voir ce qui le renouvelle.
desk-trust-the_certificate_ended_on_phones = Le certificat a pris fin le { $ends }. Les téléphones gardent ce qu’ils notent, et ne remettent rien avant qu’il soit neuf.
paper-batch-batch_record = Feuille de cuvée : { $ferment }
paper-batch-gravity_and_temperature = Densité et température
paper-batch-batch_record2 = Feuille de cuvée : { $batch }
paper-batch-bottled = { $batch }, embouteillé
paper-batch-tank_gauges = Jaugeages de cuve
paper-batch-checks_of_the_line = Contrôles de la ligne
paper-batch-its_entries = Ses écritures
paper-batch-made_by = Fait par
paper-batch-looked_over_by = Revu par
paper-batch-not_read_yet = Pas encore relevé.
paper-batch-counts_of_its_alcohol = Comptes de son alcool
paper-batch-at = À
paper-batch-tank = Cuve
paper-batch-true = Réel { $unit }
paper-batch-no_bottling_tank_gauge_yet = Pas encore de jaugeage de cuve d’embouteillage.
paper-batch-fill = Rempli, %
paper-batch-least = Le moins
paper-batch-most = Le plus
paper-batch-labels_right = Étiquettes justes
paper-batch-done = Fait
paper-batch-odd_case = Carton incomplet
paper-batch-broken = Cassées
paper-batch-library = Échantilloth.
paper-batch-good = Bonnes
paper-batch-not_closed_yet = Pas encore clos.
paper-batch-nothing_has_left_the_tank = Rien n’a encore quitté la cuve.
paper-batch-no = N°
paper-batch-fermenter = Cuve de fermentation
paper-batch-stands_at = Se trouve à
paper-batch-emptied = Vidé
paper-batch-first_gravity = Première densité
paper-batch-last_gravity = Dernière densité
paper-batch-closed_at = Clos à
paper-batch-wash = Matières
paper-batch-wash_strength = Titre des matières
paper-batch-pure_alcohol_in_the_wash = Alcool pur des matières
paper-batch-count = Compter
paper-batch-of_wash = { $unit } de matières
paper-batch-tanks = Cuves
paper-batch-bottle = Bouteille
paper-batch-strength_on_the_label = Titre sur l’étiquette
paper-batch-good_bottles = Bonnes bouteilles
paper-batch-kept_in_the_library = Gardé à l’échantillothèque
paper-batch-pure_alcohol_in_bottles = Alcool pur en bouteilles
paper-batch-in = { $what } dans { $mark }
paper-batch-to = { $first } à { $last }
paper-batch-at2 = { $unit } à { $temp }
paper-cautions-the_sites_own_assessment_local = L’évaluation du site, le code local et les gens agréés passent d’abord. Rien sur ce papier ne dit qu’un lieu ou un alcool est sûr.
paper-cautions-hot_and_under_pressure_if = Chaud, et sous pression si un passage se bouche. De l’eau froide dans un alambic chaud et fermé peut l’écraser. Garder les évents libres ; ne jamais quitter un alambic en marche.
paper-cautions-alcohol_vapour_burns_no_flame = La vapeur d’alcool brûle. Ni flamme, ni étincelle, ni téléphone ordinaire dans la ligne marquée ; lire au coffre, reculer, puis écrire.
paper-cautions-a_hydrometer_cannot_see_methanol = Un aréomètre ne voit pas le méthanol. Les têtes en tiennent une part, le cœur et les queues aussi ; seul un laboratoire le sait. Ne pas goûter les premières gouttes.
paper-cautions-few_samples_small_and_diluted = Peu d’échantillons, petits et dilués, et cracher. De l’eau et du pain entre deux. Personne ne conduit, ni ne travaille à un alambic ou à une machine, après avoir dégusté.
paper-cautions-heads_are_never_tasted_nose = Les têtes ne se dégustent jamais, le nez au plus. Une dégustation n’innocente jamais ce qui est dans un alcool : méthanol, acide cyanhydrique et carbamate d’éthyle n’ont pas de goût qui le dise.
paper-cautions-carbon_dioxide_has_no_smell = Le dioxyde de carbone n’a pas d’odeur et reste au sol. À 5000 ppm sortir, ventiler, prévenir le responsable ; à 30 000 ppm dehors aussitôt. Une bougie n’est pas un test.
paper-cautions-nobody_enters_a_tank_or = Personne n’entre dans une cuve seul, ni sans permis, mesure de gaz et quelqu’un dehors.
paper-cautions-a_full_cask_of_225 = Un fût plein de 225 L (59 gal) pèse 220 à 260 kg (485 à 573 lb). Chariot, palan ou cale ; jamais le dos.
paper-cautions-say_where_you_are_and = Dire où l’on est et quand on revient.
paper-count-count_sheet = Feuille de compte
paper-count-begun_date_and_time = Début, date et heure
paper-count-ended_date_and_time = Fin, date et heure
paper-count-instruments_used = Instruments utilisés
paper-count-what_it_is = Ce que c’est
paper-count-here = Ici
paper-count-gross_or_dip = Brut, { $kg }, ou jauge, { $what }
paper-count-glass = Aréomètre
paper-count-spirit = Alcool { $unit }
paper-count-stands_there_and_is_not = Est là et n’est pas sur cette feuille
paper-count-counted_by = Compté par
paper-count-second_person = Deuxième personne
paper-count-other_places = Autres places
paper-imprint-book_up_to_no_chain = registre jusqu’au n° { $number }, chaîne { $digest }
paper-pages-nothing_has_a_place_there = Rien n’a de place là. Voir les places du chai.
paper-pages-the_book_has_no_such = Le registre n’a pas cette écriture à imprimer.
paper-pages-the_book_has_no_such2 = Le registre n’a pas cette chauffe. La chercher dans la liste des chauffes.
paper-pages-the_book_has_no_such3 = Le registre n’a pas cette fermentation. La chercher dans la liste des fermentations.
paper-pages-the_book_has_no_batch = Le registre n’a pas de cuvée de ce nom dans une cuve. La chercher dans la liste des embouteillages.
paper-passport-laboratory_certificate_and_its_num = Bulletin d’analyse, et son numéro
paper-passport-none_in_the_book_methanol = aucun au registre : méthanol et autres chiffres de composition ne sont pas mesurés par lui
paper-passport-lot_passport = Passeport de lot : { $name }
paper-passport-made_of = Fait de
paper-passport-papers_and_certificates = Papiers et bulletins
paper-passport-made_out_by = Établi par
paper-passport-approved_by = Visé par
paper-passport-share = Part
paper-passport-by_the_book = Selon le registre
paper-passport-paper_no = N° de papier
paper-passport-lot_mark = Numéro de lot
paper-passport-good_bottles = Bonnes bouteilles
paper-passport-strength = Titre
paper-passport-pure_alcohol = Alcool pur
paper-passport-day = Jour
paper-passport-came_from = Venait de
paper-passport-cases_and_lot_mark = Cartons et numéro de lot
paper-passport-to_or_from = À ou de
paper-passport-of_l = { $good } de { $size } L
paper-passport-to = { $first } à { $last }
paper-press-name_in_capitals = Nom en capitales
paper-press-signature = Signature
paper-press-date_and_time = Date et heure
paper-press-printed_by = Imprimé { $printed } par { $printable } · { $book }
paper-press-still_open = Encore ouvert
paper-press-open_questions = Questions ouvertes
paper-press-these_are_not_answered_what = Celles-ci sont sans réponse. Ce qui est ci-dessus peut changer avec les réponses.
paper-press-cautions = Précautions
paper-press-page_of = page { $number } sur { $of }
paper-press-in_the_book = Au registre
paper-record-as_read = Tel que lu
paper-record-as_computed = Tel que calculé
paper-record-witness = Témoin
paper-record-gauge_record = Feuille de jaugeage : { $title }
paper-record-record = Feuille : { $title }
paper-record-reading = Relevé
paper-record-instrument = Instrument
paper-record-corrected = Corrigé
paper-record-figure = Chiffre
paper-record-value = Valeur
paper-record-nothing_is_computed_from_this = Rien n’est calculé de cela.
paper-record-what_it_moved = Ce que cela a déplacé
paper-record-read_again_by_hand = Relu à la main
paper-record-gauged_by = Jaugé par
paper-record-done_by = Fait par
paper-record-stands_at = Se trouve à
paper-record-read_by = Lu par
paper-record-role = Rôle
paper-record-gross_or_dip = Brut, { $kg }, ou jauge, { $what }
paper-record-glass = Aréomètre
paper-record-spirit = Alcool { $unit }
paper-record-at = À
paper-record-first = Premier
paper-record-second = Second
paper-run-run_sheet = Feuille de chauffe { $run }
paper-run-minute_by_minute = Minute par minute
paper-run-event = Événement
paper-run-glass = Aréomètre
paper-run-spirit = Alcool { $unit }
paper-run-true = Réel { $unit }
paper-run-vapour = Vapeurs { $unit }
paper-run-dip = Jauge, { $what }
paper-run-into_why = Dans, pourquoi
paper-run-what_the_receivers_hold = Ce que tiennent les récipients
paper-run-still_hand = À l’alambic
paper-run-distiller = Distillateur
paper-run-logged = , noté { $clock }
paper-run-balance = Bilan, { $what }
paper-run-not_accounted_for = non justifié
paper-run-more_than_went_in = plus qu’il n’en est entré
paper-run-true_strength = Titre réel, { $unit }
paper-run-fraction = Fraction
paper-run-none_gauged_yet = Aucune encore jaugée.
paper-run-heads = têtes { $plan }
paper-run-hearts_to = cœur jusqu’à { $plan }
paper-run-tails_to = queues jusqu’à { $plan }
paper-run-of_the_charge = { $rest }, { $abs } % de la charge
paper-run-part = Partie
paper-run-min = { $last } min
paper-run-charged_from = Chargé de
paper-run-begun = Commencé
paper-run-charge = Charge
paper-run-of_it_feints = dont imparfaits
paper-run-pure_alcohol_charged = Alcool pur chargé
paper-run-plan = Plan
paper-run-not_read_taken_as = , non relevée : comptée à { $balance }
paper-run-on = { $what } sur { $still }
paper-run-at = { $unit } à { $temp }
paper-serving-two_of_the_three_are = deux des trois sont les mêmes : lequel est différent ?
paper-serving-the_first_stands_open_as = le premier est connu comme R : lequel des deux codés est le même ?
paper-serving-which_of_the_two_has = lequel des deux a plus de ce qui est demandé ?
paper-serving-put_all_in_order_no = tout mettre en ordre, sans ex æquo
paper-serving-serving_sheet = Feuille de service
paper-serving-letter = Lettre
paper-serving-sample = Échantillon
paper-serving-of_it = Précision
paper-serving-strength_as_found = Titre trouvé
paper-serving-water_added = Eau ajoutée
paper-serving-glasses_from_left_to_right = Verres, de gauche à droite
paper-serving-poured_by = Versé par
paper-serving-taster = Dégustateur
paper-serving-glass_sample = Verre = échantillon
paper-serving-poured = Versé
paper-serving-method = Méthode
paper-serving-served_at = Servi à
paper-serving-sets_of_glasses = Séries de verres
paper-serving-for_whoever_pours = Pour qui verse. Aucun dégustateur ne voit cette feuille, et qui l’a vue ne déguste ni ne parle à un dégustateur.
paper-period-heads_of_the_book_of = Jalons du registre du { $signed }, signés avec la clé { $shorten_digits }.
paper-period-printed = { $name } · imprimé { $printed } · { $house }
paper-period-the_rest_is_open = { $signed } ; le reste est ouvert.
paper-period-pure_alcohol = { $house } : alcool pur, { $name }
paper-period-litres_of_pure_alcohol_at = Litres d’alcool pur à 20 °C à 0,01 près ; proof gallons à 0,1 près. { $what } { $what2 }
paper-period-page = page { $page }
paper-period-as_now_known_with_what = À ce jour, avec ce qui est apparu depuis
paper-period-open_when_it_was_closed = Ouvert lors de la clôture, et lu par qui l’a faite
paper-period-a_book_rewritten_since_has = { $words }Un registre réécrit depuis en a d’autres : cellarslate verify --heads.
paper-period-date = Date
paper-period-name_and_title = Nom et fonction
paper-period-signature = Signature
desk-account-lines_add_up_to_their = Les lignes s’additionnent à leurs totaux tels que montrés : chaque chiffre est le plus proche, ou, si cela ne s’additionnait pas, le suivant (plus grand reste). Le registre garde des microlitres entiers. Un trimestre est arrondi à part : une ligne peut s’écarter de la somme de ses mois telle que montrée, de trois au plus au dernier chiffre.
desk-account-is_twice_the_standard_uncertainty = ± est deux fois l’incertitude type (k = 2), selon la classe des instruments de toutes les écritures d’une ligne ; l’écart d’un instrument compte dans chacune de la même façon. Une ligne sans ± est plus que ses propres relevés : un reste, un calcul, des bouteilles, ou des transferts entre deux jaugeages.
desk-account-is_twice_the_standard_uncertainty2 = ± est deux fois l’incertitude type (k = 2), selon les instruments de la dernière mesure de chaque contenant et de tout ce qui y est entré et en est sorti depuis.
desk-account-what_nobody_measured_mash_a = { $what } Ce que personne n’a mesuré, moût, chauffe en cours et bouteilles, n’y est pas.
desk-account-production = Production
desk-account-storage = Stockage
desk-account-processing = Traitement
desk-account-excise_warehouse = Entrepôt fiscal
desk-account-so_that_the_lines_add = Pour que les lignes s’additionnent, celles-ci sont montrées à côté du plus proche : { $said }.
desk-account-adjustment_of = Ajustement de { $of } : { $more } { $party_words }
desk-account-on_hand_at_the_start = Présent au début
desk-account-total_in = Total entrées
desk-account-total_out = Total sorties
desk-account-on_hand_at_the_end = Présent à la fin
desk-sheets-this_sheet_was_not_kept = Cette feuille n’a pas été gardée si longtemps. La prendre de nouveau.
desk-sheets-the_whole_sheet_was_taken = Toute la feuille a été annulée.
desk-sheets-taken_back_every_line_stays = Annulé. Chaque ligne reste lisible, barrée.
desk-sheets-nothing_in_this_sheet_is = Rien dans cette feuille n’est nouveau : le registre a tout. Rien n’a été changé.
desk-sheets-there_is_no_such_sheet = Il n’y a pas de telle feuille. La chercher dans la liste.
desk-sheets-in_use_stay_the_book = Restent en service { $join } : le registre en a plus que cette feuille.
desk-sheets-there_is_no_such_template = Il n’y a pas de tel modèle. Le chercher dans la liste.
desk-sheets-openings =
    { $many ->
        [one] { $many } ouverture ({ $what })
       *[other] { $many } ouvertures ({ $what })
    }
desk-tasting_form-holds_heads_heads_are_never = tient des têtes. Les têtes ne se dégustent jamais. Prendre un autre échantillon.
desk-tasting_form-name_of_the_tasting = Nom de la dégustation
desk-tasting_form-question_written_down_before_pouri = Question, écrite avant de verser
desk-tasting_form-method = Méthode
desk-tasting_form-risk_of_finding_a_difference = Risque de trouver une différence qui n’en est pas
desk-tasting_form-served_at_all_glasses_alike = Servi à, tous les verres de même
desk-tasting_form-unit_of_strength = Unité du titre
desk-tasting_form-poured_by = Versé par
desk-tasting_form-tasters = Dégustateurs
desk-tasting_form-sets_for_each_taster = Séries par dégustateur
desk-tasting_form-sample_a = Échantillon A
desk-tasting_form-of_it = précision
desk-tasting_form-sample_b = Échantillon B
desk-tasting_form-sample_c = Échantillon C
desk-tasting_form-sample_d = Échantillon D
desk-tasting_form-sample_e = Échantillon E
desk-tasting_form-give_it_a_short_name = Lui donner un nom court, comme T-26-03.
desk-tasting_form-write_the_question_first = Écrire d’abord la question.
desk-tasting_form-type_the_strength_in_the = Saisir le titre dans le verre.
desk-tasting_form-how_many_sets = Combien de séries ?
desk-tasting_form-two_samples_are_the_same = Deux échantillons sont les mêmes. Dire en mots ce qui les sépare, ou en prendre un autre.
desk-tasting_form-pick_at_least_one_taster = Choisir au moins un dégustateur.
desk-tasting_form-who_pours_knows_the_codes = Qui verse connaît les codes, et ne déguste pas. Laisser verser quelqu’un d’autre, ou laisser ouvert.
desk-tasting_form-a_ranking_wants_three_to = Un classement veut trois à cinq échantillons.
desk-tasting_form-this_method_compares_two_samples = Cette méthode compare deux échantillons : choisir A et B, et pas plus.
desk-tasting_form-that_is_more_than_sets = Cela fait plus de { $what } séries de verres. Moins de dégustateurs, ou moins de séries.
desk-tasting_form-letters_digits_and_only_please = Seulement lettres, chiffres et -, s’il vous plaît.
door-page-visitor = Visiteur { $let_in }
door-page-there_is_no_such_thing = Il n’y a rien de tel à essayer. Revenir et choisir dans la liste.
door-page-the_demo_has_none_left = La démo n’en a plus. L’arrêter et la relancer avec --fresh.
door-page-this_person_has_left_the = Cette personne a quitté la maison de la démo. L’arrêter et la relancer avec --fresh.
door-page-there_is_nobody_of_that = Il n’y a personne à ce code dans la démo.
door-page-the_demo_has_let_in = La démo a admis tous les téléphones qu’elle prend. L’arrêter et la relancer avec --fresh.
door-trial-cask_list_csv = liste de fûts.csv
door-trial-log_without_signal = Noter sans réseau
door-trial-it_says_at_once_where = Elle dit aussitôt où est l’écriture. Remettre ici le réseau, et la remise se fait d’elle-même.
door-trial-keep_a_still_run = Tenir une chauffe
door-trial-s1_is_in_its_hearts = S1 coule son cœur. Saisir ce que disent l’aréomètre et le thermomètre, puis faire la coupe.
door-trial-the_true_strength_stands_there = Le titre réel est là aussitôt. La bande se resserre sur la minute de la prochaine coupe.
door-trial-answer_a_question = Répondre à une question
door-trial-a_cask_gained_pure_alcohol = Un fût a gagné de l’alcool pur, dit une ligne de mai. Aucun fût ne le peut.
door-trial-the_likely_figure_is_offered = Le chiffre probable est proposé, et ce qui changerait. Les deux chiffres restent lisibles.
door-trial-trace_a_cask_to_its = Tracer un fût jusqu’à son fruit
door-trial-c_047_was_filled_a = C-047 a été rempli il y a un an : retour par la cuve et la chauffe jusqu’à la ferme et ses apports de fruits.
door-trial-the_picture_says_how_much = L’image dit combien de chacun s’y trouve, et ce qui s’est perdu en route.
door-trial-take_a_sheet_in = Prendre une feuille
door-trial-six_casks_in_somebodys_old = Six fûts dans le vieux tableur de quelqu’un. Deux de ses cellules ne peuvent être justes.
door-trial-which_cells_it_stops_at = À quelles cellules elle s’arrête, et ce qu’elle propose. Rien n’est écrit avant que vous le disiez.
desk-upkeep-opened_and_verified_entries = { $near }, ouverte et vérifiée : { $status } écritures
desk-upkeep-every_page_and_every_digest = { $near }, chaque page et chaque empreinte
desk-upkeep-backup_old = Sauvegarde vieille de { $age }
desk-upkeep-read_through = Relecture
desk-upkeep-less_than_gb_a_full = Moins de { $least } Go. Un disque plein fait attendre les remises sur les téléphones.
desk-upkeep-disk_free = Disque { $said } libre
desk-upkeep-where_the_book_lies = où est le registre
desk-upkeep-not_by_itself = pas d’elle-même
desk-upkeep-backup = Sauvegarde
desk-upkeep-this_server_makes_none_by = Ce serveur n’en fait pas de lui-même.
desk-upkeep-the_server_reads_the_whole = Le serveur lit tout le registre une fois par jour.
desk-upkeep-does_not_hold = ne tient pas
desk-upkeep-nearly_full = presque plein
desk-upkeep-none_made_yet = Aucune encore faite.
desk-upkeep-failed = échoué
desk-upkeep-old = ancien
desk-upkeep-made = fait
desk-upkeep-late = en retard
desk-upkeep-holds = tient
desk-upkeep-room = place
desk-ends-since = depuis { $day }
desk-figures-temperature = Température
desk-figures-true_strength = Titre réel
desk-figures-pure_alcohol = Alcool pur
desk-figures-fill = Remplissage
desk-figures-strength_in_the_bottles = Titre dans les bouteilles
desk-figures-of_the_label = % de l’étiquette
desk-clock-days = { $many } jours
desk-clock-months = { $many } mois
desk-clock-years = { $many } ans
desk-count-ferment =
    { $n ->
        [one] { $many } fermentation
       *[other] { $many } fermentations
    }
desk-count-person =
    { $n ->
        [one] { $many } personne
       *[other] { $many } personnes
    }
desk-count-entry =
    { $n ->
        [one] { $many } écriture
       *[other] { $many } écritures
    }
desk-count-vessel =
    { $n ->
        [one] { $many } contenant
       *[other] { $many } contenants
    }
desk-day-read =
    { $n ->
        [one] { $many } fermentation est à relever
       *[other] { $many } fermentations sont à relever
    }
desk-day-stuck =
    { $n ->
        [one] { $many } fermentation est arrêtée
       *[other] { $many } fermentations sont arrêtées
    }
desk-day-bottling =
    { $n ->
        [one] { $many } embouteillage attend sa clôture
       *[other] { $many } embouteillages attendent leur clôture
    }
desk-day-regauge =
    { $n ->
        [one] { $many } fût est à rejauger
       *[other] { $many } fûts sont à rejauger
    }
desk-day-sample =
    { $n ->
        [one] { $many } fût est à échantillonner
       *[other] { $many } fûts sont à échantillonner
    }
desk-day-taste =
    { $n ->
        [one] { $many } fût est à déguster
       *[other] { $many } fûts sont à déguster
    }
desk-day-stands =
    { $n ->
        [one] { $many } cuve attend depuis longtemps
       *[other] { $many } cuves attendent depuis longtemps
    }
desk-day-failed =
    { $n ->
        [one] { $many } instrument a manqué son contrôle
       *[other] { $many } instruments ont manqué leur contrôle
    }
desk-day-open_run =
    { $n ->
        [one] { $many } chauffe n’a pas de fin
       *[other] { $many } chauffes n’ont pas de fin
    }
desk-day-still =
    { $n ->
        [one] { $many } cuve de matières attend un alambic
       *[other] { $many } cuves de matières attendent un alambic
    }
desk-day-owed =
    { $n ->
        [one] { $many } réponse est due
       *[other] { $many } réponses sont dues
    }
desk-day-nothing_owed = aucune réponse n’est due
desk-day-nothing_owed_next = Aucune réponse n’est due. { $next }
desk-day-run_ends =
    { $state ->
        [late]
            { $what ->
                [cut] { $still } devait couper à { $at }
               *[end] { $still } devait finir à { $at }
            }
        [now]
            { $what ->
                [cut] { $still } coupe d’une minute à l’autre
               *[end] { $still } finit d’une minute à l’autre
            }
       *[coming]
            { $what ->
                [cut] { $still } coupe à { $at }
               *[end] { $still } finit à { $at }
            }
    }
desk-day-run_at_its_end =
    { $what ->
        [cut] { $still } est à sa coupe
       *[end] { $still } est à sa fin
    }
desk-day-still_heats = { $still } chauffe
desk-day-still_runs = { $still } coule : { $part }
desk-day-ended =
    { $n ->
        [one] { $which } a fini
       *[other] { $which } ont fini
    }
desk-day-near_end =
    { $n ->
        [one] { $which } est près de sa fin
       *[other] { $which } sont près de leur fin
    }
desk-day-one_stuck = { $name } est arrêtée
desk-day-one_stands = { $name } attend depuis longtemps
desk-day-one_read = { $name } est à relever
desk-day-one_silent = { $name } est muet
desk-day-silent =
    { $n ->
        [one] { $many } téléphone est muet
       *[other] { $many } téléphones sont muets
    }
desk-day-nothing_due = Rien n’est dû aujourd’hui.
desk-day-to_read = { $name } à relever
desk-day-round = la tournée de { $ferments }
desk-day-round_readings = relevés
desk-day-round_regauge = rejaugeage
desk-day-round_samples = échantillons
desk-day-round_tasting = dégustation
desk-day-next = Ensuite { $what } à { $at }.
desk-part-heating = en chauffe
desk-part-heads = têtes
desk-part-hearts = cœur
desk-part-tails = queues
desk-part-low_wines = brouillis
desk-part-feints = imparfaits
desk-due-many_read =
    { $n ->
        [one] { $many } fermentation à relever
       *[other] { $many } fermentations à relever
    }
desk-due-many_close =
    { $n ->
        [one] { $many } fermentation a fini
       *[other] { $many } fermentations ont fini
    }
desk-due-many_still =
    { $n ->
        [one] { $many } cuve de matières attend un alambic
       *[other] { $many } cuves de matières attendent un alambic
    }
desk-due-many_regauge =
    { $n ->
        [one] { $many } fût à rejauger
       *[other] { $many } fûts à rejauger
    }
desk-due-many_sample =
    { $n ->
        [one] { $many } fût à échantillonner
       *[other] { $many } fûts à échantillonner
    }
desk-due-many_taste =
    { $n ->
        [one] { $many } fût à déguster
       *[other] { $many } fûts à déguster
    }
desk-due-many_stands =
    { $n ->
        [one] { $many } cuve attend
       *[other] { $many } cuves attendent
    }
desk-due-many_bottling =
    { $n ->
        [one] { $many } embouteillage commencé
       *[other] { $many } embouteillages commencés
    }
desk-due-many_failed =
    { $n ->
        [one] { $many } instrument a manqué son contrôle
       *[other] { $many } instruments ont manqué leur contrôle
    }
desk-due-many_instrument =
    { $n ->
        [one] { $many } instrument à vérifier
       *[other] { $many } instruments à vérifier
    }
desk-due-many_open_run =
    { $n ->
        [one] { $many } chauffe sans fin notée
       *[other] { $many } chauffes sans fin notée
    }
desk-due-many_stuck =
    { $n ->
        [one] { $many } fermentation est arrêtée
       *[other] { $many } fermentations sont arrêtées
    }
desk-due-and_more = { $named } et { $more } de plus
desk-due-all_of_them = Tous
desk-due-look = Voir
desk-due-late = { $time } de retard
desk-due-now = maintenant
desk-due-begun = commencé { $when }
desk-due-last = dernier { $when }
desk-due-never_yet = encore jamais
desk-due-last_entry = dernière écriture { $when }
desk-due-months_open = { $first } à { $last } ne sont pas clos
desk-due-month_open = { $month } est fini et pas clos
desk-due-us_reports = ses déclarations sont dues pour le 15 du mois suivant
desk-due-one_read = { $name } à relever
desk-due-one_close = { $name } a fini : clore
desk-due-one_stuck = { $name } ne bouge pas
desk-due-one_still = { $name } attend un alambic
desk-due-one_regauge = { $name } à rejauger
desk-due-one_sample = { $name } à échantillonner
desk-due-one_taste = { $name } à déguster
desk-due-one_stands = { $name } attend depuis { $time }
desk-due-one_bottling = { $name } a été jaugé pour l’embouteillage il y a { $time }
desk-due-one_open_run = { $name } { $what } n’a pas de fin
desk-due-one_failed = { $name } a manqué son contrôle
desk-due-one_instrument = { $name } à vérifier
desk-due-one_instrument_late = { $name } était à vérifier il y a { $time }
group-page-sites = Sites
group-page-shut_out_what_it_handed = Exclu. Ce qu’il a remis reste. Un nouveau code admet de nouveau le site.
group-page-taken_the_other_branch_stays = Pris. L’autre branche reste gardée.
group-page-made_of = Fait de
group-page-this_needs_the_role_ask = Ceci demande le rôle { $access }. Demander à quelqu’un du bureau.
group-files-no_site_has_anything_to = Aucun site n’a rien à tracer de ce nom. Le chercher sur la page de traçabilité.
paper-label-stand_off_label_scan_here = ÉTIQUETTE À DISTANCE : scanner ici. Rester hors de la ligne. Les règles du site passent d’abord.
paper-label-does_not_fit_a_label = { $mark } ne tient pas sur une étiquette de { $wide } x { $high } mm en caractères de 10 mm. Choisir une étiquette plus grande, ou un code plus court.
paper-label-choose_1_to_labels_to = Choisir 1 à { $most } étiquettes à imprimer.
paper-label-this_page_has_labels_start = Cette page a { $many } étiquettes. Commencer à 1 à { $many }.
paper-label-ruler = Cette ligne mesure 50 mm. Sinon, imprimer de nouveau à 100 %.
paper-label-own_size_is = Une taille propre a { $low } à { $high } mm de large et de haut, avec 0 à { $clear } mm libres à chaque bord. Taper largeur et hauteur en millimètres.
paper-label-zpl_wants_a_roll = ZPL imprime une étiquette après l’autre. Choisir un rouleau, une fiche ou une taille propre.
paper-case-lot = Lot { $lot }
paper-case-case = Carton { $case }
paper-case-not_the_label_of_the_law = Pour le stock et la traçabilité. L’étiquette que la loi demande est une autre.
paper-case-does_not_fit = L’étiquette d’un carton ne tient pas sur { $wide } x { $high } mm. Choisir une étiquette plus grande.
paper-case-address_too_long = L’adresse du registre est trop longue pour une étiquette. Mettre un PUBLIC_HOST plus court.
desk-room-today = Aujourd’hui
desk-room-queries = Questions
desk-room-entries = Écritures
desk-room-vessels = Contenants
desk-room-cellar = Chai
desk-room-runs = Chauffes
desk-room-blending = Assemblage
desk-room-trace = Traçabilité
desk-room-periods = Périodes
desk-room-labels = Étiquettes
desk-room-settings = Réglages
desk-rule-age_years = { $figure } ans sous bois
desk-rule-strength_low = à partir de { $figure }
desk-rule-strength_high = jusqu’à { $figure }
desk-rule-score_low = note { $figure }
desk-rule-loss_high = perte au plus { $figure } % par an
access-passkey-not_here = Aucune clé d’accès ne peut servir à cette adresse. Saisir votre mot de passe.
access-passkey-does_not_open = Cette clé d’accès n’ouvre pas. Essayer encore une fois, ou saisir votre mot de passe.
access-passkey-none_used = Aucune clé d’accès n’a servi. Essayer encore une fois, ou saisir votre mot de passe.
access-passkey-none_made = Aucune clé d’accès n’a été faite. Essayer encore une fois ; un appareil qui en a déjà une à vous n’en fait pas une seconde.
access-steps-another_phone_or_computer = Un autre téléphone ou ordinateur
access-steps-on_this = Appareil : { $name }
access-steps-fetch_the = Prendre : { $fetch }
access-steps-done = Fait
access-steps-back_one_step = Revenir d’une étape
access-steps-or_the_computer_does_not = Ou l’ordinateur ne répond pas à ce téléphone au port { $port } : son pare-feu, ou un autre réseau sans fil. Cette page ne peut distinguer les deux.
access-steps-compare_before_you_trust = Comparer avant de s’y fier
access-steps-these_groups_must_be_the = Ces groupes doivent être ceux que montre l’ordinateur du bureau. S’ils diffèrent, s’arrêter ici et prévenir le bureau.
access-steps-the_whole_fingerprint_sha_256 = L’empreinte entière, SHA-256
access-steps-another_one = Un autre ?
access-steps-profile = profil
access-steps-certificate = certificat
access-steps-trusted = Ce téléphone se fie à la maison.
access-steps-not_trusted_yet = Il ne se fie pas encore à la maison.
access-steps-try_again = Réessayer
access-steps-counted = Étape { $at } sur { $many }
access-plain-trust_this_distillerys_computer = Se fier à l’ordinateur de cette distillerie
access-plain-once_on_each_phone_after = Une fois sur chaque téléphone. Après cela le carnet d’atelier s’ouvre sans avertissement, et marche sans réseau.
floor-frame-to_the_work = Au travail
floor-frame-back = Retour
floor-frame-vessel = Contenant
floor-frame-waits_on_slate = à l’ardoise
floor-frame-floor = Atelier
floor-frame-today = Aujourd’hui
floor-frame-scan = Scanner
floor-frame-slate = Ardoise
floor-frame-more = Plus
floor-field-may_stay_empty = (peut rester vide)
floor-field-unit_of = Unité : { $label }
floor-field-scan_for = Scanner pour { $label }
floor-field-not_logged_yet = Pas encore noté.
floor-field-nothing_is_lost = Rien n’est perdu ; rectifier ceci et noter de nouveau.
floor-away-title = Le bureau est absent
floor-away-desk = Bureau
floor-away-no_answer = pas de réponse du registre
floor-away-words = Le bureau est sur l’ordinateur du registre, qui ne répond pas. Ce que ce téléphone a noté est en sûreté sur son ardoise.
floor-away-ask_again = Redemander
floor-away-work_without = Travailler sans réseau
floor-enrol-title = Admettre ce téléphone
floor-enrol-office_gives = Le bureau donne à chaque téléphone un code, une fois. Avec lui le téléphone remet au registre et garde les fiches des contenants.
floor-enrol-code = Code du bureau
floor-enrol-name = Comment s’appelle ce téléphone
floor-enrol-name_help = Comme écrit à son dos. Laissé vide, il s’appelle comme le bureau l’a appelé.
floor-enrol-let_it_in = L’admettre
floor-job-title = Tâche
floor-job-no_script = Cette page calcule ses chiffres sur le téléphone et demande du script. Chaque écriture peut aussi se noter depuis la fiche de son contenant.
floor-log-needed = requis
floor-log-remark = remarque
floor-log-read_now = Lu maintenant
floor-log-left_empty = Laissé vide, c’est relevé maintenant.
floor-log-log_it = Noter
floor-run-title = Chauffe
floor-run-sheet = Feuille de chauffe
floor-vessel-to_log = Que noter
floor-run-plain_reading = Relevé
floor-run-cut_or_event = Coupe ou événement
floor-run-end_the_run = Finir la chauffe
floor-scan-camera_sees = Ce que voit la caméra
floor-scan-torch = Torche
floor-scan-outside_the_line = Rester hors de la ligne, sauf si ce téléphone est certifié pour cela et que le site le permet.
floor-slate-no_script = L’ardoise demande du script. Sans lui, chaque écriture va droit au registre quand on la note.
floor-today-no_script = Ce téléphone n’exécute pas de script, il n’a donc pas d’ardoise. Avec une connexion, saisir un repère pour continuer.
floor-who-title = Qui note ?
floor-who-no_script = Sans script vous notez sous votre propre nom :
floor-who-sign_in = se connecter
floor-mark-label = Repère sur l’étiquette
floor-mark-hint = Lettres, chiffres et le dernier caractère après le tiret.
floor-mark-open = Ouvrir
floor-caution-lead_1 = La ligne.
floor-caution-words_1 = Un téléphone ordinaire peut enflammer la vapeur d’alcool. Rester hors de la ligne marquée, sauf si le téléphone est certifié et que le site le permet. Lire au coffre, reculer, saisir avec la minute du relevé.
floor-caution-lead_2 = Local de fermentation.
floor-caution-words_2 = Le dioxyde de carbone n’a pas d’odeur et reste au sol. À 5000 ppm sortir, ventiler, prévenir le responsable ; à 30 000 ppm dehors aussitôt. Ne jamais y retourner pour un relevé. Une bougie n’est pas un test.
floor-caution-lead_3 = Têtes et méthanol.
floor-caution-words_3 = Un aréomètre ne voit pas le méthanol, un densimètre non plus. Les têtes en tiennent une part, le cœur et les queues aussi. Seul un laboratoire le sait. Ne pas goûter les premières gouttes.
floor-caution-lead_4 = Alambic.
floor-caution-words_4 = Chaud, et sous pression si un passage se bouche. De l’eau froide dans un alambic chaud et fermé peut l’écraser. Garder les évents libres ; ne jamais quitter un alambic en marche.
floor-caution-lead_5 = Cuves.
floor-caution-words_5 = Personne n’entre seul, ni sans permis, mesure de gaz et quelqu’un dehors.
floor-caution-lead_6 = Fûts.
floor-caution-words_6 = Un fût plein de 225 L (59 gal) pèse 220 à 260 kg (485 à 573 lb). Chariot, palan ou cale ; jamais le dos, jamais à hauteur du bouge.
floor-caution-lead_7 = Seul au chai.
floor-caution-words_7 = Dire où l’on est et quand on revient. Ce téléphone ne donne pas l’alarme.
floor-caution-title = Précautions
floor-caution-first = L’évaluation de votre site, le code local et les gens agréés passent d’abord. Rien sur ce téléphone ne dit qu’un lieu ou un alcool est sûr.
floor-form-unit_of = Unité : { $what }
floor-form-read_at = Relevé à
floor-form-who = Qui
floor-form-role = Rôle
floor-form-seen_by = Vu par
floor-form-remark = Remarque
floor-form-missing = { $what } manque. Le saisir.
floor-form-yes = oui
floor-form-no = non
floor-form-alcoholmeter = Alcoomètre utilisé
floor-form-dip = Jauge utilisée
floor-form-refractometer = Réfractomètre utilisé
floor-form-saccharometer = Densimètre à sucre utilisé
floor-form-scale = Balance utilisée
floor-form-thermometer = Thermomètre utilisé
floor-form-density_meter = Densimètre électronique utilisé
floor-form-pH_meter = pH-mètre utilisé
floor-enrol-type_the_code = Saisir le code du bureau.
floor-vessel-not_in_book = Le registre n’a pas de contenant { $mark }. Relire l’étiquette, ou demander au bureau de l’inscrire.
floor-form-no_such = Il n’y a pas de tel formulaire. Revenir et en choisir un sur la fiche du contenant.
floor-log-sign_in_first = Se connecter d’abord, dans un autre onglet : puis appuyer de nouveau sur le bouton. Ce que vous avez saisi reste ici.
floor-log-no_time = Relevé à : choisir le jour et la minute, ou laisser vide pour maintenant.
floor-mark-bad =
    { $why ->
        [empty] Saisir le repère de l’étiquette, comme F3-8.
        [foreign] Ce code n’est pas l’un des nôtres. Scanner l’étiquette du contenant, ou saisir son repère.
        [characters] Un repère n’a que des lettres A à Z et des chiffres 0 à 9. Relire l’étiquette.
        [too_short] Un repère a un code et un caractère de contrôle, comme F3-8. Tout saisir.
        [too_long] C’est trop long pour un repère. Saisir les grands caractères de l’étiquette.
       *[check] { $mark } n’est pas un repère : un caractère est faux, ou le dernier manque. Relire l’étiquette.
    }
floor-form-within = { LOWER($words) }
