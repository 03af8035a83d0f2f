package sandslurry.plant.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import sandslurry.numeric.FixedPoint;
import sandslurry.numeric.Interruption;
import sandslurry.numeric.LinearSystem;
import sandslurry.numeric.UnsolvedException;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * Units connected by streams of equal name, in any arrangement, recycles among them.
 *
 * <p><b>How a steady balance is found.</b> As long as the shares by which each unit divides its
 * feed are held, the balance of one constituent is linear: with f the feeds of the units, e what
 * comes from outside and S the shares that pass from unit to unit,
 *
 * <pre>f = e + Sᵀ f</pre>
 *
 * <p>which is solved by LU decomposition, once for each constituent. All recycles close at once; no
 * stream has to be torn. Since the shares of a unit sum to 1, the solution conserves each
 * constituent. Then the units are asked again how they divide the feeds found, until the feeds no
 * longer change: at once when shares do not depend on the feed, otherwise by accelerated
 * substitution ({@link FixedPoint}). With pumps of given flow ({@link Pit}), total flows go on by
 * one round at a time and only compositions are closed at once. Should the search not come to rest,
 * everything is passed on round by round.
 *
 * <p><b>When there is none.</b> A constituent that reaches units from which no product can be
 * reached piles up without end. That is seen from the shares themselves, not from equations that
 * fail. A plant may also have two steady states, thin and clogged; the thin one is looked for.
 */
public final class Network {
  /** The greatest relative imbalance of a constituent in a balance that is given out. */
  public static final double MOST_IMBALANCE = 1e-9;

  static final double SETTLED = 1e-11;

  /**
   * How far the last state and its closed balance may differ: closing multiplies what is left of a
   * change by the recycle ratio. The balance conserves all the same; pumps get their flow to this.
   */
  private static final double AGREED = 1e-6;

  private static final int NOBODY = -1;
  private static final int MOST_PASSES = 100;
  private static final int MOST_ROUNDS = 2000;

  private final List<Unit> units;
  private final List<String> feedNames;
  private final List<String> productNames;
  private final Map<String, Integer> consumer = new HashMap<>();

  /** The unit that takes each outlet of each unit, or {@link #NOBODY}. */
  private final int[][] takers;

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
    return problems;
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
  public List<String> feedNames() {
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

  /**
   * Looks for the steady balance.
   *
   * @param feeds the streams from outside by name, all of the same constituents
   * @return the balance, or why there is none
   * @throws IllegalArgumentException unless exactly the feeds of this network are given
   */
  public SteadyState solve(Map<String, Stream> feeds) {
    return solve(feeds, null, SETTLED);
  }

  /**
   * The same, from the feeds of the units in an earlier balance on, which may be null, until they
   * change by no more than a part of the flow through a unit. Conservation does not depend on it.
   *
   * @param feeds a stream for each feed
   * @param earlier a balance to start from, or null
   * @param settled share of the flow through a unit by which its feed may still change
   * @return the steady state
   */
  public SteadyState solve(Map<String, Stream> feeds, SteadyBalance earlier, double settled) {
    if (!new TreeSet<>(feedNames).equals(new TreeSet<>(feeds.keySet()))) {
      throw new IllegalArgumentException(
          "the network is fed by " + feedNames + " but streams were given for " + feeds.keySet());
    }
    Constituents constituents = feeds.values().iterator().next().constituents();
    Stream.mix(constituents, feeds.values());
    double[][] outside = new double[units.size()][constituents.count()];
    Map<String, Stream> ordered = new LinkedHashMap<>();
    for (String name : feedNames) {
      Stream feed = feeds.get(name);
      ordered.put(name, feed);
      Integer unit = consumer.get(name);
      for (int i = 0; unit != null && i < constituents.count(); i++) {
        outside[unit][i] += feed.kgps(i);
      }
    }
    return new Search(constituents, ordered, outside, settled).run(earlier);
  }

  /** A map that leads to the balance, and how often it may be applied. */
  private record Way(UnaryOperator<double[]> map, int most) {}

  /** One search for a balance. */
  private final class Search {
    private final Constituents constituents;
    private final Map<String, Stream> feeds;
    private final double[][] outside;
    private final int count;
    private final double settled;

    Search(
        Constituents constituents, Map<String, Stream> feeds, double[][] outside, double settled) {
      this.settled = settled;
      this.constituents = constituents;
      this.feeds = feeds;
      this.outside = outside;
      this.count = constituents.count();
    }

    SteadyState run(SteadyBalance earlier) {
      try {
        FixedPoint.Result result = null;
        List<Split> splits = List.of();
        int passes = 0;
        for (Way way : ways()) {
          result = FixedPoint.search(way.map(), start(earlier), this::change, settled, way.most());
          passes += result.passes();
          splits = splits(result.state());
          if (result.converged() && trap(splits).isEmpty()) {
            double[][] closed = balanced(splits);
            if (change(result.state(), flat(closed)) <= AGREED) {
              return balance(splits, closed, passes);
            }
          }
        }
        List<Split> last = splits;
        double[] state = result.state();
        int all = passes;
        return trap(splits)
            .map(none -> (SteadyState) none)
            .orElseGet(() -> unsettled(all, last, state));
      } catch (UnsolvedException e) {
        return tooSmall(e.getMessage());
      }
    }

    /** Shares that do not depend on the feed are closed at once; pumps want their flows first. */
    private List<Way> ways() {
      Way all = new Way(this::closed, MOST_PASSES);
      Way pumped = new Way(this::pumped, MOST_PASSES);
      Way rounds = new Way(state -> round(splits(state), state), MOST_ROUNDS);
      return pumpedM3ps() > 0 ? List.of(pumped, all, rounds) : List.of(all, rounds);
    }

    private double pumpedM3ps() {
      double sum = 0;
      for (Unit unit : units) {
        if (unit instanceof Pit pit) {
          sum += pit.draws().values().stream().mapToDouble(Double::doubleValue).sum();
        }
      }
      return sum;
    }

    /**
     * Composition from closing all recycles, total flow from one more round. A pump passes on its
     * flow whatever comes in, so that an error in the total does not go round, while closing at the
     * share that the pump had at a wrong total would multiply it by the recycle ratio.
     */
    private double[] pumped(double[] state) {
      List<Split> splits = splits(state);
      double[] round = round(splits, state);
      if (trap(splits).isPresent()) {
        return round;
      }
      double[][] closed = balanced(splits);
      for (int u = 0; u < closed.length; u++) {
        double wanted = 0;
        double given = 0;
        for (int i = 0; i < count; i++) {
          wanted += round[u * count + i];
          given += closed[u][i];
        }
        for (int i = 0; i < count && given > 0; i++) {
          closed[u][i] *= wanted / given;
        }
      }
      return flat(closed);
    }

    /**
     * The feeds that close all recycles at the shares of a state. Where these shares let something
     * pile up, as when a pump can still take all there is, the feeds after one more round instead.
     */
    private double[] closed(double[] state) {
      List<Split> splits = splits(state);
      return trap(splits).isPresent() ? round(splits, state) : flat(balanced(splits));
    }

    /** The feeds after what the units give at a state has gone one step on. */
    private double[] round(List<Split> splits, double[] state) {
      double[][] next = new double[units.size()][];
      for (int to = 0; to < next.length; to++) {
        next[to] = outside[to].clone();
      }
      for (int from = 0; from < next.length; from++) {
        double[][] shares = splits.get(from).shares();
        for (int outlet = 0; outlet < shares.length; outlet++) {
          int to = takers[from][outlet];
          for (int i = 0; to != NOBODY && i < count; i++) {
            next[to][i] += shares[outlet][i] * state[from * count + i];
          }
        }
      }
      return flat(next);
    }

    /**
     * Without an earlier balance each unit is first asked about all feeds together with as much
     * water as pumps take: a plant starts with its pits full of water. Where a plant has two steady
     * states, one thin and one clogged, it is the thin one that is found.
     */
    private double[] start(SteadyBalance earlier) {
      Stream all =
          Stream.mix(constituents, feeds.values())
              .plus(constituents.water(pumpedM3ps() * constituents.waterDensityKgM3()));
      double[][] state = new double[units.size()][];
      for (int u = 0; u < units.size(); u++) {
        state[u] = (earlier == null ? all : earlier.feed(units.get(u).name())).toArray();
      }
      return flat(state);
    }

    private List<Split> splits(double[] state) {
      List<Split> splits = new ArrayList<>();
      for (int u = 0; u < units.size(); u++) {
        Unit unit = units.get(u);
        Split split =
            unit.split(
                Stream.of(constituents, Arrays.copyOfRange(state, u * count, (u + 1) * count)));
        if (split.shares().length != unit.outlets().size()) {
          throw new IllegalStateException(
              unit.name() + " has " + unit.outlets().size() + " outlets but divides among others");
        }
        splits.add(split);
      }
      return splits;
    }

    /** The feeds of all units at given shares, constituent by constituent. */
    private double[][] balanced(List<Split> splits) {
      Interruption.check();
      double[][] result = new double[units.size()][count];
      for (int i = 0; i < count; i++) {
        boolean[] reached = reached(splits, i);
        int[] rows = new int[reached.length];
        int n = 0;
        for (int u = 0; u < reached.length; u++) {
          rows[u] = reached[u] ? n++ : NOBODY;
        }
        double[][] matrix = new double[n][n];
        double[] right = new double[n];
        for (int from = 0; from < rows.length; from++) {
          if (!reached[from]) {
            continue;
          }
          right[rows[from]] = outside[from][i];
          matrix[rows[from]][rows[from]] += 1;
          double[][] shares = splits.get(from).shares();
          for (int outlet = 0; outlet < shares.length; outlet++) {
            int to = takers[from][outlet];
            if (to != NOBODY && reached[to]) {
              matrix[rows[to]][rows[from]] -= shares[outlet][i];
            }
          }
        }
        double[] flows = n == 0 ? right : flows(i, matrix, right);
        for (int u = 0; u < rows.length; u++) {
          // Rounding may leave a flow of nothing a hair below zero.
          result[u][i] = reached[u] ? Math.max(0, flows[rows[u]]) : 0;
        }
      }
      return result;
    }

    /** Solves one balance; the name of its constituent is only written where it is needed. */
    private double[] flows(int constituent, double[][] matrix, double[] right) {
      try {
        return LinearSystem.solve("", matrix, right);
      } catch (UnsolvedException e) {
        throw new UnsolvedException("flow of " + constituents.name(constituent) + e.getMessage());
      }
    }

    private boolean[] reached(List<Split> splits, int constituent) {
      boolean[] reached = new boolean[units.size()];
      Deque<Integer> next = new ArrayDeque<>();
      for (int u = 0; u < units.size(); u++) {
        if (outside[u][constituent] > 0) {
          reached[u] = true;
          next.add(u);
        }
      }
      while (!next.isEmpty()) {
        int from = next.remove();
        for (int outlet = 0; outlet < takers[from].length; outlet++) {
          int to = takers[from][outlet];
          if (to != NOBODY && !reached[to] && splits.get(from).shares()[outlet][constituent] > 0) {
            reached[to] = true;
            next.add(to);
          }
        }
      }
      return reached;
    }

    /** The first constituent that these shares let pile up, if any. */
    private Optional<NoSteadyState> trap(List<Split> splits) {
      for (int i = 0; i < count; i++) {
        List<String> trapped = trapped(splits, i);
        if (!trapped.isEmpty()) {
          String name = constituents.name(i);
          return Optional.of(
              new NoSteadyState(
                  NoSteadyState.Reason.NO_PURGE,
                  name,
                  trapped,
                  "There is no steady state: "
                      + name
                      + " flows into "
                      + String.join(", ", trapped)
                      + " and no stream takes it out again. It piles up for as long as the plant"
                      + " runs. "
                      + said(splits, trapped)
                      + "Give it a way out: a purge, an overflow, or a separator that catches"
                      + " it."));
        }
      }
      return Optional.empty();
    }

    /** What units say of their feeds, such as a pump that is to take more than comes in. */
    private String said(List<Split> splits, List<String> names) {
      StringBuilder text = new StringBuilder();
      for (int u = 0; u < units.size(); u++) {
        if (names.contains(units.get(u).name())) {
          splits.get(u).notes().forEach(note -> text.append(note).append(' '));
        }
      }
      return text.toString();
    }

    /** The units that a constituent reaches and from which it reaches no way out. */
    private List<String> trapped(List<Split> splits, int constituent) {
      boolean[] reached = reached(splits, constituent);
      boolean[] free = new boolean[reached.length];
      boolean grew = true;
      while (grew) {
        grew = false;
        for (int u = 0; u < free.length; u++) {
          if (reached[u] && !free[u] && escapes(splits, constituent, u, free)) {
            free[u] = true;
            grew = true;
          }
        }
      }
      List<String> trapped = new ArrayList<>();
      for (int u = 0; u < free.length; u++) {
        if (reached[u] && !free[u]) {
          trapped.add(units.get(u).name());
        }
      }
      return trapped;
    }

    /** Whether some of it leaves the plant from a unit, or reaches one from which some does. */
    private boolean escapes(List<Split> splits, int constituent, int unit, boolean[] free) {
      if (takers[unit].length == 0) {
        return true;
      }
      for (int outlet = 0; outlet < takers[unit].length; outlet++) {
        int to = takers[unit][outlet];
        if ((to == NOBODY || free[to]) && splits.get(unit).shares()[outlet][constituent] > 0) {
          return true;
        }
      }
      return false;
    }

    private double[] flat(double[][] flows) {
      double[] state = new double[units.size() * count];
      for (int u = 0; u < units.size(); u++) {
        System.arraycopy(flows[u], 0, state, u * count, count);
      }
      return state;
    }

    /** The greatest change of a flow, over the total flow through the same unit. */
    private double change(double[] before, double[] after) {
      double worst = 0;
      for (int u = 0; u < units.size(); u++) {
        worst = Math.max(worst, change(u, before, after));
      }
      return worst;
    }

    private double change(int unit, double[] before, double[] after) {
      double total = 0;
      double most = 0;
      for (int i = unit * count; i < (unit + 1) * count; i++) {
        total += after[i];
        most = Math.max(most, Math.abs(after[i] - before[i]));
      }
      return total > 0 ? most / total : most > 0 ? 1 : 0;
    }

    private SteadyState balance(List<Split> splits, double[][] flows, int passes) {
      Map<String, Stream> streams = new LinkedHashMap<>(feeds);
      Map<String, Stream> unitFeeds = new LinkedHashMap<>();
      Set<String> notes = new LinkedHashSet<>();
      for (int u = 0; u < units.size(); u++) {
        Stream feed = Stream.of(constituents, flows[u]);
        unitFeeds.put(units.get(u).name(), feed);
        for (int outlet = 0; outlet < units.get(u).outlets().size(); outlet++) {
          streams.put(units.get(u).outlets().get(outlet), splits.get(u).outlet(feed, outlet));
        }
        notes.addAll(splits.get(u).notes());
      }
      Map<String, Stream> products = new LinkedHashMap<>();
      productNames.forEach(name -> products.put(name, streams.get(name)));
      double imbalance = imbalance(streams, unitFeeds);
      if (!(imbalance <= MOST_IMBALANCE)) {
        return tooSmall("the balance closes only to " + imbalance);
      }
      return new SteadyBalance(streams, unitFeeds, products, imbalance, passes, List.copyOf(notes));
    }

    private double imbalance(Map<String, Stream> streams, Map<String, Stream> unitFeeds) {
      double worst = 0;
      for (int i = 0; i < count; i++) {
        double in = 0;
        double out = 0;
        for (String name : feedNames) {
          in += streams.get(name).kgps(i);
        }
        for (String name : productNames) {
          out += streams.get(name).kgps(i);
        }
        for (Unit unit : units) {
          double fed = unitFeeds.get(unit.name()).kgps(i);
          double arrives = 0;
          for (String inlet : unit.inlets()) {
            arrives += streams.get(inlet).kgps(i);
          }
          out += unit.outlets().isEmpty() ? fed : 0;
          worst = Math.max(worst, relative(arrives, fed));
        }
        worst = Math.max(worst, relative(in, out));
      }
      return worst;
    }

    private double relative(double in, double out) {
      double size = Math.max(Math.abs(in), Math.abs(out));
      return size > 0 ? Math.abs(in - out) / size : 0;
    }

    private NoSteadyState tooSmall(String detail) {
      return new NoSteadyState(
          NoSteadyState.Reason.PURGE_TOO_SMALL,
          "",
          units.stream().map(Unit::name).toList(),
          "There is no steady state that can be computed: a constituent circulates among "
              + String.join(", ", units.stream().map(Unit::name).toList())
              + " so many times before it leaves that its balance cannot be closed ("
              + detail
              + "). Widen its way out.");
    }

    /** Names the units whose feeds still change, the one that changes most first. */
    private NoSteadyState unsettled(int passes, List<Split> splits, double[] state) {
      double[] after = round(splits, state);
      List<Integer> moving = new ArrayList<>();
      for (int u = 0; u < units.size(); u++) {
        if (change(u, state, after) > SETTLED) {
          moving.add(u);
        }
      }
      moving.sort(Comparator.comparingDouble(u -> -change(u, state, after)));
      List<String> names =
          (moving.isEmpty() ? units : moving.stream().map(units::get).toList())
              .stream().map(Unit::name).toList();
      return new NoSteadyState(
          NoSteadyState.Reason.UNSETTLED,
          "",
          names,
          "No steady state was found: after "
              + passes
              + " passes the feeds of "
              + String.join(", ", names)
              + " still change, the first by "
              + UnitSystem.METRIC.show(
                  Kind.PERCENT, moving.isEmpty() ? 0 : change(moving.get(0), state, after))
              + " of the flow through it. What the units do with their feeds swings or drifts. "
              + said(splits, names)
              + "Look for a pump that takes more than comes in, or for a separator that stops when"
              + " the liquor thickens.");
    }
  }
}
