package sandslurry.report;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.RunState;
import sandslurry.correlation.Correlation;
import sandslurry.design.plant.PlantSpec;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.separation.capture.CaptureRelations;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.transport.friction.NonNewtonianModels;

/** The correlations that decide an assessment and whose coefficients are from memory. */
final class FromMemory {
  private final Set<String> named = new LinkedHashSet<>();

  private FromMemory() {}

  /**
   * The sentence that names them.
   *
   * @param assessment what came of a design
   * @return each with what it decides; empty when none decides
   */
  static Optional<String> sentence(Assessment assessment) {
    FromMemory all = new FromMemory();
    Stream.concat(Stream.of(assessment), assessment.lines().values().stream()).forEach(all::line);
    assessment.lane().ifPresent(lane -> all.add("settling", CaptureRelations.TURBULENT));
    assessment.design().plant().ifPresent(all::plant);
    String named = String.join("; ", all.named);
    return named.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Governing coefficients from memory, unverified: "
                + named
                + (named.endsWith(".") ? "" : "."));
  }

  private void line(Assessment assessment) {
    assessment.line().ifPresent(line -> line(line, assessment));
    assessment
        .pump()
        .flatMap(pump -> pump.deratedBy())
        .ifPresent(model -> add("pump head with sand", model));
  }

  private void line(LineResult line, Assessment assessment) {
    line.worst().stream()
        .filter(run -> run.regime() == Regime.TURBULENT)
        .flatMap(run -> run.deposition().stream())
        .max(Comparator.comparingDouble(FromMemory::nearness))
        .filter(judged -> !judged.lifting())
        .ifPresent(judged -> add("deposition velocity", judged.limiting().model()));
    runs(line).findFirst().ifPresent(run -> add("head loss", run.headLossModels().get(0).model()));
    if (!assessment.carrier().rheology().isNewtonian()
        && runs(line).anyMatch(run -> run.regime() != Regime.LAMINAR)) {
      add("friction", NonNewtonianModels.TURBULENT.all().get(0));
    }
  }

  private void plant(PlantSpec plant) {
    add("manure", plant.production());
    for (PlantUnit unit : plant.units()) {
      String what = unit.role() == PlantUnit.Role.SPINS ? "cut size" : "settling";
      unit.decidedBy().ifPresent(model -> add(what, model));
    }
  }

  private static Stream<RunState> runs(LineResult line) {
    return line.states().stream()
        .flatMap(state -> state.runs().stream())
        .filter(run -> run.deposition().isPresent());
  }

  /** How near a run is to what it needs: the nearest is the one that the line is judged by. */
  private static double nearness(DepositionJudgement judged) {
    return judged.velocityToPassMps() / judged.velocityMps();
  }

  private void add(String what, Correlation model) {
    if (model.citation().caveat().isPresent()) {
      named.add(what + " by " + model.name());
    }
  }
}
