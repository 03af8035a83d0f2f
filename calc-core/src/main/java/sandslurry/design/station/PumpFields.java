package sandslurry.design.station;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import sandslurry.design.station.PumpSpec.CurvePoint;
import sandslurry.design.station.PumpSpec.CurveSpec;
import sandslurry.design.station.PumpSpec.MotorSpec;
import sandslurry.design.station.PumpSpec.OtherPumpSpec;
import sandslurry.design.station.PumpSpec.PulsationSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.design.station.PumpSpec.StationSpec;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.pump.piston.HydraulicDrive;
import sandslurry.pump.rotodynamic.PumpGroup.Arrangement;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/**
 * The fields that every pump has.
 *
 * @param <S> what is made of them
 */
public abstract class PumpFields<S> extends Fields<S> {
  private static final Type<Double> SPEED = Type.quantity(Measure.ROTATION, "50 rpm", "6000 rpm");
  private static final Type<Double> IMPELLER = Type.quantity(Measure.LENGTH, "50 mm", "2000 mm");
  private static final Type<Double> EFFICIENCY = Type.quantity(Measure.FRACTION, "20 %", "100 %");
  private static final Type<Double> ALLOWED_FLOW =
      Type.quantity(Measure.FLOW, "0.01 L/s", "2000 L/s");
  private static final Type<Double> NPSH = Type.quantity(Measure.LENGTH, "0.1 m", "30 m");
  private static final Type<Double> MOTOR = Type.quantity(Measure.POWER, "0.1 kW", "2000 kW");
  private static final Type<Double> SERVICE_FACTOR = Type.quantity(Measure.FRACTION, "1", "1.5");
  private static final int MOST_PUMPS = 6;
  private static final int FEWEST_POINTS = 3;

  private final Field<Optional<Double>> rating =
      optional("motorRating", MOTOR, "not judged")
          .label("Motor rating, each")
          .means("power that the motor of each pump gives at its shaft all day")
          .such("18.5 kW", "25 hp");
  private final Field<Double> factor =
      standard("serviceFactor", SERVICE_FACTOR, "1")
          .label("Service factor")
          .means("what the motor bears for a time, over its rating")
          .such("1.15");

  private PumpFields(String name, String title) {
    super(name, title);
    shownWhen(factor, seen -> seen.has(rating));
  }

  /**
   * All kinds of pump.
   *
   * @return rotodynamic and piston pumps, with the fields of each
   */
  public static Kinds<PumpSpec> kinds() {
    return new Kinds<>(
        "Pump",
        "the kind of pump",
        new CommonFields(),
        List.of(new RotodynamicFields(), new PistonFields()));
  }

  final Optional<MotorSpec> motor(Values values) {
    return values.get(rating).map(power -> new MotorSpec(power, values.get(factor)));
  }

  final Field<Double> drive() {
    return standard("driveEfficiency", EFFICIENCY, "90 %")
        .label("Drive efficiency")
        .means("efficiency of motor and drive")
        .such("90 %");
  }

  /** The fields of a pump of which the kind is not known. */
  private static final class CommonFields extends PumpFields<PumpSpec> {
    CommonFields() {
      super("pump", "pump");
      drive();
    }

    @Override
    protected Optional<PumpSpec> make(Values values) {
      return Optional.empty();
    }
  }

  /** One point of a curve for clear water. */
  private static final class PointFields extends Fields<CurvePoint> {
    private final Field<Double> flow =
        needed("flow", CommonLimits.CURVE_FLOW)
            .label("Flow rate")
            .means("flow rate of clear water")
            .such("300 gpm");
    private final Field<Double> head =
        needed("head", CommonLimits.CURVE_HEAD)
            .label("Head")
            .means("head of clear water")
            .such("87 ft");
    private final Field<Double> efficiency =
        needed("efficiency", Type.quantity(Measure.FRACTION, "0 %", "95 %"))
            .label("Efficiency")
            .means("hydraulic power over shaft power; above 0 % wherever the pump delivers flow")
            .such("48 %");
    private final Field<Optional<Double>> npsh =
        optional("npsh", NPSH, "not judged")
            .label("NPSH")
            .means("NPSH required, by the maker; at two points or more, or at none")
            .such("9 ft");

    PointFields() {
      super("point", "point of the curve");
      rule(
          efficiency,
          List.of(flow),
          values -> !(values.get(flow) > 0) || values.get(efficiency) > 0,
          values -> "must be above 0 % wherever the pump delivers flow");
    }

    @Override
    protected Optional<CurvePoint> make(Values values) {
      return Optional.of(
          new CurvePoint(
              values.get(flow), values.get(head), values.get(efficiency), values.number(npsh)));
    }
  }

  /**
   * The fields of a pump by its curve.
   *
   * @param <S> what is made of them
   */
  private abstract static class CurvedFields<S> extends PumpFields<S> {
    private static final PointFields POINT = new PointFields();

    private final Field<Double> curveSpeed =
        needed("curveSpeed", SPEED)
            .label("Speed of the curve")
            .means("speed at which the curve was measured")
            .such("1750 rpm");
    private final Field<Optional<Double>> speed =
        optional("speed", SPEED, "default: that of the curve")
            .label("Driven speed")
            .means("speed at which the pump is driven")
            .such("1600 rpm");
    final Field<Optional<Double>> impeller =
        optional("impeller", IMPELLER, "optional")
            .label("Impeller diameter")
            .means("diameter of the impeller, for the head ratio with sand")
            .such("300 mm", "12 in");
    final Field<List<CurvePoint>> curve =
        list("curve", POINT)
            .label("Curve with clear water")
            .means(
                "three points or more for clear water, in ascending flow; the program derates them"
                    + " for sand and thick liquor");

    private CurvedFields(String name, String title) {
      super(name, title);
      begins("{\"curve\": [{}, {}, {}]}");
    }

    @Override
    protected void check(Values values) {
      List<Values> points = values.inside(curve);
      if (points.size() < FEWEST_POINTS && (values.good(curve) || !points.isEmpty())) {
        values.problem(curve, "needs three points or more but has " + points.size());
      }
      for (int i = 1; i < points.size(); i++) {
        Optional<Double> before = points.get(i - 1).maybe(POINT.flow);
        Optional<Double> flow = points.get(i).maybe(POINT.flow);
        if (before.isPresent() && flow.isPresent() && !(flow.get() > before.get())) {
          points
              .get(i)
              .problem(
                  POINT.flow,
                  "must be above the flow of the point before it, "
                      + points.get(i - 1).written(POINT.flow));
        }
      }
      if (points.stream().filter(point -> point.has(POINT.npsh)).count() == 1) {
        values.problem(curve, "needs \"npsh\" at two points or more, or at none");
      }
    }

    final CurveSpec curve(Values values) {
      double measured = values.get(curveSpeed);
      return new CurveSpec(values.get(curve), measured, values.get(speed).orElse(measured));
    }
  }

  /** One more pump, unlike the first. */
  private static final class OtherFields extends CurvedFields<OtherPumpSpec> {
    private final Field<Optional<String>> name =
        optional("name", Type.text(), "other pump 1, ...")
            .label("Name")
            .means("what the pump is called");
    private final Field<Boolean> standby =
        standard(
                "standby",
                Type.yesNo("stands by for the first", "runs together with the first"),
                "no")
            .label("This pump")
            .means(
                "whether the pump takes the place of the first when that is out, instead of"
                    + " running");
    private final Field<Optional<Double>> worn =
        optional("wornHead", CommonLimits.WORN, "default: that of the states")
            .label("Head lost by wear")
            .means("share of head that it has lost when worn")
            .such("15 %");
    private final Field<Optional<Double>> drive =
        optional("driveEfficiency", EFFICIENCY, "default: as the first pump")
            .label("Drive efficiency")
            .means("efficiency of its motor and drive")
            .such("85 %");

    OtherFields() {
      super("other", "pump");
    }

    @Override
    protected Optional<OtherPumpSpec> make(Values values) {
      return Optional.of(
          new OtherPumpSpec(
              values
                  .get(name)
                  .filter(typed -> !typed.isBlank())
                  .orElse("other pump " + (values.index() + 1)),
              curve(values),
              values.get(standby),
              values.number(impeller),
              values.get(worn),
              values.get(drive),
              motor(values)));
    }
  }

  /** Rotodynamic pumps by their curves for clear water. */
  private static final class RotodynamicFields extends CurvedFields<PumpSpec> {
    private static final OtherFields OTHER = new OtherFields();

    private final Field<Double> trim =
        standard("trim", Type.quantity(Measure.FRACTION, "75 %", "100 %"), "100 %")
            .label("Trim of the diameter")
            .means("diameter of the impeller over that of the curve")
            .such("95 %");
    private final Field<Optional<Double>> minimum =
        optional("minimumFlow", ALLOWED_FLOW, "default: half of the BEP")
            .label("Minimum, by maker")
            .means("least flow rate through one pump, by the maker")
            .such("5 L/s", "80 gal/min");
    private final Field<Optional<Double>> maximum =
        optional("maximumFlow", ALLOWED_FLOW, "default: 1.25 of the BEP")
            .label("Maximum, by maker")
            .means("greatest flow rate through one pump, by the maker")
            .such("30 L/s", "500 gal/min");
    private final Field<Integer> count =
        standard("count", Type.count(MOST_PUMPS), "1")
            .label("Such pumps together")
            .means("how many such pumps run together")
            .such("2");
    private final Field<Arrangement> arrangement =
        standard(
                "arrangement",
                Type.choice(
                    Arrays.asList(Arrangement.values()),
                    a -> a.name().toLowerCase(Locale.ROOT),
                    a ->
                        a == Arrangement.SERIES
                            ? "in series, one after the other"
                            : "in parallel, side by side"),
                "parallel")
            .label("Several pumps work")
            .means("how several pumps stand together");
    private final Field<Double> drive = drive();
    private final Field<List<OtherPumpSpec>> others =
        list("others", OTHER)
            .label("More pumps, each with a curve of its own")
            .means("pumps unlike the first; what is not given of one is as of the first");

    RotodynamicFields() {
      super("rotodynamic", "centrifugal pump by its curve");
      rule(
          maximum,
          List.of(minimum),
          values ->
              values.get(minimum).isEmpty()
                  || values.get(maximum).isEmpty()
                  || values.get(maximum).get() > values.get(minimum).get(),
          values -> "must be above \"minimumFlow\"");
      rule(
          others,
          List.of(),
          values -> values.get(others).size() < MOST_PUMPS,
          values -> "may hold up to " + (MOST_PUMPS - 1) + " pumps");
    }

    @Override
    protected void check(Values values) {
      super.check(values);
      Set<String> names = new HashSet<>();
      List<OtherPumpSpec> read = values.maybe(others).orElse(List.of());
      for (int i = 0; i < read.size(); i++) {
        if (!names.add(read.get(i).name())) {
          values
              .inside(others)
              .get(i)
              .problem(OTHER.name, "is the name of another pump too: give each its own");
        }
      }
    }

    @Override
    protected Optional<PumpSpec> make(Values values) {
      StationSpec station =
          new StationSpec(
              values.get(count),
              values.get(arrangement),
              values.get(trim),
              values.number(minimum),
              values.number(maximum),
              values.get(others));
      RotodynamicSpec pump =
          new RotodynamicSpec(
              curve(values), values.number(impeller), values.get(drive), motor(values), station);
      return values.made(
          station.others().isEmpty() ? curve : others,
          () -> {
            // The pumps must be able to work together, with every spare too.
            pump.running();
            pump.spares().forEach(spare -> pump.clear(pump.withSpare(spare)));
            return pump;
          });
    }
  }

  /** A piston pump. */
  private static final class PistonFields extends PumpFields<PumpSpec> {
    private final Field<Double> displacement =
        needed("displacement", Type.quantity(Measure.VOLUME, "0.01 L", "1000 L"))
            .label("Swept volume per stroke")
            .means("volume swept in one stroke cycle")
            .such("20 L", "5 gal");
    private final Field<Double> strokes =
        needed("strokeRate", Type.quantity(Measure.FREQUENCY, "0.5 1/min", "300 1/min"))
            .label("Stroke rate")
            .means("stroke cycles per time")
            .such("60 1/min");
    private final Field<Double> volumetric =
        needed("volumetricEfficiency", EFFICIENCY)
            .label("Volumetric efficiency")
            .means("flow rate delivered over flow rate swept")
            .such("85 %");
    private final Field<Double> mechanical =
        standard("mechanicalEfficiency", EFFICIENCY, "85 %")
            .label("Mechanical efficiency")
            .means("hydraulic power over shaft power")
            .such("85 %");
    private final Field<Double> limit =
        needed("pressureLimit", CommonLimits.RATING)
            .label("Relief pressure")
            .means("pressure at which its relief opens")
            .such("700 kPa", "100 psi");
    private final Field<Optional<Double>> npsh =
        optional("npsh", NPSH, "not judged")
            .label("NPSH required")
            .means("NPSH required, by the maker")
            .such("3 m", "10 ft");
    private final Field<Double> drive = drive();
    private final Field<Optional<Integer>> cylinders =
        optional("cylinders", Type.count(9), "pulse not judged")
            .label("Cylinders")
            .means("how many cylinders there are")
            .such("2");
    private final Field<Boolean> acting =
        standard(
                "acting",
                Type.choice(
                    List.of(false, true),
                    both -> both ? "double" : "single",
                    both -> both ? "with both sides" : "with one side"),
                "single")
            .label("A piston pushes")
            .means("whether one side or both sides of a piston pump");
    private final Field<Double> rod =
        standard("rodShare", Type.quantity(Measure.FRACTION, "0 %", "80 %"), "0 %")
            .label("Rod over piston area")
            .means("cross-section of the rod over that of the piston, of a double-acting pump")
            .such("10 %");
    private final Field<Boolean> hydraulic =
        standard(
                "cylinderDrive",
                Type.choice(
                    List.of(false, true),
                    ram -> ram ? "hydraulic" : "crank",
                    ram -> ram ? "hydraulic cylinders" : "a crank"),
                "crank")
            .label("Pistons are driven by")
            .means(
                "what moves the pistons: a crank, or hydraulic cylinders at constant speed, one or"
                    + " two that act singly by turns");
    private final Field<Double> crank =
        standard("rodToCrank", Type.quantity(Measure.NUMBER, "2", "100"), "6")
            .label("Rod length over crank")
            .means("length of the connecting rod over the crank radius")
            .such("6");
    private final Field<Double> dwell =
        standard("dwell", Type.quantity(Measure.TIME, "0 s", "60 s"), "0 s")
            .label("Dwell at stroke end")
            .means("time at each end of a stroke in which nothing flows, of hydraulic cylinders")
            .such("0.3 s");
    private final Field<Double> changeover =
        standard("changeover", Type.quantity(Measure.TIME, "0.01 s", "60 s"), "0.1 s")
            .label("Changeover time")
            .means(
                "time in which the flow of hydraulic cylinders starts or stops at a stroke's end"
                    + " (default: common practice, no source)")
            .such("0.2 s");
    private final Field<Optional<Double>> gas =
        optional("vesselGas", Type.quantity(Measure.VOLUME, "0.1 L", "20000 L"), "no vessel")
            .label("Gas in an air vessel")
            .means("gas in an air vessel at the pressure of the line")
            .such("200 L", "50 gal");
    private final Field<Double> passed =
        standard("pulsationPassed", CommonLimits.SHARE, "100 %")
            .label("Pulse past the vessel")
            .means("share of the swing of flow that an air vessel lets into the line")
            .such("20 %");

    PistonFields() {
      super("piston", "piston pump");
      for (Field<?> field :
          List.of(acting, rod, crank, passed, gas, hydraulic, dwell, changeover)) {
        onlyWhen(field, seen -> seen.has(cylinders), "says nothing without \"cylinders\"");
      }
      onlyWhen(crank, seen -> !seen.is(hydraulic, "hydraulic"), "belongs to a crank");
      for (Field<?> field : List.of(dwell, changeover)) {
        onlyWhen(
            field,
            seen -> seen.is(hydraulic, "hydraulic"),
            "belongs to a pump driven by hydraulic cylinders");
      }
      rule(
          gas,
          List.of(),
          values -> !(values.has(gas) && values.has(passed)),
          values -> "gives what \"pulsationPassed\" says too: give one of them");
      rule(
          cylinders,
          List.of(acting, hydraulic),
          values ->
              values.get(cylinders).isEmpty()
                  || !values.get(hydraulic)
                  || values.get(cylinders).get() == 1
                  || values.get(cylinders).get() == 2 && !values.get(acting),
          values ->
              "of a pump driven by hydraulic cylinders must be one, or two that act singly by"
                  + " turns");
      rule(
          dwell,
          List.of(cylinders, hydraulic, changeover, strokes),
          values ->
              values.get(cylinders).isEmpty()
                  || !values.get(hydraulic)
                  || HydraulicDrive.fits(
                      values.get(dwell) * strokes(values),
                      values.get(changeover) * strokes(values)),
          values ->
              "and twice the changeover leave no time for the strokes: together they may take half"
                  + " a cycle, "
                  + UnitSystem.METRIC.show(Kind.TIME, HydraulicDrive.STROKE / strokes(values)));
    }

    private double strokes(Values values) {
      return values.get(strokes);
    }

    @Override
    protected Optional<PumpSpec> make(Values values) {
      Optional<PumpSpec.RamSpec> rams =
          values.get(hydraulic)
              ? Optional.of(new PumpSpec.RamSpec(values.get(dwell), values.get(changeover)))
              : Optional.empty();
      Optional<PulsationSpec> pulsation =
          values
              .get(cylinders)
              .map(
                  n ->
                      new PulsationSpec(
                          n,
                          values.get(acting),
                          values.get(rod),
                          values.get(crank),
                          values.get(passed),
                          values.get(gas),
                          rams));
      return Optional.of(
          new PumpSpec.PistonSpec(
              values.get(displacement),
              values.get(strokes),
              values.get(volumetric),
              values.get(mechanical),
              values.get(limit),
              values.get(drive),
              motor(values),
              pulsation,
              values.number(npsh)));
    }
  }
}
