package sandslurry.report.section;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.materials.SettlingResult;
import sandslurry.material.liquid.Carrier;
import sandslurry.material.liquid.RheogramFit;
import sandslurry.material.sand.Gradation;
import sandslurry.plant.Range;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;

/** Sand, carrier and mixture as they were understood, and how grains settle in them. */
record MaterialSection(Assessment assessment, Page page) implements SectionWriter {
  /** What is shown of the slurry at each flow rate. */
  static final List<Column<LineState>> FLOWS =
      List.of(
          Column.text("flow rate", state -> state.flowCase().words()),
          Column.of("value", Kind.FLOW, LineState::flowM3ps, "flow-rate"),
          Column.of("sand by volume", Kind.PERCENT, LineState::sandFraction, "sand-by-volume"),
          Column.of("sand by mass", Kind.PERCENT, LineState::massFraction, "sand-by-mass"),
          Column.of("sand moved", Kind.MASS_FLOW, LineState::sandRateKgps, "sand-rate"),
          Column.of(
              "density of the slurry",
              Kind.DENSITY,
              LineState::mixtureDensityKgM3,
              "slurry-density"),
          Column.spread(
              "total dynamic head",
              Kind.HEAD,
              state -> {
                Range head = state.headByModels();
                return Optional.of(new Column.Spread(head.low(), head.base(), head.high()));
              },
              "total-dynamic-head"));

  void write() {
    inputs();
    settling();
    assessment.fit().ifPresent(this::fit);
  }

  private void inputs() {
    heading(1, "Sand, liquid and slurry");
    Gradation gradation = assessment.design().sand().gradation();
    facts(
        assessment.carrier(),
        List.of(
            Column.text("sand", c -> assessment.design().sand().source()),
            Column.of("d50 of the whole sand", Kind.GRAIN, c -> gradation.d50M()),
            Column.of("d85 of the whole sand", Kind.GRAIN, c -> gradation.d85M()),
            Column.of(
                "finer than " + show(Kind.GRAIN, Gradation.FINES_BOUNDARY_M),
                Kind.PERCENT,
                c -> gradation.fractionPassing(Gradation.FINES_BOUNDARY_M)),
            Column.of(
                "density of the mineral",
                Kind.DENSITY,
                c -> assessment.design().sand().densityKgM3()),
            Column.text("liquid", Carrier::description),
            Column.of("temperature", Kind.TEMPERATURE, Carrier::temperatureK),
            Column.of("density of the liquid", Kind.DENSITY, Carrier::densityKgM3),
            Column.text("rheology of the liquid", c -> c.rheology().describe(units()))));
  }

  /** What applies, and between what values the others that hold for this grain lie. */
  private void settling() {
    heading(2, "Settling velocity of the grains in the liquid at rest");
    tableOf(
        assessment.settling().sizes(),
        List.of(
            Column.text("grain", size -> size.name() + ", " + show(Kind.GRAIN, size.sizeM())),
            Column.text(
                "correlation that applies",
                size ->
                    size.chosen().map(c -> c.model().name()).orElse("held by the yield stress")),
            Column.text(head("settles", Kind.FALL), this::settles),
            Column.text(
                "others within their range",
                size -> size.chosen().isPresent() ? others(size) : "-"),
            Column.maybe(
                "hindered to",
                Kind.NUMBER,
                size ->
                    size.chosen().isPresent()
                        ? OptionalDouble.of(size.hinderedFactor())
                        : OptionalDouble.empty())));
  }

  private String settles(SettlingResult.OfSize size) {
    if (size.chosen().isEmpty()) {
      return "0";
    }
    return size.velocities().stream()
        .filter(v -> v.model().id().equals(size.chosen().get().model().id()))
        .findFirst()
        .map(v -> number(Kind.FALL, v.estimate().value()))
        .orElse("-");
  }

  private String others(SettlingResult.OfSize size) {
    DoubleSummaryStatistics inside =
        size.velocities().stream()
            .filter(v -> v.estimate().inRange())
            .mapToDouble(v -> v.estimate().value())
            .summaryStatistics();
    return inside.getCount() == 0
        ? "none"
        : units().span(Kind.FALL, inside.getMin(), inside.getMax()) + " by " + inside.getCount();
  }

  private void fit(RheogramFit fit) {
    heading(2, "Fit of the viscometer readings");
    tableOf(
        fit.candidates(),
        List.of(
            Column.text("law", RheogramFit.Candidate::model),
            Column.text("residual [Pa]", c -> fitted(c, c.rmsePa())),
            Column.text("criterion", c -> fitted(c, c.criterion())),
            Column.text(
                "parameters with standard error",
                c -> c.rheology().isPresent() ? parameters(c) : c.remark())));
    List<List<String>> residuals = new ArrayList<>();
    for (int i = 0; i < fit.readings().size(); i++) {
      residuals.add(
          List.of(
              number(Kind.SHEAR_RATE, fit.readings().get(i).shearRatePs()),
              number(Kind.STRESS, fit.readings().get(i).shearStressPa()),
              String.format(Locale.ROOT, "%.3g", fit.best().residualsPa().get(i))));
    }
    table(
        List.of(
            head("shear rate", Kind.SHEAR_RATE),
            head("shear stress", Kind.STRESS),
            "measured less fitted [Pa]"),
        residuals);
    paragraph(
        "The law of the least criterion is taken unless the design names another. Standard errors"
            + " give the scatter of these readings, not that between days or farms.");
  }

  private static String fitted(RheogramFit.Candidate candidate, double value) {
    return candidate.rheology().isPresent() ? String.format(Locale.ROOT, "%.3g", value) : "-";
  }

  private static String parameters(RheogramFit.Candidate candidate) {
    return candidate.parameters().stream()
        .map(
            p ->
                String.format(
                    Locale.ROOT,
                    "%s = %.4g +/- %.2g %s",
                    p.symbol(),
                    p.value(),
                    p.standardError(),
                    p.unit()))
        .map(String::strip)
        .collect(Collectors.joining(", "));
  }
}
