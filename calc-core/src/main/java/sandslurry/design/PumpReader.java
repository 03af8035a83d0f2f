package sandslurry.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import sandslurry.design.PumpSpec.CurveSpec;
import sandslurry.design.PumpSpec.MotorSpec;
import sandslurry.design.PumpSpec.OtherPumpSpec;
import sandslurry.design.PumpSpec.PulsationSpec;
import sandslurry.design.PumpSpec.RotodynamicSpec;
import sandslurry.design.PumpSpec.StationSpec;
import sandslurry.pump.piston.HydraulicDrive;
import sandslurry.pump.rotodynamic.PumpGroup.Arrangement;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;
import si.uom.quantity.VolumetricFlowRate;

/** Reads the pumps of a design. */
final class PumpReader {
  static final Limits<VolumetricFlowRate> CURVE_FLOW = Limits.of(Measure.FLOW, "0 L/s", "2000 L/s");
  static final Limits<Length> CURVE_HEAD = Limits.of(Measure.LENGTH, "0 m", "500 m");
  private static final Limits<Dimensionless> CURVE_EFFICIENCY =
      Limits.of(Measure.FRACTION, "0 %", "95 %");
  private static final Limits<Frequency> SPEED = Limits.of(Measure.FREQUENCY, "50 rpm", "6000 rpm");
  private static final Limits<Length> IMPELLER = Limits.of(Measure.LENGTH, "50 mm", "2000 mm");
  private static final Limits<Dimensionless> EFFICIENCY =
      Limits.of(Measure.FRACTION, "20 %", "100 %");
  private static final Limits<Volume> DISPLACEMENT = Limits.of(Measure.VOLUME, "0.01 L", "1000 L");
  private static final Limits<Frequency> STROKES =
      Limits.of(Measure.FREQUENCY, "0.5 1/min", "300 1/min");
  private static final Limits<Dimensionless> TRIM = Limits.of(Measure.FRACTION, "75 %", "100 %");
  private static final Limits<VolumetricFlowRate> ALLOWED_FLOW =
      Limits.of(Measure.FLOW, "0.01 L/s", "2000 L/s");
  private static final Limits<Dimensionless> WORN = Limits.of(Measure.FRACTION, "0 %", "50 %");
  private static final Limits<Length> NPSH = Limits.of(Measure.LENGTH, "0.1 m", "30 m");
  private static final Limits<Power> MOTOR = Limits.of(Measure.POWER, "0.1 kW", "2000 kW");
  private static final Limits<Dimensionless> SERVICE_FACTOR =
      Limits.of(Measure.FRACTION, "1", "1.5");
  private static final Limits<Dimensionless> ROD_SHARE = Limits.of(Measure.FRACTION, "0 %", "80 %");
  private static final Limits<Dimensionless> ROD_TO_CRANK = Limits.of(Measure.FRACTION, "2", "100");
  private static final Limits<Dimensionless> PASSED = Limits.of(Measure.FRACTION, "0 %", "100 %");
  private static final Limits<Volume> VESSEL = Limits.of(Measure.VOLUME, "0.1 L", "20000 L");
  private static final Limits<Time> DWELL = Limits.of(Measure.TIME, "0 s", "60 s");
  private static final Limits<Time> CHANGEOVER = Limits.of(Measure.TIME, "0.01 s", "60 s");
  private static final List<String> PULSING =
      List.of(
          "acting",
          "rodShare",
          "rodToCrank",
          "pulsationPassed",
          "vesselGas",
          "cylinderDrive",
          "dwell",
          "changeover");
  private static final int MOST_PUMPS = 6;
  private static final int MOST_CYLINDERS = 9;

  private static final Map<String, Arrangement> ARRANGEMENTS =
      DesignReader.named(Arrangement.values(), a -> a.name().toLowerCase(Locale.ROOT));
  private static final Map<String, Boolean> ACTING =
      DesignReader.named(new Boolean[] {false, true}, both -> both ? "double" : "single");

  private static final Map<String, Boolean> DRIVES =
      DesignReader.named(new Boolean[] {false, true}, ram -> ram ? "hydraulic" : "crank");

  private PumpReader() {}

  static Optional<PumpSpec> pump(Section part) {
    Map<String, String> kinds = DesignReader.named(new String[] {"rotodynamic", "piston"}, k -> k);
    Optional<String> kind = part.requiredChoice("kind", kinds);
    Optional<Quantity<Dimensionless>> drive = part.orDefault("driveEfficiency", EFFICIENCY, "90 %");
    Optional<MotorSpec> motor = motor(part);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    // A wrong drive efficiency is noted already; the other fields are read all the same.
    Quantity<Dimensionless> efficiency = drive.orElseGet(() -> Measure.FRACTION.of(1));
    Optional<PumpSpec> pump =
        kind.get().equals("piston")
            ? piston(part, efficiency, motor)
            : rotodynamic(part, efficiency, motor);
    part.refuseUnknown();
    return pump;
  }

  private static Optional<MotorSpec> motor(Section part) {
    Optional<Quantity<Power>> rating = part.optional("motorRating", MOTOR);
    Optional<Quantity<Dimensionless>> factor = part.orDefault("serviceFactor", SERVICE_FACTOR, "1");
    return rating.isPresent() && factor.isPresent()
        ? Optional.of(new MotorSpec(rating.get(), factor.get()))
        : Optional.empty();
  }

  private static Optional<PumpSpec> rotodynamic(
      Section part, Quantity<Dimensionless> drive, Optional<MotorSpec> motor) {
    Optional<CurveSpec> curve = curve(part);
    Optional<Quantity<Length>> impeller = part.optional("impeller", IMPELLER);
    Optional<Integer> count =
        part.has("count") ? part.count("count", 1, MOST_PUMPS) : Optional.of(1);
    Optional<Arrangement> arrangement =
        part.has("arrangement")
            ? part.choice("arrangement", ARRANGEMENTS)
            : Optional.of(Arrangement.PARALLEL);
    Optional<Quantity<Dimensionless>> trim = part.orDefault("trim", TRIM, "100 %");
    Optional<Quantity<VolumetricFlowRate>> least = part.optional("minimumFlow", ALLOWED_FLOW);
    Optional<Quantity<VolumetricFlowRate>> most = part.optional("maximumFlow", ALLOWED_FLOW);
    boolean ordered =
        least.isEmpty()
            || most.isEmpty()
            || Measure.FLOW.si(most.get()) > Measure.FLOW.si(least.get());
    if (!ordered) {
      part.problem("maximumFlow", "must be above \"minimumFlow\"");
    }
    List<Section> rows = part.list("others");
    List<OtherPumpSpec> others = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      other(rows.get(i), "other pump " + (i + 1)).ifPresent(others::add);
    }
    Set<String> names = new HashSet<>();
    for (int i = 0; i < others.size() && others.size() == rows.size(); i++) {
      if (!names.add(others.get(i).name())) {
        rows.get(i).problem("name", "is the name of another pump too: give each its own");
      }
    }
    if (rows.size() >= MOST_PUMPS) {
      part.problem("others", "may hold up to " + (MOST_PUMPS - 1) + " pumps");
    }
    if (curve.isEmpty()
        || count.isEmpty()
        || arrangement.isEmpty()
        || trim.isEmpty()
        || !ordered
        || others.size() < rows.size()) {
      return Optional.empty();
    }
    RotodynamicSpec pump =
        new RotodynamicSpec(
            curve.get(),
            impeller,
            drive,
            motor,
            new StationSpec(count.get(), arrangement.get(), trim.get(), least, most, others));
    return together(part, pump) ? Optional.of(pump) : Optional.empty();
  }

  /** Says whether the pumps can work together, with every spare too. */
  private static boolean together(Section part, RotodynamicSpec pump) {
    try {
      pump.running();
      pump.spares().forEach(spare -> pump.clear(pump.withSpare(spare)));
      return true;
    } catch (IllegalArgumentException e) {
      part.problem(pump.station().others().isEmpty() ? "curve" : "others", e.getMessage());
      return false;
    }
  }

  private static Optional<OtherPumpSpec> other(Section row, String standard) {
    String name = row.text("name").orElse(standard);
    Optional<CurveSpec> curve = curve(row);
    Optional<Boolean> standby =
        row.has("standby")
            ? row.choice("standby", DesignReader.YES_NO)
            : Optional.of(Boolean.FALSE);
    Optional<Quantity<Length>> impeller = row.optional("impeller", IMPELLER);
    Optional<Quantity<Dimensionless>> worn = row.optional("wornHead", WORN);
    Optional<Quantity<Dimensionless>> drive = row.optional("driveEfficiency", EFFICIENCY);
    Optional<MotorSpec> motor = motor(row);
    row.refuseUnknown();
    return curve.isPresent() && standby.isPresent()
        ? Optional.of(
            new OtherPumpSpec(name, curve.get(), standby.get(), impeller, worn, drive, motor))
        : Optional.empty();
  }

  private static Optional<CurveSpec> curve(Section part) {
    Optional<Quantity<Frequency>> curveSpeed = part.required("curveSpeed", SPEED);
    Optional<Quantity<Frequency>> speed =
        part.has("speed") ? part.optional("speed", SPEED) : curveSpeed;
    List<Section> rows = part.list("curve");
    List<PumpSpec.CurvePoint> curve = new ArrayList<>();
    for (Section row : rows) {
      Optional<Quantity<VolumetricFlowRate>> flow = row.required("flow", CURVE_FLOW);
      Optional<Quantity<Length>> head = row.required("head", CURVE_HEAD);
      Optional<Quantity<Dimensionless>> efficiency = row.required("efficiency", CURVE_EFFICIENCY);
      Optional<Quantity<Length>> npsh = row.optional("npsh", NPSH);
      row.refuseUnknown();
      if (flow.isPresent() && head.isPresent() && efficiency.isPresent()) {
        curve.add(new PumpSpec.CurvePoint(flow.get(), head.get(), efficiency.get(), npsh));
      }
    }
    boolean good = checkCurve(part, rows, curve);
    if (curve.stream().filter(point -> point.npsh().isPresent()).count() == 1) {
      part.problem("curve", "needs \"npsh\" at two points or more, or at none");
    }
    return good && curveSpeed.isPresent() && speed.isPresent()
        ? Optional.of(new CurveSpec(curve, curveSpeed.get(), speed.get()))
        : Optional.empty();
  }

  private static boolean checkCurve(
      Section part, List<Section> rows, List<PumpSpec.CurvePoint> curve) {
    boolean good = true;
    if (rows.size() < 3) {
      part.problem("curve", "needs three points or more but has " + rows.size());
      good = false;
    }
    if (curve.size() < rows.size()) {
      return false;
    }
    for (int i = 0; i < curve.size(); i++) {
      if (Measure.FLOW.si(curve.get(i).flow()) > 0
          && !(DesignReader.number(curve.get(i).efficiency()) > 0)) {
        rows.get(i).problem("efficiency", "must be above 0 % wherever the pump delivers flow");
      }
    }
    for (int i = 1; i < curve.size(); i++) {
      double before = Measure.FLOW.si(curve.get(i - 1).flow());
      double flow = Measure.FLOW.si(curve.get(i).flow());
      if (!(flow > before)) {
        rows.get(i)
            .problem(
                "flow",
                "must be above the flow of the point before it, "
                    + Measure.FLOW.write(curve.get(i - 1).flow()));
        good = false;
      }
    }
    return good;
  }

  private static Optional<PumpSpec> piston(
      Section part, Quantity<Dimensionless> drive, Optional<MotorSpec> motor) {
    Optional<Quantity<Volume>> displacement = part.required("displacement", DISPLACEMENT);
    Optional<Quantity<Frequency>> strokes = part.required("strokeRate", STROKES);
    Optional<Quantity<Dimensionless>> volumetric =
        part.required("volumetricEfficiency", EFFICIENCY);
    Optional<Quantity<Dimensionless>> mechanical =
        part.orDefault("mechanicalEfficiency", EFFICIENCY, "85 %");
    Optional<Quantity<Pressure>> limit = part.required("pressureLimit", DesignReader.RATING);
    Optional<Quantity<Length>> npsh = part.optional("npsh", NPSH);
    Optional<PulsationSpec> pulsation = pulsation(part, strokes);
    return displacement.isPresent()
            && strokes.isPresent()
            && volumetric.isPresent()
            && mechanical.isPresent()
            && limit.isPresent()
        ? Optional.of(
            new PumpSpec.PistonSpec(
                displacement.get(),
                strokes.get(),
                volumetric.get(),
                mechanical.get(),
                limit.get(),
                drive,
                motor,
                pulsation,
                npsh))
        : Optional.empty();
  }

  private static Optional<PulsationSpec> pulsation(
      Section part, Optional<Quantity<Frequency>> strokes) {
    Optional<Integer> cylinders = part.count("cylinders", 1, MOST_CYLINDERS);
    Optional<Boolean> acting =
        part.has("acting") ? part.choice("acting", ACTING) : Optional.of(Boolean.FALSE);
    Optional<Quantity<Dimensionless>> rod = part.orDefault("rodShare", ROD_SHARE, "0 %");
    Optional<Quantity<Dimensionless>> crank = part.orDefault("rodToCrank", ROD_TO_CRANK, "6");
    Optional<Quantity<Dimensionless>> passed = part.orDefault("pulsationPassed", PASSED, "100 %");
    Optional<Quantity<Volume>> gas = part.optional("vesselGas", VESSEL);
    Optional<Boolean> hydraulic =
        part.has("cylinderDrive")
            ? part.choice("cylinderDrive", DRIVES)
            : Optional.of(Boolean.FALSE);
    Optional<Quantity<Time>> dwell = part.orDefault("dwell", DWELL, "0 s");
    Optional<Quantity<Time>> changeover = part.orDefault("changeover", CHANGEOVER, "0.1 s");
    if (!part.has("cylinders")) {
      for (String field : PULSING) {
        if (part.has(field)) {
          part.problem(field, "says nothing without \"cylinders\"");
        }
      }
    }
    if (part.has("pulsationPassed") && part.has("vesselGas")) {
      part.problem("vesselGas", "gives what \"pulsationPassed\" says too: give one of them");
    }
    boolean ram = hydraulic.orElse(false);
    for (String field : ram ? List.of("rodToCrank") : List.of("dwell", "changeover")) {
      if (part.has(field)) {
        part.problem(
            field, ram ? "belongs to a crank" : "belongs to a pump driven by hydraulic cylinders");
      }
    }
    if (cylinders.isEmpty()
        || acting.isEmpty()
        || rod.isEmpty()
        || crank.isEmpty()
        || passed.isEmpty()
        || dwell.isEmpty()
        || changeover.isEmpty()) {
      return Optional.empty();
    }
    Optional<PumpSpec.RamSpec> rams =
        ram ? Optional.of(new PumpSpec.RamSpec(dwell.get(), changeover.get())) : Optional.empty();
    if (ram && !rams(part, cylinders.get(), acting.get(), rams.get(), strokes)) {
      return Optional.empty();
    }
    return Optional.of(
        new PulsationSpec(
            cylinders.get(), acting.get(), rod.get(), crank.get(), passed.get(), gas, rams));
  }

  /** Says whether the cylinders find the time for their strokes between the pauses. */
  private static boolean rams(
      Section part,
      int cylinders,
      boolean doubleActing,
      PumpSpec.RamSpec rams,
      Optional<Quantity<Frequency>> strokes) {
    if (cylinders > 2 || cylinders == 2 && doubleActing) {
      part.problem(
          "cylinders",
          "of a pump driven by hydraulic cylinders must be one, or two that act singly by turns");
      return false;
    }
    if (strokes.isPresent()) {
      double rate = Measure.FREQUENCY.si(strokes.get());
      if (!HydraulicDrive.fits(
          Measure.TIME.si(rams.dwell()) * rate, Measure.TIME.si(rams.changeover()) * rate)) {
        part.problem(
            "dwell",
            "and twice the changeover leave no time for the strokes: together they may take half a"
                + " cycle, "
                + UnitSystem.METRIC.show(Kind.TIME, HydraulicDrive.STROKE / rate));
        return false;
      }
    }
    return true;
  }
}
