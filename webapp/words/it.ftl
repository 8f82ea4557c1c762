### The words of Cellarslate in Italian (it). No native of the trade has read them yet.
### Terms believed to be the law’s, from memory (a native of the trade has to read them): bottiglia, deposito
### fiscale, etichetta, fermentazione, distillazione, frutta, vinaccia, fecce, zucchero, acqua, distillato,
### acquavite di frutta, acquavite di vino, acquavite di vinaccia, acquavite di residui di frutta, brandy,
### Geist, whisky, alcole puro, anidride carbonica, metanolo, acido cianidrico, carbammato di etile, sostanze
### volatili, mela, pera, mela cotogna, prugna, mirabella, albicocca, ciliegia, lampone, uva, cereale, segale,
### miele, alcolometro, % vol, volume, litro, peso, massa volumica, temperatura, lotto, fornitore, accisa,
### laboratorio, campione, firma, età, pericolo.
### Terms of trade usage, from memory: serbatoio, alambicco, colonna, piatto, deflemmatore, condensatore,
### recipiente, botte, cartone, pallet, cassone, serbatoio d’imbottigliamento, distilleria, magazzino, cantina,
### posto, tappo, doga, cerchio, valvola, filtro, ricevimento, carica, cotta, taglio, rimisurazione, colmatura,
### travaso, assemblaggio, imbottigliamento, distruzione, pulizia, inventario, degustazione, fuoco acceso, prima
### goccia, pasta di frutta, fermentato, nocciolo, lievito, enzima, acido, teste, cuore, code, flemma, borlanda,
### castagno, gelso, ciliegio, tostatura, carbonizzazione, nuovo, areometro, saccarimetro, rifrattometro,
### densimetro elettronico, termometro, bilancia, pH-metro, taratura, incertezza, titolo effettivo, peso lordo,
### tara, peso netto, portata, capacità, resa, perdita, evaporazione, giacenza, estratto secco, registro,
### annotazione, partita, cliente, rettifica, dichiarazione, vuoto, pieno, in uso, fuori servizio, sigillato,
### pesare, misurare l’altezza, accertare, rimisurare, riempire, svuotare, ridurre, imbottigliare, assaggiare,
### spostare, colmare, caricare, tagliare, distruggere, contare, controllare, rettificare, campagna, caldo, in
### pressione.
### Own wording, from memory: sigillo, accertamento del prodotto, seconde, teste e code, nota, sulla lavagna,
### nel registro, con domanda, rifiutato, rettificato, in ritardo, nessun segnale, offline, annotare,
### consegnare, scansionare, digitare, annullare, stampare, riprovare, accedere, adesso, letto alle, oggi, ieri,
### scaduto, giorno, mese, anno, ruolo, lavagna (slate), registro (book), ufficio (desk, office), reparto
### (floor), sigla (mark), recipiente (vessel), recipiente di raccolta, raccolta (receiver), misuratore (spirit
### safe), partita (batch), altezza (dip), annotazione (entry), avviso, domanda, stop (note, ask, stop), si
### mantiene, depennare (let stand, strike), tenere come letto (keep as read), annullare (take back),
### rettificare (put right, amend), ammettere, escludere (let a phone in, shut it out), giro (round),
### accertamento, accertare (gauge), rimisurazione (regauge), riempimento (fill), unione (vat), svuotamento
### (dump), imbibizione (soakage), archivio campioni (library), caposaldo (head of the proof), riepilogo (fold),
### conguaglio (adjustment), giustificato (accounted for), forfait (flat rate), accisa accertata (duty
### determined), produzione, magazzino, lavorazione (US accounts), cappello (cap), caraffa e orologio (jug and
### watch), getto (stream), cocchiume (bung-hole), fondo (head of a cask, heel), carica (charge), pasta (mash),
### alla cieca (blind), tavola di taratura (strapping table), serie (set), passaporto (passport), proof gallon.

range-between = da { $low } a { $high }
range-or_more = { $low } o più
range-up_to = fino a { $high }
span-s = { $many } s
span-min = { $many } min
span-h = { $many } h
span-days =
    { PLURAL($many) ->
        [one] { $many } giorno
       *[other] { $many } giorni
    }
span-months =
    { PLURAL($many) ->
        [one] { $many } mese
       *[other] { $many } mesi
    }
span-years =
    { PLURAL($many) ->
        [one] { $many } anno
       *[other] { $many } anni
    }
time-same_day = { $clock }
time-day_before = { $clock } del giorno prima
time-day = { $day } { $clock }
pct =
    { UNITS() ->
        [us] proof
       *[metric] %
    }
points =
    { UNITS() ->
        [us] punti proof
       *[metric] punti
    }
as_said = { $words }
no_such_message = Questo programma non ha parole per «{ $id }». Aggiornarlo, o chiedere in ufficio.
missing = Manca: { $label }. { asks }
missing-question = { $label } { asks }
asks =
    { $sort ->
        [choice] Sceglierne uno.
        [yes_no] Sceglierne uno.
        [mark] Scegliere, scansionare o digitare.
        [date] Scegliere il giorno.
       *[other] Digitare.
    }
no_such_choice = { $label }: scegliere una delle voci.
no_such_choice-yes_no = { $label }: sì o no.
no_date = { $label }: { $typed } non è una data. Scegliere il giorno.
too_long = { $label } supera { $most } caratteri. Accorciare; il resto può andare in una nota.
no_such_unit = { $label } si legge in { $units }. Sceglierne una.
no_number = { $label }: { $reason }
number-empty = Non c’è scritto nulla. Digitare la cifra come la mostra lo strumento.
number-too_long = Troppo lungo per una cifra. Al massimo 15 caratteri.
number-two_signs = Un solo punto o una sola virgola, prima dei decimali: 1234.5 o 1234,5.
number-not_plain = Non è un numero semplice. Cifre con un punto o una virgola: 14.6 o 14,6.
outside_tables = { $label }: { $reason }
impossible = { $label } { UNIT(TYPED($figure)) } non può essere: è possibile { UNIT(LIKE($possible, $figure)) }. Ricontrollare, o tenere come letto.
impossible-outside = { $label }: { $reason }
unusual = { $label } { UNIT(TYPED($figure)) } è insolito: qui è usuale { UNIT(LIKE($usual, $figure)) }. Ricontrollare.
danger = { $label } { UNIT(TYPED($figure)) }. { $act }
slip-swapped = due cifre scambiate
slip-point = virgola spostata
slip-unit = { $meant }, non { $typed }
slip-meant = { TYPED($meant) }
slip-key = il tasto accanto
slip-twice = una cifra digitata due volte
slip-misread = una cifra presa per un’altra
slip-lost = una cifra saltata
slip-sign = segno opposto
slip-box = nella casella «{ $label }»
slip-exchanged = scambiato con «{ $label }»
slip-net = era il netto, senza recipiente
slip-gross = era il lordo, con il recipiente
slip-ullage = era il vuoto, dall’alto
slip-cases = erano cartoni
ferment_fast = Densità scesa di { $fell } da { $since }, cioè { $a_day } al giorno; { $much } è molto per la frutta. Ricontrollare, e raffreddare la pasta.
ferment_fast-soon = Densità scesa di { $fell } da { $since }: la frutta non fermenta così in fretta. Ricontrollare.
strength_fell = Il titolo effettivo { BARE($now) } { pct } è { APART($off) } { points } sotto i { BARE($last) } { pct } di { $apart } prima: una cotta scende più piano. Ricontrollare.
held_strength =
    Il titolo effettivo { BARE($now) } { pct } è { APART($off) } { points } { $side ->
        [above] sopra
       *[below] sotto
    } i { BARE($held) } { pct } che il registro ha in questo recipiente. Ricontrollare, e cercare uno spostamento o un’acqua non annotati.
reason-outside = { $what } { UNIT($figure) } è fuori dal campo { UNIT($possible) }. { $advice }
reason-outside_in_words = { $what } { $figure } { $unit } è fuori dal campo { $possible } { $unit }. { $advice }
reason-off_glass = A { $temp } un distillato di { $strength } esce dalla scala dell’areometro. Portarlo più vicino a { glass-temp }, o usare un densimetro elettronico.
glass-temp =
    { UNITS() ->
        [us] 60 °F
       *[metric] 20 °C
    }
reason-glass_too_weak = Una lettura di { $reading } a { $temp } vorrebbe dire niente alcole. A quella temperatura l’areometro può mostrare da { $low } a { $high }: rileggere areometro e termometro.
reason-glass_too_strong = Una lettura di { $reading } a { $temp } vorrebbe dire più dell’alcole puro. A quella temperatura l’areometro può mostrare da { $low } a { $high }: rileggere areometro e termometro.
reason-part_ice = A { $temp } può essere in parte ghiaccio. Scaldare sopra { $above } e rileggere.
reason-no_such_density = La massa volumica { $density } è fuori da { BARE($ethanol) } (etanolo) a { $water } (acqua) a questa temperatura. Controllare massa volumica e temperatura; anche zucchero o estratto nel campione fanno questo.
reason-table1_blank = La Tavola 1 non ha valore per { $reading } a { $temp }. Portare il distillato più vicino a 60 °F e rileggere.
reason-gravity_above_start = La densità è sopra quella iniziale. Controllare entrambe, il serbatoio, e se è stato aggiunto zucchero.
reason-no_dip_table = Il registro non ha tavola per questo recipiente. Digitare i litri; l’ufficio può dargli una tavola, nel recipiente, sotto Altezze.
reason-tare_too_heavy = La tara deve stare tra zero e il peso lordo. Ripesare.
reason-target_too_strong = L’acqua può solo abbassare il grado. Controllare obiettivo e titolo.
reason-empty_bottle_heavy = Una bottiglia vuota è più leggera di una piena. Ripesarle entrambe.
reason-few_checks = Ne servono almeno { $least }. Controllare altre bottiglie.
reason-no_gauges = Prima misurare la botte.
reason-uneven_readings = Dare una densità per ogni ora.
measured-alcohol_by_both = Alcole da entrambi
measured-bottle_size = Formato bottiglia
measured-brix = Brix
measured-charge = Carica
measured-check = Controllo
measured-density = Massa volumica
measured-fruit = Frutta
measured-full_bottle = Bottiglia piena
measured-glass_expansion = Dilatazione del vetro
measured-glass_reading = Lettura areometro
measured-gravity = Densità
measured-dip = Altezza
measured-bung_diameter = Diametro al cocchiume
measured-head_diameter = Diametro del fondo
measured-length = Lunghezza
measured-extract = Estratto secco
measured-height = Altitudine
measured-hydrometer_correction = Correzione areometro
measured-juice_share = Quota di succo
measured-loss = Perdita
measured-mass_fraction = Frazione in massa
measured-mole_fraction = Frazione molare
measured-net_weight = Peso netto
measured-number = Numero
measured-original_gravity = Densità iniziale
measured-plato = Plato
measured-proof = Proof
measured-proof_gallons = Proof gallon
measured-proof_reading = Lettura proof
measured-pure_alcohol = Alcole puro
measured-pure_alcohol_charged = Alcole puro caricato
measured-refractometer = Rifrattometro
measured-result = Risultato
measured-size = Formato
measured-solids = Estratto
measured-strength = Titolo
measured-sugar = Zucchero
measured-temperature = Temperatura
measured-thermometer_correction = Correzione termometro
measured-time = Ora
measured-time_ahead = Tempo avanti
measured-unfermentable_part = Parte infermentescibile
measured-usual_drift = Deriva usuale
measured-volume = Volume
measured-water = Acqua
measured-water_temperature = Temperatura dell’acqua
measure-kg_kg = kg/kg
measure-mol_mol = mol/mol
measure-kg_L = kg/L
measure-m = m
measure-per_degC = per °C
measure-of_one = di uno
measure-days = giorni
measure-years = anni
measure-pct_year = % l’anno
measure-pct_vol_year = % vol l’anno
advice-cannot_rise = La densità non può essere salita. Controllare entrambe.
advice-check_charge = Controllare che cosa è stato caricato.
advice-check_charge_strength = Controllare il titolo della carica.
advice-check_dip = Controllare l’altezza e la sua unità.
advice-check_figure = Controllare la cifra e la sua unità.
advice-check_gauges = Controllare gli accertamenti.
advice-check_glass = Controllare l’areometro.
advice-check_glass_figure = Controllare la cifra; un areometro proof ha la sua unità.
advice-check_instrument = Controllare la cifra e lo strumento.
advice-dip_in_table = La tavola del recipiente finisce lì: rimisurare l’altezza, o digitare i litri.
advice-dip_in_cask = La botte non è più alta: rimisurare l’altezza, o guardare le sue dimensioni.
advice-measure_cask = Rimisurare la botte.
advice-check_scale = Controllare la cifra e quale scala ha lo strumento.
advice-check_strengths = Controllare i titoli.
advice-check_thermometer = Controllare il termometro e la sua unità, o portare il campione nel campo.
advice-check_weights = Controllare lordo e tara.
advice-count_again = Ricontare.
advice-distil_sample = Distillare il campione e prendere il proof del distillato.
advice-empty_cask = Una botte vuota non perde nulla.
advice-fraction_not_percent = Darlo come frazione di uno, non in percento.
advice-gauge_again = Accertare di nuovo il serbatoio.
advice-gauge_first = Prima accertare il serbatoio.
advice-give_cask_size = Mettere nel registro la capacità della botte.
advice-give_height = Dare in metri l’altitudine dell’alambicco.
advice-look_again = Ricontrollare la cifra.
advice-look_at_label = Guardare l’etichetta.
advice-no_baume = Sotto l’acqua non c’è Baumé. Prendere il titolo dal calo della densità.
advice-no_check = Nessun controllo fuori da quel campo.
advice-not_so_far = Nessuno conosce una botte così lontano.
advice-order_gauges = Mettere gli accertamenti in ordine di tempo.
advice-order_readings = Mettere le letture in ordine di tempo.
advice-read_both_again = I due non vanno d’accordo. Rileggere entrambi.
advice-read_spirit_again = Rileggere il termometro del distillato.
advice-read_water_again = Rileggere il termometro dell’acqua.
advice-see_certificate = Prenderla dal certificato dello strumento.
advice-soda_lime = Il vetro sodico-calcico è 0,000025.
advice-table1_reading = La Tavola 1 finisce lì: rileggere l’areometro.
advice-table1_temp = La Tavola 1 finisce lì: portare il distillato più vicino a 60 °F.
advice-table_ends = La tavola pubblicata finisce lì.
advice-two_gauges = Due accertamenti alla stessa ora non danno un andamento.
advice-usual_juice_share = Una pasta di frutta intera è da 0,75 a 0,9.
advice-usual_unfermentable = Usuale da 3 a 5.
advice-weigh_again = Ripesare.
floor-go_on = Continuare
floor-not_said = non detto
floor-remark = nota
floor-mistyped = digitato male
floor-misread = letto male
floor-save_the_slate_to = Salvare la lavagna in un file
floor-as_last_time = come l’ultima volta
floor-pin_of = PIN di { $code }
floor-log_it = Annotare
floor-remark_2 = Nota
floor-leave_it = Lasciare
floor-more = Altro
floor-today = Oggi
floor-blind_tasting = Degustazione alla cieca
floor-more_2 = altri { $rest }
floor-next = prossimo
floor-empty = vuoto
floor-helps = Aiuti
floor-ended = finita { $ended_at }
floor-gauge_the_fractions = Accertare le frazioni
floor-run = cotta
floor-hearts = cuore
floor-tails = code
floor-true_strength_over_time = Titolo effettivo nel tempo
floor-time = ora
floor-run_before = cotta precedente
floor-nose_first = Prima il naso.
floor-reading = Lettura
floor-nose_first_2 = prima il naso
floor-cut_plan = Piano dei tagli
floor-cut_to_hearts = Taglio al cuore
floor-empty_by_the_book = vuoto, secondo il registro
floor-this_phone = Questo telefono
floor-not_let_in = non ammesso
floor-since = dalle { $started_at } · { $started_at_2 }
floor-run_sheet = Foglio di cotta
floor-let_this_phone_in = Ammettere questo telefono
floor-put_it_right = Rettificare
floor-take_it_back = Annullare
floor-taken_back_it_stays = Annullato. Resta leggibile, barrato.
floor-start-this_phone_now_works = Ora questo telefono lavora senza segnale.
floor-start-this_page_did_not = La pagina non si è aperta come doveva. { $message } La lavagna è al sicuro.
floor-start-try_again = Riprovare
floor-begun-begun_before = Già cominciato
floor-begun-begun_by = Cominciato { $ago } da { $code }{ $shown }
floor-begun-go_on_or_start = Continuare, o ripartire da capo?
floor-begun-start_clean = Da capo
floor-entryform-log = Annotare { $figure } { $unit }
floor-entryform-as_read = { " " }come letto
floor-extras-instrument_for = { $instrument } per { $label }
floor-extras-corrected = { " " }· corretto
floor-extras-read_at = Letto alle { $typed }
floor-extras-read_now = Letto adesso
floor-extras-read_earlier = Letto prima?
floor-extras-with_a_remark = con nota
floor-fix-something_else = altro
floor-fix-of = { " " }del { $day }
floor-fix-of_2 = { " " }del { $day }, { $at }
floor-fix-this_replaces_the_entry = Sostituisce l’annotazione{ $when }, che resta leggibile. { $rest }
floor-fix-type_all_of_it = Digitare tutto, non solo ciò che era sbagliato.
floor-fix-what_was_wrong = Che cosa era sbagliato
floor-full-the_phone_could_not = Il telefono non ha potuto conservarlo. Le cifre restano qui; annotare di nuovo.
floor-full-not_on_the_slate = Non sulla lavagna.
floor-full-the_figures_stay_in = { $words } Le cifre restano in questo modulo.
floor-ghosts-last = ultimo { $words }, { $when }
floor-ghosts-last_2 = ultimo { $figure }, { $when }
floor-jumps-can_only_fall_it = { $label } può solo scendere: era { $last } { $when }.
floor-jumps-before = prima
floor-look-look_again = Ricontrollare
floor-look-danger = Pericolo.
floor-look-look_again_2 = Ricontrollare?
floor-look-keep_as_read = Tenere come letto
floor-marks-pick_scan_or_type = scegliere, scansionare o digitare
floor-marks-scan_or_type = scansionare o digitare
floor-quickfields-unit_of = Unità di { $label }
floor-quickfields-minute = Minuto
floor-sums-by_the_class_of = secondo la classe degli strumenti, o quella di legge
floor-panels-not_read_yet = non ancora letto
floor-panels-switch_first_mark_of = Prima commutare. Sigla del recipiente di raccolta ora aperto
floor-panels-switch_first_open_now = Prima commutare. Ora aperto:
floor-panels-another_minute_more_figures = un altro minuto, altre cifre
floor-paper-no_strength_yet = Ancora nessun titolo.
floor-paper-glass = areometro { $glass }{ $temp }
floor-paper-at = { " " }a { $temp }
floor-paper-flow = Portata
floor-paper-not_read = non letto
floor-paper-not_since = , non più da
floor-paper-the_sum_needs_it = serve al calcolo
floor-paper-receivers = Raccolta
floor-paper-true = { $true_strength } effettivi
floor-paper-dip = altezza { $dip }
floor-paper-logged = annotato { $typed_at }
floor-paper-logged_in_this_run = Annotato in questa cotta
floor-paper-twice = due volte
floor-paper-logged_twice =
    Annotato due volte in un minuto. Se era { $what ->
        [change] un solo cambio
       *[cut] un solo taglio
    }, annullarne uno.
floor-paper-this_phone = questo telefono
floor-state-cut_to_tails = Taglio alle code
floor-state-end_the_run = Finire la cotta
floor-state-last_time = { LOWER($step) } l’ultima volta
floor-state-heads_cut = taglio delle teste
floor-state-hearts_cut = taglio del cuore
floor-state-logged = , annotato { $typed_at }
floor-state-logged_twice = , annotato due volte
floor-enrol-the_code_is_missing = Manca il codice. Scansionarlo in ufficio, o digitarlo.
floor-enrol-letting_it_in_and = Lo si ammette, e si prendono le schede dei recipienti.
floor-enrol-is_let_in = { $name } è ammesso.
floor-enrol-the_book_did_not = Il registro non ha accettato il codice. Chiederne uno nuovo in ufficio.
floor-job-there_is_no_such = Questa pagina non c’è. Tornare a Oggi.
floor-job-this_page_is_not = Questa pagina non è ancora sul telefono. Arriva da sé quando il telefono raggiunge il registro; fino ad allora annotare dalla scheda del recipiente.
floor-job-not_here_yet = Non ancora qui
floor-log-not_on_this_phones = non nella lista di questo telefono
floor-more-note = Nota
floor-more-to_the_next_shift = al turno dopo
floor-more-instrument = Strumento
floor-more-check_it = controllarlo
floor-more-bottles = Bottiglie
floor-more-count_them = contarle
floor-more-cases = Cartoni
floor-more-out_or_back = fuori o di ritorno
floor-more-in_from_another_site = arrivati da un altro sito
floor-more-stock = Giacenza
floor-more-count_it_in_a = contarla in un giro
floor-more-your_glasses = i propri bicchieri
floor-more-laboratory = Laboratorio
floor-more-of_bottled_spirit = di distillato imbottigliato
floor-more-the_curves = le curve
floor-more-the_jobs = i lavori
floor-more-the_reader_of_labels = il lettore di etichette
floor-more-log_without_a_vessel = Annotare senza recipiente
floor-more-nobody_chosen = Nessuno scelto
floor-more-who_logs = chi annota
floor-more-no_name_yet = Ancora nessun nome
floor-more-let_in = ammesso
floor-more-gloves_buzz_voice = guanti, vibrazione, voce
floor-more-desk = Ufficio
floor-more-needs_signal = serve segnale
floor-more-put_the_phone_down = Posare il telefono
floor-more-not_on_this_phone = Non ancora su questo telefono: { $awaited }. Tenere l’app aperta con segnale per un minuto.
floor-more-as_you_like_it = A piacere
floor-more-units = Unità
floor-more-metric = metriche
floor-more-us = US
floor-more-decimal_mark = Segno decimale
floor-more-as_the_house = come la casa
floor-more-keys = Tasti
floor-more-large_keys = tasti grandi
floor-more-phone_keyboard = tastiera del telefono
floor-more-light = Luce
floor-more-as_the_phone = come il telefono
floor-more-dark = scuro
floor-more-light_2 = chiaro
floor-more-put_cellarslate_on_the = Mettere Cellarslate nella schermata Home
floor-more-put_cellarslate_on_the_2 = Mettere Cellarslate nella schermata Home (Condividi, poi Aggiungi alla schermata Home): il telefono conserva più a lungo la lavagna.
floor-run-the_run_in_full = La cotta per intero non si è potuta mostrare; il foglio resta anche senza.
floor-run-no_run_is_known = Su questo telefono non si conosce nessuna cotta per { $mark }. Prima caricare l’alambicco; o leggere adesso, e il registro unirà la lettura alla sua cotta.
floor-run-charge = Carica
floor-run-heat_on = Fuoco acceso
floor-run-first_drop = Prima goccia
floor-run-other_event = Altro evento
floor-run-still_opened = Alambicco aperto
floor-run-balance_and_yield = Bilancio e resa
floor-run-charge_again = Ricaricare
floor-run-switch_the_receiver_first = prima cambiare recipiente di raccolta
floor-run-event = Evento
floor-run-log_the_cut = Annotare il taglio
floor-scan-the_reader_of_labels = Il lettore di etichette non è ancora su questo telefono: arriva al prossimo segnale. Digitare la sigla.
floor-slate-not_let_in_yet = non ancora ammesso
floor-slate-handed_in = consegnato { $handed_in_at }
floor-slate-nothing_handed_in_yet = ancora nulla consegnato
floor-slate-handing_in = consegna in corso
floor-slate-book_busy = registro occupato
floor-slate-wants_a_look = Da guardare
floor-slate-waiting = In attesa
floor-slate-put_aside_not_in = Messe da parte, non nel registro
floor-slate-in_the_book = Nel registro
floor-slate-handing_in_2 = Consegna in corso
floor-slate-hand_in_now = Consegnare ora
floor-slate-entries_wait =
    { PLURAL($count) ->
        [one] { $count } annotazione attende
       *[other] { $count } annotazioni attendono
    } su questo telefono.
floor-slate-nothing_waits = Nulla in attesa.
floor-slate-all_in_the_book = Tutto nel registro.
floor-slate-handing_in_3 = Consegna in corso{ $in }.
floor-slate-of_are_in = : { $done } di { $asked } sono dentro
floor-slate-the_book_does_not = Il registro non conosce ancora questo telefono. Ammetterlo; poi si consegnano da sé.
floor-slate-they_are_safe_here = Qui sono al sicuro e si consegnano da sé quando il registro risponde.
floor-slate-lines_want_a_look =
    { PLURAL($count) ->
        [one] { $count } riga è
       *[other] { $count } righe sono
    } da guardare.
floor-slate-entries_put_aside =
    { PLURAL($count) ->
        [one] { $count } annotazione messa
       *[other] { $count } annotazioni messe
    } da parte.
floor-slate-entries_handed_in =
    { PLURAL($count) ->
        [one] { $count } annotazione consegnata
       *[other] { $count } annotazioni consegnate
    } adesso.
floor-slate-keeping_it_safe = Tenerla al sicuro
floor-slate-storage_is_kept = la memoria è conservata
floor-slate-storage_may_be_cleared = la memoria può essere svuotata
floor-slate-load_a_saved_slate = Caricare una lavagna salvata
floor-slate-a_saved_slate_can = Una lavagna salvata si può caricare su qualsiasi telefono, in qualsiasi momento. Il registro prende ogni annotazione una volta sola.
floor-slate-entries_on_this_slate =
    { PLURAL($count) ->
        [one] { $count } annotazione è
       *[other] { $count } annotazioni sono
    } ora su questa lavagna.{ $known }
floor-slate-were_here_already = { " " }{ $known } erano già qui.
floor-today-the_book_has_no = Il registro non ha ancora recipienti. Li mette l’ufficio; poi arrivano qui da sé.
floor-today-the_book_does_not = Il registro non conosce ancora questo telefono.
floor-today-no_cards_on_this = Ancora nessuna scheda su questo telefono. Arrivano con la prima consegna.
floor-today-you_can_scan_and = Si può già scansionare e annotare; tutto attende qui.
floor-today-run = { $what } cotta { $name }
floor-today-read = { " " }· letto { $last }
floor-today-true = { $sign } effettivi
floor-today-the_book_asks = Il registro domanda
floor-today-last_remarks = Ultime note
floor-today-all_vessels = Tutti i recipienti
floor-today-find_by_mark_name = Cercare per sigla, nome o contenuto
floor-today-no_vessel_here_is = Nessun recipiente qui si chiama così.
floor-today-elsewhere = Altrove
floor-vessel-no_mark = senza sigla
floor-vessel-not_known_here = non noto qui
floor-vessel-this_phone_knows_no = Questo telefono non conosce recipienti con questa sigla. Consegnare una volta con segnale; il registro può già conoscerla.
floor-vessel-at = A { $mark }:{ " " }
floor-vessel-note_it = Prenderne nota
floor-vessel-scan_again = Scansionare di nuovo
floor-vessel-open_queries = Domande aperte
floor-vessel-filled = Riempito { $since }.
floor-vessel-nothing_logged_here_yet = Ancora nulla annotato qui.
floor-vessel-the_book_is_still = Il registro sta ancora calcolando che cosa cambiano qui le annotazioni tardive.
floor-vessel-as_the_book_had = Come l’aveva il registro { $fresh }.
floor-vessel-the_book_has_not = Il registro non è ancora stato interrogato.
floor-vessel-readings_without_a_charge = Letture senza carica
floor-vessel-how_much_water = Quanta acqua
floor-vessel-bottling_line = Linea d’imbottigliamento
floor-vessel-more_to_log = Altro da annotare
floor-vessel-what_to_log = Che cosa annotare
floor-who-logs_now = Ora annota { $name }.
floor-who-logs = Annota { $name }
floor-who-no_names_on_this = Ancora nessun nome su questo telefono.
floor-who-they_come_with_the = Arrivano con la prima consegna. Fino ad allora si annota senza nome.
floor-who-as = Come
floor-who-no_signal_so_this = Senza segnale questo PIN non è stato verificato. Su ciò che si annota verrà una domanda.
floor-cautions-carbon_dioxide_lies_low = L’anidride carbonica sta in basso e non ha odore. A 5000 ppm uscire, ventilare, avvisare il responsabile.
floor-cautions-stay_outside_the_line = Restare fuori dalla linea, salvo che il telefono sia omologato e il sito lo permetta. Letto più tardi? Dargli il suo minuto.
floor-cautions-a_hydrometer_cannot_see = Un areometro non vede il metanolo. Prima il naso; il laboratorio sa.
floor-cautions-hot_and_under_pressure = Caldo, e in pressione se un passaggio si blocca. Mai lasciare un alambicco in funzione.
floor-cautions-never_lift_a_full = Mai sollevare a mano una botte piena.
floor-cautions-no_one_enters_a = Nessuno entra in un recipiente senza permesso e qualcuno fuori.
floor-frame-no_signal = nessun segnale
floor-frame-not_the_book = non è il registro
floor-frame-to_look_at = { $attention } da guardare
floor-frame-on_slate = { $waiting } su lavagna
floor-inunits-true_at_20_c = effettivi a 20 °C
floor-inunits-true_at_60_f = effettivi a 60 °F
floor-linesheet-wrong_vessel = recipiente sbagliato
floor-linesheet-logged_twice = annotato due volte
floor-linesheet-open_put_it_right = Aprire { $kind }, { $line }: rettificare o annullare
floor-linesheet-why_it_stays_legible = Perché? Resta leggibile, barrato, e non conta più.
floor-linesheet-that_could_not_be = Non si è potuto conservare. Riprovare.
floor-scanfor-what_the_camera_sees = Che cosa vede la fotocamera
floor-scanfor-back_to_the_form = Torna al modulo
floor-slatelines-taken_back = annullato
floor-slatelines-refused = rifiutato
floor-slatelines-clash = conflitto
floor-slatelines-the_book_has_another = Il registro ha un’altra annotazione con lo stesso nome. Si tengono entrambe; decide il distillatore.
floor-slatelines-the_book_cannot_read = Il registro non riesce a leggerla.
floor-slatelines-book_no = Registro n. { $book_no }
floor-slatelines-hand_in_again = Riconsegnare
floor-slatelines-i_have_read_it = L’ho letto
floor-takebackbar-taken_back_at_once = annullato subito
floor-takebackbar-that_could_not_be = Non si è potuto conservare. Annullarlo sulla sua riga.
floor-typemark-letters_digits_and_the = Lettere, cifre e l’ultimo carattere dopo il trattino.
floor-typemark-the_last_character_is = Manca l’ultimo carattere. Digitare anche quello, o toccare la sigla che sta sull’etichetta.
floor-typemark-a_right_mark_but = Sigla giusta, ma di nessun recipiente noto a questo telefono.
floor-words-on_the_slate_wait = Sulla lavagna. { $waiting } attendono su questo telefono.
floor-words-on_the_slate_it = Sulla lavagna. Attende su questo telefono.
floor-words-batch = partita { $name }
floor-words-at = a { $strength_pct }
floor-words-just_now = proprio ora
floor-words-min_ago = { $minutes } min fa
floor-words-h_ago = { $minutes } h fa
floor-words-days_ago = { $minutes } giorni fa
floor-ask-the_book_did_not = Il registro non ha risposto in tempo.
floor-ask-the_book_cannot_be = Da qui il registro non si raggiunge.
floor-ask-something_else_answered_not = Ha risposto qualcos’altro, non il registro: forse questa rete vuole prima un accesso.
floor-db-this_phones_storage_is = La memoria di questo telefono è piena, quindi nulla è stato conservato. Fare spazio, o salvare la lavagna in un file e consegnarlo.
floor-db-a_newer_cellarslate_has = Una versione più nuova di Cellarslate tiene aperta la lavagna. Chiudere le altre schede, poi riaprire questa pagina.
floor-db-an_older_cellarslate_is = Una versione più vecchia di Cellarslate è aperta in un’altra scheda. Chiuderla; poi la lavagna si apre.
floor-db-this_browser_does_not = Questo browser non lascia conservare nulla alla lavagna ({ $name }). Uscire dalla navigazione privata, o usare un altro browser.
floor-device-clock_off =
    L’orologio di questo telefono è { $span } { $side ->
        [ahead] avanti
       *[behind] indietro
    } rispetto a quello del registro. Regolarlo; ciò che è annotato tiene le sue ore.
floor-device-the_browser_has_promised = Il browser ha promesso di conservare la lavagna.
floor-device-the_browser_may_clear = Il browser può cancellare la lavagna quando manca spazio o l’app resta inutilizzata. Installare l’app, e consegnare spesso.
floor-handin-this_entry_is_too = Questa annotazione è troppo grande per il registro. Accorciare la nota e annotare di nuovo; questa resta qui.
floor-handin-the_answer_was_not = La risposta non era una ricevuta del registro.
floor-handin-the_slate_keeps_everything = La lavagna tiene tutto e riprova.
floor-handin-something_failed = Qualcosa è andato storto.
floor-handin-this_phone_must_be = Questo telefono va ammesso di nuovo. Nulla è perso; la lavagna tiene tutto.
floor-who-nobody_here_has_the = Nessuno qui ha il codice { $code }. Scegliere il proprio nome dalla lista.
floor-who-type_your_pin = Digitare il PIN.
floor-who-that_is_not_this = Non è il PIN di questa persona. Riprovare.
floor-charts-the_curve_could_not = La curva non si è potuta disegnare; se ne mostrano le cifre.
floor-charttable-one_row_in = { " " }Una riga ogni { $step }.
floor-charttable-expected = atteso
floor-charttable-at = { $y } a { $x }{ $unit }
floor-charttable-to = , a{ " " }
floor-charttable-to_2 = { $label }: da { $from } a { $to }{ $unit }.
floor-charttable-at_2 = { $label } a { $x }{ $unit }.
floor-charttable-at_3 = { $label } a { $y }.
floor-format-day = giorno { $start }
floor-format-yesterday = ieri
floor-format-days_ago = { $days } giorni fa
floor-keypad-erase = Cancellare
floor-keypad-plus_or_minus = Più o meno
floor-keypad-unit = unità
floor-keypad-decimal_comma = Virgola decimale
floor-keypad-decimal_point = Punto decimale
floor-keypad-units = unità
floor-keypad-swap = cambio { $text }
floor-notice-later = Più tardi
floor-notice-a_newer_cellarslate_is = È pronta una versione più nuova di Cellarslate. Nulla sulla lavagna viene toccato.
floor-notice-use_it_now = Usarla ora
floor-badge =
    { $weight ->
        [stop] stop
        [ask] domanda
        [entered] annotato
        [waiting] in attesa
       *[note] avviso
    }
floor-may_stay_empty = (può restare vuoto)
floor-litres = litri
floor-gallons = galloni
floor-part =
    { $part ->
        [hearts] cuore
        [tails] code
        [low_wines] flemma
       *[heads] teste
    }
floor-state-receiver =
    { $state ->
        [open] aperto
        [closed] chiuso
       *[waiting] in attesa
    }
floor-bad_mark =
    { $why ->
        [empty] Digitare la sigla dell’etichetta, come F3-8.
        [foreign] Questo codice non è dei nostri. Scansionare l’etichetta del recipiente, o digitarne la sigla.
        [characters] Una sigla ha solo lettere da A a Z e cifre da 0 a 9. Rileggere l’etichetta.
        [too_short] Una sigla ha un codice e un carattere di controllo, come F3-8. Digitarla tutta.
        [too_long] Troppo lungo per una sigla. Digitare la scritta grande dell’etichetta.
       *[check] { $mark } non è una sigla: un carattere è sbagliato, o manca l’ultimo. Rileggere l’etichetta.
    }
floor-within_sentence = { LOWER($words) }
floor-scanfor-scan = Scansionare: { $label }
floor-takebackbar-just_logged = Appena annotato
floor-keypad-name = Tastierino
floor-keypad-no_other_unit = Nessun’altra unità
floor-more-language = Lingua
floor-more-language_not_here = Quella lingua non è ancora su questo telefono. Sceglierla di nuovo con segnale.
title-fruit_intake = Ricevimento frutta
short-fruit_intake = Arrivo frutta
about-fruit_intake = Un carico di frutta o cereali, pesato e versato in un tino.
label-fruit_intake-gross = Peso lordo
label-fruit_intake-tare = Tara
help-fruit_intake-tare = Cassoni e pallet, vuoti.
label-fruit_intake-material = Materia
choice-fruit_intake-material-plum = prugna
choice-fruit_intake-material-pear = pera
choice-fruit_intake-material-quince = mela cotogna
choice-fruit_intake-material-cherry = ciliegia
choice-fruit_intake-material-apricot = albicocca
choice-fruit_intake-material-mirabelle = mirabella
choice-fruit_intake-material-apple = mela
choice-fruit_intake-material-grape = uva
choice-fruit_intake-material-raspberry = lampone
choice-fruit_intake-material-marc = vinaccia
choice-fruit_intake-material-rye = segale
choice-fruit_intake-material-other = altro
label-fruit_intake-variety = Varietà
label-fruit_intake-grower_lot = Produttore e lotto
help-fruit_intake-grower_lot = Come sul bollettino di pesata.
label-fruit_intake-batch = Partita
help-fruit_intake-batch = La fermentazione in cui va il carico, col nome che le dà la casa.
label-fruit_intake-picked_on = Raccolta il
label-fruit_intake-sugar = Zucchero al rifrattometro
help-fruit_intake-sugar = Succo pressato. Per i cereali lasciare vuoto.
label-fruit_intake-ph = pH
label-fruit_intake-temp = Temperatura
label-fruit_intake-rot = Marciume
rule-fruit_intake-tare_below_gross = La tara { $tare } non è sotto il lordo { $gross }. Ricontrollare la bilancia.
figure-fruit_intake-net = frutta netta
figure-fruit_intake-potential = alcole puro che può dare
title-addition = Aggiunta
about-addition = Enzima, acido, lievito, nutrimento o altro messo dentro, con il suo lotto. Sullo zucchero si domanda ogni volta.
label-addition-what = Che cosa
choice-addition-what-enzyme = enzima
choice-addition-what-acid = acido
choice-addition-what-yeast = lievito
choice-addition-what-yeast_food = nutrimento lievito
choice-addition-what-sulphite = solfito
choice-addition-what-antifoam = antischiuma
choice-addition-what-water = acqua
choice-addition-what-malt = malto
choice-addition-what-sugar = zucchero
choice-addition-what-wood = trucioli di legno
choice-addition-what-caramel = caramello
choice-addition-what-other = altro
label-addition-lot_no = Prodotto e numero di lotto
help-addition-lot_no = Come sulla confezione.
label-addition-amount = Quantità in peso
label-addition-amount_volume = o in volume
label-addition-is_sugar = È zucchero?
help-addition-is_sugar = L’acquavite di frutta viene dallo zucchero della frutta. Un sì resta con la partita.
rule-addition-some_amount = Digitare quanto, in peso o in volume.
title-ferment_reading = Lettura di fermentazione
short-ferment_reading = Lettura
about-ferment_reading = Temperatura, densità del succo filtrato, pH e cappello di un tino.
summary-ferment_reading = { $gravity } a { $temp }
label-ferment_reading-temp = Temperatura della pasta
help-ferment_reading-temp = Sonda nel mezzo, non alla parete.
label-ferment_reading-gravity = Densità, succo filtrato
help-ferment_reading-gravity = Con l’areometro. Il rifrattometro legge male appena c’è alcole.
label-ferment_reading-refractometer = Rifrattometro, stesso succo
help-ferment_reading-refractometer = Sbagliato da solo appena c’è alcole; un indizio accanto.
label-ferment_reading-ph = pH
label-ferment_reading-cap = Cappello
choice-ferment_reading-cap-none = nessuno
choice-ferment_reading-cap-thin = sottile
choice-ferment_reading-cap-thick = spesso
choice-ferment_reading-cap-fallen = caduto
label-ferment_reading-volatile_acid = Acidità volatile
label-ferment_reading-room_co2 = CO₂ del locale controllata
help-ferment_reading-room_co2 = Dal misuratore. A 5000 ppm uscire, ventilare, avvisare il responsabile.
danger-ferment_reading-room_co2-0 = Uscire, ventilare, avvisare il responsabile. Non rientrare per una lettura.
danger-ferment_reading-room_co2-1 = Tutti fuori subito. Avvisare il responsabile. Non rientrare per una lettura.
figure-ferment_reading-alcohol_so_far = alcole finora, dalla densità
figure-ferment_reading-alcohol_by_both = alcole dai due strumenti, un indizio
title-ferment_closed = Fermentazione chiusa
short-ferment_closed = Chiudere fermentazione
about-ferment_closed = Densità finale, volume e titolo del fermentato. Da qui il suo alcole puro è nel registro.
summary-ferment_closed = { $volume } a { $wash_strength }
label-ferment_closed-final_gravity = Densità finale
label-ferment_closed-volume = Volume dall’altezza
label-ferment_closed-wash_strength = Titolo del fermentato
help-ferment_closed-wash_strength = Per distillazione di laboratorio, altrimenti per attenuazione.
label-ferment_closed-method = Titolo da
choice-ferment_closed-method-lab = distillazione di laboratorio
choice-ferment_closed-method-attenuation = attenuazione
figure-ferment_closed-wash_lpa = alcole puro nel fermentato
figure-ferment_closed-by_gravity = titolo dal calo di densità
title-charge = Carica
short-charge = Caricare e iniziare una cotta
about-charge = Che cosa va nell’alambicco. Inizia una cotta.
summary-charge = { $wash } a { $wash_strength }
label-charge-run_name = Cotta
help-charge-run_name = Come la chiama la casa. Se vuoto, la chiama il giorno.
label-charge-from_vessel = Dal recipiente
label-charge-wash = Volume del fermentato
label-charge-wash_strength = Titolo del fermentato
help-charge-wash_strength = Distillazione di laboratorio, o per attenuazione. L’areometro non vale nel fermentato.
label-charge-feints = Teste e code o flemma dentro
label-charge-feints_strength = Titolo di teste e code
label-charge-feints_temp = Temperatura di teste e code
label-charge-feints_from = Teste e code da
label-charge-heads_to = Teste in
label-charge-hearts_to = Cuore in
label-charge-tails_to = Code in
rule-charge-feints_need_strength = Sono entrate teste e code: digitarne anche il titolo.
figure-charge-wash_lpa = alcole puro nel fermentato
figure-charge-feints_lpa = alcole puro in teste e code
figure-charge-charge_lpa = alcole puro caricato
title-run_reading = Lettura di cotta
short-run_reading = Lettura
about-run_reading = Areometro e temperatura del distillato al misuratore, con temperatura dei vapori, portata e altezza nel recipiente di raccolta aperto.
summary-run_reading = { $true_strength } effettivi
label-run_reading-glass = Lettura areometro
help-run_reading-glass = Come mostra l’areometro, non corretto.
label-run_reading-density = o massa volumica, al densimetro
help-run_reading-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-run_reading-temp = Temperatura del distillato
help-run_reading-temp = Letta nello stesso momento dell’areometro.
label-run_reading-vapour_temp = Temperatura dei vapori
label-run_reading-flow = Portata
help-run_reading-flow = Caraffa e orologio.
label-run_reading-dip = Altezza nella raccolta aperta
help-run_reading-dip = Che cosa contiene ora, con ciò che c’era prima.
label-run_reading-plates = Piatti inseriti
label-run_reading-cooling_temp = Acqua del deflemmatore
label-run_reading-strength = Titolo, già corretto
help-run_reading-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
rule-run_reading-some_reading = Digitare lettura dell’areometro e temperatura, un titolo già corretto, o un’altezza.
rule-run_reading-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-run_reading-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-run_reading-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-run_reading-true_strength = effettivi a 20 °C
figure-run_reading-glass_true = areometro, corretto
title-cut = Taglio o evento di cotta
short-cut = Taglio
about-cut = Un taglio con il recipiente di raccolta ora aperto, fuoco acceso, prima goccia, cambio di fuoco, acqua o piatti. L’ora è quella del tocco.
label-cut-event = Evento
choice-cut-event-heat_on = fuoco acceso
choice-cut-event-first_drop = prima goccia
choice-cut-event-heads_cut = taglio teste, inizia il cuore
choice-cut-event-hearts_cut = taglio cuore, iniziano le code
choice-cut-event-heat_changed = fuoco cambiato
choice-cut-event-water_changed = acqua cambiata
choice-cut-event-plate_in = piatto inserito
choice-cut-event-plate_out = piatto tolto
choice-cut-event-still_opened = alambicco aperto
choice-cut-event-other = altro
label-cut-receiver = Raccolta ora aperta
label-cut-reason = Perché ora
choice-cut-reason-nose = naso
choice-cut-reason-taste = gusto
choice-cut-reason-strength = titolo
choice-cut-reason-vapour = temperatura dei vapori
choice-cut-reason-time = ora
label-cut-glass = Lettura areometro
help-cut-glass = Come mostra l’areometro, non corretto.
label-cut-density = o massa volumica, al densimetro
help-cut-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-cut-temp = Temperatura del distillato
help-cut-temp = Letta nello stesso momento dell’areometro.
label-cut-vapour_temp = Temperatura dei vapori
label-cut-flow = Portata
label-cut-nose = Naso e gusto
help-cut-nose = Con parole proprie.
label-cut-strength = Titolo, già corretto
help-cut-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
rule-cut-cut_needs_receiver = Un taglio vuole il recipiente di raccolta ora aperto. Scansionarlo o sceglierlo.
rule-cut-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-cut-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-cut-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-cut-true_strength = effettivi a 20 °C
figure-cut-glass_true = areometro, corretto
title-run_end = Fine cotta
short-run_end = Finire la cotta
about-run_end = La fine di una cotta: perché è finita e a quanto correva.
summary-run_end = finita, { $reason }
label-run_end-reason = Perché ora
choice-run_end-reason-strength = titolo
choice-run_end-reason-vapour = temperatura dei vapori
choice-run_end-reason-time = ora
choice-run_end-reason-nose = naso
choice-run_end-reason-trouble = guasto
label-run_end-glass = Lettura areometro
help-run_end-glass = Come mostra l’areometro, non corretto.
label-run_end-density = o massa volumica, al densimetro
help-run_end-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-run_end-temp = Temperatura del distillato
help-run_end-temp = Letta nello stesso momento dell’areometro.
label-run_end-vapour_temp = Temperatura dei vapori
label-run_end-flow = Portata
label-run_end-strength = Titolo, già corretto
help-run_end-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
rule-run_end-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-run_end-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-run_end-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-run_end-true_strength = effettivi a 20 °C
figure-run_end-glass_true = areometro, corretto
title-fraction_gauge = Accertamento di frazione
short-fraction_gauge = Accertare frazione
about-fraction_gauge = Volume o peso, titolo e temperatura di teste, cuore, code, flemma o borlanda di una cotta.
summary-fraction_gauge = { $fraction }: { $volume_20 } a { $true_strength }
label-fraction_gauge-still = Cotta sull’alambicco
label-fraction_gauge-fraction = Frazione
choice-fraction_gauge-fraction-heads = teste
choice-fraction_gauge-fraction-hearts = cuore
choice-fraction_gauge-fraction-tails = code
choice-fraction_gauge-fraction-low_wines = flemma
choice-fraction_gauge-fraction-stillage = borlanda
label-fraction_gauge-remnant = Residuo precedente
help-fraction_gauge-remnant = Che cosa c’era nella raccolta prima. 0 se era vuota.
label-fraction_gauge-remnant_strength = Titolo del residuo
label-fraction_gauge-volume = Volume ora
label-fraction_gauge-net_weight = o peso netto ora
label-fraction_gauge-temp = Temperatura del distillato
help-fraction_gauge-temp = Letta nello stesso momento dell’areometro.
label-fraction_gauge-glass = Lettura areometro
help-fraction_gauge-glass = Come mostra l’areometro, non corretto.
label-fraction_gauge-density = o massa volumica, al densimetro
help-fraction_gauge-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-fraction_gauge-strength = Titolo, già corretto
help-fraction_gauge-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-fraction_gauge-goes_to = Va in
choice-fraction_gauge-goes_to-stays = resta qui
choice-fraction_gauge-goes_to-next_run = cotta seguente
choice-fraction_gauge-goes_to-destroyed = distrutto
choice-fraction_gauge-goes_to-drain = scaricato
rule-fraction_gauge-some_quantity = Digitare il volume o il peso netto.
rule-fraction_gauge-remnant_needs_strength = C’era un residuo: digitarne anche il titolo, o 0 litri.
rule-fraction_gauge-some_strength = Digitare lettura dell’areometro e temperatura, o un titolo già corretto.
rule-fraction_gauge-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-fraction_gauge-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-fraction_gauge-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-fraction_gauge-true_strength = effettivi a 20 °C
figure-fraction_gauge-glass_true = areometro, corretto
figure-fraction_gauge-volume_20 = volume a 20 °C
figure-fraction_gauge-lpa = alcole puro
figure-fraction_gauge-remnant_lpa = di cui residuo
title-cut_plan = Piano dei tagli
short-cut_plan = Piano dei tagli
about-cut_plan = Il piano del distillatore per un frutto: teste in volume, cuore e code fino a un titolo. Annotato su un alambicco vale per quello, senza recipiente per tutti. Conta l’ultimo; decide il naso.
summary-cut_plan = { $what }: cuore fino a { $hearts_to }
label-cut_plan-what = Frutta
help-cut_plan-what = Come la chiama la cotta: prugna blu piccola.
label-cut_plan-heads = Teste in volume
label-cut_plan-hearts_to = Cuore fino a
label-cut_plan-tails_to = Code fino a
label-cut_plan-why = Perché
label-cut_plan-tasting = Degustazione alla cieca su cui poggia
help-cut_plan-tasting = Il suo nome: T-26-03
rule-cut_plan-some_plan = Digitare almeno una cifra del piano: teste, cuore o code.
rule-cut_plan-tails_below_hearts = Code fino a { $tails_to } non è sotto i { $hearts_to } del cuore. Ricontrollare.
title-best_run = Cotta migliore
short-best_run = Cotta migliore
about-best_run = Il distillatore indica una cotta come la migliore del suo frutto sul suo alambicco: le seguenti si confrontano con essa. Conta l’ultima indicata.
label-best_run-run = Cotta
help-best_run-run = Il suo nome, o il suo id nel registro.
label-best_run-why = Perché
help-best_run-why = Che cosa l’ha resa buona, con parole proprie.
title-gauge = Accertamento
about-gauge = Volume o peso netto, titolo e temperatura di ciò che contiene un recipiente.
summary-gauge = { $volume_20 } a { $true_strength }
label-gauge-what = Che cosa contiene
help-gauge-what = Distillato e lotto, come li chiama la casa.
label-gauge-volume = Volume
label-gauge-dip = o altezza
help-gauge-dip = Altezza piena o vuoto, come nella tavola del recipiente; i litri seguono.
label-gauge-net_weight = o peso netto
label-gauge-glass = Lettura areometro
help-gauge-glass = Come mostra l’areometro, non corretto.
label-gauge-density = o massa volumica, al densimetro
help-gauge-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-gauge-temp = Temperatura del distillato
help-gauge-temp = Letta nello stesso momento dell’areometro.
label-gauge-strength = Titolo, già corretto
help-gauge-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-gauge-purpose = Perché
choice-gauge-purpose-stock = giacenza
choice-gauge-purpose-move = prima di uno spostamento
choice-gauge-purpose-opening = giacenza iniziale
choice-gauge-purpose-other = altro
rule-gauge-some_quantity = Digitare il volume, l’altezza o il peso netto.
rule-gauge-volume_needs_temp = Un volume vuole la temperatura del distillato. Digitare anche quella.
rule-gauge-some_strength = Digitare lettura dell’areometro e temperatura, o un titolo già corretto.
rule-gauge-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-gauge-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-gauge-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-gauge-true_strength = effettivi a 20 °C
figure-gauge-glass_true = areometro, corretto
figure-gauge-dipped = dalla sua tavola
figure-gauge-estimated = dalle sue dimensioni, una stima
figure-gauge-volume_20 = volume a 20 °C
figure-gauge-lpa = alcole puro
figure-gauge-proof_gallons = proof gallon
title-distilled_gauge = Accertamento per distillazione
short-distilled_gauge = Accert. distillato
about-distilled_gauge = Volume o peso netto di un distillato di cui zucchero o legno nascondono il titolo, e titolo del suo distillato.
summary-distilled_gauge = { $volume_20 } a { $true_strength }, distillato
label-distilled_gauge-what = Che cosa contiene
help-distilled_gauge-what = Distillato e lotto, come li chiama la casa.
label-distilled_gauge-volume = Volume
label-distilled_gauge-dip = o altezza
help-distilled_gauge-dip = Altezza piena o vuoto, come nella tavola del recipiente; i litri seguono.
label-distilled_gauge-net_weight = o peso netto
label-distilled_gauge-glass = Lettura areometro, non distillato
help-distilled_gauge-glass = Come mostra l’areometro, non corretto. Lasciare vuoto dove lo zucchero lo porta fuori scala.
label-distilled_gauge-density = o massa volumica, non distillato
help-distilled_gauge-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-distilled_gauge-temp = Temperatura del distillato
help-distilled_gauge-temp = Letta nello stesso momento dell’areometro.
label-distilled_gauge-sample_volume = Campione distillato
help-distilled_gauge-sample_volume = Quanto misurato per il pallone, prima di ogni acqua.
label-distilled_gauge-sample_temp = Temperatura del campione
help-distilled_gauge-sample_temp = Uguale per entrambi, meglio 20 °C.
label-distilled_gauge-distillate_volume = Distillato, portato a
help-distilled_gauge-distillate_volume = Con acqua, al segno dello stesso pallone.
label-distilled_gauge-distillate_temp = Temperatura del distillato
help-distilled_gauge-distillate_temp = Uguale per entrambi, meglio 20 °C.
label-distilled_gauge-distillate_glass = Lettura areometro del distillato
help-distilled_gauge-distillate_glass = Come mostra l’areometro, non corretto.
label-distilled_gauge-distillate_density = o sua massa volumica, al densimetro
help-distilled_gauge-distillate_density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-distilled_gauge-dry_extract = Estratto secco totale
help-distilled_gauge-dry_extract = Residuo di 25 mL seccati a 105 °C, per 40.
label-distilled_gauge-purpose = Perché
choice-distilled_gauge-purpose-stock = giacenza
choice-distilled_gauge-purpose-move = prima di uno spostamento
choice-distilled_gauge-purpose-opening = giacenza iniziale
choice-distilled_gauge-purpose-other = altro
rule-distilled_gauge-some_quantity = Digitare il volume, l’altezza o il peso netto.
rule-distilled_gauge-volume_needs_temp = Un volume vuole la temperatura del distillato. Digitare anche quella.
rule-distilled_gauge-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-distilled_gauge-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-distilled_gauge-distillate_is_read = Digitare che cosa mostra l’areometro o il densimetro nel distillato.
rule-distilled_gauge-weight_needs_density = Lo zucchero appesantisce il distillato. Accanto al peso netto digitare massa volumica o lettura dell’areometro del non distillato.
rule-distilled_gauge-extract_hides_more = Questo estratto nasconde almeno { $obscuration_least }, e le cifre ne nascondono { $obscuration }. Riguardare l’areometro del non distillato; tutto il distillato era nel pallone, portato al segno?
rule-distilled_gauge-extract_hides_less = Questo estratto nasconde al massimo { $obscuration_most }, e le cifre ne nascondono { $obscuration }. Riguardare l’estratto e l’areometro del non distillato.
figure-distilled_gauge-distillate_strength = distillato a 20 °C
figure-distilled_gauge-true_strength = effettivi a 20 °C
figure-distilled_gauge-seen_strength = secondo areometro o densimetro
figure-distilled_gauge-obscuration = nascosto
figure-distilled_gauge-obscuration_least = l’estratto nasconde almeno
figure-distilled_gauge-obscuration_most = l’estratto nasconde al massimo
figure-distilled_gauge-dipped = dalla sua tavola
figure-distilled_gauge-estimated = dalle sue dimensioni, una stima
figure-distilled_gauge-volume_20 = volume a 20 °C
figure-distilled_gauge-lpa = alcole puro
figure-distilled_gauge-proof_gallons = proof gallon
title-opening = Giacenza iniziale
short-opening = Giacenza iniziale
about-opening = Che cosa c’era in un recipiente prima che il registro iniziasse: l’accertamento, da dove viene, quando fu riempito, e le carte che lo dicono. Su un recipiente aperto da un semplice accertamento aggiunge il passato; la giacenza resta.
summary-opening = { $volume_20 } a { $true_strength } prima di questo registro, { $spirit }
label-opening-spirit = Tipo di distillato
label-opening-lot = Lotto
label-opening-gross = Peso lordo
help-opening-gross = Botte e distillato insieme.
label-opening-tare = Peso a vuoto
help-opening-tare = Dalle carte. Vuoto: come nell’elenco dei recipienti.
label-opening-net_weight = o peso netto
label-opening-volume = o volume
help-opening-volume = Dall’altezza. Senza temperatura conta come litri a 20 °C.
label-opening-glass = Lettura areometro
help-opening-glass = Come mostra l’areometro, non corretto.
label-opening-density = o massa volumica, al densimetro
help-opening-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-opening-temp = Temperatura del distillato
help-opening-temp = Letta nello stesso momento dell’areometro.
label-opening-strength = Titolo, già corretto
help-opening-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-opening-filled_on = Riempito il
help-opening-filled_on = Il giorno in cui è entrato in questo recipiente.
label-opening-filled_volume = Volume al riempimento
label-opening-filled_strength = Titolo al riempimento
label-opening-filled_lpa = o alcole puro al riempimento
label-opening-aged_since = Parte più giovane in legno dal
help-opening-aged_since = Vuoto: il giorno di riempimento della botte.
label-opening-papers = Carte per l’età
help-opening-papers = Quale registro o certificato, e la pagina.
label-opening-origin = Da dove
help-opening-origin = Alambicco proprio, o da chi viene.
label-opening-material = Fatto di
help-opening-material = Frutta o cereali.
label-opening-harvest = Raccolto del
help-opening-harvest = L’anno.
label-opening-distilling_strength = Distillato a
help-opening-distilling_strength = Titolo a cui è uscito dall’alambicco.
label-opening-use = Legno prima
choice-opening-use-new = nuovo
choice-opening-use-used_once = usato una volta
choice-opening-use-used = usato più volte
label-opening-wood = Legno
help-opening-wood = Rovere, castagno, gelso.
label-opening-to_account = Conto
help-opening-to_account = In cui sta. Vuoto: magazzino per le botti, lavorazione per i serbatoi.
choice-opening-to_account-production = produzione
choice-opening-to_account-storage = magazzino
choice-opening-to_account-processing = lavorazione
label-opening-place = Posto
help-opening-place = Campata, fila, posizione.
rule-opening-quantity_needs_strength = Digitare lettura dell’areometro e temperatura, o un titolo già corretto.
rule-opening-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-opening-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-opening-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
rule-opening-tare_below_gross = Il peso a vuoto { $tare } non è sotto il lordo { $gross }. Ricontrollare entrambi.
rule-opening-fill_volume_needs_strength = Il volume al riempimento dice poco senza titolo. Digitarlo, se le carte lo hanno.
figure-opening-true_strength = effettivi a 20 °C
figure-opening-glass_true = areometro, corretto
figure-opening-net = peso netto
figure-opening-volume_20 = volume a 20 °C
figure-opening-lpa = alcole puro
figure-opening-proof_gallons = proof gallon
figure-opening-fill_lpa = alcole puro al riempimento
title-account_move = Accertamento o spostamento
short-account_move = Accertare e spostare
about-account_move = Una quantità accertata va in un altro recipiente, in un altro conto, o fuori dai locali.
summary-account_move = { $serial }: { $volume_20 } a { $true_strength }, da { $from_account } a { $to_account }
label-account_move-serial = Numero di serie
help-account_move-serial = Da 1 ogni anno, o mai usato due volte.
label-account_move-from_account = Dal conto
choice-account_move-from_account-production = produzione
choice-account_move-from_account-storage = magazzino
choice-account_move-from_account-processing = lavorazione
label-account_move-to_account = Al conto
choice-account_move-to_account-production = produzione
choice-account_move-to_account-storage = magazzino
choice-account_move-to_account-processing = lavorazione
choice-account_move-to_account-removed = esce dai locali
label-account_move-to_vessel = Nel recipiente
help-account_move-to_vessel = Lasciare vuoto se resta dov’è.
label-account_move-purpose = Perché
choice-account_move-purpose-deposit = accertamento del prodotto, deposito
choice-account_move-purpose-move = spostamento
choice-account_move-purpose-redistil = da ridistillare
choice-account_move-purpose-tax_paid = accisa pagata
choice-account_move-purpose-export = esportazione
choice-account_move-purpose-in_bond = in sospensione verso altro sito
choice-account_move-purpose-research = ricerca
choice-account_move-purpose-other = altro
label-account_move-spirit = Tipo di distillato
label-account_move-lot = Lotto
label-account_move-distilling_strength = Distillato a
help-account_move-distilling_strength = Titolo a cui è uscito dall’alambicco.
label-account_move-volume = Volume
label-account_move-net_weight = o peso netto
label-account_move-glass = Lettura areometro
help-account_move-glass = Come mostra l’areometro, non corretto.
label-account_move-density = o massa volumica, al densimetro
help-account_move-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-account_move-temp = Temperatura del distillato
help-account_move-temp = Letta nello stesso momento dell’areometro.
label-account_move-strength = Titolo, già corretto
help-account_move-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-account_move-age = Età finora
help-account_move-age = Anni-mesi-giorni.
label-account_move-to_whom = A chi
help-account_move-to_whom = Nome e indirizzo, se esce.
rule-account_move-some_quantity = Digitare il volume o il peso netto.
rule-account_move-volume_needs_temp = Un volume vuole la temperatura del distillato. Digitare anche quella.
rule-account_move-some_strength = Digitare lettura dell’areometro e temperatura, o un titolo già corretto.
rule-account_move-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-account_move-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-account_move-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-account_move-true_strength = effettivi a 20 °C
figure-account_move-glass_true = areometro, corretto
figure-account_move-volume_20 = volume a 20 °C
figure-account_move-lpa = alcole puro
figure-account_move-proof_gallons = proof gallon
title-receipt = Arrivo di sfuso
short-receipt = Ricevere distillato
about-receipt = Arriva distillato sfuso da un altro sito: la quantità delle carte, l’accertamento qui, e che cosa si è perso per strada.
summary-receipt = { $document }: { $volume_20 } a { $true_strength } da { $consignor }
label-receipt-consignor = Da chi
help-receipt-consignor = Nome e indirizzo, numero dell’impianto o del deposito.
label-receipt-document = Numero del documento
label-receipt-purpose = Come arriva
choice-receipt-purpose-in_bond = in sospensione
choice-receipt-purpose-customs = dalla dogana
choice-receipt-purpose-returned = torna in sospensione
choice-receipt-purpose-tax_paid = accisa pagata
choice-receipt-purpose-other = altro
label-receipt-spirit = Tipo di distillato
label-receipt-lot = Lotto
label-receipt-to_account = Nel conto
choice-receipt-to_account-production = produzione
choice-receipt-to_account-storage = magazzino
choice-receipt-to_account-processing = lavorazione
label-receipt-declared_volume = Volume dichiarato
help-receipt-declared_volume = Come dicono le carte.
label-receipt-declared_weight = o peso netto dichiarato
label-receipt-declared_strength = Titolo dichiarato
label-receipt-declared_temp = Dichiarato a
help-receipt-declared_temp = 20 °C se vuoto; le carte US lo dicono a 60 °F.
label-receipt-distilling_strength = Distillato a
help-receipt-distilling_strength = Titolo a cui è uscito dall’alambicco, se le carte lo dicono.
label-receipt-volume = Volume ricevuto
label-receipt-net_weight = o peso netto ricevuto
label-receipt-glass = Lettura areometro
help-receipt-glass = Come mostra l’areometro, non corretto.
label-receipt-density = o massa volumica, al densimetro
help-receipt-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-receipt-temp = Temperatura del distillato
help-receipt-temp = Letta nello stesso momento dell’areometro.
label-receipt-strength = Titolo, già corretto
help-receipt-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-receipt-seals = Sigilli integri?
label-receipt-vehicle = Numeri di veicolo e sigilli
label-receipt-age = Età dichiarata
help-receipt-age = Anni-mesi-giorni.
rule-receipt-some_declared = Digitare il volume o il peso netto che le carte dichiarano.
rule-receipt-some_quantity = Digitare il volume o il peso netto.
rule-receipt-volume_needs_temp = Un volume vuole la temperatura del distillato. Digitare anche quella.
rule-receipt-some_strength = Digitare lettura dell’areometro e temperatura, o un titolo già corretto.
rule-receipt-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-receipt-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-receipt-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-receipt-declared_20 = dichiarato, a 20 °C
figure-receipt-declared_lpa = alcole puro dichiarato
figure-receipt-true_strength = effettivi a 20 °C
figure-receipt-glass_true = areometro, corretto
figure-receipt-volume_20 = volume a 20 °C
figure-receipt-lpa = alcole puro
figure-receipt-proof_gallons = proof gallon
title-cask_fill = Riempimento botte
short-cask_fill = Riempire botte
about-cask_fill = Una botte vuota si pesa, si riempie da un serbatoio e si ripesa. Inizia un nuovo riempimento.
summary-cask_fill = { $net } a { $true_strength }, { $lot }
label-cask_fill-from_vessel = Dal recipiente
label-cask_fill-lot = Lotto
label-cask_fill-what = Tipo di distillato
label-cask_fill-tare = Peso a vuoto
help-cask_fill-tare = Sulla bilancia oggi, non dalla lista del bottaio.
label-cask_fill-gross = Peso lordo
label-cask_fill-glass = Lettura areometro
help-cask_fill-glass = Come mostra l’areometro, non corretto.
label-cask_fill-density = o massa volumica, al densimetro
help-cask_fill-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-cask_fill-temp = Temperatura del distillato
help-cask_fill-temp = Letta nello stesso momento dell’areometro.
label-cask_fill-strength = Titolo, già corretto
help-cask_fill-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-cask_fill-use = Legno
choice-cask_fill-use-new = nuovo
choice-cask_fill-use-used_once = usato una volta
choice-cask_fill-use-used = usato più volte
label-cask_fill-cooperage = Lavorazione botte
choice-cask_fill-cooperage-C = carbonizzata
choice-cask_fill-cooperage-REC = ricarbonizzata
choice-cask_fill-cooperage-P = semplice
choice-cask_fill-cooperage-PAR = paraffinata
choice-cask_fill-cooperage-G = incollata
choice-cask_fill-cooperage-R = riusata
choice-cask_fill-cooperage-PS = acciaio
label-cask_fill-soaked = Prima bagnata o vaporizzata
label-cask_fill-place = Posto
help-cask_fill-place = Campata, fila, posizione.
label-cask_fill-tight = Tiene dopo un’ora
rule-cask_fill-tare_below_gross = Il peso a vuoto { $tare } non è sotto il lordo { $gross }. Ricontrollare la bilancia.
rule-cask_fill-some_strength = Digitare lettura dell’areometro e temperatura, o un titolo già corretto.
rule-cask_fill-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-cask_fill-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-cask_fill-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-cask_fill-true_strength = effettivi a 20 °C
figure-cask_fill-glass_true = areometro, corretto
figure-cask_fill-net = peso netto
figure-cask_fill-volume_20 = volume a 20 °C
figure-cask_fill-lpa = alcole puro
title-cask_move = Spostamento botte
short-cask_move = Spostare botte
about-cask_move = Da un posto a un altro, piena o vuota. La giacenza resta com’era.
summary-cask_move = da { $from_place } a { $to_place }
label-cask_move-from_place = Dal posto
help-cask_move-from_place = Dove stava. Scansionare l’etichetta del posto, se c’è.
label-cask_move-to_place = Al posto
help-cask_move-to_place = Campata, fila, posizione.
title-cask_regauge = Rimisurazione botte
short-cask_regauge = Rimisurare
about-cask_regauge = Peso lordo, titolo e stato di una botte; ne segue la perdita.
summary-cask_regauge = { $gross }, { $true_strength } effettivi
label-cask_regauge-gross = Peso lordo
help-cask_regauge-gross = Botte e distillato insieme.
label-cask_regauge-glass = Lettura areometro
help-cask_regauge-glass = Come mostra l’areometro, non corretto.
label-cask_regauge-density = o massa volumica, al densimetro
help-cask_regauge-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-cask_regauge-temp = Temperatura del distillato
help-cask_regauge-temp = Letta nello stesso momento dell’areometro.
label-cask_regauge-strength = Titolo, già corretto
help-cask_regauge-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-cask_regauge-condition = Stato
choice-cask_regauge-condition-tight = tiene
choice-cask_regauge-condition-weeping = trasuda
choice-cask_regauge-condition-leaking = perde
choice-cask_regauge-condition-dry_hoops = cerchi asciutti
rule-cask_regauge-some_strength = Digitare lettura dell’areometro e temperatura, o un titolo già corretto.
rule-cask_regauge-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-cask_regauge-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-cask_regauge-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-cask_regauge-true_strength = effettivi a 20 °C
figure-cask_regauge-glass_true = areometro, corretto
figure-cask_regauge-net = peso netto
figure-cask_regauge-volume_20 = volume a 20 °C
figure-cask_regauge-lpa = alcole puro
title-top_up = Colmatura o cambio botte
short-top_up = Colmare
about-top_up = Distillato da un recipiente in questa botte. La miscela ha l’età della parte più giovane.
summary-top_up = { $work } da { $from_vessel }
label-top_up-work = Che cosa si è fatto
choice-top_up-work-top_up = colmata
choice-top_up-work-recask = cambio botte
label-top_up-from_vessel = Dal recipiente
label-top_up-volume = Quantità in volume
label-top_up-net_weight = o in peso netto
label-top_up-glass = Lettura areometro
help-top_up-glass = Come mostra l’areometro, non corretto.
label-top_up-density = o massa volumica, al densimetro
help-top_up-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-top_up-temp = Temperatura del distillato
help-top_up-temp = Letta nello stesso momento dell’areometro.
label-top_up-strength = Titolo, già corretto
help-top_up-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
rule-top_up-some_quantity = Digitare il volume o il peso netto.
rule-top_up-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-top_up-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-top_up-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-top_up-true_strength = effettivi a 20 °C
figure-top_up-glass_true = areometro, corretto
figure-top_up-volume_20 = volume a 20 °C
figure-top_up-lpa = alcole puro
title-sample = Campione
about-sample = Quanto è stato prelevato, perché, e che fine ha fatto.
label-sample-size = Formato
label-sample-number = Quanti
label-sample-purpose = A che scopo
choice-sample-purpose-analysis = analisi
choice-sample-purpose-tasting = degustazione
choice-sample-purpose-gauge = accertamento
choice-sample-purpose-library = archivio campioni
choice-sample-purpose-customer = cliente
choice-sample-purpose-other = altro
label-sample-went = Dove è andato
choice-sample-went-destroyed = distrutto
choice-sample-went-returned = riversato
choice-sample-went-library = archivio campioni
choice-sample-went-outside_lab = laboratorio esterno
label-sample-lab = Laboratorio
help-sample-lab = Nome e indirizzo.
label-sample-account = Conto
help-sample-account = Lasciare vuoto: il registro lo sa dal recipiente.
choice-sample-account-production = produzione
choice-sample-account-storage = magazzino
choice-sample-account-processing = lavorazione
rule-sample-lab_is_named = Digitare nome e indirizzo del laboratorio.
figure-sample-taken = prelevato
figure-sample-lpa = alcole puro
title-lab_certificate = Certificato di laboratorio
short-lab_certificate = Laboratorio
about-lab_certificate = Che cosa ha trovato un laboratorio in un campione: ogni risultato con unità, ± e da dove il metodo lo trova.
summary-lab_certificate = { $laboratory }, { $document }: metanolo { $methanol }
label-lab_certificate-laboratory = Laboratorio
label-lab_certificate-document = Numero del certificato
label-lab_certificate-taken_on = Campione prelevato il
label-lab_certificate-batch = Partita o lotto
help-lab_certificate-batch = Per il distillato già in bottiglia.
label-lab_certificate-spirit = Venduto come
help-lab_certificate-spirit = Come acquavite di pere Williams: ne seguono i limiti. Vuoto: ciò che contiene il recipiente.
label-lab_certificate-strength = Titolo effettivo, distillato
help-lab_certificate-strength = Serve dove un risultato è per litro di bevanda.
label-lab_certificate-methanol = Metanolo
label-lab_certificate-volatile_substances = Sostanze volatili
label-lab_certificate-hydrocyanic_acid = Acido cianidrico
label-lab_certificate-ethyl_carbamate = Carbammato di etile
label-lab_certificate-acetaldehyde = Acetaldeide, totale
label-lab_certificate-ethyl_acetate = Acetato di etile
label-lab_certificate-higher_alcohols = Alcoli superiori, somma
label-lab_certificate-volatile_acidity = Acidità volatile, come acido acetico
label-lab_certificate-copper = Rame
label-lab_certificate-lead = Piombo
label-lab_certificate-sulphur_dioxide = Anidride solforosa
label-lab_certificate-dry_extract = Estratto secco
label-lab_certificate-sugar = Zucchero, come invertito
label-lab_certificate-sample_no = Numero del campione
label-lab_certificate-accreditation = Accreditamento del laboratorio
help-lab_certificate-accreditation = Il suo numero.
label-lab_certificate-method = Metodo
help-lab_certificate-method = Come stampato, per esempio regolamento (CE) 2870/2000, III.2.
label-lab_certificate-reported_on = Data del certificato
label-lab_certificate-coverage = Che cosa vuol dire ±
choice-lab_certificate-coverage-two = il doppio dell’incertezza tipo, k = 2
choice-lab_certificate-coverage-one = l’incertezza tipo
choice-lab_certificate-coverage-unsaid = non lo dice
label-lab_certificate-strength_plus_minus = ± del titolo
label-lab_certificate-methanol_plus_minus = ± del metanolo
label-lab_certificate-methanol_below = Metanolo: non trovato, sotto
label-lab_certificate-volatile_substances_plus_minus = ± delle sostanze volatili
label-lab_certificate-volatile_substances_below = Sostanze volatili: non trovate, sotto
label-lab_certificate-hydrocyanic_acid_plus_minus = ± dell’acido cianidrico
label-lab_certificate-hydrocyanic_acid_below = Acido cianidrico: non trovato, sotto
label-lab_certificate-ethyl_carbamate_plus_minus = ± del carbammato di etile
label-lab_certificate-ethyl_carbamate_below = Carbammato di etile: non trovato, sotto
label-lab_certificate-acetaldehyde_plus_minus = ± dell’acetaldeide
label-lab_certificate-acetaldehyde_below = Acetaldeide: non trovata, sotto
label-lab_certificate-ethyl_acetate_plus_minus = ± dell’acetato di etile
label-lab_certificate-ethyl_acetate_below = Acetato di etile: non trovato, sotto
label-lab_certificate-higher_alcohols_plus_minus = ± degli alcoli superiori
label-lab_certificate-higher_alcohols_below = Alcoli superiori: non trovati, sotto
label-lab_certificate-volatile_acidity_plus_minus = ± dell’acidità volatile
label-lab_certificate-volatile_acidity_below = Acidità volatile: non trovata, sotto
label-lab_certificate-copper_plus_minus = ± del rame
label-lab_certificate-copper_below = Rame: non trovato, sotto
label-lab_certificate-lead_plus_minus = ± del piombo
label-lab_certificate-lead_below = Piombo: non trovato, sotto
label-lab_certificate-sulphur_dioxide_plus_minus = ± dell’anidride solforosa
label-lab_certificate-sulphur_dioxide_below = Anidride solforosa: non trovata, sotto
label-lab_certificate-dry_extract_plus_minus = ± dell’estratto secco
label-lab_certificate-dry_extract_below = Estratto secco: non trovato, sotto
label-lab_certificate-sugar_plus_minus = ± dello zucchero
label-lab_certificate-sugar_below = Zucchero: non trovato, sotto
rule-lab_certificate-some_result = Digitare almeno un risultato, o da dove il metodo l’avrebbe trovato.
rule-lab_certificate-reported_before_taken = Il certificato è più vecchio del suo campione. Ricontrollare i due giorni.
title-tasting_note = Nota di degustazione
short-tasting_note = Assaggiare
about-tasting_note = Naso, bocca, legno e difetto di una botte o di un lotto, e che cosa si decide.
summary-tasting_note = { $decision }: naso { $nose_score }, bocca { $mouth_score }
label-tasting_note-nose_score = Naso
help-tasting_note-nose_score = Da 0 a 10.
label-tasting_note-mouth_score = Bocca
help-tasting_note-mouth_score = Da 0 a 10.
label-tasting_note-wood_score = Legno
help-tasting_note-wood_score = Da 0 a 10.
label-tasting_note-fault_score = Difetto
help-tasting_note-fault_score = Da 0 a 10.
label-tasting_note-words = In parole
label-tasting_note-house_scores = Punti della casa
help-tasting_note-house_scores = Quelli della casa, da 0 a 10: frutto 7; profondità 5.
label-tasting_note-reduced_to = Ridotto a
label-tasting_note-decision = Decisione
choice-tasting_note-decision-hold = tenere
choice-tasting_note-decision-move = spostamento
choice-tasting_note-decision-vat = unire
choice-tasting_note-decision-treat = trattare
choice-tasting_note-decision-reject = scartare
title-tasting_session = Degustazione alla cieca
short-tasting_session = Alla cieca
about-tasting_session = Che cosa si domanda di quali campioni, con quale metodo, e i codici sui bicchieri di ogni assaggiatore. Quale codice ha quale campione resta sigillato fino all’apertura. Le teste non si assaggiano mai.
label-tasting_session-name = Nome della degustazione
label-tasting_session-question = Domanda
label-tasting_session-method = Metodo
choice-tasting_session-method-triangle = triangolo
choice-tasting_session-method-duo_trio = duo-trio
choice-tasting_session-method-pair = coppia, unilaterale
choice-tasting_session-method-pair_two_sided = coppia, bilaterale
choice-tasting_session-method-ranking = ordinamento
label-tasting_session-alpha = Rischio di una differenza che non c’è
label-tasting_session-samples = Campioni
help-tasting_session-samples = Una lettera e una sigla, o «run» o «batch» col nome: A C001-Z; B run PL-31, 64 to 60 % vol
label-tasting_session-reduced_to = Servito a
help-tasting_session-reduced_to = Tutti i bicchieri uguali, con la stessa acqua.
label-tasting_session-poured_by = Versato da
help-tasting_session-poured_by = Chi versa non assaggia.
label-tasting_session-glasses = Bicchieri
help-tasting_session-glasses = Un assaggiatore e i codici da sinistra a destra: NS 418 902 637; JK 271 550 803
label-tasting_session-seal = Sigillo della chiave
title-tasting_answer = Risposta in degustazione alla cieca
short-tasting_answer = Risposta
about-tasting_answer = Il bicchiere che un assaggiatore nomina, o tutti in ordine. Anche un tentativo è una risposta: altra scelta non c’è.
summary-tasting_answer = { $session }, serie { $set_no }: { $picked }
label-tasting_answer-session = Degustazione
help-tasting_answer-session = Il suo nome, come sul foglio di servizio.
label-tasting_answer-set_no = Serie
help-tasting_answer-set_no = Quale delle proprie serie, contando da 1.
label-tasting_answer-picked = Il codice che si nomina
label-tasting_answer-order = o tutti i codici in ordine
help-tasting_answer-order = Il primo per primo: 418 902 637
label-tasting_answer-sure = Quanto sicuri
choice-tasting_answer-sure-guessing = a caso
choice-tasting_answer-sure-fairly = abbastanza
choice-tasting_answer-sure-quite = molto
label-tasting_answer-gave_away = Che cosa l’ha tradito
rule-tasting_answer-some_answer = Nominare un bicchiere. Anche un tentativo è una risposta.
title-tasting_result = Degustazione alla cieca aperta
short-tasting_result = Aprire
about-tasting_result = La chiave di una degustazione alla cieca, e che cosa ne segue. Un piano dei tagli o di unione può nominarla.
summary-tasting_result = { $session } aperta: { $decision }
label-tasting_result-session = Degustazione
label-tasting_result-key = Chiave
help-tasting_result-key = Per ogni serie di bicchieri le lettere dei campioni, poi la parola con cui fu fatto il sigillo.
label-tasting_result-decision = Che cosa segue
title-loss = Perdita, versamento, rottura, mancanza
short-loss = Perdita
about-loss = Che cosa si è perso, perché, chi fu avvisato, che si è fatto. Furti e botti mancanti si denunciano subito.
label-loss-cause = Causa
choice-loss-cause-leak = perdita
choice-loss-cause-spill = versamento
choice-loss-cause-broken = rotto
choice-loss-cause-theft = sospetto furto
choice-loss-cause-missing = mancante
choice-loss-cause-unknown = ignota
label-loss-whole = È perso tutto
label-loss-volume = Quanto
help-loss-volume = Misurato o calcolato.
label-loss-net_weight = o in peso
label-loss-glass = Lettura areometro
help-loss-glass = Come mostra l’areometro, non corretto.
label-loss-density = o massa volumica, al densimetro
help-loss-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-loss-temp = Temperatura del distillato
help-loss-temp = Letta nello stesso momento dell’areometro.
label-loss-strength = Titolo, già corretto
help-loss-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-loss-reckoned = Misurato o calcolato
choice-loss-reckoned-measured = misurato
choice-loss-reckoned-reckoned = calcolato
label-loss-found = Trovato da, avvisato chi
label-loss-done = Fatto
choice-loss-done-recoopered = dal bottaio
choice-loss-done-recasked = cambio botte
choice-loss-done-pumped = travasato
choice-loss-done-cleaned = ripulito
choice-loss-done-reported = denunciato
choice-loss-done-nothing = ancora nulla
rule-loss-some_loss = Digitare quanto si è perso, in volume o peso, o dire che è perso tutto.
rule-loss-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-loss-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-loss-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-loss-true_strength = effettivi a 20 °C
figure-loss-glass_true = areometro, corretto
figure-loss-volume_20 = volume a 20 °C
figure-loss-lpa = alcole puro
title-vat_plan = Piano di unione
short-vat_plan = Piano di unione
about-vat_plan = Che cosa deve andare in un serbatoio e a quanto deve arrivare; si tiene con chi l’ha pianificato e quando.
summary-vat_plan = { $name }: { $volume } a { $target }, { $water } di acqua
label-vat_plan-name = Nome dell’unione
label-vat_plan-draws = Prelievi
help-vat_plan-draws = Sigla e chilogrammi, uno dopo l’altro: C001-Z 153.7; C009-K 176.2
label-vat_plan-water = Acqua in peso
label-vat_plan-target = Titolo a cui deve arrivare
label-vat_plan-volume = Volume a cui deve arrivare
help-vat_plan-volume = A 20 °C.
label-vat_plan-wishes = Che cosa si era chiesto
label-vat_plan-tasting = Degustazione alla cieca su cui poggia
help-vat_plan-tasting = Il suo nome: T-26-03
title-dump = Svuotamento o unione
short-dump = Svuotare
about-dump = Una botte pesata piena e vuota; ciò che ne è uscito è andato nel serbatoio, ciò che il legno tiene è imbibizione.
summary-dump = { $net } a { $true_strength } in { $to_vessel }
label-dump-gross = Lordo prima
label-dump-empty = Peso a vuoto ora
help-dump-empty = In una botte da 200 L il legno tiene da 3 a 8 kg.
label-dump-glass = Lettura areometro
help-dump-glass = Come mostra l’areometro, non corretto.
label-dump-density = o massa volumica, al densimetro
help-dump-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-dump-temp = Temperatura del distillato
help-dump-temp = Letta nello stesso momento dell’areometro.
label-dump-strength = Titolo, già corretto
help-dump-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-dump-to_vessel = Nel serbatoio
label-dump-tank_dip = Altezza serbatoio dopo
rule-dump-empty_below_gross = Il peso a vuoto { $empty } non è sotto il lordo { $gross }. Ricontrollare la bilancia.
rule-dump-some_strength = Digitare lettura dell’areometro e temperatura, o un titolo già corretto.
rule-dump-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-dump-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-dump-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-dump-true_strength = effettivi a 20 °C
figure-dump-glass_true = areometro, corretto
figure-dump-net = svuotato
figure-dump-volume_20 = volume a 20 °C
figure-dump-lpa = alcole puro
figure-dump-soakage = tenuto dal legno
title-reduce = Ridurre
short-reduce = Aggiungere acqua
about-reduce = Acqua in peso, il titolo che deve dare, e il titolo dopo il riposo.
summary-reduce = { $water_mass } di acqua, obiettivo { $target }
label-reduce-target = Titolo obiettivo
label-reduce-water = Acqua in peso
help-reduce-water = Calcolare l’acqua in peso: i volumi non si sommano.
label-reduce-water_volume = o in volume
label-reduce-rest_until = Riposo fino a
label-reduce-glass = Lettura areometro
help-reduce-glass = Come mostra l’areometro, non corretto.
label-reduce-density = o massa volumica, al densimetro
help-reduce-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-reduce-temp = Temperatura del distillato
help-reduce-temp = Letta nello stesso momento dell’areometro.
label-reduce-strength = Titolo, già corretto
help-reduce-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-reduce-volume = Altezza dopo il riposo
rule-reduce-some_water = Digitare quanta acqua è entrata, in peso o in volume. 0 se si misura soltanto dopo il riposo.
rule-reduce-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-reduce-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-reduce-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-reduce-needed = acqua per l’obiettivo
figure-reduce-water_mass = acqua
figure-reduce-planned_strength = titolo calcolato
figure-reduce-planned_volume = volume calcolato
figure-reduce-true_strength = effettivi a 20 °C
figure-reduce-glass_true = areometro, corretto
figure-reduce-volume_20 = altezza a 20 °C
title-chill_filter = Refrigerare o filtrare
short-chill_filter = Filtrare
about-chill_filter = Temperatura, strati, e volume e titolo prima e dopo.
summary-chill_filter = { $sheets } a { $temp }: trattenuti { $lost }
label-chill_filter-temp = Refrigerato a
label-chill_filter-sheets = Strati o cartuccia
help-chill_filter-sheets = Grado e lotto.
label-chill_filter-volume_before = Volume prima
label-chill_filter-strength_before = Titolo prima
label-chill_filter-temp_before = Temperatura all’altezza prima
help-chill_filter-temp_before = Se vuoto: a 20 °C.
label-chill_filter-volume_after = Volume dopo
label-chill_filter-strength_after = Titolo dopo
label-chill_filter-temp_after = Temperatura all’altezza dopo
help-chill_filter-temp_after = Se vuoto: a 20 °C.
label-chill_filter-to_vessel = Nel serbatoio
help-chill_filter-to_vessel = Lasciare vuoto se è tornato.
figure-chill_filter-volume_before_20 = volume prima a 20 °C
figure-chill_filter-volume_after_20 = volume dopo a 20 °C
figure-chill_filter-lpa_before = alcole puro prima
figure-chill_filter-lpa_after = alcole puro dopo
figure-chill_filter-lost = trattenuto dal filtro
title-bottling_gauge = Accertamento per imbottigliare
short-bottling_gauge = Accert. imbottigl.
about-bottling_gauge = Dopo ogni trattamento e prima della prima bottiglia: quanto, a che titolo, e che cosa dirà l’etichetta.
summary-bottling_gauge = { $batch }: { $volume_20 } a { $true_strength }
label-bottling_gauge-batch = Partita
label-bottling_gauge-volume = Volume
label-bottling_gauge-dip = o altezza
help-bottling_gauge-dip = Altezza piena o vuoto, come nella tavola del recipiente; i litri seguono.
label-bottling_gauge-net_weight = o peso netto
label-bottling_gauge-glass = Lettura areometro
help-bottling_gauge-glass = Come mostra l’areometro, non corretto.
label-bottling_gauge-density = o massa volumica, al densimetro
help-bottling_gauge-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-bottling_gauge-temp = Temperatura del distillato
help-bottling_gauge-temp = Letta nello stesso momento dell’areometro.
label-bottling_gauge-strength = Titolo, già corretto
help-bottling_gauge-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-bottling_gauge-obscuration = Estratto
help-bottling_gauge-obscuration = Residuo dopo evaporazione. Oltre 0,6 g/100 mL, o fuori da 80-100 proof: distillare un campione, digitarne il titolo, e nessun estratto.
label-bottling_gauge-label_strength = Titolo in etichetta
rule-bottling_gauge-some_quantity = Digitare il volume, l’altezza o il peso netto.
rule-bottling_gauge-volume_needs_temp = Un volume vuole la temperatura del distillato. Digitare anche quella.
rule-bottling_gauge-some_strength = Digitare lettura dell’areometro e temperatura, o un titolo già corretto.
rule-bottling_gauge-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-bottling_gauge-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-bottling_gauge-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-bottling_gauge-seen_strength = secondo il densimetro
figure-bottling_gauge-true_strength = effettivi a 20 °C
figure-bottling_gauge-glass_true = areometro, corretto
figure-bottling_gauge-dipped = dalla sua tavola
figure-bottling_gauge-estimated = dalle sue dimensioni, una stima
figure-bottling_gauge-volume_20 = volume a 20 °C
figure-bottling_gauge-lpa = alcole puro
figure-bottling_gauge-proof_gallons = proof gallon
title-bottle_check = Controllo bottiglie
short-bottle_check = Controllare bottiglie
about-bottle_check = Ogni mezz’ora circa: livello, titolo, etichetta e chiusura di alcune bottiglie.
summary-bottle_check = { $tested } bottiglie: { $fill_found }, { $strength_found }
label-bottle_check-line = Linea
label-bottle_check-filled_so_far = Bottiglie riempite finora
help-bottle_check-filled_so_far = Come le conta la linea, da quando il serbatoio è stato iniziato o chiuso l’ultima volta.
label-bottle_check-tested = Bottiglie provate
label-bottle_check-bottle_size = Formato bottiglia
label-bottle_check-fill_found = Riempimento trovato, in media
help-bottle_check-fill_found = In percento di quanto dice l’etichetta.
label-bottle_check-fill_least = La meno piena
label-bottle_check-fill_most = La più piena
label-bottle_check-strength_found = Titolo trovato
label-bottle_check-label_strength = Titolo in etichetta
label-bottle_check-labels_right = Etichette e chiusure giuste
label-bottle_check-done = Fatto se sbagliato
title-bottling_close = Chiusura imbottigliamento
short-bottling_close = Chiudere imbottigl.
about-bottling_close = Conteggi, numeri dei cartoni e resto del serbatoio. Qui il distillato imbottigliato lascia il serbatoio.
summary-bottling_close = { $filled } bottiglie, cartoni da { $case_from } a { $case_to }
label-bottling_close-filled = Bottiglie riempite
label-bottling_close-broken = Rotte
label-bottling_close-reworked = Riversate
label-bottling_close-library = Delle buone, per l’archivio
label-bottling_close-bottle_size = Formato bottiglia
label-bottling_close-per_case = Bottiglie per cartone
label-bottling_close-case_from = Primo cartone
label-bottling_close-case_to = Ultimo cartone
label-bottling_close-odd_case = Cartone spaiato
help-bottling_close-odd_case = Il suo numero con una R.
label-bottling_close-lot_mark = Segno di lotto sulle bottiglie
label-bottling_close-loss = Fondo, linea e filtro
label-bottling_close-tank_empty = Il serbatoio è ora vuoto?
rule-bottling_close-broken_of_filled = { $broken } rotte su { $filled } riempite non può essere. Ricontare.
figure-bottling_close-in_bottles = riempite
figure-bottling_close-lpa = alcole puro imbottigliato
title-dispatch = Bottiglie fuori o di ritorno
short-dispatch = Cartoni fuori
about-dispatch = Cartoni o bottiglie di un imbottigliamento escono, con accisa accertata o in sospensione, si rompono, servono da campioni, o tornano.
summary-dispatch = { $batch }: { $cases } cartoni, { $why }
label-dispatch-batch = Partita o segno di lotto
help-dispatch-batch = Come sta sulle bottiglie o sul cartone.
label-dispatch-why = Che cosa ne è
choice-dispatch-why-tax_paid = escono, accisa accertata
choice-dispatch-why-in_bond = escono in sospensione
choice-dispatch-why-export = escono per esportazione
choice-dispatch-why-sample = campioni e degustazioni
choice-dispatch-why-broken = rotto
choice-dispatch-why-destroyed = distrutto
choice-dispatch-why-missing = mancante
choice-dispatch-why-dumped_back = riversate in un serbatoio
choice-dispatch-why-returned = tornano
label-dispatch-cases = Cartoni interi
label-dispatch-bottles = Bottiglie sciolte
label-dispatch-case_from = Primo cartone
label-dispatch-case_to = Ultimo cartone
label-dispatch-document = Numero del documento
label-dispatch-to_whom = A chi o da chi
help-dispatch-to_whom = Nome e indirizzo. Distrutte: chi l’ha fatto o ha assistito.
label-dispatch-to_vessel = Nel serbatoio
rule-dispatch-some_bottles = Digitare quanti cartoni, o quante bottiglie sciolte.
rule-dispatch-out_has_document = La merce che esce ha un documento. Digitarne il numero.
rule-dispatch-out_names_whom = Digitare a chi vanno: in un richiamo nessun altro lo sa.
rule-dispatch-destroyed_is_watched = Digitare chi le ha distrutte o ha assistito, con qualifica.
rule-dispatch-poured_into_a_tank = Scegliere il serbatoio.
rule-dispatch-last_needs_first = Digitare anche il primo cartone.
title-goods_receipt = Bottiglie ricevute
short-goods_receipt = Cartoni dentro
about-goods_receipt = Cartoni o bottiglie arrivano in sospensione da un altro sito: che cosa dichiarano le carte, e che cosa mancava o era rotto.
summary-goods_receipt = { $document }: { $cases } cartoni di { $batch } da { $consignor }
label-goods_receipt-consignor = Da chi
help-goods_receipt-consignor = Nome e indirizzo, numero dell’impianto o del deposito.
label-goods_receipt-document = Numero del documento
label-goods_receipt-batch = Partita o segno di lotto
help-goods_receipt-batch = Come sta sulle bottiglie o sul cartone.
label-goods_receipt-spirit = Tipo di distillato
label-goods_receipt-strength = Titolo in etichetta
label-goods_receipt-bottle_size = Formato bottiglia
label-goods_receipt-per_case = Bottiglie per cartone
label-goods_receipt-cases = Cartoni interi
label-goods_receipt-bottles = Bottiglie sciolte
label-goods_receipt-short = Bottiglie mancanti o rotte
label-goods_receipt-case_from = Primo cartone
label-goods_receipt-case_to = Ultimo cartone
label-goods_receipt-seals = Sigilli integri?
rule-goods_receipt-some_bottles = Digitare quanti cartoni, o quante bottiglie sciolte, dichiarano le carte.
rule-goods_receipt-cases_hold_some = Digitare quante bottiglie ci sono in un cartone.
rule-goods_receipt-last_needs_first = Digitare anche il primo cartone.
title-opening_goods = Giacenza iniziale in bottiglie
short-opening_goods = Bottiglie iniziali
about-opening_goods = Cartoni e bottiglie di un imbottigliamento che stavano in magazzino prima che il registro iniziasse, e che cosa ne dicono le carte.
summary-opening_goods = { $batch }: { $cases } cartoni di { $spirit } prima di questo registro
label-opening_goods-batch = Partita o segno di lotto
help-opening_goods-batch = Come sta sulle bottiglie o sul cartone.
label-opening_goods-lot_mark = Segno di lotto
help-opening_goods-lot_mark = Dove le bottiglie ne portano uno diverso dalla partita.
label-opening_goods-spirit = Tipo di distillato
label-opening_goods-strength = Titolo in etichetta
label-opening_goods-bottle_size = Formato bottiglia
label-opening_goods-per_case = Bottiglie per cartone
label-opening_goods-cases = Cartoni interi
label-opening_goods-bottles = Bottiglie sciolte
label-opening_goods-case_from = Primo cartone
label-opening_goods-case_to = Ultimo cartone
label-opening_goods-bottled_on = Imbottigliato il
label-opening_goods-origin = Da dove
help-opening_goods-origin = Imbottigliamento proprio, o da chi viene.
label-opening_goods-papers = Le sue carte
help-opening_goods-papers = Quale registro o fattura, e la pagina.
rule-opening_goods-some_bottles = Digitare quanti cartoni, o quante bottiglie sciolte.
rule-opening_goods-cases_hold_some = Digitare quante bottiglie ci sono in un cartone.
rule-opening_goods-last_needs_first = Digitare anche il primo cartone.
title-bottled_count = Conteggio delle bottiglie
short-bottled_count = Contare bottiglie
about-bottled_count = Cartoni e bottiglie di un imbottigliamento che stanno in magazzino. La differenza è un ammanco o un’eccedenza.
summary-bottled_count = { $batch }: { $cases } cartoni in giacenza
label-bottled_count-batch = Partita o segno di lotto
help-bottled_count-batch = Come sta sulle bottiglie o sul cartone.
label-bottled_count-cases = Cartoni interi
label-bottled_count-bottles = Bottiglie sciolte
label-bottled_count-case_from = Un cartone di questi
help-bottled_count-case_from = Solo dove due imbottigliamenti hanno la stessa partita.
label-bottled_count-signed = Firmato da chi conta
help-bottled_count-signed = Nome e qualifica.
rule-bottled_count-some_bottles = Digitare quanti cartoni o bottiglie, o 0.
title-stock_count = Inventario
short-stock_count = Contare
about-stock_count = Quale recipiente sta a quale posto, e quanto contiene un serbatoio. Uno scambio è uno scambio, non un ammanco.
label-stock_count-place = Posto
help-stock_count-place = Come dice la sua etichetta. Per un serbatoio lasciare vuoto.
label-stock_count-found = Trovato
choice-stock_count-found-here = questo recipiente
choice-stock_count-found-nothing = nulla dove dovrebbe essere
choice-stock_count-found-unknown = uno che non è nel registro
label-stock_count-label = Che cosa c’è scritto
label-stock_count-volume = Volume, se serbatoio
label-stock_count-net_weight = o peso netto
label-stock_count-glass = Lettura areometro
help-stock_count-glass = Come mostra l’areometro, non corretto.
label-stock_count-density = o massa volumica, al densimetro
help-stock_count-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-stock_count-temp = Temperatura del distillato
help-stock_count-temp = Letta nello stesso momento dell’areometro.
label-stock_count-strength = Titolo, già corretto
help-stock_count-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-stock_count-signed = Firmato da chi conta
help-stock_count-signed = Nome e qualifica.
rule-stock_count-unknown_is_described = Digitare che cosa c’è scritto.
rule-stock_count-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-stock_count-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-stock_count-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-stock_count-true_strength = effettivi a 20 °C
figure-stock_count-glass_true = areometro, corretto
figure-stock_count-volume_20 = volume a 20 °C
figure-stock_count-lpa = alcole puro
title-cleaning = Pulizia
about-cleaning = Prodotto, forza, tempo e temperatura, e controllo del risciacquo. Nessuno entra senza permesso.
summary-cleaning = { $agent }, risciacquo { $rinse_ph }
label-cleaning-agent = Prodotto, forza, tempo
label-cleaning-temp = Temperatura
label-cleaning-rinse_ph = Controllo risciacquo, pH
label-cleaning-entered = È entrato qualcuno?
label-cleaning-permit_no = Numero del permesso
rule-cleaning-entry_needs_permit = Nessuno entra in un recipiente senza permesso. Digitarne il numero.
title-instrument_check = Controllo strumento
short-instrument_check = Controllare strumento
about-instrument_check = Trovato contro noto. Una divisione di scarto è troppo: è fuori servizio finché non è a posto.
summary-instrument_check = { $instrument }: { $found } per { $expected }, { $result }
label-instrument_check-instrument = Strumento
help-instrument_check-instrument = Il suo id, come TH-2.
label-instrument_check-against = Contro
choice-instrument_check-against-ice = ghiaccio
choice-instrument_check-against-boiling = acqua bollente
choice-instrument_check-against-liquid = liquido di riferimento
choice-instrument_check-against-weight = peso
choice-instrument_check-against-second = secondo strumento
label-instrument_check-expected = Dovrebbe mostrare
help-instrument_check-expected = Nell’unità dello strumento.
label-instrument_check-found = Mostra
label-instrument_check-correction = Correzione da ora
help-instrument_check-correction = Da sommare a ciò che mostra. 0 se nessuna.
label-instrument_check-result = Buono?
choice-instrument_check-result-good = buono
choice-instrument_check-result-failed = non buono
label-instrument_check-in_use = In uso?
choice-instrument_check-in_use-yes = sì
choice-instrument_check-in_use-no = no
choice-instrument_check-in_use-until = fino a un giorno
label-instrument_check-until = Fino al
title-destruction = Distruzione
short-destruction = Distruggere
about-destruction = Che cosa è stato distrutto, quanto, dove, come, e chi ha assistito.
summary-destruction = { $what }: { $volume_20 } a { $true_strength }
label-destruction-what = Che cosa e lotto
label-destruction-volume = Volume
label-destruction-net_weight = o peso netto
label-destruction-glass = Lettura areometro
help-destruction-glass = Come mostra l’areometro, non corretto.
label-destruction-density = o massa volumica, al densimetro
help-destruction-density = Come la mostra lo strumento a quella temperatura, non riportata a un’altra.
label-destruction-temp = Temperatura del distillato
help-destruction-temp = Letta nello stesso momento dell’areometro.
label-destruction-strength = Titolo, già corretto
help-destruction-strength = Solo se l’hanno dato un densimetro o le tavole. Con l’areometro lasciare vuoto.
label-destruction-place = Posto
label-destruction-manner = Come
label-destruction-withdrawn = Mai tolto dalla sospensione?
label-destruction-watched_by = Fatto o assistito da, con qualifica
rule-destruction-some_quantity = Digitare il volume o il peso netto.
rule-destruction-some_strength = Digitare lettura dell’areometro e temperatura, o un titolo già corretto.
rule-destruction-glass_needs_temp = Una lettura dell’areometro vuole la temperatura del distillato. Digitare anche quella.
rule-destruction-density_needs_temp = Una massa volumica vuole la temperatura a cui è stata presa. Digitare anche quella.
rule-destruction-raw_equals_corrected = { $glass } sta in entrambe le caselle a { $temp }. È ciò che mostra l’areometro; effettivo sarebbe { $glass_true }.
figure-destruction-true_strength = effettivi a 20 °C
figure-destruction-glass_true = areometro, corretto
figure-destruction-volume_20 = volume a 20 °C
figure-destruction-lpa = alcole puro
figure-destruction-proof_gallons = proof gallon
title-shift_note = Nota al turno dopo
short-shift_note = Nota
about-shift_note = Poche parole per chi viene dopo, su un recipiente o su nulla in particolare.
label-shift_note-text = Nota
title-note_heard = Nota ascoltata
about-note_heard = Chi ha letto o ascoltato quale nota; prima resta sul suo recipiente.
summary-note_heard = ascoltata
label-note_heard-note = La nota
title-enclosure = Foto o carta aggiunta
short-enclosure = Foto
about-enclosure = Nomina l’annotazione a cui appartiene; il suo `enclosed` nomina i file, con il loro SHA-256.
label-enclosure-entry = Sull’annotazione
label-enclosure-what = Che cosa mostra
title-answer = Risposta
about-answer = Si mantiene, o si depenna, con il motivo. L’annotazione di cui parla resta leggibile.
label-answer-entry = Sull’annotazione
label-answer-query = Domanda
help-answer-query = Il suo codice; vuoto per l’annotazione intera.
label-answer-verdict = Risposta
choice-answer-verdict-stands = si mantiene
choice-answer-verdict-struck = depennata
label-answer-reason = Motivo

### A phone fetches what follows after its first install.

pure =
    { UNITS() ->
        [us] proof gallon
       *[metric] L di alcole puro
    }
of-pure =
    { UNITS() ->
        [us] proof gallon
       *[metric] L di alcole puro
    }
pure-sign =
    { UNITS() ->
        [us] proof gal
       *[metric] L
    }
no_entry = Questa non è un’annotazione. Aggiornare l’app sul telefono e inviarla di nuovo.
unkeepable = Contiene una cifra o un carattere che non si può conservare. Annotarla da capo.
too_long-entry = L’annotazione è troppo lunga per esserlo. Accorciare i testi e annotarla da capo.
malformed = { $path }: { $words }
malformed-whole = { $words }
fault-missing = Manca un dato obbligatorio.
fault-null = Il campo non può essere nullo.
fault-no_text = Non è un testo valido.
fault-no_number = Non è un numero intero valido.
fault-no_members = Non è una mappa valida.
fault-no_list = Non è un elenco valido.
fault-no_object = Tipo di dato non valido.
fault-no_id = L’id non è un UUID in minuscole.
fault-no_time = Un’ora vuole data, ora e scarto, come 2025-09-24T08:05:00+02:00.
fault-no_digest = Il nome di una foto è il suo SHA-256 in minuscole.
fault-unkeepable = Questo testo contiene caratteri che non si possono conservare.
fault-unknown = Campo sconosciuto.
fault-longer = Più lungo del massimo di { $most }.
fault-one_of = Deve essere uno di: { $choices }.
fault-between = Deve essere almeno { $least } e al massimo { $most }.
no_such_kind = Il registro non conosce annotazioni di nome { $kind }. Aggiornare il registro.
newer_kind = Il telefono è più nuovo del registro. Aggiornare il registro, poi inviare di nuovo.
bad_mark = { $mark } non è una sigla. Rileggere l’etichetta e annotare da capo.
bad_mark-field = { $label }: { $mark } non è una sigla. Rileggere l’etichetta.
missing-mark = Manca la sigla del recipiente. Scansionare l’etichetta, o digitarla.
amends_itself = Dice di rettificare sé stessa. Annotarla da capo.
clash-in_book = Questo id è nel registro con un altro contenuto, al numero { $number }. Decide una persona.
clash-in_batch = Questo id arriva due volte in un invio con due contenuti. Il primo è nel registro. Decide una persona.
bad_signature = Non porta la firma del telefono che nomina: è stata cambiata dopo essere annotata. Annotarla da capo.
not_the_desk = Dice di essere stata annotata in ufficio. Annotarla da capo, in ufficio o sul telefono.
may_not_answer = Si risponde in ufficio, da distillatore o da ufficio. Accedere lì, poi rispondere.
not_worked_out = Il registro non ha potuto elaborare questa annotazione. È conservata com’è arrivata; segnalarlo a chi cura il programma.
clash = Un altro contenuto è arrivato con l’id di questa annotazione ed è stato messo da parte. Confrontare i due; rettificare o mantenere.
amended_after_strike = Rettifica un’annotazione già depennata. Non conta nulla, a meno di dire che si mantiene.
unknown_person = Il registro non conosce nessuno con il codice { $code }. Aggiungerlo, o rettificare.
unknown_vessel = Nel registro non c’è il recipiente { $mark }. Aggiungerlo, o rettificare l’annotazione.
wrong_sort = { $vessel } è di tipo { $sort }; lì non si annota: { LOWER($kind) }. Recipiente giusto?
wrong_sort-field = { $label }: { $vessel } è di tipo { $sort }. Recipiente giusto?
sort-fermenter = tino
sort-still = alambicco
sort-receiver = recipiente di raccolta
sort-tank = serbatoio
sort-cask = botte
sort-can = bidone
sort-place = posto
stock_short = { BARE($taken) } { of-pure } presi da { $vessel }, { BARE($booked) } { pure-sign } dentro secondo il registro. Ricontrollare le due cifre.
from_nothing = { BARE($came) } { of-pure } vengono da dove il registro non ha nulla. Sono giusti recipiente e ora? Se sì, annotare che cosa c’era prima.
clock = L’orologio di questo telefono era { clock-way } di { $off } alla consegna.
clock-way =
    { $way ->
        [slow] indietro
       *[fast] avanti
    }
clock-ask = L’orologio di questo telefono era { clock-way } di { $off } alla consegna. Secondo quell’orologio fu letto il { ISO_DAY($told) } alle { CLOCK($told) }; il registro lo ordina come { ISO_DAY($ordered) } { CLOCK($ordered) }; si tengono entrambi. Regolare l’orologio, e dire se il giorno è giusto.
hand_unsigned = Questo telefono firma ciò che vi si annota, e questa è arrivata senza firma. Chiedere a { $person } se l’annotazione è sua.
hand_not_shown = { $person } ha un PIN e non l’aveva digitato su questo telefono. Chiedere se l’annotazione è sua.
hand_second = La casa vuole il PIN digitato quando si annota questo, e non lo è stato. Chiedere a { $person } se l’annotazione è sua.
hand_witness = { $person } è indicato come testimone, e non ha mai digitato il suo PIN su questo telefono. Chiedere.
received = Consegnato { $after } dopo la digitazione.
late = Digitato { $after } dopo la lettura.
time_order = Letto { $after } dopo la digitazione: non può essere. Rettificare l’ora di lettura.
twice =
    Le stesse cifre ci sono già: { $at } ({ $before ->
        [none] nello stesso momento
       *[other] { $before } prima
    }{ $by ->
        [none] { "" }
       *[other] , di { $by }
    }). È una lettura sola, inserita due volte?
moved_twice = Le stesse cifre ci sono già ({ $at }). È una cosa sola, annotata due volte?
named_twice = { $label } { $name } c’è già ({ $at }). Dare il successivo.
two_people = Anche { $other } ha accertato questo recipiente, { $at }: { TYPED($theirs) }. { $me } ha { TYPED($mine) }. Si tengono entrambi; quale conta?
too_neat = { $label } { TYPED($figure) }, { $times } volte di fila. È letto ogni volta?
neat_round = { $label } { TYPED($figure) } su { $vessels } recipienti di fila. È letto su ciascuno?
instrument-failed = { $instrument } non ha superato il controllo ({ $on }). Rileggere con un altro.
instrument-would = { $instrument } non ha superato il controllo ({ $on }): con esso { TYPED($figure) } sarebbe { TYPED($would) }. Rileggere con un altro.
instrument-out_of_use = { $instrument } è fuori servizio (da: { $since }). Quale strumento era?
instrument-due = { $instrument } era da controllare il { ISO_DAY($on) }. Controllarlo.
unknown_instrument = Il registro non conosce lo strumento { $instrument }. Aggiungerlo, o rettificare l’annotazione.
check_left = { $instrument } è detto buono: mostra { $found }, con { $correction } sommati { $then }, e dovrebbe mostrare { $expected }. Ricontrollare le tre cifre; uno strumento che scarta non è buono.
instrument_failed =
    { $instrument } { $side ->
        [high] segna { $off } in più{ instrument-where }
        [low] segna { $off } in meno{ instrument-where }
       *[none] non ha superato il controllo
    }. Ogni lettura fatta con esso { $since ->
        [new] da quando era nuovo
       *[other] dall’ultimo controllo buono del { $since }
    } è in dubbio: scorrere l’elenco sulla sua pagina.
instrument-where =
    { $against ->
        [ice] { " " }nel ghiaccio
        [boiling] { " " }in acqua bollente
       *[other] { "" }
    }
glass_scale =
    { $instrument } mostra { BARE(TYPED($low)) }{ $high ->
        [none] { "" }
       *[other] { " " }a { BARE(TYPED($high)) }
    }; { TYPED($figure) } non vi si può leggere. Quale strumento era?
ferment_gravity_rose = La densità { $gravity } è sopra { $last } ({ $at }); può solo scendere.
ferment_jump = Pasta { TYPED($temp) }, { TYPED($last) } all’ultima lettura: una pasta si muove più piano. Ricontrollare.
sugar_gravity = Prima densità { TYPED($gravity) }: lo zucchero della frutta dice circa { TYPED($usual) }. Ricontrollare entrambi.
close_gravity = Densità finale { TYPED($gravity) }, { TYPED($last) } all’ultima lettura. Ricontrollare.
close_volume = { TYPED($volume) } di fermentato da { $fruit } di frutta: circa { $usual } è usuale. Ricontrollare l’altezza, e cercare un carico non annotato.
ferment_stuck =
    La densità { $gravity } { $moved ->
        [none] non si è mossa
       *[other] si è mossa di { $moved }
    } in { $apart } e sta { $above } sopra { $end }, dove finisce di solito { $what ->
        [none] tale frutta
       *[other] { $what }
    }: ferma e non finita.{ $mash ->
        [none] { "" }
       *[other] { " " }Pasta { TYPED($mash) }.
    } Guardare temperatura, acido e nutrimento.
ferment_ended = Tre densità uguali a { $gravity } in { $within }: la fermentazione è finita. Prenotare l’alambicco.
ferment_heat =
    Pasta { TYPED($temp) }, sopra { TYPED($most) }: troppo calda per { $what ->
        [grain] i cereali
       *[fruit] la frutta
    }. Raffreddarla subito.
ferment_temp_sense = Pasta { TYPED($temp) } ucciderebbe il lievito. Letto come Fahrenheit è { TYPED($meant) } ({ $other }){ temp-fits }. Si intendeva questo?
ferment_temp_sense-cold = Pasta { TYPED($temp) } è al gelo o sotto ({ TYPED($cold) }). Letto come Celsius è { TYPED($meant) }{ temp-fits }. Si intendeva questo?
temp-fits =
    { $near ->
        [none] { "" }
       *[other] , che va con { TYPED($near) } ({ $at })
    }
ferment_yield =
    { BARE($made) } { pure } nel fermentato, { $load }: se ne potevano attendere circa { BARE($wanted) } { pure-sign }{ $what ->
        [none] { "" }
       *[other] { " " }secondo gli ultimi { $years } di { $what }
    }. È { $side ->
        [much] molto
       *[little] poco
    }: { $share }, dove è usuale da { BARE($low) } a { $high }. Guardare titolo, altezza e pesi.
ferment_yield-most = { BARE($made) } { pure } nel fermentato, { $load }: tutto il suo zucchero non poteva dare più di { BARE($most) } { pure-sign }. Guardare titolo, altezza e pesi; è stato aggiunto zucchero?
load-grain = da { $weight } di cereali
load-fruit = da { $weight } di frutta a { $sugar }
wash_strength =
    { TYPED($strength) } da { $vessel } è molto per una fermentazione: usuale da { UNITS() ->
        [us] 6
       *[metric] 3
    } a { BARE($most) } { pct }. Ricontrollare.
wash_strength-impossible = { TYPED($strength) } da { $vessel } non può essere: nessuna fermentazione lo dà. Ricontrollare.
over_capacity = Troppo per { $vessel }, che contiene { $holds }: { $contents }. Ricontrollare.
over_working_level = Sopra il livello di lavoro di { $vessel }, { $level }: { $contents }. Ricontrollare.
contents-fruit =
    { $fruit } di frutta ({ $before ->
        [none] { "" }
       *[other] con { $before } già dentro,{ " " }
    }circa { $mash } di pasta)
contents-charge =
    una carica di { $charge }{ $feints ->
        [none] { "" }
       *[other] { " " }({ BARE($wash) } di fermentato e { BARE($feints) } di teste e code)
    }
vessel_empty = A quest’ora il registro non ha nulla in { $vessel }. Sono giusti recipiente e ora? Se sì, annotarne il riempimento.
source_empty = Il registro non ha nulla in { $vessel } da caricare. È il recipiente giusto? Se sì, annotarne il riempimento.
vessel_not_empty =
    { $vessel } non è vuoto secondo il registro: { $held ->
        [none] { "" }
       *[other] { BARE($held) } { of-pure },{ " " }
    }{ $what }. Botte giusta? È stata svuotata?
target_capacity = Così in { $vessel } stanno { $then } ({ target-holds }). Recipiente e cifre giusti?
target_working_level = Così in { $vessel } stanno { $then } ({ target-holds }). Recipiente e cifre giusti?
target-holds =
    contiene { $holds }, livello di lavoro { $level }{ $has ->
        [none] { "" }
       *[other] , dentro { $has }
    }
emptied_vessel =
    { $vessel } è stato { $how ->
        [dump] svuotato
        [destruction] distrutto
        [loss] messo a perdita
        [account_move] spostato
        [bottling_close] imbottigliato
        [charge] caricato in un alambicco
        [cask_fill] messo in una botte
        [top_up] versato in una botte
        [chill_filter] filtrato in un altro serbatoio
        [gauge] trovato vuoto
        [stock_count] trovato vuoto
        [fraction_gauge] scaricato
       *[other] svuotato
    } ({ $at }, { $by }) ed è vuoto secondo il registro. È letto prima? Allora rettificare l’ora. O era un altro recipiente?
move_gain = In { $vessel } { BARE($had) } secondo il registro, spostati { BARE($moved) }: { BARE($more) } { pure } ({ $share }) più di quanto c’era. Uno spostamento non guadagna nulla: fino a { $most } è lettura. Guardare altezza, temperatura e titolo di entrambi.
account_other = Secondo il registro { $vessel } contiene { BARE($held) } { of-pure } in { $account }. Spostando come { $other }, ora sta tutto in { $other }, non solo i { BARE($moved) } spostati. Era dichiarato?
account_joined = { BARE($held) } { of-pure } in { $vessel } stanno in { $account } secondo il registro. Uniti a { BARE($moved) } come { $other }, ora stanno tutti in { $other }. Era dichiarato?
fruit_mixed = { $net } di { $fruit } vanno su { $lies } di { $other }: { $share } della pasta. Il distillato si chiama allora da entrambi, con le loro quote, e da nessuno da solo. Frutta giusta, tino giusto?
opening_nothing = Il registro non ha nulla in { $vessel }, e qui nulla è pesato o misurato. Digitarne peso lordo, peso netto o volume.
opening_seen = { $vessel } contiene ciò che questo registro ha visto iniziare ({ $at }): non è giacenza iniziale. Recipiente giusto?
opening_again = Secondo il registro { BARE($booked) } { of-pure } sono già in { $vessel }; qui sono { BARE($said) }. Se ne aggiunge il passato, la giacenza resta. Accertarlo, se ora contiene altro.
opening_before_fruit = In legno dal { $day }, del raccolto { $harvest }: nulla sta in legno prima della sua frutta. Ricontrollare entrambi.
opening_drift = { $now } ora, { $then } al riempimento ({ $at }): è molto per gli anni trascorsi. Ricontrollare entrambi.
opening_grew = { $now } ora, { $then } al riempimento: il legno non dà alcole. Ricontrollare entrambi.
opening_overfilled = { TYPED($filled) } al riempimento non stanno in { $vessel }, che contiene { TYPED($holds) }. Ricontrollare le carte.
opening_no_tare = { TYPED($gross) } con la botte, e nessuno ha detto quanto pesa vuota. Digitare il peso a vuoto, o metterlo nella scheda della botte.
opening_to_come = { $day } è dopo { $read }, quando fu letto. Guardare l’anno.
opening_long_ago =
    { $day } è { PLURAL($years) ->
        [one] { $years } anno
       *[other] { $years } anni
    } prima della lettura. Anno giusto?
sheet-empty = In questo file non c’è nulla. Prendere il foglio con le righe.
sheet-too_large = Questo file supera { $most } MB. Salvare il solo foglio come CSV, e prendere quello.
sheet-pdf = È un PDF, qualunque nome porti. Salvare il foglio come XLSX, ODS o CSV e prendere quello.
sheet-old = È una cartella di un formato più vecchio. Salvarla come XLSX, ODS o CSV e prendere quella.
sheet-unreadable = Non è un foglio di calcolo leggibile. Salvare il foglio come XLSX, ODS o CSV e prendere quello.
sheet-swollen = Questa cartella, aperta, supera { $most } MB. Salvare il solo foglio come CSV e prendere quello.
sheet-rows = { $rows } righe sono troppe in una volta: al massimo { $most }. Prenderle a parti.
sheet-columns = { $columns } colonne sono troppe: al massimo { $most }. Togliere quelle che qui non servono.
sheet-no_heads = Nessuna riga di questa tabella sembra un’intestazione. Mettere un’intestazione su ogni colonna, come nel modello.
sheet-no_rows = Ci sono intestazioni, e nessuna riga sotto.
sheet-merged = Le intestazioni nella riga { $row } sono unite. Dividerle, una su ogni colonna.
sheet-two_columns = Due colonne vogliono dire lo stesso, { $label }: «{ $one }» e «{ $other }». Dire quale è, e che cosa è l’altra.
sheet-no_column =
    { PLURAL($many) ->
        [one] Manca una colonna: { $labels }.
       *[other] Mancano colonne: { $labels }.
    } Dire quale è, o aggiungerla al foglio.
sheet-order = Giorni come { $example }: prima il giorno o il mese? Dire quale.
sheet-missing = Manca: { $label }.
sheet-formula_cell = { $typed } è una formula senza valore. Metterci il valore.
sheet-no_number = { $typed } non è una cifra.
sheet-bad_number = { $typed }: { $reason }
sheet-no_unit = { $typed }: questa colonna è in { $units }.
sheet-no_choice = { $typed } non è nessuno di questi: { $choices }.
sheet-no_date = { $typed } non è un giorno. Scriverlo come 2022-11-21 o 21 nov 2022.
sheet-no_such_day = { $month } ha { $last } giorni.
sheet-which_order = { $typed }: quale è il giorno, e quale il mese?
sheet-to_come = { $day } deve ancora venire.
sheet-twice = { $name } sta già nella riga { $row }.
sheet-no_vessel = Nessun recipiente si chiama { $name }. Metterlo con un foglio di recipienti, o darne qui la capacità.
sheet-opened = La giacenza iniziale di { $name } è già nel registro, e dice altro. Rettificarla sulla sua pagina.
sheet-other = { $name } è già nel registro: là { $there }, qui { $here }. Cambiarlo sulla sua pagina, o lasciare fuori questa riga.
opening_goods_again = Il registro ha già { $there } bottiglie di { $batch } ({ $at }); queste { $bottles } si mettono accanto. Sono altre?
move_balance = In { $vessel } { BARE($had) } secondo il registro, in { $to } { BARE($moved) }: { BARE($left) } { pure } ({ $share }) rimasti. Fino a { $most } è usuale. È nella linea o ancora nel recipiente? Accertarlo.
move_balance-off = In { $vessel } { BARE($had) } secondo il registro, fuori dai locali { BARE($moved) }: { BARE($left) } { pure } ({ $share }) rimasti. Fino a { $most } è usuale. È nella linea o ancora nel recipiente? Accertarlo.
dip_sum =
    { $dipped } in { $vessel }, { $booked } secondo il registro: { $off } { $side ->
        [above] sopra
       *[below] sotto
    } il calcolo ({ $share }). Guardare l’altezza, poi cercare uno spostamento non annotato.
dip_sum-dump = { $dipped } misurati in { $vessel }, { $sum } per somma di ciò che è entrato: { $off } di differenza. Guardare l’altezza e i due pesi.
source_strength = Titolo effettivo { BARE($now) } { pct }, { BARE($held) } { pct } in { $vessel } secondo il registro: { APART($off) } { points } di differenza. È questo recipiente? Ricontrollare, e cercare un’acqua o uno spostamento non annotati.
water_off = { TYPED($water) } di acqua lo portano a { BARE($strength) } { pct }, non a { BARE($target) } { pct }: ne servono { $needed }. Guardare il peso.
blend_sum =
    Entrati { BARE($went_in) }, misurati { BARE($measured) }: { BARE($off) } { pure } ({ $share }) { $side ->
        [more] più
       *[less] meno
    } di quanto è entrato nell’assemblaggio. { $usual } è usuale. È mescolato? Rileggere.
row_gap = { $label } sta in ognuna delle ultime { $lines } righe e non in questa. Digitarlo, o dire che non è stato letto.
plates_moved = Piatti { $plates }, e { BARE($last) } ({ $at }); da allora nessuno è annotato come inserito o tolto. Ricontrollare, o annotare il cambio.
strength_row = Titolo effettivo { BARE($now) } { pct }; secondo le letture precedenti sarebbe da { BARE($low) } a { BARE($high) } { pct }, e lo conferma il vapore a { TYPED($vapour) }. Guardare areometro e temperatura.
ferment_row = Densità { TYPED($gravity) }: scendeva di { BARE($before) } al giorno, e ora quasi nulla. È questa lettura, o quella della riga prima?
ferment_row-again = Densità { TYPED($gravity) }: scendeva di { BARE($before) } al giorno e aveva rallentato, e ora { BARE($fell) } al giorno. Ricontrollare.
ferment_jump-row = Pasta a { TYPED($temp) }, e { TYPED($usual) } a metà delle ultime { $readings } letture. Ricontrollare.
charge_low = { $charge } in { $still }, che contiene { $holds }: così poco brucia a secco. Guardare l’altezza.
charge_unlike = Fermentato { TYPED($wash) }, e { TYPED($usual) } a metà delle cariche precedenti su questo alambicco. Ricontrollare.
feints_unread = Sono indicate teste e code di { $vessel }, e non quante. Digitare volume e titolo.
feints_part = { TYPED($feints) } di teste e code, e in { $vessel } ne stanno { TYPED($there) } secondo il registro. Sono entrate tutte?
move_part = Escono { BARE($moved) } di { BARE($had) } { of-pure } in { $vessel }, e { BARE($left) } { pure } restano. È uscito tutto? Guardare la cifra e la sua unità.
account_same =
    Un deposito che resta nel conto di { $account ->
        [production] produzione
        [storage] magazzino
       *[processing] lavorazione
    } non è tale. In quale conto va?
account_habit = Nel conto di { $account }; ciò che è uscito di qui prima è andato in quello di { $usual }. Quale è?
moved_elsewhere = In { $vessel }; ciò che è uscito di qui prima è andato in { $usual }, che ha spazio. Quale serbatoio è?
opening_weak = { BARE($now) } { pct } in una botte: sotto { BARE($least) } { pct } non si imbottiglia. Guardare l’areometro e la sua unità.
receiver_other = { $vessel } è aperto per { $part }; la carica prevede { $planned }. Quale è aperto ora?
receiver_no_cut = { $vessel } è indicato come aperto ora, e { $event } non è un taglio. Era un taglio?
receiver_twice = { $vessel } per { $part } e { $other } di una sola cotta. Quale recipiente di raccolta è?
receiver_role = { $vessel } per { $part }; aveva { $other } della cotta precedente. Quale recipiente di raccolta è?
target_moved = Obiettivo { TYPED($target) }; l’acqua ({ $at }) era per { TYPED($last) }. Quale è?
target_planned =
    Obiettivo { TYPED($target) }, sotto i { TYPED($planned) } previsti per { $plan ->
        [none] l’unione
       *[other] { $plan }
    }. Ricontrollare.
label_planned =
    Imbottigliato a { TYPED($label) }, e per { $plan ->
        [none] l’unione
       *[other] { $plan }
    } sono previsti { TYPED($planned) }. Guardare entrambi.
dump_planned =
    { $vessel } non è nel piano{ $plan ->
        [none] { "" }
       *[other] { " " }{ $plan }
    } di { $tank }. È questa botte, e questo serbatoio?
dump_planned-amount =
    Svuotati { $net }, e previsti { $wanted }{ $plan ->
        [none] { "" }
       *[other] { " " }per { $plan }
    }. Guardare i due pesi.
vat_joins = { $vessel } contiene { BARE($held) } { of-pure } che il piano non nomina. È questo serbatoio?
vat_sum = I prelievi e { TYPED($water) } di acqua danno { BARE($strength) } { pct }, non { TYPED($target) }. Guardare entrambi.
vat_full = I prelievi e l’acqua danno { $then }, e { $vessel } contiene { $holds }. È questo serbatoio?
cut_planned = Cuore tagliato a { BARE($now) } { pct }, previsto a { BARE($planned) } { pct }. Decide il naso: dire perché, o guardare l’areometro.
wash_open = La fermentazione in { $vessel } non è chiusa: il suo fermentato non è misurato. Prima chiuderla, con l’ora dell’ultima lettura.
water_unread = In { $vessel } è entrata acqua ({ $at }), e nessuno ha misurato a quanto è arrivato. Annotare areometro e altezza dopo il riposo.
bottling_ungauged = { $vessel } non è accertato per imbottigliare: nessuno ne ha detto partita ed etichetta. Prima accertarlo. O è un altro serbatoio?
fraction_left =
    Accertata la frazione { $fraction }, non quella di { $missing } { $run ->
        [none] di questa cotta
       *[other] di { $run }
    }. Accertare anche questa, con la sua ora.
fraction_left-moved =
    { $vessel } è svuotato, e non è accertata la frazione { $missing } { $run ->
        [none] della cotta
       *[other] di { $run }
    }. Accertare anche questa.
run_not_ended =
    { $run ->
        [none] La cotta
       *[other] { $run }
    } è accertata fino alla fine, e la fine non è annotata. Annotarla con la sua ora.
cleaned_full = { $vessel } è pulito, e il registro vi ha { $litres }. È questo recipiente, o un passo non è annotato?
added_again = Altrettanto { $what } dello stesso lotto è già entrato in { $vessel } ({ $at }). È questo recipiente, o annotato due volte?
recask_rest = Svuotata in un’altra botte, e { BARE($left) } { of-pure } di { $vessel } non vi sono; il legno tiene { BARE($kept) }. È una colmatura, o ne viene ancora?
lab_far = { $substance } { $found }: i laboratori ne trovano da { BARE($low) } a { $high } nel distillato. Guardare la virgola e la riga.
stillage_strong = Borlanda a { BARE($now) } { pct }, sopra { BARE($most) } { pct }: è esaurita? Guardare la cifra, e quale parte è.
receiver_full = { $vessel } contiene { $held } e ha posto per { $room }; prima vi entrava un cuore di { $usual }. Uno spostamento non è annotato?
counted_again = { $counted } sono già contati ({ $at }). È un solo conteggio, annotato due volte?
removed_otherwise = A { $to_whom }: { $why }. L’ultima merce: { $usual }. Quale è?
document_again = Il documento { $document } sta su merce già uscita. Guardarne il numero.
run_still_open =
    { $still } ha già aperta { $run ->
        [none] una cotta
       *[other] { $run }
    }, da { $since }. Prima finire quella cotta, o depennare questa carica.
run_not_open = A quest’ora su { $still } non è aperta nessuna cotta. Annotare la carica con la sua ora, e questo torna.
run_receiver_same = { $receiver } era già aperto prima di questo taglio. Quale recipiente di raccolta è aperto ora? Rettificare questo, o il precedente.
run_order-no_hearts_cut = La cotta finisce ma il taglio del cuore non è annotato; il cuore è iniziato ({ $began }). Annotarlo con la sua ora.
run_order-opened = L’alambicco è aperto ma la sua cotta non è finita. Finire la cotta con la sua ora.
run_order-again = { CAPITAL($event) }: già annotato ({ $at }). Quale conta?
run_order-late = { CAPITAL($event) } viene dopo { $other } ({ $at }). Guardare le ore.
run_order-no_heads_cut = Il cuore è tagliato ma il taglio delle teste non è annotato. Annotarlo con ora e recipiente di raccolta.
strength_slope = Il titolo effettivo { BARE($now) } { pct } è sopra { BARE($last) } { pct } ({ $at }); dopo il taglio delle teste può solo scendere, se non cambiano piatti o raffreddamento.
strength_impossible = Titolo effettivo { BARE($now) } { pct } non può essere: nessuno supera { $most }. Ricontrollare.
strength_class =
    Titolo effettivo { BARE($now) } { pct } da { $what ->
        [none] frutta
       *[other] { $what }
    }: { $limit ->
        [brandy_us_pct]
            sopra { UNITS() ->
                [us] { APART($most) } proof
               *[metric] { BARE($most) } % (190 proof)
            } negli US non è brandy (27 CFR 5.145)
        [grain_us_pct]
            sopra { UNITS() ->
                [us] { APART($most) } proof
               *[metric] { BARE($most) } % (160 proof)
            } negli US non è rye whisky (27 CFR 5.143)
       *[fruit_class_pct] da { BARE($most) } { pct } in su nell’UE non è acquavite di frutta (regolamento 2019/787)
    }. Ricontrollarlo.
distillate_warm = Il distillato esce a { TYPED($temp) }, sopra { TYPED($warm) }. Subito più acqua al condensatore, e giù il fuoco finché esce freddo: il distillato caldo dà vapori che bruciano.
vapour_strength = Vapore { TYPED($vapour) } e distillato a { BARE($strength) } { pct } non vanno d’accordo: a quel titolo è usuale circa { TYPED($usual) }. Ricontrollare entrambi.
fraction_receiver = { $vessel } per { $fraction }: secondo i tagli di questa cotta sono in { $opened }. Quale è?
fraction_uncut =
    Flemma di una cotta con tagli{ $run ->
        [none] { "" }
       *[other] , { $run }
    }. Teste, cuore o code?
fraction_strength = Frazione { $fraction } a { BARE($now) } { pct }, in media { BARE($ran) } { pct } al misuratore. Guardare areometro, temperatura e residuo.
glass_habit = { $strength } a { $temp } è digitato come corretto, e { $vessel } finora si leggeva con l’areometro. Se è ciò che mostra l’areometro, effettivo è { $true }. Quale è?
not_whole = { $label } { $typed }: questi si contano interi. Ricontrollare.
unit_odd = { $label } è digitato in { $typed }, accanto a { $other } nella stessa annotazione. Quale unità si è letta?
late-same_hour = Digitato { $after } dopo la lettura, alla stessa ora. Guardare il giorno.
flow_jump = Portata { $flow }, { $usual } a metà delle ultime { $readings } letture. Ricontrollare, o annotare che cosa è cambiato.
run_order-no_first_drop = Le teste sono tagliate ma la prima goccia non è annotata, come nella cotta precedente. Annotarla con la sua ora.
gauged_empty = Il registro non ha nulla in { $vessel }, e vi si accertano { BARE($pure) } { of-pure }. È il recipiente giusto? Se sì, annotarne il riempimento.
distilled_off = Distillato a { $said }, e { BARE($now) } { pct } nella raccolta: vi sta al titolo a cui è uscito dall’alambicco. Guardare entrambi.
lab_off = Il laboratorio ha trovato { $found }, il registro ha { BARE($held) } { pct } in { $vessel }. Guardare la cifra, e di quale recipiente è il campione.
dose_off = { $amount } di { $what } per { $mash } di pasta; per tanto è usuale da { BARE($low) } a { $high }. Guardare la cifra e la sua unità.
tare_share = La tara è { $share } del peso lordo, ed era { $usual } nel carico precedente. Guardare entrambi.
tare_share-first = La tara è { $share } del peso lordo, sopra { $most }. Guardare entrambi.
sugar_unlike = Zucchero { $sugar }, e { $last } nel carico precedente della stessa frutta. Ricontrollare.
place_from = { $vessel } si sposta da { $place }; secondo il registro sta a { $booked }. È questo recipiente?
receiver_held = { $vessel } contiene { BARE($held) } { of-pure } secondo il registro; finora si vuotava prima di ogni cotta. Annotare dove sono andati.
remnant_off = { $remnant } prima della raccolta, { $booked } in { $vessel } secondo il registro. Ricontrollare, e cercare uno spostamento non annotato.
remnant_off-strength = Un residuo a { BARE($now) } { pct }, { BARE($held) } { pct } in { $vessel } secondo il registro. Ricontrollare.
run_ungauged =
    Nella cotta precedente{ $run ->
        [none] { "" }
       *[other] , { $run },
    } non è accertata la frazione { $fraction }: { BARE($left) } { of-pure } conterebbero come persi. Prima accertarla.
run_balance = { run-sums } non giustificati.{ run-stillage } Usuale qui: da { BARE($low) } a { $high }.
run_balance-gain = { run-sums } più di quanto è entrato.{ run-stillage } Guardare il titolo del fermentato, le altezze e i residui.
strip_balance = { run-sums } non giustificati.{ run-stillage } La flemma porta { $carried } del fermentato; usuale da { BARE($low) } a { $high }.
strip_balance-gain = { run-sums } più di quanto è entrato.{ run-stillage } Guardare il titolo del fermentato, le altezze e i residui.
run-sums = Usciti { BARE($out) }, entrati { BARE($in) }: { BARE($off) } { pure } ({ $share })
run-stillage =
    { $stillage ->
        [read] { "" }
       *[other] { " " }Borlanda presa a { BARE($stillage) } { pct }.
    }
run_drift = { $now } della carica non giustificati, e { $middle } a metà delle { $runs } cotte precedenti: sopra { $high } cotta dopo cotta. Guardare condensatore, giunti e titolo del fermentato.
fraction_again =
    La frazione { $fraction } { $run ->
        [none] di questa cotta
       *[other] di { $run }
    } è già stata accertata in questo recipiente ({ $at }): { BARE($pure) } { pure }. È lo stesso accertamento, o un’altra cotta?
fraction_twice =
    Teste e code di { $vessel } sono già andate in { $run ->
        [none] una cotta ({ $at })
       *[other] { $run }
    }. Quale cotta le ha avute?
fraction_twice-short = { BARE($feints) } { pure } di teste e code da { $vessel }, { BARE($booked) } { pure-sign } dentro secondo il registro. Le ha avute un’altra cotta, o il loro accertamento è ancora da annotare?
flow_sum = Portata per minuti dà { $flowed } di { $fraction }, la raccolta ha { $got }: { $off } { more-or-less }, dove può essere { $most }. Un taglio annotato tardi, o una raccolta cambiata tardi?
dip_flow = Portata per minuti dà { $flowed } da quando questa raccolta è aperta, l’altezza { $dipped }: { $off } { more-or-less } dentro, dove può essere { $most }. È aperta un’altra raccolta, o il taglio è annotato a un altro minuto?
more-or-less =
    { $side ->
        [more] in più
       *[less] in meno
    }
hearts_share =
    Il cuore è { $now } della carica; da { BARE($low) } a { $high } nelle ultime { $runs } cotte di { $what ->
        [none] questo alambicco
       *[other] { $what }
    }. Vale la pena guardare i tagli.
cask_grew = L’alcole puro { BARE($now) } { pure-sign } ({ BARE($strength) } { pct }) è sopra { BARE($last) } { pure-sign } ({ BARE($last_strength) } { pct }) ({ $at }){ moved-since }; una botte non può guadagnare.
cask_grew-gross = Il lordo { TYPED($gross) } è sopra { TYPED($last) } ({ $at }); può solo scendere, se la botte non è stata colmata.
cask_grew-emptied = { BARE($now) } { pure } nella botte prima di svuotarla, { BARE($booked) } { pure-sign } secondo il registro da { $since }; una botte non può guadagnare. Guardare peso e titolo.
moved-since =
    { $way ->
        [added] { " " }con { BARE($moved) } { pure-sign } aggiunti da allora
        [drawn] { " " }con { BARE($moved) } { pure-sign } prelevati da allora
       *[none] { "" }
    }
cask_strength_slip =
    Il titolo { BARE($now) } { pct } è { APART($off) } { points } { $side ->
        [below] sotto
       *[above] sopra
    } { BARE($last) } { pct } ({ $at }); è usuale meno di { UNITS() ->
        [us] 2 punti proof
       *[metric] un punto
    } l’anno.{ $hint ->
        [none] { "" }
       *[other] { " " }{ $hint }
    }
slip-glass = Come lettura dell’areometro a { TYPED($temp) } sono { BARE($true) } { pct } effettivi.
cask_loss =
    { $rate } l’anno persi da { $since }{ $whole ->
        [none] { "" }
       *[other] { " " }({ $whole } l’anno dal riempimento)
    }: allora { BARE($then) } { of-pure }{ moved-since }, ora { BARE($now) } { pure-sign }. { $others } { $end }
lost-leak = Il titolo è usuale ({ APART($drift) } { points } l’anno): una perdita? Guardare cerchi, fondi, tappo e pavimento.
lost-odd_too = Anche il titolo è strano: è la botte giusta? Ripesarla e rileggerla.
lost-by_size =
    Le botti di questa misura perdono da { $size ->
        [small] 5 a 8
       *[large] 2 a 4
    } %.
lost-by_others = Delle { $casks } botti più simili, le più hanno perso da { BARE($low) } a { $high }.
lost-by_all = Delle { $casks } botti più simili, le più hanno perso circa { $lost }.
cask_life = Secondo il registro { BARE($booked) } da { $since }, nella botte { BARE($now) }: { BARE($gone) } { pure } ({ $share }) spariti. Una perdita? Guardare pavimento e doghe; annotarla come perdita.
cask_drift =
    Il titolo è andato da { BARE($last) } a { BARE($now) } { pct } ({ APART($drift) } { points } l’anno); in un posto { $place ->
        [damp] umido ({ $humidity } di umidità) il distillato cala di grado
       *[dry] secco ({ $humidity } di umidità) il distillato sale di grado
    }. Botte giusta, posto giusto?
fill_level =
    { $litres } in { $cask }, { $share } di quanto contiene. { $casks ->
        [none] Una botte si riempie almeno a { $usual }.
       *[other] Le { $casks } botti più simili erano riempite a circa { $usual }.
    } Guardare bilancia e unità, e se è questa botte.
cask_earlier = { BARE($odd) } { pct } e { BARE($odd_pure) } { of-pure } ({ $at }) stanno da soli: prima { BARE($before) } e { BARE($before_pure) }, ora { BARE($now) } e { BARE($now_pure) }. Guardare quell’annotazione; questa va con tutte le altre.
gauge_earlier = { BARE($odd) } { pct } ({ $at }) stanno da soli: prima { BARE($before) } e ora { BARE($now) }. Guardare quell’annotazione; questa va con tutte le altre.
cask_unlike =
    Il titolo è { APART($off) } { points } { $side ->
        [below] sotto
       *[above] sopra
    } { BARE($last) } { pct } ({ $at }); delle { $casks } botti più simili, le più sono andate di { APART($usual) } l’anno. Rileggere.
tare_off = { $cask } pesa { TYPED($tare) } a vuoto; in elenco { TYPED($listed) }. Guardare la bilancia, e se è questa botte.
soakage = Vuota { TYPED($empty) }, vecchia tara { TYPED($tare) }: tiene { $kept }, dove una botte di questa misura tiene da { BARE($low) } a { $high }. È sgocciolata? Guardare la tara.
soakage-light = Vuota { TYPED($empty) } è sotto la vecchia tara { TYPED($tare) }; un legno che ha tenuto distillato pesa da { BARE($low) } a { $high } in più. Bilancia o tara è sbagliata.
places_swapped = { $vessel } trovato a { $place } e { $other } a { $booked }: si sono scambiati il posto, non manca nulla. Se è così, dire che si mantiene, e il registro li ha così.
place_differs =
    { $vessel } trovato a { $place }; { $booked ->
        [none] il registro non ne ha il posto
       *[other] il registro lo ha a { $booked }
    }. Se è là, dire che si mantiene. Contare anche che cosa sta là.
cask_missing =
    { $vessel } non trovato{ $booked ->
        [none] { "" }
       *[other] , { BARE($booked) } { of-pure } secondo il registro
    }. Cercarlo subito. Se non c’è più, annotare la perdita e denunciarla.
not_in_book =
    Non nel registro: «{ $label }»{ $place ->
        [none] { "" }
       *[other] { " " }a { $place }
    }. Pesarlo, trovarne le carte, e aggiungerlo; cercarne uno che il registro ha e nessuno ha trovato.
reduce_target =
    { BARE($now) } { pct } misurati, { BARE($target) } { pct } voluti: { APART($off) } { points } { $side ->
        [strong] di troppo.{ reduce-water }
       *[weak] di meno. Deve entrare distillato; l’acqua non può uscire.
    }{ $balance ->
        [none] { "" }
       *[other] { " " }{ $balance }
    }
reduce-water =
    { $water ->
        [none] { "" }
       *[other] { " " }In massa ancora { $water } di acqua.
    }
reduced-dip = { reduced-has }: guardare l’altezza.
reduced-no_loss = { reduced-has }: nessuna perdita.
reduced-shrinks = { $before } e { $water } di acqua fanno { $dip }, non { BARE($sum) }: la miscela si contrae. { reduced-has }: nessuna perdita.
reduced-has = Alcole puro { BARE($pure) } { pure-sign }, { BARE($booked) } { pure-sign } secondo il registro
contraction_forgotten = { $water } di acqua è quanto chiederebbero i soli volumi. I volumi non si sommano: vi staranno { $volume }, non { BARE($sum) }, a { BARE($strength) } { pct }. Per { BARE($target) } { pct } ne servono { $needed }: { $more } in più. L’alcole puro resta com’era.
filter_loss = { filter-sums } trattenuti da filtro e linea. Usuale: da 0,3 a 1 %. Guardare strati, fondo e le due altezze.
filter_gain = { filter-sums } più di quanto è entrato. Un filtro non fa distillato: guardare le due altezze e i titoli.
filter-sums = Prima { BARE($before) }, dopo { BARE($after) }: { BARE($off) } { pure } ({ $share })
filter_before = { BARE($before) } { pure } in { $vessel } prima del filtro, { BARE($booked) } { pure-sign } secondo il registro. Guardare l’altezza prima, poi cercare uno spostamento non annotato.
bottling_balance = { bottling-sums } non giustificati. Usuale: da 0,3 a 1 %. Ricontare bottiglie e cartoni.
bottling_gain = { bottling-sums } più di quanto conteneva il serbatoio. Guardare conteggio, formato e accertamento del serbatoio.
bottling-sums = Serbatoio { BARE($tank) }, bottiglie { BARE($bottles) }, fondo e linea { BARE($line) }: { BARE($off) } { pure } ({ $share })
label_strength =
    Il serbatoio è a { BARE($tank) } { pct }, l’etichetta dice { BARE($label) } { pct }: { APART($off) } { points } { $side ->
        [above] sopra
       *[below] sotto
    }. Al titolo in etichetta le bottiglie terrebbero { BARE($by_label) } { pure }, secondo il serbatoio { BARE($by_tank) } { pure-sign }.
label_strength-before = { BARE($tank) } { pct } nel serbatoio, { BARE($label) } { pct } in etichetta: { APART($off) } { points } di differenza, dove può essere { APART($most) }. Rettificare titolo o etichetta prima di imbottigliare.
label_strength-bottles = { BARE($found) } { pct } nelle bottiglie, { BARE($label) } { pct } in etichetta. Fermare la linea, mescolare il serbatoio e rileggere.
fill_off-least = { $found } nella meno piena; per questo formato il minimo è { $least } ({ fill-law }). { fill-set }
fill_off-most = { $found } nella più piena; per questo formato il massimo è { $most } ({ fill-law }). { fill-set }
fill_mean = { $mean } in media: una partita non può stare in media sotto l’etichetta (direttiva 76/211/CEE, a memoria). { fill-set }
fill-law =
    { $place ->
        [US] 27 CFR 19.356
       *[EU] direttiva 76/211/CEE, a memoria
    }
fill-set = Regolare la riempitrice, e guardare le bottiglie dall’ultimo controllo.
case_count =
    { $cases } cartoni da { $per_case } fanno { $in_cases }, con { $library } per l’archivio { $together }; contate { $good } bottiglie buone: { $off } { $side ->
        [many] di troppo
       *[few] in meno
    }. Ricontare cartoni e bottiglie.
bottled_low = { BARE($label) } { pct } in etichetta. { $law } { law-caution }
barrelled_high = { BARE($strength) } { pct } nella botte. { $law } { law-caution }
law-caution = Un avviso, non un parere legale: guardare il testo in vigore, e chiedere a chi lo conosce.
law-bottled-at_least = { law-subject }: si imbottiglia ad almeno { law-strength }{ law-source }
law-distilled-below = { law-subject }: si distilla sotto { law-strength }{ law-source }
law-distilled-at_most = { law-subject }: si distilla al massimo a { law-strength }{ law-source }
law-distilled-at_least = { law-subject }: si distilla ad almeno { law-strength }{ law-source }
law-barrelled-at_most = { law-subject }: entra in botte al massimo a { law-strength }{ law-source }
law-aged = { law-subject }: sta in legno almeno { $value }{ law-source }
law-strength =
    { UNITS() ->
        [us] { APART($value) } proof
       *[metric] { $value }
    }
law-subject = { CAPITAL($called) }, { $place }
law-source =
    { $note ->
        [none] { "" }
       *[other] , { $note }
    } ({ $source }{ $known ->
        [read] { "" }
       *[memory] , a memoria
    }).
law-spirit-geist = Geist
law-spirit-beer_spirit = acquavite di birra
law-spirit-brandy = brandy
law-spirit-cider_or_perry_spirit = acquavite di sidro di mele o di pere
law-spirit-fruit_marc_spirit = acquavite di residui di frutta
law-spirit-fruit_spirit = acquavite di frutta
law-spirit-grape_brandy = brandy d’uva
law-spirit-grape_marc_spirit = acquavite di vinaccia
law-spirit-honey_spirit = acquavite di miele
law-spirit-lees_spirit = acquavite di fecce
law-spirit-neutral_spirits = distillato neutro
law-spirit-raisin_spirit = acquavite di uve secche
law-spirit-rye_whisky = rye whisky
law-spirit-spirit_drink = bevanda spiritosa
law-spirit-spirit_of_macerated_fruit = acquavite di frutta macerata
law-spirit-straight_whisky = straight whisky
law-spirit-whisky = whisky
law-spirit-wine_spirit = acquavite di vino
law-note-charred_oak =
    { UNITS() ->
        [us] 62,5 % vol
       *[metric] 125 proof
    }; in rovere nuovo carbonizzato
law-note-160_proof =
    { UNITS() ->
        [us] 80 % vol
       *[metric] 160 proof
    }
law-note-190_proof =
    { UNITS() ->
        [us] 95 % vol
       *[metric] 190 proof
    }
law-note-80_proof =
    { UNITS() ->
        [us] 40 % vol
       *[metric] 80 proof
    }
law-note-before_caramel = prima che il caramello ne adegui il colore
law-note-casks_700 = in botti di al massimo 700 L
law-note-small_oak = in botti di rovere sotto 1000 L
law-note-large_oak = in recipienti di rovere da 1000 L o più
law-note-immature_brandy = in rovere; più giovane è immature brandy. Per gli altri brandy di frutta là non c’è minimo
law-note-straight = per dirsi straight
lab_over =
    { lab-result } è { $sense ->
        [at_least] sotto
       *[at_most] sopra
    } il { lab-law }. { $sort ->
        [target] Un obiettivo non è un limite: chiedere a chi conosce la legge che cosa impone.
       *[other] Non imbottigliare né vendere su questa base: chiedere al laboratorio, e a chi conosce la legge.
    } { lab-caution }
lab_not_safely =
    { lab-result } non è con certezza { $sense ->
        [at_least] sopra il { lab-law }: un altro laboratorio può trovare solo { BARE($at_worst) }
       *[at_most] sotto il { lab-law }: un altro laboratorio può trovare fino a { BARE($at_worst) }
    }. Farlo analizzare di nuovo prima di farvi conto. { lab-caution }
lab_under =
    { lab-result } è { $sense ->
        [at_least] sopra il { lab-law }; un altro laboratorio può trovare solo { BARE($at_worst) }
       *[at_most] sotto il { lab-law }; un altro laboratorio può trovare fino a { BARE($at_worst) }
    }. Parla del solo campione.
lab_strength = { $substance } è stampato per litro o chilogrammo di bevanda; il limite è per alcole puro. Digitare il titolo effettivo dal certificato.
lab-result =
    { $below ->
        [yes] { $substance }, non trovato con un metodo che inizia a { $found },
       *[no] { $substance } { $found }
    }
lab-law =
    { $sort ->
        [target] valore obiettivo
        [action] valore d’intervento
       *[limit] limite
    } di { BARE($limit) } per { $called }, { $place } ({ $source })
lab-caution = Decidono il certificato di un laboratorio accreditato e la legge locale, non questo registro.
unknown_bottling =
    Nel registro nessun imbottigliamento si chiama { $batch }{ $case ->
        [none] { "" }
       *[other] { " " }e ha il cartone { $case }
    }. Guardare il segno di lotto, o consegnare prima la chiusura dell’imbottigliamento.
unknown_bottling-several = { $bottlings } imbottigliamenti rispondono a { $batch }. Digitare anche il primo cartone, come sta sul cartone.
bottling-named =
    { $bottling ->
        [none] L’imbottigliamento
       *[other] { $bottling }
    }
more_than_bottled = { bottling-named }: { $good } imbottigliate, { $gone } uscite, { $on_hand } in giacenza secondo il registro; { $now } ora sono { $more } più di quante ci sono. Contarle, e cercare un’uscita annotata due volte.
more_than_bottled-back = { bottling-named }: { $good } imbottigliate, { $on_hand } in giacenza secondo il registro; { $back } non possono tornare tutte. È questa partita?
other_case = Il cartone { $case } non è di questo imbottigliamento: ha da { $first } a { $last }. Riguardare il cartone.
case_numbers = I cartoni da { $first } a { $last } sono { $cases }; digitati { $typed }. Quale è giusto?
case_gone = Il cartone { $case } è già uscito secondo il registro. Questa uscita è annotata due volte? Altrimenti guardare i numeri.
case_gone-several = I cartoni da { $first } a { $last } sono già usciti secondo il registro. Questa uscita è annotata due volte? Altrimenti guardare i numeri.
bottles_short = { $on_hand } bottiglie in giacenza secondo il registro, { $counted } contate: { $off } mancanti. Ricontare, poi cercare un’uscita non annotata. Un ammanco non spiegato di distillati imbottigliati negli US è tassato (27 CFR 19.465).
bottles_over = { $on_hand } bottiglie in giacenza secondo il registro, { $counted } contate: { $off } in più. Ricontare, poi cercare un’uscita non annotata.
transit_loss = { transit-sums } persi in viaggio. Oltre { $most } va denunciato (27 CFR 19.462). Guardare i sigilli e riaccertare, poi denunciare.
transit_gain = { transit-sums } più di quanto dicono le carte. Guardare titolo, temperatura e che cosa stava prima nel recipiente.
transit-sums = Inviati { BARE($sent) }, ricevuti { BARE($received) }: { BARE($off) } { pure } ({ $share })
goods_short = { $short } di { $bottles } bottiglie mancavano o erano rotte. Ricontarle, scriverlo sulle carte, e avvisare lo speditore: su ciò che manca può essere dovuta accisa.
seals_broken = I sigilli non erano integri. Tenere il carico a parte, accertarlo, e avvisare subito speditore e autorità.
vat_draws = «{ $part }» non nomina un recipiente con un peso. Scrivere sigla e chilogrammi, come C001-Z 153.7.
vat_vessel = Nel registro non c’è il recipiente { $mark }. Riguardare la sigla.
vat_short = Previsti { $planned } da { $vessel }, { $booked } secondo il registro. Ripianificare.
tasting_named = Nel registro sta già una degustazione { $name }. Dare a questa un altro nome.
tasting_part = «{ $part }» non si può leggere. Scriverlo come mostra l’aiuto accanto alla casella.
tasting_vessel = Nel registro non c’è il recipiente { $mark }, ed è un campione di questa degustazione. Riguardare la sigla.
tasting_heads = { $vessel } contiene teste. Le teste non si assaggiano mai: toglierlo, e gettare ciò che è stato versato.
tasting_glasses = { $person } ha una serie che non è di { $wanted } bicchieri. Estrarre di nuovo i codici.
tasting_unknown = Il registro non ha la degustazione { $name }. Guardarne il nome sul foglio di servizio.
tasting_after = La degustazione { $name } era aperta prima di questa risposta, che quindi non conta. L’orologio del telefono era giusto?
tasting_taster = { $person } non è fra gli assaggiatori di { $name }, quindi non conta. Chi ha assaggiato?
tasting_set = { $person } non ha la serie { $set }, quindi non conta. Guardare il foglio di servizio.
tasting_twice = { $person } ha già risposto alla serie { $set }. Conta la prima risposta.
tasting_code = In questa serie non c’era il bicchiere { $code }, quindi la risposta non conta. Guardare i bicchieri.
tasting_order = Un ordine nomina ognuno dei { $glasses } bicchieri una volta. Questo no, quindi non conta.
tasting_again = La degustazione { $name } è già stata aperta. Conta la prima apertura.
tasting_seal = Non è la chiave con cui { $name } è stata sigillata. Aprirla dalla sua pagina in ufficio.
tasting_early = Aperta con { $came } di { $sets } risposte. Le altre non conteranno.
tasting_cited = Nel registro nessuna degustazione { $name } è aperta. Guardarne il nome, o prima aprirla.
floor-back = Indietro
floor-check_bottles = Controllare bottiglie
floor-now = ora
floor-one_less = Uno in meno
floor-glass = Areometro
floor-spirit = Distillato
floor-ferments = Fermentazioni
floor-readings_round = Giro di letture
floor-regauge_round = Giro di rimisurazione
floor-tap_it_in_the = toccarlo nella lista
floor-all_places = Tutti i posti
floor-scan_the_next = Scansionare il prossimo
floor-skip = Saltare
floor-the_slate = La lavagna
floor-as_casks_like_it = come botti simili
floor-stock_count = Inventario
floor-gravity = Densità
floor-cases_to = cartoni da { $case_from } a { $case_to }
floor-another = un altro
floor-bottles = { $bottles } bottiglie
floor-not_in_the_book = Non nel registro
floor-volume = Volume
floor-scan = Scansionare
floor-off = no
floor-on = sì
floor-true_strength = Titolo effettivo
floor-best = migliore
floor-waits_on_this_phone = , attende su questo telefono
floor-read = letto
floor-heads = teste { $heads_l }
floor-pinfirst-it_goes_into_the = Va nei conti
floor-checks-about_as_many_over = circa tante sopra quante sotto (27 CFR 19.356)
floor-checks-100_on_average_76 = 100 in media (76/211/CEE, a memoria)
floor-line-bottling = Imbottigliamento
floor-line-the_line = la linea
floor-line-fill_of_the_label = Livello, % dell’etichetta
floor-line-label = etichetta
floor-line-least = minimo
floor-line-most = massimo
floor-line-strength = Titolo, { $unit }
floor-line-close_the_bottling = Chiudere l’imbottigliamento
floor-line-outside_what_may_be = Fuori da ciò che può essere: regolare la riempitrice, e guardare le bottiglie dall’ultimo controllo.
floor-view-the_line = La linea
floor-view-fill_average = Livello, media
floor-view-of_the_label_last = % dell’etichetta, ultimo { $last }
floor-view-last_strength = Ultimo titolo
floor-view-average = media { $mean } { $sign }
floor-view-tank_fills = Serbatoio basta per
floor-view-of_at_most = da { $size_l }, al massimo
floor-view-checks_over_under =
    { PLURAL($count) ->
        [one] { $count } controllo
       *[other] { $count } controlli
    }{ $spread }; { $over } sopra, { $under } sotto l’etichetta.
floor-view-spread = , dispersione { $spread }
floor-view-next_check = Prossimo controllo
floor-view-the_first_take_bottles = Il primo. Prendere { $count } bottiglie dalla linea, pesarle, leggerne il titolo.
floor-view-at_bottle = alla bottiglia { $at_bottle }
floor-view-as_the_house_wants = come vuole la casa
floor-view-bottles_filled = bottiglie riempite
floor-view-late = in ritardo
floor-view-next_check_in = Prossimo controllo tra
floor-view-the_next_check_was = Il controllo era da fare { $due_at }
floor-view-next_check_2 = Prossimo controllo { $due_at }
floor-view-about = circa
floor-view-or = o
floor-view-every_min = , ogni { $every_min } min
floor-view-line = Linea
floor-view-type_the_bottles_filled = Digitare le bottiglie riempite a due controlli, e qui sta la velocità.
floor-view-filled_the_next_count = { $filled } riempite. Il prossimo conteggio dà la velocità.
floor-view-an_hour = all’ora
floor-view-ends_about = Finisce circa
floor-view-to = , da { $soonest } a { $latest }
floor-view-the_tank_is_through = Il serbatoio è finito, secondo il conteggio.
floor-view-of_counted = { $filled } di { $bottles } contate{ $by }
floor-view-about_by_now = , circa { $expected } a quest’ora
floor-view-cases_packed = Cartoni fatti
floor-view-one_more_than = Uno più di
floor-view-bottles = { $per_case } bottiglie
floor-view-bottles_in_a_case = Bottiglie per cartone, per contare i cartoni a tocchi
floor-view-each_bottle_full = Ogni bottiglia piena al { $low } %{ $high }, { $words }.{ " " }
floor-view-or_more = { " " }o più
floor-view-to_2 = { " " }a { $high }
floor-view-strength_to_for_a = Titolo da { $low } a { $high } per un’etichetta di { $label_pct }.
floor-view-by_the_cases = { $so_far } secondo i cartoni
floor-view-empty_bottle_with_closure = Bottiglia vuota con chiusura, g
floor-view-bottle_full_g = Bottiglia { $n }, piena, g
floor-view-one_more_bottle = Un’altra bottiglia
floor-view-labels_and_closures_right = Etichette e chiusure giuste
floor-view-yes = sì
floor-view-no = no
floor-view-fill_by_hand_bottle = livello a mano, formato, che cosa si è fatto
floor-view-bottle_size = Formato bottiglia
floor-view-l = L
floor-view-done_if_wrong = Fatto se sbagliato
floor-view-g = g
floor-view-full = piena al { $mean } %
floor-view-on_average_of = in media di { $fills }: { $fill }. { $words }
floor-view-which_tank_runs_to = Quale serbatoio va alla linea?
floor-view-no_tank_has_spirit = Nessun serbatoio contiene distillato, per quanto sa questo telefono. Prima accertare il serbatoio d’imbottigliamento.
floor-casks-casks = Botti
floor-casks-cask_is = La botte è
floor-casks-now = ora.
floor-card-tasted_of_10 = Assaggiata { $tasted_at }: { $score } su 10.
floor-card-gauges_of_this_fill = Accertamenti di questo riempimento
floor-card-casks_like_it = { $count } botti simili
floor-card-such_a_size = tale misura
floor-card-a_year = % l’anno
floor-card-lost_of_its_pure = { $name } ha perso il { $share } % del suo alcole puro l’anno; { $like } perdono da { $low } a { $high }.
floor-dial-of = { $words } di { $high }
floor-due-closed_the_still_is = Chiusa: si attende l’alambicco.
floor-due-ended_close_it_and = Finita: chiuderla, e prenotare l’alambicco.
floor-due-not_read_since_it = Non letta da quando è piena.
floor-due-casks_to_regauge = Botti da rimisurare
floor-due-never_gauged_in_this = Mai accertata in questo riempimento.
floor-due-casks_to_sample = Botti da campionare
floor-due-never_sampled = Mai campionata.
floor-due-casks_to_taste = Botti da assaggiare
floor-due-never_tasted = Mai assaggiata.
floor-due-last = Ultimo { $last }.
floor-due-every_months = { $title }, ogni { $months } mesi
floor-due-check_due =
    { $title }: controllo { $late ->
        [yes] scaduto
       *[no] da fare
    } { $date }.
floor-due-instruments = Strumenti
floor-due-by_law = Per legge
floor-due-the_three_reports_for = Le tre dichiarazioni di { $month } scadono il 15.
floor-due-the_quarter_ends_count = Il trimestre finisce: contare i serbatoi di magazzino.
floor-due-count_of_bottled_stock = Conteggio delle bottiglie; l’ufficio federale va avvisato cinque giorni lavorativi prima.
floor-round-of = { $done } di { $cards }
floor-round-of_done = { $done } di { $cards } fatti
floor-round-another_of_round =
    { $noun ->
        [tank] Un altro serbatoio
       *[cask] Un’altra botte
    }
floor-round-place = Posto
floor-round-begin_a_new_round = Iniziare un nuovo giro
floor-round-logged_another_reading_stands = Annotato { $last }. Un’altra lettura vi sta accanto.
floor-round-log_it_next = Annotare, prossimo
floor-round-next_of_round =
    { $noun ->
        [tank] Prossimo serbatoio
       *[cask] Prossima botte
    }
floor-round-is_not_on_this = { $mark } non è in questo giro: { $sort }.
floor-round-it_is_a = è di tipo { $sort }
floor-round-it_holds_nothing_as = non contiene nulla, per quanto sa il registro
floor-round-this_phone_knows_no = Questo telefono non conosce { $mark }. Annotarlo sulla sua pagina quando il telefono avrà avuto segnale.
floor-round-all_done =
    { $noun ->
        [tank] Tutti i { $count } serbatoi sono fatti
       *[cask] Tutte le { $count } botti sono fatte
    }.
floor-round-none_to_go_to =
    { $noun ->
        [tank] Nessun serbatoio
       *[cask] Nessuna botte
    } da visitare: nulla è pieno, per quanto sa questo telefono.
floor-says-ended_three_equal_gravities = Finita: tre densità uguali dal { $day }. Prenotare l’alambicco.
floor-says-not_moving_and_not = Ferma e non finita. Guardare temperatura, acido e nutrimento.
floor-says-it_has_hardly_begun = Ha appena iniziato a scendere: ancora nessun giorno.
floor-says-no_day_yet_it = Ancora nessun giorno: servono quattro letture.
floor-says-to = { " " }(da { $low } a { $high })
floor-says-ends_about_near_three = Finisce circa { $day }{ $span }, vicino a { $end_gravity }. Decidono tre densità uguali.
floor-says-much_at_a_usual = Molto, a titolo usuale: una perdita? Guardare cerchi, fondi, tappo e pavimento.
floor-says-the_weight_is_usual = Il peso è usuale, il titolo strano. Rileggere l’areometro.
floor-says-weight_and_strength_are = Peso e titolo sono entrambi strani. È la botte giusta?
floor-says-a_cask_cannot_gain = Una botte non può guadagnare. Ripesare e rileggere.
floor-says-to_2 = da { $low } a { $high }
floor-says-casks_like_it_compared = botti simili { $span } ({ $count } confrontate)
floor-says-such_a_size = tale misura { $span }
floor-says-first_gauge_of_this = Primo accertamento di questo riempimento, o troppo presto per un andamento; { $like } % l’anno.
floor-says-a_year = l’anno; { $like }.
floor-says-a_year_2 = l’anno; { $like }. { $words }
floor-tasting-fruit = frutto
floor-tasting-stone = nocciolo
floor-tasting-almond = mandorla
floor-tasting-blossom = fiori
floor-tasting-spice = spezie
floor-tasting-green = verde
floor-tasting-sharp = pungente
floor-tasting-glue = colla
floor-tasting-smoke = fumo
floor-tasting-dust = polvere
floor-tasting-words_of_the_house = Parole della casa
floor-tasting-words_to_tap = Parole da toccare
floor-tasting-take_off = togliere { $name }
floor-tasting-take_off_2 = togliere
floor-tasting-may_stay_empty = può restare vuoto
floor-tasting-log = Annotare: { $words }
floor-duelist-rounds = Giri
floor-duelist-taste = Assaggiare
floor-ferments-mash = Pasta
floor-ferments-last_read = Letto l’ultima volta { $last }.
floor-ferments-not_read_yet = Non ancora letto.
floor-counter-one_more = Uno in più
floor-counter-10_ten_more = +10, altri dieci
floor-counter-count = conteggio
floor-counter-keys = tasti
floor-dress-or_type_it = o digitarlo
floor-dress-of_to = da { $case_from } a { $case_to }
floor-dress-from = { $cases } da { $dressed }
floor-dress-to = da { $from } a { $to }
floor-dress-to_stand = fino a { $to } presenti
floor-dress-follows_the_last = segue l’ultimo
floor-dress-as_before = come prima
floor-dress-of = { $cases } da { $per_case }
floor-dress-by_the_cases_of = secondo i cartoni della linea
floor-dress-vessels = { $count } recipienti
floor-dress-as_the_book_has = come l’ha il registro
floor-dress-more_than_there_are = ; { $left } più di quante ci sono
floor-dress-left = ; { $per_case } restano
floor-round-bottled_goods = bottiglie
floor-round-elsewhere = altrove
floor-round-of_done_2 = { $done } di { $items } fatti
floor-round-none = Nessuno
floor-round-empty = Vuoto
floor-round-what_says_it_on = Che cosa c’è scritto?
floor-round-type_what_it_says = Digitare che cosa c’è scritto.
floor-round-next_vessel = Prossimo recipiente
floor-round-this_round_has_no = Questo giro non ha { $mark }. Se non è affatto nel registro, dirlo sotto «Un altro».
floor-round-left = { $open } da fare
floor-round-all_done_2 = tutto fatto
floor-round-type_who_counted_name = Digitare chi ha contato, nome e qualifica.
floor-round-counts_on_slate =
    { PLURAL($count) ->
        [one] { $count } conteggio
       *[other] { $count } conteggi
    } sulla lavagna.
floor-roundview-where = Dove
floor-roundview-one_place_after_another = Un posto dopo l’altro. Non si dice che cosa attende il registro; le differenze stanno alla fine, e si firma ciò che si è contato.
floor-roundview-nothing_to_count_as = Nulla da contare, per quanto sa questo telefono: nessun serbatoio, botte o bottiglia è sulle sue schede.
floor-roundview-of_counted = { $done } di { $items } contati
floor-roundview-left = { $done } da fare
floor-roundview-another_or_the_end = Un altro, o la fine
floor-roundview-in_this_round = In questo giro
floor-roundview-to_the_differences = Alle differenze
floor-roundview-cask = Botte
floor-roundview-it_should_stand_at = Dovrebbe stare a
floor-roundview-the_book_has = Il registro ha
floor-roundview-no_place = nessun posto
floor-roundview-for_it = per questo
floor-roundview-it_stands_elsewhere = Sta altrove
floor-roundview-type_the_place = digitare il posto
floor-roundview-place_as_its_label = Posto, come dice la sua etichetta
floor-roundview-not_here = Non qui
floor-roundview-it_is_here = È qui
floor-roundview-count = Contare
floor-roundview-by_weight_or_corrected = In peso, o corretto
floor-roundview-and_a_remark = e una nota
floor-roundview-counted_next = Contato, prossimo
floor-roundview-what_it_says_on = Che cosa c’è scritto
floor-roundview-where_it_stands = Dove sta
floor-roundview-differences = Differenze
floor-roundview-differences_from_the_book = Differenze dal registro
floor-roundview-as_the_book_has = Come l’ha il registro
floor-roundview-not_counted = Non contato
floor-roundview-sign = Firmare
floor-roundview-counted_by_name_and = Contato da, nome e qualifica
floor-roundview-each_count_goes_into = { $lead }Ogni conteggio va nel registro com’è stato letto, al suo minuto. Una differenza vi resta come domanda finché qualcuno risponde.
floor-roundview-signed_under_penalties_of = Firmato sotto pena di spergiuro: vero, corretto e completo per quanto so (27 CFR 19.45, 19.623; guardare il testo di oggi).{ " " }
floor-roundview-nothing_is_counted_yet = Ancora nulla contato.
floor-roundview-another_place = Altro posto
floor-roundview-go_on_counting = Continuare a contare
floor-roundview-sign_and_log =
    Firmare e annotare { PLURAL($count) ->
        [one] il conteggio
       *[other] { $count } conteggi
    }
floor-roundview-count_again = Ricontare
floor-roundview-nothing_where_it_should = Nulla dove dovrebbe essere. Cercarlo subito; avvisare chi va avvisato.
floor-roundview-not_in_the_book = non nel registro
floor-roundview-at = { $litres } a { $strength_pct }
floor-roundview-at_2 = a { $place }
floor-roundview-here = qui
floor-roundview-book = registro { $bottles }
floor-roundview-book_2 = registro { $place }{ $lpa_l }
floor-roundview-book_3 = registro { $litres }{ $strength_pct }
floor-roundview-at_3 = { $litres } a{ " " }
floor-roundview-book_empty = registro vuoto
floor-stock-loose = { $loose } sciolte
floor-stock-none_left = nessuna rimasta
floor-aloud-degrees = gradi
floor-aloud-degrees_fahrenheit = gradi Fahrenheit
floor-aloud-percent = per cento
floor-aloud-litres = litri
floor-aloud-kilos = chili
floor-aloud-grams = grammi
floor-aloud-brix = brix
floor-aloud-gallons = galloni
floor-aloud-pounds = libbre
floor-aloud-minus = meno{ " " }
floor-gloves-more_fields =
    { PLURAL($count) ->
        [one] { $count } altro campo
       *[other] { $count } altri campi
    }
floor-listening-the_microphone_is_not = Qui il microfono non è permesso. Permetterlo per questo sito nelle impostazioni del browser, o digitare.
floor-listening-no_figure_was_heard = Non si è sentita nessuna cifra. Ridirla, o digitarla.
floor-listening-heard_no_figure_say = Sentito «{ $heard }»: nessuna cifra. Ridirla, o digitarla.
floor-listening-heard_but_this_box = Sentito «{ $heard }», ma questa casella prende { $symbol }.
floor-listening-or = { " " }o{ " " }
floor-settings-of_this_phone_alone = solo di questo telefono
floor-settings-voice_and_ear_are = Voce e ascolto sono del telefono: nulla di ciò che si dice ne esce.
floor-settings-its_icon_shows_how = La sua icona mostra quante annotazioni attendono, quando è nella schermata Home.
floor-settings-what_waits_is_handed = Ciò che attende si consegna anche ad app chiusa, quando arriva una rete.
floor-settings-gloves = Guanti
floor-settings-larger_keys_fewer_boxes = tasti più grandi, meno caselle
floor-settings-buzz = Vibrazione
floor-settings-when_it_is_logged = quando si annota, e per una domanda
floor-settings-read_aloud = Ad alta voce
floor-settings-figures_just_typed_and = cifre appena digitate, e domande
floor-settings-gravity_1_031 = Densità: 1,031
floor-settings-speak_figures = Dettare le cifre
floor-settings-into_the_box_your = nella casella; un tocco le annota
floor-settings-fetch_the_language_for = Prendere la lingua per questo
floor-settings-it_is_on_this = Ora è su questo telefono.
floor-settings-it_could_not_be = Non si è potuta prendere. Riprovare con segnale.
floor-note-cap_pushed_down = Cappello follato.
floor-note-cooling_is_on = Raffreddamento acceso.
floor-note-smells_odd = Odore strano.
floor-note-read_it_first = Prima leggerlo.
floor-note-charged_not_heated = Caricato, non acceso.
floor-note-rinse_it_first = Prima sciacquarlo.
floor-note-still_warm = Ancora caldo.
floor-note-receivers_are_empty = La raccolta è vuota.
floor-note-weeps_a_little = Trasuda un poco.
floor-note-bung_is_loose = Tappo lento.
floor-note-do_not_move_it = Non spostare.
floor-note-weigh_it_again = Ripesare.
floor-note-it_rests_do_not = Riposa. Non mescolare.
floor-note-it_is_cloudy = È torbido.
floor-note-valve_is_shut = Valvola chiusa.
floor-note-lid_is_off = Coperchio tolto.
floor-note-look_at_it_first = Prima guardarlo.
floor-note-not_finished = Non finito.
floor-note-cleaned = Pulito.
floor-note-out_of_order = Guasto.
floor-note-all_as_usual = Tutto come al solito.
floor-note-ready_words = Parole pronte
floor-note-pin_it_to = Appuntare a { $mark }
floor-note-leave_it_for_the = Lasciare al turno dopo
floor-note-from = Da { $name }.
floor-note-pinned_to = Appuntata a
floor-note-for_the_next_shift = Per il turno dopo
floor-note-it_stands_under_today = Sta sotto Oggi. { $from }
floor-note-pinned_to_2 = Appuntata a { $mark }
floor-note-whoever_opens_it_reads = Chi lo apre la legge. { $from }
floor-note-there_already = Già lì
floor-note-pin_it_to_a = Appuntare a un recipiente
floor-note-heard_by = ascoltata da { $person }
floor-note-read_by = letta da { $person }
floor-note-look = Guardare
floor-note-listen = Ascoltare
floor-note-heard = Ascoltata
floor-note-read = Letta
floor-note-voice_note = Nota vocale
floor-note-voice_note_seconds = Nota vocale, { $seconds } s
floor-note-notes_to_read = Note da leggere
floor-note-read_them = Leggerle
floor-note-notes = Note
floor-note-not_read_yet = Non ancora lette
floor-note-all_read = Tutte le note sono lette.
floor-note-have_been_read = Già lette
floor-note-leave_a_note = Lasciare una nota
floor-note-no_microphone = Il microfono non è ammesso. Permetterlo nelle impostazioni del browser, o digitare la nota.
floor-note-speak_it = Dirla a voce
floor-note-stop = Fermare, { $seconds } s
floor-note-recording = Registrazione
floor-aim-target_as_its_label = Obiettivo: come dice la sua etichetta.
floor-aim-target_as_aimed_at = Obiettivo: come mirato qui, { $date }.
floor-aim-target_as_last_in = Obiettivo: come l’ultima volta in { $name }, { $other }. Guardare se è questa etichetta.
floor-picture-in_the_tank_and = { $litres } nel serbatoio e { $kg } di acqua fanno { $dip20_l } a { $strength_pct }: { $shrinks_l } meno della somma.
floor-picture-at = { $dip20_l } a { $strength_pct }
floor-picture-less_than_the_sum = { $shrinks_l } meno della somma. Nessuna perdita.
floor-picture-of_water = { $kg } di acqua
floor-picture-by_the_can_at = { $can_l } a bidone a { $water_temp_c }
floor-picture-in_the_tank = { $litres } nel serbatoio
floor-picture-it_takes = Contiene { $most }.
floor-picture-would_be_too_much = { $over } sarebbero troppi: prima spostarne.
floor-picture-about_mixed = circa { $figure } mescolato
floor-picture-water = acqua
floor-picture-spirit = distillato
floor-picture-water_at_spirit_at = Acqua a { $water_temp_c }, distillato a { $temp_c }, mescolato circa { $figure } { $unit }, da { $off } a { $off_2 }; senza calore di miscela { $calm }.
floor-picture-target = { $target_pct } obiettivo
floor-picture-sum = calcolo { $sum_pct }
floor-picture-read = letto { $read_pct }
floor-picture-target_by_the_sum = Obiettivo { $target_pct }, per calcolo { $sum_pct }, letto { $read_pct } { $unit }.
floor-reduce-target = Obiettivo
floor-reduce-spirit_is_at = Distillato a
floor-reduce-water_is_at = Acqua a
floor-reduce-with_what_waits_here = , con ciò che attende qui
floor-reduce-reduce = Ridurre
floor-reduce-how_much_water = quanta acqua
floor-reduce-measured = Misurato
floor-reduce-are_in = { $plan } sono dentro
floor-reduce-water_in = Acqua dentro
floor-view-what_it_should_be = Che cosa deve essere
floor-view-a_tenth_less = Un decimo in meno
floor-view-a_tenth_more = Un decimo in più
floor-view-in_goes = Entra in
floor-view-or_the_plain_form = o il modulo semplice
floor-view-in_how_many_goes = In quante volte
floor-view-the_plain_form = Il modulo semplice
floor-view-type_the_strength_it = Digitare il titolo che deve avere.
floor-view-at = a { $temp_c }
floor-view-of_water = { $unit } di acqua
floor-view-for = ± { $doubt_kg } per ± { $at }
floor-view-what_the_tank_should = Che cosa deve segnare poi il serbatoio
floor-view-dip = Altezza, { $unit }
floor-view-as_wanted_no_water = Come voluto: non serve acqua.
floor-view-pour = Versare { $plan }{ $rest }
floor-view-first = { " " }prima.
floor-view-stir_let_it_stand = Mescolare, lasciare finché non scalda più, leggere{ $rest }. Un { $unit } sono { $per } { $one }.
floor-view-once_more = { " " }ancora una volta
floor-view-then_the_rest = , poi il resto
floor-view-planned_by = Pianificato da { $person }, { $planned }: { $name }, { $target_pct }{ $water }.
floor-view-with_of_water = { " " }con { $water_kg } di acqua
floor-view-step_by_step = Passo per passo
floor-view-then_rest = { $water_kg }, poi riposo
floor-view-mixing_warms_it_by = Mescolando si scalda di circa { $warms_c } { $unit }. Lasciare raffreddare e riposare, almeno un giorno, prima di areometro e altezza.
floor-view-it_may_cloud_at = A questo titolo può intorbidarsi, tanto più al freddo. Andare piano, far riposare, e filtrare a freddo se succede.
floor-view-a_long_way_down = Un salto lungo in una volta. Due o tre volte con riposo in mezzo intorbidano meno.
floor-view-water_went_in = Acqua entrata
floor-view-measured_after_the_rest = Misurato dopo il riposo
floor-view-another_minute_a_remark = altro minuto, una nota
floor-view-points = { $off_pct } punti
floor-view-as_wanted = Come voluto.
floor-view-too_weak_spirit_has = { $off } di meno. Deve entrare distillato; l’acqua non può uscire.
floor-view-too_strong_of_water = { $off } di troppo: ancora { $trim_kg } di acqua.
floor-view-the_dip_agrees_with = L’altezza va con il calcolo.
floor-view-dip_off_sum =
    L’altezza è { $litres } { $side ->
        [under] sotto
       *[over] sopra
    } il calcolo: riguardarla.
floor-view-true = { $measured_pct } effettivi.
floor-view-which_tank = Quale serbatoio?
floor-view-no_tank_has_spirit_2 = Nessun serbatoio contiene distillato, per quanto sa questo telefono. Prima accertare il serbatoio.
floor-after-after_the_run = Dopo la cotta
floor-after-this_phone_knows_no = Questo telefono non conosce cotte finite di quell’alambicco.
floor-after-the_balance_comes_when = Il bilancio viene quando si accertano cuore o flemma.
floor-after-balance = Bilancio
floor-after-from_100 = { $amount } da 100 { $unit }
floor-after-less_than_60_of = Meno del 60 % del forfait: guardare frutta, fermentazione e bilancio.
floor-after-more_than_one_and = Oltre una volta e mezza il forfait: guardare i pesi e gli accertamenti.
floor-after-yield = Resa
floor-after-of_wash_of_fruit = , { $per_100_l } di fermentato; { $kg } di frutta per la sua quota della fermentazione.
floor-after-official_flat_rate_for = Forfait ufficiale per { $name }, da 100 L di pasta: { $de_l } L in Germania{ $austria }. I forfait sono medie prudenti, non obiettivi.
floor-after-in_austria = , { $at_l } in Austria
floor-after-charged = Caricato, { $sign }
floor-after-hearts = Cuore, { $sign }
floor-after-hearts_share = Quota del cuore
floor-after-hearts_cut_at = Taglio del cuore a, { $unit }
floor-after-took = Durata
floor-after-from_100_2 = Da 100 { $unit }, { $sign }
floor-after-beside_the_runs_before = Accanto alle cotte precedenti
floor-after-runs_side_by_side = Cotte fianco a fianco
floor-after-best_run = Cotta migliore
floor-after-marked_as_the_best = Segnata come la migliore cotta di { $what }
floor-after-by = da { $person }, { $best }{ $waiting }{ $why }.
floor-after-best_run_2 = Cotta migliore?
floor-after-best_of_so_far = Migliore di { $what } finora: { $name }{ $why }.
floor-after-no_run_of_is = Nessuna cotta di { $what } è ancora segnata.
floor-after-later_runs_are_drawn = Le cotte seguenti si disegnano sopra la migliore.
floor-after-why = Perché
floor-after-mark_this_run_as = Segnare questa cotta come la migliore
floor-balance-heads = teste
floor-balance-stillage = borlanda
floor-balance-not_accounted_for = { $open } ({ $share }) non giustificati
floor-balance-more_than_went_in = { $open } ({ $share }) più di quanto è entrato
floor-balance-in_out_usual_is = Entrati { $charged }, usciti { $open }: { $rest }.{ $stillage_pct } Usuale da 0,5 a 2 %.
floor-balance-stillage_was_not_read = { " " }Borlanda non letta: presa a { $stillage_pct }.
floor-balance-in = entrati { $charged }
floor-balance-out = usciti { $open }
floor-balance-pure_alcohol_of_the = Alcole puro della cotta
floor-changes-that_could_not_be = Non si è potuto conservare. Annotarlo come altro evento.
floor-curve-true_strength_over_pure = Titolo effettivo su alcole puro raccolto
floor-curve-l_pure_alcohol = L di alcole puro
floor-curve-vapour_temperature_against_strength = Temperatura dei vapori contro titolo{ $name }
floor-curve-vapour_c = vapore °C
floor-curve-usual_for_this_still = usuale per questo alambicco
floor-curve-usual = usuale
floor-cutparts-i_switched_earlier = Ho commutato prima
floor-cutparts-why_it_is_logged = Perché si annota ora
floor-cutparts-hands_full = mani occupate
floor-cutparts-both_times_and_the = Le due ore e il motivo restano leggibili.
floor-cutparts-switched_logged = commutato { $at }, annotato { $at_2 }
floor-cutparts-receiver_now_open = Raccolta ora aperta
floor-cutparts-another_receiver = Altra raccolta
floor-cutparts-by_its_mark = con la sua sigla
floor-cutparts-mark = Sigla
floor-cutparts-a_label_at_the = Un’etichetta al misuratore si legge da fuori la linea, o se ne digita la sigla.
floor-due-part_to =
    { $part ->
        [hearts] cuore
        [tails] code
        [low_wines] flemma
       *[heads] teste
    } fino a { $strength }
floor-due-part_to_last_time =
    { $part ->
        [hearts] cuore
        [tails] code
        [low_wines] flemma
       *[heads] teste
    } fino a { $strength } l’ultima volta
floor-due-the_sums_for_it = I calcoli per questo arrivano sul telefono quando raggiunge il registro.
floor-due-read_the_flow_with = Leggere la portata con caraffa e orologio, e dice quando.
floor-due-by_flow_times_minutes = { $litres } per portata per minuti.
floor-due-by_the_plan = { $words }, secondo il piano
floor-due-next_cut = Prossimo taglio
floor-due-is_reached = { $words }: { $by } raggiunto.
floor-due-nose_first = { $words } Prima il naso.
floor-due-about = { $words } { $near }circa { $minutes }
floor-due-is_near = è vicino:{ " " }
floor-due-to = , da { $low } a { $high }
floor-due-off_in_all_to = { $litres } in tutto, da { $low } a { $high }
floor-due-without_earlier_runs = , senza cotte precedenti
floor-due-then_together = ; { $part } allora { $strength_average_pct } insieme
floor-due-strength_alone_the_nose = Solo il titolo; decide il naso.
floor-due-on_earlier_runs_of = Su cotte precedenti di questo alambicco { $kept } di { $tried } previsioni simili contenevano il taglio.
floor-due-was_expected_about = { $words } era atteso circa { $at }.
floor-due-last_read = Ultima lettura { $at }.
floor-due-read_now_nose_first = Leggere ora; prima il naso.
floor-due-no_flow_and_no = Ancora nessuna portata e nessuna altezza lette: con una delle due il foglio somma quanto è uscito.
floor-due-so_far = { $part } finora { $litres }
floor-due-at_together = a { $strength } insieme
floor-due-to_by_off_in = fino a { $until }, per { $by }; { $litres } in tutto
floor-due-flow_times_minutes = portata per minuti
floor-due-dips = altezze
floor-due-dip_of_flow_times = Altezza delle { $at }: { $got }; portata per minuti { $flowed }
floor-due-they_agree = { $both }. Vanno d’accordo.
floor-due-less_or_more_in_receiver =
    { $both }: { $off } % { $side ->
        [less] in meno
       *[more] in più
    } nella raccolta, dove può essere { $most } %. È aperta un’altra raccolta, o un taglio è annotato tardi?
floor-far-large = Grande
floor-far-for_two_metres = per due metri
floor-far-the_run_at_arms = La cotta a distanza
floor-far-close = Chiudere
floor-far-true = { $sign } effettivi
floor-far-no_strength_yet = ancora nessun titolo
floor-far-ago = , { $last } fa
floor-far-next_reading = prossima lettura { $at }, { $at_2 }
floor-far-any_minute = a momenti
floor-far-reached = raggiunto
floor-far-expected_before_now = atteso prima d’ora
floor-far-turn_to = passare a { $to }
floor-far-the_end = la fine
floor-far-in = { $what } tra
floor-far-any = a
floor-far-minute = momenti
floor-far-no_plan_and_no = Nessun piano e nessuna cotta prima: il naso dice quando.
floor-far-is_reached = { $words } raggiunto
floor-far-was_expected = era atteso { $at }
floor-far-between_and = tra { $low } e { $high }
floor-far-open_to = aperto, da { $low } a { $high }
floor-far-of_about = { $litres } di circa { $all }
floor-far-without_earlier_runs = senza cotte precedenti
floor-jug-in_s = { $jug } in { $took } s
floor-jug-the_jug_holds = La caraffa contiene
floor-jug-full = Piena { $seconds }
floor-jug-start_the_watch = Avviare l’orologio
floor-jug-jug_and_watch = caraffa e orologio
floor-second-spirit_runs_at_above = Il distillato esce a { $temp }, sopra { $warm_c }. Subito più acqua al condensatore, e giù il fuoco finché esce freddo: il distillato caldo dà vapori che bruciano.
floor-second-true_is_above_of = Effettivo { $at } è sopra { $true_strength } delle { $last }. Dopo il taglio delle teste scende soltanto, se non cambiano piatti o acqua.
floor-second-vapour_and_spirit_of = Vapore { $vapour } e distillato a { $at } non vanno d’accordo: a quel titolo su questo alambicco è usuale circa { $wanted }. Guardare entrambi.
floor-sheet-by_alcohol = Per alcole
floor-sheet-by_time = Per ora
floor-sheet-vapour = Vapore
floor-sheet-the_curve_is_drawn = La curva è disegnata
floor-sheet-on_after_a_tap = sopra, dopo un tocco
floor-sheet-plan = Piano:
floor-sheet-no_cut_plan_for = Ancora nessun piano dei tagli per { $what } su questo alambicco.
floor-sheet-this_fruit = questa frutta
floor-sheet-change_the_plan = Cambiare il piano
floor-sheet-make_a_plan = Fare un piano
floor-sheet-sound_near_a_cut = Suono vicino al taglio
floor-sheet-hearts_to = cuore fino a { $hearts_to_pct }
floor-sheet-tails_to = code fino a { $tails_to_pct }
floor-sheet-for_on_this_still = Per { $what }, su questo alambicco. Decide il naso; il piano ricorda.
floor-sheet-the_fruit_named_below = la frutta nominata sotto
floor-hands-who_logs = Chi annota
floor-hands-other = Altri
floor-hands-take_it = Prendere
floor-pane-vessels = Recipienti
floor-places-stands_here = sta qui
floor-places-and_more = e altri { $others }
floor-places-free = libero
floor-tasting-set_of = serie { $set_no } di { $mine }
floor-tasting-your_answer_is_on = La risposta è sulla lavagna.
floor-tasting-set = { $name }, serie { $set_no }
floor-view-which_is_the_odd = Quale è diverso?
floor-view-two_of_the_three = Due dei tre sono uguali.
floor-view-the_odd_one = il diverso
floor-view-which_is_the_same = Quale è uguale a R?
floor-view-r_stands_open_beside = R sta aperto accanto ai due.
floor-view-the_same_as_r = uguale a R
floor-view-which_has_more_of = Quale ne ha di più?
floor-view-this_one = questo
floor-view-tap_them_in_order = Toccarli in ordine, il primo per primo.
floor-view-tap_again_to_take = Toccare di nuovo per toglierne uno.
floor-view-guessing = a caso
floor-view-fairly = abbastanza
floor-view-quite = molto
floor-view-nose = naso
floor-view-mouth = bocca
floor-view-finish = finale
floor-view-hotter = più caldo
floor-view-wood = legno
floor-view-softer = più morbido
floor-view-nose_first_a_small = Prima il naso, un piccolo sorso, e sputare. Acqua in mezzo. Al massimo quattro serie, poi riposo; dopo nessuno guida o lavora a un alambicco.
floor-view-place = posto { $code }
floor-view-taste_left_to_right = { $how } Assaggiare da sinistra a destra, acqua in mezzo. Si può tornare indietro. Anche un tentativo è una risposta.
floor-view-glasses_left_to_right = Bicchieri, da sinistra a destra
floor-view-how_sure = Quanto sicuri?
floor-view-what_gave_it_away = Che cosa l’ha tradito? (facoltativo)
floor-view-the_codes_are_drawn = I codici si estraggono da capo per ogni assaggiatore. Questo telefono non sa che cosa contengono.
floor-view-of_in_order = { $order } di { $codes } in ordine
floor-view-name_a_glass = Nominare un bicchiere
floor-view-log = Annotare: { $order }
floor-view-is = { $picked } è { $named }
floor-view-which_tasting_stands_before = Quale degustazione si ha davanti?
floor-view-all_your_sets_are = Tutte le serie hanno risposta. Non parlarne finché non si apre in ufficio.
floor-view-no_glasses_wait_for = Nessun bicchiere attende. Una degustazione si prepara in ufficio; i suoi codici arrivano con le prossime schede.
floor-ring-set_for = { $at }: fissato per { $at_2 }.
floor-ring-set_for_2 = Fissato per { $at }.
floor-ring-set_for_3 = fissato per { $at }{ $more }
floor-ring-more = { " " }· altri { $due }
floor-ring-read = Leggere
floor-ring-min_more = altri { $minutes } min
floor-ring-drop_the_reminder = Togliere il promemoria
floor-ring-drop = Togliere
floor-show-next = Prossima
floor-show-reading = lettura
floor-show-remind_me = Ricordare
floor-show-next_reading = prossima lettura
floor-show-reminders = Promemoria
floor-show-due = da fare
floor-show-when_is_to_be = Quando va letto { $name }?
floor-show-set_for = Fissato per
floor-show-min_after_each_reading = ; { $minutes } min dopo ogni lettura
floor-show-at = A
floor-show-set_it = Fissare
floor-show-minutes_begin_anew_with = I minuti ripartono a ogni lettura.{ " " }
floor-show-no_reminder = Nessun promemoria
floor-show-rings_while_cellarslate_is = Suona mentre Cellarslate è aperto su questo telefono.
floor-show-rings_while_cellarslate_is_2 = Suona mentre Cellarslate è aperto; dietro altre app il telefono mostra un avviso.
floor-show-rings_while_cellarslate_is_3 = Suona mentre Cellarslate è aperto. Il telefono chiederà se può mostrare anche un avviso.
floor-times-in_h = Tra { $hour } h
floor-times-this_evening = Stasera
floor-times-late_this_evening = Stasera tardi
floor-times-tomorrow_morning = Domani mattina
floor-times-in = tra { $span }
floor-times-due_now = da fare ora
floor-times-over = { $left } oltre
floor-times-yesterday = ieri{ " " }
floor-times-tomorrow = domani{ " " }
floor-times-next_reading = Prossima lettura{ $name }
floor-times-of = { " " }di { $name }
floor-stand-as_it_stands = Come sta
floor-stand-pure_alcohol = Alcole puro
floor-stand-as_of = al { $date }
floor-stand-with_what_waits_here = con ciò che attende qui
floor-stand-how_full_is_not = non si sa quanto è pieno
floor-stand-of_full = { " " }di { $capacity_l }, pieno al { $capacity_l_2 } %
floor-stand-between_and = , tra { $low } e { $high }
floor-stand-about = circa{ " " }
floor-stand-empty_by_the_book = Vuoto, secondo il registro.
floor-stand-takes = Contiene { $capacity_l }.
floor-stand-of = { $about }{ $litres } di { $capacity_l }{ $since }
floor-stand-to = { $about }da { $low } a { $high }, { $about_2 }
floor-stand-now = ora{ " " }
floor-stand-by_its_weight = dal suo peso
floor-stand-fill_to_at_most = riempire al massimo a { $working_l }
floor-stand-so_far_from_gravity = { $so_far } finora, dalla densità
floor-stand-goes_down_to = scende a { $target }
floor-stand-filled = riempito { $since }{ $use }
floor-stand-gravity = densità
floor-stand-end = fine
floor-stand-save_its_label = Salva l’etichetta
floor-stand-pure_alcohol_gauge_by = Alcole puro, accertamento per accertamento
floor-camera-the_camera_works_only = La fotocamera lavora solo con https. Aprire il registro col suo indirizzo https, o digitare la sigla.
floor-camera-this_browser_offers_no = Questo browser non offre fotocamera. Digitare la sigla.
floor-camera-no_camera_was_found = Nessuna fotocamera trovata. Digitare la sigla.
floor-camera-the_camera_is_not = Qui la fotocamera non è permessa. Permetterla per questo sito nelle impostazioni del browser, o digitare la sigla.
floor-camera-another_app_is_using = Un’altra app usa la fotocamera. Chiuderla e riprovare, o digitare la sigla.
floor-camera-the_camera_stopped_because = La fotocamera si è fermata perché la pagina era nascosta. Toccare Scansionare per ripartire.
floor-camera-the_camera_stopped_tap = La fotocamera si è fermata. Toccare Scansionare per ripartire, o digitare la sigla.
floor-camera-the_camera_did_not = La fotocamera non è partita. Riprovare, o digitare la sigla.
floor-decoder-the_label_reader_is = Il lettore di etichette non è ancora su questo telefono. Digitare la sigla, o scansionare una volta dove c’è segnale.
floor-decoder-this_browser_cannot_look = Questo browser non può guardare immagini. Digitare la sigla.
floor-scanner-this_code_is_not = Questo codice non è dei nostri. Scansionare l’etichetta del recipiente, o digitarne la sigla.
floor-scanner-several_marks_are_in = Si vedono più sigle. Avvicinarsi, per vederne una sola.
floor-scanner-hold_the_label_in = Tenere l’etichetta in vista.
floor-scanner-nothing_found_yet_go = Ancora nulla. Avvicinarsi, inclinare il telefono contro i riflessi, o digitare la sigla.
floor-phonekey-this_browser_keeps_no = Questo browser non conserva chiavi, quindi le annotazioni non sono firmate.
floor-unitlist-unit = Unità
floor-view-case_word =
    { PLURAL($count) ->
        [one] cartone
       *[other] cartoni
    }
floor-bottles_of =
    { PLURAL($count) ->
        [one] { $count } bottiglia
       *[other] { $count } bottiglie
    }
floor-cases_of =
    { PLURAL($count) ->
        [one] { $count } cartone
       *[other] { $count } cartoni
    }
floor-roundview-bottles_off =
    { PLURAL($count) ->
        [one] { $off } bottiglia
       *[other] { $off } bottiglie
    }
floor-roundview-missing = mancante
floor-roundview-elsewhere = altrove
floor-round-counts =
    { PLURAL($count) ->
        [one] { $count } conteggio
       *[other] { $count } conteggi
    }
floor-sets =
    { PLURAL($count) ->
        [one] { $count } serie
       *[other] { $count } serie
    }
floor-balance-wash = fermentato
floor-balance-feints = teste e code
floor-balance-side_in = entrati
floor-balance-side_out = usciti
floor-forecast-no_charge = Troppo poco per dirlo: la carica di questa cotta non è annotata. Annotare litri e titolo della carica.
floor-forecast-few_readings =
    Troppo poco per dirlo: annotare { $which ->
        [another] un’altra lettura
       *[first] le prime letture
    } del getto.
floor-forecast-no_flow = Troppo poco per dirlo: annotare la portata, o misurare l’altezza nella raccolta.
floor-forecast-odd_readings = Troppo poco per dirlo: le letture salgono e scendono. Rileggere il getto.
floor-forecast-far = Troppo poco per dirlo: il taglio è ancora lontano. Aiuterà un’altra lettura.
floor-forecast-wide = Troppo poco per dirlo: può essere in qualsiasi momento entro { $width } minuti. Aiuterà un’altra lettura.
floor-forecast-out_of_range = Nessuna previsione a { $target } % vol: va da { $low } a { $high } % vol.
floor-forecast-past = Il getto ha passato { $target } % vol.
floor-counter-count_of = Contare: { $label }
floor-listening-speak = Dettare la cifra
floor-lasttime-receivers = Raccolta come l’ultima volta
floor-pane-people = Persone e recipienti
floor-ring-reminder = Promemoria
floor-file-save_it_again_on = Salvarlo di nuovo sul telefono da cui viene, o prenderlo un’altra volta.
floor-file-this_file_is_too = Questo file è troppo grande per una lavagna. Scegliere il file salvato da Cellarslate.
floor-file-this_file_is_damaged = Questo file è danneggiato: la somma di controllo non torna. { $again }
floor-file-this_file_is_damaged_2 = Questo file è danneggiato: è interrotto o non è una lavagna. { $again }
floor-file-this_file_is_no = Questo file non è una lavagna. Sceglierne uno di nome cellarslate-slate-….json.
floor-file-this_slate_was_saved = Questa lavagna è stata salvata da una versione più nuova di Cellarslate. Prima aggiornare questo telefono.
floor-file-this_file_is_damaged_3 = Questo file è danneggiato: ad alcune annotazioni mancano parti. { $again }
floor-low_wines = flemma
floor-enclosed-too_many = Un’annotazione prende al massimo { $most } foto. Annotarla, poi aggiungere le altre a un’altra.
floor-enclosed-with_this_entry = Foto con questa annotazione
floor-enclosed-picture_number = Foto { $number }
floor-enclosed-take_off = Togliere: { $name }
floor-enclosed-keeping_it = Si conserva
floor-enclosed-picture = Foto
floor-enclosed-pictures = Foto
floor-enclosed-on_the_slate = La foto è sulla lavagna.
floor-enclosed-open_the_paper = Aprire la carta
floor-enclosed-on_this_phone = { "." } Su questo telefono; si consegna da sé dopo la sua annotazione.
floor-enclosed-not_in_the_book = { "." } Non nel registro: { $words }
floor-enclosed-too_large = Questa foto supera { $most } MB. Rifarla con il formato normale della fotocamera.
floor-enclosed-no_picture = Questo telefono non può leggerla come foto. Rifarla, con la fotocamera.
floor-enclosed-waiting =
    { PLURAL($count) ->
        [one] { $count } foto o nota vocale attende
       *[other] { $count } foto e note vocali attendono
    } qui. Vanno dopo le annotazioni, pezzo per pezzo.
floor-enclosed-refused =
    { PLURAL($count) ->
        [one] { $count } foto
       *[other] { $count } foto
    } che il registro non può conservare; aprire la riga per vedere perché.
floor-enclosed-not_reached = Da qui il registro non si raggiunge.
floor-enclosed-no_room = Questo telefono è quasi pieno, e lo spazio rimasto è per le annotazioni. Annotare senza foto, o prima consegnare e fare spazio.

### Only the desk reads what follows.

floor-manifest-description = La lavagna di reparto della distilleria, con o senza segnale.
floor-manifest-shot_today = Che cosa è da fare oggi
floor-manifest-shot_run = Una cotta, e quando tagliare
floor-manifest-shot_wide = Il foglio di cotta su un tablet
floor-manifest-scan = Scansionare un’etichetta
floor-manifest-due = Da fare
floor-manifest-round = Giro di letture
floor-manifest-slate = La lavagna
desk-languages-label = Lingua
desk-you-language = Lingua
desk-you-language-any = Come il browser o la casa
desk-you-language-keep = Tenere
desk-frame-floor = Reparto
desk-frame-sign_out = Uscire
desk-frame-to_its_doors = Agli ingressi
desk-frame-this_is_the_demo_nothing = Questa è la demo: qui nulla è vero. { $link }
desk-frame-name_a_folder_on_another = Indicare una cartella su un altro disco
desk-frame-this_book_has_no_backups = Questo registro non ha ancora copie di sicurezza. { $link }; poi si fanno da sé ogni giorno.
desk-frame-the_book_goes_on_with = { $unjudged } Il registro continua da sé; le consegne non devono attendere.
desk-frame-other_rules_have_judged_the =
    Altre regole hanno giudicato il registro, e { $entries } { $entries ->
        [one] annotazione è risultata diversa
       *[other] annotazioni sono risultate diverse
    } da prima. { $link }.
desk-common-look_at_it = Guardarla
desk-common-look_at_them = Guardarle
desk-common-reason = Motivo
desk-common-amend = Rettificare
desk-common-at = a { $strength_pct }
desk-common-bottled = Imbottigliato
desk-common-blind_tastings = Degustazioni alla cieca
desk-common-plan_a_vat = Pianificare unione
desk-common-vat = Unione
desk-common-by = Da
desk-common-vessels = Recipienti
desk-common-batch = Partita
desk-common-last = Ultimo
desk-common-state = Stato
desk-common-closed = chiuso
desk-common-under_way = in corso
desk-common-the_entry = L’annotazione
desk-common-out_of = Da
desk-common-not_yet = non ancora
desk-common-water = Acqua
desk-common-spirit = Distillato
desk-common-any = qualsiasi
desk-common-pure_alcohol = alcole puro
desk-common-at2 = { $what } a { $what2 }
desk-common-years = Anni
desk-common-none = nessuno
desk-common-may = Può
desk-common-vessel = Recipiente
desk-common-lot = Lotto
desk-common-place = Posto
desk-common-pure_alcohol_l = Alcole puro, L
desk-common-proof_gal = Proof gal
desk-common-open = aperto
desk-common-ended = finito
desk-common-trace = Traccia
desk-common-on_the_floor = In reparto
desk-common-holds = contiene { $holding }
desk-common-answer = Rispondere
desk-common-since = Dal
desk-common-to = da { $percent } a { $percent2 }
desk-common-on = Il
desk-common-show = Mostrare
desk-common-what = Che cosa
desk-common-from = Da
desk-common-to2 = A
desk-common-when = Quando
desk-common-score = Punti
desk-common-who = Chi
desk-common-casks = Botti
desk-common-all = tutti
desk-common-due = Da fare
desk-common-cask = Botte
desk-common-holds2 = Contiene
desk-common-loss_a_year = Perdita, % l’anno
desk-common-not_known = non noto
desk-common-readings = Letture
desk-common-print = Stampare
desk-common-at3 = a { $bold }
desk-common-read_at = Letto alle
desk-common-gravity = Densità
desk-common-ferment = Fermentazione
desk-common-set = Serie
desk-common-read = Letto
desk-common-ended2 = Finita
desk-common-none_yet = Ancora nessuno.
desk-common-keep = Tenere
desk-common-which_vessels = Quali recipienti
desk-common-sort = Tipo
desk-common-and_more = e altri { $count }
desk-common-none2 = Nessuno.
desk-common-remark = Nota
desk-common-leave_it = Lasciare
desk-common-entries = Annotazioni
desk-common-kind = Genere
desk-common-book_no = Registro n.
desk-common-phone = Telefono
desk-common-asked = Domandato
desk-common-or = o
desk-common-right = giusto
desk-common-digest = Impronta
desk-common-proof_gal2 = proof gal
desk-common-l_pure_alcohol = L di alcole puro
desk-common-litres_of_pure_alcohol = Litri di alcole puro
desk-common-proof_gallons = Proof gallon
desk-common-what_happened = Che cosa è successo
desk-common-cases = Cartoni
desk-common-bottles = Bottiglie
desk-common-document = Documento
desk-common-to3 = a { $case_to }
desk-common-bottling = Imbottigliamento
desk-common-odd = spaiato { $odd_case }
desk-common-of_l = da { $what } L
desk-common-bottled_goods = Bottiglie
desk-common-where_it_went = Dove è andato
desk-common-minute = Minuto
desk-common-line = Linea
desk-common-closed2 = Chiuso
desk-common-filled = Riempite
desk-common-all2 = Tutti
desk-common-ranges = Campi
desk-common-access = Accessi
desk-common-more = Altro
desk-common-how_phones_reach_this_book = Come i telefoni raggiungono il registro
desk-common-change = Cambiare
desk-common-add = Aggiungere
desk-common-entry = Annotazione
desk-common-new_instrument = Nuovo strumento
desk-common-instruments = Strumenti
desk-common-number = Numero
desk-common-description = Descrizione
desk-common-limits_of_the_checks = Limiti dei controlli
desk-common-every_limit_is_the_checks = Ogni limite è quello del controllo.
desk-common-customers_and_growers = Clienti e produttori
desk-common-from_a_spreadsheet = Da un foglio di calcolo
desk-common-name = Nome
desk-common-people = Persone
desk-common-new_person = Nuova persona
desk-common-phones = Telefoni
desk-common-last_heard = Sentito l’ultima volta
desk-common-proof = Proof
desk-common-rules = Regole
desk-common-laboratory = Laboratorio
desk-common-log_a_certificate = Annotare un certificato
desk-common-litres_of_pure_alcohol_at = litri di alcole puro a 20 °C
desk-common-account = Conto
desk-common-of_what_stood_at_its = ± di ciò che stava alla fine
desk-common-the_period = Il periodo
desk-common-of_its_lines = ± delle sue righe
desk-common-period = Periodo
desk-common-as_now_known = Come noto ora
desk-common-as_now_known2 = come noto ora
desk-common-open_figures_may_still_change = Aperto: le cifre possono ancora cambiare.
desk-common-periods = Periodi
desk-common-seasons = Campagne
desk-common-records_the_law_asks_for = Registri voluti dalla legge
desk-common-proof_gallons2 = proof gallon
desk-common-germany = Germania
desk-common-proof_gal_from_100_lb = proof gal da 100 lb
desk-common-not_accounted_for = Non giustificato
desk-common-runs = Cotte
desk-common-yields = Rese
desk-common-feints = Teste e code
desk-common-fruit = Frutta
desk-common-standing_now = Presente ora
desk-common-still = Alambicco
desk-common-why = Perché
desk-common-n100_gal = 100 gal
desk-common-tasted_blind = Assaggiato alla cieca:
desk-common-in = In
desk-common-run = Cotta
desk-common-rows = Righe
desk-common-mark = Sigla
desk-common-look_it_over = Ricontrollare
desk-common-sheet = Foglio
desk-common-taken_back = annullato
desk-common-samples = Campioni
desk-common-answers = Risposte
desk-common-what_was_found = Che cosa si è trovato
desk-common-open_it = Aprirlo
desk-common-bottled2 = imbottigliato
desk-common-find_a_trace = Trovare una traccia
desk-common-came_from = venuto da
desk-common-case_or_lot_mark_batch = Cartone o segno di lotto, partita, recipiente, cotta o consegna
desk-common-from2 = da { $name }: { $share }
desk-common-load_of_fruit = carico di frutta
desk-common-list_as_csv = Elenco come CSV
desk-common-all_as_json = Tutto come JSON
desk-common-stands_there_now = presente lì ora
desk-common-made_from_it = fatto da questo
desk-common-passed_through = passato per
desk-common-there_is_more_than_one = C’è più di quanto una traccia possa seguire. Ciò che è mostrato vale, ma non è tutto: tracciare a parte un passo seguente.
desk-common-in_these_bottles = In queste bottiglie
desk-common-share_of_the_bottle = Quota della bottiglia
desk-common-where_the_cases_went = Dove sono andati i cartoni
desk-common-share_of_it = Quota
desk-common-not_fermented_out = fermentazione non finita
desk-common-the_same_in_words = Lo stesso in parole
desk-common-new_vessel = Nuovo recipiente
desk-common-mark_place_or_name = Sigla, posto o nome
desk-common-no_vessels_here = Qui nessun recipiente.
desk-common-to_the_floor = Al reparto
desk-common-labels_to_hold_a_phone = Etichette a cui accostare un telefono
desk-common-print_them_a4 = Stamparle, A4
desk-common-to_the_doors = Agli ingressi
desk-common-no_site_has_handed_in = Nessun sito ha ancora consegnato.
desk-common-unnamed = senza nome
desk-common-something = qualcosa
desk-common-a_run = cotta
desk-common-a_bottling = imbottigliamento
desk-parts-it_was = Era { $raw } { $unit }
desk-parts-it_stands = Si mantiene
desk-parts-strike = Depennare
desk-parts-nothing_in_the_book = nulla nel registro
desk-blending-vats_planned = Unioni pianificate
desk-blending-none_yet_plan_one_pick = Ancora nessuna. Pianificarne una: scegliere botti, dire che cosa deve essere.
desk-blending-tank = Serbatoio
desk-blending-planned = Previsto
desk-blending-water = Acqua, { $what }
desk-blending-volume = Volume, { $what }
desk-blending-no_batch_yet_a_bottling = Ancora nessuna partita. La inizia un accertamento per imbottigliare.
desk-blending-tank_fills = Serbatoio basta per
desk-blending-blending = Assemblaggio
desk-blending-by_papers = , secondo le carte
desk-blending-kept_the_tanks_card_shows = Conservato. La scheda del serbatoio lo mostra su ogni telefono.
desk-blending-these_draws_cannot_be_read = Questi prelievi non si possono più leggere. Tornare indietro e ricalcolare l’unione.
desk-blending-give_the_vat_a_name = Dare un nome all’unione e scegliere il serbatoio; poi conservarla.
desk-blending-the_book_has_no_such = Il registro non ha un piano simile. Cercarlo nell’elenco delle unioni.
desk-blending-nothing_is_left_to_choose = Non resta nulla da cui scegliere. Spuntare ciò che può entrare, o chiedere meno anni in legno.
desk-plan-planned_and_done = Previsto e fatto
desk-plan-the_tank = Il serbatoio
desk-plan-planned_by_on_into_at = Pianificato da { $person } il { $when } in { $get }: { $plan } a { $plan2 }.
desk-plan-asked_for = Chiesto: { $plan }.
desk-plan-it_rests_on_blind_tasting = Poggia sulla degustazione alla cieca { $link }.
desk-plan-planned = Previsto, { $what }
desk-plan-done = Fatto, { $what }
desk-plan-off = Scarto, { $what }
desk-plan-in_the_tank_now_at = Ora nel serbatoio: { $volume_l } a { $strength_pct } secondo il registro.
desk-vat-the_vat = L’unione
desk-vat-draws = Prelievi
desk-vat-keep_this_vat = Conservare l’unione
desk-vat-what_may_go_in = Che cosa può entrare
desk-vat-may_go_in = { $name } può entrare
desk-vat-must_go_in = { $name } deve entrare
desk-vat-years_of_by_the_papers = Anni di { $name } secondo le carte
desk-vat-work_it_out = Calcolare
desk-vat-begin_again = Ricominciare
desk-vat-at_from_vessel =
    { $bold } a { $bold2 }, { $lpa_l }{ $pure }, da { $count } { $count ->
        [one] recipiente
       *[other] recipienti
    }
desk-vat-of_water = { $water_kg } di acqua
desk-vat-and = e { $bold }
desk-vat-youngest_years_in_wood = Il più giovane { $what } anni in legno
desk-vat-by_papers_only_of = solo secondo le carte di { $by_papers }
desk-vat-a_part_of_it_is = Di una parte non si conosce l’età.
desk-vat-that_is_less_than_asked =
    Sono { $off } { $is_more ->
        [yes] più
       *[no] meno
    } di quanto chiesto.
desk-vat-share = Quota, %
desk-vat-before_the_water_at_the = Prima dell’acqua { $before_l } a { $before_pct }. La miscela si contrae di { $shrinks_l }: nessuna perdita, il suo alcole puro resta.
desk-vat-name_of_the_vat = Nome dell’unione
desk-vat-into_tank = Nel serbatoio
desk-vat-rests_on_tasting = Poggia sulla degustazione
desk-vat-keep_this_plan = Conservare il piano
desk-vat-no_cask_or_tank_has = Nessuna botte e nessun serbatoio contiene distillato secondo il registro.
desk-vat-casks_go_whole_less_what = Le botti vanno intere, meno ciò che tiene il legno. Gli anni sono quelli della parte più giovane; dove il registro non può saperli, digitare che cosa dicono le carte. Un recipiente con domanda aperta si spunta soltanto a mano: le sue cifre possono non reggere.
desk-vat-must = Deve
desk-vat-there = Presente, { $what }
desk-vat-to_give = Da dare, { $what }
desk-vat-by_the_papers = Secondo le carte
desk-vat-left_out_too_young = lasciata fuori: troppo giovane
desk-cellar_parts-cellar = Cantina
desk-cellar_parts-to = (da { $low } a { $high })
desk-cellar_parts-about = circa { $bold } { $part }
desk-cellar_parts-three_equal_gravities_since = tre densità uguali dal { $at }
desk-cellar_parts-not_moving_and_not_finished = ferma e non finita
desk-cellar_parts-has_hardly_begun = appena iniziata
desk-cellar_parts-stuck = arrestata
desk-cellar_parts-too_few_readings = troppo poche letture
desk-cask-loss_a_year = Perdita annua
desk-cask-forecast_for_a_day = Previsione per un giorno
desk-cask-forecast = Previsione
desk-cask-tasted = Assaggiato
desk-cask-gauges = Accertamenti
desk-cask-years_in_wood = { $percent } anni in legno
desk-cask-from_before_this_book = Da prima di questo registro
desk-cask-its_age_is_not_known = La sua età non è nota.
desk-cask-its_age_is_by_papers = La sua età è solo secondo le carte: { $papers }.
desk-cask-its_age_is_by_what = La sua età è secondo quanto detto alla giacenza iniziale; nessuna carta è nominata.
desk-cask-pure_alcohol = Alcole puro, %
desk-cask-volume = Volume, %
desk-cask-proof_points = punti proof
desk-cask-strength = Titolo, { $what }
desk-cask-over_years = In, anni
desk-cask-one_gauge_or_too_near = Un solo accertamento, o troppo vicini: ancora nessun andamento.
desk-cask-casks_like_it = botti simili
desk-cask-the_law_allows = la legge ammette
desk-cask-here_as_the_share_that = { $words } Qui come quota che se ne va in un anno. Una soglia di attenzione, non la prova che una perdita sia usuale, né un parere legale: confrontare prima con le botti della casa.
desk-cask-of_pure_alcohol = di alcole puro
desk-cask-between_its_last_two_gauges = Tra i suoi ultimi due accertamenti, { $when } e { $when2 }, sono andati { $value } { $part }{ $pure }; ± è il doppio dell’incertezza tipo, secondo la classe di bilancia, areometro e termometro.
desk-cask-compared_with = Confrontato con
desk-cask-no_other_cask_to_compare = Nessun’altra botte con cui confrontare: cifre semplici per la sua misura.
desk-cask-what_it_will_hold = Che cosa conterrà
desk-cask-no_forecast_for_a_day = Nessuna previsione per un giorno prima dell’ultimo accertamento, o oltre cinquant’anni dopo.
desk-cask-expected = Atteso
desk-cask-by_a_year_its_own = Al { $percent } % l’anno, la sua perdita pesata con quella di botti simili; da e a dovrebbero valere quattro volte su cinque. Non si prevedono perdite né campioni.
desk-cask-its_last_gauge_is_in = Il suo ultimo accertamento è in dubbio, e così questa previsione: prima guardare la botte.
desk-cask-not_gauged_in_this_fill = Non accertata in questo riempimento.
desk-cask-not_tasted_in_this_fill = Non assaggiata in questo riempimento.
desk-cask-fault = Difetto
desk-cask-house_scores = Punti della casa
desk-cask-in_words = In parole
desk-cask-decision = Decisione
desk-cask-score_is_the_mean_of = I punti sono la media di naso, bocca e legno.
desk-cask-gauges_of_this_fill = Accertamenti di questo riempimento
desk-cask-drawn_since_the_one_before = Prelevato dal precedente, { $what }
desk-cask-the_last_gauge = l’ultimo accertamento
desk-cask-its_fill = il suo riempimento
desk-cask-and_more = e oltre
desk-cask-pure_alcohol2 = Alcole puro
desk-cask-strength2 = Titolo
desk-cask-volume_at = Volume a { $temp }
desk-casks-sort_casks = Ordinare le botti
desk-casks-regauge_round = Giro di rimisurazione
desk-casks-area = Zona
desk-casks-no_such_cask = Nessuna botte simile.
desk-casks-no_cask_holds_anything_as = Nessuna botte contiene qualcosa, per quanto sa il registro.
desk-casks-since_fill = Dal riempimento
desk-casks-casks_like_it = Botti simili
desk-casks-looks_like = Pare
desk-casks-loss_is_of_pure_alcohol = La perdita è di alcole puro dall’ultimo accertamento vecchio almeno due mesi; i campioni non sono perdita. «Botti simili»: quattro su cinque stanno in quel campo, per misura, poi zona, poi legno e uso; un gruppo piccolo prende dal più ampio finché ha botti proprie.
desk-casks-l_pure = L puri
desk-casks-by_papers = secondo le carte
desk-ferment-counts_of_its_alcohol = Conti del suo alcole
desk-ferment-set = messa a fermentare { $when }
desk-ferment-emptied = svuotata { $when }
desk-ferment-ends = Finisce: { $forecast }.
desk-ferment-it_usually_ends_near = Di solito finisce vicino a { $what }.
desk-ferment-it_takes_two_gravities_or = Servono due densità, o una fermentazione chiusa.
desk-ferment-count = Conto
desk-ferment-of_wash = { $what } di fermentato
desk-ferment-of_measured_wash = % del fermentato misurato
desk-ferment-runs_of_charged_scaled_to =
    { $runs } { $runs ->
        [one] cotta
       *[other] cotte
    } di { $charged_lpa } caricati, riportati a tutto il fermentato
desk-ferment-gravity_low_wines_and_spirits = Densità, flemma e distillati contano una cosa in tre modi che non sanno l’uno dell’altro; la vecchia legge prendeva il maggiore. Se sono lontani: guardare altezze, titoli e fermentato.
desk-ferment-not_read_yet = Non ancora letto.
desk-ferment-greatest = maggiore
desk-ferment-title = { $what } in { $mark }
desk-ferments-ferments_under_way = Fermentazioni in corso
desk-ferments-ferments_that_have_ended = Fermentazioni finite
desk-ferments-readings_round = Giro di letture
desk-ferments-no_ferment_is_under_way = Nessuna fermentazione in corso.
desk-ferments-ends = Finisce
desk-ferments-the_day_is_forecast_from = Il giorno si prevede dalla curva in discesa delle sue letture; i giorni tra parentesi dovrebbero valere quattro volte su cinque. Decidono tre densità uguali.
desk-ferments-emptied = Svuotata
desk-ferments-first_gravity = Prima densità
desk-ferments-ferments = Fermentazioni
desk-house_rules-n0_for_never = 0 per mai
desk-house_rules-what_is_due_stands_on = Ciò che è da fare sta sotto Oggi su ogni telefono. Le parole si toccano in una degustazione; i punti vanno da 0 a 10.
desk-house_rules-house_rules = Regole della casa
desk-house_rules-too_young = troppo giovane
desk-house_rules-too_weak = grado basso
desk-house_rules-too_strong = grado alto
desk-house_rules-score_too_low = punti troppo bassi
desk-house_rules-not_tasted = non assaggiata
desk-house_rules-loses_much_look_at_it = perde molto: guardarla
desk-house_rules-not_gauged = non accertata
desk-house_rules-spirit_as_the_book_names = Distillato, come lo chiama il registro; vuoto per tutti
desk-house_rules-in_wood_at_least_years = In legno almeno [anni]
desk-house_rules-strength_from_vol = Titolo da [% vol]
desk-house_rules-strength_to_vol = Titolo a [% vol]
desk-house_rules-score_at_least_of_10 = Punti almeno [su 10]
desk-house_rules-loss_at_most_a_year = Perdita al massimo [% l’anno]
desk-house_rules-words_for_nose_and_mouth = Parole per naso e bocca, una per riga
desk-house_rules-beside_the_loss_of_casks = Accanto alla perdita delle botti: l’abbuono nella legge di
desk-house_rules-scores_beside_nose_mouth_wood = Punti oltre a naso, bocca, legno e difetto, uno per riga
desk-house_rules-kept = Conservato.
desk-house_rules-type_a_figure_from_0 = Digitare una cifra da 0 in su, o lasciare vuoto.
desk-house_rules-kept_phones_have_it_with = Conservato. I telefoni lo hanno con le prossime schede.
desk-house_rules-read_a_ferment_every = Leggere una fermentazione ogni
desk-house_rules-regauge_a_cask_every = Rimisurare una botte ogni
desk-house_rules-sample_a_cask_every = Campionare una botte ogni
desk-house_rules-taste_a_cask_every = Assaggiare una botte ogni
desk-house_rules-tell_of_an_instruments_check = Avvisare del controllo di uno strumento prima di
desk-house_rules-check_bottles_on_the_line = Controllare bottiglie sulla linea ogni
desk-house_rules-or_after_so_many_of = o dopo tante di queste
desk-map-rooms = Locali
desk-map-map_of = Pianta di { $name }
desk-map-without_a_position = { $name }, senza posizione
desk-map-as_a_table = { $name } come tabella
desk-map-elsewhere = ◆ altrove?
desk-map-empty = vuoto
desk-map-free = libero
desk-map-count_sheet = Foglio di conteggio
desk-map-the_last_count_found_otherwise = L’ultimo conteggio ha trovato diverso
desk-map-nothing_has_a_place_yet = Nulla ha ancora un posto. Lo dice un’annotazione che riempie o sposta una botte; e anche la pagina del recipiente.
desk-map-vessels =
    { $count } { $count ->
        [one] recipiente
       *[other] recipienti
    }
desk-map-places_free =
    { $free } { $free ->
        [one] posto libero
       *[other] posti liberi
    }
desk-map-no_position = { $name }, nessuna posizione
desk-map-without_a_place = Senza posto { $part }
desk-map-the_first_vessels_are_drawn = Sono disegnati i primi { $most } recipienti. Scegliere un tipo per vederne altri.
desk-map-a_place_is_where_an = Un posto è dove un’annotazione ha messo per ultimo il recipiente, altrimenti ciò che dice la sua pagina. Un posto vuoto è nominato da annotazioni o dall’anagrafe e ora non vi sta nulla. Le frecce vanno da posto a posto.
desk-map-places = Posti
desk-map-other_places = Altri posti
desk-ready-years_in_wood = Anni in legno
desk-ready-lacks = Manca
desk-ready-no_rule_yet = Ancora nessuna regola.
desk-ready-set_one_below_age_strength = Fissarne una sotto: età, titolo, punti, perdita.
desk-ready-the_distiller_sets_one = La fissa il distillatore.
desk-ready-ready = Pronte { $part }
desk-ready-no_cask_meets_the_rule = Oggi nessuna botte soddisfa la regola.
desk-ready-lacks_one_thing = Manca una cosa { $part }
desk-ready-the_rule = La regola
desk-ready-last_set_by = Fissata l’ultima volta da { $changed }, { $when }.
desk-ready-all_boxes_empty_takes_the = Tutte le caselle vuote tolgono la regola di quel distillato. Ciò che è vuoto non si chiede. La regola è della casa: l’età per legge ed etichetta è un’altra cosa.
desk-ready-ready2 = Pronte
desk-ready-lacks_one_thing2 = Manca una cosa
desk-ready-all_spirits = tutti i distillati
desk-amend-what_you_send_is_a = { $mark } · { $summary } · { $person }, { $read_local }. Ciò che si invia è una nuova annotazione; l’originale resta leggibile.
desk-amend-why_it_is_amended = Perché si rettifica
desk-amend-amend = Rettificare: { $title }
desk-entries-filter_entries = Filtrare le annotazioni
desk-entries-pick_a_kind_for_csv = Scegliere un genere per il CSV
desk-entries-no_entries_here_yet = Qui ancora nessuna annotazione.
desk-entries-older = Precedenti
desk-entry-as_computed = Come calcolato
desk-entry-movements = Movimenti
desk-entry-now_at = ora a { $stands }
desk-entry-read_by = letto { $read_local } da { $person }
desk-entry-an_earlier_entry = un’annotazione precedente
desk-entry-amends = Rettifica { $link }: { $reason }
desk-entry-as_read = Come letto
desk-entry-by = con { $instrument }
desk-entry-corrected = corretto { $corrected }
desk-entry-is_twice_the_standard_uncertainty = ± è il doppio dell’incertezza tipo, secondo la classe degli strumenti; uno non nominato, o senza classe nel registro, conta come della classe prescritta dalla legge.
desk-entry-figure = cifra
desk-entry-typed = digitato
desk-entry-with = con { $words }
desk-entry-nothing_is_computed_from_this = Da questo non si calcola nulla.
desk-entry-how_it_came = Come è arrivata
desk-entry-typed_at = Digitato alle
desk-entry-received = Ricevuto
desk-entry-phones_clock = Orologio del telefono
desk-entry-fast =
    { $what } { $is_slow ->
        [yes] indietro
       *[no] avanti
    }
desk-entry-phone_its_count = Telefono, suo conteggio
desk-entry-handed_in_by = Consegnato da
desk-entry-signature = Firma
desk-entry-what_it_does_to_the = Che cosa fa ai conti
desk-entry-from = da
desk-entry-to = a
desk-entry-account = conto
desk-entry-why = perché
desk-entry-as_typed = come digitato
desk-entry-it_moves_no_spirit_either = Non muove distillato in nessun caso.
desk-entry-held_holds_then = conteneva { $shown }, poi contiene
desk-entry-with_the_book_would_still = Con { $words } il registro domanderebbe ancora prima di muovere qualcosa.
desk-entry-held_holds_then2 = conteneva { $litres }, poi contiene
desk-entry-its_story = La sua storia
desk-entry-this_entry = questa annotazione
desk-entry-strike_this_entry = Depennare questa annotazione
desk-entry-strike_it_stays_legible = Depennare; resta leggibile
desk-entry-from_the_desk = dall’ufficio
desk-entry-answered = risposto
desk-entry-nothing_moves_until_the_question = Nulla si muove finché la domanda non ha risposta.
desk-entry-it_is_struck_it_moves = È depennata: non muove nulla.
desk-entry-it_moves_no_spirit = Non muove distillato.
desk-entry-another_entry_stands_in_its = Al suo posto sta un’altra annotazione.
desk-entry-none_the_phone_or_its = nessuna: il telefono o il suo browser non l’ha data
desk-entry-the_book_has_no_such = Il registro non ha un’annotazione simile. Può attendere ancora su un telefono.
desk-entry-none_it_was_entered_at = nessuna: fu inserita in ufficio
desk-entry-of_and_it_holds = di { $phones }, e regge
desk-entry-with_a_key_that_the = con una chiave che il registro non ha
desk-entry-there_is_no_such_entry = Non c’è un’annotazione simile da rettificare.
desk-entry-pick_one_kind_first_each = Scegliere prima un genere: ognuno ha le sue colonne.
desk-entry-amended_the_original_stays_legible = Rettificata. L’originale resta leggibile.
desk-entry-is_no_day_pick_one = { $day } non è un giorno. Sceglierne uno, come 2025-09-24.
desk-entry-say_why_it_is_amended = Dire in poche parole perché si rettifica.
desk-enclosed-title = Foto e carte
desk-enclosed-show = Mostrare foto e carte
desk-enclosed-back = Torna a ciò a cui appartengono
desk-enclosed-none = Ancora nessuna. Farne una in reparto con un’annotazione, o aggiungerne una sulla pagina di un’annotazione.
desk-enclosed-picture = Foto
desk-enclosed-paper = Carta
desk-enclosed-voice_note = Nota vocale
desk-enclosed-not_come = Non ancora qui: attende sul telefono
desk-enclosed-added_later = aggiunta dopo
desk-enclosed-its_entry = la sua annotazione
desk-enclosed-add = Aggiungere foto o carte
desk-enclosed-files = File
desk-enclosed-help = JPEG, PNG o WebP fino a 12 MB, PDF fino a 20 MB, note vocali fino a 6 MB; 24 MB alla volta. Le foto perdono luogo e dati della fotocamera.
desk-enclosed-what = Che cosa mostra
desk-enclosed-add_it = Aggiungere a questa annotazione
desk-enclosed-added =
    { $count ->
        [one] Aggiunta. È un’annotazione a sé, che nomina questa.
       *[other] { $count } aggiunte. Sono un’annotazione a sé, che nomina questa.
    }
desk-enclosed-pick_one = Scegliere prima una foto o una carta.
desk-enclosed-too_many = Al massimo { $most } alla volta. Aggiungerle a parti.
desk-enclosed-no_such_entry = Non c’è un’annotazione simile a cui aggiungere. Cercarla fra le annotazioni.
desk-enclosed-the_paper = la carta
desk-enclosed-add_its_paper = aggiungere la sua carta
desk-queries-which_questions = Quali domande
desk-queries-to_answer = Da rispondere
desk-queries-none_of_this_weight = Nessuna di questo peso.
desk-queries-nothing_is_asked_what_comes = Nulla è domandato. Qui starà ciò che arriva fuori campo.
desk-queries-questions = { $count } domande
desk-queries-ask_on_only_above = Su { $mark } domandare solo sopra { $value } { $limits }
desk-queries-times_it_stood_here = { $times } volte si è mantenuto qui. { $link }
desk-queries-the_first_are_shown_answer = Sono mostrate le prime { $most }. Rispondere ad alcune, e seguono le altre.
desk-queries-questions2 = Domande
desk-queries-not_answered = Senza risposta: { $why }
desk-queries-it_stands = Si mantiene.
desk-queries-struck_the_entry_stays_legible = Depennata. L’annotazione resta leggibile.
desk-removals-to_or_from = A chi o da chi
desk-removals-loose = sciolte
desk-removals-of = di { $case_from }
desk-bottled-bottles_on_hand = Bottiglie in giacenza
desk-bottled-removals_as_csv = Uscite come CSV
desk-bottled-all_removals_logged = Tutte le uscite annotate
desk-bottled-what_each_bottling_has_on = Che cosa ogni imbottigliamento ha in giacenza, e dove sono andati i suoi cartoni. Si annota in reparto, sotto Altro: Cartoni fuori o dentro, Bottiglie. { $link }.
desk-bottled-nothing_is_bottled_yet_a = Ancora nulla è imbottigliato. La giacenza inizia con una chiusura d’imbottigliamento, o con cartoni da un altro sito.
desk-bottled-good_bottles = Bottiglie buone
desk-bottled-on_hand = In giacenza
desk-bottled-last_count = Ultimo conteggio
desk-bottled-lot = lotto { $lot_mark }
desk-bottled-for_the_library = { $library } per l’archivio
desk-bottled-from = da { $consignor }, { $document }
desk-bottled-from_before_this_book = da prima di questo registro
desk-bottled-cases = { $cases } cartoni
desk-bottled-and = e { $loose }
desk-bottled-out_and_back = Fuori e di ritorno
desk-bottled-no_case_has_left_yet = Nessun cartone è ancora uscito.
desk-bottled-older_ones_are_in_the = { $count } precedenti sono nel file.
desk-bottling-checks_of_the_line = Controlli della linea
desk-bottling-tank_gauge_and_label = Accertamento ed etichetta
desk-bottling-no_bottling_tank_gauge_yet = Ancora nessun accertamento per imbottigliare. Accertare il serbatoio dopo ogni trattamento, prima della prima bottiglia.
desk-bottling-at = { $volume } a { $strength }
desk-bottling-a_label_may_say_to = { $when }, { $tank }: { $bold } ({ $what }). Un’etichetta può dire da { $low } a { $high }{ $span } e stare entro { $most }
desk-bottling-it_says = dice { $said }
desk-bottling-leave_room_for_what_glass = Lasciare margine per ciò che areometro e termometro fingono.
desk-bottling-it_fills_bottles_of_l = Riempie { $what } bottiglie da { $what2 } L, senza resto.
desk-bottling-none_yet_check_five_bottles = Ancora nessuno. Controllare cinque bottiglie ogni mezz’ora.
desk-bottling-fill_of_the_label_on = Livello { $what } % dell’etichetta in media di { $count } controlli
desk-bottling-spread = dispersione { $what }
desk-bottling-strength_on_average = Titolo { $mean } in media
desk-bottling-spread2 = dispersione { $spread }
desk-bottling-at_this_size_each_bottle = In questo formato ogni bottiglia può stare { $what } % sopra o sotto (27 CFR 19.356), circa tante sopra quante sotto.
desk-bottling-at_this_size_a_bottle = In questo formato una bottiglia può stare { $what } % sotto, la media mai (direttiva 76/211/CEE, a memoria).
desk-bottling-fill = Livello, %
desk-bottling-least = Minimo
desk-bottling-most = Massimo
desk-bottling-labels_right = Etichette giuste
desk-bottling-done = Fatto
desk-bottling-not_closed_yet = Non ancora chiuso.
desk-bottling-odd_case = Cartone spaiato
desk-bottling-labels_of_cases = Etichette dei cartoni
desk-bottling-a_case_label_leads_to = Il simbolo porta alla traccia del lotto. Non è l’etichetta che chiede la legge.
desk-bottling-these_are_no_cases = Indicare cartoni di questa partita come li ha la chiusura, al massimo { $most } alla volta.
desk-bottling-broken = Rotte
desk-bottling-library = Archivio
desk-bottling-good = Buone
desk-bottling-to = da { $case_from } a { $case_to }
desk-bottling-nothing_has_left_the_tank = Nulla ha ancora lasciato il serbatoio.
desk-bottling-gauged_bottled_not_in_a = Accertati { $gauged }, imbottigliati { $bottled }: { $off }{ $pure } ({ $what2 } %) non in bottiglia.
desk-bottling-batch = Partita { $name }
desk-bottling-span = da { $low } a { $high } % vol
desk-bottling-the_book_has_no_batch = Il registro non ha una partita di quel nome in un serbatoio. Cercarla nell’elenco degli imbottigliamenti.
desk-bottling-fill_on_average = Livello, in media
desk-bottling-of_the_label = % dell’etichetta
desk-bottling-strength_in_the_bottles = Titolo nelle bottiglie
desk-limits-to = { $what }da { $what2 } a { $what3 } { $symbol }{ $what4 }
desk-limits-as_the_kind = come il genere
desk-limits-every_range_is_the_kinds = Ogni campo è quello del genere.
desk-limits-for = Per
desk-limits-field = Voce
desk-limits-usual = Usuale
desk-limits-possible = Possibile
desk-limits-find_limits = Cercare limiti
desk-limits-limits = Limiti
desk-limits-all_ranges = Tutti i campi
desk-limits-limits_set_so_far = Limiti fissati finora
desk-limits-all_limits = Tutti i limiti
desk-limits-possible2 = possibile: { $what }
desk-limits-words_field_vessel_or_product = Parole, voce, recipiente o prodotto
desk-limits-a_range_for_one_vessel = Un campo per un recipiente precede quello per il suo tipo, poi per la materia, per il sito, e quello del genere. Caselle vuote ridanno quello del genere.
desk-limits-set_so_far = Fissati finora
desk-limits-no_range_here_holds_these = Nessun campo qui contiene queste parole.
desk-limits-a_limit_for_one_vessel = Un limite per un recipiente precede quello per il prodotto, poi per il tipo di recipiente, per il sito, e quello del controllo. Una cifra vuota ridà quello del controllo.
desk-limits-no_limit_here_holds_these = Nessun limite qui contiene queste parole.
desk-limits-limit = Limite
desk-limits-set_to = Fissato a
desk-limits-the_checks_own = Del controllo
desk-limits-the_kinds_own = del genere
desk-limits-the_checks_own2 = del controllo
desk-limits-the_book_knows_no_vessel = Il registro non conosce il recipiente { $key }.
desk-limits-say_which_the_sort_of = Dire quale: il tipo di recipiente, o la materia.
desk-limits-from_to_is_no_range = Da { $low } a { $high } non è un campo. Scambiare i due.
desk-limits-kept_the_vessels_concerned_are = Conservato. I recipienti interessati si giudicano di nuovo.
desk-limits-kept_the_entries_concerned_are = Conservato. Sulle annotazioni interessate si domanda di nuovo.
desk-access-code = codice
desk-access-all_as_json_lines = Tutto come righe JSON
desk-access-everything = tutto
desk-access-nothing_of_this_sort_yet = Ancora nulla di questo tipo.
desk-access-the_newest_all_of_them = Le ultime { $most }. Tutte escono come righe JSON.
desk-access-each_line_is_bound_to = Ogni riga è legata alla precedente; { $code } ne trova una cambiata o tolta. Le righe oltre { $days } giorni si tolgono.
desk-address-now = Ora
desk-address-this_book_is_open_on = Questo registro è aperto solo su questo computer. Avviare { $code } senza { $code2 } e { $code3 }, e i telefoni sulla stessa rete lo raggiungono.
desk-address-phones_open = I telefoni aprono { $bold }.
desk-address-another_web_server_on_this = Un altro server web su questo computer parla per lui, e il certificato è affar suo.
desk-address-every_phone_trusts_it_as = Ogni telefono se ne fida così com’è, con un certificato del proprio nome.
desk-address-this_houses_own_certificate = certificato proprio di questa casa
desk-address-each_phone_trusts_it_once = Ogni telefono se ne fida una volta preso { $link }.
desk-address-the_servers_certificate_lasts_unti = Il certificato del server dura fino al { $ends }
desk-address-and_is_renewed_before_that = e si rinnova da sé prima
desk-address-the_address_is_who_the = Per un telefono l’indirizzo dice chi è il registro.
desk-address-what_a_phone_holds_belongs = { $bold } Ciò che un telefono contiene appartiene all’indirizzo con cui fu aperto: con un altro inizia vuoto, e ciò che attendeva resta al vecchio. Scegliere quello duraturo prima che arrivi il primo telefono. Per traslocare dopo: far consegnare ogni telefono, poi traslocare, poi ammetterli di nuovo.
desk-address-the_ways = Le vie
desk-address-the_houses_own_certificate = Il certificato proprio della casa
desk-address-nothing_to_buy_works_without = Nulla da comprare, lavora dieci anni senza internet. Su ogni telefono da sei a otto tocchi una volta, fra cui un interruttore che sfugge facilmente.
desk-address-an_internet_name_of_your = Un nome internet proprio
desk-address-phones_trust_it_with_no = I telefoni se ne fidano senza alcun tocco. Costa un dominio l’anno, internet ogni tanto, e qualcuno che lo prepari una volta: un record che porta all’indirizzo di questo computer in casa, e un client ACME (RFC 8555) che prova il nome via DNS e mette qui i due file. Si guardano ogni quarto d’ora, e si prendono quando sono nuovi. Il nome sta in registri pubblici: meglio uno anonimo.
desk-address-another_web_server_in_front = Un altro server web davanti
desk-address-where_the_house_has_one = Dove la casa ne ha già uno, con certificato proprio: parla TLS, e passa a questo.
desk-address-when_a_phone_does_not = Quando un telefono non arriva qui
desk-address-on_this_computer_looks_at = { $code } su questo computer guarda nome, indirizzo, porta, orologio, certificato, router, disco e copia, e dice per ognuno il prossimo passo. Dare a questo computer un indirizzo fisso nel router: uno nuovo sarebbe per i telefoni un altro registro.
desk-instrument-checks = Controlli
desk-instrument-readings_in_doubt = Letture in dubbio
desk-instrument-due_on = da fare il { $due_on }
desk-instrument-last_good_check = ultimo controllo buono { $when }
desk-instrument-add_to_what_it_shows = sommare { $what } { $unit } a ciò che mostra
desk-instrument-certificate_add = certificato, sommare { $table_words }
desk-instrument-entries_read_with_it =
    { $readings } { $readings ->
        [one] annotazione letta
       *[other] annotazioni lette
    } con esso
desk-instrument-none_in_the_book_log = Nessuno nel registro. Annotarne uno in reparto: Controllare strumento.
desk-instrument-against = Contro
desk-instrument-should_show = Dovrebbe mostrare
desk-instrument-shows = Mostra
desk-instrument-off_by = Scarto
desk-instrument-result = Risultato
desk-instrument-good = buono
desk-instrument-readings_in_doubt2 =
    { $doubtful } { $doubtful ->
        [one] lettura
       *[other] letture
    } in dubbio
desk-instrument-out_of_use = fuori servizio
desk-instrument-in_use_until = in uso fino al { $until }
desk-instrument-in_doubt_read_before_the = In dubbio: letto prima del controllo del { $at }, dall’ultimo buono
desk-instrument-nothing_was_read_with_it = In quel tempo non fu letto nulla con esso.
desk-instrument-entries =
    { $many } { $many ->
        [one] annotazione
       *[other] annotazioni
    }
desk-instrument-the_last_are_listed = sono elencate le ultime { $count }
desk-instrument-look_at_each_let_it = Guardare ciascuna: mantenerla, o rettificarla con il motivo.
desk-instrument-by_this_check = Da questo controllo
desk-instrument-n27_cfr_19_188_asks = 27 CFR 19.188 chiede controlli frequenti; uno in dubbio non si usa finché non è certificato.
desk-instrument-not_good = non buono
desk-instrument-no_check_in_the_book = nessun controllo nel registro
desk-instrument-there_is_no_such_instrument = Non c’è uno strumento simile. Cercarlo nell’elenco.
desk-instruments-none_yet_add_the_first = Ancora nessuno. Aggiungere il primo.
desk-instruments-standing = Stato
desk-instruments-last_good_check = Ultimo controllo buono
desk-invited-shown_this_once = Mostrato solo ora
desk-invited-scans_this_or_opens_the = { $name } scansiona questo, o apre il collegamento, entro { $days } giorni, e sceglie una password che nessun altro conosce. Vale una volta; uno nuovo lo annulla.
desk-invited-hand_it_over_yourself_whoever = Consegnarlo di persona: chi lo apre per primo accede come { $code }.
desk-invited-until_then_the_old_password = Fino ad allora la vecchia password apre come prima.
desk-invited-this_link_is_plain_http = Questo collegamento è http semplice: lavora su questo computer, e un altro invierebbe la password senza protezione.
desk-invited-it_is_handed_over = È consegnato
desk-invited-invitation_for = Invito per { $name }
desk-invited-on_this_computer_alone = solo su questo computer
desk-judging-all_as_a_file_csv = Tutto come file (CSV)
desk-judging-rules_digest_the_book_is = Regole { $number }, impronta { $code }. Il registro si giudica con esse dal { $when }
desk-judging-all_was_judged_at = tutto fu giudicato il { $when }
desk-judging-other_than_before = Diverso da prima: { $parts }.
desk-judging-not_all_is_judged_yet = Non tutto è ancora giudicato. Ciò che risulta diverso si elenca via via.
desk-judging-so_far = finora
desk-judging-nothing_came_out_otherwise = Nulla è risultato diverso{ $what }.
desk-judging-sums_that_came_out_otherwise = Somme risultate diverse
desk-judging-none_stock_and_accounts_are = Nessuna. Giacenze e conti sono com’erano.
desk-judging-entries_move_other_amounts_than =
    { $sums_many } { $sums_many ->
        [one] annotazione muove
       *[other] annotazioni muovono
    } quantità diverse da prima
desk-judging-the_first_are_listed_the = sono elencate le prime { $most }, il file le ha tutte
desk-judging-a_closed_month_keeps_its = Un mese chiuso tiene le sue cifre: ciò che vi è cambiato è un conguaglio del primo mese aperto.
desk-judging-before = Prima: { $moves }
desk-judging-now = Ora: { $moves }
desk-judging-questions_that_came_or_went = Domande venute o andate
desk-judging-read_by = Letto da { $read_by }, { $when }.
desk-judging-i_have_read_it = L’ho letto
desk-judging-rules_of_version = Regole della versione { $version }
desk-judging-came_to = Venute a
desk-judging-went_from = Andate da
desk-judging-weighs_otherwise_for = Peso diverso per
desk-parties-new = Nuovo
desk-parties-none_yet_add_them_one = Ancora nessuno. Aggiungerli uno per uno, o prendere un foglio.
desk-parties-sells_or_buys = Vende o compra
desk-parties-address = Indirizzo
desk-parties-note = Nota
desk-parties-is_there_already_as_a = { $name } c’è già come { $role }. Cambiare quello.
desk-parties-there_is_nobody_of_this = Non c’è nessuno di questo nome. Riguardare l’elenco.
desk-parties-kept = Conservato.
desk-party_edit-a_papers_and_entries_call = Ruolo: { $role }. Carte e annotazioni li chiamano con questo nome, quindi resta; con un altro nome sono qualcuno di nuovo.
desk-party_edit-new_customer_or_grower = Nuovo cliente o produttore
desk-party_edit-supplier = fornitore
desk-party_edit-customer = cliente
desk-passkey_new-give_it_a_name_by = Darle un nome con cui riconoscerla dopo, come il computer o la chiave su cui sta. Poi il browser chiede dito, volto o PIN.
desk-passkey_new-this_browser_makes_no_passkeys = Questo browser qui non fa passkey. Prenderne uno che le fa, su https, o continuare con la password.
desk-passkey_new-make_it = Crearla
desk-passkey_new-made_at_it_is_good = Fatta presso { $rp_id }, vale solo là. Chi perde il dispositivo ne termina la chiave sulla pagina prima.
desk-passkey_new-a_new_passkey = Una nuova passkey
desk-people-code = Codice
desk-people-roles = Ruoli
desk-people-at_the_desk = In ufficio
desk-people-invited = invitato
desk-people-password = password
desk-people-ended = { $count } terminati.
desk-people-there_is_a_already_pick = C’è già un { $code }. Scegliere un altro codice.
desk-people-somebody_must_keep_the_office = Qualcuno deve tenere il ruolo d’ufficio. Darlo prima a un’altra persona.
desk-people-there_is_no_such_person = Non c’è una persona simile.
desk-people-kept = Conservato.
desk-person_edit-the_floor_code_names_who = Il codice di reparto dice chi annota su un telefono comune, anche offline. Non è una serratura.
desk-person_edit-signing_in_at_the_desk = Accesso all’ufficio
desk-person_edit-invited_until = Invitato fino al { $when }.
desk-person_edit-has_a_password_which_nobody = Ha una password, che nessun altro conosce.
desk-person_edit-has_no_password_yet = Non ha ancora una password.
desk-person_edit-sessions_open =
    { $n_open } { $n_open ->
        [one] sessione aperta
       *[other] sessioni aperte
    }.
desk-person_edit-end_the_sessions = Terminare le sessioni
desk-person_edit-who_is_to_sign_in = Chi deve accedere all’ufficio si invita dopo, sulla sua pagina.
desk-person_edit-invite_to_a_new_password = Invitare a una nuova password
desk-person_edit-invite_to_the_desk = Invitare all’ufficio
desk-readers-title = Altri programmi
desk-readers-about = Un foglio di calcolo, un cruscotto o un calendario legge ciò che la sua chiave permette, fino al suo giorno, e non cambia nulla. Come: { $link }.
desk-readers-name = Nome del programma
desk-readers-name_it = Dargli un nome, come «foglio di cantina».
desk-readers-good_for = Vale per
desk-readers-days =
    { PLURAL($days) ->
        [one] { $days } giorno
       *[other] { $days } giorni
    }
desk-readers-may_read = Può leggere
desk-readers-tick_what = Spuntare che cosa può leggere.
desk-readers-scope_entries = annotazioni
desk-readers-scope_stock = che cosa sta dove
desk-readers-scope_periods = periodi
desk-readers-scope_trace = tracce
desk-readers-scope_cards = schede dei recipienti
desk-readers-scope_calendar = il calendario di ciò che è da fare
desk-readers-make = Creare una chiave
desk-readers-key_for = Chiave per { $name }
desk-readers-shown_once = Mostrata solo ora. Chi la ha legge lo stesso; tenerla dove si tengono le password.
desk-readers-calendar_at = I calendari prendono questo indirizzo:
desk-readers-it_is_kept = È conservata
desk-readers-none = Nessun programma ha una chiave.
desk-readers-tool = Programma
desk-readers-reads = Legge
desk-readers-until = Fino al
desk-readers-used = Ultimo uso
desk-readers-never = mai
desk-readers-over = terminata
desk-readers-end = Terminare
desk-readers-ended = La chiave di { $name } non apre più nulla.
desk-readers-no_such = Non c’è una chiave simile. Forse è già stata terminata.
desk-readers-calendar_name = { $house }: da fare
desk-readers-ferment_ends = { $name }: la fermentazione finisce circa ora
desk-phones-let_in = Ammettere { $data }
desk-phones-scan_this_with_the_phones = Scansionare con la fotocamera del telefono, una volta, entro un giorno. Come collegamento: { $link }
desk-phones-the_camera_does_not_scan = La fotocamera non scansiona?
desk-phones-open_on_the_phone_and = Aprire { $bold } sul telefono e digitare, entro { $minutes } minuti:
desk-phones-no_code_has_0_o = Nessun codice contiene 0, O, 1, I, L o U, e l’ultimo carattere controlla gli altri. Scansionato o digitato, vale per un telefono.
desk-phones-a_phone_that_does_not = Un telefono che non si fida ancora di questo server
desk-phones-it_opens = Apre prima { $place }. Là deve mostrare questi gruppi: { $groups }
desk-phones-the_trust_page = la pagina di fiducia
desk-phones-make_a_code_for_a = Creare un codice per un nuovo telefono
desk-phones-no_phone_is_let_in = Ancora nessun telefono è ammesso.
desk-phones-entries_seen = Annotazioni viste
desk-phones-not_handed_in = Non consegnate
desk-phones-clock = Orologio
desk-phones-leave = Lasciare
desk-phones-never = mai
desk-phones-none_known = nessuna nota
desk-phones-shut_out = escluso { $when }
desk-phones-shut_out2 = Escludere
desk-phones-a_missing_count_means_the = Un numero mancante vuol dire che il telefono ha annotato qualcosa che non è arrivato. Lo consegna da sé quando incontra il server.
desk-phones-counts_twice = Conta due volte:
desk-phones-more_than_one_entry_has = { $bold } più di un’annotazione ha lo stesso numero di questo telefono. Ce ne sono due copie, o fu ripreso da una copia più vecchia. Tutte le annotazioni sono nel registro. Cercare l’altro telefono; se non si capisce, escluderlo e ammetterlo di nuovo.
desk-phones-counts_twice2 = conta due volte
desk-phones-missing = mancante
desk-phones-clock_off =
    { $minutes } min { $is_slow ->
        [yes] indietro
       *[no] avanti
    }
desk-phones-shut_out_entries_it_still = Escluso. Le annotazioni che contiene ancora vi sono al sicuro, ed entrano quando è ammesso di nuovo.
desk-phones-there_is_no_such_phone = Non c’è un telefono simile.
desk-proof-lost_heads = Capisaldi persi
desk-proof-witnesses = Testimoni
desk-proof-each_backup_each_phone_and = Ogni copia, ogni telefono e il gruppo tengono capisaldi: brevi prove, firmate qui con la chiave { $code }, di tutto ciò che il registro conteneva in un dato momento. Un registro riscritto da allora ha altri capisaldi. Fino all’ultimo caposaldo che qualcuno tiene altrove, nessuna riga si può cambiare o togliere senza che si veda; quelle dopo sì.
desk-proof-the_registry_is_proved_column = L’anagrafe è provata colonna per colonna dal { $when }.
desk-proof-the_registry_is_proved_column2 = L’anagrafe è provata colonna per colonna dall’inizio.
desk-proof-compares_all_of_it = { $code } confronta tutto.
desk-proof-shown_once_and_no_longer = Mostrati una volta, e non più nel registro
desk-proof-came_back = Tornato
desk-proof-shown = Mostrato
desk-proof-what_differs = Che cosa differisce
desk-proof-explained = spiegato
desk-proof-if_nobody_restored_an_older = Se nessuno ha ripristinato una copia più vecchia, qualcuno ha cambiato il file del registro. Tenere questa cartella com’è, e confrontare con una copia: { $code }.
desk-proof-why_the_book_lacks_them = Perché il registro non li ha
desk-proof-note_it = Prenderne nota
desk-proof-who_keeps_heads = Chi tiene i capisaldi
desk-proof-nobody_yet_phones_begin_with = Ancora nessuno. I telefoni iniziano con la prossima consegna, le copie con la prossima.
desk-proof-gave_it_back = Restituito
desk-proof-beside_the_backups = Accanto alle copie
desk-proof-that_the_first_backup_makes = che fa la prima copia
desk-proof-not_explained = non spiegato
desk-proof-noted_the_heads_stay_on = Preso nota. I capisaldi restano nell’elenco.
desk-rules-rules_the_book_was_judged = Regole con cui si è giudicato il registro
desk-rules-the_book_is_judged_by = Il registro si giudica con le regole del programma che lo tiene. Dove una versione ne porta altre, ogni annotazione si giudica di nuovo mentre le consegne continuano. Ciò che è risultato diverso sta qui finché qualcuno l’ha letto.
desk-rules-version = Versione
desk-rules-all_judged = Tutto giudicato
desk-rules-read_by = Letto da
desk-rules-entries =
    { $unread } { $unread ->
        [one] annotazione
       *[other] annotazioni
    }
desk-rules-to_read = da leggere
desk-rules-kinds_of_entry = generi di annotazione
desk-rules-sums_and_tables = calcoli e tavole
desk-rules-the_fold = il riepilogo
desk-rules-kept_you_have_read_it = Conservato: risulta letto.
desk-rules-l_pure_alcohol = { $flow } L di alcole puro
desk-rules-the_book_was_never_judged = Il registro non fu mai giudicato con queste. Guardare l’elenco.
desk-rules-the_run = la cotta
desk-settings-settings = Impostazioni
desk-settings-changes = Cambiamenti
desk-settings-the_house = La casa
desk-settings-the_office_changes_the_house = { $name }. L’ufficio cambia la casa e le persone, ed esclude i telefoni.
desk-settings-set_a_range = Fissare un campo
desk-settings-set_a_limit = Fissare un limite
desk-settings-set = { $count } fissati.
desk-settings-check_due = Controllo il
desk-settings-by_which_the_book_is = Con cui si giudica il registro, e che cosa è risultato diverso con altre.
desk-settings-backups = Copie
desk-settings-not_encrypted_whoever_finds_one = Non cifrate: chi ne trova una la legge. { $code } sul server fa la chiave.
desk-settings-each_is_encrypted_to_the = Ognuna è cifrata con la chiave della casa.
desk-settings-who_changed_what = Chi ha cambiato che cosa
desk-settings-nothing_was_changed_yet = Ancora nulla è cambiato.
desk-settings-kept = Conservato.
desk-settings-there_is_no_such_instrument = Non c’è uno strumento simile.
desk-you-sessions = Sessioni
desk-you-passkeys = Passkey
desk-you-end_the_passkey = Terminare la passkey { $name }
desk-you-keep_the_house = curare la casa
desk-you-do_everything = fare tutto
desk-you-signed_in_as_who_may = Accesso come { $bold }, che può { $what }.
desk-you-where_you_are_signed_in = Dove si è acceduti
desk-you-the_list_begins_with_the = L’elenco inizia con il prossimo accesso.
desk-you-browser = Browser
desk-you-end = Fine
desk-you-last_used = Ultimo uso
desk-you-end_it = Terminarla
desk-you-end_all_others = Terminare tutte le altre
desk-you-a_session_ends_hours_after = Una sessione finisce { $idle_h } ore dopo l’ultimo uso, e { $most_h } ore dopo l’inizio comunque si usi.
desk-you-your_passkeys = Le proprie passkey
desk-you-a_passkey_opens_the_desk = Una passkey apre l’ufficio con dito, volto o PIN di questo computer, di un telefono o di una chiave di sicurezza, senza password da digitare. La casa ne tiene solo la metà pubblica.
desk-you-passkey = Passkey
desk-you-good_at = Vale presso
desk-you-made = Fatta
desk-you-you_have_none_yet = Ancora nessuna.
desk-you-add_a_passkey = Aggiungere una passkey
desk-you-passkeys_are_bound_to_a = Le passkey sono legate a un nome. Per aggiungerne una, aprire l’ufficio con il nome della casa, non con un indirizzo di cifre.
desk-you-your_password = La propria password
desk-you-change_it = Cambiarla
desk-you-forgotten_the_office_makes_you = Dimenticata? L’ufficio fa un invito; nessuno può leggere la vecchia.
desk-you-here = qui
desk-you-look = guardare
desk-you-ended = Terminata.
desk-you-ended_you_are_signed_in = { $ended } terminate. Accesso ora solo qui.
desk-you-ended_it_opens_nothing_any = Terminata: non apre più nulla. Le sessioni che ha iniziato si possono terminare sotto.
desk-you-that_is_not_your_password = Non è la propria password. Digitarla di nuovo.
desk-you-there_is_no_such_session = Quella sessione non c’è più.
desk-you-no_passkey_can_be_made = A questo indirizzo non si fanno passkey. Aprire l’ufficio con il nome della casa.
desk-you-there_is_no_such_passkey = Quella passkey non c’è più.
desk-you-your_password_is_changed_you = La password è cambiata. Accesso ora solo qui.
desk-you-this_took_too_long_or = È passato troppo tempo, o non è ciò che si chiedeva. Premere ancora una volta.
desk-you-kept_you_can_sign_in = Conservata. D’ora in poi si può accedere con essa.
desk-laboratory_parts-results_of = Risultati di { $document }
desk-laboratory_parts-no_limit_here = qui nessun limite
desk-laboratory_parts-substance = Sostanza
desk-laboratory_parts-found_and_how_it_stands = Trovato, e come sta
desk-laboratory_parts-sample_of = { $link } · campione del { $taken_on }
desk-laboratory_parts-from = da { $link }
desk-laboratory_parts-not_tested_a_hydrometer_sees = Non analizzato: { $untested }. Un areometro non ne vede nulla.
desk-certificates-a_limit_and_a_result = { $caution } Qui limite e risultato stanno con la loro fonte e con quanto differiscono i laboratori. Nessun areometro, densimetro o rifrattometro distingue il metanolo dall’etanolo.
desk-certificates-the_newest_of_all_are = Gli ultimi { $count } di { $count2 }; tutti sono fra le annotazioni.
desk-certificates-over_or_not_safely_under = Sopra o non con certezza sotto
desk-certificates-no_result_is_over_a = Nessun risultato è sopra un limite o non con certezza sotto.
desk-certificates-no_certificate_yet_log_one = Ancora nessun certificato. Annotarne uno dal suo recipiente, o qui per il distillato già in bottiglia.
desk-casks_by_year-at_the_end_of_a = A fine mese
desk-casks_by_year-casks_by_kind_and_year = Botti per tipo e anno
desk-casks_by_year-at_the_end_of = Alla fine di
desk-casks_by_year-filled_casks = Botti piene { $when }, per contenuto e anno di riempimento; { $what } all’ultimo accertamento.
desk-casks_by_year-at_the_end_of2 = alla fine di { $month }
desk-casks_by_year-now = ora
desk-casks_by_year-no_cask_is_full = Ancora nessuna botte è piena.
desk-casks_by_year-wood = Legno
desk-casks_by_year-with = Con ±
desk-casks_by_year-by_papers_only = solo secondo le carte
desk-casks_by_year-some_by_papers = { $casks } solo secondo le carte
desk-casks_by_year-no_cask_was_full = Allora nessuna botte è piena.
desk-close-what_is_closed = Che cosa si chiude
desk-close-the_entry_of_that_is = L’annotazione di { $mark } su cui si domanda
desk-close-in = Entrata, { $what }
desk-close-out = Uscita, { $what }
desk-close-end = Fine, { $what }
desk-close-every_line_with_its = Ogni riga, con il suo ±
desk-close-what_is_made_of = Di che cosa è fatto ±
desk-close-in_the_name_of_this = A nome di { $name }, questo chiude { $months } per sempre: le cifre restano come sono. Un’annotazione che arriva dopo su questo tempo si conguaglia nel primo mese aperto, dove tutti la vedono.
desk-close-months_to = { $count } mesi, da { $first } a { $last },
desk-close-each_of_them = ognuno di essi
desk-close-look_at_first = Guardare prima { $link }.
desk-close-answer_them =
    rispondere { $count ->
        [one] a questa
       *[other] a queste
    }
desk-close-questions_are_open_read_each =
    { $count } { $count ->
        [one] domanda è aperta
       *[other] domande sono aperte
    }. Leggerle tutte, e dirlo; o { $link }. La chiusura porta per sempre ciò che era aperto.
desk-close-i_have_looked_at_these = Ho guardato queste cifre
desk-close-close = Chiudere { $name }
desk-close-leave_it_open = Lasciarlo aperto
desk-close-back_to = Torna a { $name }
desk-held-by_account = Per conto
desk-held-the_least_known_first = I meno noti per primi
desk-held-no_vessel_held_anything_measured = Nessun recipiente conteneva qualcosa di misurato alla fine di { $name }, o troppi per seguirli tutti.
desk-held-at_the_end = Alla fine, { $what }
desk-held-of_it_measured = Di cui misurato
desk-held-known_to = Noto a
desk-held-measured_anew_these_make_the = Rimisurati, questi rendono meglio nota la fine.
desk-held-last_measured = Misurato l’ultima volta
desk-held-only_what_came_in = solo ciò che è entrato
desk-held-more_are_better_known = Altri { $more } sono meglio noti.
desk-held-of_what_stood_there = : ± di ciò che vi stava
desk-period-came_after_the_last_close = Arrivato dopo l’ultima chiusura
desk-period-close_it = Chiuderlo
desk-period-was_closed_by_on_digest = { $month } fu chiuso da { $person } il { $when }, impronta { $code }.
desk-period-the_rest_is_open = Il resto è aperto.
desk-period-was_closed_with_questions_open =
    { $month } fu chiuso con { $count } { $count ->
        [one] domanda aperta, letta
       *[other] domande aperte, ognuna letta
    } da { $person }
desk-period-what_came_to_light_after = Che cosa è emerso dopo la chiusura. Le cifre sopra restano come firmate; la differenza si conguaglia nel primo mese aperto.
desk-period-without_adjustments_each_figure_in = Senza conguagli: ogni cifra nel mese a cui appartiene.
desk-period-came = Arrivato
desk-period-period = Periodo { $name }
desk-periods-casks_by_year = Botti per anno
desk-periods-what_was_on_hand_at = Che cosa era in giacenza alla fine di ogni trimestre e mese, in { $what }.
desk-periods-part_closed = chiuso in parte
desk-periods-changed_since = cambiato da allora
desk-periods-tick_that_you_have_looked = Spuntare che si sono guardate le cifre, poi chiudere.
desk-periods-is_closed_what_comes_to = { $name } è chiuso. Ciò che emerge ora si conguaglia nel primo mese aperto.
desk-records-records = Registri, { $where }
desk-records-rules_change_check_todays_text = { $caution } Le regole cambiano: controllare il testo di oggi.
desk-records-record = Registro
desk-records-what_it_asks_for = Che cosa chiede
desk-records-where_the_book_holds_it = Dove lo tiene il registro
desk-records-not_held = Non tenuto
desk-records-when_keep = Quando: { $when }. Conservare: { $keep }.
desk-records-signed_by = Firmato da: { $sign }.
desk-records-source = Fonte: { $source }.
desk-records-eu = UE
desk-records-uk = UK
desk-seasons-litres_of_pure_alcohol_at = Litri di alcole puro a 20 °C
desk-seasons-from_fruit_to_spirit_in = Dalla frutta al distillato in un conto: con che cosa si sono caricati gli alambicchi, e dov’è. { $what }.
desk-seasons-no_fruit_has_come_and = Ancora nessuna frutta è arrivata e nessun alambicco ha lavorato.
desk-seasons-season = Campagna { $name }
desk-seasons-of_the_wash = del fermentato
desk-seasons-l_of_pure_alcohol_from = L di alcole puro da 100 kg
desk-seasons-of_fruit_what_a_ferment = { $l_per_100kg } { $what } di frutta. Ciò che una fermentazione ha dato e nessun alambicco ha avuto è ancora nei tini, o andato con le fecce.
desk-seasons-litres_gauged_not_litres_taxed = Litri accertati, non litri tassati
desk-seasons-gauged_not_taxed = Accertato, non tassato
desk-seasons-a_season_runs_twelve_months = { $what }. Una campagna va dodici mesi da luglio; una casa a sud dell’equatore fissa il suo mese nelle impostazioni.
desk-seasons-made_by_fermentation = Fatto per fermentazione
desk-seasons-hearts = Cuore
desk-seasons-heads = Teste
desk-seasons-feints_on_hand = Teste e code in giacenza
desk-seasons-stillage = Borlanda
desk-seasons-between_two_dips_of_low = Tra due altezze di flemma
desk-seasons-found_by_gauges_after_collection = Trovato da accertamenti dopo la raccolta
desk-seasons-lost_out_of_the_stills = Perso dagli alambicchi, per annotazione
desk-seasons-on_a_still_now = Ora su un alambicco
desk-seasons-made_of_fruit = Fatto per fermentazione da { $fruit } di frutta
desk-seasons-wash_charged = Fermentato caricato in { $runs } cotte
desk-runs_parts-in_out = Entrati { $charged }, usciti { $came }:
desk-runs_parts-not_accounted_for = { $open }{ $pure } ({ $share } %) non giustificati.
desk-runs_parts-more_than_went_in = { $open }{ $pure } ({ $share } %) più di quanto è entrato.
desk-runs_parts-stillage_was_not_read_taken = Borlanda non letta: presa a { $stillage_pct } { $what }.
desk-runs_parts-plans = Piani
desk-runs_parts-low_look_at_fruit_ferment = bassa: guardare frutta, fermentazione, bilancio
desk-runs_parts-high_look_at_weights_and = alta: guardare pesi e accertamenti
desk-runs_parts-in = entrati
desk-runs_parts-out = usciti
desk-beside-runs_beside_each_other = Cotte a confronto
desk-beside-list_of_runs = elenco delle cotte
desk-beside-tick_two_to_runs_in = Spuntare da due a { $most } cotte nell’{ $link }.
desk-beside-still_began = Alambicco, inizio
desk-beside-charged = Caricato, { $what }
desk-beside-feints_in = Teste e code dentro, { $what }
desk-beside-hearts_at = Cuore, { $what } a { $what2 }
desk-beside-hearts_share_of_the_charge = Cuore, quota della carica
desk-beside-hearts_begin_at = Il cuore inizia a
desk-beside-tails_begin_at = Le code iniziano a
desk-beside-from_100_kg_l_pure = Da 100 kg, L di alcole puro
desk-beside-from_100_lb_proof_gal = Da 100 lb, proof gal
desk-beside-over_alcohol = Titolo effettivo su alcole puro raccolto
desk-feints-feints_by_fruit = Teste e code per frutta
desk-feints-no_feints_yet_they_come = Ancora niente teste e code. Vengono con il loro accertamento.
desk-feints-heads_and_tails_by_fruit = Teste e code per frutta: che cosa fu messo da parte, che cosa ebbero cotte seguenti, che cosa fu distrutto, che cosa è presente. Una cotta seguente può essere di altra frutta: ciò che ebbe conta per la frutta che si distillò.
desk-feints-heads_set_aside = Teste messe da parte
desk-feints-tails_set_aside = Code messe da parte
desk-feints-used_in_its_runs = Usate nelle sue cotte
desk-feints-destroyed = Distrutto
desk-feints-standing_is_by_what_was = Il presente è secondo l’ultimo nome dato al recipiente. Un areometro non vede il metanolo: teste e code si tengono secondo ciò che dicono laboratorio e legge, non secondo il titolo.
desk-plans-cut_plans_and_best_runs = Piani dei tagli e cotte migliori
desk-plans-plan_for_any_still = Piano per ogni alambicco
desk-plans-for_one_still_log_it = { $link } Per un alambicco, annotarlo sul suo foglio di cotta. Conta l’ultimo piano; decide il naso.
desk-plans-no_plan_yet_and_no = Ancora nessun piano, e nessuna cotta è segnata come migliore.
desk-plans-heads = Teste, { $what }
desk-plans-hearts_to = Cuore fino a, { $what }
desk-plans-tails_to = Code fino a, { $what }
desk-plans-who_when = Chi, quando
desk-plans-blind_tasting = Degustazione alla cieca { $tasting }
desk-plans-best_runs = Cotte migliori
desk-run-balance = Bilancio
desk-run-on_from = { $what } { $batch } su { $link }, dal { $when }
desk-run-to = al { $when }
desk-run-charge = Carica { $volume_l }
desk-run-with = con { $lpa_l }{ $pure }
desk-run-it_is_known_to_by = È noto a { $uncertain } { $what }, secondo la classe di ciò che fu letto.
desk-run-usual_is_0_5_to = Usuale da 0,5 a 2 %.
desk-run-from_of_wash_of_fruit = { $bold }, { $per_100_l } da { $what } di fermentato; { $kg } di frutta per la sua quota della fermentazione.
desk-run-l_from_100_kg = L da 100 kg
desk-run-flat_rate_for_in_germany = Forfait per { $name }: { $de_l }{ $what } in Germania
desk-run-in_austria = { $at_l } in Austria
desk-run-this_is_of_the_first = questo è { $of_flat_rate } del primo.
desk-run-plan = Piano:
desk-run-heads = teste { $heads_l };
desk-run-hearts_to = cuore fino a { $hearts_to_pct } { $what };
desk-run-tails_to = code fino a { $tails_to_pct } { $what };
desk-run-blind_tasting = degustazione alla cieca { $tasting }
desk-run-resting_on = poggia su { $link }
desk-run-best_run_of = Cotta migliore di { $what }
desk-run-why_it_is_the_best = Perché è la migliore
desk-run-mark_as_the_best_run = Segnare come la migliore cotta di { $what }
desk-run-cuts_and_events = Tagli ed eventi
desk-run-event = Evento
desk-run-receiver = Raccolta
desk-run-true = { $what } effettivi
desk-run-logged = annotato { $typed_at }
desk-run-fractions = Frazioni
desk-run-none_gauged_yet = Ancora nessuna accertata.
desk-run-fraction = Frazione
desk-run-glass = Areometro
desk-run-spirit = Distillato { $what }
desk-run-vapour = Vapore { $what }
desk-run-dip = Altezza, { $what }
desk-run-a_hydrometer_cannot_see_methanol = Un areometro non vede il metanolo. Qui non analizzati: metanolo, carbammato di etile.
desk-run-l_pure_alcohol_from_100 = L di alcole puro da 100 kg
desk-run-the_book_has_no_such = Il registro non ha una cotta simile. Cercarla nell’elenco delle cotte.
desk-run-marked_as_the_best_run = Segnata come la migliore cotta di { $what }.
desk-run-not_marked = Non segnata:
desk-run-not_accounted_for = non giustificato
desk-run-this_still = questo alambicco
desk-run-true_strength_through = Titolo effettivo lungo la cotta
desk-run-true_strength = titolo effettivo
desk-run-cut_logged = { $at }, annotato { $typed_at }
desk-runs-no_runs_yet_a_charge = Ancora nessuna cotta. La inizia una carica su un alambicco.
desk-runs-beside_each_other = A confronto
desk-runs-tick_two_to = Spuntare da due a { $most }.
desk-runs-tick = Spuntare
desk-runs-began = Inizio
desk-runs-charge = Carica, { $what }
desk-runs-cuts = Tagli
desk-runs-beside_others = { $name } accanto ad altre
desk-runs-best = migliore
desk-runs-tails =
    { $is_heads_cut ->
        [yes] cuore
       *[no] code
    } { $at }
desk-runs-logged = (annotato { $typed_at })
desk-runs-at = a { $true_strength } { $what }
desk-runs-pure_alcohol_in_l = Alcole puro entrato, L
desk-runs-proof_gal_in = Proof gal entrati
desk-yields-yield_of_each_ferment = Resa di ogni fermentazione
desk-yields-yield_by_fruit_and_year = Resa per frutta e anno
desk-yields-no_yield_yet_it_needs = Ancora nessuna resa. Serve frutta pesata, una carica dal suo tino, e cuore o flemma accertati.
desk-yields-what_each_ferment_gave_all = Che cosa diede ogni fermentazione: tutto ciò che passò, meno teste e code entrate. I forfait sono medie prudenti su cui si calcola l’accisa, non obiettivi; sotto il 60 % o sopra il 150 % vale la pena guardare (uso comune). Gli anni della casa dicono di più.
desk-yields-first_run = Prima cotta
desk-yields-fruit_run = Frutta distillata, { $what }
desk-yields-wash_run = Fermentato distillato, { $what }
desk-yields-made = Fatto, { $what }
desk-yields-n100_kg = 100 kg
desk-yields-n100_lb = 100 lb
desk-yields-from = da { $what }
desk-yields-flat_rate_de = Forfait DE
desk-yields-flat_rate_at = Forfait AT
desk-yields-of_the_rate = Del forfait
desk-yields-a_100_kg = per 100 kg
desk-yields-the_houses_own_years_from = Gli anni della casa, da { $what }
desk-yields-ferment =
    { $yield } { $what }, { $ferments } { $ferments ->
        [one] fermentazione
       *[other] fermentazioni
    }
desk-yields-where_the_flat_rates_come = Da dove vengono i forfait
desk-yields-check_them_against_the_order = Controllarli con l’ordinanza ora in vigore prima di calcolarvi qualcosa.
desk-yields-proof_gallons_the_flat_rates = Proof gallon; i forfait come pubblicati, in litri di alcole puro
desk-yields-austria = Austria
desk-yields-spread_in_handbooks = Campo nei manuali
desk-yields-a_ferment = fermentazione
desk-lines-the_whole_book = Tutto il registro
desk-lines-find = Cercare
desk-lines-mark_lot_person_paper_no = sigla, lotto, persona, n. carta
desk-lines-what_answers = Che cosa risponde
desk-lines-find_in_the_book = Cercare nel registro
desk-lines-shown = { $many } mostrati. La freccia giù vi porta.
desk-lines-nothing_answers = Nulla risponde.
desk-hits-all_that_answers_to = Tutto ciò che risponde a «{ $text }»
desk-hits-nothing_answers_to = Nulla risponde a «{ $text }».
desk-search-the_index_of_older_entries = L’indice delle annotazioni più vecchie è ancora in preparazione. Ciò che è entrato di recente si trova; il resto segue da sé.
desk-search-everything_that_answers = Tutto ciò che risponde
desk-search-the_first_type_more_of = I primi { $most }: digitare di più.
desk-search-more_of_these = Altri di questi
desk-search-did_you_mean = Si intendeva
desk-search-list_of_entries = elenco delle annotazioni
desk-search-try_a_shorter_beginning_or = Provare un inizio più corto, o una parola in meno. Le annotazioni senza parole si trovano dal recipiente, o nell’{ $link }. Ciò che attende su un telefono non è ancora nel registro.
desk-search-type_the_beginning_of_a = Digitare l’inizio di una sigla, di una partita o lotto, di una cotta, di un produttore, del numero di una carta, di una persona, di uno strumento, o una parola di una nota. C6, c-006 e C 006 trovano la stessa botte; gli accenti non contano. Anche il numero di un’annotazione la trova.
desk-search-found_for = Trovato per «{ $text }»
desk-search-search = Ricerca
desk-search-a_trace_goes_both_ways = Una traccia va nei due sensi: da bottiglia, botte o cotta indietro alla frutta, e da un carico di frutta avanti a ogni bottiglia.
desk-search-the_book_has_nothing_by = Il registro non ha nulla con quel nome. Provare una sigla, una partita, il numero di un cartone, o parte del nome di un produttore.
desk-search-that_answer_to =
    { $are_more ->
        [yes] I primi { $count }
       *[no] { $count }
    } che rispondono a «{ $text }»
desk-search-nothing_among = Fra { $group } nulla risponde a «{ $text }».
desk-search-a_vessel = recipiente
desk-search-batches_and_lots = Partite e lotti
desk-search-bottlings = Imbottigliamenti
desk-search-fruit_taken_in = Frutta ricevuta
desk-search-papers = Carte
desk-search-entries_and_remarks = Annotazioni e note
desk-search-put_right_since = rettificato poi
desk-search-waits_for_an_answer = attende risposta
desk-search-out_of_use = fuori servizio
desk-search-since = dal { $since }
desk-search-no = { $day }, { $person }, n. { $number }
desk-search-to = da { $since } a { $until }
desk-search-to2 = a { $last }
desk-look-row = Riga { $number }, { $head_of }
desk-look-row2 = riga
desk-look-computed = calcolato
desk-look-pure_alcohol_l = Alcole puro, L{ $part }
desk-look-rows = { $name } · { $count } righe · { $code }
desk-look-look_again = Ricontrollare
desk-look-nothing_is_in_the_book = Nulla è ancora nel registro.
desk-look-cell_is_a_formula_what =
    { $formulas ->
        [one] { $formulas } cella è una formula: si prende ciò che mostrava per ultimo.
       *[other] { $formulas } celle sono formule: si prende ciò che mostravano per ultimo.
    }
desk-look-read_them_so = Leggerli così
desk-look-which_column_is_which = Quale colonna è quale
desk-look-of_taken = Prese { $count } di { $count2 }
desk-look-these_rows_are = Queste righe sono
desk-look-not_said = non detto
desk-look-in = in { $unit }
desk-look-none_of_these = nessuno di questi
desk-look-more_rows_fit = Altre { $count } righe vanno
desk-look-rows_to = righe da { $others } a { $others2 }
desk-look-what_does_not_fit_in = Che cosa non va, in parole
desk-look-row3 = riga { $number }
desk-look-leave_row_out = Lasciare fuori la riga { $number }
desk-look-more_put_these_right_first = Altre { $more }. Prima rettificare queste, o nel foglio.
desk-look-rows_fit_they_bring = { $count } righe vanno. Portano
desk-look-l_of_pure_alcohol = { $bold } L di alcole puro
desk-look-row_fit =
    { $count ->
        [one] { $count } riga va.
       *[other] { $count } righe vanno.
    }
desk-look-put_in_the_book = Mettere { $put } nel registro
desk-look-the_book_has_all_of = Il registro ha già tutto questo. Non c’è nulla da fare.
desk-look-nothing_fits_yet = Ancora nulla va.
desk-look-known_already = già noto
desk-look-does_not_fit = non va
desk-look-left_out = lasciato fuori
desk-look-days_in_digits = Giorni in cifre
desk-look-days_were_read_as = Giorni letti come
desk-look-day_month_year = giorno, mese, anno
desk-look-month_day_year = mese, giorno, anno
desk-look-more_of = Altro: { $title }
desk-start-moving_in = Ingresso dati
desk-start-copy_the_rows_with_their = Copiare nel foglio di calcolo le righe con le intestazioni, e incollarle qui.
desk-start-template_of_csv = Modello: { $title }, CSV
desk-start-sheets = Fogli
desk-start-a_file = Un file
desk-start-csv_xlsx_or_ods_with = CSV, XLSX o ODS, con un’intestazione su ogni colonna, in qualsiasi ordine. Una cartella può avere più tabelle.
desk-start-or_pasted = O incollato
desk-start-nothing_is_written_before_you = Nulla si scrive prima del proprio sì.
desk-start-templates = Modelli
desk-start-all_in_one_workbook = Tutto in una cartella
desk-start-needed_more_may_be_there = servono; altre { $count } possono esserci
desk-start-put_in_so_far = Entrato finora
desk-start-no_sheet_yet = Ancora nessun foglio.
desk-start-no = N.
desk-taken-why_it_is_taken_back = Perché si annulla
desk-taken-the_file = Il file
desk-taken-another_sheet = Altro foglio
desk-taken-put_in_by_kept_as = Messo da { $person }, { $when }. Tenuto com’è arrivato, impronta { $code }.
desk-taken-by = { $when } da { $back_by }: { $reason }
desk-taken-take_the_whole_sheet_back = Annullare tutto il foglio
desk-taken-table = Tabella
desk-taken-row = Riga
desk-taken-which = Quale
desk-taken-opening_stock = giacenza iniziale
desk-taken-sheet = Foglio { $no }
desk-cautions-n20_to_30_vol = da 20 a 30 % vol
desk-cautions-n40_to_60_proof = da 40 a 60 proof
desk-cautions-n20_to_30_ml = da 20 a 30 mL
desk-cautions-about_1_fl_oz = circa 1 fl oz
desk-cautions-reduce_to_a_glass_and = Ridurre a { $what }, { $what2 } a bicchiere, e sputare. Al massimo tre o quattro serie per seduta, acqua e pane semplice in mezzo, due minuti di riposo. Dopo l’assaggio nessuno guida o lavora a un alambicco o a una macchina. Le teste non si assaggiano mai: al massimo il naso. Un assaggio non assolve mai ciò che è nel distillato: metanolo, acido cianidrico e carbammato di etile non hanno un gusto che avvisa. Prima vengono le regole della casa, la legge locale e un laboratorio autorizzato.
desk-new-what_a_number_of_answers = Che cosa trova un numero di risposte
desk-new-triangle_three_glasses_one_is = Triangolo: tre bicchieri, uno è diverso. Duo-trio: uno è aperto, quale dei due è uguale? Coppia: quale ha di più di ciò che si chiede? Unilaterale dove si nomina prima A come risposta. Ordinamento: da tre a cinque campioni in ordine.
desk-new-of_sample_in_words = Del campione { $letter }, in parole
desk-new-tasters = Assaggiatori
desk-new-draw_the_codes_and_seal = Estrarre i codici e sigillarli
desk-new-a_triangle_at_a_risk = Un triangolo a un rischio del 5 %. Poche risposte trovano solo differenze grandi.
desk-new-right_at_least = Giuste, almeno
desk-new-found_if_half_perceive_it = Trovato se metà la percepisce
desk-new-found_four_times_in_five = Trovato quattro volte su cinque da
desk-new-who_perceive_it = { $what } % che la percepisce
desk-new-set_out_a_blind_tasting = Preparare una degustazione alla cieca
desk-new-n64_to_60_vol = da 64 a 60 % vol
desk-new-n128_to_120_proof = da 128 a 120 proof
desk-tasting-how_often_guessing_alone_gives = Quante volte il solo caso dà ogni numero di risposte giuste; questa degustazione ne ha date { $right } di { $answers }.
desk-tasting-who_has_answered = Chi ha risposto
desk-tasting-serving_sheet = Foglio di servizio
desk-tasting-risk = { $bold } { $method }, rischio { $alpha_pct } %
desk-tasting-served_at = servito a { $served }
desk-tasting-set_out_by_on = Preparata da { $person } il { $when }.
desk-tasting-what_follows_by = Che cosa segue, da { $person }: { $bold }
desk-tasting-answers_came_in_after_the =
    { $count } { $count ->
        [one] risposta arrivata
       *[other] risposte arrivate
    } dopo l’apertura, annotate prima secondo l’orologio del telefono: { $late }.
desk-tasting-bars_how_often_guessing_alone = Barre: quante volte il solo caso ne dà tante. Il segno: questa degustazione.
desk-tasting-plan_a_cut_that_rests = Pianificare un taglio che vi poggia
desk-tasting-plan_a_vat_that_rests = Pianificare un’unione che vi poggia
desk-tasting-it_was_opened_on_and = Fu aperta il { $when }, e nessuna risposta conta.
desk-tasting-letter = Lettera
desk-tasting-sample = Campione
desk-tasting-of_it = Dettaglio
desk-tasting-rank_sum = Somma dei ranghi
desk-tasting-batch = partita { $name }
desk-tasting-run = cotta { $name }
desk-tasting-taster = Assaggiatore
desk-tasting-glasses = Bicchieri
desk-tasting-named = Nominato
desk-tasting-how_sure = Quanto sicuri
desk-tasting-what_gave_it_away = Che cosa l’ha tradito
desk-tasting-not =
    { $picked }, { $is_right ->
        [yes] giusto
       *[no] no
    }
desk-tasting-entry = annotazione
desk-tasting-sealed_of_answers_are_in = Sigillata: { $count } di { $count2 } risposte sono dentro
desk-tasting-which_code_holds_which_sample = Quale codice ha quale campione lo sa solo chi versa. L’annotazione tiene il sigillo della chiave, così nessuno può cambiarla dopo.
desk-tasting-glasses_left_to_right = Bicchieri, da sinistra a destra
desk-tasting-tasters_answer_on_the_phone = Gli assaggiatori rispondono sul telefono, sotto Degustazione alla cieca. Funziona senza segnale.
desk-tasting-answers_that_are_not_in =
    { $are_in ->
        [yes] Tutte le risposte sono dentro.
       *[no] Le risposte non ancora dentro non conteranno.
    } Una volta aperta resta aperta.
desk-tasting-what_follows_if_you_know = Che cosa segue, se già si sa
desk-tasting-you_taste_in_this_one = In questa si assaggia. Si può aprirla dopo l’ultima risposta.
desk-tasting-blind_tasting = Degustazione alla cieca { $name }
desk-tasting-difference_found = differenza trovata
desk-tasting-no_difference_shown = nessuna differenza mostrata
desk-tasting-in = entrate
desk-tasting-run2 = cotta { $run }, { $what }
desk-tasting-the_book_has_no_tasting = Il registro non ha una degustazione di quel nome. Cercarla nell’elenco delle degustazioni.
desk-tasting-you_taste_in_this_one2 = In questa si assaggia. Chi assaggia può aprirla dopo l’ultima risposta.
desk-tasting-its_key_is_not_in = La sua chiave non è in questo registro: fu estratta dopo la copia da cui il registro viene. Versarla di nuovo.
desk-tasting-this_sheet_says_which_sample = Questo foglio dice quale campione è in quale bicchiere: è per chi versa, e nessun assaggiatore lo vede.
desk-tasting-not_said = non detto
desk-tasting-the_book_has_a_tasting = Il registro ha già una degustazione di quel nome. Dare a questa un altro nome.
desk-tasting-the_codes_are_drawn_and = I codici sono estratti e sigillati. Il telefono di ogni assaggiatore li ha con le prossime schede.
desk-tasting-it_is_open_answers_from = È aperta. Le risposte d’ora in poi non contano.
desk-tasting-by_guessing_alone_so_many = Per solo caso tante o più vengono { $times_in } ({ $p_words }).
desk-tasting-by_chance_alone_the_rank = Per solo caso le somme dei ranghi stanno così lontane { $times_in } ({ $p_words }, { $how }; cifra di Friedman { $friedman }).
desk-tasting-of_rank_sums_must_be = { $answers } di { $people }: le somme dei ranghi devono distare { $lsd } per contare.
desk-tasting-n1_time_in = 1 volta su { $min }
desk-tasting-named2 = nominato { $named }
desk-tasting-no_difference_shown_that_is = Nessuna differenza mostrata. Non è una prova che siano uguali.
desk-tasting-were_needed = ne servivano { $needed }
desk-tasting-so_few_answers_cannot_show = così poche risposte non possono mostrare una differenza a questo rischio
desk-tasting-can_find_nothing_at_a = { $answers } non possono trovare nulla a un rischio del { $tasting } %.
desk-tasting-of_find_a_difference_four = { $answers } di { $people } trovano una differenza quattro volte su cinque se almeno { $share } delle risposte la percepisce; una più piccola sfugge facilmente.
desk-tasting-the_order_is_more_than = L’ordine è più che caso. Distano: { $pairs }.
desk-tasting-counted_out_over_all_orders = contato su tutti gli ordini
desk-tasting-by_chi_square_which_is = con chi quadro, che per tante è vicino
desk-tasting-it_speaks_of_these_people = Parla di queste persone, non di chi beve in generale.
desk-tasting-answers =
    { $many ->
        [one] { $many } risposta
       *[other] { $many } risposte
    }
desk-tasting-people =
    { $many ->
        [one] { $many } persona
       *[other] { $many } persone
    }
desk-tasting-times_in_10 = { $min } volte su 10
desk-tasting-p_below_0_0001 = p sotto 0,0001
desk-tasting-they_can_be_told_apart = Si possono distinguere.
desk-tasting-is_named_more_often = { $named } è nominato più spesso.
desk-tasting-the_order_is_more_than2 = L’ordine è più che caso, ma nessuna coppia dista abbastanza per dire quale.
desk-tasting-no_order_shown_that_is = Nessun ordine mostrato. Non è una prova che siano uguali.
desk-tasting-of = { $right } di { $many } { $what }; { $needed }. { $says }
desk-tastings-set_out_a_tasting = Preparare una degustazione
desk-tastings-ask_one_question_before_pouring = Fare una domanda prima di versare. Chi assaggia non sa che cosa c’è in quale bicchiere; il registro conta quanto valgono le risposte. Le teste non si assaggiano mai.
desk-tastings-none_yet_set_one_out = Ancora nessuna. Prepararne una: due campioni, una domanda, e chi assaggia.
desk-tastings-tasting = Degustazione
desk-tastings-question = Domanda
desk-tastings-method = Metodo
desk-tastings-set_out = Preparata
desk-tastings-of = { $count } di { $count2 }
desk-tastings-nobody_answered = nessuno ha risposto
desk-tastings-sealed = sigillata
desk-asked-look_at_it = Guardarla: { $title }
desk-asked-more_about_it = altre { $count } su questa
desk-asked-all_questions_with_their_answers = Tutte le { $owed } domande, con le risposte
desk-asked-answer_them = Rispondere
desk-asked-no_figure_waits_for_an = Nessuna cifra attende risposta.
desk-asked-you = chi legge
desk-asked-it_stands = si mantiene
desk-asked-the_last_answer_was_by = L’ultima risposta fu { $near }, da { $who }: { $verdict }
desk-asked-what_comes_in_out_of = Qui starà ciò che arriva fuori campo.
desk-asked-all_answers = Tutte le risposte
desk-asked-look_at_it_on = Guardarla: { $title } su { $mark }
desk-asked-struck = depennata
desk-house-pure_alcohol_year_by_year = Alcole puro anno per anno
desk-house-the_house_holds = La casa contiene
desk-house-litres_of_pure_alcohol = litri di alcole puro
desk-house-by_the_book_at = { $what }, secondo il registro alle { $minute }
desk-house-less_than_on =
    { $more } { $is_more ->
        [yes] più
       *[no] meno
    } che il { $since }
desk-house-pure_alcohol_by_spirit = Alcole puro per distillato
desk-house-oldest = il più vecchio
desk-house-others = altri { $many }
desk-house-wash_and_runs_under_way = fermentato e cotte in corso
desk-house-at_the_ends_of_months = Alla fine dei mesi, come noto ora: tutto, e ciò che è in magazzino.
desk-house-year_by_year = Anno per anno
desk-house-in_storage = in magazzino
desk-house-in_processing = in lavorazione
desk-house-in_production = in produzione
desk-house-season = Campagna { $season }
desk-house-fruit_in = frutta entrata
desk-house-made = fatto
desk-house-left = uscito
desk-house-lost = perso
desk-house-pure_alcohol_in_the_house = Alcole puro nella casa
desk-house-all = tutti
desk-line-as_typed_likely_expected = { $part } come digitato { $part2 } probabile { $part3 } atteso
desk-line-the_day_on_a_line = Il giorno su una linea
desk-line-cleaned = pulito
desk-line-off = spenta { $at }
desk-line-reached = raggiunto: prima il naso
desk-line-too_little = letto ancora troppo poco
desk-line-working = in calcolo
desk-line-cut_to = taglio: { $part }
desk-line-end = fine
desk-line-end_of_run = fine cotta
desk-line-span = da { $low } a { $high }
desk-line-cleaned_at = pulito { $at }, { $person }
desk-line-off_since = { $run } è spenta da { $at }
desk-line-since = { $run }: { $part } da { $at }
desk-line-nothing = oggi nulla
desk-line-by_plan = secondo il piano
desk-line-as_last = come l’ultima volta
desk-line-was_expected = { $what }: atteso circa { $at }, { $by }: leggere ora, prima il naso
desk-line-expected = { $what } circa { $at }, tra { $low } e { $high }, { $by }
desk-line-is_reached = { $what }: raggiunto, { $by }: prima il naso
desk-line-is_working = { $what }: in calcolo, riaprire la pagina
desk-line-is_unknown = letto troppo poco per dire quando viene: { $what }
desk-lists-phones_backup_and_book = Telefoni, copia e registro
desk-lists-near_their_end = Vicino alla fine
desk-lists-all_ferments = Tutte le fermentazioni
desk-lists-no_ferment_says_yet_when = Nessuna fermentazione dice ancora quando finisce. { $link }
desk-lists-the_days_are_meant_to = I giorni dovrebbero valere quattro volte su cinque; decidono tre densità uguali. { $link }
desk-lists-nothing_is_due = Nulla è da fare.
desk-lists-since_you_were_last_here = Dall’ultima volta qui, { $near }
desk-lists-nothing_has_come_in = Non è arrivato nulla.
desk-lists-entries_of =
    { $entries ->
        [one] annotazione
       *[other] annotazioni
    } di { $count }
desk-lists-read_them = Leggerle
desk-lists-never_heard_yet = ancora mai sentito
desk-lists-since_what_it_holds_is = da { $near }. Ciò che contiene non è qui.
desk-lists-more_phones =
    altri { $more_phones } { $more_phones ->
        [one] telefono
       *[other] telefoni
    }
desk-lists-book = Registro
desk-lists-entries =
    { $bold } { $what } { $entries ->
        [one] annotazione
       *[other] annotazioni
    }
desk-lists-misses = ne mancano { $count }
desk-lists-silent = muto
desk-lists-heard = ascoltata
desk-lists-being_judged_anew = di nuovo in giudizio
desk-lists-judged = giudicato
desk-lists-every_entry_by_the_rules = ogni annotazione con le regole e i limiti di ora
desk-today-today = Oggi – { $name }
desk-today-owed_an_answer = Risposte dovute
desk-trace_parts-and_more_all_are_in = e altri { $more }: tutti sono nel file
desk-trace_parts-and_more_all_are_in2 = e altri { $count }: tutti sono nel file
desk-trace-print_the_passport = Stampare il passaporto
desk-trace-load_of_fruit = Carico di frutta
desk-trace-words = { $bold }{ $pure } { $what2 }
desk-trace-its_entry = La sua annotazione
desk-trace-the_run = La cotta
desk-trace-the_vessel = Il recipiente
desk-trace-lot_mark = Segno di lotto
desk-trace-none_of_it_is_in = Nulla di questo è in bottiglia secondo il registro.
desk-trace-no_case_of_it_has = Nessun suo cartone è uscito secondo il registro.
desk-trace-not_accounted_for_yet = non ancora giustificato
desk-trace-by_mass = in massa
desk-trace-tasted_blind = Assaggiato alla cieca
desk-trace-nothing_has_moved_into_it = Ancora nulla vi è entrato o uscito.
desk-trace-every_vessel_and_run_is = Ogni recipiente e ogni cotta si prende come ben mescolato: ciò che ne esce contiene tutto ciò che è entrato prima, ognuno per la sua quota di alcole puro. L’alcole di una fermentazione si divide fra i suoi carichi per massa. Un accertamento cambia quanto c’è, non che cosa è.
desk-trace-made_of = Fatto di
desk-trace-picture = { $head }: { $name }. L’elenco sotto la figura dice lo stesso in parole.
desk-trace-from_before_this_book = Da prima di questo registro
desk-trace-received_from_elsewhere = Ricevuto da altrove
desk-trace-not_on_record = Non registrato
desk-trace-no_fruit_on_record = Nessuna frutta registrata
desk-trace-not_followed = Non seguito
desk-trace-ferments = Fermentazioni
desk-trace-receivers = Raccolta
desk-trace-cans = Bidoni
desk-trace-stills = Alambicchi
desk-trace-tanks = Serbatoi
desk-trace-vats = Unioni
desk-trace-between_sites = Tra siti
desk-trace-bottlings = Imbottigliamenti
desk-trace-bottles_between_sites = Bottiglie tra siti
desk-trace-received_in_bottles = Ricevuto in bottiglie
desk-trace-gone = Uscito
desk-trace-trace_of = Traccia di { $name }
desk-trace-the_book_has_nothing_to = Il registro non ha nulla da tracciare con quel nome. Cercarlo con la ricerca sulla pagina di traccia.
desk-trace-under_0_1 = sotto 0,1 %
desk-trace-origin = Origine
desk-trace-bottles_losses = Bottiglie, perdite
desk-trace-others = altri { $count }
desk-dips-strapping_table = Tavola di taratura
desk-dips-paste_the_two_columns_of = Incollare le due colonne del foglio della tavola: la lettura, poi il volume, con punto e virgola, tabulazione o spazio in mezzo. Da una riga all’altra il volume segue una retta.
desk-dips-dimensions_of_a_cask = Dimensioni di una botte
desk-dips-inside_without_the_wood_by = Interne, senza il legno. Con esse il volume è una stima, circa il 3 % della botte piena di scarto; una botte pesata è nota dieci volte meglio.
desk-dips-dips_of = Altezze di { $mark }
desk-dips-has_its_litres_estimated_from = ha i litri stimati da { $by }, dalle sue dimensioni: { $sizes } cm, { $how }.
desk-dips-how_its_litres_follow_from = Come i litri seguono da un’altezza
desk-dips-what_is_measured = Che cosa si misura
desk-dips-table_a_line_of_dip = Tavola: una riga per altezza e volume
desk-dips-lengths_in = Lunghezze in
desk-dips-volumes_in = Volumi in
desk-dips-shell = Mantello
desk-dips-the_table_holds_at = La tavola vale a
desk-dips-temperature_in = Temperatura in
desk-dips-tilt_add_to_each_reading = Inclinazione: da sommare a ogni lettura [mm]
desk-dips-diameter_at_the_bung_inside = Diametro al cocchiume, interno
desk-dips-diameter_of_a_head_inside = Diametro di un fondo, interno
desk-dips-length_from_head_to_head = Lunghezza da fondo a fondo, interna
desk-dips-the_cask = La botte
desk-dips-is_not_dipped_by_the = non si misura ad altezza per il registro: i litri si digitano.
desk-dips-has_its_litres_from_its = ha i litri da { $by }, da una tavola di { $count } righe: da { $brief } a { $brief2 } cm, da { $brief3 } a { $brief4 } L.
desk-dips-by_a_strapping_table = con una tavola di taratura
desk-dips-by_the_dimensions_of_a = con le dimensioni di una botte, una stima
desk-dips-not_at_all_litres_are = per niente: i litri si digitano
desk-dips-dip_from_the_bottom_up = altezza piena: dal fondo in su
desk-dips-ullage_from_the_top_down = vuoto: dall’alto in giù
desk-dips-stainless_steel_48_10_6 = acciaio inossidabile, 48·10⁻⁶ per °C
desk-dips-mild_steel_36_10_6 = acciaio dolce, 36·10⁻⁶ per °C
desk-dips-other_no_correction = altro: nessuna correzione
desk-edit-an_entry_of_put_it = Un’annotazione del { $when } lo ha messo a { $bold }: sta lì, qualunque cosa dica questa pagina. Per spostarlo, annotare lo spostamento.
desk-edit-change = Cambiare { $mark }
desk-labels-labels = Etichette
desk-labels-without_a_place = senza posto
desk-labels-every_vessel_here_has_its = Ogni recipiente qui ha la sua etichetta.
desk-labels-every_label_that_was_printed = Ogni etichetta stampata qui dice ancora ciò che dice il registro.
desk-labels-print_those_ticked = Stampare le spuntate
desk-labels-print_all_of_this_list = Stampare tutte e { $what } di questo elenco
desk-labels-print_at_full_size_not = Stampare a grandezza piena, non adattata alla pagina; il righello sul foglio deve misurare 50 mm.
desk-labels-the_first_of_are_shown = Sono mostrati i primi { $count } di { $count2 }.
desk-labels-label = Etichetta
desk-labels-own_size = Misura propria
desk-labels-printed = stampata { $when }
desk-labels-printed_is_what_was_sent = Stampato è ciò che si è inviato in stampa da questa pagina. Senza etichetta sono i recipienti la cui etichetta non fu stampata qui né mai scansionata.
desk-labels-says_something_else_by_now = ora dice altro
desk-labels-tick_at_least_one_vessel = Spuntare almeno un recipiente, e scegliere su che cosa si stampano le etichette.
desk-vessel-twice_the_standard_uncertainty_by = Il doppio dell’incertezza tipo, secondo la classe degli strumenti del suo ultimo accertamento e di quanto si è mosso da allora.
desk-vessel-dips = Altezze
desk-vessel-since = dal { $when }
desk-vessel-tare = tara { $tare_kg }
desk-vessel-inside_a_fire_zone = in zona a rischio incendio
desk-vessel-dipped_by_a_table =
    { $is_dips ->
        [yes] stimato dalle dimensioni
       *[no] misurato con tavola
    }
desk-vessel-holds = Contiene { $holding }
desk-vessel-a_run_is_under_way = Una cotta è in corso
desk-vessel-since2 = { $link } da { $when }.
desk-vessel-no_entries_yet_scan_its = Ancora nessuna annotazione. Scansionarne l’etichetta in reparto, e annotare la prima.
desk-vessel-all_its_entries = Tutte le sue annotazioni
desk-vessel-the_book_knows_no_vessel = Il registro non conosce il recipiente { $mark }. Cercarlo nell’elenco dei recipienti.
desk-vessel-there_is_a_vessel_already = C’è già un recipiente { $mark }. Scegliere un altro codice, o cambiare quello.
desk-vessel-is_in_the_book = { $made } è nel registro.
desk-vessels-find_vessels = Cercare recipienti
desk-vessels-add_the_first_then_print = Aggiungere il primo; poi stamparne l’etichetta.
desk-vessels-capacity = Capacità, { $what }
access-again-your_password_again_cellarslate = Di nuovo la password – Cellarslate
access-again-is_it_still_you = È ancora la stessa persona?
access-again-this_cannot_be_taken_back = { $name }, questo non si può annullare, o porta dati fuori dalla casa. Mostrare ancora una volta chi si è; poi vale per { $minutes } minuti.
access-again-go_on = Continuare
access-again-use_a_passkey = Usare una passkey
access-again-that_is_not_your_password = Non è la propria password. Digitarla di nuovo.
access-error-not_done_cellarslate = Non fatto – Cellarslate
access-error-not_done = Non fatto
access-error-to_the_sites = Ai siti
access-error-to_the_desk = All’ufficio
access-error-this_could_not_be_read = Non si è potuto leggere. Tornare indietro, guardare ciò che è digitato, e inviarlo di nuovo.
access-error-you_may_not_do_this = Qui non è permesso. Chiedere a qualcuno dell’ufficio.
access-error-there_is_nothing_at_this = A questo indirizzo non c’è nulla. Tornare indietro e scegliere dall’elenco.
access-error-this_address_does_not_take = Questo indirizzo non prende quello. Tornare indietro e usare il pulsante della pagina.
access-error-this_is_too_large_send = È troppo grande. Inviare meno alla volta.
access-error-send_json_with_content_type = Inviare JSON, con Content-Type: application/json.
access-error-too_many_tries_wait_a = Troppi tentativi. Attendere un minuto, poi riprovare.
access-error-the_book_stumbled_nothing_handed = Il registro è inciampato. Nulla di consegnato è perso; riprovare, e dirlo a chi cura il server.
access-error-the_book_is_busy_try = Il registro è occupato. Riprovare fra un momento.
access-error-this_page_was_open_too = Questa pagina è rimasta aperta troppo, o da prima dell’accesso. Tornare indietro, ricaricarla, inviarla di nuovo.
access-error-this_was_not_sent_from = Non è stato inviato da una delle nostre pagine. Riaprire la pagina e inviarlo da lì.
access-error-this_needs_the_role_ask = Serve il ruolo { $access }. Chiedere a qualcuno dell’ufficio.
access-error-this_phone_is_not_let = Questo telefono non è ammesso. Aprirvi il codice unico dell’ufficio; nulla è perso.
access-invitation-your_password_cellarslate = La propria password – Cellarslate
access-invitation-choose_your_password = { $name }, scegliere la password
access-invitation-lets_you_in = { $site } dà l’accesso.
access-invitation-you_are_let_in = L’accesso è dato.
access-invitation-your_short_code_is_nobody = { $who } Il codice breve è { $bold }. Nessun altro conosce la password: l’ufficio non può leggerla, solo invitare di nuovo.
access-invitation-ten_characters_at_least_four = Almeno dieci caratteri. Quattro parole che nessuno metterebbe insieme vanno bene; un nome, una data e «password» no.
access-invitation-set_it_and_sign_in = Fissarla e accedere
access-invitation-this_invitation_was_used_has = Questo invito è stato usato, è scaduto, o è stato sostituito. Chiederne uno nuovo all’ufficio.
access-set_up-set_up_cellarslate = Avvio – Cellarslate
access-set_up-the_house_first_then_you =
    Prima { $is_group ->
        [yes] il nome del gruppo
       *[no] la casa
    }, poi la persona. Altri si possono ammettere dopo.
access-set_up-a_new_group = Un nuovo gruppo
access-set_up-a_new_book = Un nuovo registro
access-set_up-open_the_book = Aprire il registro
access-sign_in-sign_in_cellarslate = Accedere – Cellarslate
access-sign_in-sign_in_to_the_desk =
    Accedere { $is_group ->
        [yes] al gruppo
       *[no] all’ufficio
    }
access-sign_in-sign_in = Accedere
access-sign_in-sign_in_with_a_passkey = Accedere con passkey
access-sign_in-on_the_floor_no_sign = In reparto non serve accesso: l’ufficio ammette un telefono una volta, con un codice da scansionare.
access-sign_in-no_such_code = nessun codice simile
access-sign_in-too_many_tries_wait_s = Troppi tentativi. Attendere { $wait_s } s.
access-sign_in-this_server_has_no_authority = Questo server non ha un’autorità propria: lavora senza TLS, o con un certificato dato da fuori.
access-sign_in-code_or_password_is_wrong = Codice o password sbagliati. Digitarli di nuovo.
access-sign_in-that_is_not_the_code = Non è il codice che il server ha stampato all’avvio. Digitarlo di nuovo.
access-trust-let_this_phone_trust_the = Far fidare il telefono della casa – Cellarslate
access-trust-let_this_phone_trust_the2 = Far fidare questo telefono della casa
access-trust-this_server_needs_no_certificate = Questo server non vuole certificati sul telefono: lavora solo su questo computer, o ha un certificato proprio.
access-trust-once_on_each_phone_after = Una volta su ogni telefono. Dopo, la lavagna di reparto si apre senza avvisi e lavora senza segnale.
access-trust-iphone_or_ipad = iPhone o iPad
access-trust-most_often_it_is_installed = Più spesso è installato, ma l’interruttore non è acceso: Impostazioni, Generali, Info, Attendibilità certificati. Se là non c’è interruttore, il profilo non era installato: tornare di un passo.
access-trust-android_phone = Telefono Android
access-trust-most_often_it_was_filed = Più spesso è finito fra i certificati Wi-Fi, o fra quelli per VPN e app, dove nessun browser guarda. Cercare nelle Impostazioni certificato CA e installarvi lo stesso file.
access-trust-windows = Windows
access-trust-it_may_have_been_placed = Può essere stato messo altrove: scegliere a mano il posto, Autorità di certificazione radice attendibili.
access-trust-mac = Mac
access-trust-taken_but_not_set_to = Preso, ma non messo su Fidati sempre: è ciò che manca più spesso.
access-trust-linux_another = Linux, altro
access-trust-it_may_have_been_imported = Può essere stato importato senza la spunta che lo rende attendibile per i siti web.
access-trust-in_safari_fetch_the_profile = In Safari, prendere il profilo e toccare Consenti. Altri browser di questo telefono non possono prenderlo.
access-trust-soon_after_open_settings_near = Subito dopo aprire Impostazioni. In alto sta Profilo scaricato (altrimenti: Generali, VPN e gestione dispositivo). Aprirlo, toccare Installa, e installarlo.
access-trust-settings_general_about_at_the = Impostazioni, Generali, Info, in fondo Attendibilità certificati: accendere Cellarslate local authority. Installare da solo non basta.
access-trust-fetch_the_certificate_the_phone = Prendere il certificato. Il telefono lo tiene fra i suoi download.
access-trust-open_settings_and_search_for = Aprire Impostazioni e cercare: certificato CA. (Sicurezza, Crittografia e credenziali, Installa un certificato, Certificato CA.) Toccare Installa comunque. Un telefono senza blocco schermo ne chiede prima uno.
access-trust-choose_the_file_cellarslate_crt = Scegliere il file cellarslate.crt fra i download. Resta un avviso che la rete può essere controllata; parla di questo certificato.
access-trust-fetch_the_certificate_and_open = Prendere il certificato e aprire il file.
access-trust-install_certificate_current_user_p = Installa certificato, Utente corrente, colloca tutto in: Autorità di certificazione radice attendibili.
access-trust-close_all_windows_of_the = Chiudere tutte le finestre del browser e riaprire questa pagina.
access-trust-fetch_the_certificate_and_open2 = Prendere il certificato e aprire il file; lo prende Accesso Portachiavi.
access-trust-in_keychain_access_open_cellarslat = In Accesso Portachiavi aprire Cellarslate local authority, Attendibilità, e metterlo su Fidati sempre.
access-trust-fetch_the_certificate = Prendere il certificato.
access-trust-in_the_browser_settings_search = Nel browser: Impostazioni, cercare: certificati. Importarlo sotto Autorità; renderlo attendibile per i siti web.
access-trust-go_on_this_phone_is = Continuare: questo telefono è ammesso
access-trust-open_the_floor_log = Aprire la lavagna di reparto
door-frame-this_is_the_demo_is = Questa è la demo. { $name } è inventata, e così tutto ciò che sta nel suo registro.{ $break_ }Si può rompere ciò che si vuole: { $code } la rifà da capo.
door-front-doors = Ingressi
door-front-the_slate_by_the_still = La lavagna accanto all’alambicco, e il registro in cui finisce.
door-front-three_doors_into_the_same = Tre ingressi nella stessa casa, il { $now }.
door-front-a_run_of_is_on = È in corso una cotta di { $what }.
door-front-for_an_answer =
    { $asked ->
        [one] { $asked } cifra attende
       *[other] { $asked } cifre attendono
    } risposta.
door-front-the_demo_was_laid_on = La demo fu preparata un altro giorno, e la sua cotta e le sue fermentazioni sono di quel giorno. Fermarla e avviarla con { $code } per prepararla a oggi.
door-front-the_desk = L’ufficio
door-front-you_are_see_what_the = Qui si è { $name }, { $role }. Vedere che cosa domanda il registro, rettificare uno sbaglio, tracciare una bottiglia, chiudere un mese.
door-front-lines_of_a_year_and = { $what } righe di un anno e mezzo
door-front-sit_down_at_the_desk = Sedersi in ufficio
door-front-a_phone_in_this_browser = Un telefono, in questo browser
door-front-you_are_the_same_keys = Qui si è { $name }, { $role }. Gli stessi tasti e le stesse parole del reparto; si può togliere il segnale.
door-front-the_run_of_is_in = La cotta di { $still } è in mano propria
door-front-what_you_log_waits_on = Ciò che si annota attende sulla sua lavagna
door-front-it_can_scan_the_labels = Può scansionare le etichette sotto
door-front-the_signal_is_cut_for = Al telefono in questo browser il segnale è tolto fino alle { $clock }.
door-front-open_a_phone_here = Aprire qui un telefono
door-front-your_own_phone = Il proprio telefono
door-front-hold_its_camera_to_this = Puntarne la fotocamera su questo quadrato, sulla stessa rete senza fili. Impara a fidarsi di questo computer, poi si apre come { $name }, { $role }. Nessun negozio, nessun account.
door-front-or_type = o digitare{ $break_ }{ $bold }
door-front-afterwards_take_the_certificate_of = Dopo, togliere di nuovo il certificato dal telefono; è proprio della demo.
door-front-phones_work_without_signal_only = I telefoni lavorano senza segnale solo dove si fidano del server, quindi questo ingresso si apre su TLS. Fermare la demo e riavviarla:
door-front-then_a_square_stands_here = Allora qui sta un quadrato a cui accostare un telefono, e si apre come { $name }, { $role }.
door-front-more_of_them_large = Altre, grandi
door-front-scan_them_with_the_phones = Scansionarle con la pagina del telefono, sotto Scansionare. Niente fotocamera? Digitarvi la sigla: l’ultimo carattere controlla gli altri, e uno sbagliato si scopre.
door-front-five_things_to_try = Cinque cose da provare
door-front-min = { $minutes } min
door-front-everything_here_is_kept_on = Qui tutto è tenuto su questo computer, e chi raggiunge questa pagina può entrare. Non è un posto per cifre di una casa vera: iniziare un registro proprio con { $code }.
door-front-the_demo_cellarslate = La demo · Cellarslate
door-front-stops_wait =
    { $stops ->
        [one] { $stops } stop attende
       *[other] { $stops } stop attendono
    }
door-front-more_are_asked =
    { $asked ->
        [one] { $asked } altra domanda
       *[other] { $asked } altre domande
    }
door-front-put_the_signal_back = Ridare il segnale
door-front-cut_its_signal = Togliere il segnale
door-join-this_phone_joins = Questo telefono entra in { $name }
door-join-you_are_the_phone_is = Qui si è { $name }, { $role }. Il telefono è ammesso, prende che cosa sta in ogni recipiente, e da allora lavora senza segnale.
door-join-near_an_open_spirit_safe = Vicino a un misuratore aperto un telefono è una fonte d’innesco, salvo che sia omologato per quel posto. La demo si può provare in qualsiasi altro luogo.
door-join-this_phone_joins_the_demo = Questo telefono entra nella demo · Cellarslate
door-labels-on_the_phone_open_scan = Sul telefono aprire Scansionare e tenerlo a un palmo da una di esse. Il suo recipiente si apre, con segnale e senza.
door-labels-labels_of_the_demo_cellarslate = Etichette della demo · Cellarslate
door-phone-takes_the_phone = { $name } prende il telefono
door-phone-it_is_let_in_and = È ammesso, e prende che cosa sta in ogni recipiente.
door-phone-the_slate_is_kept_by = La lavagna vive di script, e questo browser non ne esegue. L’ufficio lavora anche senza.
door-phone-a_phone_is_let_in = Un telefono è ammesso · Cellarslate
door-phone-keeps_pages = Tiene le sue pagine, così non gli serve segnale.
door-phone-not_let_in = Non è stato ammesso. { $why }
group-people-who_may_sign_in_here = Chi può accedere qui. Le persone dei siti non si copiano: accedono al proprio.
group-people-an_invitation_shown_this_once = Un invito, mostrato solo ora
group-people-good_once_within_days_whoever = Vale una volta, entro { $days } giorni. Chi lo apre sceglie la password; consegnarlo di persona.
group-people-no_longer_here = non più qui
group-people-no_password_yet = ancora nessuna password
group-people-add_or_change_somebody = Aggiungere o cambiare qualcuno
group-people-look = guardare
group-people-let_sites_in_and_decide = ammettere siti e decidere
group-people-no_longer_here2 = Non più qui
group-people-make_an_invitation_to_set = Creare un invito a scegliere una password
group-people-save = Salvare
group-people-lets_sites_in_decides = ammette siti, decide
group-people-short_code = Codice breve
group-people-looks = guarda
group-period-of_sites_have_closed_it = { $closed } di { $count } siti l’hanno chiuso. La somma è di ciò che è noto ora; ciò che è andato da sito a sito non è guadagno né perdita del gruppo.
group-period-sum = Somma
group-period-between_sites = Tra siti
group-period-sent_l = Inviato, L
group-period-declared_there_l = Dichiarato là, L
group-period-difference = Differenza
group-period-pure_alcohol_at_20_c = Alcole puro a 20 °C. Ciò che mancava al sito ricevente sta nel suo conto, come perso in viaggio.
group-period-more_has_come_to_light = poi è emerso altro, ed è nelle cifre sotto
group-period-part_closed = Chiuso in parte.
group-period-this_site_has_nothing_in = Questo sito non vi ha nulla.
group-period-all_sites = , tutti i siti
group-period-in_bulk = sfuso
group-period-bottles = bottiglie, { $goods }
group-period-sent_to_sites_of_the = inviato a siti del gruppo
group-period-received_from_sites_of_the = ricevuto da siti del gruppo
group-period-left_a_site = uscito da un sito
group-period-received_at_a_site = ricevuto in un sito
group-period-declared_above_what_was_sent = dichiarato sopra quanto inviato
group-period-declared_below_what_was_sent = dichiarato sotto quanto inviato
group-period-on_the_way_between_sites = In viaggio tra siti
group-periods-what_all_sites_had_on = Che cosa avevano in giacenza tutti i siti alla fine di ogni trimestre e mese, come noto ora, in litri di alcole puro a 20 °C. I mesi di ogni sito vanno col suo orologio.
group-periods-closed_at = Chiuso presso
group-periods-all_sites = Tutti i siti
group-periods-on_the_way = In viaggio
group-periods-of = { $closed } di { $count }
group-sites-let_a_site_in = Ammettere un sito
group-sites-on_the_sites_computer_once = Sul computer del sito, una volta, entro un giorno:
group-sites-name_of_the_site = Nome del sito
group-sites-make_a_code_for_a = Creare un codice per un nuovo sito
group-sites-entries_here = Annotazioni qui
group-sites-of = di { $head_no }
group-sites-last_7_days = Ultimi 7 giorni
group-sites-stock_and_trace = Giacenza e traccia
group-sites-stopped = fermo
group-sites-up_to_date = aggiornato
group-sites-to_number = fino al numero { $folded_no }
group-sites-chain = Catena
group-sites-broken = rotta
group-sites-whole_to = integra fino a { $checked_no }, { $when }
group-sites-not_walked_yet = non ancora percorsa
group-sites-its_computer_is_lost_or = Il suo computer è perso, o nuovo
group-sites-shut_it_out_then_make = Escluderlo, poi creare un nuovo codice. Ciò che ha consegnato resta.
group-sites-shut_out = Escludere { $name }
group-sites-which_book_counts = { $name }: quale registro conta?
group-sites-from_number_on_the_sites = Dal numero { $fork_no } in poi il registro del sito non è più quello consegnato prima: fu ripristinato da una copia più vecchia, o copiato. Si tengono entrambi. Qui conta il primo, fino al numero { $cursor }; l’altro va fino a { $cursor2 }.
group-sites-of_the_first_are_not = del primo non sono nell’altro.
group-sites-every_entry_of_the_first = Ogni annotazione del primo è anche nell’altro.
group-sites-ask_the_site_before_you = Chiedere al sito prima di scegliere.
group-sites-the_sites_present_book_counts = Conta il registro attuale del sito
group-sites-kept_aside = { $aside } messi da parte.
group-sites-papers_that_look_alike = Carte che si somigliano
group-sites-a_receipt_has_the_number = Un arrivo ha il numero dell’uscita di un altro sito, ma nessuno dei due nomina l’altro sito, o le bottiglie sono di un’altra partita. Non sono uniti. Se sono una cosa sola, rettificare l’annotazione così che nomini il sito, o la partita.
group-sites-received_at = Ricevuto presso
group-sites-from_batch_as_typed = Da, partita, come digitato
group-sites-same_number_sent_by = Stesso numero inviato da
group-sites-sites = Siti
group-sites-chain_broken = catena rotta
group-sites-fold_stopped = riepilogo fermo
group-sites-two_books = due registri
group-sites-to_come = in arrivo
group-sites-entries = annotazioni
group-trace-in_bottles = in bottiglie
group-trace-pure_alcohol = { $bold } alcole puro { $what }
group-trace-site_cases_lot_mark = Sito, cartoni, segno di lotto
group-trace-bottles_received_from_another_site = Le bottiglie ricevute da un altro sito vi stanno di nuovo: sono fra quelle del sito che le ha riempite.
group-trace-to_whom = A chi
group-trace-site_what = Sito, che cosa
group-trace-and_more = e altri { $more }
group-trace-sites_are_joined_by_the = I siti sono uniti dal numero della carta di un’uscita, dove l’arrivo lo nomina e una parte nomina l’altra; le bottiglie anche da partita o segno di lotto. Ciò che è in viaggio sta fra loro.
group-trace-trace_of = Traccia di { $name }
group-trace-from_to = da { $sender } a { $receiver }
group-trace-declared = dichiarato { $differs }
group-trace-document = documento { $document }
group-trace_search-a_trace_goes_both_ways = Una traccia va nei due sensi e oltre il confine: da una bottiglia indietro alla frutta in qualsiasi sito, e da un carico di frutta avanti a ogni bottiglia.
group-trace_search-no_site_has_anything_by = Nessun sito ha qualcosa con quel nome. Provare una sigla, una partita, il numero di un cartone, o parte del nome di un produttore.
desk-weight-stop = stop
desk-weight-ask = domanda
desk-weight-note = avviso
desk-weight-entered = annotato
desk-weight-waiting = in attesa
desk-sort-fermenter = tino
desk-sort-still = alambicco
desk-sort-receiver = recipiente di raccolta
desk-sort-tank = serbatoio
desk-sort-cask = botte
desk-sort-can = bidone
desk-sort-place = posto
desk-forms-it_stands = Si mantiene
desk-forms-strike = Depennare
desk-forms-the_site = il sito
desk-forms-a_sort_of_vessel = un tipo di recipiente
desk-forms-a_material = una materia
desk-forms-one_vessel = un recipiente
desk-forms-a_product = un prodotto
desk-forms-production_storage_processing_us = produzione, magazzino, lavorazione (US)
desk-forms-one_excise_warehouse = un deposito fiscale
desk-forms-floor_log_and_look = reparto: annotare e guardare
desk-forms-distiller_also_answer_and_amend = distillatore: anche rispondere e rettificare
desk-forms-office_all = ufficio: tutto
desk-forms-code = Codice
desk-forms-what_it_is = Che cosa è
desk-forms-capacity_l = Capacità [L]
desk-forms-working_level_l = Livello di lavoro [L]
desk-forms-tare_kg = Tara [kg]
desk-forms-wood = Legno
desk-forms-toast_or_char = Tostatura o carbonizzazione
desk-forms-stands_inside_a_fire_zone = Sta in zona a rischio incendio
desk-forms-label_goes_on_a_curve = L’etichetta va su una curva (sola sigla)
desk-forms-note = Nota
desk-forms-out_of_use = Fuori servizio
desk-forms-for = Per
desk-forms-which = Quale
desk-forms-kind_and_field = Genere e voce
desk-forms-usual_from = Usuale da
desk-forms-usual_to = Usuale a
desk-forms-possible_from = Possibile da
desk-forms-possible_to = Possibile a
desk-forms-limit = Limite
desk-forms-figure = Cifra
desk-forms-short_code = Codice breve
desk-forms-trade_roles_the_usual_one = Ruoli del mestiere, prima il più usuale
desk-forms-floor_code_4_to_8 = Codice di reparto (da 4 a 8 cifre; vuoto tiene il vecchio)
desk-forms-has_left_the_house = Ha lasciato la casa
desk-forms-the_password_until_now = La password finora
desk-forms-a_new_one = Una nuova
desk-forms-the_same_again = La stessa di nuovo
desk-forms-its_name = Il suo nome
desk-forms-folder_on_the_server_on = Cartella sul server, su un altro disco
desk-forms-hours_between_two = Ore fra due
desk-forms-how_many_are_kept = Quante se ne tengono
desk-forms-backups_of_this_computer_are = Le copie di questo computer si fanno in altro modo, ogni giorno
desk-forms-they_are_a = Sono
desk-forms-address = Indirizzo
desk-forms-number_by_which_papers_call = Numero con cui li chiamano le carte
desk-forms-name_of_the_phone = Nome del telefono
desk-forms-the_house = La casa
desk-forms-units = Unità
desk-forms-decimal_mark = Segno decimale
desk-forms-accounts = Conti
desk-forms-height_above_the_sea_m = Altitudine [m]
desk-forms-language_where_nobody_has_chosen = Lingua dove nessuno ne ha scelta una
desk-forms-time_zone = Fuso orario
desk-forms-what_goes_into_or_out = Ciò che entra o esce dai conti vuole il PIN quando si annota
desk-forms-a_season_begins_in = Una campagna inizia in
desk-forms-scale_from = Scala da
desk-forms-scale_to = Scala a
desk-forms-unit = Unità
desk-forms-class = Classe
desk-forms-interval_of_the_scale = Divisione della scala
desk-forms-corrections_of_its_certificate_wha = Correzioni del certificato, ciò che mostra: ciò che si somma, come 0: -0.1; 20: 0; 40: +0.2
desk-forms-check_due_on = Controllo il
desk-forms-first_free_label_on_the = Prima etichetta libera sul foglio
desk-forms-own_width_mm = Larghezza propria [mm]
desk-forms-own_height_mm = Altezza propria [mm]
desk-forms-own_clear_mm = Libero a ogni bordo [mm]
desk-forms-label_file = Come
desk-forms-case_from = Primo cartone
desk-forms-case_to = Ultimo cartone
desk-forms-flat_labels_carry_the_address = Le etichette piane portano l’indirizzo, così la fotocamera del telefono apre il recipiente
desk-forms-also_a_stand_off_label = Anche un’etichetta a distanza per i recipienti in zona a rischio incendio
desk-forms-there_is_no_such_time = Non c’è un fuso orario simile. Digitarne uno come Europe/Vienna.
desk-forms-pick_it_stands_or_strike = Scegliere: si mantiene, o depennare.
desk-forms-say_why_in_a_few = Dire perché, in poche parole.
desk-forms-type_its_code_such_as = Digitarne il codice, come F3 o C031.
desk-forms-type_a_short_code = Digitare un codice breve.
desk-forms-type_the_name = Digitare il nome.
desk-forms-to_whole = Da { $low } a { $high }, intero.
desk-forms-type_your_password = Digitare la propria password.
desk-forms-type_a_password = Digitare una password.
desk-forms-at_least_characters_a_few = Almeno { $what } caratteri; bastano alcune parole.
desk-forms-the_two_passwords_differ_type = Le due password sono diverse. Digitarle di nuovo.
desk-forms-type_a_name = Digitare un nome.
desk-forms-type_hours = Digitare le ore.
desk-forms-type_a_number = Digitare un numero.
desk-forms-name_it_such_as_ph = Dargli un nome, come PH-3.
desk-forms-type_the_name_of_the = Digitare il nome della casa.
desk-forms-type_its_number_such_as = Digitarne il numero, come TH-2.
desk-forms-type_what_it_is_such = Digitare che cosa è, come termometro.
desk-forms-grower_or_supplier = produttore o fornitore
desk-forms-point_14_6 = punto: 14.6
desk-forms-comma_14_6 = virgola: 14,6
desk-forms-as_the_law_prescribes = come prescrive la legge
desk-forms-in_use = in uso
desk-forms-out_of_use2 = fuori servizio
desk-forms-n1_to_7_letters_or = Da 1 a 7 lettere o cifre.
desk-forms-n1_to_8_letters_or = Da 1 a 8 lettere o cifre.
desk-forms-n4_to_8_digits = Da 4 a 8 cifre.
desk-forms-letters_digits_hyphen = Lettere, cifre, trattino.
desk-forms-pick_the_day = Scegliere il giorno.
access-forms-your_short_code = Il proprio codice breve
access-forms-password = Password
access-forms-your_password = La propria password
access-forms-a_password_of_your_own = Una password propria
access-forms-the_same_again = La stessa di nuovo
access-forms-set_up_code = Codice d’avvio
access-forms-the_house = La casa
access-forms-units = Unità
access-forms-your_name = Il proprio nome
access-forms-type_your_short_code = Digitare il proprio codice breve.
access-forms-type_your_password = Digitare la propria password.
access-forms-type_a_password = Digitare una password.
access-forms-at_least_characters_a_few = Almeno { $what } caratteri; bastano alcune parole.
access-forms-the_two_passwords_differ_type = Le due password sono diverse. Digitarle di nuovo.
access-forms-type_the_set_up_code = Digitare il codice d’avvio stampato dal server.
access-forms-type_the_name_of_the = Digitare il nome della casa.
access-forms-type_a_short_code_such = Digitare un codice breve, come le iniziali.
access-forms-type_your_name = Digitare il proprio nome.
access-forms-n1_to_8_letters_or = Da 1 a 8 lettere o cifre.
desk-vat_form-as_few_vessels_as_can = meno recipienti possibile
desk-vat_form-the_oldest_stays = il più vecchio resta
desk-vat_form-the_oldest_goes_first = il più vecchio va per primo
desk-vat_form-strength_empty_as_it_comes = Titolo (vuoto: come viene)
desk-vat_form-unit_of_strength = Unità del titolo
desk-vat_form-volume_l_empty_all_they = Volume [L] (vuoto: tutto ciò che danno)
desk-vat_form-volume_may_be_off_by = Il volume può scartare di [%]
desk-vat_form-most_of_any_one_vessel = Massimo da un solo recipiente [%]
desk-vat_form-most_of_any_one_lot = Massimo da un solo lotto [%]
desk-vat_form-youngest_in_wood_years = Il più giovane in legno [anni]
desk-vat_form-the_wood_of_a_200 = Il legno di una botte da 200 L tiene [kg]
desk-vat_form-aim = Scopo
desk-vat_form-casks_may_be_drawn_in = Le botti si possono prelevare in parte
desk-vat_form-name_of_the_vat = Nome dell’unione
desk-vat_form-wood_keeps_of = il legno tiene { $kept } di { $what }
desk-vat_form-strength_as_it_comes = titolo come viene
desk-vat_form-within = { $volume } entro { $figure } %
desk-vat_form-all_they_give = tutto ciò che danno
desk-vat_form-of_one_vessel = da un recipiente
desk-vat_form-of_one_lot = da un lotto
desk-vat_form-youngest_years_in_wood = il più giovane { $figure } anni in legno
desk-vat_form-between_and_please = Tra { $low } e { $high }, per favore.
desk-vat_form-at_most = al massimo { $figure } % { $words }
desk-vat_form-vol = % vol
desk-cellar-by_the_fall_of_gravity = dal calo di densità
desk-cellar-as_the_law_of_1880 = come presumeva la legge del 1880
desk-cellar-by_the_wash_as_measured = dal fermentato misurato
desk-cellar-by_low_wines = dalla flemma
desk-cellar-by_spirits_and_feints = da distillati, teste e code
desk-cellar-a_leak = una perdita?
desk-cellar-a_slip_of_the_glass = uno sbaglio d’areometro?
desk-cellar-another_cask = un’altra botte?
desk-cellar-to_regauge = da rimisurare
desk-cellar-to_sample = da campionare
desk-cellar-to_taste = da assaggiare
desk-cellar-loss_a_year = perdita annua
desk-cellar-ferments = Fermentazioni
desk-cellar-places = Posti
desk-cellar-ready = Pronte
desk-cellar-house_rules = Regole della casa
desk-cellar-mash_temperature = Temperatura della pasta
desk-cellar-pure_alcohol = Alcole puro
desk-cellar-strength = Titolo
desk-cellar-the_book_has_no_such = Il registro non ha una fermentazione simile. Cercarla nell’elenco delle fermentazioni.
desk-cellar-the_book_knows_no_cask = Il registro non conosce la botte { $mark }. Cercarla nell’elenco delle botti.
desk-cellar-scores = Punti
desk-cellar-of_10 = su 10
desk-cellar-that_is_no_day_pick = Non è un giorno. Sceglierne uno, come 2027-05-01.
desk-cellar-gained = guadagnato
desk-cellar-by_place = posto
desk-cellar-by_age = età
desk-cellar-strength_in_words = titolo
desk-cellar-gravity = densità
desk-cellar-expected = atteso
desk-cellar-score = punti
desk-trust-the_certificate_ends_in_days = Il certificato scade fra { $left_days } giorni e non è stato rinnovato. Guardare che cosa lo rinnova.
desk-trust-the_certificate_ended_on_phones = Il certificato è scaduto il { $ends }. I telefoni tengono ciò che annotano, e non consegnano nulla finché non è nuovo.
paper-batch-batch_record = Scheda di partita: { $ferment }
paper-batch-gravity_and_temperature = Densità e temperatura
paper-batch-batch_record2 = Scheda di partita: { $batch }
paper-batch-bottled = { $batch }, imbottigliata
paper-batch-tank_gauges = Accertamenti del serbatoio
paper-batch-checks_of_the_line = Controlli della linea
paper-batch-its_entries = Le sue annotazioni
paper-batch-made_by = Fatto da
paper-batch-looked_over_by = Riguardato da
paper-batch-not_read_yet = Non ancora letto.
paper-batch-counts_of_its_alcohol = Conti del suo alcole
paper-batch-at = A
paper-batch-tank = Serbatoio
paper-batch-true = Effettivo { $unit }
paper-batch-no_bottling_tank_gauge_yet = Ancora nessun accertamento per imbottigliare.
paper-batch-fill = Livello, %
paper-batch-least = Minimo
paper-batch-most = Massimo
paper-batch-labels_right = Etichette giuste
paper-batch-done = Fatto
paper-batch-odd_case = Cartone spaiato
paper-batch-broken = Rotte
paper-batch-library = Archivio
paper-batch-good = Buone
paper-batch-not_closed_yet = Non ancora chiuso.
paper-batch-nothing_has_left_the_tank = Nulla ha ancora lasciato il serbatoio.
paper-batch-no = N.
paper-batch-fermenter = Tino
paper-batch-stands_at = Sta a
paper-batch-emptied = Svuotata
paper-batch-first_gravity = Prima densità
paper-batch-last_gravity = Ultima densità
paper-batch-closed_at = Chiuso presso
paper-batch-wash = Fermentato
paper-batch-wash_strength = Titolo del fermentato
paper-batch-pure_alcohol_in_the_wash = Alcole puro nel fermentato
paper-batch-count = Conto
paper-batch-of_wash = { $unit } di fermentato
paper-batch-tanks = Serbatoi
paper-batch-bottle = Bottiglia
paper-batch-strength_on_the_label = Titolo in etichetta
paper-batch-good_bottles = Bottiglie buone
paper-batch-kept_in_the_library = Tenute in archivio
paper-batch-pure_alcohol_in_bottles = Alcole puro in bottiglie
paper-batch-in = { $what } in { $mark }
paper-batch-to = da { $first } a { $last }
paper-batch-at2 = { $unit } a { $temp }
paper-cautions-the_sites_own_assessment_local = Prima vengono la valutazione del sito, le norme locali e le persone abilitate. Nulla su questa carta dice che un posto o un distillato sia sicuro.
paper-cautions-hot_and_under_pressure_if = Caldo, e in pressione se un passaggio si blocca. Acqua fredda in un alambicco caldo e chiuso può schiacciarlo. Tenere liberi gli sfiati; mai lasciare un alambicco in funzione.
paper-cautions-alcohol_vapour_burns_no_flame = I vapori d’alcole bruciano. Niente fiamme, scintille o telefoni comuni dentro la linea segnata; leggere al misuratore, fare un passo indietro, poi scrivere.
paper-cautions-a_hydrometer_cannot_see_methanol = Un areometro non vede il metanolo. Le teste ne contengono parte, anche cuore e code; solo un laboratorio sa. Non assaggiare le prime gocce.
paper-cautions-few_samples_small_and_diluted = Pochi campioni, piccoli e diluiti, e sputare. Acqua e pane semplice in mezzo. Dopo l’assaggio nessuno guida, o lavora a un alambicco o a una macchina.
paper-cautions-heads_are_never_tasted_nose = Le teste non si assaggiano mai, al massimo il naso. Un assaggio non assolve mai ciò che è in un distillato: metanolo, acido cianidrico e carbammato di etile non hanno un gusto che avvisa.
paper-cautions-carbon_dioxide_has_no_smell = L’anidride carbonica non ha odore e sta in basso. A 5000 ppm uscire, ventilare, avvisare il responsabile; a 30 000 ppm fuori subito. Una candela non è una prova.
paper-cautions-nobody_enters_a_tank_or = Nessuno entra in un serbatoio o in una vasca da solo o senza permesso, prova dei gas e qualcuno fuori.
paper-cautions-a_full_cask_of_225 = Una botte piena da 225 L (59 gal) pesa da 220 a 260 kg (da 485 a 573 lb). Carrello, paranco o cunei; mai la schiena.
paper-cautions-say_where_you_are_and = Dire dove si è e quando si torna.
paper-count-count_sheet = Foglio di conteggio
paper-count-begun_date_and_time = Iniziato, data e ora
paper-count-ended_date_and_time = Finito, data e ora
paper-count-instruments_used = Strumenti usati
paper-count-what_it_is = Che cosa è
paper-count-here = Qui
paper-count-gross_or_dip = Lordo, { $kg }, o altezza, { $what }
paper-count-glass = Areometro
paper-count-spirit = Distillato { $unit }
paper-count-stands_there_and_is_not = Sta lì e non è su questo foglio
paper-count-counted_by = Contato da
paper-count-second_person = Seconda persona
paper-count-other_places = Altri posti
paper-imprint-book_up_to_no_chain = registro fino al n. { $number }, catena { $digest }
paper-pages-nothing_has_a_place_there = Nulla vi ha un posto. Guardare i posti in cantina.
paper-pages-the_book_has_no_such = Il registro non ha un’annotazione simile da stampare.
paper-pages-the_book_has_no_such2 = Il registro non ha una cotta simile. Cercarla nell’elenco delle cotte.
paper-pages-the_book_has_no_such3 = Il registro non ha una fermentazione simile. Cercarla nell’elenco delle fermentazioni.
paper-pages-the_book_has_no_batch = Il registro non ha una partita di quel nome in un serbatoio. Cercarla nell’elenco degli imbottigliamenti.
paper-passport-laboratory_certificate_and_its_num = Certificato di laboratorio, e suo numero
paper-passport-none_in_the_book_methanol = nessuno nel registro: metanolo e altre cifre di composizione non si misurano con esso
paper-passport-lot_passport = Passaporto di lotto: { $name }
paper-passport-made_of = Fatto di
paper-passport-papers_and_certificates = Carte e certificati
paper-passport-made_out_by = Redatto da
paper-passport-approved_by = Approvato da
paper-passport-share = Quota
paper-passport-by_the_book = Secondo il registro
paper-passport-paper_no = N. carta
paper-passport-lot_mark = Segno di lotto
paper-passport-good_bottles = Bottiglie buone
paper-passport-strength = Titolo
paper-passport-pure_alcohol = Alcole puro
paper-passport-day = Giorno
paper-passport-came_from = Venuto da
paper-passport-cases_and_lot_mark = Cartoni e segno di lotto
paper-passport-to_or_from = A chi o da chi
paper-passport-of_l = { $good } da { $size } L
paper-passport-to = da { $first } a { $last }
paper-press-name_in_capitals = Nome in stampatello
paper-press-signature = Firma
paper-press-date_and_time = Data e ora
paper-press-printed_by = Stampato { $printed } da { $printable } · { $book }
paper-press-still_open = Ancora aperto
paper-press-open_questions = Domande aperte
paper-press-these_are_not_answered_what = Queste non hanno risposta. Ciò che sta sopra può cambiare con le risposte.
paper-press-cautions = Cautele
paper-press-page_of = pagina { $number } di { $of }
paper-press-in_the_book = Nel registro
paper-record-as_read = Come letto
paper-record-as_computed = Come calcolato
paper-record-witness = Testimone
paper-record-gauge_record = Verbale di accertamento: { $title }
paper-record-record = Scheda: { $title }
paper-record-reading = Lettura
paper-record-instrument = Strumento
paper-record-corrected = Corretto
paper-record-figure = Cifra
paper-record-value = Valore
paper-record-nothing_is_computed_from_this = Da questo non si calcola nulla.
paper-record-what_it_moved = Che cosa ha mosso
paper-record-read_again_by_hand = Riletto a mano
paper-record-gauged_by = Accertato da
paper-record-done_by = Fatto da
paper-record-stands_at = Sta a
paper-record-read_by = Letto da
paper-record-role = Ruolo
paper-record-gross_or_dip = Lordo, { $kg }, o altezza, { $what }
paper-record-glass = Areometro
paper-record-spirit = Distillato { $unit }
paper-record-at = A
paper-record-first = Primo
paper-record-second = Secondo
paper-run-run_sheet = Foglio di cotta { $run }
paper-run-minute_by_minute = Minuto per minuto
paper-run-event = Evento
paper-run-glass = Areometro
paper-run-spirit = Distillato { $unit }
paper-run-true = Effettivo { $unit }
paper-run-vapour = Vapore { $unit }
paper-run-dip = Altezza, { $what }
paper-run-into_why = In, perché
paper-run-what_the_receivers_hold = Che cosa contiene la raccolta
paper-run-still_hand = Addetto all’alambicco
paper-run-distiller = Distillatore
paper-run-logged = , annotato { $clock }
paper-run-balance = Bilancio, { $what }
paper-run-not_accounted_for = non giustificato
paper-run-more_than_went_in = più di quanto è entrato
paper-run-true_strength = Titolo effettivo, { $unit }
paper-run-fraction = Frazione
paper-run-none_gauged_yet = Ancora nessuna accertata.
paper-run-heads = teste { $plan }
paper-run-hearts_to = cuore fino a { $plan }
paper-run-tails_to = code fino a { $plan }
paper-run-of_the_charge = { $rest }, { $abs } % della carica
paper-run-part = Parte
paper-run-min = { $last } min
paper-run-charged_from = Caricato da
paper-run-begun = Iniziata
paper-run-charge = Carica
paper-run-of_it_feints = Di cui teste e code
paper-run-pure_alcohol_charged = Alcole puro caricato
paper-run-plan = Piano
paper-run-not_read_taken_as = , non letta: presa a { $balance }
paper-run-on = { $what } su { $still }
paper-run-at = { $unit } a { $temp }
paper-serving-two_of_the_three_are = due dei tre sono uguali: quale è diverso?
paper-serving-the_first_stands_open_as = il primo sta aperto come R: quale dei due con codice è uguale?
paper-serving-which_of_the_two_has = quale dei due ha di più di ciò che si chiede?
paper-serving-put_all_in_order_no = mettere tutti in ordine, nessuno alla pari
paper-serving-serving_sheet = Foglio di servizio
paper-serving-letter = Lettera
paper-serving-sample = Campione
paper-serving-of_it = Dettaglio
paper-serving-strength_as_found = Titolo trovato
paper-serving-water_added = Acqua aggiunta
paper-serving-glasses_from_left_to_right = Bicchieri, da sinistra a destra
paper-serving-poured_by = Versato da
paper-serving-taster = Assaggiatore
paper-serving-glass_sample = Bicchiere = campione
paper-serving-poured = Versato
paper-serving-method = Metodo
paper-serving-served_at = Servito a
paper-serving-sets_of_glasses = Serie di bicchieri
paper-serving-for_whoever_pours = Per chi versa. Nessun assaggiatore vede questo foglio, e chi l’ha visto non assaggia né parla con un assaggiatore.
paper-period-heads_of_the_book_of = Capisaldi del registro del { $signed }, firmati con la chiave { $shorten_digits }.
paper-period-printed = { $name } · stampato { $printed } · { $house }
paper-period-the_rest_is_open = { $signed }; il resto è aperto.
paper-period-pure_alcohol = { $house }: alcole puro, { $name }
paper-period-litres_of_pure_alcohol_at = Litri di alcole puro a 20 °C a 0,01; proof gallon a 0,1. { $what } { $what2 }
paper-period-page = pagina { $page }
paper-period-as_now_known_with_what = Come noto ora, con ciò che è emerso poi
paper-period-open_when_it_was_closed = Aperto alla chiusura, e letto da chi ha chiuso
paper-period-a_book_rewritten_since_has = { $words }Un registro riscritto poi ne ha altri: cellarslate verify --heads.
paper-period-date = Data
paper-period-name_and_title = Nome e qualifica
paper-period-signature = Firma
desk-account-lines_add_up_to_their = Le righe danno i loro totali come mostrati: ogni cifra è la più vicina, o dove non tornerebbe quella accanto (resto maggiore). Il registro tiene microlitri interi. Un trimestre si arrotonda da sé: una sua riga può differire dalla somma dei suoi mesi mostrati, al massimo di tre nell’ultima cifra.
desk-account-is_twice_the_standard_uncertainty = ± è il doppio dell’incertezza tipo (k = 2), secondo la classe degli strumenti di tutte le annotazioni di una riga; lo scarto di uno strumento conta in ognuna allo stesso modo. Una riga senza ± è più di quanto dicono le sue letture: un resto, un calcolo, bottiglie, o movimenti tra due accertamenti.
desk-account-is_twice_the_standard_uncertainty2 = ± è il doppio dell’incertezza tipo (k = 2), secondo gli strumenti dell’ultima misura di ogni recipiente e di tutto ciò che vi è entrato e uscito da allora.
desk-account-what_nobody_measured_mash_a = { $what } Ciò che nessuno ha misurato, pasta, una cotta in corso e bottiglie non vi è compreso.
desk-account-production = Produzione
desk-account-storage = Magazzino
desk-account-processing = Lavorazione
desk-account-excise_warehouse = Deposito fiscale
desk-account-so_that_the_lines_add = Perché le righe tornino, queste si mostrano scostate dal valore più vicino: { $said }.
desk-account-adjustment_of = Conguaglio di { $of }: { $more } { $party_words }
desk-account-on_hand_at_the_start = In giacenza all’inizio
desk-account-total_in = Totale entrate
desk-account-total_out = Totale uscite
desk-account-on_hand_at_the_end = In giacenza alla fine
desk-sheets-this_sheet_was_not_kept = Questo foglio non è stato tenuto così a lungo. Prenderlo di nuovo.
desk-sheets-the_whole_sheet_was_taken = Tutto il foglio è stato annullato.
desk-sheets-taken_back_every_line_stays = Annullato. Ogni riga resta leggibile, barrata.
desk-sheets-nothing_in_this_sheet_is = In questo foglio nulla è nuovo: il registro ha tutto. Nulla è cambiato.
desk-sheets-there_is_no_such_sheet = Non c’è un foglio simile. Cercarlo nell’elenco.
desk-sheets-in_use_stay_the_book = Restano in uso { $join }: il registro ne ha più di questo foglio.
desk-sheets-there_is_no_such_template = Non c’è un modello simile. Cercarlo nell’elenco.
desk-sheets-openings =
    { $many ->
        [one] { $many } giacenza iniziale: { $what }
       *[other] { $many } giacenze iniziali: { $what }
    }
desk-tasting_form-holds_heads_heads_are_never = contiene teste. Le teste non si assaggiano mai. Prendere un altro campione.
desk-tasting_form-name_of_the_tasting = Nome della degustazione
desk-tasting_form-question_written_down_before_pouri = Domanda, scritta prima di versare
desk-tasting_form-method = Metodo
desk-tasting_form-risk_of_finding_a_difference = Rischio di trovare una differenza che non c’è
desk-tasting_form-served_at_all_glasses_alike = Servito a, tutti i bicchieri uguali
desk-tasting_form-unit_of_strength = Unità del titolo
desk-tasting_form-poured_by = Versato da
desk-tasting_form-tasters = Assaggiatori
desk-tasting_form-sets_for_each_taster = Serie per ogni assaggiatore
desk-tasting_form-sample_a = Campione A
desk-tasting_form-of_it = di che cosa
desk-tasting_form-sample_b = Campione B
desk-tasting_form-sample_c = Campione C
desk-tasting_form-sample_d = Campione D
desk-tasting_form-sample_e = Campione E
desk-tasting_form-give_it_a_short_name = Darle un nome breve, come T-26-03.
desk-tasting_form-write_the_question_first = Scrivere prima la domanda.
desk-tasting_form-type_the_strength_in_the = Digitare il titolo nel bicchiere.
desk-tasting_form-how_many_sets = Quante serie?
desk-tasting_form-two_samples_are_the_same = Due campioni sono uguali. Dire in parole che cosa li distingue, o sceglierne un altro.
desk-tasting_form-pick_at_least_one_taster = Scegliere almeno un assaggiatore.
desk-tasting_form-who_pours_knows_the_codes = Chi versa conosce i codici, e non assaggia. Far versare a qualcun altro, o lasciare aperto.
desk-tasting_form-a_ranking_wants_three_to = Un ordinamento vuole da tre a cinque campioni.
desk-tasting_form-this_method_compares_two_samples = Questo metodo confronta due campioni: scegliere A e B, e non altri.
desk-tasting_form-that_is_more_than_sets = Sono più di { $what } serie di bicchieri. Meno assaggiatori, o meno serie.
desk-tasting_form-letters_digits_and_only_please = Solo lettere, cifre e -, per favore.
door-page-visitor = Visitatore { $let_in }
door-page-there_is_no_such_thing = Non c’è una cosa simile da provare. Tornare indietro e scegliere dall’elenco.
door-page-the_demo_has_none_left = La demo non ne ha più. Fermarla e riavviarla con --fresh.
door-page-this_person_has_left_the = Questa persona ha lasciato la casa della demo. Fermarla e riavviarla con --fresh.
door-page-there_is_nobody_of_that = Nella demo nessuno ha quel codice.
door-page-the_demo_has_let_in = La demo ha ammesso tutti i telefoni che prende. Fermarla e riavviarla con --fresh.
door-trial-cask_list_csv = elenco botti.csv
door-trial-log_without_signal = Annotare senza segnale
door-trial-it_says_at_once_where = Dice subito dove è l’annotazione. Ridare qui il segnale, e si consegna da sé.
door-trial-keep_a_still_run = Tenere una cotta
door-trial-s1_is_in_its_hearts = S1 è nel cuore. Digitare che cosa dicono areometro e termometro, poi fare il taglio.
door-trial-the_true_strength_stands_there = Il titolo effettivo sta subito lì. La fascia si stringe sul minuto del prossimo taglio.
door-trial-answer_a_question = Rispondere a una domanda
door-trial-a_cask_gained_pure_alcohol = Una botte ha guadagnato alcole puro, dice una riga di maggio. Nessuna botte può.
door-trial-the_likely_figure_is_offered = La cifra probabile è offerta, e che cosa cambierebbe. Le due cifre restano leggibili.
door-trial-trace_a_cask_to_its = Tracciare una botte fino alla frutta
door-trial-c_047_was_filled_a = C-047 fu riempita un anno fa: indietro per serbatoio e cotta fino al podere e ai suoi carichi di frutta.
door-trial-the_picture_says_how_much = La figura dice quanto di ognuno c’è dentro, e che cosa si è perso per strada.
door-trial-take_a_sheet_in = Prendere un foglio
door-trial-six_casks_in_somebodys_old = Sei botti nel vecchio foglio di calcolo di qualcuno. Due celle non possono essere giuste.
door-trial-which_cells_it_stops_at = A quali celle si ferma, e che cosa offre. Nulla si scrive prima del proprio sì.
desk-upkeep-opened_and_verified_entries = { $near }, aperta e verificata: { $status } annotazioni
desk-upkeep-every_page_and_every_digest = { $near }, ogni pagina e ogni impronta
desk-upkeep-backup_old = Copia vecchia di { $age }
desk-upkeep-read_through = Letto per intero
desk-upkeep-less_than_gb_a_full = Meno di { $least } GB. Un disco pieno lascia le consegne in attesa sui telefoni.
desk-upkeep-disk_free = Disco { $said } liberi
desk-upkeep-where_the_book_lies = dove sta il registro
desk-upkeep-not_by_itself = non da sé
desk-upkeep-backup = Copia
desk-upkeep-this_server_makes_none_by = Questo server non ne fa da sé.
desk-upkeep-the_server_reads_the_whole = Il server legge tutto il registro una volta al giorno.
desk-upkeep-does_not_hold = non regge
desk-upkeep-nearly_full = quasi pieno
desk-upkeep-none_made_yet = Ancora nessuna.
desk-upkeep-failed = fallita
desk-upkeep-old = vecchia
desk-upkeep-made = fatta
desk-upkeep-late = in ritardo
desk-upkeep-holds = regge
desk-upkeep-room = spazio
desk-ends-since = dal { $day }
desk-figures-temperature = Temperatura
desk-figures-true_strength = Titolo effettivo
desk-figures-pure_alcohol = Alcole puro
desk-figures-fill = Riempimento
desk-figures-strength_in_the_bottles = Titolo nelle bottiglie
desk-figures-of_the_label = % dell’etichetta
desk-clock-days = { $many } giorni
desk-clock-months = { $many } mesi
desk-clock-years = { $many } anni
desk-count-ferment =
    { $n ->
        [one] { $many } fermentazione
       *[other] { $many } fermentazioni
    }
desk-count-person =
    { $n ->
        [one] { $many } persona
       *[other] { $many } persone
    }
desk-count-entry =
    { $n ->
        [one] { $many } annotazione
       *[other] { $many } annotazioni
    }
desk-count-vessel =
    { $n ->
        [one] { $many } recipiente
       *[other] { $many } recipienti
    }
desk-day-read =
    { $n ->
        [one] { $many } fermentazione è da leggere
       *[other] { $many } fermentazioni sono da leggere
    }
desk-day-stuck =
    { $n ->
        [one] { $many } fermentazione è arrestata
       *[other] { $many } fermentazioni sono arrestate
    }
desk-day-bottling =
    { $n ->
        [one] { $many } imbottigliamento attende la chiusura
       *[other] { $many } imbottigliamenti attendono la chiusura
    }
desk-day-regauge =
    { $n ->
        [one] { $many } botte è da rimisurare
       *[other] { $many } botti sono da rimisurare
    }
desk-day-sample =
    { $n ->
        [one] { $many } botte è da campionare
       *[other] { $many } botti sono da campionare
    }
desk-day-taste =
    { $n ->
        [one] { $many } botte è da assaggiare
       *[other] { $many } botti sono da assaggiare
    }
desk-day-stands =
    { $n ->
        [one] { $many } serbatoio sta fermo da molto
       *[other] { $many } serbatoi stanno fermi da molto
    }
desk-day-failed =
    { $n ->
        [one] { $many } strumento non ha superato il controllo
       *[other] { $many } strumenti non hanno superato il controllo
    }
desk-day-open_run =
    { $n ->
        [one] { $many } cotta è senza fine
       *[other] { $many } cotte sono senza fine
    }
desk-day-still =
    { $n ->
        [one] { $many } fermentato attende un alambicco
       *[other] { $many } fermentati attendono un alambicco
    }
desk-day-owed =
    { $n ->
        [one] { $many } risposta è dovuta
       *[other] { $many } risposte sono dovute
    }
desk-day-nothing_owed = nulla è dovuto
desk-day-nothing_owed_next = Nulla è dovuto. { $next }
desk-day-run_ends =
    { $state ->
        [late]
            { $what ->
                [cut] { $still } doveva tagliare alle { $at }
               *[end] { $still } doveva finire alle { $at }
            }
        [now]
            { $what ->
                [cut] { $still } taglia a momenti
               *[end] { $still } finisce a momenti
            }
       *[coming]
            { $what ->
                [cut] { $still } taglia alle { $at }
               *[end] { $still } finisce alle { $at }
            }
    }
desk-day-run_at_its_end =
    { $what ->
        [cut] { $still } è al taglio
       *[end] { $still } è alla fine
    }
desk-day-still_heats = { $still } si scalda
desk-day-still_runs = { $still }: esce { $part }
desk-day-ended =
    { $n ->
        [one] { $which } è finita
       *[other] { $which } sono finite
    }
desk-day-near_end =
    { $n ->
        [one] { $which } è vicina alla fine
       *[other] { $which } sono vicine alla fine
    }
desk-day-one_stuck = { $name } è arrestata
desk-day-one_stands = { $name } sta fermo da molto
desk-day-one_read = { $name } è da leggere
desk-day-one_silent = { $name } è muto
desk-day-silent =
    { $n ->
        [one] { $many } telefono è muto
       *[other] { $many } telefoni sono muti
    }
desk-day-nothing_due = Oggi nulla è da fare.
desk-day-to_read = { $name } da leggere
desk-day-round = il giro di { $ferments }
desk-day-round_readings = letture
desk-day-round_regauge = rimisurazione
desk-day-round_samples = campioni
desk-day-round_tasting = degustazione
desk-day-next = Poi { $what } alle { $at }.
desk-part-heating = si scalda
desk-part-heads = teste
desk-part-hearts = cuore
desk-part-tails = code
desk-part-low_wines = flemma
desk-part-feints = teste e code
desk-due-many_read =
    { $n ->
        [one] { $many } fermentazione da leggere
       *[other] { $many } fermentazioni da leggere
    }
desk-due-many_close =
    { $n ->
        [one] { $many } fermentazione è finita
       *[other] { $many } fermentazioni sono finite
    }
desk-due-many_still =
    { $n ->
        [one] { $many } fermentato attende un alambicco
       *[other] { $many } fermentati attendono un alambicco
    }
desk-due-many_regauge =
    { $n ->
        [one] { $many } botte da rimisurare
       *[other] { $many } botti da rimisurare
    }
desk-due-many_sample =
    { $n ->
        [one] { $many } botte da campionare
       *[other] { $many } botti da campionare
    }
desk-due-many_taste =
    { $n ->
        [one] { $many } botte da assaggiare
       *[other] { $many } botti da assaggiare
    }
desk-due-many_stands =
    { $n ->
        [one] { $many } serbatoio sta fermo
       *[other] { $many } serbatoi stanno fermi
    }
desk-due-many_bottling =
    { $n ->
        [one] { $many } imbottigliamento iniziato
       *[other] { $many } imbottigliamenti iniziati
    }
desk-due-many_failed =
    { $n ->
        [one] { $many } strumento non ha superato il controllo
       *[other] { $many } strumenti non hanno superato il controllo
    }
desk-due-many_instrument =
    { $n ->
        [one] { $many } strumento da controllare
       *[other] { $many } strumenti da controllare
    }
desk-due-many_open_run =
    { $n ->
        [one] { $many } cotta senza fine
       *[other] { $many } cotte senza fine
    }
desk-due-many_stuck =
    { $n ->
        [one] { $many } fermentazione è arrestata
       *[other] { $many } fermentazioni sono arrestate
    }
desk-due-and_more = { $named } e altri { $more }
desk-due-all_of_them = Tutti
desk-due-look = Guardare
desk-due-late = { $time } di ritardo
desk-due-now = ora
desk-due-begun = iniziato { $when }
desk-due-last = ultimo { $when }
desk-due-never_yet = ancora mai
desk-due-last_entry = ultima annotazione { $when }
desk-due-months_open = da { $first } a { $last } non sono chiusi
desk-due-month_open = { $month } è passato e non chiuso
desk-due-us_reports = le sue dichiarazioni scadono il 15 del mese dopo
desk-due-one_read = { $name } da leggere
desk-due-one_close = { $name } è finita: chiuderla
desk-due-one_stuck = { $name } non si muove
desk-due-one_still = { $name } attende un alambicco
desk-due-one_regauge = { $name } da rimisurare
desk-due-one_sample = { $name } da campionare
desk-due-one_taste = { $name } da assaggiare
desk-due-one_stands = { $name } sta fermo da { $time }
desk-due-one_bottling = { $name } accertato per imbottigliare { $time } fa
desk-due-one_open_run = { $name } { $what } è senza fine
desk-due-one_failed = { $name } non ha superato il controllo
desk-due-one_instrument = { $name } da controllare
desk-due-one_instrument_late = { $name } era da controllare { $time } fa
group-page-sites = Siti
group-page-shut_out_what_it_handed = Escluso. Ciò che ha consegnato resta. Un nuovo codice ammette di nuovo il sito.
group-page-taken_the_other_branch_stays = Preso. L’altro ramo resta registrato.
group-page-made_of = Fatto di
group-page-this_needs_the_role_ask = Serve il ruolo { $access }. Chiedere a qualcuno dell’ufficio.
group-files-no_site_has_anything_to = Nessun sito ha qualcosa da tracciare con quel nome. Cercarlo con la ricerca sulla pagina di traccia.
paper-label-stand_off_label_scan_here = ETICHETTA A DISTANZA: scansionare qui. Restare fuori dalla linea. Prima vengono le regole del sito.
paper-label-does_not_fit_a_label = { $mark } non sta su un’etichetta di { $wide } x { $high } mm in caratteri alti 10 mm. Scegliere un’etichetta più grande, o un codice più corto.
paper-label-choose_1_to_labels_to = Scegliere da 1 a { $most } etichette da stampare.
paper-label-this_page_has_labels_start = Questa pagina ha { $many } etichette. Iniziare da 1 a { $many }.
paper-label-ruler = Questa linea è 50 mm. Se non lo è, ristampare al 100 %.
paper-label-own_size_is = Una misura propria ha da { $low } a { $high } mm di larghezza e di altezza, con 0 a { $clear } mm liberi a ogni bordo. Scrivere larghezza e altezza in millimetri.
paper-label-zpl_wants_a_roll = ZPL stampa un’etichetta dopo l’altra. Scegliere un rotolo, un cartellino o una misura propria.
paper-case-lot = Lotto { $lot }
paper-case-case = Cartone { $case }
paper-case-not_the_label_of_the_law = Per magazzino e traccia. L’etichetta che chiede la legge è un’altra.
paper-case-does_not_fit = L’etichetta di un cartone non sta su { $wide } x { $high } mm. Scegliere un’etichetta più grande.
paper-case-address_too_long = L’indirizzo del registro è troppo lungo per un’etichetta. Mettere un PUBLIC_HOST più corto.
desk-room-today = Oggi
desk-room-queries = Domande
desk-room-entries = Annotazioni
desk-room-vessels = Recipienti
desk-room-cellar = Cantina
desk-room-runs = Cotte
desk-room-blending = Assemblaggio
desk-room-trace = Traccia
desk-room-periods = Periodi
desk-room-labels = Etichette
desk-room-settings = Impostazioni
desk-rule-age_years = { $figure } anni in legno
desk-rule-strength_low = da { $figure }
desk-rule-strength_high = a { $figure }
desk-rule-score_low = punti { $figure }
desk-rule-loss_high = perdita al massimo { $figure } % l’anno
access-passkey-not_here = A questo indirizzo non si usano passkey. Digitare la password.
access-passkey-does_not_open = Questa passkey non apre. Riprovare, o digitare la password.
access-passkey-none_used = Nessuna passkey usata. Riprovare, o digitare la password.
access-passkey-none_made = Nessuna passkey creata. Riprovare; un dispositivo che ne ha già una non ne fa una seconda.
access-steps-another_phone_or_computer = Altro telefono o computer
access-steps-on_this = Su questo { $name }
access-steps-fetch_the = Prendere: { $fetch }
access-steps-done = Fatto
access-steps-back_one_step = Un passo indietro
access-steps-or_the_computer_does_not = O il computer non risponde a questo telefono sulla porta { $port }: il suo firewall, o un’altra rete senza fili. Questa pagina non distingue i due.
access-steps-compare_before_you_trust = Confrontare prima di fidarsi
access-steps-these_groups_must_be_the = Questi gruppi devono essere quelli che mostra il computer dell’ufficio. Se sono diversi, fermarsi e avvisare l’ufficio.
access-steps-the_whole_fingerprint_sha_256 = L’impronta intera, SHA-256
access-steps-another_one = Un altro?
access-steps-profile = profilo
access-steps-certificate = certificato
access-steps-trusted = Questo telefono si fida della casa.
access-steps-not_trusted_yet = Non si fida ancora della casa.
access-steps-try_again = Riprovare
access-steps-counted = Passo { $at } di { $many }
access-plain-trust_this_distillerys_computer = Fidarsi del computer di questa distilleria
access-plain-once_on_each_phone_after = Una volta su ogni telefono. Dopo, la lavagna di reparto si apre senza avvisi, e lavora senza segnale.
floor-frame-to_the_work = Al lavoro
floor-frame-back = Indietro
floor-frame-vessel = Recipiente
floor-frame-waits_on_slate = su lavagna
floor-frame-floor = Reparto
floor-frame-today = Oggi
floor-frame-scan = Scansionare
floor-frame-slate = Lavagna
floor-frame-more = Altro
floor-field-may_stay_empty = (può restare vuoto)
floor-field-unit_of = Unità di { $label }
floor-field-scan_for = Scansionare per { $label }
floor-field-not_logged_yet = Non ancora annotato.
floor-field-nothing_is_lost = Nulla è perso; rettificare questi e annotare di nuovo.
floor-away-title = L’ufficio non c’è
floor-away-desk = Ufficio
floor-away-no_answer = nessuna risposta dal registro
floor-away-words = L’ufficio sta sul computer del registro, e quello non risponde. Ciò che questo telefono ha annotato è al sicuro sulla sua lavagna.
floor-away-ask_again = Chiedere ancora
floor-away-work_without = Lavorare senza segnale
floor-enrol-title = Ammettere questo telefono
floor-enrol-office_gives = L’ufficio dà a ogni telefono un codice, una volta. Con esso il telefono consegna al registro e tiene le schede dei recipienti.
floor-enrol-code = Codice dall’ufficio
floor-enrol-name = Come si chiama questo telefono
floor-enrol-name_help = Come sta scritto sul retro. Se vuoto, come l’ha chiamato l’ufficio.
floor-enrol-let_it_in = Ammettere
floor-job-title = Lavoro
floor-job-no_script = Questa pagina calcola le sue cifre sul telefono e vuole script. Ogni annotazione si può fare anche dalla scheda del recipiente.
floor-log-needed = serve
floor-log-remark = nota
floor-log-read_now = Letto adesso
floor-log-left_empty = Se vuoto, letto adesso.
floor-log-log_it = Annotare
floor-run-title = Cotta
floor-run-sheet = Foglio di cotta
floor-vessel-to_log = Che cosa annotare
floor-run-plain_reading = Lettura
floor-run-cut_or_event = Taglio o evento di cotta
floor-run-end_the_run = Finire la cotta
floor-scan-camera_sees = Che cosa vede la fotocamera
floor-scan-torch = Torcia
floor-scan-outside_the_line = Restare fuori dalla linea, salvo che il telefono sia omologato e il sito lo permetta.
floor-slate-no_script = La lavagna vuole script. Senza, ogni annotazione va dritta al registro quando si annota.
floor-today-no_script = Questo telefono non esegue script, quindi non ha lavagna. Con una connessione, digitare una sigla per continuare.
floor-who-title = Chi annota?
floor-who-no_script = Senza script si annota con il proprio nome:
floor-who-sign_in = accedere
floor-mark-label = Sigla sull’etichetta
floor-mark-hint = Lettere, cifre e l’ultimo carattere dopo il trattino.
floor-mark-open = Aprire
floor-caution-lead_1 = La linea.
floor-caution-words_1 = Un telefono comune può accendere i vapori d’alcole. Restare fuori dalla linea segnata, salvo che il telefono sia omologato e il sito lo permetta. Leggere al misuratore, fare un passo indietro, digitare con il minuto di lettura.
floor-caution-lead_2 = Sala fermentazione.
floor-caution-words_2 = L’anidride carbonica non ha odore e sta in basso. A 5000 ppm uscire, ventilare, avvisare il responsabile; a 30 000 ppm fuori subito. Mai rientrare per una lettura. Una candela non è una prova.
floor-caution-lead_3 = Teste e metanolo.
floor-caution-words_3 = Un areometro non vede il metanolo, e nemmeno un densimetro. Le teste ne contengono parte, anche cuore e code. Solo un laboratorio sa. Non assaggiare le prime gocce.
floor-caution-lead_4 = Alambicco.
floor-caution-words_4 = Caldo, e in pressione se un passaggio si blocca. Acqua fredda in un alambicco caldo e chiuso può schiacciarlo. Tenere liberi gli sfiati; mai lasciare un alambicco in funzione.
floor-caution-lead_5 = Serbatoi e vasche.
floor-caution-words_5 = Nessuno entra da solo o senza permesso, prova dei gas e qualcuno fuori.
floor-caution-lead_6 = Botti.
floor-caution-words_6 = Una botte piena da 225 L (59 gal) pesa da 220 a 260 kg (da 485 a 573 lb). Carrello, paranco o cunei; mai la schiena, mai sulla linea del ventre.
floor-caution-lead_7 = Soli in cantina.
floor-caution-words_7 = Dire dove si è e quando si torna. Questo telefono non dà allarmi.
floor-caution-title = Cautele
floor-caution-first = Prima vengono la valutazione del sito, le norme locali e le persone abilitate. Nulla su questo telefono dice che un posto o un distillato sia sicuro.
floor-form-unit_of = Unità di { $what }
floor-form-read_at = Letto alle
floor-form-who = Chi
floor-form-role = Ruolo
floor-form-seen_by = Visto da
floor-form-remark = Nota
floor-form-missing = Manca: { $what }. Digitare.
floor-form-yes = sì
floor-form-no = no
floor-form-alcoholmeter = Alcolometro usato
floor-form-dip = Asta usata
floor-form-refractometer = Rifrattometro usato
floor-form-saccharometer = Saccarimetro usato
floor-form-scale = Bilancia usata
floor-form-thermometer = Termometro usato
floor-form-density_meter = Densimetro usato
floor-form-pH_meter = pH-metro usato
floor-enrol-type_the_code = Digitare il codice dell’ufficio.
floor-vessel-not_in_book = Il registro non ha il recipiente { $mark }. Rileggere l’etichetta, o chiedere all’ufficio di metterlo.
floor-form-no_such = Non c’è un modulo simile. Tornare indietro e sceglierne uno dalla scheda del recipiente.
floor-log-sign_in_first = Prima accedere, in un’altra scheda: poi premere di nuovo il pulsante. Ciò che è digitato resta qui.
floor-log-no_time = Letto alle: scegliere giorno e minuto, o lasciare vuoto per adesso.
floor-mark-bad =
    { $why ->
        [empty] Digitare la sigla dell’etichetta, come F3-8.
        [foreign] Questo codice non è dei nostri. Scansionare l’etichetta del recipiente, o digitarne la sigla.
        [characters] Una sigla ha solo lettere da A a Z e cifre da 0 a 9. Rileggere l’etichetta.
        [too_short] Una sigla ha un codice e un carattere di controllo, come F3-8. Digitarla tutta.
        [too_long] Troppo lungo per una sigla. Digitare la scritta grande dell’etichetta.
       *[check] { $mark } non è una sigla: un carattere è sbagliato, o manca l’ultimo. Rileggere l’etichetta.
    }
floor-form-within = { LOWER($words) }
