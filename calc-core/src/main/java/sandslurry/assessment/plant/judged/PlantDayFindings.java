package sandslurry.assessment.plant.judged;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.assessment.plant.PlantUnits;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.design.plant.UnitSpec;
import sandslurry.design.plant.UnitSpec.BoxSpec;
import sandslurry.design.plant.UnitSpec.CycloneSpec;
import sandslurry.design.plant.UnitSpec.LaneUnitSpec;
import sandslurry.design.plant.UnitSpec.PitSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.network.Pit;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.pen.PenLoad;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.schedule.PitDay;
import sandslurry.plant.schedule.UnitDay;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * What is to be said of the day by schedule: pits that run over or empty, batches and their peaks.
 */
final class PlantDayFindings extends PlantFindingWriter {
  /** A flow that is this near its mean is no peak. */
  private static final double NO_PEAK = 1.05;

  /** Sand of a unit that its peaks must cost before it is worth a caution. */
  private static final double PEAK_LOSS = 0.02;

  /** A pump that runs for more than this share of its time does not stop. */
  private static final double FULL_TIME = 0.995;

  /** Starts of a small motor an hour (common practice, no source). */
  private static final double MOST_STARTS_PER_HOUR = 10;

  /** A pit that fills sooner than this at a power cut gives nobody time to come (own choice). */
  private static final double SHORT_RESERVE_S = InUnit.ofHours(1);

  PlantDayFindings(PlantModel model, PlantResult result, UnitSystem units) {
    super(model, result, units);
  }

  @Override
  List<Finding> all() {
    days();
    batches();
    peaks();
    return findings;
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
    day.pits().values().forEach(this::pit);
  }

  private void pit(PitDay day) {
    PitSpec given = pit(day.name());
    Pit pit = given.pit();
    String holds =
        "It holds "
            + show(Kind.VOLUME, day.leastM3())
            + " to "
            + show(Kind.VOLUME, day.mostM3())
            + " of "
            + show(Kind.VOLUME, pit.capacityM3())
            + ".";
    if (day.overflowed()) {
      add(
          Severity.FAIL,
          day.name(),
          "The pit spills over its brim.",
          show(Kind.VOLUME, day.spilledM3())
              + " spills in a day; its pumps cannot take it. "
              + holds,
          "Pump at least "
              + show(Kind.FLOW, day.spilledM3() / InUnit.ofDays(1))
              + " more in the mean, or give it an overflow.");
    } else if (pit.overflow().isEmpty() && day.mostM3() > pit.levels().alarmM3() * (1 + 1e-6)) {
      add(
          Severity.CAUTION,
          day.name(),
          "The pit rises above its alarm level in an ordinary day.",
          holds + " The alarm is at " + show(Kind.VOLUME, pit.levels().alarmM3()) + ".",
          "Pump more while it fills, or enlarge it.");
    } else {
      add(
          Severity.PASS,
          day.name(),
          given.pool().isPresent()
              ? "The storage can give back what is pumped from it."
              : "The pit does not spill.",
          holds + running(day) + powerCut(given),
          "");
    }
    powerFails(given);
    day.running().forEach((pump, share) -> pump(day, pump, share));
  }

  /** How long a pit takes what comes by gravity when the power fails. */
  private String powerCut(PitSpec pit) {
    OptionalDouble fromStop = cut(pit, pit.pit().levels().stopM3());
    OptionalDouble fromStart = cut(pit, pit.pit().levels().startM3());
    return fromStop.isEmpty()
        ? ""
        : " At a power cut it takes what comes by gravity for "
            + show(Kind.HOURS, fromStop.getAsDouble())
            + " from the stop level to the brim, for "
            + show(Kind.HOURS, fromStart.getAsDouble())
            + " from the start level.";
  }

  private OptionalDouble cut(PitSpec pit, double fromM3) {
    return result
        .main()
        .balance()
        .map(balance -> new PlantPowerCut(model, balance).fillsS(pit, fromM3))
        .orElse(OptionalDouble.empty());
  }

  private void powerFails(PitSpec pit) {
    OptionalDouble fromStart = cut(pit, pit.pit().levels().startM3());
    if (fromStart.isPresent() && fromStart.getAsDouble() < SHORT_RESERVE_S) {
      add(
          Severity.CAUTION,
          pit.name(),
          "At a power cut the pit soon spills.",
          powerCut(pit).strip()
              + " Less than "
              + show(Kind.HOURS, SHORT_RESERVE_S)
              + " is a caution (own choice, no source).",
          "Give it an overflow to a safe place, a standby pump, or an alarm that stops what comes"
              + " in.");
    }
  }

  private String running(PitDay day) {
    List<String> pumps =
        day.running().entrySet().stream()
            .filter(pump -> pump.getValue() < FULL_TIME)
            .map(
                pump ->
                    "the pump of \"" + pump.getKey() + "\" " + show(Kind.PERCENT, pump.getValue()))
            .toList();
    return pumps.isEmpty() ? "" : " Of the day runs " + String.join(", ", pumps) + ".";
  }

  /** A pump that starts and stops is normal, unless it starts often or was to dilute. */
  private void pump(PitDay day, String pump, double share) {
    if (share < FULL_TIME && model.recycles().contains(pump)) {
      add(
          Severity.CAUTION,
          day.name(),
          "The recycle pump finds less liquid than it is set to: the manure is diluted less.",
          "The pump of \""
              + pump
              + "\" runs "
              + show(Kind.PERCENT, share)
              + " of the time that it is set to run.",
          "Judge the plant by the dilution that it gets, or bring more liquid to this pit.");
    }
    PlantUnits.startsPerHour(model, result, pit(day.name()), pump)
        .filter(starts -> starts > MOST_STARTS_PER_HOUR)
        .ifPresent(
            starts ->
                add(
                    Severity.CAUTION,
                    day.name(),
                    "A pump starts more often than its motor may stand.",
                    "The pump of \""
                        + pump
                        + "\" starts "
                        + show(Kind.NUMBER, starts)
                        + " times an hour; common practice, no source, is "
                        + show(Kind.NUMBER, MOST_STARTS_PER_HOUR)
                        + " at most.",
                    "Set the start level higher or the stop level lower, or take a smaller pump or"
                        + " one of variable speed."));
  }

  private PitSpec pit(String name) {
    return spec.units().stream()
        .filter(PitSpec.class::isInstance)
        .map(PitSpec.class::cast)
        .filter(pit -> pit.name().equals(name))
        .findFirst()
        .orElseThrow();
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
              + UnitSystem.clock(seen.peakAtS())
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
    notes(day);
    double target = spec.targets().sandCapture();
    double recovered = new PlantTotals(model).capture(day.meanFlows());
    boolean hoped =
        result.accounts().map(accounts -> accounts.capture().base() >= target).orElse(false);
    if (hoped && recovered < target) {
      add(
          Severity.CAUTION,
          "sand recovery",
          "By the schedule, with its batches, the plant recovers less sand than is wanted.",
          "On day "
              + day.number()
              + " it recovers "
              + show(Kind.PERCENT, recovered)
              + "; wanted is "
              + show(Kind.PERCENT, target)
              + ", which an even feed would give.",
          "Even the feed out: a pit before the first unit, slower scraping, or pens in turn.");
    }
  }

  /** What units say in the course of a day and do not say at rest. */
  private void notes(Day day) {
    Set<String> told = new LinkedHashSet<>();
    result.modes().forEach(mode -> mode.balance().ifPresent(b -> told.addAll(b.notes())));
    Set<String> units = new LinkedHashSet<>();
    for (String note : day.notes()) {
      // Numbers in a note change from step to step: one of each unit is enough.
      if (!told.contains(note) && units.add(element(note))) {
        said(note, "It is so for a part of the day by schedule, when a batch comes or none does.");
      }
    }
  }
}
