package sandslurry.assessment.states;

import java.util.Optional;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.OperatingWindow;
import sandslurry.assessment.line.OperatingWindow.Cause;
import sandslurry.assessment.line.OperatingWindow.End;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;

/**
 * The headline of a line that has no operating window.
 *
 * @param model the physics of its line
 * @param window the flow rates at which it works
 * @param findings takes what is found
 */
public record WindowFindings(LineModel model, OperatingWindow window, Findings findings)
    implements FindingWriter {
  /** The id of the headline. */
  public static final String ID = "states.no-window";

  /** The element of the headline. */
  public static final String ELEMENT = "operating window";

  /** A liquor of fewer solids than this is not thinned to carry its sand. */
  private static final double THIN = 0.01;

  /**
   * The finding, if there is no flow rate at which the line works; it is as grave as the findings
   * on the line so far.
   */
  public void all() {
    if (window.intervals().isEmpty()) {
      Severity severity =
          findings.all().stream()
              .filter(f -> f.topic() != Topic.DATA && f.topic() != Topic.STOP)
              .map(Finding::severity)
              .reduce(Severity.CAUTION, Severity::or);
      Found found = found("no-window", severity, topic(), ELEMENT);
      if (window.blocked().isPresent()) {
        blocked(found, window.blocked().get());
      } else {
        found
            .why("no-flow-carries")
            .cure(
                model.materials().carrier().totalSolids().orElse(0) > THIN
                    ? "thin-or-narrow"
                    : "narrow-or-screen");
      }
      found.add();
    }
  }

  private Topic topic() {
    Optional<End> blocked = window.blocked();
    if (blocked.isEmpty()) {
      return Topic.PLUGGING;
    }
    return switch (blocked.get().cause()) {
      case PRESSURE, COLUMN_BREAKS -> Topic.PRESSURE;
      case WEAR -> isNotTurbulent() ? Topic.PLUGGING : Topic.WEAR;
      default -> Topic.PUMP;
    };
  }

  private void blocked(Found found, End end) {
    double needed = window.carriesFromM3ps().orElse(0);
    double wanted = Math.max(needed, window.designM3ps());
    found
        .with("needed", Kind.FLOW, needed)
        .with("most", Kind.FLOW, end.flowM3ps())
        .with("part", end.element())
        .with("wanted", Kind.FLOW, wanted)
        .with("head", Kind.HEAD, model.systemHeadM(wanted, model.materials().sandFraction(wanted)));
    Kind<?> kind = kind(end);
    found.with("actual", kind, end.actual()).with("limit", kind, end.limit());
    switch (end.cause()) {
      case PRESSURE ->
          found.why(needed > 0 ? "pressure-there" : "pressure-any").cure("stronger-pipe");
      case COLUMN_BREAKS -> found.why("column-there").cure("hold-outlet-for-window");
      case WEAR -> {
        if (isNotTurbulent()) {
          found.why("turbulent-there").cure("thin-for-wear");
        } else {
          found
              .why("wear-there")
              .cure(model.route().runs().size() > 1 ? "like-bores" : "narrow-or-hard");
        }
      }
      case MOTOR -> found.why("motor-there").cure("motor-for-window");
      case NPSH -> found.why("npsh-there").cure("suction-for-window");
      case NPSH_UNKNOWN -> found.why("npsh-unknown").cure("suction-for-window");
      case REGION -> found.why("region-there").cure("pump-for-window");
      case PRESSURE_LIMIT -> found.why("pressure-there").cure("head-for-window");
      case STROKES -> found.why("strokes").cure("pump-for-window");
      case CURVE_END -> found.why("curve-ends").cure("pump-for-window");
      default -> {
        if (end.flowM3ps() > 0) {
          found.why("pump-gives").cure("pump-for-window");
        } else {
          // A smaller pipe would ask for more head still.
          found.why("pump-weak").cure("head-for-window");
        }
      }
    }
  }

  /** Whether it is turbulence that the sand needs the flow rate for. */
  private boolean isNotTurbulent() {
    return window.carrying().stream().anyMatch(one -> one.low().cause() == Cause.NOT_TURBULENT);
  }

  private static Kind<?> kind(End end) {
    return switch (end.cause()) {
      case PRESSURE, PRESSURE_LIMIT, COLUMN_BREAKS -> Kind.PRESSURE;
      case WEAR -> Kind.VELOCITY;
      case MOTOR -> Kind.POWER;
      case REGION -> Kind.FLOW;
      default -> Kind.HEAD;
    };
  }
}
