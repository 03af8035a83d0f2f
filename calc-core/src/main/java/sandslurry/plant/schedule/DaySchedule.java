package sandslurry.plant.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import sandslurry.numeric.UnsolvedException;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Mode;
import sandslurry.plant.network.Network;
import sandslurry.plant.network.NoSteadyState;
import sandslurry.plant.network.Passage;
import sandslurry.plant.network.Pit;
import sandslurry.plant.network.Unit;
import sandslurry.plant.network.UnitNote;
import sandslurry.units.InUnit;

/**
 * A day of modes, one after the other, with pits that fill and empty.
 *
 * <p>In each step all units pass their feeds on at once and the pits, which are mixed, take up what
 * comes and give off what pumps and weirs take, by the balance of a step of {@link Network}. A pump
 * starts and stops by the level of its pit, so that in a step it takes what comes in and what
 * stands above the stop level, up to its flow. Each constituent is conserved whatever the length of
 * the step.
 */
public final class DaySchedule {
  private static final double HOUR_ROUNDING_S = 1e-6;

  /** What is left to change in the pits when a day repeats itself, over what comes in a day. */
  private static final double REPEATS = 5e-4;

  /** After so many days each pool is brought on: by then the pits that feed it follow it. */
  private static final int BROUGHT_ON = 5;

  /** A batch is run in steps no longer than this, so that its peak is seen [s]. */
  private static final double LONGEST_BATCH_STEP_S = 600;

  /** Flows of two steps that differ by no more than this are one peak: steps agree to a tenth. */
  private static final double SAME_PEAK = 1e-3;

  private final List<Period> periods;
  private final Map<String, Batches> batches;

  /**
   * A mode and when it runs.
   *
   * @param mode the mode
   * @param fromS start since midnight [s]
   * @param toS end since midnight [s]
   */
  public record Period(Mode mode, double fromS, double toS) {}

  private DaySchedule(List<Period> periods, Map<String, Batches> batches) {
    this.periods = periods;
    this.batches = batches;
  }

  /**
   * Makes a schedule in which some feeds come, and some pumps of pits run, in batches.
   *
   * @param periods periods that cover the day, in any order
   * @param batches when they flow, by name of the stream: a feed of the modes or a stream pumped
   *     from a pit; the flow that a mode gives is then its mean over the day
   * @return the schedule
   * @throws IllegalArgumentException if there are {@link #problems}; the message holds all
   */
  public static DaySchedule of(List<Period> periods, Map<String, Batches> batches) {
    List<String> problems = problems(periods);
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", problems));
    }
    return new DaySchedule(sorted(periods), Map.copyOf(batches));
  }

  private static List<Period> sorted(List<Period> periods) {
    return periods.stream().sorted(Comparator.comparingDouble(Period::fromS)).toList();
  }

  /**
   * All that is wrong with a schedule: gaps, overlaps, pits that are not the same in all modes.
   *
   * @param periods the periods, in any order
   * @return one sentence each, without a stop; empty when the schedule can be used
   */
  static List<String> problems(List<Period> periods) {
    List<String> problems = new ArrayList<>();
    double reached = 0;
    for (Period period : sorted(periods)) {
      String name = "\"" + period.mode().name() + "\"";
      if (!(period.fromS() < period.toS())) {
        problems.add(name + " ends at " + period.toS() + " s but starts at " + period.fromS());
      }
      if (!(Math.abs(period.fromS() - reached) <= HOUR_ROUNDING_S)) {
        problems.add(
            name
                + " starts at "
                + period.fromS()
                + " s but the day is covered to "
                + reached
                + " s");
      }
      reached = period.toS();
    }
    if (!(Math.abs(reached - InUnit.DAY.si(1)) <= HOUR_ROUNDING_S)) {
      problems.add("the last mode ends at " + reached + " s, not at " + InUnit.DAY.si(1) + " s");
    }
    Map<String, Pit> pits = new HashMap<>();
    Set<String> names = null;
    for (Period period : periods) {
      Set<String> here = new HashSet<>();
      for (Pit pit : pits(period.mode().network())) {
        here.add(pit.name());
        Pit known = pits.putIfAbsent(pit.name(), pit);
        if (known != null
            && (known.capacityM3() != pit.capacityM3()
                || known.weirVolumeM3() != pit.weirVolumeM3()
                || known.startVolumeM3() != pit.startVolumeM3())) {
          problems.add("the pit \"" + pit.name() + "\" has other volumes in another mode");
        }
      }
      if (names != null && !names.equals(here)) {
        problems.add("\"" + period.mode().name() + "\" has other pits than the first mode");
      }
      names = names == null ? here : names;
    }
    return problems;
  }

  private static List<Pit> pits(Network network) {
    return network.units().stream().flatMap(unit -> unit.asPit().stream()).toList();
  }

  /**
   * Runs the schedule until a day repeats itself.
   *
   * @param days how many days at most
   * @param contents what fills each pit to its start volume at first: a stream of which only the
   *     composition counts, by name of the pit; water where it is left out. A pit that is named is
   *     a pool of months or years: between days it is brought on to where its days lead
   * @param longestStepS no step is longer [s]
   * @return the days
   */
  public DayRun run(int days, Map<String, Stream> contents, double longestStepS) {
    if (days < 1 || !(longestStepS > 0)) {
      throw new IllegalArgumentException(
          "a run needs days and a step > 0 but has " + days + " and " + longestStepS + " s");
    }
    return new Run(filled(contents), contents.keySet(), longestStepS).days(days);
  }

  /**
   * Goes on from the end of a day, maybe one of another schedule with the same pits, until a day
   * repeats itself.
   *
   * @param day the day before
   * @param days how many days at most
   * @param longestStepS no step is longer [s]
   * @return the days, numbered from 1
   */
  public DayRun after(Day day, int days, double longestStepS) {
    Map<String, Stream> held = new TreeMap<>();
    day.pits().forEach((name, pit) -> held.put(name, pit.endContents()));
    return new Run(held, Set.of(), longestStepS).days(days);
  }

  /** What each pit holds at first. */
  private Map<String, Stream> filled(Map<String, Stream> contents) {
    Mode first = periods.get(0).mode();
    Constituents constituents = first.feeds().values().iterator().next().constituents();
    Map<String, Stream> held = new TreeMap<>();
    for (Pit pit : pits(first.network())) {
      Stream filling = contents.getOrDefault(pit.name(), constituents.water(1));
      held.put(pit.name(), filling.times(pit.startVolumeM3() / filling.volumeM3ps()));
    }
    return held;
  }

  /** What passed in a step, of what feeds and contents of the pits. */
  private record Done(
      Map<String, Stream> feeds,
      Map<String, Stream> held,
      Map<String, Double> factors,
      double stepS,
      Passage passage) {
    boolean isLike(
        Map<String, Stream> feeds,
        Map<String, Stream> held,
        Map<String, Double> factors,
        double stepS) {
      return this.stepS == stepS
          && this.held.equals(held)
          && this.feeds.equals(feeds)
          && this.factors.equals(factors);
    }
  }

  /** A network and the batches that flow in it: what passes is alike where these are the same. */
  private record Pattern(Network network, Set<String> flowing) {}

  /** The state of a run. */
  private final class Run {
    private final Constituents constituents;
    private final double longestStepS;
    private final Map<String, Stream> held;
    private final Map<String, PoolCourse> courses = new TreeMap<>();

    /** The last step of each pattern. */
    private final Map<Pattern, Done> last = new HashMap<>();

    Run(Map<String, Stream> held, Set<String> pools, double longestStepS) {
      Mode first = periods.get(0).mode();
      this.constituents = first.feeds().values().iterator().next().constituents();
      this.longestStepS = longestStepS;
      this.held = held;
      pools.forEach(name -> courses.put(name, new PoolCourse()));
    }

    DayRun days(int count) {
      List<Day> days = new ArrayList<>();
      double before = Double.POSITIVE_INFINITY;
      for (int number = 1; number <= count; number++) {
        Map<String, Stream> morning = new TreeMap<>(held);
        Tally tally = new Tally(number, constituents, held);
        for (Period period : periods) {
          Optional<NoSteadyState> failure = run(period, tally);
          if (failure.isPresent()) {
            return new DayRun(days, failure);
          }
        }
        days.add(tally.day());
        double change = tally.changed(morning, held);
        if (number > 1 && repeats(change, before)) {
          break;
        }
        courses.forEach((name, course) -> course.evening(held.get(name)));
        boolean on = number % BROUGHT_ON == 0 && number + BROUGHT_ON <= count;
        if (on) {
          courses.forEach((name, course) -> held.put(name, course.ahead()));
        }
        before = on ? Double.NaN : change;
      }
      return new DayRun(days, Optional.empty());
    }

    /** Neither this day nor all that follow, if the change falls as it does, change much. */
    private static boolean repeats(double change, double before) {
      return change == 0
          || change <= REPEATS && change < before && change * change / (before - change) <= REPEATS;
    }

    private Optional<NoSteadyState> run(Period period, Tally tally) {
      List<Double> edges = edges(period);
      for (int part = 1; part < edges.size(); part++) {
        double from = edges.get(part - 1);
        double length = edges.get(part) - from;
        Map<String, Double> factors = new HashMap<>();
        batches.forEach((name, batch) -> factors.put(name, batch.factor(from, from + length)));
        boolean quiet = factors.values().stream().allMatch(factor -> factor == 0);
        double longest = quiet ? longestStepS : Math.min(longestStepS, LONGEST_BATCH_STEP_S);
        int steps = (int) Math.ceil(length / longest - 1e-9);
        for (int step = 1; step <= steps; step++) {
          Optional<NoSteadyState> failure =
              step(
                  period.mode(),
                  factors,
                  from + length * (step - 1) / steps,
                  length / steps,
                  tally);
          if (failure.isPresent()) {
            return failure;
          }
        }
      }
      return Optional.empty();
    }

    /** The period cut where batches start and end. */
    private List<Double> edges(Period period) {
      TreeSet<Double> edges = new TreeSet<>(List.of(period.fromS(), period.toS()));
      for (Batches batch : batches.values()) {
        for (double edge : batch.edgesS()) {
          if (edge > period.fromS() + HOUR_ROUNDING_S && edge < period.toS() - HOUR_ROUNDING_S) {
            edges.add(edge);
          }
        }
      }
      List<Double> cuts = new ArrayList<>();
      for (double edge : edges) {
        if (cuts.isEmpty()
            || edge - cuts.get(cuts.size() - 1) > HOUR_ROUNDING_S
            || edge == period.toS()) {
          cuts.add(edge);
        }
      }
      return cuts;
    }

    /**
     * What may arrive at the units in the step to come: what arrived in the last step like it, in
     * the first of its kind what arrives at rest. Nothing is carried forward from the day before:
     * near a tip that could lead to another state than the one time leads to.
     */
    private Optional<double[]> near(Pattern pattern, Mode mode) {
      Done done = last.get(pattern);
      return done == null
          ? mode.near().map(pattern.network()::arriving)
          : Optional.of(done.passage().arriving());
    }

    private Optional<NoSteadyState> step(
        Mode mode, Map<String, Double> factors, double fromS, double stepS, Tally tally) {
      Network network = mode.network();
      Map<String, Stream> given = new LinkedHashMap<>();
      mode.feeds()
          .forEach((name, feed) -> given.put(name, feed.times(factors.getOrDefault(name, 1.0))));
      Set<String> flowing = new HashSet<>();
      factors.forEach((name, factor) -> flowing.addAll(factor > 0 ? Set.of(name) : Set.of()));
      Pattern pattern = new Pattern(network, flowing);
      Done done = last.get(pattern);
      Passage passage;
      if (done != null && done.isLike(given, held, factors, stepS)) {
        passage = done.passage();
      } else {
        try {
          passage = network.step(given, held, factors, stepS, near(pattern, mode));
        } catch (UnsolvedException e) {
          return Optional.of(network.tooSmall());
        }
      }
      last.put(pattern, new Done(given, new TreeMap<>(held), factors, stepS, passage));
      tally.notes(passage.notes());
      for (Unit unit : network.units()) {
        if (unit.asPit().isPresent()) {
          tally.pit(unit.asPit().get(), passage, stepS);
        } else if (unit.outlets().isEmpty()) {
          unit.inlets().forEach(inlet -> tally.out(passage.streams().get(inlet).times(stepS)));
        } else if (unit.outlets().size() > 1) {
          tally.unit(unit, passage, fromS, stepS);
        }
      }
      held.putAll(passage.contents());
      Map<String, Double> shares = new HashMap<>(passage.running());
      for (Unit unit : network.units()) {
        double duty = passage.duties().getOrDefault(unit.name(), 1.0);
        unit.outlets().forEach(outlet -> shares.putIfAbsent(outlet, duty));
      }
      passage
          .streams()
          .forEach(
              (name, stream) -> tally.flow(name, stream, stepS, shares.getOrDefault(name, 1.0)));
      given.values().forEach(feed -> tally.in(feed.times(stepS)));
      network.productNames().forEach(name -> tally.out(passage.streams().get(name).times(stepS)));
      return Optional.empty();
    }
  }

  /** What one unit is fed and catches in a day. */
  private static final class UnitTally {
    private final String name;
    private Stream peak;
    private double peakAtS;
    private double peakCaught;
    private double volumeM3;
    private double fedKg;
    private double caughtKg;

    UnitTally(String name) {
      this.name = name;
    }

    void add(Stream feed, double duty, double caughtKgps, double fromS, double stepS) {
      // What steps agree to is no other peak.
      Stream seen = feed.times(1 / duty);
      if (peak == null || seen.volumeM3ps() > peak.volumeM3ps() * (1 + SAME_PEAK)) {
        peak = seen;
        peakAtS = fromS;
        peakCaught = caughtKgps / duty;
      }
      volumeM3 += feed.volumeM3ps() * stepS;
      fedKg += feed.sandKgps() * stepS;
      caughtKg += caughtKgps * stepS;
    }

    UnitDay day() {
      return new UnitDay(
          name,
          volumeM3 / InUnit.DAY.si(1),
          peak,
          peakAtS,
          share(peakCaught, peak.sandKgps()),
          share(caughtKg, fedKg));
    }

    private static double share(double caught, double fed) {
      return fed > 0 ? Math.min(1, caught / fed) : 0;
    }
  }

  /** The account of one day. */
  private static final class Tally {
    private final int number;
    private final Constituents constituents;
    private final Map<String, double[]> flows = new LinkedHashMap<>();
    private final Map<String, List<StreamDay.Moment>> moments = new LinkedHashMap<>();
    private final List<UnitNote> notes = new ArrayList<>();
    private final Map<String, List<Double>> volumes = new LinkedHashMap<>();
    private final Map<String, Double> spilled = new HashMap<>();
    private final Map<String, double[]> running = new HashMap<>();
    private final Map<String, Set<String>> pumps = new HashMap<>();
    private final Map<String, Stream> ends = new HashMap<>();
    private final Map<String, UnitTally> units = new LinkedHashMap<>();
    private final double[] had;
    private final double[] in;
    private final double[] out;
    private final Map<String, Double> startVolumes = new HashMap<>();

    Tally(int number, Constituents constituents, Map<String, Stream> held) {
      this.number = number;
      this.constituents = constituents;
      this.had = Stream.mix(constituents, held.values()).toArray();
      this.in = new double[had.length];
      this.out = new double[had.length];
      held.forEach((name, stream) -> startVolumes.put(name, stream.volumeM3ps()));
    }

    /** A stream, on the average of a step, that flows for a share of it. */
    void flow(String name, Stream stream, double stepS, double share) {
      add(flows.computeIfAbsent(name, key -> new double[had.length]), stream.times(stepS));
      if (stream.volumeM3ps() > 0) {
        moments
            .computeIfAbsent(name, key -> new ArrayList<>())
            .add(new StreamDay.Moment(stream.times(1 / share), share * stepS));
      }
    }

    void notes(List<UnitNote> said) {
      for (UnitNote note : said) {
        if (notes.stream().noneMatch(note::like)) {
          notes.add(note);
        }
      }
    }

    void in(Stream kilograms) {
      add(in, kilograms);
    }

    void out(Stream kilograms) {
      add(out, kilograms);
    }

    private static void add(double[] sum, Stream kilograms) {
      for (int i = 0; i < sum.length; i++) {
        sum[i] += kilograms.kgps(i);
      }
    }

    void unit(Unit unit, Passage passage, double fromS, double stepS) {
      Stream feed = passage.feeds().get(unit.name());
      double caught = passage.streams().get(unit.outlets().get(0)).sandKgps();
      units
          .computeIfAbsent(unit.name(), UnitTally::new)
          .add(feed, passage.duties().get(unit.name()), caught, fromS, stepS);
    }

    void pit(Pit pit, Passage passage, double stepS) {
      Stream left = passage.contents().get(pit.name());
      volumes.computeIfAbsent(pit.name(), name -> new ArrayList<>()).add(left.volumeM3ps());
      ends.put(pit.name(), left);
      pumps.put(pit.name(), pit.draws().keySet());
      double spills =
          pit.overflow().isPresent() ? 0 : passage.streams().get(pit.rest()).volumeM3ps() * stepS;
      spilled.merge(pit.name(), spills, Double::sum);
      for (String pump : pit.draws().keySet()) {
        Double share = passage.running().get(pump);
        if (share != null) {
          running.computeIfAbsent(pump, n -> new double[2])[0] += share * stepS;
          running.get(pump)[1] += stepS;
        }
      }
    }

    /** The greatest change of what pits hold of a constituent, over what comes in a day. */
    double changed(Map<String, Stream> morning, Map<String, Stream> evening) {
      double worst = 0;
      for (String pit : evening.keySet()) {
        for (int i = 0; i < in.length; i++) {
          double change = Math.abs(evening.get(pit).kgps(i) - morning.get(pit).kgps(i));
          worst = Math.max(worst, in[i] > 0 ? change / in[i] : 0);
        }
      }
      return worst;
    }

    Day day() {
      Map<String, Stream> means = new LinkedHashMap<>();
      flows.forEach(
          (name, kilograms) ->
              means.put(name, Stream.of(constituents, kilograms).times(1 / InUnit.DAY.si(1))));
      Map<String, StreamDay> streams = new LinkedHashMap<>();
      moments.forEach((name, all) -> streams.put(name, StreamDay.of(all)));
      Map<String, PitDay> pits = new LinkedHashMap<>();
      for (String name : volumes.keySet()) {
        double start = startVolumes.get(name);
        pits.put(
            name,
            new PitDay(
                name,
                volumes.get(name),
                Math.min(start, volumes.get(name).stream().min(Double::compare).orElseThrow()),
                Math.max(start, volumes.get(name).stream().max(Double::compare).orElseThrow()),
                spilled.get(name),
                running(pumps.get(name)),
                ends.get(name)));
      }
      Map<String, UnitDay> unitDays = new LinkedHashMap<>();
      units.forEach((name, unit) -> unitDays.put(name, unit.day()));
      return new Day(number, means, streams, pits, unitDays, imbalance(), List.copyOf(notes));
    }

    private Map<String, Double> running(Set<String> names) {
      Map<String, Double> shares = new LinkedHashMap<>();
      for (String pump : names) {
        double[] seconds = running.get(pump);
        if (seconds != null) {
          shares.put(pump, seconds[0] / seconds[1]);
        }
      }
      return shares;
    }

    private double imbalance() {
      double[] left = Stream.mix(constituents, ends.values()).toArray();
      double worst = 0;
      for (int i = 0; i < in.length; i++) {
        double came = had[i] + in[i];
        if (came > 0) {
          worst = Math.max(worst, Math.abs(came - out[i] - left[i]) / came);
        }
      }
      return worst;
    }
  }
}
