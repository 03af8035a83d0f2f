package sandslurry.assessment.plant.judged;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.network.Pit;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.UnitNote;
import sandslurry.plant.pen.PenLoad;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.schedule.PitDay;
import sandslurry.plant.schedule.UnitDay;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.plant.unit.PlantUnit.Role;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The day by schedule: pits that run over or empty, their pumps, batches and their peaks. */
record PlantDayFindings(PlantModel model, PlantResult result, Findings findings)
    implements PlantFindingWriter {
  /** A flow that is this near its mean is no peak. */
  private static final double NO_PEAK = 1.05;

  /** Sand of a unit that its peaks must cost before it is worth a caution. */
  private static final double PEAK_LOSS = 0.02;

  /** A pump that runs for more than this share of its time does not stop. */
  private static final double FULL_TIME = 0.995;

  /** Starts of a small motor an hour (common practice, no source). */
  private static final double MOST_STARTS_PER_HOUR = 10;

  /** A pit that fills sooner than this at a power cut gives nobody time to come (own choice). */
  private static final double SHORT_RESERVE_S = InUnit.HOUR.si(1);

  @Override
  public void all() {
    result
        .days()
        .stopped()
        .ifPresent(
            none -> {
              Found found = found("day-stopped", Severity.FAIL, "day by schedule");
              PlantFindings.reason(found, none);
              found.add();
            });
    result.days().last().ifPresent(day -> day.pits().values().forEach(this::pit));
    batches();
    result
        .days()
        .last()
        .filter(day -> model.spec().pens().stream().anyMatch(pen -> pen.batches().isPresent()))
        .ifPresent(this::peaks);
  }

  private void pit(PitDay day) {
    PitUnit given = pit(day.name());
    Pit pit = given.pit();
    boolean high = pit.overflow().isEmpty() && day.mostM3() > pit.levels().alarmM3() * (1 + 1e-6);
    Found found =
        (day.overflowed()
                ? found("spills", Severity.FAIL, day.name())
                    .with("spilled", Kind.VOLUME, day.spilledM3())
                    .with("more", Kind.FLOW, day.spilledM3() / InUnit.DAY.si(1))
                    .why("spills")
                    .cure("pump-more")
                : high
                    ? found("above-alarm", Severity.CAUTION, day.name())
                        .with("alarm", Kind.VOLUME, pit.levels().alarmM3())
                        .why("alarm")
                        .cure("pump-while-filling")
                    : found(
                        given.pool().isPresent() ? "gives-back" : "no-spill",
                        Severity.PASS,
                        day.name()))
            .with("least", Kind.VOLUME, day.leastM3())
            .with("most", Kind.VOLUME, day.mostM3())
            .with("capacity", Kind.VOLUME, pit.capacityM3())
            .why(
                show(Kind.VOLUME, day.leastM3()).equals(show(Kind.VOLUME, day.mostM3()))
                    ? "holds-steady"
                    : "holds");
    List<Map.Entry<String, Double>> stopping =
        day.running().entrySet().stream().filter(pump -> pump.getValue() < FULL_TIME).toList();
    found.when(
        !stopping.isEmpty(),
        f ->
            f.with(
                    "pumps",
                    shown ->
                        String.join(
                            ", ",
                            stopping.stream()
                                .map(
                                    pump ->
                                        "\""
                                            + pump.getKey()
                                            + "\" "
                                            + shown.show(Kind.PERCENT, pump.getValue()))
                                .toList()))
                .why("pumps-run"));
    boolean soon = powerCut(found, given);
    found.add();
    if (soon) {
      Found spills = found("power-cut", Severity.CAUTION, given.name());
      powerCut(spills, given);
      spills.with("least", Kind.HOURS, SHORT_RESERVE_S).why("short-reserve").cure("reserve").add();
    }
    day.running().forEach((pump, share) -> pump(day, pump, share));
  }

  /** How long a pit takes what comes by gravity when the power fails; whether that is short. */
  private boolean powerCut(Found found, PitUnit pit) {
    OptionalDouble fromStop = cut(pit, pit.pit().levels().stopM3());
    OptionalDouble fromStart = cut(pit, pit.pit().levels().startM3());
    if (fromStop.isEmpty() || fromStart.isEmpty()) {
      return false;
    }
    found
        .with("fromStop", Kind.HOURS, fromStop.getAsDouble())
        .with("fromStart", Kind.HOURS, fromStart.getAsDouble())
        .why("power-cut");
    return fromStart.getAsDouble() < SHORT_RESERVE_S;
  }

  private OptionalDouble cut(PitUnit pit, double fromM3) {
    return result
        .main()
        .balance()
        .map(balance -> new PlantPowerCut(model, balance).fillsS(pit, fromM3))
        .orElse(OptionalDouble.empty());
  }

  /** A pump that starts and stops is normal, unless it starts often or was to dilute. */
  private void pump(PitDay day, String pump, double share) {
    if (share < FULL_TIME && model.recycles().contains(pump)) {
      found("recycle-short", Severity.CAUTION, day.name())
          .with("pump", pump)
          .with("share", Kind.PERCENT, share)
          .why("recycle-short")
          .cure("bring-liquid")
          .add();
    }
    startsPerHour(pit(day.name()), pump)
        .filter(starts -> starts > MOST_STARTS_PER_HOUR)
        .ifPresent(
            starts ->
                found("starts-often", Severity.CAUTION, day.name())
                    .with("pump", pump)
                    .count("starts", starts)
                    .count("most", MOST_STARTS_PER_HOUR)
                    .why("starts")
                    .cure("levels-apart")
                    .add());
  }

  /** How often a pump starts at the balance of the longest mode; empty when it does not stop. */
  private Optional<Double> startsPerHour(PitUnit pit, String pump) {
    double set = result.main().mode().flowsM3ps().getOrDefault(pump, pit.pumps().get(pump));
    return result
        .main()
        .balance()
        .map(
            balance ->
                InUnit.HOUR.si(1)
                    * pit.pit().levels().startsPerS(balance.stream(pump).volumeM3ps(), set))
        .filter(starts -> starts > 0);
  }

  private PitUnit pit(String name) {
    return model.spec().pits().stream()
        .filter(pit -> pit.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Manure comes in batches; without times the balance spreads them over the day. */
  private void batches() {
    for (int i = 0; i < model.spec().pens().size(); i++) {
      for (PitUnit pit : model.spec().pits()) {
        if (pit.inlets().contains(model.spec().pens().get(i).stream())) {
          batch(pit, model.spec().pens().get(i), result.loads().get(i));
        }
      }
    }
  }

  private void batch(PitUnit pit, PenSpec pen, PenLoad load) {
    double room = pit.pit().capacityM3();
    double most = load.volumePerBatchM3().high();
    boolean fits = most <= room;
    Found found = found("batch-fits", "batch-too-big", fits, Severity.CAUTION, pit.name());
    with(found, "batch", Kind.VOLUME, load.volumePerBatchM3())
        .with("pen", load.name())
        .with("capacity", Kind.VOLUME, room)
        .why("batch");
    if (pen.batches().isPresent()) {
      found
          .count("perDay", pen.batches().get().perDay())
          .with("lasts", Kind.MINUTES, pen.batches().get().durationS())
          .why("fed-in-batches");
    } else {
      found.why("fed-evenly");
    }
    found
        .when(!fits, f -> f.with("short", Kind.VOLUME, most - room).cure("scrape-more-often"))
        .add();
  }

  /** What the peak of the batches does to the units that see it. */
  private void peaks(Day day) {
    Optional<SteadyBalance> balance = result.main().balance();
    for (PlantUnit unit : model.spec().units()) {
      UnitDay seen = day.units().get(unit.name());
      boolean separates = unit.role() == Role.SETTLES || unit.role() == Role.SPINS;
      if (separates
          && seen != null
          && seen.peakOverMean() >= NO_PEAK
          && seen.peakFeed().sandKgps() > 0
          && balance.isPresent()) {
        peak(unit, seen, balance.get());
      }
    }
    notes(day);
    double target = model.spec().targets().sandCapture();
    double recovered = model.totals().capture(day.meanFlows());
    boolean hoped =
        result.accounts().map(accounts -> accounts.capture().base() >= target).orElse(false);
    if (hoped && recovered < target) {
      found("batches-cost", Severity.FAIL, "sand recovery")
          .count("day", day.number())
          .with("recovered", Kind.PERCENT, recovered)
          .with("wanted", Kind.PERCENT, target)
          .why("batches-cost")
          .cure("even-feed")
          .add();
    }
  }

  private void peak(PlantUnit unit, UnitDay seen, SteadyBalance balance) {
    double fed = balance.feed(unit.name()).sandKgps();
    double even = fed > 0 ? Math.min(1, balance.stream(unit.outlets().get(0)).sandKgps() / fed) : 0;
    if (!(seen.capture() < even - PEAK_LOSS)) {
      return;
    }
    found("peak-loses", Severity.CAUTION, unit.name())
        .with("peak", Kind.FLOW, seen.peakFeed().volumeM3ps())
        .with("at", UnitSystem.clock(seen.peakAtS()))
        .with("ratio", Kind.NUMBER, seen.peakOverMean())
        .with("atPeak", Kind.PERCENT, seen.captureAtPeak())
        .with("overDay", Kind.PERCENT, seen.capture())
        .with("even", Kind.PERCENT, even)
        .why("peak")
        .cure("buffer")
        .add();
  }

  /** What units say in the course of a day and do not say at rest. */
  private void notes(Day day) {
    List<UnitNote> notes = new ArrayList<>();
    result.modes().forEach(mode -> mode.balance().ifPresent(b -> notes.addAll(b.notes())));
    for (UnitNote note : day.notes()) {
      if (notes.stream().noneMatch(note::like)) {
        // A batch is held by the box until the screw has lifted it.
        noted(note, 0).why("in-the-day").add();
      }
    }
  }
}
