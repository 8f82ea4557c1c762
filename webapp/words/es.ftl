### The words of Cellarslate in Spanish (es). No native of the trade has read them yet.
### Terms from memory (a native of the trade has to read them).
### Believed to be the law's word: depósito fiscal, precinto, fermentación, destilación, materia, mosto, orujo, lías,
### bebida espirituosa, aguardiente de fruta, aguardiente de vino, aguardiente de orujo, aguardiente de orujo de fruta,
### brandy, Geist, whisky, alcohol puro, dióxido de carbono, metanol, ácido cianhídrico, carbamato de etilo,
### sustancias volátiles, pera Williams, membrillo, ciruela, ciruela mirabel (short: mirabel), albaricoque, cereza,
### frambuesa, cereal, centeno, malta, miel, roble, refractómetro, termómetro, balanza, división, incertidumbre típica,
### clase, masa volúmica, peso neto, merma, lote, impuesto, en régimen suspensivo (said as en suspensión), boletín.
### Usage of the trade: depósito, alambique, plato, deflegmador, barrica, bidón, caja, palé, cajón, depósito de embotellado,
### almacén, bodega, tapón, duela, aro, recepción, carga, corte, llenado, nuevo aforo, aforo, relleno, rellenar, mezcla,
### rebajar, refrigeración, embotellado, expedición, destrucción, limpieza, inventario, muestra, cata, calor encendido,
### primera gota, masa, levadura, enzima, cabezas, corazón, colas, flemas, vinaza, castaño, morera, carbonizado, tostado,
### sacarímetro, densímetro, varilla, pH-metro, grado real, peso bruto, tara, caudal, altura (dip), vacío (ullage),
### rendimiento, extracto seco, existencias, partida, asiento, rectificar, declaración, parada, con fuga, vaciar, campaña,
### destilador.
### Own words of the app: pizarra, libro, oficina (desk and office), planta (floor), centro (site), marca, anotar, entregar,
### retirar (take back), tachar, vale (it stands), mantener lo leído, admitir (let in), excluir (shut out), alto, pregunta,
### nota, pendiente, caja de aforo (spirit safe), cabezas y colas (feints), oculto (obscured), hito (head of the book).
### In no list, from memory: densidad (gravity, beside masa volúmica for density), fermentado (wash; the list says vino de
### frutas para destilar), fermentador (the list says depósito de fermentación), colector (receiver; the list says
### recipiente), alcohómetro for the glass, sombrero, chorro, embebido (soakage), línea de rodadura (bilge line), extracción
### (draw), recarbonizada, parafinada, encolada, tonelero, marca de lote, caja incompleta, archivo (library), llenadora,
### fondo (heel), tabla de aforo (strapping table), zona de fuego, tanto alzado (flat rate), cuenta with producción,
### almacenamiento, elaboración, galones proof, puntos proof, aguardiente de cerveza, aguardiente de sidra o de perada,
### aguardiente de pasas, alcohol neutro, whisky straight, ronda, hoja de destilación, plan de cortes, registro de partida,
### pasaporte de lote, hoja de servicio, serie (of glasses), dúo-trío, ordenación, llave de acceso (passkey), huella.

range-between = de { $low } a { $high }
range-or_more = { $low } o más
range-up_to = hasta { $high }
span-s = { $many } s
span-min = { $many } min
span-h = { $many } h
span-days =
    { PLURAL($many) ->
        [one] { $many } día
       *[other] { $many } días
    }
span-months =
    { PLURAL($many) ->
        [one] { $many } mes
       *[other] { $many } meses
    }
span-years =
    { PLURAL($many) ->
        [one] { $many } año
       *[other] { $many } años
    }
time-same_day = { $clock }
time-day_before = { $clock } del día anterior
time-day = { $day } { $clock }
pct =
    { UNITS() ->
        [us] proof
       *[metric] %
    }
points =
    { UNITS() ->
        [us] puntos proof
       *[metric] puntos
    }
as_said = { $words }
no_such_message = Este programa no tiene palabras para «{ $id }». Actualizarlo o preguntar en la oficina.
missing = Falta: { $label }. { asks }
missing-question = { $label } { asks }
asks =
    { $sort ->
        [choice] Elegir una opción.
        [yes_no] Elegir una opción.
        [mark] Elegir, escanear o teclear.
        [date] Elegir el día.
       *[other] Teclear el dato.
    }
no_such_choice = { $label }: elegir una de las opciones.
no_such_choice-yes_no = { $label }: sí o no.
no_date = { $label }: { $typed } no es una fecha. Elegir el día.
too_long = { $label }: más de { $most } caracteres. Acortar; el resto puede ir en una nota.
no_such_unit = { $label } se lee en { $units }. Elegir una unidad.
no_number = { $label }: { $reason }
number-empty = Aquí no hay nada tecleado. Teclear la cifra tal como la muestra el instrumento.
number-too_long = Demasiado largo para una cifra. Teclear 15 caracteres como máximo.
number-two_signs = Teclear un solo punto o coma antes de los decimales: 1234.5 o 1234,5.
number-not_plain = No es un número simple. Teclear cifras con un punto o una coma: 14.6 o 14,6.
outside_tables = { $label }: { $reason }
impossible = { $label } { UNIT(TYPED($figure)) } no puede ser: es posible { UNIT(LIKE($possible, $figure)) }. Mirar otra vez o mantener lo leído.
impossible-outside = { $label }: { $reason }
unusual = { $label } { UNIT(TYPED($figure)) } no es habitual: aquí lo habitual es { UNIT(LIKE($usual, $figure)) }. Mirar otra vez.
danger = { $label } { UNIT(TYPED($figure)) }. { $act }
slip-swapped = dos cifras cambiadas de orden
slip-point = la coma corrida
slip-unit = { $meant }, no { $typed }
slip-meant = { TYPED($meant) }
slip-key = la tecla de al lado
slip-twice = una cifra tecleada dos veces
slip-misread = una cifra tomada por otra
slip-lost = falta una cifra
slip-sign = el otro signo
slip-box = en la casilla «{ $label }»
slip-exchanged = cambiado con «{ $label }»
slip-net = era neto, sin el recipiente
slip-gross = era bruto, con el recipiente
slip-ullage = era el vacío, desde arriba
slip-cases = eran cajas
ferment_fast = La densidad bajó { $fell } desde { $since }, es decir, { $a_day } al día; { $much } es mucho para la fruta. Mirar otra vez y enfriar la masa.
ferment_fast-soon = La densidad bajó { $fell } desde { $since }: la fruta no fermenta tan deprisa. Mirar otra vez.
strength_fell = El grado real { BARE($now) } { pct } está { APART($off) } { points } por debajo de { BARE($last) } { pct } de { $apart } antes: una destilación baja más despacio. Mirar otra vez.
held_strength =
    El grado real { BARE($now) } { pct } está { APART($off) } { points } por { $side ->
        [above] encima
       *[below] debajo
    } de { BARE($held) } { pct }, que es lo que el libro tiene en este recipiente. Mirar otra vez, y buscar un traslado o agua sin anotar.
reason-outside = { $what } { UNIT($figure) } está fuera de { UNIT($possible) }. { $advice }
reason-outside_in_words = { $what } { $figure } { $unit } está fuera de { $possible } { $unit }. { $advice }
reason-off_glass = A { $temp }, un destilado de { $strength } queda fuera de la escala del alcohómetro. Acercarlo a { glass-temp } o usar un densímetro electrónico.
glass-temp =
    { UNITS() ->
        [us] 60 °F
       *[metric] 20 °C
    }
reason-glass_too_weak = Una lectura de { $reading } a { $temp } significaría que no hay alcohol. A esa temperatura un alcohómetro puede marcar de { $low } a { $high }: leer otra vez alcohómetro y termómetro.
reason-glass_too_strong = Una lectura de { $reading } a { $temp } significaría más que alcohol puro. A esa temperatura un alcohómetro puede marcar de { $low } a { $high }: leer otra vez alcohómetro y termómetro.
reason-part_ice = A { $temp } puede ser hielo en parte. Calentar por encima de { $above } y leer otra vez.
reason-no_such_density = La masa volúmica { $density } está fuera de { BARE($ethanol) } (etanol) a { $water } (agua) a esta temperatura. Comprobar masa volúmica y temperatura; también lo causan azúcar o sólidos en la muestra.
reason-table1_blank = La tabla 1 no tiene cifra para { $reading } a { $temp }. Acercar el destilado a 60 °F y leer otra vez.
reason-gravity_above_start = La densidad está por encima de la inicial. Comprobar ambas, el depósito y si se añadió azúcar.
reason-no_dip_table = El libro no tiene tabla para este recipiente. Teclear sus litros; la oficina puede darle una tabla en el recipiente, Alturas.
reason-tare_too_heavy = La tara tiene que estar entre cero y el peso bruto. Pesar otra vez.
reason-target_too_strong = El agua solo puede rebajarlo. Comprobar el objetivo y el grado.
reason-empty_bottle_heavy = Una botella vacía pesa menos que una llena. Pesar otra vez las dos.
reason-few_checks = Hacen falta { $least } como mínimo. Comprobar más botellas.
reason-no_gauges = Aforar primero la barrica.
reason-uneven_readings = Dar una densidad para cada hora.
measured-alcohol_by_both = Alcohol por ambos
measured-bottle_size = Tamaño de botella
measured-brix = Brix
measured-charge = Carga
measured-check = Comprobación
measured-density = Masa volúmica
measured-fruit = Fruta
measured-full_bottle = Botella llena
measured-glass_expansion = Dilatación del vidrio
measured-glass_reading = Lectura del alcohómetro
measured-gravity = Densidad
measured-dip = Altura
measured-bung_diameter = Diámetro en el tapón
measured-head_diameter = Diámetro del fondo
measured-length = Longitud
measured-extract = Extracto seco
measured-height = Altitud
measured-hydrometer_correction = Corrección del areómetro
measured-juice_share = Parte de zumo
measured-loss = Pérdida
measured-mass_fraction = Fracción en masa
measured-mole_fraction = Fracción molar
measured-net_weight = Peso neto
measured-number = Número
measured-original_gravity = Densidad inicial
measured-plato = Plato
measured-proof = Proof
measured-proof_gallons = Galones proof
measured-proof_reading = Lectura proof
measured-pure_alcohol = Alcohol puro
measured-pure_alcohol_charged = Alcohol puro cargado
measured-refractometer = Refractómetro
measured-result = Resultado
measured-size = Tamaño
measured-solids = Sólidos
measured-strength = Grado
measured-sugar = Azúcar
measured-temperature = Temperatura
measured-thermometer_correction = Corrección del termómetro
measured-time = Hora
measured-time_ahead = Tiempo por delante
measured-unfermentable_part = Parte no fermentable
measured-usual_drift = Deriva habitual
measured-volume = Volumen
measured-water = Agua
measured-water_temperature = Temperatura del agua
measure-kg_kg = kg/kg
measure-mol_mol = mol/mol
measure-kg_L = kg/L
measure-m = m
measure-per_degC = por °C
measure-of_one = de uno
measure-days = días
measure-years = años
measure-pct_year = % al año
measure-pct_vol_year = % vol al año
advice-cannot_rise = La densidad no puede haber subido. Comprobar ambas.
advice-check_charge = Comprobar lo que se cargó.
advice-check_charge_strength = Comprobar el grado de la carga.
advice-check_dip = Comprobar la altura y su unidad.
advice-check_figure = Comprobar la cifra y su unidad.
advice-check_gauges = Comprobar los aforos.
advice-check_glass = Comprobar el alcohómetro.
advice-check_glass_figure = Comprobar la cifra; un alcohómetro proof tiene su propia unidad.
advice-check_instrument = Comprobar la cifra y el instrumento.
advice-dip_in_table = La tabla del recipiente acaba ahí: medir otra vez la altura o teclear los litros.
advice-dip_in_cask = La barrica no es más alta: medir otra vez la altura o mirar sus dimensiones.
advice-measure_cask = Medir otra vez la barrica.
advice-check_scale = Comprobar la cifra y qué escala tiene el instrumento.
advice-check_strengths = Comprobar los grados.
advice-check_thermometer = Comprobar el termómetro y su unidad, o llevar la muestra al intervalo.
advice-check_weights = Comprobar bruto y tara.
advice-count_again = Contar otra vez.
advice-distil_sample = Destilar la muestra y tomar el proof del destilado.
advice-empty_cask = Una barrica vacía no pierde nada.
advice-fraction_not_percent = Darlo como fracción de uno, no en tanto por ciento.
advice-gauge_again = Aforar otra vez el depósito.
advice-gauge_first = Aforar primero el depósito.
advice-give_cask_size = Poner en el libro la capacidad de la barrica.
advice-give_height = Dar la altitud del alambique sobre el mar en metros.
advice-look_again = Mirar otra vez la cifra.
advice-look_at_label = Mirar la etiqueta.
advice-no_baume = Por debajo del agua no hay Baumé. Tomar el grado por la bajada de la densidad.
advice-no_check = Fuera de ese intervalo no hay comprobación.
advice-not_so_far = Nadie conoce una barrica con tanta antelación.
advice-order_gauges = Poner los aforos por orden de hora.
advice-order_readings = Poner las lecturas por orden de hora.
advice-read_both_again = Las dos no cuadran. Leer otra vez ambas.
advice-read_spirit_again = Leer otra vez el termómetro del destilado.
advice-read_water_again = Leer otra vez el termómetro del agua.
advice-see_certificate = Tomarlo del certificado del instrumento.
advice-soda_lime = El vidrio sódico-cálcico tiene 0,000025.
advice-table1_reading = La tabla 1 acaba ahí: leer otra vez el alcohómetro.
advice-table1_temp = La tabla 1 acaba ahí: acercar el destilado a 60 °F.
advice-table_ends = La tabla publicada acaba ahí.
advice-two_gauges = Dos aforos a la misma hora no dan un ritmo.
advice-usual_juice_share = La masa de fruta entera tiene de 0,75 a 0,9.
advice-usual_unfermentable = Lo habitual es de 3 a 5.
advice-weigh_again = Pesarlo otra vez.
floor-go_on = Seguir
floor-not_said = no se dijo
floor-remark = nota
floor-mistyped = mal tecleado
floor-misread = mal leído
floor-save_the_slate_to = Guardar la pizarra en un archivo
floor-as_last_time = como la última vez
floor-pin_of = PIN de { $code }
floor-log_it = Anotar
floor-remark_2 = Observación
floor-leave_it = Dejarlo
floor-more = Más
floor-today = Hoy
floor-blind_tasting = Cata a ciegas
floor-more_2 = { $rest } más
floor-next = siguiente
floor-empty = vacío
floor-helps = Ayudas
floor-ended = acabada { $ended_at }
floor-gauge_the_fractions = Aforar las fracciones
floor-run = destilación
floor-hearts = corazón
floor-tails = colas
floor-true_strength_over_time = Grado real en el tiempo
floor-time = hora
floor-run_before = destilación anterior
floor-nose_first = Primero la nariz.
floor-reading = Lectura
floor-nose_first_2 = primero la nariz
floor-cut_plan = Plan de cortes
floor-cut_to_hearts = Cortar a corazón
floor-empty_by_the_book = vacío, según el libro
floor-this_phone = Este teléfono
floor-not_let_in = sin admitir
floor-since = desde { $started_at } · { $started_at_2 }
floor-run_sheet = Hoja de destilación
floor-let_this_phone_in = Admitir este teléfono
floor-put_it_right = Rectificar
floor-take_it_back = Retirar
floor-taken_back_it_stays = Retirado. Queda legible, tachado.
floor-start-this_phone_now_works = Este teléfono ya funciona sin cobertura.
floor-start-this_page_did_not = Esta página no se abrió como debía. { $message } La pizarra está a salvo.
floor-start-try_again = Reintentar
floor-begun-begun_before = Empezado antes
floor-begun-begun_by = Empezado { $ago } por { $code }{ $shown }
floor-begun-go_on_or_start = ¿Seguir o empezar de cero?
floor-begun-start_clean = Empezar de cero
floor-entryform-log = Anotar { $figure } { $unit }
floor-entryform-as_read = { " " }según lo leído
floor-extras-instrument_for = { $instrument } para { $label }
floor-extras-corrected = { " " }· corregido
floor-extras-read_at = Leído a las { $typed }
floor-extras-read_now = Leer ahora
floor-extras-read_earlier = ¿Leído antes?
floor-extras-with_a_remark = con observación
floor-fix-something_else = otra cosa
floor-fix-of = { " " }del { $day }
floor-fix-of_2 = { " " }del { $day }, { $at }
floor-fix-this_replaces_the_entry = Esto sustituye al asiento{ $when }, que queda legible. { $rest }
floor-fix-type_all_of_it = Teclearlo todo, no solo lo que estaba mal.
floor-fix-what_was_wrong = Qué estaba mal
floor-full-the_phone_could_not = El teléfono no pudo guardarlo. Las cifras siguen aquí; anotar otra vez.
floor-full-not_on_the_slate = No está en la pizarra.
floor-full-the_figures_stay_in = { $words } Las cifras siguen en este formulario.
floor-ghosts-last = última { $words }, { $when }
floor-ghosts-last_2 = última { $figure }, { $when }
floor-jumps-can_only_fall_it = { $label } solo puede bajar: era { $last } { $when }.
floor-jumps-before = antes
floor-look-look_again = Mirar otra vez
floor-look-danger = Peligro.
floor-look-look_again_2 = ¿Mirar otra vez?
floor-look-keep_as_read = Mantener lo leído
floor-marks-pick_scan_or_type = elegir, escanear o teclear
floor-marks-scan_or_type = escanear o teclear
floor-quickfields-unit_of = Unidad de { $label }
floor-quickfields-minute = Minuto
floor-sums-by_the_class_of = por la clase de los instrumentos, o la de la ley
floor-panels-not_read_yet = sin leer aún
floor-panels-switch_first_mark_of = Cambiar primero. Marca del colector ahora abierto
floor-panels-switch_first_open_now = Cambiar primero. Ahora abierto:
floor-panels-another_minute_more_figures = otro minuto, más cifras
floor-paper-no_strength_yet = Aún sin grado.
floor-paper-glass = alcohómetro { $glass }{ $temp }
floor-paper-at = { " " }a { $temp }
floor-paper-flow = Caudal
floor-paper-not_read = no leído
floor-paper-not_since = , no desde entonces
floor-paper-the_sum_needs_it = la suma lo necesita
floor-paper-receivers = Colectores
floor-paper-true = { $true_strength } real
floor-paper-dip = altura { $dip }
floor-paper-logged = anotado { $typed_at }
floor-paper-logged_in_this_run = Anotado en esta destilación
floor-paper-twice = dos veces
floor-paper-logged_twice =
    Anotado dos veces en un minuto. Si fue un solo { $what ->
        [change] cambio
       *[cut] corte
    }, retirar uno.
floor-paper-this_phone = este teléfono
floor-state-cut_to_tails = Cortar a colas
floor-state-end_the_run = Acabar la destilación
floor-state-last_time = { LOWER($step) } la última vez
floor-state-heads_cut = corte de cabezas
floor-state-hearts_cut = corte de corazón
floor-state-logged = , anotado { $typed_at }
floor-state-logged_twice = , anotado dos veces
floor-enrol-the_code_is_missing = Falta el código. Escanearlo en la oficina o teclearlo.
floor-enrol-letting_it_in_and = Admitiendo el teléfono y trayendo las fichas de los recipientes.
floor-enrol-is_let_in = { $name } está admitido.
floor-enrol-the_book_did_not = El libro no aceptó este código. Pedir otro en la oficina.
floor-job-there_is_no_such = No existe esa página. Volver a Hoy.
floor-job-this_page_is_not = Esta página aún no está en el teléfono. Vendrá sola la próxima vez que el teléfono alcance el libro; hasta entonces, anotar desde la ficha del recipiente.
floor-job-not_here_yet = Aún no está aquí
floor-log-not_on_this_phones = no está en la lista de este teléfono
floor-more-note = Nota
floor-more-to_the_next_shift = al turno siguiente
floor-more-instrument = Instrumento
floor-more-check_it = comprobarlo
floor-more-bottles = Botellas
floor-more-count_them = contarlas
floor-more-cases = Cajas
floor-more-out_or_back = salen o vuelven
floor-more-in_from_another_site = entra de otro centro
floor-more-stock = Existencias
floor-more-count_it_in_a = contarlas en una ronda
floor-more-your_glasses = sus copas
floor-more-laboratory = Laboratorio
floor-more-of_bottled_spirit = de destilado embotellado
floor-more-the_curves = las curvas
floor-more-the_jobs = los trabajos
floor-more-the_reader_of_labels = el lector de etiquetas
floor-more-log_without_a_vessel = Anotar sin recipiente
floor-more-nobody_chosen = Nadie elegido
floor-more-who_logs = quién anota
floor-more-no_name_yet = Aún sin nombre
floor-more-let_in = admitido
floor-more-gloves_buzz_voice = guantes, vibración, voz
floor-more-desk = Oficina
floor-more-needs_signal = necesita cobertura
floor-more-put_the_phone_down = Dejar el teléfono
floor-more-not_on_this_phone = Aún no está en este teléfono: { $awaited }. Mantener la aplicación abierta con cobertura un minuto.
floor-more-as_you_like_it = A su gusto
floor-more-units = Unidades
floor-more-metric = métrico
floor-more-us = EE. UU.
floor-more-decimal_mark = Signo decimal
floor-more-as_the_house = como la casa
floor-more-keys = Teclas
floor-more-large_keys = teclas grandes
floor-more-phone_keyboard = teclado del teléfono
floor-more-light = Luz
floor-more-as_the_phone = como el teléfono
floor-more-dark = oscuro
floor-more-light_2 = claro
floor-more-put_cellarslate_on_the = Poner Cellarslate en la pantalla de inicio
floor-more-put_cellarslate_on_the_2 = Poner Cellarslate en la pantalla de inicio (Compartir y luego Añadir a pantalla de inicio): así el teléfono conserva la pizarra más tiempo.
floor-run-the_run_in_full = No se pudo mostrar la destilación completa; la hoja vale sin ella.
floor-run-no_run_is_known = Este teléfono no conoce ninguna destilación de { $mark }. Cargar antes el alambique; o leer ahora, y el libro la une a su destilación.
floor-run-charge = Carga
floor-run-heat_on = Calor encendido
floor-run-first_drop = Primera gota
floor-run-other_event = Otro suceso
floor-run-still_opened = Alambique abierto
floor-run-balance_and_yield = Balance y rendimiento
floor-run-charge_again = Cargar otra vez
floor-run-switch_the_receiver_first = cambiar antes el colector
floor-run-event = Suceso
floor-run-log_the_cut = Anotar el corte
floor-scan-the_reader_of_labels = El lector de etiquetas aún no está en este teléfono: llega con la próxima cobertura. Teclear la marca.
floor-slate-not_let_in_yet = aún sin admitir
floor-slate-handed_in = entregado { $handed_in_at }
floor-slate-nothing_handed_in_yet = aún nada entregado
floor-slate-handing_in = entregando
floor-slate-book_busy = libro ocupado
floor-slate-wants_a_look = Pide una mirada
floor-slate-waiting = En espera
floor-slate-put_aside_not_in = Apartado, no está en el libro
floor-slate-in_the_book = En el libro
floor-slate-handing_in_2 = Entrega
floor-slate-hand_in_now = Entregar ahora
floor-slate-entries_wait =
    { PLURAL($count) ->
        [one] { $count } asiento espera
       *[other] { $count } asientos esperan
    } en este teléfono.
floor-slate-nothing_waits = Nada en espera.
floor-slate-all_in_the_book = Todo en el libro.
floor-slate-handing_in_3 = Entregando{ $in }.
floor-slate-of_are_in = : { $done } de { $asked } están dentro
floor-slate-the_book_does_not = El libro aún no conoce este teléfono. Admitirlo; después se entregan solos.
floor-slate-they_are_safe_here = Aquí están a salvo y se entregan solos cuando el libro responda.
floor-slate-lines_want_a_look =
    { PLURAL($count) ->
        [one] { $count } línea pide
       *[other] { $count } líneas piden
    } una mirada.
floor-slate-entries_put_aside =
    { PLURAL($count) ->
        [one] { $count } asiento quedó apartado
       *[other] { $count } asientos quedaron apartados
    }.
floor-slate-entries_handed_in =
    { PLURAL($count) ->
        [one] { $count } asiento se entregó
       *[other] { $count } asientos se entregaron
    } ahora mismo.
floor-slate-keeping_it_safe = Mantenerlo a salvo
floor-slate-storage_is_kept = se conserva
floor-slate-storage_may_be_cleared = puede borrarse
floor-slate-load_a_saved_slate = Cargar una pizarra guardada
floor-slate-a_saved_slate_can = Una pizarra guardada puede cargarse en cualquier teléfono, en cualquier momento. El libro toma cada asiento una sola vez.
floor-slate-entries_on_this_slate =
    { PLURAL($count) ->
        [one] { $count } asiento está
       *[other] { $count } asientos están
    } ahora en esta pizarra.{ $known }
floor-slate-were_here_already = { " " }{ $known } ya estaban aquí.
floor-today-the_book_has_no = El libro aún no tiene recipientes. La oficina los pone; después llegan aquí solos.
floor-today-the_book_does_not = El libro aún no conoce este teléfono.
floor-today-no_cards_on_this = Aún no hay fichas en este teléfono. Llegan con la primera entrega.
floor-today-you_can_scan_and = Ya se puede escanear y anotar; todo espera aquí.
floor-today-run = { $what } destilación { $name }
floor-today-read = { " " }· leído { $last }
floor-today-true = { $sign } real
floor-today-the_book_asks = El libro pregunta
floor-today-last_remarks = Últimas observaciones
floor-today-all_vessels = Todos los recipientes
floor-today-find_by_mark_name = Buscar por marca, nombre o contenido
floor-today-no_vessel_here_is = Ningún recipiente se llama así.
floor-today-elsewhere = En otro sitio
floor-vessel-no_mark = sin marca
floor-vessel-not_known_here = no se conoce aquí
floor-vessel-this_phone_knows_no = Este teléfono no conoce ningún recipiente con esta marca. Entregar una vez con cobertura; puede que el libro ya la conozca.
floor-vessel-at = En { $mark }:{ " " }
floor-vessel-note_it = Tomar nota
floor-vessel-scan_again = Escanear otra vez
floor-vessel-open_queries = Preguntas abiertas
floor-vessel-filled = Llenado { $since }.
floor-vessel-nothing_logged_here_yet = Aquí aún no hay nada anotado.
floor-vessel-the_book_is_still = El libro aún calcula qué cambian aquí los asientos tardíos.
floor-vessel-as_the_book_had = Como lo tenía el libro { $fresh }.
floor-vessel-the_book_has_not = Aún no se ha preguntado al libro.
floor-vessel-readings_without_a_charge = Lecturas sin carga
floor-vessel-how_much_water = Cuánta agua
floor-vessel-bottling_line = Línea de embotellado
floor-vessel-more_to_log = Más que anotar
floor-vessel-what_to_log = Qué anotar
floor-who-logs_now = Ahora anota { $name }.
floor-who-logs = Anota { $name }
floor-who-no_names_on_this = Aún no hay nombres en este teléfono.
floor-who-they_come_with_the = Llegan con la primera entrega. Hasta entonces los asientos se anotan sin nombre.
floor-who-as = Como
floor-who-no_signal_so_this = Sin cobertura, este PIN no se comprobó. Sobre lo que se anote se preguntará.
floor-cautions-carbon_dioxide_lies_low = El dióxido de carbono se queda abajo y no huele. A 5000 ppm salir, ventilar, avisar al responsable.
floor-cautions-stay_outside_the_line = Quedarse fuera de la línea, salvo que este teléfono esté homologado y el centro lo permita. ¿Leer después? Ponerle su propio minuto.
floor-cautions-a_hydrometer_cannot_see = Un areómetro no ve el metanol. Primero la nariz; un laboratorio lo sabe.
floor-cautions-hot_and_under_pressure = Caliente, y bajo presión si se obstruye un paso. No dejar nunca solo un alambique en marcha.
floor-cautions-never_lift_a_full = No levantar nunca a mano una barrica llena.
floor-cautions-no_one_enters_a = Nadie entra en un recipiente sin permiso y sin alguien fuera.
floor-frame-no_signal = sin cobertura
floor-frame-not_the_book = no es el libro
floor-frame-to_look_at = { $attention } por mirar
floor-frame-on_slate = { $waiting } en pizarra
floor-inunits-true_at_20_c = real a 20 °C
floor-inunits-true_at_60_f = real a 60 °F
floor-linesheet-wrong_vessel = recipiente equivocado
floor-linesheet-logged_twice = anotado dos veces
floor-linesheet-open_put_it_right = Abrir { $kind }, { $line }: rectificar o retirar
floor-linesheet-why_it_stays_legible = ¿Por qué? Queda legible, tachado, y ya no cuenta.
floor-linesheet-that_could_not_be = No se pudo guardar. Reintentar.
floor-scanfor-what_the_camera_sees = Lo que ve la cámara
floor-scanfor-back_to_the_form = Volver al formulario
floor-slatelines-taken_back = retirado
floor-slatelines-refused = rechazado
floor-slatelines-clash = choque
floor-slatelines-the_book_has_another = El libro tiene otro asiento con el nombre de este. Se conservan ambos; decide el destilador.
floor-slatelines-the_book_cannot_read = El libro no puede leerlo.
floor-slatelines-book_no = Libro n.º { $book_no }
floor-slatelines-hand_in_again = Entregar otra vez
floor-slatelines-i_have_read_it = Lo he leído
floor-takebackbar-taken_back_at_once = retirado al momento
floor-takebackbar-that_could_not_be = No se pudo guardar. Retirarlo en su propia línea.
floor-typemark-letters_digits_and_the = Letras, cifras y el último carácter tras el guion.
floor-typemark-the_last_character_is = Falta el último carácter. Teclearlo también o tocar la marca que está en la etiqueta.
floor-typemark-a_right_mark_but = Marca correcta, pero de ningún recipiente que este teléfono conozca.
floor-words-on_the_slate_wait = En la pizarra. { $waiting } esperan en este teléfono.
floor-words-on_the_slate_it = En la pizarra. Espera en este teléfono.
floor-words-batch = partida { $name }
floor-words-at = a { $strength_pct }
floor-words-just_now = ahora mismo
floor-words-min_ago = hace { $minutes } min
floor-words-h_ago = hace { $minutes } h
floor-words-days_ago = hace { $minutes } días
floor-ask-the_book_did_not = El libro no respondió a tiempo.
floor-ask-the_book_cannot_be = Desde aquí no se alcanza el libro.
floor-ask-something_else_answered_not = Respondió otra cosa, no el libro: quizá esta red pide antes iniciar sesión.
floor-db-this_phones_storage_is = El almacenamiento de este teléfono está lleno y no se guardó nada. Liberar espacio, o guardar la pizarra en un archivo y entregarla.
floor-db-a_newer_cellarslate_has = Un Cellarslate más nuevo tiene abierta la pizarra. Cerrar las otras pestañas y abrir otra vez esta página.
floor-db-an_older_cellarslate_is = Un Cellarslate más antiguo está abierto en otra pestaña. Cerrarla; entonces se abre la pizarra.
floor-db-this_browser_does_not = Este navegador no deja que la pizarra guarde nada ({ $name }). Salir de la navegación privada o usar otro navegador.
floor-device-clock_off =
    El reloj de este teléfono va { $span } { $side ->
        [ahead] por delante
       *[behind] por detrás
    } del reloj del libro. Ponerlo en hora; lo anotado conserva sus horas.
floor-device-the_browser_has_promised = El navegador ha prometido conservar la pizarra.
floor-device-the_browser_may_clear = El navegador puede borrar la pizarra si falta espacio o la aplicación no se usa. Instalar la aplicación y entregar a menudo.
floor-handin-this_entry_is_too = Este asiento es demasiado grande para el libro. Acortar su observación y anotarlo otra vez; este se queda aquí.
floor-handin-the_answer_was_not = La respuesta no era un recibo del libro.
floor-handin-the_slate_keeps_everything = La pizarra lo conserva todo y lo intenta otra vez.
floor-handin-something_failed = Algo falló.
floor-handin-this_phone_must_be = Hay que admitir otra vez este teléfono. No se pierde nada; la pizarra lo conserva todo.
floor-who-nobody_here_has_the = Aquí nadie tiene el código { $code }. Elegir su nombre en la lista.
floor-who-type_your_pin = Teclear su PIN.
floor-who-that_is_not_this = No es el PIN de esta persona. Reintentar.
floor-charts-the_curve_could_not = No se pudo dibujar la curva; se muestran sus cifras.
floor-charttable-one_row_in = { " " }Una fila de cada { $step }.
floor-charttable-expected = esperado
floor-charttable-at = { $y } a { $x }{ $unit }
floor-charttable-to = , a{ " " }
floor-charttable-to_2 = { $label }: de { $from } a { $to }{ $unit }.
floor-charttable-at_2 = { $label } a { $x }{ $unit }.
floor-charttable-at_3 = { $label } a { $y }.
floor-format-day = día { $start }
floor-format-yesterday = ayer
floor-format-days_ago = hace { $days } días
floor-keypad-erase = Borrar
floor-keypad-plus_or_minus = Más o menos
floor-keypad-unit = unidad
floor-keypad-decimal_comma = Coma decimal
floor-keypad-decimal_point = Punto decimal
floor-keypad-units = unidades
floor-keypad-swap = cambiar { $text }
floor-notice-later = Luego
floor-notice-a_newer_cellarslate_is = Hay un Cellarslate más nuevo. No se toca nada de la pizarra.
floor-notice-use_it_now = Usarlo ahora
floor-badge =
    { $weight ->
        [stop] alto
        [ask] pregunta
        [entered] anotado
        [waiting] en espera
       *[note] nota
    }
floor-may_stay_empty = (puede quedar vacío)
floor-litres = litros
floor-gallons = galones
floor-part =
    { $part ->
        [hearts] corazón
        [tails] colas
        [low_wines] flemas
       *[heads] cabezas
    }
floor-state-receiver =
    { $state ->
        [open] abierto
        [closed] cerrado
       *[waiting] en espera
    }
floor-bad_mark =
    { $why ->
        [empty] Teclear la marca de la etiqueta, por ejemplo F3-8.
        [foreign] Este código no es de los nuestros. Escanear la etiqueta del recipiente o teclear su marca.
        [characters] Una marca solo tiene letras de A a Z y cifras de 0 a 9. Leer otra vez la etiqueta.
        [too_short] Una marca tiene un código y un carácter de control, por ejemplo F3-8. Teclearla entera.
        [too_long] Demasiado largo para una marca. Teclear lo impreso en grande en la etiqueta.
       *[check] { $mark } no es una marca: un carácter está mal o falta el último. Leer otra vez la etiqueta.
    }
floor-within_sentence = { LOWER($words) }
floor-scanfor-scan = Escanear: { $label }
floor-takebackbar-just_logged = Recién anotado
floor-keypad-name = Teclado
floor-keypad-no_other_unit = No hay otra unidad
floor-more-language = Idioma
floor-more-language_not_here = Ese idioma aún no está en este teléfono. Elegirlo otra vez con cobertura.
title-fruit_intake = Recepción de fruta
short-fruit_intake = Entra fruta
about-fruit_intake = Una carga de fruta o cereal, pesada y volcada en un fermentador.
label-fruit_intake-gross = Peso bruto
label-fruit_intake-tare = Tara
help-fruit_intake-tare = Cajones y palé, vacíos.
label-fruit_intake-material = Materia
choice-fruit_intake-material-plum = ciruela
choice-fruit_intake-material-pear = pera
choice-fruit_intake-material-quince = membrillo
choice-fruit_intake-material-cherry = cereza
choice-fruit_intake-material-apricot = albaricoque
choice-fruit_intake-material-mirabelle = mirabel
choice-fruit_intake-material-apple = manzana
choice-fruit_intake-material-grape = uva
choice-fruit_intake-material-raspberry = frambuesa
choice-fruit_intake-material-marc = orujo
choice-fruit_intake-material-rye = centeno
choice-fruit_intake-material-other = otro
label-fruit_intake-variety = Variedad
label-fruit_intake-grower_lot = Agricultor y lote
help-fruit_intake-grower_lot = Como en el tique de báscula.
label-fruit_intake-batch = Partida
help-fruit_intake-batch = La fermentación a la que va esta carga, con el nombre de la casa.
label-fruit_intake-picked_on = Recogida el
label-fruit_intake-sugar = Azúcar por refractómetro
help-fruit_intake-sugar = Zumo prensado. Dejar vacío para cereal.
label-fruit_intake-ph = pH
label-fruit_intake-temp = Temperatura
label-fruit_intake-rot = Podrido
rule-fruit_intake-tare_below_gross = La tara { $tare } no está por debajo del bruto { $gross }. Mirar otra vez la balanza.
figure-fruit_intake-net = fruta neta
figure-fruit_intake-potential = alcohol puro que puede dar
title-addition = Adición
about-addition = Enzima, ácido, levadura, nutriente o cualquier otra cosa añadida, con su lote. El azúcar se pregunta cada vez.
label-addition-what = Qué
choice-addition-what-enzyme = enzima
choice-addition-what-acid = ácido
choice-addition-what-yeast = levadura
choice-addition-what-yeast_food = nutriente
choice-addition-what-sulphite = sulfito
choice-addition-what-antifoam = antiespumante
choice-addition-what-water = agua
choice-addition-what-malt = malta
choice-addition-what-sugar = azúcar
choice-addition-what-wood = virutas de madera
choice-addition-what-caramel = caramelo
choice-addition-what-other = otro
label-addition-lot_no = Producto y número de lote
help-addition-lot_no = Como en el envase.
label-addition-amount = Cantidad en peso
label-addition-amount_volume = o en volumen
label-addition-is_sugar = ¿Es azúcar?
help-addition-is_sugar = El aguardiente de fruta sale del azúcar propio de la fruta. El «sí» queda con la partida.
rule-addition-some_amount = Teclear cuánto, en peso o en volumen.
title-ferment_reading = Lectura de fermentación
short-ferment_reading = Lectura
about-ferment_reading = Temperatura, densidad del zumo colado, pH y sombrero de un fermentador.
summary-ferment_reading = { $gravity } a { $temp }
label-ferment_reading-temp = Temperatura de la masa
help-ferment_reading-temp = Sonda en el centro, no junto a la pared.
label-ferment_reading-gravity = Densidad, zumo colado
help-ferment_reading-gravity = Con areómetro. El refractómetro engaña en cuanto hay alcohol.
label-ferment_reading-refractometer = Refractómetro, mismo zumo
help-ferment_reading-refractometer = Por sí solo engaña en cuanto hay alcohol; al lado da una pista.
label-ferment_reading-ph = pH
label-ferment_reading-cap = Sombrero
choice-ferment_reading-cap-none = ninguno
choice-ferment_reading-cap-thin = fino
choice-ferment_reading-cap-thick = grueso
choice-ferment_reading-cap-fallen = caído
label-ferment_reading-volatile_acid = Acidez volátil
label-ferment_reading-room_co2 = CO₂ de la sala comprobado
help-ferment_reading-room_co2 = Del medidor. A 5000 ppm salir, ventilar, avisar al responsable.
danger-ferment_reading-room_co2-0 = Salir, ventilar, avisar al responsable. No volver por una lectura.
danger-ferment_reading-room_co2-1 = Todos fuera ya. Avisar al responsable. No volver por una lectura.
figure-ferment_reading-alcohol_so_far = alcohol hasta ahora, por densidad
figure-ferment_reading-alcohol_by_both = alcohol por ambos instrumentos, una pista
title-ferment_closed = Fermentación cerrada
short-ferment_closed = Cerrar fermentación
about-ferment_closed = Densidad final, volumen y grado del fermentado. Desde aquí su alcohol puro está en el libro.
summary-ferment_closed = { $volume } a { $wash_strength }
label-ferment_closed-final_gravity = Densidad final
label-ferment_closed-volume = Volumen por altura
label-ferment_closed-wash_strength = Grado del fermentado
help-ferment_closed-wash_strength = Por destilación de laboratorio o, si no, por atenuación.
label-ferment_closed-method = Grado según
choice-ferment_closed-method-lab = destilación de laboratorio
choice-ferment_closed-method-attenuation = atenuación
figure-ferment_closed-wash_lpa = alcohol puro en el fermentado
figure-ferment_closed-by_gravity = grado por la bajada de densidad
title-charge = Carga
short-charge = Cargar y empezar destilación
about-charge = Lo que entra en el alambique. Empieza una destilación.
summary-charge = { $wash } a { $wash_strength }
label-charge-run_name = Destilación
help-charge-run_name = Con el nombre de la casa. Si queda vacío, la nombra el día.
label-charge-from_vessel = Del recipiente
label-charge-wash = Volumen de fermentado
label-charge-wash_strength = Grado del fermentado
help-charge-wash_strength = Destilación de laboratorio o atenuación. El alcohómetro no sirve en el fermentado.
label-charge-feints = Cabezas y colas o flemas dentro
label-charge-feints_strength = Grado de cabezas y colas
label-charge-feints_temp = Temperatura de cabezas y colas
label-charge-feints_from = Cabezas y colas de
label-charge-heads_to = Las cabezas van a
label-charge-hearts_to = El corazón va a
label-charge-tails_to = Las colas van a
rule-charge-feints_need_strength = Entraron cabezas y colas: teclear también su grado.
figure-charge-wash_lpa = alcohol puro en el fermentado
figure-charge-feints_lpa = alcohol puro en cabezas y colas
figure-charge-charge_lpa = alcohol puro cargado
title-run_reading = Lectura de destilación
short-run_reading = Lectura
about-run_reading = Alcohómetro y temperatura del destilado en la caja de aforo, con temperatura del vapor, caudal y altura del colector abierto.
summary-run_reading = { $true_strength } real
label-run_reading-glass = Lectura del alcohómetro
help-run_reading-glass = Como lo marca el alcohómetro, sin corregir.
label-run_reading-density = o masa volúmica, con densímetro
help-run_reading-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-run_reading-temp = Temperatura del destilado
help-run_reading-temp = Leerla en el mismo momento que el alcohómetro.
label-run_reading-vapour_temp = Temperatura del vapor
label-run_reading-flow = Caudal
help-run_reading-flow = Jarra y reloj.
label-run_reading-dip = Altura del colector abierto
help-run_reading-dip = Lo que hay ahora en él, con lo que había antes.
label-run_reading-plates = Platos en uso
label-run_reading-cooling_temp = Agua del deflegmador
label-run_reading-strength = Grado, ya corregido
help-run_reading-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
rule-run_reading-some_reading = Teclear la lectura del alcohómetro y su temperatura, un grado ya corregido o una altura.
rule-run_reading-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-run_reading-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-run_reading-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-run_reading-true_strength = real a 20 °C
figure-run_reading-glass_true = alcohómetro, corregido
title-cut = Corte o suceso
short-cut = Corte
about-cut = Un corte con el colector ahora abierto, calor encendido, primera gota, un cambio de calor, agua o platos. La hora es la del toque.
label-cut-event = Suceso
choice-cut-event-heat_on = calor encendido
choice-cut-event-first_drop = primera gota
choice-cut-event-heads_cut = corte de cabezas, empieza el corazón
choice-cut-event-hearts_cut = corte de corazón, empiezan las colas
choice-cut-event-heat_changed = cambio de calor
choice-cut-event-water_changed = cambio de agua
choice-cut-event-plate_in = plato puesto
choice-cut-event-plate_out = plato quitado
choice-cut-event-still_opened = alambique abierto
choice-cut-event-other = otro
label-cut-receiver = Colector ahora abierto
label-cut-reason = Por qué ahora
choice-cut-reason-nose = nariz
choice-cut-reason-taste = gusto
choice-cut-reason-strength = grado
choice-cut-reason-vapour = temperatura del vapor
choice-cut-reason-time = hora
label-cut-glass = Lectura del alcohómetro
help-cut-glass = Como lo marca el alcohómetro, sin corregir.
label-cut-density = o masa volúmica, con densímetro
help-cut-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-cut-temp = Temperatura del destilado
help-cut-temp = Leerla en el mismo momento que el alcohómetro.
label-cut-vapour_temp = Temperatura del vapor
label-cut-flow = Caudal
label-cut-nose = Nariz y gusto
help-cut-nose = Con sus palabras.
label-cut-strength = Grado, ya corregido
help-cut-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
rule-cut-cut_needs_receiver = Un corte necesita el colector que ahora está abierto. Escanearlo o elegirlo.
rule-cut-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-cut-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-cut-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-cut-true_strength = real a 20 °C
figure-cut-glass_true = alcohómetro, corregido
title-run_end = Fin de destilación
short-run_end = Acabar la destilación
about-run_end = Lo último de una destilación: por qué acabó y cómo corría.
summary-run_end = acabada, { $reason }
label-run_end-reason = Por qué ahora
choice-run_end-reason-strength = grado
choice-run_end-reason-vapour = temperatura del vapor
choice-run_end-reason-time = hora
choice-run_end-reason-nose = nariz
choice-run_end-reason-trouble = avería
label-run_end-glass = Lectura del alcohómetro
help-run_end-glass = Como lo marca el alcohómetro, sin corregir.
label-run_end-density = o masa volúmica, con densímetro
help-run_end-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-run_end-temp = Temperatura del destilado
help-run_end-temp = Leerla en el mismo momento que el alcohómetro.
label-run_end-vapour_temp = Temperatura del vapor
label-run_end-flow = Caudal
label-run_end-strength = Grado, ya corregido
help-run_end-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
rule-run_end-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-run_end-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-run_end-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-run_end-true_strength = real a 20 °C
figure-run_end-glass_true = alcohómetro, corregido
title-fraction_gauge = Aforo de fracción
short-fraction_gauge = Aforar una fracción
about-fraction_gauge = Volumen o peso, grado y temperatura de cabezas, corazón, colas, flemas o vinaza de una destilación.
summary-fraction_gauge = { $fraction }: { $volume_20 } a { $true_strength }
label-fraction_gauge-still = Del alambique
label-fraction_gauge-fraction = Fracción
choice-fraction_gauge-fraction-heads = cabezas
choice-fraction_gauge-fraction-hearts = corazón
choice-fraction_gauge-fraction-tails = colas
choice-fraction_gauge-fraction-low_wines = flemas
choice-fraction_gauge-fraction-stillage = vinaza
label-fraction_gauge-remnant = Resto anterior
help-fraction_gauge-remnant = Lo que había en el colector antes de recoger. 0 si estaba vacío.
label-fraction_gauge-remnant_strength = Grado del resto
label-fraction_gauge-volume = Volumen ahora
label-fraction_gauge-net_weight = o peso neto ahora
label-fraction_gauge-temp = Temperatura del destilado
help-fraction_gauge-temp = Leerla en el mismo momento que el alcohómetro.
label-fraction_gauge-glass = Lectura del alcohómetro
help-fraction_gauge-glass = Como lo marca el alcohómetro, sin corregir.
label-fraction_gauge-density = o masa volúmica, con densímetro
help-fraction_gauge-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-fraction_gauge-strength = Grado, ya corregido
help-fraction_gauge-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-fraction_gauge-goes_to = Va a
choice-fraction_gauge-goes_to-stays = se queda aquí
choice-fraction_gauge-goes_to-next_run = la próxima
choice-fraction_gauge-goes_to-destroyed = destruido
choice-fraction_gauge-goes_to-drain = al desagüe
rule-fraction_gauge-some_quantity = Teclear el volumen o el peso neto.
rule-fraction_gauge-remnant_needs_strength = Había un resto: teclear también su grado, o 0 litros.
rule-fraction_gauge-some_strength = Teclear la lectura del alcohómetro y su temperatura, o un grado ya corregido.
rule-fraction_gauge-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-fraction_gauge-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-fraction_gauge-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-fraction_gauge-true_strength = real a 20 °C
figure-fraction_gauge-glass_true = alcohómetro, corregido
figure-fraction_gauge-volume_20 = volumen a 20 °C
figure-fraction_gauge-lpa = alcohol puro
figure-fraction_gauge-remnant_lpa = del cual, resto
title-cut_plan = Plan de cortes
short-cut_plan = Plan de cortes
about-cut_plan = El plan del destilador para una fruta: cabezas por volumen, corazón y colas hasta un grado. Anotado en un alambique vale para ese alambique; sin recipiente, para todos. Cuenta el último; decide la nariz.
summary-cut_plan = { $what }: corazón hasta { $hearts_to }
label-cut_plan-what = Fruta
help-cut_plan-what = Con el nombre de la destilación: ciruela azul pequeña.
label-cut_plan-heads = Cabezas por volumen
label-cut_plan-hearts_to = Corazón hasta
label-cut_plan-tails_to = Colas hasta
label-cut_plan-why = Por qué
label-cut_plan-tasting = Cata a ciegas en que se apoya
help-cut_plan-tasting = Su nombre: T-26-03
rule-cut_plan-some_plan = Teclear al menos una cifra del plan: cabezas, corazón o colas.
rule-cut_plan-tails_below_hearts = Colas hasta { $tails_to } no queda por debajo del corazón, { $hearts_to }. Mirar otra vez.
title-best_run = Mejor destilación
short-best_run = Mejor destilación
about-best_run = El destilador nombra una destilación como la mejor de su fruta en su alambique: las siguientes se comparan con ella. Cuenta el último nombramiento.
label-best_run-run = Destilación
help-best_run-run = Su nombre o su id en el libro.
label-best_run-why = Por qué
help-best_run-why = Qué la hizo buena, con sus palabras.
title-gauge = Aforo
about-gauge = Volumen o peso neto, grado y temperatura de lo que contiene un recipiente.
summary-gauge = { $volume_20 } a { $true_strength }
label-gauge-what = Qué contiene
help-gauge-what = Destilado y lote, con el nombre de la casa.
label-gauge-volume = Volumen
label-gauge-dip = o altura
help-gauge-dip = Altura o vacío, según la tabla del recipiente; los litros salen de ahí.
label-gauge-net_weight = o peso neto
label-gauge-glass = Lectura del alcohómetro
help-gauge-glass = Como lo marca el alcohómetro, sin corregir.
label-gauge-density = o masa volúmica, con densímetro
help-gauge-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-gauge-temp = Temperatura del destilado
help-gauge-temp = Leerla en el mismo momento que el alcohómetro.
label-gauge-strength = Grado, ya corregido
help-gauge-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-gauge-purpose = Por qué
choice-gauge-purpose-stock = existencias
choice-gauge-purpose-move = antes de un traslado
choice-gauge-purpose-opening = existencias iniciales
choice-gauge-purpose-other = otro
rule-gauge-some_quantity = Teclear el volumen, la altura o el peso neto.
rule-gauge-volume_needs_temp = Un volumen necesita la temperatura del destilado. Teclearla también.
rule-gauge-some_strength = Teclear la lectura del alcohómetro y su temperatura, o un grado ya corregido.
rule-gauge-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-gauge-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-gauge-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-gauge-true_strength = real a 20 °C
figure-gauge-glass_true = alcohómetro, corregido
figure-gauge-dipped = según su tabla
figure-gauge-estimated = según sus dimensiones, una estimación
figure-gauge-volume_20 = volumen a 20 °C
figure-gauge-lpa = alcohol puro
figure-gauge-proof_gallons = galones proof
title-distilled_gauge = Aforo por destilación
short-distilled_gauge = Aforo destilado
about-distilled_gauge = Volumen o peso neto de un destilado cuyo grado ocultan azúcar o madera, y el grado de lo que da al destilarlo.
summary-distilled_gauge = { $volume_20 } a { $true_strength }, destilado
label-distilled_gauge-what = Qué contiene
help-distilled_gauge-what = Destilado y lote, con el nombre de la casa.
label-distilled_gauge-volume = Volumen
label-distilled_gauge-dip = o altura
help-distilled_gauge-dip = Altura o vacío, según la tabla del recipiente; los litros salen de ahí.
label-distilled_gauge-net_weight = o peso neto
label-distilled_gauge-glass = Alcohómetro, sin destilar
help-distilled_gauge-glass = Como lo marca el alcohómetro, sin corregir. Dejar vacío si el azúcar lo saca de su escala.
label-distilled_gauge-density = o masa volúmica, sin destilar
help-distilled_gauge-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-distilled_gauge-temp = Temperatura del destilado
help-distilled_gauge-temp = Leerla en el mismo momento que el alcohómetro.
label-distilled_gauge-sample_volume = Muestra destilada
help-distilled_gauge-sample_volume = Lo que se midió para el matraz, antes de echar agua.
label-distilled_gauge-sample_temp = Temperatura de la muestra
help-distilled_gauge-sample_temp = La misma para ambas; lo mejor, 20 °C.
label-distilled_gauge-distillate_volume = Destilado, enrasado a
help-distilled_gauge-distillate_volume = Con agua, hasta la marca del mismo matraz.
label-distilled_gauge-distillate_temp = Temperatura del destilado
help-distilled_gauge-distillate_temp = La misma para ambas; lo mejor, 20 °C.
label-distilled_gauge-distillate_glass = Alcohómetro en el destilado
help-distilled_gauge-distillate_glass = Como lo marca el alcohómetro, sin corregir.
label-distilled_gauge-distillate_density = o su masa volúmica, con densímetro
help-distilled_gauge-distillate_density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-distilled_gauge-dry_extract = Extracto seco total
help-distilled_gauge-dry_extract = Residuo de 25 mL secado a 105 °C, por 40.
label-distilled_gauge-purpose = Por qué
choice-distilled_gauge-purpose-stock = existencias
choice-distilled_gauge-purpose-move = antes de un traslado
choice-distilled_gauge-purpose-opening = existencias iniciales
choice-distilled_gauge-purpose-other = otro
rule-distilled_gauge-some_quantity = Teclear el volumen, la altura o el peso neto.
rule-distilled_gauge-volume_needs_temp = Un volumen necesita la temperatura del destilado. Teclearla también.
rule-distilled_gauge-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-distilled_gauge-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-distilled_gauge-distillate_is_read = Teclear lo que marca el alcohómetro o el densímetro en el destilado.
rule-distilled_gauge-weight_needs_density = El azúcar hace pesado el destilado. Junto a un peso neto, teclear la masa volúmica o la lectura del alcohómetro sin destilar.
rule-distilled_gauge-extract_hides_more = Este extracto oculta { $obscuration_least } como mínimo, y según las cifras quedan ocultos { $obscuration }. Mirar el alcohómetro sin destilar; ¿estaba todo el destilado en el matraz, y enrasado?
rule-distilled_gauge-extract_hides_less = Este extracto oculta { $obscuration_most } como máximo, y según las cifras quedan ocultos { $obscuration }. Mirar el extracto y el alcohómetro sin destilar.
figure-distilled_gauge-distillate_strength = destilado a 20 °C
figure-distilled_gauge-true_strength = real a 20 °C
figure-distilled_gauge-seen_strength = según el alcohómetro o el densímetro
figure-distilled_gauge-obscuration = oculto
figure-distilled_gauge-obscuration_least = el extracto oculta como mínimo
figure-distilled_gauge-obscuration_most = el extracto oculta como máximo
figure-distilled_gauge-dipped = según su tabla
figure-distilled_gauge-estimated = según sus dimensiones, una estimación
figure-distilled_gauge-volume_20 = volumen a 20 °C
figure-distilled_gauge-lpa = alcohol puro
figure-distilled_gauge-proof_gallons = galones proof
title-opening = Existencias iniciales
short-opening = Existencias iniciales
about-opening = Lo que había en un recipiente antes de empezar el libro: su aforo, de dónde viene, cuándo se llenó y los papeles que lo dicen. Si un aforo simple ya abrió el recipiente, añade el pasado; las existencias no cambian.
summary-opening = { $volume_20 } a { $true_strength } antes de este libro, { $spirit }
label-opening-spirit = Clase de destilado
label-opening-lot = Lote
label-opening-gross = Peso bruto
help-opening-gross = Barrica y destilado juntos.
label-opening-tare = Peso en vacío
help-opening-tare = De los papeles. Vacío: como figura el recipiente en la lista.
label-opening-net_weight = o peso neto
label-opening-volume = o volumen
help-opening-volume = Por altura. Sin temperatura cuenta como litros a 20 °C.
label-opening-glass = Lectura del alcohómetro
help-opening-glass = Como lo marca el alcohómetro, sin corregir.
label-opening-density = o masa volúmica, con densímetro
help-opening-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-opening-temp = Temperatura del destilado
help-opening-temp = Leerla en el mismo momento que el alcohómetro.
label-opening-strength = Grado, ya corregido
help-opening-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-opening-filled_on = Llenado el
help-opening-filled_on = El día en que entró en este recipiente.
label-opening-filled_volume = Volumen al llenar
label-opening-filled_strength = Grado al llenar
label-opening-filled_lpa = o alcohol puro al llenar
label-opening-aged_since = Parte más joven en madera desde
help-opening-aged_since = Vacío: el día en que se llenó la barrica.
label-opening-papers = Papeles de su edad
help-opening-papers = Qué libro o certificado, y su página.
label-opening-origin = De dónde
help-opening-origin = Alambique propio, o de quién vino.
label-opening-material = Hecho de
help-opening-material = Fruta o cereal.
label-opening-harvest = Cosecha de
help-opening-harvest = El año.
label-opening-distilling_strength = Destilado a
help-opening-distilling_strength = Grado con que salió del alambique.
label-opening-use = Madera antes
choice-opening-use-new = nueva
choice-opening-use-used_once = usada una vez
choice-opening-use-used = usada más de una vez
label-opening-wood = Madera
help-opening-wood = Roble, castaño, morera.
label-opening-to_account = Cuenta
help-opening-to_account = En la que figura. Vacío: almacenamiento para barricas, elaboración para depósitos.
choice-opening-to_account-production = producción
choice-opening-to_account-storage = almacenamiento
choice-opening-to_account-processing = elaboración
label-opening-place = Lugar
help-opening-place = Hueco, altura, posición.
rule-opening-quantity_needs_strength = Teclear la lectura del alcohómetro y su temperatura, o un grado ya corregido.
rule-opening-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-opening-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-opening-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
rule-opening-tare_below_gross = El peso en vacío { $tare } no está por debajo del bruto { $gross }. Mirar otra vez ambos.
rule-opening-fill_volume_needs_strength = El volumen al llenar dice poco sin su grado. Teclearlo, si consta en los papeles.
figure-opening-true_strength = real a 20 °C
figure-opening-glass_true = alcohómetro, corregido
figure-opening-net = peso neto
figure-opening-volume_20 = volumen a 20 °C
figure-opening-lpa = alcohol puro
figure-opening-proof_gallons = galones proof
figure-opening-fill_lpa = alcohol puro al llenar
title-account_move = Aforo de producción o traslado
short-account_move = Aforar y trasladar
about-account_move = Una cantidad aforada va a otro recipiente, a otra cuenta o fuera del recinto.
summary-account_move = { $serial }: { $volume_20 } a { $true_strength }, de { $from_account } a { $to_account }
label-account_move-serial = Número de serie
help-account_move-serial = Desde 1 cada año, o sin repetirse nunca.
label-account_move-from_account = De la cuenta
choice-account_move-from_account-production = producción
choice-account_move-from_account-storage = almacenamiento
choice-account_move-from_account-processing = elaboración
label-account_move-to_account = A la cuenta
choice-account_move-to_account-production = producción
choice-account_move-to_account-storage = almacenamiento
choice-account_move-to_account-processing = elaboración
choice-account_move-to_account-removed = sale del recinto
label-account_move-to_vessel = Al recipiente
help-account_move-to_vessel = Dejar vacío si se queda donde está.
label-account_move-purpose = Por qué
choice-account_move-purpose-deposit = aforo de producción, depósito
choice-account_move-purpose-move = traslado
choice-account_move-purpose-redistil = para redestilar
choice-account_move-purpose-tax_paid = impuesto pagado
choice-account_move-purpose-export = exportación
choice-account_move-purpose-in_bond = en suspensión, a otra planta
choice-account_move-purpose-research = investigación
choice-account_move-purpose-other = otro
label-account_move-spirit = Clase de destilado
label-account_move-lot = Lote
label-account_move-distilling_strength = Destilado a
help-account_move-distilling_strength = Grado con que salió del alambique.
label-account_move-volume = Volumen
label-account_move-net_weight = o peso neto
label-account_move-glass = Lectura del alcohómetro
help-account_move-glass = Como lo marca el alcohómetro, sin corregir.
label-account_move-density = o masa volúmica, con densímetro
help-account_move-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-account_move-temp = Temperatura del destilado
help-account_move-temp = Leerla en el mismo momento que el alcohómetro.
label-account_move-strength = Grado, ya corregido
help-account_move-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-account_move-age = Edad hasta ahora
help-account_move-age = Años-meses-días.
label-account_move-to_whom = A quién
help-account_move-to_whom = Nombre y dirección, si sale.
rule-account_move-some_quantity = Teclear el volumen o el peso neto.
rule-account_move-volume_needs_temp = Un volumen necesita la temperatura del destilado. Teclearla también.
rule-account_move-some_strength = Teclear la lectura del alcohómetro y su temperatura, o un grado ya corregido.
rule-account_move-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-account_move-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-account_move-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-account_move-true_strength = real a 20 °C
figure-account_move-glass_true = alcohómetro, corregido
figure-account_move-volume_20 = volumen a 20 °C
figure-account_move-lpa = alcohol puro
figure-account_move-proof_gallons = galones proof
title-receipt = Recepción a granel
short-receipt = Recibir destilado
about-receipt = Llega destilado a granel de otro centro: la cantidad de sus papeles, el aforo aquí y lo perdido en el camino.
summary-receipt = { $document }: { $volume_20 } a { $true_strength } de { $consignor }
label-receipt-consignor = De quién
help-receipt-consignor = Nombre y dirección, número de planta o depósito.
label-receipt-document = Número de documento
label-receipt-purpose = Cómo llega
choice-receipt-purpose-in_bond = en suspensión
choice-receipt-purpose-customs = de la aduana
choice-receipt-purpose-returned = vuelve a suspensión
choice-receipt-purpose-tax_paid = impuesto pagado
choice-receipt-purpose-other = otro
label-receipt-spirit = Clase de destilado
label-receipt-lot = Lote
label-receipt-to_account = A la cuenta
choice-receipt-to_account-production = producción
choice-receipt-to_account-storage = almacenamiento
choice-receipt-to_account-processing = elaboración
label-receipt-declared_volume = Volumen declarado
help-receipt-declared_volume = Como dicen los papeles.
label-receipt-declared_weight = o peso neto declarado
label-receipt-declared_strength = Grado declarado
label-receipt-declared_temp = Declarado a
help-receipt-declared_temp = Vacío: 20 °C; los papeles de EE. UU. lo indican a 60 °F.
label-receipt-distilling_strength = Destilado a
help-receipt-distilling_strength = Grado con que salió del alambique, si lo dicen los papeles.
label-receipt-volume = Volumen recibido
label-receipt-net_weight = o peso neto recibido
label-receipt-glass = Lectura del alcohómetro
help-receipt-glass = Como lo marca el alcohómetro, sin corregir.
label-receipt-density = o masa volúmica, con densímetro
help-receipt-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-receipt-temp = Temperatura del destilado
help-receipt-temp = Leerla en el mismo momento que el alcohómetro.
label-receipt-strength = Grado, ya corregido
help-receipt-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-receipt-seals = ¿Precintos enteros?
label-receipt-vehicle = Vehículo y números de precinto
label-receipt-age = Edad declarada
help-receipt-age = Años-meses-días.
rule-receipt-some_declared = Teclear el volumen o el peso neto que declaran los papeles.
rule-receipt-some_quantity = Teclear el volumen o el peso neto.
rule-receipt-volume_needs_temp = Un volumen necesita la temperatura del destilado. Teclearla también.
rule-receipt-some_strength = Teclear la lectura del alcohómetro y su temperatura, o un grado ya corregido.
rule-receipt-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-receipt-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-receipt-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-receipt-declared_20 = declarado, a 20 °C
figure-receipt-declared_lpa = alcohol puro declarado
figure-receipt-true_strength = real a 20 °C
figure-receipt-glass_true = alcohómetro, corregido
figure-receipt-volume_20 = volumen a 20 °C
figure-receipt-lpa = alcohol puro
figure-receipt-proof_gallons = galones proof
title-cask_fill = Llenado de barrica
short-cask_fill = Llenar barrica
about-cask_fill = Una barrica vacía se pesa, se llena de un depósito y se pesa otra vez. Empieza un nuevo llenado.
summary-cask_fill = { $net } a { $true_strength }, { $lot }
label-cask_fill-from_vessel = Del recipiente
label-cask_fill-lot = Lote
label-cask_fill-what = Clase de destilado
label-cask_fill-tare = Peso en vacío
help-cask_fill-tare = En la balanza hoy, no de la lista del tonelero.
label-cask_fill-gross = Peso bruto
label-cask_fill-glass = Lectura del alcohómetro
help-cask_fill-glass = Como lo marca el alcohómetro, sin corregir.
label-cask_fill-density = o masa volúmica, con densímetro
help-cask_fill-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-cask_fill-temp = Temperatura del destilado
help-cask_fill-temp = Leerla en el mismo momento que el alcohómetro.
label-cask_fill-strength = Grado, ya corregido
help-cask_fill-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-cask_fill-use = Madera
choice-cask_fill-use-new = nueva
choice-cask_fill-use-used_once = usada una vez
choice-cask_fill-use-used = usada más de una vez
label-cask_fill-cooperage = Tonelería
choice-cask_fill-cooperage-C = carbonizada
choice-cask_fill-cooperage-REC = recarbonizada
choice-cask_fill-cooperage-P = sin tratar
choice-cask_fill-cooperage-PAR = parafinada
choice-cask_fill-cooperage-G = encolada
choice-cask_fill-cooperage-R = reutilizada
choice-cask_fill-cooperage-PS = acero
label-cask_fill-soaked = Antes remojada o con vapor
label-cask_fill-place = Lugar
help-cask_fill-place = Hueco, altura, posición.
label-cask_fill-tight = Estanca tras una hora
rule-cask_fill-tare_below_gross = El peso en vacío { $tare } no está por debajo del bruto { $gross }. Mirar otra vez la balanza.
rule-cask_fill-some_strength = Teclear la lectura del alcohómetro y su temperatura, o un grado ya corregido.
rule-cask_fill-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-cask_fill-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-cask_fill-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-cask_fill-true_strength = real a 20 °C
figure-cask_fill-glass_true = alcohómetro, corregido
figure-cask_fill-net = peso neto
figure-cask_fill-volume_20 = volumen a 20 °C
figure-cask_fill-lpa = alcohol puro
title-cask_move = Traslado de barrica
short-cask_move = Trasladar barrica
about-cask_move = De un lugar a otro, llena o vacía. Sus existencias no cambian.
summary-cask_move = de { $from_place } a { $to_place }
label-cask_move-from_place = Del lugar
help-cask_move-from_place = Donde estaba. Escanear la etiqueta del lugar si la tiene.
label-cask_move-to_place = Al lugar
help-cask_move-to_place = Hueco, altura, posición.
title-cask_regauge = Nuevo aforo de barrica
short-cask_regauge = Nuevo aforo
about-cask_regauge = Peso bruto, grado y estado de una barrica; de ahí sale su pérdida.
summary-cask_regauge = { $gross }, { $true_strength } real
label-cask_regauge-gross = Peso bruto
help-cask_regauge-gross = Barrica y destilado juntos.
label-cask_regauge-glass = Lectura del alcohómetro
help-cask_regauge-glass = Como lo marca el alcohómetro, sin corregir.
label-cask_regauge-density = o masa volúmica, con densímetro
help-cask_regauge-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-cask_regauge-temp = Temperatura del destilado
help-cask_regauge-temp = Leerla en el mismo momento que el alcohómetro.
label-cask_regauge-strength = Grado, ya corregido
help-cask_regauge-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-cask_regauge-condition = Estado
choice-cask_regauge-condition-tight = estanca
choice-cask_regauge-condition-weeping = rezuma
choice-cask_regauge-condition-leaking = con fuga
choice-cask_regauge-condition-dry_hoops = aros secos
rule-cask_regauge-some_strength = Teclear la lectura del alcohómetro y su temperatura, o un grado ya corregido.
rule-cask_regauge-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-cask_regauge-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-cask_regauge-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-cask_regauge-true_strength = real a 20 °C
figure-cask_regauge-glass_true = alcohómetro, corregido
figure-cask_regauge-net = peso neto
figure-cask_regauge-volume_20 = volumen a 20 °C
figure-cask_regauge-lpa = alcohol puro
title-top_up = Rellenar o cambiar de barrica
short-top_up = Rellenar
about-top_up = Destilado de un recipiente a esta barrica. La mezcla tiene la edad de su parte más joven.
summary-top_up = { $work } de { $from_vessel }
label-top_up-work = Qué se hizo
choice-top_up-work-top_up = rellenada
choice-top_up-work-recask = en otra barrica
label-top_up-from_vessel = Del recipiente
label-top_up-volume = Cantidad en volumen
label-top_up-net_weight = o en peso neto
label-top_up-glass = Lectura del alcohómetro
help-top_up-glass = Como lo marca el alcohómetro, sin corregir.
label-top_up-density = o masa volúmica, con densímetro
help-top_up-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-top_up-temp = Temperatura del destilado
help-top_up-temp = Leerla en el mismo momento que el alcohómetro.
label-top_up-strength = Grado, ya corregido
help-top_up-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
rule-top_up-some_quantity = Teclear el volumen o el peso neto.
rule-top_up-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-top_up-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-top_up-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-top_up-true_strength = real a 20 °C
figure-top_up-glass_true = alcohómetro, corregido
figure-top_up-volume_20 = volumen a 20 °C
figure-top_up-lpa = alcohol puro
title-sample = Muestra
about-sample = Cuánto se sacó, para qué y qué fue de ello.
label-sample-size = Tamaño
label-sample-number = Cuántas
label-sample-purpose = Para qué
choice-sample-purpose-analysis = análisis
choice-sample-purpose-tasting = cata
choice-sample-purpose-gauge = aforo
choice-sample-purpose-library = archivo
choice-sample-purpose-customer = cliente
choice-sample-purpose-other = otro
label-sample-went = Adónde fue
choice-sample-went-destroyed = destruido
choice-sample-went-returned = devuelto
choice-sample-went-library = archivo
choice-sample-went-outside_lab = laboratorio externo
label-sample-lab = Laboratorio
help-sample-lab = Nombre y dirección.
label-sample-account = Cuenta
help-sample-account = Dejar vacío: el libro la sabe por el recipiente.
choice-sample-account-production = producción
choice-sample-account-storage = almacenamiento
choice-sample-account-processing = elaboración
rule-sample-lab_is_named = Teclear el nombre y la dirección del laboratorio.
figure-sample-taken = tomado
figure-sample-lpa = alcohol puro
title-lab_certificate = Boletín de laboratorio
short-lab_certificate = Laboratorio
about-lab_certificate = Lo que halló un laboratorio en una muestra: cada resultado con unidad, ± y desde dónde lo detecta el método.
summary-lab_certificate = { $laboratory }, { $document }: metanol { $methanol }
label-lab_certificate-laboratory = Laboratorio
label-lab_certificate-document = Número del boletín
label-lab_certificate-taken_on = Muestra tomada el
label-lab_certificate-batch = Partida o lote
help-lab_certificate-batch = Para destilado que ya está en botellas.
label-lab_certificate-spirit = Se vende como
help-lab_certificate-spirit = Por ejemplo, aguardiente de pera Williams: de ahí salen los límites. Vacío: lo que contiene el recipiente.
label-lab_certificate-strength = Grado real, destilado
help-lab_certificate-strength = Hace falta si un resultado va por litro de la bebida.
label-lab_certificate-methanol = Metanol
label-lab_certificate-volatile_substances = Sustancias volátiles
label-lab_certificate-hydrocyanic_acid = Ácido cianhídrico
label-lab_certificate-ethyl_carbamate = Carbamato de etilo
label-lab_certificate-acetaldehyde = Acetaldehído, total
label-lab_certificate-ethyl_acetate = Acetato de etilo
label-lab_certificate-higher_alcohols = Alcoholes superiores, suma
label-lab_certificate-volatile_acidity = Acidez volátil, en ácido acético
label-lab_certificate-copper = Cobre
label-lab_certificate-lead = Plomo
label-lab_certificate-sulphur_dioxide = Dióxido de azufre
label-lab_certificate-dry_extract = Extracto seco
label-lab_certificate-sugar = Azúcar, en azúcar invertido
label-lab_certificate-sample_no = Número de la muestra
label-lab_certificate-accreditation = Acreditación del laboratorio
help-lab_certificate-accreditation = Su número.
label-lab_certificate-method = Método
help-lab_certificate-method = Como está impreso, p. ej. Reglamento (CE) 2870/2000, III.2.
label-lab_certificate-reported_on = Fecha del boletín
label-lab_certificate-coverage = Qué significa ±
choice-lab_certificate-coverage-two = el doble de la incertidumbre típica, k = 2
choice-lab_certificate-coverage-one = la incertidumbre típica
choice-lab_certificate-coverage-unsaid = no lo dice
label-lab_certificate-strength_plus_minus = ± del grado
label-lab_certificate-methanol_plus_minus = ± del metanol
label-lab_certificate-methanol_below = Metanol: no detectado, por debajo de
label-lab_certificate-volatile_substances_plus_minus = ± de sustancias volátiles
label-lab_certificate-volatile_substances_below = Sustancias volátiles: no detectadas, por debajo de
label-lab_certificate-hydrocyanic_acid_plus_minus = ± del ácido cianhídrico
label-lab_certificate-hydrocyanic_acid_below = Ácido cianhídrico: no detectado, por debajo de
label-lab_certificate-ethyl_carbamate_plus_minus = ± del carbamato de etilo
label-lab_certificate-ethyl_carbamate_below = Carbamato de etilo: no detectado, por debajo de
label-lab_certificate-acetaldehyde_plus_minus = ± del acetaldehído
label-lab_certificate-acetaldehyde_below = Acetaldehído: no detectado, por debajo de
label-lab_certificate-ethyl_acetate_plus_minus = ± del acetato de etilo
label-lab_certificate-ethyl_acetate_below = Acetato de etilo: no detectado, por debajo de
label-lab_certificate-higher_alcohols_plus_minus = ± de alcoholes superiores
label-lab_certificate-higher_alcohols_below = Alcoholes superiores: no detectados, por debajo de
label-lab_certificate-volatile_acidity_plus_minus = ± de la acidez volátil
label-lab_certificate-volatile_acidity_below = Acidez volátil: no detectada, por debajo de
label-lab_certificate-copper_plus_minus = ± del cobre
label-lab_certificate-copper_below = Cobre: no detectado, por debajo de
label-lab_certificate-lead_plus_minus = ± del plomo
label-lab_certificate-lead_below = Plomo: no detectado, por debajo de
label-lab_certificate-sulphur_dioxide_plus_minus = ± del dióxido de azufre
label-lab_certificate-sulphur_dioxide_below = Dióxido de azufre: no detectado, por debajo de
label-lab_certificate-dry_extract_plus_minus = ± del extracto seco
label-lab_certificate-dry_extract_below = Extracto seco: no detectado, por debajo de
label-lab_certificate-sugar_plus_minus = ± del azúcar
label-lab_certificate-sugar_below = Azúcar: no detectado, por debajo de
rule-lab_certificate-some_result = Teclear al menos un resultado, o desde dónde lo habría detectado el método.
rule-lab_certificate-reported_before_taken = El boletín es anterior a su muestra. Mirar ambos días.
title-tasting_note = Nota de cata
short-tasting_note = Catar
about-tasting_note = Nariz, boca, madera y defecto de una barrica o lote, y qué se decide.
summary-tasting_note = { $decision }: nariz { $nose_score }, boca { $mouth_score }
label-tasting_note-nose_score = Nariz
help-tasting_note-nose_score = De 0 a 10.
label-tasting_note-mouth_score = Boca
help-tasting_note-mouth_score = De 0 a 10.
label-tasting_note-wood_score = Madera
help-tasting_note-wood_score = De 0 a 10.
label-tasting_note-fault_score = Defecto
help-tasting_note-fault_score = De 0 a 10.
label-tasting_note-words = En palabras
label-tasting_note-house_scores = Puntos de la casa
help-tasting_note-house_scores = Los propios de la casa, de 0 a 10: fruta 7; fondo 5.
label-tasting_note-reduced_to = Rebajado a
label-tasting_note-decision = Decisión
choice-tasting_note-decision-hold = esperar
choice-tasting_note-decision-move = traslado
choice-tasting_note-decision-vat = mezclar
choice-tasting_note-decision-treat = tratar
choice-tasting_note-decision-reject = rechazar
title-tasting_session = Cata a ciegas
short-tasting_session = A ciegas
about-tasting_session = Qué se pregunta de qué muestras, con qué método, y los códigos de las copas de cada catador. Qué código lleva cada muestra queda sellado hasta la apertura. Las cabezas no se catan nunca.
label-tasting_session-name = Nombre de la cata
label-tasting_session-question = Pregunta
label-tasting_session-method = Método
choice-tasting_session-method-triangle = triangular
choice-tasting_session-method-duo_trio = dúo-trío
choice-tasting_session-method-pair = pareja, unilateral
choice-tasting_session-method-pair_two_sided = pareja, bilateral
choice-tasting_session-method-ranking = ordenación
label-tasting_session-alpha = Riesgo de ver diferencia donde no hay
label-tasting_session-samples = Muestras
help-tasting_session-samples = Una letra y una marca, o «run» o «batch» y su nombre: A C001-Z; B run PL-31, 64 a 60 % vol
label-tasting_session-reduced_to = Servido a
help-tasting_session-reduced_to = Todas las copas iguales, con la misma agua.
label-tasting_session-poured_by = Servido por
help-tasting_session-poured_by = Quien sirve no cata.
label-tasting_session-glasses = Copas
help-tasting_session-glasses = Un catador y los códigos de izquierda a derecha: NS 418 902 637; JK 271 550 803
label-tasting_session-seal = Sello de la clave
title-tasting_answer = Respuesta en una cata a ciegas
short-tasting_answer = Respuesta
about-tasting_answer = La copa que nombra un catador, o todas por orden. Adivinar también es responder: no hay otra opción.
summary-tasting_answer = { $session }, serie { $set_no }: { $picked }
label-tasting_answer-session = Cata
help-tasting_answer-session = Su nombre, como en la hoja de servicio.
label-tasting_answer-set_no = Serie
help-tasting_answer-set_no = Cuál de sus series, contando desde 1.
label-tasting_answer-picked = El código que nombra
label-tasting_answer-order = o todos los códigos por orden
help-tasting_answer-order = El primero, primero: 418 902 637
label-tasting_answer-sure = Certeza
choice-tasting_answer-sure-guessing = al azar
choice-tasting_answer-sure-fairly = algo seguro
choice-tasting_answer-sure-quite = muy seguro
label-tasting_answer-gave_away = Qué la delató
rule-tasting_answer-some_answer = Nombrar una copa. Adivinar también es responder.
title-tasting_result = Cata a ciegas abierta
short-tasting_result = Abrir
about-tasting_result = La clave de una cata a ciegas y lo que se sigue de ella. Un plan de cortes o de mezcla puede nombrar la cata.
summary-tasting_result = { $session } abierta: { $decision }
label-tasting_result-session = Cata
label-tasting_result-key = Clave
help-tasting_result-key = Para cada serie de copas las letras de las muestras; después la palabra con que se hizo el sello.
label-tasting_result-decision = Qué se sigue
title-loss = Fuga, derrame, rotura, falta
short-loss = Pérdida
about-loss = Qué se perdió, por qué, a quién se avisó, qué se hizo. El robo y las barricas que faltan se comunican enseguida.
label-loss-cause = Causa
choice-loss-cause-leak = fuga
choice-loss-cause-spill = derrame
choice-loss-cause-broken = roto
choice-loss-cause-theft = sospecha de robo
choice-loss-cause-missing = falta
choice-loss-cause-unknown = desconocida
label-loss-whole = Se perdió todo
label-loss-volume = Cuánto
help-loss-volume = Medido o calculado.
label-loss-net_weight = o en peso
label-loss-glass = Lectura del alcohómetro
help-loss-glass = Como lo marca el alcohómetro, sin corregir.
label-loss-density = o masa volúmica, con densímetro
help-loss-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-loss-temp = Temperatura del destilado
help-loss-temp = Leerla en el mismo momento que el alcohómetro.
label-loss-strength = Grado, ya corregido
help-loss-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-loss-reckoned = Medido o calculado
choice-loss-reckoned-measured = medido
choice-loss-reckoned-reckoned = calculado
label-loss-found = Hallado por, a quién avisó
label-loss-done = Hecho
choice-loss-done-recoopered = reparada
choice-loss-done-recasked = en otra barrica
choice-loss-done-pumped = bombeado a otro
choice-loss-done-cleaned = limpiado
choice-loss-done-reported = comunicado
choice-loss-done-nothing = aún nada
rule-loss-some_loss = Teclear cuánto se perdió, en volumen o peso, o decir que se perdió todo.
rule-loss-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-loss-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-loss-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-loss-true_strength = real a 20 °C
figure-loss-glass_true = alcohómetro, corregido
figure-loss-volume_20 = volumen a 20 °C
figure-loss-lpa = alcohol puro
title-vat_plan = Plan de mezcla
short-vat_plan = Plan de mezcla
about-vat_plan = Qué ha de entrar en un depósito y qué debe dar; se guarda con quién lo planeó y cuándo.
summary-vat_plan = { $name }: { $volume } a { $target }, { $water } de agua
label-vat_plan-name = Nombre de la mezcla
label-vat_plan-draws = Extracciones
help-vat_plan-draws = Marca y kilos, una tras otra: C001-Z 153.7; C009-K 176.2
label-vat_plan-water = Agua en peso
label-vat_plan-target = Grado que debe dar
label-vat_plan-volume = Volumen que debe dar
help-vat_plan-volume = A 20 °C.
label-vat_plan-wishes = Qué se pidió
label-vat_plan-tasting = Cata a ciegas en que se apoya
help-vat_plan-tasting = Su nombre: T-26-03
title-dump = Vaciado o mezcla
short-dump = Vaciar
about-dump = Una barrica pesada llena y vacía; lo que salió fue al depósito, lo que retiene la madera es embebido.
summary-dump = { $net } a { $true_strength } a { $to_vessel }
label-dump-gross = Bruto antes
label-dump-empty = Peso en vacío ahora
help-dump-empty = La madera retiene de 3 a 8 kg en una barrica de 200 L.
label-dump-glass = Lectura del alcohómetro
help-dump-glass = Como lo marca el alcohómetro, sin corregir.
label-dump-density = o masa volúmica, con densímetro
help-dump-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-dump-temp = Temperatura del destilado
help-dump-temp = Leerla en el mismo momento que el alcohómetro.
label-dump-strength = Grado, ya corregido
help-dump-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-dump-to_vessel = Al depósito
label-dump-tank_dip = Altura después
rule-dump-empty_below_gross = El peso en vacío { $empty } no está por debajo del bruto { $gross }. Mirar otra vez la balanza.
rule-dump-some_strength = Teclear la lectura del alcohómetro y su temperatura, o un grado ya corregido.
rule-dump-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-dump-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-dump-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-dump-true_strength = real a 20 °C
figure-dump-glass_true = alcohómetro, corregido
figure-dump-net = vaciado
figure-dump-volume_20 = volumen a 20 °C
figure-dump-lpa = alcohol puro
figure-dump-soakage = retenido por la madera
title-reduce = Rebajar
short-reduce = Añadir agua
about-reduce = Agua en peso, el grado que debe dar y el grado tras el reposo.
summary-reduce = { $water_mass } de agua, objetivo { $target }
label-reduce-target = Grado objetivo
label-reduce-water = Agua en peso
help-reduce-water = Calcular el agua en peso: los volúmenes no se suman.
label-reduce-water_volume = o en volumen
label-reduce-rest_until = Reposo hasta
label-reduce-glass = Lectura del alcohómetro
help-reduce-glass = Como lo marca el alcohómetro, sin corregir.
label-reduce-density = o masa volúmica, con densímetro
help-reduce-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-reduce-temp = Temperatura del destilado
help-reduce-temp = Leerla en el mismo momento que el alcohómetro.
label-reduce-strength = Grado, ya corregido
help-reduce-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-reduce-volume = Altura tras el reposo
rule-reduce-some_water = Teclear cuánta agua entró, en peso o en volumen. 0 si solo se mide tras el reposo.
rule-reduce-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-reduce-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-reduce-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-reduce-needed = agua para el objetivo
figure-reduce-water_mass = agua
figure-reduce-planned_strength = grado según la suma
figure-reduce-planned_volume = volumen según la suma
figure-reduce-true_strength = real a 20 °C
figure-reduce-glass_true = alcohómetro, corregido
figure-reduce-volume_20 = medido a 20 °C
title-chill_filter = Refrigerar o filtrar
short-chill_filter = Filtrar
about-chill_filter = Temperatura, placas, y volumen y grado antes y después.
summary-chill_filter = { $sheets } a { $temp }: { $lost } retenido
label-chill_filter-temp = Enfriado a
label-chill_filter-sheets = Placas o cartucho
help-chill_filter-sheets = Tipo y lote.
label-chill_filter-volume_before = Volumen antes
label-chill_filter-strength_before = Grado antes
label-chill_filter-temp_before = Temperatura de la altura antes
help-chill_filter-temp_before = Vacío: a 20 °C.
label-chill_filter-volume_after = Volumen después
label-chill_filter-strength_after = Grado después
label-chill_filter-temp_after = Temperatura de la altura después
help-chill_filter-temp_after = Vacío: a 20 °C.
label-chill_filter-to_vessel = Al depósito
help-chill_filter-to_vessel = Dejar vacío si volvió.
figure-chill_filter-volume_before_20 = volumen antes a 20 °C
figure-chill_filter-volume_after_20 = volumen después a 20 °C
figure-chill_filter-lpa_before = alcohol puro antes
figure-chill_filter-lpa_after = alcohol puro después
figure-chill_filter-lost = retenido por el filtro
title-bottling_gauge = Aforo del depósito de embotellado
short-bottling_gauge = Aforo de embotellado
about-bottling_gauge = Después de todo tratamiento y antes de la primera botella: cuánto, qué grado y qué dirá la etiqueta.
summary-bottling_gauge = { $batch }: { $volume_20 } a { $true_strength }
label-bottling_gauge-batch = Partida
label-bottling_gauge-volume = Volumen
label-bottling_gauge-dip = o altura
help-bottling_gauge-dip = Altura o vacío, según la tabla del recipiente; los litros salen de ahí.
label-bottling_gauge-net_weight = o peso neto
label-bottling_gauge-glass = Lectura del alcohómetro
help-bottling_gauge-glass = Como lo marca el alcohómetro, sin corregir.
label-bottling_gauge-density = o masa volúmica, con densímetro
help-bottling_gauge-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-bottling_gauge-temp = Temperatura del destilado
help-bottling_gauge-temp = Leerla en el mismo momento que el alcohómetro.
label-bottling_gauge-strength = Grado, ya corregido
help-bottling_gauge-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-bottling_gauge-obscuration = Sólidos
help-bottling_gauge-obscuration = Residuo de evaporación. Más de 0,6 g/100 mL, o fuera de 80 a 100 proof: destilar una muestra y teclear su grado, sin sólidos.
label-bottling_gauge-label_strength = Grado en etiqueta
rule-bottling_gauge-some_quantity = Teclear el volumen, la altura o el peso neto.
rule-bottling_gauge-volume_needs_temp = Un volumen necesita la temperatura del destilado. Teclearla también.
rule-bottling_gauge-some_strength = Teclear la lectura del alcohómetro y su temperatura, o un grado ya corregido.
rule-bottling_gauge-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-bottling_gauge-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-bottling_gauge-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-bottling_gauge-seen_strength = según el densímetro
figure-bottling_gauge-true_strength = real a 20 °C
figure-bottling_gauge-glass_true = alcohómetro, corregido
figure-bottling_gauge-dipped = según su tabla
figure-bottling_gauge-estimated = según sus dimensiones, una estimación
figure-bottling_gauge-volume_20 = volumen a 20 °C
figure-bottling_gauge-lpa = alcohol puro
figure-bottling_gauge-proof_gallons = galones proof
title-bottle_check = Control de botellas
short-bottle_check = Comprobar botellas
about-bottle_check = Cada media hora más o menos: llenado, grado, etiqueta y cierre de unas botellas.
summary-bottle_check = { $tested } botellas: { $fill_found }, { $strength_found }
label-bottle_check-line = Línea
label-bottle_check-filled_so_far = Botellas llenadas hasta ahora
help-bottle_check-filled_so_far = Como las cuenta la línea, desde que se empezó o cerró el depósito la última vez.
label-bottle_check-tested = Botellas probadas
label-bottle_check-bottle_size = Tamaño de botella
label-bottle_check-fill_found = Llenado medio hallado
help-bottle_check-fill_found = En tanto por ciento de lo que dice la etiqueta.
label-bottle_check-fill_least = La menos llena
label-bottle_check-fill_most = La más llena
label-bottle_check-strength_found = Grado hallado
label-bottle_check-label_strength = Grado en etiqueta
label-bottle_check-labels_right = Etiquetas y cierres bien
label-bottle_check-done = Hecho si algo está mal
title-bottling_close = Cierre de embotellado
short-bottling_close = Cerrar embotellado
about-bottling_close = Recuentos, números de caja y el resto del depósito. Aquí el destilado embotellado deja el depósito.
summary-bottling_close = { $filled } botellas, cajas de { $case_from } a { $case_to }
label-bottling_close-filled = Botellas llenadas
label-bottling_close-broken = Rotas
label-bottling_close-reworked = Devueltas al depósito
label-bottling_close-library = De las buenas, para archivo
label-bottling_close-bottle_size = Tamaño de botella
label-bottling_close-per_case = Botellas por caja
label-bottling_close-case_from = Primera caja
label-bottling_close-case_to = Última caja
label-bottling_close-odd_case = Caja incompleta
help-bottling_close-odd_case = Su número con una R.
label-bottling_close-lot_mark = Marca de lote en las botellas
label-bottling_close-loss = Fondo, línea y filtro
label-bottling_close-tank_empty = ¿Está vacío ya el depósito?
rule-bottling_close-broken_of_filled = { $broken } rotas de { $filled } llenadas no puede ser. Contar otra vez.
figure-bottling_close-in_bottles = llenado
figure-bottling_close-lpa = alcohol puro embotellado
title-dispatch = Botellas que salen o vuelven
short-dispatch = Salen cajas
about-dispatch = Cajas o botellas de un embotellado salen, con impuesto liquidado o en suspensión, se rompen, sirven de muestra o vuelven.
summary-dispatch = { $batch }: { $cases } cajas, { $why }
label-dispatch-batch = Partida o marca de lote
help-dispatch-batch = Como está en las botellas o la caja.
label-dispatch-why = Qué pasa con ellas
choice-dispatch-why-tax_paid = salen, impuesto liquidado
choice-dispatch-why-in_bond = salen en suspensión
choice-dispatch-why-export = salen a exportación
choice-dispatch-why-sample = muestras y catas
choice-dispatch-why-broken = roto
choice-dispatch-why-destroyed = destruido
choice-dispatch-why-missing = falta
choice-dispatch-why-dumped_back = devueltas a un depósito
choice-dispatch-why-returned = vuelven
label-dispatch-cases = Cajas enteras
label-dispatch-bottles = Botellas sueltas
label-dispatch-case_from = Primera caja
label-dispatch-case_to = Última caja
label-dispatch-document = Número de documento
label-dispatch-to_whom = A quién o de quién
help-dispatch-to_whom = Nombre y dirección. Destruidas: quién lo hizo o lo vio.
label-dispatch-to_vessel = Al depósito
rule-dispatch-some_bottles = Teclear cuántas cajas o cuántas botellas sueltas.
rule-dispatch-out_has_document = La mercancía que sale lleva un documento. Teclear su número.
rule-dispatch-out_names_whom = Teclear a quién van: en una retirada no lo sabe nadie más.
rule-dispatch-destroyed_is_watched = Teclear quién las destruyó o lo vio, con su cargo.
rule-dispatch-poured_into_a_tank = Elegir el depósito.
rule-dispatch-last_needs_first = Teclear también la primera caja.
title-goods_receipt = Botellas recibidas
short-goods_receipt = Entran cajas
about-goods_receipt = Cajas o botellas llegan en suspensión de otro centro: lo que declaran los papeles y lo que faltaba o estaba roto.
summary-goods_receipt = { $document }: { $cases } cajas de { $batch } de { $consignor }
label-goods_receipt-consignor = De quién
help-goods_receipt-consignor = Nombre y dirección, número de planta o depósito.
label-goods_receipt-document = Número de documento
label-goods_receipt-batch = Partida o marca de lote
help-goods_receipt-batch = Como está en las botellas o la caja.
label-goods_receipt-spirit = Clase de destilado
label-goods_receipt-strength = Grado en la etiqueta
label-goods_receipt-bottle_size = Tamaño de botella
label-goods_receipt-per_case = Botellas por caja
label-goods_receipt-cases = Cajas enteras
label-goods_receipt-bottles = Botellas sueltas
label-goods_receipt-short = Botellas que faltan o rotas
label-goods_receipt-case_from = Primera caja
label-goods_receipt-case_to = Última caja
label-goods_receipt-seals = ¿Precintos enteros?
rule-goods_receipt-some_bottles = Teclear cuántas cajas o botellas sueltas declaran los papeles.
rule-goods_receipt-cases_hold_some = Teclear cuántas botellas hay en una caja.
rule-goods_receipt-last_needs_first = Teclear también la primera caja.
title-opening_goods = Existencias iniciales en botellas
short-opening_goods = Botellas iniciales
about-opening_goods = Cajas y botellas de un embotellado que había en el almacén antes de empezar el libro, y qué papeles lo dicen.
summary-opening_goods = { $batch }: { $cases } cajas de { $spirit } antes de este libro
label-opening_goods-batch = Partida o marca de lote
help-opening_goods-batch = Como está en las botellas o la caja.
label-opening_goods-lot_mark = Marca de lote
help-opening_goods-lot_mark = Si las botellas llevan otra distinta de la partida.
label-opening_goods-spirit = Clase de destilado
label-opening_goods-strength = Grado en la etiqueta
label-opening_goods-bottle_size = Tamaño de botella
label-opening_goods-per_case = Botellas por caja
label-opening_goods-cases = Cajas enteras
label-opening_goods-bottles = Botellas sueltas
label-opening_goods-case_from = Primera caja
label-opening_goods-case_to = Última caja
label-opening_goods-bottled_on = Embotellado el
label-opening_goods-origin = De dónde
help-opening_goods-origin = Embotellado propio, o de quién vino.
label-opening_goods-papers = Sus papeles
help-opening_goods-papers = Qué libro o factura, y su página.
rule-opening_goods-some_bottles = Teclear cuántas cajas o cuántas botellas sueltas.
rule-opening_goods-cases_hold_some = Teclear cuántas botellas hay en una caja.
rule-opening_goods-last_needs_first = Teclear también la primera caja.
title-bottled_count = Recuento de botellas
short-bottled_count = Contar botellas
about-bottled_count = Cajas y botellas de un embotellado que hay en el almacén. La diferencia es merma o exceso.
summary-bottled_count = { $batch }: { $cases } cajas en almacén
label-bottled_count-batch = Partida o marca de lote
help-bottled_count-batch = Como está en las botellas o la caja.
label-bottled_count-cases = Cajas enteras
label-bottled_count-bottles = Botellas sueltas
label-bottled_count-case_from = Una de sus cajas
help-bottled_count-case_from = Solo si dos embotellados comparten la partida.
label-bottled_count-signed = Firmado por quien contó
help-bottled_count-signed = Nombre y cargo.
rule-bottled_count-some_bottles = Teclear cuántas cajas o botellas, o 0.
title-stock_count = Inventario
short-stock_count = Contar
about-stock_count = Qué recipiente está en qué lugar, y cuánto contiene un depósito. Un cambio de sitio es un cambio, no una merma.
label-stock_count-place = Lugar
help-stock_count-place = Como dice su etiqueta. Para un depósito, dejar vacío.
label-stock_count-found = Hallado
choice-stock_count-found-here = este recipiente
choice-stock_count-found-nothing = nada donde debería estar
choice-stock_count-found-unknown = uno que no está en el libro
label-stock_count-label = Qué pone en él
label-stock_count-volume = Volumen, si es depósito
label-stock_count-net_weight = o peso neto
label-stock_count-glass = Lectura del alcohómetro
help-stock_count-glass = Como lo marca el alcohómetro, sin corregir.
label-stock_count-density = o masa volúmica, con densímetro
help-stock_count-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-stock_count-temp = Temperatura del destilado
help-stock_count-temp = Leerla en el mismo momento que el alcohómetro.
label-stock_count-strength = Grado, ya corregido
help-stock_count-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-stock_count-signed = Firmado por quien contó
help-stock_count-signed = Nombre y cargo.
rule-stock_count-unknown_is_described = Teclear lo que pone en él.
rule-stock_count-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-stock_count-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-stock_count-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-stock_count-true_strength = real a 20 °C
figure-stock_count-glass_true = alcohómetro, corregido
figure-stock_count-volume_20 = volumen a 20 °C
figure-stock_count-lpa = alcohol puro
title-cleaning = Limpieza
about-cleaning = Producto, concentración, tiempo y temperatura, y control del enjuague. Nadie entra sin permiso.
summary-cleaning = { $agent }, enjuague { $rinse_ph }
label-cleaning-agent = Producto, concentración, tiempo
label-cleaning-temp = Temperatura
label-cleaning-rinse_ph = Control del enjuague, pH
label-cleaning-entered = ¿Entró alguien?
label-cleaning-permit_no = Número de permiso
rule-cleaning-entry_needs_permit = Nadie entra en un recipiente sin permiso. Teclear su número.
title-instrument_check = Control de instrumento
short-instrument_check = Comprobar instrumento
about-instrument_check = Lo hallado frente a lo conocido. Una división de diferencia es demasiado: fuera de servicio hasta ajustarlo.
summary-instrument_check = { $instrument }: { $found } por { $expected }, { $result }
label-instrument_check-instrument = Instrumento
help-instrument_check-instrument = Su id, por ejemplo TH-2.
label-instrument_check-against = Frente a
choice-instrument_check-against-ice = hielo
choice-instrument_check-against-boiling = agua hirviendo
choice-instrument_check-against-liquid = líquido de referencia
choice-instrument_check-against-weight = pesa
choice-instrument_check-against-second = segundo instrumento
label-instrument_check-expected = Debería marcar
help-instrument_check-expected = En la unidad del propio instrumento.
label-instrument_check-found = Marca
label-instrument_check-correction = Corrección desde ahora
help-instrument_check-correction = Se suma a lo que marca. 0 si no hay.
label-instrument_check-result = ¿Bien?
choice-instrument_check-result-good = bien
choice-instrument_check-result-failed = mal
label-instrument_check-in_use = ¿En uso?
choice-instrument_check-in_use-yes = sí
choice-instrument_check-in_use-no = no
choice-instrument_check-in_use-until = hasta un día
label-instrument_check-until = Hasta
title-destruction = Destrucción
short-destruction = Destruir
about-destruction = Qué se destruyó, cuánto, dónde, cómo y quién lo vio.
summary-destruction = { $what }: { $volume_20 } a { $true_strength }
label-destruction-what = Qué y lote
label-destruction-volume = Volumen
label-destruction-net_weight = o peso neto
label-destruction-glass = Lectura del alcohómetro
help-destruction-glass = Como lo marca el alcohómetro, sin corregir.
label-destruction-density = o masa volúmica, con densímetro
help-destruction-density = Como la marca el densímetro a esa temperatura, sin corregir a otra.
label-destruction-temp = Temperatura del destilado
help-destruction-temp = Leerla en el mismo momento que el alcohómetro.
label-destruction-strength = Grado, ya corregido
help-destruction-strength = Solo si lo dio un densímetro o las tablas. Dejar vacío si es alcohómetro.
label-destruction-place = Lugar
label-destruction-manner = Cómo
label-destruction-withdrawn = ¿Salió alguna vez de la suspensión?
label-destruction-watched_by = Hecho o visto por, con cargo
rule-destruction-some_quantity = Teclear el volumen o el peso neto.
rule-destruction-some_strength = Teclear la lectura del alcohómetro y su temperatura, o un grado ya corregido.
rule-destruction-glass_needs_temp = Una lectura del alcohómetro necesita la temperatura del destilado. Teclearla también.
rule-destruction-density_needs_temp = Una masa volúmica necesita la temperatura a la que se tomó. Teclearla también.
rule-destruction-raw_equals_corrected = { $glass } está en las dos casillas a { $temp }. Eso es lo que marca el alcohómetro; el real sería { $glass_true }.
figure-destruction-true_strength = real a 20 °C
figure-destruction-glass_true = alcohómetro, corregido
figure-destruction-volume_20 = volumen a 20 °C
figure-destruction-lpa = alcohol puro
figure-destruction-proof_gallons = galones proof
title-shift_note = Nota al turno siguiente
short-shift_note = Nota
about-shift_note = Unas palabras para quien venga después, sobre un recipiente o sobre nada en particular.
label-shift_note-text = Nota
title-note_heard = Nota oída
about-note_heard = Quién ha leído u oído qué nota; antes de eso sigue en su recipiente.
summary-note_heard = oída
label-note_heard-note = La nota
title-enclosure = Imagen o papel añadido
short-enclosure = Imagen
about-enclosure = Nombra el asiento al que pertenece; su `enclosed` nombra los archivos por su SHA-256.
label-enclosure-entry = Sobre el asiento
label-enclosure-what = Qué muestra
title-answer = Respuesta
about-answer = Vale o se tacha, con el motivo. El asiento de que habla queda legible.
label-answer-entry = Sobre el asiento
label-answer-query = Pregunta
help-answer-query = Su código; vacío para el asiento entero.
label-answer-verdict = Respuesta
choice-answer-verdict-stands = vale
choice-answer-verdict-struck = tachado
label-answer-reason = Motivo

### A phone fetches what follows after its first install.

pure =
    { UNITS() ->
        [us] galones proof
       *[metric] L de alcohol puro
    }
of-pure =
    { UNITS() ->
        [us] galones proof
       *[metric] L de alcohol puro
    }
pure-sign =
    { UNITS() ->
        [us] gal proof
       *[metric] L
    }
no_entry = Esto no es un asiento. Actualizar la aplicación del teléfono y enviarlo otra vez.
unkeepable = Contiene una cifra o un carácter que no se puede guardar. Anotarlo de nuevo.
too_long-entry = El asiento es demasiado largo para serlo. Acortar sus textos y anotarlo de nuevo.
malformed = { $path }: { $words }
malformed-whole = { $words }
fault-missing = Falta un dato obligatorio.
fault-null = El campo no puede ser nulo.
fault-no_text = No es un texto válido.
fault-no_number = No es un número entero válido.
fault-no_members = No es un objeto válido.
fault-no_list = No es una lista válida.
fault-no_object = Tipo de entrada no válido.
fault-no_id = El id no es un UUID en minúsculas.
fault-no_time = Una hora necesita fecha, hora y desfase, por ejemplo 2025-09-24T08:05:00+02:00.
fault-no_digest = El nombre de una imagen es su SHA-256 en minúsculas.
fault-unkeepable = Este texto contiene caracteres que no se pueden guardar.
fault-unknown = Campo desconocido.
fault-longer = Más largo que el máximo, { $most }.
fault-one_of = Tiene que ser uno de estos: { $choices }.
fault-between = Tiene que ser igual o mayor que { $least } e igual o menor que { $most }.
no_such_kind = El libro no conoce ningún asiento llamado { $kind }. Actualizar el libro.
newer_kind = El teléfono es más nuevo que el libro. Actualizar el libro y enviar otra vez.
bad_mark = { $mark } no es una marca. Leer otra vez la etiqueta y anotarlo de nuevo.
bad_mark-field = { $label }: { $mark } no es una marca. Leer otra vez la etiqueta.
missing-mark = Falta la marca del recipiente. Escanear la etiqueta o teclearla.
amends_itself = Dice que se rectifica a sí mismo. Anotarlo de nuevo.
clash-in_book = Este id está en el libro con otro cuerpo, con el número { $number }. Decide una persona.
clash-in_batch = Este id viene dos veces en un mismo envío con dos cuerpos. El primero está en el libro. Decide una persona.
bad_signature = No lleva la firma del teléfono que nombra: se cambió después de anotarlo. Anotarlo de nuevo.
not_the_desk = Dice que se anotó en la oficina. Anotarlo de nuevo, en la oficina o en el teléfono.
may_not_answer = Las respuestas las dan en la oficina un destilador o el personal de oficina. Iniciar sesión allí y responder.
not_worked_out = El libro no pudo interpretar este asiento. Se guarda como llegó; avisar a quien lleva el programa.
clash = Llegó otro cuerpo con el id de este asiento y se apartó. Comparar los dos; rectificar este o dejarlo valer.
amended_after_strike = Rectifica un asiento que ya se había tachado. No cuenta para nada mientras no se diga que vale.
unknown_person = El libro no conoce a nadie con el código { $code }. Añadir a la persona o rectificar.
unknown_vessel = No hay ningún recipiente { $mark } en el libro. Añadirlo o rectificar el asiento.
wrong_sort = { $vessel }: { $sort }; allí no se anota { LOWER($kind) }. ¿Es el recipiente?
wrong_sort-field = { $label }: { $vessel }, { $sort }. ¿Es el recipiente?
sort-fermenter = fermentador
sort-still = alambique
sort-receiver = colector
sort-tank = depósito
sort-cask = barrica
sort-can = bidón
sort-place = lugar
stock_short = { BARE($taken) } { of-pure } sacados de { $vessel }; según el libro tenía { BARE($booked) } { pure-sign }. Mirar otra vez ambas cifras.
from_nothing = { BARE($came) } { of-pure } vinieron de donde el libro no tiene nada. ¿Son el recipiente y la hora? Si es así, anotar lo que había antes.
clock = El reloj de este teléfono iba { $off } { clock-way } cuando entregó esto.
clock-way =
    { $way ->
        [slow] atrasado
       *[fast] adelantado
    }
clock-ask = El reloj de este teléfono iba { $off } { clock-way } cuando entregó esto. Según ese reloj se leyó el { ISO_DAY($told) } a las { CLOCK($told) }; el libro lo ordena como { ISO_DAY($ordered) } { CLOCK($ordered) }; se guardan ambas. Poner el reloj en hora y decir si el día es correcto.
hand_unsigned = Este teléfono firma lo que se anota en él, y esto llegó sin su firma. Preguntar a { $person } si el asiento es suyo.
hand_not_shown = { $person } tiene un PIN y no lo había tecleado en este teléfono. Preguntarle si el asiento es suyo.
hand_second = La casa quiere que para esto se teclee el PIN al anotarlo, y no se hizo. Preguntar a { $person } si el asiento es suyo.
hand_witness = Según el asiento, { $person } lo vio, y nunca ha tecleado su PIN en este teléfono. Preguntarle.
received = Entregado { $after } después de teclearlo.
late = Tecleado { $after } después de leerlo.
time_order = Leído { $after } después de teclearlo: no puede ser. Corregir la hora de lectura.
twice =
    Las mismas cifras están a las { $at } ({ $before ->
        [none] en el mismo momento
       *[other] { $before } antes
    }{ $by ->
        [none] { "" }
       *[other] , por { $by }
    }). ¿Es una sola lectura, anotada dos veces?
moved_twice = Las mismas cifras están a las { $at }. ¿Es lo mismo, anotado dos veces?
named_twice = { $label } { $name } ya está a las { $at }. Dar el siguiente.
two_people = { $other } también aforó este recipiente, { $at }: { TYPED($theirs) }. { $me } tiene { TYPED($mine) }. Se guardan ambos; ¿cuál cuenta?
too_neat = { $label } { TYPED($figure) }, { $times } veces seguidas. ¿Se lee cada vez?
neat_round = { $label } { TYPED($figure) } en { $vessels } recipientes seguidos. ¿Se lee en cada uno?
instrument-failed = { $instrument } no pasó su control el { $on }. Leer otra vez con otro.
instrument-would = { $instrument } no pasó su control el { $on }: según él, { TYPED($figure) } serían { TYPED($would) }. Leer otra vez con otro.
instrument-out_of_use = { $instrument } está fuera de servicio desde { $since }. ¿Qué instrumento era?
instrument-due = { $instrument } tenía control pendiente el { ISO_DAY($on) }. Comprobarlo.
unknown_instrument = El libro no conoce ningún instrumento { $instrument }. Añadirlo o rectificar el asiento.
check_left = { $instrument } se da por bueno: marca { $found }, con { $correction } sumado { $then }, y debería marcar { $expected }. Mirar las tres cifras; un instrumento desviado no ha pasado.
instrument_failed =
    { $instrument } { $side ->
        [high] marca { $off } de más{ instrument-where }
        [low] marca { $off } de menos{ instrument-where }
       *[none] no pasó el control
    }. Cada lectura con él desde { $since ->
        [new] que era nuevo
       *[other] su último control bueno, { $since },
    } está en duda: repasar la lista de su página.
instrument-where =
    { $against ->
        [ice] { " " }en hielo
        [boiling] { " " }en agua hirviendo
       *[other] { "" }
    }
glass_scale =
    { $instrument } marca { BARE(TYPED($low)) }{ $high ->
        [none] { "" }
       *[other] { " " }a { BARE(TYPED($high)) }
    }; { TYPED($figure) } no se puede leer en él. ¿Qué instrumento era?
ferment_gravity_rose = La densidad { $gravity } está por encima de { $last } de { $at }; solo puede bajar.
ferment_jump = Masa a { TYPED($temp) }, y { TYPED($last) } en la última lectura: una masa cambia más despacio. Mirar otra vez.
sugar_gravity = Primera densidad { TYPED($gravity) }: el azúcar de la fruta dice unos { TYPED($usual) }. Mirar otra vez ambos.
close_gravity = Densidad final { TYPED($gravity) }, y { TYPED($last) } en la última lectura. Mirar otra vez.
close_volume = { TYPED($volume) } de fermentado de { $fruit } de fruta: lo habitual es alrededor de { $usual }. Mirar la altura, y si falta anotar una carga.
ferment_stuck =
    La densidad { $gravity } { $moved ->
        [none] no se ha movido
       *[other] se ha movido { $moved }
    } en { $apart } y está { $above } por encima de los { $end } en que { $what ->
        [none] una fruta así
       *[other] { $what }
    } suele acabar: ni se mueve ni ha acabado.{ $mash ->
        [none] { "" }
       *[other] { " " }Masa a { TYPED($mash) }.
    } Mirar temperatura, acidez y nutriente.
ferment_ended = Tres densidades iguales, { $gravity }, en { $within }: la fermentación ha acabado. Reservar el alambique.
ferment_heat =
    La masa a { TYPED($temp) } está por encima de { TYPED($most) }: demasiado caliente para { $what ->
        [grain] cereal
       *[fruit] fruta
    }. Enfriarla ya.
ferment_temp_sense = Una masa a { TYPED($temp) } mataría la levadura. Leído en Fahrenheit son { TYPED($meant) } ({ $other }){ temp-fits }. ¿Era eso?
ferment_temp_sense-cold = La masa a { TYPED($temp) } está en el punto de congelación o por debajo ({ TYPED($cold) }). Leído en Celsius son { TYPED($meant) }{ temp-fits }. ¿Era eso?
temp-fits =
    { $near ->
        [none] { "" }
       *[other] , lo que cuadra con { TYPED($near) } de { $at }
    }
ferment_yield =
    { BARE($made) } { pure } en el fermentado, { $load }: se podían esperar unos { BARE($wanted) } { pure-sign }{ $what ->
        [none] { "" }
       *[other] { " " }según sus últimos { $years } de { $what }
    }. Eso es { $side ->
        [much] mucho
       *[little] poco
    }: { $share }, cuando lo habitual es de { BARE($low) } a { $high }. Mirar grado, altura y pesos.
ferment_yield-most = { BARE($made) } { pure } en el fermentado, { $load }: todo su azúcar no podría dar más de { BARE($most) } { pure-sign }. Mirar el grado, la altura y los pesos; ¿se añadió azúcar?
load-grain = de { $weight } de cereal
load-fruit = de { $weight } de fruta a { $sugar }
wash_strength =
    { TYPED($strength) } de { $vessel } es mucho para una fermentación: lo habitual es de { UNITS() ->
        [us] 6
       *[metric] 3
    } a { BARE($most) } { pct }. Mirar otra vez.
wash_strength-impossible = { TYPED($strength) } de { $vessel } no puede ser: ninguna fermentación da eso. Mirar otra vez.
over_capacity = { $contents } no cabe en { $vessel }, cuya capacidad es { $holds }. Mirar otra vez.
over_working_level = { $contents } queda por encima del nivel de trabajo de { $vessel }, { $level }. Mirar otra vez.
contents-fruit =
    { $fruit } de fruta ({ $before ->
        [none] { "" }
       *[other] con { $before } ya dentro,{ " " }
    }unos { $mash } de masa)
contents-charge =
    Una carga de { $charge }{ $feints ->
        [none] { "" }
       *[other] { " " }({ BARE($wash) } de fermentado y { BARE($feints) } de cabezas y colas)
    }
vessel_empty = El libro no tiene nada en { $vessel } a esta hora. ¿Son el recipiente y la hora? Si es así, anotar su llenado.
source_empty = El libro no tiene nada en { $vessel } para cargar. ¿Es el recipiente? Si es así, anotar su llenado.
vessel_not_empty =
    { $vessel } no está vacío según el libro: { $held ->
        [none] { "" }
       *[other] { BARE($held) } { of-pure },{ " " }
    }{ $what }. ¿Es la barrica? ¿Se vació?
target_capacity = { $then } estarían entonces en { $vessel } ({ target-holds }). ¿Son el recipiente y las cifras?
target_working_level = { $then } estarían entonces en { $vessel } ({ target-holds }). ¿Son el recipiente y las cifras?
target-holds =
    capacidad { $holds }, nivel de trabajo { $level }{ $has ->
        [none] { "" }
       *[other] , { $has } dentro
    }
emptied_vessel =
    { $vessel }: { $how ->
        [dump] se vació
        [destruction] se destruyó
        [loss] se dio de baja
        [account_move] se trasladó
        [bottling_close] se embotelló
        [charge] se cargó en un alambique
        [cask_fill] se pasó a una barrica
        [top_up] se vertió en una barrica
        [chill_filter] se filtró a otro depósito
        [gauge] se halló vacío
        [stock_count] se halló vacío
        [fraction_gauge] se desaguó
       *[other] se vació
    } a las { $at } por { $by } y según el libro está vacío. ¿Se leyó esto antes? Entonces rectificar la hora. ¿O era otro recipiente?
move_gain = En { $vessel } { BARE($had) } según el libro, trasladados { BARE($moved) }: { BARE($more) } { pure } ({ $share }) más de lo que había. Un traslado no gana nada: hasta { $most } es cosa de la lectura. Mirar altura, temperatura y grado de ambos.
account_other = Según el libro, { $vessel } contiene { BARE($held) } { of-pure } en { $account }. Si se traslada como { $other }, todo queda ahora en { $other }, no solo los { BARE($moved) } que se trasladan. ¿Se declaró?
account_joined = { BARE($held) } { of-pure } en { $vessel } figuran en { $account } según el libro. Con { BARE($moved) } añadidos como { $other }, todo queda ahora en { $other }. ¿Se declaró?
fruit_mixed = { $net } de { $fruit } van a { $lies } de { $other }: { $share } de la masa. Su destilado lleva entonces el nombre de ambas, con sus partes, y no el de una sola. ¿Son la fruta y el fermentador?
opening_nothing = El libro no tiene nada en { $vessel }, y aquí no se pesó ni se midió nada. Teclear su peso bruto, peso neto o volumen.
opening_seen = { $vessel } contiene lo que este libro ha visto empezar ({ $at }): no son existencias iniciales. ¿Es el recipiente?
opening_again = Según el libro ya hay { BARE($booked) } { of-pure } en { $vessel }; aquí son { BARE($said) }. Se añade su pasado, sus existencias no cambian. Aforarlo, si ahora contiene otra cantidad.
opening_before_fruit = En madera desde { $day }, de la cosecha de { $harvest }: nada está en madera antes que su fruta. Mirar otra vez ambos.
opening_drift = { $now } ahora, { $then } al llenar el { $at }: es mucho para los años transcurridos. Mirar otra vez ambos.
opening_grew = { $now } ahora, { $then } al llenar: la madera no da alcohol. Mirar otra vez ambos.
opening_overfilled = { TYPED($filled) } al llenar no cabe en { $vessel }, cuya capacidad es { TYPED($holds) }. Mirar otra vez los papeles.
opening_no_tare = { TYPED($gross) } con la barrica, y nadie ha dicho cuánto pesa vacía. Teclear su peso en vacío o ponerlo en la lista con la barrica.
opening_to_come = { $day } es posterior a { $read }, cuando se leyó. Mirar el año.
opening_long_ago =
    { $day } es { PLURAL($years) ->
        [one] { $years } año
       *[other] { $years } años
    } anterior a la lectura. ¿Es ese el año?
sheet-empty = En este archivo no hay nada. Tomar la hoja con las filas.
sheet-too_large = Este archivo pasa de { $most } MB. Guardar solo la hoja, como CSV, y tomar esa.
sheet-pdf = Esto es un PDF, diga lo que diga su nombre. Guardar la hoja como XLSX, ODS o CSV y tomar esa.
sheet-old = Es un libro de cálculo de formato antiguo. Guardarlo como XLSX, ODS o CSV y tomar ese.
sheet-unreadable = No es una hoja de cálculo que se pueda leer. Guardar la hoja como XLSX, ODS o CSV y tomar esa.
sheet-swollen = Este libro de cálculo ocupa más de { $most } MB al descomprimirse. Guardar la hoja como CSV y tomar esa.
sheet-rows = { $rows } filas son demasiadas a la vez: como máximo { $most }. Tomarlas por partes.
sheet-columns = { $columns } columnas son demasiadas: como máximo { $most }. Quitar las que aquí nadie necesita.
sheet-no_heads = Ninguna fila de esta tabla parece de encabezados. Poner un encabezado sobre cada columna, como en la plantilla.
sheet-no_rows = Hay encabezados y ninguna fila debajo.
sheet-merged = Los encabezados de la fila { $row } están combinados. Separarlos, con un encabezado sobre cada columna.
sheet-two_columns = Dos columnas significan lo mismo, { $label }: «{ $one }» y «{ $other }». Decir cuál es, y qué es la otra.
sheet-no_column =
    { PLURAL($many) ->
        [one] Falta una columna: { $labels }.
       *[other] Faltan columnas: { $labels }.
    } Decir cuál es o añadirla a la hoja.
sheet-order = Días como { $example }: ¿va primero el día o el mes? Decir cuál.
sheet-missing = Falta: { $label }.
sheet-formula_cell = { $typed } es una fórmula sin valor. Poner ahí el valor.
sheet-no_number = { $typed } no es una cifra.
sheet-bad_number = { $typed }: { $reason }
sheet-no_unit = { $typed }: esta columna va en { $units }.
sheet-no_choice = { $typed } no es ninguna de estas opciones: { $choices }.
sheet-no_date = { $typed } no es un día. Escribirlo como 2022-11-21 o 21 Nov 2022.
sheet-no_such_day = { $month } tiene { $last } días.
sheet-which_order = { $typed }: ¿cuál es el día y cuál el mes?
sheet-to_come = { $day } aún no ha llegado.
sheet-twice = { $name } ya está en la fila { $row }.
sheet-no_vessel = Ningún recipiente se llama { $name }. Ponerlo con una hoja de recipientes o dar aquí su capacidad.
sheet-opened = Las existencias iniciales de { $name } ya están en el libro, y dicen otra cosa. Rectificarlas en su página.
sheet-other = { $name } ya está en el libro: { $there } allí, { $here } aquí. Cambiarlo en su propia página o dejar fuera esta fila.
opening_goods_again = El libro ya tiene { $there } botellas de { $batch }, desde { $at }; estas { $bottles } se ponen al lado. ¿Son otras?
move_balance = En { $vessel } { BARE($had) } según el libro, a { $to } { BARE($moved) }: quedan { BARE($left) } { pure } ({ $share }). Hasta { $most } es habitual. ¿Está en la línea o aún en el recipiente? Aforarlo.
move_balance-off = En { $vessel } { BARE($had) } según el libro, fuera del recinto { BARE($moved) }: quedan { BARE($left) } { pure } ({ $share }). Hasta { $most } es habitual. ¿Está en la línea o aún en el recipiente? Aforarlo.
dip_sum =
    { $dipped } en { $vessel }, { $booked } según el libro: { $off } { $side ->
        [above] por encima
       *[below] por debajo
    } de la suma ({ $share }). Mirar la altura, y luego si falta anotar un traslado.
dip_sum-dump = { $dipped } medidos en { $vessel }, { $sum } según la suma de lo que entró: { $off } de diferencia. Mirar la altura y ambos pesos.
source_strength = Grado real { BARE($now) } { pct }, { BARE($held) } { pct } en { $vessel } según el libro: { APART($off) } { points } de diferencia. ¿Es este recipiente? Mirar otra vez, y si hay agua o un traslado sin anotar.
water_off = { TYPED($water) } de agua lo llevan a { BARE($strength) } { pct }, no a { BARE($target) } { pct }: para eso hacen falta { $needed }. Mirar el peso.
blend_sum =
    Entraron { BARE($went_in) }, medidos { BARE($measured) }: { BARE($off) } { pure } ({ $share }) { $side ->
        [more] más
       *[less] menos
    } de lo que entró en la mezcla. Lo habitual es { $usual }. ¿Está mezclado? Leerlo otra vez.
row_gap = { $label } está en cada una de las últimas { $lines } líneas y no en esta. Teclearlo, o decir que no se leyó.
plates_moved = Platos { $plates }, y { BARE($last) } a las { $at }; desde entonces no hay anotado ninguno puesto o quitado. Mirar otra vez o anotar el cambio.
strength_row = Grado real { BARE($now) } { pct }; por las lecturas anteriores serían de { BARE($low) } a { BARE($high) } { pct }, y el vapor a { TYPED($vapour) } dice lo mismo. Mirar el alcohómetro y la temperatura.
ferment_row = Densidad { TYPED($gravity) }: bajaba { BARE($before) } al día, y ahora apenas. ¿Es esta lectura, o la de la línea anterior?
ferment_row-again = Densidad { TYPED($gravity) }: bajaba { BARE($before) } al día y se había frenado, y ahora { BARE($fell) } al día. Mirar otra vez.
ferment_jump-row = Masa a { TYPED($temp) }, y { TYPED($usual) } en la mediana de las últimas { $readings } lecturas. Mirar otra vez.
charge_low = { $charge } en { $still }, cuya capacidad es { $holds }: tan poco se quema en seco. Mirar la altura.
charge_unlike = Fermentado { TYPED($wash) }, y { TYPED($usual) } en la mediana de las cargas anteriores de este alambique. Mirar otra vez.
feints_unread = Se nombran cabezas y colas de { $vessel }, y no cuánto. Teclear el volumen y el grado.
feints_part = { TYPED($feints) } de cabezas y colas, y según el libro hay { TYPED($there) } en { $vessel }. ¿Entraron todas?
move_part = Salen { BARE($moved) } de { BARE($had) } { of-pure } de { $vessel }, y quedan { BARE($left) } { pure }. ¿Salió todo? Mirar la cifra y su unidad.
account_same =
    Un depósito que se queda en la cuenta de { $account ->
        [production] producción
        [storage] almacenamiento
       *[processing] elaboración
    } no lo es. ¿A qué cuenta va?
account_habit = A la cuenta de { $account }; lo que salió de aquí antes fue a la de { $usual }. ¿Cuál es?
moved_elsewhere = A { $vessel }; lo que salió de aquí antes fue a { $usual }, que tiene sitio. ¿Qué depósito es?
opening_weak = { BARE($now) } { pct } en una barrica: por debajo de { BARE($least) } { pct } no se embotella nada. Mirar el alcohómetro y su unidad.
receiver_other = Se abre { $vessel } para { $part }; la carga prevé { $planned } para eso. ¿Cuál está abierto ahora?
receiver_no_cut = Se nombra { $vessel } como ahora abierto, y { $event } no es un corte. ¿Fue un corte?
receiver_twice = { $vessel } para { $part } y { $other } de una misma destilación. ¿Qué colector es?
receiver_role = { $vessel } para { $part }; tenía { $other } de la destilación anterior. ¿Qué colector es?
target_moved = Objetivo { TYPED($target) }; el agua de { $at } era para { TYPED($last) }. ¿Cuál es?
target_planned =
    Objetivo { TYPED($target) }, por debajo de los { TYPED($planned) } que prevé { $plan ->
        [none] la mezcla
       *[other] { $plan }
    }. Mirar otra vez.
label_planned =
    Embotellado a { TYPED($label) }, y { $plan ->
        [none] la mezcla
       *[other] { $plan }
    } está prevista a { TYPED($planned) }. Mirar ambos.
dump_planned =
    { $vessel } no está en el plan{ $plan ->
        [none] { "" }
       *[other] { " " }{ $plan }
    } de { $tank }. ¿Son esta barrica y este depósito?
dump_planned-amount =
    { $net } vaciados, y { $wanted } previstos{ $plan ->
        [none] { "" }
       *[other] { " " }para { $plan }
    }. Mirar ambos pesos.
vat_joins = { $vessel } contiene { BARE($held) } { of-pure } que el plan no nombra. ¿Es este depósito?
vat_sum = Las extracciones y { TYPED($water) } de agua dan { BARE($strength) } { pct }, no { TYPED($target) }. Mirar ambos.
vat_full = Las extracciones y el agua dan { $then }, y la capacidad de { $vessel } es { $holds }. ¿Es este depósito?
cut_planned = Corte de corazón a { BARE($now) } { pct }, previsto a { BARE($planned) } { pct }. Decide la nariz: decir por qué, o mirar el alcohómetro.
wash_open = La fermentación de { $vessel } no está cerrada: su fermentado no está medido. Cerrarla antes, con la hora de su última lectura.
water_unread = Entró agua en { $vessel } a las { $at }, y nadie ha medido qué dio. Anotar alcohómetro y altura tras el reposo.
bottling_ungauged = { $vessel } no está aforado para embotellar: nadie ha dicho su partida ni su etiqueta. Aforarlo antes. ¿O es otro depósito?
fraction_left =
    Está aforado: { $fraction }. Falta, de { $run ->
        [none] esta destilación
       *[other] { $run }
    }: { $missing }. Aforarlo también, con su hora.
fraction_left-moved =
    { $vessel } se vacía, y de { $run ->
        [none] la destilación
       *[other] { $run }
    } falta aforar: { $missing }. Aforarlo también.
run_not_ended =
    { $run ->
        [none] La destilación
       *[other] { $run }
    } está aforada hasta el final, y su fin no está anotado. Anotarlo con su hora.
cleaned_full = { $vessel } se limpia, y el libro tiene { $litres } dentro. ¿Es este recipiente, o falta anotar un paso?
added_again = Ya entró otro tanto de { $what } del mismo lote en { $vessel } a las { $at }. ¿Es este recipiente, o está anotado dos veces?
recask_rest = Vaciado en otra barrica, y allí faltan { BARE($left) } { of-pure } de { $vessel }; la madera retiene { BARE($kept) }. ¿Es un relleno, o falta más?
lab_far = { $substance } { $found }: los laboratorios hallan de { BARE($low) } a { $high } en destilados. Mirar la coma y la línea.
stillage_strong = Vinaza de { BARE($now) } { pct }, por encima de { BARE($most) } { pct }: ¿está agotada? Mirar la cifra y qué parte es.
receiver_full = { $vessel } contiene { $held } y le caben { $room }; antes entraban { $usual } de corazón. ¿Falta anotar un traslado?
counted_again = Ya se contaron { $counted } a las { $at }. ¿Es un solo recuento, anotado dos veces?
removed_otherwise = A { $to_whom }: { $why }. La última mercancía para ellos: { $usual }. ¿Cuál es?
document_again = El documento { $document } figura en mercancía que salió antes. Mirar su número.
run_still_open =
    { $still } ya tiene { $run ->
        [none] una destilación
       *[other] { $run }
    } en curso desde { $since }. Acabarla antes o tachar esta carga.
run_not_open = A esta hora no hay destilación en curso en { $still }. Anotar la carga con su hora, y esto cuadra.
run_receiver_same = { $receiver } ya estaba abierto antes de este corte. ¿Qué colector está abierto ahora? Rectificar este o el anterior.
run_order-no_hearts_cut = La destilación acaba pero no hay anotado corte de corazón; el corazón empezó { $began }. Anotar el corte con su hora.
run_order-opened = El alambique se abre pero su destilación no está acabada. Acabarla con su hora.
run_order-again = { CAPITAL($event) } ya se anotó a las { $at }. ¿Cuál cuenta?
run_order-late = { CAPITAL($event) } viene después de { $other } de { $at }. Mirar las horas.
run_order-no_heads_cut = Se cortó el corazón pero no está anotado el corte de cabezas. Anotarlo con su hora y colector.
strength_slope = El grado real { BARE($now) } { pct } está por encima de { BARE($last) } { pct } de { $at }; tras el corte de cabezas solo puede bajar, salvo que se cambiaran platos o refrigeración.
strength_impossible = El grado real { BARE($now) } { pct } no puede ser: ninguno pasa de { $most }. Mirar otra vez.
strength_class =
    Grado real { BARE($now) } { pct } de { $what ->
        [none] fruta
       *[other] { $what }
    }: { $limit ->
        [brandy_us_pct]
            por encima de { UNITS() ->
                [us] { APART($most) } proof
               *[metric] { BARE($most) } % (190 proof)
            } no es brandy en EE. UU. (27 CFR 5.145)
        [grain_us_pct]
            por encima de { UNITS() ->
                [us] { APART($most) } proof
               *[metric] { BARE($most) } % (160 proof)
            } no es whisky de centeno en EE. UU. (27 CFR 5.143)
       *[fruit_class_pct] a { BARE($most) } { pct } o más no es aguardiente de fruta en la UE (Reglamento 2019/787)
    }. Mirarlo otra vez.
distillate_warm = El destilado sale a { TYPED($temp) }, por encima de { TYPED($warm) }. Más agua al condensador ya, y bajar el calor hasta que salga frío: el destilado caliente suelta vapor que arde.
vapour_strength = Vapor a { TYPED($vapour) } y destilado de { BARE($strength) } { pct } no cuadran: a ese grado lo habitual es alrededor de { TYPED($usual) }. Mirar otra vez ambos.
fraction_receiver = { $vessel } para { $fraction }: según los cortes de esta destilación fue a { $opened }. ¿Cuál es?
fraction_uncut =
    Flemas de una destilación con cortes{ $run ->
        [none] { "" }
       *[other] , { $run }
    }. ¿Cabezas, corazón o colas?
fraction_strength = Fracción { $fraction }: { BARE($now) } { pct }, y de media { BARE($ran) } { pct } por la caja de aforo. Mirar el alcohómetro, la temperatura y el resto.
glass_habit = { $strength } a { $temp } está tecleado como corregido, y hasta ahora { $vessel } se leía con alcohómetro. Si es lo que marca el alcohómetro, el real es { $true }. ¿Cuál es?
not_whole = { $label } { $typed }: esto se cuenta en enteros. Mirar otra vez.
unit_odd = { $label } está tecleado en { $typed }, junto a { $other } en el mismo asiento. ¿Qué unidad se leyó?
late-same_hour = Tecleado { $after } después de leerlo, a la misma hora. Mirar el día.
flow_jump = Caudal { $flow }, { $usual } en la mediana de las últimas { $readings } lecturas. Mirar otra vez o anotar lo que se cambió.
run_order-no_first_drop = Se cortaron las cabezas pero no está anotada la primera gota, como en la destilación anterior. Anotarla con su hora.
gauged_empty = El libro no tiene nada en { $vessel }, y allí se aforan { BARE($pure) } { of-pure }. ¿Es el recipiente? Si es así, anotar su llenado.
distilled_off = Destilado a { $said }, y { BARE($now) } { pct } en el colector: allí tiene el grado con que salió del alambique. Mirar ambos.
lab_off = El laboratorio halló { $found }, el libro tiene { BARE($held) } { pct } en { $vessel }. Mirar la cifra, y de qué recipiente es la muestra.
dose_off = { $amount } de { $what } para { $mash } de masa; para tanto lo habitual es de { BARE($low) } a { $high }. Mirar la cifra y su unidad.
tare_share = La tara es { $share } del peso bruto, y en la carga anterior era { $usual }. Mirar ambos.
tare_share-first = La tara es { $share } del peso bruto, por encima de { $most }. Mirar ambos.
sugar_unlike = Azúcar { $sugar }, y { $last } en la carga anterior de la misma fruta. Mirar otra vez.
place_from = { $vessel } se traslada de { $place }; según el libro está en { $booked }. ¿Es este recipiente?
receiver_held = { $vessel } contiene { BARE($held) } { of-pure } según el libro; hasta ahora se vaciaba antes de cada destilación. Anotar adónde fueron.
remnant_off = Resto { $remnant } antes de recoger, { $booked } en { $vessel } según el libro. Mirar otra vez, y si falta anotar un traslado.
remnant_off-strength = Un resto de { BARE($now) } { pct }, { BARE($held) } { pct } en { $vessel } según el libro. Mirar otra vez.
run_ungauged =
    De la destilación anterior{ $run ->
        [none] { "" }
       *[other] , { $run },
    } falta aforar: { $fraction }; { BARE($left) } { of-pure } contarían como perdidos. Aforar antes.
run_balance = { run-sums } sin justificar.{ run-stillage } Habitual aquí: de { BARE($low) } a { $high }.
run_balance-gain = { run-sums } más de lo que entró.{ run-stillage } Mirar el grado del fermentado, las alturas y los restos.
strip_balance = { run-sums } sin justificar.{ run-stillage } Las flemas llevan { $carried } del fermentado; lo habitual es de { BARE($low) } a { $high }.
strip_balance-gain = { run-sums } más de lo que entró.{ run-stillage } Mirar el grado del fermentado, las alturas y los restos.
run-sums = Sale { BARE($out) }, entra { BARE($in) }: { BARE($off) } { pure } ({ $share })
run-stillage =
    { $stillage ->
        [read] { "" }
       *[other] { " " }Vinaza supuesta a { BARE($stillage) } { pct }.
    }
run_drift = { $now } de la carga sin justificar, y { $middle } en la mediana de las { $runs } destilaciones anteriores: por encima de { $high } una tras otra. Mirar el condensador, las juntas y el grado del fermentado.
fraction_again =
    La fracción { $fraction } de { $run ->
        [none] esta destilación
       *[other] { $run }
    } ya se aforó en este recipiente a las { $at }: { BARE($pure) } { pure }. ¿Es el mismo aforo, u otra destilación?
fraction_twice =
    Las cabezas y colas de { $vessel } ya entraron en { $run ->
        [none] la destilación de { $at }
       *[other] { $run }
    }. ¿Qué destilación las tuvo?
fraction_twice-short = { BARE($feints) } { pure } en cabezas y colas de { $vessel }, que según el libro tenía { BARE($booked) } { pure-sign }. ¿Las tuvo otra destilación, o falta anotar su aforo?
flow_sum = Caudal por minutos da { $flowed } de { $fraction }, el colector recibió { $got }: { $off } { more-or-less }, cuando puede haber { $most }. ¿Se anotó tarde un corte, o se cambió tarde un colector?
dip_flow = Caudal por minutos da { $flowed } desde que se abrió este colector, la altura { $dipped }: { $off } { more-or-less } en él, cuando puede haber { $most }. ¿Está abierto otro colector, o se anotó el corte en otro minuto?
more-or-less =
    { $side ->
        [more] más
       *[less] menos
    }
hearts_share =
    El corazón es { $now } de la carga; de { BARE($low) } a { $high } en las últimas { $runs } destilaciones de { $what ->
        [none] este alambique
       *[other] { $what }
    }. Vale la pena mirar los cortes.
cask_grew = Alcohol puro { BARE($now) } { pure-sign } ({ BARE($strength) } { pct }) está por encima de { BARE($last) } { pure-sign } ({ BARE($last_strength) } { pct }) de { $at }{ moved-since }; una barrica no puede ganar.
cask_grew-gross = Bruto { TYPED($gross) } está por encima de { TYPED($last) } de { $at }; solo puede bajar, salvo que la barrica se rellenara.
cask_grew-emptied = { BARE($now) } { pure } en la barrica antes de vaciarla, { BARE($booked) } { pure-sign } según el libro desde { $since }; una barrica no puede ganar. Mirar peso y grado.
moved-since =
    { $way ->
        [added] { " " }con { BARE($moved) } { pure-sign } añadidos desde entonces
        [drawn] { " " }con { BARE($moved) } { pure-sign } sacados desde entonces
       *[none] { "" }
    }
cask_strength_slip =
    El grado { BARE($now) } { pct } está { APART($off) } { points } por { $side ->
        [below] debajo
       *[above] encima
    } de { BARE($last) } { pct } de { $at }; lo habitual es menos de { UNITS() ->
        [us] 2 puntos proof
       *[metric] un punto
    } al año.{ $hint ->
        [none] { "" }
       *[other] { " " }{ $hint }
    }
slip-glass = Como lectura del alcohómetro a { TYPED($temp) } son { BARE($true) } { pct } reales.
cask_loss =
    { $rate } al año perdido desde { $since }{ $whole ->
        [none] { "" }
       *[other] { " " }({ $whole } al año desde su llenado)
    }: { BARE($then) } { of-pure } entonces{ moved-since }, { BARE($now) } { pure-sign } ahora. { $others } { $end }
lost-leak = Su grado es habitual ({ APART($drift) } { points } al año): ¿una fuga? Mirar aros, fondos, tapón y suelo.
lost-odd_too = También su grado es raro: ¿es la barrica? Pesarla y leerla otra vez.
lost-by_size =
    Las barricas de este tamaño pierden de { $size ->
        [small] 5 a 8
       *[large] 2 a 4
    } %.
lost-by_others = De las { $casks } barricas más parecidas, la mayoría perdió de { BARE($low) } a { $high }.
lost-by_all = De las { $casks } barricas más parecidas, la mayoría perdió alrededor de { $lost }.
cask_life = Según el libro { BARE($booked) } desde { $since }, en la barrica { BARE($now) }: se fueron { BARE($gone) } { pure } ({ $share }). ¿Una fuga? Mirar el suelo y las duelas; anotarlo como pérdida.
cask_drift =
    El grado pasó de { BARE($last) } a { BARE($now) } { pct } ({ APART($drift) } { points } al año); en un { $place ->
        [damp] lugar húmedo ({ $humidity } de humedad) el destilado pierde grado
       *[dry] lugar seco ({ $humidity } de humedad) el destilado gana grado
    }. ¿Son la barrica y el lugar?
fill_level =
    { $litres } en { $cask }, { $share } de su capacidad. { $casks ->
        [none] Una barrica se llena como mínimo a { $usual }.
       *[other] Las { $casks } barricas más parecidas se llenaron a cerca de { $usual }.
    } Mirar la balanza y la unidad, y si es esta barrica.
cask_earlier = { BARE($odd) } { pct } y { BARE($odd_pure) } { of-pure } de { $at } están aislados: { BARE($before) } y { BARE($before_pure) } antes, { BARE($now) } y { BARE($now_pure) } ahora. Mirar aquel asiento; este cuadra con todos los demás.
gauge_earlier = { BARE($odd) } { pct } de { $at } está aislado: { BARE($before) } antes y { BARE($now) } ahora. Mirar aquel asiento; este cuadra con todos los demás.
cask_unlike =
    El grado está { APART($off) } { points } por { $side ->
        [below] debajo
       *[above] encima
    } de { BARE($last) } { pct } de { $at }; de las { $casks } barricas más parecidas, la mayoría cambió { APART($usual) } al año. Leerlo otra vez.
tare_off = { $cask } pesa { TYPED($tare) } vacía; en la lista figuran { TYPED($listed) }. Mirar la balanza, y si es esta barrica.
soakage = Vacía { TYPED($empty) }, tara antigua { TYPED($tare) }: { $kept } retenidos, cuando una barrica de este tamaño retiene de { BARE($low) } a { $high }. ¿Está escurrida? Mirar la tara.
soakage-light = Vacía { TYPED($empty) } queda por debajo de la tara antigua { TYPED($tare) }; la madera que tuvo destilado pesa de { BARE($low) } a { $high } más. La balanza o la tara está mal.
places_swapped = { $vessel } se halló en { $place } y { $other } en { $booked }: han cambiado de sitio, no falta nada. Si es así, decir que vale, y el libro los pone así.
place_differs =
    { $vessel } se halló en { $place }; { $booked ->
        [none] el libro no tiene lugar para él
       *[other] el libro lo tiene en { $booked }
    }. Si está allí, decir que vale. Contar también lo que hay allí.
cask_missing =
    No se halló { $vessel }{ $booked ->
        [none] { "" }
       *[other] , { BARE($booked) } { of-pure } según el libro
    }. Buscarlo ya. Si no está, anotar la pérdida y comunicarla.
not_in_book =
    No está en el libro: «{ $label }»{ $place ->
        [none] { "" }
       *[other] { " " }en { $place }
    }. Pesarlo, buscar sus papeles y añadirlo; buscar uno que el libro tenga y nadie haya hallado.
reduce_target =
    { BARE($now) } { pct } medidos, { BARE($target) } { pct } deseados: { APART($off) } { points } { $side ->
        [strong] de más.{ reduce-water }
       *[weak] de menos. Tiene que entrar destilado; el agua no puede salir.
    }{ $balance ->
        [none] { "" }
       *[other] { " " }{ $balance }
    }
reduce-water =
    { $water ->
        [none] { "" }
       *[other] { " " }En masa, { $water } más de agua.
    }
reduced-dip = { reduced-has }: mirar la altura.
reduced-no_loss = { reduced-has }: no hay pérdida.
reduced-shrinks = { $before } y { $water } de agua dan { $dip }, no { BARE($sum) }: la mezcla se contrae. { reduced-has }: no hay pérdida.
reduced-has = Alcohol puro { BARE($pure) } { pure-sign }, { BARE($booked) } { pure-sign } según el libro
contraction_forgotten = { $water } de agua es lo que pedirían los volúmenes solos. Los volúmenes no se suman: habrá { $volume }, no { BARE($sum) }, a { BARE($strength) } { pct }. Para { BARE($target) } { pct } hacen falta { $needed }: { $more } más. El alcohol puro sigue siendo el mismo.
filter_loss = { filter-sums } retenidos por filtro y línea. Habitual: de 0,3 a 1 %. Mirar las placas, el fondo y ambas alturas.
filter_gain = { filter-sums } más de lo que entró. Un filtro no hace destilado: mirar ambas alturas y ambos grados.
filter-sums = Antes { BARE($before) }, después { BARE($after) }: { BARE($off) } { pure } ({ $share })
filter_before = { BARE($before) } { pure } en { $vessel } antes del filtro, { BARE($booked) } { pure-sign } según el libro. Mirar la altura anterior, y luego si falta anotar un traslado.
bottling_balance = { bottling-sums } sin justificar. Habitual: de 0,3 a 1 %. Contar otra vez botellas y cajas.
bottling_gain = { bottling-sums } más de lo que contenía el depósito. Mirar el recuento, el tamaño de botella y el aforo del depósito.
bottling-sums = Depósito { BARE($tank) }, botellas { BARE($bottles) }, fondo y línea { BARE($line) }: { BARE($off) } { pure } ({ $share })
label_strength =
    El depósito está a { BARE($tank) } { pct }, la etiqueta dice { BARE($label) } { pct }: { APART($off) } { points } por { $side ->
        [above] encima
       *[below] debajo
    }. Al grado de la etiqueta las botellas contendrían { BARE($by_label) } { pure }; según el aforo del depósito, { BARE($by_tank) } { pure-sign }.
label_strength-before = { BARE($tank) } { pct } en el depósito, { BARE($label) } { pct } en la etiqueta: { APART($off) } { points } de diferencia, cuando puede haber { APART($most) }. Corregir el grado o la etiqueta antes de embotellar.
label_strength-bottles = { BARE($found) } { pct } en las botellas, { BARE($label) } { pct } en la etiqueta. Parar la línea, mezclar el depósito y leerlo otra vez.
fill_off-least = { $found } en la menos llena; en este tamaño el mínimo es { $least } ({ fill-law }). { fill-set }
fill_off-most = { $found } en la más llena; en este tamaño el máximo es { $most } ({ fill-law }). { fill-set }
fill_mean = { $mean } de media: una partida no puede quedar de media por debajo de su etiqueta (Directiva 76/211/CEE, de memoria). { fill-set }
fill-law =
    { $place ->
        [US] 27 CFR 19.356
       *[EU] Directiva 76/211/CEE, de memoria
    }
fill-set = Ajustar la llenadora y mirar las botellas desde el último control.
case_count =
    { $cases } cajas de { $per_case } son { $in_cases }, con { $library } para archivo { $together }; se contaron { $good } botellas buenas: { $off } de { $side ->
        [many] más
       *[few] menos
    }. Contar otra vez cajas y botellas.
bottled_low = { BARE($label) } { pct } en la etiqueta. { $law } { law-caution }
barrelled_high = { BARE($strength) } { pct } a la barrica. { $law } { law-caution }
law-caution = Una nota, no asesoramiento legal: mirar el texto vigente y preguntar a quien lo conoce.
law-bottled-at_least = { law-subject } se embotella a { law-strength } o más{ law-source }
law-distilled-below = { law-subject } se destila a menos de { law-strength }{ law-source }
law-distilled-at_most = { law-subject } se destila a { law-strength } o menos{ law-source }
law-distilled-at_least = { law-subject } se destila a { law-strength } o más{ law-source }
law-barrelled-at_most = { law-subject } entra en la barrica a { law-strength } o menos{ law-source }
law-aged = { law-subject } está en madera { $value } o más{ law-source }
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
       *[memory] , de memoria
    }).
law-spirit-geist = Geist
law-spirit-beer_spirit = aguardiente de cerveza
law-spirit-brandy = brandy
law-spirit-cider_or_perry_spirit = aguardiente de sidra o de perada
law-spirit-fruit_marc_spirit = aguardiente de orujo de fruta
law-spirit-fruit_spirit = aguardiente de fruta
law-spirit-grape_brandy = brandy de uva
law-spirit-grape_marc_spirit = aguardiente de orujo
law-spirit-honey_spirit = aguardiente de miel
law-spirit-lees_spirit = aguardiente de lías
law-spirit-neutral_spirits = alcohol neutro
law-spirit-raisin_spirit = aguardiente de pasas
law-spirit-rye_whisky = whisky de centeno
law-spirit-spirit_drink = bebida espirituosa
law-spirit-spirit_of_macerated_fruit = aguardiente obtenido por maceración de fruta
law-spirit-straight_whisky = whisky straight
law-spirit-whisky = whisky
law-spirit-wine_spirit = aguardiente de vino
law-note-charred_oak =
    { UNITS() ->
        [us] 62,5 % vol
       *[metric] 125 proof
    }; en roble nuevo carbonizado
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
law-note-before_caramel = antes de ajustar el color con caramelo
law-note-casks_700 = en barricas de 700 L como máximo
law-note-small_oak = en barricas de roble de menos de 1000 L
law-note-large_oak = en recipientes de roble de 1000 L o más
law-note-immature_brandy = en roble; el más joven es «immature brandy». Otros brandies de fruta no tienen allí mínimo
law-note-straight = para llamarse straight
lab_over =
    { lab-result } está { $sense ->
        [at_least] por debajo
       *[at_most] por encima
    } del { lab-law }. { $sort ->
        [target] Un objetivo no es un límite: preguntar a quien conozca la ley qué exige.
       *[other] No embotellar ni vender con eso: preguntar al laboratorio y a quien conozca la ley.
    } { lab-caution }
lab_not_safely =
    { lab-result } no está con seguridad { $sense ->
        [at_least] por encima del { lab-law }: otro laboratorio puede hallar tan solo { BARE($at_worst) }
       *[at_most] por debajo del { lab-law }: otro laboratorio puede hallar hasta { BARE($at_worst) }
    }. Analizarlo otra vez antes de fiarse. { lab-caution }
lab_under =
    { lab-result } está { $sense ->
        [at_least] por encima del { lab-law }; otro laboratorio puede hallar tan solo { BARE($at_worst) }
       *[at_most] por debajo del { lab-law }; otro laboratorio puede hallar hasta { BARE($at_worst) }
    }. Habla solo de la muestra.
lab_strength = { $substance } está impreso por litro o kilogramo de bebida; el límite va por alcohol puro. Teclear el grado real del boletín.
lab-result =
    { $below ->
        [yes] { $substance }, no detectado con un método que empieza en { $found },
       *[no] { $substance } { $found }
    }
lab-law =
    { $sort ->
        [target] objetivo
        [action] valor de intervención,
       *[limit] límite
    } de { BARE($limit) } para { $called } ({ $place }; { $source })
lab-caution = Deciden el boletín de un laboratorio acreditado y la ley del lugar, no este libro.
unknown_bottling =
    Ningún embotellado del libro se llama { $batch }{ $case ->
        [none] { "" }
       *[other] { " " }y contiene la caja { $case }
    }. Mirar la marca de lote, o entregar antes el cierre de embotellado.
unknown_bottling-several = { $bottlings } embotellados responden a { $batch }. Teclear también la primera caja, como está en la caja.
bottling-named =
    { $bottling ->
        [none] El embotellado
       *[other] { $bottling }
    }
more_than_bottled = { bottling-named }: { $good } embotelladas, { $gone } salidas, { $on_hand } en almacén según el libro; { $now } ahora son { $more } más de las que hay. Contarlas, y buscar una salida anotada dos veces.
more_than_bottled-back = { bottling-named }: { $good } embotelladas, { $on_hand } en almacén según el libro; { $back } no pueden volver todas. ¿Es esta partida?
other_case = La caja { $case } no es de este embotellado: tiene de { $first } a { $last }. Mirar otra vez la caja.
case_numbers = Las cajas { $first } a { $last } son { $cases }; hay tecleadas { $typed }. ¿Cuál es lo correcto?
case_gone = La caja { $case } ya salió según el libro. ¿Se anotó dos veces esta salida? Si no, mirar los números.
case_gone-several = Las cajas { $first } a { $last } ya salieron según el libro. ¿Se anotó dos veces esta salida? Si no, mirar los números.
bottles_short = { $on_hand } botellas en almacén según el libro, { $counted } contadas: faltan { $off }. Contar otra vez y buscar una salida sin anotar. En EE. UU. una merma sin explicar de botellas paga impuesto (27 CFR 19.465).
bottles_over = { $on_hand } botellas en almacén según el libro, { $counted } contadas: { $off } de más. Contar otra vez y buscar una salida sin anotar.
transit_loss = { transit-sums } perdidos en el camino. Por encima de { $most } hay que comunicarlo (27 CFR 19.462). Mirar los precintos y aforar otra vez; después comunicarlo.
transit_gain = { transit-sums } más de lo que dicen los papeles. Mirar grado, temperatura y lo que había antes en el recipiente.
transit-sums = Enviado { BARE($sent) }, recibido { BARE($received) }: { BARE($off) } { pure } ({ $share })
goods_short = { $short } de { $bottles } botellas faltaban o estaban rotas. Contarlas otra vez, hacerlo constar en los papeles y avisar al expedidor: puede deberse impuesto por lo que falta.
seals_broken = Los precintos no estaban enteros. Apartar la carga, aforarla y avisar ya al expedidor y a la autoridad.
vat_draws = «{ $part }» no nombra un recipiente con un peso. Escribir marca y kilos, por ejemplo C001-Z 153.7.
vat_vessel = No hay ningún recipiente { $mark } en el libro. Mirar otra vez la marca.
vat_short = { $planned } previstos de { $vessel }, { $booked } según el libro. Planearlo otra vez.
tasting_named = Ya hay en el libro una cata { $name }. Dar otro nombre a esta.
tasting_part = «{ $part }» no se puede leer. Escribirlo como muestra la ayuda junto a la casilla.
tasting_vessel = No hay ningún recipiente { $mark } en el libro, y es una muestra de esta cata. Mirar otra vez la marca.
tasting_heads = { $vessel } contiene cabezas. Las cabezas no se catan nunca: quitarlo y tirar lo servido.
tasting_glasses = { $person } tiene una serie que no es de { $wanted } copas. Sortear otra vez los códigos.
tasting_unknown = El libro no tiene ninguna cata { $name }. Mirar su nombre en la hoja de servicio.
tasting_after = La cata { $name } ya estaba abierta antes de esta respuesta, así que no cuenta. ¿Iba bien el reloj del teléfono?
tasting_taster = { $person } no es catador de { $name }, así que esto no cuenta. ¿Quién cató?
tasting_set = { $person } no tiene la serie { $set }, así que esto no cuenta. Mirar la hoja de servicio.
tasting_twice = { $person } ya respondió a la serie { $set }. Cuenta la primera respuesta.
tasting_code = No había ninguna copa { $code } en esta serie, así que la respuesta no cuenta. Mirar las copas.
tasting_order = Una ordenación nombra una vez cada una de las { $glasses } copas. Esta no, así que no cuenta.
tasting_again = La cata { $name } ya se abrió. Cuenta la primera apertura.
tasting_seal = Esta no es la clave con que se selló { $name }. Abrirla desde su página en la oficina.
tasting_early = Abierta con { $came } de { $sets } respuestas. Las demás no contarán.
tasting_cited = No hay en el libro ninguna cata abierta { $name }. Mirar su nombre, o abrirla antes.
floor-back = Atrás
floor-check_bottles = Comprobar botellas
floor-now = ahora
floor-one_less = Uno menos
floor-glass = Alcohómetro
floor-spirit = Destilado
floor-ferments = Fermentaciones
floor-readings_round = Ronda de lecturas
floor-regauge_round = Ronda de aforos
floor-tap_it_in_the = tocarlo en la lista
floor-all_places = Todos los lugares
floor-scan_the_next = Escanear el siguiente
floor-skip = Saltar
floor-the_slate = La pizarra
floor-as_casks_like_it = como barricas parecidas
floor-stock_count = Inventario
floor-gravity = Densidad
floor-cases_to = cajas { $case_from } a { $case_to }
floor-another = otro
floor-bottles = { $bottles } botellas
floor-not_in_the_book = No está en el libro
floor-volume = Volumen
floor-scan = Escanear
floor-off = no
floor-on = sí
floor-true_strength = Grado real
floor-best = mejor
floor-waits_on_this_phone = , espera en este teléfono
floor-read = leído
floor-heads = cabezas { $heads_l }
floor-pinfirst-it_goes_into_the = Va a las cuentas
floor-checks-about_as_many_over = más o menos tantas por encima como por debajo (27 CFR 19.356)
floor-checks-100_on_average_76 = 100 de media (76/211/CEE, de memoria)
floor-line-bottling = Embotellado
floor-line-the_line = la línea
floor-line-fill_of_the_label = Llenado, % de la etiqueta
floor-line-label = etiqueta
floor-line-least = mínimo
floor-line-most = máximo
floor-line-strength = Grado, { $unit }
floor-line-close_the_bottling = Cerrar el embotellado
floor-line-outside_what_may_be = Fuera de lo admitido: ajustar la llenadora y mirar las botellas desde el último control.
floor-view-the_line = La línea
floor-view-fill_average = Llenado, media
floor-view-of_the_label_last = % de la etiqueta, último { $last }
floor-view-last_strength = Último grado
floor-view-average = media { $mean } { $sign }
floor-view-tank_fills = El depósito da
floor-view-of_at_most = de { $size_l }, como máximo
floor-view-checks_over_under =
    { PLURAL($count) ->
        [one] { $count } control
       *[other] { $count } controles
    }{ $spread }; { $over } por encima, { $under } por debajo de la etiqueta.
floor-view-spread = , dispersión { $spread }
floor-view-next_check = Próximo control
floor-view-the_first_take_bottles = El primero. Tomar { $count } botellas de la línea, pesarlas, leer su grado.
floor-view-at_bottle = en la botella { $at_bottle }
floor-view-as_the_house_wants = como lo quiere la casa
floor-view-bottles_filled = botellas llenadas
floor-view-late = tarde
floor-view-next_check_in = Próximo control en
floor-view-the_next_check_was = El próximo control tocaba { $due_at }
floor-view-next_check_2 = Próximo control { $due_at }
floor-view-about = alrededor de
floor-view-or = o
floor-view-every_min = , cada { $every_min } min
floor-view-line = Línea
floor-view-type_the_bottles_filled = Teclear las botellas llenadas en dos controles, y aquí aparece la velocidad.
floor-view-filled_the_next_count = { $filled } llenadas. El próximo recuento da la velocidad.
floor-view-an_hour = por hora
floor-view-ends_about = Acaba hacia
floor-view-to = , de { $soonest } a { $latest }
floor-view-the_tank_is_through = Según el recuento, el depósito se ha acabado.
floor-view-of_counted = { $filled } de { $bottles } contadas{ $by }
floor-view-about_by_now = , ya unas { $expected }
floor-view-cases_packed = Cajas hechas
floor-view-one_more_than = Una más que
floor-view-bottles = { $per_case } botellas
floor-view-bottles_in_a_case = Botellas por caja, para contar cajas con toques
floor-view-each_bottle_full = Cada botella { $low } % llena{ $high }, { $words }.{ " " }
floor-view-or_more = { " " }o más
floor-view-to_2 = { " " }a { $high }
floor-view-strength_to_for_a = Grado de { $low } a { $high } para una etiqueta de { $label_pct }.
floor-view-by_the_cases = { $so_far } según las cajas
floor-view-empty_bottle_with_closure = Botella vacía con cierre, g
floor-view-bottle_full_g = Botella { $n }, llena, g
floor-view-one_more_bottle = Otra botella
floor-view-labels_and_closures_right = Etiquetas y cierres bien
floor-view-yes = sí
floor-view-no = no
floor-view-fill_by_hand_bottle = llenado a mano, tamaño de botella, qué se hizo
floor-view-bottle_size = Tamaño de botella
floor-view-l = L
floor-view-done_if_wrong = Hecho si algo está mal
floor-view-g = g
floor-view-full = { $mean } % llena
floor-view-on_average_of = de media de { $fills }: { $fill }. { $words }
floor-view-which_tank_runs_to = ¿Qué depósito va a la línea?
floor-view-no_tank_has_spirit = Ningún depósito tiene destilado, que este teléfono sepa. Aforar antes el depósito de embotellado.
floor-casks-casks = Barricas
floor-casks-cask_is = La barrica está
floor-casks-now = ahora.
floor-card-tasted_of_10 = Catada { $tasted_at }: { $score } de 10.
floor-card-gauges_of_this_fill = Aforos de este llenado
floor-card-casks_like_it = { $count } barricas parecidas
floor-card-such_a_size = de ese tamaño
floor-card-a_year = % al año
floor-card-lost_of_its_pure = { $name } perdió { $share } % de su alcohol puro al año; { $like } pierden de { $low } a { $high }.
floor-dial-of = { $words } de { $high }
floor-due-closed_the_still_is = Cerrada: se espera el alambique.
floor-due-ended_close_it_and = Acabada: cerrarla y reservar el alambique.
floor-due-not_read_since_it = Sin leer desde que se llenó.
floor-due-casks_to_regauge = Barricas por aforar
floor-due-never_gauged_in_this = Nunca aforada en este llenado.
floor-due-casks_to_sample = Barricas por muestrear
floor-due-never_sampled = Nunca muestreada.
floor-due-casks_to_taste = Barricas por catar
floor-due-never_tasted = Nunca catada.
floor-due-last = Última { $last }.
floor-due-every_months = { $title }, cada { $months } meses
floor-due-check_due =
    { $title }: control { $late ->
        [yes] vencido el
       *[no] pendiente el
    } { $date }.
floor-due-instruments = Instrumentos
floor-due-by_law = Por ley
floor-due-the_three_reports_for = Las tres declaraciones de { $month } vencen el día 15.
floor-due-the_quarter_ends_count = Acaba el trimestre: contar los depósitos de almacenamiento.
floor-due-count_of_bottled_stock = Recuento de botellas; se avisa a la oficina fiscal cinco días hábiles antes.
floor-round-of = { $done } de { $cards }
floor-round-of_done = { $done } de { $cards } hechos
floor-round-another_of_round =
    { $noun ->
        [tank] Otro depósito
       *[cask] Otra barrica
    }
floor-round-place = Lugar
floor-round-begin_a_new_round = Empezar otra ronda
floor-round-logged_another_reading_stands = Anotado { $last }. Al lado hay otra lectura.
floor-round-log_it_next = Anotar, siguiente
floor-round-next_of_round =
    { $noun ->
        [tank] Depósito
       *[cask] Barrica
    } siguiente
floor-round-is_not_on_this = { $mark } no está en esta ronda: { $sort }.
floor-round-it_is_a = es: { $sort }
floor-round-it_holds_nothing_as = no contiene nada, que el libro sepa
floor-round-this_phone_knows_no = Este teléfono no conoce { $mark }. Teclearlo en su propia página cuando el teléfono haya tenido cobertura.
floor-round-all_done =
    { $noun ->
        [tank] Los { $count } depósitos están hechos.
       *[cask] Las { $count } barricas están hechas.
    }
floor-round-none_to_go_to =
    { $noun ->
        [tank] Ningún depósito
       *[cask] Ninguna barrica
    } por visitar: no hay nada lleno, que este teléfono sepa.
floor-says-ended_three_equal_gravities = Acabada: tres densidades iguales desde { $day }. Reservar el alambique.
floor-says-not_moving_and_not = Ni se mueve ni ha acabado. Mirar temperatura, acidez y nutriente.
floor-says-it_has_hardly_begun = Apenas ha empezado a bajar: aún no hay día.
floor-says-no_day_yet_it = Aún no hay día: hacen falta cuatro lecturas.
floor-says-to = { " " }(de { $low } a { $high })
floor-says-ends_about_near_three = Acaba hacia { $day }{ $span }, cerca de { $end_gravity }. Deciden tres densidades iguales.
floor-says-much_at_a_usual = Mucho, con un grado habitual: ¿una fuga? Mirar aros, fondos, tapón y suelo.
floor-says-the_weight_is_usual = El peso es habitual, el grado raro. Leer otra vez el alcohómetro.
floor-says-weight_and_strength_are = Peso y grado son raros. ¿Es la barrica?
floor-says-a_cask_cannot_gain = Una barrica no puede ganar. Pesar y leer otra vez.
floor-says-to_2 = de { $low } a { $high }
floor-says-casks_like_it_compared = barricas parecidas { $span } ({ $count } comparadas)
floor-says-such_a_size = de ese tamaño { $span }
floor-says-first_gauge_of_this = Primer aforo de este llenado, o pronto para un ritmo; { $like } % al año.
floor-says-a_year = al año; { $like }.
floor-says-a_year_2 = al año; { $like }. { $words }
floor-tasting-fruit = fruta
floor-tasting-stone = hueso
floor-tasting-almond = almendra
floor-tasting-blossom = flor
floor-tasting-spice = especia
floor-tasting-green = verde
floor-tasting-sharp = punzante
floor-tasting-glue = pegamento
floor-tasting-smoke = humo
floor-tasting-dust = polvo
floor-tasting-words_of_the_house = Palabras de la casa
floor-tasting-words_to_tap = Palabras para tocar
floor-tasting-take_off = quitar { $name }
floor-tasting-take_off_2 = quitar
floor-tasting-may_stay_empty = puede quedar vacío
floor-tasting-log = Anotar: { $words }
floor-duelist-rounds = Rondas
floor-duelist-taste = Catar
floor-ferments-mash = Masa
floor-ferments-last_read = Última lectura { $last }.
floor-ferments-not_read_yet = Sin leer aún.
floor-counter-one_more = Uno más
floor-counter-10_ten_more = +10, diez más
floor-counter-count = recuento
floor-counter-keys = teclas
floor-dress-or_type_it = o teclearlo
floor-dress-of_to = de { $case_from } a { $case_to }
floor-dress-from = { $cases } de { $dressed }
floor-dress-to = { $from } a { $to }
floor-dress-to_stand = hasta { $to } están
floor-dress-follows_the_last = sigue a la última
floor-dress-as_before = como antes
floor-dress-of = { $cases } de { $per_case }
floor-dress-by_the_cases_of = según las cajas de la línea
floor-dress-vessels = { $count } recipientes
floor-dress-as_the_book_has = como lo tiene el libro
floor-dress-more_than_there_are = ; { $left } más de las que hay
floor-dress-left = ; quedan { $per_case }
floor-round-bottled_goods = botellas
floor-round-elsewhere = en otro sitio
floor-round-of_done_2 = { $done } de { $items } hechos
floor-round-none = Ninguno
floor-round-empty = Vacío
floor-round-what_says_it_on = ¿Qué pone en él?
floor-round-type_what_it_says = Teclear lo que pone en él.
floor-round-next_vessel = Recipiente siguiente
floor-round-this_round_has_no = Esta ronda no tiene { $mark }. Si no está en el libro, decirlo en «Otro».
floor-round-left = quedan { $open }
floor-round-all_done_2 = todo hecho
floor-round-type_who_counted_name = Teclear quién contó, nombre y cargo.
floor-round-counts_on_slate =
    { PLURAL($count) ->
        [one] { $count } recuento
       *[other] { $count } recuentos
    } en la pizarra.
floor-roundview-where = Dónde
floor-roundview-one_place_after_another = Un lugar tras otro. No se dice lo que espera el libro; las diferencias aparecen al final, y se firma lo contado.
floor-roundview-nothing_to_count_as = Nada que contar, que este teléfono sepa: no hay depósito, barrica ni botella en sus fichas.
floor-roundview-of_counted = { $done } de { $items } contados
floor-roundview-left = quedan { $done }
floor-roundview-another_or_the_end = Otro, o el final
floor-roundview-in_this_round = En esta ronda
floor-roundview-to_the_differences = A las diferencias
floor-roundview-cask = Barrica
floor-roundview-it_should_stand_at = Debería estar en
floor-roundview-the_book_has = El libro tiene
floor-roundview-no_place = ningún lugar
floor-roundview-for_it = para él
floor-roundview-it_stands_elsewhere = Está en otro sitio
floor-roundview-type_the_place = teclear el lugar
floor-roundview-place_as_its_label = Lugar, como dice su etiqueta
floor-roundview-not_here = No está aquí
floor-roundview-it_is_here = Está aquí
floor-roundview-count = Contar
floor-roundview-by_weight_or_corrected = Por peso, o corregido
floor-roundview-and_a_remark = y una observación
floor-roundview-counted_next = Contado, siguiente
floor-roundview-what_it_says_on = Qué pone en él
floor-roundview-where_it_stands = Dónde está
floor-roundview-differences = Diferencias
floor-roundview-differences_from_the_book = Diferencias con el libro
floor-roundview-as_the_book_has = Como lo tiene el libro
floor-roundview-not_counted = Sin contar
floor-roundview-sign = Firmar
floor-roundview-counted_by_name_and = Contado por, nombre y cargo
floor-roundview-each_count_goes_into = { $lead }Cada recuento entra en el libro como se leyó, en su propio minuto. Una diferencia queda allí como pregunta hasta que alguien la responda.
floor-roundview-signed_under_penalties_of = Firmado bajo las penas de perjurio: verdadero, correcto y completo según mi conocimiento (27 CFR 19.45, 19.623; mirar el texto de hoy).{ " " }
floor-roundview-nothing_is_counted_yet = Aún no hay nada contado.
floor-roundview-another_place = Otro lugar
floor-roundview-go_on_counting = Seguir contando
floor-roundview-sign_and_log =
    Firmar y anotar { PLURAL($count) ->
        [one] el recuento
       *[other] { $count } recuentos
    }
floor-roundview-count_again = Contar otra vez
floor-roundview-nothing_where_it_should = Nada donde debería estar. Buscarlo enseguida; avisar a quien corresponda.
floor-roundview-not_in_the_book = no está en el libro
floor-roundview-at = { $litres } a { $strength_pct }
floor-roundview-at_2 = en { $place }
floor-roundview-here = aquí
floor-roundview-book = libro { $bottles }
floor-roundview-book_2 = libro { $place }{ $lpa_l }
floor-roundview-book_3 = libro { $litres }{ $strength_pct }
floor-roundview-at_3 = { $litres } a{ " " }
floor-roundview-book_empty = libro vacío
floor-stock-loose = { $loose } sueltas
floor-stock-none_left = no queda ninguna
floor-aloud-degrees = grados
floor-aloud-degrees_fahrenheit = grados Fahrenheit
floor-aloud-percent = por ciento
floor-aloud-litres = litros
floor-aloud-kilos = kilos
floor-aloud-grams = gramos
floor-aloud-brix = brix
floor-aloud-gallons = galones
floor-aloud-pounds = libras
floor-aloud-minus = menos{ " " }
floor-gloves-more_fields =
    { PLURAL($count) ->
        [one] { $count } campo más
       *[other] { $count } campos más
    }
floor-listening-the_microphone_is_not = Aquí no está permitido el micrófono. Permitirlo en los ajustes del navegador para este sitio, o teclear.
floor-listening-no_figure_was_heard = No se oyó ninguna cifra. Decirla otra vez o teclearla.
floor-listening-heard_no_figure_say = Se oyó «{ $heard }»: no es una cifra. Decirla otra vez o teclearla.
floor-listening-heard_but_this_box = Se oyó «{ $heard }», pero esta casilla toma { $symbol }.
floor-listening-or = { " " }o{ " " }
floor-settings-of_this_phone_alone = solo de este teléfono
floor-settings-voice_and_ear_are = Voz y oído son del propio teléfono: nada de lo dicho sale de él.
floor-settings-its_icon_shows_how = Su icono muestra cuántos asientos esperan, si está en la pantalla de inicio.
floor-settings-what_waits_is_handed = Lo que espera se entrega también con la aplicación cerrada, cuando llega una red.
floor-settings-gloves = Guantes
floor-settings-larger_keys_fewer_boxes = teclas más grandes, menos casillas
floor-settings-buzz = Vibración
floor-settings-when_it_is_logged = al anotar y con una pregunta
floor-settings-read_aloud = Leer en voz alta
floor-settings-figures_just_typed_and = cifras recién tecleadas y preguntas
floor-settings-gravity_1_031 = Densidad: 1,031
floor-settings-speak_figures = Dictar cifras
floor-settings-into_the_box_your = a la casilla; se anotan con un toque
floor-settings-fetch_the_language_for = Traer el idioma para ello
floor-settings-it_is_on_this = Ya está en este teléfono.
floor-settings-it_could_not_be = No se pudo traer. Reintentar con cobertura.
floor-note-cap_pushed_down = Sombrero hundido.
floor-note-cooling_is_on = Refrigeración puesta.
floor-note-smells_odd = Huele raro.
floor-note-read_it_first = Leerlo antes.
floor-note-charged_not_heated = Cargado, sin calentar.
floor-note-rinse_it_first = Enjuagarlo antes.
floor-note-still_warm = Aún caliente.
floor-note-receivers_are_empty = Colectores vacíos.
floor-note-weeps_a_little = Rezuma un poco.
floor-note-bung_is_loose = El tapón está flojo.
floor-note-do_not_move_it = No moverlo.
floor-note-weigh_it_again = Pesarlo otra vez.
floor-note-it_rests_do_not = Reposa. No remover.
floor-note-it_is_cloudy = Está turbio.
floor-note-valve_is_shut = Válvula cerrada.
floor-note-lid_is_off = Sin tapa.
floor-note-look_at_it_first = Mirarlo antes.
floor-note-not_finished = Sin acabar.
floor-note-cleaned = Limpio.
floor-note-out_of_order = Averiado.
floor-note-all_as_usual = Todo como siempre.
floor-note-ready_words = Frases listas
floor-note-pin_it_to = Fijarla en { $mark }
floor-note-leave_it_for_the = Dejarla para el turno siguiente
floor-note-from = De { $name }.
floor-note-pinned_to = Fijada en
floor-note-for_the_next_shift = Para el turno siguiente
floor-note-it_stands_under_today = Está en Hoy. { $from }
floor-note-pinned_to_2 = Fijada en { $mark }
floor-note-whoever_opens_it_reads = Quien lo abra la lee. { $from }
floor-note-there_already = Ya está ahí
floor-note-pin_it_to_a = Fijarla en un recipiente
floor-note-heard_by = oída por { $person }
floor-note-read_by = leída por { $person }
floor-note-look = Mirar
floor-note-listen = Escuchar
floor-note-heard = Oída
floor-note-read = Leída
floor-note-voice_note = Nota de voz
floor-note-voice_note_seconds = Nota de voz, { $seconds } s
floor-note-notes_to_read = Notas por leer
floor-note-read_them = Leerlas
floor-note-notes = Notas
floor-note-not_read_yet = Sin leer aún
floor-note-all_read = Todas las notas están leídas.
floor-note-have_been_read = Leídas antes
floor-note-leave_a_note = Dejar una nota
floor-note-no_microphone = El micrófono no está permitido. Permitirlo en los ajustes del navegador, o teclear la nota.
floor-note-speak_it = Decirla
floor-note-stop = Parar, { $seconds } s
floor-note-recording = Grabando
floor-aim-target_as_its_label = Objetivo: como dice su etiqueta.
floor-aim-target_as_aimed_at = Objetivo: el que se buscó aquí, { $date }.
floor-aim-target_as_last_in = Objetivo: como el último en { $name }, { $other }. Mirar si es esta etiqueta.
floor-picture-in_the_tank_and = { $litres } en el depósito y { $kg } de agua dan { $dip20_l } a { $strength_pct }: { $shrinks_l } menos que la suma.
floor-picture-at = { $dip20_l } a { $strength_pct }
floor-picture-less_than_the_sum = { $shrinks_l } menos que la suma. No hay pérdida.
floor-picture-of_water = { $kg } de agua
floor-picture-by_the_can_at = { $can_l } con el bidón a { $water_temp_c }
floor-picture-in_the_tank = { $litres } en el depósito
floor-picture-it_takes = Le caben { $most }.
floor-picture-would_be_too_much = { $over } serían de más: trasladar algo antes.
floor-picture-about_mixed = mezclado, unos { $figure }
floor-picture-water = agua
floor-picture-spirit = destilado
floor-picture-water_at_spirit_at = Agua a { $water_temp_c }, destilado a { $temp_c }, mezclado a unos { $figure } { $unit }, de { $off } a { $off_2 }; sin calor de mezcla { $calm }.
floor-picture-target = objetivo { $target_pct }
floor-picture-sum = suma { $sum_pct }
floor-picture-read = leído { $read_pct }
floor-picture-target_by_the_sum = Objetivo { $target_pct }, según la suma { $sum_pct }, leído { $read_pct } { $unit }.
floor-reduce-target = Objetivo
floor-reduce-spirit_is_at = El destilado está a
floor-reduce-water_is_at = El agua está a
floor-reduce-with_what_waits_here = , con lo que espera aquí
floor-reduce-reduce = Rebajar
floor-reduce-how_much_water = cuánta agua
floor-reduce-measured = Medido
floor-reduce-are_in = { $plan } ya dentro
floor-reduce-water_in = Agua dentro
floor-view-what_it_should_be = Cómo debe quedar
floor-view-a_tenth_less = Una décima menos
floor-view-a_tenth_more = Una décima más
floor-view-in_goes = En pasos
floor-view-or_the_plain_form = o el formulario simple
floor-view-in_how_many_goes = En cuántos pasos
floor-view-the_plain_form = El formulario simple
floor-view-type_the_strength_it = Teclear el grado que debe tener.
floor-view-at = a { $temp_c }
floor-view-of_water = { $unit } de agua
floor-view-for = ± { $doubt_kg } por ± { $at }
floor-view-what_the_tank_should = Qué debe marcar después el depósito
floor-view-dip = Altura, { $unit }
floor-view-as_wanted_no_water = Como se quiere: no hace falta agua.
floor-view-pour = Verter { $plan }{ $rest }
floor-view-first = { " " }primero.
floor-view-stir_let_it_stand = Remover, dejarlo hasta que deje de calentarse, leer{ $rest }. Un { $unit } es { $per } { $one }.
floor-view-once_more = { " " }otra vez
floor-view-then_the_rest = , después el resto
floor-view-planned_by = Planeado por { $person }, { $planned }: { $name }, { $target_pct }{ $water }.
floor-view-with_of_water = { " " }con { $water_kg } de agua
floor-view-step_by_step = Paso a paso
floor-view-then_rest = { $water_kg }, después reposo
floor-view-mixing_warms_it_by = La mezcla se calienta unos { $warms_c } { $unit }. Dejarla enfriar y reposar, un día al menos, antes de alcohómetro y altura.
floor-view-it_may_cloud_at = A este grado puede enturbiarse, más cuanto más frío. Ir despacio, dejar reposar y, si se enturbia, filtrar en frío.
floor-view-a_long_way_down = Mucha bajada de una vez. En dos o tres pasos con reposo se enturbia menos.
floor-view-water_went_in = Agua que entró
floor-view-measured_after_the_rest = Medido tras el reposo
floor-view-another_minute_a_remark = otro minuto, una observación
floor-view-points = { $off_pct } puntos
floor-view-as_wanted = Como se quería.
floor-view-too_weak_spirit_has = { $off } de menos. Tiene que entrar destilado; el agua no puede salir.
floor-view-too_strong_of_water = { $off } de más: { $trim_kg } más de agua.
floor-view-the_dip_agrees_with = La altura cuadra con la suma.
floor-view-dip_off_sum =
    La altura está { $litres } por { $side ->
        [under] debajo
       *[over] encima
    } de la suma: mirarla otra vez.
floor-view-true = { $measured_pct } real.
floor-view-which_tank = ¿Qué depósito?
floor-view-no_tank_has_spirit_2 = Ningún depósito tiene destilado, que este teléfono sepa. Aforar antes el depósito.
floor-after-after_the_run = Tras la destilación
floor-after-this_phone_knows_no = Este teléfono no conoce ninguna destilación acabada de ese alambique.
floor-after-the_balance_comes_when = El balance llega cuando se aforan corazón o flemas.
floor-after-balance = Balance
floor-after-from_100 = { $amount } de 100 { $unit }
floor-after-less_than_60_of = Menos del 60 % del tanto alzado: mirar fruta, fermentación y balance.
floor-after-more_than_one_and = Más de una vez y media el tanto alzado: mirar los pesos y los aforos.
floor-after-yield = Rendimiento
floor-after-of_wash_of_fruit = , { $per_100_l } de fermentado; { $kg } de fruta por su parte de la fermentación.
floor-after-official_flat_rate_for = Tanto alzado oficial de { $name }, por 100 L de masa: { $de_l } L en Alemania{ $austria }. Son medias prudentes, no objetivos.
floor-after-in_austria = , { $at_l } en Austria
floor-after-charged = Cargado, { $sign }
floor-after-hearts = Corazón, { $sign }
floor-after-hearts_share = Parte de corazón
floor-after-hearts_cut_at = Corte de corazón a, { $unit }
floor-after-took = Duró
floor-after-from_100_2 = De 100 { $unit }, { $sign }
floor-after-beside_the_runs_before = Junto a las destilaciones anteriores
floor-after-runs_side_by_side = Destilaciones lado a lado
floor-after-best_run = Mejor destilación
floor-after-marked_as_the_best = Marcada como la mejor destilación de { $what }
floor-after-by = por { $person }, { $best }{ $waiting }{ $why }.
floor-after-best_run_2 = ¿Mejor destilación?
floor-after-best_of_so_far = La mejor de { $what } hasta ahora: { $name }{ $why }.
floor-after-no_run_of_is = Aún no hay destilación de { $what } marcada.
floor-after-later_runs_are_drawn = Las siguientes se dibujan sobre la mejor.
floor-after-why = Por qué
floor-after-mark_this_run_as = Marcar esta destilación como la mejor
floor-balance-heads = cabezas
floor-balance-stillage = vinaza
floor-balance-not_accounted_for = { $open } ({ $share }) sin justificar
floor-balance-more_than_went_in = { $open } ({ $share }) más de lo que entró
floor-balance-in_out_usual_is = Entra { $charged }, sale { $open }: { $rest }.{ $stillage_pct } Lo habitual es de 0,5 a 2 %.
floor-balance-stillage_was_not_read = { " " }No se leyó la vinaza: se supone a { $stillage_pct }.
floor-balance-in = entra { $charged }
floor-balance-out = sale { $open }
floor-balance-pure_alcohol_of_the = Alcohol puro de la destilación
floor-changes-that_could_not_be = No se pudo guardar. Anotarlo como otro suceso.
floor-curve-true_strength_over_pure = Grado real según el alcohol puro recogido
floor-curve-l_pure_alcohol = L de alcohol puro
floor-curve-vapour_temperature_against_strength = Temperatura del vapor según el grado{ $name }
floor-curve-vapour_c = vapor °C
floor-curve-usual_for_this_still = habitual en este alambique
floor-curve-usual = habitual
floor-cutparts-i_switched_earlier = Cambié antes
floor-cutparts-why_it_is_logged = Por qué se anota ahora
floor-cutparts-hands_full = manos ocupadas
floor-cutparts-both_times_and_the = Ambas horas y el motivo quedan legibles.
floor-cutparts-switched_logged = cambiado { $at }, anotado { $at_2 }
floor-cutparts-receiver_now_open = Colector ahora abierto
floor-cutparts-another_receiver = Otro colector
floor-cutparts-by_its_mark = por su marca
floor-cutparts-mark = Marca
floor-cutparts-a_label_at_the = Una etiqueta junto a la caja de aforo se lee fuera de la línea, o se teclea su marca.
floor-due-part_to =
    { $part ->
        [hearts] corazón
        [tails] colas
        [low_wines] flemas
       *[heads] cabezas
    } hasta { $strength }
floor-due-part_to_last_time =
    { $part ->
        [hearts] corazón
        [tails] colas
        [low_wines] flemas
       *[heads] cabezas
    } hasta { $strength } la última vez
floor-due-the_sums_for_it = Las sumas para esto llegan a este teléfono la próxima vez que alcance el libro.
floor-due-read_the_flow_with = Leer el caudal con jarra y reloj, y dirá cuándo.
floor-due-by_flow_times_minutes = { $litres } por caudal por minutos.
floor-due-by_the_plan = { $words }, según el plan
floor-due-next_cut = Próximo corte
floor-due-is_reached = { $words }: se alcanzó { $by }.
floor-due-nose_first = { $words } Primero la nariz.
floor-due-about = { $words } { $near }alrededor de { $minutes }
floor-due-is_near = está cerca:{ " " }
floor-due-to = , de { $low } a { $high }
floor-due-off_in_all_to = { $litres } salidos en total, de { $low } a { $high }
floor-due-without_earlier_runs = , sin destilaciones anteriores
floor-due-then_together = ; { $part } entonces { $strength_average_pct } en conjunto
floor-due-strength_alone_the_nose = Solo el grado; decide la nariz.
floor-due-on_earlier_runs_of = En destilaciones anteriores de este alambique, { $kept } de { $tried } previsiones así acertaron el corte.
floor-due-was_expected_about = { $words } se esperaba hacia { $at }.
floor-due-last_read = Última lectura { $at }.
floor-due-read_now_nose_first = Leer ahora; primero la nariz.
floor-due-no_flow_and_no = Aún sin caudal ni altura: con cualquiera de los dos, la hoja suma lo que ha salido.
floor-due-so_far = { $part } hasta ahora { $litres }
floor-due-at_together = a { $strength } en conjunto
floor-due-to_by_off_in = hasta { $until }, por { $by }; { $litres } salidos en total
floor-due-flow_times_minutes = caudal por minutos
floor-due-dips = alturas
floor-due-dip_of_flow_times = Altura de { $at }: { $got }; caudal por minutos { $flowed }
floor-due-they_agree = { $both }. Coinciden.
floor-due-less_or_more_in_receiver =
    { $both }: { $off } % { $side ->
        [less] menos
       *[more] más
    } en el colector, cuando puede haber { $most } %. ¿Está abierto otro colector, o se anotó tarde un corte?
floor-far-large = Grande
floor-far-for_two_metres = para dos metros
floor-far-the_run_at_arms = La destilación a un brazo de distancia
floor-far-close = Cerrar
floor-far-true = { $sign } real
floor-far-no_strength_yet = aún sin grado
floor-far-ago = , hace { $last }
floor-far-next_reading = próxima lectura { $at }, { $at_2 }
floor-far-any_minute = en cualquier minuto
floor-far-reached = alcanzado
floor-far-expected_before_now = se esperaba antes
floor-far-turn_to = cambiar a { $to }
floor-far-the_end = el fin
floor-far-in = { $what } en
floor-far-any = cualquiera
floor-far-minute = minuto
floor-far-no_plan_and_no = Sin plan ni destilación anterior: la nariz dice cuándo.
floor-far-is_reached = { $words } alcanzado
floor-far-was_expected = se esperaba { $at }
floor-far-between_and = entre { $low } y { $high }
floor-far-open_to = abierto, de { $low } a { $high }
floor-far-of_about = { $litres } de unos { $all }
floor-far-without_earlier_runs = sin destilaciones anteriores
floor-jug-in_s = { $jug } en { $took } s
floor-jug-the_jug_holds = En la jarra caben
floor-jug-full = Llena { $seconds }
floor-jug-start_the_watch = Poner el reloj
floor-jug-jug_and_watch = jarra y reloj
floor-second-spirit_runs_at_above = El destilado sale a { $temp }, por encima de { $warm_c }. Más agua al condensador ya, y bajar el calor hasta que salga frío: el destilado caliente suelta vapor que arde.
floor-second-true_is_above_of = El real { $at } está por encima de { $true_strength } de { $last }. Tras el corte de cabezas solo baja, salvo que se cambiaran platos o agua.
floor-second-vapour_and_spirit_of = Vapor a { $vapour } y destilado de { $at } no cuadran: a ese grado en este alambique lo habitual es alrededor de { $wanted }. Mirar ambos.
floor-sheet-by_alcohol = Por alcohol
floor-sheet-by_time = Por hora
floor-sheet-vapour = Vapor
floor-sheet-the_curve_is_drawn = La curva se dibuja
floor-sheet-on_after_a_tap = sí, tras un toque
floor-sheet-plan = Plan:
floor-sheet-no_cut_plan_for = Aún no hay plan de cortes para { $what } en este alambique.
floor-sheet-this_fruit = esta fruta
floor-sheet-change_the_plan = Cambiar el plan
floor-sheet-make_a_plan = Hacer un plan
floor-sheet-sound_near_a_cut = Sonar cerca de un corte
floor-sheet-hearts_to = corazón hasta { $hearts_to_pct }
floor-sheet-tails_to = colas hasta { $tails_to_pct }
floor-sheet-for_on_this_still = Para { $what }, en este alambique. Decide la nariz; el plan recuerda.
floor-sheet-the_fruit_named_below = la fruta nombrada abajo
floor-hands-who_logs = Quién anota
floor-hands-other = Otro
floor-hands-take_it = Tomarlo
floor-pane-vessels = Recipientes
floor-places-stands_here = está aquí
floor-places-and_more = y { $others } más
floor-places-free = libre
floor-tasting-set_of = serie { $set_no } de { $mine }
floor-tasting-your_answer_is_on = Su respuesta está en la pizarra.
floor-tasting-set = { $name }, serie { $set_no }
floor-view-which_is_the_odd = ¿Cuál es la distinta?
floor-view-two_of_the_three = Dos de las tres son iguales.
floor-view-the_odd_one = la distinta
floor-view-which_is_the_same = ¿Cuál es igual que R?
floor-view-r_stands_open_beside = R está a la vista junto a las dos.
floor-view-the_same_as_r = igual que R
floor-view-which_has_more_of = ¿Cuál tiene más?
floor-view-this_one = esta
floor-view-tap_them_in_order = Tocarlas por orden, la primera antes.
floor-view-tap_again_to_take = Tocar otra vez para quitar una.
floor-view-guessing = al azar
floor-view-fairly = algo seguro
floor-view-quite = muy seguro
floor-view-nose = nariz
floor-view-mouth = boca
floor-view-finish = final
floor-view-hotter = más ardiente
floor-view-wood = madera
floor-view-softer = más suave
floor-view-nose_first_a_small = Primero la nariz, un sorbo pequeño, y escupir. Agua entre medias. Cuatro series como máximo y descanso; después nadie conduce ni trabaja en un alambique.
floor-view-place = lugar { $code }
floor-view-taste_left_to_right = { $how } Catar de izquierda a derecha, con agua entre medias. Se puede volver atrás. Adivinar también es responder.
floor-view-glasses_left_to_right = Copas, de izquierda a derecha
floor-view-how_sure = ¿Certeza?
floor-view-what_gave_it_away = ¿Qué la delató? (opcional)
floor-view-the_codes_are_drawn = Los códigos se sortean de nuevo para cada catador. Este teléfono no sabe qué contienen.
floor-view-of_in_order = { $order } de { $codes } por orden
floor-view-name_a_glass = Nombrar una copa
floor-view-log = Anotar: { $order }
floor-view-is = { $picked } es { $named }
floor-view-which_tasting_stands_before = ¿Qué cata tiene delante?
floor-view-all_your_sets_are = Todas sus series están respondidas. No decir nada de ellas hasta que se abra en la oficina.
floor-view-no_glasses_wait_for = No le espera ninguna copa. Una cata se prepara en la oficina; sus códigos llegan con las próximas fichas.
floor-ring-set_for = { $at }: puesto a las { $at_2 }.
floor-ring-set_for_2 = Puesto a las { $at }.
floor-ring-set_for_3 = puesto a las { $at }{ $more }
floor-ring-more = { " " }· { $due } más
floor-ring-read = Leer
floor-ring-min_more = { $minutes } min más
floor-ring-drop_the_reminder = Quitar el aviso
floor-ring-drop = Quitar
floor-show-next = Siguiente
floor-show-reading = lectura
floor-show-remind_me = Avisarme
floor-show-next_reading = próxima lectura
floor-show-reminders = Avisos
floor-show-due = pendiente
floor-show-when_is_to_be = ¿Cuándo hay que leer { $name }?
floor-show-set_for = Puesto a las
floor-show-min_after_each_reading = ; { $minutes } min tras cada lectura
floor-show-at = A las
floor-show-set_it = Ponerlo
floor-show-minutes_begin_anew_with = Los minutos empiezan de nuevo con cada lectura.{ " " }
floor-show-no_reminder = Sin aviso
floor-show-rings_while_cellarslate_is = Suena mientras Cellarslate esté abierto en este teléfono.
floor-show-rings_while_cellarslate_is_2 = Suena mientras Cellarslate esté abierto; detrás de otras aplicaciones el teléfono muestra un aviso.
floor-show-rings_while_cellarslate_is_3 = Suena mientras Cellarslate esté abierto. El teléfono preguntará si puede mostrar también un aviso.
floor-times-in_h = En { $hour } h
floor-times-this_evening = Esta tarde
floor-times-late_this_evening = Esta noche
floor-times-tomorrow_morning = Mañana por la mañana
floor-times-in = en { $span }
floor-times-due_now = toca ahora
floor-times-over = { $left } de retraso
floor-times-yesterday = ayer{ " " }
floor-times-tomorrow = mañana{ " " }
floor-times-next_reading = Próxima lectura{ $name }
floor-times-of = { " " }de { $name }
floor-stand-as_it_stands = Tal como está
floor-stand-pure_alcohol = Alcohol puro
floor-stand-as_of = a fecha de { $date }
floor-stand-with_what_waits_here = con lo que espera aquí
floor-stand-how_full_is_not = no se sabe cuánto hay
floor-stand-of_full = { " " }de { $capacity_l }, { $capacity_l_2 } % lleno
floor-stand-between_and = , entre { $low } y { $high }
floor-stand-about = unos{ " " }
floor-stand-empty_by_the_book = Vacío, según el libro.
floor-stand-takes = Le caben { $capacity_l }.
floor-stand-of = { $about }{ $litres } de { $capacity_l }{ $since }
floor-stand-to = { $about }{ $low } a { $high }, { $about_2 }
floor-stand-now = ahora{ " " }
floor-stand-by_its_weight = por su peso
floor-stand-fill_to_at_most = llenar hasta { $working_l } como máximo
floor-stand-so_far_from_gravity = { $so_far } hasta ahora, por densidad
floor-stand-goes_down_to = baja hasta { $target }
floor-stand-filled = llenado { $since }{ $use }
floor-stand-gravity = densidad
floor-stand-end = fin
floor-stand-save_its_label = Guardar su etiqueta
floor-stand-pure_alcohol_gauge_by = Alcohol puro, aforo por aforo
floor-camera-the_camera_works_only = La cámara solo funciona por https. Abrir el libro con su dirección https, o teclear la marca.
floor-camera-this_browser_offers_no = Este navegador no ofrece cámara. Teclear la marca.
floor-camera-no_camera_was_found = No se encontró cámara. Teclear la marca.
floor-camera-the_camera_is_not = Aquí no está permitida la cámara. Permitirla en los ajustes del navegador para este sitio, o teclear la marca.
floor-camera-another_app_is_using = Otra aplicación usa la cámara. Cerrarla y reintentar, o teclear la marca.
floor-camera-the_camera_stopped_because = La cámara se paró porque la página quedó oculta. Tocar Escanear para empezar otra vez.
floor-camera-the_camera_stopped_tap = La cámara se paró. Tocar Escanear para empezar otra vez, o teclear la marca.
floor-camera-the_camera_did_not = La cámara no arrancó. Reintentar, o teclear la marca.
floor-decoder-the_label_reader_is = El lector de etiquetas aún no está en este teléfono. Teclear la marca, o escanear una vez donde haya cobertura.
floor-decoder-this_browser_cannot_look = Este navegador no puede ver imágenes. Teclear la marca.
floor-scanner-this_code_is_not = Este código no es de los nuestros. Escanear la etiqueta del recipiente o teclear su marca.
floor-scanner-several_marks_are_in = Hay varias marcas a la vista. Acercarse para que se vea solo una.
floor-scanner-hold_the_label_in = Mantener la etiqueta a la vista.
floor-scanner-nothing_found_yet_go = Aún no se encuentra nada. Acercarse, inclinar el teléfono contra los reflejos, o teclear la marca.
floor-phonekey-this_browser_keeps_no = Este navegador no guarda clave, así que los asientos no se firman.
floor-unitlist-unit = Unidad
floor-view-case_word =
    { PLURAL($count) ->
        [one] caja
       *[other] cajas
    }
floor-bottles_of =
    { PLURAL($count) ->
        [one] { $count } botella
       *[other] { $count } botellas
    }
floor-cases_of =
    { PLURAL($count) ->
        [one] { $count } caja
       *[other] { $count } cajas
    }
floor-roundview-bottles_off =
    { PLURAL($count) ->
        [one] { $off } botella
       *[other] { $off } botellas
    }
floor-roundview-missing = falta
floor-roundview-elsewhere = en otro sitio
floor-round-counts =
    { PLURAL($count) ->
        [one] { $count } recuento
       *[other] { $count } recuentos
    }
floor-sets =
    { PLURAL($count) ->
        [one] { $count } serie
       *[other] { $count } series
    }
floor-balance-wash = fermentado
floor-balance-feints = cabezas y colas
floor-balance-side_in = entra
floor-balance-side_out = sale
floor-forecast-no_charge = Muy poco para decir algo: la carga de esta destilación no está anotada. Anotar litros y grado de la carga.
floor-forecast-few_readings =
    Muy poco para decir algo: anotar { $which ->
        [another] otra lectura
       *[first] las primeras lecturas
    } del chorro.
floor-forecast-no_flow = Muy poco para decir algo: anotar el caudal, o medir la altura del colector.
floor-forecast-odd_readings = Muy poco para decir algo: las lecturas suben y bajan. Leer otra vez el chorro.
floor-forecast-far = Muy poco para decir algo: el corte aún está lejos. Otra lectura ayudará.
floor-forecast-wide = Muy poco para decir algo: podría ser en cualquier momento dentro de { $width } minutos. Otra lectura ayudará.
floor-forecast-out_of_range = Sin previsión a { $target } % vol: corre de { $low } a { $high } % vol.
floor-forecast-past = El chorro ha pasado { $target } % vol.
floor-counter-count_of = Contar: { $label }
floor-listening-speak = Dictar la cifra
floor-lasttime-receivers = Colectores como la última vez
floor-pane-people = Personas y recipientes
floor-ring-reminder = Aviso
floor-file-save_it_again_on = Guardarlo otra vez en el teléfono de donde vino, o traerlo de nuevo.
floor-file-this_file_is_too = Este archivo es demasiado grande para una pizarra. Elegir el archivo que guardó Cellarslate.
floor-file-this_file_is_damaged = Este archivo está dañado: no cuadra su suma de control. { $again }
floor-file-this_file_is_damaged_2 = Este archivo está dañado: se corta o no es una pizarra. { $again }
floor-file-this_file_is_no = Este archivo no es una pizarra. Elegir uno llamado cellarslate-slate-….json.
floor-file-this_slate_was_saved = Esta pizarra la guardó un Cellarslate más nuevo. Actualizar antes este teléfono.
floor-file-this_file_is_damaged_3 = Este archivo está dañado: faltan partes de asientos. { $again }
floor-low_wines = flemas
floor-enclosed-too_many = Un asiento admite { $most } imágenes como máximo. Anotarlo y añadir las demás a otro.
floor-enclosed-with_this_entry = Imágenes con este asiento
floor-enclosed-picture_number = Imagen { $number }
floor-enclosed-take_off = Quitarla: { $name }
floor-enclosed-keeping_it = Guardando
floor-enclosed-picture = Imagen
floor-enclosed-pictures = Imágenes
floor-enclosed-on_the_slate = La imagen está en la pizarra.
floor-enclosed-open_the_paper = Abrir el papel
floor-enclosed-on_this_phone = { "." } En este teléfono; se entrega sola tras su asiento.
floor-enclosed-not_in_the_book = { "." } No está en el libro: { $words }
floor-enclosed-too_large = Esta imagen pasa de { $most } MB. Hacerla de nuevo con el tamaño normal de la cámara.
floor-enclosed-no_picture = Este teléfono no puede leer eso como imagen. Hacerla de nuevo con la cámara.
floor-enclosed-waiting =
    { PLURAL($count) ->
        [one] Aquí espera { $count } imagen o nota de voz.
       *[other] Aquí esperan { $count } imágenes y notas de voz.
    } Van después de los asientos, trozo a trozo.
floor-enclosed-refused =
    { PLURAL($count) ->
        [one] { $count } imagen
       *[other] { $count } imágenes
    } que el libro no puede guardar; abrir la línea para ver por qué.
floor-enclosed-not_reached = Desde aquí no se alcanza el libro.
floor-enclosed-no_room = Este teléfono está casi lleno, y el sitio que queda es para asientos. Anotarlo sin la imagen, o antes entregar y liberar espacio.

### Only the desk reads what follows.

floor-manifest-description = El registro de planta de la destilería, con o sin cobertura.
floor-manifest-shot_today = Lo pendiente hoy
floor-manifest-shot_run = Una destilación y cuándo cortar
floor-manifest-shot_wide = La hoja de destilación en una tableta
floor-manifest-scan = Escanear una etiqueta
floor-manifest-due = Lo pendiente
floor-manifest-round = Ronda de lecturas
floor-manifest-slate = La pizarra
desk-languages-label = Idioma
desk-you-language = Idioma
desk-you-language-any = Como lo tenga el navegador o la casa
desk-you-language-keep = Guardar
desk-frame-floor = Planta
desk-frame-sign_out = Cerrar sesión
desk-frame-to_its_doors = A sus puertas
desk-frame-this_is_the_demo_nothing = Esto es la demostración: aquí nada es real. { $link }
desk-frame-name_a_folder_on_another = Nombrar una carpeta en otro disco
desk-frame-this_book_has_no_backups = Este libro aún no tiene copias de seguridad. { $link }; después se hacen solas cada día.
desk-frame-the_book_goes_on_with = { $unjudged } El libro sigue con ello por sí solo; las entregas no tienen que esperar.
desk-frame-other_rules_have_judged_the =
    Otras reglas han juzgado el libro, y { $entries } { $entries ->
        [one] asiento
       *[other] asientos
    } con otro resultado que antes. { $link }.
desk-common-look_at_it = Mirarlo
desk-common-look_at_them = Mirarlos
desk-common-reason = Motivo
desk-common-amend = Rectificar
desk-common-at = a { $strength_pct }
desk-common-bottled = Embotellado
desk-common-blind_tastings = Catas a ciegas
desk-common-plan_a_vat = Planear una mezcla
desk-common-vat = Mezcla
desk-common-by = Por
desk-common-vessels = Recipientes
desk-common-batch = Partida
desk-common-last = Última
desk-common-state = Estado
desk-common-closed = cerrado
desk-common-under_way = en marcha
desk-common-the_entry = El asiento
desk-common-out_of = De
desk-common-not_yet = aún no
desk-common-water = Agua
desk-common-spirit = Destilado
desk-common-any = cualquiera
desk-common-pure_alcohol = alcohol puro
desk-common-at2 = { $what } a { $what2 }
desk-common-years = Años
desk-common-none = ninguno
desk-common-may = Puede
desk-common-vessel = Recipiente
desk-common-lot = Lote
desk-common-place = Lugar
desk-common-pure_alcohol_l = Alcohol puro, L
desk-common-proof_gal = Gal proof
desk-common-open = abierto
desk-common-ended = acabado
desk-common-trace = Rastreo
desk-common-on_the_floor = En la planta
desk-common-holds = contiene { $holding }
desk-common-answer = Respuesta
desk-common-since = Desde
desk-common-to = { $percent } a { $percent2 }
desk-common-on = En
desk-common-show = Mostrar
desk-common-what = Qué
desk-common-from = De
desk-common-to2 = A
desk-common-when = Cuándo
desk-common-score = Puntos
desk-common-who = Quién
desk-common-casks = Barricas
desk-common-all = todos
desk-common-due = Pendiente
desk-common-cask = Barrica
desk-common-holds2 = Contiene
desk-common-loss_a_year = Pérdida, % al año
desk-common-not_known = no se sabe
desk-common-readings = Lecturas
desk-common-print = Imprimir
desk-common-at3 = a { $bold }
desk-common-read_at = Leído a las
desk-common-gravity = Densidad
desk-common-ferment = Fermentación
desk-common-set = Puesta
desk-common-read = Leído
desk-common-ended2 = Acabada
desk-common-none_yet = Aún ninguno.
desk-common-keep = Guardar
desk-common-which_vessels = Qué recipientes
desk-common-sort = Clase
desk-common-and_more = y { $count } más
desk-common-none2 = Ninguno.
desk-common-remark = Observación
desk-common-leave_it = Dejarlo
desk-common-entries = Asientos
desk-common-kind = Clase
desk-common-book_no = Libro n.º
desk-common-phone = Teléfono
desk-common-asked = Preguntado
desk-common-or = o
desk-common-right = correcto
desk-common-digest = Huella
desk-common-proof_gal2 = gal proof
desk-common-l_pure_alcohol = L de alcohol puro
desk-common-litres_of_pure_alcohol = Litros de alcohol puro
desk-common-proof_gallons = Galones proof
desk-common-what_happened = Qué pasó
desk-common-cases = Cajas
desk-common-bottles = Botellas
desk-common-document = Documento
desk-common-to3 = a { $case_to }
desk-common-bottling = Embotellado
desk-common-odd = incompleta { $odd_case }
desk-common-of_l = de { $what } L
desk-common-bottled_goods = Botellas
desk-common-where_it_went = Adónde fue
desk-common-minute = Minuto
desk-common-line = Línea
desk-common-closed2 = Cerrado
desk-common-filled = Llenado
desk-common-all2 = Todo
desk-common-ranges = Intervalos
desk-common-access = Acceso
desk-common-more = Más
desk-common-how_phones_reach_this_book = Cómo llegan los teléfonos a este libro
desk-common-change = Cambiar
desk-common-add = Añadir
desk-common-entry = Asiento
desk-common-new_instrument = Nuevo instrumento
desk-common-instruments = Instrumentos
desk-common-number = Número
desk-common-description = Descripción
desk-common-limits_of_the_checks = Límites de los controles
desk-common-every_limit_is_the_checks = Cada límite es el propio del control.
desk-common-customers_and_growers = Clientes y agricultores
desk-common-from_a_spreadsheet = De una hoja de cálculo
desk-common-name = Nombre
desk-common-people = Personas
desk-common-new_person = Nueva persona
desk-common-phones = Teléfonos
desk-common-last_heard = Última noticia
desk-common-proof = Proof
desk-common-rules = Reglas
desk-common-laboratory = Laboratorio
desk-common-log_a_certificate = Anotar un boletín
desk-common-litres_of_pure_alcohol_at = litros de alcohol puro a 20 °C
desk-common-account = Cuenta
desk-common-of_what_stood_at_its = ± de lo que había al final
desk-common-the_period = El periodo
desk-common-of_its_lines = ± de sus líneas
desk-common-period = Periodo
desk-common-as_now_known = Como se sabe ahora
desk-common-as_now_known2 = como se sabe ahora
desk-common-open_figures_may_still_change = Abierto: las cifras aún pueden cambiar.
desk-common-periods = Periodos
desk-common-seasons = Campañas
desk-common-records_the_law_asks_for = Registros que pide la ley
desk-common-proof_gallons2 = galones proof
desk-common-germany = Alemania
desk-common-proof_gal_from_100_lb = gal proof de 100 lb
desk-common-not_accounted_for = Sin justificar
desk-common-runs = Destilaciones
desk-common-yields = Rendimientos
desk-common-feints = Cabezas y colas
desk-common-fruit = Fruta
desk-common-standing_now = Lo que hay
desk-common-still = Alambique
desk-common-why = Por qué
desk-common-n100_gal = 100 gal
desk-common-tasted_blind = Catado a ciegas:
desk-common-in = En
desk-common-run = Destilación
desk-common-rows = Filas
desk-common-mark = Marca
desk-common-look_it_over = Repasarlo
desk-common-sheet = Hoja
desk-common-taken_back = retirado
desk-common-samples = Muestras
desk-common-answers = Respuestas
desk-common-what_was_found = Qué se halló
desk-common-open_it = Abrirlo
desk-common-bottled2 = embotellado
desk-common-find_a_trace = Buscar un rastro
desk-common-came_from = vino de
desk-common-case_or_lot_mark_batch = Caja o marca de lote, partida, recipiente, destilación o entrega
desk-common-from2 = de { $name }: { $share }
desk-common-load_of_fruit = carga de fruta
desk-common-list_as_csv = Lista en CSV
desk-common-all_as_json = Todo en JSON
desk-common-stands_there_now = está ahí ahora
desk-common-made_from_it = hecho con ello
desk-common-passed_through = pasó por
desk-common-there_is_more_than_one = Hay más de lo que un rastreo puede seguir. Lo mostrado es cierto, pero no es todo: rastrear aparte un paso posterior.
desk-common-in_these_bottles = En estas botellas
desk-common-share_of_the_bottle = Parte de la botella
desk-common-where_the_cases_went = Adónde fueron las cajas
desk-common-share_of_it = Parte de ello
desk-common-not_fermented_out = fermentación sin acabar
desk-common-the_same_in_words = Lo mismo en palabras
desk-common-new_vessel = Nuevo recipiente
desk-common-mark_place_or_name = Marca, lugar o nombre
desk-common-no_vessels_here = Aquí no hay recipientes.
desk-common-to_the_floor = A la planta
desk-common-labels_to_hold_a_phone = Etiquetas para el teléfono
desk-common-print_them_a4 = Imprimirlas, A4
desk-common-to_the_doors = A las puertas
desk-common-no_site_has_handed_in = Aún no ha entregado ningún centro.
desk-common-unnamed = sin nombre
desk-common-something = algo
desk-common-a_run = destilación
desk-common-a_bottling = embotellado
desk-parts-it_was = Era { $raw } { $unit }
desk-parts-it_stands = Vale
desk-parts-strike = Tachar
desk-parts-nothing_in_the_book = nada en el libro
desk-blending-vats_planned = Mezclas previstas
desk-blending-none_yet_plan_one_pick = Aún ninguna. Planear una: elegir barricas, decir cómo debe quedar.
desk-blending-tank = Depósito
desk-blending-planned = Previsto
desk-blending-water = Agua, { $what }
desk-blending-volume = Volumen, { $what }
desk-blending-no_batch_yet_a_bottling = Aún no hay partida. La empieza un aforo del depósito de embotellado.
desk-blending-tank_fills = El depósito da
desk-blending-blending = Mezclas
desk-blending-by_papers = , según papeles
desk-blending-kept_the_tanks_card_shows = Guardado. La ficha del depósito lo muestra en todos los teléfonos.
desk-blending-these_draws_cannot_be_read = Estas extracciones ya no se pueden leer. Volver y calcular otra vez la mezcla.
desk-blending-give_the_vat_a_name = Dar un nombre a la mezcla y elegir su depósito; después guardarla.
desk-blending-the_book_has_no_such = El libro no tiene ese plan. Buscarlo en la lista de mezclas.
desk-blending-nothing_is_left_to_choose = No queda nada que elegir. Marcar lo que puede entrar, o pedir menos años en madera.
desk-plan-planned_and_done = Previsto y hecho
desk-plan-the_tank = El depósito
desk-plan-planned_by_on_into_at = Planeado por { $person } el { $when } a { $get }: { $plan } a { $plan2 }.
desk-plan-asked_for = Pedido: { $plan }.
desk-plan-it_rests_on_blind_tasting = Se apoya en la cata a ciegas { $link }.
desk-plan-planned = Previsto, { $what }
desk-plan-done = Hecho, { $what }
desk-plan-off = Diferencia, { $what }
desk-plan-in_the_tank_now_at = Ahora en el depósito: { $volume_l } a { $strength_pct } según el libro.
desk-vat-the_vat = La mezcla
desk-vat-draws = Extracciones
desk-vat-keep_this_vat = Guardar esta mezcla
desk-vat-what_may_go_in = Qué puede entrar
desk-vat-may_go_in = { $name } puede entrar
desk-vat-must_go_in = { $name } tiene que entrar
desk-vat-years_of_by_the_papers = Años de { $name } según los papeles
desk-vat-work_it_out = Calcularlo
desk-vat-begin_again = Empezar otra vez
desk-vat-at_from_vessel =
    { $bold } a { $bold2 }, { $lpa_l }{ $pure }, de { $count } { $count ->
        [one] recipiente
       *[other] recipientes
    }
desk-vat-of_water = { $water_kg } de agua
desk-vat-and = y { $bold }
desk-vat-youngest_years_in_wood = Lo más joven, { $what } años en madera
desk-vat-by_papers_only_of = solo según papeles de { $by_papers }
desk-vat-a_part_of_it_is = Una parte no tiene edad conocida.
desk-vat-that_is_less_than_asked =
    Eso es { $off } { $is_more ->
        [yes] más
       *[no] menos
    } de lo pedido.
desk-vat-share = Parte, %
desk-vat-before_the_water_at_the = Antes del agua { $before_l } a { $before_pct }. La mezcla se contrae { $shrinks_l }: no hay pérdida, su alcohol puro sigue.
desk-vat-name_of_the_vat = Nombre de la mezcla
desk-vat-into_tank = Al depósito
desk-vat-rests_on_tasting = Se apoya en la cata
desk-vat-keep_this_plan = Guardar este plan
desk-vat-no_cask_or_tank_has = Ninguna barrica ni depósito tiene destilado según el libro.
desk-vat-casks_go_whole_less_what = Las barricas van enteras, menos lo que retiene la madera. Los años son los de la parte más joven; donde el libro no puede saberlos, teclear lo que dicen los papeles. Un recipiente con una pregunta abierta solo lo marca usted: puede que sus cifras no valgan.
desk-vat-must = Obligado
desk-vat-there = Hay, { $what }
desk-vat-to_give = A sacar, { $what }
desk-vat-by_the_papers = Según los papeles
desk-vat-left_out_too_young = fuera: demasiado joven
desk-cellar_parts-cellar = Bodega
desk-cellar_parts-to = (de { $low } a { $high })
desk-cellar_parts-about = unos { $bold } { $part }
desk-cellar_parts-three_equal_gravities_since = tres densidades iguales desde { $at }
desk-cellar_parts-not_moving_and_not_finished = ni se mueve ni ha acabado
desk-cellar_parts-has_hardly_begun = apenas ha empezado
desk-cellar_parts-stuck = parada
desk-cellar_parts-too_few_readings = pocas lecturas
desk-cask-loss_a_year = Pérdida al año
desk-cask-forecast_for_a_day = Previsión para un día
desk-cask-forecast = Previsión
desk-cask-tasted = Catado
desk-cask-gauges = Aforos
desk-cask-years_in_wood = { $percent } años en madera
desk-cask-from_before_this_book = De antes de este libro
desk-cask-its_age_is_not_known = Su edad no se conoce.
desk-cask-its_age_is_by_papers = Su edad es solo según papeles: { $papers }.
desk-cask-its_age_is_by_what = Su edad es la que se dijo en sus existencias iniciales; no se nombran papeles.
desk-cask-pure_alcohol = Alcohol puro, %
desk-cask-volume = Volumen, %
desk-cask-proof_points = puntos proof
desk-cask-strength = Grado, { $what }
desk-cask-over_years = En años
desk-cask-one_gauge_or_too_near = Un aforo, o demasiado cercanos: aún no hay ritmo.
desk-cask-casks_like_it = barricas parecidas
desk-cask-the_law_allows = la ley admite
desk-cask-here_as_the_share_that = { $words } Aquí, como la parte que se va en un año. Es un nivel de cautela, no prueba de que una pérdida sea habitual ni asesoramiento legal: comparar antes con las barricas de la casa.
desk-cask-of_pure_alcohol = de alcohol puro
desk-cask-between_its_last_two_gauges = Entre sus dos últimos aforos, { $when } y { $when2 }, se fueron { $value } { $part }{ $pure }; ± es el doble de la incertidumbre típica, por la clase de balanza, alcohómetro y termómetro.
desk-cask-compared_with = Comparado con
desk-cask-no_other_cask_to_compare = No hay otra barrica con que comparar: cifras simples por su tamaño.
desk-cask-what_it_will_hold = Qué contendrá
desk-cask-no_forecast_for_a_day = No hay previsión para un día anterior a su último aforo ni a más de cincuenta años.
desk-cask-expected = Esperado
desk-cask-by_a_year_its_own = A { $percent } % al año, su propia pérdida ponderada con la de barricas parecidas; «de» y «a» deben acertar cuatro de cada cinco veces. No se prevén fugas ni muestras.
desk-cask-its_last_gauge_is_in = Su último aforo está en duda, y también esta previsión: mirar antes la barrica.
desk-cask-not_gauged_in_this_fill = Sin aforar en este llenado.
desk-cask-not_tasted_in_this_fill = Sin catar en este llenado.
desk-cask-fault = Defecto
desk-cask-house_scores = Puntos de la casa
desk-cask-in_words = En palabras
desk-cask-decision = Decisión
desk-cask-score_is_the_mean_of = Los puntos son la media de nariz, boca y madera.
desk-cask-gauges_of_this_fill = Aforos de este llenado
desk-cask-drawn_since_the_one_before = Sacado desde el anterior, { $what }
desk-cask-the_last_gauge = el último aforo
desk-cask-its_fill = su llenado
desk-cask-and_more = y más
desk-cask-pure_alcohol2 = Alcohol puro
desk-cask-strength2 = Grado
desk-cask-volume_at = Volumen a { $temp }
desk-casks-sort_casks = Ordenar barricas
desk-casks-regauge_round = Ronda de aforos
desk-casks-area = Zona
desk-casks-no_such_cask = No existe esa barrica.
desk-casks-no_cask_holds_anything_as = Ninguna barrica contiene nada, que el libro sepa.
desk-casks-since_fill = Desde el llenado
desk-casks-casks_like_it = Barricas parecidas
desk-casks-looks_like = Parece
desk-casks-loss_is_of_pure_alcohol = La pérdida es de alcohol puro desde el último aforo con al menos dos meses; las muestras no son pérdida. «Barricas parecidas»: cuatro de cinco están en ese intervalo, por tamaño, luego zona, luego madera y uso; un grupo pequeño toma del más amplio hasta tener barricas propias.
desk-casks-l_pure = L puros
desk-casks-by_papers = según papeles
desk-ferment-counts_of_its_alcohol = Recuentos de su alcohol
desk-ferment-set = llenado { $when }
desk-ferment-emptied = vaciado { $when }
desk-ferment-ends = Acaba: { $forecast }.
desk-ferment-it_usually_ends_near = Suele acabar cerca de { $what }.
desk-ferment-it_takes_two_gravities_or = Hacen falta dos densidades, o una fermentación cerrada.
desk-ferment-count = Contar
desk-ferment-of_wash = { $what } de fermentado
desk-ferment-of_measured_wash = % del fermentado medido
desk-ferment-runs_of_charged_scaled_to =
    { $runs } { $runs ->
        [one] destilación
       *[other] destilaciones
    } con { $charged_lpa } cargados, a escala de todo el fermentado
desk-ferment-gravity_low_wines_and_spirits = Densidad, flemas y destilados cuentan lo mismo de tres maneras que no se conocen entre sí; la ley antigua tomaba la mayor. Si difieren mucho: mirar alturas, grados y el fermentado.
desk-ferment-not_read_yet = Sin leer aún.
desk-ferment-greatest = mayor
desk-ferment-title = { $what } en { $mark }
desk-ferments-ferments_under_way = Fermentaciones en marcha
desk-ferments-ferments_that_have_ended = Fermentaciones acabadas
desk-ferments-readings_round = Ronda de lecturas
desk-ferments-no_ferment_is_under_way = No hay ninguna fermentación en marcha.
desk-ferments-ends = Acaba
desk-ferments-the_day_is_forecast_from = El día se prevé por la curva descendente de sus propias lecturas; los días entre paréntesis deben acertar cuatro de cada cinco veces. Deciden tres densidades iguales.
desk-ferments-emptied = Vaciado
desk-ferments-first_gravity = Primera densidad
desk-ferments-ferments = Fermentaciones
desk-house_rules-n0_for_never = 0 para nunca
desk-house_rules-what_is_due_stands_on = Lo pendiente está en Hoy en todos los teléfonos. Las palabras se tocan en una cata; los puntos van de 0 a 10.
desk-house_rules-house_rules = Reglas de la casa
desk-house_rules-too_young = demasiado joven
desk-house_rules-too_weak = poco grado
desk-house_rules-too_strong = demasiado grado
desk-house_rules-score_too_low = pocos puntos
desk-house_rules-not_tasted = sin catar
desk-house_rules-loses_much_look_at_it = pierde mucho: mirarla
desk-house_rules-not_gauged = sin aforar
desk-house_rules-spirit_as_the_book_names = Destilado, como lo nombra el libro; vacío para todos
desk-house_rules-in_wood_at_least_years = En madera al menos [años]
desk-house_rules-strength_from_vol = Grado desde [% vol]
desk-house_rules-strength_to_vol = Grado hasta [% vol]
desk-house_rules-score_at_least_of_10 = Puntos al menos [de 10]
desk-house_rules-loss_at_most_a_year = Pérdida como máximo [% al año]
desk-house_rules-words_for_nose_and_mouth = Palabras para nariz y boca, una por línea
desk-house_rules-beside_the_loss_of_casks = Junto a la pérdida de barricas: lo que admite la ley de
desk-house_rules-scores_beside_nose_mouth_wood = Puntos además de nariz, boca, madera y defecto, uno por línea
desk-house_rules-kept = Guardado.
desk-house_rules-type_a_figure_from_0 = Teclear una cifra desde 0, o dejarlo vacío.
desk-house_rules-kept_phones_have_it_with = Guardado. Los teléfonos lo tienen con sus próximas fichas.
desk-house_rules-read_a_ferment_every = Leer una fermentación cada
desk-house_rules-regauge_a_cask_every = Aforar una barrica cada
desk-house_rules-sample_a_cask_every = Muestrear una barrica cada
desk-house_rules-taste_a_cask_every = Catar una barrica cada
desk-house_rules-tell_of_an_instruments_check = Avisar del control de un instrumento antes
desk-house_rules-check_bottles_on_the_line = Comprobar botellas en la línea cada
desk-house_rules-or_after_so_many_of = o tras este número
desk-map-rooms = Salas
desk-map-map_of = Plano de { $name }
desk-map-without_a_position = { $name }, sin posición
desk-map-as_a_table = { $name } en tabla
desk-map-elsewhere = ◆ ¿en otro sitio?
desk-map-empty = vacío
desk-map-free = libre
desk-map-count_sheet = Hoja de recuento
desk-map-the_last_count_found_otherwise = El último recuento halló otra cosa
desk-map-nothing_has_a_place_yet = Aún nada tiene lugar. Lo dice un asiento que llena o traslada una barrica; también la página del recipiente.
desk-map-vessels =
    { $count } { $count ->
        [one] recipiente
       *[other] recipientes
    }
desk-map-places_free =
    { $free } { $free ->
        [one] lugar libre
       *[other] lugares libres
    }
desk-map-no_position = { $name }, sin posición
desk-map-without_a_place = Sin lugar { $part }
desk-map-the_first_vessels_are_drawn = Se dibujan los primeros { $most } recipientes. Elegir una clase para ver otros.
desk-map-a_place_is_where_an = Un lugar es donde un asiento puso por última vez el recipiente, o lo que dice su página. Un lugar hueco es el que nombran asientos o registro y donde ahora no hay nada. Las flechas van de lugar en lugar.
desk-map-places = Lugares
desk-map-other_places = Otros lugares
desk-ready-years_in_wood = Años en madera
desk-ready-lacks = Falta
desk-ready-no_rule_yet = Aún no hay regla.
desk-ready-set_one_below_age_strength = Poner una abajo: edad, grado, puntos, pérdida.
desk-ready-the_distiller_sets_one = La pone el destilador.
desk-ready-ready = Listas { $part }
desk-ready-no_cask_meets_the_rule = Ninguna barrica cumple hoy la regla.
desk-ready-lacks_one_thing = Falta una cosa { $part }
desk-ready-the_rule = La regla
desk-ready-last_set_by = Puesta por última vez por { $changed }, { $when }.
desk-ready-all_boxes_empty_takes_the = Todas las casillas vacías quitan la regla de ese destilado. Lo vacío no se pide. La regla es de la casa: la edad por ley y etiqueta es otro asunto.
desk-ready-ready2 = Listas
desk-ready-lacks_one_thing2 = Falta una cosa
desk-ready-all_spirits = todos los destilados
desk-amend-what_you_send_is_a = { $mark } · { $summary } · { $person }, { $read_local }. Lo que se envía es un asiento nuevo; el original queda legible.
desk-amend-why_it_is_amended = Por qué se rectifica
desk-amend-amend = Rectificar: { $title }
desk-entries-filter_entries = Filtrar asientos
desk-entries-pick_a_kind_for_csv = Elegir una clase para CSV
desk-entries-no_entries_here_yet = Aún no hay asientos.
desk-entries-older = Anteriores
desk-entry-as_computed = Según cálculo
desk-entry-movements = Movimientos
desk-entry-now_at = ahora en { $stands }
desk-entry-read_by = leído { $read_local } por { $person }
desk-entry-an_earlier_entry = un asiento anterior
desk-entry-amends = Rectifica { $link }: { $reason }
desk-entry-as_read = Según lo leído
desk-entry-by = por { $instrument }
desk-entry-corrected = corregido { $corrected }
desk-entry-is_twice_the_standard_uncertainty = ± es el doble de la incertidumbre típica, por la clase de los instrumentos; uno sin nombrar o sin clase en el libro cuenta con la clase que prescribe la ley.
desk-entry-figure = cifra
desk-entry-typed = tecleado
desk-entry-with = con { $words }
desk-entry-nothing_is_computed_from_this = De esto no se calcula nada.
desk-entry-how_it_came = Cómo llegó
desk-entry-typed_at = Tecleado a las
desk-entry-received = Recibido
desk-entry-phones_clock = Reloj del teléfono
desk-entry-fast =
    { $what } { $is_slow ->
        [yes] atrasado
       *[no] adelantado
    }
desk-entry-phone_its_count = Teléfono, su cuenta
desk-entry-handed_in_by = Entregado por
desk-entry-signature = Firma
desk-entry-what_it_does_to_the = Qué hace en las cuentas
desk-entry-from = de
desk-entry-to = a
desk-entry-account = cuenta
desk-entry-why = por qué
desk-entry-as_typed = como se tecleó
desk-entry-it_moves_no_spirit_either = No mueve destilado ni en un sentido ni en otro.
desk-entry-held_holds_then = contenía { $shown }, después contiene
desk-entry-with_the_book_would_still = Con { $words } el libro aún preguntaría antes de mover nada.
desk-entry-held_holds_then2 = contenía { $litres }, después contiene
desk-entry-its_story = Su historia
desk-entry-this_entry = este asiento
desk-entry-strike_this_entry = Tachar este asiento
desk-entry-strike_it_stays_legible = Tachar; queda legible
desk-entry-from_the_desk = desde la oficina
desk-entry-answered = respondido
desk-entry-nothing_moves_until_the_question = No se mueve nada hasta que se responda la pregunta.
desk-entry-it_is_struck_it_moves = Está tachado: no mueve nada.
desk-entry-it_moves_no_spirit = No mueve destilado.
desk-entry-another_entry_stands_in_its = Otro asiento está en su lugar.
desk-entry-none_the_phone_or_its = ninguna: el teléfono o su navegador no la dio
desk-entry-the_book_has_no_such = El libro no tiene ese asiento. Quizá aún espera en un teléfono.
desk-entry-none_it_was_entered_at = ninguna: se anotó en la oficina
desk-entry-of_and_it_holds = de { $phones }, y es válida
desk-entry-with_a_key_that_the = con una clave que el libro no tiene
desk-entry-there_is_no_such_entry = No hay tal asiento que rectificar.
desk-entry-pick_one_kind_first_each = Elegir antes una clase: cada una tiene sus columnas.
desk-entry-amended_the_original_stays_legible = Rectificado. El original queda legible.
desk-entry-is_no_day_pick_one = { $day } no es un día. Elegir uno, por ejemplo 2025-09-24.
desk-entry-say_why_it_is_amended = Decir por qué se rectifica, en pocas palabras.
desk-enclosed-title = Imágenes y papeles
desk-enclosed-show = Mostrar imágenes y papeles
desk-enclosed-back = Volver a su asiento
desk-enclosed-none = Aún ninguno. Hacer una en la planta con un asiento, o añadir uno en la página de un asiento.
desk-enclosed-picture = Imagen
desk-enclosed-paper = Papel
desk-enclosed-voice_note = Nota de voz
desk-enclosed-not_come = Aún no está aquí: espera en el teléfono
desk-enclosed-added_later = añadido después
desk-enclosed-its_entry = su asiento
desk-enclosed-add = Añadir imágenes o papeles
desk-enclosed-files = Archivos
desk-enclosed-help = JPEG, PNG o WebP hasta 12 MB, PDF hasta 20 MB, notas de voz hasta 6 MB; 24 MB por vez. Las imágenes pierden sus datos de lugar y cámara.
desk-enclosed-what = Qué muestra
desk-enclosed-add_it = Añadir a este asiento
desk-enclosed-added =
    { $count ->
        [one] Añadido. Es un asiento propio, que nombra este.
       *[other] { $count } añadidos. Son un asiento propio, que nombra este.
    }
desk-enclosed-pick_one = Elegir antes una imagen o un papel.
desk-enclosed-too_many = Como máximo { $most } por vez. Añadirlos por partes.
desk-enclosed-no_such_entry = No hay tal asiento al que añadir. Buscarlo entre los asientos.
desk-enclosed-the_paper = el papel
desk-enclosed-add_its_paper = añadir su papel
desk-queries-which_questions = Qué preguntas
desk-queries-to_answer = Por responder
desk-queries-none_of_this_weight = Ninguna de este peso.
desk-queries-nothing_is_asked_what_comes = No se pregunta nada. Aquí estará lo que llegue fuera de intervalo.
desk-queries-questions = { $count } preguntas
desk-queries-ask_on_only_above = Preguntar en { $mark } solo por encima de { $value } { $limits }
desk-queries-times_it_stood_here = { $times } veces valió aquí. { $link }
desk-queries-the_first_are_shown_answer = Se muestran las primeras { $most }. Al responder algunas, siguen las demás.
desk-queries-questions2 = Preguntas
desk-queries-not_answered = No respondido: { $why }
desk-queries-it_stands = Vale.
desk-queries-struck_the_entry_stays_legible = Tachado. El asiento queda legible.
desk-removals-to_or_from = A quién o de quién
desk-removals-loose = sueltas
desk-removals-of = de { $case_from }
desk-bottled-bottles_on_hand = Botellas en almacén
desk-bottled-removals_as_csv = Salidas en CSV
desk-bottled-all_removals_logged = Todas las salidas anotadas
desk-bottled-what_each_bottling_has_on = Qué queda en almacén de cada embotellado, y adónde fueron sus cajas. Se anota en la planta, en Más: salen o entran cajas, botellas. { $link }.
desk-bottled-nothing_is_bottled_yet_a = Aún no hay nada embotellado. Las existencias empiezan con un cierre de embotellado o con cajas de otro centro.
desk-bottled-good_bottles = Botellas buenas
desk-bottled-on_hand = En almacén
desk-bottled-last_count = Último recuento
desk-bottled-lot = lote { $lot_mark }
desk-bottled-for_the_library = { $library } para archivo
desk-bottled-from = de { $consignor }, { $document }
desk-bottled-from_before_this_book = de antes de este libro
desk-bottled-cases = { $cases } cajas
desk-bottled-and = y { $loose }
desk-bottled-out_and_back = Salidas y vueltas
desk-bottled-no_case_has_left_yet = Aún no ha salido ninguna caja.
desk-bottled-older_ones_are_in_the = { $count } anteriores están en el archivo.
desk-bottling-checks_of_the_line = Controles de la línea
desk-bottling-tank_gauge_and_label = Aforo del depósito y etiqueta
desk-bottling-no_bottling_tank_gauge_yet = Aún no hay aforo de embotellado. Aforar el depósito después de todo tratamiento, antes de la primera botella.
desk-bottling-at = { $volume } a { $strength }
desk-bottling-a_label_may_say_to = { $when }, { $tank }: { $bold } ({ $what }). Una etiqueta puede decir de { $low } a { $high }{ $span } y estar a menos de { $most }
desk-bottling-it_says = dice { $said }
desk-bottling-leave_room_for_what_glass = Dejar margen para lo que disimulan alcohómetro y termómetro.
desk-bottling-it_fills_bottles_of_l = Da { $what } botellas de { $what2 } L, sin dejar nada.
desk-bottling-none_yet_check_five_bottles = Aún ninguno. Comprobar cinco botellas cada media hora.
desk-bottling-fill_of_the_label_on = Llenado { $what } % de la etiqueta de media en { $count } controles
desk-bottling-spread = dispersión { $what }
desk-bottling-strength_on_average = Grado { $mean } de media
desk-bottling-spread2 = dispersión { $spread }
desk-bottling-at_this_size_each_bottle = En este tamaño cada botella puede quedar { $what } % por encima o por debajo (27 CFR 19.356), más o menos tantas por encima como por debajo.
desk-bottling-at_this_size_a_bottle = En este tamaño una botella puede quedar { $what } % por debajo, la media nada (Directiva 76/211/CEE, de memoria).
desk-bottling-fill = Llenado, %
desk-bottling-least = Mínimo
desk-bottling-most = Máximo
desk-bottling-labels_right = Etiquetas bien
desk-bottling-done = Hecho
desk-bottling-not_closed_yet = Sin cerrar aún.
desk-bottling-odd_case = Caja incompleta
desk-bottling-labels_of_cases = Etiquetas de las cajas
desk-bottling-a_case_label_leads_to = El símbolo lleva al rastreo del lote. No es la etiqueta que pide la ley.
desk-bottling-these_are_no_cases = Nombrar cajas de esta partida como las tiene su cierre, { $most } a la vez como mucho.
desk-bottling-broken = Rotas
desk-bottling-library = Archivo
desk-bottling-good = Buenas
desk-bottling-to = { $case_from } a { $case_to }
desk-bottling-nothing_has_left_the_tank = Aún no ha salido nada del depósito.
desk-bottling-gauged_bottled_not_in_a = Aforado { $gauged }, embotellado { $bottled }: { $off }{ $pure } ({ $what2 } %) no está en botellas.
desk-bottling-batch = Partida { $name }
desk-bottling-span = { $low } a { $high } % vol
desk-bottling-the_book_has_no_batch = El libro no tiene en un depósito ninguna partida de ese nombre. Buscarla en la lista de embotellados.
desk-bottling-fill_on_average = Llenado, de media
desk-bottling-of_the_label = % de la etiqueta
desk-bottling-strength_in_the_bottles = Grado en las botellas
desk-limits-to = { $what }{ $what2 } a { $what3 } { $symbol }{ $what4 }
desk-limits-as_the_kind = como la clase
desk-limits-every_range_is_the_kinds = Cada intervalo es el propio de la clase.
desk-limits-for = Para
desk-limits-field = Campo
desk-limits-usual = Habitual
desk-limits-possible = Posible
desk-limits-find_limits = Buscar límites
desk-limits-limits = Límites
desk-limits-all_ranges = Todos los intervalos
desk-limits-limits_set_so_far = Límites puestos hasta ahora
desk-limits-all_limits = Todos los límites
desk-limits-possible2 = posible: { $what }
desk-limits-words_field_vessel_or_product = Palabras, campo, recipiente o producto
desk-limits-a_range_for_one_vessel = Un intervalo de un recipiente va antes que el de su clase, este antes que el de la materia, este antes que el del centro y este antes que el propio de la clase de asiento. Las casillas vacías devuelven el propio.
desk-limits-set_so_far = Puestos hasta ahora
desk-limits-no_range_here_holds_these = Ningún intervalo contiene aquí estas palabras.
desk-limits-a_limit_for_one_vessel = Un límite de un recipiente va antes que el del producto, este antes que el de la clase de recipiente, este antes que el del centro y este antes que el propio del control. Una cifra vacía devuelve el propio.
desk-limits-no_limit_here_holds_these = Ningún límite contiene aquí estas palabras.
desk-limits-limit = Límite
desk-limits-set_to = Puesto en
desk-limits-the_checks_own = El propio del control
desk-limits-the_kinds_own = el propio de la clase
desk-limits-the_checks_own2 = el propio del control
desk-limits-the_book_knows_no_vessel = El libro no conoce ningún recipiente { $key }.
desk-limits-say_which_the_sort_of = Decir cuál: la clase de recipiente, o la materia.
desk-limits-from_to_is_no_range = De { $low } a { $high } no es un intervalo. Cambiar los dos.
desk-limits-kept_the_vessels_concerned_are = Guardado. Se juzgan de nuevo los recipientes afectados.
desk-limits-kept_the_entries_concerned_are = Guardado. Se pregunta de nuevo por los asientos afectados.
desk-access-code = código
desk-access-all_as_json_lines = Todo en líneas JSON
desk-access-everything = todo
desk-access-nothing_of_this_sort_yet = Aún nada de esta clase.
desk-access-the_newest_all_of_them = Los { $most } más recientes. Todos salen en líneas JSON.
desk-access-each_line_is_bound_to = Cada línea está ligada a la anterior; { $code } halla la que se cambió o se quitó. Las líneas de más de { $days } días se borran.
desk-address-now = Ahora
desk-address-this_book_is_open_on = Este libro solo está abierto en este ordenador. Arrancar { $code } sin { $code2 } ni { $code3 }, y los teléfonos de la misma red lo alcanzan.
desk-address-phones_open = Los teléfonos abren { $bold }.
desk-address-another_web_server_on_this = Otro servidor web de este ordenador habla por él, y el certificado es cosa de ese.
desk-address-every_phone_trusts_it_as = Cada teléfono confía en él tal cual, con un certificado de un nombre propio.
desk-address-this_houses_own_certificate = el certificado de esta casa
desk-address-each_phone_trusts_it_once = Cada teléfono confía en él cuando ha tomado { $link }.
desk-address-the_servers_certificate_lasts_unti = El certificado del servidor dura hasta { $ends }
desk-address-and_is_renewed_before_that = y antes se renueva solo
desk-address-the_address_is_who_the = La dirección es lo que es el libro para un teléfono.
desk-address-what_a_phone_holds_belongs = { $bold } Lo que guarda un teléfono pertenece a la dirección con que se abrió: con otra empieza vacío, y lo que esperaba se queda en la antigua. Elegir la definitiva antes del primer teléfono. Para cambiar después: que entreguen todos los teléfonos, cambiar, y admitir cada uno de nuevo.
desk-address-the_ways = Las maneras
desk-address-the_houses_own_certificate = El certificado de la casa
desk-address-nothing_to_buy_works_without = Nada que comprar, funciona sin internet diez años. En cada teléfono, de seis a ocho toques una vez, entre ellos un interruptor fácil de pasar por alto.
desk-address-an_internet_name_of_your = Un nombre de internet propio
desk-address-phones_trust_it_with_no = Los teléfonos confían en él sin ningún toque. Cuesta un dominio al año, internet de vez en cuando y alguien que lo prepare una vez: un registro que lleve a la dirección de este ordenador en la casa, y un cliente ACME (RFC 8555) que demuestre el nombre por DNS y ponga aquí los dos archivos. Se miran cada cuarto de hora y se toman cuando son nuevos. El nombre consta en registros públicos: mejor uno anodino.
desk-address-another_web_server_in_front = Otro servidor web delante
desk-address-where_the_house_has_one = Donde la casa ya tiene uno, con certificado propio: habla TLS y pasa las peticiones a este.
desk-address-when_a_phone_does_not = Cuando un teléfono no llega aquí
desk-address-on_this_computer_looks_at = { $code } en este ordenador mira nombre, dirección, puerto, reloj, certificado, router, disco y copia de seguridad, y dice el siguiente paso para cada uno. Dar a este ordenador una dirección fija en el router: una nueva sería otro libro para los teléfonos.
desk-instrument-checks = Controles
desk-instrument-readings_in_doubt = Lecturas en duda
desk-instrument-due_on = pendiente el { $due_on }
desk-instrument-last_good_check = último control bueno { $when }
desk-instrument-add_to_what_it_shows = sumar { $what } { $unit } a lo que marca
desk-instrument-certificate_add = certificado, sumar { $table_words }
desk-instrument-entries_read_with_it =
    { $readings } { $readings ->
        [one] asiento leído
       *[other] asientos leídos
    } con él
desk-instrument-none_in_the_book_log = Ninguno en el libro. Anotar uno en la planta: Comprobar instrumento.
desk-instrument-against = Frente a
desk-instrument-should_show = Debería marcar
desk-instrument-shows = Marca
desk-instrument-off_by = Desviación
desk-instrument-result = Resultado
desk-instrument-good = bien
desk-instrument-readings_in_doubt2 =
    { $doubtful } { $doubtful ->
        [one] lectura
       *[other] lecturas
    } en duda
desk-instrument-out_of_use = fuera de servicio
desk-instrument-in_use_until = en uso hasta { $until }
desk-instrument-in_doubt_read_before_the = En duda: leído antes del control de { $at }, desde el último bueno
desk-instrument-nothing_was_read_with_it = En ese tiempo no se leyó nada con él.
desk-instrument-entries =
    { $many } { $many ->
        [one] asiento
       *[other] asientos
    }
desk-instrument-the_last_are_listed = se listan los últimos { $count }
desk-instrument-look_at_each_let_it = Mirar cada uno: dejarlo valer, o rectificarlo con el motivo.
desk-instrument-by_this_check = Por este control
desk-instrument-n27_cfr_19_188_asks = 27 CFR 19.188 pide controles frecuentes; uno en duda no se usa hasta que se certifica.
desk-instrument-not_good = mal
desk-instrument-no_check_in_the_book = ningún control en el libro
desk-instrument-there_is_no_such_instrument = No existe ese instrumento. Buscarlo en la lista.
desk-instruments-none_yet_add_the_first = Aún ninguno. Añadir el primero.
desk-instruments-standing = Situación
desk-instruments-last_good_check = Último control bueno
desk-invited-shown_this_once = Se muestra una sola vez
desk-invited-scans_this_or_opens_the = { $name } escanea esto, o abre el enlace, antes de { $days } días, y pone una contraseña que nadie más sabe. Vale una vez; uno nuevo lo anula.
desk-invited-hand_it_over_yourself_whoever = Entregarlo en persona: quien lo abra primero entra como { $code }.
desk-invited-until_then_the_old_password = Hasta entonces la contraseña anterior sigue valiendo.
desk-invited-this_link_is_plain_http = Este enlace es http sin cifrar: vale en este ordenador, y otro enviaría la contraseña sin protección.
desk-invited-it_is_handed_over = Está entregado
desk-invited-invitation_for = Invitación para { $name }
desk-invited-on_this_computer_alone = solo en este ordenador
desk-judging-all_as_a_file_csv = Todo en un archivo (CSV)
desk-judging-rules_digest_the_book_is = Reglas { $number }, huella { $code }. El libro se juzga con ellas desde { $when }
desk-judging-all_was_judged_at = todo se juzgó a las { $when }
desk-judging-other_than_before = Distinto de antes: { $parts }.
desk-judging-not_all_is_judged_yet = Aún no está todo juzgado. Lo que resulta distinto se lista según se halla.
desk-judging-so_far = hasta ahora
desk-judging-nothing_came_out_otherwise = Nada resultó distinto{ $what }.
desk-judging-sums_that_came_out_otherwise = Sumas que resultaron distintas
desk-judging-none_stock_and_accounts_are = Ninguna. Existencias y cuentas son las que eran.
desk-judging-entries_move_other_amounts_than =
    { $sums_many } { $sums_many ->
        [one] asiento mueve
       *[other] asientos mueven
    } otras cantidades que antes
desk-judging-the_first_are_listed_the = se listan los primeros { $most }, el archivo los tiene todos
desk-judging-a_closed_month_keeps_its = Un mes cerrado conserva sus cifras: lo que cambió en él es un ajuste del primer mes abierto.
desk-judging-before = Antes: { $moves }
desk-judging-now = Ahora: { $moves }
desk-judging-questions_that_came_or_went = Preguntas que vinieron o se fueron
desk-judging-read_by = Leído por { $read_by }, { $when }.
desk-judging-i_have_read_it = Lo he leído
desk-judging-rules_of_version = Reglas de la versión { $version }
desk-judging-came_to = Vino a
desk-judging-went_from = Se fue de
desk-judging-weighs_otherwise_for = Pesa distinto para
desk-parties-new = Nuevo
desk-parties-none_yet_add_them_one = Aún ninguno. Añadirlos uno a uno, o tomar una hoja.
desk-parties-sells_or_buys = Vende o compra
desk-parties-address = Dirección
desk-parties-note = Nota
desk-parties-is_there_already_as_a = { $name } ya está ahí como { $role }. Cambiar ese.
desk-parties-there_is_nobody_of_this = No hay nadie con este nombre. Mirar otra vez la lista.
desk-parties-kept = Guardado.
desk-party_edit-a_papers_and_entries_call = Figura como { $role }. Papeles y asientos lo llaman por este nombre, así que se queda; con otro nombre es alguien nuevo.
desk-party_edit-new_customer_or_grower = Nuevo cliente o agricultor
desk-party_edit-supplier = proveedor
desk-party_edit-customer = cliente
desk-passkey_new-give_it_a_name_by = Darle un nombre por el que reconocerla después, como el ordenador o la llave en que está. El navegador pide luego dedo, cara o PIN.
desk-passkey_new-this_browser_makes_no_passkeys = Este navegador no crea aquí llaves de acceso. Usar uno que sí, por https, o seguir con la contraseña.
desk-passkey_new-make_it = Crearla
desk-passkey_new-made_at_it_is_good = Creada en { $rp_id }, solo vale allí. Quien pierde el aparato termina su llave de acceso en la página anterior.
desk-passkey_new-a_new_passkey = Nueva llave de acceso
desk-people-code = Código
desk-people-roles = Funciones
desk-people-at_the_desk = En la oficina
desk-people-invited = invitado
desk-people-password = contraseña
desk-people-ended = { $count } terminadas.
desk-people-there_is_a_already_pick = Ya hay un { $code }. Elegir otro código.
desk-people-somebody_must_keep_the_office = Alguien tiene que conservar la función de oficina. Dársela antes a otra persona.
desk-people-there_is_no_such_person = No existe esa persona.
desk-people-kept = Guardado.
desk-person_edit-the_floor_code_names_who = El código de planta dice quién anota en un teléfono compartido, también sin conexión. No es un cerrojo.
desk-person_edit-signing_in_at_the_desk = Inicio de sesión en la oficina
desk-person_edit-invited_until = Invitado hasta { $when }.
desk-person_edit-has_a_password_which_nobody = Tiene una contraseña, que nadie más sabe.
desk-person_edit-has_no_password_yet = Aún no tiene contraseña.
desk-person_edit-sessions_open =
    { $n_open } { $n_open ->
        [one] sesión abierta
       *[other] sesiones abiertas
    }.
desk-person_edit-end_the_sessions = Terminar las sesiones
desk-person_edit-who_is_to_sign_in = A quien ha de entrar en la oficina se le invita después, en su página.
desk-person_edit-invite_to_a_new_password = Invitar a una contraseña nueva
desk-person_edit-invite_to_the_desk = Invitar a la oficina
desk-readers-title = Otras herramientas
desk-readers-about = Una hoja de cálculo, un panel o un calendario lee lo que permite su clave, hasta su día, y no cambia nada. Cómo: { $link }.
desk-readers-name = Nombre de la herramienta
desk-readers-name_it = Ponerle nombre, por ejemplo «hoja de bodega».
desk-readers-good_for = Vale
desk-readers-days =
    { PLURAL($days) ->
        [one] { $days } día
       *[other] { $days } días
    }
desk-readers-may_read = Puede leer
desk-readers-tick_what = Marcar lo que puede leer.
desk-readers-scope_entries = asientos
desk-readers-scope_stock = qué hay y dónde
desk-readers-scope_periods = periodos
desk-readers-scope_trace = rastreos
desk-readers-scope_cards = fichas de los recipientes
desk-readers-scope_calendar = el calendario de lo pendiente
desk-readers-make = Crear clave
desk-readers-key_for = Clave para { $name }
desk-readers-shown_once = Se muestra solo esta vez. Quien la tenga lee lo mismo; guardarla donde se guardan las contraseñas.
desk-readers-calendar_at = Los calendarios toman esta dirección:
desk-readers-it_is_kept = Está guardada
desk-readers-none = Ninguna herramienta tiene clave.
desk-readers-tool = Herramienta
desk-readers-reads = Lee
desk-readers-until = Hasta
desk-readers-used = Último uso
desk-readers-never = nunca
desk-readers-over = terminada
desk-readers-end = Terminar
desk-readers-ended = La clave de { $name } ya no abre nada.
desk-readers-no_such = No existe esa clave. Quizá ya se terminó.
desk-readers-calendar_name = { $house }: lo pendiente
desk-readers-ferment_ends = { $name }: la fermentación acaba hacia ahora
desk-phones-let_in = Admitir { $data }
desk-phones-scan_this_with_the_phones = Escanear esto con la cámara del propio teléfono, una vez, antes de un día. Como enlace: { $link }
desk-phones-the_camera_does_not_scan = ¿La cámara no escanea?
desk-phones-open_on_the_phone_and = Abrir { $bold } en el teléfono y teclear, antes de { $minutes } minutos:
desk-phones-no_code_has_0_o = Ningún código lleva 0, O, 1, I, L ni U, y su último carácter comprueba los demás. Escaneado o tecleado, vale para un solo teléfono.
desk-phones-a_phone_that_does_not = Un teléfono que aún no confía en este servidor
desk-phones-it_opens = Abre antes { $place }. Allí tiene que mostrar estos grupos: { $groups }
desk-phones-the_trust_page = la página de confianza
desk-phones-make_a_code_for_a = Crear código para un teléfono nuevo
desk-phones-no_phone_is_let_in = Aún no hay ningún teléfono admitido.
desk-phones-entries_seen = Asientos vistos
desk-phones-not_handed_in = Sin entregar
desk-phones-clock = Reloj
desk-phones-leave = Salida
desk-phones-never = nunca
desk-phones-none_known = ninguno conocido
desk-phones-shut_out = excluido { $when }
desk-phones-shut_out2 = Excluir
desk-phones-a_missing_count_means_the = Un número que falta significa que el teléfono anotó un asiento que no ha llegado. Lo entrega solo cuando vuelva a alcanzar el servidor.
desk-phones-counts_twice = Cuenta doble:
desk-phones-more_than_one_entry_has = { $bold } más de un asiento tiene el mismo número de este teléfono. Hay dos copias de él, o se configuró desde una copia antigua. Todos los asientos están en el libro. Buscar el otro teléfono; si no se distingue, excluirlo y admitirlo de nuevo.
desk-phones-counts_twice2 = cuenta doble
desk-phones-missing = falta
desk-phones-clock_off =
    { $minutes } min { $is_slow ->
        [yes] atrasado
       *[no] adelantado
    }
desk-phones-shut_out_entries_it_still = Excluido. Los asientos que aún guarda están a salvo en él, y entran cuando se admita otra vez.
desk-phones-there_is_no_such_phone = No existe ese teléfono.
desk-proof-lost_heads = Hitos perdidos
desk-proof-witnesses = Testigos
desk-proof-each_backup_each_phone_and = Cada copia de seguridad, cada teléfono y el grupo guardan hitos: pruebas cortas, firmadas aquí con la clave { $code }, de todo lo que el libro contenía en un momento. Un libro reescrito después tiene otros hitos. Hasta el último hito que alguien guarde en otro sitio, no se puede cambiar ni quitar una línea sin que se vea; las posteriores, sí.
desk-proof-the_registry_is_proved_column = El registro se prueba columna por columna desde { $when }.
desk-proof-the_registry_is_proved_column2 = El registro se prueba columna por columna desde el principio.
desk-proof-compares_all_of_it = { $code } lo compara todo.
desk-proof-shown_once_and_no_longer = Mostrado una vez, y ya no está en el libro
desk-proof-came_back = Volvió
desk-proof-shown = Mostrado
desk-proof-what_differs = Qué difiere
desk-proof-explained = explicado
desk-proof-if_nobody_restored_an_older = Si nadie restauró una copia de seguridad anterior, alguien cambió el archivo del libro. Conservar esta carpeta como está y comparar con una copia: { $code }.
desk-proof-why_the_book_lacks_them = Por qué le faltan al libro
desk-proof-note_it = Tomar nota
desk-proof-who_keeps_heads = Quién guarda hitos
desk-proof-nobody_yet_phones_begin_with = Aún nadie. Los teléfonos empiezan con su próxima entrega, las copias de seguridad con la próxima.
desk-proof-gave_it_back = Lo devolvió
desk-proof-beside_the_backups = Junto a las copias de seguridad
desk-proof-that_the_first_backup_makes = que crea la primera copia de seguridad
desk-proof-not_explained = sin explicar
desk-proof-noted_the_heads_stay_on = Tomado nota. Los hitos siguen en la lista.
desk-rules-rules_the_book_was_judged = Reglas con que se juzgó el libro
desk-rules-the_book_is_judged_by = El libro se juzga con las reglas del programa que lo lleva. Donde una versión trae otras, cada asiento se juzga otra vez mientras siguen las entregas. Lo que resultó distinto está aquí hasta que alguien lo lea.
desk-rules-version = Versión
desk-rules-all_judged = Todo juzgado
desk-rules-read_by = Leído por
desk-rules-entries =
    { $unread } { $unread ->
        [one] asiento
       *[other] asientos
    }
desk-rules-to_read = por leer
desk-rules-kinds_of_entry = clases de asiento
desk-rules-sums_and_tables = sumas y tablas
desk-rules-the_fold = el cálculo del libro
desk-rules-kept_you_have_read_it = Guardado: leído por usted.
desk-rules-l_pure_alcohol = { $flow } L de alcohol puro
desk-rules-the_book_was_never_judged = El libro nunca se juzgó con estas. Mirar la lista.
desk-rules-the_run = la destilación
desk-settings-settings = Ajustes
desk-settings-changes = Cambios
desk-settings-the_house = La casa
desk-settings-the_office_changes_the_house = { $name }. La oficina cambia la casa y las personas, y excluye teléfonos.
desk-settings-set_a_range = Poner un intervalo
desk-settings-set_a_limit = Poner un límite
desk-settings-set = { $count } puestos.
desk-settings-check_due = Control pendiente
desk-settings-by_which_the_book_is = Con qué se juzga el libro, y qué resultó distinto con otras.
desk-settings-backups = Copias
desk-settings-not_encrypted_whoever_finds_one = Sin cifrar: quien halle una la lee. { $code } en el servidor crea la clave.
desk-settings-each_is_encrypted_to_the = Cada una está cifrada con la clave de la casa.
desk-settings-who_changed_what = Quién cambió qué
desk-settings-nothing_was_changed_yet = Aún no se ha cambiado nada.
desk-settings-kept = Guardado.
desk-settings-there_is_no_such_instrument = No existe ese instrumento.
desk-you-sessions = Sesiones
desk-you-passkeys = Llaves de acceso
desk-you-end_the_passkey = Terminar la llave de acceso { $name }
desk-you-keep_the_house = llevar la casa
desk-you-do_everything = hacerlo todo
desk-you-signed_in_as_who_may = Sesión de { $bold }, que puede { $what }.
desk-you-where_you_are_signed_in = Dónde tiene sesión iniciada
desk-you-the_list_begins_with_the = La lista empieza con el próximo inicio de sesión.
desk-you-browser = Navegador
desk-you-end = Terminar
desk-you-last_used = Último uso
desk-you-end_it = Terminarla
desk-you-end_all_others = Terminar todas las demás
desk-you-a_session_ends_hours_after = Una sesión termina { $idle_h } horas después de su último uso, y { $most_h } horas después de su comienzo por mucho que se use.
desk-you-your_passkeys = Sus llaves de acceso
desk-you-a_passkey_opens_the_desk = Una llave de acceso abre la oficina con el dedo, la cara o el PIN de este ordenador, un teléfono o una llave de seguridad, sin teclear contraseña. La casa guarda solo su mitad pública.
desk-you-passkey = Llave de acceso
desk-you-good_at = Vale en
desk-you-made = Creada
desk-you-you_have_none_yet = Aún no tiene ninguna.
desk-you-add_a_passkey = Añadir llave de acceso
desk-you-passkeys_are_bound_to_a = Las llaves de acceso van ligadas a un nombre. Para añadir una, abrir la oficina por el nombre de la casa, no por una dirección de cifras.
desk-you-your_password = Su contraseña
desk-you-change_it = Cambiarla
desk-you-forgotten_the_office_makes_you = ¿Olvidada? La oficina le hace una invitación; nadie puede leer la anterior.
desk-you-here = aquí
desk-you-look = mirar
desk-you-ended = Terminada.
desk-you-ended_you_are_signed_in = { $ended } terminadas. Solo tiene sesión aquí.
desk-you-ended_it_opens_nothing_any = Terminada: ya no abre nada. Las sesiones que empezó se pueden terminar abajo.
desk-you-that_is_not_your_password = No es su contraseña. Teclearla otra vez.
desk-you-there_is_no_such_session = Esa sesión ya no existe.
desk-you-no_passkey_can_be_made = En esta dirección no se puede crear una llave de acceso. Abrir la oficina por el nombre de la casa.
desk-you-there_is_no_such_passkey = Esa llave de acceso ya no existe.
desk-you-your_password_is_changed_you = Su contraseña está cambiada. Solo tiene sesión aquí.
desk-you-this_took_too_long_or = Tardó demasiado, o no es lo que se pidió. Pulsar otra vez.
desk-you-kept_you_can_sign_in = Guardada. Desde ahora puede iniciar sesión con ella.
desk-laboratory_parts-results_of = Resultados de { $document }
desk-laboratory_parts-no_limit_here = aquí sin límite
desk-laboratory_parts-substance = Sustancia
desk-laboratory_parts-found_and_how_it_stands = Lo hallado y su situación
desk-laboratory_parts-sample_of = { $link } · muestra de { $taken_on }
desk-laboratory_parts-from = de { $link }
desk-laboratory_parts-not_tested_a_hydrometer_sees = Sin analizar: { $untested }. Un areómetro no ve nada de eso.
desk-certificates-a_limit_and_a_result = { $caution } Un límite y un resultado están aquí con su fuente y con cuánto difieren los laboratorios. Ningún areómetro, densímetro ni refractómetro distingue metanol de etanol.
desk-certificates-the_newest_of_all_are = Los { $count } más recientes de { $count2 }; todos están entre los asientos.
desk-certificates-over_or_not_safely_under = Por encima o no con seguridad por debajo
desk-certificates-no_result_is_over_a = Ningún resultado está por encima de un límite ni deja de estar por debajo con seguridad.
desk-certificates-no_certificate_yet_log_one = Aún no hay boletín. Anotar uno desde su recipiente, o aquí para destilado que está en botellas.
desk-casks_by_year-at_the_end_of_a = A fin de mes
desk-casks_by_year-casks_by_kind_and_year = Barricas por clase y año
desk-casks_by_year-at_the_end_of = A fin de
desk-casks_by_year-filled_casks = Barricas llenas { $when }, por contenido y año de llenado; { $what } según el último aforo.
desk-casks_by_year-at_the_end_of2 = a fin de { $month }
desk-casks_by_year-now = ahora
desk-casks_by_year-no_cask_is_full = Aún no hay ninguna barrica llena.
desk-casks_by_year-wood = Madera
desk-casks_by_year-with = Con ±
desk-casks_by_year-by_papers_only = solo según papeles
desk-casks_by_year-some_by_papers = { $casks } solo según papeles
desk-casks_by_year-no_cask_was_full = Entonces no hay ninguna barrica llena.
desk-close-what_is_closed = Qué se cierra
desk-close-the_entry_of_that_is = El asiento de { $mark } por el que se pregunta
desk-close-in = Entra, { $what }
desk-close-out = Sale, { $what }
desk-close-end = Fin, { $what }
desk-close-every_line_with_its = Cada línea, con su ±
desk-close-what_is_made_of = De qué se compone ±
desk-close-in_the_name_of_this = En nombre de { $name }, esto cierra { $months } para siempre: las cifras quedan como están. Un asiento que llegue después sobre este tiempo se ajusta en el primer mes abierto, donde lo ve todo el mundo.
desk-close-months_to = { $count } meses, { $first } a { $last },
desk-close-each_of_them = cada uno de ellos
desk-close-look_at_first = Mirar antes { $link }.
desk-close-answer_them =
    { $count ->
        [one] responderla
       *[other] responderlas
    }
desk-close-questions_are_open_read_each =
    { $count } { $count ->
        [one] pregunta está abierta
       *[other] preguntas están abiertas
    }. Leer cada una y decirlo; o { $link }. El cierre lleva lo que estaba abierto, para siempre.
desk-close-i_have_looked_at_these = He mirado estas cifras
desk-close-close = Cerrar { $name }
desk-close-leave_it_open = Dejarlo abierto
desk-close-back_to = Volver a { $name }
desk-held-by_account = Por cuenta
desk-held-the_least_known_first = Primero lo peor conocido
desk-held-no_vessel_held_anything_measured = Ningún recipiente contenía nada medido a fin de { $name }, o fueron demasiados para seguirlos todos.
desk-held-at_the_end = Al final, { $what }
desk-held-of_it_measured = De ello medido
desk-held-known_to = Conocido a
desk-held-measured_anew_these_make_the = Medidos de nuevo, estos dan a conocer mejor el final.
desk-held-last_measured = Última medición
desk-held-only_what_came_in = solo lo que entró
desk-held-more_are_better_known = { $more } más se conocen mejor.
desk-held-of_what_stood_there = : ± de lo que había
desk-period-came_after_the_last_close = Llegó después del último cierre
desk-period-close_it = Cerrarlo
desk-period-was_closed_by_on_digest = { $month } lo cerró { $person } el { $when }, huella { $code }.
desk-period-the_rest_is_open = El resto está abierto.
desk-period-was_closed_with_questions_open =
    { $month } se cerró con { $count } { $count ->
        [one] pregunta abierta, leída
       *[other] preguntas abiertas, leída cada una
    } por { $person }
desk-period-what_came_to_light_after = Lo que salió a la luz tras el cierre. Las cifras de arriba quedan como se firmaron; la diferencia se ajusta en el primer mes abierto.
desk-period-without_adjustments_each_figure_in = Sin ajustes: cada cifra en el mes al que pertenece.
desk-period-came = Llegó
desk-period-period = Periodo { $name }
desk-periods-casks_by_year = Barricas por año
desk-periods-what_was_on_hand_at = Lo que había a fin de cada trimestre y mes, en { $what }.
desk-periods-part_closed = cerrado en parte
desk-periods-changed_since = cambiado desde entonces
desk-periods-tick_that_you_have_looked = Marcar que ha mirado las cifras, y después cerrar.
desk-periods-is_closed_what_comes_to = { $name } está cerrado. Lo que salga ahora a la luz se ajusta en el primer mes abierto.
desk-records-records = Registros, { $where }
desk-records-rules_change_check_todays_text = { $caution } Las normas cambian: comprobar el texto de hoy.
desk-records-record = Registro
desk-records-what_it_asks_for = Qué pide
desk-records-where_the_book_holds_it = Dónde lo tiene el libro
desk-records-not_held = No lo tiene
desk-records-when_keep = Cuándo: { $when }. Conservar: { $keep }.
desk-records-signed_by = Firma: { $sign }.
desk-records-source = Fuente: { $source }.
desk-records-eu = UE
desk-records-uk = R. Unido
desk-seasons-litres_of_pure_alcohol_at = Litros de alcohol puro a 20 °C
desk-seasons-from_fruit_to_spirit_in = De la fruta al destilado en una suma: con qué se cargaron los alambiques y dónde está. { $what }.
desk-seasons-no_fruit_has_come_and = Aún no ha llegado fruta ni ha destilado ningún alambique.
desk-seasons-season = Campaña { $name }
desk-seasons-of_the_wash = del fermentado
desk-seasons-l_of_pure_alcohol_from = L de alcohol puro de 100 kg
desk-seasons-of_fruit_what_a_ferment = { $l_per_100kg } { $what } de fruta. Lo que dio una fermentación y no tuvo ningún alambique está aún en los depósitos, o se fue con las lías.
desk-seasons-litres_gauged_not_litres_taxed = Litros aforados, no litros gravados
desk-seasons-gauged_not_taxed = Aforado, no gravado
desk-seasons-a_season_runs_twelve_months = { $what }. Una campaña dura doce meses desde julio; una casa al sur del ecuador pone su mes en los ajustes.
desk-seasons-made_by_fermentation = Hecho por fermentación
desk-seasons-hearts = Corazón
desk-seasons-heads = Cabezas
desk-seasons-feints_on_hand = Cabezas y colas en existencias
desk-seasons-stillage = Vinaza
desk-seasons-between_two_dips_of_low = Entre dos alturas de flemas
desk-seasons-found_by_gauges_after_collection = Hallado por aforos tras la recogida
desk-seasons-lost_out_of_the_stills = Perdido de los alambiques, según asiento
desk-seasons-on_a_still_now = Ahora en un alambique
desk-seasons-made_of_fruit = Hecho por fermentación de { $fruit } de fruta
desk-seasons-wash_charged = Fermentado cargado en { $runs } destilaciones
desk-runs_parts-in_out = Entra { $charged }, sale { $came }:
desk-runs_parts-not_accounted_for = { $open }{ $pure } ({ $share } %) sin justificar.
desk-runs_parts-more_than_went_in = { $open }{ $pure } ({ $share } %) más de lo que entró.
desk-runs_parts-stillage_was_not_read_taken = No se leyó la vinaza: se supone a { $stillage_pct } { $what }.
desk-runs_parts-plans = Planes
desk-runs_parts-low_look_at_fruit_ferment = bajo: mirar fruta, fermentación, balance
desk-runs_parts-high_look_at_weights_and = alto: mirar pesos y aforos
desk-runs_parts-in = entra
desk-runs_parts-out = sale
desk-beside-runs_beside_each_other = Destilaciones lado a lado
desk-beside-list_of_runs = lista de destilaciones
desk-beside-tick_two_to_runs_in = Marcar de dos a { $most } destilaciones en la { $link }.
desk-beside-still_began = Alambique, comienzo
desk-beside-charged = Cargado, { $what }
desk-beside-feints_in = Cabezas y colas dentro, { $what }
desk-beside-hearts_at = Corazón, { $what } a { $what2 }
desk-beside-hearts_share_of_the_charge = Corazón, parte de la carga
desk-beside-hearts_begin_at = El corazón empieza a
desk-beside-tails_begin_at = Las colas empiezan a
desk-beside-from_100_kg_l_pure = De 100 kg, L de alcohol puro
desk-beside-from_100_lb_proof_gal = De 100 lb, gal proof
desk-beside-over_alcohol = Grado real según el alcohol puro recogido
desk-feints-feints_by_fruit = Cabezas y colas por fruta
desk-feints-no_feints_yet_they_come = Aún no hay cabezas ni colas. Llegan con su aforo.
desk-feints-heads_and_tails_by_fruit = Cabezas y colas por fruta: lo apartado, lo que tuvieron destilaciones posteriores, lo destruido, lo que hay. Una destilación posterior puede ser de otra fruta: lo que tuvo cuenta para la fruta destilada.
desk-feints-heads_set_aside = Cabezas apartadas
desk-feints-tails_set_aside = Colas apartadas
desk-feints-used_in_its_runs = Usado en sus destilaciones
desk-feints-destroyed = Destruido
desk-feints-standing_is_by_what_was = Lo que hay va por lo último que se nombró en el recipiente. Un areómetro no ve el metanol: cabezas y colas se guardan por lo que dicen un laboratorio y la ley, no por su grado.
desk-plans-cut_plans_and_best_runs = Planes de cortes y mejores destilaciones
desk-plans-plan_for_any_still = Plan para cualquier alambique
desk-plans-for_one_still_log_it = { $link } Para un alambique, anotarlo en su hoja de destilación. Cuenta el último plan; decide la nariz.
desk-plans-no_plan_yet_and_no = Aún no hay plan ni destilación marcada como la mejor.
desk-plans-heads = Cabezas, { $what }
desk-plans-hearts_to = Corazón hasta, { $what }
desk-plans-tails_to = Colas hasta, { $what }
desk-plans-who_when = Quién, cuándo
desk-plans-blind_tasting = Cata a ciegas { $tasting }
desk-plans-best_runs = Mejores destilaciones
desk-run-balance = Balance
desk-run-on_from = { $what } { $batch } en { $link }, desde { $when }
desk-run-to = hasta { $when }
desk-run-charge = Carga { $volume_l }
desk-run-with = con { $lpa_l }{ $pure }
desk-run-it_is_known_to_by = Se conoce a { $uncertain } { $what }, por la clase de lo leído.
desk-run-usual_is_0_5_to = Lo habitual es de 0,5 a 2 %.
desk-run-from_of_wash_of_fruit = { $bold }, { $per_100_l } de { $what } de fermentado; { $kg } de fruta por su parte de la fermentación.
desk-run-l_from_100_kg = L de 100 kg
desk-run-flat_rate_for_in_germany = Tanto alzado de { $name }: { $de_l }{ $what } en Alemania
desk-run-in_austria = { $at_l } en Austria
desk-run-this_is_of_the_first = esto es { $of_flat_rate } del primero.
desk-run-plan = Plan:
desk-run-heads = cabezas { $heads_l };
desk-run-hearts_to = corazón hasta { $hearts_to_pct } { $what };
desk-run-tails_to = colas hasta { $tails_to_pct } { $what };
desk-run-blind_tasting = cata a ciegas { $tasting }
desk-run-resting_on = apoyado en { $link }
desk-run-best_run_of = Mejor destilación de { $what }
desk-run-why_it_is_the_best = Por qué es la mejor
desk-run-mark_as_the_best_run = Marcar como la mejor destilación de { $what }
desk-run-cuts_and_events = Cortes y sucesos
desk-run-event = Suceso
desk-run-receiver = Colector
desk-run-true = { $what } real
desk-run-logged = anotado { $typed_at }
desk-run-fractions = Fracciones
desk-run-none_gauged_yet = Aún ninguna aforada.
desk-run-fraction = Fracción
desk-run-glass = Alcohómetro
desk-run-spirit = Destilado { $what }
desk-run-vapour = Vapor { $what }
desk-run-dip = Altura, { $what }
desk-run-a_hydrometer_cannot_see_methanol = Un areómetro no ve el metanol. Aquí sin analizar: metanol, carbamato de etilo.
desk-run-l_pure_alcohol_from_100 = L de alcohol puro de 100 kg
desk-run-the_book_has_no_such = El libro no tiene esa destilación. Buscarla en la lista de destilaciones.
desk-run-marked_as_the_best_run = Marcada como la mejor destilación de { $what }.
desk-run-not_marked = No marcada:
desk-run-not_accounted_for = sin justificar
desk-run-this_still = este alambique
desk-run-true_strength_through = Grado real a lo largo de la destilación
desk-run-true_strength = grado real
desk-run-cut_logged = { $at }, anotado { $typed_at }
desk-runs-no_runs_yet_a_charge = Aún no hay destilaciones. La empieza una carga en un alambique.
desk-runs-beside_each_other = Lado a lado
desk-runs-tick_two_to = Marcar de dos a { $most }.
desk-runs-tick = Marcar
desk-runs-began = Empezó
desk-runs-charge = Carga, { $what }
desk-runs-cuts = Cortes
desk-runs-beside_others = { $name } junto a otras
desk-runs-best = mejor
desk-runs-tails =
    { $is_heads_cut ->
        [yes] corazón
       *[no] colas
    } { $at }
desk-runs-logged = (anotado { $typed_at })
desk-runs-at = a { $true_strength } { $what }
desk-runs-pure_alcohol_in_l = Alcohol puro que entra, L
desk-runs-proof_gal_in = Gal proof que entran
desk-yields-yield_of_each_ferment = Rendimiento de cada fermentación
desk-yields-yield_by_fruit_and_year = Rendimiento por fruta y año
desk-yields-no_yield_yet_it_needs = Aún no hay rendimiento. Hace falta fruta pesada, una carga de su fermentador, y corazón o flemas aforados.
desk-yields-what_each_ferment_gave_all = Lo que dio cada fermentación: todo lo que salió, menos las cabezas y colas que entraron. Los tantos alzados son medias prudentes sobre las que se calcula el impuesto, no objetivos; por debajo del 60 % o por encima del 150 % vale la pena mirar (práctica común). Los propios años de la casa dicen más.
desk-yields-first_run = Primera destilación
desk-yields-fruit_run = Fruta destilada, { $what }
desk-yields-wash_run = Fermentado destilado, { $what }
desk-yields-made = Hecho, { $what }
desk-yields-n100_kg = 100 kg
desk-yields-n100_lb = 100 lb
desk-yields-from = de { $what }
desk-yields-flat_rate_de = Tanto alzado DE
desk-yields-flat_rate_at = Tanto alzado AT
desk-yields-of_the_rate = Del tanto alzado
desk-yields-a_100_kg = por 100 kg
desk-yields-the_houses_own_years_from = Los años de la casa, de { $what }
desk-yields-ferment =
    { $yield } { $what }, { $ferments } { $ferments ->
        [one] fermentación
       *[other] fermentaciones
    }
desk-yields-where_the_flat_rates_come = De dónde salen los tantos alzados
desk-yields-check_them_against_the_order = Comprobarlos con la orden vigente antes de calcular nada con ellos.
desk-yields-proof_gallons_the_flat_rates = Galones proof; los tantos alzados como se publican, en litros de alcohol puro
desk-yields-austria = Austria
desk-yields-spread_in_handbooks = Dispersión en manuales
desk-yields-a_ferment = fermentación
desk-lines-the_whole_book = Todo el libro
desk-lines-find = Buscar
desk-lines-mark_lot_person_paper_no = marca, lote, persona, n.º de papel
desk-lines-what_answers = Qué coincide
desk-lines-find_in_the_book = Buscar en el libro
desk-lines-shown = { $many } mostrados. La flecha abajo lleva a ellos.
desk-lines-nothing_answers = No coincide nada.
desk-hits-all_that_answers_to = Todo lo que coincide con «{ $text }»
desk-hits-nothing_answers_to = Nada coincide con «{ $text }».
desk-search-the_index_of_older_entries = El índice de asientos antiguos aún se está haciendo. Lo anotado hace poco se encuentra; el resto sigue solo.
desk-search-everything_that_answers = Todo lo que coincide
desk-search-the_first_type_more_of = Los primeros { $most }: teclear algo más.
desk-search-more_of_these = Más de estos
desk-search-did_you_mean = ¿Quería decir
desk-search-list_of_entries = lista de asientos
desk-search-try_a_shorter_beginning_or = Probar un comienzo más corto, o una palabra menos. Los asientos sin palabras se encuentran por su recipiente, o en la { $link }. Lo que espera en un teléfono aún no está en el libro.
desk-search-type_the_beginning_of_a = Teclear el comienzo de una marca, una partida o lote, una destilación, un agricultor, el número de un papel, una persona, un instrumento, o una palabra de una observación. C6, c-006 y C 006 encuentran la misma barrica; los acentos no cuentan. También vale el número de un asiento en el libro.
desk-search-found_for = Hallado para «{ $text }»
desk-search-search = Buscar
desk-search-a_trace_goes_both_ways = Un rastreo va en ambos sentidos: de una botella, barrica o destilación hasta la fruta, y de una carga de fruta hasta cada botella.
desk-search-the_book_has_nothing_by = El libro no tiene nada con ese nombre. Probar una marca, una partida, el número de una caja o parte del nombre de un agricultor.
desk-search-that_answer_to =
    { $are_more ->
        [yes] Los primeros { $count }
       *[no] { $count }
    } que coinciden con «{ $text }»
desk-search-nothing_among = En { $group } nada coincide con «{ $text }».
desk-search-a_vessel = recipiente
desk-search-batches_and_lots = Partidas y lotes
desk-search-bottlings = Embotellados
desk-search-fruit_taken_in = Fruta recibida
desk-search-papers = Papeles
desk-search-entries_and_remarks = Asientos y observaciones
desk-search-put_right_since = rectificado después
desk-search-waits_for_an_answer = espera respuesta
desk-search-out_of_use = fuera de servicio
desk-search-since = desde { $since }
desk-search-no = { $day }, { $person }, n.º { $number }
desk-search-to = { $since } a { $until }
desk-search-to2 = hasta { $last }
desk-look-row = Fila { $number }, { $head_of }
desk-look-row2 = fila
desk-look-computed = calculado
desk-look-pure_alcohol_l = Alcohol puro, L{ $part }
desk-look-rows = { $name } · { $count } filas · { $code }
desk-look-look_again = Mirar otra vez
desk-look-nothing_is_in_the_book = Aún no hay nada en el libro.
desk-look-cell_is_a_formula_what =
    { $formulas ->
        [one] { $formulas } celda es una fórmula: se toma lo último que mostró.
       *[other] { $formulas } celdas son fórmulas: se toma lo último que mostraron.
    }
desk-look-read_them_so = Leerlas así
desk-look-which_column_is_which = Qué columna es cuál
desk-look-of_taken = { $count } de { $count2 } tomadas
desk-look-these_rows_are = Estas filas son
desk-look-not_said = no se dijo
desk-look-in = en { $unit }
desk-look-none_of_these = ninguna de estas
desk-look-more_rows_fit = { $count } filas más encajan
desk-look-rows_to = filas { $others } a { $others2 }
desk-look-what_does_not_fit_in = Qué no encaja, en palabras
desk-look-row3 = fila { $number }
desk-look-leave_row_out = Dejar fuera la fila { $number }
desk-look-more_put_these_right_first = { $more } más. Corregir antes estas, o en la hoja.
desk-look-rows_fit_they_bring = { $count } filas encajan. Traen
desk-look-l_of_pure_alcohol = { $bold } L de alcohol puro
desk-look-row_fit =
    { $count ->
        [one] { $count } fila encaja.
       *[other] { $count } filas encajan.
    }
desk-look-put_in_the_book = Poner { $put } en el libro
desk-look-the_book_has_all_of = El libro ya tiene todo esto. No hay nada que hacer.
desk-look-nothing_fits_yet = Aún no encaja nada.
desk-look-known_already = ya conocido
desk-look-does_not_fit = no encaja
desk-look-left_out = dejado fuera
desk-look-days_in_digits = Días en cifras
desk-look-days_were_read_as = Los días se leyeron como
desk-look-day_month_year = día, mes, año
desk-look-month_day_year = mes, día, año
desk-look-more_of = Más de { $title }
desk-start-moving_in = Mudanza
desk-start-copy_the_rows_with_their = Copiar las filas con sus encabezados en la hoja de cálculo, y pegarlas aquí.
desk-start-template_of_csv = Plantilla de { $title }, CSV
desk-start-sheets = Hojas
desk-start-a_file = Un archivo
desk-start-csv_xlsx_or_ods_with = CSV, XLSX u ODS, con un encabezado sobre cada columna, en cualquier orden. Un libro de cálculo puede contener varias tablas.
desk-start-or_pasted = O pegado
desk-start-nothing_is_written_before_you = No se escribe nada hasta que usted lo diga.
desk-start-templates = Plantillas
desk-start-all_in_one_workbook = Todas en un libro de cálculo
desk-start-needed_more_may_be_there = necesarias; puede haber { $count } más
desk-start-put_in_so_far = Puesto hasta ahora
desk-start-no_sheet_yet = Aún no hay hoja.
desk-start-no = N.º
desk-taken-why_it_is_taken_back = Por qué se retira
desk-taken-the_file = El archivo
desk-taken-another_sheet = Otra hoja
desk-taken-put_in_by_kept_as = Puesto por { $person }, { $when }. Se guarda como llegó, huella { $code }.
desk-taken-by = { $when } por { $back_by }: { $reason }
desk-taken-take_the_whole_sheet_back = Retirar la hoja entera
desk-taken-table = Tabla
desk-taken-row = Fila
desk-taken-which = Cuál
desk-taken-opening_stock = existencias iniciales
desk-taken-sheet = Hoja { $no }
desk-cautions-n20_to_30_vol = de 20 a 30 % vol
desk-cautions-n40_to_60_proof = de 40 a 60 proof
desk-cautions-n20_to_30_ml = de 20 a 30 mL
desk-cautions-about_1_fl_oz = 1 fl oz aproximadamente
desk-cautions-reduce_to_a_glass_and = Rebajar a { $what }, { $what2 } por copa, y escupir. Tres o cuatro series como máximo por sesión, agua y pan sin más entre medias, dos minutos de descanso. Nadie conduce ni trabaja en un alambique o una máquina después de catar. Las cabezas no se catan nunca: a lo sumo se huelen. Una cata nunca aclara qué hay en el destilado: metanol, ácido cianhídrico y carbamato de etilo no tienen un gusto que los delate. Van primero las reglas de la casa, la ley del lugar y un laboratorio acreditado.
desk-new-what_a_number_of_answers = Qué halla un número de respuestas
desk-new-triangle_three_glasses_one_is = Triangular: tres copas, una es la distinta. Dúo-trío: una está a la vista, ¿cuál de dos es igual? Pareja: ¿cuál tiene más de lo que se pregunta? Unilateral si de antemano se nombra A como respuesta. Ordenación: de tres a cinco muestras por orden.
desk-new-of_sample_in_words = De la muestra { $letter }, en palabras
desk-new-tasters = Catadores
desk-new-draw_the_codes_and_seal = Sortear los códigos y sellarlos
desk-new-a_triangle_at_a_risk = Una triangular con un riesgo del 5 %. Pocas respuestas solo hallan diferencias grandes.
desk-new-right_at_least = Aciertos, mínimo
desk-new-found_if_half_perceive_it = Hallado si la percibe la mitad
desk-new-found_four_times_in_five = Hallado cuatro de cinco veces desde
desk-new-who_perceive_it = { $what } % que la percibe
desk-new-set_out_a_blind_tasting = Preparar una cata a ciegas
desk-new-n64_to_60_vol = de 64 a 60 % vol
desk-new-n128_to_120_proof = de 128 a 120 proof
desk-tasting-how_often_guessing_alone_gives = Con qué frecuencia el puro azar da cada número de aciertos; esta cata dio { $right } de { $answers }.
desk-tasting-who_has_answered = Quién ha respondido
desk-tasting-serving_sheet = Hoja de servicio
desk-tasting-risk = { $bold } { $method }, riesgo { $alpha_pct } %
desk-tasting-served_at = servido a { $served }
desk-tasting-set_out_by_on = Preparada por { $person } el { $when }.
desk-tasting-what_follows_by = Qué se sigue, por { $person }: { $bold }
desk-tasting-answers_came_in_after_the =
    { $count } { $count ->
        [one] respuesta llegó
       *[other] respuestas llegaron
    } tras la apertura, anotadas antes según el reloj del teléfono: { $late }.
desk-tasting-bars_how_often_guessing_alone = Barras: con qué frecuencia el puro azar da tantos. La señal: esta cata.
desk-tasting-plan_a_cut_that_rests = Planear un corte apoyado en ella
desk-tasting-plan_a_vat_that_rests = Planear una mezcla apoyada en ella
desk-tasting-it_was_opened_on_and = Se abrió el { $when }, y no cuenta ninguna respuesta.
desk-tasting-letter = Letra
desk-tasting-sample = Muestra
desk-tasting-of_it = De ello
desk-tasting-rank_sum = Suma de rangos
desk-tasting-batch = partida { $name }
desk-tasting-run = destilación { $name }
desk-tasting-taster = Catador
desk-tasting-glasses = Copas
desk-tasting-named = Nombrada
desk-tasting-how_sure = Certeza
desk-tasting-what_gave_it_away = Qué la delató
desk-tasting-not =
    { $picked }, { $is_right ->
        [yes] acierto
       *[no] fallo
    }
desk-tasting-entry = asiento
desk-tasting-sealed_of_answers_are_in = Sellada: han llegado { $count } de { $count2 } respuestas
desk-tasting-which_code_holds_which_sample = Qué código lleva cada muestra solo lo sabe quien sirve. El asiento guarda el sello de la clave, para que nadie pueda cambiarla después.
desk-tasting-glasses_left_to_right = Copas, de izquierda a derecha
desk-tasting-tasters_answer_on_the_phone = Los catadores responden en el teléfono, en Cata a ciegas. Funciona sin cobertura.
desk-tasting-answers_that_are_not_in =
    { $are_in ->
        [yes] Han llegado todas las respuestas.
       *[no] Las respuestas que aún no han llegado no contarán.
    } Una vez abierta, queda abierta.
desk-tasting-what_follows_if_you_know = Qué se sigue, si ya lo sabe
desk-tasting-you_taste_in_this_one = En esta usted cata. Puede abrirla cuando haya llegado la última respuesta.
desk-tasting-blind_tasting = Cata a ciegas { $name }
desk-tasting-difference_found = diferencia hallada
desk-tasting-no_difference_shown = sin diferencia mostrada
desk-tasting-in = entra
desk-tasting-run2 = destilación { $run }, { $what }
desk-tasting-the_book_has_no_tasting = El libro no tiene ninguna cata de ese nombre. Buscarla en la lista de catas.
desk-tasting-you_taste_in_this_one2 = En esta usted cata. Podrá abrirla cuando haya llegado la última respuesta.
desk-tasting-its_key_is_not_in = Su clave no está en este libro: se sorteó después de la copia de seguridad de la que viene. Servirla de nuevo.
desk-tasting-this_sheet_says_which_sample = Esta hoja dice qué muestra está en cada copa: es para quien sirve, y no la ve ningún catador.
desk-tasting-not_said = no se dijo
desk-tasting-the_book_has_a_tasting = El libro ya tiene una cata de ese nombre. Dar otro a esta.
desk-tasting-the_codes_are_drawn_and = Los códigos están sorteados y sellados. El teléfono de cada catador los tiene con las próximas fichas.
desk-tasting-it_is_open_answers_from = Está abierta. Las respuestas desde ahora no cuentan.
desk-tasting-by_guessing_alone_so_many = Por puro azar salen tantos o más { $times_in } ({ $p_words }).
desk-tasting-by_chance_alone_the_rank = Por puro azar las sumas de rangos se separan tanto { $times_in } ({ $p_words }, { $how }; estadístico de Friedman { $friedman }).
desk-tasting-of_rank_sums_must_be = { $answers } de { $people }: las sumas de rangos tienen que separarse { $lsd } para contar.
desk-tasting-n1_time_in = 1 vez de cada { $min }
desk-tasting-named2 = nombrada { $named }
desk-tasting-no_difference_shown_that_is = Sin diferencia mostrada. Eso no prueba que sean iguales.
desk-tasting-were_needed = hacían falta { $needed }
desk-tasting-so_few_answers_cannot_show = tan pocas respuestas no pueden mostrar una diferencia con este riesgo
desk-tasting-can_find_nothing_at_a = { $answers } no pueden hallar nada con un riesgo del { $tasting } %.
desk-tasting-of_find_a_difference_four = { $answers } de { $people } hallan una diferencia cuatro de cada cinco veces si la percibe al menos { $share } de las respuestas; una menor se escapa fácilmente.
desk-tasting-the_order_is_more_than = El orden es más que azar. Se separan: { $pairs }.
desk-tasting-counted_out_over_all_orders = contado sobre todos los órdenes
desk-tasting-by_chi_square_which_is = por ji cuadrado, que se acerca con tantos
desk-tasting-it_speaks_of_these_people = Habla de estas personas, no de los bebedores en general.
desk-tasting-answers =
    { $many ->
        [one] { $many } respuesta
       *[other] { $many } respuestas
    }
desk-tasting-people =
    { $many ->
        [one] { $many } persona
       *[other] { $many } personas
    }
desk-tasting-times_in_10 = { $min } veces de cada 10
desk-tasting-p_below_0_0001 = p inferior a 0,0001
desk-tasting-they_can_be_told_apart = Se pueden distinguir.
desk-tasting-is_named_more_often = { $named } se nombra más veces.
desk-tasting-the_order_is_more_than2 = El orden es más que azar, pero no hay dos tan separadas como para decir cuáles.
desk-tasting-no_order_shown_that_is = Sin orden mostrado. Eso no prueba que sean iguales.
desk-tasting-of = { $right } de { $many } { $what }; { $needed }. { $says }
desk-tastings-set_out_a_tasting = Preparar una cata
desk-tastings-ask_one_question_before_pouring = Hacer una pregunta antes de servir. Nadie que cate sabe qué hay en cada copa; el libro cuenta lo que valen las respuestas. Las cabezas no se catan nunca.
desk-tastings-none_yet_set_one_out = Aún ninguna. Preparar una: dos muestras, una pregunta y quién cata.
desk-tastings-tasting = Cata
desk-tastings-question = Pregunta
desk-tastings-method = Método
desk-tastings-set_out = Preparada
desk-tastings-of = { $count } de { $count2 }
desk-tastings-nobody_answered = nadie respondió
desk-tastings-sealed = sellada
desk-asked-look_at_it = Mirarlo: { $title }
desk-asked-more_about_it = { $count } más sobre ello
desk-asked-all_questions_with_their_answers = Las { $owed } preguntas, con sus respuestas
desk-asked-answer_them = Responderlas
desk-asked-no_figure_waits_for_an = Ninguna cifra espera respuesta.
desk-asked-you = usted
desk-asked-it_stands = vale
desk-asked-the_last_answer_was_by = La última respuesta fue { $near }, de { $who }: { $verdict }
desk-asked-what_comes_in_out_of = Aquí estará lo que llegue fuera de intervalo.
desk-asked-all_answers = Todas las respuestas
desk-asked-look_at_it_on = Mirarlo: { $title } en { $mark }
desk-asked-struck = tachado
desk-house-pure_alcohol_year_by_year = Alcohol puro año por año
desk-house-the_house_holds = La casa tiene
desk-house-litres_of_pure_alcohol = litros de alcohol puro
desk-house-by_the_book_at = { $what }, según el libro a las { $minute }
desk-house-less_than_on =
    { $more } { $is_more ->
        [yes] más
       *[no] menos
    } que el { $since }
desk-house-pure_alcohol_by_spirit = Alcohol puro por destilado
desk-house-oldest = más antiguo
desk-house-others = { $many } otros
desk-house-wash_and_runs_under_way = fermentado y destilaciones en marcha
desk-house-at_the_ends_of_months = A fin de mes, como se sabe ahora: todo, y lo que está en almacenamiento.
desk-house-year_by_year = Año por año
desk-house-in_storage = en almacenamiento
desk-house-in_processing = en elaboración
desk-house-in_production = en producción
desk-house-season = Campaña { $season }
desk-house-fruit_in = fruta recibida
desk-house-made = hecho
desk-house-left = salido
desk-house-lost = perdido
desk-house-pure_alcohol_in_the_house = Alcohol puro en la casa
desk-house-all = todos
desk-line-as_typed_likely_expected = { $part } como se tecleó { $part2 } probable { $part3 } esperado
desk-line-the_day_on_a_line = El día en una línea
desk-line-cleaned = limpio
desk-line-off = fin { $at }
desk-line-reached = alcanzado: primero la nariz
desk-line-too_little = aún pocas lecturas
desk-line-working = calculándose
desk-line-cut_to = cortar a { $part }
desk-line-end = fin
desk-line-end_of_run = fin de la destilación
desk-line-span = de { $low } a { $high }
desk-line-cleaned_at = limpio { $at }, { $person }
desk-line-off_since = { $run } acabó a las { $at }
desk-line-since = { $run }: { $part } desde { $at }
desk-line-nothing = hoy nada
desk-line-by_plan = según el plan
desk-line-as_last = como la última vez
desk-line-was_expected = se esperaba: { $what }, hacia { $at }, { $by }: leer ahora, primero la nariz
desk-line-expected = { $what } hacia { $at }, entre { $low } y { $high }, { $by }
desk-line-is_reached = alcanzado: { $what }, { $by }: primero la nariz
desk-line-is_working = calculándose: { $what }; abrir otra vez la página
desk-line-is_unknown = pocas lecturas para decir cuándo llega: { $what }
desk-lists-phones_backup_and_book = Teléfonos, copia y libro
desk-lists-near_their_end = Cerca del fin
desk-lists-all_ferments = Todas las fermentaciones
desk-lists-no_ferment_says_yet_when = Ninguna fermentación dice aún cuándo acaba. { $link }
desk-lists-the_days_are_meant_to = Los días deben acertar cuatro de cada cinco veces; deciden tres densidades iguales. { $link }
desk-lists-nothing_is_due = Nada pendiente.
desk-lists-since_you_were_last_here = Desde su última visita, { $near }
desk-lists-nothing_has_come_in = No ha llegado nada.
desk-lists-entries_of =
    { $entries ->
        [one] asiento
       *[other] asientos
    } de { $count }
desk-lists-read_them = Leerlas
desk-lists-never_heard_yet = aún sin noticia
desk-lists-since_what_it_holds_is = desde { $near }. Lo que guarda no está aquí.
desk-lists-more_phones =
    { $more_phones } { $more_phones ->
        [one] teléfono
       *[other] teléfonos
    } más
desk-lists-book = Libro
desk-lists-entries =
    { $bold } { $what } { $entries ->
        [one] asiento
       *[other] asientos
    }
desk-lists-misses = le faltan { $count }
desk-lists-silent = sin noticias
desk-lists-heard = oída
desk-lists-being_judged_anew = juzgándose de nuevo
desk-lists-judged = juzgado
desk-lists-every_entry_by_the_rules = cada asiento con las reglas y límites de ahora
desk-today-today = Hoy – { $name }
desk-today-owed_an_answer = Espera respuesta
desk-trace_parts-and_more_all_are_in = y { $more } más: todos están en el archivo
desk-trace_parts-and_more_all_are_in2 = y { $count } más: todos están en el archivo
desk-trace-print_the_passport = Imprimir el pasaporte
desk-trace-load_of_fruit = Carga de fruta
desk-trace-words = { $bold }{ $pure } { $what2 }
desk-trace-its_entry = Su asiento
desk-trace-the_run = La destilación
desk-trace-the_vessel = El recipiente
desk-trace-lot_mark = Marca de lote
desk-trace-none_of_it_is_in = Según el libro, nada de ello está en botellas.
desk-trace-no_case_of_it_has = Según el libro, no ha salido ninguna caja.
desk-trace-not_accounted_for_yet = aún sin justificar
desk-trace-by_mass = en masa
desk-trace-tasted_blind = Catado a ciegas
desk-trace-nothing_has_moved_into_it = Aún no ha entrado ni salido nada.
desk-trace-every_vessel_and_run_is = Cada recipiente y destilación se toma como bien mezclado: lo que sale contiene todo lo que entró antes, cada cosa por su parte de alcohol puro. El alcohol de una fermentación se reparte entre sus cargas por su masa. Un aforo cambia cuánto hay, no qué es.
desk-trace-made_of = Hecho de
desk-trace-picture = { $head }: { $name }. La lista bajo la imagen dice lo mismo en palabras.
desk-trace-from_before_this_book = De antes de este libro
desk-trace-received_from_elsewhere = Recibido de fuera
desk-trace-not_on_record = Sin registrar
desk-trace-no_fruit_on_record = Sin fruta registrada
desk-trace-not_followed = Sin seguir
desk-trace-ferments = Fermentaciones
desk-trace-receivers = Colectores
desk-trace-cans = Bidones
desk-trace-stills = Alambiques
desk-trace-tanks = Depósitos
desk-trace-vats = Mezclas
desk-trace-between_sites = Entre centros
desk-trace-bottlings = Embotellados
desk-trace-bottles_between_sites = Botellas entre centros
desk-trace-received_in_bottles = Recibido en botellas
desk-trace-gone = Salido
desk-trace-trace_of = Rastreo de { $name }
desk-trace-the_book_has_nothing_to = El libro no tiene nada que rastrear con ese nombre. Buscarlo con la búsqueda de la página de rastreo.
desk-trace-under_0_1 = menos de 0,1 %
desk-trace-origin = Origen
desk-trace-bottles_losses = Botellas, pérdidas
desk-trace-others = { $count } otros
desk-dips-strapping_table = Tabla de aforo
desk-dips-paste_the_two_columns_of = Pegar las dos columnas de la hoja de la tabla: la lectura y después el volumen, con punto y coma, tabulador o espacio entre medias. De una línea a la siguiente el volumen sigue una recta.
desk-dips-dimensions_of_a_cask = Dimensiones de una barrica
desk-dips-inside_without_the_wood_by = Por dentro, sin la madera. Con ellas el volumen es una estimación, con un error de un 3 % de la barrica llena; una barrica pesada se conoce diez veces mejor.
desk-dips-dips_of = Alturas de { $mark }
desk-dips-has_its_litres_estimated_from = tiene sus litros estimados por { $by }, según sus dimensiones: { $sizes } cm, { $how }.
desk-dips-how_its_litres_follow_from = Cómo salen sus litros de una altura
desk-dips-what_is_measured = Qué se mide
desk-dips-table_a_line_of_dip = Tabla: una línea por cada altura y volumen
desk-dips-lengths_in = Longitudes en
desk-dips-volumes_in = Volúmenes en
desk-dips-shell = Pared
desk-dips-the_table_holds_at = La tabla vale a
desk-dips-temperature_in = Temperatura en
desk-dips-tilt_add_to_each_reading = Inclinación: sumar a cada lectura [mm]
desk-dips-diameter_at_the_bung_inside = Diámetro en el tapón, por dentro
desk-dips-diameter_of_a_head_inside = Diámetro de un fondo, por dentro
desk-dips-length_from_head_to_head = Longitud de fondo a fondo, por dentro
desk-dips-the_cask = La barrica
desk-dips-is_not_dipped_by_the = no se mide por altura en el libro: se teclean los litros.
desk-dips-has_its_litres_from_its = tiene sus litros por { $by }, según una tabla de { $count } líneas: de { $brief } a { $brief2 } cm, de { $brief3 } a { $brief4 } L.
desk-dips-by_a_strapping_table = según una tabla de aforo
desk-dips-by_the_dimensions_of_a = según las dimensiones de una barrica, una estimación
desk-dips-not_at_all_litres_are = nada: se teclean los litros
desk-dips-dip_from_the_bottom_up = altura: desde el fondo hacia arriba
desk-dips-ullage_from_the_top_down = vacío: desde arriba hacia abajo
desk-dips-stainless_steel_48_10_6 = acero inoxidable, 48·10⁻⁶ por °C
desk-dips-mild_steel_36_10_6 = acero dulce, 36·10⁻⁶ por °C
desk-dips-other_no_correction = otra: sin corrección
desk-edit-an_entry_of_put_it = Un asiento de { $when } lo puso en { $bold }: allí está, diga lo que diga esta página. Para trasladarlo, anotar que se trasladó.
desk-edit-change = Cambiar { $mark }
desk-labels-labels = Etiquetas
desk-labels-without_a_place = sin lugar
desk-labels-every_vessel_here_has_its = Aquí todos los recipientes tienen su etiqueta.
desk-labels-every_label_that_was_printed = Cada etiqueta impresa aquí sigue diciendo lo que dice el libro.
desk-labels-print_those_ticked = Imprimir las marcadas
desk-labels-print_all_of_this_list = Imprimir { $what } de esta lista
desk-labels-print_at_full_size_not = Imprimir a tamaño real, sin ajustar a la página; la regla de la hoja tiene que medir 50 mm.
desk-labels-the_first_of_are_shown = Se muestran los primeros { $count } de { $count2 }.
desk-labels-label = Etiqueta
desk-labels-own_size = Tamaño propio
desk-labels-printed = impresa { $when }
desk-labels-printed_is_what_was_sent = Impreso es lo que se mandó imprimir desde esta página. Sin etiqueta están los recipientes cuya etiqueta ni se imprimió aquí ni se escaneó nunca.
desk-labels-says_something_else_by_now = ya dice otra cosa
desk-labels-tick_at_least_one_vessel = Marcar al menos un recipiente, y elegir en qué se imprimen las etiquetas.
desk-vessel-twice_the_standard_uncertainty_by = El doble de la incertidumbre típica, por la clase de los instrumentos de su último aforo y de lo trasladado desde entonces.
desk-vessel-dips = Alturas
desk-vessel-since = desde { $when }
desk-vessel-tare = tara { $tare_kg }
desk-vessel-inside_a_fire_zone = dentro de zona de fuego
desk-vessel-dipped_by_a_table =
    { $is_dips ->
        [yes] estimado por sus dimensiones
       *[no] medido con una tabla
    }
desk-vessel-holds = Contiene { $holding }
desk-vessel-a_run_is_under_way = Hay una destilación en marcha
desk-vessel-since2 = { $link } desde { $when }.
desk-vessel-no_entries_yet_scan_its = Aún no hay asientos. Escanear su etiqueta en la planta y anotar el primero.
desk-vessel-all_its_entries = Todos sus asientos
desk-vessel-the_book_knows_no_vessel = El libro no conoce ningún recipiente { $mark }. Buscarlo en la lista de recipientes.
desk-vessel-there_is_a_vessel_already = Ya hay un recipiente { $mark }. Elegir otro código, o cambiar ese.
desk-vessel-is_in_the_book = { $made } está en el libro.
desk-vessels-find_vessels = Buscar recipientes
desk-vessels-add_the_first_then_print = Añadir el primero; después imprimir su etiqueta.
desk-vessels-capacity = Capacidad, { $what }
access-again-your_password_again_cellarslate = Otra vez su contraseña – Cellarslate
access-again-is_it_still_you = ¿Sigue siendo usted?
access-again-this_cannot_be_taken_back = { $name }, esto no se puede deshacer, o saca datos de la casa. Mostrar otra vez que es usted; vale { $minutes } minutos.
access-again-go_on = Seguir
access-again-use_a_passkey = Usar una llave de acceso
access-again-that_is_not_your_password = No es su contraseña. Teclearla otra vez.
access-error-not_done_cellarslate = No hecho – Cellarslate
access-error-not_done = No hecho
access-error-to_the_sites = A los centros
access-error-to_the_desk = A la oficina
access-error-this_could_not_be_read = No se pudo leer. Volver, mirar lo tecleado y enviarlo otra vez.
access-error-you_may_not_do_this = Aquí no puede hacer esto. Preguntar en la oficina.
access-error-there_is_nothing_at_this = En esta dirección no hay nada. Volver y elegir en la lista.
access-error-this_address_does_not_take = Esta dirección no admite eso. Volver y usar el botón de la página.
access-error-this_is_too_large_send = Es demasiado grande. Enviar menos de una vez.
access-error-send_json_with_content_type = Enviar JSON, con Content-Type: application/json.
access-error-too_many_tries_wait_a = Demasiados intentos. Esperar un minuto y reintentar.
access-error-the_book_stumbled_nothing_handed = El libro tropezó. No se perdió nada de lo entregado; reintentar, y avisar a quien lleva el servidor.
access-error-the_book_is_busy_try = El libro está ocupado. Reintentar dentro de un momento.
access-error-this_page_was_open_too = Esta página estuvo abierta demasiado tiempo, o desde antes de iniciar sesión. Volver, cargarla y enviarla otra vez.
access-error-this_was_not_sent_from = No se envió desde una de nuestras páginas. Abrir otra vez la página y enviarlo desde allí.
access-error-this_needs_the_role_ask = Hace falta la función { $access }. Preguntar en la oficina.
access-error-this_phone_is_not_let = Este teléfono no está admitido. Abrir en él el código de un solo uso de la oficina; no se pierde nada.
access-invitation-your_password_cellarslate = Su contraseña – Cellarslate
access-invitation-choose_your_password = { $name }, elija su contraseña
access-invitation-lets_you_in = { $site } le admite.
access-invitation-you_are_let_in = Está admitido.
access-invitation-your_short_code_is_nobody = { $who } Su código corto es { $bold }. Nadie más que usted sabe la contraseña: la oficina no puede leerla, solo invitarle otra vez.
access-invitation-ten_characters_at_least_four = Diez caracteres al menos. Son buenas cuatro palabras que nadie juntaría; un nombre, una fecha y «contraseña» no lo son.
access-invitation-set_it_and_sign_in = Ponerla e iniciar sesión
access-invitation-this_invitation_was_used_has = Esta invitación se usó, terminó o se sustituyó. Pedir otra en la oficina.
access-set_up-set_up_cellarslate = Puesta en marcha – Cellarslate
access-set_up-the_house_first_then_you =
    { $is_group ->
        [yes] Primero el nombre del grupo
       *[no] Primero la casa
    }, después usted. A los demás puede admitirlos luego.
access-set_up-a_new_group = Un grupo nuevo
access-set_up-a_new_book = Un libro nuevo
access-set_up-open_the_book = Abrir el libro
access-sign_in-sign_in_cellarslate = Iniciar sesión – Cellarslate
access-sign_in-sign_in_to_the_desk =
    Iniciar sesión en { $is_group ->
        [yes] el grupo
       *[no] la oficina
    }
access-sign_in-sign_in = Iniciar sesión
access-sign_in-sign_in_with_a_passkey = Iniciar sesión con llave de acceso
access-sign_in-on_the_floor_no_sign = En la planta no hace falta iniciar sesión: la oficina admite el teléfono una vez, con un código para escanear.
access-sign_in-no_such_code = no existe ese código
access-sign_in-too_many_tries_wait_s = Demasiados intentos. Esperar { $wait_s } s.
access-sign_in-this_server_has_no_authority = Este servidor no tiene autoridad propia: funciona sin TLS, o con un certificado que usted le dio.
access-sign_in-code_or_password_is_wrong = Código o contraseña mal. Teclearlos otra vez.
access-sign_in-that_is_not_the_code = No es el código que imprimió el servidor al arrancar. Teclearlo otra vez.
access-trust-let_this_phone_trust_the = Que este teléfono confíe en la casa – Cellarslate
access-trust-let_this_phone_trust_the2 = Que este teléfono confíe en la casa
access-trust-this_server_needs_no_certificate = Este servidor no necesita certificado en el teléfono: funciona solo en este ordenador, o tiene un certificado propio.
access-trust-once_on_each_phone_after = Una vez en cada teléfono. Después el registro de planta se abre sin aviso y funciona sin cobertura.
access-trust-iphone_or_ipad = iPhone o iPad
access-trust-most_often_it_is_installed = Casi siempre está instalado, pero el interruptor no está activado: Ajustes, General, Información, Ajustes de confianza de los certificados. Si no hay interruptor, el perfil no se instaló: volver un paso.
access-trust-android_phone = Teléfono Android
access-trust-most_often_it_was_filed = Casi siempre se guardó como certificado Wi-Fi, o para VPN y aplicaciones, donde no mira ningún navegador. Buscar en Ajustes «certificado de CA» e instalar allí el mismo archivo.
access-trust-windows = Windows
access-trust-it_may_have_been_placed = Puede que se colocara en otro sitio: elegir usted el almacén, Entidades de certificación raíz de confianza.
access-trust-mac = Mac
access-trust-taken_but_not_set_to = Tomado, pero sin poner «Confiar siempre»: es lo que falta casi siempre.
access-trust-linux_another = Linux, otro
access-trust-it_may_have_been_imported = Puede que se importara sin la marca que confía en él para sitios web.
access-trust-in_safari_fetch_the_profile = En Safari, traer el perfil y tocar Permitir. Otros navegadores de este teléfono no pueden tomarlo.
access-trust-soon_after_open_settings_near = Poco después, abrir Ajustes. Cerca del principio está Perfil descargado (si no: General, VPN y gestión de dispositivos). Abrirlo, tocar Instalar, e instalarlo.
access-trust-settings_general_about_at_the = Ajustes, General, Información, al final del todo Ajustes de confianza de los certificados: activar Cellarslate local authority. Instalar solo no basta.
access-trust-fetch_the_certificate_the_phone = Traer el certificado. El teléfono lo guarda entre sus descargas.
access-trust-open_settings_and_search_for = Abrir Ajustes y buscar: certificado de CA. (Seguridad, Cifrado y credenciales, Instalar un certificado, Certificado de CA.) Tocar Instalar de todas formas. Un teléfono sin bloqueo de pantalla pide ponerlo antes.
access-trust-choose_the_file_cellarslate_crt = Elegir el archivo cellarslate.crt entre las descargas. Queda un aviso de que la red puede estar vigilada; habla de este certificado.
access-trust-fetch_the_certificate_and_open = Traer el certificado y abrir el archivo.
access-trust-install_certificate_current_user_p = Instalar certificado, Usuario actual, colocar todos en: Entidades de certificación raíz de confianza.
access-trust-close_all_windows_of_the = Cerrar todas las ventanas del navegador y abrir otra vez esta página.
access-trust-fetch_the_certificate_and_open2 = Traer el certificado y abrir el archivo; lo toma Acceso a Llaveros.
access-trust-in_keychain_access_open_cellarslat = En Acceso a Llaveros abrir Cellarslate local authority, Confiar, y ponerlo en Confiar siempre.
access-trust-fetch_the_certificate = Traer el certificado.
access-trust-in_the_browser_settings_search = En el navegador: Ajustes, buscar: certificados. Importarlo en Autoridades; confiar en él para sitios web.
access-trust-go_on_this_phone_is = Seguir: admitir este teléfono
access-trust-open_the_floor_log = Abrir el registro de planta
door-frame-this_is_the_demo_is = Esto es la demostración. { $name } es inventada, y también todo lo que hay en su libro.{ $break_ }Rompa lo que quiera: { $code } la prepara de nuevo.
door-front-doors = Puertas
door-front-the_slate_by_the_still = La pizarra junto al alambique, y el libro en que acaba.
door-front-three_doors_into_the_same = Tres puertas a la misma casa, el { $now }.
door-front-a_run_of_is_on = Hay una destilación de { $what } en marcha.
door-front-for_an_answer =
    { $asked ->
        [one] { $asked } cifra espera
       *[other] { $asked } cifras esperan
    } respuesta.
door-front-the_demo_was_laid_on = La demostración se preparó otro día, así que su destilación y sus fermentaciones son de ese día. Pararla y arrancarla con { $code } para prepararla para hoy.
door-front-the_desk = La oficina
door-front-you_are_see_what_the = Usted es { $name }, { $role }. Ver qué pregunta el libro, rectificar un desliz, rastrear una botella, cerrar un mes.
door-front-lines_of_a_year_and = { $what } líneas de año y medio
door-front-sit_down_at_the_desk = Sentarse en la oficina
door-front-a_phone_in_this_browser = Un teléfono, en este navegador
door-front-you_are_the_same_keys = Usted es { $name }, { $role }. Las mismas teclas y palabras que en la planta; corte la cobertura si quiere.
door-front-the_run_of_is_in = La destilación de { $still } está en su mano
door-front-what_you_log_waits_on = Lo que se anota espera en su pizarra
door-front-it_can_scan_the_labels = Puede escanear las etiquetas de abajo
door-front-the_signal_is_cut_for = La cobertura está cortada para el teléfono de este navegador hasta { $clock }.
door-front-open_a_phone_here = Abrir aquí un teléfono
door-front-your_own_phone = Su propio teléfono
door-front-hold_its_camera_to_this = Ponga su cámara ante este cuadrado, en la misma red inalámbrica. Aprende a confiar en este ordenador y se abre como { $name }, { $role }. Sin tienda, sin cuenta.
door-front-or_type = o teclear{ $break_ }{ $bold }
door-front-afterwards_take_the_certificate_of = Después quite otra vez el certificado del teléfono; es propio de la demostración.
door-front-phones_work_without_signal_only = Los teléfonos solo funcionan sin cobertura si confían en el servidor, así que esta puerta se abre por TLS. Parar la demostración y arrancarla otra vez:
door-front-then_a_square_stands_here = Entonces aparece aquí un cuadrado para el teléfono, y se abre como { $name }, { $role }.
door-front-more_of_them_large = Más, en grande
door-front-scan_them_with_the_phones = Escanearlas con la página del teléfono, en Escanear. ¿Sin cámara? Teclear allí la marca: su último carácter comprueba los demás, y así se ve una equivocada.
door-front-five_things_to_try = Cinco cosas que probar
door-front-min = { $minutes } min
door-front-everything_here_is_kept_on = Aquí todo se guarda en este ordenador, y quien alcance esta página puede entrar. No es lugar para cifras de una casa de verdad: empiece un libro propio con { $code }.
door-front-the_demo_cellarslate = La demostración · Cellarslate
door-front-stops_wait =
    { $stops ->
        [one] { $stops } alto espera
       *[other] { $stops } altos esperan
    }
door-front-more_are_asked =
    { $asked ->
        [one] { $asked } pregunta más
       *[other] { $asked } preguntas más
    }
door-front-put_the_signal_back = Devolver la cobertura
door-front-cut_its_signal = Cortar su cobertura
door-join-this_phone_joins = Este teléfono se une a { $name }
door-join-you_are_the_phone_is = Usted es { $name }, { $role }. El teléfono se admite, trae lo que hay en cada recipiente y desde entonces funciona sin cobertura.
door-join-near_an_open_spirit_safe = Cerca de una caja de aforo abierta un teléfono es una fuente de ignición, salvo que esté homologado para ese lugar. La demostración se puede probar en cualquier otro sitio.
door-join-this_phone_joins_the_demo = Este teléfono se une a la demostración · Cellarslate
door-labels-on_the_phone_open_scan = En el teléfono abrir Escanear y ponerlo a un palmo de una de ellas. Se abre su recipiente, con cobertura y sin ella.
door-labels-labels_of_the_demo_cellarslate = Etiquetas de la demostración · Cellarslate
door-phone-takes_the_phone = { $name } toma el teléfono
door-phone-it_is_let_in_and = Se admite, y trae lo que hay en cada recipiente.
door-phone-the_slate_is_kept_by = La pizarra funciona con script, y este navegador no ejecuta ninguno. La oficina funciona sin él.
door-phone-a_phone_is_let_in = Se admite un teléfono · Cellarslate
door-phone-keeps_pages = Guarda sus páginas, para no necesitar cobertura.
door-phone-not_let_in = No se admitió. { $why }
group-people-who_may_sign_in_here = Quién puede iniciar sesión aquí. Las personas de los centros no se copian: inician sesión en el suyo.
group-people-an_invitation_shown_this_once = Una invitación, mostrada solo esta vez
group-people-good_once_within_days_whoever = Vale una vez, antes de { $days } días. Quien la abra pone la contraseña; entregarla en persona.
group-people-no_longer_here = ya no está aquí
group-people-no_password_yet = aún sin contraseña
group-people-add_or_change_somebody = Añadir o cambiar a alguien
group-people-look = mirar
group-people-let_sites_in_and_decide = admitir centros y decidir
group-people-no_longer_here2 = Ya no está aquí
group-people-make_an_invitation_to_set = Crear invitación para poner contraseña
group-people-save = Guardar
group-people-lets_sites_in_decides = admite centros, decide
group-people-short_code = Código corto
group-people-looks = mira
group-period-of_sites_have_closed_it = { $closed } de { $count } centros lo han cerrado. La suma es de lo que se sabe ahora; lo que fue de centro a centro no es ganancia ni pérdida del grupo.
group-period-sum = Suma
group-period-between_sites = Entre centros
group-period-sent_l = Enviado, L
group-period-declared_there_l = Declarado allí, L
group-period-difference = Diferencia
group-period-pure_alcohol_at_20_c = Alcohol puro a 20 °C. Lo que faltó en el centro receptor está en su propia cuenta, como perdido en el camino.
group-period-more_has_come_to_light = después salió más a la luz, y está en las cifras de abajo
group-period-part_closed = Cerrado en parte.
group-period-this_site_has_nothing_in = Este centro no tiene nada en él.
group-period-all_sites = , todos los centros
group-period-in_bulk = a granel
group-period-bottles = botellas, { $goods }
group-period-sent_to_sites_of_the = enviado a centros del grupo
group-period-received_from_sites_of_the = recibido de centros del grupo
group-period-left_a_site = salió de un centro
group-period-received_at_a_site = recibido en un centro
group-period-declared_above_what_was_sent = declarado por encima de lo enviado
group-period-declared_below_what_was_sent = declarado por debajo de lo enviado
group-period-on_the_way_between_sites = En camino entre centros
group-periods-what_all_sites_had_on = Lo que tenían todos los centros a fin de cada trimestre y mes, como se sabe ahora, en litros de alcohol puro a 20 °C. Los meses de cada centro van por su reloj.
group-periods-closed_at = Cerrado a
group-periods-all_sites = Todos los centros
group-periods-on_the_way = En camino
group-periods-of = { $closed } de { $count }
group-sites-let_a_site_in = Admitir un centro
group-sites-on_the_sites_computer_once = En el ordenador del centro, una vez, antes de un día:
group-sites-name_of_the_site = Nombre del centro
group-sites-make_a_code_for_a = Crear código para un centro nuevo
group-sites-entries_here = Asientos aquí
group-sites-of = de { $head_no }
group-sites-last_7_days = Últimos 7 días
group-sites-stock_and_trace = Existencias y rastreo
group-sites-stopped = parado
group-sites-up_to_date = al día
group-sites-to_number = hasta el número { $folded_no }
group-sites-chain = Cadena
group-sites-broken = roto
group-sites-whole_to = entera hasta { $checked_no }, { $when }
group-sites-not_walked_yet = aún sin recorrer
group-sites-its_computer_is_lost_or = Su ordenador se ha perdido, o es nuevo
group-sites-shut_it_out_then_make = Excluirlo y después crear un código nuevo. Lo que entregó se queda.
group-sites-shut_out = Excluir { $name }
group-sites-which_book_counts = { $name }: ¿qué libro cuenta?
group-sites-from_number_on_the_sites = Desde el número { $fork_no }, el libro del centro ya no es el que se entregó antes: se restauró de una copia anterior, o se copió. Se guardan ambos. Aquí cuenta el primero, hasta el número { $cursor }; el otro llega a { $cursor2 }.
group-sites-of_the_first_are_not = del primero no están en el otro.
group-sites-every_entry_of_the_first = Cada asiento del primero está también en el otro.
group-sites-ask_the_site_before_you = Preguntar al centro antes de elegir.
group-sites-the_sites_present_book_counts = Cuenta el libro actual del centro
group-sites-kept_aside = { $aside } apartados.
group-sites-papers_that_look_alike = Papeles que se parecen
group-sites-a_receipt_has_the_number = Una recepción tiene el número de la salida de otro centro, pero ninguna nombra al otro centro, o las botellas son de otra partida. No se unen. Si son lo mismo, rectificar el asiento para que nombre el centro o la partida.
group-sites-received_at = Recibido en
group-sites-from_batch_as_typed = De, partida, como se tecleó
group-sites-same_number_sent_by = Mismo número enviado por
group-sites-sites = Centros
group-sites-chain_broken = cadena rota
group-sites-fold_stopped = cálculo parado
group-sites-two_books = dos libros
group-sites-to_come = por venir
group-sites-entries = asientos
group-trace-in_bottles = en botellas
group-trace-pure_alcohol = { $bold } alcohol puro { $what }
group-trace-site_cases_lot_mark = Centro, cajas, marca de lote
group-trace-bottles_received_from_another_site = Las botellas recibidas de otro centro figuran allí otra vez: están entre las del centro que las llenó.
group-trace-to_whom = A quién
group-trace-site_what = Centro, qué
group-trace-and_more = y { $more } más
group-trace-sites_are_joined_by_the = Los centros se unen por el número del papel de una salida, si la recepción lo nombra y un lado nombra al otro; las botellas, también por su partida o marca de lote. Lo que está en camino figura entre ellos.
group-trace-trace_of = Rastreo de { $name }
group-trace-from_to = de { $sender } a { $receiver }
group-trace-declared = declarado { $differs }
group-trace-document = documento { $document }
group-trace_search-a_trace_goes_both_ways = Un rastreo va en ambos sentidos y cruza de centro: de una botella hasta la fruta en cualquier centro, y de una carga de fruta hasta cada botella.
group-trace_search-no_site_has_anything_by = Ningún centro tiene nada con ese nombre. Probar una marca, una partida, el número de una caja o parte del nombre de un agricultor.
desk-weight-stop = alto
desk-weight-ask = pregunta
desk-weight-note = nota
desk-weight-entered = anotado
desk-weight-waiting = en espera
desk-sort-fermenter = fermentador
desk-sort-still = alambique
desk-sort-receiver = colector
desk-sort-tank = depósito
desk-sort-cask = barrica
desk-sort-can = bidón
desk-sort-place = lugar
desk-forms-it_stands = Vale
desk-forms-strike = Tachar
desk-forms-the_site = el centro
desk-forms-a_sort_of_vessel = una clase de recipiente
desk-forms-a_material = una materia
desk-forms-one_vessel = un recipiente
desk-forms-a_product = un producto
desk-forms-production_storage_processing_us = producción, almacenamiento, elaboración (EE. UU.)
desk-forms-one_excise_warehouse = un solo depósito fiscal
desk-forms-floor_log_and_look = planta: anotar y mirar
desk-forms-distiller_also_answer_and_amend = destilador: además responder y rectificar
desk-forms-office_all = oficina: todo
desk-forms-code = Código
desk-forms-what_it_is = Qué es
desk-forms-capacity_l = Capacidad [L]
desk-forms-working_level_l = Nivel de trabajo [L]
desk-forms-tare_kg = Tara [kg]
desk-forms-wood = Madera
desk-forms-toast_or_char = Tostado o carbonizado
desk-forms-stands_inside_a_fire_zone = Está dentro de zona de fuego
desk-forms-label_goes_on_a_curve = La etiqueta va en una curva (solo la marca)
desk-forms-note = Nota
desk-forms-out_of_use = Fuera de servicio
desk-forms-for = Para
desk-forms-which = Cuál
desk-forms-kind_and_field = Clase y campo
desk-forms-usual_from = Habitual desde
desk-forms-usual_to = Habitual hasta
desk-forms-possible_from = Posible desde
desk-forms-possible_to = Posible hasta
desk-forms-limit = Límite
desk-forms-figure = Cifra
desk-forms-short_code = Código corto
desk-forms-trade_roles_the_usual_one = Funciones en el oficio, primero la habitual
desk-forms-floor_code_4_to_8 = Código de planta (de 4 a 8 cifras; vacío conserva el anterior)
desk-forms-has_left_the_house = Ha dejado la casa
desk-forms-the_password_until_now = La contraseña hasta ahora
desk-forms-a_new_one = Una nueva
desk-forms-the_same_again = La misma otra vez
desk-forms-its_name = Su nombre
desk-forms-folder_on_the_server_on = Carpeta en el servidor, en otro disco
desk-forms-hours_between_two = Horas entre dos
desk-forms-how_many_are_kept = Cuántas se conservan
desk-forms-backups_of_this_computer_are = Las copias de este ordenador se hacen de otra manera, cada día
desk-forms-they_are_a = Es un
desk-forms-address = Dirección
desk-forms-number_by_which_papers_call = Número con que lo nombran los papeles
desk-forms-name_of_the_phone = Nombre del teléfono
desk-forms-the_house = La casa
desk-forms-units = Unidades
desk-forms-decimal_mark = Signo decimal
desk-forms-accounts = Cuentas
desk-forms-height_above_the_sea_m = Altitud sobre el mar [m]
desk-forms-language_where_nobody_has_chosen = Idioma si nadie ha elegido uno
desk-forms-time_zone = Zona horaria
desk-forms-what_goes_into_or_out = Lo que entra o sale de las cuentas pide el PIN al anotarlo
desk-forms-a_season_begins_in = Una campaña empieza en
desk-forms-scale_from = Escala desde
desk-forms-scale_to = Escala hasta
desk-forms-unit = Unidad
desk-forms-class = Clase
desk-forms-interval_of_the_scale = División de la escala
desk-forms-corrections_of_its_certificate_wha = Correcciones de su certificado, lo que marca: lo que se suma, por ejemplo 0: -0.1; 20: 0; 40: +0.2
desk-forms-check_due_on = Control pendiente el
desk-forms-first_free_label_on_the = Primera etiqueta libre de la hoja
desk-forms-own_width_mm = Ancho propio [mm]
desk-forms-own_height_mm = Alto propio [mm]
desk-forms-own_clear_mm = Libre en cada borde [mm]
desk-forms-label_file = Como
desk-forms-case_from = Primera caja
desk-forms-case_to = Última caja
desk-forms-flat_labels_carry_the_address = Las etiquetas planas llevan la dirección, para que la cámara del propio teléfono abra el recipiente
desk-forms-also_a_stand_off_label = También una etiqueta a distancia para recipientes dentro de zona de fuego
desk-forms-there_is_no_such_time = No existe esa zona horaria. Teclear una, por ejemplo Europe/Vienna.
desk-forms-pick_it_stands_or_strike = Elegir: vale, o tachar.
desk-forms-say_why_in_a_few = Decir por qué, en pocas palabras.
desk-forms-type_its_code_such_as = Teclear su código, por ejemplo F3 o C031.
desk-forms-type_a_short_code = Teclear un código corto.
desk-forms-type_the_name = Teclear el nombre.
desk-forms-to_whole = De { $low } a { $high }, entero.
desk-forms-type_your_password = Teclear su contraseña.
desk-forms-type_a_password = Teclear una contraseña.
desk-forms-at_least_characters_a_few = Al menos { $what } caracteres; bastan unas palabras.
desk-forms-the_two_passwords_differ_type = Las dos contraseñas difieren. Teclearlas otra vez.
desk-forms-type_a_name = Teclear un nombre.
desk-forms-type_hours = Teclear horas.
desk-forms-type_a_number = Teclear un número.
desk-forms-name_it_such_as_ph = Ponerle nombre, por ejemplo PH-3.
desk-forms-type_the_name_of_the = Teclear el nombre de la casa.
desk-forms-type_its_number_such_as = Teclear su número, por ejemplo TH-2.
desk-forms-type_what_it_is_such = Teclear qué es, por ejemplo termómetro.
desk-forms-grower_or_supplier = agricultor o proveedor
desk-forms-point_14_6 = punto: 14.6
desk-forms-comma_14_6 = coma: 14,6
desk-forms-as_the_law_prescribes = como prescribe la ley
desk-forms-in_use = en uso
desk-forms-out_of_use2 = fuera de servicio
desk-forms-n1_to_7_letters_or = De 1 a 7 letras o cifras.
desk-forms-n1_to_8_letters_or = De 1 a 8 letras o cifras.
desk-forms-n4_to_8_digits = De 4 a 8 cifras.
desk-forms-letters_digits_hyphen = Letras, cifras, guion.
desk-forms-pick_the_day = Elegir el día.
access-forms-your_short_code = Su código corto
access-forms-password = Contraseña
access-forms-your_password = Su contraseña
access-forms-a_password_of_your_own = Una contraseña propia
access-forms-the_same_again = La misma otra vez
access-forms-set_up_code = Código inicial
access-forms-the_house = La casa
access-forms-units = Unidades
access-forms-your_name = Su nombre
access-forms-type_your_short_code = Teclear su código corto.
access-forms-type_your_password = Teclear su contraseña.
access-forms-type_a_password = Teclear una contraseña.
access-forms-at_least_characters_a_few = Al menos { $what } caracteres; bastan unas palabras.
access-forms-the_two_passwords_differ_type = Las dos contraseñas difieren. Teclearlas otra vez.
access-forms-type_the_set_up_code = Teclear el código inicial que imprimió el servidor.
access-forms-type_the_name_of_the = Teclear el nombre de la casa.
access-forms-type_a_short_code_such = Teclear un código corto, por ejemplo sus iniciales.
access-forms-type_your_name = Teclear su nombre.
access-forms-n1_to_8_letters_or = De 1 a 8 letras o cifras.
desk-vat_form-as_few_vessels_as_can = los menos recipientes posibles
desk-vat_form-the_oldest_stays = lo más antiguo se queda
desk-vat_form-the_oldest_goes_first = lo más antiguo va primero
desk-vat_form-strength_empty_as_it_comes = Grado (vacío: como salga)
desk-vat_form-unit_of_strength = Unidad del grado
desk-vat_form-volume_l_empty_all_they = Volumen [L] (vacío: todo lo que den)
desk-vat_form-volume_may_be_off_by = El volumen puede diferir [%]
desk-vat_form-most_of_any_one_vessel = Máximo de un recipiente [%]
desk-vat_form-most_of_any_one_lot = Máximo de un lote [%]
desk-vat_form-youngest_in_wood_years = Lo más joven en madera [años]
desk-vat_form-the_wood_of_a_200 = La madera de una barrica de 200 L retiene [kg]
desk-vat_form-aim = Objetivo
desk-vat_form-casks_may_be_drawn_in = Las barricas se pueden sacar en parte
desk-vat_form-name_of_the_vat = Nombre de la mezcla
desk-vat_form-wood_keeps_of = la madera retiene { $kept } de { $what }
desk-vat_form-strength_as_it_comes = grado como salga
desk-vat_form-within = { $volume } con margen de { $figure } %
desk-vat_form-all_they_give = todo lo que den
desk-vat_form-of_one_vessel = de un recipiente
desk-vat_form-of_one_lot = de un lote
desk-vat_form-youngest_years_in_wood = lo más joven, { $figure } años en madera
desk-vat_form-between_and_please = Entre { $low } y { $high }, por favor.
desk-vat_form-at_most = como máximo { $figure } % { $words }
desk-vat_form-vol = % vol
desk-cellar-by_the_fall_of_gravity = por la bajada de densidad
desk-cellar-as_the_law_of_1880 = como presumía la ley de 1880
desk-cellar-by_the_wash_as_measured = por el fermentado medido
desk-cellar-by_low_wines = por flemas
desk-cellar-by_spirits_and_feints = por destilados, cabezas y colas
desk-cellar-a_leak = ¿una fuga?
desk-cellar-a_slip_of_the_glass = ¿un desliz del alcohómetro?
desk-cellar-another_cask = ¿otra barrica?
desk-cellar-to_regauge = por aforar
desk-cellar-to_sample = por muestrear
desk-cellar-to_taste = por catar
desk-cellar-loss_a_year = pérdida al año
desk-cellar-ferments = Fermentaciones
desk-cellar-places = Lugares
desk-cellar-ready = Listas
desk-cellar-house_rules = Reglas de la casa
desk-cellar-mash_temperature = Temperatura de la masa
desk-cellar-pure_alcohol = Alcohol puro
desk-cellar-strength = Grado
desk-cellar-the_book_has_no_such = El libro no tiene esa fermentación. Buscarla en la lista de fermentaciones.
desk-cellar-the_book_knows_no_cask = El libro no conoce ninguna barrica { $mark }. Buscarla en la lista de barricas.
desk-cellar-scores = Puntos
desk-cellar-of_10 = de 10
desk-cellar-that_is_no_day_pick = No es un día. Elegir uno, por ejemplo 2027-05-01.
desk-cellar-gained = ganado
desk-cellar-by_place = lugar
desk-cellar-by_age = edad
desk-cellar-strength_in_words = grado
desk-cellar-gravity = densidad
desk-cellar-expected = esperado
desk-cellar-score = puntos
desk-trust-the_certificate_ends_in_days = El certificado termina en { $left_days } días y no se ha renovado. Mirar lo que lo renueva.
desk-trust-the_certificate_ended_on_phones = El certificado terminó el { $ends }. Los teléfonos guardan lo que anotan y no entregan nada hasta que sea nuevo.
paper-batch-batch_record = Registro de partida: { $ferment }
paper-batch-gravity_and_temperature = Densidad y temperatura
paper-batch-batch_record2 = Registro de partida: { $batch }
paper-batch-bottled = { $batch }, embotellado
paper-batch-tank_gauges = Aforos del depósito
paper-batch-checks_of_the_line = Controles de la línea
paper-batch-its_entries = Sus asientos
paper-batch-made_by = Hecho por
paper-batch-looked_over_by = Repasado por
paper-batch-not_read_yet = Sin leer aún.
paper-batch-counts_of_its_alcohol = Recuentos de su alcohol
paper-batch-at = A las
paper-batch-tank = Depósito
paper-batch-true = { $unit } real
paper-batch-no_bottling_tank_gauge_yet = Aún no hay aforo del depósito de embotellado.
paper-batch-fill = Llenado, %
paper-batch-least = Mínimo
paper-batch-most = Máximo
paper-batch-labels_right = Etiquetas bien
paper-batch-done = Hecho
paper-batch-odd_case = Caja incompleta
paper-batch-broken = Rotas
paper-batch-library = Archivo
paper-batch-good = Buenas
paper-batch-not_closed_yet = Sin cerrar aún.
paper-batch-nothing_has_left_the_tank = Aún no ha salido nada del depósito.
paper-batch-no = N.º
paper-batch-fermenter = Fermentador
paper-batch-stands_at = Está en
paper-batch-emptied = Vaciado
paper-batch-first_gravity = Primera densidad
paper-batch-last_gravity = Última densidad
paper-batch-closed_at = Cerrado a
paper-batch-wash = Fermentado
paper-batch-wash_strength = Grado del fermentado
paper-batch-pure_alcohol_in_the_wash = Alcohol puro en el fermentado
paper-batch-count = Contar
paper-batch-of_wash = { $unit } de fermentado
paper-batch-tanks = Depósitos
paper-batch-bottle = Botella
paper-batch-strength_on_the_label = Grado en la etiqueta
paper-batch-good_bottles = Botellas buenas
paper-batch-kept_in_the_library = Guardado en archivo
paper-batch-pure_alcohol_in_bottles = Alcohol puro en botellas
paper-batch-in = { $what } en { $mark }
paper-batch-to = { $first } a { $last }
paper-batch-at2 = { $unit } a { $temp }
paper-cautions-the_sites_own_assessment_local = Van primero la evaluación del propio centro, las normas del lugar y las personas autorizadas. Nada en este papel dice que un lugar o un destilado sea seguro.
paper-cautions-hot_and_under_pressure_if = Caliente, y bajo presión si se obstruye un paso. El agua fría en un alambique caliente y cerrado puede aplastarlo. Mantener libres los respiraderos; no dejar nunca solo un alambique en marcha.
paper-cautions-alcohol_vapour_burns_no_flame = El vapor de alcohol arde. Ni llama, ni chispa, ni teléfono corriente dentro de la línea marcada; leer en la caja de aforo, retroceder, y después escribir.
paper-cautions-a_hydrometer_cannot_see_methanol = Un areómetro no ve el metanol. Las cabezas contienen una parte, corazón y colas también; solo un laboratorio lo sabe. No catar lo primero que sale.
paper-cautions-few_samples_small_and_diluted = Pocas muestras, pequeñas y diluidas, y escupir. Agua y pan sin más entre medias. Nadie conduce, ni trabaja en un alambique o una máquina, después de catar.
paper-cautions-heads_are_never_tasted_nose = Las cabezas no se catan nunca; a lo sumo se huelen. Una cata nunca aclara qué hay en un destilado: metanol, ácido cianhídrico y carbamato de etilo no tienen un gusto que los delate.
paper-cautions-carbon_dioxide_has_no_smell = El dióxido de carbono no huele y se queda abajo. A 5000 ppm salir, ventilar, avisar al responsable; a 30 000 ppm fuera enseguida. Una vela no es prueba.
paper-cautions-nobody_enters_a_tank_or = Nadie entra en un depósito o tina solo, ni sin permiso, prueba de gas y alguien fuera.
paper-cautions-a_full_cask_of_225 = Una barrica llena de 225 L (59 gal) pesa de 220 a 260 kg (de 485 a 573 lb). Carretilla, elevador o calzo; nunca la espalda.
paper-cautions-say_where_you_are_and = Decir dónde está y cuándo vuelve.
paper-count-count_sheet = Hoja de recuento
paper-count-begun_date_and_time = Comienzo, fecha y hora
paper-count-ended_date_and_time = Fin, fecha y hora
paper-count-instruments_used = Instrumentos usados
paper-count-what_it_is = Qué es
paper-count-here = Aquí
paper-count-gross_or_dip = Bruto, { $kg }, o altura, { $what }
paper-count-glass = Alcohómetro
paper-count-spirit = Destilado { $unit }
paper-count-stands_there_and_is_not = Está ahí y no en esta hoja
paper-count-counted_by = Contado por
paper-count-second_person = Segunda persona
paper-count-other_places = Otros lugares
paper-imprint-book_up_to_no_chain = libro hasta n.º { $number }, cadena { $digest }
paper-pages-nothing_has_a_place_there = Nada tiene lugar ahí. Mirar los lugares de la bodega.
paper-pages-the_book_has_no_such = El libro no tiene ese asiento para imprimir.
paper-pages-the_book_has_no_such2 = El libro no tiene esa destilación. Buscarla en la lista de destilaciones.
paper-pages-the_book_has_no_such3 = El libro no tiene esa fermentación. Buscarla en la lista de fermentaciones.
paper-pages-the_book_has_no_batch = El libro no tiene en un depósito ninguna partida de ese nombre. Buscarla en la lista de embotellados.
paper-passport-laboratory_certificate_and_its_num = Boletín de laboratorio, y su número
paper-passport-none_in_the_book_methanol = ninguno en el libro: no mide metanol ni otras cifras de composición
paper-passport-lot_passport = Pasaporte de lote: { $name }
paper-passport-made_of = Hecho de
paper-passport-papers_and_certificates = Papeles y certificados
paper-passport-made_out_by = Expedido por
paper-passport-approved_by = Aprobado por
paper-passport-share = Parte
paper-passport-by_the_book = Según el libro
paper-passport-paper_no = Papel n.º
paper-passport-lot_mark = Marca de lote
paper-passport-good_bottles = Botellas buenas
paper-passport-strength = Grado
paper-passport-pure_alcohol = Alcohol puro
paper-passport-day = Día
paper-passport-came_from = Vino de
paper-passport-cases_and_lot_mark = Cajas y marca de lote
paper-passport-to_or_from = A quién o de quién
paper-passport-of_l = { $good } de { $size } L
paper-passport-to = { $first } a { $last }
paper-press-name_in_capitals = Nombre en mayúsculas
paper-press-signature = Firma
paper-press-date_and_time = Fecha y hora
paper-press-printed_by = Impreso { $printed } por { $printable } · { $book }
paper-press-still_open = Aún abierto
paper-press-open_questions = Preguntas abiertas
paper-press-these_are_not_answered_what = Estas no están respondidas. Lo de arriba puede cambiar con las respuestas.
paper-press-cautions = Advertencias
paper-press-page_of = página { $number } de { $of }
paper-press-in_the_book = En el libro
paper-record-as_read = Según lo leído
paper-record-as_computed = Según cálculo
paper-record-witness = Testigo
paper-record-gauge_record = Registro de aforo: { $title }
paper-record-record = Registro: { $title }
paper-record-reading = Lectura
paper-record-instrument = Instrumento
paper-record-corrected = Corregido
paper-record-figure = Cifra
paper-record-value = Valor
paper-record-nothing_is_computed_from_this = De esto no se calcula nada.
paper-record-what_it_moved = Qué movió
paper-record-read_again_by_hand = Leído otra vez a mano
paper-record-gauged_by = Aforado por
paper-record-done_by = Hecho por
paper-record-stands_at = Está en
paper-record-read_by = Leído por
paper-record-role = Función
paper-record-gross_or_dip = Bruto, { $kg }, o altura, { $what }
paper-record-glass = Alcohómetro
paper-record-spirit = Destilado { $unit }
paper-record-at = A las
paper-record-first = Primero
paper-record-second = Segundo
paper-run-run_sheet = Hoja de destilación { $run }
paper-run-minute_by_minute = Minuto a minuto
paper-run-event = Suceso
paper-run-glass = Alcohómetro
paper-run-spirit = Destilado { $unit }
paper-run-true = { $unit } real
paper-run-vapour = Vapor { $unit }
paper-run-dip = Altura, { $what }
paper-run-into_why = A dónde, por qué
paper-run-what_the_receivers_hold = Qué contienen los colectores
paper-run-still_hand = Ayudante de alambique
paper-run-distiller = Destilador
paper-run-logged = , anotado { $clock }
paper-run-balance = Balance, { $what }
paper-run-not_accounted_for = sin justificar
paper-run-more_than_went_in = más de lo que entró
paper-run-true_strength = Grado real, { $unit }
paper-run-fraction = Fracción
paper-run-none_gauged_yet = Aún ninguna aforada.
paper-run-heads = cabezas { $plan }
paper-run-hearts_to = corazón hasta { $plan }
paper-run-tails_to = colas hasta { $plan }
paper-run-of_the_charge = { $rest }, { $abs } % de la carga
paper-run-part = Parte
paper-run-min = { $last } min
paper-run-charged_from = Cargado de
paper-run-begun = Comienzo
paper-run-charge = Carga
paper-run-of_it_feints = de ello, cabezas y colas
paper-run-pure_alcohol_charged = Alcohol puro cargado
paper-run-plan = Plan
paper-run-not_read_taken_as = , no leído: se supone { $balance }
paper-run-on = { $what } en { $still }
paper-run-at = { $unit } a { $temp }
paper-serving-two_of_the_three_are = dos de las tres son iguales: ¿cuál es la distinta?
paper-serving-the_first_stands_open_as = la primera está a la vista como R: ¿cuál de las dos con código es igual?
paper-serving-which_of_the_two_has = ¿cuál de las dos tiene más de lo que se pregunta?
paper-serving-put_all_in_order_no = poner todas por orden, sin empates
paper-serving-serving_sheet = Hoja de servicio
paper-serving-letter = Letra
paper-serving-sample = Muestra
paper-serving-of_it = De ello
paper-serving-strength_as_found = Grado hallado
paper-serving-water_added = Agua añadida
paper-serving-glasses_from_left_to_right = Copas, de izquierda a derecha
paper-serving-poured_by = Servido por
paper-serving-taster = Catador
paper-serving-glass_sample = Copa = muestra
paper-serving-poured = Servido
paper-serving-method = Método
paper-serving-served_at = Servido a
paper-serving-sets_of_glasses = Series de copas
paper-serving-for_whoever_pours = Para quien sirve. Ningún catador ve esta hoja, y nadie que la haya visto cata ni habla con un catador.
paper-period-heads_of_the_book_of = Hitos del libro de { $signed }, firmados con la clave { $shorten_digits }.
paper-period-printed = { $name } · impreso { $printed } · { $house }
paper-period-the_rest_is_open = { $signed }; el resto está abierto.
paper-period-pure_alcohol = { $house }: alcohol puro, { $name }
paper-period-litres_of_pure_alcohol_at = Litros de alcohol puro a 20 °C con 0,01; galones proof con 0,1. { $what } { $what2 }
paper-period-page = página { $page }
paper-period-as_now_known_with_what = Como se sabe ahora, con lo que salió después a la luz
paper-period-open_when_it_was_closed = Abierto cuando se cerró, y leído por quien lo cerró
paper-period-a_book_rewritten_since_has = { $words }Un libro reescrito después tiene otros: cellarslate verify --heads.
paper-period-date = Fecha
paper-period-name_and_title = Nombre y cargo
paper-period-signature = Firma
desk-account-lines_add_up_to_their = Las líneas suman sus totales tal como se muestran: cada cifra es la más próxima, o la siguiente si así no sumara (mayor resto). El libro guarda microlitros enteros. Un trimestre se redondea por sí mismo: una línea suya puede diferir de la suma de sus meses, en tres como máximo en la última cifra.
desk-account-is_twice_the_standard_uncertainty = ± es el doble de la incertidumbre típica (k = 2), por la clase de los instrumentos de todos los asientos de una línea; lo que se desvía un instrumento cuenta igual en cada uno. Una línea sin ± es más de lo que dicen sus lecturas: un resto, un cálculo, botellas, o traslados entre dos aforos.
desk-account-is_twice_the_standard_uncertainty2 = ± es el doble de la incertidumbre típica (k = 2), por los instrumentos de la última medición de cada recipiente y de todo lo que entró y salió desde entonces.
desk-account-what_nobody_measured_mash_a = { $what } No está en ello lo que nadie midió, la masa, una destilación en marcha ni las botellas.
desk-account-production = Producción
desk-account-storage = Almacenamiento
desk-account-processing = Elaboración
desk-account-excise_warehouse = Depósito fiscal
desk-account-so_that_the_lines_add = Para que las líneas sumen, estas se muestran fuera de su cifra más próxima: { $said }.
desk-account-adjustment_of = Ajuste de { $of }: { $more } { $party_words }
desk-account-on_hand_at_the_start = Existencias al comienzo
desk-account-total_in = Total entrado
desk-account-total_out = Total salido
desk-account-on_hand_at_the_end = Existencias al final
desk-sheets-this_sheet_was_not_kept = Esta hoja no se guardó tanto tiempo. Tomarla otra vez.
desk-sheets-the_whole_sheet_was_taken = Se retiró la hoja entera.
desk-sheets-taken_back_every_line_stays = Retirada. Cada línea queda legible, tachada.
desk-sheets-nothing_in_this_sheet_is = Nada en esta hoja es nuevo: el libro lo tiene todo. No se cambió nada.
desk-sheets-there_is_no_such_sheet = No existe esa hoja. Buscarla en la lista.
desk-sheets-in_use_stay_the_book = Siguen en uso { $join }: el libro tiene de ellos más que esta hoja.
desk-sheets-there_is_no_such_template = No existe esa plantilla. Buscarla en la lista.
desk-sheets-openings =
    { $many ->
        [one] { $many } apertura de { $what }
       *[other] { $many } aperturas de { $what }
    }
desk-tasting_form-holds_heads_heads_are_never = contiene cabezas. Las cabezas no se catan nunca. Tomar otra muestra.
desk-tasting_form-name_of_the_tasting = Nombre de la cata
desk-tasting_form-question_written_down_before_pouri = Pregunta, escrita antes de servir
desk-tasting_form-method = Método
desk-tasting_form-risk_of_finding_a_difference = Riesgo de hallar diferencia donde no hay
desk-tasting_form-served_at_all_glasses_alike = Servido a, todas las copas iguales
desk-tasting_form-unit_of_strength = Unidad del grado
desk-tasting_form-poured_by = Servido por
desk-tasting_form-tasters = Catadores
desk-tasting_form-sets_for_each_taster = Series por catador
desk-tasting_form-sample_a = Muestra A
desk-tasting_form-of_it = de ello
desk-tasting_form-sample_b = Muestra B
desk-tasting_form-sample_c = Muestra C
desk-tasting_form-sample_d = Muestra D
desk-tasting_form-sample_e = Muestra E
desk-tasting_form-give_it_a_short_name = Darle un nombre corto, por ejemplo T-26-03.
desk-tasting_form-write_the_question_first = Escribir antes la pregunta.
desk-tasting_form-type_the_strength_in_the = Teclear el grado en la copa.
desk-tasting_form-how_many_sets = ¿Cuántas series?
desk-tasting_form-two_samples_are_the_same = Dos muestras son iguales. Decir en palabras qué las distingue, o elegir otra.
desk-tasting_form-pick_at_least_one_taster = Elegir al menos un catador.
desk-tasting_form-who_pours_knows_the_codes = Quien sirve sabe los códigos, y no cata. Que sirva otra persona, o dejarlo abierto.
desk-tasting_form-a_ranking_wants_three_to = Una ordenación pide de tres a cinco muestras.
desk-tasting_form-this_method_compares_two_samples = Este método compara dos muestras: elegir A y B, y ninguna más.
desk-tasting_form-that_is_more_than_sets = Son más de { $what } series de copas. Menos catadores, o menos series.
desk-tasting_form-letters_digits_and_only_please = Solo letras, cifras y -, por favor.
door-page-visitor = Visita { $let_in }
door-page-there_is_no_such_thing = No existe eso para probar. Volver y elegir en la lista.
door-page-the_demo_has_none_left = A la demostración no le queda ninguno. Pararla y arrancarla otra vez con --fresh.
door-page-this_person_has_left_the = Esta persona ha dejado la casa de la demostración. Pararla y arrancarla otra vez con --fresh.
door-page-there_is_nobody_of_that = En la demostración no hay nadie con ese código.
door-page-the_demo_has_let_in = La demostración ha admitido todos los teléfonos que caben. Pararla y arrancarla otra vez con --fresh.
door-trial-cask_list_csv = lista de barricas.csv
door-trial-log_without_signal = Anotar sin cobertura
door-trial-it_says_at_once_where = Dice enseguida dónde está el asiento. Devolver aquí la cobertura, y se entrega solo.
door-trial-keep_a_still_run = Llevar una destilación
door-trial-s1_is_in_its_hearts = S1 está en el corazón. Teclear lo que dicen alcohómetro y termómetro, y después hacer el corte.
door-trial-the_true_strength_stands_there = El grado real aparece enseguida. La banda se estrecha hacia el minuto del próximo corte.
door-trial-answer_a_question = Responder una pregunta
door-trial-a_cask_gained_pure_alcohol = Una barrica ganó alcohol puro, dice una línea de mayo. Ninguna puede.
door-trial-the_likely_figure_is_offered = Se ofrece la cifra probable, y qué cambiaría. Ambas cifras quedan legibles.
door-trial-trace_a_cask_to_its = Rastrear una barrica hasta su fruta
door-trial-c_047_was_filled_a = C-047 se llenó hace un año: por depósito y destilación hasta la finca y sus cargas de fruta.
door-trial-the_picture_says_how_much = La imagen dice cuánto de cada cosa hay en ella, y qué se perdió por el camino.
door-trial-take_a_sheet_in = Tomar una hoja
door-trial-six_casks_in_somebodys_old = Seis barricas en la vieja hoja de cálculo de alguien. Dos de sus celdas no pueden estar bien.
door-trial-which_cells_it_stops_at = En qué celdas se para, y qué ofrece. No se escribe nada hasta que usted lo diga.
desk-upkeep-opened_and_verified_entries = { $near }, abierta y verificada: { $status } asientos
desk-upkeep-every_page_and_every_digest = { $near }, cada página y cada huella
desk-upkeep-backup_old = Copia de hace { $age }
desk-upkeep-read_through = Leído entero
desk-upkeep-less_than_gb_a_full = Menos de { $least } GB. Con el disco lleno, las entregas esperan en los teléfonos.
desk-upkeep-disk_free = Disco: { $said } libres
desk-upkeep-where_the_book_lies = donde está el libro
desk-upkeep-not_by_itself = no por sí solo
desk-upkeep-backup = Copia
desk-upkeep-this_server_makes_none_by = Este servidor no hace ninguna por sí solo.
desk-upkeep-the_server_reads_the_whole = El servidor lee el libro entero una vez al día.
desk-upkeep-does_not_hold = no es correcto
desk-upkeep-nearly_full = casi lleno
desk-upkeep-none_made_yet = Aún no se ha hecho ninguna.
desk-upkeep-failed = falló
desk-upkeep-old = antigua
desk-upkeep-made = hecho
desk-upkeep-late = tarde
desk-upkeep-holds = correcto
desk-upkeep-room = espacio
desk-ends-since = desde { $day }
desk-figures-temperature = Temperatura
desk-figures-true_strength = Grado real
desk-figures-pure_alcohol = Alcohol puro
desk-figures-fill = Llenado
desk-figures-strength_in_the_bottles = Grado en las botellas
desk-figures-of_the_label = % de la etiqueta
desk-clock-days = { $many } días
desk-clock-months = { $many } meses
desk-clock-years = { $many } años
desk-count-ferment =
    { $n ->
        [one] { $many } fermentación
       *[other] { $many } fermentaciones
    }
desk-count-person =
    { $n ->
        [one] { $many } persona
       *[other] { $many } personas
    }
desk-count-entry =
    { $n ->
        [one] { $many } asiento
       *[other] { $many } asientos
    }
desk-count-vessel =
    { $n ->
        [one] { $many } recipiente
       *[other] { $many } recipientes
    }
desk-day-read =
    { $n ->
        [one] hay que leer { $many } fermentación
       *[other] hay que leer { $many } fermentaciones
    }
desk-day-stuck =
    { $n ->
        [one] { $many } fermentación está parada
       *[other] { $many } fermentaciones están paradas
    }
desk-day-bottling =
    { $n ->
        [one] { $many } embotellado espera su cierre
       *[other] { $many } embotellados esperan su cierre
    }
desk-day-regauge =
    { $n ->
        [one] hay que aforar { $many } barrica
       *[other] hay que aforar { $many } barricas
    }
desk-day-sample =
    { $n ->
        [one] hay que muestrear { $many } barrica
       *[other] hay que muestrear { $many } barricas
    }
desk-day-taste =
    { $n ->
        [one] hay que catar { $many } barrica
       *[other] hay que catar { $many } barricas
    }
desk-day-stands =
    { $n ->
        [one] { $many } depósito lleva mucho tiempo
       *[other] { $many } depósitos llevan mucho tiempo
    }
desk-day-failed =
    { $n ->
        [one] { $many } instrumento no pasó su control
       *[other] { $many } instrumentos no pasaron su control
    }
desk-day-open_run =
    { $n ->
        [one] { $many } destilación no tiene fin
       *[other] { $many } destilaciones no tienen fin
    }
desk-day-still =
    { $n ->
        [one] { $many } fermentado espera alambique
       *[other] { $many } fermentados esperan alambique
    }
desk-day-owed =
    { $n ->
        [one] se debe { $many } respuesta
       *[other] se deben { $many } respuestas
    }
desk-day-nothing_owed = no se debe nada
desk-day-nothing_owed_next = No se debe nada. { $next }
desk-day-run_ends =
    { $state ->
        [late]
            { $what ->
                [cut] { $still } debía cortar a las { $at }
               *[end] { $still } debía acabar a las { $at }
            }
        [now]
            { $what ->
                [cut] { $still } corta en cualquier minuto
               *[end] { $still } acaba en cualquier minuto
            }
       *[coming]
            { $what ->
                [cut] { $still } corta a las { $at }
               *[end] { $still } acaba a las { $at }
            }
    }
desk-day-run_at_its_end =
    { $what ->
        [cut] { $still } está en el corte
       *[end] { $still } está en el fin
    }
desk-day-still_heats = { $still } se calienta
desk-day-still_runs = { $still } destila { $part }
desk-day-ended =
    { $n ->
        [one] { $which } ha acabado
       *[other] { $which } han acabado
    }
desk-day-near_end =
    { $n ->
        [one] { $which } está cerca del fin
       *[other] { $which } están cerca del fin
    }
desk-day-one_stuck = { $name } está parada
desk-day-one_stands = { $name } lleva mucho tiempo
desk-day-one_read = hay que leer { $name }
desk-day-one_silent = { $name } no da noticias
desk-day-silent =
    { $n ->
        [one] { $many } teléfono no da noticias
       *[other] { $many } teléfonos no dan noticias
    }
desk-day-nothing_due = Hoy no hay nada pendiente.
desk-day-to_read = { $name } por leer
desk-day-round = la ronda de { $ferments }
desk-day-round_readings = lecturas
desk-day-round_regauge = nuevo aforo
desk-day-round_samples = muestras
desk-day-round_tasting = cata
desk-day-next = Lo siguiente es { $what } a las { $at }.
desk-part-heating = calentando
desk-part-heads = cabezas
desk-part-hearts = corazón
desk-part-tails = colas
desk-part-low_wines = flemas
desk-part-feints = cabezas y colas
desk-due-many_read =
    { $n ->
        [one] { $many } fermentación por leer
       *[other] { $many } fermentaciones por leer
    }
desk-due-many_close =
    { $n ->
        [one] { $many } fermentación ha acabado
       *[other] { $many } fermentaciones han acabado
    }
desk-due-many_still =
    { $n ->
        [one] { $many } fermentado espera alambique
       *[other] { $many } fermentados esperan alambique
    }
desk-due-many_regauge =
    { $n ->
        [one] { $many } barrica por aforar
       *[other] { $many } barricas por aforar
    }
desk-due-many_sample =
    { $n ->
        [one] { $many } barrica por muestrear
       *[other] { $many } barricas por muestrear
    }
desk-due-many_taste =
    { $n ->
        [one] { $many } barrica por catar
       *[other] { $many } barricas por catar
    }
desk-due-many_stands =
    { $n ->
        [one] { $many } depósito en espera
       *[other] { $many } depósitos en espera
    }
desk-due-many_bottling =
    { $n ->
        [one] { $many } embotellado empezado
       *[other] { $many } embotellados empezados
    }
desk-due-many_failed =
    { $n ->
        [one] { $many } instrumento no pasó su control
       *[other] { $many } instrumentos no pasaron su control
    }
desk-due-many_instrument =
    { $n ->
        [one] { $many } instrumento por comprobar
       *[other] { $many } instrumentos por comprobar
    }
desk-due-many_open_run =
    { $n ->
        [one] { $many } destilación sin fin anotado
       *[other] { $many } destilaciones sin fin anotado
    }
desk-due-many_stuck =
    { $n ->
        [one] { $many } fermentación está parada
       *[other] { $many } fermentaciones están paradas
    }
desk-due-and_more = { $named } y { $more } más
desk-due-all_of_them = Todos
desk-due-look = Mirar
desk-due-late = { $time } de retraso
desk-due-now = ahora
desk-due-begun = empezado { $when }
desk-due-last = último { $when }
desk-due-never_yet = nunca aún
desk-due-last_entry = último asiento { $when }
desk-due-months_open = { $first } a { $last } sin cerrar
desk-due-month_open = { $month } acabó y está sin cerrar
desk-due-us_reports = sus declaraciones vencen el día 15 del mes siguiente
desk-due-one_read = { $name } por leer
desk-due-one_close = { $name } ha acabado: cerrarla
desk-due-one_stuck = { $name } no se mueve
desk-due-one_still = { $name } espera alambique
desk-due-one_regauge = { $name } por aforar
desk-due-one_sample = { $name } por muestrear
desk-due-one_taste = { $name } por catar
desk-due-one_stands = { $name } en espera desde hace { $time }
desk-due-one_bottling = { $name } se aforó para embotellar hace { $time }
desk-due-one_open_run = { $name } { $what } no tiene fin
desk-due-one_failed = { $name } no pasó su control
desk-due-one_instrument = { $name } por comprobar
desk-due-one_instrument_late = { $name } había que comprobarlo hace { $time }
group-page-sites = Centros
group-page-shut_out_what_it_handed = Excluido. Lo que entregó se queda. Un código nuevo admite otra vez el centro.
group-page-taken_the_other_branch_stays = Tomado. La otra rama queda registrada.
group-page-made_of = Hecho de
group-page-this_needs_the_role_ask = Hace falta la función { $access }. Preguntar en la oficina.
group-files-no_site_has_anything_to = Ningún centro tiene nada que rastrear con ese nombre. Buscarlo con la búsqueda de la página de rastreo.
paper-label-stand_off_label_scan_here = ETIQUETA A DISTANCIA: escanear aquí. Quedarse fuera de la línea. Van primero las reglas del centro.
paper-label-does_not_fit_a_label = { $mark } no cabe en una etiqueta de { $wide } x { $high } mm con letra de 10 mm de alto. Elegir una etiqueta mayor, o un código más corto.
paper-label-choose_1_to_labels_to = Elegir de 1 a { $most } etiquetas para imprimir.
paper-label-this_page_has_labels_start = Esta página tiene { $many } etiquetas. Empezar en 1 a { $many }.
paper-label-ruler = Esta línea mide 50 mm. Si no, imprimir otra vez al 100 %.
paper-label-own_size_is = Un tamaño propio tiene de { $low } a { $high } mm de ancho y de alto, con 0 a { $clear } mm libres en cada borde. Escribir ancho y alto en milímetros.
paper-label-zpl_wants_a_roll = ZPL imprime una etiqueta tras otra. Elegir un rollo, una ficha o un tamaño propio.
paper-case-lot = Lote { $lot }
paper-case-case = Caja { $case }
paper-case-not_the_label_of_the_law = Para almacén y rastreo. La etiqueta que pide la ley es otra.
paper-case-does_not_fit = La etiqueta de una caja no cabe en { $wide } x { $high } mm. Elegir una etiqueta mayor.
paper-case-address_too_long = La dirección del libro es demasiado larga para una etiqueta. Poner un PUBLIC_HOST más corto.
desk-room-today = Hoy
desk-room-queries = Preguntas
desk-room-entries = Asientos
desk-room-vessels = Recipientes
desk-room-cellar = Bodega
desk-room-runs = Destilaciones
desk-room-blending = Mezclas
desk-room-trace = Rastreo
desk-room-periods = Periodos
desk-room-labels = Etiquetas
desk-room-settings = Ajustes
desk-rule-age_years = { $figure } años en madera
desk-rule-strength_low = desde { $figure }
desk-rule-strength_high = hasta { $figure }
desk-rule-score_low = puntos { $figure }
desk-rule-loss_high = pérdida máxima { $figure } % al año
access-passkey-not_here = En esta dirección no se puede usar llave de acceso. Teclear su contraseña.
access-passkey-does_not_open = Esta llave de acceso no abre. Probar otra vez, o teclear su contraseña.
access-passkey-none_used = No se usó ninguna llave de acceso. Probar otra vez, o teclear su contraseña.
access-passkey-none_made = No se creó ninguna llave de acceso. Probar otra vez; un aparato que ya tiene una suya no crea otra.
access-steps-another_phone_or_computer = Otro teléfono u ordenador
access-steps-on_this = En este { $name }
access-steps-fetch_the = Traer: { $fetch }
access-steps-done = Hecho
access-steps-back_one_step = Un paso atrás
access-steps-or_the_computer_does_not = O el ordenador no responde a este teléfono en el puerto { $port }: su cortafuegos, u otra red inalámbrica. Esta página no puede distinguirlos.
access-steps-compare_before_you_trust = Comparar antes de confiar
access-steps-these_groups_must_be_the = Estos grupos tienen que ser los que muestra el ordenador de la oficina. Si difieren, parar aquí y avisar a la oficina.
access-steps-the_whole_fingerprint_sha_256 = La huella entera, SHA-256
access-steps-another_one = ¿Otro?
access-steps-profile = perfil
access-steps-certificate = certificado
access-steps-trusted = Este teléfono confía en la casa.
access-steps-not_trusted_yet = Aún no confía en la casa.
access-steps-try_again = Reintentar
access-steps-counted = Paso { $at } de { $many }
access-plain-trust_this_distillerys_computer = Confiar en el ordenador de esta destilería
access-plain-once_on_each_phone_after = Una vez en cada teléfono. Después el registro de planta se abre sin aviso, y funciona sin cobertura.
floor-frame-to_the_work = Al trabajo
floor-frame-back = Atrás
floor-frame-vessel = Recipiente
floor-frame-waits_on_slate = en pizarra
floor-frame-floor = Planta
floor-frame-today = Hoy
floor-frame-scan = Escanear
floor-frame-slate = Pizarra
floor-frame-more = Más
floor-field-may_stay_empty = (puede quedar vacío)
floor-field-unit_of = Unidad de { $label }
floor-field-scan_for = Escanear para { $label }
floor-field-not_logged_yet = Aún sin anotar.
floor-field-nothing_is_lost = No se pierde nada; corregir esto y anotarlo otra vez.
floor-away-title = La oficina no responde
floor-away-desk = Oficina
floor-away-no_answer = sin respuesta del libro
floor-away-words = La oficina está en el ordenador del libro, y no responde. Lo que ha anotado este teléfono está a salvo en su pizarra.
floor-away-ask_again = Preguntar otra vez
floor-away-work_without = Trabajar sin cobertura
floor-enrol-title = Admitir este teléfono
floor-enrol-office_gives = La oficina da a cada teléfono un código, una vez. Con él el teléfono entrega al libro y guarda las fichas de los recipientes.
floor-enrol-code = Código de la oficina
floor-enrol-name = Cómo se llama este teléfono
floor-enrol-name_help = Como está escrito detrás. Si queda vacío, se llama como lo llamó la oficina.
floor-enrol-let_it_in = Admitirlo
floor-job-title = Trabajo
floor-job-no_script = Esta página calcula sus cifras en el teléfono y necesita script. Cada asiento se puede anotar también desde la ficha de su recipiente.
floor-log-needed = necesario
floor-log-remark = observación
floor-log-read_now = Leer ahora
floor-log-left_empty = Si queda vacío, se leyó ahora.
floor-log-log_it = Anotar
floor-run-title = Destilación
floor-run-sheet = Hoja de destilación
floor-vessel-to_log = Qué anotar
floor-run-plain_reading = Lectura
floor-run-cut_or_event = Corte o suceso
floor-run-end_the_run = Acabar la destilación
floor-scan-camera_sees = Lo que ve la cámara
floor-scan-torch = Linterna
floor-scan-outside_the_line = Quedarse fuera de la línea, salvo que este teléfono esté homologado para ella y el centro lo permita.
floor-slate-no_script = La pizarra necesita script. Sin él, cada asiento va directo al libro al anotarlo.
floor-today-no_script = Este teléfono no ejecuta script, así que no tiene pizarra. Con conexión, teclear una marca para seguir.
floor-who-title = ¿Quién anota?
floor-who-no_script = Sin script se anota con su propio nombre:
floor-who-sign_in = iniciar sesión
floor-mark-label = Marca de la etiqueta
floor-mark-hint = Letras, cifras y el último carácter tras el guion.
floor-mark-open = Abrir
floor-caution-lead_1 = La línea.
floor-caution-words_1 = Un teléfono corriente puede encender el vapor de alcohol. Quedarse fuera de la línea marcada, salvo que el teléfono esté homologado y el centro lo permita. Leer en la caja de aforo, retroceder, teclearlo con el minuto en que se leyó.
floor-caution-lead_2 = Sala de fermentación.
floor-caution-words_2 = El dióxido de carbono no huele y se queda abajo. A 5000 ppm salir, ventilar, avisar al responsable; a 30 000 ppm fuera enseguida. No volver nunca por una lectura. Una vela no es prueba.
floor-caution-lead_3 = Cabezas y metanol.
floor-caution-words_3 = Un areómetro no ve el metanol, y un densímetro tampoco. Las cabezas contienen una parte, corazón y colas también. Solo un laboratorio lo sabe. No catar lo primero que sale.
floor-caution-lead_4 = Alambique.
floor-caution-words_4 = Caliente, y bajo presión si se obstruye un paso. El agua fría en un alambique caliente y cerrado puede aplastarlo. Mantener libres los respiraderos; no dejar nunca solo un alambique en marcha.
floor-caution-lead_5 = Depósitos y tinas.
floor-caution-words_5 = Nadie entra solo, ni sin permiso, prueba de gas y alguien fuera.
floor-caution-lead_6 = Barricas.
floor-caution-words_6 = Una barrica llena de 225 L (59 gal) pesa de 220 a 260 kg (de 485 a 573 lb). Carretilla, elevador o calzo; nunca la espalda, nunca en la línea de rodadura.
floor-caution-lead_7 = Solo en la bodega.
floor-caution-words_7 = Decir dónde está y cuándo vuelve. Este teléfono no da ninguna alarma.
floor-caution-title = Advertencias
floor-caution-first = Van primero la evaluación de su centro, las normas del lugar y las personas autorizadas. Nada en este teléfono dice que un lugar o un destilado sea seguro.
floor-form-unit_of = Unidad de { $what }
floor-form-read_at = Leído a las
floor-form-who = Quién
floor-form-role = Función
floor-form-seen_by = Visto por
floor-form-remark = Observación
floor-form-missing = Falta: { $what }. Teclearlo.
floor-form-yes = sí
floor-form-no = no
floor-form-alcoholmeter = Alcohómetro usado
floor-form-dip = Varilla usada
floor-form-refractometer = Refractómetro usado
floor-form-saccharometer = Sacarímetro usado
floor-form-scale = Balanza usada
floor-form-thermometer = Termómetro usado
floor-form-density_meter = Densímetro usado
floor-form-pH_meter = pH-metro usado
floor-enrol-type_the_code = Teclear el código de la oficina.
floor-vessel-not_in_book = El libro no tiene ningún recipiente { $mark }. Leer otra vez la etiqueta, o pedir a la oficina que lo ponga.
floor-form-no_such = No existe ese formulario. Volver y elegir uno en la ficha del recipiente.
floor-log-sign_in_first = Iniciar sesión antes, en otra pestaña; después pulsar otra vez el botón. Lo tecleado sigue aquí.
floor-log-no_time = Leído a las: elegir el día y el minuto, o dejarlo vacío para ahora.
floor-mark-bad =
    { $why ->
        [empty] Teclear la marca de la etiqueta, por ejemplo F3-8.
        [foreign] Este código no es de los nuestros. Escanear la etiqueta del recipiente o teclear su marca.
        [characters] Una marca solo tiene letras de A a Z y cifras de 0 a 9. Leer otra vez la etiqueta.
        [too_short] Una marca tiene un código y un carácter de control, por ejemplo F3-8. Teclearla entera.
        [too_long] Demasiado largo para una marca. Teclear lo impreso en grande en la etiqueta.
       *[check] { $mark } no es una marca: un carácter está mal o falta el último. Leer otra vez la etiqueta.
    }
floor-form-within = { LOWER($words) }
