package sandslurry.report.section;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.materials.SettlingResult;
import sandslurry.design.Design;
import sandslurry.material.liquid.RheogramFit;
import sandslurry.material.sand.Gradation;
import sandslurry.report.block.Block;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;

/** Sand, carrier and mixture as they were understood, and how grains settle in them. */
final class MaterialSection extends SectionWriter {
  /** What is shown of the slurry at each flow rate. */
  static final List<Column<LineState>> FLOWS =
      List.of(
          Column.text("flow rate", state -> state.flowCase().words()),
          of("value", Kind.FLOW, LineState::flow).as("flow-rate"),
          of("sand by volume", Kind.PERCENT, LineState::sandFraction).as("sand-by-volume"),
          of("sand by mass", Kind.PERCENT, LineState::massFraction).as("sand-by-mass"),
          of("sand moved", Kind.MASS_FLOW, LineState::sandRate).as("sand-rate"),
          of("density of the slurry", Kind.DENSITY, LineState::mixtureDensity).as("slurry-density"),
          of("total dynamic head", Kind.HEAD, LineState::systemHead).as("total-dynamic-head"));

  private static <Q extends Quantity<Q>> Column<LineState> of(
      String label, Kind<Q> kind, Function<LineState, Quantity<Q>> quantity) {
    return Column.of(label, kind, state -> kind.measure().si(quantity.apply(state)));
  }

  private final Assessment assessment;
  private final Design design;

  private MaterialSection(Assessment assessment) {
    super(assessment.design().units());
    this.assessment = assessment;
    this.design = assessment.design();
  }

  static List<Block> of(Assessment assessment) {
    MaterialSection section = new MaterialSection(assessment);
    section.inputs();
    assessment.fit().ifPresent(section::fit);
    section.settling();
    return section.blocks();
  }

  private void inputs() {
    heading(1, "Sand, liquid and slurry");
    Gradation gradation = design.sand().gradation();
    List<List<String>> rows = new ArrayList<>();
    rows.add(row("sand", design.sand().source()));
    rows.add(row("d50 of the whole sand", units.show(Kind.GRAIN, gradation.d50M())));
    rows.add(row("d85 of the whole sand", units.show(Kind.GRAIN, gradation.d85M())));
    rows.add(
        row(
            "finer than " + units.show(Kind.GRAIN, Gradation.FINES_BOUNDARY_M),
            units.show(Kind.PERCENT, gradation.fractionPassing(Gradation.FINES_BOUNDARY_M))));
    rows.add(row("density of the mineral", show(Kind.DENSITY, design.sand().density())));
    rows.add(row("liquid", assessment.carrier().description()));
    rows.add(row("temperature", units.show(Kind.TEMPERATURE, assessment.carrier().temperatureK())));
    rows.add(
        row("density of the liquid", units.show(Kind.DENSITY, assessment.carrier().densityKgM3())));
    rows.add(
        row(
            "rheology of the liquid",
            assessment.carrier().rheology().describe(assessment.design().units())));
    add(new Block.Table(List.of("what", "value"), rows));
    assessment
        .line()
        .ifPresent(
            line -> {
              if (line.states().isEmpty()) {
                return;
              }
              tableOf(line.states(), FLOWS);
            });
  }

  /** What applies, and between what values the others that hold for this grain lie. */
  private void settling() {
    heading(2, "Settling velocity of the grains in the liquid at rest");
    List<List<String>> rows = new ArrayList<>();
    for (SettlingResult.OfSize size : assessment.settling().sizes()) {
      String name = size.name() + ", " + units.show(Kind.GRAIN, size.sizeM());
      if (size.chosen().isEmpty()) {
        rows.add(List.of(name, "held by the yield stress", "0", "-", "-"));
        continue;
      }
      SettlingResult.Chosen chosen = size.chosen().get();
      String applies =
          size.velocities().stream()
              .filter(v -> v.model().id().equals(chosen.model().id()))
              .findFirst()
              .map(v -> units.number(Kind.FALL, v.estimate().value()))
              .orElse("-");
      rows.add(
          List.of(
              name,
              chosen.model().name(),
              applies,
              others(size),
              units.number(Kind.NUMBER, size.hinderedFactor())));
    }
    table(
        List.of(
            "grain",
            "correlation that applies",
            head("settles", Kind.FALL),
            "others within their range",
            "hindered to"),
        rows);
  }

  private String others(SettlingResult.OfSize size) {
    DoubleSummaryStatistics inside =
        size.velocities().stream()
            .filter(v -> v.estimate().inRange())
            .mapToDouble(v -> v.estimate().value())
            .summaryStatistics();
    return inside.getCount() == 0
        ? "none"
        : units.number(Kind.FALL, inside.getMin())
            + " to "
            + units.number(Kind.FALL, inside.getMax())
            + " by "
            + inside.getCount();
  }

  private void fit(RheogramFit fit) {
    heading(2, "Fit of the viscometer readings");
    List<List<String>> rows = new ArrayList<>();
    for (RheogramFit.Candidate candidate : fit.candidates()) {
      String parameters =
          candidate.parameters().stream()
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
      rows.add(
          List.of(
              candidate.model(),
              candidate.rheology().isPresent()
                  ? String.format(Locale.ROOT, "%.3g", candidate.rmsePa())
                  : "-",
              candidate.rheology().isPresent()
                  ? String.format(Locale.ROOT, "%.3g", candidate.criterion())
                  : "-",
              candidate.rheology().isPresent() ? parameters : candidate.remark()));
    }
    add(
        new Block.Table(
            List.of("law", "residual [Pa]", "criterion", "parameters with standard error"), rows));
    List<List<String>> residuals = new ArrayList<>();
    for (int i = 0; i < fit.readings().size(); i++) {
      residuals.add(
          List.of(
              units.number(Kind.SHEAR_RATE, fit.readings().get(i).shearRatePs()),
              units.number(Kind.STRESS, fit.readings().get(i).shearStressPa()),
              String.format(Locale.ROOT, "%.3g", fit.best().residualsPa().get(i))));
    }
    add(
        new Block.Table(
            List.of(
                head("shear rate", Kind.SHEAR_RATE),
                head("shear stress", Kind.STRESS),
                "measured less fitted [Pa]"),
            residuals));
    paragraph(
        "The law of the least criterion is taken unless the design names another. Standard errors"
            + " give the scatter of these readings, not that between days or farms.");
  }
}
