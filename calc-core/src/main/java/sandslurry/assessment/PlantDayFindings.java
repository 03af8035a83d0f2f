package sandslurry.assessment;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sandslurry.design.PlantSpec.PenSpec;
import sandslurry.design.UnitSpec;
import sandslurry.design.UnitSpec.BoxSpec;
import sandslurry.design.UnitSpec.CycloneSpec;
import sandslurry.design.UnitSpec.LaneUnitSpec;
import sandslurry.design.UnitSpec.PitSpec;
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
    for (PitDay pit : day.pits().values()) {
      PitSpec given = pit(pit.name());
      double capacity = given.pit().capacityM3();
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
            given.pool().isPresent()
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
