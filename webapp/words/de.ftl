### The sentences of Cellarslate, in German. No native of the trade has read them yet.
### Terms from memory (a native of the trade has to read them).
### Believed to be the law's word: Vor- und Nachlauf (short: Vor-/Nachlauf), Feststellung der Alkoholmenge (short:
### Alkoholfeststellung), Branntwein aus Wein, Obsttresterbrand, Whisky, Blausäure, Ethylcarbamat, flüchtige Bestandteile,
### Williamsbirne, Quitte, Mirabelle, Aprikose (Austria: Marille), Kirsche, Himbeere, Roggen, Refraktometer, Thermometer,
### Skalenwert, wirklicher Alkoholgehalt (short: wirklicher Gehalt), Trockenextrakt, Kunde, Berichtigung.
### Usage of the trade: Tank, Boden, Böden zu und ab, Dephlegmator, Vorlage, Kanne, Karton, Abfülltank, Keller, Hof, Platz,
### Spund, Daube, Reifen, Annahme, Füllen der Blase (short: Füllung), Brand, Abtrennung, abtrennen, Fassfüllung, Nachmessung, nachmessen,
### Auffüllen, Umfüllen, Kühlen, Versand, Reinigung, Verkostung, Feuer an, erster Tropfen, Most, Enzym, Säure, Lutter,
### Schlempe, Kastanie, Maulbeere, Toasting, Auskohlung, Mostwaage, Peilstab, pH-Meter, Bruttogewicht, Tara, relative Dichte
### (short: Dichte), Durchfluss, Peilung, Leerraum, Eintrag, Ansatz, Prüfbericht, undicht, stockend, entleeren, umlagern,
### Brennsaison.
### Own words of the app: Tafel, Buch, übergeben, eintragen, Kennung, Betrieb (floor), Büro (desk and office), zulassen,
### zurücknehmen, wie abgelesen, Halt, Frage, Hinweis, Vorlage mit Verschluss (said as Vorlage), extraktverdeckt (said as verdeckt).
### In no list, from memory: Spindel, Spindelanzeige, Vergärung, Hut, Gärablesung, Gehalt der Maische, Abtrennplan, Brennblatt,
### Ansatzblatt, Messblatt, Lospass, Belegung (one fill of a cask), Verschnitt, Verschnittplan, Holzaufnahme, Rückstellung,
### Restkarton, Loszeichen, Flaschenware, Tankrest, Abfülllinie, Füller, Anfangsbestand, Mehrmenge, unversteuert, unter
### Steueraussetzung (short: unter Aussetzung), Konto with Herstellung, Lagerung, Verarbeitung, Freibetrag, Ausbeutesatz (short:
### Satz), Lieferung, Fassart with ausgekohlt, roh, paraffiniert, verleimt, Küfer, Servierblatt, Satz (of glasses), Duo-Trio,
### Rangfolge, Peiltabelle, Ex-Bereich, Proof, Proof Gallons, Brandy, Brandy aus Trauben, Bierbrand, Brand aus Apfel- oder
### Birnenwein, Honigbrand, Hefebrand, Rosinenbrand, Neutralalkohol, Brand aus mazerierten Früchten, Richtlinie 76/211/EWG,
### Erlaubnisschein, Aufsicht, Zeuge, Köpfe (of the book), Prüfwert, Buchrechnung (the fold), Spur (trace).

range-between = { $low } bis { $high }
range-or_more = { $low } oder mehr
range-up_to = bis zu { $high }
span-s = { $many } s
span-min = { $many } min
span-h = { $many } h
span-days =
    { PLURAL($many) ->
        [one] { $many } Tag
       *[other] { $many } Tage
    }
span-months =
    { PLURAL($many) ->
        [one] { $many } Monat
       *[other] { $many } Monate
    }
span-years =
    { PLURAL($many) ->
        [one] { $many } Jahr
       *[other] { $many } Jahre
    }
time-same_day = { $clock }
time-day_before = { $clock } am Vortag
time-day = { $day } { $clock }
pct =
    { UNITS() ->
        [us] Proof
       *[metric] %
    }
points =
    { UNITS() ->
        [us] Proof
       *[metric] Prozentpunkte
    }
as_said = { $words }
no_such_message = Dieses Programm hat keine Worte für „{ $id }“. Aktualisieren oder im Büro nachfragen.
missing = { $label } fehlt. { asks }
missing-question = { $label } { asks }
asks =
    { $sort ->
        [choice] Eines wählen.
        [yes_no] Eines wählen.
        [mark] Wählen, scannen oder eintippen.
        [date] Den Tag wählen.
       *[other] Eintippen.
    }
no_such_choice = { $label }: eine der Möglichkeiten wählen.
no_such_choice-yes_no = { $label }: ja oder nein.
no_date = { $label }: { $typed } ist kein Datum. Den Tag wählen.
too_long = { $label } ist länger als { $most } Zeichen. Kürzen; der Rest kann in eine Notiz.
no_such_unit = { $label } wird in { $units } abgelesen. Eines wählen.
no_number = { $label }: { $reason }
number-empty = Hier steht noch nichts. Die Zahl eintippen, wie das Gerät sie zeigt.
number-too_long = Das ist zu lang für eine Zahl. Höchstens 15 Zeichen.
number-two_signs = Einen Punkt oder ein Komma, nur einmal, vor den Dezimalen: 1234.5 oder 1234,5.
number-not_plain = Das ist keine einfache Zahl. Ziffern mit einem Punkt oder Komma: 14.6 oder 14,6.
outside_tables = { $label }: { $reason }
impossible = { $label } { UNIT(TYPED($figure)) } kann nicht sein: möglich ist { UNIT(LIKE($possible, $figure)) }. Noch einmal ansehen oder wie abgelesen behalten.
impossible-outside = { $label }: { $reason }
unusual = { $label } { UNIT(TYPED($figure)) } ist ungewöhnlich: üblich ist hier { UNIT(LIKE($usual, $figure)) }. Noch einmal ansehen.
danger = { $label } { UNIT(TYPED($figure)) }. { $act }
slip-swapped = zwei Ziffern vertauscht
slip-point = Komma verrutscht
slip-unit = { $meant }, nicht { $typed }
slip-meant = { TYPED($meant) }
slip-key = die Taste daneben
slip-twice = eine Ziffer doppelt getippt
slip-misread = eine Ziffer verlesen
slip-lost = eine Ziffer ausgelassen
slip-sign = das andere Vorzeichen
slip-box = im Feld „{ $label }“
slip-exchanged = vertauscht mit „{ $label }“
slip-net = das war netto, ohne Gefäß
slip-gross = das war brutto, mit Gefäß
slip-ullage = das war Leerraum, von oben gepeilt
slip-cases = das waren Kartons
ferment_fast = Die Dichte fiel um { $fell } seit { $since }, das sind { $a_day } am Tag; { $much } ist für Obst viel. Noch einmal ansehen und die Maische kühlen.
ferment_fast-soon = Die Dichte fiel um { $fell } seit { $since }: so schnell gärt Obst nicht. Noch einmal ansehen.
strength_fell = Wirklicher Gehalt { BARE($now) } { pct }: { APART($off) } { points } unter { BARE($last) } { pct } ({ $apart } zuvor). Ein Brand fällt langsamer. Noch einmal ansehen.
held_strength =
    Wirklicher Gehalt { BARE($now) } { pct }: { APART($off) } { points } { $side ->
        [above] über
       *[below] unter
    } den { BARE($held) } { pct }, die das Buch in diesem Gefäß hat. Noch einmal ansehen, auch nach Umfüllung oder Wasser, das nicht eingetragen ist.
reason-outside = { $what } { UNIT($figure) } liegt außerhalb { UNIT($possible) }. { $advice }
reason-outside_in_words = { $what } { $figure } { $unit } liegt außerhalb { $possible } { $unit }. { $advice }
reason-off_glass = Bei { $temp } steht ein Brand von { $strength } außerhalb der Skala der Spindel. Näher an { glass-temp } bringen oder ein Dichtemessgerät nehmen.
glass-temp =
    { UNITS() ->
        [us] 60 °F
       *[metric] 20 °C
    }
reason-glass_too_weak = Eine Anzeige von { $reading } bei { $temp } hieße: gar kein Alkohol. Bei dieser Temperatur zeigt eine Spindel { $low } bis { $high }: Spindel und Thermometer noch einmal ablesen.
reason-glass_too_strong = Eine Anzeige von { $reading } bei { $temp } hieße: mehr als reiner Alkohol. Bei dieser Temperatur zeigt eine Spindel { $low } bis { $high }: Spindel und Thermometer noch einmal ablesen.
reason-part_ice = Bei { $temp } kann ein Teil Eis sein. Über { $above } erwärmen und noch einmal ablesen.
reason-no_such_density = Die Dichte { $density } liegt außerhalb { BARE($ethanol) } (Ethanol) bis { $water } (Wasser) bei dieser Temperatur. Dichte und Temperatur prüfen; auch Zucker oder Trub in der Probe bewirken das.
reason-table1_blank = Tabelle 1 hat keinen Wert für { $reading } bei { $temp }. Näher an 60 °F bringen und noch einmal ablesen.
reason-gravity_above_start = Die Dichte liegt über der vom Anfang. Beide prüfen, auch den Tank und ob Zucker zugesetzt wurde.
reason-no_dip_table = Das Buch hat keine Peiltabelle für dieses Gefäß. Liter eintippen; das Büro kann ihm eine Tabelle geben, beim Gefäß unter Peilungen.
reason-tare_too_heavy = Die Tara muss zwischen null und dem Bruttogewicht liegen. Noch einmal wiegen.
reason-target_too_strong = Wasser kann nur schwächer machen. Ziel und Alkoholgehalt prüfen.
reason-empty_bottle_heavy = Eine leere Flasche ist leichter als eine volle. Beide noch einmal wiegen.
reason-few_checks = Es braucht mindestens { $least }. Mehr Flaschen prüfen.
reason-no_gauges = Zuerst das Fass messen.
reason-uneven_readings = Zu jedem Zeitpunkt eine Dichte angeben.
measured-alcohol_by_both = Alkohol nach beiden
measured-bottle_size = Flaschengröße
measured-brix = Brix
measured-charge = Füllung
measured-check = Prüfung
measured-density = Dichte
measured-fruit = Obst
measured-full_bottle = Volle Flasche
measured-glass_expansion = Glasausdehnung
measured-glass_reading = Spindelanzeige
measured-gravity = Relative Dichte
measured-dip = Peilung
measured-bung_diameter = Durchmesser am Spund
measured-head_diameter = Durchmesser des Bodens
measured-length = Länge
measured-extract = Trockenextrakt
measured-height = Höhe
measured-hydrometer_correction = Korrektur der Spindel
measured-juice_share = Saftanteil
measured-loss = Verlust
measured-mass_fraction = Massenanteil
measured-mole_fraction = Stoffmengenanteil
measured-net_weight = Nettogewicht
measured-number = Nummer
measured-original_gravity = Stammwürze als Dichte
measured-plato = Plato
measured-proof = Proof
measured-proof_gallons = Proof Gallons
measured-proof_reading = Proof-Anzeige
measured-pure_alcohol = Reiner Alkohol
measured-pure_alcohol_charged = Eingefüllter reiner Alkohol
measured-refractometer = Refraktometer
measured-result = Ergebnis
measured-size = Größe
measured-solids = Feststoffe
measured-strength = Alkoholgehalt
measured-sugar = Zucker
measured-temperature = Temperatur
measured-thermometer_correction = Korrektur des Thermometers
measured-time = Zeit
measured-time_ahead = Zeit voraus
measured-unfermentable_part = Unvergärbarer Teil
measured-usual_drift = Übliche Drift
measured-volume = Volumen
measured-water = Wasser
measured-water_temperature = Wassertemperatur
measure-kg_kg = kg/kg
measure-mol_mol = mol/mol
measure-kg_L = kg/L
measure-m = m
measure-per_degC = je °C
measure-of_one = von eins
measure-days = Tage
measure-years = Jahre
measure-pct_year = % im Jahr
measure-pct_vol_year = % vol im Jahr
advice-cannot_rise = Die Dichte kann nicht gestiegen sein. Beide prüfen.
advice-check_charge = Prüfen, was eingefüllt wurde.
advice-check_charge_strength = Den Alkoholgehalt der Füllung prüfen.
advice-check_dip = Peilung und Einheit prüfen.
advice-check_figure = Zahl und Einheit prüfen.
advice-check_gauges = Die Messungen prüfen.
advice-check_glass = Die Spindel prüfen.
advice-check_glass_figure = Die Zahl prüfen; eine Proof-Spindel hat ihre eigene Einheit.
advice-check_instrument = Zahl und Messgerät prüfen.
advice-dip_in_table = Dort endet die Tabelle des Gefäßes: noch einmal peilen oder die Liter eintippen.
advice-dip_in_cask = Höher ist das Fass nicht: noch einmal peilen oder seine Maße ansehen.
advice-measure_cask = Das Fass noch einmal messen.
advice-check_scale = Zahl und Skala des Geräts prüfen.
advice-check_strengths = Die Alkoholgehalte prüfen.
advice-check_thermometer = Thermometer und Einheit prüfen oder die Probe in den Bereich bringen.
advice-check_weights = Brutto und Tara prüfen.
advice-count_again = Noch einmal zählen.
advice-distil_sample = Eine Probe destillieren und Proof am Destillat nehmen.
advice-empty_cask = Ein leeres Fass verliert nichts.
advice-fraction_not_percent = Als Bruchteil von eins angeben, nicht in Prozent.
advice-gauge_again = Den Tank noch einmal messen.
advice-gauge_first = Zuerst den Tank messen.
advice-give_cask_size = Die Größe des Fasses ins Buch setzen.
advice-give_height = Höhe des Brenngeräts über dem Meer in Metern angeben.
advice-look_again = Die Zahl noch einmal ansehen.
advice-look_at_label = Das Etikett ansehen.
advice-no_baume = Unter Wasser gibt es kein Baumé. Den Gehalt aus dem Fall der Dichte nehmen.
advice-no_check = Außerhalb dieses Bereichs keine Prüfung.
advice-not_so_far = So weit voraus kennt niemand ein Fass.
advice-order_gauges = Messungen nach der Zeit ordnen.
advice-order_readings = Ablesungen nach der Zeit ordnen.
advice-read_both_again = Die beiden passen nicht zusammen. Beide noch einmal ablesen.
advice-read_spirit_again = Das Thermometer im Brand noch einmal ablesen.
advice-read_water_again = Das Thermometer im Wasser noch einmal ablesen.
advice-see_certificate = Aus dem Prüfschein des Geräts nehmen.
advice-soda_lime = Natronkalkglas hat 0,000025.
advice-table1_reading = Dort endet Tabelle 1: die Spindel noch einmal ablesen.
advice-table1_temp = Dort endet Tabelle 1: näher an 60 °F bringen.
advice-table_ends = Dort endet die veröffentlichte Tabelle.
advice-two_gauges = Zwei Messungen zur selben Zeit ergeben keine Rate.
advice-usual_juice_share = Maische aus ganzen Früchten hat 0,75 bis 0,9.
advice-usual_unfermentable = Üblich sind 3 bis 5.
advice-weigh_again = Noch einmal wiegen.
floor-go_on = Weiter
floor-not_said = nicht angegeben
floor-remark = Notiz
floor-mistyped = vertippt
floor-misread = verlesen
floor-save_the_slate_to = Tafel als Datei sichern
floor-as_last_time = wie zuletzt
floor-pin_of = PIN von { $code }
floor-log_it = Eintragen
floor-remark_2 = Bemerkung
floor-leave_it = Lassen
floor-more = Mehr
floor-today = Heute
floor-blind_tasting = Blindverkostung
floor-more_2 = { $rest } weitere
floor-next = weiter
floor-empty = leer
floor-helps = Hilfen
floor-ended = beendet { $ended_at }
floor-gauge_the_fractions = Fraktionen messen
floor-run = Brand
floor-hearts = Mittellauf
floor-tails = Nachlauf
floor-true_strength_over_time = Wirklicher Gehalt über die Zeit
floor-time = Zeit
floor-run_before = voriger Brand
floor-nose_first = Zuerst die Nase.
floor-reading = Ablesung
floor-nose_first_2 = zuerst die Nase
floor-cut_plan = Abtrennplan
floor-cut_to_hearts = Auf Mittellauf
floor-empty_by_the_book = leer nach dem Buch
floor-this_phone = Dieses Telefon
floor-not_let_in = nicht zugelassen
floor-since = seit { $started_at } · { $started_at_2 }
floor-run_sheet = Brennblatt
floor-let_this_phone_in = Dieses Telefon zulassen
floor-put_it_right = Berichtigen
floor-take_it_back = Zurücknehmen
floor-taken_back_it_stays = Zurückgenommen. Bleibt lesbar, durchgestrichen.
floor-start-this_phone_now_works = Dieses Telefon arbeitet jetzt ohne Netz.
floor-start-this_page_did_not = Diese Seite öffnete sich nicht wie sie soll. { $message } Die Tafel ist sicher.
floor-start-try_again = Erneut versuchen
floor-begun-begun_before = Zuvor begonnen
floor-begun-begun_by = Begonnen { $ago } von { $code }{ $shown }
floor-begun-go_on_or_start = Weiter oder neu beginnen?
floor-begun-start_clean = Neu beginnen
floor-entryform-log = { $figure } { $unit } eintragen
floor-entryform-as_read = { " " }wie abgelesen
floor-extras-instrument_for = { $instrument } für { $label }
floor-extras-corrected = { " " }· berichtigt
floor-extras-read_at = Abgelesen { $typed }
floor-extras-read_now = Jetzt abgelesen
floor-extras-read_earlier = Früher abgelesen?
floor-extras-with_a_remark = mit Bemerkung
floor-fix-something_else = etwas anderes
floor-fix-of = { " " }vom { $day }
floor-fix-of_2 = { " " }vom { $day }, { $at }
floor-fix-this_replaces_the_entry = Ersetzt den Eintrag{ $when }; er bleibt lesbar. { $rest }
floor-fix-type_all_of_it = Alles eintippen, nicht nur das Falsche.
floor-fix-what_was_wrong = Was falsch war
floor-full-the_phone_could_not = Das Telefon konnte dies nicht behalten. Die Zahlen bleiben hier; noch einmal eintragen.
floor-full-not_on_the_slate = Nicht auf der Tafel.
floor-full-the_figures_stay_in = { $words } Die Zahlen bleiben in diesem Blatt.
floor-ghosts-last = zuletzt { $words }, { $when }
floor-ghosts-last_2 = zuletzt { $figure }, { $when }
floor-jumps-can_only_fall_it = { $label } kann nur fallen: { $when } waren es { $last }.
floor-jumps-before = zuvor
floor-look-look_again = Nachsehen
floor-look-danger = Gefahr.
floor-look-look_again_2 = Nachsehen?
floor-look-keep_as_read = Wie abgelesen
floor-marks-pick_scan_or_type = wählen, scannen, tippen
floor-marks-scan_or_type = scannen, tippen
floor-quickfields-unit_of = Einheit von { $label }
floor-quickfields-minute = Minute
floor-sums-by_the_class_of = nach der Klasse der Messgeräte oder der des Gesetzes
floor-panels-not_read_yet = noch nicht abgelesen
floor-panels-switch_first_mark_of = Zuerst umstellen. Kennung der jetzt offenen Vorlage
floor-panels-switch_first_open_now = Zuerst umstellen. Jetzt offen:
floor-panels-another_minute_more_figures = andere Minute, mehr Zahlen
floor-paper-no_strength_yet = Noch kein Alkoholgehalt.
floor-paper-glass = Spindel { $glass }{ $temp }
floor-paper-at = { " " }bei { $temp }
floor-paper-flow = Durchfluss
floor-paper-not_read = nicht abgelesen
floor-paper-not_since = , nicht seit
floor-paper-the_sum_needs_it = die Rechnung braucht es
floor-paper-receivers = Vorlagen
floor-paper-true = { $true_strength } wirklich
floor-paper-dip = Peilung { $dip }
floor-paper-logged = eingetragen { $typed_at }
floor-paper-logged_in_this_run = In diesem Brand eingetragen
floor-paper-twice = zweimal
floor-paper-logged_twice =
    Zweimal binnen einer Minute eingetragen. War es nur { $what ->
        [change] eine Änderung
       *[cut] eine Abtrennung
    }, dann eine zurücknehmen.
floor-paper-this_phone = dieses Telefon
floor-state-cut_to_tails = Auf Nachlauf
floor-state-end_the_run = Brand beenden
floor-state-last_time = { $step } beim letzten Mal
floor-state-heads_cut = Vorlauf abgetrennt
floor-state-hearts_cut = Mittellauf abgetrennt
floor-state-logged = , eingetragen { $typed_at }
floor-state-logged_twice = , zweimal eingetragen
floor-enrol-the_code_is_missing = Der Code fehlt. Im Büro scannen oder eintippen.
floor-enrol-letting_it_in_and = Wird zugelassen, die Karten der Gefäße kommen.
floor-enrol-is_let_in = { $name } ist zugelassen.
floor-enrol-the_book_did_not = Das Buch nahm diesen Code nicht. Im Büro einen neuen verlangen.
floor-job-there_is_no_such = Diese Seite gibt es nicht. Zurück zu Heute.
floor-job-this_page_is_not = Diese Seite ist noch nicht auf dem Telefon. Sie kommt von selbst, sobald es das Buch erreicht; bis dahin von der Karte des Gefäßes aus eintragen.
floor-job-not_here_yet = Noch nicht hier
floor-log-not_on_this_phones = nicht auf der Liste dieses Telefons
floor-more-note = Notiz
floor-more-to_the_next_shift = an die nächste Schicht
floor-more-instrument = Messgerät
floor-more-check_it = prüfen
floor-more-bottles = Flaschen
floor-more-count_them = zählen
floor-more-cases = Kartons
floor-more-out_or_back = hinaus oder zurück
floor-more-in_from_another_site = herein von anderem Ort
floor-more-stock = Bestand
floor-more-count_it_in_a = im Rundgang zählen
floor-more-your_glasses = Ihre Gläser
floor-more-laboratory = Labor
floor-more-of_bottled_spirit = von abgefülltem Brand
floor-more-the_curves = die Kurven
floor-more-the_jobs = die Arbeiten
floor-more-the_reader_of_labels = der Etikettenleser
floor-more-log_without_a_vessel = Ohne Gefäß eintragen
floor-more-nobody_chosen = Niemand gewählt
floor-more-who_logs = wer einträgt
floor-more-no_name_yet = Noch kein Name
floor-more-let_in = zugelassen
floor-more-gloves_buzz_voice = Handschuhe, Vibration, Stimme
floor-more-desk = Büro
floor-more-needs_signal = braucht Netz
floor-more-put_the_phone_down = Telefon weglegen
floor-more-not_on_this_phone = Noch nicht auf diesem Telefon: { $awaited }. Die App eine Minute mit Netz offen lassen.
floor-more-as_you_like_it = Nach Ihrem Geschmack
floor-more-units = Einheiten
floor-more-metric = metrisch
floor-more-us = US
floor-more-decimal_mark = Dezimalzeichen
floor-more-as_the_house = wie das Haus
floor-more-keys = Tasten
floor-more-large_keys = große Tasten
floor-more-phone_keyboard = Tastatur des Telefons
floor-more-light = Licht
floor-more-as_the_phone = wie das Telefon
floor-more-dark = dunkel
floor-more-light_2 = hell
floor-more-put_cellarslate_on_the = Cellarslate auf den Startbildschirm
floor-more-put_cellarslate_on_the_2 = Cellarslate auf den Startbildschirm setzen (Teilen, dann Zum Home-Bildschirm): das Telefon behält die Tafel dann länger.
floor-run-the_run_in_full = Der ganze Brand ließ sich nicht zeigen; das Blatt steht ohne ihn.
floor-run-no_run_is_known = Für { $mark } ist auf diesem Telefon kein Brand bekannt. Zuerst die Blase füllen; oder jetzt ablesen, das Buch fügt es seinem Brand zu.
floor-run-charge = Füllung
floor-run-heat_on = Feuer an
floor-run-first_drop = Erster Tropfen
floor-run-other_event = Anderes Ereignis
floor-run-still_opened = Blase geöffnet
floor-run-balance_and_yield = Bilanz und Ausbeute
floor-run-charge_again = Neu füllen
floor-run-switch_the_receiver_first = zuerst die Vorlage umstellen
floor-run-event = Ereignis
floor-run-log_the_cut = Abtrennung eintragen
floor-scan-the_reader_of_labels = Der Etikettenleser ist noch nicht auf diesem Telefon: er kommt mit dem nächsten Netz. Kennung eintippen.
floor-slate-not_let_in_yet = noch nicht zugelassen
floor-slate-handed_in = übergeben { $handed_in_at }
floor-slate-nothing_handed_in_yet = noch nichts übergeben
floor-slate-handing_in = wird übergeben
floor-slate-book_busy = Buch beschäftigt
floor-slate-wants_a_look = Bitte ansehen
floor-slate-waiting = Wartet
floor-slate-put_aside_not_in = Beiseite gelegt, nicht im Buch
floor-slate-in_the_book = Im Buch
floor-slate-handing_in_2 = Wird übergeben
floor-slate-hand_in_now = Jetzt übergeben
floor-slate-entries_wait =
    { PLURAL($count) ->
        [one] { $count } Eintrag wartet
       *[other] { $count } Einträge warten
    } auf diesem Telefon.
floor-slate-nothing_waits = Nichts wartet.
floor-slate-all_in_the_book = Alles im Buch.
floor-slate-handing_in_3 = Wird übergeben{ $in }.
floor-slate-of_are_in = : { $done } von { $asked } sind im Buch
floor-slate-the_book_does_not = Das Buch kennt dieses Telefon noch nicht. Zulassen; dann übergeben sie sich von selbst.
floor-slate-they_are_safe_here = Hier sind sie sicher und übergeben sich, sobald das Buch antwortet.
floor-slate-lines_want_a_look =
    { PLURAL($count) ->
        [one] { $count } Zeile will
       *[other] { $count } Zeilen wollen
    } angesehen werden.
floor-slate-entries_put_aside =
    { PLURAL($count) ->
        [one] { $count } Eintrag wurde
       *[other] { $count } Einträge wurden
    } beiseite gelegt.
floor-slate-entries_handed_in =
    { PLURAL($count) ->
        [one] { $count } Eintrag wurde
       *[other] { $count } Einträge wurden
    } eben übergeben.
floor-slate-keeping_it_safe = Sicher aufbewahren
floor-slate-storage_is_kept = Speicher bleibt
floor-slate-storage_may_be_cleared = Speicher kann gelöscht werden
floor-slate-load_a_saved_slate = Gesicherte Tafel laden
floor-slate-a_saved_slate_can = Eine gesicherte Tafel lässt sich auf jedem Telefon laden, auch später. Das Buch nimmt jeden Eintrag einmal.
floor-slate-entries_on_this_slate =
    { PLURAL($count) ->
        [one] { $count } Eintrag steht
       *[other] { $count } Einträge stehen
    } jetzt auf dieser Tafel.{ $known }
floor-slate-were_here_already = { " " }{ $known } davon waren schon hier.
floor-today-the_book_has_no = Das Buch hat noch keine Gefäße. Das Büro trägt sie ein; dann kommen sie von selbst hierher.
floor-today-the_book_does_not = Das Buch kennt dieses Telefon noch nicht.
floor-today-no_cards_on_this = Noch keine Karten auf diesem Telefon. Sie kommen mit der ersten Übergabe.
floor-today-you_can_scan_and = Scannen und eintragen geht schon; alles wartet hier.
floor-today-run = { $what } Brand { $name }
floor-today-read = { " " }· abgelesen { $last }
floor-today-true = { $sign } wirklich
floor-today-the_book_asks = Das Buch fragt
floor-today-last_remarks = Letzte Bemerkungen
floor-today-all_vessels = Alle Gefäße
floor-today-find_by_mark_name = Nach Kennung, Name oder Inhalt suchen
floor-today-no_vessel_here_is = Hier heißt kein Gefäß so.
floor-today-elsewhere = Anderswo
floor-vessel-no_mark = keine Kennung
floor-vessel-not_known_here = hier nicht bekannt
floor-vessel-this_phone_knows_no = Dieses Telefon kennt kein Gefäß mit dieser Kennung. Einmal mit Netz übergeben; vielleicht kennt das Buch es schon.
floor-vessel-at = Bei { $mark }:{ " " }
floor-vessel-note_it = Notieren
floor-vessel-scan_again = Noch einmal scannen
floor-vessel-open_queries = Offene Rückfragen
floor-vessel-filled = Gefüllt { $since }.
floor-vessel-nothing_logged_here_yet = Hier noch nichts eingetragen.
floor-vessel-the_book_is_still = Das Buch rechnet noch, was Nachträge hier ändern.
floor-vessel-as_the_book_had = Wie es das Buch { $fresh } hatte.
floor-vessel-the_book_has_not = Das Buch wurde noch nicht gefragt.
floor-vessel-readings_without_a_charge = Ablesungen ohne Füllung
floor-vessel-how_much_water = Wie viel Wasser
floor-vessel-bottling_line = Abfülllinie
floor-vessel-more_to_log = Mehr einzutragen
floor-vessel-what_to_log = Was eintragen
floor-who-logs_now = { $name } trägt jetzt ein.
floor-who-logs = { $name } trägt ein
floor-who-no_names_on_this = Noch keine Namen auf diesem Telefon.
floor-who-they_come_with_the = Sie kommen mit der ersten Übergabe. Bis dahin werden Einträge ohne Namen geführt.
floor-who-as = Als
floor-who-no_signal_so_this = Kein Netz, die PIN wurde nicht geprüft. Zu diesen Einträgen wird nachgefragt.
floor-cautions-carbon_dioxide_lies_low = Kohlendioxid liegt unten und riecht nicht. Ab 5000 ppm hinaus, lüften, Aufsicht verständigen.
floor-cautions-stay_outside_the_line = Außerhalb der Linie bleiben, außer das Telefon ist zugelassen und der Betrieb erlaubt es. Später abgelesen? Die Minute dazu angeben.
floor-cautions-a_hydrometer_cannot_see = Eine Spindel sieht kein Methanol. Zuerst die Nase; ein Labor weiß es.
floor-cautions-hot_and_under_pressure = Heiß, und unter Druck, wenn ein Weg verstopft. Ein laufendes Brenngerät nie verlassen.
floor-cautions-never_lift_a_full = Ein volles Fass nie von Hand heben.
floor-cautions-no_one_enters_a = Niemand steigt in ein Gefäß ohne Erlaubnisschein und jemanden draußen.
floor-frame-no_signal = kein Netz
floor-frame-not_the_book = nicht das Buch
floor-frame-to_look_at = { $attention } ansehen
floor-frame-on_slate = { $waiting } auf der Tafel
floor-inunits-true_at_20_c = wirklich bei 20 °C
floor-inunits-true_at_60_f = wirklich bei 60 °F
floor-linesheet-wrong_vessel = falsches Gefäß
floor-linesheet-logged_twice = zweimal eingetragen
floor-linesheet-open_put_it_right = { $kind }, { $line } öffnen: berichtigen oder zurücknehmen
floor-linesheet-why_it_stays_legible = Warum? Es bleibt lesbar, durchgestrichen, und zählt nicht mehr.
floor-linesheet-that_could_not_be = Das ließ sich nicht behalten. Erneut versuchen.
floor-scanfor-what_the_camera_sees = Was die Kamera sieht
floor-scanfor-back_to_the_form = Zurück zum Blatt
floor-slatelines-taken_back = zurückgenommen
floor-slatelines-refused = abgelehnt
floor-slatelines-clash = Konflikt
floor-slatelines-the_book_has_another = Das Buch hat einen anderen Eintrag unter diesem Namen. Beide bleiben; der Brenner entscheidet.
floor-slatelines-the_book_cannot_read = Das Buch kann es nicht lesen.
floor-slatelines-book_no = Buch Nr. { $book_no }
floor-slatelines-hand_in_again = Erneut übergeben
floor-slatelines-i_have_read_it = Gelesen
floor-takebackbar-taken_back_at_once = sofort zurückgenommen
floor-takebackbar-that_could_not_be = Das ließ sich nicht behalten. In der Zeile selbst zurücknehmen.
floor-typemark-letters_digits_and_the = Buchstaben, Ziffern und das letzte Zeichen nach dem Strich.
floor-typemark-the_last_character_is = Das letzte Zeichen fehlt. Mit eintippen, oder die Kennung antippen, die auf dem Etikett steht.
floor-typemark-a_right_mark_but = Eine richtige Kennung, aber keines Gefäßes, das dieses Telefon kennt.
floor-words-on_the_slate_wait = Auf der Tafel. { $waiting } warten auf diesem Telefon.
floor-words-on_the_slate_it = Auf der Tafel. Wartet auf diesem Telefon.
floor-words-batch = Ansatz { $name }
floor-words-at = mit { $strength_pct }
floor-words-just_now = eben
floor-words-min_ago = vor { $minutes } min
floor-words-h_ago = vor { $minutes } h
floor-words-days_ago = vor { $minutes } Tagen
floor-ask-the_book_did_not = Das Buch antwortete nicht rechtzeitig.
floor-ask-the_book_cannot_be = Das Buch ist von hier nicht zu erreichen.
floor-ask-something_else_answered_not = Etwas anderes antwortete, nicht das Buch: vielleicht verlangt dieses Netz erst eine Anmeldung.
floor-db-this_phones_storage_is = Der Speicher dieses Telefons ist voll, nichts wurde behalten. Platz schaffen, oder die Tafel als Datei sichern und übergeben.
floor-db-a_newer_cellarslate_has = Ein neueres Cellarslate hat die Tafel offen. Die anderen Tabs schließen, dann diese Seite neu öffnen.
floor-db-an_older_cellarslate_is = Ein älteres Cellarslate ist in einem anderen Tab offen. Schließen; dann öffnet sich die Tafel.
floor-db-this_browser_does_not = Dieser Browser lässt die Tafel nichts behalten ({ $name }). Privaten Modus verlassen oder anderen Browser nehmen.
floor-device-clock_off =
    Die Uhr dieses Telefons geht { $span } { $side ->
        [ahead] vor
       *[behind] nach
    }, verglichen mit dem Buch. Stellen; Eingetragenes behält seine Zeiten.
floor-device-the_browser_has_promised = Der Browser hat zugesagt, die Tafel zu behalten.
floor-device-the_browser_may_clear = Der Browser kann die Tafel löschen, wenn Speicher knapp wird oder die App lange ruht. App installieren und oft übergeben.
floor-handin-this_entry_is_too = Dieser Eintrag ist zu groß für das Buch. Bemerkung kürzen und neu eintragen; dieser bleibt hier.
floor-handin-the_answer_was_not = Die Antwort war keine Quittung des Buchs.
floor-handin-the_slate_keeps_everything = Die Tafel behält alles und versucht es wieder.
floor-handin-something_failed = Etwas ging schief.
floor-handin-this_phone_must_be = Dieses Telefon muss neu zugelassen werden. Nichts ist verloren; die Tafel behält alles.
floor-who-nobody_here_has_the = Niemand hier hat den Code { $code }. Namen aus der Liste wählen.
floor-who-type_your_pin = PIN eintippen.
floor-who-that_is_not_this = Das ist nicht die PIN dieser Person. Erneut versuchen.
floor-charts-the_curve_could_not = Die Kurve ließ sich nicht zeichnen; ihre Zahlen stehen da.
floor-charttable-one_row_in = { " " }Eine Zeile von { $step }.
floor-charttable-expected = erwartet
floor-charttable-at = { $y } bei { $x }{ $unit }
floor-charttable-to = , bis{ " " }
floor-charttable-to_2 = { $label }: { $from } bis { $to }{ $unit }.
floor-charttable-at_2 = { $label } bei { $x }{ $unit }.
floor-charttable-at_3 = { $label } bei { $y }.
floor-format-day = Tag { $start }
floor-format-yesterday = gestern
floor-format-days_ago = vor { $days } Tagen
floor-keypad-erase = Löschen
floor-keypad-plus_or_minus = Plus oder minus
floor-keypad-unit = Einheit
floor-keypad-decimal_comma = Dezimalkomma
floor-keypad-decimal_point = Dezimalpunkt
floor-keypad-units = Einheiten
floor-keypad-swap = { $text } tauschen
floor-notice-later = Später
floor-notice-a_newer_cellarslate_is = Ein neueres Cellarslate ist bereit. Auf der Tafel ändert sich nichts.
floor-notice-use_it_now = Jetzt nehmen
floor-badge =
    { $weight ->
        [stop] Halt
        [ask] Frage
        [entered] eingetragen
        [waiting] wartet
       *[note] Hinweis
    }
floor-may_stay_empty = (darf leer bleiben)
floor-litres = Liter
floor-gallons = Gallonen
floor-part =
    { $part ->
        [hearts] Mittellauf
        [tails] Nachlauf
        [low_wines] Lutter
       *[heads] Vorlauf
    }
floor-state-receiver =
    { $state ->
        [open] offen
        [closed] zu
       *[waiting] wartet
    }
floor-bad_mark =
    { $why ->
        [empty] Die Kennung vom Etikett eintippen, etwa F3-8.
        [foreign] Dieser Code ist keiner von uns. Das Etikett am Gefäß scannen oder seine Kennung eintippen.
        [characters] Eine Kennung hat nur Buchstaben A bis Z und Ziffern 0 bis 9. Das Etikett noch einmal lesen.
        [too_short] Eine Kennung hat einen Code und ein Prüfzeichen, etwa F3-8. Ganz eintippen.
        [too_long] Das ist zu lang für eine Kennung. Die große Schrift auf dem Etikett eintippen.
       *[check] { $mark } ist keine Kennung: ein Zeichen ist falsch oder das letzte fehlt. Das Etikett noch einmal lesen.
    }
floor-within_sentence = { $words }
floor-scanfor-scan = Scannen: { $label }
floor-takebackbar-just_logged = Eben eingetragen
floor-keypad-name = Tastenfeld
floor-keypad-no_other_unit = Keine andere Einheit
floor-more-language = Sprache
floor-more-language_not_here = Diese Sprache ist noch nicht auf diesem Telefon. Mit Netz noch einmal wählen.
title-fruit_intake = Obstannahme
short-fruit_intake = Obst an
about-fruit_intake = Eine Lieferung Obst oder Getreide, gewogen und in einen Gärbottich gekippt.
label-fruit_intake-gross = Bruttogewicht
label-fruit_intake-tare = Tara
help-fruit_intake-tare = Kisten und Palette, leer.
label-fruit_intake-material = Rohstoff
choice-fruit_intake-material-plum = Pflaume
choice-fruit_intake-material-pear = Birne
choice-fruit_intake-material-quince = Quitte
choice-fruit_intake-material-cherry = Kirsche
choice-fruit_intake-material-apricot = Aprikose
choice-fruit_intake-material-mirabelle = Mirabelle
choice-fruit_intake-material-apple = Apfel
choice-fruit_intake-material-grape = Traube
choice-fruit_intake-material-raspberry = Himbeere
choice-fruit_intake-material-marc = Trester
choice-fruit_intake-material-rye = Roggen
choice-fruit_intake-material-other = anderes
label-fruit_intake-variety = Sorte
label-fruit_intake-grower_lot = Lieferant und Los
help-fruit_intake-grower_lot = Wie auf dem Wiegeschein.
label-fruit_intake-batch = Ansatz
help-fruit_intake-batch = Der Ansatz, in den diese Lieferung kommt, wie ihn das Haus nennt.
label-fruit_intake-picked_on = Geerntet am
label-fruit_intake-sugar = Zucker nach Refraktometer
help-fruit_intake-sugar = Gepresster Saft. Bei Getreide leer lassen.
label-fruit_intake-ph = pH
label-fruit_intake-temp = Temperatur
label-fruit_intake-rot = Fäulnis
rule-fruit_intake-tare_below_gross = Tara { $tare } liegt nicht unter brutto { $gross }. Die Waage noch einmal ansehen.
figure-fruit_intake-net = Obst netto
figure-fruit_intake-potential = möglicher reiner Alkohol
title-addition = Zusatz
about-addition = Enzym, Säure, Hefe, Hefenährstoff oder sonst Zugesetztes, mit seinem Los. Nach Zucker wird jedes Mal gefragt.
label-addition-what = Was
choice-addition-what-enzyme = Enzym
choice-addition-what-acid = Säure
choice-addition-what-yeast = Hefe
choice-addition-what-yeast_food = Hefenährstoff
choice-addition-what-sulphite = Sulfit
choice-addition-what-antifoam = Entschäumer
choice-addition-what-water = Wasser
choice-addition-what-malt = Malz
choice-addition-what-sugar = Zucker
choice-addition-what-wood = Holzspäne
choice-addition-what-caramel = Zuckerkulör
choice-addition-what-other = anderes
label-addition-lot_no = Mittel und Losnummer
help-addition-lot_no = Wie auf der Packung.
label-addition-amount = Menge nach Gewicht
label-addition-amount_volume = oder nach Volumen
label-addition-is_sugar = Ist es Zucker?
help-addition-is_sugar = Obstbrand kommt aus dem Zucker der Frucht. Ja bleibt beim Ansatz.
rule-addition-some_amount = Menge eintippen, nach Gewicht oder Volumen.
title-ferment_reading = Gärablesung
short-ferment_reading = Ablesung
about-ferment_reading = Temperatur, Dichte des geseihten Safts, pH und Hut eines Gärbottichs.
summary-ferment_reading = { $gravity } bei { $temp }
label-ferment_reading-temp = Maischetemperatur
help-ferment_reading-temp = Fühler in der Mitte, nicht an der Wand.
label-ferment_reading-gravity = Dichte, geseihter Saft
help-ferment_reading-gravity = Mit der Spindel. Ein Refraktometer zeigt falsch, sobald Alkohol da ist.
label-ferment_reading-refractometer = Refraktometer, derselbe Saft
help-ferment_reading-refractometer = Allein falsch, sobald Alkohol da ist; daneben ein Anhalt.
label-ferment_reading-ph = pH
label-ferment_reading-cap = Hut
choice-ferment_reading-cap-none = keiner
choice-ferment_reading-cap-thin = dünn
choice-ferment_reading-cap-thick = dick
choice-ferment_reading-cap-fallen = gefallen
label-ferment_reading-volatile_acid = Flüchtige Säure
label-ferment_reading-room_co2 = CO₂ im Raum geprüft
help-ferment_reading-room_co2 = Vom Messgerät. Ab 5000 ppm hinaus, lüften, Aufsicht verständigen.
danger-ferment_reading-room_co2-0 = Hinaus, lüften, Aufsicht verständigen. Für keine Ablesung zurückgehen.
danger-ferment_reading-room_co2-1 = Alle sofort hinaus. Aufsicht verständigen. Für keine Ablesung zurückgehen.
figure-ferment_reading-alcohol_so_far = Alkohol bisher, aus der Dichte
figure-ferment_reading-alcohol_by_both = Alkohol nach beiden Geräten, ein Anhalt
title-ferment_closed = Gärung beendet
short-ferment_closed = Gärung beenden
about-ferment_closed = Enddichte, Volumen und Alkoholgehalt der vergorenen Maische. Von hier an steht ihr reiner Alkohol im Buch.
summary-ferment_closed = { $volume } mit { $wash_strength }
label-ferment_closed-final_gravity = Enddichte
label-ferment_closed-volume = Volumen nach Peilung
label-ferment_closed-wash_strength = Gehalt der Maische
help-ferment_closed-wash_strength = Durch Labordestillation, sonst aus der Vergärung.
label-ferment_closed-method = Gehalt durch
choice-ferment_closed-method-lab = Labordestillation
choice-ferment_closed-method-attenuation = Vergärung
figure-ferment_closed-wash_lpa = reiner Alkohol in der Maische
figure-ferment_closed-by_gravity = Gehalt aus dem Fall der Dichte
title-charge = Füllung
short-charge = Füllen, Brand beginnen
about-charge = Was in die Blase kommt. Damit beginnt ein Brand.
summary-charge = { $wash } mit { $wash_strength }
label-charge-run_name = Brand
help-charge-run_name = Wie das Haus ihn nennt. Leer: der Tag gibt den Namen.
label-charge-from_vessel = Aus Gefäß
label-charge-wash = Maischevolumen
label-charge-wash_strength = Gehalt der Maische
help-charge-wash_strength = Labordestillation oder aus der Vergärung. In Maische zeigt keine Spindel richtig.
label-charge-feints = Vor-/Nachlauf oder Lutter dazu
label-charge-feints_strength = Gehalt von Vor-/Nachlauf
label-charge-feints_temp = Temperatur von Vor-/Nachlauf
label-charge-feints_from = Vor-/Nachlauf aus
label-charge-heads_to = Vorlauf in
label-charge-hearts_to = Mittellauf in
label-charge-tails_to = Nachlauf in
rule-charge-feints_need_strength = Vor- oder Nachlauf kam dazu: auch seinen Alkoholgehalt eintippen.
figure-charge-wash_lpa = reiner Alkohol in der Maische
figure-charge-feints_lpa = reiner Alkohol im Vor-/Nachlauf
figure-charge-charge_lpa = reiner Alkohol eingefüllt
title-run_reading = Ablesung im Brand
short-run_reading = Ablesung
about-run_reading = Spindel und Temperatur an der Vorlage, mit Dampftemperatur, Durchfluss und einer Peilung der offenen Vorlage.
summary-run_reading = { $true_strength } wirklich
label-run_reading-glass = Spindelanzeige
help-run_reading-glass = Wie die Spindel zeigt, nicht berichtigt.
label-run_reading-density = oder Dichte, Messgerät
help-run_reading-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-run_reading-temp = Temperatur im Brand
help-run_reading-temp = Im selben Augenblick wie die Spindel ablesen.
label-run_reading-vapour_temp = Dampftemperatur
label-run_reading-flow = Durchfluss
help-run_reading-flow = Krug und Uhr.
label-run_reading-dip = Peilung der offenen Vorlage
help-run_reading-dip = Was jetzt darin steht, mit dem, was schon darin war.
label-run_reading-plates = Böden aktiv
label-run_reading-cooling_temp = Dephlegmatorwasser
label-run_reading-strength = Gehalt, schon berichtigt
help-run_reading-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
rule-run_reading-some_reading = Spindelanzeige mit Temperatur, einen schon berichtigten Gehalt oder eine Peilung eintippen.
rule-run_reading-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-run_reading-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-run_reading-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-run_reading-true_strength = wirklich bei 20 °C
figure-run_reading-glass_true = Spindel, berichtigt
title-cut = Abtrennung oder Ereignis
short-cut = Abtrennen
about-cut = Eine Abtrennung mit der jetzt offenen Vorlage, Feuer an, erster Tropfen, Änderung von Feuer, Wasser oder Böden. Das Antippen gibt die Zeit.
label-cut-event = Ereignis
choice-cut-event-heat_on = Feuer an
choice-cut-event-first_drop = erster Tropfen
choice-cut-event-heads_cut = Vorlauf ab, Mittellauf beginnt
choice-cut-event-hearts_cut = Mittellauf ab, Nachlauf beginnt
choice-cut-event-heat_changed = Feuer geändert
choice-cut-event-water_changed = Wasser geändert
choice-cut-event-plate_in = Boden zu
choice-cut-event-plate_out = Boden ab
choice-cut-event-still_opened = Blase geöffnet
choice-cut-event-other = anderes
label-cut-receiver = Jetzt offene Vorlage
label-cut-reason = Warum jetzt
choice-cut-reason-nose = Nase
choice-cut-reason-taste = Geschmack
choice-cut-reason-strength = Alkoholgehalt
choice-cut-reason-vapour = Dampftemperatur
choice-cut-reason-time = Zeit
label-cut-glass = Spindelanzeige
help-cut-glass = Wie die Spindel zeigt, nicht berichtigt.
label-cut-density = oder Dichte, Messgerät
help-cut-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-cut-temp = Temperatur im Brand
help-cut-temp = Im selben Augenblick wie die Spindel ablesen.
label-cut-vapour_temp = Dampftemperatur
label-cut-flow = Durchfluss
label-cut-nose = Nase und Gaumen
help-cut-nose = Eigene Worte.
label-cut-strength = Gehalt, schon berichtigt
help-cut-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
rule-cut-cut_needs_receiver = Zur Abtrennung gehört die jetzt offene Vorlage. Scannen oder wählen.
rule-cut-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-cut-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-cut-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-cut-true_strength = wirklich bei 20 °C
figure-cut-glass_true = Spindel, berichtigt
title-run_end = Ende des Brands
short-run_end = Brand beenden
about-run_end = Das Letzte eines Brands: warum er endete und wobei.
summary-run_end = beendet, { $reason }
label-run_end-reason = Warum jetzt
choice-run_end-reason-strength = Alkoholgehalt
choice-run_end-reason-vapour = Dampftemperatur
choice-run_end-reason-time = Zeit
choice-run_end-reason-nose = Nase
choice-run_end-reason-trouble = Störung
label-run_end-glass = Spindelanzeige
help-run_end-glass = Wie die Spindel zeigt, nicht berichtigt.
label-run_end-density = oder Dichte, Messgerät
help-run_end-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-run_end-temp = Temperatur im Brand
help-run_end-temp = Im selben Augenblick wie die Spindel ablesen.
label-run_end-vapour_temp = Dampftemperatur
label-run_end-flow = Durchfluss
label-run_end-strength = Gehalt, schon berichtigt
help-run_end-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
rule-run_end-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-run_end-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-run_end-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-run_end-true_strength = wirklich bei 20 °C
figure-run_end-glass_true = Spindel, berichtigt
title-fraction_gauge = Fraktionsmessung
short-fraction_gauge = Fraktion messen
about-fraction_gauge = Volumen oder Gewicht, Alkoholgehalt und Temperatur von Vorlauf, Mittellauf, Nachlauf, Lutter oder Schlempe eines Brands.
summary-fraction_gauge = { $fraction }: { $volume_20 } mit { $true_strength }
label-fraction_gauge-still = Brand auf Gerät
label-fraction_gauge-fraction = Fraktion
choice-fraction_gauge-fraction-heads = Vorlauf
choice-fraction_gauge-fraction-hearts = Mittellauf
choice-fraction_gauge-fraction-tails = Nachlauf
choice-fraction_gauge-fraction-low_wines = Lutter
choice-fraction_gauge-fraction-stillage = Schlempe
label-fraction_gauge-remnant = Rest zuvor
help-fraction_gauge-remnant = Was vor dem Auffangen in der Vorlage stand. 0, wenn sie leer war.
label-fraction_gauge-remnant_strength = Gehalt des Rests
label-fraction_gauge-volume = Volumen jetzt
label-fraction_gauge-net_weight = oder Nettogewicht jetzt
label-fraction_gauge-temp = Temperatur im Brand
help-fraction_gauge-temp = Im selben Augenblick wie die Spindel ablesen.
label-fraction_gauge-glass = Spindelanzeige
help-fraction_gauge-glass = Wie die Spindel zeigt, nicht berichtigt.
label-fraction_gauge-density = oder Dichte, Messgerät
help-fraction_gauge-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-fraction_gauge-strength = Gehalt, schon berichtigt
help-fraction_gauge-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-fraction_gauge-goes_to = Geht in
choice-fraction_gauge-goes_to-stays = bleibt hier
choice-fraction_gauge-goes_to-next_run = nächster Brand
choice-fraction_gauge-goes_to-destroyed = vernichtet
choice-fraction_gauge-goes_to-drain = abgelassen
rule-fraction_gauge-some_quantity = Volumen oder Nettogewicht eintippen.
rule-fraction_gauge-remnant_needs_strength = Es war ein Rest da: auch seinen Gehalt eintippen, oder 0 Liter.
rule-fraction_gauge-some_strength = Spindelanzeige mit Temperatur oder einen schon berichtigten Gehalt eintippen.
rule-fraction_gauge-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-fraction_gauge-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-fraction_gauge-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-fraction_gauge-true_strength = wirklich bei 20 °C
figure-fraction_gauge-glass_true = Spindel, berichtigt
figure-fraction_gauge-volume_20 = Volumen bei 20 °C
figure-fraction_gauge-lpa = reiner Alkohol
figure-fraction_gauge-remnant_lpa = davon Rest
title-cut_plan = Abtrennplan
short-cut_plan = Abtrennplan
about-cut_plan = Der Plan des Brenners für eine Frucht: Vorlauf nach Volumen, Mittel- und Nachlauf bis zu einem Gehalt. Am Brenngerät eingetragen gilt er für dieses, ohne Gefäß für alle. Der letzte zählt; die Nase entscheidet.
summary-cut_plan = { $what }: Mittellauf bis { $hearts_to }
label-cut_plan-what = Obst
help-cut_plan-what = Wie der Brand sie nennt: kleine blaue Pflaume.
label-cut_plan-heads = Vorlauf nach Volumen
label-cut_plan-hearts_to = Mittellauf bis
label-cut_plan-tails_to = Nachlauf bis
label-cut_plan-why = Warum
label-cut_plan-tasting = Blindverkostung dahinter
help-cut_plan-tasting = Ihr Name: T-26-03
rule-cut_plan-some_plan = Mindestens eine Zahl des Plans eintippen: Vorlauf, Mittellauf oder Nachlauf.
rule-cut_plan-tails_below_hearts = Nachlauf bis { $tails_to } liegt nicht unter dem Mittellauf { $hearts_to }. Noch einmal ansehen.
title-best_run = Bester Brand
short-best_run = Bester Brand
about-best_run = Der Brenner nennt einen Brand den besten seiner Frucht auf seinem Gerät: spätere werden daran gemessen. Die letzte Nennung zählt.
label-best_run-run = Brand
help-best_run-run = Sein Name oder seine Nummer im Buch.
label-best_run-why = Warum
help-best_run-why = Was ihn gut machte, in eigenen Worten.
title-gauge = Messung
about-gauge = Volumen oder Nettogewicht, Alkoholgehalt und Temperatur dessen, was ein Gefäß enthält.
summary-gauge = { $volume_20 } mit { $true_strength }
label-gauge-what = Inhalt
help-gauge-what = Brand und Los, wie das Haus sie nennt.
label-gauge-volume = Volumen
label-gauge-dip = oder Peilung
help-gauge-dip = Tiefe oder Leerraum, wie die Tabelle des Gefäßes; seine Liter folgen.
label-gauge-net_weight = oder Nettogewicht
label-gauge-glass = Spindelanzeige
help-gauge-glass = Wie die Spindel zeigt, nicht berichtigt.
label-gauge-density = oder Dichte, Messgerät
help-gauge-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-gauge-temp = Temperatur im Brand
help-gauge-temp = Im selben Augenblick wie die Spindel ablesen.
label-gauge-strength = Gehalt, schon berichtigt
help-gauge-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-gauge-purpose = Warum
choice-gauge-purpose-stock = Bestand
choice-gauge-purpose-move = vor dem Umfüllen
choice-gauge-purpose-opening = Anfangsbestand
choice-gauge-purpose-other = anderes
rule-gauge-some_quantity = Volumen, Peilung oder Nettogewicht eintippen.
rule-gauge-volume_needs_temp = Zum Volumen gehört die Temperatur im Brand. Auch eintippen.
rule-gauge-some_strength = Spindelanzeige mit Temperatur oder einen schon berichtigten Gehalt eintippen.
rule-gauge-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-gauge-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-gauge-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-gauge-true_strength = wirklich bei 20 °C
figure-gauge-glass_true = Spindel, berichtigt
figure-gauge-dipped = nach seiner Tabelle
figure-gauge-estimated = nach seinen Maßen, geschätzt
figure-gauge-volume_20 = Volumen bei 20 °C
figure-gauge-lpa = reiner Alkohol
figure-gauge-proof_gallons = Proof Gallons
title-distilled_gauge = Messung durch Destillation
short-distilled_gauge = Destillierte Messung
about-distilled_gauge = Volumen oder Nettogewicht eines Brands, dessen Gehalt Zucker oder Holz verdeckt, und der Gehalt seines Destillats.
summary-distilled_gauge = { $volume_20 } mit { $true_strength }, destilliert
label-distilled_gauge-what = Inhalt
help-distilled_gauge-what = Brand und Los, wie das Haus sie nennt.
label-distilled_gauge-volume = Volumen
label-distilled_gauge-dip = oder Peilung
help-distilled_gauge-dip = Tiefe oder Leerraum, wie die Tabelle des Gefäßes; seine Liter folgen.
label-distilled_gauge-net_weight = oder Nettogewicht
label-distilled_gauge-glass = Spindel, undestilliert
help-distilled_gauge-glass = Wie die Spindel zeigt, nicht berichtigt. Leer lassen, wo Zucker sie aus der Skala hebt.
label-distilled_gauge-density = oder Dichte, undestilliert
help-distilled_gauge-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-distilled_gauge-temp = Temperatur im Brand
help-distilled_gauge-temp = Im selben Augenblick wie die Spindel ablesen.
label-distilled_gauge-sample_volume = Destillierte Probe
help-distilled_gauge-sample_volume = Was für den Kolben abgemessen wurde, vor allem Wasser.
label-distilled_gauge-sample_temp = Temperatur der Probe
help-distilled_gauge-sample_temp = Für beide gleich, am besten 20 °C.
label-distilled_gauge-distillate_volume = Destillat, aufgefüllt auf
help-distilled_gauge-distillate_volume = Mit Wasser, bis zur Marke desselben Kolbens.
label-distilled_gauge-distillate_temp = Temperatur des Destillats
help-distilled_gauge-distillate_temp = Für beide gleich, am besten 20 °C.
label-distilled_gauge-distillate_glass = Spindelanzeige im Destillat
help-distilled_gauge-distillate_glass = Wie die Spindel zeigt, nicht berichtigt.
label-distilled_gauge-distillate_density = oder seine Dichte, Messgerät
help-distilled_gauge-distillate_density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-distilled_gauge-dry_extract = Gesamttrockenextrakt
help-distilled_gauge-dry_extract = Rückstand von 25 mL, bei 105 °C getrocknet, mal 40.
label-distilled_gauge-purpose = Warum
choice-distilled_gauge-purpose-stock = Bestand
choice-distilled_gauge-purpose-move = vor dem Umfüllen
choice-distilled_gauge-purpose-opening = Anfangsbestand
choice-distilled_gauge-purpose-other = anderes
rule-distilled_gauge-some_quantity = Volumen, Peilung oder Nettogewicht eintippen.
rule-distilled_gauge-volume_needs_temp = Zum Volumen gehört die Temperatur im Brand. Auch eintippen.
rule-distilled_gauge-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-distilled_gauge-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-distilled_gauge-distillate_is_read = Eintippen, was Spindel oder Dichtemessgerät im Destillat zeigt.
rule-distilled_gauge-weight_needs_density = Zucker macht den Brand schwer. Zum Nettogewicht die Dichte oder die Spindelanzeige des undestillierten Brands eintippen.
rule-distilled_gauge-extract_hides_more = Dieser Extrakt verdeckt mindestens { $obscuration_least }, nach den Zahlen sind { $obscuration } verdeckt. Die Spindel im undestillierten Brand ansehen; war alles Destillat im Kolben und zur Marke aufgefüllt?
rule-distilled_gauge-extract_hides_less = Dieser Extrakt verdeckt höchstens { $obscuration_most }, nach den Zahlen sind { $obscuration } verdeckt. Den Extrakt und die Spindel im undestillierten Brand ansehen.
figure-distilled_gauge-distillate_strength = Destillat bei 20 °C
figure-distilled_gauge-true_strength = wirklich bei 20 °C
figure-distilled_gauge-seen_strength = wie Spindel oder Gerät zeigt
figure-distilled_gauge-obscuration = verdeckt
figure-distilled_gauge-obscuration_least = der Extrakt verdeckt mindestens
figure-distilled_gauge-obscuration_most = der Extrakt verdeckt höchstens
figure-distilled_gauge-dipped = nach seiner Tabelle
figure-distilled_gauge-estimated = nach seinen Maßen, geschätzt
figure-distilled_gauge-volume_20 = Volumen bei 20 °C
figure-distilled_gauge-lpa = reiner Alkohol
figure-distilled_gauge-proof_gallons = Proof Gallons
title-opening = Anfangsbestand
short-opening = Anfangsbestand
about-opening = Was in einem Gefäß stand, bevor das Buch begann: seine Messung, Herkunft, Tag der Füllung und die Papiere dazu. Hat eine einfache Messung das Gefäß eröffnet, kommt die Vergangenheit dazu; der Bestand bleibt.
summary-opening = { $volume_20 } mit { $true_strength } vor diesem Buch, { $spirit }
label-opening-spirit = Art der Spirituose
label-opening-lot = Los
label-opening-gross = Bruttogewicht
help-opening-gross = Fass und Brand zusammen.
label-opening-tare = Leergewicht
help-opening-tare = Aus den Papieren. Leer: wie das Gefäß geführt wird.
label-opening-net_weight = oder Nettogewicht
label-opening-volume = oder Volumen
help-opening-volume = Nach Peilung. Ohne Temperatur zählt es als Liter bei 20 °C.
label-opening-glass = Spindelanzeige
help-opening-glass = Wie die Spindel zeigt, nicht berichtigt.
label-opening-density = oder Dichte, Messgerät
help-opening-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-opening-temp = Temperatur im Brand
help-opening-temp = Im selben Augenblick wie die Spindel ablesen.
label-opening-strength = Gehalt, schon berichtigt
help-opening-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-opening-filled_on = Gefüllt am
help-opening-filled_on = Der Tag, an dem es in dieses Gefäß kam.
label-opening-filled_volume = Volumen bei Füllung
label-opening-filled_strength = Gehalt bei Füllung
label-opening-filled_lpa = oder reiner Alkohol dabei
label-opening-aged_since = Jüngster Teil im Holz seit
help-opening-aged_since = Leer: der Tag der Fassfüllung.
label-opening-papers = Papiere zum Alter
help-opening-papers = Welches Buch oder welcher Schein, und die Seite.
label-opening-origin = Woher
help-opening-origin = Eigenes Gerät, oder von wem es kam.
label-opening-material = Aus
help-opening-material = Obst oder Getreide.
label-opening-harvest = Ernte von
help-opening-harvest = Das Jahr.
label-opening-distilling_strength = Destilliert mit
help-opening-distilling_strength = Alkoholgehalt, mit dem es vom Gerät kam.
label-opening-use = Holz zuvor
choice-opening-use-new = neu
choice-opening-use-used_once = einmal belegt
choice-opening-use-used = mehrmals belegt
label-opening-wood = Holz
help-opening-wood = Eiche, Kastanie, Maulbeere.
label-opening-to_account = Konto
help-opening-to_account = In dem es steht. Leer: Lagerung für Fässer, Verarbeitung für Tanks.
choice-opening-to_account-production = Herstellung
choice-opening-to_account-storage = Lagerung
choice-opening-to_account-processing = Verarbeitung
label-opening-place = Platz
help-opening-place = Feld, Lage, Stelle.
rule-opening-quantity_needs_strength = Spindelanzeige mit Temperatur oder einen schon berichtigten Gehalt eintippen.
rule-opening-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-opening-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-opening-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
rule-opening-tare_below_gross = Leergewicht { $tare } liegt nicht unter brutto { $gross }. Beide noch einmal ansehen.
rule-opening-fill_volume_needs_strength = Das Volumen bei Füllung sagt ohne den Gehalt wenig. Eintippen, wenn die Papiere ihn haben.
figure-opening-true_strength = wirklich bei 20 °C
figure-opening-glass_true = Spindel, berichtigt
figure-opening-net = Nettogewicht
figure-opening-volume_20 = Volumen bei 20 °C
figure-opening-lpa = reiner Alkohol
figure-opening-proof_gallons = Proof Gallons
figure-opening-fill_lpa = reiner Alkohol bei Füllung
title-account_move = Alkoholfeststellung, Abgang
short-account_move = Messen und umbuchen
about-account_move = Eine gemessene Menge geht in ein anderes Gefäß, ein anderes Konto oder aus dem Betrieb.
summary-account_move = { $serial }: { $volume_20 } mit { $true_strength }, { $from_account } nach { $to_account }
label-account_move-serial = Laufende Nummer
help-account_move-serial = Jedes Jahr ab 1, oder nie zweimal verwendet.
label-account_move-from_account = Aus Konto
choice-account_move-from_account-production = Herstellung
choice-account_move-from_account-storage = Lagerung
choice-account_move-from_account-processing = Verarbeitung
label-account_move-to_account = In Konto
choice-account_move-to_account-production = Herstellung
choice-account_move-to_account-storage = Lagerung
choice-account_move-to_account-processing = Verarbeitung
choice-account_move-to_account-removed = verlässt den Betrieb
label-account_move-to_vessel = In Gefäß
help-account_move-to_vessel = Leer lassen, wenn es bleibt, wo es ist.
label-account_move-purpose = Warum
choice-account_move-purpose-deposit = Feststellung, Einlagerung
choice-account_move-purpose-move = umlagern
choice-account_move-purpose-redistil = zum erneuten Brennen
choice-account_move-purpose-tax_paid = versteuert
choice-account_move-purpose-export = Ausfuhr
choice-account_move-purpose-in_bond = unversteuert an anderen Betrieb
choice-account_move-purpose-research = Forschung
choice-account_move-purpose-other = anderes
label-account_move-spirit = Art der Spirituose
label-account_move-lot = Los
label-account_move-distilling_strength = Destilliert mit
help-account_move-distilling_strength = Alkoholgehalt, mit dem es vom Gerät kam.
label-account_move-volume = Volumen
label-account_move-net_weight = oder Nettogewicht
label-account_move-glass = Spindelanzeige
help-account_move-glass = Wie die Spindel zeigt, nicht berichtigt.
label-account_move-density = oder Dichte, Messgerät
help-account_move-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-account_move-temp = Temperatur im Brand
help-account_move-temp = Im selben Augenblick wie die Spindel ablesen.
label-account_move-strength = Gehalt, schon berichtigt
help-account_move-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-account_move-age = Alter bisher
help-account_move-age = Jahre-Monate-Tage.
label-account_move-to_whom = An wen
help-account_move-to_whom = Name und Anschrift, wenn es weggeht.
rule-account_move-some_quantity = Volumen oder Nettogewicht eintippen.
rule-account_move-volume_needs_temp = Zum Volumen gehört die Temperatur im Brand. Auch eintippen.
rule-account_move-some_strength = Spindelanzeige mit Temperatur oder einen schon berichtigten Gehalt eintippen.
rule-account_move-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-account_move-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-account_move-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-account_move-true_strength = wirklich bei 20 °C
figure-account_move-glass_true = Spindel, berichtigt
figure-account_move-volume_20 = Volumen bei 20 °C
figure-account_move-lpa = reiner Alkohol
figure-account_move-proof_gallons = Proof Gallons
title-receipt = Zugang, lose
short-receipt = Brand annehmen
about-receipt = Brand kommt lose von einem anderen Ort: die Menge auf den Papieren, die Messung hier und was unterwegs verloren ging.
summary-receipt = { $document }: { $volume_20 } mit { $true_strength } von { $consignor }
label-receipt-consignor = Von wem
help-receipt-consignor = Name und Anschrift, Nummer von Betrieb oder Lager.
label-receipt-document = Belegnummer
label-receipt-purpose = Wie es kommt
choice-receipt-purpose-in_bond = unversteuert
choice-receipt-purpose-customs = vom Zoll
choice-receipt-purpose-returned = zurück unter Aussetzung
choice-receipt-purpose-tax_paid = versteuert
choice-receipt-purpose-other = anderes
label-receipt-spirit = Art der Spirituose
label-receipt-lot = Los
label-receipt-to_account = Auf Konto
choice-receipt-to_account-production = Herstellung
choice-receipt-to_account-storage = Lagerung
choice-receipt-to_account-processing = Verarbeitung
label-receipt-declared_volume = Volumen laut Papieren
help-receipt-declared_volume = Wie die Papiere sagen.
label-receipt-declared_weight = oder Nettogewicht laut Papieren
label-receipt-declared_strength = Gehalt laut Papieren
label-receipt-declared_temp = Angegeben bei
help-receipt-declared_temp = Leer: 20 °C; US-Papiere nennen es bei 60 °F.
label-receipt-distilling_strength = Destilliert mit
help-receipt-distilling_strength = Alkoholgehalt, mit dem es vom Gerät kam, wenn die Papiere ihn nennen.
label-receipt-volume = Volumen erhalten
label-receipt-net_weight = oder Nettogewicht erhalten
label-receipt-glass = Spindelanzeige
help-receipt-glass = Wie die Spindel zeigt, nicht berichtigt.
label-receipt-density = oder Dichte, Messgerät
help-receipt-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-receipt-temp = Temperatur im Brand
help-receipt-temp = Im selben Augenblick wie die Spindel ablesen.
label-receipt-strength = Gehalt, schon berichtigt
help-receipt-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-receipt-seals = Verschlüsse heil?
label-receipt-vehicle = Fahrzeug und Verschlussnummern
label-receipt-age = Alter laut Papieren
help-receipt-age = Jahre-Monate-Tage.
rule-receipt-some_declared = Volumen oder Nettogewicht laut Papieren eintippen.
rule-receipt-some_quantity = Volumen oder Nettogewicht eintippen.
rule-receipt-volume_needs_temp = Zum Volumen gehört die Temperatur im Brand. Auch eintippen.
rule-receipt-some_strength = Spindelanzeige mit Temperatur oder einen schon berichtigten Gehalt eintippen.
rule-receipt-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-receipt-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-receipt-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-receipt-declared_20 = laut Papieren, bei 20 °C
figure-receipt-declared_lpa = reiner Alkohol laut Papieren
figure-receipt-true_strength = wirklich bei 20 °C
figure-receipt-glass_true = Spindel, berichtigt
figure-receipt-volume_20 = Volumen bei 20 °C
figure-receipt-lpa = reiner Alkohol
figure-receipt-proof_gallons = Proof Gallons
title-cask_fill = Fassfüllung
short-cask_fill = Fass füllen
about-cask_fill = Ein leeres Fass wird gewogen, aus einem Tank gefüllt und wieder gewogen. Eine neue Belegung beginnt.
summary-cask_fill = { $net } mit { $true_strength }, { $lot }
label-cask_fill-from_vessel = Aus Gefäß
label-cask_fill-lot = Los
label-cask_fill-what = Art der Spirituose
label-cask_fill-tare = Leergewicht
help-cask_fill-tare = Heute auf der Waage, nicht aus der Liste des Küfers.
label-cask_fill-gross = Bruttogewicht
label-cask_fill-glass = Spindelanzeige
help-cask_fill-glass = Wie die Spindel zeigt, nicht berichtigt.
label-cask_fill-density = oder Dichte, Messgerät
help-cask_fill-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-cask_fill-temp = Temperatur im Brand
help-cask_fill-temp = Im selben Augenblick wie die Spindel ablesen.
label-cask_fill-strength = Gehalt, schon berichtigt
help-cask_fill-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-cask_fill-use = Holz
choice-cask_fill-use-new = neu
choice-cask_fill-use-used_once = einmal belegt
choice-cask_fill-use-used = mehrmals belegt
label-cask_fill-cooperage = Fassart
choice-cask_fill-cooperage-C = ausgekohlt
choice-cask_fill-cooperage-REC = neu ausgekohlt
choice-cask_fill-cooperage-P = roh
choice-cask_fill-cooperage-PAR = paraffiniert
choice-cask_fill-cooperage-G = verleimt
choice-cask_fill-cooperage-R = gebraucht
choice-cask_fill-cooperage-PS = Stahl
label-cask_fill-soaked = Zuvor gewässert oder gedämpft
label-cask_fill-place = Platz
help-cask_fill-place = Feld, Lage, Stelle.
label-cask_fill-tight = Dicht nach einer Stunde
rule-cask_fill-tare_below_gross = Leergewicht { $tare } liegt nicht unter brutto { $gross }. Die Waage noch einmal ansehen.
rule-cask_fill-some_strength = Spindelanzeige mit Temperatur oder einen schon berichtigten Gehalt eintippen.
rule-cask_fill-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-cask_fill-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-cask_fill-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-cask_fill-true_strength = wirklich bei 20 °C
figure-cask_fill-glass_true = Spindel, berichtigt
figure-cask_fill-net = Nettogewicht
figure-cask_fill-volume_20 = Volumen bei 20 °C
figure-cask_fill-lpa = reiner Alkohol
title-cask_move = Fassumlagerung
short-cask_move = Fass umlagern
about-cask_move = Von einem Platz zum anderen, voll oder leer. Sein Bestand bleibt.
summary-cask_move = { $from_place } nach { $to_place }
label-cask_move-from_place = Von Platz
help-cask_move-from_place = Wo es stand. Das Etikett des Platzes scannen, wenn er eines hat.
label-cask_move-to_place = An Platz
help-cask_move-to_place = Feld, Lage, Stelle.
title-cask_regauge = Fassnachmessung
short-cask_regauge = Nachmessen
about-cask_regauge = Bruttogewicht, Alkoholgehalt und Zustand eines Fasses; sein Verlust folgt.
summary-cask_regauge = { $gross }, { $true_strength } wirklich
label-cask_regauge-gross = Bruttogewicht
help-cask_regauge-gross = Fass und Brand zusammen.
label-cask_regauge-glass = Spindelanzeige
help-cask_regauge-glass = Wie die Spindel zeigt, nicht berichtigt.
label-cask_regauge-density = oder Dichte, Messgerät
help-cask_regauge-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-cask_regauge-temp = Temperatur im Brand
help-cask_regauge-temp = Im selben Augenblick wie die Spindel ablesen.
label-cask_regauge-strength = Gehalt, schon berichtigt
help-cask_regauge-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-cask_regauge-condition = Zustand
choice-cask_regauge-condition-tight = dicht
choice-cask_regauge-condition-weeping = schwitzt
choice-cask_regauge-condition-leaking = undicht
choice-cask_regauge-condition-dry_hoops = trockene Reifen
rule-cask_regauge-some_strength = Spindelanzeige mit Temperatur oder einen schon berichtigten Gehalt eintippen.
rule-cask_regauge-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-cask_regauge-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-cask_regauge-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-cask_regauge-true_strength = wirklich bei 20 °C
figure-cask_regauge-glass_true = Spindel, berichtigt
figure-cask_regauge-net = Nettogewicht
figure-cask_regauge-volume_20 = Volumen bei 20 °C
figure-cask_regauge-lpa = reiner Alkohol
title-top_up = Auffüllen oder umfüllen
short-top_up = Auffüllen
about-top_up = Brand aus einem Gefäß in dieses Fass. Die Mischung ist so alt wie ihr jüngster Teil.
summary-top_up = { $work } aus { $from_vessel }
label-top_up-work = Was getan wurde
choice-top_up-work-top_up = aufgefüllt
choice-top_up-work-recask = in anderes Fass
label-top_up-from_vessel = Aus Gefäß
label-top_up-volume = Menge nach Volumen
label-top_up-net_weight = oder nach Nettogewicht
label-top_up-glass = Spindelanzeige
help-top_up-glass = Wie die Spindel zeigt, nicht berichtigt.
label-top_up-density = oder Dichte, Messgerät
help-top_up-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-top_up-temp = Temperatur im Brand
help-top_up-temp = Im selben Augenblick wie die Spindel ablesen.
label-top_up-strength = Gehalt, schon berichtigt
help-top_up-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
rule-top_up-some_quantity = Volumen oder Nettogewicht eintippen.
rule-top_up-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-top_up-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-top_up-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-top_up-true_strength = wirklich bei 20 °C
figure-top_up-glass_true = Spindel, berichtigt
figure-top_up-volume_20 = Volumen bei 20 °C
figure-top_up-lpa = reiner Alkohol
title-sample = Probe
about-sample = Wie viel gezogen wurde, wofür, und was daraus wurde.
label-sample-size = Größe
label-sample-number = Wie viele
label-sample-purpose = Wofür
choice-sample-purpose-analysis = Analyse
choice-sample-purpose-tasting = Verkostung
choice-sample-purpose-gauge = Messung
choice-sample-purpose-library = Rückstellung
choice-sample-purpose-customer = Kunde
choice-sample-purpose-other = anderes
label-sample-went = Wohin
choice-sample-went-destroyed = vernichtet
choice-sample-went-returned = zurückgegossen
choice-sample-went-library = Rückstellung
choice-sample-went-outside_lab = fremdes Labor
label-sample-lab = Labor
help-sample-lab = Name und Anschrift.
label-sample-account = Konto
help-sample-account = Leer lassen: das Buch weiß es vom Gefäß.
choice-sample-account-production = Herstellung
choice-sample-account-storage = Lagerung
choice-sample-account-processing = Verarbeitung
rule-sample-lab_is_named = Name und Anschrift des Labors eintippen.
figure-sample-taken = entnommen
figure-sample-lpa = reiner Alkohol
title-lab_certificate = Prüfbericht des Labors
short-lab_certificate = Labor
about-lab_certificate = Was ein Labor in einer Probe fand: jedes Ergebnis mit Einheit, ± und Nachweisgrenze des Verfahrens.
summary-lab_certificate = { $laboratory }, { $document }: Methanol { $methanol }
label-lab_certificate-laboratory = Labor
label-lab_certificate-document = Nummer des Berichts
label-lab_certificate-taken_on = Probe gezogen am
label-lab_certificate-batch = Ansatz oder Los
help-lab_certificate-batch = Für Brand, der schon in Flaschen ist.
label-lab_certificate-spirit = Verkauft als
help-lab_certificate-spirit = Etwa Williamsbirnenbrand: danach richten sich die Grenzen. Leer: was das Gefäß enthält.
label-lab_certificate-strength = Wirklicher Gehalt, destilliert
help-lab_certificate-strength = Nötig, wo ein Ergebnis je Liter des Getränks gilt.
label-lab_certificate-methanol = Methanol
label-lab_certificate-volatile_substances = Flüchtige Bestandteile
label-lab_certificate-hydrocyanic_acid = Blausäure
label-lab_certificate-ethyl_carbamate = Ethylcarbamat
label-lab_certificate-acetaldehyde = Acetaldehyd, gesamt
label-lab_certificate-ethyl_acetate = Ethylacetat
label-lab_certificate-higher_alcohols = Höhere Alkohole, Summe
label-lab_certificate-volatile_acidity = Flüchtige Säure, als Essigsäure
label-lab_certificate-copper = Kupfer
label-lab_certificate-lead = Blei
label-lab_certificate-sulphur_dioxide = Schwefeldioxid
label-lab_certificate-dry_extract = Trockenextrakt
label-lab_certificate-sugar = Zucker, als Invertzucker
label-lab_certificate-sample_no = Nummer der Probe
label-lab_certificate-accreditation = Akkreditierung des Labors
help-lab_certificate-accreditation = Ihre Nummer.
label-lab_certificate-method = Verfahren
help-lab_certificate-method = Wie gedruckt, etwa Verordnung (EG) 2870/2000, III.2.
label-lab_certificate-reported_on = Datum des Berichts
label-lab_certificate-coverage = Was ± bedeutet
choice-lab_certificate-coverage-two = doppelte Standardunsicherheit, k = 2
choice-lab_certificate-coverage-one = die Standardunsicherheit
choice-lab_certificate-coverage-unsaid = steht nicht darin
label-lab_certificate-strength_plus_minus = ± des Alkoholgehalts
label-lab_certificate-methanol_plus_minus = ± Methanol
label-lab_certificate-methanol_below = Methanol: nicht gefunden, unter
label-lab_certificate-volatile_substances_plus_minus = ± flüchtige Bestandteile
label-lab_certificate-volatile_substances_below = Flüchtige Bestandteile: nicht gefunden, unter
label-lab_certificate-hydrocyanic_acid_plus_minus = ± Blausäure
label-lab_certificate-hydrocyanic_acid_below = Blausäure: nicht gefunden, unter
label-lab_certificate-ethyl_carbamate_plus_minus = ± Ethylcarbamat
label-lab_certificate-ethyl_carbamate_below = Ethylcarbamat: nicht gefunden, unter
label-lab_certificate-acetaldehyde_plus_minus = ± Acetaldehyd
label-lab_certificate-acetaldehyde_below = Acetaldehyd: nicht gefunden, unter
label-lab_certificate-ethyl_acetate_plus_minus = ± Ethylacetat
label-lab_certificate-ethyl_acetate_below = Ethylacetat: nicht gefunden, unter
label-lab_certificate-higher_alcohols_plus_minus = ± höhere Alkohole
label-lab_certificate-higher_alcohols_below = Höhere Alkohole: nicht gefunden, unter
label-lab_certificate-volatile_acidity_plus_minus = ± flüchtige Säure
label-lab_certificate-volatile_acidity_below = Flüchtige Säure: nicht gefunden, unter
label-lab_certificate-copper_plus_minus = ± Kupfer
label-lab_certificate-copper_below = Kupfer: nicht gefunden, unter
label-lab_certificate-lead_plus_minus = ± Blei
label-lab_certificate-lead_below = Blei: nicht gefunden, unter
label-lab_certificate-sulphur_dioxide_plus_minus = ± Schwefeldioxid
label-lab_certificate-sulphur_dioxide_below = Schwefeldioxid: nicht gefunden, unter
label-lab_certificate-dry_extract_plus_minus = ± Trockenextrakt
label-lab_certificate-dry_extract_below = Trockenextrakt: nicht gefunden, unter
label-lab_certificate-sugar_plus_minus = ± Zucker
label-lab_certificate-sugar_below = Zucker: nicht gefunden, unter
rule-lab_certificate-some_result = Mindestens ein Ergebnis eintippen, oder ab wann das Verfahren es gefunden hätte.
rule-lab_certificate-reported_before_taken = Der Bericht ist älter als seine Probe. Beide Tage ansehen.
title-tasting_note = Verkostungsnotiz
short-tasting_note = Verkosten
about-tasting_note = Nase, Mund, Holz und Fehler eines Fasses oder Loses, und was entschieden ist.
summary-tasting_note = { $decision }: Nase { $nose_score }, Mund { $mouth_score }
label-tasting_note-nose_score = Nase
help-tasting_note-nose_score = 0 bis 10.
label-tasting_note-mouth_score = Mund
help-tasting_note-mouth_score = 0 bis 10.
label-tasting_note-wood_score = Holz
help-tasting_note-wood_score = 0 bis 10.
label-tasting_note-fault_score = Fehler
help-tasting_note-fault_score = 0 bis 10.
label-tasting_note-words = In Worten
label-tasting_note-house_scores = Punkte des Hauses
help-tasting_note-house_scores = Die des Hauses, 0 bis 10: Frucht 7; Tiefe 5.
label-tasting_note-reduced_to = Herabgesetzt auf
label-tasting_note-decision = Entscheidung
choice-tasting_note-decision-hold = halten
choice-tasting_note-decision-move = umlagern
choice-tasting_note-decision-vat = verschneiden
choice-tasting_note-decision-treat = behandeln
choice-tasting_note-decision-reject = verwerfen
title-tasting_session = Blindverkostung
short-tasting_session = Blind
about-tasting_session = Was von welchen Proben gefragt wird, nach welchem Verfahren, und die Codes auf den Gläsern. Welcher Code welche Probe hat, ist bis zum Öffnen versiegelt. Vorlauf wird nie verkostet.
label-tasting_session-name = Name der Verkostung
label-tasting_session-question = Frage
label-tasting_session-method = Verfahren
choice-tasting_session-method-triangle = Dreieck
choice-tasting_session-method-duo_trio = Duo-Trio
choice-tasting_session-method-pair = Paar, einseitig
choice-tasting_session-method-pair_two_sided = Paar, zweiseitig
choice-tasting_session-method-ranking = Rangfolge
label-tasting_session-alpha = Risiko eines Scheinunterschieds
label-tasting_session-samples = Proben
help-tasting_session-samples = Ein Buchstabe und eine Kennung, oder run oder batch und der Name: A C001-Z; B run PL-31, 64 to 60 % vol
label-tasting_session-reduced_to = Serviert mit
help-tasting_session-reduced_to = Alle Gläser gleich, mit demselben Wasser.
label-tasting_session-poured_by = Eingeschenkt von
help-tasting_session-poured_by = Wer einschenkt, verkostet nicht.
label-tasting_session-glasses = Gläser
help-tasting_session-glasses = Ein Verkoster und die Codes von links nach rechts: NS 418 902 637; JK 271 550 803
label-tasting_session-seal = Siegel des Schlüssels
title-tasting_answer = Antwort in der Blindverkostung
short-tasting_answer = Antwort
about-tasting_answer = Das Glas, das ein Verkoster nennt, oder alle Gläser der Reihe nach. Auch Raten ist eine Antwort: eine andere Wahl gibt es nicht.
summary-tasting_answer = { $session }, Satz { $set_no }: { $picked }
label-tasting_answer-session = Verkostung
help-tasting_answer-session = Ihr Name, wie auf dem Servierblatt.
label-tasting_answer-set_no = Satz
help-tasting_answer-set_no = Welcher Ihrer Sätze, ab 1 gezählt.
label-tasting_answer-picked = Ihr Code
label-tasting_answer-order = oder alle Codes der Reihe nach
help-tasting_answer-order = Der erste zuerst: 418 902 637
label-tasting_answer-sure = Wie sicher
choice-tasting_answer-sure-guessing = geraten
choice-tasting_answer-sure-fairly = ziemlich
choice-tasting_answer-sure-quite = sehr
label-tasting_answer-gave_away = Woran erkannt
rule-tasting_answer-some_answer = Ein Glas nennen. Auch Raten ist eine Antwort.
title-tasting_result = Blindverkostung geöffnet
short-tasting_result = Öffnen
about-tasting_result = Der Schlüssel einer Blindverkostung und was daraus folgt. Ein Abtrenn- oder Verschnittplan darf sie nennen.
summary-tasting_result = { $session } geöffnet: { $decision }
label-tasting_result-session = Verkostung
label-tasting_result-key = Schlüssel
help-tasting_result-key = Zu jedem Satz Gläser die Buchstaben der Proben, dann das Wort, mit dem versiegelt wurde.
label-tasting_result-decision = Was folgt
title-loss = Leck, Verschütten, Bruch, Fehlmenge
short-loss = Verlust
about-loss = Was verloren ging, warum, wem gemeldet, was getan. Diebstahl und fehlende Fässer sofort melden.
label-loss-cause = Ursache
choice-loss-cause-leak = Leck
choice-loss-cause-spill = verschüttet
choice-loss-cause-broken = Bruch
choice-loss-cause-theft = Verdacht auf Diebstahl
choice-loss-cause-missing = fehlt
choice-loss-cause-unknown = unbekannt
label-loss-whole = Alles ist weg
label-loss-volume = Wie viel
help-loss-volume = Gemessen oder geschätzt.
label-loss-net_weight = oder nach Gewicht
label-loss-glass = Spindelanzeige
help-loss-glass = Wie die Spindel zeigt, nicht berichtigt.
label-loss-density = oder Dichte, Messgerät
help-loss-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-loss-temp = Temperatur im Brand
help-loss-temp = Im selben Augenblick wie die Spindel ablesen.
label-loss-strength = Gehalt, schon berichtigt
help-loss-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-loss-reckoned = Gemessen oder geschätzt
choice-loss-reckoned-measured = gemessen
choice-loss-reckoned-reckoned = geschätzt
label-loss-found = Gefunden von, gemeldet an
label-loss-done = Getan
choice-loss-done-recoopered = neu gebunden
choice-loss-done-recasked = in anderes Fass
choice-loss-done-pumped = umgepumpt
choice-loss-done-cleaned = aufgewischt
choice-loss-done-reported = gemeldet
choice-loss-done-nothing = noch nichts
rule-loss-some_loss = Eintippen, wie viel verloren ging, nach Volumen oder Gewicht, oder dass alles weg ist.
rule-loss-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-loss-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-loss-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-loss-true_strength = wirklich bei 20 °C
figure-loss-glass_true = Spindel, berichtigt
figure-loss-volume_20 = Volumen bei 20 °C
figure-loss-lpa = reiner Alkohol
title-vat_plan = Verschnittplan
short-vat_plan = Verschnittplan
about-vat_plan = Was in einen Tank soll und was es werden soll; mit dem, der es plante, und wann.
summary-vat_plan = { $name }: { $volume } mit { $target }, { $water } Wasser
label-vat_plan-name = Name des Verschnitts
label-vat_plan-draws = Entnahmen
help-vat_plan-draws = Kennung und Kilogramm, nacheinander: C001-Z 153.7; C009-K 176.2
label-vat_plan-water = Wasser nach Gewicht
label-vat_plan-target = Gehalt, der es werden soll
label-vat_plan-volume = Volumen, das es werden soll
help-vat_plan-volume = Bei 20 °C.
label-vat_plan-wishes = Was verlangt war
label-vat_plan-tasting = Blindverkostung dahinter
help-vat_plan-tasting = Ihr Name: T-26-03
title-dump = Entleeren, verschneiden
short-dump = Entleeren
about-dump = Ein Fass, voll und leer gewogen; was herauskam, ging in den Tank, was das Holz behält, ist Holzaufnahme.
summary-dump = { $net } mit { $true_strength } in { $to_vessel }
label-dump-gross = Brutto zuvor
label-dump-empty = Leergewicht jetzt
help-dump-empty = In einem Fass von 200 L behält das Holz 3 bis 8 kg.
label-dump-glass = Spindelanzeige
help-dump-glass = Wie die Spindel zeigt, nicht berichtigt.
label-dump-density = oder Dichte, Messgerät
help-dump-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-dump-temp = Temperatur im Brand
help-dump-temp = Im selben Augenblick wie die Spindel ablesen.
label-dump-strength = Gehalt, schon berichtigt
help-dump-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-dump-to_vessel = In Tank
label-dump-tank_dip = Tankpeilung danach
rule-dump-empty_below_gross = Leergewicht { $empty } liegt nicht unter brutto { $gross }. Die Waage noch einmal ansehen.
rule-dump-some_strength = Spindelanzeige mit Temperatur oder einen schon berichtigten Gehalt eintippen.
rule-dump-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-dump-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-dump-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-dump-true_strength = wirklich bei 20 °C
figure-dump-glass_true = Spindel, berichtigt
figure-dump-net = entleert
figure-dump-volume_20 = Volumen bei 20 °C
figure-dump-lpa = reiner Alkohol
figure-dump-soakage = vom Holz behalten
title-reduce = Herabsetzen
short-reduce = Wasser zugeben
about-reduce = Wasser nach Gewicht, der Gehalt, den es geben soll, und der Gehalt nach der Ruhe.
summary-reduce = { $water_mass } Wasser, Ziel { $target }
label-reduce-target = Zielgehalt
label-reduce-water = Wasser nach Gewicht
help-reduce-water = Wasser nach Gewicht rechnen: Volumen addieren sich nicht.
label-reduce-water_volume = oder nach Volumen
label-reduce-rest_until = Ruhe bis
label-reduce-glass = Spindelanzeige
help-reduce-glass = Wie die Spindel zeigt, nicht berichtigt.
label-reduce-density = oder Dichte, Messgerät
help-reduce-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-reduce-temp = Temperatur im Brand
help-reduce-temp = Im selben Augenblick wie die Spindel ablesen.
label-reduce-strength = Gehalt, schon berichtigt
help-reduce-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-reduce-volume = Peilung nach der Ruhe
rule-reduce-some_water = Eintippen, wie viel Wasser hineinging, nach Gewicht oder Volumen. 0, wenn erst nach der Ruhe gemessen wird.
rule-reduce-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-reduce-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-reduce-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-reduce-needed = Wasser für das Ziel
figure-reduce-water_mass = Wasser
figure-reduce-planned_strength = Gehalt nach der Rechnung
figure-reduce-planned_volume = Volumen nach der Rechnung
figure-reduce-true_strength = wirklich bei 20 °C
figure-reduce-glass_true = Spindel, berichtigt
figure-reduce-volume_20 = Peilung bei 20 °C
title-chill_filter = Kühlen oder filtrieren
short-chill_filter = Filtrieren
about-chill_filter = Temperatur, Schichten, und Volumen und Gehalt davor und danach.
summary-chill_filter = { $sheets } bei { $temp }: { $lost } behalten
label-chill_filter-temp = Gekühlt auf
label-chill_filter-sheets = Schichten oder Kerze
help-chill_filter-sheets = Stufe und Los.
label-chill_filter-volume_before = Volumen davor
label-chill_filter-strength_before = Gehalt davor
label-chill_filter-temp_before = Temperatur der Peilung davor
help-chill_filter-temp_before = Leer: bei 20 °C.
label-chill_filter-volume_after = Volumen danach
label-chill_filter-strength_after = Gehalt danach
label-chill_filter-temp_after = Temperatur der Peilung danach
help-chill_filter-temp_after = Leer: bei 20 °C.
label-chill_filter-to_vessel = In Tank
help-chill_filter-to_vessel = Leer lassen, wenn es zurückkam.
figure-chill_filter-volume_before_20 = Volumen davor bei 20 °C
figure-chill_filter-volume_after_20 = Volumen danach bei 20 °C
figure-chill_filter-lpa_before = reiner Alkohol davor
figure-chill_filter-lpa_after = reiner Alkohol danach
figure-chill_filter-lost = vom Filter behalten
title-bottling_gauge = Messung im Abfülltank
short-bottling_gauge = Abfüllmessung
about-bottling_gauge = Nach aller Behandlung und vor der ersten Flasche: wie viel, wie stark, und was das Etikett sagen wird.
summary-bottling_gauge = { $batch }: { $volume_20 } mit { $true_strength }
label-bottling_gauge-batch = Ansatz
label-bottling_gauge-volume = Volumen
label-bottling_gauge-dip = oder Peilung
help-bottling_gauge-dip = Tiefe oder Leerraum, wie die Tabelle des Gefäßes; seine Liter folgen.
label-bottling_gauge-net_weight = oder Nettogewicht
label-bottling_gauge-glass = Spindelanzeige
help-bottling_gauge-glass = Wie die Spindel zeigt, nicht berichtigt.
label-bottling_gauge-density = oder Dichte, Messgerät
help-bottling_gauge-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-bottling_gauge-temp = Temperatur im Brand
help-bottling_gauge-temp = Im selben Augenblick wie die Spindel ablesen.
label-bottling_gauge-strength = Gehalt, schon berichtigt
help-bottling_gauge-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-bottling_gauge-obscuration = Feststoffe
help-bottling_gauge-obscuration = Rückstand nach dem Verdampfen. Über 0,6 g/100 mL, oder außerhalb 80 bis 100 Proof: eine Probe destillieren, ihren Gehalt eintippen, und keine Feststoffe.
label-bottling_gauge-label_strength = Gehalt laut Etikett
rule-bottling_gauge-some_quantity = Volumen, Peilung oder Nettogewicht eintippen.
rule-bottling_gauge-volume_needs_temp = Zum Volumen gehört die Temperatur im Brand. Auch eintippen.
rule-bottling_gauge-some_strength = Spindelanzeige mit Temperatur oder einen schon berichtigten Gehalt eintippen.
rule-bottling_gauge-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-bottling_gauge-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-bottling_gauge-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-bottling_gauge-seen_strength = wie das Gerät zeigt
figure-bottling_gauge-true_strength = wirklich bei 20 °C
figure-bottling_gauge-glass_true = Spindel, berichtigt
figure-bottling_gauge-dipped = nach seiner Tabelle
figure-bottling_gauge-estimated = nach seinen Maßen, geschätzt
figure-bottling_gauge-volume_20 = Volumen bei 20 °C
figure-bottling_gauge-lpa = reiner Alkohol
figure-bottling_gauge-proof_gallons = Proof Gallons
title-bottle_check = Flaschenprüfung
short-bottle_check = Flaschen prüfen
about-bottle_check = Etwa jede halbe Stunde: Füllung, Gehalt, Etikett und Verschluss einiger Flaschen.
summary-bottle_check = { $tested } Flaschen: { $fill_found }, { $strength_found }
label-bottle_check-line = Linie
label-bottle_check-filled_so_far = Flaschen gefüllt bisher
help-bottle_check-filled_so_far = Wie die Linie zählt, seit der Tank begonnen oder zuletzt geschlossen wurde.
label-bottle_check-tested = Geprüfte Flaschen
label-bottle_check-bottle_size = Flaschengröße
label-bottle_check-fill_found = Füllung im Mittel
help-bottle_check-fill_found = In Prozent dessen, was das Etikett sagt.
label-bottle_check-fill_least = Die am wenigsten volle
label-bottle_check-fill_most = Die vollste
label-bottle_check-strength_found = Gefundener Gehalt
label-bottle_check-label_strength = Gehalt laut Etikett
label-bottle_check-labels_right = Etiketten, Verschlüsse richtig
label-bottle_check-done = Getan, wenn falsch
title-bottling_close = Abfüllung beendet
short-bottling_close = Abfüllung beenden
about-bottling_close = Zählung, Kartonnummern und der Rest des Tanks. Abgefülltes verlässt hier den Tank.
summary-bottling_close = { $filled } Flaschen, Kartons { $case_from } bis { $case_to }
label-bottling_close-filled = Flaschen gefüllt
label-bottling_close-broken = Bruch
label-bottling_close-reworked = Zurückgegossen
label-bottling_close-library = Von den guten, zur Rückstellung
label-bottling_close-bottle_size = Flaschengröße
label-bottling_close-per_case = Flaschen im Karton
label-bottling_close-case_from = Erster Karton
label-bottling_close-case_to = Letzter Karton
label-bottling_close-odd_case = Restkarton
help-bottling_close-odd_case = Seine Nummer mit R.
label-bottling_close-lot_mark = Loszeichen auf den Flaschen
label-bottling_close-loss = Tankrest, Leitung und Filter
label-bottling_close-tank_empty = Ist der Tank jetzt leer?
rule-bottling_close-broken_of_filled = { $broken } zerbrochen von { $filled } gefüllten kann nicht sein. Noch einmal zählen.
figure-bottling_close-in_bottles = abgefüllt
figure-bottling_close-lpa = reiner Alkohol abgefüllt
title-dispatch = Flaschenware hinaus, zurück
short-dispatch = Kartons aus
about-dispatch = Kartons oder Flaschen einer Abfüllung gehen hinaus, versteuert oder unter Aussetzung, brechen, dienen als Muster oder kommen zurück.
summary-dispatch = { $batch }: { $cases } Kartons, { $why }
label-dispatch-batch = Ansatz oder Loszeichen
help-dispatch-batch = Wie es auf Flasche oder Karton steht.
label-dispatch-why = Was mit ihnen geschieht
choice-dispatch-why-tax_paid = hinaus, versteuert
choice-dispatch-why-in_bond = hinaus unter Aussetzung
choice-dispatch-why-export = hinaus zur Ausfuhr
choice-dispatch-why-sample = Muster und Verkostungen
choice-dispatch-why-broken = Bruch
choice-dispatch-why-destroyed = vernichtet
choice-dispatch-why-missing = fehlt
choice-dispatch-why-dumped_back = zurück in einen Tank
choice-dispatch-why-returned = kommen zurück
label-dispatch-cases = Ganze Kartons
label-dispatch-bottles = Einzelne Flaschen
label-dispatch-case_from = Erster Karton
label-dispatch-case_to = Letzter Karton
label-dispatch-document = Belegnummer
label-dispatch-to_whom = An wen, von wem
help-dispatch-to_whom = Name und Anschrift. Vernichtet: wer es tat oder zusah.
label-dispatch-to_vessel = In Tank
rule-dispatch-some_bottles = Eintippen, wie viele Kartons oder einzelne Flaschen.
rule-dispatch-out_has_document = Ware, die hinausgeht, hat einen Beleg. Seine Nummer eintippen.
rule-dispatch-out_names_whom = Eintippen, an wen sie gehen: bei einem Rückruf weiß es sonst niemand.
rule-dispatch-destroyed_is_watched = Eintippen, wer vernichtete oder zusah, mit Stellung.
rule-dispatch-poured_into_a_tank = Den Tank wählen.
rule-dispatch-last_needs_first = Auch den ersten Karton eintippen.
title-goods_receipt = Flaschenware angenommen
short-goods_receipt = Kartons ein
about-goods_receipt = Kartons oder Flaschen kommen unter Aussetzung von anderem Ort: was die Papiere sagen, was fehlte oder zerbrochen war.
summary-goods_receipt = { $document }: { $cases } Kartons { $batch } von { $consignor }
label-goods_receipt-consignor = Von wem
help-goods_receipt-consignor = Name und Anschrift, Nummer von Betrieb oder Lager.
label-goods_receipt-document = Belegnummer
label-goods_receipt-batch = Ansatz oder Loszeichen
help-goods_receipt-batch = Wie es auf Flasche oder Karton steht.
label-goods_receipt-spirit = Art der Spirituose
label-goods_receipt-strength = Gehalt auf dem Etikett
label-goods_receipt-bottle_size = Flaschengröße
label-goods_receipt-per_case = Flaschen im Karton
label-goods_receipt-cases = Ganze Kartons
label-goods_receipt-bottles = Einzelne Flaschen
label-goods_receipt-short = Fehlende, zerbrochene Flaschen
label-goods_receipt-case_from = Erster Karton
label-goods_receipt-case_to = Letzter Karton
label-goods_receipt-seals = Verschlüsse heil?
rule-goods_receipt-some_bottles = Eintippen, wie viele Kartons oder einzelne Flaschen die Papiere nennen.
rule-goods_receipt-cases_hold_some = Eintippen, wie viele Flaschen im Karton sind.
rule-goods_receipt-last_needs_first = Auch den ersten Karton eintippen.
title-opening_goods = Anfangsbestand in Flaschen
short-opening_goods = Flaschen am Anfang
about-opening_goods = Kartons und Flaschen einer Abfüllung, die im Lager standen, bevor das Buch begann, und was Papiere davon sagen.
summary-opening_goods = { $batch }: { $cases } Kartons { $spirit } vor diesem Buch
label-opening_goods-batch = Ansatz oder Loszeichen
help-opening_goods-batch = Wie es auf Flasche oder Karton steht.
label-opening_goods-lot_mark = Loszeichen
help-opening_goods-lot_mark = Wo die Flaschen ein anderes tragen als der Ansatz.
label-opening_goods-spirit = Art der Spirituose
label-opening_goods-strength = Gehalt auf dem Etikett
label-opening_goods-bottle_size = Flaschengröße
label-opening_goods-per_case = Flaschen im Karton
label-opening_goods-cases = Ganze Kartons
label-opening_goods-bottles = Einzelne Flaschen
label-opening_goods-case_from = Erster Karton
label-opening_goods-case_to = Letzter Karton
label-opening_goods-bottled_on = Abgefüllt am
label-opening_goods-origin = Woher
help-opening_goods-origin = Eigene Abfüllung, oder von wem sie kam.
label-opening_goods-papers = Papiere dazu
help-opening_goods-papers = Welches Buch oder welche Rechnung, und die Seite.
rule-opening_goods-some_bottles = Eintippen, wie viele Kartons oder einzelne Flaschen.
rule-opening_goods-cases_hold_some = Eintippen, wie viele Flaschen im Karton sind.
rule-opening_goods-last_needs_first = Auch den ersten Karton eintippen.
title-bottled_count = Zählung der Flaschenware
short-bottled_count = Flaschen zählen
about-bottled_count = Kartons und Flaschen einer Abfüllung, die im Lager stehen. Die Differenz ist Fehlmenge oder Mehrmenge.
summary-bottled_count = { $batch }: { $cases } Kartons vorhanden
label-bottled_count-batch = Ansatz oder Loszeichen
help-bottled_count-batch = Wie es auf Flasche oder Karton steht.
label-bottled_count-cases = Ganze Kartons
label-bottled_count-bottles = Einzelne Flaschen
label-bottled_count-case_from = Ein Karton davon
help-bottled_count-case_from = Nur wo zwei Abfüllungen den Ansatz teilen.
label-bottled_count-signed = Unterschrift des Zählers
help-bottled_count-signed = Name und Stellung.
rule-bottled_count-some_bottles = Eintippen, wie viele Kartons oder Flaschen, oder 0.
title-stock_count = Bestandsaufnahme
short-stock_count = Zählen
about-stock_count = Welches Gefäß an welchem Platz steht, und wie viel ein Tank enthält. Ein Tausch ist ein Tausch, keine Fehlmenge.
label-stock_count-place = Platz
help-stock_count-place = Wie sein Etikett sagt. Bei einem Tank leer lassen.
label-stock_count-found = Gefunden
choice-stock_count-found-here = dieses Gefäß
choice-stock_count-found-nothing = nichts, wo es sein sollte
choice-stock_count-found-unknown = eines, das nicht im Buch ist
label-stock_count-label = Was darauf steht
label-stock_count-volume = Volumen, wenn ein Tank
label-stock_count-net_weight = oder Nettogewicht
label-stock_count-glass = Spindelanzeige
help-stock_count-glass = Wie die Spindel zeigt, nicht berichtigt.
label-stock_count-density = oder Dichte, Messgerät
help-stock_count-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-stock_count-temp = Temperatur im Brand
help-stock_count-temp = Im selben Augenblick wie die Spindel ablesen.
label-stock_count-strength = Gehalt, schon berichtigt
help-stock_count-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-stock_count-signed = Unterschrift des Zählers
help-stock_count-signed = Name und Stellung.
rule-stock_count-unknown_is_described = Eintippen, was darauf steht.
rule-stock_count-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-stock_count-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-stock_count-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-stock_count-true_strength = wirklich bei 20 °C
figure-stock_count-glass_true = Spindel, berichtigt
figure-stock_count-volume_20 = Volumen bei 20 °C
figure-stock_count-lpa = reiner Alkohol
title-cleaning = Reinigung
about-cleaning = Mittel, Stärke, Zeit und Temperatur, und die Spülprobe. Niemand steigt ohne Erlaubnisschein ein.
summary-cleaning = { $agent }, Spülwasser { $rinse_ph }
label-cleaning-agent = Mittel, Stärke, Zeit
label-cleaning-temp = Temperatur
label-cleaning-rinse_ph = Spülprobe, pH
label-cleaning-entered = Stieg jemand hinein?
label-cleaning-permit_no = Erlaubnisschein Nr.
rule-cleaning-entry_needs_permit = Niemand steigt ohne Erlaubnisschein in ein Gefäß. Seine Nummer eintippen.
title-instrument_check = Geräteprüfung
short-instrument_check = Messgerät prüfen
about-instrument_check = Gefunden gegen bekannt. Ein Teilstrich daneben ist zu viel: außer Betrieb, bis es gerichtet ist.
summary-instrument_check = { $instrument }: { $found } statt { $expected }, { $result }
label-instrument_check-instrument = Messgerät
help-instrument_check-instrument = Seine Nummer, etwa TH-2.
label-instrument_check-against = Gegen
choice-instrument_check-against-ice = Eis
choice-instrument_check-against-boiling = kochendes Wasser
choice-instrument_check-against-liquid = Referenzflüssigkeit
choice-instrument_check-against-weight = Gewicht
choice-instrument_check-against-second = zweites Messgerät
label-instrument_check-expected = Sollte zeigen
help-instrument_check-expected = In der Einheit des Messgeräts.
label-instrument_check-found = Zeigt
label-instrument_check-correction = Korrektur von jetzt an
help-instrument_check-correction = Zum Gezeigten zu addieren. 0, wenn keine.
label-instrument_check-result = Gut?
choice-instrument_check-result-good = gut
choice-instrument_check-result-failed = nicht gut
label-instrument_check-in_use = In Gebrauch?
choice-instrument_check-in_use-yes = ja
choice-instrument_check-in_use-no = nein
choice-instrument_check-in_use-until = bis zu einem Tag
label-instrument_check-until = Bis
title-destruction = Vernichtung
short-destruction = Vernichten
about-destruction = Was vernichtet wurde, wie viel, wo, wie, und wer zusah.
summary-destruction = { $what }: { $volume_20 } mit { $true_strength }
label-destruction-what = Was und welches Los
label-destruction-volume = Volumen
label-destruction-net_weight = oder Nettogewicht
label-destruction-glass = Spindelanzeige
help-destruction-glass = Wie die Spindel zeigt, nicht berichtigt.
label-destruction-density = oder Dichte, Messgerät
help-destruction-density = Wie das Gerät sie bei dieser Temperatur zeigt, nicht auf eine andere umgerechnet.
label-destruction-temp = Temperatur im Brand
help-destruction-temp = Im selben Augenblick wie die Spindel ablesen.
label-destruction-strength = Gehalt, schon berichtigt
help-destruction-strength = Nur wenn Dichtemessgerät oder Tafeln ihn gaben. Bei einer Spindel leer lassen.
label-destruction-place = Platz
label-destruction-manner = Wie
label-destruction-withdrawn = Je versteuert entnommen?
label-destruction-watched_by = Getan oder gesehen von, Stellung
rule-destruction-some_quantity = Volumen oder Nettogewicht eintippen.
rule-destruction-some_strength = Spindelanzeige mit Temperatur oder einen schon berichtigten Gehalt eintippen.
rule-destruction-glass_needs_temp = Zur Spindelanzeige gehört die Temperatur im Brand. Auch eintippen.
rule-destruction-density_needs_temp = Zur Dichte gehört die Temperatur, bei der das Gerät sie nahm. Auch eintippen.
rule-destruction-raw_equals_corrected = { $glass } steht in beiden Feldern bei { $temp }. Das zeigt die Spindel; wirklich wären es { $glass_true }.
figure-destruction-true_strength = wirklich bei 20 °C
figure-destruction-glass_true = Spindel, berichtigt
figure-destruction-volume_20 = Volumen bei 20 °C
figure-destruction-lpa = reiner Alkohol
figure-destruction-proof_gallons = Proof Gallons
title-shift_note = Notiz an die nächste Schicht
short-shift_note = Notiz
about-shift_note = Ein paar Worte für den Nächsten, zu einem Gefäß oder allgemein.
label-shift_note-text = Notiz
title-note_heard = Notiz vernommen
about-note_heard = Wer welche Notiz gelesen oder gehört hat; bis dahin bleibt sie an ihrem Gefäß.
summary-note_heard = vernommen
label-note_heard-note = Die Notiz
title-enclosure = Bild oder Papier beigelegt
short-enclosure = Bild
about-enclosure = Nennt den Eintrag, zu dem es gehört; `enclosed` nennt die Dateien mit ihrem SHA-256.
label-enclosure-entry = Zu Eintrag
label-enclosure-what = Was es zeigt
title-answer = Antwort
about-answer = Es gilt, oder es ist gestrichen, mit dem Grund. Der Eintrag, um den es geht, bleibt lesbar.
label-answer-entry = Zu Eintrag
label-answer-query = Rückfrage
help-answer-query = Ihr Code; leer für den ganzen Eintrag.
label-answer-verdict = Antwort
choice-answer-verdict-stands = gilt
choice-answer-verdict-struck = gestrichen
label-answer-reason = Grund

### A phone fetches what follows after its first install.

pure =
    { UNITS() ->
        [us] Proof Gallons
       *[metric] L reiner Alkohol
    }
of-pure =
    { UNITS() ->
        [us] Proof Gallons
       *[metric] L reiner Alkohol
    }
pure-sign =
    { UNITS() ->
        [us] Proof gal
       *[metric] L
    }
no_entry = Das ist kein Eintrag. Die App auf dem Telefon aktualisieren und noch einmal senden.
unkeepable = Enthält eine Zahl oder ein Zeichen, das sich nicht behalten lässt. Neu eintragen.
too_long-entry = Der Eintrag ist zu lang. Texte kürzen und neu eintragen.
malformed = { $path }: { $words }
malformed-whole = { $words }
fault-missing = Angaben für ein Pflichtfeld fehlen.
fault-null = Das Feld darf nicht null sein.
fault-no_text = Kein gültiger Text.
fault-no_number = Keine gültige ganze Zahl.
fault-no_members = Keine gültige Zuordnung.
fault-no_list = Keine gültige Liste.
fault-no_object = Ungültige Art der Eingabe.
fault-no_id = Die id ist keine UUID in Kleinbuchstaben.
fault-no_time = Eine Zeit braucht Tag, Stunde und Zeitzone, etwa 2025-09-24T08:05:00+02:00.
fault-no_digest = Der Name eines Bilds ist sein SHA-256 in Kleinbuchstaben.
fault-unkeepable = Dieser Text enthält Zeichen, die sich nicht behalten lassen.
fault-unknown = Unbekanntes Feld.
fault-longer = Länger als höchstens { $most }.
fault-one_of = Muss eines sein von: { $choices }.
fault-between = Muss mindestens { $least } und höchstens { $most } sein.
no_such_kind = Das Buch kennt keinen Eintrag namens { $kind }. Das Buch aktualisieren.
newer_kind = Das Telefon ist neuer als das Buch. Das Buch aktualisieren, dann noch einmal senden.
bad_mark = { $mark } ist keine Kennung. Das Etikett noch einmal lesen und neu eintragen.
bad_mark-field = { $label }: { $mark } ist keine Kennung. Das Etikett noch einmal lesen.
missing-mark = Die Kennung des Gefäßes fehlt. Das Etikett scannen oder eintippen.
amends_itself = Der Eintrag will sich selbst berichtigen. Neu eintragen.
clash-in_book = Diese id ist mit anderem Inhalt im Buch, unter Nummer { $number }. Ein Mensch entscheidet.
clash-in_batch = Diese id kommt zweimal in einer Übergabe, mit zwei Inhalten. Der erste ist im Buch. Ein Mensch entscheidet.
bad_signature = Die Unterschrift des genannten Telefons fehlt: nach dem Eintragen geändert. Neu eintragen.
not_the_desk = Soll im Büro eingetragen worden sein. Neu eintragen, im Büro oder auf dem Telefon.
may_not_answer = Antworten gibt im Büro, wer Brenner ist oder das Büro führt. Dort anmelden, dann antworten.
not_worked_out = Das Buch konnte diesen Eintrag nicht auswerten. Er bleibt, wie er kam; dem melden, der das Programm betreut.
clash = Ein anderer Inhalt kam unter der id dieses Eintrags und wurde beiseite gelegt. Beide vergleichen; berichtigen oder gelten lassen.
amended_after_strike = Berichtigt einen Eintrag, der zuvor gestrichen wurde. Zählt nicht, außer Sie sagen, dass er gilt.
unknown_person = Das Buch kennt niemanden mit dem Code { $code }. Hinzufügen oder berichtigen.
unknown_vessel = Kein Gefäß { $mark } ist im Buch. Hinzufügen oder den Eintrag berichtigen.
wrong_sort = { $vessel } ist anderer Art: { $sort }. Dort wird nicht eingetragen: { $kind }. Richtiges Gefäß?
wrong_sort-field = { $label }: { $vessel } ist anderer Art: { $sort }. Richtiges Gefäß?
sort-fermenter = Gärbottich
sort-still = Brenngerät
sort-receiver = Vorlage
sort-tank = Tank
sort-cask = Fass
sort-can = Kanne
sort-place = Platz
stock_short = { BARE($taken) } { of-pure } aus { $vessel } entnommen, nach dem Buch { BARE($booked) } { pure-sign } darin. Beide Zahlen noch einmal ansehen.
from_nothing = { BARE($came) } { of-pure } kamen von dort, wo das Buch nichts hat. Richtiges Gefäß, richtige Zeit? Wenn ja, eintragen, was zuvor darin war.
clock = Die Uhr dieses Telefons ging bei der Übergabe { $off } { clock-way }.
clock-way =
    { $way ->
        [slow] nach
       *[fast] vor
    }
clock-ask = Die Uhr dieses Telefons ging bei der Übergabe { $off } { clock-way }. Nach dieser Uhr wurde am { ISO_DAY($told) } um { CLOCK($told) } abgelesen; das Buch reiht es ein als { ISO_DAY($ordered) } { CLOCK($ordered) }; beides bleibt. Die Uhr stellen und sagen, ob der Tag stimmt.
hand_unsigned = Dieses Telefon unterschreibt, was darauf eingetragen wird, und dies kam ohne Unterschrift. { $person } fragen, ob der Eintrag der eigene ist.
hand_not_shown = { $person } hat eine PIN und hatte sie auf diesem Telefon nicht eingetippt. Nachfragen, ob der Eintrag der eigene ist.
hand_second = Das Haus verlangt hierfür beim Eintragen die PIN, und sie fehlte. { $person } fragen, ob der Eintrag der eigene ist.
hand_witness = { $person } ist als Zeuge genannt und hat auf diesem Telefon nie die PIN eingetippt. Nachfragen.
received = Übergeben { $after } nach dem Eintippen.
late = Eingetippt { $after } nach dem Ablesen.
time_order = Abgelesen { $after } nach dem Eintippen: das kann nicht sein. Die Zeit der Ablesung berichtigen.
twice =
    Dieselben Zahlen stehen bei { $at } ({ $before ->
        [none] im selben Augenblick
       *[other] { $before } zuvor
    }{ $by ->
        [none] { "" }
       *[other] , von { $by }
    }). Ist es eine Ablesung, zweimal eingetragen?
moved_twice = Dieselben Zahlen stehen bei { $at }. Ist es ein und dasselbe, zweimal eingetragen?
named_twice = { $label } { $name } steht schon bei { $at }. Die nächste vergeben.
two_people = Auch { $other } maß dieses Gefäß, { $at }: { TYPED($theirs) }. { $me } hat { TYPED($mine) }. Beide bleiben; welche zählt?
too_neat = { $label } { TYPED($figure) }, { $times } Mal nacheinander. Wird jedes Mal abgelesen?
neat_round = { $label } { TYPED($figure) } an { $vessels } Gefäßen nacheinander. Wird an jedem abgelesen?
instrument-failed = { $instrument } bestand die Prüfung am { $on } nicht. Mit einem anderen noch einmal ablesen.
instrument-would = { $instrument } hat am { $on } die Prüfung nicht bestanden: { TYPED($figure) } wären danach { TYPED($would) }. Mit einem anderen noch einmal ablesen.
instrument-out_of_use = { $instrument } ist seit { $since } außer Betrieb. Welches Messgerät war es?
instrument-due = { $instrument } war am { ISO_DAY($on) } zur Prüfung fällig. Prüfen.
unknown_instrument = Das Buch kennt kein Messgerät { $instrument }. Hinzufügen oder den Eintrag berichtigen.
check_left = { $instrument } heißt gut: zeigt { $found }, dazu { $correction } { $then }, und sollte { $expected } zeigen. Die drei Zahlen ansehen; ein Gerät, das abweicht, hat nicht bestanden.
instrument_failed =
    { $instrument } { $side ->
        [high] zeigt { $off } zu viel{ instrument-where }
        [low] zeigt { $off } zu wenig{ instrument-where }
       *[none] bestand nicht
    }. Jede Ablesung damit { $since ->
        [new] seit es neu war
       *[other] seit der letzten guten Prüfung am { $since }
    } ist zweifelhaft: die Liste auf seiner Seite durchsehen.
instrument-where =
    { $against ->
        [ice] { " " }in Eis
        [boiling] { " " }in kochendem Wasser
       *[other] { "" }
    }
glass_scale =
    { $instrument } zeigt { BARE(TYPED($low)) }{ $high ->
        [none] { "" }
       *[other] { " " }bis { BARE(TYPED($high)) }
    }; { TYPED($figure) } lässt sich darauf nicht ablesen. Welches Messgerät war es?
ferment_gravity_rose = Die Dichte { $gravity } liegt über { $last } von { $at }; sie kann nur fallen.
ferment_jump = Maische { TYPED($temp) }, bei der letzten Ablesung { TYPED($last) }: so schnell ändert sich eine Maische nicht. Noch einmal ansehen.
sugar_gravity = Erste Dichte { TYPED($gravity) }: nach dem Zucker der Frucht etwa { TYPED($usual) }. Beide noch einmal ansehen.
close_gravity = Enddichte { TYPED($gravity) }, bei der letzten Ablesung { TYPED($last) }. Noch einmal ansehen.
close_volume = { TYPED($volume) } Maische aus { $fruit } Obst: üblich sind etwa { $usual }. Die Peilung ansehen und ob eine Lieferung fehlt.
ferment_stuck =
    Die Dichte { $gravity } hat sich { $moved ->
        [none] nicht bewegt
       *[other] um { $moved } bewegt
    } ({ $apart }) und steht { $above } über { $end }, wo { $what ->
        [none] solches Obst
       *[other] { $what }
    } gewöhnlich endet: steht still und ist nicht fertig.{ $mash ->
        [none] { "" }
       *[other] { " " }Maische { TYPED($mash) }.
    } Temperatur, Säure und Hefenährstoff ansehen.
ferment_ended = Dreimal dieselbe Dichte { $gravity } ({ $within }): die Gärung ist zu Ende. Das Brenngerät einplanen.
ferment_heat =
    Maische { TYPED($temp) } liegt über { TYPED($most) }: zu heiß für { $what ->
        [grain] Getreide
       *[fruit] Obst
    }. Jetzt kühlen.
ferment_temp_sense = Maische { TYPED($temp) } tötete die Hefe. Als Fahrenheit gelesen sind es { TYPED($meant) } ({ $other }){ temp-fits }. War das gemeint?
ferment_temp_sense-cold = Maische { TYPED($temp) } liegt am oder unter dem Gefrierpunkt ({ TYPED($cold) }). Als Celsius gelesen sind es { TYPED($meant) }{ temp-fits }. War das gemeint?
temp-fits =
    { $near ->
        [none] { "" }
       *[other] , was zu { TYPED($near) } von { $at } passt
    }
ferment_yield =
    { BARE($made) } { pure } in der Maische, { $load }: zu erwarten waren etwa { BARE($wanted) } { pure-sign }{ $what ->
        [none] { "" }
       *[other] { " " }nach Ihren letzten { $years } mit { $what }
    }. Das ist { $side ->
        [much] viel
       *[little] wenig
    }: { $share }, üblich sind { BARE($low) } bis { $high }. Gehalt, Peilung und Gewichte ansehen.
ferment_yield-most = { BARE($made) } { pure } in der Maische, { $load }: all ihr Zucker gäbe höchstens { BARE($most) } { pure-sign }. Gehalt, Peilung und Gewichte ansehen; wurde Zucker zugesetzt?
load-grain = aus { $weight } Getreide
load-fruit = aus { $weight } Obst mit { $sugar }
wash_strength =
    { TYPED($strength) } aus { $vessel } ist viel für eine Gärung: üblich sind { UNITS() ->
        [us] 6
       *[metric] 3
    } bis { BARE($most) } { pct }. Noch einmal ansehen.
wash_strength-impossible = { TYPED($strength) } aus { $vessel } kann nicht sein: das gibt keine Gärung. Noch einmal ansehen.
over_capacity = { $contents } passt nicht in { $vessel }; Fassungsvermögen { $holds }. Noch einmal ansehen.
over_working_level = { $contents } liegt über dem Füllstand { $level }, bis zu dem { $vessel } gefüllt wird. Noch einmal ansehen.
contents-fruit =
    { $fruit } Obst ({ $before ->
        [none] { "" }
       *[other] mit { $before } schon darin,{ " " }
    }etwa { $mash } Maische)
contents-charge =
    Eine Füllung von { $charge }{ $feints ->
        [none] { "" }
       *[other] { " " }({ BARE($wash) } Maische und { BARE($feints) } Vor-/Nachlauf)
    }
vessel_empty = Das Buch hat um diese Zeit nichts in { $vessel }. Richtiges Gefäß, richtige Zeit? Wenn ja, die Füllung eintragen.
source_empty = Das Buch hat in { $vessel } nichts, womit zu füllen wäre. Richtiges Gefäß? Wenn ja, seine Füllung eintragen.
vessel_not_empty =
    { $vessel } ist nach dem Buch nicht leer: { $held ->
        [none] { "" }
       *[other] { BARE($held) } { of-pure },{ " " }
    }{ $what }. Richtiges Fass? Wurde es entleert?
target_capacity = { $then } stehen dann in { $vessel } ({ target-holds }). Richtiges Gefäß, richtige Zahlen?
target_working_level = { $then } stehen dann in { $vessel } ({ target-holds }). Richtiges Gefäß, richtige Zahlen?
target-holds =
    fasst { $holds }, Füllstand bis { $level }{ $has ->
        [none] { "" }
       *[other] , { $has } darin
    }
emptied_vessel =
    { $vessel } wurde { $how ->
        [dump] entleert
        [destruction] vernichtet
        [loss] abgeschrieben
        [account_move] umgebucht
        [bottling_close] abgefüllt
        [charge] in die Blase gefüllt
        [cask_fill] in ein Fass gefüllt
        [top_up] in ein Fass gegossen
        [chill_filter] in einen anderen Tank filtriert
        [gauge] leer gefunden
        [stock_count] leer gefunden
        [fraction_gauge] abgelassen
       *[other] geleert
    } ({ $at }, { $by }) und ist nach dem Buch leer. Wurde vorher abgelesen? Dann die Zeit berichtigen. Oder war es ein anderes Gefäß?
move_gain = In { $vessel } nach dem Buch { BARE($had) }, umgefüllt { BARE($moved) }: { BARE($more) } { pure } ({ $share }) mehr, als da war. Umfüllen gewinnt nichts: bis { $most } ist Ablesung. Peilung, Temperatur und Gehalt von beiden ansehen.
account_other = Nach dem Buch sind in { $vessel } { BARE($held) } { of-pure } im Konto { $account }. Als { $other } umgefüllt, steht jetzt alles im Konto { $other }, nicht nur die { BARE($moved) }. War das angemeldet?
account_joined = { BARE($held) } { of-pure } in { $vessel } stehen nach dem Buch im Konto { $account }. Mit { BARE($moved) } als { $other } dazu steht jetzt alles im Konto { $other }. War das angemeldet?
fruit_mixed = { $net } { $fruit } kommen zu { $lies } { $other }: { $share } der Maische. Der Brand heißt dann nach beiden, mit ihren Anteilen, nach keiner allein. Richtiges Obst, richtiger Gärbottich?
opening_nothing = Das Buch hat nichts in { $vessel }, und hier ist nichts gewogen oder gepeilt. Brutto, netto oder Volumen eintippen.
opening_seen = { $vessel } enthält, was dieses Buch hat beginnen sehen ({ $at }): das ist kein Anfangsbestand. Richtiges Gefäß?
opening_again = Nach dem Buch sind { BARE($booked) } { of-pure } schon in { $vessel }; hier sind es { BARE($said) }. Die Vergangenheit kommt dazu, der Bestand bleibt. Messen, wenn jetzt eine andere Menge darin ist.
opening_before_fruit = Im Holz seit { $day }, aus der Ernte { $harvest }: nichts liegt vor seiner Frucht im Holz. Beide noch einmal ansehen.
opening_drift = Jetzt { $now }, bei Füllung { $then } am { $at }: das ist viel für die Jahre dazwischen. Beide noch einmal ansehen.
opening_grew = Jetzt { $now }, bei Füllung { $then }: Holz gibt keinen Alkohol. Beide noch einmal ansehen.
opening_overfilled = { TYPED($filled) } bei Füllung passt nicht in { $vessel }; Fassungsvermögen { TYPED($holds) }. Die Papiere noch einmal ansehen.
opening_no_tare = { TYPED($gross) } mit dem Fass, und niemand hat gesagt, was es leer wiegt. Leergewicht eintippen oder beim Fass führen.
opening_to_come = { $day } liegt nach { $read }, dem Tag der Ablesung. Das Jahr ansehen.
opening_long_ago =
    { $day } liegt { PLURAL($years) ->
        [one] { $years } Jahr
       *[other] { $years } Jahre
    } vor der Ablesung. Richtiges Jahr?
sheet-empty = In dieser Datei steht nichts. Das Blatt mit den Zeilen nehmen.
sheet-too_large = Diese Datei ist größer als { $most } MB. Nur das Blatt sichern, als CSV, und das nehmen.
sheet-pdf = Das ist ein PDF, wie immer es heißt. Das Blatt als XLSX, ODS oder CSV sichern und das nehmen.
sheet-old = Das ist eine Arbeitsmappe älterer Art. Als XLSX, ODS oder CSV sichern und das nehmen.
sheet-unreadable = Das ist keine lesbare Tabelle. Das Blatt als XLSX, ODS oder CSV sichern und das nehmen.
sheet-swollen = Diese Arbeitsmappe ist entpackt größer als { $most } MB. Das eine Blatt als CSV sichern und das nehmen.
sheet-rows = { $rows } Zeilen auf einmal sind zu viel: höchstens { $most }. In Teilen nehmen.
sheet-columns = { $columns } Spalten sind zu viel: höchstens { $most }. Herausnehmen, was hier niemand braucht.
sheet-no_heads = Keine Zeile dieser Tabelle sieht nach Überschriften aus. Über jede Spalte eine setzen, wie in der Vorlage.
sheet-no_rows = Überschriften sind da, aber keine Zeile darunter.
sheet-merged = Überschriften in Zeile { $row } sind verbunden. Trennen, eine über jede Spalte.
sheet-two_columns = Zwei Spalten bedeuten dasselbe, { $label }: „{ $one }“ und „{ $other }“. Sagen, welche es ist und was die andere ist.
sheet-no_column =
    { PLURAL($many) ->
        [one] Eine Spalte fehlt: { $labels }.
       *[other] Spalten fehlen: { $labels }.
    } Sagen, welche es ist, oder im Blatt ergänzen.
sheet-order = Tage wie { $example }: steht der Tag vorn oder der Monat? Bitte sagen.
sheet-missing = { $label } fehlt.
sheet-formula_cell = { $typed } ist eine Formel ohne Wert. Den Wert hineinsetzen.
sheet-no_number = { $typed } ist keine Zahl.
sheet-bad_number = { $typed }: { $reason }
sheet-no_unit = { $typed }: diese Spalte steht in { $units }.
sheet-no_choice = { $typed } ist keines von diesen: { $choices }.
sheet-no_date = { $typed } ist kein Tag. Als 2022-11-21 oder 21 Nov 2022 schreiben.
sheet-no_such_day = { $month } hat { $last } Tage.
sheet-which_order = { $typed }: was ist der Tag, was der Monat?
sheet-to_come = { $day } liegt noch vor uns.
sheet-twice = { $name } steht schon in Zeile { $row }.
sheet-no_vessel = Kein Gefäß heißt { $name }. Mit einem Blatt der Gefäße eintragen oder hier sein Fassungsvermögen angeben.
sheet-opened = Der Anfangsbestand von { $name } ist schon im Buch und sagt anderes. Auf seiner Seite berichtigen.
sheet-other = { $name } ist schon im Buch: dort { $there }, hier { $here }. Auf seiner Seite ändern oder diese Zeile weglassen.
opening_goods_again = Das Buch hat schon { $there } Flaschen { $batch }, seit { $at }; diese { $bottles } kommen daneben. Sind es andere?
move_balance = In { $vessel } nach dem Buch { BARE($had) }, in { $to } { BARE($moved) }: { BARE($left) } { pure } ({ $share }) zurückgeblieben. Üblich sind bis { $most }. In der Leitung oder noch im Gefäß? Messen.
move_balance-off = In { $vessel } nach dem Buch { BARE($had) }, aus dem Betrieb { BARE($moved) }: { BARE($left) } { pure } ({ $share }) zurückgeblieben. Üblich sind bis { $most }. In der Leitung oder noch im Gefäß? Messen.
dip_sum =
    { $dipped } in { $vessel }, nach dem Buch { $booked }: { $off } { $side ->
        [above] über
       *[below] unter
    } der Summe ({ $share }). Die Peilung ansehen, dann nach einer fehlenden Umfüllung.
dip_sum-dump = { $dipped } in { $vessel } gepeilt, nach der Summe des Eingefüllten { $sum }: { $off } auseinander. Die Peilung und beide Gewichte ansehen.
source_strength = Wirklicher Gehalt { BARE($now) } { pct }, in { $vessel } nach dem Buch { BARE($held) } { pct }: { APART($off) } { points } auseinander. Ist es dieses Gefäß? Noch einmal ansehen, auch nach Wasser oder einer fehlenden Umfüllung.
water_off = { TYPED($water) } Wasser bringen es auf { BARE($strength) } { pct }, nicht auf { BARE($target) } { pct }: dafür braucht es { $needed }. Das Gewicht ansehen.
blend_sum =
    Hinein { BARE($went_in) }, gemessen { BARE($measured) }: { BARE($off) } { pure } ({ $share }) { $side ->
        [more] mehr
       *[less] weniger
    }, als in den Verschnitt ging. Üblich ist { $usual }. Ist gemischt? Noch einmal ablesen.
row_gap = { $label } steht in jeder der letzten { $lines } Zeilen und in dieser nicht. Eintippen, oder sagen, dass nicht abgelesen wurde.
plates_moved = Böden { $plates }, zuvor { BARE($last) } ({ $at }); seither ist keiner als zu- oder abgeschaltet eingetragen. Noch einmal ansehen oder die Änderung eintragen.
strength_row = Wirklicher Gehalt { BARE($now) } { pct }; nach den Ablesungen zuvor wären es { BARE($low) } bis { BARE($high) } { pct }, und Dampf von { TYPED($vapour) } spricht dafür. Spindel und Temperatur ansehen.
ferment_row = Dichte { TYPED($gravity) }: fiel { BARE($before) } am Tag und jetzt kaum. Ist es diese Ablesung oder die der Zeile davor?
ferment_row-again = Dichte { TYPED($gravity) }: fiel { BARE($before) } am Tag, war langsamer geworden, und jetzt { BARE($fell) } am Tag. Noch einmal ansehen.
ferment_jump-row = Maische { TYPED($temp) }, im Mittel der letzten { $readings } Ablesungen { TYPED($usual) }. Noch einmal ansehen.
charge_low = { $charge } in { $still }, Fassungsvermögen { $holds }: so wenig brennt an. Die Peilung ansehen.
charge_unlike = Maische { TYPED($wash) }, im Mittel der Füllungen zuvor auf diesem Gerät { TYPED($usual) }. Noch einmal ansehen.
feints_unread = Vor-/Nachlauf aus { $vessel } ist genannt, aber nicht wie viel. Volumen und Gehalt eintippen.
feints_part = { TYPED($feints) } Vor-/Nachlauf, nach dem Buch stehen { TYPED($there) } in { $vessel }. Ging alles hinein?
move_part = Von { BARE($had) } { of-pure } in { $vessel } gehen { BARE($moved) }, und { BARE($left) } { pure } bleiben. Ging alles? Zahl und Einheit ansehen.
account_same =
    Eine Einlagerung, die im Konto { $account ->
        [production] Herstellung
        [storage] Lagerung
       *[processing] Verarbeitung
    } bleibt, ist keine. In welches Konto geht es?
account_habit = In das Konto { $account }; was zuvor von hier ging, kam in { $usual }. Welches ist es?
moved_elsewhere = In { $vessel }; was zuvor von hier ging, kam in { $usual }, dort ist Platz. Welcher Tank ist es?
opening_weak = { BARE($now) } { pct } in einem Fass: unter { BARE($least) } { pct } wird keiner abgefüllt. Spindel und Einheit ansehen.
receiver_other = { $vessel } ist für den { $part } offen; die Füllung sieht dafür { $planned } vor. Was ist jetzt offen?
receiver_no_cut = { $vessel } ist als jetzt offen genannt, und { $event } ist keine Abtrennung. War es eine?
receiver_twice = { $vessel } für { $part } und { $other } desselben Brands. Welche Vorlage ist es?
receiver_role = { $vessel } für { $part }; darin war { $other } des vorigen Brands. Welche Vorlage ist es?
target_moved = Ziel { TYPED($target) }; das Wasser von { $at } war für { TYPED($last) }. Was gilt?
target_planned =
    Ziel { TYPED($target) }, unter { TYPED($planned) }, wofür { $plan ->
        [none] der Verschnitt
       *[other] { $plan }
    } geplant ist. Noch einmal ansehen.
label_planned =
    Abgefüllt mit { TYPED($label) }, und { $plan ->
        [none] der Verschnitt
       *[other] { $plan }
    } ist für { TYPED($planned) } geplant. Beide ansehen.
dump_planned =
    { $vessel } ist nicht im Plan{ $plan ->
        [none] { "" }
       *[other] { " " }{ $plan }
    } von { $tank }. Ist es dieses Fass und dieser Tank?
dump_planned-amount =
    { $net } entleert, und { $wanted } geplant{ $plan ->
        [none] { "" }
       *[other] { " " }für { $plan }
    }. Beide Gewichte ansehen.
vat_joins = { $vessel } enthält { BARE($held) } { of-pure }, die der Plan nicht nennt. Ist es dieser Tank?
vat_sum = Die Entnahmen und { TYPED($water) } Wasser ergeben { BARE($strength) } { pct }, nicht { TYPED($target) }. Beide ansehen.
vat_full = Die Entnahmen und das Wasser ergeben { $then }, und { $vessel } fasst { $holds }. Ist es dieser Tank?
cut_planned = Mittellauf bei { BARE($now) } { pct } abgetrennt, geplant bei { BARE($planned) } { pct }. Die Nase entscheidet: sagen, warum, oder die Spindel ansehen.
wash_open = Die Gärung in { $vessel } ist nicht beendet: die Maische ist nicht gemessen. Erst beenden, mit der Zeit der letzten Ablesung.
water_unread = In { $vessel } kam Wasser ({ $at }), und niemand hat gemessen, was daraus wurde. Spindel und Peilung nach der Ruhe eintragen.
bottling_ungauged = { $vessel } ist nicht zur Abfüllung gemessen: Ansatz und Etikett fehlen. Zuerst messen. Oder ist es ein anderer Tank?
fraction_left =
    Gemessen ist { $fraction }, nicht aber { $missing } von { $run ->
        [none] diesem Brand
       *[other] { $run }
    }. Auch messen, mit der Zeit.
fraction_left-moved =
    { $vessel } ist geleert, und { $missing } von { $run ->
        [none] dem Brand
       *[other] { $run }
    } ist nicht gemessen. Auch messen.
run_not_ended =
    { $run ->
        [none] Der Brand
       *[other] { $run }
    } ist bis zum Ende gemessen, aber das Ende ist nicht eingetragen. Mit der Zeit eintragen.
cleaned_full = { $vessel } ist gereinigt, und das Buch hat { $litres } darin. Ist es dieses Gefäß, oder fehlt ein Schritt?
added_again = Ebenso viel { $what } desselben Loses kam schon in { $vessel } ({ $at }). Ist es dieses Gefäß, oder zweimal eingetragen?
recask_rest = In ein anderes Fass geleert, und { BARE($left) } { of-pure } von { $vessel } sind nicht darin; Holz behält { BARE($kept) }. Ist es ein Auffüllen, oder kommt noch etwas?
lab_far = { $substance } { $found }: Labore finden { BARE($low) } bis { $high } im Brand. Komma und Zeile ansehen.
stillage_strong = Schlempe mit { BARE($now) } { pct }, über { BARE($most) } { pct }: ist sie ausgebrannt? Die Zahl ansehen, und welcher Teil es ist.
receiver_full = { $vessel } enthält { $held } und hat Platz für { $room }; Mittellauf von { $usual } kam früher hinein. Fehlt eine Umfüllung?
counted_again = { $counted } sind schon gezählt ({ $at }). Ist es eine Zählung, zweimal eingetragen?
removed_otherwise = An { $to_whom }: { $why }. Die letzte Ware dorthin: { $usual }. Was gilt?
document_again = Beleg { $document } steht bei Ware, die schon hinausging. Die Nummer ansehen.
run_still_open =
    Auf { $still } ist schon { $run ->
        [none] ein Brand
       *[other] { $run }
    } offen seit { $since }. Erst diesen Brand beenden, oder diese Füllung streichen.
run_not_open = Auf { $still } ist um diese Zeit kein Brand offen. Die Füllung mit ihrer Zeit eintragen, dann passt dies.
run_receiver_same = { $receiver } war schon vor dieser Abtrennung offen. Welche Vorlage ist jetzt offen? Diese berichtigen oder die davor.
run_order-no_hearts_cut = Der Brand endet, aber der Mittellauf ist nicht abgetrennt; er begann { $began }. Die Abtrennung mit ihrer Zeit eintragen.
run_order-opened = Die Blase ist geöffnet, aber der Brand nicht beendet. Mit der Zeit beenden.
run_order-again = { CAPITAL($event) } ist schon eingetragen ({ $at }). Was zählt?
run_order-late = { CAPITAL($event) } kommt nach { $other } von { $at }. Die Zeiten ansehen.
run_order-no_heads_cut = Der Mittellauf ist abgetrennt, aber nicht der Vorlauf. Mit Zeit und Vorlage eintragen.
strength_slope = Wirklicher Gehalt { BARE($now) } { pct } liegt über { BARE($last) } { pct } von { $at }; nach dem Vorlauf kann er nur fallen, außer Böden oder Kühlung wurden geändert.
strength_impossible = Wirklicher Gehalt { BARE($now) } { pct } kann nicht sein: keiner liegt über { $most }. Noch einmal ansehen.
strength_class =
    Wirklicher Gehalt { BARE($now) } { pct } aus { $what ->
        [none] Obst
       *[other] { $what }
    }: { $limit ->
        [brandy_us_pct]
            über { UNITS() ->
                [us] { APART($most) } Proof
               *[metric] { BARE($most) } % (190 Proof)
            } ist es in den USA kein Brandy (27 CFR 5.145)
        [grain_us_pct]
            über { UNITS() ->
                [us] { APART($most) } Proof
               *[metric] { BARE($most) } % (160 Proof)
            } ist es in den USA kein Roggenwhisky (27 CFR 5.143)
       *[fruit_class_pct] mit { BARE($most) } { pct } oder mehr ist es in der EU kein Obstbrand (Verordnung 2019/787)
    }. Noch einmal ansehen.
distillate_warm = Der Brand läuft mit { TYPED($temp) }, über { TYPED($warm) }. Jetzt mehr Kühlwasser und weniger Feuer, bis er kühl läuft: warmer Brand gibt Dampf ab, der brennt.
vapour_strength = Dampf { TYPED($vapour) } und Brand von { BARE($strength) } { pct } passen nicht zusammen: bei diesem Gehalt sind etwa { TYPED($usual) } üblich. Beide noch einmal ansehen.
fraction_receiver = { $vessel } für { $fraction }: nach den Abtrennungen dieses Brands ging es in { $opened }. Was gilt?
fraction_uncut =
    Lutter eines Brands mit Abtrennungen{ $run ->
        [none] { "" }
       *[other] , { $run }
    }. Vorlauf, Mittellauf oder Nachlauf?
fraction_strength = { $fraction }: { BARE($now) } { pct }, an der Vorlage im Mittel { BARE($ran) } { pct }. Spindel, Temperatur und Rest ansehen.
glass_habit = { $strength } bei { $temp } ist als berichtigt eingetippt, und { $vessel } wurde bisher mit der Spindel abgelesen. Zeigt das die Spindel, sind es wirklich { $true }. Was gilt?
not_whole = { $label } { $typed }: hier wird ganz gezählt. Noch einmal ansehen.
unit_odd = { $label } ist in { $typed } eingetippt, neben { $other } im selben Eintrag. Welche Einheit wurde abgelesen?
late-same_hour = Eingetippt { $after } nach dem Ablesen, zur selben Stunde. Den Tag ansehen.
flow_jump = Durchfluss { $flow }, im Mittel der letzten { $readings } Ablesungen { $usual }. Noch einmal ansehen, oder eintragen, was geändert wurde.
run_order-no_first_drop = Der Vorlauf ist abgetrennt, aber der erste Tropfen nicht eingetragen wie beim vorigen Brand. Mit der Zeit eintragen.
gauged_empty = Das Buch hat nichts in { $vessel }, und { BARE($pure) } { of-pure } sind dort gemessen. Richtiges Gefäß? Wenn ja, die Füllung eintragen.
distilled_off = Destilliert mit { $said }, und { BARE($now) } { pct } in der Vorlage: dort steht es so stark, wie es vom Gerät kam. Beide ansehen.
lab_off = Das Labor fand { $found }, das Buch hat { BARE($held) } { pct } in { $vessel }. Die Zahl ansehen, und aus welchem Gefäß die Probe ist.
dose_off = { $amount } { $what } auf { $mash } Maische; üblich sind dafür { BARE($low) } bis { $high }. Zahl und Einheit ansehen.
tare_share = Die Tara ist { $share } des Bruttogewichts und war bei der Lieferung zuvor { $usual }. Beide ansehen.
tare_share-first = Die Tara ist { $share } des Bruttogewichts, über { $most }. Beide ansehen.
sugar_unlike = Zucker { $sugar }, bei der Lieferung desselben Obsts zuvor { $last }. Noch einmal ansehen.
place_from = { $vessel } wird von { $place } umgelagert; nach dem Buch steht es an { $booked }. Ist es dieses Gefäß?
receiver_held = { $vessel } enthält nach dem Buch { BARE($held) } { of-pure }; bisher wurde es vor jedem Brand geleert. Eintragen, wohin sie gingen.
remnant_off = { $remnant } vor dem Auffangen, nach dem Buch { $booked } in { $vessel }. Noch einmal ansehen, auch nach einer fehlenden Umfüllung.
remnant_off-strength = Ein Rest von { BARE($now) } { pct }, in { $vessel } nach dem Buch { BARE($held) } { pct }. Noch einmal ansehen.
run_ungauged =
    Vom vorigen Brand{ $run ->
        [none] { "" }
       *[other] , { $run },
    } ist nicht gemessen: { $fraction }. { BARE($left) } { of-pure } zählten als verloren. Zuerst messen.
run_balance = { run-sums } nicht erklärt.{ run-stillage } Hier üblich: { BARE($low) } bis { $high }.
run_balance-gain = { run-sums } mehr, als hineinging.{ run-stillage } Gehalt der Maische, Peilungen und Reste ansehen.
strip_balance = { run-sums } nicht erklärt.{ run-stillage } Der Lutter trägt { $carried } der Maische; üblich sind { BARE($low) } bis { $high }.
strip_balance-gain = { run-sums } mehr, als hineinging.{ run-stillage } Gehalt der Maische, Peilungen und Reste ansehen.
run-sums = Aus { BARE($out) }, ein { BARE($in) }: { BARE($off) } { pure } ({ $share })
run-stillage =
    { $stillage ->
        [read] { "" }
       *[other] { " " }Schlempe angesetzt mit { BARE($stillage) } { pct }.
    }
run_drift = { $now } der Füllung nicht erklärt, im Mittel der { $runs } Brände zuvor { $middle }: über { $high }, Brand für Brand. Kühler, Verbindungen und Gehalt der Maische ansehen.
fraction_again =
    { $fraction } von { $run ->
        [none] diesem Brand
       *[other] { $run }
    } wurde in diesem Gefäß schon gemessen ({ $at }): { BARE($pure) } { pure }. Ist es dieselbe Messung oder ein anderer Brand?
fraction_twice =
    Vor-/Nachlauf aus { $vessel } ging schon in { $run ->
        [none] den Brand von { $at }
       *[other] { $run }
    }. Welcher Brand bekam ihn?
fraction_twice-short = { BARE($feints) } { pure } Vor-/Nachlauf aus { $vessel }, nach dem Buch { BARE($booked) } { pure-sign } darin. Bekam ihn ein anderer Brand, oder fehlt noch eine Messung?
flow_sum = Durchfluss mal Minuten gibt { $flowed } { $fraction }, die Vorlage { $got }: { $off } { more-or-less }, wo { $most } sein darf. Wurde eine Abtrennung spät eingetragen oder eine Vorlage spät gewechselt?
dip_flow = Durchfluss mal Minuten gibt { $flowed }, seit diese Vorlage offen ist, die Peilung { $dipped }: { $off } { more-or-less } darin, wo { $most } sein darf. Ist eine andere Vorlage offen, oder war die Abtrennung zu anderer Minute?
more-or-less =
    { $side ->
        [more] mehr
       *[less] weniger
    }
hearts_share =
    Der Mittellauf ist { $now } der Füllung; { BARE($low) } bis { $high } in den letzten { $runs } Bränden, { $what ->
        [none] dieses Gerät
       *[other] { $what }
    }. Die Abtrennungen sind einen Blick wert.
cask_grew = Reiner Alkohol { BARE($now) } { pure-sign } ({ BARE($strength) } { pct }) liegt über { BARE($last) } { pure-sign } ({ BARE($last_strength) } { pct }) von { $at }{ moved-since }; ein Fass kann nicht gewinnen.
cask_grew-gross = Brutto { TYPED($gross) } liegt über { TYPED($last) } von { $at }; es kann nur fallen, außer das Fass wurde aufgefüllt.
cask_grew-emptied = { BARE($now) } { pure } im Fass, bevor es geleert wurde, nach dem Buch { BARE($booked) } { pure-sign } seit { $since }; ein Fass kann nicht gewinnen. Gewicht und Gehalt ansehen.
moved-since =
    { $way ->
        [added] { " " }mit { BARE($moved) } { pure-sign } seither dazu
        [drawn] { " " }mit { BARE($moved) } { pure-sign } seither entnommen
       *[none] { "" }
    }
cask_strength_slip =
    Gehalt { BARE($now) } { pct }: { APART($off) } { points } { $side ->
        [below] unter
       *[above] über
    } { BARE($last) } { pct } von { $at }; üblich ist im Jahr weniger als { UNITS() ->
        [us] 2 Proof
       *[metric] ein Prozentpunkt
    }.{ $hint ->
        [none] { "" }
       *[other] { " " }{ $hint }
    }
slip-glass = Als Spindelanzeige bei { TYPED($temp) } sind es wirklich { BARE($true) } { pct }.
cask_loss =
    { $rate } im Jahr verloren seit { $since }{ $whole ->
        [none] { "" }
       *[other] { " " }({ $whole } im Jahr seit der Füllung)
    }: damals { BARE($then) } { of-pure }{ moved-since }, jetzt { BARE($now) } { pure-sign }. { $others } { $end }
lost-leak = Der Gehalt ist üblich ({ APART($drift) } { points } im Jahr): ein Leck? Reifen, Böden, Spund und Fußboden ansehen.
lost-odd_too = Auch der Gehalt ist auffällig: richtiges Fass? Noch einmal wiegen und ablesen.
lost-by_size =
    Fässer dieser Größe verlieren { $size ->
        [small] 5 bis 8
       *[large] 2 bis 4
    } %.
lost-by_others = Von den { $casks } ähnlichsten Fässern verloren die meisten { BARE($low) } bis { $high }.
lost-by_all = Von den { $casks } ähnlichsten Fässern verloren die meisten etwa { $lost }.
cask_life = Nach dem Buch { BARE($booked) } seit { $since }, im Fass jetzt { BARE($now) }: { BARE($gone) } { pure } ({ $share }) weg. Ein Leck? Fußboden und Dauben ansehen; als Verlust eintragen.
cask_drift =
    Der Gehalt ging von { BARE($last) } auf { BARE($now) } { pct } ({ APART($drift) } { points } im Jahr); { $place ->
        [damp] an einem feuchten Platz ({ $humidity } Feuchte) wird Brand schwächer
       *[dry] an einem trockenen Platz ({ $humidity } Feuchte) wird Brand stärker
    }. Richtiges Fass, richtiger Platz?
fill_level =
    { $litres } in { $cask }, { $share } des Fassungsvermögens. { $casks ->
        [none] Ein Fass wird mindestens zu { $usual } gefüllt.
       *[other] Die { $casks } ähnlichsten Fässer wurden zu etwa { $usual } gefüllt.
    } Waage und Einheit ansehen, und ob es dieses Fass ist.
cask_earlier = { BARE($odd) } { pct } und { BARE($odd_pure) } { of-pure } von { $at } stehen allein: zuvor { BARE($before) } und { BARE($before_pure) }, jetzt { BARE($now) } und { BARE($now_pure) }. Jenen Eintrag ansehen; dieser passt zu allen anderen.
gauge_earlier = { BARE($odd) } { pct } um { $at } stehen allein: { BARE($before) } davor und { BARE($now) } jetzt. Jenen Eintrag ansehen; dieser hier passt zu allen anderen.
cask_unlike =
    Gehalt { APART($off) } { points } { $side ->
        [below] unter
       *[above] über
    } { BARE($last) } { pct } von { $at }; von den { $casks } ähnlichsten Fässern änderten sich die meisten um { APART($usual) } im Jahr. Noch einmal ablesen.
tare_off = { $cask } wiegt leer { TYPED($tare) }; geführt sind { TYPED($listed) }. Die Waage ansehen, und ob es dieses Fass ist.
soakage = Leer { TYPED($empty) }, alte Tara { TYPED($tare) }: { $kept } behalten, ein Fass dieser Größe behält { BARE($low) } bis { $high }. Ist es ausgetropft? Die Tara ansehen.
soakage-light = Leer { TYPED($empty) } liegt unter der alten Tara { TYPED($tare) }; Holz, das Brand hielt, wiegt { BARE($low) } bis { $high } mehr. Waage oder Tara ist falsch.
places_swapped = { $vessel } stand an { $place } und { $other } an { $booked }: sie haben die Plätze getauscht, nichts fehlt. Wenn es so ist, gelten lassen; dann führt das Buch sie so.
place_differs =
    { $vessel } stand an { $place }; { $booked ->
        [none] das Buch hat keinen Platz dafür
       *[other] das Buch führt es an { $booked }
    }. Wenn es dort ist, gelten lassen. Auch zählen, was dort steht.
cask_missing =
    { $vessel } wurde nicht gefunden{ $booked ->
        [none] { "" }
       *[other] , nach dem Buch { BARE($booked) } { of-pure }
    }. Jetzt suchen. Wenn es weg ist, den Verlust eintragen und melden.
not_in_book =
    Nicht im Buch: „{ $label }“{ $place ->
        [none] { "" }
       *[other] { " " }an { $place }
    }. Wiegen, Papiere suchen und hinzufügen; nach einem suchen, das im Buch steht und niemand fand.
reduce_target =
    { BARE($now) } { pct } gemessen, { BARE($target) } { pct } gewollt: { APART($off) } { points } { $side ->
        [strong] zu stark.{ reduce-water }
       *[weak] zu schwach. Brand muss hinein; Wasser kommt nicht heraus.
    }{ $balance ->
        [none] { "" }
       *[other] { " " }{ $balance }
    }
reduce-water =
    { $water ->
        [none] { "" }
       *[other] { " " }Nach Masse noch { $water } Wasser.
    }
reduced-dip = { reduced-has }: die Peilung ansehen.
reduced-no_loss = { reduced-has }: kein Verlust.
reduced-shrinks = { $before } und { $water } Wasser ergeben { $dip }, nicht { BARE($sum) }: die Mischung schrumpft. { reduced-has }: kein Verlust.
reduced-has = Reiner Alkohol { BARE($pure) } { pure-sign }, nach dem Buch { BARE($booked) } { pure-sign }
contraction_forgotten = { $water } Wasser verlangten die Volumen allein. Volumen addieren sich nicht: { $volume } werden dastehen, nicht { BARE($sum) }, mit { BARE($strength) } { pct }. Für { BARE($target) } { pct } braucht es { $needed }: { $more } mehr. Der reine Alkohol bleibt.
filter_loss = { filter-sums } von Filter und Leitung behalten. Üblich: 0,3 bis 1 %. Schichten, Rest und beide Peilungen ansehen.
filter_gain = { filter-sums } mehr, als hineinging. Ein Filter macht keinen Brand: beide Peilungen und Gehalte ansehen.
filter-sums = Davor { BARE($before) }, danach { BARE($after) }: { BARE($off) } { pure } ({ $share })
filter_before = { BARE($before) } { pure } in { $vessel } vor dem Filter, nach dem Buch { BARE($booked) } { pure-sign }. Die Peilung davor ansehen, dann nach einer fehlenden Umfüllung.
bottling_balance = { bottling-sums } nicht erklärt. Üblich: 0,3 bis 1 %. Flaschen und Kartons noch einmal zählen.
bottling_gain = { bottling-sums } mehr, als im Tank war. Zählung, Flaschengröße und Tankmessung ansehen.
bottling-sums = Tank { BARE($tank) }, Flaschen { BARE($bottles) }, Rest und Leitung { BARE($line) }: { BARE($off) } { pure } ({ $share })
label_strength =
    Der Tank steht bei { BARE($tank) } { pct }, das Etikett sagt { BARE($label) } { pct }: { APART($off) } { points } { $side ->
        [above] darüber
       *[below] darunter
    }. Nach dem Etikett enthielten die Flaschen { BARE($by_label) } { pure }, nach der Tankmessung { BARE($by_tank) } { pure-sign }.
label_strength-before = { BARE($tank) } { pct } im Tank, { BARE($label) } { pct } auf dem Etikett: { APART($off) } { points } auseinander, wo { APART($most) } sein dürfen. Gehalt oder Etikett richten, bevor abgefüllt wird.
label_strength-bottles = { BARE($found) } { pct } in den Flaschen, { BARE($label) } { pct } auf dem Etikett. Die Linie anhalten, den Tank mischen und noch einmal ablesen.
fill_off-least = { $found } in der am wenigsten vollen; bei dieser Größe ist { $least } das Mindeste ({ fill-law }). { fill-set }
fill_off-most = { $found } in der vollsten; bei dieser Größe ist { $most } das Höchste ({ fill-law }). { fill-set }
fill_mean = { $mean } im Mittel: im Mittel darf ein Los nicht unter seinem Etikett liegen (Richtlinie 76/211/EWG, aus dem Gedächtnis). { fill-set }
fill-law =
    { $place ->
        [US] 27 CFR 19.356
       *[EU] Richtlinie 76/211/EWG, aus dem Gedächtnis
    }
fill-set = Den Füller einstellen und die Flaschen seit der letzten Prüfung ansehen.
case_count =
    { $cases } Kartons zu { $per_case } sind { $in_cases }, mit { $library } zur Rückstellung { $together }; { $good } gute Flaschen wurden gezählt: { $off } { $side ->
        [many] zu viel
       *[few] zu wenig
    }. Kartons und Flaschen noch einmal zählen.
bottled_low = { BARE($label) } { pct } auf dem Etikett. { $law } { law-caution }
barrelled_high = { BARE($strength) } { pct } ins Fass. { $law } { law-caution }
law-caution = Ein Hinweis, kein Rechtsrat: den geltenden Text ansehen und fragen, wer ihn kennt.
law-bottled-at_least = { law-subject }: Abfüllung mit { law-strength } oder mehr{ law-source }
law-distilled-below = { law-subject }: Destillation unter { law-strength }{ law-source }
law-distilled-at_most = { law-subject }: Destillation mit höchstens { law-strength }{ law-source }
law-distilled-at_least = { law-subject }: Destillation mit { law-strength } oder mehr{ law-source }
law-barrelled-at_most = { law-subject }: ins Fass mit höchstens { law-strength }{ law-source }
law-aged = { law-subject }: im Holz { $value } oder länger{ law-source }
law-strength =
    { UNITS() ->
        [us] { APART($value) } Proof
       *[metric] { $value }
    }
law-subject = { CAPITAL($called) } ({ $place })
law-source =
    { $note ->
        [none] { "" }
       *[other] , { $note }
    } ({ $source }{ $known ->
        [read] { "" }
       *[memory] , aus dem Gedächtnis
    }).
law-spirit-geist = Geist
law-spirit-beer_spirit = Bierbrand
law-spirit-brandy = Brandy
law-spirit-cider_or_perry_spirit = Brand aus Apfel- oder Birnenwein
law-spirit-fruit_marc_spirit = Obsttresterbrand
law-spirit-fruit_spirit = Obstbrand
law-spirit-grape_brandy = Brandy aus Trauben
law-spirit-grape_marc_spirit = Tresterbrand
law-spirit-honey_spirit = Honigbrand
law-spirit-lees_spirit = Hefebrand
law-spirit-neutral_spirits = Neutralalkohol
law-spirit-raisin_spirit = Rosinenbrand
law-spirit-rye_whisky = Roggenwhisky
law-spirit-spirit_drink = Spirituose
law-spirit-spirit_of_macerated_fruit = Brand aus mazerierten Früchten
law-spirit-straight_whisky = Straight Whisky
law-spirit-whisky = Whisky
law-spirit-wine_spirit = Branntwein aus Wein
law-note-charred_oak =
    { UNITS() ->
        [us] 62,5 % vol
       *[metric] 125 Proof
    }; in ausgekohlter neuer Eiche
law-note-160_proof =
    { UNITS() ->
        [us] 80 % vol
       *[metric] 160 Proof
    }
law-note-190_proof =
    { UNITS() ->
        [us] 95 % vol
       *[metric] 190 Proof
    }
law-note-80_proof =
    { UNITS() ->
        [us] 40 % vol
       *[metric] 80 Proof
    }
law-note-before_caramel = bevor Zuckerkulör die Farbe anpassen darf
law-note-casks_700 = in Fässern bis 700 L
law-note-small_oak = in Eichenfässern unter 1000 L
law-note-large_oak = in Eichenbehältern ab 1000 L
law-note-immature_brandy = in Eiche; jünger ist es immature brandy. Andere Obstbrände haben dort keine Grenze
law-note-straight = um straight zu heißen
lab_over =
    { lab-result } liegt { $sense ->
        [at_least] unter
       *[at_most] über
    }: { lab-law }. { $sort ->
        [target] Ein Zielwert ist keine Grenze: fragen, wer das Recht kennt, was es verlangt.
       *[other] Darauf weder abfüllen noch verkaufen: das Labor fragen, und wer das Recht kennt.
    } { lab-caution }
lab_not_safely =
    { lab-result } liegt nicht sicher { $sense ->
        [at_least] darüber: { lab-law }. Ein anderes Labor kann nur { BARE($at_worst) } finden
       *[at_most] darunter: { lab-law }. Ein anderes Labor kann bis { BARE($at_worst) } finden
    }. Noch einmal prüfen lassen, bevor man sich darauf verlässt. { lab-caution }
lab_under =
    { lab-result } liegt { $sense ->
        [at_least] darüber: { lab-law }. Ein anderes Labor kann nur { BARE($at_worst) } finden
       *[at_most] darunter: { lab-law }. Ein anderes Labor kann bis { BARE($at_worst) } finden
    }. Gilt allein für die Probe.
lab_strength = { $substance } ist je Liter oder Kilogramm des Getränks gedruckt; die Grenze gilt für reinen Alkohol. Den wirklichen Gehalt aus dem Bericht eintippen.
lab-result =
    { $below ->
        [yes] { $substance }, nicht gefunden mit einem Verfahren ab { $found },
       *[no] { $substance } { $found }
    }
lab-law =
    { $sort ->
        [target] Zielwert
        [action] Eingreifwert
       *[limit] Grenze
    } { BARE($limit) } für { $called } ({ $place }; { $source })
lab-caution = Der Bericht eines akkreditierten Labors und Ihr Recht vor Ort entscheiden, nicht dieses Buch.
unknown_bottling =
    Keine Abfüllung im Buch heißt { $batch }{ $case ->
        [none] { "" }
       *[other] { " " }und enthält Karton { $case }
    }. Das Loszeichen ansehen, oder zuerst das Ende der Abfüllung übergeben.
unknown_bottling-several = { $bottlings } Abfüllungen heißen { $batch }. Auch den ersten Karton eintippen, wie er auf dem Karton steht.
bottling-named =
    { $bottling ->
        [none] Die Abfüllung
       *[other] { $bottling }
    }
more_than_bottled = { bottling-named }: { $good } abgefüllt, { $gone } weg, nach dem Buch { $on_hand } vorhanden; jetzt { $now } sind { $more } mehr, als es gibt. Zählen, und nach einem doppelt eingetragenen Abgang suchen.
more_than_bottled-back = { bottling-named }: { $good } abgefüllt, nach dem Buch { $on_hand } vorhanden; { $back } können nicht alle zurückkommen. Ist es dieser Ansatz?
other_case = Karton { $case } ist keiner dieser Abfüllung: sie hat { $first } bis { $last }. Den Karton noch einmal ansehen.
case_numbers = Kartons { $first } bis { $last } sind { $cases }; eingetippt sind { $typed }. Was stimmt?
case_gone = Karton { $case } ist nach dem Buch schon hinaus. Wurde der Abgang zweimal eingetragen? Sonst die Nummern ansehen.
case_gone-several = Kartons { $first } bis { $last } sind nach dem Buch schon hinaus. Wurde der Abgang zweimal eingetragen? Sonst die Nummern ansehen.
bottles_short = Nach dem Buch { $on_hand } Flaschen vorhanden, { $counted } gezählt: { $off } fehlen. Noch einmal zählen, dann nach einem fehlenden Abgang suchen. Eine unerklärte Fehlmenge an Flaschen wird in den USA versteuert (27 CFR 19.465).
bottles_over = Nach dem Buch { $on_hand } Flaschen vorhanden, { $counted } gezählt: { $off } mehr. Noch einmal zählen, dann nach einem fehlenden Abgang suchen.
transit_loss = { transit-sums } unterwegs verloren. Über { $most } ist zu melden (27 CFR 19.462). Verschlüsse ansehen, noch einmal messen, dann melden.
transit_gain = { transit-sums } mehr, als die Papiere sagen. Gehalt, Temperatur und den vorigen Inhalt des Gefäßes ansehen.
transit-sums = Gesandt { BARE($sent) }, erhalten { BARE($received) }: { BARE($off) } { pure } ({ $share })
goods_short = { $short } von { $bottles } Flaschen fehlten oder waren zerbrochen. Noch einmal zählen, auf den Papieren vermerken und dem Absender sagen: auf Fehlendes kann Steuer fällig sein.
seals_broken = Die Verschlüsse waren nicht heil. Die Ladung getrennt halten, messen, und jetzt dem Absender und der Behörde sagen.
vat_draws = „{ $part }“ nennt kein Gefäß mit Gewicht. Kennung und Kilogramm schreiben, etwa C001-Z 153.7.
vat_vessel = Kein Gefäß { $mark } ist im Buch. Die Kennung noch einmal ansehen.
vat_short = { $planned } aus { $vessel } geplant, nach dem Buch { $booked }. Neu planen.
tasting_named = Eine Verkostung { $name } steht schon im Buch. Dieser einen anderen Namen geben.
tasting_part = „{ $part }“ ist nicht lesbar. Schreiben, wie die Hilfe neben dem Feld zeigt.
tasting_vessel = Kein Gefäß { $mark } ist im Buch, und es ist eine Probe dieser Verkostung. Die Kennung noch einmal ansehen.
tasting_heads = { $vessel } enthält Vorlauf. Vorlauf wird nie verkostet: herausnehmen und Eingeschenktes wegschütten.
tasting_glasses = { $person } hat einen Satz, der nicht aus { $wanted } Gläsern besteht. Die Codes neu ziehen.
tasting_unknown = Das Buch hat keine Verkostung { $name }. Den Namen auf dem Servierblatt ansehen.
tasting_after = Verkostung { $name } war vor dieser Antwort geöffnet, sie zählt also nicht. Ging die Uhr des Telefons richtig?
tasting_taster = { $person } verkostet nicht in { $name }, dies zählt also nicht. Wer hat verkostet?
tasting_set = { $person } hat keinen Satz { $set }, dies zählt also nicht. Das Servierblatt ansehen.
tasting_twice = { $person } hat Satz { $set } schon beantwortet. Die erste Antwort zählt.
tasting_code = Kein Glas { $code } war in diesem Satz, die Antwort zählt also nicht. Die Gläser ansehen.
tasting_order = Eine Reihung nennt jedes der { $glasses } Gläser einmal. Diese nicht, sie zählt also nicht.
tasting_again = Verkostung { $name } wurde schon geöffnet. Das erste Öffnen zählt.
tasting_seal = Mit diesem Schlüssel wurde { $name } nicht versiegelt. Von ihrer Seite im Büro aus öffnen.
tasting_early = Geöffnet mit { $came } von { $sets } Antworten. Die anderen zählen nicht.
tasting_cited = Keine geöffnete Verkostung { $name } ist im Buch. Den Namen ansehen oder sie zuerst öffnen.
floor-back = Zurück
floor-check_bottles = Flaschen prüfen
floor-now = jetzt
floor-one_less = Eins weniger
floor-glass = Spindel
floor-spirit = Brand
floor-ferments = Gärungen
floor-readings_round = Ableserunde
floor-regauge_round = Nachmessrunde
floor-tap_it_in_the = in der Liste antippen
floor-all_places = Alle Plätze
floor-scan_the_next = Nächstes scannen
floor-skip = Auslassen
floor-the_slate = Die Tafel
floor-as_casks_like_it = wie Fässer dieser Art
floor-stock_count = Bestandsaufnahme
floor-gravity = Dichte
floor-cases_to = Kartons { $case_from } bis { $case_to }
floor-another = anderes
floor-bottles = { $bottles } Flaschen
floor-not_in_the_book = Nicht im Buch
floor-volume = Volumen
floor-scan = Scannen
floor-off = aus
floor-on = an
floor-true_strength = Wirklicher Gehalt
floor-best = bester
floor-waits_on_this_phone = , wartet auf diesem Telefon
floor-read = abgelesen
floor-heads = Vorlauf { $heads_l }
floor-pinfirst-it_goes_into_the = Es geht in die Konten
floor-checks-about_as_many_over = etwa so viele darüber wie darunter (27 CFR 19.356)
floor-checks-100_on_average_76 = im Mittel 100 (76/211/EWG, aus dem Gedächtnis)
floor-line-bottling = Abfüllung
floor-line-the_line = die Linie
floor-line-fill_of_the_label = Füllung, % des Etiketts
floor-line-label = Etikett
floor-line-least = mindestens
floor-line-most = höchstens
floor-line-strength = Gehalt, { $unit }
floor-line-close_the_bottling = Abfüllung beenden
floor-line-outside_what_may_be = Außerhalb des Erlaubten: den Füller einstellen und die Flaschen seit der letzten Prüfung ansehen.
floor-view-the_line = Die Linie
floor-view-fill_average = Füllung im Mittel
floor-view-of_the_label_last = % des Etiketts, zuletzt { $last }
floor-view-last_strength = Letzter Gehalt
floor-view-average = Mittel { $mean } { $sign }
floor-view-tank_fills = Der Tank gibt
floor-view-of_at_most = zu { $size_l }, höchstens
floor-view-checks_over_under =
    { PLURAL($count) ->
        [one] { $count } Prüfung
       *[other] { $count } Prüfungen
    }{ $spread }; { $over } über, { $under } unter dem Etikett.
floor-view-spread = , Streuung { $spread }
floor-view-next_check = Nächste Prüfung
floor-view-the_first_take_bottles = Die erste. { $count } Flaschen von der Linie nehmen, wiegen, Gehalt ablesen.
floor-view-at_bottle = bei Flasche { $at_bottle }
floor-view-as_the_house_wants = wie das Haus es will
floor-view-bottles_filled = Flaschen gefüllt
floor-view-late = überfällig
floor-view-next_check_in = Nächste Prüfung in
floor-view-the_next_check_was = Die nächste Prüfung war fällig { $due_at }
floor-view-next_check_2 = Nächste Prüfung { $due_at }
floor-view-about = etwa
floor-view-or = oder
floor-view-every_min = , alle { $every_min } min
floor-view-line = Linie
floor-view-type_the_bottles_filled = Die gefüllten Flaschen bei zwei Prüfungen eintippen, dann steht das Tempo hier.
floor-view-filled_the_next_count = { $filled } gefüllt. Die nächste Zählung gibt das Tempo.
floor-view-an_hour = je Stunde
floor-view-ends_about = Endet etwa
floor-view-to = , { $soonest } bis { $latest }
floor-view-the_tank_is_through = Der Tank ist durch, nach der Zählung.
floor-view-of_counted = { $filled } von { $bottles } gezählt{ $by }
floor-view-about_by_now = , jetzt etwa { $expected }
floor-view-cases_packed = Gepackte Kartons
floor-view-one_more_than = Einer mehr als
floor-view-bottles = { $per_case } Flaschen
floor-view-bottles_in_a_case = Flaschen im Karton, um Kartons durch Tippen zu zählen
floor-view-each_bottle_full = Jede Flasche { $low } % voll{ $high }, { $words }.{ " " }
floor-view-or_more = { " " }oder mehr
floor-view-to_2 = { " " }bis { $high }
floor-view-strength_to_for_a = Gehalt { $low } bis { $high } bei Etikett { $label_pct }.
floor-view-by_the_cases = { $so_far } nach den Kartons
floor-view-empty_bottle_with_closure = Leere Flasche mit Verschluss, g
floor-view-bottle_full_g = Flasche { $n }, voll, g
floor-view-one_more_bottle = Noch eine Flasche
floor-view-labels_and_closures_right = Etiketten, Verschlüsse richtig
floor-view-yes = ja
floor-view-no = nein
floor-view-fill_by_hand_bottle = Füllung von Hand, Flaschengröße, was getan wurde
floor-view-bottle_size = Flaschengröße
floor-view-l = L
floor-view-done_if_wrong = Getan, wenn falsch
floor-view-g = g
floor-view-full = { $mean } % voll
floor-view-on_average_of = im Mittel von { $fills }: { $fill }. { $words }
floor-view-which_tank_runs_to = Welcher Tank läuft zur Linie?
floor-view-no_tank_has_spirit = Soweit dieses Telefon weiß, ist in keinem Tank Brand. Zuerst den Abfülltank messen.
floor-casks-casks = Fässer
floor-casks-cask_is = Fass ist
floor-casks-now = jetzt.
floor-card-tasted_of_10 = Verkostet { $tasted_at }: { $score } von 10.
floor-card-gauges_of_this_fill = Messungen dieser Belegung
floor-card-casks_like_it = { $count } ähnliche Fässer
floor-card-such_a_size = solche Größe
floor-card-a_year = % im Jahr
floor-card-lost_of_its_pure = { $name } verlor { $share } % seines reinen Alkohols im Jahr; { $like } verlieren { $low } bis { $high }.
floor-dial-of = { $words } von { $high }
floor-due-closed_the_still_is = Beendet: wartet auf das Brenngerät.
floor-due-ended_close_it_and = Zu Ende: beenden und das Brenngerät einplanen.
floor-due-not_read_since_it = Seit der Füllung nicht abgelesen.
floor-due-casks_to_regauge = Fässer nachzumessen
floor-due-never_gauged_in_this = In dieser Belegung nie gemessen.
floor-due-casks_to_sample = Fässer zu beproben
floor-due-never_sampled = Nie beprobt.
floor-due-casks_to_taste = Fässer zu verkosten
floor-due-never_tasted = Nie verkostet.
floor-due-last = Zuletzt { $last }.
floor-due-every_months = { $title }, alle { $months } Monate
floor-due-check_due =
    { $title }: Prüfung { $late ->
        [yes] war fällig
       *[no] fällig
    } { $date }.
floor-due-instruments = Messgeräte
floor-due-by_law = Laut Gesetz
floor-due-the_three_reports_for = Die drei Meldungen für { $month } sind bis zum 15. fällig.
floor-due-the_quarter_ends_count = Das Vierteljahr endet: die Lagertanks zählen.
floor-due-count_of_bottled_stock = Zählung der Flaschenware; das Amt erfährt es fünf Werktage vorher.
floor-round-of = { $done } von { $cards }
floor-round-of_done = { $done } von { $cards } erledigt
floor-round-another_of_round =
    Noch { $noun ->
        [tank] ein Tank
       *[cask] ein Fass
    }
floor-round-place = Platz
floor-round-begin_a_new_round = Neue Runde beginnen
floor-round-logged_another_reading_stands = Eingetragen { $last }. Eine weitere Ablesung kommt daneben.
floor-round-log_it_next = Eintragen, weiter
floor-round-next_of_round =
    { $noun ->
        [tank] Nächster Tank
       *[cask] Nächstes Fass
    }
floor-round-is_not_on_this = { $mark } ist nicht in dieser Runde: { $sort }.
floor-round-it_is_a = Art: { $sort }
floor-round-it_holds_nothing_as = es enthält nichts, soweit das Buch weiß
floor-round-this_phone_knows_no = Dieses Telefon kennt kein { $mark }. Auf eigener Seite eintippen, wenn das Telefon Netz hatte.
floor-round-all_done =
    Alle { $count } { $noun ->
        [tank] Tanks
       *[cask] Fässer
    } sind erledigt.
floor-round-none_to_go_to =
    Keine { $noun ->
        [tank] Tanks
       *[cask] Fässer
    } anzugehen: soweit dieses Telefon weiß, enthält keines etwas.
floor-says-ended_three_equal_gravities = Zu Ende: dreimal dieselbe Dichte seit { $day }. Das Brenngerät einplanen.
floor-says-not_moving_and_not = Steht still und ist nicht fertig. Temperatur, Säure und Hefenährstoff ansehen.
floor-says-it_has_hardly_begun = Sie hat kaum zu fallen begonnen: noch kein Tag.
floor-says-no_day_yet_it = Noch kein Tag: es braucht vier Ablesungen.
floor-says-to = { " " }({ $low } bis { $high })
floor-says-ends_about_near_three = Endet etwa { $day }{ $span }, nahe { $end_gravity }. Dreimal dieselbe Dichte entscheidet.
floor-says-much_at_a_usual = Viel, bei üblichem Gehalt: ein Leck? Reifen, Böden, Spund und Fußboden ansehen.
floor-says-the_weight_is_usual = Gewicht üblich, Gehalt auffällig. Die Spindel noch einmal ablesen.
floor-says-weight_and_strength_are = Gewicht und Gehalt sind auffällig. Ist es das richtige Fass?
floor-says-a_cask_cannot_gain = Ein Fass kann nicht gewinnen. Noch einmal wiegen und ablesen.
floor-says-to_2 = { $low } bis { $high }
floor-says-casks_like_it_compared = ähnliche Fässer { $span } ({ $count } verglichen)
floor-says-such_a_size = solche Größe { $span }
floor-says-first_gauge_of_this = Erste Messung dieser Belegung, oder zu früh für eine Rate; { $like } % im Jahr.
floor-says-a_year = im Jahr; { $like }.
floor-says-a_year_2 = im Jahr; { $like }. { $words }
floor-tasting-fruit = Frucht
floor-tasting-stone = Stein
floor-tasting-almond = Mandel
floor-tasting-blossom = Blüte
floor-tasting-spice = Würze
floor-tasting-green = grün
floor-tasting-sharp = scharf
floor-tasting-glue = Klebstoff
floor-tasting-smoke = Rauch
floor-tasting-dust = Staub
floor-tasting-words_of_the_house = Worte des Hauses
floor-tasting-words_to_tap = Worte zum Antippen
floor-tasting-take_off = { $name } wegnehmen
floor-tasting-take_off_2 = wegnehmen
floor-tasting-may_stay_empty = darf leer bleiben
floor-tasting-log = Eintragen: { $words }
floor-duelist-rounds = Runden
floor-duelist-taste = Verkosten
floor-ferments-mash = Maische
floor-ferments-last_read = Zuletzt abgelesen { $last }.
floor-ferments-not_read_yet = Noch nicht abgelesen.
floor-counter-one_more = Eins mehr
floor-counter-10_ten_more = +10, zehn mehr
floor-counter-count = zählen
floor-counter-keys = Tasten
floor-dress-or_type_it = oder eintippen
floor-dress-of_to = von { $case_from } bis { $case_to }
floor-dress-from = { $cases } ab { $dressed }
floor-dress-to = { $from } bis { $to }
floor-dress-to_stand = bis { $to } stehen da
floor-dress-follows_the_last = folgt auf den letzten
floor-dress-as_before = wie zuvor
floor-dress-of = { $cases } zu { $per_case }
floor-dress-by_the_cases_of = nach den Kartons der Linie
floor-dress-vessels = { $count } Gefäße
floor-dress-as_the_book_has = wie das Buch es hat
floor-dress-more_than_there_are = ; { $left } mehr, als es gibt
floor-dress-left = ; { $per_case } übrig
floor-round-bottled_goods = Flaschenware
floor-round-elsewhere = anderswo
floor-round-of_done_2 = { $done } von { $items } erledigt
floor-round-none = Keine
floor-round-empty = Leer
floor-round-what_says_it_on = Was steht darauf?
floor-round-type_what_it_says = Eintippen, was darauf steht.
floor-round-next_vessel = Nächstes Gefäß
floor-round-this_round_has_no = In dieser Runde gibt es kein { $mark }. Wenn es gar nicht im Buch ist, das unter „Anderes“ sagen.
floor-round-left = { $open } übrig
floor-round-all_done_2 = alles erledigt
floor-round-type_who_counted_name = Eintippen, wer zählte, Name und Stellung.
floor-round-counts_on_slate =
    { PLURAL($count) ->
        [one] { $count } Zählung
       *[other] { $count } Zählungen
    } auf der Tafel.
floor-roundview-where = Wo
floor-roundview-one_place_after_another = Ein Platz nach dem anderen. Was das Buch erwartet, wird nicht gesagt; die Differenzen stehen am Ende, und Sie unterschreiben, was Sie gezählt haben.
floor-roundview-nothing_to_count_as = Soweit dieses Telefon weiß, ist nichts zu zählen: kein Tank, Fass oder keine Flasche ist auf seinen Karten.
floor-roundview-of_counted = { $done } von { $items } gezählt
floor-roundview-left = { $done } übrig
floor-roundview-another_or_the_end = Anderes, oder das Ende
floor-roundview-in_this_round = In dieser Runde
floor-roundview-to_the_differences = Zu den Differenzen
floor-roundview-cask = Fass
floor-roundview-it_should_stand_at = Soll stehen an
floor-roundview-the_book_has = Das Buch hat
floor-roundview-no_place = keinen Platz
floor-roundview-for_it = dafür
floor-roundview-it_stands_elsewhere = Steht anderswo
floor-roundview-type_the_place = Platz eintippen
floor-roundview-place_as_its_label = Platz, wie sein Etikett sagt
floor-roundview-not_here = Nicht hier
floor-roundview-it_is_here = Es ist hier
floor-roundview-count = Zählen
floor-roundview-by_weight_or_corrected = Nach Gewicht, oder berichtigt
floor-roundview-and_a_remark = und eine Bemerkung
floor-roundview-counted_next = Gezählt, weiter
floor-roundview-what_it_says_on = Was darauf steht
floor-roundview-where_it_stands = Wo es steht
floor-roundview-differences = Differenzen
floor-roundview-differences_from_the_book = Differenzen zum Buch
floor-roundview-as_the_book_has = Wie das Buch es hat
floor-roundview-not_counted = Nicht gezählt
floor-roundview-sign = Unterschreiben
floor-roundview-counted_by_name_and = Gezählt von, Name und Stellung
floor-roundview-each_count_goes_into = { $lead }Jede Zählung geht ins Buch, wie sie abgelesen wurde, zu ihrer Minute. Eine Differenz bleibt dort eine Frage, bis jemand sie beantwortet.
floor-roundview-signed_under_penalties_of = Unterschrieben unter Strafandrohung bei Falschaussage: wahr, richtig und vollständig, soweit ich weiß (27 CFR 19.45, 19.623; den heutigen Text ansehen).{ " " }
floor-roundview-nothing_is_counted_yet = Noch nichts gezählt.
floor-roundview-another_place = Anderer Platz
floor-roundview-go_on_counting = Weiterzählen
floor-roundview-sign_and_log =
    Unterschreiben, { PLURAL($count) ->
        [one] die Zählung
       *[other] { $count } Zählungen
    } eintragen
floor-roundview-count_again = Noch einmal zählen
floor-roundview-nothing_where_it_should = Nichts, wo es sein sollte. Sofort suchen; sagen, wem es gesagt werden muss.
floor-roundview-not_in_the_book = nicht im Buch
floor-roundview-at = { $litres } mit { $strength_pct }
floor-roundview-at_2 = an { $place }
floor-roundview-here = hier
floor-roundview-book = Buch { $bottles }
floor-roundview-book_2 = Buch { $place }{ $lpa_l }
floor-roundview-book_3 = Buch { $litres }{ $strength_pct }
floor-roundview-at_3 = { $litres } mit{ " " }
floor-roundview-book_empty = Buch leer
floor-stock-loose = { $loose } einzeln
floor-stock-none_left = keine übrig
floor-aloud-degrees = Grad
floor-aloud-degrees_fahrenheit = Grad Fahrenheit
floor-aloud-percent = Prozent
floor-aloud-litres = Liter
floor-aloud-kilos = Kilo
floor-aloud-grams = Gramm
floor-aloud-brix = Brix
floor-aloud-gallons = Gallonen
floor-aloud-pounds = Pfund
floor-aloud-minus = minus{ " " }
floor-gloves-more_fields =
    { PLURAL($count) ->
        [one] { $count } weiteres Feld
       *[other] { $count } weitere Felder
    }
floor-listening-the_microphone_is_not = Das Mikrofon ist hier nicht erlaubt. In den Einstellungen des Browsers für diese Seite erlauben, oder eintippen.
floor-listening-no_figure_was_heard = Keine Zahl gehört. Noch einmal sagen oder eintippen.
floor-listening-heard_no_figure_say = Gehört „{ $heard }“: keine Zahl. Noch einmal sagen oder eintippen.
floor-listening-heard_but_this_box = Gehört „{ $heard }“, aber dieses Feld nimmt { $symbol }.
floor-listening-or = { " " }oder{ " " }
floor-settings-of_this_phone_alone = nur dieses Telefons
floor-settings-voice_and_ear_are = Stimme und Ohr sind die des Telefons: nichts Gesprochenes verlässt es.
floor-settings-its_icon_shows_how = Sein Symbol zeigt, wie viele Einträge warten, sobald es auf dem Startbildschirm ist.
floor-settings-what_waits_is_handed = Was wartet, wird auch bei geschlossener App übergeben, wenn ein Netz kommt.
floor-settings-gloves = Handschuhe
floor-settings-larger_keys_fewer_boxes = größere Tasten, weniger Felder
floor-settings-buzz = Vibration
floor-settings-when_it_is_logged = beim Eintragen und bei einer Frage
floor-settings-read_aloud = Vorlesen
floor-settings-figures_just_typed_and = eben getippte Zahlen und Fragen
floor-settings-gravity_1_031 = Relative Dichte: 1,031
floor-settings-speak_figures = Zahlen sprechen
floor-settings-into_the_box_your = ins Feld; das Antippen trägt sie ein
floor-settings-fetch_the_language_for = Sprache dafür holen
floor-settings-it_is_on_this = Sie ist jetzt auf diesem Telefon.
floor-settings-it_could_not_be = Ließ sich nicht holen. Mit Netz erneut versuchen.
floor-note-cap_pushed_down = Hut untergestoßen.
floor-note-cooling_is_on = Kühlung läuft.
floor-note-smells_odd = Riecht seltsam.
floor-note-read_it_first = Zuerst ablesen.
floor-note-charged_not_heated = Gefüllt, nicht geheizt.
floor-note-rinse_it_first = Zuerst spülen.
floor-note-still_warm = Noch warm.
floor-note-receivers_are_empty = Vorlagen sind leer.
floor-note-weeps_a_little = Schwitzt ein wenig.
floor-note-bung_is_loose = Spund ist lose.
floor-note-do_not_move_it = Nicht bewegen.
floor-note-weigh_it_again = Noch einmal wiegen.
floor-note-it_rests_do_not = Es ruht. Nicht rühren.
floor-note-it_is_cloudy = Es ist trüb.
floor-note-valve_is_shut = Ventil ist zu.
floor-note-lid_is_off = Deckel ist ab.
floor-note-look_at_it_first = Zuerst ansehen.
floor-note-not_finished = Nicht fertig.
floor-note-cleaned = Gereinigt.
floor-note-out_of_order = Außer Betrieb.
floor-note-all_as_usual = Alles wie üblich.
floor-note-ready_words = Fertige Worte
floor-note-pin_it_to = An { $mark } heften
floor-note-leave_it_for_the = Für die nächste Schicht lassen
floor-note-from = Von { $name }.
floor-note-pinned_to = Geheftet an
floor-note-for_the_next_shift = Für die nächste Schicht
floor-note-it_stands_under_today = Steht unter Heute. { $from }
floor-note-pinned_to_2 = Geheftet an { $mark }
floor-note-whoever_opens_it_reads = Wer es öffnet, liest sie. { $from }
floor-note-there_already = Schon da
floor-note-pin_it_to_a = An ein Gefäß heften
floor-note-heard_by = vernommen von { $person }
floor-note-read_by = gelesen von { $person }
floor-note-look = Ansehen
floor-note-listen = Anhören
floor-note-heard = Gehört
floor-note-read = Gelesen
floor-note-voice_note = Sprachnotiz
floor-note-voice_note_seconds = Sprachnotiz, { $seconds } s
floor-note-notes_to_read = Notizen zu lesen
floor-note-read_them = Lesen
floor-note-notes = Notizen
floor-note-not_read_yet = Noch nicht gelesen
floor-note-all_read = Alle Notizen sind gelesen.
floor-note-have_been_read = Schon gelesen
floor-note-leave_a_note = Notiz hinterlassen
floor-note-no_microphone = Das Mikrofon ist nicht erlaubt. In den Einstellungen des Browsers erlauben oder die Notiz eintippen.
floor-note-speak_it = Sprechen
floor-note-stop = Stopp, { $seconds } s
floor-note-recording = Aufnahme
floor-aim-target_as_its_label = Ziel: wie sein Etikett sagt.
floor-aim-target_as_aimed_at = Ziel: wie hier angestrebt, { $date }.
floor-aim-target_as_last_in = Ziel: wie zuletzt in { $name }, { $other }. Ansehen, ob es dieses Etikett ist.
floor-picture-in_the_tank_and = { $litres } im Tank und { $kg } Wasser ergeben { $dip20_l } mit { $strength_pct }: { $shrinks_l } weniger als die Summe.
floor-picture-at = { $dip20_l } mit { $strength_pct }
floor-picture-less_than_the_sum = { $shrinks_l } weniger als die Summe. Kein Verlust.
floor-picture-of_water = { $kg } Wasser
floor-picture-by_the_can_at = { $can_l } mit der Kanne bei { $water_temp_c }
floor-picture-in_the_tank = { $litres } im Tank
floor-picture-it_takes = Er fasst { $most }.
floor-picture-would_be_too_much = { $over } wären zu viel: zuerst etwas umfüllen.
floor-picture-about_mixed = etwa { $figure } gemischt
floor-picture-water = Wasser
floor-picture-spirit = Brand
floor-picture-water_at_spirit_at = Wasser { $water_temp_c }, Brand { $temp_c }, gemischt etwa { $figure } { $unit }, { $off } bis { $off_2 }; ohne Mischungswärme { $calm }.
floor-picture-target = { $target_pct } Ziel
floor-picture-sum = Rechnung { $sum_pct }
floor-picture-read = abgelesen { $read_pct }
floor-picture-target_by_the_sum = Ziel { $target_pct }, nach der Rechnung { $sum_pct }, abgelesen { $read_pct } { $unit }.
floor-reduce-target = Ziel
floor-reduce-spirit_is_at = Brand hat
floor-reduce-water_is_at = Wasser hat
floor-reduce-with_what_waits_here = , mit dem, was hier wartet
floor-reduce-reduce = Herabsetzen
floor-reduce-how_much_water = wie viel Wasser
floor-reduce-measured = Gemessen
floor-reduce-are_in = { $plan } sind drin
floor-reduce-water_in = Wasser drin
floor-view-what_it_should_be = Was es werden soll
floor-view-a_tenth_less = Ein Zehntel weniger
floor-view-a_tenth_more = Ein Zehntel mehr
floor-view-in_goes = Hinein in
floor-view-or_the_plain_form = oder das einfache Blatt
floor-view-in_how_many_goes = In wie vielen Gaben
floor-view-the_plain_form = Das einfache Blatt
floor-view-type_the_strength_it = Den gewünschten Gehalt eintippen.
floor-view-at = bei { $temp_c }
floor-view-of_water = { $unit } Wasser
floor-view-for = ± { $doubt_kg } für ± { $at }
floor-view-what_the_tank_should = Was der Tank dann zeigen soll
floor-view-dip = Peilung, { $unit }
floor-view-as_wanted_no_water = Wie gewünscht: kein Wasser nötig.
floor-view-pour = Eingießen: { $plan }{ $rest }
floor-view-first = { " " }zuerst.
floor-view-stir_let_it_stand = Rühren, stehen lassen, bis es nicht mehr wärmer wird, ablesen{ $rest }. Ein { $unit } sind { $per } { $one }.
floor-view-once_more = { " " }noch einmal
floor-view-then_the_rest = , dann der Rest
floor-view-planned_by = Geplant von { $person }, { $planned }: { $name }, { $target_pct }{ $water }.
floor-view-with_of_water = { " " }mit { $water_kg } Wasser
floor-view-step_by_step = Schritt für Schritt
floor-view-then_rest = { $water_kg }, dann Ruhe
floor-view-mixing_warms_it_by = Mischen erwärmt um etwa { $warms_c } { $unit }. Abkühlen und ruhen lassen, mindestens einen Tag, vor Spindel und Peilung.
floor-view-it_may_cloud_at = Bei diesem Gehalt kann es trüben, je kälter, desto mehr. Langsam, ruhen lassen, und wenn nötig kalt filtrieren.
floor-view-a_long_way_down = Ein weiter Weg auf einmal. Zwei oder drei Gaben mit Ruhe dazwischen trüben weniger.
floor-view-water_went_in = Wasser kam dazu
floor-view-measured_after_the_rest = Nach der Ruhe gemessen
floor-view-another_minute_a_remark = andere Minute, eine Bemerkung
floor-view-points = { $off_pct } Prozentpunkte
floor-view-as_wanted = Wie gewünscht.
floor-view-too_weak_spirit_has = { $off } zu schwach. Brand muss hinein; Wasser kommt nicht heraus.
floor-view-too_strong_of_water = { $off } zu stark: noch { $trim_kg } Wasser.
floor-view-the_dip_agrees_with = Die Peilung stimmt mit der Rechnung.
floor-view-dip_off_sum =
    Die Peilung liegt { $litres } { $side ->
        [under] unter
       *[over] über
    } der Rechnung: noch einmal ansehen.
floor-view-true = { $measured_pct } wirklich.
floor-view-which_tank = Welcher Tank?
floor-view-no_tank_has_spirit_2 = Soweit dieses Telefon weiß, ist in keinem Tank Brand. Zuerst den Tank messen.
floor-after-after_the_run = Nach dem Brand
floor-after-this_phone_knows_no = Dieses Telefon kennt keinen beendeten Brand dieses Geräts.
floor-after-the_balance_comes_when = Die Bilanz kommt, wenn Mittellauf oder Lutter gemessen ist.
floor-after-balance = Bilanz
floor-after-from_100 = { $amount } aus 100 { $unit }
floor-after-less_than_60_of = Weniger als 60 % des Ausbeutesatzes: Obst, Gärung und Bilanz ansehen.
floor-after-more_than_one_and = Mehr als das Anderthalbfache des Ausbeutesatzes: Gewichte und Messungen ansehen.
floor-after-yield = Ausbeute
floor-after-of_wash_of_fruit = , { $per_100_l } der Maische; { $kg } Obst nach seinem Anteil am Ansatz.
floor-after-official_flat_rate_for = Amtlicher Ausbeutesatz für { $name }, aus 100 L Maische: { $de_l } L in Deutschland{ $austria }. Ausbeutesätze sind sichere Mittel, keine Ziele.
floor-after-in_austria = , { $at_l } in Österreich
floor-after-charged = Eingefüllt, { $sign }
floor-after-hearts = Mittellauf, { $sign }
floor-after-hearts_share = Anteil des Mittellaufs
floor-after-hearts_cut_at = Mittellauf bis, { $unit }
floor-after-took = Dauer
floor-after-from_100_2 = Aus 100 { $unit }, { $sign }
floor-after-beside_the_runs_before = Neben den Bränden zuvor
floor-after-runs_side_by_side = Brände nebeneinander
floor-after-best_run = Bester Brand
floor-after-marked_as_the_best = Als bester Brand bezeichnet: { $what }
floor-after-by = von { $person }, { $best }{ $waiting }{ $why }.
floor-after-best_run_2 = Bester Brand?
floor-after-best_of_so_far = Bester bisher, { $what }: { $name }{ $why }.
floor-after-no_run_of_is = Noch kein Brand bezeichnet: { $what }.
floor-after-later_runs_are_drawn = Spätere Brände werden über den besten gezeichnet.
floor-after-why = Warum
floor-after-mark_this_run_as = Als besten bezeichnen
floor-balance-heads = Vorlauf
floor-balance-stillage = Schlempe
floor-balance-not_accounted_for = { $open } ({ $share }) nicht erklärt
floor-balance-more_than_went_in = { $open } ({ $share }) mehr, als hineinging
floor-balance-in_out_usual_is = Ein { $charged }, aus { $open }: { $rest }.{ $stillage_pct } Üblich sind 0,5 bis 2 %.
floor-balance-stillage_was_not_read = { " " }Schlempe nicht abgelesen: angesetzt mit { $stillage_pct }.
floor-balance-in = ein { $charged }
floor-balance-out = aus { $open }
floor-balance-pure_alcohol_of_the = Reiner Alkohol des Brands
floor-changes-that_could_not_be = Das ließ sich nicht behalten. Als anderes Ereignis eintragen.
floor-curve-true_strength_over_pure = Wirklicher Gehalt über aufgefangenem reinem Alkohol
floor-curve-l_pure_alcohol = L reiner Alkohol
floor-curve-vapour_temperature_against_strength = Dampftemperatur gegen Gehalt{ $name }
floor-curve-vapour_c = Dampf °C
floor-curve-usual_for_this_still = auf diesem Gerät üblich
floor-curve-usual = üblich
floor-cutparts-i_switched_earlier = Ich habe früher umgestellt
floor-cutparts-why_it_is_logged = Warum erst jetzt eingetragen
floor-cutparts-hands_full = Hände voll
floor-cutparts-both_times_and_the = Beide Zeiten und der Grund bleiben lesbar.
floor-cutparts-switched_logged = umgestellt { $at }, eingetragen { $at_2 }
floor-cutparts-receiver_now_open = Jetzt offene Vorlage
floor-cutparts-another_receiver = Andere Vorlage
floor-cutparts-by_its_mark = mit ihrer Kennung
floor-cutparts-mark = Kennung
floor-cutparts-a_label_at_the = Ein Etikett an der Vorlage wird außerhalb der Linie gescannt, oder die Kennung getippt.
floor-due-part_to =
    { $part ->
        [hearts] Mittellauf
        [tails] Nachlauf
        [low_wines] Lutter
       *[heads] Vorlauf
    } bis { $strength }
floor-due-part_to_last_time =
    { $part ->
        [hearts] Mittellauf
        [tails] Nachlauf
        [low_wines] Lutter
       *[heads] Vorlauf
    } beim letzten Mal bis { $strength }
floor-due-the_sums_for_it = Die Rechnungen dafür kommen auf dieses Telefon, sobald es das Buch erreicht.
floor-due-read_the_flow_with = Den Durchfluss mit Krug und Uhr ablesen, dann sagt es, wann.
floor-due-by_flow_times_minutes = { $litres } nach Durchfluss mal Minuten.
floor-due-by_the_plan = { $words }, nach dem Plan
floor-due-next_cut = Nächste Abtrennung
floor-due-is_reached = { $words }: { $by } ist erreicht.
floor-due-nose_first = { $words } Zuerst die Nase.
floor-due-about = { $words } { $near }etwa { $minutes }
floor-due-is_near = ist nahe:{ " " }
floor-due-to = , { $low } bis { $high }
floor-due-off_in_all_to = { $litres } insgesamt, { $low } bis { $high }
floor-due-without_earlier_runs = , ohne frühere Brände
floor-due-then_together = ; { $part } dann zusammen { $strength_average_pct }
floor-due-strength_alone_the_nose = Nur nach dem Gehalt; die Nase entscheidet.
floor-due-on_earlier_runs_of = Bei früheren Bränden dieses Geräts trafen { $kept } von { $tried } solcher Vorhersagen.
floor-due-was_expected_about = { $words } war etwa { $at } erwartet.
floor-due-last_read = Zuletzt abgelesen { $at }.
floor-due-read_now_nose_first = Jetzt ablesen; zuerst die Nase.
floor-due-no_flow_and_no = Noch kein Durchfluss, keine Peilung: mit einem davon zählt das Blatt, was abgelaufen ist.
floor-due-so_far = { $part } bisher { $litres }
floor-due-at_together = mit { $strength } zusammen
floor-due-to_by_off_in = bis { $until }, nach { $by }; { $litres } insgesamt
floor-due-flow_times_minutes = Durchfluss mal Minuten
floor-due-dips = Peilungen
floor-due-dip_of_flow_times = Peilung von { $at }: { $got }; Durchfluss mal Minuten { $flowed }
floor-due-they_agree = { $both }. Sie stimmen überein.
floor-due-less_or_more_in_receiver =
    { $both }: { $off } % { $side ->
        [less] weniger
       *[more] mehr
    } in der Vorlage, wo { $most } % sein dürfen. Ist eine andere Vorlage offen, oder wurde eine Abtrennung spät eingetragen?
floor-far-large = Groß
floor-far-for_two_metres = für zwei Meter
floor-far-the_run_at_arms = Der Brand auf Armlänge
floor-far-close = Schließen
floor-far-true = { $sign } wirklich
floor-far-no_strength_yet = noch kein Gehalt
floor-far-ago = , vor { $last }
floor-far-next_reading = nächste Ablesung { $at }, { $at_2 }
floor-far-any_minute = jede Minute
floor-far-reached = erreicht
floor-far-expected_before_now = früher erwartet
floor-far-turn_to = umstellen auf { $to }
floor-far-the_end = das Ende
floor-far-in = { $what } in
floor-far-any = jede
floor-far-minute = Minute
floor-far-no_plan_and_no = Kein Plan und kein voriger Brand: die Nase sagt, wann.
floor-far-is_reached = { $words } ist erreicht
floor-far-was_expected = war erwartet { $at }
floor-far-between_and = zwischen { $low } und { $high }
floor-far-open_to = offen, { $low } bis { $high }
floor-far-of_about = { $litres } von etwa { $all }
floor-far-without_earlier_runs = ohne frühere Brände
floor-jug-in_s = { $jug } in { $took } s
floor-jug-the_jug_holds = Der Krug fasst
floor-jug-full = Voll { $seconds }
floor-jug-start_the_watch = Uhr starten
floor-jug-jug_and_watch = Krug und Uhr
floor-second-spirit_runs_at_above = Der Brand läuft mit { $temp }, über { $warm_c }. Jetzt mehr Kühlwasser und weniger Feuer, bis er kühl läuft: warmer Brand gibt Dampf ab, der brennt.
floor-second-true_is_above_of = Wirklich { $at } liegt über { $true_strength } von { $last }. Nach dem Vorlauf fällt er nur, außer Böden oder Wasser wurden geändert.
floor-second-vapour_and_spirit_of = Dampf { $vapour } und Brand von { $at } passen nicht zusammen: bei diesem Gehalt sind auf diesem Gerät etwa { $wanted } üblich. Beide ansehen.
floor-sheet-by_alcohol = Nach Alkohol
floor-sheet-by_time = Nach Zeit
floor-sheet-vapour = Dampf
floor-sheet-the_curve_is_drawn = Die Kurve wird gezeichnet
floor-sheet-on_after_a_tap = ein, nach einem Antippen
floor-sheet-plan = Plan:
floor-sheet-no_cut_plan_for = Noch kein Abtrennplan für { $what } auf diesem Gerät.
floor-sheet-this_fruit = dieses Obst
floor-sheet-change_the_plan = Plan ändern
floor-sheet-make_a_plan = Plan machen
floor-sheet-sound_near_a_cut = Ton vor einer Abtrennung
floor-sheet-hearts_to = Mittellauf bis { $hearts_to_pct }
floor-sheet-tails_to = Nachlauf bis { $tails_to_pct }
floor-sheet-for_on_this_still = Für { $what }, auf diesem Gerät. Die Nase entscheidet; der Plan erinnert.
floor-sheet-the_fruit_named_below = das unten genannte Obst
floor-hands-who_logs = Wer einträgt
floor-hands-other = Andere
floor-hands-take_it = Übernehmen
floor-pane-vessels = Gefäße
floor-places-stands_here = steht hier
floor-places-and_more = und { $others } weitere
floor-places-free = frei
floor-tasting-set_of = Satz { $set_no } von { $mine }
floor-tasting-your_answer_is_on = Ihre Antwort ist auf der Tafel.
floor-tasting-set = { $name }, Satz { $set_no }
floor-view-which_is_the_odd = Welches weicht ab?
floor-view-two_of_the_three = Zwei der drei sind gleich.
floor-view-the_odd_one = das abweichende
floor-view-which_is_the_same = Welches ist wie R?
floor-view-r_stands_open_beside = R steht offen neben den beiden.
floor-view-the_same_as_r = wie R
floor-view-which_has_more_of = Welches hat mehr davon?
floor-view-this_one = dieses
floor-view-tap_them_in_order = Der Reihe nach antippen, das erste zuerst.
floor-view-tap_again_to_take = Noch einmal antippen nimmt eines heraus.
floor-view-guessing = geraten
floor-view-fairly = ziemlich
floor-view-quite = sehr
floor-view-nose = Nase
floor-view-mouth = Mund
floor-view-finish = Abgang
floor-view-hotter = brennender
floor-view-wood = Holz
floor-view-softer = weicher
floor-view-nose_first_a_small = Zuerst die Nase, ein kleiner Schluck, und ausspucken. Wasser dazwischen. Höchstens vier Sätze, dann Pause; danach fährt niemand und arbeitet niemand am Brenngerät.
floor-view-place = Platz { $code }
floor-view-taste_left_to_right = { $how } Von links nach rechts verkosten, Wasser dazwischen. Zurückgehen ist erlaubt. Auch Raten ist eine Antwort.
floor-view-glasses_left_to_right = Gläser, von links nach rechts
floor-view-how_sure = Wie sicher?
floor-view-what_gave_it_away = Woran erkannt? (freiwillig)
floor-view-the_codes_are_drawn = Die Codes werden für jeden Verkoster neu gezogen. Dieses Telefon weiß nicht, was sie bedeuten.
floor-view-of_in_order = { $order } von { $codes } gereiht
floor-view-name_a_glass = Ein Glas nennen
floor-view-log = Eintragen: { $order }
floor-view-is = { $picked } ist { $named }
floor-view-which_tasting_stands_before = Welche Verkostung steht vor Ihnen?
floor-view-all_your_sets_are = Alle Ihre Sätze sind beantwortet. Nichts darüber sagen, bis im Büro geöffnet wird.
floor-view-no_glasses_wait_for = Keine Gläser warten auf Sie. Eine Verkostung wird im Büro angelegt; ihre Codes kommen mit den nächsten Karten.
floor-ring-set_for = { $at }: gestellt auf { $at_2 }.
floor-ring-set_for_2 = Gestellt auf { $at }.
floor-ring-set_for_3 = gestellt auf { $at }{ $more }
floor-ring-more = { " " }· { $due } weitere
floor-ring-read = Ablesen
floor-ring-min_more = noch { $minutes } min
floor-ring-drop_the_reminder = Erinnerung weglassen
floor-ring-drop = Weglassen
floor-show-next = Nächste
floor-show-reading = Ablesung
floor-show-remind_me = Erinnern
floor-show-next_reading = nächste Ablesung
floor-show-reminders = Erinnerungen
floor-show-due = fällig
floor-show-when_is_to_be = Wann ist { $name } abzulesen?
floor-show-set_for = Gestellt auf
floor-show-min_after_each_reading = ; { $minutes } min nach jeder Ablesung
floor-show-at = Um
floor-show-set_it = Stellen
floor-show-minutes_begin_anew_with = Die Minuten beginnen mit jeder Ablesung neu.{ " " }
floor-show-no_reminder = Keine Erinnerung
floor-show-rings_while_cellarslate_is = Läutet, solange Cellarslate auf diesem Telefon offen ist.
floor-show-rings_while_cellarslate_is_2 = Läutet, solange Cellarslate offen ist; hinter anderen Apps zeigt das Telefon eine Meldung.
floor-show-rings_while_cellarslate_is_3 = Läutet, solange Cellarslate offen ist. Das Telefon fragt, ob es auch eine Meldung zeigen darf.
floor-times-in_h = In { $hour } h
floor-times-this_evening = Heute Abend
floor-times-late_this_evening = Spät heute Abend
floor-times-tomorrow_morning = Morgen früh
floor-times-in = in { $span }
floor-times-due_now = jetzt fällig
floor-times-over = { $left } überfällig
floor-times-yesterday = gestern{ " " }
floor-times-tomorrow = morgen{ " " }
floor-times-next_reading = Nächste Ablesung{ $name }
floor-times-of = { " " }von { $name }
floor-stand-as_it_stands = Wie es steht
floor-stand-pure_alcohol = Reiner Alkohol
floor-stand-as_of = Stand { $date }
floor-stand-with_what_waits_here = mit dem, was hier wartet
floor-stand-how_full_is_not = wie voll, ist nicht bekannt
floor-stand-of_full = { " " }von { $capacity_l }, { $capacity_l_2 } % voll
floor-stand-between_and = , zwischen { $low } und { $high }
floor-stand-about = etwa{ " " }
floor-stand-empty_by_the_book = Leer, nach dem Buch.
floor-stand-takes = Fasst { $capacity_l }.
floor-stand-of = { $about }{ $litres } von { $capacity_l }{ $since }
floor-stand-to = { $about }{ $low } bis { $high }, { $about_2 }
floor-stand-now = jetzt{ " " }
floor-stand-by_its_weight = nach seinem Gewicht
floor-stand-fill_to_at_most = höchstens bis { $working_l } füllen
floor-stand-so_far_from_gravity = bisher { $so_far }, aus der Dichte
floor-stand-goes_down_to = sinkt auf { $target }
floor-stand-filled = gefüllt { $since }{ $use }
floor-stand-gravity = Dichte
floor-stand-end = Ende
floor-stand-save_its_label = Etikett speichern
floor-stand-pure_alcohol_gauge_by = Reiner Alkohol, Messung für Messung
floor-camera-the_camera_works_only = Die Kamera geht nur über https. Das Buch mit seiner https-Adresse öffnen oder die Kennung eintippen.
floor-camera-this_browser_offers_no = Dieser Browser bietet keine Kamera. Die Kennung eintippen.
floor-camera-no_camera_was_found = Keine Kamera gefunden. Die Kennung eintippen.
floor-camera-the_camera_is_not = Die Kamera ist hier nicht erlaubt. In den Einstellungen des Browsers für diese Seite erlauben oder die Kennung eintippen.
floor-camera-another_app_is_using = Eine andere App nutzt die Kamera. Schließen und erneut versuchen, oder die Kennung eintippen.
floor-camera-the_camera_stopped_because = Die Kamera hielt an, weil die Seite verdeckt war. Scannen antippen, um neu zu beginnen.
floor-camera-the_camera_stopped_tap = Die Kamera hielt an. Scannen antippen, um neu zu beginnen, oder die Kennung eintippen.
floor-camera-the_camera_did_not = Die Kamera ging nicht an. Erneut versuchen oder die Kennung eintippen.
floor-decoder-the_label_reader_is = Der Etikettenleser ist noch nicht auf diesem Telefon. Die Kennung eintippen, oder einmal mit Netz scannen.
floor-decoder-this_browser_cannot_look = Dieser Browser kann keine Bilder ansehen. Die Kennung eintippen.
floor-scanner-this_code_is_not = Dieser Code ist keiner von uns. Das Etikett am Gefäß scannen oder seine Kennung eintippen.
floor-scanner-several_marks_are_in = Mehrere Kennungen sind im Bild. Näher heran, bis nur eine zu sehen ist.
floor-scanner-hold_the_label_in = Das Etikett im Bild halten.
floor-scanner-nothing_found_yet_go = Noch nichts gefunden. Näher heran, das Telefon gegen Spiegelung neigen, oder die Kennung eintippen.
floor-phonekey-this_browser_keeps_no = Dieser Browser behält keinen Schlüssel, Einträge werden also nicht unterschrieben.
floor-unitlist-unit = Einheit
floor-view-case_word =
    { PLURAL($count) ->
        [one] Karton
       *[other] Kartons
    }
floor-bottles_of =
    { PLURAL($count) ->
        [one] { $count } Flasche
       *[other] { $count } Flaschen
    }
floor-cases_of =
    { PLURAL($count) ->
        [one] { $count } Karton
       *[other] { $count } Kartons
    }
floor-roundview-bottles_off =
    { PLURAL($count) ->
        [one] { $off } Flasche
       *[other] { $off } Flaschen
    }
floor-roundview-missing = fehlt
floor-roundview-elsewhere = anderswo
floor-round-counts =
    { PLURAL($count) ->
        [one] { $count } Zählung
       *[other] { $count } Zählungen
    }
floor-sets =
    { PLURAL($count) ->
        [one] { $count } Satz
       *[other] { $count } Sätze
    }
floor-balance-wash = Maische
floor-balance-feints = Vor-/Nachlauf
floor-balance-side_in = ein
floor-balance-side_out = aus
floor-forecast-no_charge = Zu wenig: die Füllung dieses Brands ist nicht eingetragen. Liter und Gehalt der Füllung eintragen.
floor-forecast-few_readings =
    Zu wenig: { $which ->
        [another] noch eine Ablesung
       *[first] die ersten Ablesungen
    } am Auslauf eintragen.
floor-forecast-no_flow = Zu wenig: den Durchfluss eintragen oder die Vorlage peilen.
floor-forecast-odd_readings = Zu wenig: die Ablesungen steigen und fallen. Den Auslauf noch einmal ablesen.
floor-forecast-far = Zu wenig: die Abtrennung ist noch weit. Eine weitere Ablesung hilft.
floor-forecast-wide = Zu wenig: es kann jederzeit binnen { $width } Minuten sein. Eine weitere Ablesung hilft.
floor-forecast-out_of_range = Keine Vorhersage bei { $target } % vol: sie reicht von { $low } bis { $high } % vol.
floor-forecast-past = Der Auslauf hat { $target } % vol unterschritten.
floor-counter-count_of = Zählung: { $label }
floor-listening-speak = Die Zahl sprechen
floor-lasttime-receivers = Vorlagen wie beim letzten Mal
floor-pane-people = Leute und Gefäße
floor-ring-reminder = Erinnerung
floor-file-save_it_again_on = Auf dem Telefon, von dem sie kam, noch einmal sichern oder noch einmal holen.
floor-file-this_file_is_too = Diese Datei ist zu groß für eine Tafel. Die Datei wählen, die Cellarslate gesichert hat.
floor-file-this_file_is_damaged = Diese Datei ist beschädigt: ihre Prüfsumme passt nicht. { $again }
floor-file-this_file_is_damaged_2 = Diese Datei ist beschädigt: sie bricht ab oder ist keine Tafel. { $again }
floor-file-this_file_is_no = Diese Datei ist keine Tafel. Eine namens cellarslate-slate-….json wählen.
floor-file-this_slate_was_saved = Diese Tafel sicherte ein neueres Cellarslate. Zuerst dieses Telefon aktualisieren.
floor-file-this_file_is_damaged_3 = Diese Datei ist beschädigt: Einträgen fehlen Teile. { $again }
floor-low_wines = Lutter
floor-enclosed-too_many = Ein Eintrag nimmt höchstens { $most } Bilder. Eintragen, dann die anderen zu einem weiteren legen.
floor-enclosed-with_this_entry = Bilder zu diesem Eintrag
floor-enclosed-picture_number = Bild { $number }
floor-enclosed-take_off = Wegnehmen: { $name }
floor-enclosed-keeping_it = Wird aufbewahrt
floor-enclosed-picture = Bild
floor-enclosed-pictures = Bilder
floor-enclosed-on_the_slate = Das Bild ist auf der Tafel.
floor-enclosed-open_the_paper = Papier öffnen
floor-enclosed-on_this_phone = { "." } Auf diesem Telefon; übergibt sich nach seinem Eintrag.
floor-enclosed-not_in_the_book = { "." } Nicht im Buch: { $words }
floor-enclosed-too_large = Dieses Bild ist größer als { $most } MB. In der üblichen Größe der Kamera neu aufnehmen.
floor-enclosed-no_picture = Dieses Telefon kann das nicht als Bild lesen. Neu aufnehmen, mit der Kamera.
floor-enclosed-waiting =
    { PLURAL($count) ->
        [one] { $count } Bild oder Sprachnotiz wartet
       *[other] { $count } Bilder und Sprachnotizen warten
    } hier. Sie gehen nach den Einträgen, Stück für Stück.
floor-enclosed-refused =
    { PLURAL($count) ->
        [one] { $count } Bild
       *[other] { $count } Bilder
    } kann das Buch nicht behalten; die Zeile öffnen, um zu sehen, warum.
floor-enclosed-not_reached = Das Buch ist von hier nicht zu erreichen.
floor-enclosed-no_room = Dieses Telefon ist fast voll, und der Rest bleibt für Einträge. Ohne Bild eintragen, oder zuerst übergeben und Platz schaffen.

### Only the desk reads what follows.

floor-manifest-description = Die Tafel der Brennerei, mit Netz und ohne.
floor-manifest-shot_today = Was heute fällig ist
floor-manifest-shot_run = Ein Brand, und wann abzutrennen ist
floor-manifest-shot_wide = Das Brennblatt auf einem Tablet
floor-manifest-scan = Etikett scannen
floor-manifest-due = Was fällig ist
floor-manifest-round = Ableserunde
floor-manifest-slate = Die Tafel
desk-languages-label = Sprache
desk-you-language = Sprache
desk-you-language-any = Wie Browser oder Haus
desk-you-language-keep = Behalten
desk-frame-floor = Betrieb
desk-frame-sign_out = Abmelden
desk-frame-to_its_doors = Zu seinen Türen
desk-frame-this_is_the_demo_nothing = Das ist die Vorführung: nichts hier ist echt. { $link }
desk-frame-name_a_folder_on_another = Einen Ordner auf einem anderen Datenträger nennen
desk-frame-this_book_has_no_backups = Dieses Buch hat noch keine Sicherungen. { $link }; dann kommen sie täglich von selbst.
desk-frame-the_book_goes_on_with = { $unjudged } Das Buch macht von selbst weiter; Übergaben müssen nicht warten.
desk-frame-other_rules_have_judged_the =
    Andere Regeln haben das Buch geprüft, und { $entries } { $entries ->
        [one] Eintrag fiel
       *[other] Einträge fielen
    } anders aus als zuvor. { $link }.
desk-common-look_at_it = Ansehen
desk-common-look_at_them = Ansehen
desk-common-reason = Grund
desk-common-amend = Berichtigen
desk-common-at = mit { $strength_pct }
desk-common-bottled = Abgefüllt
desk-common-blind_tastings = Blindverkostungen
desk-common-plan_a_vat = Verschnitt planen
desk-common-vat = Verschnitt
desk-common-by = Von / nach
desk-common-vessels = Gefäße
desk-common-batch = Ansatz
desk-common-last = Zuletzt
desk-common-state = Stand
desk-common-closed = geschlossen
desk-common-under_way = im Gang
desk-common-the_entry = Der Eintrag
desk-common-out_of = Aus
desk-common-not_yet = noch nicht
desk-common-water = Wasser
desk-common-spirit = Brand
desk-common-any = beliebig
desk-common-pure_alcohol = reiner Alkohol
desk-common-at2 = { $what } bei { $what2 }
desk-common-years = Jahre
desk-common-none = keine
desk-common-may = Darf
desk-common-vessel = Gefäß
desk-common-lot = Los
desk-common-place = Platz
desk-common-pure_alcohol_l = Reiner Alkohol, L
desk-common-proof_gal = Proof gal
desk-common-open = offen
desk-common-ended = beendet
desk-common-trace = Spur
desk-common-on_the_floor = Im Betrieb
desk-common-holds = enthält { $holding }
desk-common-answer = Antworten
desk-common-since = Seit
desk-common-to = { $percent } bis { $percent2 }
desk-common-on = Am
desk-common-show = Zeigen
desk-common-what = Was
desk-common-from = Von
desk-common-to2 = Bis / an
desk-common-when = Wann
desk-common-score = Punkte
desk-common-who = Wer
desk-common-casks = Fässer
desk-common-all = alle
desk-common-due = Fällig
desk-common-cask = Fass
desk-common-holds2 = Enthält
desk-common-loss_a_year = Verlust, % im Jahr
desk-common-not_known = nicht bekannt
desk-common-readings = Ablesungen
desk-common-print = Drucken
desk-common-at3 = an { $bold }
desk-common-read_at = Abgelesen um
desk-common-gravity = Dichte
desk-common-ferment = Gärung
desk-common-set = Satz
desk-common-read = Abgelesen
desk-common-ended2 = Beendet
desk-common-none_yet = Noch keine.
desk-common-keep = Behalten
desk-common-which_vessels = Welche Gefäße
desk-common-sort = Art
desk-common-and_more = und { $count } weitere
desk-common-none2 = Keine.
desk-common-remark = Bemerkung
desk-common-leave_it = Lassen
desk-common-entries = Einträge
desk-common-kind = Art
desk-common-book_no = Buch Nr.
desk-common-phone = Telefon
desk-common-asked = Gefragt
desk-common-or = oder
desk-common-right = richtig
desk-common-digest = Prüfwert
desk-common-proof_gal2 = Proof gal
desk-common-l_pure_alcohol = L reiner Alkohol
desk-common-litres_of_pure_alcohol = Liter reiner Alkohol
desk-common-proof_gallons = Proof Gallons
desk-common-what_happened = Was geschah
desk-common-cases = Kartons
desk-common-bottles = Flaschen
desk-common-document = Beleg
desk-common-to3 = bis { $case_to }
desk-common-bottling = Abfüllung
desk-common-odd = Rest { $odd_case }
desk-common-of_l = zu { $what } L
desk-common-bottled_goods = Flaschenware
desk-common-where_it_went = Wohin
desk-common-minute = Minute
desk-common-line = Linie
desk-common-closed2 = Geschlossen
desk-common-filled = Gefüllt
desk-common-all2 = Alle
desk-common-ranges = Bereiche
desk-common-access = Zugang
desk-common-more = Mehr
desk-common-how_phones_reach_this_book = Wie Telefone dieses Buch erreichen
desk-common-change = Ändern
desk-common-add = Hinzufügen
desk-common-entry = Eintrag
desk-common-new_instrument = Neues Messgerät
desk-common-instruments = Messgeräte
desk-common-number = Nummer
desk-common-description = Beschreibung
desk-common-limits_of_the_checks = Grenzen der Prüfungen
desk-common-every_limit_is_the_checks = Jede Grenze ist die der Prüfung selbst.
desk-common-customers_and_growers = Kunden und Lieferanten
desk-common-from_a_spreadsheet = Aus einer Tabelle
desk-common-name = Name
desk-common-people = Leute
desk-common-new_person = Neue Person
desk-common-phones = Telefone
desk-common-last_heard = Zuletzt gehört
desk-common-proof = Proof
desk-common-rules = Regeln
desk-common-laboratory = Labor
desk-common-log_a_certificate = Prüfbericht eintragen
desk-common-litres_of_pure_alcohol_at = Liter reiner Alkohol bei 20 °C
desk-common-account = Konto
desk-common-of_what_stood_at_its = ± dessen, was am Ende stand
desk-common-the_period = Der Zeitraum
desk-common-of_its_lines = ± seiner Zeilen
desk-common-period = Zeitraum
desk-common-as_now_known = Wie jetzt bekannt
desk-common-as_now_known2 = wie jetzt bekannt
desk-common-open_figures_may_still_change = Offen: Zahlen können sich noch ändern.
desk-common-periods = Zeiträume
desk-common-seasons = Brennsaisons
desk-common-records_the_law_asks_for = Aufzeichnungen nach dem Gesetz
desk-common-proof_gallons2 = Proof Gallons
desk-common-germany = Deutschland
desk-common-proof_gal_from_100_lb = Proof gal aus 100 lb
desk-common-not_accounted_for = Nicht erklärt
desk-common-runs = Brände
desk-common-yields = Ausbeuten
desk-common-feints = Vor-/Nachlauf
desk-common-fruit = Obst
desk-common-standing_now = Steht jetzt
desk-common-still = Brenngerät
desk-common-why = Warum
desk-common-n100_gal = 100 gal
desk-common-tasted_blind = Blind verkostet:
desk-common-in = In
desk-common-run = Brand
desk-common-rows = Zeilen
desk-common-mark = Kennung
desk-common-look_it_over = Durchsehen
desk-common-sheet = Blatt
desk-common-taken_back = zurückgenommen
desk-common-samples = Proben
desk-common-answers = Antworten
desk-common-what_was_found = Was gefunden wurde
desk-common-open_it = Öffnen
desk-common-bottled2 = abgefüllt
desk-common-find_a_trace = Spur suchen
desk-common-came_from = kam von
desk-common-case_or_lot_mark_batch = Karton oder Loszeichen, Ansatz, Gefäß, Brand oder Lieferung
desk-common-from2 = aus { $name }: { $share }
desk-common-load_of_fruit = Lieferung Obst
desk-common-list_as_csv = Liste als CSV
desk-common-all_as_json = Alles als JSON
desk-common-stands_there_now = steht jetzt dort
desk-common-made_from_it = daraus gemacht
desk-common-passed_through = durchlaufen
desk-common-there_is_more_than_one = Es gibt mehr, als die Spur verfolgen kann. Was gezeigt wird, stimmt, ist aber nicht alles: einen späteren Schritt für sich verfolgen.
desk-common-in_these_bottles = In diesen Flaschen
desk-common-share_of_the_bottle = Anteil der Flasche
desk-common-where_the_cases_went = Wohin die Kartons gingen
desk-common-share_of_it = Anteil davon
desk-common-not_fermented_out = nicht ausgegoren
desk-common-the_same_in_words = Dasselbe in Worten
desk-common-new_vessel = Neues Gefäß
desk-common-mark_place_or_name = Kennung, Platz oder Name
desk-common-no_vessels_here = Hier keine Gefäße.
desk-common-to_the_floor = In den Betrieb
desk-common-labels_to_hold_a_phone = Etiketten für das Telefon
desk-common-print_them_a4 = Drucken, A4
desk-common-to_the_doors = Zu den Türen
desk-common-no_site_has_handed_in = Noch kein Ort hat übergeben.
desk-common-unnamed = ohne Namen
desk-common-something = etwas
desk-common-a_run = Brand
desk-common-a_bottling = Abfüllung
desk-parts-it_was = Es war { $raw } { $unit }
desk-parts-it_stands = Gilt
desk-parts-strike = Streichen
desk-parts-nothing_in_the_book = nichts im Buch
desk-blending-vats_planned = Geplante Verschnitte
desk-blending-none_yet_plan_one_pick = Noch keine. Einen planen: Fässer wählen, sagen, was es werden soll.
desk-blending-tank = Tank
desk-blending-planned = Geplant
desk-blending-water = Wasser, { $what }
desk-blending-volume = Volumen, { $what }
desk-blending-no_batch_yet_a_bottling = Noch kein Ansatz. Eine Messung im Abfülltank beginnt einen.
desk-blending-tank_fills = Der Tank gibt
desk-blending-blending = Verschneiden
desk-blending-by_papers = , nach Papieren
desk-blending-kept_the_tanks_card_shows = Behalten. Die Karte des Tanks zeigt es auf jedem Telefon.
desk-blending-these_draws_cannot_be_read = Diese Entnahmen sind nicht mehr lesbar. Zurückgehen und den Verschnitt neu ausrechnen.
desk-blending-give_the_vat_a_name = Dem Verschnitt einen Namen geben und seinen Tank wählen; dann behalten.
desk-blending-the_book_has_no_such = Das Buch hat keinen solchen Plan. In der Liste der Verschnitte suchen.
desk-blending-nothing_is_left_to_choose = Es bleibt nichts zur Wahl. Ankreuzen, was hinein darf, oder weniger Jahre im Holz verlangen.
desk-plan-planned_and_done = Geplant und getan
desk-plan-the_tank = Der Tank
desk-plan-planned_by_on_into_at = Geplant von { $person } am { $when } in { $get }: { $plan } mit { $plan2 }.
desk-plan-asked_for = Verlangt: { $plan }.
desk-plan-it_rests_on_blind_tasting = Beruht auf der Blindverkostung { $link }.
desk-plan-planned = Geplant, { $what }
desk-plan-done = Getan, { $what }
desk-plan-off = Abweichung, { $what }
desk-plan-in_the_tank_now_at = Jetzt im Tank: { $volume_l } mit { $strength_pct } nach dem Buch.
desk-vat-the_vat = Der Verschnitt
desk-vat-draws = Entnahmen
desk-vat-keep_this_vat = Diesen Verschnitt behalten
desk-vat-what_may_go_in = Was hinein darf
desk-vat-may_go_in = { $name } darf hinein
desk-vat-must_go_in = { $name } muss hinein
desk-vat-years_of_by_the_papers = Jahre von { $name } nach den Papieren
desk-vat-work_it_out = Ausrechnen
desk-vat-begin_again = Neu beginnen
desk-vat-at_from_vessel =
    { $bold } mit { $bold2 }, { $lpa_l }{ $pure }, aus { $count } { $count ->
        [one] Gefäß
       *[other] Gefäßen
    }
desk-vat-of_water = { $water_kg } Wasser
desk-vat-and = und { $bold }
desk-vat-youngest_years_in_wood = Jüngster Teil { $what } Jahre im Holz
desk-vat-by_papers_only_of = nur nach Papieren von { $by_papers }
desk-vat-a_part_of_it_is = Ein Teil davon ist von unbekanntem Alter.
desk-vat-that_is_less_than_asked =
    Das sind { $off } { $is_more ->
        [yes] mehr
       *[no] weniger
    } als verlangt.
desk-vat-share = Anteil, %
desk-vat-before_the_water_at_the = Vor dem Wasser { $before_l } mit { $before_pct }. Die Mischung schrumpft um { $shrinks_l }: kein Verlust, ihr reiner Alkohol bleibt.
desk-vat-name_of_the_vat = Name des Verschnitts
desk-vat-into_tank = In Tank
desk-vat-rests_on_tasting = Beruht auf Verkostung
desk-vat-keep_this_plan = Plan behalten
desk-vat-no_cask_or_tank_has = Nach dem Buch ist in keinem Fass oder Tank Brand.
desk-vat-casks_go_whole_less_what = Fässer gehen ganz hinein, ohne das, was das Holz behält. Jahre sind die des jüngsten Teils; wo das Buch sie nicht wissen kann, eintippen, was die Papiere sagen. Ein Gefäß mit offener Rückfrage kreuzen nur Sie selbst an: seine Zahlen gelten vielleicht nicht.
desk-vat-must = Muss
desk-vat-there = Vorhanden, { $what }
desk-vat-to_give = Abgabe, { $what }
desk-vat-by_the_papers = Nach den Papieren
desk-vat-left_out_too_young = weggelassen: zu jung
desk-cellar_parts-cellar = Keller
desk-cellar_parts-to = ({ $low } bis { $high })
desk-cellar_parts-about = etwa { $bold } { $part }
desk-cellar_parts-three_equal_gravities_since = dreimal dieselbe Dichte seit { $at }
desk-cellar_parts-not_moving_and_not_finished = steht still und ist nicht fertig
desk-cellar_parts-has_hardly_begun = hat kaum begonnen
desk-cellar_parts-stuck = stockend
desk-cellar_parts-too_few_readings = zu wenige Ablesungen
desk-cask-loss_a_year = Verlust im Jahr
desk-cask-forecast_for_a_day = Vorhersage für einen Tag
desk-cask-forecast = Vorhersage
desk-cask-tasted = Verkostet
desk-cask-gauges = Messungen
desk-cask-years_in_wood = { $percent } Jahre im Holz
desk-cask-from_before_this_book = Aus der Zeit vor diesem Buch
desk-cask-its_age_is_not_known = Das Alter ist nicht bekannt.
desk-cask-its_age_is_by_papers = Das Alter steht nur in Papieren: { $papers }.
desk-cask-its_age_is_by_what = Das Alter gilt nach der Angabe zum Anfangsbestand; Papiere sind nicht genannt.
desk-cask-pure_alcohol = Reiner Alkohol, %
desk-cask-volume = Volumen, %
desk-cask-proof_points = Proof
desk-cask-strength = Gehalt, { $what }
desk-cask-over_years = Über, Jahre
desk-cask-one_gauge_or_too_near = Eine Messung oder zu nah beieinander: noch keine Rate.
desk-cask-casks_like_it = ähnliche Fässer
desk-cask-the_law_allows = das Gesetz erlaubt
desk-cask-here_as_the_share_that = { $words } Hier als der Anteil, der im Jahr verloren geht. Eine Warnschwelle, kein Beweis, dass ein Verlust üblich ist, und kein Rechtsrat: zuerst mit den eigenen Fässern vergleichen.
desk-cask-of_pure_alcohol = des reinen Alkohols
desk-cask-between_its_last_two_gauges = Zwischen den letzten beiden Messungen, { $when } und { $when2 }, gingen { $value } { $part }{ $pure }; ± ist die doppelte Standardunsicherheit, nach der Klasse von Waage, Spindel und Thermometer.
desk-cask-compared_with = Verglichen mit
desk-cask-no_other_cask_to_compare = Kein anderes Fass zum Vergleich: einfache Zahlen für die Größe.
desk-cask-what_it_will_hold = Was es enthalten wird
desk-cask-no_forecast_for_a_day = Keine Vorhersage für einen Tag vor der letzten Messung oder mehr als fünfzig Jahre voraus.
desk-cask-expected = Erwartet
desk-cask-by_a_year_its_own = Mit { $percent } % im Jahr, dem eigenen Verlust, gewogen mit dem ähnlicher Fässer; von und bis sollen in vier von fünf Fällen gelten. Kein Leck und keine Probe ist vorgesehen.
desk-cask-its_last_gauge_is_in = Die letzte Messung ist zweifelhaft, also auch diese Vorhersage: zuerst das Fass ansehen.
desk-cask-not_gauged_in_this_fill = In dieser Belegung nicht gemessen.
desk-cask-not_tasted_in_this_fill = In dieser Belegung nicht verkostet.
desk-cask-fault = Fehler
desk-cask-house_scores = Punkte des Hauses
desk-cask-in_words = In Worten
desk-cask-decision = Entscheidung
desk-cask-score_is_the_mean_of = Punkte sind das Mittel von Nase, Mund und Holz.
desk-cask-gauges_of_this_fill = Messungen dieser Belegung
desk-cask-drawn_since_the_one_before = Seit der vorigen entnommen, { $what }
desk-cask-the_last_gauge = die letzte Messung
desk-cask-its_fill = die Füllung
desk-cask-and_more = und mehr
desk-cask-pure_alcohol2 = Reiner Alkohol
desk-cask-strength2 = Alkoholgehalt
desk-cask-volume_at = Volumen bei { $temp }
desk-casks-sort_casks = Fässer ordnen
desk-casks-regauge_round = Nachmessrunde
desk-casks-area = Bereich
desk-casks-no_such_cask = Kein solches Fass.
desk-casks-no_cask_holds_anything_as = Soweit das Buch weiß, enthält kein Fass etwas.
desk-casks-since_fill = Seit der Füllung
desk-casks-casks_like_it = Ähnliche Fässer
desk-casks-looks_like = Sieht aus wie
desk-casks-loss_is_of_pure_alcohol = Verlust ist der an reinem Alkohol seit der letzten mindestens zwei Monate alten Messung; Proben sind kein Verlust. „Ähnliche Fässer“: vier von fünf liegen in dieser Spanne, nach Größe, dann Bereich, dann Holz und Belegung; eine kleine Gruppe borgt von der weiteren, bis sie eigene Fässer hat.
desk-casks-l_pure = L rein
desk-casks-by_papers = nach Papieren
desk-ferment-counts_of_its_alcohol = Zählungen des Alkohols
desk-ferment-set = angesetzt { $when }
desk-ferment-emptied = geleert { $when }
desk-ferment-ends = Endet: { $forecast }.
desk-ferment-it_usually_ends_near = Endet gewöhnlich nahe { $what }.
desk-ferment-it_takes_two_gravities_or = Es braucht zwei Dichten oder eine beendete Gärung.
desk-ferment-count = Zählung
desk-ferment-of_wash = { $what } Maische
desk-ferment-of_measured_wash = % der gemessenen Maische
desk-ferment-runs_of_charged_scaled_to =
    { $runs } { $runs ->
        [one] Brand
       *[other] Brände
    } mit { $charged_lpa } eingefüllt, hochgerechnet auf die ganze Maische
desk-ferment-gravity_low_wines_and_spirits = Dichte, Lutter und Brände zählen dasselbe auf drei Wegen, die nichts voneinander wissen; altes Recht nahm das Größte. Weit auseinander: Peilungen, Gehalte und Maische ansehen.
desk-ferment-not_read_yet = Noch nicht abgelesen.
desk-ferment-greatest = größte
desk-ferment-title = { $what } in { $mark }
desk-ferments-ferments_under_way = Gärungen im Gang
desk-ferments-ferments_that_have_ended = Beendete Gärungen
desk-ferments-readings_round = Ableserunde
desk-ferments-no_ferment_is_under_way = Keine Gärung ist im Gang.
desk-ferments-ends = Endet
desk-ferments-the_day_is_forecast_from = Der Tag ist aus der fallenden Kurve der eigenen Ablesungen vorhergesagt; die Tage in Klammern sollen in vier von fünf Fällen gelten. Dreimal dieselbe Dichte entscheidet.
desk-ferments-emptied = Geleert
desk-ferments-first_gravity = Erste Dichte
desk-ferments-ferments = Gärungen
desk-house_rules-n0_for_never = 0 für nie
desk-house_rules-what_is_due_stands_on = Was fällig ist, steht auf jedem Telefon unter Heute. Worte werden beim Verkosten angetippt; Punkte gehen von 0 bis 10.
desk-house_rules-house_rules = Hausregeln
desk-house_rules-too_young = zu jung
desk-house_rules-too_weak = zu schwach
desk-house_rules-too_strong = zu stark
desk-house_rules-score_too_low = zu wenig Punkte
desk-house_rules-not_tasted = nicht verkostet
desk-house_rules-loses_much_look_at_it = verliert viel: ansehen
desk-house_rules-not_gauged = nicht gemessen
desk-house_rules-spirit_as_the_book_names = Spirituose, wie das Buch sie nennt; leer für alle
desk-house_rules-in_wood_at_least_years = Im Holz mindestens [Jahre]
desk-house_rules-strength_from_vol = Gehalt von [% vol]
desk-house_rules-strength_to_vol = Gehalt bis [% vol]
desk-house_rules-score_at_least_of_10 = Punkte mindestens [von 10]
desk-house_rules-loss_at_most_a_year = Verlust höchstens [% im Jahr]
desk-house_rules-words_for_nose_and_mouth = Worte für Nase und Mund, eines je Zeile
desk-house_rules-beside_the_loss_of_casks = Neben dem Fassverlust: der Freibetrag im Recht von
desk-house_rules-scores_beside_nose_mouth_wood = Punkte neben Nase, Mund, Holz und Fehler, eine je Zeile
desk-house_rules-kept = Behalten.
desk-house_rules-type_a_figure_from_0 = Eine Zahl ab 0 eintippen oder leer lassen.
desk-house_rules-kept_phones_have_it_with = Behalten. Telefone haben es mit ihren nächsten Karten.
desk-house_rules-read_a_ferment_every = Eine Gärung ablesen alle
desk-house_rules-regauge_a_cask_every = Ein Fass nachmessen alle
desk-house_rules-sample_a_cask_every = Ein Fass beproben alle
desk-house_rules-taste_a_cask_every = Ein Fass verkosten alle
desk-house_rules-tell_of_an_instruments_check = An die Prüfung eines Messgeräts erinnern vor
desk-house_rules-check_bottles_on_the_line = Flaschen an der Linie prüfen alle
desk-house_rules-or_after_so_many_of = oder nach so vielen davon
desk-map-rooms = Räume
desk-map-map_of = Plan von { $name }
desk-map-without_a_position = { $name }, ohne Stelle
desk-map-as_a_table = { $name } als Tabelle
desk-map-elsewhere = ◆ anderswo?
desk-map-empty = leer
desk-map-free = frei
desk-map-count_sheet = Zählblatt
desk-map-the_last_count_found_otherwise = Die letzte Zählung fand anderes
desk-map-nothing_has_a_place_yet = Noch hat nichts einen Platz. Ein Eintrag, der ein Fass füllt oder umlagert, nennt einen; auch die Seite des Gefäßes.
desk-map-vessels =
    { $count } { $count ->
        [one] Gefäß
       *[other] Gefäße
    }
desk-map-places_free =
    { $free } { $free ->
        [one] Platz
       *[other] Plätze
    } frei
desk-map-no_position = { $name }, keine Stelle
desk-map-without_a_place = Ohne Platz { $part }
desk-map-the_first_vessels_are_drawn = Die ersten { $most } Gefäße sind gezeichnet. Eine Art wählen, um andere zu sehen.
desk-map-a_place_is_where_an = Ein Platz ist, wohin ein Eintrag das Gefäß zuletzt setzte, sonst, was seine Seite sagt. Ein hohler Platz ist einer, den Einträge oder das Verzeichnis nennen und wo jetzt nichts steht. Pfeiltasten gehen von Platz zu Platz.
desk-map-places = Plätze
desk-map-other_places = Andere Plätze
desk-ready-years_in_wood = Jahre im Holz
desk-ready-lacks = Es fehlt
desk-ready-no_rule_yet = Noch keine Regel.
desk-ready-set_one_below_age_strength = Unten eine setzen: Alter, Gehalt, Punkte, Verlust.
desk-ready-the_distiller_sets_one = Der Brenner setzt eine.
desk-ready-ready = Reif { $part }
desk-ready-no_cask_meets_the_rule = Heute erfüllt kein Fass die Regel.
desk-ready-lacks_one_thing = Eines fehlt { $part }
desk-ready-the_rule = Die Regel
desk-ready-last_set_by = Zuletzt gesetzt von { $changed }, { $when }.
desk-ready-all_boxes_empty_takes_the = Alle Felder leer nimmt die Regel dieser Spirituose heraus. Was leer ist, wird nicht verlangt. Die Regel ist die des Hauses: Alter nach Gesetz und Etikett sind eine andere Sache.
desk-ready-ready2 = Reif
desk-ready-lacks_one_thing2 = Eines fehlt
desk-ready-all_spirits = alle Spirituosen
desk-amend-what_you_send_is_a = { $mark } · { $summary } · { $person }, { $read_local }. Was Sie senden, ist ein neuer Eintrag; der ursprüngliche bleibt lesbar.
desk-amend-why_it_is_amended = Warum berichtigt wird
desk-amend-amend = Berichtigen: { $title }
desk-entries-filter_entries = Einträge auswählen
desk-entries-pick_a_kind_for_csv = Für CSV eine Art wählen
desk-entries-no_entries_here_yet = Hier noch keine Einträge.
desk-entries-older = Ältere
desk-entry-as_computed = Wie gerechnet
desk-entry-movements = Bewegungen
desk-entry-now_at = jetzt an { $stands }
desk-entry-read_by = abgelesen { $read_local } von { $person }
desk-entry-an_earlier_entry = ein früherer Eintrag
desk-entry-amends = Berichtigt { $link }: { $reason }
desk-entry-as_read = Wie abgelesen
desk-entry-by = mit { $instrument }
desk-entry-corrected = berichtigt { $corrected }
desk-entry-is_twice_the_standard_uncertainty = ± ist die doppelte Standardunsicherheit, nach der Klasse der Messgeräte; eines, das nicht genannt ist oder im Buch keine Klasse hat, zählt mit der vom Gesetz verlangten.
desk-entry-figure = Zahl
desk-entry-typed = getippt
desk-entry-with = mit { $words }
desk-entry-nothing_is_computed_from_this = Hieraus wird nichts gerechnet.
desk-entry-how_it_came = Wie es kam
desk-entry-typed_at = Eingetippt um
desk-entry-received = Eingegangen
desk-entry-phones_clock = Uhr des Telefons
desk-entry-fast =
    { $what } { $is_slow ->
        [yes] nach
       *[no] vor
    }
desk-entry-phone_its_count = Telefon, seine Zählung
desk-entry-handed_in_by = Übergeben von
desk-entry-signature = Unterschrift
desk-entry-what_it_does_to_the = Was es mit den Konten macht
desk-entry-from = von
desk-entry-to = nach
desk-entry-account = Konto
desk-entry-why = warum
desk-entry-as_typed = wie getippt
desk-entry-it_moves_no_spirit_either = Es bewegt so oder so keinen Brand.
desk-entry-held_holds_then = enthielt { $shown }, enthält dann
desk-entry-with_the_book_would_still = Mit { $words } würde das Buch immer noch fragen, bevor es etwas bewegt.
desk-entry-held_holds_then2 = enthielt { $litres }, enthält dann
desk-entry-its_story = Seine Geschichte
desk-entry-this_entry = dieser Eintrag
desk-entry-strike_this_entry = Diesen Eintrag streichen
desk-entry-strike_it_stays_legible = Streichen; bleibt lesbar
desk-entry-from_the_desk = aus dem Büro
desk-entry-answered = beantwortet
desk-entry-nothing_moves_until_the_question = Nichts bewegt sich, bis die Frage beantwortet ist.
desk-entry-it_is_struck_it_moves = Gestrichen: bewegt nichts.
desk-entry-it_moves_no_spirit = Bewegt keinen Brand.
desk-entry-another_entry_stands_in_its = Ein anderer Eintrag steht an seiner Stelle.
desk-entry-none_the_phone_or_its = keine: Telefon oder Browser gab keine
desk-entry-the_book_has_no_such = Das Buch hat keinen solchen Eintrag. Vielleicht wartet er noch auf einem Telefon.
desk-entry-none_it_was_entered_at = keine: im Büro eingetragen
desk-entry-of_and_it_holds = von { $phones }, und sie stimmt
desk-entry-with_a_key_that_the = mit einem Schlüssel, den das Buch nicht hat
desk-entry-there_is_no_such_entry = Diesen Eintrag gibt es nicht zu berichtigen.
desk-entry-pick_one_kind_first_each = Zuerst eine Art wählen: jede hat ihre Spalten.
desk-entry-amended_the_original_stays_legible = Berichtigt. Der ursprüngliche bleibt lesbar.
desk-entry-is_no_day_pick_one = { $day } ist kein Tag. Einen wählen, etwa 2025-09-24.
desk-entry-say_why_it_is_amended = In wenigen Worten sagen, warum berichtigt wird.
desk-enclosed-title = Bilder und Papiere
desk-enclosed-show = Bilder und Papiere zeigen
desk-enclosed-back = Zurück zu dem, wozu sie gehören
desk-enclosed-none = Noch keine. Im Betrieb mit einem Eintrag aufnehmen oder auf der Seite eines Eintrags hinzufügen.
desk-enclosed-picture = Bild
desk-enclosed-paper = Papier
desk-enclosed-voice_note = Sprachnotiz
desk-enclosed-not_come = Noch nicht hier: wartet auf dem Telefon
desk-enclosed-added_later = später hinzugefügt
desk-enclosed-its_entry = ihr Eintrag
desk-enclosed-add = Bilder oder Papiere hinzufügen
desk-enclosed-files = Dateien
desk-enclosed-help = JPEG, PNG oder WebP bis 12 MB, PDF bis 20 MB, Sprachnotizen bis 6 MB. Bilder verlieren Ort und Kameradaten.
desk-enclosed-what = Was es zeigt
desk-enclosed-add_it = Zu diesem Eintrag hinzufügen
desk-enclosed-added =
    { $count ->
        [one] Hinzugefügt. Es ist ein eigener Eintrag, der diesen nennt.
       *[other] { $count } hinzugefügt. Sie sind ein eigener Eintrag, der diesen nennt.
    }
desk-enclosed-pick_one = Zuerst ein Bild oder Papier wählen.
desk-enclosed-too_many = Höchstens { $most } auf einmal. In Teilen hinzufügen.
desk-enclosed-no_such_entry = Diesen Eintrag gibt es nicht. Unter den Einträgen suchen.
desk-enclosed-the_paper = das Papier
desk-enclosed-add_its_paper = sein Papier hinzufügen
desk-queries-which_questions = Welche Fragen
desk-queries-to_answer = Zu beantworten
desk-queries-none_of_this_weight = Keine von diesem Gewicht.
desk-queries-nothing_is_asked_what_comes = Nichts ist gefragt. Was außerhalb des Bereichs kommt, steht dann hier.
desk-queries-questions = { $count } Fragen
desk-queries-ask_on_only_above = An { $mark } erst über { $value } fragen { $limits }
desk-queries-times_it_stood_here = { $times } Mal galt es hier. { $link }
desk-queries-the_first_are_shown_answer = Die ersten { $most } sind gezeigt. Einige beantworten, dann folgen die anderen.
desk-queries-questions2 = Fragen
desk-queries-not_answered = Nicht beantwortet: { $why }
desk-queries-it_stands = Es gilt.
desk-queries-struck_the_entry_stays_legible = Gestrichen. Der Eintrag bleibt lesbar.
desk-removals-to_or_from = An oder von
desk-removals-loose = einzeln
desk-removals-of = von { $case_from }
desk-bottled-bottles_on_hand = Flaschen vorhanden
desk-bottled-removals_as_csv = Abgänge als CSV
desk-bottled-all_removals_logged = Alle eingetragenen Abgänge
desk-bottled-what_each_bottling_has_on = Was von jeder Abfüllung vorhanden ist und wohin ihre Kartons gingen. Im Betrieb eintragen, unter Mehr: Kartons aus oder ein, Flaschen. { $link }.
desk-bottled-nothing_is_bottled_yet_a = Noch nichts abgefüllt. Das Ende einer Abfüllung oder Kartons von anderem Ort beginnen den Bestand.
desk-bottled-good_bottles = Gute Flaschen
desk-bottled-on_hand = Vorhanden
desk-bottled-last_count = Letzte Zählung
desk-bottled-lot = Los { $lot_mark }
desk-bottled-for_the_library = { $library } zur Rückstellung
desk-bottled-from = von { $consignor }, { $document }
desk-bottled-from_before_this_book = aus der Zeit vor diesem Buch
desk-bottled-cases = { $cases } Kartons
desk-bottled-and = und { $loose }
desk-bottled-out_and_back = Hinaus und zurück
desk-bottled-no_case_has_left_yet = Noch kein Karton ist hinaus.
desk-bottled-older_ones_are_in_the = { $count } ältere stehen in der Datei.
desk-bottling-checks_of_the_line = Prüfungen der Linie
desk-bottling-tank_gauge_and_label = Tankmessung und Etikett
desk-bottling-no_bottling_tank_gauge_yet = Noch keine Messung im Abfülltank. Den Tank nach aller Behandlung messen, vor der ersten Flasche.
desk-bottling-at = { $volume } mit { $strength }
desk-bottling-a_label_may_say_to = { $when }, { $tank }: { $bold } ({ $what }). Ein Etikett darf { $low } bis { $high }{ $span } sagen und höchstens { $most } abweichen
desk-bottling-it_says = es sagt { $said }
desk-bottling-leave_room_for_what_glass = Raum lassen für das, was Spindel und Thermometer vortäuschen.
desk-bottling-it_fills_bottles_of_l = Es füllt { $what } Flaschen zu { $what2 } L, ohne Rest.
desk-bottling-none_yet_check_five_bottles = Noch keine. Jede halbe Stunde fünf Flaschen prüfen.
desk-bottling-fill_of_the_label_on = Füllung { $what } % des Etiketts im Mittel von { $count } Prüfungen
desk-bottling-spread = Streuung { $what }
desk-bottling-strength_on_average = Gehalt im Mittel { $mean }
desk-bottling-spread2 = Streuung { $spread }
desk-bottling-at_this_size_each_bottle = Bei dieser Größe darf jede Flasche { $what } % darüber oder darunter sein (27 CFR 19.356), etwa so viele darüber wie darunter.
desk-bottling-at_this_size_a_bottle = Bei dieser Größe darf eine Flasche { $what } % darunter sein, das Mittel gar nicht (Richtlinie 76/211/EWG, aus dem Gedächtnis).
desk-bottling-fill = Füllung, %
desk-bottling-least = Mindestens
desk-bottling-most = Höchstens
desk-bottling-labels_right = Etiketten richtig
desk-bottling-done = Getan
desk-bottling-not_closed_yet = Noch nicht beendet.
desk-bottling-odd_case = Restkarton
desk-bottling-labels_of_cases = Etiketten der Kartons
desk-bottling-a_case_label_leads_to = Das Symbol führt zur Spur des Loses. Das Etikett, das das Gesetz verlangt, ist ein anderes.
desk-bottling-these_are_no_cases = Kartons dieses Ansatzes nennen, wie der Abschluss sie hat, höchstens { $most } auf einmal.
desk-bottling-broken = Bruch
desk-bottling-library = Rückstellung
desk-bottling-good = Gut
desk-bottling-to = { $case_from } bis { $case_to }
desk-bottling-nothing_has_left_the_tank = Noch nichts hat den Tank verlassen.
desk-bottling-gauged_bottled_not_in_a = Gemessen { $gauged }, abgefüllt { $bottled }: { $off }{ $pure } ({ $what2 } %) nicht in einer Flasche.
desk-bottling-batch = Ansatz { $name }
desk-bottling-span = { $low } bis { $high } % vol
desk-bottling-the_book_has_no_batch = Das Buch hat keinen Ansatz dieses Namens in einem Tank. In der Liste der Abfüllungen suchen.
desk-bottling-fill_on_average = Füllung im Mittel
desk-bottling-of_the_label = % des Etiketts
desk-bottling-strength_in_the_bottles = Gehalt in den Flaschen
desk-limits-to = { $what }{ $what2 } bis { $what3 } { $symbol }{ $what4 }
desk-limits-as_the_kind = wie die Art
desk-limits-every_range_is_the_kinds = Jeder Bereich ist der der Art selbst.
desk-limits-for = Für
desk-limits-field = Feld
desk-limits-usual = Üblich
desk-limits-possible = Möglich
desk-limits-find_limits = Grenzen suchen
desk-limits-limits = Grenzen
desk-limits-all_ranges = Alle Bereiche
desk-limits-limits_set_so_far = Bisher gesetzte Grenzen
desk-limits-all_limits = Alle Grenzen
desk-limits-possible2 = möglich: { $what }
desk-limits-words_field_vessel_or_product = Worte, Feld, Gefäß oder Erzeugnis
desk-limits-a_range_for_one_vessel = Ein Bereich für ein Gefäß geht vor einem für seine Art, vor einem für den Rohstoff, vor einem für den Ort, vor dem der Art selbst. Leere Felder geben diesen zurück.
desk-limits-set_so_far = Bisher gesetzt
desk-limits-no_range_here_holds_these = Kein Bereich hier enthält diese Worte.
desk-limits-a_limit_for_one_vessel = Eine Grenze für ein Gefäß geht vor einer für das Erzeugnis, vor einer für die Art des Gefäßes, vor einer für den Ort, vor der der Prüfung selbst. Eine leere Zahl gibt diese zurück.
desk-limits-no_limit_here_holds_these = Keine Grenze hier enthält diese Worte.
desk-limits-limit = Grenze
desk-limits-set_to = Gesetzt auf
desk-limits-the_checks_own = Die der Prüfung
desk-limits-the_kinds_own = der der Art selbst
desk-limits-the_checks_own2 = die der Prüfung selbst
desk-limits-the_book_knows_no_vessel = Das Buch kennt kein Gefäß { $key }.
desk-limits-say_which_the_sort_of = Sagen, welches: die Art des Gefäßes oder der Rohstoff.
desk-limits-from_to_is_no_range = Von { $low } bis { $high } ist kein Bereich. Die beiden tauschen.
desk-limits-kept_the_vessels_concerned_are = Behalten. Die betroffenen Gefäße werden neu geprüft.
desk-limits-kept_the_entries_concerned_are = Behalten. Zu den betroffenen Einträgen wird neu gefragt.
desk-access-code = Code
desk-access-all_as_json_lines = Alles als JSON-Zeilen
desk-access-everything = alles
desk-access-nothing_of_this_sort_yet = Noch nichts dieser Art.
desk-access-the_newest_all_of_them = Die neuesten { $most }. Alle gehen als JSON-Zeilen hinaus.
desk-access-each_line_is_bound_to = Jede Zeile ist an die vorige gebunden; { $code } findet eine, die geändert oder entfernt wurde. Zeilen älter als { $days } Tage gehen.
desk-address-now = Jetzt
desk-address-this_book_is_open_on = Dieses Buch ist nur auf diesem Rechner offen. { $code } ohne { $code2 } und { $code3 } starten, dann erreichen es Telefone im selben Netz.
desk-address-phones_open = Telefone öffnen { $bold }.
desk-address-another_web_server_on_this = Ein anderer Webserver auf diesem Rechner spricht für es, und das Zertifikat ist dessen Sache.
desk-address-every_phone_trusts_it_as = Jedes Telefon vertraut ihm so, durch ein Zertifikat auf Ihren eigenen Namen.
desk-address-this_houses_own_certificate = das eigene Zertifikat dieses Hauses
desk-address-each_phone_trusts_it_once = Jedes Telefon vertraut ihm, sobald es { $link } genommen hat.
desk-address-the_servers_certificate_lasts_unti = Das Zertifikat des Servers gilt bis { $ends }
desk-address-and_is_renewed_before_that = und wird vorher von selbst erneuert
desk-address-the_address_is_who_the = An der Adresse erkennt ein Telefon das Buch.
desk-address-what_a_phone_holds_belongs = { $bold } Was ein Telefon enthält, gehört zu der Adresse, unter der es geöffnet wurde: unter einer anderen beginnt es leer, und was wartete, bleibt bei der alten. Die bleibende wählen, bevor das erste Telefon kommt. Für einen späteren Umzug: jedes Telefon übergeben lassen, dann umziehen, dann jedes neu zulassen.
desk-address-the_ways = Die Wege
desk-address-the_houses_own_certificate = Das eigene Zertifikat des Hauses
desk-address-nothing_to_buy_works_without = Nichts zu kaufen, geht zehn Jahre ohne Internet. Auf jedem Telefon einmal sechs- bis achtmal tippen, darunter ein Schalter, den man leicht übersieht.
desk-address-an_internet_name_of_your = Ein eigener Name im Internet
desk-address-phones_trust_it_with_no = Telefone vertrauen ihm ganz ohne Tippen. Er kostet eine Domain im Jahr, ab und zu Internet und jemanden, der ihn einmal einrichtet: einen Eintrag, der zur Adresse dieses Rechners im Haus führt, und ein ACME-Programm (RFC 8555), das den Namen per DNS nachweist und die beiden Dateien hierher legt. Sie werden jede Viertelstunde angesehen und übernommen, wenn sie neu sind. Der Name steht in öffentlichen Verzeichnissen: am besten ein unauffälliger.
desk-address-another_web_server_in_front = Ein anderer Webserver davor
desk-address-where_the_house_has_one = Wo das Haus schon einen mit eigenem Zertifikat hat: er spricht TLS und reicht an diesen weiter.
desk-address-when_a_phone_does_not = Wenn ein Telefon nicht hierher findet
desk-address-on_this_computer_looks_at = { $code } auf diesem Rechner prüft Name, Adresse, Port, Uhr, Zertifikat, Router, Platte und Sicherung und sagt zu jedem den einen nächsten Schritt. Diesem Rechner im Router eine feste Adresse geben: eine neue wäre für die Telefone ein anderes Buch.
desk-instrument-checks = Prüfungen
desk-instrument-readings_in_doubt = Zweifelhafte Ablesungen
desk-instrument-due_on = fällig am { $due_on }
desk-instrument-last_good_check = letzte gute Prüfung { $when }
desk-instrument-add_to_what_it_shows = { $what } { $unit } zum Gezeigten addieren
desk-instrument-certificate_add = Prüfschein, addieren { $table_words }
desk-instrument-entries_read_with_it =
    { $readings } { $readings ->
        [one] Eintrag
       *[other] Einträge
    } damit abgelesen
desk-instrument-none_in_the_book_log = Keine im Buch. Im Betrieb eintragen: Messgerät prüfen.
desk-instrument-against = Gegen
desk-instrument-should_show = Sollte zeigen
desk-instrument-shows = Zeigt
desk-instrument-off_by = Abweichung
desk-instrument-result = Ergebnis
desk-instrument-good = gut
desk-instrument-readings_in_doubt2 =
    { $doubtful } { $doubtful ->
        [one] Ablesung
       *[other] Ablesungen
    } zweifelhaft
desk-instrument-out_of_use = außer Betrieb
desk-instrument-in_use_until = in Gebrauch bis { $until }
desk-instrument-in_doubt_read_before_the = Zweifelhaft: abgelesen vor der Prüfung von { $at }, seit der letzten guten
desk-instrument-nothing_was_read_with_it = In dieser Zeit wurde damit nichts abgelesen.
desk-instrument-entries =
    { $many } { $many ->
        [one] Eintrag
       *[other] Einträge
    }
desk-instrument-the_last_are_listed = die letzten { $count } stehen da
desk-instrument-look_at_each_let_it = Jeden ansehen: gelten lassen oder mit dem Grund berichtigen.
desk-instrument-by_this_check = Nach dieser Prüfung
desk-instrument-n27_cfr_19_188_asks = 27 CFR 19.188 verlangt häufige Prüfungen; ein zweifelhaftes Gerät wird nicht gebraucht, bis es bescheinigt ist.
desk-instrument-not_good = nicht gut
desk-instrument-no_check_in_the_book = keine Prüfung im Buch
desk-instrument-there_is_no_such_instrument = Dieses Messgerät gibt es nicht. In der Liste suchen.
desk-instruments-none_yet_add_the_first = Noch keine. Das erste hinzufügen.
desk-instruments-standing = Zustand
desk-instruments-last_good_check = Letzte gute Prüfung
desk-invited-shown_this_once = Nur einmal gezeigt
desk-invited-scans_this_or_opens_the = { $name } scannt dies oder öffnet den Link binnen { $days } Tagen und setzt ein Passwort, das sonst niemand weiß. Es gilt einmal; ein neues macht es ungültig.
desk-invited-hand_it_over_yourself_whoever = Selbst übergeben: wer es zuerst öffnet, meldet sich als { $code } an.
desk-invited-until_then_the_old_password = Bis dahin öffnet das alte Passwort wie zuvor.
desk-invited-this_link_is_plain_http = Dieser Link ist einfaches http: auf diesem Rechner geht er, ein anderer sendete das Passwort ungeschützt.
desk-invited-it_is_handed_over = Ist übergeben
desk-invited-invitation_for = Einladung für { $name }
desk-invited-on_this_computer_alone = nur auf diesem Rechner
desk-judging-all_as_a_file_csv = Alles als Datei (CSV)
desk-judging-rules_digest_the_book_is = Regeln { $number }, Prüfwert { $code }. Danach ist das Buch geprüft ab { $when }
desk-judging-all_was_judged_at = alles war geprüft: { $when }
desk-judging-other_than_before = Anders als zuvor: { $parts }.
desk-judging-not_all_is_judged_yet = Noch ist nicht alles geprüft. Was anders ausfällt, steht hier, sobald es gefunden ist.
desk-judging-so_far = bisher
desk-judging-nothing_came_out_otherwise = Nichts fiel anders aus{ $what }.
desk-judging-sums_that_came_out_otherwise = Summen, die anders ausfielen
desk-judging-none_stock_and_accounts_are = Keine. Bestand und Konten sind, was sie waren.
desk-judging-entries_move_other_amounts_than =
    { $sums_many } { $sums_many ->
        [one] Eintrag bewegt
       *[other] Einträge bewegen
    } andere Mengen als zuvor
desk-judging-the_first_are_listed_the = die ersten { $most } stehen da, die Datei hat alle
desk-judging-a_closed_month_keeps_its = Ein geschlossener Monat behält seine Zahlen: was sich darin änderte, ist eine Anpassung des ersten offenen Monats.
desk-judging-before = Zuvor: { $moves }
desk-judging-now = Jetzt: { $moves }
desk-judging-questions_that_came_or_went = Fragen, die kamen oder gingen
desk-judging-read_by = Gelesen von { $read_by }, { $when }.
desk-judging-i_have_read_it = Gelesen
desk-judging-rules_of_version = Regeln der Version { $version }
desk-judging-came_to = Kam zu
desk-judging-went_from = Ging von
desk-judging-weighs_otherwise_for = Wiegt anders für
desk-parties-new = Neu
desk-parties-none_yet_add_them_one = Noch keine. Einzeln hinzufügen oder ein Blatt einlesen.
desk-parties-sells_or_buys = Verkauft oder kauft
desk-parties-address = Anschrift
desk-parties-note = Notiz
desk-parties-is_there_already_as_a = { $name } ist schon da ({ $role }). Diesen Eintrag ändern.
desk-parties-there_is_nobody_of_this = Niemand hat diesen Namen. Die Liste noch einmal ansehen.
desk-parties-kept = Behalten.
desk-party_edit-a_papers_and_entries_call = Rolle: { $role }. Papiere und Einträge nennen sie bei diesem Namen, er bleibt also; unter anderem Namen sind sie jemand Neues.
desk-party_edit-new_customer_or_grower = Neuer Kunde oder Lieferant
desk-party_edit-supplier = Lieferant
desk-party_edit-customer = Kunde
desk-passkey_new-give_it_a_name_by = Einen Namen geben, an dem er später zu erkennen ist, etwa den Rechner oder den Schlüssel, auf dem er ist. Dann fragt der Browser nach Finger, Gesicht oder PIN.
desk-passkey_new-this_browser_makes_no_passkeys = Dieser Browser macht hier keine Passkeys. Einen nehmen, der es kann, über https, oder beim Passwort bleiben.
desk-passkey_new-make_it = Machen
desk-passkey_new-made_at_it_is_good = Bei { $rp_id } gemacht, gilt er nur dort. Wer das Gerät verliert, beendet seinen Passkey auf der vorigen Seite.
desk-passkey_new-a_new_passkey = Ein neuer Passkey
desk-people-code = Code
desk-people-roles = Rollen
desk-people-at_the_desk = Im Büro
desk-people-invited = eingeladen
desk-people-password = Passwort
desk-people-ended = { $count } beendet.
desk-people-there_is_a_already_pick = Einen Code { $code } gibt es schon. Einen anderen wählen.
desk-people-somebody_must_keep_the_office = Jemand muss die Rolle Büro behalten. Zuerst einer anderen Person geben.
desk-people-there_is_no_such_person = Diese Person gibt es nicht.
desk-people-kept = Behalten.
desk-person_edit-the_floor_code_names_who = Der Code nennt, wer auf einem gemeinsamen Telefon einträgt, auch ohne Netz. Er ist kein Schloss.
desk-person_edit-signing_in_at_the_desk = Anmelden im Büro
desk-person_edit-invited_until = Eingeladen bis { $when }.
desk-person_edit-has_a_password_which_nobody = Hat ein Passwort, das sonst niemand weiß.
desk-person_edit-has_no_password_yet = Hat noch kein Passwort.
desk-person_edit-sessions_open =
    { $n_open } { $n_open ->
        [one] Sitzung
       *[other] Sitzungen
    } offen.
desk-person_edit-end_the_sessions = Die Sitzungen beenden
desk-person_edit-who_is_to_sign_in = Wer sich im Büro anmelden soll, wird danach eingeladen, auf der eigenen Seite.
desk-person_edit-invite_to_a_new_password = Zu neuem Passwort einladen
desk-person_edit-invite_to_the_desk = Ins Büro einladen
desk-readers-title = Andere Programme
desk-readers-about = Eine Tabelle, eine Anzeige oder ein Kalender liest, was ihr Schlüssel erlaubt, bis zu seinem Tag, und ändert nichts. Wie: { $link }.
desk-readers-name = Name des Programms
desk-readers-name_it = Das Programm benennen, etwa „Kellertabelle“.
desk-readers-good_for = Gültig für
desk-readers-days =
    { PLURAL($days) ->
        [one] { $days } Tag
       *[other] { $days } Tage
    }
desk-readers-may_read = Darf lesen
desk-readers-tick_what = Ankreuzen, was es lesen darf.
desk-readers-scope_entries = Einträge
desk-readers-scope_stock = was wo liegt
desk-readers-scope_periods = Zeiträume
desk-readers-scope_trace = Spuren
desk-readers-scope_cards = Karten der Gefäße
desk-readers-scope_calendar = den Kalender des Fälligen
desk-readers-make = Schlüssel ausstellen
desk-readers-key_for = Schlüssel für { $name }
desk-readers-shown_once = Wird nur dieses eine Mal gezeigt. Wer ihn hat, liest dasselbe; dort aufbewahren, wo Kennwörter liegen.
desk-readers-calendar_at = Kalender nehmen diese Adresse:
desk-readers-it_is_kept = Ist verwahrt
desk-readers-none = Kein Programm hat einen Schlüssel.
desk-readers-tool = Programm
desk-readers-reads = Liest
desk-readers-until = Bis
desk-readers-used = Zuletzt benutzt
desk-readers-never = nie
desk-readers-over = abgelaufen
desk-readers-end = Beenden
desk-readers-ended = Der Schlüssel von { $name } öffnet nichts mehr.
desk-readers-no_such = Diesen Schlüssel gibt es nicht. Vielleicht wurde er schon beendet.
desk-readers-calendar_name = { $house }: was fällig ist
desk-readers-ferment_ends = { $name }: die Gärung endet etwa jetzt
desk-phones-let_in = { $data } zulassen
desk-phones-scan_this_with_the_phones = Dies mit der Kamera des Telefons scannen, einmal, binnen eines Tages. Als Link: { $link }
desk-phones-the_camera_does_not_scan = Die Kamera scannt nicht?
desk-phones-open_on_the_phone_and = Auf dem Telefon { $bold } öffnen und binnen { $minutes } Minuten eintippen:
desk-phones-no_code_has_0_o = Kein Code enthält 0, O, 1, I, L oder U, und das letzte Zeichen prüft die anderen. Gescannt oder getippt gilt er für ein Telefon.
desk-phones-a_phone_that_does_not = Ein Telefon, das diesem Server noch nicht vertraut
desk-phones-it_opens = Es öffnet zuerst { $place }. Dort muss es diese Gruppen zeigen: { $groups }
desk-phones-the_trust_page = die Vertrauensseite
desk-phones-make_a_code_for_a = Code für ein neues Telefon
desk-phones-no_phone_is_let_in = Noch kein Telefon ist zugelassen.
desk-phones-entries_seen = Einträge gesehen
desk-phones-not_handed_in = Nicht übergeben
desk-phones-clock = Uhr
desk-phones-leave = Abgang
desk-phones-never = nie
desk-phones-none_known = keine bekannt
desk-phones-shut_out = ausgesperrt { $when }
desk-phones-shut_out2 = Aussperren
desk-phones-a_missing_count_means_the = Eine fehlende Zählung heißt: das Telefon trug etwas ein, das nicht angekommen ist. Es übergibt von selbst, wenn es den Server wieder trifft.
desk-phones-counts_twice = Zählt doppelt:
desk-phones-more_than_one_entry_has = { $bold } mehr als ein Eintrag hat dieselbe Nummer dieses Telefons. Es gibt zwei Kopien davon, oder es wurde aus einer älteren Kopie eingerichtet. Alle Einträge sind im Buch. Das andere Telefon suchen; wenn es nicht zu finden ist, dieses aussperren und neu zulassen.
desk-phones-counts_twice2 = zählt doppelt
desk-phones-missing = fehlt
desk-phones-clock_off =
    { $minutes } min { $is_slow ->
        [yes] nach
       *[no] vor
    }
desk-phones-shut_out_entries_it_still = Ausgesperrt. Einträge darauf sind sicher und gehen hinein, sobald es wieder zugelassen ist.
desk-phones-there_is_no_such_phone = Dieses Telefon gibt es nicht.
desk-proof-lost_heads = Fehlende Köpfe
desk-proof-witnesses = Zeugen
desk-proof-each_backup_each_phone_and = Jede Sicherung, jedes Telefon und die Gruppe behalten Köpfe: kurze Beweise, hier mit dem Schlüssel { $code } unterschrieben, für alles, was das Buch zu einer Zeit enthielt. Ein seither umgeschriebenes Buch hat andere Köpfe. Bis zum letzten Kopf, den jemand anderswo behält, lässt sich keine Zeile unbemerkt ändern oder entfernen; spätere schon.
desk-proof-the_registry_is_proved_column = Das Verzeichnis ist seit { $when } Spalte für Spalte bewiesen.
desk-proof-the_registry_is_proved_column2 = Das Verzeichnis ist von Anfang an Spalte für Spalte bewiesen.
desk-proof-compares_all_of_it = { $code } vergleicht alles.
desk-proof-shown_once_and_no_longer = Einmal gezeigt und nicht mehr im Buch
desk-proof-came_back = Kam zurück
desk-proof-shown = Gezeigt
desk-proof-what_differs = Was abweicht
desk-proof-explained = erklärt
desk-proof-if_nobody_restored_an_older = Hat niemand eine ältere Sicherung zurückgespielt, so hat jemand die Datei des Buchs geändert. Diesen Ordner lassen, wie er ist, und mit einer Sicherung vergleichen: { $code }.
desk-proof-why_the_book_lacks_them = Warum sie dem Buch fehlen
desk-proof-note_it = Notieren
desk-proof-who_keeps_heads = Wer Köpfe behält
desk-proof-nobody_yet_phones_begin_with = Noch niemand. Telefone beginnen mit der nächsten Übergabe, Sicherungen mit der nächsten.
desk-proof-gave_it_back = Gab ihn zurück
desk-proof-beside_the_backups = Neben den Sicherungen
desk-proof-that_the_first_backup_makes = die die erste Sicherung macht
desk-proof-not_explained = nicht erklärt
desk-proof-noted_the_heads_stay_on = Vermerkt. Die Köpfe bleiben auf der Liste.
desk-rules-rules_the_book_was_judged = Regeln, nach denen geprüft wurde
desk-rules-the_book_is_judged_by = Das Buch wird nach den Regeln des Programms geprüft, das es führt. Wo eine Version andere bringt, wird jeder Eintrag neu geprüft, während Übergaben weitergehen. Was anders ausfiel, steht hier, bis es jemand gelesen hat.
desk-rules-version = Version
desk-rules-all_judged = Alles geprüft
desk-rules-read_by = Gelesen von
desk-rules-entries =
    { $unread } { $unread ->
        [one] Eintrag
       *[other] Einträge
    }
desk-rules-to_read = zu lesen
desk-rules-kinds_of_entry = Arten von Einträgen
desk-rules-sums_and_tables = Rechnungen und Tabellen
desk-rules-the_fold = die Buchrechnung
desk-rules-kept_you_have_read_it = Behalten: gelesen.
desk-rules-l_pure_alcohol = { $flow } L reiner Alkohol
desk-rules-the_book_was_never_judged = Danach wurde das Buch nie geprüft. Die Liste ansehen.
desk-rules-the_run = der Brand
desk-settings-settings = Einstellungen
desk-settings-changes = Änderungen
desk-settings-the_house = Das Haus
desk-settings-the_office_changes_the_house = { $name }. Das Büro ändert Haus und Leute und sperrt Telefone aus.
desk-settings-set_a_range = Bereich setzen
desk-settings-set_a_limit = Grenze setzen
desk-settings-set = { $count } gesetzt.
desk-settings-check_due = Prüfung fällig
desk-settings-by_which_the_book_is = Nach denen das Buch geprüft wird, und was nach anderen anders ausfiel.
desk-settings-backups = Sicherungen
desk-settings-not_encrypted_whoever_finds_one = Nicht verschlüsselt: wer eine findet, liest sie. { $code } auf dem Server macht den Schlüssel.
desk-settings-each_is_encrypted_to_the = Jede ist mit dem Schlüssel des Hauses verschlüsselt.
desk-settings-who_changed_what = Wer was änderte
desk-settings-nothing_was_changed_yet = Noch nichts geändert.
desk-settings-kept = Behalten.
desk-settings-there_is_no_such_instrument = Dieses Messgerät gibt es nicht.
desk-you-sessions = Sitzungen
desk-you-passkeys = Passkeys
desk-you-end_the_passkey = Den Passkey { $name } beenden
desk-you-keep_the_house = das Haus führen
desk-you-do_everything = alles tun
desk-you-signed_in_as_who_may = Angemeldet als { $bold }; darf { $what }.
desk-you-where_you_are_signed_in = Wo Sie angemeldet sind
desk-you-the_list_begins_with_the = Die Liste beginnt mit der nächsten Anmeldung.
desk-you-browser = Browser
desk-you-end = Ende
desk-you-last_used = Zuletzt benutzt
desk-you-end_it = Beenden
desk-you-end_all_others = Alle anderen beenden
desk-you-a_session_ends_hours_after = Eine Sitzung endet { $idle_h } Stunden nach der letzten Benutzung und { $most_h } Stunden nach ihrem Beginn, wie viel sie auch benutzt wird.
desk-you-your_passkeys = Ihre Passkeys
desk-you-a_passkey_opens_the_desk = Ein Passkey öffnet das Büro mit Finger, Gesicht oder PIN dieses Rechners, eines Telefons oder eines Sicherheitsschlüssels, ohne Passwort. Das Haus behält nur seine öffentliche Hälfte.
desk-you-passkey = Passkey
desk-you-good_at = Gilt bei
desk-you-made = Gemacht
desk-you-you_have_none_yet = Sie haben noch keinen.
desk-you-add_a_passkey = Passkey hinzufügen
desk-you-passkeys_are_bound_to_a = Passkeys sind an einen Namen gebunden. Das Büro unter dem Namen des Hauses öffnen, nicht unter einer Adresse aus Zahlen, um einen hinzuzufügen.
desk-you-your_password = Ihr Passwort
desk-you-change_it = Ändern
desk-you-forgotten_the_office_makes_you = Vergessen? Das Büro macht Ihnen eine Einladung; das alte kann niemand lesen.
desk-you-here = hier
desk-you-look = ansehen
desk-you-ended = Beendet.
desk-you-ended_you_are_signed_in = { $ended } beendet. Sie sind nur hier angemeldet.
desk-you-ended_it_opens_nothing_any = Beendet: er öffnet nichts mehr. Sitzungen, die er begann, lassen sich unten beenden.
desk-you-that_is_not_your_password = Das ist nicht Ihr Passwort. Noch einmal eintippen.
desk-you-there_is_no_such_session = Diese Sitzung gibt es nicht mehr.
desk-you-no_passkey_can_be_made = Unter dieser Adresse lässt sich kein Passkey machen. Das Büro unter dem Namen des Hauses öffnen.
desk-you-there_is_no_such_passkey = Diesen Passkey gibt es nicht mehr.
desk-you-your_password_is_changed_you = Ihr Passwort ist geändert. Sie sind nur hier angemeldet.
desk-you-this_took_too_long_or = Das dauerte zu lange oder ist nicht das Verlangte. Noch einmal drücken.
desk-you-kept_you_can_sign_in = Behalten. Sie können sich von jetzt an damit anmelden.
desk-laboratory_parts-results_of = Ergebnisse von { $document }
desk-laboratory_parts-no_limit_here = hier keine Grenze
desk-laboratory_parts-substance = Stoff
desk-laboratory_parts-found_and_how_it_stands = Gefunden, und wie es steht
desk-laboratory_parts-sample_of = { $link } · Probe vom { $taken_on }
desk-laboratory_parts-from = von { $link }
desk-laboratory_parts-not_tested_a_hydrometer_sees = Nicht geprüft: { $untested }. Eine Spindel sieht nichts davon.
desk-certificates-a_limit_and_a_result = { $caution } Grenze und Ergebnis stehen hier mit ihrer Quelle und damit, wie weit Labore auseinanderliegen. Keine Spindel, kein Dichtemessgerät und kein Refraktometer unterscheidet Methanol von Ethanol.
desk-certificates-the_newest_of_all_are = Die neuesten { $count } von { $count2 }; alle stehen unter den Einträgen.
desk-certificates-over_or_not_safely_under = Darüber oder nicht sicher darunter
desk-certificates-no_result_is_over_a = Kein Ergebnis liegt über einer Grenze oder nicht sicher darunter.
desk-certificates-no_certificate_yet_log_one = Noch kein Prüfbericht. Einen von seinem Gefäß aus eintragen, oder hier für Brand in Flaschen.
desk-casks_by_year-at_the_end_of_a = Am Ende eines Monats
desk-casks_by_year-casks_by_kind_and_year = Fässer nach Art und Jahr
desk-casks_by_year-at_the_end_of = Am Ende von
desk-casks_by_year-filled_casks = Volle Fässer { $when }, nach Inhalt und Jahr der Füllung; { $what } wie zuletzt gemessen.
desk-casks_by_year-at_the_end_of2 = am Ende von { $month }
desk-casks_by_year-now = jetzt
desk-casks_by_year-no_cask_is_full = Noch kein Fass ist voll.
desk-casks_by_year-wood = Holz
desk-casks_by_year-with = Mit ±
desk-casks_by_year-by_papers_only = nur nach Papieren
desk-casks_by_year-some_by_papers = { $casks } nur nach Papieren
desk-casks_by_year-no_cask_was_full = Dann ist kein Fass voll.
desk-close-what_is_closed = Was geschlossen wird
desk-close-the_entry_of_that_is = Der Eintrag von { $mark }, zu dem gefragt wird
desk-close-in = Ein, { $what }
desk-close-out = Aus, { $what }
desk-close-end = Ende, { $what }
desk-close-every_line_with_its = Jede Zeile, mit ihrem ±
desk-close-what_is_made_of = Woraus ± besteht
desk-close-in_the_name_of_this = Im Namen von { $name } schließt dies { $months } endgültig: die Zahlen bleiben, wie sie sind. Ein Eintrag, der später zu dieser Zeit kommt, wird im ersten offenen Monat angepasst, wo ihn alle sehen.
desk-close-months_to = { $count } Monate, { $first } bis { $last },
desk-close-each_of_them = jeden davon
desk-close-look_at_first = Zuerst { $link } ansehen.
desk-close-answer_them =
    { $count ->
        [one] sie beantworten
       *[other] sie beantworten
    }
desk-close-questions_are_open_read_each =
    { $count } { $count ->
        [one] Frage ist
       *[other] Fragen sind
    } offen. Jede lesen und es sagen; oder { $link }. Der Abschluss behält endgültig, was offen war.
desk-close-i_have_looked_at_these = Diese Zahlen habe ich angesehen
desk-close-close = { $name } schließen
desk-close-leave_it_open = Offen lassen
desk-close-back_to = Zurück zu { $name }
desk-held-by_account = Nach Konto
desk-held-the_least_known_first = Das Ungenaueste zuerst
desk-held-no_vessel_held_anything_measured = Kein Gefäß enthielt am Ende von { $name } etwas Gemessenes, oder zu viele, um allen zu folgen.
desk-held-at_the_end = Am Ende, { $what }
desk-held-of_it_measured = Davon gemessen
desk-held-known_to = Bekannt auf
desk-held-measured_anew_these_make_the = Neu gemessen, machen diese das Ende genauer.
desk-held-last_measured = Zuletzt gemessen
desk-held-only_what_came_in = nur was hineinkam
desk-held-more_are_better_known = { $more } weitere sind genauer bekannt.
desk-held-of_what_stood_there = : ± dessen, was dort stand
desk-period-came_after_the_last_close = Nach dem letzten Abschluss gekommen
desk-period-close_it = Schließen
desk-period-was_closed_by_on_digest = { $month } schloss { $person } am { $when }, Prüfwert { $code }.
desk-period-the_rest_is_open = Der Rest ist offen.
desk-period-was_closed_with_questions_open =
    { $month } wurde mit { $count } { $count ->
        [one] offenen Frage
       *[other] offenen Fragen
    } geschlossen, jede gelesen von { $person }
desk-period-what_came_to_light_after = Was nach dem Abschluss bekannt wurde. Die Zahlen oben bleiben, wie sie unterschrieben sind; der Unterschied wird im ersten offenen Monat angepasst.
desk-period-without_adjustments_each_figure_in = Ohne Anpassungen: jede Zahl in dem Monat, zu dem sie gehört.
desk-period-came = Gekommen
desk-period-period = Zeitraum { $name }
desk-periods-casks_by_year = Fässer nach Jahr
desk-periods-what_was_on_hand_at = Was am Ende jedes Vierteljahrs und Monats vorhanden war, in { $what }.
desk-periods-part_closed = zum Teil geschlossen
desk-periods-changed_since = seither geändert
desk-periods-tick_that_you_have_looked = Ankreuzen, dass die Zahlen angesehen sind, dann schließen.
desk-periods-is_closed_what_comes_to = { $name } ist geschlossen. Was jetzt bekannt wird, wird im ersten offenen Monat angepasst.
desk-records-records = Aufzeichnungen, { $where }
desk-records-rules_change_check_todays_text = { $caution } Regeln ändern sich: den heutigen Text prüfen.
desk-records-record = Aufzeichnung
desk-records-what_it_asks_for = Was sie verlangt
desk-records-where_the_book_holds_it = Wo das Buch sie hat
desk-records-not_held = Nicht vorhanden
desk-records-when_keep = Wann: { $when }. Aufheben: { $keep }.
desk-records-signed_by = Unterschrieben von: { $sign }.
desk-records-source = Quelle: { $source }.
desk-records-eu = EU
desk-records-uk = UK
desk-seasons-litres_of_pure_alcohol_at = Liter reiner Alkohol bei 20 °C
desk-seasons-from_fruit_to_spirit_in = Vom Obst zum Brand in einer Rechnung: womit die Brenngeräte gefüllt wurden und wo es ist. { $what }.
desk-seasons-no_fruit_has_come_and = Noch kam kein Obst, und kein Brenngerät lief.
desk-seasons-season = Brennsaison { $name }
desk-seasons-of_the_wash = der Maische
desk-seasons-l_of_pure_alcohol_from = L reiner Alkohol aus 100 kg
desk-seasons-of_fruit_what_a_ferment = { $l_per_100kg } { $what } Obst. Was eine Gärung gab und kein Brenngerät bekam, ist noch in den Gärbottichen oder ging mit dem Geläger.
desk-seasons-litres_gauged_not_litres_taxed = Gemessene Liter, keine versteuerten
desk-seasons-gauged_not_taxed = Gemessen, nicht versteuert
desk-seasons-a_season_runs_twelve_months = { $what }. Eine Brennsaison läuft zwölf Monate ab Juli; ein Haus südlich des Äquators setzt seinen Monat in den Einstellungen.
desk-seasons-made_by_fermentation = Durch Gärung entstanden
desk-seasons-hearts = Mittellauf
desk-seasons-heads = Vorlauf
desk-seasons-feints_on_hand = Vor-/Nachlauf vorhanden
desk-seasons-stillage = Schlempe
desk-seasons-between_two_dips_of_low = Zwischen zwei Peilungen von Lutter
desk-seasons-found_by_gauges_after_collection = Durch Messung nach dem Auffangen gefunden
desk-seasons-lost_out_of_the_stills = Aus den Brenngeräten verloren, nach Eintrag
desk-seasons-on_a_still_now = Jetzt auf einem Brenngerät
desk-seasons-made_of_fruit = Durch Gärung entstanden aus { $fruit } Obst
desk-seasons-wash_charged = Maische eingefüllt in { $runs } Bränden
desk-runs_parts-in_out = Ein { $charged }, aus { $came }:
desk-runs_parts-not_accounted_for = { $open }{ $pure } ({ $share } %) nicht erklärt.
desk-runs_parts-more_than_went_in = { $open }{ $pure } ({ $share } %) mehr, als hineinging.
desk-runs_parts-stillage_was_not_read_taken = Schlempe nicht abgelesen: angesetzt mit { $stillage_pct } { $what }.
desk-runs_parts-plans = Pläne
desk-runs_parts-low_look_at_fruit_ferment = niedrig: Obst, Gärung, Bilanz ansehen
desk-runs_parts-high_look_at_weights_and = hoch: Gewichte und Messungen ansehen
desk-runs_parts-in = ein
desk-runs_parts-out = aus
desk-beside-runs_beside_each_other = Brände nebeneinander
desk-beside-list_of_runs = Liste der Brände
desk-beside-tick_two_to_runs_in = In der { $link } zwei bis { $most } Brände ankreuzen.
desk-beside-still_began = Gerät, begonnen
desk-beside-charged = Eingefüllt, { $what }
desk-beside-feints_in = Vor-/Nachlauf dazu, { $what }
desk-beside-hearts_at = Mittellauf, { $what } mit { $what2 }
desk-beside-hearts_share_of_the_charge = Mittellauf, Anteil der Füllung
desk-beside-hearts_begin_at = Mittellauf beginnt bei
desk-beside-tails_begin_at = Nachlauf beginnt bei
desk-beside-from_100_kg_l_pure = Aus 100 kg, L reiner Alkohol
desk-beside-from_100_lb_proof_gal = Aus 100 lb, Proof gal
desk-beside-over_alcohol = Wirklicher Gehalt über aufgefangenem reinem Alkohol
desk-feints-feints_by_fruit = Vor-/Nachlauf nach Obst
desk-feints-no_feints_yet_they_come = Noch kein Vor- oder Nachlauf. Er kommt mit der Messung von Vorlauf und Nachlauf.
desk-feints-heads_and_tails_by_fruit = Vor- und Nachlauf nach Obst: was beiseite kam, was spätere Brände bekamen, was vernichtet wurde, was steht. Ein späterer Brand kann von anderem Obst sein: was er bekam, zählt für das gebrannte Obst.
desk-feints-heads_set_aside = Vorlauf beiseite
desk-feints-tails_set_aside = Nachlauf beiseite
desk-feints-used_in_its_runs = In Bränden verwendet
desk-feints-destroyed = Vernichtet
desk-feints-standing_is_by_what_was = Was steht, gilt nach der letzten Nennung am Gefäß. Eine Spindel sieht kein Methanol: Vor- und Nachlauf werden gehalten, wie Labor und Gesetz es sagen, nicht nach ihrem Gehalt.
desk-plans-cut_plans_and_best_runs = Abtrennpläne, beste Brände
desk-plans-plan_for_any_still = Plan für jedes Gerät
desk-plans-for_one_still_log_it = { $link } Für ein Gerät auf dessen Brennblatt eintragen. Der letzte Plan zählt; die Nase entscheidet.
desk-plans-no_plan_yet_and_no = Noch kein Plan, und kein Brand ist als bester bezeichnet.
desk-plans-heads = Vorlauf, { $what }
desk-plans-hearts_to = Mittellauf bis, { $what }
desk-plans-tails_to = Nachlauf bis, { $what }
desk-plans-who_when = Wer, wann
desk-plans-blind_tasting = Blindverkostung { $tasting }
desk-plans-best_runs = Beste Brände
desk-run-balance = Bilanz
desk-run-on_from = { $what } { $batch } auf { $link }, von { $when }
desk-run-to = bis { $when }
desk-run-charge = Füllung { $volume_l }
desk-run-with = mit { $lpa_l }{ $pure }
desk-run-it_is_known_to_by = Bekannt auf { $uncertain } { $what }, nach der Klasse der abgelesenen Geräte.
desk-run-usual_is_0_5_to = Üblich sind 0,5 bis 2 %.
desk-run-from_of_wash_of_fruit = { $bold }, { $per_100_l } aus { $what } Maische; { $kg } Obst nach seinem Anteil am Ansatz.
desk-run-l_from_100_kg = L aus 100 kg
desk-run-flat_rate_for_in_germany = Ausbeutesatz für { $name }: { $de_l }{ $what } in Deutschland
desk-run-in_austria = { $at_l } in Österreich
desk-run-this_is_of_the_first = das sind { $of_flat_rate } des ersten.
desk-run-plan = Plan:
desk-run-heads = Vorlauf { $heads_l };
desk-run-hearts_to = Mittellauf bis { $hearts_to_pct } { $what };
desk-run-tails_to = Nachlauf bis { $tails_to_pct } { $what };
desk-run-blind_tasting = Blindverkostung { $tasting }
desk-run-resting_on = beruht auf { $link }
desk-run-best_run_of = Bester Brand: { $what }
desk-run-why_it_is_the_best = Warum er der beste ist
desk-run-mark_as_the_best_run = Als besten bezeichnen: { $what }
desk-run-cuts_and_events = Abtrennungen, Ereignisse
desk-run-event = Ereignis
desk-run-receiver = Vorlage
desk-run-true = { $what } wirklich
desk-run-logged = eingetragen { $typed_at }
desk-run-fractions = Fraktionen
desk-run-none_gauged_yet = Noch keine gemessen.
desk-run-fraction = Fraktion
desk-run-glass = Spindel
desk-run-spirit = Brand { $what }
desk-run-vapour = Dampf { $what }
desk-run-dip = Peilung, { $what }
desk-run-a_hydrometer_cannot_see_methanol = Eine Spindel sieht kein Methanol. Hier nicht geprüft: Methanol, Ethylcarbamat.
desk-run-l_pure_alcohol_from_100 = L reiner Alkohol aus 100 kg
desk-run-the_book_has_no_such = Das Buch hat keinen solchen Brand. In der Liste der Brände suchen.
desk-run-marked_as_the_best_run = Als bester Brand bezeichnet: { $what }.
desk-run-not_marked = Nicht bezeichnet:
desk-run-not_accounted_for = nicht erklärt
desk-run-this_still = dieses Gerät
desk-run-true_strength_through = Wirklicher Gehalt im Lauf des Brands
desk-run-true_strength = wirklicher Gehalt
desk-run-cut_logged = { $at }, eingetragen { $typed_at }
desk-runs-no_runs_yet_a_charge = Noch keine Brände. Eine Füllung eines Brenngeräts beginnt einen.
desk-runs-beside_each_other = Nebeneinander
desk-runs-tick_two_to = Zwei bis { $most } ankreuzen.
desk-runs-tick = Ankreuzen
desk-runs-began = Begonnen
desk-runs-charge = Füllung, { $what }
desk-runs-cuts = Abtrennungen
desk-runs-beside_others = { $name } neben anderen
desk-runs-best = bester
desk-runs-tails =
    { $is_heads_cut ->
        [yes] Mittellauf
       *[no] Nachlauf
    } { $at }
desk-runs-logged = (eingetragen { $typed_at })
desk-runs-at = bei { $true_strength } { $what }
desk-runs-pure_alcohol_in_l = Reiner Alkohol ein, L
desk-runs-proof_gal_in = Proof gal ein
desk-yields-yield_of_each_ferment = Ausbeute jeder Gärung
desk-yields-yield_by_fruit_and_year = Ausbeute nach Obst und Jahr
desk-yields-no_yield_yet_it_needs = Noch keine Ausbeute. Es braucht gewogenes Obst, eine Füllung aus seinem Gärbottich, und gemessenen Mittellauf oder Lutter.
desk-yields-what_each_ferment_gave_all = Was jede Gärung gab: alles Übergegangene, ohne den Vor- und Nachlauf, der hineinging. Ausbeutesätze sind sichere Mittel, nach denen Steuer berechnet wird, keine Ziele; unter 60 % oder über 150 % ist einen Blick wert (übliche Praxis). Die eigenen Jahre des Hauses sagen mehr.
desk-yields-first_run = Erster Brand
desk-yields-fruit_run = Obst gebrannt, { $what }
desk-yields-wash_run = Maische gebrannt, { $what }
desk-yields-made = Entstanden, { $what }
desk-yields-n100_kg = 100 kg
desk-yields-n100_lb = 100 lb
desk-yields-from = aus { $what }
desk-yields-flat_rate_de = Satz DE
desk-yields-flat_rate_at = Satz AT
desk-yields-of_the_rate = Vom Satz
desk-yields-a_100_kg = je 100 kg
desk-yields-the_houses_own_years_from = Die eigenen Jahre des Hauses, aus { $what }
desk-yields-ferment =
    { $yield } { $what }, { $ferments } { $ferments ->
        [one] Gärung
       *[other] Gärungen
    }
desk-yields-where_the_flat_rates_come = Woher die Ausbeutesätze kommen
desk-yields-check_them_against_the_order = Mit der geltenden Verordnung vergleichen, bevor etwas danach berechnet wird.
desk-yields-proof_gallons_the_flat_rates = Proof Gallons; die Ausbeutesätze wie veröffentlicht, in Liter reinem Alkohol
desk-yields-austria = Österreich
desk-yields-spread_in_handbooks = Spanne in Handbüchern
desk-yields-a_ferment = Gärung
desk-lines-the_whole_book = Das ganze Buch
desk-lines-find = Suchen
desk-lines-mark_lot_person_paper_no = Kennung, Los, Person, Belegnr.
desk-lines-what_answers = Was gefunden ist
desk-lines-find_in_the_book = Im Buch suchen
desk-lines-shown = { $many } gezeigt. Pfeil nach unten führt hin.
desk-lines-nothing_answers = Nichts gefunden.
desk-hits-all_that_answers_to = Alles zu „{ $text }“
desk-hits-nothing_answers_to = Nichts zu „{ $text }“.
desk-search-the_index_of_older_entries = Das Verzeichnis älterer Einträge entsteht noch. Was zuletzt hineinkam, lässt sich finden; der Rest folgt von selbst.
desk-search-everything_that_answers = Alles Gefundene
desk-search-the_first_type_more_of = Die ersten { $most }: mehr davon tippen.
desk-search-more_of_these = Mehr davon
desk-search-did_you_mean = Gemeint war
desk-search-list_of_entries = Liste der Einträge
desk-search-try_a_shorter_beginning_or = Einen kürzeren Anfang versuchen oder ein Wort weniger. Einträge ohne ein Wort darin findet man über ihr Gefäß oder in der { $link }. Was auf einem Telefon wartet, ist noch nicht im Buch.
desk-search-type_the_beginning_of_a = Den Anfang einer Kennung, eines Ansatzes oder Loses, eines Brands, eines Lieferanten, einer Belegnummer, einer Person, eines Messgeräts oder eines Worts der Bemerkung tippen. C6, c-006 und C 006 finden dasselbe Fass; Akzente zählen nicht. Auch die Nummer eines Eintrags im Buch findet ihn.
desk-search-found_for = Gefunden zu „{ $text }“
desk-search-search = Suche
desk-search-a_trace_goes_both_ways = Eine Spur geht in beide Richtungen: von Flasche, Fass oder Brand zurück zum Obst, und von einer Lieferung Obst zu jeder Flasche.
desk-search-the_book_has_nothing_by = Das Buch hat nichts unter diesem Namen. Eine Kennung, einen Ansatz, eine Kartonnummer oder einen Teil vom Namen des Lieferanten versuchen.
desk-search-that_answer_to =
    { $are_more ->
        [yes] Die ersten { $count }
       *[no] { $count }
    } zu „{ $text }“
desk-search-nothing_among = Unter { $group } nichts zu „{ $text }“.
desk-search-a_vessel = Gefäß
desk-search-batches_and_lots = Ansätze und Lose
desk-search-bottlings = Abfüllungen
desk-search-fruit_taken_in = Angenommenes Obst
desk-search-papers = Papiere
desk-search-entries_and_remarks = Einträge und Bemerkungen
desk-search-put_right_since = seither berichtigt
desk-search-waits_for_an_answer = wartet auf Antwort
desk-search-out_of_use = außer Betrieb
desk-search-since = seit { $since }
desk-search-no = { $day }, { $person }, Nr. { $number }
desk-search-to = { $since } bis { $until }
desk-search-to2 = bis { $last }
desk-look-row = Zeile { $number }, { $head_of }
desk-look-row2 = Zeile
desk-look-computed = gerechnet
desk-look-pure_alcohol_l = Reiner Alkohol, L{ $part }
desk-look-rows = { $name } · { $count } Zeilen · { $code }
desk-look-look_again = Nachsehen
desk-look-nothing_is_in_the_book = Noch ist nichts im Buch.
desk-look-cell_is_a_formula_what =
    { $formulas ->
        [one] { $formulas } Zelle ist eine Formel: genommen wird, was sie zuletzt zeigte.
       *[other] { $formulas } Zellen sind Formeln: genommen wird, was sie zuletzt zeigten.
    }
desk-look-read_them_so = So lesen
desk-look-which_column_is_which = Welche Spalte welche ist
desk-look-of_taken = { $count } von { $count2 } genommen
desk-look-these_rows_are = Diese Zeilen sind
desk-look-not_said = nicht angegeben
desk-look-in = in { $unit }
desk-look-none_of_these = keine davon
desk-look-more_rows_fit = { $count } weitere Zeilen passen
desk-look-rows_to = Zeilen { $others } bis { $others2 }
desk-look-what_does_not_fit_in = Was nicht passt, in Worten
desk-look-row3 = Zeile { $number }
desk-look-leave_row_out = Zeile { $number } weglassen
desk-look-more_put_these_right_first = { $more } weitere. Zuerst diese richten, oder im Blatt.
desk-look-rows_fit_they_bring = { $count } Zeilen passen. Sie bringen
desk-look-l_of_pure_alcohol = { $bold } L reiner Alkohol
desk-look-row_fit =
    { $count ->
        [one] { $count } Zeile passt.
       *[other] { $count } Zeilen passen.
    }
desk-look-put_in_the_book = { $put } ins Buch setzen
desk-look-the_book_has_all_of = Das Buch hat das alles schon. Nichts zu tun.
desk-look-nothing_fits_yet = Noch passt nichts.
desk-look-known_already = schon bekannt
desk-look-does_not_fit = passt nicht
desk-look-left_out = weggelassen
desk-look-days_in_digits = Tage in Ziffern
desk-look-days_were_read_as = Tage gelesen als
desk-look-day_month_year = Tag, Monat, Jahr
desk-look-month_day_year = Monat, Tag, Jahr
desk-look-more_of = Mehr: { $title }
desk-start-moving_in = Einzug
desk-start-copy_the_rows_with_their = Die Zeilen mit ihren Überschriften in der Tabelle kopieren und hier einfügen.
desk-start-template_of_csv = Vorlage für { $title }, CSV
desk-start-sheets = Blätter
desk-start-a_file = Eine Datei
desk-start-csv_xlsx_or_ods_with = CSV, XLSX oder ODS, mit einer Überschrift über jeder Spalte, in beliebiger Reihenfolge. Eine Mappe darf mehrere Tabellen enthalten.
desk-start-or_pasted = Oder eingefügt
desk-start-nothing_is_written_before_you = Nichts wird geschrieben, bevor Sie es sagen.
desk-start-templates = Vorlagen
desk-start-all_in_one_workbook = Alle in einer Mappe
desk-start-needed_more_may_be_there = nötig; { $count } weitere dürfen da sein
desk-start-put_in_so_far = Bisher eingelesen
desk-start-no_sheet_yet = Noch kein Blatt.
desk-start-no = Nr.
desk-taken-why_it_is_taken_back = Warum es zurückgenommen wird
desk-taken-the_file = Die Datei
desk-taken-another_sheet = Ein anderes Blatt
desk-taken-put_in_by_kept_as = Eingelesen von { $person }, { $when }. Behalten, wie es kam, Prüfwert { $code }.
desk-taken-by = { $when } von { $back_by }: { $reason }
desk-taken-take_the_whole_sheet_back = Das ganze Blatt zurücknehmen
desk-taken-table = Tabelle
desk-taken-row = Zeile
desk-taken-which = Welche
desk-taken-opening_stock = Anfangsbestand
desk-taken-sheet = Blatt { $no }
desk-cautions-n20_to_30_vol = 20 bis 30 % vol
desk-cautions-n40_to_60_proof = 40 bis 60 Proof
desk-cautions-n20_to_30_ml = 20 bis 30 mL
desk-cautions-about_1_fl_oz = etwa 1 fl oz
desk-cautions-reduce_to_a_glass_and = Auf { $what } herabsetzen, { $what2 } je Glas, und ausspucken. Höchstens drei oder vier Sätze in einer Sitzung, Wasser und einfaches Brot dazwischen, zwei Minuten Pause. Nach dem Verkosten fährt niemand und arbeitet niemand an Brenngerät oder Maschine. Vorlauf wird nie verkostet: höchstens gerochen. Eine Verkostung spricht einen Brand nie frei: Methanol, Blausäure und Ethylcarbamat verraten sich nicht im Geschmack. Hausregeln, örtliches Recht und ein zugelassenes Labor gehen vor.
desk-new-what_a_number_of_answers = Was eine Zahl von Antworten findet
desk-new-triangle_three_glasses_one_is = Dreieck: drei Gläser, eines weicht ab. Duo-Trio: eines steht offen, welches der zwei ist gleich? Paar: welches hat mehr vom Gefragten? Einseitig, wo Sie A vorher als Antwort nennen. Rangfolge: drei bis fünf Proben der Reihe nach.
desk-new-of_sample_in_words = Von Probe { $letter }, in Worten
desk-new-tasters = Verkoster
desk-new-draw_the_codes_and_seal = Codes ziehen und versiegeln
desk-new-a_triangle_at_a_risk = Ein Dreieck bei einem Risiko von 5 %. Wenige Antworten finden nur große Unterschiede.
desk-new-right_at_least = Richtig, mindestens
desk-new-found_if_half_perceive_it = Gefunden, wenn die Hälfte ihn merkt
desk-new-found_four_times_in_five = Gefunden in vier von fünf ab
desk-new-who_perceive_it = { $what } %, die ihn merken
desk-new-set_out_a_blind_tasting = Blindverkostung anlegen
desk-new-n64_to_60_vol = 64 bis 60 % vol
desk-new-n128_to_120_proof = 128 bis 120 Proof
desk-tasting-how_often_guessing_alone_gives = Wie oft Raten allein jede Zahl richtiger Antworten gibt; diese Verkostung gab { $right } von { $answers }.
desk-tasting-who_has_answered = Wer geantwortet hat
desk-tasting-serving_sheet = Servierblatt
desk-tasting-risk = { $bold } { $method }, Risiko { $alpha_pct } %
desk-tasting-served_at = serviert mit { $served }
desk-tasting-set_out_by_on = Angelegt von { $person } am { $when }.
desk-tasting-what_follows_by = Was folgt, von { $person }: { $bold }
desk-tasting-answers_came_in_after_the =
    { $count } { $count ->
        [one] Antwort
       *[other] Antworten
    } kamen nach dem Öffnen, nach der Uhr des Telefons davor eingetragen: { $late }.
desk-tasting-bars_how_often_guessing_alone = Balken: wie oft Raten allein so viele gibt. Die Marke: diese Verkostung.
desk-tasting-plan_a_cut_that_rests = Abtrennung darauf planen
desk-tasting-plan_a_vat_that_rests = Verschnitt darauf planen
desk-tasting-it_was_opened_on_and = Geöffnet am { $when }, und keine Antwort zählt.
desk-tasting-letter = Buchstabe
desk-tasting-sample = Probe
desk-tasting-of_it = Davon
desk-tasting-rank_sum = Rangsumme
desk-tasting-batch = Ansatz { $name }
desk-tasting-run = Brand { $name }
desk-tasting-taster = Verkoster
desk-tasting-glasses = Gläser
desk-tasting-named = Genannt
desk-tasting-how_sure = Wie sicher
desk-tasting-what_gave_it_away = Woran erkannt
desk-tasting-not =
    { $picked }, { $is_right ->
        [yes] richtig
       *[no] nicht
    }
desk-tasting-entry = Eintrag
desk-tasting-sealed_of_answers_are_in = Versiegelt: { $count } von { $count2 } Antworten sind da
desk-tasting-which_code_holds_which_sample = Welcher Code welche Probe hat, weiß nur, wer einschenkt. Der Eintrag behält das Siegel des Schlüssels, damit ihn danach niemand ändern kann.
desk-tasting-glasses_left_to_right = Gläser, von links nach rechts
desk-tasting-tasters_answer_on_the_phone = Verkoster antworten auf dem Telefon, unter Blindverkostung. Das geht ohne Netz.
desk-tasting-answers_that_are_not_in =
    { $are_in ->
        [yes] Alle Antworten sind da.
       *[no] Antworten, die noch nicht da sind, zählen nicht.
    } Einmal geöffnet, bleibt sie offen.
desk-tasting-what_follows_if_you_know = Was folgt, wenn schon bekannt
desk-tasting-you_taste_in_this_one = Sie verkosten hier mit. Öffnen geht, sobald die letzte Antwort da ist.
desk-tasting-blind_tasting = Blindverkostung { $name }
desk-tasting-difference_found = Unterschied gefunden
desk-tasting-no_difference_shown = kein Unterschied gezeigt
desk-tasting-in = da
desk-tasting-run2 = Brand { $run }, { $what }
desk-tasting-the_book_has_no_tasting = Das Buch hat keine Verkostung dieses Namens. In der Liste der Verkostungen suchen.
desk-tasting-you_taste_in_this_one2 = Sie verkosten hier mit. Sie können öffnen, sobald die letzte Antwort da ist.
desk-tasting-its_key_is_not_in = Ihr Schlüssel ist nicht in diesem Buch: er wurde nach der Sicherung gezogen, aus der dieses Buch kommt. Neu einschenken.
desk-tasting-this_sheet_says_which_sample = Dieses Blatt sagt, welche Probe in welchem Glas ist: es ist für den, der einschenkt, und kein Verkoster sieht es.
desk-tasting-not_said = nicht angegeben
desk-tasting-the_book_has_a_tasting = Das Buch hat eine Verkostung dieses Namens. Dieser einen anderen geben.
desk-tasting-the_codes_are_drawn_and = Die Codes sind gezogen und versiegelt. Das Telefon jedes Verkosters hat sie mit den nächsten Karten.
desk-tasting-it_is_open_answers_from = Sie ist offen. Antworten von jetzt an zählen nicht.
desk-tasting-by_guessing_alone_so_many = Durch Raten allein kommen so viele oder mehr { $times_in } ({ $p_words }).
desk-tasting-by_chance_alone_the_rank = Durch Zufall allein liegen die Rangsummen so weit auseinander { $times_in } ({ $p_words }, { $how }; Friedman-Wert { $friedman }).
desk-tasting-of_rank_sums_must_be = { $answers } von { $people }: um zu zählen, müssen Rangsummen { $lsd } auseinander sein.
desk-tasting-n1_time_in = 1 Mal in { $min }
desk-tasting-named2 = genannt { $named }
desk-tasting-no_difference_shown_that_is = Kein Unterschied gezeigt. Das ist kein Beweis für Gleichheit.
desk-tasting-were_needed = { $needed } waren nötig
desk-tasting-so_few_answers_cannot_show = so wenige Antworten können bei diesem Risiko keinen Unterschied zeigen
desk-tasting-can_find_nothing_at_a = { $answers } können bei einem Risiko von { $tasting } % nichts finden.
desk-tasting-of_find_a_difference_four = { $answers } von { $people } finden einen Unterschied in vier von fünf Fällen, wenn mindestens { $share } der Antworten ihn merken; ein kleinerer wird leicht übersehen.
desk-tasting-the_order_is_more_than = Die Reihung ist mehr als Zufall. Auseinander liegen: { $pairs }.
desk-tasting-counted_out_over_all_orders = über alle Reihungen ausgezählt
desk-tasting-by_chi_square_which_is = nach Chi-Quadrat, was bei so vielen nahe ist
desk-tasting-it_speaks_of_these_people = Das spricht von diesen Leuten, nicht von Trinkern überhaupt.
desk-tasting-answers =
    { $many ->
        [one] { $many } Antwort
       *[other] { $many } Antworten
    }
desk-tasting-people =
    { $many ->
        [one] { $many } Person
       *[other] { $many } Personen
    }
desk-tasting-times_in_10 = { $min } Mal in 10
desk-tasting-p_below_0_0001 = p unter 0,0001
desk-tasting-they_can_be_told_apart = Sie lassen sich unterscheiden.
desk-tasting-is_named_more_often = { $named } wird öfter genannt.
desk-tasting-the_order_is_more_than2 = Die Reihung ist mehr als Zufall, aber keine zwei liegen weit genug auseinander, um zu sagen, welche.
desk-tasting-no_order_shown_that_is = Keine Reihung gezeigt. Das ist kein Beweis für Gleichheit.
desk-tasting-of = { $right } von { $many } { $what }; { $needed }. { $says }
desk-tastings-set_out_a_tasting = Verkostung anlegen
desk-tastings-ask_one_question_before_pouring = Vor dem Einschenken eine Frage stellen. Wer verkostet, weiß nicht, was in welchem Glas ist; das Buch rechnet, was die Antworten wert sind. Vorlauf wird nie verkostet.
desk-tastings-none_yet_set_one_out = Noch keine. Eine anlegen: zwei Proben, eine Frage, und wer verkostet.
desk-tastings-tasting = Verkostung
desk-tastings-question = Frage
desk-tastings-method = Verfahren
desk-tastings-set_out = Angelegt
desk-tastings-of = { $count } von { $count2 }
desk-tastings-nobody_answered = niemand antwortete
desk-tastings-sealed = versiegelt
desk-asked-look_at_it = Ansehen: { $title }
desk-asked-more_about_it = { $count } weitere dazu
desk-asked-all_questions_with_their_answers = Alle { $owed } Fragen, mit ihren Antworten
desk-asked-answer_them = Beantworten
desk-asked-no_figure_waits_for_an = Keine Zahl wartet auf Antwort.
desk-asked-you = Sie
desk-asked-it_stands = gilt
desk-asked-the_last_answer_was_by = Die letzte Antwort { $near }, von { $who }: { $verdict }
desk-asked-what_comes_in_out_of = Was außerhalb des Bereichs kommt, steht dann hier.
desk-asked-all_answers = Alle Antworten
desk-asked-look_at_it_on = Ansehen: { $title } an { $mark }
desk-asked-struck = gestrichen
desk-house-pure_alcohol_year_by_year = Reiner Alkohol Jahr für Jahr
desk-house-the_house_holds = Das Haus hat
desk-house-litres_of_pure_alcohol = Liter reiner Alkohol
desk-house-by_the_book_at = { $what }, nach dem Buch um { $minute }
desk-house-less_than_on =
    { $more } { $is_more ->
        [yes] mehr
       *[no] weniger
    } als am { $since }
desk-house-pure_alcohol_by_spirit = Reiner Alkohol nach Spirituose
desk-house-oldest = älteste
desk-house-others = { $many } andere
desk-house-wash_and_runs_under_way = Maische und Brände im Gang
desk-house-at_the_ends_of_months = An den Monatsenden, wie jetzt bekannt: alles, und was in Lagerung ist.
desk-house-year_by_year = Jahr für Jahr
desk-house-in_storage = in Lagerung
desk-house-in_processing = in Verarbeitung
desk-house-in_production = in Herstellung
desk-house-season = Brennsaison { $season }
desk-house-fruit_in = Obst an
desk-house-made = entstanden
desk-house-left = hinaus
desk-house-lost = verloren
desk-house-pure_alcohol_in_the_house = Reiner Alkohol im Haus
desk-house-all = alle
desk-line-as_typed_likely_expected = { $part } wie getippt { $part2 } wahrscheinlich { $part3 } erwartet
desk-line-the_day_on_a_line = Der Tag auf einer Linie
desk-line-cleaned = gereinigt
desk-line-off = aus { $at }
desk-line-reached = erreicht: zuerst die Nase
desk-line-too_little = noch zu wenig abgelesen
desk-line-working = wird gerechnet
desk-line-cut_to = auf { $part }
desk-line-end = Ende
desk-line-end_of_run = Ende des Brands
desk-line-span = { $low } bis { $high }
desk-line-cleaned_at = gereinigt { $at }, { $person }
desk-line-off_since = { $run } ist aus seit { $at }
desk-line-since = { $run }: { $part } seit { $at }
desk-line-nothing = heute nichts
desk-line-by_plan = nach dem Plan
desk-line-as_last = wie zuletzt
desk-line-was_expected = { $what } war etwa um { $at } erwartet, { $by }: jetzt ablesen, zuerst die Nase
desk-line-expected = { $what } etwa um { $at }, zwischen { $low } und { $high }, { $by }
desk-line-is_reached = { $what } ist erreicht, { $by }: zuerst die Nase
desk-line-is_working = { $what } wird gerechnet: die Seite neu öffnen
desk-line-is_unknown = zu wenig abgelesen, um zu sagen, wann es so weit ist: { $what }
desk-lists-phones_backup_and_book = Telefone, Sicherung und Buch
desk-lists-near_their_end = Nahe am Ende
desk-lists-all_ferments = Alle Gärungen
desk-lists-no_ferment_says_yet_when = Noch sagt keine Gärung, wann sie endet. { $link }
desk-lists-the_days_are_meant_to = Die Tage sollen in vier von fünf Fällen gelten; dreimal dieselbe Dichte entscheidet. { $link }
desk-lists-nothing_is_due = Nichts ist fällig.
desk-lists-since_you_were_last_here = Seit Ihrem letzten Besuch, { $near }
desk-lists-nothing_has_come_in = Nichts ist gekommen.
desk-lists-entries_of =
    { $entries ->
        [one] Eintrag
       *[other] Einträge
    } von { $count }
desk-lists-read_them = Lesen
desk-lists-never_heard_yet = noch nie gehört
desk-lists-since_what_it_holds_is = seit { $near }. Was es enthält, ist nicht hier.
desk-lists-more_phones =
    { $more_phones } { $more_phones ->
        [one] weiteres Telefon
       *[other] weitere Telefone
    }
desk-lists-book = Buch
desk-lists-entries =
    { $bold } { $what } { $entries ->
        [one] Eintrag
       *[other] Einträge
    }
desk-lists-misses = { $count } fehlen
desk-lists-silent = still
desk-lists-heard = vernommen
desk-lists-being_judged_anew = wird neu geprüft
desk-lists-judged = geprüft
desk-lists-every_entry_by_the_rules = jeder Eintrag nach den Regeln und Grenzen, wie sie jetzt sind
desk-today-today = Heute – { $name }
desk-today-owed_an_answer = Antwort offen
desk-trace_parts-and_more_all_are_in = und { $more } weitere: alle stehen in der Datei
desk-trace_parts-and_more_all_are_in2 = und { $count } weitere: alle stehen in der Datei
desk-trace-print_the_passport = Lospass drucken
desk-trace-load_of_fruit = Lieferung Obst
desk-trace-words = { $bold }{ $pure } { $what2 }
desk-trace-its_entry = Sein Eintrag
desk-trace-the_run = Der Brand
desk-trace-the_vessel = Das Gefäß
desk-trace-lot_mark = Loszeichen
desk-trace-none_of_it_is_in = Nach dem Buch ist nichts davon in Flaschen.
desk-trace-no_case_of_it_has = Nach dem Buch ist kein Karton davon hinaus.
desk-trace-not_accounted_for_yet = noch nicht erklärt
desk-trace-by_mass = nach Masse
desk-trace-tasted_blind = Blind verkostet
desk-trace-nothing_has_moved_into_it = Noch nichts ging hinein oder heraus.
desk-trace-every_vessel_and_run_is = Jedes Gefäß und jeder Brand gilt als gut gemischt: was hinausgeht, enthält alles, was zuvor hineinkam, jedes nach seinem Anteil am reinen Alkohol. Der Alkohol einer Gärung ist auf ihre Lieferungen nach Masse verteilt. Eine Messung ändert, wie viel da ist, nicht, was es ist.
desk-trace-made_of = Aus
desk-trace-picture = { $head }: { $name }. Die Liste unter dem Bild sagt dasselbe in Worten.
desk-trace-from_before_this_book = Aus der Zeit vor diesem Buch
desk-trace-received_from_elsewhere = Von anderswo erhalten
desk-trace-not_on_record = Nicht aufgezeichnet
desk-trace-no_fruit_on_record = Kein Obst aufgezeichnet
desk-trace-not_followed = Nicht verfolgt
desk-trace-ferments = Gärungen
desk-trace-receivers = Vorlagen
desk-trace-cans = Kannen
desk-trace-stills = Brenngeräte
desk-trace-tanks = Tanks
desk-trace-vats = Verschnitte
desk-trace-between_sites = Zwischen Orten
desk-trace-bottlings = Abfüllungen
desk-trace-bottles_between_sites = Flaschen zwischen Orten
desk-trace-received_in_bottles = In Flaschen erhalten
desk-trace-gone = Weg
desk-trace-trace_of = Spur von { $name }
desk-trace-the_book_has_nothing_to = Unter diesem Namen hat das Buch nichts zu verfolgen. Mit der Suche auf der Spurenseite suchen.
desk-trace-under_0_1 = unter 0,1 %
desk-trace-origin = Herkunft
desk-trace-bottles_losses = Flaschen, Verluste
desk-trace-others = { $count } andere
desk-dips-strapping_table = Peiltabelle
desk-dips-paste_the_two_columns_of = Die beiden Spalten der Tabelle einfügen: die Ablesung, dann das Volumen, mit Strichpunkt, Tabulator oder Leerzeichen dazwischen. Von Zeile zu Zeile folgt das Volumen einer Geraden.
desk-dips-dimensions_of_a_cask = Maße eines Fasses
desk-dips-inside_without_the_wood_by = Innen, ohne das Holz. Danach ist das Volumen geschätzt, auf etwa 3 % des vollen Fasses; ein gewogenes Fass ist zehnmal genauer bekannt.
desk-dips-dips_of = Peilungen von { $mark }
desk-dips-has_its_litres_estimated_from = hat geschätzte Liter aus { $by }, nach seinen Maßen: { $sizes } cm, { $how }.
desk-dips-how_its_litres_follow_from = Wie die Liter aus der Peilung folgen
desk-dips-what_is_measured = Was gemessen wird
desk-dips-table_a_line_of_dip = Tabelle: je Zeile Peilung und Volumen
desk-dips-lengths_in = Längen in
desk-dips-volumes_in = Volumen in
desk-dips-shell = Wand
desk-dips-the_table_holds_at = Die Tabelle gilt bei
desk-dips-temperature_in = Temperatur in
desk-dips-tilt_add_to_each_reading = Neigung: zu jeder Ablesung addieren [mm]
desk-dips-diameter_at_the_bung_inside = Durchmesser am Spund, innen
desk-dips-diameter_of_a_head_inside = Durchmesser eines Bodens, innen
desk-dips-length_from_head_to_head = Länge von Boden zu Boden, innen
desk-dips-the_cask = Das Fass
desk-dips-is_not_dipped_by_the = wird vom Buch nicht gepeilt: Liter werden getippt.
desk-dips-has_its_litres_from_its = hat seine Liter aus { $by }, nach einer Tabelle von { $count } Zeilen: { $brief } bis { $brief2 } cm, { $brief3 } bis { $brief4 } L.
desk-dips-by_a_strapping_table = nach einer Peiltabelle
desk-dips-by_the_dimensions_of_a = nach den Maßen eines Fasses, geschätzt
desk-dips-not_at_all_litres_are = gar nicht: Liter werden getippt
desk-dips-dip_from_the_bottom_up = Peilung: vom Boden aufwärts
desk-dips-ullage_from_the_top_down = Leerraum: von oben abwärts
desk-dips-stainless_steel_48_10_6 = Edelstahl, 48·10⁻⁶ je °C
desk-dips-mild_steel_36_10_6 = Baustahl, 36·10⁻⁶ je °C
desk-dips-other_no_correction = anderes: keine Korrektur
desk-edit-an_entry_of_put_it = Ein Eintrag von { $when } setzte es an { $bold }: dort steht es, was immer diese Seite sagt. Um es umzulagern, die Umlagerung eintragen.
desk-edit-change = { $mark } ändern
desk-labels-labels = Etiketten
desk-labels-without_a_place = ohne Platz
desk-labels-every_vessel_here_has_its = Jedes Gefäß hier hat sein Etikett.
desk-labels-every_label_that_was_printed = Jedes hier gedruckte Etikett sagt noch, was das Buch sagt.
desk-labels-print_those_ticked = Angekreuzte drucken
desk-labels-print_all_of_this_list = Alle { $what } dieser Liste drucken
desk-labels-print_at_full_size_not = In voller Größe drucken, nicht an die Seite angepasst; das Lineal auf dem Blatt muss 50 mm messen.
desk-labels-the_first_of_are_shown = Die ersten { $count } von { $count2 } sind gezeigt.
desk-labels-label = Etikett
desk-labels-own_size = Eigene Größe
desk-labels-printed = gedruckt { $when }
desk-labels-printed_is_what_was_sent = Gedruckt heißt: von dieser Seite zum Druck gesandt. Ohne Etikett sind Gefäße, deren Etikett hier weder gedruckt noch je gescannt wurde.
desk-labels-says_something_else_by_now = sagt inzwischen etwas anderes
desk-labels-tick_at_least_one_vessel = Mindestens ein Gefäß ankreuzen und wählen, worauf die Etiketten gedruckt werden.
desk-vessel-twice_the_standard_uncertainty_by = Die doppelte Standardunsicherheit, nach der Klasse der Messgeräte der letzten Messung und dessen, was seither bewegt wurde.
desk-vessel-dips = Peilungen
desk-vessel-since = seit { $when }
desk-vessel-tare = Tara { $tare_kg }
desk-vessel-inside_a_fire_zone = im Ex-Bereich
desk-vessel-dipped_by_a_table =
    { $is_dips ->
        [yes] nach seinen Maßen geschätzt
       *[no] nach Tabelle gepeilt
    }
desk-vessel-holds = Enthält { $holding }
desk-vessel-a_run_is_under_way = Ein Brand ist im Gang
desk-vessel-since2 = { $link } seit { $when }.
desk-vessel-no_entries_yet_scan_its = Noch keine Einträge. Im Betrieb das Etikett scannen und den ersten eintragen.
desk-vessel-all_its_entries = Alle seine Einträge
desk-vessel-the_book_knows_no_vessel = Das Buch kennt kein Gefäß { $mark }. In der Liste der Gefäße suchen.
desk-vessel-there_is_a_vessel_already = Ein Gefäß { $mark } gibt es schon. Einen anderen Code wählen oder jenes ändern.
desk-vessel-is_in_the_book = { $made } ist im Buch.
desk-vessels-find_vessels = Gefäße suchen
desk-vessels-add_the_first_then_print = Das erste hinzufügen; dann sein Etikett drucken.
desk-vessels-capacity = Fassungsvermögen, { $what }
access-again-your_password_again_cellarslate = Noch einmal Ihr Passwort – Cellarslate
access-again-is_it_still_you = Sind Sie es noch?
access-again-this_cannot_be_taken_back = { $name }, das lässt sich nicht zurücknehmen oder trägt Daten aus dem Haus. Noch einmal zeigen, dass Sie es sind; es gilt dann { $minutes } Minuten.
access-again-go_on = Weiter
access-again-use_a_passkey = Passkey nehmen
access-again-that_is_not_your_password = Das ist nicht Ihr Passwort. Noch einmal eintippen.
access-error-not_done_cellarslate = Nicht getan – Cellarslate
access-error-not_done = Nicht getan
access-error-to_the_sites = Zu den Orten
access-error-to_the_desk = Ins Büro
access-error-this_could_not_be_read = Das war nicht lesbar. Zurückgehen, das Getippte ansehen und noch einmal senden.
access-error-you_may_not_do_this = Das dürfen Sie hier nicht. Jemanden im Büro fragen.
access-error-there_is_nothing_at_this = Unter dieser Adresse gibt es nichts. Zurückgehen und aus der Liste wählen.
access-error-this_address_does_not_take = Diese Adresse nimmt das nicht. Zurückgehen und die Taste der Seite nehmen.
access-error-this_is_too_large_send = Das ist zu groß. Weniger auf einmal senden.
access-error-send_json_with_content_type = JSON senden, mit Content-Type: application/json.
access-error-too_many_tries_wait_a = Zu viele Versuche. Eine Minute warten, dann erneut versuchen.
access-error-the_book_stumbled_nothing_handed = Das Buch ist gestolpert. Nichts Übergebenes ging verloren; erneut versuchen und dem sagen, der den Server betreut.
access-error-the_book_is_busy_try = Das Buch ist beschäftigt. Gleich erneut versuchen.
access-error-this_page_was_open_too = Diese Seite war zu lange offen oder von vor der Anmeldung. Zurückgehen, neu laden, noch einmal senden.
access-error-this_was_not_sent_from = Das kam nicht von einer unserer Seiten. Die Seite neu öffnen und von dort senden.
access-error-this_needs_the_role_ask = Das braucht die Rolle { $access }. Jemanden im Büro fragen.
access-error-this_phone_is_not_let = Dieses Telefon ist nicht zugelassen. Den Einmalcode des Büros darauf öffnen; nichts ist verloren.
access-invitation-your_password_cellarslate = Ihr Passwort – Cellarslate
access-invitation-choose_your_password = { $name }, bitte ein Passwort wählen
access-invitation-lets_you_in = { $site } lässt Sie ein.
access-invitation-you_are_let_in = Sie sind zugelassen.
access-invitation-your_short_code_is_nobody = { $who } Ihr Kurzcode ist { $bold }. Niemand außer Ihnen weiß das Passwort: das Büro kann es nicht lesen, nur neu einladen.
access-invitation-ten_characters_at_least_four = Mindestens zehn Zeichen. Vier Worte, die niemand zusammenbrächte, sind gut; ein Name, ein Datum und „Passwort“ nicht.
access-invitation-set_it_and_sign_in = Setzen und anmelden
access-invitation-this_invitation_was_used_has = Diese Einladung wurde benutzt, ist abgelaufen oder ersetzt. Im Büro eine neue verlangen.
access-set_up-set_up_cellarslate = Einrichten – Cellarslate
access-set_up-the_house_first_then_you =
    { $is_group ->
        [yes] Der Name der Gruppe
       *[no] Das Haus
    } zuerst, dann Sie. Andere lassen sich danach zulassen.
access-set_up-a_new_group = Eine neue Gruppe
access-set_up-a_new_book = Ein neues Buch
access-set_up-open_the_book = Das Buch öffnen
access-sign_in-sign_in_cellarslate = Anmelden – Cellarslate
access-sign_in-sign_in_to_the_desk =
    { $is_group ->
        [yes] In der Gruppe
       *[no] Im Büro
    } anmelden
access-sign_in-sign_in = Anmelden
access-sign_in-sign_in_with_a_passkey = Mit Passkey anmelden
access-sign_in-on_the_floor_no_sign = Im Betrieb braucht es keine Anmeldung: das Büro lässt ein Telefon einmal zu, mit einem Code zum Scannen.
access-sign_in-no_such_code = unbekannter Code
access-sign_in-too_many_tries_wait_s = Zu viele Versuche. { $wait_s } s warten.
access-sign_in-this_server_has_no_authority = Dieser Server hat keine eigene Zertifikatsstelle: er läuft ohne TLS oder mit einem Zertifikat von Ihnen.
access-sign_in-code_or_password_is_wrong = Code oder Passwort ist falsch. Noch einmal eintippen.
access-sign_in-that_is_not_the_code = Das ist nicht der Code, den der Server beim Start druckte. Noch einmal eintippen.
access-trust-let_this_phone_trust_the = Dieses Telefon vertraut dem Haus – Cellarslate
access-trust-let_this_phone_trust_the2 = Dieses Telefon soll dem Haus vertrauen
access-trust-this_server_needs_no_certificate = Dieser Server braucht kein Zertifikat auf dem Telefon: er läuft nur auf diesem Rechner oder hat ein eigenes von Ihnen.
access-trust-once_on_each_phone_after = Einmal auf jedem Telefon. Danach öffnet sich die Tafel ohne Warnung und arbeitet ohne Netz.
access-trust-iphone_or_ipad = iPhone oder iPad
access-trust-most_often_it_is_installed = Meist ist es installiert, aber der Schalter ist nicht an: Einstellungen, Allgemein, Info, Zertifikatsvertrauenseinstellungen. Steht dort kein Schalter, wurde das Profil nicht installiert: einen Schritt zurück.
access-trust-android_phone = Android-Telefon
access-trust-most_often_it_was_filed = Meist wurde es als WLAN-Zertifikat abgelegt oder als eines für VPN und Apps, wo kein Browser nachsieht. In den Einstellungen nach CA-Zertifikat suchen und dieselbe Datei dort installieren.
access-trust-windows = Windows
access-trust-it_may_have_been_placed = Vielleicht liegt es anderswo: den Speicher selbst wählen, Vertrauenswürdige Stammzertifizierungsstellen.
access-trust-mac = Mac
access-trust-taken_but_not_set_to = Genommen, aber nicht auf Immer vertrauen gesetzt: das fehlt meistens.
access-trust-linux_another = Linux, anderes
access-trust-it_may_have_been_imported = Vielleicht wurde es ohne das Häkchen importiert, das ihm für Websites vertraut.
access-trust-in_safari_fetch_the_profile = In Safari das Profil holen und Zulassen antippen. Andere Browser dieses Telefons können es nicht nehmen.
access-trust-soon_after_open_settings_near = Gleich danach die Einstellungen öffnen. Oben steht Profil geladen (sonst: Allgemein, VPN und Geräteverwaltung). Öffnen, Installieren antippen und installieren.
access-trust-settings_general_about_at_the = Einstellungen, Allgemein, Info, ganz unten Zertifikatsvertrauenseinstellungen: Cellarslate local authority einschalten. Installieren allein genügt nicht.
access-trust-fetch_the_certificate_the_phone = Das Zertifikat holen. Das Telefon legt es zu den Downloads.
access-trust-open_settings_and_search_for = Die Einstellungen öffnen und suchen: CA-Zertifikat. (Sicherheit, Verschlüsselung und Anmeldedaten, Zertifikat installieren, CA-Zertifikat.) Trotzdem installieren antippen. Ein Telefon ohne Displaysperre verlangt zuerst eine.
access-trust-choose_the_file_cellarslate_crt = Die Datei cellarslate.crt unter den Downloads wählen. Ein Hinweis bleibt, dass das Netz überwacht werden könnte; er meint dieses Zertifikat.
access-trust-fetch_the_certificate_and_open = Das Zertifikat holen und die Datei öffnen.
access-trust-install_certificate_current_user_p = Zertifikat installieren, Aktueller Benutzer, alle speichern in: Vertrauenswürdige Stammzertifizierungsstellen.
access-trust-close_all_windows_of_the = Alle Fenster des Browsers schließen und diese Seite neu öffnen.
access-trust-fetch_the_certificate_and_open2 = Das Zertifikat holen und die Datei öffnen; die Schlüsselbundverwaltung nimmt es.
access-trust-in_keychain_access_open_cellarslat = In der Schlüsselbundverwaltung Cellarslate local authority öffnen, Vertrauen, und auf Immer vertrauen setzen.
access-trust-fetch_the_certificate = Das Zertifikat holen.
access-trust-in_the_browser_settings_search = Im Browser: Einstellungen, suchen: Zertifikate. Unter Zertifizierungsstellen importieren; ihm für Websites vertrauen.
access-trust-go_on_this_phone_is = Weiter: dieses Telefon wird zugelassen
access-trust-open_the_floor_log = Die Tafel öffnen
door-frame-this_is_the_demo_is = Das ist die Vorführung. { $name } ist erfunden, und ebenso alles in seinem Buch.{ $break_ }Zerbrechen Sie, was Sie wollen: { $code } legt es neu an.
door-front-doors = Türen
door-front-the_slate_by_the_still = Die Tafel am Brenngerät und das Buch, in dem alles endet.
door-front-three_doors_into_the_same = Drei Türen in dasselbe Haus, am { $now }.
door-front-a_run_of_is_on = Ein Brand läuft: { $what }.
door-front-for_an_answer =
    { $asked ->
        [one] { $asked } Zahl wartet
       *[other] { $asked } Zahlen warten
    } auf Antwort.
door-front-the_demo_was_laid_on = Die Vorführung wurde an einem anderen Tag angelegt, ihr Brand und ihre Gärungen sind also von damals. Anhalten und mit { $code } starten, um sie für heute anzulegen.
door-front-the_desk = Das Büro
door-front-you_are_see_what_the = Sie sind { $name }, { $role }. Sehen, was das Buch fragt, ein Versehen berichtigen, eine Flasche verfolgen, einen Monat schließen.
door-front-lines_of_a_year_and = { $what } Zeilen aus anderthalb Jahren
door-front-sit_down_at_the_desk = Im Büro Platz nehmen
door-front-a_phone_in_this_browser = Ein Telefon, in diesem Browser
door-front-you_are_the_same_keys = Sie sind { $name }, { $role }. Dieselben Tasten und Worte wie im Betrieb; nach Wunsch ohne Netz.
door-front-the_run_of_is_in = Der Brand auf { $still } ist in Ihrer Hand
door-front-what_you_log_waits_on = Was Sie eintragen, wartet auf der Tafel
door-front-it_can_scan_the_labels = Es kann die Etiketten unten scannen
door-front-the_signal_is_cut_for = Dem Telefon in diesem Browser ist das Netz genommen bis { $clock }.
door-front-open_a_phone_here = Hier ein Telefon öffnen
door-front-your_own_phone = Ihr eigenes Telefon
door-front-hold_its_camera_to_this = Seine Kamera auf dieses Quadrat halten, im selben WLAN. Es lernt, diesem Rechner zu vertrauen, und öffnet sich dann als { $name }, { $role }. Kein Laden, kein Konto.
door-front-or_type = oder eintippen{ $break_ }{ $bold }
door-front-afterwards_take_the_certificate_of = Danach das Zertifikat wieder vom Telefon nehmen; es gehört der Vorführung.
door-front-phones_work_without_signal_only = Telefone arbeiten nur dort ohne Netz, wo sie dem Server vertrauen, also öffnet sich diese Tür über TLS. Die Vorführung anhalten und neu starten:
door-front-then_a_square_stands_here = Dann steht hier ein Quadrat für das Telefon, und es öffnet sich als { $name }, { $role }.
door-front-more_of_them_large = Mehr davon, groß
door-front-scan_them_with_the_phones = Mit der Seite des Telefons scannen, unter Scannen. Keine Kamera? Dort die Kennung eintippen: ihr letztes Zeichen prüft die anderen, ein Fehler fällt also auf.
door-front-five_things_to_try = Fünf Dinge zum Versuchen
door-front-min = { $minutes } min
door-front-everything_here_is_kept_on = Alles hier bleibt auf diesem Rechner, und wer diese Seite erreicht, darf herein. Kein Ort für Zahlen eines wirklichen Hauses: mit { $code } ein eigenes Buch beginnen.
door-front-the_demo_cellarslate = Die Vorführung · Cellarslate
door-front-stops_wait =
    { $stops ->
        [one] { $stops } Halt wartet
       *[other] { $stops } Halte warten
    }
door-front-more_are_asked =
    { $asked ->
        [one] { $asked } weitere Frage
       *[other] { $asked } weitere Fragen
    }
door-front-put_the_signal_back = Netz wieder geben
door-front-cut_its_signal = Netz nehmen
door-join-this_phone_joins = Dieses Telefon kommt zu { $name }
door-join-you_are_the_phone_is = Sie sind { $name }, { $role }. Das Telefon wird zugelassen, holt, was in jedem Gefäß steht, und arbeitet von da an ohne Netz.
door-join-near_an_open_spirit_safe = Nahe einer offenen Vorlage ist ein Telefon eine Zündquelle, außer es ist für diesen Ort zugelassen. Die Vorführung lässt sich überall sonst versuchen.
door-join-this_phone_joins_the_demo = Dieses Telefon kommt zur Vorführung · Cellarslate
door-labels-on_the_phone_open_scan = Auf dem Telefon Scannen öffnen und eine Handbreit vor eines halten. Sein Gefäß öffnet sich, mit Netz und ohne.
door-labels-labels_of_the_demo_cellarslate = Etiketten der Vorführung · Cellarslate
door-phone-takes_the_phone = { $name } nimmt das Telefon
door-phone-it_is_let_in_and = Es wird zugelassen und holt, was in jedem Gefäß steht.
door-phone-the_slate_is_kept_by = Die Tafel braucht Skripte, und dieser Browser führt keine aus. Das Büro geht ohne.
door-phone-a_phone_is_let_in = Ein Telefon wird zugelassen · Cellarslate
door-phone-keeps_pages = Es behält seine Seiten, damit es kein Netz braucht.
door-phone-not_let_in = Es wurde nicht zugelassen. { $why }
group-people-who_may_sign_in_here = Wer sich hier anmelden darf. Leute der Orte werden nicht übernommen: sie melden sich bei ihrem Ort an.
group-people-an_invitation_shown_this_once = Eine Einladung, nur einmal gezeigt
group-people-good_once_within_days_whoever = Gilt einmal, binnen { $days } Tagen. Wer sie öffnet, setzt das Passwort; selbst übergeben.
group-people-no_longer_here = nicht mehr hier
group-people-no_password_yet = noch kein Passwort
group-people-add_or_change_somebody = Jemanden hinzufügen oder ändern
group-people-look = ansehen
group-people-let_sites_in_and_decide = Orte zulassen und entscheiden
group-people-no_longer_here2 = Nicht mehr hier
group-people-make_an_invitation_to_set = Einladung zum Setzen eines Passworts
group-people-save = Sichern
group-people-lets_sites_in_decides = lässt Orte zu, entscheidet
group-people-short_code = Kurzcode
group-people-looks = sieht an
group-period-of_sites_have_closed_it = { $closed } von { $count } Orten haben ihn geschlossen. Die Summe ist aus dem jetzt Bekannten; was von Ort zu Ort ging, ist für die Gruppe weder Gewinn noch Verlust.
group-period-sum = Summe
group-period-between_sites = Zwischen Orten
group-period-sent_l = Gesandt, L
group-period-declared_there_l = Dort angegeben, L
group-period-difference = Differenz
group-period-pure_alcohol_at_20_c = Reiner Alkohol bei 20 °C. Was am Empfangsort fehlte, steht in dessen Konto als unterwegs verloren.
group-period-more_has_come_to_light = seither ist mehr bekannt und steht in den Zahlen unten
group-period-part_closed = Zum Teil geschlossen.
group-period-this_site_has_nothing_in = Dieser Ort hat nichts darin.
group-period-all_sites = , alle Orte
group-period-in_bulk = lose
group-period-bottles = Flaschen, { $goods }
group-period-sent_to_sites_of_the = an Orte der Gruppe gesandt
group-period-received_from_sites_of_the = von Orten der Gruppe erhalten
group-period-left_a_site = verließ einen Ort
group-period-received_at_a_site = an einem Ort erhalten
group-period-declared_above_what_was_sent = mehr angegeben als gesandt
group-period-declared_below_what_was_sent = weniger angegeben als gesandt
group-period-on_the_way_between_sites = Unterwegs zwischen Orten
group-periods-what_all_sites_had_on = Was alle Orte am Ende jedes Vierteljahrs und Monats vorhanden hatten, wie jetzt bekannt, in Liter reinem Alkohol bei 20 °C. Die Monate jedes Orts gehen nach seiner Uhr.
group-periods-closed_at = Geschlossen um
group-periods-all_sites = Alle Orte
group-periods-on_the_way = Unterwegs
group-periods-of = { $closed } von { $count }
group-sites-let_a_site_in = Einen Ort zulassen
group-sites-on_the_sites_computer_once = Auf dem Rechner des Orts, einmal, binnen eines Tages:
group-sites-name_of_the_site = Name des Orts
group-sites-make_a_code_for_a = Code für einen neuen Ort
group-sites-entries_here = Einträge hier
group-sites-of = von { $head_no }
group-sites-last_7_days = Letzte 7 Tage
group-sites-stock_and_trace = Bestand und Spur
group-sites-stopped = angehalten
group-sites-up_to_date = aktuell
group-sites-to_number = bis Nummer { $folded_no }
group-sites-chain = Kette
group-sites-broken = gebrochen
group-sites-whole_to = heil bis { $checked_no }, { $when }
group-sites-not_walked_yet = noch nicht geprüft
group-sites-its_computer_is_lost_or = Sein Rechner ist verloren oder neu
group-sites-shut_it_out_then_make = Aussperren, dann einen neuen Code machen. Was übergeben ist, bleibt.
group-sites-shut_out = { $name } aussperren
group-sites-which_book_counts = { $name }: welches Buch zählt?
group-sites-from_number_on_the_sites = Ab Nummer { $fork_no } ist das Buch des Orts nicht mehr das zuvor übergebene: aus einer älteren Sicherung zurückgespielt oder kopiert. Beide bleiben. Hier zählt das erste, bis Nummer { $cursor }; das andere geht bis { $cursor2 }.
group-sites-of_the_first_are_not = des ersten sind nicht im anderen.
group-sites-every_entry_of_the_first = Jeder Eintrag des ersten ist auch im anderen.
group-sites-ask_the_site_before_you = Vor der Wahl den Ort fragen.
group-sites-the_sites_present_book_counts = Das jetzige Buch des Orts zählt
group-sites-kept_aside = { $aside } beiseite gelegt.
group-sites-papers_that_look_alike = Papiere, die sich gleichen
group-sites-a_receipt_has_the_number = Ein Zugang hat die Nummer vom Abgang eines anderen Orts, aber keiner nennt den anderen Ort, oder Flaschen sind von einem anderen Ansatz. Sie sind nicht verbunden. Gehören sie zusammen, den Eintrag so berichtigen, dass er Ort oder Ansatz nennt.
group-sites-received_at = Erhalten in
group-sites-from_batch_as_typed = Von, Ansatz, wie getippt
group-sites-same_number_sent_by = Gleiche Nummer gesandt von
group-sites-sites = Orte
group-sites-chain_broken = Kette gebrochen
group-sites-fold_stopped = Buchrechnung steht
group-sites-two_books = zwei Bücher
group-sites-to_come = steht aus
group-sites-entries = Einträge
group-trace-in_bottles = in Flaschen
group-trace-pure_alcohol = { $bold } reiner Alkohol { $what }
group-trace-site_cases_lot_mark = Ort, Kartons, Loszeichen
group-trace-bottles_received_from_another_site = Von einem anderen Ort erhaltene Flaschen stehen dort noch einmal: sie sind unter denen des Orts, der sie abfüllte.
group-trace-to_whom = An wen
group-trace-site_what = Ort, was
group-trace-and_more = und { $more } weitere
group-trace-sites_are_joined_by_the = Orte sind durch die Belegnummer eines Abgangs verbunden, wo der Zugang sie nennt und eine Seite die andere; Flaschen auch durch Ansatz oder Loszeichen. Was unterwegs ist, steht dazwischen.
group-trace-trace_of = Spur von { $name }
group-trace-from_to = von { $sender } an { $receiver }
group-trace-declared = angegeben { $differs }
group-trace-document = Beleg { $document }
group-trace_search-a_trace_goes_both_ways = Eine Spur geht in beide Richtungen und über die Grenze: von einer Flasche zurück zum Obst an jedem Ort, und von einer Lieferung Obst zu jeder Flasche.
group-trace_search-no_site_has_anything_by = Kein Ort hat etwas unter diesem Namen. Eine Kennung, einen Ansatz, eine Kartonnummer oder einen Teil vom Namen des Lieferanten versuchen.
desk-weight-stop = Halt
desk-weight-ask = Frage
desk-weight-note = Hinweis
desk-weight-entered = eingetragen
desk-weight-waiting = wartet
desk-sort-fermenter = Gärbottich
desk-sort-still = Brenngerät
desk-sort-receiver = Vorlage
desk-sort-tank = Tank
desk-sort-cask = Fass
desk-sort-can = Kanne
desk-sort-place = Platz
desk-forms-it_stands = Gilt
desk-forms-strike = Streichen
desk-forms-the_site = der Ort
desk-forms-a_sort_of_vessel = eine Art von Gefäß
desk-forms-a_material = ein Rohstoff
desk-forms-one_vessel = ein Gefäß
desk-forms-a_product = ein Erzeugnis
desk-forms-production_storage_processing_us = Herstellung, Lagerung, Verarbeitung (US)
desk-forms-one_excise_warehouse = ein Steuerlager
desk-forms-floor_log_and_look = Betrieb: eintragen und ansehen
desk-forms-distiller_also_answer_and_amend = Brenner: auch antworten und berichtigen
desk-forms-office_all = Büro: alles
desk-forms-code = Code
desk-forms-what_it_is = Was es ist
desk-forms-capacity_l = Fassungsvermögen [L]
desk-forms-working_level_l = Füllstand bis [L]
desk-forms-tare_kg = Tara [kg]
desk-forms-wood = Holz
desk-forms-toast_or_char = Toasting, Auskohlung
desk-forms-stands_inside_a_fire_zone = Steht im Ex-Bereich
desk-forms-label_goes_on_a_curve = Etikett auf einer Rundung (nur Kennung)
desk-forms-note = Notiz
desk-forms-out_of_use = Außer Betrieb
desk-forms-for = Für
desk-forms-which = Welche
desk-forms-kind_and_field = Art und Feld
desk-forms-usual_from = Üblich von
desk-forms-usual_to = Üblich bis
desk-forms-possible_from = Möglich von
desk-forms-possible_to = Möglich bis
desk-forms-limit = Grenze
desk-forms-figure = Zahl
desk-forms-short_code = Kurzcode
desk-forms-trade_roles_the_usual_one = Rollen im Fach, die übliche zuerst
desk-forms-floor_code_4_to_8 = Code für den Betrieb (4 bis 8 Ziffern; leer behält den alten)
desk-forms-has_left_the_house = Hat das Haus verlassen
desk-forms-the_password_until_now = Das bisherige Passwort
desk-forms-a_new_one = Ein neues
desk-forms-the_same_again = Noch einmal dasselbe
desk-forms-its_name = Sein Name
desk-forms-folder_on_the_server_on = Ordner auf dem Server, auf einem anderen Datenträger
desk-forms-hours_between_two = Stunden zwischen zweien
desk-forms-how_many_are_kept = Wie viele behalten werden
desk-forms-backups_of_this_computer_are = Dieser Rechner wird täglich auf andere Weise gesichert
desk-forms-they_are_a = Sie sind
desk-forms-address = Anschrift
desk-forms-number_by_which_papers_call = Nummer, unter der Papiere sie nennen
desk-forms-name_of_the_phone = Name des Telefons
desk-forms-the_house = Das Haus
desk-forms-units = Einheiten
desk-forms-decimal_mark = Dezimalzeichen
desk-forms-accounts = Konten
desk-forms-height_above_the_sea_m = Höhe über dem Meer [m]
desk-forms-language_where_nobody_has_chosen = Sprache, wo niemand eine gewählt hat
desk-forms-time_zone = Zeitzone
desk-forms-what_goes_into_or_out = Was in die Konten oder aus ihnen geht, verlangt beim Eintragen die PIN
desk-forms-a_season_begins_in = Eine Brennsaison beginnt im
desk-forms-scale_from = Skala von
desk-forms-scale_to = Skala bis
desk-forms-unit = Einheit
desk-forms-class = Klasse
desk-forms-interval_of_the_scale = Skalenwert
desk-forms-corrections_of_its_certificate_wha = Korrekturen seines Prüfscheins, Gezeigtes: zu addieren, etwa 0: -0.1; 20: 0; 40: +0.2
desk-forms-check_due_on = Prüfung fällig am
desk-forms-first_free_label_on_the = Erstes freies Etikett auf dem Bogen
desk-forms-own_width_mm = Eigene Breite [mm]
desk-forms-own_height_mm = Eigene Höhe [mm]
desk-forms-own_clear_mm = Frei an jedem Rand [mm]
desk-forms-label_file = Als
desk-forms-case_from = Erster Karton
desk-forms-case_to = Letzter Karton
desk-forms-flat_labels_carry_the_address = Flache Etiketten tragen die Adresse, damit die Kamera des Telefons das Gefäß öffnet
desk-forms-also_a_stand_off_label = Auch ein Abstandsetikett für Gefäße im Ex-Bereich
desk-forms-there_is_no_such_time = Diese Zeitzone gibt es nicht. Eine eintippen, etwa Europe/Vienna.
desk-forms-pick_it_stands_or_strike = Wählen: gilt, oder streichen.
desk-forms-say_why_in_a_few = In wenigen Worten sagen, warum.
desk-forms-type_its_code_such_as = Seinen Code eintippen, etwa F3 oder C031.
desk-forms-type_a_short_code = Einen Kurzcode eintippen.
desk-forms-type_the_name = Den Namen eintippen.
desk-forms-to_whole = { $low } bis { $high }, ganz.
desk-forms-type_your_password = Ihr Passwort eintippen.
desk-forms-type_a_password = Ein Passwort eintippen.
desk-forms-at_least_characters_a_few = Mindestens { $what } Zeichen; ein paar Worte genügen.
desk-forms-the_two_passwords_differ_type = Die beiden Passwörter unterscheiden sich. Noch einmal eintippen.
desk-forms-type_a_name = Einen Namen eintippen.
desk-forms-type_hours = Stunden eintippen.
desk-forms-type_a_number = Eine Zahl eintippen.
desk-forms-name_it_such_as_ph = Benennen, etwa PH-3.
desk-forms-type_the_name_of_the = Den Namen des Hauses eintippen.
desk-forms-type_its_number_such_as = Seine Nummer eintippen, etwa TH-2.
desk-forms-type_what_it_is_such = Eintippen, was es ist, etwa Thermometer.
desk-forms-grower_or_supplier = Lieferant
desk-forms-point_14_6 = Punkt: 14.6
desk-forms-comma_14_6 = Komma: 14,6
desk-forms-as_the_law_prescribes = wie das Gesetz verlangt
desk-forms-in_use = in Gebrauch
desk-forms-out_of_use2 = außer Betrieb
desk-forms-n1_to_7_letters_or = 1 bis 7 Buchstaben oder Ziffern.
desk-forms-n1_to_8_letters_or = 1 bis 8 Buchstaben oder Ziffern.
desk-forms-n4_to_8_digits = 4 bis 8 Ziffern.
desk-forms-letters_digits_hyphen = Buchstaben, Ziffern, Bindestrich.
desk-forms-pick_the_day = Den Tag wählen.
access-forms-your_short_code = Ihr Kurzcode
access-forms-password = Passwort
access-forms-your_password = Ihr Passwort
access-forms-a_password_of_your_own = Ein eigenes Passwort
access-forms-the_same_again = Noch einmal dasselbe
access-forms-set_up_code = Einrichtungscode
access-forms-the_house = Das Haus
access-forms-units = Einheiten
access-forms-your_name = Ihr Name
access-forms-type_your_short_code = Ihren Kurzcode eintippen.
access-forms-type_your_password = Ihr Passwort eintippen.
access-forms-type_a_password = Ein Passwort eintippen.
access-forms-at_least_characters_a_few = Mindestens { $what } Zeichen; ein paar Worte genügen.
access-forms-the_two_passwords_differ_type = Die beiden Passwörter unterscheiden sich. Noch einmal eintippen.
access-forms-type_the_set_up_code = Den Einrichtungscode eintippen, den der Server druckte.
access-forms-type_the_name_of_the = Den Namen des Hauses eintippen.
access-forms-type_a_short_code_such = Einen Kurzcode eintippen, etwa die Anfangsbuchstaben.
access-forms-type_your_name = Ihren Namen eintippen.
access-forms-n1_to_8_letters_or = 1 bis 8 Buchstaben oder Ziffern.
desk-vat_form-as_few_vessels_as_can = so wenige Gefäße wie möglich
desk-vat_form-the_oldest_stays = das Älteste bleibt
desk-vat_form-the_oldest_goes_first = das Älteste zuerst
desk-vat_form-strength_empty_as_it_comes = Gehalt (leer: wie er kommt)
desk-vat_form-unit_of_strength = Einheit des Gehalts
desk-vat_form-volume_l_empty_all_they = Volumen [L] (leer: alles, was sie geben)
desk-vat_form-volume_may_be_off_by = Volumen darf abweichen um [%]
desk-vat_form-most_of_any_one_vessel = Höchstens von einem Gefäß [%]
desk-vat_form-most_of_any_one_lot = Höchstens von einem Los [%]
desk-vat_form-youngest_in_wood_years = Jüngster Teil im Holz [Jahre]
desk-vat_form-the_wood_of_a_200 = Das Holz eines 200-L-Fasses behält [kg]
desk-vat_form-aim = Absicht
desk-vat_form-casks_may_be_drawn_in = Fässer dürfen teilweise entnommen werden
desk-vat_form-name_of_the_vat = Name des Verschnitts
desk-vat_form-wood_keeps_of = Holz behält { $kept } von { $what }
desk-vat_form-strength_as_it_comes = Gehalt, wie er kommt
desk-vat_form-within = { $volume } auf { $figure } %
desk-vat_form-all_they_give = alles, was sie geben
desk-vat_form-of_one_vessel = von einem Gefäß
desk-vat_form-of_one_lot = von einem Los
desk-vat_form-youngest_years_in_wood = jüngster Teil { $figure } Jahre im Holz
desk-vat_form-between_and_please = Bitte zwischen { $low } und { $high }.
desk-vat_form-at_most = höchstens { $figure } % { $words }
desk-vat_form-vol = % vol
desk-cellar-by_the_fall_of_gravity = nach dem Fall der Dichte
desk-cellar-as_the_law_of_1880 = wie das Gesetz von 1880 annahm
desk-cellar-by_the_wash_as_measured = nach der gemessenen Maische
desk-cellar-by_low_wines = nach Lutter
desk-cellar-by_spirits_and_feints = nach Bränden, Vor- und Nachlauf
desk-cellar-a_leak = ein Leck?
desk-cellar-a_slip_of_the_glass = Spindel verlesen?
desk-cellar-another_cask = anderes Fass?
desk-cellar-to_regauge = nachzumessen
desk-cellar-to_sample = zu beproben
desk-cellar-to_taste = zu verkosten
desk-cellar-loss_a_year = Verlust im Jahr
desk-cellar-ferments = Gärungen
desk-cellar-places = Plätze
desk-cellar-ready = Reif
desk-cellar-house_rules = Hausregeln
desk-cellar-mash_temperature = Maischetemperatur
desk-cellar-pure_alcohol = Reiner Alkohol
desk-cellar-strength = Alkoholgehalt
desk-cellar-the_book_has_no_such = Das Buch hat keine solche Gärung. In der Liste der Gärungen suchen.
desk-cellar-the_book_knows_no_cask = Das Buch kennt kein Fass { $mark }. In der Liste der Fässer suchen.
desk-cellar-scores = Punkte
desk-cellar-of_10 = von 10
desk-cellar-that_is_no_day_pick = Das ist kein Tag. Einen wählen, etwa 2027-05-01.
desk-cellar-gained = gewonnen
desk-cellar-by_place = Platz
desk-cellar-by_age = Alter
desk-cellar-strength_in_words = Alkoholgehalt
desk-cellar-gravity = Dichte
desk-cellar-expected = erwartet
desk-cellar-score = Punkte
desk-trust-the_certificate_ends_in_days = Das Zertifikat endet in { $left_days } Tagen und wurde nicht erneuert. Ansehen, was es erneuert.
desk-trust-the_certificate_ended_on_phones = Das Zertifikat endete am { $ends }. Telefone behalten, was sie eintragen, und übergeben nichts, bis es neu ist.
paper-batch-batch_record = Ansatzblatt: { $ferment }
paper-batch-gravity_and_temperature = Dichte und Temperatur
paper-batch-batch_record2 = Ansatzblatt: { $batch }
paper-batch-bottled = { $batch }, abgefüllt
paper-batch-tank_gauges = Tankmessungen
paper-batch-checks_of_the_line = Prüfungen der Linie
paper-batch-its_entries = Seine Einträge
paper-batch-made_by = Hergestellt von
paper-batch-looked_over_by = Durchgesehen von
paper-batch-not_read_yet = Noch nicht abgelesen.
paper-batch-counts_of_its_alcohol = Zählungen des Alkohols
paper-batch-at = Um
paper-batch-tank = Tank
paper-batch-true = Wirklich { $unit }
paper-batch-no_bottling_tank_gauge_yet = Noch keine Messung im Abfülltank.
paper-batch-fill = Füllung, %
paper-batch-least = Mindestens
paper-batch-most = Höchstens
paper-batch-labels_right = Etiketten richtig
paper-batch-done = Getan
paper-batch-odd_case = Restkarton
paper-batch-broken = Bruch
paper-batch-library = Rückstellung
paper-batch-good = Gut
paper-batch-not_closed_yet = Noch nicht beendet.
paper-batch-nothing_has_left_the_tank = Noch nichts hat den Tank verlassen.
paper-batch-no = Nr.
paper-batch-fermenter = Gärbottich
paper-batch-stands_at = Steht an
paper-batch-emptied = Geleert
paper-batch-first_gravity = Erste Dichte
paper-batch-last_gravity = Letzte Dichte
paper-batch-closed_at = Geschlossen um
paper-batch-wash = Maische
paper-batch-wash_strength = Gehalt der Maische
paper-batch-pure_alcohol_in_the_wash = Reiner Alkohol in der Maische
paper-batch-count = Zählung
paper-batch-of_wash = { $unit } Maische
paper-batch-tanks = Tanks
paper-batch-bottle = Flasche
paper-batch-strength_on_the_label = Gehalt auf dem Etikett
paper-batch-good_bottles = Gute Flaschen
paper-batch-kept_in_the_library = Zurückgestellt
paper-batch-pure_alcohol_in_bottles = Reiner Alkohol in Flaschen
paper-batch-in = { $what } in { $mark }
paper-batch-to = { $first } bis { $last }
paper-batch-at2 = { $unit } bei { $temp }
paper-cautions-the_sites_own_assessment_local = Die eigene Beurteilung des Betriebs, örtliche Vorschriften und befugte Leute gehen vor. Nichts auf diesem Papier sagt, dass ein Ort oder ein Brand sicher ist.
paper-cautions-hot_and_under_pressure_if = Heiß, und unter Druck, wenn ein Weg verstopft. Kaltes Wasser in ein heißes geschlossenes Brenngerät kann es eindrücken. Entlüftungen freihalten; ein laufendes Brenngerät nie verlassen.
paper-cautions-alcohol_vapour_burns_no_flame = Alkoholdampf brennt. Keine Flamme, kein Funke, kein gewöhnliches Telefon innerhalb der markierten Linie; an der Vorlage ablesen, zurücktreten, dann schreiben.
paper-cautions-a_hydrometer_cannot_see_methanol = Eine Spindel sieht kein Methanol. Der Vorlauf enthält einen Teil, Mittel- und Nachlauf auch; nur ein Labor weiß es. Die ersten Tropfen nicht kosten.
paper-cautions-few_samples_small_and_diluted = Wenige Proben, klein und verdünnt, und ausspucken. Wasser und einfaches Brot dazwischen. Nach dem Verkosten fährt niemand und arbeitet niemand an Brenngerät oder Maschine.
paper-cautions-heads_are_never_tasted_nose = Vorlauf wird nie verkostet, höchstens gerochen. Eine Verkostung spricht einen Brand nie frei: Methanol, Blausäure und Ethylcarbamat verraten sich nicht im Geschmack.
paper-cautions-carbon_dioxide_has_no_smell = Kohlendioxid riecht nicht und liegt unten. Ab 5000 ppm hinaus, lüften, Aufsicht verständigen; ab 30 000 ppm sofort hinaus. Eine Kerze ist keine Prüfung.
paper-cautions-nobody_enters_a_tank_or = Niemand steigt allein oder ohne Erlaubnisschein, Gasprüfung und jemanden draußen in Tank oder Bottich.
paper-cautions-a_full_cask_of_225 = Ein volles Fass von 225 L (59 gal) wiegt 220 bis 260 kg (485 bis 573 lb). Karren, Hebezeug oder Keil; nie der Rücken.
paper-cautions-say_where_you_are_and = Sagen, wo Sie sind und wann Sie zurück sind.
paper-count-count_sheet = Zählblatt
paper-count-begun_date_and_time = Begonnen, Tag und Zeit
paper-count-ended_date_and_time = Beendet, Tag und Zeit
paper-count-instruments_used = Benutzte Messgeräte
paper-count-what_it_is = Was es ist
paper-count-here = Hier
paper-count-gross_or_dip = Brutto, { $kg }, oder Peilung, { $what }
paper-count-glass = Spindel
paper-count-spirit = Brand { $unit }
paper-count-stands_there_and_is_not = Steht da und ist nicht auf diesem Blatt
paper-count-counted_by = Gezählt von
paper-count-second_person = Zweite Person
paper-count-other_places = Andere Plätze
paper-imprint-book_up_to_no_chain = Buch bis Nr. { $number }, Kette { $digest }
paper-pages-nothing_has_a_place_there = Dort hat nichts einen Platz. Die Plätze im Keller ansehen.
paper-pages-the_book_has_no_such = Das Buch hat keinen solchen Eintrag zu drucken.
paper-pages-the_book_has_no_such2 = Das Buch hat keinen solchen Brand. In der Liste der Brände suchen.
paper-pages-the_book_has_no_such3 = Das Buch hat keine solche Gärung. In der Liste der Gärungen suchen.
paper-pages-the_book_has_no_batch = Das Buch hat keinen Ansatz dieses Namens in einem Tank. In der Liste der Abfüllungen suchen.
paper-passport-laboratory_certificate_and_its_num = Prüfbericht des Labors, und seine Nummer
paper-passport-none_in_the_book_methanol = keiner im Buch: Methanol und andere Zahlen der Zusammensetzung misst es nicht
paper-passport-lot_passport = Lospass: { $name }
paper-passport-made_of = Aus
paper-passport-papers_and_certificates = Papiere und Prüfberichte
paper-passport-made_out_by = Ausgestellt von
paper-passport-approved_by = Freigegeben von
paper-passport-share = Anteil
paper-passport-by_the_book = Nach dem Buch
paper-passport-paper_no = Beleg Nr.
paper-passport-lot_mark = Loszeichen
paper-passport-good_bottles = Gute Flaschen
paper-passport-strength = Alkoholgehalt
paper-passport-pure_alcohol = Reiner Alkohol
paper-passport-day = Tag
paper-passport-came_from = Kam von
paper-passport-cases_and_lot_mark = Kartons und Loszeichen
paper-passport-to_or_from = An oder von
paper-passport-of_l = { $good } zu { $size } L
paper-passport-to = { $first } bis { $last }
paper-press-name_in_capitals = Name in Druckschrift
paper-press-signature = Unterschrift
paper-press-date_and_time = Tag und Zeit
paper-press-printed_by = Gedruckt { $printed } von { $printable } · { $book }
paper-press-still_open = Noch offen
paper-press-open_questions = Offene Fragen
paper-press-these_are_not_answered_what = Diese sind nicht beantwortet. Was oben steht, kann sich mit den Antworten ändern.
paper-press-cautions = Vorsicht
paper-press-page_of = Seite { $number } von { $of }
paper-press-in_the_book = Im Buch
paper-record-as_read = Wie abgelesen
paper-record-as_computed = Wie gerechnet
paper-record-witness = Zeuge
paper-record-gauge_record = Messblatt: { $title }
paper-record-record = Blatt: { $title }
paper-record-reading = Ablesung
paper-record-instrument = Messgerät
paper-record-corrected = Berichtigt
paper-record-figure = Zahl
paper-record-value = Wert
paper-record-nothing_is_computed_from_this = Hieraus wird nichts gerechnet.
paper-record-what_it_moved = Was es bewegte
paper-record-read_again_by_hand = Von Hand nachgelesen
paper-record-gauged_by = Gemessen von
paper-record-done_by = Getan von
paper-record-stands_at = Steht an
paper-record-read_by = Gelesen von
paper-record-role = Rolle
paper-record-gross_or_dip = Brutto, { $kg }, oder Peilung, { $what }
paper-record-glass = Spindel
paper-record-spirit = Brand { $unit }
paper-record-at = Um
paper-record-first = Erste
paper-record-second = Zweite
paper-run-run_sheet = Brennblatt { $run }
paper-run-minute_by_minute = Minute für Minute
paper-run-event = Ereignis
paper-run-glass = Spindel
paper-run-spirit = Brand { $unit }
paper-run-true = Wirklich { $unit }
paper-run-vapour = Dampf { $unit }
paper-run-dip = Peilung, { $what }
paper-run-into_why = In, warum
paper-run-what_the_receivers_hold = Was die Vorlagen enthalten
paper-run-still_hand = Am Brenngerät
paper-run-distiller = Brenner
paper-run-logged = , eingetragen { $clock }
paper-run-balance = Bilanz, { $what }
paper-run-not_accounted_for = nicht erklärt
paper-run-more_than_went_in = mehr, als hineinging
paper-run-true_strength = Wirklicher Gehalt, { $unit }
paper-run-fraction = Fraktion
paper-run-none_gauged_yet = Noch keine gemessen.
paper-run-heads = Vorlauf { $plan }
paper-run-hearts_to = Mittellauf bis { $plan }
paper-run-tails_to = Nachlauf bis { $plan }
paper-run-of_the_charge = { $rest }, { $abs } % der Füllung
paper-run-part = Teil
paper-run-min = { $last } min
paper-run-charged_from = Gefüllt aus
paper-run-begun = Begonnen
paper-run-charge = Füllung
paper-run-of_it_feints = davon Vor-/Nachlauf
paper-run-pure_alcohol_charged = Eingefüllter reiner Alkohol
paper-run-plan = Plan
paper-run-not_read_taken_as = , nicht abgelesen: angesetzt mit { $balance }
paper-run-on = { $what } auf { $still }
paper-run-at = { $unit } bei { $temp }
paper-serving-two_of_the_three_are = zwei der drei sind gleich: welches weicht ab?
paper-serving-the_first_stands_open_as = das erste steht offen als R: welches der zwei mit Code ist gleich?
paper-serving-which_of_the_two_has = welches der zwei hat mehr vom Gefragten?
paper-serving-put_all_in_order_no = alle der Reihe nach, keine zwei gleich
paper-serving-serving_sheet = Servierblatt
paper-serving-letter = Buchstabe
paper-serving-sample = Probe
paper-serving-of_it = Davon
paper-serving-strength_as_found = Gehalt wie gefunden
paper-serving-water_added = Zugegebenes Wasser
paper-serving-glasses_from_left_to_right = Gläser, von links nach rechts
paper-serving-poured_by = Eingeschenkt von
paper-serving-taster = Verkoster
paper-serving-glass_sample = Glas = Probe
paper-serving-poured = Eingeschenkt
paper-serving-method = Verfahren
paper-serving-served_at = Serviert mit
paper-serving-sets_of_glasses = Sätze Gläser
paper-serving-for_whoever_pours = Für den, der einschenkt. Kein Verkoster sieht dieses Blatt, und wer es gesehen hat, verkostet nicht und spricht mit keinem Verkoster.
paper-period-heads_of_the_book_of = Köpfe des Buchs von { $signed }, unterschrieben mit dem Schlüssel { $shorten_digits }.
paper-period-printed = { $name } · gedruckt { $printed } · { $house }
paper-period-the_rest_is_open = { $signed }; der Rest ist offen.
paper-period-pure_alcohol = { $house }: reiner Alkohol, { $name }
paper-period-litres_of_pure_alcohol_at = Liter reiner Alkohol bei 20 °C auf 0,01; Proof Gallons auf 0,1. { $what } { $what2 }
paper-period-page = Seite { $page }
paper-period-as_now_known_with_what = Wie jetzt bekannt, mit dem seither bekannt Gewordenen
paper-period-open_when_it_was_closed = Beim Abschluss offen und von dem gelesen, der schloss
paper-period-a_book_rewritten_since_has = { $words }Ein seither umgeschriebenes Buch hat andere: cellarslate verify --heads.
paper-period-date = Datum
paper-period-name_and_title = Name und Stellung
paper-period-signature = Unterschrift
desk-account-lines_add_up_to_their = Zeilen ergeben ihre Summen, wie gezeigt: jede Zahl ist die nächste, oder wo das nicht aufginge, die daneben (größter Rest). Das Buch führt ganze Mikroliter. Ein Vierteljahr ist für sich gerundet: eine Zeile kann neben der gezeigten Summe ihrer Monate stehen, höchstens um drei in der letzten Stelle.
desk-account-is_twice_the_standard_uncertainty = ± ist die doppelte Standardunsicherheit (k = 2), nach der Klasse der Messgeräte aller Einträge einer Zeile; was ein Gerät abweicht, zählt in jedem davon gleich. Eine Zeile ohne ± ist mehr, als ihre Ablesungen sagen: ein Rest, eine Rechnung, Flaschen, oder Bewegungen zwischen zwei Messungen.
desk-account-is_twice_the_standard_uncertainty2 = ± ist die doppelte Standardunsicherheit (k = 2), nach den Messgeräten der letzten Messung jedes Gefäßes und allem, was seither hinein- und hinausging.
desk-account-what_nobody_measured_mash_a = { $what } Was niemand gemessen hat, Maische, ein laufender Brand und Flaschen, ist nicht darin.
desk-account-production = Herstellung
desk-account-storage = Lagerung
desk-account-processing = Verarbeitung
desk-account-excise_warehouse = Steuerlager
desk-account-so_that_the_lines_add = Damit die Zeilen aufgehen, stehen diese neben ihrer nächsten: { $said }.
desk-account-adjustment_of = Anpassung von { $of }: { $more } { $party_words }
desk-account-on_hand_at_the_start = Vorhanden am Anfang
desk-account-total_in = Zugang gesamt
desk-account-total_out = Abgang gesamt
desk-account-on_hand_at_the_end = Vorhanden am Ende
desk-sheets-this_sheet_was_not_kept = Dieses Blatt wurde nicht so lange behalten. Noch einmal nehmen.
desk-sheets-the_whole_sheet_was_taken = Das ganze Blatt ist zurückgenommen.
desk-sheets-taken_back_every_line_stays = Zurückgenommen. Jede Zeile bleibt lesbar, durchgestrichen.
desk-sheets-nothing_in_this_sheet_is = Nichts in diesem Blatt ist neu: das Buch hat alles. Nichts wurde geändert.
desk-sheets-there_is_no_such_sheet = Dieses Blatt gibt es nicht. In der Liste suchen.
desk-sheets-in_use_stay_the_book = In Gebrauch bleiben { $join }: das Buch hat mehr davon als dieses Blatt.
desk-sheets-there_is_no_such_template = Diese Vorlage gibt es nicht. In der Liste suchen.
desk-sheets-openings =
    { $many ->
        [one] { $many } Anfangsbestand: { $what }
       *[other] { $many } Anfangsbestände: { $what }
    }
desk-tasting_form-holds_heads_heads_are_never = enthält Vorlauf. Vorlauf wird nie verkostet. Eine andere Probe nehmen.
desk-tasting_form-name_of_the_tasting = Name der Verkostung
desk-tasting_form-question_written_down_before_pouri = Frage, vor dem Einschenken niedergeschrieben
desk-tasting_form-method = Verfahren
desk-tasting_form-risk_of_finding_a_difference = Risiko, einen Unterschied zu finden, der keiner ist
desk-tasting_form-served_at_all_glasses_alike = Serviert mit, alle Gläser gleich
desk-tasting_form-unit_of_strength = Einheit des Gehalts
desk-tasting_form-poured_by = Eingeschenkt von
desk-tasting_form-tasters = Verkoster
desk-tasting_form-sets_for_each_taster = Sätze je Verkoster
desk-tasting_form-sample_a = Probe A
desk-tasting_form-of_it = davon
desk-tasting_form-sample_b = Probe B
desk-tasting_form-sample_c = Probe C
desk-tasting_form-sample_d = Probe D
desk-tasting_form-sample_e = Probe E
desk-tasting_form-give_it_a_short_name = Einen kurzen Namen geben, etwa T-26-03.
desk-tasting_form-write_the_question_first = Zuerst die Frage schreiben.
desk-tasting_form-type_the_strength_in_the = Den Gehalt im Glas eintippen.
desk-tasting_form-how_many_sets = Wie viele Sätze?
desk-tasting_form-two_samples_are_the_same = Zwei Proben sind gleich. In Worten sagen, was sie trennt, oder eine andere wählen.
desk-tasting_form-pick_at_least_one_taster = Mindestens einen Verkoster wählen.
desk-tasting_form-who_pours_knows_the_codes = Wer einschenkt, kennt die Codes und verkostet nicht. Jemand anderen einschenken lassen oder offen lassen.
desk-tasting_form-a_ranking_wants_three_to = Eine Rangfolge braucht drei bis fünf Proben.
desk-tasting_form-this_method_compares_two_samples = Dieses Verfahren vergleicht zwei Proben: A und B wählen, und nicht mehr.
desk-tasting_form-that_is_more_than_sets = Das sind mehr als { $what } Sätze Gläser. Weniger Verkoster oder weniger Sätze.
desk-tasting_form-letters_digits_and_only_please = Bitte nur Buchstaben, Ziffern und -.
door-page-visitor = Gast { $let_in }
door-page-there_is_no_such_thing = Das gibt es nicht zu versuchen. Zurückgehen und aus der Liste wählen.
door-page-the_demo_has_none_left = Die Vorführung hat keine mehr. Anhalten und mit --fresh neu starten.
door-page-this_person_has_left_the = Diese Person hat das Haus der Vorführung verlassen. Anhalten und mit --fresh neu starten.
door-page-there_is_nobody_of_that = Niemand in der Vorführung hat diesen Code.
door-page-the_demo_has_let_in = Die Vorführung hat alle Telefone zugelassen, die sie nimmt. Anhalten und mit --fresh neu starten.
door-trial-cask_list_csv = cask list.csv
door-trial-log_without_signal = Ohne Netz eintragen
door-trial-it_says_at_once_where = Sie sagt sofort, wo der Eintrag ist. Hier das Netz wieder geben, und er übergibt sich selbst.
door-trial-keep_a_still_run = Einen Brand führen
door-trial-s1_is_in_its_hearts = S1 ist im Mittellauf. Eintippen, was Spindel und Thermometer sagen, dann abtrennen.
door-trial-the_true_strength_stands_there = Der wirkliche Gehalt steht sofort da. Das Band schließt sich um die Minute der nächsten Abtrennung.
door-trial-answer_a_question = Eine Frage beantworten
door-trial-a_cask_gained_pure_alcohol = Ein Fass gewann reinen Alkohol, sagt eine Zeile vom Mai. Kein Fass kann das.
door-trial-the_likely_figure_is_offered = Die wahrscheinliche Zahl wird angeboten, und was sich änderte. Beide Zahlen bleiben lesbar.
door-trial-trace_a_cask_to_its = Ein Fass zum Obst verfolgen
door-trial-c_047_was_filled_a = C-047 wurde vor einem Jahr gefüllt: zurück durch Tank und Brand zum Hof und seinen Lieferungen Obst.
door-trial-the_picture_says_how_much = Das Bild sagt, wie viel von jedem darin ist und was unterwegs verloren ging.
door-trial-take_a_sheet_in = Ein Blatt einlesen
door-trial-six_casks_in_somebodys_old = Sechs Fässer in jemandes alter Tabelle. Zwei ihrer Zellen können nicht stimmen.
door-trial-which_cells_it_stops_at = An welchen Zellen es anhält und was es anbietet. Nichts wird geschrieben, bevor Sie es sagen.
desk-upkeep-opened_and_verified_entries = { $near }, geöffnet und geprüft: { $status } Einträge
desk-upkeep-every_page_and_every_digest = { $near }, jede Seite und jeder Prüfwert
desk-upkeep-backup_old = Sicherung { $age } alt
desk-upkeep-read_through = Durchgelesen
desk-upkeep-less_than_gb_a_full = Weniger als { $least } GB. Auf einer vollen Platte warten Übergaben auf den Telefonen.
desk-upkeep-disk_free = Platte { $said } frei
desk-upkeep-where_the_book_lies = wo das Buch liegt
desk-upkeep-not_by_itself = nicht von selbst
desk-upkeep-backup = Sicherung
desk-upkeep-this_server_makes_none_by = Dieser Server macht von selbst keine.
desk-upkeep-the_server_reads_the_whole = Der Server liest das ganze Buch einmal am Tag.
desk-upkeep-does_not_hold = stimmt nicht
desk-upkeep-nearly_full = fast voll
desk-upkeep-none_made_yet = Noch keine gemacht.
desk-upkeep-failed = misslungen
desk-upkeep-old = alt
desk-upkeep-made = gemacht
desk-upkeep-late = überfällig
desk-upkeep-holds = stimmt
desk-upkeep-room = Raum
desk-ends-since = seit { $day }
desk-figures-temperature = Temperatur
desk-figures-true_strength = Wirklicher Gehalt
desk-figures-pure_alcohol = Reiner Alkohol
desk-figures-fill = Füllung
desk-figures-strength_in_the_bottles = Gehalt in den Flaschen
desk-figures-of_the_label = % des Etiketts
desk-clock-days = { $many } Tage
desk-clock-months = { $many } Monate
desk-clock-years = { $many } Jahre
desk-count-ferment =
    { $n ->
        [one] { $many } Gärung
       *[other] { $many } Gärungen
    }
desk-count-person =
    { $n ->
        [one] { $many } Person
       *[other] { $many } Personen
    }
desk-count-entry =
    { $n ->
        [one] { $many } Eintrag
       *[other] { $many } Einträge
    }
desk-count-vessel =
    { $n ->
        [one] { $many } Gefäß
       *[other] { $many } Gefäße
    }
desk-day-read =
    { $n ->
        [one] { $many } Gärung ist abzulesen
       *[other] { $many } Gärungen sind abzulesen
    }
desk-day-stuck =
    { $n ->
        [one] { $many } Gärung stockt
       *[other] { $many } Gärungen stocken
    }
desk-day-bottling =
    { $n ->
        [one] { $many } Abfüllung wartet auf ihr Ende
       *[other] { $many } Abfüllungen warten auf ihr Ende
    }
desk-day-regauge =
    { $n ->
        [one] { $many } Fass ist nachzumessen
       *[other] { $many } Fässer sind nachzumessen
    }
desk-day-sample =
    { $n ->
        [one] { $many } Fass ist zu beproben
       *[other] { $many } Fässer sind zu beproben
    }
desk-day-taste =
    { $n ->
        [one] { $many } Fass ist zu verkosten
       *[other] { $many } Fässer sind zu verkosten
    }
desk-day-stands =
    { $n ->
        [one] { $many } Tank steht lange
       *[other] { $many } Tanks stehen lange
    }
desk-day-failed =
    { $n ->
        [one] { $many } Messgerät bestand die Prüfung nicht
       *[other] { $many } Messgeräte bestanden die Prüfung nicht
    }
desk-day-open_run =
    { $n ->
        [one] { $many } Brand hat kein Ende
       *[other] { $many } Brände haben kein Ende
    }
desk-day-still =
    { $n ->
        [one] { $many } Maische wartet auf ein Brenngerät
       *[other] { $many } Maischen warten auf ein Brenngerät
    }
desk-day-owed =
    { $n ->
        [one] { $many } Antwort ist offen
       *[other] { $many } Antworten sind offen
    }
desk-day-nothing_owed = keine Antwort ist offen
desk-day-nothing_owed_next = Keine Antwort ist offen. { $next }
desk-day-run_ends =
    { $state ->
        [late]
            { $what ->
                [cut] { $still } war um { $at } abzutrennen
               *[end] { $still } sollte um { $at } enden
            }
        [now]
            { $what ->
                [cut] { $still }: Abtrennung jede Minute
               *[end] { $still } endet jede Minute
            }
       *[coming]
            { $what ->
                [cut] { $still }: Abtrennung um { $at }
               *[end] { $still } endet um { $at }
            }
    }
desk-day-run_at_its_end =
    { $what ->
        [cut] { $still } ist bei der Abtrennung
       *[end] { $still } ist am Ende
    }
desk-day-still_heats = { $still } heizt
desk-day-still_runs = { $still } läuft: { $part }
desk-day-ended =
    { $n ->
        [one] { $which } ist zu Ende
       *[other] { $which } sind zu Ende
    }
desk-day-near_end =
    { $n ->
        [one] { $which } ist nahe am Ende
       *[other] { $which } sind nahe am Ende
    }
desk-day-one_stuck = { $name } stockt
desk-day-one_stands = { $name } steht lange
desk-day-one_read = { $name } ist abzulesen
desk-day-one_silent = { $name } ist still
desk-day-silent =
    { $n ->
        [one] { $many } Telefon ist still
       *[other] { $many } Telefone sind still
    }
desk-day-nothing_due = Heute ist nichts fällig.
desk-day-to_read = { $name } ablesen
desk-day-round = die Runde von { $ferments }
desk-day-round_readings = Ablesungen
desk-day-round_regauge = Nachmessung
desk-day-round_samples = Proben
desk-day-round_tasting = Verkostung
desk-day-next = Als Nächstes { $what } um { $at }.
desk-part-heating = heizt
desk-part-heads = Vorlauf
desk-part-hearts = Mittellauf
desk-part-tails = Nachlauf
desk-part-low_wines = Lutter
desk-part-feints = Vor-/Nachlauf
desk-due-many_read =
    { $n ->
        [one] { $many } Gärung abzulesen
       *[other] { $many } Gärungen abzulesen
    }
desk-due-many_close =
    { $n ->
        [one] { $many } Gärung ist zu Ende
       *[other] { $many } Gärungen sind zu Ende
    }
desk-due-many_still =
    { $n ->
        [one] { $many } Maische wartet auf ein Brenngerät
       *[other] { $many } Maischen warten auf ein Brenngerät
    }
desk-due-many_regauge =
    { $n ->
        [one] { $many } Fass nachzumessen
       *[other] { $many } Fässer nachzumessen
    }
desk-due-many_sample =
    { $n ->
        [one] { $many } Fass zu beproben
       *[other] { $many } Fässer zu beproben
    }
desk-due-many_taste =
    { $n ->
        [one] { $many } Fass zu verkosten
       *[other] { $many } Fässer zu verkosten
    }
desk-due-many_stands =
    { $n ->
        [one] { $many } Tank steht
       *[other] { $many } Tanks stehen
    }
desk-due-many_bottling =
    { $n ->
        [one] { $many } Abfüllung begonnen
       *[other] { $many } Abfüllungen begonnen
    }
desk-due-many_failed =
    { $n ->
        [one] { $many } Messgerät bestand die Prüfung nicht
       *[other] { $many } Messgeräte bestanden die Prüfung nicht
    }
desk-due-many_instrument =
    { $n ->
        [one] { $many } Messgerät zu prüfen
       *[other] { $many } Messgeräte zu prüfen
    }
desk-due-many_open_run =
    { $n ->
        [one] { $many } Brand ohne Ende
       *[other] { $many } Brände ohne Ende
    }
desk-due-many_stuck =
    { $n ->
        [one] { $many } Gärung stockt
       *[other] { $many } Gärungen stocken
    }
desk-due-and_more = { $named } und { $more } weitere
desk-due-all_of_them = Alle
desk-due-look = Ansehen
desk-due-late = { $time } überfällig
desk-due-now = jetzt
desk-due-begun = begonnen { $when }
desk-due-last = zuletzt { $when }
desk-due-never_yet = noch nie
desk-due-last_entry = letzter Eintrag { $when }
desk-due-months_open = { $first } bis { $last } sind nicht geschlossen
desk-due-month_open = { $month } ist vorbei und nicht geschlossen
desk-due-us_reports = seine Meldungen sind bis zum 15. des Folgemonats fällig
desk-due-one_read = { $name } ablesen
desk-due-one_close = { $name } ist zu Ende: beenden
desk-due-one_stuck = { $name } steht still
desk-due-one_still = { $name } wartet auf ein Brenngerät
desk-due-one_regauge = { $name } nachmessen
desk-due-one_sample = { $name } beproben
desk-due-one_taste = { $name } verkosten
desk-due-one_stands = { $name } steht { $time }
desk-due-one_bottling = { $name }: zur Abfüllung gemessen, { $time } her
desk-due-one_open_run = { $name } { $what } hat kein Ende
desk-due-one_failed = { $name } bestand die Prüfung nicht
desk-due-one_instrument = { $name } prüfen
desk-due-one_instrument_late = { $name }: Prüfung { $time } überfällig
group-page-sites = Orte
group-page-shut_out_what_it_handed = Ausgesperrt. Was übergeben ist, bleibt. Ein neuer Code lässt den Ort wieder zu.
group-page-taken_the_other_branch_stays = Genommen. Der andere Zweig bleibt aufgezeichnet.
group-page-made_of = Aus
group-page-this_needs_the_role_ask = Das braucht die Rolle { $access }. Jemanden im Büro fragen.
group-files-no_site_has_anything_to = Unter diesem Namen hat kein Ort etwas zu verfolgen. Mit der Suche auf der Spurenseite suchen.
paper-label-stand_off_label_scan_here = ABSTANDSETIKETT: hier scannen. Außerhalb der Linie bleiben. Die Regeln des Betriebs gehen vor.
paper-label-does_not_fit_a_label = { $mark } passt in 10 mm hoher Schrift nicht auf ein Etikett von { $wide } x { $high } mm. Ein größeres Etikett oder einen kürzeren Code wählen.
paper-label-choose_1_to_labels_to = 1 bis { $most } Etiketten zum Drucken wählen.
paper-label-this_page_has_labels_start = Diese Seite hat { $many } Etiketten. Bei 1 bis { $many } beginnen.
paper-label-ruler = Diese Linie misst 50 mm. Wenn nicht, mit 100 % neu drucken.
paper-label-own_size_is = Eine eigene Größe ist { $low } bis { $high } mm breit und hoch, mit 0 bis { $clear } mm frei an jedem Rand. Breite und Höhe in Millimetern eintippen.
paper-label-zpl_wants_a_roll = ZPL druckt ein Etikett nach dem anderen. Eine Rolle, einen Anhänger oder eine eigene Größe wählen.
paper-case-lot = Los { $lot }
paper-case-case = Karton { $case }
paper-case-not_the_label_of_the_law = Für Lager und Spur. Das Etikett, das das Gesetz verlangt, ist ein anderes.
paper-case-does_not_fit = Das Etikett eines Kartons passt nicht auf { $wide } x { $high } mm. Ein größeres Etikett wählen.
paper-case-address_too_long = Die Adresse des Buches ist zu lang für ein Etikett. Einen kürzeren PUBLIC_HOST setzen.
desk-room-today = Heute
desk-room-queries = Fragen
desk-room-entries = Einträge
desk-room-vessels = Gefäße
desk-room-cellar = Keller
desk-room-runs = Brände
desk-room-blending = Verschnitt
desk-room-trace = Spur
desk-room-periods = Zeiträume
desk-room-labels = Etiketten
desk-room-settings = Einstellungen
desk-rule-age_years = { $figure } Jahre im Holz
desk-rule-strength_low = von { $figure }
desk-rule-strength_high = bis { $figure }
desk-rule-score_low = Punkte { $figure }
desk-rule-loss_high = Verlust höchstens { $figure } % im Jahr
access-passkey-not_here = Unter dieser Adresse geht kein Passkey. Das Passwort eintippen.
access-passkey-does_not_open = Dieser Passkey öffnet nicht. Noch einmal versuchen oder das Passwort eintippen.
access-passkey-none_used = Kein Passkey wurde benutzt. Noch einmal versuchen oder das Passwort eintippen.
access-passkey-none_made = Kein Passkey wurde gemacht. Noch einmal versuchen; ein Gerät, das schon einen von Ihnen hat, macht keinen zweiten.
access-steps-another_phone_or_computer = Anderes Telefon, anderer Rechner
access-steps-on_this = Auf diesem Gerät: { $name }
access-steps-fetch_the = Holen: { $fetch }
access-steps-done = Getan
access-steps-back_one_step = Einen Schritt zurück
access-steps-or_the_computer_does_not = Oder der Rechner antwortet diesem Telefon am Port { $port } nicht: seine Firewall, oder ein anderes WLAN. Diese Seite kann beides nicht unterscheiden.
access-steps-compare_before_you_trust = Vergleichen vor dem Vertrauen
access-steps-these_groups_must_be_the = Diese Gruppen müssen die sein, die der Rechner im Büro zeigt. Weichen sie ab, hier aufhören und dem Büro sagen.
access-steps-the_whole_fingerprint_sha_256 = Der ganze Fingerabdruck, SHA-256
access-steps-another_one = Ein anderes?
access-steps-profile = Profil
access-steps-certificate = Zertifikat
access-steps-trusted = Dieses Telefon vertraut dem Haus.
access-steps-not_trusted_yet = Es vertraut dem Haus noch nicht.
access-steps-try_again = Erneut versuchen
access-steps-counted = Schritt { $at } von { $many }
access-plain-trust_this_distillerys_computer = Dem Rechner dieser Brennerei vertrauen
access-plain-once_on_each_phone_after = Einmal auf jedem Telefon. Danach öffnet sich die Tafel ohne Warnung und arbeitet ohne Netz.
floor-frame-to_the_work = Zur Arbeit
floor-frame-back = Zurück
floor-frame-vessel = Gefäß
floor-frame-waits_on_slate = auf der Tafel
floor-frame-floor = Betrieb
floor-frame-today = Heute
floor-frame-scan = Scannen
floor-frame-slate = Tafel
floor-frame-more = Mehr
floor-field-may_stay_empty = (darf leer bleiben)
floor-field-unit_of = Einheit von { $label }
floor-field-scan_for = Scannen für { $label }
floor-field-not_logged_yet = Noch nicht eingetragen.
floor-field-nothing_is_lost = Nichts ist verloren; diese berichtigen und noch einmal eintragen.
floor-away-title = Das Büro ist fort
floor-away-desk = Büro
floor-away-no_answer = keine Antwort vom Buch
floor-away-words = Das Büro steht auf dem Rechner des Buchs, und der antwortet nicht. Was dieses Telefon eingetragen hat, ist sicher auf seiner Tafel.
floor-away-ask_again = Erneut fragen
floor-away-work_without = Ohne Netz arbeiten
floor-enrol-title = Dieses Telefon zulassen
floor-enrol-office_gives = Das Büro gibt jedem Telefon einmal einen Code. Damit übergibt es ans Buch und behält die Karten der Gefäße.
floor-enrol-code = Code vom Büro
floor-enrol-name = Wie dieses Telefon heißt
floor-enrol-name_help = Wie auf seiner Rückseite. Leer: wie das Büro es nannte.
floor-enrol-let_it_in = Zulassen
floor-job-title = Arbeit
floor-job-no_script = Diese Seite rechnet auf dem Telefon und braucht Skripte. Jeder Eintrag geht auch von der Karte des Gefäßes aus.
floor-log-needed = nötig
floor-log-remark = Bemerkung
floor-log-read_now = Jetzt abgelesen
floor-log-left_empty = Leer: jetzt abgelesen.
floor-log-log_it = Eintragen
floor-run-title = Brand
floor-run-sheet = Brennblatt
floor-vessel-to_log = Was eintragen
floor-run-plain_reading = Ablesung
floor-run-cut_or_event = Abtrennung oder Ereignis
floor-run-end_the_run = Brand beenden
floor-scan-camera_sees = Was die Kamera sieht
floor-scan-torch = Lampe
floor-scan-outside_the_line = Außerhalb der Linie bleiben, außer dieses Telefon ist dafür zugelassen und der Betrieb erlaubt es.
floor-slate-no_script = Die Tafel braucht Skripte. Ohne sie geht jeder Eintrag beim Eintragen gleich ins Buch.
floor-today-no_script = Dieses Telefon führt keine Skripte aus, also gibt es darauf keine Tafel. Mit Verbindung eine Kennung eintippen, um weiterzugehen.
floor-who-title = Wer trägt ein?
floor-who-no_script = Ohne Skripte tragen Sie unter eigenem Namen ein:
floor-who-sign_in = anmelden
floor-mark-label = Kennung auf dem Etikett
floor-mark-hint = Buchstaben, Ziffern und das letzte Zeichen nach dem Strich.
floor-mark-open = Öffnen
floor-caution-lead_1 = Die Linie.
floor-caution-words_1 = Ein gewöhnliches Telefon kann Alkoholdampf entzünden. Außerhalb der markierten Linie bleiben, außer das Telefon ist zugelassen und der Betrieb erlaubt es. An der Vorlage ablesen, zurücktreten, mit der Minute der Ablesung eintippen.
floor-caution-lead_2 = Gärraum.
floor-caution-words_2 = Kohlendioxid riecht nicht und liegt unten. Ab 5000 ppm hinaus, lüften, Aufsicht verständigen; ab 30 000 ppm sofort hinaus. Für keine Ablesung zurückgehen. Eine Kerze ist keine Prüfung.
floor-caution-lead_3 = Vorlauf und Methanol.
floor-caution-words_3 = Eine Spindel sieht kein Methanol, ein Dichtemessgerät auch nicht. Der Vorlauf enthält einen Teil, Mittel- und Nachlauf auch. Nur ein Labor weiß es. Die ersten Tropfen nicht kosten.
floor-caution-lead_4 = Brenngerät.
floor-caution-words_4 = Heiß, und unter Druck, wenn ein Weg verstopft. Kaltes Wasser in ein heißes geschlossenes Brenngerät kann es eindrücken. Entlüftungen freihalten; ein laufendes Brenngerät nie verlassen.
floor-caution-lead_5 = Tanks und Bottiche.
floor-caution-words_5 = Niemand steigt allein oder ohne Erlaubnisschein, Gasprüfung und jemanden draußen ein.
floor-caution-lead_6 = Fässer.
floor-caution-words_6 = Ein volles Fass von 225 L (59 gal) wiegt 220 bis 260 kg (485 bis 573 lb). Karren, Hebezeug oder Keil; nie der Rücken, nie in die Rolllinie.
floor-caution-lead_7 = Allein im Keller.
floor-caution-words_7 = Sagen, wo Sie sind und wann Sie zurück sind. Dieses Telefon schlägt keinen Alarm.
floor-caution-title = Vorsicht
floor-caution-first = Die eigene Beurteilung des Betriebs, örtliche Vorschriften und befugte Leute gehen vor. Nichts auf diesem Telefon sagt, dass ein Ort oder ein Brand sicher ist.
floor-form-unit_of = Einheit von { $what }
floor-form-read_at = Abgelesen um
floor-form-who = Wer
floor-form-role = Rolle
floor-form-seen_by = Gesehen von
floor-form-remark = Bemerkung
floor-form-missing = { $what } fehlt. Eintippen.
floor-form-yes = ja
floor-form-no = nein
floor-form-alcoholmeter = Benutztes Alkoholometer
floor-form-dip = Benutzter Peilstab
floor-form-refractometer = Benutztes Refraktometer
floor-form-saccharometer = Benutzte Mostwaage
floor-form-scale = Benutzte Waage
floor-form-thermometer = Benutztes Thermometer
floor-form-density_meter = Benutztes Dichtemessgerät
floor-form-pH_meter = Benutztes pH-Meter
floor-enrol-type_the_code = Den Code vom Büro eintippen.
floor-vessel-not_in_book = Das Buch hat kein Gefäß { $mark }. Das Etikett noch einmal lesen oder das Büro bitten, es einzutragen.
floor-form-no_such = Dieses Blatt gibt es nicht. Zurückgehen und eines von der Karte des Gefäßes wählen.
floor-log-sign_in_first = Zuerst anmelden, in einem anderen Tab: dann die Taste noch einmal drücken. Das Getippte bleibt hier.
floor-log-no_time = Abgelesen um: Tag und Minute wählen oder für jetzt leer lassen.
floor-mark-bad =
    { $why ->
        [empty] Die Kennung vom Etikett eintippen, etwa F3-8.
        [foreign] Dieser Code ist keiner von uns. Das Etikett am Gefäß scannen oder seine Kennung eintippen.
        [characters] Eine Kennung hat nur Buchstaben A bis Z und Ziffern 0 bis 9. Das Etikett noch einmal lesen.
        [too_short] Eine Kennung hat einen Code und ein Prüfzeichen, etwa F3-8. Ganz eintippen.
        [too_long] Das ist zu lang für eine Kennung. Die große Schrift auf dem Etikett eintippen.
       *[check] { $mark } ist keine Kennung: ein Zeichen ist falsch oder das letzte fehlt. Das Etikett noch einmal lesen.
    }
floor-form-within = { $words }
