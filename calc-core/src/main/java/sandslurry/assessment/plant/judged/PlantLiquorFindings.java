package sandslurry.assessment.plant.judged;

import java.util.List;
import java.util.Optional;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.Clogged;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.plant.PlantResult.Recycling;
import sandslurry.assessment.plant.PlantResult.Sized;
import sandslurry.assessment.plant.PlantResult.WaterSizing;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.unit.Liquor;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * What is to be said of the liquor of a loop: what it thickens to, its salts, purge and fresh
 * water.
 */
final class PlantLiquorFindings extends PlantFindingWriter {
  /** Dissolved solids from which salts and scale are worth a word (common practice, no source). */
  private static final double SALTY = 0.01;

  /** A change of the liquor that does not count. */
  private static final double NO_CHANGE = 0.02;

  PlantLiquorFindings(PlantModel model, PlantResult result, UnitSystem units) {
    super(model, result, units);
  }

  @Override
  List<Finding> all() {
    result.main().liquor().ifPresent(this::liquor);
    result.modes().forEach(mode -> mode.clogged().ifPresent(two -> twoStates(mode, two)));
    water();
    return findings;
  }

  private void liquor(LiquorLimit main) {
    String settles =
        result.settledDay().isPresent()
            ? " By schedule it is there after " + result.settledDay().getAsInt() + " days."
            : result
                .accounts()
                .filter(a -> a.timeConstantS().isPresent())
                .map(
                    a ->
                        " It takes about "
                            + show(
                                Kind.DAYS,
                                InUnit.ofDays(Liquor.daysTo(a.timeConstantS().getAsDouble(), 0.95)))
                            + " to come within a twentieth of that.")
                .orElse("");
    add(
        Severity.NOTE,
        "liquor of the loop",
        recyclingSays(),
        "At rest "
            + show(Kind.MASS_PER_DAY, main.solidsNotCaughtKgps())
            + " of solids leave with "
            + show(Kind.MASS_PER_DAY, main.netWaterKgps())
            + " of water: "
            + show(Kind.PERCENT, main.solved())
            + " solids."
            + settles
            + recycled(),
        "");
    if (spec.targets().liquorSolids().isPresent()) {
      thin(main, spec.targets().liquorSolids().getAsDouble());
    }
    boolean salty = main.dissolved() >= SALTY;
    add(
        salty ? Severity.CAUTION : Severity.NOTE,
        "salts",
        "No unit catches dissolved salts: only fresh water thins them, however much is recycled.",
        "Dissolved solids come to S/(S + W) = "
            + show(Kind.PERCENT, main.dissolved())
            + " of the water with them (from "
            + show(Kind.PERCENT, SALTY)
            + " on a caution by common practice, no source). Where they concentrate, struvite can"
            + " scale pipes, pumps and valves; whether it does depends on magnesium, ammonium,"
            + " phosphate and pH, which are not computed.",
        salty
            ? "Have the liquid tested, and look into pipes and valves where it is turbulent."
            : "");
  }

  private void twoStates(ModeResult mode, Clogged two) {
    add(
        Severity.CAUTION,
        "mode \"" + mode.mode().name() + "\"",
        "The loop has two steady states: once its liquor is thick it stays thick.",
        "Filled with water it comes to liquor of "
            + show(Kind.PERCENT, two.thin().solved())
            + " solids and recovers "
            + show(Kind.PERCENT, two.thin().sandCapture())
            + " of the sand. Filled with liquor of "
            + show(Kind.PERCENT, two.startSolids())
            + two.thick()
                .map(
                    thick ->
                        " it stays at "
                            + show(Kind.PERCENT, thick.solved())
                            + " and recovers "
                            + show(Kind.PERCENT, thick.sandCapture()))
                .orElse(" it comes to no steady state")
            + ". From about "
            + show(Kind.PERCENT, two.tips())
            + " solids in the pits on it does not come back by itself. A stopped wash or separator"
            + " can bring it there.",
        "Start with water in the pits. Above that, replace the liquor of the pits by water before"
            + " the plant goes on.");
  }

  /** What more recycle does, which depends on what the separators catch at each round. */
  private String recyclingSays() {
    Optional<Recycling> once = recycling(1);
    Optional<Recycling> twice = recycling(2);
    if (once.isEmpty() || twice.isEmpty()) {
      return "What the liquor thickens to.";
    }
    double change =
        twice.get().liquor().orElseThrow().solved() / once.get().liquor().orElseThrow().solved()
            - 1;
    return change < -NO_CHANGE
        ? "More recycle thins the liquor: solids pass the separators more often."
        : change > NO_CHANGE
            ? "More recycle thickens the liquor."
            : "More recycle hardly changes the liquor.";
  }

  private String recycled() {
    Optional<Recycling> once = recycling(1);
    Optional<Recycling> twice = recycling(2);
    if (once.isEmpty() || twice.isEmpty()) {
      return "";
    }
    return " With twice the recycle it would be "
        + show(Kind.PERCENT, twice.get().liquor().orElseThrow().solved())
        + ", and the sand recovered "
        + show(Kind.PERCENT, twice.get().liquor().orElseThrow().sandCapture())
        + " instead of "
        + show(Kind.PERCENT, once.get().liquor().orElseThrow().sandCapture())
        + ".";
  }

  private Optional<Recycling> recycling(double factor) {
    return result.recycling().stream()
        .filter(r -> r.factor() == factor && r.liquor().isPresent())
        .findFirst();
  }

  private void thin(LiquorLimit main, double target) {
    Range solids = result.accounts().map(Accounts::liquor).orElseGet(() -> Range.of(main.solved()));
    boolean kept = solids.high() <= target;
    boolean expected = solids.base() <= target;
    double water = Liquor.waterFor(main.solidsNotCaughtKgps(), target) - main.netWaterKgps();
    Stream in = result.total().meanFlow();
    double capture = Liquor.captureFor(in.solidsKgps(), main.netWaterKgps(), target);
    add(
        kept ? Severity.PASS : Severity.CAUTION,
        "liquor of the loop",
        kept
            ? "The liquor is as thin as is wanted."
            : expected
                ? "The liquor is as thin as is wanted as expected, not over the whole range."
                : "The liquor is thicker than is wanted.",
        show(Kind.PERCENT, solids) + " against " + show(Kind.PERCENT, target) + ".",
        expected
            ? ""
            : "Bring "
                + show(Kind.MASS_PER_DAY, water)
                + " more fresh water, or catch "
                + show(Kind.PERCENT, capture)
                + " of all solids that come in; at rest nothing else thins it.");
  }

  /** Purge and fresh water, each sized on its own where the recovery misses its target. */
  private void water() {
    WaterSizing sizing = result.sizing();
    if (!sizing.looked()) {
      return;
    }
    boolean none = sizing.added().isEmpty() && sizing.replaced().isEmpty();
    String target = show(Kind.PERCENT, spec.targets().sandCapture());
    add(
        none ? Severity.CAUTION : Severity.NOTE,
        "purge and fresh water",
        none
            ? "No amount of purge or fresh water that can be had brings the sand recovery to its"
                + " target."
            : "Purge and fresh water, each sized on its own for the sand recovery wanted.",
        "Fresh water added to what flows now: "
            + sizing.added().map(this::sized).orElse("no amount that can be had brings " + target)
            + ". Recycled liquor let go as a purge, with as much fresh water in its place: "
            + sizing
                .replaced()
                .map(this::sized)
                .orElse(
                    "not even all of it, as far as water can be had, brings "
                        + target
                        + ", or nothing is recycled")
            + ".",
        none
            ? "Widen the settling area, take coarser sand or catch more fibre and fines before"
                + " liquor is recycled."
            : "");
  }

  private String sized(Sized remedy) {
    return show(Kind.FLOW, remedy.amountM3ps())
        + " gives "
        + show(Kind.PERCENT, remedy.capture())
        + " recovery, liquor of "
        + show(Kind.PERCENT, remedy.liquor())
        + " solids and "
        + show(Kind.FLOW, remedy.surplusM3ps())
        + " to the storages instead of "
        + show(Kind.FLOW, remedy.surplusBeforeM3ps());
  }
}
