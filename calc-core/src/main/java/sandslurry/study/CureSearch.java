package sandslurry.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.study.CureSorts.Sort;

/** One search for cures: sort by sort, the changes of each from the least on. */
final class CureSearch {
  /** A line that carries a stream of a plant is judged at about so many times of the day. */
  private static final int TIMES_OF_A_PLANT = 8;

  /** So are a liquor whose scatter matters and its two ends. */
  private static final int LIQUORS_OF_A_BAND = 3;

  private static final int FEWEST_OF_A_SORT = 2;

  /** Runs judged in all tries together: it bounds the time of a search, a few seconds at most. */
  private static final int MOST_RUNS_JUDGED = 600;

  /** Who has so many ways to choose from needs no more. */
  private static final int ENOUGH = 5;

  private final DesignDocument document;
  private final Design design;
  private final Assessment before;
  private final Finding finding;
  private final Evaluation.Lines evaluation;
  private final List<TriedCure> found = new ArrayList<>();
  private final List<String> tried = new ArrayList<>();
  private String nearest = "";
  private Finding remains;

  CureSearch(DesignDocument document, Assessment before, Finding finding) {
    // A reading belongs to the line as it is and says nothing of a changed one.
    this.document = document.without("/lines/0/observed");
    this.before = before;
    this.finding = finding;
    this.design = this.document.read().design().orElseThrow();
    this.evaluation = Evaluation.ofLinesBeside(design, before);
  }

  Cures run() {
    int weight =
        design.oneLine().route().runs().size()
            * (design.plant().isPresent() ? TIMES_OF_A_PLANT : 1);
    int liquors = before.band().isPresent() ? LIQUORS_OF_A_BAND : 1;
    int left = Math.max(1, MOST_RUNS_JUDGED / (weight * liquors));
    List<Sort> sorts = new CureSorts(document, design, before, finding).all();
    boolean few = design.plant().isPresent() || left < FEWEST_OF_A_SORT * sorts.size();
    List<TriedCure> partial = new ArrayList<>();
    for (Sort sort : sorts) {
      if (found.size() >= ENOUGH || left <= 0) {
        break;
      }
      int most = Math.max(few ? 1 : FEWEST_OF_A_SORT, sort.tries() / weight);
      left -= search(sort, Math.min(most, left), partial);
    }
    List<TriedCure> cures = found.isEmpty() ? partial : found;
    return new Cures(finding, cures, cures.isEmpty() ? why() : "");
  }

  /**
   * The first change of a sort with which nothing as grave is left; of those that only mend the
   * finding, where something else as grave stays, the first is kept apart.
   *
   * @return how many were tried
   */
  private int search(Sort sort, int most, List<TriedCure> partial) {
    Optional<TriedCure> first = Optional.empty();
    int judged = 0;
    for (TriedCure change : sort.changes().limit(most).toList()) {
      judged++;
      Optional<TriedCure> mended = mended(change);
      if (mended.isPresent() && mended.get().after().compareTo(finding.severity()) < 0) {
        found.add(mended.get());
        return judged;
      }
      first = first.or(() -> mended);
    }
    first.ifPresent(partial::add);
    if (judged > 0 && first.isEmpty()) {
      tried.add(sort.name());
    }
    return judged;
  }

  /** The change with the verdict after it; nothing when it does not mend. */
  private Optional<TriedCure> mended(TriedCure cure) {
    Optional<Design> changed = cure.typedInto(document).read().design();
    if (changed.isEmpty()) {
      return Optional.empty();
    }
    if (evaluation.atFirst().isPresent()
        && !mends(cure, evaluation.atFirst().get().apply(changed.get()))) {
      return Optional.empty();
    }
    Assessment after = evaluation.whole().apply(changed.get());
    return mends(cure, after)
        ? Optional.of(new TriedCure(cure.text(), cure.edits(), after.verdict()))
        : Optional.empty();
  }

  private boolean mends(TriedCure cure, Assessment after) {
    boolean mended =
        after.findings().stream()
            .filter(f -> f.severity().compareTo(finding.severity()) >= 0)
            .allMatch(f -> !same(f, finding) && wasThere(f));
    if (!mended) {
      nearest(cure.text(), after);
    }
    return mended;
  }

  /** Remembers the change that leaves least amiss. */
  private void nearest(String text, Assessment after) {
    Optional<Finding> left =
        after.findings().stream()
            .filter(f -> f.severity().compareTo(Severity.CAUTION) >= 0)
            .filter(f -> same(f, finding) || !wasThere(f))
            .max(Comparator.comparing(Finding::severity));
    if (left.isPresent()
        && (remains == null || left.get().severity().compareTo(remains.severity()) < 0)) {
      remains = left.get();
      nearest = text;
    }
  }

  private static boolean same(Finding one, Finding other) {
    return one.topic() == other.topic() && one.element().equals(other.element());
  }

  private boolean wasThere(Finding after) {
    return before.findings().stream()
        .anyMatch(f -> same(f, after) && f.severity().compareTo(after.severity()) >= 0);
  }

  private String why() {
    String what =
        "Tried, each by itself: "
            + tried.stream().distinct().collect(Collectors.joining(", "))
            + ". Each leaves a finding as grave.";
    // What was found already is not said again.
    if (remains == null
        || before.findings().stream().anyMatch(f -> f.what().equals(remains.what()))) {
      return what;
    }
    return what
        + " Nearest: "
        + nearest
        + ", which leaves "
        + remains.element()
        + ": "
        + remains.what();
  }
}
