package sandslurry.assessment.plant.judged;

import java.util.Optional;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Clogged;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.plant.PlantResult.Recycling;
import sandslurry.assessment.plant.PlantResult.Sized;
import sandslurry.assessment.plant.PlantResult.WaterSizing;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.unit.Liquor;
import sandslurry.units.Kind;

/** The liquor of a loop: what it thickens to, its salts, purge and fresh water. */
record PlantLiquorFindings(PlantModel model, PlantResult result, Findings findings)
    implements PlantFindingWriter {
  private static final String LIQUOR = "liquor of the loop";

  /** Dissolved solids from which salts and scale are worth a word (common practice, no source). */
  private static final double SALTY = 0.01;

  /** A change of the liquor that does not count. */
  private static final double NO_CHANGE = 0.02;

  @Override
  public void all() {
    result.main().liquor().ifPresent(this::liquor);
    result.modes().forEach(mode -> mode.clogged().ifPresent(two -> twoStates(mode, two)));
    water();
  }

  private void liquor(LiquorLimit main) {
    recycling(main);
    if (model.spec().targets().liquorSolids().isPresent()) {
      thin(main, model.spec().targets().liquorSolids().getAsDouble());
    }
    boolean salty = main.dissolved() >= SALTY;
    found("salts", salty ? Severity.CAUTION : Severity.NOTE, "salts")
        .with("dissolved", Kind.PERCENT, main.dissolved())
        .with("limit", Kind.PERCENT, SALTY)
        .why("salts")
        .cure(salty, "test-liquid")
        .add();
  }

  /** What more recycle does, which depends on what the separators catch at each round. */
  private void recycling(LiquorLimit main) {
    Optional<LiquorLimit> once = recycling(1);
    Optional<LiquorLimit> twice = recycling(2);
    double change =
        once.isPresent() && twice.isPresent() ? twice.get().solved() / once.get().solved() - 1 : 0;
    Found found =
        found(
                once.isEmpty() || twice.isEmpty()
                    ? "liquor"
                    : change < -NO_CHANGE
                        ? "recycle-thins"
                        : change > NO_CHANGE ? "recycle-thickens" : "recycle-same",
                Severity.NOTE,
                LIQUOR)
            .with("solidsFlow", Kind.MASS_PER_DAY, main.solidsNotCaughtKgps())
            .with("water", Kind.MASS_PER_DAY, main.netWaterKgps())
            .with("solids", Kind.PERCENT, main.solved())
            .why("leaves");
    settles(found);
    found
        .when(
            once.isPresent() && twice.isPresent(),
            f ->
                f.with("twice", Kind.PERCENT, twice.get().solved())
                    .with("recoveredTwice", Kind.PERCENT, twice.get().sandCapture())
                    .with("recovered", Kind.PERCENT, once.get().sandCapture())
                    .why("twice"))
        .add();
  }

  private void settles(Found found) {
    if (result.settledDay().isPresent()) {
      found.count("day", result.settledDay().getAsInt()).why("there-by-day");
      return;
    }
    result
        .accounts()
        .filter(a -> a.liquor().timeConstantS().isPresent())
        .ifPresent(
            a ->
                found
                    .with(
                        "time",
                        Kind.DAYS,
                        Liquor.restsInS(a.liquor().timeConstantS().getAsDouble()))
                    .why("there-in"));
  }

  private Optional<LiquorLimit> recycling(double factor) {
    return result.recycling().stream()
        .filter(r -> r.factor() == factor)
        .flatMap((Recycling r) -> r.liquor().stream())
        .findFirst();
  }

  private void twoStates(ModeResult mode, Clogged two) {
    Found found =
        found("two-states", Severity.CAUTION, "mode \"" + mode.mode().name() + "\"")
            .with("thin", Kind.PERCENT, two.thin().solved())
            .with("thinRecovery", Kind.PERCENT, two.thin().sandCapture())
            .with("start", Kind.PERCENT, two.startSolids())
            .with("tips", Kind.PERCENT, two.tips())
            .why("from-water");
    if (two.thick().isPresent()) {
      found
          .with("thick", Kind.PERCENT, two.thick().get().solved())
          .with("thickRecovery", Kind.PERCENT, two.thick().get().sandCapture())
          .why("from-thick");
    } else {
      found.why("no-rest-from-thick");
    }
    found.why("tips").cure("start-with-water").add();
  }

  private void thin(LiquorLimit main, double target) {
    Range solids =
        result.accounts().map(a -> a.liquor().solids()).orElseGet(() -> Range.of(main.solved()));
    boolean kept = solids.high() <= target;
    boolean expected = solids.base() <= target;
    Found found =
        kept
            ? found("liquor-thin", Severity.PASS, LIQUOR)
            : found(expected ? "liquor-thin-maybe" : "liquor-thick", Severity.CAUTION, LIQUOR);
    with(found, "solids", Kind.PERCENT, solids)
        .with("wanted", Kind.PERCENT, target)
        .why("liquor-against");
    if (!expected) {
      Stream in = result.total().meanFlow();
      found
          .with(
              "water",
              Kind.MASS_PER_DAY,
              Liquor.waterFor(main.solidsNotCaughtKgps(), target) - main.netWaterKgps())
          .with(
              "capture",
              Kind.PERCENT,
              Liquor.captureFor(in.solidsKgps(), main.netWaterKgps(), target))
          .cure("thin-liquor");
    }
    found.add();
  }

  /** Purge and fresh water, each sized on its own where the recovery misses its target. */
  private void water() {
    WaterSizing sizing = result.sizing();
    if (!sizing.looked()) {
      return;
    }
    boolean none = sizing.added().isEmpty() && sizing.replaced().isEmpty();
    Found found =
        found(none ? "water-none" : "water-sized", Severity.NOTE, "purge and fresh water")
            .with("wanted", Kind.PERCENT, model.spec().targets().sandCapture());
    if (sizing.added().isPresent()) {
      Sized added = sizing.added().get();
      found
          .with("added", Kind.FLOW, added.amountM3ps())
          .with("addedRecovery", Kind.PERCENT, added.capture())
          .with("addedSolids", Kind.PERCENT, added.liquor())
          .with("addedSurplus", Kind.FLOW, added.surplusM3ps())
          .with("surplusNow", Kind.FLOW, added.surplusBeforeM3ps());
    }
    if (sizing.replaced().isPresent()) {
      Sized purge = sizing.replaced().get();
      found
          .with("purge", Kind.FLOW, purge.amountM3ps())
          .with("purgeRecovery", Kind.PERCENT, purge.capture())
          .with("purgeSolids", Kind.PERCENT, purge.liquor())
          .with("purgeSurplus", Kind.FLOW, purge.surplusM3ps());
    }
    found
        .why(sizing.added().isPresent() ? "water-added" : "no-water-added")
        .why(sizing.replaced().isPresent() ? "water-replaced" : "no-water-replaced")
        .add();
  }
}
