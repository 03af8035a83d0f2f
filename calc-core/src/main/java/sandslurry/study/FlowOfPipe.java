package sandslurry.study;

import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.Evaluation;
import sandslurry.design.document.DesignDocument;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** Flow rates that suit a pipe. */
final class FlowOfPipe {
  private static final double DESIGN_OVER_LOWEST = 1.1;
  private static final double MAXIMUM_OVER_LOWEST = 1.2;

  private FlowOfPipe() {}

  static Optional<DesignDocument> of(DesignDocument document, StandardPipe pipe) {
    OptionalDouble lowest = lowestM3ps(document, pipe);
    return Optional.of(lowest.isPresent() ? typed(document, lowest.getAsDouble()) : document);
  }

  private static OptionalDouble lowestM3ps(DesignDocument document, StandardPipe pipe) {
    return Sizing.laid(document, pipe).read().design().stream()
        .flatMap(design -> Evaluation.assess(design).line().stream())
        .flatMapToDouble(line -> line.window().carriesFromM3ps().stream())
        .findFirst();
  }

  private static DesignDocument typed(DesignDocument document, double leastM3ps) {
    UnitSystem units = document.text("/units").equals("US") ? UnitSystem.US : UnitSystem.METRIC;
    return document
        .with("/lines/0/flow/minimum", units.showAtLeast(Kind.FLOW, leastM3ps))
        .with("/lines/0/flow/design", units.showAtLeast(Kind.FLOW, DESIGN_OVER_LOWEST * leastM3ps))
        .with(
            "/lines/0/flow/maximum", units.showAtLeast(Kind.FLOW, MAXIMUM_OVER_LOWEST * leastM3ps));
  }
}
