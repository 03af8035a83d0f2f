package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Bound;
import sandslurry.design.criteria.Criteria;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Severity;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/**
 * Findings on the inputs: ranges of the data behind them, and their uncertainty.
 *
 * @param materials its liquid, sand and mixture
 * @param line the line; empty when the design has none
 * @param findings takes what is found
 */
public record DataFindings(Materials materials, Optional<LineResult> line, Findings findings)
    implements FindingWriter {
  private static final DepositionRule USUAL = DepositionRule.DEFAULT;

  /** The default of the criterion on pressure. */
  private static final double USUAL_PRESSURE_SHARE = 0.72;

  /**
   * At or below this temperature frost is spoken of, and a caution where it reaches the line
   * (common practice, no source).
   */
  private static final double FREEZING_RISK_C = 2;

  /**
   * Findings on the data: properties outside their measurements, assumptions, frost, weak criteria,
   * shear rates.
   */
  public void all() {
    for (Bound.Excess excess : materials.carrier().excesses()) {
      // Thinner than measured is between a measurement and water.
      Severity severity = excess.value() < excess.bound().low() ? Severity.NOTE : Severity.CAUTION;
      found("liquid-outside", severity, "carrier")
          .with("excess", excess::describe)
          .why("liquid-outside")
          .cure("measure-viscosity")
          .add();
    }
    for (String note : materials.carrier().notes()) {
      found("liquid-note", Severity.NOTE, "carrier").with("note", note).add();
    }
    for (String note : materials.gradation().notes()) {
      found("sand-note", Severity.NOTE, "sand").with("note", note).add();
    }
    freezing();
    weaker();
    line.ifPresent(this::shearRates);
  }

  /** A pass by criteria weaker than usual is none; each of them is named. */
  private void weaker() {
    Criteria criteria = materials.design().criteria();
    List<Function<UnitSystem, String>> weaker = new ArrayList<>();
    double share = criteria.marginFraction();
    double least = criteria.marginVelocityMps();
    double pressure = criteria.pressureShare();
    double floor = criteria.floorShare();
    if (share < USUAL.marginFraction()) {
      weaker.add(units -> "margin on velocity " + units.show(Kind.PERCENT, share));
    }
    if (least < USUAL.marginMps()) {
      weaker.add(units -> "least margin on velocity " + units.show(Kind.VELOCITY, least));
    }
    if (!criteria.gradedSearch()) {
      weaker.add(units -> "deposition velocity of d50 alone");
    }
    new DepositionRule(0, 0, true, criteria.roles())
        .demoted()
        .forEach(model -> weaker.add(units -> "without " + model.name()));
    if (pressure > USUAL_PRESSURE_SHARE) {
      weaker.add(units -> "use of the pressure rating " + units.show(Kind.PERCENT, pressure));
    }
    if (floor > SandCarriage.DEFAULT_TOLERATED_SHARE) {
      weaker.add(units -> "sand on a laminar floor " + units.show(Kind.PERCENT, floor));
    }
    if (!weaker.isEmpty()) {
      found("weaker-criteria", Severity.CAUTION, "criteria")
          .with(
              "weaker",
              units ->
                  weaker.stream().map(one -> one.apply(units)).collect(Collectors.joining(", ")))
          .with("usualMargin", Kind.PERCENT, USUAL.marginFraction())
          .with("usualLeast", Kind.VELOCITY, USUAL.marginMps())
          .with("usualPressure", Kind.PERCENT, USUAL_PRESSURE_SHARE)
          .with("usualFloor", Kind.PERCENT, SandCarriage.DEFAULT_TOLERATED_SHARE)
          .why("usual-criteria")
          .cure("usual-criteria")
          .add();
    }
  }

  private void freezing() {
    double temperature = materials.carrier().temperatureK();
    if (temperature > Measure.TEMPERATURE.si(Measure.TEMPERATURE.of(FREEZING_RISK_C, "degC"))) {
      return;
    }
    boolean frost =
        materials.design().line().map(line -> line.flow().extremes().frost()).orElse(false);
    found("near-freezing", frost ? Severity.CAUTION : Severity.NOTE, "carrier")
        .with("temperature", Kind.TEMPERATURE, temperature)
        .why("near-freezing")
        .cure("keep-from-frost")
        .add();
  }

  /**
   * Finds whether the wall shears the liquid more or less than it was measured at. A table by
   * solids is tried over its whole scatter, which is wider than the error of extrapolating it; a
   * fit of readings has nothing that covers it.
   */
  private void shearRates(LineResult line) {
    Optional<Bound> measured = materials.carrier().shearRates();
    if (measured.isEmpty() || line.states().isEmpty()) {
      return;
    }
    List<Double> rates =
        line.states().stream()
            .flatMap(s -> s.runs().stream())
            .map(r -> r.flow().wallShearRatePs())
            .sorted()
            .toList();
    double least = rates.get(0);
    double most = rates.get(rates.size() - 1);
    if (measured.get().check(least).isEmpty() && measured.get().check(most).isEmpty()) {
      return;
    }
    found(
            "rheology-extrapolated",
            materials.design().carrier().fromReadings().isPresent()
                ? Severity.CAUTION
                : Severity.NOTE,
            "carrier")
        .with("leastShear", Kind.SHEAR_RATE, least)
        .with("mostShear", Kind.SHEAR_RATE, most)
        .with("measuredFrom", Kind.SHEAR_RATE, measured.get().low())
        .with("measuredTo", Kind.SHEAR_RATE, measured.get().high())
        .why("shear-rates")
        .cure("measure-shear-rates")
        .add();
  }
}
