package sandslurry.assessment.plant.judged;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.Basis;
import sandslurry.assessment.plant.PlantResult.Bed;
import sandslurry.assessment.plant.PlantResult.Compared;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.SieveCheck;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Range;
import sandslurry.plant.account.SandCirculation;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What is to be said of the accounts of a plant: its sand, its bedding and what they rest on. */
final class PlantAccountFindings extends PlantFindingWriter {
  /** Balance and schedule agree when they differ by less (own choice, no source). */
  private static final double APART_SHARE = 0.005;

  private static final double APART_FLOW = 0.01;

  PlantAccountFindings(PlantModel model, PlantResult result, UnitSystem units) {
    super(model, result, units);
  }

  @Override
  List<Finding> all() {
    result.accounts().ifPresent(this::accounts);
    return findings;
  }

  private void accounts(Accounts accounts) {
    capture(accounts);
    bed(accounts);
    findings.addAll(new PlantStorageFindings(model, result, units).all());
    sieves(accounts);
    recoveries(accounts);
    basis(accounts.basis());
    unsettled(accounts.basis());
    if (!accounts.notCounted().isEmpty()) {
      add(
          Severity.NOTE,
          "energy account",
          "The energy of some pumps is not counted, because their head is not known.",
          "Not counted: " + String.join(", ", accounts.notCounted()) + ".",
          "Give each as a machine with its power, named for its stream.");
    }
  }

  private void capture(Accounts accounts) {
    double target = spec.targets().sandCapture();
    if (!(accounts.sand().flushed().sandKgps() > 0)) {
      return;
    }
    Range capture = accounts.capture();
    Severity severity =
        capture.low() >= target
            ? Severity.PASS
            : capture.base() >= target ? Severity.CAUTION : Severity.FAIL;
    String what =
        switch (severity) {
          case PASS -> "The plant recovers the share of the flushed sand wanted.";
          case CAUTION ->
              "The plant recovers the share of the flushed sand wanted as expected, not over the"
                  + " whole range.";
          default -> "The plant does not recover the share of the flushed sand wanted.";
        };
    add(
        severity,
        "sand recovery",
        what,
        "It recovers "
            + show(Kind.PERCENT, capture)
            + " of the sand flushed; wanted is "
            + show(Kind.PERCENT, target)
            + ". The liquor that it settles in has "
            + show(Kind.PERCENT, accounts.liquor())
            + " solids.",
        severity == Severity.FAIL ? cure(accounts, target) : "");
  }

  private String cure(Accounts accounts, double target) {
    List<String> cures = new ArrayList<>();
    if (accounts.extraWater().isPresent()) {
      cures.add(
          show(Kind.FLOW, accounts.extraWater().getAsDouble())
              + " more fresh water as \""
              + accounts.waterFor().orElseThrow()
              + "\"");
    }
    if (accounts.extraArea().isPresent()) {
      cures.add(
          show(Kind.PERCENT, accounts.extraArea().getAsDouble())
              + " more area of all boxes and lanes");
    }
    if (!cures.isEmpty()) {
      return "Give it "
          + String.join(", or ", cures)
          + ". A purge is the surplus itself and grows only with the water that comes in.";
    }
    double best = result.main().liquor().map(LiquorLimit::sandCapture).orElse(0.0);
    return "Neither the fresh water that can be had nor ten times the settling area brings "
        + show(Kind.PERCENT, target)
        + ": take coarser sand, catch more fibre and fines, or ask for "
        + show(Kind.PERCENT, Math.min(best, target))
        + " at most.";
  }

  private void bed(Accounts accounts) {
    if (accounts.bed().isEmpty()) {
      return;
    }
    Bed bed = accounts.bed().get();
    limit(
        "organic matter of recovered sand",
        "The organic matter",
        bed.organicMatter(),
        spec.targets().bedOrganicMatter(),
        " Nobody knows how much a thick liquor slows fibre: the range goes from fibre slowed like"
            + " sand to fibre not slowed at all.",
        "Have the sand tested; rinse it, dilute more with thinner liquor, or let the lane run"
            + " faster.");
    limit(
        "moisture of recovered sand",
        "The moisture",
        bed.moisture(),
        spec.targets().bedMoisture(),
        "",
        "Let it drain in a heap before it is bedded.");
  }

  private void limit(
      String element, String what, Range value, double most, String note, String cure) {
    boolean kept = value.high() <= most;
    boolean expected = value.base() <= most;
    add(
        kept ? Severity.PASS : Severity.CAUTION,
        element,
        kept
            ? what + " is within what is wanted."
            : expected
                ? what + " is within what is wanted as expected, not over the whole range."
                : what + " is more than is wanted.",
        show(Kind.PERCENT, value) + " against " + show(Kind.PERCENT, most) + " at most." + note,
        kept ? "" : cure);
  }

  /** The recovered sand and the bedding at rest on each sieve of the gradation wanted. */
  private void sieves(Accounts accounts) {
    if (accounts.sieves().isEmpty()) {
      return;
    }
    String wanted = spec.targets().gradation().orElseThrow().name();
    boolean inside = true;
    for (SieveCheck sieve : accounts.sieves()) {
      int recovered = sieve.outside(sieve.recovered());
      int circulating = sieve.outside(sieve.circulating());
      if (recovered == 0 && circulating == 0) {
        continue;
      }
      inside = false;
      boolean fine = recovered > 0 || recovered == 0 && circulating > 0;
      String which =
          recovered != 0 && circulating != 0
              ? "Recovered sand and the bedding at rest are"
              : recovered != 0 ? "Recovered sand is" : "The bedding at rest is";
      add(
          Severity.CAUTION,
          "bedding on " + show(Kind.GRAIN, sieve.limit().sizeM()),
          which + (fine ? " finer" : " coarser") + " on this sieve than is wanted.",
          "Of the sand recovered "
              + show(Kind.PERCENT, sieve.recovered())
              + " passes, of the bedding that circulates "
              + show(Kind.PERCENT, sieve.circulating())
              + ", of the sand bought "
              + show(Kind.PERCENT, sieve.bought())
              + "; wanted by "
              + wanted
              + " are "
              + show(Kind.PERCENT, sieve.limit().least())
              + " to "
              + show(Kind.PERCENT, sieve.limit().most())
              + ".",
          sieve.outside(sieve.bought()) != 0
              ? "The sand bought is outside too: buy another."
              : fine
                  ? "Catch less of the fines, or rinse the sand."
                  : "Catch more of the fine sand, or buy a finer sand to make up.");
    }
    if (inside) {
      add(
          Severity.PASS,
          "bedding",
          "Recovered sand and the bedding at rest are within the gradation wanted.",
          "Every sieve of " + wanted + " was looked at.",
          "");
    }
  }

  private void recoveries(Accounts accounts) {
    if (!(accounts.cycle().beddedKgps() > 0)) {
      return;
    }
    String circulating =
        accounts
            .circulation()
            .map(
                rest -> {
                  double gain = rest.notBought() - rest.notBoughtOfNewSand();
                  return "of new sand "
                      + show(Kind.PERCENT, rest.notBoughtOfNewSand())
                      + " comes back to the stalls, of the sand that circulates "
                      + show(Kind.PERCENT, rest.notBought())
                      + (gain > 0 ? ", because it coarsens as fine grains are lost" : "");
                })
            .orElse("what the sand that circulates comes to was not found");
    add(
        Severity.NOTE,
        "sand account",
        "Recovery is said of the sand flushed, of the sand bedded and of what need not be bought:"
            + " they are not the same.",
        "Of the sand flushed "
            + show(Kind.PERCENT, accounts.sand().recoveryOfFlushed())
            + " is recovered, of the sand bedded "
            + show(Kind.PERCENT, accounts.sand().recoveryOfBedded())
            + "; "
            + circulating
            + "; weighed wet the heap would pass for "
            + show(Kind.PERCENT, accounts.sand().recoveryAsWeighed())
            + ".",
        "");
    boolean rests = accounts.circulation().map(SandCirculation::converged).orElse(false);
    if (!rests) {
      add(
          Severity.CAUTION,
          "sand account",
          "The sand that circulates comes to no rest: its accounts are not to be relied on.",
          accounts
              .circulation()
              .map(
                  rest ->
                      "After the plant was asked "
                          + rest.passes()
                          + " times the bedding still moved by "
                          + show(Kind.PERCENT, rest.change())
                          + " of itself.")
              .orElse("With the coarser sand a mode has no steady state."),
          "Judge the plant by new sand, and look at units that are near the end of their range.");
    }
  }

  /** Where the day by schedule and the modes at rest differ, and which the accounts follow. */
  private void basis(Basis basis) {
    if (basis.day() == 0) {
      return;
    }
    List<String> apart =
        basis.compared().stream().filter(PlantAccountFindings::apart).map(this::both).toList();
    if (!basis.byDay()) {
      add(
          apart.isEmpty() ? Severity.NOTE : Severity.CAUTION,
          "accounts",
          "The accounts are those of the modes at their own steady states, not of the day by"
              + " schedule.",
          basis.why()
              + (basis.change() > 0
                  ? " On day "
                      + basis.day()
                      + " what leaves still differs from the day before by "
                      + show(Kind.PERCENT, basis.change())
                      + " of what comes in, and the pits keep or spill up to "
                      + show(Kind.PERCENT, Math.abs(basis.kept()))
                      + " of what comes in of a constituent."
                  : "")
              + differ(apart),
          apart.isEmpty() ? "" : "Judge the plant by the worse of the two.");
    } else if (!apart.isEmpty()) {
      boolean turns = spec.modes().size() > 1;
      boolean batches = spec.pens().stream().anyMatch(pen -> pen.batches().isPresent());
      add(
          turns || batches ? Severity.NOTE : Severity.CAUTION,
          "accounts",
          "The day by schedule differs from the modes at rest; the accounts follow the schedule.",
          (batches ? "Batches reach the units faster than the mean of the day. " : "")
              + (turns ? "A mode ends before the pits come to rest in it. " : "")
              + (turns || batches
                  ? ""
                  : "With one mode and no batches both should agree: the plant may have another"
                      + " steady state, or be near one. ")
              + differ(apart).strip(),
          turns || batches ? "" : "Judge the plant by the worse of the two.");
    }
  }

  private static String differ(List<String> apart) {
    return apart.isEmpty() ? "" : " They differ in " + String.join("; ", apart) + ".";
  }

  /** Half a point of a share, a hundredth of a flow. */
  private static boolean apart(Compared one) {
    double difference = Math.abs(one.byDay() - one.atRest());
    return one.kind() == Kind.PERCENT
        ? difference > APART_SHARE
        : difference > APART_FLOW * Math.max(one.byDay(), one.atRest());
  }

  private String both(Compared one) {
    return one.what()
        + ": "
        + show(one.kind(), one.byDay())
        + " by schedule, "
        + show(one.kind(), one.atRest())
        + " at rest";
  }

  /** Cases of the range without a steady state: what they come to is not in the ranges. */
  private void unsettled(Basis basis) {
    if (!basis.unsettled().isEmpty()) {
      add(
          Severity.CAUTION,
          "accounts",
          "In a part of its range the plant comes to no steady state.",
          "It is so with: "
              + String.join("; ", basis.unsettled())
              + ". The ranges of the accounts leave these cases out.",
          "Measure what is named, or give the liquor more water and the separators more room.");
    }
  }
}
