package sandslurry.design.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import sandslurry.design.line.RunFields;
import sandslurry.design.material.CarrierFields;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.station.ServiceSpec.Ends;
import sandslurry.design.station.ServiceSpec.FlushPoint;
import sandslurry.design.station.ServiceSpec.FlushSupply;
import sandslurry.design.station.ServiceSpec.GivenFlush;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.design.station.ServiceSpec.PumpFlush;
import sandslurry.design.station.ServiceSpec.ScrewSpec;
import sandslurry.design.station.ServiceSpec.SourceFlush;
import sandslurry.design.station.ServiceSpec.StatesSpec;
import sandslurry.design.station.ServiceSpec.SuctionSpec;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Seen;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.Measure;

/** The fields of what a line meets in service. */
public final class ServiceFields {
  private static final String NOT_JUDGED = "not judged";

  private ServiceFields() {}

  /** The suction side of the pump. */
  public static final class SuctionFields extends RunFields<SuctionSpec> {
    private final Field<Double> altitude =
        standard("altitude", Type.quantity(Measure.LENGTH, "-400 m", "5000 m"), "0 m")
            .label("Altitude")
            .means("altitude of the site above sea level")
            .such("300 m", "1000 ft");

    /** Declares the fields. */
    public SuctionFields() {
      super("suction", "suction side");
    }

    @Override
    protected Optional<SuctionSpec> make(Values values) {
      return Optional.of(new SuctionSpec(values.get(altitude), run(values, "suction")));
    }
  }

  /** The states beside those of the flow. */
  public static final class StatesFields extends Fields<StatesSpec> {
    private final Field<Optional<Double>> worn =
        optional("wornHead", CommonLimits.WORN, NOT_JUDGED)
            .label("Head lost by wear")
            .means("share of head that a worn pump has lost, of a piston pump the share of flow")
            .such("10 %");
    private final Field<Optional<Double>> coldest =
        optional("coldest", CommonLimits.TEMPERATURE, NOT_JUDGED)
            .label("Coldest")
            .means("lowest temperature of the liquid")
            .such("4 degC", "39 degF");
    private final Field<Optional<Double>> warmest =
        optional("warmest", CommonLimits.TEMPERATURE, NOT_JUDGED)
            .label("Warmest")
            .means("highest temperature of the liquid")
            .such("25 degC", "77 degF");
    private final Field<Optional<Double>> thinnest =
        optional("thinnest", CommonLimits.TOTAL_SOLIDS, NOT_JUDGED)
            .label("Thinnest, solids")
            .means("least sand-free total solids")
            .such("1 %");
    private final Field<Optional<Double>> thickest =
        optional("thickest", CommonLimits.TOTAL_SOLIDS, NOT_JUDGED)
            .label("Thickest, solids")
            .means("most sand-free total solids")
            .such("4 %");
    private final Field<Optional<Double>> low =
        optional("lowSourceLevel", CommonLimits.LEVEL, NOT_JUDGED)
            .label("Lowest pit level")
            .means("lowest level in the pit, as that of the route")
            .such("0.5 m", "2 ft");
    private final Field<Optional<Double>> high =
        optional("highSourceLevel", CommonLimits.LEVEL, NOT_JUDGED)
            .label("Highest pit level")
            .means("highest level in the pit, as that of the route")
            .such("3 m", "10 ft");
    private final Field<Optional<Double>> leastSand =
        optional("thinnestSand", CommonLimits.VOLUME_FRACTION, NOT_JUDGED)
            .label("Least sand, by volume")
            .means("least sand in the mixture, by volume")
            .such("1 %");
    private final Field<Optional<Double>> mostSand =
        optional("thickestSand", CommonLimits.VOLUME_FRACTION, NOT_JUDGED)
            .label("Most sand, by volume")
            .means("most sand in the mixture, by volume")
            .such("6 %");
    private final Field<Boolean> flush =
        standard("flushWater", Type.yesNo("by the pump itself: judged", "not by the pump"), "no")
            .label("Flush with water")
            .means("whether it is judged that the pump clears the line when it pumps water");
    private final Field<Optional<CarrierSpec>> thinnestCarrier = carrier("thinnest");
    private final Field<Optional<CarrierSpec>> thickestCarrier = carrier("thickest");
    private final Field<Optional<CarrierSpec>> coldestCarrier = carrier("coldest");
    private final Field<Optional<CarrierSpec>> warmestCarrier = carrier("warmest");

    /** Declares the fields and the rules between them. */
    public StatesFields() {
      super("states", "states beside the design");
      shownWhen(worn, seen -> seen.beside("pump"));
      ordered(coldest, warmest);
      ordered(thinnest, thickest);
      ordered(leastSand, mostSand);
      ordered(low, high);
      instead(thinnest, thinnestCarrier);
      instead(thickest, thickestCarrier);
      instead(coldest, coldestCarrier);
      instead(warmest, warmestCarrier);
      Predicate<Seen> manure = carrierIs("manure");
      for (Field<?> field : List.of(thinnest, thickest)) {
        onlyWhen(
            field,
            manure,
            "belongs to a carrier of kind manure: no other follows its solids; describe it by \""
                + field.name()
                + "Carrier\", or give the sand by \""
                + field.name()
                + "Sand\"");
      }
      for (Field<?> field : List.of(coldest, warmest)) {
        onlyWhen(
            field,
            manure.or(carrierIs("water")),
            "belongs to a carrier of kind water or manure: a measured liquid is known at its own"
                + " temperature only; describe it there by \""
                + field.name()
                + "Carrier\"");
      }
    }

    private static Predicate<Seen> carrierIs(String kind) {
      return seen -> seen.is("/carrier/kind", kind);
    }

    private Field<Optional<CarrierSpec>> carrier(String state) {
      return optional(state + "Carrier", CarrierFields.KINDS, "the carrier in that state")
          .label("The liquid at its " + state + " was measured")
          .means("the liquid at its " + state + ", by numbers of its own");
    }

    private void instead(Field<?> number, Field<?> carrier) {
      onlyWhen(
          carrier,
          seen -> !seen.has(number),
          "says what \"" + number.name() + "\" says too: give one of them");
    }

    private void ordered(Field<Optional<Double>> lower, Field<Optional<Double>> upper) {
      rule(
          upper,
          List.of(lower),
          values ->
              values.get(lower).isEmpty()
                  || values.get(upper).isEmpty()
                  || values.get(upper).get() >= values.get(lower).get(),
          values -> "must not be below " + lower.name() + ", " + values.written(lower));
    }

    @Override
    protected Optional<StatesSpec> make(Values values) {
      return Optional.of(
          new StatesSpec(
              values.get(worn),
              ends(values, coldest, warmest),
              ends(values, thickest, thinnest),
              ends(values, low, high),
              values.get(flush),
              ends(values, mostSand, leastSand),
              ends(values, thickestCarrier, thinnestCarrier),
              ends(values, coldestCarrier, warmestCarrier)));
    }

    private static <T> Ends<T> ends(
        Values values, Field<Optional<T>> hard, Field<Optional<T>> easy) {
      return new Ends<>(values.get(hard), values.get(easy));
    }
  }

  /** A day of pumping, and the flush. */
  public static final class OperationFields extends Fields<OperationSpec> {
    private static final Type<Double> VOLUME =
        Type.quantity(Measure.VOLUME, "0.01 m3", "100000 m3");
    private static final FlushPointFields POINT = new FlushPointFields();

    private final Field<Optional<Double>> daily =
        optional("dailyVolume", VOLUME, NOT_JUDGED)
            .label("Volume a day")
            .means("volume of mixture moved in a day")
            .such("400 m3", "14000 ft3");
    private final Field<Optional<Double>> batch =
        optional("batchVolume", VOLUME, "no starts are counted")
            .label("Batch between levels")
            .means("volume of the pit between the levels of start and stop")
            .such("20 m3", "700 ft3");
    private final Field<Optional<Integer>> starts =
        optional("mostStartsPerHour", Type.count(60), "default: by the motor rating")
            .label("Most starts in an hour")
            .means("most starts in an hour that motor and starter bear")
            .such("4");
    private final Field<Optional<Double>> stop =
        optional("stopTime", Type.quantity(Measure.TIME, "0 s", "3600 s"), "a sudden stop")
            .label("Time to come to rest")
            .means(
                "time in which the flow comes to rest evenly, as by a slow valve; the water hammer"
                    + " is judged by it")
            .such("5 s");
    private final Field<Optional<Double>> flow =
        optional("flushFlow", CommonLimits.FLOW, NOT_JUDGED)
            .label("Flush flow rate")
            .means("flow rate of the flush, taken as given against the line")
            .such("55 L/s", "870 gpm");
    private final Field<Boolean> byPump =
        standard("flushPump", Type.yesNo("the pump of the line, on water", "no"), "no")
            .label("Flush by the pump")
            .means("whether the pump of the line, on water, supplies the flush");
    private final Field<Optional<Double>> level =
        optional("flushLevel", CommonLimits.LEVEL, "0 m with a curve")
            .label("Level of flush water")
            .means("level of the flush water above the start of the line")
            .such("12 m", "40 ft");
    private final Field<List<FlushPoint>> curve =
        list("flushCurve", POINT)
            .label("Curve of a flush pump of its own")
            .means(
                "curve of a flush pump behind that level, two points or more, the flow rate"
                    + " rising");
    private final Field<Optional<Double>> volume =
        optional("flushVolume", VOLUME, "enough")
            .label("Volume of flush water")
            .means("volume of water that the supply of the flush holds")
            .such("10 m3", "350 ft3");
    private final Field<Optional<Double>> thixotropy =
        optional(
                "thixotropy",
                Type.quantity(Measure.FRACTION, "1", "20"),
                "2 (common practice, no source)")
            .label("Yield stress after rest")
            .means(
                "yield stress of the liquid after a rest over that while it flows; it decides"
                    + " restart and flush")
            .such("2");

    /** Declares the fields and the rules between them. */
    public OperationFields() {
      super("operation", "a day of pumping, and the flush");
      neededWhen(daily, seen -> seen.has(batch), "a batch belongs to a day's volume");
      neededWhen(batch, seen -> seen.has(starts), "without it no starts are counted");
      neededWhen(
          flow,
          seen -> seen.has(volume) && !seen.has(byPump) && !hasSource(seen),
          "a volume alone does not tell whether a flush clears");
      onlyWhen(
          byPump,
          seen -> !seen.is(byPump, "yes") || seen.beside("pump"),
          "flushes by the pump, and there is none");
    }

    private boolean hasSource(Seen seen) {
      return seen.has(level) || seen.has(curve);
    }

    @Override
    protected void check(Values values) {
      boolean source = hasSource(values.seen());
      boolean pumped = values.maybe(byPump).orElse(false);
      if ((values.has(flow) ? 1 : 0) + (pumped ? 1 : 0) + (source ? 1 : 0) > 1) {
        values.problem(
            source ? values.has(level) ? level : curve : byPump,
            "give one supply of the flush: a flow, the pump, or a level with or without a curve");
      }
      List<Values> points = values.inside(curve);
      if (values.has(curve) && points.size() < 2) {
        values.problem(curve, "needs two points or more");
      }
      List<FlushPoint> read = values.maybe(curve).orElse(List.of());
      for (int i = 1; i < read.size(); i++) {
        if (!(read.get(i).flowM3ps() > read.get(i - 1).flowM3ps())) {
          points.get(i).problem(POINT.flow, "must be above the flow of the point before it");
        }
      }
    }

    @Override
    protected Optional<OperationSpec> make(Values values) {
      Optional<FlushSupply> supply = values.get(flow).map(GivenFlush::new);
      if (values.get(byPump)) {
        supply = Optional.of(new PumpFlush());
      } else if (hasSource(values.seen())) {
        supply = Optional.of(new SourceFlush(values.get(level).orElse(0.0), values.get(curve)));
      }
      return Optional.of(
          new OperationSpec(
              values.get(daily),
              values.get(batch),
              values.get(starts).map(OptionalInt::of).orElseGet(OptionalInt::empty),
              values.get(stop),
              supply,
              values.get(volume),
              values.get(thixotropy)));
    }
  }

  /** A point of the curve of a flush pump. */
  private static final class FlushPointFields extends Fields<FlushPoint> {
    private final Field<Double> flow =
        needed("flow", CommonLimits.CURVE_FLOW)
            .label("Flow rate")
            .means("flow rate of water")
            .such("60 L/s");
    private final Field<Double> head =
        needed("head", CommonLimits.CURVE_HEAD)
            .label("Head")
            .means("head in metres of water")
            .such("18 m");

    FlushPointFields() {
      super("point", "point of the curve");
    }

    @Override
    protected Optional<FlushPoint> make(Values values) {
      return Optional.of(new FlushPoint(values.get(flow), values.get(head)));
    }
  }

  /** A screw conveyor. */
  public static final class ScrewFields extends Fields<ScrewSpec> {
    private static final Type<Double> BULK =
        Type.quantity(Measure.DENSITY, "500 kg/m3", "3000 kg/m3");
    private static final Type<Double> SCREW = Type.quantity(Measure.LENGTH, "50 mm", "3 m");

    private final Field<Double> diameter =
        needed("diameter", SCREW)
            .label("Diameter of screw")
            .means("diameter of the screw")
            .such("400 mm", "16 in");
    private final Field<Double> shaft =
        standard("shaft", Type.quantity(Measure.LENGTH, "0 mm", "2 m"), "0 mm")
            .label("Diameter of shaft")
            .means("diameter of its shaft, thinner than the screw")
            .such("80 mm", "3 in");
    private final Field<Optional<Double>> pitch =
        optional("pitch", SCREW, "default: the diameter")
            .label("Pitch")
            .means("pitch of the flights")
            .such("400 mm", "16 in");
    private final Field<Double> speed =
        needed("speed", Type.quantity(Measure.ROTATION, "0.5 rpm", "400 rpm"))
            .label("Speed of screw")
            .means("speed of turning")
            .such("40 rpm");
    private final Field<Double> slope =
        standard("slope", Type.quantity(Measure.SLOPE, "0 %", "99 %"), "0 %")
            .label("Slope of screw")
            .means("rise over horizontal length")
            .such("10 %");
    private final Field<Double> length =
        needed("length", Type.quantity(Measure.LENGTH, "0.5 m", "200 m"))
            .label("Length of screw")
            .means("length along the screw")
            .such("18 m", "60 ft");
    private final Field<Optional<Double>> load =
        optional("load", CommonLimits.FLOW, "that of the pens")
            .label("Load, by volume")
            .means("volume that it must carry per time; it may be left out with a scraping time")
            .such("3 L/s", "50 gal/min");
    private final Field<Optional<Double>> bulk =
        optional("bulkDensity", BULK, "that of the pens")
            .label("Bulk density")
            .means("mass of the material over its volume; it may be left out with a scraping time")
            .such("1200 kg/m3", "75 lb/ft3");
    private final Field<Optional<Double>> scrape =
        optional(
                "scrapeTime",
                Type.quantity(Measure.TIME, "1 min", "1440 min"),
                "the load is as typed")
            .label("Pens scraped to it in")
            .means(
                "time in which all pens of the plant are scraped to it once; a load that was typed"
                    + " is compared with it")
            .such("40 min");

    /** Declares the fields and the rules between them. */
    public ScrewFields() {
      super("screw", "screw conveyor");
      // Pens that are scraped to the screw in a known time are a load of their own.
      Predicate<Seen> typed = seen -> !(seen.has("/plant") && seen.has(scrape));
      neededWhen(load, typed, CommonLimits.FLOW.wanted());
      neededWhen(bulk, typed, BULK.wanted());
      onlyWhen(
          scrape, seen -> seen.has("/plant"), "belongs to the pens of a plant, and there is none");
      rule(
          shaft,
          List.of(diameter),
          values -> values.get(shaft) < values.get(diameter),
          values -> "must be thinner than the screw, " + values.written(diameter));
    }

    @Override
    protected Optional<ScrewSpec> make(Values values) {
      return Optional.of(
          new ScrewSpec(
              values.get(diameter),
              values.get(shaft),
              values.get(pitch).orElse(values.get(diameter)),
              values.get(speed),
              values.get(slope),
              values.get(length),
              values.get(load),
              values.get(bulk),
              values.get(scrape)));
    }
  }
}
