package sandslurry.assessment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import sandslurry.assessment.Finding.Topic;
import sandslurry.assessment.PlantResult.Accounts;
import sandslurry.assessment.PlantResult.Basis;
import sandslurry.assessment.PlantResult.Bed;
import sandslurry.assessment.PlantResult.LiquorLimit;
import sandslurry.assessment.PlantResult.ModeResult;
import sandslurry.assessment.PlantResult.Recycling;
import sandslurry.assessment.PlantResult.SieveCheck;
import sandslurry.assessment.PlantResult.Sized;
import sandslurry.assessment.PlantResult.WaterSizing;
import sandslurry.circuit.Day;
import sandslurry.circuit.Flush;
import sandslurry.circuit.Liquor;
import sandslurry.circuit.ManureProduction;
import sandslurry.circuit.ManureProductions;
import sandslurry.circuit.PenLoad;
import sandslurry.circuit.PitDay;
import sandslurry.circuit.Range;
import sandslurry.circuit.SandCirculation;
import sandslurry.circuit.SteadyBalance;
import sandslurry.circuit.StorageAccount;
import sandslurry.circuit.Stream;
import sandslurry.circuit.UnitDay;
import sandslurry.correlation.Bound;
import sandslurry.design.Design;
import sandslurry.design.PlantSpec;
import sandslurry.design.PlantSpec.FlushSpec;
import sandslurry.design.PlantSpec.PenSpec;
import sandslurry.design.UnitSpec;
import sandslurry.design.UnitSpec.BoxSpec;
import sandslurry.design.UnitSpec.CycloneSpec;
import sandslurry.design.UnitSpec.LaneUnitSpec;
import sandslurry.design.UnitSpec.PitSpec;
import sandslurry.separation.LaneFilling;
import sandslurry.separation.LaneTurn;
import sandslurry.separation.PitMixing;
import sandslurry.separation.SandStack;
import sandslurry.separation.UnitFeed;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** What is to be said of a plant. */
final class PlantFindings extends FindingWriter {
  /**
   * Sand that fills a tenth of a storage, or cuts into its reserves, sooner than this is worth a
   * caution (common practice, no source).
   */
  private static final double FEW_YEARS = 10;

  /** Beyond this nothing is said of sand in a storage. */
  private static final double MOST_YEARS = 100;

  /**
   * A lane that is dug more often than this is hardly run by anybody (common practice, no source).
   */
  private static final double SHORT_INTERVAL_D = 1;

  /**
   * Mixers commonly run a little above the just-suspended speed; twice that is far above (common
   * practice, no source).
   */
  private static final double FAST_MIXER = 2;

  /** Dissolved solids from which salts and scale are worth a word (common practice, no source). */
  private static final double SALTY = 0.01;

  /** A flow that is this near its mean is no peak. */
  private static final double NO_PEAK = 1.05;

  /** Sand of a unit that its peaks must cost before it is worth a caution. */
  private static final double PEAK_LOSS = 0.02;

  /** A hundredth under what practice asks is what it asks. */
  private static final double NEARLY = 0.99;

  /** Less sand than this share does not count as settled in a pit. */
  private static final double LITTLE = 1e-3;

  private static final double YEAR_D = 365;

  private final PlantModel model;
  private final PlantSpec spec;
  private final PlantResult result;

  PlantFindings(Design design, PlantModel model, PlantResult result) {
    super(design.units());
    this.model = model;
    this.spec = model.spec();
    this.result = result;
  }

  List<Finding> all() {
    for (ModeResult mode : result.modes()) {
      mode.failure()
          .ifPresent(
              failure ->
                  add(
                      Severity.FAIL,
                      "mode \"" + mode.mode().name() + "\"",
                      "The plant comes to no steady state in this mode.",
                      failure.explanation(),
                      "Change the units named until every constituent has a way out."));
    }
    notes();
    result.accounts().ifPresent(this::accounts);
    result.main().liquor().ifPresent(this::liquor);
    water();
    days();
    batches();
    peaks();
    result.main().balance().ifPresent(this::units);
    loads();
    return findings;
  }

  private void add(Severity severity, String element, String what, String why, String cure) {
    add(severity, Topic.PLANT, element, what, why, cure);
  }

  private String show(Kind<?> kind, Range range) {
    return new Figure("", kind, range).shown(units);
  }

  /** What units say of their feeds in a steady balance, each once with the modes that it is in. */
  private void notes() {
    Set<String> told = new LinkedHashSet<>();
    for (ModeResult mode : result.modes()) {
      if (mode.balance().isEmpty()) {
        continue;
      }
      for (String note : mode.balance().get().notes()) {
        if (told.add(note)) {
          String unit = element(note);
          add(
              Severity.CAUTION,
              unit,
              unit.equals("plant") ? note : capital(note.substring(unit.length() + 1).strip()),
              "It is so when the mode \"" + mode.mode().name() + "\" is at rest.",
              "");
        }
      }
    }
  }

  private String element(String note) {
    return spec.units().stream()
        .map(UnitSpec::name)
        .filter(name -> note.startsWith(name + ":"))
        .findFirst()
        .orElse("plant");
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
  }

  private void accounts(Accounts accounts) {
    capture(accounts);
    bed(accounts);
    accounts.storages().forEach(this::storage);
    sieves(accounts);
    recoveries(accounts);
    basis(accounts);
    if (!accounts.notCounted().isEmpty()) {
      add(
          Severity.NOTE,
          "energy account",
          "The energy of some pumps is not counted, because their head is not known.",
          "Not counted: " + String.join(", ", accounts.notCounted()) + ".",
          "Give each as a machine with its power, named for its stream.");
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

  private void basis(Accounts accounts) {
    Basis basis = accounts.basis();
    if (!basis.byDay() && basis.day() > 0) {
      add(
          Severity.NOTE,
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
                  : ""),
          "");
    }
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
          case PASS -> "The plant recovers the share of the flushed sand asked for.";
          case CAUTION ->
              "The plant recovers the share of the flushed sand asked for as expected, not over the"
                  + " whole range.";
          default -> "The plant does not recover the share of the flushed sand asked for.";
        };
    add(
        severity,
        "sand recovery",
        what,
        "It recovers "
            + show(Kind.PERCENT, capture)
            + " of the sand flushed; asked for is "
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
        bed.organicMatter(),
        spec.targets().bedOrganicMatter(),
        "Rinse the sand, dilute more with thinner liquor, or let the lane run faster.");
    limit(
        "moisture of recovered sand",
        bed.moisture(),
        spec.targets().bedMoisture(),
        "Let it drain in a heap before it is bedded.");
  }

  private void limit(String element, Range value, double most, String cure) {
    boolean kept = value.high() <= most;
    boolean expected = value.base() <= most;
    add(
        kept ? Severity.PASS : Severity.CAUTION,
        element,
        kept
            ? "It is within what is wanted."
            : expected
                ? "It is within what is wanted as expected, not over the whole range."
                : "It is more than is wanted.",
        show(Kind.PERCENT, value) + " against " + show(Kind.PERCENT, most) + " at most.",
        kept ? "" : cure);
  }

  private void storage(String name, StorageAccount account) {
    spec.targets().storageDays().ifPresent(wanted -> wanted(name, account, wanted));
    account
        .worstToTheBrim()
        .filter(brim -> brim.days() < YEAR_D)
        .ifPresent(
            brim ->
                add(
                    Severity.NOTE,
                    name,
                    "Unless it is emptied, the storage runs over.",
                    "Emptied at the start of "
                        + account.months().get(brim.startMonth()).name()
                        + " it is full to the brim, freeboard and the room of the storm used up, "
                        + show(Kind.DAYS, InUnit.ofDays(brim.days()))
                        + " later, in "
                        + account.months().get(brim.month()).name()
                        + ".",
                    ""));
    OptionalDouble years = account.yearsToTenth();
    if (years.isPresent()) {
      add(
          years.getAsDouble() < FEW_YEARS ? Severity.CAUTION : Severity.NOTE,
          name,
          "Sand that is not caught settles in the storage and takes its volume.",
          "It rises "
              + show(Kind.BORE, account.sandRisePerYearM())
              + " a year ("
              + show(Kind.VOLUME, account.sandPerYearM3())
              + " in bulk) and takes a tenth of the volume in "
              + show(Kind.NUMBER, years.getAsDouble())
              + " years (sooner than "
              + Math.round(FEW_YEARS)
              + " is a caution by common practice, no source).",
          years.getAsDouble() < FEW_YEARS
              ? "Plan to dig it out within "
                  + show(Kind.NUMBER, years.getAsDouble())
                  + " years, or catch more sand before it."
              : "");
    }
  }

  private void wanted(String name, StorageAccount account, double wanted) {
    Optional<StorageAccount.Filling> filling = account.worstFilling();
    boolean enough = filling.isEmpty() || filling.get().days() >= wanted;
    double shortM3 = account.roomNeededM3(wanted) - account.roomM3();
    add(
        enough ? Severity.PASS : Severity.FAIL,
        name,
        enough
            ? "The storage lasts as many days as are wanted."
            : "The storage does not last as many days as are wanted.",
        filling
            .map(
                worst ->
                    "It lasts "
                        + show(Kind.DAYS, InUnit.ofDays(worst.days()))
                        + " from the start of "
                        + account.months().get(worst.startMonth()).name()
                        + " on, the worst month, and is full in "
                        + account.months().get(worst.month()).name()
                        + ", below freeboard and storm and above the sand there now; wanted are "
                        + show(Kind.DAYS, InUnit.ofDays(wanted))
                        + ".")
            .orElse(
                "It never fills, because the year evaporates what comes in; wanted are "
                    + show(Kind.DAYS, InUnit.ofDays(wanted))
                    + "."),
        enough
            ? ""
            : "Find room for "
                + show(Kind.VOLUME, Math.max(0, shortM3))
                + " more, dig the sand out, or bring less water.");
    OptionalDouble years = account.yearsUntilShortOf(wanted);
    if (!enough || years.isEmpty()) {
      return;
    }
    boolean soon = years.getAsDouble() < FEW_YEARS;
    boolean never = years.getAsDouble() > MOST_YEARS;
    add(
        soon ? Severity.CAUTION : Severity.NOTE,
        name,
        never
            ? "In "
                + Math.round(MOST_YEARS)
                + " years settled sand does not cut into the"
                + " room of storm and freeboard."
            : "Settled sand cuts into the room of storm and freeboard in year "
                + (int) (Math.floor(years.getAsDouble()) + 1)
                + ".",
        "The days wanted ask for "
            + show(Kind.VOLUME, account.roomNeededM3(wanted))
            + " of "
            + show(Kind.VOLUME, account.roomM3())
            + "; sand takes "
            + show(Kind.VOLUME, account.sandPerYearM3())
            + " a year, as much as new sand loses.",
        soon ? "Plan to dig it out before that year." : "");
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
        "Recycling more of a thick liquid dilutes nothing: what the loop thickens to follows from"
            + " the solids that nothing catches and the net water that comes in.",
        "S = "
            + show(Kind.MASS_PER_DAY, main.solidsNotCaughtKgps())
            + " of solids not caught and W = "
            + show(Kind.MASS_PER_DAY, main.netWaterKgps())
            + " of net water give S / (S + W) = "
            + show(Kind.PERCENT, main.analytic())
            + "; the balance finds "
            + show(Kind.PERCENT, main.solved())
            + "."
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
        "No unit catches dissolved salts: only fresh water thins them.",
        "Dissolved solids settle at "
            + show(Kind.PERCENT, main.dissolved())
            + " of the water with them (from "
            + show(Kind.PERCENT, SALTY)
            + " on a caution by common practice, no source). Where they concentrate, struvite can scale pipes, pumps and"
            + " valves; whether it does depends on magnesium, ammonium, phosphate and pH, which are"
            + " not computed.",
        salty
            ? "Have the liquid tested, and look into pipes and valves where it is turbulent."
            : "");
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
    boolean kept = main.solved() <= target;
    double water = Liquor.waterFor(main.solidsNotCaughtKgps(), target) - main.netWaterKgps();
    Stream in = total();
    double capture = Liquor.captureFor(in.solidsKgps(), main.netWaterKgps(), target);
    add(
        kept ? Severity.PASS : Severity.CAUTION,
        "liquor of the loop",
        kept ? "The liquor is as thin as is wanted." : "The liquor is thicker than is wanted.",
        show(Kind.PERCENT, main.solved()) + " against " + show(Kind.PERCENT, target) + ".",
        kept
            ? ""
            : "Bring "
                + show(Kind.MASS_PER_DAY, water)
                + " more fresh water, or catch "
                + show(Kind.PERCENT, capture)
                + " of all solids that come in; at rest nothing else thins it.");
  }

  private Stream total() {
    return result.total().meanFlow();
  }

  private void days() {
    result
        .days()
        .stopped()
        .ifPresent(
            failure ->
                add(
                    Severity.FAIL,
                    "day by schedule",
                    "The day cannot be run to its end.",
                    failure.explanation(),
                    "Change the units named."));
    if (result.days().last().isEmpty()) {
      return;
    }
    Day day = result.days().last().get();
    for (PitDay pit : day.pits().values()) {
      double capacity = capacity(pit.name());
      if (pit.overflowed()) {
        add(
            Severity.FAIL,
            pit.name(),
            "The pit runs over its brim in the course of the day.",
            show(Kind.VOLUME, pit.spilledM3())
                + " spills in a day; it holds "
                + show(Kind.VOLUME, capacity)
                + ".",
            "Pump more out, or give it an overflow or "
                + show(Kind.VOLUME, pit.mostM3() - capacity)
                + " more of volume for each time it is full.");
      }
      pit.shortM3()
          .forEach(
              (stream, missing) ->
                  add(
                      Severity.CAUTION,
                      pit.name(),
                      "The pit runs empty: the pump of \"" + stream + "\" finds too little.",
                      "It misses " + show(Kind.VOLUME, missing) + " in a day.",
                      "Set the pump lower by "
                          + show(Kind.FLOW, missing / InUnit.ofDays(1))
                          + " in the mean, or stop it by the level."));
      if (!pit.overflowed() && pit.shortM3().isEmpty()) {
        add(
            Severity.PASS,
            pit.name(),
            pool(pit.name())
                ? "The storage can give back what is pumped from it."
                : "The pit neither runs over nor empty in a day.",
            "It holds "
                + show(Kind.VOLUME, pit.leastM3())
                + " to "
                + show(Kind.VOLUME, pit.mostM3())
                + " of "
                + show(Kind.VOLUME, capacity)
                + ".",
            "");
      }
    }
  }

  private boolean pool(String name) {
    return spec.units().stream()
        .anyMatch(
            u -> u instanceof PitSpec pit && pit.name().equals(name) && pit.pool().isPresent());
  }

  private double capacity(String name) {
    return spec.units().stream()
        .filter(PitSpec.class::isInstance)
        .map(unit -> ((PitSpec) unit).pit())
        .filter(pit -> pit.name().equals(name))
        .findFirst()
        .orElseThrow()
        .capacityM3();
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

  /** Manure comes in batches; without times the balance spreads them over the day. */
  private void batches() {
    for (int i = 0; i < spec.pens().size(); i++) {
      PenSpec pen = spec.pens().get(i);
      PenLoad load = result.loads().get(i);
      String fed =
          pen.batches()
              .map(
                  batch ->
                      " The schedule feeds it "
                          + batch.perDay()
                          + " times a day, for "
                          + show(Kind.MINUTES, batch.durationS())
                          + " each.")
              .orElse(" The schedule feeds manure evenly over the day.");
      for (UnitSpec unit : spec.units()) {
        if (unit instanceof PitSpec pit && pit.inlets().contains(pen.stream())) {
          double room = pit.pit().capacityM3();
          boolean fits = load.volumePerBatchM3().high() <= room;
          add(
              fits ? Severity.PASS : Severity.CAUTION,
              pit.name(),
              fits
                  ? "An empty pit takes a whole batch of " + load.name() + "."
                  : "Even an empty pit does not take a batch of " + load.name() + ".",
              "A batch is "
                  + show(Kind.VOLUME, load.volumePerBatchM3())
                  + "; the pit holds "
                  + show(Kind.VOLUME, room)
                  + "."
                  + fed,
              fits
                  ? ""
                  : "Scrape more often, or enlarge it by "
                      + show(Kind.VOLUME, load.volumePerBatchM3().high() - room)
                      + ".");
        }
      }
    }
  }

  /** What the peak of the batches does to the units that see it. */
  private void peaks() {
    boolean scheduled = spec.pens().stream().anyMatch(pen -> pen.batches().isPresent());
    if (!scheduled || result.days().last().isEmpty()) {
      return;
    }
    Day day = result.days().last().get();
    Optional<SteadyBalance> balance = result.main().balance();
    for (UnitSpec unit : spec.units()) {
      UnitDay seen = day.units().get(unit.name());
      boolean separates =
          unit instanceof BoxSpec || unit instanceof LaneUnitSpec || unit instanceof CycloneSpec;
      if (!separates
          || seen == null
          || seen.peakOverMean() < NO_PEAK
          || !(seen.peakFeed().sandKgps() > 0)
          || balance.isEmpty()) {
        continue;
      }
      double fed = balance.get().feed(unit.name()).sandKgps();
      double even =
          fed > 0 ? Math.min(1, balance.get().stream(unit.outlets().get(0)).sandKgps() / fed) : 0;
      boolean loses = seen.capture() < even - PEAK_LOSS;
      add(
          loses ? Severity.CAUTION : Severity.NOTE,
          unit.name(),
          loses
              ? "At the peak of a batch it catches less than the mean flow of the day lets hope."
              : "The peak of a batch costs it little or no sand.",
          "The batches bring "
              + show(Kind.FLOW, seen.peakFeed().volumeM3ps())
              + " at "
              + clock(seen.peakAtS())
              + " h, "
              + show(Kind.NUMBER, seen.peakOverMean())
              + " times the mean. It then catches "
              + show(Kind.PERCENT, seen.captureAtPeak())
              + " of its sand, over the day, weighted by the sand, "
              + show(Kind.PERCENT, seen.capture())
              + "; in the balance of the longest mode "
              + show(Kind.PERCENT, even)
              + ".",
          loses
              ? "Buffer the batches in a pit before it, scrape slower or pens in turn, or give it"
                  + " more area."
              : "");
    }
    dayNotes(day);
    double target = spec.targets().sandCapture();
    double recovered = recovered(day);
    boolean hoped =
        result.accounts().map(accounts -> accounts.capture().base() >= target).orElse(false);
    if (hoped && recovered < target) {
      add(
          Severity.CAUTION,
          "sand recovery",
          "By the schedule, with its batches, the plant recovers less sand than is asked for.",
          "On day "
              + day.number()
              + " it recovers "
              + show(Kind.PERCENT, recovered)
              + "; asked for is "
              + show(Kind.PERCENT, target)
              + ", which an even feed would give.",
          "Even the feed out: a pit before the first unit, slower scraping, or pens in turn.");
    }
  }

  /** What units say in the course of a day and do not say at rest. */
  private void dayNotes(Day day) {
    Set<String> told = new LinkedHashSet<>();
    result.modes().forEach(mode -> mode.balance().ifPresent(b -> told.addAll(b.notes())));
    Set<String> units = new LinkedHashSet<>();
    for (String note : day.notes()) {
      String unit = element(note);
      // Numbers in a note change from step to step: one of each unit is enough.
      if (!told.contains(note) && units.add(unit)) {
        add(
            Severity.CAUTION,
            unit,
            unit.equals("plant") ? note : capital(note.substring(unit.length() + 1).strip()),
            "It is so for a part of the day by schedule, when a batch comes or none does.",
            "");
      }
    }
  }

  private double recovered(Day day) {
    double flushed = 0;
    double caught = 0;
    for (PenSpec pen : spec.pens()) {
      flushed += day.meanFlows().get(pen.stream()).sandKgps();
    }
    for (PlantSpec.Product product : spec.products()) {
      if (product.use() == PlantSpec.Use.BEDDING) {
        caught += day.meanFlows().get(product.stream()).sandKgps();
      }
    }
    return flushed > 0 ? caught / flushed : 1;
  }

  private static String clock(double seconds) {
    return String.format(java.util.Locale.ROOT, "%.1f", InUnit.days(seconds) * 24);
  }

  /** Whether a flush cleans its alley, carries its sand and is refilled in time. */
  private void flush(PenSpec pen, SteadyBalance balance) {
    FlushSpec spec = pen.flush().orElseThrow();
    Flush flush = spec.flush();
    List<String> lacking = new ArrayList<>();
    List<String> cures = new ArrayList<>();
    if (flush.velocityMps() < Flush.PRACTICE_VELOCITY_MPS * NEARLY) {
      lacking.add("it is slower");
      cures.add(
          "a slope of "
              + show(Kind.PERCENT, flush.slopeFor(Flush.PRACTICE_VELOCITY_MPS))
              + " at this depth or a higher rate");
    }
    if (flush.depthM() < Flush.PRACTICE_DEPTH_M * NEARLY) {
      lacking.add("it is shallower");
      cures.add(
          "a rate of "
              + show(Kind.FLOW, rateForDepth(spec))
              + ", which runs "
              + show(Kind.BORE, Flush.PRACTICE_DEPTH_M)
              + " deep");
    }
    if (flush.durationS() < Flush.PRACTICE_TIME_S * NEARLY) {
      lacking.add("it is shorter");
      cures.add(
          show(Kind.VOLUME, spec.rateM3ps() * Flush.PRACTICE_TIME_S) + " a flush at this rate");
    }
    add(
        lacking.isEmpty() ? Severity.PASS : Severity.CAUTION,
        spec.unit(),
        lacking.isEmpty()
            ? "The flush is as fast, deep and long as practice asks."
            : "The flush is less than practice asks: " + String.join(", ", lacking) + ".",
        "It runs "
            + show(Kind.VELOCITY, flush.velocityMps())
            + ", "
            + show(Kind.BORE, flush.depthM())
            + " deep, for "
            + show(Kind.TIME, flush.durationS())
            + ", a wave of "
            + show(Kind.LENGTH, flush.waveM())
            + " in an alley of "
            + show(Kind.LENGTH, spec.lengthM())
            + ". University of Missouri Extension WQ313 asks for "
            + show(Kind.VELOCITY, Flush.PRACTICE_VELOCITY_MPS)
            + ", "
            + show(Kind.BORE, Flush.PRACTICE_DEPTH_M)
            + " and "
            + show(Kind.TIME, Flush.PRACTICE_TIME_S)
            + " at least.",
        lacking.isEmpty() ? "" : "Give it " + String.join(", and ", cures) + ".");
    double stress = flush.stressPa(PlantUnits.water(model).densityKgM3());
    double needed = Flush.movingStressPa(PlantUnits.coarsest(model), PlantUnits.water(model));
    boolean moved = stress >= needed;
    add(
        moved ? Severity.PASS : Severity.CAUTION,
        spec.unit(),
        moved
            ? "The flush moves the coarsest sand along the alley."
            : "The flush leaves the coarsest sand on the alley.",
        "Its stress on the floor is "
            + show(Kind.STRESS, stress)
            + "; a grain of "
            + show(Kind.GRAIN, PlantUnits.coarsest(model).diameterM())
            + " moves from "
            + show(Kind.STRESS, needed)
            + " on (Shields curve, a clean floor in water). The balance takes all sand along"
            + " with the flush. Along curbs, in grooves and behind a wave that is shorter than the"
            + " alley sand stays all the same.",
        moved ? "" : "Flush deeper or on more slope, or scrape the alley.");
    double brought = PlantUnits.flushWaterM3(pen, balance);
    boolean refilled = brought >= spec.volumeM3() * NEARLY;
    boolean more = brought > spec.volumeM3() / NEARLY;
    add(
        refilled && !more ? Severity.PASS : Severity.CAUTION,
        spec.unit(),
        refilled
            ? more
                ? "More water flows to the flush than its tank lets out."
                : "The water of a flush comes back before the next."
            : "The water of a flush does not come back before the next.",
        "A flush takes "
            + show(Kind.VOLUME, spec.volumeM3())
            + "; \""
            + spec.water()
            + "\" brings "
            + show(Kind.VOLUME, brought)
            + " from one to the next, "
            + show(Kind.HOURS, pen.pen().scrapingIntervalS())
            + " later. The balance counts what the stream brings.",
        refilled && !more
            ? ""
            : "Set \""
                + spec.water()
                + "\" to "
                + show(Kind.FLOW, spec.volumeM3() / pen.pen().scrapingIntervalS())
                + ", or flush "
                + (more ? "more" : "less")
                + " often.");
  }

  /** The rate at which the alley runs as deep as practice asks [m3/s]. */
  private static double rateForDepth(FlushSpec spec) {
    return new Flush(spec.alley(), Flush.PRACTICE_DEPTH_M, Flush.PRACTICE_TIME_S).flowM3ps();
  }

  /** Sand that settles in a pit, and what the balance takes for granted about it. */
  private void settled(PitSpec pit, SteadyBalance balance) {
    Stream feed = balance.feed(pit.name());
    if (!(feed.sandKgps() > 0) || pit.pool().isPresent()) {
      return;
    }
    double settles = balance.stream(pit.settled()).sandKgps();
    OptionalDouble fills = PlantUnits.fillsS(model, pit, balance);
    if (fills.isEmpty() || settles / feed.sandKgps() < LITTLE) {
      add(
          Severity.NOTE,
          pit.name(),
          "The balance counts no sand as settled in this pit.",
          pit.mixer().isPresent()
              ? "Its mixer holds every class up while it runs, and is taken to lift again what has"
                  + " settled meanwhile."
              : "At its overflow rate of "
                  + show(Kind.FALL, feed.volumeM3ps() / pit.areaM2())
                  + " none falls out of its liquor.",
          "");
      return;
    }
    boolean soon = fills.getAsDouble() < InUnit.ofDays(YEAR_D);
    add(
        soon ? Severity.CAUTION : Severity.NOTE,
        pit.name(),
        "Sand settles in this pit and has to be dug out of it.",
        show(Kind.PERCENT, Math.min(1, settles / feed.sandKgps()))
            + " of its sand, "
            + show(Kind.MASS_PER_DAY, settles)
            + ", stays on the floor and takes a quarter of the pit in "
            + show(Kind.DAYS, fills.getAsDouble())
            + ". "
            + (pit.mixer().isPresent()
                ? "Its mixer does not hold all of it up."
                : "No mixer is given: sand falls against an overflow rate of "
                    + show(Kind.FALL, feed.volumeM3ps() / pit.areaM2())
                    + ", which is the flow over the plan area (capacity over depth)."),
        soon
            ? "Catch more sand before it, mix it while it is pumped, or plan to dig it out within "
                + show(Kind.DAYS, fills.getAsDouble())
                + ". Do not enter it: see the cautions."
            : "");
  }

  private void units(SteadyBalance balance) {
    Set<Bound.Excess> excesses = new LinkedHashSet<>();
    for (UnitSpec unit : spec.units()) {
      Stream feed = balance.feed(unit.name());
      if (unit instanceof BoxSpec box) {
        PlantUnits.box(model, box, feed).ifPresent(r -> excesses.addAll(r.excesses()));
      } else if (unit instanceof CycloneSpec cyclone) {
        PlantUnits.cyclone(model, cyclone, cyclone.model(), feed)
            .ifPresent(r -> excesses.addAll(r.performance().excesses()));
      } else if (unit instanceof LaneUnitSpec lane) {
        PlantUnits.filling(model, lane, feed).ifPresent(filling -> lane(lane, filling));
      } else if (unit instanceof PitSpec pit) {
        PlantUnits.mixing(model, pit, feed)
            .ifPresent(
                mixing -> mixing(pit, mixing, PlantUnits.mixingFeed(model, feed).orElseThrow()));
        settled(pit, balance);
      } else {
        PlantUnits.pen(model, unit).ifPresent(pen -> flush(pen, balance));
      }
      if (!excesses.isEmpty()) {
        add(
            Severity.NOTE,
            unit.name(),
            "Methods are used outside their published ranges.",
            String.join(
                    "; ", excesses.stream().map(excess -> excess.describe(units)).limit(4).toList())
                + (excesses.size() > 4 ? "; and " + (excesses.size() - 4) + " more" : "")
                + ".",
            "");
        excesses.clear();
      }
    }
  }

  private void lane(LaneUnitSpec lane, LaneFilling filling) {
    Optional<LaneTurn> turn = PlantUnits.turn(lane, filling);
    if (turn.isEmpty()) {
      return;
    }
    double interval = InUnit.days(turn.get().fillS());
    double wait = turn.get().waitS(lane.lanes());
    boolean enough = wait >= 0;
    drains(lane, filling);
    add(
        !enough || interval < SHORT_INTERVAL_D ? Severity.CAUTION : Severity.PASS,
        lane.name(),
        enough
            ? "One lane is always ready while the others drain and are dug."
            : "The next lane is not ready when one is full.",
        "A lane fills in "
            + show(Kind.DAYS, turn.get().fillS())
            + " and keeps "
            + show(Kind.PERCENT, filling.meanRecovery())
            + " of its sand from clean to clean-out, "
            + show(Kind.PERCENT, filling.points().get(0).recovery())
            + " at first and "
            + show(Kind.PERCENT, filling.lastRecovery())
            + " at last"
            + (lane.filled().isPresent()
                ? ", while the balance judges it "
                    + show(Kind.PERCENT, lane.filled().getAsDouble())
                    + " full"
                : "")
            + "; draining and digging take "
            + show(Kind.DAYS, lane.drainS() + lane.digS())
            + ".",
        enough
            ? ""
            : "Have "
                + show(Kind.NUMBER, turn.get().lanesNeeded())
                + " lanes in turn instead of "
                + lane.lanes()
                + ".");
  }

  /** Whether a lane drains in the time that it is given, and where its sand lies meanwhile. */
  private void drains(LaneUnitSpec lane, LaneFilling filling) {
    double least = PlantUnits.drainS(model, lane, filling);
    boolean drains = least <= lane.drainS();
    SandStack stack = PlantUnits.stack(model, lane, filling);
    add(
        drains ? Severity.PASS : Severity.CAUTION,
        lane.name(),
        drains
            ? "Clean sand drains in the lane in the time that it is given."
            : "Even clean sand does not drain in the lane in the time that it is given.",
        "Over "
            + show(Kind.LENGTH, lane.drainPathM())
            + " to a drain the water in it falls to a tenth in "
            + show(Kind.DAYS, least)
            + " at least (Boussinesq 1904, permeability by Hazen's rule); it is given "
            + show(Kind.DAYS, lane.drainS())
            + ". Organic matter in the pores makes that far longer. Dug out, the sand of "
            + show(Kind.DAYS, lane.stackS())
            + ", "
            + show(Kind.VOLUME, stack.volumeM3())
            + ", lies in a windrow on ground of "
            + show(Kind.LENGTH, stack.footLengthM(lane.stackHeightM()))
            + " by "
            + show(Kind.LENGTH, stack.footWidthM(lane.stackHeightM()))
            + ".",
        drains ? "" : "Put drains under the sand or in the wall, or let it drain in the stack.");
  }

  private void mixing(PitSpec pit, PitMixing mixing, UnitFeed feed) {
    if (!(feed.sandTotalKgps() > 0)) {
      return;
    }
    double left = mixing.leftKgps(feed) / feed.sandTotalKgps();
    double carried = mixing.carriedKgps(feed) / feed.sandTotalKgps();
    double just = mixing.speedRps() / Math.max(mixing.speedRatio(), 1e-9);
    boolean little = mixing.speedRatio() < 1;
    boolean much = mixing.speedRatio() > FAST_MIXER;
    add(
        little || much ? Severity.CAUTION : Severity.NOTE,
        pit.name(),
        little
            ? "Too little mixing: sand stays on the floor of the pit, where it sets."
            : much
                ? "Far more mixing than sand needs: it goes along with all that leaves the pit."
                : "The mixer just holds the sand up, and sends it along with all that leaves.",
        "By Zwietering (1958) all sand is up at "
            + (mixing.speedRps() > 0
                ? show(Kind.FREQUENCY, just)
                : "a speed that a mixer at rest does not have")
            + "; at "
            + show(Kind.FREQUENCY, mixing.speedRps())
            + " "
            + show(Kind.PERCENT, left)
            + " of the sand stays and "
            + show(Kind.PERCENT, carried)
            + " goes along. Before a separator the first is lost room, after it the second is lost"
            + " sand.",
        little && mixing.speedRps() > 0
            ? "Run it at " + show(Kind.FREQUENCY, just) + " while the pit is pumped."
            : much ? "Run it at " + show(Kind.FREQUENCY, just) + "." : "");
  }

  private void loads() {
    if (!result.total().excesses().isEmpty()) {
      add(
          Severity.CAUTION,
          "manure production",
          "The milk yield lies outside the yields that the equations were tabled for.",
          String.join("; ", result.total().excesses().stream().map(e -> e.describe(units)).toList())
              + ".",
          "Weigh what is scraped, and give the ratio as manureFactor.");
    }
    double own = manureOf(spec.production());
    for (ManureProduction other : ManureProductions.all()) {
      if (other != spec.production() && own > 0) {
        double ratio = manureOf(other) / own;
        findings.add(
            new Finding(
                Severity.NOTE,
                Topic.PLANT,
                "manure production",
                "The published equations for manure do not agree.",
                "By "
                    + spec.production().name()
                    + " the cows make "
                    + show(Kind.MASS_PER_DAY, own)
                    + " of manure, by "
                    + other.name()
                    + " "
                    + show(Kind.PERCENT, ratio)
                    + " of that.",
                ""));
      }
    }
    for (Map.Entry<String, Double> water : waterOfPens().entrySet()) {
      if (!(water.getValue() > 0)) {
        add(
            Severity.NOTE,
            water.getKey(),
            "No water reaches the manure of this pen, as it is given.",
            "Wash and drinking water differ between farms by a factor of ten and more.",
            "Meter it.");
      }
    }
  }

  private double manureOf(ManureProduction production) {
    return spec.pens().stream()
        .mapToDouble(pen -> pen.pen().cows() * production.manureKgps(pen.pen().milkKgps()).value())
        .sum();
  }

  private Map<String, Double> waterOfPens() {
    Map<String, Double> waters = new java.util.LinkedHashMap<>();
    spec.pens().forEach(pen -> waters.put(pen.pen().name(), pen.pen().waterM3ps().base()));
    return waters;
  }
}
