package sandslurry.design.plant;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import sandslurry.design.plant.YearSpec.EmptyingSpec;
import sandslurry.design.plant.YearSpec.MonthSpec;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.plant.account.StorageYear.Emptying;
import sandslurry.plant.climate.ClimateRecord;
import sandslurry.plant.climate.ClimateRecord.Series;
import sandslurry.plant.climate.ClimateRecords;
import sandslurry.units.Measure;

/** The fields of the year of a plant: its weather, and when storages are emptied. */
final class YearFields extends Fields<YearSpec> {
  private static final Type<Double> RAIN = Type.quantity(Measure.LENGTH, "0 mm", "2000 mm");
  private static final Type<Double> AIR = Type.quantity(Measure.TEMPERATURE, "-40 degC", "45 degC");
  private static final Type<Month> MONTH =
      Type.choice(Arrays.asList(Month.values()), YearFields::word, YearFields::word);
  private static final OwnFields OWN = new OwnFields();
  private static final EmptyingFields EMPTYING = new EmptyingFields();

  private final Field<Optional<ClimateRecord>> climate =
      optional(
              "climate",
              Type.choice(ClimateRecords.ALL, ClimateRecord::id, ClimateRecord::words),
              "all is given by month")
          .label("Climate record")
          .means(
              "a published record of the weather of a place; what it lacks, and what is known"
                  + " better, is given by month");
  private final Field<List<Own>> months =
      list("months", OWN)
          .label("Months, where the record says nothing or something else")
          .means("temperature, rain and evaporation by month, instead of those of the record");
  private final Field<Double> pan =
      standard("panCoefficient", Type.quantity(Measure.FRACTION, "30 %", "120 %"), "70 %")
          .label("Pan coefficient")
          .means(
              "evaporation of the storage over that of a class A pan, for a record of a pan"
                  + " (default: from memory, unverified)")
          .such("70 %");
  private final Field<Double> least =
      standard("leastLiquor", CommonLimits.TEMPERATURE, "1 degC")
          .label("Liquor no colder than")
          .means(
              "the liquor is as warm as the air of its month, but no colder than this (default: own"
                  + " choice, no source)")
          .such("2 degC", "35 degF");
  private final Field<List<EmptyingSpec>> emptyings =
      list("emptyings", EMPTYING)
          .label("When storages are emptied")
          .means("when storages are emptied, each at the end of a month");

  YearFields() {
    super("year", "year of the plant");
  }

  private static String word(Month month) {
    return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /** The storages that are emptied, each where a problem with it is told. */
  void checkStorages(Values year, Set<String> storages) {
    for (Values one : year.inside(emptyings)) {
      one.maybe(EMPTYING.storage)
          .filter(name -> !storages.contains(name))
          .ifPresent(
              name ->
                  one.problem(
                      EMPTYING.storage,
                      "is no storage; those are: "
                          + String.join(", ", storages.stream().sorted().toList())));
    }
  }

  @Override
  protected void check(Values values) {
    Set<Month> given = new LinkedHashSet<>();
    for (Values own : values.inside(months)) {
      own.maybe(OWN.month)
          .filter(month -> !given.add(month))
          .ifPresent(month -> own.problem(OWN.month, "is given twice"));
    }
    if (!values.good(climate, months)) {
      return;
    }
    missing(values, "temperature", ClimateRecord::airK, Own::airK);
    missing(values, "rain", ClimateRecord::rainM, Own::rainM);
    missing(values, "evaporation", ClimateRecord::evaporationM, Own::evaporationM);
  }

  private void missing(
      Values values,
      String what,
      Function<ClimateRecord, Optional<Series>> recorded,
      Function<Own, Optional<Double>> own) {
    if (values.get(climate).flatMap(recorded).isPresent()) {
      return;
    }
    List<String> without = new ArrayList<>();
    for (Month month : Month.values()) {
      if (values.get(months).stream()
          .noneMatch(one -> one.month() == month && own.apply(one).isPresent())) {
        without.add(word(month));
      }
    }
    if (!without.isEmpty()) {
      values.problem(
          months,
          "need the " + what + " of " + String.join(", ", without) + ", which no record gives");
    }
  }

  @Override
  protected Optional<YearSpec> make(Values values) {
    Map<Month, Own> own = new EnumMap<>(Month.class);
    values.get(months).forEach(one -> own.put(one.month(), one));
    Optional<ClimateRecord> record = values.get(climate);
    List<MonthSpec> all = new ArrayList<>();
    for (Month month : Month.values()) {
      Own here =
          own.getOrDefault(
              month, new Own(month, Optional.empty(), Optional.empty(), Optional.empty()));
      double air = value(record.flatMap(ClimateRecord::airK), 1, month, here.airK());
      all.add(
          new MonthSpec(
              word(month),
              month.length(false),
              air,
              Math.max(air, values.get(least)),
              value(record.flatMap(ClimateRecord::rainM), 1, month, here.rainM()),
              value(
                  record.flatMap(ClimateRecord::evaporationM),
                  values.get(pan),
                  month,
                  here.evaporationM())));
    }
    List<Double> liquor = all.stream().map(MonthSpec::liquorK).sorted().toList();
    return Optional.of(
        new YearSpec(
            List.of(liquor.get(0), liquor.get(liquor.size() - 1)),
            all,
            record.map(YearFields::sources).orElse(List.of()),
            values.get(emptyings)));
  }

  private static double value(
      Optional<Series> series, double panCoefficient, Month month, Optional<Double> own) {
    return own.or(
            () -> series.map(s -> s.values().get(month.ordinal()) * (s.pan() ? panCoefficient : 1)))
        .orElseThrow();
  }

  private static List<String> sources(ClimateRecord record) {
    List<String> sources = new ArrayList<>();
    record
        .airK()
        .ifPresent(s -> sources.add("Temperature of " + record.place() + ": " + s.source()));
    record.rainM().ifPresent(s -> sources.add("Rain of " + record.place() + ": " + s.source()));
    record
        .evaporationM()
        .ifPresent(s -> sources.add("Evaporation of " + record.place() + ": " + s.source()));
    return sources;
  }

  /** What the user knows of a month. */
  private record Own(
      Month month, Optional<Double> airK, Optional<Double> rainM, Optional<Double> evaporationM) {}

  /** A month of the user's own. */
  private static final class OwnFields extends Fields<Own> {
    private static final String RECORDED = "as the record";

    private final Field<Month> month = needed("month", MONTH).label("Month").means("the month");
    private final Field<Optional<Double>> temperature =
        optional("temperature", AIR, RECORDED)
            .label("Temperature")
            .means("mean temperature of the air, or of the liquor where that is known")
            .such("-6 degC", "21 degF");
    private final Field<Optional<Double>> rain =
        optional("rain", RAIN, RECORDED)
            .label("Rain")
            .means("rain, and snow by its water")
            .such("80 mm", "3.1 in");
    private final Field<Optional<Double>> evaporation =
        optional("evaporation", RAIN, RECORDED)
            .label("Evaporation")
            .means("evaporation of the storage itself, not of a pan")
            .such("60 mm", "2.4 in");

    OwnFields() {
      super("month", "month");
    }

    @Override
    protected Optional<Own> make(Values values) {
      return Optional.of(
          new Own(
              values.get(month),
              values.get(temperature),
              values.get(rain),
              values.get(evaporation)));
    }
  }

  /** An emptying of a storage. */
  private static final class EmptyingFields extends Fields<EmptyingSpec> {
    private final Field<String> storage =
        needed("storage", Type.name("the storage"))
            .label("Storage")
            .means("name of the storage")
            .such("First cell");
    private final Field<Month> month =
        needed("month", MONTH)
            .label("At the end of")
            .means("the month at the end of which it is emptied");
    private final Field<Optional<Double>> volume =
        optional("volume", CommonLimits.CONTENTS, "by its share")
            .label("Volume taken")
            .means("volume taken, or all there is")
            .such("3000 m3", "800000 gal");
    private final Field<Optional<Double>> share =
        optional("share", CommonLimits.SHARE, "by its volume")
            .label("Share taken")
            .means("share taken of the liquid that is held")
            .such("90 %");

    EmptyingFields() {
      super("emptying", "emptying");
      exactlyOne(volume, share);
    }

    @Override
    protected Optional<EmptyingSpec> make(Values values) {
      return Optional.of(
          new EmptyingSpec(
              values.get(storage),
              new Emptying(
                  values.get(month).ordinal(), values.number(volume), values.number(share))));
    }
  }
}
