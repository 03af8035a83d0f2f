package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.LinesTogether;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Range;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * The verdict in a sentence: of a plant what it recovers, of a line what is gravest, or for a pass
 * what is closest.
 *
 * @param text the sentence
 * @param said the findings that it says
 */
record Headline(String text, List<Finding> said) {
  private static final int LONG = 170;

  static Headline of(Assessment assessment) {
    Optional<Finding> recovery = recovery(assessment);
    Severity verdict = assessment.verdict();
    if (recovery.isEmpty()) {
      return verdict == Severity.PASS
          ? new Headline(closest(assessment), List.of())
          : gravest(assessment);
    }
    String text = recovered(assessment, recovery.get());
    if (recovery.get().severity() == verdict) {
      return new Headline(text, List.of(recovery.get()));
    }
    // A plant that fails elsewhere begins with that.
    Headline other = gravest(assessment);
    List<Finding> both = new ArrayList<>(other.said());
    both.add(recovery.get());
    return new Headline(
        verdict == Severity.FAIL ? other.text() + " " + text : text + " " + other.text(), both);
  }

  /** What is found of the sand that a plant recovers; nothing where it comes to no rest. */
  private static Optional<Finding> recovery(Assessment assessment) {
    return assessment.plant().flatMap(PlantResult::accounts).isEmpty()
        ? Optional.empty()
        : assessment.findings().stream()
            .filter(f -> f.id().matches("plant\\.recovery(-maybe|-low)?"))
            .findFirst();
  }

  /** What a plant recovers, with what is wanted; empty without its account. */
  static Optional<String> recovered(Assessment assessment) {
    return recovery(assessment).map(any -> range(assessment));
  }

  private static String range(Assessment assessment) {
    UnitSystem units = assessment.design().units();
    Accounts accounts = assessment.plant().orElseThrow().accounts().orElseThrow();
    Range range = accounts.capture();
    double wanted = assessment.design().plant().orElseThrow().targets().sandCapture();
    String low = units.number(Kind.PERCENT, range.low(), range.low(), range.high());
    String high = units.number(Kind.PERCENT, range.high(), range.low(), range.high());
    return "Recovers "
        + (low.equals(high) ? "" : low + " to ")
        + high
        + " % of the sand flushed"
        + (low.equals(high)
            ? ""
            : ", "
                + units.number(Kind.PERCENT, range.base(), range.low(), range.high(), wanted)
                + " % expected")
        + "; "
        + units.show(Kind.PERCENT, wanted)
        + " wanted";
  }

  private static String recovered(Assessment assessment, Finding recovery) {
    Accounts accounts = assessment.plant().orElseThrow().accounts().orElseThrow();
    return range(assessment)
        + "."
        + (recovery.severity() == Severity.PASS
            ? ""
            : accounts
                .basis()
                .lowestBy()
                .map(by -> " The low end comes with " + by + ".")
                .orElse(""));
  }

  /** The gravest finding; of equally grave ones that of the worst of several lines. */
  private static Headline gravest(Assessment assessment) {
    Finding gravest =
        assessment.worstFirst().entrySet().stream()
            .limit(1)
            .filter(worst -> worst.getValue().verdict() == assessment.verdict())
            .map(worst -> LinesTogether.on(worst.getKey(), worst.getValue().findings().get(0)))
            .findFirst()
            .orElseGet(() -> assessment.findings().get(0));
    String reason = gravest.firstReason(LONG);
    return new Headline(
        gravest.place()
            + ": "
            + gravest.what()
            + (reason.isEmpty() && isOfLine(gravest) ? missed(assessment) : reason),
        List.of(gravest));
  }

  private static boolean isOfLine(Finding finding) {
    return switch (finding.topic()) {
      case PLUGGING, WEAR, LANE -> true;
      default -> false;
    };
  }

  /** What is closest to its limit, where it is not kept. */
  private static String missed(Assessment assessment) {
    return DecidingFacts.of(assessment).stream()
        .findFirst()
        .filter(f -> f.closeness() < 0)
        .map(f -> " " + capital(f.what()) + ": " + f.actual() + ", " + f.limit() + ".")
        .orElse("");
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static String closest(Assessment assessment) {
    String closest =
        DecidingFacts.of(assessment).stream()
            .filter(f -> f.margin().isPresent() && f.word().isEmpty() && !f.isLarge())
            .findFirst()
            .map(
                f ->
                    " Closest is the "
                        + f.what()
                        + ": "
                        + f.actual()
                        + ", "
                        + f.limit()
                        + " ("
                        + f.marginText()
                        + " left).")
            .orElse("");
    return (closest.isEmpty()
            ? "Every criterion is met with a large margin."
            : "Every criterion is met with its margin.")
        + closest;
  }
}
