package sandslurry.plant.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;

/**
 * Units connected by streams of equal name, in any arrangement, recycles among them.
 *
 * <p>A network divides what comes in by the shares of its units, at once ({@link #solve}: the
 * balance at rest) or over a step of time in which its pits fill and empty ({@link #step}).
 *
 * <p><b>When there is no steady balance.</b> A constituent that reaches units from which no product
 * can be reached piles up without end. That is seen from the shares themselves, not from equations
 * that fail. A plant may also have two steady balances, thin and clogged: which one it comes to
 * depends on what its pits hold at first.
 */
public final class Network {
  /** The greatest relative imbalance of a constituent in a balance that is given out. */
  static final double MOST_IMBALANCE = 1e-9;

  /** How nearly units and feeds agree in a step: its balance closes all the same. */
  private static final double IN_STEP = 1e-4;

  private static final int MOST = 30;
  private static final int NOBODY = -1;
  private final List<Unit> units;
  private final List<String> feedNames;
  private final List<String> productNames;
  private final Map<String, Integer> consumer = new HashMap<>();

  /** The unit that takes each outlet of each unit, or {@link #NOBODY}. */
  private final int[][] takers;

  private final int[][] loops;

  /** How each unit divided what it was fed last: before the pits many steps feed the same. */
  private final Fed[] last;

  private record Fed(Stream feed, double duty, Split split) {}

  private Network(List<Unit> units, Collection<String> feeds, Collection<String> products) {
    this.units = List.copyOf(units);
    this.feedNames = List.copyOf(feeds);
    this.productNames = List.copyOf(products);
    for (int u = 0; u < units.size(); u++) {
      for (String inlet : units.get(u).inlets()) {
        consumer.put(inlet, u);
      }
    }
    this.takers = new int[units.size()][];
    for (int u = 0; u < takers.length; u++) {
      takers[u] =
          units.get(u).outlets().stream()
              .mapToInt(outlet -> consumer.getOrDefault(outlet, NOBODY))
              .toArray();
    }
    this.loops = Loops.of(takers);
    this.last = new Fed[units.size()];
  }

  /**
   * Connects units.
   *
   * @param units the units
   * @param feeds names of the streams that come from outside
   * @param products names of the streams that leave
   * @return the network
   * @throws IllegalArgumentException if there are {@link #problems}; the message holds all
   */
  public static Network of(
      List<? extends Unit> units, Collection<String> feeds, Collection<String> products) {
    List<String> problems = problems(units, feeds, products);
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", problems));
    }
    return new Network(List.copyOf(units), feeds, products);
  }

  /**
   * All that is wrong with a network: names given twice, streams that nobody makes or takes,
   * streams that two make or take.
   *
   * @param units the units
   * @param feeds names of the streams that come from outside
   * @param products names of the streams that leave
   * @return one sentence each, without a stop; empty when the network can be built
   */
  public static List<String> problems(
      List<? extends Unit> units, Collection<String> feeds, Collection<String> products) {
    List<String> problems = new ArrayList<>();
    if (units.isEmpty()) {
      problems.add("a network needs at least one unit");
    }
    if (feeds.isEmpty()) {
      problems.add("a network needs at least one feed");
    }
    Set<String> names = new LinkedHashSet<>();
    Map<String, List<String>> makers = new LinkedHashMap<>();
    Map<String, List<String>> takers = new LinkedHashMap<>();
    for (String feed : feeds) {
      makers.computeIfAbsent(feed, name -> new ArrayList<>()).add("the feeds");
    }
    for (Unit unit : units) {
      if (unit.name().isBlank()) {
        problems.add("a unit has no name");
      } else if (!names.add(unit.name())) {
        problems.add("the name \"" + unit.name() + "\" is given to two units");
      }
      if (unit.inlets().isEmpty()) {
        problems.add("nothing flows into \"" + unit.name() + "\"");
      }
      for (String inlet : unit.inlets()) {
        takers.computeIfAbsent(inlet, name -> new ArrayList<>()).add(quoted(unit));
      }
      for (String outlet : unit.outlets()) {
        makers.computeIfAbsent(outlet, name -> new ArrayList<>()).add(quoted(unit));
      }
    }
    for (String product : products) {
      takers.computeIfAbsent(product, name -> new ArrayList<>()).add("the products");
    }
    streams(problems, makers, takers);
    return problems;
  }

  private static void streams(
      List<String> problems, Map<String, List<String>> makers, Map<String, List<String>> takers) {
    Set<String> streams = new LinkedHashSet<>(makers.keySet());
    streams.addAll(takers.keySet());
    for (String stream : streams) {
      List<String> from = makers.getOrDefault(stream, List.of());
      List<String> to = takers.getOrDefault(stream, List.of());
      if (stream.isBlank()) {
        problems.add("a stream has no name");
      } else if (from.isEmpty()) {
        problems.add(
            "the stream \"" + stream + "\" flows into " + joined(to) + " but nothing makes it");
      } else if (to.isEmpty()) {
        problems.add(
            "the stream \""
                + stream
                + "\" leaves "
                + joined(from)
                + " but no unit takes it and it is not a product");
      }
      if (from.size() > 1) {
        problems.add("the stream \"" + stream + "\" comes from " + joined(from));
      }
      if (to.size() > 1) {
        problems.add("the stream \"" + stream + "\" goes to " + joined(to));
      }
    }
  }

  private static String quoted(Unit unit) {
    return "\"" + unit.name() + "\"";
  }

  private static String joined(List<String> parts) {
    return String.join(" and ", parts);
  }

  /**
   * The units.
   *
   * @return the units in the order given
   */
  public List<Unit> units() {
    return units;
  }

  /**
   * The streams that come from outside.
   *
   * @return their names
   */
  List<String> feedNames() {
    return feedNames;
  }

  /**
   * The streams that leave.
   *
   * @return their names
   */
  public List<String> productNames() {
    return productNames;
  }

  /** The unit that takes each outlet of each unit, below 0 where none does. */
  int[][] takers() {
    return takers;
  }

  /** How a unit divides a feed that it sees in a share of the time. */
  Split split(int unit, Stream feed, double duty) {
    Fed fed = last[unit];
    if (fed == null || fed.duty() != duty || !fed.feed().equals(feed)) {
      fed = new Fed(feed, duty, units.get(unit).split(feed, duty));
      last[unit] = fed;
    }
    return fed.split();
  }

  /** The units in the order of flow, those of a recycle together. */
  int[][] loops() {
    return loops;
  }

  /**
   * Looks for the steady balance that a plant comes to whose pits are full of water at first.
   *
   * @param feeds the streams from outside by name, all of the same constituents
   * @return the balance, or why there is none
   * @throws IllegalArgumentException unless exactly the feeds of this network are given
   */
  public SteadyState solve(Map<String, Stream> feeds) {
    return solve(feeds, Map.of());
  }

  /**
   * Looks for the steady balance that a plant comes to from given contents of its pits.
   *
   * @param feeds the streams from outside by name, all of the same constituents
   * @param filling what fills each pit to its start volume at first: a stream of which only the
   *     composition counts, by name of the pit; water where it is left out
   * @return the balance, or why there is none
   * @throws IllegalArgumentException unless exactly the feeds of this network are given
   */
  public SteadyState solve(Map<String, Stream> feeds, Map<String, Stream> filling) {
    return new SteadySearch(this, constituents(feeds), feeds).from(filling);
  }

  /**
   * Looks for the steady balance next to that of nearly the same plant.
   *
   * @param feeds the streams from outside by name, all of the same constituents
   * @param near a balance of units of the same names
   * @return the balance, from pits full of water where none is near, or why there is none
   * @throws IllegalArgumentException unless exactly the feeds of this network are given
   */
  SteadyState solve(Map<String, Stream> feeds, SteadyBalance near) {
    return new SteadySearch(this, constituents(feeds), feeds).near(near);
  }

  /**
   * What arrives at each unit in a balance.
   *
   * @param balance a balance of units of the same names
   * @return by constituent, unit after unit, as {@link Passage#arriving}
   */
  public double[] arriving(SteadyBalance balance) {
    return units.stream()
        .flatMapToDouble(unit -> Arrays.stream(balance.feed(unit.name()).toArray()))
        .toArray();
  }

  /**
   * What passes in a step of time.
   *
   * @param feeds the streams from outside by name, all of the same constituents
   * @param contents what each pit holds at the start, by name; flows are masses [kg]
   * @param factors flow of pumps over that given, by stream; 1 where left out
   * @param stepS length of the step [s]
   * @param near what may arrive at the units, as {@link Passage#arriving}; empty when nothing is
   *     known
   * @return what passes; each constituent is conserved whatever the length of the step
   */
  public Passage step(
      Map<String, Stream> feeds,
      Map<String, Stream> contents,
      Map<String, Double> factors,
      double stepS,
      Optional<double[]> near) {
    Constituents constituents = constituents(feeds);
    double[][] held = new double[units.size()][constituents.count()];
    for (int u = 0; u < held.length; u++) {
      if (units.get(u) instanceof Pit pit) {
        held[u] = contents.get(pit.name()).toArray();
      }
    }
    StepSolver solver = new StepSolver(this, constituents, feeds, held, stepS, factors);
    return solver.passage(
        near.map(arriving -> solver.solve(solver.through(arriving), 0, IN_STEP, MOST))
            .orElseGet(() -> solver.solve(solver.water(), 1, IN_STEP, MOST)),
        feeds);
  }

  /**
   * Says that the balance cannot be closed in double precision.
   *
   * @return the failure
   */
  public NoSteadyState tooSmall() {
    return NoSteadyState.tooSmall(this);
  }

  private Constituents constituents(Map<String, Stream> feeds) {
    if (!new TreeSet<>(feedNames).equals(new TreeSet<>(feeds.keySet()))) {
      throw new IllegalArgumentException(
          "the network is fed by " + feedNames + " but streams were given for " + feeds.keySet());
    }
    Constituents constituents = feeds.values().iterator().next().constituents();
    Stream.mix(constituents, feeds.values());
    return constituents;
  }
}
