package sandslurry.assessment.plant.judged;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.Basis;
import sandslurry.assessment.plant.PlantResult.Bed;
import sandslurry.assessment.plant.PlantResult.Compared;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.SieveCheck;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Range;
import sandslurry.plant.account.SandCirculation;
import sandslurry.plant.unit.PlantUnit.Role;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The accounts of a plant: its sand, its bedding and what they rest on. */
record PlantAccountFindings(
    PlantModel model, PlantResult result, Findings ofUnits, Findings findings)
    implements PlantFindingWriter {
  /** Balance and schedule agree when they differ by less (own choice, no source). */
  private static final double APART_SHARE = 0.005;

  private static final double APART_FLOW = 0.01;

  /**
   * Sand recovered of the sand flushed in a settling basin with a porous wall, two chambers:
   * Fulhage (2003), ASABE technical library, paper 15283, abstract read.
   */
  private static final double BASIN = 0.75;

  /**
   * Sand recovered in a settling lane of 130 ft of a barn flushed four times a day: University of
   * Georgia, as reported in a trade article of its extension service.
   */
  private static final double LANE_LOW = 0.55;

  private static final double LANE_HIGH = 0.65;

  @Override
  public void all() {
    result.accounts().ifPresent(this::accounts);
  }

  private void accounts(Accounts accounts) {
    capture(accounts);
    accounts.bedding().quality().ifPresent(this::bed);
    new PlantStorageFindings(model, result, findings).all();
    sieves(accounts);
    recoveries(accounts);
    basis(accounts.basis());
    unsettled(accounts.basis());
    if (!accounts.figures().notCounted().isEmpty()) {
      found("energy-not-counted", Severity.NOTE, "energy account")
          .with("pumps", String.join(", ", accounts.figures().notCounted()))
          .why("energy-not-counted")
          .cure("give-power")
          .add();
    }
  }

  private void capture(Accounts accounts) {
    double target = model.spec().targets().sandCapture();
    if (!(accounts.sand().flushed().sandKgps() > 0)) {
      return;
    }
    Range capture = accounts.capture();
    Found found =
        capture.low() >= target
            ? found("recovery", Severity.PASS, "sand recovery")
            : capture.base() >= target
                ? found("recovery-maybe", Severity.CAUTION, "sand recovery")
                : found("recovery-low", Severity.FAIL, "sand recovery");
    with(found, "recovered", Kind.PERCENT, capture).with("wanted", Kind.PERCENT, target);
    with(found, "solids", Kind.PERCENT, accounts.liquor().solids()).why("recovery");
    if (capture.low() < target) {
      accounts.basis().lowestBy().ifPresent(by -> found.with("lowest", by).why("recovery-lowest"));
    }
    found.cure(capture.base() >= target && capture.low() < target, "measure-lowest");
    if (capture.base() < target) {
      cure(found, accounts, target);
    }
    found.add();
    boolean higher = capture.base() > BASIN;
    found(higher ? "field-recovery" : "field-recovery-near", Severity.NOTE, "sand recovery")
        .with("basin", Kind.PERCENT, BASIN)
        .with("laneLow", Kind.PERCENT, LANE_LOW)
        .with("laneHigh", Kind.PERCENT, LANE_HIGH)
        .why("measured")
        .why("measured-none")
        .why(higher, "not-computed")
        .add();
  }

  private void cure(Found found, Accounts accounts, double target) {
    // What the batches cost is mended by no more water and area than an even feed needs.
    Basis basis = accounts.basis();
    if (basis.byDay() && basis.compared().get(0).atRest() >= target) {
      found.cure("even-feed");
      return;
    }
    accounts
        .remedies()
        .waterM3ps()
        .ifPresent(
            water ->
                found
                    .with("water", Kind.FLOW, water)
                    .with("stream", accounts.remedies().waterFor().orElseThrow())
                    .cure("more-water"));
    accounts
        .remedies()
        .area()
        .ifPresent(
            area ->
                found
                    .with("area", Kind.PERCENT, area)
                    .cure(accounts.remedies().waterM3ps().isPresent() ? "area-instead" : "area"));
    if (accounts.remedies().waterM3ps().isEmpty() && accounts.remedies().area().isEmpty()) {
      double best = result.main().liquor().map(LiquorLimit::sandCapture).orElse(0.0);
      found.with("best", Kind.PERCENT, Math.min(best, target)).cure(otherCure(accounts));
    }
  }

  /** What to do about the place to which most of the lost sand goes, where no area keeps it. */
  private String otherCure(Accounts accounts) {
    String most =
        accounts.sand().lost().entrySet().stream()
            .max(Comparator.comparingDouble(lost -> lost.getValue().sandKgps()))
            .map(Map.Entry::getKey)
            .orElse("");
    boolean held =
        ofUnits.all().stream().anyMatch(finding -> finding.id().equals("plant.sand-held"));
    if (held && most.equals(Use.SETTLED.word())) {
      return "lost-held";
    }
    if (most.equals(Use.SETTLED.word())) {
      return "lost-in-pits";
    }
    if (most.equals(Use.FIBRE.word())) {
      return "lost-with-fibre";
    }
    if (most.equals(Use.WASTE.word())) {
      return "lost-as-waste";
    }
    if (!model.spec().has(Role.SETTLES)) {
      return model.spec().has(Role.SPINS) ? "spin-better" : "no-separation";
    }
    return accounts.remedies().waterFor().isPresent() ? "want-less" : "dilute-more";
  }

  private void bed(Bed bed) {
    double organic = model.spec().targets().bedOrganicMatter();
    Found found =
        bed.organicMatter().high() <= organic
            ? found("organic", Severity.PASS, "organic matter of recovered sand")
            : found(
                bed.organicMatter().base() <= organic ? "organic-maybe" : "organic-high",
                Severity.CAUTION,
                "organic matter of recovered sand");
    with(found, "organic", Kind.PERCENT, bed.organicMatter())
        .with("most", Kind.PERCENT, organic)
        .why("organic")
        .why("fibre-unknown");
    found
        .when(
            bed.organicMatter().high() > organic,
            f ->
                f.cure("cleaner-sand")
                    .cure(
                        model.spec().units().stream().anyMatch(unit -> unit.lanes() > 0),
                        "faster-lane"))
        .add();
    double moisture = model.spec().targets().bedMoisture();
    Found wet =
        bed.moisture().high() <= moisture
            ? found("moisture", Severity.PASS, "moisture of recovered sand")
            : found(
                bed.moisture().base() <= moisture ? "moisture-maybe" : "moisture-high",
                Severity.CAUTION,
                "moisture of recovered sand");
    with(wet, "moisture", Kind.PERCENT, bed.moisture())
        .with("most", Kind.PERCENT, moisture)
        .why("moisture");
    wet.cure(bed.moisture().high() > moisture, "drain").add();
  }

  /** The recovered sand and the bedding at rest on each sieve of the gradation wanted. */
  private void sieves(Accounts accounts) {
    if (accounts.bedding().sieves().isEmpty()) {
      return;
    }
    String wanted = model.spec().targets().gradation().orElseThrow().name();
    boolean inside = true;
    for (SieveCheck sieve : accounts.bedding().sieves()) {
      int recovered = sieve.outside(sieve.recovered());
      int circulating = sieve.outside(sieve.circulating());
      if (recovered == 0 && circulating == 0) {
        continue;
      }
      inside = false;
      boolean fine = recovered > 0 || recovered == 0 && circulating > 0;
      found(
              fine ? "sieve-finer" : "sieve-coarser",
              Severity.CAUTION,
              "bedding on " + show(Kind.GRAIN, sieve.limit().sizeM()))
          .with("gradation", wanted)
          .with("recovered", Kind.PERCENT, sieve.recovered())
          .with("circulating", Kind.PERCENT, sieve.circulating())
          .with("bought", Kind.PERCENT, sieve.bought())
          .with("least", Kind.PERCENT, sieve.limit().least())
          .with("most", Kind.PERCENT, sieve.limit().most())
          .why("passes")
          .cure(
              sieve.outside(sieve.bought()) != 0
                  ? "buy-another"
                  : fine ? "fewer-fines" : "more-fine-sand")
          .add();
    }
    if (inside) {
      found("gradation", Severity.PASS, "bedding")
          .with("gradation", wanted)
          .why("every-sieve")
          .add();
    }
  }

  private void recoveries(Accounts accounts) {
    if (!(accounts.circulation().asNew().beddedKgps() > 0)) {
      return;
    }
    Found found =
        found("recoveries", Severity.NOTE, "sand account")
            .with("flushed", Kind.PERCENT, accounts.sand().recoveryOfFlushed())
            .with("bedded", Kind.PERCENT, accounts.sand().recoveryOfBedded())
            .with("weighed", Kind.PERCENT, accounts.sand().recoveryAsWeighed())
            .why("recoveries");
    if (accounts.circulation().sand().isPresent()) {
      SandCirculation rest = accounts.circulation().sand().get();
      found
          .with("newSand", Kind.PERCENT, rest.notBoughtOfNewSand())
          .with("circulating", Kind.PERCENT, rest.notBought())
          .why("comes-back")
          .why(rest.notBought() > rest.notBoughtOfNewSand(), "coarsens");
    }
    found.why("weighed-wet").add();
    boolean rests = accounts.circulation().sand().map(SandCirculation::converged).orElse(false);
    if (!rests) {
      Found none = found("sand-no-rest", Severity.CAUTION, "sand account").cure("new-sand");
      accounts
          .circulation()
          .sand()
          .ifPresentOrElse(
              rest ->
                  none.count("passes", rest.passes())
                      .with("change", Kind.PERCENT, rest.change())
                      .why("still-moves"),
              () -> none.why("coarser-no-rest"));
      none.add();
    }
  }

  /** Where the day by schedule and the modes at rest differ, and which the accounts follow. */
  private void basis(Basis basis) {
    if (basis.day() == 0) {
      return;
    }
    List<Compared> apart = basis.compared().stream().filter(PlantAccountFindings::apart).toList();
    if (basis.byDay() && apart.isEmpty()) {
      return;
    }
    boolean turns = model.spec().modes().size() > 1;
    boolean batches = model.spec().pens().stream().anyMatch(pen -> pen.batches().isPresent());
    boolean explained = basis.byDay() && (turns || batches);
    Found found =
        found(
            basis.byDay() ? "schedule-differs" : "modes-at-rest",
            apart.isEmpty() || explained ? Severity.NOTE : Severity.CAUTION,
            "accounts");
    if (!basis.byDay()) {
      found
          .count("day", basis.day())
          .with("change", Kind.PERCENT, basis.change())
          .with("kept", Kind.PERCENT, Math.abs(basis.kept()))
          .why(basis.change() > 0 ? "no-repeat" : "not-run");
    } else if (explained) {
      found.why(batches, "batches").why(turns, "modes-turn");
    } else {
      found.why("should-agree");
    }
    found
        .when(
            !apart.isEmpty(),
            f ->
                f.with(
                        "differences",
                        shown ->
                            apart.stream()
                                .map(one -> both(one, shown))
                                .collect(Collectors.joining("; ")))
                    .why("differ"))
        .cure(!apart.isEmpty() && !explained, "worse-of-two")
        .add();
  }

  /** Half a point of a share, a hundredth of a flow. */
  private static boolean apart(Compared one) {
    double difference = Math.abs(one.byDay() - one.atRest());
    return one.kind() == Kind.PERCENT
        ? difference > APART_SHARE
        : difference > APART_FLOW * Math.max(one.byDay(), one.atRest());
  }

  private static String both(Compared one, UnitSystem shown) {
    return one.what()
        + " "
        + shown.show(one.kind(), one.byDay())
        + " and "
        + shown.show(one.kind(), one.atRest());
  }

  /** Cases of the range without a steady state: what they come to is not in the ranges. */
  private void unsettled(Basis basis) {
    if (!basis.unsettled().isEmpty()) {
      found("range-unsettled", Severity.CAUTION, "accounts")
          .with("cases", String.join("; ", basis.unsettled()))
          .why("range-unsettled")
          .cure("measure-cases")
          .add();
    }
  }
}
