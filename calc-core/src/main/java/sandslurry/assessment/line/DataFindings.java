package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Bound;
import sandslurry.design.Design;
import sandslurry.design.criteria.Criteria;
import sandslurry.design.material.CarrierSpec.ReadingsSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** What is to be said of the inputs: ranges of the data behind them, and their uncertainty. */
public final class DataFindings {
  private static final DepositionRule USUAL = DepositionRule.DEFAULT;

  /** The default of the criterion on pressure. */
  private static final double USUAL_PRESSURE_SHARE = 0.72;

  /**
   * At or below this temperature frost is spoken of, and a caution where it reaches the line
   * (common practice, no source).
   */
  private static final double FREEZING_RISK_C = 2;

  private DataFindings() {}

  /**
   * Findings on the data: properties outside their measurements, assumptions, frost, weak criteria,
   * shear rates.
   *
   * @param design the design
   * @param materials its liquid, sand and mixture
   * @param line the line; empty when the design has none
   * @return the findings
   */
  public static List<Finding> of(Design design, Materials materials, Optional<LineResult> line) {
    UnitSystem units = design.units();
    List<Finding> findings = new ArrayList<>();
    materials
        .carrier()
        .excesses()
        .forEach(
            excess ->
                findings.add(
                    new Finding(
                        // Thinner than measured lies between a measurement and water.
                        excess.value() < excess.bound().low() ? Severity.NOTE : Severity.CAUTION,
                        Topic.DATA,
                        "carrier",
                        "The liquid lies outside the measurements behind its properties.",
                        excess.describe(units) + ".",
                        "Measure its viscosity.")));
    materials
        .carrier()
        .notes()
        .forEach(
            note -> findings.add(new Finding(Severity.NOTE, Topic.DATA, "carrier", note, "", "")));
    materials
        .gradation()
        .notes()
        .forEach(
            note -> findings.add(new Finding(Severity.NOTE, Topic.DATA, "sand", note, "", "")));
    freezing(design, materials).ifPresent(findings::add);
    weaker(design).ifPresent(findings::add);
    line.flatMap(l -> shearRates(design, materials, l)).ifPresent(findings::add);
    return findings;
  }

  /** A pass by criteria weaker than usual is none; each of them is named. */
  private static Optional<Finding> weaker(Design design) {
    Criteria criteria = design.criteria();
    UnitSystem units = design.units();
    List<String> weaker = new ArrayList<>();
    double share = Measure.FRACTION.si(criteria.marginFraction());
    double least = Measure.SPEED.si(criteria.marginVelocity());
    double pressure = Measure.FRACTION.si(criteria.pressureShare());
    double floor = Measure.FRACTION.si(criteria.floorShare());
    if (share < USUAL.marginFraction()) {
      weaker.add("margin on velocity " + units.show(Kind.PERCENT, share));
    }
    if (least < USUAL.marginMps()) {
      weaker.add("least margin on velocity " + units.show(Kind.VELOCITY, least));
    }
    if (!criteria.gradedSearch()) {
      weaker.add("deposition velocity of d50 alone");
    }
    new DepositionRule(0, 0, true, criteria.roles())
        .demoted()
        .forEach(model -> weaker.add("without " + model.name()));
    if (pressure > USUAL_PRESSURE_SHARE) {
      weaker.add("use of the pressure rating " + units.show(Kind.PERCENT, pressure));
    }
    if (floor > SandCarriage.DEFAULT_TOLERATED_SHARE) {
      weaker.add("sand on a laminar floor " + units.show(Kind.PERCENT, floor));
    }
    return weaker.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Finding(
                Severity.CAUTION,
                Topic.DATA,
                "criteria",
                "The criteria are weaker than the defaults: " + String.join(", ", weaker) + ".",
                "The defaults are a margin of "
                    + units.show(Kind.PERCENT, USUAL.marginFraction())
                    + " and "
                    + units.show(Kind.VELOCITY, USUAL.marginMps())
                    + " at least, every part of the rule, "
                    + units.show(Kind.PERCENT, USUAL_PRESSURE_SHARE)
                    + " of the pressure rating and "
                    + units.show(Kind.PERCENT, SandCarriage.DEFAULT_TOLERATED_SHARE)
                    + " of the sand on a laminar floor.",
                "Judge by the defaults, or have a reason for each and a practitioner's consent."));
  }

  private static Optional<Finding> freezing(Design design, Materials materials) {
    double temperature = materials.carrier().temperatureK();
    if (temperature > Measure.TEMPERATURE.si(Measure.TEMPERATURE.of(FREEZING_RISK_C, "degC"))) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
            design.flow().map(flow -> flow.extremes().frost()).orElse(false)
                ? Severity.CAUTION
                : Severity.NOTE,
            Topic.DATA,
            "carrier",
            "The liquid is close to freezing: protect from frost what stands still.",
            "It is at "
                + design.units().show(Kind.TEMPERATURE, temperature)
                + "; dead legs, valves above ground and the skin of lanes freeze before the line"
                + " does.",
            "Bury lines below frost, leave no dead legs, and drain or flush what stands idle."));
  }

  /**
   * Says when the wall shears the liquid more or less than it was measured at. A table by solids is
   * tried over its whole scatter, which is wider than the error of extrapolating it; a fit of
   * readings has nothing that covers it.
   */
  private static Optional<Finding> shearRates(Design design, Materials materials, LineResult line) {
    UnitSystem units = design.units();
    Optional<Bound> measured = materials.carrier().shearRates();
    if (measured.isEmpty() || line.states().isEmpty()) {
      return Optional.empty();
    }
    List<Double> rates =
        line.states().stream()
            .flatMap(s -> s.runs().stream())
            .map(r -> Measure.SHEAR_RATE.si(r.wallShearRate()))
            .sorted()
            .toList();
    double least = rates.get(0);
    double most = rates.get(rates.size() - 1);
    if (measured.get().check(least).isEmpty() && measured.get().check(most).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
            design.carrier() instanceof ReadingsSpec ? Severity.CAUTION : Severity.NOTE,
            Topic.DATA,
            "carrier",
            "The walls shear the liquid outside the shear rates at which its rheology was"
                + " measured: there it is an extrapolation.",
            "At the walls the shear rate is "
                + units.show(Kind.SHEAR_RATE, least)
                + " to "
                + units.show(Kind.SHEAR_RATE, most)
                + "; measured was from "
                + units.show(Kind.SHEAR_RATE, measured.get().low())
                + " to "
                + units.show(Kind.SHEAR_RATE, measured.get().high())
                + ".",
            "Measure the liquid at the shear rates of the line."));
  }
}
