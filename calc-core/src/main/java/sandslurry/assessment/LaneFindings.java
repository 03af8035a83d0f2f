package sandslurry.assessment;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.Finding.Topic;
import sandslurry.design.Design;
import sandslurry.design.LaneSpec;
import sandslurry.separation.lane.LaneResult;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** What is to be said of the settling lane. */
final class LaneFindings extends FindingWriter {
  private static final String ELEMENT = "settling lane";
  private static final double LONGEST_M = 1000;

  private final Design design;
  private final LaneSpec spec;
  private final LaneEvaluation evaluation;
  private final LaneResult result;

  LaneFindings(Design design, LaneEvaluation evaluation, LaneResult result) {
    super(design.units());
    this.design = design;
    this.spec = design.lane().orElseThrow();
    this.evaluation = evaluation;
    this.result = result;
  }

  /** The one thing to say of a lane whose feed is no slurry. */
  static Finding tooThick(UnitSystem units, double sandFraction) {
    return new Finding(
        Severity.FAIL,
        Topic.LANE,
        ELEMENT,
        "The mixture that the line would bring is too thick to flow through the lane.",
        "The sand would be "
            + units.show(Kind.PERCENT, sandFraction)
            + " of the mixture by volume; the methods end at "
            + units.show(Kind.PERCENT, Materials.THICKEST)
            + ".",
        "Add liquid or feed less sand, until the sand is "
            + units.show(Kind.PERCENT, Materials.THICKEST)
            + " of the mixture or less.");
  }

  List<Finding> all() {
    capture();
    scour();
    filling();
    flow();
    return findings;
  }

  private void add(Severity severity, String what, String why, String cure) {
    add(severity, Topic.LANE, ELEMENT, what, why, cure);
  }

  private void capture() {
    double wanted = Measure.FRACTION.si(design.criteria().sandCapture());
    double low = result.retained().vetter();
    double high = result.retained().campDobbins();
    Severity severity =
        low >= wanted ? Severity.PASS : high >= wanted ? Severity.CAUTION : Severity.FAIL;
    String what =
        switch (severity) {
          case PASS -> "The lane catches the share of sand asked for.";
          case CAUTION -> "The lane may or may not catch the share of sand asked for.";
          default -> "The lane does not catch the share of sand asked for.";
        };
    String why =
        "It keeps "
            + show(Kind.PERCENT, low)
            + " (fully mixed, Vetter) to "
            + show(Kind.PERCENT, high)
            + " (with turbulence, Camp and Dobbins) of the sand by mass, after what the flow would"
            + " scour away; "
            + show(Kind.PERCENT, wanted)
            + " is asked.";
    add(severity, what, why, severity == Severity.PASS ? "" : captureCure(wanted));
  }

  /** The length at which the cautious estimate meets the share asked for, if there is one. */
  private String captureCure(double wanted) {
    double length = Measure.LENGTH.si(spec.length());
    double enough = length;
    while (enough < LONGEST_M && evaluation.withLength(enough).retained().vetter() < wanted) {
      enough *= 1.05;
    }
    if (enough < LONGEST_M) {
      return "With this width and flow the lane needs a length of about "
          + show(Kind.LENGTH, enough)
          + ".";
    }
    return "No length is enough: the flow scours too much or the grains are too fine. Slow the flow"
        + " down (wider lane, outlet weir) or take coarser sand.";
  }

  private void scour() {
    double scoured =
        result.classes().stream()
            .filter(c -> c.scoured())
            .mapToDouble(c -> c.size().massFraction())
            .sum();
    if (scoured > 0) {
      add(
          scoured > 1 - Measure.FRACTION.si(design.criteria().sandCapture())
              ? Severity.CAUTION
              : Severity.NOTE,
          "The flow moves the finer grains along the floor, so they are not counted as caught.",
          "At "
              + show(Kind.VELOCITY, result.flow().velocityMps())
              + " grains up to "
              + show(Kind.GRAIN, result.largestScouredM())
              + " are moved, "
              + show(Kind.PERCENT, scoured)
              + " of the sand.",
          "A lower velocity (wider or deeper lane) keeps finer grains, and more organic matter with"
              + " them.");
    }
  }

  private void filling() {
    OptionalDouble time = result.fillTimeS(result.retained().campDobbins());
    if (time.isPresent()) {
      boolean soon = time.getAsDouble() < Measure.TIME.si(Measure.TIME.of(1, "d"));
      add(
          soon ? Severity.CAUTION : Severity.NOTE,
          "The sand storage of the lane fills in " + show(Kind.DAYS, time.getAsDouble()) + ".",
          "It holds "
              + show(Kind.MASS, result.storageKg())
              + " of dry sand, and "
              + show(Kind.MASS_PER_DAY, result.depositedKgPs(result.retained().campDobbins()))
              + " settle.",
          "Clean it out before that; a lane that is full carries its sand on.");
    }
  }

  private void flow() {
    double froude = result.flow().froudeNumber();
    if (froude > 0.8) {
      add(
          Severity.CAUTION,
          "The flow is close to or beyond critical: waves and jumps stir the sand up.",
          "The Froude number is " + show(Kind.NUMBER, froude) + ".",
          "Lay the lane flatter or set the depth by an outlet weir.");
    }
    if (!result.excesses().isEmpty()) {
      add(
          Severity.CAUTION,
          "Some relations are used outside their published range.",
          String.join(
                  "; ", result.excesses().stream().map(e -> e.describe(units)).distinct().toList())
              + ".",
          "");
    }
  }
}
