package sandslurry.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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

  private static final int FEWEST_OF_A_SORT = 2;

  /** Who has so many ways to choose from needs no more. */
  private static final int ENOUGH = 5;

  private final DesignDocument document;
  private final Assessment before;
  private final Finding finding;
  private final Function<Design, Assessment> evaluation;
  private final List<TriedCure> found = new ArrayList<>();
  private final List<String> tried = new ArrayList<>();
  private String nearest = "";
  private Finding remains;

  CureSearch(DesignDocument document, Assessment before, Finding finding) {
    this.document = document;
    this.before = before;
    this.finding = finding;
    this.evaluation = Evaluation.ofLinesBeside(before.design());
  }

  Cures run() {
    Design design = document.read().design().orElseThrow();
    int weight =
        design.route().orElseThrow().runs().size()
            * (design.plant().isPresent() ? TIMES_OF_A_PLANT : 1);
    for (Sort sort : new CureSorts(document, design, before, finding).all()) {
      if (found.size() >= ENOUGH) {
        break;
      }
      int most = Math.max(FEWEST_OF_A_SORT, sort.tries() / weight);
      List<TriedCure> changes = sort.changes().limit(most).toList();
      boolean mended = changes.stream().anyMatch(this::mends);
      if (!mended && !changes.isEmpty()) {
        tried.add(sort.name());
      }
    }
    return new Cures(finding, found, found.isEmpty() ? why() : "");
  }

  /** Tries a change; says whether it mends. */
  private boolean mends(TriedCure cure) {
    Optional<Design> changed = cure.typedInto(document).read().design();
    if (changed.isEmpty()) {
      return false;
    }
    Assessment after = evaluation.apply(changed.get());
    boolean mended =
        after.findings().stream()
            .filter(f -> f.severity().compareTo(finding.severity()) >= 0)
            .allMatch(f -> !same(f, finding) && wasThere(f));
    if (mended) {
      found.add(new TriedCure(cure.text(), cure.edits(), after.verdict()));
    } else {
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
        "None of these mends it alone without a finding as grave: "
            + tried.stream().distinct().collect(Collectors.joining(", "))
            + ".";
    return remains == null
        ? what
        : what
            + " Nearest: "
            + nearest
            + "; left is then "
            + remains.element()
            + ": "
            + remains.what();
  }
}
