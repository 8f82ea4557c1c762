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

### Only the desk reads what follows.

desk-languages-label = Language
desk-you-language = Language
desk-you-language-any = As the browser or the house has it
desk-you-language-keep = Keep
