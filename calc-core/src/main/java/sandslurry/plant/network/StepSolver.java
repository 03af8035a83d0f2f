package sandslurry.plant.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sandslurry.numeric.FixedPoint;
import sandslurry.numeric.Interruption;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;

/**
 * What passes through a network at rest, or in a step of time in which pits take up and give off.
 *
 * <p>As long as the shares by which each unit divides what passes through it are held, the balance
 * of a constituent is linear. With x what passes through the units, e what comes from outside, m
 * what pits hold at the start of a step of length h and S the shares that pass from unit to unit,
 *
 * <pre>x = e + m/h + Sᵀ x</pre>
 *
 * <p>which closes all recycles at once; no stream has to be torn. Shares that sum to 1 conserve
 * each constituent, whatever the length of the step; a pit keeps for the next step the share that
 * does not leave it. At rest m/h is left out. The shares follow from x, so that x is substituted
 * until it agrees with them; where it moves on unsteadily, each unit is taken to be mixed and to
 * lag behind its feed for so many passes r,
 *
 * <pre>(1 + r) x' = e + m/h + Sᵀ x' + r x</pre>
 *
 * <p>which is how a plant that was filled with x comes to x'.
 */
final class StepSolver {
  private static final int NOBODY = -1;
  private static final double LEAST_LAG = 0.1;
  private static final double MOST_LAG = 32;

  /**
   * A change that grows in the second pass is not yet unsteady: what a unit divides otherwise shows
   * a pass later in those behind it.
   */
  private static final int EARLIEST_LAG = 2;

  private static final int MOST_ACCELERATED = 100;

  /** A change that falls to less than this share of the one before needs no acceleration. */
  private static final double SLOW = 0.2;

  /** A state that differs by less from the one before the last is that one again. */
  private static final double SAME = 1e-9;

  /** What passes and how it is divided nearly agree: their search may be accelerated. */
  private static final double NEAR = 0.01;

  private final Network network;
  private final Constituents constituents;
  private final List<Unit> units;
  private final int[][] takers;
  private final int count;
  private final double[] stored;
  private final double[] outside;
  private final double stepS;
  private final Map<String, Double> factors;
  private final double[][] pumpsM3ps;

  /** Which of the loops each unit belongs to, and its place in it. */
  private final int[] loopOf;

  private final int[] placeOf;

  /** The units from the last of the flow to the first. */
  private final int[] upstream;

  /** Volume that comes to each unit from outside and that it held. */
  private final double[] comesM3ps;

  private double[] duties;

  /**
   * How the units divide what passes through them.
   *
   * @param of by unit, outlet and constituent; a pit has what it keeps after its outlets
   * @param volumesM3ps volume through each unit by the flows of pumps and weirs
   * @param duties share of the time in which units see their flow
   * @param dutyChange how far these are from those that the units were asked with
   * @param notes what units say
   */
  record Division(
      double[][][] of,
      double[] volumesM3ps,
      double[] duties,
      double dutyChange,
      List<List<UnitNote>> notes) {}

  /**
   * What passes, closed at shares that it agrees with or not.
   *
   * @param through what passes through the units
   * @param division how they divide it
   * @param agreed whether the two agree, but for little of the flow through a unit
   * @param jumps whether the search goes to and fro between two states, as shares that jump let it
   * @param trap what piles up where no way leads out; null when nothing does
   */
  record Passed(double[] through, Division division, boolean agreed, boolean jumps, Trap trap) {}

  /**
   * A constituent that has no way out.
   *
   * @param constituent its index
   * @param units the units in which it piles up
   * @param growsKgps how fast it piles up [kg/s]
   * @param notes what these units say
   */
  record Trap(int constituent, List<String> units, double growsKgps, List<UnitNote> notes) {}

  /**
   * Creates the solver of a step.
   *
   * @param network the network
   * @param constituents what streams are made of
   * @param feeds what flows in from outside, by name
   * @param contents what pits hold at the start, by unit; null at rest [kg]
   * @param stepS length of the step; infinite at rest [s]
   * @param factors flow of pumps over that given, by stream; 1 where left out
   */
  StepSolver(
      Network network,
      Constituents constituents,
      Map<String, Stream> feeds,
      double[][] contents,
      double stepS,
      Map<String, Double> factors) {
    this.network = network;
    this.constituents = constituents;
    this.units = network.units();
    this.takers = network.takers();
    this.count = constituents.count();
    this.stepS = stepS;
    this.factors = factors;
    this.stored = new double[units.size() * count];
    this.outside = new double[units.size() * count];
    for (int u = 0; u < units.size(); u++) {
      for (String inlet : units.get(u).inlets()) {
        Stream feed = feeds.get(inlet);
        for (int i = 0; feed != null && i < count; i++) {
          outside[u * count + i] += feed.kgps(i);
        }
      }
      if (contents != null && units.get(u) instanceof Pit) {
        for (int i = 0; i < count; i++) {
          stored[u * count + i] = contents[u][i] / stepS;
        }
      }
    }
    this.loopOf = new int[units.size()];
    this.placeOf = new int[units.size()];
    this.upstream = new int[units.size()];
    int after = units.size();
    for (int l = 0; l < network.loops().length; l++) {
      int place = 0;
      for (int u : network.loops()[l]) {
        loopOf[u] = l;
        placeOf[u] = place++;
        upstream[--after] = u;
      }
    }
    this.pumpsM3ps = new double[units.size()][];
    for (int u = 0; u < units.size(); u++) {
      pumpsM3ps[u] = units.get(u) instanceof Pit pit ? pumps(pit) : new double[0];
    }
    double[] comes = through(outside);
    this.comesM3ps = IntStream.range(0, units.size()).mapToDouble(u -> volume(comes, u)).toArray();
    this.duties = new double[units.size()];
    Arrays.fill(duties, 1);
  }

  /** What passes through the units of a plant in which all is water. */
  double[] water() {
    double[] wet = new double[units.size() * count];
    for (int u = 0; u < units.size(); u++) {
      wet[u * count + Constituents.WATER] = constituents.waterDensityKgM3();
    }
    double[] volumes = hydraulics(wet, divided(wet).of()).volumesM3ps();
    double[] water = new double[wet.length];
    for (int u = 0; u < units.size(); u++) {
      water[u * count + Constituents.WATER] = volumes[u] * constituents.waterDensityKgM3();
    }
    return water;
  }

  /** What arrives at the units and was not in them at the start. */
  double[] arriving(double[] through) {
    double[] arriving = through.clone();
    for (int i = 0; i < arriving.length; i++) {
      arriving[i] = Math.max(0, arriving[i] - stored[i]);
    }
    return arriving;
  }

  /** What of that which passes a unit was not in it at the start. */
  private Stream arriving(double[] through, int unit) {
    if (Double.isInfinite(stepS)) {
      return stream(through, unit);
    }
    double[] arriving = new double[count];
    for (int i = 0; i < count; i++) {
      arriving[i] = Math.max(0, through[unit * count + i] - stored[unit * count + i]);
    }
    return Stream.of(constituents, arriving);
  }

  /** What passes through the units when so much arrives. */
  double[] through(double[] arriving) {
    double[] through = arriving.clone();
    for (int i = 0; i < through.length; i++) {
      through[i] += stored[i];
    }
    return through;
  }

  /**
   * Substitutes until what passes agrees with the shares, accelerated near agreement and, at rest
   * and without lag at first, from the start on; where that does not end soon the units lag.
   *
   * @param start what passes at first
   * @param lag r at first; 0 from a state that lies near
   * @param settled the change that counts as none
   * @param most how often the units are asked
   */
  Passed solve(double[] start, double lag, double settled, int most) {
    double[] state = start;
    double before = Double.POSITIVE_INFINITY;
    double r = lag;
    boolean rest = Double.isInfinite(stepS);
    Trap trap = null;
    double change = before;
    FixedPoint history = new FixedPoint();
    double[] previous = null;
    for (int pass = 1; pass <= most; pass++) {
      Division division = divided(state);
      boolean[][] reached = reached(division, null);
      trap = trap(division, state, reached);
      if (trap != null && r == 0) {
        r = 1;
      }
      double[] next = closed(division, state, trap == null ? 0 : r, reached);
      double apart = trap == null ? apart(division, state, next) : Double.POSITIVE_INFINITY;
      boolean near = apart <= NEAR;
      if (near || r == 0) {
        r = 0;
        change = apart;
      } else {
        next = closed(division, state, r, reached);
        change = Math.max(change(state, next) * (1 + r), division.dutyChange());
      }
      if (r == 0 && (change <= settled || pass == most)) {
        return new Passed(next, division, change <= settled, false, null);
      }
      // Away from agreement acceleration could leap to another state than the one time leads to.
      boolean helps = rest ? near || lag == 0 : near && change > SLOW * before;
      if (r == 0 && helps && pass <= Math.min(MOST_ACCELERATED, most / 2)) {
        state = history.after(state, next);
        previous = null;
        before = change;
        continue;
      }
      if (previous != null && change > settled && change(previous, next) <= SAME) {
        return new Passed(next, division, false, trap == null, trap);
      }
      history = new FixedPoint();
      previous = state;
      state = next;
      if (trap == null && (change <= settled || pass == most - 1)) {
        r = 0;
      } else if (change > 0.8 * before && pass > EARLIEST_LAG) {
        r = Math.min(MOST_LAG, Math.max(1, 2 * r));
      } else {
        r = r < LEAST_LAG ? 0 : r / 2;
      }
      before = change;
    }
    Division last = divided(state);
    return new Passed(state, last, false, false, trap(last, state, reached(last, null)));
  }

  /** The greatest change of a flow, over the total flow through the same unit. */
  double change(double[] before, double[] after) {
    double worst = 0;
    for (int u = 0; u < units.size(); u++) {
      worst = Math.max(worst, change(u, before, after));
    }
    return worst;
  }

  double change(int unit, double[] before, double[] after) {
    double total = 0;
    double most = 0;
    for (int i = unit * count; i < (unit + 1) * count; i++) {
      total += after[i];
      most = Math.max(most, Math.abs(after[i] - before[i]));
    }
    return total > 0 ? most / total : most > 0 ? 1 : 0;
  }

  /** What pits hold after the step, by unit [kg]. */
  double[][] contents(Passed passed) {
    double[][] contents = new double[units.size()][count];
    for (int u = 0; u < units.size(); u++) {
      if (units.get(u) instanceof Pit) {
        double[][] shares = passed.division().of()[u];
        for (int i = 0; i < count; i++) {
          contents[u][i] = passed.through()[u * count + i] * shares[shares.length - 1][i] * stepS;
        }
      }
    }
    return contents;
  }

  /** The streams of what passes. */
  Passage passage(Passed passed, Map<String, Stream> feeds) {
    Division division = passed.division();
    double[] through = passed.through();
    Map<String, Stream> streams = new LinkedHashMap<>();
    network.feedNames().forEach(name -> streams.put(name, feeds.get(name)));
    Map<String, Stream> unitFeeds = new LinkedHashMap<>();
    Map<String, Stream> contents = new LinkedHashMap<>();
    Map<String, Double> running = new LinkedHashMap<>();
    Map<String, Double> dutyShares = new LinkedHashMap<>();
    List<UnitNote> notes = new ArrayList<>();
    double[] arriving = arriving(through);
    for (int u = 0; u < units.size(); u++) {
      Unit unit = units.get(u);
      unitFeeds.put(unit.name(), stream(arriving, u));
      double[][] shares = division.of()[u];
      for (int o = 0; o < unit.outlets().size(); o++) {
        streams.put(unit.outlets().get(o), part(through, u, shares[o], 1));
      }
      if (unit instanceof Pit pit) {
        if (Double.isFinite(stepS)) {
          contents.put(unit.name(), part(through, u, shares[shares.length - 1], stepS));
        }
        int p = 0;
        for (String pump : pit.draws().keySet()) {
          double full = pumpsM3ps[u][p++];
          double taken = streams.get(pump).volumeM3ps();
          if (full > 0) {
            running.put(pump, Math.min(1, taken / full));
          }
        }
      } else {
        dutyShares.put(unit.name(), division.duties()[u]);
      }
      notes.addAll(division.notes().get(u));
    }
    return new Passage(
        streams, unitFeeds, contents, running, dutyShares, onceEach(notes), arriving);
  }

  /** The first note of each unit and reason: numbers change from step to step. */
  private static List<UnitNote> onceEach(List<UnitNote> notes) {
    List<UnitNote> once = new ArrayList<>();
    for (UnitNote note : notes) {
      if (once.stream().noneMatch(note::like)) {
        once.add(note);
      }
    }
    return once;
  }

  private Stream stream(double[] state, int unit) {
    return Stream.of(constituents, state, unit * count);
  }

  private Stream part(double[] state, int unit, double[] shares, double factor) {
    double[] flows = new double[count];
    for (int i = 0; i < count; i++) {
      flows[i] = state[unit * count + i] * shares[i] * factor;
    }
    return Stream.of(constituents, flows);
  }

  private double[] pumps(Pit pit) {
    return pit.draws().entrySet().stream()
        .mapToDouble(draw -> draw.getValue() * factors.getOrDefault(draw.getKey(), 1.0))
        .toArray();
  }

  private double volume(double[] state, int unit) {
    double volume = 0;
    for (int i = 0; i < count; i++) {
      volume += state[unit * count + i] / constituents.densityKgM3(i);
    }
    return volume;
  }

  private double volume(double[] state, int unit, double[] shares) {
    double volume = 0;
    for (int i = 0; i < count; i++) {
      volume += state[unit * count + i] * shares[i] / constituents.densityKgM3(i);
    }
    return volume;
  }

  private Division divided(double[] state) {
    int n = units.size();
    double[][][] shares = new double[n][][];
    List<List<UnitNote>> notes = new ArrayList<>();
    for (int u = 0; u < n; u++) {
      Stream through = stream(state, u);
      if (units.get(u) instanceof Pit pit) {
        double[] settles = pit.kept(through, arriving(state, u));
        shares[u] = new double[][] {settles};
        notes.add(List.of());
      } else {
        Split split = network.split(u, through, duties[u]);
        if (split.shares().length != takers[u].length) {
          throw new IllegalStateException(
              units.get(u).name()
                  + " has "
                  + units.get(u).outlets().size()
                  + " outlets but divides among others");
        }
        shares[u] = split.shares();
        notes.add(split.notes());
      }
    }
    Hydraulics hydraulics = hydraulics(state, shares);
    double[] volumes = hydraulics.volumesM3ps();
    double[] asked = duties;
    duties = hydraulics.dutyShares(volumes);
    double dutyChange = 0;
    for (int u = 0; u < n; u++) {
      dutyChange = Math.max(dutyChange, Math.abs(duties[u] - asked[u]));
    }
    for (int u = 0; u < n; u++) {
      if (units.get(u) instanceof Pit pit) {
        shares[u] = pitShares(pit, shares[u][0], volumes[u], state, u);
      }
    }
    return new Division(shares, volumes, asked, dutyChange, notes);
  }

  private Hydraulics hydraulics(double[] state, double[][][] shares) {
    int n = units.size();
    Hydraulics.Outlets[] outlets = new Hydraulics.Outlets[n];
    for (int u = 0; u < n; u++) {
      double volume = volume(state, u);
      if (units.get(u) instanceof Pit pit) {
        outlets[u] = pitOutlets(pit, shares[u][0], state, u);
        continue;
      }
      double[] parts = new double[shares[u].length];
      for (int o = 0; o < parts.length; o++) {
        parts[o] =
            volume > 0 ? volume(state, u, shares[u][o]) / volume : shares[u][o][Constituents.WATER];
      }
      outlets[u] = new Hydraulics.Shares(parts);
    }
    return new Hydraulics(takers, comesM3ps, outlets);
  }

  private Hydraulics.PitOutlets pitOutlets(Pit pit, double[] settles, double[] state, int unit) {
    double volume = volume(state, unit);
    double afloat = volume > 0 ? 1 - volume(state, unit, settles) / volume : 1;
    boolean rest = Double.isInfinite(stepS);
    return new Hydraulics.PitOutlets(
        afloat,
        rest ? 0 : Math.min(pit.levels().stopM3(), pit.weirVolumeM3()) / stepS,
        rest ? 0 : pit.brimM3() / stepS,
        pumpsM3ps[unit]);
  }

  private double[][] pitShares(
      Pit pit, double[] settles, double volumeM3ps, double[] state, int unit) {
    double[] out = new double[takers[unit].length];
    Hydraulics.PitOutlets at = pitOutlets(pit, settles, state, unit);
    at.at(volumeM3ps, out, new double[out.length]);
    return pit.shares(settles, out, at.afloat() * volumeM3ps, Double.isInfinite(stepS));
  }

  /** How far the shares are from those of what passes when they are held. */
  private double apart(Division division, double[] state, double[] next) {
    return Math.max(Math.max(change(state, next), division.dutyChange()), gap(division, next));
  }

  /** How far volumes are from those that give pumps their flow, over the largest. */
  private double gap(Division division, double[] state) {
    double gap = 0;
    double most = 0;
    for (int u = 0; u < units.size(); u++) {
      gap = Math.max(gap, Math.abs(volume(state, u) - division.volumesM3ps()[u]));
      most = Math.max(most, division.volumesM3ps()[u]);
    }
    return most > 0 ? gap / most : 0;
  }

  /** What passes when the shares are held. */
  private double[] closed(
      Division division, double[] state, double lag, boolean[][] reachedByFeeds) {
    Interruption.check();
    boolean[][] reached = lag > 0 ? reached(division, state) : reachedByFeeds;
    double[][] comes = new double[units.size()][count];
    for (int u = 0; u < comes.length; u++) {
      for (int i = 0; i < count; i++) {
        int at = u * count + i;
        comes[u][i] = reached[i][u] ? outside[at] + stored[at] + lag * state[at] : 0;
      }
    }
    double[] result = new double[state.length];
    for (int[] loop : network.loops()) {
      double[][] through = closed(division, lag, loop, reached, comes);
      for (int k = 0; k < loop.length; k++) {
        System.arraycopy(through[k], 0, result, loop[k] * count, count);
        passOn(division, loop[k], through[k], comes);
      }
    }
    return result;
  }

  /** What passes through the units of a loop when so much comes to them from before it. */
  private double[][] closed(
      Division division, double lag, int[] loop, boolean[][] reached, double[][] comes) {
    int n = loop.length;
    if (n == 1 && IntStream.of(takers[loop[0]]).noneMatch(to -> to == loop[0])) {
      double[] alone = comes[loop[0]];
      for (int i = 0; i < count; i++) {
        alone[i] /= 1 + lag;
      }
      return new double[][] {alone};
    }
    double[][][] within = new double[n][n][];
    double[][] leaves = new double[n][count];
    double[][] right = new double[n][];
    for (int k = 0; k < n; k++) {
      int from = loop[k];
      right[k] = comes[from];
      double[][] shares = division.of()[from];
      for (int i = 0; i < count; i++) {
        leaves[k][i] = reached[i][from] ? lag : 1 + lag;
      }
      for (int outlet = 0; outlet < shares.length; outlet++) {
        double[] part = leaves[k];
        if (isWithin(from, outlet)) {
          int to = placeOf[takers[from][outlet]];
          within[to][k] = within[to][k] == null ? new double[count] : within[to][k];
          part = within[to][k];
        }
        for (int i = 0; i < count; i++) {
          part[i] += reached[i][from] ? shares[outlet][i] : 0;
        }
      }
    }
    return LoopFlows.of(within, leaves, right);
  }

  /** Whether what leaves a unit by an outlet stays in its loop. */
  private boolean isWithin(int from, int outlet) {
    int to = outlet < takers[from].length ? takers[from][outlet] : NOBODY;
    return to != NOBODY && loopOf[to] == loopOf[from];
  }

  private void passOn(Division division, int from, double[] through, double[][] comes) {
    for (int outlet = 0; outlet < takers[from].length; outlet++) {
      int to = takers[from][outlet];
      if (to != NOBODY && !isWithin(from, outlet)) {
        for (int i = 0; i < count; i++) {
          comes[to][i] += division.of()[from][outlet][i] * through[i];
        }
      }
    }
  }

  /** The units that each constituent reaches from the feeds and from what pits held, or it held. */
  private boolean[][] reached(Division division, double[] held) {
    boolean[][] reached = new boolean[count][];
    for (int i = 0; i < count; i++) {
      reached[i] = reached(division, i, held);
    }
    return reached;
  }

  private boolean[] reached(Division division, int constituent, double[] held) {
    boolean[] reached = new boolean[units.size()];
    int[] next = new int[reached.length];
    int known = 0;
    for (int u = 0; u < reached.length; u++) {
      int at = u * count + constituent;
      if (outside[at] + stored[at] > 0 || held != null && held[at] > 0) {
        reached[u] = true;
        next[known++] = u;
      }
    }
    for (int k = 0; k < known; k++) {
      int from = next[k];
      for (int outlet = 0; outlet < takers[from].length; outlet++) {
        int to = takers[from][outlet];
        if (to != NOBODY && !reached[to] && division.of()[from][outlet][constituent] > 0) {
          reached[to] = true;
          next[known++] = to;
        }
      }
    }
    return reached;
  }

  /** The first constituent that these shares let pile up; null when there is none. */
  private Trap trap(Division division, double[] state, boolean[][] reachedByFeeds) {
    for (int i = 0; i < count; i++) {
      boolean[] reached = reachedByFeeds[i];
      boolean[] free = new boolean[reached.length];
      boolean grew = true;
      while (grew) {
        grew = false;
        for (int u : upstream) {
          if (reached[u] && !free[u] && escapes(division, i, u, free)) {
            free[u] = true;
            grew = true;
          }
        }
      }
      if (!Arrays.equals(reached, free)) {
        return trap(division, state, i, reached, free);
      }
    }
    return null;
  }

  private Trap trap(
      Division division, double[] state, int constituent, boolean[] reached, boolean[] free) {
    List<String> trapped = new ArrayList<>();
    List<UnitNote> notes = new ArrayList<>();
    double grows = 0;
    for (int u = 0; u < free.length; u++) {
      int at = u * count + constituent;
      if (reached[u] && !free[u]) {
        trapped.add(units.get(u).name());
        notes.addAll(division.notes().get(u));
        grows += outside[at] + stored[at];
      }
      for (int o = 0; o < takers[u].length; o++) {
        int to = takers[u][o];
        if (reached[u] && free[u] && to != NOBODY && reached[to] && !free[to]) {
          grows += division.of()[u][o][constituent] * state[at];
        }
      }
    }
    return new Trap(constituent, trapped, grows, notes);
  }

  /** Whether some of it leaves the plant from a unit, or reaches one from which some does. */
  private boolean escapes(Division division, int constituent, int unit, boolean[] free) {
    double[][] shares = division.of()[unit];
    if (takers[unit].length == 0) {
      return true;
    }
    if (shares.length > takers[unit].length && shares[takers[unit].length][constituent] > 0) {
      return true;
    }
    for (int outlet = 0; outlet < takers[unit].length; outlet++) {
      int to = takers[unit][outlet];
      if ((to == NOBODY || free[to]) && shares[outlet][constituent] > 0) {
        return true;
      }
    }
    return false;
  }
}
