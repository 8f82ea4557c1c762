### The sentences of Cellarslate, in English. Read by the book (webapp/words) and by the phone (static/words).
### A parameter is said whole, with its unit, by { $name }; without its unit by { BARE($name) }, how far two are apart
### by { APART($name) }. Of what need not be there, `none` stands in its place. Figures that were worked out are said in
### the units of the house: the word beside a bare one turns with them, as { pct } does. What was typed is said as
### { TYPED($name) }.

## Parts of sentences. The phone needs them from the start.

range-between = { $low } to { $high }
range-or_more = { $low } or more
range-up_to = up to { $high }
span-s = { $many } s
span-min = { $many } min
span-h = { $many } h
span-days = { PLURAL($many) ->
    [one] { $many } day
   *[other] { $many } days
  }
span-months = { PLURAL($many) ->
    [one] { $many } month
   *[other] { $many } months
  }
span-years = { PLURAL($many) ->
    [one] { $many } year
   *[other] { $many } years
  }
time-same_day = { $clock }
time-day_before = { $clock } the day before
time-day = { $day } { $clock }
pct = { UNITS() ->
    [us] proof
   *[metric] %
  }
points = { UNITS() ->
    [us] proof points
   *[metric] points
  }
as_said = { $words }
no_such_message = This program has no words for “{ $id }”. Update it, or ask at the desk.

## What is wrong with an entry by itself. The phone says it while one types; so it needs these from the start.

missing = { $label } is missing. { asks }
missing-question = { $label } { asks }
asks = { $sort ->
    [choice] Pick one.
    [yes_no] Pick one.
    [mark] Pick, scan or type it.
    [date] Pick the day.
   *[other] Type it.
  }
no_such_choice = { $label }: pick one of the choices.
no_such_choice-yes_no = { $label }: yes or no.
no_date = { $label }: { $typed } is no date. Pick the day.
too_long = { $label } is longer than { $most } characters. Shorten it; the rest can go into a note.
no_such_unit = { $label } is read in { $units }. Pick one.
no_number = { $label }: { $reason }
number-empty = Nothing is typed here. Type the figure as the instrument shows it.
number-too_long = That is too long for a figure. Type at most 15 characters.
number-two_signs = Type one point or comma, once, before the decimals: 1234.5 or 1234,5.
number-not_plain = That is no plain number. Type digits with one point or comma: 14.6 or 14,6.
outside_tables = { $label }: { $reason }
impossible = { $label } { UNIT(TYPED($figure)) } cannot be: { UNIT(LIKE($possible, $figure)) } is possible. Look again, or keep it as read.
impossible-outside = { $label }: { $reason }
unusual = { $label } { UNIT(TYPED($figure)) } is unusual: { UNIT(LIKE($usual, $figure)) } is usual here. Look again.
danger = { $label } { UNIT(TYPED($figure)) }. { $act }
slip-swapped = two digits swapped
slip-point = the point slipped
slip-unit = { $meant }, not { $typed }
slip-meant = { TYPED($meant) }
slip-key = the key beside it
slip-twice = a digit typed twice
slip-misread = a digit taken for another
slip-lost = a digit left out
slip-sign = the other sign
slip-box = in the box “{ $label }”
slip-exchanged = exchanged with “{ $label }”
slip-net = that was net, without the vessel
slip-gross = that was gross, with the vessel
slip-ullage = that was empty space, from the top
slip-cases = that was cases

## What a card alone can tell of a figure, before it is logged.

ferment_fast = Gravity fell { $fell } since { $since }, that is { $a_day } a day; { $much } is much for fruit. Look again, and cool the mash.
ferment_fast-soon = Gravity fell { $fell } since { $since }: fruit does not ferment so fast. Look again.
strength_fell = True strength { BARE($now) } { pct } is { APART($off) } { points } below { BARE($last) } { pct } of { $apart } before: a run falls slower. Look again.
held_strength = True strength { BARE($now) } { pct } is { APART($off) } { points } { $side ->
    [above] above
   *[below] below
  } the { BARE($held) } { pct } that the book has in this vessel. Look again, and for a move or water that was not logged.

## Why the sums refuse a figure. In words stands a unit that is read on no instrument; some figures have none.

reason-outside = { $what } { UNIT($figure) } is outside { UNIT($possible) }. { $advice }
reason-outside_in_words = { $what } { $figure } { $unit } is outside { $possible } { $unit }. { $advice }
reason-off_glass = At { $temp } spirit of { $strength } stands off the glass's scale. Bring it nearer to { glass-temp }, or use a density meter.
glass-temp = { UNITS() ->
    [us] 60 °F
   *[metric] 20 °C
  }
reason-glass_too_weak = A reading of { $reading } at { $temp } would mean no alcohol at all. At that temperature a glass can show { $low } to { $high }: read glass and thermometer again.
reason-glass_too_strong = A reading of { $reading } at { $temp } would mean more than pure alcohol. At that temperature a glass can show { $low } to { $high }: read glass and thermometer again.
reason-part_ice = At { $temp } this may be part ice. Warm it above { $above } and read again.
reason-no_such_density = Density { $density } is outside { BARE($ethanol) } (ethanol) to { $water } (water) at this temperature. Check density and temperature; sugar or solids in the sample also do this.
reason-table1_blank = Table 1 has no figure for { $reading } at { $temp }. Bring the spirit nearer to 60 °F and read again.
reason-gravity_above_start = Gravity is above that at the start. Check both, the tank, and whether sugar was added.
reason-no_dip_table = The book has no table for this vessel. Type its litres; the office can give it a table, under the vessel, Dips.
reason-tare_too_heavy = Tare must lie between nothing and the gross weight. Weigh again.
reason-target_too_strong = Water can only make it weaker. Check target and strength.
reason-empty_bottle_heavy = An empty bottle is lighter than a full one. Weigh both again.
reason-few_checks = It takes { $least } at least. Check more bottles.
reason-no_gauges = Gauge the cask first.
reason-uneven_readings = Give one gravity for each time.

# What is measured
measured-alcohol_by_both = Alcohol by both
measured-bottle_size = Bottle size
measured-brix = Brix
measured-charge = Charge
measured-check = Check
measured-density = Density
measured-fruit = Fruit
measured-full_bottle = Full bottle
measured-glass_expansion = Glass expansion
measured-glass_reading = Glass reading
measured-gravity = Gravity
measured-dip = Dip
measured-bung_diameter = Diameter at the bung
measured-head_diameter = Diameter of the head
measured-length = Length
measured-extract = Dry extract
measured-height = Height
measured-hydrometer_correction = Hydrometer correction
measured-juice_share = Juice share
measured-loss = Loss
measured-mass_fraction = Mass fraction
measured-mole_fraction = Mole fraction
measured-net_weight = Net weight
measured-number = Number
measured-original_gravity = Original gravity
measured-plato = Plato
measured-proof = Proof
measured-proof_gallons = Proof gallons
measured-proof_reading = Proof reading
measured-pure_alcohol = Pure alcohol
measured-pure_alcohol_charged = Pure alcohol charged
measured-refractometer = Refractometer
measured-result = Result
measured-size = Size
measured-solids = Solids
measured-strength = Strength
measured-sugar = Sugar
measured-temperature = Temperature
measured-thermometer_correction = Thermometer correction
measured-time = Time
measured-time_ahead = Time ahead
measured-unfermentable_part = Unfermentable part
measured-usual_drift = Usual drift
measured-volume = Volume
measured-water = Water
measured-water_temperature = Water temperature

# In what
measure-kg_kg = kg/kg
measure-mol_mol = mol/mol
measure-kg_L = kg/L
measure-m = m
measure-per_degC = per °C
measure-of_one = of one
measure-days = days
measure-years = years
measure-pct_year = % a year
measure-pct_vol_year = % vol a year

# What to do next
advice-cannot_rise = Gravity cannot have risen. Check both.
advice-check_charge = Check what was charged.
advice-check_charge_strength = Check the strength of the charge.
advice-check_dip = Check the dip and its unit.
advice-check_figure = Check the figure and its unit.
advice-check_gauges = Check the gauges.
advice-check_glass = Check the glass.
advice-check_glass_figure = Check the figure; a proof glass has its own unit.
advice-check_instrument = Check the figure and the instrument.
advice-dip_in_table = The table of the vessel ends there: dip again, or type the litres.
advice-dip_in_cask = The cask is no higher: dip again, or look at its dimensions.
advice-measure_cask = Measure the cask again.
advice-check_scale = Check the figure and which scale the instrument has.
advice-check_strengths = Check the strengths.
advice-check_thermometer = Check the thermometer and its unit, or bring the sample into the range.
advice-check_weights = Check gross and tare.
advice-count_again = Count again.
advice-distil_sample = Distil the sample and take the distillate's proof.
advice-empty_cask = An empty cask loses nothing.
advice-fraction_not_percent = Give it as a fraction of one, not in percent.
advice-gauge_again = Gauge the tank again.
advice-gauge_first = Gauge the tank first.
advice-give_cask_size = Put the cask's size into the book.
advice-give_height = Give the still's height above the sea in metres.
advice-look_again = Look at the figure again.
advice-look_at_label = Look at the label.
advice-no_baume = Below water there is no Baumé. Take the strength from the fall of the gravity.
advice-no_check = No check outside that range.
advice-not_so_far = Nobody knows a cask so far ahead.
advice-order_gauges = Put the gauges in order of time.
advice-order_readings = Put the readings in order of time.
advice-read_both_again = The two do not go together. Read both again.
advice-read_spirit_again = Read the spirit's thermometer again.
advice-read_water_again = Read the water's thermometer again.
advice-see_certificate = Take it from the instrument's certificate.
advice-soda_lime = Soda-lime glass is 0.000025.
advice-table1_reading = Table 1 ends there: read the glass again.
advice-table1_temp = Table 1 ends there: bring the spirit nearer to 60 °F.
advice-table_ends = The published table ends there.
advice-two_gauges = Two gauges at one time make no rate.
advice-usual_juice_share = Whole-fruit mash is 0.75 to 0.9.
advice-usual_unfermentable = 3 to 5 is usual.
advice-weigh_again = Weigh it again.

## The phone's own words.

# shared by several pages
floor-go_on = Go on
floor-not_said = not said
floor-remark = remark
floor-mistyped = mistyped
floor-misread = misread
floor-save_the_slate_to = Save the slate to a file
floor-as_last_time = as last time
floor-pin_of = PIN of { $code }
floor-log_it = Log it
floor-remark_2 = Remark
floor-leave_it = Leave it
floor-more = More
floor-today = Today
floor-blind_tasting = Blind tasting
floor-more_2 = { $rest } more
floor-next = next
floor-empty = empty
floor-helps = Helps
floor-ended = ended { $ended_at }
floor-gauge_the_fractions = Gauge the fractions
floor-run = run
floor-hearts = hearts
floor-tails = tails
floor-true_strength_over_time = True strength over time
floor-time = time
floor-run_before = run before
floor-nose_first = Nose first.
floor-reading = Reading
floor-nose_first_2 = nose first
floor-cut_plan = Cut plan
floor-cut_to_hearts = Cut to hearts
floor-empty_by_the_book = empty, by the book
floor-this_phone = This phone
floor-not_let_in = not let in
floor-since = since { $started_at } · { $started_at_2 }
floor-run_sheet = Run sheet
floor-let_this_phone_in = Let this phone in
floor-put_it_right = Put it right
floor-take_it_back = Take it back
floor-taken_back_it_stays = Taken back. It stays legible, struck through.

# floor.js
floor-start-this_phone_now_works = This phone now works without signal.
floor-start-this_page_did_not = This page did not open as it should. { $message } The slate is safe.
floor-start-try_again = Try again

# form/begun.js
floor-begun-begun_before = Begun before
floor-begun-begun_by = Begun { $ago } by { $code }{ $shown }
floor-begun-go_on_or_start = Go on, or start clean?
floor-begun-start_clean = Start clean

# form/entryform.js
floor-entryform-log = Log { $figure } { $unit }
floor-entryform-as_read = { " " }as read

# form/extras.js
floor-extras-instrument_for = { $instrument } for { $label }
floor-extras-corrected = { " " }· corrected
floor-extras-read_at = Read at { $typed }
floor-extras-read_now = Read now
floor-extras-read_earlier = Read earlier?
floor-extras-with_a_remark = with a remark

# form/fix.js
floor-fix-something_else = something else
floor-fix-of = { " " }of { $day }
floor-fix-of_2 = { " " }of { $day }, { $at }
floor-fix-this_replaces_the_entry = This replaces the entry{ $when }, which stays legible. { $rest }
floor-fix-type_all_of_it = Type all of it, not only what was wrong.
floor-fix-what_was_wrong = What was wrong

# form/full.js
floor-full-the_phone_could_not = The phone could not keep this. The figures stay here; log it again.
floor-full-not_on_the_slate = Not on the slate.
floor-full-the_figures_stay_in = { $words } The figures stay in this form.

# form/ghosts.js
floor-ghosts-last = last { $words }, { $when }
floor-ghosts-last_2 = last { $figure }, { $when }

# form/jumps.js
floor-jumps-can_only_fall_it = { $label } can only fall: it was { $last } { $when }.
floor-jumps-before = before

# form/look.js
floor-look-look_again = Look again
floor-look-danger = Danger.
floor-look-look_again_2 = Look again?
floor-look-keep_as_read = Keep as read

# form/marks.js
floor-marks-pick_scan_or_type = pick, scan or type
floor-marks-scan_or_type = scan or type

# form/quickfields.js
floor-quickfields-unit_of = Unit of { $label }
floor-quickfields-minute = Minute

# form/sums.js
floor-sums-by_the_class_of = by the class of the instruments, or that of the law

# jobs/run/panels.js
floor-panels-not_read_yet = not read yet
floor-panels-switch_first_mark_of = Switch first. Mark of the receiver now open
floor-panels-switch_first_open_now = Switch first. Open now:
floor-panels-another_minute_more_figures = another minute, more figures

# jobs/run/paper.js
floor-paper-no_strength_yet = No strength yet.
floor-paper-glass = glass { $glass }{ $temp }
floor-paper-at = { " " }at { $temp }
floor-paper-flow = Flow
floor-paper-not_read = not read
floor-paper-not_since = , not since
floor-paper-the_sum_needs_it = the sum needs it
floor-paper-receivers = Receivers
floor-paper-true = { $true_strength } true
floor-paper-dip = dip { $dip }
floor-paper-logged = logged { $typed_at }
floor-paper-logged_in_this_run = Logged in this run
floor-paper-twice = twice
floor-paper-logged_twice = Logged twice within a minute. If it was one { $what ->
    [change] change
   *[cut] cut
  }, take one back.
floor-paper-this_phone = this phone

# jobs/run/state.js
floor-state-cut_to_tails = Cut to tails
floor-state-end_the_run = End the run
floor-state-last_time = { LOWER($step) } last time
floor-state-heads_cut = heads cut
floor-state-hearts_cut = hearts cut
floor-state-logged = , logged { $typed_at }
floor-state-logged_twice = , logged twice

# pages/enrol.js
floor-enrol-the_code_is_missing = The code is missing. Scan it in the office, or type it.
floor-enrol-letting_it_in_and = Letting it in, and fetching the vessels' cards.
floor-enrol-is_let_in = { $name } is let in.
floor-enrol-the_book_did_not = The book did not take this code. Ask the office for a new one.

# pages/job.js
floor-job-there_is_no_such = There is no such page. Go back to Today.
floor-job-this_page_is_not = This page is not on the phone yet. It comes by itself the next time the phone reaches the book; until then, log from the vessel's card.
floor-job-not_here_yet = Not here yet

# pages/log.js
floor-log-not_on_this_phones = not on this phone's list

# pages/more.js
floor-more-note = Note
floor-more-to_the_next_shift = to the next shift
floor-more-instrument = Instrument
floor-more-check_it = check it
floor-more-bottles = Bottles
floor-more-count_them = count them
floor-more-cases = Cases
floor-more-out_or_back = out or back
floor-more-in_from_another_site = in from another site
floor-more-stock = Stock
floor-more-count_it_in_a = count it in a round
floor-more-your_glasses = your glasses
floor-more-laboratory = Laboratory
floor-more-of_bottled_spirit = of bottled spirit
floor-more-the_curves = the curves
floor-more-the_jobs = the jobs
floor-more-the_reader_of_labels = the reader of labels
floor-more-log_without_a_vessel = Log without a vessel
floor-more-nobody_chosen = Nobody chosen
floor-more-who_logs = who logs
floor-more-no_name_yet = No name yet
floor-more-let_in = let in
floor-more-gloves_buzz_voice = gloves, buzz, voice
floor-more-desk = Desk
floor-more-needs_signal = needs signal
floor-more-put_the_phone_down = Put the phone down
floor-more-not_on_this_phone = Not on this phone yet: { $awaited }. Keep the app open with signal for a minute.
floor-more-as_you_like_it = As you like it
floor-more-units = Units
floor-more-metric = metric
floor-more-us = US
floor-more-decimal_mark = Decimal mark
floor-more-as_the_house = as the house
floor-more-keys = Keys
floor-more-large_keys = large keys
floor-more-phone_keyboard = phone keyboard
floor-more-light = Light
floor-more-as_the_phone = as the phone
floor-more-dark = dark
floor-more-light_2 = light
floor-more-put_cellarslate_on_the = Put Cellarslate on the home screen
floor-more-put_cellarslate_on_the_2 = Put Cellarslate on the home screen (Share, then Add to Home Screen): the phone then keeps the slate for longer.

# pages/run.js
floor-run-the_run_in_full = The run in full could not be shown; the sheet stands without it.
floor-run-no_run_is_known = No run is known on this phone for { $mark }. Charge the still first; or read now, and the book joins it to its run.
floor-run-charge = Charge
floor-run-heat_on = Heat on
floor-run-first_drop = First drop
floor-run-other_event = Other event
floor-run-still_opened = Still opened
floor-run-balance_and_yield = Balance and yield
floor-run-charge_again = Charge again
floor-run-switch_the_receiver_first = switch the receiver first
floor-run-event = Event
floor-run-log_the_cut = Log the cut

# pages/scan.js
floor-scan-the_reader_of_labels = The reader of labels is not on this phone yet: it comes with the next signal. Type the mark.

# pages/slate.js
floor-slate-not_let_in_yet = not let in yet
floor-slate-handed_in = handed in { $handed_in_at }
floor-slate-nothing_handed_in_yet = nothing handed in yet
floor-slate-handing_in = handing in
floor-slate-book_busy = book busy
floor-slate-wants_a_look = Wants a look
floor-slate-waiting = Waiting
floor-slate-put_aside_not_in = Put aside, not in the book
floor-slate-in_the_book = In the book
floor-slate-handing_in_2 = Handing in
floor-slate-hand_in_now = Hand in now
floor-slate-entries_wait = { PLURAL($count) ->
    [one] { $count } entry waits
   *[other] { $count } entries wait
  } on this phone.
floor-slate-nothing_waits = Nothing waits.
floor-slate-all_in_the_book = All in the book.
floor-slate-handing_in_3 = Handing in{ $in }.
floor-slate-of_are_in = : { $done } of { $asked } are in
floor-slate-the_book_does_not = The book does not know this phone yet. Let it in; they then hand themselves in.
floor-slate-they_are_safe_here = They are safe here and hand themselves in when the book answers.
floor-slate-lines_want_a_look = { PLURAL($count) ->
    [one] { $count } line wants
   *[other] { $count } lines want
  } a look.
floor-slate-entries_put_aside = { PLURAL($count) ->
    [one] { $count } entry was
   *[other] { $count } entries were
  } put aside.
floor-slate-entries_handed_in = { PLURAL($count) ->
    [one] { $count } entry was
   *[other] { $count } entries were
  } handed in just now.
floor-slate-keeping_it_safe = Keeping it safe
floor-slate-storage_is_kept = storage is kept
floor-slate-storage_may_be_cleared = storage may be cleared
floor-slate-load_a_saved_slate = Load a saved slate
floor-slate-a_saved_slate_can = A saved slate can be loaded on any phone, at any later time. The book takes each entry once.
floor-slate-entries_on_this_slate = { PLURAL($count) ->
    [one] { $count } entry is
   *[other] { $count } entries are
  } on this slate now.{ $known }
floor-slate-were_here_already = { " " }{ $known } were here already.

# pages/today.js
floor-today-the_book_has_no = The book has no vessels yet. The office puts them in; they then come here by themselves.
floor-today-the_book_does_not = The book does not know this phone yet.
floor-today-no_cards_on_this = No cards on this phone yet. They come with the first hand-in.
floor-today-you_can_scan_and = You can scan and log already; it all waits here.
floor-today-run = { $what } run { $name }
floor-today-read = { " " }· read { $last }
floor-today-true = { $sign } true
floor-today-the_book_asks = The book asks
floor-today-last_remarks = Last remarks
floor-today-all_vessels = All vessels
floor-today-find_by_mark_name = Find by mark, name or what it holds
floor-today-no_vessel_here_is = No vessel here is called that.
floor-today-elsewhere = Elsewhere

# pages/vessel.js
floor-vessel-no_mark = no mark
floor-vessel-not_known_here = not known here
floor-vessel-this_phone_knows_no = This phone knows no vessel with this mark. Hand in once with signal; the book may know it by now.
floor-vessel-at = At { $mark }:{ " " }
floor-vessel-note_it = Note it
floor-vessel-scan_again = Scan again
floor-vessel-open_queries = Open queries
floor-vessel-filled = Filled { $since }.
floor-vessel-nothing_logged_here_yet = Nothing logged here yet.
floor-vessel-the_book_is_still = The book is still working out what late entries change here.
floor-vessel-as_the_book_had = As the book had it { $fresh }.
floor-vessel-the_book_has_not = The book has not been asked yet.
floor-vessel-readings_without_a_charge = Readings without a charge
floor-vessel-how_much_water = How much water
floor-vessel-bottling_line = Bottling line
floor-vessel-more_to_log = More to log
floor-vessel-what_to_log = What to log

# pages/who.js
floor-who-logs_now = { $name } logs now.
floor-who-logs = { $name } logs
floor-who-no_names_on_this = No names on this phone yet.
floor-who-they_come_with_the = They come with the first hand-in. Until then entries are logged without a name.
floor-who-as = As
floor-who-no_signal_so_this = No signal, so this PIN was not looked at. What you log is asked about.

# shell/cautions.js
floor-cautions-carbon_dioxide_lies_low = Carbon dioxide lies low and has no smell. At 5000 ppm leave, ventilate, tell the supervisor.
floor-cautions-stay_outside_the_line = Stay outside the line unless this phone is rated and your site allows it. Read later? Give it its own minute.
floor-cautions-a_hydrometer_cannot_see = A hydrometer cannot see methanol. Nose first; a laboratory knows.
floor-cautions-hot_and_under_pressure = Hot, and under pressure if a path blocks. Never leave a running still.
floor-cautions-never_lift_a_full = Never lift a full cask by hand.
floor-cautions-no_one_enters_a = No one enters a vessel without a permit and someone outside.

# shell/frame.js
floor-frame-no_signal = no signal
floor-frame-not_the_book = not the book
floor-frame-to_look_at = { $attention } to look at
floor-frame-on_slate = { $waiting } on slate

# shell/inunits.js
floor-inunits-true_at_20_c = true at 20 °C
floor-inunits-true_at_60_f = true at 60 °F

# shell/linesheet.js
floor-linesheet-wrong_vessel = wrong vessel
floor-linesheet-logged_twice = logged twice
floor-linesheet-open_put_it_right = Open { $kind }, { $line }: put it right or take it back
floor-linesheet-why_it_stays_legible = Why? It stays legible, struck through, and counts no more.
floor-linesheet-that_could_not_be = That could not be kept. Try again.

# shell/scanfor.js
floor-scanfor-what_the_camera_sees = What the camera sees
floor-scanfor-back_to_the_form = Back to the form

# shell/slatelines.js
floor-slatelines-taken_back = taken back
floor-slatelines-refused = refused
floor-slatelines-clash = clash
floor-slatelines-the_book_has_another = The book has another entry under this one's name. Both are kept; the distiller decides.
floor-slatelines-the_book_cannot_read = The book cannot read it.
floor-slatelines-book_no = Book no. { $book_no }
floor-slatelines-hand_in_again = Hand in again
floor-slatelines-i_have_read_it = I have read it

# shell/takebackbar.js
floor-takebackbar-taken_back_at_once = taken back at once
floor-takebackbar-that_could_not_be = That could not be kept. Take it back on its own line.

# shell/typemark.js
floor-typemark-letters_digits_and_the = Letters, digits and the last character after the dash.
floor-typemark-the_last_character_is = The last character is missing. Type it too, or tap the mark that is on the label.
floor-typemark-a_right_mark_but = A right mark, but not of a vessel this phone knows.

# shell/words.js
floor-words-on_the_slate_wait = On the slate. { $waiting } wait on this phone.
floor-words-on_the_slate_it = On the slate. It waits on this phone.
floor-words-batch = batch { $name }
floor-words-at = at { $strength_pct }
floor-words-just_now = just now
floor-words-min_ago = { $minutes } min ago
floor-words-h_ago = { $minutes } h ago
floor-words-days_ago = { $minutes } days ago

# slate/ask.js
floor-ask-the_book_did_not = The book did not answer in time.
floor-ask-the_book_cannot_be = The book cannot be reached from here.
floor-ask-something_else_answered_not = Something else answered, not the book: perhaps this network wants a sign-in first.

# slate/db.js
floor-db-this_phones_storage_is = This phone's storage is full, so nothing was kept. Free some space, or save the slate to a file and hand it in.
floor-db-a_newer_cellarslate_has = A newer Cellarslate has the slate open. Close the other tabs, then open this page again.
floor-db-an_older_cellarslate_is = An older Cellarslate is open in another tab. Close it; the slate opens then.
floor-db-this_browser_does_not = This browser does not let the slate keep anything ({ $name }). Leave private browsing, or use another browser.

# slate/device.js
floor-device-clock_off = This phone's clock is { $span } { $side ->
    [ahead] ahead of
   *[behind] behind
  } the book's. Set it right; what is logged keeps its times.
floor-device-the_browser_has_promised = The browser has promised to keep the slate.
floor-device-the_browser_may_clear = The browser may clear the slate when storage runs short or the app lies unused. Install the app, and hand in often.

# slate/handin.js
floor-handin-this_entry_is_too = This entry is too large for the book. Shorten its remark and log it again; this one stays here.
floor-handin-the_answer_was_not = The answer was not one of the book's receipts.
floor-handin-the_slate_keeps_everything = The slate keeps everything and tries again.
floor-handin-something_failed = Something failed.
floor-handin-this_phone_must_be = This phone must be let in again. Nothing is lost; the slate keeps everything.

# slate/who.js
floor-who-nobody_here_has_the = Nobody here has the code { $code }. Pick your name from the list.
floor-who-type_your_pin = Type your PIN.
floor-who-that_is_not_this = That is not this person's PIN. Try again.

# ui/charts.js
floor-charts-the_curve_could_not = The curve could not be drawn; its figures are shown.

# ui/charttable.js
floor-charttable-one_row_in = { " " }One row in { $step }.
floor-charttable-expected = expected
floor-charttable-at = { $y } at { $x }{ $unit }
floor-charttable-to = , to{ " " }
floor-charttable-to_2 = { $label }: { $from } to { $to }{ $unit }.
floor-charttable-at_2 = { $label } at { $x }{ $unit }.
floor-charttable-at_3 = { $label } at { $y }.

# ui/format.js
floor-format-day = day { $start }
floor-format-yesterday = yesterday
floor-format-days_ago = { $days } days ago

# ui/keypad.js
floor-keypad-erase = Erase
floor-keypad-plus_or_minus = Plus or minus
floor-keypad-unit = unit
floor-keypad-decimal_comma = Decimal comma
floor-keypad-decimal_point = Decimal point
floor-keypad-units = units
floor-keypad-swap = swap { $text }

# ui/notice.js
floor-notice-later = Later
floor-notice-a_newer_cellarslate_is = A newer Cellarslate is ready. Nothing on the slate is touched.
floor-notice-use_it_now = Use it now

floor-badge = { $weight ->
    [stop] stop
    [ask] ask
    [entered] entered
    [waiting] waiting
   *[note] note
  }
floor-may_stay_empty = (may stay empty)
floor-litres = litres
floor-gallons = gallons
floor-part = { $part ->
    [hearts] hearts
    [tails] tails
    [low_wines] low wines
   *[heads] heads
  }
floor-state-receiver = { $state ->
    [open] open
    [closed] closed
   *[waiting] waiting
  }
# Why what was typed or scanned is no mark.
floor-bad_mark = { $why ->
    [empty] Type the mark on the label, such as F3-8.
    [foreign] This code is not one of ours. Scan the label on the vessel, or type its mark.
    [characters] A mark has only letters A to Z and digits 0 to 9. Read the label again.
    [too_short] A mark has a code and a check character, such as F3-8. Type all of it.
    [too_long] This is too long for a mark. Type the large print on the label.
   *[check] { $mark } is no mark: a character is wrong, or the last one is missing. Read the label again.
  }

# How a label begins within a sentence: { $words } where nouns keep their capitals.
floor-within_sentence = { LOWER($words) }

floor-scanfor-scan = Scan: { $label }
floor-takebackbar-just_logged = Just logged
floor-keypad-name = Keypad
floor-keypad-no_other_unit = No other unit

floor-more-language = Language
floor-more-language_not_here = That language is not on this phone yet. Choose it again with signal.

### A phone fetches what follows after its first install.

pure = { UNITS() ->
    [us] proof gallons
   *[metric] L pure alcohol
  }
of-pure = { UNITS() ->
    [us] proof gallons
   *[metric] L of pure alcohol
  }
pure-sign = { UNITS() ->
    [us] proof gal
   *[metric] L
  }

## What the book takes for no entry, and puts aside

no_entry = This is no entry. Update the app on the phone and send it again.
unkeepable = It holds a figure or a character that cannot be kept. Log it anew.
too_long-entry = The entry is too long to be one. Shorten its texts and log it anew.
malformed = { $path }: { $words }
malformed-whole = { $words }
fault-missing = Missing data for required field.
fault-null = Field may not be null.
fault-no_text = Not a valid string.
fault-no_number = Not a valid integer.
fault-no_members = Not a valid mapping type.
fault-no_list = Not a valid list.
fault-no_object = Invalid input type.
fault-no_id = The id is no UUID in lower case.
fault-no_time = A time needs date, hour and offset, such as 2025-09-24T08:05:00+02:00.
fault-no_digest = The name of a picture is its SHA-256 in lower case.
fault-unkeepable = This text holds characters that cannot be kept.
fault-unknown = Unknown field.
fault-longer = Longer than maximum length { $most }.
fault-one_of = Must be one of: { $choices }.
fault-between = Must be greater than or equal to { $least } and less than or equal to { $most }.
no_such_kind = The book knows no entry called { $kind }. Update the book.
newer_kind = The phone is newer than the book. Update the book, then send again.
bad_mark = { $mark } is no mark. Read the label again and log it anew.
bad_mark-field = { $label }: { $mark } is no mark. Read the label again.
missing-mark = The vessel's mark is missing. Scan the label, or type it.
amends_itself = It says that it amends itself. Log it anew.
clash-in_book = This id is in the book with another body, under number { $number }. A person decides.
clash-in_batch = This id comes twice in one batch with two bodies. The first is in the book. A person decides.
bad_signature = It does not bear the signature of the phone that it names: it was changed after it was logged. Log it anew.
not_the_desk = It says that it was logged at the desk. Log it anew, at the desk or on the phone.
may_not_answer = Answers are given at the desk, by a distiller or the office. Sign in there, then answer.

## Of any entry

not_worked_out = The book could not work this entry out. It is kept as it came; report this to whoever keeps the program.
clash = Another body came under the id of this entry and was put aside. Compare the two; amend this or let it stand.
amended_after_strike = It amends an entry that was struck before. It counts for nothing unless you say that it stands.
unknown_person = The book knows nobody with the code { $code }. Add them, or amend.
unknown_vessel = No vessel { $mark } is in the book. Add it, or amend the entry.
wrong_sort = { $vessel } is a { $sort }; { LOWER($kind) } is not logged there. Right vessel?
wrong_sort-field = { $label }: { $vessel } is a { $sort }. Right vessel?
sort-fermenter = fermenter
sort-still = still
sort-receiver = receiver
sort-tank = tank
sort-cask = cask
sort-can = can
sort-place = place
stock_short = { BARE($taken) } { of-pure } taken out of { $vessel }, { BARE($booked) } { pure-sign } in it by the book. Look at both figures again.
from_nothing = { BARE($came) } { of-pure } came from where the book has nothing. Is it the right vessel and time? If so, log what was there before.

## Time

clock = This phone's clock was { $off } { clock-way } when it handed this in.
clock-way = { $way ->
    [slow] slow
   *[fast] fast
  }
clock-ask = This phone's clock was { $off } { clock-way } when it handed this in. By that clock it was read on { ISO_DAY($told) } at { CLOCK($told) }; the book takes it in order as { ISO_DAY($ordered) } { CLOCK($ordered) }; both are kept. Set the clock right, and say whether the day is right.
hand_unsigned = This phone signs what is logged on it, and this came without its signature. Ask { $person } whether the entry is theirs.
hand_not_shown = { $person } has a PIN and had not typed it on this phone. Ask them whether the entry is theirs.
hand_second = The house wants the PIN typed for this when it is logged, and it was not. Ask { $person } whether the entry is theirs.
hand_witness = { $person } is named as having seen it, and has never typed their PIN on this phone. Ask them.
received = Handed in { $after } after it was typed.
late = Typed { $after } after it was read.
time_order = Read { $after } after it was typed: that cannot be. Set the time of reading right.
twice = The same figures stand at { $at } ({ $before ->
    [none] at the same moment
   *[other] { $before } before
  }{ $by ->
    [none] { "" }
   *[other] , by { $by }
  }). Is it one reading, entered twice?
moved_twice = The same figures stand at { $at }. Is it one and the same, logged twice?
named_twice = { $label } { $name } stands at { $at } already. Give the next one.
two_people = { $other } gauged this vessel too, { $at }: { TYPED($theirs) }. { $me } has { TYPED($mine) }. Both are kept; which one counts?
too_neat = { $label } { TYPED($figure) }, { $times } times running. Is it read each time?
neat_round = { $label } { TYPED($figure) } on { $vessels } vessels running. Is it read on each?

## Instruments

instrument-failed = { $instrument } failed its check on { $on }. Read it again with another.
instrument-would = { $instrument } failed its check on { $on }: by it { TYPED($figure) } would be { TYPED($would) }. Read it again with another.
instrument-out_of_use = { $instrument } is out of use since { $since }. Which instrument was it?
instrument-due = { $instrument } was due for a check on { ISO_DAY($on) }. Check it.
unknown_instrument = The book knows no instrument { $instrument }. Add it, or amend the entry.
check_left = { $instrument } is called good: it shows { $found }, with { $correction } added { $then }, and should show { $expected }. Look at the three figures; an instrument that is off has failed.
instrument_failed = { $instrument } { $side ->
    [high] shows { $off } too high{ instrument-where }
    [low] shows { $off } too low{ instrument-where }
   *[none] failed
  }. Every reading with it since { $since ->
    [new] it was new
   *[other] its last good check on { $since }
  } is in doubt: look through the list on its page.
instrument-where = { $against ->
    [ice] { " " }in ice
    [boiling] { " " }in boiling water
   *[other] { "" }
  }
glass_scale = { $instrument } shows { BARE(TYPED($low)) }{ $high ->
    [none] { "" }
   *[other] { " " }to { BARE(TYPED($high)) }
  }; { TYPED($figure) } cannot be read on it. Which instrument was it?

## Ferments

ferment_gravity_rose = Gravity { $gravity } is above { $last } of { $at }; it can only fall.
ferment_jump = Mash { TYPED($temp) }, { TYPED($last) } at the last reading: a mash moves slower. Look again.
sugar_gravity = First gravity { TYPED($gravity) }: the sugar of the fruit says about { TYPED($usual) }. Look at both again.
close_gravity = Final gravity { TYPED($gravity) }, { TYPED($last) } at the last reading. Look again.
close_volume = { TYPED($volume) } of wash from { $fruit } of fruit: about { $usual } is usual. Look at the dip, and for a load that was not logged.
ferment_stuck = Gravity { $gravity } { $moved ->
    [none] has not moved
   *[other] has moved by { $moved }
  } in { $apart } and stands { $above } above the { $end } where { $what ->
    [none] such fruit
   *[other] { $what }
  } usually ends: not moving and not finished.{ $mash ->
    [none] { "" }
   *[other] { " " }Mash { TYPED($mash) }.
  } Look at temperature, acid and yeast food.
ferment_ended = Three equal gravities at { $gravity } in { $within }: the ferment has ended. Book the still.
ferment_heat = Mash { TYPED($temp) } is above { TYPED($most) }: too hot for { $what ->
    [grain] grain
   *[fruit] fruit
  }. Cool it now.
ferment_temp_sense = Mash { TYPED($temp) } would kill the yeast. Read as Fahrenheit it is { TYPED($meant) } ({ $other }){ temp-fits }. Did you mean that?
ferment_temp_sense-cold = Mash { TYPED($temp) } is at or below freezing ({ TYPED($cold) }). Read as Celsius it is { TYPED($meant) }{ temp-fits }. Did you mean that?
temp-fits = { $near ->
    [none] { "" }
   *[other] , which fits { TYPED($near) } of { $at }
  }
ferment_yield = { BARE($made) } { pure } in the wash, { $load }: about { BARE($wanted) } { pure-sign } could be expected{ $what ->
    [none] { "" }
   *[other] { " " }by your last { $years } of { $what }
  }. That is { $side ->
    [much] much
   *[little] little
  }: { $share }, where { BARE($low) } to { $high } is usual. Look at strength, dip and weights.
ferment_yield-most = { BARE($made) } { pure } in the wash, { $load }: all of its sugar could not give more than { BARE($most) } { pure-sign }. Look at the strength, the dip and the weights; was sugar added?
load-grain = from { $weight } of grain
load-fruit = from { $weight } of fruit at { $sugar }
wash_strength = { TYPED($strength) } out of { $vessel } is much for a ferment: { UNITS() ->
    [us] 6
   *[metric] 3
  } to { BARE($most) } { pct } is usual. Look again.
wash_strength-impossible = { TYPED($strength) } out of { $vessel } cannot be: no ferment gives that. Look again.

## Vessels

over_capacity = { $contents } does not fit into { $vessel }, which holds { $holds }. Look again.
over_working_level = { $contents } is above the working level of { $vessel }, { $level }. Look again.
contents-fruit = { $fruit } of fruit ({ $before ->
    [none] { "" }
   *[other] with { $before } already in it,{ " " }
  }about { $mash } of mash)
contents-charge = A charge of { $charge }{ $feints ->
    [none] { "" }
   *[other] { " " }({ BARE($wash) } wash and { BARE($feints) } feints)
  }
vessel_empty = The book has nothing in { $vessel } at this time. Is it the right vessel and time? If so, log its fill.
source_empty = The book has nothing in { $vessel } to charge from. Is it the right vessel? If so, log its fill.
vessel_not_empty = { $vessel } is not empty by the book: { $held ->
    [none] { "" }
   *[other] { BARE($held) } { of-pure },{ " " }
  }{ $what }. Right cask? Was it dumped?
target_capacity = { $then } then stands in { $vessel } ({ target-holds }). Right vessel and figures?
target_working_level = { $then } then stands in { $vessel } ({ target-holds }). Right vessel and figures?
target-holds = holds { $holds }, working level { $level }{ $has ->
    [none] { "" }
   *[other] , { $has } in it
  }
emptied_vessel = { $vessel } was { $how ->
    [dump] dumped
    [destruction] destroyed
    [loss] written off
    [account_move] moved
    [bottling_close] bottled
    [charge] charged to a still
    [cask_fill] filled into a cask
    [top_up] poured into a cask
    [chill_filter] filtered into another tank
    [gauge] found empty
    [stock_count] found empty
    [fraction_gauge] drained
   *[other] emptied
  } at { $at } by { $by } and is empty by the book. Was this read before that? Then amend its time. Or was it another vessel?
move_gain = In { $vessel } { BARE($had) } by the book, { BARE($moved) } moved: { BARE($more) } { pure } ({ $share }) more than was there. A move gains nothing: up to { $most } is reading. Look at dip, temperature and strength of both.
account_other = By the book { $vessel } holds { BARE($held) } { of-pure } in { $account }. Moved as { $other }, all of it stands in { $other } now, not only the { BARE($moved) } that move. Was that declared?
account_joined = { BARE($held) } { of-pure } in { $vessel } stand in { $account } by the book. Joined by { BARE($moved) } as { $other }, all of it stands in { $other } now. Was that declared?
fruit_mixed = { $net } of { $fruit } go to { $lies } of { $other }: { $share } of the mash. Its spirit is then named by both, with their shares, and by neither alone. Right fruit, right fermenter?
opening_nothing = The book has nothing in { $vessel }, and nothing is weighed or dipped here. Type its gross weight, net weight or volume.
opening_seen = { $vessel } holds what this book has seen begin ({ $at }): that is no opening stock. Right vessel?
opening_again = By the book { BARE($booked) } { of-pure } are in { $vessel } already; here it is { BARE($said) }. Its past is added, its stock stays. Gauge it, if it holds another amount now.
opening_before_fruit = In wood since { $day }, of the harvest of { $harvest }: nothing lies in wood before its fruit. Look at both again.
opening_drift = { $now } now, { $then } at its fill on { $at }: that is much for the years between. Look at both again.
opening_grew = { $now } now, { $then } at its fill: wood gives no alcohol. Look at both again.
opening_overfilled = { TYPED($filled) } at its fill does not fit into { $vessel }, which holds { TYPED($holds) }. Look at the papers again.
opening_no_tare = { TYPED($gross) } with the cask, and nobody has said what it weighs empty. Type its empty weight, or list it with the cask.
opening_to_come = { $day } is after { $read }, when it was read. Look at the year.
opening_long_ago = { $day } is { PLURAL($years) ->
    [one] { $years } year
   *[other] { $years } years
  } before it was read. Right year?
sheet-empty = There is nothing in this file. Take the sheet with the rows.
sheet-too_large = This file is larger than { $most } MB. Save the sheet alone, as CSV, and take that.
sheet-pdf = This is a PDF, whatever its name says. Save the sheet as XLSX, ODS or CSV and take that.
sheet-old = This is a workbook of an older make. Save it as XLSX, ODS or CSV and take that.
sheet-unreadable = This is no spreadsheet that can be read. Save the sheet as XLSX, ODS or CSV and take that.
sheet-swollen = This workbook unpacks to more than { $most } MB. Save the one sheet as CSV and take that.
sheet-rows = { $rows } rows are too many at once: at most { $most }. Take them in parts.
sheet-columns = { $columns } columns are too many: at most { $most }. Take out those that nobody needs here.
sheet-no_heads = No row of this table looks like heads. Put one head over each column, as in the template.
sheet-no_rows = There are heads, and no row below them.
sheet-merged = Heads in row { $row } are merged. Split them, with one head over each column.
sheet-two_columns = Two columns mean the same, { $label }: "{ $one }" and "{ $other }". Say which it is, and what the other is.
sheet-no_column = { PLURAL($many) ->
    [one] A column is missing: { $labels }.
   *[other] Columns are missing: { $labels }.
  } Say which it is, or add it to the sheet.
sheet-order = Days such as { $example }: is the day first or the month? Say which.
sheet-missing = { $label } is missing.
sheet-formula_cell = { $typed } is a formula without a value. Put the value there.
sheet-no_number = { $typed } is no figure.
sheet-bad_number = { $typed }: { $reason }
sheet-no_unit = { $typed }: this column is in { $units }.
sheet-no_choice = { $typed } is none of these: { $choices }.
sheet-no_date = { $typed } is no day. Write it as 2022-11-21 or 21 Nov 2022.
sheet-no_such_day = { $month } has { $last } days.
sheet-which_order = { $typed }: which is the day, and which the month?
sheet-to_come = { $day } is still to come.
sheet-twice = { $name } stands in row { $row } already.
sheet-no_vessel = No vessel is called { $name }. Put it in with a sheet of vessels, or give its capacity here.
sheet-opened = The opening stock of { $name } is in the book already, and says otherwise. Put it right on its page.
sheet-other = { $name } is in the book already: { $there } there, { $here } here. Change it on its own page, or leave this row out.
opening_goods_again = The book has { $there } bottles of { $batch } already, since { $at }; these { $bottles } are put beside them. Are they others?
move_balance = In { $vessel } { BARE($had) } by the book, into { $to } { BARE($moved) }: { BARE($left) } { pure } ({ $share }) left behind. Up to { $most } is usual. Is it in the line or still in the vessel? Gauge it.
move_balance-off = In { $vessel } { BARE($had) } by the book, off the premises { BARE($moved) }: { BARE($left) } { pure } ({ $share }) left behind. Up to { $most } is usual. Is it in the line or still in the vessel? Gauge it.
dip_sum = { $dipped } in { $vessel }, { $booked } by the book: { $off } { $side ->
    [above] above
   *[below] short of
  } the sum ({ $share }). Look at the dip, then for a move that is not logged.
dip_sum-dump = { $dipped } dipped in { $vessel }, { $sum } by the sum of what went in: { $off } apart. Look at the dip and at both weights.
source_strength = True strength { BARE($now) } { pct }, { BARE($held) } { pct } in { $vessel } by the book: { APART($off) } { points } apart. Is it this vessel? Look again, and for water or a move that was not logged.
water_off = { TYPED($water) } of water bring it to { BARE($strength) } { pct }, not to { BARE($target) } { pct }: that takes { $needed }. Look at the weight.
blend_sum = In { BARE($went_in) }, measured { BARE($measured) }: { BARE($off) } { pure } ({ $share }) { $side ->
    [more] more
   *[less] less
  } than went into the blend. { $usual } is usual. Is it mixed? Read it again.

## What is forgotten, planned, or out of its row

row_gap = { $label } stands in each of the last { $lines } lines and not in this one. Type it, or say that it was not read.
plates_moved = Plates { $plates }, and { BARE($last) } at { $at }; none is logged as taken in or out since. Look again, or log the change.
strength_row = True strength { BARE($now) } { pct }; by the readings before it would be { BARE($low) } to { BARE($high) } { pct }, and vapour of { TYPED($vapour) } is for that. Look at the glass and the temperature.
ferment_row = Gravity { TYPED($gravity) }: it fell { BARE($before) } a day, and now hardly. Is it this reading, or that of the line before?
ferment_row-again = Gravity { TYPED($gravity) }: it fell { BARE($before) } a day and had slowed, and now { BARE($fell) } a day. Look again.
ferment_jump-row = Mash of { TYPED($temp) }, and { TYPED($usual) } in the middle of the last { $readings } readings. Look again.
charge_low = { $charge } in { $still }, which holds { $holds }: so little burns dry. Look at the dip.
charge_unlike = Wash { TYPED($wash) }, and { TYPED($usual) } in the middle of the charges before it on this still. Look again.
feints_unread = Feints of { $vessel } are named, and not how much. Type the volume and the strength.
feints_part = { TYPED($feints) } of feints, and { TYPED($there) } stand in { $vessel } by the book. Did all of them go in?
move_part = { BARE($moved) } of { BARE($had) } { of-pure } in { $vessel } go, and { BARE($left) } { pure } stay. Did all of it go? Look at the figure and its unit.
account_same = A deposit that stays in the account of { $account ->
    [production] production
    [storage] storage
   *[processing] processing
  } is none. Which account does it go to?
account_habit = Into the account of { $account }; what went from here before went to that of { $usual }. Which is it?
moved_elsewhere = To { $vessel }; what went from here before went to { $usual }, which has room. Which tank is it?
opening_weak = { BARE($now) } { pct } in a cask: below { BARE($least) } { pct } none is bottled. Look at the glass and its unit.
receiver_other = { $vessel } is opened for the { $part }; the charge has { $planned } for them. Which is open now?
receiver_no_cut = { $vessel } is named as open now, and { $event } is no cut. Was it a cut?
receiver_twice = { $vessel } for the { $part } and the { $other } of one run. Which receiver is it?
receiver_role = { $vessel } for the { $part }; it had the { $other } of the run before. Which receiver is it?
target_moved = Target { TYPED($target) }; the water of { $at } was for { TYPED($last) }. Which is it?
target_planned = Target { TYPED($target) }, below the { TYPED($planned) } that { $plan ->
    [none] the vat
   *[other] { $plan }
  } is planned for. Look again.
label_planned = Bottled at { TYPED($label) }, and { $plan ->
    [none] the vat
   *[other] { $plan }
  } is planned for { TYPED($planned) }. Look at both.
dump_planned = { $vessel } is not in the plan{ $plan ->
    [none] { "" }
   *[other] { " " }{ $plan }
  } of { $tank }. Is it this cask, and this tank?
dump_planned-amount = { $net } dumped, and { $wanted } planned{ $plan ->
    [none] { "" }
   *[other] { " " }for { $plan }
  }. Look at both weights.
vat_joins = { $vessel } holds { BARE($held) } { of-pure } that the plan does not name. Is it this tank?
vat_sum = The draws and { TYPED($water) } of water come to { BARE($strength) } { pct }, not to { TYPED($target) }. Look at both.
vat_full = The draws and the water come to { $then }, and { $vessel } holds { $holds }. Is it this tank?
cut_planned = Hearts cut at { BARE($now) } { pct }, planned at { BARE($planned) } { pct }. The nose decides: say why, or look at the glass.
wash_open = The ferment in { $vessel } is not closed: its wash is not measured. Close it first, with the time of its last reading.
water_unread = Water went into { $vessel } at { $at }, and nobody has measured what it came to. Log the glass and the dip after the rest.
bottling_ungauged = { $vessel } is not gauged for bottling: nobody has said its batch and its label. Gauge it first. Or is it another tank?
fraction_left = The { $fraction } are gauged, and the { $missing } of { $run ->
    [none] this run
   *[other] { $run }
  } are not. Gauge them too, with their time.
fraction_left-moved = { $vessel } is emptied, and the { $missing } of { $run ->
    [none] the run
   *[other] { $run }
  } are not gauged. Gauge them too.
run_not_ended = { $run ->
    [none] The run
   *[other] { $run }
  } is gauged to its end, and its end is not logged. Log it with its time.
cleaned_full = { $vessel } is cleaned, and the book has { $litres } in it. Is it this vessel, or is a step not logged?
added_again = As much { $what } of the same lot went into { $vessel } at { $at } already. Is it this vessel, or logged twice?
recask_rest = Emptied into another cask, and { BARE($left) } { of-pure } of { $vessel } are not in it; wood keeps { BARE($kept) }. Is it a top-up, or is more to come?
lab_far = { $substance } { $found }: laboratories find { BARE($low) } to { $high } in spirit. Look at the point and at the line.
stillage_strong = Stillage of { BARE($now) } { pct }, above { BARE($most) } { pct }: is it run out? Look at the figure, and at which part it is.
receiver_full = { $vessel } holds { $held } and has room for { $room }; hearts of { $usual } came into it before. Is a move not logged?
counted_again = { $counted } were counted at { $at } already. Is it one count, logged twice?
removed_otherwise = To { $to_whom }: { $why }. The last goods to them: { $usual }. Which is it?
document_again = Document { $document } stands at goods that left before. Look at its number.

## The still

run_still_open = { $still } already has { $run ->
    [none] a run
   *[other] { $run }
  } open since { $since }. End that run first, or strike this charge.
run_not_open = No run is open on { $still } at this time. Log the charge with its time, and this fits.
run_receiver_same = { $receiver } was open before this cut already. Which receiver is open now? Amend this, or the one before.
run_order-no_hearts_cut = The run ends but no hearts cut is logged; hearts began { $began }. Log the cut with its time.
run_order-opened = The still is opened but its run is not ended. End the run with its time.
run_order-again = { CAPITAL($event) } was logged at { $at } already. Which one counts?
run_order-late = { CAPITAL($event) } comes after { $other } of { $at }. Look at the times.
run_order-no_heads_cut = Hearts are cut but the heads cut is not logged. Log it with its time and receiver.
strength_slope = True strength { BARE($now) } { pct } is above { BARE($last) } { pct } of { $at }; after the heads cut it can only fall, unless plates or cooling were changed.
strength_impossible = True strength { BARE($now) } { pct } cannot be: none is above { $most }. Look again.
strength_class = True strength { BARE($now) } { pct } off { $what ->
    [none] fruit
   *[other] { $what }
  }: { $limit ->
    [brandy_us_pct] above { UNITS() ->
        [us] { APART($most) } proof
       *[metric] { BARE($most) } % (190 proof)
      } it is no brandy in the US (27 CFR 5.145)
    [grain_us_pct] above { UNITS() ->
        [us] { APART($most) } proof
       *[metric] { BARE($most) } % (160 proof)
      } it is no rye whisky in the US (27 CFR 5.143)
   *[fruit_class_pct] at { BARE($most) } { pct } or more it is no fruit spirit in the EU (Regulation 2019/787)
  }. Look at it again.
distillate_warm = Spirit runs at { TYPED($temp) }, above { TYPED($warm) }. More condenser water now, and the heat down until it runs cool: warm spirit gives off vapour that burns.
vapour_strength = Vapour { TYPED($vapour) } and spirit of { BARE($strength) } { pct } do not go together: about { TYPED($usual) } is usual at that strength. Look at both again.
fraction_receiver = { $vessel } for the { $fraction }: by the cuts of this run they went to { $opened }. Which is it?
fraction_uncut = Low wines of a run with cuts{ $run ->
    [none] { "" }
   *[other] , { $run }
  }. Heads, hearts or tails?
fraction_strength = The { $fraction } have { BARE($now) } { pct }, { BARE($ran) } { pct } on average over the safe. Look at the glass, the temperature and the remnant.
glass_habit = { $strength } at { $temp } is typed as corrected, and { $vessel } was read by glass until now. If it is what the glass shows, true is { $true }. Which is it?
not_whole = { $label } { $typed }: these are counted whole. Look again.
unit_odd = { $label } is typed in { $typed }, beside { $other } in the same entry. Which unit was read?
late-same_hour = Typed { $after } after it was read, at the same hour. Look at the day.
flow_jump = Flow { $flow }, { $usual } in the middle of the last { $readings } readings. Look again, or log what was changed.
run_order-no_first_drop = Heads are cut but the first drop is not logged, as it was in the run before. Log it with its time.
gauged_empty = The book has nothing in { $vessel }, and { BARE($pure) } { of-pure } are gauged there. Is it the right vessel? If so, log its fill.
distilled_off = Distilled at { $said }, and { BARE($now) } { pct } in the receiver: it stands there as strong as it came off the still. Look at both.
lab_off = The laboratory found { $found }, the book has { BARE($held) } { pct } in { $vessel }. Look at the figure, and at which vessel the sample is of.
dose_off = { $amount } of { $what } for { $mash } of mash; { BARE($low) } to { $high } is usual for so much. Look at the figure and its unit.
tare_share = The tare is { $share } of the gross weight, and was { $usual } of the load before. Look at both.
tare_share-first = The tare is { $share } of the gross weight, above { $most }. Look at both.
sugar_unlike = Sugar { $sugar }, and { $last } in the load before of the same fruit. Look again.
place_from = { $vessel } is moved from { $place }; by the book it stands at { $booked }. Is it this vessel?
receiver_held = { $vessel } holds { BARE($held) } { of-pure } by the book; it was moved empty before each run until now. Log where they went.
remnant_off = { $remnant } before collection, { $booked } in { $vessel } by the book. Look again, and for a move that was not logged.
remnant_off-strength = A remnant of { BARE($now) } { pct }, { BARE($held) } { pct } in { $vessel } by the book. Look again.
run_ungauged = Of the run before{ $run ->
    [none] { "" }
   *[other] , { $run },
  } the { $fraction } are not gauged: { BARE($left) } { of-pure } would count as lost. Gauge them first.
run_balance = { run-sums } not accounted for.{ run-stillage } Usual here: { BARE($low) } to { $high }.
run_balance-gain = { run-sums } more than went in.{ run-stillage } Look at the wash strength, the dips and the remnants.
strip_balance = { run-sums } not accounted for.{ run-stillage } Low wines carry { $carried } of the wash; { BARE($low) } to { $high } is usual.
strip_balance-gain = { run-sums } more than went in.{ run-stillage } Look at the wash strength, the dips and the remnants.
run-sums = Out { BARE($out) }, in { BARE($in) }: { BARE($off) } { pure } ({ $share })
run-stillage = { $stillage ->
    [read] { "" }
   *[other] { " " }Stillage taken as { BARE($stillage) } { pct }.
  }
run_drift = { $now } of the charge not accounted for, and { $middle } in the middle of the { $runs } runs before: above { $high } run after run. Look at the condenser, the joints and the wash strength.
fraction_again = The { $fraction } of { $run ->
    [none] this run
   *[other] { $run }
  } were gauged in this vessel at { $at } already: { BARE($pure) } { pure }. Is it the same gauge, or another run?
fraction_twice = The feints of { $vessel } went into { $run ->
    [none] the run of { $at }
   *[other] { $run }
  } already. Which run had them?
fraction_twice-short = { BARE($feints) } { pure } of feints from { $vessel }, { BARE($booked) } { pure-sign } in it by the book. Did another run have them, or is its gauge still to be logged?
flow_sum = Flow times minutes gives { $flowed } of { $fraction }, the receiver { $got }: { $off } { more-or-less }, where { $most } may be. Was a cut logged late, or a receiver changed late?
dip_flow = Flow times minutes gives { $flowed } since this receiver was opened, the dip { $dipped }: { $off } { more-or-less } in it, where { $most } may be. Is another receiver open, or was the cut logged at another minute?
more-or-less = { $side ->
    [more] more
   *[less] less
  }
hearts_share = Hearts are { $now } of the charge; { BARE($low) } to { $high } in the last { $runs } runs of { $what ->
    [none] this still
   *[other] { $what }
  }. Worth a look at the cuts.

## Casks

cask_grew = Pure alcohol { BARE($now) } { pure-sign } ({ BARE($strength) } { pct }) is above { BARE($last) } { pure-sign } ({ BARE($last_strength) } { pct }) of { $at }{ moved-since }; a cask cannot gain.
cask_grew-gross = Gross { TYPED($gross) } is above { TYPED($last) } of { $at }; it can only fall, unless the cask was topped up.
cask_grew-emptied = { BARE($now) } { pure } in the cask before it was emptied, { BARE($booked) } { pure-sign } by the book since { $since }; a cask cannot gain. Look at weight and strength.
moved-since = { $way ->
    [added] { " " }with { BARE($moved) } { pure-sign } added since
    [drawn] { " " }with { BARE($moved) } { pure-sign } drawn since
   *[none] { "" }
  }
cask_strength_slip = Strength { BARE($now) } { pct } is { APART($off) } { points } { $side ->
    [below] below
   *[above] above
  } { BARE($last) } { pct } of { $at }; less than { UNITS() ->
    [us] 2 proof points
   *[metric] a point
  } a year is usual.{ $hint ->
    [none] { "" }
   *[other] { " " }{ $hint }
  }
slip-glass = As a glass reading at { TYPED($temp) } it is { BARE($true) } { pct } true.
cask_loss = { $rate } a year lost since { $since }{ $whole ->
    [none] { "" }
   *[other] { " " }({ $whole } a year since its fill)
  }: { BARE($then) } { of-pure } then{ moved-since }, { BARE($now) } { pure-sign } now. { $others } { $end }
lost-leak = Its strength is usual ({ APART($drift) } { points } a year): a leak? Look at hoops, heads, bung and the floor.
lost-odd_too = Its strength is odd too: is it the right cask? Weigh and read it again.
lost-by_size = Casks of this size lose { $size ->
    [small] 5 to 8
   *[large] 2 to 4
  } %.
lost-by_others = Of the { $casks } casks most like it, most lost { BARE($low) } to { $high }.
lost-by_all = Of the { $casks } casks most like it, most lost about { $lost }.
cask_life = By the book { BARE($booked) } since { $since }, in the cask { BARE($now) }: { BARE($gone) } { pure } ({ $share }) gone. A leak? Look at the floor and the staves; log it as a loss.
cask_drift = Strength went from { BARE($last) } to { BARE($now) } { pct } ({ APART($drift) } { points } a year); in a { $place ->
    [damp] damp place ({ $humidity } humidity) spirit grows weaker
   *[dry] dry place ({ $humidity } humidity) spirit grows stronger
  }. Right cask, right place?
fill_level = { $litres } in { $cask }, { $share } of what it holds. { $casks ->
    [none] A cask is filled to { $usual } at least.
   *[other] The { $casks } casks most like it were filled to about { $usual }.
  } Look at the scale and at the unit, and whether it is this cask.
cask_earlier = { BARE($odd) } { pct } and { BARE($odd_pure) } { of-pure } of { $at } stand alone: { BARE($before) } and { BARE($before_pure) } before, { BARE($now) } and { BARE($now_pure) } now. Look at that entry; this one goes together with all the others.
gauge_earlier = { BARE($odd) } { pct } of { $at } stand alone: { BARE($before) } before and { BARE($now) } now. Look at that entry; this one goes together with all the others.
cask_unlike = Strength is { APART($off) } { points } { $side ->
    [below] below
   *[above] above
  } { BARE($last) } { pct } of { $at }; of the { $casks } casks most like it, most went by { APART($usual) } a year. Read it again.
tare_off = { $cask } weighs { TYPED($tare) } empty; { TYPED($listed) } is listed. Look at the scale, and whether it is this cask.
soakage = Empty { TYPED($empty) }, old tare { TYPED($tare) }: { $kept } kept, where a cask of this size keeps { BARE($low) } to { $high }. Is it drained? Look at the tare.
soakage-light = Empty { TYPED($empty) } is below the old tare { TYPED($tare) }; wood that held spirit weighs { BARE($low) } to { $high } more. Scale or tare is wrong.

## Places and counts

places_swapped = { $vessel } was found at { $place } and { $other } at { $booked }: they have changed places, nothing is short. If that is so, say that it stands, and the book has them so.
place_differs = { $vessel } was found at { $place }; { $booked ->
    [none] the book has no place for it
   *[other] the book has it at { $booked }
  }. If it is there, say that it stands. Count what stands there too.
cask_missing = { $vessel } was not found{ $booked ->
    [none] { "" }
   *[other] , { BARE($booked) } { of-pure } by the book
  }. Look for it now. If it is gone, log the loss and report it.
not_in_book = Not in the book: "{ $label }"{ $place ->
    [none] { "" }
   *[other] { " " }at { $place }
  }. Weigh it, find its papers, and add it; look for one that the book has and nobody has found.

## Water, filter and bottling

reduce_target = { BARE($now) } { pct } measured, { BARE($target) } { pct } wanted: { APART($off) } { points } { $side ->
    [strong] too strong.{ reduce-water }
   *[weak] too weak. Spirit has to go in; water cannot come out.
  }{ $balance ->
    [none] { "" }
   *[other] { " " }{ $balance }
  }
reduce-water = { $water ->
    [none] { "" }
   *[other] { " " }By mass { $water } of water more.
  }
reduced-dip = { reduced-has }: look at the dip.
reduced-no_loss = { reduced-has }: no loss.
reduced-shrinks = { $before } and { $water } of water make { $dip }, not { BARE($sum) }: the mix shrinks. { reduced-has }: no loss.
reduced-has = Pure alcohol { BARE($pure) } { pure-sign }, { BARE($booked) } { pure-sign } by the book
contraction_forgotten = { $water } of water is what volumes alone would ask for. Volumes do not add: { $volume } will stand there, not { BARE($sum) }, at { BARE($strength) } { pct }. For { BARE($target) } { pct } it takes { $needed }: { $more } more. Pure alcohol stays what it was.
filter_loss = { filter-sums } kept by filter and line. Usual: 0.3 to 1 %. Look at the sheets, the heel and both dips.
filter_gain = { filter-sums } more than went in. A filter makes no spirit: look at both dips and strengths.
filter-sums = Before { BARE($before) }, after { BARE($after) }: { BARE($off) } { pure } ({ $share })
filter_before = { BARE($before) } { pure } in { $vessel } before the filter, { BARE($booked) } { pure-sign } by the book. Look at the dip before, then for a move that is not logged.
bottling_balance = { bottling-sums } not accounted for. Usual: 0.3 to 1 %. Count the bottles and cases again.
bottling_gain = { bottling-sums } more than the tank held. Look at the count, the bottle size and the tank gauge.
bottling-sums = Tank { BARE($tank) }, bottles { BARE($bottles) }, heel and line { BARE($line) }: { BARE($off) } { pure } ({ $share })
label_strength = The tank stands at { BARE($tank) } { pct }, the label says { BARE($label) } { pct }: { APART($off) } { points } { $side ->
    [above] above
   *[below] below
  }. At the label's strength the bottles would hold { BARE($by_label) } { pure }, by the tank gauge { BARE($by_tank) } { pure-sign }.
label_strength-before = { BARE($tank) } { pct } in the tank, { BARE($label) } { pct } on the label: { APART($off) } { points } apart, where { APART($most) } may be. Put the strength or the label right before you bottle.
label_strength-bottles = { BARE($found) } { pct } in the bottles, { BARE($label) } { pct } on the label. Stop the line, mix the tank and read it again.
fill_off-least = { $found } in the least full; at this size { $least } is the least ({ fill-law }). { fill-set }
fill_off-most = { $found } in the fullest; at this size { $most } is the most ({ fill-law }). { fill-set }
fill_mean = { $mean } on average: a batch may not be under its label on average (Directive 76/211/EEC, from memory). { fill-set }
fill-law = { $place ->
    [US] 27 CFR 19.356
   *[EU] Directive 76/211/EEC, from memory
  }
fill-set = Set the filler, and look at the bottles since the last check.
case_count = { $cases } cases of { $per_case } are { $in_cases }, with { $library } for the library { $together }; { $good } good bottles were counted: { $off } { $side ->
    [many] too many
   *[few] too few
  }. Count cases and bottles again.

## Law

bottled_low = { BARE($label) } { pct } on the label. { $law } { law-caution }
barrelled_high = { BARE($strength) } { pct } into the cask. { $law } { law-caution }
law-caution = A note, not legal advice: look at the text in force, and ask who knows it.
law-bottled-at_least = { law-subject } is bottled at { law-strength } or more{ law-source }
law-distilled-below = { law-subject } is distilled below { law-strength }{ law-source }
law-distilled-at_most = { law-subject } is distilled at { law-strength } or less{ law-source }
law-distilled-at_least = { law-subject } is distilled at { law-strength } or more{ law-source }
law-barrelled-at_most = { law-subject } goes into the cask at { law-strength } or less{ law-source }
law-aged = { law-subject } is in wood for { $value } or more{ law-source }
law-strength = { UNITS() ->
    [us] { APART($value) } proof
   *[metric] { $value }
  }
law-subject = { CAPITAL($called) } in the { $place }
law-source = { $note ->
    [none] { "" }
   *[other] , { $note }
  } ({ $source }{ $known ->
    [read] { "" }
   *[memory] , from memory
  }).
law-spirit-geist = Geist
law-spirit-beer_spirit = beer spirit
law-spirit-brandy = brandy
law-spirit-cider_or_perry_spirit = cider or perry spirit
law-spirit-fruit_marc_spirit = fruit marc spirit
law-spirit-fruit_spirit = fruit spirit
law-spirit-grape_brandy = grape brandy
law-spirit-grape_marc_spirit = grape marc spirit
law-spirit-honey_spirit = honey spirit
law-spirit-lees_spirit = lees spirit
law-spirit-neutral_spirits = neutral spirits
law-spirit-raisin_spirit = raisin spirit
law-spirit-rye_whisky = rye whisky
law-spirit-spirit_drink = spirit drink
law-spirit-spirit_of_macerated_fruit = spirit of macerated fruit
law-spirit-straight_whisky = straight whisky
law-spirit-whisky = whisky
law-spirit-wine_spirit = wine spirit
law-note-charred_oak = { UNITS() ->
    [us] 62.5 % vol
   *[metric] 125 proof
  }; in charred new oak
law-note-160_proof = { UNITS() ->
    [us] 80 % vol
   *[metric] 160 proof
  }
law-note-190_proof = { UNITS() ->
    [us] 95 % vol
   *[metric] 190 proof
  }
law-note-80_proof = { UNITS() ->
    [us] 40 % vol
   *[metric] 80 proof
  }
law-note-before_caramel = before caramel may adjust its colour
law-note-casks_700 = in casks of at most 700 L
law-note-small_oak = in oak casks under 1000 L
law-note-large_oak = in oak containers of 1000 L or more
law-note-immature_brandy = in oak; younger is immature brandy. Other fruit brandies have no floor there
law-note-straight = to be called straight

## Laboratory

lab_over = { lab-result } is { $sense ->
    [at_least] under
   *[at_most] over
  } the { lab-law }. { $sort ->
    [target] A target is no limit: ask who knows the law what it asks of you.
   *[other] Do not bottle or sell on it: ask the laboratory, and who knows the law.
  } { lab-caution }
lab_not_safely = { lab-result } is not safely { $sense ->
    [at_least] over the { lab-law }: another laboratory may find as little as { BARE($at_worst) }
   *[at_most] under the { lab-law }: another laboratory may find as much as { BARE($at_worst) }
  }. Have it tested again before you rely on it. { lab-caution }
lab_under = { lab-result } is { $sense ->
    [at_least] over the { lab-law }; another laboratory may find as little as { BARE($at_worst) }
   *[at_most] under the { lab-law }; another laboratory may find as much as { BARE($at_worst) }
  }. It speaks of the sample alone.
lab_strength = { $substance } is printed by litre or kilogram of the drink; the limit is by pure alcohol. Type the true strength from the certificate.
lab-result = { $below ->
    [yes] { $substance }, not found by a method that begins at { $found },
   *[no] { $substance } { $found }
  }
lab-law = { $sort ->
    [target] target
    [action] figure that is acted on,
   *[limit] limit
  } of { BARE($limit) } for { $called } in the { $place } ({ $source })
lab-caution = The certificate of an accredited laboratory and your local law decide, not this book.

## Goods

unknown_bottling = No bottling in the book is called { $batch }{ $case ->
    [none] { "" }
   *[other] { " " }and holds case { $case }
  }. Look at the lot mark, or hand in the bottling close first.
unknown_bottling-several = { $bottlings } bottlings answer to { $batch }. Type the first case too, as it stands on the case.
bottling-named = { $bottling ->
    [none] The bottling
   *[other] { $bottling }
  }
more_than_bottled = { bottling-named }: { $good } bottled, { $gone } gone, { $on_hand } on hand by the book; { $now } now are { $more } more than there are. Count them, and look for a removal that was logged twice.
more_than_bottled-back = { bottling-named }: { $good } bottled, { $on_hand } on hand by the book; { $back } cannot all come back. Is it this batch?
other_case = Case { $case } is none of this bottling: it has { $first } to { $last }. Look at the case again.
case_numbers = Cases { $first } to { $last } are { $cases }; { $typed } are typed. Which is right?
case_gone = Case { $case } has left already by the book. Was this removal logged twice? Else look at the numbers.
case_gone-several = Cases { $first } to { $last } have left already by the book. Was this removal logged twice? Else look at the numbers.
bottles_short = { $on_hand } bottles on hand by the book, { $counted } counted: { $off } missing. Count again, then look for a removal that is not logged. An unexplained shortage of bottled spirits is taxed in the US (27 CFR 19.465).
bottles_over = { $on_hand } bottles on hand by the book, { $counted } counted: { $off } more. Count again, then look for a removal that is not logged.
transit_loss = { transit-sums } lost in transit. Above { $most } is to be reported (27 CFR 19.462). Look at the seals and gauge it again, then report it.
transit_gain = { transit-sums } more than the papers say. Look at strength, temperature and what stood in the vessel before.
transit-sums = Sent { BARE($sent) }, received { BARE($received) }: { BARE($off) } { pure } ({ $share })
goods_short = { $short } of { $bottles } bottles were missing or broken. Count them again, note it on the papers, and tell the consignor: duty may be due on what is missing.
seals_broken = The seals were not whole. Keep the load apart, gauge it, and tell the consignor and the authority now.

## Plans

vat_draws = “{ $part }” names no vessel with a weight. Write mark and kilograms, such as C001-Z 153.7.
vat_vessel = No vessel { $mark } is in the book. Look at the mark again.
vat_short = { $planned } planned out of { $vessel }, { $booked } by the book. Plan it again.

## Blind tastings

tasting_named = A tasting { $name } stands in the book already. Give this one another name.
tasting_part = “{ $part }” cannot be read. Write it as the help beside the box shows.
tasting_vessel = No vessel { $mark } is in the book, and it is a sample of this tasting. Look at the mark again.
tasting_heads = { $vessel } holds heads. Heads are never tasted: take it out, and throw away what was poured.
tasting_glasses = { $person } has a set that is not of { $wanted } glasses. Draw the codes again.
tasting_unknown = The book has no tasting { $name }. Look at its name on the serving sheet.
tasting_after = Tasting { $name } was open before this answer, so it does not count. Was the phone's clock right?
tasting_taster = { $person } is no taster of { $name }, so this does not count. Who tasted?
tasting_set = { $person } has no set { $set }, so this does not count. Look at the serving sheet.
tasting_twice = { $person } has answered set { $set } before. The first answer counts.
tasting_code = No glass { $code } was in this set, so the answer does not count. Look at the glasses.
tasting_order = An order names each of the { $glasses } glasses once. This one does not, so it does not count.
tasting_again = Tasting { $name } was opened before. The first opening counts.
tasting_seal = This is not the key that { $name } was sealed with. Open it from its page at the desk.
tasting_early = Opened with { $came } of { $sets } answers. The others will not count.
tasting_cited = No opened tasting { $name } is in the book. Look at its name, or open it first.

## The phone's own words, fetched after the rest.

# shared by several pages
floor-back = Back
floor-check_bottles = Check bottles
floor-now = now
floor-one_less = One less
floor-glass = Glass
floor-spirit = Spirit
floor-ferments = Ferments
floor-readings_round = Readings round
floor-regauge_round = Regauge round
floor-tap_it_in_the = tap it in the list
floor-all_places = All places
floor-scan_the_next = Scan the next
floor-skip = Skip
floor-the_slate = The slate
floor-as_casks_like_it = as casks like it
floor-stock_count = Stock count
floor-gravity = Gravity
floor-cases_to = cases { $case_from } to { $case_to }
floor-another = another
floor-bottles = { $bottles } bottles
floor-not_in_the_book = Not in the book
floor-volume = Volume
floor-scan = Scan
floor-off = off
floor-on = on
floor-true_strength = True strength
floor-best = best
floor-waits_on_this_phone = , waits on this phone
floor-read = read
floor-heads = heads { $heads_l }

# form/pinfirst.js
floor-pinfirst-it_goes_into_the = It goes into the accounts

# jobs/bottling/checks.js
floor-checks-about_as_many_over = about as many over as under (27 CFR 19.356)
floor-checks-100_on_average_76 = 100 on average (76/211/EEC, from memory)

# jobs/bottling/line.js
floor-line-bottling = Bottling
floor-line-the_line = the line
floor-line-fill_of_the_label = Fill, % of the label
floor-line-label = label
floor-line-least = least
floor-line-most = most
floor-line-strength = Strength, { $unit }
floor-line-close_the_bottling = Close the bottling
floor-line-outside_what_may_be = Outside what may be: set the filler, and look at the bottles since the last check.

# jobs/bottling/view.js
floor-view-the_line = The line
floor-view-fill_average = Fill, average
floor-view-of_the_label_last = % of the label, last { $last }
floor-view-last_strength = Last strength
floor-view-average = average { $mean } { $sign }
floor-view-tank_fills = Tank fills
floor-view-of_at_most = of { $size_l }, at most
floor-view-checks_over_under = { PLURAL($count) ->
    [one] { $count } check
   *[other] { $count } checks
  }{ $spread }; { $over } over, { $under } under the label.
floor-view-spread = , spread { $spread }
floor-view-next_check = Next check
floor-view-the_first_take_bottles = The first. Take { $count } bottles off the line, weigh them, read their strength.
floor-view-at_bottle = at bottle { $at_bottle }
floor-view-as_the_house_wants = as the house wants it
floor-view-bottles_filled = bottles filled
floor-view-late = late
floor-view-next_check_in = Next check in
floor-view-the_next_check_was = The next check was due { $due_at }
floor-view-next_check_2 = Next check { $due_at }
floor-view-about = about
floor-view-or = or
floor-view-every_min = , every { $every_min } min
floor-view-line = Line
floor-view-type_the_bottles_filled = Type the bottles filled at two checks, and its speed stands here.
floor-view-filled_the_next_count = { $filled } filled. The next count gives the speed.
floor-view-an_hour = an hour
floor-view-ends_about = Ends about
floor-view-to = , { $soonest } to { $latest }
floor-view-the_tank_is_through = The tank is through, by the count.
floor-view-of_counted = { $filled } of { $bottles } counted{ $by }
floor-view-about_by_now = , about { $expected } by now
floor-view-cases_packed = Cases packed
floor-view-one_more_than = One more than
floor-view-bottles = { $per_case } bottles
floor-view-bottles_in_a_case = Bottles in a case, to count cases by taps
floor-view-each_bottle_full = Each bottle { $low } % full{ $high }, { $words }.{ " " }
floor-view-or_more = { " " }or more
floor-view-to_2 = { " " }to { $high }
floor-view-strength_to_for_a = Strength { $low } to { $high } for a label of { $label_pct }.
floor-view-by_the_cases = { $so_far } by the cases
floor-view-empty_bottle_with_closure = Empty bottle with closure, g
floor-view-bottle_full_g = Bottle { $n }, full, g
floor-view-one_more_bottle = One more bottle
floor-view-labels_and_closures_right = Labels and closures right
floor-view-yes = yes
floor-view-no = no
floor-view-fill_by_hand_bottle = fill by hand, bottle size, what was done
floor-view-bottle_size = Bottle size
floor-view-l = L
floor-view-done_if_wrong = Done if wrong
floor-view-g = g
floor-view-full = { $mean } % full
floor-view-on_average_of = on average of { $fills }: { $fill }. { $words }
floor-view-which_tank_runs_to = Which tank runs to the line?
floor-view-no_tank_has_spirit = No tank has spirit in it, as far as this phone knows. Gauge the bottling tank first.

# jobs/casks.js
floor-casks-casks = Casks
floor-casks-cask_is = Cask is
floor-casks-now = now.

# jobs/cellar/card.js
floor-card-tasted_of_10 = Tasted { $tasted_at }: { $score } of 10.
floor-card-gauges_of_this_fill = Gauges of this fill
floor-card-casks_like_it = { $count } casks like it
floor-card-such_a_size = such a size
floor-card-a_year = % a year
floor-card-lost_of_its_pure = { $name } lost { $share } % of its pure alcohol a year; { $like } lose { $low } to { $high }.

# jobs/cellar/dial.js
floor-dial-of = { $words } of { $high }

# jobs/cellar/due.js
floor-due-closed_the_still_is = Closed: the still is waited for.
floor-due-ended_close_it_and = Ended: close it, and book the still.
floor-due-not_read_since_it = Not read since it was filled.
floor-due-casks_to_regauge = Casks to regauge
floor-due-never_gauged_in_this = Never gauged in this fill.
floor-due-casks_to_sample = Casks to sample
floor-due-never_sampled = Never sampled.
floor-due-casks_to_taste = Casks to taste
floor-due-never_tasted = Never tasted.
floor-due-last = Last { $last }.
floor-due-every_months = { $title }, every { $months } months
floor-due-check_due = { $title }: check { $late ->
    [yes] was due
   *[no] due
  } { $date }.
floor-due-instruments = Instruments
floor-due-by_law = By law
floor-due-the_three_reports_for = The three reports for { $month } are due by the 15th.
floor-due-the_quarter_ends_count = The quarter ends: count the storage tanks.
floor-due-count_of_bottled_stock = Count of bottled stock; the bureau has notice five business days before.

# jobs/cellar/round.js
floor-round-of = { $done } of { $cards }
floor-round-of_done = { $done } of { $cards } done
floor-round-another_of_round = Another { $noun ->
    [tank] tank
   *[cask] cask
  }
floor-round-place = Place
floor-round-begin_a_new_round = Begin a new round
floor-round-logged_another_reading_stands = Logged { $last }. Another reading stands beside it.
floor-round-log_it_next = Log it, next
floor-round-next_of_round = Next { $noun ->
    [tank] tank
   *[cask] cask
  }
floor-round-is_not_on_this = { $mark } is not on this round: { $sort }.
floor-round-it_is_a = it is a { $sort }
floor-round-it_holds_nothing_as = it holds nothing, as far as the book knows
floor-round-this_phone_knows_no = This phone knows no { $mark }. Type it on its own page when the phone has been in signal.
floor-round-all_done = All { $count } { $noun ->
    [tank] tanks
   *[cask] casks
  } are done.
floor-round-none_to_go_to = No { $noun ->
    [tank] tanks
   *[cask] casks
  } to go to: none holds anything, as far as this phone knows.

# jobs/cellar/says.js
floor-says-ended_three_equal_gravities = Ended: three equal gravities since { $day }. Book the still.
floor-says-not_moving_and_not = Not moving and not finished. Look at temperature, acid and yeast food.
floor-says-it_has_hardly_begun = It has hardly begun to fall: no day yet.
floor-says-no_day_yet_it = No day yet: it takes four readings.
floor-says-to = { " " }({ $low } to { $high })
floor-says-ends_about_near_three = Ends about { $day }{ $span }, near { $end_gravity }. Three equal gravities decide.
floor-says-much_at_a_usual = Much, at a usual strength: a leak? Look at hoops, heads, bung and floor.
floor-says-the_weight_is_usual = The weight is usual, the strength odd. Read the glass again.
floor-says-weight_and_strength_are = Weight and strength are both odd. Is it the right cask?
floor-says-a_cask_cannot_gain = A cask cannot gain. Weigh and read again.
floor-says-to_2 = { $low } to { $high }
floor-says-casks_like_it_compared = casks like it { $span } ({ $count } compared)
floor-says-such_a_size = such a size { $span }
floor-says-first_gauge_of_this = First gauge of this fill, or too soon for a rate; { $like } % a year.
floor-says-a_year = a year; { $like }.
floor-says-a_year_2 = a year; { $like }. { $words }

# jobs/cellar/tasting.js
floor-tasting-fruit = fruit
floor-tasting-stone = stone
floor-tasting-almond = almond
floor-tasting-blossom = blossom
floor-tasting-spice = spice
floor-tasting-green = green
floor-tasting-sharp = sharp
floor-tasting-glue = glue
floor-tasting-smoke = smoke
floor-tasting-dust = dust
floor-tasting-words_of_the_house = Words of the house
floor-tasting-words_to_tap = Words to tap
floor-tasting-take_off = take off { $name }
floor-tasting-take_off_2 = take off
floor-tasting-may_stay_empty = may stay empty
floor-tasting-log = Log: { $words }

# jobs/duelist.js
floor-duelist-rounds = Rounds
floor-duelist-taste = Taste

# jobs/ferments.js
floor-ferments-mash = Mash
floor-ferments-last_read = Last read { $last }.
floor-ferments-not_read_yet = Not read yet.

# jobs/goods/counter.js
floor-counter-one_more = One more
floor-counter-10_ten_more = +10, ten more
floor-counter-count = count
floor-counter-keys = keys

# jobs/goods/dress.js
floor-dress-or_type_it = or type it
floor-dress-of_to = of { $case_from } to { $case_to }
floor-dress-from = { $cases } from { $dressed }
floor-dress-to = { $from } to { $to }
floor-dress-to_stand = to { $to } stand
floor-dress-follows_the_last = follows the last
floor-dress-as_before = as before
floor-dress-of = { $cases } of { $per_case }
floor-dress-by_the_cases_of = by the cases of the line
floor-dress-vessels = { $count } vessels
floor-dress-as_the_book_has = as the book has it
floor-dress-more_than_there_are = ; { $left } more than there are
floor-dress-left = ; { $per_case } left

# jobs/goods/round.js
floor-round-bottled_goods = bottled goods
floor-round-elsewhere = elsewhere
floor-round-of_done_2 = { $done } of { $items } done
floor-round-none = None
floor-round-empty = Empty
floor-round-what_says_it_on = What says it on it?
floor-round-type_what_it_says = Type what it says on it.
floor-round-next_vessel = Next vessel
floor-round-this_round_has_no = This round has no { $mark }. If it is not in the book at all, say so under "Another".
floor-round-left = { $open } left
floor-round-all_done_2 = all done
floor-round-type_who_counted_name = Type who counted, name and title.
floor-round-counts_on_slate = { PLURAL($count) ->
    [one] { $count } count
   *[other] { $count } counts
  } on the slate.

# jobs/goods/roundview.js
floor-roundview-where = Where
floor-roundview-one_place_after_another = One place after another. You are not told what the book expects; the differences stand at the end, and you sign what you counted.
floor-roundview-nothing_to_count_as = Nothing to count, as far as this phone knows: no tank, cask or bottle is on its cards.
floor-roundview-of_counted = { $done } of { $items } counted
floor-roundview-left = { $done } left
floor-roundview-another_or_the_end = Another, or the end
floor-roundview-in_this_round = In this round
floor-roundview-to_the_differences = To the differences
floor-roundview-cask = Cask
floor-roundview-it_should_stand_at = It should stand at
floor-roundview-the_book_has = The book has
floor-roundview-no_place = no place
floor-roundview-for_it = for it
floor-roundview-it_stands_elsewhere = It stands elsewhere
floor-roundview-type_the_place = type the place
floor-roundview-place_as_its_label = Place, as its label says
floor-roundview-not_here = Not here
floor-roundview-it_is_here = It is here
floor-roundview-count = Count
floor-roundview-by_weight_or_corrected = By weight, or corrected
floor-roundview-and_a_remark = and a remark
floor-roundview-counted_next = Counted, next
floor-roundview-what_it_says_on = What it says on it
floor-roundview-where_it_stands = Where it stands
floor-roundview-differences = Differences
floor-roundview-differences_from_the_book = Differences from the book
floor-roundview-as_the_book_has = As the book has it
floor-roundview-not_counted = Not counted
floor-roundview-sign = Sign
floor-roundview-counted_by_name_and = Counted by, name and title
floor-roundview-each_count_goes_into = { $lead }Each count goes into the book as it was read, at its own minute. A difference stays a question there until somebody answers it.
floor-roundview-signed_under_penalties_of = Signed under penalties of perjury: true, correct and complete as far as I know (27 CFR 19.45, 19.623; look at today's text).{ " " }
floor-roundview-nothing_is_counted_yet = Nothing is counted yet.
floor-roundview-another_place = Another place
floor-roundview-go_on_counting = Go on counting
floor-roundview-sign_and_log = Sign and log { PLURAL($count) ->
    [one] the count
   *[other] { $count } counts
  }
floor-roundview-count_again = Count again
floor-roundview-nothing_where_it_should = Nothing where it should be. Look for it at once; tell who must be told.
floor-roundview-not_in_the_book = not in the book
floor-roundview-at = { $litres } at { $strength_pct }
floor-roundview-at_2 = at { $place }
floor-roundview-here = here
floor-roundview-book = book { $bottles }
floor-roundview-book_2 = book { $place }{ $lpa_l }
floor-roundview-book_3 = book { $litres }{ $strength_pct }
floor-roundview-at_3 = { $litres } at{ " " }
floor-roundview-book_empty = book empty

# jobs/goods/stock.js
floor-stock-loose = { $loose } loose
floor-stock-none_left = none left

# jobs/helps/aloud.js
floor-aloud-degrees = degrees
floor-aloud-degrees_fahrenheit = degrees Fahrenheit
floor-aloud-percent = percent
floor-aloud-litres = litres
floor-aloud-kilos = kilos
floor-aloud-grams = grams
floor-aloud-brix = brix
floor-aloud-gallons = gallons
floor-aloud-pounds = pounds
floor-aloud-minus = minus{ " " }

# jobs/helps/gloves.js
floor-gloves-more_fields = { PLURAL($count) ->
    [one] { $count } more field
   *[other] { $count } more fields
  }

# jobs/helps/listening.js
floor-listening-the_microphone_is_not = The microphone is not allowed here. Allow it in the browser's settings for this site, or type.
floor-listening-no_figure_was_heard = No figure was heard. Say it again, or type it.
floor-listening-heard_no_figure_say = Heard “{ $heard }”: no figure. Say it again, or type it.
floor-listening-heard_but_this_box = Heard “{ $heard }”, but this box takes { $symbol }.
floor-listening-or = { " " }or{ " " }

# jobs/helps/settings.js
floor-settings-of_this_phone_alone = of this phone alone
floor-settings-voice_and_ear_are = Voice and ear are the phone's own: nothing that is said leaves it.
floor-settings-its_icon_shows_how = Its icon shows how many entries wait, once it is on the home screen.
floor-settings-what_waits_is_handed = What waits is handed in after the app was closed too, when a network comes.
floor-settings-gloves = Gloves
floor-settings-larger_keys_fewer_boxes = larger keys, fewer boxes
floor-settings-buzz = Buzz
floor-settings-when_it_is_logged = when it is logged, and for a question
floor-settings-read_aloud = Read aloud
floor-settings-figures_just_typed_and = figures just typed, and questions
floor-settings-gravity_1_031 = Gravity: 1.031
floor-settings-speak_figures = Speak figures
floor-settings-into_the_box_your = into the box; your tap logs them
floor-settings-fetch_the_language_for = Fetch the language for it
floor-settings-it_is_on_this = It is on this phone now.
floor-settings-it_could_not_be = It could not be fetched. Try again with signal.

# jobs/note/note.js
floor-note-cap_pushed_down = Cap pushed down.
floor-note-cooling_is_on = Cooling is on.
floor-note-smells_odd = Smells odd.
floor-note-read_it_first = Read it first.
floor-note-charged_not_heated = Charged, not heated.
floor-note-rinse_it_first = Rinse it first.
floor-note-still_warm = Still warm.
floor-note-receivers_are_empty = Receivers are empty.
floor-note-weeps_a_little = Weeps a little.
floor-note-bung_is_loose = Bung is loose.
floor-note-do_not_move_it = Do not move it.
floor-note-weigh_it_again = Weigh it again.
floor-note-it_rests_do_not = It rests. Do not stir.
floor-note-it_is_cloudy = It is cloudy.
floor-note-valve_is_shut = Valve is shut.
floor-note-lid_is_off = Lid is off.
floor-note-look_at_it_first = Look at it first.
floor-note-not_finished = Not finished.
floor-note-cleaned = Cleaned.
floor-note-out_of_order = Out of order.
floor-note-all_as_usual = All as usual.
floor-note-ready_words = Ready words
floor-note-pin_it_to = Pin it to { $mark }
floor-note-leave_it_for_the = Leave it for the next shift
floor-note-from = From { $name }.
floor-note-pinned_to = Pinned to
floor-note-for_the_next_shift = For the next shift
floor-note-it_stands_under_today = It stands under Today. { $from }
floor-note-pinned_to_2 = Pinned to { $mark }
floor-note-whoever_opens_it_reads = Whoever opens it reads it. { $from }
floor-note-there_already = There already
floor-note-pin_it_to_a = Pin it to a vessel
floor-note-heard_by = heard by { $person }
floor-note-read_by = read by { $person }
floor-note-look = Look
floor-note-listen = Listen
floor-note-heard = Heard
floor-note-read = Read
floor-note-voice_note = Voice note
floor-note-voice_note_seconds = Voice note, { $seconds } s
floor-note-notes_to_read = Notes to read
floor-note-read_them = Read them
floor-note-notes = Notes
floor-note-not_read_yet = Not read yet
floor-note-all_read = Every note has been read.
floor-note-have_been_read = Read before
floor-note-leave_a_note = Leave a note
floor-note-no_microphone = The microphone is not let in. Allow it in the browser's settings, or type the note.
floor-note-speak_it = Speak it
floor-note-stop = Stop, { $seconds } s
floor-note-recording = Recording

# jobs/reduce/aim.js
floor-aim-target_as_its_label = Target: as its label says.
floor-aim-target_as_aimed_at = Target: as aimed at here, { $date }.
floor-aim-target_as_last_in = Target: as last in { $name }, { $other }. Look whether it is this label.

# jobs/reduce/picture.js
floor-picture-in_the_tank_and = { $litres } in the tank and { $kg } of water make { $dip20_l } at { $strength_pct }: { $shrinks_l } less than the sum.
floor-picture-at = { $dip20_l } at { $strength_pct }
floor-picture-less_than_the_sum = { $shrinks_l } less than the sum. No loss.
floor-picture-of_water = { $kg } of water
floor-picture-by_the_can_at = { $can_l } by the can at { $water_temp_c }
floor-picture-in_the_tank = { $litres } in the tank
floor-picture-it_takes = It takes { $most }.
floor-picture-would_be_too_much = { $over } would be too much: move some first.
floor-picture-about_mixed = about { $figure } mixed
floor-picture-water = water
floor-picture-spirit = spirit
floor-picture-water_at_spirit_at = Water at { $water_temp_c }, spirit at { $temp_c }, mixed about { $figure } { $unit }, { $off } to { $off_2 }; without heat of mixing { $calm }.
floor-picture-target = { $target_pct } target
floor-picture-sum = sum { $sum_pct }
floor-picture-read = read { $read_pct }
floor-picture-target_by_the_sum = Target { $target_pct }, by the sum { $sum_pct }, read { $read_pct } { $unit }.

# jobs/reduce/reduce.js
floor-reduce-target = Target
floor-reduce-spirit_is_at = Spirit is at
floor-reduce-water_is_at = Water is at
floor-reduce-with_what_waits_here = , with what waits here
floor-reduce-reduce = Reduce
floor-reduce-how_much_water = how much water
floor-reduce-measured = Measured
floor-reduce-are_in = { $plan } are in
floor-reduce-water_in = Water in

# jobs/reduce/view.js
floor-view-what_it_should_be = What it should be
floor-view-a_tenth_less = A tenth less
floor-view-a_tenth_more = A tenth more
floor-view-in_goes = In goes
floor-view-or_the_plain_form = or the plain form
floor-view-in_how_many_goes = In how many goes
floor-view-the_plain_form = The plain form
floor-view-type_the_strength_it = Type the strength it should have.
floor-view-at = at { $temp_c }
floor-view-of_water = { $unit } of water
floor-view-for = ± { $doubt_kg } for ± { $at }
floor-view-what_the_tank_should = What the tank should read then
floor-view-dip = Dip, { $unit }
floor-view-as_wanted_no_water = As wanted: no water is needed.
floor-view-pour = Pour { $plan }{ $rest }
floor-view-first = { " " }first.
floor-view-stir_let_it_stand = Stir, let it stand until it stops warming, read{ $rest }. One { $unit } is { $per } { $one }.
floor-view-once_more = { " " }once more
floor-view-then_the_rest = , then the rest
floor-view-planned_by = Planned by { $person }, { $planned }: { $name }, { $target_pct }{ $water }.
floor-view-with_of_water = { " " }with { $water_kg } of water
floor-view-step_by_step = Step by step
floor-view-then_rest = { $water_kg }, then rest
floor-view-mixing_warms_it_by = Mixing warms it by about { $warms_c } { $unit }. Let it cool and rest, a day at least, before glass and dip.
floor-view-it_may_cloud_at = It may cloud at this strength, the more the colder. Go slowly, rest, and filter cold if it does.
floor-view-a_long_way_down = A long way down in one go. Two or three goes with a rest between cloud less.
floor-view-water_went_in = Water went in
floor-view-measured_after_the_rest = Measured after the rest
floor-view-another_minute_a_remark = another minute, a remark
floor-view-points = { $off_pct } points
floor-view-as_wanted = As wanted.
floor-view-too_weak_spirit_has = { $off } too weak. Spirit has to go in; water cannot come out.
floor-view-too_strong_of_water = { $off } too strong: { $trim_kg } of water more.
floor-view-the_dip_agrees_with = The dip agrees with the sum.
floor-view-dip_off_sum = The dip is { $litres } { $side ->
    [under] under
   *[over] over
  } the sum: look at it again.
floor-view-true = { $measured_pct } true.
floor-view-which_tank = Which tank?
floor-view-no_tank_has_spirit_2 = No tank has spirit in it, as far as this phone knows. Gauge the tank first.

# jobs/run/after.js
floor-after-after_the_run = After the run
floor-after-this_phone_knows_no = This phone knows no run of that still that is over.
floor-after-the_balance_comes_when = The balance comes when hearts or low wines are gauged.
floor-after-balance = Balance
floor-after-from_100 = { $amount } from 100 { $unit }
floor-after-less_than_60_of = Less than 60 % of the flat rate: look at fruit, ferment and balance.
floor-after-more_than_one_and = More than one and a half times the flat rate: look at the weights and the gauges.
floor-after-yield = Yield
floor-after-of_wash_of_fruit = , { $per_100_l } of wash; { $kg } of fruit by its share of the ferment.
floor-after-official_flat_rate_for = Official flat rate for { $name }, from 100 L of mash: { $de_l } L in Germany{ $austria }. Flat rates are safe averages, no targets.
floor-after-in_austria = , { $at_l } in Austria
floor-after-charged = Charged, { $sign }
floor-after-hearts = Hearts, { $sign }
floor-after-hearts_share = Hearts' share
floor-after-hearts_cut_at = Hearts cut at, { $unit }
floor-after-took = Took
floor-after-from_100_2 = From 100 { $unit }, { $sign }
floor-after-beside_the_runs_before = Beside the runs before
floor-after-runs_side_by_side = Runs side by side
floor-after-best_run = Best run
floor-after-marked_as_the_best = Marked as the best run of { $what }
floor-after-by = by { $person }, { $best }{ $waiting }{ $why }.
floor-after-best_run_2 = Best run?
floor-after-best_of_so_far = Best of { $what } so far: { $name }{ $why }.
floor-after-no_run_of_is = No run of { $what } is marked yet.
floor-after-later_runs_are_drawn = Later runs are drawn over the best.
floor-after-why = Why
floor-after-mark_this_run_as = Mark this run as the best

# jobs/run/balance.js
floor-balance-heads = heads
floor-balance-stillage = stillage
floor-balance-not_accounted_for = { $open } ({ $share }) not accounted for
floor-balance-more_than_went_in = { $open } ({ $share }) more than went in
floor-balance-in_out_usual_is = In { $charged }, out { $open }: { $rest }.{ $stillage_pct } Usual is 0.5 to 2 %.
floor-balance-stillage_was_not_read = { " " }Stillage was not read: taken as { $stillage_pct }.
floor-balance-in = in { $charged }
floor-balance-out = out { $open }
floor-balance-pure_alcohol_of_the = Pure alcohol of the run

# jobs/run/changes.js
floor-changes-that_could_not_be = That could not be kept. Log it as another event.

# jobs/run/curve.js
floor-curve-true_strength_over_pure = True strength over pure alcohol collected
floor-curve-l_pure_alcohol = L pure alcohol
floor-curve-vapour_temperature_against_strength = Vapour temperature against strength{ $name }
floor-curve-vapour_c = vapour °C
floor-curve-usual_for_this_still = usual for this still
floor-curve-usual = usual

# jobs/run/cutparts.js
floor-cutparts-i_switched_earlier = I switched earlier
floor-cutparts-why_it_is_logged = Why it is logged now
floor-cutparts-hands_full = hands full
floor-cutparts-both_times_and_the = Both times and the reason stay legible.
floor-cutparts-switched_logged = switched { $at }, logged { $at_2 }
floor-cutparts-receiver_now_open = Receiver now open
floor-cutparts-another_receiver = Another receiver
floor-cutparts-by_its_mark = by its mark
floor-cutparts-mark = Mark
floor-cutparts-a_label_at_the = A label at the safe is read outside the line, or its mark typed.

# jobs/run/due.js
floor-due-part_to = { $part ->
    [hearts] hearts
    [tails] tails
    [low_wines] low wines
   *[heads] heads
  } to { $strength }
floor-due-part_to_last_time = { $part ->
    [hearts] hearts
    [tails] tails
    [low_wines] low wines
   *[heads] heads
  } to { $strength } last time
floor-due-the_sums_for_it = The sums for it come to this phone the next time it reaches the book.
floor-due-read_the_flow_with = Read the flow with jug and watch, and it says when.
floor-due-by_flow_times_minutes = { $litres } by flow times minutes.
floor-due-by_the_plan = { $words }, by the plan
floor-due-next_cut = Next cut
floor-due-is_reached = { $words }: { $by } is reached.
floor-due-nose_first = { $words } Nose first.
floor-due-about = { $words } { $near }about { $minutes }
floor-due-is_near = is near:{ " " }
floor-due-to = , { $low } to { $high }
floor-due-off_in_all_to = { $litres } off in all, { $low } to { $high }
floor-due-without_earlier_runs = , without earlier runs
floor-due-then_together = ; { $part } then { $strength_average_pct } together
floor-due-strength_alone_the_nose = Strength alone; the nose decides.
floor-due-on_earlier_runs_of = On earlier runs of this still { $kept } of { $tried } such forecasts held the cut.
floor-due-was_expected_about = { $words } was expected about { $at }.
floor-due-last_read = Last read { $at }.
floor-due-read_now_nose_first = Read now; nose first.
floor-due-no_flow_and_no = No flow and no dip read yet: with either, the sheet adds up what has run off.
floor-due-so_far = { $part } so far { $litres }
floor-due-at_together = at { $strength } together
floor-due-to_by_off_in = to { $until }, by { $by }; { $litres } off in all
floor-due-flow_times_minutes = flow times minutes
floor-due-dips = dips
floor-due-dip_of_flow_times = Dip of { $at }: { $got }; flow times minutes { $flowed }
floor-due-they_agree = { $both }. They agree.
floor-due-less_or_more_in_receiver = { $both }: { $off } % { $side ->
    [less] less
   *[more] more
  } in the receiver, where { $most } % may be. Is another receiver open, or was a cut logged late?

# jobs/run/far.js
floor-far-large = Large
floor-far-for_two_metres = for two metres
floor-far-the_run_at_arms = The run at arm's length
floor-far-close = Close
floor-far-true = { $sign } true
floor-far-no_strength_yet = no strength yet
floor-far-ago = , { $last } ago
floor-far-next_reading = next reading { $at }, { $at_2 }
floor-far-any_minute = any minute
floor-far-reached = reached
floor-far-expected_before_now = expected before now
floor-far-turn_to = turn to { $to }
floor-far-the_end = the end
floor-far-in = { $what } in
floor-far-any = any
floor-far-minute = minute
floor-far-no_plan_and_no = No plan and no run before: the nose says when.
floor-far-is_reached = { $words } is reached
floor-far-was_expected = was expected { $at }
floor-far-between_and = between { $low } and { $high }
floor-far-open_to = open, { $low } to { $high }
floor-far-of_about = { $litres } of about { $all }
floor-far-without_earlier_runs = without earlier runs

# jobs/run/jug.js
floor-jug-in_s = { $jug } in { $took } s
floor-jug-the_jug_holds = The jug holds
floor-jug-full = Full { $seconds }
floor-jug-start_the_watch = Start the watch
floor-jug-jug_and_watch = jug and watch

# jobs/run/second.js
floor-second-spirit_runs_at_above = Spirit runs at { $temp }, above { $warm_c }. More condenser water now, and the heat down until it runs cool: warm spirit gives off vapour that burns.
floor-second-true_is_above_of = True { $at } is above { $true_strength } of { $last }. After the heads cut it only falls, unless plates or water were changed.
floor-second-vapour_and_spirit_of = Vapour { $vapour } and spirit of { $at } do not go together: about { $wanted } is usual at that strength on this still. Look at both.

# jobs/run/sheet.js
floor-sheet-by_alcohol = By alcohol
floor-sheet-by_time = By time
floor-sheet-vapour = Vapour
floor-sheet-the_curve_is_drawn = The curve is drawn
floor-sheet-on_after_a_tap = on, after a tap
floor-sheet-plan = Plan:
floor-sheet-no_cut_plan_for = No cut plan for { $what } on this still yet.
floor-sheet-this_fruit = this fruit
floor-sheet-change_the_plan = Change the plan
floor-sheet-make_a_plan = Make a plan
floor-sheet-sound_near_a_cut = Sound near a cut
floor-sheet-hearts_to = hearts to { $hearts_to_pct }
floor-sheet-tails_to = tails to { $tails_to_pct }
floor-sheet-for_on_this_still = For { $what }, on this still. The nose decides; the plan reminds.
floor-sheet-the_fruit_named_below = the fruit named below

# jobs/shared/hands.js
floor-hands-who_logs = Who logs
floor-hands-other = Other
floor-hands-take_it = Take it

# jobs/shared/pane.js
floor-pane-vessels = Vessels

# jobs/shared/places.js
floor-places-stands_here = stands here
floor-places-and_more = and { $others } more
floor-places-free = free

# jobs/tasting/tasting.js
floor-tasting-set_of = set { $set_no } of { $mine }
floor-tasting-your_answer_is_on = Your answer is on the slate.
floor-tasting-set = { $name }, set { $set_no }

# jobs/tasting/view.js
floor-view-which_is_the_odd = Which is the odd one?
floor-view-two_of_the_three = Two of the three are the same.
floor-view-the_odd_one = the odd one
floor-view-which_is_the_same = Which is the same as R?
floor-view-r_stands_open_beside = R stands open beside the two.
floor-view-the_same_as_r = the same as R
floor-view-which_has_more_of = Which has more of it?
floor-view-this_one = this one
floor-view-tap_them_in_order = Tap them in order, the first one first.
floor-view-tap_again_to_take = Tap again to take one out.
floor-view-guessing = guessing
floor-view-fairly = fairly
floor-view-quite = quite
floor-view-nose = nose
floor-view-mouth = mouth
floor-view-finish = finish
floor-view-hotter = hotter
floor-view-wood = wood
floor-view-softer = softer
floor-view-nose_first_a_small = Nose first, a small sip, and spit. Water between. At most four sets, then rest; nobody drives or works at a still after it.
floor-view-place = place { $code }
floor-view-taste_left_to_right = { $how } Taste left to right, water between. You may go back. A guess is an answer too.
floor-view-glasses_left_to_right = Glasses, left to right
floor-view-how_sure = How sure?
floor-view-what_gave_it_away = What gave it away? (may)
floor-view-the_codes_are_drawn = The codes are drawn anew for each taster. This phone does not know what they hold.
floor-view-of_in_order = { $order } of { $codes } in order
floor-view-name_a_glass = Name a glass
floor-view-log = Log: { $order }
floor-view-is = { $picked } is { $named }
floor-view-which_tasting_stands_before = Which tasting stands before you?
floor-view-all_your_sets_are = All your sets are answered. Say nothing of them until it is opened at the desk.
floor-view-no_glasses_wait_for = No glasses wait for you. A tasting is set out at the desk; its codes come with the next cards.

# jobs/timers/ring.js
floor-ring-set_for = { $at }: set for { $at_2 }.
floor-ring-set_for_2 = Set for { $at }.
floor-ring-set_for_3 = set for { $at }{ $more }
floor-ring-more = { " " }· { $due } more
floor-ring-read = Read
floor-ring-min_more = { $minutes } min more
floor-ring-drop_the_reminder = Drop the reminder
floor-ring-drop = Drop

# jobs/timers/show.js
floor-show-next = Next
floor-show-reading = reading
floor-show-remind_me = Remind me
floor-show-next_reading = next reading
floor-show-reminders = Reminders
floor-show-due = due
floor-show-when_is_to_be = When is { $name } to be read?
floor-show-set_for = Set for
floor-show-min_after_each_reading = ; { $minutes } min after each reading
floor-show-at = At
floor-show-set_it = Set it
floor-show-minutes_begin_anew_with = Minutes begin anew with each reading.{ " " }
floor-show-no_reminder = No reminder
floor-show-rings_while_cellarslate_is = Rings while Cellarslate is open on this phone.
floor-show-rings_while_cellarslate_is_2 = Rings while Cellarslate is open; behind other apps the phone shows a notice.
floor-show-rings_while_cellarslate_is_3 = Rings while Cellarslate is open. The phone will ask whether it may show a notice too.

# jobs/timers/times.js
floor-times-in_h = In { $hour } h
floor-times-this_evening = This evening
floor-times-late_this_evening = Late this evening
floor-times-tomorrow_morning = Tomorrow morning
floor-times-in = in { $span }
floor-times-due_now = due now
floor-times-over = { $left } over
floor-times-yesterday = yesterday{ " " }
floor-times-tomorrow = tomorrow{ " " }
floor-times-next_reading = Next reading{ $name }
floor-times-of = { " " }of { $name }

# jobs/vessel/stand.js
floor-stand-as_it_stands = As it stands
floor-stand-pure_alcohol = Pure alcohol
floor-stand-as_of = as of { $date }
floor-stand-with_what_waits_here = with what waits here
floor-stand-how_full_is_not = how full is not known
floor-stand-of_full = { " " }of { $capacity_l }, { $capacity_l_2 } % full
floor-stand-between_and = , between { $low } and { $high }
floor-stand-about = about{ " " }
floor-stand-empty_by_the_book = Empty, by the book.
floor-stand-takes = Takes { $capacity_l }.
floor-stand-of = { $about }{ $litres } of { $capacity_l }{ $since }
floor-stand-to = { $about }{ $low } to { $high }, { $about_2 }
floor-stand-now = now{ " " }
floor-stand-by_its_weight = by its weight
floor-stand-fill_to_at_most = fill to { $working_l } at most
floor-stand-so_far_from_gravity = { $so_far } so far, from gravity
floor-stand-goes_down_to = goes down to { $target }
floor-stand-filled = filled { $since }{ $use }
floor-stand-gravity = gravity
floor-stand-end = end
floor-stand-save_its_label = Save its label
floor-stand-pure_alcohol_gauge_by = Pure alcohol, gauge by gauge

# scan/camera.js
floor-camera-the_camera_works_only = The camera works only over https. Open the book by its https address, or type the mark.
floor-camera-this_browser_offers_no = This browser offers no camera. Type the mark.
floor-camera-no_camera_was_found = No camera was found. Type the mark.
floor-camera-the_camera_is_not = The camera is not allowed here. Allow it in the browser's settings for this site, or type the mark.
floor-camera-another_app_is_using = Another app is using the camera. Close it and try again, or type the mark.
floor-camera-the_camera_stopped_because = The camera stopped because the page was hidden. Tap scan to start again.
floor-camera-the_camera_stopped_tap = The camera stopped. Tap scan to start again, or type the mark.
floor-camera-the_camera_did_not = The camera did not start. Try again, or type the mark.

# scan/decoder.js
floor-decoder-the_label_reader_is = The label reader is not on this phone yet. Type the mark, or scan once where there is a signal.
floor-decoder-this_browser_cannot_look = This browser cannot look at pictures. Type the mark.

# scan/scanner.js
floor-scanner-this_code_is_not = This code is not one of ours. Scan the label on the vessel, or type its mark.
floor-scanner-several_marks_are_in = Several marks are in view. Go nearer, so that only one is seen.
floor-scanner-hold_the_label_in = Hold the label in view.
floor-scanner-nothing_found_yet_go = Nothing found yet. Go nearer, tilt the phone against glare, or type the mark.

# slate/phonekey.js
floor-phonekey-this_browser_keeps_no = This browser keeps no key, so entries are not signed.

# ui/unitlist.js
floor-unitlist-unit = Unit

floor-view-case_word = { PLURAL($count) ->
    [one] case
   *[other] cases
  }
floor-bottles_of = { PLURAL($count) ->
    [one] { $count } bottle
   *[other] { $count } bottles
  }
floor-cases_of = { PLURAL($count) ->
    [one] { $count } case
   *[other] { $count } cases
  }
floor-roundview-bottles_off = { PLURAL($count) ->
    [one] { $off } bottle
   *[other] { $off } bottles
  }
floor-roundview-missing = missing
floor-roundview-elsewhere = elsewhere
floor-round-counts = { PLURAL($count) ->
    [one] { $count } count
   *[other] { $count } counts
  }
floor-sets = { PLURAL($count) ->
    [one] { $count } set
   *[other] { $count } sets
  }
floor-balance-wash = wash
floor-balance-feints = feints
floor-balance-side_in = in
floor-balance-side_out = out
# Why there is no forecast of a cut.
floor-forecast-no_charge = Too little to say: the charge of this run is not logged. Log litres and strength of the charge.
floor-forecast-few_readings = Too little to say: log { $which ->
    [another] another reading
   *[first] the first readings
  } of the stream.
floor-forecast-no_flow = Too little to say: log the flow, or dip the receiver.
floor-forecast-odd_readings = Too little to say: the readings rise and fall. Read the stream again.
floor-forecast-far = Too little to say: the cut is still far off. Another reading will help.
floor-forecast-wide = Too little to say: it could be any time within { $width } minutes. Another reading will help.
floor-forecast-out_of_range = No forecast at { $target } % vol: it runs from { $low } to { $high } % vol.
floor-forecast-past = The stream has passed { $target } % vol.

floor-counter-count_of = Count: { $label }
floor-listening-speak = Speak the figure
floor-lasttime-receivers = Receivers as last time
floor-pane-people = People and vessels
floor-ring-reminder = Reminder

# slate/file.js
floor-file-save_it_again_on = Save it again on the phone it came from, or fetch it once more.
floor-file-this_file_is_too = This file is too large for a slate. Pick the file that Cellarslate has saved.
floor-file-this_file_is_damaged = This file is damaged: its checksum does not fit. { $again }
floor-file-this_file_is_damaged_2 = This file is damaged: it breaks off or is no slate. { $again }
floor-file-this_file_is_no = This file is no slate. Pick one named cellarslate-slate-….json.
floor-file-this_slate_was_saved = This slate was saved by a newer Cellarslate. Update this phone first.
floor-file-this_file_is_damaged_3 = This file is damaged: entries are missing parts. { $again }

floor-low_wines = low wines

# Pictures with entries.
floor-enclosed-too_many = One entry takes at most { $most } pictures. Log it, then add the others to another.
floor-enclosed-with_this_entry = Pictures with this entry
floor-enclosed-picture_number = Picture { $number }
floor-enclosed-take_off = Take it off: { $name }
floor-enclosed-keeping_it = Keeping it
floor-enclosed-picture = Picture
floor-enclosed-pictures = Pictures
floor-enclosed-on_the_slate = The picture is on the slate.
floor-enclosed-open_the_paper = Open the paper
floor-enclosed-on_this_phone = { "." } On this phone; it hands itself in after its entry.
floor-enclosed-not_in_the_book = { "." } Not in the book: { $words }
floor-enclosed-too_large = This picture is larger than { $most } MB. Take it anew with the camera's ordinary size.
floor-enclosed-no_picture = This phone cannot read that as a picture. Take it anew, with the camera.
floor-enclosed-waiting = { PLURAL($count) ->
    [one] { $count } picture or voice note waits
   *[other] { $count } pictures and voice notes wait
  } here. They go after the entries, piece by piece.
floor-enclosed-refused = { PLURAL($count) ->
    [one] { $count } picture
   *[other] { $count } pictures
  } the book cannot keep; open the line to see why.
floor-enclosed-not_reached = The book cannot be reached from here.
floor-enclosed-no_room = This phone is nearly full, and the room left is kept for entries. Log it without the picture, or hand in and free some space first.

### Only the desk reads what follows.

## What the phone's system shows of the installed app.

floor-manifest-description = The distillery's floor log, with or without signal.
floor-manifest-shot_today = What is due today
floor-manifest-shot_run = A still run, and when to cut
floor-manifest-shot_wide = The run sheet on a tablet
floor-manifest-scan = Scan a label
floor-manifest-due = What is due
floor-manifest-round = Readings round
floor-manifest-slate = The slate

desk-languages-label = Language
desk-you-language = Language
desk-you-language-any = As the browser or the house has it
desk-you-language-keep = Keep

## desk-frame

desk-frame-floor = Floor
desk-frame-sign_out = Sign out
desk-frame-to_its_doors = To its doors
desk-frame-this_is_the_demo_nothing = This is the demo: nothing here is real. { $link }
desk-frame-name_a_folder_on_another = Name a folder on another disk
desk-frame-this_book_has_no_backups = This book has no backups yet. { $link }; they then come daily by themselves.
desk-frame-the_book_goes_on_with = { $unjudged } The book goes on with it by itself; hand-ins need not wait.
desk-frame-other_rules_have_judged_the = Other rules have judged the book, and { $entries } { $entries ->
    [one] entry
   *[other] entries
  } came out otherwise than before. { $link }.

## desk-common

desk-common-look_at_it = Look at it
desk-common-look_at_them = Look at them
desk-common-reason = Reason
desk-common-amend = Amend
desk-common-at = at { $strength_pct }
desk-common-bottled = Bottled
desk-common-blind_tastings = Blind tastings
desk-common-plan_a_vat = Plan a vat
desk-common-vat = Vat
desk-common-by = By
desk-common-vessels = Vessels
desk-common-batch = Batch
desk-common-last = Last
desk-common-state = State
desk-common-closed = closed
desk-common-under_way = under way
desk-common-the_entry = The entry
desk-common-out_of = Out of
desk-common-not_yet = not yet
desk-common-water = Water
desk-common-spirit = Spirit
desk-common-any = any
desk-common-pure_alcohol = pure alcohol
desk-common-at2 = { $what } at { $what2 }
desk-common-years = Years
desk-common-none = none
desk-common-may = May
desk-common-vessel = Vessel
desk-common-lot = Lot
desk-common-place = Place
desk-common-pure_alcohol_l = Pure alcohol, L
desk-common-proof_gal = Proof gal
desk-common-open = open
desk-common-ended = ended
desk-common-trace = Trace
desk-common-on_the_floor = On the floor
desk-common-holds = holds { $holding }
desk-common-answer = Answer
desk-common-since = Since
desk-common-to = { $percent } to { $percent2 }
desk-common-on = On
desk-common-show = Show
desk-common-what = What
desk-common-from = From
desk-common-to2 = To
desk-common-when = When
desk-common-score = Score
desk-common-who = Who
desk-common-casks = Casks
desk-common-all = all
desk-common-due = Due
desk-common-cask = Cask
desk-common-holds2 = Holds
desk-common-loss_a_year = Loss, % a year
desk-common-not_known = not known
desk-common-readings = Readings
desk-common-print = Print
desk-common-at3 = at { $bold }
desk-common-read_at = Read at
desk-common-gravity = Gravity
desk-common-ferment = Ferment
desk-common-set = Set
desk-common-read = Read
desk-common-ended2 = Ended
desk-common-none_yet = None yet.
desk-common-keep = Keep
desk-common-which_vessels = Which vessels
desk-common-sort = Sort
desk-common-and_more = and { $count } more
desk-common-none2 = None.
desk-common-remark = Remark
desk-common-leave_it = Leave it
desk-common-entries = Entries
desk-common-kind = Kind
desk-common-book_no = Book no.
desk-common-phone = Phone
desk-common-asked = Asked
desk-common-or = or
desk-common-right = right
desk-common-digest = Digest
desk-common-proof_gal2 = proof gal
desk-common-l_pure_alcohol = L pure alcohol
desk-common-litres_of_pure_alcohol = Litres of pure alcohol
desk-common-proof_gallons = Proof gallons
desk-common-what_happened = What happened
desk-common-cases = Cases
desk-common-bottles = Bottles
desk-common-document = Document
desk-common-to3 = to { $case_to }
desk-common-bottling = Bottling
desk-common-odd = odd { $odd_case }
desk-common-of_l = of { $what } L
desk-common-bottled_goods = Bottled goods
desk-common-where_it_went = Where it went
desk-common-minute = Minute
desk-common-line = Line
desk-common-closed2 = Closed
desk-common-filled = Filled
desk-common-all2 = All
desk-common-ranges = Ranges
desk-common-access = Access
desk-common-more = More
desk-common-how_phones_reach_this_book = How phones reach this book
desk-common-change = Change
desk-common-add = Add
desk-common-entry = Entry
desk-common-new_instrument = New instrument
desk-common-instruments = Instruments
desk-common-number = Number
desk-common-description = Description
desk-common-limits_of_the_checks = Limits of the checks
desk-common-every_limit_is_the_checks = Every limit is the check's own.
desk-common-customers_and_growers = Customers and growers
desk-common-from_a_spreadsheet = From a spreadsheet
desk-common-name = Name
desk-common-people = People
desk-common-new_person = New person
desk-common-phones = Phones
desk-common-last_heard = Last heard
desk-common-proof = Proof
desk-common-rules = Rules
desk-common-laboratory = Laboratory
desk-common-log_a_certificate = Log a certificate
desk-common-litres_of_pure_alcohol_at = litres of pure alcohol at 20 °C
desk-common-account = Account
desk-common-of_what_stood_at_its = ± of what stood at its end
desk-common-the_period = The period
desk-common-of_its_lines = ± of its lines
desk-common-period = Period
desk-common-as_now_known = As now known
desk-common-as_now_known2 = as now known
desk-common-open_figures_may_still_change = Open: figures may still change.
desk-common-periods = Periods
desk-common-seasons = Seasons
desk-common-records_the_law_asks_for = Records the law asks for
desk-common-proof_gallons2 = proof gallons
desk-common-germany = Germany
desk-common-proof_gal_from_100_lb = proof gal from 100 lb
desk-common-not_accounted_for = Not accounted for
desk-common-runs = Runs
desk-common-yields = Yields
desk-common-feints = Feints
desk-common-fruit = Fruit
desk-common-standing_now = Standing now
desk-common-still = Still
desk-common-why = Why
desk-common-n100_gal = 100 gal
desk-common-tasted_blind = Tasted blind:
desk-common-in = In
desk-common-run = Run
desk-common-rows = Rows
desk-common-mark = Mark
desk-common-look_it_over = Look it over
desk-common-sheet = Sheet
desk-common-taken_back = taken back
desk-common-samples = Samples
desk-common-answers = Answers
desk-common-what_was_found = What was found
desk-common-open_it = Open it
desk-common-bottled2 = bottled
desk-common-find_a_trace = Find a trace
desk-common-came_from = came from
desk-common-case_or_lot_mark_batch = Case or lot mark, batch, vessel, run, or delivery
desk-common-from2 = from { $name }: { $share }
desk-common-load_of_fruit = load of fruit
desk-common-list_as_csv = List as CSV
desk-common-all_as_json = All as JSON
desk-common-stands_there_now = stands there now
desk-common-made_from_it = made from it
desk-common-passed_through = passed through
desk-common-there_is_more_than_one = There is more than one trace can follow. What is shown holds, but it is not all: trace a later step by itself.
desk-common-in_these_bottles = In these bottles
desk-common-share_of_the_bottle = Share of the bottle
desk-common-where_the_cases_went = Where the cases went
desk-common-share_of_it = Share of it
desk-common-not_fermented_out = not fermented out
desk-common-the_same_in_words = The same in words
desk-common-new_vessel = New vessel
desk-common-mark_place_or_name = Mark, place or name
desk-common-no_vessels_here = No vessels here.
desk-common-to_the_floor = To the floor
desk-common-labels_to_hold_a_phone = Labels to hold a phone to
desk-common-print_them_a4 = Print them, A4
desk-common-to_the_doors = To the doors
desk-common-no_site_has_handed_in = No site has handed in yet.
desk-common-unnamed = unnamed
desk-common-something = something
desk-common-a_run = run
desk-common-a_bottling = bottling

## desk-parts

desk-parts-it_was = It was { $raw } { $unit }
desk-parts-it_stands = It stands
desk-parts-strike = Strike
desk-parts-nothing_in_the_book = nothing in the book

## desk-blending

desk-blending-vats_planned = Vats planned
desk-blending-none_yet_plan_one_pick = None yet. Plan one: pick casks, say what it should be.
desk-blending-tank = Tank
desk-blending-planned = Planned
desk-blending-water = Water, { $what }
desk-blending-volume = Volume, { $what }
desk-blending-no_batch_yet_a_bottling = No batch yet. A bottling tank gauge begins one.
desk-blending-tank_fills = Tank fills
desk-blending-blending = Blending
desk-blending-by_papers = , by papers
desk-blending-kept_the_tanks_card_shows = Kept. The tank's card shows it on every phone.
desk-blending-these_draws_cannot_be_read = These draws cannot be read any more. Go back and work the vat out again.
desk-blending-give_the_vat_a_name = Give the vat a name and pick its tank; then keep it.
desk-blending-the_book_has_no_such = The book has no such plan. Look for it in the list of vats.
desk-blending-nothing_is_left_to_choose = Nothing is left to choose from. Tick what may go in, or ask for fewer years in wood.

## desk-plan

desk-plan-planned_and_done = Planned and done
desk-plan-the_tank = The tank
desk-plan-planned_by_on_into_at = Planned by { $person } on { $when } into { $get }: { $plan } at { $plan2 }.
desk-plan-asked_for = Asked for: { $plan }.
desk-plan-it_rests_on_blind_tasting = It rests on blind tasting { $link }.
desk-plan-planned = Planned, { $what }
desk-plan-done = Done, { $what }
desk-plan-off = Off, { $what }
desk-plan-in_the_tank_now_at = In the tank now: { $volume_l } at { $strength_pct } by the book.

## desk-vat

desk-vat-the_vat = The vat
desk-vat-draws = Draws
desk-vat-keep_this_vat = Keep this vat
desk-vat-what_may_go_in = What may go in
desk-vat-may_go_in = { $name } may go in
desk-vat-must_go_in = { $name } must go in
desk-vat-years_of_by_the_papers = Years of { $name } by the papers
desk-vat-work_it_out = Work it out
desk-vat-begin_again = Begin again
desk-vat-at_from_vessel = { $bold } at { $bold2 }, { $lpa_l }{ $pure }, from { $count } { $count ->
    [one] vessel
   *[other] vessels
  }
desk-vat-of_water = { $water_kg } of water
desk-vat-and = and { $bold }
desk-vat-youngest_years_in_wood = Youngest { $what } years in wood
desk-vat-by_papers_only_of = by papers only of { $by_papers }
desk-vat-a_part_of_it_is = A part of it is of no known age.
desk-vat-that_is_less_than_asked = That is { $off } { $is_more ->
    [yes] more
   *[no] less
  } than asked for.
desk-vat-share = Share, %
desk-vat-before_the_water_at_the = Before the water { $before_l } at { $before_pct }. The mix shrinks by { $shrinks_l }: no loss, its pure alcohol stays.
desk-vat-name_of_the_vat = Name of the vat
desk-vat-into_tank = Into tank
desk-vat-rests_on_tasting = Rests on tasting
desk-vat-keep_this_plan = Keep this plan
desk-vat-no_cask_or_tank_has = No cask or tank has spirit in it by the book.
desk-vat-casks_go_whole_less_what = Casks go whole, less what the wood keeps. Years are those of the youngest part; where the book cannot know them, type what the papers say. A vessel with an open query is ticked by you alone: its figures may not stand.
desk-vat-must = Must
desk-vat-there = There, { $what }
desk-vat-to_give = To give, { $what }
desk-vat-by_the_papers = By the papers
desk-vat-left_out_too_young = left out: too young

## desk-cellar_parts

desk-cellar_parts-cellar = Cellar
desk-cellar_parts-to = ({ $low } to { $high })
desk-cellar_parts-about = about { $bold } { $part }
desk-cellar_parts-three_equal_gravities_since = three equal gravities since { $at }
desk-cellar_parts-not_moving_and_not_finished = not moving and not finished
desk-cellar_parts-has_hardly_begun = has hardly begun
desk-cellar_parts-stuck = stuck
desk-cellar_parts-too_few_readings = too few readings

## desk-cask

desk-cask-loss_a_year = Loss a year
desk-cask-forecast_for_a_day = Forecast for a day
desk-cask-forecast = Forecast
desk-cask-tasted = Tasted
desk-cask-gauges = Gauges
desk-cask-years_in_wood = { $percent } years in wood
desk-cask-from_before_this_book = From before this book
desk-cask-its_age_is_not_known = Its age is not known.
desk-cask-its_age_is_by_papers = Its age is by papers only: { $papers }.
desk-cask-its_age_is_by_what = Its age is by what was said at its opening; no papers are named.
desk-cask-pure_alcohol = Pure alcohol, %
desk-cask-volume = Volume, %
desk-cask-proof_points = proof points
desk-cask-strength = Strength, { $what }
desk-cask-over_years = Over, years
desk-cask-one_gauge_or_too_near = One gauge, or too near each other: no rate yet.
desk-cask-casks_like_it = casks like it
desk-cask-the_law_allows = the law allows
desk-cask-here_as_the_share_that = { $words } Here as the share that goes in a year. A caution level, no proof that a loss is usual, and no legal advice: compare with the house's own casks first.
desk-cask-of_pure_alcohol = of pure alcohol
desk-cask-between_its_last_two_gauges = Between its last two gauges, { $when } and { $when2 }, { $value } { $part }{ $pure } went; ± is twice the standard uncertainty, by the class of scale, glass and thermometer.
desk-cask-compared_with = Compared with
desk-cask-no_other_cask_to_compare = No other cask to compare with: plain figures for its size.
desk-cask-what_it_will_hold = What it will hold
desk-cask-no_forecast_for_a_day = No forecast for a day before its last gauge, or more than fifty years on.
desk-cask-expected = Expected
desk-cask-by_a_year_its_own = By { $percent } % a year, its own loss weighed with that of casks like it; from and to are meant to hold four times out of five. No leak and no sample is foreseen.
desk-cask-its_last_gauge_is_in = Its last gauge is in doubt, and so is this forecast: look at the cask first.
desk-cask-not_gauged_in_this_fill = Not gauged in this fill.
desk-cask-not_tasted_in_this_fill = Not tasted in this fill.
desk-cask-fault = Fault
desk-cask-house_scores = House scores
desk-cask-in_words = In words
desk-cask-decision = Decision
desk-cask-score_is_the_mean_of = Score is the mean of nose, mouth and wood.
desk-cask-gauges_of_this_fill = Gauges of this fill
desk-cask-drawn_since_the_one_before = Drawn since the one before, { $what }
desk-cask-the_last_gauge = the last gauge
desk-cask-its_fill = its fill
desk-cask-and_more = and more
desk-cask-pure_alcohol2 = Pure alcohol
desk-cask-strength2 = Strength
desk-cask-volume_at = Volume at { $temp }

## desk-casks

desk-casks-sort_casks = Sort casks
desk-casks-regauge_round = Regauge round
desk-casks-area = Area
desk-casks-no_such_cask = No such cask.
desk-casks-no_cask_holds_anything_as = No cask holds anything, as far as the book knows.
desk-casks-since_fill = Since fill
desk-casks-casks_like_it = Casks like it
desk-casks-looks_like = Looks like
desk-casks-loss_is_of_pure_alcohol = Loss is of pure alcohol since the last gauge that is at least two months old; samples are no loss. "Casks like it": four of five lie in that span, by size, then area, then wood and use; a small group borrows from the wider one until it has some casks of its own.
desk-casks-l_pure = L pure
desk-casks-by_papers = by papers

## desk-ferment

desk-ferment-counts_of_its_alcohol = Counts of its alcohol
desk-ferment-set = set { $when }
desk-ferment-emptied = emptied { $when }
desk-ferment-ends = Ends: { $forecast }.
desk-ferment-it_usually_ends_near = It usually ends near { $what }.
desk-ferment-it_takes_two_gravities_or = It takes two gravities, or a closed ferment.
desk-ferment-count = Count
desk-ferment-of_wash = { $what } of wash
desk-ferment-of_measured_wash = % of measured wash
desk-ferment-runs_of_charged_scaled_to = { $runs } { $runs ->
    [one] run
   *[other] runs
  } of { $charged_lpa } charged, scaled to the whole wash
desk-ferment-gravity_low_wines_and_spirits = Gravity, low wines and spirits count one thing in three ways that do not know of each other; old law took the greatest. Far apart: look at dips, strengths and the wash.
desk-ferment-not_read_yet = Not read yet.
desk-ferment-greatest = greatest
desk-ferment-title = { $what } in { $mark }

## desk-ferments

desk-ferments-ferments_under_way = Ferments under way
desk-ferments-ferments_that_have_ended = Ferments that have ended
desk-ferments-readings_round = Readings round
desk-ferments-no_ferment_is_under_way = No ferment is under way.
desk-ferments-ends = Ends
desk-ferments-the_day_is_forecast_from = The day is forecast from the falling curve of its own readings; the days in brackets are meant to hold four times out of five. Three equal gravities decide.
desk-ferments-emptied = Emptied
desk-ferments-first_gravity = First gravity
desk-ferments-ferments = Ferments

## desk-house_rules

desk-house_rules-n0_for_never = 0 for never
desk-house_rules-what_is_due_stands_on = What is due stands on Today on every phone. Words are tapped at a tasting; scores run from 0 to 10.
desk-house_rules-house_rules = House rules
desk-house_rules-too_young = too young
desk-house_rules-too_weak = too weak
desk-house_rules-too_strong = too strong
desk-house_rules-score_too_low = score too low
desk-house_rules-not_tasted = not tasted
desk-house_rules-loses_much_look_at_it = loses much: look at it
desk-house_rules-not_gauged = not gauged
desk-house_rules-spirit_as_the_book_names = Spirit, as the book names it; empty for all
desk-house_rules-in_wood_at_least_years = In wood at least [years]
desk-house_rules-strength_from_vol = Strength from [% vol]
desk-house_rules-strength_to_vol = Strength to [% vol]
desk-house_rules-score_at_least_of_10 = Score at least [of 10]
desk-house_rules-loss_at_most_a_year = Loss at most [% a year]
desk-house_rules-words_for_nose_and_mouth = Words for nose and mouth, one a line
desk-house_rules-beside_the_loss_of_casks = Beside the loss of casks: the allowance in the law of
desk-house_rules-scores_beside_nose_mouth_wood = Scores beside nose, mouth, wood and fault, one a line
desk-house_rules-kept = Kept.
desk-house_rules-type_a_figure_from_0 = Type a figure from 0 up, or leave it empty.
desk-house_rules-kept_phones_have_it_with = Kept. Phones have it with their next cards.
desk-house_rules-read_a_ferment_every = Read a ferment every
desk-house_rules-regauge_a_cask_every = Regauge a cask every
desk-house_rules-sample_a_cask_every = Sample a cask every
desk-house_rules-taste_a_cask_every = Taste a cask every
desk-house_rules-tell_of_an_instruments_check = Tell of an instrument's check before
desk-house_rules-check_bottles_on_the_line = Check bottles on the line every
desk-house_rules-or_after_so_many_of = or after so many of them

## desk-map

desk-map-rooms = Rooms
desk-map-map_of = Map of { $name }
desk-map-without_a_position = { $name }, without a position
desk-map-as_a_table = { $name } as a table
desk-map-elsewhere = ◆ elsewhere?
desk-map-empty = empty
desk-map-free = free
desk-map-count_sheet = Count sheet
desk-map-the_last_count_found_otherwise = The last count found otherwise
desk-map-nothing_has_a_place_yet = Nothing has a place yet. An entry that fills or moves a cask says one; so does the vessel's own page.
desk-map-vessels = { $count } { $count ->
    [one] vessel
   *[other] vessels
  }
desk-map-places_free = { $free } { $free ->
    [one] place
   *[other] places
  } free
desk-map-no_position = { $name }, no position
desk-map-without_a_place = Without a place { $part }
desk-map-the_first_vessels_are_drawn = The first { $most } vessels are drawn. Pick a sort to see others.
desk-map-a_place_is_where_an = A place is where an entry put the vessel last, else what its own page says. A hollow place is one that entries or the registry name and where nothing stands now. Arrow keys go from place to place.
desk-map-places = Places
desk-map-other_places = Other places

## desk-ready

desk-ready-years_in_wood = Years in wood
desk-ready-lacks = Lacks
desk-ready-no_rule_yet = No rule yet.
desk-ready-set_one_below_age_strength = Set one below: age, strength, score, loss.
desk-ready-the_distiller_sets_one = The distiller sets one.
desk-ready-ready = Ready { $part }
desk-ready-no_cask_meets_the_rule = No cask meets the rule today.
desk-ready-lacks_one_thing = Lacks one thing { $part }
desk-ready-the_rule = The rule
desk-ready-last_set_by = Last set by { $changed }, { $when }.
desk-ready-all_boxes_empty_takes_the = All boxes empty takes the rule of that spirit out. What is empty is not asked for. The rule is the house's own: age by law and label are another matter.
desk-ready-ready2 = Ready
desk-ready-lacks_one_thing2 = Lacks one thing
desk-ready-all_spirits = all spirits

## desk-amend

desk-amend-what_you_send_is_a = { $mark } · { $summary } · { $person }, { $read_local }. What you send is a new entry; the original stays legible.
desk-amend-why_it_is_amended = Why it is amended
desk-amend-amend = Amend: { $title }

## desk-entries

desk-entries-filter_entries = Filter entries
desk-entries-pick_a_kind_for_csv = Pick a kind for CSV
desk-entries-no_entries_here_yet = No entries here yet.
desk-entries-older = Older

## desk-entry

desk-entry-as_computed = As computed
desk-entry-movements = Movements
desk-entry-now_at = now at { $stands }
desk-entry-read_by = read { $read_local } by { $person }
desk-entry-an_earlier_entry = an earlier entry
desk-entry-amends = Amends { $link }: { $reason }
desk-entry-as_read = As read
desk-entry-by = by { $instrument }
desk-entry-corrected = corrected { $corrected }
desk-entry-is_twice_the_standard_uncertainty = ± is twice the standard uncertainty, by the class of the instruments; one that is not named, or has no class in the book, counts as of the class that the law prescribes.
desk-entry-figure = figure
desk-entry-typed = typed
desk-entry-with = with { $words }
desk-entry-nothing_is_computed_from_this = Nothing is computed from this.
desk-entry-how_it_came = How it came
desk-entry-typed_at = Typed at
desk-entry-received = Received
desk-entry-phones_clock = Phone's clock
desk-entry-fast = { $what } { $is_slow ->
    [yes] slow
   *[no] fast
  }
desk-entry-phone_its_count = Phone, its count
desk-entry-handed_in_by = Handed in by
desk-entry-signature = Signature
desk-entry-what_it_does_to_the = What it does to the accounts
desk-entry-from = from
desk-entry-to = to
desk-entry-account = account
desk-entry-why = why
desk-entry-as_typed = as typed
desk-entry-it_moves_no_spirit_either = It moves no spirit either way.
desk-entry-held_holds_then = held { $shown }, holds then
desk-entry-with_the_book_would_still = With { $words } the book would still ask before it moves anything.
desk-entry-held_holds_then2 = held { $litres }, holds then
desk-entry-its_story = Its story
desk-entry-this_entry = this entry
desk-entry-strike_this_entry = Strike this entry
desk-entry-strike_it_stays_legible = Strike; it stays legible
desk-entry-from_the_desk = from the desk
desk-entry-answered = answered
desk-entry-nothing_moves_until_the_question = Nothing moves until the question is answered.
desk-entry-it_is_struck_it_moves = It is struck: it moves nothing.
desk-entry-it_moves_no_spirit = It moves no spirit.
desk-entry-another_entry_stands_in_its = Another entry stands in its place.
desk-entry-none_the_phone_or_its = none: the phone or its browser gave none
desk-entry-the_book_has_no_such = The book has no such entry. It may still wait on a phone.
desk-entry-none_it_was_entered_at = none: it was entered at the desk
desk-entry-of_and_it_holds = of { $phones }, and it holds
desk-entry-with_a_key_that_the = with a key that the book has not got
desk-entry-there_is_no_such_entry = There is no such entry to amend.
desk-entry-pick_one_kind_first_each = Pick one kind first: each has its own columns.
desk-entry-amended_the_original_stays_legible = Amended. The original stays legible.
desk-entry-is_no_day_pick_one = { $day } is no day. Pick one, such as 2025-09-24.
desk-entry-say_why_it_is_amended = Say why it is amended, in a few words.

## desk-enclosed

desk-enclosed-title = Pictures and papers
desk-enclosed-show = Show pictures and papers
desk-enclosed-back = Back to what they belong to
desk-enclosed-none = None yet. Take one on the floor with an entry, or add one on the page of an entry.
desk-enclosed-picture = Picture
desk-enclosed-paper = Paper
desk-enclosed-voice_note = Voice note
desk-enclosed-not_come = Not here yet: it waits on the phone
desk-enclosed-added_later = added later
desk-enclosed-its_entry = its entry
desk-enclosed-add = Add pictures or papers
desk-enclosed-files = Files
desk-enclosed-help = JPEG, PNG or WebP up to 12 MB, PDF up to 20 MB, voice notes up to 6 MB; 24 MB at a time. Pictures lose their place and camera data.
desk-enclosed-what = What it shows
desk-enclosed-add_it = Add to this entry
desk-enclosed-added = { $count ->
    [one] Added. It is an entry of its own, which names this one.
   *[other] { $count } added. They are an entry of their own, which names this one.
  }
desk-enclosed-pick_one = Pick a picture or a paper first.
desk-enclosed-too_many = At most { $most } at a time. Add them in parts.
desk-enclosed-no_such_entry = There is no such entry to add to. Look for it among the entries.
desk-enclosed-the_paper = the paper
desk-enclosed-add_its_paper = add its paper

## desk-queries

desk-queries-which_questions = Which questions
desk-queries-to_answer = To answer
desk-queries-none_of_this_weight = None of this weight.
desk-queries-nothing_is_asked_what_comes = Nothing is asked. What comes in out of range will stand here.
desk-queries-questions = { $count } questions
desk-queries-ask_on_only_above = Ask on { $mark } only above { $value } { $limits }
desk-queries-times_it_stood_here = { $times } times it stood here. { $link }
desk-queries-the_first_are_shown_answer = The first { $most } are shown. Answer some, and the others follow.
desk-queries-questions2 = Questions
desk-queries-not_answered = Not answered: { $why }
desk-queries-it_stands = It stands.
desk-queries-struck_the_entry_stays_legible = Struck. The entry stays legible.

## desk-removals

desk-removals-to_or_from = To or from
desk-removals-loose = loose
desk-removals-of = of { $case_from }

## desk-bottled

desk-bottled-bottles_on_hand = Bottles on hand
desk-bottled-removals_as_csv = Removals as CSV
desk-bottled-all_removals_logged = All removals logged
desk-bottled-what_each_bottling_has_on = What each bottling has on hand, and where its cases went. Log it on the floor, under More: Cases out or in, Bottles. { $link }.
desk-bottled-nothing_is_bottled_yet_a = Nothing is bottled yet. A bottling close, or cases from another site, begin the stock.
desk-bottled-good_bottles = Good bottles
desk-bottled-on_hand = On hand
desk-bottled-last_count = Last count
desk-bottled-lot = lot { $lot_mark }
desk-bottled-for_the_library = { $library } for the library
desk-bottled-from = from { $consignor }, { $document }
desk-bottled-from_before_this_book = from before this book
desk-bottled-cases = { $cases } cases
desk-bottled-and = and { $loose }
desk-bottled-out_and_back = Out and back
desk-bottled-no_case_has_left_yet = No case has left yet.
desk-bottled-older_ones_are_in_the = { $count } older ones are in the file.

## desk-bottling

desk-bottling-checks_of_the_line = Checks of the line
desk-bottling-tank_gauge_and_label = Tank gauge and label
desk-bottling-no_bottling_tank_gauge_yet = No bottling tank gauge yet. Gauge the tank after all treatment, before the first bottle.
desk-bottling-at = { $volume } at { $strength }
desk-bottling-a_label_may_say_to = { $when }, { $tank }: { $bold } ({ $what }). A label may say { $low } to { $high }{ $span } and be within { $most } of it
desk-bottling-it_says = it says { $said }
desk-bottling-leave_room_for_what_glass = Leave room for what glass and thermometer pretend.
desk-bottling-it_fills_bottles_of_l = It fills { $what } bottles of { $what2 } L, nothing left behind.
desk-bottling-none_yet_check_five_bottles = None yet. Check five bottles every half hour.
desk-bottling-fill_of_the_label_on = Fill { $what } % of the label on average of { $count } checks
desk-bottling-spread = spread { $what }
desk-bottling-strength_on_average = Strength { $mean } on average
desk-bottling-spread2 = spread { $spread }
desk-bottling-at_this_size_each_bottle = At this size each bottle may be { $what } % over or under (27 CFR 19.356), about as many over as under.
desk-bottling-at_this_size_a_bottle = At this size a bottle may be { $what } % under, the average not at all (Directive 76/211/EEC, from memory).
desk-bottling-fill = Fill, %
desk-bottling-least = Least
desk-bottling-most = Most
desk-bottling-labels_right = Labels right
desk-bottling-done = Done
desk-bottling-not_closed_yet = Not closed yet.
desk-bottling-odd_case = Odd case
desk-bottling-labels_of_cases = Labels of cases
desk-bottling-a_case_label_leads_to = The symbol leads to the trace of the lot. It is not the label that the law asks for.
desk-bottling-these_are_no_cases = Name cases of this batch as its close has them, at most { $most } at once.
desk-bottling-broken = Broken
desk-bottling-library = Library
desk-bottling-good = Good
desk-bottling-to = { $case_from } to { $case_to }
desk-bottling-nothing_has_left_the_tank = Nothing has left the tank yet.
desk-bottling-gauged_bottled_not_in_a = Gauged { $gauged }, bottled { $bottled }: { $off }{ $pure } ({ $what2 } %) not in a bottle.
desk-bottling-batch = Batch { $name }
desk-bottling-span = { $low } to { $high } % vol
desk-bottling-the_book_has_no_batch = The book has no batch of that name in a tank. Look for it in the list of bottlings.
desk-bottling-fill_on_average = Fill, on average
desk-bottling-of_the_label = % of the label
desk-bottling-strength_in_the_bottles = Strength in the bottles

## desk-limits

desk-limits-to = { $what }{ $what2 } to { $what3 } { $symbol }{ $what4 }
desk-limits-as_the_kind = as the kind
desk-limits-every_range_is_the_kinds = Every range is the kind's own.
desk-limits-for = For
desk-limits-field = Field
desk-limits-usual = Usual
desk-limits-possible = Possible
desk-limits-find_limits = Find limits
desk-limits-limits = Limits
desk-limits-all_ranges = All ranges
desk-limits-limits_set_so_far = Limits set so far
desk-limits-all_limits = All limits
desk-limits-possible2 = possible: { $what }
desk-limits-words_field_vessel_or_product = Words, field, vessel or product
desk-limits-a_range_for_one_vessel = A range for one vessel goes before one for its sort, before one for the material, before one for the site, before the kind's own. Empty boxes give the kind's own back.
desk-limits-set_so_far = Set so far
desk-limits-no_range_here_holds_these = No range here holds these words.
desk-limits-a_limit_for_one_vessel = A limit for one vessel goes before one for the product, before one for the sort of vessel, before one for the site, before the check's own. An empty figure gives the check's own back.
desk-limits-no_limit_here_holds_these = No limit here holds these words.
desk-limits-limit = Limit
desk-limits-set_to = Set to
desk-limits-the_checks_own = The check's own
desk-limits-the_kinds_own = the kind's own
desk-limits-the_checks_own2 = the check's own
desk-limits-the_book_knows_no_vessel = The book knows no vessel { $key }.
desk-limits-say_which_the_sort_of = Say which: the sort of vessel, or the material.
desk-limits-from_to_is_no_range = From { $low } to { $high } is no range. Swap the two.
desk-limits-kept_the_vessels_concerned_are = Kept. The vessels concerned are judged anew.
desk-limits-kept_the_entries_concerned_are = Kept. The entries concerned are asked about anew.

## desk-access

desk-access-code = code
desk-access-all_as_json_lines = All as JSON lines
desk-access-everything = everything
desk-access-nothing_of_this_sort_yet = Nothing of this sort yet.
desk-access-the_newest_all_of_them = The newest { $most }. All of them leave as JSON lines.
desk-access-each_line_is_bound_to = Each line is bound to the one before; { $code } finds one that was changed or taken out. Lines older than { $days } days go.

## desk-address

desk-address-now = Now
desk-address-this_book_is_open_on = This book is open on this computer alone. Start { $code } without { $code2 } and { $code3 }, and phones on the same network reach it.
desk-address-phones_open = Phones open { $bold }.
desk-address-another_web_server_on_this = Another web server on this computer speaks for it, and its certificate is that one's matter.
desk-address-every_phone_trusts_it_as = Every phone trusts it as it is, by a certificate of your own name.
desk-address-this_houses_own_certificate = this house's own certificate
desk-address-each_phone_trusts_it_once = Each phone trusts it once it has taken { $link }.
desk-address-the_servers_certificate_lasts_unti = The server's certificate lasts until { $ends }
desk-address-and_is_renewed_before_that = and is renewed before that by itself
desk-address-the_address_is_who_the = The address is who the book is, to a phone.
desk-address-what_a_phone_holds_belongs = { $bold } What a phone holds belongs to the address it was opened at: with another one it begins empty, and what waited stays behind at the old one. Choose the lasting one before the first phone comes. To move later: let every phone hand in, then move, then let each in anew.
desk-address-the_ways = The ways
desk-address-the_houses_own_certificate = The house's own certificate
desk-address-nothing_to_buy_works_without = Nothing to buy, works without internet for ten years. On each phone six to eight taps once, among them a switch that is easily missed.
desk-address-an_internet_name_of_your = An internet name of your own
desk-address-phones_trust_it_with_no = Phones trust it with no taps at all. It costs a domain a year, internet once in a while, and somebody who sets it up once: a record that leads to this computer's address in the house, and an ACME client (RFC 8555) that proves the name by DNS and puts the two files here. They are looked at every quarter of an hour, and taken up when they are new. The name stands in public logs: a dull one is best.
desk-address-another_web_server_in_front = Another web server in front
desk-address-where_the_house_has_one = Where the house has one already, with a certificate of its own: it speaks TLS, and passes on to this one.
desk-address-when_a_phone_does_not = When a phone does not get here
desk-address-on_this_computer_looks_at = { $code } on this computer looks at name, address, port, clock, certificate, router, disk and backup, and says the one next step for each. Give this computer a fixed address in the router: a new one would be another book to the phones.

## desk-instrument

desk-instrument-checks = Checks
desk-instrument-readings_in_doubt = Readings in doubt
desk-instrument-due_on = due on { $due_on }
desk-instrument-last_good_check = last good check { $when }
desk-instrument-add_to_what_it_shows = add { $what } { $unit } to what it shows
desk-instrument-certificate_add = certificate, add { $table_words }
desk-instrument-entries_read_with_it = { $readings } { $readings ->
    [one] entry
   *[other] entries
  } read with it
desk-instrument-none_in_the_book_log = None in the book. Log one on the floor: Check instrument.
desk-instrument-against = Against
desk-instrument-should_show = Should show
desk-instrument-shows = Shows
desk-instrument-off_by = Off by
desk-instrument-result = Result
desk-instrument-good = good
desk-instrument-readings_in_doubt2 = { $doubtful } { $doubtful ->
    [one] reading
   *[other] readings
  } in doubt
desk-instrument-out_of_use = out of use
desk-instrument-in_use_until = in use until { $until }
desk-instrument-in_doubt_read_before_the = In doubt: read before the check of { $at }, since its last good one
desk-instrument-nothing_was_read_with_it = Nothing was read with it in that time.
desk-instrument-entries = { $many } { $many ->
    [one] entry
   *[other] entries
  }
desk-instrument-the_last_are_listed = the last { $count } are listed
desk-instrument-look_at_each_let_it = Look at each: let it stand, or amend it with the reason.
desk-instrument-by_this_check = By this check
desk-instrument-n27_cfr_19_188_asks = 27 CFR 19.188 asks for frequent checks; one in doubt is not used until it is certified.
desk-instrument-not_good = not good
desk-instrument-no_check_in_the_book = no check in the book
desk-instrument-there_is_no_such_instrument = There is no such instrument. Look for it in the list.

## desk-instruments

desk-instruments-none_yet_add_the_first = None yet. Add the first one.
desk-instruments-standing = Standing
desk-instruments-last_good_check = Last good check

## desk-invited

desk-invited-shown_this_once = Shown this once
desk-invited-scans_this_or_opens_the = { $name } scans this, or opens the link, within { $days } days, and sets a password that nobody else knows. It is good once; a new one makes it void.
desk-invited-hand_it_over_yourself_whoever = Hand it over yourself: whoever opens it first signs in as { $code }.
desk-invited-until_then_the_old_password = Until then the old password opens as before.
desk-invited-this_link_is_plain_http = This link is plain http: it works on this computer, and another one would send the password unprotected.
desk-invited-it_is_handed_over = It is handed over
desk-invited-invitation_for = Invitation for { $name }
desk-invited-on_this_computer_alone = on this computer alone

## desk-judging

desk-judging-all_as_a_file_csv = All as a file (CSV)
desk-judging-rules_digest_the_book_is = Rules { $number }, digest { $code }. The book is judged by them from { $when }
desk-judging-all_was_judged_at = all was judged at { $when }
desk-judging-other_than_before = Other than before: { $parts }.
desk-judging-not_all_is_judged_yet = Not all is judged yet. What comes out otherwise is listed as it is found.
desk-judging-so_far = so far
desk-judging-nothing_came_out_otherwise = Nothing came out otherwise{ $what }.
desk-judging-sums_that_came_out_otherwise = Sums that came out otherwise
desk-judging-none_stock_and_accounts_are = None. Stock and accounts are what they were.
desk-judging-entries_move_other_amounts_than = { $sums_many } { $sums_many ->
    [one] entry moves
   *[other] entries move
  } other amounts than before
desk-judging-the_first_are_listed_the = the first { $most } are listed, the file has all
desk-judging-a_closed_month_keeps_its = A closed month keeps its figures: what changed in it is an adjustment of the first open month.
desk-judging-before = Before: { $moves }
desk-judging-now = Now: { $moves }
desk-judging-questions_that_came_or_went = Questions that came or went
desk-judging-read_by = Read by { $read_by }, { $when }.
desk-judging-i_have_read_it = I have read it
desk-judging-rules_of_version = Rules of version { $version }
desk-judging-came_to = Came to
desk-judging-went_from = Went from
desk-judging-weighs_otherwise_for = Weighs otherwise for

## desk-parties

desk-parties-new = New
desk-parties-none_yet_add_them_one = None yet. Add them one by one, or take a sheet in.
desk-parties-sells_or_buys = Sells or buys
desk-parties-address = Address
desk-parties-note = Note
desk-parties-is_there_already_as_a = { $name } is there already as a { $role }. Change that one.
desk-parties-there_is_nobody_of_this = There is nobody of this name. Look at the list again.
desk-parties-kept = Kept.

## desk-party_edit

desk-party_edit-a_papers_and_entries_call = A { $role }. Papers and entries call them by this name, so it stays; under another name they are somebody new.
desk-party_edit-new_customer_or_grower = New customer or grower
desk-party_edit-supplier = supplier
desk-party_edit-customer = customer

## desk-passkey_new

desk-passkey_new-give_it_a_name_by = Give it a name by which you know it later, such as the computer or the key that it is on. Your browser then asks for your finger, face or PIN.
desk-passkey_new-this_browser_makes_no_passkeys = This browser makes no passkeys here. Take one that does, over https, or go on with your password.
desk-passkey_new-make_it = Make it
desk-passkey_new-made_at_it_is_good = Made at { $rp_id }, it is good there alone. Who loses the device ends its passkey on the page before.
desk-passkey_new-a_new_passkey = A new passkey

## desk-people

desk-people-code = Code
desk-people-roles = Roles
desk-people-at_the_desk = At the desk
desk-people-invited = invited
desk-people-password = password
desk-people-ended = { $count } ended.
desk-people-there_is_a_already_pick = There is a { $code } already. Pick another code.
desk-people-somebody_must_keep_the_office = Somebody must keep the office role. Give it to another person first.
desk-people-there_is_no_such_person = There is no such person.
desk-people-kept = Kept.

## desk-person_edit

desk-person_edit-the_floor_code_names_who = The floor code names who logs on a shared phone, offline too. It is no lock.
desk-person_edit-signing_in_at_the_desk = Signing in at the desk
desk-person_edit-invited_until = Invited until { $when }.
desk-person_edit-has_a_password_which_nobody = Has a password, which nobody else knows.
desk-person_edit-has_no_password_yet = Has no password yet.
desk-person_edit-sessions_open = { $n_open } { $n_open ->
    [one] session
   *[other] sessions
  } open.
desk-person_edit-end_the_sessions = End the sessions
desk-person_edit-who_is_to_sign_in = Who is to sign in at the desk is invited afterwards, on their page.
desk-person_edit-invite_to_a_new_password = Invite to a new password
desk-person_edit-invite_to_the_desk = Invite to the desk

## desk-readers

desk-readers-title = Other tools
desk-readers-about = A spreadsheet, a dashboard or a calendar reads what its key allows, until its day, and changes nothing. How: { $link }.
desk-readers-name = Name of the tool
desk-readers-name_it = Name the tool, such as “cellar spreadsheet”.
desk-readers-good_for = Good for
desk-readers-days = { PLURAL($days) ->
    [one] { $days } day
   *[other] { $days } days
  }
desk-readers-may_read = It may read
desk-readers-tick_what = Tick what it may read.
desk-readers-scope_entries = entries
desk-readers-scope_stock = what stands where
desk-readers-scope_periods = periods
desk-readers-scope_trace = traces
desk-readers-scope_cards = cards of the vessels
desk-readers-scope_calendar = the calendar of what is due
desk-readers-make = Make a key
desk-readers-key_for = Key for { $name }
desk-readers-shown_once = Shown this once. Whoever has it reads the same; keep it where passwords are kept.
desk-readers-calendar_at = Calendars take this address:
desk-readers-it_is_kept = It is kept
desk-readers-none = No tool has a key.
desk-readers-tool = Tool
desk-readers-reads = Reads
desk-readers-until = Until
desk-readers-used = Last used
desk-readers-never = never
desk-readers-over = ended
desk-readers-end = End
desk-readers-ended = The key of { $name } opens nothing any more.
desk-readers-no_such = There is no such key. Perhaps it was ended already.
desk-readers-calendar_name = { $house }: what is due
desk-readers-ferment_ends = { $name }: the ferment ends about now

## desk-phones

desk-phones-let_in = Let { $data } in
desk-phones-scan_this_with_the_phones = Scan this with the phone's own camera, once, within a day. As a link: { $link }
desk-phones-the_camera_does_not_scan = The camera does not scan?
desk-phones-open_on_the_phone_and = Open { $bold } on the phone and type, within { $minutes } minutes:
desk-phones-no_code_has_0_o = No code has 0, O, 1, I, L or U in it, and its last character checks the others. Scanned or typed, it is good for one phone.
desk-phones-a_phone_that_does_not = A phone that does not trust this server yet
desk-phones-it_opens = It opens { $place } first. There it must show these groups: { $groups }
desk-phones-the_trust_page = the trust page
desk-phones-make_a_code_for_a = Make a code for a new phone
desk-phones-no_phone_is_let_in = No phone is let in yet.
desk-phones-entries_seen = Entries seen
desk-phones-not_handed_in = Not handed in
desk-phones-clock = Clock
desk-phones-leave = Leave
desk-phones-never = never
desk-phones-none_known = none known
desk-phones-shut_out = shut out { $when }
desk-phones-shut_out2 = Shut out
desk-phones-a_missing_count_means_the = A missing count means the phone logged an entry that has not arrived. It hands it in by itself when it next meets the server.
desk-phones-counts_twice = Counts twice:
desk-phones-more_than_one_entry_has = { $bold } more than one entry has the same number of this phone. There are two copies of it, or it was set up from an older copy. All entries are in the book. Look for the other phone; if you cannot tell, shut it out and let it in anew.
desk-phones-counts_twice2 = counts twice
desk-phones-missing = missing
desk-phones-clock_off = { $minutes } min { $is_slow ->
    [yes] slow
   *[no] fast
  }
desk-phones-shut_out_entries_it_still = Shut out. Entries it still holds are safe on it, and go in once it is let in again.
desk-phones-there_is_no_such_phone = There is no such phone.

## desk-proof

desk-proof-lost_heads = Lost heads
desk-proof-witnesses = Witnesses
desk-proof-each_backup_each_phone_and = Each backup, each phone and the group keep heads: short proofs, signed here with the key { $code }, of all that the book held at a time. A book that was rewritten since has other heads. Up to the last head that somebody keeps elsewhere, no line can be changed or taken out unseen; later ones can.
desk-proof-the_registry_is_proved_column = The registry is proved column by column since { $when }.
desk-proof-the_registry_is_proved_column2 = The registry is proved column by column from the beginning.
desk-proof-compares_all_of_it = { $code } compares all of it.
desk-proof-shown_once_and_no_longer = Shown once, and no longer in the book
desk-proof-came_back = Came back
desk-proof-shown = Shown
desk-proof-what_differs = What differs
desk-proof-explained = explained
desk-proof-if_nobody_restored_an_older = If nobody restored an older backup, somebody changed the file of the book. Keep this folder as it is, and compare with a backup: { $code }.
desk-proof-why_the_book_lacks_them = Why the book lacks them
desk-proof-note_it = Note it
desk-proof-who_keeps_heads = Who keeps heads
desk-proof-nobody_yet_phones_begin_with = Nobody yet. Phones begin with their next hand-in, backups with the next one.
desk-proof-gave_it_back = Gave it back
desk-proof-beside_the_backups = Beside the backups
desk-proof-that_the_first_backup_makes = that the first backup makes
desk-proof-not_explained = not explained
desk-proof-noted_the_heads_stay_on = Noted. The heads stay on the list.

## desk-rules

desk-rules-rules_the_book_was_judged = Rules the book was judged by
desk-rules-the_book_is_judged_by = The book is judged by the rules of the program that keeps it. Where a version brings others, every entry is judged again while hand-ins go on. What came out otherwise stands here until somebody has read it.
desk-rules-version = Version
desk-rules-all_judged = All judged
desk-rules-read_by = Read by
desk-rules-entries = { $unread } { $unread ->
    [one] entry
   *[other] entries
  }
desk-rules-to_read = to read
desk-rules-kinds_of_entry = kinds of entry
desk-rules-sums_and_tables = sums and tables
desk-rules-the_fold = the fold
desk-rules-kept_you_have_read_it = Kept: you have read it.
desk-rules-l_pure_alcohol = { $flow } L pure alcohol
desk-rules-the_book_was_never_judged = The book was never judged by these. Look at the list.
desk-rules-the_run = the run

## desk-settings

desk-settings-settings = Settings
desk-settings-changes = Changes
desk-settings-the_house = The house
desk-settings-the_office_changes_the_house = { $name }. The office changes the house and people, and shuts phones out.
desk-settings-set_a_range = Set a range
desk-settings-set_a_limit = Set a limit
desk-settings-set = { $count } set.
desk-settings-check_due = Check due
desk-settings-by_which_the_book_is = By which the book is judged, and what came out otherwise under other ones.
desk-settings-backups = Backups
desk-settings-not_encrypted_whoever_finds_one = Not encrypted: whoever finds one reads it. { $code } on the server makes the key.
desk-settings-each_is_encrypted_to_the = Each is encrypted to the key of the house.
desk-settings-who_changed_what = Who changed what
desk-settings-nothing_was_changed_yet = Nothing was changed yet.
desk-settings-kept = Kept.
desk-settings-there_is_no_such_instrument = There is no such instrument.

## desk-you

desk-you-sessions = Sessions
desk-you-passkeys = Passkeys
desk-you-end_the_passkey = End the passkey { $name }
desk-you-keep_the_house = keep the house
desk-you-do_everything = do everything
desk-you-signed_in_as_who_may = Signed in as { $bold }, who may { $what }.
desk-you-where_you_are_signed_in = Where you are signed in
desk-you-the_list_begins_with_the = The list begins with the next sign-in.
desk-you-browser = Browser
desk-you-end = End
desk-you-last_used = Last used
desk-you-end_it = End it
desk-you-end_all_others = End all others
desk-you-a_session_ends_hours_after = A session ends { $idle_h } hours after its last use, and { $most_h } hours after its begin however much it is used.
desk-you-your_passkeys = Your passkeys
desk-you-a_passkey_opens_the_desk = A passkey opens the desk by the finger, face or PIN of this computer, a phone or a security key, with no password to type. The house keeps its public half only.
desk-you-passkey = Passkey
desk-you-good_at = Good at
desk-you-made = Made
desk-you-you_have_none_yet = You have none yet.
desk-you-add_a_passkey = Add a passkey
desk-you-passkeys_are_bound_to_a = Passkeys are bound to a name. Open the desk by the name of the house, not by an address of figures, to add one.
desk-you-your_password = Your password
desk-you-change_it = Change it
desk-you-forgotten_the_office_makes_you = Forgotten? The office makes you an invitation; nobody can read the old one.
desk-you-here = here
desk-you-look = look
desk-you-ended = Ended.
desk-you-ended_you_are_signed_in = { $ended } ended. You are signed in here alone.
desk-you-ended_it_opens_nothing_any = Ended: it opens nothing any more. Sessions that it began can be ended below.
desk-you-that_is_not_your_password = That is not your password. Type it again.
desk-you-there_is_no_such_session = There is no such session any more.
desk-you-no_passkey_can_be_made = No passkey can be made at this address. Open the desk by the name of the house.
desk-you-there_is_no_such_passkey = There is no such passkey any more.
desk-you-your_password_is_changed_you = Your password is changed. You are signed in here alone.
desk-you-this_took_too_long_or = This took too long, or is not what was asked for. Press once more.
desk-you-kept_you_can_sign_in = Kept. You can sign in with it from now on.

## desk-laboratory_parts

desk-laboratory_parts-results_of = Results of { $document }
desk-laboratory_parts-no_limit_here = no limit here
desk-laboratory_parts-substance = Substance
desk-laboratory_parts-found_and_how_it_stands = Found, and how it stands
desk-laboratory_parts-sample_of = { $link } · sample of { $taken_on }
desk-laboratory_parts-from = from { $link }
desk-laboratory_parts-not_tested_a_hydrometer_sees = Not tested: { $untested }. A hydrometer sees none of it.

## desk-certificates

desk-certificates-a_limit_and_a_result = { $caution } A limit and a result stand here with their source and with how far laboratories differ. No hydrometer, density meter or refractometer tells methanol from ethanol.
desk-certificates-the_newest_of_all_are = The newest { $count } of { $count2 }; all are among the entries.
desk-certificates-over_or_not_safely_under = Over or not safely under
desk-certificates-no_result_is_over_a = No result is over a limit or not safely under it.
desk-certificates-no_certificate_yet_log_one = No certificate yet. Log one from its vessel, or here for spirit that is in bottles.

## desk-casks_by_year

desk-casks_by_year-at_the_end_of_a = At the end of a month
desk-casks_by_year-casks_by_kind_and_year = Casks by kind and year
desk-casks_by_year-at_the_end_of = At the end of
desk-casks_by_year-filled_casks = Filled casks { $when }, by what they hold and the year of their fill; { $what } as last gauged.
desk-casks_by_year-at_the_end_of2 = at the end of { $month }
desk-casks_by_year-now = now
desk-casks_by_year-no_cask_is_full = No cask is full yet.
desk-casks_by_year-wood = Wood
desk-casks_by_year-with = With ±
desk-casks_by_year-by_papers_only = by papers only
desk-casks_by_year-some_by_papers = { $casks } by papers only
desk-casks_by_year-no_cask_was_full = No cask is full then.

## desk-close

desk-close-what_is_closed = What is closed
desk-close-the_entry_of_that_is = The entry of { $mark } that is asked about
desk-close-in = In, { $what }
desk-close-out = Out, { $what }
desk-close-end = End, { $what }
desk-close-every_line_with_its = Every line, with its ±
desk-close-what_is_made_of = What ± is made of
desk-close-in_the_name_of_this = In the name of { $name }, this closes { $months } for good: the figures stay as they are. An entry that comes later about this time is adjusted in the first open month, where everybody sees it.
desk-close-months_to = { $count } months, { $first } to { $last },
desk-close-each_of_them = each of them
desk-close-look_at_first = Look at { $link } first.
desk-close-answer_them = answer { $count ->
    [one] it
   *[other] them
  }
desk-close-questions_are_open_read_each = { $count } { $count ->
    [one] question is
   *[other] questions are
  } open. Read each, and say so; or { $link }. The close carries what was open, for good.
desk-close-i_have_looked_at_these = I have looked at these figures
desk-close-close = Close { $name }
desk-close-leave_it_open = Leave it open
desk-close-back_to = Back to { $name }

## desk-held

desk-held-by_account = By account
desk-held-the_least_known_first = The least known first
desk-held-no_vessel_held_anything_measured = No vessel held anything measured at the end of { $name }, or too many did to follow them all.
desk-held-at_the_end = At the end, { $what }
desk-held-of_it_measured = Of it measured
desk-held-known_to = Known to
desk-held-measured_anew_these_make_the = Measured anew, these make the end better known.
desk-held-last_measured = Last measured
desk-held-only_what_came_in = only what came in
desk-held-more_are_better_known = { $more } more are better known.
desk-held-of_what_stood_there = : ± of what stood there

## desk-period

desk-period-came_after_the_last_close = Came after the last close
desk-period-close_it = Close it
desk-period-was_closed_by_on_digest = { $month } was closed by { $person } on { $when }, digest { $code }.
desk-period-the_rest_is_open = The rest is open.
desk-period-was_closed_with_questions_open = { $month } was closed with { $count } { $count ->
    [one] question
   *[other] questions
  } open, each read by { $person }
desk-period-what_came_to_light_after = What came to light after the close. The figures above stay as they were signed; the difference is adjusted in the first open month.
desk-period-without_adjustments_each_figure_in = Without adjustments: each figure in the month it belongs to.
desk-period-came = Came
desk-period-period = Period { $name }

## desk-periods

desk-periods-casks_by_year = Casks by year
desk-periods-what_was_on_hand_at = What was on hand at the end of each quarter and month, in { $what }.
desk-periods-part_closed = part closed
desk-periods-changed_since = changed since
desk-periods-tick_that_you_have_looked = Tick that you have looked at the figures, then close.
desk-periods-is_closed_what_comes_to = { $name } is closed. What comes to light now is adjusted in the first open month.

## desk-records

desk-records-records = Records, { $where }
desk-records-rules_change_check_todays_text = { $caution } Rules change: check today's text.
desk-records-record = Record
desk-records-what_it_asks_for = What it asks for
desk-records-where_the_book_holds_it = Where the book holds it
desk-records-not_held = Not held
desk-records-when_keep = When: { $when }. Keep: { $keep }.
desk-records-signed_by = Signed by: { $sign }.
desk-records-source = Source: { $source }.
desk-records-eu = EU
desk-records-uk = UK

## desk-seasons

desk-seasons-litres_of_pure_alcohol_at = Litres of pure alcohol at 20 °C
desk-seasons-from_fruit_to_spirit_in = From fruit to spirit in one sum: what the stills were charged with, and where it is. { $what }.
desk-seasons-no_fruit_has_come_and = No fruit has come and no still has run yet.
desk-seasons-season = Season { $name }
desk-seasons-of_the_wash = of the wash
desk-seasons-l_of_pure_alcohol_from = L of pure alcohol from 100 kg
desk-seasons-of_fruit_what_a_ferment = { $l_per_100kg } { $what } of fruit. What a ferment gave and no still had is in the fermenters yet, or went with the lees.
desk-seasons-litres_gauged_not_litres_taxed = Litres gauged, not litres taxed
desk-seasons-gauged_not_taxed = Gauged, not taxed
desk-seasons-a_season_runs_twelve_months = { $what }. A season runs twelve months from July; a house south of the line sets its month in the settings.
desk-seasons-made_by_fermentation = Made by fermentation
desk-seasons-hearts = Hearts
desk-seasons-heads = Heads
desk-seasons-feints_on_hand = Feints on hand
desk-seasons-stillage = Stillage
desk-seasons-between_two_dips_of_low = Between two dips of low wines
desk-seasons-found_by_gauges_after_collection = Found by gauges after collection
desk-seasons-lost_out_of_the_stills = Lost out of the stills, by entry
desk-seasons-on_a_still_now = On a still now
desk-seasons-made_of_fruit = Made by fermentation from { $fruit } of fruit
desk-seasons-wash_charged = Wash charged in { $runs } runs

## desk-runs_parts

desk-runs_parts-in_out = In { $charged }, out { $came }:
desk-runs_parts-not_accounted_for = { $open }{ $pure } ({ $share } %) not accounted for.
desk-runs_parts-more_than_went_in = { $open }{ $pure } ({ $share } %) more than went in.
desk-runs_parts-stillage_was_not_read_taken = Stillage was not read: taken as { $stillage_pct } { $what }.
desk-runs_parts-plans = Plans
desk-runs_parts-low_look_at_fruit_ferment = low: look at fruit, ferment, balance
desk-runs_parts-high_look_at_weights_and = high: look at weights and gauges
desk-runs_parts-in = in
desk-runs_parts-out = out

## desk-beside

desk-beside-runs_beside_each_other = Runs beside each other
desk-beside-list_of_runs = list of runs
desk-beside-tick_two_to_runs_in = Tick two to { $most } runs in the { $link }.
desk-beside-still_began = Still, began
desk-beside-charged = Charged, { $what }
desk-beside-feints_in = Feints in, { $what }
desk-beside-hearts_at = Hearts, { $what } at { $what2 }
desk-beside-hearts_share_of_the_charge = Hearts, share of the charge
desk-beside-hearts_begin_at = Hearts begin at
desk-beside-tails_begin_at = Tails begin at
desk-beside-from_100_kg_l_pure = From 100 kg, L pure alcohol
desk-beside-from_100_lb_proof_gal = From 100 lb, proof gal
desk-beside-over_alcohol = True strength over pure alcohol collected

## desk-feints

desk-feints-feints_by_fruit = Feints by fruit
desk-feints-no_feints_yet_they_come = No feints yet. They come with the gauge of heads and tails.
desk-feints-heads_and_tails_by_fruit = Heads and tails by fruit: what was set aside, what later runs had, what was destroyed, what stands. A later run may be of another fruit: what it had counts for the fruit that was run.
desk-feints-heads_set_aside = Heads set aside
desk-feints-tails_set_aside = Tails set aside
desk-feints-used_in_its_runs = Used in its runs
desk-feints-destroyed = Destroyed
desk-feints-standing_is_by_what_was = Standing is by what was last named on the vessel. A hydrometer cannot see methanol: feints are kept by what a laboratory and the law say, not by their strength.

## desk-plans

desk-plans-cut_plans_and_best_runs = Cut plans and best runs
desk-plans-plan_for_any_still = Plan for any still
desk-plans-for_one_still_log_it = { $link } For one still, log it on the still's run sheet. The last plan counts; the nose decides.
desk-plans-no_plan_yet_and_no = No plan yet, and no run is marked as best.
desk-plans-heads = Heads, { $what }
desk-plans-hearts_to = Hearts to, { $what }
desk-plans-tails_to = Tails to, { $what }
desk-plans-who_when = Who, when
desk-plans-blind_tasting = Blind tasting { $tasting }
desk-plans-best_runs = Best runs

## desk-run

desk-run-balance = Balance
desk-run-on_from = { $what } { $batch } on { $link }, from { $when }
desk-run-to = to { $when }
desk-run-charge = Charge { $volume_l }
desk-run-with = with { $lpa_l }{ $pure }
desk-run-it_is_known_to_by = It is known to { $uncertain } { $what }, by the class of what was read.
desk-run-usual_is_0_5_to = Usual is 0.5 to 2 %.
desk-run-from_of_wash_of_fruit = { $bold }, { $per_100_l } from { $what } of wash; { $kg } of fruit by its share of the ferment.
desk-run-l_from_100_kg = L from 100 kg
desk-run-flat_rate_for_in_germany = Flat rate for { $name }: { $de_l }{ $what } in Germany
desk-run-in_austria = { $at_l } in Austria
desk-run-this_is_of_the_first = this is { $of_flat_rate } of the first.
desk-run-plan = Plan:
desk-run-heads = heads { $heads_l };
desk-run-hearts_to = hearts to { $hearts_to_pct } { $what };
desk-run-tails_to = tails to { $tails_to_pct } { $what };
desk-run-blind_tasting = blind tasting { $tasting }
desk-run-resting_on = resting on { $link }
desk-run-best_run_of = Best run of { $what }
desk-run-why_it_is_the_best = Why it is the best
desk-run-mark_as_the_best_run = Mark as the best run of { $what }
desk-run-cuts_and_events = Cuts and events
desk-run-event = Event
desk-run-receiver = Receiver
desk-run-true = { $what } true
desk-run-logged = logged { $typed_at }
desk-run-fractions = Fractions
desk-run-none_gauged_yet = None gauged yet.
desk-run-fraction = Fraction
desk-run-glass = Glass
desk-run-spirit = Spirit { $what }
desk-run-vapour = Vapour { $what }
desk-run-dip = Dip, { $what }
desk-run-a_hydrometer_cannot_see_methanol = A hydrometer cannot see methanol. Not tested here: methanol, ethyl carbamate.
desk-run-l_pure_alcohol_from_100 = L pure alcohol from 100 kg
desk-run-the_book_has_no_such = The book has no such run. Look for it in the list of runs.
desk-run-marked_as_the_best_run = Marked as the best run of { $what }.
desk-run-not_marked = Not marked:
desk-run-not_accounted_for = not accounted for
desk-run-this_still = this still
desk-run-true_strength_through = True strength through the run
desk-run-true_strength = true strength
desk-run-cut_logged = { $at }, logged { $typed_at }

## desk-runs

desk-runs-no_runs_yet_a_charge = No runs yet. A charge on a still begins one.
desk-runs-beside_each_other = Beside each other
desk-runs-tick_two_to = Tick two to { $most }.
desk-runs-tick = Tick
desk-runs-began = Began
desk-runs-charge = Charge, { $what }
desk-runs-cuts = Cuts
desk-runs-beside_others = { $name } beside others
desk-runs-best = best
desk-runs-tails = { $is_heads_cut ->
    [yes] hearts
   *[no] tails
  } { $at }
desk-runs-logged = (logged { $typed_at })
desk-runs-at = at { $true_strength } { $what }
desk-runs-pure_alcohol_in_l = Pure alcohol in, L
desk-runs-proof_gal_in = Proof gal in

## desk-yields

desk-yields-yield_of_each_ferment = Yield of each ferment
desk-yields-yield_by_fruit_and_year = Yield by fruit and year
desk-yields-no_yield_yet_it_needs = No yield yet. It needs fruit over the scale, a charge from its fermenter, and hearts or low wines gauged.
desk-yields-what_each_ferment_gave_all = What each ferment gave: all that came over, less the feints that went in. Flat rates are safe averages on which tax is reckoned, no targets; under 60 % or over 150 % is worth a look (common practice). The house's own years say more.
desk-yields-first_run = First run
desk-yields-fruit_run = Fruit run, { $what }
desk-yields-wash_run = Wash run, { $what }
desk-yields-made = Made, { $what }
desk-yields-n100_kg = 100 kg
desk-yields-n100_lb = 100 lb
desk-yields-from = from { $what }
desk-yields-flat_rate_de = Flat rate DE
desk-yields-flat_rate_at = Flat rate AT
desk-yields-of_the_rate = Of the rate
desk-yields-a_100_kg = a 100 kg
desk-yields-the_houses_own_years_from = The house's own years, from { $what }
desk-yields-ferment = { $yield } { $what }, { $ferments } { $ferments ->
    [one] ferment
   *[other] ferments
  }
desk-yields-where_the_flat_rates_come = Where the flat rates come from
desk-yields-check_them_against_the_order = Check them against the order now in force before anything is reckoned on them.
desk-yields-proof_gallons_the_flat_rates = Proof gallons; the flat rates as published, in litres of pure alcohol
desk-yields-austria = Austria
desk-yields-spread_in_handbooks = Spread in handbooks
desk-yields-a_ferment = ferment

## desk-lines

desk-lines-the_whole_book = The whole book
desk-lines-find = Find
desk-lines-mark_lot_person_paper_no = mark, lot, person, paper no.
desk-lines-what_answers = What answers
desk-lines-find_in_the_book = Find in the book
desk-lines-shown = { $many } shown. Arrow down leads to them.
desk-lines-nothing_answers = Nothing answers.

## desk-hits

desk-hits-all_that_answers_to = All that answers to “{ $text }”
desk-hits-nothing_answers_to = Nothing answers to “{ $text }”.

## desk-search

desk-search-the_index_of_older_entries = The index of older entries is still being made. What was put in lately can be found; the rest follows by itself.
desk-search-everything_that_answers = Everything that answers
desk-search-the_first_type_more_of = The first { $most }: type more of it.
desk-search-more_of_these = More of these
desk-search-did_you_mean = Did you mean
desk-search-list_of_entries = list of entries
desk-search-try_a_shorter_beginning_or = Try a shorter beginning, or one word less. Entries without a word in them are found by their vessel, or in the { $link }. What waits on a phone is not in the book yet.
desk-search-type_the_beginning_of_a = Type the beginning of a mark, a batch or lot, a run, a grower, a paper's number, a person, an instrument, or a word of a remark. C6, c-006 and C 006 find the same cask; accents do not count. The number of an entry in the book finds it, too.
desk-search-found_for = Found for “{ $text }”
desk-search-search = Search
desk-search-a_trace_goes_both_ways = A trace goes both ways: from a bottle, cask or run back to the fruit, and from a load of fruit on to every bottle.
desk-search-the_book_has_nothing_by = The book has nothing by that name. Try a mark, a batch, the number of a case, or part of a grower's name.
desk-search-that_answer_to = { $are_more ->
    [yes] The first { $count }
   *[no] { $count }
  } that answer to “{ $text }”
desk-search-nothing_among = Nothing among { $group } answers to “{ $text }”.
desk-search-a_vessel = vessel
desk-search-batches_and_lots = Batches and lots
desk-search-bottlings = Bottlings
desk-search-fruit_taken_in = Fruit taken in
desk-search-papers = Papers
desk-search-entries_and_remarks = Entries and remarks
desk-search-put_right_since = put right since
desk-search-waits_for_an_answer = waits for an answer
desk-search-out_of_use = out of use
desk-search-since = since { $since }
desk-search-no = { $day }, { $person }, no. { $number }
desk-search-to = { $since } to { $until }
desk-search-to2 = to { $last }

## desk-look

desk-look-row = Row { $number }, { $head_of }
desk-look-row2 = row
desk-look-computed = computed
desk-look-pure_alcohol_l = Pure alcohol, L{ $part }
desk-look-rows = { $name } · { $count } rows · { $code }
desk-look-look_again = Look again
desk-look-nothing_is_in_the_book = Nothing is in the book yet.
desk-look-cell_is_a_formula_what = { $formulas ->
    [one] { $formulas } cell is a formula: what it last showed is taken.
   *[other] { $formulas } cells are formulas: what they last showed is taken.
  }
desk-look-read_them_so = Read them so
desk-look-which_column_is_which = Which column is which
desk-look-of_taken = { $count } of { $count2 } taken
desk-look-these_rows_are = These rows are
desk-look-not_said = not said
desk-look-in = in { $unit }
desk-look-none_of_these = none of these
desk-look-more_rows_fit = { $count } more rows fit
desk-look-rows_to = rows { $others } to { $others2 }
desk-look-what_does_not_fit_in = What does not fit, in words
desk-look-row3 = row { $number }
desk-look-leave_row_out = Leave row { $number } out
desk-look-more_put_these_right_first = { $more } more. Put these right first, or in the sheet.
desk-look-rows_fit_they_bring = { $count } rows fit. They bring
desk-look-l_of_pure_alcohol = { $bold } L of pure alcohol
desk-look-row_fit = { $count ->
    [one] { $count } row fits.
   *[other] { $count } rows fit.
  }
desk-look-put_in_the_book = Put { $put } in the book
desk-look-the_book_has_all_of = The book has all of this already. Nothing is to be done.
desk-look-nothing_fits_yet = Nothing fits yet.
desk-look-known_already = known already
desk-look-does_not_fit = does not fit
desk-look-left_out = left out
desk-look-days_in_digits = Days in digits
desk-look-days_were_read_as = Days were read as
desk-look-day_month_year = day, month, year
desk-look-month_day_year = month, day, year
desk-look-more_of = More of { $title }

## desk-start

desk-start-moving_in = Moving in
desk-start-copy_the_rows_with_their = Copy the rows with their heads in the spreadsheet, and paste them here.
desk-start-template_of_csv = Template of { $title }, CSV
desk-start-sheets = Sheets
desk-start-a_file = A file
desk-start-csv_xlsx_or_ods_with = CSV, XLSX or ODS, with one head over each column, in any order. A workbook may hold several tables.
desk-start-or_pasted = Or pasted
desk-start-nothing_is_written_before_you = Nothing is written before you say so.
desk-start-templates = Templates
desk-start-all_in_one_workbook = All in one workbook
desk-start-needed_more_may_be_there = needed; { $count } more may be there
desk-start-put_in_so_far = Put in so far
desk-start-no_sheet_yet = No sheet yet.
desk-start-no = No.

## desk-taken

desk-taken-why_it_is_taken_back = Why it is taken back
desk-taken-the_file = The file
desk-taken-another_sheet = Another sheet
desk-taken-put_in_by_kept_as = Put in by { $person }, { $when }. Kept as it came, digest { $code }.
desk-taken-by = { $when } by { $back_by }: { $reason }
desk-taken-take_the_whole_sheet_back = Take the whole sheet back
desk-taken-table = Table
desk-taken-row = Row
desk-taken-which = Which
desk-taken-opening_stock = opening stock
desk-taken-sheet = Sheet { $no }

## desk-cautions

desk-cautions-n20_to_30_vol = 20 to 30 % vol
desk-cautions-n40_to_60_proof = 40 to 60 proof
desk-cautions-n20_to_30_ml = 20 to 30 mL
desk-cautions-about_1_fl_oz = about 1 fl oz
desk-cautions-reduce_to_a_glass_and = Reduce to { $what }, { $what2 } a glass, and spit. At most three or four sets in a sitting, water and plain bread between, two minutes' rest. Nobody drives or works at a still or a machine after tasting. Heads are never tasted: nose at most. A tasting never clears what is in the spirit: methanol, hydrogen cyanide and ethyl carbamate have no taste that tells. The house's own rules, local law and a licensed laboratory come first.

## desk-new

desk-new-what_a_number_of_answers = What a number of answers finds
desk-new-triangle_three_glasses_one_is = Triangle: three glasses, one is the odd one. Duo-trio: one stands open, which of two is the same? Pair: which has more of what you ask? One-sided where you name A as the answer beforehand. Ranking: three to five samples in order.
desk-new-of_sample_in_words = Of sample { $letter }, in words
desk-new-tasters = Tasters
desk-new-draw_the_codes_and_seal = Draw the codes and seal them
desk-new-a_triangle_at_a_risk = A triangle at a risk of 5 %. Few answers find only large differences.
desk-new-right_at_least = Right, at least
desk-new-found_if_half_perceive_it = Found if half perceive it
desk-new-found_four_times_in_five = Found four times in five from
desk-new-who_perceive_it = { $what } % who perceive it
desk-new-set_out_a_blind_tasting = Set out a blind tasting
desk-new-n64_to_60_vol = 64 to 60 % vol
desk-new-n128_to_120_proof = 128 to 120 proof

## desk-tasting

desk-tasting-how_often_guessing_alone_gives = How often guessing alone gives each number of right answers; this tasting gave { $right } of { $answers }.
desk-tasting-who_has_answered = Who has answered
desk-tasting-serving_sheet = Serving sheet
desk-tasting-risk = { $bold } { $method }, risk { $alpha_pct } %
desk-tasting-served_at = served at { $served }
desk-tasting-set_out_by_on = Set out by { $person } on { $when }.
desk-tasting-what_follows_by = What follows, by { $person }: { $bold }
desk-tasting-answers_came_in_after_the = { $count } { $count ->
    [one] answer
   *[other] answers
  } came in after the opening, logged before it by the phone's clock: { $late }.
desk-tasting-bars_how_often_guessing_alone = Bars: how often guessing alone gives so many. The mark: this tasting.
desk-tasting-plan_a_cut_that_rests = Plan a cut that rests on it
desk-tasting-plan_a_vat_that_rests = Plan a vat that rests on it
desk-tasting-it_was_opened_on_and = It was opened on { $when }, and no answer counts.
desk-tasting-letter = Letter
desk-tasting-sample = Sample
desk-tasting-of_it = Of it
desk-tasting-rank_sum = Rank sum
desk-tasting-batch = batch { $name }
desk-tasting-run = run { $name }
desk-tasting-taster = Taster
desk-tasting-glasses = Glasses
desk-tasting-named = Named
desk-tasting-how_sure = How sure
desk-tasting-what_gave_it_away = What gave it away
desk-tasting-not = { $picked }, { $is_right ->
    [yes] right
   *[no] not
  }
desk-tasting-entry = entry
desk-tasting-sealed_of_answers_are_in = Sealed: { $count } of { $count2 } answers are in
desk-tasting-which_code_holds_which_sample = Which code holds which sample is in nobody's hands but the pourer's. The entry keeps the seal of the key, so that nobody can change it afterwards.
desk-tasting-glasses_left_to_right = Glasses, left to right
desk-tasting-tasters_answer_on_the_phone = Tasters answer on the phone, under Blind tasting. It works without signal.
desk-tasting-answers_that_are_not_in = { $are_in ->
    [yes] All answers are in.
   *[no] Answers that are not in yet will not count.
  } Once open it stays open.
desk-tasting-what_follows_if_you_know = What follows, if you know it already
desk-tasting-you_taste_in_this_one = You taste in this one. You can open it once the last answer is in.
desk-tasting-blind_tasting = Blind tasting { $name }
desk-tasting-difference_found = difference found
desk-tasting-no_difference_shown = no difference shown
desk-tasting-in = in
desk-tasting-run2 = run { $run }, { $what }
desk-tasting-the_book_has_no_tasting = The book has no tasting of that name. Look for it in the list of tastings.
desk-tasting-you_taste_in_this_one2 = You taste in this one. It can be opened by you once the last answer is in.
desk-tasting-its_key_is_not_in = Its key is not in this book: it was drawn after the backup that this book comes from. Pour it anew.
desk-tasting-this_sheet_says_which_sample = This sheet says which sample is in which glass: it is for whoever pours, and no taster sees it.
desk-tasting-not_said = not said
desk-tasting-the_book_has_a_tasting = The book has a tasting of that name. Give this one another.
desk-tasting-the_codes_are_drawn_and = The codes are drawn and sealed. Each taster's phone has them with the next cards.
desk-tasting-it_is_open_answers_from = It is open. Answers from now on do not count.
desk-tasting-by_guessing_alone_so_many = By guessing alone so many or more come { $times_in } ({ $p_words }).
desk-tasting-by_chance_alone_the_rank = By chance alone the rank sums lie so far apart { $times_in } ({ $p_words }, { $how }; Friedman's figure { $friedman }).
desk-tasting-of_rank_sums_must_be = { $answers } of { $people }: rank sums must be apart by { $lsd } to count.
desk-tasting-n1_time_in = 1 time in { $min }
desk-tasting-named2 = named { $named }
desk-tasting-no_difference_shown_that_is = No difference shown. That is not proof of sameness.
desk-tasting-were_needed = { $needed } were needed
desk-tasting-so_few_answers_cannot_show = so few answers cannot show a difference at this risk
desk-tasting-can_find_nothing_at_a = { $answers } can find nothing at a risk of { $tasting } %.
desk-tasting-of_find_a_difference_four = { $answers } of { $people } find a difference four times in five if at least { $share } of the answers perceive it; a smaller one is easily missed.
desk-tasting-the_order_is_more_than = The order is more than chance. Apart are: { $pairs }.
desk-tasting-counted_out_over_all_orders = counted out over all orders
desk-tasting-by_chi_square_which_is = by chi-square, which is near for so many
desk-tasting-it_speaks_of_these_people = It speaks of these people, not of drinkers in general.
desk-tasting-answers = { $many ->
    [one] { $many } answer
   *[other] { $many } answers
  }
desk-tasting-people = { $many ->
    [one] { $many } person
   *[other] { $many } people
  }
desk-tasting-times_in_10 = { $min } times in 10
desk-tasting-p_below_0_0001 = p below 0.0001
desk-tasting-they_can_be_told_apart = They can be told apart.
desk-tasting-is_named_more_often = { $named } is named more often.
desk-tasting-the_order_is_more_than2 = The order is more than chance, but no two of them stand far enough apart to say which.
desk-tasting-no_order_shown_that_is = No order shown. That is not proof of sameness.
desk-tasting-of = { $right } of { $many } { $what }; { $needed }. { $says }

## desk-tastings

desk-tastings-set_out_a_tasting = Set out a tasting
desk-tastings-ask_one_question_before_pouring = Ask one question before pouring. Nobody who tastes knows which glass holds what; the book counts what the answers are worth. Heads are never tasted.
desk-tastings-none_yet_set_one_out = None yet. Set one out: two samples, a question, and who tastes.
desk-tastings-tasting = Tasting
desk-tastings-question = Question
desk-tastings-method = Method
desk-tastings-set_out = Set out
desk-tastings-of = { $count } of { $count2 }
desk-tastings-nobody_answered = nobody answered
desk-tastings-sealed = sealed

## desk-asked

desk-asked-look_at_it = Look at it: { $title }
desk-asked-more_about_it = { $count } more about it
desk-asked-all_questions_with_their_answers = All { $owed } questions, with their answers
desk-asked-answer_them = Answer them
desk-asked-no_figure_waits_for_an = No figure waits for an answer.
desk-asked-you = you
desk-asked-it_stands = it stands
desk-asked-the_last_answer_was_by = The last answer was { $near }, by { $who }: { $verdict }
desk-asked-what_comes_in_out_of = What comes in out of range will stand here.
desk-asked-all_answers = All answers
desk-asked-look_at_it_on = Look at it: { $title } on { $mark }
desk-asked-struck = struck

## desk-house

desk-house-pure_alcohol_year_by_year = Pure alcohol year by year
desk-house-the_house_holds = The house holds
desk-house-litres_of_pure_alcohol = litres of pure alcohol
desk-house-by_the_book_at = { $what }, by the book at { $minute }
desk-house-less_than_on = { $more } { $is_more ->
    [yes] more
   *[no] less
  } than on { $since }
desk-house-pure_alcohol_by_spirit = Pure alcohol by spirit
desk-house-oldest = oldest
desk-house-others = { $many } others
desk-house-wash_and_runs_under_way = wash and runs under way
desk-house-at_the_ends_of_months = At the ends of months, as now known: all of it, and what is in storage.
desk-house-year_by_year = Year by year
desk-house-in_storage = in storage
desk-house-in_processing = in processing
desk-house-in_production = in production
desk-house-season = Season { $season }
desk-house-fruit_in = fruit in
desk-house-made = made
desk-house-left = left
desk-house-lost = lost
desk-house-pure_alcohol_in_the_house = Pure alcohol in the house
desk-house-all = all

## desk-line

desk-line-as_typed_likely_expected = { $part } as typed { $part2 } likely { $part3 } expected
desk-line-the_day_on_a_line = The day on a line
desk-line-cleaned = cleaned
desk-line-off = off { $at }
desk-line-reached = reached: nose first
desk-line-too_little = too little read yet
desk-line-working = being worked out
desk-line-cut_to = cut to { $part }
desk-line-end = end
desk-line-end_of_run = end of the run
desk-line-span = { $low } to { $high }
desk-line-cleaned_at = cleaned { $at }, { $person }
desk-line-off_since = { $run } is off since { $at }
desk-line-since = { $run }: { $part } since { $at }
desk-line-nothing = nothing today
desk-line-by_plan = by the plan
desk-line-as_last = as last time
desk-line-was_expected = the { $what } was expected about { $at }, { $by }: read now, nose first
desk-line-expected = { $what } about { $at }, between { $low } and { $high }, { $by }
desk-line-is_reached = the { $what } is reached, { $by }: nose first
desk-line-is_working = the { $what } is being worked out: open the page again
desk-line-is_unknown = too little is read to say when the { $what } comes

## desk-lists

desk-lists-phones_backup_and_book = Phones, backup and book
desk-lists-near_their_end = Near their end
desk-lists-all_ferments = All ferments
desk-lists-no_ferment_says_yet_when = No ferment says yet when it ends. { $link }
desk-lists-the_days_are_meant_to = The days are meant to hold four times out of five; three equal gravities decide. { $link }
desk-lists-nothing_is_due = Nothing is due.
desk-lists-since_you_were_last_here = Since you were last here, { $near }
desk-lists-nothing_has_come_in = Nothing has come in.
desk-lists-entries_of = { $entries ->
    [one] entry
   *[other] entries
  } of { $count }
desk-lists-read_them = Read them
desk-lists-never_heard_yet = never heard yet
desk-lists-since_what_it_holds_is = since { $near }. What it holds is not here.
desk-lists-more_phones = { $more_phones } more { $more_phones ->
    [one] phone
   *[other] phones
  }
desk-lists-book = Book
desk-lists-entries = { $bold } { $what } { $entries ->
    [one] entry
   *[other] entries
  }
desk-lists-misses = misses { $count }
desk-lists-silent = silent
desk-lists-heard = heard
desk-lists-being_judged_anew = being judged anew
desk-lists-judged = judged
desk-lists-every_entry_by_the_rules = every entry by the rules and limits as they are now

## desk-today

desk-today-today = Today – { $name }
desk-today-owed_an_answer = Owed an answer

## desk-trace_parts

desk-trace_parts-and_more_all_are_in = and { $more } more: all are in the file
desk-trace_parts-and_more_all_are_in2 = and { $count } more: all are in the file

## desk-trace

desk-trace-print_the_passport = Print the passport
desk-trace-load_of_fruit = Load of fruit
desk-trace-words = { $bold }{ $pure } { $what2 }
desk-trace-its_entry = Its entry
desk-trace-the_run = The run
desk-trace-the_vessel = The vessel
desk-trace-lot_mark = Lot mark
desk-trace-none_of_it_is_in = None of it is in bottles by the book.
desk-trace-no_case_of_it_has = No case of it has left by the book.
desk-trace-not_accounted_for_yet = not accounted for yet
desk-trace-by_mass = by mass
desk-trace-tasted_blind = Tasted blind
desk-trace-nothing_has_moved_into_it = Nothing has moved into it or out of it yet.
desk-trace-every_vessel_and_run_is = Every vessel and run is taken as well mixed: what leaves it holds all that came in before, each by its share of pure alcohol. The alcohol of a ferment is shared over its loads by their mass. A gauge changes how much there is, not what it is.
desk-trace-made_of = Made of
desk-trace-picture = { $head }: { $name }. The list below the picture says the same in words.
desk-trace-from_before_this_book = From before this book
desk-trace-received_from_elsewhere = Received from elsewhere
desk-trace-not_on_record = Not on record
desk-trace-no_fruit_on_record = No fruit on record
desk-trace-not_followed = Not followed
desk-trace-ferments = Ferments
desk-trace-receivers = Receivers
desk-trace-cans = Cans
desk-trace-stills = Stills
desk-trace-tanks = Tanks
desk-trace-vats = Vats
desk-trace-between_sites = Between sites
desk-trace-bottlings = Bottlings
desk-trace-bottles_between_sites = Bottles between sites
desk-trace-received_in_bottles = Received in bottles
desk-trace-gone = Gone
desk-trace-trace_of = Trace of { $name }
desk-trace-the_book_has_nothing_to = The book has nothing to trace by that name. Look for it with the search on the trace page.
desk-trace-under_0_1 = under 0.1 %
desk-trace-origin = Origin
desk-trace-bottles_losses = Bottles, losses
desk-trace-others = { $count } others

## desk-dips

desk-dips-strapping_table = Strapping table
desk-dips-paste_the_two_columns_of = Paste the two columns of the table's sheet: the reading, then the volume, with a semicolon, a tab or a blank between. From one line to the next the volume follows a straight line.
desk-dips-dimensions_of_a_cask = Dimensions of a cask
desk-dips-inside_without_the_wood_by = Inside, without the wood. By them the volume is an estimate, some 3 % of the full cask off; a weighed cask is known ten times better.
desk-dips-dips_of = Dips of { $mark }
desk-dips-has_its_litres_estimated_from = has its litres estimated from its { $by }, by its dimensions: { $sizes } cm, { $how }.
desk-dips-how_its_litres_follow_from = How its litres follow from a dip
desk-dips-what_is_measured = What is measured
desk-dips-table_a_line_of_dip = Table: a line of dip and volume each
desk-dips-lengths_in = Lengths in
desk-dips-volumes_in = Volumes in
desk-dips-shell = Shell
desk-dips-the_table_holds_at = The table holds at
desk-dips-temperature_in = Temperature in
desk-dips-tilt_add_to_each_reading = Tilt: add to each reading [mm]
desk-dips-diameter_at_the_bung_inside = Diameter at the bung, inside
desk-dips-diameter_of_a_head_inside = Diameter of a head, inside
desk-dips-length_from_head_to_head = Length from head to head, inside
desk-dips-the_cask = The cask
desk-dips-is_not_dipped_by_the = is not dipped by the book: litres are typed.
desk-dips-has_its_litres_from_its = has its litres from its { $by }, by a table of { $count } lines: { $brief } to { $brief2 } cm, { $brief3 } to { $brief4 } L.
desk-dips-by_a_strapping_table = by a strapping table
desk-dips-by_the_dimensions_of_a = by the dimensions of a cask, an estimate
desk-dips-not_at_all_litres_are = not at all: litres are typed
desk-dips-dip_from_the_bottom_up = dip: from the bottom up
desk-dips-ullage_from_the_top_down = ullage: from the top down
desk-dips-stainless_steel_48_10_6 = stainless steel, 48·10⁻⁶ a °C
desk-dips-mild_steel_36_10_6 = mild steel, 36·10⁻⁶ a °C
desk-dips-other_no_correction = other: no correction

## desk-edit

desk-edit-an_entry_of_put_it = An entry of { $when } put it at { $bold }: there it stands, whatever this page says. To move it, log that it was moved.
desk-edit-change = Change { $mark }

## desk-labels

desk-labels-labels = Labels
desk-labels-without_a_place = without a place
desk-labels-every_vessel_here_has_its = Every vessel here has its label.
desk-labels-every_label_that_was_printed = Every label that was printed here still says what the book says.
desk-labels-print_those_ticked = Print those ticked
desk-labels-print_all_of_this_list = Print all { $what } of this list
desk-labels-print_at_full_size_not = Print at full size, not fitted to the page; the ruler on the sheet must measure 50 mm.
desk-labels-the_first_of_are_shown = The first { $count } of { $count2 } are shown.
desk-labels-label = Label
desk-labels-own_size = Own size
desk-labels-printed = printed { $when }
desk-labels-printed_is_what_was_sent = Printed is what was sent to print from this page. Without a label are vessels whose label was neither printed here nor ever scanned.
desk-labels-says_something_else_by_now = says something else by now
desk-labels-tick_at_least_one_vessel = Tick at least one vessel, and pick what the labels are printed on.

## desk-vessel

desk-vessel-twice_the_standard_uncertainty_by = Twice the standard uncertainty, by the class of the instruments of its last gauge and of what was moved since.
desk-vessel-dips = Dips
desk-vessel-since = since { $when }
desk-vessel-tare = tare { $tare_kg }
desk-vessel-inside_a_fire_zone = inside a fire zone
desk-vessel-dipped_by_a_table = { $is_dips ->
    [yes] estimated by its dimensions
   *[no] dipped by a table
  }
desk-vessel-holds = Holds { $holding }
desk-vessel-a_run_is_under_way = A run is under way
desk-vessel-since2 = { $link } since { $when }.
desk-vessel-no_entries_yet_scan_its = No entries yet. Scan its label on the floor, and log the first.
desk-vessel-all_its_entries = All its entries
desk-vessel-the_book_knows_no_vessel = The book knows no vessel { $mark }. Look for it in the list of vessels.
desk-vessel-there_is_a_vessel_already = There is a vessel { $mark } already. Pick another code, or change that one.
desk-vessel-is_in_the_book = { $made } is in the book.

## desk-vessels

desk-vessels-find_vessels = Find vessels
desk-vessels-add_the_first_then_print = Add the first; then print its label.
desk-vessels-capacity = Capacity, { $what }

## access-again

access-again-your_password_again_cellarslate = Your password again – Cellarslate
access-again-is_it_still_you = Is it still you?
access-again-this_cannot_be_taken_back = { $name }, this cannot be taken back, or takes data out of the house. Show once more that it is you; it then stands for { $minutes } minutes.
access-again-go_on = Go on
access-again-use_a_passkey = Use a passkey
access-again-that_is_not_your_password = That is not your password. Type it again.

## access-error

access-error-not_done_cellarslate = Not done – Cellarslate
access-error-not_done = Not done
access-error-to_the_sites = To the sites
access-error-to_the_desk = To the desk
access-error-this_could_not_be_read = This could not be read. Go back, look at what was typed, and send it again.
access-error-you_may_not_do_this = You may not do this here. Ask someone in the office.
access-error-there_is_nothing_at_this = There is nothing at this address. Go back and pick from the list.
access-error-this_address_does_not_take = This address does not take that. Go back and use the page's own button.
access-error-this_is_too_large_send = This is too large. Send less at once.
access-error-send_json_with_content_type = Send JSON, with Content-Type: application/json.
access-error-too_many_tries_wait_a = Too many tries. Wait a minute, then try again.
access-error-the_book_stumbled_nothing_handed = The book stumbled. Nothing handed in was lost; try again, and tell whoever runs the server.
access-error-the_book_is_busy_try = The book is busy. Try again in a moment.
access-error-this_page_was_open_too = This page was open too long, or from before you signed in. Go back, load it again, send it again.
access-error-this_was_not_sent_from = This was not sent from one of our own pages. Open the page again and send it from there.
access-error-this_needs_the_role_ask = This needs the { $access } role. Ask someone in the office.
access-error-this_phone_is_not_let = This phone is not let in. Open the office's one-time code on it; nothing is lost.

## access-invitation

access-invitation-your_password_cellarslate = Your password – Cellarslate
access-invitation-choose_your_password = { $name }, choose your password
access-invitation-lets_you_in = { $site } lets you in.
access-invitation-you_are_let_in = You are let in.
access-invitation-your_short_code_is_nobody = { $who } Your short code is { $bold }. Nobody but you knows the password: the office cannot read it, only invite you again.
access-invitation-ten_characters_at_least_four = Ten characters at least. Four words that nobody would put together are good; a name, a date and “password” are not.
access-invitation-set_it_and_sign_in = Set it and sign in
access-invitation-this_invitation_was_used_has = This invitation was used, has ended, or was replaced. Ask the office for a new one.

## access-set_up

access-set_up-set_up_cellarslate = Set up – Cellarslate
access-set_up-the_house_first_then_you = { $is_group ->
    [yes] The group's name
   *[no] The house
  } first, then you. You can let in others afterwards.
access-set_up-a_new_group = A new group
access-set_up-a_new_book = A new book
access-set_up-open_the_book = Open the book

## access-sign_in

access-sign_in-sign_in_cellarslate = Sign in – Cellarslate
access-sign_in-sign_in_to_the_desk = Sign in to the { $is_group ->
    [yes] group
   *[no] desk
  }
access-sign_in-sign_in = Sign in
access-sign_in-sign_in_with_a_passkey = Sign in with a passkey
access-sign_in-on_the_floor_no_sign = On the floor no sign-in is needed: the office lets a phone in once, by a code to scan.
access-sign_in-no_such_code = no such code
access-sign_in-too_many_tries_wait_s = Too many tries. Wait { $wait_s } s.
access-sign_in-this_server_has_no_authority = This server has no authority of its own: it runs without TLS, or with a certificate you gave it.
access-sign_in-code_or_password_is_wrong = Code or password is wrong. Type them again.
access-sign_in-that_is_not_the_code = That is not the code the server printed at its start. Type it again.

## access-trust

access-trust-let_this_phone_trust_the = Let this phone trust the house – Cellarslate
access-trust-let_this_phone_trust_the2 = Let this phone trust the house
access-trust-this_server_needs_no_certificate = This server needs no certificate on the phone: it runs on this computer only, or has a certificate of your own.
access-trust-once_on_each_phone_after = Once on each phone. After that the floor log opens without a warning and works with no signal.
access-trust-iphone_or_ipad = iPhone or iPad
access-trust-most_often_it_is_installed = Most often it is installed, but the switch is not on: Settings, General, About, Certificate Trust Settings. If no switch stands there, the profile was not installed: go back one step.
access-trust-android_phone = Android phone
access-trust-most_often_it_was_filed = Most often it was filed as a Wi-Fi certificate, or as one for VPN and apps, where no browser looks. Search Settings for CA certificate and install the same file there.
access-trust-windows = Windows
access-trust-it_may_have_been_placed = It may have been placed elsewhere: choose the place yourself, Trusted Root Certification Authorities.
access-trust-mac = Mac
access-trust-taken_but_not_set_to = Taken, but not set to Always Trust: that is most often what is missing.
access-trust-linux_another = Linux, another
access-trust-it_may_have_been_imported = It may have been imported without the tick that trusts it for web sites.
access-trust-in_safari_fetch_the_profile = In Safari, fetch the profile and tap Allow. Other browsers of this phone cannot take it.
access-trust-soon_after_open_settings_near = Soon after, open Settings. Near its top stands Profile Downloaded (else: General, VPN & Device Management). Open it, tap Install, and install it.
access-trust-settings_general_about_at_the = Settings, General, About, at the very bottom Certificate Trust Settings: switch on Cellarslate local authority. Installing alone is not enough.
access-trust-fetch_the_certificate_the_phone = Fetch the certificate. The phone keeps it among its downloads.
access-trust-open_settings_and_search_for = Open Settings and search for: CA certificate. (Security, Encryption & credentials, Install a certificate, CA certificate.) Tap Install anyway. A phone without a screen lock asks for one first.
access-trust-choose_the_file_cellarslate_crt = Choose the file cellarslate.crt among the downloads. A notice that the network may be watched stays; it speaks of this certificate.
access-trust-fetch_the_certificate_and_open = Fetch the certificate and open the file.
access-trust-install_certificate_current_user_p = Install Certificate, Current User, place all in: Trusted Root Certification Authorities.
access-trust-close_all_windows_of_the = Close all windows of the browser and open this page again.
access-trust-fetch_the_certificate_and_open2 = Fetch the certificate and open the file; Keychain Access takes it.
access-trust-in_keychain_access_open_cellarslat = In Keychain Access open Cellarslate local authority, Trust, and set it to Always Trust.
access-trust-fetch_the_certificate = Fetch the certificate.
access-trust-in_the_browser_settings_search = In the browser: Settings, search: certificates. Import it under Authorities; trust it for web sites.
access-trust-go_on_this_phone_is = Go on: this phone is let in
access-trust-open_the_floor_log = Open the floor log

## door-frame

door-frame-this_is_the_demo_is = This is the demo. { $name } is invented, and so is all that stands in its book.{ $break_ }Break what you like: { $code } lays it anew.

## door-front

door-front-doors = Doors
door-front-the_slate_by_the_still = The slate by the still, and the book it ends up in.
door-front-three_doors_into_the_same = Three doors into the same house, on { $now }.
door-front-a_run_of_is_on = A run of { $what } is on.
door-front-for_an_answer = { $asked ->
    [one] { $asked } figure waits
   *[other] { $asked } figures wait
  } for an answer.
door-front-the_demo_was_laid_on = The demo was laid on another day, so its run and its ferments are of that day. Stop it and start it with { $code } to lay it for today.
door-front-the_desk = The desk
door-front-you_are_see_what_the = You are { $name }, { $role }. See what the book asks, put a slip right, trace a bottle, close a month.
door-front-lines_of_a_year_and = { $what } lines of a year and a half
door-front-sit_down_at_the_desk = Sit down at the desk
door-front-a_phone_in_this_browser = A phone, in this browser
door-front-you_are_the_same_keys = You are { $name }, { $role }. The same keys and the same words as on the floor; cut the signal if you like.
door-front-the_run_of_is_in = The run of { $still } is in your hand
door-front-what_you_log_waits_on = What you log waits on its slate
door-front-it_can_scan_the_labels = It can scan the labels below
door-front-the_signal_is_cut_for = The signal is cut for the phone in this browser until { $clock }.
door-front-open_a_phone_here = Open a phone here
door-front-your_own_phone = Your own phone
door-front-hold_its_camera_to_this = Hold its camera to this square, on the same wireless network. It learns to trust this computer, then opens as { $name }, { $role }. No store, no account.
door-front-or_type = or type{ $break_ }{ $bold }
door-front-afterwards_take_the_certificate_of = Afterwards take the certificate off the phone again; it is the demo's own.
door-front-phones_work_without_signal_only = Phones work without signal only where they trust the server, so this door opens over TLS. Stop the demo and start it again:
door-front-then_a_square_stands_here = Then a square stands here to hold a phone to, and it opens as { $name }, { $role }.
door-front-more_of_them_large = More of them, large
door-front-scan_them_with_the_phones = Scan them with the phone's own page, under Scan. No camera? Type the mark there: its last character checks the others, so a wrong one is caught.
door-front-five_things_to_try = Five things to try
door-front-min = { $minutes } min
door-front-everything_here_is_kept_on = Everything here is kept on this computer, and whoever reaches this page may come in. It is no place for figures of a real house: begin a book of your own with { $code }.
door-front-the_demo_cellarslate = The demo · Cellarslate
door-front-stops_wait = { $stops ->
    [one] { $stops } stop waits
   *[other] { $stops } stops wait
  }
door-front-more_are_asked = { $asked ->
    [one] { $asked } more is asked
   *[other] { $asked } more are asked
  }
door-front-put_the_signal_back = Put the signal back
door-front-cut_its_signal = Cut its signal

## door-join

door-join-this_phone_joins = This phone joins { $name }
door-join-you_are_the_phone_is = You are { $name }, { $role }. The phone is let in, fetches what stands in each vessel, and works without signal from then on.
door-join-near_an_open_spirit_safe = Near an open spirit safe a phone is a source of ignition, unless it is rated for that place. The demo can be tried anywhere else.
door-join-this_phone_joins_the_demo = This phone joins the demo · Cellarslate

## door-labels

door-labels-on_the_phone_open_scan = On the phone open Scan and hold it a hand's breadth from one of them. Its vessel opens, with signal and without.
door-labels-labels_of_the_demo_cellarslate = Labels of the demo · Cellarslate

## door-phone

door-phone-takes_the_phone = { $name } takes the phone
door-phone-it_is_let_in_and = It is let in, and fetches what stands in each vessel.
door-phone-the_slate_is_kept_by = The slate is kept by script, and this browser runs none. The desk works without it.
door-phone-a_phone_is_let_in = A phone is let in · Cellarslate
door-phone-keeps_pages = It keeps its pages, so that it needs no signal.
door-phone-not_let_in = It was not let in. { $why }

## group-people

group-people-who_may_sign_in_here = Who may sign in here. People of the sites are not copied: they sign in at their own.
group-people-an_invitation_shown_this_once = An invitation, shown this once
group-people-good_once_within_days_whoever = Good once, within { $days } days. Whoever opens it sets the password; hand it over yourself.
group-people-no_longer_here = no longer here
group-people-no_password_yet = no password yet
group-people-add_or_change_somebody = Add or change somebody
group-people-look = look
group-people-let_sites_in_and_decide = let sites in and decide
group-people-no_longer_here2 = No longer here
group-people-make_an_invitation_to_set = Make an invitation to set a password
group-people-save = Save
group-people-lets_sites_in_decides = lets sites in, decides
group-people-short_code = Short code
group-people-looks = looks

## group-period

group-period-of_sites_have_closed_it = { $closed } of { $count } sites have closed it. The sum is of what is now known; what went from site to site is neither gain nor loss of the group.
group-period-sum = Sum
group-period-between_sites = Between sites
group-period-sent_l = Sent, L
group-period-declared_there_l = Declared there, L
group-period-difference = Difference
group-period-pure_alcohol_at_20_c = Pure alcohol at 20 °C. What was found short at the receiving site stands in its own account, as lost in transit.
group-period-more_has_come_to_light = more has come to light since, and is in the figures below
group-period-part_closed = Part closed.
group-period-this_site_has_nothing_in = This site has nothing in it.
group-period-all_sites = , all sites
group-period-in_bulk = in bulk
group-period-bottles = bottles, { $goods }
group-period-sent_to_sites_of_the = sent to sites of the group
group-period-received_from_sites_of_the = received from sites of the group
group-period-left_a_site = left a site
group-period-received_at_a_site = received at a site
group-period-declared_above_what_was_sent = declared above what was sent
group-period-declared_below_what_was_sent = declared below what was sent
group-period-on_the_way_between_sites = On the way between sites

## group-periods

group-periods-what_all_sites_had_on = What all sites had on hand at the end of each quarter and month, as now known, in litres of pure alcohol at 20 °C. Each site's months go by its own clock.
group-periods-closed_at = Closed at
group-periods-all_sites = All sites
group-periods-on_the_way = On the way
group-periods-of = { $closed } of { $count }

## group-sites

group-sites-let_a_site_in = Let a site in
group-sites-on_the_sites_computer_once = On the site's computer, once, within a day:
group-sites-name_of_the_site = Name of the site
group-sites-make_a_code_for_a = Make a code for a new site
group-sites-entries_here = Entries here
group-sites-of = of { $head_no }
group-sites-last_7_days = Last 7 days
group-sites-stock_and_trace = Stock and trace
group-sites-stopped = stopped
group-sites-up_to_date = up to date
group-sites-to_number = to number { $folded_no }
group-sites-chain = Chain
group-sites-broken = broken
group-sites-whole_to = whole to { $checked_no }, { $when }
group-sites-not_walked_yet = not walked yet
group-sites-its_computer_is_lost_or = Its computer is lost, or new
group-sites-shut_it_out_then_make = Shut it out, then make a new code. What it handed in stays.
group-sites-shut_out = Shut { $name } out
group-sites-which_book_counts = { $name }: which book counts?
group-sites-from_number_on_the_sites = From number { $fork_no } on, the site's book is no longer the one handed in before: it was restored from an older backup, or copied. Both are kept. What counts here is the first, to number { $cursor }; the other goes to { $cursor2 }.
group-sites-of_the_first_are_not = of the first are not in the other.
group-sites-every_entry_of_the_first = Every entry of the first is in the other too.
group-sites-ask_the_site_before_you = Ask the site before you choose.
group-sites-the_sites_present_book_counts = The site's present book counts
group-sites-kept_aside = { $aside } kept aside.
group-sites-papers_that_look_alike = Papers that look alike
group-sites-a_receipt_has_the_number = A receipt has the number of another site's removal, but neither names the other site, or bottles are of another batch. They are not joined. If they are one, amend the entry so that it names the site, or the batch.
group-sites-received_at = Received at
group-sites-from_batch_as_typed = From, batch, as typed
group-sites-same_number_sent_by = Same number sent by
group-sites-sites = Sites
group-sites-chain_broken = chain broken
group-sites-fold_stopped = fold stopped
group-sites-two_books = two books
group-sites-to_come = to come
group-sites-entries = entries

## group-trace

group-trace-in_bottles = in bottles
group-trace-pure_alcohol = { $bold } pure alcohol { $what }
group-trace-site_cases_lot_mark = Site, cases, lot mark
group-trace-bottles_received_from_another_site = Bottles received from another site stand there again: they are among those of the site that filled them.
group-trace-to_whom = To whom
group-trace-site_what = Site, what
group-trace-and_more = and { $more } more
group-trace-sites_are_joined_by_the = Sites are joined by the number of a removal's paper, where the receipt names it and one side names the other; bottles by their batch or lot mark too. What is on the way stands between them.
group-trace-trace_of = Trace of { $name }
group-trace-from_to = from { $sender } to { $receiver }
group-trace-declared = declared { $differs }
group-trace-document = document { $document }

## group-trace_search

group-trace_search-a_trace_goes_both_ways = A trace goes both ways and over the border: from a bottle back to the fruit at whichever site, and from a load of fruit on to every bottle.
group-trace_search-no_site_has_anything_by = No site has anything by that name. Try a mark, a batch, the number of a case, or part of a grower's name.

## desk-weight

desk-weight-stop = stop
desk-weight-ask = ask
desk-weight-note = note
desk-weight-entered = entered
desk-weight-waiting = waiting

## desk-sort

desk-sort-fermenter = fermenter
desk-sort-still = still
desk-sort-receiver = receiver
desk-sort-tank = tank
desk-sort-cask = cask
desk-sort-can = can
desk-sort-place = place

## desk-forms

desk-forms-it_stands = It stands
desk-forms-strike = Strike
desk-forms-the_site = the site
desk-forms-a_sort_of_vessel = a sort of vessel
desk-forms-a_material = a material
desk-forms-one_vessel = one vessel
desk-forms-a_product = a product
desk-forms-production_storage_processing_us = production, storage, processing (US)
desk-forms-one_excise_warehouse = one excise warehouse
desk-forms-floor_log_and_look = floor: log and look
desk-forms-distiller_also_answer_and_amend = distiller: also answer and amend
desk-forms-office_all = office: all
desk-forms-code = Code
desk-forms-what_it_is = What it is
desk-forms-capacity_l = Capacity [L]
desk-forms-working_level_l = Working level [L]
desk-forms-tare_kg = Tare [kg]
desk-forms-wood = Wood
desk-forms-toast_or_char = Toast or char
desk-forms-stands_inside_a_fire_zone = Stands inside a fire zone
desk-forms-label_goes_on_a_curve = Label goes on a curve (bare mark)
desk-forms-note = Note
desk-forms-out_of_use = Out of use
desk-forms-for = For
desk-forms-which = Which
desk-forms-kind_and_field = Kind and field
desk-forms-usual_from = Usual from
desk-forms-usual_to = Usual to
desk-forms-possible_from = Possible from
desk-forms-possible_to = Possible to
desk-forms-limit = Limit
desk-forms-figure = Figure
desk-forms-short_code = Short code
desk-forms-trade_roles_the_usual_one = Trade roles, the usual one first
desk-forms-floor_code_4_to_8 = Floor code (4 to 8 digits; empty keeps the old one)
desk-forms-has_left_the_house = Has left the house
desk-forms-the_password_until_now = The password until now
desk-forms-a_new_one = A new one
desk-forms-the_same_again = The same again
desk-forms-its_name = Its name
desk-forms-folder_on_the_server_on = Folder on the server, on another disk
desk-forms-hours_between_two = Hours between two
desk-forms-how_many_are_kept = How many are kept
desk-forms-backups_of_this_computer_are = Backups of this computer are made another way, daily
desk-forms-they_are_a = They are a
desk-forms-address = Address
desk-forms-number_by_which_papers_call = Number by which papers call them
desk-forms-name_of_the_phone = Name of the phone
desk-forms-the_house = The house
desk-forms-units = Units
desk-forms-decimal_mark = Decimal mark
desk-forms-accounts = Accounts
desk-forms-height_above_the_sea_m = Height above the sea [m]
desk-forms-language_where_nobody_has_chosen = Language where nobody has chosen one
desk-forms-time_zone = Time zone
desk-forms-what_goes_into_or_out = What goes into or out of the accounts wants the PIN when it is logged
desk-forms-a_season_begins_in = A season begins in
desk-forms-scale_from = Scale from
desk-forms-scale_to = Scale to
desk-forms-unit = Unit
desk-forms-class = Class
desk-forms-interval_of_the_scale = Interval of the scale
desk-forms-corrections_of_its_certificate_wha = Corrections of its certificate, what it shows: what to add, such as 0: -0.1; 20: 0; 40: +0.2
desk-forms-check_due_on = Check due on
desk-forms-first_free_label_on_the = First free label on the sheet
desk-forms-own_width_mm = Own width [mm]
desk-forms-own_height_mm = Own height [mm]
desk-forms-own_clear_mm = Clear at each edge [mm]
desk-forms-label_file = As
desk-forms-case_from = First case
desk-forms-case_to = Last case
desk-forms-flat_labels_carry_the_address = Flat labels carry the address, so that a phone's own camera opens the vessel
desk-forms-also_a_stand_off_label = Also a stand-off label for vessels inside a fire zone
desk-forms-there_is_no_such_time = There is no such time zone. Type one such as Europe/Vienna.
desk-forms-pick_it_stands_or_strike = Pick: it stands, or strike.
desk-forms-say_why_in_a_few = Say why, in a few words.
desk-forms-type_its_code_such_as = Type its code, such as F3 or C031.
desk-forms-type_a_short_code = Type a short code.
desk-forms-type_the_name = Type the name.
desk-forms-to_whole = { $low } to { $high }, whole.
desk-forms-type_your_password = Type your password.
desk-forms-type_a_password = Type a password.
desk-forms-at_least_characters_a_few = At least { $what } characters; a few words will do.
desk-forms-the_two_passwords_differ_type = The two passwords differ. Type them again.
desk-forms-type_a_name = Type a name.
desk-forms-type_hours = Type hours.
desk-forms-type_a_number = Type a number.
desk-forms-name_it_such_as_ph = Name it, such as PH-3.
desk-forms-type_the_name_of_the = Type the name of the house.
desk-forms-type_its_number_such_as = Type its number, such as TH-2.
desk-forms-type_what_it_is_such = Type what it is, such as thermometer.
desk-forms-grower_or_supplier = grower or supplier
desk-forms-point_14_6 = point: 14.6
desk-forms-comma_14_6 = comma: 14,6
desk-forms-as_the_law_prescribes = as the law prescribes
desk-forms-in_use = in use
desk-forms-out_of_use2 = out of use
desk-forms-n1_to_7_letters_or = 1 to 7 letters or digits.
desk-forms-n1_to_8_letters_or = 1 to 8 letters or digits.
desk-forms-n4_to_8_digits = 4 to 8 digits.
desk-forms-letters_digits_hyphen = Letters, digits, hyphen.
desk-forms-pick_the_day = Pick the day.

## access-forms

access-forms-your_short_code = Your short code
access-forms-password = Password
access-forms-your_password = Your password
access-forms-a_password_of_your_own = A password of your own
access-forms-the_same_again = The same again
access-forms-set_up_code = Set-up code
access-forms-the_house = The house
access-forms-units = Units
access-forms-your_name = Your name
access-forms-type_your_short_code = Type your short code.
access-forms-type_your_password = Type your password.
access-forms-type_a_password = Type a password.
access-forms-at_least_characters_a_few = At least { $what } characters; a few words will do.
access-forms-the_two_passwords_differ_type = The two passwords differ. Type them again.
access-forms-type_the_set_up_code = Type the set-up code that the server printed.
access-forms-type_the_name_of_the = Type the name of the house.
access-forms-type_a_short_code_such = Type a short code, such as your initials.
access-forms-type_your_name = Type your name.
access-forms-n1_to_8_letters_or = 1 to 8 letters or digits.

## desk-vat_form

desk-vat_form-as_few_vessels_as_can = as few vessels as can be
desk-vat_form-the_oldest_stays = the oldest stays
desk-vat_form-the_oldest_goes_first = the oldest goes first
desk-vat_form-strength_empty_as_it_comes = Strength (empty: as it comes)
desk-vat_form-unit_of_strength = Unit of strength
desk-vat_form-volume_l_empty_all_they = Volume [L] (empty: all they give)
desk-vat_form-volume_may_be_off_by = Volume may be off by [%]
desk-vat_form-most_of_any_one_vessel = Most of any one vessel [%]
desk-vat_form-most_of_any_one_lot = Most of any one lot [%]
desk-vat_form-youngest_in_wood_years = Youngest in wood [years]
desk-vat_form-the_wood_of_a_200 = The wood of a 200 L cask keeps [kg]
desk-vat_form-aim = Aim
desk-vat_form-casks_may_be_drawn_in = Casks may be drawn in part
desk-vat_form-name_of_the_vat = Name of the vat
desk-vat_form-wood_keeps_of = wood keeps { $kept } of { $what }
desk-vat_form-strength_as_it_comes = strength as it comes
desk-vat_form-within = { $volume } within { $figure } %
desk-vat_form-all_they_give = all they give
desk-vat_form-of_one_vessel = of one vessel
desk-vat_form-of_one_lot = of one lot
desk-vat_form-youngest_years_in_wood = youngest { $figure } years in wood
desk-vat_form-between_and_please = Between { $low } and { $high }, please.
desk-vat_form-at_most = at most { $figure } % { $words }
desk-vat_form-vol = % vol

## desk-cellar

desk-cellar-by_the_fall_of_gravity = by the fall of gravity
desk-cellar-as_the_law_of_1880 = as the law of 1880 presumed
desk-cellar-by_the_wash_as_measured = by the wash as measured
desk-cellar-by_low_wines = by low wines
desk-cellar-by_spirits_and_feints = by spirits and feints
desk-cellar-a_leak = a leak?
desk-cellar-a_slip_of_the_glass = a slip of the glass?
desk-cellar-another_cask = another cask?
desk-cellar-to_regauge = to regauge
desk-cellar-to_sample = to sample
desk-cellar-to_taste = to taste
desk-cellar-loss_a_year = loss a year
desk-cellar-ferments = Ferments
desk-cellar-places = Places
desk-cellar-ready = Ready
desk-cellar-house_rules = House rules
desk-cellar-mash_temperature = Mash temperature
desk-cellar-pure_alcohol = Pure alcohol
desk-cellar-strength = Strength
desk-cellar-the_book_has_no_such = The book has no such ferment. Look for it in the list of ferments.
desk-cellar-the_book_knows_no_cask = The book knows no cask { $mark }. Look for it in the list of casks.
desk-cellar-scores = Scores
desk-cellar-of_10 = of 10
desk-cellar-that_is_no_day_pick = That is no day. Pick one, such as 2027-05-01.
desk-cellar-gained = gained
desk-cellar-by_place = place
desk-cellar-by_age = age
desk-cellar-strength_in_words = strength
desk-cellar-gravity = gravity
desk-cellar-expected = expected
desk-cellar-score = score

## desk-trust

desk-trust-the_certificate_ends_in_days = The certificate ends in { $left_days } days and was not renewed. Look at whatever renews it.
desk-trust-the_certificate_ended_on_phones = The certificate ended on { $ends }. Phones keep what they log, and hand nothing in until it is new.

## paper-batch

paper-batch-batch_record = Batch record: { $ferment }
paper-batch-gravity_and_temperature = Gravity and temperature
paper-batch-batch_record2 = Batch record: { $batch }
paper-batch-bottled = { $batch }, bottled
paper-batch-tank_gauges = Tank gauges
paper-batch-checks_of_the_line = Checks of the line
paper-batch-its_entries = Its entries
paper-batch-made_by = Made by
paper-batch-looked_over_by = Looked over by
paper-batch-not_read_yet = Not read yet.
paper-batch-counts_of_its_alcohol = Counts of its alcohol
paper-batch-at = At
paper-batch-tank = Tank
paper-batch-true = True { $unit }
paper-batch-no_bottling_tank_gauge_yet = No bottling tank gauge yet.
paper-batch-fill = Fill, %
paper-batch-least = Least
paper-batch-most = Most
paper-batch-labels_right = Labels right
paper-batch-done = Done
paper-batch-odd_case = Odd case
paper-batch-broken = Broken
paper-batch-library = Library
paper-batch-good = Good
paper-batch-not_closed_yet = Not closed yet.
paper-batch-nothing_has_left_the_tank = Nothing has left the tank yet.
paper-batch-no = No.
paper-batch-fermenter = Fermenter
paper-batch-stands_at = Stands at
paper-batch-emptied = Emptied
paper-batch-first_gravity = First gravity
paper-batch-last_gravity = Last gravity
paper-batch-closed_at = Closed at
paper-batch-wash = Wash
paper-batch-wash_strength = Wash strength
paper-batch-pure_alcohol_in_the_wash = Pure alcohol in the wash
paper-batch-count = Count
paper-batch-of_wash = { $unit } of wash
paper-batch-tanks = Tanks
paper-batch-bottle = Bottle
paper-batch-strength_on_the_label = Strength on the label
paper-batch-good_bottles = Good bottles
paper-batch-kept_in_the_library = Kept in the library
paper-batch-pure_alcohol_in_bottles = Pure alcohol in bottles
paper-batch-in = { $what } in { $mark }
paper-batch-to = { $first } to { $last }
paper-batch-at2 = { $unit } at { $temp }

## paper-cautions

paper-cautions-the_sites_own_assessment_local = The site's own assessment, local code and licensed people come first. Nothing on this paper says that a place or a spirit is safe.
paper-cautions-hot_and_under_pressure_if = Hot, and under pressure if a path blocks. Cold water into a hot closed still can crush it. Keep vents free; never leave a running still.
paper-cautions-alcohol_vapour_burns_no_flame = Alcohol vapour burns. No flame, no spark, no ordinary phone inside the marked line; read at the safe, step back, then write.
paper-cautions-a_hydrometer_cannot_see_methanol = A hydrometer cannot see methanol. Heads hold part of it, hearts and tails too; only a laboratory knows. Do not taste the first runnings.
paper-cautions-few_samples_small_and_diluted = Few samples, small and diluted, and spit. Water and plain bread between. Nobody drives, or works at a still or a machine, after tasting.
paper-cautions-heads_are_never_tasted_nose = Heads are never tasted, nose at most. A tasting never clears what is in a spirit: methanol, hydrogen cyanide and ethyl carbamate have no taste that tells.
paper-cautions-carbon_dioxide_has_no_smell = Carbon dioxide has no smell and lies low. At 5000 ppm leave, ventilate, tell the supervisor; at 30 000 ppm out at once. A candle is no test.
paper-cautions-nobody_enters_a_tank_or = Nobody enters a tank or vat alone or without a permit, a gas test and someone outside.
paper-cautions-a_full_cask_of_225 = A full cask of 225 L (59 gal) weighs 220 to 260 kg (485 to 573 lb). Trolley, hoist or chock; never the back.
paper-cautions-say_where_you_are_and = Say where you are and when you are back.

## paper-count

paper-count-count_sheet = Count sheet
paper-count-begun_date_and_time = Begun, date and time
paper-count-ended_date_and_time = Ended, date and time
paper-count-instruments_used = Instruments used
paper-count-what_it_is = What it is
paper-count-here = Here
paper-count-gross_or_dip = Gross, { $kg }, or dip, { $what }
paper-count-glass = Glass
paper-count-spirit = Spirit { $unit }
paper-count-stands_there_and_is_not = Stands there and is not on this sheet
paper-count-counted_by = Counted by
paper-count-second_person = Second person
paper-count-other_places = Other places

## paper-imprint

paper-imprint-book_up_to_no_chain = book up to no. { $number }, chain { $digest }

## paper-pages

paper-pages-nothing_has_a_place_there = Nothing has a place there. Look at the places in the cellar.
paper-pages-the_book_has_no_such = The book has no such entry to print.
paper-pages-the_book_has_no_such2 = The book has no such run. Look for it in the list of runs.
paper-pages-the_book_has_no_such3 = The book has no such ferment. Look for it in the list of ferments.
paper-pages-the_book_has_no_batch = The book has no batch of that name in a tank. Look for it in the list of bottlings.

## paper-passport

paper-passport-laboratory_certificate_and_its_num = Laboratory certificate, and its number
paper-passport-none_in_the_book_methanol = none in the book: methanol and other figures of composition are not measured by it
paper-passport-lot_passport = Lot passport: { $name }
paper-passport-made_of = Made of
paper-passport-papers_and_certificates = Papers and certificates
paper-passport-made_out_by = Made out by
paper-passport-approved_by = Approved by
paper-passport-share = Share
paper-passport-by_the_book = By the book
paper-passport-paper_no = Paper no.
paper-passport-lot_mark = Lot mark
paper-passport-good_bottles = Good bottles
paper-passport-strength = Strength
paper-passport-pure_alcohol = Pure alcohol
paper-passport-day = Day
paper-passport-came_from = Came from
paper-passport-cases_and_lot_mark = Cases and lot mark
paper-passport-to_or_from = To or from
paper-passport-of_l = { $good } of { $size } L
paper-passport-to = { $first } to { $last }

## paper-press

paper-press-name_in_capitals = Name in capitals
paper-press-signature = Signature
paper-press-date_and_time = Date and time
paper-press-printed_by = Printed { $printed } by { $printable } · { $book }
paper-press-still_open = Still open
paper-press-open_questions = Open questions
paper-press-these_are_not_answered_what = These are not answered. What is above may change with the answers.
paper-press-cautions = Cautions
paper-press-page_of = page { $number } of { $of }
paper-press-in_the_book = In the book

## paper-record

paper-record-as_read = As read
paper-record-as_computed = As computed
paper-record-witness = Witness
paper-record-gauge_record = Gauge record: { $title }
paper-record-record = Record: { $title }
paper-record-reading = Reading
paper-record-instrument = Instrument
paper-record-corrected = Corrected
paper-record-figure = Figure
paper-record-value = Value
paper-record-nothing_is_computed_from_this = Nothing is computed from this.
paper-record-what_it_moved = What it moved
paper-record-read_again_by_hand = Read again by hand
paper-record-gauged_by = Gauged by
paper-record-done_by = Done by
paper-record-stands_at = Stands at
paper-record-read_by = Read by
paper-record-role = Role
paper-record-gross_or_dip = Gross, { $kg }, or dip, { $what }
paper-record-glass = Glass
paper-record-spirit = Spirit { $unit }
paper-record-at = At
paper-record-first = First
paper-record-second = Second

## paper-run

paper-run-run_sheet = Run sheet { $run }
paper-run-minute_by_minute = Minute by minute
paper-run-event = Event
paper-run-glass = Glass
paper-run-spirit = Spirit { $unit }
paper-run-true = True { $unit }
paper-run-vapour = Vapour { $unit }
paper-run-dip = Dip, { $what }
paper-run-into_why = Into, why
paper-run-what_the_receivers_hold = What the receivers hold
paper-run-still_hand = Still hand
paper-run-distiller = Distiller
paper-run-logged = , logged { $clock }
paper-run-balance = Balance, { $what }
paper-run-not_accounted_for = not accounted for
paper-run-more_than_went_in = more than went in
paper-run-true_strength = True strength, { $unit }
paper-run-fraction = Fraction
paper-run-none_gauged_yet = None gauged yet.
paper-run-heads = heads { $plan }
paper-run-hearts_to = hearts to { $plan }
paper-run-tails_to = tails to { $plan }
paper-run-of_the_charge = { $rest }, { $abs } % of the charge
paper-run-part = Part
paper-run-min = { $last } min
paper-run-charged_from = Charged from
paper-run-begun = Begun
paper-run-charge = Charge
paper-run-of_it_feints = of it feints
paper-run-pure_alcohol_charged = Pure alcohol charged
paper-run-plan = Plan
paper-run-not_read_taken_as = , not read: taken as { $balance }
paper-run-on = { $what } on { $still }
paper-run-at = { $unit } at { $temp }

## paper-serving

paper-serving-two_of_the_three_are = two of the three are the same: which is the odd one?
paper-serving-the_first_stands_open_as = the first stands open as R: which of the two with a code is the same?
paper-serving-which_of_the_two_has = which of the two has more of what is asked?
paper-serving-put_all_in_order_no = put all in order, no two alike
paper-serving-serving_sheet = Serving sheet
paper-serving-letter = Letter
paper-serving-sample = Sample
paper-serving-of_it = Of it
paper-serving-strength_as_found = Strength as found
paper-serving-water_added = Water added
paper-serving-glasses_from_left_to_right = Glasses, from left to right
paper-serving-poured_by = Poured by
paper-serving-taster = Taster
paper-serving-glass_sample = Glass = sample
paper-serving-poured = Poured
paper-serving-method = Method
paper-serving-served_at = Served at
paper-serving-sets_of_glasses = Sets of glasses
paper-serving-for_whoever_pours = For whoever pours. No taster sees this sheet, and nobody who has seen it tastes or speaks to a taster.

## paper-period

paper-period-heads_of_the_book_of = Heads of the book of { $signed }, signed with the key { $shorten_digits }.
paper-period-printed = { $name } · printed { $printed } · { $house }
paper-period-the_rest_is_open = { $signed }; the rest is open.
paper-period-pure_alcohol = { $house }: pure alcohol, { $name }
paper-period-litres_of_pure_alcohol_at = Litres of pure alcohol at 20 °C to 0.01; proof gallons to 0.1. { $what } { $what2 }
paper-period-page = page { $page }
paper-period-as_now_known_with_what = As now known, with what came to light since
paper-period-open_when_it_was_closed = Open when it was closed, and read by who closed it
paper-period-a_book_rewritten_since_has = { $words }A book rewritten since has others: cellarslate verify --heads.
paper-period-date = Date
paper-period-name_and_title = Name and title
paper-period-signature = Signature

## desk-account

desk-account-lines_add_up_to_their = Lines add up to their totals as shown: each figure is the nearest, or where that would not add up the next one to it (largest remainder). The book keeps whole microlitres. A quarter is rounded by itself: a line of it may stand beside the sum of its months as shown, by at most three in the last place.
desk-account-is_twice_the_standard_uncertainty = ± is twice the standard uncertainty (k = 2), by the class of the instruments of all entries of a line; what one instrument is off counts in each of them the same way. A line without ± is more than its own readings say: a rest, a reckoning, bottles, or moves between two gauges.
desk-account-is_twice_the_standard_uncertainty2 = ± is twice the standard uncertainty (k = 2), by the instruments of the last measure of each vessel and of all that was moved into it and out of it since.
desk-account-what_nobody_measured_mash_a = { $what } What nobody measured, mash, a run under way and bottles are not in it.
desk-account-production = Production
desk-account-storage = Storage
desk-account-processing = Processing
desk-account-excise_warehouse = Excise warehouse
desk-account-so_that_the_lines_add = So that the lines add up, these are shown off their nearest: { $said }.
desk-account-adjustment_of = Adjustment of { $of }: { $more } { $party_words }
desk-account-on_hand_at_the_start = On hand at the start
desk-account-total_in = Total in
desk-account-total_out = Total out
desk-account-on_hand_at_the_end = On hand at the end

## desk-sheets

desk-sheets-this_sheet_was_not_kept = This sheet was not kept so long. Take it again.
desk-sheets-the_whole_sheet_was_taken = The whole sheet was taken back.
desk-sheets-taken_back_every_line_stays = Taken back. Every line stays legible, struck through.
desk-sheets-nothing_in_this_sheet_is = Nothing in this sheet is new: the book has it all. Nothing was changed.
desk-sheets-there_is_no_such_sheet = There is no such sheet. Look for it in the list.
desk-sheets-in_use_stay_the_book = In use stay { $join }: the book has more of them than this sheet.
desk-sheets-there_is_no_such_template = There is no such template. Look for it in the list.
desk-sheets-openings = { $many ->
    [one] { $many } opening of a { $what }
   *[other] { $many } openings of { $what }
  }

## desk-tasting_form

desk-tasting_form-holds_heads_heads_are_never = holds heads. Heads are never tasted. Take another sample.
desk-tasting_form-name_of_the_tasting = Name of the tasting
desk-tasting_form-question_written_down_before_pouri = Question, written down before pouring
desk-tasting_form-method = Method
desk-tasting_form-risk_of_finding_a_difference = Risk of finding a difference that is none
desk-tasting_form-served_at_all_glasses_alike = Served at, all glasses alike
desk-tasting_form-unit_of_strength = Unit of strength
desk-tasting_form-poured_by = Poured by
desk-tasting_form-tasters = Tasters
desk-tasting_form-sets_for_each_taster = Sets for each taster
desk-tasting_form-sample_a = Sample A
desk-tasting_form-of_it = of it
desk-tasting_form-sample_b = Sample B
desk-tasting_form-sample_c = Sample C
desk-tasting_form-sample_d = Sample D
desk-tasting_form-sample_e = Sample E
desk-tasting_form-give_it_a_short_name = Give it a short name, such as T-26-03.
desk-tasting_form-write_the_question_first = Write the question first.
desk-tasting_form-type_the_strength_in_the = Type the strength in the glass.
desk-tasting_form-how_many_sets = How many sets?
desk-tasting_form-two_samples_are_the_same = Two samples are the same. Say in words what sets them apart, or pick another.
desk-tasting_form-pick_at_least_one_taster = Pick at least one taster.
desk-tasting_form-who_pours_knows_the_codes = Who pours knows the codes, and does not taste. Let somebody else pour, or leave it open.
desk-tasting_form-a_ranking_wants_three_to = A ranking wants three to five samples.
desk-tasting_form-this_method_compares_two_samples = This method compares two samples: pick A and B, and no more.
desk-tasting_form-that_is_more_than_sets = That is more than { $what } sets of glasses. Fewer tasters, or fewer sets.
desk-tasting_form-letters_digits_and_only_please = Letters, digits and - only, please.

## door-page

door-page-visitor = Visitor { $let_in }
door-page-there_is_no_such_thing = There is no such thing to try. Go back and pick from the list.
door-page-the_demo_has_none_left = The demo has none left. Stop it and start it again with --fresh.
door-page-this_person_has_left_the = This person has left the demo's house. Stop it and start it again with --fresh.
door-page-there_is_nobody_of_that = There is nobody of that code in the demo.
door-page-the_demo_has_let_in = The demo has let in all the phones it takes. Stop it and start it again with --fresh.

## door-trial

door-trial-cask_list_csv = cask list.csv
door-trial-log_without_signal = Log without signal
door-trial-it_says_at_once_where = It says at once where the entry is. Put the signal back here, and it hands itself in.
door-trial-keep_a_still_run = Keep a still run
door-trial-s1_is_in_its_hearts = S1 is in its hearts. Type what the glass and the thermometer say, then make the cut.
door-trial-the_true_strength_stands_there = The true strength stands there at once. The band closes in on the minute of the next cut.
door-trial-answer_a_question = Answer a question
door-trial-a_cask_gained_pure_alcohol = A cask gained pure alcohol, says a line of May. No cask can.
door-trial-the_likely_figure_is_offered = The likely figure is offered, and what would change. Both figures stay legible.
door-trial-trace_a_cask_to_its = Trace a cask to its fruit
door-trial-c_047_was_filled_a = C-047 was filled a year ago: back through tank and run to the farm and its loads of fruit.
door-trial-the_picture_says_how_much = The picture says how much of each is in it, and what was lost on the way.
door-trial-take_a_sheet_in = Take a sheet in
door-trial-six_casks_in_somebodys_old = Six casks in somebody's old spreadsheet. Two of its cells cannot be right.
door-trial-which_cells_it_stops_at = Which cells it stops at, and what it offers. Nothing is written before you say so.

## desk-upkeep

desk-upkeep-opened_and_verified_entries = { $near }, opened and verified: { $status } entries
desk-upkeep-every_page_and_every_digest = { $near }, every page and every digest
desk-upkeep-backup_old = Backup { $age } old
desk-upkeep-read_through = Read through
desk-upkeep-less_than_gb_a_full = Less than { $least } GB. A full disk keeps hand-ins waiting on the phones.
desk-upkeep-disk_free = Disk { $said } free
desk-upkeep-where_the_book_lies = where the book lies
desk-upkeep-not_by_itself = not by itself
desk-upkeep-backup = Backup
desk-upkeep-this_server_makes_none_by = This server makes none by itself.
desk-upkeep-the_server_reads_the_whole = The server reads the whole book once a day.
desk-upkeep-does_not_hold = does not hold
desk-upkeep-nearly_full = nearly full
desk-upkeep-none_made_yet = None made yet.
desk-upkeep-failed = failed
desk-upkeep-old = old
desk-upkeep-made = made
desk-upkeep-late = late
desk-upkeep-holds = holds
desk-upkeep-room = room

## desk-ends

desk-ends-since = since { $day }

## desk-figures

desk-figures-temperature = Temperature
desk-figures-true_strength = True strength
desk-figures-pure_alcohol = Pure alcohol
desk-figures-fill = Fill
desk-figures-strength_in_the_bottles = Strength in the bottles
desk-figures-of_the_label = % of the label

## desk-clock

desk-clock-days = { $many } days
desk-clock-months = { $many } months
desk-clock-years = { $many } years

## desk-count

desk-count-ferment = { $n ->
    [one] { $many } ferment
   *[other] { $many } ferments
  }
desk-count-person = { $n ->
    [one] { $many } person
   *[other] { $many } people
  }
desk-count-entry = { $n ->
    [one] { $many } entry
   *[other] { $many } entries
  }
desk-count-vessel = { $n ->
    [one] { $many } vessel
   *[other] { $many } vessels
  }

## desk-day

desk-day-read = { $n ->
    [one] { $many } ferment is to be read
   *[other] { $many } ferments are to be read
  }
desk-day-stuck = { $n ->
    [one] { $many } ferment is stuck
   *[other] { $many } ferments are stuck
  }
desk-day-bottling = { $n ->
    [one] { $many } bottling waits for its close
   *[other] { $many } bottlings wait for their close
  }
desk-day-regauge = { $n ->
    [one] { $many } cask is to be regauged
   *[other] { $many } casks are to be regauged
  }
desk-day-sample = { $n ->
    [one] { $many } cask is to be sampled
   *[other] { $many } casks are to be sampled
  }
desk-day-taste = { $n ->
    [one] { $many } cask is to be tasted
   *[other] { $many } casks are to be tasted
  }
desk-day-stands = { $n ->
    [one] { $many } tank stands long
   *[other] { $many } tanks stand long
  }
desk-day-failed = { $n ->
    [one] { $many } instrument failed its check
   *[other] { $many } instruments failed their checks
  }
desk-day-open_run = { $n ->
    [one] { $many } run has no end
   *[other] { $many } runs have no end
  }
desk-day-still = { $n ->
    [one] { $many } wash waits for a still
   *[other] { $many } washes wait for a still
  }
desk-day-owed = { $n ->
    [one] { $many } answer is owed
   *[other] { $many } answers are owed
  }
desk-day-nothing_owed = nothing is owed
desk-day-nothing_owed_next = Nothing is owed. { $next }
desk-day-run_ends = { $state ->
    [late] { $what ->
        [cut] { $still } was to cut at { $at }
       *[end] { $still } was to end at { $at }
      }
    [now] { $what ->
        [cut] { $still } cuts any minute
       *[end] { $still } ends any minute
      }
   *[coming] { $what ->
        [cut] { $still } cuts at { $at }
       *[end] { $still } ends at { $at }
      }
  }
desk-day-run_at_its_end = { $what ->
    [cut] { $still } is at its cut
   *[end] { $still } is at its end
  }
desk-day-still_heats = { $still } is heating
desk-day-still_runs = { $still } runs { $part }
desk-day-ended = { $n ->
    [one] { $which } has ended
   *[other] { $which } have ended
  }
desk-day-near_end = { $n ->
    [one] { $which } is near its end
   *[other] { $which } are near their end
  }
desk-day-one_stuck = { $name } is stuck
desk-day-one_stands = { $name } stands long
desk-day-one_read = { $name } is to be read
desk-day-one_silent = { $name } is silent
desk-day-silent = { $n ->
    [one] { $many } phone is silent
   *[other] { $many } phones are silent
  }
desk-day-nothing_due = Nothing is due today.
desk-day-to_read = { $name } to read
desk-day-round = the round of { $ferments }
desk-day-round_readings = readings
desk-day-round_regauge = regauge
desk-day-round_samples = samples
desk-day-round_tasting = tasting
desk-day-next = Next is { $what } at { $at }.

## desk-part

desk-part-heating = heating
desk-part-heads = heads
desk-part-hearts = hearts
desk-part-tails = tails
desk-part-low_wines = low wines
desk-part-feints = feints

## desk-due

desk-due-many_read = { $n ->
    [one] { $many } ferment to read
   *[other] { $many } ferments to read
  }
desk-due-many_close = { $n ->
    [one] { $many } ferment has ended
   *[other] { $many } ferments have ended
  }
desk-due-many_still = { $n ->
    [one] { $many } wash waits for a still
   *[other] { $many } washes wait for a still
  }
desk-due-many_regauge = { $n ->
    [one] { $many } cask to regauge
   *[other] { $many } casks to regauge
  }
desk-due-many_sample = { $n ->
    [one] { $many } cask to sample
   *[other] { $many } casks to sample
  }
desk-due-many_taste = { $n ->
    [one] { $many } cask to taste
   *[other] { $many } casks to taste
  }
desk-due-many_stands = { $n ->
    [one] { $many } tank stands
   *[other] { $many } tanks stand
  }
desk-due-many_bottling = { $n ->
    [one] { $many } bottling begun
   *[other] { $many } bottlings begun
  }
desk-due-many_failed = { $n ->
    [one] { $many } instrument failed its check
   *[other] { $many } instruments failed their checks
  }
desk-due-many_instrument = { $n ->
    [one] { $many } instrument to check
   *[other] { $many } instruments to check
  }
desk-due-many_open_run = { $n ->
    [one] { $many } run without an end
   *[other] { $many } runs without an end
  }
desk-due-many_stuck = { $n ->
    [one] { $many } ferment is stuck
   *[other] { $many } ferments are stuck
  }
desk-due-and_more = { $named } and { $more } more
desk-due-all_of_them = All of them
desk-due-look = Look
desk-due-late = { $time } late
desk-due-now = now
desk-due-begun = begun { $when }
desk-due-last = last { $when }
desk-due-never_yet = never yet
desk-due-last_entry = last entry { $when }
desk-due-months_open = { $first } to { $last } are not closed
desk-due-month_open = { $month } is over and not closed
desk-due-us_reports = its reports are due by the 15th of the next month
desk-due-one_read = { $name } to read
desk-due-one_close = { $name } has ended: close it
desk-due-one_stuck = { $name } does not move
desk-due-one_still = { $name } waits for a still
desk-due-one_regauge = { $name } to regauge
desk-due-one_sample = { $name } to sample
desk-due-one_taste = { $name } to taste
desk-due-one_stands = { $name } stands for { $time }
desk-due-one_bottling = { $name } was gauged for bottling { $time } ago
desk-due-one_open_run = { $name } { $what } has no end
desk-due-one_failed = { $name } failed its check
desk-due-one_instrument = { $name } to check
desk-due-one_instrument_late = { $name } was to be checked { $time } ago

## group-page

group-page-sites = Sites
group-page-shut_out_what_it_handed = Shut out. What it handed in stays. A new code lets the site in again.
group-page-taken_the_other_branch_stays = Taken. The other branch stays on record.
group-page-made_of = Made of
group-page-this_needs_the_role_ask = This needs the { $access } role. Ask someone in the office.

## group-files

group-files-no_site_has_anything_to = No site has anything to trace by that name. Look for it with the search on the trace page.

## paper-label

paper-label-stand_off_label_scan_here = STAND-OFF LABEL: scan here. Stay outside the line. The rules of the site come first.
paper-label-does_not_fit_a_label = { $mark } does not fit a label of { $wide } x { $high } mm in print 10 mm high. Choose a larger label, or a shorter code.
paper-label-choose_1_to_labels_to = Choose 1 to { $most } labels to print.
paper-label-this_page_has_labels_start = This page has { $many } labels. Start at 1 to { $many }.
paper-label-ruler = This line is 50 mm. If it is not, print again at 100 %.
paper-label-own_size_is = An own size is { $low } to { $high } mm wide and high, with 0 to { $clear } mm clear at each edge. Type width and height in millimetres.
paper-label-zpl_wants_a_roll = ZPL prints one label after the other. Choose a roll, a tag or an own size.
paper-case-lot = Lot { $lot }
paper-case-case = Case { $case }
paper-case-not_the_label_of_the_law = For store and trace. The label that the law asks for is another.
paper-case-does_not_fit = The label of a case does not fit { $wide } x { $high } mm. Choose a larger label.
paper-case-address_too_long = The address of the book is too long for a label. Set a shorter PUBLIC_HOST.

## desk-room

desk-room-today = Today
desk-room-queries = Questions
desk-room-entries = Entries
desk-room-vessels = Vessels
desk-room-cellar = Cellar
desk-room-runs = Runs
desk-room-blending = Blending
desk-room-trace = Trace
desk-room-periods = Periods
desk-room-labels = Labels
desk-room-settings = Settings

## desk-rule

desk-rule-age_years = { $figure } years in wood
desk-rule-strength_low = from { $figure }
desk-rule-strength_high = to { $figure }
desk-rule-score_low = score { $figure }
desk-rule-loss_high = loss at most { $figure } % a year

## access-passkey

access-passkey-not_here = No passkey can be used at this address. Type your password.
access-passkey-does_not_open = This passkey does not open. Try once more, or type your password.
access-passkey-none_used = No passkey was used. Try once more, or type your password.
access-passkey-none_made = No passkey was made. Try once more; a device that has one of yours already makes no second.

## access-steps

access-steps-another_phone_or_computer = Another phone or computer
access-steps-on_this = On this { $name }
access-steps-fetch_the = Fetch the { $fetch }
access-steps-done = Done
access-steps-back_one_step = Back one step
access-steps-or_the_computer_does_not = Or the computer does not answer this phone at port { $port }: its firewall, or another wireless network. This page cannot tell the two apart.
access-steps-compare_before_you_trust = Compare before you trust
access-steps-these_groups_must_be_the = These groups must be the ones that the office computer shows. If they differ, stop here and tell the office.
access-steps-the_whole_fingerprint_sha_256 = The whole fingerprint, SHA-256
access-steps-another_one = Another one?
access-steps-profile = profile
access-steps-certificate = certificate
access-steps-trusted = This phone trusts the house.
access-steps-not_trusted_yet = It does not trust the house yet.
access-steps-try_again = Try again
access-steps-counted = Step { $at } of { $many }

## access-plain

access-plain-trust_this_distillerys_computer = Trust this distillery's computer
access-plain-once_on_each_phone_after = Once on each phone. After that the floor log opens without a warning, and works with no signal.

## The pages of the phone before its script fills them in: they come ready, in one language.

floor-frame-to_the_work = To the work
floor-frame-back = Back
floor-frame-vessel = Vessel
floor-frame-waits_on_slate = on slate
floor-frame-floor = Floor
floor-frame-today = Today
floor-frame-scan = Scan
floor-frame-slate = Slate
floor-frame-more = More
floor-field-may_stay_empty = (may stay empty)
floor-field-unit_of = Unit of { $label }
floor-field-scan_for = Scan for { $label }
floor-field-not_logged_yet = Not logged yet.
floor-field-nothing_is_lost = Nothing is lost; put these right and log it again.
floor-away-title = The desk is away
floor-away-desk = Desk
floor-away-no_answer = no answer from the book
floor-away-words = The desk stands on the book's computer, and that does not answer. What this phone has logged is safe on its slate.
floor-away-ask_again = Ask again
floor-away-work_without = Work without signal
floor-enrol-title = Let this phone in
floor-enrol-office_gives = The office gives each phone a code, once. With it the phone hands in to the book and keeps the vessels' cards.
floor-enrol-code = Code from the office
floor-enrol-name = What this phone is called
floor-enrol-name_help = As written on its back. Left empty, it is called what the office called it.
floor-enrol-let_it_in = Let it in
floor-job-title = Job
floor-job-no_script = This page works out its figures on the phone and needs script. Every entry can also be logged from its vessel's card.
floor-log-needed = needed
floor-log-remark = remark
floor-log-read_now = Read now
floor-log-left_empty = Left empty, it was read now.
floor-log-log_it = Log it
floor-run-title = Run
floor-run-sheet = Run sheet
floor-vessel-to_log = What to log
floor-run-plain_reading = Reading
floor-run-cut_or_event = Cut or run event
floor-run-end_the_run = End the run
floor-scan-camera_sees = What the camera sees
floor-scan-torch = Torch
floor-scan-outside_the_line = Stay outside the line unless this phone is rated for it and your site allows it.
floor-slate-no_script = The slate needs script. Without it, each entry goes straight to the book when you log it.
floor-today-no_script = This phone runs no script, so there is no slate on it. With a connection, type a mark to go on.
floor-who-title = Who logs?
floor-who-no_script = Without script you log under your own name:
floor-who-sign_in = sign in
floor-mark-label = Mark on the label
floor-mark-hint = Letters, digits and the last character after the dash.
floor-mark-open = Open
floor-caution-lead_1 = The line.
floor-caution-words_1 = An ordinary phone can light alcohol vapour. Stay outside the marked line unless the phone is rated and your site allows it. Read at the safe, step back, type it with the minute it was read.
floor-caution-lead_2 = Fermenting room.
floor-caution-words_2 = Carbon dioxide has no smell and lies low. At 5000 ppm leave, ventilate, tell the supervisor; at 30 000 ppm out at once. Never go back for a reading. A candle is no test.
floor-caution-lead_3 = Heads and methanol.
floor-caution-words_3 = A hydrometer cannot see methanol, nor can a density meter. Heads hold part of it, hearts and tails too. Only a laboratory knows. Do not taste the first runnings.
floor-caution-lead_4 = Still.
floor-caution-words_4 = Hot, and under pressure if a path blocks. Cold water into a hot closed still can crush it. Keep vents free; never leave a running still.
floor-caution-lead_5 = Tanks and vats.
floor-caution-words_5 = Nobody enters alone or without a permit, a gas test and someone outside.
floor-caution-lead_6 = Casks.
floor-caution-words_6 = A full cask of 225 L (59 gal) weighs 220 to 260 kg (485 to 573 lb). Trolley, hoist or chock; never the back, never the bilge line.
floor-caution-lead_7 = Alone in the cellar.
floor-caution-words_7 = Say where you are and when you are back. This phone raises no alarm.
floor-caution-title = Cautions
floor-caution-first = Your site's own assessment, local code and licensed people come first. Nothing on this phone says that a place or a spirit is safe.
floor-form-unit_of = Unit of { $what }
floor-form-read_at = Read at
floor-form-who = Who
floor-form-role = Role
floor-form-seen_by = Seen by
floor-form-remark = Remark
floor-form-missing = { $what } is missing. Type it.
floor-form-yes = yes
floor-form-no = no
floor-form-alcoholmeter = Alcoholmeter used
floor-form-dip = Dip used
floor-form-refractometer = Refractometer used
floor-form-saccharometer = Saccharometer used
floor-form-scale = Scale used
floor-form-thermometer = Thermometer used
floor-form-density_meter = Density meter used
floor-form-pH_meter = pH meter used
floor-enrol-type_the_code = Type the code from the office.
floor-vessel-not_in_book = The book has no vessel { $mark }. Read the label again, or ask the office to put it in.
floor-form-no_such = There is no such form. Go back and pick one from the vessel's card.
floor-log-sign_in_first = Sign in first, in another tab: then press the button again. What you typed stays here.
floor-log-no_time = Read at: pick the day and the minute, or leave it empty for now.
floor-mark-bad = { $why ->
    [empty] Type the mark on the label, such as F3-8.
    [foreign] This code is not one of ours. Scan the label on the vessel, or type its mark.
    [characters] A mark has only letters A to Z and digits 0 to 9. Read the label again.
    [too_short] A mark has a code and a check character, such as F3-8. Type all of it.
    [too_long] This is too long for a mark. Type the large print on the label.
   *[check] { $mark } is no mark: a character is wrong, or the last one is missing. Read the label again.
  }
# The same of labels in forms.
floor-form-within = { LOWER($words) }
