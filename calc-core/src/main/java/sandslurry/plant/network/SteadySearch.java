package sandslurry.plant.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.numeric.UnsolvedException;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.network.NoSteadyState.Growth;
import sandslurry.units.InUnit;

/**
 * Looks for the steady balance that a plant comes to from what its pits hold at first.
 *
 * <p>The plant is marched in time, in steps that grow as it comes to rest. A plant may have two
 * steady balances, thin and clogged; a search of equations finds either, time finds the one that is
 * reached. Only the last digits are looked for at rest, and a balance that lies away from where the
 * march was is refused.
 */
final class SteadySearch {
  /** Shares agree so nearly with what passes in a balance that is given out. */
  static final double SETTLED = 1e-10;

  /** The greatest change of a mass fraction in a pit in one step of the march. */
  private static final double MOST_MOVED = 0.02;

  /** The march is at its end when so little changes in a step so long. */
  private static final double RESTS = 1e-4;

  private static final double STAYS = 30;

  /** A balance belongs to a march when it lies no further from it. */
  private static final double NEAR = 0.02;

  private static final double IN_STEP = 1e-5;

  /** Of water nothing is known yet of how it divides. */
  private static final double FIRST_LAG = 2;

  private static final double LEAST_STEP_S = 1;
  private static final int MOST_STEPS = 400;
  private static final int MOST_REFUSED = 3;

  private final Network network;
  private final Constituents constituents;
  private final Map<String, Stream> feeds;
  private int passes;

  SteadySearch(Network network, Constituents constituents, Map<String, Stream> feeds) {
    this.network = network;
    this.constituents = constituents;
    this.feeds = feeds;
  }

  /** From a balance of nearly the same plant on; from pits full of water where that fails. */
  SteadyState near(SteadyBalance earlier) {
    StepSolver rest = rest();
    try {
      Optional<SteadyBalance> balance = settled(rest, network.arriving(earlier), true);
      if (balance.isPresent()) {
        return balance.get();
      }
    } catch (UnsolvedException e) {
      // The march tells why, if it fails too.
    }
    return from(Map.of());
  }

  /** From pits filled with liquors of given composition, with water where none is given. */
  SteadyState from(Map<String, Stream> filling) {
    try {
      return march(filling);
    } catch (UnsolvedException e) {
      return network.tooSmall();
    }
  }

  private StepSolver rest() {
    return new StepSolver(network, constituents, feeds, null, Double.POSITIVE_INFINITY, Map.of());
  }

  private SteadyState march(Map<String, Stream> filling) {
    StepSolver rest = rest();
    double[] arriving = rest.water();
    double[][] contents = contents(filling);
    boolean pits = network.units().stream().anyMatch(Pit.class::isInstance);
    if (!pits) {
      StepSolver.Passed passed = rest.solve(arriving, FIRST_LAG, 1e-3, 400);
      passes += 40;
      if (passed.trap() != null) {
        return trapped(passed.trap());
      }
      return settled(rest, passed.through(), true)
          .map(balance -> (SteadyState) balance)
          .orElseGet(() -> unsettled(rest, passed.through(), 0, Growth.NONE));
    }
    double slowest = InUnit.HOUR.si(1);
    double step = InUnit.HOUR.si(1.0 / 60);
    double time = 0;
    Growth grows = Growth.NONE;
    int refused = 0;
    StepSolver.Trap trap = null;
    for (int k = 0; k < MOST_STEPS && refused < MOST_REFUSED; k++) {
      StepSolver solver = new StepSolver(network, constituents, feeds, contents, step, Map.of());
      double[] start = solver.through(arriving);
      StepSolver.Passed passed = solver.solve(start, k == 0 ? FIRST_LAG : 0, IN_STEP, 20);
      passes++;
      trap = passed.trap();
      double[][] next = solver.contents(passed);
      double moved = moved(contents, next);
      if (moved > MOST_MOVED && step > LEAST_STEP_S) {
        step /= 2;
        continue;
      }
      time += step;
      grows = growing(contents, next, step);
      contents = next;
      arriving = solver.arriving(passed.through());
      slowest = Math.max(InUnit.HOUR.si(1), retention(contents, arriving));
      if (step > STAYS * slowest && moved < RESTS) {
        Optional<SteadyBalance> balance = settled(rest, arriving, false);
        if (balance.isPresent()) {
          return balance.get();
        }
        refused++;
      }
      if (moved < MOST_MOVED / 2) {
        step = Math.min(2 * step, 1000 * slowest);
      }
    }
    if (trap != null) {
      return trapped(trap);
    }
    Optional<SteadyBalance> nearly = refused > 0 ? nearly(rest, arriving) : Optional.empty();
    return nearly.isPresent() ? nearly.get() : unsettled(rest, arriving, time, grows);
  }

  /** A plant that rests, but whose shares jump and keep it from agreeing to the last digit. */
  private Optional<SteadyBalance> nearly(StepSolver rest, double[] arriving) {
    StepSolver.Passed passed = rest.solve(arriving, 0, NEAR, 1);
    return passed.agreed() ? balance(rest, passed) : Optional.empty();
  }

  private double[][] contents(Map<String, Stream> filling) {
    double[][] contents = new double[network.units().size()][constituents.count()];
    for (int u = 0; u < contents.length; u++) {
      if (network.units().get(u) instanceof Pit pit) {
        Stream liquor = filling.getOrDefault(pit.name(), constituents.water(1));
        contents[u] = liquor.times(pit.startVolumeM3() / liquor.volumeM3ps()).toArray();
      }
    }
    return contents;
  }

  /** The greatest change of a mass fraction in a pit. */
  private static double moved(double[][] before, double[][] after) {
    double most = 0;
    for (int u = 0; u < before.length; u++) {
      double one = Arrays.stream(before[u]).sum();
      double two = Arrays.stream(after[u]).sum();
      for (int i = 0; i < before[u].length && one > 0 && two > 0; i++) {
        most = Math.max(most, Math.abs(after[u][i] / two - before[u][i] / one));
      }
    }
    return most;
  }

  /** The longest time that what arrives at a pit stays there, a year at most [s]. */
  private double retention(double[][] contents, double[] arriving) {
    double longest = 0;
    int count = constituents.count();
    for (int u = 0; u < contents.length; u++) {
      double held = Arrays.stream(contents[u]).sum();
      double comes = Arrays.stream(arriving, u * count, (u + 1) * count).sum();
      longest = Math.max(longest, comes > 0 ? held / comes : 0);
    }
    return Math.min(longest, InUnit.DAY.si(365));
  }

  /**
   * The balance at rest next to a state; empty when there is none near it.
   *
   * @param jumps whether a balance whose shares jump counts, for what pits hold is at rest
   */
  private Optional<SteadyBalance> settled(StepSolver rest, double[] arriving, boolean jumps) {
    // With a lag, so that it stays with the state that the march came to.
    StepSolver.Passed first = rest.solve(arriving, 1, 1e-3, 60);
    passes += 10;
    if (!first.agreed() && !first.jumps()) {
      return Optional.empty();
    }
    StepSolver.Passed last = rest.solve(first.through(), 0, SETTLED, 400);
    if (rest.change(first.through(), last.through()) > NEAR) {
      return Optional.empty();
    }
    if (last.agreed()) {
      return balance(rest, last);
    }
    return jumps && last.jumps() ? nearly(rest, last.through()) : Optional.empty();
  }

  private Optional<SteadyBalance> balance(StepSolver rest, StepSolver.Passed passed) {
    Passage passage = rest.passage(passed, feeds);
    Map<String, Stream> products = new LinkedHashMap<>();
    network.productNames().forEach(name -> products.put(name, passage.streams().get(name)));
    double imbalance = imbalance(passage);
    return imbalance <= Network.MOST_IMBALANCE
        ? Optional.of(
            new SteadyBalance(
                passage.streams(),
                passage.feeds(),
                products,
                passage.running(),
                passage.duties(),
                imbalance,
                passes,
                passage.notes()))
        : Optional.empty();
  }

  private double imbalance(Passage passage) {
    Stream in = sum(passage, network.feedNames());
    Stream out = sum(passage, network.productNames());
    double worst = 0;
    for (Unit unit : network.units()) {
      Stream fed = passage.feeds().get(unit.name());
      worst = Math.max(worst, relative(sum(passage, unit.inlets()), fed));
      out = unit.outlets().isEmpty() ? out.plus(fed) : out;
    }
    return Math.max(worst, relative(in, out));
  }

  private Stream sum(Passage passage, List<String> names) {
    return Stream.mix(constituents, names.stream().map(passage.streams()::get).toList());
  }

  private double relative(Stream in, Stream out) {
    double worst = 0;
    for (int i = 0; i < constituents.count(); i++) {
      worst = Math.max(worst, relative(in.kgps(i), out.kgps(i)));
    }
    return worst;
  }

  private static double relative(double in, double out) {
    double size = Math.max(Math.abs(in), Math.abs(out));
    return size > 0 ? Math.abs(in - out) / size : 0;
  }

  private NoSteadyState trapped(StepSolver.Trap trap) {
    return new NoSteadyState(
        NoSteadyState.Reason.NO_PURGE,
        trap.units(),
        new Growth(
            constituents.name(trap.constituent()),
            String.join(", ", trap.units()),
            trap.growsKgps()),
        0,
        0,
        trap.notes());
  }

  /** Names the units whose feeds still change, and what grows. */
  private NoSteadyState unsettled(StepSolver rest, double[] state, double timeS, Growth grows) {
    StepSolver.Passed passed = rest.solve(state, 0, 0, 1);
    double[] after = passed.through();
    List<Integer> moving = new ArrayList<>();
    for (int u = 0; u < network.units().size(); u++) {
      if (rest.change(u, state, after) > 1e-6) {
        moving.add(u);
      }
    }
    moving.sort(Comparator.comparingDouble(u -> -rest.change(u, state, after)));
    List<Unit> named =
        moving.isEmpty()
            ? network.units()
            : moving.stream().map(u -> network.units().get(u)).toList();
    List<String> names = named.stream().map(Unit::name).toList();
    List<UnitNote> notes = new ArrayList<>();
    for (int u = 0; u < network.units().size(); u++) {
      if (names.contains(network.units().get(u).name())) {
        notes.addAll(passed.division().notes().get(u));
      }
    }
    return new NoSteadyState(
        NoSteadyState.Reason.UNSETTLED,
        names,
        grows.kgps() > 0 ? grows : growing(state, after),
        timeS,
        moving.isEmpty() ? 0 : rest.change(moving.get(0), state, after),
        notes);
  }

  /** What grows most in a pit, and how fast. */
  private Growth growing(double[][] before, double[][] after, double stepS) {
    Growth most = Growth.NONE;
    for (int u = 0; u < before.length; u++) {
      for (int i = 0; i < before[u].length; i++) {
        double rate = (after[u][i] - before[u][i]) / stepS;
        if (rate > most.kgps()) {
          most = new Growth(constituents.name(i), network.units().get(u).name(), rate);
        }
      }
    }
    return most;
  }

  /** What grows most into a unit each time round. */
  private Growth growing(double[] before, double[] after) {
    Growth most = Growth.NONE;
    int count = constituents.count();
    for (int k = 0; k < before.length; k++) {
      if (after[k] - before[k] > most.kgps()) {
        most =
            new Growth(
                constituents.name(k % count),
                network.units().get(k / count).name(),
                after[k] - before[k]);
      }
    }
    return most;
  }
}
