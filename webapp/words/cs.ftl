### Čeština (cs). Czech. No native of the trade has read these words yet: read them before you rely on them.
### Terms of Czech law, as its texts have them: nádrž, sud, jímání, lihoměr, úkap, dokap, lutr, výpalky, kvas, zápara, výroba, stáčení, scelování, vymrazování, filtrace, znehodnocení, vyskladnění, vínovice, matolinovice, ovocný destilát, lihovina, metanol, kyanovodík, ethylkarbamát, daňový sklad, inventura, odběr vzorku.
### Terms of the law from memory (a native of the trade has to read them): čistý líh, koncentrace (for objemová koncentrace), těkavé látky, ovocná matolinovice, brandy, whisky, hrušky Williams, žito, šarže, průtok, hlášení, v podmíněném osvobození, měření (for zjištění množství), zjištění výroby.
### Terms of the trade, of which no text was read: kvasná nádrž, přístroj (for destilační přístroj), deflegmátor, patro, jímadlo, jádro, první kapka, topení, pálení, řez, náplň, přeměření, dolití, vyprázdnění, hladina (dip), prázdný prostor, skutečná koncentrace, rel. hustota, cukroměr, refraktometr, elektronický hustoměr, tára, extrakt, výtěžnost, kaly, dužiny, obruče, dno, zátka, deka, zuhelnění, dávka, závěra, palič, degustace.
### Terms of memory or our own: kniha (book), tabulka (slate), kancelář (desk and office), provoz (floor; house site), závod (site of a group), lihovar (the house), kupáž (vat), úkap a dokap (feints, low wines going back), lihové měřidlo and měřidlo (safe), průvodka (passport), stopa (trace), uzávěrka (close), účet (account), přesudování, bednářství, zápis, dotaz, vzkaz, poznámka, zapsat, odevzdat, opravit, vzít zpět, nechat jak čteno, škrtnout, svědek, hlavy (heads of the book), cejchovní tabulka (strapping table), výdej, příjem lihu, archiv (library bottles), průtahový destilát (Geist).

range-between = { $low } až { $high }
range-or_more = { $low } nebo víc
range-up_to = nejvýš { $high }
span-s = { $many } s
span-min = { $many } min
span-h = { $many } h
span-days =
    { $many } { PLURAL($many) ->
        [one] den
        [few] dny
        [many] dne
       *[other] dní
    }
span-months =
    { $many } { PLURAL($many) ->
        [one] měsíc
        [few] měsíce
        [many] měsíce
       *[other] měsíců
    }
span-years =
    { $many } { PLURAL($many) ->
        [one] rok
        [few] roky
        [many] roku
       *[other] let
    }
time-same_day = { $clock }
time-day_before = { $clock } předešlého dne
time-day = { $day } { $clock }
pct =
    { UNITS() ->
        [us] proof
       *[metric] %
    }
points =
    { UNITS() ->
        [us] stupně proof
       *[metric] bodu
    }
as_said = { $words }
no_such_message = Tento program nemá slova pro „{ $id }“. Aktualizovat ho, nebo se zeptat v kanceláři.
missing = Chybí: { $label }. { asks }
missing-question = { $label } { asks }
asks =
    { $sort ->
        [choice] Vybrat.
        [yes_no] Vybrat.
        [mark] Vybrat, naskenovat nebo napsat.
        [date] Vybrat den.
       *[other] Napsat.
    }
no_such_choice = { $label }: vybrat jednu z možností.
no_such_choice-yes_no = { $label }: ano, nebo ne.
no_date = { $label }: { $typed } není datum. Vybrat den.
too_long = { $label }: víc než { $most } znaků. Zkrátit; zbytek může do poznámky.
no_such_unit = { $label }: čte se v { $units }. Vybrat jednotku.
no_number = { $label }: { $reason }
number-empty = Tady není nic napsáno. Napsat údaj, jak ho měřidlo ukazuje.
number-too_long = To je na údaj moc dlouhé. Napsat nejvýš 15 znaků.
number-two_signs = Napsat jednu tečku nebo čárku, jednou, před desetinami: 1234.5 nebo 1234,5.
number-not_plain = To není obyčejné číslo. Napsat číslice s jednou tečkou nebo čárkou: 14.6 nebo 14,6.
outside_tables = { $label }: { $reason }
impossible = { $label } { UNIT(TYPED($figure)) } není možné: možné je { UNIT(LIKE($possible, $figure)) }. Podívat se znovu, nebo nechat, jak čteno.
impossible-outside = { $label }: { $reason }
unusual = { $label } { UNIT(TYPED($figure)) } je neobvyklé: obvyklé tu je { UNIT(LIKE($usual, $figure)) }. Podívat se znovu.
danger = { $label } { UNIT(TYPED($figure)) }. { $act }
slip-swapped = dvě číslice přehozené
slip-point = čárka posunutá
slip-unit = { $meant }, ne { $typed }
slip-meant = { TYPED($meant) }
slip-key = vedlejší klávesa
slip-twice = číslice napsaná dvakrát
slip-misread = číslice zaměněná za jinou
slip-lost = číslice vynechaná
slip-sign = opačné znaménko
slip-box = do pole „{ $label }“
slip-exchanged = zaměněno s polem „{ $label }“
slip-net = to bylo netto, bez nádoby
slip-gross = to bylo brutto, s nádobou
slip-ullage = to byl prázdný prostor, shora
slip-cases = to byly kartony
ferment_fast = Rel. hustota klesla o { $fell } od { $since }, to je { $a_day } za den; u ovoce je { $much } hodně. Podívat se znovu a kvas chladit.
ferment_fast-soon = Rel. hustota klesla o { $fell } od { $since }: tak rychle ovoce nekvasí. Podívat se znovu.
strength_fell = Skutečná koncentrace { BARE($now) } { pct } je o { APART($off) } { points } pod { BARE($last) } { pct } (odstup { $apart }): pálení klesá pomaleji. Podívat se znovu.
held_strength =
    Skutečná koncentrace { BARE($now) } { pct } je o { APART($off) } { points } { $side ->
        [above] nad
       *[below] pod
    } údajem { BARE($held) } { pct }, který má kniha pro tuto nádobu. Podívat se znovu, a hledat přesun nebo vodu bez zápisu.
reason-outside = { $what } { UNIT($figure) } je mimo rozsah { UNIT($possible) }. { $advice }
reason-outside_in_words = { $what } { $figure } { $unit } je mimo rozsah { $possible } { $unit }. { $advice }
reason-off_glass = Při { $temp } stojí líh { $strength } mimo stupnici lihoměru. Přiblížit ho k { glass-temp }, nebo vzít elektronický hustoměr.
glass-temp =
    { UNITS() ->
        [us] 60 °F
       *[metric] 20 °C
    }
reason-glass_too_weak = Údaj { $reading } při { $temp } by znamenal, že tu žádný alkohol není. Při té teplotě může lihoměr ukázat { $low } až { $high }: přečíst lihoměr a teploměr znovu.
reason-glass_too_strong = Údaj { $reading } při { $temp } by znamenal víc než čistý líh. Při té teplotě může lihoměr ukázat { $low } až { $high }: přečíst lihoměr a teploměr znovu.
reason-part_ice = Při { $temp } to může být zčásti led. Ohřát nad { $above } a přečíst znovu.
reason-no_such_density = Hustota { $density } je při této teplotě mimo { BARE($ethanol) } (etanol) až { $water } (voda). Zkontrolovat hustotu a teplotu; dělá to i cukr nebo extrakt ve vzorku.
reason-table1_blank = Tabulka 1 nemá údaj pro { $reading } při { $temp }. Přiblížit líh k 60 °F a přečíst znovu.
reason-gravity_above_start = Rel. hustota je vyšší než na začátku. Zkontrolovat obě, nádrž, a zda se nepřidal cukr.
reason-no_dip_table = Kniha nemá pro tuto nádobu tabulku. Napsat litry; kancelář může tabulku přidat, u nádoby, pod Hladiny.
reason-tare_too_heavy = Tára musí být mezi nulou a hmotností brutto. Zvážit znovu.
reason-target_too_strong = Voda může jen ředit. Zkontrolovat cíl a koncentraci.
reason-empty_bottle_heavy = Prázdná láhev je lehčí než plná. Zvážit obě znovu.
reason-few_checks = Je třeba nejméně { $least }. Zkontrolovat víc lahví.
reason-no_gauges = Nejdřív změřit sud.
reason-uneven_readings = Ke každému času jednu rel. hustotu.
measured-alcohol_by_both = Alkohol z obou měřidel
measured-bottle_size = Objem láhve
measured-brix = Brix
measured-charge = Náplň
measured-check = Kontrola
measured-density = Hustota
measured-fruit = Ovoce
measured-full_bottle = Plná láhev
measured-glass_expansion = Roztažnost skla
measured-glass_reading = Údaj lihoměru
measured-gravity = Rel. hustota
measured-dip = Hladina
measured-bung_diameter = Průměr u zátky
measured-head_diameter = Průměr dna
measured-length = Délka
measured-extract = Suchý extrakt
measured-height = Výška
measured-hydrometer_correction = Oprava lihoměru
measured-juice_share = Podíl moštu
measured-loss = Ztráta
measured-mass_fraction = Hmotnostní zlomek
measured-mole_fraction = Molární zlomek
measured-net_weight = Čistá hmotnost
measured-number = Číslo
measured-original_gravity = Původní rel. hustota
measured-plato = Plato
measured-proof = Proof
measured-proof_gallons = Proof gallony
measured-proof_reading = Údaj proof
measured-pure_alcohol = Čistý líh
measured-pure_alcohol_charged = Čistý líh v náplni
measured-refractometer = Refraktometr
measured-result = Výsledek
measured-size = Velikost
measured-solids = Extrakt
measured-strength = Koncentrace
measured-sugar = Cukr
measured-temperature = Teplota
measured-thermometer_correction = Oprava teploměru
measured-time = Čas
measured-time_ahead = Čas dopředu
measured-unfermentable_part = Nezkvasitelný podíl
measured-usual_drift = Obvyklý posun
measured-volume = Objem
measured-water = Voda
measured-water_temperature = Teplota vody
measure-kg_kg = kg/kg
measure-mol_mol = mol/mol
measure-kg_L = kg/L
measure-m = m
measure-per_degC = na °C
measure-of_one = z jedné
measure-days = dnů
measure-years = let
measure-pct_year = % za rok
measure-pct_vol_year = % vol za rok
advice-cannot_rise = Rel. hustota nemohla stoupnout. Zkontrolovat obě.
advice-check_charge = Zkontrolovat, co se naplnilo.
advice-check_charge_strength = Zkontrolovat koncentraci náplně.
advice-check_dip = Zkontrolovat hladinu a její jednotku.
advice-check_figure = Zkontrolovat údaj a jeho jednotku.
advice-check_gauges = Zkontrolovat měření.
advice-check_glass = Zkontrolovat lihoměr.
advice-check_glass_figure = Zkontrolovat údaj; lihoměr na proof má vlastní jednotku.
advice-check_instrument = Zkontrolovat údaj a měřidlo.
advice-dip_in_table = Tam tabulka nádoby končí: změřit hladinu znovu, nebo napsat litry.
advice-dip_in_cask = Sud tak vysoký není: změřit hladinu znovu, nebo se podívat na rozměry.
advice-measure_cask = Změřit sud znovu.
advice-check_scale = Zkontrolovat údaj a stupnici měřidla.
advice-check_strengths = Zkontrolovat koncentrace.
advice-check_thermometer = Zkontrolovat teploměr a jeho jednotku, nebo dostat vzorek do rozsahu.
advice-check_weights = Zkontrolovat brutto a táru.
advice-count_again = Spočítat znovu.
advice-distil_sample = Vzorek předestilovat a změřit proof destilátu.
advice-empty_cask = Prázdný sud nic neztrácí.
advice-fraction_not_percent = Zadat jako zlomek jedné, ne v procentech.
advice-gauge_again = Změřit nádrž znovu.
advice-gauge_first = Nejdřív změřit nádrž.
advice-give_cask_size = Zapsat velikost sudu do knihy.
advice-give_height = Zadat nadmořskou výšku přístroje v metrech.
advice-look_again = Podívat se na údaj znovu.
advice-look_at_label = Podívat se na štítek.
advice-no_baume = Pod vodou Baumé není. Koncentraci vzít z poklesu rel. hustoty.
advice-no_check = Mimo ten rozsah se nekontroluje.
advice-not_so_far = Tak daleko dopředu sud nikdo nezná.
advice-order_gauges = Seřadit měření podle času.
advice-order_readings = Seřadit odečty podle času.
advice-read_both_again = Ty dva k sobě nejdou. Přečíst oba znovu.
advice-read_spirit_again = Přečíst teploměr lihu znovu.
advice-read_water_again = Přečíst teploměr vody znovu.
advice-see_certificate = Vzít z kalibračního listu měřidla.
advice-soda_lime = Sodnovápenaté sklo má 0,000025.
advice-table1_reading = Tam tabulka 1 končí: přečíst lihoměr znovu.
advice-table1_temp = Tam tabulka 1 končí: přiblížit líh k 60 °F.
advice-table_ends = Tam vydaná tabulka končí.
advice-two_gauges = Dvě měření v jeden čas nedají rychlost.
advice-usual_juice_share = Kvas z celého ovoce má 0,75 až 0,9.
advice-usual_unfermentable = Obvyklé je 3 až 5.
advice-weigh_again = Zvážit znovu.
floor-go_on = Dál
floor-not_said = neuvedeno
floor-remark = poznámka
floor-mistyped = překlep
floor-misread = špatně čteno
floor-save_the_slate_to = Uložit tabulku do souboru
floor-as_last_time = jako minule
floor-pin_of = PIN pro { $code }
floor-log_it = Zapsat
floor-remark_2 = Poznámka
floor-leave_it = Nechat
floor-more = Další
floor-today = Dnes
floor-blind_tasting = Slepá degustace
floor-more_2 = ještě { $rest }
floor-next = další
floor-empty = prázdné
floor-helps = Pomůcky
floor-ended = konec { $ended_at }
floor-gauge_the_fractions = Změřit frakce
floor-run = pálení
floor-hearts = jádro
floor-tails = dokap
floor-true_strength_over_time = Skutečná koncentrace v čase
floor-time = čas
floor-run_before = minulé pálení
floor-nose_first = Nejdřív nos.
floor-reading = Odečet
floor-nose_first_2 = nejdřív nos
floor-cut_plan = Plán řezů
floor-cut_to_hearts = Řez na jádro
floor-empty_by_the_book = podle knihy prázdné
floor-this_phone = Tento telefon
floor-not_let_in = nepřijat
floor-since = od { $started_at } · { $started_at_2 }
floor-run_sheet = List pálení
floor-let_this_phone_in = Přijmout tento telefon
floor-put_it_right = Opravit
floor-take_it_back = Vzít zpět
floor-taken_back_it_stays = Vzato zpět. Zůstává čitelné, přeškrtnuté.
floor-start-this_phone_now_works = Telefon teď funguje bez signálu.
floor-start-this_page_did_not = Stránka se neotevřela, jak měla. { $message } Tabulka je v bezpečí.
floor-start-try_again = Zkusit znovu
floor-begun-begun_before = Začato dřív
floor-begun-begun_by = Začato { $ago }, { $code }{ $shown }
floor-begun-go_on_or_start = Pokračovat, nebo začít znovu?
floor-begun-start_clean = Začít znovu
floor-entryform-log = Zapsat { $figure } { $unit }
floor-entryform-as_read = { " " }jak čteno
floor-extras-instrument_for = { $instrument } pro { $label }
floor-extras-corrected = { " " }· opraveno
floor-extras-read_at = Odečteno { $typed }
floor-extras-read_now = Odečteno teď
floor-extras-read_earlier = Odečteno dřív?
floor-extras-with_a_remark = s poznámkou
floor-fix-something_else = něco jiného
floor-fix-of = { " " }z { $day }
floor-fix-of_2 = { " " }z { $day }, { $at }
floor-fix-this_replaces_the_entry = Nahradí zápis{ $when }; ten zůstává čitelný. { $rest }
floor-fix-type_all_of_it = Napsat celé, ne jen to, co bylo špatně.
floor-fix-what_was_wrong = Co bylo špatně
floor-full-the_phone_could_not = Telefon to nemohl uložit. Údaje zůstávají tady; zapsat znovu.
floor-full-not_on_the_slate = Není na tabulce.
floor-full-the_figures_stay_in = { $words } Údaje zůstávají v tomto formuláři.
floor-ghosts-last = minule { $words }, { $when }
floor-ghosts-last_2 = minule { $figure }, { $when }
floor-jumps-can_only_fall_it = { $label } může jen klesat: bylo { $last }, { $when }.
floor-jumps-before = předtím
floor-look-look_again = Podívat se znovu
floor-look-danger = Nebezpečí.
floor-look-look_again_2 = Podívat se znovu?
floor-look-keep_as_read = Nechat, jak čteno
floor-marks-pick_scan_or_type = vybrat, skenovat, psát
floor-marks-scan_or_type = skenovat nebo psát
floor-quickfields-unit_of = Jednotka: { $label }
floor-quickfields-minute = Minuta
floor-sums-by_the_class_of = podle třídy měřidel, nebo podle třídy ze zákona
floor-panels-not_read_yet = zatím neodečteno
floor-panels-switch_first_mark_of = Nejdřív přepnout. Značka jímadla, které je teď otevřené
floor-panels-switch_first_open_now = Nejdřív přepnout. Otevřené teď:
floor-panels-another_minute_more_figures = jiná minuta, další údaje
floor-paper-no_strength_yet = Zatím bez koncentrace.
floor-paper-glass = lihoměr { $glass }{ $temp }
floor-paper-at = { " " }při { $temp }
floor-paper-flow = Průtok
floor-paper-not_read = neodečteno
floor-paper-not_since = , od té doby ne
floor-paper-the_sum_needs_it = výpočet to potřebuje
floor-paper-receivers = Jímadla
floor-paper-true = { $true_strength } skutečná
floor-paper-dip = hladina { $dip }
floor-paper-logged = zapsáno { $typed_at }
floor-paper-logged_in_this_run = Zapsáno v tomto pálení
floor-paper-twice = dvakrát
floor-paper-logged_twice =
    Zapsáno dvakrát během minuty. Byla-li to jedna { $what ->
        [change] změna
       *[cut] událost řezu
    }, vzít jeden zápis zpět.
floor-paper-this_phone = tento telefon
floor-state-cut_to_tails = Řez na dokap
floor-state-end_the_run = Ukončit pálení
floor-state-last_time = minule { LOWER($step) }
floor-state-heads_cut = úkap odříznut
floor-state-hearts_cut = jádro odříznuto
floor-state-logged = , zapsáno { $typed_at }
floor-state-logged_twice = , zapsáno dvakrát
floor-enrol-the_code_is_missing = Chybí kód. Naskenovat ho v kanceláři, nebo napsat.
floor-enrol-letting_it_in_and = Telefon se přijímá a načítají se karty nádob.
floor-enrol-is_let_in = { $name }: přijato.
floor-enrol-the_book_did_not = Kniha tento kód nepřijala. Požádat kancelář o nový.
floor-job-there_is_no_such = Taková stránka není. Zpět na Dnes.
floor-job-this_page_is_not = Tato stránka v telefonu ještě není. Přijde sama, až telefon příště najde knihu; do té doby zapisovat z karty nádoby.
floor-job-not_here_yet = Zatím tu není
floor-log-not_on_this_phones = není na seznamu tohoto telefonu
floor-more-note = Vzkaz
floor-more-to_the_next_shift = další směně
floor-more-instrument = Měřidlo
floor-more-check_it = zkontrolovat
floor-more-bottles = Láhve
floor-more-count_them = spočítat
floor-more-cases = Kartony
floor-more-out_or_back = ven nebo zpět
floor-more-in_from_another_site = dovnitř z jiného závodu
floor-more-stock = Zásoba
floor-more-count_it_in_a = spočítat při obchůzce
floor-more-your_glasses = vaše sklenky
floor-more-laboratory = Laboratoř
floor-more-of_bottled_spirit = stočeného lihu
floor-more-the_curves = křivky
floor-more-the_jobs = práce
floor-more-the_reader_of_labels = čtečka štítků
floor-more-log_without_a_vessel = Zapsat bez nádoby
floor-more-nobody_chosen = Nikdo nevybrán
floor-more-who_logs = kdo zapisuje
floor-more-no_name_yet = Zatím bez jména
floor-more-let_in = přijat
floor-more-gloves_buzz_voice = rukavice, vibrace, hlas
floor-more-desk = Kancelář
floor-more-needs_signal = chce signál
floor-more-put_the_phone_down = Odložit telefon
floor-more-not_on_this_phone = V telefonu zatím není: { $awaited }. Nechat aplikaci chvíli otevřenou se signálem.
floor-more-as_you_like_it = Podle libosti
floor-more-units = Jednotky
floor-more-metric = metrické
floor-more-us = US
floor-more-decimal_mark = Desetinný znak
floor-more-as_the_house = podle lihovaru
floor-more-keys = Klávesy
floor-more-large_keys = velké klávesy
floor-more-phone_keyboard = klávesnice telefonu
floor-more-light = Světlo
floor-more-as_the_phone = podle telefonu
floor-more-dark = tmavé
floor-more-light_2 = světlé
floor-more-put_cellarslate_on_the = Dát Cellarslate na plochu
floor-more-put_cellarslate_on_the_2 = Dát Cellarslate na plochu (Sdílet, pak Přidat na plochu): telefon pak tabulku drží déle.
floor-run-the_run_in_full = Celé pálení se nepodařilo ukázat; list platí i bez něj.
floor-run-no_run_is_known = Telefon nezná pro { $mark } žádné pálení. Nejdřív naplnit kotel; nebo odečíst teď a kniha to k pálení přiřadí.
floor-run-charge = Náplň
floor-run-heat_on = Topení zapnuto
floor-run-first_drop = První kapka
floor-run-other_event = Jiná událost
floor-run-still_opened = Kotel otevřen
floor-run-balance_and_yield = Bilance a výtěžnost
floor-run-charge_again = Naplnit znovu
floor-run-switch_the_receiver_first = nejdřív přepnout jímadlo
floor-run-event = Událost
floor-run-log_the_cut = Zapsat řez
floor-scan-the_reader_of_labels = Čtečka štítků v telefonu ještě není: přijde s příštím signálem. Napsat značku.
floor-slate-not_let_in_yet = zatím nepřijat
floor-slate-handed_in = odevzdáno { $handed_in_at }
floor-slate-nothing_handed_in_yet = zatím nic neodevzdáno
floor-slate-handing_in = odevzdává se
floor-slate-book_busy = kniha má práci
floor-slate-wants_a_look = Chce pohled
floor-slate-waiting = Čeká
floor-slate-put_aside_not_in = Odloženo, není v knize
floor-slate-in_the_book = V knize
floor-slate-handing_in_2 = Odevzdává se
floor-slate-hand_in_now = Odevzdat teď
floor-slate-entries_wait =
    { PLURAL($count) ->
        [one] { $count } zápis čeká
        [few] { $count } zápisy čekají
        [many] { $count } zápisů čeká
       *[other] { $count } zápisů čeká
    } v tomto telefonu.
floor-slate-nothing_waits = Nic nečeká.
floor-slate-all_in_the_book = Vše je v knize.
floor-slate-handing_in_3 = Odevzdává se{ $in }.
floor-slate-of_are_in = : { $done } z { $asked } je v knize
floor-slate-the_book_does_not = Kniha tento telefon ještě nezná. Přijmout ho; zápisy se pak odevzdají samy.
floor-slate-they_are_safe_here = Tady jsou v bezpečí a odevzdají se, až kniha odpoví.
floor-slate-lines_want_a_look =
    { PLURAL($count) ->
        [one] { $count } řádek chce
        [few] { $count } řádky chtějí
        [many] { $count } řádků chce
       *[other] { $count } řádků chce
    } pohled.
floor-slate-entries_put_aside =
    { PLURAL($count) ->
        [one] { $count } zápis byl odložen
        [few] { $count } zápisy byly odloženy
        [many] { $count } zápisů bylo odloženo
       *[other] { $count } zápisů bylo odloženo
    }.
floor-slate-entries_handed_in =
    { PLURAL($count) ->
        [one] { $count } zápis byl právě odevzdán
        [few] { $count } zápisy byly právě odevzdány
        [many] { $count } zápisů bylo právě odevzdáno
       *[other] { $count } zápisů bylo právě odevzdáno
    }.
floor-slate-keeping_it_safe = Bezpečné uložení
floor-slate-storage_is_kept = úložiště je zajištěné
floor-slate-storage_may_be_cleared = úložiště se může vymazat
floor-slate-load_a_saved_slate = Načíst uloženou tabulku
floor-slate-a_saved_slate_can = Uloženou tabulku lze načíst do kteréhokoli telefonu, kdykoli později. Kniha přijme každý zápis jednou.
floor-slate-entries_on_this_slate =
    Na této tabulce { PLURAL($count) ->
        [one] je teď { $count } zápis
        [few] jsou teď { $count } zápisy
        [many] je teď { $count } zápisů
       *[other] je teď { $count } zápisů
    }.{ $known }
floor-slate-were_here_already = { " " }{ $known } tu už bylo.
floor-today-the_book_has_no = Kniha zatím nemá nádoby. Zapíše je kancelář; pak sem přijdou samy.
floor-today-the_book_does_not = Kniha tento telefon ještě nezná.
floor-today-no_cards_on_this = V telefonu zatím nejsou karty. Přijdou s prvním odevzdáním.
floor-today-you_can_scan_and = Skenovat a zapisovat lze už teď; vše tu počká.
floor-today-run = { $what }, pálení { $name }
floor-today-read = { " " }· odečteno { $last }
floor-today-true = { $sign } skutečná
floor-today-the_book_asks = Kniha se ptá
floor-today-last_remarks = Poslední poznámky
floor-today-all_vessels = Všechny nádoby
floor-today-find_by_mark_name = Hledat podle značky, jména nebo obsahu
floor-today-no_vessel_here_is = Taková nádoba tu není.
floor-today-elsewhere = Jinde
floor-vessel-no_mark = bez značky
floor-vessel-not_known_here = tady neznámá
floor-vessel-this_phone_knows_no = Telefon nezná nádobu s touto značkou. Jednou odevzdat se signálem; kniha ji už možná zná.
floor-vessel-at = U { $mark }:{ " " }
floor-vessel-note_it = Poznamenat
floor-vessel-scan_again = Skenovat znovu
floor-vessel-open_queries = Otevřené dotazy
floor-vessel-filled = Naplněno { $since }.
floor-vessel-nothing_logged_here_yet = Zatím tu není žádný zápis.
floor-vessel-the_book_is_still = Kniha ještě počítá, co tu pozdní zápisy mění.
floor-vessel-as_the_book_had = Jak to měla kniha { $fresh }.
floor-vessel-the_book_has_not = Knihy se zatím nikdo neptal.
floor-vessel-readings_without_a_charge = Odečty bez náplně
floor-vessel-how_much_water = Kolik vody
floor-vessel-bottling_line = Stáčecí linka
floor-vessel-more_to_log = Další zápisy
floor-vessel-what_to_log = Co zapsat
floor-who-logs_now = Teď zapisuje { $name }.
floor-who-logs = Zapisuje { $name }
floor-who-no_names_on_this = V telefonu zatím nejsou jména.
floor-who-they_come_with_the = Přijdou s prvním odevzdáním. Do té doby se zapisuje beze jména.
floor-who-as = Jako
floor-who-no_signal_so_this = Bez signálu, PIN se tedy neověřil. Na zápisy se kniha zeptá.
floor-cautions-carbon_dioxide_lies_low = Oxid uhličitý leží při zemi a nevoní. Při 5000 ppm odejít, větrat, říct vedoucímu.
floor-cautions-stay_outside_the_line = Nepřekračovat čáru, ledaže je telefon pro to místo schválený a provoz to dovoluje. Odečet zapsaný později? Dát mu jeho minutu.
floor-cautions-a_hydrometer_cannot_see = Lihoměr metanol nevidí. Nejdřív nos; jistotu dá laboratoř.
floor-cautions-hot_and_under_pressure = Horké, a pod tlakem, když se cesta ucpe. Od běžícího přístroje nikdy neodcházet.
floor-cautions-never_lift_a_full = Plný sud nikdy nezvedat rukama.
floor-cautions-no_one_enters_a = Do nádoby nikdo bez povolení a bez někoho venku.
floor-frame-no_signal = bez signálu
floor-frame-not_the_book = ne kniha
floor-frame-to_look_at = { $attention } k pohledu
floor-frame-on_slate = { $waiting } na tabulce
floor-inunits-true_at_20_c = skutečná při 20 °C
floor-inunits-true_at_60_f = skutečná při 60 °F
floor-linesheet-wrong_vessel = špatná nádoba
floor-linesheet-logged_twice = zapsáno dvakrát
floor-linesheet-open_put_it_right = Otevřít { $kind }, { $line }: opravit nebo vzít zpět
floor-linesheet-why_it_stays_legible = Proč? Zůstane čitelné, přeškrtnuté, a už neplatí.
floor-linesheet-that_could_not_be = To se nepodařilo uložit. Zkusit znovu.
floor-scanfor-what_the_camera_sees = Co vidí kamera
floor-scanfor-back_to_the_form = Zpět k formuláři
floor-slatelines-taken_back = vzato zpět
floor-slatelines-refused = odmítnuto
floor-slatelines-clash = střet
floor-slatelines-the_book_has_another = Kniha má pod tímto jménem jiný zápis. Oba zůstávají; rozhodne palič.
floor-slatelines-the_book_cannot_read = Kniha ho neumí přečíst.
floor-slatelines-book_no = Kniha č. { $book_no }
floor-slatelines-hand_in_again = Odevzdat znovu
floor-slatelines-i_have_read_it = Přečteno
floor-takebackbar-taken_back_at_once = hned vzato zpět
floor-takebackbar-that_could_not_be = To se nepodařilo uložit. Vzít zpět na jeho řádku.
floor-typemark-letters_digits_and_the = Písmena, číslice a poslední znak za pomlčkou.
floor-typemark-the_last_character_is = Chybí poslední znak. Napsat ho také, nebo klepnout na značku ze štítku.
floor-typemark-a_right_mark_but = Správná značka, ale telefon takovou nádobu nezná.
floor-words-on_the_slate_wait = Na tabulce. V telefonu čeká { $waiting }.
floor-words-on_the_slate_it = Na tabulce. Čeká v telefonu.
floor-words-batch = dávka { $name }
floor-words-at = při { $strength_pct }
floor-words-just_now = právě teď
floor-words-min_ago = před { $minutes } min
floor-words-h_ago = před { $minutes } h
floor-words-days_ago = před { $minutes } dny
floor-ask-the_book_did_not = Kniha neodpověděla včas.
floor-ask-the_book_cannot_be = Na knihu se odtud nelze dostat.
floor-ask-something_else_answered_not = Odpověděl někdo jiný, ne kniha: síť možná chce nejdřív přihlášení.
floor-db-this_phones_storage_is = Úložiště telefonu je plné, nic se neuložilo. Uvolnit místo, nebo uložit tabulku do souboru a odevzdat ji.
floor-db-a_newer_cellarslate_has = Tabulku má otevřenou novější Cellarslate. Zavřít ostatní karty a otevřít stránku znovu.
floor-db-an_older_cellarslate_is = Starší Cellarslate je otevřená v jiné kartě. Zavřít ji; tabulka se pak otevře.
floor-db-this_browser_does_not = Prohlížeč nedovolí tabulce nic uložit ({ $name }). Vypnout anonymní režim, nebo vzít jiný prohlížeč.
floor-device-clock_off =
    Hodiny telefonu jdou o { $span } { $side ->
        [ahead] napřed proti
       *[behind] pozadu proti
    } hodinám knihy. Seřídit je; zápisy si své časy nechají.
floor-device-the_browser_has_promised = Prohlížeč slíbil tabulku uchovat.
floor-device-the_browser_may_clear = Prohlížeč může tabulku smazat, když dojde místo nebo aplikace leží ladem. Nainstalovat aplikaci a často odevzdávat.
floor-handin-this_entry_is_too = Zápis je pro knihu moc velký. Zkrátit poznámku a zapsat znovu; tento zůstává tady.
floor-handin-the_answer_was_not = Odpověď nebyla potvrzením knihy.
floor-handin-the_slate_keeps_everything = Tabulka vše drží a zkouší to znovu.
floor-handin-something_failed = Něco selhalo.
floor-handin-this_phone_must_be = Telefon je třeba přijmout znovu. Nic se neztratilo; tabulka vše drží.
floor-who-nobody_here_has_the = Kód { $code } tu nikdo nemá. Vybrat své jméno ze seznamu.
floor-who-type_your_pin = Napsat svůj PIN.
floor-who-that_is_not_this = To není PIN této osoby. Zkusit znovu.
floor-charts-the_curve_could_not = Křivku se nepodařilo nakreslit; údaje jsou tu.
floor-charttable-one_row_in = { " " }Jeden řádek z { $step }.
floor-charttable-expected = očekáváno
floor-charttable-at = { $y } při { $x }{ $unit }
floor-charttable-to = , do{ " " }
floor-charttable-to_2 = { $label }: { $from } až { $to }{ $unit }.
floor-charttable-at_2 = { $label } při { $x }{ $unit }.
floor-charttable-at_3 = { $label } při { $y }.
floor-format-day = den { $start }
floor-format-yesterday = včera
floor-format-days_ago = před { $days } dny
floor-keypad-erase = Smazat
floor-keypad-plus_or_minus = Plus nebo minus
floor-keypad-unit = jednotka
floor-keypad-decimal_comma = Desetinná čárka
floor-keypad-decimal_point = Desetinná tečka
floor-keypad-units = jednotky
floor-keypad-swap = přehodit { $text }
floor-notice-later = Později
floor-notice-a_newer_cellarslate_is = Novější Cellarslate je připravena. Na tabulce se nic nezmění.
floor-notice-use_it_now = Použít teď
floor-badge =
    { $weight ->
        [stop] stop
        [ask] dotaz
        [entered] zapsáno
        [waiting] čeká
       *[note] poznámka
    }
floor-may_stay_empty = (může zůstat prázdné)
floor-litres = litrů
floor-gallons = galonů
floor-part =
    { $part ->
        [hearts] jádro
        [tails] dokap
        [low_wines] lutr
       *[heads] úkap
    }
floor-state-receiver =
    { $state ->
        [open] otevřeno
        [closed] uzavřeno
       *[waiting] čeká
    }
floor-bad_mark =
    { $why ->
        [empty] Napsat značku ze štítku, třeba F3-8.
        [foreign] Tento kód není náš. Naskenovat štítek na nádobě, nebo napsat značku.
        [characters] Značka má jen písmena A až Z a číslice 0 až 9. Přečíst štítek znovu.
        [too_short] Značka má kód a kontrolní znak, třeba F3-8. Napsat ji celou.
        [too_long] Na značku je to moc dlouhé. Napsat velký nápis ze štítku.
       *[check] { $mark } není značka: některý znak je špatně, nebo poslední chybí. Přečíst štítek znovu.
    }
floor-within_sentence = { LOWER($words) }
floor-scanfor-scan = Skenovat: { $label }
floor-takebackbar-just_logged = Právě zapsáno
floor-keypad-name = Klávesnice
floor-keypad-no_other_unit = Jiná jednotka není
floor-more-language = Jazyk
floor-more-language_not_here = Ten jazyk v telefonu ještě není. Vybrat ho znovu se signálem.
title-fruit_intake = Příjem ovoce
short-fruit_intake = Ovoce
about-fruit_intake = Jedna dodávka ovoce nebo obilí, zvážená a vysypaná do kvasné nádrže.
label-fruit_intake-gross = Hmotnost brutto
label-fruit_intake-tare = Tára
help-fruit_intake-tare = Bedny a paleta, prázdné.
label-fruit_intake-material = Surovina
choice-fruit_intake-material-plum = slíva
choice-fruit_intake-material-pear = hruška
choice-fruit_intake-material-quince = kdoule
choice-fruit_intake-material-cherry = třešeň
choice-fruit_intake-material-apricot = meruňka
choice-fruit_intake-material-mirabelle = mirabelka
choice-fruit_intake-material-apple = jablko
choice-fruit_intake-material-grape = hrozny
choice-fruit_intake-material-raspberry = malina
choice-fruit_intake-material-marc = matoliny
choice-fruit_intake-material-rye = žito
choice-fruit_intake-material-other = jiné
label-fruit_intake-variety = Odrůda
label-fruit_intake-grower_lot = Pěstitel a šarže
help-fruit_intake-grower_lot = Jako na vážním lístku.
label-fruit_intake-batch = Dávka
help-fruit_intake-batch = Kvas, do kterého dodávka jde, jak ho lihovar nazývá.
label-fruit_intake-picked_on = Sklizeno dne
label-fruit_intake-sugar = Cukr refraktometrem
help-fruit_intake-sugar = Vylisovaná šťáva. U obilí nechat prázdné.
label-fruit_intake-ph = pH
label-fruit_intake-temp = Teplota
label-fruit_intake-rot = Hniloba
rule-fruit_intake-tare_below_gross = Tára { $tare } není pod bruttem { $gross }. Podívat se znovu na váhu.
figure-fruit_intake-net = ovoce netto
figure-fruit_intake-potential = čistý líh, který může dát
title-addition = Přídavek
about-addition = Enzym, kyselina, kvasinky, výživa nebo cokoli přidaného, s šarží. Na cukr se kniha zeptá pokaždé.
label-addition-what = Co
choice-addition-what-enzyme = enzym
choice-addition-what-acid = kyselina
choice-addition-what-yeast = kvasinky
choice-addition-what-yeast_food = výživa kvasinek
choice-addition-what-sulphite = siřičitan
choice-addition-what-antifoam = odpěňovač
choice-addition-what-water = voda
choice-addition-what-malt = slad
choice-addition-what-sugar = cukr
choice-addition-what-wood = dřevěné štěpky
choice-addition-what-caramel = karamel
choice-addition-what-other = jiné
label-addition-lot_no = Výrobek a číslo šarže
help-addition-lot_no = Jako na obalu.
label-addition-amount = Množství hmotností
label-addition-amount_volume = nebo objemem
label-addition-is_sugar = Je to cukr?
help-addition-is_sugar = Ovocný destilát vzniká z cukru samotného ovoce. Ano zůstane u dávky.
rule-addition-some_amount = Napsat kolik, hmotností nebo objemem.
title-ferment_reading = Odečet kvasu
short-ferment_reading = Odečet
about-ferment_reading = Teplota, rel. hustota scezené šťávy, pH a deka jedné kvasné nádrže.
summary-ferment_reading = { $gravity } při { $temp }
label-ferment_reading-temp = Teplota kvasu
help-ferment_reading-temp = Sonda uprostřed, ne u stěny.
label-ferment_reading-gravity = Rel. hustota, scezená šťáva
help-ferment_reading-gravity = Hustoměrem. Refraktometr ukazuje špatně, jakmile je tu alkohol.
label-ferment_reading-refractometer = Refraktometr, táž šťáva
help-ferment_reading-refractometer = Sám ukazuje špatně, jakmile je tu alkohol; vedle hustoměru je vodítkem.
label-ferment_reading-ph = pH
label-ferment_reading-cap = Deka
choice-ferment_reading-cap-none = žádná
choice-ferment_reading-cap-thin = tenká
choice-ferment_reading-cap-thick = silná
choice-ferment_reading-cap-fallen = klesla
label-ferment_reading-volatile_acid = Těkavé kyseliny
label-ferment_reading-room_co2 = CO₂ v místnosti
help-ferment_reading-room_co2 = Z přístroje. Při 5000 ppm odejít, větrat, říct vedoucímu.
danger-ferment_reading-room_co2-0 = Odejít, větrat, říct vedoucímu. Pro odečet se nevracet.
danger-ferment_reading-room_co2-1 = Všichni hned ven. Říct vedoucímu. Pro odečet se nevracet.
figure-ferment_reading-alcohol_so_far = alkohol zatím, z rel. hustoty
figure-ferment_reading-alcohol_by_both = alkohol z obou měřidel, vodítko
title-ferment_closed = Kvas uzavřen
short-ferment_closed = Uzavřít kvas
about-ferment_closed = Konečná rel. hustota, objem a koncentrace zápary. Od této chvíle je její čistý líh v knize.
summary-ferment_closed = { $volume } při { $wash_strength }
label-ferment_closed-final_gravity = Konečná rel. hustota
label-ferment_closed-volume = Objem z hladiny
label-ferment_closed-wash_strength = Koncentrace zápary
help-ferment_closed-wash_strength = Destilací v laboratoři, jinak z prokvašení.
label-ferment_closed-method = Koncentrace z
choice-ferment_closed-method-lab = laboratorní destilace
choice-ferment_closed-method-attenuation = prokvašení
figure-ferment_closed-wash_lpa = čistý líh v zápaře
figure-ferment_closed-by_gravity = koncentrace z poklesu rel. hustoty
title-charge = Náplň
short-charge = Naplnit a začít pálení
about-charge = Co jde do kotle. Tím začíná pálení.
summary-charge = { $wash } při { $wash_strength }
label-charge-run_name = Pálení
help-charge-run_name = Jak ho lihovar nazývá. Prázdné: pojmenuje ho den.
label-charge-from_vessel = Z nádoby
label-charge-wash = Objem zápary
label-charge-wash_strength = Koncentrace zápary
help-charge-wash_strength = Laboratorní destilace, nebo z prokvašení. Lihoměr v zápaře nefunguje.
label-charge-feints = Přidaný úkap, dokap nebo lutr
label-charge-feints_strength = Jeho koncentrace
label-charge-feints_temp = Jeho teplota
label-charge-feints_from = Z které nádoby
label-charge-heads_to = Úkap jde do
label-charge-hearts_to = Jádro jde do
label-charge-tails_to = Dokap jde do
rule-charge-feints_need_strength = Úkap a dokap šly dovnitř: napsat i jejich koncentraci.
figure-charge-wash_lpa = čistý líh v zápaře
figure-charge-feints_lpa = čistý líh v úkapu a dokapu
figure-charge-charge_lpa = čistý líh v náplni
title-run_reading = Odečet pálení
short-run_reading = Odečet
about-run_reading = Lihoměr a teplota lihu u lihového měřidla, teplota par, průtok a hladina otevřeného jímadla.
summary-run_reading = { $true_strength } skutečná
label-run_reading-glass = Údaj lihoměru
help-run_reading-glass = Jak lihoměr ukazuje, bez opravy.
label-run_reading-density = nebo hustota, přístrojem
help-run_reading-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-run_reading-temp = Teplota lihu
help-run_reading-temp = Číst ve stejnou chvíli jako lihoměr.
label-run_reading-vapour_temp = Teplota par
label-run_reading-flow = Průtok
help-run_reading-flow = Džbánek a hodinky.
label-run_reading-dip = Hladina otevřeného jímadla
help-run_reading-dip = Co v něm teď stojí, i s tím, co v něm bylo.
label-run_reading-plates = Zapojená patra
label-run_reading-cooling_temp = Voda deflegmátoru
label-run_reading-strength = Koncentrace, už opravená
help-run_reading-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
rule-run_reading-some_reading = Napsat údaj lihoměru a jeho teplotu, už opravenou koncentraci, nebo hladinu.
rule-run_reading-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-run_reading-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-run_reading-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-run_reading-true_strength = skutečná při 20 °C
figure-run_reading-glass_true = lihoměr, opraveno
title-cut = Řez nebo událost pálení
short-cut = Řez
about-cut = Řez s jímadlem, které je teď otevřené, topení zapnuto, první kapka, změna topení, vody nebo pater. Čas dá klepnutí.
label-cut-event = Událost
choice-cut-event-heat_on = topení zapnuto
choice-cut-event-first_drop = první kapka
choice-cut-event-heads_cut = úkap odříznut, jádro začíná
choice-cut-event-hearts_cut = jádro odříznuto, dokap začíná
choice-cut-event-heat_changed = změna topení
choice-cut-event-water_changed = změna vody
choice-cut-event-plate_in = patro zapojeno
choice-cut-event-plate_out = patro odpojeno
choice-cut-event-still_opened = kotel otevřen
choice-cut-event-other = jiné
label-cut-receiver = Jímadlo teď otevřené
label-cut-reason = Proč teď
choice-cut-reason-nose = nos
choice-cut-reason-taste = chuť
choice-cut-reason-strength = koncentrace
choice-cut-reason-vapour = teplota par
choice-cut-reason-time = čas
label-cut-glass = Údaj lihoměru
help-cut-glass = Jak lihoměr ukazuje, bez opravy.
label-cut-density = nebo hustota, přístrojem
help-cut-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-cut-temp = Teplota lihu
help-cut-temp = Číst ve stejnou chvíli jako lihoměr.
label-cut-vapour_temp = Teplota par
label-cut-flow = Průtok
label-cut-nose = Nos a chuť
help-cut-nose = Vlastními slovy.
label-cut-strength = Koncentrace, už opravená
help-cut-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
rule-cut-cut_needs_receiver = K řezu patří jímadlo, které je teď otevřené. Naskenovat nebo vybrat.
rule-cut-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-cut-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-cut-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-cut-true_strength = skutečná při 20 °C
figure-cut-glass_true = lihoměr, opraveno
title-run_end = Konec pálení
short-run_end = Ukončit pálení
about-run_end = Závěr pálení: proč skončilo a na čem běželo.
summary-run_end = konec, { $reason }
label-run_end-reason = Proč teď
choice-run_end-reason-strength = koncentrace
choice-run_end-reason-vapour = teplota par
choice-run_end-reason-time = čas
choice-run_end-reason-nose = nos
choice-run_end-reason-trouble = potíže
label-run_end-glass = Údaj lihoměru
help-run_end-glass = Jak lihoměr ukazuje, bez opravy.
label-run_end-density = nebo hustota, přístrojem
help-run_end-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-run_end-temp = Teplota lihu
help-run_end-temp = Číst ve stejnou chvíli jako lihoměr.
label-run_end-vapour_temp = Teplota par
label-run_end-flow = Průtok
label-run_end-strength = Koncentrace, už opravená
help-run_end-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
rule-run_end-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-run_end-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-run_end-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-run_end-true_strength = skutečná při 20 °C
figure-run_end-glass_true = lihoměr, opraveno
title-fraction_gauge = Měření frakce
short-fraction_gauge = Změřit frakci
about-fraction_gauge = Objem nebo hmotnost, koncentrace a teplota úkapu, jádra, dokapu, lutru nebo výpalků z pálení.
summary-fraction_gauge = { $fraction }: { $volume_20 } při { $true_strength }
label-fraction_gauge-still = Pálení na přístroji
label-fraction_gauge-fraction = Frakce
choice-fraction_gauge-fraction-heads = úkap
choice-fraction_gauge-fraction-hearts = jádro
choice-fraction_gauge-fraction-tails = dokap
choice-fraction_gauge-fraction-low_wines = lutr
choice-fraction_gauge-fraction-stillage = výpalky
label-fraction_gauge-remnant = Zbytek předtím
help-fraction_gauge-remnant = Co v jímadle stálo před jímáním. 0, bylo-li prázdné.
label-fraction_gauge-remnant_strength = Koncentrace zbytku
label-fraction_gauge-volume = Objem teď
label-fraction_gauge-net_weight = nebo čistá hmotnost teď
label-fraction_gauge-temp = Teplota lihu
help-fraction_gauge-temp = Číst ve stejnou chvíli jako lihoměr.
label-fraction_gauge-glass = Údaj lihoměru
help-fraction_gauge-glass = Jak lihoměr ukazuje, bez opravy.
label-fraction_gauge-density = nebo hustota, přístrojem
help-fraction_gauge-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-fraction_gauge-strength = Koncentrace, už opravená
help-fraction_gauge-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-fraction_gauge-goes_to = Jde do
choice-fraction_gauge-goes_to-stays = zůstává zde
choice-fraction_gauge-goes_to-next_run = další pálení
choice-fraction_gauge-goes_to-destroyed = znehodnoceno
choice-fraction_gauge-goes_to-drain = vypuštěno
rule-fraction_gauge-some_quantity = Napsat objem nebo čistou hmotnost.
rule-fraction_gauge-remnant_needs_strength = Byl tu zbytek: napsat i jeho koncentraci, nebo 0 litrů.
rule-fraction_gauge-some_strength = Napsat údaj lihoměru a jeho teplotu, nebo už opravenou koncentraci.
rule-fraction_gauge-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-fraction_gauge-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-fraction_gauge-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-fraction_gauge-true_strength = skutečná při 20 °C
figure-fraction_gauge-glass_true = lihoměr, opraveno
figure-fraction_gauge-volume_20 = objem při 20 °C
figure-fraction_gauge-lpa = čistý líh
figure-fraction_gauge-remnant_lpa = z toho zbytek
title-cut_plan = Plán řezů
short-cut_plan = Plán řezů
about-cut_plan = Plán paliče pro ovoce: úkap objemem, jádro a dokap po koncentraci. Zapsaný u přístroje platí pro ten přístroj, bez nádoby pro všechny. Platí poslední; rozhoduje nos.
summary-cut_plan = { $what }: jádro do { $hearts_to }
label-cut_plan-what = Ovoce
help-cut_plan-what = Jak to nazývá pálení: malá modrá slíva.
label-cut_plan-heads = Úkap objemem
label-cut_plan-hearts_to = Jádro dolů na
label-cut_plan-tails_to = Dokap dolů na
label-cut_plan-why = Proč
label-cut_plan-tasting = Podklad: degustace
help-cut_plan-tasting = Její název: T-26-03
rule-cut_plan-some_plan = Napsat aspoň jeden údaj plánu: úkap, jádro nebo dokap.
rule-cut_plan-tails_below_hearts = Dokap dolů na { $tails_to } není pod jádrem { $hearts_to }. Podívat se znovu.
title-best_run = Nejlepší pálení
short-best_run = Nejlepší pálení
about-best_run = Palič označí pálení za nejlepší pro to ovoce na tom přístroji: pozdější se s ním srovnávají. Platí poslední označení.
label-best_run-run = Pálení
help-best_run-run = Jeho název, nebo id v knize.
label-best_run-why = Proč
help-best_run-why = Čím bylo dobré, vlastními slovy.
title-gauge = Měření
about-gauge = Objem nebo čistá hmotnost, koncentrace a teplota obsahu nádoby.
summary-gauge = { $volume_20 } při { $true_strength }
label-gauge-what = Co obsahuje
help-gauge-what = Líh a šarže, jak je lihovar nazývá.
label-gauge-volume = Objem
label-gauge-dip = nebo hladina
help-gauge-dip = Výška nebo prázdný prostor, podle tabulky nádoby; litry se dopočtou.
label-gauge-net_weight = nebo čistá hmotnost
label-gauge-glass = Údaj lihoměru
help-gauge-glass = Jak lihoměr ukazuje, bez opravy.
label-gauge-density = nebo hustota, přístrojem
help-gauge-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-gauge-temp = Teplota lihu
help-gauge-temp = Číst ve stejnou chvíli jako lihoměr.
label-gauge-strength = Koncentrace, už opravená
help-gauge-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-gauge-purpose = Proč
choice-gauge-purpose-stock = zásoba
choice-gauge-purpose-move = před přesunem
choice-gauge-purpose-opening = počáteční zásoba
choice-gauge-purpose-other = jiné
rule-gauge-some_quantity = Napsat objem, hladinu nebo čistou hmotnost.
rule-gauge-volume_needs_temp = K objemu patří teplota lihu. Napsat ji také.
rule-gauge-some_strength = Napsat údaj lihoměru a jeho teplotu, nebo už opravenou koncentraci.
rule-gauge-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-gauge-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-gauge-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-gauge-true_strength = skutečná při 20 °C
figure-gauge-glass_true = lihoměr, opraveno
figure-gauge-dipped = podle tabulky
figure-gauge-estimated = podle rozměrů, odhad
figure-gauge-volume_20 = objem při 20 °C
figure-gauge-lpa = čistý líh
figure-gauge-proof_gallons = proof gallony
title-distilled_gauge = Měření destilací
short-distilled_gauge = Měření destilací
about-distilled_gauge = Objem nebo čistá hmotnost lihu, jehož koncentraci zakrývá cukr nebo dřevo, a koncentrace jeho destilátu.
summary-distilled_gauge = { $volume_20 } při { $true_strength }, destilací
label-distilled_gauge-what = Co obsahuje
help-distilled_gauge-what = Líh a šarže, jak je lihovar nazývá.
label-distilled_gauge-volume = Objem
label-distilled_gauge-dip = nebo hladina
help-distilled_gauge-dip = Výška nebo prázdný prostor, podle tabulky nádoby; litry se dopočtou.
label-distilled_gauge-net_weight = nebo čistá hmotnost
label-distilled_gauge-glass = Údaj lihoměru, nedestilováno
help-distilled_gauge-glass = Jak lihoměr ukazuje, bez opravy. Prázdné, zvedá-li ho cukr mimo stupnici.
label-distilled_gauge-density = nebo hustota, nedestilováno
help-distilled_gauge-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-distilled_gauge-temp = Teplota lihu
help-distilled_gauge-temp = Číst ve stejnou chvíli jako lihoměr.
label-distilled_gauge-sample_volume = Destilovaný vzorek
help-distilled_gauge-sample_volume = Co se odměřilo do baňky, před přidáním vody.
label-distilled_gauge-sample_temp = Teplota vzorku
help-distilled_gauge-sample_temp = Stejná pro obojí, nejlépe 20 °C.
label-distilled_gauge-distillate_volume = Destilát, doplněný na
help-distilled_gauge-distillate_volume = Vodou, po rysku téže baňky.
label-distilled_gauge-distillate_temp = Teplota destilátu
help-distilled_gauge-distillate_temp = Stejná pro obojí, nejlépe 20 °C.
label-distilled_gauge-distillate_glass = Údaj lihoměru v destilátu
help-distilled_gauge-distillate_glass = Jak lihoměr ukazuje, bez opravy.
label-distilled_gauge-distillate_density = nebo jeho hustota, přístrojem
help-distilled_gauge-distillate_density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-distilled_gauge-dry_extract = Celkový suchý extrakt
help-distilled_gauge-dry_extract = Odparek z 25 mL sušený při 105 °C, krát 40.
label-distilled_gauge-purpose = Proč
choice-distilled_gauge-purpose-stock = zásoba
choice-distilled_gauge-purpose-move = před přesunem
choice-distilled_gauge-purpose-opening = počáteční zásoba
choice-distilled_gauge-purpose-other = jiné
rule-distilled_gauge-some_quantity = Napsat objem, hladinu nebo čistou hmotnost.
rule-distilled_gauge-volume_needs_temp = K objemu patří teplota lihu. Napsat ji také.
rule-distilled_gauge-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-distilled_gauge-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-distilled_gauge-distillate_is_read = Napsat, co ukazuje lihoměr nebo hustoměr v destilátu.
rule-distilled_gauge-weight_needs_density = Cukr dělá líh těžší. K čisté hmotnosti napsat hustotu nebo údaj lihoměru nedestilovaného lihu.
rule-distilled_gauge-extract_hides_more = Tento extrakt zakrývá nejméně { $obscuration_least }, a údaje zakrývají { $obscuration }. Podívat se na lihoměr v nedestilovaném lihu; byl celý destilát v baňce a doplněný po rysku?
rule-distilled_gauge-extract_hides_less = Tento extrakt zakrývá nejvýš { $obscuration_most }, a údaje zakrývají { $obscuration }. Podívat se na extrakt a na lihoměr v nedestilovaném lihu.
figure-distilled_gauge-distillate_strength = destilát při 20 °C
figure-distilled_gauge-true_strength = skutečná při 20 °C
figure-distilled_gauge-seen_strength = podle lihoměru nebo přístroje
figure-distilled_gauge-obscuration = zakryto
figure-distilled_gauge-obscuration_least = extrakt zakrývá nejméně
figure-distilled_gauge-obscuration_most = extrakt zakrývá nejvýš
figure-distilled_gauge-dipped = podle tabulky
figure-distilled_gauge-estimated = podle rozměrů, odhad
figure-distilled_gauge-volume_20 = objem při 20 °C
figure-distilled_gauge-lpa = čistý líh
figure-distilled_gauge-proof_gallons = proof gallony
title-opening = Počáteční zásoba
short-opening = Počáteční zásoba
about-opening = Co stálo v nádobě, než kniha začala: měření, odkud je, kdy se naplnilo a doklady o tom. U nádoby, kterou otevřelo prosté měření, přidá minulost; zásoba zůstává.
summary-opening = { $volume_20 } při { $true_strength } před touto knihou, { $spirit }
label-opening-spirit = Druh lihu
label-opening-lot = Šarže
label-opening-gross = Hmotnost brutto
help-opening-gross = Sud a líh dohromady.
label-opening-tare = Hmotnost prázdného
help-opening-tare = Z dokladů. Prázdné: jak je nádoba vedena.
label-opening-net_weight = nebo čistá hmotnost
label-opening-volume = nebo objem
help-opening-volume = Z hladiny. Bez teploty platí jako litry při 20 °C.
label-opening-glass = Údaj lihoměru
help-opening-glass = Jak lihoměr ukazuje, bez opravy.
label-opening-density = nebo hustota, přístrojem
help-opening-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-opening-temp = Teplota lihu
help-opening-temp = Číst ve stejnou chvíli jako lihoměr.
label-opening-strength = Koncentrace, už opravená
help-opening-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-opening-filled_on = Naplněno dne
help-opening-filled_on = Den, kdy to do nádoby přišlo.
label-opening-filled_volume = Objem při naplnění
label-opening-filled_strength = Koncentrace při naplnění
label-opening-filled_lpa = nebo čistý líh při naplnění
label-opening-aged_since = Nejmladší část ve dřevě od
help-opening-aged_since = Prázdné: den naplnění sudu.
label-opening-papers = Doklady o stáří
help-opening-papers = Která kniha nebo osvědčení, a strana.
label-opening-origin = Odkud
help-opening-origin = Vlastní přístroj, nebo od koho přišlo.
label-opening-material = Vyrobeno z
help-opening-material = Ovoce nebo obilí.
label-opening-harvest = Sklizeň
help-opening-harvest = Rok.
label-opening-distilling_strength = Vypáleno při
help-opening-distilling_strength = Koncentrace, s jakou vyšlo z přístroje.
label-opening-use = Dřevo předtím
choice-opening-use-new = nové
choice-opening-use-used_once = použité jednou
choice-opening-use-used = použité víckrát
label-opening-wood = Dřevo
help-opening-wood = Dub, kaštan, moruše.
label-opening-to_account = Účet
help-opening-to_account = Na kterém stojí. Prázdné: sklad pro sudy, zpracování pro nádrže.
choice-opening-to_account-production = výroba
choice-opening-to_account-storage = sklad
choice-opening-to_account-processing = zpracování
label-opening-place = Místo
help-opening-place = Místo, patro, pozice.
rule-opening-quantity_needs_strength = Napsat údaj lihoměru a jeho teplotu, nebo už opravenou koncentraci.
rule-opening-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-opening-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-opening-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
rule-opening-tare_below_gross = Hmotnost prázdného { $tare } není pod bruttem { $gross }. Podívat se znovu na obě.
rule-opening-fill_volume_needs_strength = Objem při naplnění bez koncentrace málo říká. Napsat ji, mají-li ji doklady.
figure-opening-true_strength = skutečná při 20 °C
figure-opening-glass_true = lihoměr, opraveno
figure-opening-net = čistá hmotnost
figure-opening-volume_20 = objem při 20 °C
figure-opening-lpa = čistý líh
figure-opening-proof_gallons = proof gallony
figure-opening-fill_lpa = čistý líh při naplnění
title-account_move = Zjištění výroby nebo přesun
short-account_move = Změřit a přesunout
about-account_move = Změřené množství jde do jiné nádoby, na jiný účet nebo ven z podniku.
summary-account_move = { $serial }: { $volume_20 } při { $true_strength }, { $from_account } → { $to_account }
label-account_move-serial = Pořadové číslo
help-account_move-serial = Každý rok od 1, nebo nikdy dvakrát.
label-account_move-from_account = Z účtu
choice-account_move-from_account-production = výroba
choice-account_move-from_account-storage = sklad
choice-account_move-from_account-processing = zpracování
label-account_move-to_account = Na účet
choice-account_move-to_account-production = výroba
choice-account_move-to_account-storage = sklad
choice-account_move-to_account-processing = zpracování
choice-account_move-to_account-removed = opouští podnik
label-account_move-to_vessel = Do nádoby
help-account_move-to_vessel = Prázdné, zůstává-li, kde je.
label-account_move-purpose = Proč
choice-account_move-purpose-deposit = zjištění výroby, uložení
choice-account_move-purpose-move = přesun
choice-account_move-purpose-redistil = k nové destilaci
choice-account_move-purpose-tax_paid = zdaněno
choice-account_move-purpose-export = vývoz
choice-account_move-purpose-in_bond = do jiného závodu, v osvobození
choice-account_move-purpose-research = výzkum
choice-account_move-purpose-other = jiné
label-account_move-spirit = Druh lihu
label-account_move-lot = Šarže
label-account_move-distilling_strength = Vypáleno při
help-account_move-distilling_strength = Koncentrace, s jakou vyšlo z přístroje.
label-account_move-volume = Objem
label-account_move-net_weight = nebo čistá hmotnost
label-account_move-glass = Údaj lihoměru
help-account_move-glass = Jak lihoměr ukazuje, bez opravy.
label-account_move-density = nebo hustota, přístrojem
help-account_move-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-account_move-temp = Teplota lihu
help-account_move-temp = Číst ve stejnou chvíli jako lihoměr.
label-account_move-strength = Koncentrace, už opravená
help-account_move-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-account_move-age = Dosavadní stáří
help-account_move-age = Roky-měsíce-dny.
label-account_move-to_whom = Komu
help-account_move-to_whom = Jméno a adresa, odchází-li.
rule-account_move-some_quantity = Napsat objem nebo čistou hmotnost.
rule-account_move-volume_needs_temp = K objemu patří teplota lihu. Napsat ji také.
rule-account_move-some_strength = Napsat údaj lihoměru a jeho teplotu, nebo už opravenou koncentraci.
rule-account_move-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-account_move-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-account_move-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-account_move-true_strength = skutečná při 20 °C
figure-account_move-glass_true = lihoměr, opraveno
figure-account_move-volume_20 = objem při 20 °C
figure-account_move-lpa = čistý líh
figure-account_move-proof_gallons = proof gallony
title-receipt = Příjem lihu
short-receipt = Přijmout líh
about-receipt = Líh přichází volně ložený z jiného závodu: množství z dokladů, měření zde a ztráta cestou.
summary-receipt = { $document }: { $volume_20 } při { $true_strength }, od { $consignor }
label-receipt-consignor = Od koho
help-receipt-consignor = Jméno a adresa, číslo závodu nebo skladu.
label-receipt-document = Číslo dokladu
label-receipt-purpose = Jak přichází
choice-receipt-purpose-in_bond = v osvobození
choice-receipt-purpose-customs = z cla
choice-receipt-purpose-returned = zpět do osvobození
choice-receipt-purpose-tax_paid = zdaněno
choice-receipt-purpose-other = jiné
label-receipt-spirit = Druh lihu
label-receipt-lot = Šarže
label-receipt-to_account = Na účet
choice-receipt-to_account-production = výroba
choice-receipt-to_account-storage = sklad
choice-receipt-to_account-processing = zpracování
label-receipt-declared_volume = Deklarovaný objem
help-receipt-declared_volume = Podle dokladů.
label-receipt-declared_weight = nebo deklarovaná čistá hmotnost
label-receipt-declared_strength = Deklarovaná koncentrace
label-receipt-declared_temp = Deklarováno při
help-receipt-declared_temp = 20 °C, je-li prázdné; doklady z USA uvádějí 60 °F.
label-receipt-distilling_strength = Vypáleno při
help-receipt-distilling_strength = Koncentrace, s jakou vyšlo z přístroje, je-li v dokladech.
label-receipt-volume = Přijatý objem
label-receipt-net_weight = nebo přijatá čistá hmotnost
label-receipt-glass = Údaj lihoměru
help-receipt-glass = Jak lihoměr ukazuje, bez opravy.
label-receipt-density = nebo hustota, přístrojem
help-receipt-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-receipt-temp = Teplota lihu
help-receipt-temp = Číst ve stejnou chvíli jako lihoměr.
label-receipt-strength = Koncentrace, už opravená
help-receipt-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-receipt-seals = Závěry neporušené?
label-receipt-vehicle = Čísla vozidla a závěr
label-receipt-age = Deklarované stáří
help-receipt-age = Roky-měsíce-dny.
rule-receipt-some_declared = Napsat objem nebo čistou hmotnost z dokladů.
rule-receipt-some_quantity = Napsat objem nebo čistou hmotnost.
rule-receipt-volume_needs_temp = K objemu patří teplota lihu. Napsat ji také.
rule-receipt-some_strength = Napsat údaj lihoměru a jeho teplotu, nebo už opravenou koncentraci.
rule-receipt-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-receipt-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-receipt-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-receipt-declared_20 = deklarováno, při 20 °C
figure-receipt-declared_lpa = deklarovaný čistý líh
figure-receipt-true_strength = skutečná při 20 °C
figure-receipt-glass_true = lihoměr, opraveno
figure-receipt-volume_20 = objem při 20 °C
figure-receipt-lpa = čistý líh
figure-receipt-proof_gallons = proof gallony
title-cask_fill = Naplnění sudu
short-cask_fill = Naplnit sud
about-cask_fill = Prázdný sud se zváží, naplní z nádrže a zváží znovu. Začíná nová náplň.
summary-cask_fill = { $net } při { $true_strength }, { $lot }
label-cask_fill-from_vessel = Z nádoby
label-cask_fill-lot = Šarže
label-cask_fill-what = Druh lihu
label-cask_fill-tare = Hmotnost prázdného
help-cask_fill-tare = Dnes na váze, ne ze seznamu bednáře.
label-cask_fill-gross = Hmotnost brutto
label-cask_fill-glass = Údaj lihoměru
help-cask_fill-glass = Jak lihoměr ukazuje, bez opravy.
label-cask_fill-density = nebo hustota, přístrojem
help-cask_fill-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-cask_fill-temp = Teplota lihu
help-cask_fill-temp = Číst ve stejnou chvíli jako lihoměr.
label-cask_fill-strength = Koncentrace, už opravená
help-cask_fill-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-cask_fill-use = Dřevo
choice-cask_fill-use-new = nové
choice-cask_fill-use-used_once = použité jednou
choice-cask_fill-use-used = použité víckrát
label-cask_fill-cooperage = Bednářství
choice-cask_fill-cooperage-C = zuhelněný
choice-cask_fill-cooperage-REC = znovu zuhelněný
choice-cask_fill-cooperage-P = prostý
choice-cask_fill-cooperage-PAR = parafínovaný
choice-cask_fill-cooperage-G = klížený
choice-cask_fill-cooperage-R = znovu použitý
choice-cask_fill-cooperage-PS = ocel
label-cask_fill-soaked = Předem namočen nebo napařen
label-cask_fill-place = Místo
help-cask_fill-place = Místo, patro, pozice.
label-cask_fill-tight = Po hodině těsný
rule-cask_fill-tare_below_gross = Hmotnost prázdného { $tare } není pod bruttem { $gross }. Podívat se znovu na váhu.
rule-cask_fill-some_strength = Napsat údaj lihoměru a jeho teplotu, nebo už opravenou koncentraci.
rule-cask_fill-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-cask_fill-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-cask_fill-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-cask_fill-true_strength = skutečná při 20 °C
figure-cask_fill-glass_true = lihoměr, opraveno
figure-cask_fill-net = čistá hmotnost
figure-cask_fill-volume_20 = objem při 20 °C
figure-cask_fill-lpa = čistý líh
title-cask_move = Přesun sudu
short-cask_move = Přesunout sud
about-cask_move = Z místa na místo, plný nebo prázdný. Zásoba zůstává, jaká byla.
summary-cask_move = { $from_place } → { $to_place }
label-cask_move-from_place = Z místa
help-cask_move-from_place = Kde stál. Naskenovat štítek místa, má-li ho.
label-cask_move-to_place = Na místo
help-cask_move-to_place = Místo, patro, pozice.
title-cask_regauge = Přeměření sudu
short-cask_regauge = Přeměřit
about-cask_regauge = Brutto, koncentrace a stav sudu; ztráta se dopočte.
summary-cask_regauge = { $gross }, { $true_strength } skutečná
label-cask_regauge-gross = Hmotnost brutto
help-cask_regauge-gross = Sud a líh dohromady.
label-cask_regauge-glass = Údaj lihoměru
help-cask_regauge-glass = Jak lihoměr ukazuje, bez opravy.
label-cask_regauge-density = nebo hustota, přístrojem
help-cask_regauge-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-cask_regauge-temp = Teplota lihu
help-cask_regauge-temp = Číst ve stejnou chvíli jako lihoměr.
label-cask_regauge-strength = Koncentrace, už opravená
help-cask_regauge-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-cask_regauge-condition = Stav
choice-cask_regauge-condition-tight = těsný
choice-cask_regauge-condition-weeping = prosakuje
choice-cask_regauge-condition-leaking = teče
choice-cask_regauge-condition-dry_hoops = suché obruče
rule-cask_regauge-some_strength = Napsat údaj lihoměru a jeho teplotu, nebo už opravenou koncentraci.
rule-cask_regauge-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-cask_regauge-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-cask_regauge-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-cask_regauge-true_strength = skutečná při 20 °C
figure-cask_regauge-glass_true = lihoměr, opraveno
figure-cask_regauge-net = čistá hmotnost
figure-cask_regauge-volume_20 = objem při 20 °C
figure-cask_regauge-lpa = čistý líh
title-top_up = Dolití nebo přesudování
short-top_up = Dolít
about-top_up = Líh z jedné nádoby do tohoto sudu. Směs je stará jako její nejmladší část.
summary-top_up = { $work } z { $from_vessel }
label-top_up-work = Co se udělalo
choice-top_up-work-top_up = dolito
choice-top_up-work-recask = přesudováno
label-top_up-from_vessel = Z nádoby
label-top_up-volume = Množství objemem
label-top_up-net_weight = nebo čistou hmotností
label-top_up-glass = Údaj lihoměru
help-top_up-glass = Jak lihoměr ukazuje, bez opravy.
label-top_up-density = nebo hustota, přístrojem
help-top_up-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-top_up-temp = Teplota lihu
help-top_up-temp = Číst ve stejnou chvíli jako lihoměr.
label-top_up-strength = Koncentrace, už opravená
help-top_up-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
rule-top_up-some_quantity = Napsat objem nebo čistou hmotnost.
rule-top_up-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-top_up-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-top_up-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-top_up-true_strength = skutečná při 20 °C
figure-top_up-glass_true = lihoměr, opraveno
figure-top_up-volume_20 = objem při 20 °C
figure-top_up-lpa = čistý líh
title-sample = Vzorek
about-sample = Kolik se odebralo, na co a co se s tím stalo.
label-sample-size = Velikost
label-sample-number = Kolik kusů
label-sample-purpose = Na co
choice-sample-purpose-analysis = rozbor
choice-sample-purpose-tasting = degustace
choice-sample-purpose-gauge = měření
choice-sample-purpose-library = archiv
choice-sample-purpose-customer = odběratel
choice-sample-purpose-other = jiné
label-sample-went = Kam šel
choice-sample-went-destroyed = znehodnoceno
choice-sample-went-returned = vráceno
choice-sample-went-library = archiv
choice-sample-went-outside_lab = cizí laboratoř
label-sample-lab = Laboratoř
help-sample-lab = Jméno a adresa.
label-sample-account = Účet
help-sample-account = Nechat prázdné: kniha to zná podle nádoby.
choice-sample-account-production = výroba
choice-sample-account-storage = sklad
choice-sample-account-processing = zpracování
rule-sample-lab_is_named = Napsat název a adresu laboratoře.
figure-sample-taken = odebráno
figure-sample-lpa = čistý líh
title-lab_certificate = Laboratorní protokol
short-lab_certificate = Laboratoř
about-lab_certificate = Co laboratoř ve vzorku našla: každý výsledek s jednotkou, ± a od kolika ho metoda najde.
summary-lab_certificate = { $laboratory }, { $document }: metanol { $methanol }
label-lab_certificate-laboratory = Laboratoř
label-lab_certificate-document = Číslo protokolu
label-lab_certificate-taken_on = Vzorek odebrán dne
label-lab_certificate-batch = Dávka nebo šarže
help-lab_certificate-batch = U lihu, který už je v lahvích.
label-lab_certificate-spirit = Prodává se jako
help-lab_certificate-spirit = Třeba destilát z hrušek Williams: podle toho platí meze. Prázdné: co nádoba obsahuje.
label-lab_certificate-strength = Skutečná koncentrace, destilací
help-lab_certificate-strength = Potřebná, je-li výsledek na litr nápoje.
label-lab_certificate-methanol = Metanol
label-lab_certificate-volatile_substances = Těkavé látky
label-lab_certificate-hydrocyanic_acid = Kyanovodík
label-lab_certificate-ethyl_carbamate = Ethylkarbamát
label-lab_certificate-acetaldehyde = Acetaldehyd, celkem
label-lab_certificate-ethyl_acetate = Ethylacetát
label-lab_certificate-higher_alcohols = Vyšší alkoholy, součet
label-lab_certificate-volatile_acidity = Těkavé kyseliny, jako octová
label-lab_certificate-copper = Měď
label-lab_certificate-lead = Olovo
label-lab_certificate-sulphur_dioxide = Oxid siřičitý
label-lab_certificate-dry_extract = Suchý extrakt
label-lab_certificate-sugar = Cukr, jako invertní
label-lab_certificate-sample_no = Číslo vzorku
label-lab_certificate-accreditation = Akreditace laboratoře
help-lab_certificate-accreditation = Její číslo.
label-lab_certificate-method = Metoda
help-lab_certificate-method = Jak je vytištěna, třeba nařízení (ES) 2870/2000, III.2.
label-lab_certificate-reported_on = Datum protokolu
label-lab_certificate-coverage = Co znamená ±
choice-lab_certificate-coverage-two = dvojnásobek standardní nejistoty, k = 2
choice-lab_certificate-coverage-one = standardní nejistota
choice-lab_certificate-coverage-unsaid = neuvádí se
label-lab_certificate-strength_plus_minus = ± koncentrace
label-lab_certificate-methanol_plus_minus = ± metanolu
label-lab_certificate-methanol_below = Metanol: nenalezen, pod
label-lab_certificate-volatile_substances_plus_minus = ± těkavých látek
label-lab_certificate-volatile_substances_below = Těkavé látky: nenalezeny, pod
label-lab_certificate-hydrocyanic_acid_plus_minus = ± kyanovodíku
label-lab_certificate-hydrocyanic_acid_below = Kyanovodík: nenalezen, pod
label-lab_certificate-ethyl_carbamate_plus_minus = ± ethylkarbamátu
label-lab_certificate-ethyl_carbamate_below = Ethylkarbamát: nenalezen, pod
label-lab_certificate-acetaldehyde_plus_minus = ± acetaldehydu
label-lab_certificate-acetaldehyde_below = Acetaldehyd: nenalezen, pod
label-lab_certificate-ethyl_acetate_plus_minus = ± ethylacetátu
label-lab_certificate-ethyl_acetate_below = Ethylacetát: nenalezen, pod
label-lab_certificate-higher_alcohols_plus_minus = ± vyšších alkoholů
label-lab_certificate-higher_alcohols_below = Vyšší alkoholy: nenalezeny, pod
label-lab_certificate-volatile_acidity_plus_minus = ± těkavých kyselin
label-lab_certificate-volatile_acidity_below = Těkavé kyseliny: nenalezeny, pod
label-lab_certificate-copper_plus_minus = ± mědi
label-lab_certificate-copper_below = Měď: nenalezena, pod
label-lab_certificate-lead_plus_minus = ± olova
label-lab_certificate-lead_below = Olovo: nenalezeno, pod
label-lab_certificate-sulphur_dioxide_plus_minus = ± oxidu siřičitého
label-lab_certificate-sulphur_dioxide_below = Oxid siřičitý: nenalezen, pod
label-lab_certificate-dry_extract_plus_minus = ± suchého extraktu
label-lab_certificate-dry_extract_below = Suchý extrakt: nenalezen, pod
label-lab_certificate-sugar_plus_minus = ± cukru
label-lab_certificate-sugar_below = Cukr: nenalezen, pod
rule-lab_certificate-some_result = Napsat aspoň jeden výsledek, nebo od kolika by ho metoda našla.
rule-lab_certificate-reported_before_taken = Protokol je starší než vzorek. Podívat se na oba dny.
title-tasting_note = Degustační poznámka
short-tasting_note = Ochutnat
about-tasting_note = Nos, ústa, dřevo a vada sudu nebo šarže, a co se rozhodlo.
summary-tasting_note = { $decision }: nos { $nose_score }, ústa { $mouth_score }
label-tasting_note-nose_score = Nos
help-tasting_note-nose_score = 0 až 10.
label-tasting_note-mouth_score = Ústa
help-tasting_note-mouth_score = 0 až 10.
label-tasting_note-wood_score = Dřevo
help-tasting_note-wood_score = 0 až 10.
label-tasting_note-fault_score = Vada
help-tasting_note-fault_score = 0 až 10.
label-tasting_note-words = Slovy
label-tasting_note-house_scores = Vlastní body
help-tasting_note-house_scores = Body lihovaru, 0 až 10: ovoce 7; hloubka 5.
label-tasting_note-reduced_to = Zředěno na
label-tasting_note-decision = Rozhodnutí
choice-tasting_note-decision-hold = nechat
choice-tasting_note-decision-move = přesun
choice-tasting_note-decision-vat = do kupáže
choice-tasting_note-decision-treat = ošetřit
choice-tasting_note-decision-reject = vyřadit
title-tasting_session = Slepá degustace
short-tasting_session = Naslepo
about-tasting_session = Na co se ptá, u kterých vzorků, jakou metodou, a kódy na sklenkách degustátorů. Který kód je který vzorek, je zapečetěno do otevření. Úkap se nikdy nechutná.
label-tasting_session-name = Název degustace
label-tasting_session-question = Otázka
label-tasting_session-method = Metoda
choice-tasting_session-method-triangle = trojúhelník
choice-tasting_session-method-duo_trio = duo-trio
choice-tasting_session-method-pair = párová, jednostranná
choice-tasting_session-method-pair_two_sided = párová, dvoustranná
choice-tasting_session-method-ranking = pořadí
label-tasting_session-alpha = Riziko rozdílu, který není
label-tasting_session-samples = Vzorky
help-tasting_session-samples = Písmeno a značka, nebo run či batch a název: A C001-Z; B run PL-31, 64 to 60 % vol
label-tasting_session-reduced_to = Podáváno při
help-tasting_session-reduced_to = Všechny sklenky stejně, se stejnou vodou.
label-tasting_session-poured_by = Nalévá
help-tasting_session-poured_by = Kdo nalévá, nechutná.
label-tasting_session-glasses = Sklenky
help-tasting_session-glasses = Degustátor a kódy zleva doprava: NS 418 902 637; JK 271 550 803
label-tasting_session-seal = Pečeť klíče
title-tasting_answer = Odpověď ve slepé degustaci
short-tasting_answer = Odpověď
about-tasting_answer = Sklenka, kterou degustátor jmenuje, nebo všechny v pořadí. I odhad je odpověď: jiná volba není.
summary-tasting_answer = { $session }, sada { $set_no }: { $picked }
label-tasting_answer-session = Degustace
help-tasting_answer-session = Její název, jako na servírovacím listu.
label-tasting_answer-set_no = Sada
help-tasting_answer-set_no = Která z vašich sad, počítáno od 1.
label-tasting_answer-picked = Kód, který jmenujete
label-tasting_answer-order = nebo všechny kódy v pořadí
help-tasting_answer-order = První nejdřív: 418 902 637
label-tasting_answer-sure = Jistota
choice-tasting_answer-sure-guessing = odhad
choice-tasting_answer-sure-fairly = trochu
choice-tasting_answer-sure-quite = dost
label-tasting_answer-gave_away = Co to prozradilo
rule-tasting_answer-some_answer = Jmenovat sklenku. I odhad je odpověď.
title-tasting_result = Slepá degustace otevřena
short-tasting_result = Otevřít
about-tasting_result = Klíč slepé degustace a co z ní plyne. Plán řezů nebo kupáže ji může uvést.
summary-tasting_result = { $session } otevřena: { $decision }
label-tasting_result-session = Degustace
label-tasting_result-key = Klíč
help-tasting_result-key = Pro každou sadu sklenek písmena vzorků, pak slovo, kterým se pečetilo.
label-tasting_result-decision = Co z toho plyne
title-loss = Únik, rozlití, rozbití, chybění
short-loss = Ztráta
about-loss = Co se ztratilo, proč, komu se to řeklo, co se udělalo. Krádež a chybějící sudy se hlásí hned.
label-loss-cause = Příčina
choice-loss-cause-leak = únik
choice-loss-cause-spill = rozlití
choice-loss-cause-broken = rozbito
choice-loss-cause-theft = podezření z krádeže
choice-loss-cause-missing = chybí
choice-loss-cause-unknown = neznámá
label-loss-whole = Je pryč všechno
label-loss-volume = Kolik
help-loss-volume = Změřené nebo vypočtené.
label-loss-net_weight = nebo hmotností
label-loss-glass = Údaj lihoměru
help-loss-glass = Jak lihoměr ukazuje, bez opravy.
label-loss-density = nebo hustota, přístrojem
help-loss-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-loss-temp = Teplota lihu
help-loss-temp = Číst ve stejnou chvíli jako lihoměr.
label-loss-strength = Koncentrace, už opravená
help-loss-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-loss-reckoned = Změřeno nebo vypočteno
choice-loss-reckoned-measured = změřeno
choice-loss-reckoned-reckoned = vypočteno
label-loss-found = Kdo našel, komu řekl
label-loss-done = Uděláno
choice-loss-done-recoopered = opraveno bednářem
choice-loss-done-recasked = přesudováno
choice-loss-done-pumped = přečerpáno
choice-loss-done-cleaned = uklizeno
choice-loss-done-reported = ohlášeno
choice-loss-done-nothing = zatím nic
rule-loss-some_loss = Napsat, kolik se ztratilo, objemem nebo hmotností, nebo že je pryč všechno.
rule-loss-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-loss-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-loss-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-loss-true_strength = skutečná při 20 °C
figure-loss-glass_true = lihoměr, opraveno
figure-loss-volume_20 = objem při 20 °C
figure-loss-lpa = čistý líh
title-vat_plan = Plán kupáže
short-vat_plan = Plán kupáže
about-vat_plan = Co má jít do nádrže a co z toho má být; s tím, kdo a kdy to plánoval.
summary-vat_plan = { $name }: { $volume } při { $target }, { $water } vody
label-vat_plan-name = Název kupáže
label-vat_plan-draws = Odběry
help-vat_plan-draws = Značka a kilogramy, jedno za druhým: C001-Z 153.7; C009-K 176.2
label-vat_plan-water = Voda hmotností
label-vat_plan-target = Cílová koncentrace
label-vat_plan-volume = Cílový objem
help-vat_plan-volume = Při 20 °C.
label-vat_plan-wishes = Co se žádalo
label-vat_plan-tasting = Podklad: degustace
help-vat_plan-tasting = Její název: T-26-03
title-dump = Vyprázdnit / kupáž
short-dump = Vyprázdnit
about-dump = Sud zvážený plný a prázdný; co odešlo, šlo do nádrže, co drží dřevo, je nasáklé.
summary-dump = { $net } při { $true_strength } do { $to_vessel }
label-dump-gross = Brutto předtím
label-dump-empty = Hmotnost prázdného teď
help-dump-empty = Dřevo drží 3 až 8 kg v sudu 200 L.
label-dump-glass = Údaj lihoměru
help-dump-glass = Jak lihoměr ukazuje, bez opravy.
label-dump-density = nebo hustota, přístrojem
help-dump-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-dump-temp = Teplota lihu
help-dump-temp = Číst ve stejnou chvíli jako lihoměr.
label-dump-strength = Koncentrace, už opravená
help-dump-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-dump-to_vessel = Do nádrže
label-dump-tank_dip = Hladina nádrže potom
rule-dump-empty_below_gross = Hmotnost prázdného { $empty } není pod bruttem { $gross }. Podívat se znovu na váhu.
rule-dump-some_strength = Napsat údaj lihoměru a jeho teplotu, nebo už opravenou koncentraci.
rule-dump-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-dump-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-dump-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-dump-true_strength = skutečná při 20 °C
figure-dump-glass_true = lihoměr, opraveno
figure-dump-net = vyprázdněno
figure-dump-volume_20 = objem při 20 °C
figure-dump-lpa = čistý líh
figure-dump-soakage = drží dřevo
title-reduce = Ředění
short-reduce = Přidat vodu
about-reduce = Voda hmotností, koncentrace, kterou má dát, a koncentrace po odležení.
summary-reduce = { $water_mass } vody, cíl { $target }
label-reduce-target = Cílová koncentrace
label-reduce-water = Voda hmotností
help-reduce-water = Vodu počítat hmotností: objemy se nesčítají.
label-reduce-water_volume = nebo objemem
label-reduce-rest_until = Odležet do
label-reduce-glass = Údaj lihoměru
help-reduce-glass = Jak lihoměr ukazuje, bez opravy.
label-reduce-density = nebo hustota, přístrojem
help-reduce-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-reduce-temp = Teplota lihu
help-reduce-temp = Číst ve stejnou chvíli jako lihoměr.
label-reduce-strength = Koncentrace, už opravená
help-reduce-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-reduce-volume = Hladina po odležení
rule-reduce-some_water = Napsat, kolik vody šlo dovnitř, hmotností nebo objemem. 0, měří-li se až po odležení.
rule-reduce-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-reduce-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-reduce-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-reduce-needed = voda k cíli
figure-reduce-water_mass = voda
figure-reduce-planned_strength = koncentrace výpočtem
figure-reduce-planned_volume = objem výpočtem
figure-reduce-true_strength = skutečná při 20 °C
figure-reduce-glass_true = lihoměr, opraveno
figure-reduce-volume_20 = hladina při 20 °C
title-chill_filter = Vymrazit / filtrovat
short-chill_filter = Filtrovat
about-chill_filter = Teplota, desky, a objem a koncentrace před a po.
summary-chill_filter = { $sheets } při { $temp }: { $lost } zadrženo
label-chill_filter-temp = Vymrazeno na
label-chill_filter-sheets = Desky nebo svíčka
help-chill_filter-sheets = Typ a šarže.
label-chill_filter-volume_before = Objem předtím
label-chill_filter-strength_before = Koncentrace předtím
label-chill_filter-temp_before = Teplota při hladině předtím
help-chill_filter-temp_before = Prázdné: při 20 °C.
label-chill_filter-volume_after = Objem potom
label-chill_filter-strength_after = Koncentrace potom
label-chill_filter-temp_after = Teplota při hladině potom
help-chill_filter-temp_after = Prázdné: při 20 °C.
label-chill_filter-to_vessel = Do nádrže
help-chill_filter-to_vessel = Nechat prázdné, vrátilo-li se.
figure-chill_filter-volume_before_20 = objem předtím při 20 °C
figure-chill_filter-volume_after_20 = objem potom při 20 °C
figure-chill_filter-lpa_before = čistý líh předtím
figure-chill_filter-lpa_after = čistý líh potom
figure-chill_filter-lost = zadržel filtr
title-bottling_gauge = Měření stáčecí nádrže
short-bottling_gauge = Měření před stáčením
about-bottling_gauge = Po všech úpravách a před první lahví: kolik, jak silné, a co bude na etiketě.
summary-bottling_gauge = { $batch }: { $volume_20 } při { $true_strength }
label-bottling_gauge-batch = Dávka
label-bottling_gauge-volume = Objem
label-bottling_gauge-dip = nebo hladina
help-bottling_gauge-dip = Výška nebo prázdný prostor, podle tabulky nádoby; litry se dopočtou.
label-bottling_gauge-net_weight = nebo čistá hmotnost
label-bottling_gauge-glass = Údaj lihoměru
help-bottling_gauge-glass = Jak lihoměr ukazuje, bez opravy.
label-bottling_gauge-density = nebo hustota, přístrojem
help-bottling_gauge-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-bottling_gauge-temp = Teplota lihu
help-bottling_gauge-temp = Číst ve stejnou chvíli jako lihoměr.
label-bottling_gauge-strength = Koncentrace, už opravená
help-bottling_gauge-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-bottling_gauge-obscuration = Extrakt
help-bottling_gauge-obscuration = Odparek. Nad 0.6 g/100 mL, nebo mimo 80 až 100 proof: předestilovat vzorek, napsat jeho koncentraci a žádný extrakt.
label-bottling_gauge-label_strength = Konc. na etiketě
rule-bottling_gauge-some_quantity = Napsat objem, hladinu nebo čistou hmotnost.
rule-bottling_gauge-volume_needs_temp = K objemu patří teplota lihu. Napsat ji také.
rule-bottling_gauge-some_strength = Napsat údaj lihoměru a jeho teplotu, nebo už opravenou koncentraci.
rule-bottling_gauge-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-bottling_gauge-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-bottling_gauge-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-bottling_gauge-seen_strength = podle přístroje
figure-bottling_gauge-true_strength = skutečná při 20 °C
figure-bottling_gauge-glass_true = lihoměr, opraveno
figure-bottling_gauge-dipped = podle tabulky
figure-bottling_gauge-estimated = podle rozměrů, odhad
figure-bottling_gauge-volume_20 = objem při 20 °C
figure-bottling_gauge-lpa = čistý líh
figure-bottling_gauge-proof_gallons = proof gallony
title-bottle_check = Kontrola lahví
short-bottle_check = Kontrola lahví
about-bottle_check = Asi každou půlhodinu: plnění, koncentrace, etiketa a uzávěr několika lahví.
summary-bottle_check = lahví { $tested }: { $fill_found }, { $strength_found }
label-bottle_check-line = Linka
label-bottle_check-filled_so_far = Lahví zatím naplněno
help-bottle_check-filled_so_far = Podle počitadla linky, od načnutí nebo posledního uzavření nádrže.
label-bottle_check-tested = Zkontrolovaných lahví
label-bottle_check-bottle_size = Objem láhve
label-bottle_check-fill_found = Zjištěné plnění, průměr
help-bottle_check-fill_found = V procentech toho, co říká etiketa.
label-bottle_check-fill_least = Nejméně plná
label-bottle_check-fill_most = Nejvíce plná
label-bottle_check-strength_found = Zjištěná koncentrace
label-bottle_check-label_strength = Konc. na etiketě
label-bottle_check-labels_right = Etikety a uzávěry v pořádku
label-bottle_check-done = Náprava
title-bottling_close = Uzavření stáčení
short-bottling_close = Uzavřít stáčení
about-bottling_close = Počty, čísla kartonů a zbytek v nádrži. Tady stočený líh opouští nádrž.
summary-bottling_close = lahví { $filled }, kartony { $case_from } až { $case_to }
label-bottling_close-filled = Naplněných lahví
label-bottling_close-broken = Rozbité
label-bottling_close-reworked = Vrácené
label-bottling_close-library = Z dobrých do archivu
label-bottling_close-bottle_size = Objem láhve
label-bottling_close-per_case = Lahví v kartonu
label-bottling_close-case_from = První karton
label-bottling_close-case_to = Poslední karton
label-bottling_close-odd_case = Neúplný karton
help-bottling_close-odd_case = Jeho číslo s R.
label-bottling_close-lot_mark = Označení šarže na lahvích
label-bottling_close-loss = Zbytek, linka a filtr
label-bottling_close-tank_empty = Je nádrž teď prázdná?
rule-bottling_close-broken_of_filled = Rozbitých { $broken } z { $filled } naplněných není možné. Spočítat znovu.
figure-bottling_close-in_bottles = naplněno
figure-bottling_close-lpa = čistý líh v lahvích
title-dispatch = Stočené zboží ven nebo zpět
short-dispatch = Kartony ven
about-dispatch = Kartony nebo láhve ze stáčení odcházejí, zdaněné nebo v osvobození, rozbijí se, slouží jako vzorky, nebo se vracejí.
summary-dispatch = { $batch }: kartonů { $cases }, { $why }
label-dispatch-batch = Dávka nebo označení šarže
help-dispatch-batch = Jak stojí na lahvích nebo kartonu.
label-dispatch-why = Co se s nimi stane
choice-dispatch-why-tax_paid = odchod, daň vyměřena
choice-dispatch-why-in_bond = odchod v osvobození
choice-dispatch-why-export = odchod na vývoz
choice-dispatch-why-sample = vzorky a degustace
choice-dispatch-why-broken = rozbito
choice-dispatch-why-destroyed = znehodnoceno
choice-dispatch-why-missing = chybí
choice-dispatch-why-dumped_back = vrácené do nádrže
choice-dispatch-why-returned = vracejí se
label-dispatch-cases = Celé kartony
label-dispatch-bottles = Volné láhve
label-dispatch-case_from = První karton
label-dispatch-case_to = Poslední karton
label-dispatch-document = Číslo dokladu
label-dispatch-to_whom = Komu nebo od koho
help-dispatch-to_whom = Jméno a adresa. Znehodnoceno: kdo to udělal nebo viděl.
label-dispatch-to_vessel = Do nádrže
rule-dispatch-some_bottles = Napsat počet kartonů nebo volných lahví.
rule-dispatch-out_has_document = Zboží, které odchází, má doklad. Napsat jeho číslo.
rule-dispatch-out_names_whom = Napsat, komu jdou: při stažení to jinak nikdo neví.
rule-dispatch-destroyed_is_watched = Napsat, kdo je znehodnotil nebo viděl, s funkcí.
rule-dispatch-poured_into_a_tank = Vybrat nádrž.
rule-dispatch-last_needs_first = Napsat i první karton.
title-goods_receipt = Příjem stočeného zboží
short-goods_receipt = Kartony dovnitř
about-goods_receipt = Kartony nebo láhve přicházejí v osvobození z jiného závodu: co uvádějí doklady a co chybělo nebo bylo rozbité.
summary-goods_receipt = { $document }: kartonů { $cases }, { $batch }, od { $consignor }
label-goods_receipt-consignor = Od koho
help-goods_receipt-consignor = Jméno a adresa, číslo závodu nebo skladu.
label-goods_receipt-document = Číslo dokladu
label-goods_receipt-batch = Dávka nebo označení šarže
help-goods_receipt-batch = Jak stojí na lahvích nebo kartonu.
label-goods_receipt-spirit = Druh lihu
label-goods_receipt-strength = Koncentrace z etikety
label-goods_receipt-bottle_size = Objem láhve
label-goods_receipt-per_case = Lahví v kartonu
label-goods_receipt-cases = Celé kartony
label-goods_receipt-bottles = Volné láhve
label-goods_receipt-short = Chybějící nebo rozbité láhve
label-goods_receipt-case_from = První karton
label-goods_receipt-case_to = Poslední karton
label-goods_receipt-seals = Závěry neporušené?
rule-goods_receipt-some_bottles = Napsat, kolik kartonů nebo volných lahví uvádějí doklady.
rule-goods_receipt-cases_hold_some = Napsat, kolik lahví je v kartonu.
rule-goods_receipt-last_needs_first = Napsat i první karton.
title-opening_goods = Počáteční zásoba v lahvích
short-opening_goods = Počáteční láhve
about-opening_goods = Kartony a láhve jednoho stáčení, které stály ve skladu, než kniha začala, a co o tom říkají doklady.
summary-opening_goods = { $batch }: kartonů { $cases }, { $spirit }, před touto knihou
label-opening_goods-batch = Dávka nebo označení šarže
help-opening_goods-batch = Jak stojí na lahvích nebo kartonu.
label-opening_goods-lot_mark = Označení šarže
help-opening_goods-lot_mark = Nesou-li láhve jiné než dávka.
label-opening_goods-spirit = Druh lihu
label-opening_goods-strength = Koncentrace z etikety
label-opening_goods-bottle_size = Objem láhve
label-opening_goods-per_case = Lahví v kartonu
label-opening_goods-cases = Celé kartony
label-opening_goods-bottles = Volné láhve
label-opening_goods-case_from = První karton
label-opening_goods-case_to = Poslední karton
label-opening_goods-bottled_on = Stočeno dne
label-opening_goods-origin = Odkud
help-opening_goods-origin = Vlastní stáčení, nebo od koho přišlo.
label-opening_goods-papers = Doklady
help-opening_goods-papers = Která kniha nebo faktura, a strana.
rule-opening_goods-some_bottles = Napsat počet kartonů nebo volných lahví.
rule-opening_goods-cases_hold_some = Napsat, kolik lahví je v kartonu.
rule-opening_goods-last_needs_first = Napsat i první karton.
title-bottled_count = Inventura stočeného zboží
short-bottled_count = Spočítat láhve
about-bottled_count = Kartony a láhve jednoho stáčení ve skladu. Rozdíl je schodek nebo přebytek.
summary-bottled_count = { $batch }: kartonů na skladě { $cases }
label-bottled_count-batch = Dávka nebo označení šarže
help-bottled_count-batch = Jak stojí na lahvích nebo kartonu.
label-bottled_count-cases = Celé kartony
label-bottled_count-bottles = Volné láhve
label-bottled_count-case_from = Některý z kartonů
help-bottled_count-case_from = Jen mají-li dvě stáčení stejnou dávku.
label-bottled_count-signed = Podpis počítajícího
help-bottled_count-signed = Jméno a funkce.
rule-bottled_count-some_bottles = Napsat počet kartonů nebo lahví, nebo 0.
title-stock_count = Inventura zásob
short-stock_count = Inventura
about-stock_count = Která nádoba stojí kde, a kolik je v nádrži. Výměna je výměna, ne schodek.
label-stock_count-place = Místo
help-stock_count-place = Podle štítku. U nádrže nechat prázdné.
label-stock_count-found = Nalezeno
choice-stock_count-found-here = tato nádoba
choice-stock_count-found-nothing = nic tam, kde má být
choice-stock_count-found-unknown = nádoba, která v knize není
label-stock_count-label = Co je na ní napsáno
label-stock_count-volume = Objem, je-li to nádrž
label-stock_count-net_weight = nebo čistá hmotnost
label-stock_count-glass = Údaj lihoměru
help-stock_count-glass = Jak lihoměr ukazuje, bez opravy.
label-stock_count-density = nebo hustota, přístrojem
help-stock_count-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-stock_count-temp = Teplota lihu
help-stock_count-temp = Číst ve stejnou chvíli jako lihoměr.
label-stock_count-strength = Koncentrace, už opravená
help-stock_count-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-stock_count-signed = Podpis počítajícího
help-stock_count-signed = Jméno a funkce.
rule-stock_count-unknown_is_described = Napsat, co je na ní napsáno.
rule-stock_count-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-stock_count-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-stock_count-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-stock_count-true_strength = skutečná při 20 °C
figure-stock_count-glass_true = lihoměr, opraveno
figure-stock_count-volume_20 = objem při 20 °C
figure-stock_count-lpa = čistý líh
title-cleaning = Čištění
about-cleaning = Prostředek, koncentrace, doba a teplota, a kontrola výplachu. Nikdo dovnitř bez povolení.
summary-cleaning = { $agent }, výplach { $rinse_ph }
label-cleaning-agent = Prostředek, koncentrace, doba
label-cleaning-temp = Teplota
label-cleaning-rinse_ph = Kontrola výplachu, pH
label-cleaning-entered = Vstoupil někdo dovnitř?
label-cleaning-permit_no = Číslo povolení
rule-cleaning-entry_needs_permit = Do nádoby nikdo bez povolení. Napsat jeho číslo.
title-instrument_check = Kontrola měřidla
short-instrument_check = Kontrola měřidla
about-instrument_check = Zjištěné proti známému. Jeden dílek vedle je moc: měřidlo je mimo provoz, než se spraví.
summary-instrument_check = { $instrument }: { $found } místo { $expected }, { $result }
label-instrument_check-instrument = Měřidlo
help-instrument_check-instrument = Jeho označení, třeba TH-2.
label-instrument_check-against = Proti
choice-instrument_check-against-ice = led
choice-instrument_check-against-boiling = vroucí voda
choice-instrument_check-against-liquid = referenční kapalina
choice-instrument_check-against-weight = závaží
choice-instrument_check-against-second = druhé měřidlo
label-instrument_check-expected = Má ukazovat
help-instrument_check-expected = V jednotce měřidla.
label-instrument_check-found = Ukazuje
label-instrument_check-correction = Oprava od teď
help-instrument_check-correction = K přičtení k tomu, co ukazuje. 0, není-li.
label-instrument_check-result = Dobré?
choice-instrument_check-result-good = dobré
choice-instrument_check-result-failed = není dobré
label-instrument_check-in_use = V provozu?
choice-instrument_check-in_use-yes = ano
choice-instrument_check-in_use-no = ne
choice-instrument_check-in_use-until = do určitého dne
label-instrument_check-until = Do
title-destruction = Znehodnocení
short-destruction = Znehodnotit
about-destruction = Co se znehodnotilo, kolik, kde, jak a kdo to viděl.
summary-destruction = { $what }: { $volume_20 } při { $true_strength }
label-destruction-what = Co a šarže
label-destruction-volume = Objem
label-destruction-net_weight = nebo čistá hmotnost
label-destruction-glass = Údaj lihoměru
help-destruction-glass = Jak lihoměr ukazuje, bez opravy.
label-destruction-density = nebo hustota, přístrojem
help-destruction-density = Jak přístroj ukazuje při té teplotě, bez přepočtu na jinou.
label-destruction-temp = Teplota lihu
help-destruction-temp = Číst ve stejnou chvíli jako lihoměr.
label-destruction-strength = Koncentrace, už opravená
help-destruction-strength = Jen z elektronického hustoměru nebo tabulek. U lihoměru nechat prázdné.
label-destruction-place = Místo
label-destruction-manner = Jak
label-destruction-withdrawn = Bylo někdy vydáno z osvobození?
label-destruction-watched_by = Kdo udělal nebo viděl, s funkcí
rule-destruction-some_quantity = Napsat objem nebo čistou hmotnost.
rule-destruction-some_strength = Napsat údaj lihoměru a jeho teplotu, nebo už opravenou koncentraci.
rule-destruction-glass_needs_temp = K údaji lihoměru patří teplota lihu. Napsat ji také.
rule-destruction-density_needs_temp = K hustotě patří teplota, při které se měřila. Napsat ji také.
rule-destruction-raw_equals_corrected = { $glass } stojí v obou polích při { $temp }. To ukazuje lihoměr; skutečná by byla { $glass_true }.
figure-destruction-true_strength = skutečná při 20 °C
figure-destruction-glass_true = lihoměr, opraveno
figure-destruction-volume_20 = objem při 20 °C
figure-destruction-lpa = čistý líh
figure-destruction-proof_gallons = proof gallony
title-shift_note = Vzkaz další směně
short-shift_note = Vzkaz
about-shift_note = Pár slov pro toho, kdo přijde, o nádobě nebo jen tak.
label-shift_note-text = Vzkaz
title-note_heard = Vzkaz přečten
about-note_heard = Kdo který vzkaz četl nebo slyšel; do té doby zůstává u nádoby.
summary-note_heard = přečteno
label-note_heard-note = Vzkaz
title-enclosure = Přidán obrázek nebo doklad
short-enclosure = Obrázek
about-enclosure = Jmenuje zápis, ke kterému patří; `enclosed` jmenuje soubory podle SHA-256.
label-enclosure-entry = K zápisu
label-enclosure-what = Co ukazuje
title-answer = Odpověď
about-answer = Platí, nebo je škrtnut, s důvodem. Zápis, o kterém mluví, zůstává čitelný.
label-answer-entry = K zápisu
label-answer-query = Dotaz
help-answer-query = Jeho kód; prázdné pro celý zápis.
label-answer-verdict = Odpověď
choice-answer-verdict-stands = platí
choice-answer-verdict-struck = škrtnuto
label-answer-reason = Důvod

### A phone fetches what follows after its first install.

pure =
    { UNITS() ->
        [us] proof gallonů
       *[metric] L čistého lihu
    }
of-pure =
    { UNITS() ->
        [us] proof gallonů
       *[metric] L čistého lihu
    }
pure-sign =
    { UNITS() ->
        [us] proof gal
       *[metric] L
    }
no_entry = To není zápis. Aktualizovat aplikaci v telefonu a poslat znovu.
unkeepable = Obsahuje údaj nebo znak, který nelze uložit. Zapsat znovu.
too_long-entry = Na zápis je to moc dlouhé. Zkrátit texty a zapsat znovu.
malformed = { $path }: { $words }
malformed-whole = { $words }
fault-missing = Chybí povinné pole.
fault-null = Pole nesmí být prázdné (null).
fault-no_text = Neplatný text.
fault-no_number = Neplatné celé číslo.
fault-no_members = Neplatný typ mapping.
fault-no_list = Neplatný seznam.
fault-no_object = Neplatný typ vstupu.
fault-no_id = Id není UUID malými písmeny.
fault-no_time = Čas potřebuje datum, hodinu a posun, třeba 2025-09-24T08:05:00+02:00.
fault-no_digest = Jméno obrázku je jeho SHA-256 malými písmeny.
fault-unkeepable = Text obsahuje znaky, které nelze uložit.
fault-unknown = Neznámé pole.
fault-longer = Delší než největší délka { $most }.
fault-one_of = Musí být jedno z: { $choices }.
fault-between = Musí být nejméně { $least } a nejvýš { $most }.
no_such_kind = Kniha nezná zápis jménem { $kind }. Aktualizovat knihu.
newer_kind = Telefon je novější než kniha. Aktualizovat knihu, pak poslat znovu.
bad_mark = { $mark } není značka. Přečíst štítek znovu a zapsat znovu.
bad_mark-field = { $label }: { $mark } není značka. Přečíst štítek znovu.
missing-mark = Chybí značka nádoby. Naskenovat štítek, nebo ji napsat.
amends_itself = Říká, že opravuje sám sebe. Zapsat znovu.
clash-in_book = Toto id je v knize s jiným obsahem, pod číslem { $number }. Rozhodne člověk.
clash-in_batch = Toto id je v jedné dávce dvakrát s různým obsahem. První je v knize. Rozhodne člověk.
bad_signature = Nemá podpis telefonu, který jmenuje: po zapsání se změnil. Zapsat znovu.
not_the_desk = Říká, že byl zapsán v kanceláři. Zapsat znovu, v kanceláři nebo v telefonu.
may_not_answer = Odpovídá palič nebo kancelář, v kanceláři. Přihlásit se tam a odpovědět.
not_worked_out = Kniha tento zápis nedokázala zpracovat. Zůstává, jak přišel; ohlásit tomu, kdo se stará o program.
clash = Pod id tohoto zápisu přišel jiný obsah a byl odložen. Porovnat je; opravit, nebo nechat platit.
amended_after_strike = Opravuje zápis, který byl předtím škrtnut. Neplatí, pokud se neřekne, že platí.
unknown_person = Kniha nezná nikoho s kódem { $code }. Přidat ho, nebo opravit zápis.
unknown_vessel = Nádoba { $mark } v knize není. Přidat ji, nebo opravit zápis.
wrong_sort = { $vessel } je { $sort }; { LOWER($kind) } se tam nezapisuje. Správná nádoba?
wrong_sort-field = { $label }: { $vessel } je { $sort }. Správná nádoba?
sort-fermenter = kvasná nádrž
sort-still = přístroj
sort-receiver = jímadlo
sort-tank = nádrž
sort-cask = sud
sort-can = kanystr
sort-place = místo
stock_short = { BARE($taken) } { of-pure } odebráno z { $vessel }, podle knihy v ní je { BARE($booked) } { pure-sign }. Podívat se znovu na oba údaje.
from_nothing = { BARE($came) } { of-pure } přišlo odtud, kde kniha nic nemá. Je to správná nádoba a čas? Pokud ano, zapsat, co tam bylo předtím.
clock = Hodiny telefonu šly při odevzdání o { $off } { clock-way }.
clock-way =
    { $way ->
        [slow] pozadu
       *[fast] napřed
    }
clock-ask = Hodiny telefonu šly při odevzdání o { $off } { clock-way }. Podle nich bylo odečteno { ISO_DAY($told) } v { CLOCK($told) }; kniha to řadí jako { ISO_DAY($ordered) } { CLOCK($ordered) }; zůstává obojí. Seřídit hodiny a říct, zda den souhlasí.
hand_unsigned = Telefon podepisuje, co se v něm zapíše, a toto přišlo bez podpisu. Ověřit, zda je to zápis osoby { $person }.
hand_not_shown = { $person } má PIN a v tomto telefonu zadán nebyl. Ověřit, zda zápis patří této osobě.
hand_second = Lihovar chce u tohoto zápisu PIN, a ten nebyl zadán. Ověřit, zda je to zápis osoby { $person }.
hand_witness = Jako svědek je tu { $person }, a PIN této osoby v tomto telefonu nikdy zadán nebyl. Zeptat se jí.
received = Odevzdáno { $after } po zapsání.
late = Zapsáno { $after } po odečtení.
time_order = Odečteno { $after } po zapsání: to není možné. Opravit čas odečtu.
twice =
    Tytéž údaje už jsou zapsány: { $at } ({ $before ->
        [none] ve stejné chvíli
       *[other] o { $before } dřív
    }{ $by ->
        [none] { "" }
       *[other] , { $by }
    }). Je to jeden odečet, zapsaný dvakrát?
moved_twice = Tytéž údaje už jsou zapsány: { $at }. Je to jedno a totéž, zapsané dvakrát?
named_twice = { $label } { $name } už je zapsáno: { $at }. Dát další.
two_people = Tuto nádobu měřila i jiná osoba, { $other }, { $at }: { TYPED($theirs) }. { $me } má { TYPED($mine) }. Zůstává obojí; co platí?
too_neat = { $label } { TYPED($figure) }, { $times }krát po sobě. Čte se to pokaždé?
neat_round = { $label } { TYPED($figure) } na nádobách po sobě: { $vessels }. Čte se na každé?
instrument-failed = { $instrument }: { $on } neprošlo kontrolou. Přečíst znovu jiným.
instrument-would = { $instrument } neprošel zkouškou ({ $on }): podle ní by { TYPED($figure) } bylo { TYPED($would) }. Odečíst znovu jiným.
instrument-out_of_use = { $instrument } je mimo provoz od { $since }. Které měřidlo to bylo?
instrument-due = { $instrument }: kontrola měla být { ISO_DAY($on) }. Zkontrolovat.
unknown_instrument = Kniha nezná měřidlo { $instrument }. Přidat ho, nebo opravit zápis.
check_left = { $instrument }: označeno za dobré; ukazuje { $found }, s přičtením { $correction } je to { $then }, a má ukazovat { $expected }. Podívat se na všechny tři údaje; měřidlo, které je vedle, neprošlo.
instrument_failed =
    { $instrument } { $side ->
        [high] ukazuje o { $off } víc{ instrument-where }
        [low] ukazuje o { $off } míň{ instrument-where }
       *[none] – neprošlo kontrolou
    }. Každý odečet s tímto měřidlem { $since ->
        [new] od nového
       *[other] od poslední dobré kontroly { $since }
    } je nejistý: projít seznam na jeho stránce.
instrument-where =
    { $against ->
        [ice] { " " }v ledu
        [boiling] { " " }ve vroucí vodě
       *[other] { "" }
    }
glass_scale =
    { $instrument } ukazuje { BARE(TYPED($low)) }{ $high ->
        [none] { "" }
       *[other] { " " }až { BARE(TYPED($high)) }
    }; { TYPED($figure) } se na něm přečíst nedá. Které měřidlo to bylo?
ferment_gravity_rose = Rel. hustota { $gravity } je nad { $last } z { $at }; může jen klesat.
ferment_jump = Kvas { TYPED($temp) }, při minulém odečtu { TYPED($last) }: kvas se hýbe pomaleji. Podívat se znovu.
sugar_gravity = První rel. hustota { TYPED($gravity) }: cukr ovoce říká asi { TYPED($usual) }. Podívat se znovu na oboje.
close_gravity = Konečná rel. hustota { TYPED($gravity) }, při minulém odečtu { TYPED($last) }. Podívat se znovu.
close_volume = { TYPED($volume) } zápary z { $fruit } ovoce: obvyklé je asi { $usual }. Podívat se na hladinu, a hledat dodávku bez zápisu.
ferment_stuck =
    Rel. hustota { $gravity } se { $moved ->
        [none] nepohnula
       *[other] pohnula o { $moved }
    } za { $apart } a stojí { $above } nad { $end }, kde { $what ->
        [none] takové ovoce
       *[other] { $what }
    } obvykle končí: nehýbe se a není hotovo.{ $mash ->
        [none] { "" }
       *[other] { " " }Kvas { TYPED($mash) }.
    } Podívat se na teplotu, kyselinu a výživu.
ferment_ended = Tři stejné rel. hustoty { $gravity } za { $within }: kvas dokvasil. Zamluvit přístroj.
ferment_heat =
    Kvas { TYPED($temp) } je nad { TYPED($most) }: na { $what ->
        [grain] obilí
       *[fruit] ovoce
    } moc horký. Hned chladit.
ferment_temp_sense = Kvas { TYPED($temp) } by kvasinky zabil. Čteno jako Fahrenheit je to { TYPED($meant) } ({ $other }){ temp-fits }. Mělo to být tak?
ferment_temp_sense-cold = Kvas { TYPED($temp) } je na bodu mrazu nebo pod ním ({ TYPED($cold) }). Čteno jako Celsius je to { TYPED($meant) }{ temp-fits }. Mělo to být tak?
temp-fits =
    { $near ->
        [none] { "" }
       *[other] , což sedí s { TYPED($near) } z { $at }
    }
ferment_yield =
    { BARE($made) } { pure } v zápaře, { $load }: čekat se dalo asi { BARE($wanted) } { pure-sign }{ $what ->
        [none] { "" }
       *[other] { " " }podle vlastních údajů ({ $years }, { $what })
    }. To je { $side ->
        [much] hodně
       *[little] málo
    }: { $share }, kde obvyklé je { BARE($low) } až { $high }. Podívat se na koncentraci, hladinu a hmotnosti.
ferment_yield-most = { BARE($made) } { pure } v zápaře, { $load }: všechen cukr by nedal víc než { BARE($most) } { pure-sign }. Podívat se na koncentraci, hladinu a hmotnosti; přidal se cukr?
load-grain = z { $weight } obilí
load-fruit = z { $weight } ovoce s { $sugar }
wash_strength =
    { TYPED($strength) } z { $vessel } je na kvas hodně: obvyklé je { UNITS() ->
        [us] 6
       *[metric] 3
    } až { BARE($most) } { pct }. Podívat se znovu.
wash_strength-impossible = { TYPED($strength) } z { $vessel } není možné: tolik žádný kvas nedá. Podívat se znovu.
over_capacity = { $contents } se nevejde do { $vessel }, objem je { $holds }. Podívat se znovu.
over_working_level = { $contents } je nad pracovní hladinou { $vessel }, { $level }. Podívat se znovu.
contents-fruit =
    { $fruit } ovoce ({ $before ->
        [none] { "" }
       *[other] k { $before }, které tam už je,{ " " }
    }asi { $mash } kvasu)
contents-charge =
    Náplň { $charge }{ $feints ->
        [none] { "" }
       *[other] { " " }({ BARE($wash) } zápary a { BARE($feints) } úkapu a dokapu)
    }
vessel_empty = Kniha v tuto dobu v { $vessel } nic nemá. Je to správná nádoba a čas? Pokud ano, zapsat její naplnění.
source_empty = Kniha v { $vessel } nemá nic k naplnění kotle. Je to správná nádoba? Pokud ano, zapsat její naplnění.
vessel_not_empty =
    Podle knihy v { $vessel } něco je: { $held ->
        [none] { "" }
       *[other] { BARE($held) } { of-pure },{ " " }
    }{ $what }. Správný sud? Vyprázdnil se?
target_capacity = V { $vessel } pak stojí { $then } ({ target-holds }). Správná nádoba a údaje?
target_working_level = V { $vessel } pak stojí { $then } ({ target-holds }). Správná nádoba a údaje?
target-holds =
    objem { $holds }, pracovní hladina { $level }{ $has ->
        [none] { "" }
       *[other] , je v ní { $has }
    }
emptied_vessel =
    { $vessel }: { $how ->
        [dump] vyprázdněno
        [destruction] znehodnoceno
        [loss] odepsáno
        [account_move] přesunuto
        [bottling_close] stočeno
        [charge] naplněno do kotle
        [cask_fill] naplněno do sudu
        [top_up] přelito do sudu
        [chill_filter] přefiltrováno do jiné nádrže
        [gauge] nalezeno prázdné
        [stock_count] nalezeno prázdné
        [fraction_gauge] vypuštěno
       *[other] vyprázdněno
    } { $at }, { $by }; podle knihy prázdné. Bylo to odečteno předtím? Pak opravit čas. Nebo to byla jiná nádoba?
move_gain = V { $vessel } bylo podle knihy { BARE($had) }, přesunuto { BARE($moved) }: o { BARE($more) } { pure } ({ $share }) víc, než tam bylo. Přesun nic nepřidá: do { $most } je to odečet. Podívat se na hladinu, teplotu a koncentraci obou.
account_other = Podle knihy je v { $vessel } { BARE($held) } { of-pure } na účtu { $account }. Po přesunu jako { $other } tam stojí všechno jako { $other }, nejen těch { BARE($moved) }, které se přesouvají. Bylo to ohlášeno?
account_joined = { BARE($held) } { of-pure } v { $vessel } stojí podle knihy na účtu { $account }. Přibylo { BARE($moved) } jako { $other }, a všechno tam teď stojí jako { $other }. Bylo to ohlášeno?
fruit_mixed = { $net } ({ $fruit }) jde k { $lies } ({ $other }): { $share } kvasu. Destilát se pak jmenuje po obou, s podíly, a po žádném sám. Správné ovoce, správná nádrž?
opening_nothing = Kniha v { $vessel } nic nemá a nic se tu neváží ani neměří hladina. Napsat brutto, čistou hmotnost nebo objem.
opening_seen = V { $vessel } je, co tato kniha viděla začít ({ $at }): to není počáteční zásoba. Správná nádoba?
opening_again = Podle knihy je v { $vessel } už { BARE($booked) } { of-pure }; tady { BARE($said) }. Přidá se minulost, zásoba zůstává. Je-li tam teď jiné množství, změřit ho.
opening_before_fruit = Ve dřevě od { $day }, ze sklizně { $harvest }: nic neleží ve dřevě dřív než ovoce. Podívat se znovu na oboje.
opening_drift = Teď { $now }, při naplnění { $at } { $then }: na ty roky hodně. Podívat se znovu na oboje.
opening_grew = Teď { $now }, při naplnění { $then }: dřevo alkohol nepřidá. Podívat se znovu na oboje.
opening_overfilled = { TYPED($filled) } při naplnění se nevejde do { $vessel }, objem je { TYPED($holds) }. Podívat se znovu na doklady.
opening_no_tare = { TYPED($gross) } se sudem, a nikdo neřekl, kolik váží prázdný. Napsat hmotnost prázdného, nebo ji uvést u sudu.
opening_to_come = { $day } je po { $read }, kdy bylo odečteno. Podívat se na rok.
opening_long_ago =
    { $day } je { $years } { PLURAL($years) ->
        [one] rok
        [few] roky
        [many] roku
       *[other] let
    } před odečtením. Správný rok?
sheet-empty = V souboru nic není. Vzít list s řádky.
sheet-too_large = Soubor je větší než { $most } MB. Uložit jen list, jako CSV, a vzít ten.
sheet-pdf = To je PDF, ať se jmenuje jakkoli. Uložit list jako XLSX, ODS nebo CSV a vzít ten.
sheet-old = To je sešit starší verze. Uložit ho jako XLSX, ODS nebo CSV a vzít ten.
sheet-unreadable = Tuto tabulku nelze přečíst. Uložit list jako XLSX, ODS nebo CSV a vzít ten.
sheet-swollen = Sešit má po rozbalení víc než { $most } MB. Uložit ten jeden list jako CSV a vzít ten.
sheet-rows = { $rows } řádků je najednou moc: nejvýš { $most }. Vzít je po částech.
sheet-columns = { $columns } sloupců je moc: nejvýš { $most }. Vyhodit, co tu nikdo nepotřebuje.
sheet-no_heads = Žádný řádek tabulky nevypadá jako záhlaví. Dát nad každý sloupec jedno záhlaví, jako v šabloně.
sheet-no_rows = Záhlaví tu jsou, ale pod nimi žádný řádek.
sheet-merged = Záhlaví v řádku { $row } jsou sloučená. Rozdělit je, jedno nad každý sloupec.
sheet-two_columns = Dva sloupce znamenají totéž, { $label }: „{ $one }“ a „{ $other }“. Říct, který to je a co je ten druhý.
sheet-no_column =
    { PLURAL($many) ->
        [one] Chybí sloupec
        [few] Chybějí sloupce
        [many] Chybějí sloupce
       *[other] Chybějí sloupce
    }: { $labels }. Říct, který to je, nebo ho do listu přidat.
sheet-order = Dny jako { $example }: je první den, nebo měsíc? Říct to.
sheet-missing = Chybí: { $label }.
sheet-formula_cell = { $typed } je vzorec bez hodnoty. Dát tam hodnotu.
sheet-no_number = { $typed } není číslo.
sheet-bad_number = { $typed }: { $reason }
sheet-no_unit = { $typed }: tento sloupec je v { $units }.
sheet-no_choice = { $typed } není žádné z těchto: { $choices }.
sheet-no_date = { $typed } není den. Napsat jako 2022-11-21 nebo 21 Nov 2022.
sheet-no_such_day = { $month } má dnů: { $last }.
sheet-which_order = { $typed }: co je den a co měsíc?
sheet-to_come = { $day } teprve přijde.
sheet-twice = { $name } už stojí v řádku { $row }.
sheet-no_vessel = Nádoba { $name } není. Zapsat ji listem nádob, nebo tady zadat objem.
sheet-opened = Počáteční zásoba { $name } už v knize je, a jiná. Opravit ji na její stránce.
sheet-other = { $name } už v knize je: tam { $there }, tady { $here }. Změnit na jeho stránce, nebo řádek vynechat.
opening_goods_again = Kniha už má { $there } lahví { $batch }, od { $at }; těchto { $bottles } se přidá k nim. Jsou to jiné?
move_balance = V { $vessel } bylo podle knihy { BARE($had) }, do { $to } šlo { BARE($moved) }: { BARE($left) } { pure } ({ $share }) zůstalo. Obvyklé je do { $most }. Je to v potrubí, nebo pořád v nádobě? Změřit.
move_balance-off = V { $vessel } bylo podle knihy { BARE($had) }, z podniku šlo { BARE($moved) }: { BARE($left) } { pure } ({ $share }) zůstalo. Obvyklé je do { $most }. Je to v potrubí, nebo pořád v nádobě? Změřit.
dip_sum =
    { $dipped } v { $vessel }, podle knihy { $booked }: { $off } { $side ->
        [above] nad
       *[below] pod
    } výpočtem ({ $share }). Podívat se na hladinu, pak hledat přesun bez zápisu.
dip_sum-dump = { $dipped } podle hladiny v { $vessel }, { $sum } podle součtu toho, co šlo dovnitř: rozdíl { $off }. Podívat se na hladinu a na obě hmotnosti.
source_strength = Skutečná koncentrace { BARE($now) } { pct }, v { $vessel } podle knihy { BARE($held) } { pct }: rozdíl { APART($off) } { points }. Je to tato nádoba? Podívat se znovu, a hledat vodu nebo přesun bez zápisu.
water_off = { TYPED($water) } vody dá { BARE($strength) } { pct }, ne { BARE($target) } { pct }: na to je třeba { $needed }. Podívat se na hmotnost.
blend_sum =
    Dovnitř { BARE($went_in) }, změřeno { BARE($measured) }: o { BARE($off) } { pure } ({ $share }) { $side ->
        [more] víc
       *[less] míň
    }, než šlo do kupáže. Obvyklé je { $usual }. Je promícháno? Přečíst znovu.
row_gap = { $label } stojí v každém z posledních { $lines } řádků, v tomto ne. Napsat, nebo říct, že se neodečetlo.
plates_moved = Patra { $plates }, předtím { BARE($last) } ({ $at }); od té doby žádné zapojení ani odpojení v zápisech. Podívat se znovu, nebo zapsat změnu.
strength_row = Skutečná koncentrace { BARE($now) } { pct }; podle předchozích odečtů by byla { BARE($low) } až { BARE($high) } { pct }, a páry { TYPED($vapour) } jsou k té. Podívat se na lihoměr a teplotu.
ferment_row = Rel. hustota { TYPED($gravity) }: klesala o { BARE($before) } za den, a teď skoro nic. Je to tento odečet, nebo ten z minulého řádku?
ferment_row-again = Rel. hustota { TYPED($gravity) }: klesala o { BARE($before) } za den a zpomalila, a teď { BARE($fell) } za den. Podívat se znovu.
ferment_jump-row = Kvas { TYPED($temp) }, medián posledních { $readings } odečtů { TYPED($usual) }. Podívat se znovu.
charge_low = { $charge } v { $still }, objem je { $holds }: tak málo se vyvaří do sucha. Podívat se na hladinu.
charge_unlike = Zápara { TYPED($wash) }, medián dřívějších náplní tohoto přístroje { TYPED($usual) }. Podívat se znovu.
feints_unread = Úkap a dokap z { $vessel } jsou uvedeny, ale ne kolik. Napsat objem a koncentraci.
feints_part = { TYPED($feints) } úkapu a dokapu, a v { $vessel } stojí podle knihy { TYPED($there) }. Šlo dovnitř všechno?
move_part = { BARE($moved) } z { BARE($had) } { of-pure } v { $vessel } odchází a { BARE($left) } { pure } zůstává. Šlo všechno? Podívat se na údaj a jednotku.
account_same =
    Uložení, které zůstává na účtu { $account ->
        [production] výroba
        [storage] sklad
       *[processing] zpracování
    }, žádné není. Na který účet to jde?
account_habit = Na účet { $account }; co odtud šlo dřív, šlo na { $usual }. Který to je?
moved_elsewhere = Do { $vessel }; co odtud šlo dřív, šlo do { $usual }, kde je místo. Která nádrž to je?
opening_weak = { BARE($now) } { pct } v sudu: pod { BARE($least) } { pct } se nic nestáčí. Podívat se na lihoměr a jednotku.
receiver_other = { $vessel } je otevřeno pro { $part }; náplň má pro to { $planned }. Co je otevřené teď?
receiver_no_cut = { $vessel } je uvedeno jako teď otevřené, ale { $event } není řez. Byl to řez?
receiver_twice = { $vessel } pro { $part } i { $other } jednoho pálení. Které jímadlo to je?
receiver_role = { $vessel } pro { $part }; v minulém pálení mělo { $other }. Které jímadlo to je?
target_moved = Cíl { TYPED($target) }; voda z { $at } byla na { TYPED($last) }. Co platí?
target_planned =
    Cíl { TYPED($target) }, pod { TYPED($planned) }, jak je v plánu { $plan ->
        [none] kupáže
       *[other] { $plan }
    }. Podívat se znovu.
label_planned =
    Stočeno při { TYPED($label) }, a v plánu { $plan ->
        [none] kupáže
       *[other] { $plan }
    } je { TYPED($planned) }. Podívat se na oboje.
dump_planned =
    { $vessel } není v plánu{ $plan ->
        [none] { "" }
       *[other] { " " }{ $plan }
    } pro { $tank }. Je to tento sud a tato nádrž?
dump_planned-amount =
    { $net } vyprázdněno, v plánu{ $plan ->
        [none] { "" }
       *[other] { " " }{ $plan }
    } { $wanted }. Podívat se na obě hmotnosti.
vat_joins = V { $vessel } je { BARE($held) } { of-pure }, které plán nejmenuje. Je to tato nádrž?
vat_sum = Odběry a { TYPED($water) } vody dají { BARE($strength) } { pct }, ne { TYPED($target) }. Podívat se na oboje.
vat_full = Odběry a voda dají { $then }, a { $vessel } má objem { $holds }. Je to tato nádrž?
cut_planned = Jádro odříznuto při { BARE($now) } { pct }, v plánu { BARE($planned) } { pct }. Rozhoduje nos: napsat proč, nebo se podívat na lihoměr.
wash_open = Kvas v { $vessel } není uzavřen: zápara není změřena. Nejdřív uzavřít, s časem posledního odečtu.
water_unread = Do { $vessel } šla voda ({ $at }) a nikdo nezměřil, co to dalo. Zapsat lihoměr a hladinu po odležení.
bottling_ungauged = { $vessel } není změřena pro stáčení: dávku a etiketu nikdo neuvedl. Nejdřív změřit. Nebo je to jiná nádrž?
fraction_left =
    Změřeno: { $fraction }, ne však { $missing } { $run ->
        [none] z tohoto pálení
       *[other] z { $run }
    }. Změřit také, s časem.
fraction_left-moved =
    { $vessel }: vyprázdněno, a bez měření je { $missing } { $run ->
        [none] z pálení
       *[other] z { $run }
    }. Změřit také.
run_not_ended =
    { $run ->
        [none] Pálení
       *[other] { $run }
    } je změřeno do konce, ale konec není zapsán. Zapsat ho s časem.
cleaned_full = { $vessel }: zapsáno čištění, a kniha tam má { $litres }. Je to tato nádoba, nebo chybí zápis některého kroku?
added_again = Totéž množství ({ $what }) z téže šarže šlo do { $vessel } už dřív ({ $at }). Je to tato nádoba, nebo dvakrát zapsáno?
recask_rest = Vyprázdněno do jiného sudu, a { BARE($left) } { of-pure } z { $vessel } v něm není; dřevo drží { BARE($kept) }. Je to dolití, nebo ještě něco přijde?
lab_far = { $substance } { $found }: laboratoře v lihu nacházejí { BARE($low) } až { $high }. Podívat se na čárku a na řádek.
stillage_strong = Výpalky { BARE($now) } { pct }, nad { BARE($most) } { pct }: je vypáleno do konce? Podívat se na údaj a na to, která část to je.
receiver_full = V { $vessel } je { $held } a místo má na { $room }; dříve do něj přišlo { $usual } jádra. Chybí zápis přesunu?
counted_again = Napočítáno { $counted } už bylo: { $at }. Je to jeden počet, zapsaný dvakrát?
removed_otherwise = Pro { $to_whom }: { $why }. Minule tam šlo: { $usual }. Co platí?
document_again = Doklad { $document } stojí u zboží, které už odešlo. Podívat se na číslo.
run_still_open =
    { $still } už má otevřené { $run ->
        [none] pálení
       *[other] { $run }
    } od { $since }. Nejdřív to ukončit, nebo škrtnout tuto náplň.
run_not_open = Na { $still } v tuto dobu není otevřené pálení. Zapsat náplň s časem, a sedne to.
run_receiver_same = { $receiver } bylo otevřené už před tímto řezem. Které jímadlo je otevřené teď? Opravit tento, nebo předchozí zápis.
run_order-no_hearts_cut = Pálení končí, ale řez jádra není zapsán; jádro začalo { $began }. Zapsat řez s časem.
run_order-opened = Kotel je otevřen, ale pálení neukončeno. Ukončit ho s časem.
run_order-again = { CAPITAL($event) }: zapsáno už { $at }. Co platí?
run_order-late = { CAPITAL($event) } přichází po: { $other }, { $at }. Podívat se na časy.
run_order-no_heads_cut = Jádro je odříznuto, ale řez úkapu není zapsán. Zapsat ho s časem a jímadlem.
strength_slope = Skutečná koncentrace { BARE($now) } { pct } je nad { BARE($last) } { pct } z { $at }; po řezu úkapu může jen klesat, pokud se nezměnila patra nebo chlazení.
strength_impossible = Skutečná koncentrace { BARE($now) } { pct } není možná: nad { $most } není nic. Podívat se znovu.
strength_class =
    Skutečná koncentrace { BARE($now) } { pct }, { $what ->
        [none] ovoce
       *[other] { $what }
    }: { $limit ->
        [brandy_us_pct]
            nad { UNITS() ->
                [us] { APART($most) } proof
               *[metric] { BARE($most) } % (190 proof)
            } to v USA není brandy (27 CFR 5.145)
        [grain_us_pct]
            nad { UNITS() ->
                [us] { APART($most) } proof
               *[metric] { BARE($most) } % (160 proof)
            } to v USA není žitná whisky (27 CFR 5.143)
       *[fruit_class_pct] od { BARE($most) } { pct } to v EU není ovocný destilát (nařízení 2019/787)
    }. Podívat se znovu.
distillate_warm = Líh teče { TYPED($temp) }, nad { TYPED($warm) }. Hned víc vody do chladiče a ubrat topení, dokud nepoteče chladný: teplý líh dává hořlavé páry.
vapour_strength = Páry { TYPED($vapour) } a líh { BARE($strength) } { pct } k sobě nejdou: při té koncentraci je obvyklé asi { TYPED($usual) }. Podívat se znovu na oboje.
fraction_receiver = { $vessel } pro { $fraction }: podle řezů tohoto pálení to šlo do { $opened }. Co platí?
fraction_uncut =
    Lutr z pálení s řezy{ $run ->
        [none] { "" }
       *[other] , { $run }
    }. Úkap, jádro, nebo dokap?
fraction_strength = Frakce { $fraction } má { BARE($now) } { pct }, u lihového měřidla v průměru { BARE($ran) } { pct }. Podívat se na lihoměr, teplotu a zbytek.
glass_habit = { $strength } při { $temp } je zapsáno jako opravené, a v { $vessel } se dosud četlo lihoměrem. Je-li to údaj lihoměru, skutečná je { $true }. Co platí?
not_whole = { $label } { $typed }: počítá se v celých. Podívat se znovu.
unit_odd = { $label }: zapsáno v { $typed }, vedle { $other } v témže zápisu. Která jednotka se četla?
late-same_hour = Zapsáno { $after } po odečtení, ve stejnou hodinu. Podívat se na den.
flow_jump = Průtok { $flow }, medián posledních { $readings } odečtů { $usual }. Podívat se znovu, nebo zapsat, co se změnilo.
run_order-no_first_drop = Úkap je odříznut, ale první kapka není zapsána, jako byla v minulém pálení. Zapsat ji s časem.
gauged_empty = Kniha v { $vessel } nic nemá, a změřeno je tam { BARE($pure) } { of-pure }. Je to správná nádoba? Pokud ano, zapsat její naplnění.
distilled_off = Vypáleno při { $said }, a v jímadle { BARE($now) } { pct }: stojí tam tak silné, jak vyšlo z přístroje. Podívat se na oboje.
lab_off = Laboratoř našla { $found }, kniha má v { $vessel } { BARE($held) } { pct }. Podívat se na údaj a na to, ze které nádoby vzorek je.
dose_off = { $amount } ({ $what }) na { $mash } kvasu; na tolik je obvyklé { BARE($low) } až { $high }. Podívat se na údaj a jednotku.
tare_share = Tára je { $share } z brutta, u minulé dávky byla { $usual }. Podívat se na oboje.
tare_share-first = Tára je { $share } z brutta, nad { $most }. Podívat se na oboje.
sugar_unlike = Cukr { $sugar }, v minulé dodávce téhož ovoce { $last }. Podívat se znovu.
place_from = { $vessel } se přesouvá z { $place }; podle knihy stojí na { $booked }. Je to tato nádoba?
receiver_held = V { $vessel } je podle knihy { BARE($held) } { of-pure }; dosud bylo před každým pálením prázdné. Zapsat, kam to šlo.
remnant_off = { $remnant } před jímáním, podle knihy { $booked } v { $vessel }. Podívat se znovu, a hledat přesun bez zápisu.
remnant_off-strength = Zbytek { BARE($now) } { pct }, podle knihy v { $vessel } { BARE($held) } { pct }. Podívat se znovu.
run_ungauged =
    Z minulého pálení{ $run ->
        [none] { "" }
       *[other] , { $run },
    } ještě bez měření: { $fraction }; { BARE($left) } { of-pure } by platilo za ztrátu. Nejdřív změřit.
run_balance = { run-sums } chybí.{ run-stillage } Obvyklé tu je: { BARE($low) } až { $high }.
run_balance-gain = { run-sums } víc, než šlo dovnitř.{ run-stillage } Podívat se na koncentraci zápary, hladiny a zbytky.
strip_balance = { run-sums } chybí.{ run-stillage } Lutr nese { $carried } ze zápary; obvyklé je { BARE($low) } až { $high }.
strip_balance-gain = { run-sums } víc, než šlo dovnitř.{ run-stillage } Podívat se na koncentraci zápary, hladiny a zbytky.
run-sums = Ven { BARE($out) }, dovnitř { BARE($in) }: { BARE($off) } { pure } ({ $share })
run-stillage =
    { $stillage ->
        [read] { "" }
       *[other] { " " }Výpalky brány jako { BARE($stillage) } { pct }.
    }
run_drift = { $now } z náplně chybí, medián { $runs } dřívějších pálení je { $middle }: nad { $high }, pálení za pálením. Podívat se na chladič, spoje a koncentraci zápary.
fraction_again =
    V této nádobě už měřeno { $at }: { $fraction } { $run ->
        [none] z tohoto pálení
       *[other] z { $run }
    }, { BARE($pure) } { pure }. Je to totéž měření, nebo jiné pálení?
fraction_twice =
    Úkap a dokap z { $vessel } už šly do { $run ->
        [none] pálení z { $at }
       *[other] { $run }
    }. Které pálení je mělo?
fraction_twice-short = { BARE($feints) } { pure } úkapu a dokapu z { $vessel }, podle knihy v ní { BARE($booked) } { pure-sign }. Mělo je jiné pálení, nebo měření teprve čeká na zápis?
flow_sum = Průtok krát minuty dá { $flowed } ({ $fraction }), v jímadle { $got }: o { $off } { more-or-less }, smí být { $most }. Zapsal se řez pozdě, nebo se jímadlo přepnulo pozdě?
dip_flow = Průtok krát minuty dá od otevření jímadla { $flowed }, hladina { $dipped }: o { $off } { more-or-less }, smí být { $most }. Je otevřené jiné jímadlo, nebo byl řez v jinou minutu?
more-or-less =
    { $side ->
        [more] víc
       *[less] míň
    }
hearts_share =
    Jádro je { $now } z náplně; { BARE($low) } až { $high } v posledních { $runs } páleních { $what ->
        [none] tohoto přístroje
       *[other] ({ $what })
    }. Stojí za pohled na řezy.
cask_grew = Čistý líh { BARE($now) } { pure-sign } ({ BARE($strength) } { pct }) je nad { BARE($last) } { pure-sign } ({ BARE($last_strength) } { pct }) z { $at }{ moved-since }; sud nemůže získat.
cask_grew-gross = Brutto { TYPED($gross) } je nad { TYPED($last) } z { $at }; může jen klesat, pokud se sud nedolil.
cask_grew-emptied = { BARE($now) } { pure } v sudu před vyprázdněním, podle knihy { BARE($booked) } { pure-sign } od { $since }; sud nemůže získat. Podívat se na hmotnost a koncentraci.
moved-since =
    { $way ->
        [added] { " " }s přidanými { BARE($moved) } { pure-sign } od té doby
        [drawn] { " " }s odebranými { BARE($moved) } { pure-sign } od té doby
       *[none] { "" }
    }
cask_strength_slip =
    Koncentrace { BARE($now) } { pct } je o { APART($off) } { points } { $side ->
        [below] pod
       *[above] nad
    } { BARE($last) } { pct } z { $at }; obvyklé je míň než { UNITS() ->
        [us] 2 stupně proof
       *[metric] bod
    } za rok.{ $hint ->
        [none] { "" }
       *[other] { " " }{ $hint }
    }
slip-glass = Jako údaj lihoměru při { TYPED($temp) } je to { BARE($true) } { pct } skutečné.
cask_loss =
    Ztráta { $rate } za rok, od: { $since }{ $whole ->
        [none] { "" }
       *[other] { " " }({ $whole } za rok od naplnění)
    }. Tehdy { BARE($then) } { of-pure }{ moved-since }, teď { BARE($now) } { pure-sign }. { $others } { $end }
lost-leak = Koncentrace je obvyklá ({ APART($drift) } { points } za rok): teče? Podívat se na obruče, dna, zátku a podlahu.
lost-odd_too = I koncentrace je divná: je to správný sud? Zvážit a přečíst znovu.
lost-by_size =
    Sudy této velikosti ztrácejí { $size ->
        [small] 5 až 8
       *[large] 2 až 4
    } %.
lost-by_others = Z { $casks } nejpodobnějších sudů většina ztratila { BARE($low) } až { $high }.
lost-by_all = Z { $casks } nejpodobnějších sudů většina ztratila asi { $lost }.
cask_life = Podle knihy { BARE($booked) } (od: { $since }), v sudu teď { BARE($now) }: { BARE($gone) } { pure } ({ $share }) je pryč. Teče? Podívat se na podlahu a dužiny; zapsat jako ztrátu.
cask_drift =
    Koncentrace šla z { BARE($last) } na { BARE($now) } { pct } ({ APART($drift) } { points } za rok); na { $place ->
        [damp] vlhkém místě (vlhkost { $humidity }) líh slábne
       *[dry] suchém místě (vlhkost { $humidity }) líh sílí
    }. Správný sud, správné místo?
fill_level =
    { $litres } v { $cask }, { $share } jeho objemu. { $casks ->
        [none] Sud se plní aspoň na { $usual }.
       *[other] { $casks } nejpodobnějších sudů bylo plněno asi na { $usual }.
    } Podívat se na váhu a jednotku, a zda je to tento sud.
cask_earlier = { BARE($odd) } { pct } a { BARE($odd_pure) } { of-pure } z { $at } stojí samy: předtím { BARE($before) } a { BARE($before_pure) }, teď { BARE($now) } a { BARE($now_pure) }. Podívat se na ten zápis; tento jde s ostatními.
gauge_earlier = { BARE($odd) } { pct } ({ $at }) stojí samo: předtím { BARE($before) } a teď { BARE($now) }. Podívat se na onen zápis; tento jde dohromady se všemi ostatními.
cask_unlike =
    Koncentrace je o { APART($off) } { points } { $side ->
        [below] pod
       *[above] nad
    } { BARE($last) } { pct } z { $at }; z { $casks } nejpodobnějších sudů se většina pohnula o { APART($usual) } za rok. Přečíst znovu.
tare_off = { $cask } váží prázdný { TYPED($tare) }; uvedeno je { TYPED($listed) }. Podívat se na váhu, a zda je to tento sud.
soakage = Prázdný { TYPED($empty) }, stará tára { TYPED($tare) }: drží { $kept }, kde sud této velikosti drží { BARE($low) } až { $high }. Je vykapaný? Podívat se na táru.
soakage-light = Prázdný { TYPED($empty) } je pod starou tárou { TYPED($tare) }; dřevo po lihu váží o { BARE($low) } až { $high } víc. Váha nebo tára je špatně.
places_swapped = { $vessel } stojí na { $place } a { $other } na { $booked }: vyměnily si místo, nic nechybí. Je-li to tak, říct, že platí, a kniha to převezme.
place_differs =
    { $vessel }: nalezeno na { $place }; { $booked ->
        [none] kniha místo nemá
       *[other] kniha má { $booked }
    }. Je-li tam, říct, že platí. Spočítat i to, co tam stojí.
cask_missing =
    { $vessel }: nenalezeno{ $booked ->
        [none] { "" }
       *[other] , podle knihy { BARE($booked) } { of-pure }
    }. Hned hledat. Je-li pryč, zapsat ztrátu a ohlásit ji.
not_in_book =
    Není v knize: „{ $label }“{ $place ->
        [none] { "" }
       *[other] { " " }na { $place }
    }. Zvážit, najít doklady a přidat; hledat nádobu, kterou kniha má a nikdo nenašel.
reduce_target =
    { BARE($now) } { pct } změřeno, { BARE($target) } { pct } žádáno: o { APART($off) } { points } { $side ->
        [strong] moc silné.{ reduce-water }
       *[weak] moc slabé. Musí přijít líh; voda ven nejde.
    }{ $balance ->
        [none] { "" }
       *[other] { " " }{ $balance }
    }
reduce-water =
    { $water ->
        [none] { "" }
       *[other] { " " }Hmotností ještě { $water } vody.
    }
reduced-dip = { reduced-has }: podívat se na hladinu.
reduced-no_loss = { reduced-has }: žádná ztráta.
reduced-shrinks = { $before } a { $water } vody dají { $dip }, ne { BARE($sum) }: směs se smrští. { reduced-has }: žádná ztráta.
reduced-has = Čistý líh { BARE($pure) } { pure-sign }, podle knihy { BARE($booked) } { pure-sign }
contraction_forgotten = { $water } vody by chtěly samotné objemy. Objemy se nesčítají: bude tam { $volume }, ne { BARE($sum) }, při { BARE($strength) } { pct }. Na { BARE($target) } { pct } je třeba { $needed }: ještě { $more }. Čistý líh zůstává.
filter_loss = { filter-sums } zadržel filtr a potrubí. Obvyklé: 0,3 až 1 %. Podívat se na desky, zbytek a obě hladiny.
filter_gain = { filter-sums } víc, než šlo dovnitř. Filtr líh nedělá: podívat se na obě hladiny a koncentrace.
filter-sums = Předtím { BARE($before) }, potom { BARE($after) }: { BARE($off) } { pure } ({ $share })
filter_before = { BARE($before) } { pure } v { $vessel } před filtrem, podle knihy { BARE($booked) } { pure-sign }. Podívat se na hladinu předtím, pak hledat přesun bez zápisu.
bottling_balance = { bottling-sums } chybí. Obvyklé: 0,3 až 1 %. Spočítat láhve a kartony znovu.
bottling_gain = { bottling-sums } víc, než nádrž měla. Podívat se na počet, objem láhve a měření nádrže.
bottling-sums = Nádrž { BARE($tank) }, láhve { BARE($bottles) }, zbytek a linka { BARE($line) }: { BARE($off) } { pure } ({ $share })
label_strength =
    Nádrž má { BARE($tank) } { pct }, etiketa říká { BARE($label) } { pct }: o { APART($off) } { points } { $side ->
        [above] nad
       *[below] pod
    }. Při koncentraci z etikety by láhve měly { BARE($by_label) } { pure }, podle měření nádrže { BARE($by_tank) } { pure-sign }.
label_strength-before = { BARE($tank) } { pct } v nádrži, { BARE($label) } { pct } na etiketě: rozdíl { APART($off) } { points }, smí být { APART($most) }. Před stáčením opravit koncentraci nebo etiketu.
label_strength-bottles = { BARE($found) } { pct } v lahvích, { BARE($label) } { pct } na etiketě. Zastavit linku, promíchat nádrž a přečíst znovu.
fill_off-least = { $found } v nejméně plné; při tomto objemu je nejméně { $least } ({ fill-law }). { fill-set }
fill_off-most = { $found } v nejplnější; při tomto objemu je nejvíc { $most } ({ fill-law }). { fill-set }
fill_mean = { $mean } v průměru: šarže nesmí být v průměru pod etiketou (směrnice 76/211/EHS, po paměti). { fill-set }
fill-law =
    { $place ->
        [US] 27 CFR 19.356
       *[EU] směrnice 76/211/EHS, po paměti
    }
fill-set = Seřídit plničku a podívat se na láhve od poslední kontroly.
case_count =
    Kartonů { $cases } po { $per_case } je { $in_cases } lahví, s archivem ({ $library }) je to { $together }; dobrých se napočítalo { $good }: o { $off } { $side ->
        [many] víc
       *[few] míň
    }. Spočítat kartony a láhve znovu.
bottled_low = { BARE($label) } { pct } na etiketě. { $law } { law-caution }
barrelled_high = { BARE($strength) } { pct } do sudu. { $law } { law-caution }
law-caution = Poznámka, ne právní rada: podívat se do platného znění a zeptat se toho, kdo ho zná.
law-bottled-at_least = { law-subject }: stáčí se při { law-strength } nebo víc{ law-source }
law-distilled-below = { law-subject }: destiluje se pod { law-strength }{ law-source }
law-distilled-at_most = { law-subject }: destiluje se při { law-strength } nebo míň{ law-source }
law-distilled-at_least = { law-subject }: destiluje se při { law-strength } nebo víc{ law-source }
law-barrelled-at_most = { law-subject }: do sudu jde při { law-strength } nebo míň{ law-source }
law-aged = { law-subject }: ve dřevě { $value } nebo víc{ law-source }
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
       *[memory] , po paměti
    }).
law-spirit-geist = ovocný průtahový destilát
law-spirit-beer_spirit = pivní destilát
law-spirit-brandy = brandy
law-spirit-cider_or_perry_spirit = destilát z cidru nebo perry
law-spirit-fruit_marc_spirit = ovocná matolinovice
law-spirit-fruit_spirit = ovocný destilát
law-spirit-grape_brandy = vinná brandy
law-spirit-grape_marc_spirit = matolinovice
law-spirit-honey_spirit = medový destilát
law-spirit-lees_spirit = destilát z kalů
law-spirit-neutral_spirits = neutrální líh
law-spirit-raisin_spirit = hrozinkový destilát
law-spirit-rye_whisky = žitná whisky
law-spirit-spirit_drink = lihovina
law-spirit-spirit_of_macerated_fruit = destilát z macerovaného ovoce
law-spirit-straight_whisky = straight whisky
law-spirit-whisky = whisky
law-spirit-wine_spirit = vínovice
law-note-charred_oak =
    { UNITS() ->
        [us] 62,5 % vol
       *[metric] 125 proof
    }; v zuhelněném novém dubu
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
law-note-before_caramel = než smí barvu upravit karamel
law-note-casks_700 = v sudech nejvýš 700 L
law-note-small_oak = v dubových sudech pod 1000 L
law-note-large_oak = v dubových nádobách od 1000 L
law-note-immature_brandy = v dubu; mladší je nezralá brandy. Jiné ovocné brandy tam dolní mez nemají
law-note-straight = aby se smělo říkat straight
lab_over =
    { lab-result } je { $sense ->
        [at_least] pod
       *[at_most] nad
    }: { lab-law }. { $sort ->
        [target] Cíl není mez: zeptat se toho, kdo zná zákon, co žádá.
       *[other] Podle toho nestáčet ani neprodávat: zeptat se laboratoře a toho, kdo zná zákon.
    } { lab-caution }
lab_not_safely =
    { lab-result } není bezpečně { $sense ->
        [at_least] nad: { lab-law }; jiná laboratoř může najít jen { BARE($at_worst) }
       *[at_most] pod: { lab-law }; jiná laboratoř může najít až { BARE($at_worst) }
    }. Dát znovu vyšetřit, než se na to spolehnete. { lab-caution }
lab_under =
    { lab-result } je { $sense ->
        [at_least] nad: { lab-law }; jiná laboratoř může najít jen { BARE($at_worst) }
       *[at_most] pod: { lab-law }; jiná laboratoř může najít až { BARE($at_worst) }
    }. Mluví jen o vzorku.
lab_strength = { $substance }: tištěno na litr nebo kilogram nápoje; mez je na čistý líh. Napsat skutečnou koncentraci z protokolu.
lab-result =
    { $below ->
        [yes] { $substance }, nenalezeno metodou, která začíná na { $found },
       *[no] { $substance } { $found }
    }
lab-law =
    { $sort ->
        [target] cíl
        [action] zásahová hodnota
       *[limit] mez
    } { BARE($limit) }, { $called }, { $place } ({ $source })
lab-caution = Rozhoduje protokol akreditované laboratoře a místní zákon, ne tato kniha.
unknown_bottling =
    Žádné stáčení v knize se nejmenuje { $batch }{ $case ->
        [none] { "" }
       *[other] { " " }s kartonem { $case }
    }. Podívat se na označení šarže, nebo nejdřív odevzdat uzavření stáčení.
unknown_bottling-several = Na { $batch } slyší víc stáčení: { $bottlings }. Napsat i první karton, jak stojí na kartonu.
bottling-named =
    { $bottling ->
        [none] Stáčení
       *[other] { $bottling }
    }
more_than_bottled = { bottling-named }: stočeno { $good }, pryč { $gone }, podle knihy na skladě { $on_hand }; { $now } je teď o { $more } víc, než jich je. Spočítat je a hledat výdej zapsaný dvakrát.
more_than_bottled-back = { bottling-named }: stočeno { $good }, podle knihy na skladě { $on_hand }; { $back } se vrátit nemůže. Je to tato dávka?
other_case = Karton { $case } do tohoto stáčení nepatří: má { $first } až { $last }. Podívat se na karton znovu.
case_numbers = Kartonů { $first } až { $last } je { $cases }; zapsáno je { $typed }. Co platí?
case_gone = Karton { $case } už podle knihy odešel. Zapsal se výdej dvakrát? Jinak se podívat na čísla.
case_gone-several = Kartony { $first } až { $last } už podle knihy odešly. Zapsal se výdej dvakrát? Jinak se podívat na čísla.
bottles_short = Podle knihy { $on_hand } lahví, napočítáno { $counted }: chybí { $off }. Spočítat znovu, pak hledat výdej bez zápisu. Nevysvětlený schodek lahví se v USA daní (27 CFR 19.465).
bottles_over = Podle knihy { $on_hand } lahví, napočítáno { $counted }: o { $off } víc. Spočítat znovu, pak hledat výdej bez zápisu.
transit_loss = { transit-sums } ztráta cestou. Nad { $most } se hlásí (27 CFR 19.462). Podívat se na závěry a změřit znovu, pak ohlásit.
transit_gain = { transit-sums } víc, než říkají doklady. Podívat se na koncentraci, teplotu a co bylo v nádobě předtím.
transit-sums = Odesláno { BARE($sent) }, přijato { BARE($received) }: { BARE($off) } { pure } ({ $share })
goods_short = { $short } z { $bottles } lahví chybělo nebo bylo rozbito. Spočítat znovu, poznamenat do dokladů a říct odesílateli: z chybějících může být splatná daň.
seals_broken = Závěry byly porušené. Držet náklad zvlášť, změřit ho a hned říct odesílateli a úřadu.
vat_draws = „{ $part }“ nejmenuje nádobu s hmotností. Napsat značku a kilogramy, třeba C001-Z 153.7.
vat_vessel = Nádoba { $mark } v knize není. Podívat se na značku znovu.
vat_short = { $planned } v plánu z { $vessel }, podle knihy { $booked }. Naplánovat znovu.
tasting_named = Degustace { $name } už v knize je. Dát této jiný název.
tasting_part = „{ $part }“ nelze přečíst. Napsat to, jak ukazuje nápověda u pole.
tasting_vessel = Nádoba { $mark } v knize není, a je vzorkem této degustace. Podívat se na značku znovu.
tasting_heads = V { $vessel } je úkap. Úkap se nikdy nechutná: vyřadit ho a vylít, co je nalito.
tasting_glasses = { $person } má sadu s jiným počtem sklenek než { $wanted }. Vylosovat kódy znovu.
tasting_unknown = Kniha nemá degustaci { $name }. Podívat se na název na servírovacím listu.
tasting_after = Degustace { $name } byla otevřena před touto odpovědí, neplatí tedy. Šly hodiny telefonu dobře?
tasting_taster = { $person } není degustátor v { $name }, neplatí to tedy. Kdo chutnal?
tasting_set = { $person } nemá sadu { $set }, neplatí to tedy. Podívat se na servírovací list.
tasting_twice = { $person }: na sadu { $set } už odpověď je. Platí první odpověď.
tasting_code = Sklenka { $code } v této sadě nebyla, odpověď tedy neplatí. Podívat se na sklenky.
tasting_order = Pořadí jmenuje každou z { $glasses } sklenek jednou. Toto ne, neplatí tedy.
tasting_again = Degustace { $name } už byla otevřena. Platí první otevření.
tasting_seal = To není klíč, kterým byla zapečetěna { $name }. Otevřít ji z její stránky v kanceláři.
tasting_early = Otevřeno, když bylo { $came } z { $sets } odpovědí. Ostatní se nepočítají.
tasting_cited = Otevřená degustace { $name } v knize není. Podívat se na název, nebo ji nejdřív otevřít.
floor-back = Zpět
floor-check_bottles = Kontrola lahví
floor-now = teď
floor-one_less = O jednu míň
floor-glass = Lihoměr
floor-spirit = Líh
floor-ferments = Kvasy
floor-readings_round = Obchůzka odečtů
floor-regauge_round = Obchůzka přeměření
floor-tap_it_in_the = klepnout na ni v seznamu
floor-all_places = Všechna místa
floor-scan_the_next = Skenovat další
floor-skip = Přeskočit
floor-the_slate = Tabulka
floor-as_casks_like_it = jako podobné sudy
floor-stock_count = Inventura zásob
floor-gravity = Rel. hustota
floor-cases_to = kartony { $case_from } až { $case_to }
floor-another = jiné
floor-bottles = { $bottles } lahví
floor-not_in_the_book = Není v knize
floor-volume = Objem
floor-scan = Skenovat
floor-off = vypnuto
floor-on = zapnuto
floor-true_strength = Skutečná koncentrace
floor-best = nejlepší
floor-waits_on_this_phone = , čeká v tomto telefonu
floor-read = odečteno
floor-heads = úkap { $heads_l }
floor-pinfirst-it_goes_into_the = Jde na účty
floor-checks-about_as_many_over = zhruba stejně nad jako pod (27 CFR 19.356)
floor-checks-100_on_average_76 = 100 v průměru (76/211/EHS, po paměti)
floor-line-bottling = Stáčení
floor-line-the_line = linka
floor-line-fill_of_the_label = Plnění, % etikety
floor-line-label = etiketa
floor-line-least = nejméně
floor-line-most = nejvíc
floor-line-strength = Koncentrace, { $unit }
floor-line-close_the_bottling = Uzavřít stáčení
floor-line-outside_what_may_be = Mimo dovolené: seřídit plničku a podívat se na láhve od poslední kontroly.
floor-view-the_line = Linka
floor-view-fill_average = Plnění, průměr
floor-view-of_the_label_last = % etikety, poslední { $last }
floor-view-last_strength = Poslední koncentrace
floor-view-average = průměr { $mean } { $sign }
floor-view-tank_fills = Nádrž vydá
floor-view-of_at_most = po { $size_l }, nejvýš
floor-view-checks_over_under =
    { PLURAL($count) ->
        [one] { $count } kontrola
        [few] { $count } kontroly
        [many] { $count } kontrol
       *[other] { $count } kontrol
    }{ $spread }; { $over } nad, { $under } pod etiketou.
floor-view-spread = , rozptyl { $spread }
floor-view-next_check = Další kontrola
floor-view-the_first_take_bottles = První. Vzít z linky { $count } lahví, zvážit je, změřit koncentraci.
floor-view-at_bottle = u láhve { $at_bottle }
floor-view-as_the_house_wants = jak to lihovar chce
floor-view-bottles_filled = naplněných lahví
floor-view-late = pozdě
floor-view-next_check_in = Další kontrola za
floor-view-the_next_check_was = Další kontrola měla být { $due_at }
floor-view-next_check_2 = Další kontrola { $due_at }
floor-view-about = asi
floor-view-or = nebo
floor-view-every_min = , každých { $every_min } min
floor-view-line = Linka
floor-view-type_the_bottles_filled = Zapsat počet naplněných lahví při dvou kontrolách, a je tu rychlost.
floor-view-filled_the_next_count = Naplněno { $filled }. Další počet dá rychlost.
floor-view-an_hour = za hodinu
floor-view-ends_about = Konec asi
floor-view-to = , { $soonest } až { $latest }
floor-view-the_tank_is_through = Nádrž je podle počtu hotová.
floor-view-of_counted = napočítáno { $filled } z { $bottles }{ $by }
floor-view-about_by_now = , teď asi { $expected }
floor-view-cases_packed = Zabalené kartony
floor-view-one_more_than = O jeden víc než
floor-view-bottles = { $per_case } lahví
floor-view-bottles_in_a_case = Lahví v kartonu, kartony se pak počítají klepnutím
floor-view-each_bottle_full = Každá láhev plná na { $low } %{ $high }, { $words }.{ " " }
floor-view-or_more = { " " }nebo víc
floor-view-to_2 = { " " }až { $high }
floor-view-strength_to_for_a = Koncentrace { $low } až { $high } pro etiketu { $label_pct }.
floor-view-by_the_cases = { $so_far } podle kartonů
floor-view-empty_bottle_with_closure = Prázdná láhev s uzávěrem, g
floor-view-bottle_full_g = Láhev { $n }, plná, g
floor-view-one_more_bottle = Další láhev
floor-view-labels_and_closures_right = Etikety a uzávěry v pořádku
floor-view-yes = ano
floor-view-no = ne
floor-view-fill_by_hand_bottle = plnění ručně, objem láhve, co se udělalo
floor-view-bottle_size = Objem láhve
floor-view-l = L
floor-view-done_if_wrong = Náprava
floor-view-g = g
floor-view-full = { $mean } % plná
floor-view-on_average_of = v průměru z { $fills }: { $fill }. { $words }
floor-view-which_tank_runs_to = Která nádrž jde na linku?
floor-view-no_tank_has_spirit = Podle tohoto telefonu není líh v žádné nádrži. Nejdřív změřit stáčecí nádrž.
floor-casks-casks = Sudy
floor-casks-cask_is = Sud je
floor-casks-now = teď.
floor-card-tasted_of_10 = Ochutnáno { $tasted_at }: { $score } z 10.
floor-card-gauges_of_this_fill = Měření této náplně
floor-card-casks_like_it = { $count } podobných sudů
floor-card-such_a_size = taková velikost
floor-card-a_year = % za rok
floor-card-lost_of_its_pure = { $name } ztrácí { $share } % čistého lihu za rok; { $like }: { $low } až { $high }.
floor-dial-of = { $words } z { $high }
floor-due-closed_the_still_is = Uzavřeno: čeká se na přístroj.
floor-due-ended_close_it_and = Dokvašeno: uzavřít a zamluvit přístroj.
floor-due-not_read_since_it = Od naplnění bez odečtu.
floor-due-casks_to_regauge = Sudy k přeměření
floor-due-never_gauged_in_this = V této náplni ještě neměřeno.
floor-due-casks_to_sample = Sudy k odběru vzorku
floor-due-never_sampled = Ještě bez vzorku.
floor-due-casks_to_taste = Sudy k ochutnání
floor-due-never_tasted = Ještě neochutnáno.
floor-due-last = Naposledy { $last }.
floor-due-every_months = { $title }, každých { $months } měsíců
floor-due-check_due =
    { $title }: kontrola { $late ->
        [yes] měla být
       *[no] má být
    } { $date }.
floor-due-instruments = Měřidla
floor-due-by_law = Ze zákona
floor-due-the_three_reports_for = Tři hlášení za { $month } jsou splatná do 15.
floor-due-the_quarter_ends_count = Čtvrtletí končí: spočítat skladovací nádrže.
floor-due-count_of_bottled_stock = Inventura stočeného zboží; úřad se to dozví pět pracovních dnů předem.
floor-round-of = { $done } z { $cards }
floor-round-of_done = { $done } z { $cards } hotovo
floor-round-another_of_round =
    { $noun ->
        [tank] Jiná nádrž
       *[cask] Jiný sud
    }
floor-round-place = Místo
floor-round-begin_a_new_round = Začít novou obchůzku
floor-round-logged_another_reading_stands = Zapsáno { $last }. Vedle stojí jiný odečet.
floor-round-log_it_next = Zapsat, další
floor-round-next_of_round =
    { $noun ->
        [tank] Další nádrž
       *[cask] Další sud
    }
floor-round-is_not_on_this = { $mark } na této obchůzce není: { $sort }.
floor-round-it_is_a = je to { $sort }
floor-round-it_holds_nothing_as = podle knihy je prázdné
floor-round-this_phone_knows_no = Telefon nezná { $mark }. Zapsat na její stránce, až bude telefon mít signál.
floor-round-all_done =
    { $noun ->
        [tank] Nádrže hotové
       *[cask] Sudy hotové
    }: { $count }.
floor-round-none_to_go_to =
    { $noun ->
        [tank] Žádná nádrž k obejití
       *[cask] Žádný sud k obejití
    }: podle tohoto telefonu jsou prázdné.
floor-says-ended_three_equal_gravities = Dokvašeno: tři stejné rel. hustoty od { $day }. Zamluvit přístroj.
floor-says-not_moving_and_not = Nehýbe se a není hotovo. Podívat se na teplotu, kyselinu a výživu.
floor-says-it_has_hardly_begun = Sotva začalo klesat: zatím bez dne.
floor-says-no_day_yet_it = Zatím bez dne: chce to čtyři odečty.
floor-says-to = { " " }({ $low } až { $high })
floor-says-ends_about_near_three = Konec asi { $day }{ $span }, kolem { $end_gravity }. Rozhodnou tři stejné rel. hustoty.
floor-says-much_at_a_usual = Hodně, při obvyklé koncentraci: teče? Podívat se na obruče, dna, zátku a podlahu.
floor-says-the_weight_is_usual = Hmotnost je obvyklá, koncentrace divná. Přečíst lihoměr znovu.
floor-says-weight_and_strength_are = Hmotnost i koncentrace jsou divné. Je to správný sud?
floor-says-a_cask_cannot_gain = Sud nemůže získat. Zvážit a přečíst znovu.
floor-says-to_2 = { $low } až { $high }
floor-says-casks_like_it_compared = podobné sudy { $span } (porovnáno { $count })
floor-says-such_a_size = taková velikost { $span }
floor-says-first_gauge_of_this = První měření této náplně, nebo moc brzy na rychlost; { $like } % za rok.
floor-says-a_year = za rok; { $like }.
floor-says-a_year_2 = za rok; { $like }. { $words }
floor-tasting-fruit = ovoce
floor-tasting-stone = pecka
floor-tasting-almond = mandle
floor-tasting-blossom = květ
floor-tasting-spice = koření
floor-tasting-green = zelené
floor-tasting-sharp = ostré
floor-tasting-glue = lepidlo
floor-tasting-smoke = kouř
floor-tasting-dust = prach
floor-tasting-words_of_the_house = Slova lihovaru
floor-tasting-words_to_tap = Slova ke klepnutí
floor-tasting-take_off = odebrat { $name }
floor-tasting-take_off_2 = odebrat
floor-tasting-may_stay_empty = může zůstat prázdné
floor-tasting-log = Zapsat: { $words }
floor-duelist-rounds = Obchůzky
floor-duelist-taste = Ochutnat
floor-ferments-mash = Kvas
floor-ferments-last_read = Odečteno naposledy { $last }.
floor-ferments-not_read_yet = Zatím neodečteno.
floor-counter-one_more = O jednu víc
floor-counter-10_ten_more = +10, o deset víc
floor-counter-count = počet
floor-counter-keys = klávesy
floor-dress-or_type_it = nebo napsat
floor-dress-of_to = z { $case_from } až { $case_to }
floor-dress-from = { $cases } z { $dressed }
floor-dress-to = { $from } až { $to }
floor-dress-to_stand = stojí až { $to }
floor-dress-follows_the_last = navazuje na poslední
floor-dress-as_before = jako předtím
floor-dress-of = { $cases } po { $per_case }
floor-dress-by_the_cases_of = podle kartonů linky
floor-dress-vessels = { $count } nádob
floor-dress-as_the_book_has = jak to má kniha
floor-dress-more_than_there_are = ; o { $left } víc, než jich je
floor-dress-left = ; zbývá { $per_case }
floor-round-bottled_goods = stočené zboží
floor-round-elsewhere = jinde
floor-round-of_done_2 = { $done } z { $items } hotovo
floor-round-none = Žádné
floor-round-empty = Prázdné
floor-round-what_says_it_on = Co je na ní napsáno?
floor-round-type_what_it_says = Napsat, co je na ní napsáno.
floor-round-next_vessel = Další nádoba
floor-round-this_round_has_no = Obchůzka nemá { $mark }. Není-li v knize vůbec, říct to pod „Jiné“.
floor-round-left = zbývá { $open }
floor-round-all_done_2 = vše hotovo
floor-round-type_who_counted_name = Napsat, kdo počítal, jméno a funkci.
floor-round-counts_on_slate =
    { PLURAL($count) ->
        [one] { $count } počet
        [few] { $count } počty
        [many] { $count } počtů
       *[other] { $count } počtů
    } na tabulce.
floor-roundview-where = Kde
floor-roundview-one_place_after_another = Místo po místě. Co kniha čeká, se neukazuje; rozdíly jsou na konci, a podepisuje se, co se napočítalo.
floor-roundview-nothing_to_count_as = Podle tohoto telefonu není co počítat: na kartách není nádrž, sud ani láhev.
floor-roundview-of_counted = napočítáno { $done } z { $items }
floor-roundview-left = zbývá { $done }
floor-roundview-another_or_the_end = Jiné, nebo konec
floor-roundview-in_this_round = V této obchůzce
floor-roundview-to_the_differences = K rozdílům
floor-roundview-cask = Sud
floor-roundview-it_should_stand_at = Má stát na
floor-roundview-the_book_has = Kniha má
floor-roundview-no_place = žádné místo
floor-roundview-for_it = pro to
floor-roundview-it_stands_elsewhere = Stojí jinde
floor-roundview-type_the_place = napsat místo
floor-roundview-place_as_its_label = Místo, podle štítku
floor-roundview-not_here = Není tu
floor-roundview-it_is_here = Je tu
floor-roundview-count = Inventura
floor-roundview-by_weight_or_corrected = Hmotností, nebo opraveno
floor-roundview-and_a_remark = a poznámka
floor-roundview-counted_next = Spočítáno, další
floor-roundview-what_it_says_on = Co je na ní napsáno
floor-roundview-where_it_stands = Kde stojí
floor-roundview-differences = Rozdíly
floor-roundview-differences_from_the_book = Rozdíly proti knize
floor-roundview-as_the_book_has = Jak to má kniha
floor-roundview-not_counted = Nespočítáno
floor-roundview-sign = Podepsat
floor-roundview-counted_by_name_and = Počítal, jméno a funkce
floor-roundview-each_count_goes_into = { $lead }Každý počet jde do knihy, jak byl odečten, ve své minutě. Rozdíl tam zůstane dotazem, dokud někdo neodpoví.
floor-roundview-signed_under_penalties_of = Podepsáno pod trestem křivé výpovědi: pravdivé, správné a úplné, pokud vím (27 CFR 19.45, 19.623; podívat se do dnešního znění).{ " " }
floor-roundview-nothing_is_counted_yet = Zatím nic nespočítáno.
floor-roundview-another_place = Jiné místo
floor-roundview-go_on_counting = Počítat dál
floor-roundview-sign_and_log =
    Podepsat a zapsat { PLURAL($count) ->
        [one] počet
        [few] { $count } počty
        [many] { $count } počtů
       *[other] { $count } počtů
    }
floor-roundview-count_again = Spočítat znovu
floor-roundview-nothing_where_it_should = Nic tam, kde má být. Hned hledat; říct tomu, kdo to má vědět.
floor-roundview-not_in_the_book = není v knize
floor-roundview-at = { $litres } při { $strength_pct }
floor-roundview-at_2 = na { $place }
floor-roundview-here = zde
floor-roundview-book = kniha { $bottles }
floor-roundview-book_2 = kniha { $place }{ $lpa_l }
floor-roundview-book_3 = kniha { $litres }{ $strength_pct }
floor-roundview-at_3 = { $litres } při{ " " }
floor-roundview-book_empty = kniha prázdné
floor-stock-loose = volných { $loose }
floor-stock-none_left = nezbývá nic
floor-aloud-degrees = stupňů
floor-aloud-degrees_fahrenheit = stupňů Fahrenheita
floor-aloud-percent = procent
floor-aloud-litres = litrů
floor-aloud-kilos = kilo
floor-aloud-grams = gramů
floor-aloud-brix = brix
floor-aloud-gallons = galonů
floor-aloud-pounds = liber
floor-aloud-minus = minus{ " " }
floor-gloves-more_fields =
    { PLURAL($count) ->
        [one] ještě { $count } pole
        [few] ještě { $count } pole
        [many] ještě { $count } polí
       *[other] ještě { $count } polí
    }
floor-listening-the_microphone_is_not = Mikrofon tu není povolen. Povolit ho v nastavení prohlížeče, nebo psát.
floor-listening-no_figure_was_heard = Nezaznělo žádné číslo. Říct znovu, nebo napsat.
floor-listening-heard_no_figure_say = Zaznělo „{ $heard }“: to není číslo. Říct znovu, nebo napsat.
floor-listening-heard_but_this_box = Zaznělo „{ $heard }“, ale do tohoto pole patří { $symbol }.
floor-listening-or = { " " }nebo{ " " }
floor-settings-of_this_phone_alone = jen v tomto telefonu
floor-settings-voice_and_ear_are = Hlas i sluch patří telefonu: nic z řečeného ho neopustí.
floor-settings-its_icon_shows_how = Je-li na ploše, ikona ukazuje, kolik zápisů čeká.
floor-settings-what_waits_is_handed = Co čeká, odevzdá se i po zavření aplikace, jakmile je síť.
floor-settings-gloves = Rukavice
floor-settings-larger_keys_fewer_boxes = větší klávesy, méně polí
floor-settings-buzz = Vibrace
floor-settings-when_it_is_logged = při zapsání a při dotazu
floor-settings-read_aloud = Číst nahlas
floor-settings-figures_just_typed_and = právě zapsané údaje a dotazy
floor-settings-gravity_1_031 = Rel. hustota: 1,031
floor-settings-speak_figures = Diktovat údaje
floor-settings-into_the_box_your = do pole; zapíše je až klepnutí
floor-settings-fetch_the_language_for = Stáhnout k tomu jazyk
floor-settings-it_is_on_this = Teď je v telefonu.
floor-settings-it_could_not_be = Nepodařilo se stáhnout. Zkusit znovu se signálem.
floor-note-cap_pushed_down = Deka potopena.
floor-note-cooling_is_on = Chlazení běží.
floor-note-smells_odd = Divně voní.
floor-note-read_it_first = Nejdřív odečíst.
floor-note-charged_not_heated = Naplněno, netopí se.
floor-note-rinse_it_first = Nejdřív vypláchnout.
floor-note-still_warm = Ještě teplé.
floor-note-receivers_are_empty = Jímadla jsou prázdná.
floor-note-weeps_a_little = Trochu prosakuje.
floor-note-bung_is_loose = Zátka je volná.
floor-note-do_not_move_it = Nehýbat.
floor-note-weigh_it_again = Zvážit znovu.
floor-note-it_rests_do_not = Odpočívá. Nemíchat.
floor-note-it_is_cloudy = Je zakalené.
floor-note-valve_is_shut = Ventil je zavřený.
floor-note-lid_is_off = Víko je sundané.
floor-note-look_at_it_first = Nejdřív se podívat.
floor-note-not_finished = Není hotovo.
floor-note-cleaned = Vyčištěno.
floor-note-out_of_order = Mimo provoz.
floor-note-all_as_usual = Vše jako obvykle.
floor-note-ready_words = Hotová slova
floor-note-pin_it_to = Připnout k { $mark }
floor-note-leave_it_for_the = Nechat další směně
floor-note-from = Od: { $name }.
floor-note-pinned_to = Připnuto k
floor-note-for_the_next_shift = Pro další směnu
floor-note-it_stands_under_today = Stojí pod Dnes. { $from }
floor-note-pinned_to_2 = Připnuto k { $mark }
floor-note-whoever_opens_it_reads = Čte to, kdo ji otevře. { $from }
floor-note-there_already = Už tam je
floor-note-pin_it_to_a = Připnout k nádobě
floor-note-heard_by = slyší: { $person }
floor-note-read_by = četl(a) { $person }
floor-note-look = Podívat se
floor-note-listen = Poslechnout
floor-note-heard = Vyslechnuto
floor-note-read = Přečteno
floor-note-voice_note = Hlasový vzkaz
floor-note-voice_note_seconds = Hlasový vzkaz, { $seconds } s
floor-note-notes_to_read = Vzkazy k přečtení
floor-note-read_them = Přečíst
floor-note-notes = Vzkazy
floor-note-not_read_yet = Zatím nepřečteno
floor-note-all_read = Všechny vzkazy jsou přečtené.
floor-note-have_been_read = Přečteno dřív
floor-note-leave_a_note = Nechat vzkaz
floor-note-no_microphone = Mikrofon není povolen. Povolit ho v nastavení prohlížeče, nebo vzkaz napsat.
floor-note-speak_it = Namluvit
floor-note-stop = Zastavit, { $seconds } s
floor-note-recording = Nahrává se
floor-aim-target_as_its_label = Cíl: podle etikety.
floor-aim-target_as_aimed_at = Cíl: jak tu byl zadán { $date }.
floor-aim-target_as_last_in = Cíl: jako naposledy v { $name }, { $other }. Ověřit, zda je to tato etiketa.
floor-picture-in_the_tank_and = { $litres } v nádrži a { $kg } vody dá { $dip20_l } při { $strength_pct }: o { $shrinks_l } míň než součet.
floor-picture-at = { $dip20_l } při { $strength_pct }
floor-picture-less_than_the_sum = o { $shrinks_l } míň než součet. Žádná ztráta.
floor-picture-of_water = { $kg } vody
floor-picture-by_the_can_at = { $can_l } odměrkou při { $water_temp_c }
floor-picture-in_the_tank = { $litres } v nádrži
floor-picture-it_takes = Vejde se { $most }.
floor-picture-would_be_too_much = { $over } by bylo moc: nejdřív něco přesunout.
floor-picture-about_mixed = smícháno asi { $figure }
floor-picture-water = voda
floor-picture-spirit = líh
floor-picture-water_at_spirit_at = Voda { $water_temp_c }, líh { $temp_c }, smícháno asi { $figure } { $unit }, { $off } až { $off_2 }; bez směšovacího tepla { $calm }.
floor-picture-target = cíl { $target_pct }
floor-picture-sum = výpočet { $sum_pct }
floor-picture-read = odečteno { $read_pct }
floor-picture-target_by_the_sum = Cíl { $target_pct }, výpočet { $sum_pct }, odečteno { $read_pct } { $unit }.
floor-reduce-target = Cíl
floor-reduce-spirit_is_at = Líh má
floor-reduce-water_is_at = Voda má
floor-reduce-with_what_waits_here = , s tím, co tu čeká
floor-reduce-reduce = Ředění
floor-reduce-how_much_water = kolik vody
floor-reduce-measured = Změřeno
floor-reduce-are_in = { $plan } je uvnitř
floor-reduce-water_in = Voda dovnitř
floor-view-what_it_should_be = Co to má být
floor-view-a_tenth_less = O desetinu míň
floor-view-a_tenth_more = O desetinu víc
floor-view-in_goes = Dovnitř jde
floor-view-or_the_plain_form = nebo prostý formulář
floor-view-in_how_many_goes = Na kolikrát
floor-view-the_plain_form = Prostý formulář
floor-view-type_the_strength_it = Napsat koncentraci, kterou má mít.
floor-view-at = při { $temp_c }
floor-view-of_water = { $unit } vody
floor-view-for = ± { $doubt_kg } za ± { $at }
floor-view-what_the_tank_should = Co má nádrž pak ukazovat
floor-view-dip = Hladina, { $unit }
floor-view-as_wanted_no_water = Jak žádáno: voda není třeba.
floor-view-pour = Nalít { $plan }{ $rest }
floor-view-first = { " " }nejdřív.
floor-view-stir_let_it_stand = Promíchat, nechat stát, než se přestane hřát, odečíst{ $rest }. Jeden { $unit } je { $per } { $one }.
floor-view-once_more = { " " }ještě jednou
floor-view-then_the_rest = , pak zbytek
floor-view-planned_by = Plán: { $person }, { $planned }: { $name }, { $target_pct }{ $water }.
floor-view-with_of_water = { " " }s { $water_kg } vody
floor-view-step_by_step = Krok za krokem
floor-view-then_rest = { $water_kg }, pak odležet
floor-view-mixing_warms_it_by = Míchání ohřeje asi o { $warms_c } { $unit }. Nechat vychladnout a odležet, aspoň den, než se měří lihoměrem a hladinou.
floor-view-it_may_cloud_at = Při této koncentraci se může zakalit, tím víc, čím je chladněji. Pomalu, nechat odležet, a když se zakalí, filtrovat za studena.
floor-view-a_long_way_down = Naráz je to dolů daleko. Nadvakrát či natřikrát s odležením se kalí méně.
floor-view-water_went_in = Vody šlo dovnitř
floor-view-measured_after_the_rest = Změřeno po odležení
floor-view-another_minute_a_remark = jiná minuta, poznámka
floor-view-points = { $off_pct } bodu
floor-view-as_wanted = Jak žádáno.
floor-view-too_weak_spirit_has = o { $off } moc slabé. Musí přijít líh; voda ven nejde.
floor-view-too_strong_of_water = o { $off } moc silné: ještě { $trim_kg } vody.
floor-view-the_dip_agrees_with = Hladina sedí s výpočtem.
floor-view-dip_off_sum =
    Hladina je { $litres } { $side ->
        [under] pod
       *[over] nad
    } výpočtem: podívat se znovu.
floor-view-true = { $measured_pct } skutečná.
floor-view-which_tank = Která nádrž?
floor-view-no_tank_has_spirit_2 = Podle tohoto telefonu není líh v žádné nádrži. Nejdřív změřit nádrž.
floor-after-after_the_run = Po pálení
floor-after-this_phone_knows_no = Telefon nezná skončené pálení na tomto přístroji.
floor-after-the_balance_comes_when = Bilance přijde s měřením jádra nebo lutru.
floor-after-balance = Bilance
floor-after-from_100 = { $amount } ze 100 { $unit }
floor-after-less_than_60_of = Méně než 60 % paušálu: podívat se na ovoce, kvas a bilanci.
floor-after-more_than_one_and = Víc než jeden a půl násobek paušálu: podívat se na hmotnosti a měření.
floor-after-yield = Výtěžnost
floor-after-of_wash_of_fruit = , { $per_100_l } zápary; { $kg } ovoce podle podílu kvasu.
floor-after-official_flat_rate_for = Úřední paušál pro { $name }, ze 100 L kvasu: { $de_l } L v Německu{ $austria }. Paušály jsou bezpečné průměry, ne cíle.
floor-after-in_austria = , { $at_l } v Rakousku
floor-after-charged = Naplněno, { $sign }
floor-after-hearts = Jádro, { $sign }
floor-after-hearts_share = Podíl jádra
floor-after-hearts_cut_at = Jádro odříznuto při, { $unit }
floor-after-took = Trvalo
floor-after-from_100_2 = Ze 100 { $unit }, { $sign }
floor-after-beside_the_runs_before = Vedle dřívějších pálení
floor-after-runs_side_by_side = Pálení vedle sebe
floor-after-best_run = Nejlepší pálení
floor-after-marked_as_the_best = Označeno za nejlepší pálení: { $what }
floor-after-by = { $person }, { $best }{ $waiting }{ $why }.
floor-after-best_run_2 = Nejlepší pálení?
floor-after-best_of_so_far = Zatím nejlepší, { $what }: { $name }{ $why }.
floor-after-no_run_of_is = Zatím bez nejlepšího pálení: { $what }.
floor-after-later_runs_are_drawn = Pozdější pálení se kreslí přes nejlepší.
floor-after-why = Proč
floor-after-mark_this_run_as = Označit za nejlepší pálení
floor-balance-heads = úkap
floor-balance-stillage = výpalky
floor-balance-not_accounted_for = { $open } ({ $share }) chybí
floor-balance-more_than_went_in = { $open } ({ $share }) víc, než šlo dovnitř
floor-balance-in_out_usual_is = Dovnitř { $charged }, ven { $open }: { $rest }.{ $stillage_pct } Obvyklé je 0,5 až 2 %.
floor-balance-stillage_was_not_read = { " " }Výpalky se neměřily: brány jako { $stillage_pct }.
floor-balance-in = dovnitř { $charged }
floor-balance-out = ven { $open }
floor-balance-pure_alcohol_of_the = Čistý líh pálení
floor-changes-that_could_not_be = To se nepodařilo uložit. Zapsat jako jinou událost.
floor-curve-true_strength_over_pure = Skutečná koncentrace podle jímaného čistého lihu
floor-curve-l_pure_alcohol = L čistého lihu
floor-curve-vapour_temperature_against_strength = Teplota par proti koncentraci{ $name }
floor-curve-vapour_c = páry °C
floor-curve-usual_for_this_still = obvyklé pro tento přístroj
floor-curve-usual = obvyklé
floor-cutparts-i_switched_earlier = Přepnuto dřív
floor-cutparts-why_it_is_logged = Proč se zapisuje teď
floor-cutparts-hands_full = plné ruce
floor-cutparts-both_times_and_the = Oba časy i důvod zůstávají čitelné.
floor-cutparts-switched_logged = přepnuto { $at }, zapsáno { $at_2 }
floor-cutparts-receiver_now_open = Jímadlo teď otevřené
floor-cutparts-another_receiver = Jiné jímadlo
floor-cutparts-by_its_mark = podle značky
floor-cutparts-mark = Značka
floor-cutparts-a_label_at_the = Štítek u lihového měřidla se čte vně čáry, nebo se píše jeho značka.
floor-due-part_to =
    { $part ->
        [hearts] jádro
        [tails] dokap
        [low_wines] lutr
       *[heads] úkap
    } do { $strength }
floor-due-part_to_last_time =
    minule { $part ->
        [hearts] jádro
        [tails] dokap
        [low_wines] lutr
       *[heads] úkap
    } do { $strength }
floor-due-the_sums_for_it = Výpočty k tomu přijdou, až telefon příště najde knihu.
floor-due-read_the_flow_with = Změřit průtok džbánkem a hodinkami, a řekne kdy.
floor-due-by_flow_times_minutes = { $litres } podle průtoku krát minuty.
floor-due-by_the_plan = { $words }, podle plánu
floor-due-next_cut = Další řez
floor-due-is_reached = { $words }: { $by } je dosaženo.
floor-due-nose_first = { $words } Nejdřív nos.
floor-due-about = { $words } { $near }asi { $minutes }
floor-due-is_near = je blízko:{ " " }
floor-due-to = , { $low } až { $high }
floor-due-off_in_all_to = celkem steklo { $litres }, { $low } až { $high }
floor-due-without_earlier_runs = , bez dřívějších pálení
floor-due-then_together = ; { $part } pak má dohromady { $strength_average_pct }
floor-due-strength_alone_the_nose = Jen koncentrace; rozhoduje nos.
floor-due-on_earlier_runs_of = V dřívějších páleních tohoto přístroje { $kept } z { $tried } takových předpovědí řez trefilo.
floor-due-was_expected_about = { $words }: čekáno asi { $at }.
floor-due-last_read = Naposledy odečteno { $at }.
floor-due-read_now_nose_first = Odečíst teď; nejdřív nos.
floor-due-no_flow_and_no = Zatím bez průtoku i hladiny: s jedním z nich list sečte, co steklo.
floor-due-so_far = { $part } zatím { $litres }
floor-due-at_together = dohromady při { $strength }
floor-due-to_by_off_in = do { $until }, podle { $by }; celkem steklo { $litres }
floor-due-flow_times_minutes = průtok krát minuty
floor-due-dips = hladiny
floor-due-dip_of_flow_times = Hladina { $at }: { $got }; průtok krát minuty { $flowed }
floor-due-they_agree = { $both }. Sedí to.
floor-due-less_or_more_in_receiver =
    { $both }: v jímadle o { $off } % { $side ->
        [less] míň
       *[more] víc
    }, smí být { $most } %. Je otevřené jiné jímadlo, nebo se řez zapsal pozdě?
floor-far-large = Velké
floor-far-for_two_metres = na dva metry
floor-far-the_run_at_arms = Pálení na délku paže
floor-far-close = Zavřít
floor-far-true = { $sign } skutečná
floor-far-no_strength_yet = zatím bez koncentrace
floor-far-ago = , před { $last }
floor-far-next_reading = další odečet { $at }, { $at_2 }
floor-far-any_minute = každou minutu
floor-far-reached = dosaženo
floor-far-expected_before_now = čekáno už dřív
floor-far-turn_to = přepnout na { $to }
floor-far-the_end = konec
floor-far-in = { $what } za
floor-far-any = každou
floor-far-minute = minutu
floor-far-no_plan_and_no = Bez plánu a bez dřívějšího pálení: kdy, řekne nos.
floor-far-is_reached = { $words }: dosaženo
floor-far-was_expected = čekáno { $at }
floor-far-between_and = mezi { $low } a { $high }
floor-far-open_to = otevřeno, { $low } až { $high }
floor-far-of_about = { $litres } z asi { $all }
floor-far-without_earlier_runs = bez dřívějších pálení
floor-jug-in_s = { $jug } za { $took } s
floor-jug-the_jug_holds = Objem džbánku
floor-jug-full = Plný { $seconds }
floor-jug-start_the_watch = Spustit hodinky
floor-jug-jug_and_watch = džbánek a hodinky
floor-second-spirit_runs_at_above = Líh teče { $temp }, nad { $warm_c }. Hned víc vody do chladiče a ubrat topení, dokud nepoteče chladný: teplý líh dává hořlavé páry.
floor-second-true_is_above_of = Skutečná { $at } je nad { $true_strength } z { $last }. Po řezu úkapu jen klesá, pokud se nezměnila patra nebo voda.
floor-second-vapour_and_spirit_of = Páry { $vapour } a líh { $at } k sobě nejdou: na tomto přístroji je při té koncentraci obvyklé asi { $wanted }. Podívat se na oboje.
floor-sheet-by_alcohol = Podle lihu
floor-sheet-by_time = Podle času
floor-sheet-vapour = Páry
floor-sheet-the_curve_is_drawn = Křivka je nakreslena
floor-sheet-on_after_a_tap = zapnuto, po klepnutí
floor-sheet-plan = Plán:
floor-sheet-no_cut_plan_for = Pro { $what } na tomto přístroji zatím není plán řezů.
floor-sheet-this_fruit = toto ovoce
floor-sheet-change_the_plan = Změnit plán
floor-sheet-make_a_plan = Udělat plán
floor-sheet-sound_near_a_cut = Zvuk blízko řezu
floor-sheet-hearts_to = jádro do { $hearts_to_pct }
floor-sheet-tails_to = dokap do { $tails_to_pct }
floor-sheet-for_on_this_still = Pro { $what }, na tomto přístroji. Rozhoduje nos; plán připomíná.
floor-sheet-the_fruit_named_below = ovoce uvedené níž
floor-hands-who_logs = Kdo zapisuje
floor-hands-other = Jiný
floor-hands-take_it = Vzít
floor-pane-vessels = Nádoby
floor-places-stands_here = stojí tady
floor-places-and_more = a ještě { $others }
floor-places-free = volné
floor-tasting-set_of = sada { $set_no } z { $mine }
floor-tasting-your_answer_is_on = Vaše odpověď je na tabulce.
floor-tasting-set = { $name }, sada { $set_no }
floor-view-which_is_the_odd = Která je jiná?
floor-view-two_of_the_three = Dvě ze tří jsou stejné.
floor-view-the_odd_one = jiná
floor-view-which_is_the_same = Která je stejná jako R?
floor-view-r_stands_open_beside = R stojí otevřeně vedle těch dvou.
floor-view-the_same_as_r = stejná jako R
floor-view-which_has_more_of = Která toho má víc?
floor-view-this_one = tato
floor-view-tap_them_in_order = Klepat v pořadí, první nejdřív.
floor-view-tap_again_to_take = Dalším klepnutím vyřadit.
floor-view-guessing = odhad
floor-view-fairly = trochu
floor-view-quite = dost
floor-view-nose = nos
floor-view-mouth = ústa
floor-view-finish = dozvuk
floor-view-hotter = ostřejší
floor-view-wood = dřevo
floor-view-softer = jemnější
floor-view-nose_first_a_small = Nejdřív nos, malý lok a vyplivnout. Mezi tím voda. Nejvýš čtyři sady, pak pauza; nikdo potom neřídí ani nepracuje u přístroje.
floor-view-place = místo { $code }
floor-view-taste_left_to_right = { $how } Chutnat zleva doprava, mezi tím voda. Vracet se lze. I odhad je odpověď.
floor-view-glasses_left_to_right = Sklenky, zleva doprava
floor-view-how_sure = Jistota?
floor-view-what_gave_it_away = Co to prozradilo? (nepovinné)
floor-view-the_codes_are_drawn = Kódy se losují pro každého znovu. Telefon neví, co je v nich.
floor-view-of_in_order = { $order } z { $codes } v pořadí
floor-view-name_a_glass = Jmenovat sklenku
floor-view-log = Zapsat: { $order }
floor-view-is = { $picked }: { $named }
floor-view-which_tasting_stands_before = Která degustace stojí před vámi?
floor-view-all_your_sets_are = Všechny vaše sady jsou zodpovězené. Nemluvit o nich, než se otevřou v kanceláři.
floor-view-no_glasses_wait_for = Nečekají na vás žádné sklenky. Degustace se připravuje v kanceláři; kódy přijdou s dalšími kartami.
floor-ring-set_for = { $at }: nastaveno na { $at_2 }.
floor-ring-set_for_2 = Nastaveno na { $at }.
floor-ring-set_for_3 = nastaveno na { $at }{ $more }
floor-ring-more = { " " }· ještě { $due }
floor-ring-read = Odečíst
floor-ring-min_more = ještě { $minutes } min
floor-ring-drop_the_reminder = Zrušit připomínku
floor-ring-drop = Zrušit
floor-show-next = Další
floor-show-reading = odečet
floor-show-remind_me = Připomenout
floor-show-next_reading = další odečet
floor-show-reminders = Připomínky
floor-show-due = k termínu
floor-show-when_is_to_be = Kdy se má odečíst { $name }?
floor-show-set_for = Nastaveno na
floor-show-min_after_each_reading = ; { $minutes } min po každém odečtu
floor-show-at = V
floor-show-set_it = Nastavit
floor-show-minutes_begin_anew_with = Minuty začínají s každým odečtem znovu.{ " " }
floor-show-no_reminder = Bez připomínky
floor-show-rings_while_cellarslate_is = Zvoní, když je Cellarslate v tomto telefonu otevřená.
floor-show-rings_while_cellarslate_is_2 = Zvoní, když je Cellarslate otevřená; za jinými aplikacemi telefon ukáže oznámení.
floor-show-rings_while_cellarslate_is_3 = Zvoní, když je Cellarslate otevřená. Telefon se zeptá, zda smí ukázat i oznámení.
floor-times-in_h = Za { $hour } h
floor-times-this_evening = Dnes večer
floor-times-late_this_evening = Dnes pozdě večer
floor-times-tomorrow_morning = Zítra ráno
floor-times-in = za { $span }
floor-times-due_now = teď
floor-times-over = { $left } po
floor-times-yesterday = včera{ " " }
floor-times-tomorrow = zítra{ " " }
floor-times-next_reading = Další odečet{ $name }
floor-times-of = { " " }({ $name })
floor-stand-as_it_stands = Jak to stojí
floor-stand-pure_alcohol = Čistý líh
floor-stand-as_of = k { $date }
floor-stand-with_what_waits_here = s tím, co tu čeká
floor-stand-how_full_is_not = jak plné, není známo
floor-stand-of_full = { " " }z { $capacity_l }, plné na { $capacity_l_2 } %
floor-stand-between_and = , mezi { $low } a { $high }
floor-stand-about = asi{ " " }
floor-stand-empty_by_the_book = Podle knihy prázdné.
floor-stand-takes = Objem { $capacity_l }.
floor-stand-of = { $about }{ $litres } z { $capacity_l }{ $since }
floor-stand-to = { $about }{ $low } až { $high }, { $about_2 }
floor-stand-now = teď{ " " }
floor-stand-by_its_weight = podle hmotnosti
floor-stand-fill_to_at_most = plnit nejvýš na { $working_l }
floor-stand-so_far_from_gravity = zatím { $so_far }, z rel. hustoty
floor-stand-goes_down_to = klesne na { $target }
floor-stand-filled = naplněno { $since }{ $use }
floor-stand-gravity = rel. hustota
floor-stand-end = konec
floor-stand-save_its_label = Uložit štítek
floor-stand-pure_alcohol_gauge_by = Čistý líh, měření po měření
floor-camera-the_camera_works_only = Kamera funguje jen přes https. Otevřít knihu na adrese https, nebo napsat značku.
floor-camera-this_browser_offers_no = Prohlížeč kameru nenabízí. Napsat značku.
floor-camera-no_camera_was_found = Kamera se nenašla. Napsat značku.
floor-camera-the_camera_is_not = Kamera tu není povolena. Povolit ji v nastavení prohlížeče, nebo napsat značku.
floor-camera-another_app_is_using = Kameru používá jiná aplikace. Zavřít ji a zkusit znovu, nebo napsat značku.
floor-camera-the_camera_stopped_because = Kamera se zastavila, protože stránka byla skrytá. Klepnout na Skenovat.
floor-camera-the_camera_stopped_tap = Kamera se zastavila. Klepnout na Skenovat, nebo napsat značku.
floor-camera-the_camera_did_not = Kamera se nespustila. Zkusit znovu, nebo napsat značku.
floor-decoder-the_label_reader_is = Čtečka štítků v telefonu ještě není. Napsat značku, nebo jednou skenovat tam, kde je signál.
floor-decoder-this_browser_cannot_look = Prohlížeč neumí prohlížet obrázky. Napsat značku.
floor-scanner-this_code_is_not = Tento kód není náš. Naskenovat štítek na nádobě, nebo napsat značku.
floor-scanner-several_marks_are_in = V záběru je víc značek. Jít blíž, ať je vidět jen jedna.
floor-scanner-hold_the_label_in = Držet štítek v záběru.
floor-scanner-nothing_found_yet_go = Zatím nic. Jít blíž, naklonit telefon proti odlesku, nebo napsat značku.
floor-phonekey-this_browser_keeps_no = Prohlížeč neuchovává klíč, zápisy tedy nejsou podepsané.
floor-unitlist-unit = Jednotka
floor-view-case_word =
    { PLURAL($count) ->
        [one] karton
        [few] kartony
        [many] kartonů
       *[other] kartonů
    }
floor-bottles_of =
    { PLURAL($count) ->
        [one] { $count } láhev
        [few] { $count } láhve
        [many] { $count } lahví
       *[other] { $count } lahví
    }
floor-cases_of =
    { PLURAL($count) ->
        [one] { $count } karton
        [few] { $count } kartony
        [many] { $count } kartonů
       *[other] { $count } kartonů
    }
floor-roundview-bottles_off =
    { PLURAL($count) ->
        [one] { $off } láhev
        [few] { $off } láhve
        [many] { $off } lahví
       *[other] { $off } lahví
    }
floor-roundview-missing = chybí
floor-roundview-elsewhere = jinde
floor-round-counts =
    { PLURAL($count) ->
        [one] { $count } počet
        [few] { $count } počty
        [many] { $count } počtů
       *[other] { $count } počtů
    }
floor-sets =
    { PLURAL($count) ->
        [one] { $count } sada
        [few] { $count } sady
        [many] { $count } sad
       *[other] { $count } sad
    }
floor-balance-wash = zápara
floor-balance-feints = úkap a dokap
floor-balance-side_in = dovnitř
floor-balance-side_out = ven
floor-forecast-no_charge = Málo na předpověď: náplň tohoto pálení není zapsána. Zapsat litry a koncentraci náplně.
floor-forecast-few_readings =
    Málo na předpověď: zapsat { $which ->
        [another] další odečet
       *[first] první odečty
    } z výtoku.
floor-forecast-no_flow = Málo na předpověď: zapsat průtok, nebo změřit hladinu jímadla.
floor-forecast-odd_readings = Málo na předpověď: odečty stoupají a klesají. Přečíst výtok znovu.
floor-forecast-far = Málo na předpověď: řez je ještě daleko. Další odečet pomůže.
floor-forecast-wide = Málo na předpověď: může to být kdykoli během { $width } minut. Další odečet pomůže.
floor-forecast-out_of_range = Při { $target } % vol bez předpovědi: platí od { $low } do { $high } % vol
floor-forecast-past = Výtok už přešel { $target } % vol
floor-counter-count_of = Počet: { $label }
floor-listening-speak = Říct údaj
floor-lasttime-receivers = Jímadla jako minule
floor-pane-people = Lidé a nádoby
floor-ring-reminder = Připomínka
floor-file-save_it_again_on = Uložit ho znovu v telefonu, odkud je, nebo ho ještě jednou stáhnout.
floor-file-this_file_is_too = Soubor je na tabulku moc velký. Vybrat soubor, který uložila Cellarslate.
floor-file-this_file_is_damaged = Soubor je poškozený: nesedí kontrolní součet. { $again }
floor-file-this_file_is_damaged_2 = Soubor je poškozený: je useknutý, nebo to není tabulka. { $again }
floor-file-this_file_is_no = Soubor není tabulka. Vybrat soubor cellarslate-slate-….json.
floor-file-this_slate_was_saved = Tabulku uložila novější Cellarslate. Nejdřív aktualizovat tento telefon.
floor-file-this_file_is_damaged_3 = Soubor je poškozený: zápisům chybějí části. { $again }
floor-low_wines = lutr
floor-enclosed-too_many = Jeden zápis má nejvýš { $most } obrázků. Zapsat ho a další přidat k jinému.
floor-enclosed-with_this_entry = Obrázky k tomuto zápisu
floor-enclosed-picture_number = Obrázek { $number }
floor-enclosed-take_off = Odebrat: { $name }
floor-enclosed-keeping_it = Ukládá se
floor-enclosed-picture = Obrázek
floor-enclosed-pictures = Obrázky
floor-enclosed-on_the_slate = Obrázek je na tabulce.
floor-enclosed-open_the_paper = Otevřít doklad
floor-enclosed-on_this_phone = { "." } V tomto telefonu; odevzdá se po svém zápisu.
floor-enclosed-not_in_the_book = { "." } Není v knize: { $words }
floor-enclosed-too_large = Obrázek je větší než { $most } MB. Vyfotit znovu v běžné velikosti.
floor-enclosed-no_picture = Telefon to neumí přečíst jako obrázek. Vyfotit znovu kamerou.
floor-enclosed-waiting =
    { PLURAL($count) ->
        [one] Čeká tu { $count } obrázek nebo hlasový vzkaz
        [few] Čekají tu { $count } obrázky a hlasové vzkazy
        [many] Čeká tu { $count } obrázků a hlasových vzkazů
       *[other] Čeká tu { $count } obrázků a hlasových vzkazů
    }. Jdou po zápisech, kus po kuse.
floor-enclosed-refused =
    { PLURAL($count) ->
        [one] { $count } obrázek
        [few] { $count } obrázky
        [many] { $count } obrázků
       *[other] { $count } obrázků
    } kniha nemůže uložit; důvod je v řádku.
floor-enclosed-not_reached = Na knihu se odtud nelze dostat.
floor-enclosed-no_room = Telefon je skoro plný a zbylé místo patří zápisům. Zapsat bez obrázku, nebo nejdřív odevzdat a uvolnit místo.

### Only the desk reads what follows.

floor-manifest-description = Provozní zápisník lihovaru, se signálem i bez.
floor-manifest-shot_today = Co má dnes termín
floor-manifest-shot_run = Pálení, a kdy udělat řez
floor-manifest-shot_wide = List pálení na tabletu
floor-manifest-scan = Skenovat štítek
floor-manifest-due = Co má termín
floor-manifest-round = Obchůzka odečtů
floor-manifest-slate = Tabulka
desk-languages-label = Jazyk
desk-you-language = Jazyk
desk-you-language-any = Podle prohlížeče nebo lihovaru
desk-you-language-keep = Uložit
desk-frame-floor = Provoz
desk-frame-sign_out = Odhlásit
desk-frame-to_its_doors = Ke dveřím
desk-frame-this_is_the_demo_nothing = Toto je ukázka: nic tu není skutečné. { $link }
desk-frame-name_a_folder_on_another = Určit složku na jiném disku
desk-frame-this_book_has_no_backups = Kniha zatím nemá zálohy. { $link }; pak přicházejí denně samy.
desk-frame-the_book_goes_on_with = { $unjudged } Kniha v tom pokračuje sama; odevzdávání čekat nemusí.
desk-frame-other_rules_have_judged_the =
    Knihu posoudila jiná pravidla a { $entries ->
        [one] { $entries } zápis vyšel
        [few] { $entries } zápisy vyšly
        [many] { $entries } zápisů vyšlo
       *[other] { $entries } zápisů vyšlo
    } jinak než předtím. { $link }.
desk-common-look_at_it = Podívat se na to
desk-common-look_at_them = Podívat se na ně
desk-common-reason = Důvod
desk-common-amend = Opravit
desk-common-at = při { $strength_pct }
desk-common-bottled = Stočeno
desk-common-blind_tastings = Slepé degustace
desk-common-plan_a_vat = Plánovat kupáž
desk-common-vat = Kupáž
desk-common-by = Podle
desk-common-vessels = Nádoby
desk-common-batch = Dávka
desk-common-last = Naposledy
desk-common-state = Stav
desk-common-closed = uzavřeno
desk-common-under_way = probíhá
desk-common-the_entry = Zápis
desk-common-out_of = Z čeho
desk-common-not_yet = zatím ne
desk-common-water = Voda
desk-common-spirit = Líh
desk-common-any = každou
desk-common-pure_alcohol = čistý líh
desk-common-at2 = { $what } při { $what2 }
desk-common-years = Roky
desk-common-none = žádná
desk-common-may = Smí
desk-common-vessel = Nádoba
desk-common-lot = Šarže
desk-common-place = Místo
desk-common-pure_alcohol_l = Čistý líh, L
desk-common-proof_gal = Proof gal
desk-common-open = otevřené
desk-common-ended = ukončeno
desk-common-trace = Stopa
desk-common-on_the_floor = V provozu
desk-common-holds = obsahuje { $holding }
desk-common-answer = Odpověď
desk-common-since = Od
desk-common-to = { $percent } až { $percent2 }
desk-common-on = Dne
desk-common-show = Ukázat
desk-common-what = Co
desk-common-from = Od
desk-common-to2 = Do
desk-common-when = Kdy
desk-common-score = Body
desk-common-who = Kdo
desk-common-casks = Sudy
desk-common-all = vše
desk-common-due = Termín
desk-common-cask = Sud
desk-common-holds2 = Obsahuje
desk-common-loss_a_year = Ztráta, % za rok
desk-common-not_known = není známo
desk-common-readings = Odečty
desk-common-print = Tisk
desk-common-at3 = při { $bold }
desk-common-read_at = Odečteno
desk-common-gravity = Rel. hustota
desk-common-ferment = Kvas
desk-common-set = Sada
desk-common-read = Odečíst
desk-common-ended2 = Konec
desk-common-none_yet = Zatím nic.
desk-common-keep = Uložit
desk-common-which_vessels = Které nádoby
desk-common-sort = Druh
desk-common-and_more = a ještě { $count }
desk-common-none2 = Nic.
desk-common-remark = Poznámka
desk-common-leave_it = Nechat
desk-common-entries = Zápisy
desk-common-kind = Druh
desk-common-book_no = Č. v knize
desk-common-phone = Telefon
desk-common-asked = S dotazem
desk-common-or = nebo
desk-common-right = správně
desk-common-digest = Otisk
desk-common-proof_gal2 = proof gal
desk-common-l_pure_alcohol = L čistého lihu
desk-common-litres_of_pure_alcohol = Litry čistého lihu
desk-common-proof_gallons = Proof gallony
desk-common-what_happened = Co se stalo
desk-common-cases = Kartony
desk-common-bottles = Láhve
desk-common-document = Doklad
desk-common-to3 = až { $case_to }
desk-common-bottling = Stáčení
desk-common-odd = neúplný { $odd_case }
desk-common-of_l = po { $what } L
desk-common-bottled_goods = Stočené zboží
desk-common-where_it_went = Kam šel
desk-common-minute = Minuta
desk-common-line = Linka
desk-common-closed2 = Uzavřeno
desk-common-filled = Naplněno
desk-common-all2 = Vše
desk-common-ranges = Rozsahy
desk-common-access = Přístup
desk-common-more = Další
desk-common-how_phones_reach_this_book = Jak telefony najdou tuto knihu
desk-common-change = Změnit
desk-common-add = Přidat
desk-common-entry = Zápis
desk-common-new_instrument = Nové měřidlo
desk-common-instruments = Měřidla
desk-common-number = Číslo
desk-common-description = Popis
desk-common-limits_of_the_checks = Meze kontrol
desk-common-every_limit_is_the_checks = Každá mez je vlastní mez kontroly.
desk-common-customers_and_growers = Odběratelé a pěstitelé
desk-common-from_a_spreadsheet = Z tabulkového souboru
desk-common-name = Jméno
desk-common-people = Lidé
desk-common-new_person = Nová osoba
desk-common-phones = Telefony
desk-common-last_heard = Naposledy slyšet
desk-common-proof = Proof
desk-common-rules = Pravidla
desk-common-laboratory = Laboratoř
desk-common-log_a_certificate = Zapsat protokol
desk-common-litres_of_pure_alcohol_at = litry čistého lihu při 20 °C
desk-common-account = Účet
desk-common-of_what_stood_at_its = ± toho, co stálo na konci
desk-common-the_period = Období
desk-common-of_its_lines = ± jeho řádků
desk-common-period = Období
desk-common-as_now_known = Jak je známo dnes
desk-common-as_now_known2 = jak je známo dnes
desk-common-open_figures_may_still_change = Otevřené: údaje se ještě mohou změnit.
desk-common-periods = Období
desk-common-seasons = Sezony
desk-common-records_the_law_asks_for = Záznamy ze zákona
desk-common-proof_gallons2 = proof gallony
desk-common-germany = Německo
desk-common-proof_gal_from_100_lb = proof gal ze 100 lb
desk-common-not_accounted_for = Chybí
desk-common-runs = Pálení
desk-common-yields = Výtěžnost
desk-common-feints = Úkap a dokap
desk-common-fruit = Ovoce
desk-common-standing_now = Stojí teď
desk-common-still = Přístroj
desk-common-why = Proč
desk-common-n100_gal = 100 gal
desk-common-tasted_blind = Ochutnáno naslepo:
desk-common-in = Kde
desk-common-run = Pálení
desk-common-rows = Řádky
desk-common-mark = Značka
desk-common-look_it_over = Prohlédnout
desk-common-sheet = List
desk-common-taken_back = vzato zpět
desk-common-samples = Vzorky
desk-common-answers = Odpovědi
desk-common-what_was_found = Co se zjistilo
desk-common-open_it = Otevřít
desk-common-bottled2 = stočeno
desk-common-find_a_trace = Najít stopu
desk-common-came_from = přišlo z
desk-common-case_or_lot_mark_batch = Karton nebo označení šarže, dávka, nádoba, pálení nebo dodávka
desk-common-from2 = z { $name }: { $share }
desk-common-load_of_fruit = dodávka ovoce
desk-common-list_as_csv = Seznam jako CSV
desk-common-all_as_json = Vše jako JSON
desk-common-stands_there_now = stojí tam teď
desk-common-made_from_it = vyrobeno z toho
desk-common-passed_through = prošlo přes
desk-common-there_is_more_than_one = Je toho víc, než stopa dokáže sledovat. Co je ukázáno, platí, ale není to vše: pozdější krok stopovat zvlášť.
desk-common-in_these_bottles = V těchto lahvích
desk-common-share_of_the_bottle = Podíl v láhvi
desk-common-where_the_cases_went = Kam kartony šly
desk-common-share_of_it = Podíl z toho
desk-common-not_fermented_out = neprokvašeno
desk-common-the_same_in_words = Totéž slovy
desk-common-new_vessel = Nová nádoba
desk-common-mark_place_or_name = Značka, místo nebo jméno
desk-common-no_vessels_here = Tady nejsou nádoby.
desk-common-to_the_floor = Do provozu
desk-common-labels_to_hold_a_phone = Štítky, ke kterým se drží telefon
desk-common-print_them_a4 = Vytisknout, A4
desk-common-to_the_doors = Ke dveřím
desk-common-no_site_has_handed_in = Zatím žádný závod neodevzdal.
desk-common-unnamed = beze jména
desk-common-something = něco
desk-common-a_run = pálení
desk-common-a_bottling = stáčení
desk-parts-it_was = Bylo { $raw } { $unit }
desk-parts-it_stands = Platí
desk-parts-strike = Škrtnout
desk-parts-nothing_in_the_book = v knize nic
desk-blending-vats_planned = Plánované kupáže
desk-blending-none_yet_plan_one_pick = Zatím nic. Naplánovat: vybrat sudy a říct, co to má být.
desk-blending-tank = Nádrž
desk-blending-planned = Plán
desk-blending-water = Voda, { $what }
desk-blending-volume = Objem, { $what }
desk-blending-no_batch_yet_a_bottling = Zatím žádná dávka. Začíná měřením stáčecí nádrže.
desk-blending-tank_fills = Nádrž vydá
desk-blending-blending = Scelování
desk-blending-by_papers = , podle dokladů
desk-blending-kept_the_tanks_card_shows = Uloženo. Karta nádrže to ukazuje na každém telefonu.
desk-blending-these_draws_cannot_be_read = Tyto odběry už nelze přečíst. Jít zpět a kupáž spočítat znovu.
desk-blending-give_the_vat_a_name = Dát kupáži název a vybrat nádrž; pak uložit.
desk-blending-the_book_has_no_such = Takový plán kniha nemá. Hledat ho v seznamu kupáží.
desk-blending-nothing_is_left_to_choose = Není z čeho vybírat. Zaškrtnout, co smí dovnitř, nebo žádat méně let ve dřevě.
desk-plan-planned_and_done = Plán a skutečnost
desk-plan-the_tank = Nádrž
desk-plan-planned_by_on_into_at = Plán: { $person }, { $when }, do { $get }: { $plan } při { $plan2 }.
desk-plan-asked_for = Žádáno: { $plan }.
desk-plan-it_rests_on_blind_tasting = Opírá se o slepou degustaci { $link }.
desk-plan-planned = Plán, { $what }
desk-plan-done = Skutečnost, { $what }
desk-plan-off = Rozdíl, { $what }
desk-plan-in_the_tank_now_at = V nádrži teď: podle knihy { $volume_l } při { $strength_pct }.
desk-vat-the_vat = Kupáž
desk-vat-draws = Odběry
desk-vat-keep_this_vat = Uložit tuto kupáž
desk-vat-what_may_go_in = Co smí dovnitř
desk-vat-may_go_in = { $name } smí dovnitř
desk-vat-must_go_in = { $name } musí dovnitř
desk-vat-years_of_by_the_papers = Roky pro { $name } podle dokladů
desk-vat-work_it_out = Spočítat
desk-vat-begin_again = Začít znovu
desk-vat-at_from_vessel =
    { $bold } při { $bold2 }, { $lpa_l }{ $pure }, z { $count ->
        [one] { $count } nádoby
        [few] { $count } nádob
        [many] { $count } nádob
       *[other] { $count } nádob
    }
desk-vat-of_water = { $water_kg } vody
desk-vat-and = a { $bold }
desk-vat-youngest_years_in_wood = Nejmladší { $what } let ve dřevě
desk-vat-by_papers_only_of = jen podle dokladů: { $by_papers }
desk-vat-a_part_of_it_is = Část je neznámého stáří.
desk-vat-that_is_less_than_asked =
    To je o { $off } { $is_more ->
        [yes] víc
       *[no] míň
    }, než se žádalo.
desk-vat-share = Podíl, %
desk-vat-before_the_water_at_the = Před vodou { $before_l } při { $before_pct }. Směs se smrští o { $shrinks_l }: není to ztráta, čistý líh zůstává.
desk-vat-name_of_the_vat = Název kupáže
desk-vat-into_tank = Do nádrže
desk-vat-rests_on_tasting = Opírá se o degustaci
desk-vat-keep_this_plan = Uložit tento plán
desk-vat-no_cask_or_tank_has = Podle knihy není líh v žádném sudu ani nádrži.
desk-vat-casks_go_whole_less_what = Sudy jdou celé, bez toho, co drží dřevo. Roky jsou roky nejmladší části; kde je kniha znát nemůže, napsat, co říkají doklady. Nádobu s otevřeným dotazem zaškrtáváte jen vy: její údaje nemusí platit.
desk-vat-must = Musí
desk-vat-there = Je tam, { $what }
desk-vat-to_give = Dát, { $what }
desk-vat-by_the_papers = Podle dokladů
desk-vat-left_out_too_young = vynecháno: moc mladé
desk-cellar_parts-cellar = Sklep
desk-cellar_parts-to = ({ $low } až { $high })
desk-cellar_parts-about = asi { $bold } { $part }
desk-cellar_parts-three_equal_gravities_since = tři stejné rel. hustoty od { $at }
desk-cellar_parts-not_moving_and_not_finished = nehýbe se a není hotovo
desk-cellar_parts-has_hardly_begun = sotva začalo
desk-cellar_parts-stuck = stojí
desk-cellar_parts-too_few_readings = málo odečtů
desk-cask-loss_a_year = Ztráta za rok
desk-cask-forecast_for_a_day = Předpověď na den
desk-cask-forecast = Předpověď
desk-cask-tasted = Ochutnáno
desk-cask-gauges = Měření
desk-cask-years_in_wood = { $percent } let ve dřevě
desk-cask-from_before_this_book = Z doby před touto knihou
desk-cask-its_age_is_not_known = Stáří není známo.
desk-cask-its_age_is_by_papers = Stáří jen podle dokladů: { $papers }.
desk-cask-its_age_is_by_what = Stáří podle toho, co se řeklo při otevření; doklady nejsou uvedeny.
desk-cask-pure_alcohol = Čistý líh, %
desk-cask-volume = Objem, %
desk-cask-proof_points = stupňů proof
desk-cask-strength = Koncentrace, { $what }
desk-cask-over_years = Za, let
desk-cask-one_gauge_or_too_near = Jedno měření, nebo moc blízko sebe: zatím bez rychlosti.
desk-cask-casks_like_it = podobné sudy
desk-cask-the_law_allows = zákon dovoluje
desk-cask-here_as_the_share_that = { $words } Tady jako podíl, který odejde za rok. Úroveň k pozoru, ne důkaz, že ztráta je obvyklá, ani právní rada: nejdřív porovnat s vlastními sudy lihovaru.
desk-cask-of_pure_alcohol = čistého lihu
desk-cask-between_its_last_two_gauges = Mezi posledními dvěma měřeními, { $when } a { $when2 }, ubylo { $value } { $part }{ $pure }; ± je dvojnásobek standardní nejistoty, podle třídy váhy, lihoměru a teploměru.
desk-cask-compared_with = Porovnáno s
desk-cask-no_other_cask_to_compare = Není s čím porovnat: prosté údaje pro jeho velikost.
desk-cask-what_it_will_hold = Co v něm bude
desk-cask-no_forecast_for_a_day = Pro den před posledním měřením nebo za víc než padesát let předpověď není.
desk-cask-expected = Očekáváno
desk-cask-by_a_year_its_own = Při { $percent } % za rok, vlastní ztráta vážená se ztrátou podobných sudů; od a do mají platit čtyřikrát z pěti. Nepočítá se s únikem ani vzorkem.
desk-cask-its_last_gauge_is_in = Poslední měření je nejisté, a tedy i tato předpověď: nejdřív se podívat na sud.
desk-cask-not_gauged_in_this_fill = V této náplni neměřeno.
desk-cask-not_tasted_in_this_fill = V této náplni neochutnáno.
desk-cask-fault = Vada
desk-cask-house_scores = Vlastní body
desk-cask-in_words = Slovy
desk-cask-decision = Rozhodnutí
desk-cask-score_is_the_mean_of = Body jsou průměr nosu, úst a dřeva.
desk-cask-gauges_of_this_fill = Měření této náplně
desk-cask-drawn_since_the_one_before = Odebráno od předchozího, { $what }
desk-cask-the_last_gauge = poslední měření
desk-cask-its_fill = naplnění
desk-cask-and_more = a víc
desk-cask-pure_alcohol2 = Čistý líh
desk-cask-strength2 = Koncentrace
desk-cask-volume_at = Objem při { $temp }
desk-casks-sort_casks = Řadit sudy
desk-casks-regauge_round = Obchůzka přeměření
desk-casks-area = Oblast
desk-casks-no_such_cask = Takový sud není.
desk-casks-no_cask_holds_anything_as = Podle knihy není nic v žádném sudu.
desk-casks-since_fill = Od naplnění
desk-casks-casks_like_it = Podobné sudy
desk-casks-looks_like = Vypadá jako
desk-casks-loss_is_of_pure_alcohol = Ztráta je na čistém lihu od posledního měření starého aspoň dva měsíce; vzorky ztráta nejsou. „Podobné sudy“: čtyři z pěti leží v tom rozpětí, podle velikosti, pak oblasti, pak dřeva a použití; malá skupina si půjčuje od širší, dokud nemá vlastní sudy.
desk-casks-l_pure = L čistého
desk-casks-by_papers = podle dokladů
desk-ferment-counts_of_its_alcohol = Počty jeho alkoholu
desk-ferment-set = založeno { $when }
desk-ferment-emptied = vyprázdněno { $when }
desk-ferment-ends = Konec: { $forecast }.
desk-ferment-it_usually_ends_near = Obvykle končí kolem { $what }.
desk-ferment-it_takes_two_gravities_or = Chce to dvě rel. hustoty, nebo uzavřený kvas.
desk-ferment-count = Inventura
desk-ferment-of_wash = { $what } zápary
desk-ferment-of_measured_wash = % změřené zápary
desk-ferment-runs_of_charged_scaled_to = { $runs } pálení, naplněno { $charged_lpa }, přepočteno na celou záparu
desk-ferment-gravity_low_wines_and_spirits = Rel. hustota, lutr a destilát počítají jednu věc třemi způsoby, které o sobě nevědí; starý zákon bral největší. Jsou-li daleko: podívat se na hladiny, koncentrace a záparu.
desk-ferment-not_read_yet = Zatím neodečteno.
desk-ferment-greatest = největší
desk-ferment-title = { $what } v { $mark }
desk-ferments-ferments_under_way = Probíhající kvasy
desk-ferments-ferments_that_have_ended = Dokvašené kvasy
desk-ferments-readings_round = Obchůzka odečtů
desk-ferments-no_ferment_is_under_way = Žádný kvas neběží.
desk-ferments-ends = Končí
desk-ferments-the_day_is_forecast_from = Den je předpověď z klesající křivky vlastních odečtů; dny v závorce mají platit čtyřikrát z pěti. Rozhodnou tři stejné rel. hustoty.
desk-ferments-emptied = Vyprázdněno
desk-ferments-first_gravity = První rel. hustota
desk-ferments-ferments = Kvasy
desk-house_rules-n0_for_never = 0 pro nikdy
desk-house_rules-what_is_due_stands_on = Co má termín, stojí na Dnes na každém telefonu. Na slova se při degustaci klepe; body jsou od 0 do 10.
desk-house_rules-house_rules = Pravidla lihovaru
desk-house_rules-too_young = moc mladé
desk-house_rules-too_weak = moc slabé
desk-house_rules-too_strong = moc silné
desk-house_rules-score_too_low = málo bodů
desk-house_rules-not_tasted = neochutnáno
desk-house_rules-loses_much_look_at_it = ztrácí hodně: podívat se
desk-house_rules-not_gauged = neměřeno
desk-house_rules-spirit_as_the_book_names = Líh, jak ho kniha nazývá; prázdné pro všechny
desk-house_rules-in_wood_at_least_years = Ve dřevě nejméně [let]
desk-house_rules-strength_from_vol = Koncentrace od [% vol]
desk-house_rules-strength_to_vol = Koncentrace do [% vol]
desk-house_rules-score_at_least_of_10 = Bodů nejméně [z 10]
desk-house_rules-loss_at_most_a_year = Ztráta nejvýš [% za rok]
desk-house_rules-words_for_nose_and_mouth = Slova pro nos a ústa, jedno na řádek
desk-house_rules-beside_the_loss_of_casks = Vedle ztráty sudů: co dovoluje zákon
desk-house_rules-scores_beside_nose_mouth_wood = Body vedle nosu, úst, dřeva a vady, jeden na řádek
desk-house_rules-kept = Uloženo.
desk-house_rules-type_a_figure_from_0 = Napsat číslo od 0 výš, nebo nechat prázdné.
desk-house_rules-kept_phones_have_it_with = Uloženo. Telefony to mají s dalšími kartami.
desk-house_rules-read_a_ferment_every = Odečíst kvas každých
desk-house_rules-regauge_a_cask_every = Přeměřit sud každých
desk-house_rules-sample_a_cask_every = Vzorek ze sudu každých
desk-house_rules-taste_a_cask_every = Ochutnat sud každých
desk-house_rules-tell_of_an_instruments_check = Hlásit kontrolu měřidla předem o
desk-house_rules-check_bottles_on_the_line = Kontrolovat láhve na lince každých
desk-house_rules-or_after_so_many_of = nebo po tolika lahvích
desk-map-rooms = Místnosti
desk-map-map_of = Plán: { $name }
desk-map-without_a_position = { $name }, bez pozice
desk-map-as_a_table = { $name } jako tabulka
desk-map-elsewhere = ◆ jinde?
desk-map-empty = prázdné
desk-map-free = volné
desk-map-count_sheet = List inventury
desk-map-the_last_count_found_otherwise = Poslední inventura našla něco jiného
desk-map-nothing_has_a_place_yet = Nic zatím nemá místo. Uvede ho zápis, který sud plní nebo přesouvá; také stránka nádoby.
desk-map-vessels =
    { $count ->
        [one] { $count } nádoba
        [few] { $count } nádoby
        [many] { $count } nádob
       *[other] { $count } nádob
    }
desk-map-places_free =
    { $free ->
        [one] { $free } místo volné
        [few] { $free } místa volná
        [many] { $free } míst volných
       *[other] { $free } míst volných
    }
desk-map-no_position = { $name }, bez pozice
desk-map-without_a_place = Bez místa { $part }
desk-map-the_first_vessels_are_drawn = Nakresleno je prvních { $most } nádob. Ostatní se ukážou po výběru druhu.
desk-map-a_place_is_where_an = Místo je to, kam nádobu naposledy dal zápis, jinak co říká její stránka. Duté místo jmenují zápisy nebo rejstřík a nic tam teď nestojí. Šipky chodí z místa na místo.
desk-map-places = Místa
desk-map-other_places = Jiná místa
desk-ready-years_in_wood = Roky ve dřevě
desk-ready-lacks = Chybí
desk-ready-no_rule_yet = Zatím bez pravidla.
desk-ready-set_one_below_age_strength = Nastavit ho níž: stáří, koncentrace, body, ztráta.
desk-ready-the_distiller_sets_one = Nastavuje ho palič.
desk-ready-ready = Hotové { $part }
desk-ready-no_cask_meets_the_rule = Dnes pravidlo nesplňuje žádný sud.
desk-ready-lacks_one_thing = Chybí jedna věc { $part }
desk-ready-the_rule = Pravidlo
desk-ready-last_set_by = Naposledy nastaveno: { $changed }, { $when }.
desk-ready-all_boxes_empty_takes_the = Všechna pole prázdná pravidlo toho lihu zruší. Co je prázdné, se nežádá. Pravidlo je vlastní pravidlo lihovaru: stáří podle zákona a etikety je něco jiného.
desk-ready-ready2 = Hotové
desk-ready-lacks_one_thing2 = Chybí jedna věc
desk-ready-all_spirits = všechny lihy
desk-amend-what_you_send_is_a = { $mark } · { $summary } · { $person }, { $read_local }. Odesílá se nový zápis; původní zůstává čitelný.
desk-amend-why_it_is_amended = Proč se opravuje
desk-amend-amend = Opravit: { $title }
desk-entries-filter_entries = Filtrovat zápisy
desk-entries-pick_a_kind_for_csv = Pro CSV vybrat druh
desk-entries-no_entries_here_yet = Zatím tu nejsou zápisy.
desk-entries-older = Starší
desk-entry-as_computed = Jak vypočteno
desk-entry-movements = Pohyby
desk-entry-now_at = teď na { $stands }
desk-entry-read_by = odečteno { $read_local }, { $person }
desk-entry-an_earlier_entry = dřívější zápis
desk-entry-amends = Opravuje { $link }: { $reason }
desk-entry-as_read = Jak odečteno
desk-entry-by = měřidlo { $instrument }
desk-entry-corrected = opraveno { $corrected }
desk-entry-is_twice_the_standard_uncertainty = ± je dvojnásobek standardní nejistoty, podle třídy měřidel; neuvedené, nebo bez třídy v knize, se počítá podle třídy ze zákona.
desk-entry-figure = údaj
desk-entry-typed = zapsáno
desk-entry-with = s { $words }
desk-entry-nothing_is_computed_from_this = Nic se z toho nepočítá.
desk-entry-how_it_came = Jak to přišlo
desk-entry-typed_at = Zapsáno
desk-entry-received = Přijato
desk-entry-phones_clock = Hodiny telefonu
desk-entry-fast =
    { $what } { $is_slow ->
        [yes] pozadu
       *[no] napřed
    }
desk-entry-phone_its_count = Telefon, jeho počet
desk-entry-handed_in_by = Odevzdal
desk-entry-signature = Podpis
desk-entry-what_it_does_to_the = Co dělá s účty
desk-entry-from = z
desk-entry-to = do
desk-entry-account = účet
desk-entry-why = proč
desk-entry-as_typed = jak zapsáno
desk-entry-it_moves_no_spirit_either = Žádný líh nepřesouvá.
desk-entry-held_holds_then = obsahovalo { $shown }, pak obsahuje
desk-entry-with_the_book_would_still = S { $words } by se kniha ještě ptala, než něco přesune.
desk-entry-held_holds_then2 = obsahovalo { $litres }, pak obsahuje
desk-entry-its_story = Jeho příběh
desk-entry-this_entry = tento zápis
desk-entry-strike_this_entry = Škrtnout tento zápis
desk-entry-strike_it_stays_legible = Škrtnout; zůstane čitelný
desk-entry-from_the_desk = z kanceláře
desk-entry-answered = zodpovězeno
desk-entry-nothing_moves_until_the_question = Dokud se na dotaz neodpoví, nic se nepřesune.
desk-entry-it_is_struck_it_moves = Je škrtnut: nic nepřesouvá.
desk-entry-it_moves_no_spirit = Nepřesouvá žádný líh.
desk-entry-another_entry_stands_in_its = Na jeho místě stojí jiný zápis.
desk-entry-none_the_phone_or_its = žádný: telefon nebo prohlížeč ho nedal
desk-entry-the_book_has_no_such = Takový zápis kniha nemá. Možná ještě čeká v telefonu.
desk-entry-none_it_was_entered_at = žádný: zapsáno v kanceláři
desk-entry-of_and_it_holds = telefonu { $phones }, a platí
desk-entry-with_a_key_that_the = klíčem, který kniha nemá
desk-entry-there_is_no_such_entry = Takový zápis k opravě není.
desk-entry-pick_one_kind_first_each = Nejdřív vybrat jeden druh: každý má své sloupce.
desk-entry-amended_the_original_stays_legible = Opraveno. Původní zůstává čitelný.
desk-entry-is_no_day_pick_one = { $day } není den. Vybrat ho, třeba 2025-09-24.
desk-entry-say_why_it_is_amended = Říct pár slovy, proč se opravuje.
desk-enclosed-title = Obrázky a doklady
desk-enclosed-show = Ukázat obrázky a doklady
desk-enclosed-back = Zpět k tomu, kam patří
desk-enclosed-none = Zatím nic. Vyfotit v provozu se zápisem, nebo přidat na stránce zápisu.
desk-enclosed-picture = Obrázek
desk-enclosed-paper = Doklad
desk-enclosed-voice_note = Hlasový vzkaz
desk-enclosed-not_come = Ještě tu není: čeká v telefonu
desk-enclosed-added_later = přidáno později
desk-enclosed-its_entry = jeho zápis
desk-enclosed-add = Přidat obrázky nebo doklady
desk-enclosed-files = Soubory
desk-enclosed-help = JPEG, PNG nebo WebP do 12 MB, PDF do 20 MB, hlasové vzkazy do 6 MB. Obrázky ztratí údaje o místě a fotoaparátu.
desk-enclosed-what = Co ukazuje
desk-enclosed-add_it = Přidat k tomuto zápisu
desk-enclosed-added =
    { $count ->
        [one] Přidáno. Je to samostatný zápis, který jmenuje tento.
       *[other] Přidáno: { $count }. Jsou samostatným zápisem, který jmenuje tento.
    }
desk-enclosed-pick_one = Nejdřív vybrat obrázek nebo doklad.
desk-enclosed-too_many = Nejvýš { $most } najednou. Přidat po částech.
desk-enclosed-no_such_entry = Takový zápis, ke kterému by se přidávalo, není. Hledat ho mezi zápisy.
desk-enclosed-the_paper = doklad
desk-enclosed-add_its_paper = přidat doklad
desk-queries-which_questions = Které dotazy
desk-queries-to_answer = K odpovědi
desk-queries-none_of_this_weight = Nic této váhy.
desk-queries-nothing_is_asked_what_comes = Kniha se na nic neptá. Co přijde mimo rozsah, bude stát tady.
desk-queries-questions = Dotazů: { $count }
desk-queries-ask_on_only_above = U { $mark } se ptát jen nad { $value } { $limits }
desk-queries-times_it_stood_here = Platilo tu už { $times }krát. { $link }
desk-queries-the_first_are_shown_answer = Ukázáno je prvních { $most }. Na některé odpovědět, ostatní přijdou.
desk-queries-questions2 = Dotazy
desk-queries-not_answered = Bez odpovědi: { $why }
desk-queries-it_stands = Platí.
desk-queries-struck_the_entry_stays_legible = Škrtnuto. Zápis zůstává čitelný.
desk-removals-to_or_from = Komu / od koho
desk-removals-loose = volné
desk-removals-of = z { $case_from }
desk-bottled-bottles_on_hand = Láhve na skladě
desk-bottled-removals_as_csv = Výdeje jako CSV
desk-bottled-all_removals_logged = Všechny zapsané výdeje
desk-bottled-what_each_bottling_has_on = Co je z každého stáčení na skladě a kam šly kartony. Zapisuje se v provozu, pod Další: Kartony ven nebo dovnitř, Láhve. { $link }.
desk-bottled-nothing_is_bottled_yet_a = Zatím nic stočeného. Zásoba začíná uzavřením stáčení nebo kartony z jiného závodu.
desk-bottled-good_bottles = Dobré láhve
desk-bottled-on_hand = Na skladě
desk-bottled-last_count = Posl. inventura
desk-bottled-lot = šarže { $lot_mark }
desk-bottled-for_the_library = do archivu { $library }
desk-bottled-from = od { $consignor }, { $document }
desk-bottled-from_before_this_book = z doby před touto knihou
desk-bottled-cases = { $cases } kartonů
desk-bottled-and = a { $loose }
desk-bottled-out_and_back = Ven a zpět
desk-bottled-no_case_has_left_yet = Zatím žádný karton neodešel.
desk-bottled-older_ones_are_in_the = { $count } starších je v souboru.
desk-bottling-checks_of_the_line = Kontroly linky
desk-bottling-tank_gauge_and_label = Měření nádrže a etiketa
desk-bottling-no_bottling_tank_gauge_yet = Zatím bez měření stáčecí nádrže. Změřit nádrž po všech úpravách, před první lahví.
desk-bottling-at = { $volume } při { $strength }
desk-bottling-a_label_may_say_to = { $when }, { $tank }: { $bold } ({ $what }). Etiketa smí říkat { $low } až { $high }{ $span } a lišit se o { $most }
desk-bottling-it_says = říká { $said }
desk-bottling-leave_room_for_what_glass = Nechat rezervu na to, co lihoměr a teploměr předstírají.
desk-bottling-it_fills_bottles_of_l = Naplní { $what } lahví po { $what2 } L, beze zbytku.
desk-bottling-none_yet_check_five_bottles = Zatím nic. Každou půlhodinu zkontrolovat pět lahví.
desk-bottling-fill_of_the_label_on = Plnění { $what } % etikety v průměru, kontrol { $count }
desk-bottling-spread = rozptyl { $what }
desk-bottling-strength_on_average = Koncentrace v průměru { $mean }
desk-bottling-spread2 = rozptyl { $spread }
desk-bottling-at_this_size_each_bottle = Při tomto objemu smí být každá láhev o { $what } % nad nebo pod (27 CFR 19.356), zhruba stejně nad jako pod.
desk-bottling-at_this_size_a_bottle = Při tomto objemu smí být láhev o { $what } % pod, průměr vůbec ne (směrnice 76/211/EHS, po paměti).
desk-bottling-fill = Plnění, %
desk-bottling-least = Nejméně
desk-bottling-most = Nejvíc
desk-bottling-labels_right = Etikety v pořádku
desk-bottling-done = Uděláno
desk-bottling-not_closed_yet = Zatím neuzavřeno.
desk-bottling-odd_case = Neúplný karton
desk-bottling-labels_of_cases = Štítky kartonů
desk-bottling-a_case_label_leads_to = Symbol vede ke stopě šarže. Není to etiketa, kterou žádá zákon.
desk-bottling-these_are_no_cases = Uvést kartony této dávky, jak je má její uzavření, najednou nejvýš { $most }.
desk-bottling-broken = Rozbité
desk-bottling-library = Archiv
desk-bottling-good = Dobré
desk-bottling-to = { $case_from } až { $case_to }
desk-bottling-nothing_has_left_the_tank = Z nádrže zatím nic neodešlo.
desk-bottling-gauged_bottled_not_in_a = Změřeno { $gauged }, stočeno { $bottled }: { $off }{ $pure } ({ $what2 } %) není v láhvi.
desk-bottling-batch = Dávka { $name }
desk-bottling-span = { $low } až { $high } % vol
desk-bottling-the_book_has_no_batch = Dávku toho jména kniha v nádrži nemá. Hledat ji v seznamu stáčení.
desk-bottling-fill_on_average = Plnění, průměr
desk-bottling-of_the_label = % etikety
desk-bottling-strength_in_the_bottles = Koncentrace v lahvích
desk-limits-to = { $what }{ $what2 } až { $what3 } { $symbol }{ $what4 }
desk-limits-as_the_kind = podle druhu
desk-limits-every_range_is_the_kinds = Každý rozsah je vlastní rozsah druhu.
desk-limits-for = Pro
desk-limits-field = Pole
desk-limits-usual = Obvyklé
desk-limits-possible = Možné
desk-limits-find_limits = Hledat meze
desk-limits-limits = Meze
desk-limits-all_ranges = Všechny rozsahy
desk-limits-limits_set_so_far = Dosud nastavené meze
desk-limits-all_limits = Všechny meze
desk-limits-possible2 = možné: { $what }
desk-limits-words_field_vessel_or_product = Slova, pole, nádoba nebo výrobek
desk-limits-a_range_for_one_vessel = Rozsah pro jednu nádobu má přednost před rozsahem pro její druh, ten před surovinou, ta před provozem, ten před vlastním rozsahem druhu. Prázdná pole vrátí vlastní.
desk-limits-set_so_far = Dosud nastaveno
desk-limits-no_range_here_holds_these = Žádný rozsah tato slova nemá.
desk-limits-a_limit_for_one_vessel = Mez pro jednu nádobu má přednost před mezí pro výrobek, ta před druhem nádoby, ten před provozem, ten před vlastní mezí kontroly. Prázdné číslo vrátí vlastní.
desk-limits-no_limit_here_holds_these = Žádná mez tato slova nemá.
desk-limits-limit = Mez
desk-limits-set_to = Nastaveno na
desk-limits-the_checks_own = Vlastní mez kontroly
desk-limits-the_kinds_own = vlastní rozsah druhu
desk-limits-the_checks_own2 = vlastní mez kontroly
desk-limits-the_book_knows_no_vessel = Kniha nezná nádobu { $key }.
desk-limits-say_which_the_sort_of = Říct které: druh nádoby, nebo surovina.
desk-limits-from_to_is_no_range = Od { $low } do { $high } není rozsah. Prohodit je.
desk-limits-kept_the_vessels_concerned_are = Uloženo. Dotčené nádoby se posoudí znovu.
desk-limits-kept_the_entries_concerned_are = Uloženo. Na dotčené zápisy se kniha zeptá znovu.
desk-access-code = kód
desk-access-all_as_json_lines = Vše jako řádky JSON
desk-access-everything = všechno
desk-access-nothing_of_this_sort_yet = Nic takového zatím není.
desk-access-the_newest_all_of_them = Nejnovějších { $most }. Všechny odcházejí jako řádky JSON.
desk-access-each_line_is_bound_to = Každý řádek je svázán s předchozím; { $code } najde ten, který se změnil nebo zmizel. Řádky starší než { $days } dnů odcházejí.
desk-address-now = Teď
desk-address-this_book_is_open_on = Kniha je otevřená jen na tomto počítači. Spustit { $code } bez { $code2 } a { $code3 }, a telefony v téže síti ji najdou.
desk-address-phones_open = Telefony otevřou { $bold }.
desk-address-another_web_server_on_this = Mluví za ni jiný webový server na tomto počítači a certifikát je jeho věc.
desk-address-every_phone_trusts_it_as = Každý telefon jí věří rovnou, díky certifikátu na vaše jméno.
desk-address-this_houses_own_certificate = vlastní certifikát lihovaru
desk-address-each_phone_trusts_it_once = Telefon jí věří, jakmile přijal { $link }.
desk-address-the_servers_certificate_lasts_unti = Certifikát serveru platí do { $ends }
desk-address-and_is_renewed_before_that = a předtím se sám obnoví
desk-address-the_address_is_who_the = Adresa je pro telefon to, čím kniha je.
desk-address-what_a_phone_holds_belongs = { $bold } Co telefon drží, patří k adrese, na které se otevřel: na jiné začíná prázdný a co čekalo, zůstane na staré. Trvalou adresu vybrat, než přijde první telefon. Pozdější stěhování: nechat všechny telefony odevzdat, přestěhovat, pak každý přijmout znovu.
desk-address-the_ways = Způsoby
desk-address-the_houses_own_certificate = Vlastní certifikát lihovaru
desk-address-nothing_to_buy_works_without = Nic se nekupuje, deset let funguje bez internetu. Na každém telefonu jednou šest až osm klepnutí, mezi nimi přepínač, který se snadno přehlédne.
desk-address-an_internet_name_of_your = Vlastní internetové jméno
desk-address-phones_trust_it_with_no = Telefony mu věří bez klepnutí. Stojí doménu ročně, občas internet a někoho, kdo to jednou nastaví: záznam, který vede na adresu tohoto počítače, a klient ACME (RFC 8555), který jméno prokáže přes DNS a dá sem dva soubory. Hledají se každou čtvrthodinu a nové se převezmou. Jméno stojí ve veřejných protokolech: nejlepší je nenápadné.
desk-address-another_web_server_in_front = Jiný webový server vpředu
desk-address-where_the_house_has_one = Kde ho lihovar už má, s vlastním certifikátem: mluví TLS a předává sem.
desk-address-when_a_phone_does_not = Když sem telefon nedojde
desk-address-on_this_computer_looks_at = { $code } na tomto počítači prohlédne jméno, adresu, port, hodiny, certifikát, router, disk a zálohu a ke každému řekne další krok. V routeru dát počítači pevnou adresu: nová by pro telefony byla jiná kniha.
desk-instrument-checks = Kontroly
desk-instrument-readings_in_doubt = Nejisté odečty
desk-instrument-due_on = termín { $due_on }
desk-instrument-last_good_check = poslední dobrá kontrola { $when }
desk-instrument-add_to_what_it_shows = přičíst { $what } { $unit } k tomu, co ukazuje
desk-instrument-certificate_add = kalibrační list, přičíst { $table_words }
desk-instrument-entries_read_with_it =
    { $readings ->
        [one] { $readings } zápis s ním
        [few] { $readings } zápisy s ním
        [many] { $readings } zápisů s ním
       *[other] { $readings } zápisů s ním
    }
desk-instrument-none_in_the_book_log = V knize žádná není. Zapsat v provozu: Kontrola měřidla.
desk-instrument-against = Proti
desk-instrument-should_show = Má ukazovat
desk-instrument-shows = Ukazuje
desk-instrument-off_by = Rozdíl
desk-instrument-result = Výsledek
desk-instrument-good = dobré
desk-instrument-readings_in_doubt2 =
    { $doubtful ->
        [one] { $doubtful } nejistý odečet
        [few] { $doubtful } nejisté odečty
        [many] { $doubtful } nejistých odečtů
       *[other] { $doubtful } nejistých odečtů
    }
desk-instrument-out_of_use = mimo provoz
desk-instrument-in_use_until = v provozu do { $until }
desk-instrument-in_doubt_read_before_the = Nejisté: odečteno před kontrolou { $at }, od poslední dobré
desk-instrument-nothing_was_read_with_it = V té době se s ním nic neodečetlo.
desk-instrument-entries =
    { $many ->
        [one] { $many } zápis
        [few] { $many } zápisy
        [many] { $many } zápisů
       *[other] { $many } zápisů
    }
desk-instrument-the_last_are_listed = uvedeno je posledních { $count }
desk-instrument-look_at_each_let_it = Podívat se na každý: nechat platit, nebo opravit s důvodem.
desk-instrument-by_this_check = Podle této kontroly
desk-instrument-n27_cfr_19_188_asks = 27 CFR 19.188 žádá časté kontroly; nejisté měřidlo se nepoužívá, dokud není ověřeno.
desk-instrument-not_good = není dobré
desk-instrument-no_check_in_the_book = v knize bez kontroly
desk-instrument-there_is_no_such_instrument = Takové měřidlo není. Hledat ho v seznamu.
desk-instruments-none_yet_add_the_first = Zatím nic. Přidat první.
desk-instruments-standing = Stav
desk-instruments-last_good_check = Poslední dobrá kontrola
desk-invited-shown_this_once = Ukázáno jen teď
desk-invited-scans_this_or_opens_the = { $name } toto naskenuje, nebo otevře odkaz, do { $days } dnů, a nastaví heslo, které nikdo jiný nezná. Platí jednou; nové zruší toto.
desk-invited-hand_it_over_yourself_whoever = Předat osobně: kdo ho otevře první, přihlásí se jako { $code }.
desk-invited-until_then_the_old_password = Do té doby otevírá staré heslo jako dřív.
desk-invited-this_link_is_plain_http = Odkaz je prostý http: na tomto počítači funguje, jiný by heslo poslal nechráněné.
desk-invited-it_is_handed_over = Je předáno
desk-invited-invitation_for = Pozvánka pro { $name }
desk-invited-on_this_computer_alone = jen na tomto počítači
desk-judging-all_as_a_file_csv = Vše jako soubor (CSV)
desk-judging-rules_digest_the_book_is = Pravidla { $number }, otisk { $code }. Kniha se podle nich posuzuje od { $when }
desk-judging-all_was_judged_at = vše posouzeno { $when }
desk-judging-other_than_before = Jinak než předtím: { $parts }.
desk-judging-not_all_is_judged_yet = Ještě není posouzeno vše. Co vyjde jinak, přibývá do seznamu.
desk-judging-so_far = zatím
desk-judging-nothing_came_out_otherwise = Nic nevyšlo jinak{ $what }.
desk-judging-sums_that_came_out_otherwise = Součty, které vyšly jinak
desk-judging-none_stock_and_accounts_are = Žádné. Zásoba a účty jsou, jaké byly.
desk-judging-entries_move_other_amounts_than =
    { $sums_many ->
        [one] { $sums_many } zápis přesouvá
        [few] { $sums_many } zápisy přesouvají
        [many] { $sums_many } zápisů přesouvá
       *[other] { $sums_many } zápisů přesouvá
    } jiná množství než předtím
desk-judging-the_first_are_listed_the = uvedeno je prvních { $most }, soubor má všechny
desk-judging-a_closed_month_keeps_its = Uzavřený měsíc si údaje nechá: co se v něm změnilo, je úpravou prvního otevřeného měsíce.
desk-judging-before = Předtím: { $moves }
desk-judging-now = Teď: { $moves }
desk-judging-questions_that_came_or_went = Dotazy, které přibyly nebo zmizely
desk-judging-read_by = Přečteno: { $read_by }, { $when }.
desk-judging-i_have_read_it = Přečteno
desk-judging-rules_of_version = Pravidla verze { $version }
desk-judging-came_to = Přibylo u
desk-judging-went_from = Zmizelo u
desk-judging-weighs_otherwise_for = Jiná váha u
desk-parties-new = Nový
desk-parties-none_yet_add_them_one = Zatím nic. Přidat po jednom, nebo vzít list.
desk-parties-sells_or_buys = Prodává nebo kupuje
desk-parties-address = Adresa
desk-parties-note = Vzkaz
desk-parties-is_there_already_as_a = { $name } už tu je jako { $role }. Změnit ten záznam.
desk-parties-there_is_nobody_of_this = Nikdo toho jména tu není. Podívat se znovu do seznamu.
desk-parties-kept = Uloženo.
desk-party_edit-a_papers_and_entries_call = Role: { $role }. Doklady a zápisy používají toto jméno, proto zůstává; pod jiným jménem je to někdo nový.
desk-party_edit-new_customer_or_grower = Nový odběratel nebo pěstitel
desk-party_edit-supplier = dodavatel
desk-party_edit-customer = odběratel
desk-passkey_new-give_it_a_name_by = Dát mu jméno, podle kterého ho později poznáte, třeba podle počítače nebo klíče, na kterém je. Prohlížeč se pak zeptá na prst, tvář nebo PIN.
desk-passkey_new-this_browser_makes_no_passkeys = Prohlížeč tu přístupové klíče nedělá. Vzít jiný, přes https, nebo zůstat u hesla.
desk-passkey_new-make_it = Vytvořit
desk-passkey_new-made_at_it_is_good = Vytvořen na { $rp_id }, platí jen tam. Kdo zařízení ztratí, ukončí jeho klíč na předchozí stránce.
desk-passkey_new-a_new_passkey = Nový přístupový klíč
desk-people-code = Kód
desk-people-roles = Role
desk-people-at_the_desk = V kanceláři
desk-people-invited = pozván
desk-people-password = heslo
desk-people-ended = Skončilo: { $count }.
desk-people-there_is_a_already_pick = { $code } už existuje. Vybrat jiný kód.
desk-people-somebody_must_keep_the_office = Roli kancelář musí někdo mít. Nejdřív ji dát jiné osobě.
desk-people-there_is_no_such_person = Taková osoba není.
desk-people-kept = Uloženo.
desk-person_edit-the_floor_code_names_who = Kód provozu říká, kdo zapisuje na společném telefonu, i offline. Není to zámek.
desk-person_edit-signing_in_at_the_desk = Přihlášení v kanceláři
desk-person_edit-invited_until = Pozvánka do { $when }.
desk-person_edit-has_a_password_which_nobody = Má heslo, které nikdo jiný nezná.
desk-person_edit-has_no_password_yet = Zatím bez hesla.
desk-person_edit-sessions_open =
    { $n_open ->
        [one] Otevřena { $n_open } relace
        [few] Otevřeny { $n_open } relace
        [many] Otevřeno { $n_open } relací
       *[other] Otevřeno { $n_open } relací
    }.
desk-person_edit-end_the_sessions = Ukončit relace
desk-person_edit-who_is_to_sign_in = Kdo se má přihlašovat v kanceláři, dostane potom pozvánku na své stránce.
desk-person_edit-invite_to_a_new_password = Pozvat k novému heslu
desk-person_edit-invite_to_the_desk = Pozvat do kanceláře
desk-readers-title = Jiné nástroje
desk-readers-about = Tabulka, přehled nebo kalendář čte, co jeho klíč dovolí, do svého dne, a nic nemění. Jak: { $link }.
desk-readers-name = Název nástroje
desk-readers-name_it = Pojmenovat nástroj, třeba „sklepní tabulka“.
desk-readers-good_for = Platí
desk-readers-days =
    { PLURAL($days) ->
        [one] { $days } den
        [few] { $days } dny
        [many] { $days } dne
       *[other] { $days } dní
    }
desk-readers-may_read = Smí číst
desk-readers-tick_what = Zaškrtnout, co smí číst.
desk-readers-scope_entries = zápisy
desk-readers-scope_stock = co kde stojí
desk-readers-scope_periods = období
desk-readers-scope_trace = stopy
desk-readers-scope_cards = karty nádob
desk-readers-scope_calendar = kalendář toho, co je na řadě
desk-readers-make = Vydat klíč
desk-readers-key_for = Klíč pro { $name }
desk-readers-shown_once = Ukáže se jen teď. Kdo ho má, čte totéž; uložit tam, kde jsou hesla.
desk-readers-calendar_at = Kalendáře berou tuto adresu:
desk-readers-it_is_kept = Je uložen
desk-readers-none = Žádný nástroj nemá klíč.
desk-readers-tool = Nástroj
desk-readers-reads = Čte
desk-readers-until = Do
desk-readers-used = Naposledy použit
desk-readers-never = nikdy
desk-readers-over = skončil
desk-readers-end = Ukončit
desk-readers-ended = Klíč { $name } už nic neotevře.
desk-readers-no_such = Takový klíč není. Možná už byl ukončen.
desk-readers-calendar_name = { $house }: co je na řadě
desk-readers-ferment_ends = { $name }: kvašení asi právě končí
desk-phones-let_in = Přijmout { $data }
desk-phones-scan_this_with_the_phones = Naskenovat kamerou telefonu, jednou, do jednoho dne. Jako odkaz: { $link }
desk-phones-the_camera_does_not_scan = Kamera neskenuje?
desk-phones-open_on_the_phone_and = V telefonu otevřít { $bold } a do { $minutes } minut napsat:
desk-phones-no_code_has_0_o = Žádný kód nemá 0, O, 1, I, L ani U a poslední znak kontroluje ostatní. Naskenovaný i napsaný platí pro jeden telefon.
desk-phones-a_phone_that_does_not = Telefon, který serveru ještě nevěří
desk-phones-it_opens = Nejdřív otevře { $place }. Tam musí ukázat tyto skupiny: { $groups }
desk-phones-the_trust_page = stránku důvěry
desk-phones-make_a_code_for_a = Vytvořit kód pro nový telefon
desk-phones-no_phone_is_let_in = Zatím není přijat žádný telefon.
desk-phones-entries_seen = Přišlo zápisů
desk-phones-not_handed_in = Neodevzdáno
desk-phones-clock = Hodiny
desk-phones-leave = Povolení
desk-phones-never = nikdy
desk-phones-none_known = nic známého
desk-phones-shut_out = vyloučen { $when }
desk-phones-shut_out2 = Vyloučit
desk-phones-a_missing_count_means_the = Chybějící počet znamená, že telefon zapsal něco, co nedorazilo. Odevzdá to sám, až příště najde server.
desk-phones-counts_twice = Počítá dvakrát:
desk-phones-more_than_one_entry_has = { $bold } víc zápisů má stejné číslo tohoto telefonu. Jsou dvě jeho kopie, nebo byl obnoven ze starší. Všechny zápisy jsou v knize. Najít druhý telefon; nedá-li se to poznat, vyloučit ho a přijmout znovu.
desk-phones-counts_twice2 = počítá dvakrát
desk-phones-missing = chybí
desk-phones-clock_off =
    { $minutes } min { $is_slow ->
        [yes] pozadu
       *[no] napřed
    }
desk-phones-shut_out_entries_it_still = Vyloučen. Zápisy, které ještě drží, jsou v něm v bezpečí a odevzdají se, až bude znovu přijat.
desk-phones-there_is_no_such_phone = Takový telefon není.
desk-proof-lost_heads = Ztracené hlavy
desk-proof-witnesses = Svědci
desk-proof-each_backup_each_phone_and = Každá záloha, každý telefon i skupina drží hlavy: krátké důkazy, tady podepsané klíčem { $code }, o všem, co kniha v té době měla. Přepsaná kniha má jiné hlavy. Až po poslední hlavu, kterou někdo drží jinde, nelze řádek nepozorovaně změnit ani vyjmout; pozdější ano.
desk-proof-the_registry_is_proved_column = Rejstřík se dokazuje sloupec po sloupci od { $when }.
desk-proof-the_registry_is_proved_column2 = Rejstřík se dokazuje sloupec po sloupci od začátku.
desk-proof-compares_all_of_it = { $code } porovná vše.
desk-proof-shown_once_and_no_longer = Jednou ukázáno, a v knize už není
desk-proof-came_back = Vrátilo se
desk-proof-shown = Ukázáno
desk-proof-what_differs = Co se liší
desk-proof-explained = vysvětleno
desk-proof-if_nobody_restored_an_older = Neobnovil-li nikdo starší zálohu, někdo změnil soubor knihy. Složku nechat, jak je, a porovnat se zálohou: { $code }.
desk-proof-why_the_book_lacks_them = Proč v knize chybějí
desk-proof-note_it = Poznamenat
desk-proof-who_keeps_heads = Kdo drží hlavy
desk-proof-nobody_yet_phones_begin_with = Zatím nikdo. Telefony začnou příštím odevzdáním, zálohy tou příští.
desk-proof-gave_it_back = Vrátil
desk-proof-beside_the_backups = Vedle záloh
desk-proof-that_the_first_backup_makes = který vytvoří první záloha
desk-proof-not_explained = nevysvětleno
desk-proof-noted_the_heads_stay_on = Zaznamenáno. Hlavy zůstávají v seznamu.
desk-rules-rules_the_book_was_judged = Pravidla, podle kterých se kniha posuzovala
desk-rules-the_book_is_judged_by = Kniha se posuzuje podle pravidel programu, který ji vede. Přinese-li verze jiná, každý zápis se posoudí znovu, zatímco se odevzdává dál. Co vyšlo jinak, stojí tady, dokud to někdo nepřečte.
desk-rules-version = Verze
desk-rules-all_judged = Vše posouzeno
desk-rules-read_by = Četl
desk-rules-entries =
    { $unread ->
        [one] { $unread } zápis
        [few] { $unread } zápisy
        [many] { $unread } zápisů
       *[other] { $unread } zápisů
    }
desk-rules-to_read = k přečtení
desk-rules-kinds_of_entry = druhy zápisů
desk-rules-sums_and_tables = výpočty a tabulky
desk-rules-the_fold = skládání
desk-rules-kept_you_have_read_it = Uloženo: přečteno.
desk-rules-l_pure_alcohol = { $flow } L čistého lihu
desk-rules-the_book_was_never_judged = Podle těchto se kniha nikdy neposuzovala. Podívat se do seznamu.
desk-rules-the_run = pálení
desk-settings-settings = Nastavení
desk-settings-changes = Změny
desk-settings-the_house = Lihovar
desk-settings-the_office_changes_the_house = { $name }. Kancelář mění lihovar a lidi a vylučuje telefony.
desk-settings-set_a_range = Nastavit rozsah
desk-settings-set_a_limit = Nastavit mez
desk-settings-set = Nastaveno: { $count }.
desk-settings-check_due = Termín kontroly
desk-settings-by_which_the_book_is = Podle kterých se kniha posuzuje, a co podle jiných vyšlo jinak.
desk-settings-backups = Zálohy
desk-settings-not_encrypted_whoever_finds_one = Nešifrováno: přečte je každý, kdo je najde. Klíč vytvoří { $code } na serveru.
desk-settings-each_is_encrypted_to_the = Každá je zašifrovaná klíčem lihovaru.
desk-settings-who_changed_what = Kdo co změnil
desk-settings-nothing_was_changed_yet = Zatím se nic nezměnilo.
desk-settings-kept = Uloženo.
desk-settings-there_is_no_such_instrument = Takové měřidlo není.
desk-you-sessions = Relace
desk-you-passkeys = Přístupové klíče
desk-you-end_the_passkey = Ukončit klíč { $name }
desk-you-keep_the_house = vést lihovar
desk-you-do_everything = dělat vše
desk-you-signed_in_as_who_may = Přihlášení: { $bold }, smí { $what }.
desk-you-where_you_are_signed_in = Kde jste přihlášeni
desk-you-the_list_begins_with_the = Seznam začíná příštím přihlášením.
desk-you-browser = Prohlížeč
desk-you-end = Konec
desk-you-last_used = Naposled užito
desk-you-end_it = Ukončit
desk-you-end_all_others = Ukončit ostatní
desk-you-a_session_ends_hours_after = Relace končí { $idle_h } hodin po posledním použití a { $most_h } hodin po začátku, ať se používá jakkoli.
desk-you-your_passkeys = Vaše přístupové klíče
desk-you-a_passkey_opens_the_desk = Přístupový klíč otevře kancelář prstem, tváří nebo PINem tohoto počítače, telefonu nebo bezpečnostního klíče, bez hesla. Lihovar drží jen jeho veřejnou půlku.
desk-you-passkey = Přístupový klíč
desk-you-good_at = Platí na
desk-you-made = Vytvořen
desk-you-you_have_none_yet = Zatím žádný nemáte.
desk-you-add_a_passkey = Přidat klíč
desk-you-passkeys_are_bound_to_a = Přístupové klíče jsou vázány na jméno. K přidání otevřít kancelář jménem lihovaru, ne číselnou adresou.
desk-you-your_password = Vaše heslo
desk-you-change_it = Změnit
desk-you-forgotten_the_office_makes_you = Zapomenuto? Kancelář vystaví pozvánku; staré nikdo nepřečte.
desk-you-here = zde
desk-you-look = prohlížet
desk-you-ended = Ukončeno.
desk-you-ended_you_are_signed_in = Ukončeno: { $ended }. Přihlášeni jste jen tady.
desk-you-ended_it_opens_nothing_any = Ukončeno: už nic neotevře. Relace, které začal, lze ukončit níž.
desk-you-that_is_not_your_password = To není vaše heslo. Napsat znovu.
desk-you-there_is_no_such_session = Taková relace už není.
desk-you-no_passkey_can_be_made = Na této adrese přístupový klíč vytvořit nelze. Otevřít kancelář jménem lihovaru.
desk-you-there_is_no_such_passkey = Takový přístupový klíč už není.
desk-you-your_password_is_changed_you = Heslo je změněno. Přihlášeni jste jen tady.
desk-you-this_took_too_long_or = Trvalo to moc dlouho, nebo to není, co se žádalo. Stisknout ještě jednou.
desk-you-kept_you_can_sign_in = Uloženo. Od teď se s ním lze přihlásit.
desk-laboratory_parts-results_of = Výsledky z { $document }
desk-laboratory_parts-no_limit_here = tady bez meze
desk-laboratory_parts-substance = Látka
desk-laboratory_parts-found_and_how_it_stands = Nalezeno, a jak to stojí
desk-laboratory_parts-sample_of = { $link } · vzorek z { $taken_on }
desk-laboratory_parts-from = z { $link }
desk-laboratory_parts-not_tested_a_hydrometer_sees = Nevyšetřeno: { $untested }. Lihoměr z toho nevidí nic.
desk-certificates-a_limit_and_a_result = { $caution } Mez i výsledek tu stojí s pramenem a s tím, jak se laboratoře liší. Žádný lihoměr, hustoměr ani refraktometr nerozliší metanol od etanolu.
desk-certificates-the_newest_of_all_are = Nejnovějších { $count } z { $count2 }; všechny jsou mezi zápisy.
desk-certificates-over_or_not_safely_under = Nad mezí, nebo ne bezpečně pod ní
desk-certificates-no_result_is_over_a = Žádný výsledek není nad mezí ani bez bezpečného odstupu pod ní.
desk-certificates-no_certificate_yet_log_one = Zatím bez protokolu. Zapsat ho u nádoby, nebo tady pro líh, který už je v lahvích.
desk-casks_by_year-at_the_end_of_a = Na konci měsíce
desk-casks_by_year-casks_by_kind_and_year = Sudy podle druhu a roku
desk-casks_by_year-at_the_end_of = Na konci
desk-casks_by_year-filled_casks = Plné sudy { $when }, podle obsahu a roku naplnění; { $what } podle posledního měření.
desk-casks_by_year-at_the_end_of2 = ({ $month }, konec)
desk-casks_by_year-now = teď
desk-casks_by_year-no_cask_is_full = Zatím žádný plný sud.
desk-casks_by_year-wood = Dřevo
desk-casks_by_year-with = S ±
desk-casks_by_year-by_papers_only = jen podle dokladů
desk-casks_by_year-some_by_papers = { $casks } jen podle dokladů
desk-casks_by_year-no_cask_was_full = Tehdy žádný plný sud.
desk-close-what_is_closed = Co se uzavírá
desk-close-the_entry_of_that_is = Zápis { $mark }, na který se kniha ptá
desk-close-in = Dovnitř, { $what }
desk-close-out = Ven, { $what }
desk-close-end = Konec, { $what }
desk-close-every_line_with_its = Každý řádek, s ±
desk-close-what_is_made_of = Z čeho ± je
desk-close-in_the_name_of_this = Jménem { $name } to natrvalo uzavře { $months }: údaje zůstanou, jak jsou. Pozdější zápis o této době se upraví v prvním otevřeném měsíci, kde ho každý vidí.
desk-close-months_to = { $count } měsíců, { $first } až { $last },
desk-close-each_of_them = každý z nich
desk-close-look_at_first = Nejdřív se podívat na { $link }.
desk-close-answer_them =
    { $count ->
        [one] odpovědět na něj
       *[other] odpovědět na ně
    }
desk-close-questions_are_open_read_each =
    { $count ->
        [one] Otevřen je { $count } dotaz
        [few] Otevřeny jsou { $count } dotazy
        [many] Otevřeno je { $count } dotazů
       *[other] Otevřeno je { $count } dotazů
    }. Přečíst každý a potvrdit; nebo { $link }. Uzávěrka natrvalo nese, co bylo otevřené.
desk-close-i_have_looked_at_these = Údaje prohlédnuty
desk-close-close = Uzavřít { $name }
desk-close-leave_it_open = Nechat otevřené
desk-close-back_to = Zpět na { $name }
desk-held-by_account = Podle účtu
desk-held-the_least_known_first = Nejméně známé nahoře
desk-held-no_vessel_held_anything_measured = Na konci období ({ $name }) nebylo v žádné nádobě nic změřeného, nebo jich bylo moc na sledování.
desk-held-at_the_end = Na konci, { $what }
desk-held-of_it_measured = Z toho změřeno
desk-held-known_to = Známo na
desk-held-measured_anew_these_make_the = Jejich nové změření zpřesní konec.
desk-held-last_measured = Naposledy změřeno
desk-held-only_what_came_in = jen to, co přišlo
desk-held-more_are_better_known = { $more } dalších je známo lépe.
desk-held-of_what_stood_there = : ± toho, co tam stálo
desk-period-came_after_the_last_close = Přišlo po poslední uzávěrce
desk-period-close_it = Uzavřít
desk-period-was_closed_by_on_digest = { $month }: uzavřeno, { $person }, { $when }, otisk { $code }.
desk-period-the_rest_is_open = Zbytek je otevřený.
desk-period-was_closed_with_questions_open =
    { $month }: uzavřeno s { $count ->
        [one] { $count } otevřeným dotazem
        [few] { $count } otevřenými dotazy
        [many] { $count } otevřenými dotazy
       *[other] { $count } otevřenými dotazy
    }, každý přečten: { $person }
desk-period-what_came_to_light_after = Co vyšlo najevo po uzávěrce. Údaje výše zůstávají, jak byly podepsány; rozdíl se upraví v prvním otevřeném měsíci.
desk-period-without_adjustments_each_figure_in = Bez úprav: každý údaj v měsíci, kam patří.
desk-period-came = Přišlo
desk-period-period = Období { $name }
desk-periods-casks_by_year = Sudy podle let
desk-periods-what_was_on_hand_at = Co bylo na skladě na konci čtvrtletí a měsíců, { $what }.
desk-periods-part_closed = zčásti uzavřeno
desk-periods-changed_since = od té doby změněno
desk-periods-tick_that_you_have_looked = Zaškrtnout, že údaje jsou prohlédnuty, pak uzavřít.
desk-periods-is_closed_what_comes_to = { $name } je uzavřeno. Co vyjde najevo teď, upraví se v prvním otevřeném měsíci.
desk-records-records = Záznamy, { $where }
desk-records-rules_change_check_todays_text = { $caution } Pravidla se mění: podívat se do dnešního znění.
desk-records-record = Záznam
desk-records-what_it_asks_for = Co žádá
desk-records-where_the_book_holds_it = Kde to kniha má
desk-records-not_held = Nemá
desk-records-when_keep = Kdy: { $when }. Uchovávat: { $keep }.
desk-records-signed_by = Podepisuje: { $sign }.
desk-records-source = Pramen: { $source }.
desk-records-eu = EU
desk-records-uk = UK
desk-seasons-litres_of_pure_alcohol_at = Litry čistého lihu při 20 °C
desk-seasons-from_fruit_to_spirit_in = Od ovoce k destilátu v jednom součtu: čím se přístroje naplnily a kde to je. { $what }.
desk-seasons-no_fruit_has_come_and = Zatím nepřišlo ovoce a nepálilo se.
desk-seasons-season = Sezona { $name }
desk-seasons-of_the_wash = zápary
desk-seasons-l_of_pure_alcohol_from = L čistého lihu ze 100 kg
desk-seasons-of_fruit_what_a_ferment = { $l_per_100kg } { $what } ovoce. Co kvas dal a žádný přístroj neměl, je ještě v kvasných nádržích, nebo odešlo s kaly.
desk-seasons-litres_gauged_not_litres_taxed = Litry změřené, ne zdaněné
desk-seasons-gauged_not_taxed = Změřeno, ne zdaněno
desk-seasons-a_season_runs_twelve_months = { $what }. Sezona trvá dvanáct měsíců od července; lihovar jižně od rovníku si měsíc nastaví.
desk-seasons-made_by_fermentation = Vzniklo kvašením
desk-seasons-hearts = Jádro
desk-seasons-heads = Úkap
desk-seasons-feints_on_hand = Úkap, dokap na skladě
desk-seasons-stillage = Výpalky
desk-seasons-between_two_dips_of_low = Mezi dvěma hladinami lutru
desk-seasons-found_by_gauges_after_collection = Zjištěno měřením po jímání
desk-seasons-lost_out_of_the_stills = Ztráta mimo přístroje, zápisem
desk-seasons-on_a_still_now = Teď v přístroji
desk-seasons-made_of_fruit = Vzniklo kvašením z { $fruit } ovoce
desk-seasons-wash_charged = Zápara naplněná v páleních: { $runs }
desk-runs_parts-in_out = Dovnitř { $charged }, ven { $came }:
desk-runs_parts-not_accounted_for = { $open }{ $pure } ({ $share } %) chybí.
desk-runs_parts-more_than_went_in = { $open }{ $pure } ({ $share } %) víc, než šlo dovnitř.
desk-runs_parts-stillage_was_not_read_taken = Výpalky se neměřily: brány jako { $stillage_pct } { $what }.
desk-runs_parts-plans = Plány
desk-runs_parts-low_look_at_fruit_ferment = málo: podívat se na ovoce, kvas, bilanci
desk-runs_parts-high_look_at_weights_and = moc: podívat se na hmotnosti a měření
desk-runs_parts-in = dovnitř
desk-runs_parts-out = ven
desk-beside-runs_beside_each_other = Pálení vedle sebe
desk-beside-list_of_runs = seznam pálení
desk-beside-tick_two_to_runs_in = Zaškrtnout dvě až { $most } pálení: { $link }.
desk-beside-still_began = Přístroj, začátek
desk-beside-charged = Naplněno, { $what }
desk-beside-feints_in = Úkap, dokap dovnitř, { $what }
desk-beside-hearts_at = Jádro, { $what } při { $what2 }
desk-beside-hearts_share_of_the_charge = Jádro, podíl náplně
desk-beside-hearts_begin_at = Jádro začíná při
desk-beside-tails_begin_at = Dokap začíná při
desk-beside-from_100_kg_l_pure = Ze 100 kg, L čistého lihu
desk-beside-from_100_lb_proof_gal = Ze 100 lb, proof gal
desk-beside-over_alcohol = Skutečná koncentrace podle jímaného čistého lihu
desk-feints-feints_by_fruit = Úkap a dokap podle ovoce
desk-feints-no_feints_yet_they_come = Zatím žádný. Přijde s měřením úkapu a dokapu.
desk-feints-heads_and_tails_by_fruit = Úkap a dokap podle ovoce: co se odložilo, co měla pozdější pálení, co se znehodnotilo, co stojí. Pozdější pálení může být z jiného ovoce: co mělo, počítá se k ovoci, které se pálilo.
desk-feints-heads_set_aside = Odložený úkap
desk-feints-tails_set_aside = Odložený dokap
desk-feints-used_in_its_runs = Užito v jeho páleních
desk-feints-destroyed = Znehodnoceno
desk-feints-standing_is_by_what_was = Co stojí, je podle posledního jména u nádoby. Lihoměr metanol nevidí: úkap a dokap se řídí tím, co říká laboratoř a zákon, ne koncentrací.
desk-plans-cut_plans_and_best_runs = Plány řezů a nejlepší pálení
desk-plans-plan_for_any_still = Plán pro kterýkoli přístroj
desk-plans-for_one_still_log_it = { $link } Pro jeden přístroj ho zapsat na jeho listu pálení. Platí poslední plán; rozhoduje nos.
desk-plans-no_plan_yet_and_no = Zatím bez plánu a bez nejlepšího pálení.
desk-plans-heads = Úkap, { $what }
desk-plans-hearts_to = Jádro do, { $what }
desk-plans-tails_to = Dokap do, { $what }
desk-plans-who_when = Kdo, kdy
desk-plans-blind_tasting = Slepá degustace { $tasting }
desk-plans-best_runs = Nejlepší pálení
desk-run-balance = Bilance
desk-run-on_from = { $what } { $batch }, přístroj { $link }, od { $when }
desk-run-to = do { $when }
desk-run-charge = Náplň { $volume_l }
desk-run-with = s { $lpa_l }{ $pure }
desk-run-it_is_known_to_by = Známo na { $uncertain } { $what }, podle třídy toho, čím se četlo.
desk-run-usual_is_0_5_to = Obvyklé je 0,5 až 2 %.
desk-run-from_of_wash_of_fruit = { $bold }, { $per_100_l } z { $what } zápary; { $kg } ovoce podle podílu kvasu.
desk-run-l_from_100_kg = L ze 100 kg
desk-run-flat_rate_for_in_germany = Paušál pro { $name }: { $de_l }{ $what } v Německu
desk-run-in_austria = { $at_l } v Rakousku
desk-run-this_is_of_the_first = to je { $of_flat_rate } prvního.
desk-run-plan = Plán:
desk-run-heads = úkap { $heads_l };
desk-run-hearts_to = jádro do { $hearts_to_pct } { $what };
desk-run-tails_to = dokap do { $tails_to_pct } { $what };
desk-run-blind_tasting = slepá degustace { $tasting }
desk-run-resting_on = opírá se o { $link }
desk-run-best_run_of = Nejlepší pálení: { $what }
desk-run-why_it_is_the_best = Proč je nejlepší
desk-run-mark_as_the_best_run = Označit za nejlepší pálení: { $what }
desk-run-cuts_and_events = Řezy a události
desk-run-event = Událost
desk-run-receiver = Jímadlo
desk-run-true = { $what } skutečná
desk-run-logged = zapsáno { $typed_at }
desk-run-fractions = Frakce
desk-run-none_gauged_yet = Zatím žádná nezměřena.
desk-run-fraction = Frakce
desk-run-glass = Lihoměr
desk-run-spirit = Líh { $what }
desk-run-vapour = Páry { $what }
desk-run-dip = Hladina, { $what }
desk-run-a_hydrometer_cannot_see_methanol = Lihoměr metanol nevidí. Tady nevyšetřeno: metanol, ethylkarbamát.
desk-run-l_pure_alcohol_from_100 = L čistého lihu ze 100 kg
desk-run-the_book_has_no_such = Takové pálení kniha nemá. Hledat ho v seznamu pálení.
desk-run-marked_as_the_best_run = Označeno za nejlepší pálení: { $what }.
desk-run-not_marked = Neoznačeno:
desk-run-not_accounted_for = chybí
desk-run-this_still = tento přístroj
desk-run-true_strength_through = Skutečná koncentrace během pálení
desk-run-true_strength = skutečná koncentrace
desk-run-cut_logged = { $at }, zapsáno { $typed_at }
desk-runs-no_runs_yet_a_charge = Zatím žádné pálení. Začíná náplní přístroje.
desk-runs-beside_each_other = Vedle sebe
desk-runs-tick_two_to = Zaškrtnout dvě až { $most }.
desk-runs-tick = Zaškrtnout
desk-runs-began = Začátek
desk-runs-charge = Náplň, { $what }
desk-runs-cuts = Řezy
desk-runs-beside_others = { $name } vedle jiných
desk-runs-best = nejlepší
desk-runs-tails =
    { $is_heads_cut ->
        [yes] jádro
       *[no] dokap
    } { $at }
desk-runs-logged = (zapsáno { $typed_at })
desk-runs-at = při { $true_strength } { $what }
desk-runs-pure_alcohol_in_l = Čistý líh dovnitř, L
desk-runs-proof_gal_in = Proof gal dovnitř
desk-yields-yield_of_each_ferment = Výtěžnost kvasů
desk-yields-yield_by_fruit_and_year = Výtěžnost podle ovoce a roku
desk-yields-no_yield_yet_it_needs = Zatím bez výtěžnosti. Chce to ovoce přes váhu, náplň z jeho nádrže a změřené jádro nebo lutr.
desk-yields-what_each_ferment_gave_all = Co který kvas dal: vše, co přeteklo, bez přidaného úkapu a dokapu. Paušály jsou bezpečné průměry pro výpočet daně, ne cíle; pod 60 % nebo nad 150 % stojí za pohled (běžná praxe). Vlastní roky lihovaru říkají víc.
desk-yields-first_run = První pálení
desk-yields-fruit_run = Vypálené ovoce, { $what }
desk-yields-wash_run = Vypálená zápara, { $what }
desk-yields-made = Vyrobeno, { $what }
desk-yields-n100_kg = 100 kg
desk-yields-n100_lb = 100 lb
desk-yields-from = z { $what }
desk-yields-flat_rate_de = Paušál DE
desk-yields-flat_rate_at = Paušál AT
desk-yields-of_the_rate = Z paušálu
desk-yields-a_100_kg = na 100 kg
desk-yields-the_houses_own_years_from = Vlastní roky lihovaru, z { $what }
desk-yields-ferment =
    { $yield } { $what }, { $ferments ->
        [one] { $ferments } kvas
        [few] { $ferments } kvasy
        [many] { $ferments } kvasů
       *[other] { $ferments } kvasů
    }
desk-yields-where_the_flat_rates_come = Odkud paušály jsou
desk-yields-check_them_against_the_order = Než se podle nich počítá, ověřit je v platné vyhlášce.
desk-yields-proof_gallons_the_flat_rates = Proof gallony; paušály jak byly vydány, v litrech čistého lihu
desk-yields-austria = Rakousko
desk-yields-spread_in_handbooks = Rozpětí v příručkách
desk-yields-a_ferment = kvas
desk-lines-the_whole_book = Celá kniha
desk-lines-find = Hledat
desk-lines-mark_lot_person_paper_no = značka, šarže, osoba, č. dokladu
desk-lines-what_answers = Co odpovídá
desk-lines-find_in_the_book = Hledat v knize
desk-lines-shown = Ukázáno: { $many }. Vede k nim šipka dolů.
desk-lines-nothing_answers = Nic neodpovídá.
desk-hits-all_that_answers_to = Vše, co odpovídá „{ $text }“
desk-hits-nothing_answers_to = „{ $text }“ neodpovídá nic.
desk-search-the_index_of_older_entries = Rejstřík starších zápisů se ještě dělá. Nedávné se najde; zbytek přijde sám.
desk-search-everything_that_answers = Vše, co odpovídá
desk-search-the_first_type_more_of = Prvních { $most }: napsat toho víc.
desk-search-more_of_these = Další takové
desk-search-did_you_mean = Nemělo to být
desk-search-list_of_entries = seznam zápisů
desk-search-try_a_shorter_beginning_or = Zkusit kratší začátek nebo o slovo méně. Zápisy beze slov se najdou podle nádoby, nebo tady: { $link }. Co čeká v telefonu, v knize ještě není.
desk-search-type_the_beginning_of_a = Napsat začátek značky, dávky nebo šarže, pálení, pěstitele, čísla dokladu, osoby, měřidla, nebo slova z poznámky. C6, c-006 a C 006 najdou týž sud; háčky a čárky nevadí. Zápis najde i jeho číslo v knize.
desk-search-found_for = Nalezeno pro „{ $text }“
desk-search-search = Hledání
desk-search-a_trace_goes_both_ways = Stopa vede oběma směry: od láhve, sudu nebo pálení zpět k ovoci, a od dodávky ovoce ke každé láhvi.
desk-search-the_book_has_nothing_by = Pod tím jménem kniha nic nemá. Zkusit značku, dávku, číslo kartonu, nebo část jména pěstitele.
desk-search-that_answer_to =
    { $are_more ->
        [yes] Prvních { $count }
       *[no] Počet: { $count }
    }, odpovídá „{ $text }“
desk-search-nothing_among = { $group }: „{ $text }“ neodpovídá nic.
desk-search-a_vessel = nádoba
desk-search-batches_and_lots = Dávky a šarže
desk-search-bottlings = Stáčení
desk-search-fruit_taken_in = Přijaté ovoce
desk-search-papers = Doklady
desk-search-entries_and_remarks = Zápisy a poznámky
desk-search-put_right_since = od té doby opraveno
desk-search-waits_for_an_answer = čeká na odpověď
desk-search-out_of_use = mimo provoz
desk-search-since = od { $since }
desk-search-no = { $day }, { $person }, č. { $number }
desk-search-to = { $since } až { $until }
desk-search-to2 = do { $last }
desk-look-row = Řádek { $number }, { $head_of }
desk-look-row2 = řádek
desk-look-computed = vypočteno
desk-look-pure_alcohol_l = Čistý líh, L{ $part }
desk-look-rows = { $name } · řádků { $count } · { $code }
desk-look-look_again = Podívat se znovu
desk-look-nothing_is_in_the_book = V knize zatím nic není.
desk-look-cell_is_a_formula_what =
    { $formulas ->
        [one] { $formulas } buňka je vzorec
        [few] { $formulas } buňky jsou vzorce
        [many] { $formulas } buněk jsou vzorce
       *[other] { $formulas } buněk jsou vzorce
    }: bere se, co bylo vidět naposledy.
desk-look-read_them_so = Přečíst takto
desk-look-which_column_is_which = Který sloupec je který
desk-look-of_taken = vzato { $count } z { $count2 }
desk-look-these_rows_are = Tyto řádky jsou
desk-look-not_said = neuvedeno
desk-look-in = v { $unit }
desk-look-none_of_these = nic z toho
desk-look-more_rows_fit = sedí ještě { $count } řádků
desk-look-rows_to = řádky { $others } až { $others2 }
desk-look-what_does_not_fit_in = Co nesedí, slovy
desk-look-row3 = řádek { $number }
desk-look-leave_row_out = Vynechat řádek { $number }
desk-look-more_put_these_right_first = ještě { $more }. Nejdřív opravit tyto, nebo je opravit v listu.
desk-look-rows_fit_they_bring = Sedí { $count } řádků. Přinášejí
desk-look-l_of_pure_alcohol = { $bold } L čistého lihu
desk-look-row_fit =
    { $count ->
        [one] Sedí { $count } řádek
        [few] Sedí { $count } řádky
        [many] Sedí { $count } řádků
       *[other] Sedí { $count } řádků
    }.
desk-look-put_in_the_book = Zapsat { $put } do knihy
desk-look-the_book_has_all_of = Kniha už to všechno má. Není co dělat.
desk-look-nothing_fits_yet = Zatím nesedí nic.
desk-look-known_already = už známo
desk-look-does_not_fit = nesedí
desk-look-left_out = vynecháno
desk-look-days_in_digits = Dny v číslicích
desk-look-days_were_read_as = Dny čteny jako
desk-look-day_month_year = den, měsíc, rok
desk-look-month_day_year = měsíc, den, rok
desk-look-more_of = Další: { $title }
desk-start-moving_in = Stěhování
desk-start-copy_the_rows_with_their = Řádky i se záhlavím v tabulkovém programu zkopírovat a vložit sem.
desk-start-template_of_csv = Šablona: { $title }, CSV
desk-start-sheets = Listy
desk-start-a_file = Soubor
desk-start-csv_xlsx_or_ods_with = CSV, XLSX nebo ODS, s jedním záhlavím nad každým sloupcem, v jakémkoli pořadí. Sešit může mít víc tabulek.
desk-start-or_pasted = Nebo vložit
desk-start-nothing_is_written_before_you = Dokud neřeknete, nic se nezapíše.
desk-start-templates = Šablony
desk-start-all_in_one_workbook = Vše v jednom sešitu
desk-start-needed_more_may_be_there = nutné; může být ještě { $count }
desk-start-put_in_so_far = Dosud zapsáno
desk-start-no_sheet_yet = Zatím žádný list.
desk-start-no = Č.
desk-taken-why_it_is_taken_back = Proč se bere zpět
desk-taken-the_file = Soubor
desk-taken-another_sheet = Jiný list
desk-taken-put_in_by_kept_as = Vloženo: { $person }, { $when }. Uchováno, jak přišlo, otisk { $code }.
desk-taken-by = { $when }, { $back_by }: { $reason }
desk-taken-take_the_whole_sheet_back = Vzít celý list zpět
desk-taken-table = Tabulka
desk-taken-row = Řádek
desk-taken-which = Které
desk-taken-opening_stock = počáteční zásoba
desk-taken-sheet = List { $no }
desk-cautions-n20_to_30_vol = 20 až 30 % vol
desk-cautions-n40_to_60_proof = 40 až 60 proof
desk-cautions-n20_to_30_ml = 20 až 30 mL
desk-cautions-about_1_fl_oz = asi 1 fl oz
desk-cautions-reduce_to_a_glass_and = Zředit na { $what }, { $what2 } do sklenky, a vyplivnout. Nejvýš tři nebo čtyři sady na sezení, mezi nimi voda a prostý chléb, dvě minuty pauza. Po degustaci nikdo neřídí ani nepracuje u přístroje či stroje. Úkap se nikdy nechutná: nejvýš nos. Degustace nikdy nedokáže, že je líh nezávadný: metanol, kyanovodík a ethylkarbamát nemají chuť, která by je prozradila. Přednost mají pravidla provozu, místní zákon a oprávněná laboratoř.
desk-new-what_a_number_of_answers = Co který počet odpovědí najde
desk-new-triangle_three_glasses_one_is = Trojúhelníková: tři sklenky, jedna je jiná. Duo-trio: jedna stojí otevřeně, která ze dvou je stejná? Párová: která má víc toho, na co se ptáte? Jednostranná, když předem jmenujete odpověď A. Pořadí: tři až pět vzorků popořadě.
desk-new-of_sample_in_words = Vzorek { $letter }, slovy
desk-new-tasters = Degustátoři
desk-new-draw_the_codes_and_seal = Vylosovat kódy a zapečetit
desk-new-a_triangle_at_a_risk = Trojúhelníková při riziku 5 %. Málo odpovědí najde jen velké rozdíly.
desk-new-right_at_least = Správně, nejméně
desk-new-found_if_half_perceive_it = Nalezeno, vnímá-li polovina
desk-new-found_four_times_in_five = Nalezeno čtyřikrát z pěti od
desk-new-who_perceive_it = { $what } % vnímajících
desk-new-set_out_a_blind_tasting = Připravit slepou degustaci
desk-new-n64_to_60_vol = 64 až 60 % vol
desk-new-n128_to_120_proof = 128 až 120 proof
desk-tasting-how_often_guessing_alone_gives = Jak často dá pouhý odhad který počet správných odpovědí; tato degustace dala { $right } z { $answers }.
desk-tasting-who_has_answered = Kdo odpověděl
desk-tasting-serving_sheet = Servírovací list
desk-tasting-risk = { $bold } { $method }, riziko { $alpha_pct } %
desk-tasting-served_at = podáváno při { $served }
desk-tasting-set_out_by_on = Příprava: { $person }, { $when }.
desk-tasting-what_follows_by = Co z toho plyne, { $person }: { $bold }
desk-tasting-answers_came_in_after_the =
    { $count ->
        [one] { $count } odpověď přišla
        [few] { $count } odpovědi přišly
        [many] { $count } odpovědí přišlo
       *[other] { $count } odpovědí přišlo
    } po otevření, podle hodin telefonu zapsáno před ním: { $late }.
desk-tasting-bars_how_often_guessing_alone = Sloupce: jak často dá tolik pouhý odhad. Značka: tato degustace.
desk-tasting-plan_a_cut_that_rests = Plánovat řez, který se o ni opírá
desk-tasting-plan_a_vat_that_rests = Plánovat kupáž, která se o ni opírá
desk-tasting-it_was_opened_on_and = Otevřena { $when }, a žádná odpověď se nepočítá.
desk-tasting-letter = Písmeno
desk-tasting-sample = Vzorek
desk-tasting-of_it = Z toho
desk-tasting-rank_sum = Součet pořadí
desk-tasting-batch = dávka { $name }
desk-tasting-run = pálení { $name }
desk-tasting-taster = Degustátor
desk-tasting-glasses = Sklenky
desk-tasting-named = Jmenováno
desk-tasting-how_sure = Jistota
desk-tasting-what_gave_it_away = Co to prozradilo
desk-tasting-not =
    { $picked }, { $is_right ->
        [yes] správně
       *[no] ne
    }
desk-tasting-entry = zápis
desk-tasting-sealed_of_answers_are_in = Zapečetěno: odpovědí { $count } z { $count2 }
desk-tasting-which_code_holds_which_sample = Který kód je který vzorek, ví jen ten, kdo nalévá. Zápis drží pečeť klíče, aby ho potom nikdo nezměnil.
desk-tasting-glasses_left_to_right = Sklenky, zleva doprava
desk-tasting-tasters_answer_on_the_phone = Degustátoři odpovídají v telefonu, pod Slepá degustace. Jde to bez signálu.
desk-tasting-answers_that_are_not_in =
    { $are_in ->
        [yes] Odpovědi jsou všechny.
       *[no] Odpovědi, které ještě nepřišly, se nebudou počítat.
    } Po otevření zůstane otevřená.
desk-tasting-what_follows_if_you_know = Co z toho plyne, víte-li to už
desk-tasting-you_taste_in_this_one = V této chutnáte. Otevřít ji můžete, až přijde poslední odpověď.
desk-tasting-blind_tasting = Slepá degustace { $name }
desk-tasting-difference_found = rozdíl nalezen
desk-tasting-no_difference_shown = rozdíl neprokázán
desk-tasting-in = dovnitř
desk-tasting-run2 = pálení { $run }, { $what }
desk-tasting-the_book_has_no_tasting = Degustaci toho jména kniha nemá. Hledat ji v seznamu degustací.
desk-tasting-you_taste_in_this_one2 = V této chutnáte. Otevřít ji můžete, až přijde poslední odpověď.
desk-tasting-its_key_is_not_in = Její klíč v této knize není: losovalo se po záloze, ze které kniha je. Nalít znovu.
desk-tasting-this_sheet_says_which_sample = Tento list říká, který vzorek je ve které sklence: je pro toho, kdo nalévá, a žádný degustátor ho nevidí.
desk-tasting-not_said = neuvedeno
desk-tasting-the_book_has_a_tasting = Degustaci toho jména už kniha má. Dát této jiné.
desk-tasting-the_codes_are_drawn_and = Kódy jsou vylosované a zapečetěné. Telefon každého degustátora je má s dalšími kartami.
desk-tasting-it_is_open_answers_from = Je otevřená. Další odpovědi se nepočítají.
desk-tasting-by_guessing_alone_so_many = Pouhým odhadem přijde tolik nebo víc { $times_in } ({ $p_words }).
desk-tasting-by_chance_alone_the_rank = Pouhou náhodou leží součty pořadí tak daleko { $times_in } ({ $p_words }, { $how }; Friedmanova hodnota { $friedman }).
desk-tasting-of_rank_sums_must_be = { $answers }, { $people }: součty pořadí se musí lišit o { $lsd }, aby to platilo.
desk-tasting-n1_time_in = 1krát z { $min }
desk-tasting-named2 = jmenováno { $named }
desk-tasting-no_difference_shown_that_is = Rozdíl neprokázán. To není důkaz, že jsou stejné.
desk-tasting-were_needed = bylo třeba { $needed }
desk-tasting-so_few_answers_cannot_show = tak málo odpovědí při tomto riziku rozdíl ukázat nemůže
desk-tasting-can_find_nothing_at_a = { $answers }: při riziku { $tasting } % se nenajde nic.
desk-tasting-of_find_a_difference_four = { $answers }, { $people }: rozdíl se najde čtyřikrát z pěti, vnímá-li ho aspoň { $share } odpovědí; menší snadno unikne.
desk-tasting-the_order_is_more_than = Pořadí je víc než náhoda. Liší se: { $pairs }.
desk-tasting-counted_out_over_all_orders = spočteno přes všechna pořadí
desk-tasting-by_chi_square_which_is = chí-kvadrátem, což je při tolika blízko
desk-tasting-it_speaks_of_these_people = Mluví o těchto lidech, ne o pijácích obecně.
desk-tasting-answers =
    { $many ->
        [one] { $many } odpověď
        [few] { $many } odpovědi
        [many] { $many } odpovědí
       *[other] { $many } odpovědí
    }
desk-tasting-people =
    { $many ->
        [one] { $many } osoba
        [few] { $many } osoby
        [many] { $many } osob
       *[other] { $many } osob
    }
desk-tasting-times_in_10 = { $min }krát z 10
desk-tasting-p_below_0_0001 = p pod 0,0001
desk-tasting-they_can_be_told_apart = Lze je rozeznat.
desk-tasting-is_named_more_often = Častěji je jmenováno { $named }.
desk-tasting-the_order_is_more_than2 = Pořadí je víc než náhoda, ale žádné dva vzorky nejsou dost daleko, aby se dalo říct které.
desk-tasting-no_order_shown_that_is = Pořadí neprokázáno. To není důkaz, že jsou stejné.
desk-tasting-of = { $right } z { $many } { $what }; { $needed }. { $says }
desk-tastings-set_out_a_tasting = Připravit degustaci
desk-tastings-ask_one_question_before_pouring = Před naléváním jedna otázka. Kdo chutná, neví, co je ve které sklence; kniha spočítá, co odpovědi váží. Úkap se nikdy nechutná.
desk-tastings-none_yet_set_one_out = Zatím nic. Připravit: dva vzorky, otázka a kdo chutná.
desk-tastings-tasting = Degustace
desk-tastings-question = Otázka
desk-tastings-method = Metoda
desk-tastings-set_out = Připravit
desk-tastings-of = { $count } z { $count2 }
desk-tastings-nobody_answered = nikdo neodpověděl
desk-tastings-sealed = zapečetěno
desk-asked-look_at_it = Podívat se: { $title }
desk-asked-more_about_it = ještě { $count } k tomu
desk-asked-all_questions_with_their_answers = Všech { $owed } dotazů, s odpověďmi
desk-asked-answer_them = Odpovědět
desk-asked-no_figure_waits_for_an = Žádný údaj nečeká na odpověď.
desk-asked-you = vy
desk-asked-it_stands = platí
desk-asked-the_last_answer_was_by = Poslední odpověď { $near }, { $who }: { $verdict }
desk-asked-what_comes_in_out_of = Co přijde mimo rozsah, bude stát tady.
desk-asked-all_answers = Všechny odpovědi
desk-asked-look_at_it_on = Podívat se: { $title }, { $mark }
desk-asked-struck = škrtnuto
desk-house-pure_alcohol_year_by_year = Čistý líh rok za rokem
desk-house-the_house_holds = Lihovar má
desk-house-litres_of_pure_alcohol = litrů čistého lihu
desk-house-by_the_book_at = { $what }, podle knihy { $minute }
desk-house-less_than_on =
    o { $more } { $is_more ->
        [yes] víc
       *[no] míň
    } než { $since }
desk-house-pure_alcohol_by_spirit = Čistý líh podle druhu
desk-house-oldest = nejstarší
desk-house-others = dalších { $many }
desk-house-wash_and_runs_under_way = zápara a běžící pálení
desk-house-at_the_ends_of_months = Na koncích měsíců, jak je známo dnes: celkem, a co je ve skladu.
desk-house-year_by_year = Rok za rokem
desk-house-in_storage = ve skladu
desk-house-in_processing = ve zpracování
desk-house-in_production = ve výrobě
desk-house-season = Sezona { $season }
desk-house-fruit_in = ovoce dovnitř
desk-house-made = vyrobeno
desk-house-left = odešlo
desk-house-lost = ztraceno
desk-house-pure_alcohol_in_the_house = Čistý líh v lihovaru
desk-house-all = vše
desk-line-as_typed_likely_expected = { $part } jak zapsáno { $part2 } pravděpodobné { $part3 } očekávané
desk-line-the_day_on_a_line = Den na čáře
desk-line-cleaned = vyčištěno
desk-line-off = teče { $at }
desk-line-reached = dosaženo: nejdřív nos
desk-line-too_little = zatím málo odečtů
desk-line-working = počítá se
desk-line-cut_to = řez na { $part }
desk-line-end = konec
desk-line-end_of_run = konec pálení
desk-line-span = { $low } až { $high }
desk-line-cleaned_at = vyčištěno { $at }, { $person }
desk-line-off_since = { $run } teče od { $at }
desk-line-since = { $run }: { $part } od { $at }
desk-line-nothing = dnes nic
desk-line-by_plan = podle plánu
desk-line-as_last = jako minule
desk-line-was_expected = { $what }: čekáno asi { $at }, { $by }: odečíst teď, nejdřív nos
desk-line-expected = { $what } asi { $at }, mezi { $low } a { $high }, { $by }
desk-line-is_reached = { $what }: dosaženo, { $by }: nejdřív nos
desk-line-is_working = { $what }: počítá se, otevřít stránku znovu
desk-line-is_unknown = { $what }: na určení času málo odečtů
desk-lists-phones_backup_and_book = Telefony, záloha a kniha
desk-lists-near_their_end = Blízko konce
desk-lists-all_ferments = Všechny kvasy
desk-lists-no_ferment_says_yet_when = Zatím žádný kvas neříká, kdy skončí. { $link }
desk-lists-the_days_are_meant_to = Dny mají platit čtyřikrát z pěti; rozhodnou tři stejné rel. hustoty. { $link }
desk-lists-nothing_is_due = Nic nemá termín.
desk-lists-since_you_were_last_here = Od vaší minulé návštěvy, { $near }
desk-lists-nothing_has_come_in = Nic nepřišlo.
desk-lists-entries_of =
    { $entries ->
        [one] zápis
        [few] zápisy
        [many] zápisů
       *[other] zápisů
    } z { $count }
desk-lists-read_them = Přečíst
desk-lists-never_heard_yet = ještě nikdy
desk-lists-since_what_it_holds_is = od { $near }. Co drží, tu není.
desk-lists-more_phones =
    { $more_phones ->
        [one] ještě { $more_phones } telefon
        [few] ještě { $more_phones } telefony
        [many] ještě { $more_phones } telefonů
       *[other] ještě { $more_phones } telefonů
    }
desk-lists-book = Kniha
desk-lists-entries =
    { $bold } { $what } { $entries ->
        [one] zápis
        [few] zápisy
        [many] zápisů
       *[other] zápisů
    }
desk-lists-misses = chybí { $count }
desk-lists-silent = mlčí
desk-lists-heard = přečteno
desk-lists-being_judged_anew = posuzuje se znovu
desk-lists-judged = posouzeno
desk-lists-every_entry_by_the_rules = každý zápis podle dnešních pravidel a mezí
desk-today-today = Dnes – { $name }
desk-today-owed_an_answer = Čeká na odpověď
desk-trace_parts-and_more_all_are_in = a ještě { $more }: vše je v souboru
desk-trace_parts-and_more_all_are_in2 = a ještě { $count }: vše je v souboru
desk-trace-print_the_passport = Vytisknout průvodku
desk-trace-load_of_fruit = Dodávka ovoce
desk-trace-words = { $bold }{ $pure } { $what2 }
desk-trace-its_entry = Její zápis
desk-trace-the_run = Pálení
desk-trace-the_vessel = Nádoba
desk-trace-lot_mark = Označení šarže
desk-trace-none_of_it_is_in = Podle knihy nic z toho není v lahvích.
desk-trace-no_case_of_it_has = Podle knihy žádný karton z toho neodešel.
desk-trace-not_accounted_for_yet = zatím chybí
desk-trace-by_mass = hmotností
desk-trace-tasted_blind = Ochutnáno naslepo
desk-trace-nothing_has_moved_into_it = Zatím se dovnitř ani ven nic nepřesunulo.
desk-trace-every_vessel_and_run_is = Každá nádoba i pálení se berou jako dobře promíchané: co odchází, má v sobě vše, co přišlo, každé podle podílu čistého lihu. Alkohol kvasu se dělí na dodávky podle hmotnosti. Měření mění, kolik toho je, ne co to je.
desk-trace-made_of = Vyrobeno z
desk-trace-picture = { $head }: { $name }. Seznam pod obrázkem říká totéž slovy.
desk-trace-from_before_this_book = Z doby před touto knihou
desk-trace-received_from_elsewhere = Přijato odjinud
desk-trace-not_on_record = Bez záznamu
desk-trace-no_fruit_on_record = Ovoce bez záznamu
desk-trace-not_followed = Nesledováno
desk-trace-ferments = Kvasy
desk-trace-receivers = Jímadla
desk-trace-cans = Kanystry
desk-trace-stills = Přístroje
desk-trace-tanks = Nádrže
desk-trace-vats = Kupáže
desk-trace-between_sites = Mezi závody
desk-trace-bottlings = Stáčení
desk-trace-bottles_between_sites = Láhve mezi závody
desk-trace-received_in_bottles = Přijato v lahvích
desk-trace-gone = Odešlo
desk-trace-trace_of = Stopa: { $name }
desk-trace-the_book_has_nothing_to = Pod tím jménem kniha nemá co stopovat. Hledat na stránce stopy.
desk-trace-under_0_1 = pod 0,1 %
desk-trace-origin = Původ
desk-trace-bottles_losses = Láhve, ztráty
desk-trace-others = { $count } dalších
desk-dips-strapping_table = Cejchovní tabulka
desk-dips-paste_the_two_columns_of = Vložit dva sloupce z listu tabulky: odečet, pak objem, mezi nimi středník, tabulátor nebo mezera. Mezi řádky jde objem po přímce.
desk-dips-dimensions_of_a_cask = Rozměry sudu
desk-dips-inside_without_the_wood_by = Uvnitř, bez dřeva. Objem z nich je odhad, vedle asi o 3 % plného sudu; vážený sud je znám desetkrát lépe.
desk-dips-dips_of = Hladiny { $mark }
desk-dips-has_its_litres_estimated_from = má litry odhadnuté podle: { $by }, podle rozměrů: { $sizes } cm, { $how }.
desk-dips-how_its_litres_follow_from = Jak z hladiny plynou litry
desk-dips-what_is_measured = Co se měří
desk-dips-table_a_line_of_dip = Tabulka: na řádek hladina a objem
desk-dips-lengths_in = Délky v
desk-dips-volumes_in = Objemy v
desk-dips-shell = Plášť
desk-dips-the_table_holds_at = Tabulka platí při
desk-dips-temperature_in = Teplota v
desk-dips-tilt_add_to_each_reading = Náklon: přičíst ke každému odečtu [mm]
desk-dips-diameter_at_the_bung_inside = Průměr u zátky, uvnitř
desk-dips-diameter_of_a_head_inside = Průměr dna, uvnitř
desk-dips-length_from_head_to_head = Délka ode dna ke dnu, uvnitř
desk-dips-the_cask = Sud
desk-dips-is_not_dipped_by_the = se podle knihy neměří hladinou: litry se píšou.
desk-dips-has_its_litres_from_its = má litry podle: { $by }, z tabulky s { $count } řádky: { $brief } až { $brief2 } cm, { $brief3 } až { $brief4 } L.
desk-dips-by_a_strapping_table = podle cejchovní tabulky
desk-dips-by_the_dimensions_of_a = podle rozměrů sudu, odhad
desk-dips-not_at_all_litres_are = vůbec ne: litry se píšou
desk-dips-dip_from_the_bottom_up = hladina: ode dna nahoru
desk-dips-ullage_from_the_top_down = prázdný prostor: shora dolů
desk-dips-stainless_steel_48_10_6 = nerezová ocel, 48·10⁻⁶ na °C
desk-dips-mild_steel_36_10_6 = uhlíková ocel, 36·10⁻⁶ na °C
desk-dips-other_no_correction = jiné: bez opravy
desk-edit-an_entry_of_put_it = Zápis z { $when } ji dal na { $bold }: tam stojí, ať tu stránka říká cokoli. K přesunu zapsat, že byla přesunuta.
desk-edit-change = Změnit { $mark }
desk-labels-labels = Štítky
desk-labels-without_a_place = bez místa
desk-labels-every_vessel_here_has_its = Každá nádoba má svůj štítek.
desk-labels-every_label_that_was_printed = Každý tady vytištěný štítek ještě říká totéž co kniha.
desk-labels-print_those_ticked = Vytisknout zaškrtnuté
desk-labels-print_all_of_this_list = Vytisknout všech { $what } z tohoto seznamu
desk-labels-print_at_full_size_not = Tisknout v plné velikosti, nepřizpůsobovat stránce; pravítko na listu musí měřit 50 mm.
desk-labels-the_first_of_are_shown = Ukázáno je prvních { $count } z { $count2 }.
desk-labels-label = Štítek
desk-labels-own_size = Vlastní rozměr
desk-labels-printed = vytištěno { $when }
desk-labels-printed_is_what_was_sent = Vytištěné je, co se z této stránky poslalo k tisku. Bez štítku jsou nádoby, jejichž štítek se tu netiskl ani nikdy neskenoval.
desk-labels-says_something_else_by_now = už říká něco jiného
desk-labels-tick_at_least_one_vessel = Zaškrtnout aspoň jednu nádobu a vybrat, na co se štítky tisknou.
desk-vessel-twice_the_standard_uncertainty_by = Dvojnásobek standardní nejistoty, podle třídy měřidel posledního měření a toho, co se od té doby přesunulo.
desk-vessel-dips = Hladiny
desk-vessel-since = od { $when }
desk-vessel-tare = tára { $tare_kg }
desk-vessel-inside_a_fire_zone = v požární zóně
desk-vessel-dipped_by_a_table =
    { $is_dips ->
        [yes] odhad podle rozměrů
       *[no] hladina podle tabulky
    }
desk-vessel-holds = Obsahuje { $holding }
desk-vessel-a_run_is_under_way = Běží pálení
desk-vessel-since2 = { $link } od { $when }.
desk-vessel-no_entries_yet_scan_its = Zatím bez zápisů. V provozu naskenovat štítek a zapsat první.
desk-vessel-all_its_entries = Všechny její zápisy
desk-vessel-the_book_knows_no_vessel = Kniha nezná nádobu { $mark }. Hledat ji v seznamu nádob.
desk-vessel-there_is_a_vessel_already = Nádoba { $mark } už je. Vybrat jiný kód, nebo změnit tuto.
desk-vessel-is_in_the_book = { $made } je v knize.
desk-vessels-find_vessels = Hledat nádoby
desk-vessels-add_the_first_then_print = Přidat první; pak vytisknout štítek.
desk-vessels-capacity = Objem, { $what }
access-again-your_password_again_cellarslate = Heslo ještě jednou – Cellarslate
access-again-is_it_still_you = Jste to pořád vy?
access-again-this_cannot_be_taken_back = { $name }, toto nelze vzít zpět, nebo to vynáší data z lihovaru. Ještě jednou ukázat, že jste to vy; platí pak { $minutes } minut.
access-again-go_on = Dál
access-again-use_a_passkey = Použít klíč
access-again-that_is_not_your_password = To není vaše heslo. Napsat znovu.
access-error-not_done_cellarslate = Neprovedeno – Cellarslate
access-error-not_done = Neprovedeno
access-error-to_the_sites = K závodům
access-error-to_the_desk = Do kanceláře
access-error-this_could_not_be_read = Nepodařilo se to přečíst. Jít zpět, podívat se, co je napsáno, a poslat znovu.
access-error-you_may_not_do_this = To tady nesmíte. Obrátit se na kancelář.
access-error-there_is_nothing_at_this = Na této adrese nic není. Jít zpět a vybrat ze seznamu.
access-error-this_address_does_not_take = Tato adresa to nebere. Jít zpět a použít tlačítko stránky.
access-error-this_is_too_large_send = To je moc velké. Poslat najednou méně.
access-error-send_json_with_content_type = Poslat JSON, s Content-Type: application/json.
access-error-too_many_tries_wait_a = Moc pokusů. Minutu počkat, pak zkusit znovu.
access-error-the_book_stumbled_nothing_handed = Kniha zakopla. Nic odevzdaného se neztratilo; zkusit znovu a říct tomu, kdo se stará o server.
access-error-the_book_is_busy_try = Kniha má práci. Za chvíli zkusit znovu.
access-error-this_page_was_open_too = Stránka byla otevřená moc dlouho, nebo z doby před přihlášením. Jít zpět, načíst ji a poslat znovu.
access-error-this_was_not_sent_from = Nepřišlo to z naší stránky. Otevřít stránku znovu a poslat z ní.
access-error-this_needs_the_role_ask = Chce to roli { $access }. Obrátit se na kancelář.
access-error-this_phone_is_not_let = Telefon není přijat. Otevřít v něm jednorázový kód kanceláře; nic se neztratilo.
access-invitation-your_password_cellarslate = Vaše heslo – Cellarslate
access-invitation-choose_your_password = { $name }, zvolte si heslo
access-invitation-lets_you_in = Přijímá vás { $site }.
access-invitation-you_are_let_in = Jste přijati.
access-invitation-your_short_code_is_nobody = { $who } Váš krátký kód je { $bold }. Heslo znáte jen vy: kancelář ho nepřečte, může vás jen znovu pozvat.
access-invitation-ten_characters_at_least_four = Aspoň deset znaků. Dobrá jsou čtyři slova, která by nikdo nedal dohromady; jméno, datum a „heslo“ ne.
access-invitation-set_it_and_sign_in = Nastavit a přihlásit
access-invitation-this_invitation_was_used_has = Pozvánka už byla použita, vypršela, nebo ji nahradila jiná. Požádat kancelář o novou.
access-set_up-set_up_cellarslate = Založení – Cellarslate
access-set_up-the_house_first_then_you =
    Nejdřív { $is_group ->
        [yes] název skupiny
       *[no] lihovar
    }, pak vy. Ostatní lze přijmout potom.
access-set_up-a_new_group = Nová skupina
access-set_up-a_new_book = Nová kniha
access-set_up-open_the_book = Otevřít knihu
access-sign_in-sign_in_cellarslate = Přihlášení – Cellarslate
access-sign_in-sign_in_to_the_desk =
    Přihlášení do { $is_group ->
        [yes] skupiny
       *[no] kanceláře
    }
access-sign_in-sign_in = Přihlásit
access-sign_in-sign_in_with_a_passkey = Přihlásit přístupovým klíčem
access-sign_in-on_the_floor_no_sign = V provozu se přihlašovat netřeba: kancelář telefon přijme jednou, kódem k naskenování.
access-sign_in-no_such_code = takový kód není
access-sign_in-too_many_tries_wait_s = Moc pokusů. Počkat { $wait_s } s.
access-sign_in-this_server_has_no_authority = Server nemá vlastní autoritu: běží bez TLS, nebo s certifikátem, který jste mu dali.
access-sign_in-code_or_password_is_wrong = Kód nebo heslo nesouhlasí. Napsat znovu.
access-sign_in-that_is_not_the_code = To není kód, který server vypsal při startu. Napsat znovu.
access-trust-let_this_phone_trust_the = Ať telefon lihovaru věří – Cellarslate
access-trust-let_this_phone_trust_the2 = Ať telefon lihovaru věří
access-trust-this_server_needs_no_certificate = Tento server certifikát v telefonu nepotřebuje: běží jen na tomto počítači, nebo má váš vlastní certifikát.
access-trust-once_on_each_phone_after = Na každém telefonu jednou. Zápisník pak jde otevřít bez varování a funguje bez signálu.
access-trust-iphone_or_ipad = iPhone nebo iPad
access-trust-most_often_it_is_installed = Nejčastěji je nainstalován, ale přepínač není zapnutý: Nastavení, Obecné, Informace, Nastavení důvěryhodnosti certifikátů. Není-li tam přepínač, profil se nenainstaloval: o krok zpět.
access-trust-android_phone = Telefon s Androidem
access-trust-most_often_it_was_filed = Nejčastěji se uložil jako certifikát Wi-Fi, nebo pro VPN a aplikace, kam se žádný prohlížeč nedívá. V Nastavení hledat „certifikát CA“ a týž soubor nainstalovat tam.
access-trust-windows = Windows
access-trust-it_may_have_been_placed = Možná se uložil jinam: zvolit úložiště ručně, Důvěryhodné kořenové certifikační autority.
access-trust-mac = Mac
access-trust-taken_but_not_set_to = Přijat, ale není nastaveno Vždy důvěřovat: to chybí nejčastěji.
access-trust-linux_another = Linux, jiný
access-trust-it_may_have_been_imported = Možná se importoval bez zaškrtnutí důvěry pro webové stránky.
access-trust-in_safari_fetch_the_profile = V Safari stáhnout profil a klepnout na Povolit. Jiné prohlížeče telefonu ho nevezmou.
access-trust-soon_after_open_settings_near = Brzy potom otevřít Nastavení. Nahoře stojí Profil stažen (jinak: Obecné, VPN a správa zařízení). Otevřít ho, klepnout na Instalovat a nainstalovat.
access-trust-settings_general_about_at_the = Nastavení, Obecné, Informace, úplně dole Nastavení důvěryhodnosti certifikátů: zapnout Cellarslate local authority. Samotná instalace nestačí.
access-trust-fetch_the_certificate_the_phone = Stáhnout certifikát. Telefon ho má mezi staženými soubory.
access-trust-open_settings_and_search_for = Otevřít Nastavení a hledat: certifikát CA. (Zabezpečení, Šifrování a přihlašovací údaje, Instalovat certifikát, Certifikát CA.) Klepnout na Přesto instalovat. Telefon bez zámku obrazovky ho nejdřív žádá.
access-trust-choose_the_file_cellarslate_crt = Mezi staženými soubory vybrat cellarslate.crt. Upozornění, že síť může být sledována, zůstane; mluví o tomto certifikátu.
access-trust-fetch_the_certificate_and_open = Stáhnout certifikát a soubor otevřít.
access-trust-install_certificate_current_user_p = Nainstalovat certifikát, Aktuální uživatel, všechny umístit do: Důvěryhodné kořenové certifikační autority.
access-trust-close_all_windows_of_the = Zavřít všechna okna prohlížeče a otevřít tuto stránku znovu.
access-trust-fetch_the_certificate_and_open2 = Stáhnout certifikát a soubor otevřít; převezme ho Klíčenka.
access-trust-in_keychain_access_open_cellarslat = V Klíčence otevřít Cellarslate local authority, Důvěra, a nastavit Vždy důvěřovat.
access-trust-fetch_the_certificate = Stáhnout certifikát.
access-trust-in_the_browser_settings_search = V prohlížeči: Nastavení, hledat: certifikáty. Importovat ho mezi Autority; důvěřovat mu pro webové stránky.
access-trust-go_on_this_phone_is = Dál: telefon je přijat
access-trust-open_the_floor_log = Otevřít zápisník
door-frame-this_is_the_demo_is = Toto je ukázka. { $name } je vymyšleno, stejně jako vše v knize.{ $break_ }Rozbít lze cokoli: { $code } ji založí znovu.
door-front-doors = Dveře
door-front-the_slate_by_the_still = Tabulka u přístroje, a kniha, kam dojde.
door-front-three_doors_into_the_same = Troje dveře do téhož lihovaru, { $now }.
door-front-a_run_of_is_on = Běží pálení: { $what }.
door-front-for_an_answer =
    { $asked ->
        [one] { $asked } údaj čeká
        [few] { $asked } údaje čekají
        [many] { $asked } údajů čeká
       *[other] { $asked } údajů čeká
    } na odpověď.
door-front-the_demo_was_laid_on = Ukázka byla založena jiný den, pálení i kvasy jsou z toho dne. Zastavit ji a spustit s { $code }, ať je pro dnešek.
door-front-the_desk = Kancelář
door-front-you_are_see_what_the = Jste { $name }, { $role }. Podívat se, na co se kniha ptá, opravit překlep, stopovat láhev, uzavřít měsíc.
door-front-lines_of_a_year_and = { $what } řádků za rok a půl
door-front-sit_down_at_the_desk = Sednout do kanceláře
door-front-a_phone_in_this_browser = Telefon v tomto prohlížeči
door-front-you_are_the_same_keys = Jste { $name }, { $role }. Stejné klávesy a stejná slova jako v provozu; signál lze vypnout.
door-front-the_run_of_is_in = Pálení na { $still } máte v ruce
door-front-what_you_log_waits_on = Co zapíšete, čeká na tabulce
door-front-it_can_scan_the_labels = Umí skenovat štítky níž
door-front-the_signal_is_cut_for = Signál telefonu v tomto prohlížeči je vypnut do { $clock }.
door-front-open_a_phone_here = Otevřít tu telefon
door-front-your_own_phone = Vlastní telefon
door-front-hold_its_camera_to_this = Namířit kameru na tento čtverec, v téže bezdrátové síti. Telefon se naučí počítači věřit a otevře se jako { $name }, { $role }. Žádný obchod, žádný účet.
door-front-or_type = nebo napsat{ $break_ }{ $bold }
door-front-afterwards_take_the_certificate_of = Potom certifikát z telefonu zase odebrat; patří jen ukázce.
door-front-phones_work_without_signal_only = Bez signálu telefony fungují jen tam, kde serveru věří, proto tyto dveře jdou přes TLS. Zastavit ukázku a spustit znovu:
door-front-then_a_square_stands_here = Pak tu stojí čtverec, ke kterému se drží telefon, a otevře se jako { $name }, { $role }.
door-front-more_of_them_large = Další, velké
door-front-scan_them_with_the_phones = Skenovat je na stránce telefonu, pod Skenovat. Bez kamery? Napsat tam značku: poslední znak kontroluje ostatní, chybná se tedy pozná.
door-front-five_things_to_try = Pět věcí na zkoušku
door-front-min = { $minutes } min
door-front-everything_here_is_kept_on = Vše tu je uloženo v tomto počítači a vstoupit smí každý, kdo stránku najde. Není to místo pro údaje skutečného lihovaru: vlastní knihu začíná { $code }.
door-front-the_demo_cellarslate = Ukázka · Cellarslate
door-front-stops_wait =
    { $stops ->
        [one] { $stops } stop čeká
        [few] { $stops } stopy čekají
        [many] { $stops } stopů čeká
       *[other] { $stops } stopů čeká
    }
door-front-more_are_asked =
    { $asked ->
        [one] { $asked } další dotaz
        [few] { $asked } další dotazy
        [many] { $asked } dalších dotazů
       *[other] { $asked } dalších dotazů
    }
door-front-put_the_signal_back = Zapnout signál
door-front-cut_its_signal = Vypnout signál
door-join-this_phone_joins = Telefon se přidává: { $name }
door-join-you_are_the_phone_is = Jste { $name }, { $role }. Telefon je přijat, načte, co v které nádobě stojí, a od té chvíle funguje bez signálu.
door-join-near_an_open_spirit_safe = U otevřeného lihového měřidla je telefon zdrojem vznícení, pokud pro to místo nemá schválení. Ukázku lze zkoušet kdekoli jinde.
door-join-this_phone_joins_the_demo = Telefon se přidává k ukázce · Cellarslate
door-labels-on_the_phone_open_scan = V telefonu otevřít Skenovat a držet ho na šířku dlaně od štítku. Otevře se jeho nádoba, se signálem i bez.
door-labels-labels_of_the_demo_cellarslate = Štítky ukázky · Cellarslate
door-phone-takes_the_phone = { $name } bere telefon
door-phone-it_is_let_in_and = Je přijat a načítá, co v které nádobě stojí.
door-phone-the_slate_is_kept_by = Tabulku drží skript a tento prohlížeč žádný nespouští. Kancelář funguje i bez něj.
door-phone-a_phone_is_let_in = Telefon je přijat · Cellarslate
door-phone-keeps_pages = Drží své stránky, takže nepotřebuje signál.
door-phone-not_let_in = Nebyl přijat. { $why }
group-people-who_may_sign_in_here = Kdo se tu smí přihlásit. Lidé ze závodů se nekopírují: přihlašují se u sebe.
group-people-an_invitation_shown_this_once = Pozvánka, ukázaná jen teď
group-people-good_once_within_days_whoever = Platí jednou, do { $days } dnů. Kdo ji otevře, nastaví heslo; předat osobně.
group-people-no_longer_here = už tu není
group-people-no_password_yet = zatím bez hesla
group-people-add_or_change_somebody = Přidat nebo změnit osobu
group-people-look = prohlížet
group-people-let_sites_in_and_decide = přijímat závody a rozhodovat
group-people-no_longer_here2 = Už tu není
group-people-make_an_invitation_to_set = Vystavit pozvánku k nastavení hesla
group-people-save = Uložit
group-people-lets_sites_in_decides = přijímá závody, rozhoduje
group-people-short_code = Krátký kód
group-people-looks = prohlíží
group-period-of_sites_have_closed_it = Uzavřelo { $closed } z { $count } závodů. Součet je z toho, co je známo dnes; co šlo ze závodu do závodu, není zisk ani ztráta skupiny.
group-period-sum = Součet
group-period-between_sites = Mezi závody
group-period-sent_l = Odesláno, L
group-period-declared_there_l = Tam deklarováno, L
group-period-difference = Rozdíl
group-period-pure_alcohol_at_20_c = Čistý líh při 20 °C. Co v přijímajícím závodě chybělo, stojí na jeho účtu jako ztráta cestou.
group-period-more_has_come_to_light = od té doby vyšlo najevo víc a je v údajích níž
group-period-part_closed = Zčásti uzavřeno.
group-period-this_site_has_nothing_in = Tento závod v tom nic nemá.
group-period-all_sites = , všechny závody
group-period-in_bulk = volně ložené
group-period-bottles = láhve, { $goods }
group-period-sent_to_sites_of_the = odesláno závodům skupiny
group-period-received_from_sites_of_the = přijato od závodů skupiny
group-period-left_a_site = opustilo závod
group-period-received_at_a_site = přijato v závodě
group-period-declared_above_what_was_sent = deklarováno víc, než odesláno
group-period-declared_below_what_was_sent = deklarováno míň, než odesláno
group-period-on_the_way_between_sites = Na cestě mezi závody
group-periods-what_all_sites_had_on = Co měly všechny závody na konci čtvrtletí a měsíců, jak je známo dnes, v litrech čistého lihu při 20 °C. Měsíce závodu jdou podle jeho hodin.
group-periods-closed_at = Uzavřeno
group-periods-all_sites = Všechny závody
group-periods-on_the_way = Na cestě
group-periods-of = { $closed } z { $count }
group-sites-let_a_site_in = Přijmout závod
group-sites-on_the_sites_computer_once = Na počítači závodu, jednou, do jednoho dne:
group-sites-name_of_the_site = Název závodu
group-sites-make_a_code_for_a = Vytvořit kód pro nový závod
group-sites-entries_here = Zápisů tady
group-sites-of = z { $head_no }
group-sites-last_7_days = Posledních 7 dní
group-sites-stock_and_trace = Zásoba a stopa
group-sites-stopped = zastaveno
group-sites-up_to_date = aktuální
group-sites-to_number = po číslo { $folded_no }
group-sites-chain = Řetěz
group-sites-broken = rozbito
group-sites-whole_to = celý po { $checked_no }, { $when }
group-sites-not_walked_yet = zatím neprojit
group-sites-its_computer_is_lost_or = Jeho počítač je ztracen, nebo nový
group-sites-shut_it_out_then_make = Vyloučit ho, pak vytvořit nový kód. Co odevzdal, zůstává.
group-sites-shut_out = Vyloučit { $name }
group-sites-which_book_counts = { $name }: která kniha platí?
group-sites-from_number_on_the_sites = Od čísla { $fork_no } už kniha závodu není ta, kterou odevzdával: byla obnovena ze starší zálohy, nebo zkopírována. Zůstávají obě. Tady platí první, po číslo { $cursor }; druhá jde po { $cursor2 }.
group-sites-of_the_first_are_not = z první nejsou ve druhé.
group-sites-every_entry_of_the_first = Každý zápis z první je i ve druhé.
group-sites-ask_the_site_before_you = Před volbou se zeptat závodu.
group-sites-the_sites_present_book_counts = Platí dnešní kniha závodu
group-sites-kept_aside = odloženo { $aside }.
group-sites-papers_that_look_alike = Podobné doklady
group-sites-a_receipt_has_the_number = Příjem má číslo výdeje jiného závodu, ale žádný druhého nejmenuje, nebo jsou láhve z jiné dávky. Nespojují se. Jde-li o jedno, opravit zápis, aby závod nebo dávku jmenoval.
group-sites-received_at = Přijato v
group-sites-from_batch_as_typed = Od, dávka, jak zapsáno
group-sites-same_number_sent_by = Totéž číslo odeslal
group-sites-sites = Závody
group-sites-chain_broken = řetěz přerušen
group-sites-fold_stopped = skládání zastaveno
group-sites-two_books = dvě knihy
group-sites-to_come = na cestě
group-sites-entries = zápisů
group-trace-in_bottles = v lahvích
group-trace-pure_alcohol = { $bold } čistého lihu { $what }
group-trace-site_cases_lot_mark = Závod, kartony, označení šarže
group-trace-bottles_received_from_another_site = Láhve přijaté z jiného závodu tu stojí podruhé: jsou mezi láhvemi závodu, který je naplnil.
group-trace-to_whom = Komu
group-trace-site_what = Závod, co
group-trace-and_more = a ještě { $more }
group-trace-sites_are_joined_by_the = Závody spojuje číslo dokladu výdeje, když ho příjem jmenuje a jedna strana jmenuje druhou; láhve i dávka nebo označení šarže. Co je na cestě, stojí mezi nimi.
group-trace-trace_of = Stopa: { $name }
group-trace-from_to = z { $sender } do { $receiver }
group-trace-declared = deklarováno { $differs }
group-trace-document = doklad { $document }
group-trace_search-a_trace_goes_both_ways = Stopa vede oběma směry a přes hranici: od láhve zpět k ovoci v kterémkoli závodě, a od dodávky ovoce ke každé láhvi.
group-trace_search-no_site_has_anything_by = Pod tím jménem nemá žádný závod nic. Zkusit značku, dávku, číslo kartonu, nebo část jména pěstitele.
desk-weight-stop = stop
desk-weight-ask = dotaz
desk-weight-note = poznámka
desk-weight-entered = zapsáno
desk-weight-waiting = čeká
desk-sort-fermenter = kvasná nádrž
desk-sort-still = přístroj
desk-sort-receiver = jímadlo
desk-sort-tank = nádrž
desk-sort-cask = sud
desk-sort-can = kanystr
desk-sort-place = místo
desk-forms-it_stands = Platí
desk-forms-strike = Škrtnout
desk-forms-the_site = provoz
desk-forms-a_sort_of_vessel = druh nádoby
desk-forms-a_material = surovina
desk-forms-one_vessel = jedna nádoba
desk-forms-a_product = výrobek
desk-forms-production_storage_processing_us = výroba, sklad, zpracování (USA)
desk-forms-one_excise_warehouse = jeden daňový sklad
desk-forms-floor_log_and_look = provoz: zapisovat a prohlížet
desk-forms-distiller_also_answer_and_amend = palič: i odpovídat a opravovat
desk-forms-office_all = kancelář: vše
desk-forms-code = Kód
desk-forms-what_it_is = Co to je
desk-forms-capacity_l = Objem [L]
desk-forms-working_level_l = Pracovní hladina [L]
desk-forms-tare_kg = Tára [kg]
desk-forms-wood = Dřevo
desk-forms-toast_or_char = Vypálení či zuhelnění
desk-forms-stands_inside_a_fire_zone = Stojí v požární zóně
desk-forms-label_goes_on_a_curve = Štítek na oblé ploše (jen značka)
desk-forms-note = Vzkaz
desk-forms-out_of_use = Mimo provoz
desk-forms-for = Pro
desk-forms-which = Které
desk-forms-kind_and_field = Druh a pole
desk-forms-usual_from = Obvyklé od
desk-forms-usual_to = Obvyklé do
desk-forms-possible_from = Možné od
desk-forms-possible_to = Možné do
desk-forms-limit = Mez
desk-forms-figure = Údaj
desk-forms-short_code = Krátký kód
desk-forms-trade_roles_the_usual_one = Role v lihovaru, obvyklá první
desk-forms-floor_code_4_to_8 = Kód provozu (4 až 8 číslic; prázdné nechá starý)
desk-forms-has_left_the_house = Odešel z lihovaru
desk-forms-the_password_until_now = Dosavadní heslo
desk-forms-a_new_one = Nové
desk-forms-the_same_again = Ještě jednou
desk-forms-its_name = Jeho jméno
desk-forms-folder_on_the_server_on = Složka na serveru, na jiném disku
desk-forms-hours_between_two = Hodin mezi dvěma
desk-forms-how_many_are_kept = Kolik se jich drží
desk-forms-backups_of_this_computer_are = Zálohy tohoto počítače se dělají jinak, denně
desk-forms-they_are_a = Je to
desk-forms-address = Adresa
desk-forms-number_by_which_papers_call = Číslo, pod kterým je vedou doklady
desk-forms-name_of_the_phone = Název telefonu
desk-forms-the_house = Lihovar
desk-forms-units = Jednotky
desk-forms-decimal_mark = Desetinný znak
desk-forms-accounts = Účty
desk-forms-height_above_the_sea_m = Nadmořská výška [m]
desk-forms-language_where_nobody_has_chosen = Jazyk, kde si nikdo nevybral
desk-forms-time_zone = Časové pásmo
desk-forms-what_goes_into_or_out = Co jde na účty nebo z nich, chce při zápisu PIN
desk-forms-a_season_begins_in = Sezona začíná v
desk-forms-scale_from = Stupnice od
desk-forms-scale_to = Stupnice do
desk-forms-unit = Jednotka
desk-forms-class = Třída
desk-forms-interval_of_the_scale = Hodnota dílku
desk-forms-corrections_of_its_certificate_wha = Opravy z kalibračního listu, co ukazuje: co přičíst, třeba 0: -0.1; 20: 0; 40: +0.2
desk-forms-check_due_on = Termín kontroly
desk-forms-first_free_label_on_the = První volný štítek na listu
desk-forms-own_width_mm = Vlastní šířka [mm]
desk-forms-own_height_mm = Vlastní výška [mm]
desk-forms-own_clear_mm = Volno u každého okraje [mm]
desk-forms-label_file = Jako
desk-forms-case_from = První karton
desk-forms-case_to = Poslední karton
desk-forms-flat_labels_carry_the_address = Rovné štítky nesou adresu, takže nádobu otevře i kamera telefonu
desk-forms-also_a_stand_off_label = I štítek na dálku pro nádoby v požární zóně
desk-forms-there_is_no_such_time = Takové časové pásmo není. Napsat třeba Europe/Vienna.
desk-forms-pick_it_stands_or_strike = Vybrat: platí, nebo škrtnout.
desk-forms-say_why_in_a_few = Říct pár slovy proč.
desk-forms-type_its_code_such_as = Napsat kód, třeba F3 nebo C031.
desk-forms-type_a_short_code = Napsat krátký kód.
desk-forms-type_the_name = Napsat jméno.
desk-forms-to_whole = { $low } až { $high }, celé číslo.
desk-forms-type_your_password = Napsat své heslo.
desk-forms-type_a_password = Napsat heslo.
desk-forms-at_least_characters_a_few = Aspoň { $what } znaků; pár slov postačí.
desk-forms-the_two_passwords_differ_type = Hesla se liší. Napsat je znovu.
desk-forms-type_a_name = Napsat název.
desk-forms-type_hours = Napsat hodiny.
desk-forms-type_a_number = Napsat číslo.
desk-forms-name_it_such_as_ph = Pojmenovat ho, třeba PH-3.
desk-forms-type_the_name_of_the = Napsat název lihovaru.
desk-forms-type_its_number_such_as = Napsat jeho číslo, třeba TH-2.
desk-forms-type_what_it_is_such = Napsat, co to je, třeba teploměr.
desk-forms-grower_or_supplier = pěstitel nebo dodavatel
desk-forms-point_14_6 = tečka: 14.6
desk-forms-comma_14_6 = čárka: 14,6
desk-forms-as_the_law_prescribes = podle zákona
desk-forms-in_use = v provozu
desk-forms-out_of_use2 = mimo provoz
desk-forms-n1_to_7_letters_or = 1 až 7 písmen nebo číslic.
desk-forms-n1_to_8_letters_or = 1 až 8 písmen nebo číslic.
desk-forms-n4_to_8_digits = 4 až 8 číslic.
desk-forms-letters_digits_hyphen = Písmena, číslice, spojovník.
desk-forms-pick_the_day = Vybrat den.
access-forms-your_short_code = Váš krátký kód
access-forms-password = Heslo
access-forms-your_password = Vaše heslo
access-forms-a_password_of_your_own = Vlastní heslo
access-forms-the_same_again = Ještě jednou
access-forms-set_up_code = Zakládací kód
access-forms-the_house = Lihovar
access-forms-units = Jednotky
access-forms-your_name = Vaše jméno
access-forms-type_your_short_code = Napsat svůj krátký kód.
access-forms-type_your_password = Napsat své heslo.
access-forms-type_a_password = Napsat heslo.
access-forms-at_least_characters_a_few = Aspoň { $what } znaků; pár slov postačí.
access-forms-the_two_passwords_differ_type = Hesla se liší. Napsat je znovu.
access-forms-type_the_set_up_code = Napsat zakládací kód, který server vypsal.
access-forms-type_the_name_of_the = Napsat název lihovaru.
access-forms-type_a_short_code_such = Napsat krátký kód, třeba iniciály.
access-forms-type_your_name = Napsat své jméno.
access-forms-n1_to_8_letters_or = 1 až 8 písmen nebo číslic.
desk-vat_form-as_few_vessels_as_can = co nejméně nádob
desk-vat_form-the_oldest_stays = nejstarší zůstává
desk-vat_form-the_oldest_goes_first = nejstarší jde první
desk-vat_form-strength_empty_as_it_comes = Koncentrace (prázdné: jak vyjde)
desk-vat_form-unit_of_strength = Jednotka koncentrace
desk-vat_form-volume_l_empty_all_they = Objem [L] (prázdné: vše, co dají)
desk-vat_form-volume_may_be_off_by = Objem smí být vedle o [%]
desk-vat_form-most_of_any_one_vessel = Nejvíc z jedné nádoby [%]
desk-vat_form-most_of_any_one_lot = Nejvíc z jedné šarže [%]
desk-vat_form-youngest_in_wood_years = Nejmladší ve dřevě [let]
desk-vat_form-the_wood_of_a_200 = Dřevo sudu 200 L drží [kg]
desk-vat_form-aim = Záměr
desk-vat_form-casks_may_be_drawn_in = Ze sudů lze brát část
desk-vat_form-name_of_the_vat = Název kupáže
desk-vat_form-wood_keeps_of = dřevo drží { $kept } z { $what }
desk-vat_form-strength_as_it_comes = koncentrace, jak vyjde
desk-vat_form-within = { $volume } s odchylkou do { $figure } %
desk-vat_form-all_they_give = vše, co dají
desk-vat_form-of_one_vessel = z jedné nádoby
desk-vat_form-of_one_lot = z jedné šarže
desk-vat_form-youngest_years_in_wood = nejmladší { $figure } let ve dřevě
desk-vat_form-between_and_please = Prosím mezi { $low } a { $high }.
desk-vat_form-at_most = nejvýš { $figure } % { $words }
desk-vat_form-vol = % vol
desk-cellar-by_the_fall_of_gravity = podle poklesu rel. hustoty
desk-cellar-as_the_law_of_1880 = jak předpokládal zákon z roku 1880
desk-cellar-by_the_wash_as_measured = podle změřené zápary
desk-cellar-by_low_wines = podle lutru
desk-cellar-by_spirits_and_feints = podle destilátu, úkapu a dokapu
desk-cellar-a_leak = teče?
desk-cellar-a_slip_of_the_glass = chyba lihoměru?
desk-cellar-another_cask = jiný sud?
desk-cellar-to_regauge = k přeměření
desk-cellar-to_sample = na vzorek
desk-cellar-to_taste = k ochutnání
desk-cellar-loss_a_year = ztráta za rok
desk-cellar-ferments = Kvasy
desk-cellar-places = Místa
desk-cellar-ready = Hotové
desk-cellar-house_rules = Pravidla lihovaru
desk-cellar-mash_temperature = Teplota kvasu
desk-cellar-pure_alcohol = Čistý líh
desk-cellar-strength = Koncentrace
desk-cellar-the_book_has_no_such = Takový kvas kniha nemá. Hledat ho v seznamu kvasů.
desk-cellar-the_book_knows_no_cask = Kniha nezná sud { $mark }. Hledat ho v seznamu sudů.
desk-cellar-scores = Body
desk-cellar-of_10 = z 10
desk-cellar-that_is_no_day_pick = To není den. Vybrat ho, třeba 2027-05-01.
desk-cellar-gained = přibylo
desk-cellar-by_place = místo
desk-cellar-by_age = stáří
desk-cellar-strength_in_words = koncentrace
desk-cellar-gravity = rel. hustota
desk-cellar-expected = očekáváno
desk-cellar-score = body
desk-trust-the_certificate_ends_in_days = Certifikát končí za { $left_days } dnů a neobnovil se. Podívat se na to, co ho obnovuje.
desk-trust-the_certificate_ended_on_phones = Certifikát skončil { $ends }. Telefony drží, co zapisují, a neodevzdají nic, dokud nebude nový.
paper-batch-batch_record = Záznam dávky: { $ferment }
paper-batch-gravity_and_temperature = Rel. hustota a teplota
paper-batch-batch_record2 = Záznam dávky: { $batch }
paper-batch-bottled = { $batch }, stočeno
paper-batch-tank_gauges = Měření nádrže
paper-batch-checks_of_the_line = Kontroly linky
paper-batch-its_entries = Její zápisy
paper-batch-made_by = Vyrobil
paper-batch-looked_over_by = Zkontroloval
paper-batch-not_read_yet = Zatím neodečteno.
paper-batch-counts_of_its_alcohol = Počty jeho alkoholu
paper-batch-at = V
paper-batch-tank = Nádrž
paper-batch-true = Skutečná { $unit }
paper-batch-no_bottling_tank_gauge_yet = Zatím bez měření stáčecí nádrže.
paper-batch-fill = Plnění, %
paper-batch-least = Nejméně
paper-batch-most = Nejvíc
paper-batch-labels_right = Etikety v pořádku
paper-batch-done = Uděláno
paper-batch-odd_case = Neúplný karton
paper-batch-broken = Rozbité
paper-batch-library = Archiv
paper-batch-good = Dobré
paper-batch-not_closed_yet = Zatím neuzavřeno.
paper-batch-nothing_has_left_the_tank = Z nádrže zatím nic neodešlo.
paper-batch-no = Č.
paper-batch-fermenter = Kvasná nádrž
paper-batch-stands_at = Stojí na
paper-batch-emptied = Vyprázdněno
paper-batch-first_gravity = První rel. hustota
paper-batch-last_gravity = Poslední rel. hustota
paper-batch-closed_at = Uzavřeno
paper-batch-wash = Zápara
paper-batch-wash_strength = Koncentrace zápary
paper-batch-pure_alcohol_in_the_wash = Čistý líh v zápaře
paper-batch-count = Inventura
paper-batch-of_wash = { $unit } zápary
paper-batch-tanks = Nádrže
paper-batch-bottle = Láhev
paper-batch-strength_on_the_label = Koncentrace z etikety
paper-batch-good_bottles = Dobré láhve
paper-batch-kept_in_the_library = Uloženo v archivu
paper-batch-pure_alcohol_in_bottles = Čistý líh v lahvích
paper-batch-in = { $what } v { $mark }
paper-batch-to = { $first } až { $last }
paper-batch-at2 = { $unit } při { $temp }
paper-cautions-the_sites_own_assessment_local = Přednost mají posouzení provozu, místní předpisy a oprávnění lidé. Nic na tomto papíru neříká, že je místo nebo líh bezpečné.
paper-cautions-hot_and_under_pressure_if = Horké, a pod tlakem, když se cesta ucpe. Studená voda může horký uzavřený přístroj zmáčknout. Odvětrání nechat volné; od běžícího přístroje neodcházet.
paper-cautions-alcohol_vapour_burns_no_flame = Páry lihu hoří. Uvnitř vyznačené čáry žádný plamen, jiskra ani běžný telefon; přečíst u lihového měřidla, odstoupit, pak psát.
paper-cautions-a_hydrometer_cannot_see_methanol = Lihoměr metanol nevidí. Část je v úkapu, i v jádru a dokapu; jistotu dá jen laboratoř. První výtok nechutnat.
paper-cautions-few_samples_small_and_diluted = Málo vzorků, malých a zředěných, a vyplivnout. Mezi nimi voda a prostý chléb. Po degustaci nikdo neřídí ani nepracuje u přístroje či stroje.
paper-cautions-heads_are_never_tasted_nose = Úkap se nikdy nechutná, nejvýš nos. Degustace nikdy nedokáže, že je líh nezávadný: metanol, kyanovodík a ethylkarbamát nemají chuť, která by je prozradila.
paper-cautions-carbon_dioxide_has_no_smell = Oxid uhličitý nevoní a leží při zemi. Při 5000 ppm odejít, větrat, říct vedoucímu; při 30 000 ppm hned ven. Svíčka není zkouška.
paper-cautions-nobody_enters_a_tank_or = Do nádrže ani kádě nikdo sám nebo bez povolení, zkoušky plynu a někoho venku.
paper-cautions-a_full_cask_of_225 = Plný sud 225 L (59 gal) váží 220 až 260 kg (485 až 573 lb). Vozík, zvedák nebo klín; nikdy záda.
paper-cautions-say_where_you_are_and = Říct, kde jste a kdy budete zpět.
paper-count-count_sheet = List inventury
paper-count-begun_date_and_time = Začátek, datum a čas
paper-count-ended_date_and_time = Konec, datum a čas
paper-count-instruments_used = Použitá měřidla
paper-count-what_it_is = Co to je
paper-count-here = Zde
paper-count-gross_or_dip = Brutto, { $kg }, nebo hladina, { $what }
paper-count-glass = Lihoměr
paper-count-spirit = Líh { $unit }
paper-count-stands_there_and_is_not = Stojí tam a není na tomto listu
paper-count-counted_by = Počítal
paper-count-second_person = Druhá osoba
paper-count-other_places = Jiná místa
paper-imprint-book_up_to_no_chain = kniha po č. { $number }, řetěz { $digest }
paper-pages-nothing_has_a_place_there = Tam nic nemá místo. Podívat se na místa ve sklepě.
paper-pages-the_book_has_no_such = Takový zápis k tisku kniha nemá.
paper-pages-the_book_has_no_such2 = Takové pálení kniha nemá. Hledat ho v seznamu pálení.
paper-pages-the_book_has_no_such3 = Takový kvas kniha nemá. Hledat ho v seznamu kvasů.
paper-pages-the_book_has_no_batch = Dávku toho jména kniha v nádrži nemá. Hledat ji v seznamu stáčení.
paper-passport-laboratory_certificate_and_its_num = Laboratorní protokol a jeho číslo
paper-passport-none_in_the_book_methanol = v knize žádný: metanol a jiné údaje složení se tu neměří
paper-passport-lot_passport = Průvodka šarže: { $name }
paper-passport-made_of = Vyrobeno z
paper-passport-papers_and_certificates = Doklady a protokoly
paper-passport-made_out_by = Vystavil
paper-passport-approved_by = Schválil
paper-passport-share = Podíl
paper-passport-by_the_book = Podle knihy
paper-passport-paper_no = Č. dokladu
paper-passport-lot_mark = Označení šarže
paper-passport-good_bottles = Dobré láhve
paper-passport-strength = Koncentrace
paper-passport-pure_alcohol = Čistý líh
paper-passport-day = Den
paper-passport-came_from = Přišlo z
paper-passport-cases_and_lot_mark = Kartony a označení šarže
paper-passport-to_or_from = Komu / od koho
paper-passport-of_l = { $good } po { $size } L
paper-passport-to = { $first } až { $last }
paper-press-name_in_capitals = Jméno hůlkově
paper-press-signature = Podpis
paper-press-date_and_time = Datum a čas
paper-press-printed_by = Vytištěno { $printed }, { $printable } · { $book }
paper-press-still_open = Ještě otevřené
paper-press-open_questions = Otevřené dotazy
paper-press-these_are_not_answered_what = Na tyto se neodpovědělo. Odpovědi mohou změnit, co je výše.
paper-press-cautions = Upozornění
paper-press-page_of = strana { $number } z { $of }
paper-press-in_the_book = V knize
paper-record-as_read = Jak odečteno
paper-record-as_computed = Jak vypočteno
paper-record-witness = Svědek
paper-record-gauge_record = Záznam měření: { $title }
paper-record-record = Záznam: { $title }
paper-record-reading = Odečet
paper-record-instrument = Měřidlo
paper-record-corrected = Opraveno
paper-record-figure = Údaj
paper-record-value = Hodnota
paper-record-nothing_is_computed_from_this = Nic se z toho nepočítá.
paper-record-what_it_moved = Co přesunulo
paper-record-read_again_by_hand = Přečteno znovu ručně
paper-record-gauged_by = Měřil
paper-record-done_by = Provedl
paper-record-stands_at = Stojí na
paper-record-read_by = Četl
paper-record-role = Role
paper-record-gross_or_dip = Brutto, { $kg }, nebo hladina, { $what }
paper-record-glass = Lihoměr
paper-record-spirit = Líh { $unit }
paper-record-at = V
paper-record-first = První
paper-record-second = Druhý
paper-run-run_sheet = List pálení { $run }
paper-run-minute_by_minute = Minutu po minutě
paper-run-event = Událost
paper-run-glass = Lihoměr
paper-run-spirit = Líh { $unit }
paper-run-true = Skutečná { $unit }
paper-run-vapour = Páry { $unit }
paper-run-dip = Hladina, { $what }
paper-run-into_why = Kam, proč
paper-run-what_the_receivers_hold = Co je v jímadlech
paper-run-still_hand = Obsluha přístroje
paper-run-distiller = Palič
paper-run-logged = , zapsáno { $clock }
paper-run-balance = Bilance, { $what }
paper-run-not_accounted_for = chybí
paper-run-more_than_went_in = víc, než šlo dovnitř
paper-run-true_strength = Skutečná koncentrace, { $unit }
paper-run-fraction = Frakce
paper-run-none_gauged_yet = Zatím žádná nezměřena.
paper-run-heads = úkap { $plan }
paper-run-hearts_to = jádro do { $plan }
paper-run-tails_to = dokap do { $plan }
paper-run-of_the_charge = { $rest }, { $abs } % náplně
paper-run-part = Část
paper-run-min = { $last } min
paper-run-charged_from = Naplněno z
paper-run-begun = Začátek
paper-run-charge = Náplň
paper-run-of_it_feints = z toho úkap a dokap
paper-run-pure_alcohol_charged = Čistý líh v náplni
paper-run-plan = Plán
paper-run-not_read_taken_as = , neměřeno: bráno jako { $balance }
paper-run-on = { $what }, přístroj { $still }
paper-run-at = { $unit } při { $temp }
paper-serving-two_of_the_three_are = dvě ze tří jsou stejné: která je jiná?
paper-serving-the_first_stands_open_as = první stojí otevřeně jako R: která ze dvou s kódem je stejná?
paper-serving-which_of_the_two_has = která ze dvou má víc toho, na co se ptáme?
paper-serving-put_all_in_order_no = seřadit všechny, žádné dvě stejně
paper-serving-serving_sheet = Servírovací list
paper-serving-letter = Písmeno
paper-serving-sample = Vzorek
paper-serving-of_it = Z toho
paper-serving-strength_as_found = Koncentrace, jak zjištěna
paper-serving-water_added = Přidaná voda
paper-serving-glasses_from_left_to_right = Sklenky, zleva doprava
paper-serving-poured_by = Nalévá
paper-serving-taster = Degustátor
paper-serving-glass_sample = Sklenka = vzorek
paper-serving-poured = Nalito
paper-serving-method = Metoda
paper-serving-served_at = Podáváno při
paper-serving-sets_of_glasses = Sady sklenek
paper-serving-for_whoever_pours = Pro toho, kdo nalévá. Žádný degustátor tento list nevidí, a kdo ho viděl, nechutná ani s degustátory nemluví.
paper-period-heads_of_the_book_of = Hlavy knihy { $signed }, podepsané klíčem { $shorten_digits }.
paper-period-printed = { $name } · vytištěno { $printed } · { $house }
paper-period-the_rest_is_open = { $signed }; zbytek je otevřený.
paper-period-pure_alcohol = { $house }: čistý líh, { $name }
paper-period-litres_of_pure_alcohol_at = Litry čistého lihu při 20 °C na 0,01; proof gallony na 0,1. { $what } { $what2 }
paper-period-page = strana { $page }
paper-period-as_now_known_with_what = Jak je známo dnes, i s tím, co vyšlo najevo
paper-period-open_when_it_was_closed = Otevřené při uzávěrce, čteno tím, kdo uzavíral
paper-period-a_book_rewritten_since_has = { $words }Přepsaná kniha má jiné: cellarslate verify --heads.
paper-period-date = Datum
paper-period-name_and_title = Jméno a funkce
paper-period-signature = Podpis
desk-account-lines_add_up_to_their = Řádky dají součty, jak jsou ukázány: každý údaj je nejbližší, nebo, kde by to nevyšlo, vedlejší (největší zbytek). Kniha drží celé mikrolitry. Čtvrtletí se zaokrouhluje samo: jeho řádek se může od součtu ukázaných měsíců lišit nejvýš o tři na posledním místě.
desk-account-is_twice_the_standard_uncertainty = ± je dvojnásobek standardní nejistoty (k = 2), podle třídy měřidel všech zápisů řádku; o kolik je vedle jedno měřidlo, počítá se v každém stejně. Řádek bez ± je víc, než říkají jeho odečty: zbytek, výpočet, láhve, nebo přesuny mezi dvěma měřeními.
desk-account-is_twice_the_standard_uncertainty2 = ± je dvojnásobek standardní nejistoty (k = 2), podle měřidel posledního měření každé nádoby a všeho, co se od té doby přesunulo dovnitř a ven.
desk-account-what_nobody_measured_mash_a = { $what } Co nikdo nezměřil, kvas, běžící pálení a láhve v tom nejsou.
desk-account-production = Výroba
desk-account-storage = Sklad
desk-account-processing = Zpracování
desk-account-excise_warehouse = Daňový sklad
desk-account-so_that_the_lines_add = Aby řádky dávaly součet, jsou tyto ukázány vedle nejbližší hodnoty: { $said }.
desk-account-adjustment_of = Úprava { $of }: { $more } { $party_words }
desk-account-on_hand_at_the_start = Na skladě na začátku
desk-account-total_in = Celkem dovnitř
desk-account-total_out = Celkem ven
desk-account-on_hand_at_the_end = Na skladě na konci
desk-sheets-this_sheet_was_not_kept = Tak dlouho se list nedržel. Vzít ho znovu.
desk-sheets-the_whole_sheet_was_taken = Celý list byl vzat zpět.
desk-sheets-taken_back_every_line_stays = Vzato zpět. Každý řádek zůstává čitelný, přeškrtnutý.
desk-sheets-nothing_in_this_sheet_is = V listu není nic nového: kniha už vše má. Nic se nezměnilo.
desk-sheets-there_is_no_such_sheet = Takový list není. Hledat ho v seznamu.
desk-sheets-in_use_stay_the_book = V provozu zůstává { $join }: kniha k nim má víc než tento list.
desk-sheets-there_is_no_such_template = Taková šablona není. Hledat ji v seznamu.
desk-sheets-openings = Otevření ({ $what }): { $many }
desk-tasting_form-holds_heads_heads_are_never = obsahuje úkap. Úkap se nikdy nechutná. Vzít jiný vzorek.
desk-tasting_form-name_of_the_tasting = Název degustace
desk-tasting_form-question_written_down_before_pouri = Otázka, napsaná před naléváním
desk-tasting_form-method = Metoda
desk-tasting_form-risk_of_finding_a_difference = Riziko nálezu rozdílu, který není
desk-tasting_form-served_at_all_glasses_alike = Podáváno při, všechny sklenky stejně
desk-tasting_form-unit_of_strength = Jednotka koncentrace
desk-tasting_form-poured_by = Nalévá
desk-tasting_form-tasters = Degustátoři
desk-tasting_form-sets_for_each_taster = Sad pro každého degustátora
desk-tasting_form-sample_a = Vzorek A
desk-tasting_form-of_it = z toho
desk-tasting_form-sample_b = Vzorek B
desk-tasting_form-sample_c = Vzorek C
desk-tasting_form-sample_d = Vzorek D
desk-tasting_form-sample_e = Vzorek E
desk-tasting_form-give_it_a_short_name = Dát krátký název, třeba T-26-03.
desk-tasting_form-write_the_question_first = Nejdřív napsat otázku.
desk-tasting_form-type_the_strength_in_the = Napsat koncentraci ve sklence.
desk-tasting_form-how_many_sets = Kolik sad?
desk-tasting_form-two_samples_are_the_same = Dva vzorky jsou stejné. Říct slovy, čím se liší, nebo vybrat jiný.
desk-tasting_form-pick_at_least_one_taster = Vybrat aspoň jednoho degustátora.
desk-tasting_form-who_pours_knows_the_codes = Kdo nalévá, zná kódy a nechutná. Ať nalévá někdo jiný, nebo nechat otevřené.
desk-tasting_form-a_ranking_wants_three_to = Pořadí chce tři až pět vzorků.
desk-tasting_form-this_method_compares_two_samples = Tato metoda porovnává dva vzorky: vybrat A a B, víc ne.
desk-tasting_form-that_is_more_than_sets = To je víc než { $what } sad sklenek. Méně degustátorů, nebo méně sad.
desk-tasting_form-letters_digits_and_only_please = Jen písmena, číslice a -, prosím.
door-page-visitor = Návštěva { $let_in }
door-page-there_is_no_such_thing = Taková věc na zkoušku není. Jít zpět a vybrat ze seznamu.
door-page-the_demo_has_none_left = Ukázce už žádná nezbyla. Zastavit ji a spustit znovu s --fresh.
door-page-this_person_has_left_the = Tato osoba z lihovaru ukázky odešla. Zastavit ji a spustit znovu s --fresh.
door-page-there_is_nobody_of_that = S tím kódem v ukázce nikdo není.
door-page-the_demo_has_let_in = Ukázka už přijala všechny telefony, které bere. Zastavit ji a spustit znovu s --fresh.
door-trial-cask_list_csv = seznam sudů.csv
door-trial-log_without_signal = Zapsat bez signálu
door-trial-it_says_at_once_where = Hned říká, kde zápis je. Tady signál zapnout, a odevzdá se sám.
door-trial-keep_a_still_run = Vést pálení
door-trial-s1_is_in_its_hearts = S1 je v jádru. Napsat, co říká lihoměr a teploměr, pak udělat řez.
door-trial-the_true_strength_stands_there = Hned tu stojí skutečná koncentrace. Pás se stahuje k minutě dalšího řezu.
door-trial-answer_a_question = Odpovědět na dotaz
door-trial-a_cask_gained_pure_alcohol = Sud získal čistý líh, říká květnový řádek. To žádný sud neumí.
door-trial-the_likely_figure_is_offered = Nabídne se pravděpodobný údaj a co by změnil. Oba údaje zůstávají čitelné.
door-trial-trace_a_cask_to_its = Stopovat sud k ovoci
door-trial-c_047_was_filled_a = C-047 byl naplněn před rokem: zpět přes nádrž a pálení k hospodářství a jeho dodávkám ovoce.
door-trial-the_picture_says_how_much = Obrázek říká, kolik čeho v něm je a co se cestou ztratilo.
door-trial-take_a_sheet_in = Vzít list
door-trial-six_casks_in_somebodys_old = Šest sudů v něčí staré tabulce. Dvě buňky nemohou být správně.
door-trial-which_cells_it_stops_at = U kterých buněk se zastaví a co nabídne. Dokud neřeknete, nic se nezapíše.
desk-upkeep-opened_and_verified_entries = { $near }, otevřeno a ověřeno: zápisů { $status }
desk-upkeep-every_page_and_every_digest = { $near }, každá stránka a každý otisk
desk-upkeep-backup_old = Záloha stará { $age }
desk-upkeep-read_through = Přečteno celé
desk-upkeep-less_than_gb_a_full = Méně než { $least } GB. Plný disk nechá odevzdání čekat v telefonech.
desk-upkeep-disk_free = Disk: volno { $said }
desk-upkeep-where_the_book_lies = kde kniha leží
desk-upkeep-not_by_itself = ne sama
desk-upkeep-backup = Záloha
desk-upkeep-this_server_makes_none_by = Tento server sám žádnou nedělá.
desk-upkeep-the_server_reads_the_whole = Server čte celou knihu jednou denně.
desk-upkeep-does_not_hold = nedrží
desk-upkeep-nearly_full = skoro plný
desk-upkeep-none_made_yet = Zatím žádná.
desk-upkeep-failed = selhala
desk-upkeep-old = stará
desk-upkeep-made = vyrobeno
desk-upkeep-late = pozdě
desk-upkeep-holds = drží
desk-upkeep-room = místo
desk-ends-since = od { $day }
desk-figures-temperature = Teplota
desk-figures-true_strength = Skutečná koncentrace
desk-figures-pure_alcohol = Čistý líh
desk-figures-fill = Plnění
desk-figures-strength_in_the_bottles = Koncentrace v lahvích
desk-figures-of_the_label = % etikety
desk-clock-days =
    { $many } { PLURAL($many) ->
        [one] den
        [few] dny
        [many] dne
       *[other] dní
    }
desk-clock-months =
    { $many } { PLURAL($many) ->
        [one] měsíc
        [few] měsíce
        [many] měsíce
       *[other] měsíců
    }
desk-clock-years =
    { $many } { PLURAL($many) ->
        [one] rok
        [few] roky
        [many] roku
       *[other] let
    }
desk-count-ferment =
    { $n ->
        [one] { $many } kvas
        [few] { $many } kvasy
        [many] { $many } kvasů
       *[other] { $many } kvasů
    }
desk-count-person =
    { $n ->
        [one] { $many } osoba
        [few] { $many } osoby
        [many] { $many } osob
       *[other] { $many } osob
    }
desk-count-entry =
    { $n ->
        [one] { $many } zápis
        [few] { $many } zápisy
        [many] { $many } zápisů
       *[other] { $many } zápisů
    }
desk-count-vessel =
    { $n ->
        [one] { $many } nádoba
        [few] { $many } nádoby
        [many] { $many } nádob
       *[other] { $many } nádob
    }
desk-day-read =
    { $n ->
        [one] { $many } kvas čeká
        [few] { $many } kvasy čekají
        [many] { $many } kvasů čeká
       *[other] { $many } kvasů čeká
    } na odečet
desk-day-stuck =
    { $n ->
        [one] { $many } kvas stojí
        [few] { $many } kvasy stojí
        [many] { $many } kvasů stojí
       *[other] { $many } kvasů stojí
    }
desk-day-bottling =
    { $n ->
        [one] { $many } stáčení čeká
        [few] { $many } stáčení čekají
        [many] { $many } stáčení čeká
       *[other] { $many } stáčení čeká
    } na uzavření
desk-day-regauge =
    { $n ->
        [one] { $many } sud čeká
        [few] { $many } sudy čekají
        [many] { $many } sudů čeká
       *[other] { $many } sudů čeká
    } na přeměření
desk-day-sample =
    { $n ->
        [one] { $many } sud čeká
        [few] { $many } sudy čekají
        [many] { $many } sudů čeká
       *[other] { $many } sudů čeká
    } na odběr vzorku
desk-day-taste =
    { $n ->
        [one] { $many } sud čeká
        [few] { $many } sudy čekají
        [many] { $many } sudů čeká
       *[other] { $many } sudů čeká
    } na ochutnání
desk-day-stands =
    { $n ->
        [one] { $many } nádrž stojí
        [few] { $many } nádrže stojí
        [many] { $many } nádrží stojí
       *[other] { $many } nádrží stojí
    } dlouho
desk-day-failed =
    { $n ->
        [one] { $many } měřidlo neprošlo
        [few] { $many } měřidla neprošla
        [many] { $many } měřidel neprošlo
       *[other] { $many } měřidel neprošlo
    } kontrolou
desk-day-open_run =
    { $n ->
        [one] { $many } pálení nemá
        [few] { $many } pálení nemají
        [many] { $many } pálení nemá
       *[other] { $many } pálení nemá
    } konec
desk-day-still =
    { $n ->
        [one] { $many } zápara čeká
        [few] { $many } zápary čekají
        [many] { $many } zápar čeká
       *[other] { $many } zápar čeká
    } na přístroj
desk-day-owed =
    { $n ->
        [one] { $many } odpověď chybí
        [few] { $many } odpovědi chybějí
        [many] { $many } odpovědí chybí
       *[other] { $many } odpovědí chybí
    }
desk-day-nothing_owed = nic nechybí
desk-day-nothing_owed_next = Nic nechybí. { $next }
desk-day-run_ends =
    { $state ->
        [late]
            { $what ->
                [cut] { $still } měl mít řez { $at }
               *[end] { $still } měl mít konec { $at }
            }
        [now]
            { $what ->
                [cut] { $still }: řez každou minutu
               *[end] { $still }: konec každou minutu
            }
       *[coming]
            { $what ->
                [cut] { $still }: řez { $at }
               *[end] { $still }: konec { $at }
            }
    }
desk-day-run_at_its_end =
    { $what ->
        [cut] { $still } je u řezu
       *[end] { $still } je u konce
    }
desk-day-still_heats = { $still } se ohřívá
desk-day-still_runs = { $still }: teče { $part }
desk-day-ended =
    { $n ->
        [one] { $which }: dokvašeno
       *[other] { $which }: dokvašeno
    }
desk-day-near_end =
    { $n ->
        [one] { $which }: blízko konce
       *[other] { $which }: blízko konce
    }
desk-day-one_stuck = { $name } stojí, nekvasí
desk-day-one_stands = { $name } stojí dlouho
desk-day-one_read = { $name } čeká na odečet
desk-day-one_silent = { $name } mlčí
desk-day-silent =
    { $n ->
        [one] { $many } telefon mlčí
        [few] { $many } telefony mlčí
        [many] { $many } telefonů mlčí
       *[other] { $many } telefonů mlčí
    }
desk-day-nothing_due = Dnes nemá nic termín.
desk-day-to_read = { $name }, odečet
desk-day-round = obchůzka, { $ferments }
desk-day-round_readings = odečty
desk-day-round_regauge = přeměření
desk-day-round_samples = vzorky
desk-day-round_tasting = ochutnávka
desk-day-next = Další je { $what } { $at }.
desk-part-heating = ohřev
desk-part-heads = úkap
desk-part-hearts = jádro
desk-part-tails = dokap
desk-part-low_wines = lutr
desk-part-feints = úkap a dokap
desk-due-many_read =
    { $n ->
        [one] { $many } kvas
        [few] { $many } kvasy
        [many] { $many } kvasů
       *[other] { $many } kvasů
    } k odečtu
desk-due-many_close =
    { $n ->
        [one] { $many } kvas dokvasil
        [few] { $many } kvasy dokvasily
        [many] { $many } kvasů dokvasilo
       *[other] { $many } kvasů dokvasilo
    }
desk-due-many_still =
    { $n ->
        [one] { $many } zápara čeká
        [few] { $many } zápary čekají
        [many] { $many } zápar čeká
       *[other] { $many } zápar čeká
    } na přístroj
desk-due-many_regauge =
    { $n ->
        [one] { $many } sud
        [few] { $many } sudy
        [many] { $many } sudů
       *[other] { $many } sudů
    } k přeměření
desk-due-many_sample =
    { $n ->
        [one] { $many } sud
        [few] { $many } sudy
        [many] { $many } sudů
       *[other] { $many } sudů
    } k odběru vzorku
desk-due-many_taste =
    { $n ->
        [one] { $many } sud
        [few] { $many } sudy
        [many] { $many } sudů
       *[other] { $many } sudů
    } k ochutnání
desk-due-many_stands =
    { $n ->
        [one] { $many } nádrž stojí
        [few] { $many } nádrže stojí
        [many] { $many } nádrží stojí
       *[other] { $many } nádrží stojí
    }
desk-due-many_bottling =
    { $n ->
        [one] { $many } začaté stáčení
        [few] { $many } začatá stáčení
        [many] { $many } začatých stáčení
       *[other] { $many } začatých stáčení
    }
desk-due-many_failed =
    { $n ->
        [one] { $many } měřidlo neprošlo
        [few] { $many } měřidla neprošla
        [many] { $many } měřidel neprošlo
       *[other] { $many } měřidel neprošlo
    } kontrolou
desk-due-many_instrument =
    { $n ->
        [one] { $many } měřidlo
        [few] { $many } měřidla
        [many] { $many } měřidel
       *[other] { $many } měřidel
    } ke kontrole
desk-due-many_open_run =
    { $n ->
        [one] { $many } pálení
        [few] { $many } pálení
        [many] { $many } pálení
       *[other] { $many } pálení
    } bez konce
desk-due-many_stuck =
    { $n ->
        [one] { $many } kvas stojí
        [few] { $many } kvasy stojí
        [many] { $many } kvasů stojí
       *[other] { $many } kvasů stojí
    }
desk-due-and_more = { $named } a ještě { $more }
desk-due-all_of_them = Všechny
desk-due-look = Podívat se
desk-due-late = { $time } po termínu
desk-due-now = teď
desk-due-begun = začato { $when }
desk-due-last = naposledy { $when }
desk-due-never_yet = ještě nikdy
desk-due-last_entry = poslední zápis { $when }
desk-due-months_open = { $first } až { $last }: neuzavřeno
desk-due-month_open = { $month }: skončeno a neuzavřeno
desk-due-us_reports = jeho hlášení jsou splatná do 15. dalšího měsíce
desk-due-one_read = { $name }, odečet
desk-due-one_close = { $name }: dokvašeno, uzavřít
desk-due-one_stuck = { $name } se nehýbe
desk-due-one_still = { $name } čeká na přístroj
desk-due-one_regauge = { $name } k přeměření
desk-due-one_sample = { $name } k odběru vzorku
desk-due-one_taste = { $name } k ochutnání
desk-due-one_stands = { $name } stojí { $time }
desk-due-one_bottling = { $name }: měřeno pro stáčení, už { $time }
desk-due-one_open_run = { $name } { $what } nemá konec
desk-due-one_failed = { $name }: neprošlo kontrolou
desk-due-one_instrument = { $name } ke kontrole
desk-due-one_instrument_late = { $name }: kontrola je { $time } po termínu
group-page-sites = Závody
group-page-shut_out_what_it_handed = Vyloučen. Co odevzdal, zůstává. Nový kód ho přijme znovu.
group-page-taken_the_other_branch_stays = Převzato. Druhá větev zůstává v záznamu.
group-page-made_of = Vyrobeno z
group-page-this_needs_the_role_ask = Chce to roli { $access }. Obrátit se na kancelář.
group-files-no_site_has_anything_to = Pod tím jménem nemá žádný závod co stopovat. Hledat na stránce stopy.
paper-label-stand_off_label_scan_here = ŠTÍTEK NA DÁLKU: skenovat zde. Zůstat vně čáry. Pravidla provozu mají přednost.
paper-label-does_not_fit_a_label = { $mark } se při výšce písma 10 mm nevejde na štítek { $wide } x { $high } mm. Vybrat větší štítek, nebo kratší kód.
paper-label-choose_1_to_labels_to = K tisku vybrat 1 až { $most } štítků.
paper-label-this_page_has_labels_start = Tato stránka má štítků: { $many }. Začít na 1 až { $many }.
paper-label-ruler = Tato čára má 50 mm. Nemá-li, vytisknout znovu na 100 %.
paper-label-own_size_is = Vlastní rozměr má { $low } až { $high } mm na šířku i na výšku a 0 až { $clear } mm volna u každého okraje. Napsat šířku a výšku v milimetrech.
paper-label-zpl_wants_a_roll = ZPL tiskne jeden štítek za druhým. Vybrat roli, visačku nebo vlastní rozměr.
paper-case-lot = Šarže { $lot }
paper-case-case = Karton { $case }
paper-case-not_the_label_of_the_law = Pro sklad a stopu. Etiketa, kterou žádá zákon, je jiná.
paper-case-does_not_fit = Štítek kartonu se nevejde na { $wide } x { $high } mm. Vybrat větší štítek.
paper-case-address_too_long = Adresa knihy je na štítek příliš dlouhá. Nastavit kratší PUBLIC_HOST.
desk-room-today = Dnes
desk-room-queries = Dotazy
desk-room-entries = Zápisy
desk-room-vessels = Nádoby
desk-room-cellar = Sklep
desk-room-runs = Pálení
desk-room-blending = Scelování
desk-room-trace = Stopa
desk-room-periods = Období
desk-room-labels = Štítky
desk-room-settings = Nastavení
desk-rule-age_years = { $figure } let ve dřevě
desk-rule-strength_low = od { $figure }
desk-rule-strength_high = do { $figure }
desk-rule-score_low = body { $figure }
desk-rule-loss_high = ztráta nejvýš { $figure } % za rok
access-passkey-not_here = Na této adrese přístupový klíč použít nelze. Napsat heslo.
access-passkey-does_not_open = Tento přístupový klíč neotevírá. Zkusit ještě jednou, nebo napsat heslo.
access-passkey-none_used = Nepoužil se žádný přístupový klíč. Zkusit ještě jednou, nebo napsat heslo.
access-passkey-none_made = Přístupový klíč nevznikl. Zkusit ještě jednou; zařízení, které už váš má, druhý nevytvoří.
access-steps-another_phone_or_computer = Jiný telefon nebo počítač
access-steps-on_this = Zde: { $name }
access-steps-fetch_the = Stáhnout { $fetch }
access-steps-done = Hotovo
access-steps-back_one_step = O krok zpět
access-steps-or_the_computer_does_not = Nebo počítač tomuto telefonu neodpovídá na portu { $port }: jeho firewall, nebo jiná bezdrátová síť. Tato stránka to nerozezná.
access-steps-compare_before_you_trust = Porovnat, pak věřit
access-steps-these_groups_must_be_the = Tyto skupiny musí být tytéž, jaké ukazuje počítač v kanceláři. Liší-li se, tady přestat a říct to kanceláři.
access-steps-the_whole_fingerprint_sha_256 = Celý otisk, SHA-256
access-steps-another_one = Jiný?
access-steps-profile = profil
access-steps-certificate = certifikát
access-steps-trusted = Telefon lihovaru věří.
access-steps-not_trusted_yet = Lihovaru zatím nevěří.
access-steps-try_again = Zkusit znovu
access-steps-counted = Krok { $at } z { $many }
access-plain-trust_this_distillerys_computer = Věřit počítači tohoto lihovaru
access-plain-once_on_each_phone_after = Na každém telefonu jednou. Zápisník se pak otevře bez varování a funguje bez signálu.
floor-frame-to_the_work = K práci
floor-frame-back = Zpět
floor-frame-vessel = Nádoba
floor-frame-waits_on_slate = na tabulce
floor-frame-floor = Provoz
floor-frame-today = Dnes
floor-frame-scan = Skenovat
floor-frame-slate = Tabulka
floor-frame-more = Další
floor-field-may_stay_empty = (může zůstat prázdné)
floor-field-unit_of = Jednotka: { $label }
floor-field-scan_for = Skenovat pro { $label }
floor-field-not_logged_yet = Zatím nezapsáno.
floor-field-nothing_is_lost = Nic se neztratilo; opravit toto a zapsat znovu.
floor-away-title = Kancelář je pryč
floor-away-desk = Kancelář
floor-away-no_answer = kniha neodpovídá
floor-away-words = Kancelář je na počítači knihy a ten neodpovídá. Co telefon zapsal, je v bezpečí na tabulce.
floor-away-ask_again = Zeptat se znovu
floor-away-work_without = Pracovat bez signálu
floor-enrol-title = Přijmout tento telefon
floor-enrol-office_gives = Kancelář dá každému telefonu kód, jednou. S ním telefon odevzdává do knihy a drží karty nádob.
floor-enrol-code = Kód z kanceláře
floor-enrol-name = Jak se telefon jmenuje
floor-enrol-name_help = Jak je napsáno vzadu. Prázdné: jmenuje se, jak řekla kancelář.
floor-enrol-let_it_in = Přijmout
floor-job-title = Práce
floor-job-no_script = Stránka počítá údaje v telefonu a potřebuje skript. Každý zápis lze udělat i z karty nádoby.
floor-log-needed = nutné
floor-log-remark = poznámka
floor-log-read_now = Odečteno teď
floor-log-left_empty = Prázdné: odečteno teď.
floor-log-log_it = Zapsat
floor-run-title = Pálení
floor-run-sheet = List pálení
floor-vessel-to_log = Co zapsat
floor-run-plain_reading = Odečet
floor-run-cut_or_event = Řez nebo událost pálení
floor-run-end_the_run = Ukončit pálení
floor-scan-camera_sees = Co vidí kamera
floor-scan-torch = Světlo
floor-scan-outside_the_line = Nepřekračovat čáru, ledaže je telefon pro to místo schválený a provoz to dovoluje.
floor-slate-no_script = Tabulka potřebuje skript. Bez něj jde každý zápis po zapsání rovnou do knihy.
floor-today-no_script = Telefon nespouští skript, není v něm tedy tabulka. Se spojením napsat značku a pokračovat.
floor-who-title = Kdo zapisuje?
floor-who-no_script = Bez skriptu se zapisuje pod vlastním jménem:
floor-who-sign_in = přihlásit
floor-mark-label = Značka na štítku
floor-mark-hint = Písmena, číslice a poslední znak za pomlčkou.
floor-mark-open = Otevřít
floor-caution-lead_1 = Čára.
floor-caution-words_1 = Běžný telefon může zapálit páry lihu. Zůstat vně vyznačené čáry, ledaže je telefon pro to místo schválený a provoz to dovoluje. Přečíst u lihového měřidla, odstoupit, napsat s minutou odečtu.
floor-caution-lead_2 = Kvasírna.
floor-caution-words_2 = Oxid uhličitý nevoní a leží při zemi. Při 5000 ppm odejít, větrat, říct vedoucímu; při 30 000 ppm hned ven. Pro odečet se nikdy nevracet. Svíčka není zkouška.
floor-caution-lead_3 = Úkap a metanol.
floor-caution-words_3 = Lihoměr metanol nevidí, hustoměr také ne. Část je v úkapu, i v jádru a dokapu. Jistotu dá jen laboratoř. První výtok nechutnat.
floor-caution-lead_4 = Přístroj.
floor-caution-words_4 = Horké, a pod tlakem, když se cesta ucpe. Studená voda může horký uzavřený přístroj zmáčknout. Odvětrání nechat volné; od běžícího přístroje neodcházet.
floor-caution-lead_5 = Nádrže a kádě.
floor-caution-words_5 = Dovnitř nikdo sám nebo bez povolení, zkoušky plynu a někoho venku.
floor-caution-lead_6 = Sudy.
floor-caution-words_6 = Plný sud 225 L (59 gal) váží 220 až 260 kg (485 až 573 lb). Vozík, zvedák nebo klín; nikdy záda, nikdy v čáře břicha sudu.
floor-caution-lead_7 = Sám ve sklepě.
floor-caution-words_7 = Říct, kde jste a kdy budete zpět. Tento telefon poplach nevyhlásí.
floor-caution-title = Upozornění
floor-caution-first = Přednost mají posouzení provozu, místní předpisy a oprávnění lidé. Nic v tomto telefonu neříká, že je místo nebo líh bezpečné.
floor-form-unit_of = Jednotka: { $what }
floor-form-read_at = Odečteno
floor-form-who = Kdo
floor-form-role = Role
floor-form-seen_by = Viděl
floor-form-remark = Poznámka
floor-form-missing = Chybí: { $what }. Napsat.
floor-form-yes = ano
floor-form-no = ne
floor-form-alcoholmeter = Použitý lihoměr
floor-form-dip = Měrka hladiny
floor-form-refractometer = Použitý refraktometr
floor-form-saccharometer = Použitý cukroměr
floor-form-scale = Použitá váha
floor-form-thermometer = Použitý teploměr
floor-form-density_meter = Použitý hustoměr
floor-form-pH_meter = Použitý pH metr
floor-enrol-type_the_code = Napsat kód z kanceláře.
floor-vessel-not_in_book = Kniha nemá nádobu { $mark }. Přečíst štítek znovu, nebo požádat kancelář, ať ji zapíše.
floor-form-no_such = Takový formulář není. Jít zpět a vybrat z karty nádoby.
floor-log-sign_in_first = Nejdřív se přihlásit, v jiné kartě: pak tlačítko stisknout znovu. Co je napsáno, tu zůstává.
floor-log-no_time = Odečteno: vybrat den a minutu, nebo nechat prázdné pro teď.
floor-mark-bad =
    { $why ->
        [empty] Napsat značku ze štítku, třeba F3-8.
        [foreign] Tento kód není náš. Naskenovat štítek na nádobě, nebo napsat značku.
        [characters] Značka má jen písmena A až Z a číslice 0 až 9. Přečíst štítek znovu.
        [too_short] Značka má kód a kontrolní znak, třeba F3-8. Napsat ji celou.
        [too_long] Na značku je to moc dlouhé. Napsat velký nápis ze štítku.
       *[check] { $mark } není značka: některý znak je špatně, nebo poslední chybí. Přečíst štítek znovu.
    }
floor-form-within = { LOWER($words) }
