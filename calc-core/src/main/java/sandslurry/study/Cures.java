package sandslurry.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.line.FlowSpec;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.material.CarrierSpec.ManureSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.study.TriedCure.Edit;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/**
 * What mends the gravest finding on a line. Each change is typed into the design with its number
 * rounded to the safe side, the whole design is evaluated again, and the change is kept only if the
 * finding is gone and none as grave has come in its place.
 *
 * @param finding the finding to be mended
 * @param tried the changes that mend it, of each sort at most two
 * @param why why there is none; empty when there is one
 */
public record Cures(Finding finding, List<TriedCure> tried, String why) {
  private static final Set<Topic> TOPICS =
      EnumSet.of(Topic.PLUGGING, Topic.WEAR, Topic.PRESSURE, Topic.STATES, Topic.PUMP);
  private static final int OF_A_SORT = 2;
  private static final int PIPES_TRIED = 24;
  private static final double[] LESS = {0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.6, 0.5};
  private static final double[] SPEEDS = {
    0.95, 1.05, 0.9, 1.1, 0.85, 1.15, 0.8, 1.2, 1.3, 0.7, 1.4, 1.5
  };
  private static final double THINNER_BY = 0.005;
  private static final int THINNINGS = 16;

  /**
   * Runs of pipe that are evaluated, the design itself counted: each change of a long line costs as
   * many as it has.
   */
  private static final int RUNS_EVALUATED = 64;

  /** Copies the list. */
  public Cures {
    tried = List.copyOf(tried);
  }

  /**
   * Looks for cures.
   *
   * @param document the design as typed
   * @param assessment what came of it
   * @return what mends its gravest finding on the line; nothing when there is no caution or failure
   *     of the line, or a plant has to be worked out with it
   */
  public static Optional<Cures> of(DesignDocument document, Assessment assessment) {
    if (document.has("/plant") || assessment.line().isEmpty()) {
      return Optional.empty();
    }
    return assessment.findings().stream()
        .filter(finding -> finding.severity().compareTo(Severity.CAUTION) >= 0)
        .filter(finding -> TOPICS.contains(finding.topic()))
        .findFirst()
        .map(finding -> new Search(document, assessment, finding).run());
  }

  /** One search. */
  private static final class Search {
    private final DesignDocument document;
    private final Assessment before;
    private final Finding finding;
    private final Design design;
    private final UnitSystem units;
    private final List<TriedCure> found = new ArrayList<>();
    private String nearest = "";
    private Finding remains;
    private int runsLeft;

    Search(DesignDocument document, Assessment before, Finding finding) {
      this.document = document;
      this.before = before;
      this.finding = finding;
      this.design = before.design();
      this.units = design.units();
      this.runsLeft = RUNS_EVALUATED - design.route().orElseThrow().runs().size();
    }

    Cures run() {
      moreFlow();
      lessFlow();
      pumpSpeed();
      pipes();
      thinner();
      return new Cures(finding, found, found.isEmpty() ? why() : "");
    }

    /** Tries a change; says whether it mends. */
    private boolean mends(String text, List<Edit> edits) {
      TriedCure cure = new TriedCure(text, edits, Severity.FAIL);
      Optional<Design> changed = cure.typedInto(document).read().design();
      if (changed.isEmpty()) {
        return false;
      }
      runsLeft -= design.route().orElseThrow().runs().size();
      if (runsLeft < 0) {
        return false;
      }
      Assessment after = Evaluation.assess(changed.get());
      boolean mended =
          after.findings().stream()
              .filter(f -> f.severity().compareTo(finding.severity()) >= 0)
              .allMatch(f -> !same(f, finding) && wasThere(f));
      nearest(text, after, mended);
      if (mended) {
        found.add(new TriedCure(text, edits, after.verdict()));
      }
      return mended;
    }

    /** Remembers the change that leaves least amiss. */
    private void nearest(String text, Assessment after, boolean mended) {
      Finding left = after.findings().get(0);
      if (!mended && (remains == null || left.severity().compareTo(remains.severity()) < 0)) {
        remains = left;
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

    private void moreFlow() {
      FlowSpec flow = design.flow().orElseThrow();
      OptionalDouble least =
          before.line().orElseThrow().leastSafeFlow().stream()
              .mapToDouble(Measure.FLOW::si)
              .findFirst();
      if (least.isEmpty() || !(least.getAsDouble() > Measure.FLOW.si(flow.minimum()))) {
        return;
      }
      String typed = units.showAtLeast(Kind.FLOW, least.getAsDouble());
      List<Edit> edits = new ArrayList<>();
      edits.add(new Edit("/flow/minimum", typed));
      if (least.getAsDouble() > Measure.FLOW.si(flow.design())) {
        edits.add(new Edit("/flow/design", typed));
      }
      if (least.getAsDouble() > Measure.FLOW.si(flow.maximum())) {
        edits.add(new Edit("/flow/maximum", typed));
      }
      mends("raise the minimum flow rate to " + typed, edits);
    }

    private void lessFlow() {
      FlowSpec flow = design.flow().orElseThrow();
      double most = Measure.FLOW.si(flow.maximum());
      for (double share : LESS) {
        double limit = share * most;
        if (limit < Measure.FLOW.si(flow.minimum())) {
          return;
        }
        String typed = units.showAtMost(Kind.FLOW, limit);
        List<Edit> edits = new ArrayList<>();
        edits.add(new Edit("/flow/maximum", typed));
        if (limit < Measure.FLOW.si(flow.design())) {
          edits.add(new Edit("/flow/design", typed));
        }
        if (mends("keep the flow rate at or below " + typed, edits)) {
          return;
        }
      }
    }

    /** Another speed of rotodynamic pumps, the nearest that mends. */
    private void pumpSpeed() {
      if (!(design.pump().orElse(null) instanceof RotodynamicSpec pump)
          || !document.has("/pump/speed")) {
        return;
      }
      double now = Measure.FREQUENCY.si(pump.first().speed());
      for (double ratio : SPEEDS) {
        String typed = units.showAtLeast(Kind.FREQUENCY, ratio * now);
        if (mends(
            "run the pump at " + typed + " (check its greatest speed with the maker)",
            List.of(new Edit("/pump/speed", typed)))) {
          return;
        }
      }
    }

    /** The pipe of the run that the finding names, or of every run: nearest bore first. */
    private void pipes() {
      List<Integer> runs = new ArrayList<>();
      List<RunSpec> all = design.route().orElseThrow().runs();
      for (int i = 0; i < all.size(); i++) {
        if (all.get(i).pipe().isPresent() && finding.element().contains(all.get(i).name())) {
          runs.add(i);
        }
      }
      if (runs.isEmpty()) {
        for (int i = 0; i < all.size(); i++) {
          if (all.get(i).pipe().isPresent()) {
            runs.add(i);
          }
        }
      }
      if (runs.isEmpty()) {
        return;
      }
      StandardPipe now = all.get(runs.get(0)).pipe().orElseThrow();
      int mended = 0;
      int count = 0;
      for (StandardPipe other : near(now)) {
        if (mended >= OF_A_SORT || count++ >= PIPES_TRIED) {
          return;
        }
        List<Edit> edits = new ArrayList<>();
        for (int i : runs) {
          String at = "/route/runs/" + i + "/pipe/";
          edits.add(new Edit(at + "system", other.system().standard()));
          edits.add(new Edit(at + "size", other.size()));
          edits.add(new Edit(at + "class", other.wallClass()));
        }
        if (mends("use " + other.words() + " in place of " + now.words(), edits)) {
          mended++;
        }
      }
    }

    private static List<StandardPipe> near(StandardPipe pipe) {
      return PipeCatalogue.all().stream()
          .filter(other -> !other.equals(pipe))
          .sorted(
              Comparator.comparing((StandardPipe other) -> other.system() != pipe.system())
                  .thenComparing(other -> Math.abs(Math.log(other.meanBoreM() / pipe.meanBoreM()))))
          .toList();
    }

    private void thinner() {
      if (!(design.carrier() instanceof ManureSpec manure)) {
        return;
      }
      double solids = Measure.FRACTION.si(manure.totalSolids());
      for (int i = 1; i <= THINNINGS && solids - i * THINNER_BY > 0; i++) {
        String typed = units.showAtMost(Kind.PERCENT, solids - i * THINNER_BY);
        if (mends(
            "dilute the liquor to " + typed + " sand-free solids or less",
            List.of(new Edit("/carrier/totalSolids", typed)))) {
          return;
        }
      }
    }

    private String why() {
      String what =
          runsLeft < 0
              ? "Of the changes tried none mends it alone. The line has many runs of pipe, and not"
                  + " every change was tried."
              : noneMends();
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

    private String noneMends() {
      return before.line().orElseThrow().leastSafeFlow().isEmpty()
          ? "No flow rate carries the sand by turbulence with its margin, and no standard pipe"
              + " near this size and no dilution tried mends that alone."
          : "No other flow rate, standard pipe near this size or dilution mends it alone"
              + " without a finding as grave.";
    }
  }
}
