package sandslurry.study;

import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Design;
import sandslurry.design.DesignDocument;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** Flow rates that suit a pipe. */
final class FlowOfPipe {
  private static final double DESIGN_OVER_LOWEST = 1.1;
  private static final double MAXIMUM_OVER_LOWEST = 1.2;

  /**
   * The lowest flow rate of a line with a concentration of its own moves a little with its flow.
   */
  private static final int ROUNDS = 2;

  private FlowOfPipe() {}

  static Optional<DesignDocument> of(DesignDocument document, StandardPipe pipe) {
    DesignDocument typed = document;
    for (int i = 0; i < ROUNDS; i++) {
      Optional<Design> design = Sizing.laid(typed, pipe).read().design();
      if (design.isEmpty()) {
        return Optional.of(document);
      }
      OptionalDouble lowest =
          Evaluation.assess(design.get())
              .line()
              .flatMap(line -> line.leastSafeFlow())
              .map(flow -> OptionalDouble.of(Measure.FLOW.si(flow)))
              .orElse(OptionalDouble.empty());
      if (lowest.isEmpty()) {
        return Optional.of(document);
      }
      UnitSystem units = design.get().units();
      double least = lowest.getAsDouble();
      typed =
          typed
              .with("/flow/minimum", units.showAtLeast(Kind.FLOW, least))
              .with("/flow/design", units.showAtLeast(Kind.FLOW, DESIGN_OVER_LOWEST * least))
              .with("/flow/maximum", units.showAtLeast(Kind.FLOW, MAXIMUM_OVER_LOWEST * least));
    }
    return Optional.of(typed);
  }
}
