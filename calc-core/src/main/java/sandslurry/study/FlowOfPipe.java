package sandslurry.study;

import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.Evaluation;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
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

  /** The lowest flow rate holds at the temperature given; another may ask for a little more. */
  private static final double[] ABOVE = {1, 1.05, 1.1, 1.15};

  private FlowOfPipe() {}

  static Optional<DesignDocument> of(DesignDocument document, StandardPipe pipe) {
    DesignDocument typed = document;
    double lowest = 0;
    for (int i = 0; i < ROUNDS; i++) {
      OptionalDouble found = lowestM3ps(typed, pipe);
      if (found.isEmpty()) {
        return Optional.of(document);
      }
      lowest = found.getAsDouble();
      typed = typed(document, lowest);
    }
    for (double above : ABOVE) {
      DesignDocument raised = typed(document, above * lowest);
      if (staysInMotion(raised, pipe)) {
        return Optional.of(raised);
      }
    }
    return Optional.of(typed);
  }

  private static OptionalDouble lowestM3ps(DesignDocument document, StandardPipe pipe) {
    return Sizing.laid(document, pipe).read().design().stream()
        .flatMap(design -> Evaluation.assess(design).line().stream())
        .flatMap(line -> line.leastSafeFlow().stream())
        .mapToDouble(Measure.FLOW::si)
        .findFirst();
  }

  private static boolean staysInMotion(DesignDocument document, StandardPipe pipe) {
    return Sizing.laid(document, pipe).read().design().stream()
        .flatMap(design -> Evaluation.assess(design).findings().stream())
        .filter(finding -> finding.topic() == Topic.PLUGGING)
        .allMatch(finding -> finding.severity().compareTo(Severity.CAUTION) < 0);
  }

  private static DesignDocument typed(DesignDocument document, double leastM3ps) {
    UnitSystem units = document.text("/units").equals("US") ? UnitSystem.US : UnitSystem.METRIC;
    return document
        .with("/flow/minimum", units.showAtLeast(Kind.FLOW, leastM3ps))
        .with("/flow/design", units.showAtLeast(Kind.FLOW, DESIGN_OVER_LOWEST * leastM3ps))
        .with("/flow/maximum", units.showAtLeast(Kind.FLOW, MAXIMUM_OVER_LOWEST * leastM3ps));
  }
}
