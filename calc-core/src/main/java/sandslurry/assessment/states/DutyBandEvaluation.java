package sandslurry.assessment.states;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.service.ServiceResult.DutyRow;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.station.PumpEvaluation.Change;
import sandslurry.assessment.station.PumpInLiquid;
import sandslurry.assessment.station.PumpResult;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.design.station.PumpSpec.RunningPump;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.derating.RepresentativeViscosity;
import sandslurry.pump.derating.SolidsDerating;

/**
 * The duty by every derating for sand and every viscosity of the liquid that makes a difference,
 * all else as designed.
 *
 * @param model model
 * @param spec spec
 */
record DutyBandEvaluation(LineModel model, RotodynamicSpec spec) {
  List<DutyRow> rows() {
    PumpInLiquid liquid = new PumpEvaluation(model).liquid();
    boolean sandThere =
        model.materials().sandFraction(model.design().oneLine().flow().designM3ps()) > 0;
    List<RunningPump> pumps = spec.pumps();
    boolean thick =
        pumps.stream()
            .flatMap(pump -> liquid.viscosities(pump).stream())
            .anyMatch(seen -> !seen.correction().none());
    if (!thick && !sandThere) {
      return List.of();
    }
    List<Optional<SolidsDerating>> solids =
        sandThere
            ? liquid.deratings(pumps).stream().map(Optional::of).toList()
            : List.of(Optional.empty());
    List<Optional<RepresentativeViscosity>> viscosities =
        thick && !(liquid.newtonian())
            ? Arrays.stream(RepresentativeViscosity.values()).map(Optional::of).toList()
            : List.of(Optional.empty());
    List<DutyRow> rows = new ArrayList<>();
    for (Optional<SolidsDerating> model : solids) {
      for (Optional<RepresentativeViscosity> viscosity : viscosities) {
        PumpInLiquid.Choice choice = new PumpInLiquid.Choice(model, false, viscosity);
        rows.add(row(choice));
      }
    }
    return rows;
  }

  private DutyRow row(PumpInLiquid.Choice choice) {
    PumpEvaluation evaluation =
        new PumpEvaluation(model, new Change(Optional.empty(), choice, OptionalDouble.empty()));
    RunningPump first = spec.pumps().get(0);
    PumpInLiquid liquid = evaluation.liquid();
    Optional<PumpInLiquid.Seen> seen = liquid.viscosity(first, choice);
    PumpResult result = evaluation.result();
    OptionalDouble flow =
        result
            .governing()
            .map(duty -> OptionalDouble.of(duty.flowM3ps()))
            .orElseGet(OptionalDouble::empty);
    Optional<RunPoint> worst =
        flow.isPresent() && model.materials().flows(flow.getAsDouble())
            ? Optional.of(
                RunPoint.worst(
                    model.runs(
                        flow.getAsDouble(), model.materials().sandFraction(flow.getAsDouble()))))
            : Optional.empty();
    return new DutyRow(
        choice.solids().map(SolidsDerating::name),
        choice.viscosity().or(() -> seen.map(PumpInLiquid.Seen::which)),
        result.headRatio(),
        seen.map(s -> s.correction().flowRatio()).orElse(1.0),
        seen.map(s -> s.correction().efficiencyRatio()).orElse(1.0),
        flow,
        worst.map(run -> run.pipe().spec().name()),
        worst
            .map(RunPoint::leastVelocityMps)
            .map(OptionalDouble::of)
            .orElseGet(OptionalDouble::empty),
        worst.map(RunPoint::toPassMps).orElseGet(OptionalDouble::empty),
        worst.map(RunPoint::severity).orElse(Severity.FAIL),
        choice
                .solids()
                .map(m -> m == liquid.derating(first, PumpInLiquid.Choice.RULE).model())
                .orElse(true)
            && choice
                .viscosity()
                .map(
                    v ->
                        liquid
                            .viscosity(first, PumpInLiquid.Choice.RULE)
                            .map(s -> s.which() == v)
                            .orElse(true))
                .orElse(true));
  }
}
